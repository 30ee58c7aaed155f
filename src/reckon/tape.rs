//! The tape. In: an exam, its conclusions, the local limit. Out: two answers kept apart, or why there is none; remarks on them
//! and on earlier tapes.
//!
//! The weeks rule sets centimetres against weeks. The standard sets them against the INTERGROWTH-21st curve. A tape that is not
//! fit for either is read by neither. A low head explains a low tape; it silences nothing.

use super::Remark;
use super::curves::{self, CENTILE_Z, SFH_DAYS};
use super::dates::{Dating, SettledBy};
use super::landmarks;
use super::ledger::{Rule, rule};
use super::rounded::beside;
use crate::clinic::Thresholds;
use crate::exam::{Conclusion, Descent, Exam, Lie, Presentation, TapeUnfit, Water};
use crate::units::Gestation;

/// From here on a tape between P10 and P90 has no remark of its own: the head descends, and the mean falls behind the weeks. House.
const RULE_ENDS: Gestation = Gestation::from_days(36 * 7);
/// From here on a tape is held against the curve in a remark; before, its numbers alone stand. House.
const REMARKS_FROM: Gestation = Gestation::from_days(24 * 7);
/// Tapes of a series are this far apart at least, days. House; RCOG 31 has two to three weeks between tapes.
const SERIES_APART: u16 = 14;
/// A fall against the curve of this much, in z, is a remark. House; RCOG 31 gives no number.
const FALL_Z: f64 = 1.0;
/// From here on centimetres are set against weeks, 24+0. Source: WHO-SFH (sfh-rules table), seen.
const WEEKS_RULE_FROM: Gestation = Gestation::from_days(24 * 7);
/// From here on tapes are set against one another, 18+0. Source: Bettercare (sfh-rules table), seen.
const SERIES_FROM: Gestation = Gestation::from_days(18 * 7);
/// A tape this far behind, in days: four weeks, themselves included. Source: Bettercare (sfh-rules table), seen.
const FAR_BEHIND: i32 = 28;
/// Size and dates this far apart are looked at again, in days, themselves left out: with the top of the womb below the navel,
/// and at or above it. Source: Bettercare (sfh-rules table), seen.
const DATES_BELOW_NAVEL: i32 = 21;
const DATES_FROM_NAVEL: i32 = 28;
/// At or under these fifths the head is low. Source: Bettercare 8A (engagement-fifths table), seen.
const LOW_FIFTHS: u8 = 2;

/// Centimetres against weeks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeeksRule {
    /// Centimetres less completed weeks; negative: below.
    pub difference: f64,
    /// The limit, cm.
    pub limit: u16,
}

impl WeeksRule {
    /// Whether the tape is within the limit; on it is within.
    pub fn within(self) -> bool {
        self.difference.abs() <= f64::from(self.limit) + 1e-9
    }
    /// The difference without its sign, with as many decimals as keep it on its side of the limit.
    pub fn apart(self) -> String {
        beside(self.difference.abs(), &[0.0, f64::from(self.limit)], 1)
    }
    /// `below`, `above` or `equal`.
    pub fn direction(self) -> &'static str {
        match self.difference {
            d if d < 0.0 => "below",
            d if d > 0.0 => "above",
            _ => "equal",
        }
    }
}

/// A tape against the curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Standard {
    /// Mean at these weeks, cm.
    pub mean: f64,
    /// Standard deviation, cm.
    pub sd: f64,
    /// How many standard deviations above the mean.
    pub z: f64,
    /// 100 Φ(z).
    pub centile: f64,
}

impl Standard {
    /// The centile without decimals, or with as many as keep it on its side of the tenth and the ninetieth.
    pub fn shown_centile(self) -> String {
        match self.centile {
            centile if centile < 1.0 => "under 1".to_owned(),
            centile if centile > 99.0 => "over 99".to_owned(),
            centile => beside(centile, &[10.0, 90.0], 0),
        }
    }
}

/// A tape, read.
#[derive(Clone, Debug, PartialEq)]
pub struct Tape {
    /// What was measured, cm.
    pub measured: f64,
    /// The weeks rule, from 24+0.
    pub weeks_rule: Option<WeeksRule>,
    /// INTERGROWTH-21st, from 16+0 to 42+6.
    pub standard: Option<Standard>,
    /// Why it is read by neither; empty when it is fit to be read.
    pub unfit: Vec<TapeUnfit>,
}

/// What three tapes or more say together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Series {
    /// The last three are equal.
    Static,
    /// The last is lower than the one two visits before.
    Falling,
}

/// The last of these tapes (cm, oldest first) against the two before it. Of one baby, fit to be read. Source: Bettercare
/// (sfh-rules table), seen.
pub fn series(tapes: &[f64]) -> Option<Series> {
    let [.., before_last, last_but_one, last] = tapes else { return None };
    let same = |a: &f64, b: &f64| (a - b).abs() < 1e-9;
    if same(before_last, last) && same(last_but_one, last) {
        return Some(Series::Static);
    }
    (last < before_last && !same(last, before_last)).then_some(Series::Falling)
}

