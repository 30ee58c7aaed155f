//! `fundal-height`. In: the exams of two visits or more of one pregnancy, in any order. Out: one sheet with the tapes on their curves, how
//! the baby lay at each visit, and a table; or why they cannot be of one pregnancy.

mod content;
mod marks;

use super::languages::{self, Draft, Tongues};
use super::load::{self, Loaded};
use super::picture::{self, Maker};
use super::{Format, Outcome, Paper, Source, exit};
use crate::body::pose::Pose;
use crate::exam::dates::{days_between, written};
use crate::figure::growth::{self as figure, Growth as Figure, Lay, Size};
use crate::figure::pen::{Stroke, pen};
use crate::figure::scene::Scene;
use crate::fonts::Fonts;
use crate::reckon::{self, Course, NotOne, Visit, beside, ledger};
use crate::report::Look;
use crate::sheet::{Block, GROWTH, Kind, Sheet, SheetError, compose};
use crate::words::{Part, Words};
use crate::write::TextAs;
use content::Told;

/// The sheet to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Growth {
    /// The visits, in any order.
    pub visits: Vec<Source>,
    /// The kind of file.
    pub format: Format,
    /// Paper.
    pub paper: Paper,
    /// Language tag; two with a comma between stand side by side.
    pub lang: String,
    /// What becomes of a language that nobody has signed.
    pub draft: Draft,
    /// The clinic's file, for its thresholds.
    pub clinic: Option<Source>,
    /// Lesser remarks to be left out, by id; the sheet says so.
    pub quiet: Vec<String>,
    /// Width of a PNG in pixels; `None` for the default.
    pub width: Option<u32>,
    /// Text of an SVG as text with its font, or as outlines.
    pub text_as: TextAs,
}

/// More visits than this do not fit on a sheet that can be read.
const MOST_VISITS: usize = 14;
/// Width of a PNG in pixels: 200 to the inch.
const PNG_WIDTH: u32 = 1654;

/// Make the sheet. What cannot wait at any visit is told first, and in the exit code.
pub fn run(options: &Growth, look: Look) -> Outcome {
    let parts = [Part::Family, Part::Picture, Part::Check, Part::Chart, Part::Growth];
    let tongues = match Tongues::chosen(&options.lang, options.draft, &parts) {
        Ok(tongues) => tongues,
        Err(fault) => return load::wordless(&fault),
    };
    let words = tongues.english();
    let (clinic, clinic_problems, clinic_failed) = load::clinic(options.clinic.as_ref(), look);
    let mut loaded: Vec<Loaded<'_>> =
        options.visits.iter().map(|source| load::exam(source, clinic.as_ref())).collect();
    let unquietable = load::unquietable(&options.quiet);
    let mut notes: String = loaded.iter().map(|loaded| loaded.problems(look)).collect();
    for loaded in &loaded {
        match load::pressing(loaded, words) {
            Ok(told) => notes.push_str(&told),
            Err(fault) => return load::wordless(&fault),
        }
    }
    notes.push_str(&clinic_problems);
    notes.push_str(&unquietable);
    let code = loaded.iter().map(Loaded::code).fold(exit::DONE, u8::max);
    let failed = |mut notes: String, why: String| {
        if !why.is_empty() {
            notes.push_str(&format!("handspan: {why}\n"));
        }
        Outcome { notes, why, code: code.max(exit::FAILED), ..Outcome::default() }
    };
    let unread = loaded.iter().any(|loaded| loaded.settled().is_none());
    if unread || clinic_failed || !unquietable.is_empty() {
        return failed(notes, String::new());
    }
    if let Some(why) = too_few_or_many(&options.visits) {
        return failed(notes, why);
    }
    let visits: Vec<Visit<'_>> = loaded
        .iter()
        .filter_map(|one| Some(Visit { exam: one.reading.exam.as_ref()?, reckoning: &one.reckoning }))
        .collect();
    let mut course = match reckon::course(&visits) {
        Ok(course) => course,
        Err(not_one) => return failed(notes, refused(&not_one, &options.visits)),
    };
    let mut quieted = course.quiet(&options.quiet);
    for one in &mut loaded {
        one.reckoning.quiet(&options.quiet);
        quieted.extend(&one.reckoning.quieted);
    }
    quieted.sort_unstable();
    quieted.dedup();
    let told = Told { loaded: &loaded, course: &course, quieted, words };
    match told.together().map_err(|fault| fault.to_string()).and_then(|text| {
        notes.push_str(&text);
        files(options, &told, tongues.pages())
    }) {
        Ok(pages) => Outcome { notes, pages, made: "the tape over the visits", code, ..Outcome::default() },
        Err(why) => failed(notes, why),
    }
}

fn too_few_or_many(visits: &[Source]) -> Option<String> {
    if visits.len() < 2 {
        return Some("growth is over visits: give two or more of one pregnancy".to_owned());
    }
    if visits.len() > MOST_VISITS {
        return Some(format!(
            "{} visits do not fit on a sheet; give {MOST_VISITS} at most, and write older tapes into one of them: \
             earlier-tapes",
            visits.len()
        ));
    }
    let twice = |(at, visit): &(usize, &Source)| visits[..*at].iter().any(|other| other.name == visit.name);
    let (_, twice) = visits.iter().enumerate().find(twice)?;
    Some(format!("{} is there twice; name each visit once", twice.name))
}

