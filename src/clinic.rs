//! The clinic's own file, `clinic.toml`. In: its text. Out: `Clinic`, and every problem in it.
//!
//! It holds a name and telephone numbers for the family page, and thresholds of the clinic's own; nothing about any person.

use crate::report::{Problem, any_error, placed, quoted};
use crate::words::{Own, shipped};
use serde::Deserialize;
use std::collections::BTreeMap;
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
    /// Other numbers, each with what it is for and when; never in place of the one that is answered at any hour.
    pub other: Vec<OtherNumber>,
    /// Where to come in, such as the hospital and its door.
    pub come_in: Option<String>,
    /// Whether its family pages invite to lay an ear where the heart was heard.
    pub invite_listening: bool,
    /// The skin of its family pages where none is asked for, by one of `SKINS`.
    pub skin: Option<String>,
    /// How much of the mother its family pages show where it is not asked for, by one of `MOTHERS`.
    pub mother: Option<String>,
    /// Its own thresholds.
    pub thresholds: Thresholds,
    /// Sentences of its own, by language: they stand in place of ours.
    pub words: BTreeMap<String, Own>,
    /// Languages whose sentences for families it has read and signed.
    pub signed: BTreeMap<String, Signature>,
}

/// That a language was signed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Signature {
    /// The day.
    pub on: String,
    /// By whom: a role, no name.
    pub by: String,
    /// The checksum of the sentences that were signed.
    pub of: String,
}

/// A number that is not for any hour.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct OtherNumber {
    /// The number.
    pub number: String,
    /// What it is for, and when it is answered.
    pub purpose: String,
}

/// What a clinic may set otherwise; every other rule is fixed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Thresholds {
    /// How far tape and weeks may differ, in cm. Usual: 2. Source: sfh-rules table (WHO-SFH), seen.
    pub tape_cm: u16,
    /// A heart rate under this cannot wait, beats a minute. Usual: 100. Source: fetal-heart table (WHO MCPC 2000, danger
    /// limits), seen.
    pub heart_low: u16,
    /// A heart rate over this cannot wait, beats a minute. Usual: 180. Source: as `heart_low`.
    pub heart_high: u16,
}

