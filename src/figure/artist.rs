//! Whoever draws on her skin. In: a pose, the step, the hand that draws. Out: the hand or hands laid on her in that step, and the pen
//! where a line ends.
//!
//! A left-handed artist is the mirror image of a right-handed one: the hands change over and the pen leans the other way. The baby
//! stays where it lies.

use super::hands;
use super::scene::{Colour, FillRule, Item, Path, Step as Draw};
use super::strokes::Step;
use crate::body::hands::{Hand, Palpation, chosen};
use crate::body::pose::{Drawn, Pose};
use crate::units::{FigurePoint, MotherSide};

/// The hand that holds the pen.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Handed {
    /// The right.
    #[default]
    Right,
    /// The left.
    Left,
}

/// Where a pole lies, for the hands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Place {
    Top,
    Low,
    Flank(MotherSide),
}

/// A pole is at a flank from here on, cm from the midline.
const FLANK: f32 = 6.5;

/// The hands that lie on her in a step: both round the head, one along the back, the one without the pen at the bottom; none
/// where they would not help.
pub fn hands_on(pose: &Pose, number: usize, step: Step, handed: Handed) -> Vec<Hand> {
    let Some((_, drawn)) = pose.babies.iter().find(|(n, _)| *n == number) else { return vec![] };
    let left = handed == Handed::Left;
    let shape = &pose.mother;
    let fundus = shape.fundus_y as f32;
    let place = |p: FigurePoint| {
        if p.x.abs() > FLANK && (0.15 * fundus..0.8 * fundus).contains(&p.y) {
            Place::Flank(if p.x > 0.0 { MotherSide::Left } else { MotherSide::Right })
        } else if p.y > 0.5 * fundus {
            Place::Top
        } else {
            Place::Low
        }
    };
    // The baked hand of the sides lies on her right, its mirror image on her left.
    let at_flank = |side: MotherSide| chosen(shape, Palpation::Lateral, &[side == MotherSide::Left]);
    let (head, bottom) = poles(drawn);
    match step {
        Step::Head => match place(head) {
            Place::Top => chosen(shape, Palpation::Fundal, &[false, true]),
            Place::Low => chosen(shape, Palpation::PelvicTwo, &[false, true]),
            Place::Flank(side) => at_flank(side),
        },
        Step::Bottom => match place(bottom) {
            Place::Top => chosen(shape, Palpation::Fundal, &[left]),
            Place::Low => chosen(shape, Palpation::PelvicOne, &[left]),
            Place::Flank(side) => at_flank(side),
        },
        Step::Back => match drawn {
            Drawn::Baby(baby) if baby.posture.back.x.abs() > 0.45 && (head.y - bottom.y).abs() > 8.0 => {
                let side = if baby.posture.back.x > 0.0 { MotherSide::Left } else { MotherSide::Right };
                at_flank(side)
            }
            Drawn::Baby(_) | Drawn::Rounds(_) => vec![],
        },
        Step::Legs | Step::Arms | Step::Belly => vec![],
    }
}

/// Middle of the head and of the bottom, as seen.
fn poles(drawn: &Drawn) -> (FigurePoint, FigurePoint) {
    match drawn {
        Drawn::Baby(baby) => {
            let (head, bottom) = (baby.head.origin, baby.body.point(baby.spine.pelvis.origin));
            (FigurePoint::new(head.x, head.y), FigurePoint::new(bottom.x, bottom.y))
        }
        Drawn::Rounds(rounds) => {
            let (head, bottom) = (rounds.head.0.0, rounds.bottom.0.0);
            (FigurePoint::new(head.x, head.y), FigurePoint::new(bottom.x, bottom.y))
        }
    }
}

/// The outline of a heart; `p` puts a place of it where it is drawn: x to one side, y up, each from -1 to 1.
pub fn heart_outline<P>(p: impl Fn(f32, f32) -> P) -> Path<P> {
    vec![
        Draw::Move(p(0.0, -1.0)),
        Draw::Curve(p(-0.45, -0.55), p(-1.05, -0.15), p(-1.05, 0.36)),
        Draw::Curve(p(-1.05, 0.98), p(-0.28, 1.12), p(0.0, 0.48)),
        Draw::Curve(p(0.28, 1.12), p(1.05, 0.98), p(1.05, 0.36)),
        Draw::Curve(p(1.05, -0.15), p(0.45, -0.55), p(0.0, -1.0)),
        Draw::Close,
    ]
}

/// A heart, `size` cm high.
pub fn heart(at: FigurePoint, size: f32, colour: Colour) -> Item<FigurePoint> {
    let path = heart_outline(|x, y| FigurePoint::new(at.x + 0.5 * size * x, at.y + 0.5 * size * y));
    Item::Fill { path, colour, rule: FillRule::NonZero }
}

/// The lines of hands.
pub fn lines(laid: &[Hand], paper: Colour) -> Item<FigurePoint> {
    hands::lines(laid, hands::INK, paper, [paper; 2])
}

/// A pen with its tip at `tip`; `cm` is a mm of the paper on the figure. It leans towards the hand that holds it.
pub fn pen(tip: FigurePoint, handed: Handed, cm: f32, paper: Colour) -> Vec<Item<FigurePoint>> {
    let lean = if handed == Handed::Left { -1.0 } else { 1.0 };
    let (ux, uy) = (0.64 * lean, -0.77);
    let at = |along: f32, across: f32| {
        FigurePoint::new(tip.x + (ux * along - uy * across) * cm, tip.y + (uy * along + ux * across) * cm)
    };
    let shape = |points: &[(f32, f32)]| {
        let mut path: Vec<Draw<FigurePoint>> = vec![];
        for (i, (along, across)) in points.iter().enumerate() {
            let p = at(*along, *across);
            path.push(if i == 0 { Draw::Move(p) } else { Draw::Line(p) });
        }
        path.push(Draw::Close);
        path
    };
    let body =
        shape(&[(0.0, 0.0), (2.4, 0.8), (3.2, 1.1), (12.0, 1.1), (12.0, -1.1), (3.2, -1.1), (2.4, -0.8)]);
    let nib = shape(&[(0.0, 0.0), (2.4, 0.8), (2.4, -0.8)]);
    vec![
        Item::Stroke { path: body.clone(), colour: paper, width: 1.1 * cm, dash: None },
        Item::Fill { path: body.clone(), colour: paper, rule: FillRule::NonZero },
        Item::Stroke { path: body, colour: hands::INK, width: 0.3 * cm, dash: None },
        Item::Fill { path: nib, colour: hands::INK, rule: FillRule::NonZero },
    ]
}
