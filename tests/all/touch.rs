//! What hands feel: what is felt where, read from the map and not from what the exam said; and where the heart is
//! heard. `cargo test --test all touch -- --nocapture` prints the maps.

#![allow(clippy::print_stdout)]

use crate::shared::{path, read, rows};
use handspan::body::part::Part;
use handspan::body::pose::{self, Pose};
use handspan::body::touch::{Feel, LEVELS, Listening, Palpation, Through, Touch, palpation};
use handspan::exam::{self, Across, Height};
use handspan::units::BabySide;

fn posed(text: &str) -> Pose {
    let exam = read(text);
    let conclusions: Vec<_> = (0..exam.babies.len()).map(|i| exam::conclude(&exam, i)).collect();
    pose::from_exam(&exam, &conclusions)
}

fn position(code: &str) -> Pose {
    posed(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{code}\"\n"))
}

fn letter(what: Option<Feel>) -> char {
    match what {
        None => '.',
        Some(Feel::Head) => 'H',
        Some(Feel::Back) => 'B',
        Some(Feel::Side) => 's',
        Some(Feel::Front) => 'f',
        Some(Feel::Bottom) => 'U',
        Some(Feel::Limbs) => 'l',
        Some(Feel::Trunk) => 't',
    }
}

/// The map in letters, her right at the left, a word for each level from the fundus down.
fn drawn(map: &Palpation) -> String {
    let row = |level: &Height| {
        let mut touches: Vec<_> = map.touches.iter().filter(|t| t.place.height == Some(*level)).collect();
        touches.sort_by(|a, b| a.at.0.x.total_cmp(&b.at.0.x));
        touches.iter().map(|t| letter(t.felt.map(|f| f.what))).collect::<String>()
    };
    LEVELS.iter().map(row).collect::<Vec<_>>().join(" ")
}

/// A named position, with the angle of its back from her front towards her left (0, 45 ... 315 degrees) and whether the
/// head is down; from the published table, where chin and brow lie opposite the back.
fn positions() -> Vec<(String, u32, bool)> {
    rows("positions.csv")
        .into_iter()
        .filter_map(|row| {
            let angle: u32 = row[3].parse().ok()?;
            let opposite = matches!(row[1].as_str(), "face" | "brow");
            Some((row[0].clone(), if opposite { (angle + 180) % 360 } else { angle }, row[1] != "breech"))
        })
        .filter(|(code, _, _)| code.len() <= 3)
        .collect()
}

/// x of every place where one of these is felt.
fn felt_at(touches: &[Touch], what: &[Feel]) -> Vec<f32> {
    let felt = touches.iter().filter(|t| t.felt.is_some_and(|f| what.contains(&f.what)));
    felt.map(|t| t.at.0.x).collect()
}

fn mean(values: &[f32]) -> f32 {
    values.iter().sum::<f32>() / values.len() as f32
}

/// The places of the map at one level, iliac fossae and columns without a level left out.
fn level(map: &Palpation, level: Height) -> Vec<Touch> {
    map.touches.iter().filter(|t| t.place.height == Some(level)).copied().collect()
}

/// Every side and level that an exam can name is on the map, each once, and about sixty places in all.
#[test]
fn every_place_that_can_be_named_is_on_the_map() {
    let pose = position("LOA");
    let map = palpation(&pose);
    assert!((50..=66).contains(&map.touches.len()), "{} places", map.touches.len());
    for touch in &map.touches {
        let off = (touch.at.0 - pose.mother.place(&touch.place).0).length();
        // Hands at the fundus lie under its top.
        let cupped = touch.place.height == Some(Height::Fundus);
        assert!(if cupped { off < 5.0 } else { off < 0.01 }, "{:?} lies {off} cm off", touch.place);
    }
    let sides = ["left", "right", "middle", "left flank", "right flank"];
    let levels = ["fundus", "above navel", "at navel", "below navel", "above pubic bone"];
    let named = sides
        .iter()
        .flat_map(|side| levels.iter().map(move |level| format!("{side}, {level}")))
        .chain(sides.map(str::to_owned))
        .chain(["left iliac fossa", "right iliac fossa"].map(str::to_owned));
    for name in named {
        let exam = read(&format!("weeks = \"38+0\"\n[baby]\nlimbs = [\"{name}\"]\n"));
        let place = exam.babies[0].limbs.value().expect("a place")[0];
        let found: Vec<_> = map.touches.iter().filter(|t| t.place == place).collect();
        assert_eq!(found.len(), 1, "{name}");
        assert_eq!(map.nearest(found[0].at).map(|t| t.at), Some(found[0].at), "{name}");
        let side = if name.contains("left") {
            1.0
        } else if name.contains("right") {
            -1.0
        } else {
            0.0
        };
        assert!(found[0].at.0.x * side > 0.0 || side == found[0].at.0.x, "{name}: {:?}", found[0].at);
    }
}

