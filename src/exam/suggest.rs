//! What a slip of a word was meant to be. In: a text that is no word, and the words that may stand there. Out: the one that is
//! meant; or that nobody can tell; or that a side hangs on it, which is never guessed.
//!
//! A suggestion is one keystroke from being accepted. So none adds, drops or changes a side of the mother or a part of the
//! baby, and none is made where two are as near.

use super::model::Position;
use super::words::{PLACE_ABBREVIATIONS, Row, Vocabulary, fold};

/// What can be said of a text that is no word here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Suggestion {
    /// This word is meant.
    Word(&'static str),
    /// It may be a side.
    Side,
    /// Nothing is near, or two are as near.
    Nothing,
}

/// What is said where a side is not clear.
pub const SIDE_NEVER_GUESSED: &str = "a side is never guessed: write left or right";

/// Longer texts are not slips of a word, in bytes.
const LONGEST_SLIP: usize = 60;
/// Below this likeness a suggestion would only puzzle.
const NEAR_ENOUGH: f64 = 0.6;
/// More slips than this are another word.
const MOST_SLIPS: usize = 2;
/// Fewer letters are no beginning of a word.
const SHORTEST_BEGINNING: usize = 3;

/// Words that are a side of the mother.
const SIDES: [&str; 6] = ["left", "right", "l", "r", "lt", "rt"];
/// Words that are a part of the baby, what else is felt and heard, and which way it is turned.
const PARTS: [&str; 40] = [
    "head",
    "breech",
    "bottom",
    "back",
    "limbs",
    "limb",
    "occiput",
    "occipito",
    "sinciput",
    "sacrum",
    "sacro",
    "chin",
    "mentum",
    "mento",
    "brow",
    "fronto",
    "face",
    "vertex",
    "cephalic",
    "shoulder",
    "hand",
    "foot",
    "feet",
    "knee",
    "arm",
    "leg",
    "legs",
    "heart",
    "placenta",
    "cord",
    "front",
    "forwards",
    "anterior",
    "ant",
    "rear",
    "posterior",
    "post",
    "spine",
    "ribs",
    "behind",
];
/// Letters of the codes of positions, and of the short forms of places after their side.
const CODE: &str = "lrosmfbatpd";
const PLACE_CODE: &str = "iuqlfcohw";

/// What `text` is a slip of.
pub fn suggest(text: &str, rows: impl IntoIterator<Item = Row>) -> Suggestion {
    let folded = fold(text);
    if folded.is_empty() || folded.len() > LONGEST_SLIP {
        return Suggestion::Nothing;
    }
    let typed: Vec<&str> = folded.split(' ').collect();
    let doubtful = typed.iter().any(|token| may_be_a_side(token));
    let mut best: Option<(usize, &'static str)> = None;
    let mut tie = false;
    let mut sided = false;
    let mut refused = usize::MAX;
    for row in rows {
        for said in std::iter::once(&row.word).chain(row.also) {
            let near = fold(said);
            let word: Vec<&str> = near.split(' ').collect();
            sided |= word.iter().any(|token| is_side(token)) || is_code(said);
            let may_stand = !is_code(said) && !typed.iter().any(|token| looks_like_code(token));
            let Some(slips) = may_stand.then(|| slips(&typed, &word)).flatten() else {
                // A word that is never suggested may be meant all the same: then no other is.
                refused = refused.min(strsim::damerau_levenshtein(&folded, &near));
                continue;
            };
            let longest = folded.chars().count().max(near.chars().count());
            let begins = slips == 1 && near.starts_with(&folded);
            if slips > MOST_SLIPS || !begins && (slips as f64) > (1.0 - NEAR_ENOUGH) * longest as f64 {
                continue;
            }
            match best {
                Some((least, _)) if slips > least => {}
                Some((least, meant)) if slips == least => tie |= meant != row.word,
                _ => (best, tie) = (Some((slips, row.word)), false),
            }
        }
    }
    match best {
        Some((slips, word)) if !tie && slips < refused && drops_a_side(&typed, word) => Suggestion::Nothing,
        Some((slips, word)) if !tie && slips < refused => Suggestion::Word(word),
        _ if doubtful && sided => Suggestion::Side,
        _ => Suggestion::Nothing,
    }
}

/// The canonical word that is meant, if one is.
pub fn nearest(text: &str, rows: impl IntoIterator<Item = Row>) -> Option<&'static str> {
    match suggest(text, rows) {
        Suggestion::Word(word) => Some(word),
        Suggestion::Side | Suggestion::Nothing => None,
    }
}

