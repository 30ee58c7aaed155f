//! Boxes on the page. In: a layout and the words of each box. Out: each box's place in mm, with its words set
//! in the largest type that fits.

use super::SheetError;
use super::content::Block;
use super::layout::{Layout, Place};
use super::set::{SetError, Setter, Setting};
use std::collections::BTreeMap;
use taffy::prelude::*;
use taffy::style::{GridTemplateComponent, MaxTrackSizingFunction, MinTrackSizingFunction};

/// Type shrinks by this much at a time, in points.
const SHRINK_STEP_PT: f32 = 0.25;
/// Rounding in the layout library, in mm.
const SLACK_MM: f32 = 0.02;

/// A box on the page: its top left corner from the margins', its size, its words.
#[derive(Clone, Debug)]
pub(super) struct Placed {
    pub x: f32,
    pub y: f32,
    pub width: f32,
    pub height: f32,
    pub words: Setting,
    /// There is nothing in it: it is not drawn.
    pub is_left_out: bool,
}

/// Places every box of `layout` within `width` x `height` mm; `words` are the blocks of each box, `shapes` the
/// height over width of each picture. Words are set as large as lets every picture fill the width of its box; the
/// smallest type that may be, when none does. `least` is the smallest height of each box in mm.
pub(super) fn place(
    layout: &Layout,
    words: &[Vec<Block>],
    shapes: &[f32],
    least: &[f32],
    setter: &Setter<'_>,
    width: f32,
    height: f32,
) -> Result<Vec<Placed>, SheetError> {
    let mut tries = Tries { layout, words, least, setter, width, height, set: BTreeMap::new() };
    let most =
        layout.boxes.iter().map(|b| (b.type_pt - b.may_shrink_pt) / SHRINK_STEP_PT).fold(0.0, f32::max);
    // The fewest steps at which all is well; one more step never makes a page fuller.
    let (mut low, mut high) = (0, libm::ceilf(most) as u32);
    let mut best = tries.place(high)?;
    while low < high {
        let middle = (low + high) / 2;
        let placed = tries.place(middle)?;
        if tries.overflow(&placed).0 <= SLACK_MM && !tries.narrow(&placed, shapes) {
            (best, high) = (placed, middle);
        } else {
            low = middle + 1;
        }
    }
    match tries.overflow(&best) {
        (lowest, _) if lowest <= SLACK_MM => Ok(best),
        (lowest, fault) => Err(does_not_fit(
            layout,
            fault,
            format!("its words need {lowest:.1} mm more than there is; the page holds too much"),
        )),
    }
}

fn does_not_fit(layout: &Layout, place: &Place, detail: String) -> SheetError {
    SheetError::DoesNotFit { layout: layout.file.clone(), name: place.name.clone(), detail }
}

/// A page tried in several type sizes; what was set once is kept.
struct Tries<'a> {
    layout: &'a Layout,
    words: &'a [Vec<Block>],
    least: &'a [f32],
    setter: &'a Setter<'a>,
    width: f32,
    height: f32,
    /// Settings by box, and by the bits of width and type size.
    set: BTreeMap<(usize, u32, u32), Setting>,
}

impl Tries<'_> {
    /// How far the words of the fullest box end below its place or the margin (negative: above), and which box that is.
    fn overflow(&self, placed: &[Placed]) -> (f32, &Place) {
        self.layout
            .boxes
            .iter()
            .zip(placed)
            .zip(self.least)
            .filter(|((b, p), _)| !b.holds.is_empty() && !p.is_left_out)
            .map(|((b, p), least)| {
                let needed = (p.words.height_mm + b.padding_height_mm()).max(*least);
                // A box over several rows does not always stretch them.
                ((p.y + p.height - self.height).max(needed - p.height), b)
            })
            .fold((f32::MIN, &self.layout.boxes[0]), |worst, one| if one.0 > worst.0 { one } else { worst })
    }

    /// Whether a picture cannot fill the width of its box.
    fn narrow(&self, placed: &[Placed], shapes: &[f32]) -> bool {
        let pictures = self.layout.boxes.iter().zip(placed).filter(|(b, _)| b.is_picture());
        pictures.zip(shapes).any(|((_, p), shape)| p.height + SLACK_MM < p.width * shape)
    }

    /// Every box, with its type smaller by so many steps, as far as it may be.
    fn place(&mut self, steps: u32) -> Result<Vec<Placed>, SheetError> {
        let shrink = steps as f32 * SHRINK_STEP_PT;
        let sizes: Vec<f32> =
            self.layout.boxes.iter().map(|b| (b.type_pt - shrink).max(b.may_shrink_pt)).collect();
        try_place(self, &sizes)
    }
}

