//! Putting a page together. In: a layout, figures, words. Out: the finished `Sheet`.

use super::content::{Block, Content, Kind};
use super::layout::{Edge, Holds, Layout, MM_PER_PT, Place, nearest};
use super::place::{Placed, place};
use super::set::{SetBlock, Setter, Setting};
use super::{Element, Sheet, SheetError, Tag};
use crate::figure::scene::{Align, Colour, FillRule, Frame, Item, Path, Role, Scene, Step, Text};
use crate::figure::{self, Labels, Style};
use crate::fonts::{Face, Fonts};
use crate::units::{FigurePoint, PagePoint};
use crate::words::Words;

/// Words.
const INK: Colour = Colour::hex(0x221C19);
/// Lines to write on, frames.
const RULE: Colour = Colour::hex(0x7D746D);
/// Width of frames and of lines to write on, in mm.
const RULE_MM: f32 = 0.3;
/// A picture that is narrower shows nothing, in mm.
const SMALLEST_PICTURE_MM: f32 = 20.0;
/// What a picture keeps free of words at its edges, as a share of its width.
const EDGES: f32 = 0.03;
/// Width of the frame round what matters most, in mm.
const BOLD_MM: f32 = 0.9;

impl Layout {
    /// The scale at which a figure of this frame fills its box: mm on the page for a cm of the body.
    ///
    /// Asked before the figure is drawn, so that its type and its lines have their real sizes.
    pub fn mm_per_cm(
        &self,
        frame: &Frame,
        content: &Content,
        words: &Words,
        fonts: &Fonts,
    ) -> Result<f32, SheetError> {
        let scales = self.scales(&[*frame], content, words, fonts)?;
        scales.first().copied().ok_or_else(|| self.wrong_pictures(1))
    }

    /// The same for each figure, in the order of [`Layout::pictures`].
    pub fn scales(
        &self,
        frames: &[Frame],
        content: &Content,
        words: &Words,
        fonts: &Fonts,
    ) -> Result<Vec<f32>, SheetError> {
        let mut out = vec![];
        for layout in self.pages() {
            let frames = frames.get(out.len()..).unwrap_or_default();
            let page = Page::lay_out(&layout, frames, content, words, fonts)?;
            let pictures = layout.boxes.iter().zip(&page.placed).filter(|(b, _)| b.is_picture());
            out.extend(pictures.zip(frames).map(|((_, placed), frame)| fit(placed, frame)));
        }
        Ok(out)
    }

    fn wrong_pictures(&self, given: usize) -> SheetError {
        let boxes = self.boxes.iter().filter(|b| b.is_picture()).count();
        SheetError::Pictures { layout: self.file.clone(), boxes, given }
    }
}

/// Puts figures and words on the one side of a layout. The figures stand in its picture boxes in turn.
pub fn compose(
    layout: &Layout,
    scenes: &[Scene],
    content: &Content,
    words: &Words,
    fonts: &Fonts,
) -> Result<Sheet, SheetError> {
    let mut sheets = compose_all(layout, scenes, content, words, fonts)?;
    match (sheets.pop(), sheets.len()) {
        (Some(sheet), 0) => Ok(sheet),
        (_, others) => Err(SheetError::Sides { layout: layout.file.clone(), sides: others + 1 }),
    }
}

/// Puts figures and words on the sides of a layout: a sheet for each that holds anything, one at least.
pub fn compose_all(
    layout: &Layout,
    scenes: &[Scene],
    content: &Content,
    words: &Words,
    fonts: &Fonts,
) -> Result<Vec<Sheet>, SheetError> {
    let mut rest = scenes;
    let mut sheets = vec![];
    for side in layout.pages() {
        let wanted = side.boxes.iter().filter(|b| b.is_picture()).count();
        let (here, later) =
            rest.split_at_checked(wanted).ok_or_else(|| layout.wrong_pictures(scenes.len()))?;
        rest = later;
        sheets.extend(compose_side(&side, here, content, words, fonts)?);
    }
    if !rest.is_empty() {
        return Err(layout.wrong_pictures(scenes.len()));
    }
    if sheets.is_empty() {
        return Err(SheetError::Sides { layout: layout.file.clone(), sides: 0 });
    }
    if layout.pages().first().is_some_and(|side| side.is_numbered) {
        number(layout, &mut sheets, words, fonts)?;
    }
    Ok(sheets)
}

/// How much room the number of a side takes at its foot, as a share of its type.
const FOOT: f32 = 1.3;

