//! What a figure shows for its lesson. In: the lesson, the posed body, words. Out: places and lengths with their words;
//! the title of a sheet and what is said at its foot.

use super::sets::{Lesson, Set, Way};
use crate::body::diameter;
use crate::body::pose::Pose;
use crate::body::touch::{self, Feel, Palpation};
use crate::commands::picture::Maker;
use crate::exam::words::Vocabulary;
use crate::exam::{Across, Height, Position, spoken};
use crate::figure::shown::Shown;
use crate::units::{MotherPoint, MotherSide};
use crate::words::{Words, WordsError};

/// The title of the sheets of a set.
pub fn title(set: Set, way: &Way, words: &Words) -> Result<String, WordsError> {
    let id = format!("plate-set-{}", set.named().0);
    match set {
        Set::Turning => {
            let end = |name: &str| match Position::find(name) {
                Some(position) => spoken::position_and_code(position, words),
                None => Ok(name.to_owned()),
            };
            words.say(&id, &[("from", &end(&way.ends[0])?), ("to", &end(&way.ends[1])?)])
        }
        _ => words.say(&id, &[]),
    }
}

/// What is said at the foot of every sheet.
pub fn foot(maker: &Maker<'_>) -> Result<String, WordsError> {
    let foot = maker.words.say("plate-foot", &[("version", env!("CARGO_PKG_VERSION"))])?;
    Ok(match &maker.draft {
        Some(draft) => format!("{draft} {foot}"),
        None => foot,
    })
}

/// What a figure shows beside the baby.
pub fn shown(lesson: &Lesson, pose: &Pose, words: &Words) -> Result<Vec<Shown>, WordsError> {
    match lesson {
        Lesson::None | Lesson::Way(..) | Lesson::Below(..) => Ok(vec![]),
        Lesson::Diameter => diameters(pose, words),
        Lesson::Babies => pose
            .posed()
            .zip(["shown-first", "shown-second"])
            .map(|((_, baby), id)| {
                Ok(Shown::Place { at: MotherPoint(baby.body.origin), text: words.say(id, &[])? })
            })
            .collect(),
        Lesson::Tape => tape(pose, words),
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
        let diameter = diameter::presenting(baby);
        let text = words.say("shown-cm", &[("cm", &tenths(diameter.cm()))])?;
        out.push(Shown::Length { ends: diameter.ends, text });
    }
    Ok(out)
}

/// The tape in the midline, from the upper border of the pubic bone to the top of the womb.
fn tape(pose: &Pose, words: &Words) -> Result<Vec<Shown>, WordsError> {
    let Some(cm) = pose.tape else { return Ok(vec![]) };
    let at = |y: f64| pose.mother.skin(0.0, y).0;
    let text = words.say("shown-tape", &[("cm", &tenths(cm as f32).replace(".0", ""))])?;
    Ok(vec![Shown::Length { ends: [at(0.0), at(pose.mother.fundus_y)], text }])
}

/// The name of the diameter with which the head presents, its measure, and that of handbooks.
pub fn diameter_told(pose: &Pose, words: &Words) -> Result<String, WordsError> {
    let Some(diameter) = pose.posed().next().map(|(_, baby)| diameter::presenting(baby)) else {
        return Ok(String::new());
    };
    let name = words.say(&format!("diameter-{}", diameter.name.id()), &[])?;
    let (cm, handbook) = (tenths(diameter.cm()), tenths(diameter.name.handbook_cm()));
    words.say("told-diameter", &[("name", &name), ("cm", &cm), ("handbook", &handbook)])
}

/// A length in cm with one decimal.
fn tenths(cm: f32) -> String {
    format!("{cm:.1}")
}

/// Where the hands of a grip lie: the levels, and the side of her; `None`: in the middle.
fn under_the_hands(grip: u8) -> Vec<(Height, Option<MotherSide>)> {
    let both = |height| [MotherSide::Right, MotherSide::Left].map(|side| (height, Some(side))).to_vec();
    match grip {
        1 => both(Height::Fundus),
        2 => [Height::AtNavel, Height::BelowNavel].into_iter().flat_map(both).collect(),
        3 => vec![(Height::AbovePubicBone, None)],
        _ => both(Height::AbovePubicBone),
    }
}

fn grip_feels(grip: u8, pose: &Pose, words: &Words) -> Result<Vec<Shown>, WordsError> {
    let map: Palpation = touch::palpation(pose);
    let mut out = vec![];
    for (height, side) in under_the_hands(grip) {
        // A hand comes in from the side until it meets something.
        let columns: [fn(Across) -> Option<MotherSide>; 2] = [
            |across| if let Across::Side(side) = across { Some(side) } else { None },
            |across| if let Across::Measured(side, _) = across { Some(side) } else { None },
        ];
        let at = |column: Option<fn(Across) -> Option<MotherSide>>| {
            map.touches.iter().find(|touch| {
                touch.place.height == Some(height)
                    && match (touch.place.across, column) {
                        (Some(Across::Middle), None) => side.is_none(),
                        (Some(across), Some(column)) => side.is_some() && column(across) == side,
                        _ => false,
                    }
            })
        };
        let met = match side {
            None => at(None),
            Some(_) => {
                let tried: Vec<_> = columns.iter().filter_map(|column| at(Some(*column))).collect();
                tried.iter().find(|touch| touch.felt.is_some()).or(tried.first()).copied()
            }
        };
        let Some(touch) = met else { continue };
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
        out.push(Shown::Place { at: touch.met_at, text: words.say(id, &[])? });
    }
    Ok(out)
}
