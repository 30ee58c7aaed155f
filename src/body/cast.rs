//! The surface seen from the front, as a picture of depths.
//!
//! In: forms in mother space. Out: a grid of cells, each with the depth (z, cm), the part and the normal
//! of what a ray from the viewer meets first.
//!
//! Rays run along -z in packets of eight. Cells lie in tiles of 16 x 16, each with its own short list of forms. One
//! ray down the middle of a tile goes first, as thick as the tile: it finds the depth down to which the whole tile is
//! empty, so that the others start there or not at all. Then go rays on the corners of blocks of 4 x 4 cells: knots.
//! Where four knots lie on one even piece of skin with nothing before it, the cells between them are filled in and
//! asked once whether that holds; elsewhere (edges, folds, steep skin) each cell is cast, from where its knot first
//! came near to something.
//!
//! All arithmetic is f32 without fused operations, so that every machine gets the same bits.

use super::eight::{self, LANES, Near, Points, lanes};
use super::pack::Pack;
use super::part::Part;
use super::surface::{self, Form, TAP, TAPS};
use crate::units::Vec3;

/// Cells along the side of a tile, of a block, and blocks along the side of a tile.
const TILE: usize = 16;
const BLOCK: usize = 4;
const SPAN: usize = TILE / BLOCK;
/// How far round a knot it is known what stands near, cells: as far as the cells of its quarter of a block.
const AROUND: f32 = 2.2;
/// A hit is a point this near to the surface, cm.
const HIT: f32 = 0.004;
const MISS: f32 = -1e6;

/// A grid of cells in the picture plane; row 0 is the top.
pub struct Cast {
    /// Cells across.
    pub width: usize,
    /// Cells down.
    pub height: usize,
    /// x of the left edge, cm.
    pub left: f32,
    /// y of the top edge, cm.
    pub top: f32,
    /// Side of a cell, cm.
    pub cell: f32,
    /// Depth of each cell, or a large negative number where nothing was met.
    pub depth: Vec<f32>,
    /// Part met in each cell.
    pub part: Vec<Part>,
    /// Unit normal met in each cell.
    pub normal: Vec<Vec3>,
    /// Where its first cell lies in the lattice it was cast from: column and row of blocks.
    first_block: (usize, usize),
}

/// Whether this is the depth of something that was met.
#[inline]
pub fn is_met(depth: f32) -> bool {
    depth > MISS * 0.5
}

impl Cast {
    /// A grid whose upper left corner lies at `corner`, where nothing was met yet.
    pub fn empty(width: usize, height: usize, corner: (f32, f32), cell: f32) -> Self {
        let n = width * height;
        Cast {
            width,
            height,
            left: corner.0,
            top: corner.1,
            cell,
            depth: vec![MISS; n],
            part: vec![Part::default(); n],
            normal: vec![Vec3::default(); n],
            first_block: (0, 0),
        }
    }
    /// Whether a ray met the surface in the cell with this index.
    #[inline]
    pub fn hit(&self, index: usize) -> bool {
        is_met(self.depth[index])
    }
    /// Centre of a cell.
    #[inline]
    pub fn centre(&self, i: usize, j: usize) -> (f32, f32) {
        (self.left + (i as f32 + 0.5) * self.cell, self.top - (j as f32 + 0.5) * self.cell)
    }
    /// Index of the cell that holds a point of the picture plane.
    pub fn index_at(&self, x: f32, y: f32) -> Option<usize> {
        let (i, j) = ((x - self.left) / self.cell, (self.top - y) / self.cell);
        (i >= 0.0 && j >= 0.0 && (i as usize) < self.width && (j as usize) < self.height)
            .then(|| j as usize * self.width + i as usize)
    }
    /// True when the surface is met at this point.
    pub fn covers(&self, x: f32, y: f32) -> bool {
        self.index_at(x, y).is_some_and(|i| self.hit(i))
    }
    /// True when a point of the surface can be seen: nothing stands more than `slack` cm before it.
    pub fn sees(&self, p: Vec3, slack: f32) -> bool {
        self.index_at(p.x, p.y).is_some_and(|i| self.hit(i) && self.depth[i] - p.z < slack)
    }
    /// Every cell that was met: centre and index.
    pub fn hits(&self) -> impl Iterator<Item = (f32, f32, usize)> + '_ {
        (0..self.height).flat_map(move |j| self.hits_of_row(j))
    }
    /// Those of one row.
    pub fn hits_of_row(&self, j: usize) -> impl Iterator<Item = (f32, f32, usize)> + '_ {
        let row = j * self.width;
        (0..self.width).filter(move |i| self.hit(row + i)).map(move |i| {
            let (x, y) = self.centre(i, j);
            (x, y, row + i)
        })
    }
}

