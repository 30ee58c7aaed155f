//! How a limb reaches its place without passing through the body. In: joints, bone lengths, what stands round it.
//! Out: joints that keep the bones' lengths and lie on the skin, not in it.

use super::eight::{self, LANES, Points};
use super::frame::Frame;
use super::pack::Pack;
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
    pub pack: Pack,
}

impl Around<'_> {
    /// How far points stand outside the forms, cm; negative inside.
    pub fn distances<const N: usize>(&self, points: [Vec3; N]) -> [f32; N] {
        let (points, mut out) = (points.map(|p| self.body.point(p)), [0.0; N]);
        for (points, out) in points.chunks(LANES).zip(out.chunks_mut(LANES)) {
            out.copy_from_slice(&eight::distance(&self.pack, &Points::of(points))[..points.len()]);
        }
        out
    }

    /// How far a point stands outside the forms, cm, and the direction straight away from them.
    pub fn outward(&self, p: Vec3) -> (f32, Vec3) {
        const H: f32 = 0.1;
        let (x, y, z) = (Vec3::new(H, 0.0, 0.0), Vec3::new(0.0, H, 0.0), Vec3::new(0.0, 0.0, H));
        // Even to both sides, so that a mirrored baby is pushed the mirrored way.
        let [d, x1, x0, y1, y0, z1, z0] = self.distances([p, p + x, p - x, p + y, p - y, p + z, p - z]);
        (d, Vec3::new(x1 - x0, y1 - y0, z1 - z0).normalized())
    }

    /// `p`, moved straight out until it stands at least `clear` cm outside.
    pub fn clear(&self, mut p: Vec3, clear: f32) -> Vec3 {
        for _ in 0..6 {
            let (distance, outward) = self.outward(p);
            let short = clear - distance;
            if short <= 0.0 {
                break;
            }
            p = p + outward * short;
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
        let turned = |k: i32| {
            let (sin, cos) = libm::sincosf((k as f32 * STEP).to_radians());
            two_bones(from, target, bones, pole * cos + across * sin)
        };
        let dear = |k: i32| k.abs() as f32 * 0.12;
        let mut best = (f32::MAX, two_bones(from, target, bones, pole));
        // Four are tried at once, the least turned first.
        let order = |n: i32| if n % 2 == 0 { n / 2 } else { -(n + 1) / 2 };
        for first in (0..=2 * STEPS).step_by(LANES / 2) {
            if dear(order(first)) >= best.0 {
                break;
            }
            let turns: [i32; LANES / 2] = std::array::from_fn(|n| order(first + n as i32));
            let limbs = turns.map(turned);
            let stand: [f32; LANES] = self.distances(std::array::from_fn(|i| {
                let (joint, end) = limbs[i / 2];
                if i % 2 == 0 { joint } else { joint.lerp(end, 0.5) }
            }));
            for (n, k) in turns.into_iter().enumerate().filter(|(_, k)| k.abs() <= STEPS) {
                let sunk = |i: usize| (radius - DENT - stand[i]).max(0.0);
                let cost = dear(k) + 2.0 * (sunk(2 * n) + sunk(2 * n + 1));
                if cost < best.0 - 1e-3 {
                    best = (cost, limbs[n]);
                }
            }
        }
        best.1
    }
}

/// How far one soft part may press into another, cm.
pub const DENT: f32 = 0.3;