/// Which side of how many each is, at its foot: sheets come apart.
fn number(layout: &Layout, sheets: &mut [Sheet], words: &Words, fonts: &Fonts) -> Result<(), SheetError> {
    let (size, sides) = (layout.smallest_pt * MM_PER_PT, sheets.len().to_string());
    for (at, sheet) in sheets.iter_mut().enumerate() {
        let text = words.say("family-side", &[("number", &(at + 1).to_string()), ("sides", &sides)])?;
        let x = sheet.width_mm - layout.margin_mm - fonts.measure(Face::Regular, &text, size)?;
        let at = PagePoint::new(x, sheet.height_mm - layout.margin_mm - 0.25 * size);
        let (lang, face) = (words.lang().to_owned(), Face::Regular);
        let text = Text { text, at, align: Align::Start, size, face, colour: INK, lang, role: Role::Body };
        // Not read out: it is of the paper, and a reader who listens has the whole in one.
        sheet.elements.push(Element { tag: Tag::Artifact, items: vec![Item::Text(text)] });
    }
    Ok(())
}

/// One side; nothing when all its boxes are empty.
fn compose_side(
    layout: &Layout,
    scenes: &[Scene],
    content: &Content,
    words: &Words,
    fonts: &Fonts,
) -> Result<Option<Sheet>, SheetError> {
    let frames: Vec<Frame> = scenes.iter().map(|s| s.frame).collect();
    let page = Page::lay_out(layout, &frames, content, words, fonts)?;
    let mut pictures = scenes.iter().enumerate();
    let mut elements = vec![];
    let mut groups = 0;
    for (b, placed) in layout.boxes.iter().zip(&page.placed) {
        if placed.is_left_out {
            continue;
        }
        let corner = PagePoint::new(layout.margin_mm + placed.x, layout.margin_mm + placed.y);
        elements.extend(edge(b.edge, corner, placed));
        if !b.is_picture() {
            words_of(b, corner, placed, words, &mut groups, &mut elements)?;
        } else if let Some((number, scene)) = pictures.next() {
            elements.push(picture(scene, number, corner, placed));
        }
    }
    if elements.is_empty() {
        return Ok(None);
    }
    let sheet = Sheet {
        width_mm: page.width,
        height_mm: page.height,
        title: content.title.clone(),
        lang: words.lang().to_owned(),
        description: content.description.clone(),
        elements,
    };
    Ok(Some(copies(sheet, layout)))
}

/// The sheet with as many copies of the page as the layout asks for, and lines to cut along.
fn copies(page: Sheet, layout: &Layout) -> Sheet {
    let (across, down) = layout.copies;
    if (across, down) == (1, 1) {
        return page;
    }
    let (width, height) = (page.width_mm, page.height_mm);
    let mut elements = vec![];
    for row in 0..down {
        for column in 0..across {
            let by = (f32::from(column) * width, f32::from(row) * height);
            let number = row * across + column;
            let moved = |p: PagePoint| PagePoint::new(p.x + by.0, p.y + by.1);
            elements.extend(page.elements.iter().map(|element| {
                let mut items: Vec<Item<PagePoint>> =
                    element.items.iter().map(|item| item.map(&moved, 1.0)).collect();
                if number > 0 {
                    items.iter_mut().for_each(|i| rename(i, &format!("copy-{}-", number + 1)));
                }
                Element { tag: of_copy(&element.tag, usize::from(number)), items }
            }));
        }
    }
    let (whole_width, whole_height) = (width * f32::from(across), height * f32::from(down));
    let margin = layout.margin_mm;
    let cut = |from: PagePoint, to: PagePoint| Item::Stroke {
        path: vec![Step::Move(from), Step::Line(to)],
        colour: RULE,
        width: RULE_MM,
        dash: Some((1.5, 1.5)),
    };
    let mut lines = vec![];
    for column in 1..across {
        let x = f32::from(column) * width;
        lines.push(cut(PagePoint::new(x, margin), PagePoint::new(x, whole_height - margin)));
    }
    for row in 1..down {
        let y = f32::from(row) * height;
        lines.push(cut(PagePoint::new(margin, y), PagePoint::new(whole_width - margin, y)));
    }
    elements.push(Element { tag: Tag::Artifact, items: lines });
    Sheet { width_mm: whole_width, height_mm: whole_height, elements, ..page }
}

/// Lists and tables of different copies stay apart.
fn of_copy(tag: &Tag, number: usize) -> Tag {
    let apart = 1000 * number;
    match tag {
        Tag::Item { list } => Tag::Item { list: list + apart },
        Tag::Sign { list, alt } => Tag::Sign { list: list + apart, alt: alt.clone() },
        Tag::Cell { table, row, head } => Tag::Cell { table: table + apart, row: *row, head: *head },
        Tag::H1 | Tag::H2 | Tag::P | Tag::Figure { .. } | Tag::Artifact => tag.clone(),
    }
}

