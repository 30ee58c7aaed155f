//! Her body: outline, breasts, ribs, groins, and the marks of her skin. In: `MotherShape`. Out: items, painted first.

use crate::body::mother::MotherShape;
use crate::figure::mother::{MotherLook, SkinMarks};
use crate::figure::mother_ink::{brush, ellipse, fill, flat, points, stroke};
use crate::figure::mother_palette::MotherStyle;
use crate::figure::scene::Item;
use crate::figure::smooth::{both_sides, closed, cornered};
use crate::units::{FigurePoint, MotherSide};

/// Heights at which the flank's outline is drawn, from above.
const LEVELS: [f32; 12] = [33.6, 30.5, 27.0, 23.0, 19.0, 15.0, 11.0, 7.0, 3.0, -2.0, -8.0, -15.5];
/// The side of the chest and the breast, her left, from the picture's upper edge down to the fold.
const CHEST: [(f32, f32); 5] = [(15.9, 41.0), (16.3, 38.6), (16.2, 36.4), (15.4, 34.5), (13.9, 33.0)];
/// The lower line of the breast, her left, from the inside outwards.
const BREAST: [(f32, f32); 8] = [
    (1.0, 39.6),
    (1.5, 36.9),
    (2.9, 34.4),
    (5.4, 32.5),
    (8.6, 31.9),
    (11.7, 32.6),
    (14.3, 34.5),
    (15.6, 36.2),
];

/// The flank's outline on her left, moved inwards by `inset` cm.
fn flank(shape: &MotherShape, inset: f32) -> Vec<FigurePoint> {
    LEVELS.map(|y| FigurePoint::new(shape.half_width(f64::from(y)) as f32 - inset, y)).into()
}

/// The whole silhouette between the picture's upper and lower edge, moved inwards by `right` cm on her right (the
/// lit side) and `left` cm on her left.
fn silhouette(shape: &MotherShape, right: f32, left: f32) -> Vec<Vec<FigurePoint>> {
    let mut chest: Vec<_> = points(&CHEST[..4]).iter().map(|p| FigurePoint::new(p.x - left, p.y)).collect();
    chest.push(FigurePoint::new(flank(shape, left)[0].x, LEVELS[0]));
    let mirrored = |line: Vec<FigurePoint>| -> Vec<FigurePoint> {
        line.iter().rev().map(|p| FigurePoint::new(-p.x, p.y)).collect()
    };
    let mut other: Vec<_> = points(&CHEST[..4]).iter().map(|p| FigurePoint::new(p.x - right, p.y)).collect();
    other.push(FigurePoint::new(flank(shape, right)[0].x, LEVELS[0]));
    vec![chest, flank(shape, left), mirrored(flank(shape, right)), mirrored(other)]
}

/// The body and what lies on its skin, without womb and bones.
pub fn draw(shape: &MotherShape, skin: &SkinMarks, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let mut items = Vec::new();
    if look.style == MotherStyle::Soft {
        tones(shape, look, &mut items);
    }
    // The outline.
    for side in both_sides(&flank(shape, 0.0)) {
        items.push(brush(&side, 0.09, p.ink));
    }
    for side in both_sides(&points(&CHEST[..4])) {
        items.push(brush(&side, 0.085, p.ink));
    }
    for side in both_sides(&points(&BREAST)) {
        items.push(brush(&side, 0.085, p.ink));
    }
    for side in both_sides(&groin()) {
        items.push(brush(&side, 0.065, p.soft_ink));
    }
    items.push(brush(&points(&[(0.0, -11.4), (0.04, -12.6), (0.0, -15.5)]), 0.08, p.ink));
    // The hollow above the pubic bone, and the fold at the hip.
    for side in [MotherSide::Left, MotherSide::Right] {
        items.push(brush(&flat(&shape.rib_margin(side)), 0.05, p.faint));
    }
    skin_marks(shape, skin, look, &mut items);
    items
}

/// The fold between belly and thigh on her left.
fn groin() -> Vec<FigurePoint> {
    points(&[(15.9, 2.4), (13.4, -0.6), (10.0, -3.9), (6.4, -7.2), (3.6, -9.7), (2.1, -11.2)])
}

