//! The tracing sheet at true size. In: a pose, its strokes, which of them are firm, paper. Out: sheets: the lines of the
//! drawing unrolled along the curve of the abdomen, with darts, landmarks and numbers, over as many sheets as it takes.
//!
//! Marks are laid in mm round the upper edge of the pubic bone in the midline: x to her left, y **down**.

use super::places::Landmarks;
use super::tiles::{Tiles, sheets};
use super::{Grounds, Length, main_stroke};
use crate::body::mother::FundusKnown;
use crate::body::pose::{Mark, Pose};
use crate::body::unroll::{Dart, Flat, Unrolled};
use crate::figure::artist::heart_outline;
use crate::figure::panel::path;
use crate::figure::scene::{Align, Colour, FillRule, Item, Path, Role, Step as Draw, Text};
use crate::figure::strokes::Stroke;
use crate::figure::{HEART, mother_ink};
use crate::fonts::{Face, Fonts};
use crate::sheet::{Sheet, SheetError};
use crate::units::{FigurePoint, PagePoint};
use crate::words::Words;

pub(super) const INK: Colour = Colour::hex(0x221C19);
pub(super) const QUIET: Colour = Colour::hex(0x7D746D);
const GAP: Colour = Colour::hex(0xEFEAE6);
pub(super) const PAPER: Colour = Colour::hex(0xFFFFFF);
/// Widths, mm.
const LINE_MM: f32 = 1.5;
const FINE_MM: f32 = 0.9;
const THIN_MM: f32 = 0.35;
/// Dash and gap of a line that was not found, mm.
const BROKEN_MM: (f32, f32) = (3.0, 2.6);
/// How far a line may lie from its points, cm.
const TOLERANCE: f32 = 0.006;
/// Type of the words among the lines, points.
const TYPE_MM: f32 = 12.0 * 25.4 / 72.0;
/// Radius of the round with the number of a step, mm.
const NUMBER_MM: f32 = 3.0;
/// The same where the baby's number stands before it.
const NUMBERS_MM: f32 = 4.3;
/// Paper beyond the lines, mm.
const ROUND_MM: f32 = 3.0;
/// A dart narrower than this is not cut, cm.
const NARROW: f64 = 0.06;

/// What is drawn on the sheet.
pub struct Pattern<'a> {
    /// The pose.
    pub pose: &'a Pose,
    /// Its strokes.
    pub strokes: &'a [Stroke],
    /// How much of it is drawn.
    pub length: Length,
    /// What they rest on: number of each baby and its grounds.
    pub grounds: &'a [(usize, Grounds)],
    /// What is measured from.
    pub landmarks: Landmarks<'a>,
    /// How the babies lie, in words.
    pub lie: &'a str,
}

/// All marks of a pattern, mm.
pub(super) struct Marks {
    /// Lines and fills, in painting order.
    pub items: Vec<Item<PagePoint>>,
    /// Words, each with its width.
    pub texts: Vec<(Text<PagePoint>, f32)>,
    /// Points that have to be on paper.
    pub points: Vec<PagePoint>,
}

/// The sheets of a pattern on paper of this size on its short side, mm.
pub fn tracing(
    pattern: &Pattern<'_>,
    paper: (f32, f32),
    words: &Words,
    fonts: &Fonts,
) -> Result<Vec<Sheet>, SheetError> {
    let marks = marks(pattern, words, fonts)?;
    let tiles = Tiles::over(&marks, paper);
    sheets(&tiles, &marks, (pattern.lie, pattern.pose.baby_count > 1), words, fonts)
}

/// The skin under a pattern, laid flat.
pub fn unrolled(pattern: &Pattern<'_>) -> Unrolled {
    let (mut wide, mut top) = (7.0f64, pattern.pose.mother.navel_along);
    let mut reach = |p: FigurePoint| {
        let (across, along) = pattern.landmarks.lengths(p);
        (wide, top) = (wide.max(across.abs()), top.max(along));
    };
    pattern.strokes.iter().filter(|s| !s.deep).flat_map(|s| &s.line).for_each(|p| reach(*p));
    for mark in &pattern.pose.marks {
        if let Mark::Heart(_, at) = mark {
            reach(FigurePoint::new(at.0.x, at.0.y));
        }
    }
    Unrolled::new(&pattern.pose.mother, top.max(pattern.pose.mother.fundus_along) + 1.5, wide + 1.5)
}

