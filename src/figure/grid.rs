//! Fields on the cast's grid. In: a number a cell. Out: blurred fields, closed lines of equal value, smoothed lines.

use crate::body::cast::Cast;

/// Points of a line in the picture plane, cm.
pub type Line = Vec<(f32, f32)>;

/// Blurs `field` (row by row, `width` cells a row) by about `sigma` cells: three box blurs.
pub fn blur(field: &mut [f32], width: usize, sigma: f32) {
    let r = ((sigma + 0.5) as usize).max(1);
    let height = field.len() / width;
    let mut scratch = vec![0f32; field.len()];
    for _ in 0..3 {
        box_blur(field, &mut scratch, width, height, r);
    }
}

fn box_blur(a: &mut [f32], t: &mut [f32], w: usize, h: usize, r: usize) {
    let n = 1.0 / (2 * r + 1) as f32;
    for j in 0..h {
        let row = &a[j * w..(j + 1) * w];
        let mut s: f32 = row.iter().take(r + 1).sum();
        for i in 0..w {
            t[j * w + i] = s * n;
            if i + r + 1 < w {
                s += row[i + r + 1];
            }
            if i >= r {
                s -= row[i - r];
            }
        }
    }
    let mut s = vec![0f32; w];
    for j in 0..=r.min(h - 1) {
        for i in 0..w {
            s[i] += t[j * w + i];
        }
    }
    for j in 0..h {
        for i in 0..w {
            a[j * w + i] = s[i] * n;
        }
        if j + r + 1 < h {
            for i in 0..w {
                s[i] += t[(j + r + 1) * w + i];
            }
        }
        if j >= r {
            for i in 0..w {
                s[i] -= t[(j - r) * w + i];
            }
        }
    }
}

/// A rectangle of cells: columns and rows, the ends not included.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Window {
    columns: (usize, usize),
    rows: (usize, usize),
}

impl Window {
    /// The smallest rectangle with every cell for which `inside` holds, and a border of two cells.
    pub fn round(cast: &Cast, inside: impl Fn(usize) -> bool) -> Option<Self> {
        let (w, h) = (cast.width, cast.height);
        let (mut i0, mut i1, mut j0, mut j1) = (w, 0, h, 0);
        for j in 0..h {
            for i in 0..w {
                if inside(j * w + i) {
                    (i0, i1, j0, j1) = (i0.min(i), i1.max(i + 1), j0.min(j), j1.max(j + 1));
                }
            }
        }
        let columns = (i0.saturating_sub(2), (i1 + 2).min(w));
        let rows = (j0.saturating_sub(2), (j1 + 2).min(h));
        (i0 < i1).then_some(Window { columns, rows })
    }
}

/// Closed lines where a field on the cast's grid crosses 0, the larger values on the same side all along. `field`
/// gives the value of a cell; the border of the window counts as below 0.
pub fn contours(cast: &Cast, window: Window, field: &dyn Fn(usize) -> f32) -> Vec<Line> {
    let ((i0, i1), (j0, j1)) = (window.columns, window.rows);
    let (w, h) = (i1 - i0, j1 - j0);
    let mut values = Vec::with_capacity(w * h);
    for j in j0..j1 {
        for i in i0..i1 {
            let border = i == i0 || j == j0 || i == i1 - 1 || j == j1 - 1;
            values.push(if border { -1.0 } else { field(j * cast.width + i) });
        }
    }
    // A step leads from one crossed grid edge to the next; an edge is its cell * 2, + 1 for the one that runs down.
    const NONE: u32 = u32::MAX;
    let mut next = vec![NONE; w * h * 2];
    let mut order = vec![];
    for j in 0..h.saturating_sub(1) {
        for i in 0..w - 1 {
            let cell = j * w + i;
            let (a, b, c, d) = (values[cell], values[cell + 1], values[cell + w + 1], values[cell + w]);
            let code = usize::from(a > 0.0)
                | usize::from(b > 0.0) << 1
                | usize::from(c > 0.0) << 2
                | usize::from(d > 0.0) << 3;
            if code == 0 || code == 15 {
                continue;
            }
            let (top, left, right, bottom) = (cell * 2, cell * 2 + 1, (cell + 1) * 2 + 1, (cell + w) * 2);
            let mut lead = |from: usize, to: usize| {
                next[from] = to as u32;
                order.push(from);
            };
            match code {
                1 => lead(left, top),
                2 => lead(top, right),
                3 => lead(left, right),
                4 => lead(right, bottom),
                5 => {
                    lead(left, top);
                    lead(right, bottom);
                }
                6 => lead(top, bottom),
                7 => lead(left, bottom),
                8 => lead(bottom, left),
                9 => lead(bottom, top),
                10 => {
                    lead(top, right);
                    lead(bottom, left);
                }
                11 => lead(bottom, right),
                12 => lead(right, left),
                13 => lead(right, top),
                _ => lead(top, left),
            }
        }
    }
    let crossing = |edge: usize| {
        let cell = edge / 2;
        let (right, down) = if edge.is_multiple_of(2) { (1, 0) } else { (0, 1) };
        let (a, b) = (values[cell], values[cell + right + down * w]);
        let u = (a / (a - b)).clamp(0.0, 1.0);
        let (x, y) = cast.centre(i0 + cell % w, j0 + cell / w);
        (x + u * cast.cell * right as f32, y - u * cast.cell * down as f32)
    };
    let mut out = vec![];
    for start in order {
        let mut line = vec![];
        let mut at = start;
        while next[at] != NONE {
            line.push(crossing(at));
            at = std::mem::replace(&mut next[at], NONE) as usize;
        }
        if line.len() > 6 {
            out.push(line);
        }
    }
    out
}

