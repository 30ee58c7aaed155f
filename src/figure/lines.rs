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
use std::ops::Range;

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

/// All cracks; edge `corner * 2` runs right from a corner, `corner * 2 + 1` down.
struct Cracks<'a> {
    cast: &'a Cast,
    columns: usize,
    /// Which cracks leave a corner: a sum of `RIGHT`, `DOWN`, `LEFT` and `UP`.
    leaving: Vec<u8>,
    /// Every crack that was found, with its edge, by rows of corners and in their order.
    found: Vec<(usize, Crack)>,
    /// Where the cracks of each row of corners begin.
    rows: Vec<usize>,
}

/// Cells of a row that are looked at together.
const STRETCH: usize = 16;

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

/// Whether a stretch of cells, from `a` on, differs too little from as many from `b` on for a crack between any two:
/// most are all empty, or the same part at nearly one depth. False for the last cells of the grid, which are fewer.
fn are_alike(cast: &Cast, a: usize, b: usize) -> bool {
    let parts = |from: usize| cast.part[from..].first_chunk::<STRETCH>();
    let depths = |from: usize| cast.depth[from..].first_chunk::<STRETCH>();
    let (Some(pa), Some(pb), Some(da), Some(db)) = (parts(a), parts(b), depths(a), depths(b)) else {
        return false;
    };
    (0..STRETCH).fold(0, |any, i| any | (pa[i].code() ^ pb[i].code())) == 0
        && (0..STRETCH).fold(true, |all, i| all & ((da[i] - db[i]).abs() <= STEP.0))
}

impl<'a> Cracks<'a> {
    fn find(cast: &'a Cast) -> Self {
        let columns = cast.width + 1;
        let leaving = vec![0; columns * (cast.height + 1)];
        let mut cracks = Cracks { cast, columns, leaving, found: vec![], rows: vec![] };
        for j in 0..cast.height {
            cracks.rows.push(cracks.found.len());
            let mut i = 0;
            while i < cast.width {
                let b = j * cast.width + i;
                if j > 0 && are_alike(cast, b, b - cast.width) && are_alike(cast, b, b - 1) {
                    i += STRETCH;
                    continue;
                }
                for i in i..(i + STRETCH).min(cast.width) {
                    cracks.look(i, j, j * cast.width + i);
                }
                i += STRETCH;
            }
        }
        cracks.rows.push(cracks.found.len());
        cracks
    }

    /// Looks for a crack above a cell and for one before it.
    fn look(&mut self, i: usize, j: usize, b: usize) {
        let cast = self.cast;
        let alike =
            |a: usize| cast.part[a] == cast.part[b] && (cast.depth[a] - cast.depth[b]).abs() <= STEP.0;
        let corner = j * self.columns + i;
        if j > 0
            && !alike(b - cast.width)
            && let Some(crack) = crack_between(cast, (i, j - 1), (i, j))
        {
            self.put(corner * 2, crack);
        }
        if i > 0
            && !alike(b - 1)
            && let Some(crack) = crack_between(cast, (i - 1, j), (i, j))
        {
            self.put(corner * 2 + 1, crack);
        }
    }

    /// The bits of `leaving` at both ends of an edge, and where its other end is.
    fn bits(&self, edge: usize) -> (u8, u8, usize) {
        if edge.is_multiple_of(2) { (RIGHT, LEFT, edge / 2 + 1) } else { (DOWN, UP, edge / 2 + self.columns) }
    }

    fn put(&mut self, edge: usize, crack: Crack) {
        let (from, to, end) = self.bits(edge);
        self.leaving[edge / 2] |= from;
        self.leaving[end] |= to;
        self.found.push((edge, crack));
    }

    fn take_away(&mut self, edge: usize) {
        let (from, to, end) = self.bits(edge);
        self.leaving[edge / 2] &= !from;
        self.leaving[end] &= !to;
    }

    /// The cracks whose edges run from the corners of a row.
    fn of_row(&self, row: usize) -> &[(usize, Crack)] {
        &self.found[self.rows[row]..self.rows[row + 1]]
    }

    /// The number of the crack of an edge, which must have one.
    fn number(&self, edge: usize) -> usize {
        let row = edge / 2 / self.columns;
        self.rows[row] + self.of_row(row).partition_point(|(other, _)| *other < edge)
    }

    fn crack(&self, edge: usize) -> Crack {
        self.found[self.number(edge)].1
    }

