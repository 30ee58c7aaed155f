//! The body at rest. In: the bytes that `bake` wrote. Out: points, quads, bones, weights and named places of both sides.
//!
//! The bytes: `FORM`, version, how many vertices and quads of the left half, bones, landmarks, pairs of lash points;
//! then planes: the quads' corners, each as its distance behind the first vertex not yet named; the quads' parts;
//! which vertices lie on the midline; positions and lean differences, each coordinate as its difference from a + b - c
//! of earlier vertices of its quad, low bytes then high bytes, 200 steps a centimetre; bones; weights; regions; paint;
//! landmarks; lashes. Frame: x to the baby's left, y to its head, z to its front, the origin between the hip joints.

use super::bone::{self, BONES, Limb, limb};
use super::landmark::{LANDMARKS, Landmark};
use super::mesh::{Near, smoothed_once};
use super::plate::Plate;
use crate::body::part::Part;
use crate::units::{BabySide, Vec3};

const BYTES: &[u8] = include_bytes!("form.bin");
const VERSION: u8 = 1;
const UNIT: f32 = 1.0 / 200.0;

/// A bone at rest.
#[derive(Clone, Copy, Debug)]
pub struct Bone {
    /// The bone it hangs on.
    pub parent: Option<usize>,
    /// Its joint, and how that moves when the baby is lean.
    pub head: Vec3,
    /// See `head`.
    pub head_lean: Vec3,
    /// Its end.
    pub tail: Vec3,
    /// See `tail`.
    pub tail_lean: Vec3,
}

/// The bones that carry a vertex, and their shares of 1; unused places have share 0.
#[derive(Clone, Copy, Debug)]
pub struct Weights {
    /// Numbers of bones.
    pub bone: [u8; 4],
    /// Their shares.
    pub share: [f32; 4],
}

/// Shares of the skin, 0 to 1 at each vertex.
#[derive(Clone, Debug)]
pub struct Regions {
    /// Relaxed between the thighs.
    pub crotch: Vec<f32>,
    /// How far the belly is rounded.
    pub push: Vec<f32>,
    /// Relaxed over belly and chest, where the trunk folds.
    pub front: Vec<f32>,
    /// Relaxed over the pubic bone.
    pub pubis: Vec<f32>,
    /// Lifted between the buttocks.
    pub bridge: Vec<f32>,
    /// Relaxed at knees, elbows and shoulders.
    pub joints: Vec<f32>,
    /// Relaxed after skinning: everywhere but on the head, less on fingers and toes.
    pub mush: Vec<f32>,
    /// Where hair grows.
    pub hair: Vec<f32>,
    /// Lips.
    pub lips: Vec<f32>,
    /// Folds of the limbs.
    pub fold: Vec<f32>,
}

/// The body at rest, decoded once and shared by reference.
#[derive(Clone, Debug)]
pub struct Rest {
    /// Where each vertex lies, cm.
    pub points: Vec<[f32; 3]>,
    /// How each moves when the baby is lean.
    pub lean: Vec<[f32; 3]>,
    /// The faces, counter-clockwise from outside; a quad and its mirror image are cut along mirrored diagonals.
    pub quads: Vec<[u16; 4]>,
    /// The part of each quad.
    pub part: Vec<Part>,
    /// The vertex on the other side.
    pub mirror: Vec<u16>,
    /// What carries each vertex.
    pub weights: Vec<Weights>,
    /// The bones.
    pub bones: Vec<Bone>,
    /// The neighbours of each vertex.
    pub near: Near,
    /// Shares of the skin.
    pub regions: Regions,
    /// Pairs of vertices above and below the slit of the left eye, from its inner corner.
    pub lashes: Vec<[u16; 2]>,
    /// The quads of pelvis and thighs.
    pub(super) seat: Vec<[u16; 4]>,
    /// The plate between the thighs.
    pub(super) plate: Plate,
    /// The plate of the belly.
    pub(super) belly: Plate,
    landmarks: Vec<u16>,
}

/// Reads the bytes in order.
struct Reader<'a>(&'a [u8]);

impl<'a> Reader<'a> {
    fn plane(&mut self, n: usize) -> &'a [u8] {
        let (plane, rest) = self.0.split_at(n);
        self.0 = rest;
        plane
    }
    fn u8(&mut self) -> u8 {
        self.plane(1)[0]
    }
    fn u16(&mut self) -> u16 {
        let b = self.plane(2);
        u16::from_le_bytes([b[0], b[1]])
    }
    fn planes16(&mut self, n: usize) -> Vec<u16> {
        let (low, high) = (self.plane(n), self.plane(n));
        low.iter().zip(high).map(|(l, h)| u16::from_le_bytes([*l, *h])).collect()
    }
    fn shares(&mut self, n: usize) -> Vec<f32> {
        self.plane(n).iter().map(|b| f32::from(*b) / 255.0).collect()
    }
    fn vec3(&mut self) -> Vec3 {
        let mut k = || f32::from(self.u16() as i16) * UNIT;
        Vec3::new(k(), k(), k())
    }
}

