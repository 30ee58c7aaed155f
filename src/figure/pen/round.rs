//! A baby whose back was not felt, for a pen. In: the rounds that stand for head and bottom. Out: a stroke for each.

use super::plane::STEP;
use super::{Kind, Stroke};
use crate::body::pose::Rounds;
use crate::units::FigurePoint;

/// Rounds of head and bottom.
pub fn rounds(number: usize, rounds: &Rounds) -> Vec<Stroke> {
    [(Kind::Head, rounds.head), (Kind::Bottom, rounds.bottom)]
        .map(|(kind, (middle, radius))| {
            let pieces = (radius * std::f32::consts::TAU / STEP / 4.0 + 1.0) as usize * 4;
            let line = (0..=pieces).map(|i| {
                // From the top, so that both sides are alike.
                let (sin, cos) = libm::sincosf(i as f32 / pieces as f32 * std::f32::consts::TAU);
                FigurePoint::new(middle.0.x + radius * sin, middle.0.y + radius * cos)
            });
            Stroke {
                baby: number,
                kind,
                side: None,
                deep: false,
                closed: true,
                line: line.collect(),
                corners: vec![],
            }
        })
        .into()
}
