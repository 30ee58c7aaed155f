//! A head that overlaps the pubic bone in labour. In: an exam. Out: the remark on it.

use super::of_baby;
use crate::exam::Exam;
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{labour_keys, labouring};

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    if !labouring(exam) {
        return;
    }
    for (index, baby) in exam.babies.iter().enumerate() {
        if baby.overlaps_pubic_bone.value() == Some(&true) {
            let rule = const { rule("head-overlaps-in-labour") };
            remarks.push(of_baby(exam, index, rule, &["overlaps-pubic-bone"]).on(&labour_keys(exam)));
        }
    }
}
