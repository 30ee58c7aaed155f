//! Sides read back. In: an exam and its conclusions. Out: a sentence for everything that lies at one of her sides, said from
//! her and from someone who faces her: a wrong side is seen before it is printed.

use super::said::of_baby;
use crate::exam::{Across, Baby, Conclusion, Exam, Finding, HeartHeard, Place};
use crate::units::MotherSide;
use crate::words::{Words, WordsError};

/// What can lie at a side, with the stem of its messages.
const PARTS: [&str; 5] = ["back", "head", "bottom", "limbs", "heart"];

/// The sentences, in the order of the babies.
pub fn sentences(exam: &Exam, conclusions: &[Conclusion], words: &Words) -> Result<Vec<String>, WordsError> {
    let mut out = vec![];
    for (index, baby) in exam.babies.iter().enumerate() {
        let concluded = conclusions.get(index);
        for part in PARTS {
            let sides = match part {
                "back" => {
                    let concluded = concluded.and_then(|conclusion| conclusion.back?.side);
                    baby.back.value().map_or(concluded, |back| back.side).into_iter().collect()
                }
                "head" => {
                    let concluded = concluded.and_then(|conclusion| conclusion.head_side);
                    match baby.head.value() {
                        Some(place) => sides(&[*place]),
                        None => concluded.into_iter().collect(),
                    }
                }
                other => placed(baby, other),
            };
            let side = match (sides.contains(&MotherSide::Left), sides.contains(&MotherSide::Right)) {
                (true, true) => "both",
                (true, false) => "left",
                (false, true) => "right",
                (false, false) => continue,
            };
            let sentence = words.say(&format!("read-back-{part}-{side}"), &[])?;
            out.push(of_baby(sentence, index, exam.babies.len(), words)?);
        }
    }
    Ok(out)
}

fn placed(baby: &Baby, part: &str) -> Vec<MotherSide> {
    match part {
        "bottom" => baby.breech.value().map_or(vec![], |place| sides(&[*place])),
        "limbs" => match &baby.limbs {
            Finding::Found(found) => sides(&found.value),
            _ => vec![],
        },
        _ => match baby.heart.value() {
            Some(HeartHeard::At(place)) => sides(&[*place]),
            _ => vec![],
        },
    }
}

fn sides(places: &[Place]) -> Vec<MotherSide> {
    let of = |place: &Place| match place.across {
        Some(Across::Side(side) | Across::Flank(side) | Across::Measured(side, _)) => Some(side),
        Some(Across::Middle) | None => None,
    };
    places.iter().filter_map(of).collect()
}
