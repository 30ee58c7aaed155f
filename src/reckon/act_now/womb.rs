//! A hard or tender womb, contractions too long or too many, the amount of water. In: an exam. Out: remarks on them.

use super::remark;
use crate::exam::words::Vocabulary;
use crate::exam::{Exam, Tone, Water, WombFeel};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{feels, tender};

/// A contraction longer than this, seconds. Source: definition of hypertonus (ACOG, as quoted), seen second-hand.
const LONGEST: u16 = 120;
/// More contractions than this in ten minutes. Source: definition of tachysystole (NICHD 2008; GPnotebook), seen second-hand.
const MOST: u8 = 5;

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    let mother = &exam.mother;
    let not_soft = mother.tone_at_rest.value() == Some(&Tone::NotSoft);
    let board = feels(exam, WombFeel::BoardLike);
    let hard = feels(exam, WombFeel::Hard) || feels(exam, WombFeel::Tense);
    let tender = tender(exam);
    if board || not_soft {
        let keys: Vec<&str> = [("mother.womb", board), ("mother.tone-at-rest", not_soft)]
            .into_iter()
            .filter_map(|(key, there)| there.then_some(key))
            .collect();
        let feel = if board { "board-like" } else { "does-not-soften" };
        remarks.push(remark(const { rule("womb-board-like") }, &keys).with("feel", feel));
    } else if hard && tender {
        remarks.push(remark(const { rule("hard-tender-womb") }, &["mother.womb"]));
    } else if hard || tender {
        let feel = [WombFeel::Hard, WombFeel::Tense].into_iter().find(|feel| feels(exam, *feel));
        let feel = feel.unwrap_or(WombFeel::Tender).word().unwrap_or_default();
        let key = if mother.womb.value().is_some() { "mother.womb" } else { "mother.tender-at" };
        remarks.push(remark(const { rule("womb-hard-or-tender") }, &[key]).with("feel", feel));
    }
    if let Some(lasting) = mother.contraction_length.value().filter(|lasting| lasting.high > LONGEST) {
        let rule = const { rule("contraction-too-long") };
        remarks.push(remark(rule, &["mother.contraction-length"]).with("seconds", lasting.high.to_string()));
    }
    if let Some(tally) = mother.contractions_in_ten.value().filter(|tally| tally.high > MOST) {
        let rule = const { rule("contractions-too-many") };
        remarks.push(remark(rule, &["mother.contractions-in-ten"]).with("number", tally.high.to_string()));
    } else if mother.contractions_in_ten.value().is_some_and(|tally| tally.high == MOST) {
        remarks.push(remark(const { rule("contractions-five") }, &["mother.contractions-in-ten"]));
    }
    if mother.water.value() == Some(&Water::Little) {
        remarks.push(remark(const { rule("water-little") }, &["mother.water"]));
    }
}
