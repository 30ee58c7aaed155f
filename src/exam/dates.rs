//! Dates to weeks. In: civil dates. Out: days of gestation, by 280 days from the first day of the last period to the due date.

use crate::units::Gestation;
use jiff::ToSpan;
use jiff::civil::Date;

/// Days from the first day of the last period to the due date.
pub const TERM_DAYS: i32 = 280;
/// The cycle the 280 days are for.
pub const USUAL_CYCLE: i32 = 28;

/// Days from `earlier` to `later`.
pub fn days_between(earlier: Date, later: Date) -> i32 {
    earlier.until(later).map_or(0, |span| span.get_days())
}

/// The due date: last period + 280 days, + the days by which the cycle is longer than 28.
pub fn due_from_last_period(last_period: Date, cycle: i32) -> Option<Date> {
    last_period.checked_add((TERM_DAYS + cycle - USUAL_CYCLE).days()).ok()
}

/// The due date by the calendar rule (Naegele): a year on, three months back, seven days on; a month's end is kept.
/// It can be up to three days later than 280 days.
pub fn due_by_calendar_rule(last_period: Date) -> Option<Date> {
    last_period.checked_add(9.months()).and_then(|date| date.checked_add(7.days())).ok()
}

/// Gestation at `visit` when the baby is due on `due`; `None` before the last period.
pub fn at_visit(due: Date, visit: Date) -> Option<Gestation> {
    Gestation::from_days(TERM_DAYS as u16).later_by(-days_between(visit, due))
}

/// The due date when a scan on `date` measured `at`.
pub fn due_from_scan(at: Gestation, date: Date) -> Option<Date> {
    date.checked_add((TERM_DAYS - i32::from(at.days())).days()).ok()
}

/// A date as it is printed: `2026-03-14`.
pub fn written(date: Date) -> String {
    date.to_string()
}
