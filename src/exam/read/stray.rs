//! Keys that do not belong where they stand. In: a table and its scope. Out: a problem for each, with the key that is meant.

use super::value::printable;
use super::{Entry, MOST_PROBLEMS, Reader};
use crate::exam::foreign::{ENGLISH, is_foreign_key};
use crate::exam::keys::{self, KEYS, KEYS_MEANT, Scope, VAGINAL_KEYS};
use crate::exam::suggest::nearest;
use crate::exam::words::Row;
use crate::report::{Problem, clip, quoted};
use toml::de::{DeTable, DeValue};

/// Keys that would tell who the woman is: none of them is kept.
const IDENTITY: [&str; 14] = [
    "name",
    "mother-name",
    "patient",
    "patient-name",
    "surname",
    "first-name",
    "dob",
    "date-of-birth",
    "born",
    "nhs",
    "nhs-number",
    "hospital-number",
    "id",
    "address",
];

impl Reader<'_> {
    /// Report the keys that do not belong to `scope`.
    pub(super) fn known_keys(&mut self, table: &DeTable<'_>, scope: Scope, extra_notes: &mut Vec<String>) {
        let mut entries: Vec<Entry<'_>> = table.iter().collect();
        entries.sort_by_key(|(key, _)| key.span().start);
        for (key, value) in entries {
            if self.problems.len() > MOST_PROBLEMS {
                return;
            }
            let name: &str = key.get_ref();
            let heading = scope == Scope::Top && ["mother", "baby"].contains(&name);
            if heading || keys::find(scope, name).is_some() {
                continue;
            }
            if VAGINAL_KEYS.contains(&name) {
                self.vaginal((key, value), extra_notes);
            } else {
                self.unknown_key((key, value), scope);
            }
        }
    }

    /// Station, cervix and the like are kept as words for the chart; they never become fifths.
    pub(super) fn vaginal(&mut self, (key, value): Entry<'_>, extra_notes: &mut Vec<String>) {
        let name: &str = key.get_ref();
        let raw = match value.get_ref() {
            DeValue::String(text) => printable(text),
            DeValue::Integer(_)
            | DeValue::Float(_)
            | DeValue::Boolean(_)
            | DeValue::Datetime(_)
            | DeValue::Array(_)
            | DeValue::Table(_) => self.source.get(value.span()).unwrap_or_default().to_owned(),
        };
        extra_notes.push(format!("{name}: {raw}"));
        let message = format!(
            "{name}: findings of a vaginal examination are not recorded here; the words are kept in the note"
        );
        self.problems.push(
            Problem::at("vaginal-finding", self.file, key.span(), message)
                .expecting("findings of the abdomen; fifths above the brim are felt, never worked out from a station")
                .as_warning(),
        );
    }

    pub(super) fn unknown_key(&mut self, (key, value): Entry<'_>, scope: Scope) {
        let name: &str = key.get_ref();
        let at = |message: String| Problem::at("unknown-key", self.file, key.span(), message);
        let tidy = name.to_lowercase().replace(['_', ' '], "-");
        let meant = KEYS_MEANT.iter().find(|(tried, _)| *tried == tidy).map(|(_, meant)| *meant);
        let elsewhere =
            KEYS.iter().find(|k| k.name == name || Some(k.name) == meant).filter(|k| k.scope != scope);
        let is_table = matches!(value.get_ref(), DeValue::Table(_)) && scope == Scope::Top;
        let problem = if IDENTITY.contains(&tidy.as_str()) {
            let mut problem = at(format!("{} is not recorded here", quoted(name)));
            problem.id = "identity";
            problem.expecting("a file without names, dates of birth or numbers of people: take the line out, and write them on the page by hand")
        } else if let Some(elsewhere) = elsewhere.filter(|k| k.name == name) {
            let mut problem = at(format!("`{name}`: this belongs {}", elsewhere.scope.place()));
            problem.id = "misplaced-key";
            problem
        } else if is_table && tidy == "telephone" {
            at("this looks like the clinic's own file, not like a visit file".to_owned())
                .expecting("a visit file here; the clinic's file goes with --clinic FILE")
        } else if is_table {
            let rows = [
                Row { word: "mother", also: &["mum", "woman"] },
                Row { word: "baby", also: &["fetus", "foetus", "babies", "twin"] },
            ];
            at(format!("[{}] is not a heading used here", clip(name)))
                .expecting(if is_foreign_key(&tidy) {
                    ENGLISH
                } else {
                    "[mother], [baby], or [[baby]] twice for twins"
                })
                .suggesting(nearest(name, rows).map(|word| format!("[{word}]")))
        } else {
            let here = KEYS.iter().filter(|k| k.scope == scope).map(|k| Row { word: k.name, also: &[] });
            let anywhere = KEYS.iter().map(|k| Row { word: k.name, also: &[] });
            let near = meant.or_else(|| nearest(&tidy, here)).or_else(|| nearest(&tidy, anywhere));
            let place = near
                .and_then(|near| KEYS.iter().find(|k| k.name == near))
                .filter(|k| k.scope != scope)
                .map(|k| format!(" {}", k.scope.place()))
                .unwrap_or_default();
            if is_foreign_key(&tidy) {
                self.problems.push(at(format!("{} is not a key used here", quoted(name))).expecting(ENGLISH));
                return;
            }
            let names: Vec<&str> = KEYS.iter().filter(|k| k.scope == scope).map(|k| k.name).collect();
            at(format!("{} is not a key used here", quoted(name)))
                .expecting(names.join(", "))
                .suggesting(near.map(|near| format!("`{near}`{place}")))
        };
        self.problems.push(problem);
    }
}
