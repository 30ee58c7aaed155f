//! Her side of the view from below: the outlet of the pelvis, the canal, the cervix. In: how far the cervix is open, the look.
//! Out: marks. Her left is made; her right is its mirror image.
//!
//! Measures: 11 cm between the tuberosities, 12 to 13 from the pubic bone to the coccyx (`tests/published/pelvis.csv`); the
//! drawing between them is the artist's, by about 1 cm.

use super::{FULLY_OPEN, LARGER, at};
use crate::figure::mother::MotherLook;
use crate::figure::mother_ink::{brush, brushes, ellipse, fill, stroke};
use crate::figure::mother_palette::MotherStyle;
use crate::figure::scene::{Item, Path, Step};
use crate::figure::smooth::{closed, cornered, open};
use crate::units::FigurePoint;

/// How far the bones reach to either side, cm.
pub(super) const HALF_BREADTH: f32 = 10.9;

type Points = &'static [(f32, f32)];

/// From the symphysis over the upper branch to the socket, round the tuberosity.
const OUTER: Points = &[
    (0.3, 8.5),
    (2.2, 8.6),
    (4.6, 8.0),
    (6.9, 7.1),
    (9.0, 5.6),
    (10.5, 3.4),
    (10.8, 0.9),
    (10.0, -1.4),
    (8.8, -2.8),
    (7.4, -3.5),
    (6.1, -3.1),
    (5.5, -1.8),
    (5.5, -0.5),
];
/// The arch, from the tuberosity up to the symphysis.
const ARCH: Points = &[(5.5, -0.5), (5.0, 1.7), (3.9, 3.9), (2.5, 5.5), (1.1, 6.2), (0.3, 6.3)];
const HOLE: Points =
    &[(3.5, 6.5), (5.4, 6.2), (7.4, 4.8), (8.1, 2.6), (7.4, 0.8), (6.4, 1.0), (5.5, 3.0), (4.3, 5.0)];
/// Coccyx and sacrum from the tip, foreshortened.
const SACRUM: Points = &[
    (0.0, -6.1),
    (0.65, -6.5),
    (0.95, -7.5),
    (2.0, -8.1),
    (3.5, -8.9),
    (4.9, -9.9),
    (5.4, -11.1),
    (3.6, -11.9),
    (0.0, -12.1),
];
const CANAL: Points = &[
    (0.0, 6.2),
    (1.3, 6.0),
    (2.7, 5.1),
    (4.1, 3.4),
    (5.0, 1.6),
    (5.5, -0.5),
    (5.4, -2.4),
    (4.4, -4.4),
    (2.5, -5.8),
    (0.0, -6.2),
];

fn her(side: f32, points: &[(f32, f32)]) -> Vec<FigurePoint> {
    points.iter().map(|(x, y)| at(x * side, *y)).collect()
}

fn both(half: &[(f32, f32)]) -> Vec<FigurePoint> {
    let mut all = her(1.0, half);
    all.extend(her(-1.0, half).into_iter().rev().skip(1));
    all.pop();
    all
}

fn canal() -> Path<FigurePoint> {
    closed(&both(CANAL))
}

/// The window through which what leads is seen whole.
pub(super) fn opening(open_cm: u8) -> Path<FigurePoint> {
    if open_cm >= FULLY_OPEN { canal() } else { ring(f32::from(open_cm) * 0.5) }
}

fn ring(radius: f32) -> Path<FigurePoint> {
    ellipse(at(0.0, 0.0), radius * LARGER, radius * LARGER)
}

