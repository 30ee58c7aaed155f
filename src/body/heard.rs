//! Where the sound of a heart leaves the baby, and where a heart is drawn that was heard in a region. In: her body, the
//! place that was said, the baby as it is drawn. Out: a point of her skin.
//!
//! A side and a level name a region of her abdomen, no point. Within it the mark goes where her skin lies nearest to the
//! shoulder blade of the drawn baby (its chest, in a face presentation). What was measured is drawn to the centimetre.

use super::baby::PosedBaby;
use super::form::landmark::Landmark;
use super::mother::MotherShape;
use crate::exam::{Across, Attitude, Height, Place};
use crate::units::{BabySide, FigurePoint, MotherPoint, Vec3};

/// Through which side of its trunk a heart is heard.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Through {
    /// Its back, near a shoulder blade.
    Back,
    /// Its chest: in a face presentation the back is bent away from the womb's wall.
    Chest,
}

/// How much dearer a way is that leaves the baby backwards than one that leaves it straight: sound is led by the baby's
/// trunk where it lies against the wall, and hardly round it. Common practice.
const ASTRAY: f32 = 0.15;

/// Where the sound of a heart leaves the baby.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Source {
    /// The places on its skin, that on its left first: it is led by the whole trunk, and heard where that lies nearest.
    pub at: [Vec3; 2],
    /// Which way is out of the baby there.
    pub outward: Vec3,
    /// Through which side of its trunk.
    pub through: Through,
}

impl Source {
    /// Of this baby.
    pub fn of(baby: &PosedBaby) -> Source {
        let through = match baby.posture.attitude {
            Attitude::Face => Through::Chest,
            Attitude::Flexed | Attitude::Deflexed | Attitude::Brow => Through::Back,
        };
        let mark = |landmark, side| baby.shape.landmark(landmark, side);
        let (at, outward) = match through {
            // The upper part of the shoulder blade, between its middle, its shoulder and the nape.
            Through::Back => {
                let upper = |side| mark(Landmark::Acromion, side).lerp(mark(Landmark::Nape, side), 0.5);
                (BabySide::BOTH.map(|side| mark(Landmark::Blade, side).lerp(upper(side), 0.42)), -baby.body.z)
            }
            Through::Chest => (BabySide::BOTH.map(|side| mark(Landmark::Sternum, side)), baby.body.z),
        };
        Source { at, outward, through }
    }

    /// How far it is from there to a point of her skin, ways round the baby counted longer.
    pub fn way_to(&self, skin: MotherPoint) -> f32 {
        let [a, b] = self.at.map(|at| {
            let way = skin.0 - at;
            way.length() * (1.0 + ASTRAY) - ASTRAY * way.dot(self.outward)
        });
        a.min(b)
    }

    /// Its height, cm above the symphysis.
    pub fn height(&self) -> f64 {
        f64::from((self.at[0].y + self.at[1].y) * 0.5)
    }
}

/// Shares of half her width between which a side lies, and a flank; house values about the places drawn for them.
const SIDE: (f64, f64) = (0.16, 0.72);
const FLANK: (f64, f64) = (0.6, 0.86);
/// How far within the womb's outline a mark stands, cm.
const WITHIN: f32 = 1.3;
/// How far above or below the place where the sound leaves the baby a mark stands at most, if its region allows, cm: skin
/// low down lies nearer to a baby only because the belly bulges less there.
const ABOUT: f64 = 1.0;
/// Radius of a head at term, with the mark's own, and how much farther a way counts that ends on it, cm: a heart on a head
/// is taken for something of the head.
const HEAD: f32 = 6.2;
const ON_HEAD: f32 = 5.0;
/// How near to a foot or a hand that lies before the trunk a mark would cover it, and how much farther a way counts that ends
/// there, cm.
const ENDS: f32 = 2.4;
const ON_ENDS: f32 = 3.0;
/// Steps of the net over a region.
const STEPS: i32 = 14;

