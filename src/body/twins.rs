//! Two babies in one womb. In: two placed babies. Out: how far each must move so that neither passes through the other.

use super::baby::PosedBaby;
use crate::exam::Lie;
use crate::units::Vec3;

/// Water and membranes between two babies, cm.
pub const BETWEEN: f32 = 0.4;
/// Farthest that a lengthwise twin is moved aside, cm.
const ASIDE: f32 = 9.0;
/// Farthest that a baby is moved back behind the other, cm.
const BEHIND: f32 = 22.0;

/// The least distance from the surface of `a` to that of `b`, cm; negative where they pass into one another.
///
/// Error: up to 0.3 cm too large, since only some points of `a` are asked.
pub fn gap(a: &PosedBaby, b: &PosedBaby) -> f32 {
    gap_moved(&a.shape.spread(), b, Vec3::default())
}

/// `gap` to `b` with the points of `a` moved.
fn gap_moved(points: &[Vec3], b: &PosedBaby, by: Vec3) -> f32 {
    points.iter().fold(f32::MAX, |least, p| least.min(b.shape.nearest(*p + by).0))
}

/// How far the first and the second baby move. `lies`: theirs; `first`: +1 when the first lies on the mother's left;
/// `room`: how far the second may move up.
///
/// Two lengthwise babies move aside, each to its own side, as little as sets them apart. Otherwise the baby that does
/// not lie lengthwise (the second of two such) moves up as far as there is room, then behind the other.
pub fn apart(babies: [&PosedBaby; 2], lies: [Lie; 2], first: f32, room: f32) -> [Vec3; 2] {
    let own = babies.map(|baby| baby.shape.spread());
    let free = |by: Vec3| {
        gap_moved(&own[0], babies[1], -by) >= BETWEEN && gap_moved(&own[1], babies[0], by) >= BETWEEN
    };
    // The least t in 0..=1 for which the second baby, moved by `way` times t against the first, is free.
    let least = |start: Vec3, way: Vec3| {
        if free(start) {
            return 0.0;
        }
        let (mut touching, mut clear) = (0.0, 1.0);
        for _ in 0..8 {
            let middle = 0.5 * (touching + clear);
            if free(start + way * middle) { clear = middle } else { touching = middle }
        }
        clear
    };
    if lies == [Lie::Longitudinal; 2] {
        let way = Vec3::new(-2.0 * ASIDE * first, 0.0, 0.0);
        let t = least(Vec3::default(), way).max(0.25);
        return [way * (-0.5 * t), way * (0.5 * t)];
    }
    // The second moves against the first, or the first against the second.
    let second_moves = lies[1] != Lie::Longitudinal;
    let sign = if second_moves { 1.0 } else { -1.0 };
    let up = Vec3::new(0.0, room.max(0.0) * sign, 0.0);
    let risen = up * least(Vec3::default(), up);
    let back = Vec3::new(0.0, 0.0, -BEHIND * sign);
    let moved = risen + back * least(risen, back);
    if second_moves { [Vec3::default(), moved] } else { [-moved, Vec3::default()] }
}
