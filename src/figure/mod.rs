//! A posed baby and its mother become a figure. In: `Pose`, its cast, how it is wanted. Out: `Scene`, in cm.

pub mod artist;
mod baby;
pub mod below;
pub mod coarse;
pub mod difference;
mod edge;
mod engrave;
mod fit;
mod grid;
pub mod growth;
mod hands;
mod her_body;
pub mod her_clothes;
mod her_head;
mod instruments;
mod joins;
pub mod labels;
mod lines;
mod marks;
pub mod mother;
mod mother_body;
mod mother_bones;
pub mod mother_ink;
mod mother_palette;
mod mother_words;
mod numbers;
pub mod on_skin;
mod options;
pub mod palette;
pub mod panel;
pub mod pen;
pub mod preview;
mod ribbon;
mod rounds;
pub mod scene;
pub mod shown;
pub mod side;
mod side_mother;
mod sketch;
pub mod smooth;
mod solve;
mod spread;
pub mod strokes;
pub mod terrain;
mod tone;
mod turn;
mod wanted;

pub use crate::body::hands::Palpation;
pub use options::{FigureOptions, Hair, Labels, MotherAs, Palette, Style, View};

use crate::body::cast::Cast;
use crate::body::hands as palpating;
use crate::body::pose::{DrawingNote, Mark, Pose};
use crate::body::touch;
use crate::fonts::{FontError, Fonts};
use crate::units::{FigurePoint, MotherPoint};
use crate::words::{Words, WordsError};
use labels::{Asked, Plan, Planner};
use mother::{FrontMarks, Handbooks, InFront, MotherLook, MotherPalette, MotherStyle, SkinMarks};
use palette::BabyColours;
use scene::{Colour, FillRule, Frame, Item, Scene};
use shown::Shown;
use std::fmt;
use wanted::Source;

/// What lies inside every picture, cm.
pub const FRAME: Frame = Frame { left: -25.5, bottom: -12.5, right: 25.5, top: 37.5 };

/// What lies inside the picture of a style, before a band of words at its foot, cm; a stamp's height follows the womb.
pub const fn frame(style: Style) -> Frame {
    match style {
        Style::Soft | Style::Line | Style::Pen => FRAME,
        Style::Sketch => sketch::FRAME,
    }
}

/// The same with as much of her as is wanted; as she sees herself, looking down, she has no head.
pub const fn frame_with(style: Style, mother: MotherAs, view: View) -> Frame {
    let frame = frame(style);
    let top = match (style, view, mother) {
        (Style::Sketch, ..) | (_, View::Hers, _) | (_, _, MotherAs::Outline | MotherAs::Body) => frame.top,
        (_, View::Facing, MotherAs::Lips(_)) => 59.4,
        (_, View::Facing, MotherAs::Whole(_)) => 79.5,
    };
    Frame { top, ..frame }
}

/// Why a figure could not be made.
#[derive(Clone, Debug, PartialEq)]
pub enum FigureError {
    /// A message is missing.
    Words(WordsError),
    /// A letter is missing.
    Font(FontError),
    /// No free place was found for these words, nor for a number that stands for them.
    NoRoom(String),
    /// A horn or a probe is asked for, and nothing says where it is put down.
    NowhereToListen,
}

impl From<WordsError> for FigureError {
    fn from(e: WordsError) -> Self {
        FigureError::Words(e)
    }
}

impl From<FontError> for FigureError {
    fn from(e: FontError) -> Self {
        FigureError::Font(e)
    }
}

impl fmt::Display for FigureError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            FigureError::Words(e) => e.fmt(f),
            FigureError::Font(e) => e.fmt(f),
            FigureError::NowhereToListen => f.write_str(
                "nothing says where the heart is heard, so no horn and no probe can be drawn there; write `heart`, or how the \
                 baby lies, or leave --hands out",
            ),
            FigureError::NoRoom(words) => {
                write!(
                    f,
                    "the picture has no free place for the label `{words}`; draw it larger, or with fewer labels"
                )
            }
        }
    }
}

impl std::error::Error for FigureError {}

/// The colours of her and of what leads, for a view from below.
pub fn colours_from_below(pose: &Pose, options: &FigureOptions) -> (MotherLook, BabyColours) {
    let (look, baby, _) = colours(pose, options);
    (look, baby)
}

/// The colours of a style and palette: the mother's look, the baby's colours, those of marks and words.
fn colours(pose: &Pose, options: &FigureOptions) -> (MotherLook, BabyColours, marks::MarkColours) {
    let (look, baby) = match options.style {
        Style::Soft => (
            MotherLook { style: MotherStyle::Soft, palette: MotherPalette::of(options.palette) },
            BabyColours::of(options.palette),
        ),
        Style::Line | Style::Pen | Style::Sketch => (MotherLook::of(MotherStyle::Line), BabyColours::INK),
    };
    let soft = options.style == Style::Soft;
    let marks = marks::MarkColours {
        paper: look.palette.paper,
        heart: if soft { HEART } else { baby.ink },
        ink: if soft { BabyColours::NEUTRAL.ink } else { baby.ink },
    };
    // A baby of whose back only the side is known is not drawn as if all were known. A stamp has no pale ink.
    let side_only = pose.notes.iter().filter(|note| matches!(note, DrawingNote::BackSideOnly(_))).count();
    let pale = options.style != Style::Sketch && side_only > 0 && side_only == pose.posed().count();
    let baby = if pale { baby.paler(look.palette.paper) } else { baby };
    (look, baby, marks)
}

