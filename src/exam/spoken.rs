//! Findings in the words of a language. In: canonical words, as `say` makes them, and the messages of a language. Out: the same
//! in that language; what nothing says is an error.
//!
//! In a language of visit files, canonical words stay as they are.

use super::model::Position;
use super::words::Vocabulary;
use crate::words::{Words, WordsError};

type Said = Result<String, WordsError>;

/// Lengths, weights and finger-breadths: message, value, and what stands before and after the number.
const NUMBERS: [(&str, &str, &str, &str); 20] = [
    ("left-cm", "cm", "left ", " cm"),
    ("right-cm", "cm", "right ", " cm"),
    ("above-navel-cm", "cm", "", " cm above navel"),
    ("below-navel-cm", "cm", "", " cm below navel"),
    ("above-pubic-bone-cm", "cm", "", " cm above pubic bone"),
    ("cm", "cm", "", " cm"),
    ("kg", "kg", "", " kg"),
    ("celsius", "celsius", "", " C"),
    ("hours", "hours", "", " h"),
    ("seconds", "seconds", "", " s"),
    ("fingers", "fingers", "", " finger"),
    ("fingers", "fingers", "", " fingers"),
    ("fingers-above-navel", "fingers", "", " finger above navel"),
    ("fingers-above-navel", "fingers", "", " fingers above navel"),
    ("fingers-below-navel", "fingers", "", " finger below navel"),
    ("fingers-below-navel", "fingers", "", " fingers below navel"),
    ("fingers-below-xiphoid", "fingers", "", " finger below xiphoid"),
    ("fingers-below-xiphoid", "fingers", "", " fingers below xiphoid"),
    ("fingers-above-pubic-bone", "fingers", "", " finger above pubic bone"),
    ("fingers-above-pubic-bone", "fingers", "", " fingers above pubic bone"),
];

/// Canonical words, without doubt or brackets, in a language. Several are told apart by semicolons or commas.
pub fn value(canonical: &str, words: &Words) -> Said {
    // The reason was typed freely: it may hold semicolons.
    if canonical.starts_with("could not tell (") {
        return whole(canonical, words);
    }
    let each: Result<Vec<String>, WordsError> = canonical.split("; ").map(|one| whole(one, words)).collect();
    Ok(each?.join("; "))
}

/// One canonical word of a finding in the words of a chart; `None` where those are the words of a visit file.
pub fn charted(finding: &str, word: &str, words: &Words) -> Result<Option<String>, WordsError> {
    let id = format!("value-{finding}-{}", word.to_lowercase().replace(", ", "-").replace(' ', "-"));
    words.has(&id).then(|| words.say(&id, &[])).transpose()
}

/// Canonical words with doubt and brackets, as they are read of a file, in a language: its signs are said in words.
pub fn finding(canonical: &str, words: &Words) -> Said {
    let (rest, unsure) = match canonical.strip_suffix('?') {
        Some(rest) => (rest, true),
        None => (canonical, false),
    };
    let bracket =
        rest.rsplit_once(" (").and_then(|(before, inside)| Some((before, inside.strip_suffix(')')?)));
    let (said, known) = match bracket {
        // The reason was typed freely.
        Some(("could not tell", _)) => return value(canonical, words),
        Some((before, "scan")) => (words.say("value-scan", &[("value", &value(before, words)?)])?, true),
        Some((before, "vaginal examination")) => {
            (words.say("value-vaginal", &[("value", &value(before, words)?)])?, true)
        }
        Some((before, inside)) if inside.starts_with("scan ") => {
            let before = value(before, words)?;
            (words.say("value-scan-at", &[("value", &before), ("when", &inside[5..])])?, true)
        }
        _ => (value(rest, words)?, false),
    };
    if unsure && (known || !canonical.starts_with("could not tell")) {
        return words.say("value-unsure", &[("value", &said)]);
    }
    Ok(said)
}

/// A position, spelled out.
pub fn position(position: Position, words: &Words) -> Said {
    words.say(&format!("position-{}", position.code().to_lowercase()), &[])
}

/// A position in words, with its code where that can be read in one way only: LMP also means last period, and other languages
/// build their codes otherwise.
pub fn position_and_code(named: Position, words: &Words) -> Said {
    let spelled = position(named, words)?;
    if Position::from_code("LMP") == Some(named) || !words.is_of_exams() {
        return Ok(spelled);
    }
    Ok(format!("{spelled} ({})", named.code()))
}

