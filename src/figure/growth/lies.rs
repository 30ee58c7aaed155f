//! How the baby lay at each visit. In: poses with their strokes, the field over them. Out: a row of small drawings, all to one
//! scale with their brims on one line, each under its weeks.

use super::{Axes, PAPER, Pen, SMALL_PT, Size, TYPE_PT, at, cm, drawing_ink, line};
use crate::body::pose::Pose;
use crate::figure::coarse::coarsen_items;
use crate::figure::marks::{self, MarkColours};
use crate::figure::mother_ink::{group, stroke};
use crate::figure::pen::Stroke;
use crate::figure::scene::{Align, Item, Role};
use crate::figure::spread::spread;
use crate::figure::{FigureError, FigureOptions, Labels, Palette, Style, View, sketch};
use crate::units::{FigurePoint, Gestation};

/// How the baby lay at a visit.
pub struct Lay<'a> {
    /// Weeks of the visit.
    pub weeks: Gestation,
    /// What stands under the drawing, a line each.
    pub words: Vec<String>,
    /// The pose.
    pub pose: &'a Pose,
    /// The strokes of its pen baby.
    pub strokes: &'a [Stroke],
}

/// The row.
pub(super) struct Row {
    pub items: Vec<Item<FigurePoint>>,
    /// Where it ends.
    pub bottom: f32,
}

/// The widest that a drawing is, cm of paper.
const WIDEST: f32 = 2.9;
/// A stamp is so wide, cm of the body.
const BODY: f32 = sketch::FRAME.right - sketch::FRAME.left;
/// From the weeks of the field to the weeks over a drawing.
const LEADERS: f32 = 0.62;
/// Lines are drawn as on a picture of this scale at least (mm for a cm of the body), and thinner on smaller ones.
const LINES_AS_AT: f32 = 0.95;
/// How far a line may move on paper, cm: a printer's dot.
const COARSE: f32 = 0.005;

/// Drawings of all visits under the field; `top` is where the weeks of the field end.
pub(super) fn row(
    lies: &[Lay<'_>],
    axes: &Axes,
    top: f32,
    size: Size,
    pen: &Pen<'_>,
) -> Result<Row, FigureError> {
    if lies.is_empty() {
        return Ok(Row { items: vec![], bottom: top });
    }
    let width = size.width;
    let wide = (width / lies.len() as f32).min(WIDEST);
    let scale = wide / BODY;
    let weeks: Vec<f32> = lies.iter().map(|lay| axes.x(lay.weeks.exact_weeks())).collect();
    let places = spread(&weeks, wide, wide * 0.5, width - wide * 0.5);
    let frames: Vec<_> = lies.iter().map(|lay| sketch::frame(lay.pose)).collect();
    let highest = frames.iter().map(|frame| frame.top).fold(0.0, f32::max) * scale;
    let lowest = frames.iter().map(|frame| frame.bottom).fold(0.0, f32::min) * scale;
    let heads = top - LEADERS;
    let brim = heads - 0.12 - highest;
    let mut items = vec![];
    let mut bottom = brim + lowest;
    for (number, ((lay, x), from)) in lies.iter().zip(&places).zip(&weeks).enumerate() {
        let name = |part: &str| format!("visit-{}-{part}", number + 1);
        let leader =
            line(&[at(*from, top), at(*from, top - 0.08), at(*x, heads + 0.36), at(*x, heads + 0.28)]);
        let mut marks = vec![group(&name("leader"), "", vec![stroke(leader, 0.02, super::CURVE)])];
        marks.push(pen.text(&lay.weeks.to_string(), at(*x, heads), Align::Middle, TYPE_PT, Role::Side));
        let to_paper = |p: FigurePoint| at(x + p.x * scale, brim + p.y * scale);
        let mut drawn = drawing(lay, scale);
        coarsen_items(&mut drawn, COARSE / scale);
        let placed = drawn.iter().map(|item| renamed(item.map(&to_paper, scale), &name("")));
        marks.push(group(&name("drawing"), "", placed.collect()));
        let mut y = brim + lowest;
        for words in &lay.words {
            for words in broken(words, wide * 0.96, pen)? {
                y -= cm(SMALL_PT) * 1.15;
                marks.push(pen.text(&words, at(*x, y), Align::Middle, SMALL_PT, Role::Label));
            }
        }
        bottom = bottom.min(y);
        items.push(group(&name("lie"), "", marks));
    }
    let sides = pen.words.say("growth-sides", &[])?;
    bottom -= cm(SMALL_PT) * 1.5;
    items.push(pen.text(&sides, at(width * 0.5, bottom), Align::Middle, SMALL_PT, Role::Side));
    Ok(Row { items, bottom: bottom - 0.1 })
}

/// Words in lines no wider than a drawing, unless one word is.
fn broken(words: &str, wide: f32, pen: &Pen<'_>) -> Result<Vec<String>, FigureError> {
    let mut lines: Vec<String> = vec![];
    for word in words.split_whitespace() {
        if let Some(line) = lines.last_mut() {
            let longer = format!("{line} {word}");
            if pen.width(&longer, SMALL_PT)? <= wide {
                *line = longer;
                continue;
            }
        }
        lines.push(word.to_owned());
    }
    Ok(lines)
}

/// The marks of one drawing, in cm of the body.
fn drawing(lay: &Lay<'_>, scale: f32) -> Vec<Item<FigurePoint>> {
    let ink = drawing_ink();
    let options = FigureOptions {
        style: Style::Sketch,
        palette: Palette::Neutral,
        mother: crate::figure::MotherAs::Outline,
        hands: None,
        view: View::Facing,
        labels: Labels::Few,
        mm_per_cm: (10.0 * scale).max(LINES_AS_AT),
        type_pt: SMALL_PT * LINES_AS_AT / (10.0 * scale).min(LINES_AS_AT),
        title: String::new(),
        description: String::new(),
        captions: vec![],
    };
    let colours = MarkColours { paper: PAPER, heart: ink, ink };
    let mut items = sketch::draw(lay.pose, lay.strokes, &options, ink);
    items.extend(marks::hearts(lay.pose, View::Facing, sketch::HEART, &colours));
    items.extend(sketch::numbers(lay.pose, &options, "", ink));
    items
}

/// Names stay unique in the figure.
fn renamed(item: Item<FigurePoint>, prefix: &str) -> Item<FigurePoint> {
    match item {
        Item::Group { name, about, items } => Item::Group {
            name: format!("{prefix}{name}"),
            about,
            items: items.into_iter().map(|item| renamed(item, prefix)).collect(),
        },
        Item::Clip { path, items } => {
            Item::Clip { path, items: items.into_iter().map(|item| renamed(item, prefix)).collect() }
        }
        Item::Fill { .. } | Item::Stroke { .. } | Item::Text(_) => item,
    }
}