/// Where the mark of a heart stands that was heard at this place. `womb`: the womb's outline.
pub fn mark(mother: &MotherShape, place: &Place, baby: &PosedBaby, womb: &[FigurePoint]) -> MotherPoint {
    let source = Source::of(baby);
    let (low, high) = levels(mother, place);
    let level = source.height();
    let ends = ends_before(baby);
    let low_and_high = ((level - ABOUT).clamp(low, high), (level + ABOUT).clamp(low, high));
    let mut best = (f32::MAX, mother.place(place));
    for j in 0..=STEPS {
        let y = between(low_and_high, j);
        let wide = mother.half_width(y);
        let mut look = |x: f64| {
            let p = mother.skin(x, y);
            let off = p.0 - baby.head.origin;
            let on_head = libm::hypotf(off.x, off.y) < HEAD * baby.posture.measures.head;
            let on_end = ends.iter().any(|end| from_line(end, p.0) < ENDS);
            let way =
                source.way_to(p) + if on_head { ON_HEAD } else { 0.0 } + if on_end { ON_ENDS } else { 0.0 };
            if way < best.0 {
                best = (way, p);
            }
        };
        let (side, shares) = match place.across {
            Some(Across::Side(side)) => (side, SIDE),
            Some(Across::Flank(side)) => (side, FLANK),
            Some(Across::Measured(side, cm)) => {
                look(f64::from(side.sign()) * mother.section(y).x(cm.get()).min(0.95 * wide));
                continue;
            }
            // What was not said: the midline.
            Some(Across::Middle) | None => {
                look(0.0);
                continue;
            }
        };
        // No farther out than the womb reaches, but never out of the region.
        let most = reach(womb, y as f32, side.sign()).map_or(f64::MAX, |x| f64::from(x - WITHIN));
        let (near, far) = (shares.0 * wide, shares.1 * wide);
        let far = far.min(most.max(near));
        for i in 0..=STEPS {
            look(f64::from(side.sign()) * between((near, far), i));
        }
    }
    best.1
}

/// Feet and hands that lie before the baby's trunk, from ankle to toes and from wrist to fingertips.
fn ends_before(baby: &PosedBaby) -> Vec<[Vec3; 2]> {
    let k = &baby.posture.measures;
    let feet = baby.legs.iter().map(|leg| [leg.ankle, leg.ankle + leg.toes * (2.4 * k.foot)]);
    let hands = baby.arms.iter().map(|arm| [arm.wrist, arm.wrist + arm.fingers * (3.0 * k.radius)]);
    let trunk = baby.body.point(baby.spine.belly.origin).z;
    feet.chain(hands)
        .map(|end| end.map(|p| baby.body.point(p)))
        .filter(|end| end[0].z.max(end[1].z) > trunk)
        .collect()
}

/// How far, as seen from the front, a point lies from a line.
fn from_line([a, b]: &[Vec3; 2], p: Vec3) -> f32 {
    let flat = |p: Vec3| FigurePoint::new(p.x, p.y);
    let off = p - a.lerp(*b, flat(p).along(flat(*a), flat(*b)));
    libm::hypotf(off.x, off.y)
}

/// How far a baby lies below the level at which its heart was heard, cm; 0 or less when it reaches up to it.
pub fn below(mother: &MotherShape, place: &Place, baby: &PosedBaby) -> f32 {
    (levels(mother, place).0 - Source::of(baby).height()) as f32
}

fn between((low, high): (f64, f64), step: i32) -> f64 {
    low + (high - low) * f64::from(step) / f64::from(STEPS)
}

/// Lowest and highest y of the level that was said; both are the same where it was measured.
fn levels(mother: &MotherShape, place: &Place) -> (f64, f64) {
    let along = |along: f64| mother.curve.point(along.clamp(0.0, mother.curve.length())).0;
    let (navel, top) = (mother.navel_along, mother.fundus_along);
    let (low, high) = match place.height {
        Some(Height::Fundus) => (along(top - 4.0), along(top - 1.5)),
        Some(Height::AboveNavel) => (along(navel + 1.2), along(top - 3.0)),
        Some(Height::AtNavel) => (along(navel - 1.0), along(navel + 1.0)),
        Some(Height::BelowNavel) => (3.5, along(navel - 1.5)),
        Some(Height::IliacFossa) => (3.5, 7.5),
        Some(Height::AbovePubicBone) => (1.5, 4.0),
        Some(Height::FromNavel(_) | Height::FromPubicBone(_)) => {
            let y = f64::from(mother.place(place).0.y);
            (y, y)
        }
        None => (3.5, along(top - 3.0)),
    };
    (low, high.max(low))
}

/// How far a closed outline reaches to one side of the midline at a height.
fn reach(outline: &[FigurePoint], y: f32, sign: f32) -> Option<f32> {
    let n = outline.len();
    let crossings = (0..n).filter_map(|i| {
        let (a, b) = (outline[i], outline[(i + 1) % n]);
        ((a.y > y) != (b.y > y)).then(|| (a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y)) * sign)
    });
    crossings.reduce(f32::max)
}
