//! What nobody would write, fed to the library. In: bytes of the engine; `HANDSPAN_FUZZ` names which target takes them. Out: an
//! end with a message and the input kept, when something breaks; else nothing.
//!
//! Of every input it holds: no panic; less than a second of the processor; an answer that is either a document which other
//! readers open, or a message. `run` gives the corpora and the limit of memory.
#![no_main]

mod holds;
mod targets;

use cpu_time::ThreadTime;
use libfuzzer_sys::fuzz_target;
use std::sync::LazyLock;
use std::time::Duration;

/// The longest that one input may take of the processor.
const LONGEST: Duration = Duration::from_secs(1);

static TARGET: LazyLock<fn(&[u8])> = LazyLock::new(|| {
    let name = std::env::var("HANDSPAN_FUZZ").unwrap_or_default();
    let found = targets::ALL.iter().find(|(known, _)| *known == name);
    let names = || targets::ALL.map(|(known, _)| known).join(" ");
    found.unwrap_or_else(|| panic!("HANDSPAN_FUZZ is to be one of: {}", names())).1
});

fuzz_target!(|bytes: &[u8]| {
    let target = *TARGET;
    let start = ThreadTime::now();
    target(bytes);
    let took = start.elapsed();
    assert!(took < LONGEST, "took {took:?} of the processor");
});
