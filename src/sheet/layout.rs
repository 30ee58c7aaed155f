//! What a layout is: paper, margins and boxes. In: the text of a layout file, read by `layout_file`. Out: `Layout`.

use super::layout_file;
use crate::figure::{Labels, Style};
use crate::report::Problem;
use std::fmt;

/// A layout that is shipped: its name, what it is for, the text of its file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Shipped {
    /// The name to ask for it by, which is its file's without the ending.
    pub name: &'static str,
    /// What it is, in a few words.
    pub about: &'static str,
    /// The file.
    pub text: &'static str,
}

impl Shipped {
    /// The same with more sides, for words that do not fit on its own.
    pub fn longer(&self) -> Option<Shipped> {
        match self.name {
            name if name == ONE_SIDE.name => Some(FAMILY_PAGE),
            name if name == FAMILY_PAGE.name => Some(FAMILY_PAGE_LONG),
            name if name == LARGE_PRINT.name => Some(LARGE_PRINT_LONG),
            name if name == PICTURE_FIRST.name => Some(PICTURE_FIRST_LONG),
            _ => None,
        }
    }

    /// The layout.
    pub fn read(&self) -> Result<Layout, LayoutError> {
        Layout::read(&format!("{}.toml", self.name), self.text)
    }
}

macro_rules! shipped {
    ($name:literal, $about:literal) => {
        Shipped { name: $name, about: $about, text: include_str!(concat!("../../layouts/", $name, ".toml")) }
    };
}

/// The family page.
pub const FAMILY_PAGE: Shipped = shipped!("family-page", "in front to keep, on the back when to call");
/// The family page in large type.
pub const LARGE_PRINT: Shipped = shipped!("large-print", "the same words in large type, four sides");
/// The large type where its words need more room than three sides.
pub const LARGE_PRINT_LONG: Shipped =
    shipped!("large-print-long", "the same over seven sides, for longer words");
/// The family page where its words need more room than two sides.
pub const FAMILY_PAGE_LONG: Shipped =
    shipped!("family-page-long", "the same over three sides, for longer words");
/// The family page on one side.
pub const ONE_SIDE: Shipped = shipped!("one-side", "the same on one side, the picture smaller");
/// For people who read little.
pub const PICTURE_FIRST: Shipped =
    shipped!("picture-first", "a large picture and few words; lists with signs");
/// The same where its words need more room than two sides.
pub const PICTURE_FIRST_LONG: Shipped =
    shipped!("picture-first-long", "the same over four sides, for longer words");
/// The picture alone.
pub const PICTURE: Shipped = shipped!("picture", "the picture alone");
/// The picture on the page for a telephone: as broad as its screen, so that its labels can be read there.
pub const PHONE_PICTURE: Shipped = shipped!("phone-picture", "the picture on the page for a telephone");
/// For sisters and brothers.
pub const COLOURING: Shipped = shipped!("colouring", "the picture in lines, to colour in");
/// The slip for the chart.
pub const CHART_SLIP: Shipped = shipped!("chart-slip", "a slip for the chart, half a sheet");
/// Two slips on a sheet.
pub const CHART_SLIPS: Shipped = shipped!("chart-slips", "two slips for the chart, on one sheet to cut");
/// The tape over the visits.
pub const GROWTH: Shipped = shipped!("growth", "the tape over the visits");
/// The stamp for the chart.
pub const SKETCH: Shipped = shipped!("sketch", "a stamp for the chart, 4 cm wide");
/// The guide for drawing on skin: its first side.
pub const SKIN_GUIDE: Shipped = shipped!("skin-guide", "the guide for drawing on skin, beside the bed");
/// The same for a minute.
pub const SKIN_GUIDE_MINUTE: Shipped =
    shipped!("skin-guide-minute", "the guide for drawing on skin in a minute, beside the bed");
/// Its second side.
pub const SKIN_GUIDE_BACK: Shipped = shipped!("skin-guide-back", "the guide for drawing on skin, its back");
/// The sheet of a practice case.
pub const CASE: Shipped = shipped!("case", "a practice case");
/// The key of a practice case.
pub const CASE_KEY: Shipped = shipped!("case-key", "the key of a practice case");

/// The book in which a language is read.
pub const REVIEW: Shipped = shipped!("review", "the book in which a language is read");

