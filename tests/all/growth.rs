//! The tape over the visits: its curves, its marks, its words; what the visits call for together; and what is refused.

use super::shared::{Dice, path, read, run as program, run_in, said};
use super::words::{random_exam, write};
use handspan::body::pose::{self, Pose};
use handspan::clinic::Thresholds;
use handspan::commands::{Command, Format, Growth, Outcome, Paper, Request, Source, exit, run};
use handspan::exam::Exam;
use handspan::figure::growth::{self, Axes, Lay, Size, TapeKind, TapeMark};
use handspan::figure::pen::pen;
use handspan::figure::scene::{Align, Item, Path, Scene, Step, Text};
use handspan::fonts::Fonts;
use handspan::reckon::curves::{sfh_at, sfh_mean};
use handspan::reckon::ledger::RULES;
use handspan::reckon::{Course, Grade, NotOne, Reckoning, Visit, course, reckon};
use handspan::report::Look;
use handspan::units::{FigurePoint, Gestation};
use handspan::words::Words;
use handspan::write::TextAs;
use lopdf::{Document, Object};

const SIZE: Size = Size { width: 19.0, field: 11.0 };

fn weeks(weeks: u16, days: u16) -> Gestation {
    Gestation::new(weeks, days).expect("weeks")
}

fn tape(at: Gestation, cm: f64) -> TapeMark {
    TapeMark { weeks: at, cm, kind: TapeKind::Read }
}

fn scene(tapes: &[TapeMark], lies: &[Lay<'_>]) -> (Scene, Axes) {
    let what =
        growth::Growth { title: "growth".to_owned(), description: String::new(), tapes, lies, curves: true };
    let (words, fonts) = (Words::load("en").unwrap(), Fonts::load().unwrap());
    let scene = growth::growth(&what, SIZE, &words, &fonts).expect("a figure");
    let left = 0.72;
    (scene, Axes::of(&what, (left, SIZE.width - 0.95), SIZE.field))
}

fn walk<'a>(items: &'a [Item<FigurePoint>], see: &mut dyn FnMut(&'a Item<FigurePoint>)) {
    for item in items {
        see(item);
        if let Item::Group { items, .. } | Item::Clip { items, .. } = item {
            walk(items, see);
        }
    }
}

/// The marks of a group.
fn of_group<'a>(scene: &'a Scene, wanted: &str) -> &'a [Item<FigurePoint>] {
    let mut found: Option<&[Item<FigurePoint>]> = None;
    walk(&scene.items, &mut |item| {
        if let Item::Group { name, items, .. } = item
            && name == wanted
        {
            assert!(found.is_none(), "{wanted} is there twice");
            found = Some(items);
        }
    });
    found.unwrap_or_else(|| panic!("there is no {wanted}"))
}

/// The points of all lines and areas in a group.
fn points(items: &[Item<FigurePoint>]) -> Vec<FigurePoint> {
    let mut out = vec![];
    walk(items, &mut |item| {
        if let Item::Fill { path, .. } | Item::Stroke { path, .. } = item {
            out.extend(ends(path));
        }
    });
    out
}

fn ends(path: &Path<FigurePoint>) -> Vec<FigurePoint> {
    path.iter()
        .filter_map(|step| match step {
            Step::Move(p) | Step::Line(p) | Step::Curve(_, _, p) => Some(*p),
            Step::Close => None,
        })
        .collect()
}

fn middle(points: &[FigurePoint]) -> (f32, f32) {
    let over = |of: fn(&FigurePoint) -> f32| {
        let (low, high) =
            points.iter().map(of).fold((f32::MAX, f32::MIN), |(low, high), v| (low.min(v), high.max(v)));
        (low + high) * 0.5
    };
    (over(|p| p.x), over(|p| p.y))
}

/// Centimetres of tape at a point of the field.
fn cm_at(axes: &Axes, y: f32) -> f64 {
    let share = f64::from((y - axes.bottom) / (axes.top - axes.bottom));
    f64::from(axes.lowest) + share * f64::from(axes.highest - axes.lowest)
}

fn weeks_at(axes: &Axes, x: f32) -> f64 {
    let share = f64::from((x - axes.left) / (axes.right - axes.left));
    f64::from(axes.first_week) + share * f64::from(axes.last_week - axes.first_week)
}

