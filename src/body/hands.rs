//! The hands of someone who palpates. In: her shape and the palpation. Out: a cast of each hand with its forearm.
//!
//! `hands/hands.bin` is baked by `hands/bake` from the open human form that the baby comes from (see NOTICE): a left hand in
//! four poses, fitted to a belly at term; a right hand is its mirror image. The bytes: `HAND`, version, how many poses,
//! vertices and quads; the corners of the quads; their parts; then for each pose x, y and z of the vertices, 200 steps a
//! centimetre.
//!
//! One examiner: at her right, facing her head, in the deep pelvic palpation her feet. The hands follow the findings: those
//! round the top of the womb lie at this one's, those at its sides go in and out with her flanks.

use crate::body::cast::Cast;
use crate::body::form::raster::{Layer, raster};
use crate::body::her_arms::{CELL, POSED_FOR};
use crate::body::mother::MotherShape;
use crate::body::part::Part;

const BYTES: &[u8] = include_bytes!("hands/hands.bin");
const VERSION: u8 = 1;
const UNIT: f32 = 1.0 / 200.0;
/// The top of the womb that the hands were posed round, cm above the pubic bone.
const FUNDUS: f32 = 28.3;

/// What is felt, in the order of the examination.
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
}

impl Palpation {
    /// All, in the order of the baked poses.
    pub const ALL: [Palpation; 4] =
        [Palpation::Fundal, Palpation::Lateral, Palpation::PelvicOne, Palpation::PelvicTwo];

    /// How far from where they were posed the hands lie on her: outward and up, cm.
    pub fn moved(self, shape: &MotherShape) -> (f32, f32) {
        let posed = MotherShape::new(POSED_FOR, None, None, None);
        let wider = |y: f64| (shape.half_width(y) - posed.half_width(y)) as f32;
        let higher = shape.fundus_y as f32 - FUNDUS;
        match self {
            Palpation::Fundal => (0.4 * wider(24.0), higher.max(-20.0)),
            Palpation::Lateral => (0.8 * wider(14.0), (0.5 * higher).max(-8.0)),
            Palpation::PelvicOne => (0.0, 0.0),
            Palpation::PelvicTwo => (0.5 * wider(6.0), 0.0),
        }
    }

    /// Whether a hand is the mirror image of the baked left one. Two hands mirror each other; a single one is the right.
    fn mirrored(self) -> &'static [bool] {
        if self == Palpation::PelvicOne { &[true] } else { &[false, true] }
    }
}

/// The hands of a palpation on her, as seen from the front.
pub fn casts(shape: &MotherShape, palpation: Palpation) -> Vec<Cast> {
    chosen(shape, palpation, palpation.mirrored())
}

/// Hands in the pose of a palpation: each the baked left one, or where `true` its mirror image.
pub fn chosen(shape: &MotherShape, palpation: Palpation, mirrored: &[bool]) -> Vec<Cast> {
    let (head, rest) = BYTES.split_at(10);
    assert_eq!((&head[..4], head[4]), (&b"HAND"[..], VERSION), "hands.bin is of this version");
    let u16_at = |bytes: &[u8], k: usize| u16::from_le_bytes([bytes[2 * k], bytes[2 * k + 1]]);
    let (n, q) = (usize::from(u16_at(&head[6..], 0)), usize::from(u16_at(&head[6..], 1)));
    let (corners, rest) = rest.split_at(8 * q);
    let (codes, poses) = rest.split_at(q);
    let quads: Vec<[u16; 4]> = (0..q).map(|f| [0, 1, 2, 3].map(|k| u16_at(corners, 4 * f + k))).collect();
    let number = Palpation::ALL.iter().position(|p| *p == palpation).unwrap_or(0);
    let pose = &poses[6 * n * number..6 * n * (number + 1)];
    let coordinate = |v: usize, k: usize| f32::from(u16_at(pose, k * n + v) as i16) * UNIT;
    let (outward, up) = palpation.moved(shape);
    mirrored
        .iter()
        .map(|&mirrored| {
            let points: Vec<[f32; 3]> = (0..n)
                .map(|v| {
                    let [x, y, z] = [0, 1, 2].map(|k| coordinate(v, k));
                    // Outward is away from the midline, on the side where this hand lies.
                    let side = if palpation == Palpation::PelvicTwo { 1.0 } else { -1.0 };
                    let x = x + side * outward;
                    [if mirrored { -x } else { x }, y + up, z]
                })
                .collect();
            let part: Vec<Part> = codes
                .iter()
                .map(|code| Part::from_code(*code))
                .map(|part| if mirrored { part.mirrored() } else { part })
                .collect();
            raster(&[Layer { points: &points, quads: &quads, part: &part, mirrored }], CELL)
        })
        .collect()
}
