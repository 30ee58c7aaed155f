//! No sentence, box or label names a finding that the visit lacks, or denies one that it has: over visits of every kind, read
//! from files as people write them.

use super::shared::{Dice, read};
use super::words::{random_exam, write};
use handspan::chart::{Entry, boxes, note, said};
use handspan::exam::{Exam, Finding, KnownBy, conclude};
use handspan::reckon::reckon;
use handspan::words::{LANGUAGES, Words};

/// Every third finding of a random exam stays: most visits leave most things out.
pub fn visit(dice: &mut Dice) -> Exam {
    let exam = random_exam(dice);
    let keep = 1 + dice.below(4);
    let lines: Vec<String> = write(&exam)
        .lines()
        .filter(|line| line.starts_with('[') || dice.below(4) < keep)
        .map(str::to_owned)
        .collect();
    // A heading with nothing under it says nothing.
    let mut text = String::new();
    for (at, line) in lines.iter().enumerate() {
        let empty = line.starts_with('[') && lines.get(at + 1).is_none_or(|next| next.starts_with('['));
        if !empty {
            text.push_str(&format!("{line}\n"));
        }
    }
    if text.is_empty() {
        text.push_str("[baby]\nhead = \"fundus\"\n");
    }
    read(&text)
}

pub fn has(exam: &Exam, baby: usize, names: &[&str]) -> bool {
    names.iter().any(|name| {
        let key = if name.starts_with("mother.") {
            (*name).to_owned()
        } else {
            format!("baby.{}.{name}", baby + 1)
        };
        exam.read.iter().any(|(read, _)| *read == key)
    })
}

/// The keys that a name in the list of what is not recorded stands for.
fn keys_of(name: &str) -> &'static [&'static str] {
    match name {
        "movements" => &["mother.movements"],
        "fundal height" => &["mother.fundal-height", "mother.fundus"],
        "breech" => &["breech"],
        "back" => &["back", "position"],
        "limbs" => &["limbs"],
        "head" => &["head", "head-above-brim"],
        "engagement" => &["head-above-brim", "descent"],
        "fetal heart" => &["heart", "heart-rate", "heart-counts", "heart-rise", "heart-rhythm"],
        "fetal heart rate" => &["heart-rate", "heart-counts"],
        other => panic!("{other} is not known to this test"),
    }
}

/// What each box is filled from.
fn keys_of_box(label: &str) -> &'static [&'static str] {
    match label {
        "Lie" | "Presentation" | "Position" => {
            &["lie", "presentation", "position", "head", "breech", "back", "head-above-brim"]
        }
        "Attitude" => &["attitude"],
        "Engagement (fifths)" => &["head-above-brim", "descent"],
        "Liquor" => &["mother.water"],
        "Fundal height" => &["mother.fundal-height", "mother.fundus"],
        "Fetal heart" => &["heart", "heart-rate", "heart-counts"],
        "Movements" => &["mother.movements"],
        other => panic!("{other} is not known to this test"),
    }
}

const CHART: [&str; 9] = [
    "Lie",
    "Presentation",
    "Position",
    "Attitude",
    "Engagement (fifths)",
    "Liquor",
    "Fundal height",
    "Fetal heart",
    "Movements",
];

#[test]
fn a_box_is_empty_where_nothing_was_recorded_and_only_there() {
    let words = Words::load("en").expect("English");
    let mut dice = Dice::new(1_415);
    let (mut full, mut empty) = (0, 0);
    for round in 0..10_000 {
        let exam = visit(&mut dice);
        let reckoning = reckon(&exam, &Default::default());
        let boxes = boxes::boxes(&exam, &reckoning.conclusions, &words).expect("words");
        if exam.babies.len() == 1 {
            let labels: Vec<&str> = boxes.iter().map(|of| of.label.as_str()).collect();
            assert_eq!(labels, CHART);
        }
        for of in boxes {
            let known = has(&exam, of.baby.unwrap_or(0), keys_of_box(&of.label));
            let said = of.value != "not recorded";
            assert_eq!(known, said, "round {round}: {}: {}\n{}", of.label, of.value, write(&exam));
            if known { full += 1 } else { empty += 1 }
        }
    }
    assert!(full > 10_000 && empty > 10_000, "{full} full, {empty} empty");
}

