//! Outlines of a string. In: a shaped string. Out: one path, y up, in the units of the type size.

use super::FontError;
use super::shape::Loaded;
use skrifa::MetadataProvider;
use skrifa::instance::{LocationRef, Size};
use skrifa::outline::{DrawSettings, OutlinePen};

/// One step of an outline: `x` to the right, `y` up, from the start of the baseline.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum OutlineStep {
    /// Start a new part here.
    Move([f32; 2]),
    /// Straight to here.
    Line([f32; 2]),
    /// A cubic Bezier curve: two control points, then the end.
    Curve([f32; 2], [f32; 2], [f32; 2]),
    /// Back to the start of this part.
    Close,
}

pub(super) fn outline(loaded: &Loaded, text: &str, size: f32) -> Result<Vec<OutlineStep>, FontError> {
    let outlines = loaded.glyphs.outline_glyphs();
    // Drawn in the font's own units and scaled here: scaling inside the library rounds to 1/64.
    let mut pen = Pen { steps: vec![], scale: size / loaded.units, origin: [0.0, 0.0], last: [0.0, 0.0] };
    let mut x = 0.0;
    for glyph in loaded.shape(text)? {
        pen.origin = [(x + glyph.dx) * size, glyph.dy * size];
        if let Some(outline) = outlines.get(u32::from(glyph.id).into()) {
            outline
                .draw(DrawSettings::unhinted(Size::unscaled(), LocationRef::default()), &mut pen)
                .map_err(|e| FontError::Broken { face: loaded.face, reason: e.to_string() })?;
        }
        x += glyph.advance;
    }
    Ok(pen.steps)
}

/// Collects the steps of one glyph after another; quadratic curves become cubic ones, exactly.
struct Pen {
    steps: Vec<OutlineStep>,
    scale: f32,
    origin: [f32; 2],
    last: [f32; 2],
}

impl Pen {
    fn at(&mut self, x: f32, y: f32) -> [f32; 2] {
        [self.origin[0] + x * self.scale, self.origin[1] + y * self.scale]
    }
}

impl OutlinePen for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.last = self.at(x, y);
        self.steps.push(OutlineStep::Move(self.last));
    }
    fn line_to(&mut self, x: f32, y: f32) {
        self.last = self.at(x, y);
        self.steps.push(OutlineStep::Line(self.last));
    }
    fn quad_to(&mut self, cx: f32, cy: f32, x: f32, y: f32) {
        let (start, control, end) = (self.last, self.at(cx, cy), self.at(x, y));
        let towards = |from: [f32; 2]| {
            [from[0] + (control[0] - from[0]) * (2.0 / 3.0), from[1] + (control[1] - from[1]) * (2.0 / 3.0)]
        };
        self.steps.push(OutlineStep::Curve(towards(start), towards(end), end));
        self.last = end;
    }
    fn curve_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32) {
        let (a, b, end) = (self.at(ax, ay), self.at(bx, by), self.at(x, y));
        self.steps.push(OutlineStep::Curve(a, b, end));
        self.last = end;
    }
    fn close(&mut self) {
        self.steps.push(OutlineStep::Close);
    }
}
