//! What words, numbers and pointers keep off. In: a pose, its cast, where marks stand. Out: faces, marks and outlines in
//! the space of the finished picture, and what it costs to lie on them.

use super::scene::Frame;
use crate::body::baby::PosedBaby;
use crate::body::cast::Cast;
use crate::body::pose::Pose;
use crate::units::{FigurePoint, Vec3};

impl Frame {
    /// The same, larger by `by` cm on every side.
    pub fn grown(self, by: f32) -> Self {
        Frame { left: self.left - by, bottom: self.bottom - by, right: self.right + by, top: self.top + by }
    }

    /// Whether two boxes share more than an edge.
    pub fn overlaps(self, o: Self) -> bool {
        self.left < o.right && o.left < self.right && self.bottom < o.top && o.bottom < self.top
    }

    /// Whether it shares a point with a round.
    pub fn touches(self, round: Round) -> bool {
        let dx = round.at.x - round.at.x.clamp(self.left, self.right);
        let dy = round.at.y - round.at.y.clamp(self.bottom, self.top);
        dx * dx + dy * dy < round.radius * round.radius
    }

    /// Whether a line runs through it.
    pub fn meets(self, s: Segment) -> bool {
        // The part of the line (0 to 1) that lies between each pair of edges.
        let (mut from, mut to) = (0.0f32, 1.0f32);
        for (a, d, low, high) in [
            (s.from.x, s.to.x - s.from.x, self.left, self.right),
            (s.from.y, s.to.y - s.from.y, self.bottom, self.top),
        ] {
            if d.abs() < 1e-9 {
                if a < low || a > high {
                    return false;
                }
                continue;
            }
            let (t, u) = ((low - a) / d, (high - a) / d);
            from = from.max(t.min(u));
            to = to.min(t.max(u));
        }
        from < to
    }
}

/// A straight line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Segment {
    /// Where it starts: at the words.
    pub from: FigurePoint,
    /// Where it ends: at the place.
    pub to: FigurePoint,
}

/// Whether two lines cross within both.
pub fn cross(a: Segment, b: Segment) -> bool {
    let turn = |p: FigurePoint, q: FigurePoint, r: FigurePoint| {
        (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)
    };
    turn(a.from, a.to, b.from) * turn(a.from, a.to, b.to) < 0.0
        && turn(b.from, b.to, a.from) * turn(b.from, b.to, a.to) < 0.0
}

/// A round thing on the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Round {
    /// Its middle.
    pub at: FigurePoint,
    /// Its radius, cm.
    pub radius: f32,
    /// The mark it is part of.
    pub mark: usize,
}

impl Round {
    /// Whether a point lies in it, or so near that a pointer to it grazes the edge.
    pub fn holds(self, p: FigurePoint) -> bool {
        const NEAR: f32 = 0.1;
        let (dx, dy) = (p.x - self.at.x, p.y - self.at.y);
        (dx * dx + dy * dy).sqrt() < self.radius + NEAR
    }

    /// How far a line passes from its middle, cm.
    pub fn distance(self, s: Segment) -> f32 {
        let (dx, dy) = (s.to.x - s.from.x, s.to.y - s.from.y);
        let t = self.at.along(s.from, s.to);
        let (ox, oy) = (self.at.x - s.from.x - dx * t, self.at.y - s.from.y - dy * t);
        (ox * ox + oy * oy).sqrt()
    }
}

/// What there is on the finished picture.
pub struct Terrain<'a> {
    cast: Option<&'a Cast>,
    /// How far her outline reaches from x = 0 at a height, to the side of that sign, before any half turn; cm.
    outline: Box<dyn Fn(f32, f32) -> f32 + 'a>,
    /// -1 when the picture is turned by half a turn, else 1.
    turn: f32,
    /// Hearts, rings of limbs, lumps, scars, the navel, the scale of fifths.
    pub marks: Vec<Round>,
    /// Faces that are seen.
    pub faces: Vec<Round>,
    /// Words that stand already: sides, captions.
    pub fixed: Vec<Frame>,
}

impl<'a> Terrain<'a> {
    /// Of a pose; `marks` in mother space seen from the front.
    pub fn new(pose: &'a Pose, cast: Option<&'a Cast>, turn: f32, marks: Vec<Round>) -> Self {
        let turned = |r: Round| Round { at: FigurePoint::new(r.at.x * turn, r.at.y * turn), ..r };
        let babies: Vec<&PosedBaby> = pose.posed().map(|(_, baby)| baby).collect();
        Terrain {
            cast,
            outline: Box::new(|y, _| pose.mother.half_width(f64::from(y)) as f32),
            turn,
            marks: marks.into_iter().map(turned).collect(),
            faces: faces(&babies, cast).into_iter().map(turned).collect(),
            fixed: vec![],
        }
    }

