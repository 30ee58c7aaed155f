//! The languages against the English: the same messages with the same values, nothing unused; drafts marked and beside the
//! English; sides that are never swapped; and a made-up language, two fifths longer, that still fits.

use crate::layouts::{examples, sides};
use crate::pages::{back, backs, clinic, content_in, lying, texts};
use crate::shared::{path, run, run_in, rust_files, said as printed};
use crate::stand_in::{exam, found};
use handspan::chart::{Entry, handover, note, said};
use handspan::exam::keys::{KEYS, Scope};
use handspan::exam::words::Vocabulary;
use handspan::exam::{
    self, Across, Conclusion, Exam, Finding, HeartHeard, Height, Lie, Place, Position, Presentation, spoken,
};
use handspan::figure;
use handspan::fonts::Fonts;
use handspan::reckon::{Reckoning, reckon};
use handspan::sheet::family::{self, Asked};
use handspan::sheet::{
    Block, COLOURING, Content, FAMILY_PAGE, Kind, LARGE_PRINT, Layout, PICTURE_FIRST, SheetError, Shipped,
};
use handspan::units::MotherSide::{Left, Right};
use handspan::words::{LANGUAGES, Language, Part, Words};
use std::collections::{BTreeMap, BTreeSet};

/// The messages of a file: id to its text, with the lines that go on.
fn messages(text: &str) -> BTreeMap<String, String> {
    let mut out: BTreeMap<String, String> = BTreeMap::new();
    let mut last = String::new();
    for line in text.lines() {
        if line.starts_with('#') {
            continue;
        }
        match line.split_once(" = ") {
            Some((id, words))
                if id.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-') =>
            {
                assert!(out.insert(id.to_owned(), words.to_owned()).is_none(), "{id} is there twice");
                last = id.to_owned();
            }
            _ if line.starts_with(' ') => out.get_mut(&last).expect("a message goes on").push_str(line),
            _ => {}
        }
    }
    out
}

/// The values that a message takes.
fn values(text: &str) -> BTreeSet<String> {
    let name = |rest: &str| rest.chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '-').collect();
    text.split('$').skip(1).map(name).collect()
}

fn shipped(tag: &str) -> &'static Language {
    LANGUAGES.iter().find(|language| language.tag == tag).expect("it is shipped")
}

/// The parts of the messages that stay English: cases to practise on, and names in records.
const ENGLISH_ALONE: [Part; 2] = [Part::Cases, Part::Records];
/// Languages that have begun with the family page, and have nothing else yet.
const FAMILY_ALONE: [&str; 2] = ["pt", "pl"];

#[test]
fn every_language_has_the_messages_of_the_english_with_the_same_values() {
    let english = messages(shipped("en").text);
    for id in english.keys().filter(|id| !id.starts_with("draft-")) {
        assert!(Part::of(id).is_some(), "`{id}` is of no part");
    }
    for language in &LANGUAGES[1..] {
        let own = messages(language.text);
        for (id, text) in &own {
            if id.starts_with("draft-") && language.under.is_none() {
                continue;
            }
            let there = english.get(id).unwrap_or_else(|| panic!("{}: nothing says `{id}`", language.tag));
            assert_eq!(values(text), values(there), "{}: `{id}` is filled otherwise", language.tag);
        }
        if language.under.is_some() {
            for (id, text) in own.iter().filter(|(id, _)| *id != "language-signed") {
                assert_ne!(text, &english[id], "{}: `{id}` says the same", language.tag);
            }
            continue;
        }
        // All of a part, or nothing of it.
        for part in Part::ALL {
            let of_part = |id: &&String| Part::of(id) == Some(part);
            let missing: Vec<&String> =
                english.keys().filter(of_part).filter(|id| !own.contains_key(*id)).collect();
            let wanted = match FAMILY_ALONE.contains(&language.tag) {
                true => part == Part::Family,
                false => !ENGLISH_ALONE.contains(&part),
            };
            assert_eq!(language.has(part), wanted, "{}: {} lacks {missing:?}", language.tag, part.name());
            assert!(wanted || !own.keys().any(|id| of_part(&id)), "{}: {}", language.tag, part.name());
        }
        assert_eq!(own["language-signed"], "no");
        assert_eq!(own["language-of-exams"], "no");
        assert!(own.contains_key("draft-mark") && own.contains_key("draft-note"), "{}", language.tag);
    }
}

