//! `draw`. In: an exam and options. Out: the picture as the bytes of a file, and the remarks that stand.

use super::languages::{self, Draft, Tongues};
use super::load::{self, Loaded};
use super::picture::{self, Maker, Wanted};
use super::{Outcome, Source, exit};
use crate::chart::said;
use crate::exam::Exam;
use crate::figure::{Labels, MotherAs, Palette, Palpation, Style, View};
use crate::fonts::Fonts;
use crate::report::Look;
use crate::sheet::{Content, PICTURE, SKETCH};
use crate::words::{Part, Words, WordsError};
use crate::write::TextAs;

/// The kind of file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Format {
    /// Scalable vector graphics.
    Svg,
    /// Portable network graphics.
    Png,
    /// Portable document format.
    Pdf,
    /// A page of words for a telephone: of the family page alone.
    Html,
}

impl Format {
    /// From a file's ending, without the point, in any case.
    pub fn from_ending(ending: &str) -> Option<Self> {
        match ending.to_ascii_lowercase().as_str() {
            "svg" => Some(Format::Svg),
            "png" => Some(Format::Png),
            "pdf" => Some(Format::Pdf),
            "html" | "htm" => Some(Format::Html),
            _ => None,
        }
    }
    /// The ending of its files, without the point.
    pub fn ending(self) -> &'static str {
        match self {
            Format::Svg => "svg",
            Format::Png => "png",
            Format::Pdf => "pdf",
            Format::Html => "html",
        }
    }
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
    /// The colours of skin.
    pub palette: Palette,
    /// How much of the mother is drawn.
    pub mother: MotherAs,
    /// The hands of whoever palpates.
    pub hands: Option<Palpation>,
    /// The view.
    pub view: View,
    /// The labels.
    pub labels: Labels,
    /// Language tag of the words; two with a comma between stand side by side.
    pub lang: String,
    /// What becomes of a language that nobody has signed.
    pub draft: Draft,
    /// Width of a PNG in pixels; `None` for the default.
    pub width: Option<u32>,
    /// Text of an SVG as text with its font, or as outlines.
    pub text_as: TextAs,
}

/// Draw an exam. Remarks that stand are told on standard error and in the code; they do not stop a picture.
pub fn run(options: &Draw, look: Look) -> Outcome {
    let tongues = match Tongues::chosen(&options.lang, options.draft, &PARTS) {
        Ok(tongues) => tongues,
        Err(fault) => return load::wordless(&fault),
    };
    let loaded = load::exam(&options.exam, None);
    let (exam, mut notes) = match loaded.exam_and_told(tongues.english(), look) {
        Ok(both) => both,
        Err(outcome) => return *outcome,
    };
    match pictures(exam, &loaded, options, &[options.format], tongues.pages()) {
        Ok(pages) => Outcome { notes, pages, made: "the picture", code: loaded.code(), ..Outcome::default() },
        Err(why) => {
            notes.push_str(&format!("handspan: {why}\n"));
            Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() }
        }
    }
}

/// What of the messages a picture needs.
const PARTS: [Part; 2] = [Part::Family, Part::Picture];
/// Type of the labels, points: on a picture, and on a stamp for the chart.
const TYPE_PT: f32 = 10.0;
const SKETCH_TYPE_PT: f32 = 5.6;

/// The one picture of `options` as a file of each of these formats.
pub(super) fn pictures(
    exam: &Exam,
    loaded: &Loaded<'_>,
    options: &Draw,
    formats: &[Format],
    languages: &[Words],
) -> Result<Vec<Vec<u8>>, String> {
    let fonts = Fonts::load().map_err(|e| e.to_string())?;
    let pose = picture::pose(exam, loaded);
    let sketch = options.style == Style::Sketch;
    let shipped = if sketch { SKETCH } else { PICTURE };
    let layout = shipped.read().map_err(|e| e.to_string())?;
    let sheets = languages::sheets(languages, &fonts, |words, draft| {
        let mut captions = picture::notes(&pose, words).map_err(|e| e.to_string())?;
        captions.extend(draft);
        let content = content(exam, loaded, &captions, words).map_err(|e| e.to_string())?;
        let wanted = Wanted {
            style: options.style,
            palette: options.palette,
            mother: options.mother,
            hands: options.hands,
            view: options.view,
            labels: options.labels,
            type_pt: if sketch { SKETCH_TYPE_PT } else { TYPE_PT },
            captions,
        };
        Maker::new(words, &fonts).sheets(&pose, &wanted, &layout, &content)
    })?;
    let words = languages.first().ok_or("no language is named")?;
    let maker = Maker::new(words, &fonts);
    let mut out = vec![];
    for format in formats {
        out.extend(maker.files(&sheets, *format, options.text_as, options.width)?);
    }
    Ok(out)
}

/// Title and description of the picture: what follows from the findings, and `notes` on the drawing, in words.
fn content(exam: &Exam, loaded: &Loaded<'_>, notes: &[String], words: &Words) -> Result<Content, WordsError> {
    let mut told = vec![];
    for (index, conclusion) in loaded.reckoning.conclusions.iter().enumerate() {
        let sentence = said::conclusion(exam, index, conclusion, words)?;
        told.push(load::of_baby(sentence, index, exam.babies.len(), words)?);
    }
    told.extend_from_slice(notes);
    told.push(words.say("picture-caption", &[])?);
    Ok(Content { title: words.say("picture-title", &[])?, description: told.join(" "), ..Content::default() })
}
