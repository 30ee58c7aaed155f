//! Fields on the cast's grid. In: a number a cell. Out: blurred fields, closed lines of equal value, smoothed lines.

use crate::body::cast::Cast;

/// Points of a line in the picture plane, cm.
pub type Line = Vec<(f32, f32)>;

/// Means of squares of `k` x `k` cells: a field on a coarser grid. `width` and height are multiples of `k`.
pub struct Coarse {
    values: Vec<f32>,
    width: usize,
    k: usize,
}

impl Coarse {
    /// The means of a field on the cast's grid; `fill` writes the values of a row of cells, given the first of them.
    pub fn of(cast: &Cast, k: usize, fill: impl Fn(usize, &mut [f32])) -> Self {
        let (width, share) = (cast.width / k, 1.0 / (k * k) as f32);
        let mut values = vec![0.0; width * (cast.height / k)];
        let mut line = vec![0.0; cast.width];
        for (j, row) in values.chunks_exact_mut(width).enumerate() {
            for j in j * k..(j + 1) * k {
                fill(j * cast.width, &mut line);
                for (value, cells) in row.iter_mut().zip(line.chunks_exact(k)) {
                    *value = cells.iter().fold(*value, |sum, cell| sum + cell * share);
                }
            }
        }
        Coarse { values, width, k }
    }

    /// Blurs by `times` box blurs, each over a square that reaches `r` coarse cells to every side.
    pub fn blur(&mut self, r: usize, times: usize) {
        let height = self.values.len() / self.width;
        let mut scratch = vec![0f32; self.values.len()];
        for _ in 0..times {
            box_blur(&mut self.values, &mut scratch, self.width, height, r);
        }
    }

    /// This divided by `other`, which has the same shape.
    pub fn over(mut self, other: &Coarse) -> Self {
        self.values.iter_mut().zip(&other.values).for_each(|(a, b)| *a /= b.max(1e-3));
        self
    }

    /// The field on the cast's grid, linear between coarse cells; written into `room`, whatever was there before.
    pub fn spread(&self, room: Vec<f32>) -> Vec<f32> {
        let (w, h) = (self.width, self.values.len() / self.width);
        // For each cell of a row or column: the coarse cell before it, and the share of the next one.
        let place = |cell: usize, count: usize| {
            let from_first = (cell as f32 + 0.5) / self.k as f32 - 0.5;
            let at = (from_first.max(0.0) as usize).min(count.saturating_sub(2));
            (at, (from_first - at as f32).clamp(0.0, 1.0))
        };
        // The shares within a coarse cell, from middle to middle; at both ends the field is even.
        let half = self.k / 2;
        let shares: Vec<f32> = (0..self.k).map(|cell| place(half + cell, w.max(3)).1).collect();
        let mut out = room;
        out.clear();
        out.reserve(self.values.len() * self.k * self.k);
        let mut row = vec![0.0; w];
        for (j, v) in (0..h * self.k).map(|cell| place(cell, h)) {
            let upper = &self.values[j * w..(j + 1) * w];
            let lower = &self.values[(j + 1).min(h - 1) * w..];
            for ((value, a), b) in row.iter_mut().zip(upper).zip(lower) {
                *value = a * (1.0 - v) + b * v;
            }
            out.extend(std::iter::repeat_n(row[0], half));
            for pair in row.windows(2) {
                out.extend(shares.iter().map(|u| pair[0] * (1.0 - u) + pair[1] * u));
            }
            out.extend(std::iter::repeat_n(row[w - 1], self.k - half));
        }
        out
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
    /// Its rows.
    pub fn rows(&self) -> std::ops::Range<usize> {
        self.rows.0..self.rows.1
    }

    /// The indices of its cells.
    pub fn cells(self, cast: &Cast) -> impl Iterator<Item = usize> {
        let width = cast.width;
        (self.rows.0..self.rows.1).flat_map(move |j| j * width + self.columns.0..j * width + self.columns.1)
    }

    /// The smallest rectangle with every cell that is marked, and a border of two cells; `marks`, one for each cell.
    pub fn round<T>(cast: &Cast, marks: &[T], is_marked: impl Fn(&T) -> bool) -> Option<Self> {
        let (w, h) = (cast.width, cast.height);
        let (mut i0, mut i1, mut j0, mut j1) = (w, 0, h, 0);
        for (j, row) in marks.chunks_exact(w).enumerate() {
            let Some(first) = row.iter().position(&is_marked) else { continue };
            let last = row.iter().rposition(&is_marked).unwrap_or(first);
            (i0, i1, j0, j1) = (i0.min(first), i1.max(last + 1), j0.min(j), j + 1);
        }
        Self::bordered(cast, (i0, i1), (j0, j1))
    }

    fn bordered(cast: &Cast, (i0, i1): (usize, usize), (j0, j1): (usize, usize)) -> Option<Self> {
        let columns = (i0.saturating_sub(2), (i1 + 2).min(cast.width));
        let rows = (j0.saturating_sub(2), (j1 + 2).min(cast.height));
        (i0 < i1).then_some(Window { columns, rows })
    }

    /// The same of the cells of this one for which `inside` holds.
    pub fn round_within(self, cast: &Cast, inside: impl Fn(usize) -> bool) -> Option<Self> {
        let (w, h) = (cast.width, cast.height);
        let (mut i0, mut i1, mut j0, mut j1) = (w, 0, h, 0);
        for j in self.rows.0..self.rows.1 {
            let mut inside = (self.columns.0..self.columns.1).filter(|i| inside(j * w + i));
            let Some(first) = inside.next() else { continue };
            let last = inside.next_back().unwrap_or(first);
            (i0, i1, j0, j1) = (i0.min(first), i1.max(last + 1), j0.min(j), j + 1);
        }
        Self::bordered(cast, (i0, i1), (j0, j1))
    }
}

/// Cells of a stretch: a part of a row that is often all above or all below a level.
const STRETCH: usize = 16;

/// The least and the greatest value of a field in each stretch of each row of a window.
pub struct Ranges {
    /// The first stretch of the window's first row.
    first: usize,
    ranges: Vec<(f32, f32)>,
}

impl Ranges {
    /// Of a field with a value for each cell.
    pub fn of(cast: &Cast, window: Window, field: &[f32]) -> Self {
        let range = |stretch: &[f32]| {
            stretch.iter().fold((f32::MAX, f32::MIN), |(low, high), &value| {
                (if value < low { value } else { low }, if value > high { value } else { high })
            })
        };
        let (from, to) = window.rows;
        let rows = field[from * cast.width..to * cast.width].chunks_exact(cast.width);
        let ranges = rows.flat_map(|row| row.chunks(STRETCH).map(range)).collect();
        Ranges { first: from * cast.width.div_ceil(STRETCH), ranges }
    }

