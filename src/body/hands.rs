//! The hands of whoever examines. In: her shape, what is done, where the heart is listened for. Out: each hand as it lies on
//! her: a cast with its forearm, its nails, and the cuff of its sleeve.
//!
//! `hands/hands.bin` is baked by `hands/bake` from the open human form that the baby comes from (see NOTICE): a left hand
//! with its forearm at rest, and poses of it, fitted to a belly at term; a right hand is a mirror image. The bytes: `HAND`,
//! version, how many bones, nails, poses, vertices and quads; the corners of the quads; their parts; x, y and z of the
//! vertices about the palm, 200 steps a centimetre; for each vertex three bones with their shares, of 255; for each bone the
//! one it hangs on and its joint, then the elbow; for each nail its bone, its middle, half its length and half its breadth;
//! for each pose the middle of the palm, then turns, 32,000 steps to 1: of the whole hand, of the forearm about the wrist,
//! and of each bone from the wrist on.
//!
//! One examiner: at her right, facing her head, in the deep pelvic palpation her feet. The hands follow the findings: those
//! round the top of the womb lie at this one's, those at its sides go in and out with her flanks, the probe is held to where
//! the heart is listened for. Arms are bare; a sleeve ends in a cuff just below the elbow.

use crate::body::baked::Reader;
use crate::body::cast::Cast;
use crate::body::form::raster::{Layer, raster};
use crate::body::form::turn::Turn;
use crate::body::her_arms::POSED_FOR;
use crate::body::mother::MotherShape;
use crate::body::part::Part;
use crate::units::{MotherPoint, Vec3};

const BYTES: &[u8] = include_bytes!("hands/hands.bin");
const VERSION: u8 = 2;
const FINE: f32 = 1.0 / 32000.0;
/// Side of a cell, cm.
const CELL: f32 = 0.072;
/// The top of the womb that the hands were posed round, cm above the pubic bone.
const FUNDUS: f32 = 28.3;
/// Where the probe that a hand was posed to hold meets the skin.
const PROBED: (f32, f32) = (4.45, 13.4);
/// Where the bare arm ends and a sleeve begins, cm from the wrist.
const BARE: f32 = 19.4;
/// The first bone of the middle finger: after the forearm, the wrist, four of the palm and six of thumb and first finger.
const KNUCKLE: usize = 12;
/// Bones of a vertex.
const SHARES: usize = 3;

/// What hands do, in the order of the examination.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Palpation {
    /// Both hands round the top of the womb.
    Fundal,
    /// A hand on each side.
    Lateral,
    /// One hand above the pubic bone.
    PelvicOne,
    /// Both hands into the pelvis, facing her feet.
    PelvicTwo,
    /// The tape, from the pubic bone to the top of the womb.
    Tape,
    /// A horn at the place where the heart is listened for, and a hand that steadies the womb on the other side.
    Horn,
    /// The probe of a Doppler, held to the place where the heart is listened for.
    Doppler,
}

impl Palpation {
    /// All, in the order of the examination.
    pub const ALL: [Palpation; 7] = [
        Palpation::Fundal,
        Palpation::Lateral,
        Palpation::PelvicOne,
        Palpation::PelvicTwo,
        Palpation::Tape,
        Palpation::Horn,
        Palpation::Doppler,
    ];

    /// Whether it needs a place to listen.
    pub const fn listens(self) -> bool {
        matches!(self, Palpation::Horn | Palpation::Doppler)
    }

    /// The baked pose of each hand, and whether the hand is the mirror image: a right one.
    fn poses(self, heart: Option<MotherPoint>) -> Vec<(usize, bool)> {
        match self {
            Palpation::Fundal => vec![(0, false), (1, true)],
            Palpation::Lateral => vec![(2, false), (2, true)],
            Palpation::PelvicOne => vec![(3, true)],
            Palpation::PelvicTwo => vec![(4, false), (4, true)],
            Palpation::Tape => vec![(5, false), (6, true)],
            Palpation::Horn => heart.map(|at| (2, at.0.x < 0.0)).into_iter().collect(),
            Palpation::Doppler => heart.map(|_| (7, true)).into_iter().collect(),
        }
    }

