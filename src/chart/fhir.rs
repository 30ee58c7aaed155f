//! A FHIR R4 bundle. In: an entry, its pictures, whether it is to be shared, and random bytes. Out: JSON.
//!
//! `Bundle` of type `collection`: a `Patient` without identity, an `Observation` a finding, a panel of them, and a
//! `DocumentReference` with the picture. It is base R4, of no further profile. The ids come from the random bytes alone, so a new
//! export has new ids and says nothing of an earlier one.

use super::codes::{self, Code, LOCAL, UCUM};
use super::entry::Entry;
use super::findings::{By, Row, State, Unit, Value, rows};
use super::said;
use crate::exam::KnownBy;
use crate::exam::say::Canonical;
use crate::reckon::Grade;
use crate::words::WordsError;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Map, Value as Json, json};
use sha1::{Digest, Sha1};

/// The notices that go with the codes.
pub const NOTICES: [&str; 2] = [
    "This material contains content from LOINC (http://loinc.org). LOINC is copyright \u{a9} Regenstrief Institute, Inc. and \
     the LOINC Committee and is available at no cost under the license at http://loinc.org/license. LOINC\u{ae} is a \
     registered United States trademark of Regenstrief Institute, Inc.",
    "SNOMED CT \u{a9} SNOMED International, Global Patient Set, CC BY 4.0 (https://creativecommons.org/licenses/by/4.0/).",
];

const EXAM: (&str, &str) = ("http://terminology.hl7.org/CodeSystem/observation-category", "exam");
const REDACTED: (&str, &str) = ("http://terminology.hl7.org/CodeSystem/v3-ObservationValue", "REDACTED");
const ABSENT: &str = "http://terminology.hl7.org/CodeSystem/data-absent-reason";

/// A picture of the exam as a file.
pub struct Picture {
    /// Such as `image/svg+xml`.
    pub content_type: &'static str,
    /// The bytes.
    pub bytes: Vec<u8>,
}

/// 16 random bytes, fresh for each export.
pub type Seed = [u8; 16];

/// What an export is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Use {
    /// Her own chart: dated when the visit is.
    Chart,
    /// To be shared. The exam of the entry is already scrubbed; here no date is written and the bundle is marked.
    Share,
}

/// The bundle as JSON text, ending in a line break.
pub fn bundle(entry: &Entry<'_>, pictures: &[Picture], used: Use, seed: &Seed) -> Result<String, WordsError> {
    let maker = Maker { entry, used, patient: id(seed, 0) };
    let mut entries = vec![json!({"fullUrl": maker.patient, "resource": maker.patient()?})];
    let mut members = vec![];
    let mut number = 1;
    let mut add = |resource: Json| {
        let url = id(seed, number);
        number += 1;
        entries.push(json!({"fullUrl": url, "resource": resource}));
        url
    };
    // What is found of a baby, before what follows from it.
    let mut found: Vec<(String, String)> = vec![];
    for row in rows(entry.exam, &entry.reckoning.conclusions) {
        let mut made = maker.observation(&row)?;
        let from = maker.rests_on(&row, &found);
        if !from.is_empty() {
            made["derivedFrom"] = json!(from);
            let said = json!({"text": maker.say("fhir-follows")?});
            match made["note"].as_array_mut() {
                Some(notes) => notes.push(said),
                None => made["note"] = json!([said]),
            }
        }
        let url = add(made);
        let key = match row.baby {
            Some(index) => format!("baby.{}.{}", index + 1, row.name),
            None => format!("mother.{}", row.name),
        };
        found.push((key, url.clone()));
        members.push(json!({"reference": url}));
    }
    for alert in maker.alerts(&found)? {
        add(alert);
    }
    for resource in maker.dates()? {
        members.push(json!({"reference": add(resource)}));
    }
    let panel = add(maker.panel(members)?);
    add(maker.document(pictures, &panel)?);
    let mut bundle = json!({"resourceType": "Bundle", "type": "collection", "entry": entries});
    if used == Use::Share {
        bundle["meta"] = maker.redacted();
    }
    let text = serde_json::to_string_pretty(&bundle).map_err(|fault| WordsError(fault.to_string()))?;
    Ok(format!("{text}\n"))
}

