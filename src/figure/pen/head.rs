//! The head as a pen draws it. In: a posed baby, and the masses seen. Out: the line round its head, an ear, a closed eye, nose
//! and mouth, and a curl of hair.
//!
//! In profile the line goes over brow, nose, lips and chin; facing front, or from behind, it is an egg; between them it is the
//! head's own outline. How far the ears' axis points at the viewer decides.

use super::masses::{Mass, Masses, sides};
use super::plane::{
    self, P, STEP, add, between, dot, hull, left_of, middle, nearest, rounded, rounded_ring, spaced, sub,
    through, unit,
};
use super::{Detail, Kind};
use crate::body::baby::PosedBaby;
use crate::body::form::landmark::Landmark;
use crate::figure::grid::Line;
use crate::units::{BabySide, Vec3};

/// How deep between brow, nose and chin a profile is at most, cm: what lies deeper within is neck.
const HOLLOW: f32 = 1.0;

/// How a head is turned to the viewer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// In profile.
    Profile,
    /// Three quarters, the face towards the viewer.
    Quarter,
    /// Three quarters, the face away.
    BackQuarter,
    /// The face.
    Front,
    /// The back of the head.
    Behind,
}

/// The head in the picture plane.
pub struct Head {
    /// How it is turned.
    pub seen: Seen,
    /// Its closed line.
    pub ring: Line,
    /// Whether the line is an egg, which is drawn whole.
    pub egg: bool,
    /// Whether it goes down behind the bone: it is drawn before limbs too, so that what is felt above the bone is closed.
    pub over_bone: bool,
    up: P,
    forward: P,
    lateral: P,
    middle: P,
    size: f32,
    sides: [BabySide; 2],
    eye: [P; 2],
    blade: [P; 2],
    nape: P,
    ear: [P; 2],
    /// How far each ear's side is turned to the viewer.
    towards: [f32; 2],
    nose: P,
    mouth: P,
    chin: P,
    brow: P,
}

impl Head {
    /// The head of a baby; `None` when it has no outline.
    pub fn of(baby: &PosedBaby, masses: &Masses) -> Option<Self> {
        let sign = masses.sign;
        let flat = |v: Vec3| (v.x * sign, v.y);
        let at = |landmark, side| flat(baby.shape.landmark(landmark, side));
        let one = |landmark| at(landmark, BabySide::Left);
        let frame = &baby.head;
        let ears = BabySide::BOTH.map(|side| baby.shape.landmark(Landmark::Ear, side));
        let axis = (ears[0] - ears[1]).normalized();
        let facing = frame.z.z;
        let seen = match axis.z.abs() {
            z if z > 0.86 => Seen::Profile,
            z if z > 0.38 && facing > 0.0 => Seen::Quarter,
            z if z > 0.38 => Seen::BackQuarter,
            _ if facing > -0.05 => Seen::Front,
            _ => Seen::Behind,
        };
        let contour = masses.outline(Mass::Head)?;
        let up = unit(flat(frame.y));
        let mut head = Head {
            seen,
            ring: vec![],
            over_bone: false,
            egg: matches!(seen, Seen::Front | Seen::Behind),
            up,
            forward: unit(flat(frame.z)),
            // From its face's right to its left as seen: across the line of its height.
            lateral: left_of((-up.0, -up.1)),
            middle: middle(&contour),
            size: baby.posture.measures.head,
            sides: sides(sign),
            eye: BabySide::BOTH.map(|side| at(Landmark::Eye, side)),
            blade: BabySide::BOTH.map(|side| at(Landmark::Blade, side)),
            nape: one(Landmark::Nape),
            ear: ears.map(flat),
            towards: [axis.z, -axis.z],
            nose: one(Landmark::Nose),
            mouth: one(Landmark::Mouth),
            chin: one(Landmark::Chin),
            brow: one(Landmark::Glabella),
        };
        head.ring = match seen {
            Seen::Profile => head.profile(&contour),
            Seen::Quarter | Seen::BackQuarter => rounded_ring(&contour, 0.7),
            Seen::Front | Seen::Behind => head.oval(&contour),
        };
        Some(head)
    }

    /// The same; where it goes down behind the bone its line is drawn whole, so that it is closed above the bone.
    pub fn whole_over_the_bone(self) -> Self {
        let (low, high) = (self.ring.iter().any(|p| p.1 < 0.0), self.ring.iter().any(|p| p.1 > 0.0));
        if !(low && high) {
            return self;
        }
        if self.egg {
            return Head { over_bone: true, ..self };
        }
        // Where the neck comes out of it, as if it did not; a face keeps its profile.
        let hull = hull(&self.ring);
        let ring = match self.seen {
            Seen::Profile => {
                let kept: Line =
                    self.ring.iter().filter(|p| nearest(&hull, **p).1 < HOLLOW).copied().collect();
                rounded_ring(&spaced(&kept, true, STEP), 0.2)
            }
            _ => rounded_ring(&hull, 0.5),
        };
        Head { egg: true, over_bone: true, ring, ..self }
    }

    fn cm(&self, at: P, forward: f32, up: f32) -> P {
        let k = self.size;
        add(add(at, self.forward, forward * k), self.up, up * k)
    }

