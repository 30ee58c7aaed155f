//! How large the baby is at each week. In: exact weeks. Out: scales against the term body that is modelled.
//!
//! Head, abdomen and femur: INTERGROWTH-21st fetal growth standards (Papageorghiou et al., Lancet 2014;384:869-79),
//! medians of biparietal diameter, abdominal circumference and femur length. Valid 14 to 40 weeks; to 42 by the same
//! formula, which is an extrapolation.
//!
//! Humerus, radius, tibia and foot: a smooth curve through medians at 12 to 42 weeks of published tables (inferred, not
//! verified: Chitty and Altman, BJOG 2002;109:919-29), error up to 1.2 mm. For drawing only.

/// What the skin adds to the breadth of the head, mm, both sides together: a scan measures bone. With it the term head
/// has the girth that a tape finds on newborns (INTERGROWTH-21st newborn size, 34.0 cm at 40+0).
pub const SCALP_MM: f64 = 3.5;

/// Sizes against the term (40+0) body.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measures {
    /// Head, all directions.
    pub head: f32,
    /// Trunk, across and front to back.
    pub girth: f32,
    /// Trunk, along.
    pub length: f32,
    /// Upper arm, along.
    pub humerus: f32,
    /// Forearm, along; and the hand.
    pub radius: f32,
    /// Thigh, along.
    pub femur: f32,
    /// Lower leg, along.
    pub tibia: f32,
    /// Foot, all directions.
    pub foot: f32,
    /// Thickness of the limbs.
    pub flesh: f32,
}

/// Median biparietal diameter, mm, outer to outer. Input: exact weeks.
pub fn biparietal_mm(w: f64) -> f64 {
    5.60878 + 0.158369 * w * w - 0.00256379 * w * w * w
}

/// Median abdominal circumference, mm. Input: exact weeks.
pub fn abdominal_circumference_mm(w: f64) -> f64 {
    -81.3243 + 11.6772 * w - 0.000561865 * w * w * w
}

/// Median femur length, mm. Input: exact weeks.
pub fn femur_mm(w: f64) -> f64 {
    -39.9616 + 4.32298 * w - 0.0380156 * w * w
}

/// Median length of the humerus, mm. Input: exact weeks.
pub fn humerus_mm(w: f64) -> f64 {
    quartic([-42.246712, 4.68272866, -0.0391991217, -0.000813440959, 1.35490877e-05], w)
}

/// Median length of the radius, mm. Input: exact weeks.
pub fn radius_mm(w: f64) -> f64 {
    quartic([-34.4771969, 3.44579626, 0.0107832356, -0.00200770216, 2.42272559e-05], w)
}

/// Median length of the tibia, mm. Input: exact weeks.
pub fn tibia_mm(w: f64) -> f64 {
    quartic([-4.55578911, -1.48552957, 0.28935031, -0.008072943, 7.13392513e-05], w)
}

/// Median length of the foot from heel to toe, mm. Input: exact weeks.
pub fn foot_mm(w: f64) -> f64 {
    quartic([-24.8702725, 2.56852732, 0.0283490494, -0.000554066808, -3.16007685e-06], w)
}

fn quartic(c: [f64; 5], w: f64) -> f64 {
    c[0] + w * (c[1] + w * (c[2] + w * (c[3] + w * c[4])))
}

impl Measures {
    /// The scales at `weeks`, held between 14 and 42.
    pub fn at(weeks: f64) -> Self {
        let w = weeks.clamp(14.0, 42.0);
        let ratio = |f: fn(f64) -> f64| (f(w) / f(40.0)) as f32;
        let (girth, femur) = (ratio(abdominal_circumference_mm), ratio(femur_mm));
        Measures {
            head: ((biparietal_mm(w) + SCALP_MM) / (biparietal_mm(40.0) + SCALP_MM)) as f32,
            girth,
            // The trunk grows in length about as the femur does.
            length: femur,
            humerus: ratio(humerus_mm),
            radius: ratio(radius_mm),
            femur,
            tibia: ratio(tibia_mm),
            foot: ratio(foot_mm),
            // Flesh comes late, as the girth does.
            flesh: girth,
        }
    }
}
