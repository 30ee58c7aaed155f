//! The stamp for the chart: 40 mm wide, black on white, no line under 0.25 mm, type of 5 points and more.

use crate::shared::{path, read, run, run_in, said};
use handspan::body::pose;
use handspan::exam;
use handspan::figure::scene::{Colour, Item, Role, Text};
use handspan::figure::{self, FigureOptions, Labels, MotherAs, Palette, Style, View};
use handspan::fonts::Fonts;
use handspan::sheet::{Content, SKETCH};
use handspan::units::FigurePoint;
use handspan::words::Words;

const VISITS: [&str; 5] = [
    "weeks = \"37+0\"\n[mother]\nfundal-height = \"35 cm\"\n[baby]\nposition = \"LOA\"\nhead-above-brim = \"2/5\"\nheart = \"left, below navel\"\n",
    "weeks = \"37+0\"\n[baby]\nposition = \"ROP\"\nheart = \"right flank, below navel\"\n",
    "weeks = \"36+0\"\n[mother]\nlumps = [\"left, at navel\"]\n[baby]\nhead = \"left, at navel\"\nbreech = \"right, at navel\"\nback = \"towards her ribs\"\n",
    "weeks = \"36+0\"\n[baby]\nhead = \"above pubic bone\"\nback = \"not felt\"\n",
    "weeks = \"20+0\"\n[mother]\nfundus = \"at navel\"\n[baby]\nheart = \"left, below navel\"\n",
];

fn scene(text: &str, view: View) -> (figure::scene::Scene, f32) {
    let exam = read(text);
    let conclusions: Vec<_> = (0..exam.babies.len()).map(|i| exam::conclude(&exam, i)).collect();
    let pose = pose::from_exam(&exam, &conclusions);
    let (words, fonts) = (Words::load("en").unwrap(), Fonts::load().unwrap());
    let layout = SKETCH.read().unwrap();
    let mm = layout.mm_per_cm(&figure::frame(Style::Sketch), &Content::default(), &words, &fonts).unwrap();
    let options = FigureOptions {
        style: Style::Sketch,
        palette: Palette::Neutral,
        mother: MotherAs::Outline,
        hands: None,
        view,
        labels: Labels::Few,
        mm_per_cm: mm,
        type_pt: 5.6,
        title: String::new(),
        description: String::new(),
        captions: vec!["The legs were not felt: drawn folded.".to_owned()],
    };
    (figure::figure(&pose, pose.cast().as_ref(), &options, &words, &fonts).unwrap(), mm)
}

fn walk<'a>(items: &'a [Item<FigurePoint>], see: &mut dyn FnMut(&'a Item<FigurePoint>)) {
    for item in items {
        see(item);
        if let Item::Group { items, .. } | Item::Clip { items, .. } = item {
            walk(items, see);
        }
    }
}

#[test]
fn every_line_and_letter_outlives_a_copier() {
    const WHITE: Colour = Colour::hex(0xFFFFFF);
    for text in VISITS {
        for view in [View::Facing, View::Hers] {
            let (scene, mm) = scene(text, view);
            let (mut strokes, mut texts) = (0, 0);
            walk(&scene.items, &mut |item| match item {
                Item::Stroke { width, colour, .. } if *colour != WHITE => {
                    strokes += 1;
                    assert!(width * mm >= 0.25, "a line of {} mm", width * mm);
                    assert!(colour.r < 0x30 && colour.g < 0x30 && colour.b < 0x30);
                }
                Item::Fill { colour, .. } => {
                    assert!(*colour == WHITE || colour.r.max(colour.g).max(colour.b) < 0x30, "no tones");
                }
                Item::Text(t) => {
                    texts += 1;
                    assert!(t.size * mm >= 5.0 * 25.4 / 72.0, "{}: {} mm", t.text, t.size * mm);
                }
                Item::Stroke { .. } | Item::Group { .. } | Item::Clip { .. } => {}
            });
            assert!(strokes >= 3 && texts >= 3, "{text}: {strokes} {texts}");
            assert!(((scene.frame.right - scene.frame.left) * mm - 40.0).abs() < 0.01);
        }
    }
}

#[test]
fn its_sides_are_named_on_their_sides() {
    for (view, sign) in [(View::Facing, 1.0), (View::Hers, -1.0)] {
        let (scene, _) = scene(VISITS[0], view);
        let mut sides: Vec<&Text<FigurePoint>> = vec![];
        walk(&scene.items, &mut |item| {
            if let Item::Text(t) = item
                && t.role == Role::Side
            {
                sides.push(t);
            }
        });
        assert_eq!(sides.len(), 2);
        for t in sides {
            let side = if t.text == "Her left" { sign } else { -sign };
            assert!(["Her left", "Her right"].contains(&t.text.as_str()) && t.at.x * side > 0.0, "{t:?}");
        }
    }
}

#[test]
fn the_program_writes_it_forty_mm_wide_and_refuses_what_has_no_room() {
    let dir = tempfile::tempdir().unwrap();
    let exam = path("examples/head-down-left.toml").display().to_string();
    let draw = |more: &[&str]| {
        let mut arguments = vec!["draw", exam.as_str(), "-o", "s.svg", "--force"];
        arguments.extend(more);
        run_in(dir.path(), &arguments, b"")
    };
    assert_eq!(draw(&["--style", "sketch"]).status.code(), Some(0));
    let svg = std::fs::read_to_string(dir.path().join("s.svg")).unwrap();
    assert!(svg.contains("width=\"40mm\"") && svg.contains(">Her left<") && svg.contains(">Her right<"));
    assert!(svg.contains("2/5 palpable above the brim") && svg.contains("id=\"heart-1\""));
    for (more, why) in [
        (["--style", "sketch", "--labels", "numbered"], "a sketch is too small for pointers and numbers"),
        (["--style", "sketch", "--labels", "all"], "a sketch is too small for pointers and numbers"),
        (["--style", "line", "--palette", "3"], "--palette colours the style soft"),
        (["--style", "sketch", "--palette", "3"], "--palette colours the style soft"),
    ] {
        let output = draw(&more);
        assert_eq!(output.status.code(), Some(2), "{more:?}");
        assert!(said(&output).contains(why), "{more:?}: {}", said(&output));
    }
    assert!(said(&run(&["draw", "--help"])).contains("--palette"));
}

/// Of two babies the stamp says which is which, on the side where each lies, in both views.
#[test]
fn two_babies_are_numbered_on_their_sides() {
    let text = "weeks = \"34+0\"\n[[baby]]\nhead = \"right, below navel\"\nbreech = \"right, above navel\"\nback = \"right front\"\n[[baby]]\nhead = \"left, below navel\"\nbreech = \"left, above navel\"\nback = \"left front\"\n";
    for (view, turn) in [(View::Facing, 1.0), (View::Hers, -1.0)] {
        let (scene, _) = scene(text, view);
        let mut found = vec![];
        walk(&scene.items, &mut |item| {
            if let Item::Text(Text { text, at, role: Role::Label, .. }) = item {
                found.push((text.clone(), at.x * turn > 0.0));
            }
        });
        assert!(
            found.contains(&("1".to_owned(), false)) && found.contains(&("2".to_owned(), true)),
            "{found:?}"
        );
    }
    let (one, _) = scene(VISITS[0], View::Facing);
    walk(&one.items, &mut |item| {
        if let Item::Text(Text { text, .. }) = item {
            assert_ne!(text, "1", "one baby has no number");
        }
    });
}
