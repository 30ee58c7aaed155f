//! Every sentence about an exam, one Fluent file a language.
//!
//! In: a message id and its values. Out: the finished sentence; a missing message or value is an error, never a gap.

mod own;
mod parts;

pub use own::{Own, is_sentence, one_line};
pub use parts::Part;

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use std::collections::BTreeSet;
use std::fmt;

/// A language that is shipped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Language {
    /// Its tag.
    pub tag: &'static str,
    /// Its message file.
    pub text: &'static str,
    /// The messages under it: what its own file does not say is said as there.
    pub under: Option<&'static str>,
}

const ENGLISH: &str = include_str!("../../layouts/words/en.ftl");

/// The languages that are shipped, the one that the others are held against first.
pub const LANGUAGES: [Language; 6] = [
    Language { tag: "en", text: ENGLISH, under: None },
    Language { tag: "en-US", text: include_str!("../../layouts/words/en-US.ftl"), under: Some(ENGLISH) },
    Language { tag: "es", text: include_str!("../../layouts/words/es.ftl"), under: None },
    Language { tag: "fr", text: include_str!("../../layouts/words/fr.ftl"), under: None },
    Language { tag: "pt", text: include_str!("../../layouts/words/pt.ftl"), under: None },
    Language { tag: "pl", text: include_str!("../../layouts/words/pl.ftl"), under: None },
];

impl Language {
    /// Whether it has every message of a part.
    pub fn has(&self, part: Part) -> bool {
        self.lacks(&[part]).is_none()
    }

    /// The first of these parts of which it has not every message.
    fn lacks(&self, parts: &[Part]) -> Option<Part> {
        if self.under.is_some() || self.text == ENGLISH {
            return None;
        }
        let own: BTreeSet<&str> = ids(self.text).collect();
        let lacking: BTreeSet<Part> =
            ids(ENGLISH).filter(|id| !own.contains(id)).filter_map(Part::of).collect();
        parts.iter().copied().find(|part| lacking.contains(part))
    }
}

/// The names of the messages of a file, in its order. A message begins its line; attributes, comments and lines that go on do not.
fn ids(text: &str) -> impl Iterator<Item = &str> {
    let starts = |line: &&str| line.starts_with(|c: char| c.is_ascii_lowercase());
    text.lines().filter(starts).filter_map(|line| Some(line.split_once(" =")?.0))
}

/// A language that was not found, or a message that could not be said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WordsError(pub String);

impl fmt::Display for WordsError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for WordsError {}

/// Digits of a number that is counted; longer ones are written as they are.
const LONGEST_COUNT: usize = 4;

/// The words of one language.
pub struct Words {
    lang: String,
    ids: Vec<String>,
    /// Whether a clinic has signed it as it stands.
    signed: bool,
    bundle: FluentBundle<FluentResource>,
}

impl Words {
    /// The words of a shipped language that has every message.
    pub fn load(lang: &str) -> Result<Self, WordsError> {
        Self::load_for(lang, &Part::ALL)
    }

    /// The words of a shipped language, for what needs these parts of its messages.
    pub fn load_for(lang: &str, parts: &[Part]) -> Result<Self, WordsError> {
        let language = shipped(lang)?;
        if let Some(missing) = language.lacks(parts) {
            let there: Vec<&str> = LANGUAGES.iter().filter(|l| l.has(missing)).map(|l| l.tag).collect();
            let (what, there) = (missing.name(), there.join(", "));
            return Err(WordsError(format!(
                "language `{lang}` has no words for {what}; here there is {there}"
            )));
        }
        Self::of(language)
    }

    fn of(language: &Language) -> Result<Self, WordsError> {
        let mut words = Self::from_text(language.tag, language.under.unwrap_or(language.text))?;
        if language.under.is_some() {
            words.bundle.add_resource_overriding(resource(language.tag, language.text)?);
        }
        Ok(words)
    }

    /// The words in `text`, a Fluent file.
    pub fn from_text(lang: &str, text: &str) -> Result<Self, WordsError> {
        let id = lang.parse().map_err(|_| WordsError(format!("`{lang}` is not a language tag")))?;
        let resource = resource(lang, text)?;
        let mut bundle = FluentBundle::new(vec![id]);
        // Isolation marks would stand in the printed text as stray characters.
        bundle.set_use_isolating(false);
        bundle
            .add_resource(resource)
            .map_err(|_| WordsError(format!("words `{lang}`: a message is defined twice")))?;
        let ids = ids(text).map(str::to_owned).collect();
        Ok(Self { lang: lang.to_owned(), ids, signed: false, bundle })
    }

    /// Whether a native clinician has signed the language; what is not signed is printed as a draft.
    pub fn is_signed(&self) -> bool {
        self.signed || self.say("language-signed", &[]).is_ok_and(|said| said == "yes")
    }

