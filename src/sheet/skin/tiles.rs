//! One large drawing over several sheets of paper. In: marks in mm, paper. Out: sheets: each shows its part through a
//! window, overlaps its neighbours by 1 cm, and carries lettered crosses to join by, her sides and which way is up, a bar of
//! 5 cm, and a map of the whole.

use super::tracing::{INK, Marks, PAPER, QUIET, bounds, label};
use crate::figure::scene::{Align, FillRule, Item, Role, Step, Text};
use crate::fonts::{Face, Fonts};
use crate::sheet::compose::rectangle;
use crate::sheet::content::{Block, Kind};
use crate::sheet::set::{SetError, Setter};
use crate::sheet::{Element, Sheet, SheetError, Tag};
use crate::units::PagePoint;
use crate::words::Words;

/// What no printer reaches, mm.
const MARGIN_MM: f32 = 8.0;
/// Height of the strip with bar, words and map, mm: on a page from this width on its words take fewer lines.
const STRIP_MM: f32 = 34.0;
const BROAD_MM: f32 = 270.0;
const STRIP_BROAD_MM: f32 = 24.0;
/// By how much neighbours overlap, mm.
const OVERLAP_MM: f32 = 10.0;
/// The bar to check the size by, mm.
const BAR_MM: f32 = 50.0;
/// Type of the strip, points.
const TYPE_PT: f32 = 11.0;
/// In a language with longer words.
const SMALLEST_PT: f32 = 10.0;
const MM_PER_PT: f32 = 25.4 / 72.0;
/// Arm of a cross, mm.
const CROSS_MM: f32 = 3.0;
/// Where along an overlap a cross may stand, as shares of the window: from both ends inwards.
const CROSS_SHARES: [[f32; 5]; 2] = [[0.2, 0.14, 0.26, 0.32, 0.38], [0.8, 0.86, 0.74, 0.68, 0.62]];
/// Height of the line over the drawing that names her sides, mm.
const HEAD_MM: f32 = 7.0;
/// Where a window begins on its page, mm from above.
const TOP_MM: f32 = MARGIN_MM + HEAD_MM;

/// How a drawing is parted.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Tiles {
    /// The page, mm.
    width: f32,
    height: f32,
    columns: usize,
    rows: usize,
    /// Left and top of the first window in the drawing.
    left: f32,
    top: f32,
    /// Size of a window.
    window: (f32, f32),
}

impl Tiles {
    /// The fewest sheets for these marks; upright when it makes no difference.
    pub fn over(marks: &Marks, paper: (f32, f32)) -> Self {
        let [left, top, right, bottom] = bounds(marks);
        let tiled = |(width, height): (f32, f32)| {
            let window = (width - 2.0 * MARGIN_MM, height - MARGIN_MM - TOP_MM - strip_mm(width));
            let count = |length: f32, window: f32| {
                libm::ceilf(((length - OVERLAP_MM) / (window - OVERLAP_MM)).max(1.0)) as usize
            };
            let (columns, rows) = (count(right - left, window.0), count(bottom - top, window.1));
            // What is left over is paper all round.
            let spare = |n: usize, window: f32, length: f32| {
                0.5 * (n as f32 * (window - OVERLAP_MM) + OVERLAP_MM - length)
            };
            Self {
                width,
                height,
                columns,
                rows,
                left: left - spare(columns, window.0, right - left),
                top: top - spare(rows, window.1, bottom - top),
                window,
            }
        };
        let (upright, lying) = (tiled(paper), tiled((paper.1, paper.0)));
        if lying.columns * lying.rows < upright.columns * upright.rows { lying } else { upright }
    }

    /// Left and top of a window in the drawing.
    fn corner(&self, row: usize, column: usize) -> (f32, f32) {
        (
            self.left + column as f32 * (self.window.0 - OVERLAP_MM),
            self.top + row as f32 * (self.window.1 - OVERLAP_MM),
        )
    }