/// Findings of a file as a remark names them, `head = fundus; back = left`: as they stand there, or each as a sentence.
pub fn findings(said: &str, words: &Words) -> Said {
    if words.is_of_exams() {
        return Ok(said.to_owned());
    }
    let mut all: Vec<(Option<&str>, String)> = vec![];
    for piece in said.split("; ") {
        match (piece.split_once(" = "), all.last_mut()) {
            (Some((key, words)), _) => all.push((Some(key), words.to_owned())),
            // A value of several goes on.
            (None, Some((_, value))) => *value = format!("{value}; {piece}"),
            (None, None) => all.push((None, piece.to_owned())),
        }
    }
    let told = |(key, canonical): &(Option<&str>, String)| match key {
        None => value(canonical, words),
        Some(key) => {
            let value = finding(canonical, words)?;
            let counted = *key == "heart-counts" || is_state(key, canonical);
            let sentence = words.say(&message(key, counted, words), &[("value", &value)])?;
            Ok(sentence.trim_end_matches('.').to_owned())
        }
    };
    let told: Result<Vec<String>, WordsError> = all.iter().map(told).collect();
    Ok(told?.join("; "))
}

/// Whether a finding of `key` is told like a state. `heart = "heard"` says no place.
pub fn is_state(key: &str, canonical: &str) -> bool {
    let heard = key == "heart" && canonical.starts_with("heard");
    heard || ["not ", "could not tell"].iter().any(|start| canonical.starts_with(start))
}

/// The message of a finding, such as `found-heart`, or that of its state.
pub fn message(key: &str, state: bool, words: &Words) -> String {
    let with_state = format!("found-{key}-state");
    if state && words.has(&with_state) { with_state } else { format!("found-{key}") }
}

fn whole(canonical: &str, words: &Words) -> Said {
    if let Some(position) = Position::WORDS.iter().find(|entry| entry.word == canonical) {
        let spelled = || self::position(position.value, words);
        return if words.is_of_exams() { Ok(canonical.to_owned()) } else { spelled() };
    }
    match word(canonical, words)? {
        Some(said) => Ok(said),
        None => parts(canonical, words),
    }
}

/// What is one word in the list of messages, or words with commas between.
fn parts(canonical: &str, words: &Words) -> Said {
    if let Some(reason) = canonical.strip_prefix("could not tell (").and_then(|rest| rest.strip_suffix(')')) {
        return words.say("word-could-not-tell-why", &[("reason", reason)]);
    }
    if canonical.contains(", ") {
        let each: Result<Vec<String>, WordsError> =
            canonical.split(", ").map(|part| whole(part, words)).collect();
        return Ok(each?.join(", "));
    }
    if let Some((low, high)) = canonical.split_once(" to ") {
        let (low, high) = (whole(low, words)?, whole(high, words)?);
        return words.say("word-range", &[("low", &low), ("high", &high)]);
    }
    for (id, name, before, after) in NUMBERS {
        let number = canonical.strip_prefix(before).and_then(|rest| rest.strip_suffix(after));
        if let Some(number) = number.filter(|number| number.parse::<f64>().is_ok()) {
            return words.say(&format!("word-{id}"), &[(name, number)]);
        }
    }
    pair(canonical, words)
}

/// Two things beside one another: a count, a date, an earlier tape, a weight at some weeks; else a bare number.
fn pair(canonical: &str, words: &Words) -> Said {
    let two = |id: &str, [first, second]: [(&str, &str); 2]| words.say(id, &[first, second]);
    if let Some((beats, seconds)) = canonical.strip_suffix(" s").and_then(|rest| rest.split_once(" in ")) {
        return two("word-count", [("beats", beats), ("seconds", seconds)]);
    }
    if let Some((weeks, date)) = canonical.split_once(" on ") {
        return two("word-scan-on", [("weeks", weeks), ("date", date)]);
    }
    if let Some((tape, weeks)) = canonical.split_once(" cm at ") {
        return two("word-tape-at", [("cm", tape), ("weeks", weeks)]);
    }
    if let Some((weight, weeks)) = canonical.strip_suffix(')').and_then(|rest| rest.split_once(" (")) {
        let weight = whole(weight, words)?;
        return two("word-weight-at", [("weight", &weight), ("weeks", weeks)]);
    }
    if let Some((weeks, tape)) = canonical.strip_suffix(" cm").and_then(|rest| rest.split_once(' ')) {
        return two("word-earlier-tape", [("weeks", weeks), ("cm", tape)]);
    }
    let bare = |c: char| c.is_ascii_digit() || "+-/.".contains(c);
    if !canonical.is_empty() && canonical.chars().all(bare) {
        return Ok(canonical.to_owned());
    }
    Err(WordsError(format!("words `{}`: nothing says `{canonical}`", words.lang())))
}

/// The message of a word of the exam language, `word-left-flank`.
fn word(canonical: &str, words: &Words) -> Result<Option<String>, WordsError> {
    let name = |c: char| if c.is_ascii_alphanumeric() { c.to_ascii_lowercase() } else { '-' };
    let id = canonical.replace(", ", " ").chars().map(name).collect::<String>();
    let id = format!("word-{id}");
    if words.has(&id) { words.say(&id, &[]).map(Some) } else { Ok(None) }
}
