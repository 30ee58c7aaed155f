//! What the page asks and is answered: questions as JSON through the one door; texts that are changed; places to tap; sides read
//! back; words that are there.

use crate::shared::{self, Dice, path, read, rows};
use handspan::commands::{self, Command, Edit, Outcome, Request, Source};
use handspan::desk;
use handspan::report::Look;
use serde_json::{Value, json};

/// The head of an answer, and its pages.
fn asked(question: &Value) -> (Value, Vec<Vec<u8>>) {
    let bytes = desk::answer(question.to_string().as_bytes());
    let length = u32::from_le_bytes(bytes[..4].try_into().expect("four bytes")) as usize;
    let head: Value = serde_json::from_slice(&bytes[4..4 + length]).expect("JSON");
    let mut rest = &bytes[4 + length..];
    let sizes =
        head["pages"].as_array().expect("a list").iter().map(|n| n.as_u64().expect("a number") as usize);
    let pages = sizes
        .map(|size| {
            let (page, more) = rest.split_at(size);
            rest = more;
            page.to_vec()
        })
        .collect();
    assert!(rest.is_empty(), "bytes after the last page");
    (head, pages)
}

fn run(command: Command) -> Outcome {
    commands::run(&Request { command, look: Look::Plain })
}

fn examples() -> Vec<(String, String)> {
    let mut files: Vec<_> = std::fs::read_dir(path("examples"))
        .expect("the examples")
        .map(|entry| entry.expect("an entry").path())
        .filter(|file| {
            file.extension().is_some_and(|e| e == "toml") && file.file_stem().is_some_and(|s| s != "clinic")
        })
        .collect();
    files.sort();
    files
        .iter()
        .map(|file| (file.display().to_string(), std::fs::read_to_string(file).expect("an example")))
        .collect()
}

#[test]
fn answers_are_those_of_the_program() {
    let directory = tempfile::tempdir().expect("a directory");
    for example in ["head-down-left", "twins", "heart-not-heard"] {
        let file = format!("examples/{example}.toml");
        let text = std::fs::read_to_string(path(&file)).expect("an example");
        for format in ["svg", "png", "pdf"] {
            let out = directory.path().join(format!("{example}.{format}"));
            shared::run(&["draw", &file, "-o", &out.display().to_string()]);
            let (head, pages) = asked(&json!({"command": "draw", "exam": {"text": text}, "format": format}));
            assert_eq!(pages, [std::fs::read(&out).expect("a picture")], "{example} {format}");
            assert_eq!(head["made"], "the picture");
        }
    }
    let files = ["28", "31", "34", "36"].map(|weeks| format!("examples/growth/{weeks}-weeks.toml"));
    let out = directory.path().join("growth.pdf").display().to_string();
    let words: Vec<&str> =
        ["growth"].into_iter().chain(files.iter().map(String::as_str)).chain(["-o", &out]).collect();
    shared::run(&words);
    let visits: Vec<Value> = files
        .iter()
        .map(|file| json!({"text": std::fs::read_to_string(path(file)).expect("an example")}))
        .collect();
    let (head, pages) = asked(&json!({"command": "growth", "visits": visits, "format": "pdf"}));
    assert_eq!(pages, [std::fs::read(&out).expect("the tape over the visits")], "{head}");
    let (head, pages) = asked(
        &json!({"command": "handout", "exam": {"text": "[baby]\nheart = \"not heard\"\n"}, "format": "pdf"}),
    );
    assert!(pages.is_empty());
    assert_eq!(head["code"], 3);
    assert!(head["why"].as_str().is_some_and(|why| why.contains("heart-not-heard")), "{head}");
}

#[test]
fn what_cannot_be_asked_is_refused() {
    for question in [
        json!({"command": "dance"}),
        json!({"command": "draw", "exam": {"text": ""}, "format": "gif"}),
        json!({"command": "draw", "exam": {"text": ""}, "format": "svg", "colour": "red"}),
        json!({"command": "draw", "exam": {"file": "/etc/passwd"}, "format": "svg"}),
        json!({"command": "note", "exam": {"say": "37+0"}, "form": "fhir", "seed": "xyz"}),
        json!({"command": "draw", "exam": {"say": "LOA"}, "format": "svg", "palette": 7}),
        json!({"command": "draw", "exam": {"say": "LOA"}, "format": "svg", "hands": "both"}),
        json!({"command": "skin-guide", "exam": {"say": "37+0 LOA"}, "format": "pdf", "minutes": "5"}),
        json!({"command": "skin-guide", "exam": {"say": "37+0 LOA"}, "format": "pdf", "palette": 7}),
    ] {
        let (head, pages) = asked(&question);
        assert_eq!(head["code"], 2, "{question}");
        assert!(!head["why"].as_str().expect("a text").is_empty());
        assert!(pages.is_empty());
    }
    assert!(String::from_utf8_lossy(&desk::answer(b"\xff{")).contains("\"code\":2"));
}

