//! Placing, by computation for every lie. In: a plan, the sizes, the height of the fundus. Out: a baby between brim
//! and fundus.
//!
//! Seen from the front, heights near the pelvis are measured along its axis from the brim: y = 0 is the brim, and
//! k/5 of a head felt at k/5 stands above it.

use super::attitude::CURL;
use super::baby::{PosedBaby, Posture, pose};
use super::eight::walk_in;
use super::felt;
use super::head;
use super::pack::Pack;
use super::plan::{Depth, Lying, foot_leads};
use super::surface::{Form, Shape};
use crate::exam::{Attitude, Legs, Lie};
use crate::units::{FigurePoint, MotherPoint, Vec3};

/// Before labour no foot lies more than this far below the brim, cm.
const LOWEST_FOOT: f32 = -3.6;
/// A crosswise baby lies with its lower side near the brim, at most this far above it, cm.
const HIGHEST_CROSSWISE: f32 = 2.0;
/// Wall of the womb and water above the baby, cm.
pub const ABOVE_BABY: f32 = 1.5;

/// The extreme point of a surface in a direction, on the surface itself.
///
/// Searched from the tips of the forms that reach farthest by themselves: rays on a small grid round each tip, refined
/// three times.
/// - Units: cm, mother space.
/// - Error: below 0.02 cm along `direction` for round forms.
pub fn extreme(forms: &[Form], direction: Vec3) -> Vec3 {
    let direction = direction.normalized();
    let mut tips: Vec<Vec3> = forms.iter().filter(|f| !f.carve).map(|f| tip(f, direction)).collect();
    tips.sort_by(|p, q| q.dot(direction).total_cmp(&p.dot(direction)));
    let Some(farthest) = tips.first().map(|p| p.dot(direction)) else { return Vec3::default() };
    // A blend lifts the surface by at most a quarter of its radius: no tip much behind can be the extreme.
    const BEHIND: f32 = 0.7;
    const MOST: usize = 6;
    let helper = if direction.y.abs() < 0.9 { Vec3::new(0.0, 1.0, 0.0) } else { Vec3::new(0.0, 0.0, 1.0) };
    let a = direction.cross(helper).normalized();
    let b = direction.cross(a);
    let pack = Pack::of(forms);
    let mut best = tips[0] - direction * 100.0;
    for tip in tips.iter().take(MOST).filter(|p| p.dot(direction) > farthest - BEHIND) {
        let start = *tip + direction * (farthest - tip.dot(direction) + 2.0);
        let (mut own, mut centre, mut step) = (best, (0.0, 0.0), 0.4);
        for _ in 0..4 {
            let mut at = centre;
            for i in -3..=3 {
                let row = [-3.0, -2.0, -1.0, 0.0, 1.0, 2.0, 3.0]
                    .map(|j| (centre.0 + i as f32 * step, centre.1 + j * step));
                let walks = row.map(|(u, v)| (start + a * u + b * v, -direction));
                // What lies behind the best so far is of no use.
                let limit = (start - own).dot(direction).min(8.0);
                for (place, hit) in row.into_iter().zip(walk_in(&pack, &walks, limit)) {
                    if let Some(p) = hit.filter(|p| p.dot(direction) > own.dot(direction)) {
                        (own, at) = (p, place);
                    }
                }
            }
            centre = at;
            step /= 3.0;
        }
        best = own;
    }
    best
}

/// The point of one form by itself that lies farthest along a unit direction.
pub fn tip(form: &Form, direction: Vec3) -> Vec3 {
    match form.shape {
        Shape::Capsule { a, axis, r0, dr, .. } => {
            let (start, end) = (a + direction * r0, a + axis + direction * (r0 + dr));
            if start.dot(direction) > end.dot(direction) { start } else { end }
        }
        Shape::Ellipsoid { c, x, y, z, inv } => {
            let (u, v, w) = (x.dot(direction) / inv.x, y.dot(direction) / inv.y, z.dot(direction) / inv.z);
            let length = (u * u + v * v + w * w).sqrt();
            c + (x * (u / inv.x) + y * (v / inv.y) + z * (w / inv.z)) * (1.0 / length)
        }
    }
}

/// Points on the outline of a baby's hull seen from the front, all round, 0.15 cm out for the bulge of the blends.
pub fn hull(baby: &PosedBaby) -> Vec<FigurePoint> {
    hull_across(&baby.forms, LEFT)
}

/// The same of forms, with x along `across`, a unit direction at right angles to y.
pub fn hull_across(forms: &[Form], across: Vec3) -> Vec<FigurePoint> {
    const AROUND: usize = 48;
    (0..AROUND)
        .filter_map(|i| {
            // Half a step off the axes: a mirrored baby has the mirrored hull.
            let (sin, cos) = libm::sincosf((i as f32 + 0.5) / AROUND as f32 * std::f32::consts::TAU);
            let outward = across * cos + UP * sin;
            let tips = forms.iter().filter(|f| !f.carve).map(|f| tip(f, outward));
            let p = tips.max_by(|p, q| p.dot(outward).total_cmp(&q.dot(outward)))? + outward * 0.15;
            Some(FigurePoint::new(p.dot(across), p.y))
        })
        .collect()
}