#[test]
fn every_message_is_used() {
    let mut code: String = rust_files(&path("src")).into_iter().map(|(_, text)| text).collect();
    for entry in std::fs::read_dir(path("layouts")).unwrap() {
        let file = entry.unwrap().path();
        if file.extension().is_some_and(|ending| ending == "toml") {
            code.push_str(&std::fs::read_to_string(file).unwrap());
        }
    }
    // Ids that are put together: `found-{key}`, `{id}-state`.
    let starts: BTreeSet<&str> = code
        .split('"')
        .map(|piece| piece.split_once('{').map_or(piece, |(start, _)| start))
        .filter(|start| {
            start.ends_with('-')
                && start.len() > 3
                && start.chars().all(|c| c.is_ascii_lowercase() || c == '-')
        })
        .collect();
    let english = shipped("en").text;
    let used = |id: &str| {
        // `chart-KEY` is made of `found-KEY`.
        let id = &id.replacen("chart-", "found-", 1);
        code.contains(&format!("\"{id}\""))
            || code.contains(&format!("words:{id}\""))
            || english.contains(&format!("{{ {id} }}"))
            || starts.iter().any(|start| id.starts_with(start))
    };
    for id in messages(english).keys() {
        let base = ["-probably", "-number"].iter().find_map(|end| id.strip_suffix(end)).unwrap_or(id);
        assert!(used(id) || used(base), "nothing says `{id}`");
    }
}

#[test]
fn sides_are_never_swapped_in_any_language() {
    for (tag, left, right) in [
        ("en", "left", "right"),
        ("en-US", "left", "right"),
        ("es", "izquierda de usted", "derecha de usted"),
        ("fr", "votre gauche", "votre droite"),
        ("pt", "esquerda da mãe", "direita da mãe"),
        ("pl", "po pani lewej stronie", "po pani prawej stronie"),
    ] {
        let words = Words::load_for(tag, &[Part::Family]).unwrap();
        let told = |c: Conclusion| {
            let mut e = exam(Some((27, 0)));
            e.babies[0].limbs = Finding::Absent;
            let content = content_in(&e, &[c], &clinic(), Asked::default(), &words);
            content.texts("family-found").join(" ").to_lowercase()
        };
        let check = |text: &str, side| {
            assert_eq!(text.contains(left), side == Some(Left), "{tag}: {text}");
            assert_eq!(text.contains(right), side == Some(Right), "{tag}: {text}");
        };
        for b in backs() {
            for presentation in [Presentation::Cephalic, Presentation::Breech] {
                for unsure in [false, true] {
                    let c =
                        Conclusion { back: Some(b), unsure, ..lying(Lie::Longitudinal, Some(presentation)) };
                    check(&told(c), b.side);
                }
            }
        }
        for side in [Left, Right] {
            for (lie, head_up) in [
                (Lie::Transverse, None),
                (Lie::Oblique, None),
                (Lie::Oblique, Some(true)),
                (Lie::Oblique, Some(false)),
            ] {
                check(&told(Conclusion { head_side: Some(side), head_up, ..lying(lie, None) }), Some(side));
            }
        }
        // What she may notice lies on the other side.
        let mut e = exam(Some((34, 0)));
        // Legs are told where limbs were felt: across from the back.
        let limbs = Place { across: Some(Across::Side(Right)), height: Some(Height::AboveNavel) };
        e.babies[0].limbs = found(vec![limbs]);
        let c = Conclusion {
            back: Some(back(Some(Left), None)),
            ..lying(Lie::Longitudinal, Some(Presentation::Cephalic))
        };
        let content = content_in(&e, &[c], &clinic(), Asked::default(), &words);
        let text = content.texts("family-found").join(" ").to_lowercase();
        assert!(text.find(left).unwrap() < text.find(right).unwrap(), "{tag}: {text}");
        let label = |id: &str| words.say(id, &[]).unwrap().to_lowercase();
        // Polish says a side otherwise after "on".
        let (left, right) = if tag == "pl" { ("pani lewa", "pani prawa") } else { (left, right) };
        assert!(label("your-left").contains(left) && label("your-right").contains(right), "{tag}");
    }
}