#[test]
fn the_curves_stand_where_the_printed_table_has_them() {
    let (scene, axes) = scene(&[tape(weeks(30, 0), 29.0)], &[]);
    // Columns of the table: weeks, 3, 5, 10, 50, 90, 95, 97.
    let columns = [(3, 1), (10, 3), (50, 4), (90, 5), (97, 7)];
    let mut held = 0;
    for (centile, column) in columns {
        let curve = points(of_group(&scene, &format!("curve-p{centile}")));
        for row in super::shared::rows("sfh-centiles.csv") {
            let week: f64 = row[0].parse().expect("weeks");
            let printed: f64 = row[column].parse().expect("cm");
            let near = |p: &&FigurePoint| (weeks_at(&axes, p.x) - week).abs() < 0.01;
            let point = curve.iter().find(near).unwrap_or_else(|| panic!("P{centile} at {week}"));
            let drawn = cm_at(&axes, point.y);
            let misprint = (week, column) == (42.0, 3);
            assert!((drawn - printed).abs() < 0.1 || misprint, "P{centile} at {week}: {drawn} {printed}");
            held += 1;
        }
        assert!(
            (weeks_at(&axes, curve.last().expect("its end").x) - weeks(42, 6).exact_weeks()).abs() < 0.01
        );
    }
    assert_eq!(held, 5 * 27);
}

#[test]
fn a_tape_on_the_mean_lies_on_the_middle_curve() {
    for days in (16 * 7..=42 * 7 + 6).step_by(5) {
        let at = Gestation::from_days(days);
        let (scene, axes) = scene(&[tape(at, sfh_mean(at))], &[]);
        let (x, y) = middle(&points(of_group(&scene, &format!("tape-{at}"))));
        assert!((weeks_at(&axes, x) - at.exact_weeks()).abs() < 0.01, "{at}");
        let curve = points(of_group(&scene, "curve-p50"));
        let (a, b) = curve
            .windows(2)
            .map(|pair| (pair[0], pair[1]))
            .find(|(a, b)| a.x - 1e-3 <= x && x <= b.x + 1e-3)
            .expect("a part of the curve over it");
        let on_curve = a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x);
        assert!((on_curve - y).abs() < 0.01, "{at}: {on_curve} {y}");
        assert!((cm_at(&axes, y) - sfh_at(at, 0.0)).abs() < 0.01, "{at}");
    }
}

/// The box of a text, cm.
fn bounds(text: &Text<FigurePoint>, fonts: &Fonts) -> [f32; 4] {
    let wide = fonts.measure(text.face, &text.text, text.size).expect("a width");
    let left = match text.align {
        Align::Start => text.at.x,
        Align::Middle => text.at.x - wide * 0.5,
        Align::End => text.at.x - wide,
    };
    [left, text.at.y, left + wide, text.at.y + text.size * 0.66]
}

/// No words on words, and none outside the figure.
fn nothing_overlaps(scene: &Scene) -> usize {
    let fonts = Fonts::load().expect("the faces");
    let mut texts = vec![];
    walk(&scene.items, &mut |item| {
        if let Item::Text(text) = item {
            texts.push((text.text.clone(), bounds(text, &fonts)));
        }
    });
    for (i, (one, a)) in texts.iter().enumerate() {
        let frame = &scene.frame;
        let inside =
            a[0] > frame.left - 0.02 && a[2] < frame.right + 0.02 && a[1] > frame.bottom && a[3] < frame.top;
        assert!(inside, "`{one}` reaches out of the figure: {a:?} {frame:?}");
        for (other, b) in &texts[i + 1..] {
            let apart = a[2] <= b[0] || b[2] <= a[0] || a[3] <= b[1] || b[3] <= a[1];
            assert!(apart, "`{one}` {a:?} lies on `{other}` {b:?}");
        }
    }
    texts.len()
}

fn posed(text: &str) -> (Gestation, Pose) {
    let exam = read(text);
    let conclusions: Vec<_> =
        (0..exam.babies.len()).map(|index| handspan::exam::conclude(&exam, index)).collect();
    (exam.weeks.expect("weeks"), pose::from_exam(&exam, &conclusions))
}

#[test]
fn no_words_lie_on_others_whatever_the_visits() {
    // Many at once, at both ends of the field, and many that are not read.
    for start in [12, 20, 31] {
        for count in [2_u16, 5, 14] {
            let visits: Vec<String> = (0..count)
                .map(|n| format!("weeks = \"{}+{}\"\n[baby]\nposition = \"LOA\"\n", start + n, n % 7))
                .collect();
            let poses: Vec<(Gestation, Pose)> = visits.iter().map(|text| posed(text)).collect();
            let strokes: Vec<_> = poses.iter().map(|(_, pose)| pen(pose)).collect();
            let lies: Vec<Lay<'_>> = poses
                .iter()
                .zip(&strokes)
                .map(|((weeks, pose), strokes)| {
                    let words = vec!["bottom down".to_owned()];
                    Lay { weeks: *weeks, words, pose, strokes }
                })
                .collect();
            for not_read in [false, true] {
                let mark = |(weeks, _): &(Gestation, Pose)| TapeMark {
                    weeks: *weeks,
                    cm: 33.0,
                    kind: if not_read {
                        TapeKind::NotRead("33 cm: BMI 35 or more, fibroids, much water, twins".to_owned())
                    } else {
                        TapeKind::Earlier
                    },
                };
                let tapes: Vec<TapeMark> = poses.iter().map(mark).collect();
                let (scene, _) = scene(&tapes, &lies);
                assert!(nothing_overlaps(&scene) > 25 + 2 * usize::from(count));
            }
        }
    }
}

