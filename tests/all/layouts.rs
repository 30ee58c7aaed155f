//! The shipped layouts with real exams: every one on every paper keeps its words inside the margins and apart, in type that
//! can be read; what cannot fit is an error that names its box; and what a clinic may write wrongly is told to it.

use crate::pages::{clinic, texts, words};
use crate::shared::{path, run, said};
use handspan::body::pose;
use handspan::clinic::Clinic;
use handspan::exam::{self, Exam};
use handspan::figure::scene::{Align, Item, Role, Step};
use handspan::figure::{self, FigureOptions, Labels, MotherAs, Palette, Style, View};
use handspan::fonts::Fonts;
use handspan::reckon::{Reckoning, reckon};
use handspan::sheet::family::{self, Asked};
use handspan::sheet::{
    COLOURING, Content, FAMILY_PAGE, FAMILY_PAGE_LONG, Kind, LARGE_PRINT, LARGE_PRINT_LONG, Layout, ONE_SIDE,
    PICTURE_FIRST, PICTURE_FIRST_LONG, SHIPPED, Sheet, Shipped, Tag, compose_all,
};
use handspan::units::PagePoint;
use handspan::words::Words;
use handspan::write;

/// The layouts that go home.
pub const FAMILY: [Shipped; 7] = [
    FAMILY_PAGE,
    FAMILY_PAGE_LONG,
    LARGE_PRINT,
    LARGE_PRINT_LONG,
    PICTURE_FIRST,
    PICTURE_FIRST_LONG,
    COLOURING,
];
const PAPERS: [&str; 3] = ["a4", "letter", "a3"];

/// Every example: its name, the exam, what is reckoned of it. What would stop a page is not looked at: it fits too.
pub fn examples() -> Vec<(String, Exam, Reckoning)> {
    let mut out = vec![];
    let mut files: Vec<_> =
        std::fs::read_dir(path("examples")).unwrap().map(|entry| entry.unwrap().path()).collect();
    files.sort();
    for file in files {
        let name = file.file_stem().unwrap().to_str().unwrap().to_owned();
        if file.extension().is_none_or(|ending| ending != "toml") || name == "clinic" {
            continue;
        }
        let exam = exam::read(&name, &std::fs::read(&file).unwrap()).exam.expect("an example is read");
        let reckoning = reckon(&exam, &Default::default());
        out.push((name, exam, reckoning));
    }
    assert!(out.len() >= 15);
    out
}

/// The sides of a family layout for an exam, or why there are none.
pub fn sides(
    layout: &Layout,
    (exam, reckoning): (&Exam, &Reckoning),
    content: &Content,
    words: &Words,
    fonts: &Fonts,
) -> Result<Vec<Sheet>, String> {
    let pose = pose::from_exam(exam, &reckoning.conclusions);
    let cast = pose.cast();
    let looks = layout.pictures();
    let frames: Vec<_> =
        looks.iter().map(|(_, look)| figure::frame(look.style.unwrap_or(Style::Soft))).collect();
    let scales = layout.scales(&frames, content, words, fonts).map_err(|e| e.to_string())?;
    let mut scenes = vec![];
    for ((_, look), mm_per_cm) in looks.iter().zip(scales) {
        let options = FigureOptions {
            style: look.style.unwrap_or(Style::Soft),
            palette: Palette::Neutral,
            mother: MotherAs::Outline,
            hands: None,
            view: View::Facing,
            labels: look.labels.unwrap_or(Labels::Family),
            mm_per_cm,
            type_pt: look.type_pt.unwrap_or(12.0),
            title: content.title.clone(),
            description: content.description.clone(),
            captions: vec![],
        };
        scenes.push(figure::figure(&pose, cast.as_ref(), &options, words, fonts).map_err(|e| e.to_string())?);
    }
    compose_all(layout, &scenes, content, words, fonts).map_err(|e| e.to_string())
}

/// Left, top, right, bottom, mm.
type Bounds = [f32; 4];

fn bounds(points: impl Iterator<Item = PagePoint>) -> Bounds {
    points.fold([f32::MAX, f32::MAX, f32::MIN, f32::MIN], |b, p| {
        [b[0].min(p.x), b[1].min(p.y), b[2].max(p.x), b[3].max(p.y)]
    })
}

