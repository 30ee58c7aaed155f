//! What makes a PDF readable by ear, and always the same. In: the drawn document and its sheets. Out: the same
//! document with a structure tree, language, title, version and fixed ids.

use super::outline;
use super::pdf::utf16;
use crate::figure::scene::{Item, Step};
use crate::sheet::{Sheet, Tag};
use crate::units::PagePoint;
use lopdf::{Dictionary, Document, Object, ObjectId, Stream, StringFormat, dictionary};

/// The name under which an element's marks stand in the page's content.
pub(super) fn mark(tag: &Tag) -> &'static str {
    match tag {
        Tag::H1 => "H1",
        Tag::H2 => "H2",
        Tag::P => "P",
        Tag::Item { .. } => "LBody",
        Tag::Cell { head: true, .. } => "TH",
        Tag::Cell { head: false, .. } => "TD",
        Tag::Figure { .. } | Tag::Sign { .. } => "Figure",
        Tag::Artifact => "Artifact",
    }
}

/// Adds tags, language and title; sets version, information and ids. `first` is the first of `sheets`, the pages.
pub(super) fn finish(doc: &mut Document, first: &Sheet, sheets: &[Sheet]) -> Result<(), lopdf::Error> {
    doc.version = "1.7".to_owned();
    let pages: Vec<ObjectId> = doc.page_iter().collect();
    if pages.len() != sheets.len() {
        return Err(lopdf::Error::PageNumberNotFound(sheets.len() as u32));
    }
    let tree = structure(doc, sheets, &pages);
    let metadata = doc.add_object(metadata(first));
    outline::add(doc, sheets, &pages)?;
    for (number, page) in pages.iter().enumerate() {
        let page_dict = doc.get_object_mut(*page)?.as_dict_mut()?;
        page_dict.set("StructParents", number as i64);
        page_dict.set("Tabs", "S");
        page_dict.remove(b"Annots");
    }
    let catalog = doc.catalog_mut()?;
    catalog.set("StructTreeRoot", tree);
    catalog.set("Metadata", metadata);
    catalog.set("MarkInfo", dictionary! { "Marked" => true });
    catalog.set("Lang", string(&first.lang));
    catalog.set("ViewerPreferences", dictionary! { "DisplayDocTitle" => true });

    // No dates: the same exam gives the same bytes on every day.
    let program = concat!("handspan ", env!("CARGO_PKG_VERSION"));
    let info = dictionary! {
        "Title" => string(&first.title),
        "Subject" => string(&first.description),
        "Creator" => string(program),
        "Producer" => string(program),
    };
    let info = doc.add_object(info);
    if let Ok(old) = doc.trailer.get(b"Info").and_then(Object::as_reference) {
        doc.objects.remove(&old);
    }
    doc.trailer.set("Info", info);
    let contents: Vec<Vec<u8>> = pages.iter().map(|page| doc.get_page_content(*page)).collect();
    let mut parts: Vec<&[u8]> = vec![first.title.as_bytes(), first.lang.as_bytes()];
    parts.extend(contents.iter().map(Vec::as_slice));
    let id = Object::String(digest(&parts).to_be_bytes().to_vec(), StringFormat::Hexadecimal);
    doc.trailer.set("ID", Object::Array(vec![id.clone(), id]));
    Ok(())
}

/// A list or a table that is open: its object, and what hangs on it so far.
struct Open {
    /// The number of the list or table; they are counted together.
    number: usize,
    id: ObjectId,
    kids: Vec<Object>,
    /// The point of a list that has its small picture and waits for its words, and what hangs on it.
    point: Option<(ObjectId, Vec<Object>)>,
    /// The row of a table that is open: which, its object, its cells.
    row: Option<(u16, ObjectId, Vec<Object>)>,
    is_table: bool,
}

