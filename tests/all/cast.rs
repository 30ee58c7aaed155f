//! The cast: what knots and filled blocks give is what a plain ray through every cell gives.

use super::shared::baby;
use handspan::body::cast::{Cast, cast};
use handspan::body::eight::{self, Near, Points};
use handspan::body::pack::Pack;
use handspan::body::part::Part;
use handspan::body::pose::{self, CELL};
use handspan::body::surface::{self, Form};
use handspan::exam::conclude;
use handspan::units::Vec3;

fn forms(position: &str) -> Vec<Form> {
    let exam = baby(&format!("position = \"{position}\""));
    let pose = pose::from_exam(&exam, &[conclude(&exam, 0)]);
    pose.posed().flat_map(|(_, baby)| baby.shape.forms().iter().copied()).collect()
}

/// Depth and part where a ray down the middle of a cell meets the surface: short steps, then halving.
fn plain(forms: &[Form], x: f32, y: f32) -> Option<(f32, Part)> {
    let at = |z: f32| surface::distance(forms, Vec3::new(x, y, z));
    let (mut z, mut above) = (30.0f32, 30.0f32);
    while at(z).0 > 0.0005 {
        above = z;
        z -= (at(z).0 * 0.8).max(0.0005);
        if z < -30.0 {
            return None;
        }
    }
    for _ in 0..12 {
        let middle = 0.5 * (z + above);
        if at(middle).0 > 0.0 { above = middle } else { z = middle }
    }
    Some((z, at(z).1))
}

/// Every fifth cell of every seventh row.
fn sample(cast: &Cast) -> impl Iterator<Item = (usize, f32, f32)> + '_ {
    (0..cast.height).step_by(7).flat_map(move |j| {
        (j % 5..cast.width).step_by(5).map(move |i| {
            let (x, y) = cast.centre(i, j);
            (j * cast.width + i, x, y)
        })
    })
}

#[test]
fn knots_and_plain_rays_meet_the_same() {
    for position in ["LOA", "OP", "ROT", "LSP", "RMA", "LADA"] {
        let forms = forms(position);
        let cast = cast(&forms, CELL);
        let (mut met, mut unlike, mut deeper, mut far_off, mut other) = (0, 0, 0, 0, 0);
        for (cell, x, y) in sample(&cast) {
            let plain = plain(&forms, x, y);
            match (cast.hit(cell), plain) {
                (false, None) => {}
                (true, Some((depth, part))) => {
                    met += 1;
                    let off = (cast.depth[cell] - depth).abs();
                    // On skin seen nearly edge on, what is near to the surface is far from it in depth.
                    deeper += usize::from(off > 0.01 && off * cast.normal[cell].z > 0.005);
                    far_off += usize::from(off > 0.05 && off * cast.normal[cell].z > 0.05);
                    other += usize::from(cast.part[cell] != part);
                }
                _ => unlike += 1,
            }
        }
        assert!(met > 1000, "{position}: {met} cells");
        // Only at edges: two cells in a thousand.
        let few = met / 500;
        assert!(unlike <= few, "{position}: of {met} cells {unlike} are met by one alone");
        assert!(far_off <= few, "{position}: of {met} cells {far_off} are far off");
        // The short lists of forms leave out what could still move broad blends by a little.
        assert!(deeper <= met / 50, "{position}: of {met} cells {deeper} differ in depth");
        assert!(other <= few, "{position}: of {met} cells {other} differ in part");
    }
}

/// Eight at once, in whatever registers this processor has and with forms passed over, are the very bits of one by one.
#[test]
fn eight_points_at_once_give_the_bits_of_one() {
    for position in ["LOA", "RSP", "RMA", "LADP"] {
        let forms = forms(position);
        let pack = Pack::of(&forms);
        let (mut near, mut left_out) = (Near::default(), 0);
        // From far outside to deep inside, all round the body.
        let points: Vec<Vec3> = (0..4000)
            .map(|i| {
                let (u, v, w) = (i % 16, i / 16 % 25, i / 400);
                Vec3::new(u as f32 * 1.9 - 14.3, v as f32 * 1.6 - 7.1, w as f32 * 2.3 - 10.7)
            })
            .collect();
        for points in points.chunks(8) {
            let at = Points::of(points);
            let (distances, parts) = eight::distance_and_near(&pack, &at, &mut near, 0.12);
            left_out += forms.len() - near.pack.forms.len();
            assert_eq!((distances, parts), eight::distance_and_part(&pack, &at));
            assert_eq!(distances, eight::distance(&pack, &at));
            assert_eq!(distances, eight::distance(&near.pack, &at));
            for (i, p) in points.iter().enumerate() {
                let (distance, part) = surface::distance(&forms, *p);
                assert_eq!(distances[i].to_bits(), distance.to_bits(), "{position}, at {p:?}");
                assert_eq!(Part::from_code(parts[i]), part, "{position}, at {p:?}");
                let by = Vec3::new(0.02, -0.02, 0.02);
                let moved = surface::distance(&forms, *p + by).0;
                assert_eq!(eight::distance(&near.pack, &at.moved(by))[i], moved, "{position}, near {p:?}");
            }
        }
        assert!(left_out > 200 * forms.len(), "{position}: only {left_out} forms were left out");
    }
}

#[test]
fn the_midline_falls_between_two_cells_and_the_baby_keeps_off_the_border() {
    for position in ["OA", "LOT", "RADP"] {
        let cast = cast(&forms(position), CELL);
        let from_midline = -cast.left / cast.cell;
        assert!((from_midline - libm::roundf(from_midline)).abs() < 1e-3, "{position}: {from_midline}");
        for (_, _, cell) in cast.hits() {
            let (i, j) = (cell % cast.width, cell / cast.width);
            assert!(i >= 3 && j >= 3 && i + 3 < cast.width && j + 3 < cast.height, "{position}: {i} {j}");
        }
    }
}
