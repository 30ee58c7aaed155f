//! What she told in confidence, and what cannot wait, in entries that others read.

use super::note::note;
use handspan::commands::{self, Command, Draft, Form, Format, Handout, Request, Source, exit};
use handspan::report::Look;
use serde_json::Value;

const TOLD: &str = "weeks = \"30+0\"\nvisit = 2026-03-14\nnote = \"Lives with partner. Afraid of partner, domestic abuse. Likes tea.\"\n\
    [mother]\nreports = [\"violence\", \"thoughts of self-harm\", \"itching\"]\n[baby]\nhead = \"above pubic bone\"\n";

/// Words that nobody else may read.
/// (Every family page asks whether she feels afraid: what she is afraid of stands on none.)
const WORDS: [&str; 6] = ["violence", "self-harm", "harming", "afraid of", "abuse", "note-mentions"];

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
        let position = position.expect("a position");
        assert_eq!(position["derivedFrom"].as_array().expect("findings").len(), 2);
        assert!(position["note"][0]["text"].as_str().is_some_and(|text| text.contains("follows")));
        let felt = |o: &&Value| o["derivedFrom"].is_null();
        let says = |o: &Value| o["note"].to_string().contains("follows");
        assert!(!of("Observation").into_iter().filter(felt).any(says), "what was felt was felt");
    }
}

/// Nothing of it is printed for the family, or on a slip, or on a picture, even when a page is made despite it.
#[test]
fn what_is_private_is_on_no_page() {
    let despite = vec!["thoughts-of-self-harm".to_owned()];
    let handout = |numbers: bool| Handout {
        exam: Source::new("exam.toml", TOLD),
        format: Format::Svg,
        lang: "en".to_owned(),
        draft: Draft::Refused,
        paper: None,
        palette: None,
        mother: None,
        clinic: None,
        layout: None,
        despite: despite.clone(),
        emergency: None,
        invite_listening: false,
        numbers,
    };
    let made = |command: Command| commands::run(&Request { command, look: Look::Plain });
    let family = [made(Command::Handout(handout(false))), made(Command::Handout(handout(true)))];
    let slips = [note(TOLD, Form::Slip(Format::Svg), false), note(TOLD, Form::Slip(Format::Svg), true)];
    for outcome in family.iter().chain(&slips) {
        let mut pages =
            outcome.pages.iter().map(|page| String::from_utf8_lossy(page).to_lowercase()).collect::<Vec<_>>();
        pages.push(outcome.text.to_lowercase());
        pages.retain(|page| !page.is_empty());
        assert!(!pages.is_empty(), "a page is made: {}", outcome.notes);
        for page in pages {
            assert!(page.contains("<text"), "its words are text");
            for word in WORDS {
                assert!(!page.contains(word), "{word}");
            }
        }
    }
    // Without `--despite` no page is made for the family at all.
    let refused = made(Command::Handout(Handout { despite: vec![], ..handout(false) }));
    assert!(refused.pages.is_empty() && refused.code == exit::ACT_NOW, "{}", refused.notes);
}