    /// The least and the greatest value of a stretch in one of the window's rows.
    pub fn of_stretch(&self, stretch: usize) -> (f32, f32) {
        self.ranges[stretch - self.first]
    }
}

/// Follows lines of equal value; keeps its tables from one field to the next.
///
/// Four neighbouring cells are the corners of a square. Where the ends of a side lie above and below 0, a line passes
/// it, from one square to the next.
#[derive(Default)]
pub struct Tracer {
    /// Whether the field is above 0, a bit a cell: rows of the window, columns of the cast.
    above: Vec<u64>,
    /// By which sides of squares a line has come in: bits of those that run to the right, then of those that run down.
    passed: [Vec<u64>; 2],
    /// Words a row of bits.
    words: usize,
}

/// A side of a square.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Side {
    Top,
    Left,
    Right,
    Bottom,
}

/// By which sides lines come into a square and leave it. Its number tells which corners are above: 1 the upper left,
/// 2 the upper right, 4 the lower right, 8 the lower left.
const LINES: [&[(Side, Side)]; 16] = {
    use Side::{Bottom, Left, Right, Top};
    [
        &[],
        &[(Left, Top)],
        &[(Top, Right)],
        &[(Left, Right)],
        &[(Right, Bottom)],
        &[(Left, Top), (Right, Bottom)],
        &[(Top, Bottom)],
        &[(Left, Bottom)],
        &[(Bottom, Left)],
        &[(Bottom, Top)],
        &[(Top, Right), (Bottom, Left)],
        &[(Bottom, Right)],
        &[(Right, Left)],
        &[(Right, Top)],
        &[(Top, Left)],
        &[],
    ]
};

impl Tracer {
    /// Closed lines where a field on the cast's grid crosses 0, the larger values on the same side all along. `field`
    /// gives the value of a cell; the border of the window counts as below 0.
    pub fn contours(&mut self, cast: &Cast, window: Window, field: impl Fn(usize) -> f32) -> Vec<Line> {
        self.contours_knowing(cast, window, |_| None, field)
    }

    /// The same; `even` says of a stretch whether the field is above 0 in all its cells or in none, if it knows.
    pub fn contours_knowing(
        &mut self,
        cast: &Cast,
        window: Window,
        even: impl Fn(usize) -> Option<bool>,
        field: impl Fn(usize) -> f32,
    ) -> Vec<Line> {
        self.fill(cast, window, even, &field);
        let ((i0, i1), (j0, j1)) = (window.columns, window.rows);
        let value = |i: usize, row: usize| {
            let border = i == i0 || row == 0 || i + 1 == i1 || row + 1 == j1 - j0;
            if border { -1.0 } else { field((j0 + row) * cast.width + i) }
        };
        // Where the line crosses a side that runs from a corner, to the right or down.
        let crossing = |(i, row): (usize, usize), down: usize| {
            let (a, b) = (value(i, row), value(i + 1 - down, row + down));
            let u = (a / (a - b)).clamp(0.0, 1.0);
            let (x, y) = cast.centre(i, j0 + row);
            (x + u * cast.cell * (1 - down) as f32, y - u * cast.cell * down as f32)
        };
        let mut out = vec![];
        for row in 0..(j1 - j0).saturating_sub(1) {
            for word in 0..self.words {
                let mut mixed = self.mixed(row, word);
                while mixed != 0 {
                    let square = (word * 64 + mixed.trailing_zeros() as usize, row);
                    mixed &= mixed - 1;
                    for &(side, _) in LINES[self.number(square)] {
                        let line = self.follow(square, side, &crossing);
                        if line.len() > 6 {
                            out.push(line);
                        }
                    }
                }
            }
        }
        out
    }

