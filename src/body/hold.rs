//! How a baby of the one form holds itself. In: how it lies, as it is made. Out: a posture of the form.

use super::baby::Posture;
use super::form::choose::{Head, LegHeld, Low, Wanted, choose};
use super::form::posture::Posture as Held;
use crate::exam::{Attitude, Footling, Legs};
use crate::units::{BabySide, Vec3};

/// The side nearer the viewer, of a baby as it is made.
pub fn near(made: &Posture) -> BabySide {
    if made.frame(Vec3::default()).x.z > 1e-3 { BabySide::Left } else { BabySide::Right }
}

/// The posture of a baby.
pub fn hold(made: &Posture) -> Held {
    let frame = made.frame(Vec3::default());
    // The viewer's direction in the baby's frame.
    let (across, front) = (frame.x.z, frame.z.z);
    choose(&Wanted {
        turn: libm::atan2f(across.abs(), front).to_degrees(),
        near: near(made),
        head: match made.attitude {
            Attitude::Flexed => Head::Flexed,
            Attitude::Deflexed => Head::Straight,
            Attitude::Brow => Head::Brow,
            Attitude::Face => Head::Face,
        },
        legs: BabySide::BOTH.map(|side| leg(made.legs, side)),
        low: match made.up.y {
            up if up < -0.5 => Low::Head,
            up if up > 0.5 => Low::Bottom,
            _ => Low::Neither,
        },
        curl: made.curl,
    })
}

fn leg(legs: Legs, side: BabySide) -> LegHeld {
    match (legs, side) {
        (Legs::Frank, _) => LegHeld::Up,
        (Legs::Footling(Footling::Both), _)
        | (Legs::Footling(Footling::Left), BabySide::Left)
        | (Legs::Footling(Footling::Right), BabySide::Right) => LegHeld::FootDown,
        (Legs::Complete | Legs::Footling(_), _) => LegHeld::Folded,
    }
}
