//! When to call, and whom. In: the clinic, the weeks, whether waters that break are urgent. Out: the one number, three lists
//! by what to do, and sentences, each resting on a source (`tests/published/family-safety.csv`) or marked as common practice.

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
/// Tightenings before this are a reason to come in.
const TERM: Option<Gestation> = Gestation::new(37, 0);

/// The numbers to call at any hour, with the words for when each is answered: one, wherever the clinic names one.
pub(super) fn numbers(clinic: &Clinic) -> Vec<(&'static str, &str)> {
    if let Some(number) = &clinic.labour_ward {
        return vec![("family-phone-always", number)];
    }
    let both = [("family-phone-day", &clinic.day), ("family-phone-night", &clinic.night)];
    both.into_iter().filter_map(|(id, number)| Some((id, number.as_deref()?))).collect()
}

/// Whom to call, large; what the clinic's file leaves out is a line to write on.
fn whom(clinic: &Clinic, words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![];
    let numbers = numbers(clinic);
    for (at, (id, number)) in numbers.iter().enumerate() {
        let label = words.say(id, &[("number", "")])?;
        out.push(Block::new(Kind::Text, label.trim_end()));
        let sign = (at == 0).then(|| signs::of("family-phone-always")).flatten();
        out.push(Block::new(Kind::Number, unbroken(number)).calling(unbroken(number)).with(sign));
    }
    match numbers.as_slice() {
        [] => out.push(Block::new(Kind::Blank, words.say("family-number-blank", &[])?)),
        [("family-phone-day", _)] => {
            out.push(Block::new(Kind::Blank, words.say("family-night-blank", &[])?));
        }
        _ => {}
    }
    Ok(out)
}

/// On the page to keep: whom to call and the number, and the emergency number under it.
pub(super) fn front(told: &Told<'_>, clinic: &Clinic) -> Result<Vec<Block>, WordsError> {
    let mut out: Vec<Block> =
        clinic.name.iter().map(|name| Block::new(Kind::Emphasis, name.clone())).collect();
    out.extend(whom(clinic, told.words)?);
    out.push(match &clinic.emergency {
        Some(number) => {
            let number = unbroken(number);
            Block::new(Kind::Emphasis, told.words.say("family-emergency", &[("number", &number)])?)
                .calling(number)
        }
        None => told.block(Kind::Blank, "family-emergency-blank")?,
    });
    Ok(out)
}

/// The clinic and its number.
pub(super) fn phone(clinic: &Clinic, words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![match &clinic.name {
        Some(name) => Block::new(Kind::Emphasis, name.clone()),
        None => Block::new(Kind::Blank, words.say("family-clinic-blank", &[])?),
    }];
    out.extend(whom(clinic, words)?);
    Ok(out)
}

/// The numbers that are not for urgent calls, each with what it is for: far from the number for the night.
pub(super) fn other(clinic: &Clinic, words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![];
    for other in &clinic.other {
        let number = unbroken(&other.number);
        let values = [("purpose", other.purpose.as_str()), ("number", &number)];
        out.push(Block::new(Kind::Text, words.say("family-phone-other", &values)?).calling(&number));
    }
    Ok(out)
}

/// The emergency number, as large.
pub(super) fn emergency(clinic: &Clinic, words: &Words) -> Result<Vec<Block>, WordsError> {
    Ok(match &clinic.emergency {
        Some(number) => {
            let label = words.say("family-emergency", &[("number", "")])?;
            let number = Block::new(Kind::Number, unbroken(number)).calling(unbroken(number));
            vec![Block::new(Kind::Text, label.trim_end()), number]
        }
        None => vec![Block::new(Kind::Blank, words.say("family-emergency-blank", &[])?)],
    })
}

/// The longest number, in characters, that is sure to fit on one line in large type.
const ONE_LINE: usize = 20;

/// Spaces between digits no longer break: a number stays on one line, unless it is too long for one.
fn unbroken(number: &str) -> String {
    if number.chars().count() > ONE_LINE { number.to_owned() } else { number.replace(' ', "\u{a0}") }
}

/// The last short word of a place stays with the one before it: "door B".
fn kept_together(place: &str) -> String {
    match place.rsplit_once(' ') {
        Some((before, last)) if last.chars().count() <= 3 => format!("{before}\u{a0}{last}"),
        _ => place.to_owned(),
    }
}

/// A sentence with the emergency number, or with the words for it where the clinic's file does not give it.
fn with_emergency(told: &Told<'_>, clinic: &Clinic, id: &str) -> Result<String, WordsError> {
    match &clinic.emergency {
        Some(number) => told.words.say(&format!("{id}-number"), &[("number", &unbroken(number))]),
        None => told.say(id),
    }
}

/// The question about movements, and what to do.
pub(super) fn moves_title(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let title = if told.several { "family-moves-title-more" } else { "family-moves-title-one" };
    Ok(vec![told.block(Kind::Part, title)?, told.block(Kind::Lead, "family-moves-call")?])
}

/// What to keep feeling for, and what to do when it changes.
pub(super) fn moves(told: &Told<'_>, clinic: &Clinic) -> Result<Vec<Block>, WordsError> {
    let weeks = told.exam.weeks;
    let early = weeks.is_some() && weeks < MOVEMENTS_FELT_BY;
    let mut text = vec!["family-moves-wait"];
    if weeks.is_none() || weeks >= LATE_FROM {
        text.push("family-moves-late");
    }
    text.push("family-moves-monitor");
    let text: Vec<String> = text.into_iter().map(|id| told.say(id)).collect::<Result<_, _>>()?;
    let keep = if told.several { "family-moves-keep-more" } else { "family-moves-keep-one" };
    let mut out = vec![told.block(Kind::Heading, keep)?];
    out.push(match numbers(clinic).as_slice() {
        [("family-phone-always", number)] => {
            let number = unbroken(number);
            let text = told.words.say("family-moves-now-number", &[("number", &number)])?;
            Block::new(Kind::Emphasis, text).calling(number)
        }
        _ => told.block(Kind::Emphasis, "family-moves-now")?,
    });
    if early {
        out.push(told.block(Kind::Emphasis, "family-moves-early")?);
    }
    out.push(Block::new(Kind::Text, text.join(" ")));
    Ok(out)
}

