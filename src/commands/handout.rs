//! `handout`. In: an exam and options. Out: the family page; or the reason why none is made.
//!
//! While anything stands that cannot wait, no page is made that could comfort. Someone who must have the page all the
//! same names each such remark (`--despite bleeding`); the exit code still tells of it.

use super::load::{self, Loaded};
use super::picture::{self, Maker, Wanted};
use super::{Format, Outcome, Source, exit};
use crate::clinic::Clinic;
use crate::exam::Exam;
use crate::figure::{Labels, Palette, Style, View};
use crate::fonts::Fonts;
use crate::reckon::{Grade, Remark};
use crate::report::Look;
use crate::sheet::family::{self, ClinicLines};
use crate::sheet::{FAMILY_PAGE, Layout};
use crate::words::{Words, WordsError};
use crate::write::TextAs;

/// Paper sizes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// 210 × 297 mm.
    A4,
    /// 8.5 × 11 in.
    Letter,
}

/// The page to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Handout {
    /// The exam.
    pub exam: Source,
    /// The kind of file.
    pub format: Format,
    /// Language tag.
    pub lang: String,
    /// Paper; `None` for the layout's own.
    pub paper: Option<Paper>,
    /// The clinic's file.
    pub clinic: Option<Source>,
    /// A layout file of one's own.
    pub layout: Option<Source>,
    /// Ids of act-now remarks despite which the page is made.
    pub despite: Vec<String>,
}

/// Make the family page, unless something stands against it.
pub fn run(options: &Handout, look: Look) -> Outcome {
    let words = match Words::load(&options.lang) {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    let (clinic, clinic_problems, clinic_failed) = load::clinic(options.clinic.as_ref(), look);
    let loaded = load::exam(&options.exam, clinic.as_ref());
    let exam = match loaded.exam(look) {
        Ok(exam) => exam,
        Err(outcome) => return *outcome,
    };
    let mut notes = loaded.problems(look);
    if let Some(wrong) = named_wrongly(&loaded, options) {
        notes.push_str(&wrong);
        let why = "--despite names a remark that does not stand".to_owned();
        return Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() };
    }
    match refusal(&loaded, options, &words) {
        Err(fault) => return load::wordless(&fault),
        Ok(Some(reason)) => {
            notes.push_str(&reason);
            let ids: Vec<&str> = standing(&loaded, options).iter().map(|remark| remark.id).collect();
            let why = format!("against it stands {}", ids.join(", "));
            return Outcome { notes, why, code: loaded.code(), ..Outcome::default() };
        }
        Ok(None) => match despite(&loaded, &words) {
            Err(fault) => return load::wordless(&fault),
            Ok(told) => notes.push_str(&told),
        },
    }
    notes.push_str(&clinic_problems);
    if clinic_failed {
        let why = "the clinic's file has a fault".to_owned();
        return Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() };
    }
    match page(exam, &loaded, clinic.as_ref(), options, &words) {
        Ok(pages) => {
            Outcome { notes, pages, made: "the family page", code: loaded.code(), ..Outcome::default() }
        }
        Err(why) => {
            notes.push_str(&format!("handspan: {why}\n"));
            Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() }
        }
    }
}

/// Why no page is made, with what to do; `None` when nothing stands against it.
fn refusal(loaded: &Loaded<'_>, options: &Handout, words: &Words) -> Result<Option<String>, WordsError> {
    let stands = standing(loaded, options);
    if stands.is_empty() {
        return Ok(None);
    }
    let mut reason = format!("{}: no family page is made\n", loaded.name);
    for remark in &stands {
        let grade = words.say(&format!("grade-{}", remark.grade.name()), &[])?;
        let text = load::sentence(remark, loaded.reckoning.conclusions.len(), words)?;
        reason.push_str(&format!("  {grade} [{}]: {text}\n", remark.id));
    }
    if stands.iter().all(|remark| remark.grade == Grade::ActNow) {
        reason.push_str(
            "If this is in hand and she is to have the page all the same, name each of these with --despite.\n",
        );
    }
    Ok(Some(reason))
}

/// The remarks that stand against a page.
fn standing<'a>(loaded: &'a Loaded<'_>, options: &Handout) -> Vec<&'a Remark> {
    let against = |remark: &&Remark| match remark.grade {
        Grade::ActNow => !options.despite.iter().any(|id| id == remark.id),
        Grade::CannotBoth => true,
        Grade::LookAgain | Grade::FollowGuidance => false,
    };
    loaded.reckoning.remarks.iter().filter(against).collect()
}

