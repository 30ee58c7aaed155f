//! The diameter with which a head presents. In: a posed baby. Out: its name, its two ends on the posed surface, and what
//! handbooks print for it at term.

use super::baby::PosedBaby;
use super::head;
use super::shape::{Piece, Shape};
use crate::exam::Attitude;
use crate::units::Vec3;

/// Farther out than any part of a head, cm.
const OUT: f32 = 20.0;

/// A diameter of the head, named by its landmarks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// From below the occiput to the large fontanelle: the head well bent forward.
    SuboccipitoBregmatic,
    /// From the occiput to between the brows: the head held straight.
    OccipitoFrontal,
    /// From the chin to the vertex: the head half bent back.
    MentoVertical,
    /// From under the chin to the large fontanelle: the head right bent back.
    SubmentoBregmatic,
}

impl Name {
    /// What presents in this attitude.
    pub fn of(attitude: Attitude) -> Self {
        match attitude {
            Attitude::Flexed => Name::SuboccipitoBregmatic,
            Attitude::Deflexed => Name::OccipitoFrontal,
            Attitude::Brow => Name::MentoVertical,
            Attitude::Face => Name::SubmentoBregmatic,
        }
    }

    /// Its length at term in handbooks, cm: bone, without skin (`tests/published/diameters.csv`).
    pub fn handbook_cm(self) -> f32 {
        match self {
            Name::SuboccipitoBregmatic | Name::SubmentoBregmatic => 9.5,
            Name::OccipitoFrontal => 11.5,
            Name::MentoVertical => 13.5,
        }
    }

    /// Its name in the files of words.
    pub fn id(self) -> &'static str {
        match self {
            Name::SuboccipitoBregmatic => "suboccipitobregmatic",
            Name::OccipitoFrontal => "occipitofrontal",
            Name::MentoVertical => "mentovertical",
            Name::SubmentoBregmatic => "submentobregmatic",
        }
    }
}

/// A diameter of one posed head.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Diameter {
    /// Which.
    pub name: Name,
    /// Its ends, in the space the baby is posed in.
    pub ends: [Vec3; 2],
}

impl Diameter {
    /// Its length over the skin, cm.
    pub fn cm(&self) -> f32 {
        (self.ends[1] - self.ends[0]).length()
    }
}

/// The diameter with which this baby's head presents, between its landmarks in the head's own midline.
pub fn presenting(baby: &PosedBaby) -> Option<Diameter> {
    let name = Name::of(baby.posture.attitude);
    let k = baby.posture.measures.head;
    let head_and_neck = &baby.shape.piece(Piece::Core);
    let skull = &baby.shape.piece(Piece::Head);
    // Degrees from the crown towards the face; how far a point is from being the landmark.
    let find = |shape: &Shape, (from, to): (i32, i32), far: &dyn Fn(Vec3) -> f32| {
        (from..to)
            .filter_map(|degrees| profile(baby, shape, degrees as f32))
            .min_by(|p, q| far(*p).total_cmp(&far(*q)))
    };
    let bregma = || find(head_and_neck, (-10, 60), &|p| (p.z - head::BREGMA * k).abs());
    let farthest = |from: Vec3| find(skull, (0, 360), &|p| -(p - from).length());
    let (from, to) = match name {
        // The nape meets the skull where the profile comes nearest to the head's middle.
        Name::SuboccipitoBregmatic => (find(head_and_neck, (200, 280), &|p| p.length())?, bregma()?),
        Name::SubmentoBregmatic => (find(head_and_neck, (150, 200), &|p| p.length())?, bregma()?),
        Name::OccipitoFrontal => {
            let brows = find(head_and_neck, (60, 110), &|p| (p.y - head::BROWS * k).abs())?;
            (brows, farthest(brows)?)
        }
        Name::MentoVertical => {
            let chin = find(head_and_neck, (125, 155), &|p| -p.dot(Vec3::new(0.0, -0.8, 0.6)))?;
            (chin, farthest(chin)?)
        }
    };
    Some(Diameter { name, ends: [baby.head.point(from), baby.head.point(to)] })
}

/// A point of the profile in the head's midline, in the head's frame.
fn profile(baby: &PosedBaby, shape: &Shape, degrees: f32) -> Option<Vec3> {
    let (sin, cos) = libm::sincosf(degrees.to_radians());
    let outward = baby.head.direction(Vec3::new(0.0, cos, sin));
    let p = shape.ray(baby.head.origin + outward * OUT, -outward, OUT)?;
    Some(baby.head.local(p))
}
