//! Where the baby is placed: fifths of the head above the brim, the lowest point by attitude, feet and bottoms.

use handspan::body::baby::PosedBaby;
use handspan::body::form::landmark::Landmark;
use handspan::body::head::{self, HeadRegion};
use handspan::body::part::Part;
use handspan::body::pose::{self, DrawingNote, Mark, Pose};
use handspan::body::shape::Piece;
use handspan::exam;
use handspan::units::{BabySide, Vec3};

const DOWN: Vec3 = Vec3::new(0.0, -1.0, 0.0);

fn posed(text: &str) -> Pose {
    let exam = exam::read("test.toml", text.as_bytes()).exam.unwrap_or_else(|| panic!("{text}"));
    let conclusions: Vec<_> = (0..exam.babies.len()).map(|i| exam::conclude(&exam, i)).collect();
    pose::from_exam(&exam, &conclusions)
}

fn only(pose: &Pose) -> &PosedBaby {
    pose.posed().next().expect("one baby").1
}

/// k/5 of the head, from skull base to vertex along the axis of the pelvis, stands above the brim: to 1 mm, on the
/// posed surface, at every week and turn.
#[test]
fn fifths_stand_above_the_brim() {
    for weeks in [28, 33, 38, 41] {
        for k in 0..=5u8 {
            for code in ["LOA", "ROT", "OP"] {
                let pose = posed(&format!(
                    "weeks = \"{weeks}+0\"\n[baby]\nposition = \"{code}\"\nhead-above-brim = \"{k}/5\"\n"
                ));
                let baby = only(&pose);
                let height = head::HEIGHT * baby.posture.measures.head;
                let above = baby.shape.piece(Piece::Head).extreme(DOWN).y + height;
                let wanted = f32::from(k) / 5.0 * height;
                assert!((above - wanted).abs() < 0.1, "{weeks} {k}/5 {code}: {above} of {height} cm");
            }
        }
    }
}

/// The widest level of the head (between the parietal eminences) is above the brim at 3/5, not above it at 2/5.
#[test]
fn the_biparietal_plane_passes_the_brim_between_three_and_two_fifths() {
    let widest = |k: u8| {
        let pose =
            posed(&format!("weeks = \"39+0\"\n[baby]\nposition = \"OA\"\nhead-above-brim = \"{k}/5\"\n"));
        let baby = only(&pose).clone();
        let lowest = baby.shape.piece(Piece::Head).extreme(DOWN).y;
        // Breadth of the skull at each level, by walking in from both sides; cheeks, below the eyes, are no skull.
        let skull = baby.shape.piece(Piece::Skull);
        let reach = |y: f32, way: f32| {
            (-30..=30)
                .filter_map(|j| {
                    let start = Vec3::new(20.0 * way, y, baby.head.origin.z + j as f32 * 0.2);
                    skull.ray(start, Vec3::new(-way, 0.0, 0.0), 22.0)
                })
                .filter(|p| baby.head.local(*p).y > -1.5)
                .map(|p| p.x * way)
                .fold(-1e9, f32::max)
        };
        (1..90)
            .map(|i| lowest + i as f32 * 0.1)
            .map(|y| (reach(y, 1.0) + reach(y, -1.0), y))
            .max_by(|a, b| a.0.total_cmp(&b.0))
            .map(|(_, y)| y)
            .unwrap()
    };
    assert!(widest(3) > 0.0, "at 3/5: {}", widest(3));
    assert!(widest(2) <= 0.0, "at 2/5: {}", widest(2));
}

/// The lowest point is vertex, forehead or face as the attitude says.
#[test]
fn the_attitude_decides_what_leads() {
    for (codes, region) in
        [(["OA", "LOA", "LOT", "OP"], HeadRegion::Vertex), (["FA", "LFA", "LFT", "FP"], HeadRegion::Forehead)]
    {
        for code in codes {
            let pose = posed(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{code}\"\n"));
            let baby = only(&pose);
            let lowest = baby.shape.extreme(DOWN);
            let local = baby.head.local(lowest);
            assert_eq!(head::region(local, baby.posture.measures.head), region, "{code}: {local:?}");
        }
    }
}