/// How many slips of the finger `typed` is from `word`; `None` where a side or a part would come, go or change.
fn slips(typed: &[&str], word: &[&str]) -> Option<usize> {
    let fixed = |token: &&&str| is_side(token) || is_part(token);
    if typed.len() == word.len() {
        return typed.iter().zip(word).map(|(typed, word)| slips_of_one(typed, word)).sum();
    }
    // A word begun: what is left out names no side and no part.
    if word.len() > typed.len() && word.starts_with(typed) && typed.concat().len() >= SHORTEST_BEGINNING {
        return (!word[typed.len()..].iter().any(|token| fixed(&token))).then_some(1);
    }
    // A space too many, or one too few.
    let (a, b) = (typed.concat(), word.concat());
    let slip = strsim::damerau_levenshtein(&a, &b);
    let same = typed.iter().filter(fixed).eq(word.iter().filter(fixed));
    (slip == 0 && same).then_some(1)
}

fn slips_of_one(typed: &str, word: &str) -> Option<usize> {
    if typed == word {
        return Some(0);
    }
    if is_side(typed) || is_side(word) || is_part(typed) {
        return None;
    }
    let begins = typed.len() >= SHORTEST_BEGINNING && word.starts_with(typed);
    let slips = if begins { 1 } else { strsim::damerau_levenshtein(typed, word) };
    let nearer_to_a_side =
        ["left", "right"].iter().any(|side| strsim::damerau_levenshtein(typed, side) <= slips);
    // A part is meant only where most of its letters are there: `agt` may be `lat` as well as `ant`.
    let unsure_of_a_part = is_part(word) && (slips > 1 || word.len() <= 3);
    (!nearer_to_a_side && !unsure_of_a_part).then_some(slips)
}

/// Whether a side that is typed is not in `word`: the word of a row may name no side where another way to say it does.
fn drops_a_side(typed: &[&str], word: &str) -> bool {
    let kept = Position::find(word).map_or_else(|| fold(word), |position| fold(&position.words()));
    let has = |side: &str| kept.split(' ').any(|token| is_side(token) && token.get(..1) == side.get(..1));
    typed.iter().any(|token| is_side(token) && !has(token))
}

fn is_side(token: &str) -> bool {
    SIDES.contains(&token)
}

fn is_part(token: &str) -> bool {
    PARTS.contains(&token)
}

/// A code of a position, or a short form of a place: never suggested, because each letter is a side or a part.
fn is_code(said: &str) -> bool {
    let letters = said.len() <= 4 && !said.contains(' ');
    letters
        && (Position::find(said).is_some()
            || PLACE_ABBREVIATIONS.iter().any(|(short, ..)| short.eq_ignore_ascii_case(said)))
}

/// Letters that may have been meant for such a code with a side in it.
fn looks_like_code(token: &str) -> bool {
    let of = |letters: &str, text: &str| text.chars().all(|c| letters.contains(c));
    let sided = token.contains(['l', 'r']);
    let position = (2..=4).contains(&token.len()) && of(CODE, token) && sided;
    let place = token.len() == 3 && token.starts_with(['l', 'r']) && of(PLACE_CODE, &token[1..]);
    position || place
}

/// True of what is no side, and may have been meant for one.
pub fn may_be_a_side(token: &str) -> bool {
    let near = |side: &&str| {
        let slips = strsim::damerau_levenshtein(token, side);
        slips == 1 || (slips == 2 && token.chars().count() >= 4)
    };
    !is_side(token) && (looks_like_code(token) || ["left", "right"].iter().any(near))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::exam::{BackTurn, WombFeel};

    #[test]
    fn the_nearest_word() {
        assert_eq!(nearest("tendr", WombFeel::rows()), Some("tender"));
        assert_eq!(nearest("anterier", BackTurn::rows()), Some("front"));
        assert_eq!(nearest("zzz", BackTurn::rows()), None);
    }

    #[test]
    fn none_where_two_are_as_near() {
        let rows = [Row { word: "head", also: &[] }, Row { word: "heart", also: &[] }];
        assert_eq!(suggest("hear", rows), Suggestion::Nothing);
        assert_eq!(suggest("heaart", rows), Suggestion::Word("heart"));
    }
}
