//! From the command line to a request. In: parsed arguments. Out: a request with the texts of its files, and where its
//! document goes.

use crate::ask;
use crate::batch::{Batch, Job};
use crate::cli;
use crate::files::{self, Given, Target, load};
use crate::manual;
use handspan::commands::{
    Cases, Check, Chosen, Command, Draft, Draw, Form, Format, Growth, GuideLook, Hair, Handed, Handout,
    Labels, Length, Level, Model, MotherAs, Note, Palette, Palpation, Paper, Plate, Request, Review, Set,
    Size, SkinGuide, Source, Space, Style, View, Way, What,
};
use handspan::report::Look;
use handspan::write::TextAs;
use std::io::IsTerminal;
use std::path::{Path, PathBuf};

/// What the program is to do.
pub enum Work {
    /// One request; the target of commands that write a document.
    One(Box<Request>, Option<Target>),
    /// A request whose page is shown in the browser.
    Shown(Box<Request>),
    /// Nothing but what the program says of itself.
    Told(String),
    /// A request for each of many exams.
    Many(Batch),
}

/// What the arguments ask for.
pub fn from(arguments: cli::Cli) -> Result<Work, String> {
    let said = |command| Ok(Work::One(Box::new(Request { command, look: look(false) }), None));
    match arguments.command {
        cli::Command::Tidy(tidy) => {
            let output = tidy.output.filter(|path| path.as_os_str() != "-");
            let file = output.map(|path| Target::look(&path, tidy.force)).transpose()?;
            let command = Command::Tidy { exam: load(&tidy.exam) };
            Ok(Work::One(Box::new(Request { command, look: look(true) }), file))
        }
        cli::Command::Desk(desk) => {
            let request = Box::new(Request { command: Command::Page, look: look(true) });
            match desk.output {
                None => Ok(Work::Shown(request)),
                Some(path) => Ok(Work::One(request, Some(Target::look(&path, desk.force)?))),
            }
        }
        cli::Command::Help(help) => Ok(Work::Told(manual::help(help.topic.as_deref())?)),
        cli::Command::Schema => said(Command::Schema),
        cli::Command::Words(list) if list.abbreviations => said(Command::Abbreviations),
        cli::Command::Words(_) => said(Command::Words),
        cli::Command::Rules(rules) => said(Command::Rules { json: rules.json }),
        cli::Command::Check(check) => {
            only_once(check.given.exams.iter().chain(&check.clinic).map(AsRef::as_ref))?;
            let several = check.given.say.len() > 1;
            let say = if check.ask { ask::in_terminal(&check.given.say) } else { check.given.say };
            let exams = given(&check.given.exams, &say)?.iter().map(|exam| exam.load(several)).collect();
            let clinic = check.clinic.as_deref().map(load);
            let (json, quiet) = (check.json, check.quiet_remark);
            let (weights, weight_curves) = (check.weights, check.weight_curves);
            let (lang, draft) = (check.tongue.lang, Draft::asked(check.tongue.draft));
            said(Command::Check(Check { exams, json, clinic, quiet, weights, weight_curves, lang, draft }))
        }
        cli::Command::Draw(draw) => {
            goes_together(&draw)?;
            let exams = given(&draw.given.exams, &draw.given.say)?;
            if exams.len() > 1 && !files::is_directory(&draw.target.output) {
                return Err(one_file(exams.len(), &draw.target));
            }
            if let Some(space) = space_of(&draw.target) {
                return model(&draw, space, &exams);
            }
            let format = format(&draw.target, Format::Svg)?;
            width_fits(draw.width, format)?;
            let (target, at_once) = (draw.target, draw.at_once);
            let make = move |exam| {
                Command::Draw(Draw {
                    exam,
                    format,
                    style: style(draw.style),
                    palette: draw.palette.map_or(Palette::Neutral, palette),
                    mother: mother_drawn(draw.mother, draw.hair),
                    hands: draw.hands.map(palpation),
                    view: view(draw.view),
                    labels: labels(draw.labels),
                    lang: draw.tongue.lang.clone(),
                    draft: Draft::asked(draw.tongue.draft),
                    width: draw.width,
                    text_as: text_as(draw.text),
                })
            };
            documents(&exams, &target, format, at_once, Box::new(make))
        }
        cli::Command::Handout(page) => {
            only_once(page.given.exams.iter().chain(&page.clinic).chain(&page.layout).map(AsRef::as_ref))?;
            let named = match (page.large_print, page.sides) {
                (true, _) => Some("large-print"),
                (false, Some(1)) => Some("one-side"),
                (false, _) => None,
            };
            let named = named.map(|name| Chosen::Named(name.to_owned()));
            let format = format_with_words(&page.target, Format::Pdf)?;
            let (exams, target, at_once) =
                (given(&page.given.exams, &page.given.say)?, page.target, page.at_once);
            let (clinic, layout) =
                (page.clinic.as_deref().map(load), page.layout.as_deref().map(chosen).or(named));
            let make = move |exam| {
                Command::Handout(Handout {
                    exam,
                    format,
                    lang: page.tongue.lang.clone(),
                    draft: Draft::asked(page.tongue.draft),
                    paper: page.paper.map(paper),
                    palette: page.palette.map(palette),
                    mother: page.mother.map(mother),
                    clinic: clinic.clone(),
                    layout: layout.clone(),
                    despite: page.despite.clone(),
                    emergency: page.emergency.clone(),
                    invite_listening: page.invite_listening,
                    numbers: page.numbers,
                })
            };
            documents(&exams, &target, format, at_once, Box::new(make))
        }
        cli::Command::SkinGuide(guide) => {
            only_once(guide.given.exams.iter().chain(&guide.clinic).map(AsRef::as_ref))?;
            let format = format(&guide.target, Format::Pdf)?;
            let (exams, target, at_once) =
                (given(&guide.given.exams, &guide.given.say)?, guide.target, guide.at_once);
            let clinic = guide.clinic.as_deref().map(load);
            let make = move |exam| {
                Command::SkinGuide(SkinGuide {
                    exam,
                    format,
                    lang: guide.tongue.lang.clone(),
                    draft: Draft::asked(guide.tongue.draft),
                    look: GuideLook {
                        paper: paper(guide.paper),
                        length: match guide.minutes {
                            cli::Minutes::One => Length::Minute,
                            cli::Minutes::Ten => Length::Whole,
                        },
                        palette: guide.palette.map_or(Palette::Neutral, palette),
                        handed: if guide.left_handed { Handed::Left } else { Handed::Right },
                    },
                    clinic: clinic.clone(),
                    despite: guide.despite.clone(),
                })
            };
            documents(&exams, &target, format, at_once, Box::new(make))
        }
        cli::Command::Note(asked) => note(asked),
        cli::Command::Cases(asked) => cases(asked),
        cli::Command::Growth(asked) => growth(asked),
        cli::Command::Layouts(layouts) => said(Command::Layouts { name: layouts.name }),
        cli::Command::Languages(cli::Languages { review: None, clinic }) => {
            said(Command::Languages { clinic: clinic.as_deref().map(load) })
        }
        cli::Command::Languages(cli::Languages {
            review: Some(cli::LanguageWork::Review(asked)), ..
        }) => {
            let format = format(&asked.target, Format::Pdf)?;
            if files::is_directory(&asked.target.output) {
                return Err(format!("{} is a directory; name a file in it", asked.target.output.display()));
            }
            let file = Target::look(&asked.target.output, asked.target.force)?;
            let clinic = asked.clinic.as_deref().map(load);
            let review = Review { lang: asked.lang, format, paper: asked.paper.map(paper), clinic };
            Ok(Work::One(
                Box::new(Request { command: Command::Review(review), look: look(true) }),
                Some(file),
            ))
        }
        cli::Command::Plate(asked) if asked.list => said(Command::PlateList),
        cli::Command::Plate(asked) => plate(asked),
    }
}

