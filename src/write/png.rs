//! PNG. In: a sheet and a width in pixels. Out: its picture on white paper, drawn from the outlined SVG.

use super::{TextAs, WriteError, svg};
use crate::fonts::Fonts;
use crate::sheet::Sheet;
use resvg::tiny_skia::{Color, Pixmap, Transform};

/// The most pixels a side may have.
pub(super) const LARGEST_SIDE: u32 = 16_000;

/// The sheet as a PNG, `width_px` wide.
pub fn png(sheet: &Sheet, width_px: u32, fonts: &Fonts) -> Result<Vec<u8>, WriteError> {
    let refused = |reason: String| WriteError::Refused { what: "PNG", reason };
    let height_px = libm::roundf(width_px as f32 * sheet.height_mm / sheet.width_mm) as u32;
    let sides = 1..=LARGEST_SIDE;
    let size = WriteError::PngSize { width: width_px, height: height_px };
    if !sides.contains(&width_px) || !sides.contains(&height_px) {
        return Err(size);
    }
    let drawing = svg(sheet, TextAs::Outlines, fonts)?;
    let tree =
        usvg::Tree::from_str(&drawing, &usvg::Options::default()).map_err(|e| refused(e.to_string()))?;
    let mut pixels = Pixmap::new(width_px, height_px).ok_or(size)?;
    pixels.fill(Color::WHITE);
    let scale =
        Transform::from_scale(width_px as f32 / tree.size().width(), height_px as f32 / tree.size().height());
    resvg::render(&tree, scale, &mut pixels.as_mut());
    pixels.encode_png().map_err(|e| refused(e.to_string()))
}