/// An exam without the order in which its findings were written: a file that is made has the order of the hands, and its
/// note in a place of its own.
fn unordered(mut exam: handspan::exam::Exam) -> handspan::exam::Exam {
    exam.read.retain(|(key, _)| key != "note");
    exam.read.sort();
    exam
}

#[test]
fn an_exam_typed_finding_by_finding_is_the_same_exam() {
    let mut dice = Dice::new(20_260_314);
    let random: Vec<String> =
        (0..120).map(|_| crate::words::write(&crate::words::random_exam(&mut dice))).collect();
    let texts = examples().into_iter().map(|(_, text)| text).chain(random);
    for text in texts {
        let exam = read(&text);
        let file = handspan::exam::edit::file_of(&exam).expect("a file");
        assert_eq!(unordered(read(&file)), unordered(exam), "{text}\n{file}");
    }
}

#[test]
fn lines_of_shorthand_become_files_that_read_the_same() {
    let text = std::fs::read_to_string(path("tests/shorthand.txt")).expect("the lines");
    let mut read_lines = 0;
    for line in text.lines().filter_map(|line| line.strip_prefix("> ")) {
        let reading = handspan::exam::shorthand::read("line", line);
        let Some(exam) = reading.exam else { continue };
        // What is asked is answered before a file is made of it.
        if handspan::report::any_error(&reading.problems) {
            continue;
        }
        let out = run(Command::File { exam: Source::line("line", line) });
        assert_eq!(unordered(read(&out.text)), unordered(exam), "{line}\n{}", out.text);
        read_lines += 1;
    }
    assert!(read_lines > 40, "{read_lines} lines");
}

/// A line of marks that cannot be printed says nothing; beside words they are left out, in the file as in the note.
#[test]
fn a_line_of_control_characters_becomes_no_file() {
    let out = run(Command::File { exam: Source::line("line", "\0\0\0\0\0\0\0\0") });
    assert_eq!(out.code, handspan::commands::exit::FAILED, "{}", out.text);
    let out = run(Command::File { exam: Source::line("line", "37+0 LOA \0well in herself\u{1}") });
    assert_eq!(read(&out.text).note.as_deref(), Some("well in herself"), "{}", out.text);
}

/// Changing one finding changes that one, keeps every comment, and can be taken back.
#[test]
fn an_edit_keeps_comments_and_everything_else() {
    for (name, text) in examples() {
        let comments = |text: &str| {
            text.lines().filter(|line| line.starts_with('#')).map(str::to_owned).collect::<Vec<_>>()
        };
        let before = read(&text);
        for (key, _) in &before.read {
            let edit = |values: Vec<String>, text: &str| {
                let edits = vec![Edit { key: key.clone(), values }];
                let out = run(Command::Edit { exam: Source::new("exam", text), edits });
                assert_eq!(out.code, 0, "{name} {key}: {}", out.notes);
                out.text
            };
            let without = edit(vec![], &text);
            assert_eq!(comments(&without), comments(&text), "{name} {key}");
            let reading = handspan::exam::read("exam", without.as_bytes());
            if let Some(after) = reading.exam {
                let left: Vec<_> = before.read.iter().filter(|(own, _)| own != key).cloned().collect();
                // Weeks that are worked out from dates stay.
                let kept: Vec<_> = after
                    .read
                    .iter()
                    .filter(|(own, _)| own != "weeks" || left.iter().any(|(k, _)| k == "weeks"))
                    .cloned()
                    .collect();
                assert_eq!(kept, left, "{name} {key}");
            }
        }
    }
}

