//! The numbers of the day, for a page that was asked to have them. In: the exam. Out: the tape and the heart's rate, as
//! they were found, without a verdict.

use super::Told;
use crate::reckon::heart_rate;
use crate::sheet::content::{Block, Kind};
use crate::words::WordsError;

pub(super) fn numbers(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let words = told.words;
    let mut out = vec![];
    if let Some(tape) = told.exam.mother.fundal_height.value() {
        let cm = words.number(tape.get(), 1)?;
        out.push(Block::new(Kind::Text, words.say("family-number-tape", &[("cm", &cm)])?));
    }
    for (number, baby) in told.exam.babies.iter().enumerate() {
        let Some(rate) = heart_rate(baby) else { continue };
        let (rate, number) = (words.number(rate.mean, 0)?, (number + 1).to_string());
        let id = if told.several { "family-number-rate-of" } else { "family-number-rate" };
        out.push(Block::new(Kind::Text, words.say(id, &[("rate", &rate), ("number", &number)])?));
    }
    if !out.is_empty() {
        out.insert(0, told.block(Kind::Heading, "family-numbers-title")?);
    }
    Ok(out)
}
