//! The note, the handover and the slip: exact words, what cannot wait first, nothing that comforts, nothing shared that was typed.

use super::shared::{Dice, path, read, run, said};
use super::words::{mother, one_baby, weeks, write};
use handspan::commands::{self, Command, Form, Format, Note, Outcome, Request, Source, exit};
use handspan::exam::keys::{KEYS, Scope};
use handspan::exam::words::Vocabulary;
use handspan::exam::{Dates, Exam, say, shorthand};
use handspan::report::Look;

/// What `note` makes of an exam in this text.
pub fn note(text: &str, form: Form, share: bool) -> Outcome {
    let note = Note {
        exam: Source::new("exam.toml", text),
        form,
        share,
        lang: "en".to_owned(),
        draft: handspan::commands::Draft::Refused,
        clinic: None,
        quiet: vec![],
        layout: None,
        seed: [7; 16],
        to_file: false,
    };
    commands::run(&Request { command: Command::Note(note), look: Look::Plain })
}

/// A random exam as a file, with the marker in every free text of it.
pub fn random(dice: &mut Dice) -> String {
    let babies = if dice.once_in(4) { vec![one_baby(dice), one_baby(dice)] } else { vec![one_baby(dice)] };
    let mut exam = Exam {
        weeks: (!dice.once_in(3)).then(|| weeks(dice, 210, 315)),
        dates: Dates::default(),
        mother: mother(dice),
        babies,
        note: Some(MARKER.to_owned()),
        read: vec![],
    };
    exam.read = say::findings(&exam);
    let text = write(&exam);
    let text = text.replace("thick wall", MARKER).replace("(scan 20+3)", &format!("(scan {MARKER})"));
    match text.contains("weeks = ") {
        true => text,
        false => format!("visit = 2026-03-14\nlast-period = 2025-07-01\ncycle = 29\n{text}"),
    }
}

/// Free words that may not be shared.
pub const MARKER: &str = "Zqxvonia";

/// Whether a text has something in the shape of a date.
pub fn has_date(text: &[u8]) -> bool {
    text.windows(10).any(|w| {
        w.iter().enumerate().all(|(at, c)| if at == 4 || at == 7 { *c == b'-' } else { c.is_ascii_digit() })
    })
}

fn example(name: &str) -> String {
    std::fs::read_to_string(path(&format!("examples/{name}.toml"))).expect("an example")
}

/// The boxes that every chart has stand in their order on the note, the handover and the slip, whatever was found.
#[test]
fn the_boxes_of_every_chart_stand_in_their_order() {
    let order = [
        "Lie:",
        "Presentation:",
        "Position:",
        "Attitude:",
        "Engagement (fifths):",
        "Liquor:",
        "Fundal height:",
        "Fetal heart:",
        "Movements:",
    ];
    for text in ["[mother]\nmovements = \"usual\"\n", &example("head-down-left"), &example("slanting")] {
        for form in [Form::Text, Form::Handover, Form::Slip(Format::Svg)] {
            let said = note(text, form, false).text;
            // Without the tags of a picture and the breaks of lines.
            let words: String = said
                .split('<')
                .map(|piece| piece.split_once('>').map_or(piece, |(_, words)| words))
                .collect::<Vec<_>>()
                .join(" ");
            let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
            let mut from = words.find("Lie: ").expect("the boxes");
            for name in order {
                let at = words[from..]
                    .find(name)
                    .unwrap_or_else(|| panic!("{form:?}: {name} after its place\n{words}"));
                from += at;
            }
        }
    }
}