/// Why a tape cannot be read against weeks or a curve: as recorded, and as it follows from the other findings. Source: RCOG 31
/// (large build, fibroids, much water); INTERGROWTH-21st (singletons); a crosswise baby leaves the top of the womb empty.
pub fn unfit(exam: &Exam, conclusions: &[Conclusion]) -> Vec<TapeUnfit> {
    let mother = &exam.mother;
    let recorded = mother.tape_unfit.value().map_or(&[][..], Vec::as_slice);
    let lumps = mother.lumps.value().is_some_and(|lumps| !lumps.is_empty());
    let across = |c: &Conclusion| matches!(c.lie, Some(Lie::Transverse | Lie::Oblique));
    [
        (TapeUnfit::LargeBuild, false),
        (TapeUnfit::Fibroids, lumps),
        (TapeUnfit::MuchWater, mother.water.value() == Some(&Water::Much)),
        (TapeUnfit::Twins, exam.babies.len() > 1),
        (TapeUnfit::Crosswise, conclusions.iter().any(across)),
    ]
    .into_iter()
    .filter_map(|(why, follows)| (follows || recorded.contains(&why)).then_some(why))
    .collect()
}

/// The tape of an exam; `None` when none was laid.
pub fn tape(exam: &Exam, conclusions: &[Conclusion], thresholds: &Thresholds) -> Option<Tape> {
    let measured = exam.mother.fundal_height.value()?.get();
    let unfit = unfit(exam, conclusions);
    let weeks = exam.weeks.filter(|_| unfit.is_empty());
    let weeks_rule = weeks.filter(|weeks| *weeks >= WEEKS_RULE_FROM).map(|weeks| WeeksRule {
        difference: measured - f64::from(weeks.days() / 7),
        limit: thresholds.tape_cm,
    });
    let standard = weeks.and_then(|weeks| standard(measured, weeks));
    Some(Tape { measured, weeks_rule, standard, unfit })
}

/// A tape that is fit against the curve; `None` outside 16+0 to 42+6.
pub fn standard(measured: f64, weeks: Gestation) -> Option<Standard> {
    if !SFH_DAYS.contains(&weeks.days()) {
        return None;
    }
    let (mean, sd) = (curves::sfh_mean(weeks), curves::sfh_sd(weeks));
    let z = (measured - mean) / sd;
    Some(Standard { mean, sd, z, centile: curves::centile(z) })
}

/// The remarks on a tape, on tapes over the visits, and on size against dates.
pub fn remarks(
    exam: &Exam,
    conclusions: &[Conclusion],
    tape: Option<&Tape>,
    dating: Option<&Dating>,
) -> Vec<Remark> {
    let mut remarks = vec![];
    if let Some(tape) = tape.filter(|tape| tape.unfit.is_empty()) {
        let low_head = low_head(exam, conclusions);
        remarks.extend(against_curve_or_weeks(exam, tape, &low_head));
        // How to measure again, and that a head is low, is said once.
        let said = remarks.first().map(|remark| remark.findings.len() > 1);
        remarks.extend(against_earlier(exam, tape, &low_head, said));
    } else {
        remarks.extend(not_read(exam, conclusions, tape));
    }
    remarks.extend(against_dates(exam, tape, dating));
    remarks
}

/// Findings by which the head is low; empty when it is not, or not known to be.
pub(super) fn low_head(exam: &Exam, conclusions: &[Conclusion]) -> Vec<&'static str> {
    let ([baby], [conclusion]) = (&exam.babies[..], conclusions) else { return vec![] };
    let head_down = matches!(
        conclusion.presentation,
        Some(Presentation::Cephalic | Presentation::Face | Presentation::Brow)
    );
    [
        (
            "baby.1.head-above-brim",
            baby.head_above_brim.value().is_some_and(|fifths| fifths.get() <= LOW_FIFTHS),
        ),
        (
            "baby.1.descent",
            head_down && matches!(baby.descent.value(), Some(Descent::Deep | Descent::Engaged)),
        ),
    ]
    .into_iter()
    .filter_map(|(key, low)| low.then_some(key))
    .collect()
}

/// A remark on a tape, with what its sentence may name. `low`: a low head may have lowered the tape.
fn remark(rule: &Rule, measured: f64, weeks: Gestation, low: &[&str]) -> Remark {
    Remark::new(rule)
        .on(&["mother.fundal-height"])
        .on(low)
        .with("cm", beside(measured, &[], 2))
        .with("weeks", weeks.to_string())
        .with("head", if low.is_empty() { "" } else { "low" })
}

