//! Which words can stand in a value. In: the word table. Out: for each key that takes words, every single word of them, so that
//! a line is not read again and again for values that cannot be there.

use super::tokens::{self, Kind};
use crate::exam::keys::{KEYS, Key};
use crate::exam::place::BETWEEN;
use crate::exam::quantity::length_unit;
use crate::exam::words::{Landmark, PLACE_ABBREVIATIONS, Row, SMALL_WORDS, StateWord, Vocabulary};
use std::collections::{BTreeMap, BTreeSet};

/// The words of each key that takes words.
pub struct Known(BTreeMap<&'static str, BTreeSet<String>>);

/// Words that stand beside those of the table: finger-breadths, and what a height is measured from.
const BESIDE: [&str; 9] =
    ["finger", "fingers", "breadth", "breadths", "fb", "above", "below", "under", "from"];

/// The words of every key.
pub fn of_keys() -> Known {
    let beside: Vec<Row> = Landmark::rows().into_iter().chain(StateWord::rows()).collect();
    let with_words = KEYS.iter().filter(|key| !(key.words)().is_empty());
    let words_of = |key: &Key| {
        let mut all = BTreeSet::new();
        for row in (key.words)().iter().chain(&beside) {
            for said in std::iter::once(&row.word).chain(row.also) {
                add(&mut all, said);
            }
        }
        let short = PLACE_ABBREVIATIONS.iter().map(|(short, _, _)| *short);
        for word in SMALL_WORDS.into_iter().chain(BETWEEN).chain(BESIDE).chain(short) {
            add(&mut all, word);
        }
        all
    };
    Known(with_words.map(|key| (key.name, words_of(key))).collect())
}

fn add(all: &mut BTreeSet<String>, said: &str) {
    let words = tokens::of(said).into_iter().filter(|token| token.kind == Kind::Word);
    all.extend(words.map(|token| said[token.at].to_lowercase()));
}

impl Known {
    /// Whether `word` can stand in a value of `key`; of a key without words it is not known.
    pub fn has(&self, key: &Key, word: &str) -> bool {
        let Some(words) = self.0.get(key.name) else { return true };
        let word = word.to_lowercase().replace('\u{2019}', "'");
        words.contains(&word) || length_unit(&word).is_some()
    }
}
