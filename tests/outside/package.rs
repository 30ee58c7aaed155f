//! Packages of practice cases, judged by a library that converts between versions of the open standard.

use crate::shared::{path, run_in, said};
use std::path::Path;
use std::process::Command;

/// Every item is read and raised to version 3, no file is missing, and each right choice is among the choices.
#[test]
fn qti_convert_reads_every_item_of_a_package() {
    let here = tempfile::tempdir().expect("a directory");
    for level in ["easy", "fair", "hard"] {
        let arguments = ["cases", "--count", "8", "--seed", "4", "--level", level, "--package", "-o", level];
        let made = run_in(here.path(), &arguments, b"");
        assert!(made.status.success(), "{}", said(&made));
        let python = Path::new(env!("CARGO_TARGET_TMPDIR")).with_file_name("outside").join("qti/bin/python");
        let judged = Command::new(python)
            .arg(path("tests/outside/read_package.py"))
            .arg(here.path().join(level).join("cases-qti.zip"))
            .output()
            .expect("python runs; tests/run installs it");
        assert_eq!(said(&judged), "8 items, 16 images, no fault\n", "{level}");
    }
}
