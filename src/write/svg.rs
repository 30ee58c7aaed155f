//! SVG. In: a sheet. Out: one self-contained document in whole units of 1/32 mm, with title, description and
//! language, its groups named by part.

use super::WriteError;
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

/// Whole units in a mm: a unit is 0.01 cm of the body as `draw` prints it.
const UNITS_PER_MM: f32 = 32.0;

/// How words are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TextAs {
    /// As text, with the letters used embedded as a font: it can be searched, read out and changed.
    Text,
    /// As shapes, each named by its words: it needs no font anywhere.
    Outlines,
}

/// How curves are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Curves {
    /// As they are.
    Cubic,
    /// For who paints them: those of strokes, and those that leave the sheet, as four arcs of a parabola each. To stroke a cubic
    /// curve or to cut it off, arc cosines are taken of it, which are not the same bits on every machine.
    Quadratic,
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
    let (width, height) = (units(sheet.width_mm), units(sheet.height_mm));
    let inside = (1..width, 1..height);
    let lang = &sheet.lang;
    let mut writer =
        Writer { fonts, text_as, curves, inside, lang, prefix: "", shrinks: false, ids, clips: 0, used };
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

/// The pictures of a sheet as one image to stand in a page of HTML, its words in the page's own faces. `prefix` keeps its names
/// apart from others of the page.
pub(super) fn inline(sheet: &Sheet, prefix: &str, fonts: &Fonts) -> Result<String, WriteError> {
    let (width, height) = (units(sheet.width_mm), units(sheet.height_mm));
    let mut writer = Writer {
        fonts,
        text_as: TextAs::Text,
        curves: Curves::Cubic,
        inside: (1..width, 1..height),
        lang: &sheet.lang,
        prefix,
        shrinks: true,
        ids: BTreeMap::new(),
        clips: 0,
        used: BTreeMap::new(),
    };
    let (title, about) = (writer.id("picture-title"), writer.id("picture-description"));
    let mut root = image(width, height);
    root.assign("aria-labelledby", format!("{title} {about}"));
    root.append(named("title", &title, &sheet.title));
    root.append(named("desc", &about, &sheet.description));
    for element in &sheet.elements {
        writer.items(&element.items, &mut root)?;
    }
    Ok(root.to_string())
}

