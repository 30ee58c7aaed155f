//! The mother's body as far as the picture needs it: levels, outline, and where a named place on her abdomen is.
//!
//! In: weeks, and what was measured. Out: heights in cm above the symphysis, points in mother space.
//! Her left has positive x, always. Every place is made for her left and mirrored, so both sides agree exactly.
//!
//! Landmarks and tape do not fit one rigid body (a tape of 19.8 cm at 20 weeks, with a navel 15 cm above the
//! pubic bone before pregnancy and a womb "just below the navel"): the tape holds, and the navel moves up.

use libm::log;

use crate::body::abdomen::{CHORD, Curve, Section, growth};
use crate::exam::{Across, FundusLevel, Height, Place, Scar};
use crate::units::{MotherPoint, MotherSide, Vec3};

/// z of the flanks, cm.
const SIDE_Z: f64 = -5.0;
/// z of the skin of her back at the height of the navel, cm.
const BACK_Z: f64 = -15.0;
/// A finger's breadth, cm ("two finger-widths, about 4 cm": HESP-MID, HEAT).
const FINGER: f64 = 2.0;

/// Before this many weeks only the womb is drawn.
const EARLY: f64 = 26.0;

/// A level as handbooks give it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum HandbookLevel {
    /// As an exam would say it.
    At(FundusLevel),
    /// Finger-breadths above the pubic bone.
    FingersAbovePubicBone(u8),
}

/// Lowest and highest level that handbooks give for the top of the womb.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HandbookLevels {
    /// The weeks they are given for.
    pub weeks: u8,
    /// Lowest level.
    pub low: HandbookLevel,
    /// Highest level.
    pub high: HandbookLevel,
}

/// The levels that handbooks give for weeks no more than about one away (`tests/published/fundal-landmarks.csv`);
/// `None` before 12+0, and from 25+0 on, where none is given for an early womb.
pub fn handbook_levels(weeks: f64) -> Option<HandbookLevels> {
    use FundusLevel::{AtNavel, FingersAboveNavel, FingersBelowNavel, HalfwayToNavel, JustAbovePubicBone};
    use HandbookLevel::{At, FingersAbovePubicBone};
    let (weeks, low, high) = match weeks {
        // At or above the symphysis: general reference. Just above it: Bettercare.
        w if (12.0..13.0).contains(&w) => (12, FingersAbovePubicBone(0), At(JustAbovePubicBone)),
        // At or above the symphysis, 12-14: general reference. Just above the pubic bone at three months: HEAT.
        w if (13.0..15.0).contains(&w) => (14, FingersAbovePubicBone(0), At(JustAbovePubicBone)),
        // One or two fingers above the symphysis: medicalalgorithms.com. Halfway from symphysis to navel: Bettercare.
        w if (15.0..17.0).contains(&w) => (16, FingersAbovePubicBone(1), At(HalfwayToNavel)),
        // Two fingers below the navel: Bettercare.
        w if (17.0..19.0).contains(&w) => (18, At(FingersBelowNavel(2)), At(FingersBelowNavel(2))),
        // One finger below the navel: Bettercare. At the navel: barnardhealth.us; buboflash; HEAT; HESP-MID.
        w if (19.0..21.0).contains(&w) => (20, At(FingersBelowNavel(1)), At(AtNavel)),
        // At the navel: Bettercare; HEAT; HESP-MID.
        w if (21.0..23.0).contains(&w) => (22, At(AtNavel), At(AtNavel)),
        // At the navel: medicalalgorithms.com. One finger above the navel: Bettercare.
        w if (23.0..25.0).contains(&w) => (24, At(AtNavel), At(FingersAboveNavel(1))),
        _ => return None,
    };
    Some(HandbookLevels { weeks, low, high })
}

/// How the height of the womb is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FundusKnown {
    /// By the tape.
    Measured,
    /// By its level in words.
    Level,
    /// From the weeks alone.
    Expected,
}

