//! The surface seen from the front, as a picture of depths.
//!
//! In: forms in mother space. Out: a grid of cells, each with the depth (z, cm), the part and the normal
//! of what a ray from the viewer meets first.
//!
//! Rays run along -z in packets of eight. Cells are cast in tiles of 16 x 16, each with its own short list of
//! forms. One ray down the middle of a tile goes first, as thick as the tile: it finds the depth down to which the
//! whole tile is empty, so that the others start there or not at all.
//!
//! All arithmetic is f32 without fused operations, so that every machine gets the same bits.

use super::part::Part;
use super::surface::{self, Form, Shape, TAP, TAPS};
use crate::units::Vec3;

const LANES: usize = 8;
type Lanes = [f32; LANES];
const TILE: usize = 16;
/// A hit is a point this near to the surface, cm.
const HIT: f32 = 0.004;
const MISS: f32 = -1e6;

macro_rules! lanes {
    ($i:ident => $e:expr) => {{
        let mut o = [0f32; LANES];
        for $i in 0..LANES {
            o[$i] = $e;
        }
        o
    }};
}

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
}

impl Cast {
    /// Whether a ray met the surface in the cell with this index.
    #[inline]
    pub fn hit(&self, index: usize) -> bool {
        self.depth[index] > MISS * 0.5
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
    /// The same picture without its empty border, but for a margin of eight cells.
    fn cropped(self) -> Cast {
        const MARGIN: usize = 8;
        let (mut i0, mut i1, mut j0, mut j1) = (self.width, 0, self.height, 0);
        for j in 0..self.height {
            for i in 0..self.width {
                if self.hit(j * self.width + i) {
                    (i0, i1, j0, j1) = (i0.min(i), i1.max(i + 1), j0.min(j), j1.max(j + 1));
                }
            }
        }
        if i0 >= i1 {
            return self;
        }
        let (i0, j0) = (i0.saturating_sub(MARGIN), j0.saturating_sub(MARGIN));
        let (i1, j1) = ((i1 + MARGIN).min(self.width), (j1 + MARGIN).min(self.height));
        let rows = |width: usize| (j0..j1).map(move |j| j * width + i0..j * width + i1);
        Cast {
            width: i1 - i0,
            height: j1 - j0,
            left: self.left + i0 as f32 * self.cell,
            top: self.top - j0 as f32 * self.cell,
            cell: self.cell,
            depth: rows(self.width).flat_map(|r| self.depth[r].iter().copied()).collect(),
            part: rows(self.width).flat_map(|r| self.part[r].iter().copied()).collect(),
            normal: rows(self.width).flat_map(|r| self.normal[r].iter().copied()).collect(),
        }
    }

    /// Every cell that was met: centre and index.
    pub fn hits(&self) -> impl Iterator<Item = (f32, f32, usize)> + '_ {
        (0..self.width * self.height).filter(|&i| self.hit(i)).map(|i| {
            let (x, y) = self.centre(i % self.width, i / self.width);
            (x, y, i)
        })
    }
}

