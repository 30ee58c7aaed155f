//! Files for the commands, and lines of shorthand. In: a source. Out: what was read of it, with its problems; remarks and the exit code they give.

use super::{Outcome, Source, Written, exit};
use crate::chart::paragraph::{Column, paragraph};
pub use crate::chart::said::{of_baby, sentence};
use crate::clinic::{self, Clinic};
use crate::exam::{self, Exam, Reading};
use crate::reckon::{self, Grade, Reckoning, Remark, ledger};
use crate::report::{Look, Problem, Severity, any_error, draw};
use crate::words::{Words, WordsError};

/// A visit file, read.
pub struct Loaded<'a> {
    /// Its name.
    pub name: &'a str,
    /// Its text, for drawing problems; empty when it could not be read.
    pub source: &'a str,
    /// What was read.
    pub reading: Reading,
    /// What is reckoned of it; empty when it could not be read.
    pub reckoning: Reckoning,
    /// It is a line, not a file.
    pub is_line: bool,
}

impl Loaded<'_> {
    /// What was understood of a line, in one line that can be heard.
    pub fn said_back(&self) -> Option<String> {
        self.reading.exam.as_ref().filter(|_| self.is_line).map(exam::shorthand::aloud)
    }
    /// The problems as text.
    pub fn problems(&self, look: Look) -> String {
        draw(&self.reading.problems, self.source, look)
    }
    /// The exit code that its problems and remarks call for.
    pub fn code(&self) -> u8 {
        let read = if any_error(&self.reading.problems) { exit::FAILED } else { exit::DONE };
        self.reckoning.remarks.iter().map(|remark| code_of(remark.grade)).fold(read, u8::max)
    }
    /// The remarks of one grade.
    pub fn graded(&self, grade: Grade) -> impl Iterator<Item = &Remark> {
        self.reckoning.remarks.iter().filter(move |remark| remark.grade == grade)
    }
    /// The exam, when nothing in it is a fault and nothing is asked.
    pub fn settled(&self) -> Option<&Exam> {
        self.reading.exam.as_ref().filter(|_| !any_error(&self.reading.problems))
    }
    /// The exam, or an outcome that reports why there is none.
    pub fn exam(&self, look: Look) -> Result<&Exam, Box<Outcome>> {
        self.settled().ok_or_else(|| {
            Box::new(Outcome {
                notes: self.problems(look),
                why: self.first_error(),
                code: exit::FAILED,
                ..Outcome::default()
            })
        })
    }
    /// The exam, and what a document of it tells first: the problems of its file, then what is pressing. Else the outcome
    /// that ends it.
    pub fn exam_and_told(&self, words: &Words, look: Look) -> Result<(&Exam, String), Box<Outcome>> {
        let exam = self.exam(look)?;
        let pressing = pressing(self, words).map_err(|fault| Box::new(wordless(&fault)))?;
        Ok((exam, self.problems(look) + &pressing))
    }
    /// The first error in its file, with its line.
    fn first_error(&self) -> String {
        let errors = || self.reading.problems.iter().filter(|p| p.severity == Severity::Error);
        let Some(first) = errors().next() else { return String::new() };
        let line = first.place.as_ref().map(|place| format!("line {}: ", place.line)).unwrap_or_default();
        let more = match errors().count() - 1 {
            0 => String::new(),
            n => format!(" (and {n} more)"),
        };
        format!("{line}{}{more}", first.message)
    }
}

fn code_of(grade: Grade) -> u8 {
    match grade {
        Grade::ActNow => exit::ACT_NOW,
        Grade::CannotBoth => exit::CANNOT_BOTH,
        Grade::LookAgain | Grade::FollowGuidance => exit::DONE,
    }
}

fn unreadable(source: &Source, why: &str) -> Problem {
    Problem::of_file("cannot-read", &source.name, format!("cannot be read: {why}"))
}

/// The text of a file for drawing problems, as the readers count its bytes.
fn text_of(source: &Source) -> &str {
    let bytes = source.bytes.as_deref().unwrap_or_default();
    let text = std::str::from_utf8(bytes).unwrap_or_default();
    text.strip_prefix('\u{feff}').unwrap_or(text)
}