/// The words of sides in a text, in their order: `L` and `R`.
fn sides_in(text: &str, lefts: &[&str], rights: &[&str]) -> String {
    let lower = text.to_lowercase();
    let side = |word: &str| {
        if lefts.contains(&word) { Some('L') } else { rights.contains(&word).then_some('R') }
    };
    lower.split(|c: char| !c.is_alphabetic()).filter_map(side).collect()
}

/// In every message of every part: a side where the English has it, and never the other one.
#[test]
fn every_message_has_the_sides_of_the_english() {
    let english = messages(shipped("en").text);
    for (tag, lefts, rights, least) in [
        ("es", &["izquierda", "izquierdo"][..], &["derecha", "derecho"][..], 100),
        ("fr", &["gauche", "gauches"], &["droite", "droit"], 100),
        // The family page alone.
        ("pt", &["esquerda", "esquerdo"], &["direita", "direito"], 15),
        ("pl", &["lewa", "lewej"], &["prawa", "prawej"], 15),
    ] {
        let own = messages(shipped(tag).text);
        let mut with_sides = 0;
        for (id, text) in own.iter().filter(|(id, _)| !id.starts_with("draft-")) {
            // "Left out", "seconds left" and "be right" are no sides, nor are the keys of a choice.
            let plain = [
                "[left]",
                "[right]",
                "left out",
                "Left out",
                "s left",
                "was left",
                "be right",
                "bent right",
                "right up to",
            ]
            .iter()
            .fold(english[id].clone(), |text, phrase| text.replace(phrase, ""));
            let wanted = sides_in(&plain, &["left"], &["right"]);
            let sides = sides_in(text, lefts, rights);
            assert_eq!(sides, wanted, "{tag}: {id}: {text}");
            with_sides += usize::from(!sides.is_empty());
        }
        assert!(with_sides > least, "{tag}: {with_sides}");
    }
}

/// Every word that an exam may hold.
fn exam_words() -> BTreeSet<String> {
    let mut out = BTreeSet::new();
    for key in KEYS {
        out.extend((key.words)().into_iter().map(|row| row.word.to_owned()));
        out.extend(key.states().into_iter().filter_map(|state| state.word().map(str::to_owned)));
    }
    out
}

#[test]
fn every_word_of_an_exam_is_said_in_every_language() {
    let english = Words::load("en").unwrap();
    for word in exam_words() {
        assert_eq!(spoken::value(&word, &english).unwrap(), word);
        for tag in ["es", "fr"] {
            let words = Words::load_for(tag, &[Part::Check, Part::Picture]).unwrap();
            let said = spoken::value(&word, &words).unwrap_or_else(|fault| panic!("{tag}: {fault}"));
            let code = Position::find(&word).is_some_and(|position| position.code() == word);
            assert!(!code || said != word, "{tag}: {word} is a code of English charts");
        }
    }
    for position in Position::all() {
        assert_eq!(spoken::position(position, &english).unwrap(), position.words());
    }
    let spanish = Words::load_for("es", &[Part::Check, Part::Picture]).unwrap();
    let french = Words::load_for("fr", &[Part::Check, Part::Picture]).unwrap();
    for (canonical, es, fr) in [
        ("33.5 cm", "33,5 cm", "33,5 cm"),
        ("1 finger below navel", "1 dedo por debajo del ombligo", "1 travers de doigt sous l’ombilic"),
        ("2 fingers below navel", "2 dedos por debajo del ombligo", "2 travers de doigt sous l’ombilic"),
        ("2.9 kg to 3.2 kg", "2,9 kg a 3,2 kg", "2,9 kg à 3,2 kg"),
        ("36 in 15 s; 35 in 15 s", "36 en 15 s; 35 en 15 s", "36 en 15 s; 35 en 15 s"),
        ("could not tell (hard; thick)", "no se pudo saber (hard; thick)", "impossible à dire (hard; thick)"),
        ("LOA", "occipitoilíaca izquierda anterior", "occipito-iliaque gauche antérieure"),
    ] {
        assert_eq!(spoken::value(canonical, &english).unwrap(), canonical);
        assert_eq!(spoken::value(canonical, &spanish).unwrap(), es);
        assert_eq!(spoken::value(canonical, &french).unwrap(), fr);
    }
    assert!(spoken::value("nonsense", &spanish).unwrap_err().0.contains("nothing says `nonsense`"));
}

