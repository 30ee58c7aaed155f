//! A line cut into tokens. In: the line. Out: words, numbers, marks, brackets, quotations and breaks, each with its bytes and
//! the text it is read as: a raised figure is days, `⅘` is three tokens, a comma between digits is a point.

use std::ops::Range;

/// Kinds of token.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Letters.
    Word,
    /// Digits, with a point or points between them.
    Number,
    /// A mark, such as `/`, `+`, `?` or a comma; several of `+` or `?` are one.
    Mark,
    /// A pair of brackets with all that stands in them.
    Bracket,
    /// Text between double quotes, or from a double quote to the end.
    Quote,
    /// `;`, `|`, a full stop, or a new line: no finding goes on beyond it.
    Break,
}

/// One token.
#[derive(Clone, Debug)]
pub struct Token {
    /// What it is.
    pub kind: Kind,
    /// Its bytes.
    pub at: Range<usize>,
    /// What it is read as; of words in the letters of the line.
    pub text: String,
    /// The same in lower case, for comparing.
    pub low: String,
    /// Whether white space stands before it.
    pub gap: bool,
}

impl Token {
    /// A token of `kind` that is read as `text`.
    pub fn new(kind: Kind, at: Range<usize>, text: &str, gap: bool) -> Self {
        let low = text.to_lowercase().replace('\u{2019}', "'");
        Token { kind, at, text: text.to_owned(), low, gap }
    }
}

/// The tokens of `line`.
pub fn of(line: &str) -> Vec<Token> {
    let mut tokens: Vec<Token> = vec![];
    let mut at = 0;
    let mut gap = true;
    while let Some(c) = line[at..].chars().next() {
        let rest = &line[at..];
        if c.is_whitespace() && c != '\n' {
            gap = true;
            at += c.len_utf8();
            continue;
        }
        let after_number = !gap && tokens.last().is_some_and(|token| token.kind == Kind::Number);
        if let Some((top, bottom)) = fraction(c) {
            let whole = at..at + c.len_utf8();
            match (after_number, tokens.last_mut()) {
                (true, Some(number)) if bottom != 5 => {
                    let part = f64::from(top) / f64::from(bottom);
                    let text = format!("{}{}", number.text, format!("{part}").trim_start_matches('0'));
                    *number = Token::new(Kind::Number, number.at.start..whole.end, &text, number.gap);
                }
                _ => {
                    tokens.push(Token::new(Kind::Number, whole.clone(), &top.to_string(), gap));
                    tokens.push(Token::new(Kind::Mark, whole.clone(), "/", false));
                    tokens.push(Token::new(Kind::Number, whole.clone(), &bottom.to_string(), false));
                }
            }
            at = whole.end;
            gap = false;
            continue;
        }
        if let (true, Some(days)) = (after_number, raised(c)) {
            let whole = at..at + c.len_utf8();
            tokens.push(Token::new(Kind::Mark, whole.clone(), "+", false));
            tokens.push(Token::new(Kind::Number, whole.clone(), &days.to_string(), false));
            at = whole.end;
            continue;
        }
        let (kind, length, text) = one(c, rest, after_number);
        tokens.push(Token::new(kind, at..at + length, text.as_deref().unwrap_or(&rest[..length]), gap));
        at += length;
        gap = false;
    }
    tokens
}

/// The token at the start of `rest`: its kind and length, and what it is read as where that differs.
fn one(c: char, rest: &str, after_number: bool) -> (Kind, usize, Option<String>) {
    let mark = |length: usize, text: &str| (Kind::Mark, length, Some(text.to_owned()));
    for (said, read) in
        [("+/-", "±"), ("-->", "→"), ("->", "→"), ("=>", "→"), ("⁺", "+"), ("⟶", "→"), ("×", "x")]
    {
        if rest.starts_with(said) {
            return if read == "x" {
                (Kind::Word, said.len(), Some(read.to_owned()))
            } else {
                mark(said.len(), read)
            };
        }
    }
    match c {
        ';' | '|' | '\n' | '.' | '…' => (Kind::Break, c.len_utf8(), None),
        '(' => match bracket(rest) {
            Some(length) => (Kind::Bracket, length, None),
            None => (Kind::Mark, 1, None),
        },
        '"' if !after_number => (Kind::Quote, quotation(rest), None),
        '-' | '–' | '—' | '−' | '\u{2010}' | '\u{2011}' => mark(c.len_utf8(), "-"),
        '+' | '?' | '↓' | '↑' | '!' => {
            let length = rest.find(|other| other != c).unwrap_or(rest.len());
            let text = if c == '+' && length > 1 { "++".to_owned() } else { c.to_string() };
            mark(length, &text)
        }
        c if c.is_ascii_digit() => number(rest),
        c if is_letter(c) => {
            let mut length = rest.find(|c| !is_letter(c)).unwrap_or(rest.len());
            // `1xCS`: how often, and what.
            if after_number && matches!(c, 'x' | 'X') && length > 1 {
                length = 1;
            }
            (Kind::Word, length, None)
        }
        c => (Kind::Mark, c.len_utf8(), None),
    }
}

fn is_letter(c: char) -> bool {
    c.is_alphabetic() || matches!(c, '\'' | '\u{2019}')
}

/// A fraction in one character.
fn fraction(c: char) -> Option<(u8, u8)> {
    Some(match c {
        '½' => (1, 2),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        _ => return None,
    })
}

/// A raised figure.
fn raised(c: char) -> Option<u32> {
    match c {
        '\u{b9}' => Some(1),
        '\u{b2}' => Some(2),
        '\u{b3}' => Some(3),
        '\u{2070}' | '\u{2074}'..='\u{2079}' => Some(u32::from(c) - 0x2070),
        _ => None,
    }
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

/// The number at the start of `text`. A point counts before a digit; so does a comma before one digit that ends the number,
/// or before two or three and `kg`.
fn number(text: &str) -> (Kind, usize, Option<String>) {
    let bytes = text.as_bytes();
    let mut at = 0;
    while at < bytes.len() {
        let point = bytes[at] == b'.' && bytes.get(at + 1).is_some_and(u8::is_ascii_digit);
        if !bytes[at].is_ascii_digit() && !point {
            break;
        }
        at += 1;
    }
    if bytes.get(at) == Some(&b',') && !text[..at].contains('.') {
        let digits = bytes[at + 1..].iter().take_while(|b| b.is_ascii_digit()).count();
        let after = &text[at + 1 + digits..];
        let ends = !after.starts_with([',', '.', '/', '+']);
        if digits == 1 && ends || (2..=3).contains(&digits) && after.trim_start().starts_with("kg") {
            let length = at + 1 + digits;
            return (Kind::Number, length, Some(text[..length].replace(',', ".")));
        }
    }
    (Kind::Number, at, None)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn texts(line: &str) -> Vec<String> {
        of(line).into_iter().map(|token| token.text).collect()
    }

    #[test]
    fn glyphs_are_read_as_what_they_say() {
        assert_eq!(texts("33½"), ["33.5"]);
        assert_eq!(texts("⅘ PA"), ["4", "/", "5", "PA"]);
        assert_eq!(texts("38²"), ["38", "+", "2"]);
        assert_eq!(texts("35,5 cm"), ["35.5", "cm"]);
        assert_eq!(texts("3,25kg"), ["3.25", "kg"]);
        assert_eq!(texts("32,32,32"), ["32", ",", "32", ",", "32"]);
        assert_eq!(texts("FM+++ ↓↓ ×2 +/-"), ["FM", "++", "↓", "x", "2", "±"]);
        assert_eq!(texts("br -> ceph"), ["br", "→", "ceph"]);
    }
}
