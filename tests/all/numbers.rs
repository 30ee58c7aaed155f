//! Dates, tape, weight and heart: equations against the printed tables, and visits with what is reckoned of them.

use super::shared::{path, read, rows};
use handspan::clinic::Thresholds;
use handspan::commands::{Check, Command, Request, Source, run};
use handspan::exam::TapeUnfit;
use handspan::reckon::curves::{
    CENTILE_Z, EFW_DAYS, HADLOCK_DAYS, HADLOCK_SHARES, SFH_DAYS, centile, efw_hadlock, efw_intergrowth,
    sfh_at, sfh_mean, sfh_reaches,
};
use handspan::reckon::ledger::LEDGER_VERSION;
use handspan::reckon::{
    Grade, Reckoning, Remark, Series, SettledBy, landmarks, reckon, series, weight_curves,
};
use handspan::report::Look;
use handspan::units::Gestation;
use handspan::words::Words;
use serde_json::{Value, json};

fn whole(weeks: u16) -> Gestation {
    Gestation::from_days(weeks * 7)
}

fn cells(table: &str) -> Vec<(u16, Vec<f64>)> {
    rows(table)
        .into_iter()
        .map(|row| {
            let numbers = row[1..].iter().map(|cell| cell.parse().expect("a number")).collect();
            (row[0].parse().expect("weeks"), numbers)
        })
        .collect()
}

/// z of the printed centiles 3, 5, 10, 50, 90, 95 and 97.
const PRINTED_Z: [f64; 7] = [-1.880794, -1.644854, -1.281552, 0.0, 1.281552, 1.644854, 1.880794];

#[test]
fn the_tape_curve_gives_188_of_the_189_printed_cells() {
    let mut misprints = vec![];
    let mut right = 0;
    for (weeks, printed) in cells("sfh-centiles.csv") {
        for (at, printed) in printed.iter().enumerate() {
            let ours = sfh_at(whole(weeks), PRINTED_Z[at]);
            // Printed to 0.1 cm.
            if (ours - printed).abs() <= 0.05 + 1e-3 {
                right += 1
            } else {
                misprints.push((weeks, at, *printed))
            }
        }
    }
    assert_eq!((right, misprints), (188, vec![(42, 2, 36.9)]));
}

#[test]
fn the_weight_curves_give_the_printed_cells() {
    let (mut intergrowth, mut hadlock) = (0, 0);
    for (weeks, printed) in cells("efw-intergrowth.csv") {
        for (at, printed) in printed.iter().enumerate() {
            let ours = efw_intergrowth(whole(weeks), PRINTED_Z[at]).expect("a weight");
            assert!((ours - printed).abs() <= 0.52, "{weeks} weeks, column {at}: {ours} {printed}");
            intergrowth += 1;
        }
    }
    for (weeks, printed) in cells("efw-hadlock.csv") {
        let middle = efw_hadlock(whole(weeks)).expect("a weight");
        for ((wanted, share), printed) in HADLOCK_SHARES.into_iter().zip(printed) {
            let most = if wanted == 50 { 0.5 } else { 2.0 };
            assert!((middle * share - printed).abs() <= most, "{weeks} weeks, P{wanted}: {printed}");
            hadlock += 1;
        }
    }
    assert_eq!((intergrowth, hadlock), (19 * 7, 31 * 5));
    for days in [EFW_DAYS.start() - 1, EFW_DAYS.end() + 1] {
        assert_eq!(efw_intergrowth(Gestation::from_days(days), 0.0), None);
    }
    for days in [HADLOCK_DAYS.start() - 1, HADLOCK_DAYS.end() + 1] {
        assert_eq!(efw_hadlock(Gestation::from_days(days)), None);
    }
    let curves = weight_curves(whole(34));
    let line = |line: Option<[(u8, f64); 3]>| line.expect("a line").map(|(centile, g)| (centile, g.round()));
    assert_eq!(line(curves.intergrowth), [(10, 1795.0), (50, 2162.0), (90, 2583.0)]);
    assert_eq!(line(curves.hadlock), [(10, 1973.0), (50, 2377.0), (90, 2782.0)]);
    assert_eq!((weight_curves(whole(15)).intergrowth, weight_curves(whole(41)).hadlock), (None, None));
}

/// The mean rises from day to day, so the weeks that a tape reaches are one day.
#[test]
fn the_weeks_that_a_tape_reaches() {
    for days in SFH_DAYS {
        let weeks = Gestation::from_days(days);
        assert_eq!(sfh_reaches(sfh_mean(weeks)), Some(weeks));
        assert!(days == *SFH_DAYS.start() || sfh_mean(weeks) > sfh_mean(Gestation::from_days(days - 1)));
    }
    assert_eq!(sfh_reaches(15.8), None);
    assert_eq!(sfh_reaches(60.0), Gestation::new(42, 6));
    for (wanted, z) in CENTILE_Z {
        assert!((centile(z) - f64::from(wanted)).abs() < 1e-4);
    }
}

