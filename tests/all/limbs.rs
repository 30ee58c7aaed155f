//! Arms and legs: on the body and never in it, never over the face, and where they were felt; two babies apart.

use handspan::body::baby::PosedBaby;
use handspan::body::form::shared::shared;
use handspan::body::part::Part;
use handspan::body::pose::{self, DrawingNote, Pose};
use handspan::body::shape::Piece;
use handspan::body::twins;
use handspan::exam;
use handspan::units::{BabySide, Vec3};

fn posed(text: &str) -> Pose {
    let exam = exam::read("test.toml", text.as_bytes()).exam.unwrap_or_else(|| panic!("{text}"));
    let conclusions: Vec<_> = (0..exam.babies.len()).map(|i| exam::conclude(&exam, i)).collect();
    pose::from_exam(&exam, &conclusions)
}

/// The 32 named positions.
fn codes() -> Vec<String> {
    ["O", "S", "M", "F"]
        .iter()
        .flat_map(|d| {
            ["A", "LA", "LT", "LP", "P", "RP", "RT", "RA"].map(|p| match p.len() {
                1 => format!("{d}{p}"),
                _ => format!("{}{d}{}", &p[..1], &p[1..]),
            })
        })
        .collect()
}

/// Babies of every position, at several weeks and fundal heights, with the legs in every way.
fn babies() -> Vec<(String, PosedBaby)> {
    let mut out = vec![];
    for (i, code) in codes().iter().enumerate() {
        let legs: &[&str] = if code.contains('S') {
            &["complete", "frank", "footling left", "footling both"]
        } else {
            &["complete"]
        };
        for legs in legs {
            for (weeks, tape) in [(28, 27), (38, 35), (40, 39)] {
                let fifths =
                    if i % 3 == 0 && code.contains('O') { "head-above-brim = \"1/5\"\n" } else { "" };
                let text = format!(
                    "weeks = \"{weeks}+0\"\n[mother]\nfundal-height = \"{tape} cm\"\n[baby]\nposition = \"{code}\"\nlegs = \"{legs}\"\n{fifths}"
                );
                let pose = posed(&text);
                let baby = pose.posed().next().unwrap_or_else(|| panic!("{text}")).1.clone();
                out.push((format!("{code} {legs} {weeks} weeks {tape} cm"), baby));
            }
        }
    }
    for (head, bottom) in [("left", "right"), ("right", "left")] {
        for back in ["front", "towards her spine", "towards her ribs", "towards her feet"] {
            let pose = posed(&format!(
                "weeks = \"36+0\"\n[baby]\nhead = \"{head}, at navel\"\nbreech = \"{bottom}, at navel\"\nback = \"{back}\"\n"
            ));
            out.push((format!("{head} {back}"), pose.posed().next().expect("a baby").1.clone()));
        }
    }
    out
}

/// Whether a point lies inside trunk and head: they fill more than half of what is seen from there. (Where limbs were taken
/// off the skin is open, and the face that is nearest does not tell in from out.)
fn is_inside(baby: &PosedBaby, p: Vec3) -> bool {
    let form = shared();
    let mut solid = 0.0f64;
    for (quad, part) in form.rest.quads.iter().zip(&form.rest.part) {
        if !Piece::Core.holds(*part) {
            continue;
        }
        let [a, b, c, d] = quad.map(|v| baby.shape.at(usize::from(v)) - p);
        for [a, b, c] in [[a, b, c], [a, c, d]] {
            let (la, lb, lc) = (a.length(), b.length(), c.length());
            let over = la * lb * lc + a.dot(b) * lc + b.dot(c) * la + c.dot(a) * lb;
            solid += 2.0 * f64::from(libm::atan2f(a.dot(b.cross(c)), over));
        }
    }
    solid.abs() > 2.0 * std::f64::consts::PI
}

