//! The pen baby: few smooth strokes, a closed figure, through the landmarks of the model, mirrored for mirrored exams, over all
//! positions.

use super::shared::{path, read};
use handspan::body::baby::PosedBaby;
use handspan::body::cast::Cast;
use handspan::body::form::landmark::Landmark;
use handspan::body::pose::{Mark, Pose, from_exam};
use handspan::body::shape::Piece;
use handspan::exam::{Conclusion, conclude};
use handspan::figure::pen::{Kind, Stroke, pen};
use handspan::figure::scene::{Item, Step};
use handspan::figure::{FigureOptions, Labels, MotherAs, Palette, Style, View, figure};
use handspan::fonts::Fonts;
use handspan::units::{BabySide, FigurePoint, Vec3};
use handspan::words::Words;
use std::collections::VecDeque;

const POSITIONS: [&str; 16] = [
    "OA", "LOA", "LOT", "LOP", "OP", "ROP", "ROT", "ROA", "SA", "LSA", "LST", "LSP", "SP", "RSP", "RST",
    "RSA",
];

fn posed(text: &str) -> Pose {
    let exam = read(text);
    let conclusions: Vec<Conclusion> = (0..exam.babies.len()).map(|index| conclude(&exam, index)).collect();
    from_exam(&exam, &conclusions)
}

/// Exams that lie in every way a pen has to draw.
fn exams() -> Vec<String> {
    let position = |p: &str, more: &str| format!("weeks = \"37+0\"\n[baby]\nposition = \"{p}\"\n{more}");
    let mut all: Vec<String> = POSITIONS.iter().map(|p| position(p, "")).collect();
    all.extend(["LST", "RSA", "LSP"].map(|p| position(p, "legs = \"frank\"\n")));
    all.extend(["front", "towards her ribs", "towards her feet", "towards her spine"].map(|back| {
        format!(
            "weeks = \"38+0\"\n[baby]\nhead = \"right, at navel\"\nbreech = \"left, at navel\"\nback = \"{back}\"\n"
        )
    }));
    all.push(position("LOT", "").replace("37+0", "30+0"));
    all.push(std::fs::read_to_string(path("examples/twins.toml")).expect("an example"));
    all
}

fn strokes_of(strokes: &[Stroke], number: usize) -> Vec<&Stroke> {
    strokes.iter().filter(|s| s.baby == number).collect()
}

fn away(a: FigurePoint, b: FigurePoint) -> f32 {
    libm::hypotf(a.x - b.x, a.y - b.y)
}

fn flat(p: Vec3) -> FigurePoint {
    FigurePoint::new(p.x, p.y)
}

/// How far a place is from the nearest of some strokes, cm.
fn from_strokes<'a>(strokes: impl IntoIterator<Item = &'a Stroke>, p: FigurePoint) -> f32 {
    strokes.into_iter().flat_map(|s| &s.line).map(|q| away(*q, p)).fold(f32::MAX, f32::min)
}

#[test]
fn every_baby_has_12_to_18_strokes_with_its_heart_and_none_is_a_snippet() {
    for text in exams() {
        let pose = posed(&text);
        let strokes = pen(&pose);
        for (number, _) in pose.posed() {
            let own = strokes_of(&strokes, number);
            let drawn = own.iter().filter(|s| !s.deep).count() + 1;
            assert!((12..=18).contains(&drawn), "{text}: {drawn} strokes");
            for stroke in own {
                assert!(stroke.length() >= 1.5, "{text}: {:?} is {} cm", stroke.kind, stroke.length());
            }
            let kinds: Vec<Kind> = strokes_of(&strokes, number).iter().map(|s| s.kind).collect();
            assert!(kinds.is_sorted(), "{text}: strokes are in the order of drawing: {kinds:?}");
            assert!(kinds.contains(&Kind::Head) && kinds.contains(&Kind::Bottom), "{text}: {kinds:?}");
        }
    }
}

#[test]
fn no_stroke_has_a_kink_but_between_fingers_and_toes() {
    for text in exams() {
        for stroke in pen(&posed(&text)) {
            let mut before: Option<(FigurePoint, FigurePoint)> = None;
            let mut at = FigurePoint::default();
            for step in stroke.path(0.05) {
                let Step::Curve(a, b, end) = step else {
                    if let Step::Move(p) = step {
                        at = p;
                    }
                    continue;
                };
                let named = stroke.corners.iter().any(|c| away(*c, at) < 0.1);
                let (out, near) = ((a.x - at.x, a.y - at.y), before);
                if let (Some((from, to)), false) = (near, named) {
                    let came = (to.x - from.x, to.y - from.y);
                    let angle =
                        libm::atan2f(came.0 * out.1 - came.1 * out.0, came.0 * out.0 + came.1 * out.1);
                    assert!(
                        angle.abs() < 40.0_f32.to_radians(),
                        "{text}: {:?} turns by {} at {at:?}",
                        stroke.kind,
                        angle.to_degrees()
                    );
                }
                before = Some((b, end));
                at = end;
            }
        }
    }
}

