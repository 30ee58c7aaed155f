//! Limbs go where they were felt. In: a placed baby, the places. Out: which limb ends are drawn towards which place, and where
//! the place is marked.
//!
//! A side and a level name a region of her abdomen, no point: a limb that lies in it is left as it lies, one that does not
//! is led no farther than to its edge, and the mark stands where the limb is. What was measured, and what was felt at an end of
//! the womb, is drawn to the centimetre.

use super::baby::PosedBaby;
use super::mother::MotherShape;
use crate::exam::{Across, Height, Place};
use crate::units::{BabySide, MotherPoint, Vec3};

/// A place where limbs were felt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Felt {
    /// Its middle.
    pub at: MotherPoint,
    /// How far from its middle a limb may lie and still be there, cm.
    pub loose: f32,
}

/// How far from its middle a place reaches that was named by a side and a level, cm: levels lie about 7 cm apart. A house
/// value.
const LOOSE: f32 = 3.5;

impl Felt {
    /// A place that was said.
    pub fn of(mother: &MotherShape, place: &Place) -> Self {
        let exact = matches!(place.across, Some(Across::Measured(..)))
            || matches!(
                place.height,
                Some(
                    Height::FromNavel(_) | Height::FromPubicBone(_) | Height::Fundus | Height::AbovePubicBone
                )
            );
        Felt { at: mother.place(place), loose: if exact { 0.0 } else { LOOSE } }
    }

    /// Where it is marked on her skin: on the limb that lies there, if one does.
    pub fn mark(&self, mother: &MotherShape, baby: &PosedBaby) -> MotherPoint {
        let (x, y) = (self.at.0.x, self.at.0.y);
        let near = baby.shape.limbs_near(x, y);
        let (far, p) = near.into_iter().fold(near[0], |best, next| if next.0 < best.0 { next } else { best });
        if far < NEAR || far > self.loose + SEEN {
            return self.at;
        }
        // A little over the limb's edge, so that the mark lies on it.
        let k = 1.0 + ON / far;
        mother.skin(f64::from(x + (p.x - x) * k), f64::from(y + (p.y - y) * k))
    }
}

/// Where the ends of the limbs are drawn to, in baby space: arms, then legs, left first.
pub type Drawn = [Option<Vec3>; 4];

/// A place is reached when a limb is seen this near to it, cm.
const NEAR: f32 = 0.3;

/// How far within a limb's edge a place is marked, cm.
const ON: f32 = 0.6;

/// A limb that was drawn to a place is seen this near to it, cm: its end, not its skin, was led there.
const SEEN: f32 = 1.2;

/// Gives each place that no limb lies under to the limb that reaches it most easily. Places that no free limb can
/// reach are left alone: what was felt there is a matter for the reckoning, not for the artist. `top`: no end is drawn
/// higher, cm.
pub fn drawn_to(baby: &PosedBaby, places: &[Felt], top: f32) -> Drawn {
    let (mut out, mut taken) = ([None; 4], [false; 4]);
    let near = baby.posture.near();
    for place in places {
        let (x, y) = (place.at.0.x, place.at.0.y.min(top));
        // The limb that lies there stays.
        let seen = baby.shape.limbs_seen(x, y);
        let there = ORDER.into_iter().find(|limb| seen[*limb] < NEAR);
        let free = || ORDER.into_iter().filter(|limb| !taken[*limb] && seen[*limb] < NEAR + place.loose);
        let about = || free().min_by(|a, b| seen[*a].total_cmp(&seen[*b]));
        if let Some(limb) = there.or_else(about) {
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
                // No farther than to the edge of what was named.
                let off = ((end.x - x) * (end.x - x) + (end.y - y) * (end.y - y)).sqrt();
                let share = (place.loose / off.max(1e-3)).min(1.0);
                let (x, y) = (x + (end.x - x) * share, y + (end.y - y) * share);
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