#[test]
fn the_field_reaches_as_far_as_the_visits() {
    let (_, axes) = scene(&[tape(weeks(30, 0), 29.0)], &[]);
    assert_eq!((axes.first_week, axes.last_week, axes.lowest, axes.highest), (16, 43, 10, 46));
    let (scene, axes) = scene(&[tape(weeks(12, 3), 9.0), tape(weeks(44, 6), 47.5)], &[]);
    assert_eq!((axes.first_week, axes.last_week, axes.lowest, axes.highest), (12, 45, 9, 48));
    for at in ["12+3", "44+6"] {
        let (x, y) = middle(&points(of_group(&scene, &format!("tape-{at}"))));
        assert!(axes.left < x && x < axes.right && axes.bottom <= y && y < axes.top, "{at}");
    }
    nothing_overlaps(&scene);
}

#[test]
fn a_tape_that_is_not_read_stands_under_the_curves_and_joins_nothing() {
    let unread = TapeMark {
        kind: TapeKind::NotRead("31 cm: not longitudinal".to_owned()),
        ..tape(weeks(34, 0), 31.0)
    };
    let read = [tape(weeks(30, 0), 29.0), tape(weeks(32, 0), 31.0), tape(weeks(36, 0), 34.0)];
    let (joined, _) = scene(&read, &[]);
    assert_eq!(points(of_group(&joined, "joins")).len(), 4);
    let [a, b, c] = read;
    let (parted, axes) = scene(&[a, b, unread, c], &[]);
    // Only 30 to 32: between 32 and 36 lies a tape that says nothing.
    let joins = points(of_group(&parted, "joins"));
    assert_eq!(joins.len(), 2);
    assert!(joins.iter().all(|p| weeks_at(&axes, p.x) < 32.01));
    let (_, y) = middle(&points(of_group(&parted, "tape-34+0")));
    assert!(y < axes.bottom);
}

#[test]
fn mirrored_findings_give_mirrored_drawings() {
    let text = "weeks = \"38+0\"\n[baby]\nhead = \"above pubic bone\"\nback = \"left front\"\nbreech = \"fundus\"\nlimbs = \"right, above navel\"\nheart = \"left, below navel\"\n";
    let turned = text.replace("left", "@").replace("right", "left").replace('@', "right");
    let of = |text: &str| {
        let (weeks, pose) = posed(text);
        let strokes = pen(&pose);
        let lay = Lay { weeks, words: vec![], pose: &pose, strokes: &strokes };
        let (scene, axes) = scene(&[], &[lay]);
        let middle_x = axes.x(weeks.exact_weeks());
        let heart = middle(&points(of_group(&scene, "visit-1-heart-1"))).0 - middle_x;
        let baby = middle(&points(of_group(&scene, "visit-1-baby"))).0 - middle_x;
        (heart, baby)
    };
    let ((heart, baby), (other_heart, other_baby)) = (of(text), of(&turned));
    // Her left is at the right.
    assert!(heart > 0.2, "{heart}");
    assert!((heart + other_heart).abs() < 0.01, "{heart} {other_heart}");
    assert!((baby + other_baby).abs() < 0.03, "{baby} {other_baby}");
}

fn reckoned(texts: &[&str]) -> Vec<(Exam, Reckoning)> {
    texts
        .iter()
        .map(|text| {
            let exam = read(text);
            let reckoning = reckon(&exam, &Thresholds::default());
            (exam, reckoning)
        })
        .collect()
}

fn of_visits(texts: &[&str]) -> Result<Course, NotOne> {
    let all = reckoned(texts);
    let visits: Vec<Visit<'_>> = all.iter().map(|(exam, reckoning)| Visit { exam, reckoning }).collect();
    course(&visits)
}

fn ids(texts: &[&str]) -> Vec<&'static str> {
    of_visits(texts).expect("one pregnancy").remarks.iter().map(|remark| remark.id).collect()
}

fn visit(weeks: &str, tape: &str, rest: &str) -> String {
    let tape = if tape.is_empty() { String::new() } else { format!("fundal-height = \"{tape} cm\"\n") };
    let (mother, baby) = rest.split_once('|').unwrap_or(("", rest));
    format!("weeks = \"{weeks}\"\n[mother]\n{tape}{mother}\n[baby]\n{baby}\n")
}

