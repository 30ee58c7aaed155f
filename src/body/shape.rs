//! The door to a posed body. In: the skin of the one form, posed and laid into mother space. Out: what is asked of its
//! surface: its extremes, what a ray meets, how far a point is from it, its pieces, its outline, its picture of depths.
//!
//! Every body is skinned as if its back were to her left. A body whose back is to her right is the reflection of such a
//! one: its points are reflected and its parts change sides, but vertices and quads keep their numbers and their order,
//! so that all sums run alike and mirrored exams give mirrored bits.
//!
//! Rays, distances and hands meet the cage, the mesh as it is; only the picture is subdivided. Both are the same to a
//! tenth of a millimetre but in small folds.

use super::cast::Cast;
use super::curves::Curve;
use super::form::landmark::Landmark;
use super::form::raster::{Layer, raster};
use super::form::{shared::shared, subdivide::Subdivision};
use super::frame::Frame;
use super::part::{Part, Region};
use crate::units::{BabySide, FigurePoint, Vec3};

/// A piece of a body.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Piece {
    /// The head, with face and ears.
    Head,
    /// The head without its ears.
    Skull,
    /// Everything but the head.
    Body,
    /// The trunk, without head and limbs.
    Trunk,
    /// Trunk and head, without limbs.
    Core,
    /// Arms and legs.
    Limbs,
    /// An arm without its hand.
    Arm(BabySide),
    /// A hand.
    Hand(BabySide),
    /// A foot.
    Foot(BabySide),
    /// One part alone.
    Only(Part),
}

impl Piece {
    /// Whether a part belongs to it.
    pub fn holds(self, part: Part) -> bool {
        let digit = |of: fn(BabySide, u8) -> Part, side| (0..5).any(|i| part == of(side, i));
        let limb = !part.is_head() && part != Part::TRUNK && !part.is_buttock();
        match self {
            Piece::Head => part.is_head(),
            Piece::Skull => part == Part::HEAD || part == Part::FACE,
            Piece::Body => !part.is_head(),
            Piece::Trunk => part == Part::TRUNK || part.is_buttock(),
            Piece::Core => !limb,
            Piece::Limbs => limb,
            Piece::Arm(side) => part == Part::upper_arm(side) || part == Part::forearm(side),
            Piece::Hand(side) => part == Part::palm(side) || digit(Part::finger, side),
            Piece::Foot(side) => part == Part::foot(side) || digit(Part::toe, side),
            Piece::Only(one) => part == one,
        }
    }
}

/// Where a ray met a surface.
#[derive(Clone, Copy, Debug)]
pub struct Met {
    /// The point.
    pub at: Vec3,
    /// The part it belongs to.
    pub part: Part,
    /// The way straight out of the surface there, of no particular length.
    pub outward: Vec3,
}

/// A surface: a posed mesh in mother space.
#[derive(Clone, Debug)]
pub struct Shape {
    /// The vertices, in the order of the form at rest.
    points: Vec<[f32; 3]>,
    /// Whether it is the reflection of what was skinned.
    mirrored: bool,
    /// The piece of the body that counts; `None`: all of it.
    piece: Option<Piece>,
    /// The farthest that a corner of a quad lies from its first one, cm.
    longest: f32,
}

/// A body for many rays from the viewer: its quads, sorted by where they are seen.
pub struct Rays<'a> {
    shape: &'a Shape,
    quads: Vec<([u16; 4], Part)>,
    /// Column and row of the lower left cell, and cells across.
    corner: (i32, i32),
    across: usize,
    /// The numbers of the quads that reach into each cell, in rising order.
    cells: Vec<Vec<u16>>,
}

/// Side of a cell in which quads are looked for, cm.
const RAY_CELL: f32 = 1.5;

/// The number of the cell, across or up, in which a place lies.
fn ray_cell(at: f32) -> i32 {
    libm::floorf(at / RAY_CELL) as i32
}