#[test]
fn one_and_several_are_told_apart() {
    for (tag, one, several) in
        [("en", "1 day later", "2 days later"), ("es", "1 día después", "2 días después")]
    {
        let words = Words::load_for(tag, &[Part::Check]).unwrap();
        assert_eq!(words.say("numbers-apart-later", &[("days", "1")]).unwrap(), one);
        assert_eq!(words.say("numbers-apart-later", &[("days", "2")]).unwrap(), several);
    }
    // A telephone number stays as it is written.
    let words = Words::load_for("es", &[Part::Family]).unwrap();
    assert_eq!(words.say("family-phone-day", &[("number", "555.1234")]).unwrap(), "De día: 555.1234");
}

/// English words that no sentence of another language holds, beside names and sources.
const ENGLISH_WORDS: [&str; 22] = [
    "the", "her", "is", "not", "of", "and", "with", "left", "right", "weeks", "felt", "heard", "head",
    "back", "baby", "above", "below", "navel", "fundus", "towards", "by", "unsure",
];

/// The words of a text without what was typed freely, ids in brackets and names.
fn plain_words(text: &str) -> Vec<String> {
    let mut out = text.to_owned();
    // Ids of remarks, and names of books.
    while let Some((before, rest)) = out.split_once('[') {
        out = format!("{before}{}", rest.split_once(']').map_or("", |(_, after)| after));
    }
    out.split(|c: char| !(c.is_alphanumeric() || c == '/' || c == '-')).map(str::to_lowercase).collect()
}

/// What is said of an exam in a language, by every command that prints text.
fn texts_in(tag: &str, name: &str, exam: &Exam, reckoning: &Reckoning) -> Vec<String> {
    let words = Words::load_for(tag, &[Part::Family, Part::Picture, Part::Check, Part::Chart]).unwrap();
    let entry = Entry { exam, reckoning, words: &words };
    let told = |text: Result<String, handspan::words::WordsError>| {
        text.unwrap_or_else(|fault| panic!("{name} in {tag}: {fault}"))
    };
    vec![
        told(note::text(&entry)),
        told(handover::text(&entry)),
        told(said::lines(exam, &reckoning.conclusions, &words)),
    ]
}

#[test]
fn nothing_is_half_translated_and_no_code_is_left() {
    let codes: Vec<String> = Position::all().map(|position| position.code().to_lowercase()).collect();
    // "La" and "sa" are words, and so is "op".
    let codes: Vec<&String> = codes.iter().filter(|code| code.len() > 2).collect();
    let mut remarks = BTreeSet::new();
    for tag in ["es", "fr"] {
        for (name, mut exam, reckoning) in examples() {
            exam.note = None;
            exam.read.retain(|(key, words)| key != "note" && !words.starts_with("could not tell ("));
            remarks.extend(reckoning.remarks.iter().map(|remark| remark.id));
            for text in texts_in(tag, &name, &exam, &reckoning) {
                for word in plain_words(&text) {
                    let half = ENGLISH_WORDS.contains(&word.as_str()) || codes.contains(&&word);
                    assert!(!half, "{name} in {tag} says `{word}`:\n{text}");
                }
            }
        }
    }
    assert!(remarks.len() >= 15, "{remarks:?}");
}

/// Whatever is found, it can be said: random exams, every remark they call for.
#[test]
fn whatever_is_found_can_be_said() {
    for (name, text) in random_exams() {
        let reading = exam::read(&name, text.as_bytes());
        let Some(exam) = reading.exam else { continue };
        let reckoning = reckon(&exam, &Default::default());
        for tag in ["es", "fr"] {
            texts_in(tag, &name, &exam, &reckoning);
        }
    }
}

