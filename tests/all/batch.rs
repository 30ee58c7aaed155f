//! Many exams into a directory: the same files and words however many are worked on at once; one bad exam stops no other.

use super::shared::{run_in, said};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// A directory with exams: five that can be drawn, one of them with something that cannot wait, and one bad one.
fn exams() -> tempfile::TempDir {
    let here = tempfile::tempdir().expect("a directory");
    let exam = |name: &str, text: &str| fs::write(here.path().join(name), text).expect("an exam");
    for (name, position) in [("a", "LOA"), ("b", "RSP"), ("c", "OP")] {
        exam(&format!("{name}.toml"), &format!("weeks = \"38+0\"\n[baby]\nposition = \"{position}\"\n"));
    }
    exam("early.toml", "weeks = \"20+0\"\n[mother]\nfundus = \"at navel\"\n");
    exam("now.toml", "weeks = \"30+0\"\n[mother]\nreports = \"bleeding\"\n[baby]\nposition = \"LOA\"\n");
    exam("bad.toml", "weeks = \"38+0\"\n[baby]\nhead = \"fundu\"\n");
    here
}

const ALL: [&str; 6] = ["c.toml", "bad.toml", "a.toml", "now.toml", "early.toml", "b.toml"];

/// Exit code and everything said.
fn told(here: &Path, arguments: &[&str]) -> (i32, String) {
    let output = run_in(here, arguments, b"");
    (output.status.code().expect("an exit code"), said(&output))
}

/// The files of a directory with their bytes.
fn files(directory: &Path) -> BTreeMap<String, Vec<u8>> {
    let entries = fs::read_dir(directory).expect("a directory").map(|entry| entry.expect("an entry"));
    entries
        .map(|entry| {
            let name = entry.file_name().to_string_lossy().into_owned();
            (name, fs::read(entry.path()).expect("a file"))
        })
        .collect()
}

#[test]
fn threads_change_neither_files_nor_words() {
    let here = exams();
    let draw = |at_once: &str| {
        let arguments = [&["draw"], &ALL[..], &["-o", "out/", "--force", "--at-once", at_once]].concat();
        let (code, said) = told(here.path(), &arguments);
        assert_eq!(code, 3, "the highest: {said}");
        let made = files(&here.path().join("out"));
        fs::remove_dir_all(here.path().join("out")).expect("removed");
        (said, made)
    };
    let one = draw("1");
    for at_once in ["2", "8"] {
        let many = draw(at_once);
        assert_eq!(many.0, one.0, "other words with {at_once} at once");
        assert!(many.1 == one.1, "other files with {at_once} at once");
    }
    let (said, made) = one;
    let names: Vec<&str> = made.keys().map(String::as_str).collect();
    assert_eq!(names, ["a.svg", "b.svg", "c.svg", "early.svg", "now.svg"]);
    // The same bytes as a picture drawn by itself.
    told(here.path(), &["draw", "b.toml", "-o", "alone.svg"]);
    assert!(fs::read(here.path().join("alone.svg")).expect("the picture") == made["b.svg"]);
    // What is said stands in the order of the exams.
    let wrote: Vec<&str> = said.lines().filter(|line| line.ends_with(": the picture")).collect();
    let order = ["c", "a", "now", "early", "b"].map(|name| format!("wrote out/{name}.svg: the picture"));
    assert_eq!(wrote, order);
    assert!(
        said.find("bad.toml, line 3").expect("the bad exam") < said.find("wrote out/a.svg").expect("a"),
        "{said}"
    );
    assert!(
        said.ends_with(
            "wrote 5 of 6 to out/\n  not written: bad.toml: line 3: head: `fundu` is not a word for this\n  \
             cannot wait: now.toml\n"
        ),
        "{said}"
    );
}

#[test]
fn nothing_is_written_when_anything_stands_in_the_way() {
    let here = exams();
    let path = |name: &str| here.path().join(name);
    fs::create_dir(path("there")).expect("a directory");
    fs::write(path("there/b.svg"), b"mine").expect("a file");
    fs::create_dir(path("other")).expect("a directory");
    fs::copy(path("a.toml"), path("other/a.toml")).expect("a copy");
    let before = files(&path("there"));
    for (arguments, words) in [
        (&["a.toml", "b.toml", "-o", "there"][..], "there/b.svg is there already; add --force"),
        (
            &["a.toml", "b.toml", "-o", "one.svg"],
            "one.svg is one file, and there are 2 visits; name a directory",
        ),
        (
            &["a.toml", "other/a.toml", "-o", "new/"],
            "a.toml and other/a.toml would both be written to new/a.svg; rename one",
        ),
        (&["a.toml", "a.toml", "-o", "new/"], "a.toml is named twice"),
        (&["-", "-o", "new/"], "standard input has no name to give its file"),
        (&["a.toml", "-o", "no/new/"], "there is no directory no; make it first"),
        (&["a.toml", "-o", "b.toml/"], "b.toml is a file; choose another name"),
        (&["a.toml", "-o", "new/", "--width", "300"], "--width counts pixels"),
        (&["a.toml", "-o", "new/", "--at-once", "0"], "0 is not in 1..=256"),
    ] {
        let (code, said) = told(here.path(), &[&["draw"], arguments].concat());
        assert!(code == 2 && said.contains(words), "{arguments:?}: {said}");
    }
    assert_eq!(files(&path("there")), before);
    assert!(!path("new").exists() && !path("one.svg").exists());
    // With --force the file is replaced.
    assert_eq!(told(here.path(), &["draw", "a.toml", "b.toml", "-o", "there", "--force"]).0, 0);
    let after = files(&path("there"));
    assert!(after.len() == 2 && after["b.svg"].starts_with(b"<svg"));
}

#[test]
fn the_kind_is_chosen_for_all() {
    let here = exams();
    let (code, said) =
        told(here.path(), &["draw", "a.toml", "c.toml", "-o", "out/", "--as", "png", "--width", "100"]);
    assert_eq!(code, 0, "{said}");
    let made = files(&here.path().join("out"));
    assert_eq!(made.keys().collect::<Vec<_>>(), ["a.png", "c.png"]);
    assert!(made.values().all(|bytes| bytes.starts_with(b"\x89PNG")));
}

#[test]
fn family_pages_are_made_but_for_those_that_must_not_be() {
    let here = exams();
    let (code, said) = told(here.path(), &["handout", "a.toml", "now.toml", "missing.toml", "-o", "pages/"]);
    assert_eq!(code, 3, "{said}");
    let made = files(&here.path().join("pages"));
    assert_eq!(made.keys().collect::<Vec<_>>(), ["a.pdf"]);
    assert!(made["a.pdf"].starts_with(b"%PDF-"));
    for words in [
        "now.toml: no family page is made",
        "wrote 1 of 3 to pages/",
        "not written: now.toml: against it stands bleeding",
        "not written: missing.toml: cannot be read: there is no such file",
        "cannot wait: now.toml",
    ] {
        assert!(said.contains(words), "{words}: {said}");
    }
}
