//! The head. In: its frame (y towards the vertex, z towards the face) and its scale. Out: forms, and the curves
//! of face, ears and hair laid on them.
//!
//! Sizes are the term head: 9.8 cm between the parietal sides, 12 cm from occiput to brow, skin included.

use super::curves::{Curve, Ink, laid, spread};
use super::frame::Frame;
use super::modeller::Modeller;
use super::pack::Pack;
use super::part::Part;
use crate::units::{BabySide, Vec3};

/// Where the hair turns round: direction in the head's frame.
pub const WHORL: Vec3 = Vec3::new(0.0, 0.72, -0.69);

/// Where the middle between the eyes lies in the head's frame, cm at term.
pub const EYES: Vec3 = Vec3::new(0.0, -1.5, 4.8);

/// From the skull base to the vertex along the axis of a flexed head, cm at term.
///
/// Source: DESIGN's working value of 9.5-10 cm, common practice; scaled by the head's breadth at other weeks.
pub const HEIGHT: f32 = 9.75;

/// How far in front of the head's middle the large fontanelle (bregma) lies, cm at term.
pub const BREGMA: f32 = 1.2;
/// How far above the head's middle the inner ends of the brows lie, cm at term.
pub const BROWS: f32 = 0.2;

/// Lays the head's forms. The modeller's frame must be the head's, in mother space; `k` scales all sizes. Paired forms
/// are laid from the `near` side on, so that a mirrored head blends in the mirrored order.
pub fn forms(m: &mut Modeller, near: BabySide, k: f32) {
    let sides = near.then_other();
    let signs = sides.map(BabySide::sign);
    let p = |x: f32, y: f32, z: f32| Vec3::new(x * k, y * k, z * k);
    m.ellipsoid(p(0.0, 0.5, -0.5), p(4.92, 4.75, 5.4), 1.0, Part::HEAD);
    m.ellipsoid(p(0.0, 0.6, -2.6), p(3.7, 3.6, 3.6), 1.5, Part::HEAD);
    m.ellipsoid(p(0.0, 1.0, 2.3), p(3.7, 3.3, 3.2), 1.5, Part::HEAD);
    m.ellipsoid(p(0.0, -2.5, 1.7), p(3.6, 3.1, 3.3), 1.5, Part::HEAD);
    for s in signs {
        m.ball(p(1.95 * s, -3.3, 2.85), 1.8 * k, 0.9, Part::HEAD);
    }
    m.ball(p(0.0, -4.92, 3.65), 1.1 * k, 0.9, Part::HEAD);
    for s in signs {
        m.carve(p(1.75 * s, -1.45, 6.1), p(1.35, 0.9, 1.3), 0.9, Part::HEAD);
    }
    for s in signs {
        m.ellipsoid(p(1.75 * s, -1.5, 3.95), p(0.95, 0.72, 0.85), 0.35, Part::HEAD);
    }
    m.capsule((p(0.0, -1.3, 4.75), 0.42 * k), (p(0.0, -2.75, 5.3), 0.55 * k), 0.5, Part::HEAD);
    for s in signs {
        m.ball(p(0.52 * s, -2.9, 5.0), 0.36 * k, 0.25, Part::HEAD);
    }
    for s in signs {
        m.capsule((p(0.1 * s, -3.95, 5.1), 0.32 * k), (p(0.75 * s, -4.1, 4.6), 0.2 * k), 0.25, Part::HEAD);
    }
    let lip = 0.45 * signs[0];
    m.capsule((p(lip, -4.45, 4.85), 0.3 * k), (p(-lip, -4.45, 4.85), 0.3 * k), 0.22, Part::HEAD);
    for side in sides {
        let s = side.sign();
        m.turned(
            p(4.55 * s, -1.7, -0.2),
            (Vec3::new(0.1 * s, 1.0, -0.22), Vec3::new(0.25 * s, 0.2, 1.0)),
            p(0.5, 1.75, 1.1),
            0.25,
            Part::ear(side),
        );
    }
}

/// Which part of the head a surface point is, by its place in the head's own frame.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeadRegion {
    /// From the chin to the orbital ridges.
    Face,
    /// From the orbital ridges to the large fontanelle.
    Forehead,
    /// From the large fontanelle to the occiput.
    Vertex,
}

/// The region of `local`, a point in the head's frame at scale `k`.
pub fn region(local: Vec3, k: f32) -> HeadRegion {
    let p = local * (1.0 / k);
    if p.z > 1.5 && p.y < BROWS {
        HeadRegion::Face
    } else if p.z > BREGMA {
        HeadRegion::Forehead
    } else {
        HeadRegion::Vertex
    }
}

