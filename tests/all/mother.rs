//! The mother's body: its curve, its sides, the pelvis against published measures, the womb around the baby.

use std::collections::BTreeMap;

use handspan::body::abdomen::{CHORD, Curve};
use handspan::body::mother::{
    FundusKnown, HandbookLevel, MotherShape, expected_fundus, expected_tape, handbook_levels,
};
use handspan::body::pose::{self, Mark, Pose};
use handspan::body::{pelvis, womb};
use handspan::exam::{Across, FundusLevel, Height, Place, Scar};
use handspan::figure::smooth;
use handspan::units::{Centimetres, FigurePoint, MotherPoint, MotherSide, Vec3};

const PELVIS: &str = include_str!("../published/pelvis.csv");
const SFH: &str = include_str!("../published/sfh.csv");
const WEEKS: [f64; 9] = [12.0, 16.0, 20.0, 24.0, 28.0, 32.0, 36.0, 40.0, 42.0];

fn cm(value: f64) -> Centimetres {
    Centimetres::new(value).expect("a length")
}

fn all_heights() -> Vec<Option<Height>> {
    vec![
        None,
        Some(Height::Fundus),
        Some(Height::AboveNavel),
        Some(Height::AtNavel),
        Some(Height::BelowNavel),
        Some(Height::IliacFossa),
        Some(Height::AbovePubicBone),
        Some(Height::FromNavel(-4.0)),
        Some(Height::FromNavel(3.0)),
        Some(Height::FromPubicBone(cm(12.0))),
    ]
}

fn all_sides(side: MotherSide) -> [Across; 3] {
    [Across::Side(side), Across::Flank(side), Across::Measured(side, cm(6.0))]
}

#[test]
fn the_arc_is_as_long_as_its_numerical_integral() {
    for weeks in WEEKS {
        let curve = Curve::at_weeks(weeks);
        for tape in [3.0, 10.0, 20.0, 30.0, curve.length()] {
            // Many short chords from height to height: nothing here knows of angles or radii.
            let top = curve.point(tape).0;
            let steps = 8_000;
            let place = |i: usize| curve.point(curve.along(top * i as f64 / steps as f64));
            let sum: f64 = (0..steps)
                .map(|i| {
                    let ((y0, z0), (y1, z1)) = (place(i), place(i + 1));
                    ((y1 - y0) * (y1 - y0) + (z1 - z0) * (z1 - z0)).sqrt()
                })
                .sum();
            assert!((sum - tape).abs() < 1e-3, "at {weeks} weeks {tape} cm of tape measure {sum}");
        }
    }
}

#[test]
fn the_curve_is_flat_at_20_weeks_and_a_term_tape_is_24_to_28_cm_seen_from_the_front() {
    let early = Curve::at_weeks(20.0);
    assert!(early.length() - CHORD < 1.0 && early.rise() < 3.5);
    for weeks in [37.0, 38.0, 39.0, 40.0, 41.0, 42.0] {
        let y = Curve::at_weeks(weeks).point(34.0).0;
        assert!((24.0..=28.0).contains(&y), "at {weeks} weeks 34 cm reach {y}");
    }
    // The further along the skin, the higher; heights come back as the lengths they were.
    for weeks in WEEKS {
        let curve = Curve::at_weeks(weeks);
        let mut last = f64::MIN;
        for i in -10..120 {
            let along = f64::from(i) * 0.5;
            let y = curve.point(along).0;
            assert!(y > last);
            assert!((curve.along(y) - along).abs() < 1e-6);
            last = y;
            let (ny, nz) = curve.normal(along);
            assert!((ny * ny + nz * nz - 1.0).abs() < 1e-9 && nz > 0.0);
        }
    }
}

