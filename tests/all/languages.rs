//! The languages against the English: the same messages with the same values, nothing unused; drafts marked and beside the
//! English; sides that are never swapped; and a made-up language, two fifths longer, that still fits.

use crate::layouts::{examples, sides};
use crate::pages::{back, backs, clinic, content_in, lying, texts};
use crate::shared::{path, run, rust_files, said};
use crate::stand_in::{exam, found};
use handspan::exam::{Conclusion, Finding, HeartHeard, Lie, Place, Presentation};
use handspan::figure;
use handspan::fonts::Fonts;
use handspan::sheet::family::{self, Asked};
use handspan::sheet::{
    Block, Content, FAMILY_PAGE, FAMILY_PAGE_LONG, Kind, LARGE_PRINT, LARGE_PRINT_LONG, Layout,
    PICTURE_FIRST, PICTURE_FIRST_LONG, SheetError, Shipped,
};
use handspan::units::MotherSide::{Left, Right};
use handspan::words::{LANGUAGES, Language, Words};
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

/// What a page for the family may say.
fn is_for_families(id: &str) -> bool {
    ["family-", "colouring-", "sign-", "label-", "your-", "her-", "told-lump", "told-limbs", "told-brim", "decimal-sign", "language-"]
        .iter()
        .any(|start| id.starts_with(start))
        // Words of the cut stand on plates alone.
        && !["her-front", "her-back", "label-axis", "label-spine", "label-sacrum", "label-wall"].contains(&id)
        && !["her-left-", "her-right-"].iter().any(|start| id.starts_with(start))
}

#[test]
fn every_language_has_the_messages_of_the_english_with_the_same_values() {
    let english = messages(shipped("en").text);
    for language in &LANGUAGES[1..] {
        let own = messages(language.text);
        for (id, text) in &own {
            if id.starts_with("draft-") && !language.is_whole {
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
        for id in english.keys().filter(|id| is_for_families(id)) {
            assert!(own.contains_key(id), "{}: `{id}` is missing", language.tag);
        }
        for id in own.keys().filter(|id| !id.starts_with("draft-")) {
            assert!(is_for_families(id), "{}: `{id}` is not for families", language.tag);
        }
        assert_eq!(own["language-signed"], "no");
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
    ] {
        let words = Words::load_for_families(tag).unwrap();
        let told = |c: Conclusion| {
            let mut e = exam(Some((27, 0)));
            e.babies[0].limbs = Finding::Absent;
            let content = content_in(&e, &[c], &clinic(), Asked::default(), &words);
            content.texts("family-found").join(" ")
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
        e.babies[0].limbs = Finding::Absent;
        let c = Conclusion {
            back: Some(back(Some(Left), None)),
            ..lying(Lie::Longitudinal, Some(Presentation::Cephalic))
        };
        let content = content_in(&e, &[c], &clinic(), Asked::default(), &words);
        let text = content.texts("family-found").join(" ");
        assert!(text.find(left).unwrap() < text.find(right).unwrap(), "{tag}: {text}");
        let label = |id: &str| words.say(id, &[]).unwrap().to_lowercase();
        assert!(label("your-left").contains(left) && label("your-right").contains(right), "{tag}");
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
        let words = Words::load_for_families(language.tag).unwrap();
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
    for (id, text) in english.iter().filter(|(id, _)| is_for_families(id)) {
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
            for shipped in [
                FAMILY_PAGE,
                FAMILY_PAGE_LONG,
                LARGE_PRINT,
                LARGE_PRINT_LONG,
                PICTURE_FIRST,
                PICTURE_FIRST_LONG,
            ] {
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
        (output.status.code(), said(&output))
    };
    for tag in ["es", "fr"] {
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
        let words = Words::load_for_families(tag).unwrap();
        let note = words.say("draft-note", &[]).unwrap();
        let start: String = note.split_whitespace().take(3).collect::<Vec<_>>().join(" ");
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
        ("de", true, "is not shipped; there is en, en-US, es, fr"),
    ] {
        let mut more = vec!["--lang", lang];
        more.extend(draft.then_some("--draft"));
        let (code, told) = handout(&more);
        assert_eq!(code, Some(2), "{lang}");
        assert!(told.contains(expected), "{lang}: {told}");
    }
    // Elsewhere a language of the family page alone is refused: chart codes are built otherwise in it.
    let output = run(&["note", "examples/head-down-left.toml", "--lang", "es"]);
    assert!(
        said(&output).contains("has the words of the family page only; here there is en, en-US"),
        "{}",
        said(&output)
    );
}

#[test]
fn numbers_take_the_decimal_sign_of_their_language() {
    for (tag, shown) in [("en", "33.5"), ("en-US", "33.5"), ("es", "33,5"), ("fr", "33,5")] {
        let words = Words::load_for_families(tag).unwrap();
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
    assert_eq!(words.say("remark-bleeding", &[]), Words::load("en").unwrap().say("remark-bleeding", &[]));
}
