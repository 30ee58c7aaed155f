//! One posed baby of the one form. In: how it lies (directions of head and back, attitude, legs, curl, sizes). Out: drafts
//! to search with, which are bones and a few points they carry; and the posed baby, whose skin is made once.
//!
//! It is always made as if its back (crosswise: its head) were to her left, then reflected with sides changed over.

use super::baby::{PosedBaby, Posture};
use super::felt;
use super::form::body::{Body, Sizes, Skin};
use super::form::bone::{CHEST, HEAD, Limb, NECK, ROOT, SPINE, limb};
use super::form::landmark::Landmark;
use super::form::posture::Posture as Held;
use super::form::reach::{Led, led};
use super::form::shared::shared;
use super::form::skeleton::BoneAt;
use super::frame::Frame;
use super::hold::{self, hold};
use super::joints::{Arm, Leg, Spine};
use super::part::Region;
use super::shape::Shape;
use crate::exam::{Footling, Legs};
use crate::units::{BabySide, MotherSide, Vec3};

/// Every how many vertices one is carried to search with.
const SPARSE: usize = 7;

/// A baby of some size that is about to be posed.
pub struct Poser {
    body: Body<'static>,
    /// As it is made: its back, or crosswise its head, to her left.
    made: Posture,
    mirrored: bool,
    /// Numbers of the vertices that are carried.
    carried: Vec<u16>,
}

/// Bones with the points they carry, in mother space as the baby is made, its origin at zero.
pub struct Draft {
    /// How the baby holds itself.
    pub held: Held,
    /// Points of the head.
    pub head: Vec<Vec3>,
    /// Points of the trunk.
    pub trunk: Vec<Vec3>,
    /// Points of the limbs.
    pub limbs: Vec<Vec3>,
}

impl Draft {
    /// How far it reaches along a direction.
    pub fn reach(&self, direction: Vec3) -> f32 {
        [&self.head, &self.trunk, &self.limbs]
            .map(|points| farthest(points, direction))
            .into_iter()
            .fold(-1e9, f32::max)
    }
}

/// How far points reach along a direction.
pub fn farthest(points: &[Vec3], direction: Vec3) -> f32 {
    points.iter().map(|p| p.dot(direction)).fold(-1e9, f32::max)
}

/// Whether a baby is made as the reflection of one whose back, or crosswise its head, is to her left.
pub fn is_mirrored(posture: &Posture) -> bool {
    let toward = if posture.up.x.abs() > 0.3 {
        posture.up.x
    } else if posture.back.x.abs() > 1e-3 {
        posture.back.x
    } else {
        posture.favour.sign()
    };
    toward < 0.0
}

/// The mirror image of a direction or a place.
pub fn reflected(v: Vec3) -> Vec3 {
    Vec3::new(-v.x, v.y, v.z)
}

/// The posture of the mirror image.
fn reflection(p: &Posture) -> Posture {
    let legs = match p.legs {
        Legs::Footling(Footling::Left) => Legs::Footling(Footling::Right),
        Legs::Footling(Footling::Right) => Legs::Footling(Footling::Left),
        other => other,
    };
    Posture {
        up: reflected(p.up),
        back: reflected(p.back),
        legs,
        favour: match p.favour {
            MotherSide::Left => MotherSide::Right,
            MotherSide::Right => MotherSide::Left,
        },
        ..*p
    }
}

/// The side nearer the viewer.
pub fn near(posture: &Posture) -> BabySide {
    if is_mirrored(posture) { hold::near(&reflection(posture)).opposite() } else { hold::near(posture) }
}

impl Poser {
    /// A baby of this posture's sizes.
    pub fn new(posture: &Posture) -> Self {
        let rest = &shared().rest;
        let mirrored = is_mirrored(posture);
        let made = if mirrored { reflection(posture) } else { *posture };
        let carried = (0..rest.points.len()).step_by(SPARSE).map(|v| v as u16).collect();
        Poser { body: Body::new(rest, &Sizes::of(&posture.measures)), made, mirrored, carried }
    }

    /// Whether the baby is the reflection of what is made.
    pub fn is_mirrored(&self) -> bool {
        self.mirrored
    }

    /// The posture as it is made.
    pub fn made(&self) -> &Posture {
        &self.made
    }

    /// A draft of this posture (as it is made).
    pub fn draft(&self, made: &Posture, held: &Held) -> Draft {
        let points = self.body.carried(&self.body.bones(held), &self.carried);
        self.sorted(made, held, self.carried.iter().map(|v| usize::from(*v)).zip(&points))
    }

    /// The same with every point of a skin.
    pub fn draft_of(&self, made: &Posture, held: &Held, skin: &[[f32; 3]]) -> Draft {
        self.sorted(made, held, skin.iter().enumerate())
    }

    fn sorted<'a>(
        &self,
        made: &Posture,
        held: &Held,
        points: impl Iterator<Item = (usize, &'a [f32; 3])>,
    ) -> Draft {
        let (frame, regions) = (made.frame(Vec3::default()), &shared().regions);
        let mut draft = Draft { held: *held, head: vec![], trunk: vec![], limbs: vec![] };
        for (v, [x, y, z]) in points {
            let p = frame.point(Vec3::new(*x, *y, *z));
            match regions[v] {
                Region::Head => draft.head.push(p),
                Region::Trunk => draft.trunk.push(p),
                Region::Arm(_) | Region::Leg(_) => draft.limbs.push(p),
            }
        }
        draft
    }

