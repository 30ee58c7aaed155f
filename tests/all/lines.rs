//! The shared lines of many countries, `tests/published/lines.csv`: what each must be read as, what has to be asked, what has to be
//! kept, and what must never be read. What falls short is printed.

use super::shared;
use handspan::exam::shorthand;
use handspan::report::Severity;
use std::collections::BTreeMap;

/// At least this share of the lines is read or asked as written.
const RIGHT: f64 = 0.95;

/// One line of the table.
struct Row {
    number: String,
    line: String,
    expected: Vec<String>,
    also_ok: Vec<String>,
    must_not_read: Vec<String>,
}

fn rows() -> Vec<Row> {
    let items = |cell: &str| -> Vec<String> {
        cell.split(';').map(str::trim).filter(|item| !item.is_empty()).map(str::to_owned).collect()
    };
    let row = |cells: Vec<String>| {
        assert_eq!(cells.len(), 7, "{cells:?}");
        Row {
            number: cells[0].clone(),
            line: cells[2].clone(),
            expected: items(&cells[3]),
            also_ok: items(&cells[4]),
            must_not_read: items(&cells[5]),
        }
    };
    shared::rows("lines.csv").into_iter().map(row).collect()
}

/// Letters, figures and the marks that carry meaning.
fn folded(text: &str) -> String {
    let kept = |c: &char| c.is_ascii_lowercase() || c.is_ascii_digit() || "/+.?:-".contains(*c);
    text.to_lowercase().chars().filter(kept).collect()
}

/// The values of a list, in any order.
fn values(text: &str) -> Vec<String> {
    let mut values: Vec<String> =
        text.replace(" + ", ";").split(';').map(folded).filter(|value| !value.is_empty()).collect();
    values.sort();
    values
}

/// What was read of a key, which a line of one baby or of the mother names without saying whose it is.
fn of<'a>(read: &'a BTreeMap<String, String>, key: &str) -> Option<&'a str> {
    let own = [key.to_owned(), format!("mother.{key}"), format!("baby.1.{key}")];
    own.iter().find_map(|key| read.get(key)).map(String::as_str)
}

/// What a row falls short in; what must never be read begins with `never`.
fn short(row: &Row) -> Vec<String> {
    let reading = shorthand::read("--say", &row.line);
    let read: BTreeMap<String, String> =
        reading.exam.iter().flat_map(|exam| exam.read.iter().cloned()).collect();
    let asked = reading.problems.iter().any(|problem| problem.severity == Severity::Error);
    assert!(reading.questions.is_empty() || asked, "{}", row.line);
    let everything = folded(&format!("{read:?} {:?} {:?}", reading.problems, reading.questions));
    let ask = |items: &[String]| items.iter().any(|item| item.starts_with("ask"));
    let mut short = vec![];
    for item in &row.must_not_read {
        if let Some((key, value)) = item.split_once('=')
            && let Some(got) = of(&read, key)
            && (folded(got) == folded(value) || values(got).contains(&folded(value)))
        {
            short.push(format!("never {key} = {got}"));
        }
    }
    for item in &row.expected {
        if let Some(question) = item.strip_prefix("ask:") {
            if !asked {
                short.push(format!("not asked:{question}"));
            }
        } else if let Some(words) = item.strip_prefix("kept:") {
            let also = row.also_ok.iter().any(|also| folded(also).contains(&folded(words)));
            if !everything.contains(&folded(words)) && !also {
                short.push(format!("lost:{words}"));
            }
        } else if let Some((key, value)) = item.split_once('=') {
            let also = row.also_ok.iter().filter_map(|also| also.split_once('=')).filter(|(k, _)| *k == key);
            let got = of(&read, key);
            let right = std::iter::once(value).chain(also.map(|(_, value)| value)).any(|value| {
                got.is_some_and(|got| folded(got) == folded(value) || values(got) == values(value))
            });
            // A weight in pounds is printed in kilograms.
            let pounds = value.ends_with(" lb") && got.is_some();
            if !right && !pounds {
                short.push(format!("{key} = {got:?}, not {value}"));
            }
        }
    }
    if asked && !ask(&row.expected) && !ask(&row.also_ok) {
        let question = reading.problems.iter().find(|problem| problem.severity == Severity::Error);
        short.push(format!("asked: {}", question.map_or("", |problem| problem.message.as_str())));
    }
    short
}

#[test]
#[allow(clippy::print_stdout)] // What falls short is told.
fn lines_of_many_countries_are_read_or_asked_as_written() {
    let rows = rows();
    assert!(rows.len() >= 180, "{}", rows.len());
    let (mut right, mut told, mut never) = (0, String::new(), 0);
    for row in &rows {
        let short = short(row);
        right += usize::from(short.is_empty());
        never += usize::from(short.iter().any(|fault| fault.starts_with("never")));
        if !short.is_empty() {
            told.push_str(&format!("{}: {}\n     {}\n", row.number, row.line, short.join("\n     ")));
        }
    }
    println!("{told}{} lines: {right} right, {never} dangerous", rows.len());
    assert_eq!(never, 0, "{told}");
    assert!(right as f64 >= RIGHT * rows.len() as f64, "{right} of {}\n{told}", rows.len());
}

/// Whatever is chosen, the question is gone, and nothing that was read without it is lost.
#[test]
fn every_reading_of_every_question_settles_it() {
    let mut answered = 0;
    for row in rows() {
        let before = shorthand::read("--say", &row.line);
        for question in &before.questions {
            assert!(!question.readings.is_empty(), "{}", row.line);
            for reading in &question.readings {
                let after = shorthand::read("--say", &reading.line);
                let still =
                    after.questions.iter().any(|q| q.text == question.text && q.message == question.message);
                assert!(!still, "{} -> {}: {}", row.line, reading.line, question.message);
                answered += 1;
            }
        }
    }
    assert!(answered > 80, "{answered}");
}
