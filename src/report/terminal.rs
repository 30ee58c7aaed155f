//! Problems for whoever wrote the file. In: problems and the text they are about. Out: for each where it is and what is wrong,
//! the line with a mark under the words, what may stand there, and what was meant. Ids and columns are for programs: JSON has them.

use super::{Lines, Problem, Severity};
use std::ops::Range;

/// How text for people is dressed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// Letters only.
    Plain,
    /// With the colours of a terminal; nothing is told by colour alone.
    Coloured,
}

/// Widest line of a file that is shown, in columns; longer ones are cut around the place.
const WIDTH: usize = 100;
/// Before a line that is shown.
const INDENT: &str = "    ";
/// What stands for a part of a line that is cut off.
const CUT: char = '…';

/// All problems as text, one blank line between them; ends with a line break unless there are none.
pub fn draw(problems: &[Problem], source: &str, look: Look) -> String {
    let lines = Lines::of(source);
    let drawn: Vec<String> = problems.iter().map(|problem| draw_one(problem, source, &lines, look)).collect();
    drawn.join("\n")
}

fn draw_one(problem: &Problem, source: &str, lines: &Lines<'_>, look: Look) -> String {
    let ink = match problem.severity {
        Severity::Error => "\u{1b}[1;31m",
        Severity::Warning => "\u{1b}[1;33m",
    };
    let dressed = |text: &str, ink: &str| match look {
        Look::Plain => text.to_owned(),
        Look::Coloured => format!("{ink}{text}\u{1b}[0m"),
    };
    let head = format!("{}: {}", whereabouts(problem), sentence(&shown(&problem.message)));
    let mut text = format!("{}\n", dressed(&head, "\u{1b}[1m"));
    if let Some(span) = &problem.span {
        let (line, mark) = marked(source, lines, span);
        text.push_str(format!("{INDENT}{line}").trim_end());
        text.push_str(&format!(
            "\n{INDENT}{}{}\n",
            " ".repeat(mark.start),
            dressed(&"^".repeat(mark.len()), ink)
        ));
    }
    if let Some(expected) = &problem.expected {
        text.push_str(&format!("  Wanted: {}\n", sentence(&shown(expected))));
    }
    if let Some(suggestion) = &problem.suggestion {
        text.push_str(&format!("  Did you mean {}?\n", shown(suggestion)));
    }
    if problem.severity == Severity::Warning {
        text.push_str("  This stops nothing.\n");
    }
    text
}

/// The file and its line; a line that was typed has no number.
fn whereabouts(problem: &Problem) -> String {
    let file = shown(&problem.file);
    match &problem.place {
        _ if file == "--say" => "In the line".to_owned(),
        _ if file.starts_with("--say") => format!("In the line of {file}"),
        Some(place) => format!("{file}, line {}", place.line),
        None => file,
    }
}

/// With a full stop.
fn sentence(text: &str) -> String {
    if text.ends_with(['.', '?', '!']) { text.to_owned() } else { format!("{text}.") }
}

/// Without characters that would steer a terminal, or turn the order of what is read.
fn shown(text: &str) -> String {
    text.chars().map(|c| if is_unseen(c) { '\u{fffd}' } else { c }).collect()
}

fn is_unseen(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
}

/// The line of `span` as it is shown, and the columns of the mark under it.
fn marked(source: &str, lines: &Lines<'_>, span: &Range<usize>) -> (String, Range<usize>) {
    let bytes = lines.bytes(lines.line(span.start));
    let line = source[bytes.clone()].trim_end_matches('\r');
    let before = &source[bytes.start..span.start];
    let end = span.end.min(bytes.start + line.len()).max(span.start);
    let (start, length) = (columns(before), columns(&source[span.start..end]).max(1));
    let whole = expanded(line);
    if columns(&whole) <= WIDTH {
        return (whole, start..start + length);
    }
    // A long line: what stands around the mark.
    let from = start.saturating_sub(WIDTH / 3);
    let (mut shown, mut column, mut skipped) = (String::new(), 0, 0);
    for c in whole.chars() {
        if column < from {
            skipped = column + width(c);
        } else if column < from + WIDTH {
            shown.push(c);
        }
        column += width(c);
    }
    if from > 0 {
        shown.insert(0, CUT);
    }
    if column > from + WIDTH {
        shown.push(CUT);
    }
    let shift = usize::from(from > 0);
    let start = start - skipped.min(start) + shift;
    (shown, start..(start + length).min(WIDTH + shift).max(start + 1))
}

/// A tab is shown as one space: the mark stands under what it means.
fn expanded(line: &str) -> String {
    shown(&line.replace('\t', " "))
}

fn columns(text: &str) -> usize {
    text.chars().map(width).sum()
}

/// How many columns a character takes: none where it is set over another, two in the wide scripts and for pictures.
fn width(c: char) -> usize {
    match c {
        '\u{300}'..='\u{36f}' | '\u{fe00}'..='\u{fe0f}' => 0,
        '\u{1100}'..='\u{115f}'
        | '\u{2e80}'..='\u{a4cf}'
        | '\u{ac00}'..='\u{d7a3}'
        | '\u{f900}'..='\u{faff}'
        | '\u{fe30}'..='\u{fe6f}'
        | '\u{ff00}'..='\u{ff60}'
        | '\u{1f300}'..='\u{1faff}' => 2,
        _ => 1,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::report::placed;

    fn drawn(source: &str, word: &str) -> String {
        let at = source.find(word).unwrap();
        let problem = Problem::at("an-id", "a.toml", at..at + word.len(), "this is wrong").expecting("that");
        draw(&placed(vec![problem], source, 9), source, Look::Plain)
    }

    #[test]
    fn a_mark_stands_under_the_words() {
        assert_eq!(
            drawn("x = 1\ny = 'ab'\n", "ab"),
            "a.toml, line 2: this is wrong.\n    y = 'ab'\n         ^^\n  Wanted: that.\n"
        );
        assert!(drawn("é\t= '宮x'", "x").contains("\n           ^\n"), "{}", drawn("é\t= '宮x'", "x"));
    }

    #[test]
    fn a_long_line_is_cut_around_the_mark() {
        let source = format!("{} here {}", "a ".repeat(200), "b ".repeat(200));
        let text = drawn(&source, "here");
        let lines: Vec<&str> = text.lines().collect();
        assert!(lines.iter().all(|line| columns(line) <= WIDTH + 8), "{text}");
        let mark = lines[2].find('^').unwrap();
        let under: String = lines[1].chars().skip(mark).take(4).collect();
        assert_eq!(under, "here", "{text}");
    }

    #[test]
    fn nothing_steers_the_terminal() {
        assert!(!drawn("x = '\u{1b}[2J\u{202e}bad'", "bad").contains(['\u{1b}', '\u{202e}']));
    }
}
