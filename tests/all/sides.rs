//! Sides from both ends: from the words of an exam to where things are drawn. A wrong side is the worst fault this
//! program can have. Her left is at the viewer's right: x grows to her left in mother space and on the page.

use crate::shared::Dice;
use handspan::body::plan::{Plan, plan};
use handspan::body::pose::{self, Drawn, Mark, Pose};
use handspan::commands::{self, Command, Draw, Format, Labels, Palette, Request, Source, Style, View};
use handspan::exam::{self, Exam};
use handspan::report::Look;
use handspan::units::Vec3;
use handspan::write::TextAs;
use usvg::{Node, Tree};

fn read(text: &str) -> Exam {
    let reading = exam::read("test.toml", text.as_bytes());
    let messages: Vec<&str> = reading.problems.iter().map(|p| p.message.as_str()).collect();
    reading.exam.unwrap_or_else(|| panic!("{text}\n{messages:?}"))
}

fn posed(text: &str) -> Pose {
    let exam = read(text);
    let conclusions: Vec<_> = (0..exam.babies.len()).map(|i| exam::conclude(&exam, i)).collect();
    pose::from_exam(&exam, &conclusions)
}

fn drawn_with(text: &str, view: View, labels: Labels) -> Tree {
    let request = Request {
        command: Command::Draw(Draw {
            exam: Source::new("test.toml", text),
            format: Format::Svg,
            style: Style::Soft,
            palette: Palette::Neutral,
            view,
            labels,
            lang: "en".to_owned(),
            draft: handspan::commands::Draft::Refused,
            width: None,
            text_as: TextAs::Outlines,
        }),
        look: Look::Plain,
    };
    let outcome = commands::run(&request);
    assert_eq!(outcome.pages.len(), 1, "{text}\n{}", outcome.notes);
    Tree::from_data(&outcome.pages[0], &usvg::Options::default()).unwrap()
}

fn drawn(text: &str) -> Tree {
    drawn_with(text, View::Facing, Labels::Few)
}

/// Middle of the marks of a group in the written SVG, counted from the middle of the picture: x to the viewer's right,
/// y up, in shares of the picture's width.
fn middle(tree: &Tree, id: &str) -> Option<(f32, f32)> {
    let node = tree.node_by_id(id)?;
    let b = node.abs_bounding_box();
    let (x, y) = (b.x() + b.width() / 2.0, b.y() + b.height() / 2.0);
    let (w, h) = (tree.size().width(), tree.size().height());
    Some(((x - w / 2.0) / w, (h / 2.0 - y) / w))
}

/// Mean x of all path points of a group, counted as in `middle`.
fn mean_x(tree: &Tree, id: &str) -> f32 {
    fn points(node: &Node, out: &mut Vec<f32>) {
        if let Node::Group(g) = node {
            g.children().iter().for_each(|n| points(n, out));
        }
        if let Node::Path(p) = node {
            for q in p.data().points() {
                let mut q = *q;
                p.abs_transform().map_point(&mut q);
                out.push(q.x);
            }
        }
    }
    let mut xs = vec![];
    points(tree.node_by_id(id).unwrap_or_else(|| panic!("no group {id}")), &mut xs);
    xs.iter().sum::<f32>() / xs.len() as f32 / tree.size().width() - 0.5
}

const PRESENTATIONS: [(&str, &str); 4] = [("", "O"), ("", "S"), ("", "M"), ("", "F")];
/// Suffixes with the side of the denominator: +1 her left.
const TURNS: [(&str, f32); 8] = [
    ("{}A", 0.0),
    ("L{}A", 1.0),
    ("L{}T", 1.0),
    ("L{}P", 1.0),
    ("{}P", 0.0),
    ("R{}P", -1.0),
    ("R{}T", -1.0),
    ("R{}A", -1.0),
];