/// The structure tree: a document of headings, paragraphs, lists, tables and figures in reading order, page after page.
fn structure(doc: &mut Document, sheets: &[Sheet], pages: &[ObjectId]) -> ObjectId {
    let root = doc.new_object_id();
    let document = doc.new_object_id();
    let mut kids: Vec<Object> = vec![];
    let mut nums: Vec<Object> = vec![];
    let lang = sheets.first().map(|sheet| sheet.lang.as_str()).unwrap_or_default();
    for (number, (sheet, page)) in sheets.iter().zip(pages).enumerate() {
        let parents = page_structure(doc, sheet, *page, document, lang, &mut kids);
        let of_page = doc.add_object(Object::Array(parents));
        nums.extend([(number as i64).into(), of_page.into()]);
    }
    doc.set_object(document, node("Document", root, kids));
    doc.set_object(
        root,
        dictionary! {
            "Type" => "StructTreeRoot",
            "K" => document,
            "ParentTree" => dictionary! { "Nums" => nums },
            "ParentTreeNextKey" => sheets.len() as i64,
        },
    );
    root
}

/// Adds the elements of a page to the `kids` of the document; the holder of each of the page's marks.
fn page_structure(
    doc: &mut Document,
    sheet: &Sheet,
    page: ObjectId,
    document: ObjectId,
    lang: &str,
    kids: &mut Vec<Object>,
) -> Vec<Object> {
    let mut parents: Vec<Object> = vec![];
    let mut open: Option<Open> = None;
    for element in sheet.elements.iter() {
        if element.tag == Tag::Artifact {
            continue;
        }
        let number = parents.len() as i64;
        let holder = |parent: ObjectId| {
            let mut dict = dictionary! {
                "Type" => "StructElem", "S" => mark(&element.tag), "P" => parent, "Pg" => page, "K" => number,
            };
            if let Some(other) = element.items.iter().find_map(lang_of).filter(|other| *other != lang) {
                dict.set("Lang", string(other));
            }
            dict
        };
        let group = match element.tag {
            Tag::Item { list } | Tag::Sign { list, .. } => Some((list, false)),
            Tag::Cell { table, .. } => Some((table, true)),
            Tag::H1 | Tag::H2 | Tag::P | Tag::Figure { .. } | Tag::Artifact => None,
        };
        if open.as_ref().map(|open| open.number) != group.map(|(number, _)| number) {
            close(doc, document, open.take(), kids);
            open = group.map(|(number, is_table)| {
                let id = doc.new_object_id();
                Open { number, id, kids: vec![], point: None, row: None, is_table }
            });
        }
        let id = match (&element.tag, &mut open) {
            (Tag::Sign { alt, .. }, Some(list)) => {
                let (point, label) = (doc.new_object_id(), doc.new_object_id());
                let mut dict = holder(label);
                dict.set("Alt", string(alt));
                dict.set("A", figure_box(sheet, &element.items));
                let figure = doc.add_object(dict);
                doc.set_object(label, node("Lbl", point, vec![figure.into()]));
                list.point = Some((point, vec![label.into()]));
                figure
            }
            (Tag::Item { .. }, Some(list)) => {
                let (point, mut kids) = list.point.take().unwrap_or_else(|| (doc.new_object_id(), vec![]));
                let body = doc.add_object(holder(point));
                kids.push(body.into());
                doc.set_object(point, node("LI", list.id, kids));
                list.kids.push(point.into());
                body
            }
            (Tag::Cell { row, head, .. }, Some(table)) => {
                if table.row.as_ref().is_none_or(|(which, ..)| which != row) {
                    close_row(doc, table);
                    table.row = Some((*row, doc.new_object_id(), vec![]));
                }
                let mut cell = holder(table.row.as_ref().map_or(table.id, |(_, id, _)| *id));
                if *head {
                    let scope = if *row == 0 { "Column" } else { "Row" };
                    cell.set("A", dictionary! { "O" => "Table", "Scope" => scope });
                }
                let cell = doc.add_object(cell);
                if let Some((_, _, cells)) = &mut table.row {
                    cells.push(cell.into());
                }
                cell
            }
            (tag, _) => {
                let mut dict = holder(document);
                if let Tag::Figure { alt } = tag {
                    dict.set("Alt", string(alt));
                    dict.set("A", figure_box(sheet, &element.items));
                }
                let id = doc.add_object(dict);
                kids.push(id.into());
                id
            }
        };
        parents.push(id.into());
    }
    close(doc, document, open.take(), kids);
    parents
}

/// The language of the first words of a mark.
fn lang_of(item: &Item<PagePoint>) -> Option<&str> {
    match item {
        Item::Group { items, .. } | Item::Clip { items, .. } => items.iter().find_map(lang_of),
        Item::Text(text) => Some(&text.lang),
        Item::Fill { .. } | Item::Stroke { .. } => None,
    }
}

