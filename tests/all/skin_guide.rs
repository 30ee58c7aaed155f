//! The guide for drawing on skin: true size, joins, sides, what is not known, and that it fits.

use super::family_page::{school_grade, syllables};
use super::pages::texts;
use super::shared::{path, read, run_in, said};
use handspan::body::pose::from_exam;
use handspan::commands::{GuideLook, Handed, Length, Paper, skin_sheets};
use handspan::exam::{Conclusion, Exam, conclude};
use handspan::figure::scene::{Colour, Item, Role, Step as Draw};
use handspan::figure::strokes::{Step, Stroke, short_strokes, strokes};
use handspan::fonts::Fonts;
use handspan::sheet::skin::{Grounds, Landmarks, Pattern, pieces, unrolled};
use handspan::sheet::{Element, Sheet, Tag};
use handspan::units::{FigurePoint, PagePoint};
use handspan::words::{Part, Words};
use handspan::write::{pdf, pdf_pages};
use lopdf::Document;
use std::collections::BTreeMap;

const LOA: &str = "weeks = \"38+0\"\n[mother]\nfundal-height = \"36 cm\"\n[baby]\nbreech = \"fundus\"\n\
    back = \"left front\"\nlimbs = \"right, above navel\"\nhead = \"above pubic bone\"\n\
    head-above-brim = \"4/5\"\nheart = \"left, below navel\"\n";
const BREECH: &str = "weeks = \"37+0\"\n[mother]\nnavel = \"22 cm\"\n[baby]\nhead = \"fundus\"\n\
    breech = \"above pubic bone\"\nback = \"right lateral\"\ndescent = \"free\"\nheart = \"right, above navel\"\n";

fn fonts() -> Fonts {
    Fonts::load().unwrap()
}

fn conclusions(exam: &Exam) -> Vec<Conclusion> {
    (0..exam.babies.len()).map(|index| conclude(exam, index)).collect()
}

fn sheets(exam: &Exam, paper: Paper) -> Result<Vec<Sheet>, String> {
    sheets_in("en", exam, paper)
}

fn sheets_in(lang: &str, exam: &Exam, paper: Paper) -> Result<Vec<Sheet>, String> {
    let words = Words::load_for(lang, &[Part::Family, Part::Picture, Part::Guide]).unwrap();
    skin_sheets(exam, &conclusions(exam), GuideLook::on(paper), &words, &fonts())
}

/// The tracing sheets of one baby.
fn traced(text: &str, paper: Paper) -> Vec<Sheet> {
    made(text, paper).split_off(2)
}

/// The side with the numbers.
fn numbers(text: &str) -> Sheet {
    made(text, Paper::A4).swap_remove(1)
}

/// The two sides of one baby, then the tracing sheet.
fn made(text: &str, paper: Paper) -> Vec<Sheet> {
    sheets(&read(text), paper).expect("a guide")
}

fn mirrored(text: &str) -> String {
    text.replace("left", "L").replace("right", "left").replace('L', "right")
}

// ---- a PDF's own units ----

/// A stroked or filled path of a page, in mm from the top left corner: its points, with those along its curves.
type Drawn = Vec<(f64, f64)>;

const MM: f64 = 25.4 / 72.0;

/// Every path of a one-page PDF, the clipping windows apart.
fn paths(sheet: &Sheet) -> (Vec<Drawn>, Vec<Drawn>) {
    let doc = Document::load_mem(&pdf(sheet, &fonts()).unwrap()).unwrap();
    let page = doc.page_iter().next().unwrap();
    let content = lopdf::content::Content::decode(&doc.get_page_content(page)).unwrap();
    let high = f64::from(sheet.height_mm);
    let (mut drawn, mut windows, mut now) = (vec![], vec![], Drawn::new());
    for op in content.operations {
        let n: Vec<f64> =
            op.operands.iter().filter_map(|o| o.as_float().ok().map(|v| f64::from(v) * MM)).collect();
        match op.operator.as_str() {
            "m" | "l" => now.push((n[0], high - n[1])),
            "c" => {
                let a = *now.last().expect("a curve begins somewhere");
                let p = [a, (n[0], high - n[1]), (n[2], high - n[3]), (n[4], high - n[5])];
                for i in 1..=16 {
                    let t = f64::from(i) / 16.0;
                    let b = [
                        (1.0 - t) * (1.0 - t) * (1.0 - t),
                        3.0 * t * (1.0 - t) * (1.0 - t),
                        3.0 * t * t * (1.0 - t),
                        t * t * t,
                    ];
                    let sum = |f: fn(&(f64, f64)) -> f64| (0..4).map(|k| b[k] * f(&p[k])).sum::<f64>();
                    now.push((sum(|p| p.0), sum(|p| p.1)));
                }
            }
            "S" | "s" | "f" | "f*" | "b" | "B" => drawn.push(std::mem::take(&mut now)),
            "n" => windows.push(std::mem::take(&mut now)),
            _ => {}
        }
    }
    (drawn, windows)
}

fn bounds(points: &[(f64, f64)]) -> [f64; 4] {
    points.iter().fold([f64::MAX, f64::MAX, f64::MIN, f64::MIN], |b, p| {
        [b[0].min(p.0), b[1].min(p.1), b[2].max(p.0), b[3].max(p.1)]
    })
}