/// A face leads with brow and nose: it looks down to within 42 degrees, and lies lower than the vertex.
#[test]
fn a_face_looks_down() {
    for code in ["MA", "LMA", "LMT", "LMP", "MP", "RMA", "RMT", "RMP"] {
        let pose = posed(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{code}\"\n"));
        let baby = only(&pose);
        let mark = |landmark| baby.shape.landmark(landmark, BabySide::Left);
        let (nose, vertex) = (mark(Landmark::Nose), mark(Landmark::Vertex));
        assert!(baby.head.z.y < -0.74, "{code}: the face looks to {:?}", baby.head.z);
        assert!(nose.y < vertex.y - 0.5, "{code}: nose {nose:?}, vertex {vertex:?}");
        let lowest = baby.shape.extreme(DOWN);
        assert!(nose.y - lowest.y < 4.0, "{code}: nose {nose:?}, lowest {lowest:?}");
    }
}

/// A bottom leads a frank or complete breech, a foot a footling one; before labour no foot lies more than 4 cm below
/// the brim.
#[test]
fn breeches_are_led_by_what_is_said() {
    for (legs, foot) in [
        ("frank", false),
        ("complete", false),
        ("footling left", true),
        ("footling right", true),
        ("footling both", true),
    ] {
        for descent in ["free", "at the brim", "deep"] {
            for back in ["left front", "right", "towards her spine"] {
                let pose = posed(&format!(
                    "weeks = \"37+0\"\n[baby]\nbreech = \"above pubic bone\"\nback = \"{back}\"\nlegs = \"{legs}\"\ndescent = \"{descent}\"\n"
                ));
                let baby = only(&pose);
                let lowest = baby.shape.extreme(DOWN);
                let part = baby.shape.nearest(lowest).1;
                if foot {
                    assert!(part.is_foot(), "{legs} {descent} {back}: {part:?}");
                    assert!(lowest.y > -4.0, "{legs} {descent} {back}: foot at {}", lowest.y);
                } else {
                    let bottom = part.is_buttock() || part == Part::TRUNK || part.is_thigh();
                    assert!(bottom, "{legs} {descent} {back}: {part:?}");
                }
            }
        }
    }
}

/// A crosswise baby lies low, its lower side near the brim, under a fundus lower than the weeks.
#[test]
fn crosswise_babies_lie_low() {
    for back in ["towards her ribs", "towards her feet", "front", "towards her spine"] {
        let pose = posed(&format!(
            "weeks = \"37+0\"\n[baby]\nhead = \"left, at navel\"\nbreech = \"right, at navel\"\nback = \"{back}\"\n"
        ));
        let lowest = only(&pose).shape.extreme(DOWN).y;
        assert!((-1.0..2.1).contains(&lowest), "{back}: {lowest}");
        let expected = handspan::body::mother::MotherShape::new(37.0, None, None, None).fundus_y;
        assert!(pose.mother.fundus_y < expected - 3.0, "{back}: {}", pose.mother.fundus_y);
    }
}

/// Unknowns are said: weeks, back, legs; under 26 weeks no baby is drawn.
#[test]
fn what_is_unknown_is_noted() {
    let pose = posed("[baby]\nbreech = \"above pubic bone\"\nback = \"left\"\n");
    assert!(pose.notes.contains(&DrawingNote::WeeksNotGiven));
    assert!(pose.notes.contains(&DrawingNote::LegsNotFelt(1)));
    let pose = posed("weeks = \"37+0\"\n[baby]\nposition = \"LSA\"\nlegs = \"footling\"\n");
    assert!(pose.notes.contains(&DrawingNote::FootNotTold(1)), "which foot is no guess of the picture");
    let pose = posed("weeks = \"37+0\"\n[baby]\nposition = \"LSA\"\nlegs = \"footling left\"\n");
    assert!(!pose.notes.contains(&DrawingNote::FootNotTold(1)));
    let pose = posed("weeks = \"25+6\"\n[baby]\nhead = \"fundus\"\nback = \"left\"\n");
    assert_eq!((pose.babies.len(), pose.notes.clone()), (0, vec![DrawingNote::WombOnly]));
    let pose = posed("weeks = \"36+0\"\n[baby]\nhead = \"could not tell\"\n");
    assert_eq!((pose.babies.len(), pose.notes.clone()), (0, vec![DrawingNote::BabyNotTold(1)]));
}

