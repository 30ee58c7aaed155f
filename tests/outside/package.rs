//! Packages of practice cases, judged by a library that converts between versions of the open standard.

use crate::shared::{path, run_in, said};
use std::path::Path;
use std::process::Command;

/// Every item is read and raised to version 3, no file is missing, and each right choice is among the choices.
#[test]
fn qti_convert_reads_every_item_of_a_package() {
    let here = tempfile::tempdir().expect("a directory");
    for level in ["easy", "fair", "hard"] {
        let arguments = ["cases", "--count", "8", "--seed", "4", "--level", level, "--package", "-o", level];
        let made = run_in(here.path(), &arguments, b"");
        assert!(made.status.success(), "{}", said(&made));
        let python = Path::new(env!("CARGO_TARGET_TMPDIR")).with_file_name("outside").join("qti/bin/python");
        let judged = Command::new(python)
            .arg(path("tests/outside/read_package.py"))
            .arg(here.path().join(level).join("cases-qti.zip"))
            .output()
            .expect("python runs; tests/run installs it");
        assert_eq!(said(&judged), "8 items, 16 images, no fault\n", "{level}");
    }
}

/// One space between words, whatever the lines were.
fn even(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The sums printed in a key, as poppler reads them, are those of `check` for the case's own exam file.
#[test]
fn the_sums_of_a_key_are_those_of_check() {
    let here = tempfile::tempdir().expect("a directory");
    let mut held = 0;
    for level in ["easy", "fair", "hard"] {
        let made = run_in(
            here.path(),
            &["cases", "--count", "9", "--seed", "12", "--level", level, "-o", level],
            b"",
        );
        assert!(made.status.success(), "{}", said(&made));
        let key = Command::new("pdftotext")
            .arg(here.path().join(level).join("key.pdf"))
            .arg("-")
            .output()
            .expect("pdftotext runs; tests/run installs it");
        let key = even(&said(&key));
        let keys: Vec<&str> = key.split("Key to case ").skip(1).collect();
        assert_eq!(keys.len(), 9, "{key}");
        for (number, key) in keys.iter().enumerate() {
            let exam = format!("{level}/case-{:02}.toml", number + 1);
            let checked = said(&run_in(here.path(), &["check", &exam], b""));
            let (_, after) = checked.split_once("Calculated\n").expect("sums");
            let sums = after.split("\n\n").next().unwrap_or_default();
            for (i, sum) in sums.split("\n  ").map(|sum| sum.trim_start_matches("  ")).enumerate() {
                // A line that goes on is set in further.
                let text = match sum.split_once("  ") {
                    Some((heading, text)) if !heading.is_empty() => format!("{heading}. {}", even(text)),
                    _ => even(sum),
                };
                assert!(key.contains(&text), "{exam}, line {i}: {text}\n{key}");
                held += 1;
            }
        }
    }
    assert!(held > 40, "{held}");
}
