//! Reading: states, doubt, synonyms, limits, and that nothing makes it stop or crash.

use super::shared::{Dice, baby, problems, read};
use handspan::exam::{self, Finding, Found, KnownBy, MOST_BYTES, Station};

#[test]
fn every_state_is_told_apart() {
    let exam = read(
        "[mother]\nmovements = \"not asked\"\nscars = \"none\"\n[baby]\nhead = \"not felt\"\nback = \"could not tell (thick wall)\"\n\
         breech = \"fundus?\"\nlimbs = \"could not tell\"\nattitude = \"face (vaginal examination)\"\nposition = \"LOA (scan 36+1)?\"\nheart = \"not listened\"\n",
    );
    let baby = &exam.babies[0];
    assert_eq!(exam.mother.movements, Finding::NotTried);
    assert_eq!(exam.mother.scars, Finding::Absent);
    assert_eq!(exam.mother.girth, Finding::NotExamined);
    assert_eq!(baby.head, Finding::Absent);
    assert_eq!(baby.back, Finding::CouldNotTell { reason: Some("thick wall".to_owned()) });
    assert_eq!(baby.limbs, Finding::CouldNotTell { reason: None });
    assert!(baby.breech.is_unsure());
    assert_eq!(baby.heart, Finding::NotTried);
    match &baby.attitude {
        Finding::Found(Found { known_by, sure, .. }) => {
            assert_eq!((known_by, sure), (&KnownBy::VaginalExamination, &true))
        }
        other => panic!("{other:?}"),
    }
    match &baby.position {
        Finding::Found(Found { known_by, sure, .. }) => {
            assert_eq!((known_by, sure), (&KnownBy::Scan(Some("36+1".to_owned())), &false));
        }
        other => panic!("{other:?}"),
    }
}

#[test]
fn canonical_words_in_the_order_of_the_file() {
    let exam = read(
        "weeks = \"37w0d\"\n[baby]\nback = \"posterior on the left\"\nhead = \"at the brim\"\nlimbs = [\"RUQ\", \"6 cm to her right, 2 cm below the umbilicus\"]\n[mother]\nscars = \"Pfannenstiel\"\nwomb = [\"relaxed\", \"tightens\"]\n",
    );
    let read: Vec<(&str, &str)> =
        exam.read.iter().map(|(key, words)| (key.as_str(), words.as_str())).collect();
    assert_eq!(
        read,
        [
            ("weeks", "37+0"),
            ("baby.1.back", "left, towards her spine"),
            ("baby.1.head", "above pubic bone"),
            ("baby.1.limbs", "right, above navel; right 6 cm, 2 cm below navel"),
            ("mother.scars", "low transverse"),
            ("mother.womb", "soft; tightening"),
        ]
    );
}

#[test]
fn a_single_word_may_stand_where_a_list_may() {
    assert_eq!(read("[mother]\nwomb = \"hard, tender\"\n"), {
        let mut exam = read("[mother]\nwomb = [\"hard\", \"tender\"]\n");
        exam.read = read("[mother]\nwomb = \"hard, tender\"\n").read;
        exam
    });
    let doubt = read("[mother]\nwomb = [\"hard\", \"tender?\"]\n");
    assert!(doubt.mother.womb.is_unsure());
}

#[test]
fn numbers_may_stand_for_beats_days_and_births() {
    let exam = read(
        "[mother]\npulse = 78\nbirths-before = 2\n[baby]\nheart-rate = 142\nheart-rise = 155\ndip-at-navel = true\n",
    );
    assert_eq!((exam.mother.pulse.value(), exam.mother.births_before.value()), (Some(&78), Some(&2)));
    assert_eq!(exam.babies[0].dip_at_navel.value(), Some(&true));
}

