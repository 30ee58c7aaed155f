//! A posed baby and its mother become a figure. In: `Pose` and `Cast`. Out: `Scene`, in cm.

pub mod baby;
mod fit;
mod grid;
mod lines;
pub mod mother;
mod mother_body;
mod mother_bones;
mod mother_ink;
mod mother_palette;
pub mod palette;
mod ribbon;
pub mod scene;
pub mod smooth;
mod tone;