/// A page with its boxes placed.
struct Page {
    width: f32,
    height: f32,
    placed: Vec<Placed>,
}

impl Page {
    fn lay_out(
        layout: &Layout,
        frames: &[Frame],
        content: &Content,
        words: &Words,
        fonts: &Fonts,
    ) -> Result<Self, SheetError> {
        let margins = 2.0 * layout.margin_mm;
        let (width, height) = match layout.paper.size() {
            Ok(size) => size,
            Err(scale) => {
                let frame = frames.first().ok_or_else(|| layout.wrong_pictures(0))?;
                (width_of(frame) * scale + margins, height_of(frame) * scale + margins)
            }
        };
        let (width, height) = (width / f32::from(layout.copies.0), height / f32::from(layout.copies.1));
        let foot = if layout.is_numbered { FOOT * layout.smallest_pt * MM_PER_PT } else { 0.0 };
        let blocks = layout
            .boxes
            .iter()
            .map(|b| blocks_of(layout, b, content, words))
            .collect::<Result<Vec<_>, _>>()?;
        let shapes: Vec<f32> = frames.iter().map(|f| height_of(f) / width_of(f)).collect();
        let setter = Setter::new(fonts);
        let names = names_beside(layout, content, words, fonts)?;
        let least: Vec<f32> = layout.boxes.iter().zip(names).map(|(b, mm)| b.at_least_mm.max(mm)).collect();
        let placed =
            place(layout, &blocks, &shapes, &least, &setter, width - margins, height - margins - foot)?;
        let pictures = layout.boxes.iter().zip(&placed).filter(|(b, _)| b.is_picture());
        for ((b, placed), frame) in pictures.zip(frames) {
            let wide = fit(placed, frame) * width_of(frame);
            if wide < SMALLEST_PICTURE_MM {
                return Err(SheetError::DoesNotFit {
                    layout: layout.file.clone(),
                    name: b.name.clone(),
                    detail: format!("the picture would be {wide:.0} mm wide; give it more room"),
                });
            }
        }
        Ok(Self { width, height, placed })
    }
}

/// The height at which the names of her two sides stand side by side at the foot of each box's picture, in mm; 0 where none
/// stand. Names that lie on one another would leave a side in doubt: the words give the picture room, or the page gives way.
fn names_beside(
    layout: &Layout,
    content: &Content,
    words: &Words,
    fonts: &Fonts,
) -> Result<Vec<f32>, SheetError> {
    let frame = figure::frame(Style::Soft);
    let for_family = content.blocks.contains_key("family-title") && words.has("your-left");
    let mut out = vec![];
    for b in &layout.boxes {
        let is_named = b.is_picture() && b.picture.labels.is_none_or(|labels| labels == Labels::Family);
        if !is_named || !for_family || layout.paper.size().is_err() {
            out.push(0.0);
            continue;
        }
        let size = b.type_pt * MM_PER_PT;
        // A letter's height between them, and what the picture keeps free at its edges.
        let mut wide = size;
        for id in ["your-left", "your-right"] {
            wide += fonts.measure(Face::SemiBold, &words.say(id, &[])?, size)?;
        }
        if layout.width_mm().is_some_and(|all| wide * (1.0 + EDGES) > all) {
            return Err(SheetError::DoesNotFit {
                layout: layout.file.clone(),
                name: b.name.clone(),
                detail: format!(
                    "the names of the sides need {wide:.0} mm beside each other; set them smaller"
                ),
            });
        }
        out.push(wide * (1.0 + EDGES) * height_of(&frame) / width_of(&frame));
    }
    Ok(out)
}

/// The words a box holds: blocks that were prepared, else the message of that name.
pub(super) fn blocks_of(
    layout: &Layout,
    b: &Place,
    content: &Content,
    words: &Words,
) -> Result<Vec<Block>, SheetError> {
    let mut out = vec![];
    for held in &b.holds {
        match held {
            Holds::Picture => {}
            Holds::Lines(n) => out.extend((0..*n).map(|_| Block::new(Kind::Blank, ""))),
            Holds::Words(id) => match content.blocks.get(id) {
                Some(blocks) => out.extend(blocks.iter().cloned()),
                None if words.has(id) => out.push(Block::new(Kind::Text, words.say(id, &[])?)),
                None => {
                    let prepared: Vec<&str> = content.blocks.keys().map(String::as_str).collect();
                    return Err(SheetError::NoWords {
                        layout: layout.file.clone(),
                        name: b.name.clone(),
                        id: id.clone(),
                        near: nearest(id, &prepared),
                    });
                }
            },
        }
    }
    Ok(if b.joined { joined(out) } else { out })
}