    /// Takes away the edges of tiny visible pieces.
    fn drop_scraps(&mut self) {
        let pieces = Pieces::of(self);
        let cells = |area: f32| (area / (self.cast.cell * self.cast.cell)) as u32;
        let (scrap, speck) = (cells(SCRAP), cells(SPECK));
        let mut gone = vec![];
        for j in 0..self.cast.height {
            for &(edge, _) in self.of_row(j) {
                let i = edge / 2 - j * self.columns;
                // The cells beside it: this one, and the one above or before it.
                let (a, b) = if edge.is_multiple_of(2) { ((i, j - 1), (i, j)) } else { ((i - 1, j), (i, j)) };
                let (Some((ra, size_a)), Some((rb, size_b))) = (pieces.at(a), pieces.at(b)) else { continue };
                if ra == rb {
                    continue;
                }
                let depth = |(i, j): (usize, usize)| self.cast.depth[j * self.cast.width + i];
                let (small_a, small_b) = (size_a < scrap, size_b < scrap);
                let (za, zb) = (depth(a), depth(b));
                if size_a < speck
                    || size_b < speck
                    || (small_a && small_b)
                    || (small_a && za > zb)
                    || (small_b && zb > za)
                {
                    gone.push(edge);
                }
            }
        }
        gone.into_iter().for_each(|edge| self.take_away(edge));
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
        let crack = self.crack(edge);
        crack.weight
            + match crack.kind {
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
        // The number of the chain each crack is in, from 1; 0 for none yet.
        let mut used = vec![0u16; self.found.len()];
        let (mut out, mut ends) = (vec![], vec![]);
        for corner in 0..self.leaving.len() {
            if matches!(self.leaving[corner].count_ones(), 0 | 2) {
                continue;
            }
            let (edges, n) = self.around(corner);
            for &edge in &edges[..n] {
                if used[self.number(edge)] == 0 && self.onward(edge, corner).is_none() {
                    let (chain, last) = self.follow(edge, corner, out.len() + 1, &mut used);
                    out.push(chain);
                    ends.push([corner, last]);
                }
            }
        }
        for number in 0..self.found.len() {
            let (edge, corner) = (self.found[number].0, self.found[number].0 / 2);
            if self.leaving[corner] & self.bits(edge).0 != 0 && used[number] == 0 {
                let (chain, last) = self.follow(edge, corner, out.len() + 1, &mut used);
                out.push(chain);
                ends.push([corner, last]);
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
            let chain = usize::from(used[self.number(edge)]).checked_sub(1)?;
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
        let mut cracks = vec![self.crack(first)];
        used[self.number(first)] = number;
        let mut corner = self.other_end(first, start);
        let mut closed = false;
        while let Some(next) = self.onward(edges[edges.len() - 1], corner) {
            let at = self.number(next);
            if used[at] != 0 {
                closed = next == first;
                break;
            }
            used[at] = number;
            edges.push(next);
            cracks.push(self.found[at].1);
            corner = self.other_end(next, corner);
        }
        let mut points: Vec<(f32, f32)> = edges.iter().map(|e| self.middle(*e)).collect();
        let mut weights: Vec<f32> = cracks.iter().map(|c| c.weight).collect();
        let count = |k: Kind| cracks.iter().filter(|c| c.kind == k).count();
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
        let mut parts: Vec<Part> = cracks.iter().map(|c| c.part).collect();
        if !closed {
            parts.insert(0, parts[0]);
            parts.push(parts[parts.len() - 1]);
        }
        let regions = parts.iter().map(|part| part.region()).collect();
        (Chain { points, weights, closed, kind, regions, meets: [None; 2] }, corner)
    }
}

/// A crack stronger than this parts two visible pieces.
const PARTING: f32 = 0.25;

/// The visible pieces of the baby: cells that are not parted by cracks.
struct Pieces {
    /// The runs of cells of each row: where each begins and ends, and the number of its piece.
    runs: Vec<(usize, usize, usize)>,
    /// Where the runs of each row begin.
    rows: Vec<usize>,
    /// Cells of each piece.
    sizes: Vec<u32>,
}

impl Pieces {
    fn of(cracks: &Cracks) -> Self {
        let (w, h) = (cracks.cast.width, cracks.cast.height);
        fn root(parent: &mut [usize], mut i: usize) -> usize {
            while parent[i] != i {
                parent[i] = parent[parent[i]];
                i = parent[i];
            }
            i
        }
        let (mut runs, mut rows, mut parent) = (vec![], vec![], vec![]);
        // Columns where a crack parts a cell from the one above.
        let mut parted = vec![];
        for j in 0..h {
            let above: Range<usize> = rows.last().map_or(0, |&from| from)..runs.len();
            rows.push(runs.len());
            parted.clear();
            let first = j * cracks.columns;
            let parting = cracks.of_row(j).iter().filter(|(_, crack)| crack.weight >= PARTING);
            let mut from = 0;
            let mut run = |from: usize, to: usize| {
                if from < to && cracks.cast.hit(j * w + from) {
                    runs.push((from, to, parent.len()));
                    parent.push(parent.len());
                }
            };
            for (edge, _) in parting {
                let i = edge / 2 - first;
                if edge.is_multiple_of(2) {
                    parted.push(i);
                } else {
                    // What was met and what was not are always parted.
                    run(from, i);
                    from = i;
                }
            }
            run(from, w);
            for a in above {
                for b in rows[j]..runs.len() {
                    let (from, to) = (runs[a].0.max(runs[b].0), runs[a].1.min(runs[b].1));
                    let count = |to: usize| parted.partition_point(|&i| i < to);
                    if from < to && count(to) - count(from) < to - from {
                        let (a, b) = (root(&mut parent, runs[a].2), root(&mut parent, runs[b].2));
                        parent[b] = a;
                    }
                }
            }
        }
        rows.push(runs.len());
        let mut sizes = vec![0; parent.len()];
        for (from, to, piece) in &mut runs {
            *piece = root(&mut parent, *piece);
            sizes[*piece] += (*to - *from) as u32;
        }
        Pieces { runs, rows, sizes }
    }

    /// The number of the piece that a cell is in, and its cells; `None` where nothing was met.
    fn at(&self, (i, j): (usize, usize)) -> Option<(usize, u32)> {
        let runs = &self.runs[self.rows[j]..self.rows[j + 1]];
        let (from, to, piece) = *runs.get(runs.partition_point(|run| run.1 <= i))?;
        (from..to).contains(&i).then(|| (piece, self.sizes[piece]))
    }
}
