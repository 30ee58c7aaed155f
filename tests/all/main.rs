//! Every test of the program, one module a subject.

mod fonts;
