//! Reading a layout file. In: TOML text. Out: `Layout`, or the first problem with its line.

use super::layout::{Edge, Holds, Layout, LayoutError, Paper, Place, nearest};
use serde::Deserialize;
use std::ops::Range;
use toml::Spanned;

/// No printer reaches further out than this, in mm.
const PRINTABLE_MARGIN_MM: f32 = 8.0;
/// No words for families are set smaller than this, in points (source: CDC Simply Put, CMS Toolkit, in readability.csv).
const SMALLEST_TYPE_PT: f32 = 12.0;
/// Nor any words smaller than this, whatever a layout says, in points.
const SMALLEST_OF_ALL_PT: f32 = 6.0;

/// The layout in `text`; `file` is its name in messages.
pub(super) fn read(file: &str, text: &str) -> Result<Layout, LayoutError> {
    let reader = Reader { file, text };
    reader.check_keys()?;
    let raw: RawLayout = toml::from_str(text).map_err(|e| reader.error(e.span(), e.message().to_owned()))?;
    reader.layout(raw)
}

#[derive(Deserialize)]
struct RawLayout {
    page: RawPage,
    #[serde(rename = "box")]
    boxes: Vec<RawBox>,
}

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case")]
struct RawPage {
    paper: Spanned<String>,
    margin: Spanned<String>,
    scale: Option<Spanned<String>>,
    columns: Option<Spanned<u16>>,
    column_gap: Option<Spanned<String>>,
    row_gap: Option<Spanned<String>>,
    smallest_type: Option<Spanned<String>>,
}

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case")]
struct RawBox {
    name: Spanned<String>,
    holds: Option<Spanned<OneOrMore>>,
    row: Option<Spanned<String>>,
    columns: Option<Spanned<String>>,
    r#type: Option<Spanned<String>>,
    may_shrink: Option<Spanned<String>>,
    at_least: Option<Spanned<String>>,
    edge: Option<Spanned<String>>,
    padding: Option<Spanned<String>>,
}

/// One word, or several in square brackets.
#[derive(Deserialize)]
#[serde(untagged, expecting = "holds is a word in quotes, or several in square brackets")]
enum OneOrMore {
    One(String),
    More(Vec<String>),
}

const PAGE_KEYS: [&str; 7] =
    ["paper", "margin", "scale", "columns", "column-gap", "row-gap", "smallest-type"];
const BOX_KEYS: [&str; 9] =
    ["name", "holds", "row", "columns", "type", "may-shrink", "at-least", "edge", "padding"];

/// Reads one file; every error leaves through [`Reader::error`].
struct Reader<'a> {
    file: &'a str,
    text: &'a str,
}

