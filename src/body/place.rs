//! Placing a baby of the one form. In: a plan, how it would hold itself, the height of the fundus. Out: a baby between brim
//! and fundus.
//!
//! Seen from the front, heights near the pelvis are measured along its axis from the brim: y = 0 is the brim, and
//! k/5 of a head felt at k/5 stands above it.
//!
//! The search asks the bones and a few points that they carry; the skin is made once, and then the baby is moved so that
//! what was asked for (fifths, the lowest point) holds on the skin itself.
//!
//! A baby that does not fit under the fundus is curled, then tilted, then given the sizes of fewer weeks.

use super::baby::{PosedBaby, Posture};
use super::felt::{self, Felt};
use super::form::body::Skin;
use super::head;
use super::hold::hold;
use super::measures::Measures;
use super::plan::{Depth, Lying, foot_leads};
use super::posed::{Draft, Poser, farthest, reflected};
use crate::exam::{Attitude, Lie};
use crate::units::{FigurePoint, Vec3};

/// Before labour no foot lies more than this far below the brim, cm.
const LOWEST_FOOT: f32 = -3.6;
/// A crosswise baby lies with its lower side near the brim, at most this far above it, cm.
const HIGHEST_CROSSWISE: f32 = 2.0;
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

const UP: Vec3 = Vec3::new(0.0, 1.0, 0.0);
const DOWN: Vec3 = Vec3::new(0.0, -1.0, 0.0);
const LEFT: Vec3 = Vec3::new(1.0, 0.0, 0.0);

/// How much room above a baby is nothing to speak of, cm: cord, placenta and water lie there. A house value.
const ROOMY: f32 = 8.0;
/// The range of curls: 1 is the posture as it was chosen, less is straighter. House values: straighter, legs hang free of
/// the body and a womb that is roomy is not filled.
const CURL: (f32, f32) = (0.78, 1.25);
/// How far a baby is tilted at most to fit under the fundus, degrees.
const TILT: f32 = 18.0;
/// The least size that is drawn, against the baby's own, in length.
const LEAST: f32 = 0.85;

/// Places the baby. `fundus`: height of the top of the womb, cm; `limbs`: where limbs were felt.
pub fn place(lying: &Lying, posture: Posture, fundus: f32, limbs: &[Felt]) -> Placed {
    let mut posture = posture;
    let (mut fitted, mut smaller) = (Fitting::of(lying, posture).curled(fundus), false);
    if fitted.room(fundus) < 0.0 && lying.lie == Lie::Longitudinal {
        fitted = Fitting::of(lying, posture).tilted(fundus);
        // The sizes of fewer weeks, as few as are needed.
        let own = posture.measures;
        let (mut least, mut most) = (0.0, 1.0);
        if fitted.room(fundus) < 0.0 {
            smaller = true;
            for _ in 0..5 {
                let middle = 0.5 * (least + most);
                posture.measures = smaller_by(&own, LEAST + (1.0 - LEAST) * middle);
                let tried = Fitting::of(lying, posture).tilted(fundus);
                if tried.room(fundus) >= 0.0 { least = middle } else { most = middle }
            }
            posture.measures = smaller_by(&own, LEAST + (1.0 - LEAST) * least);
            fitted = Fitting::of(lying, posture).tilted(fundus);
        }
    }
    let room = fitted.room(fundus);
    let misfit = if lying.lie == Lie::Longitudinal && room > ROOMY { -room } else { (-room).max(0.0) };
    if !limbs.is_empty() {
        fitted.lead(limbs, fundus - ABOVE_BABY - 1.5);
    }
    Placed { baby: fitted.baby(), misfit, smaller }
}

/// The measures of a baby whose trunk is this share as long: those of the week when it was.
fn smaller_by(own: &Measures, share: f32) -> Measures {
    let (mut low, mut high) = (20.0, 42.0);
    for _ in 0..20 {
        let middle = 0.5 * (low + high);
        if Measures::at(middle).length > own.length * share { high = middle } else { low = middle }
    }
    Measures::at(low)
}

/// A baby on its way to a place.
struct Fitting {
    lying: Lying,
    poser: Poser,
    /// How it is turned as it is made.
    made: Posture,
    draft: Draft,
}

impl Fitting {
    fn of(lying: &Lying, posture: Posture) -> Self {
        let poser = Poser::new(&posture);
        let made = *poser.made();
        let mut lying = *lying;
        lying.up = made.up;
        let draft = poser.draft(&made, &hold(&made));
        Fitting { lying, poser, made, draft }
    }

    /// The range of its curls: hands at the thighs of a baby whose foot leads would be pressed into a belly bent further.
    fn curls(&self) -> (f32, f32) {
        if foot_leads(self.lying.legs) { (CURL.0, 1.1) } else { CURL }
    }

    fn with_curl(&mut self, curl: f32) {
        self.made.curl = curl;
        self.draft = self.poser.draft(&self.made, &hold(&self.made));
    }

