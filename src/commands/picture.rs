//! From a read exam to bytes. In: the exam, its conclusions, how the figure is wanted, a layout, words. Out: a sheet,
//! and the bytes of an SVG, PNG or PDF.

use super::draw::Format;
use super::load::{self, Loaded};
use crate::body::pose::{self, DrawingNote, Pose};
use crate::exam::Exam;
use crate::figure::scene::Frame;
use crate::figure::{self, FigureOptions, Labels, MotherAs, Palette, Palpation, Style, View};
use crate::fonts::Fonts;
use crate::sheet::{Content, Layout, PictureLook, Sheet, compose_all};
use crate::words::{Words, WordsError};
use crate::write::{self, TextAs, WriteError};

/// Width of a PNG in pixels when none is asked for.
const PNG_WIDTH: u32 = 1200;

/// How the figure on a sheet is wanted.
pub struct Wanted {
    /// How it is painted.
    pub style: Style,
    /// The colours of skin.
    pub palette: Palette,
    /// How much of the mother is drawn.
    pub mother: MotherAs,
    /// The hands of whoever palpates.
    pub hands: Option<Palpation>,
    /// From where it is seen.
    pub view: View,
    /// What is named.
    pub labels: Labels,
    /// Type of the labels, points.
    pub type_pt: f32,
    /// Sentences at the foot of the picture.
    pub captions: Vec<String>,
}

/// What a command needs to make a sheet.
pub struct Maker<'a> {
    /// The words of one language.
    pub words: &'a Words,
    /// The faces.
    pub fonts: &'a Fonts,
    /// What is said of a draft, on sheets that have a foot for it.
    pub draft: Option<String>,
}

impl<'a> Maker<'a> {
    /// Of words that are no draft and stand beside none.
    pub fn new(words: &'a Words, fonts: &'a Fonts) -> Self {
        Maker { words, fonts, draft: None }
    }

    /// The sheets with the picture of an exam and `content`, laid out by `layout`, one a side. What the layout says of its
    /// pictures goes before what is `wanted`.
    pub fn sheets(
        &self,
        pose: &Pose,
        wanted: &Wanted,
        layout: &Layout,
        content: &Content,
    ) -> Result<Vec<Sheet>, String> {
        let told = |e: &dyn std::fmt::Display| e.to_string();
        let looks = layout.pictures();
        let style = |look: &PictureLook| look.style.unwrap_or(wanted.style);
        let frames: Vec<Frame> = looks
            .iter()
            .map(|(_, look)| figure::frame_with(style(look), wanted.mother, wanted.view))
            .collect();
        let scales = layout.scales(&frames, content, self.words, self.fonts).map_err(|e| told(&e))?;
        let cast = pose.cast();
        let mut scenes = vec![];
        for ((name, look), mm_per_cm) in looks.iter().zip(scales) {
            let options = FigureOptions {
                style: style(look),
                palette: wanted.palette,
                mother: wanted.mother,
                hands: wanted.hands,
                view: wanted.view,
                labels: look.labels.unwrap_or(wanted.labels),
                mm_per_cm,
                type_pt: look.type_pt.unwrap_or(wanted.type_pt),
                title: content.title.clone(),
                description: content.description.clone(),
                captions: wanted.captions.clone(),
            };
            let scene = figure::figure(pose, cast.as_ref(), &options, self.words, self.fonts)
                .map_err(|e| format!("{}: box `{name}`: {e}", layout.file()))?;
            scenes.push(scene);
        }
        compose_all(layout, &scenes, content, self.words, self.fonts).map_err(|e| told(&e))
    }

    /// The files of this format: a PDF of all sheets, or a picture of each.
    pub fn files(
        &self,
        sheets: &[Sheet],
        format: Format,
        text_as: TextAs,
        width: Option<u32>,
    ) -> Result<Vec<Vec<u8>>, String> {
        let each = |one: &dyn Fn(&Sheet) -> Result<Vec<u8>, WriteError>| sheets.iter().map(one).collect();
        match format {
            Format::Svg => each(&|sheet| write::svg(sheet, text_as, self.fonts).map(String::into_bytes)),
            Format::Png => each(&|sheet| write::png(sheet, width.unwrap_or(PNG_WIDTH), self.fonts)),
            Format::Pdf => write::pdf_pages(sheets, self.fonts).map(|file| vec![file]),
            Format::Html => {
                return Err("only the family page is made as HTML; this is svg, png or pdf".to_owned());
            }
        }
        .map_err(|e: WriteError| e.to_string())
    }
}

/// The pose of a read exam.
pub fn pose(exam: &Exam, loaded: &Loaded<'_>) -> Pose {
    pose::from_exam(exam, &loaded.reckoning.conclusions)
}

/// What is to be said about a drawing, a sentence each.
pub fn notes(pose: &Pose, words: &Words) -> Result<Vec<String>, WordsError> {
    pose.notes
        .iter()
        .map(|note| {
            let (id, baby) = match note {
                DrawingNote::WeeksNotGiven => ("drawing-weeks-not-given", None),
                DrawingNote::WombOnly => ("drawing-womb-only", None),
                DrawingNote::BabyNotTold(n) => ("drawing-baby-not-told", Some(*n)),
                DrawingNote::BackNotFelt(n) => ("drawing-back-not-felt", Some(*n)),
                DrawingNote::LegsNotFelt(n) => ("drawing-legs-not-felt", Some(*n)),
                DrawingNote::FootNotTold(n) => ("drawing-foot-not-told", Some(*n)),
                DrawingNote::Unsure(n) => ("drawing-unsure", Some(*n)),
                DrawingNote::Disagree(n) => ("drawing-disagree", Some(*n)),
                DrawingNote::HeartNotHeard(n) => ("drawing-heart-not-heard", Some(*n)),
                DrawingNote::BackSideOnly(n) => ("drawing-back-side-only", Some(*n)),
                DrawingNote::FaceLeads(n) => ("drawing-face-leads", Some(*n)),
                DrawingNote::BrowLeads(n) => ("drawing-brow-leads", Some(*n)),
                DrawingNote::Smaller(n) => ("drawing-smaller", Some(*n)),
                DrawingNote::DoesNotFit(n) => ("drawing-does-not-fit", Some(*n)),
                DrawingNote::SecondIsLower => ("drawing-second-is-lower", None),
            };
            let text = words.say(id, &[])?;
            match baby {
                Some(n) => load::of_baby(text, n - 1, pose.baby_count, words),
                None => Ok(text),
            }
        })
        .collect()
}
