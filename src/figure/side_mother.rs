//! The mother cut in the midline, seen from her left. In: her shape, the womb in the cut, the look. Out: what is painted
//! before the baby (`behind`) and after it (`in_front`), in cm, x towards her back. Measures are those of
//! `body::pelvis`; the drawing between them is the artist's.

use super::mother::{MotherLook, MotherStyle};
use super::mother_ink::{brush, fill, fine_lines, group, inset, stroke};
use super::scene::{Item, Step};
use super::smooth::{closed, cornered, open};
use crate::body::lateral::{SPINE, WALL, flat, skin_front};
use crate::body::mother::{FundusKnown, MotherShape};
use crate::body::pelvis;
use crate::units::FigurePoint;

type Marks = Vec<Item<FigurePoint>>;
type Line = Vec<FigurePoint>;

/// Points of the midline, (y, z) in mother space.
fn line(points: &[(f32, f32)]) -> Line {
    points.iter().map(|&(y, z)| flat(y, z)).collect()
}

/// Her front above the belly, from above; the mons and what lies under it, to the cleft; her back, from below.
const CHEST: [(f32, f32); 4] = [(42.0, 3.3), (38.0, 2.7), (34.6, 2.3), (32.9, 2.9)];
const MONS: [(f32, f32); 6] =
    [(-1.9, 3.5), (-3.8, 2.7), (-5.3, 1.2), (-6.3, -1.0), (-6.8, -4.4), (-6.7, -8.2)];
const BACK: [(f32, f32); 11] = [
    (-5.7, -12.0),
    (-3.4, -15.2),
    (0.4, -17.4),
    (4.6, -18.1),
    (9.0, -17.5),
    (13.6, -16.5),
    (18.6, -15.8),
    (24.0, -15.9),
    (30.0, -16.8),
    (36.0, -17.7),
    (42.0, -18.0),
];
/// What is seen beyond the cut: her right breast, thigh and buttock.
const BREAST: [(f32, f32); 7] =
    [(42.0, 3.6), (40.0, 6.4), (37.8, 8.6), (35.6, 9.3), (34.0, 8.1), (33.3, 5.6), (33.6, 2.6)];
const THIGH: [(f32, f32); 4] = [(1.6, 4.6), (-3.6, 6.6), (-9.2, 7.7), (-15.0, 8.2)];
const BUTTOCK: [(f32, f32); 6] =
    [(7.2, -17.6), (2.4, -20.3), (-2.6, -21.3), (-6.8, -20.1), (-9.9, -16.8), (-15.0, -14.6)];

/// The skin of the belly from the xiphoid down to the pubic bone; `deep` cm under it.
fn belly(shape: &MotherShape, deep: f32) -> Line {
    let whole = shape.curve.length() - 3.4;
    let low = 3.2;
    let steps = 14;
    (0..=steps)
        .rev()
        .map(|i| {
            let along = low + (whole - low) * f64::from(i) / f64::from(steps);
            let (y, z) = shape.curve.point(along);
            let (ny, nz) = shape.curve.normal(along);
            flat((y - ny * f64::from(deep)) as f32, (z - nz * f64::from(deep)) as f32)
        })
        .collect()
}

/// Her outline in the midline, from the top of her front round to the top of her back.
fn outline(shape: &MotherShape) -> Line {
    let mut out = line(&CHEST);
    out.extend(belly(shape, 0.0));
    out.extend(line(&MONS));
    out.extend(line(&BACK));
    out
}

/// How far her outline reaches at a height: towards her front (`sign` below 0) or her back, cm.
pub fn reach(shape: &MotherShape, y: f32, sign: f32) -> f32 {
    let at = |points: &[(f32, f32)]| {
        let crossing = points.windows(2).filter_map(|w| {
            let ((y0, z0), (y1, z1)) = (w[0], w[1]);
            ((y0 > y) != (y1 > y)).then(|| z0 + (z1 - z0) * (y - y0) / (y1 - y0))
        });
        crossing.map(f32::abs).fold(0.0, f32::max)
    };
    if sign < 0.0 {
        let skin = if (0.5..32.0).contains(&y) { skin_front(shape, y) } else { 3.0 };
        skin.max(at(&BREAST)).max(at(&THIGH))
    } else {
        at(&BACK).max(at(&BUTTOCK))
    }
}

