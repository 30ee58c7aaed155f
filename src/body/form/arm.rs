//! An arm that seeks its place. In: where the wrist goes, where the elbow points, how the hand lies. Out: its bones.

use super::bone::{HEAD, Limb, NECK, limb, sign};
use super::posture::{Arm, Within};
use super::skeleton::{Posing, half_twisted, hand_at_rest};
use super::turn::{Turn, angle};
use crate::units::{BabySide, Vec3};

/// How far the shoulders are drawn forwards and up, degrees.
const FORWARDS: f32 = 18.0;
const UP: f32 = 6.0;
/// The most that a wrist bends, and that a forearm twists, degrees.
const WRIST: f32 = 50.0;
const TWIST: f32 = 110.0;

/// Poses the arm but for its fingers; the hand's turn.
pub fn pose(p: &mut Posing, side: BabySide, q: &Arm, chest: &Turn, head: &Turn, reach: [f32; 2]) -> Turn {
    let s = sign(side);
    let id = |bone| limb(side, bone);
    let drawn = |k: f32| {
        chest
            .after(&Turn::about(Vec3::new(0.0, 1.0, 0.0), -s * FORWARDS * k))
            .after(&Turn::about(Vec3::new(0.0, 0.0, 1.0), s * UP * k))
    };
    p.set(id(Limb::Clavicle), drawn(0.5));
    let girdle = drawn(1.0);
    p.set(id(Limb::Shoulder), girdle);
    let joints = p.joints;
    let shoulder = p.bones[id(Limb::Shoulder)].origin
        + girdle.of(joints.from_to(id(Limb::Shoulder), id(Limb::UpperArm)));
    let outward = |v: Vec3| Vec3::new(s * v.x, v.y, v.z);
    let (frame, origin, scale) = match q.within {
        Within::Head => (head, p.bones[HEAD].origin, reach[0]),
        Within::Chest => (chest, p.bones[NECK].origin, reach[1]),
    };
    let target = origin + frame.of(outward(q.wrist) * scale);

    let (upper, lower) = (
        joints.from_to(id(Limb::UpperArm), id(Limb::Forearm)),
        joints.from_to(id(Limb::Forearm), id(Limb::Wrist)),
    );
    let (a, b) = (upper.length(), lower.length());
    let way = target - shoulder;
    let far = way.length().clamp((a - b).abs() + 0.8 * scale, (a + b) * 0.995);
    let way = way.normalized();
    let cos = (a * a + far * far - b * b) / (2.0 * a * far);
    let sin = (1.0 - cos * cos).max(0.0).sqrt();
    let pole = chest.of(outward(q.pole));
    let pole = (pole - way * pole.dot(way)).normalized();
    let elbow = shoulder + (way * cos + pole * sin) * a;
    let wrist = shoulder + way * far;

    let (along, below) = ((elbow - shoulder).normalized(), (wrist - elbow).normalized());
    let hinge = along.cross(below).normalized();
    let whole = Turn::along(along, hinge).after(&Turn::along(upper, upper.cross(lower)).inverse());
    half_twisted(p, id(Limb::UpperArm), id(Limb::UpperArmEnd), upper, along, &girdle, &whole);
    let fore = Turn::between(whole.of(lower), below).after(&whole);

    let (fingers, palm) = hand_at_rest(joints, side);
    let mut point = frame.of(outward(q.hand)).normalized();
    if angle(point, below) > WRIST {
        point = Turn::about(below.cross(point), WRIST).of(below);
    }
    let wanted = Turn::along(point, frame.of(outward(q.palm))).after(&Turn::along(fingers, palm).inverse());
    let swung = Turn::between(fore.of(fingers), point).after(&fore);
    let twist = wanted.after(&swung.inverse()).twist(point).clamp(-TWIST, TWIST);
    let hand = Turn::about(point, twist).after(&swung);
    p.set(id(Limb::Forearm), Turn::about(below, twist * 0.35).after(&fore));
    p.set(id(Limb::ForearmEnd), Turn::about(below, twist * 0.8).after(&fore));
    p.set(id(Limb::Wrist), hand);
    hand
}