/// Where the midline meets the upper edge of the pubic bone on a tracing sheet: the foot of its long upright line.
fn origin(drawn: &[Drawn]) -> (f64, f64) {
    let upright: Vec<&Drawn> = drawn
        .iter()
        .filter(|line| line.len() == 2 && (line[0].0 - line[1].0).abs() < 0.01)
        // Where a sheet is cut, 5 mm within the margin, stands another.
        .filter(|line| (line[0].1 - line[1].1).abs() > 150.0 && (line[0].0 - 13.0).abs() > 0.01)
        .collect();
    let foot = |line: &Drawn| if line[0].1 > line[1].1 { line[0] } else { line[1] };
    upright.iter().map(|line| foot(line)).max_by(|a, b| a.1.total_cmp(&b.1)).expect("a midline")
}

#[test]
fn the_bar_is_five_centimetres_on_every_sheet() {
    for paper in [Paper::A4, Paper::Letter, Paper::A3] {
        for sheet in &traced(LOA, paper) {
            let (drawn, _) = paths(sheet);
            let bars: Vec<f64> = drawn
                .iter()
                .filter(|line| line.len() == 2 && (line[0].1 - line[1].1).abs() < 0.01)
                .filter(|line| line[0].0 < 8.1 && line[0].1 > f64::from(sheet.height_mm) - 40.0)
                .map(|line| (line[1].0 - line[0].0).abs())
                .collect();
            assert_eq!(bars.len(), 1, "{paper:?}");
            assert!((bars[0] - 50.0).abs() < 0.2, "{} mm", bars[0]);
        }
    }
}