/// What is painted before the baby.
pub fn behind(shape: &MotherShape, womb: &[FigurePoint], look: &MotherLook) -> Marks {
    let p = &look.palette;
    let soft = look.style == MotherStyle::Soft;
    let width = if soft { 0.085 } else { 0.075 };
    let mut body = vec![];
    // Beyond the cut.
    let leg: Vec<Line> = vec![line(&THIGH), line(&BUTTOCK).into_iter().rev().collect(), line(&[(4.0, -9.0)])];
    if soft {
        body.push(fill(cornered(&leg), p.shade[1]));
        body.push(fill(cornered(&[line(&BREAST), line(&[(38.0, 0.0)])]), p.shade[1]));
    }
    body.push(fine_lines(&[line(&THIGH), line(&BUTTOCK), line(&BREAST)], width * 0.85, p.soft_ink));
    // The cut: skin and flesh, then the hollow of the belly.
    let skin = outline(shape);
    body.push(fill(cornered(std::slice::from_ref(&skin)), if soft { p.shade[0] } else { p.skin }));
    let hollow = hollow(shape);
    body.push(if soft {
        fill(closed(&hollow), p.light)
    } else {
        fine_lines(std::slice::from_ref(&belly(shape, WALL)), 0.035, p.ink)
    });
    if soft {
        body.push(fine_lines(&[belly(shape, WALL)], 0.045, p.soft_ink));
    }
    body.push(fine_lines(&[skin], width, p.ink));
    body.push(navel(shape, look));
    let mut items = vec![group("mother-body", "", body), group("mother-bones", "", bones(look))];
    if womb.len() >= 3 {
        let mut inside = vec![];
        if soft {
            inside.push(fill(closed(womb), p.womb_shade[2]));
            let few: Line = womb.iter().step_by(6).copied().collect();
            for (near, far, colour) in
                [(0.3, 0.7, p.womb_shade[1]), (0.6, 1.4, p.womb_shade[0]), (1.0, 2.2, p.womb)]
            {
                inside.push(fill(closed(&inset(&few, near, far)), colour));
            }
        } else {
            inside.push(fill(closed(womb), p.womb));
        }
        items.push(group("womb", "", inside));
    }
    items
}

/// Behind the abdominal wall, before the spine, down to the floor of the pelvis.
fn hollow(shape: &MotherShape) -> Line {
    let mut out = line(&[(33.0, -8.2), (33.6, -3.0), (32.6, 0.4)]);
    out.extend(belly(shape, WALL).into_iter().skip(1));
    out.extend(line(&[(-0.4, -0.6), (-3.2, -3.2), (-4.6, -6.2), (-3.0, -11.4), (0.8, -14.9)]));
    out.extend(line(&[(3.9, -13.6), (6.2, -11.2), (9.0, -6.1)]));
    out.extend(SPINE.iter().skip(1).take(6).map(|&(y, z, _)| flat(y, z + 0.1)));
    out
}

fn navel(shape: &MotherShape, look: &MotherLook) -> Item<FigurePoint> {
    let along = shape.navel_along;
    let at = |off: f64, deep: f64| {
        let ((y, z), (ny, nz)) = (shape.curve.point(along + off), shape.curve.normal(along + off));
        flat((y - ny * deep) as f32, (z - nz * deep) as f32)
    };
    brush(
        &[at(-0.55, 0.0), at(-0.2, 0.5), at(0.1, 0.75), at(0.3, 0.45), at(0.6, 0.0)],
        0.11,
        look.palette.ink,
    )
}

