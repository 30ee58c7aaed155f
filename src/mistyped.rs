//! A command line that cannot be read. In: what the parser found wrong, and the words as they were typed. Out: a sentence for whoever typed it; nothing where the
//! parser's own says as much.

use crate::cli::Cli;
use clap::CommandFactory;
use clap::error::{ContextKind, ContextValue, ErrorKind};

/// Slips of the finger in the name of a command.
const MOST_SLIPS: usize = 2;

/// The sentence.
pub fn sentence(fault: &clap::Error, typed: &[String]) -> Option<String> {
    if !matches!(fault.kind(), ErrorKind::DisplayHelp | ErrorKind::DisplayVersion)
        && let Some(dashed) = typed.iter().find(|word| {
            word.strip_prefix(['\u{2014}', '\u{2013}'])
                .is_some_and(|rest| rest.starts_with(char::is_alphabetic))
        })
    {
        let name = dashed.trim_start_matches(['\u{2014}', '\u{2013}']);
        let hyphens = if name.chars().count() == 1 { "-" } else { "--" };
        return Some(format!(
            "`{dashed}` begins with a long dash, as a word processor or a telephone makes it; type {hyphens}{name}"
        ));
    }
    let said = |kind| match fault.get(kind) {
        Some(ContextValue::String(text)) => Some(text.as_str()),
        _ => None,
    };
    match fault.kind() {
        ErrorKind::InvalidSubcommand => {
            let typed = said(ContextKind::InvalidSubcommand)?;
            let near = near(typed).map(|near| format!("; did you mean `{near}`?")).unwrap_or(";".to_owned());
            Some(format!("there is no command `{typed}`{near} `handspan help` lists them"))
        }
        ErrorKind::UnknownArgument => {
            let typed = said(ContextKind::InvalidArg)?;
            let takers = takers(typed.strip_prefix("--")?);
            let (last, before) = takers.split_last()?;
            let who = match before {
                [] => format!("{last} takes"),
                before => format!("{} and {last} take", before.join(", ")),
            };
            Some(format!("{typed} does not go with this command; {who} it"))
        }
        ErrorKind::MissingRequiredArgument => {
            let missing = fault.get(ContextKind::InvalidArg)?;
            let names = match missing {
                ContextValue::Strings(names) => names.join(" "),
                ContextValue::String(name) => name.clone(),
                _ => return None,
            };
            let command = typed.iter().find(|word| !word.starts_with('-')).map_or("draw", String::as_str);
            (names == "--output <FILE>").then(|| {
                format!(
                    "say which file to write, such as `handspan {command} EXAM -o picture.png`; a name after `>` is the \
                     shell's, which has made that file and left it empty"
                )
            })
        }
        _ => None,
    }
}

/// The command that is nearest, or that begins so.
fn near(typed: &str) -> Option<String> {
    near_of(typed, &[])
}

/// The same among the commands and these names.
pub fn near_of(typed: &str, more: &[&str]) -> Option<String> {
    let commands = Cli::command();
    let names = commands.get_subcommands().map(clap::Command::get_name).map(str::to_owned);
    let slips = |name: &str| {
        if typed.len() > 1 && name.starts_with(typed) { 1 } else { strsim::damerau_levenshtein(typed, name) }
    };
    names
        .chain(more.iter().map(|name| (*name).to_owned()))
        .map(|name| (slips(&name), name))
        .filter(|(n, _)| *n <= MOST_SLIPS)
        .min()
        .map(|(_, name)| name)
}

/// The commands that take an option.
fn takers(option: &str) -> Vec<String> {
    let takes = |command: &&clap::Command| command.get_arguments().any(|a| a.get_long() == Some(option));
    Cli::command()
        .get_subcommands()
        .filter(takes)
        .map(|command| format!("`{}`", command.get_name()))
        .collect()
}
