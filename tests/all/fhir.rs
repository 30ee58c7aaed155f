//! The FHIR bundle: codes that may be sent, states, sides, what is shared. Other programs judge it in tests/outside/fhir.rs.

use super::note::{MARKER, has_date, note, random};
use super::shared::{Dice, path, rows};
use super::words::mirrored;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use handspan::chart::codes::{LOCAL, LOINC, SNOMED};
use handspan::chart::fhir::{NOTICES, Use, bundle};
use handspan::chart::{Entry, share};
use handspan::commands::Form;
use handspan::exam::{self, Exam};
use handspan::words::Words;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// The bundle of an exam in this text, without pictures.
fn bare(text: &str, used: Use) -> Value {
    let exam = exam::read("exam.toml", text.as_bytes()).exam.expect("an exam");
    let exam: Exam = if used == Use::Share { share::scrubbed(&exam) } else { exam };
    let reckoning = handspan::reckon::reckon(&exam, &Default::default());
    let words = Words::load("en").expect("words");
    let entry = Entry { exam: &exam, reckoning: &reckoning, words: &words };
    let json = bundle(&entry, &[], used, &[9; 16]).expect("a bundle");
    serde_json::from_str(&json).expect("JSON")
}

/// The observations whose code is this.
fn of<'a>(bundle: &'a Value, code: &str) -> Vec<&'a Value> {
    resources(bundle, "Observation").filter(|o| o["code"]["coding"][0]["code"] == code).collect()
}

fn one<'a>(bundle: &'a Value, code: &str) -> &'a Value {
    let all = of(bundle, code);
    assert_eq!(all.len(), 1, "{code} in {bundle}");
    all[0]
}

fn resources<'a>(bundle: &'a Value, kind: &'a str) -> impl Iterator<Item = &'a Value> {
    let entries = bundle["entry"].as_array().expect("entries").iter();
    entries.map(|entry| &entry["resource"]).filter(move |resource| resource["resourceType"] == kind)
}

/// Every object of a tree.
fn objects<'a>(value: &'a Value, out: &mut Vec<&'a Value>) {
    match value {
        Value::Object(map) => {
            out.push(value);
            map.values().for_each(|value| objects(value, out));
        }
        Value::Array(all) => all.iter().for_each(|value| objects(value, out)),
        _ => {}
    }
}

/// Displays by system and code, of the published rows.
fn published() -> BTreeMap<(String, String), String> {
    rows("codes.csv").into_iter().map(|row| ((row[1].clone(), row[2].clone()), row[3].clone())).collect()
}

const BABY: &str = "weeks = \"37+0\"\n[mother]\nfundal-height = \"35 cm\"\nmovements = \"not asked\"\n[baby]\n\
    breech = \"fundus (scan)\"\nback = \"left front?\"\nhead = \"above pubic bone\"\nhead-above-brim = \"3/5\"\n\
    limbs = \"not felt\"\nattitude = \"could not tell (thick wall)\"\nheart = \"left, below navel\"\n\
    heart-with = \"Doppler\"\nheart-rate = \"140-146\"\nweight-by-hand = \"2.9 kg to 3.2 kg\"\n";

