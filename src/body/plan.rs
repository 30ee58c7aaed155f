//! What is to be drawn, from what was found. In: one baby's findings and their conclusion. Out: a plan: directions of
//! head and back, attitude, legs, descent; what is unknown stays unknown.

use crate::exam::{
    Attitude, Baby, Back, BackTurn, Conclusion, Descent, Footling, Legs, Lie, Position, Presentation,
    Prominence,
};
use crate::units::{MotherSide, Vec3};

/// How far down the baby lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Depth {
    /// This share of the head stands above the brim.
    Fifths(u8),
    /// The lowest point of the part that leads, cm above the brim: fixed drawing heights.
    Lowest(f32),
}

/// What can be drawn of a baby.
#[derive(Clone, Debug, PartialEq)]
pub enum Plan {
    /// Neither head, bottom nor position is known.
    Nothing,
    /// The lie is known, the back is not: rounds where head and bottom lie, and a pale trunk.
    Rounds(Lying),
    /// A baby.
    Baby(Lying, Vec3),
}

/// How the baby lies, apart from its back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lying {
    /// Direction of the head in mother space.
    pub up: Vec3,
    /// The lie.
    pub lie: Lie,
    /// How the head is bent; flexed when not known.
    pub attitude: Attitude,
    /// How the legs lie; folded when not known.
    pub legs: Legs,
    /// How far down.
    pub depth: Depth,
    /// Crosswise: the height at which head and bottom were felt, cm.
    pub level: Option<f32>,
    /// True when any finding it rests on is unsure.
    pub unsure: bool,
    /// A foot leads, and which one is not told: the legs are folded.
    pub foot_untold: bool,
    /// False when nothing was found of the legs.
    pub legs_known: bool,
}

/// Heights of the lowest point for descents said in words, cm above the brim. Drawing heights, never fifths.
mod drawn {
    pub const FREE: f32 = 3.0;
    pub const HEAD_AT_BRIM: f32 = -1.4;
    pub const HEAD_DEEP: f32 = -6.0;
    pub const BREECH_AT_BRIM: f32 = -0.8;
    pub const BREECH_DEEP: f32 = -3.6;
    /// A bottom seldom enters the brim before labour.
    pub const BREECH_NOT_TOLD: f32 = 1.2;
    pub const CROSSWISE: f32 = 1.6;
    pub const OBLIQUE: f32 = 1.0;
}

/// The plan for one baby.
pub fn plan(baby: &Baby, conclusion: &Conclusion) -> Plan {
    let Some(lie) = conclusion.lie else { return Plan::Nothing };
    let head_up = conclusion.head_up.or(match conclusion.presentation {
        Some(Presentation::Breech) => Some(true),
        Some(Presentation::Cephalic | Presentation::Face | Presentation::Brow) => Some(false),
        _ => None,
    });
    let side = conclusion.head_side.or_else(|| baby.head.value()?.side());
    let up = match (lie, head_up, side) {
        (Lie::Longitudinal, Some(true), _) => Vec3::new(0.0, 1.0, 0.0),
        (Lie::Longitudinal, Some(false), _) => Vec3::new(0.0, -1.0, 0.0),
        (Lie::Longitudinal, None, _) => return Plan::Nothing,
        (Lie::Oblique, Some(head_up), Some(side)) => {
            Vec3::new(0.70 * side.sign(), if head_up { 0.71 } else { -0.71 }, 0.0)
        }
        (Lie::Transverse, _, Some(side)) => Vec3::new(side.sign(), 0.06, 0.0),
        (Lie::Oblique | Lie::Transverse, _, _) => return Plan::Nothing,
    };
    let head_leads = lie == Lie::Longitudinal && head_up == Some(false);
    let lying = Lying {
        up,
        lie,
        attitude: attitude(baby, conclusion),
        legs: match baby.legs.value() {
            None | Some(Legs::Footling(Footling::Untold)) => Legs::Complete,
            Some(legs) => *legs,
        },
        foot_untold: baby.legs.value() == Some(&Legs::Footling(Footling::Untold)),
        depth: depth(baby, conclusion, lie, head_leads),
        level: None,
        unsure: conclusion.unsure,
        legs_known: baby.legs.value().is_some(),
    };
    match conclusion.back.and_then(|b| back_direction(b, lie)) {
        Some(back) => Plan::Baby(lying, back),
        None => Plan::Rounds(lying),
    }
}