/// The bounds of every text, with its words and whether it stands on a picture.
fn written(sheet: &Sheet, fonts: &Fonts) -> Vec<(String, bool, f32, Bounds)> {
    texts(sheet)
        .into_iter()
        .map(|text| {
            let width = fonts.measure(text.face, text.text.trim_end(), text.size).unwrap();
            let left = match text.align {
                Align::Start => text.at.x,
                Align::Middle => text.at.x - width * 0.5,
                Align::End => text.at.x - width,
            };
            let heights = [text.at.y - 0.68 * text.size, text.at.y + 0.2 * text.size];
            let place = [left, heights[0], left + width, heights[1]];
            (text.text, text.role != Role::Body, text.size * 72.0 / 25.4, place)
        })
        .collect()
}

fn overlap(a: Bounds, b: Bounds) -> bool {
    let apart = 0.05;
    a[0] + apart < b[2] && b[0] + apart < a[2] && a[1] + apart < b[3] && b[1] + apart < a[3]
}

/// Everything drawn that is not a picture: frames and lines.
fn frames(sheet: &Sheet) -> Vec<Bounds> {
    let mut out = vec![];
    for element in sheet.elements.iter().filter(|e| e.tag == Tag::Artifact) {
        for item in &element.items {
            if let Item::Stroke { path, .. } = item {
                let points = path.iter().filter_map(|step| match step {
                    Step::Move(p) | Step::Line(p) | Step::Curve(_, _, p) => Some(*p),
                    Step::Close => None,
                });
                out.push(bounds(points));
            }
        }
    }
    out
}

fn picture(sheet: &Sheet) -> Option<Bounds> {
    let element = sheet.elements.iter().find(|e| matches!(e.tag, Tag::Figure { .. }))?;
    match &element.items[..] {
        [Item::Clip { path, .. }] => Some(bounds(path.iter().filter_map(|step| match step {
            Step::Move(p) | Step::Line(p) | Step::Curve(_, _, p) => Some(*p),
            Step::Close => None,
        }))),
        _ => None,
    }
}

/// Nothing outside the safe margins, no words on words, on a frame or on a picture, no type too small.
pub fn assert_is_sound(name: &str, sheet: &Sheet, smallest: f32, fonts: &Fonts) {
    const SAFE_MM: f32 = 8.0;
    let safe = [SAFE_MM, SAFE_MM, sheet.width_mm - SAFE_MM, sheet.height_mm - SAFE_MM];
    let inside = |b: Bounds| {
        b[0] >= safe[0] - 0.1 && b[1] >= safe[1] - 0.1 && b[2] <= safe[2] + 0.1 && b[3] <= safe[3] + 0.1
    };
    let written = written(sheet, fonts);
    let picture = picture(sheet);
    for (at, (text, on_picture, size, place)) in written.iter().enumerate() {
        assert!(*size >= smallest - 0.01, "{name}: `{text}` is set in {size} pt");
        assert!(inside(*place), "{name}: `{text}` is outside the margins: {place:?}");
        for (other, _, _, there) in &written[at + 1..] {
            assert!(!overlap(*place, *there), "{name}: `{text}` lies on `{other}`");
        }
        if let (false, Some(picture)) = (on_picture, picture) {
            assert!(!overlap(*place, picture), "{name}: `{text}` lies on the picture");
        }
        for frame in frames(sheet) {
            let within =
                place[0] >= frame[0] && place[1] >= frame[1] && place[2] <= frame[2] && place[3] <= frame[3];
            assert!(within || !overlap(*place, frame), "{name}: `{text}` lies on a frame or a line");
        }
    }
    for frame in frames(sheet) {
        assert!(inside(frame), "{name}: a frame is outside the margins");
    }
    if let Some(picture) = picture {
        assert!(inside(picture), "{name}: the picture is outside the margins");
    }
}

