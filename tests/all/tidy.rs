//! `tidy`: canonical words with comments and order kept; the tidied file reads to the same exam; twice is as once.

use super::shared::{Dice, path, read, run, run_in, said};
use super::words::{mother, one_baby, write};
use handspan::exam::tidy::tidy;
use handspan::exam::{Dates, Exam, say};
use std::fs;

#[track_caller]
fn same_exam(text: &str) -> String {
    let tidied = tidy(text).expect("a file that can be read");
    assert_eq!(read(&tidied), read(text), "{text}\n{tidied}");
    assert_eq!(tidy(&tidied).as_deref(), Ok(tidied.as_str()), "{text}");
    tidied
}

#[test]
fn words_change_and_nothing_else() {
    let text = "# a visit\nweeks = '37 weeks' # by scan\n\n[baby]  # only one\nposition = \"left occipito-anterior\"\n\
                limbs = [ # felt twice\n  \"R upper quadrant?\", # heel\n  \"right flank\",\n]\nheart-rate = 142\n\
                back = \"anterior, on the left\"\n[mother] # last\nreports = \"itch, headache\"\n\
                fundal-height = \"350 mm (USS)\"\n";
    let tidied = "# a visit\nweeks = \"37+0\" # by scan\n\n[baby]  # only one\nposition = \"LOA\"\n\
                  limbs = [ # felt twice\n  \"right, above navel?\", # heel\n  \"right flank\",\n]\nheart-rate = 142\n\
                  back = \"left front\"\n[mother] # last\nreports = \"itching; headache\"\n\
                  fundal-height = \"35 cm (scan)\"\n";
    assert_eq!(same_exam(text), tidied);
}

#[test]
fn windows_lines_stay() {
    assert_eq!(
        same_exam("weeks = '37 weeks'\r\n[baby]\r\nback = 'L' # x\r\n"),
        "weeks = \"37+0\"\r\n[baby]\r\nback = \"left\" # x\r\n"
    );
}

#[test]
fn twins_in_any_form() {
    let inline = "baby = [{ position = \"left occipito-anterior\" }, { back = \"L\" }]\n";
    assert_eq!(same_exam(inline), "baby = [{ position = \"LOA\" }, { back = \"left\" }]\n");
    let tables = "[[baby]]\nposition = \"left occipito-anterior\"\n[[baby]]\nback = \"L\"\n";
    assert_eq!(same_exam(tables), "[[baby]]\nposition = \"LOA\"\n[[baby]]\nback = \"left\"\n");
}

#[test]
fn examples_and_random_exams_stay_the_same_exam() {
    for entry in fs::read_dir(path("examples")).expect("examples") {
        let path = entry.expect("an entry").path();
        if path.extension().is_some_and(|ending| ending == "toml") && !path.ends_with("clinic.toml") {
            same_exam(&fs::read_to_string(&path).expect("an example"));
        }
    }
    let mut dice = Dice::new(515);
    for _ in 0..300 {
        let mother = mother(&mut dice);
        let babies = vec![one_baby(&mut dice)];
        let mut exam =
            Exam { weeks: None, dates: Dates::default(), mother, babies, note: None, read: vec![] };
        exam.read = say::findings(&exam);
        let text = write(&exam);
        assert_eq!(same_exam(&text), text, "what is canonical is left alone");
    }
}

#[test]
fn the_program_prints_or_writes_and_refuses_errors() {
    let here = tempfile::tempdir().expect("a directory");
    let exam = here.path().join("a.toml");
    fs::write(&exam, "[baby]\nposition = 'left occipito-anterior'\n").expect("an exam");
    let tidied = "[baby]\nposition = \"LOA\"\n";
    let printed = run_in(here.path(), &["tidy", "a.toml"], b"");
    assert_eq!((printed.status.code(), printed.stdout.as_slice()), (Some(0), tidied.as_bytes()));
    let refused = run_in(here.path(), &["tidy", "a.toml", "-o", "a.toml"], b"");
    assert_eq!(refused.status.code(), Some(2));
    assert!(said(&refused).contains("--force"), "{}", said(&refused));
    let written = run_in(here.path(), &["tidy", "a.toml", "-o", "a.toml", "--force"], b"");
    assert_eq!(said(&written), "wrote a.toml: the tidied visit file\n");
    assert_eq!(fs::read_to_string(&exam).expect("the file"), tidied);
    let bad = run_in(here.path(), &["tidy", "-"], b"[baby]\nposition = 'LOAA'\n");
    assert_eq!((bad.status.code(), bad.stdout.is_empty()), (Some(2), true));
    // A code is a side: it is no longer suggested.
    assert!(said(&bad).contains("a side is never guessed"), "{}", said(&bad));
    assert!(said(&run(&["tidy", "--help"])).contains("comments and order stay"));
}