impl Default for Thresholds {
    fn default() -> Self {
        Self { tape_cm: 2, heart_low: 100, heart_high: 180 }
    }
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
const TOP_KEYS: [&str; 7] = ["name", "come-in", "telephone", "family-page", "thresholds", "words", "signed"];
const SIGNED_KEYS: [&str; 3] = ["on", "by", "of"];
const TELEPHONE_KEYS: [&str; 5] = ["labour-ward", "day", "night", "emergency", "other"];
const OTHER_KEYS: [&str; 2] = ["number", "for"];
/// More numbers than this leave her to choose between them.
const MOST_OTHERS: usize = 2;
const FAMILY_KEYS: [&str; 3] = ["invite-listening", "skin", "mother"];
/// Skins by name, from none to the deepest.
pub const SKINS: [&str; 7] = ["neutral", "lightest", "lighter", "light", "deep", "deeper", "deepest"];
/// How much of the mother, by name.
pub const MOTHERS: [&str; 2] = ["body", "outline"];
const THRESHOLD_KEYS: [&str; 3] = ["tape-cm", "heart-low", "heart-high"];
/// What a threshold may be: tape in cm, limits of the heart in beats a minute. The heart's limits may only be moved to where
/// more calls for action, or back: never under 100 and never over 180.
const TAPE_CM: std::ops::RangeInclusive<i64> = 1..=4;
const HEART_LOW: std::ops::RangeInclusive<i64> = 100..=120;
const HEART_HIGH: std::ops::RangeInclusive<i64> = 160..=180;

#[derive(Deserialize, Default)]
#[serde(rename_all = "kebab-case")]
struct File {
    name: Option<Spanned<String>>,
    come_in: Option<Spanned<String>>,
    #[serde(default)]
    telephone: Telephone,
    #[serde(default)]
    family_page: FamilyPage,
    #[serde(default)]
    thresholds: OwnThresholds,
    #[serde(default)]
    words: BTreeMap<String, BTreeMap<String, Spanned<String>>>,
    #[serde(default)]
    signed: BTreeMap<String, OwnSignature>,
}

#[derive(Deserialize)]
struct OwnSignature {
    on: Spanned<String>,
    by: Spanned<String>,
    of: Spanned<String>,
}

#[derive(Deserialize, Default)]
#[serde(rename_all = "kebab-case")]
struct FamilyPage {
    #[serde(default)]
    invite_listening: bool,
    skin: Option<Spanned<String>>,
    mother: Option<Spanned<String>>,
}

#[derive(Deserialize, Default)]
#[serde(rename_all = "kebab-case")]
struct OwnThresholds {
    tape_cm: Option<Spanned<i64>>,
    heart_low: Option<Spanned<i64>>,
    heart_high: Option<Spanned<i64>>,
}

#[derive(Deserialize, Default)]
#[serde(rename_all = "kebab-case")]
struct Telephone {
    labour_ward: Option<Spanned<String>>,
    day: Option<Spanned<String>>,
    night: Option<Spanned<String>>,
    emergency: Option<Spanned<String>>,
    #[serde(default)]
    other: Vec<Spanned<Other>>,
}

#[derive(Deserialize)]
struct Other {
    number: Spanned<String>,
    r#for: Spanned<String>,
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
                    .expecting(
                        "a name and telephone numbers between quotes; thresholds as whole numbers; invite-listening as \
                         true or false; skin and mother between quotes",
                    ),
            );
            File::default()
        }
    };
    let mut number = |value: Option<Spanned<String>>| text(file, &mut problems, value, is_number);
    let Telephone { labour_ward, day, night, emergency, other: others } = parsed.telephone;
    let (labour_ward, day, night, emergency) =
        (number(labour_ward), number(day), number(night), number(emergency));
    let name = text(file, &mut problems, parsed.name, is_name);
    let come_in = text(file, &mut problems, parsed.come_in, is_name);
    if let Some(third) = others.get(MOST_OTHERS) {
        let message = format!("more than {MOST_OTHERS} other numbers");
        problems.push(
            Problem::at("clinic-value", file, third.span(), message)
                .expecting("two at most, so that the one for day and night is found"),
        );
    }
    let mut other = vec![];
    for one in others {
        let one = one.into_inner();
        let number = text(file, &mut problems, Some(one.number), is_number);
        let purpose = text(file, &mut problems, Some(one.r#for), is_name);
        other.extend(number.zip(purpose).map(|(number, purpose)| OtherNumber { number, purpose }));
    }
    let usual = Thresholds::default();
    let own = parsed.thresholds;
    let mut threshold = |value, range, unit, usual| number_in(file, &mut problems, value, range, unit, usual);
    let thresholds = Thresholds {
        tape_cm: threshold(own.tape_cm, TAPE_CM, "cm", usual.tape_cm),
        heart_low: threshold(own.heart_low, HEART_LOW, "beats a minute", usual.heart_low),
        heart_high: threshold(own.heart_high, HEART_HIGH, "beats a minute", usual.heart_high),
    };
    let FamilyPage { invite_listening, skin, mother } = parsed.family_page;
    let skin = text(file, &mut problems, skin, is_skin);
    let mother = text(file, &mut problems, mother, is_mother);
    let words = own_words(file, &mut problems, parsed.words);
    let signed = signatures(file, &mut problems, parsed.signed);
    let errors = any_error(&problems);
    let problems = placed(problems, source, MOST_PROBLEMS);
    let clinic = (!errors).then_some(Clinic {
        name,
        labour_ward,
        day,
        night,
        emergency,
        other,
        come_in,
        invite_listening,
        skin,
        mother,
        thresholds,
        words,
        signed,
    });
    ClinicReading { clinic, problems }
}

fn is_skin(name: &str) -> Result<(), &'static str> {
    SKINS.contains(&name).then_some(()).ok_or("neutral, lightest, lighter, light, deep, deeper or deepest")
}

fn is_mother(name: &str) -> Result<(), &'static str> {
    MOTHERS.contains(&name).then_some(()).ok_or("body or outline")
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