#[test]
fn every_layout_holds_every_example_on_every_paper() {
    let fonts = Fonts::load().unwrap();
    let words = words();
    for (name, exam, reckoning) in examples() {
        for clinic in [clinic(), Clinic::default()] {
            let content = family::content(&exam, &reckoning, &clinic, Asked::default(), &words).unwrap();
            for shipped in FAMILY {
                for paper in PAPERS {
                    let what = format!("{name}, {} on {paper}", shipped.name);
                    if gives_way(&name, shipped, paper) {
                        continue;
                    }
                    let layout = shipped.read().unwrap().on_paper(paper).unwrap();
                    let sheets = sides(&layout, (&exam, &reckoning), &content, &words, &fonts)
                        .unwrap_or_else(|fault| panic!("{what}: {fault}"));
                    let smallest = if shipped.name.starts_with("large-print") { 18.0 } else { 12.0 };
                    for sheet in &sheets {
                        assert_is_sound(&what, sheet, smallest, &fonts);
                    }
                    let pages = match shipped.name {
                        "large-print-long" => 7,
                        "large-print" | "picture-first-long" => 4,
                        "picture-first" | "family-page-long" => 3,
                        "family-page" => 2,
                        _ => 1,
                    };
                    assert_eq!(sheets.len(), pages, "{what}");
                }
            }
            if name != "head-down-left" {
                break;
            }
        }
    }
}

/// Two babies in large print, and on the lower paper with small pictures, have more sides: the day, and how sure the page is, stand
/// beside the picture, and leave no room for two that can be read.
fn gives_way(name: &str, shipped: Shipped, paper: &str) -> bool {
    name == "twins"
        && (shipped.name == "large-print" || shipped == PICTURE_FIRST && paper == "letter")
        && paper != "a3"
}

/// The example of this name, and the words of its family page.
fn page_of(name: &str, words: &Words) -> (Exam, Reckoning, Content) {
    let (_, exam, reckoning) = examples().into_iter().find(|(own, ..)| own == name).unwrap();
    let content = family::content(&exam, &reckoning, &clinic(), Asked::default(), words).unwrap();
    (exam, reckoning, content)
}

#[test]
fn two_babies_take_the_longer_page_where_the_shorter_has_no_room() {
    let fonts = Fonts::load().unwrap();
    let words = words();
    let (exam, reckoning, content) = page_of("twins", &words);
    let mut gave_way = 0;
    for paper in PAPERS {
        for shipped in FAMILY.into_iter().filter(|shipped| gives_way("twins", *shipped, paper)) {
            let made = |shipped: Shipped| {
                let layout = shipped.read().unwrap().on_paper(paper).unwrap();
                sides(&layout, (&exam, &reckoning), &content, &words, &fonts)
            };
            let why = made(shipped).unwrap_err();
            assert!(why.contains("the page holds too much"), "{}: {why}", shipped.name);
            assert!(made(shipped.longer().unwrap()).is_ok(), "{} on {paper}", shipped.name);
            gave_way += 1;
        }
    }
    assert_eq!(gave_way, 3);
}

/// One side is taken where the words leave the picture its room; else the page has two, and says so.
#[test]
fn one_side_holds_everything_or_gives_way_to_two() {
    let fonts = Fonts::load().unwrap();
    let words = words();
    let mut on_one = 0;
    for (name, exam, reckoning) in examples() {
        let content = family::content(&exam, &reckoning, &clinic(), Asked::default(), &words).unwrap();
        for paper in PAPERS {
            let layout = ONE_SIDE.read().unwrap().on_paper(paper).unwrap();
            let what = format!("{name}, one side on {paper}");
            match sides(&layout, (&exam, &reckoning), &content, &words, &fonts) {
                Ok(sheets) => {
                    assert_eq!(sheets.len(), 1, "{what}");
                    assert_is_sound(&what, &sheets[0], 12.0, &fonts);
                    on_one += 1;
                    let all: String = texts(&sheets[0]).into_iter().map(|t| t.text).collect();
                    for needed in ["Call 999 now", " now and come in", " today", "hurting yourself"] {
                        assert!(all.contains(needed), "{what}: {needed}");
                    }
                    for block in content.blocks["family-go"].iter().chain(&content.blocks["family-come"]) {
                        assert!(all.contains(&block.text.replace("____", "")), "{what}: {}", block.text);
                    }
                }
                Err(why) => assert!(why.contains("the page holds too much"), "{what}: {why}"),
            }
        }
        assert_eq!(ONE_SIDE.longer(), Some(FAMILY_PAGE));
    }
    assert!(on_one >= examples().len(), "only {on_one} stand on one side");
}