/// Hands and feet press into trunk and head by no more than soft flesh gives way.
#[test]
fn hands_and_feet_stay_out_of_the_body() {
    const DENT: f32 = 0.75;
    let mut worst = (0.0f32, String::new());
    for (name, baby) in babies() {
        let core = baby.shape.piece(Piece::Core);
        for side in BabySide::BOTH {
            for piece in [Piece::Hand(side), Piece::Foot(side)] {
                let skin = baby.shape.piece(piece).spread();
                assert!(skin.len() > 20, "{name}: {piece:?} has no skin");
                for p in skin {
                    let sunk = -core.nearest(p).0;
                    if sunk > worst.0 && is_inside(&baby, p) {
                        worst = (sunk, format!("{name}, {piece:?} {}", baby.body.local(p).y));
                    }
                }
            }
        }
    }
    assert!(worst.0 < DENT, "{worst:?}");
}

/// Where the face is turned to the viewer, eyes, nose and mouth are free of hands and feet.
#[test]
fn no_hand_or_foot_lies_over_the_face() {
    let mut covered = vec![];
    for (name, baby) in babies() {
        let k = baby.posture.measures.head;
        if baby.head.z.z < 0.25 {
            continue;
        }
        let (head, limbs) = (baby.shape.piece(Piece::Head), baby.shape.piece(Piece::Limbs));
        for (what, x, y) in
            [("left eye", 1.75, -1.7), ("right eye", -1.75, -1.7), ("nose", 0.0, -2.5), ("mouth", 0.0, -4.2)]
        {
            let start = baby.head.point(Vec3::new(x * k, y * k, 9.0 * k));
            let Some(p) = head.ray(start, -baby.head.z, 12.0) else { continue };
            let from = p + Vec3::new(0.0, 0.0, 25.0);
            if limbs.ray(from, Vec3::new(0.0, 0.0, -1.0), 24.8).is_some() {
                covered.push(format!("{name}: {what}"));
            }
        }
    }
    assert!(covered.is_empty(), "{} {covered:#?}", covered.len());
}

/// A place where limbs were felt lies over a limb.
#[test]
fn limbs_lie_where_they_were_felt() {
    for (back, limbs) in [
        ("left front", "[\"right, above navel\", \"right, below navel\"]"),
        ("left", "[\"right, above navel\", \"right, at navel\"]"),
        ("right front", "[\"left, above navel\"]"),
        ("right, towards her spine", "[\"left, at navel\", \"middle, below navel\"]"),
        ("towards her spine", "[\"left, at navel\", \"right, at navel\"]"),
        ("towards her spine", "[\"left, above navel\", \"right, below navel\"]"),
    ] {
        for (head, breech) in [("above pubic bone", "fundus"), ("fundus", "above pubic bone")] {
            // No hand reaches above the face of a baby whose head is up.
            let limbs = if head == "fundus" { limbs.replace("above", "below") } else { limbs.to_owned() };
            let pose = posed(&format!(
                "weeks = \"38+0\"\n[mother]\nfundal-height = \"35 cm\"\n[baby]\nhead = \"{head}\"\nbreech = \"{breech}\"\nback = \"{back}\"\nlimbs = {limbs}\n"
            ));
            let baby = pose.posed().next().expect("a baby").1;
            for mark in &pose.marks {
                let pose::Mark::Limb(_, at) = mark else { continue };
                let away = baby.shape.limbs_seen(at.0.x, at.0.y).into_iter().fold(f32::MAX, f32::min);
                // A ring of 0.8 cm is drawn round the place.
                assert!(away < 1.0, "{back}, head {head}, {limbs}: {away} cm from ({}, {})", at.0.x, at.0.y);
            }
        }
    }
}

