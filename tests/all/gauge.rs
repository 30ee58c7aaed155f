//! Callipers and tape for a posed baby. In: its surface. Out: sections, breadths, girths and lengths of its surface, cm.

use handspan::body::baby::PosedBaby;
use handspan::body::form::landmark::Landmark;
use handspan::body::frame::Frame;
use handspan::body::head;
use handspan::body::shape::{Piece, Shape};
use handspan::units::{BabySide, Vec3};

/// Points of a section.
const AROUND: usize = 360;
/// Farther out than any part of a baby, cm.
const OUT: f32 = 20.0;

/// A section of a surface by the plane through a frame's origin across its y axis: points (x, z) in the frame, all round.
/// The surface must be star-shaped there as seen from the origin.
pub fn section(shape: &Shape, plane: &Frame) -> Vec<(f32, f32)> {
    (0..AROUND)
        .filter_map(|i| {
            let (sin, cos) = libm::sincosf(i as f32 / AROUND as f32 * std::f32::consts::TAU);
            let outward = plane.direction(Vec3::new(sin, 0.0, cos));
            let p = shape.ray(plane.origin + outward * OUT, -outward, OUT)?;
            let local = plane.local(p);
            Some((local.x, local.z))
        })
        .collect()
}

/// Length of a tape laid taut round the points.
pub fn tape(points: &[(f32, f32)]) -> f32 {
    let hull = hull(points);
    (0..hull.len())
        .map(|i| {
            let (a, b) = (hull[i], hull[(i + 1) % hull.len()]);
            let (x, y) = (a.0 - b.0, a.1 - b.1);
            (x * x + y * y).sqrt()
        })
        .sum()
}

/// Breadth (x) and length (z) between the jaws of a calliper.
pub fn calliper(points: &[(f32, f32)]) -> (f32, f32) {
    let span = |get: fn(&(f32, f32)) -> f32| {
        let (low, high) = points.iter().map(get).fold((f32::MAX, f32::MIN), |(l, h), v| (l.min(v), h.max(v)));
        high - low
    };
    (span(|p| p.0), span(|p| p.1))
}

/// The convex hull, by the monotone chain.
fn hull(points: &[(f32, f32)]) -> Vec<(f32, f32)> {
    let mut sorted = points.to_vec();
    sorted.sort_by(|a, b| a.partial_cmp(b).expect("numbers"));
    let mut out: Vec<(f32, f32)> = vec![];
    let half = |points: &mut dyn Iterator<Item = &(f32, f32)>, out: &mut Vec<(f32, f32)>| {
        let start = out.len();
        for p in points {
            while out.len() >= start + 2 {
                let (a, b) = (out[out.len() - 2], out[out.len() - 1]);
                if (b.0 - a.0) * (p.1 - a.1) - (b.1 - a.1) * (p.0 - a.0) > 0.0 {
                    break;
                }
                out.pop();
            }
            out.push(*p);
        }
        out.pop();
    };
    half(&mut sorted.iter(), &mut out);
    half(&mut sorted.iter().rev(), &mut out);
    out
}

/// What the tape and the callipers find on a head.
pub struct HeadSize {
    /// Round the widest level of the skull, without ears.
    pub girth: f32,
    /// Across, there.
    pub breadth: f32,
    /// From brow to occiput, there.
    pub length: f32,
}

/// The skull at the level of the greatest girth above brows and ears: the level that is measured by scan.
pub fn head_size(baby: &PosedBaby) -> HeadSize {
    let skull = baby.shape.piece(Piece::Skull);
    (0..=10)
        .map(|i| {
            let height = baby.head.point(Vec3::new(0.0, 0.2 * i as f32 * baby.posture.measures.head, 0.0));
            let points = section(&skull, &Frame { origin: height, ..baby.head });
            let (breadth, length) = calliper(&points);
            HeadSize { girth: tape(&points), breadth, length }
        })
        .max_by(|a, b| a.girth.total_cmp(&b.girth))
        .expect("a level")
}

/// Girth of the trunk, without limbs, across the belly's own frame.
pub fn abdomen(baby: &PosedBaby) -> f32 {
    tape(&section(&baby.shape.piece(Piece::Trunk), &baby.spine.belly.within(&baby.body)))
}

