//! Round things as an engraver cuts them: tones and curved lines that swell in the shade. In: a rounded shape, a light. Out:
//! filled paths, in the shape's own picture.
//!
//! The shape is a disc of directions (the half of a ball that is turned to the viewer) laid into the picture by a map.

use super::mother_ink::fill;
use super::scene::{Colour, Item, Path, Step};
use super::smooth;
use crate::units::{FigurePoint, Vec3};

/// From where the light falls: the upper left, before the picture.
const LIGHT: Vec3 = Vec3::new(-0.47, 0.56, 0.682);
/// Round which the lines are cut: between light and viewer, so that they bend with the shape.
const AXIS: Vec3 = Vec3::new(-0.53, 0.62, 0.578);
/// Steps round a ring.
const AROUND: usize = 30;

/// Lays the direction (x, y) of the disc into the picture.
pub type Lay<'a> = &'a dyn Fn(f32, f32) -> FigurePoint;

/// A ring of directions at one angle from an axis, kept on the side of the viewer.
fn ring(axis: Vec3, cosine: f32) -> Vec<Vec3> {
    let sine = (1.0 - cosine * cosine).max(0.0).sqrt();
    let e = Vec3::new(axis.y, -axis.x, 0.0).normalized();
    let f = axis.cross(e);
    (0..AROUND)
        .map(|i| {
            let (s, c) = libm::sincosf(std::f32::consts::TAU * i as f32 / AROUND as f32);
            axis * cosine + e * (sine * c) + f * (sine * s)
        })
        .collect()
}

/// Tones: each colour where the light falls at least so straight, the darkest first and everywhere.
pub fn tones(colours: &[(f32, Colour)], lay: Lay<'_>) -> Vec<Item<FigurePoint>> {
    let mut out = vec![];
    for (least, colour) in colours {
        let rim = |p: Vec3| {
            let flat = libm::hypotf(p.x, p.y).max(1e-6);
            // What turns away ends at the rim.
            if p.z < 0.0 { lay(p.x / flat, p.y / flat) } else { lay(p.x, p.y) }
        };
        let points: Vec<FigurePoint> = ring(LIGHT, *least).into_iter().map(rim).collect();
        out.push(fill(smooth::closed(&points), *colour));
    }
    out
}

/// Lines that swell where the shape turns from the light: `most` wide at the darkest, about `apart` (of the disc) from one another.
pub fn lines(apart: f32, most: f32, colour: Colour, lay: Lay<'_>) -> Item<FigurePoint> {
    let mut path: Path<FigurePoint> = vec![];
    let mut angle = 0.35f32;
    while angle < 2.6 {
        let cosine = libm::cosf(angle);
        let mut run: Vec<(FigurePoint, f32)> = vec![];
        let around = ring(AXIS, cosine);
        // From where the ring is hidden, so that no line is cut in its middle.
        let start = (0..AROUND).find(|i| around[*i].z < 0.0).unwrap_or(0);
        for i in 0..=AROUND {
            let p = around[(start + i) % AROUND];
            let lit = p.dot(LIGHT);
            let width = most * ((0.80 - lit) / 0.95).clamp(0.0, 1.0);
            if p.z > 0.02 && width > 0.18 * most {
                run.push((lay(p.x, p.y), width));
            } else {
                swell(&run, &mut path);
                run.clear();
            }
        }
        swell(&run, &mut path);
        angle += apart;
    }
    fill(path, colour)
}

/// A line as wide at each point as is said, pointed at its ends.
fn swell(run: &[(FigurePoint, f32)], path: &mut Path<FigurePoint>) {
    let n = run.len();
    if n < 4 {
        return;
    }
    let side = |sign: f32| -> Vec<FigurePoint> {
        (0..n)
            .map(|i| {
                let (a, b) = (run[i.saturating_sub(1)].0, run[(i + 1).min(n - 1)].0);
                let long = libm::hypotf(b.x - a.x, b.y - a.y).max(1e-6);
                let half = if i == 0 || i == n - 1 { 0.0 } else { 0.5 * run[i].1 * sign };
                FigurePoint::new(
                    run[i].0.x - (b.y - a.y) / long * half,
                    run[i].0.y + (b.x - a.x) / long * half,
                )
            })
            .collect()
    };
    let (left, mut right) = (side(1.0), side(-1.0));
    right.reverse();
    path.extend(smooth::cornered(&[left, right]));
}

/// Steps of a path moved out of one place: its points in order.
pub fn polygon(points: &[FigurePoint]) -> Path<FigurePoint> {
    let mut path: Path<FigurePoint> = vec![];
    for (i, p) in points.iter().enumerate() {
        path.push(if i == 0 { Step::Move(*p) } else { Step::Line(*p) });
    }
    path.push(Step::Close);
    path
}