#[test]
fn every_layout_for_the_family_carries_what_must_not_be_missed() {
    let fonts = Fonts::load().unwrap();
    let words = words();
    for (name, exam, reckoning) in examples() {
        let content = family::content(&exam, &reckoning, &clinic(), Asked::default(), &words).unwrap();
        for shipped in
            FAMILY.into_iter().filter(|one| one.name != "colouring" && !gives_way(&name, *one, "a4"))
        {
            let layout = shipped.read().unwrap();
            let sheets = sides(&layout, (&exam, &reckoning), &content, &words, &fonts).unwrap();
            let all: String = sheets.iter().flat_map(texts).map(|t| t.text).collect();
            // Every prepared word stands on it, but for those of other layouts.
            for (id, blocks) in &content.blocks {
                // A page to colour in has words of its own.
                let left_out = !id.starts_with("family-");
                for block in blocks.iter().filter(|_| !left_out) {
                    let text = block.text.replace("____", "");
                    for part in text.split("  ").map(str::trim) {
                        assert!(all.contains(part), "{name}, {}: `{part}` is missing", shipped.name);
                    }
                }
            }
        }
    }
}

/// Every point of the lists of the page for people who read little has a small picture before it, with words for who hears
/// it; the other pages have none.
#[test]
fn small_pictures_stand_beside_every_point_of_the_picture_first_page() {
    let fonts = Fonts::load().unwrap();
    let words = words();
    for (name, exam, reckoning) in examples() {
        let content = family::content(&exam, &reckoning, &clinic(), Asked::default(), &words).unwrap();
        let sheets = |shipped: Shipped| {
            sides(&shipped.read().unwrap(), (&exam, &reckoning), &content, &words, &fonts).unwrap()
        };
        let tags: Vec<Tag> =
            sheets(PICTURE_FIRST).into_iter().flat_map(|sheet| sheet.elements).map(|e| e.tag).collect();
        // What comes next, and how sure it is, are no points of the lists.
        let other = ["family-next", "family-sure"].map(|id| content.blocks.get(id).into_iter().flatten());
        let other = other.into_iter().flatten().filter(|b| b.kind == Kind::Item).count();
        let points = tags.iter().filter(|tag| matches!(tag, Tag::Item { .. })).count() - other;
        let signs: Vec<(usize, &String)> = tags
            .iter()
            .enumerate()
            .filter_map(|(at, tag)| if let Tag::Sign { alt, .. } = tag { Some((at, alt)) } else { None })
            .collect();
        assert_eq!(signs.len(), points, "{name}");
        for (at, alt) in signs {
            assert!(matches!(tags[at + 1], Tag::Item { .. }) && !alt.is_empty(), "{name}: {alt}");
        }
        let small = |tag: &&Tag| matches!(tag, Tag::Figure { alt } if *alt == "A telephone" || *alt == "A baby that moves");
        assert!(tags.iter().filter(small).count() >= 2, "{name}");
        let on_others = sheets(FAMILY_PAGE).into_iter().flat_map(|sheet| sheet.elements);
        assert!(on_others.into_iter().all(|e| !matches!(e.tag, Tag::Sign { .. })), "{name}");
    }
}

#[test]
fn a_page_is_small_and_always_the_same() {
    let fonts = Fonts::load().unwrap();
    let words = words();
    let (exam, reckoning, content) = page_of("head-down-left", &words);
    for shipped in FAMILY {
        let make = || {
            let layout = shipped.read().unwrap();
            let sheets = sides(&layout, (&exam, &reckoning), &content, &words, &fonts).unwrap();
            write::pdf_pages(&sheets, &fonts).unwrap()
        };
        let file = make();
        assert!(file.len() <= 150 << 10, "{}: {} bytes", shipped.name, file.len());
        assert!(file == make(), "{}: two files differ", shipped.name);
    }
}

#[test]
fn two_slips_stand_on_one_sheet_with_a_line_between() {
    let here = tempfile::tempdir().unwrap();
    let to = here.path().join("slips.svg").display().to_string();
    let output = run(&["note", "examples/head-down-left.toml", "--layout", "chart-slips", "-o", &to]);
    assert_eq!(output.status.code(), Some(0), "{}", said(&output));
    let text = std::fs::read_to_string(&to).unwrap();
    assert!(text.contains("width=\"210mm\"") && text.contains("height=\"297mm\""), "{}", &text[..300]);
    assert_eq!(text.matches("Signature").count(), 2);
    assert!(text.contains("copy-2-"), "names stay unique");
    assert!(text.contains("stroke-dasharray"));
}