/// Sentences of its own; each that cannot stand in place of ours is a problem.
fn own_words(
    file: &str,
    problems: &mut Vec<Problem>,
    given: BTreeMap<String, BTreeMap<String, Spanned<String>>>,
) -> BTreeMap<String, Own> {
    let mut out = BTreeMap::new();
    for (tag, sentences) in given {
        // A language that is not shipped is told of where its key stands.
        let Ok(language) = shipped(&tag) else { continue };
        let mut own = Own::new();
        for (id, text) in sentences {
            let span = text.span();
            let text = text.into_inner();
            match language.refuses(&id, &text) {
                None => {
                    own.insert(id, text.trim().to_owned());
                }
                Some(why) => problems.push(Problem::at("clinic-words", file, span, why).expecting(
                    "a sentence that may stand in place of ours; handspan languages review lists them",
                )),
            }
        }
        out.insert(tag, own);
    }
    out
}

fn signatures(
    file: &str,
    problems: &mut Vec<Problem>,
    given: BTreeMap<String, OwnSignature>,
) -> BTreeMap<String, Signature> {
    let mut out = BTreeMap::new();
    for (tag, one) in given {
        let on = text(file, problems, Some(one.on), is_day);
        let by = text(file, problems, Some(one.by), is_name);
        let of = text(file, problems, Some(one.of), is_checksum);
        if let (Some(on), Some(by), Some(of)) = (on, by, of) {
            out.insert(tag, Signature { on, by, of });
        }
    }
    out
}

fn is_day(text: &str) -> Result<(), &'static str> {
    text.parse::<jiff::civil::Date>().map(|_| ()).map_err(|_| "a day, such as \"2026-11-29\"")
}

fn is_checksum(text: &str) -> Result<(), &'static str> {
    let right =
        text.len() == 16 && text.bytes().all(|byte| byte.is_ascii_digit() || (b'a'..=b'f').contains(&byte));
    right.then_some(()).ok_or("the sixteen digits that handspan languages prints beside the language")
}

/// A threshold, or the usual one when it is left out or cannot stand.
fn number_in(
    file: &str,
    problems: &mut Vec<Problem>,
    value: Option<Spanned<i64>>,
    range: std::ops::RangeInclusive<i64>,
    unit: &str,
    usual: u16,
) -> u16 {
    let Some(value) = value else { return usual };
    let (span, said) = (value.span(), value.into_inner());
    if let (true, Ok(number)) = (range.contains(&said), u16::try_from(said)) {
        return number;
    }
    let expected = format!("a whole number of {unit} from {} to {}", range.start(), range.end());
    problems.push(
        Problem::at("clinic-value", file, span, format!("{said} is out of range here")).expecting(expected),
    );
    usual
}

/// Whether `text` can be printed as a telephone number; if not, what is expected.
pub fn is_number(text: &str) -> Result<(), &'static str> {
    let right = text.chars().all(|c| c.is_ascii_digit() || " +-()/.".contains(c))
        && text.chars().filter(char::is_ascii_digit).count() >= 3
        && text.chars().count() <= LONGEST_NUMBER;
    right.then_some(()).ok_or(
        "a telephone number, such as \"01632 960123\": digits, with spaces and + - ( ) / . between them",
    )
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
                        "the clinic's own file here: this looks like a visit file".to_owned()
                    }
                    _ => known.join(", "),
                })
                .suggesting(near),
            );
        }
    };
    check(table.get_ref(), &TOP_KEYS);
    for (key, value) in table.get_ref() {
        match (key.get_ref().as_ref(), value.get_ref()) {
            ("telephone", DeValue::Table(numbers)) => {
                check(numbers, &TELEPHONE_KEYS);
                for (key, value) in numbers {
                    let (true, DeValue::Array(others)) = (key.get_ref() == "other", value.get_ref()) else {
                        continue;
                    };
                    for one in others {
                        if let DeValue::Table(one) = one.get_ref() {
                            check(one, &OTHER_KEYS);
                        }
                    }
                }
            }
            ("family-page", DeValue::Table(own)) => check(own, &FAMILY_KEYS),
            ("thresholds", DeValue::Table(own)) => check(own, &THRESHOLD_KEYS),
            (of @ ("words" | "signed"), DeValue::Table(languages)) => {
                let tags: Vec<&'static str> =
                    crate::words::LANGUAGES.iter().map(|language| language.tag).collect();
                check(languages, &tags);
                for value in languages.values().filter(|_| of == "signed") {
                    if let DeValue::Table(signature) = value.get_ref() {
                        check(signature, &SIGNED_KEYS);
                    }
                }
            }
            _ => {}
        }
    }
    problems
}