/// Head, bottom, back and limbs are felt where each of the 32 positions has them.
#[test]
fn every_position_feels_as_it_should() {
    let positions = positions();
    assert_eq!(positions.len(), 32);
    for (code, back, head_down) in positions {
        let map = palpation(&position(&code));
        println!("{code:>4} {}", drawn(&map));
        let (low, mut high) = (level(&map, Height::AbovePubicBone), level(&map, Height::Fundus));
        if code.contains(['M', 'F']) {
            // The feet of a baby that is bent backwards stand above its bottom.
            high.extend(level(&map, Height::AboveNavel));
        }
        let (head, bottom) = if head_down { (&low, &high) } else { (&high, &low) };
        let middle = head.iter().find(|t| t.place.across == Some(Across::Middle)).and_then(|t| t.felt);
        assert_eq!(middle.map(|f| f.what), Some(Feel::Head), "{code}");
        assert_eq!(felt_at(bottom, &[Feel::Head]), [0.0f32; 0], "{code}");
        // Turned to her spine, a bottom lies behind the legs.
        let behind = (91..270).contains(&back);
        let pole: &[Feel] = if behind { &[Feel::Bottom, Feel::Limbs] } else { &[Feel::Bottom] };
        assert!(!felt_at(bottom, pole).is_empty(), "{code}: no bottom");

        let (backs, limbs) = (felt_at(&map.touches, &[Feel::Back]), felt_at(&map.touches, &[Feel::Limbs]));
        match back {
            0 => {
                assert!(backs.contains(&0.0), "{code}: back not in the middle");
                assert!(felt_at(&map.touches, &[Feel::Front]).is_empty(), "{code}: front felt");
                assert!(mean(&backs).abs() < 0.5, "{code}: back at {}", mean(&backs));
            }
            180 => {
                assert!(backs.is_empty(), "{code}: a back is felt");
                assert!(limbs.iter().any(|x| *x > 2.0) && limbs.iter().any(|x| *x < -2.0), "{code}");
                assert!(mean(&limbs).abs() < 1.8, "{code}: limbs at {}", mean(&limbs));
            }
            _ => {
                let side = if back < 180 { 1.0 } else { -1.0 };
                let trunk = felt_at(&map.touches, &[Feel::Back, Feel::Side]);
                // Turned to her spine, a trunk may lie wholly behind head and limbs.
                assert!((behind || !trunk.is_empty()) && !limbs.is_empty(), "{code}");
                let apart = trunk.is_empty() || (mean(&trunk) - mean(&limbs)) * side > 3.0;
                assert!(apart, "{code}: {trunk:?} {limbs:?}");
                // At no level does the back lie beyond the limbs.
                for height in LEVELS {
                    let row = level(&map, height);
                    for trunk in felt_at(&row, &[Feel::Back, Feel::Side]) {
                        for limb in felt_at(&row, &[Feel::Limbs]) {
                            assert!((trunk - limb) * side > 0.0, "{code}, {height:?}: {trunk} and {limb}");
                        }
                    }
                }
                // A head bent back pushes the body to the other side; else each lies on its own half. With the back
                // behind, the limbs lie in front, and reach beyond the midline.
                if code.contains(['O', 'S']) {
                    assert!(behind || !backs.is_empty(), "{code}: no back");
                    assert!(trunk.is_empty() || mean(&trunk) * side > 1.0, "{code}: {trunk:?}");
                    // Folded legs lie before the middle of a breech.
                    let least = if code.contains('S') { 0.0 } else { 0.5 };
                    assert!(behind || mean(&limbs) * side < -least, "{code}: {limbs:?}");
                    assert!(limbs.iter().any(|x| x * side < -2.0), "{code}: {limbs:?}");
                }
            }
        }
    }
}

