//! PDF. In: sheets. Out: a page for each, with vector paths, real text in embedded subset fonts, and tags.
//!
//! Everything is drawn straight to page operations; ids and dates are fixed, so that the same sheets give the
//! same bytes.

use super::WriteError;
use super::tags;
use crate::figure::scene::{Align, Colour, FillRule, Item, Path, Step, Text};
use crate::fonts::{Face, Fonts, Glyph, pdf_subset};
use crate::sheet::{Sheet, Tag};
use crate::units::PagePoint;
use flate2::Compression;
use flate2::write::ZlibEncoder;
use printpdf::{
    Codepoint, Color, DictItem, FontId, Line, LineCapStyle, LineDashPattern, LineJoinStyle, LinePoint, Mm,
    Op, PaintMode, ParsedFont, PdfDocument, PdfFont, PdfFontHandle, PdfPage, PdfSaveOptions, Point, Polygon,
    PolygonRing, Pt, Rgb, TextItem, TextMatrix, WindingOrder,
};
use std::collections::{BTreeMap, BTreeSet};
use std::io::Write;

/// Points in a mm.
const PT_PER_MM: f32 = 72.0 / 25.4;
/// How hard streams are compressed, 1 to 9.
const STRENGTH: u32 = 4;

/// The sheet as a PDF file of one page.
pub fn pdf(sheet: &Sheet, fonts: &Fonts) -> Result<Vec<u8>, WriteError> {
    pdf_pages(std::slice::from_ref(sheet), fonts)
}

/// The sheets as one PDF file, a page each in their order; title, language and description are those of the first.
pub fn pdf_pages(sheets: &[Sheet], fonts: &Fonts) -> Result<Vec<u8>, WriteError> {
    let first = sheets.first().ok_or_else(|| refused("it has no page".to_owned()))?;
    let shaped = Shaped::of(sheets, fonts)?;
    let mut pdf = PdfDocument::new(&first.title);
    for (face, used) in &shaped.used {
        pdf.resources.fonts.map.insert(font_id(*face), embedded(*face, used)?);
    }
    for sheet in sheets {
        let mut page = Page::new(sheet, &first.lang, &shaped);
        page.draw(sheet)?;
        pdf.pages.push(PdfPage::new(Mm(sheet.width_mm), Mm(sheet.height_mm), page.ops));
    }

    let mut warnings = vec![];
    let options = PdfSaveOptions { optimize: false, image_optimization: None, ..Default::default() };
    let mut doc = printpdf::to_lopdf_doc(&pdf, &options, &mut warnings);
    if let Some(warning) = warnings.first() {
        return Err(refused(warning.msg.clone()));
    }
    tags::finish(&mut doc, first, sheets).map_err(|e| refused(e.to_string()))?;
    compress(&mut doc).map_err(|e| refused(e.to_string()))?;
    let mut bytes = vec![];
    doc.save_to(&mut bytes).map_err(|e| refused(e.to_string()))?;
    Ok(bytes)
}

fn refused(reason: String) -> WriteError {
    WriteError::Refused { what: "PDF", reason }
}

/// Compresses every stream that may be and is not yet.
fn compress(doc: &mut lopdf::Document) -> std::io::Result<()> {
    for object in doc.objects.values_mut() {
        let lopdf::Object::Stream(stream) = object else { continue };
        if !stream.allows_compression || stream.dict.has(b"Filter") {
            continue;
        }
        let mut encoder = ZlibEncoder::new(Vec::new(), Compression::new(STRENGTH));
        encoder.write_all(&stream.content)?;
        let packed = encoder.finish()?;
        if packed.len() + "/Filter/FlateDecode".len() < stream.content.len() {
            stream.dict.set("Filter", "FlateDecode");
            stream.set_content(packed);
        }
    }
    Ok(())
}

/// Every text of the sheets as glyphs, and what is needed to embed their faces.
struct Shaped {
    /// Glyphs of a face and a text.
    runs: BTreeMap<(Face, String), Vec<Glyph>>,
    used: BTreeMap<Face, Used>,
}

/// The glyphs of a face that the sheets use.
#[derive(Default)]
struct Used {
    /// Each glyph and the characters it is read back as.
    glyphs: BTreeMap<u16, String>,
    /// Glyph ids of the subset.
    ids: BTreeMap<u16, u16>,
    bytes: Vec<u8>,
}

impl Shaped {
    fn of(sheets: &[Sheet], fonts: &Fonts) -> Result<Self, WriteError> {
        let mut shaped = Self { runs: BTreeMap::new(), used: BTreeMap::new() };
        for element in sheets.iter().flat_map(|sheet| &sheet.elements) {
            shaped.add(&element.items, fonts)?;
        }
        for (face, used) in &mut shaped.used {
            let subset = pdf_subset(*face, &used.glyphs.keys().copied().collect::<BTreeSet<_>>())?;
            (used.ids, used.bytes) = (subset.ids, subset.bytes);
        }
        Ok(shaped)
    }

