//! The mother as drawn: sides, the navel on the midline, scars over the baby, the height of the womb, and no more strokes than needed.

use handspan::body::mother::MotherShape;
use handspan::body::womb;
use handspan::exam::{Across, Height, Place, Scar};
use handspan::figure::mother::{
    FrontMarks, Handbooks, InFront, MotherAnchor, MotherLook, MotherPalette, MotherStyle, SkinMarks, behind,
    front_bones, in_front,
};
use handspan::figure::scene::{Item, Path, Step};
use handspan::units::{FigurePoint, MotherSide};

const STYLES: [MotherStyle; 2] = [MotherStyle::Soft, MotherStyle::Line];
const WEEKS: [f64; 6] = [12.0, 20.0, 26.0, 32.0, 38.0, 42.0];

/// Every path of the items, with the names of the groups it is in.
fn paths<'a>(items: &'a [Item<FigurePoint>], within: &str, out: &mut Vec<(String, &'a Path<FigurePoint>)>) {
    for item in items {
        match item {
            Item::Group { name, items, .. } => paths(items, &format!("{within}/{name}"), out),
            Item::Fill { path, .. } | Item::Stroke { path, .. } => out.push((within.to_owned(), path)),
            Item::Clip { path, items } => {
                out.push((within.to_owned(), path));
                paths(items, within, out);
            }
            Item::Text(text) => panic!("no text is drawn here: {}", text.text),
        }
    }
}

fn points(path: &Path<FigurePoint>) -> Vec<FigurePoint> {
    path.iter()
        .flat_map(|step| match *step {
            Step::Move(a) | Step::Line(a) => vec![a],
            Step::Curve(a, b, c) => vec![a, b, c],
            Step::Close => vec![],
        })
        .collect()
}

fn group_points(items: &[Item<FigurePoint>], name: &str) -> Vec<FigurePoint> {
    let mut all = Vec::new();
    paths(items, "", &mut all);
    all.iter().filter(|(within, _)| within.contains(name)).flat_map(|(_, path)| points(path)).collect()
}

fn anchor(front: &InFront, which: MotherAnchor) -> FigurePoint {
    front.anchors.iter().find(|(name, _)| *name == which).expect("an anchor").1
}

fn all_marks(shape: &MotherShape) -> FrontMarks {
    let place = |side| Place { across: Some(Across::Side(side)), height: Some(Height::AboveNavel) };
    FrontMarks {
        lumps: [MotherSide::Left, MotherSide::Right].map(|side| shape.place(&place(side))).into(),
        scars: shape.scar(Scar::RightLower),
        handbooks: None,
        fundus_line: true,
        brim_line: true,
    }
}

fn no_baby(_: FigurePoint) -> bool {
    false
}

#[test]
fn every_path_starts_with_a_move_is_finite_and_short() {
    let skin = SkinMarks { linea_nigra: true, striae: true, rash: true };
    for style in STYLES {
        for weeks in WEEKS {
            let shape = MotherShape::new(weeks, None, None, None);
            let outline = womb::outline(&[], shape.fundus_y as f32, weeks);
            let look = MotherLook::of(style);
            let back = behind(&shape, &outline, &skin, &look);
            let front = in_front(&shape, &outline, &all_marks(&shape), &look, &no_baby);
            let mut all = Vec::new();
            paths(&back, "", &mut all);
            paths(&front.items, "", &mut all);
            assert!(all.len() > 40);
            for (name, path) in &all {
                assert!(matches!(path.first(), Some(Step::Move(_))), "{name}");
                let mut run = 0;
                for step in path.iter() {
                    run = if matches!(step, Step::Move(_)) { 0 } else { run + 1 };
                    assert!(run <= 45, "{name}: a part of more than 45 steps");
                }
                assert!(points(path).iter().all(|p| p.x.is_finite() && p.y.is_finite()), "{name}");
                assert!(
                    points(path).iter().all(|p| p.x.abs() < 23.0 && (-18.0..44.0).contains(&p.y)),
                    "{name}"
                );
            }
            let steps: usize = all.iter().map(|(_, path)| path.len()).sum();
            assert!(steps < 1000, "{steps} steps");
        }
    }
}

