//! The due date. In: the dates of an exam. Out: the date that is settled, by what, the other dates beside it with their distance
//! in days; and a remark when they lie far apart.
//!
//! 280 days are the rule. The calendar rule (Naegele) stands beside it, named, and is never used.

use super::Remark;
use super::ledger::rule;
use crate::exam::Exam;
use crate::exam::dates::{
    self, TERM_DAYS, USUAL_CYCLE, days_between, due_by_calendar_rule, due_from_last_period, due_from_scan,
};
use jiff::ToSpan;
use jiff::civil::Date;

/// Given dates further apart than this are looked at again, in days. Common practice.
const FAR_APART: i32 = 14;

/// What a due date rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SettledBy {
    /// The early scan.
    Scan,
    /// The due date that was given.
    Due,
    /// The last period, 280 days, and the cycle.
    LastPeriod,
    /// The weeks that were given, and the day of the visit.
    Weeks,
}

impl SettledBy {
    /// The name in JSON and in message ids.
    pub fn name(self) -> &'static str {
        match self {
            SettledBy::Scan => "scan",
            SettledBy::Due => "due",
            SettledBy::LastPeriod => "last-period",
            SettledBy::Weeks => "weeks",
        }
    }
}

/// A due date that is not the settled one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Beside {
    /// The date.
    pub due: Date,
    /// Days by which it is later than the settled one; negative: earlier.
    pub days_later: i32,
}

/// The due date and what stands beside it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Dating {
    /// The settled due date.
    pub due: Date,
    /// What it rests on.
    pub by: SettledBy,
    /// By the last period, 280 days and the cycle, when that is known. Source: StayWell, seen; the cycle: common practice.
    pub by_last_period: Option<Beside>,
    /// By the calendar rule, when the last period is known. Source: Hesperian, Where There Is No Doctor, seen.
    pub by_calendar_rule: Option<Beside>,
}

/// The due date of an exam; `None` when nothing settles one.
pub fn dating(exam: &Exam) -> Option<Dating> {
    let given = exam.dates;
    let cycle = given.cycle.map_or(USUAL_CYCLE, i32::from);
    let by_period = given.last_period.and_then(|date| due_from_last_period(date, cycle));
    let by_scan = given.scan.and_then(|(at, date)| due_from_scan(at, date));
    let by_weeks = given
        .visit
        .zip(exam.weeks)
        .and_then(|(visit, weeks)| visit.checked_add((TERM_DAYS - i32::from(weeks.days())).days()).ok());
    let (due, by) = by_scan
        .map(|due| (due, SettledBy::Scan))
        .or(given.due.map(|due| (due, SettledBy::Due)))
        .or(by_period.map(|due| (due, SettledBy::LastPeriod)))
        .or(by_weeks.map(|due| (due, SettledBy::Weeks)))?;
    let beside = |date: Date| Beside { due: date, days_later: days_between(due, date) };
    Some(Dating {
        due,
        by,
        by_last_period: by_period.map(beside),
        by_calendar_rule: given.last_period.and_then(due_by_calendar_rule).map(beside),
    })
}

/// A remark when the last period and the settled date lie far apart: one of them may be misread or miswritten.
pub fn apart(exam: &Exam, dating: Option<&Dating>) -> Option<Remark> {
    let dating = dating?;
    let period = dating.by_last_period.filter(|period| period.days_later.abs() > FAR_APART)?;
    let settled = match dating.by {
        SettledBy::Scan => "scan",
        SettledBy::Due => "due",
        SettledBy::LastPeriod | SettledBy::Weeks => return None,
    };
    let mut on = vec!["last-period", settled];
    on.extend(exam.dates.cycle.map(|_| "cycle"));
    Some(
        Remark::new(const { rule("dates-apart") })
            .on(&on)
            .with("days", period.days_later.abs().to_string())
            .with("by", settled)
            .with("due", dates::written(dating.due))
            .with("period", dates::written(period.due)),
    )
}
