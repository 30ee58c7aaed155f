//! The words of the guide's first side, which is propped beside the bed. In: one baby's strokes and what they rest on. Out: `Content`:
//! a title, how it lies, at most 12 words a step, what broken lines and dots mean. Numbers stand as ticks on the pictures.

use super::grounds::Ground;
use super::words::{Page, main_stroke};
use crate::body::pose::Mark;
use crate::exam::{Back, BackTurn};
use crate::exam::{Conclusion, Lie, Presentation};
use crate::figure::strokes::Step;
use crate::sheet::content::{Block, Content, Kind};
use crate::units::MotherSide;
use crate::words::{Words, WordsError};

/// How much is drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Length {
    /// Head, back, bottom, legs and heart, a line each: about a minute.
    Minute,
    /// Everything: about ten minutes.
    #[default]
    Whole,
}

/// A step: its name in messages, and what is drawn in it; the heart has no stroke.
pub type Named = (&'static str, Option<Step>);

/// Every step; the last is the heart.
const WHOLE: [Named; 7] = [
    ("head", Some(Step::Head)),
    ("back", Some(Step::Back)),
    ("bottom", Some(Step::Bottom)),
    ("legs", Some(Step::Legs)),
    ("arms", Some(Step::Arms)),
    ("belly", Some(Step::Belly)),
    ("heart", None),
];
/// Those of a minute.
const MINUTE: [Named; 5] = [WHOLE[0], WHOLE[1], WHOLE[2], WHOLE[3], WHOLE[6]];

impl Length {
    /// Its steps in their order.
    pub fn steps(self) -> &'static [Named] {
        match self {
            Length::Minute => &MINUTE,
            Length::Whole => &WHOLE,
        }
    }
}

/// The words of the first side.
pub fn front(page: &Page<'_>, conclusion: &Conclusion, words: &Words) -> Result<Content, WordsError> {
    let title = page.title(words)?;
    let mut content =
        Content { title: title.clone(), description: format!("{title}. {}", page.lie), ..Content::default() };
    let mut add = |name: &str, block: Block| {
        content.blocks.insert(name.to_owned(), vec![block]);
    };
    add("skin-title", Block::new(Kind::Title, title));
    add("skin-lies", Block::new(Kind::Strong, lies(conclusion, words)?));
    for (index, (name, step)) in page.length.steps().iter().enumerate() {
        let what = words.say(&format!("skin-{name}-name"), &[])?;
        let id = what_to_do(page, name, *step);
        let said = words.say(&id, &[("what", &what)])?;
        let numbered = words.say("skin-step", &[("number", &(index + 1).to_string()), ("do", &said)])?;
        add(&format!("skin-{name}-do"), Block::new(Kind::Text, numbered));
    }
    add("skin-key", Block::new(Kind::Text, words.say("skin-key", &[])?));
    Ok(content)
}

/// How the baby lies, in the fewest words.
fn lies(conclusion: &Conclusion, words: &Words) -> Result<String, WordsError> {
    let head = match (conclusion.lie, conclusion.presentation, conclusion.head_up) {
        (Some(Lie::Transverse | Lie::Oblique), ..) => match conclusion.head_side {
            Some(MotherSide::Left) => "side-l",
            Some(MotherSide::Right) => "side-r",
            None => "across",
        },
        (_, Some(Presentation::Breech), _) => "bottom-down",
        (_, Some(Presentation::Shoulder), _) => "across",
        (_, Some(_), _) | (.., Some(false)) => "head-down",
        (.., Some(true)) => "bottom-down",
        _ => "unknown",
    };
    let back = match conclusion.back {
        None => "unknown",
        Some(Back { turn: Some(BackTurn::Ribs), .. }) => "ribs",
        Some(Back { turn: Some(BackTurn::Feet), .. }) => "feet",
        Some(Back { side: Some(MotherSide::Left), .. }) => "left",
        Some(Back { side: Some(MotherSide::Right), .. }) => "right",
        Some(Back { turn: Some(BackTurn::Front) | None, .. }) => "front",
        Some(Back { turn: Some(BackTurn::Spine | BackTurn::Lateral), .. }) => "spine",
    };
    words.say("skin-lies", &[("head", head), ("back", back)])
}

/// The message of what is done in a step.
fn what_to_do(page: &Page<'_>, name: &str, step: Option<Step>) -> String {
    let Some(step) = step else {
        let heard = page.pose.marks.iter().any(|mark| matches!(mark, Mark::Heart(n, _) if *n == page.number));
        return match (heard, page.grounds.heart) {
            (false, _) => "skin-do-no-heart".to_owned(),
            (true, Ground::Unsure) => "skin-do-unsure".to_owned(),
            (true, _) => "skin-heart-do".to_owned(),
        };
    };
    let ground = page.grounds.step(step);
    let own = || page.strokes.iter().filter(|s| s.baby == page.number && s.step == step);
    if main_stroke(page.strokes, page.grounds, page.number, step).is_none() {
        return match (step, ground) {
            (Step::Back, Ground::Found | Ground::Unsure | Ground::Written) => "skin-do-behind",
            (_, Ground::NotKnown) => "skin-do-not-felt",
            _ if own().any(|stroke| stroke.deep) => "skin-do-below",
            _ => "skin-do-hidden",
        }
        .to_owned();
    }
    match ground {
        Ground::NotKnown => "skin-do-not-felt".to_owned(),
        Ground::Follows | Ground::Written => "skin-do-feel-first".to_owned(),
        Ground::Unsure => "skin-do-unsure".to_owned(),
        Ground::Found if step == Step::Head && own().any(|s| s.deep && !s.fine) => {
            "skin-head-low-do".to_owned()
        }
        Ground::Found => format!("skin-{name}-do"),
    }
}
