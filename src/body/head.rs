//! The head's own measures. In: a point in its frame (y towards the vertex, z towards the face) and its scale. Out: the
//! region of the head it is in.

use crate::units::Vec3;

/// From the skull base to the vertex along the axis of a flexed head, cm at term.
///
/// Source: DESIGN's working value of 9.5-10 cm, common practice; scaled by the head's breadth at other weeks.
pub const HEIGHT: f32 = 9.75;

/// How far in front of the head's middle the large fontanelle (bregma) lies, cm at term.
pub const BREGMA: f32 = 1.2;
/// How far above the head's middle the inner ends of the brows lie, cm at term.
pub const BROWS: f32 = 0.2;

/// Which part of the head a surface point is, by its place in the head's own frame.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeadRegion {
    /// From the chin to the orbital ridges.
    Face,
    /// From the orbital ridges to the large fontanelle.
    Forehead,
    /// From the large fontanelle to the occiput.
    Vertex,
}

/// The region of `local`, a point in the head's frame at scale `k`.
pub fn region(local: Vec3, k: f32) -> HeadRegion {
    let p = local * (1.0 / k);
    if p.z > 1.5 && p.y < BROWS {
        HeadRegion::Face
    } else if p.z > BREGMA {
        HeadRegion::Forehead
    } else {
        HeadRegion::Vertex
    }
}