#[test]
fn places_lie_where_they_are_named_from_both_ends() {
    for text in [
        "",
        "weeks = \"37+0\"\n[mother]\nfundal-height = \"35 cm\"\n[baby]\nhead = \"fundus\"\n",
        "weeks = \"16+0\"\n",
    ] {
        let (head, pages) = asked(&json!({"command": "outline", "exam": {"text": text}}));
        assert_eq!(pages.len(), 1, "{head}");
        let outline: Value = serde_json::from_str(head["text"].as_str().expect("a text")).expect("JSON");
        let at = |words: &str| {
            let places = outline["places"].as_array().expect("a list");
            let place =
                places.iter().find(|place| place["words"] == words).unwrap_or_else(|| panic!("{words}"));
            (place["x"].as_f64().expect("x"), place["y"].as_f64().expect("y"))
        };
        // Her left is at the right of someone who faces her.
        for level in ["fundus", "above navel", "at navel", "below navel", "above pubic bone"] {
            let (left, right) = (at(&format!("left, {level}")), at(&format!("right, {level}")));
            assert!(left.0 > 0.51 && right.0 < 0.49, "{level}: {left:?} {right:?}");
            assert!((left.0 + right.0 - 1.0).abs() < 1e-3 && left.1 == right.1, "{level} is not even");
            assert!(at(&format!("left flank, {level}")).0 > left.0);
            assert!((at(&format!("middle, {level}")).0 - 0.5).abs() < 1e-3);
        }
        assert!(at("left iliac fossa").0 > 0.5 && at("right iliac fossa").0 < 0.5);
        // An early womb ends under the navel.
        assert_eq!(at("middle, fundus").1 < at("middle, at navel").1, !text.contains("16+0"));
        assert!(at("middle, above navel").1 < at("middle, at navel").1);
        assert!(at("middle, at navel").1 < at("middle, below navel").1);
        assert!(at("middle, below navel").1 < at("middle, above pubic bone").1);
        let svg = String::from_utf8_lossy(&pages[0]);
        assert!(
            svg.contains("Her left") && svg.contains("Her right") && !svg.contains("baby"),
            "the outline"
        );
        // Every place reads back as itself.
        for place in outline["places"].as_array().expect("a list") {
            let words = place["words"].as_str().expect("a text");
            let exam = shared::baby(&format!("head = \"{words}\""));
            assert!(exam.read.contains(&("baby.1.head".to_owned(), words.to_owned())), "{words}");
            assert!(
                (0.0..=1.0).contains(&place["x"].as_f64().expect("x"))
                    && (0.0..=1.0).contains(&place["y"].as_f64().expect("y"))
            );
        }
    }
}

/// The place to tap is where the picture marks the same place.
#[test]
fn a_tapped_place_is_where_the_picture_puts_it() {
    let exam = "weeks = \"37+0\"\n[mother]\nfundal-height = \"35 cm\"\n";
    for words in ["left, below navel", "right flank, at navel", "right, fundus", "left iliac fossa"] {
        let (head, _) = asked(&json!({"command": "outline", "exam": {"text": exam}}));
        let outline: Value = serde_json::from_str(head["text"].as_str().expect("a text")).expect("JSON");
        let place = outline["places"]
            .as_array()
            .expect("a list")
            .iter()
            .find(|p| p["words"] == words)
            .expect("a place")
            .clone();
        let read = read(&format!("{exam}[baby]\nheart = \"{words}\"\n"));
        let conclusions = [handspan::exam::conclude(&read, 0)];
        let pose = handspan::body::pose::from_exam(&read, &conclusions);
        let heart = pose.marks.iter().find_map(|mark| match mark {
            handspan::body::pose::Mark::Heart(_, at) => Some(at.0),
            handspan::body::pose::Mark::Limb(..) => None,
        });
        let heart = heart.expect("a heart");
        let frame = handspan::figure::FRAME;
        let x = f64::from((heart.x - frame.left) / (frame.right - frame.left));
        let y = f64::from((frame.top - heart.y) / (frame.top - frame.bottom));
        assert!((place["x"].as_f64().expect("x") - x).abs() < 0.002, "{words}: {place} {x}");
        assert!((place["y"].as_f64().expect("y") - y).abs() < 0.002, "{words}: {place} {y}");
    }
}

