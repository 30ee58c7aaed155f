//! SVG. In: a sheet. Out: one self-contained document in whole units, with title, description and
//! language, its groups named by part.

use super::WriteError;
use super::path_data::{Curves, Grain, decimals, path_data};
use crate::figure::scene::{Align, Colour, FillRule, Item, Path, Step, Text};
use crate::fonts::{Face, Fonts, OutlineStep, web_subset};
use crate::sheet::{Sheet, Tag};
use crate::units::PagePoint;
use base64::Engine;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;
use std::ops::Range;
use svg::Node;
use svg::node::Text as Chars;
use svg::node::element::Element;

/// How words are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TextAs {
    /// As text, with the letters used embedded as a font: it can be searched, read out and changed.
    Text,
    /// As shapes, each named by its words: it needs no font anywhere.
    Outlines,
}

/// The sheet as an SVG document.
pub fn svg(sheet: &Sheet, text_as: TextAs, fonts: &Fonts) -> Result<String, WriteError> {
    document(sheet, text_as, Curves::Cubic, fonts)
}

/// The sheet as an SVG document in these curves.
pub(super) fn document(
    sheet: &Sheet,
    text_as: TextAs,
    curves: Curves,
    fonts: &Fonts,
) -> Result<String, WriteError> {
    let (ids, used) = (BTreeMap::new(), BTreeMap::new());
    let grain = Grain::FINE;
    let (width, height) = (grain.units(sheet.width_mm), grain.units(sheet.height_mm));
    let inside = (1..width, 1..height);
    let lang = &sheet.lang;
    let mut writer = Writer {
        fonts,
        grain,
        text_as,
        curves,
        inside,
        lang,
        prefix: "",
        shrinks: false,
        ids,
        clips: 0,
        used,
        drawn: None,
        rim: None,
    };
    let title_id = writer.id("sheet-title");
    let about_id = writer.id("sheet-description");
    let mut body = new("g");
    for element in &sheet.elements {
        match &element.tag {
            Tag::Figure { alt } | Tag::Sign { alt, .. } => {
                let mut group = new("g");
                group.assign("id", writer.id("picture"));
                group.assign("role", "img");
                group.assign("aria-label", alt.as_str());
                writer.items(&element.items, &mut group)?;
                body.append(group);
            }
            Tag::H1 | Tag::H2 | Tag::P | Tag::Item { .. } | Tag::Cell { .. } | Tag::Artifact => {
                writer.items(&element.items, &mut body)?;
            }
        }
    }
    // A page with words is read word by word; a picture alone is one image with its description.
    let wordless = sheet.elements.iter().all(|e| matches!(e.tag, Tag::Figure { .. } | Tag::Artifact));

    let mut root = new("svg");
    root.assign("xmlns", "http://www.w3.org/2000/svg");
    root.assign("width", format!("{}mm", decimals(sheet.width_mm, 2)));
    root.assign("height", format!("{}mm", decimals(sheet.height_mm, 2)));
    root.assign("viewBox", format!("0 0 {width} {height}"));
    root.assign("xml:lang", sheet.lang.as_str());
    root.assign("lang", sheet.lang.as_str());
    root.assign("role", if wordless { "img" } else { "document" });
    root.assign("stroke-linecap", "round");
    root.assign("stroke-linejoin", "round");
    root.assign("aria-labelledby", format!("{title_id} {about_id}"));
    root.append(named("title", &title_id, &sheet.title));
    root.append(named("desc", &about_id, &sheet.description));
    if let Some(style) = writer.style()? {
        root.append(style);
    }
    if !wordless {
        // A page is white paper, on a dark screen too; a picture alone brings its own.
        let mut paper = new("path");
        paper.assign("d", format!("M0 0H{width}V{height}H0Z"));
        paper.assign("fill", "#ffffff");
        root.append(paper);
    }
    root.get_children_mut().append(body.get_children_mut());
    Ok(format!("{root}\n"))
}

/// What is drawn in a document already: marks, and the name of the group that holds them.
pub(super) type Drawn<'a> = Vec<(&'a [Item<PagePoint>], String)>;

