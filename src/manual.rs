//! The manual in the program. In: a topic, as typed after `help`. Out: the chapter of that name as text for a terminal, else the
//! help of the command of that name; without a topic, the commands and the chapters.

use crate::{cli, mistyped};

/// Name, what it tells, and the chapter as it stands in the source.
const CHAPTERS: [(&str, &str, &str); 11] = [
    (
        "check",
        "is this what was found, and does it hold together? Exit codes",
        include_str!("../docs/check.md"),
    ),
    ("language", "visit files, and everything they may say; the line", include_str!("../docs/language.md")),
    ("draw", "the picture", include_str!("../docs/draw.md")),
    ("family-page", "its forms, languages, the clinic's own file", include_str!("../docs/family-page.md")),
    ("skin-guide", "for drawing on her skin", include_str!("../docs/skin-guide.md")),
    ("chart", "note, handover, slip, FHIR", include_str!("../docs/chart.md")),
    (
        "fundal-height",
        "curves, and what the visits call for together",
        include_str!("../docs/fundal-height.md"),
    ),
    ("teaching", "figures and practice cases", include_str!("../docs/teaching.md")),
    ("desk", "the page for the browser", include_str!("../docs/desk.md")),
    ("rules", "what is reckoned, and on what ground", include_str!("../docs/rules.md")),
    ("layouts", "writing a sheet of your own", include_str!("../layouts/README.md")),
];

/// Commands that a chapter of another name tells of.
const TOLD_IN: [(&str, &str); 5] = [
    ("note", "chart"),
    ("plate", "teaching"),
    ("cases", "teaching"),
    ("words", "language"),
    ("schema", "language"),
];

/// What `help` says of a topic; else a sentence for whoever typed it.
pub fn help(topic: Option<&str>) -> Result<String, String> {
    let mut table = cli::table();
    let Some(topic) = topic else {
        return Ok(format!("{}\n{}", table.render_long_help(), chapters()));
    };
    let command = table.find_subcommand(topic).map(|command| command.get_name().to_owned());
    let name = command.as_deref().unwrap_or(topic);
    let told = TOLD_IN.iter().find(|(command, _)| *command == name).map_or(name, |(_, chapter)| chapter);
    if let Some((_, _, chapter)) = CHAPTERS.iter().find(|(chapter, ..)| *chapter == told) {
        let after =
            command.map(|name| format!("\nIts options: handspan {name} --help\n")).unwrap_or_default();
        return Ok(for_terminal(chapter) + &after);
    }
    table.build();
    match table.find_subcommand_mut(name) {
        Some(command) => Ok(command.render_long_help().to_string()),
        None => {
            let near = mistyped::near_of(topic, &CHAPTERS.map(|(name, ..)| name));
            let near = near.map(|near| format!("; did you mean `{near}`?")).unwrap_or(";".to_owned());
            Err(format!("there is no chapter or command `{topic}`{near} `handspan help` lists them"))
        }
    }
}

/// The chapters by name.
fn chapters() -> String {
    let mut list = "Chapters of the manual (handspan help CHAPTER):\n".to_owned();
    for (name, tells, _) in CHAPTERS {
        list.push_str(&format!("  {name:13}  {tells}\n"));
    }
    list
}

/// Markdown as it reads on a terminal: pictures left out, links as their words, the fences of blocks left out.
fn for_terminal(chapter: &str) -> String {
    let mut text = String::new();
    let mut block = false;
    for line in chapter.lines() {
        if line.starts_with("```") {
            block = !block;
        } else if block {
            text.push_str("    ");
            text.push_str(line);
            text.push('\n');
        } else if !line.starts_with("![") {
            text.push_str(&without_links(line));
            text.push('\n');
        }
    }
    text
}

/// `[words](where)` as its words.
fn without_links(line: &str) -> String {
    let mut out = String::new();
    let mut rest = line;
    while let Some((before, from)) = rest.split_once('[') {
        let link = from.split_once("](").and_then(|(words, after)| Some((words, after.split_once(')')?.1)));
        out.push_str(before);
        match link.filter(|(words, _)| !words.contains(['[', ']'])) {
            Some((words, after)) => {
                out.push_str(words);
                rest = after;
            }
            None => {
                out.push('[');
                rest = from;
            }
        }
    }
    out + rest
}
