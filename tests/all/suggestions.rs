//! A suggestion never adds, drops or changes a side of the mother or a part of the baby: the cases that once did, and every word
//! of the language with slips in it, from her left and from her right.

use super::shared::{Dice, run, said};
use handspan::exam::keys::{KEYS, Scope};
use handspan::exam::{Position, read, shorthand, words::Vocabulary};
use handspan::report::Problem;

fn heading(scope: Scope) -> &'static str {
    match scope {
        Scope::Top => "",
        Scope::Mother => "[mother]\n",
        Scope::Baby => "[baby]\n",
    }
}

fn of_value(scope: Scope, key: &str, value: &str) -> Vec<Problem> {
    read("exam.toml", format!("{}{key} = \"{value}\"\n", heading(scope)).as_bytes()).problems
}

fn of_line(line: &str) -> Vec<Problem> {
    shorthand::read("line", line).problems
}

/// What is suggested, as one text.
fn suggested(problems: &[Problem]) -> Option<&str> {
    problems.iter().find_map(|problem| problem.suggestion.as_deref())
}

/// True when it is said that a side must be written.
fn asks_for_a_side(problems: &[Problem]) -> bool {
    problems.iter().any(|problem| problem.message.contains("a side is never guessed: write left or right"))
}

#[test]
fn what_may_be_a_side_is_never_guessed() {
    // Each as it would be typed for her left, and for her right.
    for value in ["ligt", "lefft", "rigth", "riht", "lift front", "reft front", "rigt, front", "lef lateral"]
    {
        let problems = of_value(Scope::Baby, "back", value);
        assert_eq!(suggested(&problems), None, "back = {value}");
        assert!(asks_for_a_side(&problems), "back = {value}: {problems:?}");
    }
    for code in ["OPR", "OPL", "RO", "LO", "POL", "POR", "LAO", "RAO", "LSO", "RTO", "LOAA", "ROOP"] {
        let problems = of_value(Scope::Baby, "position", code);
        assert_eq!(suggested(&problems), None, "position = {code}");
        assert!(asks_for_a_side(&problems), "position = {code}: {problems:?}");
        assert_eq!(suggested(&of_line(code)), None, "{code}");
        assert_eq!(suggested(&of_line(&format!("38+0 {code} 2/5 palp"))), None, "{code} in a line");
    }
    for side in ["left", "right"] {
        for words in [format!("occiput {side} posterior"), format!("{side} ocput posterior")] {
            let problems = of_line(&words);
            assert_eq!(suggested(&problems), None, "{words}: {problems:?}");
        }
    }
    for place in ["lft, above navel", "rght, above navel", "LQL", "RQL"] {
        assert_eq!(suggested(&of_value(Scope::Baby, "limbs", place)), None, "{place}");
    }
    for from in ["RO", "LO", "OPR", "OPL"] {
        let output = run(&["plate", "turning", "--from", from, "-o", "turning.svg"]);
        assert_eq!(output.status.code(), Some(2));
        let text = said(&output);
        assert!(text.contains("a side is never guessed") && !text.contains("did you mean"), "{text}");
    }
}

#[test]
fn a_side_that_is_written_stays_in_what_is_suggested() {
    for (side, other) in [("left", "right"), ("right", "left")] {
        for (scope, key, value) in [
            (Scope::Baby, "head", format!("{side} flnk")),
            (Scope::Mother, "posture", format!("tilted to {side}")),
            (Scope::Baby, "position", format!("{side} ocipito-anterior")),
        ] {
            let problems = of_value(scope, key, &value);
            let said = suggested(&problems).unwrap_or_default();
            assert!(!said.contains(other), "{value}: {said}");
        }
        let said = format!("`back {side}`");
        assert_eq!(suggested(&of_line(&format!("bakc {side}"))), Some(said.as_str()));
        // What stands beside the underlined word is not touched.
        let problems = of_value(Scope::Baby, "back", &format!("{side} frnt"));
        assert_eq!(suggested(&problems), Some("`front`"));
        assert_eq!(problems[0].place.as_ref().map(|place| place.text.as_str()), Some("frnt"));
    }
}