/// The body at rest.
pub fn rest() -> Rest {
    let mut r = Reader(BYTES);
    assert_eq!((r.plane(4), r.u8()), (&b"FORM"[..], VERSION), "form.bin is of this version");
    let (half, quads) = (usize::from(r.u16()), usize::from(r.u16()));
    let (bones, marks, lashes) = (usize::from(r.u8()), usize::from(r.u8()), usize::from(r.u8()));
    assert_eq!((bones, marks), (BONES, LANDMARKS), "form.bin has the bones and landmarks that are named");
    let left = left_quads(&mut r, quads);
    let codes = r.plane(quads);
    let midline = r.plane(half);
    let guesses = guesses(&left, half);
    let points = coordinates(&mut r, &guesses);
    let lean = coordinates(&mut r, &guesses);
    let parents = r.plane(bones);
    let mut read = |n| (0..n).map(|_| [r.vec3(), r.vec3()]).collect::<Vec<_>>();
    let (heads, tails) = (read(bones), read(bones));
    let bones = (0..bones).map(|i| Bone {
        parent: usize::from(parents[i]).checked_sub(1),
        head: heads[i][0],
        head_lean: heads[i][1],
        tail: tails[i][0],
        tail_lean: tails[i][1],
    });
    let bones = bones.collect();
    let weights = weights(&mut r, half);
    let mut mask = || r.shares(half);
    let [crotch, plate, belly, push, pubis, bridge, seat] = std::array::from_fn(|_| mask());
    let [hair, lips, fold] = std::array::from_fn(|_| mask());
    let landmarks = (0..marks).map(|_| r.u16()).collect();
    let lashes = (0..lashes).map(|_| [r.u16(), r.u16()]).collect();

    // The right half.
    let mut copies: Vec<usize> = vec![];
    let mut mirror: Vec<u16> = (0..half)
        .map(|v| {
            if midline[v] == 1 {
                return v as u16;
            }
            copies.push(v);
            (half + copies.len() - 1) as u16
        })
        .collect();
    mirror.extend(copies.iter().map(|v| *v as u16));
    let flipped = |p: &[f32; 3]| [-p[0], p[1], p[2]];
    let both = |mut of: Vec<[f32; 3]>| {
        let more: Vec<_> = copies.iter().map(|v| flipped(&of[*v])).collect();
        of.extend(more);
        of
    };
    let wide = |mut of: Vec<f32>| {
        let more: Vec<_> = copies.iter().map(|v| of[*v]).collect();
        of.extend(more);
        of
    };
    let mut all = left.clone();
    all.extend(left.iter().map(|q| [0, 3, 2, 1].map(|k| mirror[usize::from(q[k])])));
    let mut part: Vec<Part> = codes.iter().map(|c| Part::from_code(*c)).collect();
    part.extend(codes.iter().map(|c| Part::from_code(*c).mirrored()));
    let mut carried: Vec<Weights> = weights;
    let flip = |w: Weights| Weights { bone: w.bone.map(|b| bone::mirrored(b.into()) as u8), ..w };
    let more: Vec<_> = copies.iter().map(|v| flip(carried[*v])).collect();
    carried.extend(more);

    let near = Near::of(&all, mirror.len());
    let (plate, belly) = (wide(plate), wide(belly));
    let seat = wide(seat);
    let of_seat = |q: &&[u16; 4]| q.iter().map(|v| seat[usize::from(*v)]).sum::<f32>() > 2.8;
    let seat = all.iter().filter(of_seat).copied().collect();
    let mut front = belly.clone();
    for _ in 0..6 {
        front = smoothed_once(&front, &near);
    }
    let joints = joints(&carried, &near);
    let mush = carried.iter().map(mush).collect();
    Rest {
        points: both(points),
        lean: both(lean),
        quads: all,
        part,
        seat,
        plate: Plate::of(&plate, &near, 0.10),
        belly: Plate::of(&belly, &near, 0.3),
        regions: Regions {
            crotch: wide(crotch),
            push: wide(push),
            front,
            pubis: wide(pubis),
            bridge: wide(bridge),
            joints,
            mush,
            hair: wide(hair),
            lips: wide(lips),
            fold: wide(fold),
        },
        mirror,
        weights: carried,
        bones,
        near,
        lashes,
        landmarks,
    }
}

