//! All integration tests in one program: a module for each subject.

mod mother;
mod mother_drawn;
