//! Her pelvis: the whole of it behind the baby, its front as a fine outline over the baby. In: nothing but the look.
//! Out: items, and the paths of the front bones.

use crate::body::pelvis;
use crate::figure::mother::MotherLook;
use crate::figure::mother_ink::{ellipse, fill, fine_lines, flat, points, stroke};
use crate::figure::mother_palette::MotherStyle;
use crate::figure::scene::{Colour, Item, Path};
use crate::figure::smooth::{both_sides, closed, cornered};
use crate::units::{FigurePoint, MotherPoint, MotherSide};

const SIDES: [MotherSide; 2] = [MotherSide::Left, MotherSide::Right];

fn corners(parts: &[Vec<MotherPoint>]) -> Path<FigurePoint> {
    cornered(&parts.iter().map(|part| flat(part)).collect::<Vec<_>>())
}

/// Both hip bones with their holes, to be filled even-odd.
fn hips() -> Path<FigurePoint> {
    SIDES
        .iter()
        .flat_map(|side| {
            let mut path = corners(&pelvis::hip_bone(*side));
            path.extend(closed(&flat(&pelvis::obturator(*side))));
            path
        })
        .collect()
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

/// How much of the pelvis is drawn.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Part {
    /// All of it.
    Whole,
    /// What a womb that covers the sacrum leaves to be seen around it, without the finest lines.
    AroundWomb,
    /// What is seen through the womb.
    ThroughWomb,
}

/// Sacrum, coccyx and hip bones, joined, as seen with nothing before them; what a womb over the sacrum hides
/// (`covered`) is left out.
pub fn whole(look: &MotherLook, covered: bool) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    draw(
        look.style,
        if covered { Part::AroundWomb } else { Part::Whole },
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
        Part::ThroughWomb,
        &Tint {
            bone: veil(p.bone, 0.42),
            shade: veil(p.bone_shade, 0.3),
            hollow: veil(p.bone_line, 0.25),
            line: veil(p.bone_line, 0.5),
            width: 0.045,
        },
    )
}

fn draw(style: MotherStyle, part: Part, tint: &Tint) -> Vec<Item<FigurePoint>> {
    let mut items = Vec::new();
    if part != Part::AroundWomb {
        let sacrum = corners(&pelvis::sacrum()[..1]);
        items.push(fill(sacrum.clone(), tint.bone));
        items.push(stroke(sacrum, tint.width, tint.line));
        sacrum_lines(style, tint, &mut items);
    }
    items.push(fill(hips(), tint.bone));
    items.push(stroke(hips(), tint.width, tint.line));
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
        let both = both_sides(&points(&hollow)).iter().flat_map(|side| closed(side)).collect();
        items.push(fill(both, tint.shade));
    }
    let sockets = SIDES.map(|side| flat(&pelvis::socket(side)));
    items.push(fine_lines(&sockets, tint.width, tint.line));
    // The inner lip of the crest.
    let lips = SIDES.map(|side| {
        flat(&pelvis::crest(side))[2..7].iter().map(|q| FigurePoint::new(q.x * 0.955, q.y - 0.42)).collect()
    });
    items.push(fine_lines(&lips, tint.width * 0.8, tint.line));
    if part == Part::Whole {
        items.push(fine_lines(&SIDES.map(hatch).concat(), tint.width * 0.6, tint.line));
    }
    if part != Part::AroundWomb {
        // The rim of the inlet, all round.
        items.push(stroke(closed(&flat(&pelvis::inlet())), tint.width * 1.3, tint.line));
    }
    // The cartilage of the symphysis.
    let mut disc = flat(&pelvis::symphysis_face(MotherSide::Left));
    disc.extend(flat(&pelvis::symphysis_face(MotherSide::Right)).into_iter().rev());
    items.push(fill(cornered(&[disc[..3].to_vec(), disc[3..].to_vec()]), tint.shade));
    items
}

/// The promontory, the lines between the vertebrae, and the foramina.
fn sacrum_lines(style: MotherStyle, tint: &Tint, items: &mut Vec<Item<FigurePoint>>) {
    let between: Vec<_> = pelvis::sacral_lines().iter().map(|line| flat(line)).collect();
    items.push(fine_lines(&between, tint.width * 0.7, tint.line));
    // The rim of the uppermost vertebra.
    let rim = [flat(&pelvis::sacrum()[1]), points(&[(-2.3, 9.15), (0.0, 9.8), (2.3, 9.15)])];
    items.push(fine_lines(&rim, tint.width * 1.1, tint.line));
    let holes = SIDES
        .iter()
        .flat_map(|side| pelvis::sacral_foramina(*side))
        .flat_map(|(centre, radius)| ellipse(FigurePoint::new(centre.0.x, centre.0.y), radius, radius * 0.8))
        .collect();
    items.push(match style {
        MotherStyle::Soft => fill(holes, tint.hollow),
        MotherStyle::Line => stroke(holes, tint.width * 0.7, tint.line),
    });
}

/// A few engraver's strokes down the hollow of the wing, fanned from under the crest towards the brim.
fn hatch(side: MotherSide) -> Vec<Vec<FigurePoint>> {
    let stroke = |i: u8| {
        let t = f32::from(i) / 6.0;
        let (top_x, top_y) = (7.2 + 4.1 * t, 11.2 + 0.9 * t - 1.9 * t * t);
        let (foot_x, foot_y) = (7.1 + 1.9 * t, 7.4 - 1.2 * t);
        // Every other one is shorter.
        let short = 0.3 * f32::from(i % 2);
        let (x, y) = (foot_x + (top_x - foot_x) * short, foot_y + (top_y - foot_y) * short);
        [(top_x, top_y), (0.5 * (top_x + x) - 0.35, 0.5 * (top_y + y)), (x, y)]
    };
    (0..7).map(|i| points(&stroke(i).map(|(x, y)| (x * side.sign(), y)))).collect()
}

/// The front of the pelvis over the baby: fine lines only.
pub fn outline(look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let (ink, width) = match look.style {
        MotherStyle::Soft => (p.bone_line.mix(p.ink, 0.35), 0.045),
        MotherStyle::Line => (p.ink, 0.035),
    };
    let strong = SIDES.map(|side| vec![flat(&pelvis::front_brim(side)), flat(&pelvis::arch(side))]).concat();
    let faces = SIDES
        .map(|side| vec![flat(&pelvis::symphysis_face(side)), flat(&pelvis::pubic_branch(side))])
        .concat();
    let holes = SIDES.iter().flat_map(|side| closed(&flat(&pelvis::obturator(*side)))).collect();
    vec![
        fine_lines(&strong, width * 1.25, ink),
        fine_lines(&faces, width * 0.9, ink),
        stroke(holes, width, ink),
    ]
}
