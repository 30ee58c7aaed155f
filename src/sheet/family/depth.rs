//! How far down the baby is, as a family is told. In: fifths of a head, or descent in words. Out: one sentence, or none.

use super::Told;
use super::lie::{Way, which_way};
use crate::exam::{Baby, Conclusion, Descent};
use crate::words::WordsError;

/// How far down, in three steps.
enum Depth {
    Free,
    Brim,
    Deep,
}

pub(super) fn depth(
    baby: &Baby,
    conclusion: &Conclusion,
    told: &Told<'_>,
) -> Result<Option<String>, WordsError> {
    let head = match which_way(conclusion) {
        Some(Way::HeadDown) => true,
        Some(Way::BottomDown) => false,
        Some(Way::Across | Way::Slanting) | None => return Ok(None),
    };
    // The biparietal plane passes the brim between 3/5 and 2/5; 5/5 stands free above it.
    let fifths = baby.head_above_brim.value().filter(|_| head).map(|fifths| match fifths.get() {
        5.. => Depth::Free,
        3 | 4 => Depth::Brim,
        0..=2 => Depth::Deep,
    });
    let said = baby.descent.value().map(|descent| match descent {
        Descent::Free => Depth::Free,
        Descent::AtBrim | Descent::Dipping | Descent::Fixed => Depth::Brim,
        Descent::Deep | Descent::Engaged => Depth::Deep,
    });
    let unsure = baby.head_above_brim.is_unsure() || baby.descent.is_unsure();
    let id = match (fifths.or(said), head) {
        (None, _) => return Ok(None),
        (Some(_), _) if unsure => "family-depth-unsure",
        (Some(Depth::Free), true) => "family-depth-head-free",
        (Some(Depth::Brim), true) => "family-depth-head-brim",
        (Some(Depth::Deep), true) => "family-depth-head-deep",
        (Some(Depth::Free), false) => "family-depth-bottom-free",
        (Some(Depth::Brim), false) => "family-depth-bottom-brim",
        (Some(Depth::Deep), false) => "family-depth-bottom-deep",
    };
    told.say(id).map(Some)
}
