//! Where the heart was heard, in a sentence. In: the finding. Out: one sentence with the mother's own side, or none.

use super::Told;
use crate::exam::{Across, Finding, HeartHeard, Height, KnownBy, Place};
use crate::units::MotherSide;
use crate::words::WordsError;

/// So many cm from the navel are "a little" (house).
const A_LITTLE_CM: f64 = 5.0;
/// Nearer than this to the navel it is level with it (house).
const LEVEL_CM: f64 = 0.5;

/// Nothing where it was not heard, or was seen and not heard.
pub(super) fn sentence(heart: &Finding<HeartHeard>, told: &Told<'_>) -> Result<Option<String>, WordsError> {
    let Finding::Found(found) = heart else { return Ok(None) };
    if matches!(found.known_by, KnownBy::Scan(_)) {
        return Ok(None);
    }
    let place = match &found.value {
        HeartHeard::Somewhere => return told.say("family-heart-heard").map(Some),
        HeartHeard::At(place) => place,
    };
    let mut parts = vec![];
    for id in [across(place), height(place)].into_iter().flatten() {
        parts.push(told.say(id)?);
    }
    if parts.is_empty() {
        return told.say("family-heart-heard").map(Some);
    }
    let said = told.words.say("family-heart-at", &[("place", &parts.join(", "))])?;
    Ok(Some(if found.sure { said } else { format!("{said} {}", told.say("family-heart-unsure")?) }))
}

fn across(place: &Place) -> Option<&'static str> {
    use MotherSide::{Left, Right};
    Some(match place.across? {
        Across::Side(Left) | Across::Measured(Left, _) => "family-heart-left",
        Across::Side(Right) | Across::Measured(Right, _) => "family-heart-right",
        Across::Flank(Left) => "family-heart-far-left",
        Across::Flank(Right) => "family-heart-far-right",
        Across::Middle => "family-heart-middle",
    })
}

fn height(place: &Place) -> Option<&'static str> {
    Some(match place.height? {
        Height::Fundus => "family-heart-top",
        Height::AboveNavel => "family-heart-above",
        Height::AtNavel => "family-heart-level",
        Height::BelowNavel => "family-heart-below",
        Height::IliacFossa => "family-heart-low",
        Height::AbovePubicBone | Height::FromPubicBone(_) => "family-heart-bone",
        Height::FromNavel(cm) if cm.abs() < LEVEL_CM => "family-heart-level",
        Height::FromNavel(cm) if cm > A_LITTLE_CM => "family-heart-above",
        Height::FromNavel(cm) if cm > 0.0 => "family-heart-little-above",
        Height::FromNavel(cm) if cm >= -A_LITTLE_CM => "family-heart-little-below",
        Height::FromNavel(_) => "family-heart-below",
    })
}
