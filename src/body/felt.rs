//! Limbs go where they were felt. In: a placed baby, the places. Out: which limb ends are drawn towards which place.

use super::baby::PosedBaby;
use crate::units::{BabySide, MotherPoint, Vec3};

/// Where the ends of the limbs are drawn to, in baby space: arms, then legs, left first.
pub type Drawn = [Option<Vec3>; 4];

/// A place is reached when a limb is seen this near to it, cm.
const NEAR: f32 = 0.3;

/// A limb that was drawn to a place is seen this near to it, cm: its end, not its skin, was led there.
const SEEN: f32 = 1.2;

/// Gives each place that no limb lies under to the limb that reaches it most easily. Places that no free limb can
/// reach are left alone: what was felt there is a matter for the reckoning, not for the artist. `top`: no end is drawn
/// higher, cm.
pub fn drawn_to(baby: &PosedBaby, places: &[MotherPoint], top: f32) -> Drawn {
    let (mut out, mut taken) = ([None; 4], [false; 4]);
    let near = baby.posture.near();
    for place in places {
        let (x, y) = (place.0.x, place.0.y.min(top));
        // The limb that lies there stays.
        let seen = baby.shape.limbs_seen(x, y);
        if let Some(limb) = ORDER.into_iter().find(|limb| seen[*limb] < NEAR) {
            taken[limb] = true;
            continue;
        }
        let mut best: Option<(f32, usize, Vec3)> = None;
        for side in near.then_other() {
            for limb in [side.index(), 2 + side.index()] {
                if taken[limb] {
                    continue;
                }
                let (root, end, reach) = ends(baby, limb);
                let across = ((x - root.x) * (x - root.x) + (y - root.y) * (y - root.y)).sqrt();
                if across > reach {
                    continue;
                }
                // As deep as it lies, or nearer to the root where the limb is too short for that.
                let deep = (reach * reach - across * across).max(0.0).sqrt();
                let target = Vec3::new(x, y, end.z.clamp(root.z - deep, root.z + deep));
                let local = baby.body.local(target);
                // Limbs are folded before the body, not behind it.
                if local.z < 1.0 {
                    continue;
                }
                let away = ((x - end.x) * (x - end.x) + (y - end.y) * (y - end.y)).sqrt();
                if best.is_none_or(|(least, ..)| away < least) {
                    best = Some((away, limb, local));
                }
            }
        }
        if let Some((_, limb, local)) = best {
            out[limb] = Some(local);
            taken[limb] = true;
        }
    }
    out
}

/// Which limb of a drawn baby is seen at a place where limbs were felt: arms, then legs, left first; `None` when none is.
pub fn limb_at(baby: &PosedBaby, place: MotherPoint) -> Option<usize> {
    let seen = baby.shape.limbs_seen(place.0.x, place.0.y);
    let near = ORDER.into_iter().min_by(|a, b| seen[*a].total_cmp(&seen[*b]))?;
    (seen[near] < SEEN).then_some(near)
}

/// The order in which limbs are looked at: each arm with the leg of its side.
const ORDER: [usize; 4] = [0, 2, 1, 3];

/// Root and end of a limb in mother space, and how far it reaches, hand and foot half counted.
fn ends(baby: &PosedBaby, limb: usize) -> (Vec3, Vec3, f32) {
    let side = BabySide::BOTH[limb % 2].index();
    let k = &baby.posture.measures;
    let at = |p: Vec3| baby.body.point(p);
    if limb < 2 {
        let arm = &baby.arms[side];
        let reach = (arm.elbow - arm.shoulder).length() + (arm.wrist - arm.elbow).length() + 1.0 * k.radius;
        (at(arm.shoulder), at(arm.wrist + arm.fingers * (1.5 * k.radius)), reach)
    } else {
        let leg = &baby.legs[side];
        let reach = (leg.knee - leg.hip).length() + (leg.ankle - leg.knee).length() + 0.5 * k.foot;
        (at(leg.hip), at(leg.ankle + leg.toes * (1.5 * k.foot)), reach)
    }
}
