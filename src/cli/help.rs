//! What `--help` says beside the table itself. In: the table of commands. Out: the same, with its commands in groups as people
//! look for them, each command ending with two examples.

use clap::Command;
use std::fmt::Write;

/// The commands, as people look for them.
pub const GROUPS: [(&str, &[&str]); 4] = [
    ("Look", &["check", "draw"]),
    ("Give", &["family-page", "skin-guide", "note", "fundal-height", "desk"]),
    ("Teach", &["plate", "cases"]),
    ("Reference", &["help", "words", "rules", "layouts", "languages", "schema", "tidy"]),
];

/// Two examples of each command, as they are typed beside the folder of examples.
pub const EXAMPLES: [(&str, [&str; 2]); 16] = [
    (
        "check",
        ["handspan check --say \"37+0 LOA 2/5 palp SFH 34\"", "handspan check examples/head-down-left.toml"],
    ),
    (
        "draw",
        [
            "handspan draw --say \"38+0 ROP 3/5 palp\" -o picture.svg",
            "handspan draw examples/twins.toml -o twins.pdf --style line --labels all",
        ],
    ),
    (
        "family-page",
        [
            "handspan family-page examples/head-down-left.toml --clinic examples/clinic.toml -o page.pdf",
            "handspan family-page examples/crosswise.toml --clinic examples/clinic.toml -o page.html",
        ],
    ),
    (
        "skin-guide",
        [
            "handspan skin-guide examples/head-down-left.toml -o guide.pdf",
            "handspan skin-guide --say \"38+0 LOA 3/5 palp\" --paper a3 -o tracing.pdf",
        ],
    ),
    (
        "note",
        [
            "handspan note examples/head-down-left.toml",
            "handspan note examples/head-down-left.toml --share -o entry.json",
        ],
    ),
    (
        "fundal-height",
        [
            "handspan fundal-height --say \"30+0 SFH 29\" --say \"34+0 SFH 33\" -o curve.pdf",
            "handspan fundal-height examples/growth/*.toml -o visits.svg",
        ],
    ),
    (
        "plate",
        [
            "handspan plate --say \"38+0 ROP\" --paper slide -o rop.pdf",
            "handspan plate occiput --labels few -o occiput.pdf",
        ],
    ),
    ("desk", ["handspan desk", "handspan desk -o desk.html"]),
    (
        "cases",
        [
            "handspan cases --count 20 --level medium --set-number 12 -o class/",
            "handspan cases --count 1 --set-number 7 -o one-for-all/",
        ],
    ),
    ("layouts", ["handspan layouts", "handspan layouts family-page"]),
    ("languages", ["handspan languages", "handspan languages review es -o es.pdf"]),
    ("words", ["handspan words", "handspan words --abbreviations"]),
    (
        "tidy",
        ["handspan tidy examples/head-down-left.toml", "handspan tidy examples/twins.toml -o tidy.toml"],
    ),
    ("schema", ["handspan schema", "handspan help language"]),
    ("rules", ["handspan rules", "handspan rules --json"]),
    ("help", ["handspan help language", "handspan help family-page"]),
];

/// Columns of the list of commands.
const WIDTH: usize = 96;

/// The table, with groups and examples.
pub fn with_groups_and_examples(mut table: Command) -> Command {
    let list = groups(&table);
    for (name, [one, two]) in EXAMPLES {
        table = table.mut_subcommand(name, |command| {
            // Beside what the command says of itself at its end.
            let said = command.get_after_help().map(|said| format!("{said}\n\n")).unwrap_or_default();
            command.after_help(format!("{said}Examples:\n  {one}\n  {two}"))
        });
    }
    table.help_template(format!(
        "{{about-with-newline}}\n{{usage-heading}} {{usage}}\n\n{list}Options:\n{{options}}{{after-help}}"
    ))
}

/// The commands by group, each with what it does.
fn groups(table: &Command) -> String {
    let longest = GROUPS.iter().flat_map(|(_, names)| *names).map(|name| name.len()).max().unwrap_or(0);
    let mut list = String::new();
    for (group, names) in GROUPS {
        let _ = writeln!(list, "{group}:");
        for name in names {
            let about = table.find_subcommand(name).and_then(Command::get_about);
            let about = about.map(ToString::to_string).unwrap_or_default();
            let mut line = format!("  {name:longest$} ");
            let indent = line.chars().count();
            for word in about.split(' ') {
                if line.chars().count() + 1 + word.chars().count() > WIDTH {
                    let _ = writeln!(list, "{line}");
                    line = " ".repeat(indent);
                }
                line.push(' ');
                line.push_str(word);
            }
            let _ = writeln!(list, "{line}");
        }
        list.push('\n');
    }
    list
}