fn tones(shape: &MotherShape, look: &MotherLook, items: &mut Vec<Item<FigurePoint>>) {
    let p = &look.palette;
    let steps = [(0.0, 0.0, p.shade[2]), (0.35, 0.9, p.shade[1]), (0.8, 2.1, p.shade[0]), (1.6, 3.8, p.skin)];
    for (right, left, colour) in steps {
        items.push(fill(cornered(&silhouette(shape, right, left)), colour));
    }
    // Thighs turn away below the fold.
    for (i, side) in both_sides(&groin()).into_iter().enumerate() {
        let sign = if i == 0 { 1.0 } else { -1.0 };
        let inner = points(&[(0.0, -11.4), (0.0, -15.5), (8.0 * sign, -15.5)]);
        let (outer, next) = if i == 0 { (12.2, 12.2) } else { (14.4, 14.4) };
        let rest = points(&[(outer * sign, -15.5), (next * sign, -8.0), (next * sign + 0.6 * sign, -3.0)]);
        items.push(fill(
            cornered(&[side.clone(), inner[..1].to_vec(), inner[1..].to_vec(), rest]),
            p.shade[0].mix(p.skin, 0.45),
        ));
    }
    // The belly comes forward: the further on in the weeks, the larger the light.
    let grown = ((shape.curve.rise() - 1.0) / 13.0) as f32;
    let middle = 0.5 * shape.navel_y as f32 + 5.0;
    for (size, colour) in [(1.0, p.skin.mix(p.light, 0.5)), (0.8, p.light)] {
        let (rx, up, down) =
            ((9.5 + 4.8 * grown) * size, (12.5 + 2.5 * grown) * size, (10.0 + 3.5 * grown) * size);
        let egg: Vec<_> = [
            (0.0, up),
            (-0.72, 0.72 * up),
            (-1.0, 0.1 * up),
            (-0.78, -0.62 * down),
            (0.0, -down),
            (0.78, -0.62 * down),
            (1.0, 0.1 * up),
            (0.72, 0.72 * up),
        ]
        .map(|(x, y): (f32, f32)| FigurePoint::new(-1.2 + x * rx, middle + y))
        .into();
        items.push(fill(closed(&egg), colour));
    }
    // Breasts: the shadow under them, their round, the light on them.
    for (i, side) in both_sides(&points(&BREAST)).into_iter().enumerate() {
        let sign = if i == 0 { 1.0 } else { -1.0 };
        for (drop, colour) in [(1.5, p.shade[0]), (0.75, p.shade[1])] {
            let under: Vec<_> = side[1..7]
                .iter()
                .map(|q| {
                    let share = 1.0 - ((q.x * sign - 8.3) / 7.0) * ((q.x * sign - 8.3) / 7.0);
                    FigurePoint::new(q.x + 0.2 * drop, q.y - drop * share.max(0.0))
                })
                .collect();
            let over: Vec<_> = side[1..7].iter().rev().copied().collect();
            items.push(fill(cornered(&[under, over]), colour));
        }
        let mut round = side.clone();
        round.extend(points(&[(16.0 * sign, 38.0), (15.7 * sign, 41.0), (1.0 * sign, 41.0)]));
        items.push(fill(cornered(&[side.clone(), round[8..].to_vec()]), p.shade[0]));
        let inner: Vec<_> = side
            .iter()
            .map(|q| FigurePoint::new(8.0 * sign + (q.x - 8.0 * sign) * 0.9 - 0.35, q.y + 0.75))
            .collect();
        let top = points(&[(14.8 * sign - 0.35, 41.0), (1.7 * sign - 0.35, 41.0)]);
        items.push(fill(cornered(&[inner, top]), p.skin));
        let lit: Vec<_> = side
            .iter()
            .map(|q| FigurePoint::new(8.0 * sign + (q.x - 8.0 * sign) * 0.72 - 0.8, q.y * 0.9 + 5.9))
            .collect();
        let top = points(&[(12.0 * sign - 0.8, 42.0), (3.0 * sign - 0.8, 42.0)]);
        items.push(fill(cornered(&[lit, top]), p.light));
    }
}

fn skin_marks(shape: &MotherShape, skin: &SkinMarks, look: &MotherLook, items: &mut Vec<Item<FigurePoint>>) {
    let p = &look.palette;
    let dark = if look.style == MotherStyle::Soft { p.skin.mix(p.soft_ink, 0.75) } else { p.ink };
    if skin.linea_nigra {
        let top = shape.xiphoid_y() as f32 - 3.0;
        let line =
            points(&[(0.0, top), (0.06, 0.75 * top), (-0.06, 0.5 * top), (0.05, 0.25 * top), (0.0, 0.8)]);
        items.push(brush(&line, if look.style == MotherStyle::Soft { 0.2 } else { 0.1 }, dark));
    }
    if skin.striae {
        // Short curved strokes low on both flanks, outside the womb.
        for (x, y, long) in [
            (0.70, 8.5, 2.6),
            (0.76, 6.6, 3.0),
            (0.82, 8.8, 2.6),
            (0.88, 6.4, 2.4),
            (0.73, 4.0, 1.8),
            (0.84, 3.6, 1.7),
        ] {
            let wide = shape.half_width(f64::from(y)) as f32;
            let line =
                points(&[(x * wide + 0.5, y + long * 0.5), (x * wide, y), (x * wide - 0.75, y - long * 0.5)]);
            for side in both_sides(&line) {
                items.push(brush(&side, 0.09, p.soft_ink));
            }
        }
    }
    if skin.rash {
        // Scattered small rings round the navel's height, outside the womb.
        for (x, y) in
            [(0.80, 14.0), (0.86, 12.3), (0.78, 11.2), (0.90, 14.8), (0.84, 16.2), (0.91, 10.6), (0.76, 17.4)]
        {
            let wide = shape.half_width(y) as f32;
            for sign in [1.0, -1.0] {
                let ring = ellipse(FigurePoint::new(sign * x * wide, y as f32), 0.2, 0.18);
                items.push(stroke(ring, 0.05, p.soft_ink));
            }
        }
    }
}
