//! From a midwife's findings to a picture of how the baby lies. In: a request with the texts of exams. Out: documents, messages
//! and an exit code, by way of the stages:
//!
//! ```text
//! exam text --read--> Exam --conclude--> Exam + conclusion
//!    Exam --body--> Pose, cast --figure--> Scene (cm)        Exam --reckon--> remarks
//!    compose(layout, scenes, Exam, words) --> Sheet (mm) --write--> SVG | PNG | PDF
//!    Exam + Reckoning + pictures --chart--> note | handover | FHIR bundle
//! ```
//!
//! Sides are always the mother's left and right. What was not felt stays unknown.
//! A stage uses only stages named before it in this list; a test keeps the order. `commands` stands above them all, and the
//! program and `desk`, the page in the browser, ask it.

pub mod body;
pub mod chart;
pub mod clinic;
pub mod commands;
pub mod desk;
pub mod exam;
pub mod figure;
pub mod fonts;
pub mod reckon;
pub mod report;
pub mod sheet;
pub mod teach;
pub mod units;
pub mod words;
pub mod write;
