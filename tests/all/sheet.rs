//! Layout files and laid-out pages: messages, places, scale, the one turn of the y axis.

use crate::pages::{cases, texts, words};
use crate::stand_in::{group, scene};
use handspan::figure::scene::{Colour, FillRule, Frame, Item, Scene, Step};
use handspan::fonts::Fonts;
use handspan::sheet::{
    Block, Cell, Content, Element, FAMILY_PAGE, Kind, Layout, PICTURE, SHIPPED, Sheet, SheetError, Tag,
    compose, compose_all,
};
use handspan::units::{FigurePoint, PagePoint};
use std::collections::BTreeMap;

fn fonts() -> Fonts {
    Fonts::load().unwrap()
}

fn picture_sheet(scene: &Scene) -> Sheet {
    let layout = PICTURE.read().unwrap();
    compose(&layout, std::slice::from_ref(scene), &Content::default(), &words(), &fonts()).unwrap()
}

fn blocks(name: &str, blocks: Vec<Block>) -> Content {
    Content { blocks: BTreeMap::from([(name.to_owned(), blocks)]), ..Content::default() }
}

/// A page of 120 x 80 mm with one box of words.
fn small(more: &str) -> Layout {
    let text = format!(
        "[page]\npaper = \"120 x 80 mm\"\nmargin = \"10 mm\"\n[[box]]\nname = \"say\"\nholds = [\"words:say\"]\n{more}"
    );
    Layout::read("small.toml", &text).unwrap()
}

fn write(layout: &Layout, text: &str) -> Result<Sheet, SheetError> {
    compose(layout, &[], &blocks("say", vec![Block::new(Kind::Text, text)]), &words(), &fonts())
}