#[test]
fn states_are_told_apart() {
    let b = bare(BABY, Use::Chart);
    // Not examined: absent.
    assert!(of(&b, "prominence").is_empty() && of(&b, "girth").is_empty());
    // Not felt is a finding.
    let limbs = one(&b, "limbs");
    assert_eq!(limbs["valueCodeableConcept"]["text"], "not felt");
    assert!(limbs.get("dataAbsentReason").is_none());
    // Could not tell, and not asked: no value, and why.
    let attitude = one(&b, "attitude");
    assert_eq!(attitude["dataAbsentReason"]["coding"][0]["code"], "unknown");
    assert_eq!(attitude["dataAbsentReason"]["text"], "could not tell (thick wall)");
    assert_eq!(one(&b, "movements")["dataAbsentReason"]["text"], "not asked");
    for absent in [attitude, one(&b, "movements")] {
        assert!(absent.as_object().expect("an object").keys().all(|key| !key.starts_with("value")));
    }
    // Unsure: in the finding and in what follows from it.
    let unsure = "Unsure: written with a question mark by the examiner.";
    for code in ["back", "72155-5"] {
        assert_eq!(one(&b, code)["note"][0]["text"], unsure, "{code}");
    }
    assert!(one(&b, "head").get("note").is_none());
    // Known by scan: so said, and not sent as palpation.
    let bottom = one(&b, "breech");
    assert_eq!(bottom["method"]["text"], "Scan");
    assert!(bottom["method"].get("coding").is_none());
    assert_eq!(one(&b, "head")["method"]["coding"][0]["code"], "113011001");
    let heart = one(&b, "57068-9");
    assert_eq!(heart["method"]["text"], "Auscultation");
    assert_eq!(heart["bodySite"]["coding"][0]["code"], "68505006");
    assert_eq!(heart["bodySite"]["text"], "left, below navel");
    assert_eq!(
        (&heart["valueRange"]["low"]["value"], &heart["valueRange"]["high"]["value"]),
        (&140.into(), &146.into())
    );
    assert_eq!(heart["valueRange"]["low"]["code"], "/min");
    assert_eq!(one(&b, "11884-4")["valueQuantity"]["value"], 259);
    assert_eq!(one(&b, "11881-0")["valueQuantity"]["value"], 35);
}

#[test]
fn fifths_carry_their_words_and_engaged_is_never_fifths() {
    let b = bare(BABY, Use::Share);
    let fifths = one(&b, "fifths-palpable-above-brim");
    assert_eq!(fifths["valueQuantity"]["value"], 3);
    assert_eq!(fifths["valueQuantity"]["unit"], "fifths palpable above the brim");
    assert_eq!(fifths["note"][0]["text"], "3/5 palpable above the brim");
    let b = bare("[baby]\nhead = \"above pubic bone\"\ndescent = \"engaged\"\n", Use::Chart);
    assert!(of(&b, "fifths-palpable-above-brim").is_empty());
    assert_eq!(one(&b, "descent")["valueString"], "engaged");
    assert!(!b.to_string().contains("{fifths}"));
}

#[test]
fn every_position_has_its_code_and_its_side() {
    let published = published();
    let mut coded = 0;
    for letter in ["O", "S", "M", "F"] {
        for turn in ["", "L", "R"] {
            for end in ["A", "T", "P"] {
                if turn.is_empty() && end == "T" {
                    continue;
                }
                let code = format!("{turn}{letter}{end}");
                let b = bare(&format!("[baby]\nposition = \"{code}\"\n"), Use::Share);
                let value = &one(&b, "72155-5")["valueCodeableConcept"];
                let text = value["text"].as_str().expect("text");
                let coding = &value["coding"][0];
                if code == "LMP" {
                    assert_eq!(text, "left mento-posterior");
                } else {
                    assert!(text.starts_with(&format!("{code}: ")), "{text}");
                }
                let key = (
                    coding["system"].as_str().expect("a system").to_owned(),
                    coding["code"].as_str().expect("a code").to_owned(),
                );
                if matches!(letter, "M" | "F") || code == "LSP" {
                    assert_eq!(key.0, LOCAL, "{code}");
                    let side = match turn {
                        "L" => key.1.starts_with("left-"),
                        "R" => key.1.starts_with("right-"),
                        _ => !key.1.contains("left") && !key.1.contains("right"),
                    };
                    assert!(side, "{code}: {}", key.1);
                    continue;
                }
                // The display of the published row says the same as the letters.
                let display =
                    published.get(&key).unwrap_or_else(|| panic!("{code}: {}", key.1)).to_lowercase();
                let part = if letter == "O" { "occipito" } else { "sacro" };
                let turned = match end {
                    "A" => ["anterior", "anterior"],
                    "P" => ["posterior", "posterior"],
                    _ => ["lateral", "transverse"],
                };
                let side = match turn {
                    "L" => display.starts_with("left "),
                    "R" => display.starts_with("right "),
                    _ => !display.contains("left") && !display.contains("right"),
                };
                assert!(side && display.contains(part), "{code}: {display}");
                assert!(turned.iter().any(|turned| display.contains(turned)), "{code}: {display}");
                coded += 1;
            }
        }
    }
    assert_eq!(coded, 15);
}

