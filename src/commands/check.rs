//! `check`. In: exams. Out: what was understood in plain words, the conclusion, remarks with act-now first, and problems;
//! or the same as one JSON object a line.

mod json;

use super::load::{self, Loaded};
use super::{Outcome, Source, exit};
use crate::chart::paragraph::{Column, paragraph};
use crate::chart::said;
use crate::reckon::Grade;
use crate::report::Look;
use crate::words::{Words, WordsError};

/// Check every exam; the code is the highest of them.
pub fn run(exams: &[Source], json: bool, clinic: Option<&Source>, quiet: &[String], look: Look) -> Outcome {
    let words = match Words::load("en") {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    let (clinic, clinic_problems, clinic_failed) = load::clinic(clinic, look);
    let unquietable = load::unquietable(quiet);
    let mut outcome = Outcome {
        code: if clinic_failed || !unquietable.is_empty() { exit::FAILED } else { exit::DONE },
        notes: unquietable + &clinic_problems,
        ..Outcome::default()
    };
    let mut parts = vec![];
    for source in exams {
        let mut loaded = load::exam(source, clinic.as_ref());
        loaded.reckoning.quiet(quiet);
        outcome.code = outcome.code.max(loaded.code());
        let part = if json { json::line(&loaded, &words) } else { text(&loaded, &words, look) };
        match part {
            Ok(part) => parts.push(part),
            Err(fault) => return load::wordless(&fault),
        }
    }
    outcome.text = parts.join(if json { "" } else { "\n" });
    outcome
}

fn text(loaded: &Loaded<'_>, words: &Words, look: Look) -> Result<String, WordsError> {
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
    text.push_str(&said::lines(exam, &loaded.reckoning.conclusions, words)?);
    text.push('\n');
    for (index, conclusion) in loaded.reckoning.conclusions.iter().enumerate() {
        let sentence = said::conclusion(exam, index, conclusion, words)?;
        let sentence = load::of_baby(sentence, index, exam.babies.len(), words)?;
        text.push_str(&paragraph(&sentence, Column::Margin));
    }
    text.push('\n');
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
    if loaded.reckoning.remarks.is_empty() {
        text.push_str(&paragraph(&words.say("check-remarks-none", &[])?, Column::Margin));
    }
    if loaded.reckoning.local {
        text.push_str(&paragraph(&words.say("check-local", &[])?, Column::Margin));
    }
    if !problems.is_empty() {
        text.push_str(&format!("\n{}\n{problems}", words.say("check-problems", &[])?));
    }
    Ok(format!("{}\n", text.trim_end()))
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
