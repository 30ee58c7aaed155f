//! Fine lines of the head: lids, nostrils, mouth, ears, and hair. In: the body at rest. Out: curves on its skin, kept with
//! the head; then the same on a posed head.
//!
//! A line is drawn flat, as seen from the front, from the side, or from where the hair turns round, and dropped on the
//! skin at rest. The head is rigid, so that a line keeps its place on it in every posture.

use super::landmark::Landmark;
use super::raster::{Layer, raster};
use super::rest::Rest;
use crate::body::cast::Cast;
use crate::body::curves::{Curve, Ink, spread};
use crate::body::frame::Frame;
use crate::body::part::Part;
use crate::units::{BabySide, Vec3};

/// How fine the skin at rest is seen from the front and from the side, and how fine the scalp, cm.
const CELL: f32 = 0.1;
const SCALP_CELL: f32 = 0.3;

/// Lines on the head at rest, from between the eyes: x to the baby's left, y to the vertex, z to the front.
#[derive(Clone, Debug)]
pub struct Features {
    lines: Vec<Curve>,
    /// Vertices along the cleft between the buttocks, from the sacrum down.
    cleft: Vec<u16>,
    /// Numbers of the vertices along the furrow of the back.
    furrow: Vec<u16>,
}

/// Control points of a line, its widths at both ends in cm, and its ink.
type Drawn = (&'static [(f32, f32)], (f32, f32), Ink);

/// As seen from the front, x and y, of the left half; every one has its twin on the right.
const FACE: [Drawn; 4] = [
    // Fold of the upper lid.
    (&[(1.15, 0.42), (1.5, 0.72), (2.0, 0.84), (2.5, 0.72), (2.85, 0.42)], (0.035, 0.03), Ink::Faint),
    // Nostril.
    (&[(0.30, -1.52), (0.42, -1.42), (0.56, -1.44), (0.64, -1.56)], (0.06, 0.05), Ink::Firm),
    // Wing of the nose.
    (&[(1.06, -0.80), (1.22, -1.06), (1.10, -1.36)], (0.03, 0.045), Ink::Soft),
    // Corner of the mouth.
    (&[(1.36, -2.84), (1.50, -2.98), (1.48, -3.16)], (0.04, 0.04), Ink::Soft),
];
/// The same of lines across the midline.
const MOUTH: [Drawn; 2] = [
    (
        &[
            (-1.40, -3.02),
            (-0.75, -2.95),
            (-0.3, -2.95),
            (0.0, -3.0),
            (0.3, -2.95),
            (0.75, -2.95),
            (1.40, -3.02),
        ],
        (0.07, 0.07),
        Ink::Firm,
    ),
    (&[(-0.55, -3.80), (0.0, -3.88), (0.55, -3.80)], (0.04, 0.04), Ink::Faint),
];
/// A brow: short hairs, from end to end.
const BROW: [(f32, f32); 4] = [(0.95, 1.42), (1.6, 1.70), (2.3, 1.74), (3.0, 1.45)];
/// As seen from the side, z and y.
const EAR: [Drawn; 3] = [
    (
        &[(-4.75, 0.55), (-5.3, 0.78), (-6.1, 0.62), (-6.5, 0.0), (-6.35, -0.7), (-5.9, -1.2)],
        (0.03, 0.03),
        Ink::Soft,
    ),
    (&[(-6.05, 0.05), (-6.1, -0.35), (-5.75, -0.62), (-5.2, -0.55)], (0.05, 0.05), Ink::Firm),
    (&[(-4.95, -0.35), (-4.85, -0.8), (-5.1, -1.05)], (0.035, 0.035), Ink::Soft),
];

/// Where the hair turns round, from between the eyes, cm; and where the middle of the head lies.
const WHORL: Vec3 = Vec3::new(0.5, 4.6, -7.6);
const MIDDLE: Vec3 = Vec3::new(0.0, 1.6, -5.0);
/// Strokes that are tried; most of those without hair fall away.
const STROKES: usize = 1400;

/// How much hair there is at a point of the head, from between the eyes, cm at term: 0 to 1.
pub fn hair(p: Vec3) -> f32 {
    // From above the brow over the ear to the nape.
    let z = p.z + 1.87;
    let line = (3.2 + if z > 0.0 { z * 0.18 } else { z * 1.05 }).max(-1.0);
    let over_ear = if p.x.abs() > 4.35 { ((p.y - 1.2) / 0.8).clamp(0.0, 1.0) } else { 1.0 };
    let much = ((p.y - line + 0.3) / 3.0).clamp(0.0, 1.0);
    much * much * (3.0 - 2.0 * much) * over_ear
}

impl Features {
    /// Of the body at rest.
    pub fn of(rest: &Rest) -> Features {
        let [left, right] = both_eyes(&rest.points, rest);
        let eyes = (left + right) * 0.5;
        let points: Vec<Vec3> = rest.points.iter().map(|p| Vec3::new(p[0], p[1], p[2]) - eyes).collect();
        let is_head = |part: Part| part.is_head();
        let front = Seen::of(rest, &points, is_head, (false, CELL), |p| Vec3::new(p.x, p.y, p.z));
        let side = Seen::of(rest, &points, is_head, (true, CELL), |p| Vec3::new(p.z, p.y, p.x));
        let mut lines = vec![];
        let mut lay = |points: Vec<Vec3>, width, ink, name| {
            if points.len() > 2 {
                lines.push(Curve { points, width, ink, name });
            }
        };
        for sign in [1.0f32, -1.0] {
            let flip = |p: Vec3| Vec3::new(p.x * sign, p.y, p.z);
            for (line, width, ink) in FACE {
                let on = spread(line, 16).into_iter().filter_map(|(x, y)| front.drop(x, y));
                lay(on.map(&flip).collect(), width, ink, "face");
            }
            let lash = rest.lashes.iter().map(|pair| {
                let [a, b] = pair.map(|v| points[usize::from(v)]);
                flip((a + b) * 0.5)
            });
            lay(lash.collect(), (0.07, 0.12), Ink::Firm, "face");
            let mut noise = Noise(77);
            for i in 0..16 {
                let u = (i as f32 + 0.6 * noise.next()) / 16.0;
                let root = spread(&BROW, 40)[(u * 40.0) as usize];
                let (dx, dy) = (0.34, 0.26 - 0.36 * u);
                let y = root.1 + 0.22 * (noise.next() - 0.5) - 0.5 * dy;
                let hair = (0..=4).filter_map(|k| {
                    let t = k as f32 / 4.0;
                    front.drop(root.0 + dx * t, y + dy * t)
                });
                lay(hair.map(&flip).collect(), (0.035, 0.02), Ink::Hair, "brow");
            }
            for (line, width, ink) in EAR {
                let on = spread(line, 20).into_iter().filter_map(|(z, y)| side.drop(z, y));
                lay(on.map(|p| flip(Vec3::new(p.z, p.y, p.x))).collect(), width, ink, "ear");
            }
        }
        for (line, width, ink) in MOUTH {
            lay(
                spread(line, 30).into_iter().filter_map(|(x, y)| front.drop(x, y)).collect(),
                width,
                ink,
                "face",
            );
        }
        for points in hairs(rest, &points) {
            lay(points, (0.05, 0.02), Ink::Hair, "hair");
        }
        Features { lines, cleft: cleft(rest), furrow: furrow(rest) }
    }

    /// The lines on a posed skin, in the space of `points`. `axes`: how the head is turned there, with the baby's own left;
    /// `mirrored`: the points are the reflection of what was skinned.
    pub fn on(&self, rest: &Rest, points: &[[f32; 3]], axes: &Frame, mirrored: bool) -> Vec<Curve> {
        let [a, b] = both_eyes(points, rest);
        let [c, d] = both_eyes(&rest.points, rest);
        let k = (a - b).length() / (c - d).length();
        let face = Frame { origin: (a + b) * 0.5, ..*axes };
        let flip = if mirrored { -k } else { k };
        let place = |p: &Vec3| face.point(Vec3::new(p.x * flip, p.y * k, p.z * k));
        let on_head =
            |line: &Curve| Curve { points: line.points.iter().map(place).collect(), ..line.clone() };
        let even = |line: &[u16]| {
            let at = |v: &u16| points[usize::from(*v)];
            let mut out: Vec<Vec3> = line.iter().map(at).map(|[x, y, z]| Vec3::new(x, y, z)).collect();
            for _ in 0..2 {
                let rough = out.clone();
                for (p, w) in out[1..].iter_mut().zip(rough.windows(3)) {
                    *p = (w[0] + w[1] * 2.0 + w[2]) * 0.25;
                }
            }
            finer(&out)
        };
        let cleft = Curve { points: even(&self.cleft), width: (0.05, 0.12), ink: Ink::Soft, name: "crease" };
        let furrow = Curve { points: even(&self.furrow), width: (0.03, 0.05), ink: Ink::Faint, name: "back" };
        self.lines.iter().map(on_head).chain([cleft, furrow]).collect()
    }
}

/// Four points for each.
fn finer(line: &[Vec3]) -> Vec<Vec3> {
    line.windows(2)
        .flat_map(|w| [0.0, 0.25, 0.5, 0.75].map(|t| w[0].lerp(w[1], t)))
        .chain(line.last().copied())
        .collect()
}

/// The vertices along the cleft.
fn cleft(rest: &Rest) -> Vec<u16> {
    midline(rest, |y, z| z < -1.2 && (-3.0..4.3).contains(&y), |y, z| 0.4 * z - y)
}

/// The vertices along the furrow of the back, from under the neck to the sacrum.
fn furrow(rest: &Rest) -> Vec<u16> {
    let level = |landmark| rest.points[rest.landmark(landmark, BabySide::Left)][1];
    let (low, high) = (level(Landmark::Sacrum) + 1.0, level(Landmark::Nape) - 2.5);
    midline(rest, |y, z| z < 0.0 && (low..high).contains(&y), |y, _| -y)
}

/// The vertices of the midline whose y and z are `on` a line, in the order in which they lie `along` it.
fn midline(rest: &Rest, on: impl Fn(f32, f32) -> bool, along: impl Fn(f32, f32) -> f32) -> Vec<u16> {
    let of = |v: &usize| (rest.points[*v][1], rest.points[*v][2]);
    let holds = |v: &usize| {
        let (y, z) = of(v);
        usize::from(rest.mirror[*v]) == *v && on(y, z)
    };
    let far = |v: &usize| {
        let (y, z) = of(v);
        along(y, z)
    };
    let mut out: Vec<usize> = (0..rest.points.len()).filter(holds).collect();
    out.sort_by(|a, b| far(a).total_cmp(&far(b)));
    out.into_iter().filter_map(|v| u16::try_from(v).ok()).collect()
}

/// The eyes, those of the left of what was skinned first.
fn both_eyes(points: &[[f32; 3]], rest: &Rest) -> [Vec3; 2] {
    BabySide::BOTH.map(|side| {
        let [x, y, z] = points[rest.landmark(Landmark::Eye, side)];
        Vec3::new(x, y, z)
    })
}

/// Skin at rest, seen flat.
struct Seen(Cast);

impl Seen {
    /// The parts that `of` accepts, by `flat`: two coordinates of the flat, and the third towards the viewer.
    fn of(
        rest: &Rest,
        points: &[Vec3],
        of: impl Fn(Part) -> bool,
        (mirrored, cell): (bool, f32),
        flat: impl Fn(Vec3) -> Vec3,
    ) -> Seen {
        // The points of these parts alone, numbered anew.
        let mut number = vec![u16::MAX; points.len()];
        let (mut chosen, mut quads, mut part) = (vec![], vec![], vec![]);
        for (quad, own) in rest.quads.iter().zip(&rest.part).filter(|(_, own)| of(**own)) {
            quads.push(quad.map(|v| {
                let new = &mut number[usize::from(v)];
                if *new == u16::MAX {
                    *new = chosen.len() as u16;
                    let p = flat(points[usize::from(v)]);
                    chosen.push([p.x, p.y, p.z]);
                }
                *new
            }));
            part.push(*own);
        }
        Seen(raster(&[Layer { points: &chosen, quads: &quads, part: &part, mirrored }], cell))
    }

    /// The point of the skin behind a point of the flat.
    fn drop(&self, x: f32, y: f32) -> Option<Vec3> {
        let at = self.0.index_at(x, y).filter(|&at| self.0.hit(at))?;
        let (cx, cy) = self.0.centre(at % self.0.width, at / self.0.width);
        let n = self.0.normal[at];
        let slope = ((x - cx) * n.x + (y - cy) * n.y) / n.z.max(0.2);
        Some(Vec3::new(x, y, self.0.depth[at] - slope))
    }
}

/// Strokes of hair: out of the whorl, shorter and fewer towards the hairline.
fn hairs(rest: &Rest, points: &[Vec3]) -> Vec<Vec<Vec3>> {
    // The scalp spread out round the whorl: the way from it along the flat, and the height over the middle of the head.
    let up = (WHORL - MIDDLE).normalized();
    let pole = Frame::from_up_front(up, Vec3::new(0.0, 0.0, 1.0), MIDDLE);
    const ROUND: f32 = 8.0;
    let flat = |p: Vec3| {
        let local = pole.local(p);
        let out = (local.x * local.x + local.z * local.z).sqrt().max(1e-4);
        let away = libm::atan2f(out, local.y) * ROUND;
        // Seen from outside, x to the right and the front downwards.
        Vec3::new(local.x / out * away, -local.z / out * away, local.length())
    };
    let scalp =
        Seen::of(rest, points, |part| part == Part::HEAD || part == Part::FACE, (false, SCALP_CELL), flat);
    let lift = |x: f32, y: f32| {
        let away = (x * x + y * y).sqrt().max(1e-4);
        let (sin, cos) = libm::sincosf(away / ROUND);
        let out = scalp.drop(x, y)?.z;
        Some(pole.point(Vec3::new(x / away * sin, cos, -y / away * sin) * out))
    };
    let mut noise = Noise(12345);
    let mut out = vec![];
    for i in 0..STROKES {
        // Evenly over the scalp: on a cap, height goes with area; each a golden angle from the one before.
        let cos = 1.0 - 1.72 * (i as f32 + noise.next()) / STROKES as f32;
        let mut away = libm::acosf(cos) * ROUND;
        let mut around = i as f32 * 2.399_963 + 0.3 * noise.next();
        let at = |away: f32, around: f32| {
            let (sin, cos) = libm::sincosf(around);
            lift(away * sin, away * cos)
        };
        let (chance, long, lean) = (noise.next(), noise.next(), noise.next());
        let Some(root) = at(away, around) else { continue };
        let much = hair(root);
        if much * much.max(0.25) < chance * 0.9 {
            continue;
        }
        let step = (0.5 + 0.75 * long) * (0.35 + 0.65 * much) / 5.0;
        let mut line = vec![root];
        for _ in 0..5 {
            let swirl = 0.55 * libm::expf(-away / 2.5) + 0.35 * (lean - 0.5);
            away += step * ROUND / 5.6;
            around += step * swirl / (5.6 * libm::sinf((away / ROUND).clamp(0.08, 3.0)));
            let Some(p) = at(away, around) else { break };
            line.push(p);
        }
        if line.len() == 6 {
            out.push(line);
        }
    }
    out
}

/// A small fixed sequence, for an even but not mechanical spread.
struct Noise(u32);

impl Noise {
    /// The next number, 0 to 1.
    fn next(&mut self) -> f32 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 17;
        self.0 ^= self.0 << 5;
        (self.0 % 10_000) as f32 / 10_000.0
    }
}
