//! The womb's outline seen from the front. In: where the baby is, the top of the womb, the weeks. Out: a closed
//! smooth line in figure space, cm, anticlockwise from the top, so that a mirrored baby has the mirrored outline.
//!
//! Shape: an egg that stands in the pelvis by its lower segment, melted together with the hull of the baby. The
//! egg's breadth by weeks is the artist's, after the growth of the womb to about 22 cm across at term. The baby is
//! nowhere nearer the outline than `CLEAR`, whatever the height asked for.

use libm::{cosf, sinf};

use crate::body::mother::expected_fundus;
use crate::units::{FigurePoint, MotherPoint, Vec3};

/// The least distance kept between the baby and the outline, cm.
pub const CLEAR: f32 = 0.4;
/// The distance aimed at between the baby's hull and the outline, cm: wall and water.
const WALL: f32 = 1.5;
/// Directions from the middle in which the outline is found.
const RAYS: usize = 96;
/// Points of the outline.
const POINTS: usize = 24;
/// How often the radii are smoothed: the wall of a filled womb is taut.
const SMOOTHINGS: usize = 12;
/// Over how many cm egg and hull melt into one another.
const MELT: f32 = 6.0;
/// What the smooth line through few points may cut off a corner, cm.
const SLACK: f32 = 0.8;
/// How much broader, and how much higher, the lower segment is where nothing stands in it, cm; drawing values.
const BROADER: f32 = 2.4;
const HIGHER: f32 = 1.3;
/// The least radius to which the wall is bent over a baby, cm, above this height; drawing values.
const BLUNT: f32 = 8.0;
const IN_PELVIS: f32 = 6.0;
/// How far below the top of the womb such a bend ends, cm: the smooth line swings out a little between its points.
const BELOW_TOP: f32 = 0.4;
/// Farther than anything drawn, cm.
const FAR: f32 = 1e3;

/// The outline of the womb around the baby or babies (`baby_points`: points of their silhouettes, none before 26
/// weeks or when no baby is drawn). It reaches up to `fundus_y` unless the baby lies higher, and down to the lower segment in the
/// pelvis.
pub fn outline(baby_points: &[FigurePoint], fundus_y: f32, weeks: f64) -> Vec<FigurePoint> {
    let baby = outermost(hull(baby_points));
    let open = unfilled(&baby);
    let mut egg = Egg::new(fundus_y, weeks, open);
    let middle = middle(&baby, &egg);
    let own = sides(&baby);
    let mut around = sides(&egg.dome_over(&baby));
    if melt(egg.distance(middle), hull_distance(&around, middle) - WALL, MELT) >= 0.0 {
        return Vec::new(); // smaller than its lower segment: nothing to draw
    }
    let rays: Vec<Ray> = (0..RAYS).map(|i| Ray::new(middle, i)).collect();
    // What must stay inside however taut the wall: the baby, and the lower segment.
    let (foot, foot_radius) = (egg.low, egg.radius_low);
    let segment = |p: FigurePoint| distance(p, foot) - foot_radius;
    let own_reach: Vec<f32> =
        rays.iter().map(|r| r.reach(40.0, &|p| hull_distance(&own, p) - CLEAR - SLACK)).collect();
    let least: Vec<f32> = rays
        .iter()
        .zip(own_reach.iter().zip(blunt(&rays, &own_reach, fundus_y)))
        .map(|(r, (own, blunt))| r.reach(40.0, &|p| segment(p) + 0.6).max(*own).max(blunt))
        .collect();
    let mut radii = vec![40.0; RAYS];
    let mut line = Vec::new();
    // Egg and baby together stand a little higher than each alone: shift the egg until the top is where it should be.
    let mut top = fundus_y;
    for _ in 0..4 {
        let found = rays.iter().zip(&radii).map(|(r, from)| {
            r.reach((from + 2.0_f32).min(40.0), &|p| {
                melt(egg.distance(p), hull_distance(&around, p) - WALL, MELT)
            })
        });
        radii = found.collect();
        for _ in 0..SMOOTHINGS {
            radii = smoothed(&radii);
            radii.iter_mut().zip(&least).for_each(|(r, l)| *r = r.max(*l));
        }
        line = rays.iter().zip(&radii).map(|(ray, r)| ray.at(*r)).collect();
        let over = line.iter().fold(f32::MIN, |m: f32, p: &FigurePoint| m.max(p.y)) - fundus_y;
        top = (top - over).max(egg.low.y);
        if over.abs() < 0.03 {
            break;
        }
        egg = Egg::new(top, weeks, open);
        around = sides(&egg.dome_over(&baby));
    }
    spaced(&line, POINTS)
}

/// How far from the wall a lump that was felt is still drawn in the wall, cm: a named place is no finer than this.
const LUMP_NEAR: f32 = 4.5;

