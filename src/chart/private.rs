//! What is for whoever examined alone: violence she told of, thoughts of harming herself. In: an exam. Out: the exam without it,
//! for a handover, a slip and what is shared; nothing when it holds none.

use crate::exam::alarm::is_private;
use crate::exam::say;
use crate::exam::{Exam, Finding, Report};

/// The exam without what is private, asked or denied or in the note; `None` when there is nothing of it.
pub fn without(exam: &Exam) -> Option<Exam> {
    let mut open = exam.clone();
    let dropped = [drop_from(&mut open.mother.reports), drop_from(&mut open.mother.denies)];
    let note = exam.note.as_deref().is_some_and(is_private);
    if note {
        // Sentence by sentence: the rest of the note stays.
        let kept: Vec<&str> = exam
            .note
            .iter()
            .flat_map(|note| note.split_inclusive(['.', ';', '\n']))
            .filter(|sentence| !is_private(sentence))
            .collect();
        let kept = kept.concat().trim().to_owned();
        open.note = (!kept.is_empty()).then_some(kept);
    }
    if !note && !dropped.contains(&true) {
        return None;
    }
    open.read = say::findings(&open);
    // Dates are not part of what is said again: they stay as they were read.
    let dates = exam.read.iter().filter(|(key, _)| !key.contains('.') && key != "weeks" && key != "note");
    open.read.extend(dates.cloned());
    Some(open)
}

/// Drop private reports; true when there were any.
fn drop_from(finding: &mut Finding<Vec<Report>>) -> bool {
    let Finding::Found(found) = finding else { return false };
    let before = found.value.len();
    found.value.retain(|report| !matches!(report, Report::Violence | Report::SelfHarm));
    let dropped = found.value.len() < before;
    if found.value.is_empty() {
        *finding = Finding::NotExamined;
    }
    dropped
}
