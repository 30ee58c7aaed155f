//! What cannot wait. In: an exam. Out: act-now remarks; of their thresholds a clinic can move the heart's limits alone.
//!
//! They cannot be silenced. Where it is not known whether a rule applies, it applies.

use super::Remark;
use super::heart::{RANGE_HOLDS, heart_rate};
use super::ledger::{Rule, rule};
use super::rounded::beside;
use crate::clinic::Thresholds;
use crate::exam::words::Vocabulary;
use crate::exam::{
    Baby, Conclusion, Descent, Exam, Finding, Movements, Operation, Presentation, Report, WombFeel, conclude,
};
use crate::units::Gestation;

/// From here on a heart that is not heard cannot wait, in days: 24+0.
const HEART_EXPECTED: Gestation = Gestation::from_days(24 * 7);
/// From here on movements are expected to have been felt: 24+0. Source: family-safety table (NTH NHS), seen.
const MOVEMENTS_EXPECTED: Gestation = Gestation::from_days(24 * 7);
/// Her pulse this near the rate heard may be the rate heard, beats a minute, itself included.
const PULSE_NEAR: f64 = 15.0;
/// This many fifths or more above the brim: the head can be lifted out. Source: engagement-fifths table (Bettercare).
pub(super) const FREE_FIFTHS: u8 = 4;

/// The act-now remarks of an exam: of the mother, then of each baby.
pub fn act_now(exam: &Exam, thresholds: &Thresholds) -> Vec<Remark> {
    let mut remarks = vec![];
    movements(exam, &mut remarks);
    mother(exam, &mut remarks);
    for (index, baby) in exam.babies.iter().enumerate() {
        waters(exam, index, &conclude(exam, index), &mut remarks);
        heart(exam, index, baby, thresholds, &mut remarks);
    }
    remarks
}

fn remark(rule: &Rule, findings: &[&str]) -> Remark {
    Remark::new(rule).on(findings)
}

fn of_baby(exam: &Exam, index: usize, rule: &Rule, names: &[&str]) -> Remark {
    Remark::new(rule).of_baby(exam, index, names)
}

fn from(weeks: Option<Gestation>, start: Gestation) -> bool {
    weeks.is_none_or(|weeks| weeks >= start)
}

fn movements(exam: &Exam, remarks: &mut Vec<Remark>) {
    let rule = match exam.mother.movements.value() {
        Some(Movements::Fewer) => const { rule("movements-fewer") },
        Some(Movements::Changed) => const { rule("movements-changed") },
        Some(Movements::None) => const { rule("movements-none") },
        Some(Movements::NotFeltYet) if from(exam.weeks, MOVEMENTS_EXPECTED) => {
            const { rule("movements-not-felt-yet") }
        }
        Some(Movements::Usual | Movements::Felt | Movements::NotFeltYet) | None => return,
    };
    remarks.push(remark(rule, &["mother.movements"]));
}

fn mother(exam: &Exam, remarks: &mut Vec<Remark>) {
    let reports = exam.mother.reports.value().map_or(&[][..], Vec::as_slice);
    let womb = exam.mother.womb.value().map_or(&[][..], Vec::as_slice);
    if reports.contains(&Report::Bleeding) {
        remarks.push(remark(const { rule("bleeding") }, &["mother.reports"]));
    }
    if reports.contains(&Report::ConstantPain) {
        remarks.push(remark(const { rule("constant-pain") }, &["mother.reports"]));
    }
    let urgent: Vec<&str> =
        reports.iter().filter(|report| is_urgent(**report)).filter_map(|report| report.word()).collect();
    if !urgent.is_empty() {
        let mut remark = remark(const { rule("urgent-signs") }, &["mother.reports"]);
        remark.values.push(("signs", urgent.join(", ")));
        remarks.push(remark);
    }
    if womb.contains(&WombFeel::Hard) && womb.contains(&WombFeel::Tender) {
        remarks.push(remark(const { rule("hard-tender-womb") }, &["mother.womb"]));
    }
    if reports.contains(&Report::ScarPain) {
        match &exam.mother.operations {
            Finding::Found(found) if found.value.iter().any(on_womb) => {
                remarks.push(remark(const { rule("scar-pain") }, &["mother.reports", "mother.operations"]));
            }
            _ if exam.mother.womb_cut.value().is_some() => {
                remarks.push(remark(const { rule("scar-pain") }, &["mother.reports", "mother.womb-cut"]));
            }
            Finding::Absent => {}
            _ => remarks.push(remark(const { rule("scar-pain-operations-not-known") }, &["mother.reports"])),
        }
    }
}

