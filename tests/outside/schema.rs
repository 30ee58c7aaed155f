//! The JSON Schema of the exam language, judged by Python's jsonschema: every example and every word passes, unknown keys and
//! wrong values do not. `tests/run` installs it.

use super::file;
use crate::shared::{path, run};
use handspan::exam::keys::{KEYS, Scope};
use std::path::{Path, PathBuf};
use std::process::Command;
use toml::Value as Toml;

/// A file of TOML as JSON: dates are texts, as editors have them.
fn json(value: &Toml) -> serde_json::Value {
    match value {
        Toml::String(text) => text.as_str().into(),
        Toml::Integer(n) => (*n).into(),
        Toml::Float(n) => (*n).into(),
        Toml::Boolean(yes) => (*yes).into(),
        Toml::Datetime(date) => date.to_string().into(),
        Toml::Array(list) => list.iter().map(json).collect(),
        Toml::Table(table) => {
            serde_json::Value::Object(table.iter().map(|(key, value)| (key.clone(), json(value))).collect())
        }
    }
}

/// For each exam whether it is valid.
fn judged(name: &str, exams: &[String]) -> Vec<bool> {
    let schema = file("exam.schema.json", &run(&["schema"]).stdout);
    let all: Vec<serde_json::Value> =
        exams.iter().map(|text| json(&Toml::Table(text.parse().expect("a file of TOML")))).collect();
    let instances = file(&format!("{name}.json"), serde_json::to_string(&all).expect("JSON").as_bytes());
    let python: PathBuf =
        Path::new(env!("CARGO_TARGET_TMPDIR")).with_file_name("outside").join("venv/bin/python");
    let output = Command::new(&python)
        .args([path("tests/outside/validate_schema.py"), schema, instances])
        .output()
        .unwrap_or_else(|fault| {
            panic!("{} cannot be run ({fault}); tests/run installs it", python.display())
        });
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let said = String::from_utf8_lossy(&output.stdout);
    let verdicts: Vec<bool> = said.lines().map(|line| line == "valid").collect();
    assert_eq!(verdicts.len(), exams.len());
    verdicts
}

fn files(directory: &str, wanted: impl Fn(&str) -> bool) -> Vec<(String, String)> {
    let entries = std::fs::read_dir(path(directory)).expect("a directory");
    let mut out: Vec<(String, String)> = entries
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "toml"))
        .map(|path| (path.file_stem().expect("a name").to_string_lossy().into_owned(), path))
        .filter(|(name, _)| wanted(name))
        .map(|(name, path)| (name, std::fs::read_to_string(path).expect("a text")))
        .collect();
    out.sort();
    out
}

#[test]
fn jsonschema_passes_every_example() {
    let examples = files("examples", |name| name != "clinic");
    assert!(examples.len() >= 12);
    let texts: Vec<String> = examples.iter().map(|(_, text)| text.clone()).collect();
    for ((name, _), valid) in examples.iter().zip(judged("examples", &texts)) {
        assert!(valid, "{name}");
    }
}

#[test]
fn jsonschema_passes_every_word_of_every_key() {
    let mut exams = vec![];
    for key in KEYS {
        let heading = match key.scope {
            Scope::Top => "",
            Scope::Mother => "[mother]\n",
            Scope::Baby => "[[baby]]\n",
        };
        for row in (key.words)() {
            for word in std::iter::once(&row.word).chain(row.also) {
                for value in [(*word).to_owned(), word.to_uppercase(), format!("{word} (scan 20+3)?")] {
                    exams.push(format!("{heading}{} = \"{value}\"\n", key.name));
                    if key.list {
                        exams.push(format!("{heading}{} = [\"{value}\", \"{value}\"]\n", key.name));
                    }
                }
            }
        }
        for state in key.states() {
            use handspan::exam::words::Vocabulary;
            exams.push(format!("{heading}{} = \"{}\"\n", key.name, state.word().expect("a word")));
        }
    }
    exams.push("[baby]\nhead-above-brim = \"could not tell (thick wall)\"\n".to_owned());
    for (exam, valid) in exams.iter().zip(judged("words", &exams)) {
        assert!(valid, "{exam}");
    }
}

#[test]
fn jsonschema_passes_what_random_exams_say() {
    use handspan::exam::{Dates, Exam, say};
    let mut dice = crate::shared::Dice::new(2020);
    let mut exams = vec![];
    for _ in 0..200 {
        let mother = crate::words::mother(&mut dice);
        let babies = vec![crate::words::one_baby(&mut dice), crate::words::one_baby(&mut dice)];
        let mut exam =
            Exam { weeks: None, dates: Dates::default(), mother, babies, note: None, read: vec![] };
        exam.read = say::findings(&exam);
        exams.push(crate::words::write(&exam));
    }
    for (exam, valid) in exams.iter().zip(judged("random", &exams)) {
        assert!(valid, "{exam}");
    }
}

#[test]
fn jsonschema_refuses_unknown_keys_and_wrong_values() {
    let bad = files("tests/bad", |name| {
        ["unknown-key", "identity", "misplaced-key", "unit-missing", "unknown-word", "decimal-weeks"]
            .contains(&name)
    });
    assert_eq!(bad.len(), 6);
    let mut exams: Vec<String> =
        bad.into_iter().map(|(_, text)| text).filter(|text| text.parse::<toml::Table>().is_ok()).collect();
    assert!(exams.len() >= 5);
    for line in [
        "sfh = \"34 cm\"",
        "[mother]\nfundal-height = 34",
        "[baby]\nposition = \"LOAA\"",
        "[baby]\nhead = 3",
        "[baby]\nhead-above-brim = \"6/5\"",
        "[mother]\nwomb = \"blue\"",
        "due = \"4/4/26\"",
    ] {
        exams.push(line.to_owned());
    }
    for (exam, valid) in exams.iter().zip(judged("bad", &exams)) {
        assert!(!valid, "{exam}");
    }
}
