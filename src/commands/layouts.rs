//! `layouts`, and which layout a document is laid out by. In: a name, or a file of one's own. Out: the layout, or its
//! problems drawn under their lines; the list of what is shipped, or one file of it to start from.

use super::{Outcome, Source, exit};
use crate::report::{Look, draw};
use crate::sheet::{Layout, SHIPPED, Shipped, nearest};

/// A layout as it was asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Chosen {
    /// A shipped one, by its name.
    Named(String),
    /// A file of one's own.
    Own(Source),
}

/// The layout chosen, or `usual`; else why there is none, as it is to be printed.
pub fn layout(chosen: Option<&Chosen>, usual: Shipped, look: Look) -> Result<Layout, String> {
    let (name, text) = match chosen {
        None => (format!("{}.toml", usual.name), usual.text),
        Some(Chosen::Named(name)) => {
            let shipped = shipped(name)?;
            (format!("{}.toml", shipped.name), shipped.text)
        }
        Some(Chosen::Own(source)) => {
            let bytes = source
                .bytes
                .as_ref()
                .map_err(|why| format!("handspan: {}: cannot be read: {why}\n", source.name))?;
            let text = std::str::from_utf8(bytes)
                .map_err(|_| format!("handspan: {}: is not UTF-8 text; save it as UTF-8\n", source.name))?;
            (source.name.clone(), text)
        }
    };
    Layout::read(&name, text)
        .map_err(|fault| draw(&fault.problems, text.trim_start_matches('\u{feff}'), look))
}

fn shipped(name: &str) -> Result<&'static Shipped, String> {
    SHIPPED.iter().find(|one| one.name == name).ok_or_else(|| {
        let names = SHIPPED.map(|one| one.name);
        let near = nearest(name, &names).map(|near| format!("; did you mean {near}?")).unwrap_or_default();
        format!(
            "handspan: there is no layout `{name}`{near}; there are {}, or name a file of your own ending in .toml\n",
            names.join(", ")
        )
    })
}

/// The list, or the text of one.
pub fn run(name: Option<&str>) -> Outcome {
    match name {
        None => {
            let wide = SHIPPED.iter().map(|one| one.name.len()).max().unwrap_or(0);
            let row = |one: &Shipped| format!("{:<wide$} {}\n", one.name, one.about);
            Outcome { text: SHIPPED.iter().map(row).collect(), ..Outcome::default() }
        }
        Some(name) => match shipped(name) {
            Ok(one) => Outcome { text: one.text.to_owned(), ..Outcome::default() },
            Err(notes) => Outcome { notes, code: exit::FAILED, ..Outcome::default() },
        },
    }
}