/// Whether a code leaves open how a thing was found.
fn says_no_way(code: Code) -> bool {
    code.system == LOCAL || code == codes::POSITION || code == codes::ABDOMEN || code == codes::WEEKS
}

/// `urn:uuid:` of the random kind: hashed from the random bytes and a number.
fn id(seed: &Seed, number: u32) -> String {
    let mut hash = Sha1::new();
    hash.update(seed);
    hash.update(number.to_be_bytes());
    let mut bytes: [u8; 16] = std::array::from_fn({
        let digest = hash.finalize();
        move |at| digest[at]
    });
    bytes[6] = bytes[6] & 0x0f | 0x40;
    bytes[8] = bytes[8] & 0x3f | 0x80;
    let hex = |range: std::ops::Range<usize>| -> String {
        bytes[range].iter().map(|byte| format!("{byte:02x}")).collect()
    };
    format!("urn:uuid:{}-{}-{}-{}-{}", hex(0..4), hex(4..6), hex(6..8), hex(8..10), hex(10..16))
}

struct Maker<'a> {
    entry: &'a Entry<'a>,
    used: Use,
    patient: String,
}

impl Maker<'_> {
    fn say(&self, id: &str) -> Result<String, WordsError> {
        self.entry.words.say(id, &[])
    }

    fn redacted(&self) -> Json {
        json!({"security": [{"system": REDACTED.0, "code": REDACTED.1, "display": "redacted"}]})
    }

    fn patient(&self) -> Result<Json, WordsError> {
        let text = self.say("fhir-no-identity")?;
        let mut patient = json!({
            "resourceType": "Patient",
            "text": {
                "status": "generated",
                "div": format!("<div xmlns=\"http://www.w3.org/1999/xhtml\">{}</div>", escaped(&text)),
            },
        });
        if self.used == Use::Share {
            patient["meta"] = self.redacted();
        }
        Ok(patient)
    }

    /// References to the findings that a conclusion follows from; none for what was found itself, or only written.
    fn rests_on(&self, row: &Row, found: &[(String, String)]) -> Vec<Json> {
        const FROM: [&str; 5] = ["breech", "back", "head", "head-above-brim", "attitude"];
        let concluded = ["lie", "presentation", "position"].contains(&row.name);
        let Some(index) = row.baby.filter(|_| concluded) else { return vec![] };
        let of = |name: &&str| format!("baby.{}.{name}", index + 1);
        let wanted: Vec<String> = FROM.iter().map(of).collect();
        let own = found.iter().filter(|(key, _)| wanted.contains(key));
        own.map(|(_, url)| json!({"reference": url})).collect()
    }

    /// What cannot wait, an alert each: preliminary, and dated by the visit where the entry is.
    fn alerts(&self, found: &[(String, String)]) -> Result<Vec<Json>, WordsError> {
        let mut alerts = vec![];
        let babies = self.entry.exam.babies.len();
        for remark in self.entry.reckoning.remarks.iter().filter(|remark| remark.grade == Grade::ActNow) {
            let text = said::sentence(remark, babies, self.entry.words)?;
            let code = Code { system: LOCAL, code: remark.id };
            let mut alert = json!({
                "resourceType": "DetectedIssue",
                "status": "preliminary",
                "severity": "high",
                "code": concept(Some(code), &text),
                "patient": {"reference": self.patient},
                "detail": text,
            });
            if let (Use::Chart, Some(visit)) = (self.used, self.entry.exam.dates.visit) {
                alert["identifiedDateTime"] = json!(visit.to_string());
            }
            let on: Vec<Json> = found
                .iter()
                .filter(|(key, _)| remark.findings.contains(key))
                .map(|(_, url)| json!({"reference": url}))
                .collect();
            if !on.is_empty() {
                alert["implicated"] = json!(on);
            }
            alerts.push(alert);
        }
        Ok(alerts)
    }

    /// What every observation has.
    fn plain(&self, code: Json) -> Json {
        let mut made = json!({
            "resourceType": "Observation",
            "status": "final",
            "category": [{"coding": [{"system": EXAM.0, "code": EXAM.1, "display": "Exam"}]}],
            "code": code,
            "subject": {"reference": self.patient},
        });
        if let (Use::Chart, Some(visit)) = (self.used, self.entry.exam.dates.visit) {
            made["effectiveDateTime"] = json!(visit.to_string());
        }
        made
    }

    fn observation(&self, row: &Row) -> Result<Json, WordsError> {
        let mut text = self.say(&format!("fhir-{}", row.name))?;
        if let Some(index) = row.baby.filter(|_| self.entry.exam.babies.len() > 1) {
            text =
                self.entry.words.say("for-baby", &[("baby", &(index + 1).to_string()), ("text", &text)])?;
        }
        let own = Code { system: LOCAL, code: row.name };
        let ours = row.name.ends_with("-as-written");
        // A code for what hands and ear find is not sent with what was found in other ways alone.
        let by_hand = row.known_by.is_empty() || row.known_by.contains(&KnownBy::Hands);
        let code = row.code.filter(|code| !ours && (by_hand || says_no_way(*code))).unwrap_or(own);
        let mut made = self.plain(concept(Some(code), &text));
        let mut notes = vec![];
        match &row.state {
            State::Found(value) => {
                put_value(&mut made, value);
                notes.extend(row.more.clone());
                if !row.sure {
                    notes.push(self.say("fhir-unsure")?);
                }
            }
            State::Absent(words) => {
                made["valueCodeableConcept"] = concept(Some(codes::NOT_FOUND), words);
            }
            State::NotTried(words) => {
                let why = if row.by == By::Asking { "not-asked" } else { "not-performed" };
                made["dataAbsentReason"] = absent(why, words);
            }
            State::CouldNotTell(words) => made["dataAbsentReason"] = absent("unknown", words),
        }
        made["method"] = self.method(row)?;
        if let Some(place) = &row.site {
            made["bodySite"] = concept(codes::site(place), &place.canonical());
        }
        put_notes(&mut made, notes);
        Ok(made)
    }

    fn method(&self, row: &Row) -> Result<Json, WordsError> {
        let id = match row.by {
            By::Palpation => "fhir-by-palpation",
            By::Listening => "fhir-by-listening",
            By::Tape => "fhir-by-tape",
            By::Looking => "fhir-by-looking",
            By::Asking => "fhir-by-asking",
            By::VaginalExamination => "fhir-by-vaginal",
        };
        let own = self.say(id)?;
        let by_hand = row.known_by.iter().all(|known| *known == KnownBy::Hands);
        if by_hand {
            return Ok(concept((row.by == By::Palpation).then_some(codes::PALPATION), &own));
        }
        let mut ways = vec![];
        for known in &row.known_by {
            ways.push(match known {
                KnownBy::Hands => own.clone(),
                KnownBy::Scan(None) => self.say("fhir-by-scan")?,
                KnownBy::Scan(Some(when)) => format!("{} {when}", self.say("fhir-by-scan")?),
                KnownBy::VaginalExamination => self.say("fhir-by-vaginal")?,
            });
        }
        Ok(concept(None, &ways.join("; ")))
    }

    /// Dates that the file gives; only for her own chart.
    fn dates(&self) -> Result<Vec<Json>, WordsError> {
        let mut made = vec![];
        if self.used == Use::Share {
            return Ok(made);
        }
        let dates = &self.entry.exam.dates;
        for (name, date) in [("due", dates.due), ("last-period", dates.last_period)] {
            if let Some(date) = date {
                let code = Code { system: LOCAL, code: name };
                let mut one = self.plain(concept(Some(code), &self.say(&format!("fhir-{name}"))?));
                one["valueDateTime"] = json!(date.to_string());
                made.push(one);
            }
        }
        if let Some((weeks, date)) = dates.scan {
            let code = Code { system: LOCAL, code: "dated-by-scan" };
            let mut one = self.plain(concept(Some(code), &self.say("fhir-dated-by-scan")?));
            one["valueQuantity"] = quantity(f64::from(weeks.days()), ("d", "d"));
            one["effectiveDateTime"] = json!(date.to_string());
            made.push(one);
        }
        Ok(made)
    }

    /// The whole visit, with the remarks; what cannot wait first.
    fn panel(&self, members: Vec<Json>) -> Result<Json, WordsError> {
        let mut panel = self.plain(concept(Some(codes::PANEL), &self.say("slip-title")?));
        if !members.is_empty() {
            panel["hasMember"] = json!(members);
        }
        let mut notes: Vec<String> = self.entry.remarks()?.into_iter().map(|line| line.text).collect();
        notes.extend(self.entry.conclusions()?);
        notes.push(self.entry.not_examined()?);
        notes.extend(self.entry.exam.note.clone().filter(|_| self.used == Use::Chart));
        notes.push(self.entry.cautions()?);
        notes.push(self.entry.versions()?);
        notes.extend(NOTICES.map(str::to_owned));
        put_notes(&mut panel, notes);
        Ok(panel)
    }

    fn document(&self, pictures: &[Picture], panel: &str) -> Result<Json, WordsError> {
        let title = self.say("picture-title")?;
        let content: Vec<Json> = pictures
            .iter()
            .map(|picture| {
                json!({"attachment": {
                    "contentType": picture.content_type,
                    "language": self.entry.words.lang(),
                    "data": STANDARD.encode(&picture.bytes),
                    "size": picture.bytes.len(),
                    "hash": STANDARD.encode(Sha1::digest(&picture.bytes)),
                    "title": title,
                }})
            })
            .collect();
        Ok(json!({
            "resourceType": "DocumentReference",
            "status": "current",
            "docStatus": "final",
            "type": concept(Some(codes::PICTURE), &title),
            "subject": {"reference": self.patient},
            "description": self.entry.conclusions()?.join(" "),
            "content": content,
            "context": {"related": [{"reference": panel}]},
        }))
    }
}

