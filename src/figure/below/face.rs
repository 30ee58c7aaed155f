//! A face from below. In: its place, inks. Out: its marks: chin towards what names the position, forehead away from it.
//!
//! Drawn by eye within the outline of published breadths, its features at a newborn's proportions: the artist's.

use super::{Drawn, Inks, Place, closed};
use crate::figure::mother_ink::{brush, brushes, fill, group, stroke};
use crate::figure::scene::Item;
use crate::figure::smooth;
use crate::units::FigurePoint;

/// The outline on the baby's left, from the chin to the hairline, cm.
const OUTLINE: [(f32, f32); 10] = [
    (0.0, 5.0),
    (1.1, 4.8),
    (2.1, 4.1),
    (3.3, 2.9),
    (4.2, 1.2),
    (4.45, -0.8),
    (4.3, -2.6),
    (3.5, -4.1),
    (2.0, -5.05),
    (0.0, -5.3),
];

fn mirrored(points: &[(f32, f32)]) -> Vec<(f32, f32)> {
    points.iter().map(|(x, y)| (-x, *y)).collect()
}

fn shape(half: &[(f32, f32)]) -> Vec<(f32, f32)> {
    let mut all = half.to_vec();
    all.extend(mirrored(half).into_iter().rev().skip(1));
    all.pop();
    all
}