/// Every layout that is shipped.
pub const SHIPPED: [Shipped; 13] = [
    FAMILY_PAGE,
    ONE_SIDE,
    FAMILY_PAGE_LONG,
    LARGE_PRINT,
    LARGE_PRINT_LONG,
    PICTURE_FIRST,
    PICTURE_FIRST_LONG,
    PICTURE,
    COLOURING,
    CHART_SLIP,
    CHART_SLIPS,
    GROWTH,
    SKETCH,
];

/// Millimetres in a point.
pub(super) const MM_PER_PT: f32 = 25.4 / 72.0;

/// The problems of a layout file, one at least.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LayoutError {
    /// What is wrong, sorted by place.
    pub problems: Vec<Problem>,
}

impl LayoutError {
    pub(super) fn one(problem: Problem) -> Self {
        Self { problems: vec![problem] }
    }
}

/// A line for each problem.
impl fmt::Display for LayoutError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (at, problem) in self.problems.iter().enumerate() {
            if at > 0 {
                f.write_str("\n")?;
            }
            f.write_str(&problem.file)?;
            if let Some(place) = &problem.place {
                write!(f, ":{}:{}", place.line, place.column)?;
            }
            write!(f, ": {}", problem.message)?;
            if let Some(expected) = &problem.expected {
                write!(f, "; expected {expected}")?;
            }
            if let Some(near) = &problem.suggestion {
                write!(f, "; did you mean {near}?")?;
            }
        }
        Ok(())
    }
}

impl std::error::Error for LayoutError {}

/// What a page is printed on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Paper {
    /// 210 x 297 mm.
    A4,
    /// 8.5 x 11 inches.
    Letter,
    /// 297 x 420 mm.
    A3,
    /// Width and height in mm.
    Size(f32, f32),
    /// As large as the picture, at so many mm for each cm of the body.
    AsPicture(f32),
}

/// Papers by their names.
pub(super) const PAPERS: [(&str, Paper); 3] =
    [("a4", Paper::A4), ("letter", Paper::Letter), ("a3", Paper::A3)];
/// What a paper may be, for messages.
pub(super) const PAPER_EXPECTED: &str = "a4, letter, a3, or a size such as \"120 x 80 mm\"";

impl Paper {
    /// Width and height in mm; where the picture decides, its scale.
    pub(super) fn size(self) -> Result<(f32, f32), f32> {
        match self {
            Paper::A4 => Ok((210.0, 297.0)),
            Paper::Letter => Ok((215.9, 279.4)),
            Paper::A3 => Ok((297.0, 420.0)),
            Paper::Size(width, height) => Ok((width, height)),
            Paper::AsPicture(scale) => Err(scale),
        }
    }

    /// From `a4`, `letter`, `a3` or a size such as `120 x 80 mm`.
    pub fn named(word: &str) -> Option<Self> {
        let known = PAPERS.iter().find(|(name, _)| *name == word).map(|(_, paper)| *paper);
        known.or_else(|| size_in_mm(word).map(|(w, h)| Paper::Size(w, h)))
    }
}

/// What stands in a box.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Holds {
    Picture,
    Words(String),
    Lines(u8),
}

/// How a box is set off from the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edge {
    /// Not at all.
    None,
    /// By a thin line.
    Line,
    /// For what matters most.
    Bold,
}

/// How a layout wants a picture; what it leaves open is the command's.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PictureLook {
    /// How it is painted.
    pub style: Option<Style>,
    /// What is named.
    pub labels: Option<Labels>,
    /// Type of the labels, points.
    pub type_pt: Option<f32>,
}

/// A box of the page's grid.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Place {
    pub name: String,
    pub holds: Vec<Holds>,
    /// The side it stands on, from 1.
    pub page: u16,
    /// First and last row, from 1.
    pub rows: (u16, u16),
    /// First and last column, from 1.
    pub columns: (u16, u16),
    pub type_pt: f32,
    /// The smallest type it may be set in.
    pub may_shrink_pt: f32,
    /// The smallest height of a picture, in mm.
    pub at_least_mm: f32,
    pub edge: Edge,
    pub padding_mm: f32,
    /// Over the words, and under them.
    pub padding_top_mm: f32,
    pub padding_bottom_mm: f32,
    pub picture: PictureLook,
    /// Whether small pictures stand beside its words.
    pub signs: bool,
    /// Whether paragraphs of running text that follow one another are one.
    pub joined: bool,
}

impl Place {
    pub fn is_picture(&self) -> bool {
        self.holds.contains(&Holds::Picture)
    }
    /// Over and under the words together, in mm.
    pub fn padding_height_mm(&self) -> f32 {
        self.padding_top_mm + self.padding_bottom_mm
    }
}