fn reckoned(text: &str) -> Reckoning {
    reckon(&read(text), &Thresholds::default())
}

/// The remarks that come of dates, tape, weight and heart.
fn ids(text: &str) -> Vec<&'static str> {
    let ours = ["tape-", "dates-", "size-", "heart-recount", "heart-outside-usual", "heart-irregular"];
    let remarks = reckoned(text).remarks;
    remarks
        .iter()
        .map(|remark| remark.id)
        .filter(|id| ours.iter().any(|start| id.starts_with(start)))
        .collect()
}

fn find(reckoning: &Reckoning, id: &str) -> Remark {
    reckoning.remarks.iter().find(|remark| remark.id == id).unwrap_or_else(|| panic!("no {id}")).clone()
}

fn said(remark: &Remark) -> String {
    remark.text(&Words::load("en").expect("words")).expect("a sentence")
}

fn said_of(text: &str, id: &str) -> String {
    said(&find(&reckoned(text), id))
}

fn check(text: &str, json: bool, weight_curves: bool) -> String {
    let exams = vec![Source::new("a.toml", text)];
    let command = Command::Check(Check { exams, json, weights: true, weight_curves, ..Check::default() });
    let outcome = run(&Request { command, look: Look::Plain });
    assert!(outcome.text.lines().all(|line| json || line.chars().count() <= 100), "{}", outcome.text);
    outcome.text
}

fn check_json(text: &str) -> Value {
    serde_json::from_str(&check(text, true, false)).expect("JSON")
}

/// The text with every run of blanks as one.
fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

const DOWN: &str = "[baby]\nhead = \"above pubic bone\"\n";

fn taped(weeks: &str, cm: f64, rest: &str) -> String {
    format!("weeks = \"{weeks}\"\n[mother]\nfundal-height = \"{cm} cm\"\n{rest}")
}

#[test]
fn a_tape_of_35_at_37_weeks_under_a_low_head() {
    let text = taped(
        "37+0",
        35.0,
        &format!("{DOWN}head-above-brim = \"2/5\"\nweight-by-hand = \"6 lb 8 oz to 7 lb\"\n"),
    );
    assert_eq!(ids(&text), Vec::<&str>::new());
    let json = check_json(&text);
    assert_eq!(
        json["fundal_height"],
        json!({"measured_cm": 35.0, "expected_cm": 35.68, "sd_cm": 1.95, "z": -0.35, "centile": 36.3,
            "weeks_rule": "2 cm below weeks, inside the limit of 2"})
    );
    // 155 x (35 - 12) = 3565 and 155 x (35 - 11) = 3720; 301 + 78 x 35 = 3031.
    assert_eq!(
        json["babies"][0]["weight"],
        json!({"hand_g": [2948, 3175], "johnson_g": [3550, 3700], "johnson_n": [12, 11], "buchmann_g": 3050})
    );
    assert_eq!(
        (&json["version"], &json["ledger"]),
        (&json!(env!("CARGO_PKG_VERSION")), &json!(LEDGER_VERSION))
    );
    let text = one_line(&check(&text, false, false));
    for words in [
        "Centimetres as weeks: 2 cm below weeks, inside the limit of 2 cm.",
        "INTERGROWTH-21st: mean 35.7 cm, SD 1.9 cm; z -0.35, centile 36.",
        "By hand: 2948 g (6 lb 8 oz) to 3175 g (7 lb 0 oz).",
        "Johnson: 3550 to 3700 g (n 12 to 11). Buchmann: 3050 g, made for labour at term.",
    ] {
        assert!(text.contains(words), "{words}\n{text}");
    }
    assert!(!text.contains("low head"), "{text}");
}

#[test]
fn a_tape_of_30_at_37_weeks() {
    let low = taped("37+0", 30.0, &format!("{DOWN}head-above-brim = \"1/5\"\n"));
    let high = taped("37+0", 30.0, &format!("{DOWN}head-above-brim = \"4/5\"\n"));
    for (text, head) in [(&low, true), (&high, false)] {
        assert_eq!(ids(text), ["tape-four-weeks-behind"]);
        let remark = find(&reckoned(text), "tape-four-weeks-behind");
        assert_eq!(remark.grade, Grade::FollowGuidance);
        let said = said(&remark);
        assert!(
            said.starts_with(
                "The tape is 30 cm at 37+0: four weeks or more behind the mean, at centile under 1"
            ),
            "{said}"
        );
        // A low head is named and silences nothing.
        assert_eq!(
            said.ends_with("A low head can lower the tape; that does not rule out a small baby."),
            head,
            "{said}"
        );
        assert_eq!(remark.findings.contains(&"baby.1.head-above-brim".to_owned()), head);
    }
    let json = check_json(&high);
    assert_eq!(json["fundal_height"]["weeks_rule"], "7 cm below weeks, outside the limit of 2");
    assert_eq!(json["fundal_height"]["z"], -2.92);
}