#[test]
fn a_layout_file_is_read_or_its_fault_is_named() {
    let page = "[page]\npaper = \"a4\"\nmargin = \"10 mm\"\n";
    let one = "[[box]]\nname = \"call\"\n";
    let box_keys = "name, holds, page, row, columns, type, may-shrink, at-least, edge, padding, padding-top, padding-bottom, style, labels, signs, paragraphs";
    let page_keys =
        "paper, margin, scale, columns, column-gap, row-gap, smallest-type, copies-across, copies-down";
    let holds = "\"picture\", \"words:MESSAGE\" or \"lines:NUMBER\", or several of these in square brackets";
    let type_size = "a type size such as \"14 pt\", from 12 pt to 96 pt";
    let length = "a length such as \"10 mm\", not under 0";
    let tracks = |last| format!("a number or a range between quotes, such as \"2-4\", up to {last}");
    let cases = [
        (
            format!("{page}{one}hold = [\"picture\"]\n"),
            format!("x.toml:6:1: box `call`: `hold` is not known here; expected {box_keys}; did you mean `holds`?"),
        ),
        (
            format!("{page}margins = \"3 mm\"\n{one}"),
            format!("x.toml:4:1: page: `margins` is not known here; expected {page_keys}; did you mean `margin`?"),
        ),
        (
            format!("{page}{one}[boxes]\n"),
            "x.toml:6:2: `boxes` is not known here; expected page, box; did you mean `box`?".to_owned(),
        ),
        (
            format!("{page}{one}holds = [\"pictures\"]\n"),
            format!("x.toml:6:10: box `call`: holds `pictures` is not known; expected {holds}; did you mean `picture`?"),
        ),
        (
            format!("{page}{one}holds = \"lines:99\"\n"),
            format!("x.toml:6:9: box `call`: holds `lines:99` is not known; expected {holds}; did you mean `lines:3`, from 1 to 20?"),
        ),
        (
            format!("{page}{one}holds = [\"picture\", \"words:a\"]\n"),
            "x.toml:6:9: box `call`: a picture needs a box of its own".to_owned(),
        ),
        (
            format!("{page}{one}holds = 3\n"),
            format!("x.toml:6:9: box `call`: holds is a word between quotes, or several; expected {holds}"),
        ),
        (
            format!("{page}{one}style = \"line\"\n"),
            "x.toml:6:9: box `call`: style goes with holds = \"picture\"".to_owned(),
        ),
        (
            format!("{page}{one}holds = \"picture\"\nsigns = \"beside\"\n"),
            "x.toml:7:9: box `call`: signs stand beside words, not in a picture".to_owned(),
        ),
        (
            format!("{page}{one}type = \"11 pt\"\n"),
            format!("x.toml:6:8: box `call`: type `11 pt` is hard to read; expected {type_size}"),
        ),
        (
            format!("{page}{one}type = \"12\"\n"),
            format!("x.toml:6:8: box `call`: type `12`; expected {type_size}; did you mean `12 pt`?"),
        ),
        (
            format!("{page}{one}type = \"NaN pt\"\n"),
            format!("x.toml:6:8: box `call`: type `NaN pt`; expected {type_size}"),
        ),
        (
            format!("{page}{one}type = 12\n"),
            format!("x.toml:6:8: box `call`: type stands between quotes; expected {type_size}"),
        ),
        (
            format!("{page}{one}columns = \"1-4\"\n"),
            format!("x.toml:6:11: box `call`: columns `1-4`; expected {}", tracks(1)),
        ),
        (
            format!("{page}{one}row = \"0\"\n"),
            format!("x.toml:6:7: box `call`: row `0`; expected {}", tracks(24)),
        ),
        (
            format!("{page}{one}page = 9\n"),
            "x.toml:6:8: box `call`: page cannot be this; expected a whole number from 1 to 8".to_owned(),
        ),
        (
            format!("{page}{one}edge = \"lime\"\n"),
            "x.toml:6:8: box `call`: edge `lime` is not known; expected none, line, bold; did you mean `line`?".to_owned(),
        ),
        (
            format!("{page}{one}padding = \"4\"\n"),
            format!("x.toml:6:11: box `call`: padding `4`; expected {length}; did you mean `4 mm`?"),
        ),
        (
            format!("{page}{one}padding = \"-4 mm\"\n"),
            format!("x.toml:6:11: box `call`: padding `-4 mm`; expected {length}"),
        ),
        (
            format!("{page}{one}{one}"),
            "x.toml:7:8: box `call` is there twice; expected another name".to_owned(),
        ),
        (
            format!("{page}[[box]]\nholds = \"picture\"\n"),
            "x.toml:4:1: box 1: name is missing; expected a word of your own between quotes".to_owned(),
        ),
        (
            "[page]\npaper = \"a5\"\nmargin = \"10 mm\"\n[[box]]\nname = \"a\"\n".into(),
            "x.toml:2:9: page: paper `a5` is not known; expected a4, letter, a3, or a size such as \"120 x 80 mm\", or \"as picture\"; did you mean `a3`?".to_owned(),
        ),
        (
            "[page]\npaper = \"a4\"\nmargin = \"5 mm\"\n[[box]]\nname = \"a\"\n".into(),
            "x.toml:3:10: page: margin 5 mm cannot be printed; expected 8 mm or more".to_owned(),
        ),
        (
            "[page]\npaper = \"as picture\"\nmargin = \"0 mm\"\n[[box]]\nname = \"a\"\n".into(),
            "x.toml:2:9: page: paper \"as picture\" needs a scale; expected scale = \"3.5 mm per cm\" beside it".to_owned(),
        ),
        (
            "[page]\npaper = \"a4\"\nmargin = \"9 mm\"\nscale = \"3 mm per cm\"\n[[box]]\nname = \"a\"\n"
                .into(),
            "x.toml:4:9: page: scale goes with paper = \"as picture\"; on other paper the box decides".to_owned(),
        ),
    ];
    for (text, expected) in cases {
        let error = Layout::read("x.toml", &text).expect_err(&text);
        assert_eq!(error.to_string(), expected);
    }
    // Faults of TOML itself, and missing keys, come with their place.
    for text in [
        "[page\n",
        "[page]\npaper = \"a4\"\n[[box]]\nname = \"a\"\n",
        "[page]\npaper = 3\nmargin = \"9 mm\"\nbox = []\n",
    ] {
        let error = Layout::read("x.toml", text).expect_err(text);
        assert!(error.problems.iter().any(|problem| problem.place.is_some()), "{error}");
    }
}

