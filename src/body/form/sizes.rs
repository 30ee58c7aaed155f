//! Sizes of the form. In: how large a baby is against the term body. Out: how its bones are stretched, and how lean it is.

use super::body::Sizes;
use crate::body::measures::Measures;

/// The girth, against term, at which a baby is as lean as the baked lean one: that of 26 weeks.
const LEAN_GIRTH: f32 = 0.606;
/// What leanness alone takes from the girth of the trunk; from the limbs it may take what it takes.
const LEAN_TAKES: f32 = 0.07;

impl Sizes {
    /// The sizes of a baby of these measures.
    pub fn of(m: &Measures) -> Sizes {
        let lean = ((1.0 - m.girth) / (1.0 - LEAN_GIRTH)).clamp(0.0, 1.0);
        Sizes {
            head: m.head,
            girth: m.girth / (1.0 - LEAN_TAKES * lean),
            length: m.length,
            upper_arm: m.humerus,
            forearm: m.radius,
            thigh: m.femur,
            shin: m.tibia,
            foot: m.foot,
            flesh: 0.5 * (m.head + m.flesh) + 0.26 * lean,
            lean,
        }
    }
}
