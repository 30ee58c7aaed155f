//! The visits of one pregnancy. In: exams, each with what is reckoned of it. Out: their order, every tape once, and what they
//! call for together; or why they cannot be set beside one another.
//!
//! A tape noted as an earlier one at a later visit counts once. Tapes that are not fit to be read join no series.

use super::ledger::rule;
use super::tape::{self, Standard};
use super::told::{heard, not_heard};
use super::{Reckoning, Remark};
use crate::exam::dates::days_between;
use crate::exam::{Conclusion, Exam, Lie, Presentation, TapeUnfit};
use crate::units::Gestation;
use jiff::civil::Date;

/// Due dates further apart than this are of two pregnancies, in days. Common practice.
const SAME_PREGNANCY: i32 = 7;
/// A tape noted as earlier this few days from one of the same height is that one: it is often noted by whole weeks. Common
/// practice.
const SAME_TAPE: u16 = 6;
/// From here on a lie that changes is spoken of, 37+0. Source: family-safety table (RCOG 50), seen.
const LIE_SETTLED: Gestation = Gestation::from_days(37 * 7);

/// One visit.
#[derive(Clone, Copy, Debug)]
pub struct Visit<'a> {
    /// What was found.
    pub exam: &'a Exam,
    /// What is reckoned of it alone.
    pub reckoning: &'a Reckoning,
}

/// A tape, and which visit tells of it.
#[derive(Clone, Debug, PartialEq)]
pub struct LaidTape {
    /// Weeks when it was laid.
    pub at: Gestation,
    /// What it said, cm.
    pub cm: f64,
    /// The visit that tells of it, by its place in what was given.
    pub visit: usize,
    /// Noted at that visit as an earlier one.
    pub earlier: bool,
    /// Why it is not read; empty when it is fit to be.
    pub unfit: Vec<TapeUnfit>,
    /// Against the curve, when it is read and the curve reaches there.
    pub standard: Option<Standard>,
}

/// Visits of one pregnancy.
#[derive(Clone, Debug, PartialEq)]
pub struct Course {
    /// The visits by their place in what was given, oldest first.
    pub order: Vec<usize>,
    /// Every tape once, oldest first.
    pub tapes: Vec<LaidTape>,
    /// The due date of the last visit that has one.
    pub due: Option<Date>,
    /// Days between the earliest and the latest due date.
    pub due_apart: i32,
    /// Visits without a due date: whether they are of this pregnancy was not held against one.
    pub without_due: Vec<usize>,
    /// Remarks on the visits together.
    pub remarks: Vec<Remark>,
}

/// Why visits cannot be set beside one another; visits by their place in what was given.
#[derive(Clone, Debug, PartialEq)]
pub enum NotOne {
    /// A visit whose weeks are not known.
    NoWeeks(usize),
    /// Due dates too far apart: the visits with the earliest and the latest.
    DueApart([(usize, Date); 2]),
    /// One day, two tapes.
    TapesApart([usize; 2], Gestation, [f64; 2]),
}

