//! Published curves. In: exact weeks. Out: mean, spread, z and centile of a tape; reference lines of weights by scan.
//!
//! Weeks are never truncated; logarithms are natural. The equations are shipped, not the tables; tests hold them together.

use crate::units::Gestation;
use std::ops::RangeInclusive;

/// First and last day for which INTERGROWTH-21st publishes the height of the fundus, 16+0 to 42+6.
pub const SFH_DAYS: RangeInclusive<u16> = 16 * 7..=42 * 7 + 6;
/// First and last day of the INTERGROWTH-21st weights, 22+0 to 40+0.
pub const EFW_DAYS: RangeInclusive<u16> = 22 * 7..=40 * 7;
/// First and last day of the Hadlock weights, 10+0 to 40+0.
pub const HADLOCK_DAYS: RangeInclusive<u16> = 10 * 7..=40 * 7;

/// Mean symphysis-fundus height, cm. Source: INTERGROWTH-21st (Papageorghiou et al., BMJ 2016;355:i5662), seen.
pub fn sfh_mean(weeks: Gestation) -> f64 {
    let w = weeks.exact_weeks();
    5.133374 + 0.1058353119 * w * w - 0.0231295 * w * w * libm::log(w)
}

/// Its standard deviation, cm. Source: as the mean.
pub fn sfh_sd(weeks: Gestation) -> f64 {
    0.9922667 + 0.0258087 * weeks.exact_weeks()
}

/// The height at a given z, cm.
pub fn sfh_at(weeks: Gestation, z: f64) -> f64 {
    sfh_mean(weeks) + z * sfh_sd(weeks)
}

/// The weeks whose mean a height in cm reaches: the last day of the curve with a mean not above it; `None` under the mean of
/// 16+0. Source: derived from the mean, which rises from day to day.
pub fn sfh_reaches(height: f64) -> Option<Gestation> {
    SFH_DAYS.rev().map(Gestation::from_days).find(|weeks| sfh_mean(*weeks) <= height)
}

/// z of the third, tenth, fiftieth, ninetieth and ninety-seventh centile.
pub const CENTILE_Z: [(u8, f64); 5] =
    [(3, -1.880794), (10, -1.281552), (50, 0.0), (90, 1.281552), (97, 1.880794)];

/// The centile of a z: 100 Φ(z).
pub fn centile(z: f64) -> f64 {
    50.0 * libm::erfc(-z / std::f64::consts::SQRT_2)
}

/// Weight by scan at a given z, in g, at 22+0 to 40+0; `None` outside. The logarithm of the weight has skewness L, median M and
/// spread S. Source: INTERGROWTH-21st (Stirnemann et al., Ultrasound Obstet Gynecol 2017;49:478-86), seen.
pub fn efw_intergrowth(weeks: Gestation, z: f64) -> Option<f64> {
    if !EFW_DAYS.contains(&weeks.days()) {
        return None;
    }
    let w = weeks.exact_weeks();
    let (cube, log) = (w * w * w, libm::log(w));
    let l = -4.257629 - 2162.234 / (w * w) + 0.0002301829 * cube;
    let m = 4.956737 + 0.0005019687 * cube - 0.0001227065 * cube * log;
    let s = 0.0001 * (-6.997171 + 0.057559 * cube - 0.01493946 * cube * log);
    // (1 + zSL)^(1/L), which is exp(zS) where L is 0.
    let power = if l == 0.0 { z * s } else { libm::log1p(z * s * l) / l };
    Some(libm::exp(m * libm::exp(power)))
}

/// Median weight by scan, in g, at 10+0 to 40+0; `None` outside. Source: Hadlock, Harrist, Martinez-Poyer, Radiology
/// 1991;181:129-33, seen as transcribed.
pub fn efw_hadlock(weeks: Gestation) -> Option<f64> {
    let w = weeks.exact_weeks();
    HADLOCK_DAYS.contains(&weeks.days()).then(|| libm::exp(0.578 + 0.332 * w - 0.00354 * w * w))
}

/// What the printed outer centiles of Hadlock are of the median. They do not follow from a spread: the printed ones are these
/// shares of it. Source: derived from Table 2, every cell of which they give back within 2 g.
pub const HADLOCK_SHARES: [(u8, f64); 5] = [(3, 0.75), (10, 0.83), (50, 1.0), (90, 1.17), (97, 1.25)];
