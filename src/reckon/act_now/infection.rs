//! Fever, and what makes it press; her pulse and breathing alone. In: an exam. Out: one remark, not six; and whether it stands.

use super::remark;
use crate::exam::words::Vocabulary;
use crate::exam::{Exam, Report, WaterColour};
use crate::reckon::Remark;
use crate::reckon::heart::{USUAL, heart_rate};
use crate::reckon::ledger::rule;
use crate::reckon::told::{FEVER, fever, fever_keys, has, tender, waters_broken, waters_keys};

/// Her pulse from here on goes with fever. Source: NICE NG51 (2016), as tabled (100 to 130 in pregnancy), seen second-hand.
const PULSE_WITH_FEVER: u16 = 100;
/// Her breaths from here on go with fever. Source: NICE NG255, table for pregnancy (21 to 24 a minute), seen.
const BREATHS_WITH_FEVER: u16 = 21;
/// Her breaths from here on cannot wait. Source: NICE NG255, table for pregnancy, seen.
const BREATHS_CANNOT_WAIT: u16 = 25;
/// Her pulse under or over these is felt again after rest. House.
const PULSE_LOW: u16 = 50;
const PULSE_HIGH: u16 = 120;
/// Her pulse over this cannot wait. Source: NICE NG51 (2016), as tabled (more than 130), seen second-hand; the grade is ours.
const PULSE_CANNOT_WAIT: u16 = 130;

/// True when fever stands with something that makes it press.
pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) -> bool {
    let mother = &exam.mother;
    let (pulse, breaths) = (mother.pulse.value().copied(), mother.breathing.value().copied());
    let foul = mother.water_colour.value().is_some_and(|colours| colours.contains(&WaterColour::Foul));
    let fast = exam.babies.iter().position(|baby| {
        let counted = heart_rate(baby).is_some_and(|rate| rate.mean > *USUAL.end());
        counted || baby.heart_rate.value().is_some_and(|rate| f64::from(rate.high) > *USUAL.end())
    });
    if !fever(exam) {
        alone(pulse, breaths, remarks);
        return false;
    }
    let mut signs: Vec<String> = vec![];
    let mut keys = fever_keys(exam);
    let mut add = |sign: &str, found: &[&'static str], there: bool| {
        if there {
            signs.push(sign.to_owned());
            keys.extend(found);
        }
    };
    add("waters broken", &waters_keys(exam), waters_broken(exam) && !foul);
    add("foul water", &["mother.water-colour"], foul);
    add("a tender womb", &["mother.womb"], tender(exam));
    add(Report::LoinPain.word().unwrap_or_default(), &["mother.reports"], has(exam, Report::LoinPain));
    add("fast pulse", &["mother.pulse"], pulse.is_some_and(|n| n >= PULSE_WITH_FEVER));
    add("fast breathing", &["mother.breathing"], breaths.is_some_and(|n| n >= BREATHS_WITH_FEVER));
    add("fast heart of the baby", &[], fast.is_some());
    let temperature = mother.temperature.value().map(|t| t.celsius().to_string()).unwrap_or_default();
    keys.sort_unstable();
    keys.dedup();
    let mut made = if signs.is_empty() {
        remark(const { rule("fever") }, &keys)
    } else {
        remark(const { rule("fever-with-signs") }, &keys).with("signs", signs.join(", "))
    };
    if let Some(index) = fast {
        let name =
            if exam.babies[index].heart_rate.value().is_some() { "heart-rate" } else { "heart-counts" };
        made.findings.push(format!("baby.{}.{name}", index + 1));
    }
    let measured = mother.temperature.value().is_some_and(|t| t.tenths() >= FEVER);
    remarks.push(made.with("celsius", temperature).with("measured", if measured { "yes" } else { "no" }));
    !signs.is_empty()
}

/// Pulse and breathing without fever.
fn alone(pulse: Option<u16>, breaths: Option<u16>, remarks: &mut Vec<Remark>) {
    if let Some(pulse) = pulse {
        let rule = match pulse {
            n if n > PULSE_CANNOT_WAIT => Some(const { rule("pulse-very-fast") }),
            n if n > PULSE_HIGH => Some(const { rule("pulse-to-feel-again") }),
            n if n < PULSE_LOW => Some(const { rule("pulse-to-feel-again") }),
            _ => None,
        };
        remarks.extend(rule.map(|rule| remark(rule, &["mother.pulse"]).with("pulse", pulse.to_string())));
    }
    if let Some(breaths) = breaths.filter(|n| *n >= BREATHS_WITH_FEVER) {
        let rule = if breaths >= BREATHS_CANNOT_WAIT {
            const { rule("breathing-very-fast") }
        } else {
            const { rule("breathing-to-count-again") }
        };
        remarks.push(remark(rule, &["mother.breathing"]).with("breaths", breaths.to_string()));
    }
}
