//! Her clothes: a plain top that ends above the belly, a skirt that begins below it. In: her shape, how her arms reach, the
//! look. Out: items, as drawn curves.
//!
//! Every scar and the navel lie between hem and waist (`her_clothes`): the skin that was looked at stays bare.

use super::mother::MotherLook;
use super::mother_ink::{brush, fill, fine_lines, points};
use super::mother_palette::MotherStyle;
use super::scene::{Colour, Item, Path};
use super::smooth::{both_sides, cornered};
use crate::body::her_arms::Reach;
use crate::body::mother::MotherShape;
use crate::units::{FigurePoint, MotherSide};

/// The colours of a cloth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Cloth {
    base: Colour,
    light: Colour,
    shade: Colour,
    fold: Colour,
    line: Colour,
}

/// Quiet colours, cool beside the warm ones of skin and baby, the same for every skin.
const TOP: Cloth = Cloth {
    base: Colour::hex(0xE6EAE8),
    light: Colour::hex(0xF0F3F1),
    shade: Colour::hex(0xD6DDDC),
    fold: Colour::hex(0xB4C0C1),
    line: Colour::hex(0x66767A),
};
const SKIRT: Cloth = Cloth {
    base: Colour::hex(0xC9D3D6),
    light: Colour::hex(0xD6DEE0),
    shade: Colour::hex(0xB6C3C8),
    fold: Colour::hex(0x94A5AC),
    line: Colour::hex(0x566770),
};

impl Cloth {
    /// This cloth, or white under ink.
    fn of(self, look: &MotherLook) -> Self {
        match look.style {
            MotherStyle::Soft => self,
            MotherStyle::Line => {
                let (white, ink) = (look.palette.paper, look.palette.ink);
                Cloth { base: white, light: white, shade: white, fold: ink, line: ink }
            }
        }
    }
}

/// Width of an edge and of a fold, cm.
fn widths(look: &MotherLook) -> (f32, f32) {
    match look.style {
        MotherStyle::Soft => (0.085, 0.12),
        MotherStyle::Line => (0.075, 0.05),
    }
}

/// The height of the hem in the middle, cm: above the womb where there is room for it.
fn hem_y(shape: &MotherShape) -> f32 {
    (shape.fundus_y as f32 + 0.9).clamp(30.0, 31.6)
}

/// The hem from her right to her left: it hangs round her, lowest in the middle.
pub fn hem(shape: &MotherShape) -> Vec<FigurePoint> {
    let y = hem_y(shape);
    let wide = shape.half_width(f64::from(y)) as f32 + 0.55;
    let half = [(1.0, 0.75), (0.72, 0.32), (0.38, 0.06)];
    let right = half.map(|(x, up)| FigurePoint::new(-x * wide, y + up));
    let left = half.map(|(x, up)| FigurePoint::new(x * wide, y + up));
    right.into_iter().chain([FigurePoint::new(0.0, y)]).chain(left.into_iter().rev()).collect()
}

/// The waist of the skirt at `x`, cm above the pubic bone: under the belly, higher at the hips.
pub fn waist_y(x: f32) -> f32 {
    -3.2 + 0.0125 * x * x
}

/// A line of the skirt from her right to her left, `down` cm below the waist.
fn waist(shape: &MotherShape, down: f32) -> Vec<FigurePoint> {
    let wide = shape.half_width(0.8) as f32 + 0.35;
    (-3i8..=3)
        .map(|k| {
            let x = wide * f32::from(k) / 3.0;
            FigurePoint::new(x, waist_y(x) - down)
        })
        .collect()
}

/// A piece of cloth between a line from her right to her left and its two sides, which go on from the line's ends; moved
/// inwards by `right` and `left` cm at the sides, along the line.
fn piece(line: &[FigurePoint], side: &[FigurePoint], right: f32, left: f32) -> Path<FigurePoint> {
    let wide = line[line.len() - 1].x;
    let inwards = |p: &FigurePoint| p.x * (1.0 - if p.x > 0.0 { left } else { right } / wide);
    // The lines are parabolas, or nearly so.
    let (low, high) = (line[line.len() / 2].y, line[0].y);
    let on_line = |p: &FigurePoint| {
        let x = inwards(p);
        FigurePoint::new(
            x,
            if right + left == 0.0 { p.y } else { low + (high - low) * (x / wide) * (x / wide) },
        )
    };
    let line: Vec<FigurePoint> = line.iter().map(on_line).collect();
    let own = |end: FigurePoint, sign: f32| -> Vec<FigurePoint> {
        let rest =
            side.iter().skip(1).map(|p| FigurePoint::new(inwards(&FigurePoint::new(sign * p.x, p.y)), p.y));
        std::iter::once(end).chain(rest).collect()
    };
    let (left_side, mut right_side) = (own(line[line.len() - 1], 1.0), own(line[0], -1.0));
    right_side.reverse();
    cornered(&[line, left_side, right_side])
}