    /// Row and column of every sheet, in reading order.
    fn all(&self) -> impl Iterator<Item = (usize, usize)> + '_ {
        (0..self.rows).flat_map(|row| (0..self.columns).map(move |column| (row, column)))
    }

    /// Where crosses stand in the drawing: on the middle of every overlap, two on each, off the words and off the lines where
    /// they can be. Each has its own letter, the same on both sheets: letters that differ are never laid on one another.
    fn crosses(&self, marks: &Marks, texts: &[(Text<PagePoint>, f32)]) -> Vec<(PagePoint, String)> {
        let on_words = |p: PagePoint| {
            texts.iter().any(|(text, width)| {
                p.x > text.at.x - 6.0
                    && p.x < text.at.x + width + 6.0
                    && p.y > text.at.y - text.size - 6.0
                    && p.y < text.at.y + 6.0
            })
        };
        let on_lines = |p: PagePoint| marks.points.iter().any(|q| libm::hypotf(p.x - q.x, p.y - q.y) < 6.0);
        let free = |places: [PagePoint; 5]| {
            let clear = places.iter().find(|p| !on_words(**p) && !on_lines(**p));
            *clear.or_else(|| places.iter().find(|p| !on_words(**p))).unwrap_or(&places[0])
        };
        let mut places = vec![];
        for (row, column) in self.all() {
            let (x, y) = self.corner(row, column);
            let half = 0.5 * OVERLAP_MM;
            for shares in CROSS_SHARES {
                if column > 0 {
                    places.push(free(shares.map(|s| PagePoint::new(x + half, y + s * self.window.1))));
                }
                if row > 0 {
                    places.push(free(shares.map(|s| PagePoint::new(x + s * self.window.0, y + half))));
                }
            }
        }
        places.into_iter().enumerate().map(|(i, at)| (at, letter(i))).collect()
    }
}

/// A, B ... Z, A2, B2 ...
fn letter(index: usize) -> String {
    let letter = char::from(b'A' + (index % 26) as u8);
    if index < 26 { letter.to_string() } else { format!("{letter}{}", index / 26 + 1) }
}

/// Height of the strip on a page of this width, mm.
fn strip_mm(width: f32) -> f32 {
    if width < BROAD_MM { STRIP_MM } else { STRIP_BROAD_MM }
}

/// The sheets; how the babies lie, and whether there are several.
pub(super) fn sheets(
    tiles: &Tiles,
    marks: &Marks,
    (lie, several): (&str, bool),
    words: &Words,
    fonts: &Fonts,
) -> Result<Vec<Sheet>, SheetError> {
    let texts = in_one_piece(tiles, marks);
    let count = tiles.rows * tiles.columns;
    let mut out = vec![];
    for (index, (row, column)) in tiles.all().enumerate() {
        let strip = Strip { tiles, row, column, several, words, fonts };
        let title = words.say("trace-title", &[])?;
        let which = if count == 1 {
            words.say("trace-one-sheet", &[])?
        } else {
            let [number, count, row, column] = [index + 1, count, row + 1, column + 1].map(|n| n.to_string());
            let values = [("number", &*number), ("count", &*count), ("row", &*row), ("column", &*column)];
            words.say("trace-sheet", &values)?
        };
        let about = words.say("trace-about", &[("lie", lie)])?;
        let drawing = Element {
            tag: Tag::Figure { alt: format!("{which} {about}") },
            items: vec![window(tiles, (row, column), marks, &texts, words.lang())],
        };
        let mut elements = strip.words(&title, &which)?;
        elements.push(strip.head()?);
        elements.push(drawing);
        elements.push(strip.bar()?);
        elements.push(strip.map());
        out.push(Sheet {
            width_mm: tiles.width,
            height_mm: tiles.height,
            title,
            lang: words.lang().to_owned(),
            description: about,
            elements,
        });
    }
    Ok(out)
}