    fn add(&mut self, items: &[Item<PagePoint>], fonts: &Fonts) -> Result<(), WriteError> {
        for item in items {
            match item {
                Item::Group { items, .. } | Item::Clip { items, .. } => self.add(items, fonts)?,
                Item::Fill { .. } | Item::Stroke { .. } => {}
                Item::Text(text) => {
                    let glyphs = fonts.shape(text.face, &text.text)?;
                    let used = self.used.entry(text.face).or_default();
                    for glyph in &glyphs {
                        used.glyphs.entry(glyph.id).or_insert_with(|| read_as(&glyph.text));
                    }
                    self.runs.insert((text.face, text.text.clone()), glyphs);
                }
            }
        }
        Ok(())
    }
}

/// The characters a glyph is read back as; a space that does not break is read as a space.
fn read_as(text: &str) -> String {
    text.replace('\u{a0}', " ")
}

fn font_id(face: Face) -> FontId {
    FontId(
        match face {
            Face::Regular => "regular",
            Face::SemiBold => "strong",
            Face::Italic => "slanted",
        }
        .to_owned(),
    )
}

fn embedded(face: Face, used: &Used) -> Result<PdfFont, WriteError> {
    let mut font = ParsedFont::from_bytes(&used.bytes, 0, &mut vec![])
        .ok_or_else(|| refused(format!("the subset of {} cannot be read", face.name())))?;
    font.font_name = Some(format!("{}+{}", subset_tag(&used.bytes), face.name()));
    font.pdf_font_metrics.us_weight_class = match face {
        Face::Regular | Face::Italic => 400,
        Face::SemiBold => 600,
    };
    Ok(PdfFont::new(font))
}

/// Six capitals that mark a subset (ISO 32000-1, 9.6.4), from its bytes.
fn subset_tag(bytes: &[u8]) -> String {
    let mut hash = tags::digest(&[bytes]);
    let mut letters = String::new();
    for _ in 0..6 {
        letters.push(char::from(b'A' + (hash % 26) as u8));
        hash /= 26;
    }
    letters
}

/// The operations of a page, with the state that is set.
struct Page<'a> {
    height_mm: f32,
    /// The language of the file.
    lang: &'a str,
    shaped: &'a Shaped,
    ops: Vec<Op>,
    fill: Option<Colour>,
    stroke: Option<Colour>,
    width: Option<f32>,
    dashed: bool,
}

impl<'a> Page<'a> {
    fn new(sheet: &Sheet, lang: &'a str, shaped: &'a Shaped) -> Self {
        let height_mm = sheet.height_mm;
        Self { height_mm, lang, shaped, ops: vec![], fill: None, stroke: None, width: None, dashed: false }
    }

    fn draw(&mut self, sheet: &Sheet) -> Result<(), WriteError> {
        self.ops.push(Op::SetLineCapStyle { cap: LineCapStyle::Round });
        self.ops.push(Op::SetLineJoinStyle { join: LineJoinStyle::Round });
        let mut number = 0;
        for element in &sheet.elements {
            if element.tag == Tag::Artifact {
                self.ops.push(Op::BeginMarkedContent { tag: "Artifact".to_owned() });
            } else {
                self.ops.push(marked(tags::mark(&element.tag), "MCID", DictItem::Int(number)));
                number += 1;
            }
            self.items(&element.items)?;
            self.ops.push(Op::EndMarkedContent);
        }
        Ok(())
    }

    fn items(&mut self, items: &[Item<PagePoint>]) -> Result<(), WriteError> {
        for item in items {
            match item {
                Item::Group { items, .. } => self.items(items)?,
                Item::Fill { path, colour, rule } => {
                    self.fill_with(*colour);
                    self.polygon(path, PaintMode::Fill, *rule);
                }
                Item::Stroke { path, colour, width, dash } => self.stroke(path, *colour, *width, *dash),
                Item::Clip { path, items } => {
                    self.ops.push(Op::SaveGraphicsState);
                    self.polygon(path, PaintMode::Clip, FillRule::NonZero);
                    self.items(items)?;
                    self.ops.push(Op::RestoreGraphicsState);
                    // What was set inside is gone.
                    (self.fill, self.stroke, self.width, self.dashed) = (None, None, None, false);
                    self.ops.push(Op::SetLineDashPattern { dash: LineDashPattern::solid() });
                }
                Item::Text(text) => self.text(text)?,
            }
        }
        Ok(())
    }

    fn fill_with(&mut self, colour: Colour) {
        if self.fill.replace(colour) != Some(colour) {
            self.ops.push(Op::SetFillColor { col: rgb(colour) });
        }
    }

