//! Where a heart is drawn: in the region that was said, where her skin lies nearest to the drawn baby's shoulder blade or
//! chest; to the centimetre where it was measured; mirrored for a mirrored exam.

use super::shared::read;
use handspan::body::heard::Source;
use handspan::body::pose::{self, Mark, Pose};
use handspan::body::touch::palpation;
use handspan::exam::{Across, conclude};
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
            for (i, j) in (0..8).flat_map(|i| (-3..=3).map(move |j| (i, j))) {
                let y = (source.height() + f64::from(j) * 0.3).min(pose.mother.navel_y - 2.5);
                let x = pose.mother.half_width(y) * (0.17 + 0.05 * f64::from(i)) * f64::from(at.0.x.signum());
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
