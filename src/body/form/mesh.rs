//! Work on a mesh. In: quads and points. Out: neighbours, normals, smoothed points; always in the same order.

/// The neighbours of every vertex, in rising order.
#[derive(Clone, Debug)]
pub struct Near {
    start: Vec<u32>,
    of: Vec<u16>,
}

impl Near {
    /// The neighbours along the edges of quads.
    pub fn of(quads: &[[u16; 4]], vertices: usize) -> Near {
        let mut lists: Vec<Vec<u16>> = vec![vec![]; vertices];
        for q in quads {
            for k in 0..4 {
                // In a closed skin each edge is met once in each direction.
                lists[usize::from(q[k])].push(q[(k + 1) % 4]);
            }
        }
        let mut near = Near { start: vec![0], of: vec![] };
        for mut list in lists {
            list.sort_unstable();
            near.of.extend(list);
            near.start.push(near.of.len() as u32);
        }
        near
    }
    /// Those of vertex `v`.
    #[inline]
    pub fn at(&self, v: usize) -> &[u16] {
        &self.of[self.start[v] as usize..self.start[v + 1] as usize]
    }
    /// How many vertices there are.
    pub fn vertices(&self) -> usize {
        self.start.len() - 1
    }
}

/// Every vertex's mean of its neighbours.
pub fn smoothed_once(field: &[f32], near: &Near) -> Vec<f32> {
    let mean = |v: usize| {
        let ids = near.at(v);
        ids.iter().map(|m| field[usize::from(*m)]).sum::<f32>() / ids.len() as f32
    };
    (0..near.vertices()).map(mean).collect()
}

/// Moves each vertex towards the mean of its neighbours, `steps` times, by its share of `pull`.
pub fn smooth(points: &mut [[f32; 3]], near: &Near, share: &[f32], steps: usize, pull: f32) {
    smooth_by(points, near, share, std::iter::repeat_n(pull, steps));
}

/// The same, a step for each pull.
pub fn smooth_by(points: &mut [[f32; 3]], near: &Near, share: &[f32], pulls: impl Iterator<Item = f32>) {
    let ids: Vec<(usize, f32)> = share.iter().copied().enumerate().filter(|(_, s)| *s > 0.0).collect();
    // Four lanes are one to the processor.
    let mut from: Vec<[f32; 4]> = points.iter().map(|[x, y, z]| [*x, *y, *z, 0.0]).collect();
    let mut new = vec![[0.0f32; 4]; ids.len()];
    for pull in pulls {
        for ((v, share), n) in ids.iter().zip(&mut new) {
            let around = near.at(*v);
            let s = match *around {
                // Most have four.
                [a, b, c, d] => {
                    let [a, b, c, d] = [a, b, c, d].map(|m| from[usize::from(m)]);
                    [0, 1, 2, 3].map(|i| a[i] + b[i] + c[i] + d[i])
                }
                _ => around.iter().fold([0.0f32; 4], |s, m| {
                    let p = from[usize::from(*m)];
                    [0, 1, 2, 3].map(|i| s[i] + p[i])
                }),
            };
            let (k, one) = (share * pull, 1.0 / around.len() as f32);
            let p = from[*v];
            *n = [0, 1, 2, 3].map(|i| p[i] + k * (s[i] * one - p[i]));
        }
        for ((v, _), n) in ids.iter().zip(&new) {
            from[*v] = *n;
        }
    }
    for (v, _) in &ids {
        let [x, y, z, _] = from[*v];
        points[*v] = [x, y, z];
    }
}

/// The normals of the vertices, length 1, outward.
pub fn normals(points: &[[f32; 3]], quads: &[[u16; 4]]) -> Vec<[f32; 3]> {
    let mut sums = vec![[0.0f32; 3]; points.len()];
    for q in quads {
        let [a, b, c, d] = q.map(|v| points[usize::from(v)]);
        // Twice the area of the quad, along its normal.
        let n = cross(minus(c, a), minus(d, b));
        for v in q {
            let s = &mut sums[usize::from(*v)];
            *s = [s[0] + n[0], s[1] + n[1], s[2] + n[2]];
        }
    }
    sums.iter().map(|n| scaled(*n, 1.0 / length(*n).max(1e-12))).collect()
}

/// a - b.
#[inline]
pub fn minus(a: [f32; 3], b: [f32; 3]) -> [f32; 3] {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

/// a + b.
#[inline]
pub fn plus(a: [f32; 3], b: [f32; 3]) -> [f32; 3] {
    [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
}

/// a k.
#[inline]
pub fn scaled(a: [f32; 3], k: f32) -> [f32; 3] {
    [a[0] * k, a[1] * k, a[2] * k]
}

fn cross(a: [f32; 3], b: [f32; 3]) -> [f32; 3] {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

fn length(a: [f32; 3]) -> f32 {
    (a[0] * a[0] + a[1] * a[1] + a[2] * a[2]).sqrt()
}
