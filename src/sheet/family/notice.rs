//! What she may notice of a baby that lies so. In: the lie and the back. Out: one sentence, or none.
//!
//! It only names what lies where; nothing here asks her to feel for it.

use super::Told;
use super::lie::{Way, which_way};
use crate::exam::{Baby, BackTurn, Conclusion, Height, Movements, Place};
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
    let limbs = baby.limbs.value().map_or(&[][..], Vec::as_slice);
    let id = message(conclusion, limbs).or_else(|| bottom(baby, conclusion));
    id.map(|id| told.say(id)).transpose()
}

/// Of a head that is down, the bottom where hands have felt it: at the top of the womb.
fn bottom(baby: &Baby, c: &Conclusion) -> Option<&'static str> {
    let at_top = matches!(baby.breech.value(), Some(Place { height: Some(Height::Fundus), .. }));
    (which_way(c) == Some(Way::HeadDown) && at_top && !baby.breech.is_unsure())
        .then_some("family-notice-bottom-high")
}

/// Of legs only what hands have felt: none where no limbs were, and no side but theirs.
fn message(c: &Conclusion, limbs: &[Place]) -> Option<&'static str> {
    use MotherSide::{Left, Right};
    let on = |side| limbs.iter().any(|place| place.side() == Some(side));
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
        (Way::Slanting, _) => match (c.head_side?, c.head_up) {
            (Left, Some(false)) => Some("family-notice-head-low-left"),
            (Right, Some(false)) => Some("family-notice-head-low-right"),
            (Left, Some(true)) => Some("family-notice-head-high-left"),
            (Right, Some(true)) => Some("family-notice-head-high-right"),
            (Left, None) => Some("family-notice-head-left"),
            (Right, None) => Some("family-notice-head-right"),
        },
        (Way::HeadDown, None) => None,
    }
}
