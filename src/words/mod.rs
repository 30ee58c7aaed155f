//! Every sentence about an exam, one Fluent file a language.
//!
//! In: a message id and its values. Out: the finished sentence; a missing message or value is an error, never a gap.

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use std::fmt;

/// The message files that are shipped: language tag and text.
pub const LANGUAGES: [(&str, &str); 1] = [("en", include_str!("../../layouts/words/en.ftl"))];

/// A language that was not found, or a message that could not be said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WordsError(pub String);

impl fmt::Display for WordsError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for WordsError {}

/// The words of one language.
pub struct Words {
    lang: String,
    ids: Vec<String>,
    bundle: FluentBundle<FluentResource>,
}

impl Words {
    /// The words of a shipped language.
    pub fn load(lang: &str) -> Result<Self, WordsError> {
        let known: Vec<&str> = LANGUAGES.iter().map(|(tag, _)| *tag).collect();
        let (tag, text) = LANGUAGES.iter().find(|(tag, _)| *tag == lang).ok_or_else(|| {
            WordsError(format!("language `{lang}` is not shipped; there is {}", known.join(", ")))
        })?;
        Self::from_text(tag, text)
    }

    /// The words in `text`, a Fluent file.
    pub fn from_text(lang: &str, text: &str) -> Result<Self, WordsError> {
        let id = lang.parse().map_err(|_| WordsError(format!("`{lang}` is not a language tag")))?;
        let resource = FluentResource::try_new(text.to_owned())
            .map_err(|(_, faults)| WordsError(format!("words `{lang}`: {}", faults[0])))?;
        let mut bundle = FluentBundle::new(vec![id]);
        // Isolation marks would stand in the printed text as stray characters.
        bundle.set_use_isolating(false);
        bundle
            .add_resource(resource)
            .map_err(|_| WordsError(format!("words `{lang}`: a message is defined twice")))?;
        // A message begins its line; attributes, comments and lines that go on do not.
        let named = |line: &str| Some(line.split_once(" =")?.0.to_owned());
        let starts = |line: &&str| line.starts_with(|c: char| c.is_ascii_lowercase());
        let ids = text.lines().filter(starts).filter_map(named).collect();
        Ok(Self { lang: lang.to_owned(), ids, bundle })
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

    /// The message `id` with its values filled in.
    pub fn say(&self, id: &str, values: &[(&str, &str)]) -> Result<String, WordsError> {
        let pattern = self
            .bundle
            .get_message(id)
            .and_then(|message| message.value())
            .ok_or_else(|| WordsError(format!("words `{}`: there is no message `{id}`", self.lang)))?;
        let mut args = FluentArgs::new();
        for (name, value) in values {
            args.set(*name, FluentValue::from(*value));
        }
        let mut faults = vec![];
        let said = self.bundle.format_pattern(pattern, Some(&args), &mut faults).into_owned();
        match faults.first() {
            None => Ok(said),
            Some(fault) => Err(WordsError(format!("words `{}`, message `{id}`: {fault}", self.lang))),
        }
    }
}