#[test]
fn a_womb_not_measured_stands_where_the_published_mean_says() {
    for row in SFH.lines().filter(|l| !l.starts_with('#')).skip(1) {
        let cells: Vec<f64> = row.split(',').map(|c| c.parse().expect("a number")).collect();
        assert!((expected_tape(cells[0]) - cells[1]).abs() <= 0.051, "{row}");
        let shape = MotherShape::new(cells[0], None, None, None);
        assert_eq!(shape.fundus_known, FundusKnown::Expected);
        let drawn = shape.curve.along(shape.fundus_y);
        assert!((drawn - expected_fundus(cells[0])).abs() < 1e-6);
        // Before 20 weeks the landmarks hold: no tape is taken then.
        assert!(cells[0] < 20.0 || (drawn - expected_tape(cells[0])).abs() < 1e-6);
    }
    assert!(expected_fundus(12.0) <= 1.5 && expected_fundus(9.0) == 0.0);
    let mut last = 0.9;
    for day in 12 * 7..42 * 7 {
        let now = expected_fundus(f64::from(day) / 7.0);
        assert!(now > last && now - last < 0.6, "no jump on day {day}");
        last = now;
    }
}

#[test]
fn early_levels_are_those_of_the_handbooks() {
    use FundusLevel::{AtNavel, FingersAboveNavel, FingersBelowNavel, HalfwayToNavel, JustAbovePubicBone};
    // What the printed words mean, written here a second time.
    let printed = |words: &str| {
        Some(match words {
            "just above the symphysis" | "just above pubic bone (3 months)" => {
                HandbookLevel::At(JustAbovePubicBone)
            }
            "at/above symphysis (12-14)" => HandbookLevel::FingersAbovePubicBone(0),
            "halfway symphysis-umbilicus" => HandbookLevel::At(HalfwayToNavel),
            "1-2 fingers above symphysis" => HandbookLevel::FingersAbovePubicBone(1),
            "2 fingers below umbilicus (tape starts)" => HandbookLevel::At(FingersBelowNavel(2)),
            "1 finger below umbilicus" => HandbookLevel::At(FingersBelowNavel(1)),
            "at umbilicus" | "at umbilicus (5 months)" => HandbookLevel::At(AtNavel),
            "1 finger above umbilicus" => HandbookLevel::At(FingersAboveNavel(1)),
            _ => return None,
        })
    };
    let mut given = 0;
    for row in crate::shared::rows("fundal-landmarks.csv") {
        let Some(level) = printed(&row[1]) else { continue };
        for weeks in row[0].split('-').map(|w| w.parse::<f64>().expect("weeks")) {
            let shape = MotherShape::new(weeks, None, None, None);
            let levels = handbook_levels(weeks + 0.4).expect("a level is printed for these weeks");
            let [low, high, here] = [levels.low, levels.high, level].map(|l| shape.handbook_y(l));
            assert!(low - 1e-9 <= here && here <= high + 1e-9, "{row:?}: {low} to {high}, printed {here}");
            assert!((f64::from(levels.weeks) - weeks).abs() <= 1.0);
            given += 1;
        }
    }
    assert!(given >= 13, "{given} printed levels are met");
    assert!(handbook_levels(11.9).is_none() && handbook_levels(25.0).is_none());
    // The womb that is drawn without a tape stands in or near the band: no more than the womb grows in a week from it.
    for day in 12 * 7..25 * 7 {
        let weeks = f64::from(day) / 7.0;
        let shape = MotherShape::new(weeks, None, None, None);
        let levels = handbook_levels(weeks).expect("a level");
        let (low, high) = (shape.handbook_y(levels.low), shape.handbook_y(levels.high));
        assert!(
            (low - 5.0..high + 5.0).contains(&shape.fundus_y),
            "day {day}: {} in {low} to {high}",
            shape.fundus_y
        );
    }
}

#[test]
fn an_expected_womb_falls_with_the_head_and_a_measured_one_never() {
    for weeks in [30.0, 34.0, 37.0, 40.0, 42.0] {
        let shape = MotherShape::new(weeks, None, None, None);
        let at = |fifths| shape.fallen_with_head(fifths);
        for fall in [at(5).fundus_along - at(1).fundus_along, at(5).fundus_y - at(1).fundus_y] {
            assert!((2.0..=4.0).contains(&fall), "at {weeks} weeks it falls {fall} cm");
        }
        assert!((at(5).fundus_y - shape.fundus_y).abs() < 1e-6);
        assert!((0..5).all(|k| at(k).fundus_y < at(k + 1).fundus_y));
        let taped = MotherShape::new(weeks, Some(33.0), None, None);
        assert_eq!(taped.fallen_with_head(1), taped);
        let level = shape.with_level(FundusLevel::AtXiphoid);
        assert_eq!(level.fallen_with_head(0), level);
    }
    let text = |fifths: &str, tape: &str| {
        posed(&format!(
            "weeks = \"39+0\"\n[mother]\n{tape}\n[baby]\nhead = \"above pubic bone\"\nback = \"left front\"\nhead-above-brim = \"{fifths}\"\n"
        ))
    };
    let top = |pose: &Pose| pose.womb.iter().fold(f32::MIN, |m, p| m.max(p.y));
    let fall = top(&text("5/5", "")) - top(&text("1/5", ""));
    assert!((1.8..=4.2).contains(&fall), "the drawn womb falls {fall} cm");
    let tape = "fundal-height = \"36 cm\"";
    assert_eq!(text("5/5", tape).mother.fundus_y, text("1/5", tape).mother.fundus_y);
}