#[test]
fn the_shipped_layouts_are_read() {
    for shipped in SHIPPED {
        shipped.read().unwrap_or_else(|e| panic!("{e}"));
    }
    let family = FAMILY_PAGE.read().unwrap();
    let error = family.on_paper("foolscap").unwrap_err().to_string();
    assert_eq!(
        error,
        "family-page.toml: paper `foolscap` is not known; expected a4, letter, a3, or a size such as \"120 x 80 mm\""
    );
}

/// The mark alone in a frame, as it lands on the page.
fn landed(at: FigurePoint) -> (Sheet, PagePoint) {
    let mark = |p: FigurePoint| Item::Stroke {
        path: vec![Step::Move(p), Step::Line(p)],
        colour: Colour::hex(0),
        width: 0.1,
        dash: None,
    };
    let scene = Scene {
        frame: Frame { left: -20.0, bottom: -10.0, right: 20.0, top: 40.0 },
        title: String::new(),
        description: "A mark".into(),
        lang: "en".into(),
        items: vec![mark(at)],
    };
    let sheet = picture_sheet(&scene);
    let place = match &sheet.elements[0].items[0] {
        Item::Stroke { path, width, .. } => {
            assert!((width - 0.35).abs() < 1e-6, "lengths follow the scale");
            match path[0] {
                Step::Move(p) => p,
                _ => panic!("a path starts with a move"),
            }
        }
        _ => panic!("the mark is a stroke, not clipped"),
    };
    (sheet, place)
}

#[test]
fn y_turns_once_and_her_left_is_at_the_viewers_right() {
    // 40 x 50 cm at 3.5 mm per cm.
    let (sheet, origin) = landed(FigurePoint::new(0.0, 0.0));
    assert_eq!((sheet.width_mm, sheet.height_mm), (140.0, 175.0));
    assert!((origin.x - 70.0).abs() < 1e-3 && (origin.y - 140.0).abs() < 1e-3);
    let (_, left) = landed(FigurePoint::new(10.0, 0.0));
    assert!((left.x - 105.0).abs() < 1e-3, "her left is to the right of the middle");
    let (_, up) = landed(FigurePoint::new(0.0, 10.0));
    assert!((up.y - 105.0).abs() < 1e-3, "up is up");
}

#[test]
fn the_scale_asked_for_beforehand_is_the_scale_drawn() {
    let f = fonts();
    for case in cases().iter().take(3) {
        for paper in ["a4", "letter"] {
            let layout = FAMILY_PAGE.read().unwrap().on_paper(paper).unwrap();
            let content = case.content();
            let scale = layout.scales(&[scene().frame], &content, &words(), &f).unwrap()[0];
            assert!((1.3..=3.5).contains(&scale), "{scale} mm per cm");
            let sheet = compose_all(&layout, &[scene()], &content, &words(), &f).unwrap().remove(0);
            let label = texts(&sheet).into_iter().find(|t| t.text == "Your left").expect("the label");
            assert!((label.size - 1.9 * scale).abs() < 1e-4);
            assert!(label.at.x > texts(&sheet).iter().find(|t| t.text == "Your right").unwrap().at.x);
        }
    }
}

