//! How sure the page is, in one place. In: the findings. Out: a heading; what was felt, heard, seen, not found and not felt for;
//! how far to trust it, and for how long.

use super::Told;
use super::known::{self, Known};
use crate::exam::{Baby, Finding, KnownBy};
use crate::sheet::content::{Block, Kind};
use crate::words::{WordsError, capital};

/// How a part of the baby is known.
#[derive(Clone, Copy, PartialEq, Eq)]
enum State {
    Felt,
    FeltUnsure,
    Seen,
    Heard,
    HeardUnsure,
    NotFound,
    NotTold,
    NotFelt,
}

/// The states in the order in which they are told, with the message of each.
const STATES: [(State, &str); 8] = [
    (State::Felt, "family-sure-felt"),
    (State::Heard, "family-sure-heard"),
    (State::Seen, "family-sure-seen"),
    (State::FeltUnsure, "family-sure-felt-unsure"),
    (State::HeardUnsure, "family-sure-heard-unsure"),
    (State::NotTold, "family-sure-not-told"),
    (State::NotFound, "family-sure-not-found"),
    (State::NotFelt, "family-sure-not-felt"),
];

pub(super) fn sure(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![told.block(Kind::Heading, "family-sure-title")?];
    if !told.early {
        for (number, (baby, _)) in told.babies().enumerate() {
            let sentences = sentences(baby, told)?;
            if told.several && !sentences.is_empty() {
                let number = (number + 1).to_string();
                let name = told.words.say("family-baby-number", &[("number", &number)])?;
                let name = capital(&name);
                out.push(Block::new(Kind::Item, format!("{name}. {}", sentences.join(" "))));
            } else {
                out.extend(sentences.into_iter().map(|sentence| Block::new(Kind::Item, sentence)));
            }
        }
    }
    let trust = known::trust(told.known).map(|id| told.say(id)).collect::<Result<Vec<_>, _>>()?;
    out.push(Block::new(Kind::Text, trust.join(" ")));
    Ok(out)
}

/// What is told of the parts of a baby, by how they are known.
fn sentences(baby: &Baby, told: &Told<'_>) -> Result<Vec<String>, WordsError> {
    let head = if baby.head == Finding::NotExamined && baby.head_above_brim.value().is_some() {
        of(&baby.head_above_brim)
    } else {
        of(&baby.head)
    };
    let known = [
        ("family-part-head", head),
        ("family-part-bottom", of(&baby.breech)),
        ("family-part-back", of(&baby.back)),
        ("family-part-limbs", of(&baby.limbs)),
        ("family-part-heart", heard(&baby.heart)),
    ];
    // Where a position was written down, what it rests on is not said; without a hand on her the page says so itself.
    let written =
        baby.lie.value().is_some() || baby.presentation.value().is_some() || baby.position.value().is_some();
    let by_hand = matches!(told.known, Known::Hands | Known::HandsAndScan);
    let mut out = vec![];
    for (state, id) in STATES {
        if state == State::NotFelt && (written || !by_hand) {
            continue;
        }
        let parts = known.iter().filter(|(_, of)| *of == Some(state));
        let parts = parts.map(|(part, _)| told.say(part)).collect::<Result<Vec<_>, _>>()?;
        if !parts.is_empty() {
            out.push(told.words.say(id, &[("parts", &parts.join(", "))])?);
        }
    }
    Ok(out)
}

fn of<T>(finding: &Finding<T>) -> Option<State> {
    Some(match finding {
        Finding::Found(found) => match (&found.known_by, found.sure) {
            (KnownBy::Scan(_), _) => State::Seen,
            (KnownBy::Hands | KnownBy::VaginalExamination, true) => State::Felt,
            (KnownBy::Hands | KnownBy::VaginalExamination, false) => State::FeltUnsure,
        },
        Finding::Absent => State::NotFound,
        Finding::CouldNotTell { .. } => State::NotTold,
        Finding::NotExamined | Finding::NotTried => State::NotFelt,
    })
}

/// The heart is named only where it was heard.
fn heard<T>(finding: &Finding<T>) -> Option<State> {
    match of(finding)? {
        State::Felt => Some(State::Heard),
        State::FeltUnsure => Some(State::HeardUnsure),
        State::Seen => Some(State::Seen),
        _ => None,
    }
}
