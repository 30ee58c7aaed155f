//! The command line, each command and flag once. In: arguments. Out: their values.

use clap::{Args, Parser, Subcommand, ValueEnum};
use std::path::PathBuf;

/// From what hands, ear and tape have found on a pregnant abdomen to a picture of how the baby lies.
///
/// A record, drawing and teaching aid for trained people. From the hands, not a scan. It does not diagnose and does not
/// replace local guidance, a clinician's judgement or a scan. Sides are always the mother's left and right.
#[derive(Parser)]
#[command(name = "handspan", version, max_term_width = 100, after_help = EXIT_CODES)]
pub struct Cli {
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
}

const EXIT_CODES: &str = "Exit codes: 0 done; 1 findings that cannot both be right; 2 could not read or write; \
3 something that cannot wait. Several files: the highest.";

/// The commands.
#[derive(Subcommand)]
pub enum Command {
    /// Say back what was understood, what agrees and what does not
    Check(Check),
    /// Draw the picture
    Draw(Draw),
    /// Make the family page
    Handout(Handout),
    /// Write an entry for the chart: a note, a handover, a FHIR bundle, or a slip to stick in
    Note(Note),
    /// Show the tape over the visits of one pregnancy, and how the baby lay at each
    Growth(Growth),
    /// Make a sheet of teaching figures
    Plate(Plate),
    /// Open the page for the browser, which works offline, or write it with -o
    Desk(Desk),
    /// List the words of an exam file, and the abbreviations of shorthand
    Words,
    /// Rewrite an exam file in the words that are printed; comments and order stay
    Tidy(Tidy),
    /// Print the exam language as a JSON Schema, for editors
    Schema,
    /// List the rules of the reckoning, with their sources
    Rules(Rules),
}

/// `desk`
#[derive(Args)]
pub struct Desk {
    /// File to write, ending in .html; left out: the page is opened in the browser
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,
    /// Replace a file that is there
    #[arg(long)]
    pub force: bool,
}

/// `rules`
#[derive(Args)]
pub struct Rules {
    /// One JSON object a line
    #[arg(long)]
    pub json: bool,
}

/// Exams, in files or as said.
#[derive(Args)]
#[group(required = true, multiple = true)]
pub struct Exams {
    /// Exam files; `-` is standard input. Where a document is made, several go into a directory, a file for each
    #[arg(value_name = "EXAM")]
    pub exams: Vec<PathBuf>,
    /// An exam in one line of chart shorthand, such as "37+0 LOA 2/5 palp SFH 34"; once for each
    #[arg(long, value_name = "LINE", allow_hyphen_values = true)]
    pub say: Vec<String>,
}

/// `tidy`
#[derive(Args)]
pub struct Tidy {
    /// Exam file; `-` is standard input
    #[arg(value_name = "EXAM")]
    pub exam: PathBuf,
    /// File to write, which may be the same; left out: standard output
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,
    /// Replace a file that is there
    #[arg(long)]
    pub force: bool,
}

/// `check`
#[derive(Args)]
pub struct Check {
    /// The exams.
    #[command(flatten)]
    pub given: Exams,
    /// One JSON object a line
    #[arg(long)]
    pub json: bool,
    /// The clinic's own file, for its thresholds
    #[arg(long, value_name = "FILE")]
    pub clinic: Option<PathBuf>,
    /// Leave out this lesser remark, named by its id, and say so; once for each
    #[arg(long, value_name = "ID")]
    pub quiet_remark: Vec<String>,
    /// Print reference weights by scan at these weeks beside the others: INTERGROWTH-21st and Hadlock
    #[arg(long)]
    pub weight_curves: bool,
}

/// Where a document goes.
#[derive(Args)]
pub struct Target {
    /// File to write: .svg, .png or .pdf; `-` is standard output and needs --as. Or a directory for many files: one that
    /// is there, or a name that ends in `/`
    #[arg(short, long, value_name = "FILE")]
    pub output: PathBuf,
    /// Kind of file, when its name does not say it
    #[arg(long = "as", value_name = "KIND")]
    pub kind: Option<Kind>,
    /// Replace a file that is there
    #[arg(long)]
    pub force: bool,
}

/// `draw`
#[derive(Args)]
pub struct Draw {
    /// The exams.
    #[command(flatten)]
    pub given: Exams,
    /// Where it goes.
    #[command(flatten)]
    pub target: Target,
    /// Style of drawing: light and shade, ink on white, or a stamp for the chart, 4 cm wide
    #[arg(long, default_value = "soft")]
    pub style: Style,
    /// Colours of skin in the style soft: neutral, or 1 (lightest) to 6 (deepest)
    #[arg(long, value_name = "SKIN")]
    pub palette: Option<Palette>,
    /// From where it is seen: by someone facing her, or by her looking down
    #[arg(long, default_value = "facing")]
    pub view: View,
    /// How many labels; numbered: as all, by numbers with a key
    #[arg(long, default_value = "few")]
    pub labels: Labels,
    /// Language of the labels
    #[arg(long, default_value = "en", value_name = "TAG")]
    pub lang: String,
    /// Width of a .png in pixels, 64 to 8192
    #[arg(long, value_name = "PIXELS", value_parser = clap::value_parser!(u32).range(64..=8192))]
    pub width: Option<u32>,
    /// Words of an .svg as text with its font, or as outlines
    #[arg(long, default_value = "text", value_name = "HOW")]
    pub text: TextAs,
    /// How many exams are drawn at the same time, 1 to 256; as a rule one for each processor
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=256))]
    pub at_once: Option<u16>,
}