#[test]
fn marks_that_reach_out_of_the_frame_are_cut_off_and_others_left_alone() {
    let clipped = |sheet: &Sheet| matches!(sheet.elements[0].items[0], Item::Clip { .. });
    assert!(clipped(&picture_sheet(&scene())), "the stand-in's body reaches out");
    let mut inside = scene();
    inside.items.retain(|i| !matches!(i, Item::Group { name, .. } if name == "mother"));
    assert!(!clipped(&picture_sheet(&inside)));
}

#[test]
fn a_picture_is_tagged_with_its_description() {
    let sheet = picture_sheet(&scene());
    assert_eq!(sheet.elements.len(), 1);
    assert_eq!(sheet.elements[0].tag, Tag::Figure { alt: scene().description });
}

#[test]
fn lines_break_between_words_and_keep_every_word() {
    let text = "Babies turn. This page shows one day. When you get a new page, put this one away.";
    let sheet = write(&small(""), text).unwrap();
    let lines = texts(&sheet);
    assert!(lines.len() >= 2);
    assert_eq!(lines.iter().map(|t| t.text.as_str()).collect::<String>(), text);
    for pair in lines.windows(2) {
        assert!(pair[1].at.y > pair[0].at.y && pair[1].at.x == pair[0].at.x);
        assert!(pair[0].text.ends_with(' '), "the space at the break is kept for whoever reads the text out");
    }
}

#[test]
fn no_short_word_is_left_alone_on_the_last_line() {
    let f = fonts();
    for width in 60..110 {
        let text = format!(
            "[page]\npaper = \"{width} x 80 mm\"\nmargin = \"10 mm\"\n[[box]]\nname = \"say\"\nholds = \"words:say\"\n"
        );
        let layout = Layout::read("w.toml", &text).unwrap();
        let sheet = write(
            &layout,
            "Babies turn. This page shows one day. When you get a new page, put this one away.",
        );
        let lines = texts(&sheet.unwrap());
        let last = lines.last().unwrap();
        let measured = f.measure(last.face, &last.text, last.size).unwrap();
        assert!(measured > 0.1 * (width as f32 - 20.0), "{width} mm: `{}` stands alone", last.text);
    }
}

#[test]
fn type_shrinks_as_far_as_it_may_and_then_the_box_is_named() {
    let fits = "word ".repeat(100);
    let large = write(&small("type = \"20 pt\"\nmay-shrink = \"12 pt\"\n"), &fits).unwrap();
    let size_pt = texts(&large)[0].size * 72.0 / 25.4;
    assert!((12.0..20.0).contains(&size_pt), "{size_pt}");
    let error = write(&small("type = \"20 pt\"\n"), &fits).unwrap_err().to_string();
    assert!(error.starts_with("small.toml: box `say`: its words need "), "{error}");
    assert!(error.ends_with(" mm more than there is; the page holds too much"), "{error}");
    let error = write(&small("type = \"40 pt\"\n"), "Incomprehensibilities").unwrap_err();
    assert_eq!(error.to_string(), "small.toml: box `say`: `Incomprehensibilities` is wider than the box");
}

#[test]
fn what_cannot_be_said_or_shown_is_an_error() {
    let error = compose(&small(""), &[], &Content::default(), &words(), &fonts()).unwrap_err();
    assert_eq!(error.to_string(), "small.toml: box `say`: there is no message `say`");
    let error = write(&small(""), "\u{4eca}").unwrap_err();
    assert!(error.to_string().contains("U+4ECA"), "{error}");
    let error = compose(&small(""), &[scene()], &blocks("say", vec![]), &words(), &fonts()).unwrap_err();
    assert_eq!(error.to_string(), "small.toml: the layout holds 0 pictures, but 1 were given");
    let layout = PICTURE.read().unwrap();
    let error = compose(&layout, &[], &Content::default(), &words(), &fonts()).unwrap_err();
    assert_eq!(error.to_string(), "picture.toml: the layout holds 1 pictures, but 0 were given");
}

