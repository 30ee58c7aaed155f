//! The drawn lines of the baby: outline, overlaps and creases. In: a cast. Out: chains of points with weights.
//!
//! The cracks between neighbouring cells form a graph. A crack weighs 1 where the baby meets the background; where
//! one part hides another, by how far the near one stands before the far one (measured against the far surface
//! carried on by its own slope, so that steep round skin draws no false edge); where two parts meet in a hollow,
//! by how sharp the hollow is. Chains follow the strongest cracks through junctions.

use super::grid::smooth_step;
use crate::body::cast::Cast;
use crate::body::part::{Part, Region};
use crate::units::Vec3;

/// What a line is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// Baby against background.
    Outline,
    /// One part before another.
    Overlap,
    /// Two parts meeting in a hollow.
    Crease,
}

/// A chain of cracks.
pub struct Chain {
    /// Points in the picture plane, cm.
    pub points: Vec<(f32, f32)>,
    /// Weight at each point, 0 to 1.
    pub weights: Vec<f32>,
    /// Whether the end joins the start.
    pub closed: bool,
    /// What most of it is.
    pub kind: Kind,
    /// The region of the body that each point bounds.
    pub regions: Vec<Region>,
    /// Where each end meets another line: the number of its chain, and the point of it.
    pub meets: [Option<(usize, usize)>; 2],
}

#[derive(Clone, Copy)]
struct Crack {
    weight: f32,
    kind: Kind,
    part: Part,
}

/// All cracks; crack `corner * 2` runs right from a corner, `corner * 2 + 1` down.
struct Cracks<'a> {
    cast: &'a Cast,
    columns: usize,
    /// Which cracks leave a corner: a sum of `RIGHT`, `DOWN`, `LEFT` and `UP`.
    leaving: Vec<u8>,
    weights: Vec<f32>,
    kinds: Vec<Kind>,
    parts: Vec<Part>,
}

const RIGHT: u8 = 1;
const DOWN: u8 = 2;
const LEFT: u8 = 4;
const UP: u8 = 8;

/// Visible pieces smaller than this lose their edges, cm2: a fingertip in a gap can read as something else.
const SPECK: f32 = 0.28;
/// Visible pieces smaller than this keep only what a neighbour hides, cm2.
const SCRAP: f32 = 0.6;

/// The chains of a cast.
pub fn trace(cast: &Cast) -> Vec<Chain> {
    let mut cracks = Cracks::find(cast);
    cracks.drop_scraps();
    cracks.chains()
}

/// Angles (degrees) over which the hollow between two parts fades in as a crease.
fn crease_angles(a: Part, b: Part) -> (f32, f32) {
    let broad = |p: Part| p.is_buttock() || p.is_thigh();
    let sides_differ = (a.code() ^ b.code()) & 1 == 1;
    if broad(a) && broad(b) && sides_differ {
        (10.0, 60.0)
    } else if a.is_digit() || b.is_digit() {
        (14.0, 50.0)
    } else if (a == Part::HEAD || a == Part::TRUNK) && (b == Part::HEAD || b == Part::TRUNK) {
        (45.0, 100.0)
    } else {
        (24.0, 80.0)
    }
}

/// How far the near surface stands before the far one where an overlap fades in, and where it is full, cm.
const STEP: (f32, f32) = (0.10, 0.7);

