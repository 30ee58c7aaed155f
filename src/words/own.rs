//! A clinic's own wording of a language. In: a language, the id of a message, a sentence of the clinic's file. Out: whether it may
//! stand in place of ours, and if not, why; every message of a language as it is written; and the checksum of all that stands on
//! a page for the family, by which a clinic signs it.
//!
//! A correction keeps the values of ours, its sides and its numbers. A warning cannot be blanked or cut short, the mark of a
//! draft not changed.

use super::{Language, Part, Words, ids, resource};
use crate::words::WordsError;
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};

/// Sentences of a clinic's own, by the ids of the messages that they stand in place of.
pub type Own = BTreeMap<String, String>;

/// Messages that warn, by how their ids begin: a correction of one is never much shorter than ours.
const WARNINGS: [&str; 24] = [
    "family-go-",
    "family-come-",
    "family-call-",
    "family-cord",
    "family-urgent-",
    "family-moves-",
    "family-heavy",
    "family-worried",
    "family-hands",
    "family-scan",
    "family-written",
    "family-turn",
    "family-listen-limits",
    "family-heart",
    "family-kind-come",
    "family-kind-plan",
    "family-use",
    "family-emergency",
    "family-phone",
    "family-number-blank",
    "remark-",
    "check-",
    "handover-",
    "wall-now-",
];
/// Messages that are no sentences: what the program knows of a language.
const FIXED: [&str; 3] = ["language-", "draft-", "decimal-"];
/// The words of her two sides, by language.
const SIDES: [(&str, [&[&str]; 2]); 5] = [
    ("en", [&["left"], &["right"]]),
    (
        "es",
        [
            &["izquierda", "izquierdo", "izquierdas", "izquierdos"],
            &["derecha", "derecho", "derechas", "derechos"],
        ],
    ),
    ("fr", [&["gauche", "gauches"], &["droite", "droit", "droites", "droits"]]),
    (
        "pl",
        [
            &["lewa", "lewej", "lewą", "lewy", "lewego", "lewym"],
            &["prawa", "prawej", "prawą", "prawy", "prawego", "prawym"],
        ],
    ),
    (
        "pt",
        [
            &["esquerda", "esquerdo", "esquerdas", "esquerdos"],
            &["direita", "direito", "direitas", "direitos"],
        ],
    ),
];
/// Uses of those words that name no side.
const NO_SIDES: [&str; 7] =
    ["right up to", "right away", "be right", "bent right", "left out", "was left", "s left"];

impl Language {
    /// Its messages as they are written, in the order of the English: what its own file does not say is said as in the file under
    /// it.
    pub fn messages(&self) -> Vec<(String, String)> {
        let own = written(self.text);
        match self.under {
            None => own,
            Some(under) => {
                let over: BTreeMap<String, String> = own.into_iter().collect();
                let said = |(id, text): (String, String)| {
                    let text = over.get(&id).cloned().unwrap_or(text);
                    (id, text)
                };
                written(under).into_iter().map(said).collect()
            }
        }
    }

    /// Why a sentence cannot stand in place of the message `id`; in plain words, with what to do.
    pub fn refuses(&self, id: &str, text: &str) -> Option<String> {
        let messages = self.messages();
        let Some((_, ours)) = messages.iter().find(|(known, _)| known == id) else {
            let near = messages
                .iter()
                .map(|(known, _)| (strsim::normalized_damerau_levenshtein(known, id), known))
                .filter(|(near, _)| *near >= 0.6)
                .max_by(|a, b| a.0.total_cmp(&b.0))
                .map(|(_, known)| format!("; did you mean `{known}`?"));
            return Some(format!("there is no message `{id}`{}", near.unwrap_or_default()));
        };
        if !is_sentence(id) {
            return Some(format!("`{id}` is not a sentence to correct"));
        }
        if !text.chars().any(char::is_alphabetic) {
            return Some(format!(
                "`{id}` cannot be left empty; write what is to stand there, or leave the line out"
            ));
        }
        if let Err(fault) = self.reads(id, text, &messages) {
            return Some(format!("`{id}` cannot be read: {fault}"));
        }
        let (wanted, given) = (values(ours), values(text));
        if wanted != given {
            return Some(format!("`{id}` must keep {}, and no other value", listed(&wanted)));
        }
        if let Some(side) = self.sides(ours).zip(self.sides(text)).and_then(|(wanted, given)| {
            (wanted != given).then(|| if wanted.is_empty() { "no side".to_owned() } else { wanted })
        }) {
            return Some(format!("`{id}` must name the sides that ours names, in their order: {side}"));
        }
        if WARNINGS.iter().any(|start| id.starts_with(start)) {
            let letters = |text: &str| plain(text).chars().filter(|c| c.is_alphabetic()).count();
            if letters(text) * 5 < letters(ours) * 2 {
                return Some(format!(
                    "`{id}` is a warning and cannot be cut short; ours: {}",
                    one_line(ours)
                ));
            }
            if let Some(missing) = numbers(ours).difference(&numbers(text)).next() {
                return Some(format!("`{id}` is a warning and must keep the number {missing}"));
            }
        }
        None
    }