/// Her body at a visit; heights are y in mother space, cm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MotherShape {
    /// Weeks the body is drawn for, held between 12 and 42.
    pub weeks: f64,
    /// The abdomen's curve in the midline.
    pub curve: Curve,
    /// Top of the womb along the skin, cm.
    pub fundus_along: f64,
    /// Top of the womb.
    pub fundus_y: f64,
    /// How the top of the womb is known.
    pub fundus_known: FundusKnown,
    /// Navel along the skin, cm.
    pub navel_along: f64,
    /// Navel.
    pub navel_y: f64,
    /// Share by which a measured girth widens (above 1) or narrows the abdomen.
    pub breadth: f64,
}

/// Mean symphysis-fundus height in cm at exact weeks (INTERGROWTH-21st, Papageorghiou et al., BMJ 2016;355:i5662;
/// valid 16+0 to 42+6). Under 16 weeks no mean is published: a straight line down to 1 cm at 12 weeks ("just
/// above the symphysis", Bettercare), 0 before.
pub fn expected_tape(weeks: f64) -> f64 {
    let mean = |w: f64| 5.133374 + 0.1058353119 * w * w - 0.0231295 * w * w * log(w);
    if weeks >= 16.0 {
        mean(weeks.min(42.0))
    } else {
        (1.0 + (mean(16.0) - 1.0) * (weeks - 12.0) / 4.0).max(0.0)
    }
}

/// Top of the womb along the skin in cm when it was not measured. From 20 weeks the mean tape. Before, no tape is
/// taken, and what every midwife knows are the landmarks: just above the symphysis at 12 weeks (Bettercare), above it at
/// 13-14 (HEAT), halfway to the navel at 16, two fingers under it at 18 (Bettercare); before 12 weeks nothing above it.
pub fn expected_fundus(weeks: f64) -> f64 {
    if weeks < 12.0 {
        return 0.0;
    }
    if weeks >= 20.0 {
        return expected_tape(weeks);
    }
    between(
        &[
            (12.0, 1.0),
            (14.0, 2.6),
            (16.0, 0.5 * expected_navel(16.0)),
            (18.0, expected_navel(18.0) - 2.0 * FINGER),
            (20.0, expected_tape(20.0)),
        ],
        weeks,
    )
}

/// How far the expected top of the womb falls, cm along the skin, as the head sinks from 5/5 to `fifths` above the
/// brim: 3.2 to 1/5. Source: it "drops: the tape may go from 36 to 32 cm" near term (fundal landmarks), 2-4 cm.
fn fall(fifths: u8) -> f64 {
    0.8 * f64::from(5 - fifths.min(5))
}

/// Navel along the skin in cm when it was not measured: 15.15 before pregnancy (UMBIL), then near the level
/// that the landmarks give it beside the mean tape (one finger above the womb at 20 weeks, one below at 24).
fn expected_navel(weeks: f64) -> f64 {
    between(
        &[(12.0, 15.15), (16.0, 17.0), (20.0, 20.8), (24.0, 22.0), (28.0, 22.9), (34.0, 23.7), (40.0, 24.2)],
        weeks,
    )
}

impl MotherShape {
    /// Her body at these exact weeks. `tape`: symphysis to fundus along the skin; `navel`: its height along the
    /// skin; `girth`: round the navel; all in cm, `None` when not measured.
    pub fn new(weeks: f64, tape: Option<f64>, navel: Option<f64>, girth: Option<f64>) -> Self {
        let fundus_along = tape.unwrap_or_else(|| expected_fundus(weeks));
        let weeks = weeks.clamp(12.0, 42.0);
        let curve = Curve::for_tape(weeks, fundus_along);
        let navel_along = navel.unwrap_or_else(|| expected_navel(weeks)).clamp(4.0, curve.length() - 4.0);
        let known = if tape.is_some() { FundusKnown::Measured } else { FundusKnown::Expected };
        let mut shape = Self {
            weeks,
            curve,
            fundus_along,
            fundus_y: curve.point(fundus_along).0,
            fundus_known: known,
            navel_along,
            navel_y: curve.point(navel_along).0,
            breadth: 1.0,
        };
        if let Some(girth) = girth {
            shape.breadth = (girth / shape.girth()).clamp(0.86, 1.14);
        }
        shape
    }