/// The crack between two unlike cells, which lie `step` cells (x to the right, y down) apart.
fn crack_between(cast: &Cast, (ia, ja): (usize, usize), (ib, jb): (usize, usize)) -> Option<Crack> {
    let (a, b) = (ja * cast.width + ia, jb * cast.width + ib);
    let (hit_a, hit_b) = (cast.hit(a), cast.hit(b));
    if hit_a != hit_b {
        let part = cast.part[if hit_a { a } else { b }];
        return Some(Crack { weight: 1.0, kind: Kind::Outline, part });
    }
    let (dx, dy) = (ib as f32 - ia as f32, jb as f32 - ja as f32);
    let (near, far, sign) = if cast.depth[a] > cast.depth[b] { (a, b, -1.0) } else { (b, a, 1.0) };
    let n = cast.normal[far];
    let (wx, wy) = (dx * cast.cell * sign, -dy * cast.cell * sign);
    let slope = if n.z > 0.08 { -(n.x * wx + n.y * wy) / n.z } else { 1.0 };
    let before = cast.depth[near] - cast.depth[far] - slope.clamp(0.0, 1.0);
    let weight = smooth_step(STEP.0, STEP.1, before);
    if weight > 0.03 {
        return Some(Crack { weight, kind: Kind::Overlap, part: cast.part[near] });
    }
    let (pa, pb) = (cast.part[a], cast.part[b]);
    if pa == pb {
        return None;
    }
    let none = Crack { weight: 0.0, kind: Kind::Crease, part: pa };
    let apart = if pa.is_digit() || pb.is_digit() { 0.15 } else { 0.24 };
    let m = ((apart / cast.cell + 0.5) as i32).max(1);
    let beyond = |i: usize, j: usize, s: i32| {
        let i = (i as i32 + s * dx as i32 * m).clamp(0, cast.width as i32 - 1);
        let j = (j as i32 + s * dy as i32 * m).clamp(0, cast.height as i32 - 1);
        j as usize * cast.width + i as usize
    };
    let (aa, bb) = (beyond(ia, ja, -1), beyond(ib, jb, 1));
    if !cast.hit(aa) || !cast.hit(bb) {
        return Some(none);
    }
    let span = (2 * m + 1) as f32 * cast.cell;
    let across = Vec3::new(dx * span, -dy * span, cast.depth[bb] - cast.depth[aa]);
    if (cast.normal[bb] - cast.normal[aa]).dot(across) >= 0.0 {
        return Some(none);
    }
    let angle = libm::acosf(cast.normal[aa].dot(cast.normal[bb]).clamp(-1.0, 1.0)).to_degrees();
    let (low, high) = crease_angles(pa, pb);
    Some(Crack { weight: 0.8 * smooth_step(low, high, angle), ..none })
}

impl<'a> Cracks<'a> {
    fn find(cast: &'a Cast) -> Self {
        let columns = cast.width + 1;
        let corners = columns * (cast.height + 1);
        let mut cracks = Cracks {
            cast,
            columns,
            leaving: vec![0; corners],
            weights: vec![0.0; corners * 2],
            kinds: vec![Kind::Outline; corners * 2],
            parts: vec![Part::default(); corners * 2],
        };
        // Most neighbours are both empty, or the same part at nearly one depth.
        let alike = |a: usize, b: usize| {
            cast.part[a] == cast.part[b] && (cast.depth[a] - cast.depth[b]).abs() <= STEP.0
        };
        for j in 0..cast.height {
            for i in 0..cast.width {
                let a = j * cast.width + i;
                if i + 1 < cast.width
                    && !alike(a, a + 1)
                    && let Some(crack) = crack_between(cast, (i, j), (i + 1, j))
                {
                    cracks.put((j * columns + i + 1) * 2 + 1, crack);
                }
                if j + 1 < cast.height
                    && !alike(a, a + cast.width)
                    && let Some(crack) = crack_between(cast, (i, j), (i, j + 1))
                {
                    cracks.put(((j + 1) * columns + i) * 2, crack);
                }
            }
        }
        cracks
    }

    /// The bits of `leaving` at both ends of an edge, and where its other end is.
    fn bits(&self, edge: usize) -> (u8, u8, usize) {
        if edge.is_multiple_of(2) { (RIGHT, LEFT, edge / 2 + 1) } else { (DOWN, UP, edge / 2 + self.columns) }
    }

    fn put(&mut self, edge: usize, crack: Crack) {
        let (from, to, end) = self.bits(edge);
        self.leaving[edge / 2] |= from;
        self.leaving[end] |= to;
        (self.weights[edge], self.kinds[edge], self.parts[edge]) = (crack.weight, crack.kind, crack.part);
    }

    fn take_away(&mut self, edge: usize) {
        let (from, to, end) = self.bits(edge);
        self.leaving[edge / 2] &= !from;
        self.leaving[end] &= !to;
    }

    fn is_there(&self, edge: usize) -> bool {
        self.leaving[edge / 2] & self.bits(edge).0 != 0
    }

    /// Whether the cells beside an edge belong to one visible piece.
    fn connects(&self, edge: usize) -> bool {
        !self.is_there(edge) || self.weights[edge] < 0.25
    }

