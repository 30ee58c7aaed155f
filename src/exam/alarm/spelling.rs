//! Words of a note as they are usually spelled. In: a word as it stands. Out: what phrases are held against; whether two are one word.

/// Slips of short words, which no likeness can tell from other words.
const SLIPS: &[(&str, &str)] = &[
    ("kord", "cord"),
    ("chord", "cord"),
    ("sholder", "shoulder"),
    ("shouldr", "shoulder"),
    ("sholuder", "shoulder"),
    ("hedache", "headache"),
    ("blood-loss", "blood loss"),
];
/// Words of so many letters are the same with one slip in them: a letter too many, too few, another, or two exchanged.
const LONG: usize = 7;

/// What French writes before a vowel, in one word with what follows.
const ELIDED: &[&str] = &["l", "d", "n", "s", "j", "c", "qu", "m", "t"];

/// In small letters, known slips mended, without what French writes before a vowel.
pub(super) fn usual(word: &str) -> String {
    let lower = word.to_lowercase().replace('\u{2019}', "'");
    let whole = lower.split_once('\'').filter(|(before, rest)| ELIDED.contains(before) && !rest.is_empty());
    let lower = whole.map_or(lower.as_str(), |(_, rest)| rest);
    SLIPS.iter().find(|(slip, _)| *slip == lower).map_or(lower, |(_, usual)| usual).to_owned()
}

/// Without accents, as Portuguese and Polish are often typed.
pub(super) fn plain(word: &str) -> String {
    let letter = |c: char| match c {
        'á' | 'à' | 'â' | 'ã' | 'ą' => 'a',
        'ç' | 'ć' => 'c',
        'é' | 'ê' | 'ę' => 'e',
        'í' => 'i',
        'ł' => 'l',
        'ń' => 'n',
        'ó' | 'ô' | 'õ' => 'o',
        'ś' => 's',
        'ú' | 'ü' => 'u',
        'ź' | 'ż' => 'z',
        other => other,
    };
    word.chars().map(letter).collect()
}

/// Whether `said` is `word`, or, of a long word, is it with one slip.
pub(super) fn same(said: &str, word: &str) -> bool {
    said == word
        || word.len() >= LONG && said.as_bytes().first() == word.as_bytes().first() && one_slip(said, word)
}

fn one_slip(said: &str, word: &str) -> bool {
    let (said, word): (Vec<char>, Vec<char>) = (said.chars().collect(), word.chars().collect());
    if said.len().abs_diff(word.len()) > 1 || word.len() < LONG {
        return false;
    }
    let before = said.iter().zip(&word).take_while(|(a, b)| a == b).count();
    let (said, word) = (&said[before..], &word[before..]);
    let exchanged = || matches!((said, word), ([a, b, s @ ..], [c, d, w @ ..]) if a == d && b == c && s == w);
    match (said, word) {
        ([], _) | (_, []) => true,
        ([_, s @ ..], [_, w @ ..]) => s == w || s == word || said == w || exchanged(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_slip_in_a_long_word() {
        for said in ["bleeding", "bleding", "bleedng", "bleedding", "bleedign", "bleedin"] {
            assert!(same(said, "bleeding"), "{said}");
        }
        for said in ["bleed", "breathing", "leading", "bledding x", "building", "feeding"] {
            assert!(!same(said, "bleeding"), "{said}");
        }
        assert!(!same("fitter", "fitted"), "short words have no slips");
    }
}