    /// The same body with the top of the womb at a level given in words; a tape, if there is one, holds.
    pub fn with_level(mut self, level: FundusLevel) -> Self {
        if self.fundus_known != FundusKnown::Measured {
            self.fundus_along = self.along_level(level);
            self.fundus_y = self.curve.point(self.fundus_along).0;
            self.fundus_known = FundusKnown::Level;
        }
        self
    }

    /// The same body with the top of the womb at height `y`, as when a crosswise baby or a low head makes it lower
    /// than the weeks; a tape or a level in words, if there is one, holds.
    pub fn with_fundus_at(mut self, y: f64) -> Self {
        if self.fundus_known == FundusKnown::Expected {
            self.fundus_y = y;
            self.fundus_along = self.curve.along(y);
        }
        self
    }

    /// The same body with the womb that sinks with the head, of which `fifths` are felt above the brim; a tape or a level
    /// in words, if there is one, holds.
    pub fn fallen_with_head(self, fifths: u8) -> Self {
        let y = self.curve.point(self.fundus_along - fall(fifths)).0;
        self.with_fundus_at(y)
    }

    /// The height of a level of the handbooks, cm.
    pub fn handbook_y(&self, level: HandbookLevel) -> f64 {
        let along = match level {
            HandbookLevel::At(level) => self.along_level(level),
            HandbookLevel::FingersAbovePubicBone(n) => FINGER * f64::from(n),
        };
        self.curve.point(along).0
    }

    /// A level in words as a length along the skin above the symphysis, cm (a finger is 2 cm).
    pub fn along_level(&self, level: FundusLevel) -> f64 {
        let (navel, top) = (self.navel_along, self.curve.length());
        match level {
            FundusLevel::NotAbovePubicBone => -1.0,
            FundusLevel::JustAbovePubicBone => 1.0,
            FundusLevel::HalfwayToNavel => navel / 2.0,
            FundusLevel::FingersBelowNavel(n) => (navel - FINGER * f64::from(n)).max(0.0),
            FundusLevel::AtNavel => navel,
            FundusLevel::FingersAboveNavel(n) => (navel + FINGER * f64::from(n)).min(top),
            FundusLevel::HalfwayToXiphoid => (navel + top) / 2.0,
            FundusLevel::FingersBelowXiphoid(n) => (top - FINGER * f64::from(n)).max(0.0),
            FundusLevel::AtXiphoid => top,
        }
    }

    /// Height of the xiphoid.
    pub fn xiphoid_y(&self) -> f64 {
        CHORD
    }

    /// x of the flank's outline (her left; her right is its mirror image) at height `y`.
    pub fn half_width(&self, y: f64) -> f64 {
        let grown = ((self.curve.rise() - 1.0) / 13.0).clamp(0.0, 1.15);
        let slim = between(&SLIM, y);
        let width = slim + (between(&TERM, y) - slim) * grown;
        // A measured girth tells of the abdomen, not of chest and hips.
        let share = (1.0 - ((y - self.navel_y) / 17.0) * ((y - self.navel_y) / 17.0)).max(0.0);
        (width * (1.0 + (self.breadth - 1.0) * share)).min(21.5)
    }

    /// The skin across at height `y`.
    pub fn section(&self, y: f64) -> Section {
        let front = self.curve.point(self.curve.along(y)).1;
        Section { half_width: self.half_width(y), front, side: SIDE_Z }
    }

    /// Girth round the navel, cm: half an ellipse in front, half an ellipse behind.
    pub fn girth(&self) -> f64 {
        let section = self.section(self.navel_y);
        let back = Section { front: SIDE_Z, side: BACK_Z, ..section };
        2.0 * (section.arc(std::f64::consts::FRAC_PI_2) + back.arc(std::f64::consts::FRAC_PI_2))
    }

    /// The point of the skin that lies over (x, y) as seen from the front; beyond the flank, the flank.
    pub fn skin(&self, x: f64, y: f64) -> MotherPoint {
        let section = self.section(y);
        let x = x.clamp(-section.half_width, section.half_width);
        MotherPoint(Vec3::new(x as f32, y as f32, section.z(x) as f32))
    }

