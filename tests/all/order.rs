//! The order of the stages: each may use any earlier one, never a later.

use super::shared::{path, rust_files};

const STAGES: [&str; 13] = [
    "units", "report", "words", "fonts", "clinic", "exam", "body", "reckon", "figure", "sheet", "write",
    "chart", "teach",
];

fn files_of_stage(stage: &str) -> Vec<(String, String)> {
    let mut files = rust_files(&path(&format!("src/{stage}.rs")));
    files.extend(rust_files(&path(&format!("src/{stage}"))));
    files
}

#[test]
fn stages_use_only_earlier_stages() {
    for (at, stage) in STAGES.iter().enumerate() {
        let files = files_of_stage(stage);
        assert!(!files.is_empty(), "there is no stage `{stage}`");
        for (file, text) in files {
            for later in STAGES[at + 1..].iter().chain(&["commands", "desk"]) {
                let used = text.match_indices(&format!("crate::{later}")).any(|(found, name)| {
                    !text[found + name.len()..].starts_with(|c: char| c.is_ascii_alphanumeric() || c == '_')
                });
                assert!(!used, "{file} uses `{later}`, a later stage");
            }
            // `use crate::{a, b}` would slip past the test above.
            assert!(!text.contains("crate::{"), "{file}: name each stage in a line of its own");
        }
    }
}

#[test]
fn every_stage_is_in_the_order() {
    let library = std::fs::read_to_string(path("src/lib.rs")).expect("the library");
    for line in library.lines() {
        if let Some(module) = line.strip_prefix("pub mod ").and_then(|rest| rest.strip_suffix(';')) {
            assert!(
                ["commands", "desk"].contains(&module) || STAGES.contains(&module),
                "`{module}` has no place in the order of stages"
            );
        }
    }
}

#[test]
fn every_file_says_what_comes_in_and_what_goes_out() {
    let files = rust_files(&path("src"));
    assert!(files.len() > 200, "{} files", files.len());
    for (file, text) in files {
        let opening: Vec<&str> = text.lines().map_while(|line| line.strip_prefix("//!")).collect();
        let opening = opening.join(" ");
        for (sign, what) in [("In: ", "comes in"), ("Out: ", "goes out")] {
            let said = opening.split_once(sign).map(|(_, said)| said.split_whitespace().count());
            assert!(
                said.is_some_and(|words| words > 0),
                "{file} does not begin by saying what {what} (`//! {sign}...`)"
            );
        }
    }
}

#[test]
fn only_the_program_touches_files_and_prints() {
    let program =
        ["src/main.rs", "src/batch.rs", "src/files.rs", "src/leftovers.rs", "src/request.rs", "src/cli.rs"]
            .map(|name| path(name).display().to_string());
    for (file, text) in rust_files(&path("src")) {
        if program.contains(&file) {
            continue;
        }
        for word in
            ["std::fs", "std::env", "std::process", "std::net", "println!", "eprintln!", "SystemTime", "{:?}"]
        {
            let library = text.split("#[cfg(test)]").next().unwrap_or_default();
            assert!(!library.contains(word), "{file} uses {word}");
        }
    }
}

/// The page asks the one door, and looks at no stage behind it; commands know nothing of the page.
#[test]
fn the_page_asks_the_one_door() {
    for (file, text) in rust_files(&path("src/desk")) {
        for (found, _) in text.match_indices("crate::") {
            let used = &text[found + "crate::".len()..];
            assert!(
                ["commands", "report", "write::TextAs"].iter().any(|own| used.starts_with(own)),
                "{file} uses more than the one door: {}",
                used.lines().next().unwrap_or_default()
            );
        }
    }
    let mut commands = rust_files(&path("src/commands"));
    commands.extend(rust_files(&path("src/commands.rs")));
    for (file, text) in commands {
        assert!(!text.contains("crate::desk"), "{file} uses the page");
    }
}

#[test]
fn unsafe_stands_where_the_page_is_met() {
    for (file, text) in rust_files(&path("src")) {
        let own = file.ends_with("src/desk/wasm.rs") || file.ends_with("src/desk/unpack/lib.rs");
        assert!(own || !text.contains("unsafe"), "{file} has `unsafe` in it");
    }
}