/// Two copies of a page that holds a table and a list have two tables and two lists, not one of each.
#[test]
fn lists_and_tables_of_copies_stay_apart() {
    let text = "[page]\npaper = \"120 x 200 mm\"\nmargin = \"8 mm\"\ncopies-down = 2\n[[box]]\nname = \"say\"\nholds = [\"words:say\"]\n";
    let layout = Layout::read("copies.toml", text).unwrap();
    let cell = |row, left, head| Kind::Cell(Cell { row, across: (left, left + 500), head });
    let told = blocks(
        "say",
        vec![
            Block::new(cell(0, 0, true), "When"),
            Block::new(cell(0, 500, true), "Tape"),
            Block::new(cell(1, 0, true), "31+0"),
            Block::new(cell(1, 500, false), "30 cm"),
            Block::new(Kind::Item, "one"),
            Block::new(Kind::Item, "two"),
        ],
    );
    let sheet = compose(&layout, &[], &told, &words(), &fonts()).unwrap();
    let tables: Vec<usize> = sheet
        .elements
        .iter()
        .filter_map(|e| if let Tag::Cell { table, .. } = e.tag { Some(table) } else { None })
        .collect();
    let lists: Vec<usize> = sheet
        .elements
        .iter()
        .filter_map(|e| if let Tag::Item { list } = e.tag { Some(list) } else { None })
        .collect();
    assert_eq!((tables.len(), lists.len()), (8, 4));
    let mut numbers = [&tables[..], &lists[..]].concat();
    numbers.dedup();
    assert_eq!(numbers.len(), 4, "tables {tables:?}, lists {lists:?}");
    numbers.sort_unstable();
    numbers.dedup();
    assert_eq!(numbers.len(), 4, "one number stands for two: tables {tables:?}, lists {lists:?}");
}

#[test]
fn lines_to_write_on_are_drawn_beside_their_label() {
    let content = blocks("say", vec![Block::new(Kind::Blank, "Felt on ____ at 37 weeks")]);
    let sheet = compose(&small(""), &[], &content, &words(), &fonts()).unwrap();
    let rule = sheet.elements.iter().find(|e| e.tag == Tag::Artifact).expect("a line");
    let Item::Stroke { path, .. } = &rule.items[0] else { panic!("a stroke") };
    let (Step::Move(from), Step::Line(to)) = (path[0], path[1]) else { panic!("one line") };
    let words = texts(&sheet);
    assert_eq!(words.iter().map(|t| t.text.trim_end()).collect::<Vec<_>>(), ["Felt on", "at 37 weeks"]);
    let end = words[0].at.x + fonts().measure(words[0].face, "Felt on", words[0].size).unwrap();
    assert!(from.x > end && to.x < words[1].at.x && to.x - from.x > 15.0);
    assert!(from.y > words[0].at.y, "it runs under the writing");
}

#[test]
fn a_box_may_hold_bare_lines_to_write_on() {
    let text = "[page]\npaper = \"120 x 80 mm\"\nmargin = \"10 mm\"\n[[box]]\nname = \"notes\"\nholds = \"lines:3\"\n";
    let layout = Layout::read("lines.toml", text).unwrap();
    let sheet = compose(&layout, &[], &Content::default(), &words(), &fonts()).unwrap();
    let lines: Vec<&Item<PagePoint>> = sheet.elements.iter().flat_map(|e| &e.items).collect();
    assert_eq!(lines.len(), 3);
    for line in lines {
        let Item::Stroke { path, .. } = line else { panic!("a line is a stroke") };
        let (Step::Move(from), Step::Line(to)) = (path[0], path[1]) else { panic!("one line") };
        assert!((from.x - 10.0).abs() < 0.01 && (to.x - 110.0).abs() < 0.01);
    }
}

