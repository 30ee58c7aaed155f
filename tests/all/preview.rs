//! The quick look at a baby: what the picture shows, from the side that was asked for, mirrored for a mirrored exam.

use crate::shared::read;
use handspan::body::cast::Cast;
use handspan::body::form::landmark::Landmark;
use handspan::body::pose::{self, Pose};
use handspan::figure::preview::{Pixels, Preview};
use handspan::figure::{FRAME, Palette};
use handspan::reckon;
use handspan::units::BabySide;

fn posed(position: &str) -> Pose {
    let exam = read(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{position}\"\n"));
    pose::from_exam(&exam, &reckon::conclusions(&exam))
}

fn seen(position: &str, angle: f32) -> Pixels {
    let preview = Preview::of(&posed(position)).expect("a baby");
    preview.seen(angle, 204, Palette::Neutral)
}

fn is_filled(pixels: &Pixels, i: usize, j: usize) -> bool {
    pixels.rgba[(j * pixels.width + i) * 4 + 3] == 255
}

/// How many pixels differ, and how many are filled.
fn apart(pixels: &Pixels, filled: impl Fn(usize, usize) -> bool) -> (usize, usize) {
    let all = || (0..pixels.height).flat_map(|j| (0..pixels.width).map(move |i| (i, j)));
    let differ = all().filter(|(i, j)| is_filled(pixels, *i, *j) != filled(*i, *j)).count();
    (differ, all().filter(|(i, j)| is_filled(pixels, *i, *j)).count())
}

#[test]
fn from_her_front_it_covers_what_the_picture_covers() {
    let pixels = seen("LOA", 0.0);
    let cast: Cast = posed("LOA").cast().expect("a cast");
    let cell = (FRAME.right - FRAME.left) / pixels.width as f32;
    let (differ, filled) = apart(&pixels, |i, j| {
        cast.covers(FRAME.left + (i as f32 + 0.5) * cell, FRAME.top - (j as f32 + 0.5) * cell)
    });
    assert!(filled > 3000, "{filled} pixels");
    // Only pixels on the outline, which a finer cast cuts elsewhere.
    assert!(differ * 40 < filled, "{differ} of {filled} pixels differ");
}

#[test]
fn a_mirrored_baby_from_the_mirrored_side_is_mirrored() {
    for (position, mirrored) in [("LOA", "ROA"), ("LSP", "RSP")] {
        for angle in [0.0, 35.0, 90.0, -120.0] {
            let (a, b) = (seen(position, angle), seen(mirrored, -angle));
            let (differ, filled) = apart(&a, |i, j| is_filled(&b, b.width - 1 - i, j));
            assert!(filled > 2000 && differ == 0, "{position} from {angle}: {differ} of {filled}");
        }
    }
}

#[test]
fn a_viewer_at_her_left_meets_what_lies_to_her_left() {
    let pose = posed("LOT");
    let shape = &pose.posed().next().expect("a baby").1.shape;
    let at = |landmark, angle| shape.turned(angle, (0.0, 0.0)).landmark(landmark, BabySide::Left);
    // Its back lies to her left: nearest to a viewer there, farthest from one at her right.
    let nearer = |angle| at(Landmark::Sacrum, angle).z - at(Landmark::Chin, angle).z;
    assert!(nearer(90.0) > 3.0 && nearer(-90.0) < -3.0, "{} {}", nearer(90.0), nearer(-90.0));
    // What lies in front of her is then at that viewer's left.
    let front = at(Landmark::Acromion, 0.0);
    let turned = at(Landmark::Acromion, 90.0);
    assert!((turned.x + front.z).abs() < 1e-4 && (turned.y - front.y).abs() < 1e-4);
}
