//! What another look or local guidance settles. In: an exam and its conclusions. Out: lesser remarks, few, each with its next
//! step. They can be silenced for a run.
//!
//! Weeks that are not known start no rule of this file.

use super::Remark;
use super::ledger::{Rule, rule};
use super::told::{TERM, has, labouring};
use crate::exam::{Baby, Conclusion, Descent, Exam, Finding, KnownBy, Lie, Presentation, Report};
use crate::units::Gestation;

/// From here on a baby that is not head down is spoken of, 36+0. Source: family-safety table (RCOG-BREECH), seen.
const HEAD_DOWN_EXPECTED: Gestation = Gestation::from_days(36 * 7);
/// From here on a crosswise or slanting lie is, 37+0. Source: family-safety table (RCOG 50), seen.
const LENGTHWISE_EXPECTED: Gestation = Gestation::from_days(37 * 7);
/// From here on hands may tell how a baby lies, 24+0. Common practice.
const HANDS_TELL: Gestation = Gestation::from_days(24 * 7);

/// The remarks of an exam: of the mother, then of each baby.
pub fn guidance(exam: &Exam, conclusions: &[Conclusion]) -> Vec<Remark> {
    let mut remarks = vec![];
    if has(exam, Report::Itching) {
        remarks.push(Remark::new(const { rule("itching") }).on(&["mother.reports"]));
    }
    for (index, (baby, conclusion)) in exam.babies.iter().zip(conclusions).enumerate() {
        presentation(exam, index, baby, conclusion, &mut remarks);
    }
    remarks
}

fn presentation(exam: &Exam, index: usize, baby: &Baby, conclusion: &Conclusion, remarks: &mut Vec<Remark>) {
    let Some(weeks) = exam.weeks else { return };
    // What the lie rests on.
    let on: Vec<&str> = [
        ("head", baby.head.value().is_some()),
        ("breech", baby.breech.value().is_some()),
        ("back", baby.back.value().is_some()),
        ("head-above-brim", baby.head_above_brim.value().is_some() && weeks < HANDS_TELL),
        ("lie", baby.lie.value().is_some()),
        ("presentation", baby.presentation.value().is_some()),
        ("position", baby.position.value().is_some()),
    ]
    .into_iter()
    .filter_map(|(name, known)| known.then_some(name))
    .collect();
    let across = matches!(conclusion.lie, Some(Lie::Transverse | Lie::Oblique));
    let head_down = matches!(
        conclusion.presentation,
        Some(Presentation::Cephalic | Presentation::Face | Presentation::Brow)
    );
    let known = conclusion.lie.is_some() && (across || conclusion.presentation.is_some());
    if !known {
        let tried = baby.head != Finding::NotExamined
            || baby.breech != Finding::NotExamined
            || baby.back != Finding::NotExamined
            || baby.limbs != Finding::NotExamined;
        if tried && weeks >= HEAD_DOWN_EXPECTED {
            let remark = Remark::new(const { rule("presentation-not-known") });
            remarks.push(remark.of_baby(exam, index, &on));
        }
        return;
    }
    if weeks < HEAD_DOWN_EXPECTED {
        // A head that is down early is how most lie: nothing is said of it. In labour it is no time to wait for a turn.
        let turns = |lies_otherwise: bool| (lies_otherwise && !labouring(exam)).then_some(EARLY);
        let rule = if weeks < HANDS_TELL { Some(TOO_EARLY) } else { turns(!head_down || across) };
        if let Some(rule) = rule.filter(|_| by_hand(baby)) {
            early(exam, rule, index, &on, remarks);
        }
        return;
    }
    let mut push = |rule, on: &[&str]| remarks.push(Remark::new(rule).of_baby(exam, index, on));
    // The first of two is spoken of with the plan of her birth.
    let first_of_two = exam.babies.len() > 1 && index == 0;
    if across && index == 0 && labouring(exam) {
        // `crosswise-in-labour`, or the waters.
    } else if across && weeks >= LENGTHWISE_EXPECTED {
        push(const { rule("crosswise-at-term") }, &on);
    } else if (!head_down || across) && first_of_two {
        // `twin-first-not-head-down`.
    } else if !head_down || across {
        push(const { rule("not-head-down") }, &on);
    } else if conclusion.unsure {
        push(const { rule("presentation-not-known") }, &on);
    }
    // Where fifths say otherwise than the word, the two are held against each other, and nothing is made of the word.
    let free = match baby.head_above_brim.value() {
        Some(fifths) => fifths.get() == 5,
        None => baby.descent.value() == Some(&Descent::Free),
    };
    // A head often stays free until labour when she has borne before.
    let borne = exam.mother.births_before.value().is_some_and(|births| *births > 0);
    if head_down && !across && free && weeks >= TERM && (!borne || labouring(exam)) {
        let on = if baby.head_above_brim.value().is_some() { "head-above-brim" } else { "descent" };
        push(const { rule("head-free-at-term") }, &[on]);
    }
}

const EARLY: &Rule = rule("presentation-early");
const TOO_EARLY: &Rule = rule("too-early-for-hands");

/// Said once: of the baby that it is true of, or of both.
fn early(exam: &Exam, rule: &Rule, index: usize, on: &[&str], remarks: &mut Vec<Remark>) {
    let own = Remark::new(rule).of_baby(exam, index, on);
    match remarks.iter_mut().find(|remark| remark.id == rule.id) {
        Some(said) => {
            said.baby = None;
            said.values.retain(|(name, _)| *name != "baby");
            said.findings.extend(own.findings);
        }
        None => remarks.push(own),
    }
}

/// Whether head or bottom, or the conclusion that was written, is known by hand.
fn by_hand(baby: &Baby) -> bool {
    fn hands<T>(finding: &Finding<T>) -> bool {
        matches!(finding, Finding::Found(found) if found.known_by == KnownBy::Hands)
    }
    hands(&baby.head)
        || hands(&baby.breech)
        || hands(&baby.head_above_brim)
        || hands(&baby.lie)
        || hands(&baby.presentation)
        || hands(&baby.position)
}
