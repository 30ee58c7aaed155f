//! A posed baby and its mother become a figure. In: `Pose` and `Cast`. Out: `Scene`, in cm.

pub mod baby;
mod fit;
mod grid;
mod lines;
pub mod palette;
mod ribbon;
pub mod scene;
mod tone;
