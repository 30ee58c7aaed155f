//! What cannot wait. In: an exam. Out: act-now remarks that need no charts and no thresholds of a clinic.
//!
//! They cannot be silenced. Where it is not known whether a rule applies, it applies.

use super::heart::heart_rate;
use super::{Grade, Remark};
use crate::exam::words::Vocabulary;
use crate::exam::{
    Baby, Conclusion, Descent, Exam, Finding, Movements, Operation, Presentation, Report, WombFeel, conclude,
};
use crate::units::Gestation;

/// From here on a heart that is not heard cannot wait, in days: 24+0.
const HEART_EXPECTED: Gestation = Gestation::from_days(24 * 7);
/// From here on movements are expected to have been felt: 24+0. Source: family-safety table (NTH NHS), seen.
const MOVEMENTS_EXPECTED: Gestation = Gestation::from_days(24 * 7);
/// From here on a usual range of the rate holds: 20+0.
const RANGE_HOLDS: Gestation = Gestation::from_days(20 * 7);
/// Below and above these, in beats a minute. Source: fetal-heart table (WHO-MCPC 2000, danger limits), seen.
const RATE_LOW: f64 = 100.0;
/// See `RATE_LOW`.
const RATE_HIGH: f64 = 180.0;
/// Her pulse this near the rate heard may be the rate heard, beats a minute, itself included.
const PULSE_NEAR: f64 = 15.0;
/// This many fifths or more above the brim: the head can be lifted out. Source: engagement-fifths table (Bettercare).
const FREE_FIFTHS: u8 = 4;

const MOVE: &str = "NHS movement guidance; RCOG 57";
const SIGNS: &str = "CDC HEAR HER; WHO danger signs";
const RATES: &str = "WHO MCPC 2000";
const PRACTICE: &str = "common practice";

/// The act-now remarks of an exam: of the mother, then of each baby.
pub fn act_now(exam: &Exam) -> Vec<Remark> {
    let mut remarks = vec![];
    movements(exam, &mut remarks);
    mother(exam, &mut remarks);
    for (index, baby) in exam.babies.iter().enumerate() {
        waters(exam, index, &conclude(exam, index), &mut remarks);
        heart(exam, index, baby, &mut remarks);
    }
    remarks
}

fn remark(id: &'static str, source: &'static str, findings: &[&str]) -> Remark {
    let findings = findings.iter().map(|key| (*key).to_owned()).collect();
    Remark { id, grade: Grade::ActNow, baby: None, values: vec![], findings, source }
}

fn of_baby(exam: &Exam, index: usize, id: &'static str, source: &'static str, names: &[&str]) -> Remark {
    let findings = names
        .iter()
        .map(
            |name| if name.contains('.') { (*name).to_owned() } else { format!("baby.{}.{name}", index + 1) },
        )
        .collect();
    let number = if exam.babies.len() > 1 { (index + 1).to_string() } else { String::new() };
    Remark { id, grade: Grade::ActNow, baby: Some(index), values: vec![("baby", number)], findings, source }
}

fn from(weeks: Option<Gestation>, start: Gestation) -> bool {
    weeks.is_none_or(|weeks| weeks >= start)
}

fn movements(exam: &Exam, remarks: &mut Vec<Remark>) {
    let id = match exam.mother.movements.value() {
        Some(Movements::Fewer) => "movements-fewer",
        Some(Movements::Changed) => "movements-changed",
        Some(Movements::None) => "movements-none",
        Some(Movements::NotFeltYet) if from(exam.weeks, MOVEMENTS_EXPECTED) => "movements-not-felt-yet",
        Some(Movements::Usual | Movements::Felt | Movements::NotFeltYet) | None => return,
    };
    remarks.push(remark(id, MOVE, &["mother.movements"]));
}

fn mother(exam: &Exam, remarks: &mut Vec<Remark>) {
    let reports = exam.mother.reports.value().map_or(&[][..], Vec::as_slice);
    let womb = exam.mother.womb.value().map_or(&[][..], Vec::as_slice);
    if reports.contains(&Report::Bleeding) {
        remarks.push(remark("bleeding", SIGNS, &["mother.reports"]));
    }
    if reports.contains(&Report::ConstantPain) {
        remarks.push(remark("constant-pain", SIGNS, &["mother.reports"]));
    }
    let urgent: Vec<&str> =
        reports.iter().filter(|report| is_urgent(**report)).filter_map(|report| report.word()).collect();
    if !urgent.is_empty() {
        let mut remark = remark("urgent-signs", SIGNS, &["mother.reports"]);
        remark.values.push(("signs", urgent.join(", ")));
        remarks.push(remark);
    }
    if womb.contains(&WombFeel::Hard) && womb.contains(&WombFeel::Tender) {
        remarks.push(remark("hard-tender-womb", PRACTICE, &["mother.womb"]));
    }
    if reports.contains(&Report::ScarPain) {
        match &exam.mother.operations {
            Finding::Found(found) if found.value.iter().any(on_womb) => {
                remarks.push(remark("scar-pain", PRACTICE, &["mother.reports", "mother.operations"]));
            }
            _ if exam.mother.womb_cut.value().is_some() => {
                remarks.push(remark("scar-pain", PRACTICE, &["mother.reports", "mother.womb-cut"]));
            }
            Finding::Absent => {}
            _ => remarks.push(remark("scar-pain-operations-not-known", PRACTICE, &["mother.reports"])),
        }
    }
}

