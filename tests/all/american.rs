//! American English. In: the messages of both. Out: nothing in American output is spelled or said the British way, and what it
//! says otherwise names the same values.

use handspan::commands::{Check, Command, Request, Source, run};
use handspan::report::Look;
use std::collections::{BTreeMap, BTreeSet};

/// Words that American output has not. Canonical words of visit files (`word-`) are the same in both.
const BRITISH: [&str; 14] = [
    "labour",
    "centile",
    "centiles",
    "caesarean",
    "judgement",
    "waters",
    "towards",
    "fontanelle",
    "liquor",
    "haemorrhage",
    "oedema",
    "colour",
    "foetal",
    "foetus",
];

/// Messages by their names: first lines and what goes on under them.
fn messages(text: &str) -> BTreeMap<String, String> {
    let mut all: BTreeMap<String, String> = BTreeMap::new();
    let mut name = String::new();
    for line in text.lines() {
        match line.split_once(" =") {
            Some((key, rest)) if line.starts_with(|c: char| c.is_ascii_lowercase()) => {
                key.clone_into(&mut name);
                all.insert(name.clone(), rest.to_owned());
            }
            _ if line.starts_with([' ', '}']) => {
                if let Some(message) = all.get_mut(&name) {
                    message.push_str(&format!("\n{line}"));
                }
            }
            _ => {}
        }
    }
    all
}

/// The values that a message takes.
fn values(message: &str) -> BTreeSet<String> {
    let names = message.split('$').skip(1);
    names
        .map(|rest| {
            rest.split(|c: char| !c.is_ascii_alphanumeric() && c != '_').next().unwrap_or("").to_owned()
        })
        .collect()
}

/// What is read by people: no names of values.
fn prose(message: &str) -> String {
    let mut parts = message.split('$');
    let mut prose = parts.next().unwrap_or("").to_owned();
    for part in parts {
        prose.push_str(part.trim_start_matches(|c: char| c.is_ascii_alphanumeric() || c == '_' || c == '-'));
    }
    prose.to_lowercase()
}

fn both() -> (BTreeMap<String, String>, BTreeMap<String, String>) {
    let british = messages(include_str!("../../layouts/words/en.ftl"));
    let american = messages(include_str!("../../layouts/words/en-US.ftl"));
    (british, american)
}

#[test]
fn american_output_says_nothing_the_british_way() {
    let (british, american) = both();
    assert!(british.len() > 700, "{}", british.len());
    let mut found = vec![];
    for (name, message) in british.iter().filter(|(name, _)| !name.starts_with("word-")) {
        let said = prose(american.get(name).unwrap_or(message));
        let words = said.split(|c: char| !c.is_alphanumeric());
        found.extend(words.filter(|word| BRITISH.contains(word)).map(|word| format!("{name}: {word}")));
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn american_messages_take_the_same_values() {
    let (british, american) = both();
    assert!(american.len() > 60, "{}", american.len());
    for (name, message) in &american {
        if let Some(same) = british.get(name) {
            assert_eq!(values(message), values(same), "{name}");
        }
    }
}

/// Words of visit files are British in both; what is said of them to an American reader is not.
#[test]
fn a_visit_is_said_back_in_american_words() {
    for labour in ["in labour", "not in labour", "early labour"] {
        let text = format!(
            "weeks = \"36+0\"\n[mother]\nreports = [\"fits\", \"waters broken\", \"tightenings\"]\nlabour = \"{labour}\"\n\
             operations = \"caesarean\"\nwater = \"much\"\ntape-unfit = [\"much water\"]\n[baby]\nback = \"left, towards her spine\"\n\
             heart-rate = \"165\"\n"
        );
        let check = Check {
            exams: vec![Source::new("a.toml", text.as_str())],
            lang: "en-US".to_owned(),
            ..Check::default()
        };
        let said = run(&Request { command: Command::Check(check), look: Look::Plain }).text;
        // (Ids are the same in every language.)
        let read: Vec<&str> = said.split(['[', ']']).step_by(2).collect();
        // (What agrees with a position fits it in both.)
        let read = read.join(" ").to_lowercase().replace("what was found fits", "");
        for word in read.split(|c: char| !c.is_alphanumeric()) {
            assert!(!BRITISH.contains(&word) && word != "fits", "`{word}` in {said}");
        }
        assert!(read.contains("seizures") && read.contains("labor") && read.contains("cesarean"), "{said}");
    }
}
