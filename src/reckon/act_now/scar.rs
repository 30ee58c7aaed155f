//! An earlier operation, cut or rupture of the womb. In: an exam. Out: remarks on it, pressing with pain, tightenings or labour.

use super::remark;
use crate::exam::{Exam, Finding, Operation, Report, ScarFeel, WombCut, WombFeel};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{feels, has, known_cut, labour_keys, labouring, operated};

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    let mother = &exam.mother;
    let ruptured = mother.rupture_before.value() == Some(&true);
    let operated = operated(exam);
    // Where the womb was cut other than low and across, or tore: what labour could open again.
    let weak =
        ruptured || matches!(known_cut(exam), Some(WombCut::Vertical | WombCut::TShaped | WombCut::JShaped));
    let unknown_cut = operated && known_cut(exam).is_none();
    let pain = has(exam, Report::ConstantPain) || has(exam, Report::ScarPain);
    // A womb that tightens under the hand, unless it is said to be practice.
    let felt = feels(exam, WombFeel::Tightening) && !has(exam, Report::PracticeTightenings);
    let tightens = labouring(exam) || has(exam, Report::Tightenings) || felt;
    let pressing = tightens || pain;
    let mut keys: Vec<&str> = labour_keys(exam);
    keys.extend(felt.then_some("mother.womb"));
    keys.push("mother.reports");
    keys.extend(ruptured.then_some("mother.rupture-before"));
    keys.extend(mother.womb_cut.value().map(|_| "mother.womb-cut"));
    keys.extend(mother.operations.value().map(|_| "mother.operations"));
    keys.sort_unstable();
    keys.dedup();
    if weak && pressing {
        remarks.push(remark(const { rule("womb-cut-in-labour") }, &keys));
    } else if unknown_cut && tightens {
        remarks.push(remark(const { rule("womb-cut-not-known-in-labour") }, &keys));
    }
    let tender_scar = mother.scar_feel.value().is_some_and(|feel| feel.contains(&ScarFeel::Tender));
    if has(exam, Report::ScarPain) || tender_scar {
        let mut on = vec![if has(exam, Report::ScarPain) { "mother.reports" } else { "mother.scar-feel" }];
        match &mother.operations {
            Finding::Found(found)
                if found
                    .value
                    .iter()
                    .any(|op| matches!(op, Operation::Caesarean | Operation::Myomectomy)) =>
            {
                on.push("mother.operations");
                remarks.push(remark(const { rule("scar-pain") }, &on));
            }
            _ if mother.womb_cut.value().is_some() => {
                on.push("mother.womb-cut");
                remarks.push(remark(const { rule("scar-pain") }, &on));
            }
            Finding::Absent => {}
            _ => remarks.push(remark(const { rule("scar-pain-operations-not-known") }, &on)),
        }
    }
    let no_birth = mother.births_before.value() == Some(&0);
    let caesarean = mother.operations.value().is_some_and(|all| all.contains(&Operation::Caesarean));
    if no_birth && caesarean {
        let rule = const { rule("caesarean-without-a-birth") };
        remarks.push(remark(rule, &["mother.births-before", "mother.operations"]));
    }
    // Once the note of the operation is seen, a low cut across is no remark of its own.
    if (operated || ruptured) && (weak || unknown_cut) {
        let on: Vec<&str> = [
            ("mother.operations", mother.operations.value().is_some_and(|all| !all.is_empty())),
            ("mother.womb-cut", mother.womb_cut.value().is_some()),
            ("mother.rupture-before", ruptured),
        ]
        .into_iter()
        .filter_map(|(key, known)| known.then_some(key))
        .collect();
        let cut = if weak { "known" } else { "not-known" };
        remarks.push(remark(const { rule("womb-operated-on") }, &on).with("cut", cut));
    } else if !operated
        && mother.scars.value().is_some_and(|scars| !scars.is_empty())
        && !matches!(mother.operations, Finding::Absent)
    {
        remarks.push(remark(const { rule("scar-of-unknown-operation") }, &["mother.scars"]));
    }
}
