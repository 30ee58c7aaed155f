//! A posed baby and its mother become a figure. In: `Pose`, its cast, how it is wanted. Out: `Scene`, in cm.

mod baby;
pub mod coarse;
mod fit;
mod grid;
mod lines;
mod marks;
pub mod mother;
mod mother_body;
mod mother_bones;
mod mother_ink;
mod mother_palette;
mod mother_words;
mod options;
pub mod palette;
mod ribbon;
mod rounds;
pub mod scene;
pub mod smooth;
mod tone;
mod turn;

pub use options::{FigureOptions, Labels, Style, View};

use crate::body::cast::Cast;
use crate::body::pose::Pose;
use crate::fonts::{FontError, Fonts};
use crate::units::FigurePoint;
use crate::words::{Words, WordsError};
use mother::{FrontMarks, Handbooks, MotherLook, MotherStyle, SkinMarks};
use palette::BabyColours;
use scene::{Colour, FillRule, Frame, Item, Scene};
use std::fmt;

/// What lies inside every picture, cm.
pub const FRAME: Frame = Frame { left: -25.5, bottom: -12.5, right: 25.5, top: 37.5 };

/// Why a figure could not be made.
#[derive(Clone, Debug, PartialEq)]
pub enum FigureError {
    /// A message is missing.
    Words(WordsError),
    /// A letter is missing.
    Font(FontError),
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
        }
    }
}

impl std::error::Error for FigureError {}

/// Draws a pose.
pub fn figure(
    pose: &Pose,
    cast: Option<&Cast>,
    options: &FigureOptions,
    words: &Words,
    fonts: &Fonts,
) -> Result<Scene, FigureError> {
    let tonal = options.style == Style::Soft;
    let look = MotherLook::of(if tonal { MotherStyle::Soft } else { MotherStyle::Line });
    let colours = if tonal { BabyColours::NEUTRAL } else { BabyColours::INK };
    let mark_colours = marks::MarkColours {
        paper: look.palette.paper,
        heart: if tonal { Colour::hex(0xA8322A) } else { colours.ink },
        ink: colours.ink,
    };
    let [linea_nigra, striae, rash] = pose.skin;
    let mut items = vec![paper(look.palette.paper)];
    items.extend(mother::behind(&pose.mother, &pose.womb, &SkinMarks { linea_nigra, striae, rash }, &look));
    for (number, rounds) in pose.rounds() {
        items.push(rounds::draw(number, rounds, &colours, tonal));
    }
    if let Some(cast) = cast {
        let babies: Vec<_> = pose.posed().map(|(_, b)| b).collect();
        items.push(Item::Group {
            name: "baby".to_owned(),
            about: String::new(),
            items: baby::draw(&babies, cast, &colours, tonal),
        });
    }
    let levels = matches!(options.labels, Labels::Few | Labels::All);
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
    let in_front = mother::in_front(&pose.mother, &pose.womb, &front, &look, &covered);
    items.extend(in_front.items);
    if options.labels == Labels::All {
        items.extend(marks::limbs(pose, &mark_colours));
    }
    let mut scene = Scene {
        frame: FRAME,
        title: options.title.clone(),
        description: options.description.clone(),
        lang: words.lang().to_owned(),
        items,
    };
    if options.view == View::Hers {
        turn::half_turn(&mut scene);
    }
    // Hearts and words are placed after the turn, so that they stand upright.
    scene.items.extend(marks::hearts(pose, options.view, &mark_colours));
    let said = match levels {
        true => mother_words::said(pose, &in_front.anchors, words, options.labels == Labels::All)?,
        false => vec![],
    };
    scene.items.extend(marks::labels(pose, cast, options, &said, scene.frame, mark_colours, words, fonts)?);
    Ok(scene)
}

/// The paper the picture is printed on.
fn paper(colour: Colour) -> Item<FigurePoint> {
    let fill = Item::Fill { path: FRAME.outline(), colour, rule: FillRule::NonZero };
    Item::Group { name: "paper".to_owned(), about: String::new(), items: vec![fill] }
}
