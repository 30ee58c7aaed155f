//! The same body for a cut in the midline, seen from her left. In: a `Pose`. Out: the babies and the womb where they lie
//! between spine and abdominal wall, in a space turned so that rays along -z come from her left: x towards her back, y
//! up, z towards her left.
//!
//! Seen from the front, heights near the pelvis are measured along its axis from the brim. Here that axis is laid where
//! it runs: through the middle of the brim, which is tilted, down and back to the level of the spines; and upwards, from
//! above the head, in a curve between spine and abdominal wall to the top of the womb. Each part of a baby is carried
//! along that axis as a rigid piece, its height above the brim kept: front and side share one measure of descent.

use super::along_axis;
use super::baby::PosedBaby;
use super::cast::Cast;
use super::frame::Frame;
use super::mother::MotherShape;
use super::pelvis;
use super::pose::Pose;
use super::shape::{self, Piece, Shape};
use super::womb;
use crate::exam::Attitude;
use crate::units::{FigurePoint, MotherPoint, Vec3};

/// The axis runs straight to this far above the middle of a head that leads, cm: the head lies on it whole.
const ABOVE_HEAD: f32 = 1.2;
/// Lower than any baby reaches, cm above the brim.
const LOWEST: f32 = -14.0;
/// How far above the brim it runs straight at least, cm.
const STRAIGHT: f32 = 1.0;
/// Over how many cm above that a baby comes from lying with its head in the middle to lying with its trunk there.
const OVER_TO_TRUNK: f32 = 7.0;
/// The lean of the axis at the top of the womb, degrees: it leans back to the ribs.
const TOP_LEAN: f32 = -30.0;
/// Skin, fat, muscle: thickness of the abdominal wall in the midline, cm.
pub const WALL: f32 = 1.6;
/// How much lower the top of the axis is than its length would bring it, cm.
const LOST_BY_BENDING: f32 = 2.0;
/// The womb is narrower from front to back than across, by this share.
const FLAT: f32 = 0.8;
/// Steps in which the curved part of the axis is laid.
const STEPS: usize = 40;

/// The front of the spine in the midline, from the promontory upwards: (y, z) and the slope of the plate that ends each
/// vertebra there, degrees (positive: higher at the back). From the sacrum up: L5 to T9. The artist's, after the
/// posture of standing women; the promontory is that of the pelvis.
pub const SPINE: [(f32, f32, f32); 10] = [
    (9.01, -6.31, 38.0),
    (12.6, -5.6, 20.0),
    (16.2, -5.5, 7.0),
    (19.8, -5.9, -3.0),
    (23.3, -6.6, -9.0),
    (26.7, -7.6, -13.0),
    (29.9, -8.7, -15.0),
    (32.9, -9.7, -15.0),
    (35.8, -10.6, -14.0),
    (38.6, -11.4, -12.0),
];

/// A point of the midline as the cut shows it.
pub fn flat(y: f32, z: f32) -> FigurePoint {
    FigurePoint::new(-z, y)
}

/// Mother space turned so that her left faces the viewer.
pub fn turned(p: Vec3) -> Vec3 {
    Vec3::new(-p.z, p.y, p.x)
}

/// z of the front of the spine at height `y`, as far as it is drawn.
pub fn spine_front(y: f32) -> f32 {
    let last = SPINE.len() - 1;
    if y <= SPINE[0].0 {
        // Down the hollow of the sacrum no limit is needed.
        return -16.0;
    }
    let i = (1..last).find(|&i| y < SPINE[i].0).unwrap_or(last) - 1;
    let t = ((y - SPINE[i].0) / (SPINE[i + 1].0 - SPINE[i].0)).clamp(0.0, 1.0);
    SPINE[i].1 + (SPINE[i + 1].1 - SPINE[i].1) * t
}

/// The skin of her front in the midline at height `y`, z.
pub fn skin_front(mother: &MotherShape, y: f32) -> f32 {
    mother.curve.point(mother.curve.along(f64::from(y))).1 as f32
}

/// Between wall and spine at height `y`: z of the middle of the room that a baby has.
fn room(mother: &MotherShape, y: f32) -> f32 {
    0.5 * (spine_front(y) + BEFORE_SPINE + skin_front(mother, y) - WALL - WOMB_WALL)
}

/// Vessels and the wall of the womb before the spine; the wall of the womb and water behind the abdominal wall, cm.
const BEFORE_SPINE: f32 = 1.5;
const WOMB_WALL: f32 = 1.0;

