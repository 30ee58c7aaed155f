//! One finding changed in the text of a visit file. In: the text, and what is to stand at which key. Out: the same text with
//! those values; every other value, every comment and the order stay.
//!
//! A new key takes its place among its neighbours in the order of the hands. When a key is taken out, comments on lines of
//! their own stay; one at the end of its line goes with it. `file_of` writes a whole exam in the same way.

use super::dates::written;
use super::keys::{self, Key, Scope};
use super::model::Exam;
use super::say;
use toml_edit::{Array, ArrayOfTables, DocumentMut, Item, Table, TableLike, Value};

/// Babies in one exam.
const MOST_BABIES: usize = 2;

/// What is to stand at a key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Edit {
    /// The finding as `check` names it: `weeks`, `mother.fundal-height`, `baby.1.back`; or `baby.2` for the whole second baby,
    /// which any value opens.
    pub key: String,
    /// Its values in words; several for a list; none: the line is taken out.
    pub values: Vec<String>,
}

/// Where a key stands.
struct Stands {
    key: &'static Key,
    /// From 0.
    baby: usize,
}

impl Stands {
    fn find(path: &str) -> Result<Self, String> {
        let unknown = || format!("there is no finding `{path}`; `handspan words` lists them");
        let (scope, baby, name) = match path.split('.').collect::<Vec<_>>()[..] {
            [name] => (Scope::Top, 0, name),
            ["mother", name] => (Scope::Mother, 0, name),
            ["baby", number, name] => {
                let number = number.parse().ok().filter(|n| (1..=MOST_BABIES).contains(n));
                (Scope::Baby, number.ok_or_else(unknown)? - 1, name)
            }
            _ => return Err(unknown()),
        };
        keys::find(scope, name).map(|key| Self { key, baby }).ok_or_else(unknown)
    }
}

/// `text` with these values; `Err` says what cannot be done: an unknown key, or text that is not TOML.
pub fn edit(text: &str, edits: &[Edit]) -> Result<String, String> {
    let plain = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut file: DocumentMut = plain.parse().map_err(|fault: toml_edit::TomlError| {
        format!("the text cannot be taken apart: {}", fault.message())
    })?;
    for edit in edits {
        match &edit.key[..] {
            "baby.2" if edit.values.is_empty() => take_out_second(&mut file),
            "baby.2" => open_baby(&mut file, 1)?,
            path => {
                let stands = Stands::find(path)?;
                match value_of(stands.key, &edit.values) {
                    Some(value) => put(&mut file, &stands, value)?,
                    None => take_out(&mut file, &stands),
                }
            }
        }
    }
    // The parser forgets the carriage returns of Windows lines.
    let edited = file.to_string();
    Ok(if text.contains("\r\n") { edited.replace('\n', "\r\n") } else { edited })
}

/// An exam as a file of its own.
pub fn file_of(exam: &Exam) -> Result<String, String> {
    let dates = exam.dates;
    let dated =
        dates.visit.is_some() && (dates.due.is_some() || dates.last_period.is_some() || dates.scan.is_some());
    let mut edits: Vec<Edit> = vec![];
    let mut add = |key: &str, words: String| {
        let listed = Stands::find(key).is_ok_and(|stands| stands.key.list);
        let values = if listed { parts(&words) } else { vec![words] };
        edits.push(Edit { key: key.to_owned(), values });
    };
    for (key, day) in [("visit", dates.visit), ("due", dates.due), ("last-period", dates.last_period)] {
        if let Some(day) = day {
            add(key, written(day));
        }
    }
    if let Some(days) = dates.cycle {
        add("cycle", days.to_string());
    }
    if let Some((at, day)) = dates.scan {
        add("scan", format!("{at} on {}", written(day)));
    }
    for (key, words) in say::findings(exam) {
        if !(dated && key == "weeks") {
            add(&key, words);
        }
    }
    if exam.babies.len() > 1 {
        edits.push(Edit { key: "baby.2".to_owned(), values: vec!["recorded".to_owned()] });
    }
    edit("", &edits)
}

