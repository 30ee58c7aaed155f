//! The body's surface: rounded forms blended into one another.
//!
//! In: tapered capsules and ellipsoids, each with a blend radius, a part and a group.
//! Out: signed distance (cm, negative inside) and the part nearest to a point.
//!
//! Forms blend smoothly inside a group; groups meet with a hard edge. The blend is the
//! quadratic smooth minimum, whose bulge is at most a quarter of its radius.

use super::part::Part;
use crate::units::Vec3;

/// The shape of one form.
#[derive(Clone, Copy, Debug)]
pub enum Shape {
    /// A capsule from `a` along `axis`, radius from `r0` to `r0 + dr`.
    Capsule {
        /// Start.
        a: Vec3,
        /// Start to end.
        axis: Vec3,
        /// 1 / squared length of the axis.
        inv_len2: f32,
        /// Radius at the start.
        r0: f32,
        /// Growth of the radius to the end.
        dr: f32,
    },
    /// An ellipsoid with axes x, y, z (unit vectors) and reciprocal half-axes.
    Ellipsoid {
        /// Centre.
        c: Vec3,
        /// First axis.
        x: Vec3,
        /// Second axis.
        y: Vec3,
        /// Third axis.
        z: Vec3,
        /// 1 / half-axes.
        inv: Vec3,
    },
}

/// One form of the surface.
#[derive(Clone, Copy, Debug)]
pub struct Form {
    /// Its shape.
    pub shape: Shape,
    /// Blend radius with what stands before it in its group, cm.
    pub blend: f32,
    /// True when it is carved out instead of added.
    pub carve: bool,
    /// The part it belongs to.
    pub part: Part,
    /// Its group; forms of a group stand together in the list.
    pub group: u8,
    /// Centre of a ball round it.
    pub ball: Vec3,
    /// Radius of that ball.
    pub reach: f32,
    /// How far outside itself it can still move the blended surface.
    pub influence: f32,
}

impl Form {
    /// Signed distance to this form alone.
    #[inline(always)]
    pub fn distance(&self, q: Vec3) -> f32 {
        match self.shape {
            Shape::Capsule { a, axis, inv_len2, r0, dr } => {
                let pa = q - a;
                let t = (pa.dot(axis) * inv_len2).clamp(0.0, 1.0);
                (pa - axis * t).length() - (r0 + dr * t)
            }
            Shape::Ellipsoid { c, x, y, z, inv } => {
                let d = q - c;
                let l = Vec3::new(d.dot(x) * inv.x, d.dot(y) * inv.y, d.dot(z) * inv.z);
                let k0 = l.length();
                let k1 = Vec3::new(l.x * inv.x, l.y * inv.y, l.z * inv.z).length() + 1e-6;
                k0 * (k0 - 1.0) / k1
            }
        }
    }

    /// Its mirror image: what was on her left is on her right.
    pub fn mirrored(&self) -> Self {
        let turned = |v: Vec3| Vec3::new(-v.x, v.y, v.z);
        let shape = match self.shape {
            Shape::Capsule { a, axis, inv_len2, r0, dr } => {
                Shape::Capsule { a: turned(a), axis: turned(axis), inv_len2, r0, dr }
            }
            Shape::Ellipsoid { c, x, y, z, inv } => {
                Shape::Ellipsoid { c: turned(c), x: turned(x), y: turned(y), z: turned(z), inv }
            }
        };
        Self { shape, ball: turned(self.ball), ..*self }
    }
}

impl Form {
    /// The same form, elsewhere.
    pub fn moved(mut self, by: Vec3) -> Self {
        match &mut self.shape {
            Shape::Capsule { a, .. } => *a = *a + by,
            Shape::Ellipsoid { c, .. } => *c = *c + by,
        }
        self.ball = self.ball + by;
        self
    }