/// Heel to the tip of the longest toe, along the foot.
pub fn foot(baby: &PosedBaby, side: BabySide) -> f32 {
    baby.shape.piece(Piece::Foot(side)).span(baby.body.direction(baby.legs[side.index()].toes))
}

/// Lengths between joints on one side: shoulder to elbow, elbow to wrist, hip to knee, knee to ankle.
pub fn bones(baby: &PosedBaby, side: BabySide) -> [f32; 4] {
    let (arm, leg) = (&baby.arms[side.index()], &baby.legs[side.index()]);
    [
        (arm.elbow - arm.shoulder).length(),
        (arm.wrist - arm.elbow).length(),
        (leg.knee - leg.hip).length(),
        (leg.ankle - leg.knee).length(),
    ]
}

/// From the skin behind the bent elbow to the wrist, along the forearm.
pub fn elbow_to_wrist(baby: &PosedBaby, side: BabySide) -> f32 {
    let arm = &baby.arms[side.index()];
    let own = baby.shape.piece(Piece::Arm(side));
    let (elbow, wrist) = (baby.body.point(arm.elbow), baby.body.point(arm.wrist));
    let back = (elbow - wrist).normalized();
    let skin = own.ray(elbow + back * 5.0, -back, 6.0).expect("the elbow's skin");
    (skin - wrist).length()
}

/// Length and breadth of the whole baby as it lies: the longest span in its own plane of symmetry, and the span along
/// its long axis.
pub fn long_axis(baby: &PosedBaby) -> f32 {
    baby.shape.span(baby.body.y)
}

/// Landmarks of the head in its midline, in the head's frame, as found on the posed surface.
pub struct HeadMarks {
    /// Where the nape meets the skull below the occiput.
    pub under_occiput: Vec3,
    /// Where the throat meets the head under the chin.
    pub under_chin: Vec3,
    /// Tip of the chin.
    pub chin: Vec3,
    /// Between the brows.
    pub glabella: Vec3,
    /// Middle of the large fontanelle.
    pub bregma: Vec3,
}

/// The landmarks of a head that is not turned to a side.
pub fn head_marks(baby: &PosedBaby) -> HeadMarks {
    let core = baby.shape.piece(Piece::Core);
    // The profile in the midline, by degrees from the crown towards the face.
    let at = |degrees: f32| {
        let (sin, cos) = libm::sincosf(degrees.to_radians());
        let outward = baby.head.direction(Vec3::new(0.0, cos, sin));
        let p = core.ray(baby.head.origin + outward * OUT, -outward, OUT)?;
        Some(baby.head.local(p))
    };
    let nearest = |from: i32, to: i32, far: &dyn Fn(Vec3) -> f32| {
        (from..to)
            .filter_map(|degrees| at(degrees as f32))
            .min_by(|p, q| far(*p).total_cmp(&far(*q)))
            .expect("a profile")
    };
    let k = baby.posture.measures.head;
    HeadMarks {
        under_occiput: baby.head.local(baby.shape.landmark(Landmark::Suboccipital, BabySide::Left)),
        // Head and neck go over into one another without a waist: taken where the form names it.
        under_chin: baby.head.local(baby.shape.landmark(Landmark::Submental, BabySide::Left)),
        chin: nearest(125, 155, &|p| -p.dot(Vec3::new(0.0, -0.8, 0.6))),
        glabella: nearest(60, 110, &|p| (p.y - head::BROWS * k).abs()),
        bregma: nearest(-10, 60, &|p| (p.z - head::BREGMA * k).abs()),
    }
}

/// The point of the skull, in the midline, that lies farthest from `from` (both in the head's frame).
pub fn farthest(baby: &PosedBaby, from: Vec3) -> Vec3 {
    let skull = baby.shape.piece(Piece::Head);
    (0..360)
        .filter_map(|degrees| {
            let (sin, cos) = libm::sincosf((degrees as f32).to_radians());
            let outward = baby.head.direction(Vec3::new(0.0, cos, sin));
            let p = skull.ray(baby.head.origin + outward * OUT, -outward, OUT)?;
            Some(baby.head.local(p))
        })
        .max_by(|p, q| (*p - from).length().total_cmp(&(*q - from).length()))
        .expect("a profile")
}