/// Paragraphs of running text that follow one another as one.
fn joined(blocks: Vec<Block>) -> Vec<Block> {
    let mut out: Vec<Block> = vec![];
    for block in blocks {
        match out.last_mut() {
            Some(last) if last.kind == Kind::Text && block.kind == Kind::Text => {
                last.text = format!("{} {}", last.text, block.text);
                last.numbers.extend(block.numbers);
            }
            _ => out.push(block),
        }
    }
    out
}

fn width_of(frame: &Frame) -> f32 {
    frame.right - frame.left
}

fn height_of(frame: &Frame) -> f32 {
    frame.top - frame.bottom
}

/// mm for a cm at which the frame fills the box.
fn fit(placed: &Placed, frame: &Frame) -> f32 {
    (placed.width / width_of(frame)).min(placed.height / height_of(frame))
}

/// A figure in its box: at the top, in the middle, y turned down, cut off at its frame.
fn picture(scene: &Scene, number: usize, corner: PagePoint, placed: &Placed) -> Element {
    let (frame, scale) = (&scene.frame, fit(placed, &scene.frame));
    let left = corner.x + (placed.width - width_of(frame) * scale) * 0.5;
    let top = corner.y;
    // The one place where the y axis is turned.
    let to_page =
        |p: FigurePoint| PagePoint::new(left + (p.x - frame.left) * scale, top + (frame.top - p.y) * scale);
    let mut items: Vec<Item<PagePoint>> = scene.items.iter().map(|i| i.map(&to_page, scale)).collect();
    if number > 0 {
        // Names stay unique on the sheet.
        items.iter_mut().for_each(|i| rename(i, &format!("picture-{}-", number + 1)));
    }
    if scene.items.iter().any(|i| reaches_out(i, frame)) {
        let size = (width_of(frame) * scale, height_of(frame) * scale);
        items = vec![Item::Clip { path: rectangle(left, top, size.0, size.1), items }];
    }
    Element { tag: Tag::Figure { alt: scene.description.clone() }, items }
}

/// Puts `prefix` before every name, so that names stay unique on a sheet.
pub(super) fn rename(item: &mut Item<PagePoint>, prefix: &str) {
    match item {
        Item::Group { name, items, .. } => {
            name.insert_str(0, prefix);
            items.iter_mut().for_each(|i| rename(i, prefix));
        }
        Item::Clip { items, .. } => items.iter_mut().for_each(|i| rename(i, prefix)),
        Item::Fill { .. } | Item::Stroke { .. } | Item::Text(_) => {}
    }
}

/// Whether a mark may show outside the frame; text is placed by whoever drew the figure.
fn reaches_out(item: &Item<FigurePoint>, frame: &Frame) -> bool {
    let outside = |path: &Path<FigurePoint>, by: f32| {
        let out = |p: FigurePoint| {
            p.x - by < frame.left || p.x + by > frame.right || p.y - by < frame.bottom || p.y + by > frame.top
        };
        path.iter().any(|s| match *s {
            Step::Move(p) | Step::Line(p) => out(p),
            Step::Curve(a, b, c) => out(a) || out(b) || out(c),
            Step::Close => false,
        })
    };
    match item {
        Item::Group { items, .. } => items.iter().any(|i| reaches_out(i, frame)),
        Item::Clip { path, .. } => outside(path, 0.0),
        Item::Fill { path, .. } => outside(path, 0.0),
        Item::Stroke { path, width, .. } => outside(path, width * 0.5),
        Item::Text(_) => false,
    }
}

