//! The baby and the mother in three dimensions. In: `Exam`. Out: `Pose`, and its picture of depths.

pub mod attitude;
pub mod baby;
pub mod cast;
pub mod curves;
pub mod frame;
pub mod head;
pub mod limbs;
pub mod measures;
mod modeller;
pub mod part;
pub mod surface;
mod trunk;
//! The baby and its mother in three dimensions. In: weeks and findings. Out: shapes and places in mother space, cm.

pub mod abdomen;
pub mod mother;
pub mod pelvis;
pub mod womb;
