//! The page in the browser. In: a question as JSON. Out: what the one door, `commands::run`, makes of it, as bytes.
//!
//! `page/` is the page itself, `build` puts it and the library into one file; `wasm` is the way in for the page.

mod ask;
#[cfg(target_family = "wasm")]
mod wasm;

pub use ask::answer;
