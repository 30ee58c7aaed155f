//! Signs that cannot wait by themselves, and faintness. In: an exam. Out: remarks on them.

use super::remark;
use crate::exam::words::Vocabulary;
use crate::exam::{Exam, Report};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{fever, has, reports};

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    if has(exam, Report::ConstantPain) {
        remarks.push(remark(const { rule("constant-pain") }, &["mother.reports"]));
    }
    let urgent: Vec<&str> = reports(exam)
        .iter()
        .filter(|report| is_urgent(**report))
        .filter_map(|report| report.word())
        .collect();
    if !urgent.is_empty() {
        remarks.push(
            remark(const { rule("urgent-signs") }, &["mother.reports"]).with("signs", urgent.join(", ")),
        );
    }
    // With fever a pain in the loin is one of its signs; burning urine has no other rule.
    let urinary: Vec<&str> = [Report::LoinPain, Report::BurningUrine]
        .into_iter()
        .filter(|report| has(exam, *report) && !(*report == Report::LoinPain && fever(exam)))
        .filter_map(Vocabulary::word)
        .collect();
    if !urinary.is_empty() {
        let rule = const { rule("signs-of-urine") };
        remarks.push(remark(rule, &["mother.reports"]).with("signs", urinary.join(", ")));
    }
    if has(exam, Report::Faint) {
        remarks.push(remark(const { rule("faint") }, &["mother.reports"]));
    } else if has(exam, Report::FaintLyingFlat) {
        remarks.push(remark(const { rule("faint-lying-flat") }, &["mother.reports"]));
    }
}

/// Signs that cannot wait by themselves, however mild they are said to be, and have no rule of their own.
/// Source: family-safety table (CDC urgent maternal warning signs; WHO danger signs), seen.
fn is_urgent(report: Report) -> bool {
    match report {
        Report::Fits
        | Report::ChestPain
        | Report::TroubleBreathing
        | Report::SightChanges
        | Report::Collapse
        | Report::ColdClammy
        | Report::SwollenCalf => true,
        Report::Bleeding
        | Report::WatersBroken
        | Report::Itching
        | Report::ConstantPain
        | Report::Tightenings
        | Report::ScarPain
        | Report::Headache
        | Report::Fever
        | Report::Swelling
        | Report::RegularTightenings
        | Report::PracticeTightenings
        | Report::SevereHeadache
        | Report::PainUnderRibs
        | Report::Vomiting
        | Report::BurningUrine
        | Report::LoinPain
        | Report::Show
        | Report::Faint
        | Report::FaintLyingFlat
        | Report::BlowOrFall
        | Report::Violence
        | Report::SelfHarm => false,
    }
}
