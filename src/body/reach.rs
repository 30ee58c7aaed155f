//! How a limb reaches its place without passing through the body. In: joints, bone lengths, what stands round it.
//! Out: joints that keep the bones' lengths and lie on the skin, not in it.

use super::frame::Frame;
use super::surface::{self, Form};
use crate::units::Vec3;

/// The middle joint of two bones of lengths `a` and `b` from `from` towards `target`, bent towards `pole`,
/// and the end they really reach. Bones keep their length; an end out of reach is drawn in along the line, and one too
/// near for the joint to fold (`FOLDED`) is pushed out.
pub fn two_bones(from: Vec3, target: Vec3, (a, b): (f32, f32), pole: Vec3) -> (Vec3, Vec3) {
    let line = target - from;
    let along = line.normalized();
    let nearest = (a * a + b * b - 2.0 * a * b * FOLDED).sqrt();
    let reach = line.length().clamp(nearest, a + b - 0.05);
    let shift = (reach * reach + a * a - b * b) / (2.0 * reach);
    let height = (a * a - shift * shift).max(0.0).sqrt();
    let side = (pole - along * pole.dot(along)).normalized();
    (from + along * shift + side * height, from + along * reach)
}

/// Cosine of the least angle between the bones of an elbow or a knee: 30 degrees, common practice.
const FOLDED: f32 = 0.866;

/// What a limb must not pass through: forms in mother space, asked in the baby's own.
pub struct Around<'a> {
    /// The baby's frame.
    pub body: &'a Frame,
    /// The forms.
    pub forms: &'a [Form],
}

impl Around<'_> {
    /// How far a point stands outside the forms, cm; negative inside.
    pub fn distance(&self, p: Vec3) -> f32 {
        surface::distance(self.forms, self.body.point(p)).0
    }

    /// The direction straight away from the forms.
    pub fn outward(&self, p: Vec3) -> Vec3 {
        // Even to both sides, so that a mirrored baby is pushed the mirrored way.
        let slope = |d: Vec3| self.distance(p + d) - self.distance(p - d);
        const H: f32 = 0.1;
        Vec3::new(slope(Vec3::new(H, 0.0, 0.0)), slope(Vec3::new(0.0, H, 0.0)), slope(Vec3::new(0.0, 0.0, H)))
            .normalized()
    }

    /// `p`, moved straight out until it stands at least `clear` cm outside.
    pub fn clear(&self, mut p: Vec3, clear: f32) -> Vec3 {
        for _ in 0..6 {
            let short = clear - self.distance(p);
            if short <= 0.0 {
                break;
            }
            p = p + self.outward(p) * short;
        }
        p
    }

    /// `two_bones`, the middle joint turned about the line of the limb as little as keeps a limb of this radius off the
    /// forms (a dent of `DENT` in soft flesh is allowed). `sign`: the baby's side, so that both sides turn alike.
    pub fn bend(
        &self,
        from: Vec3,
        target: Vec3,
        bones: (f32, f32),
        pole: Vec3,
        (radius, sign): (f32, f32),
    ) -> (Vec3, Vec3) {
        const STEP: f32 = 15.0;
        const STEPS: i32 = 6;
        let axis = (target - from).normalized();
        let across = axis.cross(pole) * sign;
        let mut best = (f32::MAX, two_bones(from, target, bones, pole));
        for k in (0..=2 * STEPS).map(|k| if k % 2 == 0 { k / 2 } else { -(k + 1) / 2 }) {
            let (sin, cos) = libm::sincosf((k as f32 * STEP).to_radians());
            let (joint, end) = two_bones(from, target, bones, pole * cos + across * sin);
            let sunk = |p: Vec3| (radius - DENT - self.distance(p)).max(0.0);
            let cost = k.abs() as f32 * 0.12 + 2.0 * (sunk(joint) + sunk(joint.lerp(end, 0.5)));
            if cost < best.0 - 1e-3 {
                best = (cost, (joint, end));
            }
        }
        best.1
    }
}

/// How far one soft part may press into another, cm.
pub const DENT: f32 = 0.3;