const LETTERS: &[u8] = b"abcdefghijklmnoprstuvwy";

/// A text with one slip in it: a letter left out, put in, changed, or two of them swapped.
fn slip(dice: &mut Dice, text: &str) -> String {
    let mut letters: Vec<char> = text.chars().collect();
    let at = dice.below(letters.len());
    let letter = char::from(*dice.pick(LETTERS));
    match dice.below(4) {
        0 => drop(letters.remove(at)),
        1 => letters.insert(at, letter),
        2 => letters[at] = letter,
        _ if at > 0 => letters.swap(at - 1, at),
        _ => letters.rotate_left(1),
    }
    letters.into_iter().collect()
}

/// The sides in a text, by its words, its codes and its short forms.
fn sides(key: &str, text: &str) -> String {
    let mut sides = String::new();
    let text = text.trim_matches('`').replace('-', " ");
    for word in text.split([' ', ',']).filter(|word| !word.is_empty()) {
        let lower = word.to_lowercase();
        let code = Position::find(word)
            .filter(|_| key == "position")
            .map(|position| position.words().to_lowercase());
        match (lower.as_str(), code) {
            ("left" | "l" | "lt" | "llq" | "luq" | "lif", _) => sides.push('L'),
            ("right" | "r" | "rt" | "rlq" | "ruq" | "rif", _) => sides.push('R'),
            (_, Some(words)) if words.starts_with("left") => sides.push('L'),
            (_, Some(words)) if words.starts_with("right") => sides.push('R'),
            _ => {}
        }
    }
    sides
}

/// The part of the baby that a text names.
fn part(text: &str) -> Option<&'static str> {
    let lower = text.to_lowercase();
    ["occip", "sacr", "ment", "front", "breech", "head", "back", "limb", "heart"]
        .into_iter()
        .find(|part| lower.contains(part))
}

#[test]
fn no_slip_in_any_word_leads_to_another_side_or_part() {
    let mut dice = Dice::new(51);
    let (mut slips, mut suggestions) = (0, 0);
    for key in KEYS {
        for row in (key.words)() {
            for word in std::iter::once(&row.word).chain(row.also) {
                for _ in 0..6 {
                    let mut typed = slip(&mut dice, word);
                    if dice.once_in(2) && !typed.is_empty() {
                        typed = slip(&mut dice, &typed);
                    }
                    slips += 1;
                    let problems = of_value(key.scope, key.name, &typed);
                    let Some(said) = suggested(&problems) else { continue };
                    suggestions += 1;
                    let of = format!("{} = {typed} (for {word}) -> {said}", key.name);
                    let kept = match &problems[0].place {
                        // Only what is underlined is exchanged.
                        Some(place) => typed.replace(&place.text, said.trim_matches('`')),
                        None => said.to_owned(),
                    };
                    let meant = if sides(key.name, word).is_empty() { row.word } else { word };
                    // What reads as a side by itself (`rt navee`) is one that was written.
                    let written = [sides(key.name, meant), sides(key.name, &typed)];
                    assert!(written.contains(&sides(key.name, &kept)), "{of}");
                    if part(said).is_some() {
                        assert!([part(word), part(row.word)].contains(&part(said)), "{of}");
                    }
                }
            }
        }
    }
    assert!(slips > 2000 && suggestions > 500, "{slips} slips, {suggestions} suggestions");
}

/// The names of keys are slipped too; one part is never taken for another.
#[test]
fn no_slip_in_the_name_of_a_key_leads_to_another_part() {
    let mut dice = Dice::new(7);
    for key in KEYS.iter().filter(|key| part(key.name).is_some()) {
        for _ in 0..60 {
            let typed = slip(&mut dice, key.name);
            let text = format!("{}{typed} = \"x\"\n", heading(key.scope));
            let problems = read("exam.toml", text.as_bytes()).problems;
            if let Some(said) = suggested(&problems) {
                assert_eq!(part(said), part(key.name), "{typed} (for {}) -> {said}", key.name);
            }
        }
    }
}
