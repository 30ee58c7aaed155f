//! `rules`. In: nothing. Out: the rules as text or JSON, a row a rule.

use crate::reckon::ledger::{LEDGER_VERSION, RULES};
use serde::Serialize;

#[derive(Serialize)]
struct Row {
    id: &'static str,
    grade: &'static str,
    meaning: &'static str,
    #[serde(skip_serializing_if = "str::is_empty")]
    formula: &'static str,
    source: &'static str,
    trust: &'static str,
    checked: &'static str,
    audience: &'static str,
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    no_page: bool,
}

fn rows() -> Vec<Row> {
    let row = |rule: &'static crate::reckon::Rule| Row {
        id: rule.id,
        grade: rule.grade.map_or("number", |grade| grade.name()),
        meaning: rule.meaning,
        formula: rule.formula,
        source: rule.ground(),
        trust: rule.trust.name(),
        checked: rule.checked,
        audience: rule.audience.name(),
        no_page: rule.no_page,
    };
    RULES.iter().map(row).collect()
}

/// The ledger as text: for each rule its id and grade, what it means, and where it comes from.
pub fn text() -> String {
    let mut text = format!("The rules of {LEDGER_VERSION}. \"seen\": printed in a document that was read.\n");
    for row in rows() {
        let formula = if row.formula.is_empty() { String::new() } else { format!(": {}", row.formula) };
        let ground = if row.source == row.trust {
            row.source.to_owned()
        } else {
            format!("{}; {}, checked {}", row.source, row.trust, row.checked)
        };
        text.push_str(&format!(
            "\n{} ({}, for the {}{})\n  {}{formula}\n  {ground}\n",
            row.id,
            row.grade,
            row.audience,
            if row.no_page { "; no family page while it stands" } else { "" },
            row.meaning
        ));
    }
    text
}

/// The ledger as JSON, one object a line; `grade` is `number` for a rule that makes no remark.
pub fn json() -> Result<String, serde_json::Error> {
    rows().iter().map(|row| Ok(serde_json::to_string(row)? + "\n")).collect()
}
