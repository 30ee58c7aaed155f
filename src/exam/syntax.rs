//! Problems of TOML's syntax. In: a text. Out: the text with its broken lines blanked, and problems in the words of
//! someone who writes an exam.

use crate::report::{Lines, Problem, quoted};
use std::collections::BTreeSet;
use std::ops::Range;
use toml::de::DeTable;

/// Id of the problem that stands alone: everything after an unclosed bracket is misread.
pub const UNCLOSED: &str = "unclosed-bracket";

/// Id of the problem of a text in three quotes that is never closed; it stands alone too.
const UNCLOSED_QUOTES: &str = "unclosed-quotes";
/// How often broken lines are blanked and the rest is parsed again. The parser gives up reading at some faults; more
/// rounds than this are only needed by files that are no exam.
const ROUNDS: usize = 6;

/// A text that can be parsed, and what was wrong with it.
pub struct Mended {
    /// The text with its broken lines blanked: every other byte stands where it stood.
    pub text: String,
    /// The problems, at most one a line.
    pub problems: Vec<Problem>,
    /// True when nothing but the problems can be trusted.
    pub stop: bool,
}

/// Find the problems of syntax in `source`, and blank the lines that have one.
pub fn mend(file: &str, source: &str) -> Mended {
    let lines = Lines::of(source);
    let mut text = source.to_owned();
    let mut problems: Vec<Problem> = vec![];
    let mut broken = BTreeSet::new();
    curly(file, source, &lines, &mut text, &mut problems, &mut broken);
    for _ in 0..ROUNDS {
        let (_, faults) = DeTable::parse_recoverable(&text);
        if let Some(alone) = never_closed(file, source, &faults) {
            return Mended { text, problems: vec![alone], stop: true };
        }
        let mut sorted: Vec<(Range<usize>, &toml::de::Error)> =
            faults.iter().map(|fault| (fault.span().unwrap_or(0..0), fault)).collect();
        sorted.sort_by_key(|(span, _)| (span.start, span.end));
        let mut blanked = false;
        let mut heading_twice = false;
        for (span, fault) in sorted {
            let line = lines.line(span.start);
            let is_heading = source[lines.bytes(line)].trim_start().starts_with('[');
            let twice = fault.message() == "duplicate key";
            // Below a heading that stands twice every key may stand twice too: that is one fault.
            if twice && heading_twice && !is_heading {
                continue;
            }
            heading_twice |= twice && is_heading;
            if !broken.insert(line) {
                continue;
            }
            let bytes = lines.bytes(line);
            problems.push(problem(file, source, bytes.clone(), span, fault.message()));
            // A heading stays: the parser goes on after it, and the lines below belong to it.
            if !is_heading {
                blanked = true;
                text.replace_range(bytes.clone(), &" ".repeat(bytes.len()));
            }
        }
        if !blanked {
            break;
        }
    }
    Mended { text, problems, stop: false }
}

/// The bracket, or the three quotes, after which nothing is read as it was meant.
fn never_closed(file: &str, source: &str, faults: &[toml::de::Error]) -> Option<Problem> {
    let any = |start: &str| faults.iter().any(|fault| fault.message().starts_with(start));
    if any("unclosed array, ") || any("unclosed inline table") {
        let open = unclosed(source)?;
        let bracket = &source[open..open + 1];
        let close = if bracket == "{" { "}" } else { "]" };
        return Some(
            Problem::at(UNCLOSED, file, open..open + 1, format!("`{bracket}` is never closed"))
                .expecting(format!("`{close}` after the last value of this list")),
        );
    }
    if any("invalid multi-line") {
        let open = source.rfind("\"\"\"").max(source.rfind("'''"))?;
        return Some(
            Problem::at(UNCLOSED_QUOTES, file, open..open + 3, "these three quotes are never closed")
                .expecting("three quotes after the last word"),
        );
    }
    None
}

