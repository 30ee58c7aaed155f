//! The vocabulary for a form. In: nothing. Out: as JSON, every key in the order of the hands with its group, its words and the
//! states it may be in; and the messages of the page in a language.

use super::{Outcome, exit, load};
use crate::chart::said;
use crate::exam::Position;
use crate::exam::keys::{KEYS, Key, Scope};
use crate::exam::words::{StateWord, Vocabulary};
use crate::words::{Part, Words};
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

/// The keys in their groups, and `messages` of the page: those whose names begin with `desk-`, `group-` and `grade-`, with
/// `{name}` where a value goes.
pub fn run(lang: &str) -> Outcome {
    let words = match Words::load_for(lang, &[Part::Family, Part::Check, Part::Desk]) {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    let groups = said::groups();
    let keys: Vec<Entry> = groups
        .iter()
        .flat_map(|(group, names)| {
            names
                .iter()
                .filter_map(|name| KEYS.iter().find(|key| key.name == *name))
                .map(|key| entry(key, group))
        })
        .collect();
    let mut messages = BTreeMap::new();
    for id in words.ids().filter(|id| ["desk-", "group-", "grade-"].iter().any(|start| id.starts_with(start)))
    {
        let values: Vec<(&str, &str)> = HOLES.to_vec();
        match words.say(id, &values) {
            Ok(text) => messages.insert(id.to_owned(), text),
            Err(fault) => return load::wordless(&fault),
        };
    }
    let out = serde_json::json!({ "lang": words.lang(), "keys": keys, "messages": messages });
    match serde_json::to_string(&out) {
        Ok(text) => Outcome { text, ..Outcome::default() },
        Err(fault) => {
            Outcome { notes: format!("handspan: {fault}\n"), code: exit::FAILED, ..Outcome::default() }
        }
    }
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

fn entry(key: &'static Key, group: &'static str) -> Entry {
    Entry {
        scope: match key.scope {
            Scope::Top => "top",
            Scope::Mother => "mother",
            Scope::Baby => "baby",
        },
        name: key.name,
        group,
        words: (key.words)()
            .into_iter()
            .map(|row| Choice {
                word: row.word,
                means: (key.name == "position")
                    .then(|| Position::find(row.word))
                    .flatten()
                    .map(Position::words),
            })
            .collect(),
        form: key.form,
        list: key.list,
        number: key.number,
        absent: key.absent.and_then(StateWord::word),
        not_tried: key.not_tried.and_then(StateWord::word),
        states: key.scope != Scope::Top,
    }
}
