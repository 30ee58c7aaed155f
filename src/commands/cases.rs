//! `cases`. In: how many, a seed, a level. Out: a directory's files: the sheets, their key, and a visit file for each case.

use super::check::{Check, numbers};
use super::picture::{self, Maker, Wanted};
use super::{Format, Labels, MotherAs, Outcome, Palette, Paper, Style, View, exit, load};
use crate::body::pose::{self, Pose};
use crate::chart::said;
use crate::clinic::Thresholds;
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

/// What whoever hands them out must know.
const KEY_STAYS: &str =
    "hand out cases.pdf alone: key.pdf is the answer key, and the visit files tell the answers too";

/// Make them.
pub fn run(options: &Cases) -> Outcome {
    let words = match Words::load(&options.lang) {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    match files(options, &words) {
        Ok(files) => {
            let (names, pages): (Vec<String>, _) = files.into_iter().unzip();
            let each = names.iter().map(|name| file_is(name)).collect();
            let notes = format!("{KEY_STAYS}\n");
            Outcome { names, pages, notes, each, made: "practice cases", ..Outcome::default() }
        }
        Err(why) => {
            Outcome { notes: format!("handspan: {why}\n"), why, code: exit::FAILED, ..Outcome::default() }
        }
    }
}

/// What a file of the set is, by its name.
fn file_is(name: &str) -> &'static str {
    match name {
        "cases.pdf" => "practice cases, to hand out",
        "key.pdf" => "the answer key",
        _ if name.ends_with(".toml") => "the visit file of a case, with its answers",
        _ => "practice cases",
    }
}

/// A case with all that is drawn and told of it.
struct Ready {
    case: Case,
    reckoning: Reckoning,
    /// Her alone.
    blank: Pose,
    /// The baby as the findings say.
    pose: Pose,
}

impl Ready {
    fn of(case: Case) -> Result<Self, String> {
        let reckoning = reckon(&case.exam, &Thresholds::default());
        let pose = pose::from_exam(&case.exam, &reckoning.conclusions);
        let empty = case.blank()?;
        let mut blank = pose::from_exam(&empty, &crate::reckon::conclusions(&empty));
        // How the womb stands would tell how the baby lies.
        blank.womb.clear();
        Ok(Ready { case, reckoning, blank, pose })
    }
}

fn files(options: &Cases, words: &Words) -> Result<Vec<(String, Vec<u8>)>, String> {
    let fonts = Fonts::load().map_err(|e| e.to_string())?;
    let maker = Maker::new(words, &fonts);
    let (mut sheets, mut keys, mut exams, mut cases) = (vec![], vec![], vec![], vec![]);
    for number in 1..=u64::from(options.count) {
        let ready = Ready::of(Case::make(options.seed, number, options.level)?)?;
        sheets.extend(sheet(&ready, options.paper, &maker)?);
        keys.extend(key(&ready, options.paper, &maker)?);
        let (number, name) = (number.to_string(), ready.case.name());
        let comment = words.say("case-file", &[("name", &name)]).map_err(|e| e.to_string())?;
        exams.push((format!("case-{number:0>2}.toml"), ready.case.file(&comment).into_bytes()));
        cases.push(ready);
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
        mother: MotherAs::Outline,
        hands: None,
        view: View::Facing,
        labels,
        type_pt: TYPE_PT,
        captions: vec![],
    }
}

fn layout(shipped: Shipped, paper: Paper) -> Result<Layout, String> {
    shipped.read().and_then(|layout| layout.on_paper(paper.name())).map_err(|e| e.to_string())
}

fn sheet(ready: &Ready, paper: Paper, maker: &Maker<'_>) -> Result<Vec<Sheet>, String> {
    let content = case_content(&ready.case, maker.words).map_err(|e| e.to_string())?;
    maker.sheets(&ready.blank, &wanted(Labels::None), &layout(CASE, paper)?, &content)
}

fn key(ready: &Ready, paper: Paper, maker: &Maker<'_>) -> Result<Vec<Sheet>, String> {
    let (words, case) = (maker.words, &ready.case);
    let sums = numbers::sentences(&case.exam, &ready.reckoning, &Check::default(), words)
        .map_err(|e| e.to_string())?;
    let content = key_content(case, &ready.reckoning, &sums, words).map_err(|e| e.to_string())?;
    maker.sheets(&ready.pose, &of_key(ready, words)?, &layout(CASE_KEY, paper)?, &content)
}

/// How the picture of a key is wanted.
fn of_key(ready: &Ready, words: &Words) -> Result<Wanted, String> {
    let captions = captions(&ready.case, &ready.pose, words).map_err(|e| e.to_string())?;
    Ok(Wanted { style: Style::Soft, captions, ..wanted(Labels::Few) })
}

/// Width of the pictures in a package, pixels.
const PIXELS: u32 = 900;

/// The cases as a package after QTI 2.1.
fn package(cases: &[Ready], maker: &Maker<'_>) -> Result<Vec<u8>, String> {
    let words = maker.words;
    let layout = PICTURE.read().map_err(|e| e.to_string())?;
    let png = |pose: &Pose, wanted: &Wanted, description: String| -> Result<Vec<u8>, String> {
        let title = words.say("picture-title", &[]).map_err(|e| e.to_string())?;
        let content = Content { title, description, ..Content::default() };
        let sheets = maker.sheets(pose, wanted, &layout, &content)?;
        let mut files = maker.files(&sheets, Format::Png, TextAs::Text, Some(PIXELS))?;
        files.pop().ok_or_else(|| "no picture was made".to_owned())
    };
    let mut shown = vec![];
    for ready in cases {
        let mut told = vec![];
        for conclusion in &ready.reckoning.conclusions {
            told.push(said::lie_and_back(conclusion, words).map_err(|e| e.to_string())?);
        }
        let description = told.join(" ");
        let blank = words.say("case-blank", &[]).map_err(|e| e.to_string())?;
        let blank = png(&ready.blank, &wanted(Labels::None), blank)?;
        let key = png(&ready.pose, &of_key(ready, words)?, description.clone())?;
        shown.push(qti::Shown { case: &ready.case, reckoning: &ready.reckoning, blank, key, description });
    }
    let files = qti::package(&shown, words).map_err(|e| e.to_string())?;
    write::package(&files).map_err(|e| e.to_string())
}

/// What is to be said about the drawing of a key; that a finding speaks against the others, too.
fn captions(case: &Case, pose: &Pose, words: &Words) -> Result<Vec<String>, WordsError> {
    let mut all = picture::notes(pose, words)?;
    let disagree = words.say("drawing-disagree", &[])?;
    if case.planted.is_some() && !all.contains(&disagree) {
        all.push(disagree);
    }
    Ok(all)
}
