//! The tape over the visits. In: tapes, and how the baby lay at each visit. Out: `Scene`, in cm of paper: curves, marks, and
//! beneath them a small drawing for each visit.
//!
//! A tape that is not fit to be read stands under the curves, on no centile, with the reason beside it; without curves it stands
//! in the field, struck through, and is joined to no other.

mod axes;
mod lies;

pub use axes::Axes;
pub use lies::Lay;

use super::mother_ink::{ellipse, fill, group, stroke};
use super::scene::{Align, Colour, FillRule, Frame, Item, Path, Role, Scene, Step, Text};
use super::spread::spread;
use super::{FigureError, palette::BabyColours};
use crate::fonts::{Face, Fonts};
use crate::reckon::curves::{CENTILE_Z, SFH_DAYS, sfh_at};
use crate::units::{FigurePoint, Gestation};
use crate::words::Words;

/// A tape as it is marked.
#[derive(Clone, Debug, PartialEq)]
pub struct TapeMark {
    /// Weeks when it was laid.
    pub weeks: Gestation,
    /// What it said, cm.
    pub cm: f64,
    /// How it is marked.
    pub kind: TapeKind,
}

/// How a tape is marked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TapeKind {
    /// Laid at a visit.
    Read,
    /// Noted at a visit as an earlier one.
    Earlier,
    /// Not fit to be read: centimetres and reason, in words.
    NotRead(String),
}

/// Everything that is drawn.
pub struct Growth<'a> {
    /// A short title.
    pub title: String,
    /// The figure in words.
    pub description: String,
    /// The tapes, oldest first.
    pub tapes: &'a [TapeMark],
    /// How the baby lay, oldest first.
    pub lies: &'a [Lay<'a>],
    /// Whether the curves speak of this pregnancy: of one baby they do.
    pub curves: bool,
}

/// How large it is, cm of paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Size {
    /// Width of the whole.
    pub width: f32,
    /// Height of the field of curves.
    pub field: f32,
}

/// Words and marks.
const INK: Colour = Colour::hex(0x221C19);
const PAPER: Colour = Colour::hex(0xFFFFFF);
/// The curves: the middle one darker.
const CURVE: Colour = Colour::hex(0x8C7A6C);
const MIDDLE: Colour = Colour::hex(0x5C4C40);
/// Lines of the field, every week and every fifth.
const GRID: Colour = Colour::hex(0xEDE7E0);
const GRID_STRONG: Colour = Colour::hex(0xD6CCC2);

/// Type, points.
const TYPE_PT: f32 = 8.0;
const SMALL_PT: f32 = 7.0;
/// Room at the left for the centimetres, at the right for the names of the curves, over the field for the key.
const LEFT: f32 = 0.72;
const RIGHT: f32 = 0.95;
const OVER: f32 = 0.6;
/// Height of a row of tapes that are not read, and of the weeks under the field.
const ROW: f32 = 0.36;
const WEEKS: f32 = 0.5;
/// Radius of a mark.
const MARK: f32 = 0.105;

/// Type of so many points in cm.
fn cm(pt: f32) -> f32 {
    pt * 2.54 / 72.0
}

fn at(x: f32, y: f32) -> FigurePoint {
    FigurePoint::new(x, y)
}

fn line(points: &[FigurePoint]) -> Path<FigurePoint> {
    points.iter().enumerate().map(|(i, p)| if i == 0 { Step::Move(*p) } else { Step::Line(*p) }).collect()
}

/// Words in ink, of one language.
struct Pen<'a> {
    lang: &'a str,
    words: &'a Words,
    fonts: &'a Fonts,
}