fn node(name: &str, parent: ObjectId, kids: Vec<Object>) -> Dictionary {
    dictionary! { "Type" => "StructElem", "S" => name, "P" => parent, "K" => kids }
}

fn close_row(doc: &mut Document, table: &mut Open) {
    if let Some((_, id, cells)) = table.row.take() {
        doc.set_object(id, node("TR", table.id, cells));
        table.kids.push(id.into());
    }
}

fn close(doc: &mut Document, document: ObjectId, open: Option<Open>, kids: &mut Vec<Object>) {
    let Some(mut open) = open else { return };
    close_row(doc, &mut open);
    let whole = if open.is_table {
        node("Table", document, open.kids)
    } else {
        let mut list = node("L", document, open.kids);
        list.set("A", dictionary! { "O" => "List", "ListNumbering" => "Disc" });
        list
    };
    doc.set_object(open.id, whole);
    kids.push(open.id.into());
}

/// Where a figure stands on the page, in points.
fn figure_box(sheet: &Sheet, items: &[Item<PagePoint>]) -> Dictionary {
    let mut bounds = [f32::MAX, f32::MAX, f32::MIN, f32::MIN];
    items.iter().for_each(|i| widen(&mut bounds, i));
    let pt = |mm: f32| Object::Real(libm::roundf(mm * (7200.0 / 25.4)) / 100.0);
    let [left, top, right, bottom] = bounds;
    let turned = |y: f32| pt(sheet.height_mm - y);
    dictionary! {
        "O" => "Layout",
        "Placement" => "Block",
        "BBox" => vec![pt(left), turned(bottom), pt(right), turned(top)],
    }
}

fn widen(bounds: &mut [f32; 4], item: &Item<PagePoint>) {
    let mut point = |p: PagePoint| {
        *bounds = [bounds[0].min(p.x), bounds[1].min(p.y), bounds[2].max(p.x), bounds[3].max(p.y)];
    };
    match item {
        Item::Group { items, .. } => items.iter().for_each(|i| widen(bounds, i)),
        Item::Fill { path, .. } | Item::Stroke { path, .. } | Item::Clip { path, .. } => {
            path.iter().for_each(|step| match *step {
                Step::Move(p) | Step::Line(p) | Step::Curve(_, _, p) => point(p),
                Step::Close => {}
            });
        }
        Item::Text(text) => point(text.at),
    }
}

/// Title and language once more as XMP, and the mark that the file is tagged after PDF/UA-1 (ISO 14289-1).
fn metadata(sheet: &Sheet) -> Stream {
    let escape = |text: &str| text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;");
    let (title, lang) = (escape(&sheet.title), escape(&sheet.lang));
    let xmp = format!(
        "<?xpacket begin=\"\u{feff}\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n\
         <x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n\
         <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n\
         <rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" \
         xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">\n\
         <dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">{title}</rdf:li></rdf:Alt></dc:title>\n\
         <dc:language><rdf:Bag><rdf:li>{lang}</rdf:li></rdf:Bag></dc:language>\n\
         <pdfuaid:part>1</pdfuaid:part>\n\
         </rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>"
    );
    let dict = dictionary! { "Type" => "Metadata", "Subtype" => "XML" };
    // Programs that look for it do not unpack it.
    Stream::new(dict, xmp.into_bytes()).with_compression(false)
}

/// A text as PDF writes it.
pub(super) fn string(text: &str) -> Object {
    if text.is_ascii() {
        Object::String(text.as_bytes().to_vec(), StringFormat::Literal)
    } else {
        Object::String(utf16(text), StringFormat::Hexadecimal)
    }
}

/// FNV-1a in 128 bits: an id from contents, not a secret (Fowler, Noll, Vo).
pub(super) fn digest(parts: &[&[u8]]) -> u128 {
    let mut hash: u128 = 0x6c62_272e_07bb_0142_62b8_2175_6295_c58d;
    for byte in parts.iter().flat_map(|p| p.iter()) {
        hash = (hash ^ u128::from(*byte)).wrapping_mul(0x0000_0000_0100_0000_0000_0000_0000_013b);
    }
    hash
}
