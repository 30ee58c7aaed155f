//! Where a posed baby's trunk and joints lie. In: nothing. Out: the frames and places that others ask for by name.

use super::frame::Frame;
use crate::units::Vec3;

/// Frames of the trunk and head in baby space.
#[derive(Clone, Copy, Debug)]
pub struct Spine {
    /// Centre of the pelvis.
    pub pelvis: Frame,
    /// Centre of the belly.
    pub belly: Frame,
    /// Centre of the chest.
    pub chest: Frame,
    /// Between the shoulders.
    pub shoulders: Frame,
    /// Top of the neck.
    pub neck: Vec3,
    /// Centre of the head.
    pub head: Frame,
}

/// The joints of one arm, in baby space.
#[derive(Clone, Copy, Debug)]
pub struct Arm {
    /// Shoulder.
    pub shoulder: Vec3,
    /// Elbow.
    pub elbow: Vec3,
    /// Wrist.
    pub wrist: Vec3,
    /// Direction of the fingers.
    pub fingers: Vec3,
    /// Direction the palm faces.
    pub palm: Vec3,
}

/// The joints of one leg, in baby space.
#[derive(Clone, Copy, Debug)]
pub struct Leg {
    /// Hip.
    pub hip: Vec3,
    /// Knee.
    pub knee: Vec3,
    /// Ankle.
    pub ankle: Vec3,
    /// Direction of the toes.
    pub toes: Vec3,
    /// Direction the sole faces.
    pub sole: Vec3,
}
