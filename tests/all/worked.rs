//! Every worked row, as copied with its source: the program is held to it, or it is said where else it is.

use super::shared::{baby, path, problems, read, rows};
use handspan::body::measures::{
    abdominal_circumference_mm, biparietal_mm, femur_mm, foot_mm, humerus_mm, radius_mm, tibia_mm,
};
use handspan::body::pelvis::INLET_BREADTH;
use handspan::clinic::Thresholds;
use handspan::exam::dates::{due_by_calendar_rule, due_from_last_period, due_from_scan};
use handspan::exam::{FundusLevel, HeartCount, Position, conclude};
use handspan::reckon::curves::{
    CENTILE_Z, HADLOCK_DAYS, centile, efw_hadlock, efw_intergrowth, sfh_at, sfh_mean, sfh_sd,
};
use handspan::reckon::landmarks::weeks_of;
use handspan::reckon::{
    Reckoning, Series, against_usual, buchmann, count_rate, count_step, dare, heart_rate, johnson, reckon,
    series,
};
use handspan::units::{Gestation, Grams};
use std::cmp::Ordering;

/// Rows that this program does not reckon, or that another test holds: id, and where it is, or why it is nowhere.
const ELSEWHERE: [(&str, &str); 12] = [
    ("028", "outside::numbers: newborn sizes are not in the program"),
    (
        "055",
        "nowhere: how long a rise lasts is not recorded, so no rise is judged; numbers::a_rise_is_never_a_comfort",
    ),
    ("068", "sides::back_and_limbs_are_drawn_on_their_sides"),
    ("069", "touch::the_heart_is_heard_where_the_table_says"),
    ("070", "touch::the_heart_is_heard_where_the_table_says"),
    ("076", "nowhere: SMOG is not used"),
    ("077", "nowhere: SMOG is not used"),
    ("079", "nowhere: SMOG is not used"),
    ("019 HC, OFD", "nowhere: the drawing does not use these two"),
    ("020 HC, OFD", "nowhere: the drawing does not use these two"),
    ("021 HC, OFD", "nowhere: the drawing does not use these two"),
    ("023, 024 ulna, fibula", "nowhere: the drawing does not use these two"),
];

fn reckoned(text: &str) -> Reckoning {
    reckon(&read(text), &Thresholds::default())
}

fn taped(weeks: &str, cm: f64) -> Reckoning {
    reckoned(&format!("weeks = \"{weeks}\"\n[mother]\nfundal-height = \"{cm} cm\"\n"))
}

fn remarked(reckoning: &Reckoning, id: &str) -> bool {
    reckoning.remarks.iter().any(|remark| remark.id == id)
}

fn whole(weeks: f64) -> Gestation {
    Gestation::from_days((weeks * 7.0) as u16)
}

/// All numbers in a text, signs left out.
fn numbers(text: &str) -> Vec<f64> {
    text.split(|c: char| !(c.is_ascii_digit() || c == '.'))
        .filter_map(|part| part.trim_matches('.').parse().ok())
        .collect()
}

fn assert_near(id: &str, found: &[f64], expected: &[f64], tolerance: f64) {
    assert_eq!(found.len(), expected.len(), "row {id}: {found:?} {expected:?}");
    for (found, expected) in found.iter().zip(expected) {
        assert!((found - expected).abs() <= tolerance, "row {id}: {found} is not {expected}");
    }
}

