//! All integration tests in one program: a module for each subject.

mod bad;
mod batch;
mod bytes;
mod cast;
mod check;
mod dates;
mod documents;
mod examples;
mod family_page;
mod fonts;
mod gauge;
mod labels;
mod limbs;
mod measured;
mod mother;
mod mother_drawn;
mod order;
#[path = "../outside/mod.rs"]
mod outside;
mod pages;
mod palettes;
mod placing;
mod plate;
mod program;
mod read;
mod shared;
mod sheet;
mod sides;
mod sketch;
mod stand_in;
mod touch;
mod words;
mod worked;
mod write_pdf;
mod write_png;
mod write_svg;