impl Reader<'_> {
    fn error(&self, span: Option<Range<usize>>, message: String) -> LayoutError {
        let place = span.map(|span| {
            let before = &self.text[..span.start.min(self.text.len())];
            let line = before.matches('\n').count() + 1;
            let column = before.rsplit('\n').next().unwrap_or_default().chars().count() + 1;
            (line, column)
        });
        LayoutError { file: self.file.to_owned(), place, message }
    }

    /// Unknown keys are errors that name the nearest known one.
    fn check_keys(&self) -> Result<(), LayoutError> {
        let table =
            toml::de::DeTable::parse(self.text).map_err(|e| self.error(e.span(), e.message().to_owned()))?;
        let unknown = |key: &Spanned<toml::de::DeString<'_>>, place: &str, known: &[&str]| {
            self.error(
                Some(key.span()),
                format!(
                    "{place}`{}` is not known here{}; known are {}",
                    key.get_ref(),
                    nearest(key.get_ref(), known),
                    known.join(", ")
                ),
            )
        };
        let is =
            |key: &Spanned<toml::de::DeString<'_>>, known: &[&str]| known.contains(&key.get_ref().as_ref());
        for (key, value) in table.get_ref() {
            if !is(key, &["page", "box"]) {
                return Err(unknown(key, "", &["page", "box"]));
            }
            if let toml::de::DeValue::Table(page) = value.get_ref()
                && let Some(odd) = page.keys().find(|k| !is(k, &PAGE_KEYS))
            {
                return Err(unknown(odd, "page: ", &PAGE_KEYS));
            }
            let toml::de::DeValue::Array(boxes) = value.get_ref() else { continue };
            for (number, one) in boxes.iter().enumerate() {
                let toml::de::DeValue::Table(one) = one.get_ref() else { continue };
                if let Some(odd) = one.keys().find(|k| !is(k, &BOX_KEYS)) {
                    let name = one
                        .iter()
                        .find(|(k, _)| k.get_ref() == "name")
                        .and_then(|(_, v)| v.get_ref().as_str().map(|s| format!("box `{s}`: ")))
                        .unwrap_or_else(|| format!("box {}: ", number + 1));
                    return Err(unknown(odd, &name, &BOX_KEYS));
                }
            }
        }
        Ok(())
    }

    fn layout(&self, raw: RawLayout) -> Result<Layout, LayoutError> {
        let page = &raw.page;
        let paper = self.paper(page)?;
        let margin_mm = self.mm("page: margin", &page.margin)?;
        if margin_mm < PRINTABLE_MARGIN_MM && !matches!(paper, Paper::AsPicture(_)) {
            return Err(self.error(
                Some(page.margin.span()),
                format!(
                    "page: margin {margin_mm} mm cannot be printed; write {PRINTABLE_MARGIN_MM} mm or more"
                ),
            ));
        }
        let columns = page.columns.as_ref().map_or(1, |c| *c.get_ref());
        if !(1..=24).contains(&columns) {
            let span = page.columns.as_ref().map(Spanned::span);
            return Err(self.error(span, format!("page: columns = {columns}; write 1 to 24")));
        }
        let gap = |key: &str, value: &Option<Spanned<String>>| match value {
            Some(v) => self.mm(key, v),
            None => Ok(0.0),
        };
        let smallest_pt = match &page.smallest_type {
            None => SMALLEST_TYPE_PT,
            Some(v) => self.pt("page: smallest-type", v, SMALLEST_OF_ALL_PT)?,
        };
        let mut boxes: Vec<Place> = vec![];
        for raw in &raw.boxes {
            let place = self.place(raw, columns, smallest_pt)?;
            if boxes.iter().any(|b| b.name == place.name) {
                return Err(self.error(Some(raw.name.span()), format!("box `{}` is there twice", place.name)));
            }
            boxes.push(place);
        }
        if boxes.is_empty() {
            return Err(self.error(None, "there is no [[box]]".to_owned()));
        }
        Ok(Layout {
            file: self.file.to_owned(),
            paper,
            margin_mm,
            smallest_pt,
            columns,
            column_gap_mm: gap("page: column-gap", &page.column_gap)?,
            row_gap_mm: gap("page: row-gap", &page.row_gap)?,
            boxes,
        })
    }

    fn paper(&self, page: &RawPage) -> Result<Paper, LayoutError> {
        let span = Some(page.paper.span());
        match (page.paper.get_ref().as_str(), &page.scale) {
            ("as picture", Some(scale)) => {
                let words = scale.get_ref();
                let mm = words.strip_suffix(" mm per cm").and_then(|n| n.trim().parse::<f32>().ok());
                match mm {
                    Some(mm) if mm.is_finite() && (0.1..=10.0).contains(&mm) => Ok(Paper::AsPicture(mm)),
                    _ => Err(self.error(
                        Some(scale.span()),
                        format!("page: scale `{words}`; write for example \"3.5 mm per cm\", from 0.1 to 10"),
                    )),
                }
            }
            ("as picture", None) => Err(self.error(
                span,
                "page: paper \"as picture\" needs a scale, such as \"3.5 mm per cm\"".to_owned(),
            )),
            (_, Some(scale)) => Err(self.error(
                Some(scale.span()),
                "page: scale goes with paper = \"as picture\"; on other paper the box decides".to_owned(),
            )),
            (word, None) => {
                Paper::named(word).map_err(|message| self.error(span, format!("page: {message}")))
            }
        }
    }

    fn place(&self, raw: &RawBox, columns: u16, smallest_pt: f32) -> Result<Place, LayoutError> {
        let name = raw.name.get_ref().clone();
        let at = |key: &str| format!("box `{name}`: {key}");
        let holds = match &raw.holds {
            None => vec![],
            Some(held) => self.all_held(&name, held)?,
        };
        let span = |value: &Option<Spanned<String>>, key: &str, last: u16| match value {
            None => Ok((1, last)),
            Some(v) => range(v.get_ref())
                .filter(|&(a, b)| 1 <= a && a <= b && b <= 24.min(last.max(1)))
                .ok_or_else(|| {
                    self.error(
                        Some(v.span()),
                        format!(
                            "{} `{}`; write a number or a range such as \"2-4\", up to {last}",
                            at(key),
                            v.get_ref()
                        ),
                    )
                }),
        };
        let rows = match &raw.row {
            None => (1, 1),
            Some(_) => span(&raw.row, "row", 24)?,
        };
        let type_pt = match &raw.r#type {
            None => SMALLEST_TYPE_PT.max(smallest_pt),
            Some(v) => self.pt(&at("type"), v, smallest_pt)?,
        };
        let may_shrink_pt = match &raw.may_shrink {
            None => type_pt,
            Some(v) => self.pt(&at("may-shrink"), v, smallest_pt)?.min(type_pt),
        };
        let mm = |key: &str, value: &Option<Spanned<String>>| match value {
            None => Ok(0.0),
            Some(v) => self.mm(&at(key), v),
        };
        Ok(Place {
            holds,
            rows,
            columns: span(&raw.columns, "columns", columns)?,
            type_pt,
            may_shrink_pt,
            at_least_mm: mm("at-least", &raw.at_least)?,
            edge: self.one_of(
                &at("edge"),
                &raw.edge,
                &[("none", Edge::None), ("line", Edge::Line), ("bold", Edge::Bold)],
            )?,
            padding_mm: mm("padding", &raw.padding)?,
            name,
        })
    }

    fn all_held(&self, name: &str, value: &Spanned<OneOrMore>) -> Result<Vec<Holds>, LayoutError> {
        let words = match value.get_ref() {
            OneOrMore::One(word) => std::slice::from_ref(word),
            OneOrMore::More(words) => words,
        };
        let held = words.iter().map(|w| self.held(name, w, value.span())).collect::<Result<Vec<_>, _>>()?;
        if held.contains(&Holds::Picture) && held.len() > 1 {
            return Err(
                self.error(Some(value.span()), format!("box `{name}`: a picture needs a box of its own"))
            );
        }
        Ok(held)
    }

    fn held(&self, name: &str, word: &str, span: Range<usize>) -> Result<Holds, LayoutError> {
        const KNOWN: &str = "\"picture\", \"words:MESSAGE\", \"lines:NUMBER\"";
        if word == "picture" {
            return Ok(Holds::Picture);
        }
        match word.split_once(':') {
            Some(("words", id)) if !id.is_empty() => return Ok(Holds::Words(id.to_owned())),
            Some(("lines", n)) => {
                if let Ok(n @ 1..=20) = n.parse::<u8>() {
                    return Ok(Holds::Lines(n));
                }
            }
            _ => {}
        }
        let kind = word.split(':').next().unwrap_or_default();
        Err(self.error(
            Some(span),
            format!(
                "box `{name}`: holds `{word}` is not known{}; known are {KNOWN}",
                nearest(kind, &["picture", "words", "lines"])
            ),
        ))
    }

    /// The value of the word given; the first of `known` when none is.
    fn one_of<T: Copy>(
        &self,
        what: &str,
        value: &Option<Spanned<String>>,
        known: &[(&str, T)],
    ) -> Result<T, LayoutError> {
        let Some(value) = value else { return Ok(known[0].1) };
        let word = value.get_ref().as_str();
        known.iter().find(|(w, _)| *w == word).map(|(_, v)| *v).ok_or_else(|| {
            let words: Vec<&str> = known.iter().map(|(w, _)| *w).collect();
            let near = nearest(word, &words);
            self.error(
                Some(value.span()),
                format!("{what} `{word}` is not known{near}; known are {}", words.join(", ")),
            )
        })
    }

    fn mm(&self, what: &str, value: &Spanned<String>) -> Result<f32, LayoutError> {
        let word = value.get_ref();
        quantity(word, "mm").filter(|mm| (0.0..=2000.0).contains(mm)).ok_or_else(|| {
            self.error(Some(value.span()), format!("{what} `{word}`; write a length such as \"10 mm\""))
        })
    }

    fn pt(&self, what: &str, value: &Spanned<String>, smallest: f32) -> Result<f32, LayoutError> {
        let word = value.get_ref();
        match quantity(word, "pt") {
            Some(pt) if (smallest..=96.0).contains(&pt) => Ok(pt),
            Some(pt) => Err(self.error(
                Some(value.span()),
                format!("{what} {pt} pt is hard to read; write {smallest} pt to 96 pt"),
            )),
            None => Err(self
                .error(Some(value.span()), format!("{what} `{word}`; write a type size such as \"12 pt\""))),
        }
    }
}

/// `12.5 mm` with unit `mm` is 12.5.
fn quantity(word: &str, unit: &str) -> Option<f32> {
    let number = word.trim().strip_suffix(unit)?.trim_end().parse::<f32>().ok()?;
    number.is_finite().then_some(number)
}

/// `3` or `3-5`.
fn range(word: &str) -> Option<(u16, u16)> {
    match word.split_once('-') {
        Some((a, b)) => Some((a.trim().parse().ok()?, b.trim().parse().ok()?)),
        None => word.trim().parse().ok().map(|n| (n, n)),
    }
}
