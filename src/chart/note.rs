//! The chart note. In: an entry. Out: what cannot wait, one line of shorthand, a paragraph, the other remarks, cautions.

use super::entry::Entry;
use super::paragraph::{Column, paragraph};
use crate::exam::shorthand;
use crate::words::WordsError;

/// The note as text.
pub fn text(entry: &Entry<'_>) -> Result<String, WordsError> {
    let margin = |text: &str| paragraph(text, Column::Margin);
    let (act_now, others) = entry.act_now_and_others()?;
    let mut blocks: Vec<String> = act_now.iter().map(|line| margin(&line.text)).collect();
    // Its codes are built otherwise in other languages.
    if entry.words.is_of_exams() {
        blocks.push(format!("{}\n", shorthand::line(entry.exam)));
    }
    blocks.push(margin(&entry.boxes()?));
    blocks.push(margin(&body(entry)?));
    blocks.extend(others.iter().map(|line| margin(&line.text)));
    if act_now.is_empty() && others.is_empty() {
        blocks.push(margin(&entry.no_remarks()?));
    }
    blocks.push(margin(&format!("{} {}", entry.cautions()?, entry.versions()?)));
    Ok(blocks.join("\n"))
}

/// The paragraph: what was found, what was not examined, what follows.
pub fn body(entry: &Entry<'_>) -> Result<String, WordsError> {
    let mut parts = vec![entry.opening()?, entry.findings(|_| true)?, entry.not_examined()?];
    parts.extend(entry.conclusions()?);
    parts.retain(|part| !part.is_empty());
    Ok(parts.join(" "))
}