/// Sets visits beside one another.
pub fn course(visits: &[Visit<'_>]) -> Result<Course, NotOne> {
    let mut order: Vec<(Gestation, Option<Date>, usize)> = vec![];
    for (index, visit) in visits.iter().enumerate() {
        let weeks = visit.exam.weeks.ok_or(NotOne::NoWeeks(index))?;
        order.push((weeks, visit.exam.dates.visit, index));
    }
    order.sort();
    let order: Vec<usize> = order.into_iter().map(|(_, _, index)| index).collect();
    let due = |index: usize| visits[index].reckoning.dates.map(|dating| dating.due);
    let mut dues: Vec<(Date, usize)> = order.iter().filter_map(|&i| Some((due(i)?, i))).collect();
    let last_due = dues.last().map(|(due, _)| *due);
    dues.sort_by_key(|(due, _)| *due);
    let mut due_apart = 0;
    if let (Some(&(first, of_first)), Some(&(last, of_last))) = (dues.first(), dues.last()) {
        due_apart = days_between(first, last);
        if due_apart > SAME_PREGNANCY {
            return Err(NotOne::DueApart([(of_first, first), (of_last, last)]));
        }
    }
    let tapes = tapes(visits, &order)?;
    let mut remarks: Vec<Remark> = babies_differ(visits, &order).into_iter().collect();
    remarks.extend(over_tapes(visits, &tapes));
    remarks.extend(lie_changing(visits, &order));
    remarks.extend(heard_before(visits, &order));
    remarks.sort_by_key(|remark| remark.grade);
    let without_due = order.iter().copied().filter(|&index| due(index).is_none()).collect();
    Ok(Course { order, tapes, due: last_due, due_apart, without_due, remarks })
}

/// Every tape once: first those of the visits, then those that were only noted as earlier.
fn tapes(visits: &[Visit<'_>], order: &[usize]) -> Result<Vec<LaidTape>, NotOne> {
    let several = visits.iter().any(|visit| visit.exam.babies.len() > 1);
    let laid = |at, cm, visit, earlier, mut unfit: Vec<TapeUnfit>| {
        // Two babies were two all along.
        if several && !unfit.contains(&TapeUnfit::Twins) {
            unfit.push(TapeUnfit::Twins);
        }
        let standard = if unfit.is_empty() { tape::standard(cm, at) } else { None };
        LaidTape { at, cm, visit, earlier, unfit, standard }
    };
    let mut tapes: Vec<LaidTape> = vec![];
    for &index in order {
        let Visit { exam, reckoning } = visits[index];
        let (Some(at), Some(tape)) = (exam.weeks, &reckoning.tape) else { continue };
        let here = laid(at, tape.measured, index, false, tape.unfit.clone());
        let day = exam.dates.visit;
        let one_day = |other: &&LaidTape| {
            other.at == at || (day.is_some() && visits[other.visit].exam.dates.visit == day)
        };
        match tapes.iter().find(one_day) {
            Some(other) if !same(other.cm, here.cm) => {
                return Err(NotOne::TapesApart([other.visit, index], at, [other.cm, here.cm]));
            }
            // Laid once, or twice with one result: for a series that is one tape.
            Some(_) => {}
            None => tapes.push(here),
        }
    }
    for &index in order {
        let exam = visits[index].exam;
        let Some(noted) = exam.mother.earlier_tapes.value() else { continue };
        for earlier in noted {
            let (at, cm) = (earlier.at, earlier.height.get());
            let repeats =
                |tape: &LaidTape| same(tape.cm, cm) && tape.at.days().abs_diff(at.days()) <= SAME_TAPE;
            if tapes.iter().any(repeats) {
                continue;
            }
            if let Some(other) = tapes.iter().find(|tape| tape.at == at) {
                return Err(NotOne::TapesApart([other.visit, index], at, [other.cm, cm]));
            }
            // What lasts made the earlier tape unfit too.
            let unfit = tape::unfit(exam, &visits[index].reckoning.conclusions).into_iter();
            let lasting = unfit.filter(|why| matches!(why, TapeUnfit::LargeBuild | TapeUnfit::Fibroids));
            tapes.push(laid(at, cm, index, true, lasting.collect()));
        }
    }
    tapes.sort_by_key(|tape| tape.at);
    Ok(tapes)
}

fn same(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9
}

/// The series of the tapes that are fit to be read.
fn over_tapes(visits: &[Visit<'_>], tapes: &[LaidTape]) -> Option<Remark> {
    let fit: Vec<&LaidTape> = tapes.iter().filter(|tape| tape.unfit.is_empty()).collect();
    let last = fit.last()?;
    let Visit { exam, reckoning } = visits[last.visit];
    let low_head = if last.earlier { vec![] } else { tape::low_head(exam, &reckoning.conclusions) };
    // How to measure again, and that a head is low, is said once.
    let single = |remark: &&Remark| SINGLE.contains(&remark.id);
    let before = if last.earlier { None } else { reckoning.remarks.iter().find(single) };
    let heights: Vec<(Gestation, f64)> = fit.iter().map(|tape| (tape.at, tape.cm)).collect();
    tape::serial(&heights, &low_head, before.map(|remark| remark.findings.len() > 1))
}

/// The remarks on one tape that say to measure again.
const SINGLE: [&str; 4] =
    ["tape-four-weeks-behind", "tape-below-p10", "tape-above-p90", "tape-outside-weeks"];

/// A lie, or an end that is down, that is another than at the visit before, the later of the two from 37+0. Visits that do not
/// tell are passed over. Two babies are not told apart from visit to visit.
fn lie_changing(visits: &[Visit<'_>], order: &[usize]) -> Option<Remark> {
    if visits.iter().any(|visit| visit.exam.babies.len() != 1) {
        return None;
    }
    let known: Vec<(Gestation, &Conclusion)> = order
        .iter()
        .filter_map(|&index| {
            let conclusion = visits[index].reckoning.conclusions.first()?;
            conclusion.lie.is_some().then_some((visits[index].exam.weeks?, conclusion))
        })
        .collect();
    let changed = |pair: &&[(Gestation, &Conclusion)]| {
        let [(_, before), (at, after)] = pair else { return false };
        *at >= LIE_SETTLED && differ(before, after)
    };
    let found = known.windows(2).rfind(changed)?;
    let [(first, before), (second, after)] = found else { return None };
    Some(
        Remark::new(const { rule("lie-changing") })
            .with("before", lay(before))
            .with("first", first.to_string())
            .with("after", lay(after))
            .with("second", second.to_string()),
    )
}

fn differ(a: &Conclusion, b: &Conclusion) -> bool {
    let ends = |c: &Conclusion| c.head_up.filter(|_| c.lie == Some(Lie::Longitudinal));
    a.lie != b.lie || matches!((ends(a), ends(b)), (Some(a), Some(b)) if a != b)
}

/// Name of a lie in messages.
fn lay(conclusion: &Conclusion) -> &'static str {
    match (conclusion.lie, conclusion.presentation) {
        (Some(Lie::Transverse), _) => "across",
        (Some(Lie::Oblique), _) => "slanting",
        (_, Some(Presentation::Breech)) => "bottom-down",
        (_, Some(Presentation::Cephalic | Presentation::Face | Presentation::Brow)) => "head-down",
        (Some(Lie::Longitudinal), _) => "lengthwise",
        (None, _) => "not-known",
    }
}

/// A heart that was heard at one visit, and looked for and not heard at a later one; of one baby.
fn heard_before(visits: &[Visit<'_>], order: &[usize]) -> Option<Remark> {
    let one = |index: usize| match &visits[index].exam.babies[..] {
        [baby] => Some(baby),
        _ => None,
    };
    let after = order.iter().rposition(|&index| one(index).is_some_and(not_heard))?;
    let before = order[..after].iter().rev().find(|&&index| one(index).is_some_and(heard))?;
    let weeks = |index: usize| visits[index].exam.weeks.map(|weeks| weeks.to_string()).unwrap_or_default();
    Some(
        Remark::new(const { rule("heart-heard-before") })
            .with("first", weeks(*before))
            .with("second", weeks(order[after])),
    )
}

/// Visits of one baby beside visits of several.
fn babies_differ(visits: &[Visit<'_>], order: &[usize]) -> Option<Remark> {
    let babies = |index: usize| visits[index].exam.babies.len();
    let first = *order.first()?;
    let other = *order.iter().find(|&&index| babies(index) != babies(first))?;
    let said = |index: usize| {
        let weeks = visits[index].exam.weeks.map(|weeks| weeks.to_string()).unwrap_or_default();
        (weeks, babies(index).to_string())
    };
    let ((first, one), (second, two)) = (said(first), said(other));
    Some(
        Remark::new(const { rule("visits-differ-in-babies") })
            .with("first", first)
            .with("one", one)
            .with("second", second)
            .with("two", two),
    )
}
