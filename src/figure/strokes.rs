//! The steps in which a baby is drawn on skin. In: a pose. Out: the strokes of the pen baby, each with the step it belongs to,
//! from where it starts to where it ends, as someone in front of her sees them.

use super::pen::{self, Kind, pen, short};
use crate::body::baby::PosedBaby;
use crate::body::pose::Pose;
use crate::units::{BabySide, FigurePoint, Vec3};

/// A step of the drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Step {
    /// Round the head, with what is seen of ear and face.
    Head,
    /// The line of the back.
    Back,
    /// Round the bottom.
    Bottom,
    /// Thigh, leg, foot.
    Legs,
    /// Arm, hand, fingers.
    Arms,
    /// Neck, chest and belly.
    Belly,
}

impl Step {
    /// Every step, in order.
    pub const ALL: [Step; 6] = [Step::Head, Step::Back, Step::Bottom, Step::Legs, Step::Arms, Step::Belly];

    /// The step in which something is drawn.
    pub fn of(kind: Kind) -> Step {
        match kind {
            Kind::Head | Kind::Ear | Kind::Eye | Kind::Nose | Kind::Mouth | Kind::Curl => Step::Head,
            Kind::Back | Kind::Blade => Step::Back,
            Kind::Bottom => Step::Bottom,
            Kind::Leg | Kind::Foot => Step::Legs,
            Kind::Arm | Kind::Hand => Step::Arms,
            Kind::Belly => Step::Belly,
        }
    }
}

/// One line of the pen.
#[derive(Clone, Debug, PartialEq)]
pub struct Stroke {
    /// Number of the baby, from 1.
    pub baby: usize,
    /// The step it belongs to.
    pub step: Step,
    /// The side of the baby that an arm or a leg is of.
    pub side: Option<BabySide>,
    /// A small line within the shape, or a hand or foot.
    pub fine: bool,
    /// It lies in the pelvis, below the upper edge of the pubic bone: never drawn on skin.
    pub deep: bool,
    /// Whether its end joins its start.
    pub closed: bool,
    /// Points from its start to its end, cm.
    pub line: Vec<FigurePoint>,
}

impl Stroke {
    /// Its length in the picture plane, cm.
    pub fn length(&self) -> f32 {
        self.line.windows(2).map(|w| libm::hypotf(w[1].x - w[0].x, w[1].y - w[0].y)).sum()
    }
}

/// The strokes of all babies, by baby and step; within a step the longest first, fine ones last. Small lines that lie in the
/// pelvis are left out.
pub fn strokes(pose: &Pose) -> Vec<Stroke> {
    in_order(pose, pen(pose))
}

/// The same of the baby in a minute.
pub fn short_strokes(pose: &Pose) -> Vec<Stroke> {
    in_order(pose, short(pose))
}

fn in_order(pose: &Pose, drawn: Vec<pen::Stroke>) -> Vec<Stroke> {
    let mut out: Vec<Stroke> =
        drawn.into_iter().filter(|s| !(s.deep && s.kind.is_fine())).map(|s| stroke(pose, s)).collect();
    out.sort_by(|a, b| {
        (a.baby, a.step, a.fine)
            .cmp(&(b.baby, b.step, b.fine))
            .then(b.length().total_cmp(&a.length()))
            .then(a.line[0].y.total_cmp(&b.line[0].y))
    });
    out
}

fn stroke(pose: &Pose, drawn: pen::Stroke) -> Stroke {
    let step = Step::of(drawn.kind);
    let fine = drawn.kind.is_fine() || matches!(drawn.kind, Kind::Hand | Kind::Foot);
    let mut line = drawn.line;
    if let (false, Some((_, posed))) = (drawn.closed, pose.posed().find(|(number, _)| *number == drawn.baby))
    {
        let start = start_near(posed, step, drawn.side);
        let away = |p: &FigurePoint| libm::hypotf(p.x - start.x, p.y - start.y);
        if away(&line[line.len() - 1]) < away(&line[0]) {
            line.reverse();
        }
    }
    Stroke { baby: drawn.baby, step, side: drawn.side, fine, deep: drawn.deep, closed: drawn.closed, line }
}

/// Where a stroke of this step begins: at the nape, then each where the shape so far leaves off.
fn start_near(baby: &PosedBaby, step: Step, side: Option<BabySide>) -> Vec3 {
    let k = &baby.posture.measures;
    let at = |p: Vec3| baby.body.point(p);
    match (step, side) {
        (Step::Head, _) => baby.head.point(Vec3::new(0.0, -3.5, -4.0) * k.head),
        (Step::Back | Step::Belly, _) => baby.head.origin,
        (Step::Bottom, _) => at(baby.spine.pelvis.origin + Vec3::new(0.0, 3.0, -4.0)),
        (Step::Legs, Some(side)) => at(baby.legs[side.index()].hip),
        (Step::Arms, Some(side)) => at(baby.arms[side.index()].shoulder),
        (Step::Legs | Step::Arms, None) => baby.body.origin,
    }
}
