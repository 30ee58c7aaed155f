//! `draw`. In: an exam and options. Out: the picture as the bytes of a file, and the remarks that stand.

use super::load::{self, Loaded};
use super::{Outcome, Source, exit};
use crate::exam::Exam;
use crate::report::Look;
use crate::words::Words;

/// The kind of file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Format {
    /// Scalable vector graphics.
    Svg,
    /// Portable network graphics.
    Png,
    /// Portable document format.
    Pdf,
}

impl Format {
    /// From a file's ending, without the point, in any case.
    pub fn from_ending(ending: &str) -> Option<Self> {
        match ending.to_ascii_lowercase().as_str() {
            "svg" => Some(Format::Svg),
            "png" => Some(Format::Png),
            "pdf" => Some(Format::Pdf),
            _ => None,
        }
    }
}

/// The style of drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Style {
    /// Tonal.
    Soft,
    /// Ink on white.
    Line,
}

/// From where the picture is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum View {
    /// By someone in front of her: her left at the viewer's right.
    Facing,
    /// By her, looking down.
    Hers,
}

/// How many labels.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Labels {
    /// None but the sides.
    None,
    /// The main ones.
    Few,
    /// All.
    All,
    /// Numbers, with a list.
    Numbered,
}

/// What to draw, and how.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draw {
    /// The exam.
    pub exam: Source,
    /// The kind of file.
    pub format: Format,
    /// The style.
    pub style: Style,
    /// The view.
    pub view: View,
    /// The labels.
    pub labels: Labels,
    /// Language tag of the labels.
    pub lang: String,
    /// Width of a PNG in pixels; `None` for the default.
    pub width: Option<u32>,
}

/// Draw an exam. Remarks that stand are told on standard error and in the code; they do not stop a picture.
pub fn run(options: &Draw, look: Look) -> Outcome {
    let words = match Words::load(&options.lang) {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    let loaded = load::exam(&options.exam);
    let exam = match loaded.exam(look) {
        Ok(exam) => exam,
        Err(outcome) => return outcome,
    };
    let mut notes = loaded.problems(look);
    for remark in &loaded.remarks {
        match load::sentence(remark, exam.babies.len(), &words) {
            Ok(text) => notes.push_str(&format!("{}: [{}] {text}\n", loaded.name, remark.id)),
            Err(fault) => return load::wordless(&fault),
        }
    }
    match picture(exam, &loaded, options, &words) {
        Ok(pages) => Outcome { notes, pages, made: "the picture", code: loaded.code(), ..Outcome::default() },
        Err(why) => {
            notes.push_str(&format!("handspan: {why}\n"));
            Outcome { notes, code: loaded.code().max(exit::FAILED), ..Outcome::default() }
        }
    }
}

/// The finished files, one a page. PLUG: body, figure, sheet and write go in here.
fn picture(
    _exam: &Exam,
    _loaded: &Loaded<'_>,
    _options: &Draw,
    _words: &Words,
) -> Result<Vec<Vec<u8>>, String> {
    Err("drawing is not built into this version yet; `check` works".to_owned())
}
