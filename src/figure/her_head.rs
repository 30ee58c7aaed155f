//! Her head, drawn: face, lids lowered to her belly, and hair or a scarf. In: the look, the palette, which of the two. Out:
//! items, before her clothes and after them.
//!
//! The face is the form's own; what gives it life is drawn over it by hand: brows, lashes, lips, hair. All places are those of
//! the one pose that is baked (`body/her_head.rs`).

use super::baby::{self, Hand};
use super::her_clothes;
use super::mother::{MotherLook, MotherStyle};
use super::mother_ink::{brush, brushes, fill, fine_lines, group, points};
use super::options::{Hair, Palette};
use super::palette::BabyColours;
use super::scene::{Colour, FillRule, Item, Path, flat};
use super::smooth;
use crate::body::her_head;
use crate::units::FigurePoint;

/// Lines of the face: finer than hers elsewhere, and less smoothed.
const HAND: Hand = Hand { firm: 0.8, even: 1.15 };
/// Hair of the neutral wash, then of each skin, the lightest first.
const HAIR: [Colour; 7] = [
    Colour::hex(0x9A8171),
    Colour::hex(0x9C7448),
    Colour::hex(0x6B4A36),
    Colour::hex(0x503829),
    Colour::hex(0x3A2A23),
    Colour::hex(0x2E211C),
    Colour::hex(0x241A17),
];
/// A scarf: its cloth, in shade, in folds, its lines.
const SCARF: [Colour; 4] =
    [Colour::hex(0xC7D2CB), Colour::hex(0xB2C0B8), Colour::hex(0x90A399), Colour::hex(0x56685F)];

/// The outline of her hair from her right temple over the crown to her left ear, and back along the hairline.
const CROWN: [(f32, f32); 13] = [
    (-8.75, 64.4),
    (-9.6, 67.3),
    (-9.55, 70.4),
    (-8.7, 73.5),
    (-7.0, 75.8),
    (-4.4, 77.15),
    (-1.6, 77.5),
    (1.3, 77.0),
    (3.6, 75.4),
    (5.2, 72.9),
    (6.1, 69.8),
    (6.5, 67.4),
    (6.6, 66.2),
];
const HAIRLINE: [(f32, f32); 14] = [
    (6.6, 66.2),
    (5.6, 66.7),
    (5.0, 66.0),
    (4.75, 64.8),
    (4.35, 63.9),
    (4.15, 65.4),
    (3.75, 67.0),
    (2.4, 68.4),
    (0.2, 69.2),
    (-2.3, 69.7),
    (-4.7, 69.2),
    (-6.8, 68.2),
    (-8.05, 66.8),
    (-8.75, 64.4),
];
/// What falls behind neck and shoulders.
const FALL: [(f32, f32); 14] = [
    (-8.8, 69.5),
    (-9.5, 65.5),
    (-9.9, 61.0),
    (-10.4, 56.5),
    (-10.9, 52.5),
    (-9.5, 47.0),
    (0.0, 46.0),
    (8.6, 47.0),
    (9.7, 52.0),
    (9.2, 56.5),
    (8.3, 61.0),
    (7.1, 65.0),
    (5.6, 69.5),
    (-1.5, 72.0),
];
/// Strands from the parting to both sides.
const STRANDS: [[(f32, f32); 4]; 7] = [
    [(-2.5, 71.0), (-5.2, 71.2), (-7.7, 69.6), (-9.0, 66.2)],
    [(-2.7, 73.0), (-6.0, 73.1), (-8.5, 70.8), (-9.4, 67.2)],
    [(-2.8, 75.1), (-5.9, 75.0), (-8.2, 72.8), (-9.35, 69.6)],
    [(-2.2, 71.0), (0.8, 70.8), (3.2, 69.2), (4.7, 66.6)],
    [(-2.4, 73.0), (1.3, 72.7), (4.2, 70.4), (5.5, 67.2)],
    [(-2.6, 75.1), (1.2, 74.9), (4.2, 72.8), (5.9, 69.0)],
    [(-2.3, 70.3), (-4.6, 70.2), (-6.9, 69.1), (-8.3, 67.2)],
];
const PARTING: [(f32, f32); 3] = [(-2.3, 69.75), (-2.75, 73.3), (-2.5, 77.2)];
/// Brows from the nose outwards; her right one first.
const BROWS: [[(f32, f32); 4]; 2] = [
    [(-5.5, 63.15), (-6.6, 63.65), (-7.6, 63.6), (-8.3, 63.2)],
    [(-2.75, 63.3), (-1.3, 63.95), (0.4, 64.0), (1.75, 63.45)],
];
/// Lowered lids with their lashes, from the nose outwards.
const LIDS: [[(f32, f32); 6]; 2] = [
    [(-4.95, 61.72), (-5.5, 61.42), (-6.15, 61.27), (-6.8, 61.36), (-7.25, 61.68), (-7.6, 62.2)],
    [(-2.1, 61.88), (-1.55, 61.58), (-0.85, 61.4), (-0.15, 61.52), (0.4, 61.9), (0.85, 62.42)],
];
/// The lips, and the line between them.
const LIPS: [(f32, f32); 13] = [
    (-4.8, 56.5),
    (-4.1, 56.58),
    (-3.45, 56.62),
    (-2.85, 56.5),
    (-2.3, 56.66),
    (-1.5, 56.68),
    (-0.7, 56.64),
    (-1.1, 56.05),
    (-1.75, 55.45),
    (-2.5, 55.12),
    (-3.2, 55.12),
    (-3.9, 55.42),
    (-4.45, 55.95),
];
const BETWEEN_LIPS: [(f32, f32); 5] =
    [(-4.75, 56.5), (-3.9, 56.12), (-2.85, 56.08), (-1.75, 56.15), (-0.7, 56.62)];