#[test]
fn only_published_codes_are_sent_and_nothing_typed_is_shared() {
    let published = published();
    let mut dice = Dice::new(40_417_001);
    let mut seen = BTreeSet::new();
    for round in 0..1500 {
        let text = random(&mut dice);
        for used in [Use::Chart, Use::Share] {
            let b = bare(&text, used);
            let mut all = vec![];
            objects(&b, &mut all);
            for object in all {
                let (Some(system), Some(code)) = (object["system"].as_str(), object["code"].as_str()) else {
                    continue;
                };
                if system == LOINC || system == SNOMED {
                    let key = (system.to_owned(), code.to_owned());
                    assert!(published.contains_key(&key), "{system} {code}");
                    seen.insert(key);
                }
            }
            let json = b.to_string();
            let at = format!("round {round}\n{text}");
            if used == Use::Share {
                assert!(!json.contains(MARKER) && !has_date(json.as_bytes()), "{at}{json}");
                assert!(json.contains("REDACTED") && !json.contains("effective"), "{at}");
                assert!(!json.contains("performer"), "{at}");
            } else {
                assert!(json.contains(MARKER), "{at}");
            }
            for notice in NOTICES {
                assert!(resources(&b, "Observation").any(|o| o["note"].to_string().contains(&notice[..40])));
            }
        }
    }
    assert!(seen.len() > 35, "{}", seen.len());
    let notice = std::fs::read_to_string(path("NOTICE")).expect("the notices");
    let plain = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(NOTICES.iter().all(|one| plain(&notice).contains(&plain(one))));
}

#[test]
fn mirrored_findings_give_mirrored_codes() {
    let published = published();
    let swap = |text: &str| {
        let at = text.to_lowercase().replace("left", "@").replace("right", "left");
        at.replace('@', "right")
    };
    // What a code says, in words that can be mirrored.
    let meaning = |coding: &Value| {
        let (system, code) =
            (coding["system"].as_str().expect("a system"), coding["code"].as_str().expect("a code"));
        let key = (system.to_owned(), code.to_owned());
        // One side of this pair has a published code and the other has not.
        let other = || match code {
            "left-sacro-posterior" => "Left sacroposterior position (finding)".to_owned(),
            code => code.to_owned(),
        };
        published.get(&key).cloned().unwrap_or_else(other).to_lowercase()
    };
    let codes = |bundle: &Value| -> Vec<String> {
        resources(bundle, "Observation")
            .flat_map(|o| [&o["valueCodeableConcept"]["coding"][0], &o["bodySite"]["coding"][0]])
            .filter(|coding| coding.is_object())
            .map(meaning)
            .collect()
    };
    let mut dice = Dice::new(6_021_023);
    let mut sided = 0;
    for round in 0..1500 {
        let (text, other) = mirrored(&random(&mut dice));
        let (ours, theirs) = (codes(&bare(&text, Use::Share)), codes(&bare(&other, Use::Share)));
        let turned: Vec<String> = ours.iter().map(|text| swap(text)).collect();
        assert_eq!(turned, theirs, "round {round}\n{text}");
        sided += usize::from(turned != ours);
    }
    assert!(sided > 200, "{sided}");
}

