//! One posed baby. In: where its head and back point, attitude, legs, size, near side, origin. Out: its
//! surface, the fine curves on it, and its landmarks, all in mother space.

use super::curves::Curve;
use super::form::posture::Posture as Held;
use super::frame::Frame;
use super::joints::{Arm, Leg, Spine};
use super::measures::Measures;
use super::posed;
use super::shape::Shape;
use crate::exam::{Attitude, Legs};
use crate::units::{BabySide, MotherSide, Vec3};

/// What decides a baby's shape, apart from where it lies.
#[derive(Clone, Copy, Debug)]
pub struct Posture {
    /// Direction of the head, in mother space.
    pub up: Vec3,
    /// Direction of the back, in mother space.
    pub back: Vec3,
    /// How the head is bent.
    pub attitude: Attitude,
    /// How the legs lie.
    pub legs: Legs,
    /// Curl of the spine: 1 as its posture was chosen, less is straighter.
    pub curl: f32,
    /// Sizes.
    pub measures: Measures,
    /// When the baby is seen square on: the mother's side on which its near side lies.
    pub favour: MotherSide,
}

impl Posture {
    /// The baby's frame at `origin`: y towards the head, z away from the back.
    pub fn frame(&self, origin: Vec3) -> Frame {
        Frame::from_up_front(self.up, -self.back, origin)
    }
    /// The side nearer the viewer; seen square on, the side that its posture has in front.
    pub fn near(&self) -> BabySide {
        posed::near(self)
    }
}

/// A posed baby.
#[derive(Clone, Debug)]
pub struct PosedBaby {
    /// Its frame in mother space.
    pub body: Frame,
    /// Its head's frame in mother space.
    pub head: Frame,
    /// Its spine in baby space.
    pub spine: Spine,
    /// Arms in baby space, left first.
    pub arms: [Arm; 2],
    /// Legs in baby space, left first.
    pub legs: [Leg; 2],
    /// Its surface.
    pub shape: Shape,
    /// Fine lines on the surface; empty until `with_curves`.
    pub curves: Vec<Curve>,
    /// What it was posed from.
    pub posture: Posture,
    /// How the form holds itself, as it was made.
    pub held: Held,
}

impl PosedBaby {
    /// The same baby with the fine curves laid on its surface.
    pub fn with_curves(mut self) -> Self {
        self.curves = self.shape.features(&self.head);
        self
    }

    /// Its head's frame with the origin between the eyes, in mother space.
    pub fn face(&self) -> Frame {
        Frame { origin: self.shape.eyes(), ..self.head }
    }

    /// The same baby, elsewhere.
    pub fn moved(mut self, by: Vec3) -> Self {
        self.body.origin = self.body.origin + by;
        self.head.origin = self.head.origin + by;
        self.shape.shift(by);
        self.curves.iter_mut().flat_map(|c| &mut c.points).for_each(|p| *p = *p + by);
        self
    }
}
