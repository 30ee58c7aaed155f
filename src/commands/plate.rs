//! `plate`. In: the name of a set and options. Out: one sheet with a grid of small figures, each with its name.
//!
//! The size of a figure is known before it is cast, so that small figures are cast with few cells and stay small files.

mod sets;

pub use sets::Set;

use super::load::{self, Loaded};
use super::picture::{self, Maker};
use super::{Format, Outcome, Paper, Source, exit};
use crate::body::pose::Pose;
use crate::chart::said;
use crate::exam::Conclusion;
use crate::figure::scene::Scene;
use crate::figure::{self, FigureOptions, Labels, Palette, Style, View};
use crate::fonts::Fonts;
use crate::report::Look;
use crate::sheet::{Block, Content, Kind, Layout, compose};
use crate::words::{Words, WordsError};
use crate::write::TextAs;
use sets::{Caption, Figure};

/// The sheet to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plate {
    /// The figures.
    pub set: Set,
    /// The kind of file.
    pub format: Format,
    /// The style.
    pub style: Style,
    /// The labels on each figure.
    pub labels: Labels,
    /// Paper; it lies on its long side.
    pub paper: Paper,
    /// Language tag.
    pub lang: String,
    /// Width of a PNG in pixels; `None` for the default.
    pub width: Option<u32>,
    /// Text of an SVG as text with its font, or as outlines.
    pub text_as: TextAs,
}

/// The names of the sets, a line each.
pub fn list() -> String {
    let line = |set: &Set| {
        let (name, shows) = set.named();
        format!("{name:<11}{shows}\n")
    };
    Set::ALL.iter().map(line).collect()
}