/// Exams with each word of the language where it may stand, and with what disagrees.
fn random_exams() -> Vec<(String, String)> {
    let mut out = vec![];
    for key in KEYS.iter().filter(|key| key.scope != Scope::Top) {
        let mut values: Vec<String> = (key.words)().into_iter().map(|row| row.word.to_owned()).collect();
        values.extend(key.states().into_iter().filter_map(|state| state.word().map(str::to_owned)));
        values.extend(
            [
                "37",
                "98 cm",
                "3/5",
                "36 in 15 s",
                "142",
                "140-146",
                "3.2 kg",
                "2.9 kg to 3.2 kg",
                "30+0 28 cm",
            ]
            .map(str::to_owned),
        );
        values.extend(
            ["left, 3 cm below navel", "right 5 cm, 2 cm above navel", "middle, 9 cm above pubic bone"]
                .map(str::to_owned),
        );
        values.extend(
            ["1 finger above navel", "3 fingers below xiphoid", "left front (scan)", "3.2 kg (34+0)"]
                .map(str::to_owned),
        );
        let (own, other) = if key.scope == Scope::Mother { ("mother", "baby") } else { ("baby", "mother") };
        let beside = if own == "mother" { "position = \"ROP\"" } else { "fundal-height = \"31 cm\"" };
        for value in values {
            for sure in ["", "?"] {
                out.push((
                    format!("{} = {value}{sure}", key.name),
                    format!(
                        "weeks = \"37+2\"\n[{own}]\n{} = \"{value}{sure}\"\n[{other}]\n{beside}\n",
                        key.name
                    ),
                ));
            }
        }
    }
    assert!(out.len() > 900, "{}", out.len());
    out
}

/// Pictures, guides and slips in a draft: asked for, marked, and the English beside them.
#[test]
fn every_document_in_a_draft_is_marked_and_stands_beside_the_english() {
    let here = tempfile::tempdir().unwrap();
    let exam = path("examples/head-down-left.toml").display().to_string();
    for (lang, word) in [("es", "izquierda"), ("fr", "gauche")] {
        let words = Words::load_for(lang, &[Part::Family]).unwrap();
        let note = words.say("draft-note", &[]).unwrap();
        let note: String = note.split(' ').take(2).collect::<Vec<_>>().join(" ");
        for (name, arguments) in [
            ("picture.svg", vec!["draw", &exam, "-o", "picture.svg"]),
            ("guide.svg", vec!["skin-guide", &exam, "-o", "guide.svg"]),
            ("slip.svg", vec!["note", &exam, "-o", "slip.svg"]),
            ("plate.svg", vec!["plate", "breeches", "--style", "line", "-o", "plate.svg"]),
            ("stamp.svg", vec!["draw", &exam, "--style", "sketch", "-o", "stamp.svg"]),
        ] {
            let mut arguments = arguments;
            arguments.extend(["--lang", lang, "--force"]);
            let output = run_in(here.path(), &arguments, b"");
            assert_eq!(output.status.code(), Some(2), "{name}");
            assert!(printed(&output).contains("--draft"), "{name}");
            assert!(!here.path().join(name).exists());
            arguments.push("--draft");
            let output = run_in(here.path(), &arguments, b"");
            assert_eq!(output.status.code(), Some(0), "{name}: {}", printed(&output));
            let svg = std::fs::read_to_string(here.path().join(name))
                .unwrap_or_else(|_| panic!("{name}: {}", printed(&output)));
            assert!(svg.contains(word) && svg.contains("left"), "{name} in {lang}");
            assert!(svg.contains(&note) && svg.contains("is a draft in"), "{name} in {lang}: {note}");
            std::fs::remove_file(here.path().join(name)).unwrap();
        }
        // For programs: each remark in the language, and in English.
        let bleeding = path("examples/bleeding.toml").display().to_string();
        let json =
            printed(&run_in(here.path(), &["check", "--json", &bleeding, "--lang", lang, "--draft"], b""));
        assert!(json.contains(&format!("\"lang\":\"{lang}\"")), "{json}");
        assert!(json.contains("\"english\":\"She reports bleeding. Get help"), "{json}");
        assert!(!json.contains("\"text\":\"She reports bleeding"), "{json}");
        let check = ["check", &exam, "--lang", lang, "--draft"];
        let told = printed(&run_in(here.path(), &check, b""));
        assert!(told.starts_with(&words.say("draft-mark", &[]).unwrap()), "{told}");
        assert!(told.find(word).unwrap() < told.find("back to her left").unwrap(), "{told}");
    }
}

