//! Every test of the program, one module a subject.

mod fonts;
mod outside;
mod stand_in;
