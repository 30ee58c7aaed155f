//! The hands of whoever palpates: whose hands they are, where they lie on her, and what they never hide.

use super::shared::{path, run};
use handspan::body::cast::Cast;
use handspan::body::hands::{Palpation, casts};
use handspan::body::mother::MotherShape;
use handspan::body::part::Part;
use handspan::units::BabySide;

fn shape(tape: f64, girth: Option<f64>) -> MotherShape {
    MotherShape::new(37.0, Some(tape), None, girth)
}

/// Middle of the cells of a hand in which `is` holds.
fn middle(cast: &Cast, is: impl Fn(Part) -> bool) -> (f32, f32) {
    let cells: Vec<_> = cast.hits().filter(|(_, _, at)| is(cast.part[*at])).collect();
    assert!(cells.len() > 20, "it is seen");
    let n = cells.len() as f32;
    (cells.iter().map(|c| c.0).sum::<f32>() / n, cells.iter().map(|c| c.1).sum::<f32>() / n)
}

#[test]
fn two_hands_mirror_each_other_and_a_single_one_is_the_right() {
    let her = shape(35.0, None);
    for palpation in Palpation::ALL {
        let hands = casts(&her, palpation);
        if let [a, b] = &hands[..] {
            assert_eq!((a.width, a.height), (b.width, b.height));
            for j in 0..a.height {
                for i in 0..a.width {
                    let (at, other) = (j * a.width + i, (j + 1) * b.width - 1 - i);
                    assert_eq!(a.depth[at], b.depth[other], "{palpation:?}");
                }
            }
        } else {
            assert_eq!((palpation, hands.len()), (Palpation::PelvicOne, 1));
            let is_thumb = |part| part == Part::finger(BabySide::Right, 4);
            let is_finger = |part: Part| part.is_digit() && !is_thumb(part);
            let (thumb, fingers) = (middle(&hands[0], is_thumb), middle(&hands[0], is_finger));
            // Seen from its back, the thumb of a right hand lies at the viewer's left: towards her right.
            assert!(thumb.0 < fingers.0 - 4.0, "{thumb:?}, {fingers:?}");
        }
    }
}

#[test]
fn hands_follow_what_was_measured() {
    let fingers = |her: &MotherShape, palpation| {
        middle(&casts(her, palpation)[0], |part| part.is_digit() && part != Part::finger(BabySide::Left, 4))
    };
    let (low, high) = (shape(28.0, None), shape(37.0, None));
    let risen = (high.fundus_y - low.fundus_y) as f32;
    let moved = fingers(&high, Palpation::Fundal).1 - fingers(&low, Palpation::Fundal).1;
    assert!(risen > 3.0 && (moved - risen).abs() < 0.3, "the top rises by {risen}, the hands by {moved}");
    let near = (fingers(&high, Palpation::Fundal).1 - high.fundus_y as f32).abs();
    assert!(near < 3.5, "fingers lie {near} cm from the top of the womb");
    let (slim, wide) = (shape(35.0, Some(90.0)), shape(35.0, Some(125.0)));
    let apart = |her| fingers(her, Palpation::Lateral).0.abs();
    assert!(apart(&wide) > apart(&slim) + 0.8, "{} and {}", apart(&slim), apart(&wide));
    // Fingers point to her head, in the deep palpation to her feet.
    for palpation in Palpation::ALL {
        let hand = &casts(&high, palpation)[0];
        let palm = middle(hand, |part| !part.is_digit()).1;
        let up = middle(hand, Part::is_digit).1 > palm;
        assert_eq!(up, palpation != Palpation::PelvicTwo, "{palpation:?}");
    }
}

#[test]
fn hands_never_hide_the_heart_and_a_stamp_has_none() {
    let exam = path("examples/head-down-left.toml");
    let exam = exam.to_str().expect("a name");
    for palpation in ["fundal", "lateral", "pelvic-one", "pelvic-two"] {
        let drawn = run(&["draw", exam, "--hands", palpation, "-o", "-", "--as", "svg"]);
        let svg = String::from_utf8_lossy(&drawn.stdout).into_owned();
        let at =
            |id: &str| svg.find(&format!("<g id=\"{id}\"")).unwrap_or_else(|| panic!("{palpation}: {id}"));
        assert!(at("baby") < at("hands") && at("hands") < at("heart-1"), "{palpation}");
    }
    let refused = run(&["draw", exam, "--hands", "fundal", "--style", "sketch", "-o", "-", "--as", "svg"]);
    assert!(!refused.status.success() && refused.stdout.is_empty());
}
