//! Problems in files. In: a place in a text and what is wrong there. Out: the problem drawn for a terminal, or as JSON.
//!
//! A problem is about a *file* that people wrote; remarks about an *exam* are made by `reckon`.

mod place;
mod terminal;

pub use place::{Lines, TextPlace, clip, quoted};
pub use terminal::{Look, draw};

use serde::Serialize;
use std::ops::Range;

/// How bad a problem is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Severity {
    /// The file cannot be used as it is.
    Error,
    /// The file is used; the reader should know this.
    Warning,
}

/// One thing wrong in a file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// Stable name, such as `unknown-word`.
    pub id: &'static str,
    /// How bad it is.
    pub severity: Severity,
    /// The file as the user named it.
    pub file: String,
    /// Bytes of the file it is about; `None` when it is about the whole file.
    pub span: Option<Range<usize>>,
    /// The same, counted in lines and characters; filled in by [`placed`].
    pub place: Option<TextPlace>,
    /// One sentence without a full stop, with what the user wrote.
    pub message: String,
    /// What may stand there instead.
    pub expected: Option<String>,
    /// The nearest thing that would have been right, ready to type.
    pub suggestion: Option<String>,
}

impl Problem {
    /// An error at `span` (bytes) of its file.
    pub fn at(id: &'static str, file: &str, span: Range<usize>, message: impl Into<String>) -> Self {
        Self { span: Some(span), ..Self::of_file(id, file, message) }
    }
    /// An error about a whole file.
    pub fn of_file(id: &'static str, file: &str, message: impl Into<String>) -> Self {
        Self {
            id,
            severity: Severity::Error,
            file: file.to_owned(),
            span: None,
            place: None,
            message: message.into(),
            expected: None,
            suggestion: None,
        }
    }
    /// With what may stand there instead.
    pub fn expecting(mut self, expected: impl Into<String>) -> Self {
        self.expected = Some(expected.into());
        self
    }
    /// With the nearest thing that would have been right.
    pub fn suggesting(mut self, suggestion: Option<String>) -> Self {
        self.suggestion = suggestion;
        self
    }
    /// The same as a warning.
    pub fn as_warning(mut self) -> Self {
        self.severity = Severity::Warning;
        self
    }
}

/// The problems of one text in the order of their places, at most `most` of them, with lines and columns.
pub fn placed(mut problems: Vec<Problem>, source: &str, most: usize) -> Vec<Problem> {
    let lines = Lines::of(source);
    problems.sort_by_key(|p| p.span.as_ref().map_or((0, 0), |span| (span.start, span.end)));
    let left_out = problems.len().saturating_sub(most);
    problems.truncate(most);
    for problem in &mut problems {
        if let Some(span) = problem.span.take() {
            let (place, span) = lines.place(span);
            problem.place = Some(place);
            problem.span = Some(span);
        }
    }
    if left_out > 0
        && let Some(first) = problems.first()
    {
        let message = format!("{left_out} more problems are not listed");
        problems.push(Problem::of_file("too-many-problems", &first.file, message));
    }
    problems
}

/// True when any of them is an error.
pub fn any_error(problems: &[Problem]) -> bool {
    problems.iter().any(|p| p.severity == Severity::Error)
}

/// One flat object; absent values leave their key out.
impl Serialize for Problem {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct Flat<'a> {
            id: &'a str,
            severity: Severity,
            file: &'a str,
            #[serde(skip_serializing_if = "Option::is_none")]
            line: Option<usize>,
            #[serde(skip_serializing_if = "Option::is_none")]
            column: Option<usize>,
            #[serde(skip_serializing_if = "Option::is_none")]
            length: Option<usize>,
            #[serde(skip_serializing_if = "Option::is_none")]
            text: Option<&'a str>,
            message: &'a str,
            #[serde(skip_serializing_if = "Option::is_none")]
            expected: Option<&'a str>,
            #[serde(skip_serializing_if = "Option::is_none")]
            suggestion: Option<&'a str>,
        }
        let place = self.place.as_ref();
        Flat {
            id: self.id,
            severity: self.severity,
            file: &self.file,
            line: place.map(|p| p.line),
            column: place.map(|p| p.column),
            length: place.map(|p| p.length),
            text: place.map(|p| p.text.as_str()),
            message: &self.message,
            expected: self.expected.as_deref(),
            suggestion: self.suggestion.as_deref(),
        }
        .serialize(serializer)
    }
}