#[test]
fn the_two_answers_are_kept_apart() {
    for (weeks, cm, expected) in [
        // On the limit is within; P10 is 33.19, P90 38.18 at 37+0.
        ("37+0", 35.0, &[][..]),
        // From 36+0 a tape between P10 and P90 has no remark of its own: the mean itself is more than 2 cm behind the weeks.
        ("37+0", 34.9, &[]),
        ("37+0", 33.2, &[]),
        ("35+6", 32.9, &["tape-outside-weeks"]),
        ("36+0", 33.9, &[]),
        ("37+0", 33.1, &["tape-below-p10"]),
        ("37+0", 38.1, &[]),
        ("37+0", 38.2, &["tape-above-p90"]),
        // Within the weeks rule and above the curve's P90: both are shown, the curve calls.
        ("37+0", 39.0, &["tape-above-p90"]),
        // Weeks are completed weeks: 30+4 less 28 is 2, and within.
        ("30+4", 28.0, &[]),
        ("30+4", 27.9, &["tape-outside-weeks"]),
        // The weeks rule and the curve's remarks start at 24+0; before, numbers alone stand.
        ("23+6", 21.0, &[]),
        ("23+6", 21.7, &[]),
        ("24+0", 21.7, &["tape-outside-weeks"]),
        ("15+6", 5.0, &[]),
        ("16+0", 13.9, &[]),
        ("42+6", 30.0, &["tape-four-weeks-behind"]),
        ("43+0", 30.0, &["tape-outside-weeks"]),
        ("43+0", 42.0, &[]),
        // Four weeks behind, to the day: the mean of 27+0 is 26.715, of 27+1 it is 26.854.
        ("31+0", 26.72, &["tape-four-weeks-behind"]),
        ("30+6", 26.72, &["tape-below-p10"]),
        ("31+0", 26.86, &["tape-below-p10"]),
        ("19+6", 12.0, &[]),
        ("20+0", 12.0, &[]),
        ("24+0", 17.0, &["tape-four-weeks-behind"]),
    ] {
        assert_eq!(ids(&taped(weeks, cm, "")), expected, "{cm} cm at {weeks}");
    }
    // A number is never rounded across its limit.
    let remark = find(&reckoned(&taped("30+4", 27.96, "")), "tape-outside-weeks");
    assert!(said(&remark).contains("2.04 cm below weeks, outside 2 cm"), "{}", said(&remark));
    let text = one_line(&check(&taped("37+0", 33.18, ""), false, false));
    assert!(text.contains("centile 9.9") && text.contains("below the tenth"), "{text}");
}

/// At 30+0 and 27.5 cm. (It stood at 37+0 and 34 cm until a tape between P10 and P90 had no remark of its own from 36+0 on.)
#[test]
fn a_clinic_moves_the_weeks_rule() {
    let text = taped("30+0", 27.5, "");
    let own = Thresholds { tape_cm: 3, ..Thresholds::default() };
    let local = reckon(&read(&text), &own);
    assert!(local.local && local.remarks.iter().all(|remark| !remark.id.starts_with("tape-")));
    assert_eq!(ids(&text), ["tape-outside-weeks"]);
}

