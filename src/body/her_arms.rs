//! Her arms, hands under her belly. In: her shape, and what is seen in the womb. Out: a cast of each arm.
//!
//! `her_arms/arm.bin` is baked by `her_arms/bake` from the open human form that the baby comes from (see NOTICE): her left
//! arm, posed under a belly at term; her right arm is its mirror image. The bytes: `ARM `, version, how many vertices and
//! quads; x, y and z of the vertices, 200 steps a centimetre; the corners of the quads; their parts.
//!
//! On another belly the hand moves with the flank and lies on the skin there, the elbow follows, the shoulder stays. Both
//! hands give way to the baby sideways, as far as an arm goes.

use crate::body::baked::Reader;
use crate::body::cast::Cast;
use crate::body::form::raster::{Layer, raster};
use crate::body::mother::MotherShape;
use crate::body::part::Part;
use crate::units::{FigurePoint, MotherSide};

const BYTES: &[u8] = include_bytes!("her_arms/arm.bin");
const VERSION: u8 = 1;
/// Side of a cell, cm: she is drawn more softly than the baby.
pub const CELL: f32 = 0.096;
/// Weeks at which the mean belly is the one that the arm was posed for.
pub const POSED_FOR: f64 = 39.0;
/// How far a hand gives way at most, cm.
const WAY: f32 = 3.2;
/// Air between a fingertip and the baby, cm.
const AIR: f32 = 0.5;

/// The baked arm.
struct Arm {
    points: Vec<[f32; 3]>,
    quads: Vec<[u16; 4]>,
    part: Vec<Part>,
}

/// Reads the baked arm.
fn baked() -> Arm {
    let mut baked = Reader::of(BYTES, *b"ARM ", VERSION);
    let [n, q] = baked.counts();
    Arm { points: baked.places(n), quads: baked.quads(q), part: baked.parts(q) }
}

/// Where the fingertips of her left hand lie by height, as posed: x, cm; the thumb above, the fingers below.
const TIPS: [(f32, f32, f32); 2] = [(5.4, 8.6, 9.0), (-2.2, 5.4, 6.2)];

/// How her arms are moved from where they were posed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reach {
    /// Outward, at the hand and at the elbow of each arm, cm: her left, her right.
    outward: [(f32, f32); 2],
}

impl Reach {
    /// Of her shape; `taken` tells where a baby is seen.
    pub fn of(shape: &MotherShape, taken: &dyn Fn(FigurePoint) -> bool) -> Self {
        let posed = MotherShape::new(POSED_FOR, None, None, None);
        let wider = |y: f64| (shape.half_width(y) - posed.half_width(y)) as f32;
        let hand = wider(4.0).clamp(-1.6, 1.2);
        let elbow = wider(17.0).clamp(-2.6, 0.4);
        let of = |side: MotherSide| {
            let way = way(side.sign(), hand, taken);
            (hand + way, elbow + 0.3 * way)
        };
        Reach { outward: [of(MotherSide::Left), of(MotherSide::Right)] }
    }

    /// How far outward her arm on this side lies at a height, cm.
    pub fn at(&self, side: MotherSide, y: f32) -> f32 {
        let (hand, elbow) = self.outward[usize::from(side == MotherSide::Right)];
        let lower = smooth_step(6.0, 18.0, y);
        let upper = 1.0 - smooth_step(24.0, 41.0, y);
        (hand + (elbow - hand) * lower) * upper
    }
}

/// How far a hand must give way to what is seen in the womb.
fn way(sign: f32, hand: f32, taken: &dyn Fn(FigurePoint) -> bool) -> f32 {
    let mut way = 0.0f32;
    for (low, high, tip) in TIPS {
        for row in 0..=((high - low) / 0.4) as usize {
            let y = low + 0.4 * row as f32;
            for step in 0..32 {
                let x = tip - 0.8 + 0.125 * step as f32;
                if taken(FigurePoint::new(sign * x, y)) {
                    way = way.max(x + AIR - tip - hand);
                }
            }
        }
    }
    way.min(WAY)
}

/// Her left and her right arm as seen from the front.
pub fn casts(shape: &MotherShape, reach: &Reach) -> [Cast; 2] {
    let arm = baked();
    let posed = MotherShape::new(POSED_FOR, None, None, None);
    [MotherSide::Left, MotherSide::Right].map(|side| {
        let points: Vec<[f32; 3]> = arm
            .points
            .iter()
            .map(|&[x, y, z]| {
                let to = x + reach.at(side, y);
                // The hand lies on this belly as it lay on the other.
                // Towards the flank skin falls away so steeply that it would tear her wrist.
                let on = |shape: &MotherShape, x: f32| {
                    let x = f64::from(x).min(0.8 * shape.half_width(f64::from(y)));
                    shape.skin(x, f64::from(y)).0.z
                };
                let share = 1.0 - smooth_step(9.0, 17.0, y);
                let back = if share > 0.0 { share * (on(shape, to) - on(&posed, x)) } else { 0.0 };
                [side.sign() * to, y, z + back]
            })
            .collect();
        let mirrored = side == MotherSide::Right;
        let part: Vec<Part> =
            arm.part.iter().map(|part| if mirrored { part.mirrored() } else { *part }).collect();
        let layer = Layer { points: &points, quads: &arm.quads, part: &part, mirrored };
        raster(&[layer], CELL)
    })
}

/// 0 below `a`, 1 above `b`, and a smooth rise between.
fn smooth_step(a: f32, b: f32, x: f32) -> f32 {
    let t = ((x - a) / (b - a)).clamp(0.0, 1.0);
    t * t * (3.0 - 2.0 * t)
}
