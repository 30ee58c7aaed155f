//! The mother in the picture. In: her shape, the womb's outline, the look, what was found on her skin, and where the
//! baby is. Out: what is painted before the baby (`behind`) and after it (`in_front`), in cm, and where labels may
//! point. Labels themselves are not made here. Left of the mother is x > 0.

use crate::body::mother::{FundusKnown, MotherShape};
use crate::figure::mother_ink::{brush, ellipse, fill, fine_lines, flat, group, inset, points, stroke};
use crate::figure::scene::{Colour, FillRule, Frame, Item};
use crate::figure::smooth::{closed, closed_brush, distance, open};
use crate::figure::{mother_body, mother_bones};
use crate::units::{FigurePoint, MotherPoint, MotherSide};

pub use crate::figure::mother_bones::front as front_bones;
pub use crate::figure::mother_palette::{MotherPalette, MotherStyle};

/// The part of figure space that the mother's drawing is made for, cm.
pub const FRAME: Frame = Frame { left: -22.5, bottom: -14.0, right: 22.5, top: 39.0 };

/// Style and colours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MotherLook {
    /// Tonal or ink on white.
    pub style: MotherStyle,
    /// The colours; for `Line` best `MotherPalette::line()`.
    pub palette: MotherPalette,
}

impl MotherLook {
    /// The default look of a style.
    pub fn of(style: MotherStyle) -> Self {
        let palette = match style {
            MotherStyle::Soft => MotherPalette::ink_wash(),
            MotherStyle::Line => MotherPalette::line(),
        };
        Self { style, palette }
    }
}

/// Marks of the skin that were noted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct SkinMarks {
    /// The dark line in the midline.
    pub linea_nigra: bool,
    /// Stretch marks.
    pub striae: bool,
    /// A rash.
    pub rash: bool,
}

/// Marks painted over the baby.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FrontMarks {
    /// Lumps, where they were felt (`MotherShape::place`).
    pub lumps: Vec<MotherPoint>,
    /// Whether the line at the top of the womb is drawn.
    pub fundus_line: bool,
    /// Whether the line of the brim is drawn.
    pub brim_line: bool,
}

/// What a label may point at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum MotherAnchor {
    /// Her left end of the line at the top of the womb.
    FundusLeft,
    /// Her right end of it.
    FundusRight,
    /// Her left end of the line of the brim.
    BrimLeft,
    /// Her right end of it.
    BrimRight,
    /// Upper border of the pubic bone.
    PubicBone,
    /// The navel, or its mark beside the baby.
    Navel,
    /// The wall of the womb on her left, at its widest.
    WombLeft,
    /// The wall of the womb on her right.
    WombRight,
    /// Promontory of the sacrum.
    Promontory,
    /// The wing of the hip bone on her left.
    HipBoneLeft,
    /// The wing of the hip bone on her right.
    HipBoneRight,
    /// The rib margin on her left.
    RibsLeft,
    /// The rib margin on her right.
    RibsRight,
    /// The middle of a lump, by its number.
    Lump(usize),
}

/// Marks over the baby, and where labels may point.
#[derive(Clone, Debug, PartialEq)]
pub struct InFront {
    /// The marks in painting order.
    pub items: Vec<Item<FigurePoint>>,
    /// Places for labels.
    pub anchors: Vec<(MotherAnchor, FigurePoint)>,
}

/// What is painted before the baby: body, skin, bones, womb. `womb` is the outline of `body::womb::outline`; empty:
/// no womb is drawn. The paper is the caller's.
pub fn behind(
    shape: &MotherShape,
    womb: &[FigurePoint],
    skin: &SkinMarks,
    look: &MotherLook,
) -> Vec<Item<FigurePoint>> {
    // Once it stands above the promontory the womb covers the sacrum.
    let covered = womb.iter().any(|p| p.y > 13.0);
    let mut items = vec![
        group("mother-body", "", mother_body::draw(shape, skin, look)),
        group("mother-pelvis", "", mother_bones::whole(look, covered)),
    ];
    if womb.len() >= 3 {
        let p = &look.palette;
        let path = closed(womb);
        let mut inside = Vec::new();
        if look.style == MotherStyle::Soft {
            inside.push(fill(path.clone(), p.womb_shade[2]));
            for (near, far, colour) in
                [(0.3, 0.7, p.womb_shade[1]), (0.6, 1.5, p.womb_shade[0]), (1.0, 2.5, p.womb)]
            {
                inside.push(fill(closed(&inset(womb, near, far)), colour));
            }
        } else {
            inside.push(fill(path.clone(), p.womb));
        }
        inside.push(Item::Clip { path, items: mother_bones::veiled(look) });
        items.push(group("womb", "", inside));
    }
    if skin.linea_nigra {
        items.push(group("linea-nigra", "", vec![mother_body::linea_nigra(shape, look)]));
    }
    items
}

