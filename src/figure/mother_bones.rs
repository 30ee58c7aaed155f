//! Her pelvis: the whole of it behind the womb, its back faintly through the womb, its front as a fine outline over the
//! baby. In: the look. Out: items, and the paths of the front bones.

use crate::body::pelvis;
use crate::figure::mother::MotherLook;
use crate::figure::mother_ink::{brushes, ellipse, fill, fill_with_holes, fine_lines, flat, points, stroke};
use crate::figure::mother_palette::MotherStyle;
use crate::figure::scene::{Colour, Item, Path};
use crate::figure::smooth::{both_sides, closed, cornered, open};
use crate::units::{FigurePoint, MotherPoint, MotherSide};

const SIDES: [MotherSide; 2] = [MotherSide::Left, MotherSide::Right];

fn corners(parts: &[Vec<MotherPoint>]) -> Path<FigurePoint> {
    cornered(&parts.iter().map(|part| flat(part)).collect::<Vec<_>>())
}

/// Both sides of bones with their holes, to be filled even-odd.
fn with_holes(bone: impl Fn(MotherSide) -> Vec<Vec<MotherPoint>>) -> Path<FigurePoint> {
    let one = |side: &MotherSide| {
        let mut path = corners(&bone(*side));
        path.extend(closed(&flat(&pelvis::obturator(*side))));
        path
    };
    SIDES.iter().flat_map(one).collect()
}

/// The front of the pelvis on both sides, with its holes, to be filled even-odd: where the baby is seen through bone.
pub fn front() -> Path<FigurePoint> {
    with_holes(pelvis::front_bone)
}

/// Hip bones, sacrum and coccyx in one piece, as seen with nothing before them; what a womb over the sacrum hides
/// (`covered`) is left out.
pub fn whole(look: &MotherLook, covered: bool) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let soft = look.style == MotherStyle::Soft;
    let width = if soft { 0.055 } else { 0.045 };
    let hips = with_holes(pelvis::hip_bone);
    let mut items = Vec::new();
    if !covered && soft {
        // The back wall of the pelvis lies deep: seen through the inlet it is in shade.
        items.push(fill(closed(&flat(&pelvis::inlet())), p.shade[1]));
    }
    items.push(fill_with_holes(hips, p.bone));
    if soft {
        // The hollow of the wing.
        items.push(fill(hollows(), p.bone_shade));
    } else if !covered {
        items.push(fine_lines(&SIDES.map(hatch).concat(), 0.03, p.bone_line));
    }
    // The front is drawn over the baby: here only what lies behind it and at the sides.
    let outer = SIDES.map(|side| flat(&pelvis::hip_bone(side)[..3].concat()));
    let lips = SIDES.map(|side| flat(&pelvis::inner_lip(side)));
    let sockets = SIDES.map(|side| flat(&pelvis::socket(side)));
    let mut lines: Path<FigurePoint> =
        outer.iter().chain(&lips).chain(&sockets).flat_map(|line| open(line)).collect();
    if covered {
        let back = SIDES.map(|side| {
            flat(&pelvis::inlet())[4..8]
                .iter()
                .map(|q| FigurePoint::new(q.x * side.sign(), q.y))
                .collect::<Vec<_>>()
        });
        lines.extend(back.iter().flat_map(|line| open(line)));
    }
    items.push(stroke(lines, width, p.bone_line));
    if !covered {
        sacrum(look, width, &mut items);
    }
    // The cartilage of the symphysis.
    let mut disc = flat(&pelvis::symphysis_face(MotherSide::Left));
    disc.extend(flat(&pelvis::symphysis_face(MotherSide::Right)).into_iter().rev());
    items.push(fill(cornered(&[disc[..3].to_vec(), disc[3..].to_vec()]), p.bone_shade));
    items
}

/// What is faintly seen of the back of the pelvis through a womb that covers it: the back of the inlet.
pub fn veiled(look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let inlet = flat(&pelvis::inlet());
    vec![fine_lines(&[inlet[3..inlet.len() - 2].to_vec()], 0.045, p.womb.mix(p.bone_line, 0.45))]
}

/// The sacrum with its wings over the hip bones, the coccyx, the lines between the vertebrae, the foramina, and the rim
/// of the inlet that runs over all of it.
fn sacrum(look: &MotherLook, width: f32, items: &mut Vec<Item<FigurePoint>>) {
    let p = &look.palette;
    let soft = look.style == MotherStyle::Soft;
    let parts = pelvis::sacrum();
    let border = corners(&parts[..1]);
    items.push(fill(border.clone(), p.bone));
    if soft {
        // It is hollow from above downwards.
        let half = points(&[(0.0, 8.55), (2.7, 8.1), (2.5, 6.2), (1.3, 3.9), (0.0, 2.7)]);
        let other = half[1..4].iter().rev().map(|q| FigurePoint::new(-q.x, q.y));
        let inner: Vec<FigurePoint> = half.iter().copied().chain(other).collect();
        items.push(fill(closed(&inner), p.bone_shade));
    }
    let rim = [flat(&parts[1]), points(&[(-2.3, 9.15), (0.0, 9.85), (2.3, 9.15)])];
    items.push(stroke(
        border.into_iter().chain(rim.iter().flat_map(|line| open(line))).collect(),
        width,
        p.bone_line,
    ));
    let between: Vec<_> = pelvis::sacral_lines().iter().map(|line| flat(line)).collect();
    items.push(fine_lines(&between, width * 0.7, p.bone_line));
    let holes = SIDES
        .iter()
        .flat_map(|side| pelvis::sacral_foramina(*side))
        .flat_map(|(centre, radius)| ellipse(FigurePoint::new(centre.0.x, centre.0.y), radius, radius * 0.8))
        .collect();
    items.push(if soft {
        fill(holes, p.bone_shade.mix(p.bone_line, 0.45))
    } else {
        stroke(holes, width * 0.7, p.bone_line)
    });
    items.push(stroke(closed(&flat(&pelvis::inlet())), width * 1.3, p.bone_line));
}

