//! How large the baby is at each week. In: exact weeks. Out: scales against the term body that is modelled.
//!
//! Source: INTERGROWTH-21st fetal growth standards (Papageorghiou et al., Lancet 2014;384:869-79), medians of
//! biparietal diameter, abdominal circumference and femur length. Valid 14 to 40 weeks; to 42 by the same formula,
//! which is an extrapolation.

/// Sizes against the term (40+0) body.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measures {
    /// Head, all directions.
    pub head: f32,
    /// Trunk, across and front to back.
    pub girth: f32,
    /// Trunk, along.
    pub length: f32,
    /// Bones of the limbs.
    pub bones: f32,
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

impl Measures {
    /// The scales at `weeks`, held between 14 and 42.
    pub fn at(weeks: f64) -> Self {
        let w = weeks.clamp(14.0, 42.0);
        let ratio = |f: fn(f64) -> f64| (f(w) / f(40.0)) as f32;
        let (head, girth, bones) = (ratio(biparietal_mm), ratio(abdominal_circumference_mm), ratio(femur_mm));
        // The trunk grows in length about as the femur does; flesh comes late, as the girth does.
        Measures { head, girth, length: bones, bones, flesh: girth }
    }
}
