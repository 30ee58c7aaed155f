//! The diameter with which a head presents. In: a posed baby. Out: its name, its two ends on the posed surface, and what
//! handbooks print for it at term.

use super::baby::PosedBaby;
use super::form::landmark::Landmark;
use super::shape::Piece;
use crate::exam::Attitude;
use crate::units::{BabySide, Vec3};

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
pub fn presenting(baby: &PosedBaby) -> Diameter {
    let name = Name::of(baby.posture.attitude);
    let at = |landmark: Landmark| baby.shape.landmark(landmark, BabySide::Left);
    let ends = match name {
        Name::SuboccipitoBregmatic => [at(Landmark::Suboccipital), at(Landmark::Bregma)],
        Name::SubmentoBregmatic => [at(Landmark::Submental), at(Landmark::Bregma)],
        Name::OccipitoFrontal => [at(Landmark::Glabella), farthest(baby, at(Landmark::Glabella))],
        Name::MentoVertical => [at(Landmark::Chin), farthest(baby, at(Landmark::Chin))],
    };
    Diameter { name, ends }
}

/// The point of the head's midline that lies farthest from one of its points.
fn farthest(baby: &PosedBaby, from: Vec3) -> Vec3 {
    const BESIDE: f32 = 0.5;
    let head = baby.shape.piece(Piece::Skull).vertices();
    let midline = head.into_iter().filter(|p| baby.head.local(*p).x.abs() < BESIDE);
    midline.max_by(|p, q| (*p - from).length().total_cmp(&(*q - from).length())).unwrap_or(from)
}
