//! The mother in the picture. In: her shape, the womb's outline, the look, what was found on her skin, and where the
//! baby is. Out: what is painted before the baby (`behind`) and after it (`in_front`), in cm, and where labels may
//! point. Labels themselves are not made here. Left of the mother is x > 0.

use crate::body::mother::{FundusKnown, MotherShape};
use crate::figure::mother_ink::{brush, ellipse, fill, fine_lines, flat, group, inset, points, stroke};
use crate::figure::scene::{Colour, Frame, Item};
use crate::figure::smooth::{closed, distance, open};
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

/// Between which heights handbooks put the top of the womb, cm above the pubic bone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Handbooks {
    /// Lowest level given.
    pub low: f32,
    /// Highest level given.
    pub high: f32,
}

/// Marks painted over the baby.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FrontMarks {
    /// Scars, each a line on the skin (`MotherShape::scar`).
    pub scars: Vec<Vec<MotherPoint>>,
    /// Lumps, where they are drawn (`womb::lump_in_wall`).
    pub lumps: Vec<MotherPoint>,
    /// The heights between which handbooks put the top of the womb at these weeks.
    pub handbooks: Option<Handbooks>,
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
    /// The navel: on the midline, always; not there when the baby lies over it.
    Navel,
    /// Her left end of the mark at the level of the navel that stands beside the womb when the baby lies there.
    NavelLevelLeft,
    /// Her right end of it.
    NavelLevelRight,
    /// Inside the womb, below its top: where it is called the womb when no baby is drawn.
    Womb,
    /// Her left end of the band of the handbooks.
    HandbooksLeft,
    /// Her right end of it.
    HandbooksRight,
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
    /// The front of the pelvis, as outline and veil: painted over the baby, before the marks; for a family behind it.
    pub bones: Vec<Item<FigurePoint>>,
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
    items.extend(room(womb, covered, look));
    if skin.linea_nigra {
        items.push(group("linea-nigra", "", vec![mother_body::linea_nigra(shape, look)]));
    }
    items
}

/// The inside of the womb; `veiled`: with the sacrum faintly behind it.
pub(super) fn room(womb: &[FigurePoint], veiled: bool, look: &MotherLook) -> Option<Item<FigurePoint>> {
    if womb.len() < 3 {
        return None;
    }
    let p = &look.palette;
    let path = closed(womb);
    let mut inside = Vec::new();
    if look.style == MotherStyle::Soft {
        inside.push(fill(path, p.womb_shade[2]));
        // A small womb has a narrow wall.
        let broad =
            womb.iter().fold(f32::MIN, |m, q| m.max(q.x)) - womb.iter().fold(f32::MAX, |m, q| m.min(q.x));
        let size = (broad / 17.0).min(1.0);
        let few: Vec<FigurePoint> = womb.iter().step_by(2).copied().collect();
        for (near, far, colour) in
            [(0.3, 0.8, p.womb_shade[1]), (0.65, 1.7, p.womb_shade[0]), (1.1, 2.8, p.womb)]
        {
            inside.push(fill(closed(&inset(&few, near * size, far * size)), colour));
        }
    } else {
        inside.push(fill(path, p.womb));
    }
    if veiled {
        inside.extend(mother_bones::veiled(look));
    }
    Some(group("womb", "", inside))
}

