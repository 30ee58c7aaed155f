//! The baby and the mother in three dimensions. In: `Exam`. Out: `Pose`, and its picture of depths.

pub mod abdomen;
pub mod attitude;
pub mod baby;
pub mod cast;
pub mod curves;
pub mod diameter;
pub mod felt;
pub mod frame;
pub mod head;
pub mod lateral;
pub mod limbs;
pub mod measures;
mod modeller;
pub mod mother;
pub mod part;
pub mod pelvis;
pub mod place;
pub mod plan;
pub mod pose;
pub mod reach;
pub mod surface;
pub mod touch;
mod trunk;
pub mod turning;
pub mod twins;
pub mod unroll;
pub mod womb;