#[test]
fn a_tape_that_is_unfit_has_neither_answer() {
    use TapeUnfit::{Crosswise, Fibroids, LargeBuild, MuchWater, Twins};
    let breech = "[baby]\nbreech = \"above pubic bone\"\nhead = \"fundus\"\n";
    let cases: [(&str, &[TapeUnfit]); 10] = [
        ("[[baby]]\nhead = \"above pubic bone\"\n[[baby]]\nhead = \"fundus\"\n", &[Twins]),
        ("lumps = \"left, at navel\"\n[baby]\nhead = \"above pubic bone\"\n", &[Fibroids]),
        ("lumps = \"not felt\"\n", &[]),
        ("water = \"much\"\n", &[MuchWater]),
        ("water = \"little\"\n", &[]),
        ("tape-unfit = [\"BMI 35 or more\", \"much water\"]\n", &[LargeBuild, MuchWater]),
        ("tape-unfit = \"crosswise\"\n", &[Crosswise]),
        ("[baby]\nhead = \"left flank\"\nbreech = \"right flank\"\n", &[Crosswise]),
        ("[baby]\nhead = \"left iliac fossa\"\n", &[Crosswise]),
        (breech, &[]),
    ];
    for (rest, why) in cases {
        let text = taped("37+0", 30.0, rest);
        let reckoning = reckoned(&text);
        let tape = reckoning.tape.as_ref().expect("a tape");
        assert_eq!(tape.unfit, why, "{rest}");
        let read = why.is_empty();
        assert_eq!((tape.standard.is_some(), tape.weeks_rule.is_some()), (read, read), "{rest}");
        let json = check_json(&text);
        assert_eq!(json["fundal_height"]["measured_cm"], 30.0);
        for key in ["z", "centile", "weeks_rule", "expected_cm", "sd_cm"] {
            assert_eq!(json["fundal_height"].get(key).is_some(), read, "{key}: {rest}");
        }
        assert_eq!(json["fundal_height"].get("unfit").is_none(), read);
        assert_eq!(ids(&text), if read { ["tape-four-weeks-behind"] } else { ["tape-not-read"] }, "{rest}");
        if !read {
            assert!(reckoning.weights.iter().all(|weights| weights.by_tape.is_none()), "{rest}");
            let said = one_line(&check(&text, false, false));
            assert!(said.contains("Not compared with weeks or centiles, and no weight from it: "), "{said}");
            assert!(find(&reckoning, "tape-not-read").findings.contains(&"mother.fundal-height".to_owned()));
        }
    }
    // Without a tape the recorded reason still asks how growth is watched.
    assert_eq!(ids("weeks = \"36+0\"\n[mother]\ntape-unfit = \"BMI 35 or more\"\n"), ["tape-not-read"]);
    assert_eq!(ids("weeks = \"36+0\"\n[[baby]]\n[[baby]]\n"), Vec::<&str>::new());
    // Earlier tapes of a womb that is unfit say nothing either.
    let earlier = "earlier-tapes = [\"33+0 30 cm\", \"35+0 30 cm\"]\nlumps = \"left, at navel\"\n";
    assert_eq!(ids(&taped("37+0", 30.0, earlier)), ["tape-not-read"]);
}

/// Weights by the tape stand only where they are asked for; what was recorded by hand stands always.
#[test]
fn weights_by_the_tape_are_asked_for() {
    let text = taped("37+0", 35.0, &format!("{DOWN}weight-by-hand = \"3 kg\"\n"));
    let of = |weights: bool, json: bool| {
        let exams = vec![Source::new("a.toml", text.as_str())];
        let command = Command::Check(Check { exams, json, weights, ..Check::default() });
        run(&Request { command, look: Look::Plain }).text
    };
    assert!(of(true, false).contains("Johnson:") && of(true, true).contains("buchmann_g"));
    for unasked in [of(false, false), of(false, true)] {
        assert!(!unasked.contains("ohnson") && !unasked.contains("uchmann"), "{unasked}");
    }
    assert!(of(false, false).contains("By hand: 3000 g") && of(false, true).contains("hand_g"));
}

/// From 700 g on, the distance between weights of one baby is said; under it, not.
#[test]
fn weights_far_apart_are_said_to_be() {
    let said = |tape: f64, hand: &str| {
        let text = taped("38+0", tape, &format!("{DOWN}head-above-brim = \"5/5\"\n{hand}"));
        one_line(&check(&text, false, false))
    };
    // 301 + 78 x 36 = 3109 and 155 x (36 - 12) = 3720: 600 between them as printed, 3100 and 3700.
    assert!(said(36.0, "").contains("Johnson: 3550 to 3700 g") && !said(36.0, "").contains("apart"));
    // 301 + 78 x 38 = 3265 and 155 x (38 - 12) = 4030.
    let far = said(38.0, "");
    assert!(
        far.contains("These weights lie 800 g apart: none of them settles how heavy the baby is."),
        "{far}"
    );
    // Beside a weight by hand: 3700 - 3000 and 3700 - 3010.
    assert!(said(36.0, "weight-by-hand = \"3.0 kg\"\n").contains("700 g apart"));
    assert!(!said(36.0, "weight-by-hand = \"3.01 kg\"\n").contains("apart"));
}

#[test]
fn a_breech_has_no_johnson() {
    let text =
        taped("38+0", 36.0, "girth = \"98 cm\"\n[baby]\nbreech = \"above pubic bone\"\nhead = \"fundus\"\n");
    let weight = &check_json(&text)["babies"][0]["weight"];
    assert_eq!(weight, &json!({"dare_g": 3550, "buchmann_g": 3100}));
}

