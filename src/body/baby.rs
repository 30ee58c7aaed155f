//! One posed baby. In: where its head and back point, attitude, legs, size, near side, origin. Out: its
//! surface, the fine curves on it, and its landmarks, all in mother space.

use super::attitude::{self, Spine};
use super::curves::Curve;
use super::felt;
use super::form::posture::Posture as Held;
use super::frame::Frame;
use super::measures::Measures;
use super::modeller::Modeller;
use super::pack::Pack;
use super::posed;
use super::reach::Around;
use super::shape::Shape;
use super::{head, limbs, trunk};
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
    /// Curl of the spine, see `attitude::CURL`.
    pub curl: f32,
    /// How far folded legs stretch towards the fundus when even the loosest curl leaves room: 0 to 1.
    pub stretch: f32,
    /// Sizes.
    pub measures: Measures,
    /// When the baby is seen square on: the mother's side on which its near side lies.
    pub favour: MotherSide,
    /// Where limbs were felt, in baby space: their ends are drawn there.
    pub felt: felt::Drawn,
}

impl Posture {
    /// The baby's frame at `origin`: y towards the head, z away from the back.
    pub fn frame(&self, origin: Vec3) -> Frame {
        Frame::from_up_front(self.up, -self.back, origin)
    }
    /// The side nearer the viewer; seen square on, the side that lies on the favoured side of the mother.
    pub fn near(&self) -> BabySide {
        let left = self.frame(Vec3::default()).x;
        let toward = if left.z.abs() > 1e-3 { left.z } else { left.x * self.favour.sign() };
        if toward > 0.0 { BabySide::Left } else { BabySide::Right }
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
    pub arms: [limbs::Arm; 2],
    /// Legs in baby space, left first.
    pub legs: [limbs::Leg; 2],
    /// Its surface.
    pub shape: Shape,
    /// Fine lines on the surface; empty until `with_curves`.
    pub curves: Vec<Curve>,
    /// What it was posed from.
    pub posture: Posture,
    /// How the one form holds itself, as it was made.
    pub held: Option<Held>,
}

/// Poses the baby with its origin (between the hips) at the origin of mother space; without its fine curves, and
/// not yet ready to be met by rays.
pub fn pose(posture: &Posture) -> PosedBaby {
    if cfg!(feature = "human-form") {
        return posed::pose(posture);
    }
    let body = posture.frame(Vec3::default());
    let k = &posture.measures;
    // The face is turned a little to the viewer, or the hands would hide it.
    let turns = matches!(posture.attitude, Attitude::Flexed | Attitude::Deflexed);
    let turn = if turns { 20.0 * body.x.z } else { 0.0 };
    let spine = attitude::spine(posture.attitude, posture.curl, turn, k);
    let near = posture.near();
    let mut m = Modeller::new(body);
    m.scale = k.girth;
    trunk::forms(&mut m, &spine, near, k);
    let head = spine.head.within(&body);
    let start = m.forms.len();
    (m.frame, m.scale) = (head, k.head);
    head::forms(&mut m, near, k.head);
    let head_forms = start..m.forms.len();
    (m.frame, m.scale) = (body, k.flesh);
    let how = limbs::Manner {
        attitude: posture.attitude,
        legs: posture.legs,
        near,
        profile: body.x.z.abs(),
        away: body.z.z < -0.3 && body.x.z.abs() > 0.3,
        // Folded legs give way only towards the fundus: below a bottom that leads, feet would read as a footling.
        loose: if posture.up.y < -0.9 { attitude::looseness(posture.curl) } else { 0.0 },
        stretch: posture.stretch,
        felt: posture.felt,
    };
    let around = Around { body: &body, pack: Pack::of(&m.forms) };
    let arms = limbs::arms(&spine, &how, k, &around);
    let legs = limbs::legs(&spine, &how, k, &around);
    limbs::roots(&mut m, &arms, &legs, near, k);
    limbs::forms(&mut m, &arms, &legs, k, 1);
    let shape = Shape::of_forms(m.forms, head_forms);
    PosedBaby { body, head, spine, arms, legs, shape, curves: vec![], posture: *posture, held: None }
}

impl PosedBaby {
    /// The same baby, ready to be met by rays.
    pub fn finished(mut self) -> Self {
        self.shape.finish();
        self
    }

    /// The same baby with the fine curves laid on its surface.
    pub fn with_curves(mut self) -> Self {
        let k = &self.posture.measures;
        if let Shape::Mesh(mesh) = &self.shape {
            self.curves = mesh.features(&self.head);
            return self;
        }
        let mut core = Pack::default();
        core.fill(self.shape.forms().iter().filter(|f| f.group == 0));
        let back = matches!(self.posture.attitude, Attitude::Brow | Attitude::Face);
        self.curves = head::curves(&Pack::of(self.shape.head_forms()), &self.head, back, k.head);
        self.curves.extend(trunk::curves(&core, &self.body, &self.spine, k));
        self.curves.extend(limbs::curves(self.shape.forms(), &self.body, &self.arms, &self.legs));
        self
    }

    /// Its head's frame with the origin between the eyes, in mother space.
    pub fn face(&self) -> Frame {
        match &self.shape {
            Shape::Mesh(mesh) => Frame { origin: mesh.eyes(), ..self.head },
            Shape::Forms(_) => {
                Frame { origin: self.head.point(head::EYES * self.posture.measures.head), ..self.head }
            }
        }
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
