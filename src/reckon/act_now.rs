//! What cannot wait, first the words of the note. In: an exam, its conclusions, the clinic's limits of the heart. Out: act-now
//! remarks, and of the same subjects those that can wait until another look.
//!
//! A file a subject. They cannot be silenced. Where it is not known whether a rule applies, it applies.

mod across;
mod bleeding;
mod heart_rate;
mod heart_sought;
mod infection;
mod movements;
mod note;
mod overlap;
mod pressure;
mod private;
mod scar;
mod signs;
mod tightenings;
mod vagina;
mod waters;
mod womb;

pub(super) use heart_rate::FULL_COUNT;
pub use heart_sought::too_early as heart_too_early;

use super::Remark;
use super::ledger::Rule;
use crate::clinic::Thresholds;
use crate::exam::{Conclusion, Exam};

/// The remarks of these subjects: of the note, of the mother, then of each baby.
pub fn act_now(exam: &Exam, conclusions: &[Conclusion], thresholds: &Thresholds) -> Vec<Remark> {
    let mut remarks = vec![];
    note::remarks(exam, &mut remarks);
    vagina::remarks(exam, &mut remarks);
    movements::remarks(exam, &mut remarks);
    bleeding::remarks(exam, &mut remarks);
    signs::remarks(exam, &mut remarks);
    pressure::remarks(exam, &mut remarks);
    let infection = infection::remarks(exam, &mut remarks);
    womb::remarks(exam, &mut remarks);
    scar::remarks(exam, &mut remarks);
    tightenings::remarks(exam, &mut remarks);
    private::remarks(exam, &mut remarks);
    waters::remarks(exam, conclusions, infection, &mut remarks);
    across::remarks(exam, conclusions, &mut remarks);
    overlap::remarks(exam, &mut remarks);
    heart_sought::remarks(exam, &mut remarks);
    heart_rate::remarks(exam, thresholds, infection, &mut remarks);
    remarks
}

fn remark(rule: &Rule, findings: &[&str]) -> Remark {
    Remark::new(rule).on(findings)
}

fn of_baby(exam: &Exam, index: usize, rule: &Rule, names: &[&str]) -> Remark {
    Remark::new(rule).of_baby(exam, index, names)
}
