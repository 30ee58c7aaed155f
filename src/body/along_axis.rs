//! A baby of the one form in the cut. In: a placed baby, the way along which its pieces are carried. Out: its surface there.
//!
//! Its bones are posed anew along the axis of the womb, and then it is skinned; no vertex is bent by itself. Head and neck
//! stay one rigid piece; each bone of the trunk leans as the axis leans at its height; arms lean with the chest, legs with
//! the pelvis. What would lie in her spine or her abdominal wall takes its bone a little out of it.

use super::baby::PosedBaby;
use super::form::bone::{BONES, CHEST, HEAD, Limb, MIDDLE, ROOT, SPINE};
use super::form::shared::shared;
use super::form::skeleton::BoneAt;
use super::form::turn::Turn;
use super::lateral::{Way, turned};
use super::part::Region;
use super::posed::{Poser, reflected};
use super::shape::Shape;
use crate::units::Vec3;

/// The surface of a baby whose pieces are carried, and how far its head was moved out of her spine or wall before it was turned.
pub fn carried(baby: &PosedBaby, way: &Way) -> (Shape, Vec3) {
    let held = baby.held;
    let poser = Poser::new(&baby.posture);
    let sign = |v: Vec3| if poser.is_mirrored() { reflected(v) } else { v };
    // In mother space as the baby is made: carrying leaves x alone, so that it may be reflected before or after.
    let mut frame = poser.made().frame(Vec3::default());
    frame.origin = sign(baby.body.origin);
    let bones: Vec<BoneAt> = poser
        .body()
        .bones(&held)
        .into_iter()
        .map(|bone| {
            let axes = [bone.turn.x, bone.turn.y, bone.turn.z].map(|axis| frame.direction(axis));
            BoneAt { turn: Turn { x: axes[0], y: axes[1], z: axes[2] }, origin: frame.point(bone.origin) }
        })
        .collect();
    let leaned = |hold: Vec3, v: Vec3| way.hung(hold, hold + v) - way.hung(hold, hold);
    let form = shared();
    let head = sign(baby.head.origin);
    let mut out = bones.clone();
    for (i, bone) in bones.iter().enumerate() {
        let hold = match i {
            _ if (SPINE..=CHEST).contains(&i) => bone.origin,
            _ if (CHEST + 1..MIDDLE).contains(&i) => head,
            _ if is_leg(i) => bones[ROOT].origin,
            _ if i >= MIDDLE => bones[CHEST].origin,
            _ => bone.origin,
        };
        let axes = [bone.turn.x, bone.turn.y, bone.turn.z].map(|axis| leaned(hold, axis));
        out[i].turn = Turn { x: axes[0], y: axes[1], z: axes[2] };
    }
    // Joints follow from the turns; then all of it goes where its head hangs.
    for i in order(&form.rest.bones.iter().map(|bone| bone.parent).collect::<Vec<_>>()) {
        if let Some(parent) = form.rest.bones[i].parent {
            let arm = bones[parent].turn.back(bones[i].origin - bones[parent].origin);
            out[i].origin = out[parent].origin + out[parent].turn.of(arm);
        }
    }
    let by = way.with_head(bones[HEAD].origin) - out[HEAD].origin;
    out.iter_mut().for_each(|bone| bone.origin = bone.origin + by);
    let skin = poser.body().skin_over(out.clone(), &held);
    let leads = poser.made().up.y < -0.9;
    let asides = asides(&skin.points, way, leads);
    let skin = if asides.iter().all(|by| by.length() < 1e-3) {
        skin
    } else {
        out.iter_mut().zip(&asides).for_each(|(bone, by)| bone.origin = bone.origin + *by);
        poser.body().skin_over(out.clone(), &held)
    };
    // The head is the very head of the front, as one rigid piece.
    let head_of = |v: usize| {
        let own = sign(baby.shape.at(v)) - bones[HEAD].origin;
        out[HEAD].origin + out[HEAD].turn.of(bones[HEAD].turn.back(own))
    };
    let points: Vec<[f32; 3]> = skin
        .points
        .iter()
        .enumerate()
        .map(|(v, [x, y, z])| {
            let own = if form.regions[v] == Region::Head { head_of(v) } else { Vec3::new(*x, *y, *z) };
            let v = turned(sign(own));
            [v.x, v.y, v.z]
        })
        .collect();
    (Shape::of_points(points, poser.is_mirrored()), asides[HEAD])
}

/// Bones from the root outwards.
fn order(parent: &[Option<usize>]) -> Vec<usize> {
    let depth = |mut i: usize| {
        let mut steps = 0;
        while let Some(p) = parent[i] {
            (i, steps) = (p, steps + 1);
        }
        steps
    };
    let mut out: Vec<usize> = (0..BONES).collect();
    out.sort_by_key(|i| (depth(*i), *i));
    out
}

/// Whether a bone is of a leg: the last six of each side.
fn is_leg(bone: usize) -> bool {
    let side = (BONES - MIDDLE) / 2;
    bone >= MIDDLE && (bone - MIDDLE) % side >= side - 6
}

/// For each bone, how far what it carries must move to lie in the room there is. A head that leads stays where it is; one
/// that does not moves as one piece, and the neck with it by degrees.
fn asides(points: &[[f32; 3]], way: &Way, head_leads: bool) -> Vec<Vec3> {
    // A hand and a foot stay in one piece.
    let side = (BONES - MIDDLE) / 2;
    let whole = |bone: usize| match bone.checked_sub(MIDDLE).map(|own| own % side) {
        Some(own) if own >= side - 2 => bone - own + side - 2,
        Some(own) if (Limb::Wrist as usize..side - 6).contains(&own) => bone - own + Limb::Wrist as usize,
        _ => bone,
    };
    let weights = &shared().rest.weights;
    let mut out = vec![Vec3::default(); BONES];
    for (bone, out) in out.iter_mut().enumerate() {
        if (HEAD - 1..MIDDLE).contains(&bone) || whole(bone) != bone {
            continue;
        }
        let held = points.iter().zip(weights).filter(|(_, w)| whole(w.main()) == bone);
        *out = way.moved(&mut held.map(|([x, y, z], _)| turned(Vec3::new(*x, *y, *z))));
    }
    if !head_leads {
        let head = points.iter().zip(&shared().regions).filter(|(_, region)| **region == Region::Head);
        let by = way.moved(&mut head.map(|([x, y, z], _)| turned(Vec3::new(*x, *y, *z))));
        let trunk = out[CHEST];
        for (bone, own) in out.iter_mut().enumerate().take(MIDDLE).skip(CHEST + 1) {
            let share = (bone - CHEST) as f32 / (HEAD - CHEST) as f32;
            *own = trunk.lerp(by, share.min(1.0));
        }
    }
    for bone in 0..BONES {
        out[bone] = out[whole(bone)];
    }
    out
}
