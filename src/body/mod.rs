//! The baby and its mother in three dimensions. In: weeks and findings. Out: shapes and places in mother space, cm.

pub mod abdomen;
pub mod mother;
pub mod pelvis;
pub mod womb;