/// What hands reported gives the same map as the position that follows from it.
#[test]
fn findings_and_positions_give_the_same_map() {
    let turns =
        [("front", "A"), ("left front", "LA"), ("left lateral", "LT"), ("left, towards her spine", "LP")];
    for (head, bottom, letter) in [("above pubic bone", "fundus", "O"), ("fundus", "above pubic bone", "S")] {
        for (back, turn) in turns {
            for (back, turn) in
                [(back.to_owned(), turn.to_owned()), (back.replace("left", "right"), turn.replace('L', "R"))]
            {
                let split = turn.len() - 1;
                let code = format!("{}{letter}{}", &turn[..split], &turn[split..]);
                let found = posed(&format!(
                    "weeks = \"38+0\"\n[baby]\nhead = \"{head}\"\nbreech = \"{bottom}\"\nback = \"{back}\"\n"
                ));
                assert_eq!(palpation(&found), palpation(&position(&code)), "{code} and {back}");
            }
        }
    }
}

/// Left and right exchanged in the exam: exchanged on the map, to 0.01 cm of depth. (The heart is not: it is always on
/// the baby's own left.)
#[test]
fn a_mirrored_exam_has_the_mirrored_map() {
    let mut texts: Vec<String> = ["LOA", "LOT", "LOP", "LSA", "LSP", "LMT", "LFA"]
        .map(|code| format!("weeks = \"36+0\"\n[baby]\nposition = \"{code}\"\n"))
        .into();
    texts.extend(CROSSWISE_BACKS.map(|back| crosswise("left", back)));
    for text in texts {
        let other = text.replace("left", "\u{1}").replace("right", "left").replace('\u{1}', "right");
        let other = other.replace("\"L", "\"R");
        assert_ne!(text, other);
        let (a, b) = (palpation(&posed(&text)), palpation(&posed(&other)));
        for touch in &a.touches {
            let mirror =
                |t: &&Touch| (t.at.0.x + touch.at.0.x).abs() + (t.at.0.y - touch.at.0.y).abs() < 1e-3;
            let twin = b.touches.iter().find(mirror).expect("the mirrored place");
            let (x, y) = (touch.felt.map(|f| f.what), twin.felt.map(|f| f.what));
            assert_eq!(x, y, "{text}{:?}", touch.at);
            if let (Some(x), Some(y)) = (touch.felt, twin.felt) {
                assert!(
                    (x.depth_cm - y.depth_cm).abs() < 0.01,
                    "{text}{:?}: {} {}",
                    touch.at,
                    x.depth_cm,
                    y.depth_cm
                );
            }
        }
    }
}

const CROSSWISE_BACKS: [&str; 4] = ["towards her ribs", "towards her feet", "front", "towards her spine"];

fn crosswise(head: &str, back: &str) -> String {
    let bottom = if head == "left" { "right" } else { "left" };
    format!(
        "weeks = \"36+0\"\n[baby]\nhead = \"{head}, at navel\"\nbreech = \"{bottom}, at navel\"\nback = \"{back}\"\n"
    )
}

/// A crosswise baby: the head on its side and on no other, no pole at the pubic bone, the back up, down, in front or
/// not to be felt.
#[test]
fn crosswise_babies_feel_as_they_should() {
    for (head, side) in [("left", 1.0), ("right", -1.0)] {
        for back in CROSSWISE_BACKS {
            let map = palpation(&posed(&crosswise(head, back)));
            println!("head {head}, back {back}: {}", drawn(&map));
            let heads = felt_at(&map.touches, &[Feel::Head]);
            assert!(
                mean(&heads) * side > 2.5 && heads.iter().all(|x| x * side > -0.5),
                "{head} {back}: {heads:?}"
            );
            assert!(felt_at(&level(&map, Height::AbovePubicBone), &[Feel::Head]).is_empty(), "{head} {back}");
            let heights = |what: Feel| -> Vec<f32> {
                map.touches
                    .iter()
                    .filter(|t| t.felt.is_some_and(|f| f.what == what))
                    .map(|t| t.at.0.y)
                    .collect()
            };
            let (backs, limbs) = (heights(Feel::Back), heights(Feel::Limbs));
            match back {
                "towards her ribs" => assert!(mean(&backs) > mean(&limbs) + 3.0, "{backs:?} {limbs:?}"),
                "towards her feet" => assert!(mean(&backs) < mean(&limbs) - 3.0, "{backs:?} {limbs:?}"),
                "front" => assert!(backs.len() >= 4 && heights(Feel::Front).is_empty(), "{backs:?}"),
                _ => assert!(backs.is_empty() && limbs.len() >= 4, "{backs:?} {limbs:?}"),
            }
        }
    }
}

