//! Problems of TOML's syntax. In: the parser's faults. Out: problems in the words of someone who writes an exam.

use crate::report::{Lines, Problem, quoted};
use std::ops::Range;

/// Id of the problem that stands alone: everything after an unclosed bracket is misread.
pub const UNCLOSED: &str = "unclosed-bracket";

/// The problems, at most one a line; after an unclosed bracket that alone.
pub fn problems(file: &str, source: &str, faults: &[toml::de::Error]) -> Vec<Problem> {
    if faults.iter().any(|fault| {
        fault.message().starts_with("unclosed array") || fault.message().starts_with("unclosed inline table")
    }) && let Some(open) = unclosed(source)
    {
        let bracket = &source[open..open + 1];
        let close = if bracket == "{" { "}" } else { "]" };
        return vec![
            Problem::at(UNCLOSED, file, open..open + 1, format!("`{bracket}` is never closed"))
                .expecting(format!("`{close}` after the last value of this list")),
        ];
    }
    let lines = Lines::of(source);
    let mut sorted: Vec<(Range<usize>, &toml::de::Error)> =
        faults.iter().map(|fault| (fault.span().unwrap_or(0..0), fault)).collect();
    sorted.sort_by_key(|(span, _)| (span.start, span.end));
    let mut problems: Vec<Problem> = vec![];
    let mut last_line = 0;
    for (span, fault) in sorted {
        let line = lines.line(span.start);
        if line == last_line {
            continue;
        }
        last_line = line;
        problems.push(problem(file, source, lines.bytes(line), span, fault.message()));
    }
    problems
}

fn problem(file: &str, source: &str, line: Range<usize>, span: Range<usize>, message: &str) -> Problem {
    let what = message.split(", expected").next().unwrap_or(message);
    let at = |id: &'static str, span: Range<usize>, message: String| Problem::at(id, file, span, message);
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
