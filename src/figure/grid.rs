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
    /// The means of a field on the cast's grid.
    pub fn of(cast: &Cast, k: usize, field: impl Fn(usize) -> f32) -> Self {
        let (width, share) = (cast.width / k, 1.0 / (k * k) as f32);
        let mut values = vec![0.0; width * (cast.height / k)];
        for (j, row) in values.chunks_exact_mut(width).enumerate() {
            for line in (j * k..(j + 1) * k).map(|line| line * cast.width) {
                for (i, value) in row.iter_mut().enumerate() {
                    for cell in 0..k {
                        *value += field(line + i * k + cell) * share;
                    }
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

    /// The field on the cast's grid, linear between coarse cells.
    pub fn spread(&self) -> Vec<f32> {
        let (w, h) = (self.width, self.values.len() / self.width);
        // For each cell of a row or column: the coarse cell before it, and the share of the next one.
        let places = |count: usize| -> Vec<(usize, f32)> {
            let place = |cell: usize| {
                let from_first = (cell as f32 + 0.5) / self.k as f32 - 0.5;
                let at = (from_first.max(0.0) as usize).min(count.saturating_sub(2));
                (at, (from_first - at as f32).clamp(0.0, 1.0))
            };
            (0..count * self.k).map(place).collect()
        };
        let (columns, rows) = (places(w), places(h));
        let mut out = Vec::with_capacity(columns.len() * rows.len());
        let mut row = vec![0.0; w];
        for (j, v) in rows {
            let upper = &self.values[j * w..(j + 1) * w];
            let lower = &self.values[(j + 1).min(h - 1) * w..];
            for ((value, a), b) in row.iter_mut().zip(upper).zip(lower) {
                *value = a * (1.0 - v) + b * v;
            }
            out.extend(columns.iter().map(|&(i, u)| row[i] * (1.0 - u) + row[(i + 1).min(w - 1)] * u));
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
    /// The smallest rectangle with every cell for which `inside` holds, and a border of two cells.
    pub fn round(cast: &Cast, inside: impl Fn(usize) -> bool) -> Option<Self> {
        let (w, h) = (cast.width, cast.height);
        let (mut i0, mut i1, mut j0, mut j1) = (w, 0, h, 0);
        for j in 0..h {
            for i in 0..w {
                if inside(j * w + i) {
                    (i0, i1, j0, j1) = (i0.min(i), i1.max(i + 1), j0.min(j), j1.max(j + 1));
                }
            }
        }
        let columns = (i0.saturating_sub(2), (i1 + 2).min(w));
        let rows = (j0.saturating_sub(2), (j1 + 2).min(h));
        (i0 < i1).then_some(Window { columns, rows })
    }
}

/// Follows lines of equal value; keeps its tables from one field to the next.
#[derive(Default)]
pub struct Tracer {
    /// Whether the field is above 0, a cell of the window each.
    above: Vec<bool>,
    /// From one crossed grid edge to the next, counted from 1; 0 for none. An edge is its cell * 2, + 1 for the one
    /// that runs down.
    next: Vec<u32>,
}

impl Tracer {
    /// Closed lines where a field on the cast's grid crosses 0, the larger values on the same side all along. `field`
    /// gives the value of a cell; the border of the window counts as below 0.
    pub fn contours(&mut self, cast: &Cast, window: Window, field: impl Fn(usize) -> f32) -> Vec<Line> {
        let ((i0, i1), (j0, j1)) = (window.columns, window.rows);
        let (w, h) = (i1 - i0, j1 - j0);
        if self.next.len() < w * h * 2 {
            self.next.resize(w * h * 2, 0);
        }
        self.above.clear();
        self.above.resize(w * h, false);
        for j in 1..h - 1 {
            let from = (j0 + j) * cast.width + i0;
            for (i, above) in self.above[j * w + 1..(j + 1) * w - 1].iter_mut().enumerate() {
                *above = field(from + i + 1) > 0.0;
            }
        }
        let order = self.crossings(w, h);
        let value = |cell: usize| {
            let (i, j) = (cell % w, cell / w);
            let border = i == 0 || j == 0 || i == w - 1 || j == h - 1;
            if border { -1.0 } else { field((j0 + j) * cast.width + i0 + i) }
        };
        let crossing = |edge: usize| {
            let cell = edge / 2;
            let (right, down) = if edge.is_multiple_of(2) { (1, 0) } else { (0, 1) };
            let (a, b) = (value(cell), value(cell + right + down * w));
            let u = (a / (a - b)).clamp(0.0, 1.0);
            let (x, y) = cast.centre(i0 + cell % w, j0 + cell / w);
            (x + u * cast.cell * right as f32, y - u * cast.cell * down as f32)
        };
        let mut out = vec![];
        for start in order {
            let mut line = vec![];
            let mut at = start;
            while self.next[at] != 0 {
                line.push(crossing(at));
                at = std::mem::replace(&mut self.next[at], 0) as usize - 1;
            }
            if line.len() > 6 {
                out.push(line);
            }
        }
        out
    }

    /// Fills in `next` from `above`; the edges that lead on, row by row.
    fn crossings(&mut self, w: usize, h: usize) -> Vec<usize> {
        const STRIDE: usize = 16;
        let mut order = vec![];
        for j in 0..h.saturating_sub(1) {
            let (upper, lower) = (&self.above[j * w..(j + 1) * w], &self.above[(j + 1) * w..(j + 2) * w]);
            let mut i = 0;
            while i < w - 1 {
                // Most stretches are all above or all below.
                let end = (i + STRIDE + 1).min(w);
                let count = |row: &[bool]| row[i..end].iter().map(|&above| u8::from(above)).sum::<u8>();
                let sum = usize::from(count(upper) + count(lower));
                if sum == 0 || sum == 2 * (end - i) {
                    i = end - 1;
                    continue;
                }
                for i in i..end - 1 {
                    let code = usize::from(upper[i])
                        | usize::from(upper[i + 1]) << 1
                        | usize::from(lower[i + 1]) << 2
                        | usize::from(lower[i]) << 3;
                    let cell = j * w + i;
                    let (top, left, right, bottom) =
                        (cell * 2, cell * 2 + 1, (cell + 1) * 2 + 1, (cell + w) * 2);
                    let next = &mut self.next;
                    let mut lead = |from: usize, to: usize| {
                        next[from] = to as u32 + 1;
                        order.push(from);
                    };
                    match code {
                        0 | 15 => {}
                        1 => lead(left, top),
                        2 => lead(top, right),
                        3 => lead(left, right),
                        4 => lead(right, bottom),
                        5 => {
                            lead(left, top);
                            lead(right, bottom);
                        }
                        6 => lead(top, bottom),
                        7 => lead(left, bottom),
                        8 => lead(bottom, left),
                        9 => lead(bottom, top),
                        10 => {
                            lead(top, right);
                            lead(bottom, left);
                        }
                        11 => lead(bottom, right),
                        12 => lead(right, left),
                        13 => lead(right, top),
                        _ => lead(top, left),
                    }
                }
                i = end - 1;
            }
        }
        order
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
    let padded: Line = (-r..n + r).map(at).collect();
    padded
        .windows(kernel.len())
        .map(|near| {
            near.iter().zip(kernel).fold((0.0, 0.0), |sum, (p, k)| (sum.0 + p.0 * k, sum.1 + p.1 * k))
        })
        .collect()
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
    padded.windows(k.len()).map(|near| near.iter().zip(&k).map(|(w, k)| w * k).sum()).collect()
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