/// For every named position: the legs lie on the other side than the back, in the written SVG.
#[test]
fn back_and_limbs_are_drawn_on_their_sides() {
    for (_, denominator) in PRESENTATIONS {
        for (turn, side) in TURNS {
            let code = turn.replace("{}", denominator);
            let tree = drawn(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{code}\"\n"));
            // In face and brow positions the denominator lies opposite the back.
            let back = if matches!(denominator, "M" | "F") { -side } else { side };
            let legs = 0.5 * (mean_x(&tree, "left-leg") + mean_x(&tree, "right-leg"));
            let trunk = mean_x(&tree, "trunk");
            if back == 0.0 {
                assert!((legs - trunk).abs() < 0.06, "{code}: legs {legs}, trunk {trunk}");
            } else {
                assert!((legs - trunk) * back < -0.01, "{code}: legs {legs}, trunk {trunk}");
            }
        }
    }
}

/// The face is seen when the back is behind, on the side away from the back; the spine when the back is in front.
#[test]
fn face_and_spine_are_drawn_where_they_are() {
    for (code, face_x, spine) in [
        ("OA", None, true),
        ("LOA", None, true),
        ("ROA", None, true),
        ("LOT", Some(-1.0), false),
        ("ROT", Some(1.0), false),
        ("LOP", Some(-1.0), false),
        ("ROP", Some(1.0), false),
        ("OP", Some(0.0), false),
        ("LST", Some(-1.0), false),
        ("RST", Some(1.0), false),
        ("SP", Some(0.0), false),
    ] {
        let tree = drawn(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{code}\"\n"));
        let (head, face) = (mean_x(&tree, "head"), middle(&tree, "face"));
        match face_x {
            None => assert!(face.is_none_or(|f| f.1 < 0.0), "{code}: a face is seen"),
            Some(side) => {
                let face = face.unwrap_or_else(|| panic!("{code}: no face is seen")).0;
                if side == 0.0 {
                    assert!((face - head).abs() < 0.03, "{code}: face {face}, head {head}");
                } else {
                    assert!((face - head) * side > 0.005, "{code}: face {face}, head {head}");
                }
            }
        }
        assert_eq!(middle(&tree, "back").is_some() && spine_seen(&tree), spine, "{code}: spine");
    }
}

/// The groove of the spine is long; the cleft alone is short.
fn spine_seen(tree: &Tree) -> bool {
    tree.node_by_id("back").is_some_and(|n| n.abs_bounding_box().height() > 0.12 * tree.size().width())
}

/// The heart is drawn on the side where it was heard, at every place; and the sides are named rightly.
#[test]
fn the_heart_and_the_names_of_the_sides() {
    for (side, sign) in [("left", 1.0), ("right", -1.0)] {
        for level in ["above navel", "at navel", "below navel", "above pubic bone", "4 cm below navel"] {
            for across in [side.to_owned(), format!("{side} flank"), format!("{side} 6 cm")] {
                let text =
                    format!("weeks = \"38+0\"\n[baby]\nposition = \"OA\"\nheart = \"{across}, {level}\"\n");
                let x = middle(&drawn(&text), "heart-1").unwrap().0;
                assert!(x * sign > 0.05, "{across}, {level}: drawn at {x}");
            }
        }
    }
    for (view, sign) in [(View::Facing, 1.0), (View::Hers, -1.0)] {
        let text = "weeks = \"38+0\"\n[baby]\nposition = \"LOT\"\nheart = \"left, below navel\"\n";
        let tree = drawn_with(text, view, Labels::All);
        let (left, right) = (middle(&tree, "side-left").unwrap().0, middle(&tree, "side-right").unwrap().0);
        assert!(left * sign > 0.3 && right * sign < -0.3, "{left} {right}");
        assert!(middle(&tree, "heart-1").unwrap().0 * sign > 0.05);
        assert!((mean_x(&tree, "left-leg") - mean_x(&tree, "trunk")) * sign < 0.0);
    }
}

/// `hers` is the facing picture turned by half a turn: x and y both change sign; it is never a mirror image.
#[test]
fn hers_is_a_half_turn() {
    let text = "weeks = \"38+0\"\n[mother]\nfundal-height = \"36 cm\"\n[baby]\nposition = \"LOA\"\n";
    let (facing, hers) =
        (drawn_with(text, View::Facing, Labels::None), drawn_with(text, View::Hers, Labels::None));
    for id in ["head", "trunk", "left-leg", "right-leg", "right-arm", "womb-wall", "pelvis-front"] {
        let (a, b) = (middle(&facing, id).unwrap(), middle(&hers, id).unwrap());
        assert!((a.0 + b.0).abs() < 1e-3 && (a.1 + b.1).abs() < 1e-3, "{id}: {a:?} {b:?}");
    }
}