/// The kind of file of a body in space, when the name of the file says so.
fn space_of(target: &cli::Target) -> Option<Space> {
    Space::from_ending(target.output.extension()?.to_str()?)
}

/// A body in space: one exam, one file, and nothing of what a picture is told.
fn model(draw: &cli::Draw, space: Space, exams: &[Given]) -> Result<Work, String> {
    if draw.target.kind.is_some() || draw.width.is_some() || draw.palette.is_some() {
        return Err("a body in space has no --as, no --width and no --palette; leave them out".to_owned());
    }
    let [exam] = exams else { return Err(one_file(exams.len(), &draw.target)) };
    let file = Target::look(&draw.target.output, draw.target.force)?;
    let command = Command::Model(Model { exam: exam.load(false), space });
    Ok(Work::One(Box::new(Request { command, look: look(true) }), Some(file)))
}

fn note(asked: cli::Note) -> Result<Work, String> {
    only_once(asked.given.exams.iter().chain(&asked.clinic).map(AsRef::as_ref))?;
    let given = given(&asked.given.exams, &asked.given.say)?;
    let [exam] = &given[..] else {
        return Err(format!("an entry is of one visit, and there are {}; make one for each", given.len()));
    };
    let output = asked.output.filter(|path| path.as_os_str() != "-");
    if let Some(path) = output.as_deref().filter(|path| files::is_directory(path)) {
        return Err(format!("{} is a directory; name a file in it", path.display()));
    }
    let ending = output.as_deref().and_then(|path| path.extension()?.to_str()).map(str::to_ascii_lowercase);
    let slip = ending.as_deref().and_then(Format::from_ending);
    let slip = slip.filter(|format| *format != Format::Html).map(Form::Slip);
    let form = match (asked.form, slip, ending.as_deref()) {
        (Some(_), Some(_), ending) => {
            return Err(format!(
                "a file ending in .{} is a slip to stick in; leave --as out, or end it in .txt or .json",
                ending.unwrap_or_default()
            ));
        }
        (None, Some(slip), _) => slip,
        (Some(cli::NoteForm::Handover), _, _) => Form::Handover,
        (Some(cli::NoteForm::Fhir), _, _) | (None, None, Some("json")) => Form::Fhir,
        (Some(cli::NoteForm::Text), _, _) | (None, None, None | Some("txt")) => Form::Text,
        (None, None, Some(ending)) => {
            return Err(format!(
                ".{ending} is not made here; end the file in .txt, .json, .svg, .png or .pdf, or say --as text, \
                 handover or fhir"
            ));
        }
    };
    if asked.layout.is_some() && !matches!(form, Form::Slip(_)) {
        return Err(
            "a layout is for a slip; end the file in .svg, .png or .pdf, or leave --layout out".to_owned()
        );
    }
    let file = output.as_deref().map(|path| Target::look(path, asked.force)).transpose()?;
    let mut seed = [0; 16];
    if form == Form::Fhir {
        getrandom::fill(&mut seed).map_err(|fault| format!("no random numbers for the ids: {fault}"))?;
    }
    let note = Note {
        exam: exam.load(false),
        form,
        share: asked.share,
        lang: asked.tongue.lang,
        draft: Draft::asked(asked.tongue.draft),
        clinic: asked.clinic.as_deref().map(load),
        quiet: asked.quiet_remark,
        layout: asked.layout.as_deref().map(chosen),
        seed,
        to_file: file.is_some(),
    };
    let look = look(true);
    Ok(Work::One(Box::new(Request { command: Command::Note(note), look }), file))
}

