//! Baked bodies, read from their bytes. In: bytes, which begin with four letters and a version. Out: numbers, places, faces and
//! their parts, one after the other.
//!
//! Numbers of two bytes have the lower first. Lengths are in 200 steps a centimetre.

use crate::body::part::Part;
use crate::units::Vec3;

const UNIT: f32 = 1.0 / 200.0;

/// Bytes, read from the front.
pub struct Reader(&'static [u8]);

impl Reader {
    /// What stands after name and version. Panics when they are others: the bytes are the program's own.
    pub fn of(bytes: &'static [u8], name: [u8; 4], version: u8) -> Self {
        let (head, rest) = bytes.split_at(5);
        assert_eq!((&head[..4], head[4]), (&name[..], version), "baked bytes are of this version");
        Reader(rest)
    }
    /// A number of one byte.
    pub fn u8(&mut self) -> u8 {
        let (first, rest) = self.0.split_at(1);
        self.0 = rest;
        first[0]
    }
    /// A number of two.
    pub fn u16(&mut self) -> u16 {
        u16::from_le_bytes([self.u8(), self.u8()])
    }
    /// A number of two that may be negative.
    pub fn i16(&mut self) -> i16 {
        self.u16() as i16
    }
    /// How many there are of two things.
    pub fn counts(&mut self) -> [usize; 2] {
        [0; 2].map(|_| usize::from(self.u16()))
    }
    /// A length, cm.
    fn length(&mut self) -> f32 {
        f32::from(self.i16()) * UNIT
    }
    /// A place, cm.
    pub fn place(&mut self) -> Vec3 {
        let (x, y, z) = (self.length(), self.length(), self.length());
        Vec3::new(x, y, z)
    }
    /// So many places, all x first, then y, then z.
    pub fn places(&mut self, n: usize) -> Vec<[f32; 3]> {
        let [x, y, z] = [0; 3].map(|_| (0..n).map(|_| self.length()).collect::<Vec<_>>());
        (0..n).map(|v| [x[v], y[v], z[v]]).collect()
    }
    /// The corners of so many faces.
    pub fn quads(&mut self, n: usize) -> Vec<[u16; 4]> {
        (0..n).map(|_| [0; 4].map(|_| self.u16())).collect()
    }
    /// The part of each of so many faces.
    pub fn parts(&mut self, n: usize) -> Vec<Part> {
        (0..n).map(|_| Part::from_code(self.u8())).collect()
    }
}