/// The line along which what is seen from the front is laid in the cut.
#[derive(Clone, Debug)]
pub struct Axis {
    /// Height above the brim up to which it is straight, cm.
    straight: f32,
    /// Points (y, z) of the curved part and its lean in radians, evenly spaced in the height seen from the front.
    curved: Vec<(f32, f32, f32)>,
    /// Height of the last of them.
    top: f32,
    /// z of the baby as posed that lies on the axis: where it is straight, and higher up.
    on_axis: [f32; 2],
}

/// A place on the axis: (y, z), and how far the axis leans forward there, radians.
#[derive(Clone, Copy, Debug)]
struct Spot {
    y: f32,
    z: f32,
    lean: f32,
}

impl Axis {
    /// The axis of her womb, for the baby that lies in it.
    pub fn of(mother: &MotherShape, baby: Option<&PosedBaby>) -> Self {
        let head_down = baby.filter(|b| b.posture.up.y < -0.9);
        let from = head_down.map_or(STRAIGHT, |b| (b.head.origin.y + ABOVE_HEAD).max(STRAIGHT));
        let start = straight(from);
        let top = (mother.fundus_y as f32).max(from + 8.0);
        // Bent, it reaches less high than straight.
        let high = top - LOST_BY_BENDING;
        let end = (high, room(mother, high));
        let lean = TOP_LEAN.to_radians();
        let (dy, dz) = (end.0 - start.y, end.1 - start.z);
        let reach = (dy * dy + dz * dz).sqrt();
        let (s0, c0) = libm::sincosf(start.lean);
        let (s1, c1) = libm::sincosf(lean);
        let at = |t: f32| {
            // A cubic with the given ends and leans.
            let (u, v) = (t * t * (3.0 - 2.0 * t), t * t * t);
            let (a, b) = (t - 2.0 * t * t + v, v - t * t);
            (start.y + dy * u + reach * (c0 * a + c1 * b), start.z + dz * u + reach * (s0 * a + s1 * b))
        };
        let fine: Vec<(f32, f32)> = (0..=4 * STEPS).map(|i| at(i as f32 / (4 * STEPS) as f32)).collect();
        let mut run = vec![0.0f32];
        for pair in fine.windows(2) {
            let (y, z) = (pair[1].0 - pair[0].0, pair[1].1 - pair[0].1);
            run.push(run[run.len() - 1] + (y * y + z * z).sqrt());
        }
        let whole = run[run.len() - 1];
        let curved = (0..=STEPS)
            .map(|i| {
                let want = whole * i as f32 / STEPS as f32;
                let k = run.partition_point(|r| *r < want).clamp(1, fine.len() - 1);
                let t = (want - run[k - 1]) / (run[k] - run[k - 1]).max(1e-6);
                let (p, q) = (fine[k - 1], fine[k]);
                let lean = libm::atan2f(q.1 - p.1, q.0 - p.0);
                (p.0 + (q.0 - p.0) * t, p.1 + (q.1 - p.1) * t, lean)
            })
            .collect();
        Self { straight: from, curved, top, on_axis: baby.map_or([0.0; 2], on_axis) }
    }

    /// z of the baby as posed that lies on the axis at a height.
    fn middle(&self, height: f32) -> f32 {
        let [low, high] = self.on_axis;
        let t = ((height - self.straight) / OVER_TO_TRUNK).clamp(0.0, 1.0);
        low + (high - low) * t * t * (3.0 - 2.0 * t)
    }

    fn at(&self, height: f32) -> Spot {
        if height <= self.straight {
            return straight(height);
        }
        let last = self.curved.len() - 1;
        let u = (height - self.straight) / (self.top - self.straight) * last as f32;
        if u >= last as f32 {
            let (y, z, lean) = self.curved[last];
            let (sin, cos) = libm::sincosf(lean);
            let over = height - self.top;
            return Spot { y: y + cos * over, z: z + sin * over, lean };
        }
        let i = u as usize;
        let (t, a, b) = (u - i as f32, self.curved[i], self.curved[i + 1]);
        let mix = |p: f32, q: f32| p + (q - p) * t;
        Spot { y: mix(a.0, b.0), z: mix(a.1, b.1), lean: mix(a.2, b.2) }
    }

