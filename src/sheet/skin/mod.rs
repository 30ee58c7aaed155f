//! The guide for drawing on skin. In: a pose, its strokes, what was found. Out: the words of the guide, and the sheets of
//! the tracing pattern.

mod front;
mod grounds;
mod places;
mod tiles;
mod tracing;
mod words;

pub use front::{Length, Named, front};
pub use grounds::{Ground, Grounds};
pub use places::Landmarks;
pub use tracing::{Pattern, pieces, tracing, unrolled};
pub use words::{Page, back, main_stroke};