/// The most pressing of what the two answers call for.
fn against_curve_or_weeks(exam: &Exam, tape: &Tape, low_head: &[&str]) -> Option<Remark> {
    let weeks = exam.weeks.filter(|weeks| *weeks >= REMARKS_FROM)?;
    if let Some(standard) = tape.standard {
        let centile = standard.shown_centile();
        let reaches = curves::sfh_reaches(tape.measured);
        let behind = i32::from(weeks.days()) - reaches.map_or(0, |reached| i32::from(reached.days()));
        // Nothing is published of a tape before 16+0.
        let knows = i32::from(weeks.days()) - FAR_BEHIND >= i32::from(*SFH_DAYS.start());
        if knows && behind >= FAR_BEHIND {
            let reaches = reaches.map_or_else(|| "none".to_owned(), |reached| reached.to_string());
            let rule = const { rule("tape-four-weeks-behind") };
            return Some(
                remark(rule, tape.measured, weeks, low_head)
                    .with("reaches", reaches)
                    .with("centile", centile),
            );
        }
        let z_of = |wanted: u8| CENTILE_Z.iter().find(|(c, _)| *c == wanted).map_or(0.0, |(_, z)| *z);
        if standard.z < z_of(10) {
            let rule = const { rule("tape-below-p10") };
            return Some(remark(rule, tape.measured, weeks, low_head).with("centile", centile));
        }
        if standard.z > z_of(90) {
            let rule = const { rule("tape-above-p90") };
            return Some(remark(rule, tape.measured, weeks, &[]).with("centile", centile));
        }
    }
    let ended = weeks >= RULE_ENDS && tape.standard.is_some();
    let outside = tape.weeks_rule.filter(|weeks_rule| !weeks_rule.within() && !ended)?;
    let low: &[&str] = if outside.difference < 0.0 { low_head } else { &[] };
    Some(
        remark(const { rule("tape-outside-weeks") }, tape.measured, weeks, low)
            .with("difference", outside.apart())
            .with("direction", outside.direction())
            .with("limit", outside.limit.to_string()),
    )
}

/// Today's tape against the earlier ones. `before`: whether another remark on the tape stands, and then whether it names the head.
fn against_earlier(exam: &Exam, tape: &Tape, low_head: &[&str], before: Option<bool>) -> Option<Remark> {
    let earlier = exam.mother.earlier_tapes.value()?.iter();
    let mut tapes: Vec<(Gestation, f64)> = earlier.map(|tape| (tape.at, tape.height.get())).collect();
    tapes.sort_by_key(|(at, _)| *at);
    tapes.push((exam.weeks?, tape.measured));
    Some(serial(&tapes, low_head, before)?.on(&["mother.earlier-tapes"]))
}

/// What tapes, oldest first, say together: of one baby, fit to be read. `low_head`: findings by which the head is low at the
/// last of them. `before`: as above.
pub(super) fn serial(tapes: &[(Gestation, f64)], low_head: &[&str], before: Option<bool>) -> Option<Remark> {
    let (&(weeks, measured), earlier) = tapes.split_last()?;
    // Back from the last, each far enough before the one after it.
    let mut chosen: Vec<(Gestation, f64)> = vec![(weeks, measured)];
    for &(at, cm) in earlier.iter().rev().filter(|(at, _)| *at >= SERIES_FROM) {
        let next = chosen.last().map_or(weeks, |(next, _)| *next);
        if at.days() + SERIES_APART <= next.days() {
            chosen.push((at, cm));
        }
    }
    chosen.truncate(3);
    chosen.reverse();
    let heights: Vec<f64> = chosen.iter().map(|(_, cm)| *cm).collect();
    let fall = |tapes: &[(Gestation, f64)]| -> Option<f64> {
        let z: Vec<f64> = tapes.iter().filter_map(|(at, cm)| Some(standard(*cm, *at)?.z)).collect();
        let falls = z.len() == tapes.len() && z.windows(2).all(|pair| pair[1] < pair[0]);
        let all = z.first()? - z.last()?;
        (falls && all >= FALL_Z - 1e-9).then_some(all)
    };
    let through = (chosen.len() == 3).then(|| fall(&chosen)).flatten();
    let lower =
        (weeks >= REMARKS_FROM && chosen.len() >= 2).then(|| fall(&chosen[chosen.len() - 2..])).flatten();
    // Equal and falling tapes have a published rule; a fall through the curve stands where those are silent.
    let (rule, fallen, from) = if let Some(series) = series(&heights) {
        let rule = match series {
            Series::Static => const { rule("tape-static") },
            Series::Falling => const { rule("tape-falling") },
        };
        (rule, None, 0)
    } else if let Some(all) = through.filter(|_| weeks >= REMARKS_FROM) {
        (const { rule("tape-through-centiles") }, Some(all), 0)
    } else {
        (const { rule("tape-lower-in-z") }, Some(lower?), chosen.len() - 2)
    };
    let said: Vec<String> = chosen[from..chosen.len() - 1]
        .iter()
        .map(|(at, cm)| format!("{} cm at {at}", beside(*cm, &[], 2)))
        .collect();
    let low_head = if before == Some(true) { &[] } else { low_head };
    let mut remark = remark(rule, measured, weeks, low_head).with("earlier", said.join(", "));
    if let Some(fallen) = fallen {
        remark = remark.with("fall", beside(fallen, &[FALL_Z], 1));
    }
    Some(remark.with("again", if before.is_some() { "" } else { "yes" }))
}