    /// The pose of its hand when it is a left one.
    fn left(self) -> usize {
        match self {
            Palpation::Fundal => 0,
            Palpation::Lateral | Palpation::Horn => 2,
            Palpation::PelvicOne => 3,
            Palpation::PelvicTwo => 4,
            Palpation::Tape => 5,
            Palpation::Doppler => 7,
        }
    }

    /// How far from where it was posed the hand of a pose lies on her, cm: away from the midline, and up.
    fn moved(pose: usize, shape: &MotherShape) -> (f32, f32) {
        let posed = MotherShape::new(POSED_FOR, None, None, None);
        let wider = |y: f64| (shape.half_width(y) - posed.half_width(y)) as f32;
        let higher = shape.fundus_y as f32 - FUNDUS;
        match pose {
            0 | 1 => (0.4 * wider(24.0), higher.max(-20.0)),
            2 => (0.8 * wider(14.0), (0.5 * higher).max(-8.0)),
            4 => (0.5 * wider(6.0), 0.0),
            5 => (0.0, higher.max(-20.0)),
            _ => (0.0, 0.0),
        }
    }
}

/// A hand as it lies on her.
pub struct Hand {
    /// Hand and bare forearm, as seen from the front.
    pub cast: Cast,
    /// The nails: middle, half the length towards the tip, half the breadth.
    pub nails: Vec<[Vec3; 3]>,
    /// The wrist.
    pub wrist: Vec3,
    /// The elbow.
    pub elbow: Vec3,
    /// The knuckle of the middle finger.
    pub knuckle: Vec3,
    /// Where the sleeve's cuff begins: its middle, and half its breadth, cm.
    pub cuff: (Vec3, f32),
    /// Whether it is a right one.
    pub right: bool,
}

/// The hands of a palpation on her; the place where the heart is listened for is asked for by those that listen.
pub fn laid(shape: &MotherShape, palpation: Palpation, heart: Option<MotherPoint>) -> Vec<Hand> {
    let baked = Baked::read();
    let poses = palpation.poses(heart);
    poses
        .into_iter()
        .map(|(pose, right)| {
            let by = match heart.filter(|_| palpation == Palpation::Doppler) {
                Some(at) => (at.0.x - PROBED.0, at.0.y - PROBED.1),
                None => baked.way(pose, right, shape),
            };
            baked.hand(pose, right, by)
        })
        .collect()
}

/// Hands in the pose of a palpation: each the baked left one, or where `true` its mirror image.
pub fn chosen(shape: &MotherShape, palpation: Palpation, mirrored: &[bool]) -> Vec<Hand> {
    let (baked, pose) = (Baked::read(), palpation.left());
    mirrored.iter().map(|&right| baked.hand(pose, right, baked.way(pose, right, shape))).collect()
}

/// A bone of the hand.
struct Bone {
    parent: usize,
    joint: Vec3,
}

/// A pose of the hand.
struct Pose {
    palm: Vec3,
    whole: Turn,
    fore: Turn,
    /// Of each bone from the wrist on.
    turns: Vec<Turn>,
}

/// What is baked.
struct Baked {
    points: Vec<Vec3>,
    quads: Vec<[u16; 4]>,
    part: Vec<Part>,
    shares: Vec<[(usize, f32); SHARES]>,
    bones: Vec<Bone>,
    elbow: Vec3,
    nails: Vec<(usize, [Vec3; 3])>,
    poses: Vec<Pose>,
}

fn turn(r: &mut Reader) -> Turn {
    Turn::from_quaternion([0; 4].map(|_| f32::from(r.i16()) * FINE))
}

impl Baked {
    fn read() -> Baked {
        let mut r = Reader::of(BYTES, *b"HAND", VERSION);
        let [bones, nails, poses] = [0; 3].map(|_| usize::from(r.u8()));
        let [n, q] = r.counts();
        let (quads, part) = (r.quads(q), r.parts(q));
        Baked {
            points: r.places(n).into_iter().map(|[x, y, z]| Vec3::new(x, y, z)).collect(),
            quads,
            part,
            shares: (0..n)
                .map(|_| [0; SHARES].map(|_| (usize::from(r.u8()), f32::from(r.u8()) / 255.0)))
                .collect(),
            bones: (0..bones).map(|_| Bone { parent: usize::from(r.u8()), joint: r.place() }).collect(),
            elbow: r.place(),
            nails: (0..nails).map(|_| (usize::from(r.u8()), [0; 3].map(|_| r.place()))).collect(),
            poses: (0..poses)
                .map(|_| Pose {
                    palm: r.place(),
                    whole: turn(&mut r),
                    fore: turn(&mut r),
                    turns: (1..bones).map(|_| turn(&mut r)).collect(),
                })
                .collect(),
        }
    }

