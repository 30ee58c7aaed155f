//! The one door. In: a request that names a command, its options and the *texts* of files. Out: an outcome: what to print,
//! what to write, and the exit code. Nothing here touches a file or prints.

mod against;
mod cases;
mod check;
mod draw;
mod growth;
mod handout;
mod languages;
mod layouts;
mod listing;
mod load;
mod model;
mod note;
mod outline;
mod page;
mod picture;
mod places;
mod plate;
mod read_back;
mod review;
mod rules;
mod skin_guide;
mod text;
mod tidy;
mod vocabulary;

pub use crate::exam::edit::Edit;
pub use crate::figure::artist::Handed;
pub use crate::figure::{Hair, Labels, MotherAs, Palette, Palpation, Style, View};
pub use crate::sheet::skin::Length;
pub use crate::teach::Level;
pub use cases::Cases;
pub use check::Check;
pub use draw::{Draw, Format};
pub use growth::Growth;
pub use handout::{Handout, Paper};
pub use languages::Draft;
pub use layouts::Chosen;
pub use model::{Model, Space};
pub use note::{Form, Note};
pub use plate::{Plate, Set, Size, Way, What};
pub use review::Review;
pub use skin_guide::{GuideLook, SkinGuide, skin_sheets};

use crate::report::Look;

/// Exit codes; several files: the highest.
pub mod exit {
    /// Done.
    pub const DONE: u8 = 0;
    /// Findings that cannot both be right.
    pub const CANNOT_BOTH: u8 = 1;
    /// Something could not be read or written.
    pub const FAILED: u8 = 2;
    /// Something that cannot wait.
    pub const ACT_NOW: u8 = 3;
}

/// How an exam is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Written {
    /// As a file of keys and values.
    File,
    /// As one line of chart shorthand.
    Line,
}

/// A file, or a line of shorthand, as the program was given it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Source {
    /// How it is written.
    pub written: Written,
    /// Its name as the user typed it, for messages.
    pub name: String,
    /// Its bytes, or why it could not be read.
    pub bytes: Result<Vec<u8>, String>,
}

impl Source {
    /// A file with these bytes.
    pub fn new(name: impl Into<String>, bytes: impl Into<Vec<u8>>) -> Self {
        Self { written: Written::File, name: name.into(), bytes: Ok(bytes.into()) }
    }
    /// A line of chart shorthand; `name` stands in messages where the name of a file would.
    pub fn line(name: impl Into<String>, line: impl Into<Vec<u8>>) -> Self {
        Self { written: Written::Line, ..Self::new(name, line) }
    }
}

/// A command with its options.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Command {
    /// Read exams and say back what was understood.
    Check(Check),
    /// The picture.
    Draw(Draw),
    /// The baby in space.
    Model(Model),
    /// The family page.
    Handout(Handout),
    /// The guide for drawing on skin.
    SkinGuide(SkinGuide),
    /// An entry for the chart.
    Note(Note),
    /// Practice cases with a key.
    Cases(Cases),
    /// The tape over the visits.
    Growth(Growth),
    /// A sheet of teaching figures.
    Plate(Plate),
    /// The names of the sets of teaching figures.
    PlateList,
    /// The shipped layouts, or the text of one of them.
    Layouts {
        /// Which.
        name: Option<String>,
    },
    /// The languages, each with its state, as a clinic says them.
    Languages {
        /// The clinic's file.
        clinic: Option<Source>,
    },
    /// The book in which a language is read and corrected.
    Review(Review),
    /// The vocabulary.
    Words,
    /// The abbreviations of a line, by region.
    Abbreviations,
    /// A visit file in canonical words.
    Tidy {
        /// The exam.
        exam: Source,
    },
    /// Findings changed in the text of a visit file.
    Edit {
        /// The exam, a file.
        exam: Source,
        /// What is to stand where.
        edits: Vec<Edit>,
    },
    /// An exam as one line of shorthand.
    Line {
        /// The exam.
        exam: Source,
    },
    /// A line of shorthand as a visit file.
    File {
        /// The exam.
        exam: Source,
    },
    /// Her abdomen without a baby, and where each named place lies on it.
    Outline {
        /// The exam; only weeks and her measures are used.
        exam: Source,
        /// Language tag of its words.
        lang: String,
    },
    /// Where each named place, and head, bottom and trunk of each baby, lie on the picture of an exam.
    Places {
        /// The exam.
        exam: Source,
        /// Language tag.
        lang: String,
    },
    /// The sides that an exam names, to be compared with her before anything is printed.
    ReadBack {
        /// The exam.
        exam: Source,
        /// Language tag.
        lang: String,
    },
    /// The page for the browser.
    Page,
    /// The bundled letters, upright and strong, for the page.
    Letters,
    /// Every key with its words and states as JSON, and the words of the page.
    Vocabulary {
        /// Language tag.
        lang: String,
    },
    /// The exam language as a JSON Schema.
    Schema,
    /// The ledger of rules.
    Rules {
        /// One JSON object a line instead of text.
        json: bool,
    },
}