/// Signs that cannot wait by themselves, however mild they are said to be, and have no rule of their own.
/// Source: family-safety table (CDC HEAR HER; WHO danger signs), seen.
fn is_urgent(report: Report) -> bool {
    match report {
        Report::Fits | Report::ChestPain | Report::TroubleBreathing | Report::SightChanges => true,
        Report::Bleeding
        | Report::WatersBroken
        | Report::Itching
        | Report::ConstantPain
        | Report::Tightenings
        | Report::ScarPain
        | Report::Headache
        | Report::Fever
        | Report::Swelling => false,
    }
}

/// Every operation of the list is one on the womb.
fn on_womb(operation: &Operation) -> bool {
    match operation {
        Operation::Caesarean | Operation::Myomectomy => true,
    }
}

fn waters(exam: &Exam, index: usize, conclusion: &Conclusion, remarks: &mut Vec<Remark>) {
    const SOURCE: &str = "RCOG 50";
    let baby = &exam.babies[index];
    if !exam.mother.reports.value().is_some_and(|reports| reports.contains(&Report::WatersBroken)) {
        return;
    }
    let head_down = matches!(
        conclusion.presentation,
        Some(Presentation::Cephalic | Presentation::Face | Presentation::Brow)
    );
    let free = baby.descent.value() == Some(&Descent::Free)
        || baby.head_above_brim.value().is_some_and(|fifths| fifths.get() >= FREE_FIFTHS);
    let id = if !head_down && (conclusion.lie.is_some() || conclusion.presentation.is_some()) {
        "waters-broken-not-head-down"
    } else if !head_down {
        "waters-broken-lie-not-known"
    } else if free {
        "waters-broken-head-free"
    } else {
        return;
    };
    let mut names = vec!["mother.reports"];
    let felt = [
        ("head", baby.head.value().is_some()),
        ("breech", baby.breech.value().is_some()),
        ("head-above-brim", free && baby.head_above_brim.value().is_some()),
        ("descent", free && baby.descent.value().is_some()),
    ];
    names.extend(felt.into_iter().filter_map(|(name, known)| known.then_some(name)));
    remarks.push(of_baby(exam, index, id, SOURCE, &names));
}

fn heart(exam: &Exam, index: usize, baby: &Baby, remarks: &mut Vec<Remark>) {
    let not_usual = matches!(
        exam.mother.movements.value(),
        Some(Movements::Fewer | Movements::Changed | Movements::None)
    );
    // A heart that could not be made out was not heard.
    let not_heard = matches!(baby.heart, Finding::Absent | Finding::CouldNotTell { .. });
    if not_heard && (not_usual || from(exam.weeks, HEART_EXPECTED)) {
        remarks.push(of_baby(exam, index, "heart-not-heard", PRACTICE, &["heart"]));
    }
    // Counts and a stated rate may stand side by side: either can be the alarm.
    let counted = heart_rate(baby).filter(|_| baby.heart_counts.value().is_some());
    let stated = baby.heart_rate.value().map(|rate| (f64::from(rate.low), f64::from(rate.high)));
    let rates = [
        counted.map(|rate| ("heart-counts", rate.mean, rate.mean, rate.mean)),
        stated.map(|(low, high)| ("heart-rate", low, high, (low + high) / 2.0)),
    ];
    for (name, low, high, mean) in rates.into_iter().flatten() {
        let mut push = |id, source, names: &[&str], value: f64| {
            let mut remark = of_baby(exam, index, id, source, names);
            remark.values.push(("rate", format!("{value:.0}")));
            if let Some(pulse) = exam.mother.pulse.value() {
                remark.values.push(("pulse", pulse.to_string()));
            }
            if remarks.iter().all(|before| (before.id, before.baby) != (remark.id, remark.baby)) {
                remarks.push(remark);
            }
        };
        if low < RATE_LOW {
            push("heart-rate-low", RATES, &[name], low);
        }
        if high > RATE_HIGH && from(exam.weeks, RANGE_HOLDS) {
            push("heart-rate-high", RATES, &[name], high);
        }
        if let Some(pulse) = exam.mother.pulse.value()
            && (f64::from(*pulse) - mean).abs() <= PULSE_NEAR
        {
            push("pulse-near-heart", PRACTICE, &["mother.pulse", name], mean);
        }
    }
}