    /// How far to her left and up the hand of a pose lies from where it was posed, cm.
    fn way(&self, pose: usize, right: bool, shape: &MotherShape) -> (f32, f32) {
        let (outward, up) = Palpation::moved(pose, shape);
        let x = self.poses[pose].palm.x * if right { -1.0 } else { 1.0 };
        (outward * x.signum(), up)
    }

    /// A hand in this pose, moved by so much to her left and up.
    fn hand(&self, pose: usize, right: bool, by: (f32, f32)) -> Hand {
        let Pose { palm, whole, fore, turns } = &self.poses[pose];
        // Where each bone takes a place: a turn and a shift.
        let about = |turn: Turn, joint: Vec3| (turn, joint - turn.of(joint));
        let mut moves = vec![about(*fore, self.bones[0].joint)];
        for (bone, turn) in self.bones[1..].iter().zip(turns) {
            let own = about(*turn, bone.joint);
            // The wrist and what hangs on nothing else begin at rest.
            let (first, shift) =
                if bone.parent == 0 { (Turn::NONE, Vec3::default()) } else { moves[bone.parent] };
            moves.push((first.after(&own.0), shift + first.of(own.1)));
        }
        let on_her = |p: Vec3| {
            let p = whole.of(p) + *palm;
            let x = if right { -p.x } else { p.x };
            Vec3::new(x + by.0, p.y + by.1, p.z)
        };
        let carried = |bone: usize, p: Vec3| {
            let (turn, shift) = moves[bone];
            turn.of(p) + shift
        };
        let points: Vec<Vec3> = self
            .points
            .iter()
            .zip(&self.shares)
            .map(|(p, shares)| {
                let mut sum = Vec3::default();
                for (bone, share) in shares {
                    sum = sum + carried(*bone, *p) * *share;
                }
                on_her(sum)
            })
            .collect();
        let wrist = on_her(self.bones[0].joint);
        let elbow = on_her(carried(0, self.elbow));
        let knuckle = on_her(carried(KNUCKLE, self.bones[KNUCKLE].joint));
        let axis = (elbow - wrist).normalized();
        let along: Vec<f32> = points.iter().map(|p| (*p - wrist).dot(axis)).collect();
        let kept = |quad: &[u16; 4]| quad.iter().all(|v| along[usize::from(*v)] < BARE);
        let (quads, part): (Vec<[u16; 4]>, Vec<Part>) = self
            .quads
            .iter()
            .zip(&self.part)
            .filter(|(quad, _)| kept(quad))
            .map(|(quad, part)| (*quad, if right { part.mirrored() } else { *part }))
            .unzip();
        let cast = {
            let points: Vec<[f32; 3]> = points.iter().map(|p| [p.x, p.y, p.z]).collect();
            raster(&[Layer { points: &points, quads: &quads, part: &part, mirrored: right }], CELL)
        };
        // The arm's breadth at the cuff, as seen.
        let across = Vec3::new(-axis.y, axis.x, 0.0).normalized();
        let (mut low, mut high) = (f32::MAX, f32::MIN);
        for (p, along) in points.iter().zip(&along) {
            if (BARE - 2.0..BARE).contains(along) {
                let side = (*p - wrist).dot(across);
                (low, high) = (low.min(side), high.max(side));
            }
        }
        let middle = wrist + axis * (BARE - 1.2) + across * (0.5 * (low + high));
        let nails = self
            .nails
            .iter()
            .map(|(bone, [middle, along, across])| {
                let middle_on = on_her(carried(*bone, *middle));
                let tip = |by: Vec3| on_her(carried(*bone, *middle + by)) - middle_on;
                [middle_on, tip(*along), tip(*across)]
            })
            .collect();
        Hand { cast, nails, wrist, elbow, knuckle, cuff: (middle, 0.5 * (high - low)), right }
    }
}
