//! A small picture of one step of the drawing on skin. In: a pose, its strokes, which of them are new. Out: `Scene`: the
//! womb with navel and pubic bone, what was drawn before paler, what is new in ink with its start and its end.

use super::marks::{self, MarkColours};
use super::mother_ink::{ellipse, points, stroke};
use super::options::View;
use super::scene::{Align, Colour, FillRule, Frame, Item, Path, Role, Scene, Step as Draw, Text};
use super::smooth;
use super::strokes::Stroke;
use crate::body::pose::{Mark, Pose};
use crate::fonts::{Face, FontError, Fonts};
use crate::units::FigurePoint;

/// Colours: paper, ink of new strokes, earlier strokes, her body.
const PAPER: Colour = Colour::hex(0xFFFFFF);
const INK: Colour = Colour::hex(0x221C19);
const EARLIER: Colour = Colour::hex(0xA39A93);
const BODY: Colour = Colour::hex(0xB9AFA8);
/// Widths on paper, mm.
const NEW_MM: f32 = 0.75;
const FINE_MM: f32 = 0.4;
const EARLIER_MM: f32 = 0.4;
const BODY_MM: f32 = 0.3;
/// Dash and gap of a line that was not felt, mm.
const DASH_MM: (f32, f32) = (1.2, 1.5);
/// Radius of the round where a stroke starts, mm.
const START_MM: f32 = 1.0;
/// Length and half breadth of the arrow where it ends, mm.
const ARROW_MM: (f32, f32) = (2.6, 1.1);
/// How far within its edges the sides are written, mm: other words stand beside a panel.
const SIDES_MM: f32 = 2.0;
/// How far beside the womb and above it a panel reaches, cm.
const BESIDE: f32 = 1.0;
const ABOVE: f32 = 1.0;
/// How far below the bone: as deep as what lies in the pelvis, from the one to the other, cm.
const BELOW: (f32, f32) = (1.2, 6.6);

/// How a stroke is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shown {
    /// Belongs to this step.
    New,
    /// Belongs to an earlier step.
    Earlier,
}

/// One stroke of a panel.
#[derive(Clone, Copy, Debug)]
pub struct Line<'a> {
    /// The stroke.
    pub stroke: &'a Stroke,
    /// How it is shown.
    pub shown: Shown,
    /// Whether what it shows was felt; else it is broken.
    pub felt: bool,
    /// Whether its start and its end are marked.
    pub marked: bool,
}

/// What is wanted of a panel.
pub struct PanelOptions<'a> {
    /// Size on paper of a cm of the body, mm.
    pub mm_per_cm: f32,
    /// What lies inside.
    pub frame: Frame,
    /// Type of the sides, points.
    pub type_pt: f32,
    /// Her right and her left, in words; a line break between lines.
    pub sides: [&'a str; 2],
    /// Whether the navel was measured; else it is not drawn.
    pub navel: bool,
    /// Whether the heart of this baby is drawn.
    pub heart: Option<usize>,
    /// Language tag of the sides.
    pub lang: &'a str,
    /// Title.
    pub title: String,
    /// The panel in words.
    pub description: String,
}

/// What lies inside a panel whose words take `type_cm` of the figure; on each side at least as far as `half`, cm.
pub fn frame(pose: &Pose, strokes: &[Stroke], type_cm: f32, half: f32) -> Frame {
    let top = pose.womb.iter().map(|p| p.y).fold(pose.mother.fundus_y as f32, f32::max);
    let hearts = pose.marks.iter().map(|m| match m {
        Mark::Heart(_, at) | Mark::Limb(_, at) => at.0.x.abs() + 1.5,
    });
    // As wide on one side as on the other.
    let widest = pose.womb.iter().map(|p| p.x.abs()).chain(hearts).fold(12.0, f32::max) + BESIDE;
    let half = half.max(widest);
    let deep = strokes.iter().filter(|s| s.deep).flat_map(|s| &s.line).fold(0.0f32, |low, p| low.min(p.y));
    let below = (0.3 - deep).clamp(BELOW.0, BELOW.1);
    Frame { left: -half, bottom: -below - 1.35 * type_cm, right: half, top: top + ABOVE }
}