impl Pen<'_> {
    fn text(&self, text: &str, place: FigurePoint, align: Align, pt: f32, role: Role) -> Item<FigurePoint> {
        let face = if role == Role::Side { Face::SemiBold } else { Face::Regular };
        let (size, lang) = (cm(pt), self.lang.to_owned());
        Item::Text(Text { text: text.to_owned(), at: place, align, size, face, colour: INK, lang, role })
    }
    fn width(&self, text: &str, pt: f32) -> Result<f32, FigureError> {
        Ok(self.fonts.measure(Face::Regular, text, cm(pt))?)
    }
}

/// The figure.
pub fn growth(what: &Growth<'_>, size: Size, words: &Words, fonts: &Fonts) -> Result<Scene, FigureError> {
    let pen = Pen { lang: words.lang(), words, fonts };
    let axes = Axes::of(what, (LEFT, size.width - RIGHT), size.field);
    let mut items = vec![];
    let not_read = not_read(what, &axes, &pen)?;
    items.extend(grid(&axes, not_read.depth, &pen)?);
    if what.curves {
        items.extend(curves(&axes, &pen)?);
    }
    items.extend(key(what, &axes, size, &pen)?);
    items.extend(marks(what, &axes));
    items.extend(not_read.items);
    let under = axes.bottom - not_read.depth - WEEKS;
    let row = lies::row(what.lies, &axes, under, size, &pen)?;
    items.extend(row.items);
    let frame = Frame { left: 0.0, bottom: row.bottom, right: size.width, top: axes.top + OVER };
    let paper = group(
        "paper",
        "",
        vec![Item::Fill { path: frame.outline(), colour: PAPER, rule: FillRule::NonZero }],
    );
    items.insert(0, paper);
    Ok(Scene {
        frame,
        title: what.title.clone(),
        description: what.description.clone(),
        lang: words.lang().to_owned(),
        items,
    })
}

/// Lines and numbers of the field: every week and every 5 cm; a tick for each visit.
fn grid(axes: &Axes, depth: f32, pen: &Pen<'_>) -> Result<Vec<Item<FigurePoint>>, FigureError> {
    let (mut fine, mut strong, mut numbers) = (vec![], vec![], vec![]);
    let foot = axes.bottom - depth;
    for week in axes.first_week..=axes.last_week {
        let x = axes.x(f64::from(week));
        let even = week % 2 == 0;
        (if even { &mut strong } else { &mut fine }).extend(line(&[at(x, axes.bottom), at(x, axes.top)]));
        if even {
            let place = at(x, foot - 0.34);
            numbers.push(pen.text(&week.to_string(), place, Align::Middle, TYPE_PT, Role::Label));
        }
    }
    for cm in (axes.lowest..=axes.highest).filter(|cm| cm % 5 == 0) {
        let y = axes.y(f64::from(cm));
        strong.extend(line(&[at(axes.left, y), at(axes.right, y)]));
        let place = at(axes.left - 0.14, y - 0.1);
        numbers.push(pen.text(&cm.to_string(), place, Align::End, TYPE_PT, Role::Label));
    }
    let title = pen.words.say("growth-axis-tape", &[])?;
    let place = at(0.0, axes.top + OVER - 0.32);
    numbers.push(pen.text(&title, place, Align::Start, TYPE_PT, Role::Label));
    let title = pen.words.say("growth-axis-weeks", &[])?;
    let place = at(axes.right + RIGHT, foot - 0.34);
    numbers.push(pen.text(&title, place, Align::End, TYPE_PT, Role::Label));
    let frame = line(&[at(axes.left, axes.top), at(axes.left, foot), at(axes.right, foot)]);
    let lines =
        vec![stroke(fine, 0.015, GRID), stroke(strong, 0.018, GRID_STRONG), stroke(frame, 0.035, MIDDLE)];
    Ok(vec![group("field", "", lines), group("numbers", "", numbers)])
}

