//! A body of some size, and its skin in a posture. In: the body at rest, sizes, a posture. Out: `Skin`.
//!
//! Skinned with dual quaternions, so that joints keep their volume; then relaxed, with the detail of the rest shape laid
//! on again; then the places that no skinning holds are mended: crotch, joints, belly, seat.

use super::bone::{BONES, HEAD, Limb, ROOT, limb};
use super::bridge::bridge;
use super::landmark::Landmark;
use super::mesh::{minus, normals, plus, scaled, smooth, smooth_by};
use super::posture::Posture;
use super::rest::Rest;
use super::skeleton::{self, BoneAt, Joints, SIDES, X};
use super::turn::{Quaternion, Turn};
use crate::units::{BabySide, Vec3};

/// Steps of relaxation after skinning, and how far each goes.
const MUSH: usize = 14;
const PULL: f32 = 0.7;
/// How far the belly is rounded at term, cm; the lean share of it is missing.
const BELLY: f32 = 1.15;

/// Sizes against the term body.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sizes {
    /// Head, in all directions.
    pub head: f32,
    /// Trunk, across and front to back.
    pub girth: f32,
    /// Trunk and neck, along.
    pub length: f32,
    /// Upper arm, along.
    pub upper_arm: f32,
    /// Forearm along; the hand in all directions.
    pub forearm: f32,
    /// Thigh, along.
    pub thigh: f32,
    /// Lower leg, along.
    pub shin: f32,
    /// Foot, in all directions.
    pub foot: f32,
    /// Thickness of the limbs.
    pub flesh: f32,
    /// How lean: 0 at term, 1 about week 26.
    pub lean: f32,
}

impl Sizes {
    /// The body as it was baked.
    pub const TERM: Sizes = Sizes {
        head: 1.0,
        girth: 1.0,
        length: 1.0,
        upper_arm: 1.0,
        forearm: 1.0,
        thigh: 1.0,
        shin: 1.0,
        foot: 1.0,
        flesh: 1.0,
        lean: 0.0,
    };
}

/// A body of some size, at rest.
#[derive(Clone, Debug)]
pub struct Body<'a> {
    /// What it was made from.
    pub rest: &'a Rest,
    /// Its sizes.
    pub sizes: Sizes,
    joints: Joints,
    points: Vec<[f32; 3]>,
}

/// A posed skin in the baby's own frame: y from rump to crown, z to its front, x to its left; the origin between the
/// hip joints; cm.
#[derive(Clone, Debug)]
pub struct Skin {
    /// The vertices, in the order of `Rest::points`.
    pub points: Vec<[f32; 3]>,
    /// The bones.
    pub bones: Vec<BoneAt>,
}