fn growth(asked: cli::Growth) -> Result<Work, String> {
    only_once(asked.given.exams.iter().chain(&asked.clinic).map(AsRef::as_ref))?;
    if files::is_directory(&asked.target.output) {
        return Err(format!("{} is a directory; name a file in it", asked.target.output.display()));
    }
    let format = format(&asked.target, Format::Pdf)?;
    width_fits(asked.width, format)?;
    let visits = given(&asked.given.exams, &asked.given.say)?;
    let file = Target::look(&asked.target.output, asked.target.force)?;
    let several = asked.given.say.len() > 1;
    let growth = Growth {
        visits: visits.iter().map(|visit| visit.load(several)).collect(),
        format,
        paper: paper(asked.paper),
        lang: asked.tongue.lang,
        draft: Draft::asked(asked.tongue.draft),
        clinic: asked.clinic.as_deref().map(load),
        quiet: asked.quiet_remark,
        width: asked.width,
        text_as: text_as(asked.text),
    };
    Ok(Work::One(Box::new(Request { command: Command::Growth(growth), look: look(true) }), Some(file)))
}

fn plate(plate: cli::Plate) -> Result<Work, String> {
    let Some(target) = plate.target else {
        return Err("a plate is a file: say where it goes, such as -o plate.pdf".to_owned());
    };
    only_once(plate.exam.iter().map(AsRef::as_ref))?;
    let plain = matches!(plate.style, cli::Style::Line);
    if plain && (plate.palette.is_some() || matches!(plate.set, Some(cli::Set::Palettes))) {
        return Err("palettes colour the style soft; leave --style out".to_owned());
    }
    if matches!(plate.style, cli::Style::Sketch) {
        return Err(
            "a plate is drawn in soft or line; a sketch is a stamp by itself: handspan draw".to_owned()
        );
    }
    let wall = matches!(plate.set, Some(cli::Set::Wall));
    let paper = match plate.paper.map(size) {
        Some(Size::A3) | None if wall => Size::A3,
        Some(_) if wall => {
            return Err("the wall sheet is a page of A3; leave --paper out".to_owned());
        }
        paper => paper.unwrap_or(Size::A4),
    };
    if wall && files::is_directory(&target.output) {
        return Err("the wall sheet is one page; name a file, such as -o wall.pdf".to_owned());
    }
    let what = match plate.set {
        Some(wanted) => What::Set(set(wanted), Way::between(&plate.from, &plate.to, plate.frames)?),
        None => {
            let files = plate.exam.iter().map(|path| load(path));
            let several = plate.say.len() > 1;
            let lines = plate.say.iter().enumerate();
            let lines = lines.map(|(at, line)| Given::Line(at + 1, line.clone()).load(several));
            What::Exams(files.chain(lines).collect())
        }
    };
    let format = format(&target, Format::Svg)?;
    width_fits(plate.width, format)?;
    let singly = files::is_directory(&target.output);
    let file = if singly {
        Target::directory(&target.output, target.force)?
    } else {
        Target::look(&target.output, target.force)?
    };
    let plate = Plate {
        what,
        format,
        style: style(plate.style),
        palette: plate.palette.map_or(Palette::Neutral, palette),
        labels: plate.labels.map(labels),
        open_cm: plate.cervix,
        size: paper,
        singly,
        lang: plate.tongue.lang,
        draft: Draft::asked(plate.tongue.draft),
        width: plate.width,
        text_as: text_as(plate.text),
    };
    Ok(Work::One(Box::new(Request { command: Command::Plate(plate), look: look(true) }), Some(file)))
}

