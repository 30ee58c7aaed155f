//! `words`. In: nothing. Out: every key of the exam language and every word it takes, with synonyms.

use crate::exam::keys::{KEYS, Key, Scope};
use crate::exam::say::Canonical;
use crate::exam::shorthand::lexicon;
use crate::exam::words::{KnownWord, PLACE_ABBREVIATIONS, Row, StateWord, Vocabulary, is_listed};
use crate::exam::{Across, Place};

/// The whole list as text.
pub fn words() -> String {
    let mut text = String::from(
        "The words of a visit file. The first word is the one that is printed; the words after it mean the same.\n\
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
    text.push_str(&shorthand());
    text
}

/// What a line of shorthand has beside the words of a file.
fn shorthand() -> String {
    String::from(
        "\nIn one line (--say)\n  The name of a key and a value after it, or the abbreviations that `handspan words --abbreviations` lists.\n  \
         Twins: baby 1: ... baby 2: ...   Several values: with + between them.   note: free words to the end\n  \
         What can be read in two ways is asked; what has no key is kept in the note, word for word.\n",
    )
}

/// The abbreviations of the line, by region.
pub fn abbreviations() -> String {
    let rows = lexicon::rows();
    let mut regions: Vec<&str> = vec![];
    for region in rows.iter().map(|row| row.region) {
        if !regions.contains(&region) {
            regions.push(region);
        }
    }
    regions.sort_by_key(|region| (*region != "all", region.len(), *region));
    let mut text = String::from(
        "The abbreviations of a line (--say), and what is made of them. <4-45>: a number in that range.\n",
    );
    for region in regions {
        let heading = if region == "all" { "Everywhere".to_owned() } else { region.replace(' ', ", ") };
        text.push_str(&format!("\n{heading}\n"));
        for row in rows.iter().filter(|row| row.region == region) {
            let says: Vec<String> = row
                .says
                .iter()
                .map(|says| says.trim_start_matches('^').replace(" <comma>", ","))
                .filter(|says| is_listed(says))
                .collect();
            text.push_str(&format!("  {}\n    {}\n", says.join(" | "), row.means));
        }
    }
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
    let also: Vec<&str> = row.also.iter().copied().filter(|word| is_listed(word)).collect();
    if also.is_empty() { String::new() } else { format!("  = {}", also.join(", ")) }
}
