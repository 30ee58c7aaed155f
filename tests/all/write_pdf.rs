//! The PDF: version, language, title, fonts, tags, size, always the same.

use crate::pages::{cases, words};
use crate::stand_in::scene;
use handspan::figure::scene::{Align, Colour, Item, Role, Step, Text};
use handspan::fonts::{Face, Fonts};
use handspan::sheet::{Content, Element, PICTURE, Sheet, Tag, compose, compose_all};
use handspan::units::PagePoint;
use handspan::write::{pdf, pdf_pages};
use lopdf::{Dictionary, Document, Object};

fn fonts() -> Fonts {
    Fonts::load().unwrap()
}

fn page() -> (Sheet, Document) {
    let sheet = cases()[0].page("a4", &fonts());
    let document = Document::load_mem(&pdf(&sheet, &fonts()).unwrap()).unwrap();
    (sheet, document)
}

fn dict<'a>(doc: &'a Document, of: &'a Dictionary, key: &str) -> &'a Dictionary {
    doc.dereference(of.get(key.as_bytes()).unwrap_or_else(|_| panic!("no /{key}")))
        .unwrap()
        .1
        .as_dict()
        .unwrap()
}

fn content(doc: &Document) -> lopdf::content::Content {
    let page = doc.page_iter().next().unwrap();
    lopdf::content::Content::decode(&doc.get_page_content(page)).unwrap()
}

#[test]
fn version_language_title_and_no_dates() {
    let (_, doc) = page();
    assert_eq!(doc.version, "1.7");
    let catalog = doc.catalog().unwrap();
    assert_eq!(catalog.get(b"Lang").unwrap().as_str().unwrap(), b"en");
    assert!(dict(&doc, catalog, "MarkInfo").get(b"Marked").unwrap().as_bool().unwrap());
    assert!(dict(&doc, catalog, "ViewerPreferences").get(b"DisplayDocTitle").unwrap().as_bool().unwrap());
    let info = dict(&doc, &doc.trailer, "Info");
    assert_eq!(info.get(b"Title").unwrap().as_str().unwrap(), b"How your baby is lying");
    assert!(info.get(b"CreationDate").is_err() && info.get(b"ModDate").is_err());
}

#[test]
fn it_is_small_and_always_the_same() {
    let sheet = cases()[0].page("a4", &fonts());
    let once = pdf(&sheet, &fonts()).unwrap();
    assert!(once.len() < 150_000, "{} bytes", once.len());
    for _ in 0..3 {
        assert_eq!(once, pdf(&sheet, &fonts()).unwrap());
    }
    let other = pdf(&cases()[1].page("a4", &fonts()), &fonts()).unwrap();
    let id = |bytes: &[u8]| {
        let doc = Document::load_mem(bytes).unwrap();
        doc.trailer.get(b"ID").unwrap().as_array().unwrap()[0].as_str().unwrap().to_vec()
    };
    assert_eq!(id(&once).len(), 16);
    assert_ne!(id(&once), id(&other), "another page has another id");
}

/// The structure's leaves in reading order: type and content number; every node points back at its parent.
fn leaves(doc: &Document) -> Vec<(String, i64)> {
    fn walk(doc: &Document, node: &Object, parent: Option<lopdf::ObjectId>, out: &mut Vec<(String, i64)>) {
        let id = node.as_reference().unwrap();
        let dict = doc.get_dictionary(id).unwrap();
        if let Some(parent) = parent {
            assert_eq!(dict.get(b"P").unwrap().as_reference().unwrap(), parent);
        }
        match dict.get(b"K").unwrap() {
            Object::Integer(number) => {
                let kind = String::from_utf8(dict.get(b"S").unwrap().as_name().unwrap().to_vec()).unwrap();
                out.push((kind, *number));
            }
            Object::Array(kids) => kids.iter().for_each(|k| walk(doc, k, Some(id), out)),
            kid => walk(doc, kid, Some(id), out),
        }
    }
    let mut out = vec![];
    walk(doc, doc.catalog().unwrap().get(b"StructTreeRoot").unwrap(), None, &mut out);
    out
}

#[test]
fn every_element_is_tagged_in_reading_order() {
    // Each side by itself: together they hold all that the page says.
    let sides = cases()[0].sides("a4", &fonts());
    assert_eq!(sides.len(), 2);
    let tagged: usize = sides.iter().map(assert_tagged_in_reading_order).sum();
    assert!(tagged > 40, "{tagged}");
}

