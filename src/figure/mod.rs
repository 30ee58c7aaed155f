//! A posed baby and its mother become a figure. In: `Pose` and `Cast`. Out: `Scene`, in cm.

pub mod scene;
pub mod smooth;
