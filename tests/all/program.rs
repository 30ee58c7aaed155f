//! The program from outside: exit codes, streams, files whole or not at all, and no crash on any input.

use super::shared::{Dice, run, run_in, said};
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

const GOOD: &[u8] = b"weeks = \"37+0\"\n[baby]\nhead = \"above pubic bone\"\nback = \"left front\"\n";

fn code(output: &std::process::Output) -> i32 {
    output.status.code().unwrap_or_else(|| panic!("ended by a signal: {}", said(output)))
}

fn directory() -> tempfile::TempDir {
    tempfile::tempdir().expect("a directory")
}

fn names(directory: &Path) -> Vec<String> {
    let mut names: Vec<String> = fs::read_dir(directory)
        .expect("a directory")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    names
}

#[test]
fn exit_codes() {
    let here = directory();
    for (text, expected) in [
        (GOOD, 0),
        (b"[baby]\nhead = \"fundus\"\nbreech = \"fundus\"\n", 1),
        (b"[baby]\nhead = \"fundu\"\n", 2),
        (b"[mother]\nreports = \"bleeding\"\n", 3),
    ] {
        let output = run_in(here.path(), &["check", "-"], text);
        assert_eq!(code(&output), expected, "{}", said(&output));
    }
    fs::write(here.path().join("good.toml"), GOOD).expect("a file");
    fs::write(here.path().join("now.toml"), b"[mother]\nmovements = \"none\"\n").expect("a file");
    assert_eq!(code(&run_in(here.path(), &["check", "now.toml", "missing.toml", "good.toml"], b"")), 3);
    assert_eq!(code(&run_in(here.path(), &["check", "good.toml", "missing.toml"], b"")), 2);
}

#[test]
fn usage() {
    for arguments in [
        &["check"][..],
        &[],
        &["nonsense"],
        &["draw", "x.toml"],
        &["check", "--colour", "x"],
        &["draw", "x", "-o", "x.svg", "--style", "oil"],
    ] {
        let output = run(arguments);
        assert_eq!((code(&output), output.stdout.is_empty()), (2, true), "{arguments:?}");
        assert!(!output.stderr.is_empty());
    }
    let help = run(&["--help"]);
    assert_eq!(code(&help), 0);
    let words: Vec<String> = said(&help).split_whitespace().map(str::to_owned).collect();
    assert!(words.join(" ").contains("does not diagnose"));
    assert_eq!(code(&run(&["--version"])), 0);
    let twice = run_in(directory().path(), &["check", "-", "-"], GOOD);
    assert_eq!(code(&twice), 2);
}

#[test]
fn hostile_input_is_refused_with_a_message() {
    let mut dice = Dice::new(7);
    let noise: Vec<u8> = (0..5000).map(|_| dice.below(256) as u8).collect();
    let big = vec![b'x'; 2 << 20];
    let nested = format!("limbs = {}{}", "[".repeat(3000), "]".repeat(3000));
    let cases: [(&[u8], &str); 12] = [
        (&noise, "not UTF-8"),
        (&big, "larger than 1 MiB"),
        (nested.as_bytes(), "too deep"),
        (b"[baby]\nheart-rate = nan\n", "nan"),
        (b"[mother]\nfundal-height = inf\n", "inf"),
        (b"weeks = \"\xff\"\n", "not UTF-8"),
        (b"[baby]\nlimbs = [\"left\"\nhead = \"fundus\"\n", "never closed"),
        (b"[baby]\nheadd = \"fundus\"\n", "Did you mean `head`?"),
        (b"[mother]\nfundal-height = \"35 kg\"\n", "cm, mm or in"),
        (b"[mother]\nfundal-height = 35\n", "Did you mean `35 cm`?"),
        (
            b"weeks = \"37+0\"\nvisit = 2025-09-03\ndue = 2025-10-08\n[baby]\nhead = \"fundus\"\n",
            "35+0 on 2025-09-03",
        ),
        (b"", "records nothing"),
    ];
    for (input, words) in cases {
        let output = run_in(directory().path(), &["check", "-"], input);
        let said = said(&output);
        assert_eq!(code(&output), 2, "{said}");
        assert!(said.contains(words), "{words}: {said}");
        assert!(!said.contains("panicked"), "{said}");
        let json = run_in(directory().path(), &["check", "--json", "-"], input);
        assert_eq!(code(&json), 2);
        let line: serde_json::Value = serde_json::from_slice(&json.stdout).expect("one JSON object");
        assert_eq!(line["problems"][0]["severity"], "error");
    }
}

