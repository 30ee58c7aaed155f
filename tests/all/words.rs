//! The word table: every word reads, `handspan words` lists all of it, and canonical words read back to the same exam.

use super::shared::{Dice, read, run, said};
use handspan::exam::keys::{KEYS, Scope};
use handspan::exam::words::Vocabulary;
use handspan::exam::*;
use handspan::units::{Centimetres, Gestation, Grams, MotherSide};
use handspan::words::Words;

/// A file that has `value` at `key`.
fn file(scope: Scope, key: &str, value: &str) -> String {
    let heading = match scope {
        Scope::Top => "",
        Scope::Mother => "[mother]\n",
        Scope::Baby => "[baby]\n",
    };
    format!("{heading}{key} = \"{value}\"\n")
}

#[test]
fn every_word_and_synonym_reads_to_its_canonical_word() {
    let mut words = 0;
    for key in KEYS {
        for row in (key.words)() {
            for word in std::iter::once(&row.word).chain(row.also) {
                // A back that is square to a side needs the side, an iliac fossa too.
                let prefix = match (key.name, row.word) {
                    ("back", "lateral") => "left ",
                    (
                        "head" | "breech" | "limbs" | "lumps" | "heart" | "heart-also" | "kicks"
                        | "tender-at",
                        "iliac fossa",
                    ) => "left ",
                    _ => "",
                };
                let exam = read(&file(key.scope, key.name, &format!("{prefix}{word}")));
                let name = match key.scope {
                    Scope::Top => key.name.to_owned(),
                    Scope::Mother => format!("mother.{}", key.name),
                    Scope::Baby => format!("baby.1.{}", key.name),
                };
                assert_eq!(exam.read, [(name, format!("{prefix}{}", row.word))], "{} = {word}", key.name);
                words += 1;
            }
        }
        for state in key.states() {
            let word = state.word().expect("a word");
            let exam = read(&file(key.scope, key.name, word));
            assert_eq!(exam.read[0].1, word, "{}", key.name);
        }
    }
    assert!(words > 300, "{words}");
}

#[test]
fn the_program_lists_every_key_and_word() {
    let text = said(&run(&["words"]));
    for key in KEYS {
        assert!(text.contains(&format!("\n  {}: ", key.name)), "{}", key.name);
        for row in (key.words)() {
            assert!(text.contains(&format!("\n    {}", row.word)), "{}: {}", key.name, row.word);
        }
    }
}

/// An exam as a file, from its canonical words.
pub fn write(exam: &Exam) -> String {
    let mut text = String::new();
    let mut heading = String::new();
    for (key, words) in &exam.read {
        let (table, name) = match key.split('.').collect::<Vec<_>>()[..] {
            [name] => (String::new(), name),
            ["mother", name] => ("[mother]".to_owned(), name),
            ["baby", number, name] => (format!("[[baby]] # {number}"), name),
            _ => panic!("{key}"),
        };
        if table != heading {
            text.push_str(&format!("{table}\n"));
            heading = table;
        }
        text.push_str(&format!("{name} = \"{words}\"\n"));
    }
    text
}

fn pick<T: Vocabulary>(dice: &mut Dice) -> T {
    T::WORDS[dice.below(T::WORDS.len())].value
}

fn several<T>(dice: &mut Dice, one: impl Fn(&mut Dice) -> T) -> Vec<T> {
    (0..=dice.below(3)).map(|_| one(dice)).collect()
}

/// A finding in any state that the key allows.
fn finding<T>(dice: &mut Dice, name: &str, one: impl Fn(&mut Dice) -> T) -> Finding<T> {
    let key = KEYS.iter().find(|key| key.name == name).expect("a key");
    match dice.below(10) {
        0..=2 => Finding::NotExamined,
        3 if key.absent.is_some() => Finding::Absent,
        4 if key.not_tried.is_some() => Finding::NotTried,
        5 => Finding::CouldNotTell { reason: dice.once_in(2).then(|| "thick wall".to_owned()) },
        _ => {
            let known_by = match dice.below(6) {
                0 => KnownBy::Scan(None),
                1 => KnownBy::Scan(Some("20+3".to_owned())),
                2 => KnownBy::VaginalExamination,
                _ => KnownBy::Hands,
            };
            Finding::Found(Found { value: one(dice), sure: !dice.once_in(3), known_by })
        }
    }
}

fn cm(dice: &mut Dice, low: u16, high: u16) -> Centimetres {
    Centimetres::new(f64::from(dice.from(low * 100, high * 100)) / 100.0).expect("a length")
}

