//! Worked rows on units, fifths, counts, dates and angles, as copied with their sources.

use super::shared::{baby, problems, read, rows};
use handspan::exam::dates::{due_by_calendar_rule, due_from_last_period};
use handspan::exam::{HeartCount, Position, conclude};
use handspan::reckon::{count_rate, count_step, heart_rate};
use handspan::units::{Gestation, Grams};

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
    assert_eq!(rows.len(), 18);
    for row in rows {
        let (id, topic, input, expected) =
            (row[0].as_str(), row[1].as_str(), row[2].as_str(), row[3].as_str());
        match (topic, id) {
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
                assert_eq!(exam.note.as_deref(), Some("station: 0"));
                let said =
                    problems("[baby]\nhead = \"above pubic bone\"\nhead-above-brim = \"3/5\"\nstation = 0\n");
                assert_eq!(said, ["vaginal-finding"]);
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
