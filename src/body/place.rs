//! Placing, by computation for every lie. In: a plan, the sizes, the height of the fundus. Out: a baby between brim
//! and fundus.
//!
//! Seen from the front, heights near the pelvis are measured along its axis from the brim: y = 0 is the brim, and
//! k/5 of a head felt at k/5 stands above it.

use super::attitude::CURL;
use super::baby::{PosedBaby, Posture, pose};
use super::head;
use super::plan::{Depth, Lying, foot_leads};
use super::surface::{Form, Shape, walk_in};
use crate::exam::Lie;
use crate::units::{MotherSide, Vec3};

/// Before labour no foot lies more than this far below the brim, cm.
const LOWEST_FOOT: f32 = -3.6;
/// Wall of the womb and water above the baby, cm.
pub const ABOVE_BABY: f32 = 1.5;

/// The extreme point of a surface in a direction, on the surface itself.
///
/// - Units: cm, mother space.
/// - Error: below 0.02 cm along `direction` for round forms (rays 1 cm apart, then three refinements by a third).
pub fn extreme(forms: &[Form], direction: Vec3) -> Vec3 {
    let direction = direction.normalized();
    let helper = if direction.y.abs() < 0.9 { Vec3::new(0.0, 1.0, 0.0) } else { Vec3::new(0.0, 0.0, 1.0) };
    let a = direction.cross(helper).normalized();
    let b = direction.cross(a);
    // Start over the form that reaches farthest by itself.
    let support = |f: &Form| own_support(f, direction);
    let seed = forms.iter().filter(|f| !f.carve).max_by(|x, y| support(x).total_cmp(&support(y)));
    let Some(seed) = seed else { return Vec3::default() };
    let start = seed.ball + direction * (support(seed) - seed.ball.dot(direction) + 4.0);
    let ray = |u: f32, v: f32| walk_in(forms, start + a * u + b * v, -direction, 24.0);
    let mut best = (start - direction * 24.0, 0.0, 0.0);
    let (mut step, mut centre) = (1.0, (0.0, 0.0));
    for _ in 0..4 {
        for i in -4..=4 {
            for j in -4..=4 {
                let (u, v) = (centre.0 + i as f32 * step, centre.1 + j as f32 * step);
                if let Some(p) = ray(u, v).filter(|p| p.dot(direction) > best.0.dot(direction)) {
                    best = (p, u, v);
                }
            }
        }
        centre = (best.1, best.2);
        step /= 3.0;
    }
    best.0
}

/// How far one form reaches along a unit direction by itself.
fn own_support(form: &Form, direction: Vec3) -> f32 {
    match form.shape {
        Shape::Capsule { a, axis, r0, dr, .. } => {
            (a.dot(direction) + r0).max((a + axis).dot(direction) + r0 + dr)
        }
        Shape::Ellipsoid { c, x, y, z, inv } => {
            let (u, v, w) = (x.dot(direction) / inv.x, y.dot(direction) / inv.y, z.dot(direction) / inv.z);
            c.dot(direction) + (u * u + v * v + w * w).sqrt()
        }
    }
}

/// How far a baby reaches along a unit direction; blends bulge a little farther (at most 0.2 cm at round ends).
fn reach(baby: &PosedBaby, direction: Vec3) -> f32 {
    baby.forms.iter().filter(|f| !f.carve).map(|f| own_support(f, direction)).fold(-1e9, f32::max)
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

/// Places the baby. `fundus`: height of the top of the womb, cm; `shift`: where its middle lies off the midline, cm,
/// towards the mother's left.
pub fn place(lying: &Lying, posture: Posture, fundus: f32, shift: f32) -> Placed {
    let at = |curl: f32| {
        let posture = Posture { curl, ..posture };
        let baby = pose(&posture, Vec3::default());
        let origin = origin(&baby, lying, shift);
        pose(&posture, origin)
    };
    if lying.lie != Lie::Longitudinal {
        return Placed { baby: at(1.0), misfit: 0.0 };
    }
    // The baby straightens or curls, within a human range, until its upper end lies under the fundus.
    let room = |baby: &PosedBaby| fundus - ABOVE_BABY - reach(baby, UP);
    let (mut straight, mut bent) = CURL;
    let loosest = at(straight);
    if room(&loosest) >= 0.0 {
        let over = room(&loosest);
        return Placed { baby: loosest, misfit: -over };
    }
    let tightest = at(bent);
    if room(&tightest) <= 0.0 {
        let over = -room(&tightest);
        return Placed { baby: tightest, misfit: over };
    }
    for _ in 0..5 {
        let middle = 0.5 * (straight + bent);
        if room(&at(middle)) < 0.0 {
            straight = middle;
        } else {
            bent = middle;
        }
    }
    Placed { baby: at(bent), misfit: 0.0 }
}

/// Where the origin of `baby`, posed at zero, must go.
fn origin(baby: &PosedBaby, lying: &Lying, shift: f32) -> Vec3 {
    let head = baby.head_surface();
    let left_right = (reach(baby, LEFT) - reach(baby, -LEFT)) * 0.5;
    match lying.lie {
        Lie::Longitudinal if lying.up.y < 0.0 => {
            let lowest = extreme(head, DOWN).y;
            let height = head::HEIGHT * baby.posture.measures.head;
            let target = match lying.depth {
                Depth::Fifths(k) => -(1.0 - f32::from(k) / 5.0) * height,
                Depth::Lowest(y) => y,
            };
            // The head lies near the midline, the body a little to its own side.
            let x = -(baby.head.origin.x * 0.75 + left_right * 0.25);
            Vec3::new(x + shift, target - lowest, 0.0)
        }
        Lie::Longitudinal => {
            let bottom = extreme(&baby.forms[..baby.head_forms.start], DOWN).y;
            let target = match lying.depth {
                Depth::Fifths(_) => 0.0,
                Depth::Lowest(y) => y,
            };
            let mut y = target - bottom;
            if foot_leads(lying.legs) {
                y = y.max(LOWEST_FOOT + reach(baby, DOWN));
            }
            Vec3::new(-left_right + shift, y, 0.0)
        }
        Lie::Transverse | Lie::Oblique => {
            let low = match lying.depth {
                Depth::Fifths(_) => 0.0,
                Depth::Lowest(y) => y,
            };
            // An oblique baby leans to the side of its lower pole.
            let lean = match (lying.lie, lying.side) {
                (Lie::Oblique, Some(side)) => 1.5 * MotherSide::sign(side),
                _ => 0.0,
            };
            Vec3::new(-left_right + lean + shift, low + reach(baby, DOWN), 0.0)
        }
    }
}