fn kernel(sigma: f32) -> Vec<f32> {
    let r = (sigma * 3.0) as i32 + 1;
    let mut k: Vec<f32> = (-r..=r).map(|i| libm::expf(-((i * i) as f32) / (2.0 * sigma * sigma))).collect();
    let sum: f32 = k.iter().sum();
    k.iter_mut().for_each(|x| *x /= sum);
    k
}

fn convolve(line: &[(f32, f32)], closed: bool, kernel: &[f32]) -> Line {
    let n = line.len() as i32;
    let r = (kernel.len() / 2) as i32;
    let at = |j: i32| -> (f32, f32) {
        if closed {
            line[j.rem_euclid(n) as usize]
        } else if j < 0 {
            let (e, m) = (line[0], line[(-j).min(n - 1) as usize]);
            (2.0 * e.0 - m.0, 2.0 * e.1 - m.1)
        } else if j >= n {
            let (e, m) = (line[n as usize - 1], line[(2 * (n - 1) - j).max(0) as usize]);
            (2.0 * e.0 - m.0, 2.0 * e.1 - m.1)
        } else {
            line[j as usize]
        }
    };
    (0..n)
        .map(|i| {
            kernel.iter().enumerate().fold((0.0, 0.0), |sum, (q, k)| {
                let p = at(i + q as i32 - r);
                (sum.0 + p.0 * k, sum.1 + p.1 * k)
            })
        })
        .collect()
}

/// The line smoothed by `sigma` points without shrinking: twice the smoothed minus the twice smoothed.
pub fn smooth(line: &[(f32, f32)], closed: bool, sigma: f32) -> Line {
    let k = kernel(sigma);
    let once = convolve(line, closed, &k);
    let twice = convolve(&once, closed, &k);
    once.iter().zip(&twice).map(|(a, b)| (2.0 * a.0 - b.0, 2.0 * a.1 - b.1)).collect()
}

/// Weights along a line, smoothed by `sigma` points.
pub fn smooth_weights(weights: &[f32], closed: bool, sigma: f32) -> Vec<f32> {
    let k = kernel(sigma);
    let (n, r) = (weights.len() as i32, (k.len() / 2) as i32);
    (0..n)
        .map(|i| {
            k.iter()
                .enumerate()
                .map(|(q, kk)| {
                    let j = i + q as i32 - r;
                    let j = if closed { j.rem_euclid(n) } else { j.clamp(0, n - 1) };
                    weights[j as usize] * kk
                })
                .sum()
        })
        .collect()
}

/// Signed area of a closed line, cm2.
pub fn area(line: &[(f32, f32)]) -> f32 {
    let n = line.len();
    (0..n).map(|i| line[i].0 * line[(i + 1) % n].1 - line[i].1 * line[(i + 1) % n].0).sum::<f32>() * 0.5
}

/// 0 below `a`, 1 above `b`, and a smooth rise between.
pub fn smooth_step(a: f32, b: f32, x: f32) -> f32 {
    let t = ((x - a) / (b - a)).clamp(0.0, 1.0);
    t * t * (3.0 - 2.0 * t)
}
