//! The 74 bones. In: a side and a name. Out: the number under which the baked form keeps the bone.

use crate::units::BabySide;

/// How many bones there are.
pub const BONES: usize = 74;
/// How many lie on the midline; they come first.
pub const MIDDLE: usize = 10;
/// How many each side has; the left side's come before the right's.
const OF_A_SIDE: usize = 32;

/// Pelvis.
pub const ROOT: usize = 0;
/// The lowest of five bones of the spine; they follow one another upwards.
pub const SPINE: usize = 1;
/// The uppermost bone of the spine, which carries the shoulders.
pub const CHEST: usize = 5;
/// The lowest of three bones of the neck.
pub const NECK: usize = 6;
/// Skull and face.
pub const HEAD: usize = 9;

/// A bone of a limb.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Limb {
    /// Collar bone.
    Clavicle = 0,
    /// Shoulder blade.
    Shoulder,
    /// Upper half of the upper arm.
    UpperArm,
    /// Lower half of the upper arm.
    UpperArmEnd,
    /// Upper half of the forearm.
    Forearm,
    /// Lower half of the forearm.
    ForearmEnd,
    /// Hand, without its middle bones.
    Wrist,
    /// First of four bones of the palm.
    Palm,
    /// First of five fingers of three bones each; the thumb comes first.
    Fingers = 11,
    /// Upper half of the thigh.
    Thigh = 26,
    /// Lower half of the thigh.
    ThighEnd,
    /// Upper half of the lower leg.
    Shin,
    /// Lower half of the lower leg.
    ShinEnd,
    /// Foot.
    Foot,
    /// All toes.
    Toes,
}

/// 0 for the left, 1 for the right.
pub const fn index(side: BabySide) -> usize {
    match side {
        BabySide::Left => 0,
        BabySide::Right => 1,
    }
}

/// +1 for the left, -1 for the right: the sign of x there.
pub const fn sign(side: BabySide) -> f32 {
    match side {
        BabySide::Left => 1.0,
        BabySide::Right => -1.0,
    }
}

/// The number of a limb's bone.
pub const fn limb(side: BabySide, bone: Limb) -> usize {
    MIDDLE + OF_A_SIDE * index(side) + bone as usize
}

/// The number of bone `joint` (0 to 2) of finger `finger` (0 = thumb).
pub const fn finger(side: BabySide, finger: usize, joint: usize) -> usize {
    limb(side, Limb::Fingers) + 3 * finger + joint
}

/// The number of the same bone on the other side.
pub const fn mirrored(bone: usize) -> usize {
    if bone < MIDDLE {
        bone
    } else if bone < MIDDLE + OF_A_SIDE {
        bone + OF_A_SIDE
    } else {
        bone - OF_A_SIDE
    }
}
