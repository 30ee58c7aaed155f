//! Lengths and weights. In: a number with its unit known. Out: a checked value.

/// A length on the body, in centimetres. Finite and not negative.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Centimetres(f64);

impl Centimetres {
    /// `None` if `value` is negative, infinite or NaN.
    pub fn new(value: f64) -> Option<Self> {
        (value.is_finite() && value >= 0.0).then_some(Self(value))
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
    /// The plain number, in grams.
    pub fn get(self) -> f64 {
        self.0
    }
}