    /// The point of the skin `across` cm from the midline (negative: her right) and `along` cm above the symphysis,
    /// both laid on the skin.
    pub fn on_skin(&self, across: f64, along: f64) -> MotherPoint {
        let y = self.curve.point(along).0;
        let x = self.section(y).x(across.abs());
        self.skin(if across < 0.0 { -x } else { x }, y)
    }

    /// A point of the skin as lengths on the skin: across from the midline (negative: her right) and along from
    /// the symphysis, cm. Undoes `on_skin`.
    pub fn skin_lengths(&self, p: MotherPoint) -> (f64, f64) {
        let y = f64::from(p.0.y);
        (self.section(y).across(f64::from(p.0.x)), self.curve.along(y))
    }

    /// The outward direction of the skin at (x, y), length 1.
    pub fn skin_normal(&self, x: f64, y: f64) -> Vec3 {
        let step = 0.05;
        let limit = self.half_width(y) - 2.0 * step;
        let side = if x < 0.0 { -1.0 } else { 1.0 };
        let x = x.abs().min(limit);
        let slope = |a: MotherPoint, b: MotherPoint| (a.0.z - b.0.z) / (2.0 * step) as f32;
        let dx = slope(self.skin(x + step, y), self.skin(x - step, y));
        let dy = slope(self.skin(x, y + step), self.skin(x, y - step));
        Vec3::new(-dx * side as f32, -dy, 1.0).normalized()
    }

    /// Where a named or measured place is on her skin. A part that was not said: the midline, or the middle of
    /// the womb.
    pub fn place(&self, place: &Place) -> MotherPoint {
        let (navel, top) = (self.navel_along, self.curve.length());
        let at_height = |y: f64| self.curve.along(y);
        let low_side = place.height == Some(Height::IliacFossa);
        let early = self.weeks < EARLY;
        // Of an early womb nothing is felt or heard above its top, or far beside the midline.
        let within = |y: f64| if early { y.min((self.fundus_y - 1.2).max(-1.0)) } else { y };
        let aside = if early { 0.16 + 0.24 * (self.weeks - 12.0) / (EARLY - 12.0) } else { 0.4 };
        let along = match place.height {
            Some(Height::Fundus) => self.fundus_along - 2.5_f64.min(self.fundus_along.max(0.0) * 0.25),
            Some(Height::AboveNavel) => navel + ((self.fundus_along - navel) * 0.4).clamp(2.0, 4.5),
            Some(Height::AtNavel) => navel,
            Some(Height::BelowNavel) => at_height(within(self.navel_y * 0.62)),
            Some(Height::IliacFossa) => at_height(5.5),
            Some(Height::AbovePubicBone) => at_height(within(2.8)),
            Some(Height::FromNavel(cm)) => navel + cm,
            Some(Height::FromPubicBone(cm)) => cm.get(),
            None => at_height(self.navel_y.min(self.fundus_y * 0.55)),
        };
        let y = self.curve.point(along.clamp(-6.0, top)).0;
        let wide = self.half_width(y);
        let x = match place.across {
            Some(Across::Side(side)) => f64::from(side.sign()) * wide * if low_side { 0.5 } else { aside },
            Some(Across::Flank(side)) => f64::from(side.sign()) * wide * 0.72,
            Some(Across::Measured(side, cm)) => {
                f64::from(side.sign()) * self.section(y).x(cm.get()).min(0.95 * wide)
            }
            Some(Across::Middle) | None => 0.0,
        };
        self.skin(x, y)
    }