fn posed(text: &str) -> Pose {
    let exam = crate::shared::read(text);
    let conclusions: Vec<_> = (0..exam.babies.len()).map(|i| handspan::exam::conclude(&exam, i)).collect();
    pose::from_exam(&exam, &conclusions)
}

#[test]
fn what_was_heard_of_an_early_womb_lies_on_it() {
    for weeks in 12..26 {
        for place in ["middle, above pubic bone", "left, above pubic bone", "right, below navel", "left"] {
            let pose = posed(&format!("weeks = \"{weeks}+2\"\n[baby]\nheart = \"{place}\"\n"));
            let Some(Mark::Heart(_, at)) = pose.marks.first() else { panic!("a heart") };
            let line = drawn(&pose.womb);
            let p = FigurePoint::new(at.0.x, at.0.y);
            let near = line.iter().fold(f32::MAX, |m, q| m.min(libm::hypotf(p.x - q.x, p.y - q.y)));
            assert!(inside(&line, p) || near < 2.0, "{place} at {weeks} weeks: {near} cm outside the womb");
            assert!(place.starts_with("middle") || (at.0.x > 0.0) == place.starts_with("left"));
            assert!(!place.starts_with("middle") || inside(&line, p));
        }
    }
}

#[test]
fn before_12_weeks_nothing_stands_above_the_brim() {
    for weeks in ["5+0", "8+3", "11+6"] {
        let pose = posed(&format!("weeks = \"{weeks}\"\n[baby]\nheart = \"middle, above pubic bone\"\n"));
        assert!(drawn(&pose.womb).iter().all(|p| p.y < 0.35), "{weeks}");
        let Some(Mark::Heart(_, at)) = pose.marks.first() else { panic!("a heart") };
        assert!(at.0.y <= 0.0 && pose.handbooks.is_none(), "{weeks}: heart at {}", at.0.y);
    }
}

#[test]
fn every_womb_lies_inside_the_flanks() {
    let lies = [
        "head = \"above pubic bone\"\nback = \"left front\"\nhead-above-brim = \"5/5\"",
        "head = \"above pubic bone\"\nback = \"towards her spine\"\nhead-above-brim = \"1/5\"",
        "head = \"fundus\"\nbreech = \"above pubic bone\"\nback = \"right\"",
        "head = \"left, at navel\"\nbreech = \"right, at navel\"\nback = \"front\"",
        "head = \"right, at navel\"\nbreech = \"left, at navel\"\nback = \"towards her feet\"",
        "head = \"left iliac fossa\"\nback = \"right\"",
    ];
    let tapes = |weeks: f64| {
        // Two standard deviations (INTERGROWTH-21st) to both sides.
        let sd = 2.0 * (0.9922667 + 0.0258087 * weeks);
        [None, Some(expected_tape(weeks) - sd), Some(expected_tape(weeks) + sd)]
    };
    let mut babies: Vec<(String, &str)> =
        lies.iter().map(|lie| (format!("[baby]\n{lie}\n"), "one")).collect();
    babies.push((
        format!("[[baby]]\n{}\n[[baby]]\n{}\n", lies[0].replace("head-above-brim = \"5/5\"", ""), lies[2]),
        "two",
    ));
    for weeks in [26u8, 30, 34, 38, 42] {
        for (baby, count) in &babies {
            // Two babies are seldom carried longer; grown to full size they would fill her to the ribs.
            if *count == "two" && weeks > 37 {
                continue;
            }
            for tape in tapes(f64::from(weeks)) {
                // A twin womb stands higher than one.
                let more = if *count == "two" { 3.0 } else { 0.0 };
                let mother = tape.map_or(String::new(), |cm| {
                    format!("[mother]\nfundal-height = \"{:.1} cm\"\n", cm + more)
                });
                let pose = posed(&format!("weeks = \"{weeks}+0\"\n{mother}{baby}"));
                for p in &pose.womb {
                    let room = pose.mother.half_width(f64::from(p.y)) as f32 - p.x.abs();
                    // Two fill her from flank to flank.
                    let least = if *count == "two" { 0.3 } else { 1.0 };
                    assert!(room > least, "{weeks} weeks, {mother}{baby}: {room} cm at {} {}", p.x, p.y);
                }
            }
        }
    }
}