/// On the page, mm: the one place where the y axis of the unrolled skin is turned.
fn on_page(p: Flat) -> PagePoint {
    PagePoint::new(p.0 as f32 * 10.0, -p.1 as f32 * 10.0)
}

fn marks(pattern: &Pattern<'_>, words: &Words, fonts: &Fonts) -> Result<Marks, SheetError> {
    let skin = unrolled(pattern);
    let mut marks = Marks { items: vec![], texts: vec![], points: vec![] };
    for dart in skin.darts() {
        for sign in [1.0, -1.0] {
            marks.items.extend(dart_marks(&dart, sign));
        }
    }
    for rim in skin.rims() {
        for sign in [1.0, -1.0] {
            let side: Vec<PagePoint> = rim.iter().map(|p| on_page((p.0 * sign, p.1))).collect();
            let path = polyline(&side);
            marks.items.push(Item::Stroke { path, colour: QUIET, width: THIN_MM, dash: None });
        }
    }
    let mut lines = vec![];
    for stroke in pattern.strokes.iter().filter(|stroke| !stroke.deep) {
        let firm = is_firm(pattern, stroke);
        if !firm && stroke.fine {
            continue;
        }
        for piece in pieces(&stroke.line, &pattern.landmarks, &skin) {
            marks.points.extend(piece.iter().map(|p| on_page((f64::from(p.x), f64::from(p.y)))));
            lines.push((piece, stroke, firm));
        }
    }
    landmarks(pattern, &skin, words, fonts, &mut marks)?;
    for (piece, stroke, firm) in &lines {
        let closed = stroke.closed && lines.iter().filter(|(_, s, _)| std::ptr::eq(*s, *stroke)).count() == 1;
        let figure = path(piece, closed, TOLERANCE);
        marks.items.push(Item::Stroke {
            path: turned(&figure),
            colour: INK,
            width: if stroke.fine { FINE_MM } else { LINE_MM },
            dash: (!firm).then_some(BROKEN_MM),
        });
    }
    for mark in &pattern.pose.marks {
        if let Mark::Heart(_, at) = mark {
            let at = flat(FigurePoint::new(at.0.x, at.0.y), &pattern.landmarks, &skin);
            let at = on_page(at);
            marks
                .points
                .extend([(-10.5, -11.5), (10.5, 10.0)].map(|(x, y)| PagePoint::new(at.x + x, at.y + y)));
            marks.items.push(heart(at));
        }
    }
    numbers(pattern, &skin, words, fonts, &mut marks)?;
    Ok(marks)
}

pub(super) fn is_firm(pattern: &Pattern<'_>, stroke: &Stroke) -> bool {
    pattern.grounds.iter().any(|(number, grounds)| *number == stroke.baby && grounds.is_firm(stroke))
}

fn turned(figure: &Path<FigurePoint>) -> Path<PagePoint> {
    let at = |p: FigurePoint| on_page((f64::from(p.x), f64::from(p.y)));
    let turn = |step: &Draw<FigurePoint>| match *step {
        Draw::Move(p) => Draw::Move(at(p)),
        Draw::Line(p) => Draw::Line(at(p)),
        Draw::Curve(a, b, c) => Draw::Curve(at(a), at(b), at(c)),
        Draw::Close => Draw::Close,
    };
    figure.iter().map(turn).collect()
}

fn flat(p: FigurePoint, landmarks: &Landmarks<'_>, skin: &Unrolled) -> Flat {
    let (across, along) = landmarks.lengths(p);
    skin.place(across, along)
}