/// Spine, sacrum and symphysis, cut; the breastbone.
fn bones(look: &MotherLook) -> Marks {
    let p = &look.palette;
    let width = if look.style == MotherStyle::Soft { 0.06 } else { 0.05 };
    let mut items = vec![];
    let back = |(y, z): (f32, f32), slope: f32, far: f32| {
        let (sin, cos) = libm::sincosf(slope.to_radians());
        (y + sin * far, z - cos * far)
    };
    let depth = |i: usize| 3.5 - 0.09 * i as f32;
    // Discs: the whole column, then the bodies over it.
    let fronts: Vec<(f32, f32)> = SPINE.iter().map(|&(y, z, _)| (y, z)).collect();
    let backs: Vec<(f32, f32)> =
        SPINE.iter().enumerate().map(|(i, &(y, z, s))| back((y, z), s, depth(i))).collect();
    let column = vec![line(&fronts), line(&backs).into_iter().rev().collect()];
    items.push(fill(cornered(&column), p.bone_shade));
    items.push(fine_lines(&column, width * 0.7, p.bone_line));
    let mut bodies = vec![];
    let mut spines = vec![];
    for i in 0..SPINE.len() - 1 {
        let ((y0, z0, s0), (y1, z1, s1)) = (SPINE[i], SPINE[i + 1]);
        let at = |t: f32| (y0 + (y1 - y0) * t, z0 + (z1 - z0) * t);
        let slope = |t: f32| s0 + (s1 - s0) * t;
        let (low, high) = (0.13, 0.87);
        let (lf, uf) = (at(low), at(high));
        let (lb, ub) = (back(lf, slope(low), depth(i)), back(uf, slope(high), depth(i)));
        let waist = back(at(0.5), slope(0.5), 0.28);
        let rear = back(at(0.5), slope(0.5), depth(i) - 0.22);
        bodies.push(vec![line(&[lf, waist, uf]), line(&[uf, ub]), line(&[ub, rear, lb]), line(&[lb, lf])]);
        // The spinous process behind the canal: level in the loin, slanting down in the chest.
        let down = 6.0 + 5.0 * i as f32;
        let (sin, cos) = libm::sincosf((slope(0.4) - down).to_radians());
        let root = back(at(0.42), slope(0.42), depth(i) + 1.5);
        let long = 3.1 - 0.06 * i as f32;
        let along = |far: f32, up: f32| (root.0 + sin * far + cos * up, root.1 - cos * far + sin * up);
        spines.push(vec![
            line(&[along(0.0, 0.62), along(long * 0.55, 0.62), along(long, 0.72)]),
            line(&[along(long, 0.72), along(long + 0.32, 0.05), along(long, -0.62)]),
            line(&[along(long, -0.62), along(long * 0.5, -0.42), along(0.0, -0.5)]),
        ]);
    }
    for bone in bodies.iter().chain(&spines) {
        items.push(fill(cornered(bone), p.bone));
        items.push(stroke(cornered(bone), width, p.bone_line));
    }
    // Sacrum and coccyx: the hollow of the front, then the back from below.
    let hollow = [
        (9.01, -6.31),
        (7.7, -9.1),
        (6.3, -11.3),
        (5.1, -12.8),
        (3.95, -13.8),
        (2.65, -14.5),
        (1.01, -15.25),
    ];
    let rear =
        [(11.2, -8.9), (9.9, -11.5), (8.2, -13.6), (6.4, -15.0), (4.6, -15.7), (2.75, -15.6), (1.01, -15.25)];
    let sacrum = vec![line(&hollow), line(&rear).into_iter().rev().collect()];
    items.push(fill(cornered(&sacrum), p.bone));
    items.push(stroke(cornered(&sacrum), width, p.bone_line));
    let joints: Vec<Line> = (1..6).map(|i| line(&[hollow[i], rear[i]])).collect();
    items.push(fine_lines(&joints, width * 0.7, p.bone_line));
    // The symphysis: its cartilage, an oval.
    let [top, foot] = pelvis::symphysis().map(|q| (q.0.y, q.0.z));
    let middle = ((top.0 + foot.0) * 0.5 - 0.5, (top.1 + foot.1) * 0.5 + 0.5);
    let (long, broad) = (0.5 * pelvis::SYMPHYSIS_DEPTH, 0.72);
    let oval: Line = (0..12)
        .map(|i| {
            let (sin, cos) = libm::sincosf(i as f32 / 12.0 * std::f32::consts::TAU);
            let (a, b) =
                (cos * long * std::f32::consts::FRAC_1_SQRT_2, sin * broad * std::f32::consts::FRAC_1_SQRT_2);
            flat(middle.0 + a - b, middle.1 + a + b)
        })
        .collect();
    items.push(fill(closed(&oval), p.bone));
    items.push(stroke(closed(&oval), width, p.bone_line));
    // The breastbone with its point.
    let sternum = vec![
        line(&[(42.0, 1.9), (37.0, 1.2), (34.4, 0.9), (32.6, 1.1)]),
        line(&[(32.6, 1.1), (34.2, 0.2), (37.0, 0.3), (42.0, 0.9)]),
    ];
    items.push(fill(cornered(&sternum), p.bone));
    items.push(stroke(cornered(&sternum), width, p.bone_line));
    items
}