/// A tape that is not read leaves growth unanswered.
fn not_read(exam: &Exam, conclusions: &[Conclusion], tape: Option<&Tape>) -> Option<Remark> {
    let recorded = exam.mother.tape_unfit.value().is_some_and(|why| !why.is_empty());
    if tape.is_none() && !recorded {
        return None;
    }
    let why = unfit(exam, conclusions);
    let keys = |why: &TapeUnfit| -> Vec<String> {
        let babies = |names: &[&str]| -> Vec<String> {
            (0..exam.babies.len())
                .flat_map(|index| names.iter().map(move |name| format!("baby.{}.{name}", index + 1)))
                .filter(|key| exam.read.iter().any(|(read, _)| read == key))
                .collect()
        };
        match why {
            TapeUnfit::Fibroids if exam.mother.lumps.value().is_some() => vec!["mother.lumps".to_owned()],
            TapeUnfit::MuchWater if exam.mother.water.value().is_some() => vec!["mother.water".to_owned()],
            TapeUnfit::Crosswise => babies(&["head", "breech", "back", "lie", "position"]),
            TapeUnfit::LargeBuild | TapeUnfit::Fibroids | TapeUnfit::MuchWater | TapeUnfit::Twins => vec![],
        }
    };
    let mut remark = Remark::new(const { rule("tape-not-read") })
        .with("lie", if why.contains(&TapeUnfit::Crosswise) { "across" } else { "" });
    remark = remark.with("why", why.iter().map(|why| word(*why)).collect::<Vec<_>>().join(", "));
    let own = [("mother.fundal-height", tape.is_some()), ("mother.tape-unfit", recorded)];
    remark.findings.extend(own.into_iter().filter(|(_, there)| *there).map(|(key, _)| key.to_owned()));
    remark.findings.extend(why.iter().flat_map(keys));
    Some(remark)
}

/// The word of the exam language for why a tape is unfit.
pub fn word(why: TapeUnfit) -> &'static str {
    use crate::exam::words::Vocabulary;
    why.word().unwrap_or_default()
}

/// Size against dates, where no early scan settles the dates.
fn against_dates(exam: &Exam, tape: Option<&Tape>, dating: Option<&Dating>) -> Option<Remark> {
    let weeks = exam.weeks?;
    // Weeks alone do not say what they rest on; later in pregnancy they are then left as they are.
    let open = match dating.map(|dating| dating.by) {
        Some(SettledBy::Scan) => false,
        Some(SettledBy::Due | SettledBy::LastPeriod) => true,
        Some(SettledBy::Weeks) | None => weeks < WEEKS_RULE_FROM,
    };
    if !open || exam.babies.len() > 1 {
        return None;
    }
    let level = exam.mother.fundus.value();
    let below_navel = match (level, exam.mother.navel.value(), tape) {
        (Some(level), _, _) => landmarks::below_navel(*level),
        (None, Some(navel), Some(tape)) => tape.measured < navel.get(),
        (None, _, _) => false,
    };
    let limit = if below_navel { DATES_BELOW_NAVEL } else { DATES_FROM_NAVEL };
    let (fits, key) = match (tape, level) {
        (Some(tape), _) if tape.standard.is_some() => {
            let reached = curves::sfh_reaches(tape.measured)?;
            ((reached, reached), "mother.fundal-height")
        }
        (_, Some(level)) if tape.is_none_or(|tape| tape.unfit.is_empty()) => {
            (landmarks::weeks_of(*level)?, "mother.fundus")
        }
        _ => return None,
    };
    let days = |weeks: Gestation| i32::from(weeks.days());
    let apart = (days(fits.0) - days(weeks)).max(days(weeks) - days(fits.1));
    if apart <= limit {
        return None;
    }
    let fits = if fits.0 == fits.1 { fits.0.to_string() } else { format!("{} to {}", fits.0, fits.1) };
    Some(
        Remark::new(const { rule("size-against-dates") })
            .on(&[key])
            .with("fits", fits)
            .with("weeks", weeks.to_string())
            .with("limit", (limit / 7).to_string())
            .with("size", if key == "mother.fundal-height" { "tape" } else { "" }),
    )
}