    /// Takes away the edges of tiny visible pieces.
    fn drop_scraps(&mut self) {
        let (w, h) = (self.cast.width, self.cast.height);
        fn root(parent: &mut [u32], mut i: u32) -> u32 {
            while parent[i as usize] != i {
                parent[i as usize] = parent[parent[i as usize] as usize];
                i = parent[i as usize];
            }
            i
        }
        // Runs of connected cells along the rows, and what they are joined to above; 0 is no run.
        let mut run = vec![0u32; w * h];
        let (mut parent, mut size) = (vec![0u32], vec![0u32]);
        for j in 0..h {
            let mut joined = (0, 0);
            for i in 0..w {
                let a = j * w + i;
                if !self.cast.hit(a) {
                    continue;
                }
                let before = i > 0 && run[a - 1] != 0 && self.connects((j * self.columns + i) * 2 + 1);
                if !before {
                    parent.push(parent.len() as u32);
                    size.push(0);
                }
                run[a] = parent.len() as u32 - 1;
                size[run[a] as usize] += 1;
                let above = if j > 0 { run[a - w] } else { 0 };
                if above != 0 && (above, run[a]) != joined && self.connects((j * self.columns + i) * 2) {
                    joined = (above, run[a]);
                    let (x, y) = (root(&mut parent, run[a]), root(&mut parent, above));
                    if x != y {
                        parent[x as usize] = y;
                        size[y as usize] += size[x as usize];
                        size[x as usize] = 0;
                    }
                }
            }
        }
        // A run that grew after it was joined has counted on for itself.
        for i in 1..parent.len() as u32 {
            let top = root(&mut parent, i);
            if top != i {
                size[top as usize] += std::mem::take(&mut size[i as usize]);
            }
        }
        let cells = |area: f32| (area / (self.cast.cell * self.cast.cell)) as u32;
        let (scrap, speck) = (cells(SCRAP), cells(SPECK));
        for j in 0..h {
            for i in 0..w {
                let corner = j * self.columns + i;
                for (bit, edge, beside) in [(RIGHT, corner * 2, w), (DOWN, corner * 2 + 1, 1)] {
                    // The cells beside it: this one, and the one above or to the left.
                    let b = j * w + i;
                    if self.leaving[corner] & bit == 0 || run[b] == 0 || b < beside || run[b - beside] == 0 {
                        continue;
                    }
                    let a = b - beside;
                    let (ra, rb) = (root(&mut parent, run[a]) as usize, root(&mut parent, run[b]) as usize);
                    if ra == rb {
                        continue;
                    }
                    let (small_a, small_b) = (size[ra] < scrap, size[rb] < scrap);
                    let (za, zb) = (self.cast.depth[a], self.cast.depth[b]);
                    let gone = size[ra] < speck
                        || size[rb] < speck
                        || (small_a && small_b)
                        || (small_a && za > zb)
                        || (small_b && zb > za);
                    if gone {
                        self.take_away(edge);
                    }
                }
            }
        }
    }

    /// The cracks that meet at a corner.
    fn around(&self, corner: usize) -> ([usize; 4], usize) {
        let mut out = ([0; 4], 0);
        let bits = self.leaving[corner];
        let mut take = |bit: u8, edge: usize| {
            if bits & bit != 0 {
                out.0[out.1] = edge;
                out.1 += 1;
            }
        };
        take(RIGHT, corner * 2);
        take(DOWN, corner * 2 + 1);
        take(LEFT, corner.wrapping_sub(1).wrapping_mul(2));
        take(UP, corner.wrapping_sub(self.columns).wrapping_mul(2).wrapping_add(1));
        out
    }

    fn other_end(&self, edge: usize, corner: usize) -> usize {
        let (a, b) = (edge / 2, self.bits(edge).2);
        if corner == a { b } else { a }
    }

    fn priority(&self, edge: usize) -> f32 {
        self.weights[edge]
            + match self.kinds[edge] {
                Kind::Outline => 3.0,
                Kind::Overlap => 1.5,
                Kind::Crease => 0.0,
            }
    }

    /// How a line goes on from `edge` through `corner`: the two strongest go through, and of four the other two.
    fn onward(&self, edge: usize, corner: usize) -> Option<usize> {
        let (mut edges, n) = self.around(corner);
        let edges = &mut edges[..n];
        match n {
            0 | 1 => None,
            2 => edges.iter().copied().find(|e| *e != edge),
            _ => {
                edges.sort_by(|a, b| self.priority(*b).total_cmp(&self.priority(*a)));
                let at = edges.iter().position(|e| *e == edge)?;
                edges.get(at ^ 1).copied()
            }
        }
    }