/// What stands all the same.
fn despite(loaded: &Loaded<'_>, words: &Words) -> Result<String, WordsError> {
    let mut told = String::new();
    for remark in loaded.graded(Grade::ActNow) {
        let text = load::sentence(remark, loaded.reckoning.conclusions.len(), words)?;
        told.push_str(&format!("{}: made despite [{}]: {text}\n", loaded.name, remark.id));
    }
    Ok(told)
}

/// Names after `--despite` that name nothing that stands.
fn named_wrongly(loaded: &Loaded<'_>, options: &Handout) -> Option<String> {
    let stands: Vec<&str> = loaded.graded(Grade::ActNow).map(|remark| remark.id).collect();
    let wrong = options.despite.iter().find(|id| !stands.contains(&id.as_str()))?;
    let known = if stands.is_empty() {
        "no act-now remark stands; leave --despite out".to_owned()
    } else {
        format!("what stands: {}", stands.join(", "))
    };
    Some(format!("handspan: --despite {wrong}: no such remark stands ({known}); no family page is made\n"))
}

/// No words for families are smaller, points (source: CDC Simply Put, CMS Toolkit, in readability.csv).
const FAMILY_TYPE_PT: f32 = 12.0;
/// Type of the labels on the picture, points.
const TYPE_PT: f32 = 12.0;

/// The finished files, one a page.
fn page(
    exam: &Exam,
    loaded: &Loaded<'_>,
    clinic: Option<&Clinic>,
    options: &Handout,
    words: &Words,
) -> Result<Vec<Vec<u8>>, String> {
    let fonts = Fonts::load().map_err(|e| e.to_string())?;
    let maker = Maker { words, fonts: &fonts };
    let layout = layout(options)?;
    let lines = clinic_lines(clinic, words).map_err(|e| e.to_string())?;
    let content =
        family::content(exam, &loaded.reckoning.conclusions, &lines, words).map_err(|e| e.to_string())?;
    let pose = picture::pose(exam, loaded);
    let wanted = Wanted {
        style: Style::Soft,
        palette: Palette::Neutral,
        view: View::Facing,
        labels: Labels::Family,
        type_pt: TYPE_PT,
        captions: vec![],
    };
    let sheet = maker.sheet(&pose, &wanted, &layout, &content)?;
    Ok(vec![maker.bytes(&sheet, options.format, TextAs::Text, None)?])
}

/// The layout asked for, or the shipped one, on the paper asked for.
fn layout(options: &Handout) -> Result<Layout, String> {
    let layout = match &options.layout {
        None => Layout::read(FAMILY_PAGE.0, FAMILY_PAGE.1),
        Some(source) => {
            let bytes =
                source.bytes.as_ref().map_err(|why| format!("{}: cannot be read: {why}", source.name))?;
            let text = std::str::from_utf8(bytes)
                .map_err(|_| format!("{}: is not UTF-8 text; save it as UTF-8", source.name))?;
            Layout::read(&source.name, text)
        }
    }
    .map_err(|e| e.to_string())?;
    if layout.smallest_type_pt() < FAMILY_TYPE_PT {
        return Err(format!(
            "a family page has no type under {FAMILY_TYPE_PT} pt; leave smallest-type out of the layout"
        ));
    }
    match options.paper {
        None => Ok(layout),
        Some(Paper::A4) => layout.on_paper("a4").map_err(|e| e.to_string()),
        Some(Paper::Letter) => layout.on_paper("letter").map_err(|e| e.to_string()),
    }
}

/// The clinic's name and numbers as the page prints them.
fn clinic_lines(clinic: Option<&Clinic>, words: &Words) -> Result<ClinicLines, WordsError> {
    let Some(clinic) = clinic else { return Ok(ClinicLines::default()) };
    let mut phones = vec![];
    for (id, number) in [
        ("phone-labour-ward", &clinic.labour_ward),
        ("phone-day", &clinic.day),
        ("phone-night", &clinic.night),
        ("phone-emergency", &clinic.emergency),
    ] {
        if let Some(number) = number {
            phones.push(words.say(id, &[("number", number)])?);
        }
    }
    Ok(ClinicLines { name: clinic.name.clone(), phones })
}