fn try_place(tries: &mut Tries<'_>, sizes: &[f32]) -> Result<Vec<Placed>, SheetError> {
    let Tries { layout, words, least, setter, width, height, set: kept } = tries;
    let (layout, words, least, setter, width, height) = (*layout, *words, *least, *setter, *width, *height);
    let mut tree: TaffyTree<usize> = TaffyTree::new();
    tree.disable_rounding();
    let lib = |e: taffy::TaffyError| does_not_fit(layout, &layout.boxes[0], e.to_string());

    let empty: Vec<bool> = layout.boxes.iter().zip(words).map(|(b, words)| is_empty(b, words)).collect();
    let tracks = Tracks::of(layout, &empty);
    let mut nodes = vec![];
    for (i, b) in layout.boxes.iter().enumerate() {
        let style = Style {
            display: if empty[i] || !tracks.has(b.rows) { Display::None } else { Display::Grid },
            grid_row: lines(tracks.within(b.rows)),
            grid_column: lines(b.columns),
            min_size: Size { width: auto(), height: if least[i] > 0.0 { length(least[i]) } else { auto() } },
            ..Default::default()
        };
        nodes.push(tree.new_leaf_with_context(style, i).map_err(lib)?);
    }
    let row = |row: &u16| -> GridTemplateComponent<String> {
        let picture = |b: &Place| b.is_picture() && (b.rows.0..=b.rows.1).contains(row);
        // The picture takes what the words leave.
        if layout.boxes.iter().any(picture) { fr(1.0) } else { auto() }
    };
    let equal = minmax(MinTrackSizingFunction::length(0.0), MaxTrackSizingFunction::fr(1.0));
    let root_style = Style {
        display: Display::Grid,
        size: Size { width: length(width), height: length(height) },
        gap: Size { width: length(layout.column_gap_mm), height: length(layout.row_gap_mm) },
        align_content: AlignContent::START,
        grid_template_columns: vec![equal; usize::from(layout.columns)].into_iter().collect(),
        grid_template_rows: tracks.0.iter().map(row).collect(),
        ..Default::default()
    };
    let root = tree.new_with_children(root_style, &nodes).map_err(lib)?;

    let mut fault = None;
    let mut set = |i: usize, box_mm: f32| {
        let b = &layout.boxes[i];
        let key = (i, box_mm.to_bits(), sizes[i].to_bits());
        if let Some(setting) = kept.get(&key) {
            return setting.clone();
        }
        match setter.set_with(&words[i], box_mm - 2.0 * b.padding_mm, sizes[i], b.signs) {
            Ok(setting) => {
                kept.insert(key, setting.clone());
                setting
            }
            Err(e) => {
                fault.get_or_insert((i, e));
                Setting::default()
            }
        }
    };
    tree.compute_layout_with_measure(root, Size::MAX_CONTENT, |input, _, context, style| {
        taffy::compute_leaf_layout(
            input,
            style,
            |_, _| 0.0,
            |known, available| {
                let wide = known.width.or(available.width.into_option());
                match (context, wide) {
                    (Some(&mut i), Some(wide)) if !words[i].is_empty() => {
                        let padding = layout.boxes[i].padding_height_mm();
                        Size { width: wide, height: set(i, wide).height_mm + padding }
                    }
                    _ => Size::ZERO,
                }
            },
        )
    })
    .map_err(lib)?;

    let mut placed = vec![];
    for (i, node) in nodes.iter().enumerate() {
        let at = tree.layout(*node).map_err(lib)?;
        placed.push(Placed {
            x: at.location.x,
            y: at.location.y,
            width: at.size.width,
            height: at.size.height,
            words: if empty[i] { Setting::default() } else { set(i, at.size.width) },
            is_left_out: empty[i] || !tracks.has(layout.boxes[i].rows),
        });
    }
    match fault {
        None => Ok(placed),
        Some((_, SetError::Font(e))) => Err(e.into()),
        Some((i, SetError::TooWide(words))) => {
            Err(does_not_fit(layout, &layout.boxes[i], format!("`{words}` is wider than the box")))
        }
    }
}

/// A box for words that has none.
fn is_empty(b: &Place, words: &[Block]) -> bool {
    !b.holds.is_empty() && !b.is_picture() && words.is_empty()
}

/// The rows in which anything stands, as the layout numbers them: what is left out leaves no gap.
struct Tracks(Vec<u16>);

impl Tracks {
    fn of(layout: &Layout, empty: &[bool]) -> Self {
        let filled = |row: &u16| {
            let here = layout.boxes.iter().zip(empty).filter(|(b, _)| (b.rows.0..=b.rows.1).contains(row));
            here.filter(|(b, _)| !b.holds.is_empty()).any(|(_, empty)| !empty)
        };
        let last = layout.boxes.iter().map(|b| b.rows.1).max().unwrap_or(1);
        Self((1..=last).filter(filled).collect())
    }
    fn has(&self, (first, last): (u16, u16)) -> bool {
        self.0.iter().any(|row| (first..=last).contains(row))
    }
    /// The same rows, counted without those that are left out.
    fn within(&self, (first, last): (u16, u16)) -> (u16, u16) {
        let before = self.0.iter().filter(|row| **row < first).count() as u16;
        let upto = self.0.iter().filter(|row| **row <= last).count() as u16;
        (before + 1, upto.max(before + 1))
    }
}

/// Grid lines around the first to the last track, counted from 1.
fn lines((first, last): (u16, u16)) -> taffy::Line<GridPlacement> {
    taffy::Line { start: line(first as i16), end: line(last as i16 + 1) }
}