/// Neither of two babies passes through the other, whatever their lies; the numbers are the file's.
#[test]
fn twins_do_not_pass_through_one_another() {
    let lies = [
        "position = \"LOA\"",
        "position = \"OP\"",
        "position = \"RST\"",
        "position = \"SA\"",
        "head = \"left, above navel\"\nbreech = \"right, above navel\"\nback = \"front\"",
        "head = \"right, above navel\"\nbreech = \"left, above navel\"\nback = \"towards her feet\"",
        "head = \"left iliac fossa\"\nbreech = \"right, above navel\"\nback = \"left front\"",
    ];
    for one in lies {
        for two in lies {
            for weeks in [28, 36] {
                let text = format!("weeks = \"{weeks}+0\"\n[[baby]]\n{one}\n[[baby]]\n{two}\n");
                let pose = posed(&text);
                let both: Vec<_> = pose.posed().map(|(_, b)| b).collect();
                assert_eq!(both.len(), 2, "{text}");
                let gap = twins::gap(both[0], both[1]).min(twins::gap(both[1], both[0]));
                assert!(gap > 0.0, "{text}: {gap}");
                assert_eq!(pose.babies.iter().map(|b| b.0).collect::<Vec<_>>(), [1, 2]);
            }
        }
    }
}

/// It is said when the second baby lies nearer the outlet.
#[test]
fn numbers_that_do_not_follow_the_outlet_are_noted() {
    let crosswise = "head = \"left, above navel\"\nbreech = \"right, above navel\"\nback = \"front\"";
    let noted = |one: &str, two: &str| {
        let text = format!("weeks = \"35+0\"\n[[baby]]\n{one}\n[[baby]]\n{two}\n");
        posed(&text).notes.contains(&DrawingNote::SecondIsLower)
    };
    assert!(noted(crosswise, "position = \"LOA\""));
    assert!(!noted("position = \"LOA\"", crosswise));
}

/// Elbows and knees bend forwards of straight and fold no nearer than 30 degrees; bones keep their length.
#[test]
fn joints_stay_in_a_human_range() {
    let angle = |a: Vec3, b: Vec3, c: Vec3| {
        let (u, v) = ((a - b).normalized(), (c - b).normalized());
        libm::acosf(u.dot(v).clamp(-1.0, 1.0)).to_degrees()
    };
    for (name, baby) in babies() {
        for side in BabySide::BOTH {
            let (arm, leg) = (&baby.arms[side.index()], &baby.legs[side.index()]);
            let (elbow, knee) =
                (angle(arm.shoulder, arm.elbow, arm.wrist), angle(leg.hip, leg.knee, leg.ankle));
            assert!((29.0..=180.0).contains(&elbow), "{name}: elbow {elbow}");
            assert!((29.0..=180.0).contains(&knee), "{name}: knee {knee}");
            // A thigh is never behind the body, and a knee never bends backwards.
            let thigh = (leg.knee - leg.hip).normalized();
            assert!(thigh.z > -0.15, "{name}: thigh {thigh:?}");
            let k = &baby.posture.measures;
            // The form's own thigh is what the tables give to 3 %.
            let thigh = (leg.knee - leg.hip).length() / (7.3 * k.femur);
            assert!((thigh - 1.0).abs() < 0.03, "{name}: thigh bone {thigh}");
        }
    }
}

/// Thumbs and great toes lie on the side where a left and a right hand and foot have them.
#[test]
fn thumbs_and_great_toes_are_on_the_right_side() {
    for (name, baby) in babies() {
        let middle = |part: Part| {
            let middle = baby.shape.middle(part).unwrap_or_else(|| panic!("{name}: a digit is missing"));
            baby.body.local(middle)
        };
        for side in BabySide::BOTH {
            let (arm, leg) = (&baby.arms[side.index()], &baby.legs[side.index()]);
            // Seen on the palm with the fingers up, the thumb of a left hand is at the viewer's left.
            let across = middle(Part::finger(side, 4)) - middle(Part::finger(side, 3));
            assert!(arm.palm.cross(arm.fingers).dot(across) * side.sign() > 0.1, "{name}: thumb");
            // Seen on the sole with the toes up, the great toe of a left foot is at the viewer's left.
            let across = middle(Part::toe(side, 0)) - middle(Part::toe(side, 4));
            assert!(leg.sole.cross(leg.toes).dot(across) * side.sign() > 0.5, "{name}: great toe");
            for digit in 0..5 {
                middle(Part::finger(side, digit));
                middle(Part::toe(side, digit));
            }
        }
    }
}