#[test]
fn what_is_said_to_be_missing_is_missing() {
    let words = Words::load("en").expect("English");
    let mut dice = Dice::new(92_653);
    let mut missing = 0;
    for round in 0..10_000 {
        let exam = visit(&mut dice);
        let reckoning = reckon(&exam, &Default::default());
        let text = said::not_examined(&exam, &reckoning.conclusions, &words).expect("words");
        let Some(names) = text.strip_prefix("Not recorded: ") else { continue };
        for name in names.trim_end_matches('.').split(", ") {
            let (name, baby) = match name.split_once(" (baby ") {
                Some((name, number)) => (name, usize::from(number.starts_with('2'))),
                None => (name, 0),
            };
            missing += 1;
            assert!(!has(&exam, baby, keys_of(name)), "round {round}: {text}\n{}", write(&exam));
        }
    }
    assert!(missing > 10_000, "{missing}");
}

/// What a sentence of the entry says, and what the visit must have for it. Each is tried on visits with one baby.
type Rests = fn(&Exam) -> bool;
const CLAIMS: [(&str, Rests); 10] = [
    ("palpable above the brim", |exam| exam.babies[0].head_above_brim.value().is_some()),
    ("Engaged: ", |exam| exam.babies[0].head_above_brim.value().is_some_and(|fifths| fifths.get() <= 2)),
    ("the head is free", |exam| exam.babies[0].descent.value().is_some()),
    ("Breech at", |exam| exam.babies[0].breech.value().is_some()),
    ("Head at", |exam| exam.babies[0].head.value().is_some()),
    ("Fetal heart not heard", |exam| exam.babies[0].heart == Finding::Absent),
    ("beats a minute", |exam| {
        let baby = &exam.babies[0];
        [
            baby.heart_rate.value().is_some(),
            baby.heart_counts.value().is_some(),
            baby.heart_rise.value().is_some(),
        ]
        .contains(&true)
    }),
    ("Follows from what was felt", |exam| {
        let baby = &exam.babies[0];
        let felt = |known_by: &KnownBy| *known_by == KnownBy::Hands;
        [
            matches!(&baby.head, Finding::Found(found) if felt(&found.known_by)),
            matches!(&baby.breech, Finding::Found(found) if felt(&found.known_by)),
            matches!(&baby.back, Finding::Found(found) if felt(&found.known_by)),
            matches!(&baby.head_above_brim, Finding::Found(found) if felt(&found.known_by)),
        ]
        .contains(&true)
    }),
    ("by scan", |exam| exam.read.iter().any(|(key, value)| key.contains("scan") || value.contains("scan"))),
    ("not felt", |exam| exam.read.iter().any(|(_, value)| value.contains("not felt"))),
];

#[test]
fn a_note_claims_only_what_the_visit_holds() {
    let words = Words::load("en").expect("English");
    let mut dice = Dice::new(58_979);
    let mut held = [0; CLAIMS.len()];
    for round in 0..10_000 {
        let mut exam = visit(&mut dice);
        exam.note = None;
        if exam.babies.len() != 1 {
            continue;
        }
        let reckoning = reckon(&exam, &Default::default());
        let text = note::body(&Entry { exam: &exam, reckoning: &reckoning, words: &words }).expect("words");
        for (at, (claim, rests)) in CLAIMS.iter().enumerate() {
            if text.contains(claim) {
                held[at] += 1;
                assert!(rests(&exam), "round {round}: `{claim}`\n{text}\n{}", write(&exam));
            }
        }
    }
    assert!(held.iter().all(|held| *held > 20), "{held:?}");
}

