//! Waters that have broken. In: an exam, its conclusions, whether infection stands. Out: remarks: the cord first, then the
//! weeks, then colour and hours.

use super::{of_baby, remark};
use crate::exam::words::Vocabulary;
use crate::exam::{Conclusion, Exam, GroupBStrep, WaterColour};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{TERM, before, free, head_down, waters_broken, waters_keys};

/// From here on induction is talked about at term, hours. Source: NICE, as quoted (about 24 hours), seen second-hand.
const LONG: u16 = 24;

pub fn remarks(exam: &Exam, conclusions: &[Conclusion], infection: bool, remarks: &mut Vec<Remark>) {
    if !waters_broken(exam) {
        return;
    }
    let keys = waters_keys(exam);
    let start = remarks.len();
    for (index, conclusion) in conclusions.iter().enumerate() {
        remarks.extend(cord(exam, index, conclusion, &keys));
    }
    let cord_said = remarks.len() > start;
    let mother = &exam.mother;
    let colours = mother.water_colour.value().map_or(&[][..], Vec::as_slice);
    let stained: Vec<&str> = colours
        .iter()
        // Foul water with fever is said with the fever.
        .filter(|colour| **colour != WaterColour::Clear && !(infection && **colour == WaterColour::Foul))
        .filter_map(|colour| colour.word())
        .collect();
    if !stained.is_empty() {
        let rule = const { rule("water-not-clear") };
        remarks.push(remark(rule, &["mother.water-colour"]).with("signs", stained.join(", ")));
    }
    if cord_said {
        return;
    }
    if before(exam, TERM) {
        let weeks = if exam.weeks.is_some() { "known" } else { "not-known" };
        remarks.push(remark(const { rule("waters-broken-before-term") }, &keys).with("weeks", weeks));
        return;
    }
    if mother.group_b_strep.value() == Some(&GroupBStrep::Found) {
        let rule = const { rule("waters-broken-strep") };
        remarks.push(remark(rule, &keys).on(&["mother.group-b-strep"]));
    } else if mother.hours_since_broken.value().is_some_and(|hours| hours.0 >= LONG) {
        let hours = mother.hours_since_broken.value().map(|hours| hours.0.to_string()).unwrap_or_default();
        remarks.push(remark(const { rule("waters-broken-long") }, &keys).with("hours", hours));
    } else {
        remarks.push(remark(const { rule("waters-broken") }, &keys));
    }
}

/// The risk to the cord, when the head does not fill the brim.
fn cord(exam: &Exam, index: usize, conclusion: &Conclusion, keys: &[&'static str]) -> Option<Remark> {
    let baby = &exam.babies[index];
    let (head_down, free) = (head_down(conclusion), free(baby));
    let rule = if !head_down && (conclusion.lie.is_some() || conclusion.presentation.is_some()) {
        const { rule("waters-broken-not-head-down") }
    } else if !head_down {
        const { rule("waters-broken-lie-not-known") }
    } else if free {
        const { rule("waters-broken-head-free") }
    } else {
        return None;
    };
    let mut names = keys.to_vec();
    let felt = [
        ("head", baby.head.value().is_some()),
        ("breech", baby.breech.value().is_some()),
        ("head-above-brim", free && baby.head_above_brim.value().is_some()),
        ("descent", free && baby.descent.value().is_some()),
    ];
    names.extend(felt.into_iter().filter_map(|(name, known)| known.then_some(name)));
    Some(of_baby(exam, index, rule, &names))
}
