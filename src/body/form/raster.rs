//! Meshes seen from the front, as a picture of depths. In: points, quads and parts in mother space. Out: a `Cast`.
//!
//! Points are put on a lattice of 1/256 cell and each half of a quad covers every cell whose middle lies in it or on its
//! edge: a closed mesh has no pinholes. Of two faces at one depth the one that comes first in its list is seen. A quad is
//! cut along its shorter diagonal. Only faces turned to the viewer are looked at.
//!
//! The midline falls on a border between cells, a multiple of `BLOCK` cells from both sides. Nothing depends on the sign of
//! x, so that mirrored points (with `mirrored` changed over, and the faces in the same order) give mirrored cells bit for
//! bit. Arithmetic is whole numbers and f32 without fused operations.
//!
//! Error: a point moves by at most 1/512 cell; depth is flat within half a quad.

use crate::body::cast::Cast;
use crate::body::part::Part;
use crate::units::Vec3;

/// One mesh.
#[derive(Clone, Copy, Debug)]
pub struct Layer<'a> {
    /// Its points in mother space.
    pub points: &'a [[f32; 3]],
    /// Its quads: seen from outside, corners run against the clock.
    pub quads: &'a [[u16; 4]],
    /// The part of each quad.
    pub part: &'a [Part],
    /// Its points were reflected: seen from outside, corners run with the clock.
    pub mirrored: bool,
}

/// The grid's sides are multiples of this many cells, as is the way from the midline to its edges.
const BLOCK: i32 = 4;
/// Blocks left empty on every side.
const MARGIN: i32 = 2;
/// Steps of the lattice in a cell.
const STEPS: i32 = 256;
/// Stands for no face.
const NONE: u32 = u32::MAX;

/// A point on the lattice: steps to her left and steps down from y = 0; and its depth.
#[derive(Clone, Copy)]
struct Spot {
    x: i32,
    y: i32,
    z: f32,
}

/// The picture of these meshes with cells of `cell` cm.
pub fn raster(layers: &[Layer], cell: f32) -> Cast {
    let per_cm = STEPS as f32 / cell;
    let spots: Vec<Vec<Spot>> = layers
        .iter()
        .map(|layer| {
            let spot = |p: &[f32; 3]| Spot { x: round(p[0] * per_cm), y: round(-p[1] * per_cm), z: p[2] };
            layer.points.iter().map(spot).collect()
        })
        .collect();
    let Some(mut seen) = Seen::for_all(spots.iter().flatten()) else {
        return Cast::empty(0, 0, (0.0, 0.0), cell);
    };
    for (number, (layer, spots)) in layers.iter().zip(&spots).enumerate() {
        for (quad, part) in layer.quads.iter().zip(layer.part) {
            let at = |k: usize| spots[usize::from(quad[k])];
            let (a, b, c, d) = (at(0), at(1), at(2), at(3));
            if is_between_cells([a.x, b.x, c.x, d.x]) || is_between_cells([a.y, b.y, c.y, d.y]) {
                continue;
            }
            // y runs down: what runs against the clock has its area below 0.
            let sign = if layer.mirrored { 1 } else { -1 };
            let (abc, acd) = (across(a, b, (c.x, c.y)) * sign, across(a, c, (d.x, d.y)) * sign);
            let abd = across(a, b, (d.x, d.y)) * sign;
            // The four halves of both cuts.
            let (abd, bcd) = (abd, abc + acd - abd);
            if abc.max(acd).max(abd).max(bcd) <= 0 {
                continue;
            }
            let halves = if is_shorter(layer.points, quad) {
                [([0, 1, 2], abc), ([0, 2, 3], acd)]
            } else {
                [([0, 1, 3], abd), ([1, 2, 3], bcd)]
            };
            for (corners, twice) in halves {
                if twice > 0 {
                    let [i, j, k] = corners;
                    let face = Face { corners: [at(i), at(j), at(k)], twice, sign };
                    let corners = [quad[i], quad[j], quad[k]];
                    seen.cover(&face, Source { layer: number, corners, part: *part });
                }
            }
        }
    }
    seen.cast(layers, cell)
}

