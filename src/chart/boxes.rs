//! The boxes that every chart has, in their order, whatever was found. In: an exam and its conclusions. Out: a label and what
//! stands in the box; what nobody recorded says so.

use super::said::{charted, words_of};
use crate::exam::say::Canonical;
use crate::exam::{Conclusion, Exam, spoken};
use crate::reckon::heart_rate;
use crate::words::{Words, WordsError};

/// One box.
pub struct Box {
    /// Which baby, from 0; `None` for what is of the mother.
    pub baby: Option<usize>,
    /// The label.
    pub label: String,
    /// What stands in it.
    pub value: String,
}

/// The boxes of a baby, then those of the mother, in the order of a chart: lie, presentation, position, attitude, engagement;
/// liquor, fundal height; fetal heart; movements. The heart stands with its baby where there are two.
pub fn boxes(exam: &Exam, conclusions: &[Conclusion], words: &Words) -> Result<Vec<Box>, WordsError> {
    let mut boxes = vec![];
    let several = exam.babies.len() > 1;
    let mut add = |baby, name: &str, value: Option<String>| -> Result<(), WordsError> {
        let value = value.map_or_else(|| words.say("box-none", &[]), Ok)?;
        boxes.push(Box { baby, label: words.say(&format!("box-{name}"), &[])?, value });
        Ok(())
    };
    for index in 0..exam.babies.len() {
        let (baby, concluded) = (Some(index), conclusions.get(index));
        for name in ["lie", "presentation", "position"] {
            add(baby, name, of_conclusion(exam, index, concluded, name, words)?)?;
        }
        add(baby, "attitude", read(exam, &key(index, "attitude"), words)?)?;
        add(baby, "engagement", engagement(exam, index, words)?)?;
        if several {
            add(baby, "heart", heart(exam, index, words)?)?;
        }
    }
    add(None, "liquor", read(exam, "mother.water", words)?)?;
    let height = read(exam, "mother.fundal-height", words)?;
    let height = if height.is_some() { height } else { read(exam, "mother.fundus", words)? };
    add(None, "fundal-height", height)?;
    if !several {
        add(None, "heart", heart(exam, 0, words)?)?;
    }
    add(None, "movements", read(exam, "mother.movements", words)?)?;
    Ok(boxes)
}

/// The boxes as sentences, those of two babies told apart.
pub fn sentences(exam: &Exam, conclusions: &[Conclusion], words: &Words) -> Result<String, WordsError> {
    let mut parts = vec![];
    let mut baby = None;
    for Box { baby: of, label, value } in boxes(exam, conclusions, words)? {
        if let Some(index) = of.filter(|_| of != baby && exam.babies.len() > 1) {
            parts.push(format!("{}:", words.say("check-baby", &[("baby", &(index + 1).to_string())])?));
        }
        baby = of;
        parts.push(words.say("box-sentence", &[("label", &label), ("value", &value)])?);
    }
    Ok(parts.join(" "))
}

fn key(index: usize, name: &str) -> String {
    format!("baby.{}.{name}", index + 1)
}

/// What is recorded at a key.
fn read(exam: &Exam, key: &str, words: &Words) -> Result<Option<String>, WordsError> {
    words_of(exam, key).map(|value| charted(key, value, words)).transpose()
}

/// What follows; else what was written; else that nothing follows of what was felt.
fn of_conclusion(
    exam: &Exam,
    index: usize,
    concluded: Option<&Conclusion>,
    name: &str,
    words: &Words,
) -> Result<Option<String>, WordsError> {
    let value = match (name, concluded) {
        ("lie", Some(Conclusion { lie: Some(lie), .. })) => Some(spoken::value(&lie.canonical(), words)?),
        ("presentation", Some(Conclusion { presentation: Some(presentation), .. })) => {
            Some(spoken::value(&presentation.canonical(), words)?)
        }
        ("position", Some(Conclusion { position: Some(position), .. })) => {
            Some(spoken::position_and_code(*position, words)?)
        }
        _ => None,
    };
    if let Some(value) = value {
        return match concluded {
            Some(Conclusion { unsure, conflicts, .. }) if *unsure || !conflicts.is_empty() => {
                words.say("value-unsure", &[("value", &value)])
            }
            _ => Ok(value),
        }
        .map(Some);
    }
    if let Some(written) = read(exam, &key(index, name), words)? {
        return Ok(Some(written));
    }
    let felt = ["head", "breech", "back", "head-above-brim", "lie", "presentation", "position"]
        .iter()
        .any(|name| words_of(exam, &key(index, name)).is_some());
    felt.then(|| words.say("box-open", &[])).transpose()
}

/// Fifths, or the words for them.
fn engagement(exam: &Exam, index: usize, words: &Words) -> Result<Option<String>, WordsError> {
    let fifths = read(exam, &key(index, "head-above-brim"), words)?;
    let descent = read(exam, &key(index, "descent"), words)?;
    let known = exam.babies.get(index).is_some_and(|baby| baby.head_above_brim.value().is_some());
    let fifths = match fifths {
        Some(fifths) if known => Some(words.say("box-fifths", &[("fifths", &fifths)])?),
        other => other,
    };
    let both: Vec<String> = fifths.into_iter().chain(descent).collect();
    Ok((!both.is_empty()).then(|| both.join("; ")))
}

/// The rate, and where it was heard.
fn heart(exam: &Exam, index: usize, words: &Words) -> Result<Option<String>, WordsError> {
    let mut parts = vec![];
    let Some(baby) = exam.babies.get(index) else { return Ok(None) };
    let rate = read(exam, &key(index, "heart-rate"), words)?;
    match (rate, heart_rate(baby)) {
        (Some(rate), _) if baby.heart_rate.value().is_some() => {
            parts.push(words.say("box-rate", &[("rate", &rate)])?)
        }
        (Some(state), _) => parts.push(state),
        (None, Some(rate)) => {
            parts.push(words.say("box-rate", &[("rate", &format!("{:.0}", rate.mean))])?);
        }
        (None, None) => parts.extend(read(exam, &key(index, "heart-counts"), words)?),
    }
    if let Some(heard) = read(exam, &key(index, "heart"), words)? {
        let placed = matches!(baby.heart.value(), Some(crate::exam::HeartHeard::At(_)));
        parts.push(if placed { words.say("box-heard", &[("place", &heard)])? } else { heard });
    }
    Ok((!parts.is_empty()).then(|| parts.join(", ")))
}