pub(super) fn draw(place: &Place, inks: &Inks) -> Drawn {
    let outline = place.line(&shape(&OUTLINE));
    let mut whole = inks.round(closed(&outline), 4.9, &|x, y| place.lay(x, y));
    let ink = inks.baby.ink;
    let shade = if inks.soft { inks.baby.shade[1] } else { inks.baby.skin };
    let both = |points: &[(f32, f32)]| [place.line(points), place.line(&mirrored(points))];

    // Lids, swollen as in labour, with their folds and lashes; brows.
    let mut eyes: Vec<Item<FigurePoint>> = vec![];
    let soft_skin = if inks.soft { inks.baby.skin.mix(inks.baby.shade[0], 0.5) } else { inks.baby.skin };
    let upper = [
        (0.75, -0.75),
        (1.1, -1.4),
        (1.8, -1.7),
        (2.6, -1.5),
        (3.2, -0.8),
        (2.6, -0.35),
        (1.9, -0.2),
        (1.2, -0.35),
    ];
    let lower = [
        (0.9, -0.6),
        (1.4, -0.25),
        (2.0, -0.15),
        (2.7, -0.3),
        (3.1, -0.7),
        (2.7, 0.15),
        (1.9, 0.35),
        (1.2, 0.05),
    ];
    for lid in [lower, upper] {
        for line in both(&lid) {
            eyes.push(fill(closed(&line), soft_skin));
            eyes.push(stroke(closed(&line), 0.07, ink.mix(inks.baby.skin, 0.4)));
        }
    }
    for line in both(&[(0.75, -0.75), (1.2, -0.35), (1.9, -0.2), (2.6, -0.35), (3.25, -0.85)]) {
        eyes.push(brush(&line, 0.36, ink));
    }
    for line in both(&[(0.9, -1.25), (1.3, -1.75), (2.0, -1.95), (2.8, -1.6)]) {
        eyes.push(brush(&line, 0.12, ink));
    }
    for x in [1.2, 1.5, 1.8, 2.1, 2.4, 2.7] {
        eyes.push(brushes(&both(&[(x, -0.3), (x + 0.05, 0.0), (x + 0.16, 0.16)]), 0.08, ink));
    }
    for i in 0..14 {
        let t = i as f32 / 13.0;
        let (x, y) = (0.75 + 2.6 * t, -2.55 - 0.9 * t * (1.0 - t) * 1.6 + 0.45 * t * t);
        eyes.push(brushes(&both(&[(x, y + 0.12), (x + 0.14, y - 0.05), (x + 0.34, y - 0.16)]), 0.09, ink));
    }
    whole.push(group("eyes", "", eyes));

    // Nose: its bridge, its wings, its nostrils.
    let mut nose: Vec<Item<FigurePoint>> = vec![];
    let tip = [(0.0, 0.05), (0.55, 0.25), (0.95, 0.75), (1.0, 1.15), (0.55, 1.35), (0.0, 1.5)];
    let tip = place.line(&shape(&tip));
    nose.push(fill(closed(&tip), if inks.soft { inks.baby.light } else { shade }));
    nose.extend(
        both(&[(0.5, -1.2), (0.42, -0.5), (0.5, 0.2)])
            .iter()
            .map(|line| brush(line, 0.09, ink.mix(inks.baby.skin, 0.3))),
    );
    for line in both(&[(0.6, 0.35), (1.0, 0.7), (1.05, 1.15), (0.7, 1.38), (0.35, 1.4)]) {
        nose.push(brush(&line, 0.16, ink));
    }
    nose.push(brush(&place.line(&[(-0.35, 1.42), (0.0, 1.55), (0.35, 1.42)]), 0.14, ink));
    for line in both(&[(0.22, 1.1), (0.4, 0.95), (0.62, 1.02), (0.6, 1.2), (0.35, 1.25)]) {
        nose.push(fill(closed(&line), ink));
    }
    whole.push(group("nose", "", nose));

    // Mouth: lips and what lies between them.
    let mut mouth: Vec<Item<FigurePoint>> = vec![];
    let lips = [(0.0, 2.15), (0.35, 2.05), (0.9, 2.3), (1.4, 2.62), (0.9, 3.0), (0.4, 3.2), (0.0, 3.22)];
    mouth.push(fill(
        closed(&place.line(&shape(&lips))),
        if inks.soft { inks.baby.blush.mix(inks.baby.shade[1], 0.45) } else { inks.baby.skin },
    ));
    mouth.push(stroke(closed(&place.line(&shape(&lips))), 0.09, ink));
    mouth.push(brush(
        &place.line(&[
            (-1.45, 2.62),
            (-0.7, 2.6),
            (-0.3, 2.52),
            (0.0, 2.62),
            (0.3, 2.52),
            (0.7, 2.6),
            (1.45, 2.62),
        ]),
        0.26,
        ink,
    ));
    mouth.push(brushes(&both(&[(0.14, 1.62), (0.16, 2.0)]), 0.08, ink.mix(inks.baby.skin, 0.3)));
    whole.push(group("mouth", "", mouth));

    let chin = vec![
        brush(&place.line(&[(-0.7, 3.55), (0.0, 3.42), (0.7, 3.55)]), 0.12, ink.mix(inks.baby.skin, 0.2)),
        brushes(&both(&[(0.55, 4.55), (1.2, 4.1), (1.5, 3.6)]), 0.08, ink.mix(inks.baby.skin, 0.4)),
    ];
    whole.push(group("chin", "", chin));
    let cheeks = both(&[(1.5, 1.3), (2.0, 2.0), (1.9, 2.9)]);
    whole.push(group("cheeks", "", vec![brushes(&cheeks, 0.09, ink.mix(inks.baby.skin, 0.4))]));
    // The seam of the forehead, as far as it is met.
    let seam = place.line(&[(0.0, -3.6), (0.03, -4.2), (-0.02, -4.8), (0.0, -5.2)]);
    whole.push(group(
        "frontal-suture",
        "",
        vec![stroke(smooth::open(&seam), 0.1, ink.mix(inks.baby.skin, 0.4))],
    ));

    let mut rim = outline.clone();
    rim.extend(outline.first().copied());
    let mut faint = vec![rim, place.line(&[(-1.45, 2.62), (0.0, 2.62), (1.45, 2.62)])];
    faint.extend(both(&[(1.0, -0.6), (2.0, -0.25), (2.9, -0.75)]));
    Drawn {
        whole,
        faint,
        named: vec![
            ("below-chin", place.point(0.0, 4.2), true),
            ("below-mouth", place.point(0.6, 2.9), false),
            ("below-nose", place.point(0.0, 0.8), true),
            ("below-brow-ridges", place.point(1.9, -2.6), false),
        ],
    }
}
