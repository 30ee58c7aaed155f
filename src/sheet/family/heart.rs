//! The heart on the picture. In: where it was heard, what stands against listening at home. Out: what the mark means, and
//! in the same paragraph, where it was asked for and nothing stands against it, the invitation to lay an ear there.

use super::{Asked, Told};
use crate::exam::{Exam, HeartHeard, Movements};
use crate::reckon::Reckoning;
use crate::sheet::content::{Block, Kind};
use crate::units::Gestation;
use crate::words::WordsError;

/// Before this an ear hears little through the skin: common practice.
const EAR_FROM: Option<Gestation> = Gestation::new(28, 0);

/// Whether a family may be invited to lay an ear on the mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Invitation {
    /// Nothing stands against it.
    May,
    /// No place was recorded where the heart was heard: there is no mark.
    NoMark,
    /// More than one baby.
    Twins,
    /// Movements are not recorded as usual.
    Movements,
    /// The rate or the rhythm is to be looked at.
    Rate,
    /// The weeks are not given, or under 28.
    Weeks,
}

pub(super) fn may_invite(exam: &Exam, reckoning: &Reckoning) -> Invitation {
    if exam.babies.len() > 1 {
        return Invitation::Twins;
    }
    if !has_mark(exam) {
        return Invitation::NoMark;
    }
    if exam.mother.movements.value() != Some(&Movements::Usual) || exam.mother.movements.is_unsure() {
        return Invitation::Movements;
    }
    if reckoning.remarks.iter().any(|r| r.id.starts_with("heart-") || r.id == "pulse-near-heart") {
        return Invitation::Rate;
    }
    if exam.weeks < EAR_FROM {
        return Invitation::Weeks;
    }
    Invitation::May
}

fn has_mark(exam: &Exam) -> bool {
    exam.babies.iter().any(|baby| matches!(baby.heart.value(), Some(HeartHeard::At(_))))
}

pub(super) fn heart(told: &Told<'_>, reckoning: &Reckoning, asked: Asked) -> Result<Vec<Block>, WordsError> {
    if !has_mark(told.exam) {
        return Ok(vec![]);
    }
    let mut said = vec![told.say("family-heart")?];
    if asked.invite_listening && may_invite(told.exam, reckoning) == Invitation::May {
        said.push(told.say("family-listen")?);
        said.push(told.say("family-listen-limits")?);
    }
    Ok(vec![Block::new(Kind::Text, said.join(" "))])
}