    /// Fills in `above`; clears `passed`.
    fn fill(
        &mut self,
        cast: &Cast,
        window: Window,
        even: impl Fn(usize) -> Option<bool>,
        field: impl Fn(usize) -> f32,
    ) {
        let ((i0, i1), (j0, j1)) = (window.columns, window.rows);
        // A square has corners in the next column and in the next row.
        self.words = (cast.width + 1).div_ceil(64);
        let size = self.words * (j1 - j0 + 1);
        for bits in self.passed.iter_mut().chain([&mut self.above]) {
            bits.clear();
            bits.resize(size, 0);
        }
        let stretches = cast.width.div_ceil(STRETCH);
        for row in 1..j1 - j0 - 1 {
            let first = (j0 + row) * cast.width;
            for stretch in i0 / STRETCH..i1.div_ceil(STRETCH) {
                let from = (stretch * STRETCH).max(i0 + 1);
                let to = ((stretch + 1) * STRETCH).min(i1 - 1);
                if from >= to {
                    continue;
                }
                let bits = match even((j0 + row) * stretches + stretch) {
                    Some(false) => continue,
                    Some(true) => (1u64 << (to - from)) - 1,
                    None => (from..to).rev().fold(0, |bits, i| bits << 1 | u64::from(field(first + i) > 0.0)),
                };
                self.above[row * self.words + from / 64] |= bits << (from % 64);
            }
        }
    }

    /// The squares of a word whose corners are not all alike, by their upper left ones.
    fn mixed(&self, row: usize, word: usize) -> u64 {
        let beside = |row: usize| {
            let at = row * self.words + word;
            let next = if word + 1 < self.words { self.above[at + 1] } else { 0 };
            (self.above[at], self.above[at] >> 1 | next << 63)
        };
        let ((a, b), (d, c)) = (beside(row), beside(row + 1));
        (a ^ b) | (a ^ d) | (d ^ c)
    }

    /// Which corners of a square are above.
    fn number(&self, (i, row): (usize, usize)) -> usize {
        let above = |i: usize, row: usize| (self.above[row * self.words + i / 64] >> (i % 64) & 1) as usize;
        above(i, row) | above(i + 1, row) << 1 | above(i + 1, row + 1) << 2 | above(i, row + 1) << 3
    }

    /// The line that comes into a square by a side, on to where it has been before.
    fn follow(
        &mut self,
        (mut i, mut row): (usize, usize),
        mut side: Side,
        crossing: &impl Fn((usize, usize), usize) -> (f32, f32),
    ) -> Line {
        let mut line = vec![];
        loop {
            let (corner, down) = match side {
                Side::Top => ((i, row), 0),
                Side::Left => ((i, row), 1),
                Side::Right => ((i + 1, row), 1),
                Side::Bottom => ((i, row + 1), 0),
            };
            let (word, bit) = (corner.1 * self.words + corner.0 / 64, 1 << (corner.0 % 64));
            if self.passed[down][word] & bit != 0 {
                return line;
            }
            self.passed[down][word] |= bit;
            line.push(crossing(corner, down));
            let Some((_, out)) = LINES[self.number((i, row))].iter().find(|(from, _)| *from == side) else {
                return line;
            };
            side = match out {
                Side::Top => {
                    row -= 1;
                    Side::Bottom
                }
                Side::Left => {
                    i -= 1;
                    Side::Right
                }
                Side::Right => {
                    i += 1;
                    Side::Left
                }
                Side::Bottom => {
                    row += 1;
                    Side::Top
                }
            };
        }
    }
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
    let ends = |from: i32, to: i32| (from..to).map(at);
    let padded: Line = ends(-r, 0).chain(line.iter().copied()).chain(ends(n, n + r)).collect();
    let (x, y): (Vec<f32>, Vec<f32>) = padded.into_iter().unzip();
    weighed(&x, kernel).into_iter().zip(weighed(&y, kernel)).collect()
}

/// The sums of the values near each place, weighed by `kernel`; fewer than the values by the kernel's length less one.
fn weighed(values: &[f32], kernel: &[f32]) -> Vec<f32> {
    let mut out = vec![0.0; (values.len() + 1).saturating_sub(kernel.len())];
    for (k, &weight) in kernel.iter().enumerate() {
        // One weight for all places, then the next: each sum is added up in the order of the kernel.
        out.iter_mut().zip(&values[k..]).for_each(|(sum, value)| *sum += value * weight);
    }
    out
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
    let at = |j: i32| weights[if closed { j.rem_euclid(n) } else { j.clamp(0, n - 1) } as usize];
    let padded: Vec<f32> = (-r..n + r).map(at).collect();
    weighed(&padded, &k)
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