#[test]
fn no_language_has_long_sentences_codes_or_comfort() {
    let never: BTreeMap<&str, &[&str]> = BTreeMap::from([
        (
            "es",
            &[
                "sano",
                "sana",
                "normal",
                "bien",
                "perfecto",
                "grande",
                "niño",
                "niña",
                "peso",
                "percentil",
                "encajado",
            ][..],
        ),
        (
            "fr",
            &[
                "sain",
                "normal",
                "normale",
                "bien",
                "parfait",
                "gros",
                "garçon",
                "fille",
                "poids",
                "percentile",
                "engagé",
            ][..],
        ),
        (
            "pt",
            &[
                "saudável",
                "normal",
                "bem",
                "perfeito",
                "grande",
                "menino",
                "menina",
                "peso",
                "percentil",
                "encaixado",
            ][..],
        ),
        (
            "pl",
            &[
                "zdrowe",
                "normalne",
                "normalny",
                "dobrze",
                "dobre",
                "duże",
                "chłopiec",
                "dziewczynka",
                "waga",
                "centyl",
            ][..],
        ),
    ]);
    for language in &LANGUAGES {
        for (id, text) in messages(language.text).into_iter().filter(|(id, _)| id.starts_with("family-")) {
            for sentence in text.split_inclusive(['.', '?', ':']) {
                let words =
                    sentence.split_whitespace().filter(|w| w.chars().any(char::is_alphanumeric)).count();
                assert!(words <= 20, "{}: {id} has a sentence of {words} words", language.tag);
            }
            let lower = text.to_lowercase();
            let plain: Vec<&str> = lower.split(|c: char| !c.is_alphanumeric()).collect();
            for word in never.get(language.tag).copied().unwrap_or_default() {
                assert!(!plain.contains(word), "{}: {id} says `{word}`", language.tag);
            }
            let code = |word: &str| word.len() >= 3 && word.chars().all(|c| c.is_ascii_uppercase());
            assert!(
                !text.split(|c: char| !c.is_alphanumeric()).any(code),
                "{}: {id} has a code",
                language.tag
            );
        }
    }
}

/// A shipped layout on a paper, or the one with more sides that it gives way to, where these words are too many for it.
fn with_room(shipped: Shipped, paper: &str, content: &Content, words: &Words, fonts: &Fonts) -> Layout {
    let read = |shipped: Shipped| shipped.read().unwrap().on_paper(paper).unwrap();
    let layout = read(shipped);
    let frames = vec![figure::frame(figure::Style::Soft); layout.pictures().len()];
    match (layout.scales(&frames, content, words, fonts), shipped.longer()) {
        (Err(SheetError::DoesNotFit { .. }), Some(longer)) => read(longer),
        (Err(fault), _) => panic!("{} on {paper} in {}: {fault}", shipped.name, words.lang()),
        (Ok(_), _) => layout,
    }
}

#[test]
fn every_example_has_its_page_in_every_language_with_whatever_is_asked_for() {
    let fonts = Fonts::load().unwrap();
    let mut gave_way = 0;
    for language in &LANGUAGES {
        let words = Words::load_for(language.tag, &[Part::Family]).unwrap();
        for (name, exam, reckoning) in examples() {
            for (invite_listening, numbers) in [(false, false), (true, false), (false, true), (true, true)] {
                let asked = Asked { invite_listening, numbers };
                let mut content = family::content(&exam, &reckoning, &clinic(), asked, &words).unwrap();
                if !words.is_signed() {
                    let note = Block::new(Kind::Emphasis, words.say("draft-note", &[]).unwrap());
                    content.blocks.get_mut("family-use").unwrap().insert(0, note);
                }
                for shipped in [FAMILY_PAGE, LARGE_PRINT, PICTURE_FIRST] {
                    for paper in ["a4", "letter", "a3"] {
                        let layout = with_room(shipped, paper, &content, &words, &fonts);
                        gave_way += usize::from(layout.file() != format!("{}.toml", shipped.name));
                        let frames = vec![figure::frame(figure::Style::Soft); layout.pictures().len()];
                        let what = format!("{name} in {}, {} on {paper}", language.tag, layout.file());
                        let scales = layout.scales(&frames, &content, &words, &fonts);
                        assert!(scales.is_ok(), "{what}, {asked:?}: {scales:?}");
                        // Drawn and looked at where the words are most.
                        if !(invite_listening && numbers) || paper == "a3" || language.tag == "en-US" {
                            continue;
                        }
                        let sheets = sides(&layout, (&exam, &reckoning), &content, &words, &fonts)
                            .unwrap_or_else(|fault| panic!("{what}: {fault}"));
                        for sheet in &sheets {
                            crate::layouts::assert_is_sound(&what, sheet, 12.0, &fonts);
                            assert!(texts(sheet).iter().all(|text| text.lang == language.tag), "{what}");
                        }
                    }
                }
            }
        }
    }
    assert!(gave_way > 0, "no page was too full: the longer ones are not tried");
}

