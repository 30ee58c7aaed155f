//! Lengths and weights. In: numbers in a stated unit. Out: centimetres and grams, never negative, infinite or NaN.

/// Centimetres in an inch, by definition.
const CM_PER_INCH: f64 = 2.54;
/// Grams in an avoirdupois pound, by definition.
const GRAMS_PER_POUND: f64 = 453.592_37;

/// A length on the body, in centimetres. Finite and not negative.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Centimetres(f64);

impl Centimetres {
    /// `None` if `value` is negative, infinite or NaN.
    pub fn new(value: f64) -> Option<Self> {
        (value.is_finite() && value >= 0.0).then_some(Self(value))
    }
    /// From inches.
    pub fn from_inches(inches: f64) -> Option<Self> {
        Self::new(inches * CM_PER_INCH)
    }
    /// The plain number, in centimetres.
    pub fn get(self) -> f64 {
        self.0
    }
}

/// A weight in grams. Finite and not negative.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Grams(f64);

impl Grams {
    /// `None` if `value` is negative, infinite or NaN.
    pub fn new(value: f64) -> Option<Self> {
        (value.is_finite() && value >= 0.0).then_some(Self(value))
    }
    /// From pounds and ounces (16 ounces to the pound).
    pub fn from_pounds(pounds: f64, ounces: f64) -> Option<Self> {
        Self::new((pounds + ounces / 16.0) * GRAMS_PER_POUND)
    }
    /// The plain number, in grams.
    pub fn get(self) -> f64 {
        self.0
    }
    /// All of it in ounces.
    pub fn ounces(self) -> f64 {
        self.0 / (GRAMS_PER_POUND / 16.0)
    }
    /// Whole pounds and whole ounces, to the nearest ounce: 3400 g is (7, 8).
    pub fn pounds_and_ounces(self) -> (u32, u32) {
        let ounces = self.ounces().round() as u32;
        (ounces / 16, ounces % 16)
    }
}
