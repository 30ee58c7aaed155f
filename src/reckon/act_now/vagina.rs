//! What was found in the vagina, or seen at it. In: an exam. Out: remarks on it; nothing of it ends without one.

use super::of_baby;
use crate::exam::words::Vocabulary;
use crate::exam::{Attitude, Baby, ByVagina, Denominator, Exam, Finding, KnownBy, Position, Presentation};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{by_vagina, labour_keys, labouring, waters_broken, waters_keys};

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    for (index, baby) in exam.babies.iter().enumerate() {
        if by_vagina(baby, ByVagina::Cord) {
            remarks.push(of_baby(exam, index, const { rule("cord-felt") }, &["found-by-vagina"]));
        }
        let parts = parts(baby);
        if parts.is_empty() {
            continue;
        }
        let pressing = labouring(exam) || waters_broken(exam);
        let mut names: Vec<&str> = parts.iter().map(|(_, key)| *key).collect();
        names.dedup();
        let rule = if pressing {
            names.extend(labour_keys(exam));
            names.extend(waters_keys(exam));
            const { rule("part-by-vagina-in-labour") }
        } else {
            const { rule("part-by-vagina") }
        };
        let mut said: Vec<&str> = parts.iter().map(|(word, _)| *word).collect();
        said.dedup();
        remarks.push(of_baby(exam, index, rule, &names).with("signs", said.join(", ")));
    }
}

/// Parts that should not lead, each with its key: brow, face, shoulder, hand, foot.
fn parts(baby: &Baby) -> Vec<(&'static str, &'static str)> {
    let mut parts = vec![];
    for part in baby.by_vagina.value().map_or(&[][..], Vec::as_slice) {
        match part {
            ByVagina::Brow | ByVagina::Face | ByVagina::Shoulder | ByVagina::Hand | ByVagina::Foot => {
                parts.extend(part.word().map(|word| (word, "found-by-vagina")));
            }
            // The cord has a rule of its own; a vertex or a breech may lead.
            ByVagina::Cord | ByVagina::Breech | ByVagina::Vertex => {}
        }
    }
    let mut add = |part: ByVagina, key: &'static str| parts.extend(part.word().map(|word| (word, key)));
    match vaginal(&baby.attitude) {
        Some(Attitude::Brow) => add(ByVagina::Brow, "attitude"),
        Some(Attitude::Face) => add(ByVagina::Face, "attitude"),
        Some(Attitude::Flexed | Attitude::Deflexed) | None => {}
    }
    match vaginal(&baby.presentation) {
        Some(Presentation::Brow) => add(ByVagina::Brow, "presentation"),
        Some(Presentation::Face) => add(ByVagina::Face, "presentation"),
        Some(Presentation::Shoulder) => add(ByVagina::Shoulder, "presentation"),
        Some(Presentation::Cephalic | Presentation::Breech) | None => {}
    }
    match vaginal(&baby.position) {
        Some(Position::Lengthwise { denominator: Denominator::Mentum, .. }) => {
            add(ByVagina::Face, "position")
        }
        Some(Position::Lengthwise { denominator: Denominator::Frontum, .. }) => {
            add(ByVagina::Brow, "position")
        }
        Some(Position::Crosswise { .. }) => add(ByVagina::Shoulder, "position"),
        Some(Position::Lengthwise { .. }) | None => {}
    }
    parts
}

/// The value of a finding that is known by a vaginal examination.
fn vaginal<T: Copy>(finding: &Finding<T>) -> Option<T> {
    match finding {
        Finding::Found(found) if found.known_by == KnownBy::VaginalExamination => Some(found.value),
        _ => None,
    }
}
