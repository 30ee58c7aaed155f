//! What quiets a mention: a denial, an earlier time, advice. In: the text, its words, and which of them. Out: yes or no.

use super::{About, Token};

/// A denial of the word that follows, carried on by a stroke, `or` and `nor`.
const NO: &[&str] = &[
    "no", "nil", "neg", "negative", "not", "without", "never", "non", "sin", "niega", "ninguna", "ningún",
    "pas", "aucun", "aucune", "ni", "sans",
];
/// A denial of a whole list, to the end of the sentence.
const DENIES: &[&str] = &["denies", "denied", "denying", "nie", "réfute"];
/// After the word: it is denied.
const AFTER: &[&str] = &["nil", "none", "neg", "negative", "no", "denied", "negativo", "négatif"];
/// Idioms: a word, and what after it makes it another thing.
const IDIOMS: &[(&str, &[&str])] = &[
    ("fell", &["pregnant", "asleep", "behind", "out"]),
    ("fit", &["and", "well", "for", "in", "to", "with", "as", "healthy"]),
    ("fallen", &["pregnant", "asleep", "behind", "out"]),
    ("green", &["notes", "note", "book", "folder", "top", "pathway", "card", "light"]),
];
/// What may stand between a denial and its word.
const BETWEEN: &[&str] = &[
    "any",
    "further",
    "more",
    "new",
    "c",
    "o",
    "complaints",
    "complaint",
    "of",
    "signs",
    "sign",
    "evidence",
    "hay",
    "refiere",
    "de",
    "d",
    "du",
    "des",
    "s",
    "x",
    "fresh",
    "visible",
    "has",
    "had",
    "been",
];
/// What carries a denial on.
const CARRIES: &[&str] = &["or", "nor", "ni", "o", "ou"];
/// What ends a denial of a list.
const ENDS: &[&str] = &["but", "reports", "reporting", "except", "however", "pero", "mais", "then", "now"];
/// An earlier time, or somebody else: before the word, in the same part of the sentence.
const PAST: &[&str] = &[
    "prev",
    "previous",
    "previously",
    "past",
    "hx",
    "history",
    "fhx",
    "family",
    "pmh",
    "pmhx",
    "poh",
    "obhx",
    "h/o",
    "last",
    "mother's",
    "sister's",
    "antecedente",
    "antecedentes",
    "previo",
    "previa",
    "anterior",
    "antécédent",
    "antécédents",
];
/// Advice, plans and talk: before the word, in the same sentence.
const ADVICE: &[&str] = &[
    "advised",
    "advise",
    "advice",
    "advising",
    "discussed",
    "discuss",
    "if",
    "aware",
    "leaflet",
    "explained",
    "explain",
    "warned",
    "info",
    "information",
    "counselled",
    "taught",
    "risk",
    "risks",
    "re",
    "regarding",
    "about",
    "asked",
    "when",
    "should",
    "report",
    "safety",
    "si",
    "aconsejado",
    "aconsejada",
    "explicado",
    "conseils",
    "conseillé",
    "expliqué",
    "en cas",
];

