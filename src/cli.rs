//! The command line, each command and flag once. In: arguments. Out: their values.

// By its path, for the man pages are made of this file from elsewhere.
#[path = "cli/help.rs"]
pub mod help;

use clap::{Args, CommandFactory, Parser, Subcommand, ValueEnum};
use std::path::PathBuf;

/// The table of commands, with what its help says beside it.
pub fn table() -> clap::Command {
    help::with_groups_and_examples(Cli::command())
}

/// From what hands, ear and tape have found on a pregnant abdomen to a picture of how the baby lies.
///
/// A record, drawing and teaching aid for trained people. From the hands, not a scan. It does not diagnose and does not
/// replace local guidance, a clinician's judgement or a scan. Sides are always the mother's left and right.
#[derive(Parser)]
#[command(name = "handspan", version, max_term_width = 100, after_help = EXIT_CODES, disable_help_subcommand = true)]
pub struct Cli {
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
}

const EXIT_CODES: &str = "Exit codes: 0 done; 1 findings that cannot both be right; 2 could not read or write; \
3 something that cannot wait. Several files: the highest.";

const KEY_STAYS: &str = "Hand out cases.pdf alone: key.pdf is the answer key, and the visit files tell the answers too. One case for a \
class of twenty: --count 1, and cases.pdf printed twenty times.";

/// The commands.
#[derive(Subcommand)]
pub enum Command {
    /// Say back what was understood, what agrees and what does not
    Check(Check),
    /// Draw the picture
    Draw(Draw),
    /// Make the family page
    #[command(name = "family-page", alias = "handout")]
    Handout(Handout),
    /// Make the guide for drawing on her skin: strokes in order, and a tracing sheet at true size
    SkinGuide(SkinGuide),
    /// Write an entry for the chart: a note, a handover, a FHIR bundle, or a slip to stick in
    Note(Note),
    /// Show the fundal height over the visits of one pregnancy, and how the baby lay at each
    #[command(name = "fundal-height", alias = "growth")]
    Growth(Growth),
    /// Make a sheet of teaching figures
    Plate(Plate),
    /// Open the page for the browser, which works offline, or write it with -o
    Desk(Desk),
    /// Make practice cases with a key
    Cases(Cases),
    /// List the layouts, or print one to start from
    Layouts(Layouts),
    /// List the languages and their state, or make the book in which one is read, corrected and signed
    Languages(Languages),
    /// List the words of a visit file, or the abbreviations of a line
    Words(WordList),
    /// Rewrite a visit file in the words that are printed; comments and order stay
    Tidy(Tidy),
    /// Print the language of visit files as a JSON Schema, for editors
    Schema,
    /// List the rules, with their sources
    Rules(Rules),
    /// Print a chapter of the manual; without a name, the commands and the chapters
    Help(Help),
}

