//! Man pages and completions. In: a directory; the table of commands, `src/cli.rs`. Out: `man/` with a page for the program and
//! one for each command, and `completions/` for bash, zsh and fish.

// The table is read as it is: what only the program looks at is not used here.
#[allow(dead_code)]
#[path = "../src/cli.rs"]
mod cli;

use clap::Command;
use clap_complete::Shell;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

fn main() -> io::Result<()> {
    let Some(out) = std::env::args_os().nth(1).map(PathBuf::from) else {
        return Err(io::Error::other("say where the pages go: handspan-packaging DIRECTORY"));
    };
    // The version is the program's; this crate has none.
    let mut command = cli::table().version(program_version()?);
    command.build();
    let (man, completions) = (out.join("man"), out.join("completions"));
    fs::create_dir_all(&man)?;
    fs::create_dir_all(&completions)?;
    page(&command, &man, "handspan")?;
    for each in command.get_subcommands() {
        page(each, &man, &format!("handspan-{}", each.get_name()))?;
    }
    for shell in [Shell::Bash, Shell::Zsh, Shell::Fish] {
        clap_complete::generate_to(shell, &mut cli::table(), "handspan", &completions)?;
    }
    Ok(())
}

fn page(command: &Command, directory: &Path, name: &str) -> io::Result<()> {
    let mut text = vec![];
    clap_mangen::Man::new(command.clone().name(name.to_owned())).title(name.to_uppercase()).render(&mut text)?;
    fs::write(directory.join(format!("{name}.1")), text)
}

/// The version in the program's own manifest.
fn program_version() -> io::Result<String> {
    let manifest = include_str!("../Cargo.toml");
    let line = manifest.lines().find_map(|line| line.strip_prefix("version = \""));
    let version = line.and_then(|rest| rest.strip_suffix('"'));
    version.map(str::to_owned).ok_or_else(|| io::Error::other("Cargo.toml has no version"))
}
