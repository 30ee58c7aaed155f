//! Weights. In: an exam, its conclusions, its tape. Out: the weight by hand as recorded, and by each formula on the tape, named;
//! reference lines of weights by scan.
//!
//! No centile stands on any of them, and none goes to the family page. Formulas are for one lengthwise baby at term, under a tape
//! that is fit to be read.

use super::curves::{self, CENTILE_Z, HADLOCK_SHARES};
use super::tape::Tape;
use crate::exam::{Baby, Conclusion, Descent, Exam, Lie, Presentation, WeightRange};
use crate::units::{Gestation, Grams};

/// Term, 37+0. The formulas are for term (equations table).
const TERM: Gestation = Gestation::from_days(37 * 7);
/// To this many grams a formula is printed.
const STEP_G: f64 = 50.0;
/// Weights of one baby so far apart are not printed without a word, g. House.
const FAR_APART_G: u32 = 700;
/// From this tape in labour a weight above 4000 g is thought of, cm. Source: Buchmann and Tlale 2009 (82 of 100 found, 80 of 100
/// of the others rightly not), seen.
const BUCHMANN_LARGE_CM: f64 = 40.0;

/// Johnson's formula, 155 (tape - n), over the values of n that the abdominal findings leave open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Johnson {
    /// Lowest and highest weight, g.
    pub grams: [u32; 2],
    /// The n of each.
    pub n: [u8; 2],
}

/// Weights by formulas on the tape, to the nearest 50 g.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ByTape {
    /// Johnson, of a head that leads.
    pub johnson: Option<Johnson>,
    /// Dare, with the girth, g.
    pub dare: Option<u32>,
    /// Buchmann, made for labour at term, g.
    pub buchmann: u32,
    /// Whether Buchmann's study would, in labour, think of more than 4000 g.
    pub buchmann_large: bool,
}

/// The weights of one baby.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Weights {
    /// By hand, as recorded.
    pub hand: Option<WeightRange>,
    /// By the tape, where it can be.
    pub by_tape: Option<ByTape>,
}

impl Weights {
    /// The grams between the lowest and the highest of these weights, when they are far apart.
    pub fn far_apart(&self) -> Option<u32> {
        let whole = |grams: Grams| grams.get().round() as u32;
        let hand = self.hand.map(|hand| [whole(hand.low), whole(hand.high)]);
        let johnson = self.by_tape.and_then(|by| by.johnson).map(|johnson| johnson.grams);
        let others = self.by_tape.map(|by| [by.dare.unwrap_or(by.buchmann), by.buchmann]);
        let all = || [hand, johnson, others].into_iter().flatten().flatten();
        let apart = all().max()?.saturating_sub(all().min()?);
        Some(apart).filter(|apart| *apart >= FAR_APART_G)
    }
}

/// A reference line: centile and weight in g.
pub type Line = [(u8, f64); 3];

/// Reference lines of weights by scan at these weeks; each `None` where its curve does not reach.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeightCurves {
    /// INTERGROWTH-21st, 22+0 to 40+0.
    pub intergrowth: Option<Line>,
    /// Hadlock, 10+0 to 40+0.
    pub hadlock: Option<Line>,
}

/// Johnson: 155 (tape in cm - n), g; `None` at or under nothing. Source: Jimma (n = 12), seen.
pub fn johnson(tape_cm: f64, n: u8) -> Option<f64> {
    Some(155.0 * (tape_cm - f64::from(n))).filter(|grams| *grams > 0.0)
}

/// Dare: tape times girth at the navel, both cm, g. Source: Dare 1990, seen second-hand.
pub fn dare(tape_cm: f64, girth_cm: f64) -> f64 {
    tape_cm * girth_cm
}

/// Buchmann and Tlale: 301 + 78 times the tape in cm, g; in labour, at term. Source: S Afr Med J 2009, seen.
pub fn buchmann(tape_cm: f64) -> f64 {
    301.0 + 78.0 * tape_cm
}

/// Highest and lowest n that the abdominal findings leave open. By vaginal examination n is 13 of a head that is not engaged, 12 at
/// the spines, 11 below; other texts have 12 for all heads at or above the spines. Fifths never become a station: a head that
/// is engaged may be at the spines or below. Source: efw-clinical table (calculator pages; Jimma), seen, weak.
pub fn johnson_n(baby: &Baby) -> [u8; 2] {
    let engaged = match (baby.head_above_brim.value(), baby.descent.value()) {
        (Some(fifths), _) => Some(fifths.get() <= 2),
        (None, Some(Descent::Free | Descent::AtBrim)) => Some(false),
        (None, Some(Descent::Deep | Descent::Engaged)) => Some(true),
        // Neither word says how much of the head has passed the brim.
        (None, Some(Descent::Dipping | Descent::Fixed) | None) => None,
    };
    match engaged {
        Some(false) => [13, 12],
        Some(true) => [12, 11],
        None => [13, 11],
    }
}

fn to_step(grams: f64) -> u32 {
    ((grams / STEP_G).round() * STEP_G) as u32
}

/// The weights of the baby of this index.
pub fn weights(exam: &Exam, index: usize, conclusions: &[Conclusion], tape: Option<&Tape>) -> Weights {
    let hand = exam.babies.get(index).and_then(|baby| baby.weight_by_hand.value()).copied();
    Weights { hand, by_tape: by_tape(exam, conclusions, tape) }
}

fn by_tape(exam: &Exam, conclusions: &[Conclusion], tape: Option<&Tape>) -> Option<ByTape> {
    let tape = tape.filter(|tape| tape.unfit.is_empty())?;
    let ([baby], [conclusion]) = (&exam.babies[..], conclusions) else { return None };
    if exam.weeks.is_none_or(|weeks| weeks < TERM) || conclusion.lie != Some(Lie::Longitudinal) {
        return None;
    }
    let n = johnson_n(baby);
    let head_leads = conclusion.presentation == Some(Presentation::Cephalic);
    let johnson = johnson(tape.measured, n[0])
        .zip(johnson(tape.measured, n[1]))
        .filter(|_| head_leads)
        .map(|(low, high)| Johnson { grams: [to_step(low), to_step(high)], n });
    let girth = exam.mother.girth.value();
    Some(ByTape {
        johnson,
        dare: girth.map(|girth| to_step(dare(tape.measured, girth.get()))),
        buchmann: to_step(buchmann(tape.measured)),
        buchmann_large: tape.measured >= BUCHMANN_LARGE_CM,
    })
}

/// Reference lines at these weeks: P10, P50 and P90.
pub fn weight_curves(weeks: Gestation) -> WeightCurves {
    const WANTED: [u8; 3] = [10, 50, 90];
    let of =
        |table: [(u8, f64); 5], wanted: u8| table.into_iter().find(|(c, _)| *c == wanted).map(|(_, v)| v);
    let line = |grams: &dyn Fn(u8) -> Option<f64>| -> Option<Line> {
        let [low, middle, high] = WANTED.map(|wanted| grams(wanted).map(|g| (wanted, g)));
        Some([low?, middle?, high?])
    };
    WeightCurves {
        intergrowth: line(&|wanted| of(CENTILE_Z, wanted).and_then(|z| curves::efw_intergrowth(weeks, z))),
        hadlock: line(&|wanted| {
            of(HADLOCK_SHARES, wanted).zip(curves::efw_hadlock(weeks)).map(|(s, p)| s * p)
        }),
    }
}
