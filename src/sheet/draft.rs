//! A page in a language that nobody has signed. In: a sheet and the word for it. Out: the same sheet with that word, large and
//! pale, under everything.

use super::{Element, Sheet, Tag};
use crate::figure::scene::{Colour, FillRule, Item, Step};
use crate::fonts::{Face, FontError, Fonts, OutlineStep};
use crate::units::PagePoint;

/// Pale enough to be read over, dark enough to be seen on a copy.
const PALE: Colour = Colour::hex(0xE9E2DC);
/// How much of the diagonal the word fills.
const SHARE: f32 = 0.8;

/// Lays `word` across the page, from the lower left to the upper right.
pub fn mark(sheet: &mut Sheet, word: &str, fonts: &Fonts) -> Result<(), FontError> {
    let face = Face::SemiBold;
    let (width, height) = (sheet.width_mm, sheet.height_mm);
    let diagonal = (width * width + height * height).sqrt();
    let size = diagonal * SHARE / fonts.measure(face, word, 1.0)?;
    let (along, up) = (width / diagonal, height / diagonal);
    let half = diagonal * SHARE * 0.5;
    // Along the diagonal from its middle; letters stand upright on it, their middle on it.
    let at = |[x, y]: [f32; 2]| {
        let (x, y) = (x - half, y - 0.33 * size);
        PagePoint::new(width * 0.5 + x * along - y * up, height * 0.5 - x * up - y * along)
    };
    let path = fonts
        .outline(face, word, size)?
        .into_iter()
        .map(|step| match step {
            OutlineStep::Move(p) => Step::Move(at(p)),
            OutlineStep::Line(p) => Step::Line(at(p)),
            OutlineStep::Curve(a, b, p) => Step::Curve(at(a), at(b), at(p)),
            OutlineStep::Close => Step::Close,
        })
        .collect();
    let items = vec![Item::Fill { path, colour: PALE, rule: FillRule::NonZero }];
    sheet.elements.insert(0, Element { tag: Tag::Artifact, items });
    Ok(())
}