#[test]
fn files_that_cannot_be_read() {
    let here = directory();
    fs::create_dir(here.path().join("folder")).expect("a directory");
    fs::write(here.path().join("file"), b"x").expect("a file");
    for (name, words) in [
        ("missing.toml", "there is no such file"),
        ("folder", "it is a directory"),
        ("file/exam.toml", "is a file, not a directory"),
    ] {
        let output = run_in(here.path(), &["check", name], b"");
        let said = said(&output);
        assert_eq!(code(&output), 2);
        assert!(said.contains(name) && said.contains(words), "{said}");
    }
}

#[test]
fn a_clinic_file_with_a_fault_is_reported() {
    let here = directory();
    fs::write(here.path().join("clinic.toml"), b"nmae = \"Larkfield\"\n").expect("a file");
    let output = run_in(here.path(), &["check", "-", "--clinic", "clinic.toml"], GOOD);
    assert_eq!(code(&output), 2);
    assert!(said(&output).contains("Did you mean `name`?"), "{}", said(&output));
}

#[test]
fn targets_that_cannot_be_written() {
    let here = directory();
    fs::create_dir(here.path().join("folder.svg")).expect("a directory");
    fs::write(here.path().join("there.svg"), b"mine").expect("a file");
    fs::write(here.path().join("exam.toml"), GOOD).expect("a file");
    let before = names(here.path());
    for (target, words) in [
        ("there.svg", "--force"),
        ("nowhere/page.svg", "there is no directory nowhere; make it first"),
        ("exam.toml/page.svg", "a part of its path is a file"),
        ("page.doc", "end it in .svg, .png or .pdf"),
        ("page", "end it in .svg, .png or .pdf"),
        ("-", "say --as"),
    ] {
        for command in ["draw", "handout", "skin-guide"] {
            let output = run_in(here.path(), &[command, "exam.toml", "-o", target], b"");
            let said = said(&output);
            assert_eq!(code(&output), 2, "{said}");
            assert!(said.contains(words), "{target}: {said}");
        }
    }
    assert_eq!(names(here.path()), before);
    assert_eq!(fs::read(here.path().join("there.svg")).expect("the file"), b"mine");
}

/// An empty file, as a shell leaves it after `>`, is taken; one that holds anything is not.
#[test]
fn an_empty_file_is_no_obstacle() {
    let here = directory();
    let line = ["draw", "--say", "38+0 LOA", "-o", "a.svg"];
    fs::write(here.path().join("a.svg"), "").expect("an empty file");
    let output = run_in(here.path(), &line, b"");
    assert_eq!(code(&output), 0, "{}", said(&output));
    let made = fs::read(here.path().join("a.svg")).expect("the picture");
    assert!(made.len() > 1000);
    let output = run_in(here.path(), &line, b"");
    assert_eq!(code(&output), 2, "{}", said(&output));
    assert_eq!(fs::read(here.path().join("a.svg")).expect("the picture"), made);
}

