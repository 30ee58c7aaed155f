//! Points of the four spaces, as different types. In: coordinates. Out: the same, named by space.

use std::ops::{Add, Mul, Neg, Sub};

/// A plain 3-D vector in centimetres, f32 so that every machine computes the same bits.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Vec3 {
    /// First coordinate.
    pub x: f32,
    /// Second coordinate.
    pub y: f32,
    /// Third coordinate.
    pub z: f32,
}

impl Vec3 {
    /// The vector with these coordinates.
    pub const fn new(x: f32, y: f32, z: f32) -> Self {
        Self { x, y, z }
    }
    /// Scalar product.
    #[inline(always)]
    pub fn dot(self, o: Self) -> f32 {
        self.x * o.x + self.y * o.y + self.z * o.z
    }
    /// Vector product.
    #[inline(always)]
    pub fn cross(self, o: Self) -> Self {
        Self::new(self.y * o.z - self.z * o.y, self.z * o.x - self.x * o.z, self.x * o.y - self.y * o.x)
    }
    /// Length.
    #[inline(always)]
    pub fn length(self) -> f32 {
        self.dot(self).sqrt()
    }
    /// The same direction, length 1; a zero vector stays near zero.
    pub fn normalized(self) -> Self {
        self * (1.0 / self.length().max(1e-9))
    }
    /// The point `t` of the way to `o`.
    pub fn lerp(self, o: Self, t: f32) -> Self {
        self + (o - self) * t
    }
}

impl Add for Vec3 {
    type Output = Self;
    #[inline(always)]
    fn add(self, o: Self) -> Self {
        Self::new(self.x + o.x, self.y + o.y, self.z + o.z)
    }
}
impl Sub for Vec3 {
    type Output = Self;
    #[inline(always)]
    fn sub(self, o: Self) -> Self {
        Self::new(self.x - o.x, self.y - o.y, self.z - o.z)
    }
}
impl Mul<f32> for Vec3 {
    type Output = Self;
    #[inline(always)]
    fn mul(self, s: f32) -> Self {
        Self::new(self.x * s, self.y * s, self.z * s)
    }
}
impl Neg for Vec3 {
    type Output = Self;
    fn neg(self) -> Self {
        self * -1.0
    }
}

/// Baby space, cm: x = its left, y = towards its head, z = towards its front.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct BabyPoint(pub Vec3);

/// Mother space, cm: origin at the upper border of the symphysis in the midline,
/// x = the mother's left, y = up, z = towards someone in front of her.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct MotherPoint(pub Vec3);

/// Figure space, cm: mother space seen from the front; x = her left, y = up.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct FigurePoint {
    /// Towards the mother's left (the viewer's right in the facing view).
    pub x: f32,
    /// Up.
    pub y: f32,
}

impl FigurePoint {
    /// The point with these coordinates.
    pub const fn new(x: f32, y: f32) -> Self {
        Self { x, y }
    }

    /// How far along the line from `a` to `b` its place lies that is nearest to this point, a share from 0 to 1.
    #[inline]
    pub fn along(self, a: Self, b: Self) -> f32 {
        let (ex, ey) = (b.x - a.x, b.y - a.y);
        (((self.x - a.x) * ex + (self.y - a.y) * ey) / (ex * ex + ey * ey).max(1e-9)).clamp(0.0, 1.0)
    }
}

/// Page space, mm: origin top left, x to the right, y down.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PagePoint {
    /// To the right.
    pub x: f32,
    /// Down.
    pub y: f32,
}

impl PagePoint {
    /// The point with these coordinates.
    pub const fn new(x: f32, y: f32) -> Self {
        Self { x, y }
    }
}