#[test]
fn marks_are_drawn_on_the_side_where_they_are() {
    let shape = MotherShape::new(36.0, None, None, None);
    let outline = womb::outline(&[], shape.fundus_y as f32, 36.0);
    let look = MotherLook::of(MotherStyle::Line);
    let front = in_front(&shape, &outline, &all_marks(&shape), &look, &no_baby);
    assert!(
        group_points(&front.items, "scar-1").iter().all(|p| p.x < -3.0),
        "an appendix scar is on her right"
    );
    assert!(group_points(&front.items, "lump-1").iter().all(|p| p.x > 2.0), "the first lump is on her left");
    assert!(
        group_points(&front.items, "lump-2").iter().all(|p| p.x < -2.0),
        "the second lump is on her right"
    );
    for (left, right) in [
        (MotherAnchor::FundusLeft, MotherAnchor::FundusRight),
        (MotherAnchor::BrimLeft, MotherAnchor::BrimRight),
        (MotherAnchor::WombLeft, MotherAnchor::WombRight),
        (MotherAnchor::HipBoneLeft, MotherAnchor::HipBoneRight),
        (MotherAnchor::RibsLeft, MotherAnchor::RibsRight),
    ] {
        let (l, r) = (anchor(&front, left), anchor(&front, right));
        assert!(l.x > 4.0 && (l.x + r.x).abs() < 0.05 && (l.y - r.y).abs() < 0.3);
    }
}

#[test]
fn the_navel_is_on_the_midline_and_its_level_stands_alike_on_both_sides_of_a_baby() {
    for style in STYLES {
        let shape = MotherShape::new(38.0, None, None, None);
        let y = shape.navel_y as f32;
        let outline = womb::outline(&[], shape.fundus_y as f32, 38.0);
        let look = MotherLook::of(style);
        let drawn = |baby: &dyn Fn(FigurePoint) -> bool| {
            let front = in_front(&shape, &outline, &FrontMarks::default(), &look, baby);
            let marks = group_points(&front.items, "navel");
            (front, marks)
        };
        let (front, marks) = drawn(&no_baby);
        assert_eq!((anchor(&front, MotherAnchor::Navel).x, anchor(&front, MotherAnchor::Navel).y), (0.0, y));
        assert!(marks.iter().all(|p| p.x.abs() < 1.0 && (p.y - y).abs() < 1.0));
        // Where the baby lies nothing is drawn on it: on a face, a back or a bottom it would be taken for something of the
        // baby. Its level stands beside the womb.
        for baby in [|p: FigurePoint| (-3.0..8.0).contains(&p.x), |p: FigurePoint| (-8.0..3.0).contains(&p.x)]
        {
            let (front, marks) = drawn(&baby);
            assert!(front.anchors.iter().all(|(which, _)| *which != MotherAnchor::Navel));
            let (l, r) =
                (anchor(&front, MotherAnchor::NavelLevelLeft), anchor(&front, MotherAnchor::NavelLevelRight));
            assert!(l.x > 9.0 && (l.x + r.x).abs() < 0.1 && l.y == y && r.y == y);
            let widest = outline.iter().filter(|p| (p.y - y).abs() < 3.0).fold(0.0f32, |m, p| m.max(p.x));
            assert!(
                marks.len() >= 4 && marks.iter().all(|p| p.y == y && p.x.abs() > widest - 0.5),
                "level lines outside the womb"
            );
        }
    }
}

#[test]
fn scars_show_over_the_baby_as_dots_and_beside_it_as_lines() {
    for style in STYLES {
        let shape = MotherShape::new(38.0, None, None, None);
        let look = MotherLook::of(style);
        let baby = |p: FigurePoint| p.x.abs() < 4.0;
        for scar in [Scar::LowTransverse, Scar::Midline, Scar::RightLower, Scar::Keyhole] {
            let lines = shape.scar(scar);
            let marks = FrontMarks { scars: lines.clone(), ..FrontMarks::default() };
            let front = in_front(&shape, &[], &marks, &look, &baby);
            for (i, line) in lines.iter().enumerate() {
                let name = format!("scar-{}", i + 1);
                let all = group_points(&front.items, &name);
                let (low, high) = all.iter().fold((f32::MAX, f32::MIN), |m, p| (m.0.min(p.x), m.1.max(p.x)));
                for end in [line[0], line[line.len() - 1]] {
                    assert!(low - 0.3 <= end.0.x && end.0.x <= high + 0.3, "{scar:?} is drawn to its end");
                }
                let Some(Item::Group { items, .. }) =
                    front.items.iter().find(|item| matches!(item, Item::Group { name: n, .. } if *n == name))
                else {
                    panic!("{name}")
                };
                for item in items {
                    let (path, dotted) = match item {
                        Item::Stroke { path, dash, .. } => (path, dash.is_some()),
                        Item::Fill { path, .. } => (path, false),
                        _ => panic!("a line"),
                    };
                    assert!(
                        dotted || points(path).iter().all(|p| p.x.abs() > 3.4),
                        "{scar:?}: a line over the baby"
                    );
                }
            }
        }
    }
}

#[test]
fn a_womb_is_drawn_whole_only_when_its_top_was_felt() {
    let felt = MotherShape::new(36.0, Some(34.0), None, None);
    let expected = MotherShape::new(36.0, None, None, None);
    for (shape, broken) in [(felt, false), (expected, true)] {
        let outline = womb::outline(&[], shape.fundus_y as f32, 36.0);
        let front =
            in_front(&shape, &outline, &FrontMarks::default(), &MotherLook::of(MotherStyle::Line), &no_baby);
        let wall = front.items.iter().find_map(|item| match item {
            Item::Group { name, items, .. } if name == "womb-wall" => items.first(),
            _ => None,
        });
        let Some(Item::Stroke { dash, .. }) = wall else { panic!("a wall") };
        assert_eq!(dash.is_some(), broken);
    }
}