#[test]
fn no_family_page_while_something_stands_against_it() {
    let here = directory();
    let cases: [(&[u8], i32, &str); 4] = [
        (b"weeks = \"39+1\"\n[baby]\nheart = \"not heard\"\n", 3, "[heart-not-heard]"),
        (b"[mother]\nreports = \"bleeding\"\nmovements = \"fewer\"\n", 3, "[bleeding]: She reports bleeding"),
        (b"[baby]\nhead = \"fundus\"\nbreech = \"fundus\"\n", 1, "cannot be in one place"),
        (
            b"[mother]\nreports = \"bleeding\"\n[baby]\nhead = \"fundus\"\nbreech = \"fundus\"\n",
            3,
            "cannot be in one place",
        ),
    ];
    for (text, expected, words) in cases {
        let output = run_in(here.path(), &["handout", "-", "-o", "page.pdf"], text);
        let said = said(&output);
        assert_eq!(code(&output), expected, "{said}");
        assert!(said.contains("no family page is made") && said.contains(words), "{said}");
        // The way past is told only where there is one: not while findings contradict one another, nor, since no page of any
        // form goes home then, while a heart has not been heard.
        assert_eq!(said.contains("--despite"), words.contains("[bleeding]"), "{said}");
        assert_eq!(names(here.path()), Vec::<String>::new(), "something was written");
    }
    // Naming one remark does not name another.
    let output = run_in(
        here.path(),
        &["handout", "-", "-o", "page.pdf", "--despite", "bleeding"],
        b"[mother]\nreports = \"bleeding\"\nmovements = \"fewer\"\n",
    );
    assert_eq!(code(&output), 3);
    assert!(said(&output).contains("[movements-fewer]") && names(here.path()).is_empty());
}

/// No page of any form is made while the heart has not been heard, whatever is named; once it is heard, it is as ever.
#[test]
fn nothing_goes_home_while_the_heart_has_not_been_heard() {
    let here = directory();
    let forms: [&[&str]; 6] = [
        &["family-page", "-", "-o", "page.pdf"],
        &["family-page", "-", "-o", "page.html", "--emergency", "999"],
        &["family-page", "-", "-o", "page.pdf", "--layout", "large-print"],
        &["family-page", "-", "-o", "page.pdf", "--layout", "colouring"],
        &["family-page", "-", "-o", "page.pdf", "--lang", "es", "--draft"],
        &["skin-guide", "-", "-o", "page.pdf"],
    ];
    let visit =
        |weeks: &str, heart: &str| format!("weeks = \"{weeks}\"\n[mother]\nmovements = \"usual\"\n{heart}");
    let lying = "[baby]\nhead = \"above pubic bone\"\nback = \"left front\"\n";
    let deaf = [
        ("heart-not-heard", visit("39+1", &format!("{lying}heart = \"not heard\"\n"))),
        (
            "heart-not-heard-try-doppler",
            visit("22+0", &format!("{lying}heart = \"not heard\"\nheart-with = \"Pinard horn\"\n")),
        ),
        ("heart-is-her-pulse", visit("39+1", &format!("{lying}heart-and-pulse = \"same\"\n"))),
        ("note-mentions", format!("note = \"no FH heard\"\n{}", visit("39+1", lying))),
        (
            "twin-heart-not-heard",
            visit("15+0", "[[baby]]\nheart = \"heard\"\n[[baby]]\nheart = \"not heard\"\n"),
        ),
    ];
    for (id, text) in &deaf {
        for form in forms {
            let output = run_in(here.path(), form, text.as_bytes());
            let told = said(&output);
            assert!(
                told.contains(&format!("[{id}]")) && told.contains("heart has not been heard"),
                "{form:?}: {told}"
            );
            assert!(!told.contains("--despite"), "{told}");
            let named = run_in(here.path(), &[form, &["--despite", id]].concat(), text.as_bytes());
            assert_ne!(code(&named), 0);
            let told = said(&named);
            assert!(
                told.contains(&format!("--despite {id}: no ")) && told.contains("local guidance"),
                "{told}"
            );
            assert_eq!(names(here.path()), Vec::<String>::new(), "{form:?}: something was written");
        }
    }
    // From the other side: heard, and before anything is made of a heart that was not.
    let heard = visit("39+1", &format!("{lying}heart = \"left, below navel\"\n")).replace("usual", "fewer");
    let output =
        run_in(here.path(), &[forms[0], &["--despite", "movements-fewer"]].concat(), heard.as_bytes());
    assert_eq!((code(&output), names(here.path())), (3, vec!["page.pdf".to_owned()]), "{}", said(&output));
    let early = visit("15+6", "[baby]\nheart = \"not heard\"\n");
    let output = run_in(here.path(), &["family-page", "-", "-o", "early.pdf"], early.as_bytes());
    assert_eq!((code(&output), names(here.path()).len()), (0, 2), "{}", said(&output));
}

#[test]
fn colour_only_on_a_terminal() {
    for arguments in [&["check", "examples/bleeding.toml"][..], &["check", "missing.toml"]] {
        assert!(!run(arguments).stdout.contains(&0x1b));
    }
}