/// A line laid flat, parted where it crosses a dart; cm, y up. Each piece has the length that it has on the skin: what the
/// sheet is too long or too short there (`body::unroll`, under 1 in 100) is taken from its middle, by less than a pen's
/// breadth at its ends.
pub fn pieces(line: &[FigurePoint], landmarks: &Landmarks<'_>, skin: &Unrolled) -> Vec<Vec<FigurePoint>> {
    /// Just over a seam, cm.
    const OVER: f64 = 1e-6;
    let seams: Vec<f64> = skin.seams().collect();
    let at = |(across, along): (f64, f64)| {
        let (u, v) = skin.place(across, along);
        FigurePoint::new(u as f32, v as f32)
    };
    let on_skin = |(across, along): (f64, f64)| landmarks.mother.on_skin(across, along).0;
    let lengths: Vec<(f64, f64)> = line.iter().map(|p| landmarks.lengths(*p)).collect();
    let mut out = vec![vec![at(lengths[0])]];
    // How long each piece is on the skin.
    let mut long = vec![0.0];
    for w in lengths.windows(2) {
        let (a, b) = (w[0], w[1]);
        let mut crossed: Vec<f64> = seams.iter().copied().filter(|s| (a.1 <= *s) != (b.1 <= *s)).collect();
        let up = b.1 > a.1;
        if !up {
            crossed.reverse();
        }
        let mut from = a;
        for seam in crossed {
            let across = a.0 + (b.0 - a.0) * (seam - a.1) / (b.1 - a.1);
            let (before, after) = if up { (seam, seam + OVER) } else { (seam + OVER, seam) };
            if let (Some(piece), Some(long)) = (out.last_mut(), long.last_mut()) {
                piece.push(at((across, before)));
                *long += (on_skin((across, seam)) - on_skin(from)).length();
            }
            from = (across, seam);
            out.push(vec![at((across, after))]);
            long.push(0.0);
        }
        if let (Some(piece), Some(long)) = (out.last_mut(), long.last_mut()) {
            piece.push(at(b));
            *long += (on_skin(b) - on_skin(from)).length();
        }
    }
    let pieces = out.into_iter().zip(long).filter(|(piece, _)| piece.len() > 1);
    pieces.map(|(piece, long)| of_length(piece, long)).collect()
}

/// The piece made this long about its middle, cm.
fn of_length(mut piece: Vec<FigurePoint>, long: f32) -> Vec<FigurePoint> {
    let laid: f32 = piece.windows(2).map(|w| libm::hypotf(w[1].x - w[0].x, w[1].y - w[0].y)).sum();
    if laid < 0.1 {
        return piece;
    }
    let count = piece.len() as f32;
    let sum = piece.iter().fold((0.0, 0.0), |sum, p| (sum.0 + p.x, sum.1 + p.y));
    let (middle, share) = ((sum.0 / count, sum.1 / count), long / laid);
    for p in &mut piece {
        *p = FigurePoint::new(middle.0 + (p.x - middle.0) * share, middle.1 + (p.y - middle.1) * share);
    }
    piece
}

fn polyline(points: &[PagePoint]) -> Path<PagePoint> {
    let steps = points.iter().enumerate();
    steps.map(|(i, p)| if i == 0 { Draw::Move(*p) } else { Draw::Line(*p) }).collect()
}

/// The two edges of a dart on one side: the lower is cut, the upper is laid on it.
fn dart_marks(dart: &Dart, sign: f64) -> Vec<Item<PagePoint>> {
    let n = dart.below.len().min(dart.above.len());
    let wide = |i: usize| {
        let (a, b) = (dart.below[i], dart.above[i]);
        libm::sqrt((a.0 - b.0) * (a.0 - b.0) + (a.1 - b.1) * (a.1 - b.1)) > NARROW
    };
    let Some(tip) = (1..n).find(|&i| wide(i)) else { return vec![] };
    let side = |edge: &[Flat]| -> Vec<PagePoint> {
        edge[tip - 1..n].iter().map(|p| on_page((p.0 * sign, p.1))).collect()
    };
    let (below, above) = (side(&dart.below), side(&dart.above));
    let line = polyline;
    let mut gap = line(&below);
    gap.extend(above.iter().rev().map(|p| Draw::Line(*p)));
    gap.push(Draw::Close);
    vec![
        Item::Fill { path: gap, colour: GAP, rule: FillRule::NonZero },
        Item::Stroke { path: line(&below), colour: QUIET, width: THIN_MM, dash: None },
        Item::Stroke { path: line(&above), colour: QUIET, width: THIN_MM, dash: Some((1.6, 1.2)) },
    ]
}