/// The heart in its pale rim: dark enough to stand out from every tone from which the rim does not.
pub const HEART: Colour = Colour::hex(0x741A18);

/// What is painted over the baby of the mother, and where labels may point.
fn in_front(pose: &Pose, cast: Option<&Cast>, options: &FigureOptions, look: &MotherLook) -> InFront {
    let levels = matches!(options.labels, Labels::Few | Labels::All | Labels::Numbered);
    let handbooks = pose.handbooks.filter(|_| levels).map(|given| Handbooks {
        low: pose.mother.handbook_y(given.low) as f32,
        high: pose.mother.handbook_y(given.high) as f32,
    });
    let front = FrontMarks {
        scars: pose.scars.clone(),
        lumps: pose.lumps.clone(),
        handbooks,
        fundus_line: levels,
        brim_line: levels,
    };
    let covered = |p: FigurePoint| {
        cast.is_some_and(|c| c.covers(p.x, p.y)) || pose.rounds().any(|(_, r)| rounds::covers(r, p))
    };
    mother::in_front(&pose.mother, &pose.womb, &front, look, &covered)
}

/// Where all words, numbers and pointers of a picture stand, without drawing it.
pub fn plan(
    pose: &Pose,
    cast: Option<&Cast>,
    options: &FigureOptions,
    words: &Words,
    fonts: &Fonts,
) -> Result<Plan, FigureError> {
    let (look, ..) = colours(pose, options);
    let front = in_front(pose, cast, options, &look);
    plan_with(pose, cast, options, (&front, &[]), words, fonts)
}

fn plan_with(
    pose: &Pose,
    cast: Option<&Cast>,
    options: &FigureOptions,
    (front, shown): (&InFront, &[Shown]),
    words: &Words,
    fonts: &Fonts,
) -> Result<Plan, FigureError> {
    let whole = frame_with(options.style, options.mother, options.view);
    let frame = if options.style == Style::Sketch { sketch::frame(pose) } else { whole };
    let frame = if options.view == View::Hers { turn::turned_frame(frame) } else { frame };
    let marks = marks::places(pose, cast, options.labels, &front.anchors);
    let source = Source { pose, cast, marks: &marks, anchors: &front.anchors, words };
    let mut asked = Asked::of(&source, options)?;
    for (i, shown) in shown.iter().enumerate() {
        let owner = marks.len() + i;
        asked.terrain.marks.extend(shown.covers(owner));
        asked.wanted.push(shown.wanted(owner));
    }
    Planner { options, frame, words, fonts }.plan(asked)
}

/// Draws a pose.
pub fn figure(
    pose: &Pose,
    cast: Option<&Cast>,
    options: &FigureOptions,
    words: &Words,
    fonts: &Fonts,
) -> Result<Scene, FigureError> {
    figure_showing(pose, cast, options, &[], words, fonts)
}

/// Draws a pose as someone in front of her sees it, with what a lesson shows beside what was found.
pub fn figure_showing(
    pose: &Pose,
    cast: Option<&Cast>,
    options: &FigureOptions,
    shown: &[Shown],
    words: &Words,
    fonts: &Fonts,
) -> Result<Scene, FigureError> {
    let (look, colours, mark_colours) = colours(pose, options);
    let front = in_front(pose, cast, options, &look);
    let mut plan = plan_with(pose, cast, options, (&front, shown), words, fonts)?;
    let sketch = options.style == Style::Sketch;
    let mut scene = Scene {
        frame: frame_with(options.style, options.mother, options.view),
        title: options.title.clone(),
        description: options.description.clone(),
        lang: words.lang().to_owned(),
        items: vec![],
    };
    if sketch {
        scene.items = sketch::draw(pose, &pen::pen(pose), options, colours.ink);
    } else {
        scene.items = painted(pose, cast, options, &look, &colours, front);
        if options.mother.is_dressed() || options.hands.is_some() {
            // Arms and clothes reach to the edges: every word there has its rim.
            plan.placed.iter_mut().filter(|p| p.area.bottom > scene.frame.bottom).for_each(|p| p.rim = true);
        }
        if let Some(scale) = marks::Scale::of(pose, cast)
            && matches!(options.labels, Labels::Few | Labels::All | Labels::Numbered)
        {
            scene.items.push(scale.draw(&mark_colours));
        }
        if matches!(options.labels, Labels::All | Labels::Numbered) {
            scene.items.extend(marks::limbs(pose, &mark_colours));
        }
    }
    if let Some(palpation) = options.hands.filter(|_| !sketch) {
        let heart = if palpation.listens() {
            Some(place_to_listen(pose).ok_or(FigureError::NowhereToListen)?)
        } else {
            None
        };
        scene.items.extend(instruments::draw(palpation, &pose.mother, heart, &look));
        scene.items.push(hands::draw(
            &palpating::laid(&pose.mother, palpation, heart),
            &look,
            options.mm_per_cm,
        ));
    }
    scene.items.extend(shown.iter().enumerate().map(|(i, shown)| shown.draw(i + 1, &mark_colours)));
    if options.view == View::Hers {
        turn::half_turn(&mut scene);
    }
    scene.frame = plan.frame;
    scene.items.insert(0, paper(plan.frame, look.palette.paper));
    // Hearts and words are placed after the turn, so that they stand upright.
    let size = if sketch { sketch::HEART } else { 1.0 };
    scene.items.extend(marks::hearts(pose, options.view, size, &mark_colours));
    if sketch {
        scene.items.extend(sketch::numbers(pose, options, words.lang(), mark_colours.ink));
    }
    scene.items.extend(labels::paint(&plan, &mark_colours, words.lang(), fonts)?);
    Ok(scene)
}

