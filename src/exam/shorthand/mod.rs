//! Chart shorthand. In: one line as it is jotted, or an exam. Out: the exam of the line with every problem; or the line of
//! the exam, which reads back to the same exam.
//!
//! A line is cut into tokens (`tokens`; `dictated` makes figures of number words), and read from left to right (`scan`) by the
//! rows of one table (`lexicon`, `lexicon.csv`) and the words of visit files. What a row makes of its words stands in `act`,
//! and by theme in `signs`, `weeks`, `baby`, `hearts`, `twins`, `aside`, `measures`. What nothing takes is kept (`keep`), what can be read
//! in two ways is asked (`ask`), and the findings are read by the reader of visit files: one vocabulary, one set of messages.
//! `write` prints a line, `aloud` says one back.

mod act;
mod aloud;
mod aside;
pub mod ask;
mod baby;
mod day;
mod dictated;
mod hearts;
mod keep;
mod known;
pub mod lexicon;
mod measures;
mod rewrite;
mod said;
mod scan;
mod signs;
mod tokens;
mod twins;
mod values;
mod weeks;
mod write;

pub use aloud::aloud;
pub use write::line;

use super::keys::Scope;
use super::read::{Reading, of_line};
use crate::report::Problem;
use said::{Said, Value};
use scan::Items;
use std::borrow::Cow;
use std::ops::Range;
use toml::Spanned;
use toml::de::{DeArray, DeTable, DeValue};

/// Longest line read, in bytes.
pub const MOST_BYTES: usize = 8000;

/// Read one line of chart shorthand; `name` stands in messages where the name of a file would.
pub fn read(name: &str, line: &str) -> Reading {
    if line.len() > MOST_BYTES {
        let problem = Problem::of_file("line-too-long", name, "the line is too long to be one examination")
            .expecting("a line such as `37+0 LOA 2/5 palp SFH 34`");
        return Reading { exam: None, problems: vec![problem], questions: vec![], spans: Default::default() };
    }
    let Items { said, babies, notes, questions, mut problems } = scan::of(name, line);
    problems.extend(questions.iter().map(|question| asked(name, question)));
    let mut top = table_of(&said, |said| said.key.scope == Scope::Top);
    insert(&mut top, "mother", 0..0, DeValue::Table(table_of(&said, |s| s.key.scope == Scope::Mother)));
    let mut tables = DeArray::new();
    for baby in 0..babies {
        let table = table_of(&said, |said| said.key.scope == Scope::Baby && said.baby == baby);
        tables.push(Spanned::new(0..0, DeValue::Table(table)));
    }
    insert(&mut top, "baby", 0..0, DeValue::Array(tables));
    let mut reading = of_line(name, line, &top, notes, problems);
    reading.questions = questions;
    for problem in &mut reading.problems {
        in_shorthand(problem);
    }
    reading
}

/// A question as a problem of the line, with its readings.
fn asked(name: &str, question: &ask::Question) -> Problem {
    let says: Vec<&str> = question.readings.iter().map(|reading| reading.says.as_str()).collect();
    Problem::at("asked", name, question.at.clone(), question.message.clone()).expecting(says.join("; or "))
}

fn table_of<'a>(said: &'a [Said], wanted: impl Fn(&Said) -> bool) -> DeTable<'a> {
    let mut table = DeTable::new();
    for said in said.iter().filter(|said| wanted(said)) {
        let text = |value: &'a Value| DeValue::String(Cow::Borrowed(value.text.as_str()));
        let value = match &said.values[..] {
            [value] => text(value),
            values => {
                let mut list = DeArray::new();
                for value in values {
                    list.push(Spanned::new(value.at.clone(), text(value)));
                }
                DeValue::Array(list)
            }
        };
        insert(&mut table, said.key.name, said.at(), value);
    }
    table
}

fn insert<'a>(table: &mut DeTable<'a>, key: &'a str, at: Range<usize>, value: DeValue<'a>) {
    table.insert(Spanned::new(at.clone(), Cow::Borrowed(key)), Spanned::new(at, value));
}

/// What to type, in the form of a line and not of a file: `heart-rate = 142` becomes `heart-rate 142`.
fn in_shorthand(problem: &mut Problem) {
    let change =
        |text: &mut String| {
            if problem.id == "nothing-in-it" {
                "at least one finding, such as `LOA` or `SFH 34`".clone_into(text);
            }
            let parts: Vec<String> =
                text.split('`')
                    .enumerate()
                    .map(|(at, part)| {
                        if at % 2 == 1 { part.replace(" = ", " ").replace('"', "") } else { part.to_owned() }
                    })
                    .collect();
            *text = parts.join("`");
        };
    problem.expected.iter_mut().for_each(change);
    problem.suggestion.iter_mut().for_each(change);
    if problem.id == "nothing-in-it" {
        "the line records nothing".clone_into(&mut problem.message);
    }
}
