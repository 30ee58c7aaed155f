//! Published curves. In: exact weeks. Out: mean, spread, z, centile.
//!
//! Weeks are never truncated; logarithms are natural.

use crate::units::Gestation;

/// First and last day for which INTERGROWTH-21st publishes the height of the fundus, 16+0 to 42+6.
pub const SFH_DAYS: std::ops::RangeInclusive<u16> = 16 * 7..=42 * 7 + 6;

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

/// z of the third, tenth, fiftieth, ninetieth and ninety-seventh centile.
pub const CENTILE_Z: [(u8, f64); 5] =
    [(3, -1.880794), (10, -1.281552), (50, 0.0), (90, 1.281552), (97, 1.880794)];

/// The centile of a z: 100 Φ(z).
pub fn centile(z: f64) -> f64 {
    50.0 * libm::erfc(-z / std::f64::consts::SQRT_2)
}
