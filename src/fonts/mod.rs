//! The bundled faces. In: a string, a face and a size. Out: its width, its shaped glyphs,
//! their outlines, and subsets to embed. Nothing else is ever loaded.

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