/// `help`
#[derive(Args)]
pub struct Help {
    /// A chapter, or a command
    #[arg(value_name = "TOPIC")]
    pub topic: Option<String>,
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

/// `layouts`
#[derive(Args)]
pub struct Layouts {
    /// The layout to print
    #[arg(value_name = "NAME")]
    pub name: Option<String>,
}

/// `languages`
#[derive(Args)]
#[command(args_conflicts_with_subcommands = true)]
pub struct Languages {
    /// The book of a language.
    #[command(subcommand)]
    pub review: Option<LanguageWork>,
    /// The clinic's own file, for its corrections and signatures
    #[arg(long, value_name = "FILE")]
    pub clinic: Option<PathBuf>,
}

/// What is done with a language.
#[derive(Subcommand)]
pub enum LanguageWork {
    /// Make the book in which a language is read: each sentence beside the English, with room to correct it
    Review(Review),
}

/// `languages review`
#[derive(Args)]
pub struct Review {
    /// The language, such as es
    #[arg(value_name = "LANGUAGE")]
    pub lang: String,
    /// Where it goes.
    #[command(flatten)]
    pub target: Target,
    /// Paper
    #[arg(long, ignore_case = true)]
    pub paper: Option<Paper>,
    /// The clinic's own file: its corrections stand in the book
    #[arg(long, value_name = "FILE")]
    pub clinic: Option<PathBuf>,
}

/// `rules`
#[derive(Args)]
pub struct Rules {
    /// One JSON object a line
    #[arg(long)]
    pub json: bool,
}

/// `words`
#[derive(Args)]
pub struct WordList {
    /// The abbreviations of a line (--say) instead, by where they are written
    #[arg(long)]
    pub abbreviations: bool,
}

/// Exams, in files or as said.
#[derive(Args)]
#[group(required = true, multiple = true)]
pub struct Exams {
    /// Visit files; `-` is standard input
    #[arg(value_name = "VISIT")]
    pub exams: Vec<PathBuf>,
    /// A visit in one line of chart shorthand, such as "37+0 LOA 2/5 palp SFH 34"; once for each
    #[arg(long, value_name = "LINE", allow_hyphen_values = true)]
    pub say: Vec<String>,
}

/// `tidy`
#[derive(Args)]
pub struct Tidy {
    /// Visit file; `-` is standard input
    #[arg(value_name = "VISIT")]
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
    /// Answer here what a line is asked, each question once; in a terminal only
    #[arg(long)]
    pub ask: bool,
    /// One JSON object a line
    #[arg(long)]
    pub json: bool,
    /// The clinic's own file, for its thresholds
    #[arg(long, value_name = "FILE")]
    pub clinic: Option<PathBuf>,
    /// Leave out this lesser remark, named by its id, and say so; once for each
    #[arg(long, value_name = "ID")]
    pub quiet_remark: Vec<String>,
    /// Print weights worked out from the fundal height, each named by its formula
    #[arg(long)]
    pub weights: bool,
    /// Print reference weights by scan at these weeks beside the others: INTERGROWTH-21st and Hadlock
    #[arg(long)]
    pub weight_curves: bool,
    /// Its languages.
    #[command(flatten)]
    pub tongue: Tongue,
}

/// The languages of a document.
#[derive(Args)]
pub struct Tongue {
    /// Language of the words: en, en-US, es, fr, or pt and pl for the family page alone; two with a comma between stand side by side, such as fr,en
    #[arg(long, default_value = "en", value_name = "TAG[,TAG]")]
    pub lang: String,
    /// Print a language that no native clinician has signed, marked as a draft, with the English beside it
    #[arg(long)]
    pub draft: bool,
}

/// Where a document goes.
#[derive(Args)]
pub struct Target {
    /// File to write: .svg, .png or .pdf, of the family page .html, of draw .glb or .stl; `-` is standard output and needs --as.
    /// For several visit files a directory, a file for each: one that is there, or a name that ends in `/`
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
    /// Colours of skin in the style soft: neutral, or lightest, lighter, light, deep, deeper, deepest
    #[arg(long, value_name = "SKIN")]
    pub palette: Option<Palette>,
    /// How much of the mother: her torso as an outline with its bones; her body with arms and clothes; the same up to her lips; or whole
    #[arg(long, default_value = "outline", value_name = "HOW")]
    pub mother: Mother,
    /// With --mother lips or whole: her hair, or a scarf
    #[arg(long, value_name = "WHICH")]
    pub hair: Option<Hair>,
    /// The hands of whoever examines, as lines: at the top of the womb, at its sides, one above the pubic bone, both into the pelvis, with the tape, with a horn or a Doppler at the heart
    #[arg(long, value_name = "WHAT THEY DO")]
    pub hands: Option<Palpation>,
    /// From where it is seen: by someone facing her, or by her looking down
    #[arg(long, default_value = "facing")]
    pub view: View,
    /// How many labels; numbered: as all, by numbers with a key
    #[arg(long, default_value = "few")]
    pub labels: Labels,
    /// Its languages.
    #[command(flatten)]
    pub tongue: Tongue,
    /// Width of a .png in pixels, 64 to 8192
    #[arg(long, value_name = "PIXELS", value_parser = clap::value_parser!(u32).range(64..=8192))]
    pub width: Option<u32>,
    /// Words of an .svg as text with its font, or as outlines
    #[arg(long, default_value = "text", value_name = "HOW")]
    pub text: TextAs,
    /// How many visit files are drawn at the same time, 1 to 256; as a rule one for each processor
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=256))]
    pub at_once: Option<u16>,
}

