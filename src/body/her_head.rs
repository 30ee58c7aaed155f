//! Her head and neck, bent to her belly, lids lowered. In: nothing. Out: a cast.
//!
//! `her_head/head.bin` is baked by `her_head/bake` from the open human form that the baby comes from (see NOTICE), in one
//! pose, as it is seen from the front. The bytes: `HEAD`, version, how many vertices and quads; x, y and z of the vertices in
//! mother space, 200 steps a centimetre; the corners of the quads. Where it lies in the picture is known here for good: hair,
//! lids and lips are drawn on it by hand (`figure/her_head.rs`).

use crate::body::cast::Cast;
use crate::body::form::raster::{Layer, raster};
use crate::body::her_arms::CELL;
use crate::body::part::Part;

const BYTES: &[u8] = include_bytes!("her_head/head.bin");
const VERSION: u8 = 1;
const UNIT: f32 = 1.0 / 200.0;

/// Her head, as seen from the front.
pub fn cast() -> Cast {
    let (head, rest) = BYTES.split_at(9);
    assert_eq!((&head[..4], head[4]), (&b"HEAD"[..], VERSION), "head.bin is of this version");
    let u16_at = |bytes: &[u8], k: usize| u16::from_le_bytes([bytes[2 * k], bytes[2 * k + 1]]);
    let (n, q) = (usize::from(u16_at(&head[5..], 0)), usize::from(u16_at(&head[5..], 1)));
    let (planes, corners) = rest.split_at(6 * n);
    let coordinate = |v: usize, k: usize| f32::from(u16_at(planes, k * n + v) as i16) * UNIT;
    let points: Vec<[f32; 3]> = (0..n).map(|v| [0, 1, 2].map(|k| coordinate(v, k))).collect();
    let quads: Vec<[u16; 4]> = (0..q).map(|f| [0, 1, 2, 3].map(|k| u16_at(corners, 4 * f + k))).collect();
    raster(&[Layer { points: &points, quads: &quads, part: &vec![Part::HEAD; q], mirrored: false }], CELL)
}