/// `handout`
#[derive(Args)]
pub struct Handout {
    /// The exams.
    #[command(flatten)]
    pub given: Exams,
    /// Where it goes.
    #[command(flatten)]
    pub target: Target,
    /// Language of the page
    #[arg(long, default_value = "en", value_name = "TAG")]
    pub lang: String,
    /// Paper
    #[arg(long)]
    pub paper: Option<Paper>,
    /// The clinic's own file, for its name and telephone numbers
    #[arg(long, value_name = "FILE")]
    pub clinic: Option<PathBuf>,
    /// A layout of one's own
    #[arg(long, value_name = "FILE")]
    pub layout: Option<PathBuf>,
    /// Make the page despite this act-now remark, named by its id; once for each
    #[arg(long, value_name = "ID")]
    pub despite: Vec<String>,
    /// How many pages are made at the same time, 1 to 256; as a rule one for each processor
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=256))]
    pub at_once: Option<u16>,
}

/// `note`
#[derive(Args)]
pub struct Note {
    /// The exam.
    #[command(flatten)]
    pub given: Exams,
    /// What is written; a file ending in .txt is a text, .json is fhir
    #[arg(long = "as", value_name = "FORM")]
    pub form: Option<NoteForm>,
    /// Without any date and anything typed freely, so that it can be shared
    #[arg(long)]
    pub share: bool,
    /// File to write; one ending in .svg, .png or .pdf is a slip to stick in. Left out: standard output
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,
    /// Replace a file that is there
    #[arg(long)]
    pub force: bool,
    /// Language of the words
    #[arg(long, default_value = "en", value_name = "TAG")]
    pub lang: String,
    /// The clinic's own file, for its thresholds
    #[arg(long, value_name = "FILE")]
    pub clinic: Option<PathBuf>,
    /// Leave out this lesser remark, named by its id, and say so; once for each
    #[arg(long, value_name = "ID")]
    pub quiet_remark: Vec<String>,
}

/// `growth`
#[derive(Args)]
pub struct Growth {
    /// The visits.
    #[command(flatten)]
    pub given: Visits,
    /// Where it goes.
    #[command(flatten)]
    pub target: Target,
    /// Paper
    #[arg(long, default_value = "a4")]
    pub paper: Paper,
    /// Language of the words
    #[arg(long, default_value = "en", value_name = "TAG")]
    pub lang: String,
    /// The clinic's own file, for its thresholds
    #[arg(long, value_name = "FILE")]
    pub clinic: Option<PathBuf>,
    /// Leave out this lesser remark, named by its id, and say so; once for each
    #[arg(long, value_name = "ID")]
    pub quiet_remark: Vec<String>,
    /// Width of a .png in pixels, 64 to 8192
    #[arg(long, value_name = "PIXELS", value_parser = clap::value_parser!(u32).range(64..=8192))]
    pub width: Option<u32>,
    /// Words of an .svg as text with its font, or as outlines
    #[arg(long, default_value = "text", value_name = "HOW")]
    pub text: TextAs,
}

/// Visits of one pregnancy, in files or as said.
#[derive(Args)]
#[group(required = true, multiple = true)]
pub struct Visits {
    /// Exam files, one a visit, two or more, in any order; `-` is standard input
    #[arg(value_name = "VISIT")]
    pub exams: Vec<PathBuf>,
    /// A visit in one line of chart shorthand, such as "34+0 LOA SFH 33"; once for each
    #[arg(long, value_name = "LINE", allow_hyphen_values = true)]
    pub say: Vec<String>,
}

/// Forms of an entry.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum NoteForm {
    Text,
    Handover,
    Fhir,
}

/// `plate`
#[derive(Args)]
pub struct Plate {
    /// The figures; --list says what each set shows
    #[arg(value_name = "SET", required_unless_present = "list")]
    pub set: Option<Set>,
    /// List the sets
    #[arg(long, exclusive = true)]
    pub list: bool,
    /// Where it goes.
    #[command(flatten)]
    pub target: Option<Target>,
    /// Style of drawing
    #[arg(long, default_value = "soft")]
    pub style: Style,
    /// How many labels on each figure
    #[arg(long, default_value = "none")]
    pub labels: Labels,
    /// Paper, on its long side
    #[arg(long, default_value = "a4")]
    pub paper: Paper,
    /// Language of the words
    #[arg(long, default_value = "en", value_name = "TAG")]
    pub lang: String,
    /// Width of a .png in pixels, 64 to 8192
    #[arg(long, value_name = "PIXELS", value_parser = clap::value_parser!(u32).range(64..=8192))]
    pub width: Option<u32>,
    /// Words of an .svg as text with its font, or as outlines
    #[arg(long, default_value = "text", value_name = "HOW")]
    pub text: TextAs,
}

/// Sets of teaching figures.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Set {
    Positions,
    Weeks,
    Attitudes,
    Breeches,
    Crosswise,
    Twins,
    Fifths,
    Palettes,
}

/// Kinds of file.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Kind {
    Svg,
    Png,
    Pdf,
}

/// Styles of drawing.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Style {
    Soft,
    Line,
    Sketch,
}

/// Colours of skin.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Palette {
    Neutral,
    #[value(name = "1")]
    Skin1,
    #[value(name = "2")]
    Skin2,
    #[value(name = "3")]
    Skin3,
    #[value(name = "4")]
    Skin4,
    #[value(name = "5")]
    Skin5,
    #[value(name = "6")]
    Skin6,
}

/// Views.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum View {
    Facing,
    Hers,
}

/// Words of an SVG.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum TextAs {
    Text,
    Outlines,
}

/// Labels.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Labels {
    None,
    Few,
    All,
    Numbered,
}

/// Papers.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Paper {
    A4,
    Letter,
}