/// The values of a list in canonical words; what stands in brackets is not taken apart.
fn parts(words: &str) -> Vec<String> {
    let (mut parts, mut depth) = (vec![String::new()], 0_u32);
    for c in words.chars() {
        match c {
            '(' => depth += 1,
            ')' => depth = depth.saturating_sub(1),
            ';' if depth == 0 => {
                parts.push(String::new());
                continue;
            }
            _ => {}
        }
        if let Some(part) = parts.last_mut() {
            part.push(c);
        }
    }
    parts.iter().map(|part| part.trim().to_owned()).collect()
}

/// A value as people type it: days and numbers bare, words in quotes, several in brackets.
fn value_of(key: &Key, values: &[String]) -> Option<Value> {
    let one = |text: &String| {
        let day = ["visit", "due", "last-period"].contains(&key.name);
        match (text.parse::<toml_edit::Datetime>(), text.parse::<i64>()) {
            (Ok(date), _) if day => Value::from(date),
            (_, Ok(number)) if key.number => Value::from(number),
            _ => Value::from(text.as_str()),
        }
    };
    match values {
        [] => None,
        [text] => Some(one(text)),
        several => Some(Value::Array(several.iter().map(one).collect::<Array>())),
    }
}

/// The words before a line or a heading: blank lines and comments.
fn before(decor: &toml_edit::Decor) -> String {
    decor.prefix().and_then(|raw| raw.as_str()).unwrap_or_default().to_owned()
}

fn put(file: &mut DocumentMut, stands: &Stands, value: Value) -> Result<(), String> {
    match stands.key.scope {
        Scope::Top => {
            let bare = !file.iter().any(|(_, item)| item.is_value());
            put_in(file.as_table_mut(), stands.key, value);
            // What opens the file stays at its top.
            if bare
                && let Some(opening) = first_heading(file).map(|decor| {
                    let opening = before(decor);
                    decor.set_prefix("\n");
                    opening
                })
                && let Some(mut key) = file.as_table_mut().key_mut(stands.key.name)
            {
                key.leaf_decor_mut().set_prefix(opening.trim_start_matches('\n'));
            }
            Ok(())
        }
        Scope::Mother => {
            if file.get("mother").is_none() {
                open_mother(file);
            }
            put_like(file.get_mut("mother"), stands.key, value)
        }
        Scope::Baby => {
            open_baby(file, stands.baby)?;
            match file.get_mut("baby") {
                Some(Item::ArrayOfTables(babies)) => {
                    if let Some(baby) = babies.get_mut(stands.baby) {
                        put_in(baby, stands.key, value);
                    }
                    Ok(())
                }
                Some(Item::Value(Value::Array(babies))) => {
                    match babies.get_mut(stands.baby).and_then(Value::as_inline_table_mut) {
                        Some(baby) => {
                            TableLike::insert(baby, stands.key.name, Item::Value(value));
                            Ok(())
                        }
                        None => Err("`baby` is not a table; write [baby]".to_owned()),
                    }
                }
                baby => put_like(baby, stands.key, value),
            }
        }
    }
}

fn put_like(item: Option<&mut Item>, key: &Key, value: Value) -> Result<(), String> {
    match item {
        Some(Item::Table(table)) => put_in(table, key, value),
        Some(Item::Value(Value::InlineTable(table))) => {
            TableLike::insert(table, key.name, Item::Value(value));
        }
        _ => return Err(format!("a table is expected, {}", key.scope.place())),
    }
    Ok(())
}

/// The place of a key among its neighbours.
fn rank(scope: Scope, name: &str) -> usize {
    keys::KEYS.iter().position(|key| key.scope == scope && key.name == name).unwrap_or(keys::KEYS.len())
}