/// Water poured round the figure does not come in: gaps of a pen are narrower than 1.4 cm.
#[test]
fn the_figure_is_closed() {
    const CELL: f32 = 0.2;
    const WALL: f32 = 0.7;
    for text in exams() {
        let pose = posed(&text);
        let strokes = pen(&pose);
        for (number, baby) in pose.posed() {
            let own = strokes_of(&strokes, number);
            let (w, h) = (300_i32, 300_i32);
            let centre = baby.body.origin;
            let cell = |p: FigurePoint| {
                (((p.x - centre.x) / CELL + 150.0) as i32, ((p.y - centre.y) / CELL + 150.0) as i32)
            };
            let mut wet = vec![false; (w * h) as usize];
            let mut wall = wet.clone();
            let reach = (WALL / CELL) as i32;
            for (i, j) in own.iter().flat_map(|s| &s.line).map(|p| cell(*p)) {
                for dj in -reach..=reach {
                    for di in -reach..=reach {
                        if di * di + dj * dj <= reach * reach
                            && (0..w).contains(&(i + di))
                            && (0..h).contains(&(j + dj))
                        {
                            wall[((j + dj) * w + i + di) as usize] = true;
                        }
                    }
                }
            }
            let mut queue = VecDeque::from([(0, 0)]);
            wet[0] = true;
            while let Some((i, j)) = queue.pop_front() {
                for (a, b) in [(i + 1, j), (i - 1, j), (i, j + 1), (i, j - 1)] {
                    if (0..w).contains(&a) && (0..h).contains(&b) {
                        let k = (b * w + a) as usize;
                        if !wet[k] && !wall[k] {
                            wet[k] = true;
                            queue.push_back((a, b));
                        }
                    }
                }
            }
            let places = [
                baby.head.origin,
                baby.body.point(baby.spine.belly.origin),
                baby.body.point(baby.spine.chest.origin),
            ];
            for place in places {
                let (i, j) = cell(flat(place));
                assert!(!wet[(j * w + i) as usize], "{text}: the figure is open at {place:?}");
            }
        }
    }
}

fn seen(cast: &Cast, baby: &PosedBaby, landmark: Landmark, side: BabySide) -> Option<FigurePoint> {
    let p = baby.shape.landmark(landmark, side);
    cast.sees(p, 0.3).then(|| flat(p))
}

#[test]
fn strokes_pass_where_the_model_has_its_landmarks() {
    let (mut feet, mut backs) = (0, 0);
    for text in exams() {
        let pose = posed(&text);
        let cast = pose.cast().expect("a picture");
        let strokes = pen(&pose);
        for (number, baby) in pose.posed() {
            let own = strokes_of(&strokes, number);
            let near = |kinds: &[Kind], p: FigurePoint| {
                from_strokes(own.iter().copied().filter(|s| kinds.contains(&s.kind)), p)
            };
            // The whole: as far to every side as the model. Fingers and toes are drawn a little larger.
            for (direction, name) in
                [((1.0, 0.0), "left"), ((-1.0, 0.0), "right"), ((0.0, 1.0), "top"), ((0.0, -1.0), "foot")]
            {
                let of_model = baby.shape.reach(Vec3::new(direction.0, direction.1, 0.0));
                let reach = own.iter().flat_map(|s| &s.line).map(|p| p.x * direction.0 + p.y * direction.1);
                let of_pen = reach.fold(f32::MIN, f32::max);
                assert!((of_model - of_pen).abs() < 1.0, "{text}: {name} {of_model} {of_pen}");
            }
            // The head, on the sides where its own outline is seen.
            let head = baby.shape.piece(Piece::Skull);
            for k in 0..12 {
                let (sin, cos) = libm::sincosf(k as f32 * std::f32::consts::TAU / 12.0);
                let far = head.extreme(Vec3::new(cos, sin, 0.0));
                let out = FigurePoint::new(far.x + 0.4 * cos, far.y + 0.4 * sin);
                if !cast.covers(out.x, out.y) {
                    let off = near(&[Kind::Head, Kind::Back, Kind::Ear, Kind::Hand, Kind::Foot], flat(far));
                    assert!(off < 1.0, "{text}: the head's line is {off} cm off at {far:?}");
                }
            }
            for side in BabySide::BOTH {
                let foot = own.iter().copied().filter(|s| s.kind == Kind::Foot && s.side == Some(side));
                if foot.clone().count() > 0
                    && let Some(toe) = seen(&cast, baby, Landmark::Toe, side)
                {
                    let off = from_strokes(foot, toe);
                    assert!(off < 1.0, "{text}: the toes are {off} cm off");
                    feet += 1;
                }
            }
            // Where the back is the outline, its middle lies on the line of the back.
            let back = baby.shape.landmark(Landmark::MidBack, BabySide::Left);
            let out = baby.posture.back;
            if out.z.abs() < 0.2 {
                let off = near(&[Kind::Back], flat(back));
                assert!(off < 1.0, "{text}: the back is {off} cm off ({out:?})");
                backs += 1;
            }
        }
    }
    assert!(feet > 15 && backs > 8, "{feet} feet and {backs} backs were measured");
}

