//! The languages of a document: one, or two side by side. In: language tags, and what becomes of a draft. Out: their words; sheets
//! in each, a draft marked as one with the English beside it.
//!
//! A draft is a language that no native clinician has signed. What is said to whoever runs the program is English.

use crate::chart::paragraph::{Column, paragraph};
use crate::clinic::Clinic;
use crate::fonts::Fonts;
use crate::sheet::{Sheet, beside, mark_as_draft};
use crate::words::{Own, Part, Words, WordsError, shipped};

/// What becomes of a language that is a draft.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Draft {
    /// It is refused.
    #[default]
    Refused,
    /// It is printed marked as one, with the English beside it.
    Beside,
    /// It is shown marked as one, alone: for a page that says so itself and can change to English.
    OnScreen,
}

impl Draft {
    /// As `--draft` asks for it.
    pub fn asked(asked: bool) -> Self {
        if asked { Draft::Beside } else { Draft::Refused }
    }
}

/// The languages of `lang`, which may be two with a comma between, for all that needs these parts of the messages.
pub fn chosen(lang: &str, draft: Draft, parts: &[Part]) -> Result<Vec<Words>, WordsError> {
    chosen_by(lang, draft, parts, &Clinic::default())
}

/// The same, as this clinic says them: with its corrections; a language that it has signed is no draft for its families.
fn chosen_by(lang: &str, draft: Draft, parts: &[Part], clinic: &Clinic) -> Result<Vec<Words>, WordsError> {
    let tags: Vec<&str> = lang.split(',').map(str::trim).collect();
    let load = |tag: &&str| {
        let mut words = Words::load_for(tag, parts)?;
        if let Some(own) = clinic.words.get(*tag) {
            words.correct(own)?;
        }
        if parts == [Part::Family] && signature(tag, clinic)? == Signed::AsItStands {
            words.sign();
        }
        Ok(words)
    };
    let mut languages = tags.iter().map(load).collect::<Result<Vec<_>, WordsError>>()?;
    let drafts: Vec<&str> = languages.iter().filter(|l| !l.is_signed()).map(Words::lang).collect();
    let fault = match (tags.as_slice(), drafts.as_slice(), draft) {
        ([one, other], _, _) if one == other => format!("--lang {one},{other}: name two languages, or one"),
        ([_, _, _, ..], _, _) => format!("--lang {lang}: two languages stand side by side at most"),
        (_, [draft, ..], Draft::Refused) => format!(
            "language `{draft}` is a draft: no native clinician has signed it; --draft prints it marked as one, with \
             the English beside it"
        ),
        (_, [draft, other], Draft::Beside | Draft::OnScreen) => {
            format!(
                "--lang {draft},{other}: both are drafts; name one of them, and the English stands beside it"
            )
        }
        (_, [], Draft::Beside) => format!("--draft: language `{lang}` is no draft; leave it out"),
        _ => String::new(),
    };
    if !fault.is_empty() {
        return Err(WordsError(fault));
    }
    if let ([_], [_], Draft::Beside) = (tags.as_slice(), drafts.as_slice(), draft) {
        languages.push(english(clinic)?);
    }
    Ok(languages)
}

fn english(clinic: &Clinic) -> Result<Words, WordsError> {
    let mut words = Words::load("en")?;
    if let Some(own) = clinic.words.get("en") {
        words.correct(own)?;
    }
    Ok(words)
}

/// What a clinic's signature is worth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Signed {
    /// There is none.
    Not,
    /// The sentences are those that were signed.
    AsItStands,
    /// They have changed since.
    Before,
}

/// Whether a clinic has signed the sentences for families of a language, as they stand.
pub fn signature(tag: &str, clinic: &Clinic) -> Result<Signed, WordsError> {
    let Some(signature) = clinic.signed.get(tag) else { return Ok(Signed::Not) };
    let same = checksum(tag, clinic)? == signature.of;
    Ok(if same { Signed::AsItStands } else { Signed::Before })
}

/// The checksum of the sentences for families, as this clinic says them.
pub fn checksum(tag: &str, clinic: &Clinic) -> Result<String, WordsError> {
    let none = Own::new();
    Ok(shipped(tag)?.family_checksum(clinic.words.get(tag).unwrap_or(&none)))
}

