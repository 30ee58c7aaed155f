//! What can be fed. In: bytes. Out: nothing, or a panic. Inputs of several parts are parted by a zero byte.

use crate::holds;
use handspan::commands::{
    Check, Chosen, Command, Draft, Draw, Edit, Form, Format, GuideLook, Handout, Labels, Note, Outcome, Palette, Paper,
    Request, SkinGuide, Source, Style, View, run,
};
use handspan::report::Look;
use handspan::sheet::Layout;
use handspan::words::Words;
use handspan::write::TextAs;
use handspan::{clinic, desk, exam};

/// The targets by name.
pub const ALL: [(&str, fn(&[u8])); 8] = [
    ("exam", of_exam),
    ("line", of_line),
    ("layout", of_layout),
    ("clinic", of_clinic),
    ("language", of_language),
    ("edit", of_edit),
    ("ask", of_ask),
    ("chain", of_chain),
];

/// A visit that can be drawn, for what is not about the exam.
const VISIT: &str = "weeks = \"37+0\"\n[mother]\nfundal-height = \"35 cm\"\n[baby]\nposition = \"LOA\"\n\
                     head-above-brim = \"3/5\"\nheart = \"left, below navel\"\nheart-rate = 140\n";

fn asked(command: Command) -> Outcome {
    let outcome = run(&Request { command, look: Look::Plain });
    holds::of_outcome(&outcome);
    outcome
}

fn check(exam: Source, clinic: Option<Source>, json: bool) -> Outcome {
    asked(Command::Check(Check {
        exams: vec![exam],
        json,
        clinic,
        quiet: vec![],
        weights: true,
        weight_curves: true,
        lang: "en".to_owned(),
        draft: Draft::Refused,
    }))
}

fn handout(exam: Source, clinic: Option<Source>, layout: Option<Chosen>, format: Format) -> Outcome {
    asked(Command::Handout(Handout {
        exam,
        format,
        lang: "en".to_owned(),
        draft: Draft::Refused,
        paper: None,
        palette: None,
        mother: None,
        clinic,
        layout,
        despite: vec![],
        emergency: None,
        invite_listening: false,
        numbers: true,
    }))
}

/// An exam file: its problems lie in it, and what was read says itself back.
fn of_exam(bytes: &[u8]) {
    let reading = exam::read("exam.toml", bytes);
    if let Ok(text) = std::str::from_utf8(bytes) {
        // Places are counted after a byte order mark.
        holds::of_problems(&reading.problems, text.strip_prefix('\u{feff}').unwrap_or(text));
    }
    let file = || Source::new("exam.toml", bytes);
    if reading.exam.is_none() {
        assert!(handspan::report::any_error(&reading.problems), "nothing was read, and nothing is wrong");
    }
    check(file(), None, false);
    let json = check(file(), None, true);
    for line in json.text.lines() {
        serde_json::from_str::<serde_json::Value>(line).expect("JSON");
    }
    if reading.exam.is_some() {
        let tidied = asked(Command::Tidy { exam: file() });
        let again = exam::read("tidy.toml", tidied.text.as_bytes());
        assert!(again.exam.is_some(), "a tidied file does not read: {}", tidied.text);
        asked(Command::Line { exam: file() });
    }
}

/// A line of shorthand: what was read of it is a file that reads.
fn of_line(bytes: &[u8]) {
    let line = || Source::line("--say", bytes);
    check(line(), None, false);
    let file = asked(Command::File { exam: line() });
    if file.code != handspan::commands::exit::FAILED {
        let again = exam::read("line.toml", file.text.as_bytes());
        assert!(again.exam.is_some(), "the file of a line does not read: {}", file.text);
    }
}

/// A layout of one's own: read, and when it can be, a page laid out by it.
fn of_layout(bytes: &[u8]) {
    let readable = std::str::from_utf8(bytes).is_ok_and(|text| Layout::read("own.toml", text).is_ok());
    let layout = || Some(Chosen::Own(Source::new("own.toml", bytes)));
    let made = handout(Source::new("exam.toml", VISIT), None, layout(), Format::Svg);
    assert!(readable || made.pages.is_empty(), "a page by a layout that cannot be read");
}