/// Casts `forms` with cells of `cell` cm.
pub fn cast(forms: &[Form], cell: f32) -> Cast {
    let lattice = Lattice::cast(forms, cell);
    let mut out = lattice.empty_cast();
    let mut list = Tile::default();
    for row in 0..lattice.rows / SPAN {
        for column in 0..lattice.columns / SPAN {
            lattice.fill_tile(forms, &mut list, &mut out, row, column);
        }
    }
    out
}

/// The forms that can be met in a tile, as a list and packed.
#[derive(Default)]
struct Tile(Vec<Form>, Pack);

/// What one ray of the lattice met.
#[derive(Clone, Copy)]
struct Knot {
    /// Down to this depth nothing stands within `AROUND` of the ray; `MISS` when nothing does at all.
    clear: f32,
    /// Depth of what the ray meets, or `MISS`.
    depth: f32,
    /// Unit normal there.
    normal: Vec3,
}

const NOTHING: Knot = Knot { clear: MISS, depth: MISS, normal: Vec3::new(0.0, 0.0, 0.0) };

/// Rays on the corners of blocks of `BLOCK` x `BLOCK` cells.
struct Lattice {
    cell: f32,
    /// Cells from the midline to the first column of knots; negative on her right.
    first: i32,
    top: f32,
    /// Blocks across and down, multiples of `SPAN`; there is a knot at the upper left corner of each.
    columns: usize,
    rows: usize,
    knots: Vec<Knot>,
}

impl Lattice {
    /// Casts the knots. The midline falls on a border of tiles: a mirrored baby meets mirrored cells.
    fn cast(forms: &[Form], cell: f32) -> Self {
        let (mut x0, mut x1, mut y0, mut y1) = (1e9f32, -1e9f32, 1e9f32, -1e9f32);
        for f in forms.iter().filter(|f| !f.carve) {
            x0 = x0.min(f.ball.x - f.reach);
            x1 = x1.max(f.ball.x + f.reach);
            y0 = y0.min(f.ball.y - f.reach);
            y1 = y1.max(f.ball.y + f.reach);
        }
        // An empty tile all round, so that no block lacks a knot.
        let tile = TILE as f32 * cell;
        let tiles = |cm: f32| libm::ceilf(cm.abs() / tile) as i32 * if cm < 0.0 { -1 } else { 1 };
        let (from, to) = (tiles(x0.min(0.0)) - 1, tiles(x1.max(0.0)) + 1);
        let top = y1 + tile;
        let down = libm::ceilf((top - y0) / tile) as usize + 1;
        let (columns, rows) = ((to - from) as usize * SPAN, down * SPAN);
        let mut out = Lattice {
            cell,
            first: from * TILE as i32,
            top,
            columns,
            rows,
            knots: vec![NOTHING; columns * rows],
        };
        let mut list = Tile::default();
        for row in 0..rows / SPAN {
            for column in 0..columns / SPAN {
                out.cast_tile(forms, &mut list, row, column);
            }
        }
        out
    }

    /// x of a column of cells' left edge, exactly mirrored about the midline.
    fn x(&self, cells: usize) -> f32 {
        (self.first + cells as i32) as f32 * self.cell
    }

