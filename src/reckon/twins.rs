//! Two babies that may have been taken for one another. In: an exam of two. Out: look-again remarks.

use super::Remark;
use super::ledger::rule;
use crate::exam::Exam;
use crate::exam::aside::{self, Crossed};
use crate::units::MotherSide;

/// What crosses between two babies.
pub fn twins(exam: &Exam) -> Vec<Remark> {
    let remark = |crossed| match crossed {
        Crossed::OneSide(side) => Remark::new(const { rule("twins-on-one-side") })
            .with("side", if side == MotherSide::Left { "left" } else { "right" })
            .on(&["baby.1.head", "baby.1.breech", "baby.1.back", "baby.1.heart"])
            .on(&["baby.2.head", "baby.2.breech", "baby.2.back", "baby.2.heart"]),
        Crossed::Heart(baby) => Remark::new(const { rule("heart-over-the-other-baby") }).of_baby(
            exam,
            baby,
            &["head", "breech", "back", "heart"],
        ),
    };
    aside::crossed(exam)
        .into_iter()
        .map(remark)
        .map(|mut remark| {
            // Only what was found.
            remark.findings.retain(|key| exam.read.iter().any(|(own, _)| own == key));
            remark
        })
        .collect()
}