/// The canal, the wall before what leads, and what shows through it.
pub(super) fn behind(open_cm: u8, faint: &[Vec<FigurePoint>], look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let soft = look.style == MotherStyle::Soft;
    let deep = if soft { p.womb_shade[2].mix(p.ink, 0.35) } else { p.paper };
    if open_cm >= FULLY_OPEN {
        return vec![fill(canal(), deep)];
    }
    let mut items = vec![fill(canal(), p.womb_shade[1])];
    let mut inside = vec![];
    // The wall comes towards the viewer at the lip.
    let lip = f32::from(open_cm) * 0.5;
    if soft {
        for (far, colour) in [(2.6, p.womb_shade[0]), (1.8, p.womb_shade[0].mix(p.womb, 0.5)), (1.0, p.womb)]
        {
            inside.push(fill(ring(lip + far), colour));
        }
    }
    inside.push(brushes(&rays(lip), 0.07, p.womb_line.mix(p.womb, 0.35)));
    let lines: Path<FigurePoint> = faint.iter().flat_map(|line| open(line)).collect();
    inside.push(Item::Stroke { path: lines, colour: p.ink, width: 0.09, dash: Some((0.55, 0.5)) });
    items.push(Item::Clip { path: canal(), items: inside });
    items.push(fill(ring(lip), deep));
    items
}

/// Fine folds that run out from the lip.
fn rays(lip: f32) -> Vec<Vec<FigurePoint>> {
    const MANY: u16 = 64;
    (0..MANY)
        .map(|i| {
            let (sin, cos) = libm::sincosf(std::f32::consts::TAU * f32::from(i) / f32::from(MANY));
            let far = lip + [0.95, 0.6, 1.5, 0.6][usize::from(i % 4)];
            let near = lip + 0.32;
            let to = |r: f32, turn: f32| at(r * (cos - turn * sin), r * (sin + turn * cos));
            vec![to(near, 0.0), to(0.5 * (near + far), 0.012), to(far, 0.03)]
        })
        .collect()
}

/// The lip of the cervix.
pub(super) fn lip(open_cm: u8, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    if open_cm >= FULLY_OPEN {
        return vec![];
    }
    let p = &look.palette;
    let radius = f32::from(open_cm) * 0.5;
    vec![
        stroke(ring(radius + 0.16), 0.62, p.womb),
        stroke(ring(radius + 0.33), 0.08, p.womb_line),
        stroke(ring(radius), 0.15, p.womb_line),
    ]
}

/// The bones of the outlet, before what leads.
pub(super) fn bones(look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let mut items = vec![];
    // Ligaments from the tuberosities to the sacrum, and between them the floor that is not drawn.
    for side in [1.0, -1.0] {
        let strands: Vec<Vec<FigurePoint>> = (0..9)
            .map(|i| {
                let t = i as f32 / 8.0;
                let from = (6.1 + 1.9 * t, -3.2 - 0.15 * t);
                let to = (1.9 + 3.0 * t, -8.0 - 1.9 * t);
                let bend = (0.5 * (from.0 + to.0) + 0.35, 0.5 * (from.1 + to.1) - 0.25);
                her(side, &[from, bend, to])
            })
            .collect();
        items.push(brushes(&strands, 0.09, p.bone_line));
    }
    items.push(stroke(canal(), 0.11, p.womb_line));
    let sacrum = both(SACRUM);
    items.extend(raised(closed(&sacrum), look));
    items.push(brushes(&sacral(), 0.09, p.bone_line));
    items.push(stroke(closed(&sacrum), 0.13, p.bone_line));
    for side in [1.0, -1.0] {
        let outline = cornered(&[her(side, OUTER), her(side, ARCH)]);
        items.extend(raised(outline.clone(), look));
        items.push(brushes(&hatch(side), 0.085, p.bone_line));
        let hole = closed(&her(side, HOLE));
        // Its rim in shade, its depth paler.
        items.push(fill(hole.clone(), if look.style == MotherStyle::Soft { p.shade[2] } else { p.paper }));
        items
            .push(Item::Clip { path: hole.clone(), items: vec![fill(moved(&hole, 0.35, -0.4), p.shade[0])] });
        items.push(stroke(outline, 0.13, p.bone_line));
        items.push(stroke(hole, 0.11, p.bone_line));
    }
    // The cartilage of the symphysis.
    let disc = cornered(&[her(1.0, &[(0.3, 8.5), (0.3, 6.3)]), her(-1.0, &[(0.3, 6.3), (0.3, 8.5)])]);
    items.push(fill(disc, p.bone_shade));
    items.push(brush(&her(1.0, &[(0.0, 8.4), (0.0, 6.4)]), 0.1, p.bone_line));
    items
}