#[test]
fn a_lump_is_drawn_in_the_wall_near_which_it_was_felt() {
    let shape = MotherShape::new(36.0, None, None, None);
    let line = womb::outline(&[], shape.fundus_y as f32, 36.0);
    let at = |side, height| {
        let felt = shape.place(&Place { across: Some(Across::Side(side)), height: Some(height) });
        (felt, womb::lump_in_wall(felt, &line))
    };
    for height in [Height::AboveNavel, Height::AtNavel, Height::BelowNavel] {
        let ((felt, left), (_, right)) = (at(MotherSide::Left, height), at(MotherSide::Right, height));
        let wall =
            drawn(&line).iter().fold(f32::MAX, |m, q| m.min(libm::hypotf(left.0.x - q.x, left.0.y - q.y)));
        assert!(wall < 0.3, "{height:?}: {wall} cm from the wall");
        assert!((left.0.x - felt.0.x).abs() < 4.5 && left.0.y == felt.0.y);
        assert!(left.0.x > 4.0 && (left.0.x + right.0.x).abs() < 0.05);
    }
    let middle = shape.place(&Place { across: Some(Across::Middle), height: Some(Height::AtNavel) });
    assert_eq!(womb::lump_in_wall(middle, &line), middle, "in the front wall it stays where it was felt");
    assert_eq!(womb::lump_in_wall(middle, &[]), middle);
}

#[test]
fn the_tape_holds_whatever_it_says_and_the_navel_follows_the_landmarks() {
    for weeks in WEEKS {
        for tape in [10.0, 20.0, 34.0, 45.0, 60.0] {
            let shape = MotherShape::new(weeks, Some(tape), None, None);
            assert!((shape.curve.along(shape.fundus_y) - tape).abs() < 1e-6);
            assert_eq!(shape.fundus_known, FundusKnown::Measured);
            let held = shape.with_level(FundusLevel::AtNavel);
            assert_eq!(held.fundus_along, tape, "words do not move a tape");
        }
        let navel = MotherShape::new(weeks, None, Some(18.0), None);
        assert_eq!(navel.navel_along, 18.0);
    }
    // Bettercare: one finger below the navel at 20 weeks, at the navel at 22, one finger above at 24.
    for (weeks, low, high) in [(20.0, -2.5, 0.0), (22.0, -1.0, 1.0), (24.0, 1.0, 2.5)] {
        let shape = MotherShape::new(weeks, None, None, None);
        let over = shape.fundus_along - shape.navel_along;
        assert!((low..=high).contains(&over), "at {weeks} weeks the womb is {over} cm above the navel");
    }
    let lower = MotherShape::new(38.0, None, None, None).with_fundus_at(22.0);
    assert!((lower.curve.point(lower.fundus_along).0 - 22.0).abs() < 1e-6);
    assert_eq!(lower.fundus_known, FundusKnown::Expected);
    assert_eq!(MotherShape::new(38.0, Some(35.0), None, None).with_fundus_at(22.0).fundus_along, 35.0);
    let level = MotherShape::new(20.0, None, None, None).with_level(FundusLevel::FingersAboveNavel(2));
    assert!((level.fundus_along - level.navel_along - 4.0).abs() < 1e-9);
    assert_eq!(level.fundus_known, FundusKnown::Level);
}