/// How far a baby reaches along a unit direction; blends bulge a little farther (at most 0.2 cm at round ends).
fn reach(baby: &PosedBaby, direction: Vec3) -> f32 {
    baby.forms.iter().filter(|f| !f.carve).map(|f| tip(f, direction).dot(direction)).fold(-1e9, f32::max)
}

/// Height of a baby's highest point, cm.
pub fn top(baby: &PosedBaby) -> f32 {
    reach(baby, UP)
}

/// Height of a baby's lowest point, cm.
pub fn lowest(baby: &PosedBaby) -> f32 {
    -reach(baby, DOWN)
}

/// A placed baby, and whether it had to be drawn outside the height that was asked for.
pub struct Placed {
    /// The baby, without its fine curves.
    pub baby: PosedBaby,
    /// How far the baby stands above (+) or below (-) the fundus it should reach, cm; 0 when it fits.
    pub misfit: f32,
}

const UP: Vec3 = Vec3::new(0.0, 1.0, 0.0);
const DOWN: Vec3 = Vec3::new(0.0, -1.0, 0.0);
const LEFT: Vec3 = Vec3::new(1.0, 0.0, 0.0);

/// Places the baby. `fundus`: height of the top of the womb, cm; `limbs`: where limbs were felt.
pub fn place(lying: &Lying, posture: Posture, fundus: f32, limbs: &[MotherPoint]) -> Placed {
    let placed = place_body(lying, posture, fundus);
    let felt = felt::drawn_to(&placed.baby, limbs, fundus - ABOVE_BABY - 1.5);
    if felt.iter().all(Option::is_none) {
        return Placed { baby: placed.baby.with_influence(), ..placed };
    }
    let by = placed.baby.body.origin;
    let baby = pose(&Posture { felt, ..placed.baby.posture }).moved(by);
    Placed { baby: baby.with_influence(), misfit: placed.misfit }
}

/// Places head, trunk and folded limbs.
///
/// The search for curl and stretch measures by the tips of single forms; only the last baby is measured on its surface.
fn place_body(lying: &Lying, posture: Posture, fundus: f32) -> Placed {
    let placed = |baby: PosedBaby| {
        let origin = origin(&baby, lying, &|forms| extreme(forms, DOWN).y);
        baby.moved(origin)
    };
    if lying.lie != Lie::Longitudinal {
        return Placed { baby: placed(pose(&posture)), misfit: 0.0 };
    }
    // The baby straightens or curls, within a human range, until its upper end lies under the fundus.
    let room = |baby: &PosedBaby| fundus - ABOVE_BABY - reach(baby, UP);
    let fits = |baby: &PosedBaby| room(baby) - origin(baby, lying, &lowest_tip).y >= 0.0;
    let with_curl = |curl: f32| pose(&Posture { curl, ..posture });
    let (straight, bent) = CURL;
    let loosest = with_curl(straight);
    if !fits(&loosest) {
        let tightest = with_curl(bent);
        if !fits(&tightest) {
            let baby = placed(tightest);
            return Placed { misfit: (-room(&baby)).max(0.0), baby };
        }
        return Placed {
            baby: placed(last_that_fits((bent, tightest), straight, &with_curl, &fits)),
            misfit: 0.0,
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
        return Placed { misfit: (-room(&baby)).min(0.0), baby };
    }
    Placed { baby: placed(last_that_fits((0.0, loosest), most, &with_stretch, &fits)), misfit: 0.0 }
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
fn lowest_tip(forms: &[Form]) -> f32 {
    forms.iter().filter(|f| !f.carve).map(|f| tip(f, DOWN).y).fold(1e9, f32::min)
}

/// Where the origin of `baby`, posed at zero, must go.
fn origin(baby: &PosedBaby, lying: &Lying, lowest_of: &dyn Fn(&[Form]) -> f32) -> Vec3 {
    // Where the lowest point of the part that leads must come to lie.
    let target = match lying.depth {
        Depth::Fifths(k) => -(1.0 - f32::from(k) / 5.0) * (head::HEIGHT * baby.posture.measures.head),
        Depth::Lowest(y) => y,
    };
    let left_right = (reach(baby, LEFT) - reach(baby, -LEFT)) * 0.5;
    match lying.lie {
        Lie::Longitudinal if lying.up.y < 0.0 => {
            let lowest = lowest_of(baby.head_surface());
            // The head lies near the midline, the body a little to its own side; a head bent back lies off its body.
            let bent_back = matches!(baby.posture.attitude, Attitude::Brow | Attitude::Face);
            let share = if bent_back { 0.4 } else { 0.75 };
            let x = -(baby.head.origin.x * share + left_right * (1.0 - share));
            Vec3::new(x, target - lowest, 0.0)
        }
        Lie::Longitudinal => {
            let bottom = lowest_of(&baby.forms[..baby.head_forms.start]);
            let mut y = target - bottom;
            if foot_leads(lying.legs) {
                y = y.max(LOWEST_FOOT + reach(baby, DOWN));
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
            let (up, down) = (reach(baby, UP), reach(baby, DOWN));
            let lowest =
                lying.level.map_or(target, |y| (y - 0.5 * (up + down)).clamp(target, HIGHEST_CROSSWISE));
            Vec3::new(-left_right + lean, lowest + down, 0.0)
        }
    }
}
