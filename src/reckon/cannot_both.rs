//! Findings that cannot all be right. In: an exam and its conclusions. Out: cannot-both remarks; logic only.

use super::ledger::rule;
use super::{Grade, Remark};
use crate::exam::{Conclusion, Exam, Report, words::Vocabulary};

/// The remarks of the conclusions' conflicts, and of what is both reported and denied.
pub fn cannot_both(exam: &Exam, conclusions: &[Conclusion]) -> Vec<Remark> {
    let mut remarks = vec![];
    if let Some(both) = reported_and_denied(exam) {
        remarks.push(both);
    }
    for (index, conclusion) in conclusions.iter().enumerate() {
        let number = if exam.babies.len() > 1 { (index + 1).to_string() } else { String::new() };
        for conflict in &conclusion.conflicts {
            let said: Vec<String> = conflict
                .findings
                .iter()
                .filter_map(|key| {
                    let (_, words) = exam.read.iter().find(|(read, _)| read == key)?;
                    let name = key.rsplit('.').next().unwrap_or(key);
                    Some(format!("{name} = {words}"))
                })
                .collect();
            remarks.push(Remark {
                id: conflict.id,
                grade: Grade::CannotBoth,
                baby: Some(index),
                values: vec![("baby", number.clone()), ("said", said.join("; "))],
                findings: conflict.findings.clone(),
                source: "",
                no_page: false,
            });
        }
    }
    remarks
}

fn reported_and_denied(exam: &Exam) -> Option<Remark> {
    let (reports, denies) = (exam.mother.reports.value()?, exam.mother.denies.value()?);
    let both: Vec<&str> =
        reports.iter().filter(|said| denies.contains(said)).filter_map(|r: &Report| r.word()).collect();
    (!both.is_empty()).then(|| {
        Remark::new(const { rule("reported-and-denied") })
            .on(&["mother.reports", "mother.denies"])
            .with("said", both.join(", "))
    })
}
