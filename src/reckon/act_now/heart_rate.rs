//! The heart's rate: beyond its limits, outside the usual range with other signs, falls, and her pulse near it. In: an exam, the
//! clinic's limits, whether infection stands. Out: remarks on it.

use super::of_baby;
use crate::clinic::Thresholds;
use crate::exam::words::Vocabulary;
use crate::exam::{Baby, BesidePulse, Exam, Report, Slows};
use crate::reckon::Remark;
use crate::reckon::heart::{HIGH_COUNTS, RANGE_HOLDS, USUAL, against_usual, heart_rate};
use crate::reckon::ledger::{Rule, rule};
use crate::reckon::rounded::beside;
use crate::reckon::told::{fever, from, has, labouring, moves_less, waters_broken};
use std::cmp::Ordering;

/// Her pulse this near the rate heard may be the rate heard, beats a minute, itself included.
const PULSE_NEAR: f64 = 15.0;
/// A count this long is a full one, seconds. Source: WHO 2018, NICE (fetal-heart table), seen.
pub const FULL_COUNT: u16 = 60;

pub fn remarks(exam: &Exam, thresholds: &Thresholds, infection: bool, remarks: &mut Vec<Remark>) {
    for (index, baby) in exam.babies.iter().enumerate() {
        // What ran together with her pulse is not the baby's.
        if baby.heart_and_pulse.value() == Some(&BesidePulse::Same) {
            continue;
        }
        let beyond = beyond_limits(exam, index, baby, thresholds, remarks);
        if !beyond {
            remarks.extend(outside(exam, index, baby, infection));
        }
        if baby.heart_slows.value().is_some_and(|slows| slows.contains(&Slows::AfterContractions)) {
            let rule = const { rule("heart-slows-after-contractions") };
            remarks.push(of_baby(exam, index, rule, &["heart-slows"]));
        } else if let Some(slows) = baby.heart_slows.value() {
            let when: Vec<&str> = slows.iter().filter_map(|slows| slows.word()).collect();
            let rule = const { rule("heart-slows") };
            remarks.push(of_baby(exam, index, rule, &["heart-slows"]).with("signs", when.join(", ")));
        }
    }
}

/// The rates of a baby: key, lowest, highest, middle. Counts and a stated rate may stand side by side: either can be the alarm.
fn rates(baby: &Baby) -> Vec<(&'static str, f64, f64, f64)> {
    let counted = heart_rate(baby).filter(|_| baby.heart_counts.value().is_some());
    let stated = baby.heart_rate.value().map(|rate| (f64::from(rate.low), f64::from(rate.high)));
    [
        counted.map(|rate| ("heart-counts", rate.mean, rate.mean, rate.mean)),
        stated.map(|(low, high)| ("heart-rate", low, high, (low + high) / 2.0)),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Under or over the limits, and her pulse near the rate; true when a limit is passed.
fn beyond_limits(
    exam: &Exam,
    index: usize,
    baby: &Baby,
    thresholds: &Thresholds,
    remarks: &mut Vec<Remark>,
) -> bool {
    let mut beyond = false;
    for (name, low, high, mean) in rates(baby) {
        let mut push = |rule: &Rule, names: &[&str], value: f64| {
            let mut remark = of_baby(exam, index, rule, names);
            let limits = [f64::from(thresholds.heart_low), f64::from(thresholds.heart_high)];
            remark.values.push(("rate", beside(value, &limits, 0)));
            remark.values.push(("low", thresholds.heart_low.to_string()));
            remark.values.push(("high", thresholds.heart_high.to_string()));
            remark.values.push(("pulse", exam.mother.pulse.value().map_or(0, |pulse| *pulse).to_string()));
            remarks.push(remark);
        };
        if low < f64::from(thresholds.heart_low) {
            beyond = true;
            push(const { rule("heart-rate-low") }, &[name], low);
        }
        if high > f64::from(thresholds.heart_high) && from(exam, HIGH_COUNTS) {
            beyond = true;
            push(const { rule("heart-rate-high") }, &[name], high);
        }
        // Felt and heard together, and different: it is not her pulse.
        let told_apart = baby.heart_and_pulse.value() == Some(&BesidePulse::Different);
        if let Some(pulse) = exam.mother.pulse.value()
            && !told_apart
            && (f64::from(*pulse) - mean).abs() <= PULSE_NEAR
        {
            push(const { rule("pulse-near-heart") }, &["mother.pulse", name], mean);
        }
    }
    beyond
}

/// Outside the usual range: looked at again, or pressing with other signs, or when a full count with her pulse felt says so again.
fn outside(exam: &Exam, index: usize, baby: &Baby, infection: bool) -> Option<Remark> {
    if !from(exam, RANGE_HOLDS) {
        return None;
    }
    let (key, low, high, _) = rates(baby).into_iter().find(|(_, low, high, _)| {
        let low = against_usual(*low);
        low != Ordering::Equal && low == against_usual(*high)
    })?;
    // A fast heart with fever is said with the fever.
    if infection && low > *USUAL.end() {
        return None;
    }
    let mut signs: Vec<&str> = vec![];
    signs.extend(fever(exam).then_some("fever"));
    signs.extend(has(exam, Report::Bleeding).then_some("bleeding"));
    signs.extend(waters_broken(exam).then_some("waters broken"));
    signs.extend(moves_less(exam).then_some("fewer movements"));
    signs.extend(labouring(exam).then_some("in labour"));
    let full = baby.heart_counts.value().is_some_and(|counts| {
        counts.iter().any(|count| count.seconds >= FULL_COUNT)
            && counts.iter().all(|count| against_usual(crate::reckon::count_rate(*count)) != Ordering::Equal)
    });
    let pulse_felt =
        exam.mother.pulse.value().is_some() || baby.heart_and_pulse.value() == Some(&BesidePulse::Different);
    let still = full && pulse_felt;
    let rule = if !signs.is_empty() {
        const { rule("heart-outside-usual-with-signs") }
    } else if still {
        const { rule("heart-outside-usual-still") }
    } else {
        const { rule("heart-outside-usual") }
    };
    let shown = |rate: f64| beside(rate, &[*USUAL.start(), *USUAL.end()], 0);
    let rate = if low == high { shown(low) } else { format!("{} to {}", shown(low), shown(high)) };
    Some(
        of_baby(exam, index, rule, &[key])
            .with("rate", rate)
            .with("direction", if low < *USUAL.start() { "low" } else { "high" })
            .with("signs", signs.join(", ")),
    )
}
