//! The skin of the abdomen laid flat: lengths on paper against lengths on the model, and darts that gape.

use handspan::body::mother::MotherShape;
use handspan::body::unroll::{Flat, Unrolled};
use handspan::units::Vec3;

/// Bodies of several weeks, tapes, navels and girths.
fn bodies() -> Vec<MotherShape> {
    vec![
        MotherShape::new(28.0, Some(27.0), None, None),
        MotherShape::new(34.0, None, Some(21.0), None),
        MotherShape::new(37.0, Some(35.0), None, None),
        MotherShape::new(38.0, Some(36.0), Some(24.0), Some(104.0)),
        MotherShape::new(41.0, Some(41.0), None, Some(92.0)),
    ]
}

fn apart(a: Flat, b: Flat) -> f64 {
    libm::hypot(a.0 - b.0, a.1 - b.1)
}

fn skin(mother: &MotherShape, across: f64, along: f64) -> Vec3 {
    mother.on_skin(across, along).0
}

/// Lengths of a line given by places on the skin: on the paper, and on the model.
fn lengths(mother: &MotherShape, sheet: &Unrolled, line: &[(f64, f64)]) -> (f64, f64) {
    let on_paper = line.windows(2).map(|w| apart(sheet.place(w[0].0, w[0].1), sheet.place(w[1].0, w[1].1)));
    let on_skin = line.windows(2).map(|w| {
        let (a, b) = (skin(mother, w[0].0, w[0].1), skin(mother, w[1].0, w[1].1));
        f64::from((b - a).length())
    });
    (on_paper.sum(), on_skin.sum())
}

/// From the bottom to the top of each band.
fn bands(sheet: &Unrolled, top: f64) -> Vec<(f64, f64)> {
    let edges: Vec<f64> = std::iter::once(0.0).chain(sheet.seams()).chain([top]).collect();
    edges.windows(2).map(|w| (w[0], w[1])).collect()
}

const TOP: f64 = 36.0;

#[test]
fn lengths_along_the_sheet_are_lengths_on_the_skin() {
    let mut measured = 0;
    for mother in bodies() {
        let top = TOP.min(mother.curve.length() - 0.5);
        let sheet = Unrolled::new(&mother, top, 14.0);
        // The midline is straight and true.
        for i in 0..=72 {
            let along = top * f64::from(i) / 72.0;
            assert!(apart(sheet.place(0.0, along), (0.0, along)) < 1e-9);
        }
        for (low, high) in bands(&sheet, top) {
            // Across: the row in the middle of the band, as far as 13 cm of skin, on both sides.
            let middle = 0.5 * (low + high);
            for sign in [1.0, -1.0] {
                let row: Vec<(f64, f64)> = (0..=260).map(|i| (sign * f64::from(i) * 0.05, middle)).collect();
                let (paper, model) = lengths(&mother, &sheet, &row);
                assert!((paper / model - 1.0).abs() < 0.01 && (model - 13.0).abs() < 0.1, "{paper} {model}");
                measured += 1;
            }
            // Upwards within the band, at several distances from the midline.
            for across in [0.0, 3.0, -6.0, 9.0, -12.0] {
                let inside = |i: u32| low + 1e-6 + (high - low - 2e-6) * f64::from(i) / 100.0;
                let column: Vec<(f64, f64)> = (0..=100).map(|i| (across, inside(i))).collect();
                let (paper, model) = lengths(&mother, &sheet, &column);
                assert!((paper - model).abs() < 0.1, "{across} from {low}: {paper} on paper, {model}");
                measured += 1;
            }
            // Aslant, and along the edges: what a band cannot keep is under 1 mm in 10 cm.
            for (a, b) in [
                ((1.0, 0.1), (8.0, 0.9)),
                ((-2.0, 0.9), (-11.0, 0.2)),
                ((0.0, 1.0), (12.0, 1.0)),
                ((0.0, 1e-6), (12.0, 1e-6)),
                ((4.0, 0.0001), (9.0, 0.9999)),
            ] {
                let at = |t: f64| {
                    let share = a.1 + (b.1 - a.1) * t;
                    (a.0 + (b.0 - a.0) * t, low + (high - low) * share)
                };
                let line: Vec<(f64, f64)> = (0..=200).map(|i| at(f64::from(i) / 200.0)).collect();
                let (paper, model) = lengths(&mother, &sheet, &line);
                assert!((paper / model - 1.0).abs() < 0.01, "{a:?} {b:?} of {low}: {paper} against {model}");
                measured += 1;
            }
        }
    }
    assert!(measured > 200);
}

#[test]
fn darts_gape_away_from_the_midline_and_never_overlap() {
    for mother in bodies() {
        let sheet = Unrolled::new(&mother, TOP.min(mother.curve.length() - 0.5), 14.0);
        let darts = sheet.darts();
        assert_eq!(darts.len(), sheet.seams().count());
        assert!(darts.len() >= 3);
        let mut widest: f64 = 0.0;
        for (dart, seam) in darts.iter().zip(sheet.seams()) {
            let n = dart.below.len().min(dart.above.len());
            let gap = |i: usize| dart.above[i].1 - dart.below[i].1;
            assert!(gap(0).abs() < 1e-9, "it begins at the midline");
            for i in 1..n {
                assert!(gap(i) > -0.02, "the paper of {seam} would overlap itself at {i}: {}", gap(i));
            }
            widest = widest.max(gap(n - 1));
            // Both edges are one line of the skin: closed, the drawing meets.
            for i in [4, 10, n - 1] {
                let across = 0.5 * i as f64;
                assert!(apart(sheet.place(across, seam), dart.below[i]) < 1e-6);
                assert!(apart(sheet.place(across, seam + 1e-9), dart.above[i]) < 1e-6);
            }
        }
        assert!(widest > 0.5, "a flat sheet would need no dart: {widest}");
    }
}

#[test]
fn her_right_is_the_mirror_image_of_her_left() {
    for mother in bodies() {
        let sheet = Unrolled::new(&mother, 30.0, 14.0);
        for across in [0.3, 2.0, 7.7, 13.0] {
            for along in [0.0, 3.3, 11.0, 19.9, 29.0] {
                let (left, right) = (sheet.place(across, along), sheet.place(-across, along));
                assert_eq!((left.0, left.1), (-right.0, right.1));
                assert!(left.0 > 0.0, "her left has u > 0");
            }
        }
    }
}
