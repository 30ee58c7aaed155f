//! A bottom from below, its legs stretched up along the body. In: its place, inks. Out: its marks: the sacrum towards what names
//! the position, the thighs away from it. Nothing tells a sex.
//!
//! 10 cm across the hips (bitrochanteric, common practice); the drawing is the artist's.

use super::{Drawn, Inks, Place, closed};
use crate::figure::engrave;
use crate::figure::mother_ink::{brush, brushes, fill, group};
use crate::figure::scene::Item;
use crate::units::FigurePoint;

/// Middle and radii of a thigh and of a buttock on the baby's left, cm.
const THIGH: [(f32, f32); 2] = [(2.3, -2.5), (2.05, 2.1)];
const BUTTOCK: [(f32, f32); 2] = [(2.25, 0.2), (2.5, 3.0)];
const BACK: [(f32, f32); 2] = [(0.0, 2.5), (3.2, 2.2)];

fn round(
    place: &Place,
    inks: &Inks,
    side: f32,
    [(x, y), (rx, ry)]: [(f32, f32); 2],
) -> Vec<Item<FigurePoint>> {
    let lay = |u: f32, v: f32| {
        let left = u * place.across.0 + v * place.across.1;
        let ahead = u * place.along.0 + v * place.along.1;
        place.point(x * side + left * rx, y + ahead * ry)
    };
    let outline: Vec<FigurePoint> = (0..20)
        .map(|i| {
            let (sin, cos) = libm::sincosf(std::f32::consts::TAU * i as f32 / 20.0);
            lay(cos, sin)
        })
        .collect();
    let lay: engrave::Lay<'_> = &lay;
    inks.round(closed(&outline), 0.5 * (rx + ry), lay)
}

pub(super) fn draw(place: &Place, inks: &Inks) -> Drawn {
    let ink = inks.baby.ink;
    let pale = ink.mix(inks.baby.skin, 0.35);
    let mut whole = vec![group(
        "thighs",
        "",
        [1.0, -1.0].iter().flat_map(|side| round(place, inks, *side, THIGH)).collect(),
    )];
    whole.push(group("back", "", round(place, inks, 1.0, BACK)));
    let buttocks = [1.0, -1.0].iter().flat_map(|side| round(place, inks, *side, BUTTOCK)).collect();
    whole.push(group("buttocks", "", buttocks));

    // The cleft, the folds under the buttocks.
    let cleft = place.line(&[(0.0, 2.7), (0.05, 1.6), (0.0, 0.4), (-0.04, -0.8), (0.0, -2.2)]);
    let deep = place.line(&[(0.0, 2.2), (0.3, 1.0), (0.32, -0.6), (0.0, -2.0), (-0.32, -0.6), (-0.3, 1.0)]);
    let shade = if inks.soft { inks.deep() } else { pale };
    whole.push(group("cleft", "", vec![fill(closed(&deep), shade), brush(&cleft, 0.34, ink)]));
    let folds = [1.0, -1.0]
        .map(|s| place.line(&[(0.3 * s, -1.5), (1.6 * s, -2.3), (3.2 * s, -2.0), (4.2 * s, -1.2)]));
    whole.push(group("folds", "", vec![brushes(&folds, 0.16, ink)]));
    // The anus: a small round with folds.
    let mut anus =
        vec![fill(closed(&place.line(&dot((0.0, -0.35), 0.34))), inks.baby.skin.mix(inks.baby.blush, 0.6))];
    let rays: Vec<Vec<FigurePoint>> = (0..10)
        .map(|i| {
            let (s, c) = libm::sincosf(std::f32::consts::TAU * i as f32 / 10.0);
            place.line(&[(0.12 * c, -0.35 + 0.12 * s), (0.42 * c, -0.35 + 0.42 * s)])
        })
        .collect();
    anus.push(brushes(&rays, 0.08, ink));
    anus.push(fill(closed(&place.line(&dot((0.0, -0.35), 0.12))), ink));
    whole.push(group("anus", "", anus));
    // The sacrum: its crest in small arches, its borders, the dimples beside it.
    let mut sacrum = vec![];
    for y in [2.9, 3.3, 3.7, 4.1] {
        let wide = 0.3 + 0.06 * (y - 2.9);
        sacrum.push(brush(&place.line(&[(-wide, y - 0.1), (0.0, y + 0.12), (wide, y - 0.1)]), 0.18, ink));
    }
    let borders = [1.0, -1.0].map(|s| place.line(&[(0.15 * s, 2.5), (0.75 * s, 3.1), (1.35 * s, 4.2)]));
    sacrum.push(brushes(&borders, 0.13, ink));
    for side in [1.0, -1.0] {
        sacrum.push(fill(closed(&place.line(&dot((1.15 * side, 3.1), 0.14))), pale));
    }
    whole.push(group("sacrum-of-baby", "", sacrum));

    let ring = |[(x, y), (rx, ry)]: [(f32, f32); 2], side: f32| {
        let points: Vec<(f32, f32)> = (0..=20)
            .map(|i| {
                let (s, c) = libm::sincosf(std::f32::consts::TAU * i as f32 / 20.0);
                (x * side + rx * c, y + ry * s)
            })
            .collect();
        place.line(&points)
    };
    let faint =
        vec![ring(BUTTOCK, 1.0), ring(BUTTOCK, -1.0), ring(THIGH, 1.0), ring(THIGH, -1.0), ring(BACK, 1.0)];
    Drawn {
        whole,
        faint,
        named: vec![
            ("below-baby-sacrum", place.point(0.0, 3.4), true),
            ("below-cleft", place.point(0.0, 1.4), false),
            ("below-anus", place.point(0.0, -0.35), true),
            ("below-thigh", place.point(2.5, -3.6), false),
        ],
    }
}

fn dot((x, y): (f32, f32), r: f32) -> Vec<(f32, f32)> {
    (0..10)
        .map(|i| {
            let (s, c) = libm::sincosf(std::f32::consts::TAU * i as f32 / 10.0);
            (x + r * c, y + r * s)
        })
        .collect()
}