#[test]
fn sides_are_read_back_from_both_ends() {
    let lines = |text: &str| {
        let out = run(Command::ReadBack { exam: Source::new("exam", text), lang: "en".to_owned() });
        out.text.lines().map(str::to_owned).collect::<Vec<_>>()
    };
    let left = lines(
        "[baby]\nback = \"left front\"\nlimbs = \"right, above navel\"\nheart = \"left, below navel\"\n",
    );
    assert_eq!(
        left,
        [
            "Back to HER LEFT: on your right as you face her.",
            "Limbs on HER RIGHT: on your left as you face her.",
            "Heart heard on HER LEFT: on your right as you face her.",
        ]
    );
    for row in rows("positions.csv") {
        let code = &row[0];
        if !code.starts_with('L') && !code.starts_with('R') {
            continue;
        }
        let read = lines(&format!("[baby]\nposition = \"{code}\"\n"));
        if read.is_empty() {
            continue;
        }
        let back = read.iter().find(|line| line.starts_with("Back")).map(String::as_str);
        // In face and brow the chin or brow is opposite the back; a crosswise code names the side of the head.
        let letters = &code[1..2];
        let side_of_code = if code.starts_with('L') { "HER LEFT" } else { "HER RIGHT" };
        let other = if code.starts_with('L') { "HER RIGHT" } else { "HER LEFT" };
        match letters {
            "O" | "S" => assert!(back.is_some_and(|line| line.contains(side_of_code)), "{code}: {read:?}"),
            "M" | "F" => assert!(back.is_some_and(|line| line.contains(other)), "{code}: {read:?}"),
            _ => {}
        }
    }
    assert!(lines("[baby]\nhead = \"fundus\"\nback = \"front\"\n").is_empty());
}

/// Every message that the page asks for is there, and every one that is there is asked for; every finding has a name.
#[test]
fn the_words_of_the_page_are_there() {
    let (head, _) = asked(&json!({"command": "vocabulary"}));
    let vocabulary: Value = serde_json::from_str(head["text"].as_str().expect("a text")).expect("JSON");
    let messages = vocabulary["messages"].as_object().expect("messages");
    let keys: Vec<&str> = vocabulary["keys"]
        .as_array()
        .expect("keys")
        .iter()
        .map(|k| k["name"].as_str().expect("a name"))
        .collect();
    assert_eq!(keys.len(), handspan::exam::keys::KEYS.len(), "a key without a group");
    let mut page = String::new();
    for entry in std::fs::read_dir(path("src/desk/page")).expect("the page") {
        page.push_str(&std::fs::read_to_string(entry.expect("an entry").path()).expect("a text"));
    }
    for key in &keys {
        assert!(messages.contains_key(&format!("desk-key-{key}")), "desk-key-{key}");
        assert!(
            page.contains(&format!("'{key}'")) || page.contains(&format!(" {key}:")),
            "the form has no `{key}`"
        );
    }
    let asked: Vec<&str> = page
        .match_indices("desk-")
        .map(|(at, _)| {
            page[at..]
                .split(|c: char| !c.is_ascii_lowercase() && !c.is_ascii_digit() && c != '-')
                .next()
                .unwrap_or_default()
        })
        .collect();
    for id in &asked {
        let known = messages.contains_key(*id)
            || (id.ends_with('-') && messages.keys().any(|own| own.starts_with(id)));
        assert!(known || *id == "desk-", "the page asks for `{id}`");
    }
    for id in messages.keys().filter(|id| id.starts_with("desk-")) {
        let used = asked.contains(&id.as_str())
            || asked.iter().any(|own| own.ends_with('-') && *own != "desk-" && id.starts_with(own));
        assert!(used, "nobody asks for `{id}`");
    }
}

