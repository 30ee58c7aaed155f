//! Placing, by computation for every lie. In: a plan, the sizes, the height of the fundus. Out: a baby between brim
//! and fundus.
//!
//! Seen from the front, heights near the pelvis are measured along its axis from the brim: y = 0 is the brim, and
//! k/5 of a head felt at k/5 stands above it.

use super::attitude::CURL;
use super::baby::{PosedBaby, Posture, pose};
use super::felt;
use super::head;
use super::plan::{Depth, Lying, foot_leads};
use super::settle;
use super::shape::{Piece, Shape};
use crate::exam::{Attitude, Legs, Lie};
use crate::units::{FigurePoint, MotherPoint, Vec3};

/// Before labour no foot lies more than this far below the brim, cm.
pub(super) const LOWEST_FOOT: f32 = -3.6;
/// A crosswise baby lies with its lower side near the brim, at most this far above it, cm.
pub(super) const HIGHEST_CROSSWISE: f32 = 2.0;
/// Wall of the womb and water above the baby, cm.
pub const ABOVE_BABY: f32 = 1.5;

/// Points on the outline of a baby's hull seen from the front, all round.
pub fn hull(baby: &PosedBaby) -> Vec<FigurePoint> {
    baby.shape.hull_across(LEFT)
}

/// Height of a baby's highest point, cm.
pub fn top(baby: &PosedBaby) -> f32 {
    baby.shape.reach(UP)
}

/// Height of a baby's lowest point, cm.
pub fn lowest(baby: &PosedBaby) -> f32 {
    -baby.shape.reach(DOWN)
}

/// A placed baby, and whether it had to be drawn outside the height that was asked for.
pub struct Placed {
    /// The baby, without its fine curves.
    pub baby: PosedBaby,
    /// How far the baby stands above (+) or below (-) the fundus it should reach, cm; 0 when it fits.
    pub misfit: f32,
    /// Whether it had to be drawn with the sizes of fewer weeks.
    pub smaller: bool,
}

pub(super) const UP: Vec3 = Vec3::new(0.0, 1.0, 0.0);
pub(super) const DOWN: Vec3 = Vec3::new(0.0, -1.0, 0.0);
pub(super) const LEFT: Vec3 = Vec3::new(1.0, 0.0, 0.0);

/// Places the baby. `fundus`: height of the top of the womb, cm; `limbs`: where limbs were felt.
pub fn place(lying: &Lying, posture: Posture, fundus: f32, limbs: &[MotherPoint]) -> Placed {
    if cfg!(feature = "human-form") {
        return settle::place(lying, posture, fundus, limbs);
    }
    let placed = place_body(lying, posture, fundus);
    let felt = felt::drawn_to(&placed.baby, limbs, fundus - ABOVE_BABY - 1.5);
    if felt.iter().all(Option::is_none) {
        return Placed { baby: placed.baby.finished(), ..placed };
    }
    let by = placed.baby.body.origin;
    let baby = pose(&Posture { felt, ..placed.baby.posture }).moved(by);
    Placed { baby: baby.finished(), misfit: placed.misfit, smaller: false }
}

