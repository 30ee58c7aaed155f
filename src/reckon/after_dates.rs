//! A pregnancy that has gone past its date. In: an exam. Out: the remark on it.

use super::Remark;
use super::ledger::rule;
use super::told::weeks;
use crate::exam::Exam;

/// The remark from 41+0, 42+0 and 43+0 on, of one baby; two are spoken of before.
pub fn after_dates(exam: &Exam) -> Option<Remark> {
    let now = exam.weeks.filter(|_| exam.babies.len() < 2)?;
    let rule = match now {
        now if now >= weeks(43, 0) => const { rule("after-43-weeks") },
        now if now >= weeks(42, 0) => const { rule("after-42-weeks") },
        now if now >= weeks(41, 0) => const { rule("after-41-weeks") },
        _ => return None,
    };
    Some(Remark::new(rule).on(&["weeks"]))
}