#[test]
fn left_places_are_on_her_left_and_right_places_mirror_them_exactly() {
    for weeks in WEEKS {
        let shape = MotherShape::new(weeks, None, None, None);
        for height in all_heights() {
            for (left, right) in all_sides(MotherSide::Left).into_iter().zip(all_sides(MotherSide::Right)) {
                let l = shape.place(&Place { across: Some(left), height }).0;
                let r = shape.place(&Place { across: Some(right), height }).0;
                assert!(l.x > 2.0, "her left is positive x");
                assert!(r.x < -2.0, "her right is negative x");
                assert_eq!((l.x, l.y, l.z), (-r.x, r.y, r.z));
                assert!(f64::from(l.x) < shape.half_width(f64::from(l.y)), "inside the outline");
            }
            for across in [None, Some(Across::Middle)] {
                assert_eq!(shape.place(&Place { across, height }).0.x, 0.0);
            }
        }
        let flank =
            |side| shape.place(&Place { across: Some(Across::Flank(side)), height: Some(Height::AtNavel) });
        let side =
            |side| shape.place(&Place { across: Some(Across::Side(side)), height: Some(Height::AtNavel) });
        assert!(flank(MotherSide::Left).0.x > side(MotherSide::Left).0.x + 4.0);
    }
    let right_lower = MotherShape::new(38.0, None, None, None).scar(Scar::RightLower);
    assert!(right_lower.iter().flatten().all(|p| p.0.x < -3.0), "an appendix scar is on her right");
}

#[test]
fn places_stand_in_their_order_from_the_pubic_bone_to_the_fundus() {
    for weeks in [28.0, 32.0, 36.0, 40.0] {
        let shape = MotherShape::new(weeks, None, None, None);
        let y = |height| shape.place(&Place { across: None, height: Some(height) }).0.y;
        let order = [
            0.0,
            y(Height::AbovePubicBone),
            y(Height::BelowNavel),
            y(Height::AtNavel),
            y(Height::AboveNavel),
            y(Height::Fundus) + 2.5,
            shape.xiphoid_y() as f32 + 2.0,
        ];
        assert!(order.windows(2).all(|w| w[0] < w[1]), "at {weeks} weeks {order:?}");
    }
}

#[test]
fn measured_places_are_measured_on_the_skin() {
    let shape = MotherShape::new(37.0, Some(35.0), None, None);
    let place = Place {
        across: Some(Across::Measured(MotherSide::Left, cm(6.0))),
        height: Some(Height::FromNavel(-4.0)),
    };
    let p = shape.place(&place);
    let (across, along) = shape.skin_lengths(p);
    assert!((across - 6.0).abs() < 0.01 && (along - (shape.navel_along - 4.0)).abs() < 0.01);
    // A tape laid across, in small pieces.
    let (x, y) = (f64::from(p.0.x), f64::from(p.0.y));
    let steps = 2000;
    let at = |i: usize| shape.skin(x * i as f64 / steps as f64, y).0;
    let tape: f32 = (0..steps).map(|i| (at(i + 1) - at(i)).length()).sum();
    assert!((tape - 6.0).abs() < 0.03, "{tape}");
    for (across, along) in [(-9.0, 10.0), (3.0, 30.0), (0.0, 5.0), (12.0, 22.0)] {
        let back = shape.skin_lengths(shape.on_skin(across, along));
        assert!((back.0 - across).abs() < 0.01 && (back.1 - along).abs() < 0.01);
    }
}

#[test]
fn the_body_is_wide_enough_at_term_and_stays_in_the_picture() {
    for weeks in WEEKS {
        for girth in [None, Some(70.0), Some(105.0), Some(150.0)] {
            let shape = MotherShape::new(weeks, None, None, girth);
            for y in -20..45 {
                let width = shape.half_width(f64::from(y));
                assert!((11.0..=21.5).contains(&width), "at {weeks} weeks, y {y}: {width}");
            }
        }
    }
    let term = MotherShape::new(40.0, None, None, None);
    assert!(term.half_width(term.navel_y) > 17.0);
    assert!((95.0..112.0).contains(&term.girth()), "{}", term.girth());
    let round = MotherShape::new(40.0, None, None, Some(term.girth() * 1.08));
    assert!((round.girth() / term.girth() - 1.08).abs() < 0.05);
}

