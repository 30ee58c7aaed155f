//! Entries for the chart. In: an exam, its reckoning and the words. Out: a note, a handover, the words of a slip, a FHIR
//! bundle.
//!
//! What is only in the file of an exam stays out of what is shared: [`share::scrubbed`] makes the exam that a shared entry is
//! made from.

pub mod boxes;
pub mod codes;
pub mod entry;
pub mod fhir;
mod findings;
pub mod handover;
pub mod note;
pub mod paragraph;
pub mod private;
pub mod read_back;
pub mod said;
pub mod share;
pub mod slip;

pub use entry::Entry;
