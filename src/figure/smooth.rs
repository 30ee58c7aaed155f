//! Few well-chosen points become a smooth line. In: points in order. Out: cubic Bezier paths through all of them.
//!
//! Catmull-Rom with tangents weighed by the distances between points, so that uneven spacing neither
//! overshoots nor makes loops; lines of even or changing width are made from the same points.

use crate::figure::scene::{Path, Step};
use crate::units::FigurePoint;

/// A smooth open line through `points` (in order); empty for fewer than two points.
pub fn open(points: &[FigurePoint]) -> Path<FigurePoint> {
    if points.len() < 2 {
        return Path::new();
    }
    let mut path = vec![Step::Move(points[0])];
    append(&mut path, points, &tangents(points, false), false);
    path
}

/// A smooth closed line through `points` (in order, the first not repeated); empty for fewer than three.
pub fn closed(points: &[FigurePoint]) -> Path<FigurePoint> {
    if points.len() < 3 {
        return Path::new();
    }
    let mut path = vec![Step::Move(points[0])];
    append(&mut path, points, &tangents(points, true), true);
    path.push(Step::Close);
    path
}

/// An outline made of smooth parts that meet in corners: each part is a line of its own, the end of one joined
/// straight to the start of the next, and the last to the first.
pub fn cornered(parts: &[Vec<FigurePoint>]) -> Path<FigurePoint> {
    let mut path = Path::new();
    for part in parts.iter().filter(|p| !p.is_empty()) {
        path.push(if path.is_empty() { Step::Move(part[0]) } else { Step::Line(part[0]) });
        append(&mut path, part, &tangents(part, false), false);
    }
    if !path.is_empty() {
        path.push(Step::Close);
    }
    path
}

/// A brush line: the outline of a ribbon along `points`, `width` cm wide in its middle, thinning to `ends` of
/// that width (0 to 1) at both ends over a fifth of its length, and thicker by up to a fifth where the line faces
/// away from a light at the upper left.
pub fn brush(points: &[FigurePoint], width: f32, ends: f32) -> Path<FigurePoint> {
    let n = points.len();
    if n < 2 {
        return Path::new();
    }
    let tangents = tangents(points, false);
    let mut run = vec![0.0f32; n];
    for i in 1..n {
        run[i] = run[i - 1] + distance(points[i - 1], points[i]);
    }
    let whole = run[n - 1].max(1e-6);
    let (mut left, mut right) = (Vec::with_capacity(n), Vec::with_capacity(n));
    for i in 0..n {
        let t = unit(tangents[i]);
        let normal = FigurePoint::new(-t.y, t.x);
        let near = (run[i].min(whole - run[i]) / (0.2 * whole)).clamp(0.0, 1.0);
        let taper = ends + (1.0 - ends) * near * (2.0 - near);
        // A line is in shade when one of its two normals points down to the right.
        let shade = 1.0 + 0.2 * (0.707 * (normal.x - normal.y)).abs() - 0.1;
        let half = 0.5 * width * taper * shade;
        left.push(FigurePoint::new(points[i].x + normal.x * half, points[i].y + normal.y * half));
        right.push(FigurePoint::new(points[i].x - normal.x * half, points[i].y - normal.y * half));
    }
    right.reverse();
    cornered(&[left, right])
}

/// `points` and the same mirrored in the midline, left side first.
pub fn both_sides(points: &[FigurePoint]) -> [Vec<FigurePoint>; 2] {
    [points.to_vec(), points.iter().map(|p| FigurePoint::new(-p.x, p.y)).collect()]
}

/// Signed area in cm2, positive when the points run anticlockwise.
pub fn area(points: &[FigurePoint]) -> f32 {
    let n = points.len();
    (0..n).map(|i| (points[i], points[(i + 1) % n])).map(|(a, b)| a.x * b.y - b.x * a.y).sum::<f32>() * 0.5
}

/// Distance of two points in cm.
pub fn distance(a: FigurePoint, b: FigurePoint) -> f32 {
    let (x, y) = (a.x - b.x, a.y - b.y);
    (x * x + y * y).sqrt()
}

fn unit(t: FigurePoint) -> FigurePoint {
    let length = (t.x * t.x + t.y * t.y).sqrt().max(1e-9);
    FigurePoint::new(t.x / length, t.y / length)
}

fn append(path: &mut Path<FigurePoint>, p: &[FigurePoint], t: &[FigurePoint], closed: bool) {
    let n = p.len();
    for i in 0..if closed { n } else { n - 1 } {
        let (a, b) = (p[i], p[(i + 1) % n]);
        let (ta, tb) = (t[i], t[(i + 1) % n]);
        let third = distance(a, b) / 3.0;
        path.push(Step::Curve(
            FigurePoint::new(a.x + ta.x * third, a.y + ta.y * third),
            FigurePoint::new(b.x - tb.x * third, b.y - tb.y * third),
            b,
        ));
    }
}

/// Directions (about length 1) at the points: each neighbour's slope weighed by the distance to the other.
fn tangents(p: &[FigurePoint], closed: bool) -> Vec<FigurePoint> {
    let n = p.len();
    let slope = |a: FigurePoint, b: FigurePoint| {
        let d = distance(a, b).max(1e-9);
        (FigurePoint::new((b.x - a.x) / d, (b.y - a.y) / d), d)
    };
    let middle = |a, b, c| {
        let ((s, d), (u, e)) = (slope(a, b), slope(b, c));
        FigurePoint::new((s.x * e + u.x * d) / (d + e), (s.y * e + u.y * d) / (d + e))
    };
    (0..n)
        .map(|i| {
            if closed {
                middle(p[(i + n - 1) % n], p[i], p[(i + 1) % n])
            } else if n == 1 {
                FigurePoint::default()
            } else if n == 2 {
                slope(p[0], p[1]).0
            } else if i == 0 {
                // The end bends as the curve does: the second point's tangent mirrored in the first piece.
                let (s, m) = (slope(p[0], p[1]).0, middle(p[0], p[1], p[2]));
                FigurePoint::new(1.5 * s.x - 0.5 * m.x, 1.5 * s.y - 0.5 * m.y)
            } else if i == n - 1 {
                let (s, m) = (slope(p[n - 2], p[n - 1]).0, middle(p[n - 3], p[n - 2], p[n - 1]));
                FigurePoint::new(1.5 * s.x - 0.5 * m.x, 1.5 * s.y - 0.5 * m.y)
            } else {
                middle(p[i - 1], p[i], p[i + 1])
            }
        })
        .collect()
}