/// A layout: paper, margins and boxes.
#[derive(Clone, Debug, PartialEq)]
pub struct Layout {
    pub(super) file: String,
    pub(super) paper: Paper,
    pub(super) margin_mm: f32,
    /// The smallest type that a box may have, points.
    pub(super) smallest_pt: f32,
    pub(super) columns: u16,
    pub(super) column_gap_mm: f32,
    pub(super) row_gap_mm: f32,
    /// How many copies stand on a sheet, side by side and one under the other.
    pub(super) copies: (u16, u16),
    /// Whether it is one of so many sides that their number stands at its foot: sheets that may come apart.
    pub(super) is_numbered: bool,
    pub(super) boxes: Vec<Place>,
}

/// Sides that one sheet of paper has: more are numbered.
const ONE_SHEET: usize = 2;

impl Layout {
    /// The layout in `text`; `file` is its name in messages.
    pub fn read(file: &str, text: &str) -> Result<Self, LayoutError> {
        layout_file::read(file, text)
    }

    /// The smallest type it may use, in points.
    pub fn smallest_type_pt(&self) -> f32 {
        self.smallest_pt
    }

    /// What lies between its margins across, in mm; `None` where the paper follows the picture.
    pub fn width_mm(&self) -> Option<f32> {
        self.paper.size().ok().map(|(width, _)| width - 2.0 * self.margin_mm)
    }

    /// The same layout on another paper: `a4`, `letter`, `a3`, or a size in mm.
    pub fn on_paper(mut self, word: &str) -> Result<Self, LayoutError> {
        self.paper = Paper::named(word).ok_or_else(|| {
            LayoutError::one(
                Problem::of_file("layout-value", &self.file, format!("paper `{word}` is not known"))
                    .expecting(PAPER_EXPECTED)
                    .suggesting(nearest(word, &PAPERS.map(|(name, _)| name))),
            )
        })?;
        Ok(self)
    }

    /// The same layout with words that may shrink to this size, points: for a language with longer words.
    pub fn shrinking_to(mut self, pt: f32) -> Self {
        for place in self.boxes.iter_mut().filter(|place| !place.is_picture()) {
            place.may_shrink_pt = place.may_shrink_pt.min(pt);
        }
        self
    }

    /// The same layout with this smallest height of the picture in a box, mm.
    pub fn with_picture_at_least(mut self, name: &str, mm: f32) -> Self {
        for place in self.boxes.iter_mut().filter(|place| place.is_picture() && place.name == name) {
            place.at_least_mm = mm;
        }
        self
    }

    /// Its file, as it is named in messages.
    pub fn file(&self) -> &str {
        &self.file
    }

    /// How its pictures are wanted, each with the name of its box, in the order in which they are given to be composed.
    pub fn pictures(&self) -> Vec<(String, PictureLook)> {
        let pages = self.pages();
        let boxes = pages.iter().flat_map(|page| &page.boxes);
        boxes.filter(|b| b.is_picture()).map(|b| (b.name.clone(), b.picture)).collect()
    }

    /// Whether it holds pictures alone.
    pub fn is_without_words(&self) -> bool {
        self.boxes.iter().all(|b| b.is_picture() || b.holds.is_empty())
    }

    /// A layout for each side, in their order.
    pub(super) fn pages(&self) -> Vec<Layout> {
        let mut numbers: Vec<u16> = self.boxes.iter().map(|b| b.page).collect();
        numbers.sort_unstable();
        numbers.dedup();
        let several = numbers.len() > ONE_SHEET;
        let of = |number: u16| {
            let boxes = self.boxes.iter().filter(|b| b.page == number).cloned().collect();
            Layout { boxes, is_numbered: several, ..self.clone() }
        };
        numbers.into_iter().map(of).collect()
    }
}

/// `120 x 80 mm`, each side from 20 to 2000 mm.
fn size_in_mm(word: &str) -> Option<(f32, f32)> {
    let (w, h) = word.strip_suffix("mm")?.split_once('x')?;
    let side = |s: &str| s.trim().parse::<f32>().ok().filter(|mm| (20.0..=2000.0).contains(mm));
    Some((side(w)?, side(h)?))
}

/// The known word that is close, between backticks.
pub fn nearest(word: &str, known: &[&str]) -> Option<String> {
    known
        .iter()
        .map(|k| (strsim::damerau_levenshtein(word, k), *k))
        .min()
        .filter(|(distance, k)| *distance <= 1 + k.len() / 3)
        .map(|(_, k)| format!("`{k}`"))
}
