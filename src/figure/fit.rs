//! Few cubic curves through many points. In: a dense polyline. Out: a path that stays near it.
//!
//! - Shape: piecewise cubic Bezier, tangents continuous except at corners.
//! - Units: those of the points (cm in a figure).
//! - Error: no point of the polyline lies farther than `tolerance` from the curve at its own parameter.
//! - Source: least-squares fit with reparametrisation, P. J. Schneider, "An algorithm for automatically fitting
//!   digitized curves", Graphics Gems (1990).

use super::scene::{Path, Step};
use crate::units::FigurePoint;

type P = (f32, f32);

fn sub(a: P, b: P) -> P {
    (a.0 - b.0, a.1 - b.1)
}
fn add(a: P, b: P, k: f32) -> P {
    (a.0 + b.0 * k, a.1 + b.1 * k)
}
fn dot(a: P, b: P) -> f32 {
    a.0 * b.0 + a.1 * b.1
}
fn unit(a: P) -> P {
    let l = dot(a, a).sqrt().max(1e-9);
    (a.0 / l, a.1 / l)
}

/// Appends the fitted open curve through `points` to `path`, which must already stand at the first of them.
pub fn open(points: &[P], tolerance: f32, path: &mut Path<FigurePoint>) {
    if points.len() < 2 {
        return;
    }
    let mut start = 0;
    for i in 1..points.len() {
        if i == points.len() - 1 || is_corner(points, i) {
            smooth_run(&points[start..=i], tolerance, path);
            start = i;
        }
    }
}

/// Appends the fitted closed curve through `points` as a part of its own.
pub fn closed(points: &[P], tolerance: f32, path: &mut Path<FigurePoint>) {
    if points.len() < 4 {
        return;
    }
    let n = points.len();
    let first =
        (0..n).find(|&i| is_corner_at(points[(i + n - 1) % n], points[i], points[(i + 1) % n])).unwrap_or(0);
    let ring: Vec<P> = (0..=n).map(|i| points[(first + i) % n]).collect();
    path.push(Step::Move(point(ring[0])));
    open(&ring, tolerance, path);
    path.push(Step::Close);
}

fn point(p: P) -> FigurePoint {
    FigurePoint::new(p.0, p.1)
}

fn is_corner(points: &[P], i: usize) -> bool {
    is_corner_at(points[i - 1], points[i], points[i + 1])
}

/// A turn of more than about 50 degrees between neighbours is a corner.
fn is_corner_at(a: P, b: P, c: P) -> bool {
    dot(unit(sub(b, a)), unit(sub(c, b))) < 0.64
}

fn smooth_run(points: &[P], tolerance: f32, path: &mut Path<FigurePoint>) {
    let n = points.len();
    let reach = 3.min(n - 1);
    let (t0, t1) = (unit(sub(points[reach], points[0])), unit(sub(points[n - 1 - reach], points[n - 1])));
    fit(points, t0, t1, tolerance, path);
}

fn fit(points: &[P], t0: P, t1: P, tolerance: f32, path: &mut Path<FigurePoint>) {
    let n = points.len();
    let (a, d) = (points[0], points[n - 1]);
    if n == 2 {
        let third = dot(sub(d, a), sub(d, a)).sqrt() / 3.0;
        path.push(Step::Curve(point(add(a, t0, third)), point(add(d, t1, third)), point(d)));
        return;
    }
    const ROUNDS: usize = 6;
    let (mut u, along) = chord_parameters(points);
    let mut off = vec![(0.0, 0.0); n];
    let mut worst = (f32::MAX, n / 2);
    for round in 0..ROUNDS {
        let curve = least_squares(points, &u, along, t0, t1);
        worst = largest_error(points, &u, &curve, &mut off);
        if worst.0 <= tolerance * tolerance {
            path.push(Step::Curve(point(curve[1]), point(curve[2]), point(d)));
            return;
        }
        // Far off: another parameter will not mend it.
        if worst.0 > tolerance * tolerance * 36.0 || round == ROUNDS - 1 {
            break;
        }
        for (value, off) in u.iter_mut().zip(&off) {
            *value = improve(&curve, *off, *value);
        }
    }
    let split = worst.1.clamp(1, n - 2);
    let (before, after) = (split.saturating_sub(2), (split + 2).min(n - 1));
    let middle = unit(sub(points[before], points[after]));
    fit(&points[..=split], t0, middle, tolerance, path);
    fit(&points[split..], (-middle.0, -middle.1), t1, tolerance, path);
}