#[test]
fn worked_rows() {
    let rows = rows("worked.csv");
    assert_eq!(rows.len(), 59);
    for row in rows {
        let (id, topic, input, expected) =
            (row[0].as_str(), row[1].as_str(), row[2].as_str(), row[3].as_str());
        if ELSEWHERE.iter().any(|(elsewhere, _)| *elsewhere == id) {
            continue;
        }
        match (topic, id) {
            ("sfh", "001") => {
                let reckoning = taped("40+1", 40.0);
                let standard = reckoning.tape.and_then(|tape| tape.standard).expect("a tape");
                let found = [standard.mean, standard.sd, standard.z];
                let said = numbers(expected);
                assert_eq!(
                    Gestation::new(40, 1).map(|w| format!("{:.6}", w.exact_weeks())),
                    Some(said[0].to_string())
                );
                assert_near(id, &found, &said[1..4], 1e-5);
                assert_near(id, &[standard.centile], &said[4..], 5e-5);
            }
            ("sfh", "010") => {
                let printed = numbers(expected);
                assert_near(id, &[sfh_at(whole(42.0), CENTILE_Z[1].1)], &printed[..1], 0.05);
            }
            ("sfh", "013") => {
                for weeks in ["15+6", "43+0"] {
                    assert!(taped(weeks, 16.0).tape.is_some_and(|tape| tape.standard.is_none()), "row {id}");
                }
                for weeks in ["16+0", "42+6"] {
                    assert!(taped(weeks, 16.0).tape.is_some_and(|tape| tape.standard.is_some()), "row {id}");
                }
            }
            ("sfh", _) => {
                let weeks = whole(numbers(input)[0]);
                let found = CENTILE_Z.map(|(_, z)| sfh_at(weeks, z));
                assert_near(id, &found, &numbers(expected), 0.05);
                let z = |at: f64| (at - sfh_mean(weeks)) / sfh_sd(weeks);
                let back = found.map(|at| centile(z(at)));
                assert_near(id, &back, &CENTILE_Z.map(|(centile, _)| f64::from(centile)), 1e-4);
            }
            ("sfh-rule", "014" | "015") => {
                let (weeks, said) = (numbers(input)[0], numbers(expected));
                let within = |cm: f64| {
                    let reckoning = taped(&format!("{weeks}+0"), cm);
                    let rule = reckoning.tape.as_ref().and_then(|tape| tape.weeks_rule).expect("a rule");
                    // Outside the rule there is a remark of some kind.
                    let remark = ["tape-outside-weeks", "tape-below-p10", "tape-above-p90"];
                    assert!(rule.within() || remark.iter().any(|id| remarked(&reckoning, id)));
                    rule.within()
                };
                assert!(within(said[0]) && within(said[1]), "row {id}");
                assert!(!within(said[0] - 0.1) && !within(said[1] + 0.1), "row {id}");
                assert!(said.len() == 2 || said[2..] == [said[0] - 0.1, said[1] + 0.1], "row {id}");
            }
            ("sfh-rule", "016") => {
                let said = numbers(input);
                assert!(remarked(&taped(&format!("{}+0", said[0]), said[1]), "tape-four-weeks-behind"));
                // By this curve the tape is later by less than a week than by the chart of the row.
                assert!(!remarked(
                    &taped(&format!("{}+0", said[2] + 2.0), said[1]),
                    "tape-four-weeks-behind"
                ));
            }
            ("sfh-rule", "017") => {
                assert_eq!(series(&numbers(input)), Some(Series::Static), "row {id}");
            }
            ("biometry", "019" | "020" | "021") => {
                let (weeks, said) = (numbers(input)[0], numbers(expected));
                let found = [biparietal_mm(weeks), abdominal_circumference_mm(weeks), femur_mm(weeks)];
                assert_near(id, &found, &[said[1], said[3], said[4]], 0.06);
            }
            ("biometry", "023" | "024") => {
                let (weeks, said) = (numbers(input)[0], numbers(expected));
                let found = [humerus_mm(weeks), radius_mm(weeks), tibia_mm(weeks), foot_mm(weeks)];
                // The smooth curve leaves its table by up to 1.2 mm, as it says.
                assert_near(id, &found, &[said[0], said[1], said[3], said[5]], 1.2);
            }
            ("crl" | "dating", "025" | "026") => {
                // Weeks from a scan's lengths are not reckoned here; the due date from its weeks is. The row counts parts
                // of a day, the program whole ones.
                let said = expected
                    .split("= ")
                    .nth(1)
                    .and_then(|rest| rest.split([' ', ';']).next())
                    .expect("weeks");
                let date = input.rsplit(' ').next().and_then(|date| date.parse().ok()).expect("a date");
                let exam = read(&format!("visit = {date}\nscan = \"{said} on {date}\"\n"));
                assert_eq!(exam.weeks.map(|weeks| weeks.to_string()).as_deref(), Some(said));
                let due = due_from_scan(exam.weeks.expect("weeks"), date).expect("a due date");
                let published =
                    expected.split("EDD ").nth(1).and_then(|rest| rest.split(' ').next()).expect("EDD");
                let published: jiff::civil::Date = published.parse().expect("a date");
                let days = published.until(due).expect("days").get_days();
                assert!((0..=1).contains(&days), "row {id}: {due}");
            }
            ("efw", "029") => {
                let said = numbers(expected);
                for (at, weeks) in numbers(input).into_iter().filter(|n| *n >= 24.0 && *n != 50.0).enumerate()
                {
                    let found = efw_hadlock(whole(weeks)).expect("a weight");
                    assert_near(id, &[found, found], &[said[at], said[5 + at]], 0.5);
                }
                assert!(efw_hadlock(Gestation::from_days(HADLOCK_DAYS.end() + 1)).is_none());
            }
            ("efw", "030") => {
                let found = [0, 2, 4]
                    .map(|at: usize| efw_intergrowth(whole(34.0), CENTILE_Z[at].1).expect("a weight"));
                assert_near(id, &found, &numbers(expected), 1.0);
            }
            ("efw", "033") => {
                let grams = johnson(30.0, 12).expect("a weight");
                let (pounds, ounces) = Grams::new(grams).expect("a weight").pounds_and_ounces();
                assert_eq!(expected, format!("{grams} g = {pounds} lb {ounces} oz"), "row {id}");
            }
            ("efw", "035") => {
                assert_eq!([12.0, 11.0, 1.0].map(|tape| johnson(tape, 12)), [None; 3], "row {id}");
                assert!(johnson(12.1, 12).is_some());
            }
            ("efw", "036") => {
                let said = numbers(input);
                assert_eq!(expected, format!("{} g", dare(said[0], said[1])), "row {id}");
            }
            ("efw", "038") => {
                let large = |cm: f64| {
                    let text = format!(
                        "weeks = \"40+0\"\n[mother]\nfundal-height = \"{cm} cm\"\n[baby]\nhead = \"above pubic bone\"\n"
                    );
                    reckoned(&text).weights[0].by_tape.expect("weights").buchmann_large
                };
                assert_eq!(numbers(input), [40.0]);
                assert!(large(40.0) && !large(39.5), "row {id}");
                assert!((buchmann(40.0) - 3421.0).abs() < 1e-9);
            }
            ("fhr", "054") => {
                let side = |word: &str| match word {
                    "low" => Ordering::Less,
                    "normal" => Ordering::Equal,
                    "high" => Ordering::Greater,
                    other => panic!("{other}"),
                };
                for (rate, word) in numbers(input).into_iter().zip(expected.split(" / ")) {
                    assert_eq!(against_usual(rate), side(word), "row {id}: {rate}");
                    let text = format!("weeks = \"37+0\"\n[baby]\nheart-rate = {rate}\n");
                    let remark = remarked(&reckoned(&text), "heart-outside-usual");
                    assert_eq!(remark, word != "normal", "row {id}: {rate}");
                }
            }
            ("bayes", "056") => {
                // What the remarks say of hands rests on these.
                let said = numbers(input);
                let [before, found, passed] = [said[0], said[1], said[2]].map(|percent| percent / 100.0);
                let right = before * found / (before * found + (1.0 - before) * (1.0 - passed));
                assert_near(id, &[right * 100.0], &numbers(expected)[..1], 0.1);
                let words = std::fs::read_to_string(path("layouts/words/en.ftl")).expect("the words");
                let sentence = |id: &str| {
                    words
                        .lines()
                        .find(|line| line.starts_with(&format!("remark-{id} ")))
                        .expect("a remark")
                        .to_owned()
                };
                let missed = ((1.0 - found) * 10.0).round();
                assert!(sentence("presentation-not-known").contains(&format!("{missed} in 10")));
                assert!(
                    (0.4..0.5).contains(&(1.0 - right)) && sentence("not-head-down").contains("nearly half")
                );
            }
            ("landmark", "072") => {
                let levels =
                    [FundusLevel::JustAbovePubicBone, FundusLevel::HalfwayToNavel, FundusLevel::AtXiphoid];
                for (weeks, level) in numbers(input).into_iter().zip(levels) {
                    let (first, last) = weeks_of(level).expect("weeks");
                    assert!((first..=last).contains(&whole(weeks)), "row {id}: {weeks}");
                }
            }
            ("landmark", "073") => {
                let (first, last) = weeks_of(FundusLevel::AtNavel).expect("weeks");
                assert!([20.0, 22.0].iter().all(|weeks| (first..=last).contains(&whole(*weeks))), "row {id}");
            }
            ("pelvis", "080") => {
                let spare = f64::from(INLET_BREADTH) - biparietal_mm(40.0) / 10.0;
                assert_near(id, &[spare], &numbers(expected), 0.05);
            }
            ("units", "042") => {
                let said = numbers(input);
                let grams = Grams::from_pounds(said[0], said[1]).expect("a weight").get();
                assert_near(id, &[grams.round(), grams], &numbers(expected), 0.01);
                let exam = baby(&format!("weight-by-hand = \"{input}\""));
                assert_eq!(exam.babies[0].weight_by_hand.value().map(|w| w.low.get()), Some(3402.0));
            }
            ("units", _) => {
                let weight = Grams::new(numbers(input)[0]).expect("a weight");
                let ounces = weight.ounces();
                let whole = weight.pounds_and_ounces();
                let pounds = (ounces / 16.0).floor();
                let found = [pounds, ounces - pounds * 16.0, f64::from(whole.0), f64::from(whole.1)];
                assert_near(id, &found, &numbers(expected), 0.1);
            }
            ("fifths", "045") => {
                let exam =
                    read("[baby]\nhead = \"above pubic bone\"\nhead-above-brim = \"3/5\"\nstation = 0\n");
                assert_eq!(conclude(&exam, 0).engaged, Some(false), "row {id}");
                // A station is a finding of its own, and never turned into fifths.
                assert_eq!(exam.note, None, "row {id}");
                assert!(exam.babies[0].station.value().is_some(), "row {id}");
                let said =
                    problems("[baby]\nhead = \"above pubic bone\"\nhead-above-brim = \"3/5\"\nstation = 0\n");
                assert!(said.is_empty(), "row {id}: {said:?}");
            }
            ("fifths", _) => {
                for fifths in input.split(", ") {
                    let exam = baby(&format!("head = \"above pubic bone\"\nhead-above-brim = \"{fifths}\""));
                    assert_eq!(conclude(&exam, 0).engaged, Some(expected == "engaged"), "row {id}: {fifths}");
                }
            }
            ("fhr", "051" | "052") => {
                // A steady rate gives one of two whole counts in six seconds.
                let said = numbers(input);
                let beats = (said[0] * said[1] / 60.0).floor() as u16;
                let shown =
                    [beats, beats + 1].map(|beats| count_rate(HeartCount { beats, seconds: said[1] as u16 }));
                assert_near(id, &shown, &numbers(expected)[..2], 0.0);
            }
            ("fhr", _) => {
                let said = numbers(input);
                let count = HeartCount { beats: said[0] as u16, seconds: said[1] as u16 };
                let exam = baby(&format!("heart-counts = \"{} in {} s\"", count.beats, count.seconds));
                let rate = heart_rate(&exam.babies[0]).expect("a rate");
                let found = [rate.mean, count_step(count), rate.low, rate.high];
                assert_near(id, &found, &numbers(expected), 1e-9);
            }
            ("dating", "058") => {
                let period = input.trim_start_matches("LMP ").parse().expect("a date");
                let due = due_from_last_period(period, 28).expect("a due date");
                let calendar = due_by_calendar_rule(period).expect("a due date");
                assert_eq!(expected, format!("280 d: {due}; Naegele calendar: {calendar}"), "row {id}");
            }
            ("dating", "060") => {
                let exam = read("visit = 2025-09-03\nlast-period = 2025-01-01\n");
                let weeks = exam.weeks.expect("weeks");
                let due =
                    due_from_last_period("2025-01-01".parse().expect("a date"), 28).expect("a due date");
                assert_eq!(input, "LMP 2025-01-01; visit 2025-09-03");
                assert_eq!(expected, format!("GA {} d = {weeks}; EDD {due}", weeks.days()), "row {id}");
            }
            ("dating", "062") => {
                let due = due_from_last_period(input.trim_start_matches("LMP ").parse().expect("a date"), 28);
                assert_eq!(expected, format!("EDD {}", due.expect("a due date")), "row {id}");
            }
            ("dating", "063") => {
                let due =
                    due_from_last_period("2025-01-01".parse().expect("a date"), 35).expect("a due date");
                assert_eq!(input, "LMP 2025-01-01, cycle 35 days");
                assert_eq!(expected, format!("EDD {due} (+7)"), "row {id}");
            }
            ("dating", "064") => {
                assert_eq!(
                    problems("visit = 2024-12-31\nlast-period = 2025-01-01\n"),
                    ["out-of-range"],
                    "row {id}"
                );
                // The limit here is 45+0.
                assert_eq!(
                    problems("visit = 2025-11-13\nlast-period = 2025-01-01\n"),
                    ["out-of-range"],
                    "row {id}"
                );
            }
            ("dating", "065") => {
                let later = Gestation::new(13, 6).and_then(|age| age.later_by(1)).expect("weeks");
                assert_eq!(expected, later.to_string(), "row {id}");
            }
            ("readability", "074" | "075") => {
                // Words, sentences, syllables; the ease of reading is not used.
                let given: Vec<usize> = numbers(input).iter().map(|n| *n as usize).collect();
                let [words, sentences, syllables] = given[..] else { panic!("row {id}: {input}") };
                let (_, grade) = expected.split_once("FK grade ").expect("a grade");
                let found = super::family_page::school_grade(words, sentences, syllables);
                let grade: f64 =
                    grade.split(' ').next().and_then(|grade| grade.parse().ok()).expect("a grade");
                assert_near(id, &[found], &[grade], 0.01);
            }
            ("angle", _) => {
                let degrees: Vec<f64> = input
                    .split('/')
                    .map(|code| match Position::from_code(code) {
                        Some(Position::Lengthwise { octant, .. }) => f64::from(octant.degrees()),
                        _ => panic!("row {id}: {code}"),
                    })
                    .collect();
                assert_near(id, &degrees, &numbers(expected), 0.0);
            }
            _ => panic!("row {id} is not compared"),
        }
    }
}

/// What is said to be elsewhere is there.
#[test]
fn rows_that_are_elsewhere_are_there() {
    for (id, place) in ELSEWHERE {
        for test in place.split([' ', ';', ',']).filter(|word| word.contains("::")) {
            let (module, test) = test.trim_end_matches(':').split_once("::").expect("a test");
            if module == "outside" {
                assert!(path(&format!("tests/outside/{test}.rs")).exists(), "{id}");
                continue;
            }
            let source = std::fs::read_to_string(path(&format!("tests/all/{module}.rs"))).expect("tests");
            assert!(source.contains(&format!("fn {test}()")), "{id}: {module}::{test}");
        }
        assert!(place.starts_with("nowhere") || place.contains("::"), "{id}: {place}");
    }
}
