//! The baby in a minute: round its head, down the back, round the bottom, and the legs in one line. In: a pose. Out: strokes as those
//! of the pen baby, through the outline of the same form, without face, fingers and toes.

use super::draw::{cut_at_the_bone, for_each_baby};
use super::head::Head;
use super::masses::{Mass, Masses, Run};
use super::name::Sides;
use super::plane::{away, holds, hull, nearest, rounded, rounded_ring};
use super::round::rounds;
use super::{Kind, Stroke};
use crate::body::baby::PosedBaby;
use crate::body::pose::Pose;
use crate::figure::grid::Line;
use crate::figure::wanted::lean;
use crate::units::{BabySide, FigurePoint};

/// How round a quick line is: fingers and toes are gone, cm.
const ROUND: f32 = 1.1;

/// The strokes of all babies, by baby: head, back, bottom, legs.
pub fn short(pose: &Pose) -> Vec<Stroke> {
    let sign = lean(pose);
    let mut out: Vec<Stroke> = pose.rounds().flat_map(|(number, round)| rounds(number, round)).collect();
    for_each_baby(pose, sign, &[Mass::Head], |number, baby, masses| {
        out.extend(strokes(number, baby, &masses));
    });
    let mut out: Vec<Stroke> = out.into_iter().flat_map(cut_at_the_bone).collect();
    out.sort_by_key(|stroke| (stroke.baby, stroke.kind));
    out
}

fn strokes(number: usize, baby: &PosedBaby, masses: &Masses<'_>) -> Vec<Stroke> {
    let head = Head::of(baby, masses).map(|head| rounded_ring(&hull(&head.ring), 0.6));
    let outer = masses.outer().map(|ring| rounded_ring(&ring, ROUND));
    let mut lines: Vec<(Kind, Option<BabySide>, Line)> = vec![];
    if let Some(outer) = outer {
        let named = Sides::of(baby, masses.sign);
        for line in beside(&outer, head.as_deref().unwrap_or_default()) {
            let of = line.iter().map(|p| masses.mass_near(*p)).map(on_the_body).collect();
            for (kind, side, piece) in named.pieces(Run { line, of }) {
                // Whatever is neither back nor bottom is the line of the legs.
                let kind = if matches!(kind, Kind::Back | Kind::Bottom) { kind } else { Kind::Leg };
                match lines.last_mut() {
                    Some((last, _, line))
                        if *last == kind && away(line[line.len() - 1], piece.line[0]) < 0.3 =>
                    {
                        line.extend(&piece.line[1..]);
                    }
                    _ => lines.push((kind, side, piece.line)),
                }
            }
        }
    }
    if let Some(mut ring) = head {
        ring.extend(ring.first().copied());
        lines.insert(0, (Kind::Head, None, ring));
    }
    let turned = |line: Line| line.iter().map(|p| FigurePoint::new(p.0 * masses.sign, p.1)).collect();
    lines
        .into_iter()
        .map(|(kind, side, line)| Stroke {
            baby: number,
            kind,
            side,
            deep: false,
            closed: kind == Kind::Head,
            line: turned(if kind == Kind::Head { line } else { rounded(&line, 0.3) }),
            corners: vec![],
        })
        .collect()
}

/// A head's place on the outline that was kept beside it is neck.
fn on_the_body(mass: Mass) -> Mass {
    if mass == Mass::Head { Mass::Trunk } else { mass }
}

/// The stretches of an outline that do not go round the head.
fn beside(outer: &[(f32, f32)], head: &[(f32, f32)]) -> Vec<Line> {
    let off = |p: (f32, f32)| head.is_empty() || (!holds(head, p) && nearest(head, p).1 > 0.35);
    let keep: Vec<bool> = outer.iter().map(|p| off(*p)).collect();
    super::plane::stretches(outer, &keep, true, 3.0, 2.0)
}
