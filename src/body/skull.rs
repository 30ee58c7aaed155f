//! What a finger meets from below: the skull with its seams, a face, a bottom. In: what leads. Out: lines and patches of it
//! in the view along the birth canal, in cm.
//!
//! The head is an ellipsoid of published diameters; seams and fontanelles are curves on it, laid by angles in its midline.
//! The posed form has no seams: this is a head for teaching, and no woman's baby.
//!
//! - Space: x to the baby's left, y towards what names the position (occiput, brow, chin, sacrum), z to the viewer.
//! - Source: breadth 9.5 (biparietal), length 11.5 (occipitofrontal), height 9.5 (as suboccipitobregmatic) cm:
//!   `tests/published/diameters.csv`, biparietal from common practice. Large fontanelle about 3 by 2.4 cm, seen (two
//!   teaching texts; mean of 217 newborns 2.4); small one under 1 cm, seen. Angles in the midline: house.

use crate::units::Vec3;

/// What leads, as it is met from below.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leads {
    /// A head well bent forward.
    BentHead,
    /// A head held straight.
    StraightHead,
    /// A brow.
    Brow,
    /// A face.
    Face,
    /// A bottom, its legs stretched up.
    Bottom,
}

/// Half the breadth, height and length of the head, cm.
pub const HALF: Vec3 = Vec3::new(4.75, 4.75, 5.75);
/// Where fontanelles and the root of the nose lie in the midline: degrees from the vertex towards the face.
const LARGE: f32 = 25.0;
const SMALL: f32 = -65.0;
const NOSE_ROOT: f32 = 92.0;

/// A named line or patch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Seam {
    /// Between the parietal bones.
    Sagittal,
    /// Between the frontal bones.
    Frontal,
    /// Between frontal and parietal bones.
    Coronal,
    /// Between parietal bones and occiput.
    Lambdoid,
    /// The large fontanelle, closed.
    LargeFontanelle,
    /// The small fontanelle, closed.
    SmallFontanelle,
    /// The ridges over the eyes.
    BrowRidge,
}

/// A line on the skull, as far as it is turned to the viewer.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Which.
    pub seam: Seam,
    /// Its points in the view, cm.
    pub points: Vec<Vec3>,
}

impl Leads {
    /// All, from a head bent forward to a bottom.
    pub const ALL: [Leads; 5] =
        [Leads::BentHead, Leads::StraightHead, Leads::Brow, Leads::Face, Leads::Bottom];

    /// The place of the midline that lies lowest, degrees from the vertex towards the face.
    fn lowest(self) -> f32 {
        match self {
            // The small fontanelle is met a finger's breadth beside the lowest point, the large one out of reach.
            Leads::BentHead | Leads::Bottom => -40.0,
            // Both at one level.
            Leads::StraightHead => -20.0,
            Leads::Brow => 62.0,
            Leads::Face => 118.0,
        }
    }

    /// Whether the position is named by the side of the face.
    fn named_by_face(self) -> bool {
        matches!(self, Leads::Brow | Leads::Face)
    }

    /// Half the breadth and half the length of what is seen, cm.
    pub fn half(self) -> (f32, f32) {
        let (sin, cos) = libm::sincosf(self.lowest().to_radians());
        let (across, along) = (HALF.y * sin, HALF.z * cos);
        match self {
            Leads::Face => (4.35, 5.1),
            Leads::Bottom => (5.0, 4.3),
            _ => (HALF.x, libm::sqrtf(across * across + along * along)),
        }
    }

    /// A point of the skull in the view: `ahead` degrees from the vertex towards the face, `aside` degrees to the baby's left.
    fn seen(self, ahead: f32, aside: f32) -> Vec3 {
        let (s, c) = libm::sincosf(ahead.to_radians());
        let (across, shrink) = libm::sincosf(aside.to_radians());
        let (up, front) = (HALF.y * shrink * c, HALF.z * shrink * s);
        let (sin, cos) = libm::sincosf(self.lowest().to_radians());
        // Away from the face, in the plane of the view.
        let back = up * sin - front * cos;
        let along = if self.named_by_face() { -back } else { back };
        Vec3::new(HALF.x * across, along, up * cos + front * sin)
    }

    /// Seams and fontanelles turned to the viewer; none of a face or a bottom.
    pub fn lines(self) -> Vec<Line> {
        if matches!(self, Leads::Face | Leads::Bottom) {
            return vec![];
        }
        let mut out = vec![];
        let mut lay = |seam, steps: u8, at: &dyn Fn(f32) -> (f32, f32)| {
            let points = (0..=steps).map(|i| {
                let (ahead, aside) = at(f32::from(i) / f32::from(steps));
                self.seen(ahead, aside)
            });
            // Up to where it turns away.
            let mut run: Vec<Vec3> = vec![];
            for p in points {
                if p.z > 0.25 {
                    run.push(p);
                } else if run.len() > 2 {
                    break;
                } else {
                    run.clear();
                }
            }
            if run.len() > 2 {
                out.push(Line { seam, points: run });
            }
        };
        lay(Seam::Sagittal, 18, &|t| (SMALL + 4.0 + (LARGE - 12.0 - SMALL - 4.0) * t, 0.0));
        lay(Seam::Frontal, 14, &|t| (LARGE + 15.0 + (NOSE_ROOT - LARGE - 15.0) * t, 0.0));
        for side in [1.0, -1.0] {
            lay(Seam::Coronal, 14, &|t| (LARGE + 16.0 * t, side * (12.0 + 66.0 * t)));
            lay(Seam::Lambdoid, 12, &|t| (SMALL - 3.0 - 34.0 * t, side * (3.0 + 52.0 * t)));
            lay(Seam::BrowRidge, 8, &|t| (NOSE_ROOT - 7.0 - 10.0 * t * t, side * (10.0 + 34.0 * t)));
        }
        for (seam, corners) in [
            (Seam::LargeFontanelle, &[(17.0, 0.0), (1.0, 13.5), (-13.0, 0.0), (1.0, -13.5)][..]),
            (Seam::SmallFontanelle, &[(4.5, 0.0), (-3.5, 4.6), (-3.5, -4.6)][..]),
        ] {
            let middle = if seam == Seam::LargeFontanelle { LARGE } else { SMALL };
            // Sides bend inwards between the bones.
            let mut ring = vec![];
            for (i, (a, b)) in corners.iter().enumerate() {
                let (c, d) = corners[(i + 1) % corners.len()];
                for t in [0.0, 0.28, 0.5, 0.72] {
                    let inward = 1.0 - 0.55 * t * (1.0 - t) * 2.0;
                    let (p, q) = ((a + (c - a) * t) * inward, (b + (d - b) * t) * inward);
                    ring.push(self.seen(middle + p, q));
                }
            }
            if ring.iter().all(|p| p.z > 0.0) {
                out.push(Line { seam, points: ring });
            }
        }
        out
    }
}