/// The curves from 16+0 to 42+6, each with its name at its end.
fn curves(axes: &Axes, pen: &Pen<'_>) -> Result<Vec<Item<FigurePoint>>, FigureError> {
    let last = Gestation::from_days(*SFH_DAYS.end());
    let mut days: Vec<u16> = SFH_DAYS.step_by(7).collect();
    if days.last() != Some(SFH_DAYS.end()) {
        days.push(*SFH_DAYS.end());
    }
    let mut items = vec![];
    for (centile, z) in CENTILE_Z {
        let points: Vec<FigurePoint> = days
            .iter()
            .map(|day| Gestation::from_days(*day))
            .map(|weeks| axes.at(weeks.exact_weeks(), sfh_at(weeks, z)))
            .collect();
        let (width, colour, dash) = match centile {
            50 => (0.05, MIDDLE, None),
            10 | 90 => (0.032, CURVE, None),
            _ => (0.032, CURVE, Some((0.12, 0.11))),
        };
        let curve = Item::Stroke { path: line(&points), colour, width, dash };
        items.push(group(&format!("curve-p{centile}"), "", vec![curve]));
    }
    let ends: Vec<f32> = CENTILE_Z.iter().map(|(_, z)| axes.y(sfh_at(last, *z))).collect();
    let places = spread(&ends, cm(TYPE_PT) * 0.95, axes.bottom, axes.top);
    let x = axes.x(last.exact_weeks()) + 0.12;
    let mut names = vec![];
    for ((centile, _), y) in CENTILE_Z.iter().zip(places) {
        let name = pen.words.say("growth-curve", &[("centile", &centile.to_string())])?;
        names.push(pen.text(&name, at(x, y - 0.09), Align::Start, TYPE_PT, Role::Label));
    }
    items.push(group("curve-names", "", names));
    Ok(items)
}

/// What the marks mean, over the field at its right.
fn key(
    what: &Growth<'_>,
    axes: &Axes,
    size: Size,
    pen: &Pen<'_>,
) -> Result<Vec<Item<FigurePoint>>, FigureError> {
    let has = |wanted: fn(&TapeKind) -> bool| what.tapes.iter().any(|tape| wanted(&tape.kind));
    let mut entries: Vec<(Option<TapeKind>, &str)> = vec![];
    if what.curves {
        entries.push((None, "growth-key-curves"));
    }
    if has(|kind| matches!(kind, TapeKind::NotRead(_))) {
        entries.push((Some(TapeKind::NotRead(String::new())), "growth-key-not-read"));
    }
    if has(|kind| *kind == TapeKind::Earlier) {
        entries.push((Some(TapeKind::Earlier), "growth-key-earlier"));
    }
    if has(|kind| *kind == TapeKind::Read) {
        entries.push((Some(TapeKind::Read), "growth-key-tape"));
    }
    let y = axes.top + OVER - 0.32;
    let mut x = size.width;
    let mut items = vec![];
    for (kind, id) in entries {
        let text = pen.words.say(id, &[])?;
        items.push(pen.text(&text, at(x, y), Align::End, SMALL_PT, Role::Label));
        x -= pen.width(&text, SMALL_PT)?;
        if let Some(kind) = kind {
            x -= 0.22;
            items.extend(mark(at(x, y + 0.085), &kind));
            x -= MARK;
        }
        x -= 0.4;
    }
    Ok(vec![group("key", "", items)])
}

/// A mark: a dot; a diamond for a tape noted as earlier; a ring that is struck through for one that is not read.
fn mark(place: FigurePoint, kind: &TapeKind) -> Vec<Item<FigurePoint>> {
    let FigurePoint { x, y } = place;
    match kind {
        TapeKind::Read => {
            vec![fill(ellipse(place, MARK + 0.03, MARK + 0.03), PAPER), fill(ellipse(place, MARK, MARK), INK)]
        }
        TapeKind::Earlier => {
            let diamond = |r: f32| {
                let mut path = line(&[at(x + r, y), at(x, y + r), at(x - r, y), at(x, y - r)]);
                path.push(Step::Close);
                path
            };
            vec![
                fill(diamond(MARK + 0.07), PAPER),
                fill(diamond(MARK + 0.03), INK),
                fill(diamond(MARK - 0.035), PAPER),
            ]
        }
        TapeKind::NotRead(_) => {
            let d = MARK + 0.05;
            vec![
                fill(ellipse(place, MARK, MARK), PAPER),
                stroke(ellipse(place, MARK, MARK), 0.028, INK),
                stroke(line(&[at(x - d, y - d), at(x + d, y + d)]), 0.028, INK),
            ]
        }
    }
}

