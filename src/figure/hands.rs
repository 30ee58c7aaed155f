//! The hands of a palpation, drawn. In: their casts, the look. Out: lines with a pale rim, through which the baby is seen.

use super::baby::{self, Hand};
use super::mother::{MotherLook, MotherStyle};
use super::mother_ink::group;
use super::palette::BabyColours;
use super::scene::{Colour, Item};
use crate::body::cast::Cast;
use crate::units::FigurePoint;

/// The lines of the hands: unlike any of the baby or the mother.
pub const INK: Colour = Colour::hex(0x2B3A67);
/// Width of the pale rim on both sides of a line, cm.
const RIM: f32 = 0.16;
const HAND: Hand = Hand { firm: 1.35, even: 1.9 };

/// The marks of each hand.
pub fn draw(hands: &[Cast], look: &MotherLook) -> Item<FigurePoint> {
    let ink = if look.style == MotherStyle::Soft { INK } else { look.palette.ink };
    lines(hands, ink, look.palette.paper)
}

/// The same in an ink, on a paper.
pub fn lines(hands: &[Cast], ink: Colour, paper: Colour) -> Item<FigurePoint> {
    let colours = BabyColours { ink, ..BabyColours::INK };
    let one = |(number, cast): (usize, &Cast)| {
        let drawn = flat(baby::limb_lines(cast, &colours, HAND));
        let rims = drawn.iter().filter_map(|line| match line {
            Item::Fill { path, .. } => {
                let (colour, width) = (paper, 2.0 * RIM);
                Some(Item::Stroke { path: path.clone(), colour, width, dash: None })
            }
            _ => None,
        });
        let items = rims.chain(drawn.iter().cloned()).collect();
        group(&format!("hand-{}", number + 1), "", items)
    };
    group("hands", "", hands.iter().enumerate().map(one).collect())
}

/// The marks of all groups, without the groups.
fn flat(items: Vec<Item<FigurePoint>>) -> Vec<Item<FigurePoint>> {
    let mut out = vec![];
    for item in items {
        match item {
            Item::Group { items, .. } => out.extend(flat(items)),
            mark => out.push(mark),
        }
    }
    out
}