#[cfg(unix)]
#[test]
fn a_reader_that_goes_away_is_no_fault() {
    use std::os::fd::OwnedFd;
    let (reader, writer) = std::io::pipe().expect("a pipe");
    drop(reader);
    let output = Command::new(env!("CARGO_BIN_EXE_handspan"))
        .arg("words")
        .stdout(Stdio::from(OwnedFd::from(writer)))
        .stderr(Stdio::piped())
        .output()
        .expect("the program ends");
    assert_eq!((output.status.code(), output.stderr), (Some(0), vec![]));
}

/// The exit code says what was found, whoever reads it, and whether or not anyone does.
#[cfg(unix)]
#[test]
fn the_exit_code_never_depends_on_the_reader() {
    use std::os::fd::OwnedFd;
    let here = directory();
    for (name, text, expected) in [
        ("good.toml", GOOD, 0),
        ("both.toml", b"[baby]\nhead = \"fundus\"\nbreech = \"fundus\"\n", 1),
        ("bad.toml", b"[baby]\nhead = \"fundu\"\n", 2),
        ("now.toml", b"weeks = \"39+1\"\n[baby]\nhead = \"fundus\"\nheart = \"not heard\"\n", 3),
    ] {
        fs::write(here.path().join(name), text).expect("a file");
        for arguments in [
            &["check", name][..],
            &["check", "--json", name],
            &["draw", name, "-o", "-", "--as", "svg"],
            &["note", name],
            &["note", "--as", "fhir", name],
        ] {
            let (reader, writer) = std::io::pipe().expect("a pipe");
            drop(reader);
            let gone = Command::new(env!("CARGO_BIN_EXE_handspan"))
                .args(arguments)
                .current_dir(here.path())
                .stdout(Stdio::from(OwnedFd::from(writer)))
                .stderr(Stdio::piped())
                .output()
                .expect("the program ends");
            assert_eq!(code(&gone), expected, "{arguments:?}");
            let read = run_in(here.path(), arguments, b"");
            assert_eq!((code(&read), &read.stderr), (expected, &gone.stderr), "{arguments:?}");
        }
    }
}

/// So it is for many exams at once, where a file among the targets is a pipe that nobody reads on from.
#[cfg(unix)]
#[test]
fn a_reader_that_leaves_hides_nothing_of_a_batch() {
    let here = directory();
    fs::create_dir(here.path().join("out")).expect("a directory");
    let made = Command::new("mkfifo").arg(here.path().join("out/now.svg")).status().expect("mkfifo");
    assert!(made.success());
    fs::write(
        here.path().join("now.toml"),
        b"weeks = \"39+1\"\n[baby]\nposition = \"LOA\"\nheart = \"not heard\"\n",
    )
    .expect("a file");
    let fifo = here.path().join("out/now.svg");
    let reader = std::thread::spawn(move || {
        use std::io::Read;
        // One byte, and then it is gone: the picture is larger than a pipe holds.
        fs::File::open(fifo).and_then(|mut pipe| pipe.read_exact(&mut [0]))
    });
    let output = run_in(here.path(), &["draw", "now.toml", "-o", "out/"], b"");
    reader.join().expect("the reader ends").expect("a byte");
    assert_eq!(code(&output), 3, "{}", said(&output));
    assert!(said(&output).contains("cannot wait: now.toml"), "{}", said(&output));
}

#[cfg(target_os = "linux")]
#[test]
fn a_full_device_is_an_error() {
    let full = fs::OpenOptions::new().write(true).open("/dev/full").expect("/dev/full");
    let output = Command::new(env!("CARGO_BIN_EXE_handspan"))
        .arg("words")
        .stdout(full)
        .stderr(Stdio::piped())
        .output()
        .expect("the program ends");
    assert_eq!(output.status.code(), Some(2));
    let said = String::from_utf8_lossy(&output.stderr).into_owned();
    assert!(said.contains("standard output") && said.contains("no space"), "{said}");
}

