//! `languages`. In: nothing, or a language and the clinic's file. Out: each language with its state, its parts and the checksum of
//! its sentences for families; or the book in which a language is read: every sentence beside the English, by the part that it
//! stands in, the family page first, with room to correct it, and last what to write into the clinic's file.

use super::draw::Format;
use super::handout::Paper;
use super::languages::{self, Signed};
use super::load;
use super::picture::Maker;
use super::{Outcome, Source, exit};
use crate::clinic::Clinic;
use crate::fonts::Fonts;
use crate::report::Look;
use crate::sheet::{Block, Cell, Content, Kind, Layout, REVIEW, Sheet, SheetError, compose_all};
use crate::words::{LANGUAGES, Language, Own, Part, Words, is_sentence, one_line, shipped};
use crate::write::TextAs;
use std::collections::BTreeMap;

/// The book to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Review {
    /// The language, by its tag.
    pub lang: String,
    /// The kind of file.
    pub format: Format,
    /// Paper.
    pub paper: Option<Paper>,
    /// The clinic's file.
    pub clinic: Option<Source>,
}

/// Each language with its state.
pub fn list(clinic: Option<&Source>, look: Look) -> Outcome {
    let (clinic, mut notes, failed) = load::clinic(clinic, look);
    if failed {
        return Outcome { notes, code: exit::FAILED, ..Outcome::default() };
    }
    let clinic = clinic.unwrap_or_default();
    let mut text = String::new();
    for language in &LANGUAGES {
        match entry(language, &clinic) {
            Ok(entry) => text.push_str(&entry),
            Err(fault) => {
                notes.push_str(&format!("handspan: {fault}\n"));
                return Outcome { notes, code: exit::FAILED, ..Outcome::default() };
            }
        }
    }
    text.push_str(
        "A draft is printed marked as one, with the English beside it (--draft). To read one and sign it:\n  \
         handspan languages review es -o es.pdf\n",
    );
    Outcome { text, notes, ..Outcome::default() }
}

fn entry(language: &Language, clinic: &Clinic) -> Result<String, String> {
    let told = |fault: crate::words::WordsError| fault.to_string();
    let tag = language.tag;
    let words = Words::load_for(tag, &[Part::Family]).map_err(told)?;
    let name = words.say("language-name", &[]).map_err(told)?;
    let signature = clinic.signed.get(tag);
    let by = signature.map(|one| format!("{}, {}", one.by, one.on)).unwrap_or_default();
    let state = match languages::signature(tag, clinic).map_err(told)? {
        Signed::AsItStands => format!("signed for families by {by}"),
        Signed::Before => format!("draft: its sentences have changed since they were signed by {by}"),
        Signed::Not if words.is_signed() => "no draft".to_owned(),
        Signed::Not => "draft: no native clinician has signed it".to_owned(),
    };
    let lacks: Vec<&str> =
        Part::ALL.into_iter().filter(|part| !language.has(*part)).map(Part::name).collect();
    let parts = match lacks.len() {
        0 => "every part".to_owned(),
        n if n + 1 == Part::ALL.len() => format!("{} alone", Part::Family.name()),
        _ => format!("all but {}", lacks.join(" and ")),
    };
    let own = match clinic.words.get(tag).map_or(0, BTreeMap::len) {
        0 => String::new(),
        1 => "; 1 sentence of the clinic's own".to_owned(),
        n => format!("; {n} sentences of the clinic's own"),
    };
    let checksum = languages::checksum(tag, clinic).map_err(told)?;
    Ok(format!("{tag}: {name}\n  {state}\n  {parts}{own}\n  sentences for families: {checksum}\n"))
}

/// The book.
pub fn run(options: &Review, look: Look) -> Outcome {
    let (clinic, mut notes, failed) = load::clinic(options.clinic.as_ref(), look);
    if failed {
        return Outcome { notes, code: exit::FAILED, ..Outcome::default() };
    }
    match book(options, &clinic.unwrap_or_default()) {
        Ok(pages) => Outcome { notes, pages, made: "the book to read and correct", ..Outcome::default() },
        Err(why) => {
            notes.push_str(&format!("handspan: {why}\n"));
            Outcome { notes, why, code: exit::FAILED, ..Outcome::default() }
        }
    }
}

