//! Lines in the picture plane. In: points, cm. Out: lines of even spacing, smoothed, rounded, measured.

use crate::body::womb;
use crate::figure::grid::Line;
use crate::units::FigurePoint;

/// A point of the picture plane, cm.
pub type P = (f32, f32);

/// Distance between the points of a line, cm.
pub const STEP: f32 = 0.1;

/// `a` and `k` times `b`.
pub fn add(a: P, b: P, k: f32) -> P {
    (a.0 + b.0 * k, a.1 + b.1 * k)
}

/// From `b` to `a`.
pub fn sub(a: P, b: P) -> P {
    (a.0 - b.0, a.1 - b.1)
}

/// How far one reaches along the other.
pub fn dot(a: P, b: P) -> f32 {
    a.0 * b.0 + a.1 * b.1
}

/// Its length.
pub fn norm(a: P) -> f32 {
    dot(a, a).sqrt()
}

/// From one to the other.
pub fn away(a: P, b: P) -> f32 {
    norm(sub(a, b))
}

/// The same direction, of length 1.
pub fn unit(a: P) -> P {
    let n = norm(a).max(1e-6);
    (a.0 / n, a.1 / n)
}

/// A quarter turn to the left.
pub fn left_of(a: P) -> P {
    (-a.1, a.0)
}

/// A share of the way.
pub fn between(a: P, b: P, t: f32) -> P {
    add(a, sub(b, a), t)
}

/// The middle of some points.
pub fn middle(points: &[P]) -> P {
    let n = points.len().max(1) as f32;
    points.iter().fold((0.0, 0.0), |sum, p| add(sum, *p, 1.0 / n))
}

/// The length of a line.
pub fn length(line: &[P]) -> f32 {
    line.windows(2).map(|w| away(w[0], w[1])).sum()
}

/// The nearest point of a line: its number and how far it is.
pub fn nearest(line: &[P], p: P) -> (usize, f32) {
    let far = |i: usize| away(line[i], p);
    let i = (0..line.len()).min_by(|a, b| far(*a).total_cmp(&far(*b))).unwrap_or(0);
    (i, if line.is_empty() { f32::MAX } else { far(i) })
}

/// The same line with points about `step` apart; a closed one does not repeat its first point.
pub fn spaced(line: &[P], closed: bool, step: f32) -> Line {
    let mut ring = line.to_vec();
    if closed && !ring.is_empty() {
        ring.push(ring[0]);
    }
    let whole = length(&ring);
    if ring.len() < 2 || whole < 1e-4 {
        return ring;
    }
    let pieces = ((whole / step + 0.5) as usize).max(2);
    let (mut out, mut gone, mut i) = (vec![ring[0]], 0.0, 0);
    for k in 1..pieces {
        let want = whole * k as f32 / pieces as f32;
        while i + 2 < ring.len() && gone + away(ring[i], ring[i + 1]) < want {
            gone += away(ring[i], ring[i + 1]);
            i += 1;
        }
        let piece = away(ring[i], ring[i + 1]).max(1e-6);
        out.push(between(ring[i], ring[i + 1], ((want - gone) / piece).clamp(0.0, 1.0)));
    }
    if !closed {
        out.push(ring[ring.len() - 1]);
    }
    out
}

/// A smooth line through a few points (centripetal Catmull-Rom), spaced by `STEP`.
pub fn through(knots: &[P], closed: bool) -> Line {
    spaced(&curve(knots, closed), closed, STEP)
}

/// The same for small bows, whose points stand closer.
pub fn finely(knots: &[P]) -> Line {
    spaced(&curve(knots, false), false, 0.4 * STEP)
}

fn curve(knots: &[P], closed: bool) -> Line {
    let n = knots.len();
    if n < 3 {
        return knots.to_vec();
    }
    let at = |i: isize| -> P {
        if closed {
            knots[i.rem_euclid(n as isize) as usize]
        } else if i < 0 {
            add(knots[0], sub(knots[0], knots[1]), 1.0)
        } else if i >= n as isize {
            add(knots[n - 1], sub(knots[n - 1], knots[n - 2]), 1.0)
        } else {
            knots[i as usize]
        }
    };
    const PIECES: usize = 14;
    let mut out = vec![];
    for i in 0..if closed { n } else { n - 1 } as isize {
        let p = [at(i - 1), at(i), at(i + 1), at(i + 2)];
        let gap = |a: P, b: P| away(a, b).sqrt().max(1e-3);
        let t1 = gap(p[0], p[1]);
        let t2 = t1 + gap(p[1], p[2]);
        let t3 = t2 + gap(p[2], p[3]);
        for k in 0..PIECES {
            let t = t1 + (t2 - t1) * k as f32 / PIECES as f32;
            let mix = |a: P, b: P, from: f32, to: f32| between(a, b, (t - from) / (to - from));
            let (a1, a2, a3) = (mix(p[0], p[1], 0.0, t1), mix(p[1], p[2], t1, t2), mix(p[2], p[3], t2, t3));
            let (b1, b2) = (mix(a1, a2, 0.0, t2), mix(a2, a3, t1, t3));
            out.push(mix(b1, b2, t1, t2));
        }
    }
    if !closed {
        out.push(knots[n - 1]);
    }
    out
}