    fn y(&self, cells: usize) -> f32 {
        self.top - cells as f32 * self.cell
    }

    /// The forms that can be met in a tile, and the depths between which they lie.
    fn list(&self, forms: &[Form], list: &mut Tile, row: usize, column: usize) -> Option<(f32, f32)> {
        let half = TILE as f32 * 0.5 * self.cell;
        let (cx, cy) = (self.x(column * TILE) + half, self.y(row * TILE) - half);
        list.0.clear();
        let (mut near, mut far, mut any) = (-1e9f32, 1e9f32, false);
        for f in forms {
            if f.distance_seen(cx, cy, half) < f.influence + 0.05 {
                list.0.push(*f);
                if !f.carve {
                    any = true;
                    let m = f.reach + f.influence + 0.05;
                    near = near.max(f.ball.z + m);
                    far = far.min(f.ball.z - m);
                }
            }
        }
        list.1.fill(list.0.iter());
        any.then_some((near, far))
    }

    /// Casts the knots of one tile.
    fn cast_tile(&mut self, forms: &[Form], list: &mut Tile, row: usize, column: usize) {
        let Some((near, far)) = self.list(forms, list, row, column) else { return };
        let half = TILE as f32 * 0.5 * self.cell;
        let middle = (self.x(column * TILE) + half, self.y(row * TILE) - half);
        let Some(near) = clear_down_to(&list.0, middle, half * std::f32::consts::SQRT_2, near, far) else {
            return;
        };
        let mut rays: Vec<Ray> = (0..SPAN * SPAN)
            .map(|n| {
                let (i, j) = (column * SPAN + n % SPAN, row * SPAN + n / SPAN);
                Ray::new(self.x(i * BLOCK), self.y(j * BLOCK), near, j * self.columns + i)
            })
            .collect();
        march(&list.1, far, Some(AROUND * self.cell), &mut rays);
        for ray in &rays {
            self.knots[ray.to].clear = ray.clear;
        }
        rays.retain(|ray| ray.met);
        settle(&list.1, &rays, |ray, depth, normal, _| {
            let knot = &mut self.knots[ray.to];
            (knot.depth, knot.normal) = (depth, normal);
        });
    }

    /// Cells enough for everything that can be met, with a margin.
    fn empty_cast(&self) -> Cast {
        const MARGIN: usize = 2;
        let (mut i0, mut i1, mut j0, mut j1) = (self.columns, 0, self.rows, 0);
        for j in 0..self.rows {
            for i in 0..self.columns {
                if self.knots[j * self.columns + i].depth > MISS {
                    (i0, i1, j0, j1) = (i0.min(i), i1.max(i), j0.min(j), j1.max(j));
                }
            }
        }
        if i0 > i1 {
            (i0, i1, j0, j1) = (MARGIN, MARGIN, MARGIN, MARGIN);
        }
        let (i0, j0) = (i0.saturating_sub(MARGIN), j0.saturating_sub(MARGIN));
        let (width, height) = ((i1 + MARGIN - i0) * BLOCK, (j1 + MARGIN - j0) * BLOCK);
        let corner = (self.x(i0 * BLOCK), self.y(j0 * BLOCK));
        let out = Cast::empty(width, height, corner, self.cell);
        Cast { first_block: (i0, j0), ..out }
    }

