//! Parts and cord in words about a vaginal examination. In: the words of a note, and which of them. Out: whether it is such a part.

use super::Token;

/// What should not lead, or lie before what leads.
const PARTS: &[&str] = &[
    "cord",
    "foot",
    "feet",
    "toes",
    "hand",
    "hands",
    "arm",
    "elbow",
    "knee",
    "shoulder",
    "brow",
    "face",
    "limb",
    "limbs",
    "footling",
    "cordón",
    "mano",
    "pie",
    "pies",
    "brazo",
    "hombro",
    "codo",
    "rodilla",
    "frente",
    "cara",
    "cordon",
    "main",
    "pied",
    "bras",
    "épaule",
    "pieds",
    "coude",
    "genou",
    "front",
    "cordão",
    "cordao",
    "mão",
    "mao",
    "pé",
    "pe",
    "pés",
    "braço",
    "braco",
    "ombro",
    "cotovelo",
    "joelho",
    "fronte",
    "pępowina",
    "pepowina",
    "pępowinę",
    "pepowine",
    "pępowiny",
    "pepowiny",
    "rączka",
    "raczka",
    "rączkę",
    "raczke",
    "ręka",
    "reka",
    "nóżka",
    "nozka",
    "nóżkę",
    "nozke",
    "stopka",
    "stopkę",
    "stopke",
    "stópka",
    "stópkę",
    "bark",
    "ramię",
    "ramie",
    "łokieć",
    "lokiec",
    "kolano",
    "czoło",
    "czolo",
    "twarz",
    "twarzyczka",
];
/// Words of the examination, anywhere in the sentence.
const EXAMINED: &[&str] = &[
    "ve",
    "sve",
    "vagina",
    "vaginal",
    "vaginally",
    "introitus",
    "vulva",
    "tv",
    "toucher",
    "tacto",
    "vaginalmente",
    "toque",
    "badaniu",
    "badanie",
    "pochwie",
    "pochwa",
    "pochwy",
    "pochwę",
];
/// Words of it between the same commas.
const NEAR: &[&str] = &["pv", "os", "cx", "cervix", "colo", "szyjka", "szyjki", "ujściu"];
/// After the part: it is not there, or it is another thing.
const NOT: &[&str] = &["felt", "seen", "palpable", "palpated", "there", "present", "below"];

/// Whether word `at` is a part that was found by the vagina, or seen at it, as far as words can tell.
pub(super) fn part(text: &str, tokens: &[Token<'_>], lower: &[String], at: usize) -> bool {
    // ARM in capitals is another thing.
    if !PARTS.contains(&lower[at].as_str()) || tokens[at].text == "ARM" {
        return false;
    }
    let next = |n: usize| lower.get(at + n).map_or("", String::as_str);
    if next(1) == "not" && NOT.contains(&next(2))
        || lower[at] == "face" && next(1) == "to"
        || next(1) == "insertion"
    {
        return false;
    }
    let within = |words: &[&str], marks: &[char]| {
        let from = (1..=at).rev().find(|i| parted(text, tokens, *i, marks)).unwrap_or(0);
        let to = (at + 1..tokens.len()).find(|i| parted(text, tokens, *i, marks)).unwrap_or(tokens.len());
        (from..to).any(|i| words.contains(&lower[i].as_str()))
    };
    within(EXAMINED, &['.', ';', '\n']) || within(NEAR, &['.', ';', '\n', ','])
}

/// Whether one of `marks` stands before word `i`; a point in a number is none.
fn parted(text: &str, tokens: &[Token<'_>], i: usize, marks: &[char]) -> bool {
    let between = &text[tokens[i - 1].end..tokens[i].start];
    between.contains(marks) && !(between == "." && tokens[i - 1].text.bytes().all(|b| b.is_ascii_digit()))
}
