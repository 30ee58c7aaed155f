//! A quick look at the babies from any side, as pixels. In: a pose, how far the viewer goes round her, how many pixels.
//! Out: light and shade on nothing, without a line traced.
//!
//! For what moves: a baby that is turned under a finger has no time to be traced. It is skinned once, when the pose is
//! made; from each side it is only cast anew.

use super::palette::BabyColours;
use super::scene::Colour;
use super::tone;
use super::{FRAME, Palette};
use crate::body::pose::Pose;
use crate::body::shape::{self, Shape};
use crate::units::Vec3;

/// Pixels, row by row from the top: red, green, blue and alpha, which is 0 where there is no baby and 255 elsewhere.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pixels {
    /// Pixels across.
    pub width: usize,
    /// Pixels down.
    pub height: usize,
    /// Four bytes a pixel.
    pub rgba: Vec<u8>,
}

/// Babies that can be looked at from any side.
#[derive(Clone, Debug)]
pub struct Preview {
    bodies: Vec<Shape>,
    /// The middle of the bodies: x and z, cm.
    middle: (f32, f32),
}

impl Preview {
    /// The posed babies; `None` when there is none.
    pub fn of(pose: &Pose) -> Option<Preview> {
        let bodies: Vec<Shape> = pose.posed().map(|(_, baby)| baby.shape.clone()).collect();
        let middle = |along: Vec3| {
            let far = |way: Vec3| bodies.iter().map(|body| body.reach(way)).fold(f32::MIN, f32::max);
            0.5 * (far(along) - far(-along))
        };
        let middle = (middle(Vec3::new(1.0, 0.0, 0.0)), middle(Vec3::new(0.0, 0.0, 1.0)));
        (!bodies.is_empty()).then_some(Preview { bodies, middle })
    }

    /// What is seen by a viewer who went `angle` degrees round her, from her front towards her left: 90 looks at her left
    /// side, -90 at her right. The picture is `width` (16 to 4096) pixels wide and holds what the figure's frame holds.
    pub fn seen(&self, angle: f32, width: usize, palette: Palette) -> Pixels {
        let width = width.clamp(16, 4096);
        let cell = (FRAME.right - FRAME.left) / width as f32;
        let height = ((FRAME.top - FRAME.bottom) / cell + 0.5) as usize;
        let mut rgba = vec![0; width * height * 4];
        let bodies: Vec<Shape> = self.bodies.iter().map(|body| body.turned(angle, self.middle)).collect();
        if let Some(cast) = shape::cast(bodies.iter(), cell, false) {
            let light = tone::tones(&cast, &[]).light;
            let tones = BabyColours::of(palette).tones();
            for (x, y, at) in cast.hits() {
                let (i, j) = ((x - FRAME.left) / cell, (FRAME.top - y) / cell);
                if i < 0.0 || j < 0.0 || i as usize >= width || j as usize >= height {
                    continue;
                }
                let first = (j as usize * width + i as usize) * 4;
                let Colour { r, g, b } = darkest(&tones, light[at]);
                rgba[first..first + 4].copy_from_slice(&[r, g, b, 255]);
            }
        }
        Pixels { width, height, rgba }
    }
}

/// The last of the tones that is laid in this light.
fn darkest(tones: &[(f32, Colour)], light: f32) -> Colour {
    let laid = tones.iter().take_while(|(below, _)| light < *below).last();
    laid.or(tones.first()).map_or(Colour::hex(0), |(_, colour)| *colour)
}