/// Make the sheet.
pub fn run(options: &Plate, look: Look) -> Outcome {
    let words = match Words::load(&options.lang) {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    match sheet(options, look, &words) {
        Ok(pages) => Outcome { pages, made: "the plate", ..Outcome::default() },
        Err(why) => {
            Outcome { notes: format!("handspan: {why}\n"), why, code: exit::FAILED, ..Outcome::default() }
        }
    }
}

/// A PNG of a whole sheet needs more pixels than one picture.
const PNG_WIDTH: u32 = 2400;

fn sheet(options: &Plate, look: Look, words: &Words) -> Result<Vec<Vec<u8>>, String> {
    let fonts = Fonts::load().map_err(|e| e.to_string())?;
    let maker = Maker { words, fonts: &fonts };
    let figures = options.set.figures();
    let sources: Vec<Source> =
        figures.iter().map(|figure| Source::new("figure", figure.exam.as_str())).collect();
    let loaded: Vec<Loaded<'_>> = sources.iter().map(|source| load::exam(source, None)).collect();
    let mut captions = vec![];
    for (figure, loaded) in figures.iter().zip(&loaded) {
        captions.push(caption(figure, loaded, words).map_err(|e| e.to_string())?);
    }
    let mut poses = vec![];
    for loaded in &loaded {
        let exam = loaded.exam(look).map_err(|outcome| outcome.why)?;
        poses.push(picture::pose(exam, loaded));
    }
    let content = content(options.set, &captions, &poses, words).map_err(|e| e.to_string())?;
    let (layout, mm_per_cm) = grid(options.paper, figures.len(), &content, &maker)?;
    let mut scenes = vec![];
    for (((loaded, pose), caption), figure) in loaded.iter().zip(&poses).zip(&captions).zip(&figures) {
        let mut about = vec![format!("{caption}.")];
        for conclusion in &loaded.reckoning.conclusions {
            about.push(said::lie_and_back(conclusion, words).map_err(|e| e.to_string())?);
        }
        scenes.push(scene(options, (pose, figure.palette), mm_per_cm, (caption, about.join(" ")), &maker)?);
    }
    let sheet = compose(&layout, &scenes, &content, words, &fonts).map_err(|e| e.to_string())?;
    let width = options.width.unwrap_or(PNG_WIDTH);
    maker.files(&[sheet], options.format, options.text_as, Some(width))
}

/// One figure, cast no finer than its size asks for.
fn scene(
    options: &Plate,
    (pose, palette): (&Pose, Palette),
    mm_per_cm: f32,
    (title, description): (&str, String),
    maker: &Maker<'_>,
) -> Result<Scene, String> {
    // The names of the sides stand in the corners of even the smallest figure.
    let width_mm = (figure::FRAME.right - figure::FRAME.left) * mm_per_cm;
    let wanted = FigureOptions {
        style: options.style,
        palette,
        view: View::Facing,
        // Without its scale the lesson of this plate is not seen.
        labels: if options.set == Set::Fifths && options.labels == Labels::None {
            Labels::Few
        } else {
            options.labels
        },
        mm_per_cm,
        type_pt: (10.0 * width_mm / 60.0).clamp(7.0, 10.0),
        title: title.to_owned(),
        description,
        captions: vec![],
    };
    let cast = pose.cast_for(mm_per_cm);
    let mut scene =
        figure::figure(pose, cast.as_ref(), &wanted, maker.words, maker.fonts).map_err(|e| e.to_string())?;
    figure::coarse::coarsen(&mut scene, COARSE_MM / mm_per_cm);
    Ok(scene)
}

/// How far a line of a figure may move on paper, mm: a printer's dot.
const COARSE_MM: f32 = 0.07;

/// What stands under a figure.
fn caption(figure: &Figure, loaded: &Loaded<'_>, words: &Words) -> Result<String, WordsError> {
    let conclusion = loaded.reckoning.conclusions.first();
    match figure.caption {
        Caption::Position => Ok(conclusion.and_then(|c| c.position).map(|p| p.words()).unwrap_or_default()),
        Caption::Lie => match conclusion {
            Some(Conclusion { position: Some(position), .. }) => Ok(position.words()),
            Some(conclusion) => Ok(said::lie_and_back(conclusion, words)?.trim_end_matches('.').to_owned()),
            None => Ok(String::new()),
        },
        Caption::Message(id) => words.say(id, &[]),
        Caption::Weeks(weeks) => words.say("plate-week", &[("weeks", &weeks.to_string())]),
        Caption::Palette => match figure.palette {
            Palette::Neutral => words.say("plate-palette-neutral", &[]),
            Palette::Skin(number) => words.say("plate-palette", &[("number", &number.to_string())]),
        },
        Caption::Fifths(fifths) => words.say("label-fifths", &[("fifths", &format!("{fifths}/5"))]),
    }
}

/// The words of the sheet: its title, what stands under each figure, and what is to be said of all.
fn content(set: Set, captions: &[String], poses: &[Pose], words: &Words) -> Result<Content, WordsError> {
    let title = words.say(&format!("plate-{}", set.named().0), &[])?;
    let mut foot = vec![words.say("plate-foot", &[("version", env!("CARGO_PKG_VERSION"))])?];
    for pose in poses {
        for note in picture::notes(pose, words)? {
            if !foot.contains(&note) {
                foot.push(note);
            }
        }
    }
    let mut content = Content {
        description: format!("{title}: {}.", captions.join("; ")),
        title: title.clone(),
        ..Content::default()
    };
    content.blocks.insert("title".to_owned(), vec![Block::new(Kind::Title, title)]);
    content.blocks.insert("foot".to_owned(), vec![Block::new(Kind::Text, foot.join(" "))]);
    for (number, caption) in captions.iter().enumerate() {
        content.blocks.insert(format!("caption-{number}"), vec![Block::new(Kind::Text, caption)]);
    }
    Ok(content)
}

/// The grid in which the figures are largest, and their mm for a cm.
fn grid(paper: Paper, count: usize, content: &Content, maker: &Maker<'_>) -> Result<(Layout, f32), String> {
    let mut best: Option<(Layout, f32)> = None;
    let mut refused = String::new();
    // A layout has 24 rows: two for each row of figures, one over and one under all.
    for columns in count.div_ceil(11)..=count.min(8) {
        let layout = Layout::read("plate", &layout(paper, columns, count)).map_err(|e| e.to_string())?;
        match layout.mm_per_cm(&figure::FRAME, content, maker.words, maker.fonts) {
            Ok(scale) if best.as_ref().is_none_or(|(_, largest)| scale > *largest) => {
                best = Some((layout, scale))
            }
            Ok(_) => {}
            Err(why) => refused = why.to_string(),
        }
    }
    best.ok_or(refused)
}

/// A layout with so many figures a row, each over its caption.
fn layout(paper: Paper, columns: usize, count: usize) -> String {
    let paper = match paper {
        Paper::A4 => "297 x 210 mm",
        Paper::Letter => "279.4 x 215.9 mm",
        Paper::A3 => "420 x 297 mm",
    };
    let mut text = format!(
        "[page]\npaper = \"{paper}\"\nmargin = \"8 mm\"\ncolumns = {columns}\ncolumn-gap = \"2 mm\"\nrow-gap = \"1 mm\"\n"
    );
    let mut lay = |name: &str, holds: &str, row: usize, columns: &str| {
        text.push_str(&format!(
            "[[box]]\nname = \"{name}\"\nholds = \"{holds}\"\nrow = \"{row}\"\ncolumns = \"{columns}\"\n"
        ));
    };
    let across = format!("1-{columns}");
    lay("title", "words:title", 1, &across);
    for number in 0..count {
        let (row, column) = (2 + 2 * (number / columns), (number % columns + 1).to_string());
        lay(&format!("picture-{number}"), "picture", row, &column);
        lay(&format!("caption-{number}"), &format!("words:caption-{number}"), row + 1, &column);
    }
    lay("foot", "words:foot", 2 + 2 * count.div_ceil(columns), &across);
    text
}