/// The words of the drawing, each moved as little as puts it whole on some sheet.
fn in_one_piece(tiles: &Tiles, marks: &Marks) -> Vec<(Text<PagePoint>, f32)> {
    let moved = |(text, width): &(Text<PagePoint>, f32)| {
        let best = tiles
            .all()
            .map(|(row, column)| {
                let (x, y) = tiles.corner(row, column);
                let right = (x + tiles.window.0 - 1.0 - width).max(x + 1.0);
                let low = y + tiles.window.1 - 0.3 * text.size;
                let to = PagePoint::new(
                    text.at.x.clamp(x + 1.0, right),
                    text.at.y.clamp(y + text.size, low.max(y + text.size)),
                );
                (libm::hypotf(to.x - text.at.x, to.y - text.at.y), to)
            })
            .min_by(|a, b| a.0.total_cmp(&b.0));
        let mut text = text.clone();
        if let Some((_, to)) = best {
            text.at = to;
        }
        (text, *width)
    };
    marks.texts.iter().map(moved).collect()
}

/// A window's part of the drawing, with its crosses and where it is cut.
fn window(
    tiles: &Tiles,
    (row, column): (usize, usize),
    marks: &Marks,
    texts: &[(Text<PagePoint>, f32)],
    lang: &str,
) -> Item<PagePoint> {
    let (x, y) = tiles.corner(row, column);
    let (w, h) = tiles.window;
    let shift = |p: PagePoint| PagePoint::new(p.x - x + MARGIN_MM, p.y - y + TOP_MM);
    let mut items: Vec<Item<PagePoint>> = marks.items.iter().map(|item| item.map(&shift, 1.0)).collect();
    let line = |a: (f32, f32), b: (f32, f32), width, dash| Item::Stroke {
        path: vec![Step::Move(PagePoint::new(a.0, a.1)), Step::Line(PagePoint::new(b.0, b.1))],
        colour: QUIET,
        width,
        dash,
    };
    let mut letters = vec![];
    for (at, name) in tiles.crosses(marks, texts) {
        let at = shift(at);
        items.push(line((at.x - CROSS_MM, at.y), (at.x + CROSS_MM, at.y), 0.3, None));
        items.push(line((at.x, at.y - CROSS_MM), (at.x, at.y + CROSS_MM), 0.3, None));
        let corner = PagePoint::new(at.x + 0.8, at.y - 0.8);
        let is_here = (MARGIN_MM..MARGIN_MM + w).contains(&at.x) && (TOP_MM..TOP_MM + h).contains(&at.y);
        if is_here {
            let mut text = label(name, corner, Align::Start, TYPE_PT * MM_PER_PT, lang);
            text.face = Face::SemiBold;
            letters.push(Item::Text(text));
        }
    }
    // This sheet is cut where it lies on its neighbour.
    let half = 0.5 * OVERLAP_MM;
    if column > 0 {
        let cut = MARGIN_MM + half;
        items.push(line((cut, TOP_MM), (cut, TOP_MM + h), 0.25, Some((2.0, 2.0))));
    }
    if row > 0 {
        let cut = TOP_MM + half;
        items.push(line((MARGIN_MM, cut), (MARGIN_MM + w, cut), 0.25, Some((2.0, 2.0))));
    }
    items.extend(letters);
    let whole = |text: &Text<PagePoint>, width: f32| {
        text.at.x >= x
            && text.at.x + width <= x + w
            && text.at.y - 0.8 * text.size >= y
            && text.at.y + 0.2 * text.size <= y + h
    };
    for (text, _) in texts.iter().filter(|(text, width)| whole(text, *width)) {
        items.push(Item::Text(text.clone()).map(&shift, 1.0));
    }
    Item::Clip { path: rectangle(MARGIN_MM, TOP_MM, w, h), items }
}

/// The strip at the foot of a sheet.
struct Strip<'a> {
    tiles: &'a Tiles,
    row: usize,
    column: usize,
    /// More than one baby is drawn.
    several: bool,
    words: &'a Words,
    fonts: &'a Fonts,
}

