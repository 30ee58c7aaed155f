//! From the command line to a request. In: parsed arguments. Out: a request with the texts of its files, and where its
//! document goes.

use crate::cli;
use crate::files::{Target, load};
use handspan::commands::{Command, Draw, Format, Handout, Labels, Palette, Paper, Request, Style, View};
use handspan::report::Look;
use handspan::write::TextAs;
use std::io::IsTerminal;
use std::path::Path;

/// The request, and the target of commands that write a document.
pub fn from(arguments: cli::Cli) -> Result<(Request, Option<Target>), String> {
    let (command, target) = match arguments.command {
        cli::Command::Words => (Command::Words, None),
        cli::Command::Check(check) => {
            only_once(check.exams.iter().chain(&check.clinic).map(AsRef::as_ref))?;
            let exams = check.exams.iter().map(|path| load(path)).collect();
            let clinic = check.clinic.as_deref().map(load);
            (Command::Check { exams, json: check.json, clinic }, None)
        }
        cli::Command::Draw(draw) => {
            let format = format(&draw.target)?;
            if draw.width.is_some() && format != Format::Png {
                return Err(
                    "--width counts pixels and goes with a .png; leave it out, or end the file in .png"
                        .to_owned(),
                );
            }
            goes_together(&draw)?;
            let target = Target::look(&draw.target.output, draw.target.force)?;
            let draw = Draw {
                exam: load(&draw.exam),
                format,
                style: style(draw.style),
                palette: draw.palette.map_or(Palette::Neutral, palette),
                view: view(draw.view),
                labels: labels(draw.labels),
                lang: draw.lang,
                width: draw.width,
                text_as: text_as(draw.text),
            };
            (Command::Draw(draw), Some(target))
        }
        cli::Command::Handout(page) => {
            only_once(
                [Some(&page.exam), page.clinic.as_ref(), page.layout.as_ref()]
                    .into_iter()
                    .flatten()
                    .map(AsRef::as_ref),
            )?;
            let format = format(&page.target)?;
            let target = Target::look(&page.target.output, page.target.force)?;
            let page = Handout {
                exam: load(&page.exam),
                format,
                lang: page.lang,
                paper: page.paper.map(paper),
                clinic: page.clinic.as_deref().map(load),
                layout: page.layout.as_deref().map(load),
                despite: page.despite,
            };
            (Command::Handout(page), Some(target))
        }
    };
    let look = look(target.is_some());
    Ok((Request { command, look }, target))
}

/// Standard input can be read once.
fn only_once<'a>(paths: impl Iterator<Item = &'a Path>) -> Result<(), String> {
    if paths.filter(|path| path.as_os_str() == "-").count() > 1 {
        return Err("standard input (`-`) can stand for one file only".to_owned());
    }
    Ok(())
}

/// Colour only on a terminal, and not when NO_COLOR is set; commands that write a document speak on standard error.
fn look(on_stderr: bool) -> Look {
    let terminal = if on_stderr { std::io::stderr().is_terminal() } else { std::io::stdout().is_terminal() };
    let unwanted = std::env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty());
    let dumb = std::env::var_os("TERM").is_some_and(|value| value == "dumb");
    if terminal && !unwanted && !dumb { Look::Coloured } else { Look::Plain }
}

fn format(target: &cli::Target) -> Result<Format, String> {
    let path = &target.output;
    if path.is_dir() {
        return Err(format!("{} is a directory; name a file in it", path.display()));
    }
    let ending = path.extension().and_then(|ending| ending.to_str());
    let by_ending = ending.and_then(Format::from_ending);
    let by_kind = target.kind.map(|kind| match kind {
        cli::Kind::Svg => Format::Svg,
        cli::Kind::Png => Format::Png,
        cli::Kind::Pdf => Format::Pdf,
    });
    match (by_kind, by_ending, ending) {
        (Some(kind), Some(named), _) if kind != named => Err(format!(
            "{}: its ending and --as name two kinds of file; leave --as out, or change the ending",
            path.display()
        )),
        (Some(kind), _, _) | (None, Some(kind), _) => Ok(kind),
        (None, None, _) if path.as_os_str() == "-" => {
            Err("standard output has no ending: say --as svg, --as png or --as pdf".to_owned())
        }
        (None, None, Some(ending)) => Err(format!(
            "{}: .{ending} is not made here; end it in .svg, .png or .pdf, or say --as svg, png or pdf",
            path.display()
        )),
        (None, None, None) => Err(format!(
            "{}: its name does not say what to write; end it in .svg, .png or .pdf, or say --as svg, png or pdf",
            path.display()
        )),
    }
}

/// Refuses choices that could not show.
fn goes_together(draw: &cli::Draw) -> Result<(), String> {
    let plain = matches!(draw.style, cli::Style::Line | cli::Style::Sketch);
    if plain && draw.palette.is_some() {
        return Err("--palette colours the style soft; leave it out, or leave --style out".to_owned());
    }
    if matches!(draw.style, cli::Style::Sketch)
        && matches!(draw.labels, cli::Labels::All | cli::Labels::Numbered)
    {
        return Err(
            "a sketch is too small for pointers and numbers: give it --labels few or none, or another --style"
                .to_owned(),
        );
    }
    Ok(())
}

fn palette(palette: cli::Palette) -> Palette {
    match palette {
        cli::Palette::Neutral => Palette::Neutral,
        cli::Palette::Skin1 => Palette::Skin(1),
        cli::Palette::Skin2 => Palette::Skin(2),
        cli::Palette::Skin3 => Palette::Skin(3),
        cli::Palette::Skin4 => Palette::Skin(4),
        cli::Palette::Skin5 => Palette::Skin(5),
        cli::Palette::Skin6 => Palette::Skin(6),
    }
}

fn style(style: cli::Style) -> Style {
    match style {
        cli::Style::Soft => Style::Soft,
        cli::Style::Line => Style::Line,
        cli::Style::Sketch => Style::Sketch,
    }
}

fn view(view: cli::View) -> View {
    match view {
        cli::View::Facing => View::Facing,
        cli::View::Hers => View::Hers,
    }
}

fn labels(labels: cli::Labels) -> Labels {
    match labels {
        cli::Labels::None => Labels::None,
        cli::Labels::Few => Labels::Few,
        cli::Labels::All => Labels::All,
        cli::Labels::Numbered => Labels::Numbered,
    }
}

fn text_as(text: cli::TextAs) -> TextAs {
    match text {
        cli::TextAs::Text => TextAs::Text,
        cli::TextAs::Outlines => TextAs::Outlines,
    }
}

fn paper(paper: cli::Paper) -> Paper {
    match paper {
        cli::Paper::A4 => Paper::A4,
        cli::Paper::Letter => Paper::Letter,
    }
}
