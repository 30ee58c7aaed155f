//! What she may notice of a baby that lies so. In: the lie and the back. Out: one sentence, or none.
//!
//! It only names what lies where; nothing here asks her to feel for it.

use super::Told;
use super::lie::{Way, which_way};
use crate::exam::{Across, Baby, BackTurn, Conclusion, Movements, Place};
use crate::units::{Gestation, MotherSide};
use crate::words::WordsError;

/// Before this a baby turns so often that nothing is said.
const SAID_FROM: Option<Gestation> = Gestation::new(28, 0);

pub(super) fn notice(
    baby: &Baby,
    conclusion: &Conclusion,
    told: &Told<'_>,
) -> Result<Option<String>, WordsError> {
    let moves = told.exam.mother.movements.value();
    let changed = matches!(
        moves,
        Some(Movements::Fewer | Movements::Changed | Movements::None | Movements::NotFeltYet)
    );
    if changed || told.exam.weeks < SAID_FROM {
        return Ok(None);
    }
    message(conclusion, baby.limbs.value().map_or(&[], Vec::as_slice)).map(|id| told.say(id)).transpose()
}

/// Of legs only what hands have felt: none where no limbs were, and no side but theirs.
fn message(c: &Conclusion, limbs: &[Place]) -> Option<&'static str> {
    use MotherSide::{Left, Right};
    let on = |side| limbs.iter().any(|place| side_of(place) == Some(side));
    match (which_way(c)?, c.back) {
        (Way::HeadDown, Some(_)) if limbs.is_empty() => None,
        (Way::HeadDown, Some(back)) => match (back.turn, back.side) {
            (Some(BackTurn::Spine), _) => Some("family-notice-limbs-front"),
            (_, Some(Left)) => (on(Right) && !on(Left)).then_some("family-notice-legs-right"),
            (_, Some(Right)) => (on(Left) && !on(Right)).then_some("family-notice-legs-left"),
            (_, None) => Some("family-notice-legs-high"),
        },
        (Way::BottomDown, _) => Some("family-notice-head-high"),
        (Way::Across, _) => match c.head_side? {
            Left => Some("family-notice-head-left"),
            Right => Some("family-notice-head-right"),
        },
        (Way::HeadDown, None) | (Way::Slanting, _) => None,
    }
}

fn side_of(place: &Place) -> Option<MotherSide> {
    match place.across {
        Some(Across::Side(side) | Across::Flank(side) | Across::Measured(side, _)) => Some(side),
        Some(Across::Middle) | None => None,
    }
}
