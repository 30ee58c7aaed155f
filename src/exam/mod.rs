//! The exam language. In: the text of a visit file. Out: `Exam`, and every problem in it.
//!
//! `shorthand` reads and writes the same exam as one line. `words` is the one word table, `keys` the one list of keys; `read` uses both, `say` prints from them,
//! and `spoken` says the same in a language.

pub mod alarm;
pub mod aside;
pub mod conclude;
pub mod dates;
pub mod edit;
mod foreign;
pub mod keys;
pub mod model;
mod piece;
mod place;
pub mod position;
mod quantity;
mod read;
pub mod say;
pub mod schema;
pub mod shorthand;
mod signs;
pub mod spoken;
pub mod suggest;
mod syntax;
pub mod tidy;
pub mod words;

pub use conclude::{Unsure, conclude};
pub use model::*;
pub use read::{MOST_BYTES, Reading, read};
