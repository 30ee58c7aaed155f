//! Tightenings before term. In: an exam. Out: the remark on them; practice tightenings alone have none.

use super::remark;
use crate::exam::{Exam, Report};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{TERM, before, has, labour_keys, labouring};

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    if labouring(exam) && before(exam, TERM) {
        let weeks = if exam.weeks.is_some() { "known" } else { "not-known" };
        let rule = const { rule("regular-tightenings-before-term") };
        remarks.push(remark(rule, &labour_keys(exam)).with("weeks", weeks));
    } else if has(exam, Report::Tightenings) && exam.weeks.is_some_and(|weeks| weeks < TERM) {
        remarks.push(remark(const { rule("tightenings-before-term") }, &["mother.reports"]));
    }
}