fn ids_of(visits: &[(&str, &str, &str)]) -> Vec<&'static str> {
    let texts: Vec<String> = visits.iter().map(|(weeks, tape, rest)| visit(weeks, tape, rest)).collect();
    ids(&texts.iter().map(String::as_str).collect::<Vec<_>>())
}

#[test]
fn three_equal_tapes_and_a_falling_one_over_the_visits() {
    let static_ = [("30+0", "29", ""), ("32+0", "29", ""), ("34+0", "29", "")];
    assert_eq!(ids_of(&static_), ["tape-static"]);
    assert_eq!(ids_of(&[("30+0", "29", ""), ("32+0", "30", ""), ("34+0", "28.5", "")]), ["tape-falling"]);
    // Fit tapes 14 days or more apart that fall by 1.0 or more in z, neither all equal nor lower in cm: three call for a scan,
    // two to measure again. Before that rule nothing stood here.
    let through = [("30+0", "29", ""), ("32+0", "29", ""), ("34+0", "30", "")];
    assert_eq!(ids_of(&through), ["tape-through-centiles"]);
    assert_eq!(ids_of(&static_[..2]), ["tape-lower-in-z"]);
    // Two babies, a tape that is not fit, and visits before 18 weeks make no series.
    let twins = "\n[[baby]]\n[[baby]]";
    let two = format!("weeks = \"34+0\"\n[mother]\nfundal-height = \"29 cm\"\n{twins}\n");
    let one = visit("30+0", "29", "");
    let other = visit("32+0", "29", "");
    assert_eq!(ids(&[&one, &other, &two]), ["visits-differ-in-babies"]);
    // The two that are fit are lower in z all the same.
    let unfit = ("34+0", "29", "lumps = \"left, at navel\"|");
    assert_eq!(ids_of(&[static_[0], static_[1], unfit]), ["tape-lower-in-z"]);
    assert_eq!(ids_of(&[("16+0", "17", ""), ("17+0", "17", ""), ("18+0", "17", "")]), [""; 0]);
    // A tape in between that is not read is passed over.
    let across = ("33+0", "31", "head = \"left flank\"");
    assert_eq!(ids_of(&[static_[0], static_[1], across, static_[2]]), ["tape-static"]);
}

#[test]
fn a_tape_noted_again_at_a_later_visit_counts_once() {
    // 32+0 is the visit of 32+2, noted by whole weeks.
    let noted = "earlier-tapes = [\"30+0 29 cm\", \"32+0 29 cm\"]|";
    let two = [("30+0", "29", ""), ("32+2", "29", ""), ("34+0", "30", noted)];
    // The tape of 32+2 is less than 14 days before the last, and passed over; counted again at 32+0 it would be a third one,
    // and call for a scan. Two that fall by 1.0 or more in z are measured again: before that rule nothing stood here.
    assert_eq!(ids_of(&two), ["tape-lower-in-z"]);
    let texts: Vec<String> = two.iter().map(|(weeks, tape, rest)| visit(weeks, tape, rest)).collect();
    let texts: Vec<&str> = texts.iter().map(String::as_str).collect();
    let course = of_visits(&texts).expect("one pregnancy");
    let tapes: Vec<(String, f64, bool)> =
        course.tapes.iter().map(|tape| (tape.at.to_string(), tape.cm, tape.earlier)).collect();
    let expected = [("30+0", 29.0, false), ("32+2", 29.0, false), ("34+0", 30.0, false)];
    assert_eq!(tapes, expected.map(|(at, cm, earlier)| (at.to_owned(), cm, earlier)));
    // One that no visit tells of counts.
    let noted = "earlier-tapes = [\"28+0 30 cm\"]|";
    assert_eq!(ids_of(&[("32+0", "30", ""), ("34+0", "30", noted)]), ["tape-static"]);
    // Twice on one day with one result is one tape.
    assert_eq!(ids_of(&[("32+0", "30", ""), ("32+0", "30", "back = \"left\""), ("34+0", "30", "")]), [""; 0]);
    // What lasts is held against tapes that were noted, too.
    let fibroids = "tape-unfit = \"fibroids\"\nearlier-tapes = [\"28+0 30 cm\"]|";
    let text = [visit("32+0", "30", ""), visit("34+0", "30", fibroids)];
    let course = of_visits(&[&text[0], &text[1]]).expect("one pregnancy");
    let read: Vec<bool> = course.tapes.iter().map(|tape| tape.standard.is_some()).collect();
    assert_eq!(read, [false, true, false]);
}

