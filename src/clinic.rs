//! The clinic's own file, `clinic.toml`. In: its text. Out: `Clinic`, and every problem in it.
//!
//! It holds a name and telephone numbers for the family page; nothing about any person.

use crate::report::{Problem, any_error, placed, quoted};
use serde::Deserialize;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// What a clinic says of itself. Everything may be left out: the page then has a blank line to write on.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Clinic {
    /// Its name.
    pub name: Option<String>,
    /// Labour ward, or whoever answers day and night.
    pub labour_ward: Option<String>,
    /// By day.
    pub day: Option<String>,
    /// By night.
    pub night: Option<String>,
    /// The emergency number of the country.
    pub emergency: Option<String>,
}

/// What came of reading a clinic file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ClinicReading {
    /// The clinic; `None` when any problem is an error.
    pub clinic: Option<Clinic>,
    /// Every problem, sorted by place.
    pub problems: Vec<Problem>,
}

/// Largest file read, in bytes.
const MOST_BYTES: usize = 1 << 20;
/// More problems than this help nobody.
const MOST_PROBLEMS: usize = 50;
/// Longest name, in characters: it has to fit on a line of the page.
const LONGEST_NAME: usize = 80;
/// Longest telephone number, in characters.
const LONGEST_NUMBER: usize = 30;
/// Keys at the top and under `[telephone]`.
const TOP_KEYS: [&str; 2] = ["name", "telephone"];
const TELEPHONE_KEYS: [&str; 4] = ["labour-ward", "day", "night", "emergency"];

#[derive(Deserialize, Default)]
struct File {
    name: Option<Spanned<String>>,
    #[serde(default)]
    telephone: Telephone,
}

#[derive(Deserialize, Default)]
#[serde(rename_all = "kebab-case")]
struct Telephone {
    labour_ward: Option<Spanned<String>>,
    day: Option<Spanned<String>>,
    night: Option<Spanned<String>>,
    emergency: Option<Spanned<String>>,
}

/// Read the clinic file `file` (as the user named it, for messages).
pub fn read(file: &str, bytes: &[u8]) -> ClinicReading {
    let failed = |problem| ClinicReading { clinic: None, problems: vec![problem] };
    if bytes.len() > MOST_BYTES {
        return failed(Problem::of_file("file-too-big", file, "the file is larger than 1 MiB"));
    }
    let Ok(source) = std::str::from_utf8(bytes) else {
        return failed(
            Problem::of_file("not-text", file, "the file is not UTF-8 text")
                .expecting("a plain text file saved as UTF-8"),
        );
    };
    let mut problems = unknown_keys(file, source);
    let parsed: File = match toml::from_str(source) {
        Ok(parsed) => parsed,
        Err(fault) => {
            let span = fault.span().unwrap_or(0..0);
            problems.push(
                Problem::at("clinic-value", file, span, fault.message().replace('\n', " "))
                    .expecting("a name, and telephone numbers, between quotes"),
            );
            File::default()
        }
    };
    let mut number = |value: Option<Spanned<String>>| text(file, &mut problems, value, is_number);
    let Telephone { labour_ward, day, night, emergency } = parsed.telephone;
    let (labour_ward, day, night, emergency) =
        (number(labour_ward), number(day), number(night), number(emergency));
    let name = text(file, &mut problems, parsed.name, is_name);
    let errors = any_error(&problems);
    let problems = placed(problems, source, MOST_PROBLEMS);
    let clinic = (!errors).then_some(Clinic { name, labour_ward, day, night, emergency });
    ClinicReading { clinic, problems }
}

fn text(
    file: &str,
    problems: &mut Vec<Problem>,
    value: Option<Spanned<String>>,
    check: fn(&str) -> Result<(), &'static str>,
) -> Option<String> {
    let value = value?;
    let span = value.span();
    let said = value.into_inner().trim().to_owned();
    match check(&said) {
        Ok(()) => Some(said),
        Err(expected) => {
            let message = format!("{} cannot stand here", quoted(&said));
            problems.push(Problem::at("clinic-value", file, span, message).expecting(expected));
            None
        }
    }
}

fn is_number(text: &str) -> Result<(), &'static str> {
    let right = text.chars().all(|c| c.is_ascii_digit() || " +-()/.".contains(c))
        && text.chars().filter(char::is_ascii_digit).count() >= 3
        && text.chars().count() <= LONGEST_NUMBER;
    right.then_some(()).ok_or("a telephone number, such as \"01632 960123\"")
}

fn is_name(text: &str) -> Result<(), &'static str> {
    let right =
        !text.is_empty() && text.chars().count() <= LONGEST_NAME && !text.chars().any(char::is_control);
    right.then_some(()).ok_or("a name of one line, up to 80 characters")
}

fn unknown_keys(file: &str, source: &str) -> Vec<Problem> {
    let (table, _) = DeTable::parse_recoverable(source);
    let mut problems = vec![];
    let mut check = |table: &DeTable<'_>, known: &[&'static str]| {
        for (key, _) in table {
            let name: &str = key.get_ref();
            if known.contains(&name) {
                continue;
            }
            let near = known
                .iter()
                .map(|k| {
                    (strsim::normalized_damerau_levenshtein(&name.to_lowercase().replace('_', "-"), k), k)
                })
                .filter(|(near, _)| *near >= 0.6)
                .max_by(|a, b| a.0.total_cmp(&b.0))
                .map(|(_, k)| format!("`{k}`"));
            problems.push(
                Problem::at(
                    "unknown-key",
                    file,
                    key.span(),
                    format!("{} is not a key of a clinic file", quoted(name)),
                )
                .expecting(match name {
                    "mother" | "baby" | "weeks" => {
                        "the clinic's own file here: this looks like an exam".to_owned()
                    }
                    _ => known.join(", "),
                })
                .suggesting(near),
            );
        }
    };
    check(table.get_ref(), &TOP_KEYS);
    for (key, value) in table.get_ref() {
        if let ("telephone", DeValue::Table(numbers)) = (key.get_ref().as_ref(), value.get_ref()) {
            check(numbers, &TELEPHONE_KEYS);
        }
    }
    problems
}
