//! `note`. In: an exam and options. Out: an entry for the chart as text, as a FHIR bundle, or as a slip to stick in.
//!
//! It is made whatever stands against the findings: what cannot wait comes first in it, and in the exit code.

use super::draw::{self, Draw};
use super::languages::{self, Draft};
use super::layouts::{self, Chosen};
use super::load::{self, Loaded};
use super::picture::{self, Maker, Wanted};
use super::{Format, Labels, MotherAs, Outcome, Palette, Source, Style, View, exit};
use crate::chart::fhir::{self, Picture, Seed, Use};
use crate::chart::{Entry, handover, note, private, share, slip};
use crate::exam::Exam;
use crate::fonts::Fonts;
use crate::reckon;
use crate::report::Look;
use crate::sheet::{Block, CHART_SLIP, Kind, Layout, Sheet};
use crate::words::{Part, Words, WordsError};
use crate::write::TextAs;

/// The form of an entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// A line and a paragraph.
    Text,
    /// Situation, background, assessment, recommendation.
    Handover,
    /// A FHIR R4 bundle.
    Fhir,
    /// A slip to stick in, as a document.
    Slip(Format),
}

/// The entry to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Note {
    /// The exam.
    pub exam: Source,
    /// Its form.
    pub form: Form,
    /// Without any date and anything typed freely.
    pub share: bool,
    /// Language tag; two with a comma between: one after the other, or side by side.
    pub lang: String,
    /// What becomes of a language that nobody has signed.
    pub draft: Draft,
    /// The clinic's file, for its thresholds.
    pub clinic: Option<Source>,
    /// Lesser remarks to be left out, by id; the entry says so.
    pub quiet: Vec<String>,
    /// Which layout a slip has; `None` for half a sheet.
    pub layout: Option<Chosen>,
    /// Random bytes, fresh for each request: the ids of a bundle come from them.
    pub seed: Seed,
    /// Whether the entry goes into a file; else it is printed.
    pub to_file: bool,
}

/// Make the entry. Text is printed, or handed on as the one page of a file.
pub fn run(options: &Note, look: Look) -> Outcome {
    let mut parts = vec![Part::Family, Part::Picture, Part::Check, Part::Chart];
    if options.form == Form::Fhir {
        parts.push(Part::Records);
    }
    let languages = match languages(options, &parts) {
        Ok(languages) => languages,
        Err(fault) => return load::wordless(&fault),
    };
    let (clinic, clinic_problems, clinic_failed) = load::clinic(options.clinic.as_ref(), look);
    let mut loaded = load::exam(&options.exam, clinic.as_ref());
    if let Err(outcome) = loaded.exam(look) {
        return *outcome;
    }
    let unquietable = load::unquietable(&options.quiet);
    let mut notes = loaded.problems(look) + &clinic_problems + &unquietable;
    if clinic_failed || !unquietable.is_empty() {
        let why = if clinic_failed { "the clinic's file has a fault" } else { "a remark cannot be left out" }
            .to_owned();
        return Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() };
    }
    // Whatever is kept out of the entry, the exit code is that of the whole exam.
    let whole = loaded.code();
    let thresholds = clinic.map(|clinic| clinic.thresholds).unwrap_or_default();
    if let (true, Some(exam)) = (options.share, &loaded.reading.exam) {
        // What is shared is reckoned of what is shared: a remark repeats words of the findings.
        let exam = share::scrubbed(exam);
        loaded.reckoning = reckon::reckon(&exam, &thresholds);
        loaded.reading.exam = Some(exam);
    }
    if let (Form::Handover | Form::Slip(_), false, Some(open)) =
        (options.form, options.share, loaded.reading.exam.as_ref().and_then(private::without))
    {
        loaded.reckoning = reckon::reckon(&open, &thresholds);
        loaded.reckoning.withheld = true;
        loaded.reading.exam = Some(open);
    }
    loaded.reckoning.quiet(&options.quiet);
    let Some(exam) = &loaded.reading.exam else { return Outcome { notes, ..Outcome::default() } };
    match make(exam, &loaded, options, &languages, look) {
        Ok((Made::Text(text), made)) => {
            let code = loaded.code().max(whole);
            match options.to_file {
                false => Outcome { text, notes, code, ..Outcome::default() },
                true => Outcome { notes, pages: vec![text.into_bytes()], made, code, ..Outcome::default() },
            }
        }
        Ok((Made::Pages(pages), made)) => {
            let code = loaded.code().max(whole);
            match <[Vec<u8>; 1]>::try_from(pages).map(|[page]| String::from_utf8(page)) {
                Ok(Ok(text)) if !options.to_file => Outcome { text, notes, code, ..Outcome::default() },
                Ok(Ok(text)) => {
                    Outcome { notes, pages: vec![text.into_bytes()], made, code, ..Outcome::default() }
                }
                Ok(Err(other)) => {
                    Outcome { notes, pages: vec![other.into_bytes()], made, code, ..Outcome::default() }
                }
                Err(pages) => Outcome { notes, pages, made, code, ..Outcome::default() },
            }
        }
        Err(why) => {
            notes.push_str(&format!("handspan: {}\n", why.trim_end().trim_start_matches("handspan: ")));
            Outcome { notes, why, code: loaded.code().max(whole).max(exit::FAILED), ..Outcome::default() }
        }
    }
}

