//! The outline of a PDF, by which a reader jumps from heading to heading. In: the document and its sheets. Out: the same
//! document with an entry for each heading; those of the second rank stand under the one before.

use super::tags::string;
use crate::figure::scene::Item;
use crate::sheet::{Element, Sheet, Tag};
use crate::units::PagePoint;
use lopdf::{Dictionary, Document, Object, ObjectId, dictionary};

/// A heading: its words, its page, how far from the foot of the page it begins, points.
struct Heading {
    words: String,
    page: ObjectId,
    top: f32,
    under: bool,
}

/// Adds the outline, unless there is no heading.
pub(super) fn add(doc: &mut Document, sheets: &[Sheet], pages: &[ObjectId]) -> Result<(), lopdf::Error> {
    let mut headings = vec![];
    for (sheet, page) in sheets.iter().zip(pages) {
        headings.extend(sheet.elements.iter().filter_map(|element| heading(sheet, element, *page)));
    }
    if headings.is_empty() {
        return Ok(());
    }
    let root = doc.new_object_id();
    let ids: Vec<ObjectId> = headings.iter().map(|_| doc.new_object_id()).collect();
    // The entry under which each stands: a heading of the first rank before it, else the root.
    let mut above = root;
    let mut parents = vec![];
    for (heading, id) in headings.iter().zip(&ids) {
        parents.push(if heading.under { above } else { root });
        if !heading.under {
            above = *id;
        }
    }
    for (at, (heading, id)) in headings.iter().zip(&ids).enumerate() {
        let mut entry = dictionary! {
            "Title" => string(&heading.words),
            "Parent" => parents[at],
            "Dest" => vec![heading.page.into(), "XYZ".into(), Object::Null, Object::Real(heading.top), Object::Null],
        };
        let beside = |other: usize| parents[other] == parents[at];
        if let Some(before) = (0..at).rev().find(|other| beside(*other)) {
            entry.set("Prev", ids[before]);
        }
        if let Some(after) = (at + 1..ids.len()).find(|other| beside(*other)) {
            entry.set("Next", ids[after]);
        }
        ends(&mut entry, *id, &ids, &parents);
        doc.set_object(*id, entry);
    }
    let mut outline = dictionary! { "Type" => "Outlines" };
    ends(&mut outline, root, &ids, &parents);
    outline.set("Count", ids.len() as i64);
    doc.set_object(root, outline);
    doc.catalog_mut()?.set("Outlines", root);
    Ok(())
}

/// First, last and number of the entries under `id`.
fn ends(entry: &mut Dictionary, id: ObjectId, ids: &[ObjectId], parents: &[ObjectId]) {
    let under: Vec<ObjectId> =
        ids.iter().zip(parents).filter(|(_, parent)| **parent == id).map(|(id, _)| *id).collect();
    if let (Some(first), Some(last)) = (under.first(), under.last()) {
        entry.set("First", *first);
        entry.set("Last", *last);
        entry.set("Count", under.len() as i64);
    }
}

fn heading(sheet: &Sheet, element: &Element, page: ObjectId) -> Option<Heading> {
    let under = match element.tag {
        Tag::H1 => false,
        Tag::H2 => true,
        Tag::P
        | Tag::Item { .. }
        | Tag::Sign { .. }
        | Tag::Cell { .. }
        | Tag::Figure { .. }
        | Tag::Artifact => {
            return None;
        }
    };
    let lines = || {
        element.items.iter().filter_map(|item: &Item<PagePoint>| match item {
            Item::Text(text) => Some(text),
            Item::Group { .. } | Item::Clip { .. } | Item::Fill { .. } | Item::Stroke { .. } => None,
        })
    };
    let first = lines().next()?;
    let words = lines().map(|line| line.text.trim()).collect::<Vec<_>>().join(" ");
    let top = (sheet.height_mm - first.at.y + first.size) * (72.0 / 25.4);
    Some(Heading { words, page, top: libm::roundf(top * 100.0) / 100.0, under })
}
