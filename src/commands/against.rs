//! What stands against a document that could comfort. In: a read exam, the document, the remarks named with `--despite`.
//! Out: what is to be said and the document is made all the same; or an outcome that says why it is not.
//!
//! A heart that was not heard stands against it whatever is named.

use super::load::{self, Loaded};
use super::{Outcome, exit};
use crate::reckon::{Grade, Remark};
use crate::report::Look;
use crate::words::{Words, WordsError};

/// What is asked for.
pub struct Asked<'a> {
    /// The document, as messages name it: "family page".
    pub document: &'a str,
    /// Ids of act-now remarks despite which it is made.
    pub despite: &'a [String],
}

/// The problems of the exam and what stands all the same, to be told beside the document; or why there is none.
pub fn look(
    loaded: &Loaded<'_>,
    asked: &Asked<'_>,
    look: Look,
    words: &Words,
) -> Result<String, Box<Outcome>> {
    let mut notes = loaded.problems(look);
    if let Some(wrong) = named_wrongly(loaded, asked) {
        notes.push_str(&wrong);
        let why = "--despite names a remark that does not stand, or that nothing is made despite".to_owned();
        return Err(Box::new(Outcome {
            notes,
            why,
            code: loaded.code().max(exit::FAILED),
            ..Outcome::default()
        }));
    }
    match refusal(loaded, asked, words) {
        Err(fault) => return Err(Box::new(load::wordless(&fault))),
        Ok(Some(reason)) => {
            notes.push_str(&reason);
            let ids: Vec<&str> = standing(loaded, asked).iter().map(|remark| remark.id).collect();
            let why = format!("against it stands {}", ids.join(", "));
            return Err(Box::new(Outcome { notes, why, code: loaded.code(), ..Outcome::default() }));
        }
        Ok(None) => {
            notes.push_str(&despite(loaded, words).map_err(|fault| Box::new(load::wordless(&fault)))?)
        }
    }
    Ok(notes)
}

/// Why no document is made, with what to do; `None` when nothing stands against it.
fn refusal(loaded: &Loaded<'_>, asked: &Asked<'_>, words: &Words) -> Result<Option<String>, WordsError> {
    let stands = standing(loaded, asked);
    if stands.is_empty() {
        return Ok(None);
    }
    let mut reason = format!("{}: no {} is made\n", loaded.name, asked.document);
    for remark in &stands {
        let grade = words.say(&format!("grade-{}", remark.grade.name()), &[])?;
        let text = load::sentence(remark, loaded.reckoning.conclusions.len(), words)?;
        reason.push_str(&format!("  {grade} [{}]: {text}\n", remark.id));
    }
    if stands.iter().any(|remark| remark.heart_unheard()) {
        reason.push_str(UNHEARD);
    } else if stands.iter().all(|remark| remark.grade == Grade::ActNow) {
        reason.push_str(
            "If this is in hand and she is to have the page all the same, name each of these with --despite.\n",
        );
    }
    Ok(Some(reason))
}

/// There is no way past a heart that was not heard; what to do.
const UNHEARD: &str = "While the heart has not been heard, nothing that goes home is made. Follow your local guidance for a heart \
                       not heard first; when it has been heard, record where and with what.\n";

/// The remarks that stand against a document.
fn standing<'a>(loaded: &'a Loaded<'_>, asked: &Asked<'_>) -> Vec<&'a Remark> {
    let against = |remark: &&Remark| match remark.grade {
        _ if remark.heart_unheard() => true,
        Grade::ActNow => !asked.despite.iter().any(|id| id == remark.id),
        Grade::CannotBoth => true,
        Grade::LookAgain | Grade::FollowGuidance => false,
    };
    loaded.reckoning.remarks.iter().filter(against).collect()
}

/// What stands all the same.
fn despite(loaded: &Loaded<'_>, words: &Words) -> Result<String, WordsError> {
    let mut told = String::new();
    for remark in loaded.graded(Grade::ActNow) {
        let text = load::sentence(remark, loaded.reckoning.conclusions.len(), words)?;
        told.push_str(&format!("{}: made despite [{}]: {text}\n", loaded.name, remark.id));
    }
    Ok(told)
}

/// Names after `--despite` that name nothing that stands, or what nothing is made despite.
fn named_wrongly(loaded: &Loaded<'_>, asked: &Asked<'_>) -> Option<String> {
    let unheard: Vec<&str> = loaded
        .reckoning
        .remarks
        .iter()
        .filter(|remark| remark.heart_unheard())
        .map(|remark| remark.id)
        .collect();
    if let Some(id) = asked.despite.iter().find(|id| unheard.contains(&id.as_str())) {
        return Some(format!(
            "handspan: --despite {id}: no {} is made despite a heart that was not heard\n{UNHEARD}",
            asked.document
        ));
    }
    let stands: Vec<&str> = loaded.graded(Grade::ActNow).map(|remark| remark.id).collect();
    let wrong = asked.despite.iter().find(|id| !stands.contains(&id.as_str()))?;
    let known = if stands.is_empty() {
        "no act-now remark stands; leave --despite out".to_owned()
    } else {
        format!("what stands: {}", stands.join(", "))
    };
    Some(format!(
        "handspan: --despite {wrong}: no such remark stands ({known}); no {} is made\n",
        asked.document
    ))
}