/// The scarf: its outline, and the opening for the face.
const SCARF_OUTLINE: [(f32, f32); 20] = [
    (-9.3, 63.0),
    (-9.95, 67.0),
    (-9.75, 70.8),
    (-8.8, 74.2),
    (-6.9, 76.6),
    (-4.2, 78.0),
    (-1.3, 78.3),
    (1.6, 77.7),
    (4.2, 75.9),
    (6.0, 73.0),
    (6.9, 69.4),
    (7.1, 65.4),
    (7.0, 61.0),
    (7.6, 56.8),
    (9.6, 52.4),
    (8.6, 47.6),
    (1.4, 44.6),
    (-6.6, 46.6),
    (-10.2, 51.0),
    (-9.0, 57.2),
];
const FACE: [(f32, f32); 14] = [
    (-8.55, 65.0),
    (-7.7, 67.9),
    (-5.6, 69.6),
    (-2.6, 70.2),
    (0.6, 69.6),
    (2.9, 67.9),
    (4.0, 65.0),
    (4.1, 61.6),
    (3.2, 58.2),
    (1.4, 55.3),
    (-1.4, 53.65),
    (-4.2, 54.6),
    (-6.6, 57.6),
    (-8.2, 61.2),
];
const SCARF_FOLDS: [[(f32, f32); 4]; 7] = [
    [(-8.4, 59.8), (-6.6, 55.6), (-3.0, 52.9), (1.2, 53.2)],
    [(4.6, 60.4), (3.6, 56.4), (0.4, 52.4), (-4.8, 49.2)],
    [(5.9, 59.2), (5.2, 54.6), (2.4, 50.4), (-2.4, 47.2)],
    [(6.5, 57.6), (6.6, 53.4), (5.2, 49.8), (2.6, 46.8)],
    [(-8.9, 57.8), (-8.2, 53.8), (-5.4, 50.6), (-1.6, 49.0)],
    [(-8.6, 66.2), (-8.4, 70.2), (-6.4, 73.4), (-3.2, 74.6)],
    [(4.6, 66.0), (4.4, 70.2), (2.4, 73.2), (-0.8, 74.6)],
];

/// The colours of her head.
pub struct Colours {
    skin: BabyColours,
    hair: Colour,
    lips: Colour,
    soft: bool,
    ink: Colour,
    paper: Colour,
}

impl Colours {
    /// Those of a palette, her `skin` as the tones of it are laid.
    pub fn of(look: &MotherLook, palette: Palette, skin: BabyColours) -> Self {
        let soft = look.style == MotherStyle::Soft;
        let number = match palette {
            Palette::Neutral => 0,
            Palette::Skin(number) => usize::from(number).min(HAIR.len() - 1),
        };
        Colours {
            skin,
            hair: if soft { HAIR[number] } else { look.palette.paper },
            lips: skin.skin.mix(Colour::hex(0xA8483F), 0.38),
            soft,
            ink: look.palette.ink,
            paper: look.palette.paper,
        }
    }
}

/// What lies behind her neck: before her clothes.
pub fn behind(hair: Hair, c: &Colours) -> Option<Item<FigurePoint>> {
    if hair == Hair::Scarf {
        return None;
    }
    let shade = behind_shade(c);
    let whole = smooth::closed(&points(&FALL));
    let strands = [
        [(-8.9, 66.0), (-9.1, 60.5), (-9.6, 55.0), (-9.6, 50.0)],
        [(-7.4, 60.0), (-7.6, 57.0), (-8.2, 54.0), (-8.8, 51.0)],
        [(7.0, 62.0), (7.7, 58.0), (8.3, 54.0), (8.0, 50.0)],
        [(5.6, 60.0), (6.2, 57.5), (7.0, 55.0), (7.0, 52.0)],
    ]
    .map(|strand| points(&strand));
    Some(group(
        "mother-hair-behind",
        "",
        vec![
            fill(whole.clone(), shade),
            brushes(&strands, 0.16, strand_ink(c)),
            Item::Stroke { path: whole, colour: c.ink, width: 0.085, dash: None },
        ],
    ))
}

fn behind_shade(c: &Colours) -> Colour {
    if c.soft { c.hair.mix(c.ink, 0.22) } else { c.hair }
}

