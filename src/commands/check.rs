//! `check`. In: exams. Out: what was understood in plain words, the conclusion, what was reckoned, remarks with act-now first, and
//! problems;
//! or the same as one JSON object a line.

mod json;
pub(super) mod numbers;

pub(super) use numbers::weeks_rule;

use super::languages::{self, Draft};
use super::load::{self, Loaded};
use super::{Outcome, Source, exit};
use crate::chart::boxes;
use crate::chart::paragraph::{Column, paragraph};
use crate::chart::said;
use crate::exam::spoken;
use crate::reckon::ledger::LEDGER_VERSION;
use crate::reckon::{Grade, heart_too_early};
use crate::report::Look;
use crate::words::{Part, Words, WordsError};

/// The program's version, printed beside the ledger's.
const VERSION: &str = env!("CARGO_PKG_VERSION");

/// How exams are checked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Check {
    /// The exams.
    pub exams: Vec<Source>,
    /// One JSON object a line instead of text.
    pub json: bool,
    /// The clinic's file.
    pub clinic: Option<Source>,
    /// Lesser remarks to be silenced, by id.
    pub quiet: Vec<String>,
    /// Weights worked out from the tape.
    pub weights: bool,
    /// Reference weights by scan at these weeks.
    pub weight_curves: bool,
    /// Language tag; two with a comma between follow one another. JSON is in the first.
    pub lang: String,
    /// What becomes of a language that nobody has signed.
    pub draft: Draft,
}

impl Default for Check {
    fn default() -> Self {
        Check {
            exams: vec![],
            json: false,
            clinic: None,
            quiet: vec![],
            weights: false,
            weight_curves: false,
            lang: "en".to_owned(),
            draft: Draft::Refused,
        }
    }
}

/// Check every exam; the code is the highest of them.
pub fn run(check: &Check, look: Look) -> Outcome {
    let languages = match languages::chosen(&check.lang, check.draft, &[Part::Picture, Part::Check]) {
        Ok(languages) => languages,
        Err(fault) => return load::wordless(&fault),
    };
    let (clinic, clinic_problems, clinic_failed) = load::clinic(check.clinic.as_ref(), look);
    let unquietable = load::unquietable(&check.quiet);
    let mut outcome = Outcome {
        code: if clinic_failed || !unquietable.is_empty() { exit::FAILED } else { exit::DONE },
        notes: unquietable + &clinic_problems,
        ..Outcome::default()
    };
    let mut all = vec![];
    for source in &check.exams {
        let mut loaded = load::exam(source, clinic.as_ref());
        loaded.reckoning.quiet(&check.quiet);
        outcome.code = outcome.code.max(loaded.code());
        all.push(loaded);
    }
    let said = if check.json {
        all.iter().map(|loaded| json::line(loaded, check, &languages)).collect::<Result<String, _>>()
    } else {
        languages::texts(&languages, |words| texts(&all, check, words, look))
    };
    match said {
        Ok(said) => outcome.text = said,
        Err(fault) => return load::wordless(&fault),
    }
    outcome
}

