//! A visit file in canonical words. In: the text of a visit file that can be read. Out: the same file with every value said in
//! the words that are printed; comments, order and all that is not a value stay as they are.
//!
//! Each text is tidied by itself, so that a list keeps its parts and the comments between them.

use super::keys::{self, Scope};
use super::read::canonical;
use toml_edit::{DocumentMut, Formatted, Item, TableLike, Value};

/// `text` in canonical words; `Err` says why it could not be taken apart, which a file that was read without error never is.
pub fn tidy(text: &str) -> Result<String, String> {
    let mut file: DocumentMut =
        text.parse().map_err(|fault: toml_edit::TomlError| fault.message().to_owned())?;
    table(file.as_table_mut(), Scope::Top);
    if let Some(mother) = file.get_mut("mother").and_then(Item::as_table_like_mut) {
        table(mother, Scope::Mother);
    }
    match file.get_mut("baby") {
        Some(Item::ArrayOfTables(babies)) => babies.iter_mut().for_each(|baby| table(baby, Scope::Baby)),
        Some(Item::Value(Value::Array(babies))) => {
            babies
                .iter_mut()
                .filter_map(Value::as_inline_table_mut)
                .for_each(|baby| table(baby, Scope::Baby));
        }
        Some(baby) => {
            if let Some(baby) = baby.as_table_like_mut() {
                table(baby, Scope::Baby);
            }
        }
        None => {}
    }
    // The parser forgets the carriage returns of Windows lines.
    let tidied = file.to_string();
    Ok(if text.contains("\r\n") { tidied.replace('\n', "\r\n") } else { tidied })
}

fn table(table: &mut dyn TableLike, scope: Scope) {
    for (name, item) in table.iter_mut() {
        let Some(key) = keys::find(scope, name.get()).filter(|key| key.name != "note") else { continue };
        match item {
            Item::Value(Value::Array(list)) => list.iter_mut().for_each(|value| tidy_value(key, value)),
            Item::Value(value) => tidy_value(key, value),
            Item::None | Item::Table(_) | Item::ArrayOfTables(_) => {}
        }
    }
}

/// Only texts are said otherwise: numbers, dates and yes or no stay as they were typed.
fn tidy_value(key: &keys::Key, value: &mut Value) {
    let Value::String(text) = value else { return };
    let Some(words) = canonical(key, text.value()).filter(|words| words != text.value()) else { return };
    let decor = text.decor().clone();
    let mut tidied = Formatted::new(words);
    *tidied.decor_mut() = decor;
    *text = tidied;
}
