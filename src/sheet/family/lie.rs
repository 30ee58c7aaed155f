//! How the baby lies, as a family is told. In: exam and conclusions. Out: sentences; a side is the mother's own.

use super::Told;
use super::depth::depth;
use super::heart_place;
use super::known::{self, Known};
use super::notice::notice;
use crate::exam::{Baby, Back, BackTurn, Conclusion, Finding, Lie, Presentation, Unsure};
use crate::sheet::content::{Block, Kind};
use crate::units::MotherSide;
use crate::words::WordsError;

/// How each baby lies: one strong sentence, then where head and back are.
pub(super) fn found(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let words = told.words;
    let mut out = vec![];
    for (number, (baby, conclusion)) in told.babies().enumerate() {
        if told.early && which_way(conclusion).is_none() {
            continue;
        }
        let number = (number + 1).to_string();
        let name = if told.several {
            words.say("family-baby-number", &[("number", &number)])?
        } else {
            told.say("family-baby-one")?
        };
        // Which sentences say "probably"; the words on the picture say it of the same.
        let probably = Unsure::of(baby, conclusion);
        let lie = lie_message(conclusion, probably.lie, told);
        let how = told.say(known::how(told.known))?;
        let values = [("baby", name.as_str()), ("number", &number), ("how", &how)];
        out.push(Block::new(Kind::Lead, words.say(&lie, &values)?));
        let mut rest = vec![];
        if let Some(id) = head_message(conclusion) {
            rest.push(told.say(id)?);
        }
        // A lie that could not be told says nothing of the back unless the back was felt.
        if which_way(conclusion).is_some() || conclusion.back.is_some() {
            rest.push(back_sentence(baby, conclusion, probably.back, told)?);
        }
        rest.extend(depth(baby, conclusion, told)?);
        rest.extend(heart_place::sentence(&baby.heart, told)?);
        if !rest.is_empty() {
            out.push(Block::new(Kind::Text, rest.join(" ")));
        }
        out.extend(notice(baby, conclusion, told)?.map(|notice| Block::new(Kind::Emphasis, notice)));
    }
    if out.is_empty() {
        out.push(told.block(Kind::Lead, "family-lie-early")?);
        out.push(told.block(Kind::Text, "family-early-picture")?);
    }
    Ok(out)
}

/// How a baby lies, in the four ways a family is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Way {
    HeadDown,
    BottomDown,
    Across,
    Slanting,
}

pub(super) fn which_way(c: &Conclusion) -> Option<Way> {
    match (c.lie, c.presentation) {
        (Some(Lie::Transverse), _) | (None, Some(Presentation::Shoulder)) => Some(Way::Across),
        (Some(Lie::Oblique), _) => Some(Way::Slanting),
        (_, Some(Presentation::Cephalic | Presentation::Face | Presentation::Brow)) => Some(Way::HeadDown),
        (_, Some(Presentation::Breech)) => Some(Way::BottomDown),
        (Some(Lie::Longitudinal), _) => match c.head_up {
            Some(true) => Some(Way::BottomDown),
            Some(false) => Some(Way::HeadDown),
            None => None,
        },
        (None, None) => None,
    }
}

fn lie_message(c: &Conclusion, probably: bool, told: &Told<'_>) -> String {
    let id = match which_way(c) {
        Some(Way::HeadDown) => "family-lie-head-down",
        Some(Way::BottomDown) => "family-lie-bottom-down",
        Some(Way::Across) => "family-lie-across",
        Some(Way::Slanting) => "family-lie-slanting",
        None => {
            let id = match told.known {
                // No hands tried.
                Known::Nothing | Known::Scan | Known::Written => "family-lie-not-felt",
                Known::Hands | Known::HandsAndScan => "family-lie-not-told",
            };
            return if told.several { format!("{id}-number") } else { id.to_owned() };
        }
    };
    with_doubt(id, probably)
}

fn with_doubt(id: &str, probably: bool) -> String {
    if probably { format!("{id}-probably") } else { id.to_owned() }
}

/// Where the head is, said of a baby that lies across or on a slant.
fn head_message(c: &Conclusion) -> Option<&'static str> {
    use MotherSide::{Left, Right};
    match (which_way(c)?, c.head_side, c.head_up) {
        (Way::Across, Some(Left), _) | (Way::Slanting, Some(Left), None) => Some("family-head-left"),
        (Way::Across, Some(Right), _) | (Way::Slanting, Some(Right), None) => Some("family-head-right"),
        (Way::Slanting, Some(Left), Some(false)) => Some("family-head-low-left"),
        (Way::Slanting, Some(Right), Some(false)) => Some("family-head-low-right"),
        (Way::Slanting, Some(Left), Some(true)) => Some("family-head-high-left"),
        (Way::Slanting, Some(Right), Some(true)) => Some("family-head-high-right"),
        (Way::Slanting, None, Some(false)) => Some("family-head-low"),
        (Way::Slanting, None, Some(true)) => Some("family-head-high"),
        (Way::HeadDown | Way::BottomDown, _, _) | (Way::Across | Way::Slanting, None, _) => None,
    }
}

fn back_sentence(
    baby: &Baby,
    conclusion: &Conclusion,
    probably: bool,
    told: &Told<'_>,
) -> Result<String, WordsError> {
    let words = told.words;
    let Some(Back { side, turn }) = conclusion.back else {
        return told.say(match (&baby.back, told.known) {
            (Finding::CouldNotTell { .. } | Finding::Absent | Finding::Found(_), _) => "family-back-not-told",
            (Finding::NotExamined | Finding::NotTried, Known::Hands | Known::HandsAndScan) => {
                "family-back-not-felt"
            }
            (Finding::NotExamined | Finding::NotTried, Known::Scan | Known::Written | Known::Nothing) => {
                "family-back-not-noted"
            }
        });
    };
    let id = match (side.is_some(), turn) {
        (_, Some(BackTurn::Ribs)) => "family-back-ribs",
        (_, Some(BackTurn::Feet)) => "family-back-feet",
        (true, Some(BackTurn::Front)) => "family-back-side-front",
        (true, Some(BackTurn::Spine)) => "family-back-side-spine",
        (true, Some(BackTurn::Lateral)) => "family-back-side-square",
        (true, None) => "family-back-side",
        (false, Some(BackTurn::Front)) => "family-back-front",
        (false, Some(BackTurn::Spine)) => "family-back-spine",
        (false, Some(BackTurn::Lateral) | None) => return words.say("family-back-not-told", &[]),
    };
    let side = match side {
        Some(MotherSide::Left) => words.say("family-side-left", &[])?,
        Some(MotherSide::Right) => words.say("family-side-right", &[])?,
        None => String::new(),
    };
    words.say(&with_doubt(id, probably), &[("side", &side)])
}