fn strand_ink(c: &Colours) -> Colour {
    if c.soft { c.hair.mix(c.ink, 0.55) } else { c.ink }
}

/// Neck and face in her neckline, and her hair or scarf: after her clothes.
pub fn before(hair: Hair, c: &Colours) -> Vec<Item<FigurePoint>> {
    let marks = flat(baby::limb(&her_head::cast(), &c.skin, c.soft, HAND));
    // Round her head, so far out that nothing of it is cut off.
    let clip = smooth::cornered(&[
        her_clothes::neckline(),
        points(&[(14.0, 57.0)]),
        points(&[(14.0, 80.0)]),
        points(&[(-14.0, 80.0)]),
        points(&[(-14.0, 57.0)]),
    ]);
    // Beside her neck one looks past it, at what lies behind.
    let beside = match hair {
        Hair::Loose => behind_shade(c),
        Hair::Scarf => c.skin.skin,
    };
    let mut face =
        vec![fill(smooth::closed(&her_clothes::neckline()), beside), Item::Clip { path: clip, items: marks }];
    face.extend(features(c));
    vec![
        group("mother-head", "", face),
        match hair {
            Hair::Loose => group("mother-hair", "", loose(c)),
            Hair::Scarf => group("mother-scarf", "", scarf(c)),
        },
    ]
}

/// Brows, lashes, lips.
fn features(c: &Colours) -> Vec<Item<FigurePoint>> {
    let brow = if c.soft { c.skin.skin.mix(c.hair.mix(c.ink, 0.4), 0.78) } else { c.ink };
    let mut items = vec![];
    let lips = smooth::closed(&points(&LIPS));
    if c.soft {
        items.push(fill(lips, c.lips));
    } else {
        items.push(brush(&points(&LIPS[8..12]), 0.1, c.ink));
    }
    items.push(brush(&points(&BETWEEN_LIPS), 0.15, c.ink));
    for line in BROWS {
        items.push(brush(&points(&line), if c.soft { 0.46 } else { 0.24 }, brow));
    }
    for line in LIDS {
        items.push(brush(&points(&line), 0.21, c.ink));
    }
    items
}

fn loose(c: &Colours) -> Vec<Item<FigurePoint>> {
    let (crown, line) = (points(&CROWN), points(&HAIRLINE));
    let whole: Path<FigurePoint> = smooth::cornered(&[crown.clone(), line.clone()]);
    let mut items = vec![fill(whole.clone(), c.hair)];
    if c.soft {
        // Light on the crown, along the strands; most at her right, where it comes from.
        let lit = [
            ([(-4.0, 74.15), (-6.2, 73.75), (-7.9, 72.1), (-8.7, 70.3)], 0.62, 0.16),
            ([(-4.2, 72.2), (-6.2, 71.7), (-7.7, 70.3), (-8.6, 68.6)], 0.4, 0.12),
            ([(-0.4, 73.9), (2.0, 73.0), (3.9, 71.3), (4.9, 69.4)], 0.46, 0.11),
        ];
        items
            .extend(lit.map(|(line, width, share)| brush(&points(&line), width, c.hair.mix(c.paper, share))));
    }
    items.push(brushes(&STRANDS.map(|strand| points(&strand)), 0.15, strand_ink(c)));
    items.push(brush(&points(&PARTING), 0.14, if c.soft { c.skin.shade[0] } else { c.ink }));
    items.push(fine_lines(&[crown, line], 0.085, c.ink));
    items
}

fn scarf(c: &Colours) -> Vec<Item<FigurePoint>> {
    let [cloth, shade, fold, line] = if c.soft { SCARF } else { [c.paper, c.paper, c.ink, c.ink] };
    let (outline, face) = (points(&SCARF_OUTLINE), points(&FACE));
    let mut path = smooth::closed(&outline);
    path.extend(smooth::closed(&face));
    let mut items = vec![Item::Fill { path, colour: cloth, rule: FillRule::EvenOdd }];
    if c.soft {
        let under = [
            (-8.4, 59.4),
            (-5.6, 55.2),
            (-1.6, 53.4),
            (1.8, 55.0),
            (4.2, 58.8),
            (3.6, 54.8),
            (0.0, 51.4),
            (-4.6, 52.2),
            (-7.8, 55.6),
        ];
        items.push(fill(smooth::closed(&points(&under)), shade));
        let side = [
            (6.0, 70.0),
            (6.9, 65.0),
            (6.8, 60.6),
            (7.6, 56.6),
            (9.2, 52.6),
            (7.4, 54.6),
            (5.8, 58.6),
            (5.2, 63.0),
            (5.2, 67.4),
        ];
        items.push(fill(smooth::closed(&points(&side)), shade));
    }
    items.push(brushes(&SCARF_FOLDS.map(|fold| points(&fold)), if c.soft { 0.17 } else { 0.1 }, fold));
    let mut closed = vec![];
    for ring in [outline, face] {
        closed.extend(smooth::closed(&ring));
    }
    items.push(Item::Stroke { path: closed, colour: line, width: 0.095, dash: None });
    items
}
