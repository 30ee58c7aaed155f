//! The exam language as a JSON Schema (draft 2020-12), for editors that know TOML. In: the word list. Out: the schema.
//!
//! An editor is offered the canonical words; the pattern beside them takes the synonyms, in any case, and what may stand after
//! a value. Quantities have patterns of their own. What only a reader can tell (a side said twice) is not in it.

use super::keys::{KEYS, Key, Scope, VAGINAL_KEYS};
use super::words::{StateWord, Vocabulary};
use serde_json::{Map, Value, json};

/// The schema as text.
///
/// # Errors
/// Says why it could not be written as JSON; nothing in it gives a reason to.
pub fn text() -> Result<String, String> {
    serde_json::to_string_pretty(&schema()).map(|text| format!("{text}\n")).map_err(|fault| fault.to_string())
}

/// The schema.
pub fn schema() -> Value {
    let baby = object(Scope::Baby, "What was found of one baby.");
    let mut top =
        object(Scope::Top, "One examination of a pregnant abdomen. Sides are the mother's left and right.");
    if let Some(properties) = top.get_mut("properties").and_then(Value::as_object_mut) {
        properties.insert("mother".to_owned(), object(Scope::Mother, "What was found of the mother."));
        properties.insert(
            "baby".to_owned(),
            json!({ "anyOf": [
                { "$ref": "#/$defs/baby" },
                { "type": "array", "items": { "$ref": "#/$defs/baby" }, "minItems": 1, "maxItems": 2 },
            ] }),
        );
    }
    if let Some(top) = top.as_object_mut() {
        top.insert("$schema".to_owned(), json!("https://json-schema.org/draft/2020-12/schema"));
        top.insert("title".to_owned(), json!("handspan visit file"));
        top.insert("$defs".to_owned(), json!({ "baby": baby }));
    }
    top
}

fn object(scope: Scope, description: &str) -> Value {
    let mut properties = Map::new();
    for key in KEYS.iter().filter(|key| key.scope == scope) {
        properties.insert(key.name.to_owned(), property(key));
    }
    for name in VAGINAL_KEYS {
        let why = "Found by a vaginal examination: not recorded here; the words are kept in the note.";
        properties.insert(name.to_owned(), json!({ "description": why, "deprecated": true }));
    }
    json!({
        "type": "object",
        "description": description,
        "properties": properties,
        "additionalProperties": false,
    })
}

fn property(key: &Key) -> Value {
    let mut forms = vec![];
    let states: Vec<&str> = key.states().into_iter().filter_map(StateWord::word).collect();
    let words: Vec<&str> = (key.words)().iter().map(|row| row.word).chain(states).collect();
    if !words.is_empty() {
        forms.push(json!({ "enum": words }));
    }
    forms.push(text_form(key));
    if key.number {
        forms.push(json!({ "type": "integer" }));
    }
    if key.name == "temperature" {
        forms.push(json!({ "type": "number" }));
    }
    if (key.words)() == bool::rows() {
        forms.push(json!({ "type": "boolean" }));
    }
    if key.list {
        let one = forms.clone();
        forms.push(json!({ "type": "array", "items": { "anyOf": one }, "minItems": 1 }));
    }
    let form = if key.form.is_empty() { String::new() } else { format!("; {}", key.form) };
    json!({ "description": format!("{}{form}", key.meaning), "anyOf": forms })
}