/// Strokes of an exam with its landmarks, and the skin under them laid flat.
fn with_pattern(text: &str, mut look: impl FnMut(&[Stroke], &Pattern<'_>)) {
    let exam = read(text);
    let pose = from_exam(&exam, &conclusions(&exam));
    let strokes = strokes(&pose);
    let grounds: Vec<(usize, Grounds)> =
        exam.babies.iter().enumerate().map(|(i, baby)| (i + 1, Grounds::of(baby, &pose, i + 1))).collect();
    let navel_measured = exam.mother.navel.value().is_some();
    let landmarks = Landmarks { mother: &pose.mother, navel_measured };
    look(
        &strokes,
        &Pattern {
            pose: &pose,
            strokes: &strokes,
            length: Length::Whole,
            grounds: &grounds,
            landmarks,
            lie: "",
        },
    );
}

#[test]
fn every_line_has_its_true_size_in_the_file() {
    for text in [LOA, BREECH] {
        let (drawn, _) = paths(&traced(text, Paper::A3)[0]);
        let (x, y) = origin(&drawn);
        with_pattern(text, |strokes, pattern| {
            let skin = unrolled(pattern);
            let mut heads = 0;
            for stroke in strokes.iter().filter(|s| !s.deep && !s.fine) {
                for piece in pieces(&stroke.line, &pattern.landmarks, &skin) {
                    // Her left is at the right, and up is up; cm on the skin are cm on paper.
                    let wanted: Vec<(f64, f64)> = piece
                        .iter()
                        .map(|p| (x + 10.0 * f64::from(p.x), y - 10.0 * f64::from(p.y)))
                        .collect();
                    let wanted = bounds(&wanted);
                    let off = |b: [f64; 4]| (0..4).map(|k| (b[k] - wanted[k]).abs()).fold(0.0, f64::max);
                    let nearest = drawn.iter().map(|d| off(bounds(d))).fold(f64::MAX, f64::min);
                    assert!(nearest < 0.2, "{:?}: {nearest} mm off", stroke.step);
                    heads += usize::from(stroke.step == Step::Head);
                }
            }
            assert!(heads > 0, "no head was measured");
        });
    }
}

/// Every stroke of several exams: as long on paper as on the model, and where it crosses a dart it meets itself within the
/// breadth of the pen's line once the dart is closed.
#[test]
fn every_stroke_is_as_long_on_paper_as_on_her() {
    let crosswise = "weeks = \"36+0\"\n[mother]\ngirth = \"104 cm\"\n[baby]\nhead = \"left, at navel\"\n\
        breech = \"right, at navel\"\nback = \"towards her feet\"\n";
    let round = LOA.replace("36 cm", "40 cm").replace("left front", "right front");
    let early = LOA.replace("38+0", "29+0").replace("36 cm", "28 cm").replace("4/5", "5/5");
    let (mut measured, mut darts) = (0, 0);
    for text in [LOA, BREECH, crosswise, &round, &early] {
        with_pattern(text, |strokes, pattern| {
            let skin = unrolled(pattern);
            for stroke in strokes.iter().filter(|s| !s.deep) {
                let pieces = pieces(&stroke.line, &pattern.landmarks, &skin);
                let length = |line: &[FigurePoint]| -> f64 {
                    line.windows(2).map(|w| f64::from(libm::hypotf(w[1].x - w[0].x, w[1].y - w[0].y))).sum()
                };
                let on_paper: f64 = pieces.iter().map(|piece| length(piece)).sum();
                let places: Vec<_> = stroke
                    .line
                    .iter()
                    .map(|p| {
                        let (across, along) = pattern.landmarks.lengths(*p);
                        pattern.landmarks.mother.on_skin(across, along).0
                    })
                    .collect();
                let on_her: f64 = places.windows(2).map(|w| f64::from((w[1] - w[0]).length())).sum();
                assert!(
                    (on_paper - on_her).abs() < 0.1,
                    "{:?}: {on_paper} cm on paper, {on_her}",
                    stroke.step
                );
                // No point is moved by more than the breadth of the line.
                let near = |p: &FigurePoint| {
                    let places = stroke.line.iter().map(|q| {
                        let (across, along) = pattern.landmarks.lengths(*q);
                        let (u, v) = skin.place(across, along);
                        libm::hypot(u - f64::from(p.x), v - f64::from(p.y))
                    });
                    places.fold(f64::MAX, f64::min)
                };
                for piece in &pieces {
                    // The ends at a seam lie between two points of the stroke.
                    let inner = piece.iter().skip(1).rev().skip(1);
                    let moved = inner.map(near).fold(0.0, f64::max);
                    assert!(moved < 0.1, "{:?}: moved by {moved} cm", stroke.step);
                }
                measured += 1;
                darts += pieces.len() - 1;
            }
        });
    }
    assert!(measured > 60 && darts > 20, "{measured} strokes, {darts} crossings");
}

/// The breadth of the head on paper, against the arc of the skin over it.
#[test]
fn the_head_is_as_broad_on_paper_as_on_her() {
    let (drawn, _) = paths(&traced(BREECH, Paper::A3)[0]);
    let (x, _) = origin(&drawn);
    with_pattern(BREECH, |strokes, pattern| {
        let head = strokes.iter().find(|s| s.step == Step::Head && !s.fine).expect("a head");
        let skin = unrolled(pattern);
        let sides: Vec<f64> =
            pieces(&head.line, &pattern.landmarks, &skin).iter().flatten().map(|p| f64::from(p.x)).collect();
        let (low, high) = sides.iter().fold((f64::MAX, f64::MIN), |(a, b), u| (a.min(*u), b.max(*u)));
        assert!(high - low > 9.0 && high - low < 16.0, "a head of {} cm of skin", high - low);
        let sides: Vec<[f64; 4]> = drawn.iter().filter(|d| d.len() > 4).map(|d| bounds(d)).collect();
        for side in [low, high] {
            let want = x + 10.0 * side;
            let near =
                sides.iter().flat_map(|b| [b[0], b[2]]).map(|at| (at - want).abs()).fold(f64::MAX, f64::min);
            assert!(near < 0.2, "a side of the head is {near} mm off");
        }
    });
}

#[test]
fn sheets_join() {
    for paper in [Paper::A4, Paper::Letter] {
        let sheets = &traced(LOA, paper);
        assert!(sheets.len() >= 2, "{paper:?}: one sheet has no joins");
        // Each window in the drawing's own place.
        let placed: Vec<[f64; 4]> = sheets
            .iter()
            .map(|sheet| {
                let (drawn, windows) = paths(sheet);
                let (x, y) = origin(&drawn);
                let b = bounds(&windows[0]);
                [b[0] - x, b[1] - y, b[2] - x, b[3] - y]
            })
            .collect();
        let (mut beside, mut under) = (0, 0);
        for a in &placed {
            for b in &placed {
                // The neighbour at the right, and the one below, overlap by 1 cm and stand in line.
                if b[0] > a[0] + 1.0 && (b[1] - a[1]).abs() < 1.0 && b[0] < a[2] {
                    assert!((a[2] - b[0] - 10.0).abs() < 0.5 && (a[1] - b[1]).abs() < 0.5);
                    beside += 1;
                }
                if b[1] > a[1] + 1.0 && (b[0] - a[0]).abs() < 1.0 && b[1] < a[3] {
                    assert!((a[3] - b[1] - 10.0).abs() < 0.5 && (a[0] - b[0]).abs() < 0.5);
                    under += 1;
                }
            }
        }
        assert!(beside + under >= sheets.len() - 1, "{beside} {under} of {}", sheets.len());
        // Every line lies on some sheet: none falls between windows.
        with_pattern(LOA, |strokes, pattern| {
            let skin = unrolled(pattern);
            for stroke in strokes.iter().filter(|s| !s.deep) {
                for p in pieces(&stroke.line, &pattern.landmarks, &skin).iter().flatten() {
                    let (px, py) = (10.0 * f64::from(p.x), -10.0 * f64::from(p.y));
                    assert!(placed.iter().any(|b| px > b[0] && px < b[2] && py > b[1] && py < b[3]));
                }
            }
        });
    }
}

#[test]
fn a_mirrored_exam_gives_mirrored_strokes_and_mirrored_words() {
    for text in [LOA, BREECH] {
        let other = mirrored(text);
        let lines = |text: &str| {
            let exam = read(text);
            let pose = from_exam(&exam, &conclusions(&exam));
            strokes(&pose)
        };
        let (one, two) = (lines(text), lines(&other));
        // Each long line lies where lines of the same step lie in the mirror image; where a line is cut in two is told by
        // single cells.
        for (one, two) in [(&one, &two), (&two, &one)] {
            let long: Vec<&Stroke> = one.iter().filter(|s| !s.fine && s.length() > 1.6).collect();
            assert!(long.len() > 6);
            for stroke in long {
                let near =
                    |p: FigurePoint, q: &FigurePoint| (p.x + q.x).abs() < 0.5 && (p.y - q.y).abs() < 0.5;
                let same = || two.iter().filter(|s| s.step == stroke.step);
                let alone =
                    stroke.line.iter().filter(|p| !same().any(|s| s.line.iter().any(|q| near(**p, q))));
                let (alone, all) = (alone.count(), stroke.line.len());
                assert!(10 * alone <= all, "{:?}: {alone} of {all} points have no mirror image", stroke.step);
            }
        }
        let words = |text: &str| -> Vec<String> {
            let page = numbers(text);
            texts(&page).into_iter().filter(|t| t.role == Role::Body).map(|t| t.text).collect()
        };
        let joined = |lines: Vec<String>| lines.concat();
        let swapped = |text: String| {
            text.replace("ROA", "LOA")
                .replace("LST", "RST")
                .replace("left", "#")
                .replace("right", "left")
                .replace('#', "right")
        };
        let plain = |text: String| text.replace("ROA", "LOA").replace("LST", "RST");
        // What is said of every woman stays as it is.
        let steps = |text: String| {
            text.split("1 Head").nth(1).and_then(|t| t.split("With her").next()).expect("steps").to_owned()
        };
        let (mine, theirs) = (steps(plain(joined(words(text)))), swapped(steps(joined(words(&other)))));
        assert_eq!(mine, theirs);
        assert!(steps(joined(words(text))).contains("your"), "the sides of who faces her are said");
    }
}

#[test]
fn her_left_is_said_to_be_your_right_and_lies_at_the_right() {
    for (text, hers, yours) in [(LOA.to_owned(), "her left", "right"), (mirrored(LOA), "her right", "left")] {
        let words: Vec<String> = texts(&numbers(&text)).into_iter().map(|t| t.text).collect();
        let all = words.concat();
        let back = all.split("2 Back").nth(1).and_then(|t| t.split("3 Bottom").next()).expect("the back");
        assert!(back.contains(&format!("{hers}, your\u{a0}{yours}")), "{back}");
        let opposite = if hers == "her left" { "her right" } else { "her left" };
        assert!(!back.contains(opposite), "{back}");
    }
    // On every picture and on the tracing sheet; the numbers have no picture.
    let mut sheets = made(LOA, Paper::A3);
    sheets.remove(1);
    for sheet in sheets {
        let sides: BTreeMap<String, f32> =
            texts(&sheet).into_iter().filter(|t| t.role == Role::Side).map(|t| (t.text, t.at.x)).collect();
        let at = |word: &str| {
            *sides.iter().find(|(text, _)| text.to_lowercase().starts_with(word)).expect("both sides").1
        };
        assert!(at("her left") > at("her right"));
    }
}

/// Every text of a page as a rectangle, mm.
fn boxes(sheet: &Sheet) -> Vec<(String, [f32; 4])> {
    let fonts = fonts();
    texts(sheet)
        .into_iter()
        .filter(|t| !t.text.trim().is_empty())
        .map(|t| {
            let width = fonts.measure(t.face, t.text.trim_end(), t.size).unwrap();
            let left = match t.align {
                handspan::figure::scene::Align::Start => t.at.x,
                handspan::figure::scene::Align::Middle => t.at.x - 0.5 * width,
                handspan::figure::scene::Align::End => t.at.x - width,
            };
            (t.text, [left, t.at.y - 0.66 * t.size, left + width, t.at.y + 0.18 * t.size])
        })
        .collect()
}

/// Exams of every kind: the examples, and each end down with each back.
fn exams() -> Vec<(String, Exam)> {
    let mut out = vec![];
    for entry in std::fs::read_dir(path("examples")).expect("examples") {
        let file = entry.expect("an entry").path();
        let name = file.file_stem().and_then(|s| s.to_str()).expect("a name").to_owned();
        if file.is_file() && name != "clinic" {
            out.push((name, read(&std::fs::read_to_string(&file).expect("an example"))));
        }
    }
    for position in ["LOA", "ROT", "OP", "OA", "RSA", "SP", "LMA", "RFP"] {
        out.push((
            position.to_owned(),
            read(&format!("weeks = \"39+0\"\n[baby]\nposition = \"{position}\"\n")),
        ));
    }
    let felt = "weeks = \"36+0\"\n[baby]\nhead = \"above pubic bone\"\nbreech = \"fundus\"\n";
    out.push(("back not felt".to_owned(), read(felt)));
    out.push(("deep".to_owned(), read(&LOA.replace("4/5", "0/5"))));
    out.sort_by(|a, b| a.0.cmp(&b.0));
    out
}

#[test]
fn every_exam_lays_out_on_every_paper() {
    let mut made = 0;
    for (name, exam) in exams() {
        for (paper, width, height) in
            [(Paper::A4, 210.0, 297.0), (Paper::Letter, 215.9, 279.4), (Paper::A3, 297.0, 420.0)]
        {
            let sheets = match sheets(&exam, paper) {
                Ok(sheets) => sheets,
                Err(why) => {
                    let nothing = ["bleeding", "large-build", "twelve-weeks"].contains(&name.as_str());
                    assert!(nothing, "{name} on {paper:?}: {why}");
                    assert!(why.contains("no baby is drawn") || why.contains("Before 26 weeks"), "{why}");
                    continue;
                }
            };
            let babies = exam.babies.len();
            assert!(sheets.len() > 2 * babies, "{name}: two sides for each baby and a tracing sheet");
            assert!(
                sheets.len() <= 2 * babies + if paper == Paper::A3 { 2 } else { 6 },
                "{name} on {paper:?}: {}",
                sheets.len()
            );
            for (number, sheet) in sheets.iter().enumerate() {
                let guide = number < 2 * babies;
                let (w, h) = (sheet.width_mm, sheet.height_mm);
                assert!((w, h) == (width, height) || (!guide && (w, h) == (height, width)), "{w} x {h}");
                let rectangles = boxes(sheet);
                for (i, (a, p)) in rectangles.iter().enumerate() {
                    assert!(
                        p[0] > 7.9 && p[1] > 7.9 && p[2] < w - 7.9 && p[3] < h - 7.9,
                        "{name} on {paper:?}: `{a}` lies outside the margins: {p:?}"
                    );
                    for (b, q) in &rectangles[i + 1..] {
                        let clear = p[2] <= q[0] || q[2] <= p[0] || p[3] <= q[1] || q[3] <= p[1];
                        assert!(clear, "{name} on {paper:?}, sheet {number}: `{a}` lies on `{b}`");
                    }
                }
                let least = texts(sheet).iter().map(|t| t.size * 72.0 / 25.4).fold(f32::MAX, f32::min);
                assert!(least > if guide { 11.95 } else { 10.9 }, "{name}: type of {least} pt");
                if guide {
                    let bytes = pdf(sheet, &fonts()).unwrap();
                    assert!(bytes.len() <= 150_000, "{name}: {} bytes", bytes.len());
                }
            }
            made += 1;
        }
    }
    assert!(made > 60);
}

#[test]
fn every_exam_lays_out_in_every_language() {
    let mut made = 0;
    for lang in ["es", "fr"] {
        for (name, exam) in exams() {
            for paper in [Paper::A4, Paper::Letter] {
                // What has no guide in English has none in another language.
                let Ok(english) = sheets(&exam, paper) else { continue };
                let sheets = sheets_in(lang, &exam, paper)
                    .unwrap_or_else(|why| panic!("{name} in {lang} on {paper:?}: {why}"));
                assert_eq!(sheets.len(), english.len());
                for (number, sheet) in sheets.iter().enumerate() {
                    let rectangles = boxes(sheet);
                    let (w, h) = (sheet.width_mm, sheet.height_mm);
                    for (i, (a, p)) in rectangles.iter().enumerate() {
                        let inside = p[0] > 7.9 && p[1] > 7.9 && p[2] < w - 7.9 && p[3] < h - 7.9;
                        assert!(inside, "{name} in {lang}: `{a}` lies outside the margins: {p:?}");
                        for (b, q) in &rectangles[i + 1..] {
                            let clear = p[2] <= q[0] || q[2] <= p[0] || p[3] <= q[1] || q[3] <= p[1];
                            assert!(clear, "{name} in {lang}, sheet {number}: `{a}` lies on `{b}`");
                        }
                    }
                    assert_eq!(sheet.lang, lang);
                }
                made += 1;
            }
        }
    }
    assert!(made > 80, "{made}");
}

/// What a step of the page says.
fn step(exam: &str, from: &str, to: &str) -> String {
    let all: String = texts(&numbers(exam))
        .into_iter()
        .filter(|t| t.role == Role::Body)
        .map(|t| t.text.trim_end().to_owned() + " ")
        .collect();
    all.split(from)
        .nth(1)
        .and_then(|t| t.split(to).next())
        .unwrap_or_else(|| panic!("{from}: {all}"))
        .to_owned()
}

#[test]
fn what_was_not_found_is_not_given_as_a_stroke() {
    let rounds = "weeks = \"36+0\"\n[baby]\nhead = \"above pubic bone\"\nbreech = \"fundus\"\n";
    assert!(step(rounds, "2 Back", "3 Bottom").contains("Not felt"));
    for (from, to) in
        [("4 Thigh, leg, foot", "5 Arm"), ("5 Arm and hand", "6 Neck"), ("6 Neck and belly", "7 Heart")]
    {
        let said = step(rounds, from, to);
        assert!(said.contains("Not felt: leave it out") && !said.contains("your"), "{said}");
    }
    assert!(step(rounds, "7 Heart", "With her").contains("none to draw"));
    // Of a posed baby whose limbs were not felt they are a guess, and broken.
    let posed = LOA.replace("limbs = \"right, above navel\"\n", "");
    assert!(step(&posed, "4 Thigh, leg, foot", "5 Arm").contains("a guess"));
    with_pattern(&posed, |strokes, pattern| {
        let (_, grounds) = &pattern.grounds[0];
        let firm =
            |step: Step| strokes.iter().filter(|s| s.step == step).filter(|s| grounds.is_firm(s)).count();
        assert!(firm(Step::Legs) == 0 && firm(Step::Arms) == 0);
        assert!(firm(Step::Head) > 0 && firm(Step::Back) > 0 && firm(Step::Bottom) > 0);
    });
    with_pattern(LOA, |strokes, pattern| {
        let (_, grounds) = &pattern.grounds[0];
        let limbs = || strokes.iter().filter(|s| matches!(s.step, Step::Legs | Step::Arms));
        assert!(limbs().any(|s| grounds.is_firm(s)), "limbs were felt");
        assert!(limbs().any(|s| !grounds.is_firm(s)), "not all four were");
    });
    // A bottom that only follows from a head that was felt.
    let alone = "weeks = \"38+0\"\n[baby]\nhead = \"above pubic bone\"\nback = \"left front\"\n";
    assert!(step(alone, "3 Bottom", "4 Thigh").contains("Not felt by itself"));
    // Unsure findings are to be felt again.
    let unsure = LOA.replace("\"left front\"", "\"left front?\"");
    assert!(step(&unsure, "2 Back", "3 Bottom").contains("feel again"));
    // A back that lies behind is no line in front.
    let behind = LOA.replace("\"left front\"", "\"towards her spine\"");
    assert!(step(&behind, "2 Back", "3 Bottom").contains("towards her spine"));
}

#[test]
fn nothing_is_drawn_below_the_pubic_bone() {
    for fifths in ["4/5", "2/5", "0/5"] {
        let text = LOA.replace("4/5", fifths);
        with_pattern(&text, |strokes, _| {
            for stroke in strokes {
                let below = stroke.line.iter().filter(|p| p.y < -0.01).count();
                assert_eq!(below > 0, stroke.deep, "{fifths}: {:?}", stroke.step);
            }
            assert!(strokes.iter().any(|s| s.deep), "{fifths}: some of the head lies in the pelvis");
        });
        assert!(step(&text, "1 Head", "2 Back").contains("pelvis"));
    }
}

#[test]
fn the_navel_serves_only_where_it_was_measured() {
    let steps = |text: &str| step(text, "1 Head", "With her");
    let measured = steps(BREECH);
    assert!(measured.contains("the navel") && measured.contains("up"), "{measured}");
    let not = BREECH.replace("navel = \"22 cm\"\n", "");
    assert!(!steps(&not).contains("navel"), "{}", steps(&not));
    let words = |text: &str| -> String {
        traced(text, Paper::A3).iter().flat_map(texts).map(|t| t.text + " ").collect()
    };
    assert!(words(BREECH).contains("navel, 22 cm up"));
    assert!(words(&not).contains("navel: not measured"));
}

/// Centimetres and finger-breadths that are said, against the skin.
#[test]
fn places_are_measured_along_the_skin() {
    with_pattern(BREECH, |_, pattern| {
        let words = Words::load("en").unwrap();
        let shape = pattern.landmarks.mother;
        let at = |across: f64, along: f64| {
            let p = shape.on_skin(across, along).0;
            pattern.landmarks.say(FigurePoint::new(p.x, p.y), &words).unwrap().replace('\u{a0}', " ")
        };
        assert_eq!(at(5.0, 7.0), "7 cm (3½) up, 5 cm (2½) to her left, your right");
        assert_eq!(at(-6.0, 0.1), "level with the pubic bone, 6 cm (3) to her right, your left");
        assert_eq!(at(0.0, 22.0), "at the navel, in the midline");
        assert_eq!(at(1.0, 18.0), "4 cm (2) below the navel, 1 cm (½) to her left, your right");
        assert_eq!(at(-12.0, 27.0), "5 cm (2½) above the navel, 12 cm (6) to her right, your left");
    });
}

#[test]
fn the_manners_are_on_every_page() {
    for text in [LOA, BREECH] {
        let said = step(text, "With her", "Not a scan; hands can be wrong").to_lowercase();
        for word in [
            "ask before you touch",
            "photograph",
            "stop",
            "bladder",
            "tilt",
            "warm hands",
            "washable",
            "allergic",
            "bath",
        ] {
            assert!(said.contains(word), "{word}: {said}");
        }
    }
}

#[test]
fn no_guide_while_something_stands_against_it() {
    let here = tempfile::tempdir().expect("a directory");
    let now = LOA.replace("[mother]\n", "[mother]\nmovements = \"fewer\"\n");
    let both = LOA.replace("[baby]\n", "[baby]\nposition = \"ROA\"\n");
    for (text, code, id) in
        [(now.as_str(), 3, "[movements-fewer]"), (both.as_str(), 1, "[position-against-findings]")]
    {
        let output = run_in(here.path(), &["skin-guide", "-", "-o", "guide.pdf"], text.as_bytes());
        assert_eq!(output.status.code(), Some(code));
        let said = said(&output);
        assert!(said.contains("no skin guide is made") && said.contains(id), "{said}");
        assert!(!here.path().join("guide.pdf").exists());
    }
    let arguments = ["skin-guide", "-", "-o", "guide.pdf", "--despite", "movements-fewer"];
    let output = run_in(here.path(), &arguments, now.as_bytes());
    assert_eq!(output.status.code(), Some(3));
    assert!(said(&output).contains("made despite [movements-fewer]"));
    assert!(here.path().join("guide.pdf").exists());
}

#[test]
fn a_pdf_holds_all_pages_and_pictures_are_a_file_a_page() {
    let here = tempfile::tempdir().expect("a directory");
    let make = |name: &str| {
        let output = run_in(here.path(), &["skin-guide", "-", "-o", name, "--force"], LOA.as_bytes());
        assert_eq!(output.status.code(), Some(0), "{}", said(&output));
        std::fs::read(here.path().join(name)).expect("the file")
    };
    let bytes = make("guide.pdf");
    assert_eq!(bytes, make("guide.pdf"), "the same bytes twice");
    let pages = Document::load_mem(&bytes).unwrap().page_iter().count();
    assert_eq!(pages, made(LOA, Paper::A4).len());
    assert_eq!(bytes, pdf_pages(&made(LOA, Paper::A4), &fonts()).unwrap());
    make("guide.svg");
    for page in 2..=pages {
        assert!(here.path().join(format!("guide-{page}.svg")).exists());
    }
    assert!(!here.path().join(format!("guide-{}.svg", pages + 1)).exists());
}

/// A womb far lower than the weeks: the baby is drawn with the sizes of fewer weeks.
const FITTED: &str = "weeks = \"38+0\"\n[mother]\nfundal-height = \"28 cm\"\n[baby]\nbreech = \"fundus\"\n\
    back = \"left front\"\nhead = \"above pubic bone\"\nhead-above-brim = \"5/5\"\n";

#[test]
fn a_baby_made_to_fit_is_not_traced_and_it_is_said_why_and_what_to_do() {
    let here = tempfile::tempdir().expect("a directory");
    for (text, traced) in [(FITTED.to_owned(), false), (mirrored(FITTED), false), (LOA.to_owned(), true)] {
        let output = run_in(here.path(), &["skin-guide", "-", "-o", "g.pdf", "--force"], text.as_bytes());
        assert_eq!(output.status.code(), Some(0));
        let said = said(&output);
        assert_eq!(said.contains("There is no tracing sheet"), !traced, "{said}");
        assert_eq!(said.contains("drawn smaller") && said.contains("Draw by hand"), !traced, "{said}");
        let all: String = made(&text, Paper::A4)
            .iter()
            .flat_map(texts)
            .map(|t| t.text.trim_end().to_owned() + " ")
            .collect();
        assert_eq!(all.contains("Tracing sheet, at true size"), traced, "{all}");
        assert_eq!(all.contains("There is no tracing sheet"), !traced, "{all}");
    }
}

#[test]
fn each_sheet_of_a_tracing_names_her_sides_and_letters_join_its_own_neighbours_alone() {
    for (text, paper) in [(LOA, Paper::A4), (BREECH, Paper::Letter), (LOA, Paper::A3)] {
        let sheets = traced(text, paper);
        let mut letters: BTreeMap<String, Vec<(usize, f64, f64)>> = BTreeMap::new();
        for (number, sheet) in sheets.iter().enumerate() {
            let words = texts(sheet);
            let at = |what: &str| {
                let side = words.iter().find(|t| t.text.starts_with(what) && t.at.y < 15.0);
                side.unwrap_or_else(|| panic!("{what} on sheet {number}")).at.x
            };
            assert!(at("HER RIGHT, your left") < 15.0 && at("HER LEFT, your right") > 0.5 * sheet.width_mm);
            assert!(at("this way up") > 0.3 * sheet.width_mm);
            let (drawn, _) = paths(sheet);
            let (x, y) = origin(&drawn);
            let is_letter = |t: &str| t.len() <= 2 && t.starts_with(|c: char| c.is_ascii_uppercase());
            for t in words.iter().filter(|t| is_letter(&t.text)) {
                let place = (number, f64::from(t.at.x) - x, f64::from(t.at.y) - y);
                letters.entry(t.text.clone()).or_default().push(place);
            }
        }
        let joins = sheets.len() - 1;
        assert!(letters.len() >= 2 * joins, "{} letters on {joins} joins", letters.len());
        for (letter, places) in letters {
            assert!(places.len() >= 2, "{letter} stands on one sheet alone");
            for place in &places[1..] {
                let apart = libm::hypot(place.1 - places[0].1, place.2 - places[0].2);
                assert!(place.0 != places[0].0 && apart < 0.3, "{letter} is {apart} mm apart");
            }
        }
    }
}

/// The words that stand on a picture or beside it.
fn words_of(texts: &[String]) -> Vec<String> {
    let all = texts.iter().flat_map(|text| text.split_whitespace());
    all.filter(|word| word.chars().any(char::is_alphabetic)).map(str::to_owned).collect()
}

#[test]
fn the_first_side_has_few_words_that_are_easy_to_read_and_names_her_sides_on_every_picture() {
    let words = Words::load_for("en", &[Part::Family, Part::Picture, Part::Guide]).unwrap();
    let mut looked_at = 0;
    for (index, (name, exam)) in exams().into_iter().enumerate() {
        for length in [Length::Whole, Length::Minute] {
            // Words depend little on how a baby lies: half of the exams, and of a minute fewer.
            if index % (if length == Length::Whole { 2 } else { 5 }) != 0 {
                continue;
            }
            let look = GuideLook { length, ..GuideLook::on(Paper::A4) };
            let Ok(sheets) = skin_sheets(&exam, &conclusions(&exam), look, &words, &fonts()) else {
                continue;
            };
            for baby in 0..exam.babies.len() {
                let front = &sheets[2 * baby];
                let all = texts(front);
                let sides = all.iter().filter(|t| t.role == Role::Side).count();
                assert_eq!(sides, 2 * (1 + length.steps().len()), "{name}");
                let said: Vec<String> = all.iter().map(|t| t.text.clone()).collect();
                let count = words_of(&said).len();
                assert!(count <= 120, "{name}: {count} words");
                // Each paragraph, in sentences.
                let mut sentences: Vec<Vec<String>> = vec![];
                for element in &front.elements {
                    let lines: Vec<String> =
                        texts(&Sheet { elements: vec![element.clone()], ..front.clone() })
                            .into_iter()
                            .filter(|t| t.role == Role::Body)
                            .map(|t| t.text.trim().to_owned())
                            .collect();
                    let paragraph = lines.join(" ");
                    if paragraph.starts_with(|c: char| c.is_ascii_digit()) {
                        let count = words_of(&lines).len();
                        assert!((2..=12).contains(&count), "{name}: {paragraph}");
                    }
                    let parts =
                        paragraph.split_inclusive(['.', ':']).map(|part| words_of(&[part.to_owned()]));
                    sentences.extend(parts.filter(|part| !part.is_empty()));
                }
                let list: Vec<&String> = sentences.iter().flatten().collect();
                let syllables: usize = list.iter().map(|word| syllables(word)).sum();
                let grade = school_grade(list.len(), sentences.len(), syllables);
                assert!(grade <= 5.0, "{name}: grade {grade:.1}");
                looked_at += 1;
            }
        }
    }
    assert!(looked_at >= 12, "{looked_at} first sides");
}

#[test]
fn a_minute_takes_five_lines_round_the_same_baby() {
    for position in ["OA", "LOA", "LOT", "LOP", "OP", "ROA", "SA", "LSA", "LST", "RSP"] {
        let exam = read(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{position}\"\n"));
        let pose = from_exam(&exam, &conclusions(&exam));
        let quick = short_strokes(&pose);
        let drawn: Vec<&Stroke> = quick.iter().filter(|s| !s.deep).collect();
        // Head, back, bottom, legs; a back that is seen whole has a line on both sides.
        assert!((3..=6).contains(&drawn.len()), "{position}: {} lines", drawn.len());
        for step in [Step::Head, Step::Bottom] {
            assert!(quick.iter().any(|s| s.step == step), "{position}: no {step:?}");
        }
        assert!(drawn.iter().all(|s| !s.fine && s.length() >= 1.5), "{position}");
        // As far to every side as the whole drawing, which has toes and fingers.
        let whole = strokes(&pose);
        let reach = |strokes: &[Stroke], way: (f32, f32)| {
            let points = strokes.iter().flat_map(|s| &s.line);
            points.map(|p| p.x * way.0 + p.y * way.1).fold(f32::MIN, f32::max)
        };
        for way in [(1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0)] {
            let (a, b) = (reach(&quick, way), reach(&whole, way));
            assert!((a - b).abs() < 1.6, "{position}: {a} and {b} cm at {way:?}");
        }
    }
    let (one, other) = (LOA.to_owned(), mirrored(LOA));
    let lines = |text: &str| {
        let exam = read(text);
        short_strokes(&from_exam(&exam, &conclusions(&exam)))
    };
    let (one, other) = (lines(&one), lines(&other));
    assert_eq!(one.len(), other.len());
    for stroke in &one {
        let turned: Vec<FigurePoint> = stroke.line.iter().map(|p| FigurePoint::new(-p.x, p.y)).collect();
        let mirrors = |s: &&Stroke| s.step == stroke.step && s.line == turned;
        assert!(other.iter().any(|s| mirrors(&s)), "{:?} has no mirror image", stroke.step);
    }
}