/// Those that say nothing of the baby are kept as words. A station is a finding of its own, and never turned into fifths.
#[test]
fn vaginal_findings_are_kept_as_words_only() {
    let exam = read(
        "note = \"seen with a student\"\n[baby]\nhead = \"above pubic bone\"\nstation = \"-2\"\ncervix = \"3 cm\"\n",
    );
    assert_eq!(exam.note.as_deref(), Some("seen with a student\ncervix: 3 cm"));
    assert_eq!(exam.babies[0].station.value(), Some(&Station(-2)));
    assert_eq!(exam.babies[0].head_above_brim, Finding::NotExamined);
}

#[test]
fn limits_are_errors() {
    for (text, id) in [
        ("weeks = \"3+6\"", "out-of-range"),
        ("weeks = \"45+1\"", "out-of-range"),
        ("[mother]\nfundal-height = \"0.9 cm\"", "out-of-range"),
        ("[mother]\nfundal-height = \"60.1 cm\"", "out-of-range"),
        ("[mother]\ngirth = \"201 cm\"", "out-of-range"),
        ("[baby]\nheart-rate = 29", "out-of-range"),
        ("[baby]\nheart-rate = 301", "out-of-range"),
        ("[baby]\nheart-rate = nan", "not-a-number"),
        ("[baby]\nheart-rate = inf", "not-a-number"),
        ("[mother]\nfundal-height = nan", "not-a-quantity"),
        ("[mother]\nfundal-height = \"1e999 cm\"", "not-a-quantity"),
        ("[mother]\nfundal-height = \"99999999999999999999999999999999999999 cm\"", "not-a-number"),
    ] {
        assert_eq!(problems(text), [id], "{text}");
    }
    for text in [
        "weeks = \"4+0\"",
        "weeks = \"45+0\"",
        "[mother]\nfundal-height = \"1 cm\"",
        "[mother]\nfundal-height = \"60 cm\"",
        "[mother]\ngirth = \"200 cm\"",
        "[baby]\nheart-rate = \"30-300\"",
    ] {
        assert_eq!(problems(text), Vec::<&str>::new(), "{text}");
    }
}

#[test]
fn every_problem_is_reported_in_the_order_of_the_file() {
    let text = "weeks = \"37\"\n[mother]\nfundal-height = 35\nmovments = \"usual\"\n[baby]\nback = \"lefft front\"\nheart = \"142\"\n";
    let reading = exam::read("exam.toml", text.as_bytes());
    assert!(reading.exam.is_none());
    let found: Vec<(usize, &str)> =
        reading.problems.iter().map(|p| (p.place.as_ref().map_or(0, |place| place.line), p.id)).collect();
    assert_eq!(
        found,
        [
            (1, "unit-missing"),
            (3, "unit-missing"),
            (4, "unknown-key"),
            (6, "unknown-word"),
            (7, "rate-in-heart")
        ]
    );
}

#[test]
fn one_syntax_problem_a_line_and_an_unclosed_bracket_alone() {
    let reading = exam::read("exam.toml", b"weeks = 37+0 x y z\n[baby]\nhead = \"fundus\nback = \"lefft\"\n");
    let lines: Vec<usize> =
        reading.problems.iter().filter_map(|p| p.place.as_ref()).map(|place| place.line).collect();
    assert_eq!(lines, [1, 3, 4]);
    assert_eq!(
        problems("weeks = \"37\"\n[baby]\nlimbs = [\"left\"\nback = \"lefft\"\n"),
        ["unclosed-bracket"]
    );
}

#[test]
fn a_byte_order_mark_and_windows_lines_are_no_problem() {
    let exam = read("\u{feff}weeks = \"37+0\"\r\n[baby]\r\nhead = \"fundus\"\r\n");
    assert_eq!(exam.read.len(), 2);
    let reading = exam::read("exam.toml", "\u{feff}weeks = \"37\"\r\n".as_bytes());
    assert_eq!(reading.problems[0].place.as_ref().map(|place| (place.line, place.column)), Some((1, 10)));
}