/// Texts a key takes: its words and synonyms in any case, or the pattern of its quantity.
fn text_form(key: &Key) -> Value {
    let value = match key.name {
        "note" => return json!({ "type": "string" }),
        "visit" | "due" | "last-period" => {
            return json!({ "type": "string", "pattern": "^\\s*[0-9]{4}-[0-9]{2}-[0-9]{2}\\s*$" });
        }
        "scan" => format!("{WEEKS} +on +[0-9]{{4}}-[0-9]{{2}}-[0-9]{{2}}"),
        "weeks" => WEEKS.to_owned(),
        "cycle" | "births-before" | "gravida" => "[0-9]{1,2}( *days?)?|[Nn]one".to_owned(),
        "fundal-height" | "girth" | "navel" => LENGTH.to_owned(),
        "earlier-tapes" => format!("[^;]*{WEEKS}[^;]*(;[^;]*{WEEKS}[^;]*)*"),
        "head-above-brim" => "[0-5] */ *5[^0-9]*".to_owned(),
        "heart-counts" => "[0-9]+[^0-9]+[0-9]+ *[a-zA-Z]+(\\s*[;,].*)?".to_owned(),
        "heart-rate" | "heart-rise" | "pulse" => "[0-9]{2,3}[^0-9]*([0-9]{2,3}[^0-9]*)?".to_owned(),
        "weight-by-hand" | "weight-by-scan" => "[0-9]+(\\.[0-9]+)?.*".to_owned(),
        "temperature" => "[0-9]{2,3}(\\.[0-9]+)?.*".to_owned(),
        "blood-pressure" => "[0-9]{2,3} *(/|over) *[0-9]{2,3}.*".to_owned(),
        "breathing" | "contractions-in-ten" | "contraction-length" | "hours-since-broken" => {
            "[0-9]+[^;,]*".to_owned()
        }
        "station" => "([-+0-9]|[Pp]lus|[Mm]inus|[Aa]t|[Ss]pines).*".to_owned(),
        "muscle-gap" => format!("{}|[0-9]+[^;,]*", any_of(key, "[ -]+")),
        // A place is put together of a side, a level and measures: every word of it is in the list of words.
        "head" | "breech" | "limbs" | "lumps" | "heart" | "heart-also" | "kicks" | "tender-at" | "back"
        | "fundus" => {
            format!(".*({}).*|[LlRr]([UuLl][Qq]|[Ii][Ff])", any_of(key, "[ -]+"))
        }
        _ => {
            let words = any_of(key, "[ -]+");
            if key.list { format!("({words})(\\s*[;,]\\s*({words}){AFTER})*") } else { words }
        }
    };
    let states: Vec<String> = if key.scope == Scope::Top {
        vec![]
    } else {
        StateWord::WORDS
            .iter()
            .filter(|entry| key.states().contains(&entry.value))
            .flat_map(|entry| std::iter::once(&entry.word).chain(entry.also))
            .map(|word| in_any_case(word, "[ -]+"))
            .collect()
    };
    let all = std::iter::once(format!("({value})")).chain(states).collect::<Vec<_>>().join("|");
    json!({ "type": "string", "pattern": format!("^\\s*({all}){AFTER}$") })
}

/// What may stand after a value: doubt, and brackets that say how it is known or why it could not be told.
const AFTER: &str = "\\s*(\\([^)]*\\)|\\?|\\s)*";
/// Weeks and days.
const WEEKS: &str = "[0-9]{1,2} *([+] *[0-6]|[wW][a-zA-Z]*( *[0-6] *[dD][a-zA-Z]*)?)";
/// A length with its unit.
const LENGTH: &str = "[0-9]+(\\.[0-9]+)? *(cms?|mm|in|inch|inches|centimet(re|er)s?|millimet(re|er)s?)\\.?";

fn any_of(key: &Key, between: &str) -> String {
    let rows = (key.words)();
    let words: Vec<String> = rows
        .iter()
        .flat_map(|row| std::iter::once(&row.word).chain(row.also))
        .map(|word| in_any_case(word, between))
        .collect();
    words.join("|")
}

/// A pattern of `word` in any case, `the`, `her` and `a` before each part or not.
fn in_any_case(word: &str, between: &str) -> String {
    const SMALL: &str = "(([Tt]he|[Hh]er|[Aa]n?) )*";
    let parts = word.split([' ', '-']).map(|part| {
        let letters: String = part
            .chars()
            .map(|c| match c {
                c if c.is_alphabetic() => format!("[{}{}]", c.to_uppercase(), c.to_lowercase()),
                c if c.is_ascii_digit() => c.to_string(),
                c => format!("[{c}]"),
            })
            .collect();
        format!("{SMALL}{letters}")
    });
    parts.collect::<Vec<_>>().join(between)
}
