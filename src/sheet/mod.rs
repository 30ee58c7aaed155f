//! Sheets: pages laid out in mm. In: a layout file, figures in cm, and the words. Out: `Sheet`, a list of
//! tagged elements in reading order, ready for the writers.
//!
//! The picture's scale comes first ([`Layout::mm_per_cm`]), so that a figure is drawn knowing its real
//! type sizes; then [`compose`] puts everything on the page. The y axis is turned down here and nowhere else.

mod beside;
mod compose;
mod content;
mod draft;
pub mod family;
mod layout;
mod layout_file;
mod panels;
mod place;
mod set;
mod signs;
pub mod skin;

pub use beside::beside;
pub use compose::{compose, compose_all};
pub use content::{Block, Cell, Content, Kind, Shown};
pub use draft::mark as mark_as_draft;
pub use layout::{
    CASE, CASE_KEY, CHART_SLIP, CHART_SLIPS, COLOURING, Edge, FAMILY_PAGE, FAMILY_PAGE_LONG, GROWTH,
    LARGE_PRINT, LARGE_PRINT_LONG, Layout, LayoutError, ONE_SIDE, PHONE_PICTURE, PICTURE, PICTURE_FIRST,
    PICTURE_FIRST_LONG, Paper, PictureLook, REVIEW, SHIPPED, SKETCH, SKIN_GUIDE, SKIN_GUIDE_BACK,
    SKIN_GUIDE_MINUTE, Shipped, nearest,
};
pub use panels::{Grid, Panel};
pub use signs::Sign;

use crate::figure::scene::Item;
use crate::fonts::FontError;
use crate::units::PagePoint;
use crate::words::WordsError;
use std::fmt;

/// What an element is to someone who hears the page or jumps through it.
#[derive(Clone, Debug, PartialEq)]
pub enum Tag {
    /// The page's title.
    H1,
    /// The heading of a part.
    H2,
    /// A paragraph.
    P,
    /// A point of a list; neighbours with the same number are one list.
    Item {
        /// Which list of the sheet.
        list: usize,
    },
    /// A cell of a table; neighbours with the same number are one table.
    Cell {
        /// Which table of the sheet.
        table: usize,
        /// Its row, from 0.
        row: u16,
        /// Whether it names its column (in row 0) or its row.
        head: bool,
    },
    /// A picture.
    Figure {
        /// The picture in words.
        alt: String,
    },
    /// A small picture that stands before a point of a list.
    Sign {
        /// The list of that point.
        list: usize,
        /// What it shows.
        alt: String,
    },
    /// Decoration: not read out.
    Artifact,
}

/// A tagged piece of a page with its marks, in mm from the top left corner.
#[derive(Clone, Debug, PartialEq)]
pub struct Element {
    /// What it is.
    pub tag: Tag,
    /// Its marks, in painting order.
    pub items: Vec<Item<PagePoint>>,
}

/// A finished page.
#[derive(Clone, Debug, PartialEq)]
pub struct Sheet {
    /// Width in mm.
    pub width_mm: f32,
    /// Height in mm.
    pub height_mm: f32,
    /// Its title.
    pub title: String,
    /// Language tag of its words.
    pub lang: String,
    /// The sheet in words, for someone who cannot see it.
    pub description: String,
    /// Everything on it, in reading order, which is also the painting order.
    pub elements: Vec<Element>,
}

/// Why a sheet could not be made.
#[derive(Clone, Debug, PartialEq)]
pub enum SheetError {
    /// A layout file is at fault.
    Layout(LayoutError),
    /// A message is missing or incomplete.
    Words(WordsError),
    /// A face cannot show a text.
    Font(FontError),
    /// The words or the picture of a box do not fit.
    DoesNotFit {
        /// The layout file.
        layout: String,
        /// The box.
        name: String,
        /// What is too large, and by how much.
        detail: String,
    },
    /// A layout names words that there are none of.
    NoWords {
        /// The layout file.
        layout: String,
        /// The box.
        name: String,
        /// What it names.
        id: String,
        /// The nearest that there are, between backticks.
        near: Option<String>,
    },
    /// The layout has several sides where one is wanted, or none that holds anything.
    Sides {
        /// The layout file.
        layout: String,
        /// Its sides.
        sides: usize,
    },
    /// The layout has room for another number of pictures than there are.
    Pictures {
        /// The layout file.
        layout: String,
        /// Boxes for pictures.
        boxes: usize,
        /// Pictures given.
        given: usize,
    },
}

impl fmt::Display for SheetError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            SheetError::Layout(e) => e.fmt(f),
            SheetError::Words(e) => e.fmt(f),
            SheetError::Font(e) => e.fmt(f),
            SheetError::DoesNotFit { layout, name, detail } => {
                write!(f, "{layout}: box `{name}`: {detail}")
            }
            SheetError::NoWords { layout, name, id, near } => {
                write!(f, "{layout}: box `{name}`: there is no message `{id}`")?;
                match near {
                    Some(near) => write!(f, "; did you mean {near}?"),
                    None => Ok(()),
                }
            }
            SheetError::Sides { layout, sides: 0 } => {
                write!(f, "{layout}: nothing stands in any box of the layout: give one of them `holds`")
            }
            SheetError::Sides { layout, sides } => {
                write!(f, "{layout}: the layout has {sides} sides with something on them; one is wanted here")
            }
            SheetError::Pictures { layout, boxes, given } => {
                write!(f, "{layout}: the layout holds {boxes} pictures, but {given} were given")
            }
        }
    }
}

impl std::error::Error for SheetError {}

impl From<LayoutError> for SheetError {
    fn from(e: LayoutError) -> Self {
        SheetError::Layout(e)
    }
}
impl From<WordsError> for SheetError {
    fn from(e: WordsError) -> Self {
        SheetError::Words(e)
    }
}
impl From<FontError> for SheetError {
    fn from(e: FontError) -> Self {
        SheetError::Font(e)
    }
}