/// A clinic's file.
fn of_clinic(bytes: &[u8]) {
    let reading = clinic::read("clinic.toml", bytes);
    if let Ok(text) = std::str::from_utf8(bytes) {
        holds::of_problems(&reading.problems, text);
    }
    let clinic = || Some(Source::new("clinic.toml", bytes));
    check(Source::new("exam.toml", VISIT), clinic(), false);
    handout(Source::new("exam.toml", VISIT), clinic(), None, Format::Svg);
}

/// A language file: read, and each of its messages said.
fn of_language(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    match Words::from_text("en", text) {
        Ok(words) => {
            for id in words.ids().map(str::to_owned).collect::<Vec<_>>() {
                let _ = words.say(&id, &[("n", "3"), ("weeks", "37+0"), ("said", "x"), ("side", "left")]);
            }
            let _ = words.number(12.5, 1);
        }
        Err(fault) => assert!(!fault.to_string().trim().is_empty()),
    }
}

/// A key, its values, and the file they are put into: what comes out is a file that still parses, or a message.
fn of_edit(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let mut parts: Vec<&str> = text.split('\0').collect();
    let (Some(file), false) = (parts.pop(), parts.is_empty()) else { return };
    let key = parts.remove(0).to_owned();
    let values: Vec<String> = parts.iter().map(|value| (*value).to_owned()).collect();
    let edits = vec![Edit { key, values }];
    let outcome = run(&Request {
        command: Command::Edit { exam: Source::new("exam.toml", file), edits: edits.clone() },
        look: Look::Plain,
    });
    assert!(outcome.code == 0 || !outcome.notes.is_empty(), "refused without a word");
    if outcome.code == 0 {
        let again = Command::Edit { exam: Source::new("exam.toml", outcome.text.as_str()), edits };
        let again = run(&Request { command: again, look: Look::Plain });
        assert_eq!(again.code, 0, "an edited file cannot be edited again: {}", again.notes);
    }
}

/// A question of the page.
fn of_ask(bytes: &[u8]) {
    let answer = desk::answer(bytes);
    let (length, rest) = answer.split_first_chunk::<4>().expect("a length");
    let (head, pages) = rest.split_at(u32::from_le_bytes(*length) as usize);
    let head: serde_json::Value = serde_json::from_slice(head).expect("a head in JSON");
    let sizes = head["pages"].as_array().expect("a list of pages").iter();
    assert_eq!(sizes.map(|n| n.as_u64().expect("a size")).sum::<u64>(), pages.len() as u64);
}

/// From an exam's text to one of its documents; the first byte says which.
fn of_chain(bytes: &[u8]) {
    let Some((which, text)) = bytes.split_first() else { return };
    let exam = || Source::new("exam.toml", text);
    let format = [Format::Svg, Format::Png, Format::Pdf][usize::from(which / 8 % 3)];
    let (lang, draft) = ("en".to_owned(), Draft::Refused);
    match which % 8 {
        0 | 1 => asked(Command::Draw(Draw {
            exam: exam(),
            format,
            style: [Style::Soft, Style::Line, Style::Sketch][usize::from(which / 24 % 3)],
            palette: Palette::Neutral,
            mother: handspan::commands::MotherAs::Outline,
            hands: None,
            view: if which % 8 == 0 { View::Facing } else { View::Hers },
            labels: if which / 24 % 3 == 2 { Labels::Few } else { Labels::All },
            lang,
            draft,
            width: (format == Format::Png).then_some(300),
            text_as: TextAs::Text,
        })),
        2 | 3 => handout(exam(), None, None, format),
        4 => asked(Command::SkinGuide(SkinGuide {
            exam: exam(),
            format,
            lang,
            draft,
            look: GuideLook::on(Paper::A4),
            clinic: None,
            despite: vec![],
        })),
        form => asked(Command::Note(Note {
            exam: exam(),
            form: [Form::Text, Form::Handover, Form::Fhir][usize::from(form - 5)],
            share: which / 8 % 2 == 1,
            lang,
            draft,
            clinic: None,
            quiet: vec![],
            layout: None,
            seed: [7; 16],
            to_file: true,
        })),
    };
}