#[test]
fn weights_only_where_they_hold() {
    let weight =
        |weeks: &str, rest: &str| check_json(&taped(weeks, 34.0, rest))["babies"][0].get("weight").cloned();
    let johnson =
        |rest: &str| weight("38+0", &format!("{DOWN}{rest}")).expect("weights")["johnson_n"].clone();
    assert_eq!(johnson("head-above-brim = \"5/5\"\n"), json!([13, 12]));
    assert_eq!(johnson("head-above-brim = \"3/5\"\n"), json!([13, 12]));
    assert_eq!(johnson("head-above-brim = \"2/5\"\n"), json!([12, 11]));
    assert_eq!(johnson("descent = \"deep\"\n"), json!([12, 11]));
    assert_eq!(johnson("descent = \"free\"\n"), json!([13, 12]));
    assert_eq!(johnson(""), json!([13, 11]));
    // Before term, with the lie not known, and across: none. By hand stands as it was recorded.
    assert_eq!(weight("36+6", DOWN), None);
    assert_eq!(weight("38+0", "[baby]\nhead = \"not felt\"\n"), None);
    assert_eq!(weight("38+0", "[baby]\nhead = \"left flank\"\n"), None);
    assert_eq!(
        weight("30+0", "[baby]\nweight-by-hand = \"1.4 kg\"\n"),
        Some(json!({"hand_g": [1400, 1400]}))
    );
    // A tape at or under n gives no weight, and never a negative one.
    let tiny = check_json(&taped("38+0", 12.5, DOWN))["babies"][0]["weight"].clone();
    assert_eq!(tiny, json!({"buchmann_g": 1300}));
    // No centile stands on a weight, and none reaches the family.
    let text = taped("38+0", 34.0, &format!("girth = \"98 cm\"\n{DOWN}weight-by-hand = \"3 kg\"\n"));
    let said = check(&text, false, false);
    let weight = one_line(said.split("\n  Weight ").last().expect("weights"));
    assert!(weight.contains("Dare, with the girth: 3350 g") && !weight.contains("centile"), "{weight}");
    let family = std::fs::read_dir(path("src/sheet/family")).expect("the family page");
    for file in family {
        let text = std::fs::read_to_string(file.expect("a file").path()).expect("a source file");
        assert!(!text.contains("weight"), "the family page speaks of weight");
    }
}

#[test]
fn reference_weights_are_printed_when_asked_for() {
    let text = taped("34+0", 32.0, DOWN);
    assert!(!check(&text, false, false).contains("For reference"));
    let said = one_line(&check(&text, false, true));
    for words in [
        "For reference, weights by scan at 34+0, not by hand or tape.",
        "INTERGROWTH-21st: P10 1795, P50 2162, P90 2583 g.",
        "Hadlock: P10 1973, P50 2377, P90 2782 g.",
    ] {
        assert!(said.contains(words), "{words}\n{said}");
    }
    assert!(check_json(&text).get("weight_curves").is_none());
    let json: Value = serde_json::from_str(&check(&text, true, true)).expect("JSON");
    assert_eq!(json["weight_curves"]["intergrowth"], json!({"p10_g": 1795, "p50_g": 2162, "p90_g": 2583}));
    let said = one_line(&check(&taped("41+0", 37.0, DOWN), false, true));
    assert!(said.contains("from 22+0 to 40+0 only") && said.contains("from 10+0 to 40+0 only"), "{said}");
}

#[test]
fn tapes_over_the_visits() {
    for (tapes, expected) in [
        (&[29.0, 29.0, 29.0][..], Some(Series::Static)),
        (&[29.0, 29.0], None),
        (&[27.0, 29.0, 29.0, 29.0], Some(Series::Static)),
        (&[29.0, 29.0, 29.0, 30.0], None),
        (&[29.0, 30.0, 28.5], Some(Series::Falling)),
        (&[29.0, 30.0, 29.0], None),
        (&[29.0, 29.0, 28.0], Some(Series::Falling)),
        (&[], None),
    ] {
        assert_eq!(series(tapes), expected, "{tapes:?}");
    }
    let visit = |earlier: &str, cm: f64, rest: &str| {
        taped("34+0", cm, &format!("earlier-tapes = [{earlier}]\n{rest}"))
    };
    assert_eq!(ids(&visit("\"30+0 32 cm\", \"32+0 32 cm\"", 32.0, "")), ["tape-static"]);
    // In any order of the file, and only those from 18+0 on.
    assert_eq!(ids(&visit("\"32+0 32 cm\", \"30+0 33 cm\"", 32.5, "")), ["tape-falling"]);
    assert_eq!(ids(&visit("\"16+0 32 cm\", \"32+0 32 cm\"", 32.0, "")), Vec::<&str>::new());
    let remark = find(&reckoned(&visit("\"30+0 32 cm\", \"32+0 32 cm\"", 32.0, "")), "tape-static");
    assert!(said(&remark).starts_with(
        "Three tapes one after another are the same: 32 cm at 30+0, 32 cm at 32+0, and 32 cm at 34+0. Measure again"
    ));
    assert_eq!(remark.findings, ["mother.fundal-height", "mother.earlier-tapes"]);
    // With another remark on the tape, how to measure and the head are said once.
    let both = visit("\"30+0 30 cm\", \"32+0 30 cm\"", 30.0, &format!("{DOWN}head-above-brim = \"2/5\"\n"));
    assert_eq!(ids(&both), ["tape-below-p10", "tape-static"]);
    let together: String = reckoned(&both).remarks.iter().map(said).collect();
    assert_eq!(
        (together.matches("blank side").count(), together.matches("A low head").count()),
        (1, 1),
        "{together}"
    );
}