    /// Where a point seen from the front lies: its height along the axis, its depth across it.
    pub fn laid(&self, p: Vec3) -> Vec3 {
        let spot = self.at(p.y);
        let (sin, cos) = libm::sincosf(spot.lean);
        let z = p.z - self.middle(p.y);
        Vec3::new(p.x, spot.y - z * sin, spot.z + z * cos)
    }

    /// The height along the axis and the depth across it of a place (y, z) in the midline: the other way round.
    fn unlaid(&self, y: f32, z: f32) -> (f32, f32) {
        let across = |height: f32| {
            let spot = self.at(height);
            let (sin, cos) = libm::sincosf(spot.lean);
            let (dy, dz) = (y - spot.y, z - spot.z);
            // How far before the foot of the place on the axis, and how far across.
            (dy * cos + dz * sin, dz * cos - dy * sin)
        };
        let (low, high) = (LOWEST, self.top + 12.0);
        let tried = (0..=120).map(|i| low + (high - low) * i as f32 / 120.0);
        let near = |height: &f32| {
            let (along, aside) = across(*height);
            along * along + aside * aside
        };
        let mut height = tried.min_by(|a, b| near(a).total_cmp(&near(b))).unwrap_or(0.0);
        for _ in 0..4 {
            height += 0.7 * across(height).0;
        }
        (height, across(height).1)
    }

    /// A direction as it points at this height.
    fn leaned(&self, height: f32, v: Vec3) -> Vec3 {
        let (sin, cos) = libm::sincosf(self.at(height).lean);
        Vec3::new(v.x, v.y * cos - v.z * sin, v.y * sin + v.z * cos)
    }

    /// The same of a point of a rigid piece that hangs at `hold`.
    fn hung(&self, hold: Vec3, p: Vec3) -> Vec3 {
        self.laid(hold) + self.leaned(hold.y, p - hold)
    }
}

/// The straight part: through the middle of the brim, at right angles to it.
fn straight(height: f32) -> Spot {
    let middle = pelvis::brim_point(0.0, 0.5 * pelvis::CONJUGATE).0;
    let at = middle - pelvis::axis() * height;
    Spot { y: at.y, z: at.z, lean: pelvis::BRIM_TILT.to_radians() }
}

/// The babies and the womb of a pose in the cut.
#[derive(Clone, Debug)]
pub struct Lateral {
    /// The axis they are laid along.
    pub axis: Axis,
    /// The babies with their numbers, in the turned space.
    pub babies: Vec<(usize, PosedBaby)>,
    /// The womb in the midline, closed; empty without a baby.
    pub womb: Vec<FigurePoint>,
}

/// What a cut in the midline shows of a pose.
pub fn lateral(pose: &Pose) -> Lateral {
    let first = pose.posed().next().map(|(_, baby)| baby);
    let mut axis = Axis::of(&pose.mother, first);
    if let Some(baby) = first {
        // Its trunk comes to lie where wall and spine are equally far from it.
        for _ in 0..3 {
            let way = Way { room: None, axis: &axis, head: baby.head.origin };
            let (there, _) = along_axis::carried(baby, &way);
            axis.on_axis[1] += 0.5 * lies_forward(&pose.mother, &there);
        }
    }
    let mut points = vec![];
    let mut babies = vec![];
    for (number, baby) in pose.posed() {
        let baby = laid(&pose.mother, &axis, baby);
        // The womb is drawn round the baby where it lies now.
        let seen = baby.shape.hull_across(BACKWARD);
        points.extend(
            seen.into_iter().map(|p| axis.unlaid(p.y, -p.x)).map(|(up, z)| FigurePoint::new(z / FLAT, up)),
        );
        babies.push((number, baby));
    }
    let clear: Vec<FigurePoint> =
        finer(&womb::outline(&points, pose.mother.fundus_y as f32, pose.mother.weeks))
            .into_iter()
            // Seen from her left the outline runs the other way round.
            .rev()
            .map(|p| axis.laid(Vec3::new(0.0, p.y, p.x * FLAT + axis.middle(p.y))))
            .map(|p| within(&pose.mother, p))
            .collect();
    let mut womb = rounded(&clear);
    for _ in 0..3 {
        for (_, baby) in &babies {
            make_room(&mut womb, &baby.shape);
        }
        womb = rounded(&womb);
    }
    Lateral { axis, babies, womb }
}