    /// Whether Fluent reads it as this one message.
    fn reads(&self, id: &str, text: &str, messages: &[(String, String)]) -> Result<(), WordsError> {
        let others = values_of_other_messages(text);
        if let Some(missing) = others.iter().find(|other| !messages.iter().any(|(known, _)| known == *other))
        {
            return Err(WordsError(format!("there is no message `{missing}`")));
        }
        if others.contains(id) {
            return Err(WordsError("it names itself".to_owned()));
        }
        let read = Words::from_text(self.tag, &as_message(id, text))?;
        match read.has(id) {
            true => Ok(()),
            false => Err(WordsError("it is no sentence".to_owned())),
        }
    }

    /// The sides that a text names, in their order.
    fn sides(&self, text: &str) -> Option<String> {
        let tag = self.tag.split('-').next().unwrap_or_default();
        let (_, [lefts, rights]) = SIDES.iter().find(|(known, _)| *known == tag)?;
        let text = NO_SIDES.iter().fold(plain(text).to_lowercase(), |text, phrase| text.replace(phrase, ""));
        let side = |word: &str| match (lefts.contains(&word), rights.contains(&word)) {
            (true, _) => Some("left"),
            (_, true) => Some("right"),
            _ => None,
        };
        let sides: Vec<&str> = text.split(|c: char| !c.is_alphabetic()).filter_map(side).collect();
        Some(sides.join(", "))
    }

    /// The checksum of every sentence that may stand on a page for the family, with these corrections: sixteen digits.
    pub fn family_checksum(&self, own: &Own) -> String {
        let mut hash = Sha256::new();
        for (id, text) in self.messages().iter().filter(|(id, _)| Part::of(id) == Some(Part::Family)) {
            // What says whether the language is signed is no sentence of it.
            if id.starts_with("language-signed") {
                continue;
            }
            hash.update(format!("{id} = {}\n", one_line(own.get(id).unwrap_or(text))));
        }
        hash.finalize().iter().take(8).map(|byte| format!("{byte:02x}")).collect()
    }
}

impl Words {
    /// Lets sentences of a clinic's own stand in place of ours.
    pub fn correct(&mut self, own: &Own) -> Result<(), WordsError> {
        for (id, text) in own {
            let read = resource(&self.lang, &as_message(id, text))?;
            self.bundle.add_resource_overriding(read);
        }
        Ok(())
    }
}

/// A sentence as a message of a file; lines that go on are indented.
fn as_message(id: &str, text: &str) -> String {
    format!("{id} = {}\n", text.trim().replace('\n', "\n    "))
}

/// The messages of a file, each with its lines.
fn written(text: &str) -> Vec<(String, String)> {
    let mut out: Vec<(String, String)> = vec![];
    let known: BTreeSet<&str> = ids(text).collect();
    for line in text.lines() {
        match line.split_once(" =") {
            Some((id, rest)) if known.contains(id) => out.push((id.to_owned(), rest.trim().to_owned())),
            _ if line.starts_with(' ') => {
                if let Some((_, text)) = out.last_mut() {
                    text.push('\n');
                    text.push_str(line.trim());
                }
            }
            _ => {}
        }
    }
    out
}

/// Whether a message may be corrected: not what the program knows of a language, nor the mark of a draft.
pub fn is_sentence(id: &str) -> bool {
    !FIXED.iter().any(|start| id.starts_with(start))
}

/// A text on one line, as it is shown.
pub fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The values that a message takes, with their sign.
fn values(text: &str) -> BTreeSet<String> {
    let name = |rest: &str| -> String {
        rest.chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '-' || *c == '_').collect()
    };
    text.split('$').skip(1).map(|rest| format!("${}", name(rest).trim_end_matches('-'))).collect()
}

/// The other messages that a message takes.
fn values_of_other_messages(text: &str) -> BTreeSet<String> {
    let whole = text.split('{').skip(1).filter_map(|rest| rest.split('}').next()).map(str::trim);
    let name = |name: &&str| {
        name.starts_with(|c: char| c.is_ascii_lowercase())
            && name.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
    };
    whole.filter(name).map(str::to_owned).collect()
}

fn listed(values: &BTreeSet<String>) -> String {
    match values.is_empty() {
        true => "no value".to_owned(),
        false => values.iter().map(|name| format!("{{ {name} }}")).collect::<Vec<_>>().join(", "),
    }
}

/// The text without what stands between braces, and without the keys of a choice.
fn plain(text: &str) -> String {
    let mut out = String::new();
    let mut skip = None;
    for c in text.chars() {
        match (c, skip) {
            ('[', None) => skip = Some(']'),
            (c, Some(end)) if c == end => skip = None,
            (_, Some(_)) => {}
            (c, None) => out.push(c),
        }
    }
    for name in values(text) {
        out = out.replace(&name, "");
    }
    out
}

fn numbers(text: &str) -> BTreeSet<String> {
    let plain = plain(text).replace(',', ".");
    let parts = plain.split(|c: char| !c.is_ascii_digit() && c != '.');
    parts.map(|part| part.trim_matches('.').to_owned()).filter(|part| !part.is_empty()).collect()
}
