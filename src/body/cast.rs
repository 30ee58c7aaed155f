//! The surface seen from the front, as a picture of depths. In: what was met in each cell (`form/raster.rs`). Out: a grid of
//! cells, each with the depth (z, cm), the part and the normal of what is seen there.

use super::part::Part;
use crate::units::Vec3;

/// The depth of a cell where nothing was met.
const MISS: f32 = -1e6;

/// A grid of cells in the picture plane; row 0 is the top.
pub struct Cast {
    /// Cells across.
    pub width: usize,
    /// Cells down.
    pub height: usize,
    /// x of the left edge, cm.
    pub left: f32,
    /// y of the top edge, cm.
    pub top: f32,
    /// Side of a cell, cm.
    pub cell: f32,
    /// Depth of each cell, or a large negative number where nothing was met.
    pub depth: Vec<f32>,
    /// Part met in each cell.
    pub part: Vec<Part>,
    /// Unit normal met in each cell.
    pub normal: Vec<Vec3>,
}

/// Whether this is the depth of something that was met.
#[inline]
pub fn is_met(depth: f32) -> bool {
    depth > MISS * 0.5
}

impl Cast {
    /// A grid whose upper left corner lies at `corner`, where nothing was met yet.
    pub fn empty(width: usize, height: usize, corner: (f32, f32), cell: f32) -> Self {
        let n = width * height;
        Cast {
            width,
            height,
            left: corner.0,
            top: corner.1,
            cell,
            depth: vec![MISS; n],
            part: vec![Part::default(); n],
            normal: vec![Vec3::default(); n],
        }
    }
    /// Whether a ray met the surface in the cell with this index.
    #[inline]
    pub fn hit(&self, index: usize) -> bool {
        is_met(self.depth[index])
    }
    /// Centre of a cell.
    #[inline]
    pub fn centre(&self, i: usize, j: usize) -> (f32, f32) {
        (self.left + (i as f32 + 0.5) * self.cell, self.top - (j as f32 + 0.5) * self.cell)
    }
    /// Index of the cell that holds a point of the picture plane.
    pub fn index_at(&self, x: f32, y: f32) -> Option<usize> {
        let (i, j) = ((x - self.left) / self.cell, (self.top - y) / self.cell);
        (i >= 0.0 && j >= 0.0 && (i as usize) < self.width && (j as usize) < self.height)
            .then(|| j as usize * self.width + i as usize)
    }
    /// True when the surface is met at this point.
    pub fn covers(&self, x: f32, y: f32) -> bool {
        self.index_at(x, y).is_some_and(|i| self.hit(i))
    }
    /// True when a point of the surface can be seen: nothing stands more than `slack` cm before it.
    pub fn sees(&self, p: Vec3, slack: f32) -> bool {
        self.index_at(p.x, p.y).is_some_and(|i| self.hit(i) && self.depth[i] - p.z < slack)
    }
    /// Every cell that was met: centre and index.
    pub fn hits(&self) -> impl Iterator<Item = (f32, f32, usize)> + '_ {
        (0..self.height).flat_map(move |j| self.hits_of_row(j))
    }
    /// Those of one row.
    pub fn hits_of_row(&self, j: usize) -> impl Iterator<Item = (f32, f32, usize)> + '_ {
        let row = j * self.width;
        (0..self.width).filter(move |i| self.hit(row + i)).map(move |i| {
            let (x, y) = self.centre(i, j);
            (x, y, row + i)
        })
    }
}
