//! The bundled faces. In: a string, a face and a size. Out: its width, its shaped glyphs,
//! their outlines, and subsets to embed. Nothing else is ever loaded.
//!
//! A character without a glyph is an error that names it, never a blank.

mod outline;
mod shape;
mod subset;

use std::fmt;

pub use outline::OutlineStep;
pub use shape::Glyph;
pub use subset::{PdfSubset, pdf_subset, web_subset};

/// The bundled faces.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Face {
    /// Upright text.
    Regular,
    /// Strong text.
    SemiBold,
    /// Slanted text.
    Italic,
}

impl Face {
    /// Every face.
    pub const ALL: [Face; 3] = [Face::Regular, Face::SemiBold, Face::Italic];

    /// The font file, unmodified (SIL Open Font License, `fonts/SourceSans3-OFL.txt`).
    pub fn bytes(self) -> &'static [u8] {
        match self {
            Face::Regular => include_bytes!("../../fonts/SourceSans3-Regular.ttf"),
            Face::SemiBold => include_bytes!("../../fonts/SourceSans3-SemiBold.ttf"),
            Face::Italic => include_bytes!("../../fonts/SourceSans3-Italic.ttf"),
        }
    }

    /// The face's PostScript name.
    pub fn name(self) -> &'static str {
        match self {
            Face::Regular => "SourceSans3-Regular",
            Face::SemiBold => "SourceSans3-SemiBold",
            Face::Italic => "SourceSans3-Italic",
        }
    }

    fn index(self) -> usize {
        match self {
            Face::Regular => 0,
            Face::SemiBold => 1,
            Face::Italic => 2,
        }
    }
}

/// A text that a face cannot show, or a font file that cannot be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FontError {
    /// The face has no glyph for a character.
    MissingGlyph {
        /// The character.
        character: char,
        /// The text it stands in.
        text: String,
        /// The face.
        face: Face,
    },
    /// A bundled font file could not be read or cut down; with the reason.
    Broken {
        /// The face.
        face: Face,
        /// What failed.
        reason: String,
    },
}

impl fmt::Display for FontError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            FontError::MissingGlyph { character, text, face } => write!(
                f,
                "the face {} has no glyph for `{character}` (U+{:04X}), in `{text}`",
                face.name(),
                u32::from(*character)
            ),
            FontError::Broken { face, reason } => {
                write!(f, "the bundled face {} cannot be used: {reason}", face.name())
            }
        }
    }
}

impl std::error::Error for FontError {}

/// Heights of a face, as shares of the type size, all positive.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Heights {
    /// Baseline to the top of a line.
    pub ascent: f32,
    /// Baseline to the bottom of a line.
    pub descent: f32,
    /// Baseline to the top of capitals.
    pub capital: f32,
    /// Baseline to the top of small letters.
    pub small: f32,
}

/// The bundled faces, read once and passed around.
pub struct Fonts {
    loaded: Vec<shape::Loaded>,
}

impl Fonts {
    /// Reads the bundled faces.
    pub fn load() -> Result<Self, FontError> {
        let loaded = Face::ALL.into_iter().map(shape::Loaded::read).collect::<Result<_, _>>()?;
        Ok(Self { loaded })
    }

    fn get(&self, face: Face) -> &shape::Loaded {
        &self.loaded[face.index()]
    }

    /// The glyphs of `text` from left to right, kerned, without ligatures. Measures are shares of the type size.
    pub fn shape(&self, face: Face, text: &str) -> Result<Vec<Glyph>, FontError> {
        self.get(face).shape(text)
    }

    /// The width of `text`, in the units of `size`.
    pub fn measure(&self, face: Face, text: &str, size: f32) -> Result<f32, FontError> {
        Ok(self.shape(face, text)?.iter().map(|g| g.advance).sum::<f32>() * size)
    }

    /// The outlines of `text`, its baseline starting at the origin, y up, in the units of `size`.
    pub fn outline(&self, face: Face, text: &str, size: f32) -> Result<Vec<OutlineStep>, FontError> {
        outline::outline(self.get(face), text, size)
    }

    /// Heights of a face, as shares of the type size.
    pub fn heights(&self, face: Face) -> Heights {
        self.get(face).heights()
    }
}
