//! A crosswise or slanting lie in labour, and a lie that keeps changing. In: an exam and its conclusions. Out: the remarks on them.

use super::of_baby;
use crate::exam::{Conclusion, Exam};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{TERM, across, from, labour_keys, labouring, waters_broken, waters_keys};

/// Of one baby; of two, the first. Broken waters have a remark of their own where the baby lies across, which says the same.
pub fn remarks(exam: &Exam, conclusions: &[Conclusion], remarks: &mut Vec<Remark>) {
    let lies_across = conclusions.first().is_some_and(across);
    let pressing = labouring(exam) || waters_broken(exam);
    if lies_across && pressing {
        if !waters_broken(exam) {
            let on = of_baby(exam, 0, const { rule("crosswise-in-labour") }, &["lie"]);
            remarks.push(on.on(&labour_keys(exam)));
        }
        return;
    }
    // Whichever way it lies today, it may lie otherwise tomorrow.
    let changes = exam.babies.first().is_some_and(|baby| baby.unstable_lie.value() == Some(&true));
    if changes && pressing {
        let on = of_baby(exam, 0, const { rule("unstable-lie-in-labour") }, &["unstable-lie"]);
        remarks.push(on.on(&labour_keys(exam)).on(&waters_keys(exam)));
    } else if changes && from(exam, TERM) && !lies_across {
        // Across at term, `crosswise-at-term` says the same.
        remarks.push(of_baby(exam, 0, const { rule("unstable-lie") }, &["unstable-lie"]));
    }
}
