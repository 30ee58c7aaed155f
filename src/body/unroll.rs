//! The skin of the abdomen laid flat. In: her shape, how far up and how far across. Out: for each point of the skin its
//! place on flat paper, and where the paper has to overlap.
//!
//! Shape: a dome cannot be laid flat, so it is laid in bands across. In a band the row through its middle keeps its
//! bend in the surface; from it the lines of equal distance from the midline run up and down with their own length and
//! bend. The midline of all bands is one straight line. Between two bands the paper gapes away from the midline: a dart,
//! which closes when the sheet is laid on the abdomen.
//! Units: cm; `across` and `along` are lengths on the skin, as in `MotherShape::skin_lengths`; on paper u runs to her
//! left, v upwards, seen from outside.
//! Error: columns keep their length, rows to within 0.9 in 100, and so do slanting lines: 1 mm in 10 cm. No flat sheet
//! does without: on skin of curvature K = 1 / (r1 r2) two columns that leave a row square to it draw together, so that a row
//! at distance d from it is shorter by the share K d^2 / 2 (Jacobi's equation), while on paper they stay apart. In a band of
//! height H the rows therefore differ by K H^2 / 8 from its middle to its edges, which is here halved by sharing it between
//! them: with r1 = 16, r2 = 17 and H = 6 cm, 0.8 in 100. It goes down with H^2, and the darts that have to be cut go up.

use super::mother::MotherShape;
use libm::{atan2, ceil, cos, hypot, sin, sqrt};

/// About the height of a band at the midline, cm.
const BAND: f64 = 6.0;
/// How often the row in the middle of a band is laid again, shorter, until rows that are too long and too short are alike.
const SHARED: usize = 4;
/// Distance between rows and between columns of the grid, cm.
const STEP: f64 = 0.5;
/// Least distance from the flank, cm.
const FLANK: f64 = 0.3;

/// A place on the flat paper, cm: u to her left, v upwards from the upper border of the symphysis.
pub type Flat = (f64, f64);

/// The two edges of a dart on her left, from the midline outwards; on her right they are the mirror image.
#[derive(Clone, Debug, PartialEq)]
pub struct Dart {
    /// The upper edge of the band below: where the paper is cut.
    pub below: Vec<Flat>,
    /// The lower edge of the band above: it is laid on `below`.
    pub above: Vec<Flat>,
}

/// The skin of the abdomen, laid flat.
#[derive(Clone, Debug)]
pub struct Unrolled {
    bands: Vec<Band>,
}

/// A band with the places of its grid, from its lower edge up and from the midline to her left.
#[derive(Clone, Debug)]
struct Band {
    low: f64,
    high: f64,
    grid: Vec<Vec<Flat>>,
}

impl Unrolled {
    /// The skin from the symphysis up to `top`, and as far as `wide` from the midline on both sides, or to the flank.
    pub fn new(mother: &MotherShape, top: f64, wide: f64) -> Self {
        let top = top.clamp(BAND, mother.curve.length() - 0.5);
        let count = ceil(top / BAND - 0.3).max(1.0) as usize;
        let height = top / count as f64;
        let band = |i: usize| Band::new(mother, height * i as f64, height * (i + 1) as f64, wide);
        Self { bands: (0..count).map(band).collect() }
    }

    /// The place on paper of the skin this far across (negative: to her right) and along; what lies outside the sheet is
    /// laid at its edge.
    pub fn place(&self, across: f64, along: f64) -> Flat {
        let within = |band: &&Band| along <= band.high;
        let Some(band) = self.bands.iter().find(within).or(self.bands.last()) else { return (across, along) };
        let (u, v) = band.place(across.abs(), along);
        (if across < 0.0 { -u } else { u }, v)
    }

    /// The heights along the midline at which one band ends and the next begins.
    pub fn seams(&self) -> impl Iterator<Item = f64> + '_ {
        self.bands.iter().skip(1).map(|band| band.low)
    }

    /// The outer edges of the bands on her left, from below upwards; on her right they are the mirror image.
    pub fn rims(&self) -> Vec<Vec<Flat>> {
        let rim = |band: &Band| band.grid.iter().filter_map(|row| row.last().copied()).collect();
        self.bands.iter().map(rim).collect()
    }

    /// The darts, from below upwards.
    pub fn darts(&self) -> Vec<Dart> {
        let pairs = self.bands.windows(2).map(|pair| {
            let (below, above) = (pair[0].grid.last(), pair[1].grid.first());
            Dart { below: below.cloned().unwrap_or_default(), above: above.cloned().unwrap_or_default() }
        });
        pairs.collect()
    }
}

