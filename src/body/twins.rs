//! Two babies of the one form in one womb. In: two placed babies. Out: how far each must move so that neither passes through
//! the other, from one coarse cast of first and last hits along the way they part; without search.

use super::baby::PosedBaby;
use crate::exam::Lie;
use crate::units::Vec3;
use std::collections::BTreeMap;

/// Water and membranes between two babies, cm.
const BETWEEN: f32 = 0.4;
/// Least distance that two lengthwise twins are moved apart, cm.
const LEAST_APART: f32 = 4.5;
/// Farthest that a baby is moved back behind the other, cm.
const BEHIND: f32 = 22.0;

/// The least distance from the surface of `a` to that of `b`, cm; negative where they pass into one another.
///
/// Error: up to 0.3 cm too large, since only some points of `a` are asked.
pub fn gap(a: &PosedBaby, b: &PosedBaby) -> f32 {
    a.shape.spread().into_iter().fold(f32::MAX, |least, p| least.min(b.shape.nearest(p).0))
}

/// How far the first and the second baby move. `lies`: theirs; `first`: +1 when the first lies on the mother's left;
/// `room`: how far the second may move up.
///
/// Two lengthwise babies move aside, each to its own side, as little as sets them apart. Otherwise the baby that does
/// not lie lengthwise (the second of two such) moves up as far as there is room, then behind the other.
pub fn apart(babies: [&PosedBaby; 2], lies: [Lie; 2], first: f32, room: f32) -> [Vec3; 2] {
    let [own, other] = babies.map(|baby| baby.shape.vertices());
    if lies == [Lie::Longitudinal; 2] {
        // The first on its side, the second on the other.
        let way = Vec3::new(first, 0.0, 0.0);
        let shift = (overlap(&other, &own, way, UP, BACK) + BETWEEN).max(LEAST_APART);
        return [way * (0.5 * shift), way * (-0.5 * shift)];
    }
    // The one that does not lie lengthwise moves against the other: up as far as there is room, then behind.
    let second_moves = lies[1] != Lie::Longitudinal;
    let (moving, still) = if second_moves { (other, own) } else { (own, other) };
    let needed = overlap(&still, &moving, UP, LEFT, BACK) + BETWEEN;
    let risen = needed.clamp(0.0, room.max(0.0));
    let moved: Vec<Vec3> = moving.iter().map(|p| *p + UP * risen).collect();
    let behind =
        if risen < needed { (overlap(&still, &moved, BACK, LEFT, UP) + BETWEEN).max(0.0) } else { 0.0 };
    let by = UP * risen + BACK * behind.min(BEHIND);
    if second_moves { [Vec3::default(), by] } else { [by, Vec3::default()] }
}

const UP: Vec3 = Vec3::new(0.0, 1.0, 0.0);
const LEFT: Vec3 = Vec3::new(1.0, 0.0, 0.0);
const BACK: Vec3 = Vec3::new(0.0, 0.0, -1.0);

/// Side of the cells across the way along which two babies part, cm: wider than skin is between two of its points.
const CELL: f32 = 0.8;

/// How far `moving` must go along `way` so that it lies wholly beyond `still`; negative when there is room. A coarse cast
/// of first and last hits along the way: of each cell across it (and the cells round that), how far `still` reaches and where
/// `moving` begins.
fn overlap(still: &[Vec3], moving: &[Vec3], way: Vec3, across: Vec3, over: Vec3) -> f32 {
    let cell =
        |p: &Vec3| (libm::floorf(p.dot(across) / CELL) as i32, libm::floorf(p.dot(over) / CELL) as i32);
    let mut reach = BTreeMap::new();
    for p in still {
        let far = reach.entry(cell(p)).or_insert(f32::MIN);
        *far = far.max(p.dot(way));
    }
    let mut begin = BTreeMap::new();
    for p in moving {
        let near = begin.entry(cell(p)).or_insert(f32::MAX);
        *near = near.min(p.dot(way));
    }
    let mut most = f32::MIN;
    for ((u, v), near) in begin {
        for (du, dv) in (-1..=1).flat_map(|du| (-1..=1).map(move |dv| (du, dv))) {
            if let Some(far) = reach.get(&(u + du, v + dv)) {
                most = most.max(far - near);
            }
        }
    }
    most
}
