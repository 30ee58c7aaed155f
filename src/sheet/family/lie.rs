//! How the baby lies, as a family is told. In: exam and conclusions. Out: sentences; a side is the mother's own.

use crate::exam::{Baby, Back, BackTurn, Conclusion, Exam, Finding, Lie, Presentation};
use crate::sheet::content::{Block, Kind};
use crate::units::MotherSide;
use crate::words::{Words, WordsError};

/// How each baby lies: one strong sentence, then where head and back are.
pub(super) fn found(
    exam: &Exam,
    conclusions: &[Conclusion],
    early: bool,
    words: &Words,
) -> Result<Vec<Block>, WordsError> {
    let several = exam.babies.len() > 1;
    let mut out = vec![];
    for (number, (baby, conclusion)) in exam.babies.iter().zip(conclusions).enumerate() {
        if early && which_way(conclusion).is_none() {
            continue;
        }
        let number = (number + 1).to_string();
        let name = if several {
            words.say("family-baby-number", &[("number", &number)])?
        } else {
            words.say("family-baby-one", &[])?
        };
        let probably = Probably::of(baby, conclusion);
        let lie = lie_message(conclusion, probably.lie, several);
        out.push(Block::new(Kind::Lead, words.say(&lie, &[("baby", &name), ("number", &number)])?));
        let mut rest = vec![];
        if let Some(id) = head_message(conclusion) {
            rest.push(words.say(id, &[])?);
        }
        // A lie that could not be told says nothing of the back unless the back was felt.
        if which_way(conclusion).is_some() || conclusion.back.is_some() {
            rest.push(back_sentence(baby, conclusion, probably.back, words)?);
        }
        if !rest.is_empty() {
            out.push(Block::new(Kind::Text, rest.join(" ")));
        }
    }
    if out.is_empty() {
        out.push(Block::new(Kind::Lead, words.say("family-lie-early", &[])?));
        out.push(Block::new(Kind::Text, words.say("family-early-picture", &[])?));
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

fn lie_message(c: &Conclusion, probably: bool, several: bool) -> String {
    let id = match which_way(c) {
        Some(Way::HeadDown) => "family-lie-head-down",
        Some(Way::BottomDown) => "family-lie-bottom-down",
        Some(Way::Across) => "family-lie-across",
        Some(Way::Slanting) => "family-lie-slanting",
        None if several => return "family-lie-not-told-number".to_owned(),
        None => return "family-lie-not-told".to_owned(),
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
    words: &Words,
) -> Result<String, WordsError> {
    let Some(Back { side, turn }) = conclusion.back else {
        return words.say(
            match baby.back {
                Finding::CouldNotTell { .. } | Finding::Absent | Finding::Found(_) => "family-back-not-told",
                Finding::NotExamined | Finding::NotTried => "family-back-not-felt",
            },
            &[],
        );
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

/// Which sentences say "probably".
struct Probably {
    lie: bool,
    back: bool,
}

impl Probably {
    fn of(baby: &Baby, conclusion: &Conclusion) -> Self {
        let position = baby.position.is_unsure();
        let lie = position
            || baby.head.is_unsure()
            || baby.breech.is_unsure()
            || baby.lie.is_unsure()
            || baby.presentation.is_unsure();
        let back = baby.back.is_unsure() || (baby.back.value().is_none() && position);
        // Doubt that cannot be traced to one finding is said of both.
        let all = conclusion.unsure && !lie && !back;
        Self { lie: lie || all, back: back || all }
    }
}