#[test]
fn a_head_that_goes_into_the_pelvis_is_closed_above_the_bone() {
    for (position, fifths) in [("LOA", "4/5"), ("ROT", "4/5"), ("OP", "3/5"), ("LOP", "4/5"), ("OA", "2/5")] {
        let text =
            format!("weeks = \"38+0\"\n[baby]\nposition = \"{position}\"\nhead-above-brim = \"{fifths}\"\n");
        let exam = read(&text);
        for stroke in strokes(&from_exam(&exam, &conclusions(&exam))) {
            if stroke.step != Step::Head || stroke.fine {
                continue;
            }
            // From bone to bone, above it or dotted below.
            for end in [stroke.line[0], stroke.line[stroke.line.len() - 1]] {
                assert!(end.y.abs() < 0.1, "{position} {fifths}: the head is open at {end:?}");
            }
        }
    }
}

#[test]
fn a_left_handed_artist_changes_hands_and_the_baby_stays() {
    let words = Words::load_for("en", &[Part::Family, Part::Picture, Part::Guide]).unwrap();
    let exam = read(BREECH);
    let front = |handed| {
        let look = GuideLook { handed, ..GuideLook::on(Paper::A4) };
        skin_sheets(&exam, &conclusions(&exam), look, &words, &fonts()).expect("a guide").swap_remove(0)
    };
    let (right, left) = (front(Handed::Right), front(Handed::Left));
    assert_ne!(right, left);
    let pictures = |sheet: &Sheet| -> Vec<Element> {
        sheet.elements.iter().filter(|e| matches!(e.tag, Tag::Figure { .. })).cloned().collect()
    };
    // The finished drawing is the same; so is every line of the baby and every word.
    assert_eq!(pictures(&right)[0], pictures(&left)[0]);
    let words = |sheet: &Sheet| texts(sheet).into_iter().map(|t| (t.text, t.at)).collect::<Vec<_>>();
    assert_eq!(words(&right), words(&left));
    for (a, b) in pictures(&right).iter().zip(&pictures(&left)).skip(1) {
        let ink = |element: &Element| {
            let mut out = vec![];
            inked(&element.items, &mut out);
            out
        };
        assert!(!ink(a).is_empty());
        assert_eq!(ink(a), ink(b));
    }
}