pub fn is_quiet(
    text: &str,
    tokens: &[Token<'_>],
    lower: &[String],
    at: usize,
    length: usize,
    about: About,
) -> bool {
    let next = lower.get(at + length).map_or("", String::as_str);
    // `keeping fit`: well.
    let before = at.checked_sub(1).map_or("", |before| lower[before].as_str());
    if lower[at] == "fit" && ["feels", "keeping", "keeps", "feeling", "is", "very", "fully"].contains(&before)
    {
        return true;
    }
    if IDIOMS.iter().any(|(word, after)| lower[at] == *word && after.contains(&next)) {
        return true;
    }
    let sentence = start_of(text, tokens, at, &['.', ';', '\n', '!', '?']);
    if denied(text, tokens, lower, at, length, sentence) {
        return true;
    }
    // History never silences a cut or a rupture of the womb; what a death or a device is, is asked whenever it was.
    let timeless = about == About::WombCut || tokens[at].text == "IUD";
    let advised = (sentence..at).any(|i| ADVICE.contains(&lower[i].as_str()));
    if advised && about != About::WombCut {
        return true;
    }
    if timeless {
        return false;
    }
    let part = start_of(text, tokens, at, &['.', ';', '\n', '!', '?', ',']);
    let past = (part..at).any(|i| {
        PAST.contains(&lower[i].as_str())
            || (lower[i] == "h" && lower.get(i + 1).is_some_and(|next| next == "o"))
    });
    let year = (part..tokens.len().min(at + length + 2))
        .take_while(|i| *i < at || near(text, tokens, at + length - 1, *i))
        .any(|i| {
            lower[i].len() == 4
                && (lower[i].starts_with("19") || lower[i].starts_with("20"))
                && lower[i].parse::<u16>().is_ok()
        });
    past || year
}

/// Whether word `i` stands in the same part of the sentence as word `from`.
fn near(text: &str, tokens: &[Token<'_>], from: usize, i: usize) -> bool {
    i <= from || !text[tokens[from].end..tokens[i].start].contains(['.', ';', '\n', ','])
}

/// The first word of the part that `marks` end, in which word `at` stands.
fn start_of(text: &str, tokens: &[Token<'_>], at: usize, marks: &[char]) -> usize {
    (1..=at)
        .rev()
        .find(|i| {
            let between = &text[tokens[i - 1].end..tokens[*i].start];
            // A point between digits is of a number.
            between.contains(marks)
                && !(between == "." && tokens[i - 1].text.bytes().all(|b| b.is_ascii_digit()))
        })
        .unwrap_or(0)
}

fn denied(
    text: &str,
    tokens: &[Token<'_>],
    lower: &[String],
    at: usize,
    length: usize,
    sentence: usize,
) -> bool {
    let between = |i: usize| &text[tokens[i - 1].end..tokens[i].start];
    // A minus before the word.
    let before = &text[..tokens[at].start];
    if before.ends_with(['-', '\u{2212}', '\u{2013}'])
        && before[..before.len() - before.chars().next_back().map_or(0, char::len_utf8)]
            .chars()
            .next_back()
            .is_none_or(char::is_whitespace)
    {
        return true;
    }
    // `PVB nil`.
    let next = at + length;
    if tokens.get(next).is_some_and(|token| {
        AFTER.contains(&lower[next].as_str())
            && text[tokens[next - 1].end..token.start].chars().all(|c| matches!(c, ' ' | ':' | '-' | '='))
            // `headache no PVB`: the denial belongs to what follows it.
            && (lower[next] != "no" || tokens.get(next + 1).is_none() || text[token.end..].trim_start().starts_with([',', '.', ';']))
    }) {
        return true;
    }
    // `denies A, B, C`.
    let plus = |from: usize| text[tokens[from].end..tokens[at].start].contains('+');
    if let Some(denies) = (sentence..at).rev().find(|i| DENIES.contains(&lower[*i].as_str()))
        && !(denies..at).any(|i| ENDS.contains(&lower[i].as_str()))
        && !plus(denies)
    {
        return true;
    }
    // `no A`, `no A/B or C`: back over what the denial reaches.
    let mut i = at;
    let mut carried = true;
    while i > sentence {
        let gap = between(i);
        if gap.contains([',', '&', '+', ':', '(', ')']) {
            return false;
        }
        let stroke = gap.contains('/');
        i -= 1;
        let word = lower[i].as_str();
        if NO.contains(&word) && carried {
            return true;
        }
        if ENDS.contains(&word) || word == "and" || word == "y" || word == "et" {
            return false;
        }
        if stroke || CARRIES.contains(&word) {
            carried = true;
        } else if !BETWEEN.contains(&word) {
            // A word of another finding: only a stroke or an `or` after it carries the denial over it.
            carried = i + 1 != at && carried_over(text, tokens, lower, i);
            if !carried {
                // It may be one word of a phrase: go on to the stroke before it.
                if i + 1 == at {
                    return false;
                }
            }
            carried = true;
        }
    }
    false
}

/// Whether after word `i` a stroke or an `or` follows.
fn carried_over(text: &str, tokens: &[Token<'_>], lower: &[String], i: usize) -> bool {
    let Some(next) = tokens.get(i + 1) else { return false };
    text[tokens[i].end..next.start].contains('/') || CARRIES.contains(&lower[i + 1].as_str())
}