/// Scars, each a line on the skin (`MotherShape::scar`). They are painted before the baby: over a head they would read
/// as something on it.
pub fn scars(scars: &[Vec<MotherPoint>], look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let one = |(i, scar): (usize, &Vec<MotherPoint>)| {
        group(&format!("scar-{}", i + 1), "", scar_marks(&flat(scar), look.palette.mark))
    };
    scars.iter().enumerate().map(one).collect()
}

/// What is painted after the baby: the wall of the womb, the front of the pelvis, and the marks. `baby_at` tells
/// whether the baby is seen at a point; the navel keeps off it.
pub fn in_front(
    shape: &MotherShape,
    womb: &[FigurePoint],
    marks: &FrontMarks,
    look: &MotherLook,
    baby_at: &dyn Fn(FigurePoint) -> bool,
) -> InFront {
    let p = &look.palette;
    let mut items = Vec::new();
    let mut anchors = Vec::new();
    if womb.len() >= 3 {
        let width = if look.style == MotherStyle::Soft { 0.1 } else { 0.085 };
        let wall =
            Item::Fill { path: closed_brush(womb, width), colour: p.womb_line, rule: FillRule::EvenOdd };
        items.push(group("womb-wall", "", vec![wall]));
        let widest = |sign: f32| womb.iter().copied().max_by(|a, b| (a.x * sign).total_cmp(&(b.x * sign)));
        anchors.extend(widest(1.0).map(|at| (MotherAnchor::WombLeft, at)));
        anchors.extend(widest(-1.0).map(|at| (MotherAnchor::WombRight, at)));
    }
    items.push(group("pelvis-front", "", mother_bones::outline(look)));
    anchors.extend([
        (MotherAnchor::PubicBone, FigurePoint::new(0.0, 0.0)),
        (MotherAnchor::Promontory, FigurePoint::new(0.0, 9.0)),
        (MotherAnchor::HipBoneLeft, FigurePoint::new(12.4, 10.6)),
        (MotherAnchor::HipBoneRight, FigurePoint::new(-12.4, 10.6)),
    ]);
    for (anchor, side) in
        [(MotherAnchor::RibsLeft, MotherSide::Left), (MotherAnchor::RibsRight, MotherSide::Right)]
    {
        anchors.push((anchor, flat(&shape.rib_margin(side))[3]));
    }
    if marks.brim_line {
        items.push(group("brim", "", vec![dotted(-BRIM_LINE, BRIM_LINE, 0.0, p.mark)]));
        anchors.push((MotherAnchor::BrimLeft, FigurePoint::new(BRIM_LINE, 0.0)));
        anchors.push((MotherAnchor::BrimRight, FigurePoint::new(-BRIM_LINE, 0.0)));
    }
    if marks.fundus_line {
        items.push(group("fundus-line", "", fundus_line(shape, look)));
        let y = shape.fundus_y as f32;
        anchors.push((MotherAnchor::FundusLeft, FigurePoint::new(FUNDUS_LINE, y)));
        anchors.push((MotherAnchor::FundusRight, FigurePoint::new(-FUNDUS_LINE, y)));
    }
    for (i, lump) in marks.lumps.iter().enumerate() {
        let at = flat(&[*lump])[0];
        anchors.push((MotherAnchor::Lump(i), at));
        items.push(group(&format!("lump-{}", i + 1), "", lump_marks(at, look)));
    }
    let (at, mark) = navel(shape, look, baby_at);
    items.push(group("navel", "", mark));
    anchors.push((MotherAnchor::Navel, at));
    InFront { items, anchors }
}

/// Half the length of the line at the top of the womb, cm.
pub const FUNDUS_LINE: f32 = 6.5;
/// Half the length of the line of the brim, cm.
pub const BRIM_LINE: f32 = 9.4;

fn dotted(from: f32, to: f32, y: f32, colour: Colour) -> Item<FigurePoint> {
    let path = open(&points(&[(from, y), (to, y)]));
    Item::Stroke { path, colour, width: 0.085, dash: Some((0.01, 0.3)) }
}

