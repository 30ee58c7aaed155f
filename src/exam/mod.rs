//! The exam language. In: the text of an exam file. Out: `Exam`, and every problem in it.

pub mod model;

pub use model::*;