/// Moves a closed line outwards where parts of a baby reach over it.
fn make_room(line: &mut [FigurePoint], shape: &Shape) {
    let n = line.len();
    if n < 3 {
        return;
    }
    for outward in all_round() {
        for tip in shape.tips(outward) {
            let p = tip + outward * womb::CLEAR;
            let Some((at, dx, dy)) = over(line, p) else { continue };
            // The nearest points by the whole way, their neighbours by part of it.
            for (step, share) in [(0, 0.4), (1, 0.8), (2, 1.0), (3, 1.0), (4, 0.8), (5, 0.4)] {
                let q = &mut line[(at + n + step - 2) % n];
                *q = FigurePoint::new(q.x + dx * share, q.y + dy * share);
            }
        }
    }
}

/// Where a point lies outside a closed line: the side that is nearest, and the way from there to the point.
fn over(line: &[FigurePoint], p: Vec3) -> Option<(usize, f32, f32)> {
    let (mut inside, mut nearest) = (false, (f32::MAX, 0, 0.0, 0.0));
    for (i, a) in line.iter().enumerate() {
        let b = line[(i + 1) % line.len()];
        let (ex, ey) = (b.x - a.x, b.y - a.y);
        if (a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / ey * ex {
            inside = !inside;
        }
        let t = FigurePoint::new(p.x, p.y).along(*a, b);
        let (dx, dy) = (p.x - a.x - t * ex, p.y - a.y - t * ey);
        if dx * dx + dy * dy < nearest.0 {
            nearest = (dx * dx + dy * dy, i, dx, dy);
        }
    }
    let (_, i, dx, dy) = nearest;
    (!inside).then_some((i, dx, dy))
}

/// How much nearer a laid baby lies to the abdominal wall than to the spine, cm; negative: nearer to the spine.
fn lies_forward(mother: &MotherShape, shape: &Shape) -> f32 {
    let (mut wall, mut spine) = (f32::MAX, f32::MAX);
    for p in shape.hull_across(BACKWARD) {
        let z = -p.x;
        if p.y > 3.0 {
            wall = wall.min(skin_front(mother, p.y) - WALL - z);
        }
        if p.y > SPINE[0].0 {
            spine = spine.min(z - spine_front(p.y) - 0.5);
        }
    }
    if wall == f32::MAX || spine == f32::MAX { 0.0 } else { spine - wall }
}

/// A closed line with two points more between each two, on a smooth curve.
fn finer(line: &[FigurePoint]) -> Vec<FigurePoint> {
    let n = line.len();
    let between = |i: usize, t: f32| {
        let p = |k: usize| line[(i + n - 1 + k) % n];
        let mix = |a: f32, b: f32, c: f32, d: f32| {
            b + 0.5 * t * (c - a + t * (2.0 * a - 5.0 * b + 4.0 * c - d + t * (3.0 * (b - c) + d - a)))
        };
        FigurePoint::new(mix(p(0).x, p(1).x, p(2).x, p(3).x), mix(p(0).y, p(1).y, p(2).y, p(3).y))
    };
    (0..n).flat_map(|i| [0.0, 1.0 / 3.0, 2.0 / 3.0].map(|t| between(i, t))).collect()
}

/// A closed line with its corners rounded off.
fn rounded(line: &[FigurePoint]) -> Vec<FigurePoint> {
    let n = line.len();
    (0..n)
        .map(|i| {
            let (a, b, c) = (line[(i + n - 1) % n], line[i], line[(i + 1) % n]);
            FigurePoint::new((a.x + 4.0 * b.x + c.x) / 6.0, (a.y + 4.0 * b.y + c.y) / 6.0)
        })
        .collect()
}

/// Keeps the wall of the womb behind the abdominal wall and before the spine.
fn within(mother: &MotherShape, p: Vec3) -> FigurePoint {
    let front = if p.y > LOWEST_WALL { skin_front(mother, p.y) - WALL - 0.2 } else { 0.3 };
    flat(p.y, p.z.min(front).max(spine_front(p.y) + 0.7))
}

const FORWARD: Vec3 = Vec3::new(0.0, 0.0, 1.0);
/// Towards her back in the turned space.
const BACKWARD: Vec3 = Vec3::new(1.0, 0.0, 0.0);

/// z that lies on the axis of a baby as posed: of what leads, and of its trunk. A head bent back lies off its body.
fn on_axis(baby: &PosedBaby) -> [f32; 2] {
    let middle = |shape: &Shape| {
        let hull = shape.hull_across(FORWARD);
        let (low, high) = hull.iter().fold((f32::MAX, f32::MIN), |m, p| (m.0.min(p.x), m.1.max(p.x)));
        0.5 * (low + high)
    };
    let whole = middle(&baby.shape);
    if baby.posture.up.y > -0.9 {
        return [whole; 2];
    }
    let bent_back = matches!(baby.posture.attitude, Attitude::Brow | Attitude::Face);
    let share = if bent_back { 0.5 } else { 0.85 };
    let (head, rest) = (baby.shape.piece(Piece::Head), baby.shape.piece(Piece::Body));
    [middle(&head) * share + whole * (1.0 - share), middle(&rest)]
}

/// How far something with these places on its outline (turned space) has to move in z to lie between spine and abdominal
/// wall with the wall of the womb round it, cm; halfway when there is no room.
fn into_room(mother: &MotherShape, outline: impl Iterator<Item = Vec3>) -> f32 {
    let (mut least, mut most) = (f32::MIN, f32::MAX);
    for p in outline {
        let z = -p.x;
        least = least.max(spine_front(p.y) + BEHIND_PART - z);
        if p.y > LOWEST_WALL {
            most = most.min(skin_front(mother, p.y) - WALL - BEFORE_PART - z);
        }
    }
    if least > most { 0.5 * (least + most) } else { 0.0f32.clamp(least, most) }
}

/// Directions in the plane of the cut, all round.
fn all_round() -> impl Iterator<Item = Vec3> {
    const AROUND: usize = 24;
    (0..AROUND).map(|i| {
        let (sin, cos) = libm::sincosf(i as f32 / AROUND as f32 * std::f32::consts::TAU);
        Vec3::new(cos, sin, 0.0)
    })
}

/// The wall of the womb and what lies between it and the spine; the wall of the womb behind the abdominal wall, cm.
/// From here on the abdominal wall is in front, cm: lower down it is the pubic bone.
const LOWEST_WALL: f32 = 0.3;
const BEHIND_PART: f32 = 1.1;
const BEFORE_PART: f32 = 0.6;

/// How a baby's pieces are carried along the axis, its head as one; in the `room` of a mother, what would lie in her spine
/// or her abdominal wall moves out of it.
pub(super) struct Way<'a> {
    room: Option<&'a MotherShape>,
    axis: &'a Axis,
    /// Where the head hangs.
    head: Vec3,
}