    /// The cells of one tile: blocks of even skin are filled in between their knots, the others cast.
    fn fill_tile(&self, forms: &[Form], list: &mut Tile, out: &mut Cast, row: usize, column: usize) {
        let (mut listed, mut rays) = (None, vec![]);
        for j in row * SPAN..(row + 1) * SPAN {
            for i in column * SPAN..(column + 1) * SPAN {
                if i + 1 >= self.columns || j + 1 >= self.rows {
                    continue;
                }
                let at = j * self.columns + i;
                let knots =
                    [at, at + 1, at + self.columns, at + self.columns + 1].map(|knot| self.knots[knot]);
                if knots.iter().all(|knot| knot.clear <= MISS) {
                    continue;
                }
                let Some(_) = *listed.get_or_insert_with(|| self.list(forms, list, row, column)) else {
                    return;
                };
                let block = Block { lattice: self, i, j, knots };
                if !block.fill_between(&list.1, out) {
                    block.add_rays(out, &mut rays);
                }
            }
        }
        if let Some((_, far)) = listed.flatten() {
            march(&list.1, far, None, &mut rays);
            rays.retain(|ray| ray.met);
            settle(&list.1, &rays, |ray, depth, normal, part| {
                (out.depth[ray.to], out.normal[ray.to], out.part[ray.to]) = (depth, normal, part);
            });
        }
    }
}

/// One block with the knots at its corners: upper left, upper right, lower left, lower right.
struct Block<'a> {
    lattice: &'a Lattice,
    i: usize,
    j: usize,
    knots: [Knot; 4],
}

impl Block<'_> {
    /// Cell `n` of the block: column, row.
    fn cell(n: usize) -> (usize, usize) {
        (n % BLOCK, n / BLOCK)
    }

    /// Middle of cell `n`.
    fn middle(&self, n: usize) -> (f32, f32) {
        let ((column, row), s) = (Self::cell(n), self.lattice.cell);
        let x = self.lattice.x(self.i * BLOCK + column) + 0.5 * s;
        (x, self.lattice.y(self.j * BLOCK + row) - 0.5 * s)
    }

    /// Index in the cast of the first cell; `None` outside of it.
    fn first_cell(&self, out: &Cast) -> Option<usize> {
        let (i, j) = (self.i.checked_sub(out.first_block.0)?, self.j.checked_sub(out.first_block.1)?);
        (i * BLOCK < out.width && j * BLOCK < out.height).then_some((j * out.width + i) * BLOCK)
    }

    /// Whether one piece of even skin lies between the knots, with nothing before it.
    fn is_even(&self) -> bool {
        const STEEP: f32 = 0.25;
        let (s, around) = (self.lattice.cell * BLOCK as f32, AROUND * self.lattice.cell);
        let seen = |k: &Knot| {
            k.depth > MISS
                && k.normal.z > STEEP
                // Where something else stands near the ray, the ray comes near it earlier than near the skin.
                && k.clear - k.depth < 1.45 * around / k.normal.z + 0.06
        };
        if !self.knots.iter().all(seen) {
            return false;
        }
        let [a, b, c, d] = &self.knots;
        let even = |a: &Knot, b: &Knot, slope: fn(&Knot) -> f32| {
            let (p, q) = (slope(a), slope(b));
            ((b.depth - a.depth) - 0.5 * (p + q) * s).abs() < 0.025 && a.normal.dot(b.normal) > 0.85
        };
        even(a, b, across) && even(c, d, across) && even(c, a, upwards) && even(d, b, upwards)
    }

    /// Fills the block in between its knots; false when that does not hold.
    fn fill_between(&self, pack: &Pack, out: &mut Cast) -> bool {
        if !self.is_even() {
            return false;
        }
        let Some(first) = self.first_cell(out) else { return true };
        let s = self.lattice.cell * BLOCK as f32;
        let [a, b, c, d] = &self.knots;
        let mut found = [(0.0, Part::default(), Vec3::default()); BLOCK * BLOCK];
        for packet in 0..BLOCK * BLOCK / LANES {
            let (mut z, mut normals) = ([0f32; LANES], [Vec3::default(); LANES]);
            for i in 0..LANES {
                let (column, row) = Self::cell(packet * LANES + i);
                let (u, v) = ((column as f32 + 0.5) / BLOCK as f32, (row as f32 + 0.5) / BLOCK as f32);
                // A cubic along upper and lower side, the slope at right angles to them in between.
                let side = |k: &Knot, l: &Knot| {
                    (cubic(k.depth, across(k) * s, l.depth, across(l) * s, u), mix(upwards(k), upwards(l), u))
                };
                let ((over, p), (under, q)) = (side(a, b), side(c, d));
                z[i] = cubic(over, -p * s, under, -q * s, v);
                let normal = |k: &Knot, l: &Knot| k.normal * (1.0 - u) + l.normal * u;
                normals[i] = (normal(a, b) * (1.0 - v) + normal(c, d) * v).normalized();
            }
            let x = lanes!(i => self.middle(packet * LANES + i).0);
            let y = lanes!(i => self.middle(packet * LANES + i).1);
            let (off, parts) = eight::distance_and_part(pack, &Points { x, y, z });
            for i in 0..LANES {
                let off = off[i] / normals[i].z;
                if off.abs() > 0.015 {
                    return false;
                }
                found[packet * LANES + i] = (z[i] - off, Part::from_code(parts[i]), normals[i]);
            }
        }
        for (n, (depth, part, normal)) in found.into_iter().enumerate() {
            let (column, row) = Self::cell(n);
            let at = first + row * out.width + column;
            (out.depth[at], out.part[at], out.normal[at]) = (depth, part, normal);
        }
        true
    }

    /// Adds a ray for every cell, from where the knot in its corner of the block comes near to something.
    fn add_rays(&self, out: &Cast, rays: &mut Vec<Ray>) {
        let Some(first) = self.first_cell(out) else { return };
        for n in 0..BLOCK * BLOCK {
            let (column, row) = Self::cell(n);
            let near = self.knots[column / (BLOCK / 2) + 2 * (row / (BLOCK / 2))].clear;
            if near > MISS {
                let (x, y) = self.middle(n);
                rays.push(Ray::new(x, y, near, first + row * out.width + column));
            }
        }
    }
}

