//! `words`. In: nothing. Out: every key of the exam language and every word it takes, with synonyms.

use crate::exam::keys::{KEYS, Key, Scope};
use crate::exam::say::Canonical;
use crate::exam::words::{KnownWord, PLACE_ABBREVIATIONS, Row, StateWord, Vocabulary};
use crate::exam::{Across, Place};

/// The whole list as text.
pub fn words() -> String {
    let mut text = String::from(
        "The words of an exam file. The first word is the one that is printed; the words after it mean the same.\n\
         Sides are the mother's left and right. Capitals, hyphens, \"the\", \"her\" and \"side\" make no difference.\n",
    );
    for scope in Scope::ALL {
        let heading = match scope {
            Scope::Top => "At the top of the file",
            Scope::Mother => "[mother]",
            Scope::Baby => "[baby], or [[baby]] twice for twins",
        };
        text.push_str(&format!("\n{heading}\n"));
        for key in KEYS.iter().filter(|key| key.scope == scope) {
            text.push_str(&entry(key));
        }
    }
    text.push_str("\nShort forms of places\n");
    for (short, side, height) in PLACE_ABBREVIATIONS {
        let place = Place { across: Some(Across::Side(side)), height: Some(height) };
        text.push_str(&format!("  {}  = {}\n", short.to_uppercase(), place.canonical()));
    }
    text.push_str("\nAfter any value\n");
    text.push_str("  ?  at the end: unsure\n");
    for row in KnownWord::rows() {
        text.push_str(&format!("  ({}){}\n", row.word, also(&row)));
    }
    text.push_str("\nInstead of a value, where it is listed above\n");
    for row in StateWord::rows().iter().filter(|row| Some(row.word) != StateWord::NotExamined.word()) {
        text.push_str(&format!("  {}{}\n", row.word, also(row)));
    }
    text.push_str("  What was not examined is left out.\n");
    text
}

fn entry(key: &Key) -> String {
    let list = if key.list { "; one or several" } else { "" };
    let mut text = format!("\n  {}: {}{list}\n", key.name, key.meaning);
    if !key.form.is_empty() {
        text.push_str(&format!("    {}\n", key.form));
    }
    for row in (key.words)() {
        text.push_str(&format!("    {}{}\n", row.word, also(&row)));
    }
    let states: Vec<&str> = key.states().into_iter().filter_map(StateWord::word).collect();
    if !states.is_empty() {
        text.push_str(&format!("    or: {}\n", states.join(", ")));
    }
    text
}

fn also(row: &Row) -> String {
    if row.also.is_empty() { String::new() } else { format!("  = {}", row.also.join(", ")) }
}
