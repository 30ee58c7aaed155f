//! Fewer curves for a small figure. In: a scene, and how far a line may move. Out: the same scene with long paths fitted
//! again and specks left out. Words, colours and order stay.

use super::scene::{Item, Path, Scene, Step};
use super::{fit, grid};
use crate::units::FigurePoint;

/// How far an edge may move, as a share of the breadth of what it bounds.
const THIN: f32 = 0.3;
/// Parts with so few steps are left as they are.
const FEW: usize = 5;
/// A filled part smaller than this many times the tolerance, across and down, is a speck.
const SPECK: f32 = 5.0;

/// Fits every long path again; no line moves farther than about `tolerance` cm.
pub fn coarsen(scene: &mut Scene, tolerance: f32) {
    coarsen_items(&mut scene.items, tolerance);
}

/// The same for marks that are no scene yet.
pub(super) fn coarsen_items(items: &mut [Item<FigurePoint>], tolerance: f32) {
    items.iter_mut().for_each(|item| coarsen_item(item, tolerance));
}

fn coarsen_item(item: &mut Item<FigurePoint>, tolerance: f32) {
    match item {
        Item::Group { items, .. } => {
            items.iter_mut().for_each(|item| coarsen_item(item, tolerance));
            items.retain(|item| !matches!(item, Item::Fill { path, .. } if path.is_empty()));
        }
        Item::Fill { path, .. } => *path = refitted(path, tolerance, SPECK * tolerance),
        Item::Stroke { path, .. } => *path = refitted(path, tolerance, 0.0),
        // A window cuts where it cuts.
        Item::Clip { items, .. } => items.iter_mut().for_each(|item| coarsen_item(item, tolerance)),
        Item::Text(_) => {}
    }
}

/// The path with each of its parts fitted again; parts smaller than `least` cm are left out.
fn refitted(path: &Path<FigurePoint>, tolerance: f32, least: f32) -> Path<FigurePoint> {
    let mut out = vec![];
    let starts = || path.iter().enumerate().filter(|(_, s)| matches!(s, Step::Move(_))).map(|(i, _)| i);
    for (start, end) in starts().zip(starts().skip(1).chain([path.len()])) {
        let part = &path[start..end];
        let (points, closed) = flattened(part, tolerance * 2.0);
        if extent(&points) < least {
            continue;
        }
        // A line of ink keeps its width.
        let tolerance = if closed { tolerance.min(THIN * breadth(&points)) } else { tolerance };
        let mut fitted = vec![];
        if part.len() > FEW && closed {
            fit::closed(&points, tolerance, &mut fitted);
        } else if part.len() > FEW {
            fitted.push(part[0]);
            fit::open(&points, tolerance, &mut fitted);
        }
        let better = !fitted.is_empty() && fitted.len() < part.len();
        out.extend_from_slice(if better { &fitted } else { part });
    }
    out
}

/// Points along one part, about `step` cm apart, and whether it is closed.
fn flattened(part: &[Step<FigurePoint>], step: f32) -> (Vec<(f32, f32)>, bool) {
    let mut points: Vec<(f32, f32)> = vec![];
    let mut closed = false;
    for s in part {
        match *s {
            Step::Move(p) | Step::Line(p) => points.push((p.x, p.y)),
            Step::Curve(a, b, p) => {
                let Some(&(x, y)) = points.last() else { continue };
                let here = FigurePoint::new(x, y);
                let length = distance(here, a) + distance(a, b) + distance(b, p);
                let n = ((length / step) as usize).clamp(1, 32);
                points.extend((1..=n).map(|i| on_curve(here, a, b, p, i as f32 / n as f32)));
            }
            Step::Close => closed = true,
        }
    }
    // A closed part comes back to its start by itself.
    if closed && points.len() > 1 {
        let (first, last) = (points[0], points[points.len() - 1]);
        if (first.0 - last.0).abs() + (first.1 - last.1).abs() < 1e-4 {
            points.pop();
        }
    }
    (points, closed)
}

fn distance(a: FigurePoint, b: FigurePoint) -> f32 {
    ((b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y)).sqrt()
}

fn on_curve(p: FigurePoint, a: FigurePoint, b: FigurePoint, q: FigurePoint, u: f32) -> (f32, f32) {
    let v = 1.0 - u;
    let (i, j, k, l) = (v * v * v, 3.0 * u * v * v, 3.0 * u * u * v, u * u * u);
    (p.x * i + a.x * j + b.x * k + q.x * l, p.y * i + a.y * j + b.y * k + q.y * l)
}

/// Mean breadth of a closed part, cm: twice its area over its circumference.
fn breadth(points: &[(f32, f32)]) -> f32 {
    let ring = || points.iter().zip(points.iter().skip(1).chain(points.first()));
    let around: f32 =
        ring().map(|(a, b)| distance(FigurePoint::new(a.0, a.1), FigurePoint::new(b.0, b.1))).sum();
    2.0 * grid::area(points).abs() / around.max(1e-6)
}

/// The larger of width and height, cm.
fn extent(points: &[(f32, f32)]) -> f32 {
    let span = |of: fn(&(f32, f32)) -> f32| {
        let (low, high) = points.iter().map(of).fold((f32::MAX, f32::MIN), |(l, h), v| (l.min(v), h.max(v)));
        high - low
    };
    span(|p| p.0).max(span(|p| p.1))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A ring of many short curves stays a ring, with fewer of them; a speck beside it goes.
    #[test]
    fn fewer_curves_and_the_same_shape() {
        let ring = |r: f32, n: usize| -> Path<FigurePoint> {
            let at = |i: usize, k: f32| {
                let (sin, cos) = libm::sincosf((i as f32 + k) / n as f32 * std::f32::consts::TAU);
                FigurePoint::new(r * cos, r * sin)
            };
            let mut path = vec![Step::Move(at(0, 0.0))];
            path.extend((0..n).map(|i| Step::Curve(at(i, 0.33), at(i, 0.67), at(i, 1.0))));
            path.push(Step::Close);
            path
        };
        let mut path = ring(5.0, 60);
        path.extend(ring(0.05, 8));
        let coarse = refitted(&path, 0.04, 0.2);
        assert!(coarse.len() < 16, "{} steps", coarse.len());
        assert_eq!(coarse.iter().filter(|s| matches!(s, Step::Move(_))).count(), 1);
        let (points, closed) = flattened(&coarse, 0.1);
        assert!(closed && points.len() > 100);
        for (x, y) in points {
            let off = (x * x + y * y).sqrt() - 5.0;
            assert!(off.abs() < 0.08, "{off} cm off at {x}, {y}");
        }
    }
}
