//! PNG. In: a sheet and a width in pixels. Out: its picture on white paper, drawn from the outlined SVG,
//! with the resolution at which it has the size of the sheet.

use super::path_data::Curves;
use super::svg::document;
use super::{TextAs, WriteError};
use crate::fonts::Fonts;
use crate::sheet::Sheet;
use flate2::Crc;
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
    let drawing = document(sheet, TextAs::Outlines, Curves::Quadratic, fonts)?;
    let tree =
        usvg::Tree::from_str(&drawing, &usvg::Options::default()).map_err(|e| refused(e.to_string()))?;
    let mut pixels = Pixmap::new(width_px, height_px).ok_or(size)?;
    pixels.fill(Color::WHITE);
    let scale =
        Transform::from_scale(width_px as f32 / tree.size().width(), height_px as f32 / tree.size().height());
    resvg::render(&tree, scale, &mut pixels.as_mut());
    let bytes = pixels.encode_png().map_err(|e| refused(e.to_string()))?;
    Ok(with_resolution(bytes, width_px as f32 * 1000.0 / sheet.width_mm))
}

/// The same PNG with its resolution, so that it is printed at the size of the sheet: a `pHYs` chunk (PNG, third edition,
/// 11.3.4.3) after the header, which is the first chunk and always 25 bytes long.
fn with_resolution(png: Vec<u8>, pixels_a_metre: f32) -> Vec<u8> {
    const HEADER: usize = 8 + 25;
    let each = (libm::roundf(pixels_a_metre) as u32).to_be_bytes();
    // The unit is the metre.
    let chunk = [&b"pHYs"[..], &each, &each, &[1]].concat();
    let mut check = Crc::new();
    check.update(&chunk);
    let (header, rest) = png.split_at(HEADER.min(png.len()));
    [header, &9u32.to_be_bytes(), &chunk, &check.sum().to_be_bytes(), rest].concat()
}