/// Midline, pubic bone, navel and top of the womb, with their words, and the sides.
fn landmarks(
    pattern: &Pattern<'_>,
    skin: &Unrolled,
    words: &Words,
    fonts: &Fonts,
    marks: &mut Marks,
) -> Result<(), SheetError> {
    let mother = &pattern.pose.mother;
    let line = |points: &[Flat], width, dash| {
        let path = polyline(&points.iter().map(|p| on_page(*p)).collect::<Vec<_>>());
        Item::Stroke { path, colour: QUIET, width, dash }
    };
    let top = marks.points.iter().fold(-10.0 * mother.navel_along as f32, |top, p| top.min(p.y));
    let top =
        (f64::from(-top) / 10.0).max(if pattern.pose.tape.is_some() { mother.fundus_along } else { 0.0 });
    marks.items.push(line(&[(0.0, 0.0), (0.0, top + 0.6)], THIN_MM, Some((4.0, 2.0))));
    let bone: Vec<Flat> = (-10..=10)
        .map(|i| {
            let (u, v) = skin.place(f64::from(i) * 0.4, 0.0);
            (u, v.min(0.0))
        })
        .collect();
    marks.items.push(line(&bone, 1.4, None));
    let ring = |v: f64, dash| {
        let path = turned(&mother_ink::ellipse(FigurePoint::new(0.0, v as f32), 0.8, 0.8));
        Item::Stroke { path, colour: QUIET, width: 0.5, dash }
    };
    let measured = pattern.landmarks.navel_measured;
    marks.items.push(ring(mother.navel_along, (!measured).then_some((1.0, 1.0))));
    marks.points.push(on_page((0.0, mother.navel_along + 0.8)));
    let drawn = marks.points.clone();
    let mut say = |text: String, at: Flat, align: Align| -> Result<(), SheetError> {
        let width = fonts.measure(Face::Regular, &text, TYPE_MM)?;
        let at = on_page(at);
        let left = match align {
            Align::Start => at.x,
            Align::Middle => at.x - 0.5 * width,
            Align::End => at.x - width,
        };
        let text = label(text, PagePoint::new(left, at.y), Align::Start, TYPE_MM, words.lang());
        marks.points.extend([PagePoint::new(left, at.y), PagePoint::new(left + width, at.y)]);
        marks.texts.push((text, width));
        Ok(())
    };
    let cm = |along: f64| format!("{:.0}", libm::round(along));
    let bone_words = words.say("trace-pubic", &[])?;
    let bone_half = 0.5 * fonts.measure(Face::Regular, &bone_words, TYPE_MM)?;
    say(bone_words, (0.0, -0.9), Align::Middle)?;
    let navel = if measured {
        words.say("trace-navel", &[("cm", &cm(mother.navel_along))])?
    } else {
        words.say("trace-navel-expected", &[])?
    };
    // On the side where fewer lines run.
    let beside = |sign: f32| {
        let run = |p: &&PagePoint| {
            (8.0..60.0).contains(&(p.x * sign)) && (p.y + mother.navel_along as f32 * 10.0).abs() < 5.0
        };
        drawn.iter().filter(run).count()
    };
    let (u, align) = if beside(-1.0) < beside(1.0) { (-1.1, Align::End) } else { (1.1, Align::Start) };
    say(navel, (u, mother.navel_along - 0.15), align)?;
    if mother.fundus_known == FundusKnown::Measured {
        let v = mother.fundus_along;
        say(words.say("trace-fundus", &[("cm", &cm(v))])?, (2.8, v - 0.15), Align::Start)?;
        marks.items.push(line(&[(-2.5, v), (2.5, v)], 0.7, None));
    }
    let (left, right) = ends(&marks.points);
    let mut side = |id: &str, u: f32, align| -> Result<(), SheetError> {
        let text = words.say(id, &[])?;
        let width = fonts.measure(Face::SemiBold, &text, TYPE_MM)?;
        // Beside the words of the bone, or under them.
        let room = 10.0 * u.abs() - bone_half - TYPE_MM;
        let at = on_page((f64::from(u), if width < room { -0.9 } else { -1.5 }));
        let left = if align == Align::End { at.x - width } else { at.x };
        let mut text = label(text, PagePoint::new(left, at.y), Align::Start, TYPE_MM, words.lang());
        (text.face, text.role) = (Face::SemiBold, Role::Side);
        marks.points.extend([PagePoint::new(left, at.y), PagePoint::new(left + width, at.y)]);
        marks.texts.push((text, width));
        Ok(())
    };
    side("trace-right", left, Align::Start)?;
    side("trace-left", right, Align::End)
}

