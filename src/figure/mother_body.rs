//! Her body: outline, breasts, ribs, groins, and the marks of her skin. In: `MotherShape`. Out: items, painted first.

use crate::body::mother::MotherShape;
use crate::figure::mother::{MotherLook, SkinMarks};
use crate::figure::mother_ink::{brush, brushes, ellipse, fill, fine_lines, flat, points, stroke};
use crate::figure::mother_palette::MotherStyle;
use crate::figure::scene::{Item, Path};
use crate::figure::smooth::{both_sides, cornered};
use crate::units::{FigurePoint, MotherSide};

/// Heights at which the flank's outline is drawn, from above; the first lies behind the breast.
const LEVELS: [f32; 7] = [35.5, 28.0, 20.5, 13.0, 5.5, -3.5, -15.5];
/// The breast on her left, from the inside round its lower line to the outside.
const BREAST: [(f32, f32); 7] =
    [(1.5, 40.5), (2.5, 36.6), (5.6, 33.4), (9.8, 32.2), (13.6, 33.5), (15.9, 37.0), (16.1, 40.5)];
/// The fold between belly and thigh on her left, from the hip to the midline.
const GROIN: [(f32, f32); 4] = [(15.6, 0.2), (11.2, -5.5), (6.3, -10.2), (1.6, -13.2)];

/// The flank's outline on her left, moved inwards by up to `inset` cm: most where the belly is round.
pub(super) fn flank(shape: &MotherShape, inset: f32) -> Vec<FigurePoint> {
    LEVELS
        .map(|y| {
            let round = 1.0 - ((y - 12.0) / 34.0) * ((y - 12.0) / 34.0);
            FigurePoint::new(shape.half_width(f64::from(y)) as f32 - inset * round, y)
        })
        .into()
}

/// The silhouette between the picture's upper and lower edge, moved inwards by `right` cm on her right (the lit
/// side) and `left` cm on her left.
fn silhouette(shape: &MotherShape, right: f32, left: f32) -> Vec<Vec<FigurePoint>> {
    let other = flank(shape, right).iter().rev().map(|p| FigurePoint::new(-p.x, p.y)).collect();
    vec![points(&[(13.0, 41.0)]), flank(shape, left), other, points(&[(-13.0, 41.0)])]
}

/// One path of several closed outlines with a corner at their ends.
fn together(outlines: &[Vec<Vec<FigurePoint>>]) -> Path<FigurePoint> {
    outlines.iter().flat_map(|outline| cornered(outline)).collect()
}

/// The body and what lies on its skin, without womb and bones.
pub fn draw(shape: &MotherShape, skin: &SkinMarks, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let mut items = Vec::new();
    let soft = look.style == MotherStyle::Soft;
    if soft {
        body_tones(shape, look, &mut items);
    }
    items.push(fine_lines(&both_sides(&flank(shape, 0.0)), if soft { 0.085 } else { 0.075 }, p.ink));
    breasts(look, &mut items);
    items.push(brushes(&both_sides(&points(&GROIN)), 0.07, p.soft_ink));
    let ribs = [MotherSide::Left, MotherSide::Right].map(|side| flat(&shape.rib_margin(side)));
    items.push(fine_lines(&ribs, if soft { 0.05 } else { 0.035 }, p.faint));
    skin_marks(shape, skin, 0.0, look, &mut items);
    items
}

pub(super) fn body_tones(shape: &MotherShape, look: &MotherLook, items: &mut Vec<Item<FigurePoint>>) {
    let p = &look.palette;
    for (right, left, colour) in
        [(0.0, 0.0, p.shade[2]), (0.3, 0.9, p.shade[1]), (0.8, 2.1, p.shade[0]), (1.7, 4.0, p.skin)]
    {
        items.push(fill(cornered(&silhouette(shape, right, left)), colour));
    }
    // A shadow under the fold of the groin.
    let thigh = both_sides(&points(&GROIN)).map(|side| {
        let n = side.len() - 1;
        let under = (0..=n).rev().map(|i| {
            let share = i as f32 / n as f32;
            FigurePoint::new(side[i].x, side[i].y - 4.4 * share * (1.0 - share))
        });
        vec![side.clone(), under.collect()]
    });
    items.push(fill(together(&thigh), p.shade[0]));
    // The belly comes forward: the further on in the weeks, the rounder, with a crescent of shade away from the light.
    let grown = ((shape.curve.rise() - 1.0) / 13.0).clamp(0.0, 1.2) as f32;
    let broad = shape.half_width(13.0) as f32 - 5.2 + 2.4 * grown;
    let tall = 11.5 + 2.9 * grown;
    let middle = 0.5 * shape.navel_y as f32 + 4.7;
    for (x, y, size, colour) in [
        (0.8, -0.9, 1.03, p.skin.mix(p.shade[1], 0.65 * grown.min(1.0))),
        (-0.4, 0.4, 0.97, p.skin.mix(p.light, 0.4)),
        (-1.5, 1.5, 0.76, p.light),
    ] {
        let at = FigurePoint::new(x, middle + y);
        items.push(fill(ellipse(at, broad * size, tall * size), colour));
    }
}

