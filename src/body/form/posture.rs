//! How a baby holds itself. In: nothing. Out: the angles of its joints and where its hands go.

use crate::units::{BabySide, Vec3};

/// A leg. Degrees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Leg {
    /// Thigh towards the belly.
    pub flex: f32,
    /// Thigh outwards.
    pub abduction: f32,
    /// Thigh about itself: the foot inwards.
    pub rotation: f32,
    /// Bend of the knee.
    pub knee: f32,
    /// Toes down.
    pub plantar: f32,
    /// Sole inwards.
    pub inversion: f32,
    /// Curl of the toes.
    pub toes: f32,
}

/// What an arm's places and directions are given in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Within {
    /// The chest, from the foot of the neck.
    Chest,
    /// The head, from its joint.
    Head,
}

/// An arm. Places and directions: x outwards from the body, y up, z to the front.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Arm {
    /// The frame of the following.
    pub within: Within,
    /// Where the wrist goes, cm at term.
    pub wrist: Vec3,
    /// Where the elbow points; always in the chest's frame.
    pub pole: Vec3,
    /// Where the fingers point.
    pub hand: Vec3,
    /// Where the palm looks.
    pub palm: Vec3,
    /// Bend of the three joints of the fingers, degrees.
    pub curl: [f32; 3],
}

/// A whole posture; left first. Degrees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Posture {
    /// Bend of five bones of the spine, from below.
    pub spine: [f32; 5],
    /// Bend of three bones of the neck and of the head.
    pub neck: [f32; 4],
    /// Face to the left.
    pub head_turn: f32,
    /// Head to the right shoulder.
    pub head_tilt: f32,
    /// Trunk to the right.
    pub side: f32,
    /// Chest to the left.
    pub twist: f32,
    /// How far the line from rump to crown leans to the front.
    pub stand: f32,
    /// Legs.
    pub legs: [Leg; 2],
    /// Arms.
    pub arms: [Arm; 2],
}

impl Posture {
    /// The same with left and right exchanged.
    pub fn mirrored(&self) -> Posture {
        Posture {
            head_turn: -self.head_turn,
            head_tilt: -self.head_tilt,
            side: -self.side,
            twist: -self.twist,
            legs: [self.legs[1], self.legs[0]],
            arms: [self.arms[1], self.arms[0]],
            ..*self
        }
    }
    /// The leg of a side.
    pub fn leg(&self, side: BabySide) -> &Leg {
        &self.legs[super::bone::index(side)]
    }
    /// The arm of a side.
    pub fn arm(&self, side: BabySide) -> &Arm {
        &self.arms[super::bone::index(side)]
    }
}