/// Slope of the skin at a knot, cm a cm to her left.
fn across(k: &Knot) -> f32 {
    -k.normal.x / k.normal.z
}

/// Slope of the skin at a knot, cm a cm upwards.
fn upwards(k: &Knot) -> f32 {
    -k.normal.y / k.normal.z
}

fn mix(a: f32, b: f32, u: f32) -> f32 {
    a * (1.0 - u) + b * u
}

/// The cubic from `a` with slope `p` to `b` with slope `q`, at `u` from 0 to 1.
fn cubic(a: f32, p: f32, b: f32, q: f32, u: f32) -> f32 {
    let v = 1.0 - u;
    a * v * v * (1.0 + 2.0 * u) + b * u * u * (1.0 + 2.0 * v) + u * v * (p * v - q * u)
}

/// The depth down to which a ray of this radius meets nothing; `None` when it meets nothing at all.
///
/// Error: the same factor of 0.9 that guards single rays against forms whose distance is not exact.
fn clear_down_to(list: &[Form], (x, y): (f32, f32), radius: f32, near: f32, far: f32) -> Option<f32> {
    let mut z = near;
    for _ in 0..64 {
        let free = surface::distance(list, Vec3::new(x, y, z)).0 * 0.9 - radius;
        if free < 0.02 {
            return Some(z);
        }
        z -= free;
        if z < far - radius {
            return None;
        }
    }
    Some(z)
}

/// One ray on its way down.
#[derive(Clone, Copy)]
struct Ray {
    x: f32,
    y: f32,
    z: f32,
    /// Down to this depth nothing stands near; `MISS` when nothing does at all. Only found when asked for.
    clear: f32,
    met: bool,
    /// The cell or knot it is for.
    to: usize,
}

impl Ray {
    fn new(x: f32, y: f32, z: f32, to: usize) -> Self {
        Ray { x, y, z, clear: MISS, met: false, to }
    }
}

/// Where a ray of a packet stands.
#[derive(Clone, Copy)]
struct Walk {
    /// Number of the ray; past the last one when there is none left for this lane.
    ray: usize,
    /// Whether it still looks for the first thing near to it.
    wide: bool,
    /// The last distance and the step that was taken from there.
    before: f32,
    step: f32,
    rounds: u32,
}