impl<'a> Rays<'a> {
    fn of(shape: &'a Shape) -> Self {
        let quads: Vec<_> = shape.quads().collect();
        // Lowest and highest column and row of each quad.
        let reach = |quad: &[u16; 4]| {
            let mut reach = [(i32::MAX, i32::MIN); 2];
            for v in quad {
                let p = shape.points[usize::from(*v)];
                for (k, (low, high)) in reach.iter_mut().enumerate() {
                    let at = ray_cell(p[k]);
                    (*low, *high) = ((*low).min(at), (*high).max(at));
                }
            }
            reach
        };
        let reaches: Vec<_> = quads.iter().map(|(quad, _)| reach(quad)).collect();
        let all =
            |k: usize| reaches.iter().fold((i32::MAX, i32::MIN), |m, r| (m.0.min(r[k].0), m.1.max(r[k].1)));
        let ((x0, x1), (y0, y1)) = if quads.is_empty() { ((0, -1), (0, -1)) } else { (all(0), all(1)) };
        let across = (x1 - x0 + 1) as usize;
        let mut cells = vec![vec![]; across * (y1 - y0 + 1) as usize];
        for (number, [(a, b), (c, d)]) in reaches.iter().enumerate() {
            for y in *c..=*d {
                let row = (y - y0) as usize * across;
                for x in *a..=*b {
                    cells[row + (x - x0) as usize].push(number as u16);
                }
            }
        }
        Rays { shape, quads, corner: (x0, y0), across, cells }
    }

    /// What a ray from the viewer towards her back meets first at (x, y).
    pub fn under(&self, x: f32, y: f32) -> Option<Met> {
        let from = |at: f32, first: i32| usize::try_from(ray_cell(at) - first).ok();
        let (column, row) = (from(x, self.corner.0)?, from(y, self.corner.1)?);
        let cell =
            if column < self.across { self.cells.get(row * self.across + column)? } else { return None };
        self.shape.first_of(cell.iter().map(|number| self.quads[usize::from(*number)]), x, y)
    }
}

/// One triangle.
type Triangle = [Vec3; 3];

impl Shape {
    /// A skin laid into mother space by the frame of its body; `mirrored`: then reflected.
    pub fn new(skin: &[[f32; 3]], body: &Frame, mirrored: bool) -> Self {
        let sign = if mirrored { -1.0 } else { 1.0 };
        let laid = |p: &[f32; 3]| {
            let v = body.point(Vec3::new(p[0], p[1], p[2]));
            [sign * v.x, v.y, v.z]
        };
        Shape::of_points(skin.iter().map(laid).collect(), mirrored)
    }

    /// A skin in the space in which it is seen.
    pub fn of_points(points: Vec<[f32; 3]>, mirrored: bool) -> Self {
        let at = |v: u16| {
            let [x, y, z] = points[usize::from(v)];
            Vec3::new(x, y, z)
        };
        let longest = shared().rest.quads.iter().fold(0.0, |m: f32, [a, b, c, d]| {
            [b, c, d].iter().fold(m, |m, v| m.max((at(**v) - at(*a)).length()))
        });
        Shape { points, mirrored, piece: None, longest }
    }

    /// Where a vertex lies.
    pub fn at(&self, vertex: usize) -> Vec3 {
        let [x, y, z] = self.points[vertex];
        Vec3::new(x, y, z)
    }

    /// Where a named place of the skin lies; `side` is the baby's own.
    pub fn landmark(&self, landmark: Landmark, side: BabySide) -> Vec3 {
        let made = if self.mirrored { side.opposite() } else { side };
        self.at(shared().rest.landmark(landmark, made))
    }

    /// The middle between the eyes.
    pub fn eyes(&self) -> Vec3 {
        let eye = |side| self.landmark(Landmark::Eye, side);
        eye(BabySide::Left).lerp(eye(BabySide::Right), 0.5)
    }

    /// Fine lines of the head, turned as its frame is, the cleft, and the furrow of the back.
    pub fn features(&self, head: &Frame) -> Vec<Curve> {
        let form = shared();
        form.features.on(&form.rest, &self.points, head, self.mirrored)
    }

    /// Every point, every quad with its part, and whether quads wind the other way round.
    pub(super) fn surface(&self) -> (&[[f32; 3]], impl Iterator<Item = ([u16; 4], Part)> + '_, bool) {
        let form = shared();
        let parts = form.parts(self.mirrored).iter().copied();
        (&self.points, form.rest.quads.iter().copied().zip(parts), self.mirrored)
    }