fn cases(asked: cli::Cases) -> Result<Work, String> {
    let ending = asked.output.extension().and_then(|ending| ending.to_str()).unwrap_or_default();
    if ["pdf", "svg", "png", "zip"].contains(&ending) && !asked.output.is_dir() {
        return Err(format!(
            "these are several files, and {} is the name of one; name a directory, such as -o cases/",
            asked.output.display()
        ));
    }
    if asked.output.as_os_str() == "-" {
        return Err("these are several files; name a directory, such as -o cases/".to_owned());
    }
    let directory = Target::directory(&asked.output, asked.force)?;
    let level = match asked.level {
        cli::Level::Easy => Level::Easy,
        cli::Level::Medium => Level::Fair,
        cli::Level::Hard => Level::Hard,
    };
    let paper = paper(asked.paper);
    let (count, seed, package) = (asked.count, asked.seed, asked.package);
    let cases = Cases { count, seed, level, package, paper, lang: asked.lang };
    Ok(Work::One(Box::new(Request { command: Command::Cases(cases), look: look(true) }), Some(directory)))
}

fn size(size: cli::Size) -> Size {
    match size {
        cli::Size::A3 => Size::A3,
        cli::Size::A4 => Size::A4,
        cli::Size::Letter => Size::Letter,
        cli::Size::Slide => Size::Slide,
    }
}

fn width_fits(width: Option<u32>, format: Format) -> Result<(), String> {
    if width.is_some() && format != Format::Png {
        return Err(
            "--width counts pixels and goes with a .png; leave it out, or end the file in .png".to_owned()
        );
    }
    Ok(())
}