/// The pictures of a sheet as one image to stand in a page of HTML, its words in the page's own faces. `prefix` keeps its names
/// apart from others of the page. What is `drawn` there already is not written again.
pub(super) fn inline<'a>(
    sheet: &'a Sheet,
    prefix: &'a str,
    fonts: &'a Fonts,
    drawn: &mut Drawn<'a>,
) -> Result<String, WriteError> {
    let grain = Grain::SMALL;
    let (width, height) = (grain.units(sheet.width_mm), grain.units(sheet.height_mm));
    let mut writer = Writer {
        fonts,
        grain,
        text_as: TextAs::Text,
        curves: Curves::Short,
        inside: (1..width, 1..height),
        lang: &sheet.lang,
        prefix,
        shrinks: true,
        ids: BTreeMap::new(),
        clips: 0,
        used: BTreeMap::new(),
        drawn: Some(std::mem::take(drawn)),
        rim: None,
    };
    let (title, about) = (writer.id("picture-title"), writer.id("picture-description"));
    let mut root = image(width, height);
    root.assign("aria-labelledby", format!("{title} {about}"));
    root.append(named("title", &title, &sheet.title));
    root.append(named("desc", &about, &sheet.description));
    for element in &sheet.elements {
        writer.items(&element.items, &mut root)?;
    }
    *drawn = writer.drawn.unwrap_or_default();
    Ok(root.to_string())
}

/// A small picture of one colour, which is that of the words beside it; `alt` says what it shows.
pub(super) fn sign(
    items: &[Item<PagePoint>],
    side_mm: f32,
    alt: &str,
    fonts: &Fonts,
) -> Result<String, WriteError> {
    let grain = Grain::SMALL;
    let side = grain.units(side_mm);
    let mut writer = Writer {
        fonts,
        grain,
        text_as: TextAs::Outlines,
        curves: Curves::Short,
        inside: (1..side, 1..side),
        lang: "",
        prefix: "",
        shrinks: false,
        ids: BTreeMap::new(),
        clips: 0,
        used: BTreeMap::new(),
        drawn: None,
        rim: None,
    };
    let mut root = image(side, side);
    root.assign("class", "sign");
    root.assign("aria-label", alt);
    writer.items(items, &mut root)?;
    Ok(root.to_string().replace(&format!("\"{}\"", hex(SIGN_INK)), "\"currentColor\""))
}

/// The colour that signs are drawn in.
const SIGN_INK: Colour = Colour::hex(0x221C19);

/// An image of so many units, without a size of its own.
fn image(width: i32, height: i32) -> Element {
    let mut root = new("svg");
    root.assign("viewBox", format!("0 0 {width} {height}"));
    root.assign("role", "img");
    root.assign("stroke-linecap", "round");
    root.assign("stroke-linejoin", "round");
    root
}

struct Writer<'a> {
    fonts: &'a Fonts,
    grain: Grain,
    text_as: TextAs,
    curves: Curves,
    /// The sheet without its edge, in units.
    inside: (Range<i32>, Range<i32>),
    /// The sheet's language.
    lang: &'a str,
    /// What stands before every name, so that names stay unique in the document that it stands in.
    prefix: &'a str,
    /// Whether letters, and not the space between them, are fitted to the width of the words: for faces that are not ours.
    shrinks: bool,
    /// Names already given, and how often.
    ids: BTreeMap<String, usize>,
    clips: usize,
    /// Glyphs used, by face.
    used: BTreeMap<Face, BTreeSet<u16>>,
    /// Groups without words that the document holds already, where what is drawn alike is written once.
    drawn: Option<Drawn<'a>>,
    /// The rim round the words that come next, where words carry their own: colour, width in mm, for how many lines.
    rim: Option<(Colour, f32, usize)>,
}

/// How far a line along the letters may stand off them and still be their rim, mm: less than is seen.
const RIM_OFF_MM: f32 = 0.01;

impl<'a> Writer<'a> {
    /// Path data, of a stroke or a fill.
    fn data(&self, path: &Path<PagePoint>, stroked: bool) -> String {
        let leaves = |curve: &[(i32, i32); 4]| {
            let (across, down) = &self.inside;
            curve.iter().any(|(x, y)| !across.contains(x) || !down.contains(y))
        };
        let halved = |curve: &[(i32, i32); 4]| stroked || leaves(curve);
        path_data(path, self.grain, self.curves, halved)
    }

    /// `name`, made unique in the document.
    fn id(&mut self, name: &str) -> String {
        let name = format!("{}{name}", self.prefix);
        let times = self.ids.entry(name.clone()).or_default();
        *times += 1;
        if *times == 1 { name } else { format!("{name}--{times}") }
    }