/// A level line with a tick at each end; dashed when the height was not measured.
fn fundus_line(shape: &MotherShape, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let y = shape.fundus_y as f32;
    let colour = look.palette.mark;
    let dash = (shape.fundus_known == FundusKnown::Expected).then_some((0.42, 0.3));
    let level = open(&points(&[(-FUNDUS_LINE, y), (FUNDUS_LINE, y)]));
    let mut items = vec![Item::Stroke { path: level, colour, width: 0.06, dash }];
    for x in [-FUNDUS_LINE, FUNDUS_LINE] {
        items.push(stroke(open(&points(&[(x, y + 0.4), (x, y - 0.4)])), 0.06, colour));
    }
    items
}

/// A scar: its line, crossed by short stitches.
fn scar_marks(line: &[FigurePoint], colour: Colour) -> Vec<Item<FigurePoint>> {
    let mut stitches = Vec::new();
    for pair in line.windows(2) {
        let (a, b) = (pair[0], pair[1]);
        let d = distance(a, b).max(1e-6);
        let (nx, ny) = (-(b.y - a.y) / d * 0.3, (b.x - a.x) / d * 0.3);
        for share in if d > 1.6 { &[0.25, 0.75][..] } else { &[0.5][..] } {
            let (x, y) = (a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share);
            stitches.push(points(&[(x - nx, y - ny), (x + nx, y + ny)]));
        }
    }
    vec![brush(line, 0.09, colour), fine_lines(&stitches, 0.045, colour)]
}

/// A lump: a soft ring, and a finer one inside.
fn lump_marks(at: FigurePoint, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let mut items = Vec::new();
    if look.style == MotherStyle::Soft {
        items.push(stroke(ellipse(at, 1.75, 1.65), 0.42, p.womb_shade[2]));
        items.push(stroke(ellipse(at, 1.78, 1.68), 0.2, p.womb_shade[2].mix(p.womb_line, 0.35)));
    }
    items.push(stroke(ellipse(at, 1.85, 1.75), 0.05, p.womb_line));
    let inner = ellipse(at, 1.4, 1.3);
    items.push(Item::Stroke { path: inner, colour: p.womb_line, width: 0.04, dash: Some((0.25, 0.25)) });
    items
}

/// The navel where it is, or, when the baby is there, a small mark at the same height beside it.
fn navel(
    shape: &MotherShape,
    look: &MotherLook,
    baby_at: &dyn Fn(FigurePoint) -> bool,
) -> (FigurePoint, Vec<Item<FigurePoint>>) {
    let p = &look.palette;
    let y = shape.navel_y as f32;
    let free = |x: f32| {
        [(0.0, 0.0), (0.9, 0.0), (-0.9, 0.0), (0.0, 0.8), (0.0, -0.8)]
            .iter()
            .all(|(dx, dy)| !baby_at(FigurePoint::new(x + dx, y + dy)))
    };
    if free(0.0) {
        let at = FigurePoint::new(0.0, y);
        let mut items = Vec::new();
        if look.style == MotherStyle::Soft {
            items.push(fill(ellipse(at, 0.62, 0.5), p.shade[1]));
            items.push(fill(ellipse(FigurePoint::new(0.05, y - 0.06), 0.4, 0.3), p.shade[2]));
        }
        items.push(brush(
            &points(&[
                (-0.66, y - 0.12),
                (-0.5, y + 0.34),
                (0.0, y + 0.52),
                (0.5, y + 0.34),
                (0.66, y - 0.12),
            ]),
            0.085,
            p.mark,
        ));
        items.push(brush(&points(&[(-0.3, y - 0.3), (0.0, y - 0.4), (0.32, y - 0.28)]), 0.06, p.mark));
        return (at, items);
    }
    // Whichever side is nearer to the midline; her right when both are equal.
    let limit = shape.half_width(f64::from(y)) as f32 - 1.5;
    let nearest =
        |sign: f32| (1..).map(|i| 0.1 * i as f32).take_while(|d| *d < limit).find(|d| free(d * sign));
    let (left, right) = (nearest(1.0).unwrap_or(limit), nearest(-1.0).unwrap_or(limit));
    let x = if left < right { left + 0.5 } else { -right - 0.5 };
    let at = FigurePoint::new(x.clamp(-limit, limit), y);
    let dash = |from: f32, to: f32| stroke(open(&points(&[(at.x + from, y), (at.x + to, y)])), 0.05, p.mark);
    (at, vec![stroke(ellipse(at, 0.26, 0.22), 0.06, p.mark), dash(-0.75, -0.42), dash(0.42, 0.75)])
}