    /// The quads that count, with their parts.
    fn quads(&self) -> impl Iterator<Item = ([u16; 4], Part)> + '_ {
        let form = shared();
        let parts = form.parts(self.mirrored);
        let piece = self.piece;
        form.rest.quads.iter().zip(parts).filter_map(move |(quad, part)| {
            piece.is_none_or(|piece| piece.holds(*part)).then_some((*quad, *part))
        })
    }

    /// Both halves of each quad that counts and whose first corner is `near`, cut along the shorter diagonal, with its part.
    fn triangles<'a>(
        &'a self,
        near: impl Fn(Vec3) -> bool + 'a,
    ) -> impl Iterator<Item = (Triangle, Part)> + 'a {
        self.quads().filter(move |(quad, _)| near(self.at(usize::from(quad[0])))).flat_map(
            move |(quad, part)| {
                let [a, b, c, d] = quad.map(|v| self.at(usize::from(v)));
                let (p, q) = (c - a, d - b);
                let halves =
                    if p.dot(p) <= q.dot(q) { [[a, b, c], [a, c, d]] } else { [[a, b, d], [b, c, d]] };
                halves.map(|triangle| (triangle, part))
            },
        )
    }

    /// The square of a way and the longest reach of a quad from its first corner.
    fn with_longest(&self, square: f32) -> f32 {
        let far = square.sqrt() + self.longest + 1e-3;
        far * far
    }

    /// The vertices that count, each once, in rising order.
    pub fn vertices(&self) -> Vec<Vec3> {
        if self.piece.is_none() {
            return (0..self.points.len()).map(|v| self.at(v)).collect();
        }
        let mut counts = vec![false; self.points.len()];
        self.quads().flat_map(|(quad, _)| quad).for_each(|v| counts[usize::from(v)] = true);
        (0..self.points.len()).filter(|v| counts[*v]).map(|v| self.at(v)).collect()
    }

    /// One piece of it.
    pub fn piece(&self, piece: Piece) -> Shape {
        Shape { piece: Some(piece), ..self.clone() }
    }

    /// The middle of a small part; `None` when the body has none.
    pub fn middle(&self, part: Part) -> Option<Vec3> {
        let (mut sum, mut count) = (Vec3::default(), 0.0f32);
        for (quad, _) in self.quads().filter(|(_, own)| *own == part) {
            for v in quad {
                sum = sum + self.at(usize::from(v));
                count += 1.0;
            }
        }
        (count > 0.0).then(|| sum * (1.0 / count))
    }

    /// The same, elsewhere.
    pub fn shift(&mut self, by: Vec3) {
        for p in &mut self.points {
            *p = [p[0] + by.x, p[1] + by.y, p[2] + by.z];
        }
    }

    /// The same, turned about an upright axis through x and z as seen by a viewer who goes `angle` degrees round it
    /// towards her left.
    pub fn turned(&self, angle: f32, (x, z): (f32, f32)) -> Shape {
        let (sin, cos) = libm::sincosf(angle.to_radians());
        let turn = |p: &[f32; 3]| {
            let (dx, dz) = (p[0] - x, p[2] - z);
            [x + dx * cos - dz * sin, p[1], z + dx * sin + dz * cos]
        };
        Shape { points: self.points.iter().map(turn).collect(), ..self.clone() }
    }

    /// The point of the surface next to `p`, the way out there, and the part.
    fn next_to(&self, p: Vec3) -> Option<(Vec3, Vec3, Part)> {
        let mut best: Option<(f32, f32, Vec3, Vec3, Part)> = None;
        // Only faces as near as the nearest corner can hold the point.
        let away = |v: Vec3| (v - p).dot(v - p);
        let least = self.quads().fold(f32::MAX, |m, (quad, _)| m.min(away(self.at(usize::from(quad[0])))));
        let enough = self.with_longest(least);
        for ([a, b, c], part) in self.triangles(move |corner| away(corner) <= enough) {
            let at = closest([a, b, c], p);
            let away = p - at;
            let d = away.dot(away);
            // Of faces that meet in that point the one that is seen most squarely tells in from out.
            let Some((least, square, ..)) = best else {
                best = Some((d, 0.0, at, (b - a).cross(c - a), part));
                continue;
            };
            if d > least * 1.000_01 + 1e-9 {
                continue;
            }
            let out = (b - a).cross(c - a);
            let seen = away.dot(out).abs() / out.length().max(1e-12);
            if d < least * 0.999_99 - 1e-9 || seen > square {
                best = Some((d.min(least), seen, at, out, part));
            }
        }
        let sign = if self.mirrored { -1.0 } else { 1.0 };
        best.map(|(_, _, at, out, part)| (at, out * sign, part))
    }

    /// Signed distance of a point, cm (negative inside), and the part that is nearest to it.
    pub fn nearest(&self, p: Vec3) -> (f32, Part) {
        let Some((at, out, part)) = self.next_to(p) else { return (f32::MAX, Part::default()) };
        let away = p - at;
        (if away.dot(out) < 0.0 { -away.length() } else { away.length() }, part)
    }

    /// The point of the surface next to `p`.
    pub fn settled(&self, p: Vec3) -> Vec3 {
        self.next_to(p).map_or(p, |(at, ..)| at)
    }

    /// Where a ray from outside along a unit direction meets the surface; `None` if it does not within `limit` cm.
    pub fn ray(&self, start: Vec3, direction: Vec3, limit: f32) -> Option<Vec3> {
        let mut nearest = limit;
        let mut met = None;
        let enough = self.with_longest(0.0);
        let beside = move |corner: Vec3| {
            let off = (corner - start).cross(direction);
            off.dot(off) <= enough
        };
        for (triangle, _) in self.triangles(beside) {
            if let Some(t) = crossed(triangle, start, direction).filter(|t| (0.0..nearest).contains(t)) {
                nearest = t;
                met = Some(start + direction * t);
            }
        }
        met
    }

    /// What a ray from the viewer towards her back meets first at (x, y).
    pub fn under(&self, x: f32, y: f32) -> Option<Met> {
        self.first_of(self.quads(), x, y)
    }

    /// Of these quads, in rising order, what such a ray meets first.
    fn first_of(&self, quads: impl Iterator<Item = ([u16; 4], Part)>, x: f32, y: f32) -> Option<Met> {
        let mut met: Option<Met> = None;
        let sign = if self.mirrored { -1.0 } else { 1.0 };
        for (quad, part) in quads {
            let corners = quad.map(|v| self.points[usize::from(v)]);
            let beside =
                |k: usize, at: f32| corners.iter().all(|p| p[k] < at) || corners.iter().all(|p| p[k] > at);
            if beside(0, x) || beside(1, y) {
                continue;
            }
            let [a, b, c, d] = corners.map(|[x, y, z]| Vec3::new(x, y, z));
            for [a, b, c] in [[a, b, c], [a, c, d]] {
                let out = (b - a).cross(c - a) * sign;
                if out.z <= 0.0 {
                    continue;
                }
                let start = Vec3::new(x, y, 100.0);
                let Some(t) = crossed([a, b, c], start, Vec3::new(0.0, 0.0, -1.0)) else { continue };
                let at = Vec3::new(x, y, 100.0 - t);
                if met.is_none_or(|met| met.at.z < at.z) {
                    met = Some(Met { at, part, outward: out });
                }
            }
        }
        met
    }

    /// The same body for many rays.
    pub fn for_rays(&self) -> Rays<'_> {
        Rays::of(self)
    }

    /// How far `p` lies before or behind what is met first under it, cm; `None` where nothing is met.
    pub fn off(&self, p: Vec3) -> Option<f32> {
        self.under(p.x, p.y).map(|met| (met.at.z - p.z).abs())
    }

    /// The vertex that lies farthest along a direction.
    pub fn extreme(&self, direction: Vec3) -> Vec3 {
        let farthest =
            self.vertices().into_iter().max_by(|p, q| p.dot(direction).total_cmp(&q.dot(direction)));
        farthest.unwrap_or_default()
    }

    /// Of each part, its vertex that lies farthest along a direction.
    pub fn tips(&self, direction: Vec3) -> Vec<Vec3> {
        let mut far: [Option<(f32, Vec3)>; Part::CODES] = [None; Part::CODES];
        for (quad, part) in self.quads() {
            let own = &mut far[usize::from(part.code())];
            for v in quad {
                let p = self.at(usize::from(v));
                let d = p.dot(direction);
                if own.is_none_or(|(most, _)| most < d) {
                    *own = Some((d, p));
                }
            }
        }
        far.into_iter().flatten().map(|own| own.1).collect()
    }

    /// From its extreme against a direction to its extreme along it, cm.
    pub fn span(&self, direction: Vec3) -> f32 {
        (self.extreme(direction) - self.extreme(-direction)).dot(direction)
    }

    /// How far it reaches along a unit direction.
    pub fn reach(&self, direction: Vec3) -> f32 {
        self.extreme(direction).dot(direction)
    }

    /// Points on the outline of its hull.
    pub fn hull_across(&self, across: Vec3) -> Vec<FigurePoint> {
        const AROUND: usize = 48;
        let flat: Vec<FigurePoint> =
            self.vertices().into_iter().map(|p| FigurePoint::new(p.dot(across), p.y)).collect();
        (0..AROUND)
            .filter_map(|i| {
                // Half a step off the axes: a mirrored baby has the mirrored hull.
                let (sin, cos) = libm::sincosf((i as f32 + 0.5) / AROUND as f32 * std::f32::consts::TAU);
                let far = |p: &FigurePoint| p.x * cos + p.y * sin;
                // Lane by lane: of points equally far the last is taken.
                let mut most = [f32::MIN; 8];
                for eight in flat.chunks(8) {
                    for (m, p) in most.iter_mut().zip(eight) {
                        let far = far(p);
                        *m = if far > *m { far } else { *m };
                    }
                }
                let most = most.into_iter().fold(f32::MIN, f32::max);
                flat.iter().rev().find(|p| far(p) >= most).copied()
            })
            .collect()
    }

    /// How far, as seen along z, each limb is from (x, y), cm.
    pub fn limbs_seen(&self, x: f32, y: f32) -> [f32; 4] {
        self.limbs_near(x, y).map(|(far, _)| far)
    }

    /// How far, as seen along z, each limb is from (x, y), cm, and where it is nearest.
    pub fn limbs_near(&self, x: f32, y: f32) -> [(f32, FigurePoint); 4] {
        let mut out = [(f32::MAX, FigurePoint::new(x, y)); 4];
        for (quad, part) in self.quads() {
            let own = match part.region() {
                Region::Arm(side) => side.index(),
                Region::Leg(side) => 2 + side.index(),
                Region::Head | Region::Trunk => continue,
            };
            let corners = quad.map(|v| {
                let [x, y, _] = self.points[usize::from(v)];
                FigurePoint::new(x, y)
            });
            for k in 0..4 {
                let (a, b) = (corners[k], corners[(k + 1) % 4]);
                let t = FigurePoint::new(x, y).along(a, b);
                let (ex, ey) = (b.x - a.x, b.y - a.y);
                let (dx, dy) = (x - a.x - ex * t, y - a.y - ey * t);
                let far = (dx * dx + dy * dy).sqrt();
                if far < out[own].0 {
                    out[own] = (far, FigurePoint::new(a.x + ex * t, a.y + ey * t));
                }
            }
        }
        out
    }

    /// Points spread over it: every seventh vertex.
    pub fn spread(&self) -> Vec<Vec3> {
        self.vertices().into_iter().step_by(7).collect()
    }
}

