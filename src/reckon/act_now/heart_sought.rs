//! A heart that was listened for and not heard. In: an exam. Out: remarks on it, by weeks and by what was listened with.
//!
//! Before 16+0 nothing is made of it: hardly any instrument is sure to find a heart so early. Movements that were felt and are
//! gone make it press at any week.

use super::of_baby;
use crate::exam::{Baby, BesidePulse, Exam, ListenedWith};
use crate::reckon::Remark;
use crate::reckon::ledger::{Rule, rule};
use crate::reckon::told::{heard, moves_less, not_heard, weeks};
use crate::units::Gestation;

/// From here on something is made of a heart that was not heard. House.
const SOUGHT: Gestation = weeks(16, 0);
/// From here on a Doppler is expected to find it. House; heard by Doppler from 10 to 12 weeks (fetal-heart table), seen, weak.
const BY_DOPPLER: Gestation = weeks(20, 0);
/// From here on a horn or a fetoscope is expected to find it. House; heard from about 20 weeks (fetal-heart table), seen.
const BY_HORN: Gestation = weeks(24, 0);

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    let another_heard = exam.babies.iter().any(heard);
    for (index, baby) in exam.babies.iter().enumerate() {
        if baby.heart_and_pulse.value() == Some(&BesidePulse::Same) {
            remarks.push(of_baby(exam, index, const { rule("heart-is-her-pulse") }, &["heart-and-pulse"]));
            continue;
        }
        if !not_heard(baby) {
            continue;
        }
        // Of two, one that was heard tells that the other should be too, whatever the weeks.
        let not_heard = const { rule("heart-not-heard") };
        let found = match by_weeks(exam, baby) {
            Some(rule) if rule.id == not_heard.id => Some(rule),
            _ if another_heard => Some(const { rule("twin-heart-not-heard") }),
            lesser => lesser,
        };
        let names: &[&str] =
            if baby.heart_with.value().is_some() { &["heart", "heart-with"] } else { &["heart"] };
        remarks.extend(found.map(|rule| of_baby(exam, index, rule, names)));
    }
}

/// Whether a heart was not heard, and these weeks are the reason why nothing is made of it.
pub fn too_early(exam: &Exam) -> bool {
    let mut found = vec![];
    remarks(exam, &mut found);
    found.is_empty() && exam.babies.iter().any(not_heard)
}

fn by_weeks(exam: &Exam, baby: &Baby) -> Option<&'static Rule> {
    let not_heard = const { rule("heart-not-heard") };
    let Some(weeks) = exam.weeks else { return Some(not_heard) };
    if moves_less(exam) {
        return Some(not_heard);
    }
    let horn = matches!(baby.heart_with.value(), Some(ListenedWith::PinardHorn | ListenedWith::Fetoscope));
    match weeks {
        weeks if weeks < SOUGHT => None,
        weeks if horn && weeks < BY_HORN => Some(const { rule("heart-not-heard-try-doppler") }),
        // What it was listened with is not known, or is a Doppler.
        weeks if weeks < BY_DOPPLER => Some(if baby.heart_with.value() == Some(&ListenedWith::Doppler) {
            const { rule("heart-not-heard-scan-today") }
        } else {
            const { rule("heart-not-heard-try-doppler") }
        }),
        _ => Some(not_heard),
    }
}