/// What was made.
enum Made {
    Text(String),
    /// A file, or a picture file a side.
    Pages(Vec<Vec<u8>>),
}

/// The languages of the entry; a bundle has one.
fn languages(options: &Note, parts: &[Part]) -> Result<Vec<Words>, WordsError> {
    let languages = languages::chosen(&options.lang, options.draft, parts)?;
    match (options.form, languages.as_slice()) {
        (Form::Fhir, [_, _, ..]) => {
            Err(WordsError(format!("--lang {}: a FHIR bundle is in one language; name one", options.lang)))
        }
        _ => Ok(languages),
    }
}

/// The entry, and what it is.
fn make(
    exam: &Exam,
    loaded: &Loaded<'_>,
    options: &Note,
    languages: &[Words],
    look: Look,
) -> Result<(Made, &'static str), String> {
    let entry = |words| Entry { exam, reckoning: &loaded.reckoning, words };
    let texts = |of: &dyn Fn(&Entry<'_>) -> Result<String, WordsError>| {
        languages::texts(languages, |words| of(&entry(words))).map(Made::Text).map_err(|e| e.to_string())
    };
    match options.form {
        Form::Text => Ok((texts(&note::text)?, "the note")),
        Form::Handover => Ok((texts(&handover::text)?, "the handover")),
        Form::Fhir => {
            let pictures = pictures(exam, loaded, options, languages)?;
            let used = if options.share { Use::Share } else { Use::Chart };
            let words = languages.first().ok_or("no language is named")?;
            let bundle = fhir::bundle(&entry(words), &pictures, used, &options.seed);
            Ok((Made::Text(bundle.map_err(|e| e.to_string())?), "the FHIR bundle"))
        }
        Form::Slip(format) => {
            let layout = layouts::layout(options.layout.as_ref(), CHART_SLIP, look)?;
            let fonts = Fonts::load().map_err(|e| e.to_string())?;
            let sheets = languages::sheets(languages, &fonts, |words, draft| {
                slip_sheets(&entry(words), loaded, draft, &layout, &fonts)
            })?;
            let words = languages.first().ok_or("no language is named")?;
            let files = Maker::new(words, &fonts).files(&sheets, format, TextAs::Text, Some(PNG_WIDTH))?;
            Ok((Made::Pages(files), "the slip"))
        }
    }
}

/// The picture in the kinds of file that a bundle carries.
fn pictures(
    exam: &Exam,
    loaded: &Loaded<'_>,
    options: &Note,
    languages: &[Words],
) -> Result<Vec<Picture>, String> {
    let kinds =
        [("image/svg+xml", Format::Svg), ("image/png", Format::Png), ("application/pdf", Format::Pdf)];
    let wanted = Draw {
        exam: options.exam.clone(),
        format: Format::Svg,
        style: Style::Line,
        palette: Palette::Neutral,
        mother: MotherAs::Outline,
        hands: None,
        view: View::Facing,
        labels: Labels::Few,
        lang: options.lang.clone(),
        draft: Draft::Refused,
        width: None,
        text_as: TextAs::Text,
    };
    let formats = kinds.map(|(_, format)| format);
    let files = draw::pictures(exam, loaded, &wanted, &formats, languages)?;
    Ok(kinds
        .into_iter()
        .zip(files)
        .map(|((content_type, _), bytes)| Picture { content_type, bytes })
        .collect())
}

/// Type of the words on the slip's picture, points.
const TYPE_PT: f32 = 6.5;
/// Width of a PNG in pixels: 300 to the inch.
const PNG_WIDTH: u32 = 2480;

fn slip_sheets(
    entry: &Entry<'_>,
    loaded: &Loaded<'_>,
    draft: Option<String>,
    layout: &Layout,
    fonts: &Fonts,
) -> Result<Vec<Sheet>, String> {
    let maker = Maker::new(entry.words, fonts);
    let pose = picture::pose(entry.exam, loaded);
    let notes = picture::notes(&pose, entry.words).map_err(|e| e.to_string())?;
    let mut content = slip::content(entry, &notes).map_err(|e| e.to_string())?;
    if let Some(draft) = draft {
        content.blocks.entry("slip-foot".to_owned()).or_default().insert(0, Block::new(Kind::Strong, draft));
    }
    let wanted = Wanted {
        style: Style::Sketch,
        palette: Palette::Neutral,
        mother: MotherAs::Outline,
        hands: None,
        view: View::Facing,
        labels: Labels::Few,
        type_pt: TYPE_PT,
        captions: vec![],
    };
    // What does not fit on half a sheet stands on a whole one: nothing is left out, and no type is too small.
    maker.sheets(&pose, &wanted, layout, &content).or_else(|_| {
        let whole = layout.clone().on_paper("a4").map_err(|e| e.to_string())?;
        maker.sheets(&pose, &wanted, &whole, &content)
    })
}
