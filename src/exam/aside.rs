//! On which side of her each of two babies lies. In: an exam. Out: the side of each, as far as anything says it; and where what
//! was found of them crosses.
//!
//! A place of head or bottom says it first, then the back, then the heart.

use super::model::{Baby, Exam, HeartHeard, Place};
use crate::units::MotherSide;

/// The side on which something of a baby was found, by what says it first.
fn by_what(baby: &Baby) -> [Option<MotherSide>; 3] {
    let poles = [baby.head.value(), baby.breech.value()].into_iter().flatten().find_map(Place::side);
    let back = baby.back.value().and_then(|back| back.side);
    let heart = match baby.heart.value() {
        Some(HeartHeard::At(place)) => place.side(),
        Some(HeartHeard::Somewhere) | None => None,
    };
    [poles, back, heart]
}

/// The side on which one of several babies lies; `None` when nothing says it.
pub fn own(baby: &Baby) -> Option<MotherSide> {
    by_what(baby).into_iter().flatten().next()
}

/// The side on which the first of two babies lies: its own, or the other one than the second's.
pub fn first(exam: &Exam) -> Option<MotherSide> {
    let [one, two] = &exam.babies[..] else { return None };
    own(one).or_else(|| own(two).map(MotherSide::opposite))
}

/// What crosses: both babies at one side, or the heart of one over the other (its number, from 0).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Crossed {
    /// Everything found of both lies on this side.
    OneSide(MotherSide),
    /// The heart of this baby was heard on the side of the other.
    Heart(usize),
}

/// Where what was found of two babies crosses.
pub fn crossed(exam: &Exam) -> Vec<Crossed> {
    let [one, two] = &exam.babies[..] else { return vec![] };
    let mut out = vec![];
    if let (Some(a), Some(b)) = (own(one), own(two))
        && a == b
    {
        out.push(Crossed::OneSide(a));
    }
    for (number, baby) in [one, two].into_iter().enumerate() {
        let [_, _, heart] = by_what(baby);
        if heart.is_some_and(|heart| own(baby) != Some(heart)) {
            out.push(Crossed::Heart(number));
        }
    }
    out
}