/// Whether no middle of a cell lies between any of these steps, or on one.
#[inline(always)]
fn is_between_cells([a, b, c, d]: [i32; 4]) -> bool {
    first_middle(a.min(b).min(c).min(d)) > last_middle(a.max(b).max(c).max(d))
}

/// The first cell whose middle is no lower than this many steps; the last whose middle is no higher.
#[inline(always)]
fn first_middle(steps: i32) -> i32 {
    -(-(steps - STEPS / 2)).div_euclid(STEPS)
}

#[inline(always)]
fn last_middle(steps: i32) -> i32 {
    (steps - STEPS / 2).div_euclid(STEPS)
}

/// The nearest whole number; halves go away from 0.
fn round(x: f32) -> i32 {
    (x + if x < 0.0 { -0.5 } else { 0.5 }) as i32
}

/// Whether the diagonal from the first corner of a quad is no longer than the other one.
fn is_shorter(points: &[[f32; 3]], quad: &[u16; 4]) -> bool {
    let apart = |i: usize, j: usize| {
        let (a, b) = (points[usize::from(quad[i])], points[usize::from(quad[j])]);
        let (x, y, z) = (a[0] - b[0], a[1] - b[1], a[2] - b[2]);
        x * x + y * y + z * z
    };
    apart(0, 2) <= apart(1, 3)
}

/// Half a quad that is turned to the viewer.
struct Face {
    corners: [Spot; 3],
    /// Twice its area in steps, above 0.
    twice: i64,
    /// The sign of its area as it lies.
    sign: i64,
}

/// Twice the area of the triangle of two corners and a place, in steps; its sign tells on which side the place lies.
#[inline(always)]
fn across(a: Spot, b: Spot, (x, y): (i32, i32)) -> i64 {
    i64::from(b.x - a.x) * i64::from(y - a.y) - i64::from(b.y - a.y) * i64::from(x - a.x)
}

/// Where a face comes from.
struct Source {
    layer: usize,
    corners: [u16; 3],
    part: Part,
}

/// What is seen in each cell so far.
struct Seen {
    /// Cells from the midline to the first column, and from y = 0 down to the first row.
    left: i32,
    top: i32,
    width: usize,
    height: usize,
    cells: Vec<Cell>,
    /// The faces that were seen at some time.
    faces: Vec<Source>,
}

/// What is seen in a cell: its depth, the number of its face, and the share of that face's second and third corner.
#[derive(Clone, Copy)]
struct Cell {
    depth: f32,
    face: u32,
    shares: (f32, f32),
}