    fn polygon(&mut self, path: &Path<PagePoint>, mode: PaintMode, rule: FillRule) {
        let rings = self.parts(path).into_iter().map(|(points, _)| PolygonRing { points }).collect();
        let winding_order = match rule {
            FillRule::NonZero => WindingOrder::NonZero,
            FillRule::EvenOdd => WindingOrder::EvenOdd,
        };
        self.ops.push(Op::DrawPolygon { polygon: Polygon { rings, mode, winding_order } });
    }

    fn stroke(&mut self, path: &Path<PagePoint>, colour: Colour, width: f32, dash: Option<(f32, f32)>) {
        if self.stroke.replace(colour) != Some(colour) {
            self.ops.push(Op::SetOutlineColor { col: rgb(colour) });
        }
        let width = round(width * PT_PER_MM);
        if self.width.replace(width) != Some(width) {
            self.ops.push(Op::SetOutlineThickness { pt: Pt(width) });
        }
        match dash {
            Some((on, off)) => {
                let pattern = [round(on * PT_PER_MM), round(off * PT_PER_MM)];
                self.ops.push(Op::SetLineDashPattern { dash: LineDashPattern::new(0.0, &pattern) });
            }
            None if self.dashed => {
                self.ops.push(Op::SetLineDashPattern { dash: LineDashPattern::solid() });
            }
            None => {}
        }
        self.dashed = dash.is_some();
        for (points, is_closed) in self.parts(path) {
            self.ops.push(Op::DrawLine { line: Line { points, is_closed } });
        }
    }

    /// The parts of a path in the page's points, each with whether it is closed.
    fn parts(&self, path: &Path<PagePoint>) -> Vec<(Vec<LinePoint>, bool)> {
        let mut parts: Vec<(Vec<LinePoint>, bool)> = vec![];
        let point = |p: PagePoint, bezier| LinePoint { p: self.point(p), bezier };
        for step in path {
            match *step {
                Step::Move(p) => parts.push((vec![point(p, false)], false)),
                Step::Line(p) => {
                    if let Some((points, _)) = parts.last_mut() {
                        points.push(point(p, false));
                    }
                }
                Step::Curve(a, b, p) => {
                    if let Some((points, _)) = parts.last_mut() {
                        points.extend([point(a, true), point(b, true), point(p, false)]);
                    }
                }
                Step::Close => {
                    if let Some((_, closed)) = parts.last_mut() {
                        *closed = true;
                    }
                }
            }
        }
        parts
    }

    /// A PDF measures in points from the bottom left corner.
    fn point(&self, p: PagePoint) -> Point {
        Point { x: Pt(round(p.x * PT_PER_MM)), y: Pt(round((self.height_mm - p.y) * PT_PER_MM)) }
    }

    fn text(&mut self, text: &Text<PagePoint>) -> Result<(), WriteError> {
        let (Some(glyphs), Some(used)) =
            (self.shaped.runs.get(&(text.face, text.text.clone())), self.shaped.used.get(&text.face))
        else {
            return Err(refused(format!("`{}` was not shaped in {}", text.text, text.face.name())));
        };
        let width = glyphs.iter().map(|g| g.advance).sum::<f32>() * text.size;
        let left = match text.align {
            Align::Start => text.at.x,
            Align::Middle => text.at.x - width * 0.5,
            Align::End => text.at.x - width,
        };
        let at = self.point(PagePoint::new(left, text.at.y));
        self.fill_with(text.colour);
        let foreign = text.lang != self.lang;
        if foreign {
            let data = text.lang.as_bytes().to_vec();
            self.ops.push(marked("Span", "Lang", DictItem::String { data, literal: true }));
        }
        self.ops.push(Op::StartTextSection);
        let size = Pt(round(text.size * PT_PER_MM));
        self.ops.push(Op::SetFont { font: PdfFontHandle::External(font_id(text.face)), size });
        self.ops.push(Op::SetTextMatrix { matrix: TextMatrix::Translate(at.x, at.y) });
        for run in runs(glyphs, used)? {
            // A PDF keeps one string for each glyph: where this text reads it as another, it is said beside it.
            if let Some(read) = &run.read_as {
                let data = utf16(read);
                let said = DictItem::String { data, literal: false };
                self.ops.push(marked("Span", "ActualText", said));
            }
            if run.rise != 0.0 {
                self.ops.push(Op::SetLineOffset { multiplier: round(run.rise * size.0) });
            }
            self.ops.push(Op::ShowText { items: run.items });
            if run.rise != 0.0 {
                self.ops.push(Op::SetLineOffset { multiplier: 0.0 });
            }
            if run.read_as.is_some() {
                self.ops.push(Op::EndMarkedContent);
            }
        }
        self.ops.push(Op::EndTextSection);
        if foreign {
            self.ops.push(Op::EndMarkedContent);
        }
        Ok(())
    }
}