    /// The lines of a scar on her skin, each from end to end.
    pub fn scar(&self, scar: Scar) -> Vec<Vec<MotherPoint>> {
        let skin = |points: &[(f64, f64)]| points.iter().map(|&(x, y)| self.skin(x, y)).collect::<Vec<_>>();
        match scar {
            // About 2-3 cm above the pubic bone along the skin, 13 cm long, smiling.
            Scar::LowTransverse => {
                vec![skin(&[
                    (-6.4, 1.9),
                    (-4.4, 1.15),
                    (-2.2, 0.8),
                    (0.0, 0.7),
                    (2.2, 0.8),
                    (4.4, 1.15),
                    (6.4, 1.9),
                ])]
            }
            // From above the pubic bone to below the navel.
            Scar::Midline => {
                let top = self.navel_y - 2.0;
                let low = 1.2_f64.min(top - 3.0);
                vec![skin(&[
                    (0.0, low),
                    (0.0, low + (top - low) / 3.0),
                    (0.0, low + (top - low) / 1.5),
                    (0.0, top),
                ])]
            }
            // Two thirds of the way from the navel to the right superior spine, across that line.
            Scar::RightLower => {
                let (x, y) = (-12.3 * 0.667, self.navel_y + (7.6 - self.navel_y) * 0.667);
                vec![skin(&[(x - 2.0, y + 1.7), (x - 0.6, y + 0.6), (x + 0.7, y - 0.6), (x + 2.0, y - 1.5)])]
            }
            // At the navel's lower rim, and low on both sides.
            Scar::Keyhole => {
                let low = self.navel_y * 0.45;
                vec![
                    skin(&[
                        (-0.7, self.navel_y - 1.2),
                        (0.0, self.navel_y - 1.45),
                        (0.7, self.navel_y - 1.2),
                    ]),
                    skin(&[(7.4, low + 0.2), (8.0, low), (8.6, low - 0.15)]),
                    skin(&[(-7.4, low + 0.2), (-8.0, low), (-8.6, low - 0.15)]),
                ]
            }
        }
    }

    /// The margin of the ribs on one side, an open line from the xiphoid outwards and down.
    pub fn rib_margin(&self, side: MotherSide) -> Vec<MotherPoint> {
        // The lower ribs flare as the womb rises: the angle under the sternum opens from about 70 to 100 degrees.
        let flare = growth(self.weeks).min(1.0);
        [(0.8, 31.4), (3.4, 28.0), (6.8, 24.9), (10.8, 22.6)]
            .map(|(x, y)| {
                let (x, y) = (x * (0.88 + 0.16 * flare), y + (31.6 - y) * 0.1 * flare);
                self.skin(x * f64::from(side.sign()), y)
            })
            .into()
    }
}

/// Half-widths of the body by height: before the womb shows, and at term. From below upwards, cm.
const SLIM: [(f64, f64); 10] = [
    (-20.0, 16.6),
    (-12.0, 18.2),
    (-6.0, 18.6),
    (0.0, 17.9),
    (6.0, 16.2),
    (12.0, 14.0),
    (19.0, 12.7),
    (26.0, 13.2),
    (33.0, 13.8),
    (42.0, 14.4),
];
const TERM: [(f64, f64); 10] = [
    (-20.0, 17.0),
    (-12.0, 18.8),
    (-6.0, 19.2),
    (0.0, 18.6),
    (6.0, 18.2),
    (12.0, 18.6),
    (19.0, 18.0),
    (26.0, 15.9),
    (33.0, 14.2),
    (42.0, 14.4),
];

/// The value at `x` of a smooth curve through a table of (x, value), rising in x; outside it, the end values.
fn between(table: &[(f64, f64)], x: f64) -> f64 {
    let last = table.len() - 1;
    if x <= table[0].0 {
        return table[0].1;
    }
    if x >= table[last].0 {
        return table[last].1;
    }
    let i = (1..last).find(|&i| x < table[i].0).unwrap_or(last) - 1;
    let slope = |i: usize| {
        let (a, b) = (table[i.saturating_sub(1)], table[(i + 1).min(last)]);
        (b.1 - a.1) / (b.0 - a.0)
    };
    let ((x0, y0), (x1, y1)) = (table[i], table[i + 1]);
    let (h, t) = (x1 - x0, (x - x0) / (x1 - x0));
    let (s0, s1) = (slope(i) * h, slope(i + 1) * h);
    y0 + t * (s0 + t * (3.0 * (y1 - y0) - 2.0 * s0 - s1 + t * (2.0 * (y0 - y1) + s0 + s1)))
}