/// Where the first heart was heard, or else is best listened for.
fn place_to_listen(pose: &Pose) -> Option<MotherPoint> {
    let heard = pose.marks.iter().find_map(|mark| match mark {
        Mark::Heart(_, at) => Some(*at),
        Mark::Limb(..) => None,
    });
    heard.or_else(|| touch::palpation(pose).hearts.first().map(|heart| heart.at))
}

/// Mother and babies in the styles `soft` and `line`.
fn painted(
    pose: &Pose,
    cast: Option<&Cast>,
    options: &FigureOptions,
    look: &MotherLook,
    colours: &BabyColours,
    front: InFront,
) -> Vec<Item<FigurePoint>> {
    let tonal = options.style == Style::Soft;
    let [linea_nigra, striae, rash] = pose.skin;
    let skin = SkinMarks { linea_nigra, striae, rash };
    let rounds = pose.rounds().map(|(number, rounds)| rounds::draw(number, rounds, colours, tonal));
    let body = options.mother.is_dressed();
    let hair = options.mother.hair().filter(|_| options.view == View::Facing);
    // The wall of the womb lies before the baby, but behind her hands.
    let is_wall = |item: &Item<FigurePoint>| matches!(item, Item::Group { name, .. } if name == "womb-wall");
    let (wall, marks): (Vec<_>, Vec<_>) = front.items.into_iter().partition(|item| body && is_wall(item));
    let mut items = if body {
        her_body::draw(pose, cast, &skin, look, (options.palette, hair), wall)
    } else {
        mother::behind(&pose.mother, &pose.womb, &skin, look)
    };
    items.extend(rounds);
    // A family is shown no bone across its baby; on her body none is drawn.
    let (under, over) = match options.labels {
        _ if body => (vec![], vec![]),
        Labels::Family => (front.bones, vec![]),
        Labels::None | Labels::Few | Labels::All | Labels::Numbered => (vec![], front.bones),
    };
    items.extend(under);
    if let Some(cast) = cast {
        let babies: Vec<_> = pose.posed().map(|(_, b)| b).collect();
        items.push(Item::Group {
            name: "baby".to_owned(),
            about: String::new(),
            items: if options.style == Style::Pen {
                penned(pose, colours.ink, look.palette.paper)
            } else {
                baby::draw(&babies, cast, colours, tonal)
            },
        });
    }
    items.extend(over);
    items.extend(marks);
    items
}

/// Babies as a pen draws them, each on paper of its own, so that nothing of her shows through.
fn penned(pose: &Pose, ink: Colour, paper: Colour) -> Vec<Item<FigurePoint>> {
    const LINE: f32 = 0.2;
    const FINE: f32 = 0.14;
    const TOLERANCE: f32 = 0.03;
    let strokes = pen::pen(pose);
    let mut items = vec![];
    for (number, outline) in pen::outlines(pose) {
        items.push(Item::Fill { path: smooth::closed(&outline), colour: paper, rule: FillRule::NonZero });
        for stroke in strokes.iter().filter(|stroke| stroke.baby == number) {
            let width = if stroke.kind.is_fine() { FINE } else { LINE };
            items.push(Item::Stroke { path: stroke.path(TOLERANCE), colour: ink, width, dash: None });
        }
    }
    items
}

/// The paper the picture is printed on.
fn paper(frame: Frame, colour: Colour) -> Item<FigurePoint> {
    let fill = Item::Fill { path: frame.outline(), colour, rule: FillRule::NonZero };
    Item::Group { name: "paper".to_owned(), about: String::new(), items: vec![fill] }
}
