//! A line cut into tokens. In: the line. Out: words, numbers, marks, brackets, quotations and breaks, each with its bytes.

use std::ops::Range;

/// Kinds of token.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Letters.
    Word,
    /// Digits, with a point or points between them.
    Number,
    /// A single mark, such as `/`, `+`, `?` or a comma.
    Mark,
    /// A pair of brackets with all that stands in them.
    Bracket,
    /// Text between double quotes, or from a double quote to the end.
    Quote,
    /// `;`, a full stop, or a new line: no finding goes on beyond it.
    Break,
}

/// One token.
#[derive(Clone, Debug)]
pub struct Token {
    /// What it is.
    pub kind: Kind,
    /// Its bytes.
    pub at: Range<usize>,
}

/// Marks that only part what they stand between.
fn parts(c: char) -> bool {
    (c.is_whitespace() && c != '\n')
        || matches!(c, '-' | '–' | '—' | '\u{2010}' | '\u{2011}' | '@' | '=' | ':')
}

/// The tokens of `line`.
pub fn of(line: &str) -> Vec<Token> {
    let mut tokens = vec![];
    let mut at = 0;
    while let Some(c) = line[at..].chars().next() {
        let (kind, length) = match c {
            c if parts(c) => {
                at += c.len_utf8();
                continue;
            }
            ';' | '|' | '\n' => (Kind::Break, 1),
            '.' => (Kind::Break, 1),
            '(' => match bracket(&line[at..]) {
                Some(length) => (Kind::Bracket, length),
                None => (Kind::Mark, 1),
            },
            '"' => (Kind::Quote, quotation(&line[at..])),
            c if c.is_ascii_digit() => (Kind::Number, number(&line[at..])),
            c if is_letter(c) => (Kind::Word, line[at..].find(|c| !is_letter(c)).unwrap_or(line.len() - at)),
            c => (Kind::Mark, c.len_utf8()),
        };
        tokens.push(Token { kind, at: at..at + length });
        at += length;
    }
    tokens
}

fn is_letter(c: char) -> bool {
    c.is_alphabetic() || matches!(c, '\'' | '\u{2019}')
}

/// The length of the pair of brackets at the start of `text`, if they are closed.
fn bracket(text: &str) -> Option<usize> {
    let mut depth = 0_usize;
    for (at, c) in text.char_indices() {
        match c {
            '(' => depth += 1,
            ')' => depth = depth.checked_sub(1)?,
            _ => {}
        }
        if depth == 0 {
            return Some(at + 1);
        }
    }
    None
}

/// The length of the quotation at the start of `text`; `\"` does not end it.
fn quotation(text: &str) -> usize {
    let mut escaped = false;
    for (at, c) in text.char_indices().skip(1) {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => return at + 1,
            _ => {}
        }
    }
    text.len()
}

/// The length of the number at the start of `text`; a point counts only before a digit.
fn number(text: &str) -> usize {
    let bytes = text.as_bytes();
    let mut at = 0;
    while at < bytes.len() {
        let point = bytes[at] == b'.' && bytes.get(at + 1).is_some_and(u8::is_ascii_digit);
        if !bytes[at].is_ascii_digit() && !point {
            break;
        }
        at += 1;
    }
    at
}