/// The drawn lines of face and ears: control points in the head's frame at term.
/// `(x, y)` pairs are dropped on the face along z; `(z, y)` pairs on the side of the head along x.
type Drawn = (&'static [(f32, f32)], (f32, f32), Ink);
const FACE: [Drawn; 6] = [
    // lash line of the closed eye
    (&[(0.85, -1.62), (1.25, -1.86), (1.8, -1.98), (2.35, -1.84), (2.75, -1.5)], (0.10, 0.16), Ink::Firm),
    // fold of the upper lid
    (&[(0.9, -1.2), (1.7, -0.82), (2.6, -1.15)], (0.04, 0.04), Ink::Soft),
    // brow
    (&[(0.8, -0.1), (1.7, 0.28), (2.7, -0.05)], (0.10, 0.08), Ink::Soft),
    // nostril
    (&[(0.18, -3.12), (0.42, -3.2), (0.6, -3.1)], (0.07, 0.07), Ink::Firm),
    // wing of the nose
    (&[(0.55, -2.55), (0.88, -2.8), (0.75, -3.12)], (0.04, 0.06), Ink::Soft),
    // corner of the mouth
    (&[(0.95, -4.12), (1.08, -4.25), (1.06, -4.42)], (0.05, 0.05), Ink::Soft),
];
const EAR: [&[(f32, f32)]; 2] = [
    &[(-0.75, -0.6), (-0.2, -0.35), (0.35, -0.75), (0.3, -1.5), (0.05, -2.1), (0.1, -2.7)],
    &[(-0.45, -1.2), (-0.15, -1.5), (-0.2, -2.1)],
];
const MOUTH: &[(f32, f32)] = &[(-0.95, -4.15), (-0.45, -4.2), (0.0, -4.28), (0.45, -4.2), (0.95, -4.15)];
const UNDER_LIP: &[(f32, f32)] = &[(-0.4, -4.95), (0.0, -5.0), (0.4, -4.95)];

/// Curves of face, ears and hair, in mother space. `forms` are the head's; `head` its frame in mother space. `back`: the
/// head is bent back, so that the jaw is seen from below.
pub fn curves(forms: &Pack, head: &Frame, back: bool, k: f32) -> Vec<Curve> {
    let mut out = vec![];
    let mut lay = |points: &[(f32, f32)], from_side: Option<f32>, mirror: f32, width, ink, name| {
        let ways = spread(points, 24).into_iter().map(|(a, b)| {
            let (start, toward) = match from_side {
                None => (Vec3::new(a * mirror * k, b * k, 9.0), Vec3::new(0.0, 0.0, -1.0)),
                Some(s) => (Vec3::new(8.0 * s, b * k, a * k), Vec3::new(-s, 0.0, 0.0)),
            };
            (head.point(start), head.direction(toward))
        });
        out.push(Curve { points: laid(forms, ways, 12.0), width, ink, name });
    };
    for s in [1.0, -1.0] {
        for (points, width, ink) in FACE {
            lay(points, None, s, width, ink, "face");
        }
        lay(EAR[0], Some(s), 1.0, (0.06, 0.06), Ink::Firm, "ear");
        lay(EAR[1], Some(s), 1.0, (0.05, 0.05), Ink::Firm, "ear");
    }
    lay(MOUTH, None, 1.0, (0.08, 0.08), Ink::Firm, "face");
    lay(UNDER_LIP, None, 1.0, (0.04, 0.04), Ink::Soft, "face");
    if back {
        out.push(jaw(forms, head, k));
    }
    out.extend(hair(forms, head, k));
    out
}

/// The border of the jaw, from ear to ear by the chin, as it is seen from below.
fn jaw(forms: &Pack, head: &Frame, k: f32) -> Curve {
    let middle = Vec3::new(0.0, -2.2, 1.0) * k;
    let ways = (0..=32).map(|i| {
        let (sin, cos) = libm::sincosf((i as f32 / 32.0 - 0.5) * 150f32.to_radians());
        let outward = head.direction(Vec3::new(sin, -0.78, 0.85 * cos - 0.1)).normalized();
        (head.point(middle) + outward * (9.0 * k), -outward)
    });
    Curve { points: laid(forms, ways, 9.0 * k), width: (0.06, 0.06), ink: Ink::Soft, name: "face" }
}

/// Hair: short strokes that turn out of the whorl, in pairs that mirror each other.
fn hair(forms: &Pack, head: &Frame, k: f32) -> Vec<Curve> {
    let whorl = Frame::from_up_front(WHORL, Vec3::new(0.0, 0.69, 0.72), Vec3::default());
    let mut noise = Noise(12345);
    let mut out = vec![];
    for i in 0..17 {
        // Clear of the midline, where a stroke and its mirror image would cross.
        let around = 0.22 + (i as f32 + noise.next() * 0.9) / 17.0 * 2.35;
        let (from, length) = (0.12 + 0.75 * noise.next(), 0.28 + 0.3 * noise.next());
        for mirror in [1.0f32, -1.0] {
            let ways = (0..=8).map(|step| {
                let u = step as f32 / 8.0;
                let away = from + length * u;
                let turn = (around + 0.30 * u / (0.6 + from)) * mirror;
                let ((sa, ca), (st, ct)) = (libm::sincosf(away), libm::sincosf(turn));
                let outward = head.direction(whorl.direction(Vec3::new(sa * st, ca, sa * ct)));
                (head.origin + outward * (8.0 * k), -outward)
            });
            out.push(Curve {
                points: laid(forms, ways, 8.0 * k),
                width: (0.05, 0.02),
                ink: Ink::Hair,
                name: "hair",
            });
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
