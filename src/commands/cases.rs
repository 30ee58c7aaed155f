//! `cases`. In: how many, a seed, a level. Out: a directory's files: the sheets, their key, and an exam file for each case.

use super::check::numbers;
use super::picture::{self, Maker, Wanted};
use super::{Format, Labels, Outcome, Palette, Paper, Style, View, exit, load};
use crate::body::pose;
use crate::chart::said;
use crate::clinic::Thresholds;
use crate::exam::Exam;
use crate::fonts::Fonts;
use crate::reckon::{Reckoning, reckon};
use crate::sheet::{CASE, CASE_KEY, Content, Layout, PICTURE, Sheet, Shipped};
use crate::teach::{Case, Level, case_content, key_content, qti};
use crate::words::{Words, WordsError};
use crate::write::{self, TextAs};

/// The cases to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cases {
    /// How many.
    pub count: u16,
    /// The same seed gives the same cases.
    pub seed: u64,
    /// How hard they are.
    pub level: Level,
    /// A package for learning systems beside the sheets.
    pub package: bool,
    /// Paper.
    pub paper: Paper,
    /// Language tag.
    pub lang: String,
}

/// Make them.
pub fn run(options: &Cases) -> Outcome {
    let words = match Words::load(&options.lang) {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    match files(options, &words) {
        Ok(files) => {
            let (names, pages) = files.into_iter().unzip();
            Outcome { names, pages, made: "practice cases", ..Outcome::default() }
        }
        Err(why) => {
            Outcome { notes: format!("handspan: {why}\n"), why, code: exit::FAILED, ..Outcome::default() }
        }
    }
}

fn files(options: &Cases, words: &Words) -> Result<Vec<(String, Vec<u8>)>, String> {
    let fonts = Fonts::load().map_err(|e| e.to_string())?;
    let maker = Maker::new(words, &fonts);
    let (mut sheets, mut keys, mut exams, mut cases) = (vec![], vec![], vec![], vec![]);
    for number in 1..=u64::from(options.count) {
        let case = Case::make(options.seed, number, options.level)?;
        sheets.extend(sheet(&case, options.paper, &maker)?);
        keys.extend(key(&case, options.paper, &maker)?);
        let comment =
            words.say("case-file", &[("number", &number.to_string())]).map_err(|e| e.to_string())?;
        exams.push((format!("case-{number:02}.toml"), case.file(&comment).into_bytes()));
        cases.push(case);
    }
    let pdf = |sheets: &[Sheet]| write::pdf_pages(sheets, &fonts).map_err(|e| e.to_string());
    let mut files = vec![("cases.pdf".to_owned(), pdf(&sheets)?), ("key.pdf".to_owned(), pdf(&keys)?)];
    if options.package {
        files.push(("cases-qti.zip".to_owned(), package(&cases, &maker)?));
    }
    files.extend(exams);
    Ok(files)
}

/// Type of the words on a picture, points.
const TYPE_PT: f32 = 9.0;

fn wanted(labels: Labels) -> Wanted {
    Wanted {
        style: Style::Line,
        palette: Palette::Neutral,
        view: View::Facing,
        labels,
        type_pt: TYPE_PT,
        captions: vec![],
    }
}

fn layout(shipped: Shipped, paper: Paper) -> Result<Layout, String> {
    shipped.read().and_then(|layout| layout.on_paper(paper.name())).map_err(|e| e.to_string())
}

fn sheet(case: &Case, paper: Paper, maker: &Maker<'_>) -> Result<Vec<Sheet>, String> {
    let pose = posed(&case.blank()?);
    let content = case_content(case, maker.words).map_err(|e| e.to_string())?;
    maker.sheets(&pose, &wanted(Labels::None), &layout(CASE, paper)?, &content)
}

fn key(case: &Case, paper: Paper, maker: &Maker<'_>) -> Result<Vec<Sheet>, String> {
    let words = maker.words;
    let reckoning = reckon(&case.exam, &Thresholds::default());
    let sums = numbers::sentences(&case.exam, &reckoning, false, words).map_err(|e| e.to_string())?;
    let content = key_content(case, &reckoning, &sums, words).map_err(|e| e.to_string())?;
    let pose = posed(&case.exam);
    let mut wanted = wanted(Labels::Few);
    wanted.style = Style::Soft;
    wanted.captions = captions(case, &pose, words).map_err(|e| e.to_string())?;
    maker.sheets(&pose, &wanted, &layout(CASE_KEY, paper)?, &content)
}

/// Width of the pictures in a package, pixels.
const PIXELS: u32 = 900;

/// The cases as a package after QTI 2.1.
fn package(cases: &[Case], maker: &Maker<'_>) -> Result<Vec<u8>, String> {
    let words = maker.words;
    let layout = PICTURE.read().map_err(|e| e.to_string())?;
    let png = |exam: &Exam, wanted: &Wanted, description: String| -> Result<Vec<u8>, String> {
        let title = words.say("picture-title", &[]).map_err(|e| e.to_string())?;
        let content = Content { title, description, ..Content::default() };
        let sheets = maker.sheets(&posed(exam), wanted, &layout, &content)?;
        let mut files = maker.files(&sheets, Format::Png, TextAs::Text, Some(PIXELS))?;
        files.pop().ok_or_else(|| "no picture was made".to_owned())
    };
    let reckonings: Vec<Reckoning> =
        cases.iter().map(|case| reckon(&case.exam, &Thresholds::default())).collect();
    let mut shown = vec![];
    for (case, reckoning) in cases.iter().zip(&reckonings) {
        let mut told = vec![];
        for conclusion in &reckoning.conclusions {
            told.push(said::lie_and_back(conclusion, words).map_err(|e| e.to_string())?);
        }
        let description = told.join(" ");
        let blank = words.say("case-blank", &[]).map_err(|e| e.to_string())?;
        let blank = png(&case.blank()?, &wanted(Labels::None), blank)?;
        let mut of_key = wanted(Labels::Few);
        of_key.style = Style::Soft;
        of_key.captions = captions(case, &posed(&case.exam), words).map_err(|e| e.to_string())?;
        let key = png(&case.exam, &of_key, description.clone())?;
        shown.push(qti::Shown { case, reckoning, blank, key, description });
    }
    let files = qti::package(&shown, words).map_err(|e| e.to_string())?;
    write::package(&files).map_err(|e| e.to_string())
}

/// What is to be said about the drawing of a key; that a finding speaks against the others, too.
fn captions(case: &Case, pose: &pose::Pose, words: &Words) -> Result<Vec<String>, WordsError> {
    let mut all = picture::notes(pose, words)?;
    let disagree = words.say("drawing-disagree", &[])?;
    if case.planted.is_some() && !all.contains(&disagree) {
        all.push(disagree);
    }
    Ok(all)
}

fn posed(exam: &Exam) -> pose::Pose {
    pose::from_exam(exam, &crate::reckon::conclusions(exam))
}
