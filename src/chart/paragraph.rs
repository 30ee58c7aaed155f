//! Paragraphs for a terminal. In: a sentence and where it stands. Out: lines of at most 96 columns.

/// Widest line, in characters.
const WIDTH: usize = 96;
/// Width of the column of headings.
const HEADING: usize = 24;

/// Where a paragraph stands.
pub enum Column<'a> {
    /// At the margin.
    Margin,
    /// Two in.
    Indented,
    /// Beside a heading.
    Beside(&'a str),
}

/// `text` broken between words; ends with a line break.
pub fn paragraph(text: &str, column: Column<'_>) -> String {
    let (first, indent) = match column {
        Column::Margin => (String::new(), 0),
        Column::Indented => ("  ".to_owned(), 2),
        Column::Beside(heading) => {
            let gap = (HEADING.saturating_sub(2 + heading.chars().count())).max(2);
            (format!("  {heading}{}", " ".repeat(gap)), HEADING)
        }
    };
    let mut lines = vec![];
    let mut line = first;
    let mut empty = true;
    for word in words(text) {
        if !empty && line.chars().count() + 1 + word.chars().count() > WIDTH {
            lines.push(std::mem::replace(&mut line, " ".repeat(indent)));
            empty = true;
        }
        if !empty {
            line.push(' ');
        }
        line.push_str(&word);
        empty = false;
    }
    lines.push(line);
    format!("{}\n", lines.join("\n"))
}

/// The words of a text; a unit stays with its number.
fn words(text: &str) -> Vec<String> {
    let mut words: Vec<String> = vec![];
    for word in text.split_whitespace() {
        let unit = ["cm", "s", "kg", "g", "days"].contains(&word.trim_end_matches([',', ';', '.']));
        match words.last_mut() {
            Some(last) if unit && last.ends_with(|c: char| c.is_ascii_digit()) => {
                last.push_str(&format!(" {word}"))
            }
            _ => words.push(word.to_owned()),
        }
    }
    words
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_hang_beside_their_heading() {
        let text = paragraph(&"word ".repeat(40), Column::Beside("First grip"));
        assert!(text.starts_with("  First grip            word word"));
        assert!(text.lines().nth(1).is_some_and(|line| line.starts_with("                        word")));
        assert!(text.lines().all(|line| line.chars().count() <= WIDTH));
    }
}