fn put_in(table: &mut Table, key: &Key, mut value: Value) {
    if let Some(Item::Value(old)) = table.get_mut(key.name) {
        *value.decor_mut() = old.decor().clone();
        *old = value;
        return;
    }
    let place = rank(key.scope, key.name);
    let after: Vec<String> = table
        .iter()
        .skip_while(|(name, item)| !item.is_value() || rank(key.scope, name) < place)
        .filter(|(_, item)| item.is_value())
        .map(|(name, _)| name.to_owned())
        .collect();
    let aligned = column(table).filter(|column| *column > key.name.len());
    value.decor_mut().set_prefix(" ");
    table.insert(key.name, Item::Value(value));
    if let (Some(column), Some(mut own)) = (aligned, table.key_mut(key.name)) {
        own.leaf_decor_mut().set_suffix(" ".repeat(column - key.name.len()));
    }
    for name in after {
        if let Some((own, item)) = table.remove_entry(&name) {
            table.insert_formatted(&own, item);
        }
    }
}

/// The column at which every `=` of a table stands, where someone has set them so: some key is followed by several spaces.
fn column(table: &Table) -> Option<usize> {
    let own = |name: &str| {
        let suffix = table.key(name)?.leaf_decor().suffix().and_then(|raw| raw.as_str()).unwrap_or(" ");
        Some((name.len() + suffix.len(), suffix.len()))
    };
    let columns: Vec<(usize, usize)> =
        table.iter().filter(|(_, item)| item.is_value()).filter_map(|(name, _)| own(name)).collect();
    let (first, _) = *columns.first()?;
    let set = columns.iter().any(|(_, spaces)| *spaces > 1);
    (set && columns.iter().all(|(column, _)| *column == first)).then_some(first)
}

/// The decor of the first heading of a file.
fn first_heading(file: &mut DocumentMut) -> Option<&mut toml_edit::Decor> {
    let (_, item) =
        file.as_table_mut().iter_mut().find(|(_, item)| item.is_table() || item.is_array_of_tables())?;
    heading(item)
}

/// The decor of a table's heading; of several tables, the first.
fn heading(item: &mut Item) -> Option<&mut toml_edit::Decor> {
    match item {
        Item::Table(table) => Some(table.decor_mut()),
        Item::ArrayOfTables(tables) => tables.get_mut(0).map(Table::decor_mut),
        Item::None | Item::Value(_) => None,
    }
}

/// A table with a blank line above its heading, unless it opens the file.
fn opened(first: bool) -> Table {
    let mut table = Table::new();
    table.decor_mut().set_prefix(if first { "" } else { "\n" });
    table
}

/// `[mother]`, above the babies.
fn open_mother(file: &mut DocumentMut) {
    let bare = !file.iter().any(|(_, item)| item.is_value());
    let mut mother = opened(bare);
    if let Some(Item::Value(_)) = file.get("baby") {
        // An inline table stands above every heading.
        mother.decor_mut().set_prefix("\n");
    } else if bare && let Some(decor) = file.get_mut("baby").and_then(heading) {
        mother.decor_mut().set_prefix(before(decor));
        decor.set_prefix("\n");
    }
    file.insert("mother", Item::Table(mother));
    if let Some((own, baby)) =
        file.get("baby").is_some_and(|baby| !baby.is_value()).then(|| file.remove_entry("baby")).flatten()
    {
        file.insert_formatted(&own, baby);
    }
}

