//! Shaping. In: a string. Out: glyphs with their places, each with the characters it stands for.

use super::{Face, FontError, Heights};
use harfrust::{Buffer, Direction, Feature, Font, Script, ShapeOptions, ShapePlan, ShaperFont, Tag};
use skrifa::MetadataProvider;
use skrifa::instance::{LocationRef, Size};
use std::sync::OnceLock;

/// One glyph of a shaped string. Lengths are shares of the type size.
#[derive(Clone, Debug, PartialEq)]
pub struct Glyph {
    /// Glyph id in the whole face.
    pub id: u16,
    /// From this glyph's pen position to the next, kerning included.
    pub advance: f32,
    /// The advance without kerning, as the face's own table has it.
    pub width: f32,
    /// Shift to the right of the pen position.
    pub dx: f32,
    /// Shift up from the baseline.
    pub dy: f32,
    /// The characters it stands for; empty when an earlier glyph already stands for them.
    pub text: String,
}

/// A face that has been read.
pub(super) struct Loaded {
    pub(super) face: Face,
    font: Font,
    pub(super) glyphs: skrifa::FontRef<'static>,
    pub(super) units: f32,
    /// How Latin text is shaped, and text of digits and signs alone: worked out once, it costs more than shaping.
    latin: OnceLock<ShapePlan>,
    neutral: OnceLock<ShapePlan>,
}

/// One glyph a character wherever the face allows it: a PDF keeps one string a glyph, and a browser without the
/// layout tables would draw no ligature.
fn features() -> [Feature; 3] {
    let off = |tag: &[u8; 4]| Feature::new(Tag::new(tag), 0, ..);
    [off(b"liga"), off(b"clig"), off(b"dlig")]
}

impl Loaded {
    pub(super) fn read(face: Face) -> Result<Self, FontError> {
        let broken = |reason: &str| FontError::Broken { face, reason: reason.to_owned() };
        let font = Font::new(face.bytes(), 0).ok_or_else(|| broken("it is not a font"))?;
        let glyphs = skrifa::FontRef::new(face.bytes()).map_err(|e| broken(&e.to_string()))?;
        let units = f32::from(font.units_per_em());
        Ok(Self { face, font, glyphs, units, latin: OnceLock::new(), neutral: OnceLock::new() })
    }

    pub(super) fn shape(&self, text: &str) -> Result<Vec<Glyph>, FontError> {
        let mut buffer = Buffer::new();
        buffer.push_str(text);
        buffer.guess_segment_properties();
        let features = features();
        let options = ShapeOptions::new().features(&features).plan(self.plan(&buffer));
        harfrust::shape(&ShaperFont::new(&self.font), &mut buffer, options)
            .map_err(|e| FontError::Broken { face: self.face, reason: e.to_string() })?;

        let infos = buffer.glyph_infos();
        let widths = self.glyphs.glyph_metrics(Size::unscaled(), LocationRef::default());
        let mut glyphs = Vec::with_capacity(infos.len());
        for (i, (info, place)) in infos.iter().zip(buffer.glyph_positions()).enumerate() {
            let start = info.cluster as usize;
            let first = i == 0 || infos[i - 1].cluster != info.cluster;
            let end = infos[i + 1..]
                .iter()
                .map(|next| next.cluster as usize)
                .find(|&next| next != start)
                .unwrap_or(text.len());
            let stands_for = text.get(start..end).unwrap_or_default();
            if info.glyph_id == 0 {
                return Err(FontError::MissingGlyph {
                    character: stands_for.chars().next().unwrap_or(char::REPLACEMENT_CHARACTER),
                    text: text.to_owned(),
                    face: self.face,
                });
            }
            glyphs.push(Glyph {
                id: info.glyph_id as u16,
                advance: place.x_advance as f32 / self.units,
                width: widths.advance_width(info.glyph_id.into()).unwrap_or_default() / self.units,
                dx: place.x_offset as f32 / self.units,
                dy: place.y_offset as f32 / self.units,
                text: if first { stands_for.to_owned() } else { String::new() },
            });
        }
        Ok(glyphs)
    }

    /// The plan that was kept for such text, if it is of a kind that is kept.
    fn plan(&self, buffer: &Buffer) -> Option<&ShapePlan> {
        if buffer.direction() != Direction::LeftToRight || buffer.language().is_some() {
            return None;
        }
        let script = buffer.script();
        let kept = match script {
            Some(Script::LATIN) => &self.latin,
            None => &self.neutral,
            Some(_) => return None,
        };
        Some(
            kept.get_or_init(|| {
                ShapePlan::new(&self.font, Direction::LeftToRight, script, None, &features())
            }),
        )
    }

    pub(super) fn heights(&self) -> Heights {
        let m = self.glyphs.metrics(Size::unscaled(), LocationRef::default());
        let share = |units: f32| units / self.units;
        Heights {
            ascent: share(m.ascent),
            descent: share(-m.descent),
            capital: share(m.cap_height.unwrap_or(m.ascent)),
            small: share(m.x_height.unwrap_or(m.ascent * 0.5)),
        }
    }
}
