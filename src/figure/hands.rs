//! The hands of whoever examines, drawn. In: hands as they lie on her, the look. Out: lines with a pale rim, through which the
//! baby is seen; nails; the cuff in which a sleeve ends.

use super::baby::{self, Hand as Firmness};
use super::mother::{MotherLook, MotherStyle};
use super::mother_ink::{fill, fine_lines, group, stroke};
use super::palette::BabyColours;
use super::scene::{Colour, Item, Path, flat};
use super::smooth;
use crate::body::hands::Hand;
use crate::units::{FigurePoint, Vec3};

/// The lines of the hands: unlike any of the baby or the mother.
pub const INK: Colour = Colour::hex(0x2B3A67);
/// The cloth of the sleeve, and the same in shade.
const CLOTH: [Colour; 2] = [Colour::hex(0xDCE3F0), Colour::hex(0xB9C4DC)];
/// Width of the pale rim on both sides of a line, cm.
pub const RIM: f32 = 0.16;
/// How firm the lines are; their rims are the same lines, firmer, so that a rim runs out where its line does.
const HAND: Firmness = Firmness { firm: 1.5, even: 1.7 };
const RIMS: Firmness = Firmness { firm: 4.4, even: 1.7 };
/// Length of a sleeve as far as it is drawn, of its cuff, and how far they stand off the arm, cm.
const SLEEVE: (f32, f32, f32) = (4.4, 1.5, 0.35);

/// The marks of each hand, on a figure of so many mm to a cm of the body: in a small one lines are firmer.
pub fn draw(hands: &[Hand], look: &MotherLook, mm_per_cm: f32) -> Item<FigurePoint> {
    let soft = look.style == MotherStyle::Soft;
    let paper = look.palette.paper;
    let (ink, cloth) = if soft { (INK, CLOTH) } else { (look.palette.ink, [paper; 2]) };
    inked(hands, ink, paper, cloth, (2.6 / mm_per_cm).clamp(1.0, 1.5))
}

/// The same in an ink, on a paper, with sleeves of this cloth, lit and in shade.
pub fn lines(hands: &[Hand], ink: Colour, paper: Colour, cloth: [Colour; 2]) -> Item<FigurePoint> {
    inked(hands, ink, paper, cloth, 1.0)
}

fn inked(hands: &[Hand], ink: Colour, paper: Colour, cloth: [Colour; 2], times: f32) -> Item<FigurePoint> {
    let firm = |by: Firmness| Firmness { firm: by.firm * times, ..by };
    let colours = BabyColours { ink, ..BabyColours::INK };
    let one = |(number, hand): (usize, &Hand)| {
        let pale = BabyColours { ink: paper, ..colours };
        let mut items = flat(baby::limb_lines(&hand.cast, &pale, firm(RIMS)));
        items.extend(flat(baby::limb_lines(&hand.cast, &colours, firm(HAND))));
        items.push(fine_lines(&nails(hand), 0.06, ink));
        items.extend(sleeve(hand, cloth, ink, paper));
        group(&format!("hand-{}", number + 1), "", items)
    };
    group("hands", "", hands.iter().enumerate().map(one).collect())
}

/// The rims of the nails that are turned to the viewer, each from one side of its root round its tip to the other.
fn nails(hand: &Hand) -> Vec<Vec<FigurePoint>> {
    let turned = |[middle, along, across]: &&[Vec3; 3]| {
        let out = along.cross(*across) * if hand.right { -1.0 } else { 1.0 };
        out.normalized().z > 0.3 && hand.cast.sees(*middle, 0.4)
    };
    // Of a circle: cosines and sines from a root's side to the tip.
    const ROUND: [(f32, f32); 9] = [
        (0.80, -0.85),
        (0.98, -0.2),
        (0.87, 0.5),
        (0.5, 0.87),
        (0.0, 1.0),
        (-0.5, 0.87),
        (-0.87, 0.5),
        (-0.98, -0.2),
        (-0.80, -0.85),
    ];
    hand.nails
        .iter()
        .filter(turned)
        .map(|[middle, along, across]| {
            let at = |(x, y): (f32, f32)| *middle + *across * x + *along * y;
            ROUND.map(|k| FigurePoint::new(at(k).x, at(k).y)).to_vec()
        })
        .collect()
}

/// The sleeve, which ends in a cuff: a short piece of it, with folds. Its far end is left open, as the arm goes on.
fn sleeve(hand: &Hand, [cloth, shade]: [Colour; 2], ink: Colour, paper: Colour) -> Vec<Item<FigurePoint>> {
    let axis = (hand.elbow - hand.wrist).normalized();
    let flat = (axis.x * axis.x + axis.y * axis.y).sqrt().max(1e-6);
    let (ax, ay) = (axis.x / flat, axis.y / flat);
    let (start, half) = hand.cuff;
    let at = |along: f32, across: f32| {
        let along = along * flat;
        FigurePoint::new(start.x + ax * along - ay * across, start.y + ay * along + ax * across)
    };
    // The seen half of a ring about the arm, `along` cm up it: it bulges towards the hand, as the arm rises to the viewer.
    let ring = |along: f32, half: f32| -> Vec<FigurePoint> {
        (0..=6u8)
            .map(|k| {
                let (sin, cos) = libm::sincosf(std::f32::consts::PI * f32::from(k) / 6.0);
                at(along - half * sin * axis.z / flat, half * cos)
            })
            .collect()
    };
    let (long, cuff, off) = SLEEVE;
    let half = half + off;
    let (near, hem, mut far) = (ring(0.0, half), ring(cuff, half + 0.15), ring(long, half + 0.2));
    far.reverse();
    let side =
        |sign: f32| vec![at(0.0, sign * half), at(cuff, sign * (half + 0.15)), at(long, sign * (half + 0.2))];
    let whole: Path<FigurePoint> = smooth::cornered(&[near.clone(), far]);
    let band: Path<FigurePoint> = smooth::cornered(&[near.clone(), hem.iter().rev().copied().collect()]);
    let fold = |across: f32, from: f32, to: f32| {
        vec![
            at(from, across * half),
            at(0.5 * (from + to), across * half * 1.06),
            at(to, across * half * 1.04),
        ]
    };
    let bulge = half * axis.z / flat;
    vec![
        stroke(
            smooth::cornered(&[side(1.0)
                .into_iter()
                .rev()
                .chain(near.iter().copied())
                .chain(side(-1.0))
                .collect()]),
            2.0 * RIM,
            paper,
        ),
        fill(whole, cloth),
        fill(band, shade),
        fine_lines(
            &[
                fold(0.55, cuff + 0.35 - 0.8 * bulge, long - 1.5 * bulge),
                fold(-0.3, cuff + 0.3 - 0.9 * bulge, long - 1.2 - bulge),
                fold(0.1, cuff + 0.3 - bulge, long - 0.6 - bulge),
            ],
            0.06,
            ink,
        ),
        fine_lines(&[hem], 0.08, ink),
        fine_lines(&[near, side(1.0), side(-1.0)], 0.14, ink),
    ]
}