    /// The lines of words after the first of these marks, where that is a line along the outlines of all their letters: their rim.
    fn rimmed(&self, items: &[Item<PagePoint>]) -> Result<usize, WriteError> {
        let Some((Item::Stroke { path, dash: None, .. }, after)) = items.split_first() else { return Ok(0) };
        let mut letters = vec![];
        let mut lines = 0;
        for item in after {
            let Item::Text(text) = item else { break };
            letters.extend(outline(text, self.fonts)?);
            lines += 1;
        }
        let near = |a: &PagePoint, b: &PagePoint| (a.x - b.x).abs().max((a.y - b.y).abs()) < RIM_OFF_MM;
        let alike = |pair: (&Step<PagePoint>, &Step<PagePoint>)| match pair {
            (Step::Move(a), Step::Move(b)) | (Step::Line(a), Step::Line(b)) => near(a, b),
            (Step::Curve(a, b, c), Step::Curve(d, e, f)) => near(a, d) && near(b, e) && near(c, f),
            (Step::Close, Step::Close) => true,
            _ => false,
        };
        let same = path.len() == letters.len() && path.iter().zip(&letters).all(alike);
        Ok(if same { lines } else { 0 })
    }

    fn items(&mut self, items: &'a [Item<PagePoint>], parent: &mut Element) -> Result<(), WriteError> {
        for (at, item) in items.iter().enumerate() {
            if let (true, Item::Stroke { colour, width, .. }) = (self.shrinks, item) {
                let lines = self.rimmed(&items[at..])?;
                if lines > 0 {
                    self.rim = Some((*colour, *width, lines));
                    continue;
                }
            }
            match item {
                Item::Group { name, about, items } => {
                    let mut group = new("g");
                    let id = if name.is_empty() { String::new() } else { self.id(name) };
                    if !id.is_empty() {
                        group.assign("id", id.as_str());
                    }
                    if !about.is_empty() {
                        let mut desc = new("desc");
                        desc.append(Chars::new(about.as_str()));
                        group.append(desc);
                    }
                    let before = self.drawn.iter().flatten().find(|(before, _)| are_alike(before, items));
                    match before {
                        Some((_, before)) => {
                            let mut again = new("use");
                            again.assign("href", format!("#{before}"));
                            group.append(again);
                        }
                        None => {
                            if let (Some(drawn), false) = (&mut self.drawn, id.is_empty()) {
                                drawn.push((items, id));
                            }
                            self.items(items, &mut group)?;
                        }
                    }
                    parent.append(group);
                }
                Item::Fill { path, colour, rule } => {
                    let mut element = new("path");
                    element.assign("d", self.data(path, false));
                    element.assign("fill", hex(*colour));
                    match rule {
                        FillRule::NonZero => {}
                        FillRule::EvenOdd => element.assign("fill-rule", "evenodd"),
                    }
                    parent.append(element);
                }
                Item::Stroke { path, colour, width, dash } => {
                    let mut element = new("path");
                    element.assign("d", self.data(path, true));
                    element.assign("fill", "none");
                    element.assign("stroke", hex(*colour));
                    element.assign("stroke-width", self.grain.length(*width));
                    if let Some((on, off)) = dash {
                        let of = |mm: f32| self.grain.length(mm);
                        element.assign("stroke-dasharray", format!("{} {}", of(*on), of(*off)));
                    }
                    parent.append(element);
                }
                Item::Clip { path, items } => {
                    self.clips += 1;
                    let id = self.id(&format!("window-{}", self.clips));
                    let mut shape = new("path");
                    shape.assign("d", self.data(path, false));
                    let mut window = new("clipPath");
                    window.assign("id", id.as_str());
                    window.append(shape);
                    let mut group = new("g");
                    group.assign("clip-path", format!("url(#{id})"));
                    self.items(items, &mut group)?;
                    parent.append(window);
                    parent.append(group);
                }
                Item::Text(text) => parent.append(match self.text_as {
                    TextAs::Text => self.text(text)?,
                    TextAs::Outlines => self.outlines(text)?,
                }),
            }
        }
        Ok(())
    }

    fn text(&mut self, text: &Text<PagePoint>) -> Result<Element, WriteError> {
        // A space at the end of a line is for the PDF; here each line is a text of its own.
        let words = text.text.trim_end();
        let used = self.used.entry(text.face).or_default();
        used.extend(self.fonts.shape(text.face, words)?.iter().map(|g| g.id));
        let width = self.fonts.measure(text.face, words, text.size)?;
        let mut element = new("text");
        element.assign("x", self.grain.units(text.at.x));
        element.assign("y", self.grain.units(text.at.y));
        element.assign("class", class(text.face));
        element.assign("font-size", self.grain.length(text.size));
        element.assign("fill", hex(text.colour));
        // Where the font is not taken from this file, the words still keep their width.
        element.assign("textLength", self.grain.units(width));
        if self.shrinks {
            element.assign("lengthAdjust", "spacingAndGlyphs");
        }
        match text.align {
            Align::Start => {}
            Align::Middle => element.assign("text-anchor", "middle"),
            Align::End => element.assign("text-anchor", "end"),
        }
        if text.lang != self.lang {
            element.assign("xml:lang", text.lang.as_str());
        }
        if let Some((colour, width, lines)) = self.rim.take() {
            element.assign("stroke", hex(colour));
            element.assign("stroke-width", self.grain.length(width));
            element.assign("paint-order", "stroke");
            self.rim = (lines > 1).then_some((colour, width, lines - 1));
        }
        element.append(Chars::new(words));
        Ok(element)
    }