/// Every element of a side is tagged, in its order; how many there are.
fn assert_tagged_in_reading_order(sheet: &Sheet) -> usize {
    let doc = Document::load_mem(&pdf(sheet, &fonts()).unwrap()).unwrap();
    let expected: Vec<(String, i64)> = sheet
        .elements
        .iter()
        .filter_map(|e| match e.tag {
            Tag::H1 => Some("H1"),
            Tag::H2 => Some("H2"),
            Tag::P => Some("P"),
            Tag::Item { .. } => Some("LBody"),
            Tag::Cell { head: true, .. } => Some("TH"),
            Tag::Cell { head: false, .. } => Some("TD"),
            Tag::Figure { .. } | Tag::Sign { .. } => Some("Figure"),
            Tag::Artifact => None,
        })
        .zip(0..)
        .map(|(s, n)| (s.to_owned(), n))
        .collect();
    assert!(expected.len() > 12, "{}", expected.len());
    assert_eq!(leaves(&doc), expected);

    // The content carries the same marks, each once, in the same order; all else is decoration.
    let mut marks = vec![];
    let mut depth = 0;
    for op in content(&doc).operations {
        match op.operator.as_str() {
            "BDC" => {
                let name = String::from_utf8(op.operands[0].as_name().unwrap().to_vec()).unwrap();
                let number = op.operands[1].as_dict().unwrap().get(b"MCID").unwrap().as_i64().unwrap();
                marks.push((name, number));
                depth += 1;
            }
            "BMC" => {
                assert_eq!(op.operands[0].as_name().unwrap(), b"Artifact");
                depth += 1;
            }
            "EMC" => depth -= 1,
            "f" | "f*" | "S" | "TJ" => assert_eq!(depth, 1, "`{}` outside of any mark", op.operator),
            _ => {}
        }
    }
    assert_eq!(marks, expected);
    assert_eq!(depth, 0);

    // From a mark back to its element.
    let root = dict(&doc, doc.catalog().unwrap(), "StructTreeRoot");
    let nums = dict(&doc, root, "ParentTree").get(b"Nums").unwrap().as_array().unwrap();
    let parents = doc.dereference(&nums[1]).unwrap().1.as_array().unwrap();
    assert_eq!(parents.len(), expected.len());
    for (parent, (kind, number)) in parents.iter().zip(&expected) {
        let element = doc.get_dictionary(parent.as_reference().unwrap()).unwrap();
        assert_eq!(element.get(b"S").unwrap().as_name().unwrap(), kind.as_bytes());
        assert_eq!(element.get(b"K").unwrap().as_i64().unwrap(), *number);
    }
    let page = doc.get_dictionary(doc.page_iter().next().unwrap()).unwrap();
    assert_eq!(page.get(b"StructParents").unwrap().as_i64().unwrap(), 0);
    assert_eq!(page.get(b"Tabs").unwrap().as_name().unwrap(), b"S");
    expected.len()
}

#[test]
fn sheets_become_pages_each_with_its_own_marks_in_one_reading_order() {
    let f = fonts();
    let mut first = cases()[0].page("a4", &f);
    // The lists stand on the back: the front has one heading alone.
    let mut second = cases()[1].back("letter", &f);
    first.elements.retain(|e| matches!(e.tag, Tag::H1 | Tag::P | Tag::Artifact));
    second.elements.retain(|e| matches!(e.tag, Tag::H2 | Tag::Item { .. }));
    let count = |sheet: &Sheet| sheet.elements.iter().filter(|e| e.tag != Tag::Artifact).count();
    let counts = [count(&first), count(&second)];
    assert!(counts[0] > 3 && counts[1] > 3 && counts[0] != counts[1], "{counts:?}");
    let sheets = [first, second];
    let bytes = pdf_pages(&sheets, &f).unwrap();
    assert_eq!(bytes, pdf_pages(&sheets, &f).unwrap());
    let doc = Document::load_mem(&bytes).unwrap();
    let pages: Vec<_> = doc.page_iter().collect();
    assert_eq!(pages.len(), 2);
    let mut sizes = vec![];
    for page in &pages {
        let media = doc.get_dictionary(*page).unwrap().get(b"MediaBox").unwrap().as_array().unwrap();
        sizes.push([media[2].as_float().unwrap().round(), media[3].as_float().unwrap().round()]);
    }
    assert_eq!(sizes, [[595.0, 842.0], [612.0, 792.0]]);

    // Marks are counted anew on each page, and each leads back to an element of its own page.
    let numbers: Vec<i64> = leaves(&doc).into_iter().map(|(_, number)| number).collect();
    let expected: Vec<i64> = counts.iter().flat_map(|n| 0..*n as i64).collect();
    assert_eq!(numbers, expected);
    let root = dict(&doc, doc.catalog().unwrap(), "StructTreeRoot");
    assert_eq!(root.get(b"ParentTreeNextKey").unwrap().as_i64().unwrap(), 2);
    let nums = dict(&doc, root, "ParentTree").get(b"Nums").unwrap().as_array().unwrap();
    assert_eq!(nums.len(), 4);
    for (number, page) in pages.iter().enumerate() {
        let page_dict = doc.get_dictionary(*page).unwrap();
        assert_eq!(page_dict.get(b"StructParents").unwrap().as_i64().unwrap(), number as i64);
        assert_eq!(nums[2 * number].as_i64().unwrap(), number as i64);
        let parents = doc.dereference(&nums[2 * number + 1]).unwrap().1.as_array().unwrap();
        assert_eq!(parents.len(), counts[number]);
        for parent in parents {
            let element = doc.get_dictionary(parent.as_reference().unwrap()).unwrap();
            assert_eq!(element.get(b"Pg").unwrap().as_reference().unwrap(), *page);
        }
    }
    assert!(pdf_pages(&[], &f).is_err(), "no page is no file");
}