fn side(dice: &mut Dice) -> MotherSide {
    if dice.once_in(2) { MotherSide::Left } else { MotherSide::Right }
}

fn place(dice: &mut Dice) -> Place {
    let across = if dice.once_in(4) { Across::Measured(side(dice), cm(dice, 1, 20)) } else { pick(dice) };
    let height = match dice.below(5) {
        0 => Height::FromNavel(cm(dice, 1, 15).get()),
        1 => Height::FromNavel(-cm(dice, 1, 15).get()),
        2 => Height::FromPubicBone(cm(dice, 1, 40)),
        _ => pick(dice),
    };
    // An iliac fossa is one of two: its side is always said.
    if height == Height::IliacFossa {
        return Place { across: Some(Across::Side(side(dice))), height: Some(height) };
    }
    match dice.below(6) {
        0 => Place { across: Some(across), height: None },
        1 => Place { across: None, height: Some(height) },
        _ => Place { across: Some(across), height: Some(height) },
    }
}

fn back(dice: &mut Dice) -> Back {
    let turn = match dice.below(6) {
        5 => return Back { side: Some(side(dice)), turn: None },
        n => [BackTurn::Front, BackTurn::Lateral, BackTurn::Spine, BackTurn::Ribs, BackTurn::Feet][n],
    };
    let side = match turn {
        BackTurn::Ribs | BackTurn::Feet => None,
        BackTurn::Lateral => Some(side(dice)),
        BackTurn::Front | BackTurn::Spine => (!dice.once_in(3)).then(|| side(dice)),
    };
    Back { side, turn: Some(turn) }
}

fn grams(dice: &mut Dice) -> Grams {
    Grams::new(f64::from(dice.from(100, 7000))).expect("a weight")
}

pub fn weeks(dice: &mut Dice, low: u16, high: u16) -> Gestation {
    Gestation::from_days(dice.from(low, high))
}

fn fundus(dice: &mut Dice) -> FundusLevel {
    let fingers = dice.from(1, 8) as u8;
    match dice.below(6) {
        0 => FundusLevel::FingersBelowNavel(fingers),
        1 => FundusLevel::FingersAboveNavel(fingers),
        2 => FundusLevel::FingersBelowXiphoid(fingers),
        _ => pick(dice),
    }
}

fn pressure(d: &mut Dice) -> BloodPressure {
    let systolic = d.from(60, 250);
    BloodPressure { systolic, diastolic: d.from(20, systolic - 1).min(200) }
}

fn tally(d: &mut Dice) -> Tally {
    let low = d.from(0, 8) as u8;
    Tally { low, high: low + d.below(4) as u8 }
}

fn lasting(d: &mut Dice) -> Lasting {
    let low = d.from(5, 600);
    Lasting { low, high: low + d.below(60) as u16 }
}

fn gap(d: &mut Dice) -> MuscleGap {
    match d.from(1, 3) {
        1 => MuscleGap::Felt,
        2 => MuscleGap::Wide(cm(d, 1, 20)),
        _ => MuscleGap::Fingers(d.from(1, 10) as u8),
    }
}