    fn outlines(&mut self, text: &Text<PagePoint>) -> Result<Element, WriteError> {
        let mut element = new("path");
        element.assign("d", self.data(&outline(text, self.fonts)?, false));
        element.assign("fill", hex(text.colour));
        element.assign("role", "img");
        element.assign("aria-label", text.text.trim_end());
        Ok(element)
    }

    /// The letters used, as embedded fonts.
    fn style(&self) -> Result<Option<Element>, WriteError> {
        if self.used.is_empty() {
            return Ok(None);
        }
        let mut css = String::new();
        for (face, used) in &self.used {
            let bytes = base64::engine::general_purpose::STANDARD.encode(web_subset(*face, used)?);
            let (weight, style) = weight_and_style(*face);
            // Names of the subset are ours: the family's own name is reserved to the whole fonts.
            let _ = write!(
                css,
                "@font-face{{font-family:handspan;font-weight:{weight};font-style:{style};\
                 src:url(data:font/ttf;base64,{bytes})}}"
            );
        }
        // Without it a browser rounds each letter's width to whole pixels and words run together.
        css.push_str(
            "text{font-family:handspan,'Source Sans 3',sans-serif;text-rendering:geometricPrecision}",
        );
        for face in self.used.keys() {
            let (weight, style) = weight_and_style(*face);
            let _ = write!(css, ".{}{{font-weight:{weight};font-style:{style}}}", class(*face));
        }
        let mut element = new("style");
        element.append(Chars::new(css));
        Ok(Some(element))
    }
}

/// The outlines of a text, at its place on the page.
pub(super) fn outline(text: &Text<PagePoint>, fonts: &Fonts) -> Result<Path<PagePoint>, WriteError> {
    let words = text.text.trim_end();
    let width = fonts.measure(text.face, words, text.size)?;
    let left = match text.align {
        Align::Start => text.at.x,
        Align::Middle => text.at.x - width * 0.5,
        Align::End => text.at.x - width,
    };
    // Outlines have y up, a page has y down.
    let at = |[x, y]: [f32; 2]| PagePoint::new(left + x, text.at.y - y);
    let steps = fonts.outline(text.face, words, text.size)?;
    Ok(steps
        .into_iter()
        .map(|step| match step {
            OutlineStep::Move(p) => Step::Move(at(p)),
            OutlineStep::Line(p) => Step::Line(at(p)),
            OutlineStep::Curve(a, b, p) => Step::Curve(at(a), at(b), at(p)),
            OutlineStep::Close => Step::Close,
        })
        .collect())
}

/// Whether two groups show the same, without a word; what is said of their parts may be in another language.
fn are_alike(one: &[Item<PagePoint>], other: &[Item<PagePoint>]) -> bool {
    one.len() == other.len()
        && one.iter().zip(other).all(|pair| match pair {
            (Item::Group { items: one, .. }, Item::Group { items: other, .. }) => are_alike(one, other),
            (Item::Clip { path, items }, Item::Clip { path: window, items: others }) => {
                path == window && are_alike(items, others)
            }
            (Item::Fill { .. }, Item::Fill { .. }) | (Item::Stroke { .. }, Item::Stroke { .. }) => {
                pair.0 == pair.1
            }
            _ => false,
        })
}

fn weight_and_style(face: Face) -> (u16, &'static str) {
    match face {
        Face::Regular => (400, "normal"),
        Face::SemiBold => (600, "normal"),
        Face::Italic => (400, "italic"),
    }
}

fn class(face: Face) -> &'static str {
    match face {
        Face::Regular => "regular",
        Face::SemiBold => "strong",
        Face::Italic => "slanted",
    }
}

fn new(name: &str) -> Element {
    Element::new(name)
}

fn named(name: &str, id: &str, words: &str) -> Element {
    let mut element = new(name);
    element.assign("id", id);
    element.append(Chars::new(words));
    element
}

fn hex(colour: Colour) -> String {
    format!("#{:02x}{:02x}{:02x}", colour.r, colour.g, colour.b)
}