impl Way<'_> {
    /// Where a point of the head goes: the head stays one rigid piece.
    pub(super) fn with_head(&self, p: Vec3) -> Vec3 {
        self.hung(self.head, p)
    }
    /// Where a point of a rigid piece that hangs at `hold` goes.
    pub(super) fn hung(&self, hold: Vec3, p: Vec3) -> Vec3 {
        self.axis.hung(hold, p)
    }
    /// How far something with this outline (in the turned space) must be moved before it is turned.
    pub(super) fn moved(&self, outline: &mut dyn Iterator<Item = Vec3>) -> Vec3 {
        FORWARD * self.room.map_or(0.0, |mother| into_room(mother, outline))
    }
}

/// A baby carried along the axis.
fn laid(mother: &MotherShape, axis: &Axis, baby: &PosedBaby) -> PosedBaby {
    let way = Way { room: Some(mother), axis, head: baby.head.origin };
    let (shape, aside) = along_axis::carried(baby, &way);
    let frame = |f: &Frame| {
        let point = |p: Vec3| axis.hung(f.origin, p);
        let direction = |v: Vec3| turned(point(f.origin + v) - point(f.origin));
        Frame {
            x: direction(f.x).normalized(),
            y: direction(f.y).normalized(),
            z: direction(f.z).normalized(),
            origin: turned(point(f.origin)),
        }
    };
    let mut head = frame(&baby.head);
    head.origin = head.origin + turned(aside);
    let out = PosedBaby { body: frame(&baby.body), head, shape, curves: vec![], ..baby.clone() };
    out.with_curves()
}

impl Lateral {
    /// The picture of depths of the babies, seen from her left; `None` when there is none.
    pub fn cast(&self, cell: f32) -> Option<Cast> {
        shape::cast(self.babies.iter().map(|(_, baby)| &baby.shape), cell, false)
    }
}

/// How far a point of the turned space stands above the plane of the brim, cm.
pub fn above_brim(p: Vec3) -> f32 {
    pelvis::above_brim(MotherPoint(Vec3::new(p.z, p.y, -p.x)))
}