/// Read an exam and reckon its remarks, by the thresholds of the clinic.
pub fn exam<'a>(source: &'a Source, clinic: Option<&Clinic>) -> Loaded<'a> {
    let unread = |why: &str| Reading {
        exam: None,
        problems: vec![unreadable(source, why)],
        questions: vec![],
        spans: Default::default(),
    };
    let reading = match &source.bytes {
        Ok(bytes) => match source.written {
            Written::File => exam::read(&source.name, bytes),
            Written::Line => match std::str::from_utf8(bytes) {
                Ok(line) => exam::shorthand::read(&source.name, line),
                Err(_) => unread("it is not UTF-8 text"),
            },
        },
        Err(why) => unread(why),
    };
    let thresholds = clinic.map(|clinic| clinic.thresholds.clone()).unwrap_or_default();
    let reckoning = reading.exam.as_ref().map(|exam| reckon::reckon(exam, &thresholds)).unwrap_or_default();
    let is_line = matches!(source.written, Written::Line);
    Loaded { name: &source.name, source: text_of(source), reading, reckoning, is_line }
}

/// What is wrong with the ids of remarks that are to be silenced, a line for each; empty when nothing is.
pub fn unquietable(ids: &[String]) -> String {
    let fault = |id: &String| match ledger::find(id).map(|rule| rule.grade) {
        Some(Some(grade)) if grade.is_lesser() => None,
        Some(Some(Grade::ActNow)) => Some(format!("`{id}` cannot wait, and cannot be silenced")),
        Some(Some(_)) => {
            Some(format!("`{id}` says that findings cannot all be right, and cannot be silenced"))
        }
        Some(None) => Some(format!("`{id}` is a number, not a remark; there is nothing to silence")),
        None => {
            let lesser = ledger::RULES.iter().filter(|rule| rule.grade.is_some_and(Grade::is_lesser));
            let near = lesser
                .map(|rule| (strsim::normalized_damerau_levenshtein(id, rule.id), rule.id))
                .filter(|(near, _)| *near >= 0.6)
                .max_by(|a, b| a.0.total_cmp(&b.0))
                .map(|(_, near)| format!("did you mean `{near}`?"))
                .unwrap_or_else(|| "handspan rules lists them".to_owned());
            Some(format!("there is no remark `{id}`; {near}"))
        }
    };
    ids.iter().filter_map(fault).map(|fault| format!("handspan: --quiet-remark: {fault}\n")).collect()
}

/// Read a clinic file: the clinic, its problems as text, and whether any of them is an error.
pub fn clinic(source: Option<&Source>, look: Look) -> (Option<Clinic>, String, bool) {
    let Some(source) = source else { return (None, String::new(), false) };
    let (clinic, problems) = match &source.bytes {
        Ok(bytes) => {
            let reading = clinic::read(&source.name, bytes);
            (reading.clinic, reading.problems)
        }
        Err(why) => {
            let message = format!("the clinic's own file cannot be read: {why}");
            let problem = Problem::of_file("cannot-read", &source.name, message).expecting(
                "the file named after --clinic; without it the visit is read by the program's own thresholds",
            );
            (None, vec![problem])
        }
    };
    (clinic, draw(&problems, text_of(source), look), any_error(&problems))
}

/// What cannot wait and what cannot all be right, for a command that makes a document: a heading and a paragraph each.
/// Lesser remarks are for `check`.
pub fn pressing(loaded: &Loaded<'_>, words: &Words) -> Result<String, WordsError> {
    let mut told = String::new();
    for remark in loaded.reckoning.remarks.iter().filter(|remark| !remark.grade.is_lesser()) {
        let grade = words.say(&format!("grade-{}", remark.grade.name()), &[])?;
        told.push_str(&format!("{}: {grade} [{}]\n", loaded.name, remark.id));
        let text = sentence(remark, loaded.reckoning.conclusions.len(), words)?;
        told.push_str(&paragraph(&text, Column::Indented));
    }
    Ok(told)
}

/// An outcome for words that are missing from a language file.
pub fn wordless(fault: &WordsError) -> Outcome {
    Outcome {
        notes: format!("handspan: {fault}\n"),
        why: fault.to_string(),
        code: exit::FAILED,
        ..Outcome::default()
    }
}
