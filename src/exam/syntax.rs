//! Problems of TOML's syntax. In: the parser's faults. Out: problems in the words of someone who writes an exam.

use crate::report::{Problem, quoted};
use std::ops::Range;

/// Id of the problem that stands alone: everything after an unclosed bracket is misread.
pub const UNCLOSED: &str = "unclosed-bracket";
/// More problems than this help nobody.
const MOST: usize = 20;

/// The problems, at most one a line; after an unclosed bracket that alone.
pub fn problems(file: &str, source: &str, faults: &[toml::de::Error]) -> Vec<Problem> {
    if faults.iter().any(|fault| {
        fault.message().starts_with("unclosed array") || fault.message().starts_with("unclosed inline table")
    }) && let Some(open) = unclosed(source)
    {
        let bracket = &source[open..open + 1];
        let close = if bracket == "{" { "}" } else { "]" };
        return vec![
            Problem::at(UNCLOSED, file, source, open..open + 1, format!("`{bracket}` is never closed"))
                .expecting(format!("`{close}` after the last value of this list")),
        ];
    }
    let mut problems: Vec<Problem> = vec![];
    let mut sorted: Vec<(Range<usize>, &toml::de::Error)> =
        faults.iter().map(|fault| (fault.span().unwrap_or(0..0), fault)).collect();
    sorted.sort_by_key(|(span, _)| (span.start, span.end));
    let mut last_line = 0;
    for (span, fault) in sorted {
        let problem = problem(file, source, span, fault.message());
        let line = problem.place.as_ref().map_or(0, |place| place.line);
        if line == last_line {
            continue;
        }
        last_line = line;
        if problems.len() == MOST {
            let message = format!("more than {MOST} lines cannot be read; the rest is not listed");
            problems.push(Problem { message, expected: Some("an exam file in TOML".to_owned()), ..problem });
            break;
        }
        problems.push(problem);
    }
    problems
}

fn problem(file: &str, source: &str, span: Range<usize>, message: &str) -> Problem {
    let what = message.split(", expected").next().unwrap_or(message);
    let at =
        |id: &'static str, span: Range<usize>, message: String| Problem::at(id, file, source, span, message);
    let line = line_of(source, span.start);
    if what == "duplicate key" {
        let key = quoted(&source[span.start.min(source.len())..span.end.min(source.len())]);
        return at("said-twice", span, format!("{key} is said twice")).expecting("one line for each finding");
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
        "missing value" | "missing value for key" => {
            cannot("the value is missing").expecting("a value after `=`")
        }
        "unclosed table" | "unclosed array table" => {
            cannot("the heading is not closed").expecting("`]` at the end of the heading")
        }
        "cannot recurse further; max recursion depth met" => {
            cannot("brackets inside brackets, too deep to read")
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

fn line_of(source: &str, at: usize) -> Range<usize> {
    let mut at = at.min(source.len());
    while !source.is_char_boundary(at) {
        at -= 1;
    }
    let start = source[..at].rfind('\n').map_or(0, |n| n + 1);
    let end = source[at..].find('\n').map_or(source.len(), |n| at + n);
    start..end
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