#[test]
fn nothing_makes_the_reader_crash_or_dawdle() {
    let started = std::time::Instant::now();
    let mut dice = Dice::new(0x5eed);
    let noise: Vec<u8> = (0..MOST_BYTES).map(|_| dice.below(256) as u8).collect();
    let letters: Vec<u8> = (0..MOST_BYTES).map(|_| b"ab=[]{}\"'\\\n #.,?()-+019"[dice.below(23)]).collect();
    let nested = format!("limbs = {}{}", "[".repeat(5000), "]".repeat(5000));
    let deep_tables = "a.".repeat(20_000) + "b = 1";
    let keys: String = (0..50_000).map(|n| format!("key-{n} = {n}\n")).collect();
    let broken = "x y\n".repeat(MOST_BYTES / 4);
    let list = format!("[baby]\nlimbs = [{}]\n", "\"lefft\",".repeat(100_000));
    let brackets = "[".repeat(MOST_BYTES);
    let line = format!("[baby]\nback = \"{}\"\n", "left ".repeat(150_000));
    let too_big = vec![b'#'; MOST_BYTES + 1];
    for bytes in [
        &noise[..],
        &letters,
        nested.as_bytes(),
        deep_tables.as_bytes(),
        keys.as_bytes(),
        broken.as_bytes(),
        list.as_bytes(),
        brackets.as_bytes(),
        line.as_bytes(),
        &too_big,
        b"\xff\xfe",
        b"\0\0\0",
        b"",
        b"\n",
        b"note = \"\"",
        b"baby = []",
        b"[[baby]]",
        b"mother = 3",
        b"[baby.head]\nx = 1",
    ] {
        let reading = exam::read("exam.toml", bytes);
        assert!(
            !reading.problems.is_empty() && reading.exam.is_none(),
            "{}",
            String::from_utf8_lossy(&bytes[..bytes.len().min(60)])
        );
        assert!(reading.problems.len() <= 51);
    }
    assert!(started.elapsed().as_secs() < 30, "took {:?}", started.elapsed());
    // Every file cut off at every byte.
    let whole = std::fs::read(super::shared::path("examples/head-down-left.toml")).expect("an example");
    for end in 0..whole.len() {
        let _ = exam::read("exam.toml", &whole[..end]);
    }
}

#[test]
fn spans_lead_to_the_values() {
    let text = "weeks = \"37+0\"\n[[baby]]\nback = \"left\"\n[[baby]]\nback = \"right\"\n";
    let reading = exam::read("exam.toml", text.as_bytes());
    assert_eq!(&text[reading.spans["baby.2.back"].clone()], "\"right\"");
    assert_eq!(&text[reading.spans["weeks"].clone()], "\"37+0\"");
}

#[test]
fn twins_are_numbered_as_they_stand() {
    let exam = read("[[baby]]\nback = \"left\"\n[[baby]]\nback = \"right\"\n");
    let keys: Vec<&str> = exam.read.iter().map(|(key, _)| key.as_str()).collect();
    assert_eq!(keys, ["baby.1.back", "baby.2.back"]);
    assert_eq!(
        problems("[[baby]]\nback = \"left\"\n[[baby]]\nback = \"left\"\n[[baby]]\nback = \"left\"\n"),
        ["too-many-babies"]
    );
}

#[test]
fn positions_in_code_and_in_words() {
    for (text, code) in [
        ("LOL", "LOT"),
        ("loa", "LOA"),
        ("left occipito-lateral", "LOT"),
        ("DOP", "OP"),
        ("Right Sacro-Posterior", "RSP"),
    ] {
        let exam = baby(&format!("position = \"{text}\""));
        assert_eq!(exam.babies[0].position.value().map(|p| p.code()).as_deref(), Some(code));
    }
    assert_eq!(problems("[baby]\nposition = \"OT\"\n"), ["side-missing"]);
}