/// A name after `--despite` that names nothing that stands is an error, not a page; so is `--width` without a PNG.
#[test]
fn options_that_name_nothing_are_errors() {
    let out = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("never-written.pdf");
    for (arguments, said) in [
        (
            vec!["handout", "examples/bleeding.toml", "--despite", "bleding", "-o"],
            "--despite bleding: no such remark stands (what stands: movements-fewer, bleeding",
        ),
        (
            vec!["handout", "examples/head-down-left.toml", "--despite", "bleeding", "-o"],
            "no act-now remark stands; leave --despite out",
        ),
        (vec!["draw", "examples/head-down-left.toml", "--width", "300", "-o"], "--width counts pixels"),
    ] {
        let output = std::process::Command::new(env!("CARGO_BIN_EXE_handspan"))
            .args(&arguments)
            .arg(&out)
            .output()
            .unwrap();
        let told = String::from_utf8_lossy(&output.stderr).into_owned();
        assert!(told.contains(said), "{arguments:?}: {told}");
        assert!(matches!(output.status.code(), Some(2 | 3)), "{arguments:?}");
        assert!(!out.exists(), "{arguments:?} wrote a page");
    }
}

/// What a colleague would say of a command line that cannot be read: one sentence each, and what to type.
#[test]
fn what_was_mistyped_is_told_in_one_sentence() {
    let here = directory();
    fs::write(here.path().join("a.toml"), GOOD).expect("a file");
    for (arguments, words) in [
        (vec!["chek", "a.toml"], "did you mean `check`?"),
        (vec!["help", "dra"], "did you mean `draw`?"),
        (vec!["check", "a.toml", "--paper", "a4"], "`plate`"),
        (vec!["draw", "38", "weeks", "ROP", "-o", "x.svg"], "--say \"38 weeks ROP\""),
        (vec!["draw", "\u{2013}say", "38 ROP", "-o", "x.svg"], "type --say"),
        (vec!["check", "*.toml"], "has not filled in the star"),
        (vec!["cases", "-o", "c20.pdf"], "name a directory"),
        (vec!["draw", "38", "weeks", "ROP"], "--say \"38 weeks ROP\" -o picture.png"),
        (vec!["draw", "a.toml"], "handspan draw VISIT -o picture.png"),
        (vec!["family-page", "a.toml"], "handspan family-page VISIT -o page.pdf"),
        (vec!["plate"], "handspan plate --list"),
        (vec!["check"], "handspan check --say \"37+0 LOA\""),
        (vec!["note", "a.toml", "--as", "pdf"], "it takes text, handover or fhir"),
        (vec!["draw", "a.toml", "--colour", "-o", "x.svg"], "there is no --colour"),
        (vec!["cases", "--level", "fearful", "-o", "x"], "it takes easy, medium or hard"),
    ] {
        let output = run_in(here.path(), &arguments, b"");
        let said = said(&output);
        assert_eq!(code(&output), 2, "{said}");
        assert!(said.starts_with("handspan: ") && said.contains(words), "{arguments:?}: {said}");
        assert_eq!(said.lines().count(), 1, "{said}");
    }
    assert!(!here.path().join("c20.pdf").exists());
}

#[test]
fn old_names_are_still_read() {
    for (old, new) in [("growth", "fundal-height"), ("handout", "family-page")] {
        assert_eq!(said(&run(&[old, "--help"])), said(&run(&[new, "--help"])), "{old}");
    }
    let here = directory();
    fs::write(here.path().join("a.toml"), GOOD).expect("a file");
    // The number of a set was called a seed.
    assert_eq!(code(&run_in(here.path(), &["cases", "--count", "1", "--seed", "4", "-o", "old"], b"")), 0);
    assert_eq!(
        code(&run_in(here.path(), &["cases", "--count", "1", "--set-number", "4", "-o", "new"], b"")),
        0
    );
    let of = |directory: &str| fs::read(here.path().join(directory).join("cases.pdf")).expect("the cases");
    assert!(of("old") == of("new"), "one number, two sets");
    for paper in ["a4", "A4"] {
        let made =
            run_in(here.path(), &["handout", "a.toml", "-o", "a.pdf", "--paper", paper, "--force"], b"");
        assert_eq!(code(&made), 0, "{}", said(&made));
    }
}
