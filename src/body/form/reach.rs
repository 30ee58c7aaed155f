//! Limbs led to a place. In: a posture and a place in the skin's frame. Out: the posture with one hand or foot there.

use super::body::Body;
use super::bone::{CHEST, Limb, NECK, ROOT, index, limb, sign};
use super::posture::{Posture, Within};
use super::turn::{Turn, angle};
use crate::units::{BabySide, Vec3};

/// How far beyond the wrist the middle of a closed hand lies, and beyond the ankle the middle of a foot, cm at term.
const HAND: f32 = 1.6;
const FOOT: f32 = 2.4;
/// What a knee bends at most and at least, degrees.
const KNEE: (f32, f32) = (6.0, 138.0);

/// A limb that can be led somewhere.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Led {
    /// The hand of a side.
    Hand(BabySide),
    /// The foot of a side.
    Foot(BabySide),
}

/// How far a limb reaches, and from where, in the skin's frame.
pub fn reach(body: &Body, posture: &Posture, led: Led) -> (Vec3, f32) {
    let bones = body.bones(posture);
    let at = |side, l| bones[limb(side, l)].origin;
    match led {
        Led::Hand(side) => {
            let (a, b, c) = (at(side, Limb::UpperArm), at(side, Limb::Forearm), at(side, Limb::Wrist));
            (a, (b - a).length() + (c - b).length() + HAND * body.sizes.forearm)
        }
        Led::Foot(side) => {
            let (a, b, c) = (at(side, Limb::Thigh), at(side, Limb::Shin), at(side, Limb::Foot));
            (a, (b - a).length() + (c - b).length() + 0.5 * FOOT * body.sizes.foot)
        }
    }
}

/// The posture with the middle of a hand or foot at `place`, or as near as the limb reaches.
pub fn led(body: &Body, posture: &Posture, led: Led, place: Vec3) -> Posture {
    let mut p = *posture;
    match led {
        Led::Hand(side) => hand(body, &mut p, side, place),
        // Twice: the foot turns with the leg, and its middle with it.
        Led::Foot(side) => (0..2).for_each(|_| foot(body, &mut p, side, place)),
    }
    p
}

fn hand(body: &Body, p: &mut Posture, side: BabySide, place: Vec3) {
    let bones = body.bones(p);
    let (chest, neck) = (bones[CHEST].turn, bones[NECK].origin);
    let shoulder = bones[limb(side, Limb::UpperArm)].origin;
    let outward = |v: Vec3| Vec3::new(sign(side) * v.x, v.y, v.z);
    // The hand goes on as the arm points, a little less the farther it has to bend.
    let way = (place - shoulder).normalized();
    let wrist = place - way * (HAND * body.sizes.forearm);
    let arm = &mut p.arms[index(side)];
    arm.within = Within::Chest;
    arm.wrist = outward(chest.back(wrist - neck)) * (1.0 / body.sizes.length);
    arm.hand = outward(chest.back(way));
    arm.palm = Vec3::new(-0.6, -0.2, -1.0);
}

fn foot(body: &Body, p: &mut Posture, side: BabySide, place: Vec3) {
    let s = sign(side);
    let bones = body.bones(p);
    let at = |l| bones[limb(side, l)].origin;
    let (hip, knee, ankle) = (at(Limb::Thigh), at(Limb::Shin), at(Limb::Foot));
    let (a, b) = ((knee - hip).length(), (ankle - knee).length());
    let toes = (bones[limb(side, Limb::Toes)].origin - ankle).normalized();
    let target = place - toes * (FOOT * 0.5 * body.sizes.foot);
    let way = target - hip;
    // As straight and as bent as a knee may be.
    let far = |degrees: f32| {
        let cos = libm::cosf(degrees.to_radians());
        (a * a + b * b + 2.0 * a * b * cos).max(0.0).sqrt()
    };
    let size = way.length().clamp(far(KNEE.1), far(KNEE.0));
    let way = way.normalized();
    let cos = ((a * a + size * size - b * b) / (2.0 * a * size)).clamp(-1.0, 1.0);
    let sin = (1.0 - cos * cos).max(0.0).sqrt();
    // The knee stays on the side where it was.
    let pole = knee - hip;
    let pole = (pole - way * pole.dot(way)).normalized();
    let new_knee = hip + (way * cos + pole * sin) * a;
    let new_ankle = hip + way * size;

    let pelvis: Turn = bones[ROOT].turn;
    let along = pelvis.back((new_knee - hip).normalized());
    let below = pelvis.back((new_ankle - new_knee).normalized());
    let leg = &mut p.legs[index(side)];
    leg.abduction = libm::asinf((s * along.x).clamp(-1.0, 1.0)).to_degrees();
    leg.flex = libm::atan2f(along.z, -along.y).to_degrees();
    leg.knee = angle(along, below);
    let x = Vec3::new(1.0, 0.0, 0.0);
    let level = (x - along * x.dot(along)).normalized();
    let hinge = along.cross(below).normalized();
    let turned = libm::atan2f(level.cross(hinge).dot(along), level.dot(hinge)).to_degrees();
    leg.rotation = -s * turned;
}
