//! The mother's pelvis in one piece, as points in mother space, and the plane of its brim.
//!
//! In: a side. Out: outlines of the bones (closed unless said otherwise), cm, and signed distances to the brim.
//! Measures are those of textbooks (`tests/published/pelvis.csv`); the drawing between them is the artist's, by
//! about 1 cm. Her left is made; her right is its mirror image.

use crate::units::{MotherPoint, MotherSide, Vec3};

/// Tilt of the brim from the horizontal in degrees, standing (55-60 in the source; 55 chosen).
pub const BRIM_TILT: f32 = 55.0;
const SIN: f32 = 0.819_152;
const COS: f32 = 0.573_576_4;
/// Upper border of the symphysis to the promontory: the true conjugate, cm.
pub const CONJUGATE: f32 = 11.0;
/// Widest breadth of the inlet, cm.
pub const INLET_BREADTH: f32 = 13.0;
/// Depth of the symphysis, cm.
pub const SYMPHYSIS_DEPTH: f32 = 4.0;
/// Between the ischial tuberosities, cm.
pub const TUBEROSITIES: f32 = 11.0;
/// The ischial spines below the brim along the axis, cm (a teaching convention, from memory: not a checked value).
pub const SPINES_BELOW_BRIM: f32 = 5.0;

/// Distance of a point from the plane of the brim, cm: positive above it (towards the womb), negative in the
/// pelvis. The plane contains the upper border of the symphysis and the promontory.
pub fn above_brim(p: MotherPoint) -> f32 {
    p.0.dot(-axis())
}

/// Direction of the pelvic axis at the brim: down and back, length 1.
pub fn axis() -> Vec3 {
    Vec3::new(0.0, -COS, -SIN)
}

/// Direction in the plane of the brim from the symphysis to the promontory: up and back, length 1.
pub fn brim_back() -> Vec3 {
    Vec3::new(0.0, SIN, -COS)
}

/// The point of the brim plane `x` to her left and `back` cm behind the symphysis.
pub fn brim_point(x: f32, back: f32) -> MotherPoint {
    MotherPoint(Vec3::new(x, 0.0, 0.0) + brim_back() * back)
}

/// How far the outlet (between the lowest points of the tuberosities) lies below the brim along the axis, cm.
pub fn outlet_below_brim() -> f32 {
    -above_brim(tuberosity(MotherSide::Left))
}

/// Upper and lower border of the symphysis, in the midline.
pub fn symphysis() -> [MotherPoint; 2] {
    // 100 degrees from the conjugate: down and back at 45 degrees.
    let d = SYMPHYSIS_DEPTH * std::f32::consts::FRAC_1_SQRT_2;
    [at(0.0, 0.0, 0.0), at(0.0, -d, -d)]
}

/// The promontory of the sacrum.
pub fn promontory() -> MotherPoint {
    brim_point(0.0, CONJUGATE)
}

/// The tip of sacrum and coccyx: 13 cm behind the lower border of the symphysis, 12 cm from the promontory.
pub fn sacrum_tip() -> MotherPoint {
    at(0.0, 1.01, -15.25)
}

/// The inner border of the ischial tuberosity.
pub fn tuberosity(side: MotherSide) -> MotherPoint {
    on(side, &[(TUBEROSITIES / 2.0, -8.33, -6.0)])[0]
}

/// The anterior superior spine of the ilium.
pub fn superior_spine(side: MotherSide) -> MotherPoint {
    on(side, &[(12.3, 7.6, 0.0)])[0]
}

/// Centre of the hip joint.
pub fn hip_joint(side: MotherSide) -> MotherPoint {
    on(side, &[(9.0, 0.4, -3.2)])[0]
}

/// The inlet, anticlockwise as seen from the front, starting at the symphysis.
pub fn inlet() -> Vec<MotherPoint> {
    let mut left = left_brim();
    let right: Vec<_> = left[1..].iter().rev().map(|p| at(-p.0.x, p.0.y, p.0.z)).collect();
    left.push(promontory());
    left.extend(right);
    left
}