/// Places head, trunk and folded limbs.
///
/// The search for curl and stretch measures by the tips of single forms; only the last baby is measured on its surface.
fn place_body(lying: &Lying, posture: Posture, fundus: f32) -> Placed {
    let placed = |baby: PosedBaby| {
        let origin = origin(&baby, lying, &|shape| shape.extreme(DOWN).y);
        baby.moved(origin)
    };
    if lying.lie != Lie::Longitudinal {
        return Placed { baby: placed(pose(&posture)), misfit: 0.0, smaller: false };
    }
    // The baby straightens or curls, within a human range, until its upper end lies under the fundus.
    let room = |baby: &PosedBaby| fundus - ABOVE_BABY - baby.shape.reach(UP);
    let fits = |baby: &PosedBaby| room(baby) - origin(baby, lying, &lowest_tip).y >= 0.0;
    let with_curl = |curl: f32| pose(&Posture { curl, ..posture });
    let (straight, bent) = CURL;
    let loosest = with_curl(straight);
    if !fits(&loosest) {
        let tightest = with_curl(bent);
        if !fits(&tightest) {
            let baby = placed(tightest);
            return Placed { misfit: (-room(&baby)).max(0.0), baby, smaller: false };
        }
        return Placed {
            baby: placed(last_that_fits((bent, tightest), straight, &with_curl, &fits)),
            misfit: 0.0,
            smaller: false,
        };
    }
    // Looser than that, folded legs stretch towards the fundus. A small baby in a roomy womb need not fill it.
    let most = match lying.legs {
        Legs::Complete if lying.up.y < -0.9 => {
            if posture.measures.femur < 0.88 {
                0.3
            } else {
                0.65
            }
        }
        _ => 0.0,
    };
    let with_stretch = |stretch: f32| pose(&Posture { curl: straight, stretch, ..posture });
    let stretched = if most > 0.0 { with_stretch(most) } else { loosest.clone() };
    if fits(&stretched) {
        let baby = placed(stretched);
        return Placed { misfit: (-room(&baby)).min(0.0), baby, smaller: false };
    }
    Placed {
        baby: placed(last_that_fits((0.0, loosest), most, &with_stretch, &fits)),
        misfit: 0.0,
        smaller: false,
    }
}

/// Between a value and its baby, which fits, and `over`, which does not: the baby of close to the last value that fits.
fn last_that_fits(
    (mut fitting, mut baby): (f32, PosedBaby),
    mut over: f32,
    posed: &dyn Fn(f32) -> PosedBaby,
    fits: &dyn Fn(&PosedBaby) -> bool,
) -> PosedBaby {
    for _ in 0..5 {
        let middle = 0.5 * (fitting + over);
        let tried = posed(middle);
        if fits(&tried) { (fitting, baby) = (middle, tried) } else { over = middle }
    }
    baby
}

/// The lowest tip of single forms: up to 0.2 cm above the surface's.
fn lowest_tip(shape: &Shape) -> f32 {
    shape.tips(DOWN).into_iter().map(|p| p.y).fold(1e9, f32::min)
}

/// Where the origin of `baby`, posed at zero, must go.
fn origin(baby: &PosedBaby, lying: &Lying, lowest_of: &dyn Fn(&Shape) -> f32) -> Vec3 {
    // Where the lowest point of the part that leads must come to lie.
    let target = match lying.depth {
        Depth::Fifths(k) => -(1.0 - f32::from(k) / 5.0) * (head::HEIGHT * baby.posture.measures.head),
        Depth::Lowest(y) => y,
    };
    let left_right = (baby.shape.reach(LEFT) - baby.shape.reach(-LEFT)) * 0.5;
    match lying.lie {
        Lie::Longitudinal if lying.up.y < 0.0 => {
            let lowest = lowest_of(&baby.shape.piece(Piece::Head));
            // The head lies near the midline, the body a little to its own side; a head bent back lies off its body.
            let bent_back = matches!(baby.posture.attitude, Attitude::Brow | Attitude::Face);
            let share = if bent_back { 0.4 } else { 0.75 };
            let x = -(baby.head.origin.x * share + left_right * (1.0 - share));
            Vec3::new(x, target - lowest, 0.0)
        }
        Lie::Longitudinal => {
            let bottom = lowest_of(&baby.shape.piece(Piece::Trunk));
            let mut y = target - bottom;
            if foot_leads(lying.legs) {
                y = y.max(LOWEST_FOOT + baby.shape.reach(DOWN));
            }
            Vec3::new(-left_right, y, 0.0)
        }
        Lie::Transverse | Lie::Oblique => {
            // An oblique baby leans to the side of its lower pole.
            let lean = match lying.lie {
                Lie::Oblique => -1.5 * (lying.up.x * lying.up.y).signum(),
                Lie::Longitudinal | Lie::Transverse => 0.0,
            };
            // Where it was felt, but with its lower side near the brim.
            let (up, down) = (baby.shape.reach(UP), baby.shape.reach(DOWN));
            let lowest =
                lying.level.map_or(target, |y| (y - 0.5 * (up + down)).clamp(target, HIGHEST_CROSSWISE));
            Vec3::new(-left_right + lean, lowest + down, 0.0)
        }
    }
}
