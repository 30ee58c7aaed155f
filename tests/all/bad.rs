//! A file for each kind of problem, beside its exact message. `BLESS=1` rewrites the messages: look at them, then commit.

use super::shared::{path, rust_files};
use handspan::report::{Look, draw};
use std::collections::BTreeSet;
use std::fs;

fn names(ending: &str) -> BTreeSet<String> {
    fs::read_dir(path("tests/bad"))
        .expect("tests/bad")
        .filter_map(|entry| {
            let path = entry.expect("an entry").path();
            let stem = path.file_stem()?.to_str()?.to_owned();
            (path.extension()? == ending).then_some(stem)
        })
        .collect()
}

fn bless() -> bool {
    let bless = std::env::var_os("BLESS").is_some();
    assert!(!(bless && std::env::var_os("CI").is_some()), "messages are never rewritten by a machine");
    bless
}

#[test]
fn every_message_is_as_written() {
    let bless = bless();
    for name in names("toml") {
        let file = format!("{name}.toml");
        let bytes = fs::read(path("tests/bad").join(&file)).expect("a bad file");
        assert!(bytes.len() <= 4096, "{file}: make the case smaller");
        let reading = handspan::exam::read(&file, &bytes);
        assert!(!reading.problems.is_empty(), "{file} has no problem");
        let drawn = draw(&reading.problems, std::str::from_utf8(&bytes).unwrap_or_default(), Look::Plain);
        let expected = path("tests/bad").join(format!("{name}.txt"));
        if bless {
            fs::write(&expected, &drawn).expect("the message is written");
        }
        let expected = fs::read_to_string(&expected)
            .unwrap_or_else(|_| panic!("{file} has no message beside it; look, then BLESS=1"));
        assert_eq!(drawn, expected, "{file}");
    }
}

#[test]
fn no_message_stands_alone() {
    assert_eq!(names("txt").difference(&names("toml")).collect::<Vec<_>>(), Vec::<&String>::new());
}

/// Every id that the reader's source names, except of problems that need no text (a file too big, a directory).
#[test]
fn every_kind_of_problem_has_a_file() {
    let mut ids = BTreeSet::new();
    for (_, text) in rust_files(&path("src/exam")) {
        let text = text.split("#[cfg(test)]").next().unwrap_or_default().to_owned();
        for call in [
            "Fault::at(",
            "Fault::whole(",
            "Problem::at(",
            "Problem::of_file(",
            "Self::at(",
            " at(",
            "problem.id = ",
            "UNCLOSED: &str = ",
            "UNCLOSED_QUOTES: &str = ",
        ] {
            for (at, _) in text.match_indices(call) {
                let rest = text[at + call.len()..].trim_start();
                if let Some(id) = rest.strip_prefix('"').and_then(|rest| rest.split('"').next())
                    && !id.is_empty()
                    && id.bytes().all(|b| b.is_ascii_lowercase() || b == b'-')
                {
                    ids.insert(id.to_owned());
                }
            }
        }
    }
    assert!(ids.len() > 30, "the ids are not found: {ids:?}");
    let mut seen = BTreeSet::new();
    for name in names("toml") {
        let bytes = fs::read(path("tests/bad").join(format!("{name}.toml"))).expect("a bad file");
        seen.extend(
            handspan::exam::read("x.toml", &bytes).problems.iter().map(|problem| problem.id.to_owned()),
        );
    }
    // Of lines of shorthand, the answers stand in one table.
    let lines = fs::read_to_string(path("tests/shorthand.txt")).expect("tests/shorthand.txt");
    for line in lines.lines().filter_map(|line| line.strip_prefix("> ")) {
        let problems = handspan::exam::shorthand::read("--say", line).problems;
        seen.extend(problems.iter().map(|problem| problem.id.to_owned()));
    }
    seen.extend(["line-too-long".to_owned()]);
    ids.remove("file-too-big");
    let missing: Vec<&String> = ids.difference(&seen).collect();
    assert!(missing.is_empty(), "no file in tests/bad for {missing:?}");
}