fn published() -> BTreeMap<&'static str, (f32, f32)> {
    PELVIS
        .lines()
        .filter(|l| !l.starts_with('#'))
        .skip(1)
        .map(|row| {
            let cells: Vec<&str> = row.split(',').collect();
            let number = |i: usize| cells[i].parse().expect("a number");
            (cells[0], (number(1), number(2)))
        })
        .collect()
}

fn degrees(radians: f64) -> f32 {
    radians.to_degrees() as f32
}

#[test]
fn the_pelvis_has_its_published_measures() {
    let [upper, lower] = pelvis::symphysis();
    let span = |a: MotherPoint, b: MotherPoint| (a.0 - b.0).length();
    let (promontory, tip) = (pelvis::promontory(), pelvis::sacrum_tip());
    let inlet = pelvis::inlet();
    let widest =
        inlet.iter().fold(0.0f32, |m, p| m.max(p.0.x)) - inlet.iter().fold(0.0f32, |m, p| m.min(p.0.x));
    // Oblique: from the joint of sacrum and hip bone to the eminence of the other side, in the plane of the brim.
    let joint = *pelvis::crest(MotherSide::Left).first().expect("a crest");
    let eminence = pelvis::brim_point(-4.9, 2.3);
    let [left, right] = [MotherSide::Left, MotherSide::Right].map(pelvis::tuberosity);
    let arm = |p: MotherPoint| libm::atan2(f64::from(p.0.x), f64::from(lower.0.y - p.0.y));
    let back = promontory.0 - upper.0;
    let outlet = tip.0 - lower.0;
    let slope = |v: Vec3| degrees(libm::atan2(f64::from(v.y), f64::from(-v.z)));
    let drawn = BTreeMap::from([
        ("true conjugate", span(upper, promontory)),
        ("inlet transverse", widest),
        ("inlet oblique", span(joint, eminence)),
        ("diagonal conjugate", span(lower, promontory)),
        ("outlet front to back", span(lower, tip)),
        ("outlet bituberous", span(left, right)),
        ("symphysis depth", span(upper, lower)),
        ("posterior wall depth", span(promontory, tip)),
        ("brim inclination standing", slope(back)),
        ("outlet inclination standing", slope(outlet)),
        ("subpubic angle", degrees(arm(left) - arm(right))),
        ("symphysis to xiphisternum", CHORD as f32),
        ("symphysis to umbilicus non-pregnant", MotherShape::new(12.0, None, None, None).navel_along as f32),
    ]);
    let published = published();
    assert_eq!(drawn.len(), published.len());
    for (name, value) in drawn {
        let (printed, slack) = published[name];
        assert!((value - printed).abs() <= slack, "{name}: drawn {value}, printed {printed}");
    }
}

#[test]
fn the_arch_as_drawn_opens_about_90_degrees() {
    let line = pelvis::arch(MotherSide::Left);
    let (low, high) = (line[0].0, line[line.len() - 1].0);
    for p in &line[1..line.len() - 1] {
        let share = (high.y - p.0.y) / (high.y - low.y);
        let straight = high.x + (low.x - high.x) * share;
        assert!((p.0.x - straight).abs() < 0.5, "the arch is nearly straight");
    }
    let half = degrees(libm::atan2(f64::from(low.x - high.x), f64::from(high.y - low.y)));
    assert!((43.0..47.0).contains(&half), "{half}");
}

#[test]
fn the_brim_plane_holds_symphysis_promontory_and_inlet_and_its_axis_goes_down_and_back() {
    for p in pelvis::inlet() {
        assert!(pelvis::above_brim(p).abs() < 1e-4);
    }
    assert!((pelvis::axis().length() - 1.0).abs() < 1e-5);
    assert!(pelvis::axis().y < 0.0 && pelvis::axis().z < 0.0);
    assert!(pelvis::above_brim(MotherPoint(Vec3::new(0.0, 10.0, 0.0))) > 5.0);
    assert!(pelvis::above_brim(MotherPoint(Vec3::new(0.0, 0.0, -5.0))) < -4.0);
    let along = pelvis::axis() * -3.0;
    assert!((pelvis::above_brim(MotherPoint(along)) - 3.0).abs() < 1e-5);
    assert!((9.0..12.0).contains(&pelvis::outlet_below_brim()));
}

