//! The heart's rate. In: counts, or a rate. Out: mean and bounds in beats a minute; remarks short of what cannot wait.
//!
//! A rise on movement is kept and said; no rule rests on it.

use super::Remark;
use super::act_now::FULL_COUNT;
use super::ledger::rule;
use super::rounded::beside;
use crate::clinic::Thresholds;
use crate::exam::{Baby, BesidePulse, Exam, HeartCount, Rhythm};
use crate::units::Gestation;
use std::cmp::Ordering;

/// From here on a usual range of the rate holds. Its numbers are of labour at term; that they hold from here on is ours.
pub(super) const RANGE_HOLDS: Gestation = Gestation::from_days(24 * 7);
/// From here on a high rate cannot wait: before, hearts are fast. Common practice.
pub(super) const HIGH_COUNTS: Gestation = Gestation::from_days(20 * 7);
/// The usual range, beats a minute, its ends included. Source: NICHD 2008; WHO 2018 (fetal-heart table), seen.
pub const USUAL: std::ops::RangeInclusive<f64> = 110.0..=160.0;

/// A rate with its bounds, in beats a minute.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeartRate {
    /// The mean of the counts, or the middle of a range.
    pub mean: f64,
    /// Lowest steady rate that any count allows.
    pub low: f64,
    /// Highest steady rate that any count allows.
    pub high: f64,
}

/// The rate one count shows: beats × 60 / seconds.
pub fn count_rate(count: HeartCount) -> f64 {
    f64::from(count.beats) * 60.0 / f64::from(count.seconds)
}

/// The step of a count, 60 / seconds: a single count is off by less than one step.
/// Source: arithmetic (fhr-quantisation table).
pub fn count_step(count: HeartCount) -> f64 {
    60.0 / f64::from(count.seconds)
}

/// The rate of a baby: from its counts, else from the rate as given; `None` when neither was recorded.
pub fn heart_rate(baby: &Baby) -> Option<HeartRate> {
    if let Some(counts) = baby.heart_counts.value().filter(|counts| !counts.is_empty()) {
        let rates = || counts.iter().copied().map(count_rate);
        return Some(HeartRate {
            mean: rates().sum::<f64>() / counts.len() as f64,
            low: counts.iter().map(|c| count_rate(*c) - count_step(*c)).fold(f64::INFINITY, f64::min),
            high: counts.iter().map(|c| count_rate(*c) + count_step(*c)).fold(f64::NEG_INFINITY, f64::max),
        });
    }
    let rate = baby.heart_rate.value()?;
    let (low, high) = (f64::from(rate.low), f64::from(rate.high));
    Some(HeartRate { mean: (low + high) / 2.0, low, high })
}

/// A rate against the usual range: `Less` below, `Equal` within, ends included, `Greater` above.
pub fn against_usual(rate: f64) -> Ordering {
    match rate {
        rate if rate < *USUAL.start() => Ordering::Less,
        rate if rate > *USUAL.end() => Ordering::Greater,
        _ => Ordering::Equal,
    }
}

/// The remarks on the rates of an exam that can wait: those that cannot are in `act_now`.
pub fn heart(exam: &Exam, thresholds: &Thresholds) -> Vec<Remark> {
    let mut remarks = vec![];
    for (index, baby) in exam.babies.iter().enumerate() {
        // Where the weeks are not known the range holds: a term body is what is drawn, too.
        if exam.weeks.is_none_or(|weeks| weeks >= RANGE_HOLDS) {
            remarks.extend(recount(exam, index, baby, thresholds));
        }
        if baby.heart_rhythm.value() == Some(&Rhythm::Irregular) {
            remarks.push(Remark::new(const { rule("heart-irregular") }).of_baby(
                exam,
                index,
                &["heart-rhythm"],
            ));
        }
    }
    remarks
}

fn recount(exam: &Exam, index: usize, baby: &Baby, thresholds: &Thresholds) -> Option<Remark> {
    let limits = [f64::from(thresholds.heart_low), f64::from(thresholds.heart_high)];
    let cannot_wait = |rate: f64| rate < limits[0] || rate > limits[1];
    let shown = |rate: f64| beside(rate, &[limits[0], *USUAL.start(), *USUAL.end(), limits[1]], 0);
    let counts = baby.heart_counts.value().map_or(&[][..], Vec::as_slice);
    let counted = heart_rate(baby).filter(|_| !counts.is_empty());
    let stated = baby.heart_rate.value().map(|rate| (f64::from(rate.low), f64::from(rate.high)));
    if counted.is_some_and(|rate| cannot_wait(rate.mean))
        || stated.is_some_and(|(low, high)| cannot_wait(low) || cannot_wait(high))
    {
        return None;
    }
    // Outside the range altogether: said in `act_now`.
    let outside =
        [counted.map(|rate| (rate.mean, rate.mean)), stated].into_iter().flatten().any(|(low, high)| {
            let low = against_usual(low);
            low != Ordering::Equal && low == against_usual(high)
        });
    if outside || baby.heart_and_pulse.value() == Some(&BesidePulse::Same) {
        return None;
    }
    let straddles =
        |low: f64, high: f64| against_usual(low) != Ordering::Equal || against_usual(high) != Ordering::Equal;
    let whole = counts.iter().any(|count| count.seconds >= FULL_COUNT)
        && counts.iter().all(|count| against_usual(count_rate(*count)) == Ordering::Equal);
    let (key, low, high, mean) = [
        counted.filter(|_| !whole).map(|rate| ("heart-counts", rate.low, rate.high, rate.mean)),
        stated.map(|(low, high)| ("heart-rate", low, high, (low + high) / 2.0)),
    ]
    .into_iter()
    .flatten()
    .find(|(_, low, high, _)| straddles(*low, *high))?;
    Some(
        Remark::new(const { rule("heart-recount") })
            .of_baby(exam, index, &[key])
            .with("mean", shown(mean))
            .with("low", shown(low))
            .with("high", shown(high))
            .with("counted", if key == "heart-counts" { "yes" } else { "" }),
    )
}
