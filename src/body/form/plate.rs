//! Skin laid as one smooth plate between fixed rims. In: a region and the mesh around it. Out: its points, moved.
//!
//! The plate is stiff and a little taut: it minimises the squared differences from the mean of the neighbours, and a
//! share of the squared lengths of the edges. The equations depend on the region alone, so they are taken apart once,
//! as a narrow band of rows, in a fixed order.

use super::mesh::Near;

/// A region whose equations are taken apart.
#[derive(Clone, Debug)]
pub struct Plate {
    /// The vertices, in the order of the rows.
    ids: Vec<usize>,
    /// The vertices and their neighbours.
    around: Vec<usize>,
    taut: f64,
    width: usize,
    /// The lower triangle of the root, `width + 1` numbers a row, the diagonal last.
    root: Vec<f64>,
}

impl Plate {
    /// The plate over the vertices whose `share` is over one half; `taut` weighs its tension.
    pub fn of(share: &[f32], near: &Near, taut: f32) -> Plate {
        let ids = ordered(share, near);
        let mut row = vec![usize::MAX; share.len()];
        for (i, v) in ids.iter().enumerate() {
            row[*v] = i;
        }
        let mut around: Vec<usize> = ids
            .iter()
            .flat_map(|v| std::iter::once(*v).chain(near.at(*v).iter().map(|m| usize::from(*m))))
            .collect();
        around.sort_unstable();
        around.dedup();
        let taut = f64::from(taut) * 0.25;
        // Rows of the difference from the mean, for each vertex of `around`, kept to the region.
        let mut entries: Vec<(usize, usize, f64)> = vec![];
        for k in &around {
            let ids = near.at(*k);
            let share = 1.0 / ids.len() as f64;
            let terms: Vec<(usize, f64)> = std::iter::once((row[*k], -1.0))
                .chain(ids.iter().map(|m| (row[usize::from(*m)], share)))
                .filter(|(i, _)| *i != usize::MAX)
                .collect();
            for (i, a) in &terms {
                for (j, b) in &terms {
                    if j <= i {
                        entries.push((*i, *j, a * b));
                    }
                }
            }
        }
        for (i, v) in ids.iter().enumerate() {
            entries.push((i, i, taut * near.at(*v).len() as f64));
            for m in near.at(*v) {
                let j = row[usize::from(*m)];
                if j < i {
                    entries.push((i, j, -taut));
                }
            }
        }
        let width = entries.iter().map(|(i, j, _)| i - j).max().unwrap_or(0);
        let mut root = vec![0.0; ids.len() * (width + 1)];
        for (i, j, a) in entries {
            root[i * (width + 1) + width - (i - j)] += a;
        }
        let mut plate = Plate { ids, around, taut, width, root };
        plate.take_apart();
        plate
    }

    /// Cholesky's root of the band.
    fn take_apart(&mut self) {
        let (w, n) = (self.width, self.ids.len());
        let at = |i: usize, j: usize| i * (w + 1) + w - (i - j);
        for i in 0..n {
            for j in i.saturating_sub(w)..=i {
                let mut s = self.root[at(i, j)];
                for k in i.saturating_sub(w)..j {
                    if j - k <= w {
                        s -= self.root[at(i, k)] * self.root[at(j, k)];
                    }
                }
                self.root[at(i, j)] = if i == j { s.sqrt() } else { s / self.root[at(j, j)] };
            }
        }
    }

    /// The vertices of the region.
    pub fn ids(&self) -> &[usize] {
        &self.ids
    }

    /// Lays the region as a plate between what surrounds it.
    pub fn lay(&self, points: &mut [[f32; 3]], near: &Near) {
        let (w, n) = (self.width, self.ids.len());
        let at = |i: usize, j: usize| i * (w + 1) + w - (i - j);
        let mut off = vec![0.0f64; points.len()];
        for axis in [0, 1, 2] {
            let p = |v: usize| f64::from(points[v][axis]);
            for k in &self.around {
                let ids = near.at(*k);
                let sum: f64 = ids.iter().map(|m| p(usize::from(*m))).sum();
                off[*k] = sum / ids.len() as f64 - p(*k);
            }
            let mut x: Vec<f64> = self
                .ids
                .iter()
                .map(|v| {
                    let mut s = -off[*v];
                    for m in near.at(*v) {
                        let m = usize::from(*m);
                        s += off[m] / near.at(m).len() as f64 + self.taut * (p(*v) - p(m));
                    }
                    s
                })
                .collect();
            for i in 0..n {
                let mut s = x[i];
                for (k, a) in x.iter().enumerate().take(i).skip(i.saturating_sub(w)) {
                    s -= self.root[at(i, k)] * a;
                }
                x[i] = s / self.root[at(i, i)];
            }
            for i in (0..n).rev() {
                let (before, from) = x.split_at_mut(i);
                from[0] /= self.root[at(i, i)];
                let first = i.saturating_sub(w);
                for (k, b) in before.iter_mut().enumerate().skip(first) {
                    *b -= self.root[at(i, k)] * from[0];
                }
            }
            for (v, d) in self.ids.iter().zip(&x) {
                points[*v][axis] = (f64::from(points[*v][axis]) - d) as f32;
            }
        }
    }
}

/// The region in the order of its being reached from an end, so that the band is narrow.
fn ordered(share: &[f32], near: &Near) -> Vec<usize> {
    let inside = |v: usize| share[v] > 0.5;
    let mut done = vec![false; share.len()];
    let mut all = vec![];
    for first in 0..share.len() {
        if !inside(first) || done[first] {
            continue;
        }
        // The last that is reached from anywhere lies at an end.
        let start = *reached(first, near, &inside, &mut done.clone()).last().unwrap_or(&first);
        all.extend(reached(start, near, &inside, &mut done));
    }
    all
}

fn reached(start: usize, near: &Near, inside: &impl Fn(usize) -> bool, done: &mut [bool]) -> Vec<usize> {
    let mut list = vec![start];
    done[start] = true;
    let mut next = 0;
    while next < list.len() {
        for m in near.at(list[next]) {
            let m = usize::from(*m);
            if inside(m) && !done[m] {
                done[m] = true;
                list.push(m);
            }
        }
        next += 1;
    }
    list
}