/// The hollows of both wings.
fn hollows() -> Path<FigurePoint> {
    let outline = [(7.2, 6.8), (6.7, 9.2), (8.0, 11.4), (10.4, 11.9), (11.9, 10.3), (10.9, 8.2), (9.1, 6.3)];
    both_sides(&points(&outline)).iter().flat_map(|side| closed(side)).collect()
}

/// A few engraver's strokes down the hollow of the wing, fanned from under the crest towards the brim.
fn hatch(side: MotherSide) -> Vec<Vec<FigurePoint>> {
    let stroke = |i: u8| {
        let t = f32::from(i) / 5.0;
        let (top_x, top_y) = (7.6 + 4.1 * t, 11.4 + 0.8 * t - 2.0 * t * t);
        let (foot_x, foot_y) = (7.0 + 2.2 * t, 7.4 - 1.0 * t);
        // Every other one is shorter.
        let short = 0.35 * f32::from(i % 2);
        let (x, y) = (foot_x + (top_x - foot_x) * short, foot_y + (top_y - foot_y) * short);
        [(top_x, top_y), (0.5 * (top_x + x) - 0.3, 0.5 * (top_y + y)), (x, y)]
    };
    (0..6).map(|i| points(&stroke(i).map(|(x, y)| (x * side.sign(), y)))).collect()
}

/// How far apart the lines of the veil lie, and how much they rise to each side, cm a cm.
const VEIL: f32 = 0.3;
const RISE: f32 = 0.6;

/// Fine slanting lines over the front bones: the baby is seen between them, behind bone.
fn veil(side: MotherSide) -> Vec<Vec<FigurePoint>> {
    let outline: Vec<FigurePoint> = pelvis::front_bone(side).iter().flat_map(|part| flat(part)).collect();
    let hole = flat(&pelvis::obturator(side));
    // How high the line through a point stands in the midline, and how far a line keeps from the edge.
    let height = |p: &FigurePoint| p.y - RISE * p.x * side.sign();
    const CLEAR: f32 = 0.1;
    let (low, high) = outline.iter().map(height).fold((f32::MAX, f32::MIN), |m, h| (m.0.min(h), m.1.max(h)));
    let mut out = vec![];
    for i in 1..((high - low) / VEIL) as usize {
        let h = low + VEIL * i as f32;
        let mut crossings: Vec<f32> = vec![];
        for ring in [&outline, &hole] {
            for k in 0..ring.len() {
                let (a, b) = (&ring[k], &ring[(k + 1) % ring.len()]);
                let (p, q) = (height(a) - h, height(b) - h);
                if (p > 0.0) != (q > 0.0) {
                    crossings.push(a.x + (b.x - a.x) * p / (p - q));
                }
            }
        }
        crossings.sort_by(f32::total_cmp);
        for pair in crossings.chunks_exact(2).filter(|pair| pair[1] - pair[0] > 3.0 * CLEAR) {
            let at = |x: f32| (x, h + RISE * x * side.sign());
            out.push(points(&[at(pair[0] + CLEAR), at(pair[1] - CLEAR)]));
        }
    }
    out
}

/// The front of the pelvis over the baby: fine lines, strongest where the brim is felt, and a veil of finer ones.
pub fn outline(look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let (ink, width): (Colour, f32) = match look.style {
        MotherStyle::Soft => (p.bone_line, 0.045),
        // Grey, so that a bone over the head is not taken for a line of the head.
        MotherStyle::Line => (p.ink.mix(p.paper, 0.6), 0.04),
    };
    let brim: Vec<FigurePoint> = {
        // One line from side to side over the symphysis.
        let left = flat(&pelvis::front_brim(MotherSide::Left));
        let right = left.iter().rev().map(|q| FigurePoint::new(-q.x, q.y));
        right.chain(left.iter().copied()).collect()
    };
    let fine = SIDES
        .map(|side| vec![flat(&pelvis::arch(side)), flat(&pelvis::symphysis_face(side))])
        .concat()
        .iter()
        .flat_map(|line| open(line))
        .chain(SIDES.iter().flat_map(|side| closed(&flat(&pelvis::obturator(*side)))))
        .collect();
    let pale = match look.style {
        MotherStyle::Soft => p.bone.mix(p.bone_line, 0.06),
        MotherStyle::Line => p.paper,
    };
    vec![
        fine_lines(&SIDES.map(veil).concat(), 0.05, pale),
        brushes(&[brim], width * 1.6, ink),
        stroke(fine, width * 0.9, ink),
    ]
}