fn problem(file: &str, source: &str, line: Range<usize>, span: Range<usize>, message: &str) -> Problem {
    let what = message.split(", expected").next().unwrap_or(message);
    let at = |id: &'static str, span: Range<usize>, message: String| Problem::at(id, file, span, message);
    let is_heading = source[line.clone()].trim_start().starts_with('[');
    if what == "duplicate key" && is_heading {
        let key = &source[span.start.min(source.len())..span.end.min(source.len())];
        return at("said-twice", span, format!("[{key}] stands twice"))
            .expecting("one heading with all its findings; for twins [[baby]] above each");
    }
    if what == "duplicate key" {
        let key = quoted(&source[span.start.min(source.len())..span.end.min(source.len())]);
        return at("said-twice", span, format!("{key} is said twice")).expecting("one line for each finding");
    }
    if what.starts_with("invalid date") || what.starts_with("invalid time") {
        let text = quoted(&source[span.start.min(source.len())..span.end.min(source.len())]);
        return at("not-a-date", span, format!("{text} is not a day of the calendar"))
            .expecting("year-month-day, such as 2026-03-14");
    }
    if let Some((key, value)) = unquoted_value(&source[line.clone()]) {
        let start = line.start + value.start;
        let end = line.start + value.end;
        let text = &source[start..end];
        return at("quotes-missing", start..end, format!("{} stands without quotes", quoted(text)))
            .expecting("words and quantities between quotes")
            .suggesting(Some(format!("`{key} = \"{}\"`", text.replace('"', ""))));
    }
    let cannot = |message: &str| at("syntax", span.clone(), message.to_owned());
    match what {
        "unexpected key or value" | "unexpected content" => cannot("something stands after the value")
            .expecting("nothing more on this line but a comment after `#`"),
        "unquoted keys cannot be empty" => cannot("the key is missing").expecting("key = \"value\""),
        "key with no value" => cannot("a key without a value").expecting("key = \"value\""),
        "missing value" | "missing value for key" | "string values must be quoted" => {
            cannot("the value is missing").expecting("a value after `=`")
        }
        "unclosed table" | "unclosed array table" => {
            cannot("the heading is not closed").expecting("`]` at the end of the heading")
        }
        "cannot recurse further; max recursion depth met" => {
            cannot("brackets inside brackets, too deep to read")
        }
        "missing escaped value" => {
            cannot("a backslash in quotes has a meaning of its own").expecting("words without a backslash")
        }
        _ if what.starts_with("invalid basic string") || what.starts_with("invalid literal string") => {
            cannot("the quotes are not closed on this line, or hold a character that cannot stand there")
                .expecting("text between two quotes on one line")
        }
        _ => {
            let problem = cannot(&format!("this line cannot be read: {what}"));
            match message.split_once(", expected ") {
                Some((_, expected)) => problem.expecting(expected),
                None => problem.expecting("key = \"value\", or a heading such as [mother]"),
            }
        }
    }
}

/// The key, and the place of the value, of a line `key = value` whose value begins like a bare word or number.
fn unquoted_value(line: &str) -> Option<(&str, Range<usize>)> {
    let equals = line.find('=')?;
    let key = line[..equals].trim();
    let simple = !key.is_empty() && key.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-' || b == b'_');
    let rest = &line[equals + 1..];
    let end = rest.find('#').unwrap_or(rest.len());
    let value = rest[..end].trim();
    let start = equals + 1 + (rest.len() - rest.trim_start().len());
    let bare = value.starts_with(|c: char| c.is_alphanumeric())
        && !value.contains(['"', '\'', '=', '[', ']', '{', '}']);
    (simple && bare).then(|| (key, start..start + value.len()))
}

/// Where the outermost bracket that is never closed was opened.
fn unclosed(source: &str) -> Option<usize> {
    let mut open: Vec<usize> = vec![];
    let mut chars = source.char_indices().peekable();
    while let Some((at, c)) = chars.next() {
        match c {
            '#' => while chars.next_if(|(_, c)| *c != '\n').is_some() {},
            '"' | '\'' => {
                // To the closing quote, or to the end of the line.
                while let Some((_, inside)) = chars.next_if(|(_, inside)| *inside != '\n') {
                    if inside == '\\' && c == '"' {
                        chars.next_if(|(_, c)| *c != '\n');
                    } else if inside == c {
                        break;
                    }
                }
            }
            '[' | '{' => open.push(at),
            ']' | '}' => {
                open.pop();
            }
            _ => {}
        }
    }
    open.first().copied()
}
/// Values in the curly quotes of a word processor: told once for the file, their lines blanked.
fn curly(
    file: &str,
    source: &str,
    lines: &Lines,
    text: &mut String,
    problems: &mut Vec<Problem>,
    broken: &mut BTreeSet<usize>,
) {
    const CURLY: [char; 7] = ['\u{201c}', '\u{201d}', '\u{201e}', '\u{2018}', '\u{2019}', '\u{ab}', '\u{bb}'];
    let mut first = None;
    let mut start = 0;
    for whole in source.split_inclusive('\n') {
        let value = whole
            .split_once('=')
            .map(|(_, value)| value.trim_start_matches([' ', '\t', '[']))
            .filter(|value| value.starts_with(CURLY) && !whole.trim_start().starts_with('#'));
        if let Some(value) = value {
            let at = start + whole.len() - value.len();
            let mark = value.chars().next().map_or(0, char::len_utf8);
            first = first.or(Some(at..at + mark));
            let line = lines.line(at);
            broken.insert(line);
            let bytes = lines.bytes(line);
            text.replace_range(bytes.clone(), &" ".repeat(bytes.len()));
        }
        start += whole.len();
    }
    if let Some(first) = first {
        let message = match broken.len() {
            1 => "this quote is a curly one, as a word processor makes it".to_owned(),
            n => {
                format!("this quote is a curly one, as a word processor makes it; {n} lines have such quotes")
            }
        };
        problems.push(
            Problem::at("curly-quotes", file, first, message).expecting(
                "straight quotes, `\"`: write the visit in a plain text editor, or replace them all",
            ),
        );
    }
}
