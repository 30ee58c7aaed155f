//! A true word, above all where the news is hard. In: how the babies lie, and the weeks. Out: how often that is so, or that it
//! needs a plan; nothing that promises.

use super::Told;
use super::lie::{Way, which_way};
use crate::sheet::content::{Block, Kind};
use crate::units::Gestation;
use crate::words::WordsError;

/// Before this a baby that is not head down is common (source: RCOG-BREECH, in family-safety.csv).
const LATE_FROM: Option<Gestation> = Gestation::new(36, 0);

pub(super) fn kind(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let late = told.exam.weeks.is_none() || told.exam.weeks >= LATE_FROM;
    let ways: Vec<Option<Way>> = told.conclusions.iter().map(which_way).collect();
    if told.early {
        return Ok(vec![]);
    }
    if ways.iter().any(|way| matches!(way, Some(Way::Across | Way::Slanting))) {
        let first = if late { "family-kind-plan" } else { "family-kind-changes" };
        let mut out =
            vec![told.block(Kind::Emphasis, first)?, told.block(Kind::Emphasis, "family-kind-come")?];
        if !told.several {
            out.push(told.block(Kind::Text, "family-kind-cord")?);
        }
        return Ok(out);
    }
    // How often it is so is known of one baby alone.
    let id = match ways[..] {
        [Some(Way::BottomDown)] if late => "family-kind-bottom-late",
        [Some(Way::BottomDown)] => "family-kind-bottom",
        [Some(Way::HeadDown)] if told.exam.weeks >= LATE_FROM => "family-kind-head",
        _ => return Ok(vec![]),
    };
    Ok(vec![told.block(Kind::Text, id)?])
}
