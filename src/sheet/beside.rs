//! Two languages side by side. In: the sides of a page in each. Out: sheets twice as wide, the first language on the left;
//! who hears the page hears one language after the other.

use super::{Element, Sheet, Tag};
use crate::figure::scene::Item;
use crate::units::PagePoint;

/// Lists of the second page are numbered from here.
const SECOND: usize = 1_000_000;

/// The sheets of `left` with those of `right` beside them; where one has fewer sides, its half stays empty.
pub fn beside(left: Vec<Sheet>, right: Vec<Sheet>) -> Vec<Sheet> {
    let sides = left.len().max(right.len());
    let (mut left, mut right) = (left.into_iter(), right.into_iter());
    (0..sides).filter_map(|_| pair(left.next(), right.next())).collect()
}

fn pair(left: Option<Sheet>, right: Option<Sheet>) -> Option<Sheet> {
    let mut whole = match (&left, &right) {
        (Some(sheet), _) | (None, Some(sheet)) => Sheet { elements: vec![], ..sheet.clone() },
        (None, None) => return None,
    };
    let half = whole.width_mm;
    whole.width_mm = half + right.as_ref().or(left.as_ref()).map_or(half, |sheet| sheet.width_mm);
    let mut elements = left.map(|sheet| sheet.elements).unwrap_or_default();
    if let Some(right) = right {
        whole.height_mm = whole.height_mm.max(right.height_mm);
        let moved = |p: PagePoint| PagePoint::new(p.x + half, p.y);
        elements.extend(right.elements.iter().map(|element| {
            let mut items: Vec<Item<PagePoint>> = element.items.iter().map(|i| i.map(&moved, 1.0)).collect();
            items.iter_mut().for_each(|item| super::compose::rename(item, "beside-"));
            let tag = match &element.tag {
                Tag::Item { list } => Tag::Item { list: list + SECOND },
                Tag::Sign { list, alt } => Tag::Sign { list: list + SECOND, alt: alt.clone() },
                other => other.clone(),
            };
            Element { tag, items }
        }));
    }
    whole.elements = elements;
    Some(whole)
}