/// What is asked of the program.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Request {
    /// The command.
    pub command: Command,
    /// How text for people is dressed.
    pub look: Look,
}

/// What came of it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outcome {
    /// For standard output.
    pub text: String,
    /// For standard error.
    pub notes: String,
    /// The finished document: one entry for a file, several for a picture file a page (`name-2.svg`).
    /// Empty: nothing is to be written.
    pub pages: Vec<Vec<u8>>,
    /// The names of `pages` when each is a file of its own in a directory; else empty.
    pub names: Vec<String>,
    /// What `pages` hold, for the line that says what was written: "the picture", "the family page".
    pub made: &'static str,
    /// What each of the named files is, where they differ.
    pub each: Vec<&'static str>,
    /// Why there are no pages, in a few words, for a list of many exams.
    pub why: String,
    /// The exit code.
    pub code: u8,
}

/// Do what is asked.
pub fn run(request: &Request) -> Outcome {
    match &request.command {
        Command::Check(options) => check::run(options, request.look),
        Command::Draw(options) => draw::run(options, request.look),
        Command::Model(options) => model::run(options, request.look),
        Command::Handout(options) => handout::run(options, request.look),
        Command::SkinGuide(options) => skin_guide::run(options, request.look),
        Command::Note(options) => note::run(options, request.look),
        Command::Cases(options) => cases::run(options),
        Command::Growth(options) => growth::run(options, request.look),
        Command::Plate(options) => plate::run(options, request.look),
        Command::Layouts { name } => layouts::run(name.as_deref()),
        Command::Languages { clinic } => review::list(clinic.as_ref(), request.look),
        Command::Review(options) => review::run(options, request.look),
        Command::PlateList => Outcome { text: plate::list(), ..Outcome::default() },
        Command::Rules { json: false } => Outcome { text: rules::text(), ..Outcome::default() },
        Command::Rules { json: true } => match rules::json() {
            Ok(text) => Outcome { text, ..Outcome::default() },
            Err(fault) => {
                Outcome { notes: format!("handspan: {fault}\n"), code: exit::FAILED, ..Outcome::default() }
            }
        },
        Command::Tidy { exam } => tidy::run(exam, request.look),
        Command::Edit { exam, edits } => text::edit(exam, edits),
        Command::Line { exam } => text::line(exam, request.look),
        Command::File { exam } => text::file(exam, request.look),
        Command::Outline { exam, lang } => outline::run(exam, lang),
        Command::Places { exam, lang } => places::run(exam, lang),
        Command::ReadBack { exam, lang } => read_back::run(exam, lang, request.look),
        Command::Page => page::run(),
        Command::Letters => page::letters(),
        Command::Vocabulary { lang } => vocabulary::run(lang),
        Command::Schema => match crate::exam::schema::text() {
            Ok(text) => Outcome { text, ..Outcome::default() },
            Err(fault) => {
                Outcome { notes: format!("handspan: {fault}\n"), code: exit::FAILED, ..Outcome::default() }
            }
        },
        Command::Abbreviations => Outcome { text: listing::abbreviations(), ..Outcome::default() },
        Command::Words => Outcome { text: listing::words(), ..Outcome::default() },
    }
}
