//! The one body that every baby is drawn from. In: sizes and a posture. Out: its posed skin.
//!
//! `form.bin` is baked by `bake` from an open human form (see NOTICE): a mesh of quads with bones and weights, left half
//! only. Every body is made with its own left and right; nothing here knows of the mother.

mod arm;
pub mod body;
pub mod bone;
mod bridge;
pub mod choose;
pub mod features;
mod hand;
pub mod landmark;
pub mod mesh;
mod plate;
pub mod posture;
pub mod raster;
pub mod reach;
pub mod rest;
pub mod shared;
pub mod sizes;
pub mod skeleton;
pub mod subdivide;
pub mod table;
pub mod turn;
