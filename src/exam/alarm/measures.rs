//! Numbers in free words that could be an alarm: a blood pressure, a temperature. In: the text. Out: mentions with their place.

use super::{About, Mention};

/// Either number of a pressure at or over these is mentioned. Source: as `pressure-raised` of the ledger.
const PRESSURE: (u16, u16) = (140, 90);
/// From this temperature on it is mentioned, tenths of a degree C. Source: as `fever` of the ledger.
const FEVER: f64 = 38.0;
/// No temperature is over this; what is, is another number.
const HOTTEST: f64 = 43.0;

pub fn mentions(text: &str) -> Vec<(usize, Mention)> {
    let mut found = vec![];
    for (start, end) in numbers(text) {
        let number = &text[start..end];
        let about = if pressure(number) || pressure_in_cm(number) && said_pressure(text, start) {
            About::Pressure
        } else if hot(number) && said_hot(text, start, end) {
            About::Temperature
        } else {
            continue;
        };
        found.push((start, Mention { words: number.to_owned(), about }));
    }
    found
}

/// Runs of digits with points, commas and strokes inside them.
fn numbers(text: &str) -> Vec<(usize, usize)> {
    let mut found = vec![];
    let mut start = None;
    for (at, c) in text.char_indices().chain([(text.len(), ' ')]) {
        let inside = c.is_ascii_digit() || matches!(c, '.' | ',' | '/');
        match (inside, start) {
            (true, None) if c.is_ascii_digit() => start = Some(at),
            (false, Some(from)) => {
                let kept = text[from..at].trim_end_matches(['.', ',', '/']);
                found.push((from, from + kept.len()));
                start = None;
            }
            _ => {}
        }
    }
    found
}

/// Two numbers that are a raised pressure.
fn pressure(number: &str) -> bool {
    let Some((upper, lower)) = number.split_once('/') else { return false };
    let (Ok(upper), Ok(lower)) = (upper.parse::<u16>(), lower.parse::<u16>()) else { return false };
    let is_one = (70..=280).contains(&upper) && (40..=180).contains(&lower) && upper > lower;
    is_one && (upper >= PRESSURE.0 || lower >= PRESSURE.1)
}

/// The same in centimetres of mercury, as it is said where French and Spanish are spoken: 15/9.
fn pressure_in_cm(number: &str) -> bool {
    let part = |text: &str| text.replace(',', ".").parse::<f64>().ok();
    let Some((upper, lower)) = number.split_once('/') else { return false };
    let (Some(upper), Some(lower)) = (part(upper), part(lower)) else { return false };
    let is_one = (7.0..=28.0).contains(&upper) && (4.0..=18.0).contains(&lower) && upper > lower;
    is_one && (upper * 10.0 >= f64::from(PRESSURE.0) || lower * 10.0 >= f64::from(PRESSURE.1))
}

/// Whether the word before the number says that it is a pressure.
fn said_pressure(text: &str, start: usize) -> bool {
    let before = text[..start].trim_end_matches([' ', ':', '=', '-']).to_lowercase();
    let word = before.rsplit(|c: char| !c.is_alphabetic()).next().unwrap_or_default();
    [
        "bp",
        "ta",
        "tension",
        "tensión",
        "artérielle",
        "arterial",
        "pa",
        "pressão",
        "pressao",
        "ciśnienie",
        "cisnienie",
        "rr",
    ]
    .contains(&word)
}

fn hot(number: &str) -> bool {
    let value = number.replace(',', ".").parse::<f64>();
    value.is_ok_and(|value| (FEVER..=HOTTEST).contains(&value))
}

/// Whether the number is said to be a temperature: by a word before it or a unit after it.
fn said_hot(text: &str, start: usize, end: usize) -> bool {
    let before = text[..start].trim_end_matches([' ', ':', '=', '-']).to_lowercase();
    let word = before.rsplit(|c: char| !c.is_alphabetic() && c != '\u{b0}').next().unwrap_or_default();
    let named = [
        "t",
        "temp",
        "temperature",
        "temperatura",
        "température",
        "pyrexia",
        "fever",
        "fiebre",
        "fièvre",
        "febre",
        "tax",
        "gorączka",
        "goraczka",
        "ciepłota",
    ];
    let after = text[end..].trim_start().to_lowercase();
    let unit = ["\u{b0}c", "\u{ba}c", "c ", "degrees", "\u{b0}"];
    named.contains(&word) || after == "c" || unit.iter().any(|unit| after.starts_with(unit))
}