pub fn mother(d: &mut Dice) -> Mother {
    Mother {
        fundal_height: finding(d, "fundal-height", |d| cm(d, 1, 60)),
        girth: finding(d, "girth", |d| cm(d, 1, 200)),
        navel: finding(d, "navel", |d| cm(d, 1, 60)),
        fundus: finding(d, "fundus", fundus),
        shape: finding(d, "shape", |d| several(d, pick)),
        womb: finding(d, "womb", |d| several(d, pick)),
        water: finding(d, "water", pick),
        lumps: finding(d, "lumps", |d| several(d, place)),
        tape_unfit: finding(d, "tape-unfit", |d| several(d, pick)),
        scars: finding(d, "scars", |d| several(d, pick)),
        operations: finding(d, "operations", |d| several(d, pick)),
        womb_cut: finding(d, "womb-cut", pick),
        skin: finding(d, "skin", |d| several(d, pick)),
        movements: finding(d, "movements", pick),
        reports: finding(d, "reports", |d| several(d, pick)),
        denies: finding(d, "denies", |d| several(d, pick)),
        pulse: finding(d, "pulse", |d| d.from(30, 300)),
        placenta: finding(d, "placenta", pick),
        births_before: finding(d, "births-before", |d| d.from(0, 20) as u8),
        posture: finding(d, "posture", pick),
        earlier_tapes: finding(d, "earlier-tapes", |d| {
            let mut tapes = several(d, |d| EarlierTape { at: weeks(d, 28, 200), height: cm(d, 1, 60) });
            tapes.sort_by_key(|tape| tape.at);
            tapes
        }),
        gravida: finding(d, "gravida", |d| d.from(1, 30) as u8),
        rupture_before: finding(d, "rupture-before", pick),
        placentas: finding(d, "placentas", pick),
        rhesus_d: finding(d, "rhesus-d", pick),
        group_b_strep: finding(d, "group-b-strep", pick),
        labour: finding(d, "labour", pick),
        hours_since_broken: finding(d, "hours-since-broken", |d| Hours(d.from(0, 2500))),
        water_colour: finding(d, "water-colour", |d| several(d, pick)),
        consent: finding(d, "consent", pick),
        comfort: finding(d, "comfort", pick),
        build: finding(d, "build", pick),
        scar_feel: finding(d, "scar-feel", |d| several(d, pick)),
        muscle_gap: finding(d, "muscle-gap", gap),
        hernia: finding(d, "hernia", |d| several(d, pick)),
        bladder: finding(d, "bladder", pick),
        temperature: finding(d, "temperature", |d| Temperature::from_tenths(d.from(300, 440))),
        blood_pressure: finding(d, "blood-pressure", pressure),
        breathing: finding(d, "breathing", |d| d.from(4, 80)),
        urine_protein: finding(d, "urine-protein", pick),
        contractions_in_ten: finding(d, "contractions-in-ten", tally),
        contraction_length: finding(d, "contraction-length", lasting),
        contraction_strength: finding(d, "contraction-strength", pick),
        tone_at_rest: finding(d, "tone-at-rest", pick),
        tender_at: finding(d, "tender-at", |d| several(d, place)),
        height_for_dates: finding(d, "height-for-dates", pick),
    }
}

fn count(d: &mut Dice) -> HeartCount {
    let seconds = d.from(5, 120);
    HeartCount { beats: (seconds * d.from(61, 290)).div_ceil(60), seconds }
}

pub fn one_baby(d: &mut Dice) -> Baby {
    Baby {
        // A baby always has something, or its heading would not be written.
        head: Finding::Found(Found { value: place(d), sure: true, known_by: KnownBy::Hands }),
        breech: finding(d, "breech", place),
        back: finding(d, "back", back),
        limbs: finding(d, "limbs", |d| several(d, place)),
        head_above_brim: finding(d, "head-above-brim", |d| Fifths::new(d.below(6) as u8).expect("fifths")),
        descent: finding(d, "descent", pick),
        prominence: finding(d, "prominence", pick),
        attitude: finding(d, "attitude", pick),
        legs: finding(d, "legs", pick),
        dip_at_navel: finding(d, "dip-at-navel", pick),
        heart: finding(d, "heart", |d| {
            if d.once_in(4) { HeartHeard::Somewhere } else { HeartHeard::At(place(d)) }
        }),
        heart_with: finding(d, "heart-with", pick),
        heart_counts: finding(d, "heart-counts", |d| several(d, count)),
        heart_rate: finding(d, "heart-rate", |d| {
            let low = d.from(30, 300);
            Rate { low, high: d.from(low, 300) }
        }),
        heart_rise: finding(d, "heart-rise", |d| d.from(30, 300)),
        heart_rhythm: finding(d, "heart-rhythm", pick),
        weight_by_hand: finding(d, "weight-by-hand", |d| {
            let (one, other) = (grams(d), grams(d));
            if one.get() <= other.get() {
                WeightRange { low: one, high: other }
            } else {
                WeightRange { low: other, high: one }
            }
        }),
        weight_by_scan: finding(d, "weight-by-scan", |d| ScanWeight {
            weight: grams(d),
            at: (!d.once_in(3)).then(|| weeks(d, 28, 315)),
        }),
        moved_under_hands: finding(d, "moved-under-hands", pick),
        fundus_feels: finding(d, "fundus-feels", |d| several(d, pick)),
        brim_feels: finding(d, "brim-feels", |d| several(d, pick)),
        ballottable: finding(d, "ballottable", pick),
        overlaps_pubic_bone: finding(d, "overlaps-pubic-bone", pick),
        by_vagina: finding(d, "found-by-vagina", |d| several(d, pick)),
        station: finding(d, "station", |d| Station(d.below(11) as i8 - 5)),
        size: finding(d, "size", pick),
        kicks: finding(d, "kicks", |d| several(d, place)),
        hiccups: finding(d, "hiccups", pick),
        unstable_lie: finding(d, "unstable-lie", pick),
        turning: finding(d, "turning-tried", pick),
        heart_also: finding(d, "heart-also", |d| several(d, place)),
        heart_quality: finding(d, "heart-quality", pick),
        heart_slows: finding(d, "heart-slows", |d| several(d, pick)),
        heart_by: finding(d, "heart-by", |d| several(d, pick)),
        heart_and_pulse: finding(d, "heart-and-pulse", pick),
        lie: finding(d, "lie", pick),
        presentation: finding(d, "presentation", pick),
        position: finding(d, "position", pick),
    }
}

