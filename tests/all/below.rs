//! What leads, from below: in all forty drawings, what names the position, what lies opposite and the line between them lie where
//! handbooks say (`tests/published/from-below.csv`), read from the drawing; and from the drawing back to the position.

use super::shared::read;
use handspan::body::pose;
use handspan::body::skull::Leads;
use handspan::figure::below::{Below, LARGER, figure};
use handspan::figure::scene::{Item, Scene, Step};
use handspan::figure::{FRAME, FigureOptions, Labels, Palette, Style, View, colours_from_below};
use handspan::fonts::Fonts;
use handspan::units::FigurePoint;
use handspan::words::Words;

fn drawn(leads: Leads, eighths: u8, open_cm: u8, labels: Labels, style: Style) -> Scene {
    let exam = read("weeks = \"38+0\"\n");
    let pose = pose::from_exam(&exam, &[]);
    let options = FigureOptions {
        style,
        palette: Palette::Neutral,
        view: View::Facing,
        labels,
        mm_per_cm: 2.0,
        type_pt: 10.0,
        title: String::new(),
        description: String::new(),
        captions: vec![],
        mother: handspan::commands::MotherAs::Outline,
        hands: None,
    };
    let (look, baby) = colours_from_below(&pose, &options);
    let (words, fonts) = (Words::load("en").expect("the words"), Fonts::load().expect("the faces"));
    figure(Below { leads, eighths, open_cm }, (&look, baby), &options, &words, &fonts).expect("a figure")
}

/// Every point of the marks in groups of this name.
fn points_of(items: &[Item<FigurePoint>], name: &str, inside: bool, out: &mut Vec<FigurePoint>) {
    for item in items {
        match item {
            Item::Group { name: own, items, .. } => points_of(items, name, inside || own == name, out),
            Item::Clip { items, .. } => points_of(items, name, inside, out),
            Item::Fill { path, .. } | Item::Stroke { path, .. } if inside => {
                out.extend(path.iter().filter_map(|step| match step {
                    Step::Move(p) | Step::Line(p) | Step::Curve(_, _, p) => Some(*p),
                    Step::Close => None,
                }));
            }
            Item::Fill { .. } | Item::Stroke { .. } | Item::Text(_) => {}
        }
    }
}

/// The middle of a named group: cm to her left, and to her front.
fn middle(scene: &Scene, name: &str) -> (f32, f32) {
    let mut points = vec![];
    points_of(&scene.items, name, false, &mut points);
    assert!(!points.is_empty(), "{name} is not drawn");
    let n = points.len() as f32;
    let (x, y) = points.iter().fold((0.0, 0.0), |(x, y), p| (x + p.x, y + p.y));
    (x / n / LARGER, (y / n - 0.5 * (FRAME.bottom + FRAME.top)) / LARGER)
}

/// Eighths of a turn from her front by way of her left.
fn eighth((left, front): (f32, f32)) -> u8 {
    (libm::atan2f(left, front) / std::f32::consts::FRAC_PI_4).round().rem_euclid(8.0) as u8
}

fn named(words: &str) -> u8 {
    ["front", "left front", "left", "left behind", "behind", "right behind", "right", "right front"]
        .iter()
        .position(|known| *known == words)
        .unwrap_or_else(|| panic!("{words}")) as u8
}

/// How a line lies, from the spread of its points.
fn runs(scene: &Scene, name: &str) -> &'static str {
    let mut points = vec![];
    points_of(&scene.items, name, false, &mut points);
    let n = points.len() as f32;
    let (mx, my) = points.iter().fold((0.0, 0.0), |(x, y), p| (x + p.x / n, y + p.y / n));
    let spread = |f: &dyn Fn(f32, f32) -> f32| points.iter().map(|p| f(p.x - mx, p.y - my)).sum::<f32>();
    let (xx, yy, xy) = (spread(&|x, _| x * x), spread(&|_, y| y * y), spread(&|x, y| x * y));
    // The angle of the longer axis from her left.
    let angle = (0.5 * libm::atan2f(2.0 * xy, xx - yy)).to_degrees();
    match angle {
        a if a.abs() < 22.5 => "across",
        a if a.abs() > 67.5 => "front to back",
        a if a > 0.0 => "right oblique",
        _ => "left oblique",
    }
}

