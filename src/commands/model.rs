//! `draw` to a file of a body in space. In: an exam, the kind of file. Out: the baby as it is concluded to lie, for turning on a
//! screen or for printing; the remarks that stand.

use super::load;
use super::picture;
use super::{Outcome, Source, exit};
use crate::body::lateral::lateral;
use crate::body::solid::Solid;
use crate::chart::said;
use crate::report::Look;
use crate::words::Words;
use crate::write;

/// The kind of file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Space {
    /// glTF 2.0, binary.
    Glb,
    /// Binary STL, of the baby alone.
    Stl,
}

impl Space {
    /// From a file's ending, without the point, in any case.
    pub fn from_ending(ending: &str) -> Option<Self> {
        match ending.to_ascii_lowercase().as_str() {
            "glb" => Some(Space::Glb),
            "stl" => Some(Space::Stl),
            _ => None,
        }
    }
}

/// What to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Model {
    /// The exam.
    pub exam: Source,
    /// The kind of file.
    pub space: Space,
}

/// Make it.
pub fn run(options: &Model, look: Look) -> Outcome {
    let words = match Words::load("en") {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    let loaded = load::exam(&options.exam, None);
    let (exam, mut notes) = match loaded.exam_and_told(&words, look) {
        Ok(both) => both,
        Err(outcome) => return *outcome,
    };
    let pose = picture::pose(exam, &loaded);
    let babies: Vec<(usize, Solid)> =
        lateral(&pose).babies.iter().map(|(number, baby)| (*number, Solid::of_cut(baby))).collect();
    if babies.is_empty() || babies.len() < exam.babies.len() {
        let why = "a body in space needs to know how each baby lies and where its back is; say both, or end the \
                   file in .svg, .png or .pdf for a picture of what is known";
        notes.push_str(&format!("handspan: {why}\n"));
        return Outcome {
            notes,
            why: why.to_owned(),
            code: loaded.code().max(exit::FAILED),
            ..Outcome::default()
        };
    }
    let mut about = vec![];
    for conclusion in &loaded.reckoning.conclusions {
        match said::lie_and_back(conclusion, &words) {
            Ok(said) => about.push(said),
            Err(fault) => return load::wordless(&fault),
        }
    }
    match picture::notes(&pose, &words).and_then(|told| Ok((told, words.say("picture-caption", &[])?))) {
        Ok((told, caption)) => about.extend(told.into_iter().chain([caption])),
        Err(fault) => return load::wordless(&fault),
    }
    let page = match options.space {
        Space::Glb => write::glb(&babies, &about.join(" ")),
        Space::Stl => write::stl(&babies.into_iter().map(|(_, solid)| solid).collect::<Vec<_>>()),
    };
    Outcome { notes, pages: vec![page], made: "the baby in space", code: loaded.code(), ..Outcome::default() }
}
