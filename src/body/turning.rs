//! A baby on its way from one position to another. In: two plans and a share of the way. Out: the plan in between: the
//! whole baby turned about one axis.

use super::frame::Frame;
use super::plan::{Depth, Lying, Plan};
use crate::exam::Lie;
use crate::units::Vec3;

/// The plan `share` of the way (0 to 1) from one baby to another; `None` unless the backs of both are known.
pub fn between(from: &Plan, to: &Plan, share: f32) -> Option<Plan> {
    let (Plan::Baby(a, back_a), Plan::Baby(b, back_b)) = (from, to) else { return None };
    if share <= 0.0 {
        return Some(from.clone());
    }
    if share >= 1.0 {
        return Some(to.clone());
    }
    let frame = |lying: &Lying, back: Vec3| Frame::from_up_front(lying.up, -back, Vec3::default());
    let turned = part_of_turn(&frame(a, *back_a), &frame(b, *back_b), share);
    let (up, back) = (turned.y, -turned.z);
    let lie = match up.y.abs() {
        y if y > 0.93 => Lie::Longitudinal,
        y if y > 0.3 => Lie::Oblique,
        _ => Lie::Transverse,
    };
    let lowest = |depth: Depth| match depth {
        Depth::Lowest(cm) => Some(cm),
        Depth::Fifths(_) => None,
    };
    let near = if share < 0.5 { a } else { b };
    let depth = match (lowest(a.depth), lowest(b.depth)) {
        // It stands free above the brim while it turns over; round its own axis it stays where it is.
        (Some(p), Some(q)) if a.up.dot(b.up) < 0.0 => {
            let straight = p + (q - p) * share;
            Depth::Lowest(straight.max(0.8 * (1.0 - up.y.abs()) + straight * up.y.abs()))
        }
        (Some(p), Some(q)) => Depth::Lowest(p + (q - p) * share),
        _ => near.depth,
    };
    Some(Plan::Baby(Lying { up, lie, depth, ..*near }, back))
}

/// The frame reached after a share of the shortest turn from one frame to another about one axis.
fn part_of_turn(a: &Frame, b: &Frame, share: f32) -> Frame {
    // The turn that carries a into b, as rows of a matrix.
    let carry = |v: Vec3| b.direction(Vec3::new(v.dot(a.x), v.dot(a.y), v.dot(a.z)));
    let (ex, ey, ez) =
        (carry(Vec3::new(1.0, 0.0, 0.0)), carry(Vec3::new(0.0, 1.0, 0.0)), carry(Vec3::new(0.0, 0.0, 1.0)));
    let cos = (0.5 * (ex.x + ey.y + ez.z - 1.0)).clamp(-1.0, 1.0);
    let angle = libm::acosf(cos);
    let skew = Vec3::new(ey.z - ez.y, ez.x - ex.z, ex.y - ey.x);
    let axis = if skew.length() > 1e-3 {
        skew.normalized()
    } else {
        // Half a turn: the axis is what the turn leaves in place, doubled.
        [ex + Vec3::new(1.0, 0.0, 0.0), ey + Vec3::new(0.0, 1.0, 0.0), ez + Vec3::new(0.0, 0.0, 1.0)]
            .into_iter()
            .max_by(|p, q| p.length().total_cmp(&q.length()))
            .unwrap_or_default()
            .normalized()
    };
    let (sin, cos) = libm::sincosf(angle * share);
    let turn = |v: Vec3| v * cos + axis.cross(v) * sin + axis * (axis.dot(v) * (1.0 - cos));
    Frame { x: turn(a.x), y: turn(a.y), z: turn(a.z), origin: a.origin }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn frame(up: Vec3, back: Vec3) -> Frame {
        Frame::from_up_front(up, -back, Vec3::default())
    }

    #[test]
    fn the_whole_turn_arrives_and_half_of_it_lies_between() {
        let (down, up) = (Vec3::new(0.0, -1.0, 0.0), Vec3::new(0.0, 1.0, 0.0));
        let (front, left) = (Vec3::new(0.0, 0.0, 1.0), Vec3::new(1.0, 0.0, 0.0));
        let (a, b) = (frame(down, left), frame(down, front));
        let half = part_of_turn(&a, &b, 0.5);
        assert!((half.y - down).length() < 1e-4);
        assert!((-half.z - (left + front).normalized()).length() < 1e-4);
        // Head up with the back in front, over by half a turn in the plane of the picture.
        let over = part_of_turn(&frame(up, front), &frame(down, front), 0.5);
        assert!(over.y.x.abs() > 0.999 && (-over.z - front).length() < 1e-3, "it lies across");
        let whole = part_of_turn(&a, &b, 1.0);
        assert!((whole.z - b.z).length() < 1e-4 && (whole.x - b.x).length() < 1e-4);
    }
}
