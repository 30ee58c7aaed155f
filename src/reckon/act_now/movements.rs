//! Movements as she tells of them. In: an exam. Out: the remark on them.

use super::remark;
use crate::exam::{Exam, Movements};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{before, from, weeks};
use crate::units::Gestation;

/// From here on movements are expected to have been felt. Source: family-safety table (NTH NHS), seen.
const EXPECTED: Gestation = weeks(24, 0);

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    // Before, few movements are how it begins; weeks that are not known are not before.
    let early = exam.weeks.is_some() && before(exam, EXPECTED);
    let rule = match exam.mother.movements.value() {
        Some(Movements::Fewer | Movements::Changed) if early => const { rule("movements-fewer-early") },
        Some(Movements::Fewer) => const { rule("movements-fewer") },
        Some(Movements::Changed) => const { rule("movements-changed") },
        Some(Movements::None) => const { rule("movements-none") },
        Some(Movements::NotFeltYet) if from(exam, EXPECTED) => const { rule("movements-not-felt-yet") },
        Some(Movements::Usual | Movements::Felt | Movements::NotFeltYet) | None => return,
    };
    remarks.push(remark(rule, &["mother.movements"]));
}
