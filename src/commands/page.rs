//! `desk`. In: nothing. Out: the page for the browser, when this program was built with it; else the one command that makes it;
//! and the letters it is set in.

use super::{Outcome, exit};
use crate::fonts::Face;

/// The page, as `src/desk/build` left it.
#[cfg(feature = "desk")]
const PAGE: Option<&[u8]> =
    Some(include_bytes!(concat!(env!("CARGO_MANIFEST_DIR"), "/target/desk/handspan.html")));
#[cfg(not(feature = "desk"))]
const PAGE: Option<&[u8]> = None;

/// What is said when the page is not in this program.
const WITHOUT: &str = "this program was built without the page. In the source directory, `src/desk/build` makes it as \
target/desk/handspan.html, one file for any browser; to have it in the program, build that with `--features desk` afterwards";

/// The page.
pub fn run() -> Outcome {
    match PAGE {
        Some(page) => {
            Outcome { pages: vec![page.to_vec()], made: "the page for the browser", ..Outcome::default() }
        }
        None => Outcome {
            notes: format!("handspan: {WITHOUT}\n"),
            why: WITHOUT.to_owned(),
            code: exit::FAILED,
            ..Outcome::default()
        },
    }
}

/// Two font files: upright, and strong.
pub fn letters() -> Outcome {
    let pages = [Face::Regular, Face::SemiBold].map(|face| face.bytes().to_vec()).to_vec();
    Outcome { pages, made: "the letters", ..Outcome::default() }
}
