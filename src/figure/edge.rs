//! Places on a baby that a label may point at. In: its cast and its frames. Out: points near its visible edges, off its
//! face, as someone in front of her sees them.

use crate::body::baby::PosedBaby;
use crate::body::cast::Cast;
use crate::body::part::Region;
use crate::units::{FigurePoint, Vec3};

/// How far inside an edge a pointer ends, cm.
const INSIDE: f32 = 0.7;
/// Depth that parts one body from another behind it, cm.
const STEP: f32 = 2.5;

/// Mother space seen from the front.
pub fn flat(p: Vec3) -> FigurePoint {
    FigurePoint::new(p.x, p.y)
}

/// From `start` towards (`x`, `y`), a unit direction: the last point before the edge of what is seen at `start`, but at
/// most `far` cm away.
pub fn rim(cast: &Cast, start: FigurePoint, x: f32, y: f32, far: f32) -> FigurePoint {
    let at = |t: f32| FigurePoint::new(start.x + x * t, start.y + y * t);
    let depth = |p: FigurePoint| cast.index_at(p.x, p.y).filter(|i| cast.hit(*i)).map(|i| cast.depth[i]);
    let mut before = depth(start);
    let mut gone = 0.0;
    while gone < far {
        let next = depth(at(gone + 0.1));
        match (before, next) {
            (Some(a), Some(b)) if (a - b).abs() < STEP => before = next,
            _ => break,
        }
        gone += 0.1;
    }
    at((gone - INSIDE).max(0.0))
}

/// The point nearest to `wanted` where this baby's own trunk is seen, in a cell of the cast that will do; `None` when there is
/// none up to 9 cm all round: another body or its own limbs hide it.
pub fn own_trunk(
    cast: &Cast,
    baby: &PosedBaby,
    wanted: FigurePoint,
    will_do: impl Fn(usize) -> bool,
) -> Option<FigurePoint> {
    let own = |p: &FigurePoint| {
        let Some(i) = cast.index_at(p.x, p.y).filter(|i| cast.hit(*i)) else { return false };
        cast.part[i].region() == Region::Trunk
            && will_do(i)
            && baby.shape.off(Vec3::new(p.x, p.y, cast.depth[i])).is_some_and(|off| off < 0.5)
    };
    if own(&wanted) {
        return Some(wanted);
    }
    // With a little skin all round it.
    let inside = |p: &FigurePoint| {
        [(0.0, 0.0), (0.35, 0.0), (-0.35, 0.0), (0.0, 0.35), (0.0, -0.35)]
            .iter()
            .all(|(x, y)| own(&FigurePoint::new(p.x + x, p.y + y)))
    };
    (1..=18).find_map(|ring| {
        (0..16)
            .map(|k| {
                // Half a step off the axes on both sides alike: a mirrored baby is searched in the mirrored order.
                let turn = (k / 2) as f32 + 0.5;
                let (sin, cos) = libm::sincosf(turn / 16.0 * std::f32::consts::TAU);
                let side = if k % 2 == 0 { 1.0 } else { -1.0 };
                let (x, y) = (sin * side * lean_of(baby), cos);
                FigurePoint::new(wanted.x + x * 0.5 * ring as f32, wanted.y + y * 0.5 * ring as f32)
            })
            .find(inside)
    })
}

/// Towards which side of the picture a baby's back leans.
fn lean_of(baby: &PosedBaby) -> f32 {
    if baby.body.z.x > 0.0 { -1.0 } else { 1.0 }
}

/// A point of the skull near its edge at the left (`sign` -1) or right (+1) of the picture, off the face; `None` when
/// the face lies there.
pub fn skull(cast: &Cast, baby: &PosedBaby, sign: f32) -> Option<FigurePoint> {
    let k = baby.posture.measures.head;
    let middle = flat(baby.head.point(Vec3::new(0.0, 0.5, -0.5) * k));
    let face = flat(baby.head.point(Vec3::new(0.0, -1.9, 3.4) * k));
    // Rows from the middle of the skull away from the face.
    let away = if face.y > middle.y { -1.0 } else { 1.0 };
    [0.0, 1.2, -1.2, 2.4, -2.4, 3.4].into_iter().find_map(|row| {
        let start = FigurePoint::new(middle.x, middle.y + row * away * k);
        let p = rim(cast, start, sign, 0.0, 6.5 * k);
        let i = cast.index_at(p.x, p.y)?;
        let (dx, dy) = (p.x - face.x, p.y - face.y);
        let clear = dx * dx + dy * dy > 11.5 * k * k || baby.head.z.z < -0.5;
        (cast.hit(i) && cast.part[i].is_head() && clear).then_some(p)
    })
}
