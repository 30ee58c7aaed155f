//! Her pelvis: the whole of it behind the baby, its front as a fine outline over the baby. In: nothing but the look.
//! Out: items, and the paths of the front bones.

use crate::body::pelvis;
use crate::figure::mother::MotherLook;
use crate::figure::mother_ink::{brush, ellipse, fill, flat, points, stroke};
use crate::figure::mother_palette::MotherStyle;
use crate::figure::scene::{Colour, Item, Path};
use crate::figure::smooth::{both_sides, closed, cornered, open};
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
    line: Colour,
    width: f32,
}

/// Sacrum, coccyx and hip bones, joined, as seen with nothing before them.
pub fn whole(look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    draw(look.style, &Tint { bone: p.bone, shade: p.bone_shade, line: p.bone_line, width: 0.055 })
}

/// The same, as seen through the womb.
pub fn veiled(look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let veil = |colour: Colour, share: f32| p.womb.mix(colour, share);
    draw(
        look.style,
        &Tint {
            bone: veil(p.bone, 0.42),
            shade: veil(p.bone_shade, 0.25),
            line: veil(p.bone_line, 0.5),
            width: 0.04,
        },
    )
}

fn draw(style: MotherStyle, tint: &Tint) -> Vec<Item<FigurePoint>> {
    let mut items = Vec::new();
    let sacrum = corners(&pelvis::sacrum()[..1]);
    items.push(fill(sacrum.clone(), tint.bone));
    if style == MotherStyle::Soft {
        let shade = [
            (0.3, 1.2),
            (1.0, 2.4),
            (1.7, 4.0),
            (2.5, 5.5),
            (3.6, 7.0),
            (4.75, 7.2),
            (3.7, 5.3),
            (2.5, 3.9),
            (1.2, 2.6),
        ];
        items.push(fill(closed(&points(&shade)), tint.shade));
    }
    items.push(stroke(sacrum, tint.width, tint.line));
    for line in pelvis::sacral_lines() {
        items.push(brush(&flat(&line), tint.width * 0.9, tint.line));
    }
    // The promontory: front rim of the uppermost vertebra.
    items.push(stroke(open(&flat(&pelvis::sacrum()[1])), tint.width * 1.3, tint.line));
    items.push(brush(
        &points(&[(-2.3, 9.15), (-1.3, 9.65), (0.0, 9.8), (1.3, 9.65), (2.3, 9.15)]),
        tint.width,
        tint.line,
    ));
    for side in SIDES {
        for (centre, radius) in pelvis::sacral_foramina(side) {
            let hole = ellipse(FigurePoint::new(centre.0.x, centre.0.y), radius, radius * 0.8);
            if style == MotherStyle::Soft {
                items.push(fill(hole.clone(), tint.shade));
            }
            items.push(stroke(hole, tint.width * 0.7, tint.line));
        }
        items.push(fill(hip(side), tint.bone));
    }
    if style == MotherStyle::Soft {
        // Hollow of the wing, and the side of the ischium away from the light.
        for side in both_sides(&points(&[
            (6.6, 6.5),
            (6.5, 8.6),
            (6.6, 10.4),
            (8.3, 11.9),
            (10.2, 12.3),
            (11.7, 11.4),
            (11.8, 9.4),
            (10.6, 7.2),
            (9.2, 5.4),
            (7.7, 4.7),
        ])) {
            items.push(fill(closed(&side), tint.shade));
        }
        for side in both_sides(&points(&[
            (9.2, 2.6),
            (8.5, 1.4),
            (8.5, -0.2),
            (9.2, -1.6),
            (10.2, -1.2),
            (10.9, 0.3),
            (10.9, 2.0),
            (10.3, 3.0),
        ])) {
            items.push(fill(closed(&side), tint.shade));
        }
    }
    for side in SIDES {
        items.push(stroke(hip(side), tint.width, tint.line));
        items.push(brush(&flat(&pelvis::socket(side)), tint.width, tint.line));
        // Inner lip of the crest, and the line from the brim up along the joint.
        let lip: Vec<_> = flat(&pelvis::crest(side))[2..9]
            .iter()
            .map(|q| FigurePoint::new(q.x * 0.955, q.y - 0.42))
            .collect();
        items.push(brush(&lip, tint.width * 0.8, tint.line));
    }
    // The cartilage of the symphysis.
    let mut disc = flat(&pelvis::symphysis_face(MotherSide::Left));
    disc.extend(flat(&pelvis::symphysis_face(MotherSide::Right)).into_iter().rev());
    items.push(fill(cornered(&[disc[..3].to_vec(), disc[3..].to_vec()]), tint.shade));
    items
}

/// The front of the pelvis over the baby: fine lines only.
pub fn outline(look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let (ink, fine) = match look.style {
        MotherStyle::Soft => (p.bone_line.mix(p.ink, 0.35), 0.045),
        MotherStyle::Line => (p.ink, 0.035),
    };
    let mut items = Vec::new();
    for side in SIDES {
        let border: Vec<_> = pelvis::front_bone(side);
        items.push(stroke(open(&flat(&border[0])), fine * 1.25, ink));
        items.push(stroke(open(&flat(&border[2])), fine, ink));
        items.push(stroke(open(&flat(&border[3])), fine * 1.25, ink));
        items.push(stroke(open(&flat(&border[4])), fine, ink));
        items.push(stroke(closed(&flat(&pelvis::obturator(side))), fine, ink));
        items.push(brush(&flat(&pelvis::pubic_branch(side)), fine, ink));
    }
    items
}
