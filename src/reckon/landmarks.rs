//! The top of the womb in words, against weeks. In: weeks, or a level. Out: what handbooks print for them; never a centile.
//!
//! Handbooks differ by about two weeks around the navel, and women differ more (Beazley 1970): a band, never a line.

use crate::body::mother::{HandbookLevel, handbook_levels};
use crate::exam::FundusLevel;
use crate::exam::say::Canonical;
use crate::units::Gestation;

/// Before this a level is set against the handbooks, 20+0.
const EARLY: Gestation = Gestation::from_days(20 * 7);

/// Lowest and highest level that handbooks print for these weeks, in the words of the exam language; both the same where they
/// agree. `None` outside 12+0 to 19+6.
pub fn expected(weeks: Gestation) -> Option<(String, String)> {
    if weeks >= EARLY {
        return None;
    }
    let levels = handbook_levels(weeks.exact_weeks())?;
    let said = |level| match level {
        HandbookLevel::At(level) => level.canonical(),
        HandbookLevel::FingersAbovePubicBone(0) => "at pubic bone".to_owned(),
        HandbookLevel::FingersAbovePubicBone(1) => "1 finger above pubic bone".to_owned(),
        HandbookLevel::FingersAbovePubicBone(n) => format!("{n} fingers above pubic bone"),
    };
    Some((said(levels.low), said(levels.high)))
}

/// First and last weeks for which handbooks print a level (`tests/published/fundal-landmarks.csv`); a level between two that
/// are printed has the weeks of both. `None` for a level that is printed twice, on the way up and on the way down, or never.
pub fn weeks_of(level: FundusLevel) -> Option<(Gestation, Gestation)> {
    let (first, last) = match level {
        // Under what is printed for 12 weeks.
        FundusLevel::NotAbovePubicBone => (4, 12),
        // Bettercare; HEAT.
        FundusLevel::JustAbovePubicBone => (12, 14),
        // Bettercare.
        FundusLevel::HalfwayToNavel => (16, 16),
        FundusLevel::FingersBelowNavel(1) => (20, 20),
        FundusLevel::FingersBelowNavel(2) => (18, 18),
        FundusLevel::FingersBelowNavel(_) => (16, 18),
        // Several; Bettercare; medicalalgorithms.com.
        FundusLevel::AtNavel => (20, 24),
        // Bettercare; HEAT, HESP-MID.
        FundusLevel::FingersAboveNavel(1) => (24, 24),
        FundusLevel::FingersAboveNavel(2 | 3) => (24, 28),
        FundusLevel::FingersAboveNavel(4) => (28, 28),
        FundusLevel::FingersAboveNavel(_) => return None,
        // A third of the way at 28, two thirds at 32; or half at 32.
        FundusLevel::HalfwayToXiphoid => (28, 32),
        FundusLevel::AtXiphoid => (36, 36),
        FundusLevel::FingersBelowXiphoid(_) => return None,
    };
    Some((Gestation::new(first, 0)?, Gestation::new(last, 0)?))
}

/// Whether a level lies below the navel.
pub fn below_navel(level: FundusLevel) -> bool {
    match level {
        FundusLevel::NotAbovePubicBone
        | FundusLevel::JustAbovePubicBone
        | FundusLevel::HalfwayToNavel
        | FundusLevel::FingersBelowNavel(_) => true,
        FundusLevel::AtNavel
        | FundusLevel::FingersAboveNavel(_)
        | FundusLevel::HalfwayToXiphoid
        | FundusLevel::FingersBelowXiphoid(_)
        | FundusLevel::AtXiphoid => false,
    }
}
