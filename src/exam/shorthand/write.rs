//! The line of an exam. In: an exam. Out: one line of shorthand that reads back to the same exam.
//!
//! Sides are written in full or as codes of positions; left and direct mento-posterior are spelled out.

use super::super::dates::written;
use super::super::model::*;
use super::super::say;

/// `exam` in one line: its weeks and dates, then the mother, then the babies, each in the order of the hands.
pub fn line(exam: &Exam) -> String {
    let mut parts: Vec<String> = vec![];
    let mut findings = say::findings(exam);
    let mut dates = dates_of(&exam.dates);
    let of =
        |key: &str| key.strip_prefix("baby.").and_then(|rest| rest.split('.').next()?.parse::<usize>().ok());
    findings.retain(|(key, _)| key != "note");
    let babies = exam.babies.len();
    let (mut mothers, rest): (Vec<_>, Vec<_>) = findings.into_iter().partition(|(key, _)| of(key).is_none());
    if mothers.first().is_some_and(|(key, _)| key == "weeks") {
        parts.push(mothers.remove(0).1);
    }
    parts.append(&mut dates);
    parts.extend(said(&mothers));
    for number in 1..=babies {
        let mut own: Vec<(String, String)> =
            rest.iter().filter(|(key, _)| of(key) == Some(number)).cloned().collect();
        conclusions_first(&mut own);
        let words = said(&own).join("; ");
        if babies < 2 {
            parts.extend((!words.is_empty()).then_some(words));
        } else {
            parts.push(format!("/ baby {number}: {words}").trim_end().to_owned());
        }
    }
    if let Some(note) = &exam.note {
        let escaped = note.replace('\\', "\\\\").replace('"', "\\\"").replace('\n', "\\n");
        parts.push(format!("note \"{escaped}\""));
    }
    parts.join("; ")
}

fn dates_of(dates: &Dates) -> Vec<String> {
    let Dates { visit, due, last_period, cycle, scan } = *dates;
    [
        visit.map(|day| format!("visit {}", written(day))),
        due.map(|day| format!("EDD {}", written(day))),
        last_period.map(|day| format!("last period {}", written(day))),
        cycle.map(|days| format!("cycle {days}")),
        scan.map(|(at, day)| format!("scan {at} on {}", written(day))),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Lie, presentation, position and fifths head the findings of a baby, as charts have them.
fn conclusions_first(own: &mut [(String, String)]) {
    let order = ["lie", "presentation", "position", "head-above-brim", "descent"];
    own.sort_by_key(|(key, _)| {
        let name = key.rsplit('.').next().unwrap_or(key);
        order.iter().position(|known| *known == name).unwrap_or(order.len())
    });
}

fn said(findings: &[(String, String)]) -> Vec<String> {
    let plain = |name: &str, words: &str| {
        findings.iter().any(|(key, said)| key.rsplit('.').next() == Some(name) && said == words)
    };
    let section = plain("operations", "caesarean") && plain("womb-cut", "low transverse");
    let regular = plain("heart", "heard") && plain("heart-rhythm", "regular");
    let mut out = vec![];
    for (key, words) in findings {
        let name = key.rsplit('.').next().unwrap_or(key);
        match name {
            "operations" if section => out.push("LSCS".to_owned()),
            "heart" if regular => out.push("FHHR".to_owned()),
            "womb-cut" if section => {}
            "heart-rhythm" if regular => {}
            _ => out.push(finding(name, words)),
        }
    }
    out
}

fn finding(name: &str, words: &str) -> String {
    // What is denied ends at a plus.
    let words = listed(words, if name == "denies" { "," } else { " +" });
    let state = words.starts_with("could not tell") || words.starts_with("not ") || words == "none";
    let value = |lead: &str| format!("{lead} {words}");
    match name {
        "position" if !state => match words.strip_prefix("MP") {
            Some(rest) => format!("direct mento-posterior{rest}"),
            None => words,
        },
        "presentation" if words.starts_with("cephalic") => words.replacen("cephalic", "ceph", 1),
        "head-above-brim" if !state => match words.split_at_checked(3) {
            Some((fifths, rest)) => format!("{fifths} palp{rest}"),
            None => words,
        },
        "head-above-brim" => value("fifths"),
        "fundal-height" => value("SFH"),
        "heart-rate" => value("FHR"),
        "heart" if words == "not heard" => "FHNH".to_owned(),
        "heart" if words.starts_with("heard") => words.replacen("heard", "FHH", 1),
        "heart" if !state => value("FHH"),
        "heart" => value("heart"),
        "births-before" if !state => format!("P{words}"),
        "movements" => value("FM"),
        // "breech fundus" would be read as a breech.
        "breech" if words.starts_with("fundus") => format!("breech at {words}"),
        // A sign before a number parts things in a line.
        "station" if !state => match words.split_at_checked(1) {
            Some(("-", rest)) => format!("station minus {rest}"),
            Some(("+", rest)) => format!("station plus {rest}"),
            _ => value("station"),
        },
        "weight-by-hand" => value("weight by hand"),
        "weight-by-scan" => value("weight by scan"),
        _ => value(&name.replace('-', " ")),
    }
}

/// Values of a list, with `between` between them: a semicolon ends a finding. What stands in brackets is left as it is.
fn listed(words: &str, between: &str) -> String {
    let mut out = String::new();
    let mut depth = 0_u32;
    for c in words.chars() {
        match c {
            '(' => depth += 1,
            ')' => depth = depth.saturating_sub(1),
            _ => {}
        }
        if c == ';' && depth == 0 { out.push_str(between) } else { out.push(c) }
    }
    out
}
