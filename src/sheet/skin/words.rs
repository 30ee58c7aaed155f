//! The words of the guide's second side. In: strokes of one baby, what they rest on, landmarks. Out: `Content`: how to measure, a
//! block for each step with where its longest stroke starts and ends, her leave, what to say, how to trace, pens.

use super::front::Length;
use super::grounds::{Ground, Grounds};
use super::places::Landmarks;
use crate::body::pose::{Mark, Pose};
use crate::figure::strokes::{Step, Stroke};
use crate::sheet::content::{Block, Content, Kind};
use crate::units::FigurePoint;
use crate::words::{Words, WordsError};

/// One baby's page.
pub struct Page<'a> {
    /// The pose.
    pub pose: &'a Pose,
    /// Number of the baby, from 1.
    pub number: usize,
    /// Its strokes.
    pub strokes: &'a [Stroke],
    /// What they rest on.
    pub grounds: &'a Grounds,
    /// How much is drawn.
    pub length: Length,
    /// How it lies, in a sentence.
    pub lie: &'a str,
    /// What is to be said of the drawing, a sentence each.
    pub notes: &'a [String],
    /// Why there is no tracing sheet, where there is none.
    pub not_traced: Option<&'a str>,
    /// The message that names the colour of a pen for her skin.
    pub pen: &'a str,
}

impl Page<'_> {
    /// Its title.
    pub fn title(&self, words: &Words) -> Result<String, WordsError> {
        if self.pose.baby_count > 1 {
            words.say("skin-title-baby", &[("number", &self.number.to_string())])
        } else {
            words.say("skin-title", &[])
        }
    }
}

/// The words of one baby's second side.
pub fn back(page: &Page<'_>, landmarks: &Landmarks<'_>, words: &Words) -> Result<Content, WordsError> {
    let title = page.title(words)?;
    let mut content =
        Content { title: title.clone(), description: format!("{title}. {}", page.lie), ..Content::default() };
    let mut add = |name: &str, blocks: Vec<Block>| {
        content.blocks.insert(name.to_owned(), blocks);
    };
    let numbers = if page.pose.baby_count > 1 {
        words.say("skin-numbers-baby", &[("number", &page.number.to_string())])?
    } else {
        words.say("skin-numbers", &[])?
    };
    let mut lie = vec![page.lie.to_owned()];
    lie.extend_from_slice(page.notes);
    add("skin-numbers", vec![Block::new(Kind::Title, numbers), Block::new(Kind::Strong, lie.join(" "))]);
    let how = if landmarks.navel_measured { "skin-measure-navel" } else { "skin-measure" };
    add("skin-measure", vec![Block::new(Kind::Text, words.say(how, &[])?)]);
    // A box whose step is not drawn stays empty.
    for (name, _) in Length::Whole.steps() {
        add(&format!("skin-{name}"), vec![]);
    }
    for (number, (name, step)) in page.length.steps().iter().enumerate() {
        let heading = words.say(&format!("skin-{name}"), &[("number", &(number + 1).to_string())])?;
        let told = step_words(page, name, *step, landmarks, words)?.join(" ");
        add(&format!("skin-{name}"), vec![Block::new(Kind::Heading, heading), Block::new(Kind::Text, told)]);
    }
    let pen = words.say(page.pen, &[])?;
    let manners = words.say("skin-manners", &[("pen", &pen)])?;
    let headed = |id: &str, blocks: Vec<Block>| -> Result<Vec<Block>, WordsError> {
        let heading = Block::new(Kind::Heading, words.say(id, &[])?);
        Ok(std::iter::once(heading).chain(blocks).collect())
    };
    add("skin-manners", headed("skin-manners-title", vec![Block::new(Kind::Text, manners)])?);
    let say = ["skin-say-ask", "skin-say-head", "skin-say-back", "skin-say-heart", "skin-say-turn"]
        .into_iter()
        .map(|id| Ok(Block::new(Kind::Item, words.say(id, &[])?)))
        .collect::<Result<Vec<_>, WordsError>>()?;
    add("skin-say", headed("skin-say-title", say)?);
    let trace = match page.not_traced {
        Some(why) => why.to_owned(),
        None => words.say("skin-trace", &[])?,
    };
    add("skin-trace", headed("skin-trace-title", vec![Block::new(Kind::Text, trace)])?);
    let foot = words.say("skin-foot", &[("version", env!("CARGO_PKG_VERSION"))])?;
    add("skin-foot", vec![Block::new(Kind::Text, foot)]);
    Ok(content)
}