#[test]
fn two_pictures_keep_their_names_apart() {
    let text = "[page]\npaper = \"a4\"\nmargin = \"10 mm\"\ncolumns = 2\n\
                [[box]]\nname = \"a\"\nholds = [\"picture\"]\ncolumns = \"1\"\n\
                [[box]]\nname = \"b\"\nholds = [\"picture\"]\ncolumns = \"2\"\n";
    let layout = Layout::read("two.toml", text).unwrap();
    let mut inner = scene();
    inner.items = vec![group("baby-1", "", vec![group("baby-1-head", "", vec![dot()])])];
    let sheet = compose(&layout, &[inner.clone(), inner], &Content::default(), &words(), &fonts()).unwrap();
    assert_eq!(names(&sheet.elements[0]), ["baby-1", "baby-1-head"]);
    assert_eq!(names(&sheet.elements[1]), ["picture-2-baby-1", "picture-2-baby-1-head"]);
}

fn dot() -> Item<FigurePoint> {
    let p = |x, y| FigurePoint::new(x, y);
    let path = vec![Step::Move(p(0.0, 0.0)), Step::Line(p(1.0, 0.0)), Step::Line(p(0.0, 1.0)), Step::Close];
    Item::Fill { path, colour: Colour::hex(0), rule: FillRule::NonZero }
}

fn names(element: &Element) -> Vec<String> {
    fn collect(items: &[Item<PagePoint>], out: &mut Vec<String>) {
        for item in items {
            if let Item::Group { name, items, .. } = item {
                out.push(name.clone());
                collect(items, out);
            }
        }
    }
    let mut out = vec![];
    collect(&element.items, &mut out);
    out
}

#[test]
fn the_reading_order_is_title_picture_findings_then_when_to_call() {
    let case = &cases()[0];
    let order = |sheet: &Sheet| -> Vec<String> {
        let headings = sheet.elements.iter().filter_map(|e| match &e.tag {
            Tag::Figure { .. } => Some("(picture)".to_owned()),
            Tag::H1 | Tag::H2 => {
                let line = |item: &Item<PagePoint>| match item {
                    Item::Text(t) => t.text.clone(),
                    _ => String::new(),
                };
                Some(e.items.iter().map(line).collect())
            }
            _ => None,
        });
        headings.collect()
    };
    assert_eq!(
        order(&case.page("a4", &fonts())),
        [
            "How your baby is lying",
            "(picture)",
            "What comes next",
            "How sure is this?",
            "Is your baby moving less, or differently?"
        ]
    );
    assert_eq!(
        order(&case.back("a4", &fonts())),
        [
            "Keep feeling for your baby’s movements, right up to the birth.",
            "If life feels too heavy",
            "Call 999 now",
            "Call 01632\u{a0}960\u{a0}417 now and come in",
            "Call 01632\u{a0}960\u{a0}417 today"
        ]
    );
}

#[test]
fn words_shrink_until_the_picture_fills_the_width_of_its_box() {
    let text = "[page]\npaper = \"120 x 140 mm\"\nmargin = \"10 mm\"\n\
                [[box]]\nname = \"a\"\nholds = \"picture\"\n\
                [[box]]\nname = \"say\"\nholds = \"words:say\"\nrow = \"2\"\ntype = \"20 pt\"\nmay-shrink = \"12 pt\"\n";
    let layout = Layout::read("picture-first.toml", text).unwrap();
    // 80 mm high at full width: 40 mm are left for the words.
    let frame = Frame { left: 0.0, bottom: 0.0, right: 40.0, top: 32.0 };
    let scale = |words_count: usize| {
        let content = blocks("say", vec![Block::new(Kind::Text, "word ".repeat(words_count))]);
        layout.mm_per_cm(&frame, &content, &words(), &fonts()).unwrap()
    };
    assert!((scale(5) - 2.5).abs() < 1e-3);
    assert!((scale(50) - 2.5).abs() < 1e-3, "the words give way");
    assert!((1.0..2.4).contains(&scale(120)), "as far as they may; then the picture does");
}
