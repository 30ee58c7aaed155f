//! One step of Catmull and Clark: a finer, rounder mesh from a closed cage of quads. In: a cage. Out: how its finer mesh
//! hangs together, once for all postures; then the finer points for each posture of the cage.
//!
//! - Units: those of the points (cm in a body).
//! - Source: E. Catmull and J. Clark, "Recursively generated B-spline surfaces on arbitrary topological meshes",
//!   Computer-Aided Design 10 (1978).
//! - Error: one step. Points lie on no limit surface; on the body the next step would move none by more than 0.2 mm
//!   or so, a fifth of a printed line.
//! - Sums run in the order of the cage's quads and edges, so that a mirrored cage gives mirrored points bit for bit.

use crate::body::part::Part;

/// How the finer mesh of a cage hangs together.
#[derive(Clone, Debug)]
pub struct Subdivision {
    /// Quads of the finer mesh: four for each quad of the cage, the one at its first corner first.
    pub quads: Vec<[u16; 4]>,
    cage: Vec<[u16; 4]>,
    /// Ends of each edge of the cage, and the quads on both sides.
    edges: Vec<([u16; 2], [u16; 2])>,
    /// Quads at each point of the cage.
    valence: Vec<u8>,
}

impl Subdivision {
    /// Of a cage with this many points.
    ///
    /// Points of the finer mesh are those of the cage, then one for each edge, then one for each quad. `None` when an
    /// edge does not lie between two quads, or when the finer points are too many to be numbered.
    pub fn of(points: usize, cage: &[[u16; 4]]) -> Option<Self> {
        let mut valence = vec![0u8; points];
        for quad in cage {
            for &corner in quad {
                let count = valence.get_mut(usize::from(corner))?;
                *count = count.checked_add(1)?;
            }
        }
        // Edges by their lower end: the few that begin at a point are kept together.
        let mut first = vec![0usize; points + 1];
        for (_, [low, _]) in sides(cage) {
            first[usize::from(low) + 1] += 1;
        }
        for i in 0..points {
            first[i + 1] += first[i];
        }
        let mut slots = vec![(u16::MAX, 0usize); cage.len() * 4];
        let mut filled = first.clone();
        let mut edges: Vec<([u16; 2], [u16; 2])> = vec![];
        let mut shut: Vec<bool> = vec![];
        let mut edge_of_side = vec![0usize; cage.len() * 4];
        for (side, [low, high]) in sides(cage) {
            let quad = u16::try_from(side / 4).ok()?;
            let (from, to) = (first[usize::from(low)], &mut filled[usize::from(low)]);
            match slots[from..*to].iter().find(|slot| slot.0 == high) {
                Some(&(_, edge)) if !shut[edge] => {
                    edges[edge].1[1] = quad;
                    shut[edge] = true;
                    edge_of_side[side] = edge;
                }
                Some(_) => return None,
                None => {
                    slots[*to] = (high, edges.len());
                    *to += 1;
                    edge_of_side[side] = edges.len();
                    edges.push(([low, high], [quad, quad]));
                    shut.push(false);
                }
            }
        }
        if shut.contains(&false) {
            return None;
        }
        let on_edge = |side: usize| u16::try_from(points + edge_of_side[side]).ok();
        let mut quads = Vec::with_capacity(cage.len() * 4);
        for (number, quad) in cage.iter().enumerate() {
            let middle = u16::try_from(points + edges.len() + number).ok()?;
            for (k, &corner) in quad.iter().enumerate() {
                let (after, before) = (on_edge(number * 4 + k)?, on_edge(number * 4 + (k + 3) % 4)?);
                quads.push([corner, after, middle, before]);
            }
        }
        Some(Subdivision { quads, cage: cage.to_vec(), edges, valence })
    }

    /// The finer points of one posture of the cage; `cage` holds as many points as the subdivision was made for.
    pub fn points(&self, cage: &[[f32; 3]]) -> Vec<[f32; 3]> {
        let n = cage.len();
        let at = |point: u16| cage[usize::from(point)];
        let middles: Vec<[f32; 3]> = self
            .cage
            .iter()
            .map(|quad| {
                let [a, b, c, d] = quad.map(at);
                [0, 1, 2].map(|k| (a[k] + b[k] + (c[k] + d[k])) * 0.25)
            })
            .collect();
        // For each point of the cage: the sum over its quads of their middles, and over its edges of their ends.
        let mut around = vec![[0f32; 3]; n];
        for (quad, middle) in self.cage.iter().zip(&middles) {
            for corner in quad {
                let sum = &mut around[usize::from(*corner)];
                (0..3).for_each(|k| sum[k] += middle[k]);
            }
        }
        let mut out = Vec::with_capacity(n + self.edges.len() + middles.len());
        out.extend_from_slice(cage);
        for ([a, b], [p, q]) in &self.edges {
            let (ends, sides) = ([at(*a), at(*b)], [middles[usize::from(*p)], middles[usize::from(*q)]]);
            out.push([0, 1, 2].map(|k| (ends[0][k] + ends[1][k] + (sides[0][k] + sides[1][k])) * 0.25));
            for (own, other) in [(*a, ends[1]), (*b, ends[0])] {
                let sum = &mut around[usize::from(own)];
                (0..3).for_each(|k| sum[k] += other[k]);
            }
        }
        for ((point, sum), &count) in out.iter_mut().zip(&around).zip(&self.valence) {
            if count > 0 {
                // Q/n + 2R/n + (n - 3)P/n, with the middles of edges (P + other end)/2: both sums stand in `around`.
                let n = f32::from(count);
                let own = (n - 2.0) / n;
                (0..3).for_each(|k| point[k] = point[k] * own + sum[k] / (n * n));
            }
        }
        out.extend_from_slice(&middles);
        out
    }

    /// The parts of the finer quads, from those of the cage.
    pub fn parts(&self, cage: &[Part]) -> Vec<Part> {
        cage.iter().flat_map(|part| [*part; 4]).collect()
    }
}

/// Every side of every quad: its number, and its ends, the lower first.
fn sides(cage: &[[u16; 4]]) -> impl Iterator<Item = (usize, [u16; 2])> + '_ {
    cage.iter().enumerate().flat_map(|(number, quad)| {
        (0..4).map(move |k| {
            let (a, b) = (quad[k], quad[(k + 1) % 4]);
            (number * 4 + k, [a.min(b), a.max(b)])
        })
    })
}
