//! What she told in confidence, and what cannot wait, in entries that others read.

use super::note::note;
use handspan::commands::{Form, exit};
use serde_json::Value;

const TOLD: &str = "weeks = \"30+0\"\nvisit = 2026-03-14\nnote = \"Lives with partner. Afraid of partner, domestic abuse. Likes tea.\"\n\
    [mother]\nreports = [\"violence\", \"thoughts of self-harm\", \"itching\"]\n[baby]\nhead = \"above pubic bone\"\n";

/// Words that nobody else may read.
const WORDS: [&str; 6] = ["violence", "self-harm", "harming", "afraid", "abuse", "note-mentions"];

#[test]
fn what_is_private_is_in_no_entry_that_others_read() {
    for (form, share) in
        [(Form::Handover, false), (Form::Handover, true), (Form::Text, true), (Form::Fhir, true)]
    {
        let made = note(TOLD, form, share);
        let text = made.text.to_lowercase();
        for word in WORDS {
            assert!(!text.contains(word), "{word} in {form:?}, shared {share}: {}", made.text);
        }
        assert!(text.contains("itching"), "the rest stays: {}", made.text);
    }
    // The handover keeps the rest of the note, and the exit code is that of the whole exam.
    let handover = note(TOLD, Form::Handover, false);
    assert!(handover.text.contains("Likes tea."), "{}", handover.text);
    assert_eq!(handover.code, exit::ACT_NOW);
    // Nothing denies what was kept out.
    let alone = TOLD.replace(", \"itching\"", "");
    let handover = note(&alone, Form::Handover, false).text;
    assert!(
        handover.contains("The chart holds the rest.") && !handover.contains("Nothing recorded"),
        "{handover}"
    );
    // Her own chart has it.
    let chart = note(TOLD, Form::Text, false).text;
    assert!(chart.contains("[thoughts-of-self-harm]") && chart.contains("[violence-told]"), "{chart}");
}

#[test]
fn what_cannot_wait_is_an_alert_in_the_bundle() {
    let text = "weeks = \"37+0\"\nvisit = 2026-03-14\n[mother]\nmovements = \"fewer\"\n[baby]\nhead = \"above pubic bone\"\n\
        back = \"left front\"\n";
    for share in [false, true] {
        let bundle: Value = serde_json::from_str(&note(text, Form::Fhir, share).text).expect("JSON");
        let entries = bundle["entry"].as_array().expect("entries");
        let of = |kind: &str| -> Vec<&Value> {
            entries.iter().map(|entry| &entry["resource"]).filter(|r| r["resourceType"] == kind).collect()
        };
        let alerts = of("DetectedIssue");
        assert_eq!(alerts.len(), 1, "{bundle}");
        let alert = alerts[0];
        assert_eq!((&alert["status"], &alert["severity"]), (&"preliminary".into(), &"high".into()));
        assert_eq!(alert["code"]["coding"][0]["code"], "movements-fewer");
        let dated = alert.get("identifiedDateTime").map(|date| date == "2026-03-14");
        assert_eq!(dated, (!share).then_some(true), "dated by the visit, unless it is shared");
        // It points to the movements.
        let url = &alert["implicated"][0]["reference"];
        let target = entries.iter().find(|entry| entry["fullUrl"] == *url).expect("what it rests on");
        assert_eq!(target["resource"]["code"]["coding"][0]["code"], "movements");
        // The position follows from head and back, and says so.
        let position = of("Observation")
            .into_iter()
            .find(|o| o["valueCodeableConcept"]["text"].as_str().is_some_and(|t| t.starts_with("LOA")));
        let from = position.expect("a position")["derivedFrom"].as_array().expect("findings").len();
        assert_eq!(from, 2);
    }
}
