//! The seat, without a notch. In: posed skin and the region between the buttocks. Out: the same, lifted there.
//!
//! Round the axis of the hips the skin is measured in rings; in each ring the middle is lifted to the line over both
//! sides and a little beyond. So no outline tells anything of what lies between, from front, side or end.

use super::mesh::smooth;
use super::rest::Rest;

/// Columns across, and their distance, cm.
const COLUMNS: usize = 25;
const STEP: f32 = 0.45;
/// Rings round the axis, their distance, and the first, degrees; 0 is straight down, 90 to the front.
const RINGS: usize = 33;
const TURN: f32 = 8.0;
const FIRST: f32 = -130.0;
/// How far the middle stands above the line over both sides, cm: a house value, it rounds the seat.
const ROUND: f32 = 0.26;

/// Steps of evening after each lift.
const EVENED: [usize; 6] = [14, 14, 12, 8, 5, 2];

type Grid = [[f32; COLUMNS]; RINGS];

/// Lifts the skin between the buttocks; `scale` is the trunk's size against the term body's, `how_far` a share of 1.
pub fn bridge(points: &mut [[f32; 3]], rest: &Rest, scale: f32, how_far: f32) {
    let round = |p: [f32; 3]| {
        let (x, y, z) = (p[0] / scale, p[1] / scale - 0.6, p[2] / scale - 0.2);
        (x, libm::atan2f(z, -y).to_degrees(), (y * y + z * z).sqrt())
    };
    let mut grid = [[-1.0f32; COLUMNS]; RINGS];
    let mut met = |p: [f32; 3]| {
        let (x, turn, r) = round(p);
        let column = libm::roundf(x / STEP + (COLUMNS / 2) as f32);
        let ring = libm::roundf((turn - FIRST) / TURN);
        if (0.0..COLUMNS as f32).contains(&column) && (0.0..RINGS as f32).contains(&ring) {
            let cell = &mut grid[ring as usize][column as usize];
            *cell = cell.max(r);
        }
    };
    for q in &rest.seat {
        let [a, b, c, d] = q.map(|v| points[usize::from(v)]);
        let middle =
            |p: [f32; 3], q: [f32; 3]| [(p[0] + q[0]) * 0.5, (p[1] + q[1]) * 0.5, (p[2] + q[2]) * 0.5];
        let (ab, cd) = (middle(a, b), middle(c, d));
        for p in [a, b, c, d, ab, cd, middle(b, c), middle(d, a), middle(ab, cd)] {
            met(p);
        }
    }
    for row in &mut grid {
        hull(row);
    }
    blurred(&mut grid);

    // Lifted and evened by turns: skin that lay in folds spreads out over the new form.
    for steps in EVENED {
        let mut share = vec![0.0f32; points.len()];
        for (v, reach) in rest.regions.bridge.iter().enumerate() {
            if *reach <= 0.0 {
                continue;
            }
            let p = points[v];
            let (x, turn, r) = round(p);
            let wanted = at(&grid, turn, x) + ROUND * (1.0 - (x / 3.2) * (x / 3.2)).clamp(0.0, 1.0);
            // It fades to the sacrum, where a furrow may stay, and to the pubic bone.
            let here =
                ramp(turn, &[(-108.0, 0.0), (-82.0, 0.5), (-62.0, 1.0), (-2.0, 1.0), (46.0, 0.0)]) * reach;
            let lift = how_far * here * (wanted - r).clamp(0.0, 3.0) / r.max(1e-6);
            let (y, z) = (p[1] - 0.6 * scale, p[2] - 0.2 * scale);
            points[v] = [p[0], p[1] + lift * y, p[2] + lift * z];
            share[v] =
                reach * ramp(turn, &[(-108.0, 0.0), (-80.0, 0.3), (-50.0, 1.0), (60.0, 1.0), (95.0, 0.6)]);
        }
        smooth(points, &rest.near, &share, steps, 0.5);
    }
}

/// A ring with its gaps closed, made alike on both sides, and no lower than the lines over it.
fn hull(row: &mut [f32; COLUMNS]) {
    let known: Vec<(f32, f32)> =
        row.iter().enumerate().filter(|(_, r)| **r > 0.0).map(|(i, r)| (i as f32, *r)).collect();
    if known.len() < 4 {
        *row = [0.0; COLUMNS];
        return;
    }
    let filled: [f32; COLUMNS] = std::array::from_fn(|i| ramp(i as f32, &known));
    let even: [f32; COLUMNS] = std::array::from_fn(|i| filled[i].max(filled[COLUMNS - 1 - i]));
    let mut over: Vec<(f32, f32)> = vec![];
    for (i, r) in even.into_iter().enumerate() {
        let p = (i as f32, r);
        while let [.., a, b] = over[..] {
            if (b.1 - a.1) * (p.0 - a.0) > (p.1 - a.1) * (b.0 - a.0) {
                break;
            }
            over.pop();
        }
        over.push(p);
    }
    *row = std::array::from_fn(|i| ramp(i as f32, &over));
}

/// Blurred by a bell of 1.1 rings and 0.8 columns.
fn blurred(grid: &mut Grid) {
    let bell = |sigma: f32| -> [f32; 4] {
        let k: [f32; 4] = std::array::from_fn(|i| libm::expf(-((i * i) as f32) / (2.0 * sigma * sigma)));
        let sum = k[0] + 2.0 * (k[1] + k[2] + k[3]);
        k.map(|k| k / sum)
    };
    let (rings, columns) = (bell(1.1), bell(0.8));
    let old = *grid;
    for i in 0..RINGS {
        for j in 0..COLUMNS {
            let mut s = old[i][j] * rings[0];
            for k in 1..4 {
                s += (old[i.saturating_sub(k)][j] + old[(i + k).min(RINGS - 1)][j]) * rings[k];
            }
            grid[i][j] = s;
        }
    }
    for row in grid {
        let old = *row;
        *row = std::array::from_fn(|j| {
            let mut s = old[j] * columns[0];
            for k in 1..4 {
                s += (old[j.saturating_sub(k)] + old[(j + k).min(COLUMNS - 1)]) * columns[k];
            }
            s
        });
    }
}

/// The grid between its points; nothing beyond its first and last ring.
fn at(grid: &Grid, turn: f32, x: f32) -> f32 {
    let (u, v) = ((turn - FIRST) / TURN, (x / STEP + (COLUMNS / 2) as f32).clamp(0.0, (COLUMNS - 1) as f32));
    if !(0.0..=(RINGS - 1) as f32).contains(&u) {
        return 0.0;
    }
    let (i, j) = ((u as usize).min(RINGS - 2), (v as usize).min(COLUMNS - 2));
    let (a, b) = (u - i as f32, v - j as f32);
    let low = grid[i][j] * (1.0 - b) + grid[i][j + 1] * b;
    let high = grid[i + 1][j] * (1.0 - b) + grid[i + 1][j + 1] * b;
    low * (1.0 - a) + high * a
}

/// The line through `points`, level beyond its ends.
fn ramp(x: f32, points: &[(f32, f32)]) -> f32 {
    let Some(next) = points.iter().position(|p| x <= p.0) else { return points[points.len() - 1].1 };
    if next == 0 {
        return points[0].1;
    }
    let (a, b) = (points[next - 1], points[next]);
    a.1 + (b.1 - a.1) * (x - a.0) / (b.0 - a.0)
}