/// A head that is bent back is told in words: from the front its face is hardly seen.
#[test]
fn a_face_or_a_brow_that_leads_is_told() {
    let told = |position: &str| -> Vec<DrawingNote> {
        let pose = posed(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{position}\"\n"));
        let bent_back =
            |note: &&DrawingNote| matches!(note, DrawingNote::FaceLeads(_) | DrawingNote::BrowLeads(_));
        pose.notes.iter().filter(bent_back).copied().collect()
    };
    for (side, turn) in [("L", "A"), ("R", "T"), ("L", "P")] {
        assert_eq!(told(&format!("{side}M{turn}")), [DrawingNote::FaceLeads(1)]);
        assert_eq!(told(&format!("{side}F{turn}")), [DrawingNote::BrowLeads(1)]);
        assert_eq!(told(&format!("{side}O{turn}")), []);
        assert_eq!(told(&format!("{side}S{turn}")), []);
    }
}

/// No limb that was felt lies above a crosswise womb, which is drawn lower than the weeks.
#[test]
fn a_crosswise_womb_stands_over_the_limbs_that_were_felt() {
    let top = |limbs: &str| {
        let pose = posed(&format!(
            "weeks = \"36+0\"\n[baby]\nhead = \"left, below navel\"\nbreech = \"right, below navel\"\nback = \"front\"\n{limbs}"
        ));
        let highest = pose.marks.iter().map(|mark| match mark {
            Mark::Limb(_, at) | Mark::Heart(_, at) => f64::from(at.0.y),
        });
        (pose.mother.fundus_y, highest.fold(0.0, f64::max))
    };
    let (plain, _) = top("");
    for side in ["left", "right"] {
        let (over, limb) = top(&format!("limbs = [\"{side}, 5 cm above navel\"]\n"));
        assert!(limb > plain - 1.5, "{side}: {limb} under {plain} proves nothing");
        assert!(over >= limb + 1.5 && over > plain, "{side}: {limb} under {over}");
    }
}

/// At every week from 26 to 41, for tapes from the 3rd to the 97th centile (mean and SD of INTERGROWTH-21st) and every
/// fifth, a whole baby lies inside its womb; what does not fit is told, and is never much.
#[test]
fn a_baby_fits_at_every_week_tape_and_fifth() {
    let (mut above, mut below) = ((0.0f32, String::new()), (0.0f32, String::new()));
    for weeks in 26..=41u16 {
        let w = f64::from(weeks);
        let (mean, sd) = (handspan::body::mother::expected_tape(w), 0.9922667 + 0.0258087 * w);
        for (centile, z) in [("P3", -1.88), ("P50", 0.0), ("P97", 1.88)] {
            for k in 0..=5 {
                let pose = posed(&format!(
                    "weeks = \"{weeks}+0\"\n[mother]\nfundal-height = \"{:.1} cm\"\n[baby]\nposition = \"LOA\"\nhead-above-brim = \"{k}/5\"\n",
                    mean + z * sd
                ));
                let name = format!("{weeks} weeks {centile} {k}/5");
                let (sides, baby) = (&pose.womb, only(&pose));
                for p in handspan::body::place::hull(baby) {
                    let crossings = (0..sides.len())
                        .filter(|i| {
                            let (a, b) = (sides[*i], sides[(i + 1) % sides.len()]);
                            (a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)
                        })
                        .count();
                    assert!(crossings % 2 == 1, "{name}: the baby passes the womb at {} {}", p.x, p.y);
                }
                let [(1, misfit)] = pose.misfits[..] else { panic!("{name}: one misfit") };
                if misfit > above.0 {
                    above = (misfit, name.clone());
                }
                // Before that a baby swims in a roomy womb.
                if weeks >= 37 && misfit < below.0 {
                    below = (misfit, name);
                }
            }
        }
    }
    // A form of true length, folded, does not reach up under the highest of tapes when its head is deep.
    assert!(above.0 < 4.0 && below.0 > -13.0, "{above:?} {below:?}");
}