/// In every language the page has the messages of the English, and says each word, finding and place of an exam.
#[test]
fn the_page_is_said_in_every_language() {
    let told = |question: Value| -> Value {
        let (head, _) = asked(&question);
        let text = head["text"].as_str().expect("a text");
        serde_json::from_str(text).unwrap_or_else(|_| panic!("{question}: {head}"))
    };
    let ids = |vocabulary: &Value| {
        vocabulary["messages"].as_object().expect("messages").keys().cloned().collect::<Vec<_>>()
    };
    let english = told(json!({"command": "vocabulary"}));
    let languages = english["languages"].as_array().expect("languages").clone();
    assert_eq!(languages.len(), handspan::words::LANGUAGES.len());
    for language in &languages {
        // A language that has the family page alone is offered for that page alone.
        let whole = language["tag"] != "pt" && language["tag"] != "pl";
        assert_eq!(language["desk"], whole, "{language}");
        if !whole {
            continue;
        }
        let (tag, draft) = (&language["tag"], language["signed"] == false);
        let vocabulary = told(json!({"command": "vocabulary", "lang": tag}));
        assert_eq!(ids(&vocabulary), ids(&english), "{tag}");
        assert_eq!(vocabulary["draft"].is_object(), draft, "{tag}: a draft says so");
        let said = vocabulary["said"].as_object().expect("words");
        for key in english["keys"].as_array().expect("keys") {
            let words = key["words"].as_array().expect("words").iter().map(|row| &row["word"]);
            for word in words.chain([&key["absent"], &key["not_tried"]]).filter_map(Value::as_str) {
                assert_eq!(said.contains_key(word), draft, "{tag}: {word}");
            }
        }
        for (name, text) in examples() {
            let check =
                told(json!({"command": "check", "exam": {"text": text}, "lang": tag, "draft": draft}));
            let read = check["read"].as_object().expect("findings").keys().collect::<Vec<_>>();
            match check["said"].as_object() {
                Some(said) => assert!(draft && said.keys().eq(read), "{tag} {name}"),
                None => assert!(!draft, "{tag} {name}"),
            }
        }
        let outline = told(json!({"command": "outline", "exam": {"text": ""}, "lang": tag}));
        for place in outline["places"].as_array().expect("places") {
            assert_eq!(place["said"] == place["words"], !draft, "{tag}: {place}");
        }
    }
}

/// Head, bottom and places lie on the picture where the exam says, from both ends; an empty exam has places and no baby.
#[test]
fn the_picture_is_taken_hold_of_where_it_is_drawn() {
    let places = |text: &str| -> Value {
        let (head, _) = asked(&json!({"command": "places", "exam": {"text": text}}));
        serde_json::from_str(head["text"].as_str().expect("a text")).expect("JSON")
    };
    let empty = places("");
    assert_eq!(empty["babies"], json!([]));
    assert!(empty["places"].as_array().expect("places").len() > 20);
    let number = |value: &Value, axis: &str| value[axis].as_f64().expect("a number");
    for (side, sign) in [("left", 1.0), ("right", -1.0)] {
        let other = if side == "left" { "right" } else { "left" };
        let told = places(&format!(
            "weeks = \"37+0\"\n[baby]\nhead = \"{side}, at navel\"\nbreech = \"{other}, at navel\"\nback = \"front\"\n"
        ));
        let baby = &told["babies"][0];
        assert_eq!(baby["baby"], 1);
        let across = |part: &str| number(&baby[part], "x") - 0.5;
        assert!(across("head") * sign > 0.05 && across("bottom") * sign < -0.05, "{baby}");
        for place in told["places"].as_array().expect("places") {
            let words = place["words"].as_str().expect("words");
            if words.starts_with(side) {
                assert!((number(&place["at"], "x") - 0.5) * sign > 0.0, "{place}");
            }
        }
    }
    let down = places(
        "weeks = \"37+0\"\n[baby]\nhead = \"above pubic bone\"\nbreech = \"fundus\"\nback = \"left\"\n",
    );
    assert!(
        number(&down["babies"][0]["head"], "y") > number(&down["babies"][0]["bottom"], "y") + 0.2,
        "{down}"
    );
    let fifths = down["fifths"].as_array().expect("fifths");
    assert_eq!(fifths.len(), 6);
    assert!(fifths.windows(2).all(|two| number(&two[0], "y") > number(&two[1], "y")), "5/5 is highest");
}

/// Two babies are recorded by saying so, before anything is found of them, and stay two on the line and in the file of a line.
#[test]
fn two_babies_are_recorded_before_anything_is_found() {
    let two = |text: &str| {
        let edits = vec![Edit { key: "baby.2".to_owned(), values: vec!["recorded".to_owned()] }];
        run(Command::Edit { exam: Source::new("exam", text), edits }).text
    };
    for text in ["", "weeks = \"34+0\"\n", "[baby]\nback = \"left\"\n"] {
        let file = two(text);
        assert_eq!(read(&file).babies.len(), 2, "{file}");
        assert_eq!(two(&file), file, "twice is once");
        let line = run(Command::Line { exam: Source::new("exam", &file[..]) }).text;
        let again = run(Command::File { exam: Source::line("line", &line[..]) }).text;
        assert_eq!(read(&again).babies.len(), 2, "{line}\n{again}");
        let (_, pages) = asked(&json!({"command": "draw", "exam": {"text": file}, "format": "svg"}));
        assert_eq!(pages.len(), 1, "{file}");
    }
}