    fn middle(&self, edge: usize) -> (f32, f32) {
        let corner = edge / 2;
        let (mut x, mut y) = ((corner % self.columns) as f32, (corner / self.columns) as f32);
        if edge.is_multiple_of(2) {
            x += 0.5;
        } else {
            y += 0.5;
        }
        (self.cast.left + x * self.cast.cell, self.cast.top - y * self.cast.cell)
    }

    fn corner_point(&self, corner: usize) -> (f32, f32) {
        let (x, y) = ((corner % self.columns) as f32, (corner / self.columns) as f32);
        (self.cast.left + x * self.cast.cell, self.cast.top - y * self.cast.cell)
    }

    fn chains(&self) -> Vec<Chain> {
        // The number of the chain each edge is in, from 1; 0 for none yet.
        let mut used = vec![0u16; self.weights.len()];
        let (mut out, mut ends) = (vec![], vec![]);
        for corner in 0..self.leaving.len() {
            if matches!(self.leaving[corner].count_ones(), 0 | 2) {
                continue;
            }
            let (edges, n) = self.around(corner);
            for &edge in &edges[..n] {
                if used[edge] == 0 && self.onward(edge, corner).is_none() {
                    let (chain, last) = self.follow(edge, corner, out.len() + 1, &mut used);
                    out.push(chain);
                    ends.push([corner, last]);
                }
            }
        }
        for corner in 0..self.leaving.len() {
            for (bit, edge) in [(RIGHT, corner * 2), (DOWN, corner * 2 + 1)] {
                if self.leaving[corner] & bit != 0 && used[edge] == 0 {
                    let (chain, last) = self.follow(edge, corner, out.len() + 1, &mut used);
                    out.push(chain);
                    ends.push([corner, last]);
                }
            }
        }
        for i in 0..out.len() {
            if !out[i].closed {
                out[i].meets = ends[i].map(|corner| self.meeting(corner, i, &out, &used));
            }
        }
        out
    }

    /// The chain that goes through `corner`, where chain `own` ends, and the point of it there.
    fn meeting(&self, corner: usize, own: usize, chains: &[Chain], used: &[u16]) -> Option<(usize, usize)> {
        let (mut edges, n) = self.around(corner);
        let edges = &mut edges[..n];
        edges.sort_by(|a, b| self.priority(*b).total_cmp(&self.priority(*a)));
        edges.iter().find_map(|&edge| {
            let chain = usize::from(used[edge]).checked_sub(1)?;
            let middle = self.middle(edge);
            let at = chains[chain].points.iter().position(|p| *p == middle)?;
            let its_end = at <= 1 || at + 2 >= chains[chain].points.len();
            (chain != own || !its_end).then_some((chain, at))
        })
    }

    /// The chain with this number that leaves `start` along `first`, and the corner where it ends.
    fn follow(&self, first: usize, start: usize, number: usize, used: &mut [u16]) -> (Chain, usize) {
        let number = u16::try_from(number).unwrap_or(u16::MAX);
        let mut edges = vec![first];
        used[first] = number;
        let mut corner = self.other_end(first, start);
        let mut closed = false;
        while let Some(next) = self.onward(edges[edges.len() - 1], corner) {
            if used[next] != 0 {
                closed = next == first;
                break;
            }
            used[next] = number;
            edges.push(next);
            corner = self.other_end(next, corner);
        }
        let mut points: Vec<(f32, f32)> = edges.iter().map(|e| self.middle(*e)).collect();
        let mut weights: Vec<f32> = edges.iter().map(|e| self.weights[*e]).collect();
        let count = |k: Kind| edges.iter().filter(|e| self.kinds[**e] == k).count();
        let kind = if count(Kind::Outline) * 2 > edges.len() {
            Kind::Outline
        } else if count(Kind::Overlap) > count(Kind::Crease) {
            Kind::Overlap
        } else {
            Kind::Crease
        };
        if !closed {
            points.insert(0, self.corner_point(start));
            weights.insert(0, weights[0]);
            points.push(self.corner_point(corner));
            weights.push(weights[weights.len() - 1]);
        }
        let mut regions: Vec<Region> = edges.iter().map(|e| self.parts[*e].region()).collect();
        if !closed {
            regions.insert(0, regions[0]);
            regions.push(regions[regions.len() - 1]);
        }
        (Chain { points, weights, closed, kind, regions, meets: [None; 2] }, corner)
    }
}