#[test]
fn an_early_womb_is_set_against_the_handbooks() {
    let level = |weeks: &str, level: &str| format!("weeks = \"{weeks}\"\n[mother]\nfundus = \"{level}\"\n");
    let said = one_line(&check(&level("14+0", "just above pubic bone"), false, false));
    assert!(
        said.contains(
            "Handbooks print for these weeks: at pubic bone to just above pubic bone, give or take 2 weeks"
        ),
        "{said}"
    );
    assert!(!said.contains("centile"), "{said}");
    let said = one_line(&check(&level("18+0", "2 fingers below navel"), false, false));
    assert!(said.contains("Handbooks print for these weeks: 2 fingers below navel, give"), "{said}");
    // What is said without a tape does not speak of one.
    let remark = said_of(&level("14+0", "at navel"), "size-against-dates");
    assert!(remark.starts_with(
        "The height of the womb fits 20+0 to 24+0, and the weeks are 14+0: more than 4 weeks apart"
    ));
    assert!(
        !remark.contains("tape") && remark.ends_with("Feel the womb again with the bladder empty."),
        "{remark}"
    );
    // At 20+0 the curve answers, and no landmark.
    let at_20 = taped("20+0", 19.5, "");
    let said = one_line(&check(&at_20, false, false));
    assert!(
        said.contains(
            "Centimetres as weeks: from 24+0 only. INTERGROWTH-21st: mean 19.8 cm, SD 1.5 cm; z -0.17, centile 43."
        ),
        "{said}"
    );
    assert!(!said.contains("Handbooks") && ids(&at_20).is_empty(), "{said}");
    assert_eq!(landmarks::expected(whole(20)), None);
    // Far from its weeks a level is looked at again: more than three weeks below the navel, more than four from there on.
    for (weeks, words, expected) in [
        ("17+0", "just above pubic bone", &[][..]),
        ("17+1", "just above pubic bone", &["size-against-dates"]),
        ("13+0", "halfway to navel", &[]),
        ("12+6", "halfway to navel", &["size-against-dates"]),
        ("16+0", "at navel", &[]),
        ("15+6", "at navel", &["size-against-dates"]),
        // Weeks alone are left as they are from 24+0 on.
        ("33+0", "at navel", &[]),
    ] {
        assert_eq!(ids(&level(weeks, words)), expected, "{words} at {weeks}");
    }
}

#[test]
fn size_against_dates_only_where_no_scan_settles_them() {
    // 31+0 by the last period; the tape reaches 26+0 or so.
    let period = "visit = 2025-08-06\nlast-period = 2025-01-01\n";
    let scan = "visit = 2025-08-06\nlast-period = 2025-01-01\nscan = \"12+0 on 2025-03-26\"\n";
    let tape = "[mother]\nfundal-height = \"25 cm\"\n";
    assert_eq!(ids(&format!("{period}{tape}")), ["size-against-dates", "tape-four-weeks-behind"]);
    assert_eq!(ids(&format!("{scan}{tape}")), ["tape-four-weeks-behind"]);
    assert_eq!(ids(&format!("weeks = \"31+0\"\n{tape}")), ["tape-four-weeks-behind"]);
    // Above as well as below.
    let large = "[mother]\nfundal-height = \"36 cm\"\n";
    assert_eq!(ids(&format!("{period}{large}")), ["size-against-dates", "tape-above-p90"]);
    let remark = find(&reckoned(&format!("{period}{tape}")), "size-against-dates");
    assert_eq!(remark.grade, Grade::LookAgain);
    // Whichever it is, it explains nothing away.
    assert!(said(&remark).ends_with("Whatever the dates, what is said of the tape stands."));
}

