//! What must stand and what must not: short visits with their remarks (`tests/published/alarms.csv`), written from guidelines.

use super::shared::rows;
use handspan::exam::{Exam, read, shorthand};
use handspan::reckon::ledger::RULES;
use handspan::reckon::{Grade, reckon};

/// The visit of a row.
fn visit(text: &str) -> Exam {
    let reading = match text.strip_prefix("say ") {
        Some(line) => shorthand::read("--say", line),
        None => read("visit.toml", file(text).as_bytes()),
    };
    reading.exam.unwrap_or_else(|| panic!("{text}: {:?}", reading.problems))
}

/// The findings of a row as a file.
fn file(text: &str) -> String {
    let (mut top, mut mother, mut babies) = (String::new(), String::new(), [String::new(), String::new()]);
    for finding in text.split("; ") {
        let (key, value) = finding.split_once('=').unwrap_or_else(|| panic!("{finding}"));
        let value = if key == "note" {
            format!("\"{value}\"")
        } else {
            let all: Vec<String> = value.split(" + ").map(|one| format!("\"{one}\"")).collect();
            if all.len() == 1 { all[0].clone() } else { format!("[{}]", all.join(", ")) }
        };
        let (place, key) = match key.split_once('.') {
            Some(("b", key)) => (&mut babies[0], key),
            Some(("b2", key)) => (&mut babies[1], key),
            _ if ["weeks", "note"].contains(&key) => (&mut top, key),
            _ => (&mut mother, key),
        };
        place.push_str(&format!("{key} = {value}\n"));
    }
    let mut file = format!("{top}[mother]\n{mother}");
    for baby in babies.iter().filter(|baby| !baby.is_empty()) {
        file.push_str(&format!("[[baby]]\n{baby}"));
    }
    file
}

#[test]
fn every_visit_has_the_remarks_it_must_and_none_it_must_not() {
    let mut wrong = vec![];
    let (mut visits, mut quiet) = (0, 0);
    for row in rows("alarms.csv") {
        let [_, text, must, must_not, _, status] = &row[..] else { panic!("{row:?}") };
        assert!(["seen", "second-hand", "common practice", "house"].contains(&status.as_str()), "{row:?}");
        visits += 1;
        quiet += usize::from(must.is_empty());
        let remarks = reckon(&visit(text), &Default::default()).remarks;
        let stand = |id: &str| remarks.iter().any(|remark| remark.id == id);
        let known = |id: &&str| RULES.iter().any(|rule| rule.id == *id);
        for id in must.split_whitespace() {
            assert!(known(&id), "{id}");
            if !stand(id) {
                wrong.push(format!("{text}: `{id}` does not stand"));
            }
        }
        for id in must_not.split_whitespace() {
            let stands = match id {
                "any" => !remarks.is_empty(),
                "act-now" => remarks.iter().any(|remark| remark.grade == Grade::ActNow),
                id => {
                    assert!(known(&id) || id == "findings-fit-no-position", "{id}");
                    stand(id)
                }
            };
            if stands {
                let ids: Vec<&str> = remarks.iter().map(|remark| remark.id).collect();
                wrong.push(format!("{text}: `{id}` stands: {}", ids.join(" ")));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(visits >= 150 && quiet >= 50, "{visits} visits, {quiet} of them quiet");
}

/// Every rule that makes a remark of an exam by itself is met by a visit of the list, or has tests of its own.
#[test]
fn every_rule_of_the_ledger_that_is_new_is_met() {
    let text = std::fs::read_to_string(super::shared::path("tests/published/alarms.csv")).expect("the list");
    for rule in RULES.iter().filter(|rule| rule.grade == Some(Grade::ActNow)) {
        let elsewhere = [
            // check::what_cannot_wait, growth, remarks.
            "movements-changed",
            "movements-not-felt-yet",
            "scar-pain-operations-not-known",
            "waters-broken-lie-not-known",
            "heart-heard-before",
            "thoughts-of-self-harm",
        ];
        assert!(text.contains(rule.id) || elsewhere.contains(&rule.id), "no visit meets {}", rule.id);
    }
}
