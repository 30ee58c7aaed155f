//! Her head and neck, bent to her belly, lids lowered. In: nothing. Out: a cast.
//!
//! `her_head/head.bin` is baked by `her_head/bake` from the open human form that the baby comes from (see NOTICE), in one
//! pose, as it is seen from the front. The bytes: `HEAD`, version, how many vertices and quads; x, y and z of the vertices in
//! mother space, 200 steps a centimetre; the corners of the quads. Where it lies in the picture is known here for good: hair,
//! lids and lips are drawn on it by hand (`figure/her_head.rs`).

use crate::body::baked::Reader;
use crate::body::cast::Cast;
use crate::body::form::raster::{Layer, raster};
use crate::body::her_arms::CELL;
use crate::body::part::Part;

const BYTES: &[u8] = include_bytes!("her_head/head.bin");
const VERSION: u8 = 1;

/// Her head, as seen from the front.
pub fn cast() -> Cast {
    let mut baked = Reader::of(BYTES, *b"HEAD", VERSION);
    let [n, q] = baked.counts();
    let (points, quads) = (baked.places(n), baked.quads(q));
    raster(&[Layer { points: &points, quads: &quads, part: &vec![Part::HEAD; q], mirrored: false }], CELL)
}
