//! Rigid frames. In: an origin and two directions. Out: points carried from one space to another.

use crate::units::Vec3;

/// A rigid frame: the images of the local axes, and the origin, in the outer space (cm).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame {
    /// Image of the local x axis.
    pub x: Vec3,
    /// Image of the local y axis.
    pub y: Vec3,
    /// Image of the local z axis.
    pub z: Vec3,
    /// Image of the local origin.
    pub origin: Vec3,
}

impl Frame {
    /// The frame that changes nothing.
    pub const IDENTITY: Frame = Frame {
        x: Vec3::new(1.0, 0.0, 0.0),
        y: Vec3::new(0.0, 1.0, 0.0),
        z: Vec3::new(0.0, 0.0, 1.0),
        origin: Vec3::new(0.0, 0.0, 0.0),
    };

    /// The frame with y along `up` and z as near as it can be to `front`.
    pub fn from_up_front(up: Vec3, front: Vec3, origin: Vec3) -> Self {
        let y = up.normalized();
        let z = (front - y * front.dot(y)).normalized();
        Frame { x: y.cross(z), y, z, origin }
    }

    /// A frame turned about its own x axis, at `origin`: positive `degrees` bend y towards z.
    pub fn pitched(degrees: f32, origin: Vec3) -> Self {
        let (sin, cos) = libm::sincosf(degrees.to_radians());
        Frame {
            x: Vec3::new(1.0, 0.0, 0.0),
            y: Vec3::new(0.0, cos, sin),
            z: Vec3::new(0.0, -sin, cos),
            origin,
        }
    }

    /// A local direction in the outer space.
    #[inline]
    pub fn direction(&self, v: Vec3) -> Vec3 {
        self.x * v.x + self.y * v.y + self.z * v.z
    }

    /// A local point in the outer space.
    #[inline]
    pub fn point(&self, p: Vec3) -> Vec3 {
        self.origin + self.direction(p)
    }

    /// An outer point in this frame's own coordinates.
    pub fn local(&self, p: Vec3) -> Vec3 {
        let d = p - self.origin;
        Vec3::new(d.dot(self.x), d.dot(self.y), d.dot(self.z))
    }

    /// This frame, given in `outer`'s coordinates, in the space `outer` is given in.
    pub fn within(&self, outer: &Frame) -> Frame {
        Frame {
            x: outer.direction(self.x),
            y: outer.direction(self.y),
            z: outer.direction(self.z),
            origin: outer.point(self.origin),
        }
    }
}