/// Signs that cannot wait by themselves, however mild they are said to be, and have no rule of their own.
/// Source: family-safety table (CDC HEAR HER; WHO danger signs), seen.
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

/// Every operation of the list is one on the womb.
fn on_womb(operation: &Operation) -> bool {
    match operation {
        Operation::Caesarean | Operation::Myomectomy => true,
    }
}

fn waters(exam: &Exam, index: usize, conclusion: &Conclusion, remarks: &mut Vec<Remark>) {
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
    let rule = if !head_down && (conclusion.lie.is_some() || conclusion.presentation.is_some()) {
        const { rule("waters-broken-not-head-down") }
    } else if !head_down {
        const { rule("waters-broken-lie-not-known") }
    } else if free {
        const { rule("waters-broken-head-free") }
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
    remarks.push(of_baby(exam, index, rule, &names));
}

fn heart(exam: &Exam, index: usize, baby: &Baby, thresholds: &Thresholds, remarks: &mut Vec<Remark>) {
    let not_usual = matches!(
        exam.mother.movements.value(),
        Some(Movements::Fewer | Movements::Changed | Movements::None)
    );
    // A heart that could not be made out was not heard.
    let not_heard = matches!(baby.heart, Finding::Absent | Finding::CouldNotTell { .. });
    if not_heard && (not_usual || from(exam.weeks, HEART_EXPECTED)) {
        remarks.push(of_baby(exam, index, const { rule("heart-not-heard") }, &["heart"]));
    }
    // Counts and a stated rate may stand side by side: either can be the alarm.
    let counted = heart_rate(baby).filter(|_| baby.heart_counts.value().is_some());
    let stated = baby.heart_rate.value().map(|rate| (f64::from(rate.low), f64::from(rate.high)));
    let rates = [
        counted.map(|rate| ("heart-counts", rate.mean, rate.mean, rate.mean)),
        stated.map(|(low, high)| ("heart-rate", low, high, (low + high) / 2.0)),
    ];
    for (name, low, high, mean) in rates.into_iter().flatten() {
        let mut push = |rule: &Rule, names: &[&str], value: f64| {
            let mut remark = of_baby(exam, index, rule, names);
            let limits = [f64::from(thresholds.heart_low), f64::from(thresholds.heart_high)];
            remark.values.push(("rate", beside(value, &limits, 0)));
            remark.values.push(("low", thresholds.heart_low.to_string()));
            remark.values.push(("high", thresholds.heart_high.to_string()));
            if let Some(pulse) = exam.mother.pulse.value() {
                remark.values.push(("pulse", pulse.to_string()));
            }
            if remarks.iter().all(|before| (before.id, before.baby) != (remark.id, remark.baby)) {
                remarks.push(remark);
            }
        };
        if low < f64::from(thresholds.heart_low) {
            push(const { rule("heart-rate-low") }, &[name], low);
        }
        if high > f64::from(thresholds.heart_high) && from(exam.weeks, RANGE_HOLDS) {
            push(const { rule("heart-rate-high") }, &[name], high);
        }
        if let Some(pulse) = exam.mother.pulse.value()
            && (f64::from(*pulse) - mean).abs() <= PULSE_NEAR
        {
            push(const { rule("pulse-near-heart") }, &["mother.pulse", name], mean);
        }
    }
}
