//! The mother with arms and clothes, for pictures that go home. In: a pose, its cast, the look, what was noted of her skin.
//! Out: what is painted before the baby: torso, top and skirt, womb, and both hands under the belly.
//!
//! Nothing of her covers the baby: it is painted over her hands, which give way to it besides.

use super::baby::{self, Hand};
use super::her_clothes;
use super::her_head;
use super::mother::{self, MotherLook, MotherStyle, SkinMarks};
use super::mother_body;
use super::mother_ink::{fine_lines, group};
use super::mother_palette::MotherPalette;
use super::options::{Hair, Palette};
use super::palette::BabyColours;
use super::rounds;
use super::scene::{Item, flat};
use super::smooth::both_sides;
use crate::body::cast::Cast;
use crate::body::her_arms::{self, Reach};
use crate::body::mother::MotherShape;
use crate::body::pose::Pose;
use crate::units::FigurePoint;

/// How far above their usual place stretch marks are drawn, cm: there her hands would hide them.
const OVER_HANDS: f64 = 7.0;
/// Her lines beside the baby's: finer, and over a coarser cast.
const HAND: Hand = Hand { firm: 0.85, even: 1.9 };

/// Her body, and the womb with its `wall`.
pub fn draw(
    pose: &Pose,
    cast: Option<&Cast>,
    skin: &SkinMarks,
    look: &MotherLook,
    (palette, hair): (Palette, Option<Hair>),
    wall: Vec<Item<FigurePoint>>,
) -> Vec<Item<FigurePoint>> {
    let shape = &pose.mother;
    let taken = |p: FigurePoint| {
        cast.is_some_and(|c| c.covers(p.x, p.y)) || pose.rounds().any(|(_, r)| rounds::covers(r, p))
    };
    let head = hair.map(|hair| (hair, her_head::Colours::of(look, palette, skin_colours(&look.palette))));
    let mut items: Vec<_> =
        head.iter().filter_map(|(hair, colours)| her_head::behind(*hair, colours)).collect();
    items.extend(dressed(shape, skin, look, hair.is_some()));
    items.extend(head.iter().flat_map(|(hair, colours)| her_head::before(*hair, colours)));
    items.extend(mother::room(&pose.womb, false, look));
    items.extend(linea_nigra(shape, skin, look));
    items.extend(wall);
    items.extend(arms(shape, &Reach::of(shape, &taken), look, hair.is_some()));
    items
}

/// Her body as she lies to be drawn on: the belly bare, both hands under it, giving way to what is `taken`.
pub fn bare(
    shape: &MotherShape,
    taken: &dyn Fn(FigurePoint) -> bool,
    skin: &SkinMarks,
    look: &MotherLook,
) -> Vec<Item<FigurePoint>> {
    let mut items = dressed(shape, skin, look, false);
    items.extend(linea_nigra(shape, skin, look));
    items.extend(arms(shape, &Reach::of(shape, taken), look, false));
    items
}

fn linea_nigra(shape: &MotherShape, skin: &SkinMarks, look: &MotherLook) -> Option<Item<FigurePoint>> {
    skin.linea_nigra.then(|| group("linea-nigra", "", vec![mother_body::linea_nigra(shape, look)]))
}

/// Torso, skirt and top, with `shoulders` where they are in the picture.
fn dressed(
    shape: &MotherShape,
    skin: &SkinMarks,
    look: &MotherLook,
    shoulders: bool,
) -> Vec<Item<FigurePoint>> {
    let mut torso = vec![];
    let soft = look.style == MotherStyle::Soft;
    if soft {
        mother_body::body_tones(shape, look, &mut torso);
    }
    let width = if soft { 0.085 } else { 0.075 };
    torso.push(fine_lines(&both_sides(&mother_body::flank(shape, 0.0)), width, look.palette.ink));
    mother_body::skin_marks(shape, skin, OVER_HANDS, look, &mut torso);
    vec![
        group("mother-body", "", torso),
        group("mother-skirt", "", her_clothes::skirt(shape, look)),
        group("mother-top", "", her_clothes::top(shape, look, shoulders)),
    ]
}

/// Both arms and their sleeves.
fn arms(shape: &MotherShape, reach: &Reach, look: &MotherLook, shoulders: bool) -> Vec<Item<FigurePoint>> {
    let colours = skin_colours(&look.palette);
    let soft = look.style == MotherStyle::Soft;
    let mut items = vec![];
    for (name, arm) in ["mother-arm-left", "mother-arm-right"].iter().zip(her_arms::casts(shape, reach)) {
        items.push(group(name, "", flat(baby::limb(&arm, &colours, soft, HAND))));
    }
    items.push(group("mother-sleeves", "", her_clothes::sleeves(reach, look, shoulders)));
    items
}

/// Her skin as the colours that tones are laid in.
fn skin_colours(p: &MotherPalette) -> BabyColours {
    BabyColours {
        skin: p.skin,
        light: p.light,
        shade: [p.shade[0], p.shade[1], p.shade[2]],
        hair: p.ink,
        blush: p.shade[2],
        ink: p.ink,
    }
}
