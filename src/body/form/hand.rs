//! Fingers. In: the hand's turn and how far the fingers are bent. Out: the bones of palm and fingers.

use super::bone::{Limb, finger, limb};
use super::posture::Arm;
use super::skeleton::{Posing, hand_at_rest};
use super::turn::Turn;
use crate::units::BabySide;

/// Bend of the thumb's joints, degrees.
const THUMB: [f32; 3] = [10.0, 15.0, 20.0];
/// The share of the spread at rest that is closed.
const CLOSE: f32 = 0.6;

/// Poses palm and fingers.
pub fn pose(p: &mut Posing, side: BabySide, q: &Arm, hand: &Turn) {
    for k in 0..4 {
        p.set(limb(side, Limb::Palm) + k, *hand);
    }
    let (along, palm) = hand_at_rest(p.joints, side);
    for f in 0..5 {
        let mut now = *hand;
        for (j, thumb) in THUMB.into_iter().enumerate() {
            let bone = finger(side, f, j);
            let rest = (p.joints.tail[bone] - p.joints.head[bone]).normalized();
            let bend = if f == 0 { thumb } else { q.curl[j] * (1.0 + 0.1 * (f as f32 - 1.0)) };
            if f > 0 && j == 0 {
                let flat = (rest - palm * rest.dot(palm)).normalized();
                let spread = libm::atan2f(flat.cross(along).dot(palm), flat.dot(along)).to_degrees();
                now = now.after(&Turn::about(palm, spread * CLOSE));
            }
            now = now.after(&Turn::about(rest.cross(palm), bend));
            p.set(bone, now);
        }
    }
}
