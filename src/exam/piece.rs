//! A piece of a value's text that knows its place. In: the text between the quotes. Out: words, brackets, doubts, faults.

use super::foreign::{ENGLISH, is_foreign};
use super::model::KnownBy;
use super::suggest::{SIDE_NEVER_GUESSED, Suggestion, suggest};
use super::words::{KnownWord, Row, Vocabulary};
use crate::report::quoted;
use std::ops::Range;

/// Part of a value's text; `at` is its offset in bytes in the whole text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Piece<'a> {
    /// The text.
    pub text: &'a str,
    /// Where it begins in the value.
    pub at: usize,
}

impl<'a> Piece<'a> {
    /// The whole value.
    pub fn new(text: &'a str) -> Self {
        Self { text, at: 0 }
    }
    /// The bytes `range` of this piece.
    pub fn part(self, range: Range<usize>) -> Self {
        Self { text: &self.text[range.clone()], at: self.at + range.start }
    }
    /// Without white space at both ends.
    pub fn trim(self) -> Self {
        let start = self.text.len() - self.text.trim_start().len();
        let end = self.text.trim_end().len().max(start);
        self.part(start..end)
    }
    /// Its place in the value.
    pub fn range(self) -> Range<usize> {
        self.at..self.at + self.text.len()
    }
    /// Cut at every one of `marks`; the parts trimmed.
    pub fn split(self, marks: &[char]) -> Vec<Piece<'a>> {
        let mut parts = vec![];
        let mut start = 0;
        for (at, mark) in self.text.match_indices(marks) {
            parts.push(self.part(start..at).trim());
            start = at + mark.len();
        }
        parts.push(self.part(start..self.text.len()).trim());
        parts
    }
    /// The words, numbers, units and commas in it.
    pub fn tokens(self) -> Vec<Piece<'a>> {
        let mut tokens: Vec<Piece<'a>> = vec![];
        let mut start = None;
        let kind = |c: char| match c {
            c if c.is_whitespace() || c == '-' || c == '\u{2010}' => 0,
            ',' | ';' | '/' | ':' => 1,
            c if c.is_ascii_digit() || c == '.' => 2,
            _ => 3,
        };
        let mut last = 0;
        for (at, c) in self.text.char_indices() {
            let now = kind(c);
            if let Some(from) = start
                && (now != last || now == 1)
            {
                tokens.push(self.part(from..at));
                start = None;
            }
            if now != 0 && start.is_none() {
                start = Some(at);
            }
            last = now;
        }
        if let Some(from) = start {
            tokens.push(self.part(from..self.text.len()));
        }
        tokens
    }
}

/// What is wrong with a value, with its place inside the value's text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// Stable id of the problem.
    pub id: &'static str,
    /// Where in the value; `None` for all of it.
    pub at: Option<Range<usize>>,
    /// What is wrong.
    pub message: String,
    /// What may stand there.
    pub expected: Option<String>,
    /// The nearest right thing.
    pub suggestion: Option<String>,
}

impl Fault {
    /// A fault about `piece`.
    pub fn at(id: &'static str, piece: Piece<'_>, message: impl Into<String>) -> Self {
        Self { id, at: Some(piece.range()), message: message.into(), expected: None, suggestion: None }
    }
    /// A fault about the whole value.
    pub fn whole(id: &'static str, message: impl Into<String>) -> Self {
        Self { id, at: None, message: message.into(), expected: None, suggestion: None }
    }
    /// With what may stand there.
    pub fn expecting(mut self, expected: impl Into<String>) -> Self {
        self.expected = Some(expected.into());
        self
    }
    /// With the nearest right thing.
    pub fn suggesting(mut self, suggestion: impl Into<String>) -> Self {
        self.suggestion = Some(suggestion.into());
        self
    }
    /// A word that is not in the list `rows`.
    pub fn unknown_word(piece: Piece<'_>, rows: Vec<Row>) -> Self {
        let suggestion = suggest(piece.text, rows);
        let mut fault =
            Self::at("unknown-word", piece, format!("{} is not a word for this", quoted(piece.text)));
        match suggestion {
            Suggestion::Word(word) => return fault.suggesting(format!("`{word}`")),
            Suggestion::Side => fault.message.push_str(&format!("; {SIDE_NEVER_GUESSED}")),
            Suggestion::Nothing if is_foreign(piece.text) => return fault.expecting(ENGLISH),
            Suggestion::Nothing => {}
        }
        fault
    }
}

