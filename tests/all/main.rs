//! All integration tests in one program; a module a subject.

mod bad;
mod check;
mod dates;
mod examples;
mod order;
mod program;
mod read;
mod shared;
mod words;
mod worked;