    /// Brow, nose, lips and chin in profile.
    fn face_line(&self) -> Line {
        let (n, m, c) = (self.nose, self.mouth, self.chin);
        let bridge = self.cm(between(self.brow, n, 0.52), -0.3, 0.0);
        through(
            &[
                self.cm(self.brow, 0.0, 0.0),
                bridge,
                self.cm(n, 0.34, 0.10),
                self.cm(n, 0.12, -0.42),
                self.cm(m, -0.02, 0.42),
                self.cm(m, 0.20, 0.12),
                self.cm(m, -0.10, -0.12),
                self.cm(m, 0.10, -0.42),
                self.cm(m, -0.22, -0.78),
                self.cm(c, 0.10, 0.08),
                self.cm(c, -0.60, -0.36),
            ],
            false,
        )
    }

    /// The outline with the face laid into it.
    fn profile(&self, contour: &[P]) -> Line {
        let round = rounded_ring(contour, 0.8);
        let face = self.face_line();
        let (from, _) = nearest(&round, face[0]);
        let (to, _) = nearest(&round, face[face.len() - 1]);
        let n = round.len();
        // The way round that does not pass the face.
        let way = |step: usize| -> Line {
            let count = if step == 1 { (from + n - to) % n } else { (to + n - from) % n };
            (0..=count).map(|k| round[(to + if step == 1 { k } else { n * 2 - k }) % n]).collect()
        };
        let (a, b) = (way(1), way(2));
        let rest = if plane::length(&a) > plane::length(&b) { a } else { b };
        const GIVEN: usize = 5;
        let rest = &rest[GIVEN.min(rest.len() / 3)..rest.len() - GIVEN.min(rest.len() / 3)];
        let mut ring = face;
        ring.extend_from_slice(rest);
        rounded_ring(&plane::spaced(&ring, true, plane::STEP), 0.14)
    }

    /// An egg as broad and as long as the head.
    fn oval(&self, contour: &[P]) -> Line {
        let across = left_of(self.up);
        let span = |d: P| {
            contour.iter().fold((f32::MAX, f32::MIN), |(l, h), p| (l.min(dot(*p, d)), h.max(dot(*p, d))))
        };
        let ((a0, a1), (u0, u1)) = (span(across), span(self.up));
        let half = 0.5 * (a1 - a0);
        let tall = (0.5 * (u1 - u0)).max(0.94 * half);
        let mid = add(add((0.0, 0.0), across, 0.5 * (a0 + a1)), self.up, 0.5 * (u0 + u1));
        let full = |x: f32| {
            let s = libm::powf(x.abs(), 2.0 / 2.1);
            if x < 0.0 { -s } else { s }
        };
        let ring: Line = (0..96)
            .map(|i| {
                let (sin, cos) = libm::sincosf(i as f32 / 96.0 * std::f32::consts::TAU);
                // Cheeks a little fuller than the crown.
                let jaw = 1.0 - 0.05 * cos;
                add(add(mid, across, half * full(sin) * jaw), self.up, tall * full(cos))
            })
            .collect();
        plane::spaced(&ring, true, plane::STEP)
    }