/// Where a lump that was felt at `felt` is drawn: in the wall of the womb at its height, on the side where it was felt,
/// when that is near; near the top in the wall above it; else where it was felt, in the front wall.
pub fn lump_in_wall(felt: MotherPoint, womb: &[FigurePoint]) -> MotherPoint {
    let (x, y) = (felt.0.x, felt.0.y);
    let n = womb.len();
    let crossing = |p: f32, a: f32, b: f32| ((a > p) != (b > p)).then(|| (p - a) / (b - a));
    let pairs = (0..n).map(|i| (womb[i], womb[(i + 1) % n]));
    let beside = pairs.clone().filter_map(|(a, b)| {
        crossing(y, a.y, b.y).map(|t| a.x + (b.x - a.x) * t).filter(|wall| wall * x > 0.0)
    });
    let above = pairs
        .filter_map(|(a, b)| crossing(x, a.x, b.x).map(|t| a.y + (b.y - a.y) * t))
        .filter(|wall| *wall >= y);
    let side = beside
        .min_by(|a, b| (a - x).abs().total_cmp(&(b - x).abs()))
        .filter(|wall| (wall - x).abs() < LUMP_NEAR);
    let top = above.min_by(f32::total_cmp).filter(|wall| wall - y < LUMP_NEAR);
    match (side, top) {
        (Some(side), Some(top)) if top - y < (side - x).abs() => MotherPoint(Vec3::new(x, top, felt.0.z)),
        (Some(side), _) => MotherPoint(Vec3::new(side, y, felt.0.z)),
        (None, Some(top)) => MotherPoint(Vec3::new(x, top, felt.0.z)),
        (None, None) => felt,
    }
}

/// A direction from the middle, counted from straight up anticlockwise.
struct Ray {
    from: FigurePoint,
    along: FigurePoint,
}

impl Ray {
    fn new(from: FigurePoint, i: usize) -> Self {
        let angle = std::f32::consts::TAU * i as f32 / RAYS as f32;
        Self { from, along: FigurePoint::new(-sinf(angle), cosf(angle)) }
    }

    fn at(&self, r: f32) -> FigurePoint {
        FigurePoint::new(self.from.x + self.along.x * r, self.from.y + self.along.y * r)
    }

    /// The outermost radius under `start` at which `field` is not above 0: inwards by safe steps, then halved.
    fn reach(&self, start: f32, field: &dyn Fn(FigurePoint) -> f32) -> f32 {
        let (mut inside, mut outside) = (start, start);
        while inside > 0.0 {
            let d = field(self.at(inside));
            if d <= 0.0 {
                break;
            }
            outside = inside;
            inside = (inside - (d * 0.8).max(0.05)).max(0.0);
        }
        for _ in 0..10 {
            let half = 0.5 * (inside + outside);
            if field(self.at(half)) <= 0.0 { inside = half } else { outside = half }
        }
        inside
    }
}

/// How much of the lower segment nothing fills, from 0 for a baby that stands in the brim to 1 for one well above it: there
/// the segment is a shallow bowl over the brim, no funnel. Without a baby 0.
fn unfilled(baby: &[FigurePoint]) -> f32 {
    let lowest = baby.iter().fold(f32::MAX, |least, p| least.min(p.y));
    if baby.is_empty() { 0.0 } else { ((lowest + 1.0) / 4.5).clamp(0.0, 1.0) }
}

/// A round above, a smaller round below, and the taut skin between them.
struct Egg {
    high: FigurePoint,
    low: FigurePoint,
    radius_high: f32,
    radius_low: f32,
    /// 1 for the pear of 12 weeks, 0 for the egg of 26 and later.
    young: f32,
}

impl Egg {
    fn new(fundus_y: f32, weeks: f64, open: f32) -> Self {
        let grown = ((weeks.clamp(10.0, 42.0) - 12.0) / 28.0) as f32;
        // The neck is slender and stands deep until the lower segment forms, from about 26 weeks on.
        let young = (1.0 - 2.0 * grown).clamp(0.0, 1.0);
        let radius_low = 2.5 + 1.7 * grown.clamp(0.0, 1.0) - 0.5 * young + BROADER * open;
        let bottom = -4.3 - 0.6 * grown.clamp(0.0, 1.0) - 1.4 * young + HIGHER * open;
        // A womb smaller or larger than the weeks is so in its breadth as well.
        let usual = expected_fundus(weeks.clamp(13.0, 42.0)) as f32;
        let size = if usual > 12.0 { (fundus_y / (usual * 0.82)).clamp(0.85, 1.12) } else { 1.0 };
        let radius_high = ((4.6 + 6.1 * grown) * size).min(((fundus_y - bottom) * 0.5).max(radius_low));
        Self {
            high: FigurePoint::new(0.0, (fundus_y - radius_high).max(bottom + radius_low)),
            low: FigurePoint::new(0.0, bottom + radius_low),
            radius_high,
            radius_low,
            young,
        }
    }

