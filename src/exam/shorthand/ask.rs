//! What a line is asked. In: a piece that can be read in two ways, and what each way would be written as. Out: a question whose
//! every reading carries the whole line with that reading put in; answering is reading that line.

use serde::Serialize;
use std::ops::Range;

/// A question about a piece of the line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Question {
    /// Bytes of the piece.
    #[serde(skip)]
    pub at: Range<usize>,
    /// The piece.
    pub text: String,
    /// What is asked about it.
    pub message: String,
    /// What may be meant, in the order in which it is offered; the last keeps the words in the note.
    pub readings: Vec<Answer>,
}

/// One way to read it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Answer {
    /// The reading in words.
    pub says: String,
    /// The whole line with that reading put in.
    pub line: String,
}

/// A way to read a piece: in words, and what stands in its place; `note` keeps the piece as free words.
pub struct Way {
    /// The reading in words.
    pub says: String,
    /// What is put in place of the piece.
    pub becomes: String,
}

impl Way {
    /// A reading that is said as it is written.
    pub fn new(says: impl Into<String>, becomes: impl Into<String>) -> Self {
        Way { says: says.into(), becomes: becomes.into() }
    }
}

/// The question about the bytes `at` of `line`.
pub fn question(line: &str, at: Range<usize>, message: String, ways: &[Way]) -> Question {
    let text = line[at.clone()].to_owned();
    let mut readings: Vec<Answer> = ways
        .iter()
        .filter(|way| way.becomes != "note")
        .map(|way| Answer { says: way.says.clone(), line: put(line, &at, &way.becomes) })
        .collect();
    let says = ways
        .iter()
        .filter(|way| way.becomes == "note")
        .map(|way| way.says.clone())
        .collect::<Vec<_>>()
        .join(" / ");
    let says =
        if says.is_empty() { "leave it in the note".to_owned() } else { format!("{says} (in the note)") };
    readings.push(Answer { says, line: put(line, &at, &format!("note {}", quotation(&text))) });
    Question { at, text, message, readings }
}

impl Question {
    /// The line `line`, which the question is about, with `words` in place of the piece.
    pub fn with(&self, line: &str, words: &str) -> String {
        put(line, &self.at, words)
    }
}

/// `text` between quotes, as free words stand in a line.
pub fn quotation(text: &str) -> String {
    let escaped = text.replace('\\', "\\\\").replace('"', "\\\"").replace('\n', "\\n");
    format!("\"{escaped}\"")
}

/// `line` with `new` in place of the bytes `at`, parted from what stands around it.
fn put(line: &str, at: &Range<usize>, new: &str) -> String {
    let before = line[..at.start].trim_end_matches([' ', ',', ';']);
    let after = line[at.end..].trim_start_matches([' ', ',', ';']);
    let parts: Vec<&str> = [before, new, after].into_iter().filter(|part| !part.is_empty()).collect();
    parts.join("; ")
}