/// A document of one exam, or one of each in a directory.
fn documents(
    exams: &[Given],
    target: &cli::Target,
    format: Format,
    at_once: Option<u16>,
    make: Box<dyn Fn(Source) -> Command + Sync>,
) -> Result<Work, String> {
    let look = look(true);
    if files::is_directory(&target.output) {
        let targets = files::targets(exams, &target.output, format.ending(), target.force)?;
        let jobs = exams.iter().zip(targets).map(|(exam, target)| Job { exam: exam.clone(), target });
        return Ok(Work::Many(Batch {
            lines: exams.iter().filter(|exam| matches!(exam, Given::Line(..))).count(),
            jobs: jobs.collect(),
            make: Box::new(move |exam| Request { command: make(exam), look }),
            directory: target.output.clone(),
            at_once: at_once.map_or_else(processors, usize::from),
            watched: capable(std::io::stderr().is_terminal()),
        }));
    }
    let [exam] = exams else { return Err(one_file(exams.len(), target)) };
    let file = Target::look(&target.output, target.force)?;
    Ok(Work::One(Box::new(Request { command: make(exam.load(false)), look }), Some(file)))
}

/// How many processors this program may use.
fn processors() -> usize {
    std::thread::available_parallelism().map_or(1, usize::from)
}

/// A layout: a file when it looks like one, else the name of a shipped one.
fn chosen(given: &Path) -> Chosen {
    match given.to_str() {
        Some(name) if !name.contains(['.', '/', '\\']) && name != "-" && !given.is_file() => {
            Chosen::Named(name.to_owned())
        }
        _ => Chosen::Own(load(given)),
    }
}

/// The exams named, files first.
fn given(exams: &[PathBuf], say: &[String]) -> Result<Vec<Given>, String> {
    are_files(exams)?;
    let files = exams.iter().cloned().map(Given::File);
    Ok(files.chain(say.iter().enumerate().map(|(at, line)| Given::Line(at + 1, line.clone()))).collect())
}

/// Long dashes, that word processors make of two hyphens.
const LONG_DASHES: [char; 2] = ['\u{2013}', '\u{2014}'];

/// What was typed where names of files stand: a line of findings, a long dash, or a star that the shell did not fill in.
fn are_files(exams: &[PathBuf]) -> Result<(), String> {
    let names: Vec<String> = exams.iter().map(|path| path.to_string_lossy().into_owned()).collect();
    if let Some(dashed) = names.iter().find(|name| name.starts_with(LONG_DASHES)) {
        let option = dashed.trim_start_matches(LONG_DASHES);
        return Err(format!(
            "`{dashed}` begins with a long dash, as a word processor makes it; type --{option}"
        ));
    }
    if let Some(star) = names.iter().find(|name| name.contains('*') && !Path::new(name).exists()) {
        return Err(format!(
            "there is no file `{star}`, and this shell has not filled in the star; name the files"
        ));
    }
    let word = |name: &String| name != "-" && !name.contains(['.', '/', '\\']) && !Path::new(name).exists();
    match names.first() {
        Some(first) if names.iter().all(word) => Err(format!(
            "there is no file `{first}`; findings that are typed stand after --say, between quotes: --say \"{}\"",
            names.join(" ")
        )),
        _ => Ok(()),
    }
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
    if capable(terminal) && !unwanted { Look::Coloured } else { Look::Plain }
}

/// Whether this terminal can do more than print line after line.
fn capable(terminal: bool) -> bool {
    terminal && std::env::var_os("TERM").is_none_or(|value| value != "dumb")
}

/// The kind of file; `usual` in a directory when none is named.
fn format(target: &cli::Target, usual: Format) -> Result<Format, String> {
    match format_with_words(target, usual)? {
        Format::Html => Err(format!(
            "{}: only the family page is made as HTML; end it in .svg, .png or .pdf, or say --as svg, png or pdf",
            target.output.display()
        )),
        format => Ok(format),
    }
}