/// All exams in one language, then the versions.
fn texts(all: &[Loaded<'_>], check: &Check, words: &Words, look: Look) -> Result<String, WordsError> {
    let mut parts =
        all.iter().map(|loaded| text(loaded, check, words, look)).collect::<Result<Vec<_>, _>>()?;
    if all.iter().any(|loaded| loaded.reading.exam.is_some()) {
        let version = [("version", VERSION), ("ledger", LEDGER_VERSION)];
        parts.push(format!("{}\n", words.say("check-version", &version)?));
    }
    Ok(parts.join("\n"))
}

fn text(loaded: &Loaded<'_>, check: &Check, words: &Words, look: Look) -> Result<String, WordsError> {
    let mut text = String::new();
    let problems = loaded.problems(look);
    let Some(exam) = &loaded.reading.exam else { return Ok(problems) };
    let title = match exam.weeks {
        Some(weeks) => words.say("check-weeks", &[("file", loaded.name), ("weeks", &weeks.to_string())])?,
        None => words.say("check-no-weeks", &[("file", loaded.name)])?,
    };
    text.push_str(&strong(&title, Ink::Title, look));
    text.push_str("\n\n");
    // What cannot wait stands before everything else.
    text.push_str(&remarks(loaded, words, look, &[Grade::ActNow])?);
    if let Some(heard) = loaded.said_back().filter(|_| words.is_of_exams()) {
        text.push_str(&paragraph(&words.say("check-understood", &[("line", &heard)])?, Column::Margin));
        text.push('\n');
    }
    text.push_str(&said::lines(exam, &loaded.reckoning.conclusions, words)?);
    text.push('\n');
    text.push_str(&charted(loaded, words)?);
    text.push('\n');
    for (index, conclusion) in loaded.reckoning.conclusions.iter().enumerate() {
        let sentence = said::conclusion(exam, index, conclusion, words)?;
        let sentence = load::of_baby(sentence, index, exam.babies.len(), words)?;
        text.push_str(&paragraph(&sentence, Column::Margin));
        if let Some(fits) = fits(loaded, index, words)? {
            text.push_str(&paragraph(&load::of_baby(fits, index, exam.babies.len(), words)?, Column::Margin));
        }
    }
    text.push('\n');
    let numbers = numbers::lines(exam, &loaded.reckoning, check, words)?;
    if !numbers.is_empty() {
        text.push_str(&format!("{numbers}\n"));
    }
    text.push_str(&remarks(
        loaded,
        words,
        look,
        &[Grade::CannotBoth, Grade::LookAgain, Grade::FollowGuidance],
    )?);
    if !loaded.reckoning.quieted.is_empty() {
        let ids = loaded.reckoning.quieted.join(", ");
        text.push_str(&paragraph(&words.say("check-quieted", &[("ids", &ids)])?, Column::Margin));
    }
    if !loaded.reading.questions.is_empty() {
        text.push_str(&paragraph(&words.say("check-question-open", &[])?, Column::Margin));
    } else if loaded.reckoning.remarks.is_empty() {
        text.push_str(&paragraph(&said::no_remarks(exam, words)?, Column::Margin));
    }
    if heart_too_early(exam) {
        text.push_str(&paragraph(&words.say("check-heart-early", &[])?, Column::Margin));
    }
    if loaded.reckoning.local {
        text.push_str(&paragraph(&words.say("check-local", &[])?, Column::Margin));
    }
    if !problems.is_empty() {
        text.push_str(&format!("\n{}\n{problems}", words.say("check-problems", &[])?));
    }
    Ok(format!("{}\n", text.trim_end()))
}

/// The boxes that every chart has, a line each.
fn charted(loaded: &Loaded<'_>, words: &Words) -> Result<String, WordsError> {
    let Some(exam) = &loaded.reading.exam else { return Ok(String::new()) };
    let mut text = format!("{}\n", words.say("check-charted", &[])?);
    for of in boxes::boxes(exam, &loaded.reckoning.conclusions, words)? {
        let label = match of.baby.filter(|_| exam.babies.len() > 1) {
            Some(index) => format!("{} {}", of.label, index + 1),
            None => of.label,
        };
        text.push_str(&paragraph(&of.value, Column::Beside(&label)));
    }
    Ok(text)
}

/// More positions than this say nothing.
const FEW_FITS: usize = 3;

/// The positions that fit, where the conclusion names none and few do.
fn fits(loaded: &Loaded<'_>, index: usize, words: &Words) -> Result<Option<String>, WordsError> {
    let concluded = loaded.reckoning.conclusions.get(index).is_some_and(|c| c.position.is_some());
    let fits = loaded.reckoning.agreement.get(index).map_or(&[][..], |agreement| &agreement.fits[..]);
    if concluded || fits.is_empty() || fits.len() > FEW_FITS {
        return Ok(None);
    }
    let positions = fits.iter().map(|position| spoken::position(*position, words));
    let positions = positions.collect::<Result<Vec<_>, _>>()?;
    words.say("check-fits", &[("positions", &positions.join("; "))]).map(Some)
}

fn remarks(loaded: &Loaded<'_>, words: &Words, look: Look, grades: &[Grade]) -> Result<String, WordsError> {
    let babies = loaded.reckoning.conclusions.len();
    let mut text = String::new();
    for remark in loaded.reckoning.remarks.iter().filter(|remark| grades.contains(&remark.grade)) {
        let grade = words.say(&format!("grade-{}", remark.grade.name()), &[])?;
        let ink = if remark.grade == Grade::ActNow { Ink::Alarm } else { Ink::Caution };
        text.push_str(&strong(&grade, ink, look));
        text.push_str(&format!(" [{}]\n", remark.id));
        text.push_str(&paragraph(&load::sentence(remark, babies, words)?, Column::Indented));
        text.push('\n');
    }
    Ok(text)
}

enum Ink {
    Title,
    Alarm,
    Caution,
}

/// Text that stands out; in plain text an alarm is in capitals.
fn strong(text: &str, ink: Ink, look: Look) -> String {
    let text = if matches!(ink, Ink::Alarm) { text.to_uppercase() } else { text.to_owned() };
    match (look, ink) {
        (Look::Plain, _) => text,
        (Look::Coloured, Ink::Title) => format!("\u{1b}[1m{text}\u{1b}[0m"),
        (Look::Coloured, Ink::Alarm) => format!("\u{1b}[1;31m{text}\u{1b}[0m"),
        (Look::Coloured, Ink::Caution) => format!("\u{1b}[1;33m{text}\u{1b}[0m"),
    }
}
