//! Which posture. In: attitude, legs, how the baby is turned to the viewer, how tightly it is curled. Out: a `Posture`.
//!
//! Postures of the table are chosen by the turn alone; what differs from them is changed joint by joint, from the same
//! posture, so that limbs never change places between one curl and the next.

use super::bone::index;
use super::posture::{Arm, Leg, Posture};
use super::table::{FOLDED, FRANK, OTHER_LEGS, UPPER_ON_CHEST, on_chest};
use crate::units::{BabySide, Vec3};

/// How the head is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Head {
    /// Chin on the chest.
    Flexed,
    /// Straight.
    Straight,
    /// Half back: the brow leads.
    Brow,
    /// Right back: the face leads.
    Face,
}

impl Head {
    /// Whether brow or face leads.
    fn is_bent_back(self) -> bool {
        matches!(self, Head::Brow | Head::Face)
    }
}

/// How one leg is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LegHeld {
    /// Hip and knee bent.
    Folded,
    /// Hip bent, knee straight: along the body.
    Up,
    /// Hip and knee nearly straight: the foot is the lowest.
    FootDown,
    /// Hip straight, knee bent: the knee is the lowest.
    KneeDown,
}

/// Which end of a baby is the lower one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Low {
    /// Its head.
    Head,
    /// Its bottom: it sits.
    Bottom,
    /// Neither: it lies across.
    Neither,
}

/// What is wanted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wanted {
    /// Degrees from its front to the viewer: 0 when the front looks at the viewer, 180 when the back does.
    pub turn: f32,
    /// Which of its sides is the nearer one.
    pub near: BabySide,
    /// The head.
    pub head: Head,
    /// The legs, left first.
    pub legs: [LegHeld; 2],
    /// Which end is the lower one.
    pub low: Low,
    /// Curl of the trunk against the usual one, about 0.55 to 1.25.
    pub curl: f32,
}

/// The posture.
pub fn choose(wanted: &Wanted) -> Posture {
    let frank = wanted.legs == [LegHeld::Up; 2];
    let table: &[(f32, Posture)] = if frank { &FRANK } else { &FOLDED };
    let mut best = table[0];
    for row in table {
        if (row.0 - wanted.turn).abs() < (best.0 - wanted.turn).abs() {
            best = *row;
        }
    }
    if !frank {
        let end = if wanted.head.is_bent_back() { Low::Neither } else { wanted.low };
        let other = OTHER_LEGS.iter().find(|(low, turn, _)| low.contains(&end) && *turn == best.0);
        best.1.legs = other.map_or(best.1.legs, |(_, _, legs)| *legs);
    }
    let mut p = if wanted.near == BabySide::Right { best.1 } else { best.1.mirrored() };
    held(&mut p, wanted.head);
    for side in BabySide::BOTH {
        let leg = &mut p.legs[index(side)];
        match wanted.legs[index(side)] {
            LegHeld::Folded => {}
            LegHeld::Up if frank => {}
            LegHeld::Up => *leg = UP,
            LegHeld::FootDown => *leg = let_down(FOOT_DOWN, wanted.curl),
            LegHeld::KneeDown => *leg = let_down(KNEE_DOWN, wanted.curl),
        }
    }
    p.spine = p.spine.map(|bend| bend * wanted.curl);
    p
}

/// A leg straight up beside one that is not. House values, by eye.
const UP: Leg =
    Leg { flex: 90.0, abduction: 14.0, rotation: 2.0, knee: 14.0, plantar: 24.0, inversion: 5.0, toes: 10.0 };
/// A leg let down, its foot the lowest: hip and knee give a little. House values, by eye.
const FOOT_DOWN: Leg =
    Leg { flex: -4.0, abduction: 12.0, rotation: 4.0, knee: 98.0, plantar: 38.0, inversion: 6.0, toes: 12.0 };
/// A leg let down to the knee. House values, by eye.
const KNEE_DOWN: Leg = Leg {
    flex: -44.0,
    abduction: 10.0,
    rotation: 8.0,
    knee: 138.0,
    plantar: 34.0,
    inversion: 8.0,
    toes: 12.0,
};

/// The pelvis of a looser curl is tilted less, and a leg that hangs down is bent back less.
fn let_down(leg: Leg, curl: f32) -> Leg {
    Leg { flex: leg.flex * curl, ..leg }
}

/// Bends head, neck and the upper spine back. House values: with them the diameter that presents lies across the baby.
fn held(p: &mut Posture, head: Head) {
    let (neck, chest) = match head {
        Head::Flexed => return,
        Head::Straight => ([-3.0, -3.0, -3.0, -6.0], [-4.0, -6.0]),
        Head::Brow => ([-13.0, -11.0, -10.0, -14.0], [-8.0, -12.0]),
        Head::Face => ([-23.0, -20.0, -18.0, -26.0], [-12.0, -16.0]),
    };
    p.neck = neck;
    p.spine[3] += chest[0];
    p.spine[4] += chest[1];
    if head.is_bent_back() {
        // Hands that lay at the face would be carried away with it: they stay on the chest.
        for (arm, chest) in p.arms.iter_mut().zip(ON_CHEST) {
            *arm = chest;
        }
        p.head_turn *= 0.5;
        p.head_tilt *= 0.5;
    }
}

/// Hands on the chest, one above the other. House values, by eye.
const ON_CHEST: [Arm; 2] =
    [UPPER_ON_CHEST, on_chest(Vec3::new(1.9, -6.86, 7.55), Vec3::new(-1.23, 0.72, 0.63))];