impl Band {
    fn new(mother: &MotherShape, low: f64, high: f64, wide: f64) -> Self {
        // As many rows above its middle as below.
        let half = ceil((high - low) / (2.0 * STEP)).max(1.0) as usize;
        let count = 2 * half + 1;
        let along = |i: usize| low + (high - low) * i as f64 / (count - 1) as f64;
        let rows: Vec<Row> = (0..count).map(|i| Row::new(mother, along(i))).collect();
        let reach = rows.iter().map(|row| row.flank() - FLANK).fold(wide, f64::min);
        let columns = (reach / STEP).max(2.0) as usize + 1;
        let skin: Vec<Vec<Point>> =
            rows.iter().map(|row| (0..columns).map(|j| row.point(STEP * j as f64)).collect()).collect();

        let normals: Vec<[f64; 3]> = skin[half].iter().map(|p| p.normal(mother)).collect();
        let middle: Vec<[f64; 3]> = skin[half].iter().map(|p| p.at).collect();
        let mut shares = vec![1.0; columns - 1];
        let mut grid = vec![vec![(0.0, 0.0); columns]; count];
        for _ in 0..SHARED {
            let row = develop(&middle, &normals, (0.0, along(half)), 0.0, &shares);
            for j in 0..columns {
                let (start, heading) = row[j];
                // The angle on the skin between the row and the column.
                let up = minus(skin[half + 1][j].at, skin[half - 1][j].at);
                let out = skin[half][j].along_row();
                let square = atan2(dot(normals[j], cross(out, up)), dot(out, up));
                let mut lay = |order: &mut dyn Iterator<Item = usize>, heading: f64| {
                    let order: Vec<usize> = order.collect();
                    let points: Vec<[f64; 3]> = order.iter().map(|&i| skin[i][j].at).collect();
                    let normals: Vec<[f64; 3]> = order.iter().map(|&i| skin[i][j].normal(mother)).collect();
                    for (i, (place, _)) in
                        order.into_iter().zip(develop(&points, &normals, start, heading, &[]))
                    {
                        grid[i][j] = if j == 0 { (0.0, along(i)) } else { place };
                    }
                };
                lay(&mut (half..count), heading + square);
                lay(&mut (0..=half).rev(), heading + square - std::f64::consts::PI);
            }
            for (j, share) in shares.iter_mut().enumerate() {
                let long = |i: usize| {
                    let (a, b): (Flat, Flat) = (grid[i][j], grid[i][j + 1]);
                    let edge = minus(skin[i][j + 1].at, skin[i][j].at);
                    hypot(b.0 - a.0, b.1 - a.1) / sqrt(dot(edge, edge))
                };
                let (least, most) =
                    (0..count).map(long).fold((f64::MAX, 0.0f64), |(a, b), l| (a.min(l), b.max(l)));
                *share *= 2.0 / (least + most);
            }
        }
        Self { low, high, grid }
    }

    /// Between the places of the grid.
    fn place(&self, across: f64, along: f64) -> Flat {
        let cell = |value: f64, last: usize| {
            let value = value.clamp(0.0, last as f64);
            let i = (value as usize).min(last - 1);
            (i, value - i as f64)
        };
        let rows = self.grid.len() - 1;
        let (i, t) = cell((along - self.low) / (self.high - self.low) * rows as f64, rows);
        let (j, s) = cell(across / STEP, self.grid[0].len() - 1);
        let mix = |a: Flat, b: Flat, t: f64| (a.0 + (b.0 - a.0) * t, a.1 + (b.1 - a.1) * t);
        let (low, high) = (&self.grid[i], &self.grid[i + 1]);
        mix(mix(low[j], low[j + 1], s), mix(high[j], high[j + 1], s), t)
    }
}