    /// A lower bound, seen along z, of the distance from this form to the square of half-side `half` round (x, y).
    pub fn distance_seen(&self, x: f32, y: f32, half: f32) -> f32 {
        match self.shape {
            Shape::Capsule { a, axis, r0, dr, .. } => {
                let (px, py) = (x - a.x, y - a.y);
                let length2 = axis.x * axis.x + axis.y * axis.y;
                let t = ((px * axis.x + py * axis.y) / length2.max(1e-6)).clamp(0.0, 1.0);
                let (qx, qy) = (px - axis.x * t, py - axis.y * t);
                (qx * qx + qy * qy).sqrt() - half * std::f32::consts::SQRT_2 - r0.max(r0 + dr)
            }
            Shape::Ellipsoid { c, x: ax, y: ay, z: az, inv } => {
                // The half-sides of its upright box.
                let side = |u: f32, v: f32, w: f32| {
                    let (u, v, w) = (u / inv.x, v / inv.y, w / inv.z);
                    (u * u + v * v + w * w).sqrt()
                };
                let dx = ((x - c.x).abs() - half - side(ax.x, ay.x, az.x)).max(0.0);
                let dy = ((y - c.y).abs() - half - side(ax.y, ay.y, az.y)).max(0.0);
                (dx * dx + dy * dy).sqrt()
            }
        }
    }
}

/// The smaller of two distances, rounded off over `k` cm.
#[inline(always)]
pub fn smooth_min(a: f32, b: f32, k: f32) -> f32 {
    let h = (k - (a - b).abs()).max(0.0);
    a.min(b) - h * h * (0.25 / k)
}

/// Signed distance to the blended surface, and the nearest part.
pub fn distance(forms: &[Form], q: Vec3) -> (f32, Part) {
    let (mut best, mut best_part) = (1e9f32, Part::default());
    let (mut d, mut part, mut group) = (1e9f32, Part::default(), u8::MAX);
    for form in forms {
        if form.group != group {
            if d < best {
                (best, best_part) = (d, part);
            }
            (d, group) = (1e9, form.group);
        }
        let own = form.distance(q);
        if form.carve {
            d = -smooth_min(-d, own, form.blend);
        } else {
            if own < d {
                part = form.part;
            }
            d = smooth_min(d, own, form.blend);
        }
    }
    if d < best { (d, part) } else { (best, best_part) }
}

/// Distance of the taps, cm.
pub const TAP: f32 = 0.02;
/// Four corners of a cube: the fewest taps that give a gradient.
pub const TAPS: [Vec3; 4] = [
    Vec3::new(1.0, -1.0, -1.0),
    Vec3::new(-1.0, -1.0, 1.0),
    Vec3::new(-1.0, 1.0, -1.0),
    Vec3::new(1.0, 1.0, 1.0),
];

/// Fills in `influence`: how far each form can still move the surface.
///
/// It is the largest blend radius of itself and of any later form of its group that it can touch, times 0.8.
/// With half of that, straight seams appear where the caster changes from one short list of forms to the next.
pub fn set_influence(forms: &mut [Form]) {
    for i in 0..forms.len() {
        let mut k = if i > 0 && forms[i - 1].group == forms[i].group { forms[i].blend } else { 0.0 };
        let a = &forms[i];
        for b in forms[i + 1..].iter().take_while(|b| b.group == a.group) {
            if b.blend > k && (b.ball - a.ball).length() < a.reach + b.reach + b.blend {
                k = b.blend;
            }
        }
        forms[i].influence = k * 0.8;
    }
}

/// A point this near to the surface, cm, is on it.
pub const MET: f32 = 0.003;
/// Steps of a walk at most.
pub const STEPS: usize = 120;

/// Walks from outside along `direction` until the surface; `None` if there is none within `limit` cm.
///
/// Error: stops within `MET` of the surface.
pub fn walk_in(forms: &[Form], start: Vec3, direction: Vec3, limit: f32) -> Option<Vec3> {
    let mut gone = 0.0;
    for _ in 0..STEPS {
        let p = start + direction * gone;
        let d = distance(forms, p).0;
        if d < MET {
            return Some(p);
        }
        gone += d * 0.9;
        if gone > limit {
            return None;
        }
    }
    None
}