/// Letters outside braces: what is said, not the names of values.
fn letters(text: &str) -> usize {
    let mut depth = 0;
    let said = |c: &char| {
        depth += i32::from(*c == '{') - i32::from(*c == '}');
        depth == 0 && c.is_alphabetic()
    };
    text.chars().filter(said).count()
}

/// Accents on every vowel, and two fifths more letters.
fn longer(text: &str) -> String {
    let accent = |c: char| match c {
        'a' => 'å',
        'e' => 'ë',
        'i' => 'ï',
        'o' => 'ø',
        'u' => 'ü',
        other => other,
    };
    let mut out = String::new();
    let mut depth = 0;
    let mut letters = 0;
    for c in text.chars() {
        depth += i32::from(c == '{') - i32::from(c == '}');
        if depth > 0 || c == '}' {
            out.push(c);
            continue;
        }
        out.push(accent(c));
        letters += i32::from(c.is_alphabetic());
        if c.is_alphabetic() && letters % 5 < 2 {
            out.push(accent(c.to_ascii_lowercase()));
        }
    }
    out
}

#[test]
fn a_language_two_fifths_longer_fits_or_says_which_box_is_full() {
    let english = messages(shipped("en").text);
    let mut file = String::new();
    let (mut before, mut after) = (0, 0);
    for (id, text) in english.iter().filter(|(id, _)| Part::of(id) == Some(Part::Family)) {
        let made = if id == "decimal-sign" { ",".to_owned() } else { longer(text) };
        if id.starts_with("family-") {
            before += letters(text);
            after += letters(&made);
        }
        file.push_str(&format!("{id} = {made}\n"));
    }
    assert!(after * 100 >= before * 139, "{before} letters became {after}");
    let words = Words::from_text("en-XA", &file).unwrap();
    let fonts = Fonts::load().unwrap();
    let mut fitted = 0;
    for (name, exam, reckoning) in examples() {
        let content = family::content(&exam, &reckoning, &clinic(), Asked::default(), &words).unwrap();
        for paper in ["a4", "letter"] {
            for shipped in crate::layouts::FAMILY.into_iter().filter(|shipped| shipped.name != COLOURING.name)
            {
                let layout = shipped.read().unwrap().on_paper(paper).unwrap();
                let what = format!("{name}, {} on {paper}", shipped.name);
                match sides(&layout, (&exam, &reckoning), &content, &words, &fonts) {
                    Ok(sheets) => {
                        fitted += 1;
                        for sheet in &sheets {
                            crate::layouts::assert_is_sound(&what, sheet, 12.0, &fonts);
                        }
                    }
                    Err(fault) => {
                        assert!(fault.contains("box `"), "{what}: {fault}");
                        assert!(!shipped.name.ends_with("-long"), "{what}: {fault}");
                    }
                }
            }
        }
    }
    assert!(fitted >= examples().len() * 4, "{fitted}");
}

