//! The picture to take hold of. In: an exam. Out: as JSON where each named place lies on its picture, and where head, bottom and
//! back of each baby are drawn, so that a finger can move them.
//!
//! `x` and `y` are shares of the width of the picture, from its left and upper edge, as someone who faces her sees it.

use super::{Outcome, Source, exit, load, outline, picture};
use crate::body::pose::{Drawn, Pose};
use crate::body::touch;
use crate::exam::say::Canonical;
use crate::exam::spoken;
use crate::figure::FRAME;
use crate::units::{MotherPoint, Vec3};
use crate::words::{Part, Words, WordsError};
use serde::Serialize;

/// Height of a head at term, skull base to vertex, cm: the scale along which a finger pushes it down; a drawing height.
const HEAD_CM: f32 = 9.5;

#[derive(Serialize)]
struct Places {
    places: Vec<Place>,
    babies: Vec<Poles>,
    /// Where the middle of a head stands of which so many fifths are above the brim, from 0/5 to 5/5.
    fifths: Vec<At>,
}

#[derive(Serialize)]
struct Place {
    words: String,
    /// The same in the language asked for.
    said: String,
    at: At,
}

/// Where the parts of a baby are drawn.
#[derive(Serialize)]
struct Poles {
    /// From 1.
    baby: usize,
    head: At,
    bottom: At,
    /// The middle of its trunk.
    trunk: At,
}

#[derive(Clone, Copy, Serialize)]
struct At {
    x: f64,
    y: f64,
}

fn at(point: MotherPoint) -> At {
    let width = f64::from(FRAME.right - FRAME.left);
    let share = |cm: f32| (f64::from(cm) / width * 10_000.0).round() / 10_000.0;
    At { x: share(point.0.x - FRAME.left), y: share(FRAME.top - point.0.y) }
}

/// The places and parts on the picture of `source`; a text that records nothing has places alone.
pub fn run(source: &Source, lang: &str) -> Outcome {
    let words = match Words::load_for(lang, &[Part::Family, Part::Desk]) {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    let loaded = load::exam(source, None);
    let pose = match &loaded.reading.exam {
        Some(exam) => picture::pose(exam, &loaded),
        None => picture::pose(&outline::bare(None), &loaded),
    };
    let text = places(&pose, &words).map_err(|fault| fault.to_string());
    match text.and_then(|places| serde_json::to_string(&places).map_err(|fault| fault.to_string())) {
        Ok(text) => Outcome { text, ..Outcome::default() },
        Err(why) => {
            Outcome { notes: format!("handspan: {why}\n"), why, code: exit::FAILED, ..Outcome::default() }
        }
    }
}

fn places(pose: &Pose, words: &Words) -> Result<Places, WordsError> {
    let place = |(place, _): (crate::exam::Place, _)| {
        let said = spoken::value(&place.canonical(), words)?;
        Ok(Place { words: place.canonical(), said, at: at(pose.mother.place(&place)) })
    };
    let named = touch::places(&pose.mother)
        .into_iter()
        .filter(|(place, _)| outline::named(place.across, place.height))
        .map(place)
        .collect::<Result<_, WordsError>>()?;
    let poles = |(baby, drawn): &(usize, Drawn)| {
        let (head, bottom) = match drawn {
            Drawn::Baby(posed) => {
                (posed.body.point(posed.spine.head.origin), posed.body.point(posed.spine.pelvis.origin))
            }
            Drawn::Rounds(rounds) => (rounds.head.0.0, rounds.bottom.0.0),
        };
        let [head, bottom, trunk] = [head, bottom, head.lerp(bottom, 0.6)].map(|p: Vec3| at(MotherPoint(p)));
        Poles { baby: *baby, head, bottom, trunk }
    };
    let fifth = |k: u8| at(MotherPoint(Vec3::new(0.0, HEAD_CM * (f32::from(k) / 5.0 - 0.5), 0.0)));
    Ok(Places {
        places: named,
        babies: pose.babies.iter().map(poles).collect(),
        fifths: (0..=5).map(fifth).collect(),
    })
}