    /// The hull of the baby and of a small dome under the egg's top, so that the womb is nowhere hollow above the
    /// baby; nothing without a baby.
    fn dome_over(&self, baby: &[FigurePoint]) -> Vec<FigurePoint> {
        if baby.is_empty() {
            return Vec::new();
        }
        let radius = 0.45 * self.radius_high;
        let y = self.high.y + self.radius_high - WALL - 1.2 - radius;
        // Over a baby that lies across, the dome is as broad as it needs to be, or the wall would stand like a tent.
        let half = baby.iter().fold(0.0f32, |m, p| m.max(p.x.abs()));
        let broad = radius.max(0.62 * half);
        let mut all = baby.to_vec();
        all.extend((0..13).map(|i| {
            let angle = std::f32::consts::PI * i as f32 / 12.0;
            FigurePoint::new(broad * cosf(angle), y + radius * sinf(angle))
        }));
        hull(&all)
    }

    fn distance(&self, p: FigurePoint) -> f32 {
        let span = (self.high.y - self.low.y).max(1e-3);
        let t = ((p.y - self.low.y) / span).clamp(0.0, 1.0);
        // An S-shaped change of radius gives a full body on a narrow segment.
        let egg = t * (2.0 - t);
        let swell = egg + (t * t * (3.0 - 2.0 * t) - egg) * self.young;
        let (x, y) = (p.x, p.y - (self.low.y + span * t));
        (x * x + y * y).sqrt() - (self.radius_low + (self.radius_high - self.radius_low) * swell)
    }
}

fn distance(a: FigurePoint, b: FigurePoint) -> f32 {
    let (x, y) = (a.x - b.x, a.y - b.y);
    (x * x + y * y).sqrt()
}

/// Quadratic smooth minimum over `k` cm.
fn melt(a: f32, b: f32, k: f32) -> f32 {
    let h = (k - (a - b).abs()).max(0.0) / k;
    a.min(b) - h * h * k * 0.25
}

/// Radii of a wall that is nowhere bent more sharply over what it must hold than a round of `BLUNT`, no higher than the top of
/// the womb: over a foot that stands out it makes no corner. In the pelvis, where the womb is narrow, they are 0.
fn blunt(rays: &[Ray], reach: &[f32], top: f32) -> Vec<f32> {
    let rounds: Vec<_> = rays
        .iter()
        .zip(reach)
        .filter(|(ray, far)| **far > BLUNT && ray.at(**far).y > IN_PELVIS)
        .map(|(ray, far)| (ray, far - BLUNT))
        .collect();
    let over = |ray: &Ray| {
        let most = rounds.iter().fold(0.0f32, |most, (to, away)| {
            let (cos, sin) = (
                ray.along.x * to.along.x + ray.along.y * to.along.y,
                ray.along.x * to.along.y - ray.along.y * to.along.x,
            );
            let rest = BLUNT * BLUNT - away * away * sin * sin;
            if rest > 0.0 { most.max(away * cos + rest.sqrt()) } else { most }
        });
        if ray.along.y > 0.0 { most.min((top - BELOW_TOP - ray.from.y) / ray.along.y) } else { most }
    };
    rays.iter().map(over).collect()
}

/// A round of radii, each the weighted mean of itself and its neighbours.
fn smoothed(radii: &[f32]) -> Vec<f32> {
    let n = radii.len();
    (0..n)
        .map(|i| {
            let at = |k: usize| radii[(i + n + k - 3) % n];
            (at(0) + 6.0 * at(1) + 15.0 * at(2) + 20.0 * at(3) + 15.0 * at(4) + 6.0 * at(5) + at(6)) / 64.0
        })
        .collect()
}

/// A point well inside, from which the whole outline can be seen.
fn middle(hull: &[FigurePoint], egg: &Egg) -> FigurePoint {
    let own = FigurePoint::new(0.0, 0.5 * (egg.low.y + egg.high.y));
    if hull.len() < 3 {
        return own;
    }
    let n = hull.len() as f32;
    let mean = hull.iter().fold((0.0, 0.0), |m, p| (m.0 + p.x / n, m.1 + p.y / n));
    // Nearer to the midline, where the lower segment is seen better, but never out of the baby.
    let near = FigurePoint::new(0.6 * mean.0, mean.1);
    if hull_distance(&sides(hull), near) < -1.0 { near } else { FigurePoint::new(mean.0, mean.1) }
}