impl Rest {
    /// The vertex of a landmark; of one on the midline the side does not matter.
    pub fn landmark(&self, landmark: Landmark, side: BabySide) -> usize {
        let left = self.landmarks[landmark as usize];
        usize::from(match side {
            BabySide::Left => left,
            BabySide::Right => self.mirror[usize::from(left)],
        })
    }
}

impl Weights {
    /// The share of the bones that `test` accepts.
    pub fn of(&self, test: impl Fn(usize) -> bool) -> f32 {
        let share = |k: usize| if test(self.bone[k].into()) { self.share[k] } else { 0.0 };
        share(0) + share(1) + share(2) + share(3)
    }
    /// The bone with the largest share.
    pub fn main(&self) -> usize {
        let mut best = 0;
        for k in 1..4 {
            if self.share[k] > self.share[best] {
                best = k;
            }
        }
        self.bone[best].into()
    }
}

fn left_quads(r: &mut Reader, quads: usize) -> Vec<[u16; 4]> {
    let corners: [Vec<u16>; 4] = std::array::from_fn(|_| r.planes16(quads));
    let mut new = 0u16;
    (0..quads)
        .map(|q| {
            std::array::from_fn(|k| {
                let v = new - corners[k][q];
                new = new.max(v + 1);
                v
            })
        })
        .collect()
}

/// Of which three earlier vertices each is guessed, as a + b - c.
fn guesses(quads: &[[u16; 4]], vertices: usize) -> Vec<Option<[usize; 3]>> {
    let mut guess = vec![None; vertices];
    let mut count = 0;
    for q in quads {
        let corner = |k: usize| usize::from(q[k % 4]);
        for k in 0..4 {
            let v = corner(k);
            if v < count {
                continue;
            }
            let (a, b, c) = (corner(k + 3), corner(k + 1), corner(k + 2));
            guess[v] = match (a < v, b < v, c < v) {
                (true, true, true) => Some([a, b, c]),
                (true, ..) => Some([a, a, a]),
                (false, true, _) => Some([b, b, b]),
                _ => None,
            };
        }
        count = count.max(usize::from(q[0].max(q[1]).max(q[2]).max(q[3])) + 1);
    }
    guess
}

fn coordinates(r: &mut Reader, guesses: &[Option<[usize; 3]>]) -> Vec<[f32; 3]> {
    let mut whole = vec![[0i32; 3]; guesses.len()];
    for k in [0, 1, 2] {
        for (v, d) in r.planes16(guesses.len()).into_iter().enumerate() {
            let d = i32::from(d);
            let d = if d & 1 == 0 { d / 2 } else { -(d + 1) / 2 };
            whole[v][k] = d + guesses[v].map_or(0, |[a, b, c]| whole[a][k] + whole[b][k] - whole[c][k]);
        }
    }
    whole.iter().map(|p| p.map(|k| k as f32 * UNIT)).collect()
}

fn weights(r: &mut Reader, n: usize) -> Vec<Weights> {
    let count = r.plane(n);
    let bone: [&[u8]; 4] = std::array::from_fn(|_| r.plane(n));
    let share: [&[u8]; 4] = std::array::from_fn(|_| r.plane(n));
    let one = |v: usize| Weights {
        bone: std::array::from_fn(|k| bone[k][v]),
        share: std::array::from_fn(
            |k| if k < count[v].into() { f32::from(share[k][v]) / 255.0 } else { 0.0 },
        ),
    };
    (0..n).map(one).collect()
}

/// Where two bones of a joint carry the skin alike.
fn joints(weights: &[Weights], near: &Near) -> Vec<f32> {
    let pairs =
        [(Limb::UpperArmEnd, Limb::Forearm), (Limb::ThighEnd, Limb::Shin), (Limb::UpperArm, Limb::Shoulder)];
    let both = |w: &Weights| {
        let mut sum = 0.0;
        for side in [BabySide::Left, BabySide::Right] {
            for (a, b) in pairs {
                sum += 4.0 * w.of(|i| i == limb(side, a)) * w.of(|i| i == limb(side, b));
            }
        }
        (sum * 1.5f32).clamp(0.0, 1.0)
    };
    smoothed_once(&weights.iter().map(both).collect::<Vec<_>>(), near)
}

/// How far a vertex is relaxed after skinning. The head never is; fingers and toes hardly.
fn mush(w: &Weights) -> f32 {
    let digit = |i: usize| {
        [BabySide::Left, BabySide::Right].into_iter().any(|side| {
            let first = limb(side, Limb::Fingers);
            (first..first + 15).contains(&i) || i == limb(side, Limb::Toes)
        })
    };
    (1.0 - w.of(|i| i == bone::HEAD)) * (1.0 - 0.6 * w.of(digit))
}
