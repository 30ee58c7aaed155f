//! Where a heart is drawn: in the region that was said, where her skin lies nearest to the drawn baby's shoulder blade or
//! chest; to the centimetre where it was measured; mirrored for a mirrored exam.

use super::shared::read;
use handspan::body::heard::Source;
use handspan::body::pose::{self, Mark, Pose};
use handspan::body::touch::palpation;
use handspan::exam::{Across, Denominator, Octant, Position, conclude};
use handspan::units::{MotherPoint, MotherSide, Vec3};

fn posed(text: &str) -> Pose {
    let exam = read(text);
    let conclusions: Vec<_> = (0..exam.babies.len()).map(|i| conclude(&exam, i)).collect();
    pose::from_exam(&exam, &conclusions)
}

fn heard(position: &str, place: &str) -> (MotherPoint, Pose) {
    let pose = posed(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{position}\"\nheart = \"{place}\"\n"));
    let Some(Mark::Heart(1, at)) = pose.marks.first() else { panic!("{position}, {place}: no heart") };
    (*at, pose)
}

const POSITIONS: [(&str, &str); 6] =
    [("LOA", "ROA"), ("LOT", "ROT"), ("LOP", "ROP"), ("LSA", "RSA"), ("LMT", "RMT"), ("LADA", "RADA")];

#[test]
fn a_heart_stays_in_the_region_that_was_said() {
    for position in POSITIONS.iter().flat_map(|(a, b)| [*a, *b]).chain(["OA", "OP"]) {
        for (column, sign) in [("left", 1.0f32), ("right", -1.0), ("left flank", 1.0), ("right flank", -1.0)]
        {
            for (level, low, high) in [
                ("above navel", 1.0f64, 99.0),
                ("at navel", -1.5, 1.5),
                ("below navel", -99.0, -1.0),
                ("above pubic bone", -99.0, -5.0),
            ] {
                let (at, pose) = heard(position, &format!("{column}, {level}"));
                let (x, y) = (f64::from(at.0.x * sign), f64::from(at.0.y));
                let wide = pose.mother.half_width(y);
                let share = if column.ends_with("flank") { 0.59..0.87 } else { 0.15..0.73 };
                assert!(share.contains(&(x / wide)), "{position}, {column}, {level}: {x} of {wide}");
                let above = y - pose.mother.navel_y;
                assert!(low < above && above < high && y > 1.0, "{position}, {column}, {level}: {above}");
                assert!(y < pose.mother.fundus_y, "{position}, {column}, {level}");
            }
        }
    }
}

#[test]
fn it_stands_nearest_to_the_shoulder_blade_of_the_drawn_baby() {
    let mut nearer = 0;
    for (left, right) in POSITIONS {
        for (position, side) in [(left, "left"), (right, "right")] {
            let (at, pose) = heard(position, &format!("{side}, below navel"));
            let (_, baby) = pose.posed().next().expect("a baby");
            let source = Source::of(baby);
            let way = source.way_to(at);
            // Nowhere else about the height of the shoulder blades, in the region and in the womb, is nearer.
            for (i, j) in (0..13).flat_map(|i| (-3..=3).map(move |j| (i, j))) {
                let y = (source.height() + f64::from(j) * 0.3).min(pose.mother.navel_y - 2.5);
                let x = pose.mother.half_width(y) * (0.17 + 0.03 * f64::from(i)) * f64::from(at.0.x.signum());
                let wide = pose.womb.iter().filter(|p| (f64::from(p.y) - y).abs() < 1.0);
                let reach = wide.fold(0.0, |m, p| f64::max(m, f64::from(p.x) * x.signum()));
                if x.abs() < reach - 2.0 {
                    let there = source.way_to(pose.mother.skin(x, y));
                    assert!(there > way - 0.05, "{position}: {there} before {way}");
                    nearer += 1;
                }
            }
        }
    }
    assert!(nearer > 200, "{nearer}");
}

#[test]
fn a_measured_place_is_drawn_to_the_centimetre() {
    for place in ["5 cm left, 4 cm below navel", "6 cm right, 12 cm above pubic bone"] {
        let (at, pose) = heard("LOA", place);
        let exam = read(&format!("[baby]\nheart = \"{place}\"\n"));
        let Some(handspan::exam::HeartHeard::At(said)) = exam.babies[0].heart.value() else {
            panic!("a place")
        };
        let off = (at.0 - pose.mother.place(said).0).length();
        assert!(off < 1e-3, "{place}: {off} cm off");
    }
}

#[test]
fn a_mirrored_exam_has_a_mirrored_heart() {
    for (left, right) in POSITIONS {
        for level in ["above navel", "at navel", "below navel"] {
            for (a, b) in [("left", "right"), ("right", "left"), ("left flank", "right flank")] {
                let (p, _) = heard(left, &format!("{a}, {level}"));
                let (q, _) = heard(right, &format!("{b}, {level}"));
                let off = (p.0 - Vec3::new(-q.0.x, q.0.y, q.0.z)).length();
                assert!(off < 1e-3, "{left} and {right}, {a}, {level}: {p:?} {q:?}");
            }
        }
    }
}

