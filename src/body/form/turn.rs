//! Rotations. In: axes and degrees. Out: the images of the three axes; what of a rotation is twist; quaternions.

use crate::units::Vec3;

/// A rotation, by the images of the axes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Turn {
    /// Image of the x axis.
    pub x: Vec3,
    /// Image of the y axis.
    pub y: Vec3,
    /// Image of the z axis.
    pub z: Vec3,
}

/// A quaternion: w, x, y, z.
pub type Quaternion = [f32; 4];

impl Turn {
    /// No turn.
    pub const NONE: Turn =
        Turn { x: Vec3::new(1.0, 0.0, 0.0), y: Vec3::new(0.0, 1.0, 0.0), z: Vec3::new(0.0, 0.0, 1.0) };

    /// By `degrees` about `axis`, counter-clockwise seen from its tip.
    pub fn about(axis: Vec3, degrees: f32) -> Turn {
        let (sin, cos) = libm::sincosf(degrees.to_radians());
        Turn::by(axis.normalized(), sin, cos)
    }

    fn by(a: Vec3, sin: f32, cos: f32) -> Turn {
        let k = 1.0 - cos;
        Turn {
            x: Vec3::new(cos + a.x * a.x * k, a.y * a.x * k + a.z * sin, a.z * a.x * k - a.y * sin),
            y: Vec3::new(a.x * a.y * k - a.z * sin, cos + a.y * a.y * k, a.z * a.y * k + a.x * sin),
            z: Vec3::new(a.x * a.z * k + a.y * sin, a.y * a.z * k - a.x * sin, cos + a.z * a.z * k),
        }
    }

    /// The shortest turn that brings direction `a` to direction `b`.
    pub fn between(a: Vec3, b: Vec3) -> Turn {
        let (a, b) = (a.normalized(), b.normalized());
        let axis = a.cross(b);
        let sin = axis.length();
        if sin < 1e-6 { Turn::NONE } else { Turn::by(axis * (1.0 / sin), sin, a.dot(b)) }
    }

    /// The turn with x along `along` and y as near as it can be to `beside`.
    pub fn along(along: Vec3, beside: Vec3) -> Turn {
        let x = along.normalized();
        let y = (beside - x * beside.dot(x)).normalized();
        Turn { x, y, z: x.cross(y) }
    }

    /// A direction, turned.
    #[inline]
    pub fn of(&self, v: Vec3) -> Vec3 {
        self.x * v.x + self.y * v.y + self.z * v.z
    }

    /// A direction, turned back.
    #[inline]
    pub fn back(&self, v: Vec3) -> Vec3 {
        Vec3::new(v.dot(self.x), v.dot(self.y), v.dot(self.z))
    }

    /// First `first`, then this.
    pub fn after(&self, first: &Turn) -> Turn {
        Turn { x: self.of(first.x), y: self.of(first.y), z: self.of(first.z) }
    }

    /// The turn that undoes this one.
    pub fn inverse(&self) -> Turn {
        let row = |v: Vec3| self.back(v);
        Turn { x: row(Turn::NONE.x), y: row(Turn::NONE.y), z: row(Turn::NONE.z) }
    }

    /// As a quaternion whose first number is not negative.
    pub fn quaternion(&self) -> Quaternion {
        let (a, b, c) = (self.x, self.y, self.z);
        let trace = a.x + b.y + c.z;
        let q = if trace > 0.0 {
            let s = (trace + 1.0).sqrt() * 2.0;
            [0.25 * s, (b.z - c.y) / s, (c.x - a.z) / s, (a.y - b.x) / s]
        } else if a.x > b.y && a.x > c.z {
            let s = (1.0 + a.x - b.y - c.z).sqrt() * 2.0;
            [(b.z - c.y) / s, 0.25 * s, (b.x + a.y) / s, (c.x + a.z) / s]
        } else if b.y > c.z {
            let s = (1.0 + b.y - a.x - c.z).sqrt() * 2.0;
            [(c.x - a.z) / s, (b.x + a.y) / s, 0.25 * s, (c.y + b.z) / s]
        } else {
            let s = (1.0 + c.z - a.x - b.y).sqrt() * 2.0;
            [(a.y - b.x) / s, (c.x + a.z) / s, (c.y + b.z) / s, 0.25 * s]
        };
        if q[0] < 0.0 { q.map(|k| -k) } else { q }
    }

    /// From a quaternion of length 1.
    pub fn from_quaternion([w, x, y, z]: Quaternion) -> Turn {
        Turn {
            x: Vec3::new(1.0 - 2.0 * (y * y + z * z), 2.0 * (x * y + w * z), 2.0 * (x * z - w * y)),
            y: Vec3::new(2.0 * (x * y - w * z), 1.0 - 2.0 * (x * x + z * z), 2.0 * (y * z + w * x)),
            z: Vec3::new(2.0 * (x * z + w * y), 2.0 * (y * z - w * x), 1.0 - 2.0 * (x * x + y * y)),
        }
    }

    /// How far this turns about `axis`, degrees.
    pub fn twist(&self, axis: Vec3) -> f32 {
        let [w, x, y, z] = self.quaternion();
        (2.0 * libm::atan2f(Vec3::new(x, y, z).dot(axis), w)).to_degrees()
    }
}

/// The degrees between two directions.
pub fn angle(a: Vec3, b: Vec3) -> f32 {
    libm::acosf(a.normalized().dot(b.normalized()).clamp(-1.0, 1.0)).to_degrees()
}
