//! The hands of whoever palpates: whose hands they are, where they lie on her, and what they never hide.

use super::shared::{path, run};
use handspan::body::cast::Cast;
use handspan::body::hands::{Hand, Palpation, laid};
use handspan::body::mother::MotherShape;
use handspan::body::part::Part;
use handspan::units::{BabySide, MotherPoint, Vec3};

/// Where a heart is heard.
const HEART: MotherPoint = MotherPoint(Vec3::new(6.0, 14.0, 9.0));

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
fn hands_at_both_sides_mirror_each_other_and_a_single_one_is_the_right() {
    let her = shape(35.0, None);
    for palpation in [Palpation::Lateral, Palpation::PelvicTwo] {
        let hands = laid(&her, palpation, None);
        let [a, b] = &hands[..] else { panic!("{palpation:?}: two hands") };
        let (a, b) = (&a.cast, &b.cast);
        assert_eq!((a.width, a.height), (b.width, b.height));
        for j in 0..a.height {
            for i in 0..a.width {
                let (at, other) = (j * a.width + i, (j + 1) * b.width - 1 - i);
                assert_eq!(a.depth[at], b.depth[other], "{palpation:?}");
            }
        }
    }
    for palpation in [Palpation::PelvicOne, Palpation::Doppler] {
        let hands = laid(&her, palpation, Some(HEART));
        assert_eq!(hands.len(), 1, "{palpation:?}");
        let is_thumb = |part| part == Part::finger(BabySide::Right, 4);
        let is_finger = |part: Part| part.is_digit() && !is_thumb(part);
        let (thumb, fingers) = (middle(&hands[0].cast, is_thumb), middle(&hands[0].cast, is_finger));
        // Seen from its back, the thumb of a right hand lies at the viewer's left: towards her right.
        assert!(thumb.0 < fingers.0 - 1.0, "{palpation:?}: {thumb:?}, {fingers:?}");
    }
}

#[test]
fn both_arms_end_at_one_pair_of_shoulders_at_her_right() {
    let her = shape(35.0, None);
    for palpation in Palpation::ALL {
        let hands = laid(&her, palpation, Some(HEART));
        assert!(
            stands(&hands, palpation == Palpation::PelvicTwo, -1.0),
            "{palpation:?}: somebody stands there"
        );
    }
    // The arms of the first and of the tape could not be those of somebody at her other side.
    for palpation in [Palpation::Fundal, Palpation::Tape] {
        assert!(!stands(&laid(&her, palpation, None), false, 1.0), "{palpation:?}: from her left");
    }
}

/// Whether somebody whose shoulders are 36 cm apart, whose upper arms are 24 to 32 cm long and who stands at this side of her
/// (1: her left) has these hands, facing her head or her feet, turned towards her by no more than 60 degrees.
fn stands(hands: &[Hand], to_feet: bool, side: f32) -> bool {
    let upper = 24.0..=32.0;
    let steps = |from: i16, to: i16, by: usize| (from..=to).step_by(by).map(f32::from);
    let reach = |hand: &Hand, shoulder: Vec3| upper.contains(&(hand.elbow - shoulder).length());
    steps(18, 44, 2).any(|x| {
        steps(-44, 60, 4).any(|y| {
            steps(24, 44, 5).any(|z| {
                steps(0, 60, 15).any(|turned| {
                    let (sin, cos) = libm::sincosf(turned.to_radians());
                    // Facing her head, her own left is the examiner's right.
                    let facing = (-side * sin, if to_feet { -cos } else { cos });
                    let left = Vec3::new(-facing.1, facing.0, 0.0) * 18.0;
                    let middle = Vec3::new(side * x, y, z);
                    hands
                        .iter()
                        .all(|hand| reach(hand, if hand.right { middle - left } else { middle + left }))
                })
            })
        })
    })
}