/// The findings of the babies with left and right changed over; codes left out, because they have letters for sides.
pub fn mirrored(text: &str) -> (String, String) {
    let start = text.find("[[baby]]").expect("a baby");
    let lines: Vec<&str> = text[start..].lines().filter(|line| !line.starts_with("position =")).collect();
    let text = lines.join("\n");
    let other = text.replace("left", "@").replace("right", "left").replace('@', "right");
    (text, other)
}

#[test]
fn changing_sides_over_changes_them_over_and_nothing_else() {
    let mut dice = Dice::new(8_675_309);
    let mut sided = 0;
    for round in 0..3000 {
        let mut exam = Exam {
            dates: Dates::default(),
            weeks: None,
            mother: mother(&mut dice),
            babies: vec![one_baby(&mut dice)],
            note: None,
            read: vec![],
        };
        exam.read = say::findings(&exam);
        let (text, other) = mirrored(&write(&exam));
        let (one, other) = (conclude(&read(&text), 0), conclude(&read(&other), 0));
        let at = format!("round {round}\n{text}");
        assert_eq!(
            (one.lie, one.presentation, one.head_up),
            (other.lie, other.presentation, other.head_up),
            "{at}"
        );
        assert_eq!(
            (one.engaged, one.unsure, &one.conflicts),
            (other.engaged, other.unsure, &other.conflicts),
            "{at}"
        );
        assert_eq!(one.head_side.map(MotherSide::opposite), other.head_side, "{at}");
        let side = |conclusion: &Conclusion| conclusion.back.and_then(|back| back.side);
        assert_eq!(side(&one).map(MotherSide::opposite), side(&other), "{at}");
        let code = |conclusion: &Conclusion| conclusion.position.map(Position::code);
        let swapped = code(&one).map(|code| match code.split_at(1) {
            ("L", rest) => format!("R{rest}"),
            ("R", rest) => format!("L{rest}"),
            _ => code,
        });
        assert_eq!(swapped, code(&other), "{at}");
        sided += usize::from(swapped.is_some());
    }
    assert!(sided > 300, "only {sided} exams named a position");
}

/// An exam with any findings, sensible or not.
pub fn random_exam(dice: &mut Dice) -> Exam {
    let babies = if dice.once_in(4) { vec![one_baby(dice), one_baby(dice)] } else { vec![one_baby(dice)] };
    let note = dice.once_in(3).then(|| "a note; with marks? (and brackets)".to_owned());
    let weeks = (!dice.once_in(3)).then(|| weeks(dice, 210, 315));
    let mut exam = Exam { weeks, dates: Dates::default(), mother: mother(dice), babies, note, read: vec![] };
    exam.read = say::findings(&exam);
    exam
}

#[test]
fn canonical_words_read_back_to_the_same_exam() {
    let mut dice = Dice::new(20_260_314);
    for round in 0..2000 {
        let exam = random_exam(&mut dice);
        let text = write(&exam);
        assert_eq!(read(&text), exam, "round {round}\n{text}");
        // Nothing that was found is lost on the way to a conclusion, and no exam makes it fail.
        for index in 0..=exam.babies.len() {
            let conclusion = conclude(&exam, index);
            assert!(
                conclusion.position.is_none()
                    || conclusion.presentation.is_some()
                    || conclusion.lie == Some(Lie::Transverse)
            );
        }
        handspan::reckon::reckon(&exam, &Default::default());
    }
}

/// A character written by its number, whose number is not all there, is a fault that is told.
#[test]
fn a_broken_escape_is_told() {
    for broken in
        ["one = {\"\\u\u{799}99\"}", "one = {\"\\U00A0\"}", "one = {\"\\u", "one = x\ntwo = {\"\\u00g0\"}"]
    {
        let fault = Words::from_text("en", broken).err().map(|fault| fault.to_string()).unwrap_or_default();
        assert!(fault.contains("\\u00A0"), "{broken:?}: {fault}");
    }
    let whole = Words::from_text("en", "one = {\"a\\u00A0b\"}").expect("a whole escape");
    assert_eq!(whole.say("one", &[]).expect("its words"), "a\u{a0}b");
}
