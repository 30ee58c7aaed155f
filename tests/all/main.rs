//! All integration tests in one program: a module for each subject.

mod fonts;
mod mother;
mod mother_drawn;
mod outside;
mod placing;
mod random;
mod sides;
mod stand_in;
