//! The heart's rate. In: counts, or a rate. Out: mean and bounds in beats a minute.

use crate::exam::{Baby, HeartCount};

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
