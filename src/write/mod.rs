//! Files. In: a finished `Sheet`, or several for a PDF; panels of words for HTML; a body as a solid. Out: the bytes of an SVG, a PNG,
//! a PDF or a page of HTML, of a glTF or an STL; the same sheet gives the same bytes.

mod glb;
mod html;
mod outline;
mod package;
mod path_data;
mod pdf;
mod png;
mod stl;
mod svg;
mod tags;

pub use glb::glb;
pub use html::{Page, dial, html};
pub use package::package;
pub use pdf::{pdf, pdf_pages};
pub use png::png;
pub use stl::stl;
pub use svg::{TextAs, svg};

use crate::fonts::FontError;
use std::fmt;

/// Why a sheet could not be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WriteError {
    /// A face cannot show a text.
    Font(FontError),
    /// A PNG of this width would be too large, or nothing: width and height in pixels.
    PngSize {
        /// Width asked for.
        width: u32,
        /// Height that follows from it.
        height: u32,
    },
    /// A library refused what it was given; with its reason.
    Refused {
        /// What was being made.
        what: &'static str,
        /// The reason.
        reason: String,
    },
}

impl fmt::Display for WriteError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            WriteError::Font(e) => e.fmt(f),
            WriteError::PngSize { width, height } => write!(
                f,
                "a PNG of {width} x {height} pixels cannot be made; each side may have 1 to {} pixels",
                png::LARGEST_SIDE
            ),
            WriteError::Refused { what, reason } => write!(f, "the {what} could not be made: {reason}"),
        }
    }
}

impl std::error::Error for WriteError {}

impl From<FontError> for WriteError {
    fn from(e: FontError) -> Self {
        WriteError::Font(e)
    }
}
