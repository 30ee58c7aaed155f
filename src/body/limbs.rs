//! Arms and legs. In: the spine, which side is nearer the viewer, how the legs lie. Out: joints by two-bone inverse
//! kinematics, and the forms of arms, hands, legs and feet.
//!
//! Arms and hands are the artist's: palpation does not tell them. They are laid so that the face stays free.

use super::attitude::Spine;
use super::curves::{Curve, Ink, laid};
use super::felt;
use super::frame::Frame;
use super::measures::Measures;
use super::modeller::Modeller;
use super::pack::Pack;
use super::part::Part;
use super::reach::{Around, DENT, two_bones};
use super::surface::Form;
use crate::exam::{Attitude, Footling, Legs};
use crate::units::{BabySide, Vec3};

/// Bone lengths of the term baby between the joints, cm.
///
/// Source: see `measures`; medians at 40 weeks are humerus 6.5, radius 5.4, femur 7.2, tibia 6.5 cm.
mod bone {
    pub const UPPER_ARM: f32 = 6.5;
    pub const FOREARM: f32 = 5.42;
    pub const THIGH: f32 = 7.3;
    pub const SHIN: f32 = 6.45;
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
    /// Bend of the two finger joints, degrees.
    pub curl: [f32; 2],
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

/// What decides how the limbs lie, apart from the spine.
#[derive(Clone, Copy, Debug)]
pub struct Manner {
    /// How the head is bent.
    pub attitude: Attitude,
    /// How the legs lie.
    pub legs: Legs,
    /// The side turned to the viewer.
    pub near: BabySide,
    /// 0 when the baby is seen square on, 1 in pure profile.
    pub profile: f32,
    /// Whether the back is turned to the viewer, at a slant.
    pub away: bool,
    /// 0 to 1: how far folded legs give way when there is room below the bottom.
    pub loose: f32,
    /// 0 to 1: how far folded legs stretch, when there is room beyond that.
    pub stretch: f32,
    /// Where limbs were felt: the ends are drawn there.
    pub felt: felt::Drawn,
}

/// Both arms, left first; `around`: trunk and head, which they do not pass through.
pub fn arms(spine: &Spine, how: &Manner, m: &Measures, around: &Around) -> [Arm; 2] {
    BabySide::BOTH.map(|side| {
        let s = side.sign();
        let chest =
            |x: f32, y: f32, z: f32| spine.chest.point(Vec3::new(x * m.girth, y * m.length, z * m.girth));
        let shoulder = chest(4.1 * s, 1.9, 2.2);
        let bones = (bone::UPPER_ARM * m.humerus, bone::FOREARM * m.radius);
        let free_face = matches!(how.attitude, Attitude::Flexed | Attitude::Deflexed);
        // Targets in the chest's frame, whose origin is the middle of the chest.
        let low = Arm {
            shoulder,
            elbow: shoulder,
            wrist: chest(1.5 * s, -0.7, 6.7),
            fingers: Vec3::new(-0.95 * s, 0.22, 0.1),
            palm: Vec3::new(-0.05 * s, -0.25, -1.0),
            curl: [10.0, 30.0],
        };
        let (mut arm, pole) = if how.legs == Legs::Frank {
            // Between the legs that are laid up.
            let wrist = chest(1.7 * s, -3.2, 6.2);
            let arm = Arm { wrist, fingers: Vec3::new(-0.75 * s, 0.6, 0.1), ..low };
            (arm, Vec3::new(0.7 * s, -1.0, -0.1))
        } else if side == how.near && how.away {
            // Before the chin, where forearm and hand are seen beyond the body.
            let arm = Arm {
                wrist: chest(3.0 * s, 0.4, 8.6),
                fingers: Vec3::new(-0.6 * s, 0.7, 0.25),
                palm: Vec3::new(-0.5 * s, -0.3, -0.8),
                curl: [18.0, 40.0],
                ..low
            };
            (arm, Vec3::new(0.7 * s, -1.0, 0.1))
        } else if side == how.near || !free_face {
            let mut arm = low;
            if side != how.near {
                arm.wrist = chest(2.1 * s, 1.1, 6.6);
            }
            (arm, Vec3::new(0.75 * s, -1.0, 0.0))
        } else if how.profile > 0.72 {
            // The far hand under the chin.
            let arm = Arm {
                wrist: chest(2.7 * s, 1.5, 8.6),
                fingers: Vec3::new(-0.75 * s, 0.55, 0.0),
                palm: Vec3::new(-0.3 * s, -0.2, -0.9),
                curl: [30.0, 85.0],
                ..low
            };
            (arm, Vec3::new(0.8 * s, -0.8, 0.2))
        } else {
            // The far hand beside the cheek.
            let head = &spine.head;
            let arm = Arm {
                wrist: head.point(Vec3::new(4.6 * s, -6.3, 5.2) * m.head),
                fingers: head.direction(Vec3::new(-0.1 * s, 1.0, -0.1)),
                palm: head.direction(Vec3::new(-s, 0.1, -0.35)),
                curl: [24.0, 60.0],
                ..low
            };
            (arm, Vec3::new(0.6 * s, -1.0, -0.1))
        };
        if let Some(hand) = how.felt[side.index()] {
            let along = (hand - shoulder).normalized();
            arm = Arm { wrist: hand - along * (1.5 * m.radius), fingers: along, ..arm };
        }
        arm.wrist = around.clear(arm.wrist, 1.1 * m.flesh);
        let bend = |wrist: Vec3| around.bend(shoulder, wrist, bones, pole, (1.45 * m.flesh, s));
        (arm.elbow, arm.wrist) = bend(arm.wrist);
        lay_hand(&mut arm, around, how.felt[side.index()].is_some(), m.radius);
        for _ in 0..4 {
            let Some(out) = sunk(&arm, side, around, m.radius) else { break };
            (arm.elbow, arm.wrist) = bend(arm.wrist + out);
        }
        arm
    })
}

/// Lays a hand that is near the skin flat on it. A hand that was `felt` keeps its direction unless it sinks in.
fn lay_hand(arm: &mut Arm, around: &Around, felt: bool, k: f32) {
    let straight = arm.fingers.normalized();
    let palm = arm.wrist + straight * (1.45 * k);
    let (distance, out) = around.outward(palm);
    if distance > if felt { 0.75 } else { 2.0 } * k {
        return;
    }
    let along = (straight - out * straight.dot(out)).normalized();
    arm.palm = -out;
    // Palm, middle and tips of the fingers, and how far off the skin they are to be.
    const OFF: [(f32, f32); 3] = [(1.45, 0.75), (3.0, 0.6), (4.4, 0.75)];
    for tilts in [[0.0, 0.12], [0.25, 0.4], [0.6, 0.8]] {
        let fingers = tilts.map(|tilt| (along + out * tilt).normalized());
        let stand: [f32; 6] =
            around.distances(std::array::from_fn(|i| arm.wrist + fingers[i / 3] * (OFF[i % 3].0 * k)));
        for (fingers, stand) in fingers.into_iter().zip(stand.chunks(3)) {
            arm.fingers = fingers;
            if stand.iter().zip(OFF).all(|(stand, (_, off))| *stand > off * k) {
                return;
            }
        }
    }
}

/// How far palm or fingers sink in deeper than soft flesh gives way, and the way out.
fn sunk(arm: &Arm, side: BabySide, around: &Around, k: f32) -> Option<Vec3> {
    let palm = arm.wrist + arm.fingers.normalized() * (1.45 * k);
    let digits = digits(arm, side, k);
    let points: [Vec3; 16] =
        std::array::from_fn(|i| if i == 0 { palm } else { digits[(i - 1) / 3][(i - 1) % 3] });
    let stand = around.distances(points);
    let sunk = |i: usize| (if i == 0 { 0.8 } else { 0.42 }) * k - stand[i];
    let (depth, at) = (0..16).fold((0.0, 0), |worst, i| if sunk(i) > worst.0 { (sunk(i), i) } else { worst });
    (depth > DENT).then(|| around.outward(points[at]).1 * (depth - DENT + 0.05))
}

/// Both legs, left first. The leg on the near side crosses in front.
pub fn legs(spine: &Spine, how: &Manner, m: &Measures, around: &Around) -> [Leg; 2] {
    let loose = how.loose;
    BabySide::BOTH.map(|side| {
        let s = side.sign();
        let at = |x: f32, y: f32, z: f32| {
            spine.pelvis.origin + Vec3::new(x * m.girth, (y - 0.2) * m.length, (z + 0.1) * m.girth)
        };
        let hip = at(2.4 * s, -0.2, 1.0);
        let bones = (bone::THIGH * m.femur, bone::SHIN * m.tibia);
        let down = match how.legs {
            Legs::Footling(Footling::Both) => true,
            Legs::Footling(Footling::Left) => side == BabySide::Left,
            Legs::Footling(Footling::Right) => side == BabySide::Right,
            Legs::Frank | Legs::Complete => false,
        };
        // The pole draws the knee up and out.
        let (target, pole) = match how.legs {
            // Beside the body when it is seen from before or behind, before it when seen from the side: off the face.
            Legs::Frank if how.profile < 0.4 => (at(7.4 * s, 10.4, 6.0), Vec3::new(-0.2 * s, -1.0, 1.0)),
            Legs::Frank => {
                let y = if how.profile < 0.9 { 2.6 } else { 7.0 };
                (at(4.8 * s, y, 11.3), Vec3::new(0.3 * s, -1.0, 0.6))
            }
            _ if down => (at(2.6 * s, -6.6, 5.0), Vec3::new(0.5 * s, 0.2, 1.0)),
            _ => {
                let z = if side == how.near { 7.9 } else { 5.3 };
                (
                    at(
                        (0.15 + 1.2 * how.stretch) * s,
                        0.3 - 3.6 * loose - 4.6 * how.stretch,
                        z + 0.5 * loose - 1.5 * how.stretch,
                    ),
                    Vec3::new(1.3 * s, 1.0 - 0.4 * loose - 0.5 * how.stretch, 0.3 + 0.4 * loose),
                )
            }
        };
        let target = match how.felt[2 + side.index()] {
            Some(foot) => foot,
            None => target,
        };
        let mut target = around.clear(target, 1.5 * m.flesh);
        let laid = |target: Vec3| {
            let (knee, ankle) = two_bones(hip, target, bones, pole);
            let (thigh, shin) = ((knee - hip).normalized(), (ankle - knee).normalized());
            let forward = match how.legs {
                Legs::Frank => Vec3::new(-0.1 * s, 0.2, -1.0),
                _ if down => Vec3::new(0.1 * s, 0.0, 1.0),
                _ => thigh,
            };
            let forward = (forward - shin * forward.dot(shin)).normalized();
            let point: f32 = if how.legs == Legs::Frank { 22.0 } else { 35.0 };
            let (sin, cos) = libm::sincosf(point.to_radians());
            Leg { hip, knee, ankle, toes: forward * cos + shin * sin, sole: shin * cos - forward * sin }
        };
        let mut leg = laid(target);
        for _ in 0..3 {
            let Some(out) = lift_foot(&mut leg, around, m.foot) else { break };
            target = target + out;
            leg = laid(target);
        }
        leg
    })
}

/// Turns a foot that would sink into the body away from it, at the ankle; what then still sinks in, as the way out.
fn lift_foot(leg: &mut Leg, around: &Around, k: f32) -> Option<Vec3> {
    let (toes, sole) = (leg.toes, leg.sole);
    let away = around.outward(leg.ankle + toes * (2.0 * k)).1;
    // Heel, ball and toes: along the foot, down from the ankle, thickness.
    const OF_FOOT: [(f32, f32, f32); 3] = [(-0.7, 1.1, 1.2), (1.5, 1.3, 1.0), (4.3, 1.8, 0.6)];
    let mut deepest = (0.0, Vec3::default());
    for turns in [[0.0, 0.25], [0.5, 0.8]] {
        let feet = turns.map(|turn| {
            let toes = (toes + away * turn).normalized();
            (toes, (sole - toes * sole.dot(toes)).normalized())
        });
        let points: [Vec3; 6] = std::array::from_fn(|i| {
            let ((toes, sole), (along, down, _)) = (feet[i / 3], OF_FOOT[i % 3]);
            leg.ankle + (toes * along + sole * down) * k
        });
        let stand = around.distances(points);
        for (n, foot) in feet.into_iter().enumerate() {
            (leg.toes, leg.sole) = foot;
            let sunk = |i: usize| OF_FOOT[i % 3].2 * k - stand[i];
            deepest = (3 * n..3 * n + 3).fold((0.0, Vec3::default()), |worst, i| {
                if sunk(i) > worst.0 { (sunk(i), points[i]) } else { worst }
            });
            if deepest.0 <= DENT {
                return None;
            }
        }
    }
    Some(around.outward(deepest.1).1 * (deepest.0 - DENT + 0.05))
}

/// The roots of the limbs, laid in the trunk's group so that shoulders and hips blend without a joint.
pub fn roots(m: &mut Modeller, arms: &[Arm; 2], legs: &[Leg; 2], near: BabySide, k: &Measures) {
    let f = k.flesh;
    for side in near.then_other() {
        let (arm, leg) = (&arms[side.index()], &legs[side.index()]);
        m.capsule((arm.shoulder, 1.85 * f), (arm.elbow, 1.28 * f), 0.9, Part::upper_arm(side));
        m.capsule((leg.hip, 2.75 * f), (leg.knee, 2.1 * f), 0.6, Part::thigh(side));
    }
}

/// Arms and legs, each in a group of its own; `first` is the group of the first.
pub fn forms(m: &mut Modeller, arms: &[Arm; 2], legs: &[Leg; 2], k: &Measures, first: u8) {
    let f = k.flesh;
    for side in BabySide::BOTH {
        let i = side.index();
        let (arm, leg) = (&arms[i], &legs[i]);
        m.group = first + 2 * i as u8;
        m.capsule(
            (arm.shoulder.lerp(arm.elbow, 0.4), 1.68 * f),
            (arm.elbow, 1.28 * f),
            0.3,
            Part::upper_arm(side),
        );
        let mid = arm.elbow.lerp(arm.wrist, 0.4);
        m.capsule((arm.elbow, 1.26 * f), (mid, 1.48 * f), 0.35, Part::forearm(side));
        m.capsule((mid, 1.48 * f), (arm.wrist, 1.05 * f), 0.5, Part::forearm(side));
        hand(m, arm, side, k.radius);
        m.group = first + 1 + 2 * i as u8;
        m.capsule((leg.hip.lerp(leg.knee, 0.5), 2.42 * f), (leg.knee, 2.05 * f), 0.3, Part::thigh(side));
        let mid = leg.knee.lerp(leg.ankle, 0.4);
        m.capsule((leg.knee, 1.92 * f), (mid, 2.0 * f), 0.4, Part::shin(side));
        m.capsule((mid, 1.95 * f), (leg.ankle, 1.28 * f), 0.6, Part::shin(side));
        foot(m, leg, side, k.foot);
    }
}

/// A hand: palm, four fingers of two joints, a thumb on the right side.
fn hand(m: &mut Modeller, arm: &Arm, side: BabySide, k: f32) {
    let (d, n) = hand_axes(arm);
    m.turned(arm.wrist + d * (1.45 * k), (d, n), Vec3::new(1.62, 1.75, 0.85) * k, 0.5, Part::palm(side));
    for (i, [base, middle, tip]) in digits(arm, side, k).into_iter().enumerate() {
        let part = Part::finger(side, i as u8);
        let ([r0, r1, r2], [near, far]) =
            if i == THUMB { ([0.62, 0.5, 0.4], [0.3, 0.1]) } else { ([0.47, 0.44, 0.37], [0.16, 0.08]) };
        m.capsule((base, r0 * k), (middle, r1 * k), near, part);
        m.capsule((middle, r1 * k), (tip, r2 * k), far, part);
    }
}

/// The thumb among the digits of a hand.
const THUMB: usize = 4;

/// The direction of the fingers, and, square to it, the one the palm faces.
fn hand_axes(arm: &Arm) -> (Vec3, Vec3) {
    let d = arm.fingers.normalized();
    (d, (arm.palm - d * arm.palm.dot(d)).normalized())
}

/// Knuckle, middle joint and tip of each digit: four fingers, then the thumb.
fn digits(arm: &Arm, side: BabySide, k: f32) -> [[Vec3; 3]; 5] {
    let (d, n) = hand_axes(arm);
    // Towards the thumb.
    let t = d.cross(n) * -side.sign();
    let w = arm.wrist;
    const OFFSET: [f32; 4] = [1.2, 0.42, -0.38, -1.14];
    const LENGTH: [f32; 4] = [1.4, 1.55, 1.45, 1.15];
    const BASE: [f32; 4] = [2.6, 2.8, 2.65, 2.3];
    let bent = |degrees: f32| {
        let (sin, cos) = libm::sincosf(degrees.to_radians());
        d * cos + n * sin
    };
    std::array::from_fn(|i| {
        if i == THUMB {
            let base = w + (d * 0.9 + t * 1.15 + n * 0.25) * k;
            let middle = base + (d * 0.85 + t * 0.35 + n * 0.45).normalized() * (1.3 * k);
            let tip = middle + (d * 0.9 - t * 0.15 + n * 0.45).normalized() * (1.05 * k);
            return [base, middle, tip];
        }
        let more = 6.0 * i as f32;
        let base = w + (d * BASE[i] + t * OFFSET[i]) * k;
        let middle = base + (bent(arm.curl[0] + more) * LENGTH[i] + t * (0.08 * (1.5 - i as f32))) * k;
        let tip = middle + bent(arm.curl[1] + more) * (LENGTH[i] * 0.85 * k);
        [base, middle, tip]
    })
}

/// A foot: heel, two rays, instep, five toes with the great toe on the inner side.
fn foot(m: &mut Modeller, leg: &Leg, side: BabySide, k: f32) {
    let t = leg.toes.normalized();
    let so = (leg.sole - t * leg.sole.dot(t)).normalized();
    let inner = t.cross(so) * -side.sign();
    let at = |along: f32, down: f32, inward: f32| leg.ankle + (t * along + so * down + inner * inward) * k;
    let part = Part::foot(side);
    m.capsule((at(-0.95, 0.75, 0.0), 1.2 * k), (at(-0.8, 1.15, 0.0), 1.2 * k), 0.6, part);
    m.capsule((at(-0.6, 1.0, 0.0), 1.25 * k), (at(3.25, 1.45, 0.8), 0.95 * k), 0.6, part);
    m.capsule((at(-0.6, 1.1, 0.0), 1.2 * k), (at(2.95, 1.6, -0.75), 0.85 * k), 0.6, part);
    m.capsule((at(0.0, 0.0, 0.0), 1.3 * k), (at(2.9, 1.25, 0.2), 0.85 * k), 0.7, part);
    const INWARD: [f32; 5] = [1.15, 0.35, -0.25, -0.8, -1.28];
    const ALONG: [f32; 5] = [5.0, 5.07, 4.8, 4.42, 3.95];
    const RADIUS: [f32; 5] = [0.66, 0.48, 0.45, 0.42, 0.40];
    for i in 0..5 {
        let r = RADIUS[i] * k;
        m.capsule(
            (at(ALONG[i] - 1.3, 1.65, INWARD[i] * 0.9), r * 0.85),
            (at(ALONG[i], 1.9, INWARD[i]), r),
            0.12,
            Part::toe(side, i as u8),
        );
    }
}

/// Creases at wrist and ankle, in mother space. `forms` are all forms; `body` the baby's frame.
pub fn curves(forms: &[Form], body: &Frame, arms: &[Arm; 2], legs: &[Leg; 2]) -> Vec<Curve> {
    let mut out = vec![];
    for side in BabySide::BOTH {
        let i = side.index();
        let mut round = |part: Part, from: Vec3, to: Vec3, share: f32, span: f32, width: f32| {
            let mut own = Pack::default();
            own.fill(forms.iter().filter(|f| f.part == part));
            let along = body.direction(to - from);
            let ring = Frame::from_up_front(
                along,
                body.direction(Vec3::new(0.0, 0.5, 1.0)),
                body.point(from.lerp(to, share)),
            );
            let ways = (0..=16).map(|step| {
                let angle = span * (step as f32 / 16.0 - 0.5);
                let (sin, cos) = libm::sincosf(angle);
                let outward =
                    ring.direction(Vec3::new(sin, 0.12 * libm::cosf(angle * 2.0), cos)).normalized();
                (ring.origin + outward * 4.0, -outward)
            });
            out.push(Curve {
                points: laid(&own, ways, 4.0),
                width: (width, width),
                ink: Ink::Soft,
                name: "crease",
            });
        };
        round(Part::forearm(side), arms[i].elbow, arms[i].wrist, 0.9, 2.4, 0.06);
        round(Part::shin(side), legs[i].knee, legs[i].ankle, 0.95, 1.9, 0.05);
    }
    out
}