/// Tones of a piece of cloth: shade at its sides, light on her right, where the light comes from.
fn tones(line: &[FigurePoint], side: &[FigurePoint], cloth: &Cloth, items: &mut Vec<Item<FigurePoint>>) {
    let between = cloth.base.mix(cloth.shade, 0.5);
    for (right, left, colour) in
        [(0.0, 0.0, cloth.shade), (0.5, 1.5, between), (1.1, 3.2, cloth.base), (3.2, 10.5, cloth.light)]
    {
        items.push(fill(piece(line, side, right, left), colour));
    }
}

/// The neckline from her right to her left.
pub fn neckline() -> Vec<FigurePoint> {
    points(&[(-7.4, 53.7), (-6.9, 49.9), (-4.5, 46.2), (0.0, 44.6), (4.5, 46.2), (6.9, 49.9), (7.4, 53.7)])
}

/// The body of the top, with `shoulders` where they are in the picture.
pub fn top(shape: &MotherShape, look: &MotherLook, shoulders: bool) -> Vec<Item<FigurePoint>> {
    let (cloth, (edge, fold)) = (TOP.of(look), widths(look));
    let soft = look.style == MotherStyle::Soft;
    let hem = hem(shape);
    let corner = hem[hem.len() - 1];
    let at = |y: f32, more: f32| FigurePoint::new(shape.half_width(f64::from(y)) as f32 + more, y);
    let mut side = vec![
        corner,
        at(corner.y + 2.2, 0.55),
        at(corner.y + 4.4, 1.0),
        FigurePoint::new(15.4, 38.6),
        FigurePoint::new(15.8, 41.0),
    ];
    if shoulders {
        side.extend(points(&[(15.6, 45.0), (14.9, 49.4), (13.2, 51.8), (11.0, 52.5), (7.4, 53.7)]));
    }
    let mut items = vec![];
    if soft {
        // The shadow of the hem on the skin.
        let under: Vec<FigurePoint> = hem
            .iter()
            .rev()
            .map(|p| FigurePoint::new((p.x + 0.35) * 0.975, p.y - 0.75 + 0.0022 * p.x * p.x))
            .collect();
        items.push(fill(
            cornered(&[hem.clone(), under]),
            look.palette.shade[0].mix(look.palette.shade[1], 0.6),
        ));
        // On the whole top a band of light would be a stripe.
        let lit = if shoulders { cloth.base } else { cloth.light };
        tones(&hem, &side, &Cloth { light: lit, ..cloth }, &mut items);
    } else {
        items.push(fill(piece(&hem, &side, 0.0, 0.0), cloth.base));
    }
    // Folds that run in from the arms, and short ones above the hem.
    for line in [
        [(14.3, 37.0), (12.8, 35.7), (10.9, 35.0)],
        [(14.0, 35.2), (13.1, 34.2), (11.9, 33.7)],
        [(10.4, 33.6), (10.7, 32.7), (10.6, 31.9)],
    ] {
        for side in both_sides(&points(&line)) {
            items.push(brush(&side, fold, cloth.fold));
        }
    }
    // A seam along the hem, and the edges.
    let seam: Vec<FigurePoint> = hem.iter().map(|p| FigurePoint::new(p.x * 0.985, p.y + 0.55)).collect();
    items.push(fine_lines(&[seam], 0.5 * edge, cloth.fold));
    items.push(fine_lines(&[hem], edge, cloth.line));
    items.push(fine_lines(&both_sides(&side), edge, cloth.line));
    if shoulders {
        let rib: Vec<FigurePoint> =
            neckline().iter().map(|p| FigurePoint::new(p.x * 1.09, p.y - 0.62)).collect();
        items.push(fine_lines(&[rib], 0.5 * edge, cloth.fold));
        items.push(fine_lines(&[neckline()], edge, cloth.line));
    }
    items
}

