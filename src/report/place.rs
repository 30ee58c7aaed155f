//! Places in a text. In: a range of bytes. Out: line, column and length in characters, and the text itself.

use std::ops::Range;

/// Longest piece of a user's text repeated in a message, in characters.
const LONGEST_QUOTE: usize = 60;

/// A place in a text, counted from 1 in lines and characters; it never runs past the end of its line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TextPlace {
    /// Line, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// Length in characters.
    pub length: usize,
    /// The text there.
    pub text: String,
}

/// Where the lines of a text begin: made once, so that many places in a large text are found quickly.
pub struct Lines<'a> {
    source: &'a str,
    starts: Vec<usize>,
}

impl<'a> Lines<'a> {
    /// The lines of `source`.
    pub fn of(source: &'a str) -> Self {
        let starts = std::iter::once(0).chain(source.match_indices('\n').map(|(at, _)| at + 1)).collect();
        Self { source, starts }
    }
    /// The line of a byte, from 1.
    pub fn line(&self, at: usize) -> usize {
        self.starts.partition_point(|start| *start <= at)
    }
    /// The bytes of a line, from 1, without its line break.
    pub fn bytes(&self, line: usize) -> Range<usize> {
        let start = self.starts.get(line.saturating_sub(1)).copied().unwrap_or(self.source.len());
        let end = self.starts.get(line).map_or(self.source.len(), |next| next - 1);
        start..end.max(start)
    }
    /// The place of the bytes `span`, and the span itself, moved to whole characters and cut at the end of its line.
    pub fn place(&self, span: Range<usize>) -> (TextPlace, Range<usize>) {
        let span = within(self.source, span);
        let line = self.line(span.start);
        let text = &self.source[span.clone()];
        let place = TextPlace {
            line,
            column: self.source[self.bytes(line).start..span.start].chars().count() + 1,
            length: text.chars().count(),
            text: text.to_owned(),
        };
        (place, span)
    }
}

/// `span` moved to character boundaries of `source` and cut at the end of its first line.
fn within(source: &str, span: Range<usize>) -> Range<usize> {
    let mut start = span.start.min(source.len());
    while !source.is_char_boundary(start) {
        start -= 1;
    }
    let mut end = span.end.clamp(start, source.len());
    while !source.is_char_boundary(end) {
        end += 1;
    }
    let line_end = source[start..].find(['\n', '\r']).map_or(source.len(), |at| start + at);
    start..end.min(line_end)
}

/// What a user wrote, between backticks: one line, without control characters, clipped.
pub fn quoted(text: &str) -> String {
    format!("`{}`", clip(text))
}

/// What a user wrote: one line, without control characters, clipped.
pub fn clip(text: &str) -> String {
    let mut chars = text.trim().chars().map(|c| if c.is_control() { ' ' } else { c });
    let mut short: String = chars.by_ref().take(LONGEST_QUOTE).collect();
    if chars.next().is_some() {
        short.push('…');
    }
    short
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_are_characters_not_bytes() {
        let source = "a = 1\né = \"ü\"\n";
        let at = source.find('ü').unwrap();
        let (place, _) = Lines::of(source).place(at..at + 1);
        assert_eq!((place.line, place.column, place.length, place.text.as_str()), (2, 6, 1, "ü"));
    }

    #[test]
    fn a_place_stops_at_the_end_of_its_line() {
        assert_eq!(within("ab\r\ncd", 1..6), 1..2);
        assert_eq!(within("ab", 9..12), 2..2);
    }
}