/// The panel.
pub fn panel(
    pose: &Pose,
    lines: &[Line<'_>],
    options: &PanelOptions<'_>,
    fonts: &Fonts,
) -> Result<Scene, FontError> {
    let cm = |mm: f32| mm / options.mm_per_cm;
    let type_cm = cm(options.type_pt * 25.4 / 72.0);
    let frame = options.frame;
    let mut items = vec![Item::Fill { path: frame.outline(), colour: PAPER, rule: FillRule::NonZero }];
    items.extend(body(pose, options.navel, &cm));
    let floor = frame.bottom + 1.35 * type_cm;
    // New strokes over earlier ones.
    for shown in [Shown::Earlier, Shown::New] {
        for line in lines.iter().filter(|line| line.shown == shown) {
            items.push(if line.stroke.deep { pelvis(line.stroke, floor, &cm) } else { pen(line, &cm) });
        }
    }
    for line in lines.iter().filter(|line| line.shown == Shown::New && line.marked) {
        items.extend(ends(line.stroke, &cm));
    }
    if let Some(number) = options.heart {
        let colours = MarkColours { paper: PAPER, heart: super::HEART, ink: INK };
        let own = Pose { marks: hearts_of(pose, number), ..pose.clone() };
        items.extend(marks::hearts(&own, View::Facing, 1.5, &colours));
    }
    for (word, sign, align) in [(options.sides[0], -1.0, Align::Start), (options.sides[1], 1.0, Align::End)] {
        let lines = word.split('\n').count() as f32;
        for (row, line) in (1_u8..).zip(word.split('\n')) {
            fonts.measure(Face::SemiBold, line, 1.0)?;
            let up = (0.4 + 1.1 * (lines - f32::from(row))) * type_cm;
            items.push(Item::Text(Text {
                text: line.to_owned(),
                at: FigurePoint::new(sign * (frame.right - cm(SIDES_MM)), frame.bottom + up),
                align,
                size: type_cm,
                face: Face::SemiBold,
                colour: INK,
                lang: options.lang.to_owned(),
                role: Role::Side,
            }));
        }
    }
    Ok(Scene {
        frame,
        title: options.title.clone(),
        description: options.description.clone(),
        lang: options.lang.to_owned(),
        items,
    })
}

fn hearts_of(pose: &Pose, number: usize) -> Vec<Mark> {
    let own = |m: &&Mark| matches!(m, Mark::Heart(n, _) if *n == number);
    pose.marks.iter().filter(own).cloned().collect()
}

/// The womb, the midline, the pubic bone and the navel.
fn body(pose: &Pose, navel: bool, cm: &impl Fn(f32) -> f32) -> Vec<Item<FigurePoint>> {
    let mut items = vec![];
    if pose.womb.len() >= 3 {
        // What of it rises out of the pelvis.
        let n = pose.womb.len();
        let up = |i: usize| pose.womb[i % n].y > -0.4;
        let start = (0..n).find(|&i| up(i) && !up(i + n - 1)).unwrap_or(0);
        let rising: Vec<FigurePoint> =
            (start..start + n).take_while(|&i| up(i)).map(|i| pose.womb[i % n]).collect();
        items.push(stroke(smooth::open(&rising), cm(BODY_MM), BODY));
    }
    // The upper edge of the pubic bone, as a low arch over the midline.
    let bone = points(&[(-4.6, -0.75), (-2.4, -0.2), (0.0, 0.0), (2.4, -0.2), (4.6, -0.75)]);
    items.push(stroke(smooth::open(&bone), cm(0.9), EARLIER));
    if navel {
        let at = FigurePoint::new(0.0, pose.mother.navel_y as f32);
        items.push(stroke(ellipse(at, 0.6, 0.5), cm(EARLIER_MM), EARLIER));
    }
    items
}

/// A line as a pen draws it.
fn pen(line: &Line<'_>, cm: &impl Fn(f32) -> f32) -> Item<FigurePoint> {
    let (colour, width) = match (line.shown, line.stroke.fine) {
        (Shown::New, false) => (INK, NEW_MM),
        (Shown::New, true) => (INK, FINE_MM),
        (Shown::Earlier, false) => (EARLIER, EARLIER_MM),
        (Shown::Earlier, true) => (EARLIER, FINE_MM * 0.7),
    };
    let dash = (!line.felt).then(|| (cm(DASH_MM.0), cm(DASH_MM.1)));
    Item::Stroke {
        path: path(&line.stroke.line, line.stroke.closed, TOLERANCE),
        colour,
        width: cm(width),
        dash,
    }
}

/// A line that lies in the pelvis: not drawn on skin, shown by dots.
fn pelvis(stroke: &Stroke, floor: f32, cm: &impl Fn(f32) -> f32) -> Item<FigurePoint> {
    let dash = Some((cm(0.05), cm(1.1)));
    // Down to where the words stand.
    let mut going_in = vec![];
    let shown = |p: &FigurePoint| p.y > floor;
    for part in stroke.line.chunk_by(|a, b| shown(a) == shown(b)).filter(|part| shown(&part[0])) {
        going_in.extend(path(part, false, TOLERANCE));
    }
    Item::Stroke { path: going_in, colour: EARLIER, width: cm(0.4), dash }
}

/// A smooth path through the points of a stroke, none of them farther from it than `tolerance`.
pub fn path(line: &[FigurePoint], closed: bool, tolerance: f32) -> Path<FigurePoint> {
    let pairs: Vec<(f32, f32)> = line.iter().map(|p| (p.x, p.y)).collect();
    let mut path = vec![];
    if closed && pairs.len() > 4 {
        super::fit::closed(&pairs[..pairs.len() - 1], tolerance, &mut path);
    } else {
        path.push(Draw::Move(line[0]));
        super::fit::open(&pairs, tolerance, &mut path);
    }
    path
}

/// How far a fitted line may lie from its points, cm.
const TOLERANCE: f32 = 0.03;

/// A round where a stroke starts, an arrow where it ends; of a closed stroke the round alone.
fn ends(stroke: &Stroke, cm: &impl Fn(f32) -> f32) -> Vec<Item<FigurePoint>> {
    let fill = |path, colour| Item::Fill { path, colour, rule: FillRule::NonZero };
    let start = stroke.line[0];
    let mut items = vec![
        fill(ellipse(start, cm(START_MM + 0.35), cm(START_MM + 0.35)), PAPER),
        fill(ellipse(start, cm(START_MM), cm(START_MM)), INK),
    ];
    if stroke.closed {
        return items;
    }
    let end = stroke.line[stroke.line.len() - 1];
    // The direction over the length of the arrow.
    let before = stroke
        .line
        .iter()
        .rev()
        .find(|p| smooth::distance(**p, end) >= cm(ARROW_MM.0))
        .copied()
        .unwrap_or(start);
    let d = smooth::distance(before, end).max(1e-6);
    let (ux, uy) = ((end.x - before.x) / d, (end.y - before.y) / d);
    let at = |along: f32, out: f32| {
        FigurePoint::new(end.x + ux * cm(along) - uy * cm(out), end.y + uy * cm(along) + ux * cm(out))
    };
    let (long, half) = ARROW_MM;
    let tip = vec![
        Draw::Move(at(0.4 * long, 0.0)),
        Draw::Line(at(-0.6 * long, half)),
        Draw::Line(at(-0.6 * long, -half)),
        Draw::Close,
    ];
    items.push(fill(tip, INK));
    items
}