/// The table of baby `index`; one `[baby]` becomes the first of two.
fn open_baby(file: &mut DocumentMut, index: usize) -> Result<(), String> {
    if file.get("baby").is_none() {
        let first = file.is_empty();
        file.insert("baby", Item::Table(opened(first)));
    }
    if index == 0 {
        return Ok(());
    }
    match file.get_mut("baby") {
        Some(item @ Item::Table(_)) => {
            let mut babies = ArrayOfTables::new();
            if let Item::Table(first) = std::mem::take(item) {
                babies.push(first);
            }
            babies.push(opened(false));
            *item = Item::ArrayOfTables(babies);
            Ok(())
        }
        Some(Item::ArrayOfTables(babies)) => {
            while babies.len() <= index {
                babies.push(opened(false));
            }
            Ok(())
        }
        Some(Item::Value(Value::Array(babies))) if babies.len() > index => Ok(()),
        _ => Err("a second baby needs [[baby]] twice".to_owned()),
    }
}

fn take_out_second(file: &mut DocumentMut) {
    match file.get_mut("baby") {
        Some(Item::ArrayOfTables(babies)) if babies.len() > 1 => {
            babies.remove(1);
        }
        Some(Item::Value(Value::Array(babies))) if babies.len() > 1 => {
            babies.remove(1);
        }
        _ => {}
    }
}

fn take_out(file: &mut DocumentMut, stands: &Stands) {
    let name = stands.key.name;
    let comments = match stands.key.scope {
        Scope::Top => without(file.as_table_mut(), name),
        Scope::Mother => without_like(file.get_mut("mother"), name),
        Scope::Baby => match file.get_mut("baby") {
            Some(Item::ArrayOfTables(babies)) => {
                babies.get_mut(stands.baby).and_then(|baby| without(baby, name))
            }
            Some(Item::Value(Value::Array(babies))) => {
                if let Some(baby) = babies.get_mut(stands.baby).and_then(Value::as_inline_table_mut) {
                    baby.remove(name);
                }
                None
            }
            baby => without_like(baby, name),
        },
    };
    let Some(comments) = comments else { return };
    // Nothing follows in its table: the comments stand before what comes next.
    let next = match stands.key.scope {
        Scope::Top => first_heading(file),
        Scope::Mother => file.get_mut("baby").and_then(heading),
        Scope::Baby => match file.get_mut("baby") {
            Some(Item::ArrayOfTables(babies)) => babies.get_mut(stands.baby + 1).map(Table::decor_mut),
            _ => None,
        },
    };
    match next {
        Some(decor) => {
            let own = before(decor);
            decor.set_prefix(format!("{comments}{own}"));
        }
        None => {
            let own = file.trailing().as_str().unwrap_or_default().to_owned();
            file.set_trailing(format!("{comments}{own}"));
        }
    }
}

fn without_like(item: Option<&mut Item>, name: &str) -> Option<String> {
    match item {
        Some(Item::Table(table)) => without(table, name),
        Some(Item::Value(Value::InlineTable(table))) => {
            table.remove(name);
            None
        }
        _ => None,
    }
}