fn leads_of(words: &str) -> Leads {
    match words {
        "bent head" => Leads::BentHead,
        "straight head" => Leads::StraightHead,
        "brow" => Leads::Brow,
        "face" => Leads::Face,
        _ => Leads::Bottom,
    }
}

#[test]
fn forty_drawings_lie_as_handbooks_say() {
    let table = include_str!("../published/from-below.csv");
    let mut seen = vec![];
    for row in table.lines().skip(3) {
        let cells: Vec<&str> = row.split(',').collect();
        let [leads, position, near, lies, far, there, line, way, ..] = cells[..] else { panic!("{row}") };
        let found = handspan::exam::Position::from_code(position).expect("a position");
        let handspan::exam::Position::Lengthwise { octant, .. } = found else { panic!("{row}") };
        // Fully open: all of it is drawn.
        let scene = drawn(leads_of(leads), octant.get(), 10, Labels::None, Style::Line);
        let at = middle(&scene, near);
        assert_eq!(eighth(at), named(lies), "{row}: {near} at {at:?}");
        let opposite = middle(&scene, far);
        assert_eq!(eighth(opposite), named(there), "{row}: {far} at {opposite:?}");
        assert_eq!(runs(&scene, line), way, "{row}");
        // And back: from where it lies to the position it was asked for.
        assert_eq!(eighth(at), octant.get(), "{row}");
        seen.push((leads.to_owned(), octant.get()));
    }
    seen.sort();
    seen.dedup();
    assert_eq!(seen.len(), 40);
}

/// Her left is named at the right of the picture, her right at its left; her pubic bone stands above, her coccyx below.
#[test]
fn her_sides_and_her_front_are_where_they_are_named() {
    fn texts(items: &[Item<FigurePoint>], out: &mut Vec<(String, FigurePoint)>) {
        for item in items {
            match item {
                Item::Group { items, .. } | Item::Clip { items, .. } => texts(items, out),
                Item::Text(text) => out.push((text.text.clone(), text.at)),
                Item::Fill { .. } | Item::Stroke { .. } => {}
            }
        }
    }
    for leads in Leads::ALL {
        for eighths in 0..8 {
            for labels in [Labels::None, Labels::All] {
                let mut all = vec![];
                texts(&drawn(leads, eighths, 8, labels, Style::Soft).items, &mut all);
                let at = |word: &str| all.iter().find(|(text, _)| text.contains(word)).map(|(_, at)| *at);
                assert!(
                    at("Her left").expect("a side").x > 10.0 && at("Her right").expect("a side").x < -10.0
                );
                let names = ["pubic", "coccyx", "cervix"].map(|word| at(word).is_some());
                assert_eq!(names, [labels == Labels::All; 3], "{leads:?} {eighths}: {all:?}");
            }
        }
    }
}

/// A cervix that is less open shows less of what leads, and all of it as dashes.
#[test]
fn what_lies_behind_the_wall_is_dashed() {
    fn dashed(items: &[Item<FigurePoint>]) -> usize {
        items
            .iter()
            .map(|item| match item {
                Item::Group { items, .. } | Item::Clip { items, .. } => dashed(items),
                Item::Stroke { dash, .. } => usize::from(dash.is_some()),
                Item::Fill { .. } | Item::Text(_) => 0,
            })
            .sum()
    }
    for leads in Leads::ALL {
        assert!(dashed(&drawn(leads, 1, 5, Labels::None, Style::Soft).items) > 0, "{leads:?}");
        assert_eq!(dashed(&drawn(leads, 1, 10, Labels::None, Style::Soft).items), 0, "{leads:?}");
    }
}
