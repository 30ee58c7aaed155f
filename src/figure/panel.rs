//! A small picture of one step of the drawing on skin. In: a pose, its strokes, which of them are new, the artist. Out: `Scene`: her
//! belly with the midline in hand-breadths, navel and pubic bone, what was drawn before paler, the hands that lie on her, what is new
//! in ink with its start and the pen at its end.

use super::artist::{self, Handed};
use super::mother_body::flank;
use super::mother_ink::{ellipse, points, stroke};
use super::on_skin::{HAND_CM, HEART};
use super::scene::{Align, Colour, FillRule, Frame, Item, Path, Role, Scene, Step as Draw, Text};
use super::smooth;
use super::strokes::Stroke;
use crate::body::hands::Hand;
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
/// Half the length of a tick of the midline, cm.
const TICK: f32 = 0.8;
/// How far within its edges the sides are written, mm: other words stand beside a panel.
const SIDES_MM: f32 = 2.0;
/// How far beside the womb and above it a panel reaches, cm.
const BESIDE: f32 = 1.0;
const ABOVE: f32 = 3.0;
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
    /// The hands that lie on her.
    pub hands: Vec<Hand>,
    /// The hand that holds the pen, where a pen is drawn.
    pub pen: Option<Handed>,
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
    let belly = [8.0, 16.0, 24.0].map(|y| pose.mother.half_width(y) as f32);
    let widest = belly.into_iter().chain(hearts).fold(12.0, f32::max) + BESIDE;
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
    items.extend(body(pose, options.navel, frame, &cm));
    let floor = frame.bottom + 1.35 * type_cm;
    // New strokes over hands, hands over earlier ones.
    let strokes = |shown: Shown| {
        let own = lines.iter().filter(move |line| line.shown == shown);
        own.map(|line| if line.stroke.deep { pelvis(line.stroke, floor, &cm) } else { pen(line, &cm) })
    };
    items.extend(strokes(Shown::Earlier));
    if !options.hands.is_empty() {
        items.push(artist::lines(&options.hands, PAPER));
    }
    items.extend(strokes(Shown::New));
    for line in lines.iter().filter(|line| line.shown == Shown::New && line.marked) {
        items.push(start(line.stroke, &cm));
        if let Some(handed) = options.pen {
            items.extend(artist::pen(line.stroke.line[line.stroke.line.len() - 1], handed, cm(1.0), PAPER));
        }
    }
    if let Some(number) = options.heart {
        for mark in &pose.marks {
            let Mark::Heart(own, at) = mark else { continue };
            if *own != number {
                continue;
            }
            items.push(artist::heart(FigurePoint::new(at.0.x, at.0.y), 1.2 * HEART, super::HEART));
            if let Some(handed) = options.pen {
                let tip = FigurePoint::new(at.0.x, at.0.y - 0.6 * HEART);
                items.extend(artist::pen(tip, handed, cm(1.0), PAPER));
            }
        }
    }
    for (word, sign, align) in [(options.sides[0], -1.0, Align::Start), (options.sides[1], 1.0, Align::End)] {
        let lines = word.split('\n').count() as f32;
        for (row, line) in (1_u8..).zip(word.split('\n')) {
            let wide = fonts.measure(Face::SemiBold, line, 1.0)? * type_cm;
            let up = (0.4 + 1.1 * (lines - f32::from(row))) * type_cm;
            let at = FigurePoint::new(sign * (frame.right - cm(SIDES_MM)), frame.bottom + up);
            // No line of a hand or a pen runs through a side.
            let end = at.x - sign * wide;
            let paper = Frame {
                left: at.x.min(end) - 0.1 * type_cm,
                right: at.x.max(end) + 0.1 * type_cm,
                bottom: at.y - 0.25 * type_cm,
                top: at.y + 0.75 * type_cm,
            };
            items.push(Item::Fill { path: paper.outline(), colour: PAPER, rule: FillRule::NonZero });
            items.push(Item::Text(Text {
                text: line.to_owned(),
                at,
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

/// Her belly, the midline with a tick at each hand-breadth, the pubic bone and the navel.
fn body(pose: &Pose, navel: bool, frame: Frame, cm: &impl Fn(f32) -> f32) -> Vec<Item<FigurePoint>> {
    let sides = smooth::both_sides(&flank(&pose.mother, 0.0));
    let mut items: Vec<Item<FigurePoint>> =
        sides.iter().map(|side| stroke(smooth::open(side), cm(BODY_MM), BODY)).collect();
    // The upper edge of the pubic bone, as a low arch over the midline.
    let bone = points(&[(-4.6, -0.75), (-2.4, -0.2), (0.0, 0.0), (2.4, -0.2), (4.6, -0.75)]);
    items.push(stroke(smooth::open(&bone), cm(0.9), EARLIER));
    let mother = &pose.mother;
    let y = |along: f64| mother.on_skin(0.0, along).0.y;
    let line = |a: FigurePoint, b: FigurePoint, width: f32, dash| Item::Stroke {
        path: vec![Draw::Move(a), Draw::Line(b)],
        colour: BODY,
        width: cm(width),
        dash,
    };
    let at = FigurePoint::new;
    let top = y(mother.fundus_along).min(frame.top);
    items.push(line(at(0.0, 0.0), at(0.0, top), BODY_MM, Some((cm(1.0), cm(1.2)))));
    for hand in 1..=libm::floor(mother.fundus_along / HAND_CM) as u32 {
        let y = y(f64::from(hand) * HAND_CM);
        items.push(line(at(-TICK, y), at(TICK, y), 0.4, None));
    }
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

/// A round where a stroke starts.
fn start(stroke: &Stroke, cm: &impl Fn(f32) -> f32) -> Item<FigurePoint> {
    let start = stroke.line[0];
    let round = |mm: f32, colour| Item::Fill {
        path: ellipse(start, cm(mm), cm(mm)),
        colour,
        rule: FillRule::NonZero,
    };
    Item::Group {
        name: "start".to_owned(),
        about: String::new(),
        items: vec![round(START_MM + 0.35, PAPER), round(START_MM, INK)],
    }
}
