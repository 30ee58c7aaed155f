//! Signs of the mother: measured, tested and reported beside what hands find. In: nothing. Out: the types.

use crate::units::Centimetres;

/// A temperature, in tenths of a degree Celsius.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Temperature(u16);

impl Temperature {
    /// From tenths of a degree Celsius.
    pub const fn from_tenths(tenths: u16) -> Self {
        Self(tenths)
    }
    /// Tenths of a degree Celsius.
    pub const fn tenths(self) -> u16 {
        self.0
    }
    /// Degrees Celsius.
    pub fn celsius(self) -> f64 {
        f64::from(self.0) / 10.0
    }
}

/// A blood pressure, mmHg.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BloodPressure {
    /// The upper number.
    pub systolic: u16,
    /// The lower number.
    pub diastolic: u16,
}

/// Protein in the urine by a strip; none is the state "none".
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum UrineProtein {
    /// A trace.
    Trace,
    /// One plus.
    One,
    /// Two plus.
    Two,
    /// Three plus.
    Three,
    /// Four plus.
    Four,
}

/// The D antigen of her blood.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RhesusD {
    /// D-negative.
    Negative,
    /// D-positive.
    Positive,
}

/// Whether group B strep was found in this pregnancy.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GroupBStrep {
    /// Found.
    Found,
    /// Looked for, and not found.
    NotFound,
}

/// Her build as looked at; no body mass index follows from it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Build {
    /// Slight.
    Slight,
    /// Average.
    Average,
    /// Large.
    Large,
}

/// How the examination was for her.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Comfort {
    /// Comfortable.
    Comfortable,
    /// Uncomfortable.
    Uncomfortable,
    /// In pain.
    InPain,
}

/// Her consent to the examination.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Consent {
    /// Given.
    Given,
    /// Declined.
    Declined,
}

/// Her bladder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bladder {
    /// Empty.
    Empty,
    /// Full.
    Full,
}

/// How a scar of the skin looks and feels.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ScarFeel {
    /// Tender to touch.
    Tender,
    /// Keloid.
    Keloid,
    /// Healed.
    Healed,
}

/// A gap between the straight muscles of the abdomen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MuscleGap {
    /// Felt, its width not noted.
    Felt,
    /// This many finger-breadths wide.
    Fingers(u8),
    /// Measured; never turned into finger-breadths.
    Wide(Centimetres),
}

/// Where a hernia was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Hernia {
    /// At the navel.
    Navel,
    /// In the groin.
    Groin,
    /// In a scar.
    Scar,
    /// In the midline.
    Midline,
}
