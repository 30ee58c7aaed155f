//! The bones, posed. In: the joints of a body of some size, and a posture. Out: where each bone lies and how it turned.
//!
//! The pelvis stays; spine, neck and head follow one another; then the legs; then the arms, which seek their places.

use super::bone::{self, BONES, CHEST, HEAD, Limb, NECK, ROOT, SPINE, limb, sign};
use super::posture::{Leg, Posture};
use super::turn::Turn;
use super::{arm, hand};
use crate::units::{BabySide, Vec3};

/// The axes.
pub const X: Vec3 = Vec3::new(1.0, 0.0, 0.0);
const Y: Vec3 = Vec3::new(0.0, 1.0, 0.0);
const Z: Vec3 = Vec3::new(0.0, 0.0, 1.0);

/// Both sides, left first.
pub const SIDES: [BabySide; 2] = [BabySide::Left, BabySide::Right];

/// A posed bone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoneAt {
    /// How it turned from rest.
    pub turn: Turn,
    /// Where its joint lies.
    pub origin: Vec3,
}

/// The joints of a body at rest.
#[derive(Clone, Debug)]
pub struct Joints {
    /// What each bone hangs on.
    pub parent: Vec<Option<usize>>,
    /// Where each bone begins.
    pub head: Vec<Vec3>,
    /// Where each bone ends.
    pub tail: Vec<Vec3>,
}

impl Joints {
    /// From the joint of `a` to that of `b`.
    pub fn from_to(&self, a: usize, b: usize) -> Vec3 {
        self.head[b] - self.head[a]
    }
}

/// Bones being posed.
pub struct Posing<'a> {
    /// The joints at rest.
    pub joints: &'a Joints,
    /// The bones so far.
    pub bones: Vec<BoneAt>,
}

impl Posing<'_> {
    /// Turns a bone whose parent is posed.
    pub fn set(&mut self, bone: usize, turn: Turn) {
        let origin = match self.joints.parent[bone] {
            Some(p) => self.bones[p].origin + self.bones[p].turn.of(self.joints.from_to(p, bone)),
            None => self.joints.head[bone],
        };
        self.bones[bone] = BoneAt { turn, origin };
    }
}

/// Poses the bones. `reach`: how large head and trunk are against the term body's; the arms' places go with them.
pub fn pose(joints: &Joints, posture: &Posture, reach: [f32; 2]) -> Vec<BoneAt> {
    let still = BoneAt { turn: Turn::NONE, origin: Vec3::default() };
    let mut p = Posing { joints, bones: vec![still; BONES] };
    p.set(ROOT, Turn::NONE);
    let mut now = Turn::NONE;
    for (k, bend) in posture.spine.iter().enumerate() {
        now = now.after(&Turn::about(X, *bend));
        now = now.after(&Turn::about(Z, posture.side / 5.0)).after(&Turn::about(Y, posture.twist / 5.0));
        p.set(SPINE + k, now);
    }
    let chest = now;
    debug_assert_eq!(SPINE + 4, CHEST);
    for (k, bend) in posture.neck.iter().enumerate() {
        now = now.after(&Turn::about(X, *bend));
        now = now
            .after(&Turn::about(Y, posture.head_turn / 4.0))
            .after(&Turn::about(Z, posture.head_tilt / 4.0));
        p.set(NECK + k, now);
    }
    debug_assert_eq!(NECK + 3, HEAD);
    for side in SIDES {
        leg(&mut p, side, posture.leg(side));
        let wrist = arm::pose(&mut p, side, posture.arm(side), &chest, &now, reach);
        hand::pose(&mut p, side, posture.arm(side), &wrist);
    }
    p.bones
}

fn leg(p: &mut Posing, side: BabySide, q: &Leg) {
    let s = sign(side);
    let (thigh, shin, foot) = (limb(side, Limb::Thigh), limb(side, Limb::Shin), limb(side, Limb::Foot));
    let ((fs, fc), (abs, abc)) =
        (libm::sincosf(q.flex.to_radians()), libm::sincosf(q.abduction.to_radians()));
    let along = Vec3::new(s * abs, -fc * abc, fs * abc);
    let hinge = (X - along * X.dot(along)).normalized();
    let hinge = Turn::about(along, -s * q.rotation).of(hinge);
    let (down, lower) = (p.joints.from_to(thigh, shin), p.joints.from_to(shin, foot));
    let whole = Turn::along(along, hinge).after(&Turn::along(down, X).inverse());
    half_twisted(p, thigh, limb(side, Limb::ThighEnd), down, along, &Turn::NONE, &whole);
    let below = Turn::about(hinge, q.knee).of(along);
    let turned = Turn::between(whole.of(lower), below).after(&whole);
    p.set(shin, turned);
    p.set(limb(side, Limb::ShinEnd), turned);
    let (across, front) = (turned.of(X), turned.of(Z));
    let sole = Turn::about(front, s * q.inversion).after(&Turn::about(across, q.plantar)).after(&turned);
    p.set(foot, sole);
    p.set(limb(side, Limb::Toes), Turn::about(sole.of(X), q.toes).after(&sole));
}

/// Sets both halves of a bone: the upper takes the swing and half of the twist, the lower all of it.
pub fn half_twisted(
    p: &mut Posing,
    upper: usize,
    lower: usize,
    rest: Vec3,
    along: Vec3,
    from: &Turn,
    whole: &Turn,
) {
    let swing = Turn::between(from.of(rest), along).after(from);
    let twist = whole.after(&swing.inverse()).twist(along);
    p.set(upper, Turn::about(along, twist * 0.5).after(&swing));
    p.set(lower, *whole);
}

/// The number of a bone of the hand's frame: where the fingers point and where the palm looks, at rest.
pub fn hand_at_rest(joints: &Joints, side: BabySide) -> (Vec3, Vec3) {
    let wrist = limb(side, Limb::Wrist);
    let middle = bone::finger(side, 2, 0);
    let along = joints.from_to(wrist, middle).normalized();
    let across = joints.from_to(bone::finger(side, 4, 0), bone::finger(side, 1, 0));
    let normal = along.cross(across);
    let end = joints.tail[bone::finger(side, 2, 2)] - joints.head[middle];
    let first = joints.from_to(middle, bone::finger(side, 2, 1));
    let bend = end.normalized() - first.normalized();
    let normal = if normal.dot(bend) < 0.0 { -normal } else { normal };
    (along, (normal - along * normal.dot(along)).normalized())
}
