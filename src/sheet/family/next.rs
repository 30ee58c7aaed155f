//! What comes next. In: the lie and the weeks. Out: before 36 weeks, that the page is for today only and that hands can feel
//! again, or, of a baby that lies across or on a slant, what to ask; from 36 weeks, what
//! may be talked over when the baby is not head down. No promise, and no advice on turning a baby at home.

use super::Told;
use super::lie::{Way, which_way};
use crate::sheet::content::{Block, Kind};
use crate::units::Gestation;
use crate::words::WordsError;

/// From here on the choices are talked over (source: RCOG-BREECH, in family-safety.csv).
const CHOICES_FROM: Option<Gestation> = Gestation::new(36, 0);
/// From here on a stay in hospital is talked over for a baby that lies across (source: RCOG-50).
const STAY_FROM: Option<Gestation> = Gestation::new(37, 0);

pub(super) fn next(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let weeks = told.exam.weeks;
    let ways: Vec<Option<Way>> = told.conclusions.iter().map(which_way).collect();
    if weeks < CHOICES_FROM {
        // An order to come in at once stands over it: nothing is said that could end it with the day.
        if ways.iter().any(|way| matches!(way, Some(Way::Across | Way::Slanting))) {
            return if weeks.is_some() {
                Ok(vec![told.block(Kind::Text, "family-next-later")?])
            } else {
                Ok(vec![])
            };
        }
        let told_of = ways.iter().any(Option::is_some);
        return if told_of {
            Ok(vec![told.block(Kind::Text, "family-today")?, told.block(Kind::Text, "family-next-again")?])
        } else {
            Ok(vec![])
        };
    }
    if told.several {
        let all_down = ways.iter().all(|way| *way == Some(Way::HeadDown));
        let again = || Ok(vec![told.block(Kind::Text, "family-next-again")?]);
        return if all_down { again() } else { Ok(vec![told.block(Kind::Text, "family-next-twins")?]) };
    }
    match ways.first().copied().flatten() {
        Some(Way::HeadDown) => Ok(vec![told.block(Kind::Text, "family-next-again")?]),
        Some(Way::BottomDown) => choices(
            told,
            &["family-next-scan", "family-next-turn", "family-next-operation", "family-next-bottom-first"],
        ),
        Some(Way::Across | Way::Slanting) => {
            let stay = if weeks >= STAY_FROM { "family-next-stay" } else { "family-next-stay-later" };
            choices(told, &["family-next-scan", stay])
        }
        None => Ok(vec![told.block(Kind::Text, "family-next-not-told")?]),
    }
}

/// What is talked over, and that she chooses.
fn choices(told: &Told<'_>, ids: &[&str]) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![told.block(Kind::Text, "family-next-title")?];
    out.extend(told.points(ids)?);
    Ok(out)
}
