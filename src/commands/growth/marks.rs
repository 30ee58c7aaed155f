//! What the figure marks. In: the course of a pregnancy, conclusions, words. Out: tapes as they are marked, and the few words
//! under a drawing.

use crate::exam::{Conclusion, Lie, Presentation, spoken};
use crate::figure::growth::{TapeKind, TapeMark};
use crate::reckon::{Course, LaidTape, beside, unfit_word};
use crate::words::{Words, WordsError};

/// Every tape as it is marked.
pub fn tapes(course: &Course, words: &Words) -> Result<Vec<TapeMark>, WordsError> {
    course
        .tapes
        .iter()
        .map(|tape| {
            let kind = if !tape.unfit.is_empty() {
                let values = [("cm", centimetres(tape)), ("why", reasons(tape, words)?)];
                let values: Vec<(&str, &str)> =
                    values.iter().map(|(name, value)| (*name, value.as_str())).collect();
                TapeKind::NotRead(words.say("growth-not-read", &values)?)
            } else if tape.earlier {
                TapeKind::Earlier
            } else {
                TapeKind::Read
            };
            Ok(TapeMark { weeks: tape.at, cm: tape.cm, kind })
        })
        .collect()
}

/// Its centimetres as they are printed.
pub fn centimetres(tape: &LaidTape) -> String {
    beside(tape.cm, &[], 2)
}

/// Why it is not read.
pub fn reasons(tape: &LaidTape, words: &Words) -> Result<String, WordsError> {
    let why: Vec<&str> = tape.unfit.iter().map(|why| unfit_word(*why)).collect();
    spoken::value(&why.join(", "), words)
}

/// How each baby lay, in two or three words.
pub fn lies(conclusions: &[Conclusion], words: &Words) -> Result<Vec<String>, WordsError> {
    let mut lines = vec![];
    for (index, conclusion) in conclusions.iter().enumerate() {
        let mut text = words.say(lie(conclusion), &[])?;
        if conclusion.unsure {
            text = words.say("growth-probably", &[("lie", &text)])?;
        }
        if conclusions.len() > 1 {
            let number = (index + 1).to_string();
            text = words.say("growth-numbered", &[("baby", &number), ("text", &text)])?;
        }
        lines.push(text);
    }
    Ok(lines)
}

fn lie(conclusion: &Conclusion) -> &'static str {
    match (conclusion.lie, conclusion.presentation) {
        (Some(Lie::Transverse), _) => "growth-lie-across",
        (Some(Lie::Oblique), _) => "growth-lie-slanting",
        (_, Some(Presentation::Breech)) => "growth-lie-bottom-down",
        (_, Some(Presentation::Cephalic | Presentation::Face | Presentation::Brow)) => "growth-lie-head-down",
        (_, Some(Presentation::Shoulder)) => "growth-lie-across",
        (Some(Lie::Longitudinal), None) => "growth-lie-lengthwise",
        (None, None) => "growth-lie-not-known",
    }
}
