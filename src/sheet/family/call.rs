//! When to call, and whom. In: the clinic, the weeks, whether waters that break are urgent. Out: the lists and
//! sentences, each resting on a source (`tests/published/family-safety.csv`).

use super::ClinicLines;
use super::lie::{Way, which_way};
use crate::exam::{Baby, Conclusion, Descent, Fifths};
use crate::sheet::content::{Block, Kind};
use crate::units::Gestation;
use crate::words::{Words, WordsError};

/// From this on, movements not felt yet are a reason to call (source: NTH NHS, in family-safety.csv).
const MOVEMENTS_FELT_BY: Option<Gestation> = Gestation::new(24, 0);
/// From this on the page says that movements stay the same to the end (source: NHS-MOVE; RCOG-57).
const LATE_FROM: Option<Gestation> = Gestation::new(28, 0);

pub(super) fn phone(clinic: &ClinicLines, words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![match &clinic.name {
        Some(name) => Block::new(Kind::Strong, name.clone()),
        None => Block::new(Kind::Blank, words.say("family-clinic-blank", &[])?),
    }];
    // One or two numbers stand large; of more, the first does, so that it is the one that is found.
    let large = if clinic.phones.len() <= 2 { 2 } else { 1 };
    for (i, phone) in clinic.phones.iter().enumerate() {
        out.push(Block::new(if i < large { Kind::Number } else { Kind::Strong }, unbroken(phone)));
    }
    if clinic.phones.is_empty() {
        out.push(Block::new(Kind::Blank, words.say("family-number-blank", &[])?));
    }
    Ok(out)
}

/// The longest number, in characters, that is sure to fit on one line in large type.
const ONE_LINE: usize = 20;

/// Spaces between digits no longer break: a number stays on one line, unless it is too long for one.
fn unbroken(phone: &str) -> String {
    if phone.rsplit(": ").next().unwrap_or_default().chars().count() > ONE_LINE {
        return phone.to_owned();
    }
    let digit = |c: Option<char>| c.is_some_and(|c| c.is_ascii_digit());
    let mut out = String::with_capacity(phone.len() + 4);
    let mut rest = phone.chars().peekable();
    while let Some(c) = rest.next() {
        let inside = c == ' ' && digit(out.chars().last()) && digit(rest.peek().copied());
        out.push(if inside { '\u{a0}' } else { c });
    }
    out
}

pub(super) fn moves(
    weeks: Option<Gestation>,
    several: bool,
    words: &Words,
) -> Result<Vec<Block>, WordsError> {
    let title = if several { "family-moves-title-more" } else { "family-moves-title-one" };
    let mut strong = vec!["family-moves-fewer", "family-moves-call"];
    if weeks.is_some() && weeks < MOVEMENTS_FELT_BY {
        strong.insert(0, "family-moves-early");
    }
    let mut text = vec!["family-moves-wait"];
    if weeks.is_none() || weeks >= LATE_FROM {
        text.push("family-moves-late");
    }
    text.push("family-moves-monitor");
    let said = |ids: Vec<&str>| ids.into_iter().map(|id| words.say(id, &[])).collect::<Result<Vec<_>, _>>();
    let mut out = vec![Block::new(Kind::Heading, words.say(title, &[])?)];
    out.extend(said(strong)?.into_iter().map(|s| Block::new(Kind::Strong, s)));
    out.push(Block::new(Kind::Text, said(text)?.join(" ")));
    Ok(out)
}

/// `waters`: broken waters are a reason to come in, not only to call.
pub(super) fn go(waters: bool, words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut ids = vec![];
    if waters {
        ids.push("family-go-waters");
    }
    ids.extend([
        "family-go-bleeding",
        "family-go-pain",
        "family-go-breath",
        "family-go-head",
        "family-go-fits",
    ]);
    list("family-go-title", &ids, words)
}

/// Not known to be head down, or a head still high above the brim: waters that break are urgent (RCOG-50).
pub(super) fn waters_are_urgent(baby: &Baby, conclusion: &Conclusion) -> bool {
    // 4/5: "can be lifted out" (BETTER, in engagement-fifths.csv).
    let high = baby.head_above_brim.value().is_some_and(|f| Some(*f) >= Fifths::new(4))
        || baby.descent.value() == Some(&Descent::Free);
    high || which_way(conclusion) != Some(Way::HeadDown)
}

pub(super) fn call(waters: bool, words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut ids = vec![];
    if !waters {
        ids.push("family-call-fluid");
    }
    ids.extend([
        "family-call-head",
        "family-call-sight",
        "family-call-fever",
        "family-call-swelling",
        "family-call-vomit",
        "family-call-faint",
        "family-call-leg",
        "family-call-tired",
        "family-call-harm",
    ]);
    list("family-call-list-title", &ids, words)
}

fn list(title: &str, ids: &[&str], words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![Block::new(Kind::Heading, words.say(title, &[])?)];
    for id in ids {
        out.push(Block::new(Kind::Item, words.say(id, &[])?));
    }
    Ok(out)
}