    /// Ear, eye, nose, mouth, curl.
    pub fn features(&self) -> Vec<Detail> {
        let mut out: Vec<Detail> = vec![];
        let mut line = |kind: Kind, knots: &[P]| out.push(Detail::fine(kind, through(knots, false)));
        for side in self.sides {
            let towards = self.towards[side.index()];
            let ear = self.ear[side.index()];
            match self.seen {
                Seen::Profile | Seen::Quarter | Seen::BackQuarter if towards > 0.3 => {
                    line(Kind::Ear, &self.shell(ear))
                }
                Seen::Front | Seen::Behind => line(Kind::Ear, &self.lobe(ear)),
                _ => {}
            }
        }
        match self.seen {
            Seen::Profile => {
                let bridge = self.cm(between(self.brow, self.nose, 0.52), -0.3, 0.0);
                line(Kind::Eye, &self.lid(self.cm(bridge, -1.45, -0.35), self.forward, 0.82));
                let lips = self.cm(self.mouth, -0.06, -0.12);
                // Of a small face no shorter than a pen can draw.
                let wide = 1.0 / self.size.min(1.0);
                let at = |forward: f32, up: f32| self.cm(lips, forward * wide, up * wide);
                line(Kind::Mouth, &[lips, at(-0.45, -0.12), at(-1.05, -0.02), at(-1.55, 0.36)]);
            }
            Seen::Quarter | Seen::Front => {
                let turned = self.seen == Seen::Quarter;
                let eyes = middle(&self.eye.map(|eye| self.inward(eye)));
                for side in self.sides {
                    let towards = self.towards[side.index()];
                    if towards < -0.75 {
                        continue;
                    }
                    let far = turned && towards < 0.0;
                    let broad = if far { 0.62 } else { 0.92 };
                    let eye = self.inward(self.eye[side.index()]);
                    let eye = if far { between(eye, eyes, 0.22) } else { eye };
                    line(Kind::Eye, &self.lid(self.along(eye, 0.0, -0.1), self.lateral, broad));
                }
                let down = |p: P| -dot(sub(p, eyes), self.up);
                let off = |p: P| dot(sub(p, eyes), self.lateral);
                let (mut low, mut gone) = (eyes, 0.0f32);
                let across = off(self.inward(self.nose));
                while gone < 8.0 && plane::holds(&self.ring, self.along(low, across, 0.0)) {
                    low = add(low, self.up, -0.1);
                    gone += 0.1;
                }
                let tall = gone.max(1.8);
                let nose = add(
                    add(eyes, self.lateral, across),
                    self.up,
                    -down(self.nose).clamp(0.2 * tall, 0.42 * tall),
                );
                let mouth = add(
                    add(eyes, self.lateral, 0.9 * off(self.inward(self.mouth))),
                    self.up,
                    -down(self.mouth).clamp(0.5 * tall, 0.7 * tall),
                );
                let at = |p: P, x: f32, y: f32| self.along(p, x * self.size, y * self.size);
                line(
                    Kind::Nose,
                    &[
                        at(nose, -0.6, 0.2),
                        at(nose, -0.45, -0.2),
                        at(nose, 0.0, -0.34),
                        at(nose, 0.45, -0.2),
                        at(nose, 0.6, 0.2),
                    ],
                );
                line(
                    Kind::Mouth,
                    &[
                        at(mouth, -0.95, 0.28),
                        at(mouth, -0.5, -0.04),
                        at(mouth, 0.0, -0.14),
                        at(mouth, 0.5, -0.04),
                        at(mouth, 0.95, 0.28),
                    ],
                );
            }
            Seen::BackQuarter => {
                // The blade of the nearer shoulder, and hair at the nape.
                let near = if self.towards[0] > 0.0 { 0 } else { 1 };
                let at = self.blade[near];
                let side = if dot(sub(at, self.nape), self.lateral) < 0.0 { -1.0 } else { 1.0 };
                let p = |x: f32, y: f32| self.along(at, -side * x * self.size, y * self.size);
                line(Kind::Blade, &[p(-0.7, 1.1), p(0.1, 0.75), p(0.45, -0.1), p(0.2, -1.0)]);
            }
            Seen::Behind => {}
        }
        out.push(Detail::fine(Kind::Curl, self.curl()));
        out
    }

    /// `x` across and `y` up from a place.
    fn along(&self, p: P, x: f32, y: f32) -> P {
        add(add(p, self.lateral, x), self.up, y)
    }

    /// A place of a face in three quarters, drawn in from the edge of the head.
    fn inward(&self, p: P) -> P {
        if self.seen == Seen::Front {
            return p;
        }
        add(p, self.lateral, -0.2 * dot(sub(p, self.middle), self.lateral))
    }

    /// A lid that is closed: an arc that hangs down.
    fn lid(&self, at: P, across: P, half: f32) -> Vec<P> {
        let k = self.size;
        let p = |x: f32, y: f32| add(add(at, across, x * half * k), self.up, y * k);
        vec![p(-1.0, 0.22), p(-0.6, -0.18), p(0.0, -0.38), p(0.6, -0.18), p(1.0, 0.22)]
    }

    /// An ear seen from its side: a C open to the face, with a hook.
    fn shell(&self, ear: P) -> Vec<P> {
        let p = |back: f32, up: f32| self.cm(ear, -back * 1.05, up * 1.1);
        vec![
            p(-0.55, 0.25),
            p(-0.30, 0.85),
            p(0.30, 1.0),
            p(0.82, 0.5),
            p(0.76, -0.2),
            p(0.36, -0.7),
            p(-0.06, -1.0),
            p(-0.42, -0.72),
        ]
    }

    /// An ear seen from before or behind: a bow on the outline.
    fn lobe(&self, ear: P) -> Vec<P> {
        let (i, _) = nearest(&self.ring, ear);
        let base = self.ring[i];
        let side = if dot(sub(ear, self.middle), self.lateral) < 0.0 { -1.0 } else { 1.0 };
        let k = self.size;
        let p = |out: f32, up: f32| self.along(base, side * out * k, up * k);
        vec![p(-0.1, 1.0), p(0.5, 0.95), p(0.78, 0.15), p(0.45, -0.75), p(-0.12, -1.05)]
    }

    /// A curl of hair near the crown.
    fn curl(&self) -> Line {
        let k = self.size;
        let at = match self.seen {
            Seen::Profile => self.cm(self.middle, -1.0, 2.3),
            Seen::Behind => self.cm(self.middle, 0.0, 0.7),
            Seen::BackQuarter => self.cm(self.middle, -1.6, 1.9),
            Seen::Quarter | Seen::Front => self.cm(self.middle, -0.3, 2.4),
        };
        let line: Line = (0..=40)
            .map(|i| {
                let t = i as f32 / 40.0;
                let (sin, cos) = libm::sincosf((200.0 - t * 470.0).to_radians());
                let r = (0.85 - 0.64 * t) * k;
                add(add(at, self.lateral, r * cos), self.up, r * sin)
            })
            .collect();
        rounded(&line, 0.05)
    }
}