    /// Of a cut: babies in its space, their cast, and how far her outline reaches to a side at a height.
    pub fn of_cut(
        babies: &[&PosedBaby],
        cast: Option<&'a Cast>,
        marks: Vec<Round>,
        outline: impl Fn(f32, f32) -> f32 + 'a,
    ) -> Self {
        let faces = faces(babies, cast);
        Terrain { cast, outline: Box::new(outline), turn: 1.0, marks, faces, fixed: vec![] }
    }

    /// Whether a baby is seen at a point of the finished picture.
    pub fn on_baby(&self, p: FigurePoint) -> bool {
        self.cast.is_some_and(|c| c.covers(p.x * self.turn, p.y * self.turn))
    }

    /// How far a box at an edge of the picture reaches over her outline, cm; not above 0 when it keeps off.
    fn beyond_outline(&self, area: Frame) -> f32 {
        let (inner, sign) = if area.left > 0.0 { (area.left, self.turn) } else { (-area.right, -self.turn) };
        let widest = [0.0, 0.5, 1.0]
            .map(|share| (area.bottom + (area.top - area.bottom) * share) * self.turn)
            .map(|y| (self.outline)(y, sign))
            .into_iter()
            .fold(0.0, f32::max);
        widest + 0.2 - inner
    }

    /// Whether words in a box at an edge lie on her outline or within it.
    pub(super) fn on_outline(&self, area: Frame) -> bool {
        self.beyond_outline(area) > 0.0
    }

    /// Cost of words in a box: over a mark, a face, other words or the baby they may not be, over her outline they
    /// should not.
    pub(super) fn words_cost(&self, area: Frame, hard: f32) -> f32 {
        let mut cost = 0.0;
        if self.marks.iter().chain(&self.faces).any(|m| area.touches(*m)) {
            cost += hard;
        }
        if self.fixed.iter().any(|f| area.overlaps(*f)) {
            cost += hard;
        }
        let middle = (area.bottom + area.top) * 0.5;
        let over = self.beyond_outline(area);
        if over > 0.0 {
            cost += 4.0 + 2.0 * over;
        }
        if [area.left, area.right].iter().any(|x| self.on_baby(FigurePoint::new(*x, middle))) {
            cost += 40.0;
        }
        cost
    }

    /// Cost of a pointer: over a face or words it may not run, over marks and the baby it should not.
    pub(super) fn pointer_cost(&self, pointer: Segment, owner: Option<usize>, hard: f32) -> f32 {
        let mut cost = 0.0;
        for face in self.faces.iter().filter(|f| f.distance(pointer) < f.radius) {
            // A mark that lies on a face is reached over the face.
            cost += if face.holds(pointer.to) { 20.0 } else { hard };
        }
        if self.fixed.iter().any(|f| f.meets(pointer)) {
            cost += hard;
        }
        for mark in &self.marks {
            if Some(mark.mark) != owner && mark.distance(pointer) < mark.radius {
                cost += 30.0;
            }
        }
        const STEPS: u8 = 24;
        let (dx, dy) = (pointer.to.x - pointer.from.x, pointer.to.y - pointer.from.y);
        let step = (dx * dx + dy * dy).sqrt() / f32::from(STEPS);
        for i in 0..STEPS {
            let t = (f32::from(i) + 0.5) / f32::from(STEPS);
            if self.on_baby(FigurePoint::new(pointer.from.x + dx * t, pointer.from.y + dy * t)) {
                cost += 1.5 * step;
            }
        }
        cost
    }
}

/// The face of each baby that is seen, as a round over brow, eyes, mouth and chin; it belongs to no mark.
fn faces(babies: &[&PosedBaby], cast: Option<&Cast>) -> Vec<Round> {
    let Some(cast) = cast else { return vec![] };
    // Nose, mouth and both eyes in the frame of the term head.
    const FEATURES: [(f32, f32, f32); 4] =
        [(0.0, -1.6, 5.9), (0.0, -3.2, 5.2), (1.75, -1.0, 4.9), (-1.75, -1.0, 4.9)];
    babies
        .iter()
        .filter_map(|baby| {
            let k = baby.posture.measures.head;
            let seen = FEATURES.iter().any(|(x, y, z)| {
                let p = baby.head.point(Vec3::new(*x, *y, *z) * k);
                cast.sees(p, 0.9) || (baby.head.z.z > 0.3 && cast.sees(p, 2.0))
            });
            let middle = baby.head.point(Vec3::new(0.0, -1.9, 3.4) * k);
            let at = FigurePoint::new(middle.x, middle.y);
            seen.then_some(Round { at, radius: 3.1 * k, mark: usize::MAX })
        })
        .collect()
}