/// Under each place the map says what the picture's cast shows there: the same part as deep, but for places on an edge.
#[test]
fn the_map_says_what_the_picture_shows() {
    let texts = ["LOA", "ROP", "SP", "LST", "MA", "RFT"]
        .map(|code| format!("weeks = \"39+0\"\n[baby]\nposition = \"{code}\"\n"));
    let (mut met, mut missed) = (0, 0);
    for text in
        texts.iter().cloned().chain([crosswise("left", "front"), crosswise("right", "towards her feet")])
    {
        let pose = posed(&text);
        let cast = pose.cast().expect("a baby");
        for touch in palpation(&pose).touches {
            let at = touch.met_at.0;
            let cells: Vec<Option<(u8, f32)>> = (-1..=1)
                .flat_map(|i| (-1..=1).map(move |j| (i as f32, j as f32)))
                .map(|(i, j)| {
                    let cell = cast.index_at(at.x + i * cast.cell, at.y + j * cast.cell)?;
                    cast.hit(cell).then(|| (cast.part[cell].code(), cast.depth[cell]))
                })
                .collect();
            let part = touch.felt.and_then(|f| f.part).map(|p| p.code());
            assert!(
                cells.iter().any(|c| c.map(|(part, _)| part) == part),
                "{text}{at:?}: {part:?} {cells:?}"
            );
            if let (Some(felt), Some((_, z))) = (touch.felt, cells[4])
                && cells.iter().all(|c| c.is_some_and(|(_, other)| (other - z).abs() < 0.1))
            {
                // Hands meet the mesh, the picture shows it rounded: apart by no more than this in a fold.
                let shown = (at.z - z).max(0.0);
                assert!((felt.depth_cm - shown).abs() < 0.25, "{text}{at:?}: {} {shown}", felt.depth_cm);
            }
            if part.is_some() { met += 1 } else { missed += 1 }
        }
    }
    assert!(met > 150 && missed > 50, "{met} and {missed}");
}

fn heart(code: &str) -> (Listening, Pose) {
    let pose = position(code);
    let heart = palpation(&pose).hearts[0];
    let at = heart.at.0;
    println!(
        "{code:>4}: {:.1} cm to her left, {:.1} cm above the navel",
        at.x,
        f64::from(at.y) - pose.mother.navel_y
    );
    (heart, pose)
}

