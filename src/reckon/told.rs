//! What stands in an exam, as several rules ask it. In: an exam. Out: yes or no, from what was found alone.
//!
//! Where it is not known whether a week has been reached, it has.

use crate::exam::{
    Baby, ByVagina, Conclusion, Descent, Exam, Finding, Labour, Lie, Movements, Operation, Presentation,
    Report, WombCut, WombFeel,
};
use crate::units::Gestation;

/// From this temperature on it is fever, tenths of a degree C. Source: family-safety table (CDC urgent maternal warning signs), seen.
pub(super) const FEVER: u16 = 380;
/// This many fifths or more above the brim: the head can be lifted out. Source: engagement-fifths table (Bettercare).
pub(super) const FREE_FIFTHS: u8 = 4;
/// So many contractions in ten minutes are regular, whatever they are called. House.
const REGULAR_IN_TEN: u8 = 2;
/// Term, 37+0.
pub(super) const TERM: Gestation = Gestation::from_days(37 * 7);

/// Weeks and days as a constant.
pub(super) const fn weeks(weeks: u16, days: u16) -> Gestation {
    Gestation::from_days(weeks * 7 + days)
}

/// Whether `start` has been reached; where the weeks are not known, it has.
pub(super) fn from(exam: &Exam, start: Gestation) -> bool {
    exam.weeks.is_none_or(|weeks| weeks >= start)
}

/// Whether these weeks are before `end`; where they are not known, they are.
pub(super) fn before(exam: &Exam, end: Gestation) -> bool {
    exam.weeks.is_none_or(|weeks| weeks < end)
}

/// What she reports.
pub(super) fn reports(exam: &Exam) -> &[Report] {
    exam.mother.reports.value().map_or(&[][..], Vec::as_slice)
}

pub(super) fn has(exam: &Exam, report: Report) -> bool {
    reports(exam).contains(&report)
}

/// How the womb feels.
pub(super) fn feels(exam: &Exam, feel: WombFeel) -> bool {
    exam.mother.womb.value().is_some_and(|felt| felt.contains(&feel))
}

/// Tender by hand, anywhere.
pub(super) fn tender(exam: &Exam) -> bool {
    feels(exam, WombFeel::Tender) || exam.mother.tender_at.value().is_some_and(|at| !at.is_empty())
}

/// The waters have broken: reported, or their hours or colour recorded.
pub(super) fn waters_broken(exam: &Exam) -> bool {
    has(exam, Report::WatersBroken)
        || exam.mother.hours_since_broken.value().is_some()
        || exam.mother.water_colour.value().is_some()
}

/// The keys by which they are known to have broken.
pub(super) fn waters_keys(exam: &Exam) -> Vec<&'static str> {
    [
        ("mother.reports", has(exam, Report::WatersBroken)),
        ("mother.hours-since-broken", exam.mother.hours_since_broken.value().is_some()),
        ("mother.water-colour", exam.mother.water_colour.value().is_some()),
    ]
    .into_iter()
    .filter_map(|(key, known)| known.then_some(key))
    .collect()
}

/// Fever, measured or reported.
pub(super) fn fever(exam: &Exam) -> bool {
    has(exam, Report::Fever) || exam.mother.temperature.value().is_some_and(|t| t.tenths() >= FEVER)
}

/// The keys by which there is fever.
pub(super) fn fever_keys(exam: &Exam) -> Vec<&'static str> {
    [
        ("mother.temperature", exam.mother.temperature.value().is_some_and(|t| t.tenths() >= FEVER)),
        ("mother.reports", has(exam, Report::Fever)),
    ]
    .into_iter()
    .filter_map(|(key, known)| known.then_some(key))
    .collect()
}

/// Contractions so often that they are regular.
fn often(exam: &Exam) -> bool {
    exam.mother.contractions_in_ten.value().is_some_and(|tally| tally.high >= REGULAR_IN_TEN)
}

/// In labour, or with regular or painful tightenings.
pub(super) fn labouring(exam: &Exam) -> bool {
    matches!(exam.mother.labour.value(), Some(Labour::Early | Labour::In))
        || has(exam, Report::RegularTightenings)
        || often(exam)
}

/// The keys by which she is.
pub(super) fn labour_keys(exam: &Exam) -> Vec<&'static str> {
    [
        ("mother.labour", matches!(exam.mother.labour.value(), Some(Labour::Early | Labour::In))),
        ("mother.reports", has(exam, Report::RegularTightenings)),
        ("mother.contractions-in-ten", often(exam)),
    ]
    .into_iter()
    .filter_map(|(key, known)| known.then_some(key))
    .collect()
}

/// Movements that are not as usual.
pub(super) fn moves_less(exam: &Exam) -> bool {
    matches!(exam.mother.movements.value(), Some(Movements::Fewer | Movements::Changed | Movements::None))
}

/// The womb was operated on, or cut.
pub(super) fn operated(exam: &Exam) -> bool {
    let on_womb = |operation: &Operation| match operation {
        Operation::Caesarean | Operation::Myomectomy => true,
    };
    exam.mother.operations.value().is_some_and(|all| all.iter().any(on_womb))
        || exam.mother.womb_cut.value().is_some()
}

/// How the womb was cut, when that is known.
pub(super) fn known_cut(exam: &Exam) -> Option<WombCut> {
    exam.mother.womb_cut.value().copied().filter(|cut| *cut != WombCut::NotKnown)
}

/// A head that leads.
pub(super) fn head_down(conclusion: &Conclusion) -> bool {
    matches!(conclusion.presentation, Some(Presentation::Cephalic | Presentation::Face | Presentation::Brow))
}

/// Across or slantwise.
pub(super) fn across(conclusion: &Conclusion) -> bool {
    matches!(conclusion.lie, Some(Lie::Transverse | Lie::Oblique))
}

/// A head that is free above the brim.
pub(super) fn free(baby: &Baby) -> bool {
    baby.descent.value() == Some(&Descent::Free)
        || baby.head_above_brim.value().is_some_and(|fifths| fifths.get() >= FREE_FIFTHS)
}

/// Found in the vagina, or seen at it.
pub(super) fn by_vagina(baby: &Baby, part: ByVagina) -> bool {
    baby.by_vagina.value().is_some_and(|found| found.contains(&part))
}

/// Whether anything of this heart was heard.
pub(super) fn heard(baby: &Baby) -> bool {
    baby.heart.value().is_some() || baby.heart_rate.value().is_some() || baby.heart_counts.value().is_some()
}

/// A heart that was looked for and not heard, or not made out.
pub(super) fn not_heard(baby: &Baby) -> bool {
    matches!(baby.heart, Finding::Absent | Finding::CouldNotTell { .. })
}