#[test]
fn the_hip_bone_is_one_piece_and_both_are_mirror_images() {
    let left: Vec<_> = pelvis::hip_bone(MotherSide::Left).concat();
    let right: Vec<_> = pelvis::hip_bone(MotherSide::Right).concat();
    assert_eq!(left.len(), right.len());
    for (l, r) in left.iter().zip(&right) {
        assert_eq!((l.0.x, l.0.y, l.0.z), (-r.0.x, r.0.y, r.0.z));
        assert!(l.0.x > 0.0);
    }
    // Each part of the outline starts within 0.5 cm of where the last one ended: crest, socket, tuberosity and
    // symphysis are one bone.
    let parts = pelvis::hip_bone(MotherSide::Left);
    for i in 0..parts.len() {
        let end = parts[i][parts[i].len() - 1].0;
        let start = parts[(i + 1) % parts.len()][0].0;
        let gap = libm::hypotf(end.x - start.x, end.y - start.y);
        assert!(gap < 0.5, "part {i}: {gap}");
    }
    // The hole lies in the bone, below the brim and above the arch.
    let outline: Vec<FigurePoint> = left.iter().map(|p| FigurePoint::new(p.0.x, p.0.y)).collect();
    for p in pelvis::obturator(MotherSide::Left) {
        assert!(inside(&outline, FigurePoint::new(p.0.x, p.0.y)));
    }
}

/// Even-odd by a ray to the right.
fn inside(line: &[FigurePoint], p: FigurePoint) -> bool {
    (0..line.len()).fold(false, |odd, i| {
        let (a, b) = (line[i], line[(i + 1) % line.len()]);
        let crosses = (a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y);
        odd != crosses
    })
}

/// The drawn curve through the outline, in short straight pieces.
fn drawn(outline: &[FigurePoint]) -> Vec<FigurePoint> {
    use handspan::figure::scene::Step;
    let (mut at, mut line) = (FigurePoint::default(), Vec::new());
    for step in smooth::closed(outline) {
        match step {
            Step::Move(p) => at = p,
            Step::Curve(b, c, d) => {
                for k in 0..12 {
                    let t = k as f32 / 12.0;
                    let u = 1.0 - t;
                    let (w, x, y, z) = (u * u * u, 3.0 * u * u * t, 3.0 * u * t * t, t * t * t);
                    line.push(FigurePoint::new(
                        w * at.x + x * b.x + y * c.x + z * d.x,
                        w * at.y + x * b.y + y * c.y + z * d.y,
                    ));
                }
                at = d;
            }
            Step::Line(p) => at = p,
            Step::Close => {}
        }
    }
    line
}

/// A baby made of an ellipse and a round head: `long` half its length, turned by `angle`.
fn stand_in(x: f32, y: f32, long: f32, broad: f32, angle: f32) -> Vec<FigurePoint> {
    let (c, s) = (libm::cosf(angle), libm::sinf(angle));
    let turn = |u: f32, v: f32| FigurePoint::new(x + u * c - v * s, y + u * s + v * c);
    (0..90)
        .flat_map(|i| {
            let a = i as f32 * std::f32::consts::TAU / 90.0;
            let (p, q) = (libm::cosf(a), libm::sinf(a));
            [turn(long * p, broad * q), turn(long - 4.0 + 4.8 * p, 4.8 * q)]
        })
        .collect()
}

