//! Violence, and thoughts of harming herself. In: an exam. Out: remarks for whoever examined alone; `chart::private` keeps them
//! out of what others read.

use super::remark;
use crate::exam::{Exam, Report};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::has;

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    if has(exam, Report::SelfHarm) {
        remarks.push(remark(const { rule("thoughts-of-self-harm") }, &["mother.reports"]));
    }
    if has(exam, Report::Violence) {
        remarks.push(remark(const { rule("violence-told") }, &["mother.reports"]));
    }
}