/// The share of the line at each point, and its length.
fn chord_parameters(points: &[P]) -> (Vec<f32>, f32) {
    let (mut u, mut sum) = (Vec::with_capacity(points.len()), 0.0);
    u.push(0.0);
    for w in points.windows(2) {
        sum += dot(sub(w[1], w[0]), sub(w[1], w[0])).sqrt();
        u.push(sum);
    }
    u.iter_mut().for_each(|x| *x /= sum.max(1e-9));
    (u, sum)
}

fn basis(u: f32) -> [f32; 4] {
    let v = 1.0 - u;
    [v * v * v, 3.0 * u * v * v, 3.0 * u * u * v, u * u * u]
}

fn at(curve: &[P; 4], u: f32) -> P {
    let b = basis(u);
    (0..4).fold((0.0, 0.0), |sum, i| add(sum, curve[i], b[i]))
}

/// `along`: the length of the line through the points.
fn least_squares(points: &[P], u: &[f32], along: f32, t0: P, t1: P) -> [P; 4] {
    let (a, d) = (points[0], points[points.len() - 1]);
    let (mut c00, mut c01, mut c11, mut x0, mut x1) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for (p, &u) in points.iter().zip(u) {
        let b = basis(u);
        let (r, s) = ((t0.0 * b[1], t0.1 * b[1]), (t1.0 * b[2], t1.1 * b[2]));
        let base = add(add((0.0, 0.0), a, b[0] + b[1]), d, b[2] + b[3]);
        let rest = sub(*p, base);
        c00 += dot(r, r);
        c01 += dot(r, s);
        c11 += dot(s, s);
        x0 += dot(r, rest);
        x1 += dot(s, rest);
    }
    let det = c00 * c11 - c01 * c01;
    let length = dot(sub(d, a), sub(d, a)).sqrt();
    let (mut l, mut r) = if det.abs() > 1e-9 {
        ((x0 * c11 - x1 * c01) / det, (c00 * x1 - c01 * x0) / det)
    } else {
        (0.0, 0.0)
    };
    // A handle nearly as long as the line itself would make a spike between two points.
    let sane = |h: f32| h > length * 0.01 && h < along * 0.8;
    if !sane(l) || !sane(r) {
        (l, r) = (length / 3.0, length / 3.0);
    }
    [a, add(a, t0, l), add(d, t1, r), d]
}

/// The largest squared distance and where it is; leaves in `off` from each point to the curve.
fn largest_error(points: &[P], u: &[f32], curve: &[P; 4], off: &mut [P]) -> (f32, usize) {
    let mut worst = (0.0, points.len() / 2);
    for (i, ((p, &u), off)) in points.iter().zip(u).zip(off).enumerate() {
        *off = sub(at(curve, u), *p);
        if dot(*off, *off) > worst.0 {
            worst = (dot(*off, *off), i);
        }
    }
    worst
}

/// One Newton step towards the parameter of the curve's point nearest to a point that lies `off` from it at `u`.
fn improve(curve: &[P; 4], off: P, u: f32) -> f32 {
    let v = 1.0 - u;
    let d1 = [sub(curve[1], curve[0]), sub(curve[2], curve[1]), sub(curve[3], curve[2])];
    let first = add(add(add((0.0, 0.0), d1[0], 3.0 * v * v), d1[1], 6.0 * u * v), d1[2], 3.0 * u * u);
    let (e0, e1) = (sub(d1[1], d1[0]), sub(d1[2], d1[1]));
    let second = add(add((0.0, 0.0), e0, 6.0 * v), e1, 6.0 * u);
    let down = dot(first, first) + dot(off, second);
    if down.abs() < 1e-9 { u } else { (u - dot(off, first) / down).clamp(0.0, 1.0) }
}