/// The picture of depths of bodies, with cells of `cell` cm; `mirrored`: of their mirror image. What is asked of a picture
/// turned over is asked of a mirrored body, so that a mirrored exam meets the very same cells. `None`: no body.
pub fn cast<'a>(bodies: impl Iterator<Item = &'a Shape>, cell: f32, mirrored: bool) -> Option<Cast> {
    let form = shared();
    let finer: Vec<_> =
        bodies.map(|body| (body.finer(&form.finer, mirrored), body.mirrored != mirrored)).collect();
    let layers: Vec<Layer> = finer
        .iter()
        .map(|((points, quads, part), mirrored)| Layer { points, quads, part, mirrored: *mirrored })
        .collect();
    (!layers.is_empty()).then(|| raster(&layers, cell))
}

/// Pieces of a body, each cast alone in its own small picture, all from one subdivision; `None`: the body has no such piece.
pub fn cast_pieces(
    body: &Shape,
    pieces: impl Iterator<Item = Piece>,
    cell: f32,
    mirrored: bool,
) -> Vec<Option<Cast>> {
    let finer = &shared().finer;
    let (points, parts) = body.finer_points(finer, mirrored);
    let mut renamed = vec![u16::MAX; points.len()];
    pieces
        .map(|piece| {
            renamed.fill(u16::MAX);
            let (mut own_points, mut own_quads, mut own_parts) = (vec![], vec![], vec![]);
            for (quad, part) in finer.quads.iter().zip(&parts).filter(|(_, part)| piece.holds(**part)) {
                own_quads.push(quad.map(|v| {
                    let name = &mut renamed[usize::from(v)];
                    if *name == u16::MAX {
                        *name = own_points.len() as u16;
                        own_points.push(points[usize::from(v)]);
                    }
                    *name
                }));
                own_parts.push(*part);
            }
            let mirrored = body.mirrored != mirrored;
            let layer = Layer { points: &own_points, quads: &own_quads, part: &own_parts, mirrored };
            (!own_quads.is_empty()).then(|| raster(&[layer], cell))
        })
        .collect()
}

