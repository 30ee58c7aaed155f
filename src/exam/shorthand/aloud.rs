//! What was understood, said back. In: an exam. Out: one line that can be heard: no code, no fraction, no sign that a voice
//! would swallow; sides are in full.

use super::super::model::*;
use super::super::position;

/// The line: the mother first, then each baby, in the order of a file.
pub fn aloud(exam: &Exam) -> String {
    let mut parts: Vec<String> = vec![];
    let mut noted = None;
    for (key, value) in &exam.read {
        let name = key.rsplit('.').next().unwrap_or(key);
        if name == "note" {
            noted = Some(value.split_whitespace().collect::<Vec<_>>().join(" "));
            continue;
        }
        let said = finding(name, value);
        let baby = key.strip_prefix("baby.").and_then(|rest| rest.split('.').next());
        parts.push(match baby.filter(|_| exam.babies.len() > 1) {
            Some(number) => format!("baby {number}, {said}"),
            None => said,
        });
    }
    parts.extend(noted.map(|words| format!("kept in the note, {words}")));
    format!("{}.", parts.join("; "))
}

/// One finding; what is doubted says so.
fn finding(name: &str, value: &str) -> String {
    if let Some(sure) = value.strip_suffix('?') {
        return format!("perhaps {}", finding(name, sure));
    }
    let (words, told) = match value.split_once(" (") {
        Some((words, rest)) => (words, format!(", {}", rest.trim_end_matches(')'))),
        None => (value, String::new()),
    };
    let lead = name.replace('-', " ");
    let said = match name {
        "weeks" => weeks(words),
        "head-above-brim" => match words.split_once('/') {
            Some((fifths, _)) => {
                let many = if fifths == "1" { "fifth" } else { "fifths" };
                format!("{fifths} {many} palpable above the brim")
            }
            None => format!("{lead} {words}"),
        },
        "blood-pressure" => format!("{lead} {}", words.replace('/', " over ")),
        "station" => format!("{lead} {}", words.replace('-', "minus ").replace('+', "plus ")),
        "urine-protein" => format!("{lead} {}", words.replace('+', " plus")),
        "heart-rate" | "contractions-in-ten" => format!("{lead} {}", words.replace('-', " to ")),
        "position" => format!("position {}", position_in_full(words)),
        "labour" if words.ends_with("labour") => words.to_owned(),
        "heart-with" => format!("heard with {words}"),
        "found-by-vagina" => format!("found in the vagina, {}", words.replace("; ", " and ")),
        "scan" | "earlier-tapes" | "visit" | "due" | "last-period" => format!("{lead} {words}"),
        _ => format!("{lead} {}", words.replace("; ", " and ")),
    };
    format!("{said}{told}")
}

fn weeks(words: &str) -> String {
    match words.split_once('+') {
        Some((weeks, "0")) => format!("{weeks} weeks"),
        Some((weeks, "1")) => format!("{weeks} weeks and 1 day"),
        Some((weeks, days)) => format!("{weeks} weeks and {days} days"),
        None => words.to_owned(),
    }
}

/// A code as the words that it stands for.
fn position_in_full(code: &str) -> String {
    let row = position::rows().into_iter().find(|row| row.word == code);
    let spelled = row.and_then(|row| row.also.iter().find(|words| words.len() > 5).copied());
    spelled.unwrap_or(code).to_owned()
}
