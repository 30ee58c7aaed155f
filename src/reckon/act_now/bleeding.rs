//! Bleeding, a blow or a fall, and where the placenta lies. In: an exam. Out: remarks on them, the D antigen asked for.

use super::remark;
use crate::exam::{Exam, Placenta, Report, RhesusD};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{has, labouring, waters_broken, weeks};
use crate::units::Gestation;

/// From here on a low placenta wants its plan. Source: RCOG 27a (2018), seen second-hand.
const PLAN_DUE: Gestation = weeks(36, 0);

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    let bleeding = has(exam, Report::Bleeding);
    let low = exam.mother.placenta.value() == Some(&Placenta::Low);
    if bleeding {
        let placenta = match exam.mother.placenta.value() {
            Some(Placenta::Low) => "low",
            Some(Placenta::Front | Placenta::Rear | Placenta::High) => "known",
            None => "not-known",
        };
        remarks.push(remark(const { rule("bleeding") }, &["mother.reports"]).with("placenta", placenta));
    }
    let mut signs = vec![];
    signs.extend(
        [Report::Tightenings, Report::RegularTightenings]
            .into_iter()
            .find(|r| has(exam, *r))
            .map(|_| "tightenings"),
    );
    if signs.is_empty() && labouring(exam) {
        signs.push("tightenings");
    }
    signs.extend(waters_broken(exam).then_some("waters broken"));
    signs.extend(bleeding.then_some("bleeding"));
    if low && !signs.is_empty() {
        let rule = const { rule("placenta-low-with-signs") };
        remarks.push(remark(rule, &["mother.placenta", "mother.reports"]).with("signs", signs.join(", ")));
    } else if low && exam.weeks.is_some_and(|weeks| weeks >= PLAN_DUE) {
        remarks.push(remark(const { rule("placenta-low-late") }, &["mother.placenta"]));
    } else if low {
        remarks.push(remark(const { rule("placenta-low") }, &["mother.placenta"]));
    }
    let blow = has(exam, Report::BlowOrFall);
    if blow {
        remarks.push(remark(const { rule("blow-or-fall") }, &["mother.reports"]));
    }
    if bleeding || blow {
        match exam.mother.rhesus_d.value() {
            Some(RhesusD::Positive) => {}
            Some(RhesusD::Negative) => {
                remarks.push(remark(const { rule("d-negative") }, &["mother.reports", "mother.rhesus-d"]));
            }
            None => remarks.push(remark(const { rule("d-not-known") }, &["mother.reports"])),
        }
    }
}