/// Both sleeves, over her arms, up to the `shoulders` where they are in the picture.
pub fn sleeves(reach: &Reach, look: &MotherLook, shoulders: bool) -> Vec<Item<FigurePoint>> {
    let (cloth, (edge, fold)) = (TOP.of(look), widths(look));
    // Of her left arm: down its outside, along the hem, up its inside.
    let outside: &[(f32, f32)] = if shoulders {
        &[(13.4, 51.75), (16.4, 50.9), (19.1, 49.0), (20.7, 46.0), (21.7, 42.4), (22.7, 38.0), (23.35, 33.6)]
    } else {
        &[(21.4, 41.0), (22.5, 37.4), (23.35, 33.6)]
    };
    let hem = [(23.35, 33.6), (21.4, 33.05), (18.6, 33.15), (15.0, 34.2)];
    let inside: &[(f32, f32)] = if shoulders {
        &[(15.0, 34.2), (14.2, 36.4), (13.1, 38.6), (12.2, 41.2), (11.9, 44.8), (12.2, 48.8), (13.4, 51.75)]
    } else {
        &[(15.0, 34.2), (14.5, 36.4), (13.6, 41.0)]
    };
    let mut items = vec![];
    for side in [MotherSide::Left, MotherSide::Right] {
        let place = |line: &[(f32, f32)], out: f32| -> Vec<FigurePoint> {
            let moved = |&(x, y): &(f32, f32)| {
                // A little nearer to the sleeve's own middle.
                let x = x + (19.2 - x) * out + reach.at(side, y);
                let y = y - 0.4 * (y - 42.0).max(0.0) * out;
                FigurePoint::new(side.sign() * x, y)
            };
            line.iter().map(moved).collect()
        };
        let whole = |out: f32| cornered(&[place(outside, out), place(&hem, out), place(inside, out)]);
        if look.style == MotherStyle::Soft {
            items.push(fill(whole(0.0), cloth.shade));
            items.push(fill(whole(0.16), cloth.base.mix(cloth.shade, 0.4)));
            items.push(fill(whole(0.34), cloth.base));
        } else {
            items.push(fill(whole(0.0), cloth.base));
        }
        items.push(brush(&place(&[(15.6, 37.0), (16.9, 36.2), (18.4, 35.9)], 0.0), fold, cloth.fold));
        let seam: Vec<(f32, f32)> = hem.iter().map(|(x, y)| (*x, y + 0.5)).collect();
        items.push(fine_lines(&[place(&seam, 0.03)], 0.5 * edge, cloth.fold));
        let edges = [outside, &hem[..], inside].map(|line| place(line, 0.0));
        items.push(fine_lines(&edges, edge, cloth.line));
    }
    items
}

/// The skirt.
pub fn skirt(shape: &MotherShape, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let (cloth, (edge, fold)) = (SKIRT.of(look), widths(look));
    let waist_line = waist(shape, 0.0);
    let corner = waist_line[waist_line.len() - 1];
    let at = |y: f32, more: f32| FigurePoint::new(shape.half_width(f64::from(y)) as f32 + more, y);
    let side = vec![corner, at(-2.5, 0.5), at(-7.0, 0.75), at(-15.5, 1.5)];
    let mut items = vec![];
    if look.style == MotherStyle::Soft {
        tones(&waist_line, &side, &cloth, &mut items);
    } else {
        items.push(fill(piece(&waist_line, &side, 0.0, 0.0), cloth.base));
    }
    for line in [
        [(14.6, -2.6), (15.3, -6.4), (15.6, -12.6)],
        [(9.8, -4.2), (10.7, -8.0), (10.9, -13.0)],
        [(4.6, -7.6), (5.0, -10.0), (5.1, -13.2)],
        [(-3.8, -8.2), (-4.1, -10.6), (-4.2, -13.2)],
        [(-9.4, -4.4), (-10.2, -8.4), (-10.4, -13.0)],
        [(-14.8, -2.8), (-15.4, -6.2), (-15.9, -11.4)],
    ] {
        items.push(brush(&points(&line), fold, cloth.fold));
    }
    items.push(fine_lines(&[waist(shape, 1.5)], 0.6 * edge, cloth.fold));
    items.push(fine_lines(&[waist_line], edge, cloth.line));
    items.push(fine_lines(&both_sides(&side), edge, cloth.line));
    items
}