fn book(options: &Review, clinic: &Clinic) -> Result<Vec<Vec<u8>>, String> {
    let told = |fault: &dyn std::fmt::Display| fault.to_string();
    let language = shipped(&options.lang).map_err(|e| told(&e))?;
    if language.tag == "en" {
        return Err("the English is what other languages are read beside; name another".to_owned());
    }
    let none = Own::new();
    let own = clinic.words.get(language.tag).unwrap_or(&none);
    let words = Words::load_for(language.tag, &[Part::Family]).map_err(|e| told(&e))?;
    let english: BTreeMap<String, String> =
        shipped("en").map_err(|e| told(&e))?.messages().into_iter().collect();
    let name = words.say("language-name", &[]).map_err(|e| told(&e))?;
    let layout = REVIEW.read().map_err(|e| told(&e))?;
    let layout = match options.paper {
        None => layout,
        Some(paper) => layout.on_paper(paper.name()).map_err(|e| told(&e))?,
    };
    let fonts = Fonts::load().map_err(|e| told(&e))?;
    let set =
        Set { layout: &layout, words: &words, fonts: &fonts, title: format!("{name} ({})", language.tag) };
    let messages = language.messages();
    let mut sheets = vec![];
    for part in Part::ALL {
        let rows: Vec<[String; 3]> = messages
            .iter()
            .filter(|(id, _)| Part::of(id) == Some(part) && is_sentence(id))
            .map(|(id, text)| {
                let text = own.get(id).unwrap_or(text);
                [id.clone(), one_line(text), english.get(id).map(|text| one_line(text)).unwrap_or_default()]
            })
            .collect();
        let checksum = language.family_checksum(own);
        let foot = (part == Part::Family).then(|| how_to_sign(language.tag, &checksum));
        sheets.extend(set.part(part, &rows, foot)?);
    }
    Maker::new(&words, &fonts).files(&sheets, options.format, TextAs::Text, None)
}

/// What to do with the book.
fn how_to_sign(tag: &str, checksum: &str) -> Vec<Block> {
    let mut out = vec![Block::new(
        Kind::Text,
        format!(
            "Corrections go into the clinic's own file under [words.{tag}], a line each: the name of the sentence, an \
             equals sign, the sentence between quotes. When every sentence of this part is right, sign it there under \
             [signed.{tag}]: on = the day, by = your role, of = the sixteen digits that handspan languages --clinic FILE \
             prints. As it stands here they are {checksum}. A page for the family is then printed without the mark of a \
             draft, until a sentence changes."
        ),
    )];
    out.push(Block::new(Kind::Blank, "Read by (role) ____"));
    out.push(Block::new(Kind::Blank, "On ____"));
    out
}

/// What the sides of the book are set with.
struct Set<'a> {
    layout: &'a Layout,
    words: &'a Words,
    fonts: &'a Fonts,
    title: String,
}

/// Left and right edges of the columns, in thousandths.
const COLUMNS: [(u16, u16); 4] = [(0, 180), (180, 480), (480, 740), (740, 1000)];
/// Rows that are tried on the first side; then as many as the side before had, and a few more.
const FIRST_ROWS: usize = 44;
const MORE_ROWS: usize = 4;

impl Set<'_> {
    /// The sides of a part: as many rows on each as it has room for.
    fn part(&self, part: Part, rows: &[[String; 3]], foot: Option<Vec<Block>>) -> Result<Vec<Sheet>, String> {
        let mut sheets = vec![];
        let mut rest = rows;
        let mut foot = foot;
        let mut tried = FIRST_ROWS;
        while !rest.is_empty() {
            let mut count = rest.len().min(tried);
            loop {
                // What to do stands over the first rows.
                let content = self.content(part, &rest[..count], foot.as_deref().unwrap_or_default());
                match compose_all(self.layout, &[], &content, self.words, self.fonts) {
                    Ok(made) => {
                        sheets.extend(made);
                        foot = None;
                        break;
                    }
                    Err(SheetError::DoesNotFit { .. }) if count > 1 => count -= 1,
                    Err(fault) => return Err(fault.to_string()),
                }
            }
            rest = &rest[count..];
            tried = count + MORE_ROWS;
        }
        Ok(sheets)
    }

    fn content(&self, part: Part, rows: &[[String; 3]], how: &[Block]) -> Content {
        let mut head = vec![Block::new(Kind::Heading, format!("{}: {}", self.title, part.name()))];
        head.extend(how.iter().cloned());
        let heads = ["Its name", &self.title, "English", "Better"].map(str::to_owned);
        let mut table = vec![];
        for (row, cells) in std::iter::once(heads)
            .chain(
                rows.iter()
                    .map(|[id, own, english]| [id.clone(), own.clone(), english.clone(), String::new()]),
            )
            .enumerate()
        {
            for (across, text) in COLUMNS.into_iter().zip(cells) {
                let row = u16::try_from(row).unwrap_or(u16::MAX);
                // An empty cell is a space, so that the table keeps its columns.
                let text = if text.is_empty() { "\u{a0}".to_owned() } else { text };
                table.push(Block::new(Kind::Cell(Cell { row, across, head: row == 0 }), text));
            }
        }
        Content {
            title: format!("{}, beside the English", self.title),
            description: format!("{}: {}, beside the English, with room to correct", self.title, part.name()),
            blocks: BTreeMap::from([("review-head".to_owned(), head), ("review-table".to_owned(), table)]),
        }
    }
}