/// The rows of the published table whose status is `seen`, one by one.
#[test]
fn the_heart_is_heard_where_the_table_says() {
    let seen: Vec<String> = rows("heart-location.csv")
        .into_iter()
        .filter(|row| row.last().is_some_and(|status| status == "seen"))
        .map(|row| row[0].clone())
        .collect();
    let mut held = 0;
    for row in &seen {
        match row.as_str() {
            // On the way from there into the chest, the baby's back or its shoulder is met first.
            "any" => {
                for code in ["OA", "LOA", "ROA", "LOT", "ROT", "SA", "LSA", "RSA", "LST", "RST"] {
                    let (heart, pose) = heart(code);
                    let (_, baby) = pose.posed().next().expect("a baby");
                    let inwards = (baby.body.point(baby.spine.chest.origin) - heart.at.0).normalized();
                    let met = baby.shape.ray(heart.at.0, inwards, 30.0).expect("the baby");
                    let part = baby.shape.nearest(met).1;
                    let side = [BabySide::Left, BabySide::Right].map(Part::upper_arm);
                    assert!(part == Part::TRUNK || side.contains(&part), "{code}: {part:?}");
                    let chest = baby.spine.chest.within(&baby.body).local(met);
                    assert!(chest.z < 0.0, "{code}: {chest:?}");
                    assert!(heart.through == Through::Back && !heart.faint, "{code}: {heart:?}");
                }
            }
            "cephalic" => {
                for (code, _, _) in positions().into_iter().filter(|p| p.2) {
                    let (heart, pose) = heart(&code);
                    assert!(f64::from(heart.at.0.y) < pose.mother.navel_y - 2.0, "{code}: {heart:?}");
                }
            }
            // At the navel is within 2 cm of it, as everywhere in the language.
            "breech" => {
                for (code, _, _) in positions().into_iter().filter(|p| !p.2) {
                    let (heart, pose) = heart(&code);
                    assert!(f64::from(heart.at.0.y) > pose.mother.navel_y - 2.0, "{code}: {heart:?}");
                }
            }
            "LOA" | "ROA" => {
                let (heart, _) = heart(row);
                let side = if row.starts_with('L') { 1.0 } else { -1.0 };
                assert!(heart.at.0.x * side > 3.0, "{row}: {heart:?}");
            }
            "LOP / ROP" => {
                for (code, side) in [("LOP", 1.0), ("ROP", -1.0)] {
                    let (heart, pose) = heart(code);
                    let flank = pose.mother.half_width(heart.at.0.y.into()) as f32;
                    assert!(heart.at.0.x * side > 0.6 * flank && heart.faint, "{code}: {heart:?}");
                }
            }
            "face" => {
                for (code, side, faint) in
                    [("MA", 0.0, false), ("LMA", 1.0, false), ("RMA", -1.0, false), ("LMT", 1.0, false)]
                        .into_iter()
                        .chain([
                            ("RMT", -1.0, false),
                            ("LMP", 1.0, true),
                            ("MP", 0.0, true),
                            ("RMP", -1.0, true),
                        ])
                {
                    // On the side of the limbs, and fainter when the chin is behind.
                    let (heart, _) = heart(code);
                    assert!(heart.through == Through::Chest && heart.faint == faint, "{code}: {heart:?}");
                    assert!(side == 0.0 || heart.at.0.x * side > 3.0, "{code}: {heart:?}");
                }
                assert!(heart("MA").0.at.0.x.abs() < 4.0);
            }
            // A little below the navel, on the side of the back.
            "vertex (French teaching)" => {
                for (code, side) in [("LOA", 1.0), ("LOT", 1.0), ("ROT", -1.0), ("ROA", -1.0)] {
                    let (heart, pose) = heart(code);
                    assert!(heart.at.0.x * side > 3.0, "{code}: {heart:?}");
                    assert!(f64::from(heart.at.0.y) < pose.mother.navel_y, "{code}: {heart:?}");
                }
            }
            _ => panic!("a row without a test: {row}"),
        }
        held += 1;
    }
    assert!(held >= 8, "{held} rows: {seen:?}");
}

/// What is not known is not felt: rounds have poles and a trunk without a turn; before there is a body there is nothing;
/// of twins each place tells which.
#[test]
fn unknown_backs_early_weeks_and_twins() {
    let map = palpation(&posed("weeks = \"36+0\"\n[baby]\nhead = \"above pubic bone\"\n"));
    println!("back not felt: {}", drawn(&map));
    assert_eq!(
        map.felt(Across::Middle, Height::AbovePubicBone).map(|f| (f.what, f.part)),
        Some((Feel::Head, None))
    );
    assert_eq!(map.felt(Across::Middle, Height::Fundus).map(|f| f.what), Some(Feel::Bottom));
    let turned = [Feel::Back, Feel::Front, Feel::Side, Feel::Limbs];
    assert!(felt_at(&map.touches, &turned).is_empty() && map.hearts.is_empty());

    let map = palpation(&posed("weeks = \"20+0\"\n[baby]\nhead = \"above pubic bone\"\n"));
    assert!(map.touches.iter().all(|t| t.felt.is_none()) && map.hearts.is_empty());

    let text = std::fs::read_to_string(path("examples/twins.toml")).expect("the example");
    let map = palpation(&posed(&text));
    let numbers: std::collections::BTreeSet<_> =
        map.touches.iter().filter_map(|t| Some(t.felt?.baby)).collect();
    assert_eq!(numbers.into_iter().collect::<Vec<_>>(), [1, 2]);
    assert_eq!(map.hearts.iter().map(|h| h.baby).collect::<Vec<_>>(), [1, 2]);
}

/// A pose for the hands alone has the same map.
#[test]
fn a_pose_without_lines_has_the_same_map() {
    for code in ["LOA", "SP", "RMT"] {
        let exam = read(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{code}\"\n"));
        let conclusions = [exam::conclude(&exam, 0)];
        assert_eq!(palpation(&pose::for_hands(&exam, &conclusions)), palpation(&position(code)), "{code}");
    }
}