/// With every finding on one side of her, nothing is said of the other: from her left and from her right.
#[test]
fn no_sentence_names_a_side_that_no_finding_has() {
    let words = Words::load("en").expect("English");
    for (side, other) in [("left", "right"), ("right", "left")] {
        let mut dice = Dice::new(3_238);
        let mut sided = 0;
        for round in 0..3_000 {
            let text = write(&visit(&mut dice));
            // What lies across has both sides.
            let kept: Vec<&str> = text
                .lines()
                .filter(|line| {
                    !line.contains(other) && !line.starts_with("position") && !line.starts_with("lie")
                })
                .filter(|line| !line.starts_with("head =") && !line.starts_with("breech ="))
                .collect();
            let kept = kept.join("\n");
            if !kept.contains(" = ") || kept.lines().last().is_some_and(|line| line.starts_with('[')) {
                continue;
            }
            let reading = handspan::exam::read("visit.toml", kept.as_bytes());
            let Some(exam) = reading.exam else { continue };
            sided += usize::from(kept.contains(side));
            let reckoning = reckon(&exam, &Default::default());
            let entry = Entry { exam: &exam, reckoning: &reckoning, words: &words };
            let said = format!("{} {}", note::body(&entry).expect("words"), entry.boxes().expect("words"));
            // (Of what was "left out" no side is said.)
            let said = said.replace("was left out", "");
            // A face and a brow are named by chin and forehead, which lie across from the back.
            let said = said.replace(&format!("{other} mento-"), "").replace(&format!("{other} fronto-"), "");
            let named = said.split(|c: char| !c.is_alphabetic()).any(|word| word == other);
            assert!(!named, "round {round}: {said}\n{kept}");
        }
        assert!(sided > 500, "{sided} visits had something on her {side}");
    }
}

/// A text with every run of blanks as one.
fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// How the sentence of each finding begins, up to its value: key and words that stand in no other sentence.
fn beginnings() -> Vec<(&'static str, &'static str)> {
    let english = LANGUAGES[0].text;
    let mut all = vec![];
    for line in english.lines() {
        let Some((id, text)) = line.split_once(" = ") else { continue };
        let Some(key) = id.strip_prefix("found-") else { continue };
        let begins = text.split('{').next().unwrap_or_default();
        // The weeks and dates stand in the heading, and the note by itself.
        let of_her_or_a_baby = !["weeks", "scan", "note"].contains(&key);
        if begins.ends_with(": ") && of_her_or_a_baby {
            all.push((key.trim_end_matches("-state"), begins));
        }
    }
    assert!(all.len() > 70, "{}", all.len());
    all
}

/// Every sentence of a finding stands in `check` where that finding was recorded, and only there.
#[test]
fn check_says_every_finding_and_no_other() {
    let words = Words::load("en").expect("English");
    let beginnings = beginnings();
    let mut keys: Vec<&str> = beginnings.iter().map(|(key, _)| *key).collect();
    keys.dedup();
    let mut dice = Dice::new(26_535);
    let (mut said, mut unsaid) = (0, 0);
    for round in 0..10_000 {
        let mut exam = visit(&mut dice);
        exam.note = None;
        let conclusions: Vec<_> = (0..exam.babies.len()).map(|index| conclude(&exam, index)).collect();
        let text = one_line(&said::lines(&exam, &conclusions, &words).expect("words"));
        for key in &keys {
            let own = format!(".{key}");
            let recorded = exam.read.iter().any(|(read, _)| read == key || read.ends_with(&own));
            let stands = beginnings.iter().any(|(of, begins)| of == key && text.contains(begins));
            // The heart is also said by another sentence.
            let one_way = ["heart", "heart-with"].contains(key);
            assert!(
                stands == recorded || one_way && !stands,
                "round {round}: `{key}` recorded {recorded}, said {stands}\n{text}\n{}",
                write(&exam)
            );
            if stands { said += 1 } else { unsaid += 1 }
        }
    }
    assert!(said > 10_000 && unsaid > 10_000, "{said} said, {unsaid} not");
}