fn attitude(baby: &Baby, conclusion: &Conclusion) -> Attitude {
    if let Some(attitude) = baby.attitude.value() {
        return *attitude;
    }
    match (conclusion.presentation, conclusion.position) {
        (Some(Presentation::Face), _) => return Attitude::Face,
        (Some(Presentation::Brow), _) => return Attitude::Brow,
        (_, Some(Position::Lengthwise { denominator: crate::exam::Denominator::Mentum, .. })) => {
            return Attitude::Face;
        }
        (_, Some(Position::Lengthwise { denominator: crate::exam::Denominator::Frontum, .. })) => {
            return Attitude::Brow;
        }
        _ => {}
    }
    // A head that stands out on neither side, or on the back's, is not drawn with its chin on the chest.
    match baby.prominence.value() {
        Some(Prominence::Level | Prominence::BackSide) => Attitude::Deflexed,
        Some(Prominence::LimbSide) | None => Attitude::Flexed,
    }
}

fn depth(baby: &Baby, conclusion: &Conclusion, lie: Lie, head_leads: bool) -> Depth {
    let words = baby.descent.value();
    match lie {
        Lie::Transverse => Depth::Lowest(drawn::CROSSWISE),
        Lie::Oblique => Depth::Lowest(drawn::OBLIQUE),
        Lie::Longitudinal if head_leads => match (baby.head_above_brim.value(), words) {
            (Some(fifths), _) => Depth::Fifths(fifths.get()),
            (None, Some(Descent::Free)) => Depth::Lowest(drawn::FREE),
            (None, Some(Descent::Deep | Descent::Engaged)) => Depth::Lowest(drawn::HEAD_DEEP),
            (None, Some(Descent::AtBrim | Descent::Dipping | Descent::Fixed)) => {
                Depth::Lowest(drawn::HEAD_AT_BRIM)
            }
            (None, None) if conclusion.engaged == Some(true) => Depth::Lowest(drawn::HEAD_DEEP),
            (None, None) => Depth::Lowest(drawn::HEAD_AT_BRIM),
        },
        Lie::Longitudinal => Depth::Lowest(match words {
            Some(Descent::Free) => drawn::FREE,
            Some(Descent::Deep | Descent::Engaged) => drawn::BREECH_DEEP,
            Some(Descent::AtBrim | Descent::Dipping | Descent::Fixed) => drawn::BREECH_AT_BRIM,
            None => drawn::BREECH_NOT_TOLD,
        }),
    }
}

/// Where the back points in mother space; `None` when that was not felt.
///
/// Lengthwise, degrees from her front: `front` 0 or 45 to the side, square to the side 90, towards her spine 135 or
/// 180. A back of which only the side is known is drawn square to the side.
pub fn back_direction(back: Back, lie: Lie) -> Option<Vec3> {
    let around = |side: Option<MotherSide>, degrees: f32| {
        let (sin, cos) = libm::sincosf(degrees.to_radians());
        Vec3::new(sin * side.map_or(0.0, MotherSide::sign), 0.0, cos)
    };
    match (back.turn, back.side, lie) {
        (Some(BackTurn::Ribs), _, _) => Some(Vec3::new(0.0, 1.0, 0.0)),
        (Some(BackTurn::Feet), _, _) => Some(Vec3::new(0.0, -1.0, 0.0)),
        (Some(BackTurn::Front), None, _) | (Some(BackTurn::Front), Some(_), Lie::Transverse) => {
            Some(Vec3::new(0.0, 0.0, 1.0))
        }
        (Some(BackTurn::Spine), None, _) | (Some(BackTurn::Spine), Some(_), Lie::Transverse) => {
            Some(Vec3::new(0.0, 0.0, -1.0))
        }
        (Some(BackTurn::Front), side, _) => Some(around(side, 45.0)),
        (Some(BackTurn::Spine), side, _) => Some(around(side, 135.0)),
        (Some(BackTurn::Lateral) | None, Some(_), Lie::Transverse) => None,
        (Some(BackTurn::Lateral) | None, side @ Some(_), _) => Some(around(side, 90.0)),
        (Some(BackTurn::Lateral) | None, None, _) => None,
    }
}

/// Whether a foot leads.
pub fn foot_leads(legs: Legs) -> bool {
    matches!(legs, Legs::Footling(Footling::Left | Footling::Right | Footling::Both))
}