    /// The upper end leans to the side of the back, about the axis of the picture.
    fn with_tilt(&mut self, degrees: f32) {
        let (sin, cos) = libm::sincosf(degrees.to_radians());
        let turn = |v: Vec3| Vec3::new(v.x * cos - v.y * sin, v.x * sin + v.y * cos, v.z);
        let own = *self.poser.made();
        (self.made.up, self.made.back) = (turn(own.up), turn(own.back));
        self.draft = self.poser.draft(&self.made, &self.draft.held);
    }

    /// Straightened or curled, within a human range, until its upper end lies under the fundus.
    fn curled(mut self, fundus: f32) -> Self {
        if self.lying.lie != Lie::Longitudinal {
            return self;
        }
        let (straight, bent) = self.curls();
        self.with_curl(straight);
        if self.room(fundus) >= 0.0 {
            return self;
        }
        self.with_curl(bent);
        if self.room(fundus) < 0.0 {
            return self;
        }
        let (mut fitting, mut over) = (bent, straight);
        for _ in 0..6 {
            let middle = 0.5 * (fitting + over);
            self.with_curl(middle);
            if self.room(fundus) >= 0.0 { fitting = middle } else { over = middle }
        }
        self.with_curl(fitting);
        self
    }

    /// Curled as far as it goes, then tilted as little as lets it fit, to the side where it takes less room.
    fn tilted(mut self, fundus: f32) -> Self {
        self.with_curl(self.curls().1);
        let mut best = (self.room(fundus), 0.0);
        for step in 1..=6 {
            for way in [1.0, -1.0] {
                let degrees = TILT * way * step as f32 / 6.0;
                self.with_tilt(degrees);
                let room = self.room(fundus);
                if room > best.0 + 0.05 {
                    best = (room, degrees);
                }
            }
            if best.0 >= 0.0 {
                break;
            }
        }
        self.with_tilt(best.1);
        self
    }

    /// How much room there is between its upper end and the fundus, cm.
    fn room(&self, fundus: f32) -> f32 {
        fundus - ABOVE_BABY - self.draft.reach(UP) - self.origin(&self.draft).y
    }

    /// Where the origin of a draft must go, in the space in which the baby is made.
    fn origin(&self, draft: &Draft) -> Vec3 {
        let (lying, m) = (&self.lying, &self.made.measures);
        let target = match lying.depth {
            Depth::Fifths(k) => -(1.0 - f32::from(k) / 5.0) * (head::HEIGHT * m.head),
            Depth::Lowest(y) => y,
        };
        let (up, down) = (draft.reach(UP), draft.reach(DOWN));
        let left_right = (draft.reach(LEFT) - draft.reach(-LEFT)) * 0.5;
        match lying.lie {
            Lie::Longitudinal if lying.up.y < 0.0 => {
                let lowest = -farthest(&draft.head, DOWN);
                let middle = 0.5 * (farthest(&draft.head, LEFT) - farthest(&draft.head, -LEFT));
                let bent_back = matches!(self.made.attitude, Attitude::Brow | Attitude::Face);
                let share = if bent_back { 0.4 } else { 0.75 };
                Vec3::new(-(middle * share + left_right * (1.0 - share)), target - lowest, 0.0)
            }
            Lie::Longitudinal => {
                let mut y = target + farthest(&draft.trunk, DOWN);
                if foot_leads(lying.legs) {
                    y = y.max(LOWEST_FOOT + down);
                }
                Vec3::new(-left_right, y, 0.0)
            }
            Lie::Transverse | Lie::Oblique => {
                let lean = match lying.lie {
                    Lie::Oblique => -1.5 * (lying.up.x * lying.up.y).signum(),
                    Lie::Longitudinal | Lie::Transverse => 0.0,
                };
                let lowest =
                    lying.level.map_or(target, |y| (y - 0.5 * (up + down)).clamp(target, HIGHEST_CROSSWISE));
                Vec3::new(-left_right + lean, lowest + down, 0.0)
            }
        }
    }

    /// Limbs go where they were felt, no end higher than `top`: where they lie is asked of the skin as the bones carry it.
    fn lead(&mut self, limbs: &[Felt], top: f32) {
        let felt = felt::drawn_to(&self.with_skin(&self.poser.quick(&self.draft.held)), limbs, top);
        if felt.iter().any(Option::is_some) {
            self.draft.held = self.poser.reaching(&self.draft.held, &felt);
        }
    }

    /// The baby in its place, with what leads where it must be on the skin itself.
    fn baby(&self) -> PosedBaby {
        self.with_skin(&self.poser.skin(&self.draft.held))
    }

    fn with_skin(&self, skin: &Skin) -> PosedBaby {
        let held = &self.draft.held;
        let baby = self.poser.baby(&self.made, held, skin);
        let origin = self.origin(&self.poser.draft_of(&self.made, held, &skin.points));
        baby.moved(if self.poser.is_mirrored() { reflected(origin) } else { origin })
    }
}