#[test]
fn due_dates_stand_beside_one_another() {
    let text = "visit = 2026-03-14\nlast-period = 2025-06-20\ncycle = 30\nscan = \"12+3 on 2025-09-20\"\n";
    let dating = reckoned(text).dates.expect("dates");
    assert_eq!((dating.due.to_string().as_str(), dating.by), ("2026-04-01", SettledBy::Scan));
    assert_eq!(
        check_json(text)["dates"],
        json!({"due": "2026-04-01", "settled_by": "scan",
            "by_last_period": {"due": "2026-03-29", "days_later": -3},
            "by_calendar_rule": {"due": "2026-03-27", "days_later": -5}})
    );
    let said = one_line(&check(text, false, false));
    assert!(
        said.contains(
            "Due 2026-04-01, by the scan. 280 days from the last period and a cycle of 30 days: 2026-03-29, 3 days \
             earlier. By the calendar rule (Naegele), which is not used: 2026-03-27, 5 days earlier."
        ),
        "{said}"
    );
    // From the last period alone: the calendar rule stands beside it, 3 days later here, and is not used.
    let text = "visit = 2025-12-20\nlast-period = 2025-05-10\n";
    let said = one_line(&check(text, false, false));
    assert!(
        said.contains(
            "Due 2026-02-14, by 280 days from the last period. By the calendar rule (Naegele), which is not used: \
             2026-02-17, 3 days later."
        ),
        "{said}"
    );
    assert_eq!(check_json(text)["gestation"]["text"], "32+0");
    let by = |text: &str| reckoned(text).dates.map(|dating| (dating.due.to_string(), dating.by));
    assert_eq!(by("visit = 2025-09-03\ndue = 2025-10-08\n"), Some(("2025-10-08".into(), SettledBy::Due)));
    assert_eq!(by("visit = 2025-09-03\nweeks = \"35+0\"\n"), Some(("2025-10-08".into(), SettledBy::Weeks)));
    assert_eq!(by("weeks = \"35+0\"\n"), None);
    assert!(check_json("weeks = \"35+0\"\n").get("dates").is_none());
}

#[test]
fn dates_far_apart_are_looked_at_again() {
    let scan =
        |period: &str| format!("visit = 2026-03-14\nlast-period = {period}\nscan = \"12+3 on 2025-09-20\"\n");
    // The scan's last period would be 2025-06-25.
    assert_eq!(ids(&scan("2025-06-11")), Vec::<&str>::new());
    assert_eq!(ids(&scan("2025-06-10")), ["dates-apart"]);
    assert_eq!(ids(&scan("2025-07-09")), Vec::<&str>::new());
    assert_eq!(ids(&scan("2025-07-10")), ["dates-apart"]);
    let remark = find(&reckoned(&scan("2025-06-10")), "dates-apart");
    assert!(said(&remark).starts_with(
        "By the last period she is due on 2026-03-17, 15 days from 2026-04-01, the date of the scan. Look both up"
    ));
    assert_eq!(remark.findings, ["last-period", "scan"]);
    assert_eq!(ids("visit = 2025-09-03\ndue = 2025-10-30\nlast-period = 2025-01-01\n"), ["dates-apart"]);
}