/// What is painted after the baby: the wall of the womb, the front of the pelvis, and the marks. `baby_at` tells
/// whether the baby is seen at a point: there the skin's own marks are faint.
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
        // What was not felt is drawn broken.
        let dash = (shape.fundus_known == FundusKnown::Expected).then_some((0.75, 0.45));
        let wall = Item::Stroke { path: closed(womb), colour: p.womb_line, width, dash };
        items.push(group("womb-wall", "", vec![wall]));
        let widest = |sign: f32| womb.iter().copied().max_by(|a, b| (a.x * sign).total_cmp(&(b.x * sign)));
        anchors.extend(widest(1.0).map(|at| (MotherAnchor::WombLeft, at)));
        anchors.extend(widest(-1.0).map(|at| (MotherAnchor::WombRight, at)));
        let (low, high) = womb.iter().fold((f32::MAX, f32::MIN), |m, q| (m.0.min(q.y), m.1.max(q.y)));
        anchors.push((
            MotherAnchor::Womb,
            FigurePoint::new(0.22 * (high - low).min(10.0), low + 0.45 * (high - low)),
        ));
    }
    let bones = vec![group("pelvis-front", "", mother_bones::outline(look))];
    anchors.extend([
        (MotherAnchor::PubicBone, FigurePoint::new(0.0, 0.0)),
        (MotherAnchor::Promontory, FigurePoint::new(0.0, 9.0)),
        (MotherAnchor::HipBoneLeft, FigurePoint::new(12.4, 10.6)),
        (MotherAnchor::HipBoneRight, FigurePoint::new(-12.4, 10.6)),
    ]);
    for (anchor, side) in
        [(MotherAnchor::RibsLeft, MotherSide::Left), (MotherAnchor::RibsRight, MotherSide::Right)]
    {
        anchors.push((anchor, flat(&shape.rib_margin(side))[2]));
    }
    if marks.brim_line {
        items.push(group("brim", "", vec![dotted(-BRIM_LINE, BRIM_LINE, 0.0, p.mark)]));
        anchors.push((MotherAnchor::BrimLeft, FigurePoint::new(BRIM_LINE, 0.0)));
        anchors.push((MotherAnchor::BrimRight, FigurePoint::new(-BRIM_LINE, 0.0)));
    }
    if let Some(band) = &marks.handbooks {
        items.push(group("handbooks", "", vec![handbook_band(band, womb, look)]));
        let y = 0.5 * (band.low + band.high);
        anchors.push((MotherAnchor::HandbooksLeft, FigurePoint::new(HANDBOOKS, y)));
        anchors.push((MotherAnchor::HandbooksRight, FigurePoint::new(-HANDBOOKS, y)));
    }
    // Before 12 weeks nothing stands above the brim.
    if marks.fundus_line && shape.fundus_y > 0.0 {
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
    for (i, scar) in marks.scars.iter().enumerate() {
        items.push(group(&format!("scar-{}", i + 1), "", scar_marks(&flat(scar), look, baby_at)));
    }
    let y = shape.navel_y as f32;
    if covers_navel(y, baby_at) {
        let (right, left) = breadth_at(womb, y).unwrap_or((-12.0, 12.0));
        items.push(group("navel", "", navel_level(y, right, left, look)));
        anchors.push((MotherAnchor::NavelLevelLeft, FigurePoint::new(left + LEVEL_TO, y)));
        anchors.push((MotherAnchor::NavelLevelRight, FigurePoint::new(right - LEVEL_TO, y)));
    } else {
        items.push(group("navel", "", navel(y, look)));
        anchors.push((MotherAnchor::Navel, FigurePoint::new(0.0, y)));
    }
    InFront { bones, items, anchors }
}

/// Half the length of the line at the top of the womb, cm.
pub const FUNDUS_LINE: f32 = 6.5;
/// Half the length of the band of the handbooks, cm.
pub const HANDBOOKS: f32 = 11.5;
/// Where the mark at the level of the navel begins and ends outside the womb, cm.
const LEVEL_FROM: f32 = 0.35;
const LEVEL_TO: f32 = 1.6;
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

/// From where to where, seen from the front, the womb reaches at height `y`: x on her right, x on her left.
fn breadth_at(womb: &[FigurePoint], y: f32) -> Option<(f32, f32)> {
    let n = womb.len();
    let crossings = (0..n).filter_map(|i| {
        let (a, b) = (womb[i], womb[(i + 1) % n]);
        ((a.y > y) != (b.y > y)).then(|| a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y))
    });
    crossings.fold(None, |m: Option<(f32, f32)>, x| {
        Some(m.map_or((x, x), |(low, high)| (low.min(x), high.max(x))))
    })
}