#[test]
fn the_picture_has_words_for_who_cannot_see_it() {
    let (_, doc) = page();
    let figure = doc
        .objects
        .values()
        .filter_map(|o| o.as_dict().ok())
        .find(|d| d.get(b"S").is_ok_and(|s| s.as_name().is_ok_and(|n| n == b"Figure")))
        .expect("a figure");
    assert_eq!(figure.get(b"Alt").unwrap().as_str().unwrap(), scene().description.as_bytes());
    let bounds = figure.get(b"A").unwrap().as_dict().unwrap().get(b"BBox").unwrap().as_array().unwrap();
    let n: Vec<f32> = bounds.iter().map(|o| o.as_float().unwrap()).collect();
    assert!(n[0] < n[2] && n[1] < n[3] && n[2] < 595.3 && n[3] < 841.9, "{n:?}");
}

#[test]
fn the_title_is_told_as_xmp_too() {
    let mut sheet = cases()[0].page("a4", &fonts());
    sheet.title = "A & B <1>".into();
    let doc = Document::load_mem(&pdf(&sheet, &fonts()).unwrap()).unwrap();
    let id = doc.catalog().unwrap().get(b"Metadata").unwrap().as_reference().unwrap();
    let xmp = doc.get_object(id).unwrap().as_stream().unwrap();
    let xmp = String::from_utf8(xmp.content.clone()).unwrap();
    assert!(xmp.contains("<rdf:li xml:lang=\"x-default\">A &amp; B &lt;1&gt;</rdf:li>"), "{xmp}");
    assert!(xmp.contains("<pdfuaid:part>1</pdfuaid:part>"));
    assert!(!xmp.contains("  "), "no stray blanks: {xmp}");
}

#[test]
fn words_outside_ascii_are_kept_in_title_and_description() {
    let mut sheet = cases()[0].page("a4", &fonts());
    sheet.title = "C\u{f3}mo est\u{e1} su beb\u{e9}".into();
    let doc = Document::load_mem(&pdf(&sheet, &fonts()).unwrap()).unwrap();
    let title = dict(&doc, &doc.trailer, "Info").get(b"Title").unwrap().as_str().unwrap().to_vec();
    let units: Vec<u16> = title.chunks(2).map(|b| u16::from_be_bytes([b[0], b[1]])).collect();
    assert_eq!(units[0], 0xFEFF);
    assert_eq!(String::from_utf16(&units[1..]).unwrap(), sheet.title);
}

/// A sheet of 100 x 50 mm with one mark.
fn mark(item: Item<PagePoint>) -> Document {
    let sheet = Sheet {
        width_mm: 100.0,
        height_mm: 50.0,
        title: "t".into(),
        lang: "en".into(),
        description: "d".into(),
        elements: vec![Element { tag: Tag::P, items: vec![item] }],
    };
    Document::load_mem(&pdf(&sheet, &fonts()).unwrap()).unwrap()
}

fn operands(doc: &Document, operator: &str) -> Vec<Vec<f32>> {
    content(doc)
        .operations
        .iter()
        .filter(|op| op.operator == operator)
        .map(|op| op.operands.iter().filter_map(|o| o.as_float().ok()).collect())
        .collect()
}

