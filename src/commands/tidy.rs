//! `tidy`. In: a visit file. Out: the same file in the words that are printed, comments and order kept; a file with errors is
//! refused with its problems.

use super::{Outcome, Source, exit, load};
use crate::exam::tidy::tidy;
use crate::report::Look;

/// The tidied file, as text for standard output and as a page for a file.
pub fn run(exam: &Source, look: Look) -> Outcome {
    let loaded = load::exam(exam, None);
    if let Err(refused) = loaded.exam(look) {
        return *refused;
    }
    match tidy(loaded.source) {
        Ok(text) => Outcome {
            pages: vec![text.clone().into_bytes()],
            text,
            notes: loaded.problems(look),
            made: "the tidied visit file",
            ..Outcome::default()
        },
        Err(why) => Outcome {
            notes: format!("handspan: {}: {why}\n", exam.name),
            code: exit::FAILED,
            ..Outcome::default()
        },
    }
}