impl Seen {
    /// Room for all of these spots; `None` without any.
    fn for_all<'a>(spots: impl Iterator<Item = &'a Spot>) -> Option<Self> {
        let (mut x0, mut x1, mut y0, mut y1) = (i32::MAX, i32::MIN, i32::MAX, i32::MIN);
        for s in spots {
            (x0, x1, y0, y1) = (x0.min(s.x), x1.max(s.x), y0.min(s.y), y1.max(s.y));
        }
        let block = STEPS * BLOCK;
        let before = |steps: i32| (steps.div_euclid(block) - MARGIN) * BLOCK;
        let after = |steps: i32| (-(-steps).div_euclid(block) + MARGIN) * BLOCK;
        (x0 <= x1).then(|| {
            let (left, top) = (before(x0), before(y0));
            let (width, height) = ((after(x1) - left) as usize, (after(y1) - top) as usize);
            let nothing = Cell { depth: f32::MIN, face: NONE, shares: (0.0, 0.0) };
            Seen { left, top, width, height, cells: vec![nothing; width * height], faces: vec![] }
        })
    }

    /// Lays a face over what it stands before.
    #[inline(always)]
    fn cover(&mut self, face: &Face, source: Source) {
        let [a, b, c] = face.corners;
        // The cells whose middles lie between the outermost corners.
        let span = |a: i32, b: i32, c: i32, from: i32| {
            (first_middle(a.min(b).min(c)) - from, last_middle(a.max(b).max(c)) - from)
        };
        let ((i0, i1), (j0, j1)) = (span(a.x, b.x, c.x, self.left), span(a.y, b.y, c.y, self.top));
        if i0 > i1 || j0 > j1 {
            return;
        }
        // For each corner, twice the area between a place and the side across from it: none is below 0 in the face.
        let middle = |k: i32, from: i32| (from + k) * STEPS + STEPS / 2;
        let at = (middle(i0, self.left), middle(j0, self.top));
        let mut row =
            [across(b, c, at) * face.sign, across(c, a, at) * face.sign, across(a, b, at) * face.sign];
        // What a step to the next cell of a row, or to the next row, adds to each.
        let step = i64::from(STEPS) * face.sign;
        let times = |steps: i32| i64::from(steps) * step;
        let right = [times(b.y - c.y), times(c.y - a.y), times(a.y - b.y)];
        let down = [times(c.x - b.x), times(a.x - c.x), times(b.x - a.x)];
        let share = 1.0 / face.twice as f32;
        let (over, along) = (b.z - a.z, c.z - a.z);
        let number = self.faces.len() as u32;
        let mut is_seen = false;
        for j in j0 as usize..=j1 as usize {
            let mut areas = row;
            let from = j * self.width;
            for cell in &mut self.cells[from + i0 as usize..=from + i1 as usize] {
                if areas[0] | areas[1] | areas[2] >= 0 {
                    let shares = (areas[1] as f32 * share, areas[2] as f32 * share);
                    let depth = a.z + (over * shares.0 + along * shares.1);
                    if depth > cell.depth {
                        *cell = Cell { depth, face: number, shares };
                        is_seen = true;
                    }
                }
                (0..3).for_each(|k| areas[k] += right[k]);
            }
            (0..3).for_each(|k| row[k] += down[k]);
        }
        if is_seen {
            self.faces.push(source);
        }
    }

    /// The picture, with the part and the normal of what is seen.
    fn cast(self, layers: &[Layer], cell: f32) -> Cast {
        let corner = (self.left as f32 * cell, -(self.top as f32) * cell);
        let mut out = Cast::empty(self.width, self.height, corner, cell);
        let normals: Vec<Vec<Vec3>> = layers.iter().map(normals).collect();
        for (at, seen) in self.cells.iter().enumerate() {
            let Some(face) = self.faces.get(seen.face as usize) else { continue };
            let (of, [a, b, c]) = (&normals[face.layer], face.corners);
            let (a, b, c) = (of[usize::from(a)], of[usize::from(b)], of[usize::from(c)]);
            let mut normal = a + ((b - a) * seen.shares.0 + (c - a) * seen.shares.1);
            // At an outline the rounded skin may already turn away where its flat faces do not.
            normal.z = normal.z.max(0.0);
            (out.depth[at], out.part[at], out.normal[at]) = (seen.depth, face.part, normal.normalized());
        }
        out
    }
}

/// The normal at each point of a mesh: that of the quads round it, larger ones more.
fn normals(layer: &Layer) -> Vec<Vec3> {
    let points: Vec<Vec3> = layer.points.iter().map(|[x, y, z]| Vec3::new(*x, *y, *z)).collect();
    let mut out = vec![Vec3::default(); points.len()];
    let sign = if layer.mirrored { -1.0 } else { 1.0 };
    for quad in layer.quads {
        let at = |k: usize| points[usize::from(quad[k])];
        let (a, b, c, d) = (at(0), at(1), at(2), at(3));
        let normal = (c - a).cross(d - b) * sign;
        for &corner in quad {
            let sum = &mut out[usize::from(corner)];
            *sum = *sum + normal;
        }
    }
    out.iter_mut().for_each(|n| *n = n.normalized());
    out
}