/// A second line of the head is told from this length on, cm.
const OTHER_SIDE: f32 = 2.5;

/// The sentences of one step.
fn step_words(
    page: &Page<'_>,
    name: &str,
    step: Option<Step>,
    landmarks: &Landmarks<'_>,
    words: &Words,
) -> Result<Vec<String>, WordsError> {
    let Some(step) = step else { return heart(page, landmarks, words) };
    let ground = page.grounds.step(step);
    let own = || page.strokes.iter().filter(|s| s.baby == page.number && s.step == step);
    let Some(main) = main_stroke(page.strokes, page.grounds, page.number, step) else {
        let why = match (step, ground) {
            (Step::Back, Ground::Found | Ground::Unsure | Ground::Written) => "skin-back-behind",
            (_, Ground::NotKnown) => "skin-not-felt",
            _ if own().any(|stroke| stroke.deep) => "skin-all-below",
            _ => "skin-hidden",
        };
        return Ok(vec![words.say(why, &[])?]);
    };
    let how = match ground {
        Ground::NotKnown => "skin-guess".to_owned(),
        Ground::Follows => "skin-follows".to_owned(),
        Ground::Unsure => "skin-unsure".to_owned(),
        Ground::Written => "skin-written".to_owned(),
        Ground::Found => format!("skin-{name}-how"),
    };
    let mut out = vec![words.say(&how, &[])?];
    let ends =
        |stroke: &Stroke| landmarks.say_both(stroke.line[0], stroke.line[stroke.line.len() - 1], words);
    if main.closed {
        let top = main.line.iter().fold(main.line[0], |a, b| if b.y > a.y { *b } else { a });
        let low = main.line.iter().fold(main.line[0], |a, b| if b.y < a.y { *b } else { a });
        let (top, low) = (landmarks.say(top, words)?, landmarks.say(low, words)?);
        out.push(words.say("skin-round", &[("top", &top), ("low", &low)])?);
    } else {
        out.push(ends(main)?);
    }
    // The other side of a head that is parted by the neck or the bone.
    let other = |s: &&Stroke| step == Step::Head && !s.fine && !s.deep && !std::ptr::eq(*s, main);
    if let Some(other) = own().find(other).filter(|other| other.length() >= OTHER_SIDE) {
        out.push(ends(other)?);
    }
    if own().any(|stroke| stroke.deep && !stroke.fine) {
        out.push(words.say("skin-below", &[])?);
    }
    Ok(out)
}

/// The longest line of a step that is drawn on skin; of those that rest on a finding, when there are any.
pub fn main_stroke<'a>(
    strokes: &'a [Stroke],
    grounds: &Grounds,
    baby: usize,
    step: Step,
) -> Option<&'a Stroke> {
    let large = || strokes.iter().filter(|s| s.baby == baby && s.step == step && !s.fine && !s.deep);
    let longest = |a: &&Stroke, b: &&Stroke| a.length().total_cmp(&b.length());
    large().filter(|s| grounds.is_firm(s)).max_by(longest).or_else(|| large().max_by(longest))
}

fn heart(page: &Page<'_>, landmarks: &Landmarks<'_>, words: &Words) -> Result<Vec<String>, WordsError> {
    let at = page.pose.marks.iter().find_map(|mark| match mark {
        Mark::Heart(n, at) if *n == page.number => Some(FigurePoint::new(at.0.x, at.0.y)),
        Mark::Heart(..) | Mark::Limb(..) => None,
    });
    let Some(at) = at else { return Ok(vec![words.say("skin-heart-none", &[])?]) };
    let mut out = vec![];
    if page.grounds.heart == Ground::Unsure {
        out.push(words.say("skin-unsure", &[])?);
    }
    out.push(words.say("skin-heart-at", &[("place", &landmarks.say(at, words)?)])?);
    Ok(out)
}
