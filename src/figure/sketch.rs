//! The stamp for the chart: few firm lines, black on white, that outlive a copier and a fax. In: a pose and the strokes of its pen babies. Out:
//! marks: womb, baby, brim, top of the womb, lumps. Every line is at least 0.25 mm wide at the size of the stamp.

use super::marks::turn;
use super::mother_ink::{ellipse, flat, group, stroke};
use super::options::{FigureOptions, Labels};
use super::pen::{Kind, Stroke};
use super::rounds::capsule;
use super::scene::{Align, Colour, FillRule, Frame, Item, Path, Role, Step, Text};
use super::smooth;
use crate::body::mother::FundusKnown;
use crate::body::pose::{Mark, Pose, Rounds};
use crate::fonts::Face;
use crate::units::FigurePoint;

/// What lies inside a stamp, cm: the womb, without her body. Its height follows the womb: see [`frame`].
pub const FRAME: Frame = Frame { left: -17.5, bottom: -9.5, right: 17.5, top: 38.0 };
/// How much larger the heart is than on a picture.
pub const HEART: f32 = 1.45;

/// Radius of the ring of a limb, cm.
const LIMB: f32 = 0.85;

/// Widths of lines on paper, mm: outlines, lines within the baby, broken lines.
const OUTLINE_MM: f32 = 0.42;
const INNER_MM: f32 = 0.27;
const BROKEN_MM: f32 = 0.3;
/// How far a line may lie from what it follows, cm.
const TOLERANCE: f32 = 0.06;

/// The stamp's own frame: from under the womb to above its top and above the hearts.
pub fn frame(pose: &Pose) -> Frame {
    let hearts = pose.marks.iter().filter_map(|m| match m {
        Mark::Heart(_, at) => Some(at.0.y + 2.0),
        Mark::Limb(..) => None,
    });
    let top = hearts.chain(pose.womb.iter().map(|p| p.y)).fold(pose.mother.fundus_y as f32, f32::max);
    let bottom = pose.womb.iter().map(|p| p.y).fold(-2.0, f32::min);
    Frame { bottom: bottom - 1.2, top: top + 1.5, ..FRAME }
}

/// The marks of the stamp.
pub fn draw(pose: &Pose, strokes: &[Stroke], options: &FigureOptions, ink: Colour) -> Vec<Item<FigurePoint>> {
    let cm = |mm: f32| mm / options.mm_per_cm;
    let broken =
        |path| Item::Stroke { path, colour: ink, width: cm(BROKEN_MM), dash: Some((cm(0.9), cm(0.8))) };
    let mut items = vec![];
    if pose.womb.len() >= 3 {
        let wall = smooth::closed(&pose.womb);
        items.push(group("womb-wall", "", vec![stroke(wall, cm(INNER_MM), ink)]));
    }
    for (number, rounds) in pose.rounds() {
        items.push(stand_ins(number, rounds, &broken));
    }
    let lines = baby(pose, strokes, &cm, ink);
    if !lines.is_empty() {
        items.push(group("baby", "", lines));
    }
    for (i, lump) in pose.lumps.iter().enumerate() {
        let ring = ellipse(flat(&[*lump])[0], 1.8, 1.7);
        items.push(group(&format!("lump-{}", i + 1), "", vec![stroke(ring, cm(BROKEN_MM), ink)]));
    }
    if options.labels != Labels::None {
        for mark in &pose.marks {
            if let Mark::Limb(baby, at) = mark {
                let middle = FigurePoint::new(at.0.x, at.0.y);
                let white = Item::Fill {
                    path: ellipse(middle, LIMB + 0.3, LIMB + 0.3),
                    colour: Colour::hex(0xFFFFFF),
                    rule: FillRule::NonZero,
                };
                let ring = stroke(ellipse(middle, LIMB, LIMB), cm(BROKEN_MM), ink);
                items.push(group(&format!("limbs-felt-{baby}-{}", items.len() + 1), "", vec![white, ring]));
            }
        }
    }
    let level = |half: f32, y: f32| -> Path<FigurePoint> {
        vec![Step::Move(FigurePoint::new(-half, y)), Step::Line(FigurePoint::new(half, y))]
    };
    items.push(group("brim", "", vec![broken(level(12.5, 0.0))]));
    if options.labels != Labels::None {
        let y = pose.mother.fundus_y as f32;
        let line = if pose.mother.fundus_known == FundusKnown::Expected {
            broken(level(5.5, y))
        } else {
            stroke(level(5.5, y), cm(BROKEN_MM), ink)
        };
        items.push(group("fundus-line", "", vec![line]));
    }
    items
}