/// Take a key out of a table. What stood above it goes above the next key; handed back when there is none.
fn without(table: &mut Table, name: &str) -> Option<String> {
    let next = table
        .iter()
        .skip_while(|(own, _)| *own != name)
        .skip(1)
        .find(|(_, item)| item.is_value())
        .map(|(own, _)| own.to_owned());
    let (key, _) = table.remove_entry(name)?;
    let comments = before(key.leaf_decor());
    if !comments.contains('#') {
        return None;
    }
    match next.and_then(|next| table.key_mut(&next)) {
        Some(mut next) => {
            let own = before(next.leaf_decor());
            next.leaf_decor_mut().set_prefix(format!("{comments}{own}"));
            None
        }
        None => Some(comments),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn edited(text: &str, edits: &[(&str, &[&str])]) -> String {
        let edits: Vec<Edit> = edits
            .iter()
            .map(|(key, values)| Edit {
                key: (*key).to_owned(),
                values: values.iter().map(|value| (*value).to_owned()).collect(),
            })
            .collect();
        edit(text, &edits).unwrap_or_else(|why| panic!("{why}"))
    }

    #[test]
    fn findings_are_added_in_the_order_of_the_hands() {
        let text = edited(
            "",
            &[
                ("baby.1.head", &["above pubic bone"]),
                ("baby.1.back", &["left front"]),
                ("mother.pulse", &["84"]),
                ("weeks", &["37+0"]),
                ("visit", &["2026-03-14"]),
                ("baby.1.limbs", &["right, above navel", "right, below navel"]),
            ],
        );
        assert_eq!(
            text,
            "weeks = \"37+0\"\nvisit = 2026-03-14\n\n[mother]\npulse = 84\n\n[baby]\nback = \"left front\"\nlimbs = \
             [\"right, above navel\", \"right, below navel\"]\nhead = \"above pubic bone\"\n"
        );
    }

    #[test]
    fn other_lines_comments_and_columns_stay() {
        let text = "# A visit.\nweeks = \"37+0\"  # by scan\n\n[mother]\nmovements     = \"usual\"\n# measured twice\n\
                    fundal-height = \"35 cm\" # tape\n\n[baby]\nback = \"left\"\n";
        assert_eq!(edited(text, &[]), text);
        assert_eq!(edited(text, &[("mother.fundal-height", &["36 cm"])]), text.replace("35 cm", "36 cm"));
        assert_eq!(
            edited(text, &[("mother.pulse", &["80"])]),
            text.replace("\n# measured", "\npulse         = 80\n# measured")
        );
        assert_eq!(
            edited(text, &[("mother.fundal-height", &[])]),
            "# A visit.\nweeks = \"37+0\"  # by scan\n\n[mother]\nmovements     = \"usual\"\n# measured twice\n\n[baby]\n\
             back = \"left\"\n"
        );
        assert_eq!(edited(text, &[("weeks", &[])]), text.replace("weeks = \"37+0\"  # by scan\n", ""));
        assert_eq!(
            edited(&text.replace('\n', "\r\n"), &[("weeks", &["38+0"])]),
            text.replace("37+0", "38+0").replace('\n', "\r\n")
        );
    }

    #[test]
    fn what_opens_a_file_stays_at_its_top() {
        let text = "# A visit.\n[baby]\nback = \"left\"\n";
        assert_eq!(
            edited(text, &[("weeks", &["30+0"])]),
            "# A visit.\nweeks = \"30+0\"\n\n[baby]\nback = \"left\"\n"
        );
        assert_eq!(
            edited(text, &[("mother.movements", &["usual"])]),
            "# A visit.\n[mother]\nmovements = \"usual\"\n\n[baby]\nback = \"left\"\n"
        );
    }

    #[test]
    fn a_second_baby_comes_and_goes() {
        let two = edited("[baby]\nback = \"left\"\n", &[("baby.2.back", &["right"])]);
        assert_eq!(two, "[[baby]]\nback = \"left\"\n\n[[baby]]\nback = \"right\"\n");
        assert_eq!(edited(&two, &[("baby.2", &[])]), "[[baby]]\nback = \"left\"\n");
        let inline = edited(
            "baby = [{ back = \"left\" }, { head = \"fundus\" }]\n",
            &[("baby.2.back", &["right"]), ("baby.1.back", &[])],
        );
        assert_eq!(inline, "baby = [{}, { head = \"fundus\" , back = \"right\" }]\n");
    }

    #[test]
    fn what_cannot_be_done_is_said() {
        let one = |key: &str| edit("", &[Edit { key: key.to_owned(), values: vec!["x".to_owned()] }]);
        for key in ["wekes", "mother.back", "baby.3.back", "baby.0.back", "baby.1", ""] {
            assert!(one(key).is_err_and(|why| why.contains("no finding")), "{key}");
        }
        let broken = edit("weeks = \n", &[]);
        assert!(broken.is_err_and(|why| why.starts_with("the text cannot be taken apart")));
    }

    #[test]
    fn lists_are_taken_apart_outside_brackets() {
        assert_eq!(parts("left; right (scan; late)?"), ["left", "right (scan; late)?"]);
    }
}
