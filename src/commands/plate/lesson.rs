//! What a figure shows for its lesson. In: the lesson, the posed body, words. Out: places and lengths with their words;
//! the title of a sheet and what is said at its foot.

use super::sets::{Lesson, Set, Way};
use crate::body::diameter;
use crate::body::pose::Pose;
use crate::body::touch::{self, Feel, Palpation};
use crate::exam::{Across, Height};
use crate::figure::shown::Shown;
use crate::words::{Words, WordsError};

/// The title of the sheets of a set.
pub fn title(set: Set, way: &Way, words: &Words) -> Result<String, WordsError> {
    let id = format!("plate-set-{}", set.named().0);
    match set {
        Set::Turning => words.say(&id, &[("from", &way.ends[0]), ("to", &way.ends[1])]),
        _ => words.say(&id, &[]),
    }
}

/// What is said at the foot of every sheet.
pub fn foot(words: &Words) -> Result<String, WordsError> {
    words.say("plate-foot", &[("version", env!("CARGO_PKG_VERSION"))])
}

/// What a figure shows beside the baby.
pub fn shown(lesson: &Lesson, pose: &Pose, words: &Words) -> Result<Vec<Shown>, WordsError> {
    match lesson {
        Lesson::None | Lesson::Way(..) => Ok(vec![]),
        Lesson::Diameter => diameters(pose, words),
        Lesson::Grip(grip) => grip_feels(*grip, pose, words),
        Lesson::Listening => touch::palpation(pose)
            .hearts
            .iter()
            .map(|heart| {
                let id = if heart.faint { "shown-listen-faint" } else { "shown-listen" };
                Ok(Shown::Place { at: heart.at, text: words.say(id, &[])? })
            })
            .collect(),
    }
}

/// The diameter with which each head presents, measured on the posed surface.
fn diameters(pose: &Pose, words: &Words) -> Result<Vec<Shown>, WordsError> {
    let mut out = vec![];
    for (_, baby) in pose.posed() {
        let Some(diameter) = diameter::presenting(baby) else { continue };
        let name = words.say(&format!("diameter-{}", diameter.name.id()), &[])?;
        let (cm, handbook) = (tenths(diameter.cm()), tenths(diameter.name.handbook_cm()));
        let text = words.say("shown-diameter", &[("name", &name), ("cm", &cm), ("handbook", &handbook)])?;
        out.push(Shown::Length { ends: diameter.ends, text });
    }
    Ok(out)
}

/// A length in cm with one decimal.
pub fn tenths(cm: f32) -> String {
    format!("{cm:.1}")
}

/// Where the hands of a grip lie: the levels, and whether this is the column.
fn under_the_hands(grip: u8) -> (&'static [Height], fn(Across) -> bool) {
    match grip {
        1 => (&[Height::Fundus], |across| across == Across::Middle),
        2 => (&[Height::AboveNavel, Height::BelowNavel], |across| matches!(across, Across::Side(_))),
        3 => (&[Height::AbovePubicBone], |across| across == Across::Middle),
        // The fingers of both hands slide along the head: halfway from the midline to the sides.
        _ => (&[Height::AbovePubicBone], |across| matches!(across, Across::Measured(..))),
    }
}

fn grip_feels(grip: u8, pose: &Pose, words: &Words) -> Result<Vec<Shown>, WordsError> {
    let map: Palpation = touch::palpation(pose);
    let mut out = vec![];
    let (levels, is_column) = under_the_hands(grip);
    let here = |touch: &&touch::Touch| {
        touch.place.across.is_some_and(is_column) && touch.place.height.is_some_and(|h| levels.contains(&h))
    };
    for touch in map.touches.iter().filter(here) {
        let id = match touch.felt.map(|felt| felt.what) {
            // In the fourth grip the hands slide along the head to where it enters the pelvis.
            Some(Feel::Head) if grip == 4 => "feel-head-above-brim",
            Some(Feel::Head) => "feel-head",
            Some(Feel::Back) => "feel-back",
            Some(Feel::Side) => "feel-side",
            Some(Feel::Front) => "feel-front",
            Some(Feel::Bottom) => "feel-bottom",
            Some(Feel::Limbs) => "feel-limbs",
            Some(Feel::Trunk) => "feel-trunk",
            None => "feel-nothing",
        };
        out.push(Shown::Place { at: touch.at, text: words.say(id, &[])? });
    }
    Ok(out)
}