#[test]
fn the_heart_against_its_usual_range() {
    let heart = |weeks: &str, lines: &str| {
        let weeks = if weeks.is_empty() { String::new() } else { format!("weeks = \"{weeks}\"\n") };
        ids(&format!("{weeks}[baby]\n{lines}\n"))
    };
    for (weeks, lines, expected) in [
        // 36 in 15 s is 144, between 140 and 148.
        ("37+0", "heart-counts = \"36 in 15 s\"", &[][..]),
        // 28 in 15 s is 112, and may be 108; 60 s settle it.
        ("37+0", "heart-counts = \"28 in 15 s\"", &["heart-recount"]),
        ("37+0", "heart-counts = [\"28 in 15 s\", \"112 in 60 s\"]", &[]),
        ("37+0", "heart-counts = \"110 in 60 s\"", &[]),
        ("37+0", "heart-counts = [\"42 in 15 s\", \"150 in 60 s\"]", &["heart-recount"]),
        // 12 in 6 s is 120: between 110 and 130, ends left out, touches the limit and does not pass it.
        ("37+0", "heart-counts = \"12 in 6 s\"", &[]),
        ("37+0", "heart-counts = \"16 in 6 s\"", &["heart-recount"]),
        ("37+0", "heart-counts = \"17 in 6 s\"", &["heart-outside-usual"]),
        ("37+0", "heart-rate = \"150-165\"", &["heart-recount"]),
        ("37+0", "heart-rate = \"162-166\"", &["heart-outside-usual"]),
        ("37+0", "heart-rate = 109", &["heart-outside-usual"]),
        // The mean of counts stands for itself beside a rate.
        ("37+0", "heart-rate = 140\nheart-counts = \"105 in 60 s\"", &["heart-outside-usual"]),
        // What cannot wait is said there, and only there.
        ("37+0", "heart-rate = 99", &[]),
        ("37+0", "heart-counts = \"46 in 15 s\"", &[]),
        // No range before 24+0; weeks that are not known have one.
        ("23+6", "heart-rate = 105", &[]),
        ("24+0", "heart-rate = 105", &["heart-outside-usual"]),
        ("", "heart-rate = 165", &["heart-outside-usual"]),
        ("12+4", "heart-counts = [\"16 in 6 s\", \"17 in 6 s\"]", &[]),
        ("37+0", "heart-rhythm = \"irregular\"", &["heart-irregular"]),
        ("37+0", "heart-rhythm = \"regular\"", &[]),
    ] {
        assert_eq!(heart(weeks, lines), expected, "{lines} at {weeks}");
    }
    let text = "weeks = \"37+0\"\n[baby]\nheart-counts = [\"11 in 6 s\", \"28 in 15 s\"]\n";
    let remark = said(&find(&reckoned(text), "heart-recount"));
    assert!(remark.starts_with(
        "The counts have a mean of 111 and leave the rate anywhere between 100 and 120 beats a minute, across a limit"
    ), "{remark}");
    assert!(remark.contains("a beat on which the clock starts counts as zero"), "{remark}");
    let said_text = one_line(&check(text, false, false));
    assert!(
        said_text.contains("Mean 111 beats a minute; the counts allow 100 to 120 (steps of 10, 4)."),
        "{said_text}"
    );
    // A mean just under a limit is not rounded up to it.
    let near =
        "weeks = \"37+0\"\n[baby]\nheart-counts = [\"109 in 60 s\", \"109 in 60 s\", \"111 in 60 s\"]\n";
    let remark = said(&find(&reckoned(near), "heart-outside-usual"));
    assert!(remark.starts_with("The rate is 109.7 beats a minute, under 110."), "{remark}");
    // Of twins each has its own.
    let twins = "weeks = \"34+0\"\n[[baby]]\nheart-rate = 140\n[[baby]]\nheart-rate = 105\n";
    assert_eq!(find(&reckoned(twins), "heart-outside-usual").findings, ["baby.2.heart-rate"]);
}

#[test]
fn a_rise_is_never_a_comfort() {
    let text =
        "weeks = \"37+0\"\n[mother]\nmovements = \"fewer\"\n[baby]\nheart-rate = 140\nheart-rise = 165\n";
    let with = reckoned(text).remarks;
    assert_eq!(with, reckoned(&text.replace("heart-rise = 165\n", "")).remarks);
    assert!(with.iter().any(|remark| remark.id == "movements-fewer"));
    let said = one_line(&check(text, false, false));
    assert!(said.contains("On movement up to 165: noted, and it settles nothing."), "{said}");
    assert!(!said.contains("accelerat") && !said.contains("reactive"), "{said}");
}

#[test]
fn act_now_numbers_are_not_rounded_to_their_limit() {
    let text = "weeks = \"37+0\"\n[baby]\nheart-counts = [\"99 in 60 s\", \"100 in 60 s\"]\n";
    let remark = said(&find(&reckoned(text), "heart-rate-low"));
    assert!(remark.contains("99.5 beats a minute, under 100"), "{remark}");
}

/// Read as a midwife would hear it and as a lawyer would: what to do next; no diagnosis, no comfort, no growth word for the baby.
#[test]
fn what_is_said_neither_diagnoses_nor_comforts() {
    let words = std::fs::read_to_string(path("layouts/words/en.ftl")).expect("the words");
    let joined = words.replace("\n ", " ");
    let ours: Vec<&str> = joined
        .lines()
        .filter(|line| {
            ["numbers-", "tape-", "remark-tape-", "remark-dates-", "remark-size-", "remark-heart-"]
                .iter()
                .any(|start| line.starts_with(start))
        })
        .collect();
    assert!(ours.len() > 45);
    for line in ours {
        let lower = line.to_lowercase();
        for never in [
            "normal",
            "healthy",
            "good",
            " well",
            " fine",
            "all right",
            "reassur",
            "restrict",
            "macrosom",
            "abnormal",
            "reactive",
            "tachy",
            "brady",
            "hydramnios",
            "suspect",
        ] {
            assert!(!lower.contains(never), "{never}: {line}");
        }
        let remark =
            line.strip_prefix("remark-").is_some_and(|rest| !rest.starts_with("heart-not-heard-but"));
        assert!(!remark || lower.contains("guidance") || lower.contains("again"), "{line}");
    }
}