/// So are the marks: heart, scale of fifths, limbs, lumps, scar, navel, the lines of brim and fundus.
#[test]
fn marks_turn_with_the_picture() {
    let text = "weeks = \"38+0\"\n[mother]\nfundal-height = \"36 cm\"\nlumps = [\"left, above navel\"]\nscars = [\"right lower\"]\n[baby]\nposition = \"LOA\"\nhead-above-brim = \"2/5\"\nheart = \"left, 4 cm below navel\"\nlimbs = [\"right, above navel\"]\nlegs = \"complete\"\n";
    let (facing, hers) =
        (drawn_with(text, View::Facing, Labels::All), drawn_with(text, View::Hers, Labels::All));
    for (id, side) in [
        ("heart-1", 1.0),
        ("fifths", -1.0),
        ("limbs-felt-1-1", -1.0),
        ("lump-1", 1.0),
        ("scar-1", -1.0),
        ("navel", 0.0),
        ("brim", 0.0),
        ("fundus-line", 0.0),
    ] {
        let (a, b) = (middle(&facing, id).unwrap(), middle(&hers, id).unwrap());
        // The heart itself is not turned, so that it stands upright: its middle may lie a little higher.
        let slack = if id == "heart-1" { 6e-3 } else { 1e-3 };
        assert!((a.0 + b.0).abs() < slack && (a.1 + b.1).abs() < slack, "{id}: {a:?} {b:?}");
        assert!(side == 0.0 || a.0 * side > 0.05, "{id}: {a:?}");
    }
}

/// A crosswise baby's head is drawn on the side it was felt, and its back where it was felt.
#[test]
fn crosswise_heads_and_backs() {
    for (head, sign) in [("left", 1.0), ("right", -1.0)] {
        let bottom = if head == "left" { "right" } else { "left" };
        for (back, up) in [("towards her ribs", 1.0), ("towards her feet", -1.0)] {
            let text = format!(
                "weeks = \"36+0\"\n[baby]\nhead = \"{head}, at navel\"\nbreech = \"{bottom}, at navel\"\nback = \"{back}\"\n"
            );
            let tree = drawn(&text);
            assert!(middle(&tree, "head").unwrap().0 * sign > 0.05, "{text}");
            let pose = posed(&text);
            let (_, baby) = pose.posed().next().unwrap();
            assert!(baby.body.z.y * up < -0.9, "{text}");
        }
    }
}

/// A random visit in words, and the same with left and right exchanged. A visit that names no side has no mirror image
/// and is left out.
fn random_visit(random: &mut Dice) -> (String, String) {
    loop {
        let weeks = 26 + random.below(16);
        let mut lines = vec![format!("weeks = \"{weeks}+{}\"", random.below(7)), "[mother]".to_owned()];
        if random.share() < 0.7 {
            lines.push(format!("fundal-height = \"{} cm\"", weeks as i64 - 2 + random.below(5) as i64));
        }
        if random.share() < 0.2 {
            let lump = random.pick(&["left, at navel", "right flank, above navel"]);
            lines.push(format!("lumps = [\"{lump}\"]"));
        }
        lines.push("[baby]".to_owned());
        let (side, other) = *random.pick(&[("left", "right"), ("right", "left")]);
        match random.below(5) {
            0..=2 => {
                let breech = random.once_in(3);
                let (low, high) = if breech { ("breech", "head") } else { ("head", "breech") };
                lines.push(format!("{low} = \"above pubic bone\""));
                lines.push(format!("{high} = \"fundus\""));
                let back = random.pick(&["{} front", "{} lateral", "{}, towards her spine", "{}"]);
                lines.push(format!("back = \"{}\"", back.replace("{}", side)));
                if breech {
                    lines
                        .push(format!("legs = \"{}\"", random.pick(&["frank", "complete", "footling both"])));
                } else {
                    lines.push(format!("head-above-brim = \"{}/5\"", random.below(6)));
                }
            }
            3 => {
                lines.push(format!("head = \"{side}, at navel\""));
                lines.push(format!("breech = \"{other}, at navel\""));
                let back =
                    random.pick(&["towards her ribs", "towards her feet", "front", "towards her spine"]);
                lines.push(format!("back = \"{back}\""));
            }
            _ => {
                lines.push(format!("head = \"{side} iliac fossa\""));
                lines.push(format!("breech = \"{other}, above navel\""));
                lines.push(format!("back = \"{side} front\""));
            }
        }
        lines.push(format!("heart = \"{side}, {} cm below navel\"", 1 + random.below(6)));
        let text = lines.join("\n") + "\n";
        if text.contains("left") || text.contains("right") {
            let mirrored = text.replace("left", "\u{1}").replace("right", "left").replace('\u{1}', "right");
            return (text, mirrored);
        }
    }
}

