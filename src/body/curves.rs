//! Fine lines on the surface. In: control points. Out: points of a curve in mother space, with width and ink.

use crate::units::Vec3;

/// How a curve is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ink {
    /// As dark as the outline.
    Firm,
    /// Half as dark.
    Soft,
    /// Hardly darker than the skin in shade.
    Faint,
    /// In the colour of hair.
    Hair,
}

/// A line on the surface.
#[derive(Clone, Debug)]
pub struct Curve {
    /// Its points, in mother space, cm.
    pub points: Vec<Vec3>,
    /// Width at its start and end, cm.
    pub width: (f32, f32),
    /// How it is drawn.
    pub ink: Ink,
    /// What it shows, such as `face`.
    pub name: &'static str,
}

/// `n + 1` points of the Catmull-Rom curve through `controls`.
pub fn spread(controls: &[(f32, f32)], n: usize) -> Vec<(f32, f32)> {
    let at = |k: i32| controls[k.clamp(0, controls.len() as i32 - 1) as usize];
    let blend = |a: f32, b: f32, c: f32, d: f32, t: f32| {
        0.5 * (2.0 * b
            + (c - a) * t
            + (2.0 * a - 5.0 * b + 4.0 * c - d) * t * t
            + (3.0 * b - a - 3.0 * c + d) * t * t * t)
    };
    (0..=n)
        .map(|q| {
            let u = q as f32 / n as f32 * (controls.len() - 1) as f32;
            let i = (u as usize).min(controls.len() - 2);
            let t = u - i as f32;
            let (a, b, c, d) = (at(i as i32 - 1), at(i as i32), at(i as i32 + 1), at(i as i32 + 2));
            (blend(a.0, b.0, c.0, d.0, t), blend(a.1, b.1, c.1, d.1, t))
        })
        .collect()
}