#[test]
fn marks_are_in_points_from_the_bottom_left() {
    let path = vec![Step::Move(PagePoint::new(25.4, 10.0)), Step::Line(PagePoint::new(50.8, 10.0))];
    let doc = mark(Item::Stroke { path, colour: Colour::hex(0xFF0000), width: 0.5, dash: Some((1.0, 2.0)) });
    // 50 mm - 10 mm = 113.39 pt.
    assert_eq!(operands(&doc, "m"), [[72.0, 113.39]]);
    assert_eq!(operands(&doc, "l"), [[144.0, 113.39]]);
    assert_eq!(operands(&doc, "RG"), [[1.0, 0.0, 0.0]]);
    assert_eq!(operands(&doc, "w"), [[1.42]]);
}

fn text(words: &str, align: Align) -> Item<PagePoint> {
    Item::Text(Text {
        text: words.into(),
        at: PagePoint::new(50.0, 10.0),
        align,
        size: 5.0,
        face: Face::Regular,
        colour: Colour::hex(0),
        lang: "en".into(),
        role: Role::Body,
    })
}

#[test]
fn text_starts_where_its_alignment_says_and_is_kerned() {
    let f = fonts();
    let width = f.measure(Face::Regular, "Toto", 5.0).unwrap();
    for (align, left) in
        [(Align::Start, 50.0), (Align::Middle, 50.0 - width / 2.0), (Align::End, 50.0 - width)]
    {
        let doc = mark(text("Toto", align));
        let at = operands(&doc, "Tm").remove(0);
        assert!((at[4] - left * 72.0 / 25.4).abs() < 0.01, "{align:?}");
        // What a viewer adds up: own widths less kerning is the shaped width.
        let shown = content(&doc).operations.into_iter().find(|op| op.operator == "TJ").unwrap();
        let parts = shown.operands[0].as_array().unwrap().clone();
        let kerning: f32 = parts.iter().filter_map(|o| o.as_float().ok()).sum();
        let own: f32 = f.shape(Face::Regular, "Toto").unwrap().iter().map(|g| g.width).sum();
        assert!(kerning > 20.0, "`To` is drawn together");
        assert!(((own - kerning / 1000.0) * 5.0 - width).abs() < 0.01);
    }
}

#[test]
fn the_same_page_without_words_has_no_fonts() {
    let mut bare = scene();
    bare.items.retain(|i| !matches!(i, Item::Group { name, .. } if name == "labels"));
    let layout = PICTURE.read().unwrap();
    let sheet = compose(&layout, &[bare], &Content::default(), &words(), &fonts()).unwrap();
    let doc = Document::load_mem(&pdf(&sheet, &fonts()).unwrap()).unwrap();
    assert!(!doc.objects.values().any(|o| {
        o.as_dict().is_ok_and(|d| d.get(b"Type").is_ok_and(|t| t.as_name().is_ok_and(|n| n == b"Font")))
    }));
    assert_eq!(operands(&doc, "W").len(), 1, "the picture is cut off at its frame");
}

#[test]
fn a_picture_of_three_hundred_paths_stays_small() {
    use handspan::units::FigurePoint;
    let mut heavy = scene();
    let mut seed = 7_u32;
    let mut next = || {
        seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        (seed >> 8) as f32 / (1 << 24) as f32
    };
    for _ in 0..300 {
        let (x, y) = (next() * 30.0 - 15.0, next() * 40.0 - 5.0);
        let mut point = || FigurePoint::new(x + next() * 4.0, y + next() * 4.0);
        let mut path = vec![Step::Move(point())];
        path.extend((0..16).map(|_| Step::Curve(point(), point(), point())));
        heavy.items.push(Item::Fill {
            path,
            colour: Colour::hex(0x554433),
            rule: handspan::figure::scene::FillRule::NonZero,
        });
    }
    let case = &cases()[0];
    let layout = handspan::sheet::FAMILY_PAGE.read().unwrap();
    // Both sides of the page in one file.
    let sheets = compose_all(&layout, &[heavy], &case.content(), &words(), &fonts()).unwrap();
    assert_eq!(sheets.len(), 2);
    let bytes = pdf_pages(&sheets, &fonts()).unwrap();
    assert!(bytes.len() < 150_000, "{} bytes", bytes.len());
}

#[test]
fn a_label_in_another_language_says_so() {
    let Item::Text(mut label) = text("Bauch", Align::Start) else { panic!("a text") };
    label.lang = "de".into();
    let doc = mark(Item::Text(label));
    let spans: Vec<Vec<u8>> = content(&doc)
        .operations
        .iter()
        .filter(|op| op.operator == "BDC")
        .filter_map(|op| op.operands[1].as_dict().ok()?.get(b"Lang").ok()?.as_str().ok().map(<[u8]>::to_vec))
        .collect();
    assert_eq!(spans, [b"de"]);
}
