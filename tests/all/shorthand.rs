//! Chart shorthand: lines as real notes are written beside what they are read as; every exam as a line that reads back.

use super::shared::{Dice, path, read, run_in, said};
use super::words::{mother, one_baby, weeks};
use handspan::exam::keys::{KEYS, Scope};
use handspan::exam::words::{Row, Vocabulary};
use handspan::exam::{Dates, Exam, Finding, Found, KnownBy, Position, say, shorthand};
use handspan::report::{Look, draw};
use std::fs;

/// The exam without the order in which it was read.
fn bare(exam: &Exam) -> Exam {
    Exam { read: vec![], ..exam.clone() }
}

/// `exam` as a line, read back.
#[track_caller]
fn there_and_back(exam: &Exam, at: &str) {
    let line = shorthand::line(exam);
    assert!(!line.contains('\n'), "{at}\n{line}");
    let reading = shorthand::read("--say", &line);
    let problems = draw(&reading.problems, &line, Look::Plain);
    let back = reading.exam.unwrap_or_else(|| panic!("{at}\n{line}\n{problems}"));
    assert_eq!(bare(&back), bare(exam), "{at}\n{line}\n{problems}");
}

#[test]
fn every_exam_reads_back_from_its_line() {
    let mut dice = Dice::new(37_142);
    for round in 0..1000 {
        let babies = if dice.once_in(4) {
            vec![one_baby(&mut dice), one_baby(&mut dice)]
        } else {
            vec![one_baby(&mut dice)]
        };
        let note =
            dice.once_in(3).then(|| "a \"note\"; with \\ marks? (and\nbrackets) / baby 2: LOA".to_owned());
        let weeks = (!dice.once_in(3)).then(|| weeks(&mut dice, 210, 315));
        let mother = mother(&mut dice);
        let exam = Exam { weeks, dates: Dates::default(), mother, babies, note, read: vec![] };
        there_and_back(&exam, &format!("round {round}"));
    }
}

#[test]
fn every_position_reads_back_in_every_state() {
    for position in Position::all() {
        let mut exam = read("weeks = \"37+0\"\n[baby]\nposition = \"LOA\"\n");
        for sure in [true, false] {
            for known_by in [
                KnownBy::Hands,
                KnownBy::Scan(None),
                KnownBy::Scan(Some("20+3".to_owned())),
                KnownBy::VaginalExamination,
            ] {
                exam.babies[0].position = Finding::Found(Found { value: position, sure, known_by });
                there_and_back(&exam, &position.code());
                let line = shorthand::line(&exam);
                assert!(!line.contains("LMP") && !line.split([' ', ';']).any(|word| word == "MP"), "{line}");
            }
        }
    }
}

#[test]
fn every_example_reads_back_with_its_dates() {
    let mut read_back = 0;
    for entry in fs::read_dir(path("examples")).expect("examples") {
        let path = entry.expect("an entry").path();
        if path.extension().is_none_or(|ending| ending != "toml") || path.ends_with("clinic.toml") {
            continue;
        }
        let text = fs::read_to_string(&path).expect("an example");
        there_and_back(&read(&text), &path.display().to_string());
        read_back += 1;
    }
    assert!(read_back >= 12, "{read_back}");
    for dates in [
        "visit = 2026-03-14\ndue = 2026-04-04",
        "visit = 2026-03-14\nlast-period = 2025-06-28\ncycle = 30",
        "visit = 2026-03-14\nscan = \"12+3 on 2025-09-20\"",
        "weeks = \"37+0\"\nlast-period = 2025-06-28",
    ] {
        there_and_back(&read(&format!("{dates}\n[baby]\nhead = \"fundus\"\n")), dates);
    }
}