/// A polyline on a surface, laid flat: it keeps its lengths, each times its share (1 where none is given), and turns as it
/// turns in the surface. `heading` is its direction at `start`. Each place with the direction there.
fn develop(
    points: &[[f64; 3]],
    normals: &[[f64; 3]],
    start: Flat,
    heading: f64,
    shares: &[f64],
) -> Vec<(Flat, f64)> {
    let edges: Vec<[f64; 3]> = points.windows(2).map(|w| minus(w[1], w[0])).collect();
    let turn = |k: usize| {
        let n = normals[k];
        let flat = |e: [f64; 3]| {
            let off = dot(e, n);
            [e[0] - n[0] * off, e[1] - n[1] * off, e[2] - n[2] * off]
        };
        let (a, b) = (flat(edges[k - 1]), flat(edges[k]));
        atan2(dot(n, cross(a, b)), dot(a, b))
    };
    let mut out = vec![(start, heading)];
    let (mut at, mut way) = (start, heading);
    for (k, edge) in edges.iter().enumerate() {
        let half = if k > 0 {
            0.5 * turn(k)
        } else if edges.len() > 1 {
            // It begins to turn as it turns a step further on.
            0.5 * turn(1)
        } else {
            0.0
        };
        way += if k > 0 { 2.0 * half } else { half };
        let length = sqrt(dot(*edge, *edge)) * shares.get(k).copied().unwrap_or(1.0);
        at = (at.0 + length * cos(way), at.1 + length * sin(way));
        let next = if k + 1 < edges.len() { 0.5 * turn(k + 1) } else { half };
        out.push((at, way + next));
    }
    out
}

/// A row across at one height, with the lengths along it.
struct Row {
    y: f64,
    section: super::abdomen::Section,
    /// Length from the midline at each of `STRETCHES` equal steps of the angle.
    lengths: Vec<f64>,
}

/// Into how many stretches a row is cut to measure along it.
const STRETCHES: usize = 512;

impl Row {
    fn new(mother: &MotherShape, along: f64) -> Self {
        let y = mother.curve.point(along).0;
        let section = mother.section(y);
        let (wide, deep) = (section.half_width, section.front - section.side);
        let speed = |t: f64| {
            let (a, b) = (wide * cos(t), deep * sin(t));
            sqrt(a * a + b * b)
        };
        let step = std::f64::consts::FRAC_PI_2 / STRETCHES as f64;
        let mut lengths = vec![0.0];
        let mut gone = 0.0;
        for i in 0..STRETCHES {
            let t = step * i as f64;
            gone += (speed(t) + 4.0 * speed(t + 0.5 * step) + speed(t + step)) * step / 6.0;
            lengths.push(gone);
        }
        Self { y, section, lengths }
    }

    /// How far the flank is, cm on the skin.
    fn flank(&self) -> f64 {
        self.lengths[STRETCHES]
    }

    /// The point this far from the midline, on her left.
    fn point(&self, across: f64) -> Point {
        let i = self.lengths.partition_point(|l| *l <= across).clamp(1, STRETCHES) - 1;
        let share = (across - self.lengths[i]) / (self.lengths[i + 1] - self.lengths[i]);
        let t = std::f64::consts::FRAC_PI_2 * (i as f64 + share) / STRETCHES as f64;
        let deep = self.section.front - self.section.side;
        let at = [self.section.half_width * sin(t), self.y, self.section.side + deep * cos(t)];
        Point { at, out: [self.section.half_width * cos(t), 0.0, -deep * sin(t)] }
    }
}

/// A point of the skin, and the direction of its row there.
struct Point {
    at: [f64; 3],
    out: [f64; 3],
}

impl Point {
    fn along_row(&self) -> [f64; 3] {
        self.out
    }

    /// The outward direction of the skin, length 1.
    fn normal(&self, mother: &MotherShape) -> [f64; 3] {
        const APART: f64 = 1e-3;
        let [x, y, _] = self.at;
        // Below the symphysis the skin runs straight: a point of the curve is looked at from above.
        let z = |y: f64| mother.section(y).z(x);
        let slope = if y < APART {
            (z(y + APART) - z(y)) / APART
        } else {
            (z(y + APART) - z(y - APART)) / (2.0 * APART)
        };
        let n = cross(self.out, [0.0, 1.0, slope]);
        let length = sqrt(dot(n, n));
        [n[0] / length, n[1] / length, n[2] / length]
    }
}

fn minus(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

fn cross(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}
