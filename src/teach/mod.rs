//! Practice cases. In: a seed, a number and a level. Out: an invented visit as an exam, what a student is shown of it, questions and
//! their answers.
//!
//! `truth` poses a baby and feels it, `lesson` makes a visit of what was felt, `case` holds both; `ask` and `answer` say them in words.

mod answer;
mod ask;
mod case;
mod dice;
mod lesson;
pub mod qti;
mod truth;
mod visit;

pub use answer::key_content;
pub use ask::case_content;
pub use case::Case;
pub use lesson::{Lesson, Level};