#[test]
fn every_word_of_every_key_can_stand_after_its_key() {
    let mut words = 0;
    for key in KEYS {
        let rows: Vec<Row> = (key.words)();
        let states = key.states().into_iter().filter_map(Vocabulary::word);
        let said = rows.iter().flat_map(|row| std::iter::once(&row.word).chain(row.also)).copied();
        for word in said.chain(states) {
            let prefix = match word {
                "lateral" | "lat" | "laterally" | "square to" | "transverse" if key.name == "back" => "left ",
                word if !["scars", "hernia"].contains(&key.name)
                    && (word.contains("iliac fossa") || word == "groin") =>
                {
                    "left "
                }
                _ => "",
            };
            let line = format!("{} {prefix}{word}", key.name);
            let heading = if key.scope == Scope::Baby { "baby" } else { "mother" };
            let text = format!("[{heading}]\n{} = \"{prefix}{word}\"\n", key.name);
            let reading = shorthand::read("--say", &line);
            let problems = draw(&reading.problems, &line, Look::Plain);
            assert_eq!(reading.exam.map(|exam| bare(&exam)), Some(bare(&read(&text))), "{line}\n{problems}");
            words += 1;
        }
    }
    assert!(words > 300, "{words}");
}

/// What came of a line: the findings in canonical words, or the problems as they are drawn, or both.
fn came_of(line: &str) -> String {
    let reading = shorthand::read("--say", line);
    let mut text = String::new();
    if let Some(exam) = &reading.exam {
        for (key, words) in say::findings(exam) {
            text.push_str(&format!("  {key} = {}\n", words.replace('\n', " | ")));
        }
        let Dates { visit, due, last_period, cycle, scan } = exam.dates;
        for (key, day) in [("visit", visit), ("due", due), ("last-period", last_period)] {
            text.extend(day.map(|day| format!("  {key} = {day}\n")));
        }
        text.extend(cycle.map(|days| format!("  cycle = {days}\n")));
        text.extend(scan.map(|(at, day)| format!("  scan = {at} on {day}\n")));
    }
    for line in draw(&reading.problems, line, Look::Plain).lines() {
        text.push_str(format!("  {line}").trim_end());
        text.push('\n');
    }
    text
}

/// `BLESS=1` rewrites what comes of the lines in `tests/shorthand.txt`: look at it, then commit.
#[test]
fn lines_as_notes_are_written() {
    let file = path("tests/shorthand.txt");
    let text = fs::read_to_string(&file).expect("tests/shorthand.txt");
    let mut fresh = String::new();
    let mut lines = 0;
    for line in text.lines() {
        if let Some(line) = line.strip_prefix("> ") {
            fresh.push_str(&format!("\n> {line}\n{}", came_of(line)));
            lines += 1;
        } else if line.starts_with('#') {
            fresh.push_str(&format!("{line}\n"));
        }
    }
    if std::env::var_os("BLESS").is_some() {
        assert!(std::env::var_os("CI").is_none(), "answers are never rewritten by a machine");
        fs::write(&file, &fresh).expect("written");
    }
    assert_eq!(fs::read_to_string(&file).expect("tests/shorthand.txt"), fresh);
    assert!(lines >= 60, "{lines} lines");
}

#[test]
fn the_other_hand_s_line_is_the_other_side() {
    for (left, right) in [
        ("back left lateral", "back right lateral"),
        ("LOA", "ROA"),
        ("limbs L above umbi", "limbs R above umbi"),
        ("FHR 142 LIF", "FHR 142 RIF"),
        ("lumps Lt flank", "lumps Rt flank"),
        ("FHH left, below navel", "FHH right, below navel"),
        ("posture left tilt", "posture right tilt"),
    ] {
        let (one, other) = (came_of(left), came_of(right));
        assert_ne!(one, other);
        assert!(!one.contains("error"), "{one}");
        let swapped = one.replace("left", "@").replace("right", "left").replace('@', "right");
        assert_eq!(swapped.replace("LOA", "ROA").replace("Lt", "Rt"), other.replace("LOA", "ROA"), "{left}");
    }
}

