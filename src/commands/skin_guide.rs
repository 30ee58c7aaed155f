//! `skin-guide`. In: an exam and options. Out: for each baby the steps as pictures and, on the back, their numbers; a tracing sheet at
//! true size; or the reason why there is none.
//!
//! As for the family page, nothing is made while anything stands that cannot wait or cannot be right; what cannot wait may
//! be named with `--despite`.

mod drawn;

use super::against::{self, Asked};
use super::languages::{self, Draft, Tongues};
use super::load;
use super::picture::Maker;
use super::{Format, Outcome, Paper, Source, exit};
use crate::exam::{Conclusion, Exam};
use crate::figure::Palette;
use crate::figure::artist::Handed;
use crate::fonts::Fonts;
use crate::report::Look;
use crate::sheet::Sheet;
use crate::sheet::skin::Length;
use crate::words::{Part, Words};
use crate::write::TextAs;
use drawn::{Drawn, not_traced};

/// The guide to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SkinGuide {
    /// The exam.
    pub exam: Source,
    /// The kind of file.
    pub format: Format,
    /// Language tag; two with a comma between stand side by side.
    pub lang: String,
    /// What becomes of a language that nobody has signed.
    pub draft: Draft,
    /// How it is drawn.
    pub look: GuideLook,
    /// The clinic's file, for its thresholds.
    pub clinic: Option<Source>,
    /// Ids of act-now remarks despite which the guide is made.
    pub despite: Vec<String>,
}

/// How a guide is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct GuideLook {
    /// Paper.
    pub paper: Paper,
    /// How much of the baby is drawn.
    pub length: Length,
    /// Her skin, which decides the pen.
    pub palette: Palette,
    /// The hand that holds the pen.
    pub handed: Handed,
}

impl GuideLook {
    /// The whole baby, by a right-handed artist, on this paper.
    pub fn on(paper: Paper) -> Self {
        GuideLook { paper, length: Length::Whole, palette: Palette::Neutral, handed: Handed::Right }
    }
}

/// Make the guide, unless something stands against it.
pub fn run(options: &SkinGuide, look: Look) -> Outcome {
    let parts = [Part::Family, Part::Picture, Part::Guide];
    let tongues = match Tongues::chosen(&options.lang, options.draft, &parts) {
        Ok(tongues) => tongues,
        Err(fault) => return load::wordless(&fault),
    };
    let (clinic, clinic_problems, clinic_failed) = load::clinic(options.clinic.as_ref(), look);
    let loaded = load::exam(&options.exam, clinic.as_ref());
    let exam = match loaded.exam(look) {
        Ok(exam) => exam,
        Err(outcome) => return *outcome,
    };
    let asked = Asked { document: "skin guide", despite: &options.despite };
    let mut notes = match against::look(&loaded, &asked, look, tongues.english()) {
        Ok(notes) => notes,
        Err(outcome) => return *outcome,
    };
    notes.push_str(&clinic_problems);
    if clinic_failed {
        let why = "the clinic's file has a fault".to_owned();
        return Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() };
    }
    match files(exam, &loaded.reckoning.conclusions, options, &tongues) {
        Ok((pages, left_out)) => {
            if let Some(why) = left_out {
                notes.push_str(&format!("{}: {why}\n", loaded.name));
            }
            Outcome { notes, pages, made: "the skin guide", code: loaded.code(), ..Outcome::default() }
        }
        Err(why) => {
            notes.push_str(&format!("{}: no skin guide is made: {why}\n", loaded.name));
            Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() }
        }
    }
}

/// The finished files: one PDF, or a file a page. Pages of two languages stand side by side; tracing sheets are of true size and
/// follow one another. Beside them why there is no tracing sheet, where there is none.
fn files(
    exam: &Exam,
    conclusions: &[Conclusion],
    options: &SkinGuide,
    tongues: &Tongues,
) -> Result<(Vec<Vec<u8>>, Option<String>), String> {
    let fonts = Fonts::load().map_err(|e| e.to_string())?;
    let languages = tongues.pages();
    let words = languages.first().ok_or("no language is named")?;
    let drawn = Drawn::of(exam, conclusions, options.look, words)?;
    let mut sheets =
        languages::sheets(languages, &fonts, |words, draft| drawn.guide(words, &fonts, draft).pages())?;
    for words in languages {
        let mut tracing = drawn.guide(words, &fonts, None).tracing()?;
        languages::mark(&mut tracing, words, &fonts)?;
        sheets.extend(tracing);
    }
    let left_out = not_traced(drawn.pose(), tongues.english()).map_err(|e| e.to_string())?;
    let files = Maker::new(words, &fonts).files(&sheets, options.format, TextAs::Text, None)?;
    Ok((files, left_out))
}

/// The sheets: two sides for each baby, then the tracing sheet where there is one; or why there are none.
pub fn skin_sheets(
    exam: &Exam,
    conclusions: &[Conclusion],
    look: GuideLook,
    words: &Words,
    fonts: &Fonts,
) -> Result<Vec<Sheet>, String> {
    let drawn = Drawn::of(exam, conclusions, look, words)?;
    let guide = drawn.guide(words, fonts, None);
    let mut sheets = guide.pages()?;
    sheets.extend(guide.tracing()?);
    Ok(sheets)
}