/// A concept: its text always, its code where there is one. Official names are left out: they are not ours to word.
fn concept(code: Option<Code>, text: &str) -> Json {
    let mut concept = Map::new();
    if let Some(code) = code {
        concept.insert("coding".into(), json!([{"system": code.system, "code": code.code}]));
    }
    concept.insert("text".into(), json!(text));
    Json::Object(concept)
}

fn absent(code: &str, words: &str) -> Json {
    json!({"coding": [{"system": ABSENT, "code": code}], "text": words})
}

fn quantity(value: f64, unit: Unit) -> Json {
    json!({"value": number(value), "unit": unit.0, "system": UCUM, "code": unit.1})
}

/// A whole number without a decimal point.
fn number(value: f64) -> Json {
    if value.fract() == 0.0 { json!(value as i64) } else { json!(value) }
}

fn put_value(made: &mut Json, value: &Value) {
    match value {
        Value::Quantity(value, unit) => made["valueQuantity"] = quantity(*value, *unit),
        Value::Range(low, high, unit) => {
            made["valueRange"] = json!({"low": quantity(*low, *unit), "high": quantity(*high, *unit)});
        }
        Value::Coded(code, text) => made["valueCodeableConcept"] = concept(Some(*code), text),
        Value::Words(words) => made["valueString"] = json!(words),
    }
}

fn put_notes(made: &mut Json, notes: Vec<String>) {
    if !notes.is_empty() {
        made["note"] = notes.into_iter().map(|text| json!({"text": text})).collect();
    }
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