#[test]
fn the_program_takes_a_line_wherever_it_takes_an_exam() {
    let here = tempfile::tempdir().expect("a directory");
    let line = "37+0 LOA 2/5 palp SFH 34 FHR 142 left below navel";
    let told = |arguments: &[&str]| {
        let output = run_in(here.path(), arguments, b"");
        (output.status.code(), said(&output))
    };
    let (code, text) = told(&["check", "--say", line]);
    assert_eq!(code, Some(0), "{text}");
    assert!(text.starts_with("--say") && text.contains("37+0") && text.contains("LOA"), "{text}");
    let (code, text) = told(&["check", "--say", "37+0 LOA 2/5"]);
    assert_eq!(code, Some(2));
    assert!(text.contains("In the line: `2/5`") && text.contains("             ^^^\n"), "{text}");
    let (code, text) = told(&["check"]);
    assert_eq!(code, Some(2));
    assert!(text.contains("--say"), "{text}");
    let (code, text) = told(&["draw", "--say", line, "-o", "one.svg"]);
    assert_eq!((code, text.as_str()), (Some(0), "wrote one.svg: the picture\n"));
    fs::write(here.path().join("file.toml"), "[baby]\nposition = \"LOA\"\n").expect("an exam");
    let (code, text) =
        told(&["draw", "file.toml", "--say", line, "--say", "34+0 LOAA", "--say", "34+0 LSA", "-o", "out/"]);
    assert_eq!(code, Some(2), "{text}");
    assert!(text.contains("In the line of --say 2: `LOAA`"), "{text}");
    let mut names: Vec<String> = fs::read_dir(here.path().join("out"))
        .expect("out")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    assert_eq!(names, ["file.svg", "say-1.svg", "say-3.svg"]);
    let same = |name: &str| fs::read(here.path().join(name)).expect("a picture");
    assert_eq!(same("out/say-1.svg"), same("one.svg"));
    let (code, text) = told(&["handout", "--say", line, "-o", "page.pdf"]);
    assert_eq!(code, Some(0), "{text}");
}

#[test]
fn no_line_makes_it_fail() {
    let mut dice = Dice::new(99);
    let words: Vec<&str> = "LOA LMP FH FHR 142 37+0 37.2 2/5 palp eng SFH 34 cm left below navel ? ( ) \" ; , / baby 2 \
        note + & back limbs head not felt could tell (thick wall) (scan 20+3) 14/3/26 2026-03-14 EDD scan on in s kg \
        Ünder é 🙂 \\ . .. - – = : @ VE BP 120/80 G2P1 T E no reports 5 / \n \t ’ 99999999999999999999 1e309 ½ ²"
        .split(' ')
        .collect();
    let mut exams = 0;
    for _ in 0..2000 {
        let mut line = String::new();
        for _ in 0..dice.below(14) {
            line.push_str(words[dice.below(words.len())]);
            if !dice.once_in(4) {
                line.push(' ');
            }
        }
        let reading = shorthand::read("--say", &line);
        assert!(reading.exam.is_some() || !reading.problems.is_empty(), "{line}");
        let _ = draw(&reading.problems, &line, Look::Plain);
        if let Some(exam) = reading.exam {
            there_and_back(&exam, &line);
            exams += 1;
        }
    }
    assert!(exams > 50, "{exams}");
    for _ in 0..2000 {
        let bytes: Vec<u8> = (0..dice.below(60)).map(|_| dice.below(256) as u8).collect();
        let line = String::from_utf8_lossy(&bytes).into_owned();
        let reading = shorthand::read("--say", &line);
        let _ = draw(&reading.problems, &line, Look::Plain);
    }
    let long = "left ".repeat(1600);
    // What no row takes is kept, word for word: such a line is a note, and no side is read from it.
    let kept = shorthand::read("--say", &long).exam.expect("a note");
    assert_eq!(kept.note.as_deref(), Some(long.trim_end()));
    assert!(say::findings(&kept).iter().all(|(key, _)| key == "note"));
    assert_eq!(shorthand::read("--say", &format!("{long} and more")).problems[0].id, "line-too-long");
}
