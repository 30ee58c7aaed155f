//! What a layout is: paper, margins and boxes. In: the text of a layout file, read by `layout_file`. Out: `Layout`.

use super::layout_file;
use std::fmt;

/// The picture alone: file name and text.
pub const PICTURE: (&str, &str) = ("picture.toml", include_str!("../../layouts/picture.toml"));
/// The stamp for the chart: file name and text.
pub const SKETCH: (&str, &str) = ("sketch.toml", include_str!("../../layouts/sketch.toml"));
/// The slip for the chart: file name and text.
pub const CHART_SLIP: (&str, &str) = ("chart-slip.toml", include_str!("../../layouts/chart-slip.toml"));
/// The tape over the visits: file name and text.
pub const GROWTH: (&str, &str) = ("growth.toml", include_str!("../../layouts/growth.toml"));
/// The family page: file name and text.
pub const FAMILY_PAGE: (&str, &str) = ("family-page.toml", include_str!("../../layouts/family-page.toml"));

/// Millimetres in a point.
pub(super) const MM_PER_PT: f32 = 25.4 / 72.0;

/// A problem in a layout file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LayoutError {
    /// The file.
    pub file: String,
    /// Line and column, from 1, where known.
    pub place: Option<(usize, usize)>,
    /// What is wrong and what would be right.
    pub message: String,
}

impl fmt::Display for LayoutError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.place {
            Some((line, column)) => write!(f, "{}:{line}:{column}: {}", self.file, self.message),
            None => write!(f, "{}: {}", self.file, self.message),
        }
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
    /// Width and height in mm.
    Size(f32, f32),
    /// As large as the picture, at so many mm for each cm of the body.
    AsPicture(f32),
}

impl Paper {
    /// Width and height in mm; where the picture decides, its scale.
    pub(super) fn size(self) -> Result<(f32, f32), f32> {
        match self {
            Paper::A4 => Ok((210.0, 297.0)),
            Paper::Letter => Ok((215.9, 279.4)),
            Paper::Size(width, height) => Ok((width, height)),
            Paper::AsPicture(scale) => Err(scale),
        }
    }

    /// From `a4`, `letter` or a size such as `120 x 80 mm`.
    pub fn named(word: &str) -> Result<Self, String> {
        match word {
            "a4" => Ok(Paper::A4),
            "letter" => Ok(Paper::Letter),
            _ => match size_in_mm(word) {
                Some((w, h)) => Ok(Paper::Size(w, h)),
                None => Err(format!(
                    "paper `{word}` is not known{}; write a4, letter, or a size such as \"120 x 80 mm\"",
                    nearest(word, &["a4", "letter"])
                )),
            },
        }
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
pub(super) enum Edge {
    None,
    Line,
}

/// A box of the page's grid.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Place {
    pub name: String,
    pub holds: Vec<Holds>,
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
    pub(super) boxes: Vec<Place>,
}

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

    /// The same layout on another paper: `a4`, `letter`, or a size in mm.
    pub fn on_paper(mut self, word: &str) -> Result<Self, LayoutError> {
        self.paper = Paper::named(word).map_err(|message| LayoutError {
            file: self.file.clone(),
            place: None,
            message,
        })?;
        Ok(self)
    }
}

/// `120 x 80 mm`, each side from 20 to 2000 mm.
fn size_in_mm(word: &str) -> Option<(f32, f32)> {
    let (w, h) = word.strip_suffix("mm")?.split_once('x')?;
    let side = |s: &str| s.trim().parse::<f32>().ok().filter(|mm| (20.0..=2000.0).contains(mm));
    Some((side(w)?, side(h)?))
}

/// `; did you mean ...?` when a known word is close.
pub(super) fn nearest(word: &str, known: &[&str]) -> String {
    known
        .iter()
        .map(|k| (strsim::damerau_levenshtein(word, k), *k))
        .min()
        .filter(|(distance, k)| *distance <= 1 + k.len() / 3)
        .map(|(_, k)| format!(", did you mean `{k}`?"))
        .unwrap_or_default()
}