/// The line of a note, typed again, gives the visit again: for every word of every key, in every state.
#[test]
fn the_line_of_a_note_gives_the_visit_again() {
    let mut tried = 0;
    for key in KEYS.iter().filter(|key| key.scope != Scope::Top) {
        let (own, other) = if key.scope == Scope::Baby { ("baby", "mother") } else { ("mother", "baby") };
        let states = key.states().into_iter().filter_map(Vocabulary::word);
        for (at, word) in (key.words)().iter().map(|row| row.word).chain(states).enumerate() {
            // These are for whoever examined alone.
            if ["violence", "thoughts of self-harm"].contains(&word) {
                continue;
            }
            let unsure = (at == 0).then(|| format!("{word}?"));
            for value in [word.to_owned(), format!("left {word}")].into_iter().chain(unsure) {
                let text = format!("weeks = \"37+2\"\n[{own}]\n{} = \"{value}\"\n[{other}]\n", key.name);
                let Some(exam) = handspan::exam::read("exam.toml", text.as_bytes()).exam else { continue };
                let said = note(&text, Form::Text, false).text;
                let line = said.lines().find(|line| line.starts_with("37+2")).expect("the line");
                let back = shorthand::read("--say", line).exam.unwrap_or_else(|| panic!("{text}\n{line}"));
                let bare = |exam: Exam| Exam { read: vec![], ..exam };
                assert_eq!(bare(back), bare(exam), "{text}\n{line}");
                tried += 1;
            }
        }
    }
    assert!(tried > 400, "{tried}");
}

const END: &str = "
From the hands, not a scan, except where it says so; sides are the mother's. A record: it does
not diagnose and does not replace local guidance, a clinician's judgement or a scan. handspan
";

#[test]
fn the_note_of_a_head_down_baby() {
    let made = note(
        "weeks = \"37+0\"\n[mother]\nfundal-height = \"35 cm\"\nmovements = \"usual\"\n[baby]\nbreech = \"fundus\"\n\
         back = \"left front?\"\nhead = \"above pubic bone\"\nhead-above-brim = \"2/5\"\n\
         heart = \"left, below navel\"\nheart-rate = 140\nlimbs = \"could not tell (thick wall)\"\n",
        Form::Text,
        false,
    );
    let expected =
        "Abdominal examination by hand at 37+0 weeks. Movements: usual. Fundal height: 35 cm. Breech at:
fundus. Back: left, anterior, unsure. Limbs: could not tell (thick wall). Head at: above pubic
bone. Engagement: 2/5 palpable above the brim. Fetal heart heard: left, below navel. Fetal heart
rate: 140 beats a minute. Nothing that is usual at these weeks was left out. Cephalic
presentation, back to her left, anterior: left occipito-anterior (LOA). Engaged: 2/5 palpable
above the brim. Unsure: a finding this rests on is marked with a question mark. Follows from
what was felt.
";
    assert!(made.text.contains(expected), "{}", made.text);
    assert!(made.text.contains(END), "{}", made.text);
    assert_eq!(made.code, exit::DONE);
}

#[test]
fn what_cannot_wait_stands_first_in_every_form() {
    let text = example("heart-not-heard");
    for form in [Form::Text, Form::Handover] {
        for share in [false, true] {
            let made = note(&text, form, share);
            assert_eq!(made.code, exit::ACT_NOW);
            let at = |what: &str| made.text.find(what).unwrap_or_else(|| panic!("{what}: {}", made.text));
            assert!(at("ACT NOW [movements-fewer]:") < at("Abdominal examination"));
            assert!(at("ACT NOW [heart-not-heard]:") < at("Abdominal examination"));
            // The chart says whose heart it is.
            assert!(at("Fetal heart not heard.") > at("Abdominal examination"));
        }
    }
    let handover = note(&text, Form::Handover, false).text;
    assert!(handover.starts_with("SITUATION\n  ACT NOW ["));
    assert!(handover.contains(
        "RECOMMENDATION\n  First what cannot wait, as it stands above: movements-fewer, heart-not-heard.\n"
    ));
    assert!(handover.contains("\nHanded over by ____"));
    // A slip: the first words that are drawn.
    let slip = note(&text, Form::Slip(Format::Svg), false);
    let svg = slip.text;
    let first = svg.find("<text").map(|at| &svg[at..]).expect("words");
    assert!(first[..400].contains("ACT NOW [movements-fewer]"), "{}", &first[..400]);
}

