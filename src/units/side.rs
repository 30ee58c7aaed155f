//! Left and right, of the mother and of the baby: two types, so that they cannot be mixed up. In: a side. Out: its opposite, its
//! sign.

/// A side of the mother. In a picture seen from the front her left is at the viewer's right.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum MotherSide {
    /// The mother's left: +x in mother space.
    Left,
    /// The mother's right: -x in mother space.
    Right,
}

impl MotherSide {
    /// The other side.
    pub fn opposite(self) -> Self {
        match self {
            MotherSide::Left => MotherSide::Right,
            MotherSide::Right => MotherSide::Left,
        }
    }
    /// +1 for her left, -1 for her right: the sign of x in mother space.
    pub fn sign(self) -> f32 {
        match self {
            MotherSide::Left => 1.0,
            MotherSide::Right => -1.0,
        }
    }
}

/// A side of the baby.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum BabySide {
    /// The baby's left: +x in baby space.
    Left,
    /// The baby's right: -x in baby space.
    Right,
}

impl BabySide {
    /// Both sides, left first.
    pub const BOTH: [BabySide; 2] = [BabySide::Left, BabySide::Right];
    /// This side, then the other.
    pub fn then_other(self) -> [BabySide; 2] {
        [self, self.opposite()]
    }
    /// The other side.
    pub fn opposite(self) -> Self {
        match self {
            BabySide::Left => BabySide::Right,
            BabySide::Right => BabySide::Left,
        }
    }
    /// +1 for the baby's left, -1 for its right: the sign of x in baby space.
    pub fn sign(self) -> f32 {
        match self {
            BabySide::Left => 1.0,
            BabySide::Right => -1.0,
        }
    }
    /// 0 for left, 1 for right.
    pub fn index(self) -> usize {
        match self {
            BabySide::Left => 0,
            BabySide::Right => 1,
        }
    }
}
