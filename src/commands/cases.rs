//! `cases`. In: how many, a seed, a level. Out: a directory's files: the sheets, their key, and an exam file for each case.

use super::check::numbers;
use super::picture::{self, Maker, Wanted};
use super::{Labels, Outcome, Palette, Paper, Style, View, exit, load};
use crate::body::pose;
use crate::clinic::Thresholds;
use crate::exam::Exam;
use crate::fonts::Fonts;
use crate::reckon::reckon;
use crate::sheet::{CASE, CASE_KEY, Layout, Sheet, Shipped};
use crate::teach::{Case, Level, case_content, key_content};
use crate::words::Words;
use crate::write;

/// The cases to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cases {
    /// How many.
    pub count: u16,
    /// The same seed gives the same cases.
    pub seed: u64,
    /// How hard they are.
    pub level: Level,
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
    let maker = Maker { words, fonts: &fonts };
    let (mut sheets, mut keys, mut exams) = (vec![], vec![], vec![]);
    for number in 1..=u64::from(options.count) {
        let case = Case::make(options.seed, number, options.level)?;
        sheets.extend(sheet(&case, options.paper, &maker)?);
        keys.extend(key(&case, options.paper, &maker)?);
        let comment =
            words.say("case-file", &[("number", &number.to_string())]).map_err(|e| e.to_string())?;
        exams.push((format!("case-{number:02}.toml"), case.file(&comment).into_bytes()));
    }
    let pdf = |sheets: &[Sheet]| write::pdf_pages(sheets, &fonts).map_err(|e| e.to_string());
    let mut files = vec![("cases.pdf".to_owned(), pdf(&sheets)?), ("key.pdf".to_owned(), pdf(&keys)?)];
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
    wanted.captions = picture::notes(&pose, words).map_err(|e| e.to_string())?;
    maker.sheets(&pose, &wanted, &layout(CASE_KEY, paper)?, &content)
}

fn posed(exam: &Exam) -> pose::Pose {
    pose::from_exam(exam, &crate::reckon::conclusions(exam))
}
