//! Her pelvis: the whole of it behind the baby, its front as a fine outline over the baby. In: nothing but the look.
//! Out: items, and the paths of the front bones.

use crate::body::pelvis;
use crate::figure::mother::MotherLook;
use crate::figure::mother_ink::{ellipse, fill, fine, flat, points, stroke};
use crate::figure::mother_palette::MotherStyle;
use crate::figure::scene::{Colour, Item, Path};
use crate::figure::smooth::{both_sides, closed, cornered};
use crate::units::{FigurePoint, MotherPoint, MotherSide};

const SIDES: [MotherSide; 2] = [MotherSide::Left, MotherSide::Right];

fn corners(parts: &[Vec<MotherPoint>]) -> Path<FigurePoint> {
    cornered(&parts.iter().map(|part| flat(part)).collect::<Vec<_>>())
}

/// The hip bone of one side with its hole, to be filled even-odd.
pub fn hip(side: MotherSide) -> Path<FigurePoint> {
    let mut path = corners(&pelvis::hip_bone(side));
    path.extend(closed(&flat(&pelvis::obturator(side))));
    path
}

/// The front of the pelvis on both sides, with its holes, to be filled even-odd: where the baby is seen through bone.
pub fn front() -> Path<FigurePoint> {
    SIDES
        .iter()
        .flat_map(|side| {
            let mut path = corners(&pelvis::front_bone(*side));
            path.extend(closed(&flat(&pelvis::obturator(*side))));
            path
        })
        .collect()
}

/// The colours the bones are drawn in: as they are, or as seen through the womb.
struct Tint {
    bone: Colour,
    shade: Colour,
    hollow: Colour,
    line: Colour,
    width: f32,
}

/// Sacrum, coccyx and hip bones, joined, as seen with nothing before them; `plain`: without the small lines of the
/// sacrum, where the womb hides them.
pub fn whole(look: &MotherLook, plain: bool) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    draw(
        look.style,
        plain,
        &Tint {
            bone: p.bone,
            shade: p.bone_shade,
            hollow: p.bone_shade.mix(p.bone_line, 0.35),
            line: p.bone_line,
            width: 0.055,
        },
    )
}

/// The same, as seen through the womb.
pub fn veiled(look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let veil = |colour: Colour, share: f32| p.womb.mix(colour, share);
    draw(
        look.style,
        false,
        &Tint {
            bone: veil(p.bone, 0.42),
            shade: veil(p.bone_shade, 0.3),
            hollow: veil(p.bone_line, 0.25),
            line: veil(p.bone_line, 0.5),
            width: 0.045,
        },
    )
}

fn draw(style: MotherStyle, plain: bool, tint: &Tint) -> Vec<Item<FigurePoint>> {
    let mut items = Vec::new();
    let sacrum = corners(&pelvis::sacrum()[..1]);
    items.push(fill(sacrum.clone(), tint.bone));
    items.push(stroke(sacrum, tint.width, tint.line));
    if !plain {
        sacrum_lines(style, tint, &mut items);
    }
    for side in SIDES {
        items.push(fill(hip(side), tint.bone));
        items.push(stroke(hip(side), tint.width, tint.line));
    }
    if style == MotherStyle::Soft {
        // The hollow of the wing.
        let hollow = [
            (6.9, 6.4),
            (6.4, 8.7),
            (7.0, 10.7),
            (9.3, 12.0),
            (11.5, 11.3),
            (11.7, 9.2),
            (9.9, 6.4),
            (8.2, 5.2),
        ];
        for side in both_sides(&points(&hollow)) {
            items.push(fill(closed(&side), tint.shade));
        }
    }
    for side in SIDES {
        items.push(fine(&flat(&pelvis::socket(side)), tint.width, tint.line));
        // The inner lip of the crest.
        let lip: Vec<_> = flat(&pelvis::crest(side))[2..7]
            .iter()
            .map(|q| FigurePoint::new(q.x * 0.955, q.y - 0.42))
            .collect();
        items.push(fine(&lip, tint.width * 0.8, tint.line));
        hatch(side, tint, &mut items);
    }
    // The rim of the inlet, all round.
    items.push(stroke(closed(&flat(&pelvis::inlet())), tint.width * 1.3, tint.line));
    // The cartilage of the symphysis.
    let mut disc = flat(&pelvis::symphysis_face(MotherSide::Left));
    disc.extend(flat(&pelvis::symphysis_face(MotherSide::Right)).into_iter().rev());
    items.push(fill(cornered(&[disc[..3].to_vec(), disc[3..].to_vec()]), tint.shade));
    items
}

/// The promontory, the lines between the vertebrae, and the foramina.
fn sacrum_lines(style: MotherStyle, tint: &Tint, items: &mut Vec<Item<FigurePoint>>) {
    for line in pelvis::sacral_lines() {
        items.push(fine(&flat(&line), tint.width * 0.7, tint.line));
    }
    // The rim of the uppermost vertebra.
    items.push(fine(&flat(&pelvis::sacrum()[1]), tint.width * 1.3, tint.line));
    items.push(fine(&points(&[(-2.3, 9.15), (0.0, 9.8), (2.3, 9.15)]), tint.width, tint.line));
    for side in SIDES {
        for (centre, radius) in pelvis::sacral_foramina(side) {
            let hole = ellipse(FigurePoint::new(centre.0.x, centre.0.y), radius, radius * 0.8);
            items.push(match style {
                MotherStyle::Soft => fill(hole, tint.hollow),
                MotherStyle::Line => stroke(hole, tint.width * 0.7, tint.line),
            });
        }
    }
}

/// A few engraver's strokes down the hollow of the wing.
fn hatch(side: MotherSide, tint: &Tint, items: &mut Vec<Item<FigurePoint>>) {
    let sign = side.sign();
    let mut strokes: Vec<[(f32, f32); 3]> = Vec::new();
    for i in 0..7 {
        let t = i as f32 / 6.0;
        // From under the crest towards the brim, fanned.
        let top = (7.2 + 4.1 * t, 11.2 + 0.9 * t - 1.9 * t * t);
        let foot = (7.1 + 1.9 * t, 7.4 - 1.2 * t);
        let end = (
            foot.0 + (top.0 - foot.0) * 0.3 * (i % 2) as f32,
            foot.1 + (top.1 - foot.1) * 0.3 * (i % 2) as f32,
        );
        strokes.push([top, (0.5 * (top.0 + end.0) - 0.35, 0.5 * (top.1 + end.1)), end]);
    }
    for line in strokes {
        let line = line.map(|(x, y)| (x * sign, y));
        items.push(fine(&points(&line), tint.width * 0.55, tint.line));
    }
}

/// The front of the pelvis over the baby: fine lines only.
pub fn outline(look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let (ink, width) = match look.style {
        MotherStyle::Soft => (p.bone_line.mix(p.ink, 0.35), 0.045),
        MotherStyle::Line => (p.ink, 0.035),
    };
    let mut items = Vec::new();
    for side in SIDES {
        items.push(fine(&flat(&pelvis::front_brim(side)), width * 1.3, ink));
        items.push(fine(&flat(&pelvis::arch(side)), width * 1.2, ink));
        items.push(fine(&flat(&pelvis::symphysis_face(side)), width, ink));
        items.push(fine(&flat(&pelvis::pubic_branch(side)), width * 0.8, ink));
        items.push(stroke(closed(&flat(&pelvis::obturator(side))), width, ink));
    }
    items
}