/// The convex hull, anticlockwise.
pub fn hull(points: &[FigurePoint]) -> Vec<FigurePoint> {
    let mut sorted: Vec<FigurePoint> =
        points.iter().copied().filter(|p| p.x.is_finite() && p.y.is_finite()).collect();
    sorted.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    sorted.dedup();
    if sorted.len() < 3 {
        return sorted;
    }
    let turn = |o: FigurePoint, a: FigurePoint, b: FigurePoint| {
        (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x)
    };
    let half = |points: &mut dyn Iterator<Item = FigurePoint>| {
        let mut line: Vec<FigurePoint> = Vec::new();
        for p in points {
            while line.len() >= 2 && turn(line[line.len() - 2], line[line.len() - 1], p) <= 0.0 {
                line.pop();
            }
            line.push(p);
        }
        line.pop();
        line
    };
    let mut lower = half(&mut sorted.iter().copied());
    lower.extend(half(&mut sorted.iter().rev().copied()));
    lower
}

/// The corners of a hull that lie farthest out in one of 64 directions. What is left out stands over the sides that
/// are kept by less than a twentieth of the shorter one, far less than the distance kept from the outline.
fn outermost(hull: Vec<FigurePoint>) -> Vec<FigurePoint> {
    const DIRECTIONS: usize = 64;
    if hull.len() <= DIRECTIONS {
        return hull;
    }
    let mut kept = vec![false; hull.len()];
    for i in 0..DIRECTIONS {
        let angle = std::f32::consts::TAU * i as f32 / DIRECTIONS as f32;
        let (c, s) = (cosf(angle), sinf(angle));
        let reach = |p: &FigurePoint| p.x * c + p.y * s;
        if let Some((far, _)) = hull.iter().enumerate().max_by(|a, b| reach(a.1).total_cmp(&reach(b.1))) {
            kept[far] = true;
        }
    }
    hull.into_iter().zip(kept).filter_map(|(p, keep)| keep.then_some(p)).collect()
}

/// Sides that are looked at together.
const LANES: usize = 8;

/// Some sides of a hull: where each starts, where it goes, and 1 over its length squared.
#[derive(Clone, Copy, Default)]
struct Sides {
    x: [f32; LANES],
    y: [f32; LANES],
    ex: [f32; LANES],
    ey: [f32; LANES],
    inverse: [f32; LANES],
}

/// The sides of a hull, the last of them several times so that they come out even; none when it has no inside.
fn sides(hull: &[FigurePoint]) -> Vec<Sides> {
    let n = if hull.len() < 3 { 0 } else { hull.len() };
    let mut out = vec![Sides::default(); n.div_ceil(LANES)];
    for i in 0..out.len() * LANES {
        let (to, side) = (&mut out[i / LANES], i.min(n - 1));
        let (a, b) = (hull[side], hull[(side + 1) % n]);
        let (ex, ey) = (b.x - a.x, b.y - a.y);
        (to.x[i % LANES], to.y[i % LANES], to.ex[i % LANES], to.ey[i % LANES]) = (a.x, a.y, ex, ey);
        to.inverse[i % LANES] = 1.0 / (ex * ex + ey * ey).max(1e-12);
    }
    out
}

/// Distance to a convex outline, negative inside; far when there is none.
fn hull_distance(sides: &[Sides], p: FigurePoint) -> f32 {
    if sides.is_empty() {
        return FAR;
    }
    let min = |a: f32, b: f32| if a < b { a } else { b };
    let max = |a: f32, b: f32| if a > b { a } else { b };
    let (mut nearest, mut least_turn) = ([f32::MAX; LANES], [f32::MAX; LANES]);
    for side in sides {
        for i in 0..LANES {
            let (px, py) = (p.x - side.x[i], p.y - side.y[i]);
            let t = min(max((px * side.ex[i] + py * side.ey[i]) * side.inverse[i], 0.0), 1.0);
            let (dx, dy) = (px - side.ex[i] * t, py - side.ey[i] * t);
            nearest[i] = min(dx * dx + dy * dy, nearest[i]);
            least_turn[i] = min(side.ex[i] * py - side.ey[i] * px, least_turn[i]);
        }
    }
    let d = nearest.into_iter().fold(f32::MAX, min).sqrt();
    if least_turn.into_iter().fold(f32::MAX, min) >= 0.0 { -d } else { d }
}

/// `count` points evenly spaced along a closed line of straight pieces.
fn spaced(points: &[FigurePoint], count: usize) -> Vec<FigurePoint> {
    let n = points.len();
    if n < 3 || count < 3 {
        return points.to_vec();
    }
    let length = |i: usize| distance(points[i], points[(i + 1) % n]);
    let whole: f32 = (0..n).map(length).sum();
    let (mut at, mut before) = (0, 0.0);
    (0..count)
        .map(|k| {
            let want = whole * k as f32 / count as f32;
            while at + 1 < n && before + length(at) <= want {
                before += length(at);
                at += 1;
            }
            let share = (want - before) / length(at).max(1e-9);
            let (a, b) = (points[at], points[(at + 1) % n]);
            FigurePoint::new(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share)
        })
        .collect()
}
