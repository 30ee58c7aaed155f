//! A posed body as a solid. In: a baby of the cut. Out: its corners and triangles in her space, cm: x to her left, y up, z to her
//! front. Triangles wind so that each is seen anticlockwise from outside, and together they are closed.
//!
//! The cut lays the baby between her spine and the wall of her abdomen, where it has room; the picture from the front lays
//! heights along the axis of the pelvis and is no space.

use super::baby::PosedBaby;
use super::part::{Part, Region};
use crate::units::Vec3;

/// A closed surface.
#[derive(Clone, Debug, PartialEq)]
pub struct Solid {
    /// Its corners.
    pub corners: Vec<Vec3>,
    /// Its triangles, with the part of the baby each belongs to.
    pub triangles: Vec<([u32; 3], Part)>,
}

impl Solid {
    /// Of a baby as the cut shows it.
    pub fn of_cut(baby: &PosedBaby) -> Self {
        let (points, quads, mirrored) = baby.shape.surface();
        // Back from the space in which her left faces the viewer.
        let corners = points.iter().map(|[x, y, z]| Vec3::new(*z, *y, -x)).collect();
        let mut triangles = vec![];
        for (quad, part) in quads {
            let [a, b, c, d] = quad.map(u32::from);
            for [p, q, r] in [[a, b, c], [a, c, d]] {
                triangles.push((if mirrored { [p, r, q] } else { [p, q, r] }, part));
            }
        }
        Solid { corners, triangles }
    }

    /// The way out at each corner, length 1: the sum of its triangles' own, by their size.
    pub fn outward(&self) -> Vec<Vec3> {
        let mut out = vec![Vec3::default(); self.corners.len()];
        for (triangle, _) in &self.triangles {
            let [a, b, c] = triangle.map(|v| self.corners[v as usize]);
            let way = (b - a).cross(c - a);
            for v in triangle {
                out[*v as usize] = out[*v as usize] + way;
            }
        }
        let up = Vec3::new(0.0, 1.0, 0.0);
        out.iter().map(|way| if way.length() > 1e-9 { way.normalized() } else { up }).collect()
    }

    /// The triangles of a region.
    pub fn of_region(&self, region: Region) -> impl Iterator<Item = [u32; 3]> + '_ {
        self.triangles.iter().filter(move |(_, part)| part.region() == region).map(|(triangle, _)| *triangle)
    }
}
