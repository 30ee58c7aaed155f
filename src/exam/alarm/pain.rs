//! Pain that is said to be severe, in whatever words. In: the words of a note, and which of them. Out: how many words say so.

use super::{Token, close};

const PAIN: &[&str] = &[
    "pain", "pains", "dolor", "dolores", "douleur", "douleurs", "cramp", "cramps", "dor", "dores", "ból",
    "bol", "bóle", "bole", "bólu", "bolu", "bólów", "bolow",
];
/// Before the pain, with up to two words between, or after it.
const SEVERE: &[&str] = &[
    "severe",
    "intense",
    "excruciating",
    "unbearable",
    "agonising",
    "agonizing",
    "terrible",
    "tearing",
    "worst",
    "intenso",
    "insoportable",
    "fuerte",
    "forte",
    "insupportable",
    "violente",
    "fortes",
    "intensa",
    "intensas",
    "insuportável",
    "insuportavel",
    "silny",
    "silne",
    "silnego",
    "silnych",
    "ostry",
    "ostre",
    "straszny",
];
/// Out of ten, from here on a pain is severe. Common practice.
const OF_TEN: u8 = 7;
/// Words after the pain among which its strength is looked for.
const NEAR: usize = 3;

/// Whether a word is of pain.
pub(super) fn is_pain(word: &str) -> bool {
    PAIN.contains(&word)
}

/// Whether the words from `at` on are of a severe pain, and how many.
pub(super) fn severe(text: &str, tokens: &[Token<'_>], lower: &[String], at: usize) -> Option<usize> {
    let joined = |i: usize| tokens.get(i).is_some_and(|token| close(&text[tokens[i - 1].end..token.start]));
    let pain = |i: usize| lower.get(i).is_some_and(|word| is_pain(word));
    if SEVERE.contains(&lower[at].as_str()) {
        let reach = (at + 1..=at + NEAR).take_while(|i| joined(*i)).find(|i| pain(*i));
        return reach.map(|i| i + 1 - at);
    }
    if !pain(at) {
        return None;
    }
    if text[tokens[at].end..].trim_start().starts_with("++") {
        return Some(1);
    }
    let of_ten = |i: usize| {
        let score = lower.get(i)?.parse::<u8>().ok().filter(|score| (OF_TEN..=10).contains(score))?;
        let over = &text[tokens[i].end..tokens.get(i + 1)?.start];
        (over == "/" && lower[i + 1] == "10").then_some(score)
    };
    // Up to the end of the part of the sentence.
    let apart = |i: usize| text[tokens[i - 1].end..tokens[i].start].contains([',', '.', ';', '\n']);
    let near = (at + 1..tokens.len().min(at + 1 + NEAR)).take_while(|i| !apart(*i));
    for i in near {
        if SEVERE.contains(&lower[i].as_str()) {
            return Some(i + 1 - at);
        }
        if of_ten(i).is_some() {
            return Some(i + 2 - at);
        }
    }
    None
}
