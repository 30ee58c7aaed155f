//! When to call, and whom. In: the clinic, the weeks, whether waters that break are urgent. Out: the lists and
//! sentences, each resting on a source (`tests/published/family-safety.csv`) or marked as common practice.

use super::lie::{Way, which_way};
use super::{Told, signs};
use crate::clinic::Clinic;
use crate::exam::{Baby, Conclusion, Descent, Fifths};
use crate::sheet::content::{Block, Kind};
use crate::units::Gestation;
use crate::words::{Words, WordsError};

/// From this on, movements not felt yet are a reason to call (source: NTH NHS, in family-safety.csv).
const MOVEMENTS_FELT_BY: Option<Gestation> = Gestation::new(24, 0);
/// From this on the page says that movements stay the same to the end (source: NHS-MOVE; RCOG-57).
const LATE_FROM: Option<Gestation> = Gestation::new(28, 0);
/// Tightenings before this are a reason to call.
const TERM: Option<Gestation> = Gestation::new(37, 0);

/// Whom to call: the number that is answered day and night first. What the clinic's file leaves out is a line to write on.
pub(super) fn phone(clinic: &Clinic, words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![match &clinic.name {
        Some(name) => Block::new(Kind::Emphasis, name.clone()),
        None => Block::new(Kind::Blank, words.say("family-clinic-blank", &[])?),
    }];
    let numbers: Vec<(&str, &String)> = [
        ("family-phone-always", &clinic.labour_ward),
        ("family-phone-day", &clinic.day),
        ("family-phone-night", &clinic.night),
    ]
    .into_iter()
    .filter_map(|(id, number)| Some((id, number.as_ref()?)))
    .collect();
    // One or two numbers stand large; of more, the first does, so that it is the one that is found.
    let large = if numbers.len() <= 2 { 2 } else { 1 };
    for (at, (id, number)) in numbers.iter().enumerate() {
        if at < large {
            let label = words.say(id, &[("number", "")])?;
            out.push(Block::new(Kind::Text, label.trim_end()));
            let sign = (at == 0).then(|| signs::of("family-phone-always")).flatten();
            out.push(Block::new(Kind::Number, unbroken(number)).with(sign));
        } else {
            out.push(Block::new(Kind::Text, words.say(id, &[("number", &unbroken(number))])?));
        }
    }
    if numbers.is_empty() {
        out.push(Block::new(Kind::Blank, words.say("family-number-blank", &[])?));
    }
    out.push(match &clinic.emergency {
        Some(number) => {
            Block::new(Kind::Strong, words.say("family-emergency", &[("number", &unbroken(number))])?)
        }
        None => Block::new(Kind::Blank, words.say("family-emergency-blank", &[])?),
    });
    Ok(out)
}

/// The longest number, in characters, that is sure to fit on one line in large type.
const ONE_LINE: usize = 20;

/// Spaces between digits no longer break: a number stays on one line, unless it is too long for one.
fn unbroken(number: &str) -> String {
    if number.chars().count() > ONE_LINE { number.to_owned() } else { number.replace(' ', "\u{a0}") }
}

/// The question about movements.
pub(super) fn moves_title(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let title = if told.several { "family-moves-title-more" } else { "family-moves-title-one" };
    Ok(vec![told.block(Kind::Part, title)?])
}

/// What to do then.
pub(super) fn moves(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let weeks = told.exam.weeks;
    let early = weeks.is_some() && weeks < MOVEMENTS_FELT_BY;
    let mut text = vec!["family-moves-wait"];
    if weeks.is_none() || weeks >= LATE_FROM {
        text.push("family-moves-late");
    }
    text.push("family-moves-monitor");
    let text: Vec<String> = text.into_iter().map(|id| told.say(id)).collect::<Result<_, _>>()?;
    let mut out = vec![told.block(Kind::Lead, "family-moves-call")?];
    if early {
        out.push(told.block(Kind::Emphasis, "family-moves-early")?);
    }
    out.push(Block::new(Kind::Text, text.join(" ")));
    Ok(out)
}

/// Not known to be head down, or a head still high above the brim: waters that break are urgent (RCOG-50).
fn waters_are_urgent(baby: &Baby, conclusion: &Conclusion) -> bool {
    // 4/5: "can be lifted out" (BETTER, in engagement-fifths.csv).
    let high = baby.head_above_brim.value().is_some_and(|f| Some(*f) >= Fifths::new(4))
        || baby.descent.value() == Some(&Descent::Free);
    high || which_way(conclusion) != Some(Way::HeadDown)
}

fn urgent_waters(told: &Told<'_>) -> bool {
    !told.early && told.babies().any(|(baby, conclusion)| waters_are_urgent(baby, conclusion))
}

/// What to do when the cord is felt; of a baby that lies across or on a slant, also why waters and labour cannot wait.
fn cord(told: &Told<'_>, clinic: &Clinic) -> Result<String, WordsError> {
    let across = told.conclusions.iter().any(|c| matches!(which_way(c), Some(Way::Across | Way::Slanting)));
    let id = if across { "family-cord-why" } else { "family-cord" };
    match &clinic.emergency {
        Some(number) => told.words.say(&format!("{id}-number"), &[("number", &unbroken(number))]),
        None => told.say(id),
    }
}

/// What cannot wait; first, for a baby that is not head down or whose head is high, waters and labour, and the cord.
pub(super) fn go(told: &Told<'_>, clinic: &Clinic) -> Result<Vec<Block>, WordsError> {
    let title = match &clinic.emergency {
        Some(number) => told.words.say("family-go-title-number", &[("number", &unbroken(number))])?,
        None => told.say("family-go-title")?,
    };
    let mut out = vec![Block::new(Kind::Heading, title).with(signs::of("family-go-title"))];
    let urgent = urgent_waters(told);
    if urgent {
        out.push(told.block(Kind::Emphasis, "family-urgent-waters")?);
        out.push(Block::new(Kind::Emphasis, cord(told, clinic)?).with(signs::of("family-cord")));
    }
    let mut ids = vec![
        "family-go-bleeding",
        "family-go-pain",
        "family-go-breath",
        "family-go-faint",
        "family-go-fits",
        "family-go-harm",
    ];
    if !told.early && !urgent {
        ids.push("family-go-green");
    }
    for id in ids {
        out.push(told.block(Kind::Item, id)?);
    }
    if !told.early && !urgent {
        out.push(Block::new(Kind::Item, cord(told, clinic)?).with(signs::of("family-cord")));
    }
    Ok(out)
}

/// What calls for a call on the same day, at any hour.
pub(super) fn call(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let mut ids = vec![];
    if !urgent_waters(told) {
        ids.push("family-call-waters");
        if !told.early {
            ids.push("family-call-labour");
        }
    }
    // Of a baby known not to lie head down, tightenings are named with labour: she comes in at once.
    let not_head_down = |way| way != Way::HeadDown;
    let come_in = told.babies().any(|(_, conclusion)| which_way(conclusion).is_some_and(not_head_down));
    if told.exam.weeks < TERM && !come_in {
        ids.push("family-call-tightenings");
    }
    ids.extend([
        "family-call-itching",
        "family-call-head",
        "family-call-fever",
        "family-call-swelling",
        "family-call-vomit",
        "family-call-tired",
        "family-call-leg",
    ]);
    told.list("family-call-title", &ids)
}
