//! Every test of the program, one module a subject.

mod family_page;
mod fonts;
mod outside;
mod pages;
mod sheet;
mod stand_in;
mod write_pdf;
mod write_png;
mod write_svg;