/// The same, where it may be a page of words.
fn format_with_words(target: &cli::Target, usual: Format) -> Result<Format, String> {
    let format = format_of(target, usual)?;
    let shown = target.output.as_os_str() == "-" && std::io::stdout().is_terminal();
    if shown && !matches!(format, Format::Svg | Format::Html) {
        return Err("this is no text for a terminal; name a file, such as -o picture.png".to_owned());
    }
    Ok(format)
}

fn format_of(target: &cli::Target, usual: Format) -> Result<Format, String> {
    let path = &target.output;
    let ending = path.extension().and_then(|ending| ending.to_str());
    let by_ending = ending.and_then(Format::from_ending);
    let by_kind = target.kind.map(|kind| match kind {
        cli::Kind::Svg => Format::Svg,
        cli::Kind::Png => Format::Png,
        cli::Kind::Pdf => Format::Pdf,
        cli::Kind::Html => Format::Html,
    });
    if files::is_directory(path) {
        return Ok(by_kind.unwrap_or(usual));
    }
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

/// Why many exams do not go into one file.
fn one_file(exams: usize, target: &cli::Target) -> String {
    let name = match target.output.as_os_str().to_str() {
        Some("-") => "standard output".to_owned(),
        _ => target.output.display().to_string(),
    };
    format!(
        "{name} is one file, and there are {exams} visits; name a directory, ending in `/`, such as -o pictures/"
    )
}

fn set(set: cli::Set) -> Set {
    match set {
        cli::Set::Occiput => Set::Occiput,
        cli::Set::Sacrum => Set::Sacrum,
        cli::Set::Chin => Set::Chin,
        cli::Set::Brow => Set::Brow,
        cli::Set::Breech => Set::Breeches,
        cli::Set::Crosswise => Set::Crosswise,
        cli::Set::Attitudes => Set::Attitudes,
        cli::Set::Fifths => Set::Fifths,
        cli::Set::Levels => Set::Levels,
        cli::Set::Grips => Set::Grips,
        cli::Set::Listening => Set::Listening,
        cli::Set::Turning => Set::Turning,
        cli::Set::Wall => Set::Wall,
        cli::Set::Twins => Set::Twins,
        cli::Set::Below => Set::Below,
        cli::Set::Palettes => Set::Palettes,
    }
}

/// Refuses choices that could not show.
fn goes_together(draw: &cli::Draw) -> Result<(), String> {
    let plain = matches!(draw.style, cli::Style::Line | cli::Style::Sketch);
    if plain && draw.palette.is_some() {
        return Err("--palette colours the style soft; leave it out, or leave --style out".to_owned());
    }
    if matches!(draw.style, cli::Style::Sketch) && draw.hands.is_some() {
        return Err("a sketch is too small for hands: leave --hands out, or give another --style".to_owned());
    }
    if draw.hair.is_some() && !matches!(draw.mother, cli::Mother::Lips | cli::Mother::Whole) {
        return Err("--hair goes with --mother lips or whole; leave it out, or add one of them".to_owned());
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

fn palpation(palpation: cli::Palpation) -> Palpation {
    match palpation {
        cli::Palpation::Fundal => Palpation::Fundal,
        cli::Palpation::Lateral => Palpation::Lateral,
        cli::Palpation::PelvicOne => Palpation::PelvicOne,
        cli::Palpation::PelvicTwo => Palpation::PelvicTwo,
        cli::Palpation::Tape => Palpation::Tape,
        cli::Palpation::Horn => Palpation::Horn,
        cli::Palpation::Doppler => Palpation::Doppler,
    }
}

fn mother_drawn(mother: cli::Mother, hair: Option<cli::Hair>) -> MotherAs {
    let hair = match hair {
        None | Some(cli::Hair::Loose) => Hair::Loose,
        Some(cli::Hair::Scarf) => Hair::Scarf,
    };
    match mother {
        cli::Mother::Outline => MotherAs::Outline,
        cli::Mother::Body => MotherAs::Body,
        cli::Mother::Lips => MotherAs::Lips(hair),
        cli::Mother::Whole => MotherAs::Whole(hair),
    }
}

fn mother(mother: cli::MotherAs) -> MotherAs {
    match mother {
        cli::MotherAs::Body => MotherAs::Body,
        cli::MotherAs::Outline => MotherAs::Outline,
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
        cli::Paper::A3 => Paper::A3,
    }
}