/// Why visits cannot be set beside one another, and what to do.
fn refused(not_one: &NotOne, visits: &[Source]) -> String {
    let name = |visit: usize| visits[visit].name.as_str();
    match not_one {
        NotOne::NoWeeks(visit) => format!(
            "{}: its weeks are not known, so it has no place among the visits; write `weeks`, or `visit` and a date to \
             count from, or leave it out",
            name(*visit)
        ),
        NotOne::DueApart([(first, due), (second, other)]) => format!(
            "are these one pregnancy? {} is due on {}, {} on {}: {} days apart. Look the dates up again, or leave out \
             what is not hers; nothing was written",
            name(*first),
            written(*due),
            name(*second),
            written(*other),
            days_between(*due, *other)
        ),
        NotOne::TapesApart([first, second], weeks, [one, other]) => format!(
            "{} and {} tell of two tapes on one day, {weeks}: {} cm and {} cm. Keep the one that holds in both; nothing \
             was written",
            name(*first),
            name(*second),
            beside(*one, &[], 2),
            beside(*other, &[], 2)
        ),
    }
}

/// The sizes that are tried, the largest first: the field of curves makes way for words.
fn sizes(width: f32) -> Vec<Size> {
    (0..=16_u8).map(|step| Size { width, field: 13.0 - 0.5 * f32::from(step) }).collect()
}

/// mm on paper for a cm of paper.
const TRUE_SIZE: f32 = 10.0;

/// The files of the sheet in every language.
fn files(options: &Growth, told: &Told<'_>, languages: &[Words]) -> Result<Vec<Vec<u8>>, String> {
    let fonts = Fonts::load().map_err(|e| e.to_string())?;
    let sheets = languages::sheets(languages, &fonts, |words, draft| {
        Ok(vec![page(options, &Told { words, ..told.clone() }, draft, &fonts)?])
    })?;
    let maker = Maker::new(told.words, &fonts);
    maker.files(&sheets, options.format, options.text_as, Some(options.width.unwrap_or(PNG_WIDTH)))
}

fn page(options: &Growth, told: &Told<'_>, draft: Option<String>, fonts: &Fonts) -> Result<Sheet, String> {
    let layout =
        GROWTH.read().and_then(|layout| layout.on_paper(options.paper.name())).map_err(|e| e.to_string())?;
    let mut content = told.content().map_err(|e| e.to_string())?;
    if let Some(draft) = draft {
        content
            .blocks
            .entry("growth-foot".to_owned())
            .or_default()
            .insert(0, Block::new(Kind::Strong, draft));
    }
    let tapes = marks::tapes(told.course, told.words).map_err(|e| e.to_string())?;
    let curves = told.curves();
    let order = &told.course.order;
    let poses: Vec<(Pose, Vec<Stroke>)> =
        order.iter().filter_map(|&index| posed(&told.loaded[index])).collect();
    let mut lies = vec![];
    for (&index, (pose, strokes)) in order.iter().zip(&poses) {
        let Some(exam) = &told.loaded[index].reading.exam else { continue };
        let Some(weeks) = exam.weeks else { continue };
        let words =
            marks::lies(&told.loaded[index].reckoning.conclusions, told.words).map_err(|e| e.to_string())?;
        lies.push(Lay { weeks, words, pose, strokes });
    }
    let what = Figure {
        title: content.title.clone(),
        description: told.about().map_err(|e| e.to_string())?,
        tapes: &tapes,
        lies: &lies,
        curves,
    };
    let draw = |size: &Size| -> Result<Scene, String> {
        figure::growth(&what, *size, told.words, fonts).map_err(|e| e.to_string())
    };
    let fits = |size: &Size| {
        let scale = |scene: Scene| layout.mm_per_cm(&scene.frame, &content, told.words, fonts);
        draw(size).is_ok_and(|scene| scale(scene).is_ok_and(|scale| scale > TRUE_SIZE * 0.9999))
    };
    let sizes = sizes(layout.width_mm().unwrap_or_default() / TRUE_SIZE);
    let largest = sizes.partition_point(|size| !fits(size));
    let scene = draw(&sizes[largest.min(sizes.len() - 1)])?;
    compose(&layout, &[scene], &content, told.words, fonts).map_err(|fault| match fault {
        SheetError::DoesNotFit { .. } => {
            "so much stands against these visits that one sheet does not hold it; give fewer of them"
                .to_owned()
        }
        other => other.to_string(),
    })
}

fn posed(loaded: &Loaded<'_>) -> Option<(Pose, Vec<Stroke>)> {
    let pose = picture::pose(loaded.reading.exam.as_ref()?, loaded);
    let strokes = pen(&pose);
    Some((pose, strokes))
}

impl Course {
    /// Leaves out lesser remarks by their ids; which of them stood.
    fn quiet(&mut self, ids: &[String]) -> Vec<&'static str> {
        let silent =
            |remark: &reckon::Remark| remark.grade.is_lesser() && ids.iter().any(|id| id == remark.id);
        let stood = self.remarks.iter().filter(|remark| silent(remark)).map(|remark| remark.id).collect();
        self.remarks.retain(|remark| !silent(remark));
        stood
    }
}

/// The day of the ledger, for the foot of the sheet.
const LEDGER: &str = ledger::LEDGER_VERSION;