/// A place where thoughts of hurting oneself may be said, and whom to call.
pub(super) fn heavy(told: &Told<'_>, clinic: &Clinic) -> Result<Vec<Block>, WordsError> {
    let now = with_emergency(told, clinic, "family-heavy-now")?;
    let rest = match numbers(clinic).as_slice() {
        [(_, number)] => told.words.say("family-heavy-else-number", &[("number", &unbroken(number))])?,
        _ => told.say("family-heavy-else")?,
    };
    let text = Block::new(Kind::Text, format!("{} {now} {rest}", told.say("family-heavy")?));
    let numbers =
        clinic.emergency.iter().map(String::as_str).chain(numbers(clinic).into_iter().map(|(_, n)| n));
    let text = numbers.fold(text, |text, number| text.calling(unbroken(number)));
    Ok(vec![told.block(Kind::Heading, "family-heavy-title")?, text])
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

/// The emergency number now; the cord last, of a baby that lies across or on a slant with the reason.
pub(super) fn go(told: &Told<'_>, clinic: &Clinic) -> Result<Vec<Block>, WordsError> {
    let title = with_emergency(told, clinic, "family-go-title")?;
    let title = Block::new(Kind::Heading, title).with(signs::of("family-go-title"));
    let mut out = vec![clinic.emergency.iter().fold(title, |title, number| title.calling(unbroken(number)))];
    out.extend(told.points(&[
        "family-go-bleeding",
        "family-go-fits",
        "family-go-breath",
        "family-go-collapse",
    ])?);
    if !told.early {
        let across =
            told.conclusions.iter().any(|c| matches!(which_way(c), Some(Way::Across | Way::Slanting)));
        let cord = told.say(if across { "family-cord-why" } else { "family-cord" })?;
        out.push(Block::new(Kind::Item, cord).with(signs::of("family-cord")));
        out.push(told.block(Kind::Text, "family-cord-kneel")?);
        out.push(told.block(Kind::Text, "family-cord-lie")?);
    }
    Ok(out)
}

/// Call now and come in; first, for a baby that is not head down or whose head is high, waters and labour.
pub(super) fn come(told: &Told<'_>, clinic: &Clinic) -> Result<Vec<Block>, WordsError> {
    let place = clinic.come_in.as_deref().map(kept_together);
    let place = place.as_deref();
    let title = if place.is_some() { "family-come-title-where" } else { "family-come-title" };
    let mut out = vec![titled(told, clinic, title, place.unwrap_or_default(), "family-come-title")?];
    if place.is_none() {
        out.push(told.block(Kind::Blank, "family-where-blank")?);
    }
    let urgent = urgent_waters(told);
    let not_head_down = |way| way != Way::HeadDown;
    let come_in = told.conclusions.iter().filter_map(which_way).any(not_head_down);
    if urgent {
        let why = told.say(if come_in { "family-urgent-why" } else { "family-urgent-soon" })?;
        let waters = told.block(Kind::Emphasis, "family-urgent-waters")?;
        out.push(Block { text: format!("{} {why}", waters.text), ..waters });
    }
    // In the order of every list of signs: waters and bleeding; pain; head and sight; infection; other.
    let mut ids = vec!["family-come-bleeding"];
    if !urgent {
        ids.push("family-come-waters");
    }
    if !told.early {
        ids.push("family-come-green");
    }
    ids.push("family-come-pain");
    // Of a baby known not to lie head down, tightenings are named with labour, where she comes in at once.
    if told.exam.weeks < TERM && !come_in {
        ids.push("family-come-tightenings");
    }
    ids.extend(["family-come-head", "family-come-swelling", "family-come-fever", "family-come-heart"]);
    out.extend(told.points(&ids)?);
    Ok(out)
}

/// What no list holds: labour at the end, when she calls and is told when to come in; and every other worry.
pub(super) fn worried(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![];
    if !told.early && !urgent_waters(told) {
        let later = told.exam.weeks < TERM;
        let id = if later { "family-come-labour-later" } else { "family-come-labour" };
        out.push(told.block(Kind::Emphasis, id)?);
    }
    out.push(told.block(Kind::Emphasis, "family-worried")?);
    Ok(out)
}

/// What calls for a call on the same day, at any hour.
pub(super) fn call(told: &Told<'_>, clinic: &Clinic) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![titled(told, clinic, "family-call-title", "", "family-call-title")?];
    out.extend(told.points(&[
        "family-call-itching",
        "family-call-vomit",
        "family-call-leg",
        "family-call-tired",
    ])?);
    Ok(out)
}

/// The heading of a list, with the number where the clinic names one for any hour.
fn titled(told: &Told<'_>, clinic: &Clinic, id: &str, place: &str, sign: &str) -> Result<Block, WordsError> {
    let heading = |text| Block::new(Kind::Heading, text).with(signs::of(sign));
    let numbers = numbers(clinic);
    let [("family-phone-always", number)] = numbers.as_slice() else {
        return Ok(heading(told.words.say(id, &[("where", place)])?));
    };
    let number = unbroken(number);
    let text = told.words.say(&format!("{id}-number"), &[("where", place), ("number", &number)])?;
    Ok(heading(text).calling(number))
}