#[test]
fn a_note_is_made_of_findings_that_do_not_agree() {
    let made = note(&example("does-not-agree"), Form::Text, false);
    assert_eq!(made.code, exit::CANNOT_BOTH);
    assert!(made.text.contains("Cannot both be right [position-against-findings]:"), "{}", made.text);
    assert!(made.text.contains("Position as written: LOA."), "{}", made.text);
}

#[test]
fn left_mento_posterior_is_spelled_out() {
    let text = "weeks = \"38+0\"\n[baby]\nposition = \"LMP\"\nattitude = \"face (vaginal examination)\"\n";
    for form in [Form::Text, Form::Handover, Form::Slip(Format::Svg)] {
        let made = note(text, form, false);
        assert!(made.text.contains("left mento-posterior"), "{}", made.text);
        assert!(!made.text.contains("LMP"), "{}", made.text);
    }
}

const NEVER: [&str; 12] = [
    "healthy",
    "normal",
    "abnormal",
    "good",
    "fine",
    "well",
    "safe",
    "reassuring",
    "reassured",
    "diagnosis",
    "no concern",
    "disorder",
];

#[test]
fn no_entry_comforts_or_leaks_over_random_exams() {
    let mut dice = Dice::new(77_001_155);
    let mut acted = 0;
    for round in 0..1500 {
        let text = random(&mut dice);
        let check = handspan::reckon::reckon(&read(&text), &Default::default());
        let act_now: Vec<&str> = check
            .remarks
            .iter()
            .filter(|remark| remark.grade == handspan::reckon::Grade::ActNow)
            .map(|remark| remark.id)
            .collect();
        for form in [Form::Text, Form::Handover] {
            for share in [false, true] {
                let made = note(&text, form, share);
                let at = format!("round {round}\n{text}\n{}", made.text);
                assert!(!made.text.is_empty(), "{at}{}", made.notes);
                let spaced: String = made
                    .text
                    .to_lowercase()
                    .chars()
                    .map(|c| if c.is_alphanumeric() { c } else { ' ' })
                    .collect();
                let spaced = format!(" {} ", spaced.split_whitespace().collect::<Vec<_>>().join(" "));
                for never in NEVER {
                    assert!(!spaced.contains(&format!(" {never} ")), "{never}: {at}");
                }
                // Act-now is hidden by nothing, and stands before the examination.
                let body = made.text.find("Abdominal examination").expect("the examination");
                // What she told in confidence stands in her own chart, and by rule in no entry that others read.
                let others_read = share || form == Form::Handover;
                for id in &act_now {
                    let found = made.text.find(&format!("ACT NOW [{id}]"));
                    if others_read && *id == "thoughts-of-self-harm" {
                        assert!(found.is_none() && made.code == exit::ACT_NOW, "{id}: {at}");
                        continue;
                    }
                    assert!(found.is_some_and(|found| found < body), "{id}: {at}");
                }
                acted += act_now.len();
                if share {
                    assert!(!made.text.contains(MARKER) && !has_date(made.text.as_bytes()), "{at}");
                } else {
                    assert!(made.text.contains(MARKER), "{at}");
                }
            }
        }
    }
    assert!(acted > 500, "{acted}");
}