/// The brim on her left, from symphysis to the joint of sacrum and hip bone.
fn left_brim() -> Vec<MotherPoint> {
    [(0.0, 0.0), (1.6, 0.1), (3.4, 0.85), (4.9, 2.3), (6.1, 4.3), (6.5, 6.4), (6.2, 8.4), (5.0, 9.9)]
        .map(|(x, back)| brim_point(x, back))
        .into()
}

/// The hip bone (ilium, ischium, pubis) as seen from the front, in parts that meet in corners: the wing with its
/// crest, spines, socket and tuberosity down to the arch; the face of the symphysis; the brim back to the joint.
pub fn hip_bone(side: MotherSide) -> Vec<Vec<MotherPoint>> {
    let mut brim: Vec<_> = left_brim();
    brim[0] = at(0.28, 0.0, 0.0);
    let brim: Vec<_> = brim.iter().map(|p| at(p.0.x * side.sign(), p.0.y, p.0.z)).collect();
    vec![crest(side), notches(side), ischium(side), arch(side), symphysis_face(side), brim]
}

/// The crest of the ilium, an open line from the joint with the sacrum to the anterior superior spine.
pub fn crest(side: MotherSide) -> Vec<MotherPoint> {
    on(
        side,
        &[
            (5.0, 8.11, -5.68),
            (4.8, 10.1, -8.5),
            (5.9, 12.0, -11.2),
            (8.6, 13.6, -11.0),
            (11.8, 13.3, -8.6),
            (13.8, 11.2, -3.6),
            (13.5, 8.5, -0.6),
            (12.3, 7.6, 0.0),
        ],
    )
}

/// The inner lip of the crest, an open line under its edge.
pub fn inner_lip(side: MotherSide) -> Vec<MotherPoint> {
    on(side, &[(6.4, 11.7, -10.6), (9.9, 13.15, -10.0), (12.9, 11.4, -4.6), (12.9, 8.8, -0.8)])
}

/// From the superior spine over the inferior spine to the socket's rim, open.
fn notches(side: MotherSide) -> Vec<MotherPoint> {
    on(side, &[(12.1, 7.4, 0.0), (11.0, 6.2, -0.9), (10.8, 5.2, -1.1), (10.85, 4.15, -1.2)])
}

/// The outer border: rim of the socket, body of the ischium, tuberosity; open.
fn ischium(side: MotherSide) -> Vec<MotherPoint> {
    on(
        side,
        &[
            (10.95, 3.8, -1.6),
            (11.7, 1.6, -2.8),
            (11.0, -1.1, -3.8),
            (9.3, -3.9, -5.0),
            (8.9, -6.6, -6.2),
            (7.9, -9.1, -6.5),
            (6.4, -9.4, -6.2),
            (5.5, -8.33, -6.0),
        ],
    )
}

/// The pubic arch on one side, an open line from the tuberosity up to the symphysis.
pub fn arch(side: MotherSide) -> Vec<MotherPoint> {
    on(side, &[(5.5, -8.33, -6.0), (3.0, -5.35, -4.2), (0.28, -3.0, -2.9)])
}

/// The front of the pelvis, which lies over the baby: pubis, its branches and the front of the ischium, in parts
/// that meet in corners; the obturator foramen is a hole in it.
pub fn front_bone(side: MotherSide) -> Vec<Vec<MotherPoint>> {
    let behind = on(
        side,
        &[(6.1, 3.52, -2.5), (7.4, 2.2, -1.8), (8.0, 0.2, -2.6), (8.3, -2.2, -4.0), (8.4, -4.6, -5.4)],
    );
    let low = on(
        side,
        &[(8.4, -4.6, -5.4), (8.5, -6.6, -6.2), (8.0, -8.5, -6.5), (6.9, -9.3, -6.4), (5.5, -8.33, -6.0)],
    );
    vec![front_brim(side), behind, low, arch(side), symphysis_face(side)]
}

