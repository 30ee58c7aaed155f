//! One value of a visit file. In: a key and what stands there. Out: a finding with its state, or a problem at its place.

use super::{MOST_PROBLEMS, Reader, entry};
use crate::exam::keys::{self, Key, Scope};
use crate::exam::model::*;
use crate::exam::piece::{Fault, Piece, take_apart, trailing_bracket};
use crate::exam::quantity as q;
use crate::exam::words::{StateWord, Vocabulary, fold, says};
use crate::report::{Problem, quoted};
use std::ops::Range;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Longest value of one finding, in bytes; a note may be longer.
const MOST_VALUE_BYTES: usize = 1000;
/// Births before this one.
const BIRTHS: std::ops::RangeInclusive<u16> = 0..=20;

impl Reader<'_> {
    /// A finding that holds one value.
    pub(super) fn one<T>(
        &mut self,
        table: &DeTable<'_>,
        scope: Scope,
        prefix: &str,
        name: &str,
        parse: impl Fn(Piece<'_>) -> Result<T, Fault>,
    ) -> Finding<T> {
        let found = self.many(table, scope, prefix, name, parse);
        match found {
            Finding::Found(found) => {
                let Found { value, sure, known_by } = found;
                match value.into_iter().next() {
                    Some(value) => Finding::Found(Found { value, sure, known_by }),
                    None => Finding::NotExamined,
                }
            }
            Finding::NotExamined => Finding::NotExamined,
            Finding::Absent => Finding::Absent,
            Finding::NotTried => Finding::NotTried,
            Finding::CouldNotTell { reason } => Finding::CouldNotTell { reason },
        }
    }

    /// A finding that holds a list; a single value may stand for it.
    pub(super) fn many<T>(
        &mut self,
        table: &DeTable<'_>,
        scope: Scope,
        prefix: &str,
        name: &str,
        parse: impl Fn(Piece<'_>) -> Result<T, Fault>,
    ) -> Finding<Vec<T>> {
        let Some(value) = entry(table, name) else { return Finding::NotExamined };
        let Some(key) = keys::find(scope, name) else { return Finding::NotExamined };
        self.spans.insert(format!("{prefix}.{name}"), value.span());
        let DeValue::Array(items) = value.get_ref() else {
            return self.texts(key, value, &parse).unwrap_or(Finding::NotExamined);
        };
        if !key.list {
            self.fault(key, value.span(), Fault::whole("one-value", "a list cannot stand here"));
            return Finding::NotExamined;
        }
        let mut all: Option<Found<Vec<T>>> = None;
        for item in items {
            if self.problems.len() > MOST_PROBLEMS {
                break;
            }
            let found = match self.texts(key, item, &parse) {
                None => continue,
                Some(Finding::Found(found)) => found,
                Some(state) if items.len() == 1 => return state,
                Some(_) => {
                    let fault = Fault::whole(
                        "state-in-list",
                        "this speaks for the whole finding, not for one part of a list",
                    );
                    self.fault(key, item.span(), fault.expecting("it alone, without other values"));
                    continue;
                }
            };
            match &mut all {
                None => all = Some(found),
                Some(all) => {
                    all.value.extend(found.value);
                    all.sure &= found.sure;
                    if found.known_by != KnownBy::Hands {
                        all.known_by = found.known_by;
                    }
                }
            }
        }
        if items.is_empty() {
            self.fault(key, value.span(), Fault::whole("empty-value", "an empty list says nothing"));
        }
        all.map_or(Finding::NotExamined, Finding::Found)
    }

    /// A value that is not a list: a text (which may hold several values), a number, a date or yes/no.
    pub(super) fn texts<T>(
        &mut self,
        key: &Key,
        value: &Spanned<DeValue<'_>>,
        parse: &impl Fn(Piece<'_>) -> Result<T, Fault>,
    ) -> Option<Finding<Vec<T>>> {
        let span = value.span();
        let text = match self.text_of(value) {
            Ok(text) => text,
            Err(fault) => {
                self.fault(key, span, fault);
                return None;
            }
        };
        match read_text(key, Piece::new(&text), parse) {
            Ok(finding) => Some(finding),
            Err(fault) => {
                self.fault(key, span, fault);
                None
            }
        }
    }

    /// The text of a value: of a string what it says; of a number what was typed; `true` is yes.
    pub(super) fn text_of(&self, value: &Spanned<DeValue<'_>>) -> Result<String, Fault> {
        match value.get_ref() {
            DeValue::String(text) => Ok(printable(text)),
            DeValue::Integer(_) | DeValue::Float(_) => {
                Ok(self.source.get(value.span()).unwrap_or_default().to_owned())
            }
            DeValue::Boolean(yes) => Ok(yes.word().unwrap_or_default().to_owned()),
            DeValue::Datetime(_) => Err(Fault::whole("wrong-kind", "a date cannot stand here")),
            DeValue::Array(_) => Err(Fault::whole("wrong-kind", "a list inside a list cannot stand here")),
            DeValue::Table(_) => Err(Fault::whole("wrong-kind", "a table cannot stand here")),
        }
    }

    /// Report `fault` of the value at `span`, underlining the part it is about when that part can be found.
    pub(super) fn fault(&mut self, key: &Key, span: Range<usize>, fault: Fault) {
        let raw = self.source.get(span.clone()).unwrap_or_default();
        let inner = match raw.as_bytes() {
            [b'"' | b'\'', .., _]
                if !raw.contains('\\') && !raw.starts_with("\"\"\"") && !raw.starts_with("'''") =>
            {
                span.start + 1
            }
            [b'"' | b'\'', ..] => usize::MAX,
            _ => span.start,
        };
        let at = match fault.at {
            Some(at) if inner != usize::MAX && !at.is_empty() && inner + at.end <= span.end => {
                inner + at.start..inner + at.end
            }
            _ => span,
        };
        let expected = fault.expected.unwrap_or_else(|| key.expected());
        self.problems.push(
            Problem::at(fault.id, self.file, at, format!("{}: {}", key.name, fault.message))
                .expecting(expected)
                .suggesting(fault.suggestion),
        );
    }
}

/// A text without control characters: it is shown on terminals, and none of the words has one. Bytes keep their places.
pub(in crate::exam) fn printable(text: &str) -> String {
    let mut printable = String::with_capacity(text.len());
    for c in text.chars() {
        if c.is_control() {
            printable.push_str(&" ".repeat(c.len_utf8()));
        } else {
            printable.push(c);
        }
    }
    printable
}

/// A value that is one word of its list.
pub(super) fn word<T: Vocabulary>(piece: Piece<'_>) -> Result<T, Fault> {
    T::find(piece.text).ok_or_else(|| Fault::unknown_word(piece, T::rows()))
}

/// A position; a code without a side is asked, not assumed.
pub(super) fn position(piece: Piece<'_>) -> Result<Position, Fault> {
    let bare = fold(piece.text);
    if ["ot", "ol", "st", "sl", "mt", "ft", "t"].contains(&bare.as_str()) {
        let letter = bare.chars().next().filter(|c| *c != 't').unwrap_or('o').to_ascii_uppercase();
        return Err(Fault::at(
            "side-missing",
            piece,
            format!("{} does not say to which side", quoted(piece.text)),
        )
        .expecting(format!("`L{letter}T` or `R{letter}T`")));
    }
    word(piece)
}

pub(super) fn births(piece: Piece<'_>) -> Result<u8, Fault> {
    if fold(piece.text) == "none" {
        return Ok(0);
    }
    let births = q::whole_number(piece, "a number such as 1")?;
    u8::try_from(births).ok().filter(|_| BIRTHS.contains(&births)).ok_or_else(|| {
        Fault::at("out-of-range", piece, format!("{births} births are out of range")).expecting(format!(
            "{} to {}",
            BIRTHS.start(),
            BIRTHS.end()
        ))
    })
}

/// A text with its state, doubt and brackets; lists may have several values in one text.
fn read_text<T>(
    key: &Key,
    piece: Piece<'_>,
    parse: &impl Fn(Piece<'_>) -> Result<T, Fault>,
) -> Result<Finding<Vec<T>>, Fault> {
    let piece = piece.trim();
    if piece.text.is_empty() {
        return Err(Fault::whole("empty-value", "nothing stands between the quotes"));
    }
    if piece.text.len() > MOST_VALUE_BYTES {
        return Err(Fault::whole("too-long", "this is too long for one finding")
            .expecting("a few words; free words stand in the note"));
    }
    if let Some(state) = state(key, piece) {
        return Ok(state);
    }
    let said = take_apart(piece);
    if !said.sure && state::<T>(key, said.value).is_some() {
        return Err(Fault::at("doubtful-state", piece, format!("{} is not clear", quoted(piece.text)))
            .expecting("`could not tell (reason)`, or the words without `?`"));
    }
    let separators: &[char] = if comma_separates(key) { &[';', ','] } else { &[';'] };
    let parts = if key.list { said.value.split(separators) } else { vec![said.value] };
    let mut all = Found { value: vec![], sure: said.sure, known_by: said.known_by };
    for part in parts {
        let part = take_apart(part);
        all.sure &= part.sure;
        if part.known_by != KnownBy::Hands {
            all.known_by = part.known_by;
        }
        all.value.push(parse(part.value).map_err(|fault| state_not_here(key, part.value).unwrap_or(fault))?);
    }
    Ok(Finding::Found(all))
}

/// The state `piece` says, if `key` allows it.
fn state<T>(key: &Key, piece: Piece<'_>) -> Option<Finding<T>> {
    let (words, reason) = match trailing_bracket(piece) {
        Some((before, inside)) => (before.text, Some(inside.text.to_owned()).filter(|text| !text.is_empty())),
        None => (piece.text, None),
    };
    let folded = fold(words);
    let said = |state: StateWord| {
        StateWord::WORDS.iter().any(|entry| {
            entry.value == state
                && std::iter::once(&entry.word).chain(entry.also).any(|word| says(&folded, word))
        })
    };
    if said(StateWord::CouldNotTell) {
        return Some(Finding::CouldNotTell { reason });
    }
    if reason.is_some() {
        return None;
    }
    if key.absent.is_some_and(said) {
        return Some(Finding::Absent);
    }
    key.not_tried.is_some_and(said).then_some(Finding::NotTried)
}

/// What to say of a state that this key does not know.
fn state_not_here(key: &Key, piece: Piece<'_>) -> Option<Fault> {
    let state = StateWord::find(piece.text)?;
    if state == StateWord::NotExamined {
        return Some(
            Fault::at("not-examined", piece, "what was not examined is left out")
                .expecting(format!("no line for {}", key.name)),
        );
    }
    let allowed: Vec<String> =
        key.states().into_iter().filter_map(StateWord::word).map(|word| format!("`{word}`")).collect();
    Some(
        Fault::at("state-not-here", piece, format!("{} cannot be said of this", quoted(piece.text)))
            .expecting(format!("{}; without a value: {}", key.expected(), allowed.join(", "))),
    )
}

/// Lists in which a comma may stand between values; a place has commas of its own.
fn comma_separates(key: &Key) -> bool {
    !key.has_places() && key.name != "earlier-tapes"
}