/// The lines drawn in the ink of new strokes and the grey of earlier ones.
fn inked(items: &[Item<PagePoint>], out: &mut Vec<Item<PagePoint>>) {
    for item in items {
        match item {
            Item::Group { items, .. } | Item::Clip { items, .. } => inked(items, out),
            Item::Stroke { colour, .. }
                if [Colour::hex(0x221C19), Colour::hex(0xA39A93)].contains(colour) =>
            {
                out.push(item.clone());
            }
            Item::Stroke { .. } | Item::Fill { .. } | Item::Text(_) => {}
        }
    }
}

#[test]
fn the_finished_drawing_lies_on_the_side_where_the_back_was_felt() {
    for (text, sign) in [(LOA.to_owned(), 1.0), (mirrored(LOA), -1.0)] {
        let front = made(&text, Paper::A4).swap_remove(0);
        let picture = front.elements.iter().find(|e| matches!(e.tag, Tag::Figure { .. })).expect("a picture");
        let side = |what: &str| {
            let all = texts(&Sheet { elements: vec![picture.clone()], ..front.clone() });
            all.into_iter().find(|t| t.text == what).expect("both sides").at.x
        };
        let (hers_right, hers_left) = (side("Her right"), side("Her left"));
        assert!(hers_right < hers_left);
        // The heart was heard on the side of the back.
        let mut hearts = vec![];
        filled(&picture.items, Colour::hex(0x9C1C2E), &mut hearts);
        assert_eq!(hearts.len(), 1);
        assert!((hearts[0] - 0.5 * (hers_right + hers_left)) * sign > 5.0, "{hearts:?}");
    }
}

/// Where fills of a colour begin, across.
fn filled(items: &[Item<PagePoint>], wanted: Colour, out: &mut Vec<f32>) {
    for item in items {
        match item {
            Item::Group { items, .. } | Item::Clip { items, .. } => filled(items, wanted, out),
            Item::Fill { path, colour, .. } if *colour == wanted => {
                if let Some(Draw::Move(p)) = path.first() {
                    out.push(p.x);
                }
            }
            Item::Stroke { .. } | Item::Fill { .. } | Item::Text(_) => {}
        }
    }
}