#[test]
fn a_draft_is_asked_for_marked_and_stands_beside_the_english() {
    let here = tempfile::tempdir().unwrap();
    let to = here.path().join("page.svg").display().to_string();
    let handout = |more: &[&str]| {
        let mut arguments = vec!["handout", "examples/head-down-left.toml", "--force", "-o", &to];
        arguments.extend(more);
        let output = run(&arguments);
        (output.status.code(), printed(&output))
    };
    for tag in ["es", "fr", "pt", "pl"] {
        let (code, told) = handout(&["--lang", tag]);
        assert_eq!(code, Some(2));
        assert!(told.contains("is a draft") && told.contains("--draft"), "{told}");
        assert!(!std::path::Path::new(&to).exists());
        let (code, told) = handout(&["--lang", tag, "--draft"]);
        assert_eq!(code, Some(0), "{told}");
        let mut svg = std::fs::read_to_string(&to).unwrap();
        std::fs::remove_file(&to).unwrap();
        assert!(svg.contains("width=\"420mm\""), "the English stands beside it");
        // Words that are too many for one side stand on two.
        svg.extend(std::fs::read_to_string(here.path().join("page-2.svg")));
        let words = Words::load_for(tag, &[Part::Family]).unwrap();
        let note = words.say("draft-note", &[]).unwrap();
        let start: String = note.split(' ').take(3).collect::<Vec<_>>().join(" ");
        assert!(svg.contains(&start) && svg.contains("is a draft in"), "{tag}");
        let _ = std::fs::remove_file(here.path().join("page-2.svg"));
    }
    // Two languages without a draft, and what cannot stand together.
    let (code, told) = handout(&["--lang", "en-US,en"]);
    assert_eq!(code, Some(0), "{told}");
    for (lang, draft, expected) in [
        ("es,fr", true, "both are drafts"),
        ("en,en", false, "name two languages, or one"),
        ("en,es,fr", true, "two languages stand side by side at most"),
        ("en", true, "is no draft"),
        ("de", true, "is not shipped; there is en, en-US, es, fr, pt, pl"),
    ] {
        let mut more = vec!["--lang", lang];
        more.extend(draft.then_some("--draft"));
        let (code, told) = handout(&more);
        assert_eq!(code, Some(2), "{lang}");
        assert!(told.contains(expected), "{lang}: {told}");
    }
    // What a language has no words for is refused in it, draft or not.
    for draft in [&[][..], &["--draft"]] {
        let exam = "examples/head-down-left.toml";
        let mut note = vec!["note", exam, "--as", "fhir", "--lang", "es"];
        note.extend(draft);
        let told = printed(&run(&note));
        assert!(told.contains("language `es` has no words for records; here there is en, en-US"), "{told}");
    }
    let told = printed(&run(&["check", "examples/head-down-left.toml", "--lang", "pt", "--draft"]));
    assert!(
        told.contains("language `pt` has no words for ") && told.contains("there is en, en-US, es, fr"),
        "{told}"
    );
    let told = printed(&run(&["cases", "--lang", "fr", "-o", "cases/"]));
    assert!(
        told.contains("language `fr` has no words for practice cases; here there is en, en-US"),
        "{told}"
    );
}

#[test]
fn numbers_take_the_decimal_sign_of_their_language() {
    for (tag, shown) in
        [("en", "33.5"), ("en-US", "33.5"), ("es", "33,5"), ("fr", "33,5"), ("pt", "33,5"), ("pl", "33,5")]
    {
        let words = Words::load_for(tag, &[Part::Family]).unwrap();
        assert_eq!(words.number(33.5, 1).unwrap(), shown);
        assert_eq!(words.number(34.0, 1).unwrap(), "34");
        assert_eq!(words.number(140.4, 0).unwrap(), "140");
    }
}

#[test]
fn american_words_are_said_as_americans_say_them() {
    let words = Words::load("en-US").unwrap();
    let mut e = exam(Some((38, 0)));
    e.babies[0].heart = found(HeartHeard::At(Place { across: None, height: None }));
    let c = lying(Lie::Longitudinal, Some(Presentation::Breech));
    let content = content_in(&e, &[c], &clinic(), Asked::default(), &words);
    let all: String = content.blocks.values().flatten().map(|block| format!("{} ", block.text)).collect();
    assert!(all.contains("100.4 °F (38 °C)") && all.contains("labor starts"), "{all}");
    for british in ["labour", "towards", "olour", "bump", "aesarean"] {
        assert!(!all.contains(british), "{british}");
    }
    // What it does not say otherwise is the English.
    let itching = words.say("remark-itching", &[]).unwrap();
    assert_eq!(itching, Words::load("en").unwrap().say("remark-itching", &[]).unwrap());
}