#[test]
fn layouts_are_listed_and_printed_and_a_file_of_ones_own_is_taken() {
    let list = said(&run(&["layouts"]));
    let page = std::fs::read_to_string(path("layouts/README.md")).unwrap();
    for shipped in SHIPPED {
        assert!(page.contains(&format!("\n| `{}` | ", shipped.name)), "layouts/README.md: {}", shipped.name);
        assert!(list.contains(shipped.name) && list.contains(shipped.about), "{list}");
    }
    let text = said(&run(&["layouts", "family-page"]));
    assert_eq!(text, FAMILY_PAGE.text);
    let here = tempfile::tempdir().unwrap();
    let own = here.path().join("ours.toml");
    std::fs::write(&own, text.replace("\"a4\"", "\"letter\"")).unwrap();
    let to = here.path().join("page.svg").display().to_string();
    let arguments = ["handout", "examples/head-down-left.toml", "--layout", own.to_str().unwrap(), "-o", &to];
    assert_eq!(run(&arguments).status.code(), Some(0));
    assert!(std::fs::read_to_string(&to).unwrap().contains("width=\"215.9mm\""));
    // Several sides: a picture file each.
    let to = here.path().join("large.svg").display().to_string();
    let output = run(&["handout", "examples/head-down-left.toml", "--large-print", "-o", &to]);
    assert_eq!(output.status.code(), Some(0), "{}", said(&output));
    for name in ["large.svg", "large-2.svg", "large-3.svg", "large-4.svg"] {
        assert!(here.path().join(name).is_file(), "{name}");
    }
}

#[test]
fn what_a_clinic_may_write_wrongly_is_told() {
    let here = tempfile::tempdir().unwrap();
    let own = here.path().join("ours.toml");
    let to = here.path().join("page.pdf").display().to_string();
    let refused = |from: &str, to_be: &str, expected: &[&str]| {
        assert!(FAMILY_PAGE.text.contains(from), "{from}");
        std::fs::write(&own, FAMILY_PAGE.text.replacen(from, to_be, 1)).unwrap();
        let arguments =
            ["handout", "examples/head-down-left.toml", "--layout", own.to_str().unwrap(), "-o", &to];
        let output = run(&arguments);
        assert_eq!(output.status.code(), Some(2), "{to_be}: {}", said(&output));
        for part in expected {
            assert!(said(&output).contains(part), "{to_be}: `{part}` is not in\n{}", said(&output));
        }
        assert!(!std::path::Path::new(&to).exists());
    };
    refused("margin     = \"9 mm\"", "margin = \"-9 mm\"", &["`-9 mm`", "^^^", "not under 0"]);
    refused("margin     = \"9 mm\"", "margin = \"4 mm\"", &["margin 4 mm cannot be printed", "8 mm or more"]);
    refused(
        "at-least = \"52 mm\"",
        "at-least = \"10 mm\"",
        &["a picture of 10 mm shows nothing", "25 mm or more"],
    );
    refused("at-least = \"52 mm\"", "at-least = \"1 cm\"", &["at-least `1 cm`", "Did you mean `10 mm`?"]);
    refused(
        "row     = \"4\"\ncolumns = \"1-14\"",
        "row = \"4\"\ncolumns = \"1-1\"",
        &["box `picture`", "give it more room"],
    );
    refused("words:family-go", "words:family-goo", &["there is no message `family-goo`", "family-go"]);
    refused(
        "holds   = \"picture\"",
        "holds = \"pictures\"",
        &["`pictures` is not known", "Did you mean `picture`"],
    );
    refused("type    = \"13 pt\"\nat-least", "type = \"9 pt\"\nat-least", &["is hard to read", "12 pt"]);
    refused("type    = \"13 pt\"\nat-least", "type = \"90 pt\"\nat-least", &["box `picture`"]);
    refused("edge    = \"bold\"", "egde = \"bold\"", &["`egde` is not known", "Did you mean `edge`"]);
    refused("[page]", "[pages]", &["there is no [page]", "Did you mean `page`"]);
    // Two faults, both told.
    refused(
        "margin     = \"9 mm\"",
        "margin = \"9\"\npapper = \"a4\"",
        &["Did you mean `9 mm`", "Did you mean `paper`"],
    );
    // Boxes in which nothing stands make no page.
    std::fs::write(&own, "[page]\npaper = \"a4\"\nmargin = \"9 mm\"\n[[box]]\nname = \"empty\"\n").unwrap();
    let output =
        run(&["handout", "examples/head-down-left.toml", "--layout", own.to_str().unwrap(), "-o", &to]);
    assert_eq!(output.status.code(), Some(2), "{}", said(&output));
    assert!(said(&output).contains("nothing stands in any box of the layout"), "{}", said(&output));
    assert!(!std::path::Path::new(&to).exists());
    let output = run(&["handout", "examples/twins.toml", "--layout", "large-prnt", "-o", &to]);
    assert!(said(&output).contains("did you mean `large-print`?"), "{}", said(&output));
}