    /// Takes the words for signed: a clinic has signed these very sentences.
    pub fn sign(&mut self) {
        self.signed = true;
    }

    /// Whether visit files are written in the words of this language: then keys and codes are said as they are written there.
    pub fn is_of_exams(&self) -> bool {
        self.say("language-of-exams", &[]).is_ok_and(|said| said == "yes")
    }

    /// The language tag.
    pub fn lang(&self) -> &str {
        &self.lang
    }

    /// Whether there is a message `id`.
    pub fn has(&self, id: &str) -> bool {
        self.bundle.has_message(id)
    }

    /// The names of all messages, in the order of the file.
    pub fn ids(&self) -> impl Iterator<Item = &str> {
        self.ids.iter().map(String::as_str)
    }

    /// A number with this many decimals at most, with the decimal sign of the language; trailing zeros are left out.
    pub fn number(&self, value: f64, decimals: usize) -> Result<String, WordsError> {
        let mut text = format!("{value:.decimals$}");
        if decimals > 0 {
            text.truncate(text.trim_end_matches('0').trim_end_matches('.').len());
        }
        Ok(text.replace('.', &self.say("decimal-sign", &[])?))
    }

    /// The message `id` with its values filled in. Whole numbers choose between forms (one week, two weeks); broken ones take the
    /// decimal sign of the language.
    pub fn say(&self, id: &str, values: &[(&str, &str)]) -> Result<String, WordsError> {
        let pattern = self
            .bundle
            .get_message(id)
            .and_then(|message| message.value())
            .ok_or_else(|| WordsError(format!("words `{}`: there is no message `{id}`", self.lang)))?;
        let mut args = FluentArgs::new();
        for (name, value) in values {
            args.set(*name, self.value(name, value));
        }
        let mut faults = vec![];
        let said = self.bundle.format_pattern(pattern, Some(&args), &mut faults).into_owned();
        match faults.first() {
            None => Ok(said),
            Some(fault) => Err(WordsError(format!("words `{}`, message `{id}`: {fault}", self.lang))),
        }
    }

    fn value<'a>(&self, name: &str, value: &'a str) -> FluentValue<'a> {
        let whole = value.len() <= LONGEST_COUNT && value.bytes().all(|b| b.is_ascii_digit());
        // A telephone number stays as it was written.
        if name != "number" && whole && (value == "0" || !value.starts_with('0')) && !value.is_empty() {
            return FluentValue::try_number(value);
        }
        if name != "number" && is_broken_number(value) {
            let sign = self.bundle.get_message("decimal-sign").and_then(|message| message.value());
            let sign = sign.map(|sign| self.bundle.format_pattern(sign, None, &mut vec![]));
            return FluentValue::from(value.replace('.', sign.as_deref().unwrap_or(".")));
        }
        FluentValue::from(value)
    }
}

fn is_broken_number(text: &str) -> bool {
    let digits = |part: &str| !part.is_empty() && part.bytes().all(|b| b.is_ascii_digit());
    let text = text.strip_prefix('-').unwrap_or(text);
    text.split_once('.').is_some_and(|(whole, broken)| digits(whole) && digits(broken))
}

/// The shipped language of this tag; if there is none, which there are.
pub fn shipped(lang: &str) -> Result<&'static Language, WordsError> {
    LANGUAGES.iter().find(|language| language.tag == lang).ok_or_else(|| {
        let known: Vec<&str> = LANGUAGES.iter().map(|language| language.tag).collect();
        WordsError(format!("language `{lang}` is not shipped; there is {}", known.join(", ")))
    })
}

/// The words with a capital at their start.
pub fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

fn resource(lang: &str, text: &str) -> Result<FluentResource, WordsError> {
    if let Some(at) = broken_escape(text) {
        let line = text[..at].lines().count().max(1);
        let wanted = "write `\\u` with four digits or letters a to f, such as `\\u00A0`, `\\U` with six";
        return Err(WordsError(format!("words `{lang}`, line {line}: {wanted}")));
    }
    FluentResource::try_new(text.to_owned())
        .map_err(|(_, faults)| WordsError(format!("words `{lang}`: {}", faults[0])))
}

/// Where a character is written by its number and the number is not all there: the parser cuts the text by bytes after it.
fn broken_escape(text: &str) -> Option<usize> {
    text.match_indices('\\').map(|(at, _)| at).find(|at| {
        let mut rest = text[at + 1..].chars();
        let digits = match rest.next() {
            Some('u') => 4,
            Some('U') => 6,
            _ => return false,
        };
        rest.take(digits).filter(char::is_ascii_hexdigit).count() < digits
    })
}