/// Both breasts: the shadow under them, their rounds, their lower lines.
fn breasts(look: &MotherLook, items: &mut Vec<Item<FigurePoint>>) {
    let p = &look.palette;
    let sides = both_sides(&points(&BREAST));
    if look.style == MotherStyle::Soft {
        let shadows = [1.0f32, -1.0].map(|sign| {
            let side = if sign > 0.0 { &sides[0] } else { &sides[1] };
            let under = side[1..6].iter().map(|q| {
                let share = (1.0 - ((q.x * sign - 8.6) / 7.0) * ((q.x * sign - 8.6) / 7.0)).max(0.0);
                FigurePoint::new(q.x + 0.3 * share, q.y - 1.3 * share)
            });
            vec![under.collect(), side[1..6].iter().rev().copied().collect()]
        });
        items.push(fill(together(&shadows), p.shade[0]));
        for (size, shift, colour) in [(1.0, 0.0, p.shade[0]), (0.9, 0.3, p.skin.mix(p.light, 0.4))] {
            let rounds = [1.0f32, -1.0].map(|sign| {
                let side = if sign > 0.0 { &sides[0] } else { &sides[1] };
                let middle = 9.2 * sign;
                let round = |q: &FigurePoint| {
                    FigurePoint::new(middle + (q.x - middle) * size - shift, 41.0 - (41.0 - q.y) * size)
                };
                vec![side.iter().map(round).collect::<Vec<_>>()]
            });
            items.push(fill(together(&rounds), colour));
        }
    } else {
        items.push(fill(together(&sides.clone().map(|side| vec![side])), p.skin));
    }
    items.push(fine_lines(&sides, 0.085, p.ink));
}

/// The dark line of the midline, from under the breastbone to the pubic bone.
pub fn linea_nigra(shape: &MotherShape, look: &MotherLook) -> Item<FigurePoint> {
    let p = &look.palette;
    let top = shape.xiphoid_y() as f32 - 2.0;
    let line = points(&[(0.0, top), (0.05, 0.6 * top), (-0.04, 0.3 * top), (0.0, 0.8)]);
    match look.style {
        MotherStyle::Soft => brush(&line, 0.14, p.womb_shade[2].mix(p.soft_ink, 0.5)),
        MotherStyle::Line => brush(&line, 0.07, p.ink),
    }
}

/// Stretch marks, `lift` cm higher than they lie on her bare, and a rash.
pub(super) fn skin_marks(
    shape: &MotherShape,
    skin: &SkinMarks,
    lift: f64,
    look: &MotherLook,
    items: &mut Vec<Item<FigurePoint>>,
) {
    let p = &look.palette;
    if skin.striae {
        // Short curved strokes low on both flanks.
        for (x, y, long) in [
            (0.74, 9.4, 2.4),
            (0.79, 7.2, 2.8),
            (0.84, 9.2, 2.4),
            (0.89, 6.6, 2.2),
            (0.76, 4.6, 1.8),
            (0.86, 4.0, 1.7),
        ] {
            let y = y + lift;
            let wide = shape.half_width(y) as f32;
            let (x, y) = (x as f32 * wide, y as f32);
            let line = points(&[(x + 0.45, y + long * 0.5), (x, y), (x - 0.7, y - long * 0.5)]);
            for side in both_sides(&line) {
                items.push(brush(&side, 0.09, p.soft_ink));
            }
        }
    }
    if skin.rash {
        // Scattered small rings on both flanks.
        for (x, y) in
            [(0.80, 14.0), (0.86, 12.3), (0.78, 11.2), (0.88, 14.8), (0.84, 16.2), (0.89, 10.6), (0.76, 17.4)]
        {
            let at = (x * shape.half_width(y)) as f32;
            for x in [at, -at] {
                items.push(stroke(ellipse(FigurePoint::new(x, y as f32), 0.2, 0.18), 0.05, p.soft_ink));
            }
        }
    }
}