fn words_of(
    b: &Place,
    corner: PagePoint,
    placed: &Placed,
    words: &Words,
    groups: &mut usize,
    elements: &mut Vec<Element>,
) -> Result<(), SheetError> {
    let setting: &Setting = &placed.words;
    let origin = PagePoint::new(corner.x + b.padding_mm, corner.y + b.padding_top_mm);
    // Points that follow one another are a list, cells a table; each has a number of its own.
    let group = |kind: Kind| match kind {
        Kind::Item => 1,
        Kind::Cell(_) => 2,
        Kind::Title | Kind::Part | Kind::Heading | Kind::Lead => 0,
        Kind::Text | Kind::Caption | Kind::Emphasis | Kind::Strong | Kind::Number | Kind::Blank => 0,
        Kind::Question | Kind::Answer => 0,
    };
    let mut inside = 0;
    for block in &setting.blocks {
        if inside != group(block.kind) {
            inside = group(block.kind);
            *groups += usize::from(inside > 0);
        }
        let drawn = decoration(block, origin);
        if !drawn.is_empty() {
            elements.push(Element { tag: Tag::Artifact, items: drawn });
        }
        if block.lines.is_empty() {
            continue;
        }
        if let Some((sign, x, y, side)) = block.sign {
            let alt = words.say(sign.message(), &[])?;
            let items = sign.marks(PagePoint::new(origin.x + x, origin.y + y), side);
            let tag = match block.kind {
                Kind::Item => Tag::Sign { list: *groups, alt },
                _ => Tag::Figure { alt },
            };
            elements.push(Element { tag, items });
        }
        let tag = match block.kind {
            Kind::Title => Tag::H1,
            Kind::Part | Kind::Heading => Tag::H2,
            Kind::Lead
            | Kind::Text
            | Kind::Caption
            | Kind::Emphasis
            | Kind::Strong
            | Kind::Number
            | Kind::Question
            | Kind::Answer
            | Kind::Blank => Tag::P,
            Kind::Item => Tag::Item { list: *groups },
            Kind::Cell(cell) => Tag::Cell { table: *groups, row: cell.row, head: cell.head },
        };
        elements.push(Element { tag, items: lines_of(block, origin, words.lang()) });
    }
    Ok(())
}

fn lines_of(block: &SetBlock, origin: PagePoint, lang: &str) -> Vec<Item<PagePoint>> {
    let line = |line: &super::set::Line| {
        Item::Text(Text {
            text: line.text.clone(),
            at: PagePoint::new(origin.x + line.x, origin.y + line.baseline),
            align: Align::Start,
            size: line.size_mm,
            face: line.face,
            colour: INK,
            lang: lang.to_owned(),
            role: Role::Body,
        })
    };
    block.lines.iter().map(line).collect()
}

/// The dot of a list's point, the line to write on.
fn decoration(block: &SetBlock, origin: PagePoint) -> Vec<Item<PagePoint>> {
    let mut items = vec![];
    if let Some((x, y, r)) = block.dot {
        let path = circle(origin.x + x, origin.y + y, r);
        items.push(Item::Fill { path, colour: INK, rule: FillRule::NonZero });
    }
    if let Some((from, to, y)) = block.rule {
        let at = |x| PagePoint::new(origin.x + x, origin.y + y);
        let path = vec![Step::Move(at(from)), Step::Line(at(to))];
        items.push(Item::Stroke { path, colour: RULE, width: RULE_MM, dash: None });
    }
    items
}

fn edge(edge: Edge, corner: PagePoint, placed: &Placed) -> Option<Element> {
    let (colour, width) = match edge {
        Edge::None => return None,
        Edge::Line => (RULE, RULE_MM),
        Edge::Bold => (INK, BOLD_MM),
    };
    let path = rounded(corner.x, corner.y, placed.width, placed.height, 8.0 * MM_PER_PT);
    let items = vec![Item::Stroke { path, colour, width, dash: None }];
    Some(Element { tag: Tag::Artifact, items })
}

/// The four sides of a box from its top left corner.
pub(super) fn rectangle(x: f32, y: f32, w: f32, h: f32) -> Path<PagePoint> {
    let at = PagePoint::new;
    vec![
        Step::Move(at(x, y)),
        Step::Line(at(x + w, y)),
        Step::Line(at(x + w, y + h)),
        Step::Line(at(x, y + h)),
        Step::Close,
    ]
}

/// Handle of a quarter circle as a cubic curve, as a share of the radius; error 0.03 % of the radius.
pub(super) const QUARTER: f32 = 0.552_284_8;

fn rounded(x: f32, y: f32, w: f32, h: f32, r: f32) -> Path<PagePoint> {
    let at = |dx: f32, dy: f32| PagePoint::new(x + dx, y + dy);
    let k = r * (1.0 - QUARTER);
    vec![
        Step::Move(at(r, 0.0)),
        Step::Line(at(w - r, 0.0)),
        Step::Curve(at(w - k, 0.0), at(w, k), at(w, r)),
        Step::Line(at(w, h - r)),
        Step::Curve(at(w, h - k), at(w - k, h), at(w - r, h)),
        Step::Line(at(r, h)),
        Step::Curve(at(k, h), at(0.0, h - k), at(0.0, h - r)),
        Step::Line(at(0.0, r)),
        Step::Curve(at(0.0, k), at(k, 0.0), at(r, 0.0)),
        Step::Close,
    ]
}

fn circle(x: f32, y: f32, r: f32) -> Path<PagePoint> {
    rounded(x - r, y - r, 2.0 * r, 2.0 * r, r)
}
