//! The chart note. In: an entry. Out: one line of shorthand, what cannot wait, a paragraph, the other remarks, cautions.

use super::entry::Entry;
use super::paragraph::{Column, paragraph};
use crate::exam::Exam;
use crate::words::WordsError;

/// The one line of shorthand that heads a note; `None` while there is none.
fn shorthand(_exam: &Exam) -> Option<String> {
    None
}

/// The note as text.
pub fn text(entry: &Entry<'_>) -> Result<String, WordsError> {
    let margin = |text: &str| paragraph(text, Column::Margin);
    let (act_now, others) = entry.act_now_and_others()?;
    let mut blocks: Vec<String> = shorthand(entry.exam).map(|line| format!("{line}\n")).into_iter().collect();
    blocks.extend(act_now.iter().map(|line| margin(&line.text)));
    blocks.push(margin(&body(entry)?));
    blocks.extend(others.iter().map(|line| margin(&line.text)));
    if act_now.is_empty() && others.is_empty() {
        blocks.push(margin(&entry.words.say("check-remarks-none", &[])?));
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
