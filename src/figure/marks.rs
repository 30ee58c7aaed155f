//! What was heard and felt. In: a pose, its cast, the labels wanted. Out: where the marks stand, and the marks.

use super::mother::MotherAnchor;
use super::mother_ink::ellipse;
use super::options::{Labels, View};
use super::scene::{Colour, FillRule, Frame, Item, Path, Step};
use super::terrain::Round;
use super::wanted::lean;
use crate::body::cast::Cast;
use crate::body::head::HEIGHT;
use crate::body::pose::{Mark, Pose};
use crate::units::FigurePoint;

type Marks = Vec<Item<FigurePoint>>;

/// Colours of marks and labels.
#[derive(Clone, Copy, Debug)]
pub struct MarkColours {
    /// Paper, under words and marks.
    pub paper: Colour,
    /// The heart.
    pub heart: Colour,
    /// Words and pointers.
    pub ink: Colour,
}

/// What a mark stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum MarkKind {
    /// A heart was heard here; number of the baby.
    Heart(usize),
    /// A limb was felt here; number of the baby.
    Limb(usize),
    /// How many fifths of the head are palpable above the brim.
    Scale(u8),
    Lump,
    Scar,
    Navel,
}

/// A mark in its place, as someone in front of her sees it.
#[derive(Clone, Debug)]
pub(super) struct MarkPlace {
    pub kind: MarkKind,
    /// Where its label points.
    pub at: FigurePoint,
    /// How far from there the pointer ends, cm.
    pub reach: f32,
    /// What it covers: middles and radius.
    pub covers: (Vec<FigurePoint>, f32),
}

/// Radius of the round in which a heart's mark lies, with its ground.
const HEART: f32 = 1.3;
/// Radius of the ring of a limb.
const LIMB: f32 = 0.8;

/// Every mark of the picture.
pub(super) fn places(
    pose: &Pose,
    cast: Option<&Cast>,
    labels: Labels,
    anchors: &[(MotherAnchor, FigurePoint)],
) -> Vec<MarkPlace> {
    let one = |kind, at, reach, radius| MarkPlace { kind, at, reach, covers: (vec![at], radius) };
    let mut out = vec![];
    let all = matches!(labels, Labels::All | Labels::Numbered);
    for mark in &pose.marks {
        match mark {
            Mark::Heart(n, p) => {
                out.push(one(MarkKind::Heart(*n), FigurePoint::new(p.0.x, p.0.y), HEART, HEART));
            }
            Mark::Limb(n, p) if all => {
                out.push(one(MarkKind::Limb(*n), FigurePoint::new(p.0.x, p.0.y), LIMB, LIMB + 0.1));
            }
            Mark::Limb(..) => {}
        }
    }
    if let Some(scale) = Scale::of(pose, cast).filter(|_| all || labels == Labels::Few) {
        let middles =
            (0..10).map(|i| FigurePoint::new(scale.x, scale.low + scale.step * (0.25 + 0.5 * i as f32)));
        out.push(MarkPlace {
            kind: MarkKind::Scale(scale.fifths),
            // The middle of the steps that are filled.
            at: FigurePoint::new(scale.x, scale.step * 0.5 * f32::from(scale.fifths)),
            reach: Scale::HALF + 0.15,
            covers: (middles.collect(), 0.75),
        });
    }
    for (anchor, at) in anchors {
        match anchor {
            MotherAnchor::Lump(_) => out.push(one(MarkKind::Lump, *at, 1.9, 1.9)),
            MotherAnchor::Navel => out.push(one(MarkKind::Navel, *at, 0.8, 0.8)),
            _ => {}
        }
    }
    for scar in &pose.scars {
        let line: Vec<FigurePoint> = scar.iter().map(|p| FigurePoint::new(p.0.x, p.0.y)).collect();
        if let Some(at) = seen_middle(&line, cast, lean(pose)) {
            out.push(MarkPlace { kind: MarkKind::Scar, at, reach: 0.35, covers: (line, 0.45) });
        }
    }
    out
}

/// The point of a line nearest to its middle before which no baby lies, of two the one on the side that leans; the
/// nearest of all when all are hidden.
fn seen_middle(line: &[FigurePoint], cast: Option<&Cast>, lean: f32) -> Option<FigurePoint> {
    let (first, last) = (line.first()?, line.last()?);
    let (x, y) = ((first.x + last.x) * 0.5, (first.y + last.y) * 0.5);
    let mut near = line.to_vec();
    // In tenths of a cm, so that both sides of a scar across the midline are equally near.
    let tenths = |p: &FigurePoint| {
        let (dx, dy) = (p.x - x, p.y - y);
        ((dx * dx + dy * dy).sqrt() * 10.0 + 0.5) as u32
    };
    near.sort_by(|a, b| tenths(a).cmp(&tenths(b)).then((b.x * lean).total_cmp(&(a.x * lean))));
    let free = |p: &&FigurePoint| !cast.is_some_and(|c| c.covers(p.x, p.y));
    near.iter().find(free).or(near.first()).copied()
}

/// What the marks cover.
pub(super) fn rounds(places: &[MarkPlace]) -> Vec<Round> {
    let mut out = vec![];
    for (mark, place) in places.iter().enumerate() {
        let (middles, radius) = &place.covers;
        out.extend(middles.iter().map(|at| Round { at: *at, radius: *radius, mark }));
    }
    out
}