/// A value's text, taken apart from what is said about it.
#[derive(Clone, Debug, PartialEq)]
pub struct Said<'a> {
    /// The value itself.
    pub value: Piece<'a>,
    /// False when it ended in `?`.
    pub sure: bool,
    /// From the brackets at its end.
    pub known_by: KnownBy,
}

/// Take a trailing `?` and trailing `(scan ...)` or `(vaginal examination)` off a value, in either order.
pub fn take_apart(value: Piece<'_>) -> Said<'_> {
    let mut said = Said { value: value.trim(), sure: true, known_by: KnownBy::Hands };
    loop {
        let text = said.value.text;
        if let Some(rest) = text.strip_suffix('?') {
            said.sure = false;
            said.value = said.value.part(0..rest.len()).trim();
        } else if let Some((before, known_by)) = trailing_bracket(said.value)
            .and_then(|(before, inside)| known_by(inside.text).map(|known_by| (before, known_by)))
        {
            said.known_by = known_by;
            said.value = before;
        } else {
            return said;
        }
    }
}

/// The text before the last pair of brackets, and the text in them, if the piece ends in one.
pub fn trailing_bracket(piece: Piece<'_>) -> Option<(Piece<'_>, Piece<'_>)> {
    let text = piece.text.strip_suffix(')')?;
    let mut depth = 1;
    for (at, c) in text.char_indices().rev() {
        match c {
            ')' => depth += 1,
            '(' => depth -= 1,
            _ => {}
        }
        if depth == 0 {
            return Some((piece.part(0..at).trim(), piece.part(at + 1..text.len()).trim()));
        }
    }
    None
}

fn known_by(inside: &str) -> Option<KnownBy> {
    let rows = KnownWord::WORDS;
    match KnownWord::find(inside) {
        Some(KnownWord::Hand) => return Some(KnownBy::Hands),
        Some(KnownWord::Scan) => return Some(KnownBy::Scan(None)),
        Some(KnownWord::VaginalExamination) => return Some(KnownBy::VaginalExamination),
        None => {}
    }
    for entry in rows.iter().filter(|entry| entry.value == KnownWord::Scan) {
        for word in std::iter::once(&entry.word).chain(entry.also) {
            let (Some(head), Some(rest)) = (inside.get(..word.len()), inside.get(word.len()..)) else {
                continue;
            };
            if head.eq_ignore_ascii_case(word) && rest.starts_with([' ', ',', ':']) {
                let rest: Vec<&str> = rest.trim_start_matches([' ', ',', ':']).split_whitespace().collect();
                return Some(KnownBy::Scan(Some(rest.join(" "))));
            }
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn doubt_and_brackets_in_either_order() {
        for text in ["left (scan 20+3)?", "left? (scan 20+3)", " left  (USS 20+3) ? "] {
            let said = take_apart(Piece::new(text));
            assert_eq!((said.value.text, said.sure), ("left", false), "{text}");
            assert_eq!(said.known_by, KnownBy::Scan(Some("20+3".to_owned())), "{text}");
        }
        assert_eq!(take_apart(Piece::new("2.9 kg (34+0)")).value.text, "2.9 kg (34+0)");
    }

    #[test]
    fn tokens_know_their_place() {
        let tokens: Vec<(&str, usize)> =
            Piece::new("left 6cm, 4 cm").tokens().iter().map(|t| (t.text, t.at)).collect();
        assert_eq!(tokens, [("left", 0), ("6", 5), ("cm", 6), (",", 8), ("4", 10), ("cm", 12)]);
    }
}
