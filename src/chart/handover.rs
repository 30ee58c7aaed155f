//! The handover. In: an entry. Out: situation, background, assessment, recommendation; what cannot wait stands first.

use super::entry::Entry;
use super::paragraph::{Column, paragraph};
use crate::words::WordsError;

/// What a handover says of her background: key and the message for when it is not recorded.
const HISTORY: [(&str, &str); 4] = [
    ("mother.births-before", "history-births-before"),
    ("mother.operations", "history-operations"),
    ("mother.womb-cut", "history-womb-cut"),
    ("mother.placenta", "history-placenta"),
];

/// What she says today.
fn is_situation(key: &str) -> bool {
    ["mother.movements", "mother.reports", "mother.denies"].contains(&key)
}

/// Dates, and what was before today.
fn is_background(key: &str) -> bool {
    !key.contains('.') && key != "note"
        || key == "mother.earlier-tapes"
        || HISTORY.iter().any(|(history, _)| *history == key)
}

/// The handover as text.
pub fn text(entry: &Entry<'_>) -> Result<String, WordsError> {
    let words = entry.words;
    let part = |id: &str, lines: &[String]| -> Result<String, WordsError> {
        let lines: String = lines
            .iter()
            .filter(|line| !line.is_empty())
            .map(|line| paragraph(line, Column::Indented))
            .collect();
        Ok(format!("{}\n{lines}", words.say(id, &[])?))
    };
    let (act_now, others) = entry.act_now_and_others()?;

    let mut situation: Vec<String> = act_now.iter().map(|line| line.text.clone()).collect();
    situation.push(entry.opening()?);
    situation.push(entry.conclusions()?.join(" "));
    situation.push(entry.findings(is_situation)?);

    let mut missing = vec![];
    for (key, name) in HISTORY {
        if entry.exam.read.iter().all(|(read, _)| read != key) {
            missing.push(words.say(name, &[])?);
        }
    }
    let mut background = vec![entry.findings(is_background)?];
    if !missing.is_empty() {
        background.push(words.say("history-not-recorded", &[("names", &missing.join(", ").to_lowercase())])?);
    }

    let found = |key: &str| !is_situation(key) && !is_background(key);
    let assessment = [entry.boxes()?, entry.findings(found)?, entry.not_examined()?];

    let mut recommendation = vec![];
    if !act_now.is_empty() {
        let ids: Vec<&str> = act_now.iter().map(|line| line.id).collect();
        recommendation.push(words.say("handover-first", &[("ids", &ids.join(", "))])?);
    }
    recommendation.extend(others.into_iter().map(|line| line.text));
    if act_now.is_empty() && recommendation.is_empty() {
        recommendation.push(entry.no_remarks()?);
    }
    recommendation.push(words.say("handover-guidance", &[])?);

    let parts = [
        part("handover-situation", &situation)?,
        part("handover-background", &background)?,
        part("handover-assessment", &assessment)?,
        part("handover-recommendation", &recommendation)?,
        format!("{}\n", words.say("handover-line", &[])?),
        paragraph(&format!("{} {}", entry.cautions()?, entry.versions()?), Column::Margin),
    ];
    Ok(parts.join("\n"))
}