/// `family-page`
#[derive(Args)]
pub struct Handout {
    /// The exams.
    #[command(flatten)]
    pub given: Exams,
    /// Where it goes.
    #[command(flatten)]
    pub target: Target,
    /// The clinic's own file, for its name and telephone numbers
    #[arg(long, value_name = "FILE")]
    pub clinic: Option<PathBuf>,
    /// Paper
    #[arg(long, ignore_case = true)]
    pub paper: Option<Paper>,
    /// Colours of skin: neutral, or lightest, lighter, light, deep, deeper, deepest; left out, those of the clinic's file, or neutral
    #[arg(long, value_name = "SKIN")]
    pub palette: Option<Palette>,
    /// How much of the mother: her body with arms and clothes, or her torso as an outline with its bones; left out, as the clinic's file says, or her body
    #[arg(long, value_name = "HOW")]
    pub mother: Option<MotherAs>,
    /// The same words in large type, on several sides; short for --layout large-print
    #[arg(long, conflicts_with = "layout")]
    pub large_print: bool,
    /// How many sides the page has: 2, one to keep and one for when to call; or 1, everything on one side
    #[arg(long, value_name = "N", conflicts_with_all = ["layout", "large_print"], value_parser = clap::value_parser!(u8).range(1..=2))]
    pub sides: Option<u8>,
    /// Its languages.
    #[command(flatten)]
    pub tongue: Tongue,
    /// A shipped layout, by its name (handspan layouts lists them), or a file of one's own, ending in .toml
    #[arg(long, value_name = "NAME|FILE")]
    pub layout: Option<PathBuf>,
    /// Make the page despite this act-now remark, named by its id; once for each; never while the heart has not been heard
    #[arg(long, value_name = "ID")]
    pub despite: Vec<String>,
    /// The emergency number to print, such as 999 or 112; else the one of the clinic's file
    #[arg(long, value_name = "NUMBER")]
    pub emergency: Option<String>,
    /// Invite the family to lay an ear where the heart was heard; left out when something stands against it
    #[arg(long)]
    pub invite_listening: bool,
    /// Print the tape and the heart's rate
    #[arg(long)]
    pub numbers: bool,
    /// How many pages are made at the same time, 1 to 256; as a rule one for each processor
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=256))]
    pub at_once: Option<u16>,
}

/// `skin-guide`
#[derive(Args)]
pub struct SkinGuide {
    /// The exams.
    #[command(flatten)]
    pub given: Exams,
    /// Where it goes.
    #[command(flatten)]
    pub target: Target,
    /// Its languages.
    #[command(flatten)]
    pub tongue: Tongue,
    /// How many minutes to draw for: 1, a line each for head, back, bottom and legs, and the heart; or 10, everything
    #[arg(long, default_value = "10", value_name = "MINUTES")]
    pub minutes: Minutes,
    /// Draw with the left hand: hands and pen change over on the pictures, the baby stays
    #[arg(long)]
    pub left_handed: bool,
    /// Her skin, and with it the colour of the pen: neutral, or lightest, lighter, light, deep, deeper, deepest
    #[arg(long, value_name = "SKIN")]
    pub palette: Option<Palette>,
    /// Paper; on a3 the tracing sheet is in one piece where it can be
    #[arg(long, default_value = "a4", ignore_case = true)]
    pub paper: Paper,
    /// The clinic's own file, for its thresholds
    #[arg(long, value_name = "FILE")]
    pub clinic: Option<PathBuf>,
    /// Make the guide despite this act-now remark, named by its id; once for each; never while the heart has not been heard
    #[arg(long, value_name = "ID")]
    pub despite: Vec<String>,
    /// How many guides are made at the same time, 1 to 256; as a rule one for each processor
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
    /// The layout of the slip: chart-slip, chart-slips for two on a sheet, or a file of one's own, ending in .toml
    #[arg(long, value_name = "NAME|FILE")]
    pub layout: Option<PathBuf>,
    /// Replace a file that is there
    #[arg(long)]
    pub force: bool,
    /// Its languages.
    #[command(flatten)]
    pub tongue: Tongue,
    /// The clinic's own file, for its thresholds
    #[arg(long, value_name = "FILE")]
    pub clinic: Option<PathBuf>,
    /// Leave out this lesser remark, named by its id, and say so; once for each
    #[arg(long, value_name = "ID")]
    pub quiet_remark: Vec<String>,
}

