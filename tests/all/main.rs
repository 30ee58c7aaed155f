//! All integration tests in one program: a module for each subject.

mod family_page;
mod fonts;
mod mother;
mod mother_drawn;
mod outside;
mod pages;
mod placing;
mod random;
mod sheet;
mod sides;
mod stand_in;
mod write_pdf;
mod write_png;
mod write_svg;
