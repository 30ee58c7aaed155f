//! How the drawn lines of the baby meet. In: chains of cracks. Out: smooth lines, each joined end on the line it meets.
//!
//! Every line is smoothed by itself, so that a line that ends on another would float off it or poke through it. Its end
//! is moved onto the smooth line, and the move is blended back along it.

use super::grid::{self, Line, smooth_step};
use super::lines::Chain;
use super::ribbon::distance;

/// How far smoothing reaches along a line, cm: for points, and for weights.
const SMOOTH: (f32, f32) = (0.19, 0.36);
/// Over how much of a line the move of its end is blended back, cm.
const BLEND: f32 = 0.5;
/// How far along a line its meeting with another is looked for, and how far an end is moved at most, cm.
const NEAR: f32 = 0.4;

/// A smooth line.
pub struct Smooth {
    /// Points in the picture plane, cm: one for each point of the chain.
    pub points: Line,
    /// Weight at each point, 0 to 1.
    pub weights: Vec<f32>,
    /// Where each end meets another line: its number and the point of it.
    pub meets: [Option<(usize, usize)>; 2],
}

/// The smooth lines of `chains`, in the same order; `cell` is the size of a cell, cm; smoothed over `even`
/// times the usual length.
pub fn joined(chains: &[Chain], cell: f32, even: f32) -> Vec<Smooth> {
    let mut lines: Vec<Smooth> = chains
        .iter()
        .map(|chain| Smooth {
            points: grid::smooth(&chain.points, chain.closed, SMOOTH.0 * even / cell),
            weights: grid::smooth_weights(&chain.weights, chain.closed, SMOOTH.1 / cell),
            meets: chain.meets,
        })
        .collect();
    // Twice: a line may end on another near an end that has moved itself.
    for _ in 0..2 {
        for i in 0..lines.len() {
            for at_end in [false, true] {
                if let Some((through, at)) = lines[i].meets[usize::from(at_end)] {
                    let closed = chains[through].closed;
                    let Some(met) = nearest(&lines, i, at_end, (through, at), closed, cell) else { continue };
                    let line = &mut lines[i];
                    line.meets[usize::from(at_end)] = Some((through, met.0));
                    move_end(&mut line.points, at_end, met.1);
                }
            }
        }
    }
    lines
}

/// The point of the line `through`, about its point `at`, that is nearest to an end of line `i`: its number and place.
fn nearest(
    lines: &[Smooth],
    i: usize,
    at_end: bool,
    (through, at): (usize, usize),
    closed: bool,
    cell: f32,
) -> Option<(usize, (f32, f32))> {
    let (points, other) = (&lines[i].points, &lines[through].points);
    let end = if at_end { points[points.len() - 1] } else { points[0] };
    let (n, reach) = (other.len(), (NEAR / cell) as usize);
    // A line that meets itself must not meet the very end that is to be moved.
    if i == through {
        let from_end = if at_end { n - 1 - at } else { at };
        if from_end < 3 * reach {
            return None;
        }
    }
    let range = if closed {
        at + n - reach.min(n)..at + n + reach
    } else {
        at.saturating_sub(reach)..(at + reach).min(n - 1)
    };
    range
        .map(|k| {
            let (a, b) = (other[k % n], other[(k + 1) % n]);
            let (dx, dy) = (b.0 - a.0, b.1 - a.1);
            let along = ((end.0 - a.0) * dx + (end.1 - a.1) * dy) / (dx * dx + dy * dy).max(1e-9);
            let t = along.clamp(0.0, 1.0);
            (k % n, (a.0 + dx * t, a.1 + dy * t))
        })
        .min_by(|a, b| distance(a.1, end).total_cmp(&distance(b.1, end)))
        .filter(|(_, p)| distance(*p, end) < NEAR)
}

/// Moves the end of a line to `target`, and what is near the end with it.
fn move_end(points: &mut [(f32, f32)], at_end: bool, target: (f32, f32)) {
    let n = points.len();
    let index = |k: usize| if at_end { n - 1 - k } else { k };
    let end = points[index(0)];
    let (dx, dy) = (target.0 - end.0, target.1 - end.1);
    let (mut gone, mut before) = (0.0, end);
    for k in 0..n {
        let p = points[index(k)];
        gone += distance(before, p);
        before = p;
        let share = 1.0 - smooth_step(0.0, BLEND, gone);
        if share <= 0.0 {
            break;
        }
        points[index(k)] = (p.0 + dx * share, p.1 + dy * share);
    }
}

/// How near a line runs beside another that only doubles it, cm.
const BESIDE: f32 = 0.22;
/// A line longer than this is never taken for the double of another, cm.
const LONGEST_DOUBLE: f32 = 3.0;

/// Which of these drawn lines only double a longer one: they run so close beside it that they read as a tick.
pub fn doubles(lines: &[&[(f32, f32)]]) -> Vec<bool> {
    let length = |line: &[(f32, f32)]| line.windows(2).map(|w| distance(w[0], w[1])).sum::<f32>();
    let lengths: Vec<f32> = lines.iter().map(|line| length(line)).collect();
    let boxes: Vec<_> = lines.iter().map(|line| bounds(line)).collect();
    (0..lines.len())
        .map(|i| {
            let beside = |p: &(f32, f32), j: usize| {
                let (low, high) = boxes[j];
                p.0 > low.0 - BESIDE
                    && p.1 > low.1 - BESIDE
                    && p.0 < high.0 + BESIDE
                    && p.1 < high.1 + BESIDE
                    && lines[j].iter().any(|q| distance(*p, *q) < BESIDE)
            };
            // Nine tenths of the points that are tried lie beside the other.
            let misses = lines[i].len().div_ceil(3) / 10;
            lengths[i] < LONGEST_DOUBLE
                && (0..lines.len()).any(|j| {
                    lengths[j] > lengths[i]
                        && lines[i].iter().step_by(3).filter(|p| !beside(p, j)).nth(misses).is_none()
                })
        })
        .collect()
}

/// The corners of the upright rectangle round a line: the lowest and the highest x and y.
fn bounds(line: &[(f32, f32)]) -> ((f32, f32), (f32, f32)) {
    line.iter().fold(((f32::MAX, f32::MAX), (f32::MIN, f32::MIN)), |(low, high), p| {
        ((low.0.min(p.0), low.1.min(p.1)), (high.0.max(p.0), high.1.max(p.1)))
    })
}
