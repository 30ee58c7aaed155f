//! Problems for a terminal. In: problems and the text they are about. Out: text with the place underlined.

use super::{Problem, Severity};
use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{AnnotationKind, Group, Level, Origin, Renderer, Snippet, normalize_untrusted_str};

/// How text for people is dressed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// Letters only.
    Plain,
    /// With the colours of a terminal; nothing is told by colour alone.
    Coloured,
}

/// Widest drawing, in columns; longer source lines are cut around the place.
const WIDTH: usize = 110;

/// All problems as text, one blank line between them; ends with a line break unless there are none.
pub fn draw(problems: &[Problem], source: &str, look: Look) -> String {
    let renderer = match look {
        Look::Plain => Renderer::plain(),
        Look::Coloured => Renderer::styled(),
    }
    .decor_style(DecorStyle::Ascii)
    .term_width(WIDTH);
    let drawn: Vec<String> = problems.iter().map(|problem| draw_one(problem, source, &renderer)).collect();
    let mut text = drawn.join("\n\n");
    if !text.is_empty() {
        text.push('\n');
    }
    text
}

fn draw_one(problem: &Problem, source: &str, renderer: &Renderer) -> String {
    let level = match problem.severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
    };
    let title = level.primary_title(normalize_untrusted_str(&problem.message)).id(problem.id);
    let file = normalize_untrusted_str(&problem.file);
    let mut group: Group<'_> = match &problem.span {
        Some(span) => title.element(
            Snippet::source(source).path(file).annotation(AnnotationKind::Primary.span(span.clone())),
        ),
        None => title.element(Origin::path(file)),
    };
    if let Some(expected) = &problem.expected {
        group = group.element(Level::HELP.message(normalize_untrusted_str(&format!("expected {expected}"))));
    }
    if let Some(suggestion) = &problem.suggestion {
        group = group
            .element(Level::HELP.message(normalize_untrusted_str(&format!("did you mean {suggestion}?"))));
    }
    let mut lines: Vec<&str> = vec![];
    let drawn = renderer.render(&[group]);
    for line in drawn.lines() {
        lines.push(line.trim_end());
    }
    lines.join("\n")
}
