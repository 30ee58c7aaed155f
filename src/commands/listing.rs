//! `words`. In: nothing. Out: every key of the exam language and every word it takes, with synonyms.

use crate::exam::keys::{KEYS, Key, Scope};
use crate::exam::say::Canonical;
use crate::exam::shorthand::leads::{AFTER_HEART, ASKS, LEADS, Of, WHOLE};
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
    text.push_str(&shorthand());
    text
}

/// What a line of shorthand has beside the words of a file.
fn shorthand() -> String {
    let mut text = String::from(
        "\nIn one line of shorthand (--say)\n  The name of a key, or one of these, and a value after it:\n",
    );
    let keys = |of: &[Of]| of.iter().map(|(_, name)| *name).collect::<Vec<_>>().join(", ");
    for lead in LEADS {
        text.push_str(&format!("    {}  {}\n", lead.said.join(", "), keys(lead.keys)));
    }
    text.push_str("  By themselves:\n");
    for whole in WHOLE {
        let means: Vec<String> =
            whole.means.iter().map(|((_, name), value)| format!("{name} {value}")).collect();
        text.push_str(&format!("    {}  {}\n", whole.said, means.join(", ").trim_end()));
    }
    text.push_str("    2/5 palp  head-above-brim\n    37+0, 37/40, 37 weeks  weeks\n");
    text.push_str("    the words of position, presentation, lie, descent, attitude, legs, heart-with, operations, skin\n");
    text.push_str(&format!("  After the heart, without a word before them: {}\n", keys(AFTER_HEART)));
    text.push_str("  Twins: / baby 1: ... / baby 2: ...   Several values: with + between them.   note: free words to the end\n");
    text.push_str("  Asked, because they can be read in two ways:\n");
    for ask in ASKS {
        text.push_str(&format!("    {}  {}; say {}\n", ask.said, ask.why, ask.instead));
    }
    text.push_str("    2/5  without palp; FH without a number; 37.2; dates in numbers such as 3/4/26\n");
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