/// Where handbooks put the top of the womb: fine level lines on both sides of it, longest in the middle.
fn handbook_band(band: &Handbooks, womb: &[FigurePoint], look: &MotherLook) -> Item<FigurePoint> {
    let p = &look.palette;
    let (low, high) = if band.high - band.low < 0.8 {
        let middle = 0.5 * (band.low + band.high);
        (middle - 0.4, middle + 0.4)
    } else {
        (band.low, band.high)
    };
    let steps = ((high - low) / 0.5).round().max(2.0);
    let mut lines = Vec::new();
    for i in 0..=steps as usize {
        let y = low + (high - low) * i as f32 / steps;
        let (right, left) = breadth_at(womb, y).unwrap_or((-0.3, 0.3));
        // Every other line is a little shorter.
        let end = HANDBOOKS - 0.5 * (i % 2) as f32;
        for (from, to) in [(left + 0.5, end), (right - 0.5, -end)] {
            if (to - from).abs() > 1.0 && (to - from) * to > 0.0 {
                lines.push(points(&[(from, y), (to, y)]));
            }
        }
    }
    let (width, colour) = match look.style {
        MotherStyle::Soft => (0.06, p.mark.mix(p.skin, 0.55)),
        MotherStyle::Line => (0.035, p.ink),
    };
    fine_lines(&lines, width, colour)
}

/// A scar. On bare skin: its line, crossed by short stitches. Over the baby: broken and thin on a halo of light, so that
/// it is taken for nothing of the baby's.
fn scar_marks(
    line: &[FigurePoint],
    look: &MotherLook,
    baby_at: &dyn Fn(FigurePoint) -> bool,
) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let over = |q: &FigurePoint| {
        [(0.0, 0.0), (0.45, 0.0), (-0.45, 0.0), (0.0, 0.45), (0.0, -0.45)]
            .iter()
            .any(|(x, y)| baby_at(FigurePoint::new(q.x + x, q.y + y)))
    };
    let fine = between(line, 0.3);
    let mut items = Vec::new();
    let mut start = 0;
    for i in 1..=fine.len() {
        if i < fine.len() && over(&fine[i]) == over(&fine[start]) {
            continue;
        }
        // The next run starts where this one ends.
        let run = &fine[start..fine.len().min(i + 1)];
        if over(&fine[start]) {
            // Dots, each on a halo of light.
            for (width, colour) in [(0.19, p.light), (0.085, p.mark)] {
                let dash = Some((0.01, 0.42));
                items.push(Item::Stroke { path: open(&every(run, 1.2)), colour, width, dash });
            }
        } else {
            let run = every(run, 1.2);
            items.push(brush(&run, 0.09, p.mark));
            items.push(fine_lines(&stitches(&run), 0.045, p.mark));
        }
        start = i;
    }
    items
}

/// Short lines across a scar.
fn stitches(line: &[FigurePoint]) -> Vec<Vec<FigurePoint>> {
    line.windows(2)
        .map(|pair| {
            let (a, b) = (pair[0], pair[1]);
            let d = distance(a, b).max(1e-6);
            let (nx, ny) = (-(b.y - a.y) / d * 0.26, (b.x - a.x) / d * 0.26);
            let (x, y) = (0.5 * (a.x + b.x), 0.5 * (a.y + b.y));
            points(&[(x - nx, y - ny), (x + nx, y + ny)])
        })
        .collect()
}

/// Points at most `step` cm apart along straight pieces, the given ones among them.
fn between(line: &[FigurePoint], step: f32) -> Vec<FigurePoint> {
    let mut out: Vec<FigurePoint> = line.first().copied().into_iter().collect();
    for pair in line.windows(2) {
        let n = (distance(pair[0], pair[1]) / step).ceil().max(1.0);
        out.extend((1..=n as usize).map(|i| {
            let t = i as f32 / n;
            FigurePoint::new(pair[0].x + (pair[1].x - pair[0].x) * t, pair[0].y + (pair[1].y - pair[0].y) * t)
        }));
    }
    out
}