#[test]
fn twins_are_told_apart_and_ids_are_fresh() {
    let text = std::fs::read_to_string(path("examples/twins.toml")).expect("an example");
    let b = bare(&text, Use::Share);
    let named: Vec<&str> =
        of(&b, "11876-0").iter().map(|o| o["code"]["text"].as_str().expect("text")).collect();
    assert_eq!(named, ["Baby 1: Fetal presentation", "Baby 2: Fetal presentation"]);
    let sites: Vec<&Value> = of(&b, "57068-9").iter().map(|o| &o["bodySite"]["coding"][0]["code"]).collect();
    assert_eq!(sites, ["48544008", "86367003"]);
    let urls = |b: &Value| -> BTreeSet<String> {
        b["entry"].as_array().expect("entries").iter().map(|e| e["fullUrl"].to_string()).collect()
    };
    let count = b["entry"].as_array().expect("entries").len();
    assert_eq!(urls(&b).len(), count);
    let made = |arguments: &[&str]| -> Value {
        serde_json::from_slice(&super::shared::run(arguments).stdout).expect("JSON")
    };
    let arguments = ["note", "examples/twins.toml", "--as", "fhir", "--share"];
    let (one, other) = (made(&arguments), made(&arguments));
    assert!(urls(&one).is_disjoint(&urls(&other)), "ids are used again");
}

/// Every stream of a PDF, inflated, after the file itself.
fn streams(pdf: &[u8]) -> Vec<u8> {
    use std::io::Read;
    let document = lopdf::Document::load_mem(pdf).expect("a PDF");
    let mut all = pdf.to_vec();
    let mut inflated = 0;
    for object in document.objects.values() {
        if let Ok(stream) = object.as_stream() {
            let mut out = vec![];
            if flate2::read::ZlibDecoder::new(&stream.content[..]).read_to_end(&mut out).is_ok() {
                inflated += 1;
                all.extend(out);
            } else {
                all.extend(&stream.content);
            }
        }
        all.extend(format!("{object:?}").into_bytes());
    }
    assert!(inflated > 0, "no stream was inflated");
    all
}

#[test]
fn pictures_that_are_shared_hold_nothing_typed_and_no_date() {
    let typed = |text: &str| {
        let note = format!("note = \"{MARKER}\"\nvisit = 2026-03-14\n{text}");
        note.replace("weeks = \"", "# weeks = \"").replace("visit =", "due = 2026-04-04\nvisit =")
    };
    for name in ["head-down-left", "twins", "heart-not-heard", "slanting", "fibroid"] {
        let text = std::fs::read_to_string(path(&format!("examples/{name}.toml"))).expect("an example");
        let text = typed(&text).replace("\"left front\"", &format!("\"left front (scan {MARKER})\""));
        for share in [true, false] {
            let made = note(&text, Form::Fhir, share);
            let b: Value = serde_json::from_str(&made.text).unwrap_or_else(|e| panic!("{e}: {}", made.notes));
            let mut bytes = made.text.clone().into_bytes();
            let document = resources(&b, "DocumentReference").next().expect("a document");
            let content = document["content"].as_array().expect("content");
            let kinds: Vec<&str> =
                content.iter().map(|c| c["attachment"]["contentType"].as_str().expect("a type")).collect();
            assert_eq!(kinds, ["image/svg+xml", "image/png", "application/pdf"]);
            for attachment in content.iter().map(|c| &c["attachment"]) {
                let data = STANDARD.decode(attachment["data"].as_str().expect("data")).expect("base64");
                assert_eq!(attachment["size"], data.len());
                assert!(attachment.get("creation").is_none());
                if data.starts_with(b"%PDF") {
                    let all = streams(&data);
                    assert!(!all.windows(12).any(|w| w == b"CreationDate"), "{name}");
                    bytes.extend(all);
                } else {
                    bytes.extend(data);
                }
            }
            let typed = bytes.windows(MARKER.len()).any(|w| w == MARKER.as_bytes());
            // The same search finds what is in her own chart.
            assert_eq!((typed, has_date(&bytes)), (!share, !share), "{name}");
        }
    }
}