/// A back in front is heard before the flank, on the side of the back.
#[test]
fn a_back_in_front_is_not_heard_in_the_flank() {
    for (position, side) in [("LOA", MotherSide::Left), ("ROA", MotherSide::Right), ("LSA", MotherSide::Left)]
    {
        let pose = posed(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{position}\"\n"));
        let map = palpation(&pose);
        let columns = map.touches.iter().filter(|touch| touch.place.height.is_some());
        let named = columns.filter(|touch| {
            matches!(touch.place.across, Some(Across::Side(_) | Across::Flank(_) | Across::Middle))
        });
        let far = |p: MotherPoint| (p.0 - map.hearts[0].at.0).length();
        let nearest = named.min_by(|a, b| far(a.at).total_cmp(&far(b.at))).expect("places");
        assert_eq!(nearest.place.across, Some(Across::Side(side)), "{position}: {:?}", map.hearts[0]);
    }
}

/// Where to listen for a baby in this position: the place on her skin, its column as an exam names it, and the pose.
fn listened(position: Position) -> (MotherPoint, Across, Pose) {
    let text =
        format!("weeks = \"38+0\"\n[baby]\nposition = \"{}\"\nlegs = \"complete\"\n", position.words());
    let pose = posed(&text);
    let map = palpation(&pose);
    let at = map.hearts[0].at;
    let far = |p: MotherPoint| (p.0 - at.0).length();
    let named = map.touches.iter().filter(|touch| {
        touch.place.height.is_some()
            && matches!(touch.place.across, Some(Across::Side(_) | Across::Flank(_) | Across::Middle))
    });
    let nearest = named.min_by(|a, b| far(a.at).total_cmp(&far(b.at))).expect("places");
    (at, nearest.place.across.expect("a column"), pose)
}

/// Eighths from her front by way of her left of the side through which it is heard: its back, of a face its chest.
fn heard_through(position: Position) -> u8 {
    match position {
        Position::Lengthwise { denominator: Denominator::Mentum, octant } => octant.get(),
        _ => position.back_octant().expect("a back").get(),
    }
}

/// Handbooks: over the back (of a face, the chest), below the navel of a head that is down and at or above it of a bottom, on
/// the side on which it lies, nearer to the midline when it lies in front than when it lies square to the side, in the flank
/// only when it lies behind; and mirrored positions are heard at mirrored places.
#[test]
fn the_place_to_listen_is_that_of_handbooks_from_both_ends() {
    let lengthwise = Position::all().filter(|p| matches!(p, Position::Lengthwise { .. }));
    let mut shares = std::collections::BTreeMap::new();
    let mut seen = 0;
    for position in lengthwise {
        let Position::Lengthwise { denominator, octant } = position else { continue };
        let about = position.words();
        let (at, column, pose) = listened(position);
        let through = heard_through(position);
        let (x, y) = (f64::from(at.0.x), f64::from(at.0.y));
        let (_, baby) = pose.posed().next().expect("a baby");
        let source = Source::of(baby);
        assert!((y - source.height()).abs() < 1.6, "{about}: {y} against {}", source.height());
        if denominator == Denominator::Sacrum {
            // At the navel, which is within 2 cm of it, or above.
            assert!(y > pose.mother.navel_y - 2.0, "{about}: {y} below the navel at {}", pose.mother.navel_y);
        } else {
            assert!(y < pose.mother.navel_y, "{about}: {y} above the navel at {}", pose.mother.navel_y);
        }
        let side = match through {
            1..=3 => 1.0,
            5..=7 => -1.0,
            _ => 0.0,
        };
        if side != 0.0 {
            assert!(x * side > 1.0, "{about}: x {x}");
            let own = if side > 0.0 { MotherSide::Left } else { MotherSide::Right };
            let behind = matches!(through, 3 | 5);
            assert!(
                column == Across::Side(own) || (behind && column == Across::Flank(own)),
                "{about}: {column:?}"
            );
        }
        if through == 0 {
            // Over one of its two shoulder blades; a bottom that is down lies aslant under the ribs.
            let most = if denominator == Denominator::Sacrum { 7.0 } else { 5.0 };
            assert!(x.abs() < most, "{about}: x {x}");
        }
        // Over the baby, where what carries the sound is not turned away; at her side the skin bends back round it.
        if !matches!(through, 3..=5) {
            let near = baby.shape.vertices().into_iter().map(|v| libm::hypotf(v.x - at.0.x, v.y - at.0.y));
            let near = near.fold(f32::MAX, f32::min);
            let most = if matches!(through, 2 | 6) { 3.8 } else { 1.0 };
            assert!(near < most, "{about}: {near} cm beside the baby");
        }
        shares.insert(
            (denominator.presentation() as u8, denominator as u8, through),
            x.abs() / pose.mother.half_width(y),
        );
        let mirrored = Position::Lengthwise { denominator, octant: Octant::new((8 - octant.get()) % 8) };
        if mirrored != position {
            let (other, ..) = listened(mirrored);
            let off = (at.0 - Vec3::new(-other.0.x, other.0.y, other.0.z)).length();
            assert!(off < 1e-3, "{about}: {at:?} and {other:?}");
        }
        seen += 1;
    }
    assert_eq!(seen, 32);
    for ((presentation, denominator, through), share) in &shares {
        let lateral = match through {
            1 => 2,
            7 => 6,
            _ => continue,
        };
        let beside = shares[&(*presentation, *denominator, lateral)];
        assert!(*share < beside - 0.03, "eighth {through}: {share}, square to the side {beside}");
    }
}