/// That sentences have changed since they were signed, for each language of `lang`; empty when none have.
pub fn changed_since_signed(lang: &str, clinic: &Clinic) -> Result<String, WordsError> {
    let mut told = String::new();
    for tag in lang.split(',').map(str::trim) {
        if signature(tag, clinic)? == Signed::Before {
            told.push_str(&format!(
                "handspan: the sentences of `{tag}` have changed since they were signed (now {}); it is a draft until \
                 they are read again: handspan languages review {tag} -o {tag}.pdf\n",
                checksum(tag, clinic)?
            ));
        }
    }
    Ok(told)
}

/// The languages of a document, and the English of what is said to whoever runs the program; each is read once.
pub struct Tongues {
    all: Vec<Words>,
    /// How many of them are the document's.
    pages: usize,
    english: usize,
}

impl Tongues {
    /// The languages that are `chosen`.
    pub fn chosen(lang: &str, draft: Draft, parts: &[Part]) -> Result<Self, WordsError> {
        Self::chosen_by(lang, draft, parts, &Clinic::default())
    }

    /// The same, as this clinic says them.
    pub fn chosen_by(lang: &str, draft: Draft, parts: &[Part], clinic: &Clinic) -> Result<Self, WordsError> {
        let mut all = chosen_by(lang, draft, parts, clinic)?;
        let pages = all.len();
        let english = all.iter().position(|words| words.lang() == "en").unwrap_or(pages);
        if english == pages {
            all.push(self::english(clinic)?);
        }
        Ok(Tongues { all, pages, english })
    }

    /// Those of the document.
    pub fn pages(&self) -> &[Words] {
        &self.all[..self.pages]
    }

    /// The English.
    pub fn english(&self) -> &Words {
        &self.all[self.english]
    }
}

/// What a page in `words` says of a draft: that it is one, or that the page beside it is; `None` where none is printed.
pub fn said_of_draft(words: &Words, languages: &[Words]) -> Result<Option<String>, WordsError> {
    said(words, languages, "draft-beside")
}

fn said(words: &Words, languages: &[Words], english: &str) -> Result<Option<String>, WordsError> {
    match languages.iter().find(|other| !other.is_signed()) {
        None => Ok(None),
        Some(draft) if draft.lang() == words.lang() => words.say("draft-note", &[]).map(Some),
        Some(draft) => {
            let name = draft.say("language-name", &[])?;
            words.say(english, &[("language", &name)]).map(Some)
        }
    }
}

/// The sheets of every language side by side; those of a draft are marked. `make` is given the words, and what the sheets are to
/// say of a draft.
pub fn sheets<'a>(
    languages: &'a [Words],
    fonts: &Fonts,
    make: impl Fn(&'a Words, Option<String>) -> Result<Vec<Sheet>, String>,
) -> Result<Vec<Sheet>, String> {
    let mut sides: Option<Vec<Sheet>> = None;
    for words in languages {
        let said = said_of_draft(words, languages).map_err(|e| e.to_string())?;
        let mut sheets = make(words, said)?;
        mark(&mut sheets, words, fonts)?;
        sides = Some(match sides {
            None => sheets,
            Some(first) => beside(first, sheets),
        });
    }
    sides.ok_or_else(|| "no language is named".to_owned())
}

/// Marks the sheets of a draft.
pub fn mark(sheets: &mut [Sheet], words: &Words, fonts: &Fonts) -> Result<(), String> {
    if words.is_signed() {
        return Ok(());
    }
    let word = words.say("draft-mark", &[]).map_err(|e| e.to_string())?;
    for sheet in sheets {
        mark_as_draft(sheet, &word, fonts).map_err(|e| e.to_string())?;
    }
    Ok(())
}

/// Texts of every language, one after the other; each begins with what it says of a draft.
pub fn texts<'a>(
    languages: &'a [Words],
    make: impl Fn(&'a Words) -> Result<String, WordsError>,
) -> Result<String, WordsError> {
    let mut all = vec![];
    for words in languages {
        let said = said(words, languages, "draft-above")?;
        let head = said.map(|said| format!("{}\n", paragraph(&said, Column::Margin))).unwrap_or_default();
        all.push(head + &make(words)?);
    }
    Ok(all.join("\n"))
}
