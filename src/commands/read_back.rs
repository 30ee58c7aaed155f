//! Sides read back. In: an exam. Out: a line for everything that lies at one of her sides.

use super::{Outcome, Source, load};
use crate::chart::read_back;
use crate::report::Look;
use crate::words::{Part, Words};

/// The lines.
pub fn run(source: &Source, lang: &str, look: Look) -> Outcome {
    let words = match Words::load_for(lang, &[Part::Desk]) {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    let loaded = load::exam(source, None);
    let exam = match loaded.exam(look) {
        Ok(exam) => exam,
        Err(refused) => return *refused,
    };
    match read_back::sentences(exam, &loaded.reckoning.conclusions, &words) {
        Ok(lines) => Outcome {
            text: lines.iter().map(|line| format!("{line}\n")).collect(),
            code: loaded.code(),
            ..Outcome::default()
        },
        Err(fault) => load::wordless(&fault),
    }
}
