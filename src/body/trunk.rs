//! The trunk. In: the spine's frames and the scales. Out: forms of belly, chest, pelvis, shoulders, neck and
//! buttocks, and the lines of the back.

use super::attitude::Spine;
use super::curves::{Curve, Ink, laid};
use super::frame::Frame;
use super::measures::Measures;
use super::modeller::Modeller;
use super::pack::Pack;
use super::part::Part;
use crate::units::{BabySide, Vec3};

/// Lays the trunk's forms; the modeller's frame must be the baby's, in mother space. Paired forms are laid from the
/// `near` side on: a mirrored baby blends in the mirrored order.
pub fn forms(m: &mut Modeller, spine: &Spine, near: BabySide, k: &Measures) {
    let size = |x: f32, y: f32, z: f32| Vec3::new(x * k.girth, y * k.length, z * k.girth);
    let mut lay = |f: &Frame, at: Vec3, half: Vec3, blend: f32| {
        m.turned(f.point(at), (f.y, f.z), half, blend, Part::TRUNK);
    };
    lay(&spine.belly, size(0.0, -0.2, 0.1), size(5.68, 4.9, 5.4), 1.0);
    lay(&spine.chest, size(0.0, 0.1, 0.0), size(4.8, 4.6, 4.4), 2.4);
    lay(&spine.pelvis, size(0.0, 0.0, 0.0), size(4.3, 4.2, 4.0), 3.0);
    let shoulder = |x: f32| spine.shoulders.point(size(x, 0.0, 0.0));
    m.capsule((shoulder(-3.1), 2.4 * k.girth), (shoulder(3.1), 2.4 * k.girth), 3.0, Part::TRUNK);
    for side in near.then_other() {
        let at = spine.pelvis.origin + size(2.1 * side.sign(), -1.75, -1.0);
        m.ellipsoid(at, size(2.5, 2.85, 3.0), 0.4, Part::buttock(side));
    }
    let base = spine.shoulders.point(size(0.0, 0.25, -0.3));
    m.capsule((base, 3.0 * k.girth), (spine.neck, 2.8 * k.head), 2.5, Part::TRUNK);
}

/// Lines of the back: spinal groove, shoulder blades, the cleft, creases under the buttocks.
pub fn curves(forms: &Pack, body: &Frame, spine: &Spine, k: &Measures) -> Vec<Curve> {
    let mut out = vec![];
    let back = Vec3::new(0.0, 0.0, -1.0);
    let mut lay = |points: Vec<Vec3>, toward: &dyn Fn(usize) -> Vec3, width, ink, name| {
        let ways = points.iter().enumerate().map(|(i, p)| {
            let outward = body.direction(toward(i));
            (body.point(*p) + outward * 10.0, -outward)
        });
        out.push(Curve { points: laid(forms, ways, 12.0), width, ink, name });
    };
    let joints = [
        spine.pelvis.point(Vec3::new(0.0, 1.0, 0.0)),
        spine.belly.origin,
        spine.chest.origin,
        spine.shoulders.origin,
    ];
    let groove = (0..=24)
        .map(|i| {
            let u = 0.25 + i as f32 / 24.0 * 2.1;
            let j = (u as usize).min(2);
            joints[j].lerp(joints[j + 1], u - j as f32)
        })
        .collect();
    lay(groove, &|_| back, (0.05, 0.03), Ink::Soft, "back");
    for s in [1.0, -1.0] {
        let blade = (0..=14)
            .map(|i| {
                let t = i as f32 / 14.0;
                let x = 1.75 + 0.25 * t + 0.9 * t * t * t * t * t * t;
                spine.chest.point(Vec3::new(x * s * k.girth, (1.5 - 2.5 * t) * k.length, 0.0))
            })
            .collect();
        lay(blade, &|_| back, (0.04, 0.04), Ink::Soft, "back");
    }
    // The fold of the flank, where the belly lies on the hip.
    for s in [1.0, -1.0] {
        let angle = |i: usize| (70.0 + 26.0 * i as f32 / 14.0).to_radians();
        let fold = (0..=14)
            .map(|i| spine.belly.point(Vec3::new(0.0, (-2.5 - 0.05 * i as f32) * k.length, 0.0)))
            .collect();
        let toward = |i: usize| {
            let (sin, cos) = libm::sincosf(angle(i));
            Vec3::new(sin * s, 0.0, -cos)
        };
        lay(fold, &toward, (0.03, 0.045), Ink::Soft, "crease");
    }
    let bottom = spine.pelvis.origin;
    let arc = |i: usize| {
        let (sin, cos) = libm::sincosf((i as f32 / 14.0 * 75.0 - 8.0).to_radians());
        Vec3::new(0.0, -sin, -cos)
    };
    lay(vec![bottom; 15], &arc, (0.03, 0.12), Ink::Firm, "back");
    out
}
