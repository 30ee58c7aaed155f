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
            let Some((last, before)) = takers.split_last() else {
                return Some(format!(
                    "there is no {typed}; `handspan help` lists the commands, and each has its --help"
                ));
            };
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
            if names.starts_with("<VISIT|--say") {
                return Some(format!(
                    "say what was found: a visit file, such as `handspan {command} visit.toml`, or a line, such as \
                     `handspan {command} --say \"37+0 LOA\"`"
                ));
            }
            if names.contains("<SET>") {
                return Some(
                    "say which figures: `handspan plate --list` lists the sets, and -o names the file"
                        .to_owned(),
                );
            }
            if !names.contains("--output") {
                return None;
            }
            let file = match command {
                "family-page" | "handout" => "page.pdf",
                "skin-guide" => "guide.pdf",
                "fundal-height" | "growth" => "curve.pdf",
                "cases" => {
                    return Some(
                        "say which directory to write, such as `handspan cases -o cases/`".to_owned(),
                    );
                }
                "plate" => {
                    return Some(
                        "say which file to write, such as `handspan plate occiput -o plate.pdf`".to_owned(),
                    );
                }
                _ => "picture.png",
            };
            if let Some(line) = line_without_say(typed) {
                return Some(format!(
                    "findings that are typed stand after --say, between quotes, and it needs a file to write: \
                     `handspan {command} --say \"{line}\" -o {file}`"
                ));
            }
            Some(format!(
                "say which file to write, such as `handspan {command} VISIT -o {file}`; a name after `>` is the \
                 shell's, which has made that file and left it empty"
            ))
        }
        ErrorKind::InvalidValue => {
            let (option, value) = (said(ContextKind::InvalidArg)?, said(ContextKind::InvalidValue)?);
            let Some(ContextValue::Strings(takes)) = fault.get(ContextKind::ValidValue) else { return None };
            let option = option.split_once(' ').map_or(option, |(name, _)| name);
            let (last, before) = takes.split_last()?;
            let takes =
                if before.is_empty() { last.clone() } else { format!("{} or {last}", before.join(", ")) };
            if value.is_empty() {
                return Some(format!("{option} needs a word after it: {takes}"));
            }
            Some(format!("`{value}` is no word for {option}; it takes {takes}"))
        }
        _ => None,
    }
}

/// Findings that were typed without `--say`: words none of which is the name of a file, after the command.
fn line_without_say(typed: &[String]) -> Option<String> {
    let words: Vec<&str> = typed.iter().skip(1).map(String::as_str).collect();
    let plain = |word: &&str| !word.starts_with('-') && !word.contains(['.', '/', '\\', '*']);
    (!words.is_empty() && words.iter().all(plain)).then(|| words.join(" "))
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