impl Shape {
    /// Subdivided: all points, and the part of each quad.
    fn finer_points(&self, finer: &Subdivision, mirrored: bool) -> (Vec<[f32; 3]>, Vec<Part>) {
        let mut points = finer.points(&self.points);
        if mirrored {
            points.iter_mut().for_each(|p| p[0] = -p[0]);
        }
        // Parts keep their names: in a picture turned over they are asked for as they are.
        (points, finer.parts(shared().parts(self.mirrored)))
    }

    /// Subdivided: points, quads and parts of what counts.
    fn finer(&self, finer: &Subdivision, mirrored: bool) -> (Vec<[f32; 3]>, Vec<[u16; 4]>, Vec<Part>) {
        let (points, parts) = self.finer_points(finer, mirrored);
        let Some(piece) = self.piece else { return (points, finer.quads.clone(), parts) };
        let (quads, parts) = finer
            .quads
            .iter()
            .zip(parts)
            .filter(|(_, part)| piece.holds(*part))
            .map(|(q, p)| (*q, p))
            .unzip();
        (points, quads, parts)
    }
}

/// The point of a triangle next to `p`.
fn closest([a, b, c]: Triangle, p: Vec3) -> Vec3 {
    let (ab, ac, ap) = (b - a, c - a, p - a);
    let (d1, d2) = (ab.dot(ap), ac.dot(ap));
    if d1 <= 0.0 && d2 <= 0.0 {
        return a;
    }
    let bp = p - b;
    let (d3, d4) = (ab.dot(bp), ac.dot(bp));
    if d3 >= 0.0 && d4 <= d3 {
        return b;
    }
    let vc = d1 * d4 - d3 * d2;
    if vc <= 0.0 && d1 >= 0.0 && d3 <= 0.0 {
        return a + ab * (d1 / (d1 - d3));
    }
    let cp = p - c;
    let (d5, d6) = (ab.dot(cp), ac.dot(cp));
    if d6 >= 0.0 && d5 <= d6 {
        return c;
    }
    let vb = d5 * d2 - d1 * d6;
    if vb <= 0.0 && d2 >= 0.0 && d6 <= 0.0 {
        return a + ac * (d2 / (d2 - d6));
    }
    let va = d3 * d6 - d5 * d4;
    if va <= 0.0 && d4 - d3 >= 0.0 && d5 - d6 >= 0.0 {
        return b + (c - b) * ((d4 - d3) / ((d4 - d3) + (d5 - d6)));
    }
    let k = 1.0 / (va + vb + vc);
    a + ab * (vb * k) + ac * (vc * k)
}

/// How far along a ray it crosses a triangle, from either side.
fn crossed([a, b, c]: Triangle, start: Vec3, way: Vec3) -> Option<f32> {
    let (u, v) = (b - a, c - a);
    let p = way.cross(v);
    let det = u.dot(p);
    if det.abs() < 1e-9 {
        return None;
    }
    let s = start - a;
    let x = s.dot(p) / det;
    let q = s.cross(u);
    let y = way.dot(q) / det;
    // A little over the edge, so that no ray slips between two faces.
    const OVER: f32 = -1e-5;
    (x >= OVER && y >= OVER && x + y <= 1.0 - OVER).then(|| v.dot(q) / det)
}