/// Where the sides are written, cm: under the ends of the lines, and far enough apart.
fn ends(points: &[PagePoint]) -> (f32, f32) {
    let low = points.iter().fold(-72.0f32, |a, p| a.min(p.x)) / 10.0;
    let high = points.iter().fold(72.0f32, |a, p| a.max(p.x)) / 10.0;
    (low, high)
}

pub(super) fn label(text: String, at: PagePoint, align: Align, size: f32, lang: &str) -> Text<PagePoint> {
    Text { text, at, align, size, face: Face::Regular, colour: INK, lang: lang.to_owned(), role: Role::Label }
}

/// A heart, 2 cm across.
fn heart(at: PagePoint) -> Item<PagePoint> {
    let path = heart_outline(|x, y| PagePoint::new(at.x + x * 9.5, at.y - y * 9.5));
    Item::Stroke { path, colour: HEART, width: LINE_MM, dash: None }
}

/// The number of each step on the line that its step begins with, off the numbers and words that are there.
fn numbers(
    pattern: &Pattern<'_>,
    skin: &Unrolled,
    words: &Words,
    fonts: &Fonts,
    marks: &mut Marks,
) -> Result<(), SheetError> {
    let several = pattern.pose.baby_count > 1;
    let radius = if several { NUMBERS_MM } else { NUMBER_MM };
    let mut taken: Vec<PagePoint> = vec![];
    for (number, grounds) in pattern.grounds {
        for (index, (_, step)) in pattern.length.steps().iter().enumerate() {
            let Some(step) = step else { continue };
            let Some(main) = main_stroke(pattern.strokes, grounds, *number, *step) else { continue };
            let places: Vec<PagePoint> =
                main.line.iter().step_by(4).map(|p| on_page(flat(*p, &pattern.landmarks, skin))).collect();
            let free = |p: &&PagePoint| {
                taken.iter().all(|q| libm::hypotf(p.x - q.x, p.y - q.y) > 2.6 * radius)
                    && marks.texts.iter().all(|(text, width)| {
                        p.x < text.at.x - radius - 1.0
                            || p.x > text.at.x + width + radius + 1.0
                            || p.y < text.at.y - TYPE_MM - radius
                            || p.y > text.at.y + radius + 1.5
                    })
            };
            let Some(at) = places.iter().find(free).copied() else { continue };
            taken.push(at);
            let round = |r: f32| {
                let middle = FigurePoint::new(at.x / 10.0, -at.y / 10.0);
                turned(&mother_ink::ellipse(middle, r / 10.0, r / 10.0))
            };
            marks.items.push(Item::Fill { path: round(radius), colour: PAPER, rule: FillRule::NonZero });
            marks.items.push(Item::Stroke { path: round(radius), colour: INK, width: 0.4, dash: None });
            let step = index + 1;
            let text = if several { format!("{number}.{step}") } else { step.to_string() };
            let width = fonts.measure(Face::SemiBold, &text, TYPE_MM)?;
            let at = PagePoint::new(at.x - 0.5 * width, at.y + 0.33 * TYPE_MM);
            let mut text = label(text, at, Align::Start, TYPE_MM, words.lang());
            text.face = Face::SemiBold;
            marks.texts.push((text, width));
        }
    }
    Ok(())
}

/// The rectangle that has to be on paper, with some paper round it: left, top, right, bottom, mm.
pub(super) fn bounds(marks: &Marks) -> [f32; 4] {
    let mut b = [f32::MAX, f32::MAX, f32::MIN, f32::MIN];
    for p in &marks.points {
        b = [b[0].min(p.x), b[1].min(p.y), b[2].max(p.x), b[3].max(p.y)];
    }
    [b[0] - ROUND_MM, b[1] - ROUND_MM, b[2] + ROUND_MM, b[3] + ROUND_MM]
}