#[test]
fn the_womb_never_cuts_the_baby_and_reaches_the_fundus() {
    for weeks in [26.0, 30.0, 34.0, 38.0, 41.0] {
        let shape = MotherShape::new(weeks, None, None, None);
        let top = shape.fundus_y as f32;
        for eighth in 0..16 {
            let angle = eighth as f32 * std::f32::consts::FRAC_PI_8;
            for (x, y) in [(0.0, 0.0), (2.5, 0.0), (-2.5, 1.0)] {
                let size = (0.3 + 0.7 * (weeks as f32 - 12.0) / 28.0).min(1.0);
                let long = 13.5 * size;
                let rise = libm::fabsf(libm::sinf(angle));
                let middle = (top - 3.0 - long * rise).max(4.0 * size) + y;
                let baby = stand_in(x, middle.min(top - 9.0 * size), long, 6.0 * size, angle);
                let outline = womb::outline(&baby, top, weeks);
                let line = drawn(&outline);
                for p in &baby {
                    assert!(inside(&line, *p), "at {weeks} weeks, turned {angle}: a part lies outside");
                    let near = line.iter().fold(f32::MAX, |m, q| m.min(libm::hypotf(p.x - q.x, p.y - q.y)));
                    assert!(near >= womb::CLEAR, "at {weeks} weeks, turned {angle}: {near} cm");
                }
                let highest = line.iter().fold(f32::MIN, |m, p| m.max(p.y));
                let needed = baby.iter().fold(f32::MIN, |m, p| m.max(p.y)) + 1.5;
                assert!(
                    (highest - top).abs() < 0.35 || (needed > top - 0.5 && highest < needed + 1.5),
                    "at {weeks} weeks, turned {angle}: top {highest}, fundus {top}, baby {needed}"
                );
                let lowest = line.iter().fold(f32::MAX, |m, p| m.min(p.y));
                assert!(lowest < -2.5, "its lower segment stands in the pelvis: {lowest}");
            }
        }
    }
}

#[test]
fn an_early_womb_is_an_egg_of_the_right_height_and_alike_on_both_sides() {
    for weeks in [12.0, 13.0, 14.0, 16.0, 18.0, 20.0, 22.0, 24.0, 26.0] {
        let shape = MotherShape::new(weeks, None, None, None);
        let line = drawn(&womb::outline(&[], shape.fundus_y as f32, weeks));
        let (top, bottom) = line.iter().fold((f32::MIN, f32::MAX), |m, p| (m.0.max(p.y), m.1.min(p.y)));
        assert!((top - shape.fundus_y as f32).abs() < 0.35, "at {weeks} weeks: {top}");
        assert!((-6.5..-3.0).contains(&bottom));
        let (left, right) = line.iter().fold((0.0f32, 0.0f32), |m, p| (m.0.max(p.x), m.1.min(p.x)));
        assert!((left + right).abs() < 0.1 && left > 2.5);
    }
}

#[test]
fn the_womb_of_a_mirrored_baby_is_mirrored() {
    let baby = stand_in(2.0, 11.0, 13.0, 6.0, 1.2);
    let other: Vec<_> = baby.iter().map(|p| FigurePoint::new(-p.x, p.y)).collect();
    let (a, b) = (womb::outline(&baby, 27.0, 39.0), womb::outline(&other, 27.0, 39.0));
    assert_eq!(a.len(), b.len());
    let n = a.len();
    for i in 0..n {
        let (p, q) = (a[i], b[(n - i) % n]);
        assert!(
            (p.x + q.x).abs() < 1e-4 && (p.y - q.y).abs() < 1e-4,
            "point {i}: {} {} and {} {}",
            p.x,
            p.y,
            q.x,
            q.y
        );
    }
}

#[test]
fn the_womb_holds_any_heap_of_points() {
    // A fixed run of numbers between 0 and 1.
    let mut state = 7u32;
    let mut next = move || {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        (state >> 8) as f32 / (1u32 << 24) as f32
    };
    for round in 0..300 {
        let (x, y) = (8.0 * next() - 4.0, 4.0 + 12.0 * next());
        let (w, h) = (3.0 + 9.0 * next(), 4.0 + 9.0 * next());
        let baby: Vec<_> = (0..3 + round % 40)
            .map(|_| FigurePoint::new(x + w * (2.0 * next() - 1.0), y + h * (2.0 * next() - 1.0)))
            .collect();
        let outline = womb::outline(&baby, 18.0 + 12.0 * next(), 28.0 + f64::from(round % 14));
        let line = drawn(&outline);
        assert!(line.iter().all(|p| p.x.is_finite() && p.y.is_finite()));
        for p in &baby {
            assert!(inside(&line, *p), "heap {round}: a point lies outside");
            let near = line.iter().fold(f32::MAX, |m, q| m.min(libm::hypotf(p.x - q.x, p.y - q.y)));
            assert!(near >= womb::CLEAR, "heap {round}: {near} cm");
        }
    }
}
