//! A page in words, for a writer that sets them itself. In: a layout and its content. Out: its sides as panels in the order in
//! which they are read, each with its blocks, its place in the grid and its type; and the grid.

use super::compose::blocks_of;
use super::content::{Block, Content};
use super::layout::{Edge, Layout};
use super::{SheetError, Sign};
use crate::figure::scene::Item;
use crate::units::PagePoint;
use crate::words::Words;

/// The page that panels stand on, in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grid {
    /// Width of the paper.
    pub width_mm: f32,
    /// Its height.
    pub height_mm: f32,
    /// What stays free on all four sides.
    pub margin_mm: f32,
    /// Columns between the margins.
    pub columns: u16,
    /// Between two columns.
    pub column_gap_mm: f32,
    /// Between two rows.
    pub row_gap_mm: f32,
}

/// A box of a layout with its words.
#[derive(Clone, Debug, PartialEq)]
pub struct Panel {
    /// Its name in the layout.
    pub name: String,
    /// How it is set off from the page.
    pub edge: Edge,
    /// First and last row, from 1.
    pub rows: (u16, u16),
    /// First and last column, from 1.
    pub columns: (u16, u16),
    /// The smallest type that its words may be set in on paper, points.
    pub type_pt: f32,
    /// Between its edge and its words, in mm.
    pub padding_mm: f32,
    /// Its words; none in a picture, and in a frame that other panels stand in.
    pub blocks: Vec<Block>,
    /// Whether a picture stands in it.
    pub is_picture: bool,
    /// Whether small pictures stand beside its words.
    pub with_signs: bool,
}

impl Panel {
    /// Whether `other` stands wholly in it.
    pub fn holds(&self, other: &Panel) -> bool {
        let within = |outer: (u16, u16), inner: (u16, u16)| outer.0 <= inner.0 && inner.1 <= outer.1;
        within(self.rows, other.rows) && within(self.columns, other.columns)
    }
}

impl Layout {
    /// The grid; `None` where the paper follows the picture.
    pub fn grid(&self) -> Option<Grid> {
        let (width_mm, height_mm) = self.paper.size().ok()?;
        Some(Grid {
            width_mm,
            height_mm,
            margin_mm: self.margin_mm,
            columns: self.columns,
            column_gap_mm: self.column_gap_mm,
            row_gap_mm: self.row_gap_mm,
        })
    }

    /// The panels of each side; those with nothing in them and no edge are left out.
    pub fn panels(&self, content: &Content, words: &Words) -> Result<Vec<Vec<Panel>>, SheetError> {
        let mut sides = vec![];
        for side in self.pages() {
            let mut panels = vec![];
            for place in &side.boxes {
                let blocks = blocks_of(self, place, content, words)?;
                let is_picture = place.is_picture();
                let is_frame = place.holds.is_empty() && place.edge != Edge::None;
                if blocks.is_empty() && !is_picture && !is_frame {
                    continue;
                }
                panels.push(Panel {
                    name: place.name.clone(),
                    edge: place.edge,
                    rows: place.rows,
                    columns: place.columns,
                    type_pt: place.may_shrink_pt,
                    padding_mm: place.padding_mm,
                    blocks,
                    is_picture,
                    with_signs: place.signs,
                });
            }
            if !panels.is_empty() {
                sides.push(panels);
            }
        }
        Ok(sides)
    }
}

impl Sign {
    /// Its marks in a square of this side, in mm.
    pub fn alone(self, side_mm: f32) -> Vec<Item<PagePoint>> {
        self.marks(PagePoint::new(0.0, 0.0), side_mm)
    }
}