/// The tapes in the field. Those that are read: a line down to the weeks, the dots, and lines from one to the next where none between them is
/// left unread.
fn marks(what: &Growth<'_>, axes: &Axes) -> Vec<Item<FigurePoint>> {
    let place = |tape: &TapeMark| axes.at(tape.weeks.exact_weeks(), tape.cm);
    let read = |tape: &TapeMark| !matches!(tape.kind, TapeKind::NotRead(_));
    let joins: Path<FigurePoint> = what
        .tapes
        .windows(2)
        .filter(|pair| pair.iter().all(read))
        .flat_map(|pair| line(&[place(&pair[0]), place(&pair[1])]))
        .collect();
    let mut items = vec![];
    let drops: Path<FigurePoint> = what
        .tapes
        .iter()
        .filter(|tape| read(tape))
        .flat_map(|tape| line(&[place(tape), at(place(tape).x, axes.bottom)]))
        .collect();
    if !drops.is_empty() {
        let drops = Item::Stroke { path: drops, colour: CURVE, width: 0.018, dash: Some((0.03, 0.09)) };
        items.push(group("drops", "", vec![drops]));
    }
    if !joins.is_empty() {
        items.push(group("joins", "", vec![stroke(joins, 0.045, INK)]));
    }
    for tape in what.tapes.iter().filter(|tape| read(tape) || !what.curves) {
        items.push(group(&format!("tape-{}", tape.weeks), "", mark(place(tape), &tape.kind)));
    }
    items
}

/// Tapes that are not read, under the field, where there are curves on which they could be read.
struct NotRead {
    items: Vec<Item<FigurePoint>>,
    depth: f32,
}

fn not_read(what: &Growth<'_>, axes: &Axes, pen: &Pen<'_>) -> Result<NotRead, FigureError> {
    // Where the words of each row so far end.
    let mut rows: Vec<f32> = vec![];
    let mut items = vec![];
    for tape in what.tapes.iter().filter(|_| what.curves) {
        let TapeKind::NotRead(words) = &tape.kind else { continue };
        let (x, wide) = (axes.x(tape.weeks.exact_weeks()), pen.width(words, SMALL_PT)?);
        // The words stand after the mark; before it where the page ends.
        let after = x + 0.22 + wide <= axes.right + RIGHT;
        let (from, to) = if after { (x - 0.2, x + 0.22 + wide) } else { (x - 0.22 - wide, x + 0.2) };
        let row = rows.iter().position(|end| *end + 0.15 < from).unwrap_or(rows.len());
        if row == rows.len() {
            rows.push(to);
        }
        rows[row] = to;
        let y = axes.bottom - ROW * (row as f32 + 0.5);
        let mut marks = mark(at(x, y), &tape.kind);
        let (place, align) = if after {
            (at(x + 0.22, y - 0.085), Align::Start)
        } else {
            (at(x - 0.22, y - 0.085), Align::End)
        };
        marks.push(pen.text(words, place, align, SMALL_PT, Role::Label));
        items.push(group(&format!("tape-{}", tape.weeks), "", marks));
    }
    let depth = if rows.is_empty() { 0.0 } else { ROW * rows.len() as f32 + 0.08 };
    Ok(NotRead { items, depth })
}

/// Ink of the small drawings.
fn drawing_ink() -> Colour {
    BabyColours::INK.ink
}