#[test]
fn the_band_of_the_handbooks_stands_beside_the_womb_on_both_sides() {
    let shape = MotherShape::new(16.0, None, None, None);
    let outline = womb::outline(&[], shape.fundus_y as f32, 16.0);
    let band = Handbooks { low: 2.0, high: 8.0 };
    let marks = FrontMarks { handbooks: Some(band), ..FrontMarks::default() };
    let front = in_front(&shape, &outline, &marks, &MotherLook::of(MotherStyle::Soft), &no_baby);
    let lines = group_points(&front.items, "handbooks");
    assert!(lines.iter().any(|p| p.x > 5.0) && lines.iter().any(|p| p.x < -5.0));
    assert!(lines.iter().all(|p| (1.99..8.01).contains(&p.y)));
    let (l, r) = (anchor(&front, MotherAnchor::HandbooksLeft), anchor(&front, MotherAnchor::HandbooksRight));
    assert!(l.x > 5.0 && l.x == -r.x && l.y == 5.0);
    let womb = anchor(&front, MotherAnchor::Womb);
    assert!(womb.y < shape.fundus_y as f32);
}

#[test]
fn the_fundus_line_is_at_the_fundus_and_dashed_only_when_not_measured() {
    for (tape, dashed) in [(None, true), (Some(33.0), false)] {
        let shape = MotherShape::new(36.0, tape, None, None);
        let marks = FrontMarks { fundus_line: true, ..FrontMarks::default() };
        let front = in_front(&shape, &[], &marks, &MotherLook::of(MotherStyle::Soft), &no_baby);
        let line = front.items.iter().find_map(|item| match item {
            Item::Group { name, items, .. } if name == "fundus-line" => items.first(),
            _ => None,
        });
        let Some(Item::Stroke { path, dash, .. }) = line else { panic!("a line") };
        assert_eq!(dash.is_some(), dashed);
        assert!(points(path).iter().all(|p| (p.y - shape.fundus_y as f32).abs() < 1e-4));
    }
}

#[test]
fn line_style_is_ink_on_white_and_soft_has_no_black() {
    let line = MotherPalette::line();
    assert_eq!(line.skin, line.paper);
    assert_eq!(line.womb, line.paper);
    let shape = MotherShape::new(30.0, None, None, None);
    let outline = womb::outline(&[], shape.fundus_y as f32, 30.0);
    let colours = |style| {
        let mut found = Vec::new();
        collect(&behind(&shape, &outline, &SkinMarks::default(), &MotherLook::of(style)), &mut found);
        found
    };
    // Grey of ink: the channels stay within 12 of one another.
    for c in colours(MotherStyle::Line) {
        assert!(c.r.abs_diff(c.b) <= 12 && c.r.abs_diff(c.g) <= 12);
    }
    for c in colours(MotherStyle::Soft) {
        assert!(c.r > c.b && u16::from(c.r) + u16::from(c.g) + u16::from(c.b) > 150);
    }
}

fn collect(items: &[Item<FigurePoint>], out: &mut Vec<handspan::figure::scene::Colour>) {
    for item in items {
        match item {
            Item::Group { items, .. } | Item::Clip { items, .. } => collect(items, out),
            Item::Fill { colour, .. } | Item::Stroke { colour, .. } => out.push(*colour),
            Item::Text(text) => out.push(text.colour),
        }
    }
}

#[test]
fn the_front_bones_lie_below_the_brim_on_both_sides_alike() {
    let all = points(&front_bones());
    let (low, high) = all.iter().fold((f32::MAX, f32::MIN), |m, p| (m.0.min(p.y), m.1.max(p.y)));
    let (right, left) = all.iter().fold((f32::MAX, f32::MIN), |m, p| (m.0.min(p.x), m.1.max(p.x)));
    assert!((-10.5..-9.0).contains(&low) && (3.0..4.5).contains(&high));
    assert!((left + right).abs() < 1e-4 && left > 8.0);
}

#[test]
fn the_same_body_is_drawn_the_same() {
    let draw = || {
        let shape = MotherShape::new(35.4, Some(33.0), None, None);
        let outline = womb::outline(
            &[FigurePoint::new(1.0, 3.0), FigurePoint::new(-3.0, 9.0), FigurePoint::new(4.0, 18.0)],
            26.0,
            35.4,
        );
        let look = MotherLook::of(MotherStyle::Soft);
        (behind(&shape, &outline, &SkinMarks::default(), &look), outline)
    };
    assert!(draw() == draw());
}
