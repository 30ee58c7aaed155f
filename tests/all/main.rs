//! All integration tests in one program: a module for each subject.

mod fonts;
mod mother;
mod outside;
mod stand_in;
