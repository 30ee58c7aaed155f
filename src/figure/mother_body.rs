//! Her body: outline, breasts, ribs, groins, and the marks of her skin. In: `MotherShape`. Out: items, painted first.

use crate::body::mother::MotherShape;
use crate::figure::mother::{MotherLook, SkinMarks};
use crate::figure::mother_ink::{brush, ellipse, fill, fine_lines, flat, points, stroke};
use crate::figure::mother_palette::MotherStyle;
use crate::figure::scene::Item;
use crate::figure::smooth::{both_sides, cornered};
use crate::units::{FigurePoint, MotherSide};

/// Heights at which the flank's outline is drawn, from above; the first lies behind the breast.
const LEVELS: [f32; 8] = [34.5, 30.0, 24.0, 18.0, 11.0, 4.0, -5.0, -15.5];
/// The breast on her left, from the inside round its lower line to the outside.
const BREAST: [(f32, f32); 9] = [
    (1.3, 41.0),
    (2.0, 37.9),
    (3.8, 35.1),
    (6.5, 33.0),
    (9.7, 32.2),
    (12.8, 32.9),
    (15.1, 35.0),
    (16.2, 38.0),
    (16.2, 41.0),
];
/// The fold between belly and thigh on her left, from the hip to the midline.
const GROIN: [(f32, f32); 6] =
    [(16.6, 0.6), (13.9, -3.6), (10.6, -7.2), (7.2, -10.1), (3.9, -12.3), (1.2, -13.3)];

/// The flank's outline on her left, moved inwards by up to `inset` cm: most where the belly is round.
fn flank(shape: &MotherShape, inset: f32) -> Vec<FigurePoint> {
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

/// The body and what lies on its skin, without womb and bones.
pub fn draw(shape: &MotherShape, skin: &SkinMarks, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let mut items = Vec::new();
    let soft = look.style == MotherStyle::Soft;
    if soft {
        body_tones(shape, look, &mut items);
    }
    for side in both_sides(&flank(shape, 0.0)) {
        items.push(brush(&side, 0.09, p.ink));
    }
    for (sign, side) in [1.0, -1.0].into_iter().zip(both_sides(&points(&BREAST))) {
        breast(sign, &side, look, &mut items);
    }
    for side in both_sides(&points(&GROIN)) {
        items.push(brush(&side, 0.065, p.soft_ink));
    }
    items.push(brush(&points(&[(0.0, -13.0), (0.03, -14.0), (0.0, -16.5)]), 0.085, p.ink));
    let ribs = [MotherSide::Left, MotherSide::Right].map(|side| flat(&shape.rib_margin(side)));
    items.push(fine_lines(&ribs, if soft { 0.045 } else { 0.03 }, p.faint));
    skin_marks(shape, skin, look, &mut items);
    items
}

fn body_tones(shape: &MotherShape, look: &MotherLook, items: &mut Vec<Item<FigurePoint>>) {
    let p = &look.palette;
    for (right, left, colour) in
        [(0.0, 0.0, p.shade[2]), (0.35, 0.8, p.shade[1]), (0.8, 1.9, p.shade[0]), (1.6, 3.8, p.skin)]
    {
        items.push(fill(cornered(&silhouette(shape, right, left)), colour));
    }
    // A shadow under the fold of the groin.
    for side in both_sides(&points(&GROIN)) {
        for (drop, colour) in [(1.5, p.shade[0]), (0.7, p.shade[1])] {
            let n = side.len() - 1;
            let under: Vec<_> = (0..=n)
                .rev()
                .map(|i| {
                    let share = i as f32 / n as f32;
                    FigurePoint::new(side[i].x, side[i].y - drop * 4.0 * share * (1.0 - share))
                })
                .collect();
            items.push(fill(cornered(&[side.clone(), under]), colour));
        }
    }
    // The belly comes forward: the further on in the weeks, the larger the light.
    let grown = ((shape.curve.rise() - 1.0) / 13.0) as f32;
    let middle = FigurePoint::new(-1.2, 0.5 * shape.navel_y as f32 + 5.5);
    for (size, colour) in [(1.0, p.skin.mix(p.light, 0.5)), (0.8, p.light)] {
        let dome = ellipse(middle, (9.5 + 4.6 * grown) * size, (11.5 + 3.0 * grown) * size);
        items.push(fill(dome, colour));
    }
}

/// One breast: the shadow under it, its round, its line.
fn breast(sign: f32, side: &[FigurePoint], look: &MotherLook, items: &mut Vec<Item<FigurePoint>>) {
    let p = &look.palette;
    if look.style == MotherStyle::Soft {
        for (drop, colour) in [(1.5, p.shade[0]), (0.75, p.shade[1])] {
            let under: Vec<_> = side[1..6]
                .iter()
                .map(|q| {
                    let share = 1.0 - ((q.x * sign - 7.5) / 5.7) * ((q.x * sign - 7.5) / 5.7);
                    FigurePoint::new(q.x + 0.15 * drop, q.y - drop * share.max(0.0))
                })
                .collect();
            let over: Vec<_> = side[1..6].iter().rev().copied().collect();
            items.push(fill(cornered(&[under, over]), colour));
        }
        for (size, shift, colour) in
            [(1.0, 0.0, p.shade[0].mix(p.shade[1], 0.5)), (0.92, 0.2, p.skin), (0.68, 0.55, p.light)]
        {
            let round: Vec<_> = side
                .iter()
                .map(|q| {
                    FigurePoint::new(
                        9.2 * sign + (q.x - 9.2 * sign) * size - shift,
                        41.0 - (41.0 - q.y) * size,
                    )
                })
                .collect();
            items.push(fill(cornered(&[round]), colour));
        }
    } else {
        items.push(fill(cornered(&[side.to_vec()]), p.skin));
    }
    items.push(brush(side, 0.085, p.ink));
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

fn skin_marks(shape: &MotherShape, skin: &SkinMarks, look: &MotherLook, items: &mut Vec<Item<FigurePoint>>) {
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
