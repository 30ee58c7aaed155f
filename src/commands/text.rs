//! Texts of an exam. In: an exam. Out: one finding changed in its file; the exam as one line of shorthand; or as a file.

use super::{Outcome, Source, Written, exit, load};
use crate::exam::edit::{self, Edit};
use crate::exam::shorthand;
use crate::report::Look;

/// The file of `exam` with these values, comments kept; it is not read here, so that a file with faults can be mended.
pub fn edit(exam: &Source, edits: &[Edit]) -> Outcome {
    let text = match (&exam.bytes, exam.written) {
        (Ok(bytes), Written::File) => std::str::from_utf8(bytes).map_err(|_| "is not UTF-8 text".to_owned()),
        (Ok(_), Written::Line) => Err("a line of shorthand is not a file".to_owned()),
        (Err(why), _) => Err(why.clone()),
    };
    match text.and_then(|text| edit::edit(text, edits)) {
        Ok(text) => said(text),
        Err(why) => refused(&exam.name, &why),
    }
}

/// The exam in one line of shorthand.
pub fn line(exam: &Source, look: Look) -> Outcome {
    let loaded = load::exam(exam, None);
    match loaded.exam(look) {
        Ok(read) => Outcome { notes: loaded.problems(look), ..said(shorthand::line(read)) },
        Err(refused) => *refused,
    }
}

/// The exam as a file of its own: that of a line; a file stays as it is.
pub fn file(exam: &Source, look: Look) -> Outcome {
    let loaded = load::exam(exam, None);
    let read = match loaded.exam(look) {
        Ok(read) => read,
        Err(refused) => return *refused,
    };
    let text = match exam.written {
        Written::File => Ok(loaded.source.to_owned()),
        Written::Line => edit::file_of(read),
    };
    match text {
        Ok(text) => Outcome { notes: loaded.problems(look), ..said(text) },
        Err(why) => refused(&exam.name, &why),
    }
}

fn said(text: String) -> Outcome {
    Outcome { text, ..Outcome::default() }
}

fn refused(name: &str, why: &str) -> Outcome {
    Outcome {
        notes: format!("handspan: {name}: {why}\n"),
        why: why.to_owned(),
        code: exit::FAILED,
        ..Outcome::default()
    }
}