/// Of many points about one every `step` cm, first and last among them.
fn every(line: &[FigurePoint], step: f32) -> Vec<FigurePoint> {
    let length: f32 = line.windows(2).map(|pair| distance(pair[0], pair[1])).sum();
    let n = (length / step).round().max(1.0) as usize;
    (0..=n).map(|i| line[i * (line.len() - 1) / n]).collect()
}

/// A lump in the wall of the womb: a round swelling, shaded away from the light.
fn lump_marks(at: FigurePoint, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let by = |x: f32, y: f32| FigurePoint::new(at.x + x, at.y + y);
    let mut items = Vec::new();
    if look.style == MotherStyle::Soft {
        items.push(fill(ellipse(at, LUMP, LUMP * 0.94), p.womb_shade[2].mix(p.womb_line, 0.18)));
        items.push(fill(ellipse(by(-0.13, 0.13), LUMP * 0.88, LUMP * 0.82), p.womb_shade[1]));
        items.push(fill(ellipse(by(-0.35, 0.35), LUMP * 0.58, LUMP * 0.52), p.womb));
    } else {
        items.push(fill(ellipse(at, LUMP, LUMP * 0.94), p.womb));
    }
    items.push(stroke(ellipse(at, LUMP, LUMP * 0.94), 0.07, p.womb_line));
    // Two strokes round the side turned away from the light.
    let round = |k: f32| {
        [(-0.35, -0.94), (0.35, -0.94), (0.87, -0.5), (0.98, 0.2)].map(|(x, y)| by(x * k, y * k)).to_vec()
    };
    items.push(fine_lines(&[round(LUMP * 0.82), round(LUMP * 0.62)[1..].to_vec()], 0.045, p.womb_line));
    items
}

/// Half the breadth of a lump, cm.
const LUMP: f32 = 1.7;

/// Whether the baby lies over the navel, or so near that the two would run together.
fn covers_navel(y: f32, baby_at: &dyn Fn(FigurePoint) -> bool) -> bool {
    const AROUND: [(f32, f32); 9] = [
        (0.0, 0.0),
        (1.4, 0.0),
        (1.0, 1.0),
        (0.0, 1.3),
        (-1.0, 1.0),
        (-1.4, 0.0),
        (-1.0, -1.0),
        (0.0, -1.3),
        (1.0, -1.0),
    ];
    AROUND.iter().any(|(dx, dy)| baby_at(FigurePoint::new(*dx, y + dy)))
}

/// The navel on bare skin or on the womb: a hollow under a fold.
fn navel(y: f32, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let p = &look.palette;
    let at = FigurePoint::new(0.0, y);
    let mut items = Vec::new();
    if look.style == MotherStyle::Soft {
        items.push(fill(ellipse(at, 0.66, 0.56), p.shade[1]));
        items.push(fill(ellipse(FigurePoint::new(0.05, y - 0.04), 0.42, 0.34), p.shade[2]));
    }
    let fold = [(-0.66, y - 0.12), (-0.5, y + 0.34), (0.0, y + 0.52), (0.5, y + 0.34), (0.66, y - 0.12)];
    items.push(brush(&points(&fold), 0.085, p.mark));
    items.push(brush(&points(&[(-0.3, y - 0.3), (0.0, y - 0.4), (0.32, y - 0.28)]), 0.06, p.mark));
    items
}

/// The level of the navel when the baby lies there: a short level line on each side of the womb, alike on both. On the
/// baby itself anything that is drawn for her navel is taken for something of the baby.
fn navel_level(y: f32, right: f32, left: f32, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let lines = [(left + LEVEL_FROM, left + LEVEL_TO), (right - LEVEL_FROM, right - LEVEL_TO)]
        .map(|(a, b)| points(&[(a, y), (b, y)]));
    vec![fine_lines(&lines, 0.06, look.palette.mark)]
}
