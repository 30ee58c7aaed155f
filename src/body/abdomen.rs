//! The abdomen's curve: where a length laid along the skin ends up in space, and the other way round.
//!
//! In: weeks, a length along the skin or a height. Out: points in mother space, cm.
//!
//! Shape: in the midline a circular arc from the upper border of the symphysis (y = 0) to the xiphoid
//! (y = `CHORD`), both 1.5 cm of tissue in front of the bone; its rise grows with the weeks. Below and above the
//! arc the skin runs straight down and straight up. Across, at each height, a quarter of an ellipse from the
//! midline to the flank.
//! Source: the chord is the non-pregnant distance from symphysis to xiphisternum, 32.26 cm (SD 2.23), of the
//! UMBIL study (n = 65). The rise is this program's choice, so that 34 cm of tape at term spans 24-28 cm seen
//! from the front. Error: a model of one shape for all women; good to about 2 cm in depth.

use libm::{asin, cos, pow, sin, sqrt};

/// Symphysis to xiphoid in a straight line, cm (UMBIL: 32.26, SD 2.23).
pub const CHORD: f64 = 32.5;
/// Skin in front of the bone at both ends of the arc, cm.
pub const SKIN: f64 = 1.5;
/// The least rise, before the womb leaves the pelvis, cm.
const FLAT: f64 = 1.0;
/// The largest rise a tape can force, cm: just under half a circle.
const ROUNDEST: f64 = 16.2;

/// How far the abdomen has grown: 0 up to 12 weeks, 1 at 40, a little more at 42.
pub fn growth(weeks: f64) -> f64 {
    pow((weeks.clamp(12.0, 42.0) - 12.0) / 28.0, 1.5)
}

/// The sagittal curve of the skin in the midline; lengths in cm, `along` counted on the skin upwards from the
/// upper border of the symphysis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Curve {
    rise: f64,
    radius: f64,
    half: f64,
}

impl Curve {
    /// The curve at these weeks.
    pub fn at_weeks(weeks: f64) -> Self {
        Self::with_rise(FLAT + 13.0 * growth(weeks))
    }

    /// The curve at these weeks, made rounder if the tape would not fit below the xiphoid.
    pub fn for_tape(weeks: f64, tape: f64) -> Self {
        let usual = Self::at_weeks(weeks);
        if usual.length() >= tape + 1.5 {
            return usual;
        }
        let (mut low, mut high) = (usual.rise, ROUNDEST);
        for _ in 0..40 {
            let middle = 0.5 * (low + high);
            if Self::with_rise(middle).length() < tape + 1.5 { low = middle } else { high = middle }
        }
        Self::with_rise(high)
    }

    /// The arc with this rise (cm, held between 0.2 and 16.2).
    pub fn with_rise(rise: f64) -> Self {
        let rise = rise.clamp(0.2, ROUNDEST);
        let radius = (CHORD * CHORD / 4.0 + rise * rise) / (2.0 * rise);
        Self { rise, radius, half: asin(CHORD / (2.0 * radius)) }
    }

    /// Height of the arc over its chord, cm.
    pub fn rise(&self) -> f64 {
        self.rise
    }

    /// Length of the skin from symphysis to xiphoid, cm.
    pub fn length(&self) -> f64 {
        2.0 * self.half * self.radius
    }

    /// The point (y, z) at this length along the skin.
    pub fn point(&self, along: f64) -> (f64, f64) {
        if along <= 0.0 {
            return (along, SKIN);
        }
        if along >= self.length() {
            return (CHORD + along - self.length(), SKIN);
        }
        let angle = along / self.radius - self.half;
        (CHORD / 2.0 + self.radius * sin(angle), SKIN + self.radius * (cos(angle) - cos(self.half)))
    }

    /// The skin's outward direction (y, z), length 1, at this length along the skin.
    pub fn normal(&self, along: f64) -> (f64, f64) {
        if along <= 0.0 || along >= self.length() {
            return (0.0, 1.0);
        }
        let angle = along / self.radius - self.half;
        (sin(angle), cos(angle))
    }

    /// The length along the skin at height `y`.
    pub fn along(&self, y: f64) -> f64 {
        if y <= 0.0 {
            return y;
        }
        if y >= CHORD {
            return self.length() + y - CHORD;
        }
        self.radius * (asin(((y - CHORD / 2.0) / self.radius).clamp(-1.0, 1.0)) + self.half)
    }
}

/// The skin across at one height: a quarter ellipse on each side, alike on both; cm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// x of the flank.
    pub half_width: f64,
    /// z of the skin in the midline.
    pub front: f64,
    /// z of the skin at the flank.
    pub side: f64,
}

impl Section {
    /// z of the skin at `x`; beyond the flank, that of the flank.
    pub fn z(&self, x: f64) -> f64 {
        let share = (x / self.half_width).clamp(-1.0, 1.0);
        self.side + (self.front - self.side) * sqrt(1.0 - share * share)
    }

    /// Length on the skin from the midline to `x`, with the sign of `x`.
    pub fn across(&self, x: f64) -> f64 {
        let angle = asin((x / self.half_width).clamp(-1.0, 1.0));
        self.arc(angle.abs()) * if x < 0.0 { -1.0 } else { 1.0 }
    }

    /// The x at this length on the skin from the midline (negative: to her right); at most the flank.
    pub fn x(&self, across: f64) -> f64 {
        let want = across.abs();
        let (mut low, mut high) = (0.0, std::f64::consts::FRAC_PI_2);
        if want >= self.arc(high) {
            low = high;
        }
        for _ in 0..45 {
            let middle = 0.5 * (low + high);
            if self.arc(middle) < want { low = middle } else { high = middle }
        }
        self.half_width * sin(0.5 * (low + high)) * if across < 0.0 { -1.0 } else { 1.0 }
    }

    /// Length of the quarter ellipse from the front to `angle`, by Simpson's rule.
    pub fn arc(&self, angle: f64) -> f64 {
        let depth = self.front - self.side;
        let speed = |t: f64| {
            let (a, b) = (self.half_width * cos(t), depth * sin(t));
            sqrt(a * a + b * b)
        };
        const STEPS: usize = 32;
        let h = angle / STEPS as f64;
        let inner: f64 = (1..STEPS).map(|i| speed(h * i as f64) * if i % 2 == 1 { 4.0 } else { 2.0 }).sum();
        (speed(0.0) + inner + speed(angle)) * h / 3.0
    }
}