/// How far in front of the pubic bone the line of the brim is drawn on, cm, and how far behind the promontory.
pub const BRIM_FRONT: f32 = 6.2;
const BRIM_BEHIND: f32 = 1.2;
/// The part of the axis of the pelvis that is drawn: from this far above the brim, cm.
const AXIS_FROM: f32 = 2.5;

/// A point of the midline `back` cm behind the symphysis along the brim, and `above` cm above it.
pub fn by_brim(back: f32, above: f32) -> FigurePoint {
    let p = pelvis::brim_point(0.0, back).0 - pelvis::axis() * above;
    flat(p.y, p.z)
}

/// The axis of the pelvis, from above the brim down: straight to the level of the spines, then round the pubic bone.
pub fn axis_line() -> Line {
    let middle = 0.5 * pelvis::CONJUGATE;
    let mut out: Line =
        [AXIS_FROM, 0.0, -2.5, -pelvis::SPINES_BELOW_BRIM].map(|above| by_brim(middle, above)).into();
    const RADIUS: f32 = 4.9;
    for degrees in [20.0f32, 40.0, 60.0, 80.0, 98.0] {
        let (sin, cos) = libm::sincosf(degrees.to_radians());
        out.push(by_brim(middle - RADIUS * (1.0 - cos), -pelvis::SPINES_BELOW_BRIM - RADIUS * sin));
    }
    out
}

/// What is painted over the baby: the wall of the womb, the line of the brim, the axis of the pelvis.
pub fn in_front(shape: &MotherShape, womb: &[FigurePoint], lines: bool, look: &MotherLook) -> Marks {
    let p = &look.palette;
    let mut items = vec![];
    if womb.len() >= 3 {
        let width = if look.style == MotherStyle::Soft { 0.1 } else { 0.085 };
        let dash = (shape.fundus_known == FundusKnown::Expected).then_some((0.75, 0.45));
        let wall = Item::Stroke { path: closed(womb), colour: p.womb_line, width, dash };
        items.push(group("womb-wall", "", vec![wall]));
    }
    if lines {
        let brim = [by_brim(-BRIM_FRONT, 0.0), by_brim(pelvis::CONJUGATE + BRIM_BEHIND, 0.0)];
        items.push(group("brim", "", ruled(&open(&brim), (0.55, 0.34), 0.11, look)));
        let axis = axis_line();
        let (end, before) = (axis[axis.len() - 1], axis[axis.len() - 2]);
        let mut marks = ruled(&open(&axis), (0.16, 0.26), 0.1, look);
        marks.extend(arrow(before, end, look));
        items.push(group("axis-of-the-pelvis", "", marks));
    }
    items
}

/// A broken line on a pale rim, so that it is taken for nothing of the baby's.
fn ruled(path: &[Step<FigurePoint>], dash: (f32, f32), width: f32, look: &MotherLook) -> Marks {
    let p = &look.palette;
    vec![
        Item::Stroke { path: path.to_vec(), colour: p.light, width: width + 0.1, dash: None },
        Item::Stroke { path: path.to_vec(), colour: p.mark, width, dash: Some(dash) },
    ]
}

/// The head of an arrow at `tip`, coming from `from`.
fn arrow(from: FigurePoint, tip: FigurePoint, look: &MotherLook) -> Marks {
    let (dx, dy) = (tip.x - from.x, tip.y - from.y);
    let long = (dx * dx + dy * dy).sqrt().max(1e-6);
    let (ux, uy) = (dx / long, dy / long);
    let at = |along: f32, aside: f32| {
        FigurePoint::new(tip.x + ux * along - uy * aside, tip.y + uy * along + ux * aside)
    };
    let path =
        vec![Step::Move(at(0.7, 0.0)), Step::Line(at(-0.4, 0.42)), Step::Line(at(-0.4, -0.42)), Step::Close];
    vec![stroke(path.clone(), 0.16, look.palette.light), fill(path, look.palette.mark)]
}