#[test]
fn a_lie_that_changes_is_spoken_of_from_37_weeks() {
    let down = "head = \"above pubic bone\"";
    let up = "breech = \"above pubic bone\"";
    let across = "head = \"left flank\"\nbreech = \"right flank\"";
    let slant = "head = \"right iliac fossa\"";
    let cases: &[(&[(&str, &str)], bool)] = &[
        (&[("36+0", down), ("37+0", up)], true),
        (&[("36+0", up), ("37+0", down)], true),
        (&[("36+0", up), ("36+6", down)], false),
        (&[("28+0", up), ("34+0", down), ("38+0", down)], false),
        (&[("37+0", down), ("38+0", across)], true),
        (&[("37+0", slant), ("38+0", across)], true),
        (&[("37+0", across), ("38+0", across)], false),
        (&[("38+0", down), ("37+0", up), ("39+0", down)], true),
        // A visit that does not tell is passed over.
        (&[("36+0", up), ("37+0", "back = \"could not tell (thick wall)\""), ("38+0", down)], true),
        (&[("36+0", up), ("38+0", "heart-rate = 140")], false),
        // Which end is down is not known once: that is no change.
        (&[("37+0", "lie = \"longitudinal\""), ("38+0", down)], false),
        (&[("37+0", "lie = \"longitudinal\""), ("38+0", across)], true),
    ];
    for (visits, changes) in cases {
        let visits: Vec<(&str, &str, &str)> =
            visits.iter().map(|(weeks, baby)| (*weeks, "", *baby)).collect();
        let expected: &[&str] = if *changes { &["lie-changing"] } else { &[] };
        assert_eq!(ids_of(&visits), expected, "{visits:?}");
    }
    let (a, b) = (visit("37+0", "", up), visit("38+3", "", across));
    let course = of_visits(&[&b, &a]).expect("one pregnancy");
    let text = course.remarks[0].text(&Words::load("en").unwrap()).unwrap();
    // In the words of the chart: who reads it examined.
    let said = "The baby was recorded as breech at 37+0 and as transverse at 38+3. Feel again at each visit";
    assert!(text.starts_with(said), "{text}");
}

#[test]
fn visits_that_are_not_of_one_pregnancy_are_refused() {
    let dated = |due: &str, visit: &str| {
        format!("due = {due}\nvisit = {visit}\n[mother]\nfundal-height = \"30 cm\"\n")
    };
    let (a, b) = (dated("2026-09-20", "2026-07-01"), dated("2026-09-27", "2026-08-01"));
    let course = of_visits(&[&a, &b]).expect("seven days apart are one pregnancy");
    assert_eq!(course.due_apart, 7);
    let c = dated("2026-09-28", "2026-08-01");
    assert!(matches!(of_visits(&[&c, &a]), Err(NotOne::DueApart([(1, _), (0, _)]))));
    // A third between them does not hide the other two.
    assert!(matches!(of_visits(&[&a, &b, &c]), Err(NotOne::DueApart([(0, _), (2, _)]))));
    assert!(matches!(
        of_visits(&[&visit("30+0", "29", ""), "[baby]\nheart-rate = 140\n"]),
        Err(NotOne::NoWeeks(1))
    ));
    let (x, y) = (visit("30+0", "29", ""), visit("30+0", "29.5", ""));
    assert!(matches!(of_visits(&[&x, &y]), Err(NotOne::TapesApart([0, 1], _, _))));
    let noted = visit("34+0", "33", "earlier-tapes = \"30+0 28 cm\"|");
    assert!(matches!(of_visits(&[&x, &noted]), Err(NotOne::TapesApart([0, 1], _, _))));
}

fn sheet(visits: &[(&str, &str)], format: Format, paper: Paper) -> Outcome {
    quiet_sheet(visits, format, paper, &[])
}

/// The sheet of some of the examples.
pub fn example_sheet(format: Format, text_as: TextAs) -> Vec<u8> {
    let visits = EXAMPLES.map(|name| Source::new(name, example(name))).into();
    let mut outcome =
        run(&Request { command: Command::Growth(wanted(visits, format, text_as)), look: Look::Plain });
    assert_eq!((outcome.code, outcome.pages.len()), (exit::DONE, 1), "{}", outcome.notes);
    outcome.pages.remove(0)
}

fn wanted(visits: Vec<Source>, format: Format, text_as: TextAs) -> Growth {
    Growth {
        visits,
        format,
        paper: Paper::A4,
        lang: "en".to_owned(),
        draft: handspan::commands::Draft::Refused,
        clinic: None,
        quiet: vec![],
        width: None,
        text_as,
    }
}

fn quiet_sheet(visits: &[(&str, &str)], format: Format, paper: Paper, quiet: &[String]) -> Outcome {
    let visits = visits.iter().map(|(name, text)| Source::new(*name, *text)).collect();
    let growth = Growth { paper, quiet: quiet.to_vec(), ..wanted(visits, format, TextAs::Text) };
    run(&Request { command: Command::Growth(growth), look: Look::Plain })
}

