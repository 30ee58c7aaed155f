//! Ink lines of changing width. In: points and widths. Out: filled outlines, fitted with few curves.

use super::fit;
use super::grid::Line;
use super::scene::{Path, Step};
use crate::units::FigurePoint;

/// How far a fitted edge may lie from its points, cm.
const TOLERANCE: f32 = 0.02;

/// Appends the outline of a ribbon to `path`. `widths` are full widths in cm, one a point.
pub fn ribbon(points: &[(f32, f32)], widths: &[f32], closed: bool, path: &mut Path<FigurePoint>) {
    let keep = thin_out(points, widths, closed);
    let n = keep.len();
    if n < 2 || (closed && n < 4) {
        return;
    }
    let at = |k: usize| points[keep[k]];
    let offset = |k: usize, sign: f32| {
        let (before, after) = if closed {
            (at((k + n - 1) % n), at((k + 1) % n))
        } else {
            (at(k.saturating_sub(1)), at((k + 1).min(n - 1)))
        };
        let (dx, dy) = (after.0 - before.0, after.1 - before.1);
        let length = (dx * dx + dy * dy).sqrt().max(1e-6);
        let half = widths[keep[k]] * 0.5 * sign;
        (at(k).0 - dy / length * half, at(k).1 + dx / length * half)
    };
    // On the inner side of a tight bend the edge would fold over: points that go back are left out.
    let edge = |sign: f32| -> Line {
        let mut out: Line = vec![];
        let mut kept: Vec<usize> = vec![];
        for k in 0..n {
            let p = offset(k, sign);
            let goes_on = |&last: &usize, q: &(f32, f32)| {
                let (a, b) = (at(last), at(k));
                let chord = (b.0 - a.0, b.1 - a.1);
                let along = (p.0 - q.0) * chord.0 + (p.1 - q.1) * chord.1;
                along > 0.2 * (chord.0 * chord.0 + chord.1 * chord.1)
            };
            let is_last = !closed && k + 1 == n;
            while is_last && out.len() > 1 && !goes_on(&kept[kept.len() - 1], &out[out.len() - 1]) {
                out.pop();
                kept.pop();
            }
            if is_last || out.is_empty() || goes_on(&kept[kept.len() - 1], &out[out.len() - 1]) {
                out.push(p);
                kept.push(k);
            }
        }
        out
    };
    let (left, mut right) = (edge(1.0), edge(-1.0));
    right.reverse();
    if closed {
        fit::closed(&left, TOLERANCE, path);
        fit::closed(&right, TOLERANCE, path);
        return;
    }
    path.push(Step::Move(FigurePoint::new(left[0].0, left[0].1)));
    fit::open(&left, TOLERANCE, path);
    path.push(Step::Line(FigurePoint::new(right[0].0, right[0].1)));
    fit::open(&right, TOLERANCE, path);
    path.push(Step::Close);
}

/// Indices of points about 0.1 cm apart (never nearer than half the width, so that tight bends do not fold over).
fn thin_out(points: &[(f32, f32)], widths: &[f32], closed: bool) -> Vec<usize> {
    let n = points.len();
    let mut keep = vec![0];
    let mut gone = 0.0;
    for i in 1..n {
        gone += distance(points[i - 1], points[i]);
        if gone >= (widths[i] * 0.8).max(0.1) {
            keep.push(i);
            gone = 0.0;
        }
    }
    if !closed && keep[keep.len() - 1] != n - 1 {
        if gone < 0.05 && keep.len() > 1 {
            keep.pop();
        }
        keep.push(n - 1);
    }
    keep
}

/// Distance between two points of the picture plane.
pub fn distance(a: (f32, f32), b: (f32, f32)) -> f32 {
    ((b.0 - a.0) * (b.0 - a.0) + (b.1 - a.1) * (b.1 - a.1)).sqrt()
}
