//! Reading a layout file. In: TOML text. Out: `Layout`, or every problem in it with its place.

use super::layout::{
    Edge, Holds, Layout, LayoutError, PAPER_EXPECTED, PAPERS, Paper, PictureLook, Place, nearest,
};
use crate::figure::{Labels, Style};
use crate::report::{Problem, any_error, placed, quoted};
use std::ops::Range;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// No printer reaches further out than this, in mm.
const PRINTABLE_MARGIN_MM: f32 = 8.0;
/// No words for families are set smaller than this, in points (source: CDC Simply Put, CMS Toolkit, in readability.csv).
const SMALLEST_TYPE_PT: f32 = 12.0;
/// Nor any words smaller than this, whatever a layout says, in points.
const SMALLEST_OF_ALL_PT: f32 = 6.0;
/// Nor any larger.
const LARGEST_TYPE_PT: f32 = 96.0;
/// Rows and columns of a grid.
const MOST_TRACKS: u16 = 24;
/// Sides of a layout.
const MOST_PAGES: u16 = 8;
/// Copies side by side, or one under the other.
const MOST_COPIES: u16 = 8;
/// The smallest height of a picture, in mm: under it nothing can be told.
const SMALLEST_PICTURE_MM: f32 = 25.0;
/// More problems than this help nobody.
const MOST_PROBLEMS: usize = 50;

const TOP_KEYS: [&str; 2] = ["page", "box"];
const PAGE_KEYS: [&str; 9] = [
    "paper",
    "margin",
    "scale",
    "columns",
    "column-gap",
    "row-gap",
    "smallest-type",
    "copies-across",
    "copies-down",
];
const BOX_KEYS: [&str; 16] = [
    "name",
    "holds",
    "page",
    "row",
    "columns",
    "type",
    "may-shrink",
    "at-least",
    "edge",
    "padding",
    "padding-top",
    "padding-bottom",
    "style",
    "labels",
    "signs",
    "paragraphs",
];
const HOLDS: &str =
    "\"picture\", \"words:MESSAGE\" or \"lines:NUMBER\", or several of these in square brackets";
const EDGES: [(&str, Edge); 3] = [("none", Edge::None), ("line", Edge::Line), ("bold", Edge::Bold)];
const PARAGRAPHS: [(&str, bool); 2] = [("apart", false), ("joined", true)];
const SIGNS: [(&str, bool); 2] = [("none", false), ("beside", true)];
const STYLES: [(&str, Style); 3] = [("soft", Style::Soft), ("line", Style::Line), ("pen", Style::Pen)];
const LABELS: [(&str, Labels); 5] = [
    ("none", Labels::None),
    ("few", Labels::Few),
    ("all", Labels::All),
    ("numbered", Labels::Numbered),
    ("family", Labels::Family),
];

/// The layout in `text`; `file` is its name in messages.
pub(super) fn read(file: &str, text: &str) -> Result<Layout, LayoutError> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut reader = Reader { file, problems: vec![] };
    let layout = reader.file(text);
    let problems = placed(reader.problems, text, MOST_PROBLEMS);
    match layout {
        Some(layout) if !any_error(&problems) => Ok(layout),
        _ => Err(LayoutError { problems }),
    }
}

/// A value that was said, with its place.
struct Said<'a> {
    value: &'a DeValue<'a>,
    span: Range<usize>,
}

/// `[page]` or a `[[box]]`: its name in messages, its keys.
struct Part<'a> {
    what: String,
    table: &'a DeTable<'a>,
    span: Range<usize>,
}

impl<'a> Part<'a> {
    fn get(&self, key: &str) -> Option<Said<'a>> {
        let (_, value) = self.table.iter().find(|(k, _)| k.get_ref() == key)?;
        Some(Said { value: value.get_ref(), span: value.span() })
    }
}

/// Reads one file and gathers its problems; what cannot be read is `None`, and a problem.
struct Reader<'a> {
    file: &'a str,
    problems: Vec<Problem>,
}