fn mirrored(p: Vec3) -> Vec3 {
    Vec3::new(-p.x, p.y, p.z)
}

/// Mirrored findings give the mirrored surface, womb and marks, to 1e-4 cm.
#[test]
fn mirrored_findings_give_the_mirrored_picture() {
    let mut random = Dice::new(11);
    for _ in 0..60 {
        let (text, other) = random_visit(&mut random);
        let (a, b) = (posed(&text), posed(&other));
        let pairs: Vec<_> = a.posed().zip(b.posed()).collect();
        assert_eq!(pairs.len(), 1, "{text}");
        for ((_, x), (_, y)) in pairs {
            for _ in 0..60 {
                let p = Vec3::new(
                    x.body.origin.x + 24.0 * (random.share() - 0.5),
                    x.body.origin.y + 40.0 * (random.share() - 0.5),
                    24.0 * (random.share() - 0.5),
                );
                let (d, e) = (x.shape.nearest(p).0, y.shape.nearest(mirrored(p)).0);
                assert!((d - e).abs() < 1e-4, "{text}{p:?}: {d} and {e}");
            }
            assert_eq!(x.curves.len(), y.curves.len());
        }
        for (p, q) in a.marks.iter().zip(&b.marks) {
            let (Mark::Heart(_, p) | Mark::Limb(_, p), Mark::Heart(_, q) | Mark::Limb(_, q)) = (p, q);
            assert!((mirrored(p.0) - q.0).length() < 1e-4, "{text}");
        }
        for (p, q) in a.lumps.iter().zip(&b.lumps) {
            assert!((mirrored(p.0) - q.0).length() < 1e-4, "{text}");
        }
        assert_eq!(a.womb.len(), b.womb.len(), "{text}");
        for p in &a.womb {
            let near = b.womb.iter().map(|q| (q.x + p.x).abs() + (q.y - p.y).abs()).fold(f32::MAX, f32::min);
            assert!(near < 1e-3, "{text}: {p:?} has no twin ({near})");
        }
    }
}

/// Ten thousand random visits: not one back, head or heart on the wrong side.
#[test]
fn no_wrong_side_in_ten_thousand() {
    let mut random = Dice::new(5);
    let mut wrong = vec![];
    for _ in 0..10_000 {
        let (text, _) = random_visit(&mut random);
        let exam = read(&text);
        let conclusion = exam::conclude(&exam, 0);
        let baby = &exam.babies[0];
        let sign = |s: &str| {
            let line = text.lines().find(|l| l.starts_with(s)).unwrap_or_default();
            if line.contains("left") {
                1.0
            } else if line.contains("right") {
                -1.0
            } else {
                0.0
            }
        };
        let Plan::Baby(lying, back) = plan(baby, &conclusion) else {
            panic!("nothing drawn of\n{text}");
        };
        let says = (sign("back"), sign("head "), sign("heart"));
        let lengthwise = lying.up.x == 0.0;
        if lengthwise && back.x * says.0 <= 0.1 {
            wrong.push(format!("back {back:?}\n{text}"));
        }
        if !lengthwise && lying.up.x * says.1 <= 0.1 {
            wrong.push(format!("head {:?}\n{text}", lying.up));
        }
        let mother = handspan::body::mother::MotherShape::new(38.0, None, None, None);
        if let Some(exam::HeartHeard::At(place)) = baby.heart.value()
            && mother.place(place).0.x * says.2 <= 0.5
        {
            wrong.push(format!("heart\n{text}"));
        }
    }
    assert!(wrong.is_empty(), "{} wrong, the first: {}", wrong.len(), wrong[0]);
}