/// Where hearts were heard. Symmetric, so that a mirrored finding gives a mirrored mark.
pub(super) fn hearts(pose: &Pose, view: View, size: f32, c: &MarkColours) -> Marks {
    let turn = turn(view);
    pose.marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Heart(baby, at) => Some(Item::Group {
                name: format!("heart-{baby}"),
                about: String::new(),
                items: heart(FigurePoint::new(at.0.x * turn, at.0.y * turn), size, c),
            }),
            Mark::Limb(..) => None,
        })
        .collect()
}

/// -1 for a picture turned by half a turn, else 1.
pub(super) fn turn(view: View) -> f32 {
    match view {
        View::Facing => 1.0,
        View::Hers => -1.0,
    }
}

/// A place where somebody listened: the rim of a horn, set down on the skin, round a dark middle, on a pale ground that
/// stands out from whatever lies under it.
fn heart(at: FigurePoint, size: f32, c: &MarkColours) -> Marks {
    let round = |r: f32| ellipse(at, r * size, r * size);
    let fill = |path, colour| Item::Fill { path, colour, rule: FillRule::EvenOdd };
    let ring: Path<FigurePoint> = round(HORN.1).into_iter().chain(round(HORN.0)).collect();
    vec![fill(round(HORN.1 + 0.22), c.paper), fill(ring, c.heart), fill(round(HORN.2), c.heart)]
}

/// Radii of a horn's rim, inner and outer, and of the dark middle, cm.
const HORN: (f32, f32, f32) = (0.74, 0.90, 0.26);

/// Rings where limbs were felt: dark dashes on a pale ring.
pub(super) fn limbs(pose: &Pose, c: &MarkColours) -> Marks {
    let mut out = vec![];
    for mark in &pose.marks {
        if let Mark::Limb(baby, at) = mark {
            let ring = ellipse(FigurePoint::new(at.0.x, at.0.y), LIMB, LIMB);
            out.push(Item::Group {
                name: format!("limbs-felt-{baby}-{}", out.len() + 1),
                about: String::new(),
                items: vec![
                    Item::Stroke { path: ring.clone(), colour: c.paper, width: 0.24, dash: None },
                    Item::Stroke { path: ring, colour: c.ink, width: 0.09, dash: Some((0.22, 0.2)) },
                ],
            });
        }
    }
    out
}

/// Five steps of the head's height beside it; those above the brim, at y = 0, are the fifths that were felt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scale {
    /// Middle of the steps.
    pub x: f32,
    /// Foot of the lowest step.
    pub low: f32,
    /// Height of a step, cm.
    pub step: f32,
    /// Steps above the brim.
    pub fifths: u8,
}

impl Scale {
    /// Half the breadth of a step, cm.
    const HALF: f32 = 0.42;

    /// The scale of a head that was felt in fifths. It stands beside the head, on the side away from the back.
    pub fn of(pose: &Pose, cast: Option<&Cast>) -> Option<Self> {
        let fifths = pose.fifths?;
        let (scale, side, radius) = match (pose.posed().next(), pose.rounds().next()) {
            (Some((_, b)), _) if b.posture.up.y < -0.9 => {
                let side = if b.body.z.x.abs() < 0.2 { -lean(pose) } else { b.body.z.x.signum() };
                (b.posture.measures.head, side, 0.0)
            }
            (_, Some((_, r))) if r.head.0.0.y < r.bottom.0.0.y => (r.head.1 / 4.9, -lean(pose), r.head.1),
            _ => return None,
        };
        let step = HEIGHT * scale / 5.0;
        let low = -step * f32::from(5 - fifths);
        let widest = cast.map_or(radius, |c| {
            (0..c.height)
                .filter(|&j| (low - 0.5..low + step * 5.0 + 0.5).contains(&c.centre(0, j).1))
                .flat_map(|j| c.hits_of_row(j))
                .map(|(x, _, _)| x * side)
                .fold(radius, f32::max)
        });
        Some(Scale { x: side * (widest + 1.3), low, step, fifths })
    }

    /// Its marks: steps above the brim are filled, those below are empty.
    pub fn draw(&self, c: &MarkColours) -> Item<FigurePoint> {
        let cell = |i: u8, grow: f32| {
            let low = self.low + self.step * f32::from(i);
            Frame {
                left: self.x - Self::HALF - grow,
                bottom: low - grow,
                right: self.x + Self::HALF + grow,
                top: low + self.step + grow,
            }
            .outline()
        };
        let mut items = vec![];
        for i in 0..5 {
            items.push(Item::Stroke { path: cell(i, 0.0), colour: c.paper, width: 0.34, dash: None });
        }
        for i in 0..5 {
            let colour = if i >= 5 - self.fifths { c.ink } else { c.paper };
            items.push(Item::Fill { path: cell(i, 0.0), colour, rule: FillRule::NonZero });
        }
        for i in 0..5 {
            items.push(Item::Stroke { path: cell(i, 0.0), colour: c.ink, width: 0.07, dash: None });
        }
        for i in 6 - self.fifths..5 {
            // Between two filled steps.
            let y = self.low + self.step * f32::from(i);
            let path = vec![
                Step::Move(FigurePoint::new(self.x - Self::HALF + 0.06, y)),
                Step::Line(FigurePoint::new(self.x + Self::HALF - 0.06, y)),
            ];
            items.push(Item::Stroke { path, colour: c.paper, width: 0.1, dash: None });
        }
        Item::Group { name: "fifths".to_owned(), about: String::new(), items }
    }
}