impl Reader<'_> {
    fn problem(&mut self, span: Range<usize>, message: String, expected: &str, near: Option<String>) {
        let problem = Problem::at("layout-value", self.file, span, message).suggesting(near);
        self.problems.push(if expected.is_empty() { problem } else { problem.expecting(expected) });
    }

    fn file(&mut self, text: &str) -> Option<Layout> {
        let (table, faults) = DeTable::parse_recoverable(text);
        if let Some(fault) = faults.first() {
            let message = fault.message().replace('\n', " ");
            self.problem(fault.span().unwrap_or(0..0), message, "", None);
            return None;
        }
        self.keys("", table.get_ref(), &TOP_KEYS);
        let top = |key: &str| table.get_ref().iter().find(|(k, _)| k.get_ref() == key).map(|(_, v)| v);
        let page = match top("page").map(Spanned::get_ref) {
            Some(DeValue::Table(page)) => page,
            _ => {
                let fault = Problem::of_file("layout-value", self.file, "there is no [page]")
                    .expecting("[page] with paper and margin");
                self.problems.push(fault);
                return None;
            }
        };
        let span = top("page").map_or(0..0, Spanned::span);
        let boxes = match top("box").map(Spanned::get_ref) {
            Some(DeValue::Array(boxes)) => boxes.iter().map(|b| (b.get_ref(), b.span())).collect(),
            _ => vec![],
        };
        if boxes.is_empty() {
            let fault = Problem::of_file("layout-value", self.file, "there is no [[box]]")
                .expecting("[[box]] with name and holds, once for each");
            self.problems.push(fault);
        }
        self.keys("page: ", page, &PAGE_KEYS);
        let page = Part { what: "page".to_owned(), table: page, span };
        let paper = self.paper(&page);
        let margin_mm = self.margin(&page, paper);
        let columns = self.count(&page, "columns", MOST_TRACKS).unwrap_or(1);
        let smallest_pt = self.pt(&page, "smallest-type", SMALLEST_OF_ALL_PT).unwrap_or(SMALLEST_TYPE_PT);
        let mut layout = Layout {
            file: self.file.to_owned(),
            paper: paper.unwrap_or(Paper::A4),
            margin_mm: margin_mm.unwrap_or(PRINTABLE_MARGIN_MM),
            smallest_pt,
            columns,
            column_gap_mm: self.mm(&page, "column-gap").unwrap_or(0.0),
            row_gap_mm: self.mm(&page, "row-gap").unwrap_or(0.0),
            copies: (
                self.count(&page, "copies-across", MOST_COPIES).unwrap_or(1),
                self.count(&page, "copies-down", MOST_COPIES).unwrap_or(1),
            ),
            is_numbered: false,
            boxes: vec![],
        };
        for (at, (value, span)) in boxes.into_iter().enumerate() {
            let DeValue::Table(table) = value else {
                self.problem(span, format!("box {} is not a table", at + 1), "[[box]]", None);
                continue;
            };
            let place = self.place(table, span, at, &layout);
            layout.boxes.extend(place);
        }
        Some(layout)
    }

    /// Unknown keys are errors that name the nearest known one.
    fn keys(&mut self, what: &str, table: &DeTable<'_>, known: &[&str]) {
        for key in table.keys().filter(|key| !known.contains(&key.get_ref().as_ref())) {
            let word: &str = key.get_ref();
            let message = format!("{what}{} is not known here", quoted(word));
            self.problem(key.span(), message, &known.join(", "), nearest(word, known));
        }
    }

    /// The words of a key, between quotes.
    fn text(&mut self, part: &Part<'_>, key: &str, expected: &str) -> Option<(String, Range<usize>)> {
        let said = part.get(key)?;
        match said.value {
            DeValue::String(words) => Some((words.trim().to_owned(), said.span)),
            _ => {
                self.problem(
                    said.span,
                    format!("{}: {key} stands between quotes", part.what),
                    expected,
                    None,
                );
                None
            }
        }
    }

    /// The same for a key that must be there.
    fn must(&mut self, part: &Part<'_>, key: &str, expected: &str) -> Option<(String, Range<usize>)> {
        if part.get(key).is_none() {
            self.problem(part.span.clone(), format!("{}: {key} is missing", part.what), expected, None);
        }
        self.text(part, key, expected)
    }

    fn paper(&mut self, page: &Part<'_>) -> Option<Paper> {
        let expected = format!("{PAPER_EXPECTED}, or \"as picture\"");
        let (word, span) = self.must(page, "paper", &expected)?;
        let scale_expected = "for example \"3.5 mm per cm\", from 0.1 to 10";
        let scale = self.text(page, "scale", scale_expected);
        match (word.as_str(), scale) {
            ("as picture", Some((words, span))) => {
                let mm = words.strip_suffix("mm per cm").and_then(|n| n.trim().parse::<f32>().ok());
                match mm {
                    Some(mm) if (0.1..=10.0).contains(&mm) => Some(Paper::AsPicture(mm)),
                    _ => {
                        self.problem(span, format!("page: scale {}", quoted(&words)), scale_expected, None);
                        None
                    }
                }
            }
            ("as picture", None) => {
                self.problem(
                    span,
                    "page: paper \"as picture\" needs a scale".to_owned(),
                    "scale = \"3.5 mm per cm\" beside it",
                    None,
                );
                None
            }
            (_, Some((_, span))) => {
                self.problem(
                    span,
                    "page: scale goes with paper = \"as picture\"; on other paper the box decides".to_owned(),
                    "",
                    None,
                );
                None
            }
            (word, None) => {
                let paper = Paper::named(word);
                if paper.is_none() {
                    let near = nearest(word, &PAPERS.map(|(name, _)| name));
                    let message = format!("page: paper {} is not known", quoted(word));
                    self.problem(span, message, &expected, near);
                }
                paper
            }
        }
    }

    fn margin(&mut self, page: &Part<'_>, paper: Option<Paper>) -> Option<f32> {
        self.must(page, "margin", "a length such as \"10 mm\"")?;
        let margin = self.mm(page, "margin")?;
        let printed = !matches!(paper, None | Some(Paper::AsPicture(_)));
        if printed && margin < PRINTABLE_MARGIN_MM {
            let span = page.get("margin").map_or(0..0, |said| said.span);
            self.problem(
                span,
                format!("page: margin {margin} mm cannot be printed"),
                &format!("{PRINTABLE_MARGIN_MM} mm or more"),
                None,
            );
        }
        Some(margin)
    }

    fn place(
        &mut self,
        table: &DeTable<'_>,
        span: Range<usize>,
        at: usize,
        layout: &Layout,
    ) -> Option<Place> {
        let mut part = Part { what: format!("box {}", at + 1), table, span };
        let name = self.must(&part, "name", "a word of your own between quotes");
        if let Some((name, _)) = &name {
            part.what = format!("box {}", quoted(name));
        }
        self.keys(&format!("{}: ", part.what), table, &BOX_KEYS);
        let (name, name_span) = name?;
        if layout.boxes.iter().any(|b| b.name == name) {
            self.problem(name_span, format!("{} is there twice", part.what), "another name", None);
        }
        let holds = self.holds(&part);
        let is_picture = holds.contains(&Holds::Picture);
        let type_pt = self.pt(&part, "type", layout.smallest_pt);
        let may_shrink_pt = self.pt(&part, "may-shrink", layout.smallest_pt);
        let set_pt = type_pt.unwrap_or(SMALLEST_TYPE_PT.max(layout.smallest_pt));
        let at_least = self.mm(&part, "at-least");
        let at_least_mm = at_least.unwrap_or(0.0);
        if is_picture && at_least.is_some_and(|mm| mm < SMALLEST_PICTURE_MM) {
            let span = part.get("at-least").map_or(0..0, |said| said.span);
            let message = format!("{}: a picture of {at_least_mm} mm shows nothing", part.what);
            self.problem(span, message, &format!("{SMALLEST_PICTURE_MM} mm or more"), None);
        }
        for key in ["style", "labels"] {
            if let (false, Some(said)) = (is_picture, part.get(key)) {
                let message = format!("{}: {key} goes with holds = \"picture\"", part.what);
                self.problem(said.span, message, "", None);
            }
        }
        if let (true, Some(said)) = (is_picture, part.get("signs")) {
            let message = format!("{}: signs stand beside words, not in a picture", part.what);
            self.problem(said.span, message, "", None);
        }
        let style = self.one_of(&part, "style", &STYLES);
        let padding_mm = self.mm(&part, "padding").unwrap_or(0.0);
        Some(Place {
            page: self.count(&part, "page", MOST_PAGES).unwrap_or(1),
            rows: self.tracks(&part, "row", MOST_TRACKS).unwrap_or((1, 1)),
            columns: self.tracks(&part, "columns", layout.columns).unwrap_or((1, layout.columns)),
            type_pt: set_pt,
            may_shrink_pt: may_shrink_pt.unwrap_or(set_pt).min(set_pt),
            at_least_mm: if is_picture { at_least_mm.max(SMALLEST_PICTURE_MM) } else { at_least_mm },
            edge: self.one_of(&part, "edge", &EDGES).unwrap_or(Edge::None),
            padding_mm,
            padding_top_mm: self.mm(&part, "padding-top").unwrap_or(padding_mm),
            padding_bottom_mm: self.mm(&part, "padding-bottom").unwrap_or(padding_mm),
            picture: PictureLook { style, labels: self.one_of(&part, "labels", &LABELS), type_pt },
            signs: self.one_of(&part, "signs", &SIGNS).unwrap_or(false),
            joined: self.one_of(&part, "paragraphs", &PARAGRAPHS).unwrap_or(false),
            holds,
            name,
        })
    }

    fn holds(&mut self, part: &Part<'_>) -> Vec<Holds> {
        let Some(said) = part.get("holds") else { return vec![] };
        let mut words: Vec<(&str, Range<usize>)> = vec![];
        let mut odd = false;
        match said.value {
            DeValue::String(word) => words.push((word, said.span.clone())),
            DeValue::Array(all) => {
                for one in all.iter() {
                    match one.get_ref() {
                        DeValue::String(word) => words.push((word, one.span())),
                        _ => odd = true,
                    }
                }
            }
            _ => odd = true,
        }
        if odd {
            let message = format!("{}: holds is a word between quotes, or several", part.what);
            self.problem(said.span.clone(), message, HOLDS, None);
        }
        let several = words.len() > 1;
        let held: Vec<Holds> =
            words.into_iter().filter_map(|(word, span)| self.held(part, word, span)).collect();
        if held.contains(&Holds::Picture) && several {
            self.problem(said.span, format!("{}: a picture needs a box of its own", part.what), "", None);
        }
        held
    }

    fn held(&mut self, part: &Part<'_>, word: &str, span: Range<usize>) -> Option<Holds> {
        if word == "picture" {
            return Some(Holds::Picture);
        }
        match word.split_once(':') {
            Some(("words", id)) if !id.is_empty() => return Some(Holds::Words(id.to_owned())),
            Some(("lines", n)) => {
                if let Ok(n @ 1..=20) = n.parse::<u8>() {
                    return Some(Holds::Lines(n));
                }
            }
            _ => {}
        }
        let (kind, rest) = word.split_once(':').map_or((word, ""), |(kind, _)| (kind, ":"));
        let near = match (kind, rest) {
            ("lines", _) => Some("`lines:3`, from 1 to 20".to_owned()),
            ("words", _) => Some("`words:family-title`".to_owned()),
            _ => nearest(kind, &["picture", "words", "lines"]),
        };
        self.problem(span, format!("{}: holds {} is not known", part.what, quoted(word)), HOLDS, near);
        None
    }

    /// One of these words.
    fn one_of<T: Copy>(&mut self, part: &Part<'_>, key: &str, known: &[(&str, T)]) -> Option<T> {
        let words: Vec<&str> = known.iter().map(|(word, _)| *word).collect();
        let (word, span) = self.text(part, key, &words.join(", "))?;
        let found = known.iter().find(|(w, _)| *w == word).map(|(_, value)| *value);
        if found.is_none() {
            let message = format!("{}: {key} {} is not known", part.what, quoted(&word));
            self.problem(span, message, &words.join(", "), nearest(&word, &words));
        }
        found
    }

    /// A whole number, from 1.
    fn count(&mut self, part: &Part<'_>, key: &str, most: u16) -> Option<u16> {
        let said = part.get(key)?;
        let number = match said.value {
            DeValue::Integer(number) => number.as_str().parse::<u16>().ok(),
            DeValue::String(word) => word.trim().parse::<u16>().ok(),
            _ => None,
        };
        let right = number.filter(|n| (1..=most).contains(n));
        if right.is_none() {
            self.problem(
                said.span,
                format!("{}: {key} cannot be this", part.what),
                &format!("a whole number from 1 to {most}"),
                None,
            );
        }
        right
    }

    /// `3`, or `3-5`.
    fn tracks(&mut self, part: &Part<'_>, key: &str, last: u16) -> Option<(u16, u16)> {
        let expected = format!("a number or a range between quotes, such as \"2-4\", up to {last}");
        let (word, span) = self.text(part, key, &expected)?;
        let number = |s: &str| s.trim().parse::<u16>().ok();
        let range = match word.split_once('-') {
            Some((a, b)) => number(a).zip(number(b)),
            None => number(&word).map(|n| (n, n)),
        };
        let right = range.filter(|&(a, b)| 1 <= a && a <= b && b <= last);
        if right.is_none() {
            self.problem(span, format!("{}: {key} {}", part.what, quoted(&word)), &expected, None);
        }
        right
    }

    fn mm(&mut self, part: &Part<'_>, key: &str) -> Option<f32> {
        let expected = "a length such as \"10 mm\", not under 0";
        let (word, span) = self.text(part, key, expected)?;
        let right = quantity(&word, "mm").filter(|mm| (0.0..=2000.0).contains(mm));
        if right.is_none() {
            let bare = word.parse::<f32>().ok().filter(|n| *n >= 0.0);
            let cm = quantity(&word, "cm").filter(|n| *n >= 0.0).map(|n| 10.0 * n);
            let near = bare.or(cm).map(|mm| format!("`{mm} mm`"));
            self.problem(span, format!("{}: {key} {}", part.what, quoted(&word)), expected, near);
        }
        right
    }

    fn pt(&mut self, part: &Part<'_>, key: &str, smallest: f32) -> Option<f32> {
        let expected = format!("a type size such as \"14 pt\", from {smallest} pt to {LARGEST_TYPE_PT} pt");
        let (word, span) = self.text(part, key, &expected)?;
        let size = quantity(&word, "pt");
        let right = size.filter(|pt| (smallest..=LARGEST_TYPE_PT).contains(pt));
        if right.is_none() {
            let near = word.parse::<f32>().is_ok_and(|n| n >= smallest).then(|| format!("`{word} pt`"));
            let why = if size.is_some_and(|pt| pt < smallest) { " is hard to read" } else { "" };
            let message = format!("{}: {key} {}{why}", part.what, quoted(&word));
            self.problem(span, message, &expected, near);
        }
        right
    }
}

/// `12.5 mm` with unit `mm` is 12.5.
fn quantity(word: &str, unit: &str) -> Option<f32> {
    let number = word.trim().strip_suffix(unit)?.trim_end().parse::<f32>().ok()?;
    number.is_finite().then_some(number)
}