/// Rounds stand where head and bottom were felt, and have no face, limbs or back.
#[test]
fn an_unknown_back_is_not_guessed() {
    let text =
        "weeks = \"36+0\"\n[baby]\nhead = \"above pubic bone\"\nback = \"could not tell (thick wall)\"\n";
    let pose = posed(text);
    let Drawn::Rounds(rounds) = &pose.babies[0].1 else { panic!("a baby is drawn") };
    assert!(rounds.head.0.0.y < rounds.bottom.0.0.y);
    let tree = drawn(text);
    for id in ["face", "left-leg", "right-arm", "back"] {
        assert!(tree.node_by_id(id).is_none(), "{id} is drawn");
    }
    assert!(tree.node_by_id("baby-1-rounds").is_some());
}

/// Of two babies known by their ends alone, each is drawn where its back, else its heart, was found; both ways round.
#[test]
fn twins_known_by_their_poles_are_not_crossed() {
    let other = |side: &str| if side == "left" { "right" } else { "left" };
    for one in ["left", "right"] {
        let two = other(one);
        for (first, second) in [
            (format!("back = \"{one}\""), format!("back = \"{two}\"")),
            (format!("heart = \"{one}, below navel\""), format!("heart = \"{two}, above navel\"")),
            (format!("back = \"{one} front\""), String::new()),
            (String::new(), format!("heart = \"{two}, above navel\"")),
        ] {
            let text = format!(
                "weeks = \"34+0\"\n[[baby]]\nhead = \"above pubic bone\"\nbreech = \"fundus\"\n{first}\n[[baby]]\nhead = \"fundus\"\nbreech = \"above pubic bone\"\n{second}\n"
            );
            let pose = posed(&text);
            let x = |number: usize| {
                let (_, drawn) = pose.babies.iter().find(|(n, _)| *n == number).expect("a baby");
                match drawn {
                    handspan::body::pose::Drawn::Baby(baby) => baby.body.point(baby.spine.belly.origin).x,
                    handspan::body::pose::Drawn::Rounds(rounds) => rounds.head.0.0.x,
                }
            };
            let sign = if one == "left" { 1.0 } else { -1.0 };
            assert!(x(1) * sign > 1.0 && x(2) * sign < -1.0, "{text}: {} {}", x(1), x(2));
            let exam = read(&text);
            assert_eq!(handspan::exam::aside::crossed(&exam), [], "{text}");
        }
    }
}

/// Both babies on one side, or the heart of one over the other, is a remark.
#[test]
fn findings_that_cross_between_twins_are_remarked() {
    let ids = |first: &str, second: &str| {
        let text = format!("weeks = \"34+0\"\n[[baby]]\n{first}\n[[baby]]\n{second}\n");
        let remarks = handspan::reckon::reckon(&read(&text), &Default::default()).remarks;
        remarks
            .into_iter()
            .filter(|r| ["twins-on-one-side", "heart-over-the-other-baby"].contains(&r.id))
            .map(|r| (r.id, r.baby, r.findings))
            .collect::<Vec<_>>()
    };
    let keys = |keys: &[&str]| keys.iter().map(|key| (*key).to_owned()).collect::<Vec<_>>();
    assert_eq!(
        ids("back = \"left\"", "back = \"left front\""),
        [("twins-on-one-side", None, keys(&["baby.1.back", "baby.2.back"]))]
    );
    assert_eq!(
        ids("back = \"right\"\nheart = \"left, below navel\"", "back = \"left\""),
        [("heart-over-the-other-baby", Some(0), keys(&["baby.1.back", "baby.1.heart"]))]
    );
    assert_eq!(ids("back = \"right\"\nheart = \"right, below navel\"", "back = \"left\""), []);
}