/// `fundal-height`
#[derive(Args)]
pub struct Growth {
    /// The visits.
    #[command(flatten)]
    pub given: Visits,
    /// Where it goes.
    #[command(flatten)]
    pub target: Target,
    /// Paper
    #[arg(long, default_value = "a4", ignore_case = true)]
    pub paper: Paper,
    /// Its languages.
    #[command(flatten)]
    pub tongue: Tongue,
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
    /// Visit files, one a visit, two or more, in any order; `-` is standard input
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
    #[arg(value_name = "SET", required_unless_present_any = ["list", "exam", "say"])]
    pub set: Option<Set>,
    /// Instead of a set: visit files of your own, side by side; once for each
    #[arg(long = "visit", alias = "exam", value_name = "FILE", conflicts_with = "set")]
    pub exam: Vec<PathBuf>,
    /// Instead of a set: visits in one line of shorthand each; once for each
    #[arg(long, value_name = "LINE", allow_hyphen_values = true, conflicts_with = "set")]
    pub say: Vec<String>,
    /// `turning`: the position it begins at
    #[arg(long, value_name = "POSITION", default_value = "LOT")]
    pub from: String,
    /// `turning`: the position it ends at
    #[arg(long, value_name = "POSITION", default_value = "OA")]
    pub to: String,
    /// `turning`: how many pictures, both ends among them
    #[arg(long, value_name = "NUMBER", default_value = "6", value_parser = clap::value_parser!(u8).range(3..=12))]
    pub frames: u8,
    /// `below`: how far the cervix is open, cm, 2 to 10
    #[arg(long, value_name = "CM", default_value = "8", value_parser = clap::value_parser!(u8).range(2..=10))]
    pub cervix: u8,
    /// List the sets
    #[arg(long, exclusive = true)]
    pub list: bool,
    /// Where it goes.
    #[command(flatten)]
    pub target: Option<Target>,
    /// Style of drawing
    #[arg(long, default_value = "soft")]
    pub style: Style,
    /// Colours of skin: neutral, or lightest, lighter, light, deep, deeper, deepest
    #[arg(long, value_name = "SKIN")]
    pub palette: Option<Palette>,
    /// How many labels on each figure; left out: those its lesson needs
    #[arg(long)]
    pub labels: Option<Labels>,
    /// Paper on its long side, or a slide of 16:9; left out: a4, for `wall` a3
    #[arg(long, ignore_case = true)]
    pub paper: Option<Size>,
    /// Its languages.
    #[command(flatten)]
    pub tongue: Tongue,
    /// Width of a .png in pixels, 64 to 8192
    #[arg(long, value_name = "PIXELS", value_parser = clap::value_parser!(u32).range(64..=8192))]
    pub width: Option<u32>,
    /// Words of an .svg as text with its font, or as outlines
    #[arg(long, default_value = "text", value_name = "HOW")]
    pub text: TextAs,
}

/// `cases`
#[derive(Args)]
#[command(after_help = KEY_STAYS)]
pub struct Cases {
    /// How many cases, 1 to 99
    #[arg(long, default_value = "5", value_name = "N", value_parser = clap::value_parser!(u16).range(1..=99))]
    pub count: u16,
    /// The same number gives the same cases; another number, others
    #[arg(long = "set-number", alias = "seed", default_value = "1", value_name = "NUMBER")]
    pub seed: u64,
    /// How hard they are
    #[arg(long, default_value = "easy")]
    pub level: Level,
    /// Also write cases-qti.zip, a package for learning systems (QTI 2.1)
    #[arg(long)]
    pub package: bool,
    /// Directory for cases.pdf, its answer key (key.pdf) and a visit file for each case: one that is there, or one to be made
    #[arg(short, long, value_name = "DIR")]
    pub output: PathBuf,
    /// Replace files that are there
    #[arg(long)]
    pub force: bool,
    /// Paper
    #[arg(long, default_value = "a4", ignore_case = true)]
    pub paper: Paper,
    /// Language of the words
    #[arg(long, default_value = "en", value_name = "TAG")]
    pub lang: String,
}

/// How hard cases are.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Level {
    Easy,
    #[value(alias = "fair")]
    Medium,
    Hard,
}

/// Sets of teaching figures.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Set {
    Occiput,
    Sacrum,
    Chin,
    Brow,
    #[value(alias = "breeches")]
    Breech,
    #[value(name = "transverse", alias = "crosswise")]
    Crosswise,
    Attitudes,
    Fifths,
    Levels,
    Grips,
    Listening,
    Turning,
    Wall,
    Twins,
    Below,
    Palettes,
}

/// Sizes of a sheet of figures.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Size {
    A3,
    A4,
    Letter,
    Slide,
}

/// Kinds of file.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Kind {
    Svg,
    Png,
    Pdf,
    Html,
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
    #[value(name = "lightest", alias = "1")]
    Skin1,
    #[value(name = "lighter", alias = "2")]
    Skin2,
    #[value(name = "light", alias = "3")]
    Skin3,
    #[value(name = "deep", alias = "4")]
    Skin4,
    #[value(name = "deeper", alias = "5")]
    Skin5,
    #[value(name = "deepest", alias = "6")]
    Skin6,
}

/// How long is drawn.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Minutes {
    #[value(name = "1")]
    One,
    #[value(name = "10")]
    Ten,
}

/// How much of the mother in a picture.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
#[allow(missing_docs)]
pub enum Mother {
    Outline,
    Body,
    Lips,
    Whole,
}

/// What is seen of her hair.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Hair {
    Loose,
    Scarf,
}

/// How much of the mother on a page that goes home.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum MotherAs {
    Body,
    Outline,
}

/// What hands do.
#[derive(Clone, Copy, ValueEnum)]
#[allow(missing_docs)]
pub enum Palpation {
    Fundal,
    Lateral,
    PelvicOne,
    PelvicTwo,
    Tape,
    Horn,
    Doppler,
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
    A3,
}