/// An open line rounded by `sigma` cm; its ends stay.
pub fn rounded(line: &[P], sigma: f32) -> Line {
    let line = spaced(line, false, STEP);
    let n = line.len() as isize;
    if n < 4 || sigma <= 0.0 {
        return line;
    }
    let at = |j: isize| -> P {
        let mirror = |end: P, p: P| add(end, sub(end, p), 1.0);
        if j < 0 {
            mirror(line[0], line[(-j).min(n - 1) as usize])
        } else if j >= n {
            mirror(line[n as usize - 1], line[(2 * (n - 1) - j).max(0) as usize])
        } else {
            line[j as usize]
        }
    };
    weighed(n, sigma, at)
}

/// A closed line rounded by `sigma` cm.
pub fn rounded_ring(line: &[P], sigma: f32) -> Line {
    let n = line.len() as isize;
    if n < 4 {
        return line.to_vec();
    }
    weighed(n, sigma, |j| line[j.rem_euclid(n) as usize])
}

fn weighed(n: isize, sigma: f32, at: impl Fn(isize) -> P) -> Line {
    let s = sigma / STEP;
    let reach = ((3.0 * s) as isize).max(1);
    let weights: Vec<f32> = (0..=reach).map(|k| libm::expf(-((k * k) as f32) / (2.0 * s * s))).collect();
    let whole = weights[0] + 2.0 * weights[1..].iter().sum::<f32>();
    (0..n)
        .map(|i| {
            let own = at(i);
            let sum = (1..=reach).fold((own.0 * weights[0], own.1 * weights[0]), |sum, k| {
                // Both neighbours at once, so that a line turned end for end is rounded to the same.
                let (a, b) = (at(i - k), at(i + k));
                add(sum, (a.0 + b.0, a.1 + b.1), weights[k as usize])
            });
            (sum.0 / whole, sum.1 / whole)
        })
        .collect()
}

/// The direction in which a line runs at a point.
pub fn tangent(line: &[P], i: usize, reach: usize) -> P {
    let n = line.len();
    unit(sub(line[(i + reach).min(n - 1)], line[i.saturating_sub(reach)]))
}

/// Whether a point lies inside a closed line.
pub fn holds(ring: &[P], p: P) -> bool {
    let n = ring.len();
    let mut inside = false;
    for i in 0..n {
        let (a, b) = (ring[i], ring[(i + 1) % n]);
        if (a.1 > p.1) != (b.1 > p.1) && p.0 < a.0 + (p.1 - a.1) / (b.1 - a.1) * (b.0 - a.0) {
            inside = !inside;
        }
    }
    inside
}

/// Signed area of a closed line.
pub fn area(ring: &[P]) -> f32 {
    let n = ring.len();
    (0..n).map(|i| ring[i].0 * ring[(i + 1) % n].1 - ring[i].1 * ring[(i + 1) % n].0).sum::<f32>() * 0.5
}

/// The stretches of a line that are kept, each longer than `least` cm; gaps shorter than `bridged` are kept too. Of a ring a
/// stretch may run over its start.
pub fn stretches(line: &[P], keep: &[bool], closed: bool, least: f32, bridged: f32) -> Vec<Line> {
    let n = line.len();
    if n == 0 || keep.iter().all(|k| !k) {
        return vec![];
    }
    let from = if closed { (0..n).find(|&i| !keep[i] && keep[(i + 1) % n]) } else { Some(n - 1) };
    let Some(from) = from else {
        let mut ring = line.to_vec();
        ring.push(line[0]);
        return vec![ring];
    };
    let mut runs: Vec<(usize, usize)> = vec![];
    for i in from + 1..from + 1 + n {
        if !keep[i % n] {
            continue;
        }
        match runs.last_mut() {
            Some(last) if (i - last.1) as f32 * STEP < bridged + STEP => last.1 = i,
            _ => runs.push((i, i)),
        }
    }
    let line = |(a, b): (usize, usize)| (a..=b).map(|i| line[i % n]).collect::<Line>();
    runs.into_iter().map(line).filter(|line| length(line) > least).collect()
}

/// The ring stretched round a ring, anticlockwise, with points `STEP` apart.
pub fn hull(ring: &[P]) -> Line {
    let points: Vec<FigurePoint> = ring.iter().map(|p| FigurePoint::new(p.0, p.1)).collect();
    let out: Line = womb::hull(&points).iter().map(|p| (p.x, p.y)).collect();
    spaced(&out, true, STEP)
}