/// The number of each of several babies on its head, in a white ring; placed after any half turn, so that it stands upright.
pub fn numbers(pose: &Pose, options: &FigureOptions, lang: &str, ink: Colour) -> Vec<Item<FigurePoint>> {
    if pose.baby_count < 2 {
        return vec![];
    }
    let turn = turn(options.view);
    let size = options.type_pt * 25.4 / 72.0 / options.mm_per_cm;
    let heads = pose.posed().map(|(n, b)| (n, b.head.origin));
    let rounds = pose.rounds().map(|(n, r)| (n, r.head.0.0));
    let mut items = vec![];
    for (number, head) in heads.chain(rounds) {
        let at = FigurePoint::new(head.x * turn, head.y * turn);
        let disc = ellipse(at, 0.75 * size, 0.75 * size);
        let text = Item::Text(Text {
            text: number.to_string(),
            at: FigurePoint::new(at.x, at.y - 0.35 * size),
            align: Align::Middle,
            size,
            face: Face::SemiBold,
            colour: ink,
            lang: lang.to_owned(),
            role: Role::Label,
        });
        let white = Item::Fill { path: disc, colour: Colour::hex(0xFFFFFF), rule: FillRule::NonZero };
        items.push(group(&format!("baby-{number}-number"), "", vec![white, text]));
    }
    items
}

/// Rounds with broken edges for a baby whose back was not felt.
fn stand_ins(
    number: usize,
    rounds: &Rounds,
    broken: &dyn Fn(Path<FigurePoint>) -> Item<FigurePoint>,
) -> Item<FigurePoint> {
    let at = |p: crate::units::MotherPoint| FigurePoint::new(p.0.x, p.0.y);
    let (head, bottom) = (at(rounds.head.0), at(rounds.bottom.0));
    let white =
        |path: Path<FigurePoint>| Item::Fill { path, colour: Colour::hex(0xFFFFFF), rule: FillRule::NonZero };
    let mut items = vec![broken(capsule(head, bottom, rounds.trunk))];
    for round in
        [ellipse(bottom, rounds.bottom.1, rounds.bottom.1), ellipse(head, rounds.head.1, rounds.head.1)]
    {
        items.push(white(round.clone()));
        items.push(broken(round));
    }
    group(&format!("baby-{number}-rounds"), "", items)
}

/// The pen baby: firm outlines, finer lines within. Fingers and toes melt into one another at this size: a hand is a mitten.
fn baby(pose: &Pose, strokes: &[Stroke], cm: &impl Fn(f32) -> f32, ink: Colour) -> Vec<Item<FigurePoint>> {
    let (mut outer, mut inner) = (vec![], vec![]);
    let posed: Vec<usize> = pose.posed().map(|(number, _)| number).collect();
    for drawn in strokes.iter().filter(|drawn| posed.contains(&drawn.baby)) {
        let path = drawn.simple().path(TOLERANCE);
        match drawn.kind {
            Kind::Nose | Kind::Curl | Kind::Blade => {}
            Kind::Ear | Kind::Eye | Kind::Mouth | Kind::Hand | Kind::Foot => inner.extend(path),
            Kind::Head | Kind::Back | Kind::Bottom | Kind::Leg | Kind::Arm | Kind::Belly => {
                outer.extend(path)
            }
        }
    }
    let lines = [(outer, OUTLINE_MM), (inner, INNER_MM)];
    lines
        .into_iter()
        .filter(|(path, _)| !path.is_empty())
        .map(|(path, mm)| stroke(path, cm(mm), ink))
        .collect()
}
