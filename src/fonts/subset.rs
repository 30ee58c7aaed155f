//! Faces cut down to what a page uses. In: a face and the glyphs used. Out: a font file to embed.

use super::{Face, FontError};
use allsorts::binary::read::ReadScope;
use allsorts::font_data::FontData;
use allsorts::subset::{CmapTarget, SubsetProfile};
use std::collections::{BTreeMap, BTreeSet};

/// A subset for a PDF: a font file without a character map, and the new glyph ids.
#[derive(Clone, Debug)]
pub struct PdfSubset {
    /// The font file.
    pub bytes: Vec<u8>,
    /// From glyph ids of the whole face to glyph ids of the subset.
    pub ids: BTreeMap<u16, u16>,
}

/// The subset of `face` with the glyphs `used`, for a PDF.
pub fn pdf_subset(face: Face, used: &BTreeSet<u16>) -> Result<PdfSubset, FontError> {
    let mut remapper = subsetter::GlyphRemapper::new();
    let ids = used.iter().map(|&id| (id, remapper.remap(id))).collect();
    let bytes = subsetter::subset(face.bytes(), 0, &remapper)
        .map_err(|e| FontError::Broken { face, reason: e.to_string() })?;
    Ok(PdfSubset { bytes, ids })
}

/// The subset of `face` with the glyphs `used`, for a browser: with the character map that browsers demand.
pub fn web_subset(face: Face, used: &BTreeSet<u16>) -> Result<Vec<u8>, FontError> {
    let broken = |reason: String| FontError::Broken { face, reason };
    let file = ReadScope::new(face.bytes()).read::<FontData<'_>>().map_err(|e| broken(e.to_string()))?;
    let tables = file.table_provider(0).map_err(|e| broken(e.to_string()))?;
    // Glyph 0 stands for "no glyph" and must be there.
    let ids: Vec<u16> = std::iter::once(0).chain(used.iter().copied().filter(|&id| id != 0)).collect();
    allsorts::subset::subset(&tables, &ids, &SubsetProfile::Minimal, CmapTarget::Unicode)
        .map_err(|e| broken(e.to_string()))
}