/// Glyphs that are shown by one operation.
struct Run {
    items: Vec<TextItem>,
    /// Above the baseline, as a share of the type size.
    rise: f32,
    /// What it is read as, when its glyphs alone would say something else.
    read_as: Option<String>,
}

fn runs(glyphs: &[Glyph], used: &Used) -> Result<Vec<Run>, WriteError> {
    let mut runs: Vec<Run> = vec![];
    for glyph in glyphs {
        let (Some(told), Some(gid)) = (used.glyphs.get(&glyph.id), used.ids.get(&glyph.id)) else {
            return Err(refused(format!("the glyph of `{}` is not in its subset", glyph.text)));
        };
        let read = read_as(&glyph.text);
        let read_as = (*told != read).then_some(read);
        let extends =
            runs.last().is_some_and(|r| read_as.is_none() && r.read_as.is_none() && r.rise == glyph.dy);
        if !extends {
            runs.push(Run { items: vec![], rise: glyph.dy, read_as });
        }
        let Some(run) = runs.last_mut() else { continue };
        let thousandths = |share: f32| libm::roundf(share * 1000.0);
        if glyph.dx != 0.0 {
            run.items.push(TextItem::Offset(-thousandths(glyph.dx)));
        }
        let shown = Codepoint {
            gid: *gid,
            // A viewer moves by the glyph's own width; this takes it to the kerned place.
            offset: thousandths(glyph.width - glyph.advance + glyph.dx),
            cid: Some(told.clone()),
        };
        match run.items.last_mut() {
            Some(TextItem::GlyphIds(ids)) => ids.push(shown),
            Some(TextItem::Text(_) | TextItem::Offset(_)) | None => {
                run.items.push(TextItem::GlyphIds(vec![shown]));
            }
        }
    }
    Ok(runs)
}

fn marked(tag: &str, key: &str, value: DictItem) -> Op {
    let map = BTreeMap::from([(key.to_owned(), value)]);
    Op::BeginMarkedContentWithProperties { tag: tag.to_owned(), properties: DictItem::Dict { map } }
}

/// UTF-16 with its mark, as PDF strings are written.
pub(super) fn utf16(text: &str) -> Vec<u8> {
    std::iter::once(0xFEFF).chain(text.encode_utf16()).flat_map(u16::to_be_bytes).collect()
}

fn rgb(colour: Colour) -> Color {
    let share = |c: u8| libm::roundf(f32::from(c) / 255.0 * 1000.0) / 1000.0;
    Color::Rgb(Rgb { r: share(colour.r), g: share(colour.g), b: share(colour.b), icc_profile: None })
}

/// Two decimals of a point are 0.004 mm.
fn round(pt: f32) -> f32 {
    libm::roundf(pt * 100.0) / 100.0
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::scene::Role;

    fn text() -> Text<PagePoint> {
        Text {
            text: "felt".to_owned(),
            at: PagePoint::new(10.0, 10.0),
            align: Align::Start,
            size: 4.0,
            face: Face::Regular,
            colour: Colour::hex(0),
            lang: "en".to_owned(),
            role: Role::Body,
        }
    }

    fn sheet() -> Sheet {
        let element = crate::sheet::Element { tag: Tag::P, items: vec![Item::Text(text())] };
        Sheet {
            width_mm: 50.0,
            height_mm: 20.0,
            title: "t".to_owned(),
            lang: "en".to_owned(),
            description: "d".to_owned(),
            elements: vec![element],
        }
    }

    /// Words that were not shaped, and a glyph that is not in its subset, are never left out in silence.
    #[test]
    fn what_cannot_be_drawn_is_an_error() -> Result<(), WriteError> {
        let sheet = sheet();
        let whole = Shaped::of(std::slice::from_ref(&sheet), &Fonts::load()?)?;
        let drawn = |shaped: &Shaped| Page::new(&sheet, "en", shaped).draw(&sheet);
        assert_eq!(drawn(&whole), Ok(()));
        let nothing = Shaped { runs: BTreeMap::new(), used: BTreeMap::new() };
        assert_eq!(
            drawn(&nothing),
            Err(refused(format!("`felt` was not shaped in {}", Face::Regular.name())))
        );
        let mut short = whole;
        let used = short.used.get_mut(&Face::Regular).expect("the face");
        let glyph = *used.ids.keys().next_back().expect("a glyph");
        used.ids.remove(&glyph);
        let told = drawn(&short).map_err(|why| why.to_string());
        assert!(told.as_ref().is_err_and(|why| why.contains("is not in its subset")), "{told:?}");
        Ok(())
    }
}