    /// The same posture with hands and feet at places given in the space of the baby as it is in the end.
    pub fn reaching(&self, held: &Held, felt: &felt::Drawn) -> Held {
        let felt = if self.mirrored {
            [felt[1], felt[0], felt[3], felt[2]].map(|place| place.map(reflected))
        } else {
            *felt
        };
        let mut out = *held;
        for side in BabySide::BOTH {
            for (limb, place) in
                [(Led::Hand(side), felt[side.index()]), (Led::Foot(side), felt[2 + side.index()])]
            {
                if let Some(place) = place {
                    out = led(&self.body, &out, limb, place);
                }
            }
        }
        out
    }

    /// The form, sized.
    pub fn body(&self) -> &Body<'static> {
        &self.body
    }

    /// The skin of this posture as the bones carry it, without relaxation.
    pub fn quick(&self, held: &Held) -> Skin {
        self.body.quick(held)
    }

    /// The skin of this posture.
    pub fn skin(&self, held: &Held) -> Skin {
        self.body.skin(held)
    }

    /// The baby with this skin, its origin at zero; in mother space as it is.
    pub fn baby(&self, made: &Posture, held: &Held, skin: &Skin) -> PosedBaby {
        let rest = &shared().rest;
        let frame = made.frame(Vec3::default());
        let k = &made.measures;
        let own = Joints { bones: &skin.bones, mirrored: self.mirrored };
        // Landmarks in the skin's frame, by the side the baby has in the end.
        let mark = |landmark: Landmark, side: BabySide| {
            let made_side = if self.mirrored { side.opposite() } else { side };
            own.place(skin.landmark(rest, landmark, made_side))
        };
        let middle = |landmark: Landmark| mark(landmark, BabySide::Left);
        let both =
            |landmark: Landmark| mark(landmark, BabySide::Left).lerp(mark(landmark, BabySide::Right), 0.5);
        let at = |frame: Frame, origin: Vec3| Frame { origin, ..frame };
        let pelvis = own.frame(ROOT);
        let chest = own.frame(CHEST);
        let shoulders = own
            .origin(limb(BabySide::Left, Limb::UpperArm))
            .lerp(own.origin(limb(BabySide::Right, Limb::UpperArm)), 0.5);
        let head = own.frame(HEAD);
        let along = |v: Vec3| Vec3::new(v.dot(head.x), v.dot(head.y), v.dot(head.z));
        let (top, front, back) = (
            along(middle(Landmark::Vertex)),
            along(middle(Landmark::Glabella)),
            along(middle(Landmark::Occiput)),
        );
        let centre =
            head.direction(Vec3::new(top.x, top.y - 5.2 * k.head, 0.5 * (front.z + back.z) + 0.35 * k.head));
        let spine = Spine {
            pelvis: at(pelvis, pelvis.direction(Vec3::new(0.0, 0.4, -1.1) * k.length)),
            belly: at(own.frame(SPINE + 1), middle(Landmark::Navel).lerp(middle(Landmark::MidBack), 0.5)),
            chest: at(chest, middle(Landmark::Sternum).lerp(both(Landmark::Blade), 0.5)),
            shoulders: at(chest, shoulders),
            neck: own.origin(NECK + 2),
            head: at(head, centre),
        };
        let arms = BabySide::BOTH.map(|side| {
            let bone = |b: Limb| own.origin(own.limb(side, b));
            let wrist = bone(Limb::Wrist);
            let fingers = (mark(Landmark::Fingertip, side) - wrist).normalized();
            let palm = mark(Landmark::Palm, side) - mark(Landmark::HandBack, side);
            Arm {
                shoulder: bone(Limb::UpperArm),
                elbow: bone(Limb::Forearm),
                wrist,
                fingers,
                palm: (palm - fingers * palm.dot(fingers)).normalized(),
            }
        });
        let legs = BabySide::BOTH.map(|side| {
            let bone = |b: Limb| own.origin(own.limb(side, b));
            let ankle = bone(Limb::Foot);
            let toes = (mark(Landmark::Toe, side) - mark(Landmark::Heel, side)).normalized();
            let sole = mark(Landmark::Sole, side) - ankle;
            Leg {
                hip: bone(Limb::Thigh),
                knee: bone(Limb::Shin),
                ankle,
                toes,
                sole: (sole - toes * sole.dot(toes)).normalized(),
            }
        });
        let posture = if self.mirrored { reflection(made) } else { *made };
        let body = posture.frame(Vec3::default());
        PosedBaby {
            body,
            head: spine.head.within(&body),
            spine,
            arms,
            legs,
            shape: Shape::new(&skin.points, &frame, self.mirrored),
            curves: vec![],
            posture,
            held: *held,
        }
    }
}

/// Posed bones in the frame of the baby as it is in the end.
struct Joints<'a> {
    bones: &'a [BoneAt],
    mirrored: bool,
}

impl Joints<'_> {
    fn place(&self, p: Vec3) -> Vec3 {
        if self.mirrored { reflected(p) } else { p }
    }
    fn origin(&self, bone: usize) -> Vec3 {
        self.place(self.bones[bone].origin)
    }
    /// The axes of a bone of the midline.
    fn frame(&self, bone: usize) -> Frame {
        let BoneAt { turn, origin } = self.bones[bone];
        let x = if self.mirrored { -self.place(turn.x) } else { turn.x };
        Frame { x, y: self.place(turn.y), z: self.place(turn.z), origin: self.place(origin) }
    }
    /// The number of a limb's bone as it was made.
    fn limb(&self, side: BabySide, bone: Limb) -> usize {
        limb(if self.mirrored { side.opposite() } else { side }, bone)
    }
}

/// A baby of this posture, its origin at zero.
pub fn pose(posture: &Posture) -> PosedBaby {
    let poser = Poser::new(posture);
    let (made, held) = (*poser.made(), hold(poser.made()));
    poser.baby(&made, &held, &poser.skin(&held))
}