#[test]
fn no_joint_is_outside_the_range_of_a_hand() {
    let her = shape(35.0, None);
    for palpation in Palpation::ALL {
        for hand in laid(&her, palpation, Some(HEART)) {
            // Wrist and elbow are as far apart as in a woman of 159 cm; a wrist bends by 70 degrees at most.
            let (fore, palm) = ((hand.elbow - hand.wrist).length(), hand.knuckle - hand.wrist);
            assert!((20.5..21.6).contains(&fore), "{palpation:?}: {fore}");
            let straight = -palm.normalized().dot((hand.elbow - hand.wrist).normalized());
            let bent = libm::acosf(straight).to_degrees();
            assert!(bent < 70.0, "{palpation:?}: {bent}");
        }
    }
}

#[test]
fn tape_horn_and_probe_lie_where_they_belong() {
    let her = shape(35.0, None);
    let fingers = |hand: &Hand| middle(&hand.cast, |part| part.is_digit());
    // The tape: fingers of the left hand at the top of the womb, of the right one at the pubic bone, both about the midline.
    let tape = laid(&her, Palpation::Tape, None);
    let (top, low) = (fingers(&tape[0]), fingers(&tape[1]));
    assert!(!tape[0].right && tape[1].right);
    assert!((top.1 - her.fundus_y as f32).abs() < 3.0 && top.0.abs() < 5.0, "{top:?}");
    assert!(low.1.abs() < 4.0 && low.0.abs() < 5.0, "{low:?}");
    for x in [7.0, -7.0] {
        let heart = MotherPoint(Vec3::new(x, 14.0, 9.0));
        // One hand steadies the womb on the side away from the horn.
        let horn = laid(&her, Palpation::Horn, Some(heart));
        assert!(horn.len() == 1 && fingers(&horn[0]).0 * x < 0.0, "{x}");
        // The probe's hand comes as near to the heart on either side, and hides it on neither.
        let probe = laid(&her, Palpation::Doppler, Some(heart));
        let tip = fingers(&probe[0]);
        assert!(
            libm::hypotf(tip.0 - x, tip.1 - 14.0) < 8.0 && !probe[0].cast.covers(x, 14.0),
            "{x}: {tip:?}"
        );
    }
    assert!(laid(&her, Palpation::Horn, None).is_empty());
}

#[test]
fn hands_follow_what_was_measured() {
    let fingers = |her: &MotherShape, palpation| {
        middle(&laid(her, palpation, Some(HEART))[0].cast, |part| {
            part.is_digit() && part != Part::finger(BabySide::Left, 4)
        })
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
        let hand = &laid(&high, palpation, Some(HEART))[0].cast;
        let palm = middle(hand, |part| !part.is_digit()).1;
        let up = middle(hand, Part::is_digit).1 > palm;
        assert_eq!(up, palpation != Palpation::PelvicTwo, "{palpation:?}");
    }
}

#[test]
fn hands_never_hide_the_heart_and_a_stamp_has_none() {
    let exam = path("examples/head-down-left.toml");
    let exam = exam.to_str().expect("a name");
    for palpation in ["fundal", "lateral", "pelvic-one", "pelvic-two", "tape", "horn", "doppler"] {
        let drawn = run(&["draw", exam, "--hands", palpation, "-o", "-", "--as", "svg"]);
        let svg = String::from_utf8_lossy(&drawn.stdout).into_owned();
        let at =
            |id: &str| svg.find(&format!("<g id=\"{id}\"")).unwrap_or_else(|| panic!("{palpation}: {id}"));
        assert!(at("baby") < at("hands") && at("hands") < at("heart-1"), "{palpation}");
        if ["tape", "horn", "doppler"].contains(&palpation) {
            assert!(at("baby") < at(palpation) && at(palpation) < at("hands"), "{palpation}");
        }
    }
    let refused = run(&["draw", exam, "--hands", "fundal", "--style", "sketch", "-o", "-", "--as", "svg"]);
    assert!(!refused.status.success() && refused.stdout.is_empty());
    // Where nothing says where to listen, no horn is put down at a guess.
    let refused = run(&["draw", "--say", "37+0", "--hands", "horn", "-o", "-", "--as", "svg"]);
    assert!(!refused.status.success() && refused.stdout.is_empty());
    assert!(String::from_utf8_lossy(&refused.stderr).contains("where the heart is heard"));
}