/// A bone that stands out: pale where the light falls, in shade at its lower right.
fn raised(path: Path<FigurePoint>, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    if look.style != MotherStyle::Soft {
        return vec![fill(path, p.bone)];
    }
    let dark = p.bone_shade.mix(p.bone_line, 0.28);
    let steps = [(0.16, p.bone_shade.mix(p.bone_line, 0.12)), (0.4, p.bone_shade), (0.75, p.bone)];
    let lit = steps.map(|(by, colour)| fill(moved(&path, -by, 1.15 * by), colour));
    vec![fill(path.clone(), dark), Item::Clip { path, items: lit.into() }]
}

fn moved(path: &Path<FigurePoint>, x: f32, y: f32) -> Path<FigurePoint> {
    let by = |p: FigurePoint| FigurePoint::new(p.x + x, p.y + y);
    let step = |step: &Step<FigurePoint>| match *step {
        Step::Move(a) => Step::Move(by(a)),
        Step::Line(a) => Step::Line(by(a)),
        Step::Curve(a, b, c) => Step::Curve(by(a), by(b), by(c)),
        Step::Close => Step::Close,
    };
    path.iter().map(step).collect()
}

/// The joints of the coccyx and the holes of the sacrum.
fn sacral() -> Vec<Vec<FigurePoint>> {
    let mut out: Vec<Vec<FigurePoint>> = [(0.62, -6.75), (0.85, -7.4), (1.9, -8.4), (3.2, -9.6)]
        .map(|(half, y)| {
            let sag: f32 = 0.12 + 0.05 * half;
            her(1.0, &[(-half, y), (0.0, y - sag), (half, y)])
        })
        .into();
    for side in [1.0, -1.0] {
        for (x, y) in [(1.3, -9.0), (1.7, -10.2)] {
            out.push(her(side, &[(x - 0.25, y), (x, y + 0.18), (x + 0.25, y), (x, y - 0.18), (x - 0.25, y)]));
        }
        out.push(her(side, &[(3.9, -9.5), (4.5, -10.4), (4.6, -11.2)]));
        out.push(her(side, &[(3.4, -9.6), (4.0, -10.5), (4.0, -11.4)]));
    }
    out
}

/// Lines that round the branches and the tuberosity.
fn hatch(side: f32) -> Vec<Vec<FigurePoint>> {
    let mut out = vec![];
    // Along the arch and across the tuberosity.
    for k in 0..3 {
        let off = 0.28 + 0.26 * k as f32;
        out.push(her(side, &[(5.5 + 0.55 * off, 0.4), (4.75 + off, 2.2), (3.9 + 0.85 * off, 3.75)]));
        out.push(her(
            side,
            &[(2.9 + 0.4 * off, 5.55 + 0.2 * off), (1.9, 6.2 + 0.6 * off), (0.8, 6.5 + 0.75 * off)],
        ));
        out.push(her(
            side,
            &[(6.2 + 0.3 * off, -2.7 + off), (7.3, -3.2 + off), (8.6 - 0.3 * off, -2.4 + off)],
        ));
        out.push(her(side, &[(10.6 - off, 2.9), (10.6 - off, 0.9), (9.8 - 0.7 * off, -0.9)]));
        out.push(her(side, &[(3.0, 8.1 - 0.45 * off), (4.8, 7.6 - 0.45 * off), (6.6, 6.9 - 0.45 * off)]));
    }
    out
}