impl<'a> Body<'a> {
    /// The body of these sizes.
    pub fn new(rest: &'a Rest, sizes: &Sizes) -> Body<'a> {
        let (joints, points) = sized(rest, sizes);
        Body { rest, sizes: *sizes, joints, points }
    }

    /// What relaxation takes from the rest shape.
    fn detail(&self) -> Vec<[f32; 3]> {
        let mut relaxed = self.points.clone();
        smooth(&mut relaxed, &self.rest.near, &self.rest.regions.mush, MUSH, PULL);
        self.points.iter().zip(&relaxed).map(|(p, r)| minus(*p, *r)).collect()
    }

    /// The bones alone, in the skin's frame.
    pub fn bones(&self, posture: &Posture) -> Vec<BoneAt> {
        let mut bones = self.posed(posture);
        let stand = self.stand(&bones, posture.stand);
        for bone in &mut bones {
            *bone = BoneAt { turn: stand.after(&bone.turn), origin: stand.of(bone.origin) };
        }
        bones
    }

    /// Some vertices as the bones alone carry them, without relaxation: enough to search with.
    pub fn carried(&self, bones: &[BoneAt], vertices: &[u16]) -> Vec<[f32; 3]> {
        let carriers = self.carriers(bones);
        vertices.iter().map(|v| self.carry(&carriers, usize::from(*v)).0).collect()
    }

    /// The skin without relaxation: where limbs lie is asked of it.
    pub fn quick(&self, posture: &Posture) -> Skin {
        let bones = self.bones(posture);
        let carriers = self.carriers(&bones);
        let points = (0..self.points.len()).map(|v| self.carry(&carriers, v).0).collect();
        Skin { points, bones }
    }

    /// The skin.
    pub fn skin(&self, posture: &Posture) -> Skin {
        let mut bones = self.posed(posture);
        let mut points = self.mended(&bones, posture);
        let stand = self.stand(&bones, posture.stand);
        for p in &mut points {
            let v = stand.of(Vec3::new(p[0], p[1], p[2]));
            *p = [v.x, v.y, v.z];
        }
        for bone in &mut bones {
            *bone = BoneAt { turn: stand.after(&bone.turn), origin: stand.of(bone.origin) };
        }
        Skin { points, bones }
    }

    /// The skin over the bones of a posture that were carried elsewhere, where they lie.
    pub fn skin_over(&self, bones: Vec<BoneAt>, posture: &Posture) -> Skin {
        let (root, hold) = (bones[ROOT], self.joints.head[ROOT]);
        let upright = |bone: &BoneAt| BoneAt {
            turn: root.turn.inverse().after(&bone.turn),
            origin: root.turn.back(bone.origin - root.origin) + hold,
        };
        let mut points = self.mended(&bones.iter().map(upright).collect::<Vec<_>>(), posture);
        for p in &mut points {
            let v = root.origin + root.turn.of(Vec3::new(p[0], p[1], p[2]) - hold);
            *p = [v.x, v.y, v.z];
        }
        Skin { points, bones }
    }

    /// The skin over bones about a pelvis that stays upright, relaxed and mended.
    fn mended(&self, bones: &[BoneAt], posture: &Posture) -> Vec<[f32; 3]> {
        let rest = self.rest;
        let carriers = self.carriers(bones);
        let (mut points, turns): (Vec<_>, Vec<_>) =
            (0..self.points.len()).map(|v| self.carry(&carriers, v)).unzip();
        smooth(&mut points, &rest.near, &rest.regions.mush, MUSH, PULL);
        for ((p, turn), d) in points.iter_mut().zip(&turns).zip(&self.detail()) {
            let d = Turn::from_quaternion(*turn).of(Vec3::new(d[0], d[1], d[2]));
            *p = plus(*p, [d.x, d.y, d.z]);
        }
        smooth(&mut points, &rest.near, &rest.regions.crotch, 24, 0.6);
        smooth(&mut points, &rest.near, &rest.regions.joints, 8, 0.6);
        self.round_belly(&mut points);
        smooth(&mut points, &rest.near, &rest.regions.front, 16, 0.6);
        rest.plate.lay(&mut points, &rest.near);
        // Over straight hips there is nothing to bridge.
        let bent = posture.legs[0].flex.min(posture.legs[1].flex);
        let bridged = ((bent - 10.0) / 40.0).clamp(0.0, 1.0);
        if bridged > 0.0 {
            bridge(&mut points, rest, self.sizes.girth, bridged);
        }
        if bridged < 1.0 {
            smooth(&mut points, &rest.near, &rest.regions.bridge, 9, 0.5 * (1.0 - bridged));
        }
        // Pleats go, and the forms stay: each step in is taken back by one out.
        let in_and_out = (0..40).map(|step| if step % 2 == 0 { 0.6 } else { -0.62 });
        smooth_by(&mut points, &rest.near, &rest.regions.bridge, in_and_out);
        smooth(&mut points, &rest.near, &rest.regions.pubis, 40, 0.7);
        points
    }

    /// The bones about a pelvis that stays upright, the origin between the hip joints.
    fn posed(&self, posture: &Posture) -> Vec<BoneAt> {
        skeleton::pose(&self.joints, posture, [self.sizes.head, self.sizes.length])
    }

    /// The turn about x that brings the crown over the rump.
    fn stand(&self, bones: &[BoneAt], stand: f32) -> Turn {
        let (head, root) = (&bones[HEAD], &bones[ROOT]);
        let crown = head.origin + head.turn.of(Vec3::new(0.0, 5.0, -2.5) * self.sizes.head);
        let rump = root.origin + root.turn.of(Vec3::new(0.0, -2.0, -1.5) * self.sizes.length);
        let up = crown - rump;
        Turn::about(X, stand - libm::atan2f(up.z, up.y).to_degrees())
    }

    /// Of each bone, its turn and half of its shift times that, as quaternions.
    fn carriers(&self, bones: &[BoneAt]) -> Vec<(Quaternion, Quaternion)> {
        let one = |(bone, joint): (&BoneAt, &Vec3)| {
            let q = bone.turn.quaternion();
            let t = bone.origin - bone.turn.of(*joint);
            (q, times([0.0, t.x, t.y, t.z], q).map(|k| 0.5 * k))
        };
        bones.iter().zip(&self.joints.head).map(one).collect()
    }

    /// A vertex as its bones carry it, and how it is turned.
    #[inline]
    fn carry(&self, carriers: &[(Quaternion, Quaternion)], v: usize) -> ([f32; 3], Quaternion) {
        let w = &self.rest.weights[v];
        let main = carriers[w.main()].0;
        let (mut q, mut d) = ([0.0f32; 4], [0.0f32; 4]);
        for k in 0..4 {
            let (a, b) = &carriers[usize::from(w.bone[k])];
            let same = main[0] * a[0] + main[1] * a[1] + main[2] * a[2] + main[3] * a[3];
            let s = if same < 0.0 { -w.share[k] } else { w.share[k] };
            for i in 0..4 {
                q[i] += s * a[i];
                d[i] += s * b[i];
            }
        }
        let n = 1.0 / (q[0] * q[0] + q[1] * q[1] + q[2] * q[2] + q[3] * q[3]).sqrt();
        let (q, d) = (q.map(|k| k * n), d.map(|k| k * n));
        let shift = times(d, [q[0], -q[1], -q[2], -q[3]]);
        let p = self.points[v];
        let p = Turn::from_quaternion(q).of(Vec3::new(p[0], p[1], p[2]));
        ([p.x + 2.0 * shift[1], p.y + 2.0 * shift[2], p.z + 2.0 * shift[3]], q)
    }

    /// The front of the trunk as one smooth plate over the curl, rounded.
    fn round_belly(&self, points: &mut [[f32; 3]]) {
        let rest = self.rest;
        rest.belly.lay(points, &rest.near);
        let mut out = normals(points, &rest.quads);
        let mut inside = vec![0.0; points.len()];
        for v in rest.belly.ids() {
            inside[*v] = 1.0;
        }
        smooth(&mut out, &rest.near, &inside, 40, 0.8);
        let push = BELLY * (1.0 - 0.6 * self.sizes.lean) * self.sizes.girth;
        for v in rest.belly.ids() {
            let n = out[*v];
            let size = (n[0] * n[0] + n[1] * n[1] + n[2] * n[2]).sqrt().max(0.3);
            points[*v] = plus(points[*v], scaled(n, push * rest.regions.push[*v] / size));
        }
    }
}

impl Skin {
    /// Where a landmark lies; of one on the midline the side does not matter.
    pub fn landmark(&self, rest: &Rest, landmark: Landmark, side: BabySide) -> Vec3 {
        let p = self.points[rest.landmark(landmark, side)];
        Vec3::new(p[0], p[1], p[2])
    }
}

fn times(a: Quaternion, b: Quaternion) -> Quaternion {
    [
        a[0] * b[0] - a[1] * b[1] - a[2] * b[2] - a[3] * b[3],
        a[0] * b[1] + a[1] * b[0] + a[2] * b[3] - a[3] * b[2],
        a[0] * b[2] - a[1] * b[3] + a[2] * b[0] + a[3] * b[1],
        a[0] * b[3] + a[1] * b[2] - a[2] * b[1] + a[3] * b[0],
    ]
}

/// How a bone is stretched: along the axes of the body, or along and across itself.
#[derive(Clone, Copy)]
enum Stretch {
    Box(Vec3),
    Rod(Vec3, f32, f32),
}

impl Stretch {
    fn of(self, d: Vec3) -> Vec3 {
        match self {
            Stretch::Box(s) => Vec3::new(d.x * s.x, d.y * s.y, d.z * s.z),
            Stretch::Rod(axis, along, across) => d * across + axis * ((along - across) * d.dot(axis)),
        }
    }
}

/// Every bone along and across; what hangs on it follows.
fn sized(rest: &Rest, s: &Sizes) -> (Joints, Vec<[f32; 3]>) {
    let parent: Vec<Option<usize>> = rest.bones.iter().map(|b| b.parent).collect();
    let old: Vec<Vec3> = rest.bones.iter().map(|b| b.head + b.head_lean * s.lean).collect();
    let ends: Vec<Vec3> = rest.bones.iter().map(|b| b.tail + b.tail_lean * s.lean).collect();
    let stretch: Vec<Stretch> = (0..BONES).map(|i| stretch(i, s, ends[i] - old[i])).collect();
    let (mut head, mut tail): (Vec<Vec3>, Vec<Vec3>) = (vec![], vec![]);
    // A bone's parent may come later in the list: go up until a joint is known.
    let mut known: Vec<Option<Vec3>> = vec![None; BONES];
    for i in 0..BONES {
        let mut chain = vec![i];
        while let Some(p) = parent[chain[chain.len() - 1]] {
            chain.push(p);
        }
        for b in chain.into_iter().rev() {
            if known[b].is_none() {
                known[b] = Some(match parent[b] {
                    None => old[b] * s.girth,
                    Some(p) => known[p].unwrap_or_default() + stretch[p].of(old[b] - old[p]),
                });
            }
        }
        let at = known[i].unwrap_or_default();
        head.push(at);
        tail.push(at + stretch[i].of(ends[i] - old[i]));
    }
    // The origin stays between the hip joints.
    let [l, r] = SIDES.map(|side| head[limb(side, Limb::Thigh)]);
    let hips = (l + r) * 0.5;
    head.iter_mut().chain(&mut tail).for_each(|p| *p = *p - hips);
    let points = (0..rest.points.len())
        .map(|v| {
            let (p, d, w) = (rest.points[v], rest.lean[v], &rest.weights[v]);
            let p = Vec3::new(p[0] + d[0] * s.lean, p[1] + d[1] * s.lean, p[2] + d[2] * s.lean);
            let mut sum = Vec3::default();
            for k in 0..4 {
                let b = usize::from(w.bone[k]);
                sum = sum + (head[b] + stretch[b].of(p - old[b])) * w.share[k];
            }
            [sum.x, sum.y, sum.z]
        })
        .collect();
    (Joints { parent, head, tail }, points)
}

fn stretch(bone: usize, s: &Sizes, axis: Vec3) -> Stretch {
    let axis = axis.normalized();
    if bone == HEAD {
        return Stretch::Box(Vec3::new(s.head, s.head, s.head));
    }
    if bone < HEAD {
        return Stretch::Box(Vec3::new(s.girth, s.length, s.girth));
    }
    let own = |l: Limb| bone == limb(BabySide::Left, l) || bone == limb(BabySide::Right, l);
    let rod = |along| Stretch::Rod(axis, along, s.flesh);
    if own(Limb::Clavicle) || own(Limb::Shoulder) {
        Stretch::Box(Vec3::new(s.girth, s.girth, s.girth))
    } else if own(Limb::UpperArm) || own(Limb::UpperArmEnd) {
        rod(s.upper_arm)
    } else if own(Limb::Forearm) || own(Limb::ForearmEnd) {
        rod(s.forearm)
    } else if own(Limb::Thigh) || own(Limb::ThighEnd) {
        rod(s.thigh)
    } else if own(Limb::Shin) || own(Limb::ShinEnd) {
        rod(s.shin)
    } else if own(Limb::Foot) || own(Limb::Toes) {
        Stretch::Box(Vec3::new(s.foot, s.foot, s.foot))
    } else {
        Stretch::Box(Vec3::new(s.forearm, s.forearm, s.forearm))
    }
}
