//! Quantities with their units in the type, the two kinds of side, and the four spaces.
//!
//! In: plain numbers. Out: values that cannot be negative, infinite or NaN, or `None`.

mod length;
mod point;
mod side;
mod weeks;

pub use length::{Centimetres, Grams};
pub use point::{BabyPoint, FigurePoint, MotherPoint, PagePoint, Vec3};
pub use side::{BabySide, MotherSide};
pub use weeks::Gestation;
