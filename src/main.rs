//! The program. In: arguments. Out: what the library makes of them, on standard output or in files, and an exit code.

mod ask;
mod batch;
mod cli;
mod files;
mod leftovers;
mod manual;
mod mistyped;
mod request;

use clap::FromArgMatches;
use handspan::commands::{self, Outcome, exit};
use std::io::{ErrorKind, IsTerminal, Write};
use std::process::ExitCode;

fn main() -> ExitCode {
    let typed: Vec<String> =
        std::env::args_os().skip(1).map(|word| word.to_string_lossy().into_owned()).collect();
    let read = cli::table().try_get_matches().and_then(|matches| cli::Cli::from_arg_matches(&matches));
    let arguments = match read {
        Ok(arguments) => arguments,
        Err(fault) => {
            if let Some(sentence) = mistyped::sentence(&fault, &typed) {
                tell(&format!("handspan: {sentence}\n"));
                return ExitCode::from(exit::FAILED);
            }
            // Help and version are errors to clap, with code 0; a reader that went away is none.
            let _ = fault.print();
            return ExitCode::from(u8::try_from(fault.exit_code()).unwrap_or(exit::FAILED));
        }
    };
    tell_new_name();
    ExitCode::from(match request::from(arguments) {
        Ok(request::Work::One(request, target)) => show(&commands::run(&request), target),
        Ok(request::Work::Shown(request)) => open(&commands::run(&request)),
        Ok(request::Work::Many(batch)) => batch::run(&batch),
        Ok(request::Work::Told(text)) => show(&Outcome { text, ..Outcome::default() }, None),
        Err(why) => {
            tell(&format!("handspan: {why}\n"));
            exit::FAILED
        }
    })
}

/// Print and write an outcome; the exit code.
fn show(outcome: &Outcome, target: Option<files::Target>) -> u8 {
    tell(&outcome.notes);
    if let Some(target) = target
        && !outcome.pages.is_empty()
    {
        if let Some(said) = target.clear_leftovers() {
            tell(&said);
        }
        let written = if outcome.names.is_empty() {
            target.put(&outcome.pages)
        } else {
            target.put_named(&outcome.pages, &outcome.names)
        };
        return match written {
            Ok(written) => {
                for (at, name) in written.iter().enumerate() {
                    let made = outcome.each.get(at).copied().unwrap_or(outcome.made);
                    tell(&format!("wrote {name}: {made}\n"));
                }
                outcome.code
            }
            // What was found does not depend on who reads it.
            Err(files::Fault::ReaderLeft) => outcome.code,
            Err(files::Fault::Failed(why)) => {
                tell(&format!("handspan: {why}\n"));
                outcome.code.max(exit::FAILED)
            }
        };
    }
    let mut out = std::io::stdout().lock();
    match out.write_all(outcome.text.as_bytes()).and_then(|()| out.flush()) {
        Ok(()) => outcome.code,
        Err(fault) if fault.kind() == ErrorKind::BrokenPipe => outcome.code,
        Err(fault) => {
            tell(&format!(
                "handspan: standard output: {}; nothing more was written\n",
                files::reason(&fault)
            ));
            outcome.code.max(exit::FAILED)
        }
    }
}

/// Show the page of an outcome in the browser; the exit code.
fn open(outcome: &Outcome) -> u8 {
    tell(&outcome.notes);
    let Some(page) = outcome.pages.first() else { return outcome.code };
    match files::show(page) {
        Ok(path) => {
            tell(&format!("opened {path}: {}\n", outcome.made));
            outcome.code
        }
        Err(why) => {
            tell(&format!("handspan: {why}\n"));
            exit::FAILED
        }
    }
}

/// Names of commands that have changed: the old ones are read for one version.
const OLD_NAMES: [(&str, &str); 2] = [("growth", "fundal-height"), ("handout", "family-page")];

/// Say to a person, not to a script, that a command has a new name.
fn tell_new_name() {
    let typed = std::env::args().nth(1).unwrap_or_default();
    if let Some((old, new)) = OLD_NAMES.iter().find(|(old, _)| *old == typed)
        && std::io::stderr().is_terminal()
    {
        tell(&format!("`{old}` is called `{new}` now; the old name is still read in this version\n"));
    }
}

/// To standard error; nobody can be told when that fails.
fn tell(text: &str) {
    let _ = std::io::stderr().lock().write_all(text.as_bytes());
}