/// The words of an SVG, line by line, without marks.
fn svg_words(outcome: &Outcome) -> String {
    let svg = String::from_utf8(outcome.pages[0].clone()).expect("SVG is text");
    let mut words = String::new();
    for piece in svg.split("<text").skip(1) {
        let inside =
            piece.split_once('>').map_or("", |(_, rest)| rest).split("</text>").next().unwrap_or_default();
        for part in inside.split('<').map(|part| part.split_once('>').map_or(part, |(_, rest)| rest)) {
            words.push_str(part);
        }
        words.push(' ');
    }
    words.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn example(name: &str) -> String {
    std::fs::read_to_string(path(&format!("examples/growth/{name}-weeks.toml"))).expect("an example")
}

const EXAMPLES: [&str; 5] = ["28", "31", "34", "36", "38"];

#[test]
fn the_example_says_what_was_found() {
    let texts = EXAMPLES.map(example);
    let visits: Vec<(&str, &str)> =
        EXAMPLES.iter().zip(&texts).map(|(name, text)| (*name, text.as_str())).collect();
    let outcome = sheet(&visits, Format::Svg, Paper::A4);
    assert_eq!((outcome.code, outcome.notes.as_str()), (exit::DONE, ""));
    let words = svg_words(&outcome);
    for said in [
        "5 visits, from 28+0 to 38+0 weeks. Due 2026-09-20.",
        "31 cm: not longitudinal",
        "28+0 (2026-06-28) 27 cm 1 cm below weeks, inside the limit of 2 cm z -0.40, centile 35 Breech presentation, back to her right – 146",
        "34+0 (2026-08-09) 31 cm – not read: not longitudinal Oblique lie, head low on her left, back anterior – 142",
        "38+0 (2026-09-06) 36 cm 2 cm below weeks, inside the limit of 2 cm z -0.24, centile 41 Cephalic presentation, back to her left, anterior: left occipito-anterior (LOA) 2/5 palpable 142",
        "Noted later as earlier tapes: 23.5 cm at 24+1 (z -0.25, centile 40).",
        "In each drawing her left is at the right.",
        "That rules nothing out.",
        "A tape that follows a curve rules nothing out.",
        "sides are the mother's",
        "P3 P10 P50 P90 P97",
    ] {
        assert!(words.contains(said), "{said}\n{words}");
    }
    for text in &texts {
        assert!(text.starts_with("# ") && text.contains("\n# For a"), "{text}");
    }
}

#[test]
fn the_order_of_the_files_changes_nothing() {
    let texts = EXAMPLES.map(example);
    let of = |order: [usize; 5], format| {
        let visits: Vec<(&str, &str)> = order.iter().map(|&i| (EXAMPLES[i], texts[i].as_str())).collect();
        sheet(&visits, format, Paper::Letter).pages
    };
    for format in [Format::Svg, Format::Png, Format::Pdf] {
        let once = of([0, 1, 2, 3, 4], format);
        assert_eq!(once.len(), 1);
        for order in [[4, 3, 2, 1, 0], [2, 0, 4, 1, 3]] {
            assert!(once == of(order, format), "{format:?} {order:?}");
        }
    }
}

#[test]
fn what_cannot_wait_comes_first_and_gives_the_code() {
    let alarm = visit("34+0", "33", "movements = \"fewer\"|");
    let calm = visit("36+0", "34", "");
    let outcome = sheet(&[("calm.toml", &calm), ("alarm.toml", &alarm)], Format::Svg, Paper::A4);
    assert_eq!(outcome.code, exit::ACT_NOW);
    assert!(outcome.notes.starts_with("alarm.toml: Act now [movements-fewer]\n"), "{}", outcome.notes);
    assert!(
        svg_words(&outcome).starts_with("At 34+0: ACT NOW [movements-fewer]: She says"),
        "{}",
        svg_words(&outcome)
    );
    let at_odds = visit("36+0", "34", "head = \"fundus\"\nbreech = \"fundus\"");
    let outcome =
        sheet(&[("a.toml", &at_odds), ("b.toml", &visit("34+0", "33", ""))], Format::Svg, Paper::A4);
    assert_eq!(outcome.code, exit::CANNOT_BOTH);
    assert!(svg_words(&outcome).starts_with("At 36+0: Cannot both be right [head-and-bottom-in-one-place]"));
}

/// Whether a sheet is made or refused, what cannot wait at a visit is told, with its code; and it stands on the sheet.
#[test]
fn what_cannot_wait_is_hidden_by_nothing() {
    let mut dice = Dice::new(2_811);
    let (mut alarms, mut sheets) = (0, 0);
    for round in 0..120 {
        let mut exams: Vec<Exam> = (0..2).map(|_| random_exam(&mut dice)).collect();
        if round % 4 > 0 {
            // Of one pregnancy, as far as can be told.
            for (at, exam) in exams.iter_mut().enumerate() {
                exam.babies.truncate(1);
                exam.weeks = Some(weeks(30 + 4 * at as u16, 0));
                exam.mother.earlier_tapes = Default::default();
                exam.read = handspan::exam::say::findings(exam);
            }
        }
        let texts: Vec<String> = exams.iter().map(write).collect();
        let visits = [("first.toml", texts[0].as_str()), ("second.toml", texts[1].as_str())];
        let lesser = RULES.iter().filter(|rule| rule.grade.is_some_and(Grade::is_lesser));
        let quiet: Vec<String> = lesser.map(|rule| rule.id.to_owned()).collect();
        let outcome = quiet_sheet(&visits, Format::Svg, Paper::A4, &quiet);
        let words = if outcome.pages.is_empty() { None } else { Some(svg_words(&outcome)) };
        sheets += usize::from(words.is_some());
        for exam in &exams {
            let standing = reckon(exam, &Thresholds::default()).remarks;
            for remark in standing.iter().filter(|remark| remark.grade == Grade::ActNow) {
                alarms += 1;
                assert_eq!(outcome.code, exit::ACT_NOW, "{}", outcome.notes);
                assert!(outcome.notes.contains(&format!("Act now [{}]", remark.id)), "{}", outcome.notes);
                let shown =
                    words.as_ref().is_none_or(|words| words.contains(&format!("ACT NOW [{}]", remark.id)));
                assert!(shown, "{} is not on the sheet", remark.id);
            }
        }
    }
    assert!(alarms > 60 && sheets > 60, "{alarms} alarms, {sheets} sheets");
}

#[test]
fn much_that_is_said_still_fits_or_is_refused_in_words() {
    // Fourteen visits, all with something that cannot wait, on the shorter paper.
    let texts: Vec<String> = (0..14)
        .map(|n| {
            visit(
                &format!("{}+0", 26 + n),
                "26",
                "movements = \"fewer\"\nreports = [\"bleeding\", \"headache\"]|position = \"left occipito-posterior\"\nhead-above-brim = \"could not tell (she could not lie flat for long enough)\"",
            )
        })
        .collect();
    let names: Vec<String> = (0..14).map(|n| format!("{n}.toml")).collect();
    let visits: Vec<(&str, &str)> =
        names.iter().map(String::as_str).zip(texts.iter().map(String::as_str)).collect();
    for paper in [Paper::A4, Paper::Letter] {
        let outcome = sheet(&visits, Format::Svg, paper);
        assert_eq!(outcome.code, exit::ACT_NOW);
        assert_eq!(outcome.pages.len(), 1, "{}", outcome.notes);
        let words = svg_words(&outcome);
        assert!(words.contains("At 26+0, 27+0, 28+0") && words.contains("could not tell"), "{words}");
    }
}

/// Type and number of kids of every node of the structure, from the top.
fn nodes(doc: &Document, node: &Object, out: &mut Vec<(String, usize)>) {
    let dict = doc.get_dictionary(node.as_reference().expect("a node")).expect("a node");
    let kind = dict.get(b"S").ok().and_then(|s| s.as_name().ok()).unwrap_or(b"root");
    let kids: Vec<Object> = match dict.get(b"K").expect("kids") {
        Object::Array(kids) => kids.clone(),
        Object::Integer(_) => vec![],
        kid => vec![kid.clone()],
    };
    out.push((String::from_utf8_lossy(kind).into_owned(), kids.len()));
    kids.iter().for_each(|kid| nodes(doc, kid, out));
}

#[test]
fn the_table_of_the_pdf_is_a_table() {
    let texts = EXAMPLES.map(example);
    let visits: Vec<(&str, &str)> =
        EXAMPLES.iter().zip(&texts).map(|(name, text)| (*name, text.as_str())).collect();
    let outcome = sheet(&visits, Format::Pdf, Paper::A4);
    let doc = Document::load_mem(&outcome.pages[0]).expect("a PDF");
    let mut all = vec![];
    nodes(&doc, doc.catalog().unwrap().get(b"StructTreeRoot").unwrap(), &mut all);
    let of = |kind: &str| all.iter().filter(|(k, _)| k == kind).map(|(_, n)| *n).collect::<Vec<_>>();
    assert_eq!(of("Table"), [6]);
    assert_eq!(of("TR"), [7; 6]);
    // The first row names the columns, the first cell of each other row its visit.
    assert_eq!((of("TH").len(), of("TD").len()), (7 + 5, 5 * 6));
    assert_eq!((of("H1").len(), of("Figure").len()), (1, 1));
    let alt = doc
        .objects
        .values()
        .filter_map(|object| object.as_dict().ok()?.get(b"Alt").ok())
        .map(pdf_text)
        .next()
        .expect("the figure in words");
    assert!(
        alt.contains("At 28+0: tape 27 cm, z -0.40, centile 35; Breech presentation, back to her right."),
        "{alt}"
    );
}

/// A PDF string, in either writing.
fn pdf_text(object: &Object) -> String {
    let bytes = object.as_str().expect("a string");
    match bytes.strip_prefix(&[0xFE, 0xFF]) {
        None => String::from_utf8_lossy(bytes).into_owned(),
        Some(rest) => {
            let units: Vec<u16> = rest.chunks(2).map(|pair| u16::from_be_bytes([pair[0], pair[1]])).collect();
            String::from_utf16_lossy(&units)
        }
    }
}

#[test]
fn two_babies_have_no_curve() {
    let twins = |weeks: &str| {
        format!(
            "weeks = \"{weeks}\"\n[mother]\nfundal-height = \"36 cm\"\n[[baby]]\nposition = \"LOA\"\n[[baby]]\nposition = \"RSA\"\n"
        )
    };
    let (a, b) = (twins("30+0"), twins("33+0"));
    let outcome = sheet(&[("a", &a), ("b", &b)], Format::Svg, Paper::A4);
    let words = svg_words(&outcome);
    for said in [
        "No curve is drawn: it is made of pregnancies with one baby.",
        "36 cm – not read: twins",
        "1: head down",
        "2: bottom down",
    ] {
        assert!(words.contains(said), "{said}\n{words}");
    }
    assert!(!words.contains("P50") && !words.contains("centile"), "{words}");
}

#[test]
fn the_program_makes_the_sheet_or_says_why_not() {
    let here = tempfile::tempdir().expect("a directory");
    let at = |name: &str| path(&format!("examples/growth/{name}-weeks.toml")).display().to_string();
    let run_here = |arguments: &[&str]| {
        let output = run_in(here.path(), arguments, b"");
        (output.status.code().expect("a code"), said(&output))
    };
    let (first, last, other) =
        (at("28"), at("38"), path("examples/dated-by-scan.toml").display().to_string());
    for (arguments, code, words) in [
        (vec!["growth", &first, &last, "-o", "g.pdf"], 0, "wrote g.pdf: the tape over the visits"),
        (vec!["growth", &first, &last, "-o", "g.pdf"], 2, "--force"),
        (vec!["growth", &first, "-o", "x.svg"], 2, "give two or more of one pregnancy"),
        (vec!["growth", &first, &first, "-o", "x.svg"], 2, "is there twice; name each visit once"),
        (vec!["growth", &first, &other, "-o", "x.svg"], 2, "are these one pregnancy?"),
        (vec!["growth", "--say", "30+0 SFH 29", "--say", "34+0 SFH 33", "-o", "s.png"], 0, "wrote s.png"),
        (
            vec!["growth", "--say", "30+0 SFH 29", "--say", "SFH 33", "-o", "x.png"],
            2,
            "--say 2: its weeks are not known",
        ),
        (
            vec!["growth", "--say", "30+0 SFH 29", "--say", "30+0 SFH 33", "-o", "x.png"],
            2,
            "two tapes on one day, 30+0: 29 cm and 33 cm",
        ),
        (vec!["growth", &first, &last, "-o", "./"], 2, "is a directory; name a file in it"),
        (vec!["growth", &first, &last, "-o", "x.svg", "--quiet-remark", "bleeding"], 2, "cannot be silenced"),
    ] {
        let (got, text) = run_here(&arguments);
        assert_eq!(got, code, "{arguments:?}\n{text}");
        assert!(text.contains(words), "{arguments:?}\n{text}");
    }
    let (_, text) = run_here(&["growth", &first, &other, "-o", "x.svg"]);
    for named in ["dated-by-scan.toml is due on 2026-04-01, ", "28-weeks.toml on 2026-09-20: 172 days apart"]
    {
        assert!(text.contains(named), "{named}\n{text}");
    }
    let mut made: Vec<String> = std::fs::read_dir(here.path())
        .expect("the directory")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect();
    made.sort();
    assert_eq!(made, ["g.pdf", "s.png"]);
    // A remark that is left out is said to be.
    let quiet = program(&[
        "growth",
        "--say",
        "36+0 LSA",
        "--say",
        "38+0 LOA",
        "-o",
        "-",
        "--as",
        "svg",
        "--quiet-remark",
        "lie-changing",
    ]);
    let text = said(&quiet);
    assert!(text.contains("lie-changing") && !text.contains("Feel again at each visit"), "{text}");
}