#[test]
fn mirrored_exams_have_mirrored_strokes() {
    let swap = |text: &str| text.replace("left", "L").replace("right", "left").replace('L', "right");
    let twins = std::fs::read_to_string(path("examples/twins.toml")).expect("an example");
    let body = "weeks = \"37+0\"\n[baby]\nhead = \"above pubic bone\"\nbreech = \"fundus\"\n";
    let mut texts = vec![twins];
    texts.extend(
        ["left front", "left lateral", "left, towards her spine"].map(|b| format!("{body}back = \"{b}\"\n")),
    );
    for text in texts {
        let (one, other) = (pen(&posed(&text)), pen(&posed(&swap(&text))));
        assert_eq!(one.len(), other.len(), "{text}");
        for stroke in &one {
            let turned = |line: &[FigurePoint]| -> Vec<FigurePoint> {
                line.iter().map(|p| FigurePoint::new(-p.x, p.y)).collect()
            };
            let twin = other
                .iter()
                .find(|s| s.kind == stroke.kind && s.baby == stroke.baby && s.line == turned(&stroke.line));
            assert!(twin.is_some(), "{text}: {:?} has no mirror image", stroke.kind);
        }
    }
}

#[test]
fn twins_are_told_apart_and_each_has_its_own_heart() {
    let text = std::fs::read_to_string(path("examples/twins.toml")).expect("an example");
    let pose = posed(&text);
    let strokes = pen(&pose);
    // Baby 1 lies on her right, head down; baby 2 on her left, head up.
    for (number, sign, head_up) in [(1, -1.0, false), (2, 1.0, true)] {
        let own = strokes_of(&strokes, number);
        let middle = |kind: Kind| {
            let points: Vec<&FigurePoint> =
                own.iter().filter(|s| s.kind == kind).flat_map(|s| &s.line).collect();
            let n = points.len() as f32;
            FigurePoint::new(
                points.iter().map(|p| p.x).sum::<f32>() / n,
                points.iter().map(|p| p.y).sum::<f32>() / n,
            )
        };
        let (head, bottom) = (middle(Kind::Head), middle(Kind::Bottom));
        assert!(head.x * sign > 2.0, "baby {number}: its head lies at {head:?}");
        assert_eq!(head.y > bottom.y, head_up, "baby {number}");
        let heart = pose.marks.iter().find_map(|m| match m {
            Mark::Heart(n, at) if *n == number => Some(at.0),
            _ => None,
        });
        assert!(heart.expect("a heart").x * sign > 0.0, "baby {number}: its heart is on its own side");
    }
}

#[test]
fn a_picture_to_colour_in_has_the_lines_of_the_pen_and_no_other_on_the_baby() {
    let words = Words::load("en").expect("English");
    let fonts = Fonts::load().expect("faces");
    let options = FigureOptions {
        style: Style::Pen,
        palette: Palette::Neutral,
        mother: MotherAs::Body,
        hands: None,
        view: View::Facing,
        labels: Labels::None,
        mm_per_cm: 3.6,
        type_pt: 12.0,
        title: String::new(),
        description: String::new(),
        captions: vec![],
    };
    let twins = std::fs::read_to_string(path("examples/twins.toml")).expect("an example");
    for text in [exams().remove(1), twins] {
        let pose = posed(&text);
        let cast = pose.cast();
        let scene = figure(&pose, cast.as_ref(), &options, &words, &fonts).expect("a picture");
        let baby = scene.items.iter().find_map(|item| match item {
            Item::Group { name, items, .. } if name == "baby" => Some(items),
            _ => None,
        });
        let drawn: Vec<FigurePoint> = baby
            .expect("a baby")
            .iter()
            .filter_map(|item| match item {
                Item::Stroke { path, .. } => match path.first() {
                    Some(Step::Move(p)) => Some(*p),
                    _ => None,
                },
                _ => None,
            })
            .collect();
        let wanted: Vec<FigurePoint> = pen(&pose).iter().map(|stroke| stroke.line[0]).collect();
        assert_eq!(drawn, wanted, "{text}");
    }
}