/// Casts `forms` with cells of `cell` cm.
pub fn cast(forms: &[Form], cell: f32) -> Cast {
    let (mut x0, mut x1, mut y0, mut y1) = (1e9f32, -1e9f32, 1e9f32, -1e9f32);
    for f in forms.iter().filter(|f| !f.carve) {
        x0 = x0.min(f.ball.x - f.reach);
        x1 = x1.max(f.ball.x + f.reach);
        y0 = y0.min(f.ball.y - f.reach);
        y1 = y1.max(f.ball.y + f.reach);
    }
    // The grid is laid so that the midline falls on a cell border: a mirrored baby meets mirrored cells.
    let margin = 4.0 * cell;
    let half = (x0 - margin).abs().max((x1 + margin).abs());
    let columns_half = (half / cell / TILE as f32) as usize + 1;
    let width = columns_half * 2 * TILE;
    let left = -((columns_half * TILE) as f32) * cell;
    let top = y1 + margin;
    let height = (((top - y0 + margin) / cell) as usize / TILE + 1) * TILE;
    let n = width * height;
    let mut out = Cast {
        width,
        height,
        left,
        top,
        cell,
        depth: vec![MISS; n],
        part: vec![Part::default(); n],
        normal: vec![Vec3::default(); n],
    };
    let mut list = Vec::with_capacity(forms.len());
    for row in 0..height / TILE {
        for column in 0..width / TILE {
            cast_tile(forms, &mut list, &mut out, row, column);
        }
    }
    out.cropped()
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

/// Casts one tile into `out`.
fn cast_tile(forms: &[Form], list: &mut Vec<Form>, out: &mut Cast, row: usize, column: usize) {
    let (s, half) = (out.cell, TILE as f32 * 0.5 * out.cell);
    let cx = out.left + (column as f32 + 0.5) * TILE as f32 * s;
    let cy = out.top - (row as f32 + 0.5) * TILE as f32 * s;
    list.clear();
    let (mut near, mut far, mut any) = (-1e9f32, 1e9f32, false);
    for f in forms {
        if f.distance_seen(cx, cy, half) < f.influence + 0.05 {
            list.push(*f);
            if !f.carve {
                any = true;
                let m = f.reach + f.influence + 0.05;
                near = near.max(f.ball.z + m);
                far = far.min(f.ball.z - m);
            }
        }
    }
    if !any {
        return;
    }
    let Some(near) = clear_down_to(list, (cx, cy), half * std::f32::consts::SQRT_2, near, far) else {
        return;
    };
    // Most rays end on what lies in front: forms that lie wholly deeper than that are asked only by rays that pass it.
    let deep = near - FRONT;
    let front: Vec<Form> = list.iter().filter(|f| f.ball.z + f.reach + f.influence > deep).copied().collect();
    for jj in 0..TILE {
        for packet in 0..TILE / LANES {
            let (j, i0) = (row * TILE + jj, column * TILE + packet * LANES);
            let y = out.top - (j as f32 + 0.5) * s;
            let x = lanes!(i => out.left + ((i0 + i) as f32 + 0.5) * s);
            let mut rays = Rays { x, y: [y; LANES], z: [near; LANES], met: [false; LANES] };
            let mut forms = &front[..];
            if rays.run(forms, deep) {
                forms = list;
                rays.run(forms, far);
            }
            rays.paint(forms, out, j * out.width + i0);
        }
    }
}

/// How far behind the first possible hit of a tile its front ends, cm.
const FRONT: f32 = 3.0;

/// Eight rays side by side.
struct Rays {
    x: Lanes,
    y: Lanes,
    z: Lanes,
    met: [bool; LANES],
}

impl Rays {
    /// Goes down until each ray has met a form or passed `far`; true when one has passed it.
    fn run(&mut self, forms: &[Form], far: f32) -> bool {
        let mut done = self.met;
        for _ in 0..160 {
            let d = distance8(forms, &self.x, &self.y, &self.z, None);
            let mut all = true;
            for i in 0..LANES {
                if done[i] {
                    continue;
                }
                if d[i] < HIT {
                    done[i] = true;
                    self.met[i] = true;
                } else {
                    self.z[i] -= d[i] * 0.9;
                    done[i] = self.z[i] < far;
                    all &= done[i];
                }
            }
            if all {
                break;
            }
        }
        self.met.iter().any(|met| !met)
    }

    /// Writes depth, part and normal of the rays that met a form into eight cells from `first` on.
    fn paint(&self, forms: &[Form], out: &mut Cast, first: usize) {
        if !self.met.iter().any(|met| *met) {
            return;
        }
        let (x, y, z) = (&self.x, &self.y, &self.z);
        let mut parts = [0u8; LANES];
        distance8(forms, x, y, z, Some(&mut parts));
        let mut n = [[0f32; LANES]; 3];
        for t in TAPS {
            let d = distance8(
                forms,
                &lanes!(i => x[i] + t.x * TAP),
                &lanes!(i => y[i] + t.y * TAP),
                &lanes!(i => z[i] + t.z * TAP),
                None,
            );
            for i in 0..LANES {
                n[0][i] += t.x * d[i];
                n[1][i] += t.y * d[i];
                n[2][i] += t.z * d[i];
            }
        }
        for i in 0..LANES {
            if self.met[i] {
                out.depth[first + i] = z[i];
                out.part[first + i] = Part::from_code(parts[i]);
                out.normal[first + i] = Vec3::new(n[0][i], n[1][i], n[2][i]).normalized();
            }
        }
    }
}

#[inline(always)]
fn min(a: f32, b: f32) -> f32 {
    if a < b { a } else { b }
}
#[inline(always)]
fn max(a: f32, b: f32) -> f32 {
    if a > b { a } else { b }
}

/// `Form::distance` for eight points.
#[inline(always)]
fn form8(form: &Form, x: &Lanes, y: &Lanes, z: &Lanes) -> Lanes {
    match form.shape {
        Shape::Capsule { a, axis, inv_len2, r0, dr } => {
            let (px, py, pz) = (lanes!(i => x[i] - a.x), lanes!(i => y[i] - a.y), lanes!(i => z[i] - a.z));
            let t = lanes!(i => min(max((px[i] * axis.x + py[i] * axis.y + pz[i] * axis.z) * inv_len2, 0.0), 1.0));
            let qx = lanes!(i => px[i] - axis.x * t[i]);
            let qy = lanes!(i => py[i] - axis.y * t[i]);
            let qz = lanes!(i => pz[i] - axis.z * t[i]);
            lanes!(i => (qx[i] * qx[i] + qy[i] * qy[i] + qz[i] * qz[i]).sqrt() - (r0 + dr * t[i]))
        }
        Shape::Ellipsoid { c, x: ax, y: ay, z: az, inv } => {
            let (px, py, pz) = (lanes!(i => x[i] - c.x), lanes!(i => y[i] - c.y), lanes!(i => z[i] - c.z));
            let lx = lanes!(i => (px[i] * ax.x + py[i] * ax.y + pz[i] * ax.z) * inv.x);
            let ly = lanes!(i => (px[i] * ay.x + py[i] * ay.y + pz[i] * ay.z) * inv.y);
            let lz = lanes!(i => (px[i] * az.x + py[i] * az.y + pz[i] * az.z) * inv.z);
            let k0 = lanes!(i => (lx[i] * lx[i] + ly[i] * ly[i] + lz[i] * lz[i]).sqrt());
            let k1 = lanes!(i => {
                let (u, v, w) = (lx[i] * inv.x, ly[i] * inv.y, lz[i] * inv.z);
                (u * u + v * v + w * w).sqrt() + 1e-6
            });
            lanes!(i => k0[i] * (k0[i] - 1.0) / k1[i])
        }
    }
}

/// `surface::distance` for eight points; parts only when asked for.
#[inline(never)]
fn distance8(list: &[Form], x: &Lanes, y: &Lanes, z: &Lanes, parts: Option<&mut [u8; LANES]>) -> Lanes {
    let (mut best, mut d) = ([1e9f32; LANES], [1e9f32; LANES]);
    let (mut best_part, mut part) = ([0f32; LANES], [0f32; LANES]);
    let mut group = u8::MAX;
    for form in list {
        if form.group != group {
            for i in 0..LANES {
                best_part[i] = if d[i] < best[i] { part[i] } else { best_part[i] };
                best[i] = min(d[i], best[i]);
                d[i] = 1e9;
            }
            group = form.group;
        }
        let own = form8(form, x, y, z);
        let (k, quarter, code) = (form.blend, 0.25 / form.blend, f32::from(form.part.code()));
        if form.carve {
            for i in 0..LANES {
                let a = -d[i];
                let h = max(k - (a - own[i]).abs(), 0.0);
                d[i] = -(min(a, own[i]) - h * h * quarter);
            }
        } else {
            for i in 0..LANES {
                part[i] = if own[i] < d[i] { code } else { part[i] };
                let h = max(k - (d[i] - own[i]).abs(), 0.0);
                d[i] = min(d[i], own[i]) - h * h * quarter;
            }
        }
    }
    for i in 0..LANES {
        best_part[i] = if d[i] < best[i] { part[i] } else { best_part[i] };
        best[i] = min(d[i], best[i]);
    }
    if let Some(out) = parts {
        for i in 0..LANES {
            out[i] = best_part[i] as u8;
        }
    }
    best
}