#[test]
fn forms_files_and_faults() {
    let here = tempfile::tempdir().expect("a directory");
    let to = |name: &str| here.path().join(name).display().to_string();
    let exam = "examples/head-down-left.toml";
    for (name, start) in [
        ("slip.pdf", &b"%PDF-"[..]),
        ("slip.png", b"\x89PNG"),
        ("slip.svg", b"<svg"),
        ("note.txt", b"37+0; "),
        ("bundle.json", b"{"),
    ] {
        let output = run(&["note", exam, "-o", &to(name)]);
        assert_eq!(output.status.code(), Some(0), "{}", said(&output));
        assert!(std::fs::read(to(name)).expect("the file").starts_with(start), "{name}");
    }
    let refused = |arguments: &[&str], why: &str| {
        let output = run(arguments);
        assert_eq!(output.status.code(), Some(2));
        assert!(said(&output).contains(why), "{}", said(&output));
    };
    refused(&["note", exam, "-o", &to("note.txt")], "note.txt");
    refused(&["note", exam, "-o", &to("x.doc")], ".doc is not made here; end the file in .txt, .json, .svg");
    refused(&["note", exam, "--as", "fhir", "-o", &to("x.pdf")], "is a slip to stick in; leave --as out");
    refused(&["note", exam, "--lang", "xx"], "language `xx` is not shipped");
    // Type as small as a slip's is not for families.
    let small = ["handout", exam, "--layout", "layouts/chart-slip.toml", "-o", &to("page.pdf")];
    refused(&small, "a family page has no type under 12 pt");
    let output = run(&["note", "examples/heart-not-heard.toml"]);
    assert_eq!(output.status.code(), Some(3));
}

#[test]
fn the_fullest_slip_fits() {
    let text = "weeks = \"38+4\"\nnote = \"She asked about the tape, which was laid twice.\"\n[mother]\n\
        fundal-height = \"35 cm\"\nmovements = \"fewer\"\nreports = [\"bleeding\", \"constant pain\", \"waters broken\"]\n\
        births-before = 2\noperations = [\"caesarean\"]\nwomb = [\"hard\", \"tender\"]\npulse = 130\n\
        [[baby]]\nbreech = \"left, above navel\"\nback = \"left front?\"\nhead = \"left, below navel\"\n\
        heart = \"left, below navel\"\nheart-counts = [\"35 in 15 s\", \"36 in 15 s\"]\nposition = \"ROA\"\n\
        [[baby]]\nbreech = \"right, below navel\"\nback = \"right, towards her spine\"\n\
        head = \"right, above navel\"\nheart = \"right, above navel\"\nheart-rate = 148\n";
    let slip = note(text, Form::Slip(Format::Pdf), false);
    assert_eq!((slip.code, slip.pages.len()), (exit::ACT_NOW, 1), "{}", slip.notes);
}

/// A line that was said gives the same note as the file it came from, and the note's own line, said again, the same line.
#[test]
fn a_note_from_a_line_is_the_note_of_its_file() {
    for exam in ["examples/head-down-left.toml", "examples/twins.toml", "examples/crosswise.toml"] {
        let of_file = run(&["note", exam]);
        let text = String::from_utf8(of_file.stdout).expect("text");
        let line = text.lines().find(|line| line.contains("; ")).expect("the line of shorthand");
        let of_line = run(&["note", "--say", line]);
        assert_eq!(of_line.status.code(), of_file.status.code());
        assert_eq!(String::from_utf8(of_line.stdout).expect("text"), text, "{exam}");
    }
    let two = run(&["note", "--say", "37+0 LOA", "--say", "38+0 LOA"]);
    assert_eq!(two.status.code(), Some(2));
    assert!(said(&two).contains("an entry is of one visit, and there are 2"), "{}", said(&two));
}

#[test]
fn a_remark_that_is_left_out_is_named() {
    let whole = run(&["note", "--say", "38+0 breech"]);
    let text = String::from_utf8(whole.stdout).expect("text");
    assert!(text.contains("The baby is not head down"), "{text}");
    let quiet = run(&["note", "--say", "38+0 breech", "--quiet-remark", "not-head-down"]);
    let text = String::from_utf8(quiet.stdout).expect("text");
    assert!(!text.contains("The baby is not head down"), "{text}");
    assert!(text.replace('\n', " ").contains("Left out for this run, as asked: not-head-down."), "{text}");
    let refused = run(&["note", "--say", "38+0 breech FM none", "--quiet-remark", "movements-none"]);
    assert_eq!(refused.status.code(), Some(3));
    assert!(said(&refused).contains("cannot be silenced"), "{}", said(&refused));
}