/// Room for the bar and for the map, mm.
const BAR_ROOM_MM: f32 = 60.0;
const MAP_ROOM_MM: f32 = 34.0;

impl Strip<'_> {
    fn top(&self) -> f32 {
        self.tiles.height - MARGIN_MM - self.high() + 2.0
    }

    fn high(&self) -> f32 {
        strip_mm(self.tiles.width)
    }

    /// Over the drawing: which way her sides lie, and which way is up; arrows, so that it is true on every sheet of the whole.
    fn head(&self) -> Result<Element, SheetError> {
        let size = TYPE_PT * MM_PER_PT;
        let base = MARGIN_MM + 0.5 * (HEAD_MM + 0.66 * size) - 0.6;
        let middle = base - 0.33 * size;
        let (left, right) = (MARGIN_MM, self.tiles.width - MARGIN_MM);
        let arrow = |tip: (f32, f32), out: (f32, f32)| {
            let at = |along: f32, across: f32| {
                PagePoint::new(tip.0 - out.0 * along - out.1 * across, tip.1 - out.1 * along + out.0 * across)
            };
            let path = vec![
                Step::Move(at(0.0, 0.0)),
                Step::Line(at(3.6, 1.7)),
                Step::Line(at(3.6, -1.7)),
                Step::Close,
            ];
            Item::Fill { path, colour: INK, rule: FillRule::NonZero }
        };
        let say = |id: &str, at: f32, face: Face| -> Result<(Text<PagePoint>, f32), SheetError> {
            let text = self.words.say(id, &[])?;
            let width = self.fonts.measure(face, &text, size)?;
            let mut text = label(text, PagePoint::new(at, base), Align::Start, size, self.words.lang());
            text.face = face;
            Ok((text, width))
        };
        let (mut hers_right, right_wide) = say("trace-right", left + 4.8, Face::SemiBold)?;
        let (mut hers_left, left_wide) = say("trace-left", right - 4.8, Face::SemiBold)?;
        let (mut up, up_wide) = say("trace-up", 0.0, Face::Regular)?;
        hers_left.at.x -= left_wide;
        (hers_right.role, hers_left.role) = (Role::Side, Role::Side);
        let (from, to) = (hers_right.at.x + right_wide + 2.0, hers_left.at.x - 2.0);
        if up_wide + 5.0 > to - from {
            return Err(self.too_much(format!("`{}` has no room over the drawing", up.text)));
        }
        up.at.x = 0.5 * (from + to - up_wide + 5.0);
        let tip = (up.at.x - 3.0, middle - 1.8);
        let items = vec![
            arrow((left, middle), (-1.0, 0.0)),
            Item::Text(hers_right),
            arrow(tip, (0.0, -1.0)),
            Item::Text(up),
            Item::Text(hers_left),
            arrow((right, middle), (1.0, 0.0)),
        ];
        Ok(Element { tag: Tag::P, items })
    }

    /// What this sheet is, and how it is used.
    fn words(&self, title: &str, which: &str) -> Result<Vec<Element>, SheetError> {
        let mut use_words = vec![];
        if self.tiles.rows * self.tiles.columns > 1 {
            use_words.push(self.words.say("trace-join", &[])?);
        }
        use_words.push(self.words.say("trace-use", &[])?);
        if self.several {
            use_words.push(self.words.say("trace-numbers", &[])?);
        }
        let blocks = [
            Block::new(Kind::Strong, format!("{title}. {which}")),
            Block::new(Kind::Text, use_words.join(" ")),
        ];
        let width = self.tiles.width - 2.0 * MARGIN_MM - BAR_ROOM_MM - MAP_ROOM_MM;
        let set = |type_pt| {
            Setter::new(self.fonts).set(&blocks, width, type_pt).map_err(|fault| match fault {
                SetError::Font(fault) => SheetError::from(fault),
                SetError::TooWide(words) => self.too_much(format!("`{words}` is wider than the strip")),
            })
        };
        let mut set_words = set(TYPE_PT)?;
        if set_words.height_mm > self.high() - 2.0 {
            set_words = set(SMALLEST_PT)?;
        }
        let set = set_words;
        if set.height_mm > self.high() - 2.0 {
            let over = set.height_mm - (self.high() - 2.0);
            return Err(self.too_much(format!("its words are {over:.1} mm too high")));
        }
        let left = MARGIN_MM + BAR_ROOM_MM;
        let element = |(i, block): (usize, &crate::sheet::set::SetBlock)| {
            let items = block.lines.iter().map(|line| {
                let at = PagePoint::new(left + line.x, self.top() + line.baseline);
                let mut text = label(line.text.clone(), at, Align::Start, line.size_mm, self.words.lang());
                text.face = line.face;
                Item::Text(text)
            });
            Element { tag: if i == 0 { Tag::H1 } else { Tag::P }, items: items.collect() }
        };
        Ok(set.blocks.iter().enumerate().map(element).collect())
    }

    fn too_much(&self, detail: String) -> SheetError {
        SheetError::DoesNotFit { layout: "tracing sheet".to_owned(), name: "strip".to_owned(), detail }
    }

    /// A bar of 5 cm, and what to do when it is not.
    fn bar(&self) -> Result<Element, SheetError> {
        let (x, y) = (MARGIN_MM, self.top() + 5.0);
        let line = |a: (f32, f32), b: (f32, f32), width| Item::Stroke {
            path: vec![Step::Move(PagePoint::new(a.0, a.1)), Step::Line(PagePoint::new(b.0, b.1))],
            colour: INK,
            width,
            dash: None,
        };
        let mut items = vec![line((x, y), (x + BAR_MM, y), 0.6)];
        for cm in 0..=5 {
            let tick = if cm % 5 == 0 { 2.5 } else { 1.2 };
            let at = x + BAR_MM / 5.0 * cm as f32;
            items.push(line((at, y - tick), (at, y + tick), 0.4));
        }
        let blocks = [Block::new(Kind::Text, self.words.say("trace-bar", &[])?)];
        let set =
            Setter::new(self.fonts).set(&blocks, BAR_MM + 4.0, TYPE_PT).map_err(|fault| match fault {
                SetError::Font(fault) => SheetError::from(fault),
                SetError::TooWide(words) => self.too_much(format!("`{words}` is wider than the bar")),
            })?;
        for line in set.blocks.iter().flat_map(|block| &block.lines) {
            let at = PagePoint::new(x, y + 3.5 + line.baseline);
            let text = label(line.text.clone(), at, Align::Start, TYPE_PT * MM_PER_PT, self.words.lang());
            items.push(Item::Text(text));
        }
        Ok(Element { tag: Tag::P, items })
    }

    /// The sheets of the whole, this one dark.
    fn map(&self) -> Element {
        let tiles = self.tiles;
        let (wide, high) = (MAP_ROOM_MM - 8.0, self.high() - 4.0);
        let (w, h) = (tiles.width * tiles.columns as f32, tiles.height * tiles.rows as f32);
        let scale = (wide / w).min(high / h);
        let (cell_w, cell_h) = (tiles.width * scale, tiles.height * scale);
        let x = tiles.width - MARGIN_MM - cell_w * tiles.columns as f32 - 0.5;
        let y = self.top() + 0.5;
        let mut items = vec![];
        for (row, column) in tiles.all() {
            let path = rectangle(x + column as f32 * cell_w, y + row as f32 * cell_h, cell_w, cell_h);
            let here = (row, column) == (self.row, self.column);
            let colour = if here { QUIET } else { PAPER };
            items.push(Item::Fill { path: path.clone(), colour, rule: FillRule::NonZero });
            items.push(Item::Stroke { path, colour: INK, width: 0.3, dash: None });
        }
        Element { tag: Tag::Artifact, items }
    }
}