/// The front of the brim on one side, open, from the symphysis to above the socket.
pub fn front_brim(side: MotherSide) -> Vec<MotherPoint> {
    let points = [(0.28, 0.0), (1.6, 0.1), (3.4, 0.85), (4.9, 2.3), (6.1, 4.3)];
    points.map(|(x, back)| brim_point(x * side.sign(), back)).into()
}

/// The face of one pubic bone at the symphysis, open, from below upwards.
pub fn symphysis_face(side: MotherSide) -> Vec<MotherPoint> {
    on(side, &[(0.28, -2.83, -2.83), (0.22, -1.4, -1.4), (0.28, 0.0, 0.0)])
}

/// The obturator foramen.
pub fn obturator(side: MotherSide) -> Vec<MotherPoint> {
    on(
        side,
        &[
            (2.65, -2.2, -2.2),
            (4.3, -1.15, -2.4),
            (6.5, -1.6, -3.2),
            (6.95, -3.5, -4.3),
            (5.8, -5.9, -5.4),
            (4.0, -4.8, -4.3),
        ],
    )
}

/// The rim of the hip socket seen from the front, open.
pub fn socket(side: MotherSide) -> Vec<MotherPoint> {
    on(side, &[(10.7, 3.6, -1.8), (9.2, 2.7, -1.6), (8.6, 1.1, -2.0), (8.9, -0.8, -3.2), (9.9, -2.1, -4.2)])
}

/// The sacrum and coccyx seen from the front.
pub fn sacrum() -> Vec<Vec<MotherPoint>> {
    let left = [
        (2.3, 9.15, -6.6),
        (3.5, 9.75, -7.6),
        (5.0, 9.75, -8.4),
        (5.5, 8.6, -8.8),
        (4.9, 6.8, -10.5),
        (3.5, 4.8, -12.4),
        (1.75, 3.2, -14.1),
        (1.0, 2.4, -14.8),
        (0.5, 1.2, -15.2),
    ];
    let side: Vec<_> = left.map(|(x, y, z)| at(x, y, z)).into();
    let other: Vec<_> = side.iter().rev().map(|p| at(-p.0.x, p.0.y, p.0.z)).collect();
    let mut border = side;
    border.push(sacrum_tip());
    border.extend(other);
    let top = vec![
        at(-2.3, 9.15, -6.6),
        at(-1.2, 9.05, -6.4),
        promontory(),
        at(1.2, 9.05, -6.4),
        at(2.3, 9.15, -6.6),
    ];
    vec![border, top]
}

/// The lines between the vertebrae of the sacrum and coccyx, from the top: each an open line across.
pub fn sacral_lines() -> Vec<Vec<MotherPoint>> {
    [(7.55, 1.75, -9.4), (6.25, 1.45, -11.5), (5.05, 1.15, -12.9), (4.0, 0.95, -13.8), (2.75, 0.7, -14.5)]
        .map(|(y, x, z)| vec![at(-x, y + 0.08, z), at(0.0, y - 0.1, z), at(x, y + 0.08, z)])
        .into()
}

/// The foramina of the sacrum on one side: centre and radius.
pub fn sacral_foramina(side: MotherSide) -> Vec<(MotherPoint, f32)> {
    let places = [(2.45, 7.45, -9.4), (2.1, 6.15, -11.5), (1.7, 4.95, -12.9), (1.35, 3.95, -13.8)];
    on(side, &places).into_iter().zip([0.36, 0.33, 0.28, 0.22]).collect()
}

fn at(x: f32, y: f32, z: f32) -> MotherPoint {
    MotherPoint(Vec3::new(x, y, z))
}

fn on(side: MotherSide, points: &[(f32, f32, f32)]) -> Vec<MotherPoint> {
    points.iter().map(|&(x, y, z)| at(x * side.sign(), y, z)).collect()
}