/// Takes each ray down until it meets a form or passes `far`; with `radius`, notes on the way where something first
/// stands within it. Eight rays go side by side; one that has ended makes room for the next.
///
/// Steps are nine tenths of the distance. Near the skin they are as long as the last two distances say, but never
/// more than 2.2 distances, and a step that ends inside is taken back: what could be passed over is thinner
/// than 0.15 cm, and of an edge no more than a tenth of a cell.
fn march(pack: &Pack, far: f32, radius: Option<f32>, rays: &mut [Ray]) {
    const NEAR: f32 = 0.12;
    const LEAST: f32 = 0.45;
    const ROUNDS: u32 = 160;
    let start = |ray: usize| Walk { ray, wide: radius.is_some(), before: 1e9, step: 1.0, rounds: 0 };
    let mut at = Points::default();
    let mut walks = [start(usize::MAX); LANES];
    let (mut next, mut walking) = (0, 0);
    for (i, walk) in walks.iter_mut().enumerate().take(rays.len()) {
        *walk = start(next);
        (at.x[i], at.y[i], at.z[i]) = (rays[next].x, rays[next].y, rays[next].z);
        next += 1;
        walking += 1;
    }
    let radius = radius.unwrap_or(0.0);
    while walking > 0 {
        let d = eight::distance(pack, &at);
        for i in 0..LANES {
            let (walk, d) = (&mut walks[i], d[i]);
            let Some(ray) = rays.get_mut(walk.ray) else { continue };
            if walk.wide {
                if d * 0.9 - radius < 0.02 {
                    ray.clear = at.z[i];
                    walk.wide = false;
                } else {
                    at.z[i] -= d * 0.9 - radius;
                }
            }
            ray.met = d.abs() < HIT;
            if !walk.wide && !ray.met {
                let slope =
                    if walk.before < 1e8 { ((walk.before - d) / walk.step).clamp(LEAST, 1.0) } else { 1.0 };
                walk.step = if d < NEAR { d / slope } else { d * 0.9 };
                walk.before = d;
                at.z[i] -= walk.step;
            }
            walk.rounds += 1;
            if ray.met || at.z[i] < far - radius || walk.rounds > ROUNDS {
                ray.z = at.z[i];
                *walk = start(next);
                match rays.get(next) {
                    Some(ray) => (at.x[i], at.y[i], at.z[i]) = (ray.x, ray.y, ray.z),
                    None => walking -= 1,
                }
                next += 1;
            }
        }
    }
}

/// Brings rays that have met a form onto its surface: gives depth, unit normal and part of each to `take`.
fn settle(pack: &Pack, rays: &[Ray], mut take: impl FnMut(&Ray, f32, Vec3, Part)) {
    // What cannot be met by a tap is left out for the taps.
    const SLACK: f32 = 6.0 * TAP;
    let mut near = Near::default();
    for rays in rays.chunks(LANES) {
        let of = |i: usize| &rays[i.min(rays.len() - 1)];
        let at = Points { x: lanes!(i => of(i).x), y: lanes!(i => of(i).y), z: lanes!(i => of(i).z) };
        let (off, parts) = eight::distance_and_near(pack, &at, &mut near, SLACK);
        let mut n = [[0f32; LANES]; 3];
        for t in TAPS {
            let d = eight::distance(&near.pack, &at.moved(t * TAP));
            for i in 0..LANES {
                n[0][i] += t.x * d[i];
                n[1][i] += t.y * d[i];
                n[2][i] += t.z * d[i];
            }
        }
        for (i, ray) in rays.iter().enumerate() {
            let normal = Vec3::new(n[0][i], n[1][i], n[2][i]).normalized();
            take(ray, ray.z - off[i] / normal.z.max(0.3), normal, Part::from_code(parts[i]));
        }
    }
}
