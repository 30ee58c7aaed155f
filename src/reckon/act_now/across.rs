//! A crosswise or slanting lie in labour. In: an exam and its conclusions. Out: the remark on it.

use super::of_baby;
use crate::exam::{Conclusion, Exam};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{across, labour_keys, labouring, waters_broken};

/// Of one baby; of two, the first. Broken waters have a remark of their own, which says the same.
pub fn remarks(exam: &Exam, conclusions: &[Conclusion], remarks: &mut Vec<Remark>) {
    if conclusions.first().is_some_and(across) && labouring(exam) && !waters_broken(exam) {
        let on = of_baby(exam, 0, const { rule("crosswise-in-labour") }, &["lie"]);
        remarks.push(on.on(&labour_keys(exam)));
    }
}
