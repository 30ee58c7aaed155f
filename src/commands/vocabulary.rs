//! The vocabulary for a form. In: nothing. Out: as JSON, every key in the order of the hands with its group, its words and the
//! states it may be in; the messages of the page in a language, how it says those words, and the languages to choose from.

use super::{Outcome, exit, load};
use crate::chart::said;
use crate::exam::keys::{KEYS, Key, Scope};
use crate::exam::words::{StateWord, Vocabulary};
use crate::exam::{Position, spoken};
use crate::words::{LANGUAGES, Language, Part, Words, WordsError};
use serde::Serialize;
use std::collections::BTreeMap;

#[derive(Serialize)]
struct Entry {
    /// `top`, `mother` or `baby`.
    scope: &'static str,
    name: &'static str,
    /// The message of the group it is told under, such as `group-grip-1`.
    group: &'static str,
    words: Vec<Choice>,
    /// The form of a value that is not in the list of words; empty: only words.
    form: &'static str,
    list: bool,
    number: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    absent: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    not_tried: Option<&'static str>,
    /// May be marked as not told, or as unsure.
    states: bool,
}

#[derive(Serialize)]
struct Choice {
    word: &'static str,
    /// What a code stands for.
    #[serde(skip_serializing_if = "Option::is_none")]
    means: Option<String>,
}

/// A language to choose.
#[derive(Serialize)]
struct Tongue {
    tag: &'static str,
    /// Its name in itself.
    name: String,
    /// Whether a native clinician has signed it; else it is a draft.
    signed: bool,
    /// Whether the page can be said in it; else the family's alone.
    desk: bool,
}

/// What a draft says of itself.
#[derive(Serialize)]
struct Draft {
    mark: String,
    note: String,
}

/// The parts of the messages that the page needs; without records, which a language may have in English alone.
const PARTS: [Part; 7] =
    [Part::Family, Part::Picture, Part::Guide, Part::Check, Part::Chart, Part::Growth, Part::Desk];

/// The keys in their groups, the languages there are, and `messages` of the page: those whose names begin with `desk-`,
/// `group-` and `grade-`, with `{name}` where a value goes. `said`: words of exams in another language.
pub fn run(lang: &str) -> Outcome {
    let words = match Words::load_for(lang, &PARTS) {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    let groups = said::groups();
    let keys: Result<Vec<Entry>, WordsError> = groups
        .iter()
        .flat_map(|(group, names)| {
            names
                .iter()
                .filter_map(|name| KEYS.iter().find(|key| key.name == *name))
                .map(|key| entry(key, group, &words))
        })
        .collect::<Result<_, _>>();
    let keys = match keys {
        Ok(keys) => keys,
        Err(fault) => return load::wordless(&fault),
    };
    let mut messages = BTreeMap::new();
    for id in words.ids().filter(|id| ["desk-", "group-", "grade-"].iter().any(|start| id.starts_with(start)))
    {
        let values: Vec<(&str, &str)> = HOLES.to_vec();
        match words.say(id, &values) {
            Ok(text) => messages.insert(id.to_owned(), text),
            Err(fault) => return load::wordless(&fault),
        };
    }
    let told = || Ok((tongues()?, draft(&words)?, said(&words)?));
    let (languages, draft, said) = match told() {
        Ok(told) => told,
        Err(fault) => return load::wordless(&fault),
    };
    let out = serde_json::json!({
        "lang": words.lang(), "draft": draft, "languages": languages, "keys": keys, "messages": messages, "said": said
    });
    match serde_json::to_string(&out) {
        Ok(text) => Outcome { text, ..Outcome::default() },
        Err(fault) => {
            Outcome { notes: format!("handspan: {fault}\n"), code: exit::FAILED, ..Outcome::default() }
        }
    }
}

/// The languages that are shipped.
fn tongues() -> Result<Vec<Tongue>, WordsError> {
    let tongue = |language: &Language| {
        let words = Words::load_for(language.tag, &[Part::Family])?;
        let desk = PARTS.iter().all(|part| language.has(*part));
        Ok(Tongue {
            tag: language.tag,
            name: words.say("language-name", &[])?,
            signed: words.is_signed(),
            desk,
        })
    };
    LANGUAGES.iter().map(tongue).collect()
}

/// Where a back lies at one side: two words together.
const BACKS: [&str; 6] = [
    "left front",
    "left lateral",
    "left, towards her spine",
    "right front",
    "right lateral",
    "right, towards her spine",
];

/// The words of exams as a language says them; none in a language of exams.
fn said(words: &Words) -> Result<BTreeMap<&'static str, String>, WordsError> {
    if words.is_of_exams() {
        return Ok(BTreeMap::new());
    }
    let of = |key: &Key| {
        let states = [key.absent.and_then(StateWord::word), key.not_tried.and_then(StateWord::word)];
        (key.words)().into_iter().map(|row| row.word).chain(states.into_iter().flatten()).collect::<Vec<_>>()
    };
    let all = KEYS.iter().flat_map(of).chain(BACKS).chain(["could not tell"]);
    all.map(|word| Ok((word, spoken::value(word, words)?))).collect()
}

fn draft(words: &Words) -> Result<Option<Draft>, WordsError> {
    if words.is_signed() {
        return Ok(None);
    }
    Ok(Some(Draft { mark: words.say("draft-mark", &[])?, note: words.say("draft-note", &[])? }))
}

/// The values that messages of the page may have; the page fills them in.
const HOLES: [(&str, &str); 7] = [
    ("count", "{count}"),
    ("seconds", "{seconds}"),
    ("file", "{file}"),
    ("number", "{number}"),
    ("value", "{value}"),
    ("name", "{name}"),
    ("version", "{version}"),
];

fn entry(key: &'static Key, group: &'static str, words: &Words) -> Result<Entry, WordsError> {
    let choice = |word: &'static str| {
        let position = (key.name == "position").then(|| Position::find(word)).flatten();
        let means = position.map(|position| spoken::position(position, words)).transpose()?;
        Ok(Choice { word, means })
    };
    Ok(Entry {
        scope: match key.scope {
            Scope::Top => "top",
            Scope::Mother => "mother",
            Scope::Baby => "baby",
        },
        name: key.name,
        group,
        words: (key.words)().into_iter().map(|row| choice(row.word)).collect::<Result<_, _>>()?,
        form: key.form,
        list: key.list,
        number: key.number,
        absent: key.absent.and_then(StateWord::word),
        not_tried: key.not_tried.and_then(StateWord::word),
        states: key.scope != Scope::Top,
    })
}