#[test]
fn a_clinic_with_a_long_name_or_odd_numbers_has_a_good_page_or_a_clear_error() {
    let here = tempfile::tempdir().unwrap();
    let file = here.path().join("clinic.toml");
    let to = here.path().join("page.pdf").display().to_string();
    let handout = |text: &str| {
        std::fs::write(&file, text).unwrap();
        let arguments = [
            "handout",
            "examples/probably-breech.toml",
            "--clinic",
            file.to_str().unwrap(),
            "--force",
            "-o",
            &to,
        ];
        let output = run(&arguments);
        (output.status.code(), said(&output))
    };
    let name = "Community Midwives of Larkfield, Upper Harrow & Willow Lanes";
    assert_eq!(name.chars().count(), 60);
    let (code, told) = handout(&format!(
        "name = \"{name}\"\n[telephone]\nlabour-ward = \"01632 960123\"\nday = \"01632 960124\"\nnight = \"01632 960125\"\nemergency = \"999\"\n"
    ));
    assert_eq!(code, Some(0), "{told}");
    let long = "Geburtshilfeundschwangerenbetreuungsvereinigungszentrumwestxx";
    let (code, told) = handout(&format!("name = \"{long}\"\n"));
    assert!(code == Some(0) || told.contains("is wider than the box"), "{told}");
    for odd in ["ring twice", "01632 960123 \u{1f600}", "0\u{0}", "", "--", "\u{202e}123 456"] {
        let (code, told) = handout(&format!("[telephone]\nday = {:?}\n", odd));
        assert_eq!(code, Some(2), "{odd}: {told}");
        assert!(
            told.contains("a telephone number, such as") || told.contains("clinic.toml"),
            "{odd}: {told}"
        );
    }
    // The longest number that is kept on one line, beside a small picture or without it.
    std::fs::write(&file, "[telephone]\nlabour-ward = \"00441632960417960500\"\n").unwrap();
    for layout in ["family-page", "large-print", "picture-first"] {
        let clinic = file.to_str().unwrap();
        let arguments = [
            "handout",
            "examples/crosswise.toml",
            "--layout",
            layout,
            "--clinic",
            clinic,
            "--force",
            "-o",
            &to,
        ];
        let output = run(&arguments);
        assert_eq!(output.status.code(), Some(0), "{layout}: {}", said(&output));
    }
    // Without a file, and without some of its lines: a page, and what is to be written in.
    let (code, told) = handout("name = \"Larkfield\"\n[telephone]\nday = \"01632 960124\"\n");
    assert_eq!(code, Some(0));
    assert!(told.contains("write in by hand before the page goes home: a telephone number that is answered at night, the emergency number, where to come in"), "{told}");
    let output = run(&["handout", "examples/twins.toml", "-o", &to, "--force", "--emergency", "112"]);
    assert!(
        said(&output).contains(
            "the clinic's name, a telephone number that is answered at night, where to come in (no --clinic file is given)"
        ),
        "{}",
        said(&output)
    );
    let output = run(&["handout", "examples/twins.toml", "-o", &to, "--force", "--emergency", "ring"]);
    assert_eq!(output.status.code(), Some(2));
    assert!(said(&output).contains("--emergency ring: expected a telephone number"), "{}", said(&output));
}
