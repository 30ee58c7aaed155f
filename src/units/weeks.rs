//! Gestational age. In: weeks and days. Out: whole days, written `36+4`.

use std::fmt;

/// Gestational age, counted in whole days from the first day of the last period;
/// written `36+4` (weeks+days).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Gestation {
    days: u16,
}

impl Gestation {
    /// `None` if `days` is above 6.
    pub const fn new(weeks: u16, days: u16) -> Option<Self> {
        if days > 6 || weeks > 999 { None } else { Some(Self { days: weeks * 7 + days }) }
    }
    /// From whole days.
    pub const fn from_days(days: u16) -> Self {
        Self { days }
    }
    /// `days` later (earlier when negative); `None` before the first day or beyond 999 weeks.
    pub fn later_by(self, days: i32) -> Option<Self> {
        let days = u16::try_from(i32::from(self.days).checked_add(days)?).ok()?;
        (days <= 6993).then_some(Self { days })
    }
    /// All days.
    pub const fn days(self) -> u16 {
        self.days
    }
    /// Exact weeks: weeks + days/7, never truncated.
    pub fn exact_weeks(self) -> f64 {
        f64::from(self.days) / 7.0
    }
}

impl fmt::Display for Gestation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}+{}", self.days / 7, self.days % 7)
    }
}