/// A small picture of one colour, which is that of the words beside it; `alt` says what it shows.
pub(super) fn sign(
    items: &[Item<PagePoint>],
    side_mm: f32,
    alt: &str,
    fonts: &Fonts,
) -> Result<String, WriteError> {
    let side = units(side_mm);
    let mut writer = Writer {
        fonts,
        text_as: TextAs::Outlines,
        curves: Curves::Cubic,
        inside: (1..side, 1..side),
        lang: "",
        prefix: "",
        shrinks: false,
        ids: BTreeMap::new(),
        clips: 0,
        used: BTreeMap::new(),
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
}

impl Writer<'_> {
    /// Path data, of a stroke or a fill.
    fn data(&self, path: &Path<PagePoint>, stroked: bool) -> String {
        let leaves = |curve: &[(i32, i32); 4]| {
            let (across, down) = &self.inside;
            curve.iter().any(|(x, y)| !across.contains(x) || !down.contains(y))
        };
        data(path, |curve| self.curves == Curves::Quadratic && (stroked || leaves(curve)))
    }

    /// `name`, made unique in the document.
    fn id(&mut self, name: &str) -> String {
        let name = format!("{}{name}", self.prefix);
        let times = self.ids.entry(name.clone()).or_default();
        *times += 1;
        if *times == 1 { name } else { format!("{name}--{times}") }
    }

    fn items(&mut self, items: &[Item<PagePoint>], parent: &mut Element) -> Result<(), WriteError> {
        for item in items {
            match item {
                Item::Group { name, about, items } => {
                    let mut group = new("g");
                    if !name.is_empty() {
                        group.assign("id", self.id(name));
                    }
                    if !about.is_empty() {
                        let mut desc = new("desc");
                        desc.append(Chars::new(about.as_str()));
                        group.append(desc);
                    }
                    self.items(items, &mut group)?;
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
                    element.assign("stroke-width", decimals(width * UNITS_PER_MM, 1));
                    if let Some((on, off)) = dash {
                        let of = |mm: f32| decimals(mm * UNITS_PER_MM, 1);
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
        element.assign("x", units(text.at.x));
        element.assign("y", units(text.at.y));
        element.assign("class", class(text.face));
        element.assign("font-size", decimals(text.size * UNITS_PER_MM, 1));
        element.assign("fill", hex(text.colour));
        // Where the font is not taken from this file, the words still keep their width.
        element.assign("textLength", units(width));
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

fn units(mm: f32) -> i32 {
    libm::roundf(mm * UNITS_PER_MM) as i32
}

/// A number with at most so many decimals, without zeros at its end.
fn decimals(value: f32, places: usize) -> String {
    let text = format!("{value:.places$}");
    match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.').to_owned(),
        false => text,
    }
}

fn hex(colour: Colour) -> String {
    format!("#{:02x}{:02x}{:02x}", colour.r, colour.g, colour.b)
}

/// Path data: relative commands between points rounded to whole units, so that no error adds up.
fn data(path: &Path<PagePoint>, as_parabolas: impl Fn(&[(i32, i32); 4]) -> bool) -> String {
    let mut out = String::with_capacity(path.len() * 20);
    let (mut here, mut start) = ((0, 0), (0, 0));
    let mut last = ' ';
    let round = |p: PagePoint| (units(p.x), units(p.y));
    for step in path {
        match *step {
            Step::Move(p) => {
                let p = round(p);
                command(&mut out, &mut last, 'm', here, &[p]);
                (here, start) = (p, p);
                // Numbers after a move are lines.
                last = 'l';
            }
            Step::Line(p) => {
                let p = round(p);
                command(&mut out, &mut last, 'l', here, &[p]);
                here = p;
            }
            Step::Curve(a, b, p) => {
                let p = round(p);
                let curve = [here, round(a), round(b), p];
                if as_parabolas(&curve) {
                    parabolas(&mut out, curve);
                    last = 'Q';
                } else {
                    command(&mut out, &mut last, 'c', here, &curve[1..]);
                }
                here = p;
            }
            Step::Close => {
                out.push('z');
                last = 'z';
                here = start;
            }
        }
    }
    out
}

/// A cubic curve as four arcs of a parabola, to a hundredth of a unit.
fn parabolas(out: &mut String, curve: [(i32, i32); 4]) {
    let mut rest = curve.map(|(x, y)| (x as f32, y as f32));
    for left in [4.0, 3.0, 2.0, 1.0_f32] {
        let between =
            |(ax, ay): (f32, f32), (bx, by): (f32, f32)| (ax + (bx - ax) / left, ay + (by - ay) / left);
        let [p, a, b, q] = rest;
        let (pa, ab, bq) = (between(p, a), between(a, b), between(b, q));
        let (pab, abq) = (between(pa, ab), between(ab, bq));
        let end = if left == 1.0 { q } else { between(pab, abq) };
        let middle = |p: f32, a: f32, b: f32, q: f32| (3.0 * (a + b) - p - q) / 4.0;
        let control = (middle(p.0, pa.0, pab.0, end.0), middle(p.1, pa.1, pab.1, end.1));
        let of = |value: f32| decimals(value, 2);
        let _ = write!(out, "Q{} {} {} {}", of(control.0), of(control.1), of(end.0), of(end.1));
        rest = [end, abq, bq, q];
    }
}

/// One command; its letter is left out when it repeats the last one.
fn command(out: &mut String, last: &mut char, letter: char, from: (i32, i32), points: &[(i32, i32)]) {
    let mut bare = *last == letter && letter != 'm';
    if !bare {
        out.push(letter);
        *last = letter;
    }
    for (x, y) in points {
        for number in [x - from.0, y - from.1] {
            if bare && number >= 0 {
                out.push(' ');
            }
            bare = true;
            let _ = write!(out, "{number}");
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parabolas_follow_the_curve() {
        let curve = [(0, 0), (40, 160), (-120, 80), (200, 10)];
        let mut data = String::new();
        parabolas(&mut data, curve);
        let arcs: Vec<Vec<f32>> = data
            .split('Q')
            .skip(1)
            .map(|arc| arc.split(' ').map(|number| number.parse().expect("a number")).collect())
            .collect();
        assert_eq!(arcs.len(), 4);
        assert_eq!(arcs[3][2..], [200.0, 10.0], "the end is exact");
        let mut from = (0.0, 0.0);
        for (piece, arc) in arcs.iter().enumerate() {
            for step in 0..=8 {
                let s = step as f32 / 8.0;
                let t = (piece as f32 + s) / 4.0;
                let on_arc =
                    |p: f32, a: f32, q: f32| p * (1.0 - s) * (1.0 - s) + 2.0 * a * s * (1.0 - s) + q * s * s;
                let on_curve = |of: fn(&(i32, i32)) -> i32| {
                    let [p, a, b, q] = [0, 1, 2, 3].map(|at: usize| of(&curve[at]) as f32);
                    let u = 1.0 - t;
                    p * u * u * u + 3.0 * a * u * u * t + 3.0 * b * u * t * t + q * t * t * t
                };
                let (x, y) = (on_arc(from.0, arc[0], arc[2]), on_arc(from.1, arc[1], arc[3]));
                assert!((x - on_curve(|p| p.0)).abs() < 0.6, "{piece} {step}: {x}");
                assert!((y - on_curve(|p| p.1)).abs() < 0.6, "{piece} {step}: {y}");
            }
            from = (arc[2], arc[3]);
        }
    }
}
