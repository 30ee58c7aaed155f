//! The parts of the body that a surface point can belong to. In: a code. Out: what it names.

use crate::units::BabySide;

/// A part of the baby, as a small code so that a picture of parts stays compact.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Default)]
pub struct Part(u8);

const SIDED: u8 = 8;
const DIGITS: u8 = 20;

impl Part {
    /// Skull, without face and ears.
    pub const HEAD: Part = Part(1);
    /// Chest, belly, shoulders, neck.
    pub const TRUNK: Part = Part(2);
    /// Lips, nose, lids: small forms of the face.
    pub const FACE: Part = Part(3);

    const fn sided(first: u8, side: BabySide) -> Part {
        Part(
            first
                + match side {
                    BabySide::Left => 0,
                    BabySide::Right => 1,
                },
        )
    }
    /// An ear.
    pub const fn ear(side: BabySide) -> Part {
        Part::sided(4, side)
    }
    /// A buttock.
    pub const fn buttock(side: BabySide) -> Part {
        Part::sided(6, side)
    }
    /// An upper arm.
    pub const fn upper_arm(side: BabySide) -> Part {
        Part::sided(SIDED, side)
    }
    /// A forearm.
    pub const fn forearm(side: BabySide) -> Part {
        Part::sided(SIDED + 2, side)
    }
    /// A palm.
    pub const fn palm(side: BabySide) -> Part {
        Part::sided(SIDED + 4, side)
    }
    /// A thigh.
    pub const fn thigh(side: BabySide) -> Part {
        Part::sided(SIDED + 6, side)
    }
    /// A lower leg.
    pub const fn shin(side: BabySide) -> Part {
        Part::sided(SIDED + 8, side)
    }
    /// A foot without its toes.
    pub const fn foot(side: BabySide) -> Part {
        Part::sided(SIDED + 10, side)
    }
    /// A finger: 0 = little finger's neighbourless end ... see `hand`; 4 = thumb.
    pub const fn finger(side: BabySide, index: u8) -> Part {
        Part(
            DIGITS
                + index
                + 5 * match side {
                    BabySide::Left => 0,
                    BabySide::Right => 1,
                },
        )
    }
    /// A toe; 0 = great toe.
    pub const fn toe(side: BabySide, index: u8) -> Part {
        Part(
            DIGITS
                + 10
                + index
                + 5 * match side {
                    BabySide::Left => 0,
                    BabySide::Right => 1,
                },
        )
    }

    /// The same part on the other side.
    pub const fn mirrored(self) -> Part {
        Part(match self.0 {
            4..DIGITS => self.0 ^ 1,
            20..25 | 30..35 => self.0 + 5,
            25..30 | 35..40 => self.0 - 5,
            middle => middle,
        })
    }

    /// All codes are below this.
    pub const CODES: usize = 40;
    /// The code.
    pub const fn code(self) -> u8 {
        self.0
    }
    /// From a code.
    pub const fn from_code(code: u8) -> Part {
        Part(code)
    }

    /// A finger or a toe.
    pub const fn is_digit(self) -> bool {
        self.0 >= DIGITS
    }
    /// A toe.
    pub const fn is_toe(self) -> bool {
        self.0 >= DIGITS + 10
    }
    /// Head, face or ear.
    pub const fn is_head(self) -> bool {
        matches!(self.0, 1 | 3 | 4 | 5)
    }
    /// A buttock.
    pub const fn is_buttock(self) -> bool {
        matches!(self.0, 6 | 7)
    }
    /// A thigh.
    pub const fn is_thigh(self) -> bool {
        matches!(self.0, 14 | 15)
    }
    /// A foot or a toe.
    pub const fn is_foot(self) -> bool {
        matches!(self.0, 18 | 19) || self.is_toe()
    }

    /// The region a drawing groups this part under.
    pub const fn region(self) -> Region {
        match self.0 {
            1 | 3 | 4 | 5 => Region::Head,
            2 | 6 | 7 => Region::Trunk,
            8 | 10 | 12 | 20..=24 => Region::Arm(BabySide::Left),
            9 | 11 | 13 | 25..=29 => Region::Arm(BabySide::Right),
            14 | 16 | 18 | 30..=34 => Region::Leg(BabySide::Left),
            _ => Region::Leg(BabySide::Right),
        }
    }
}

/// A large part of the baby.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Region {
    /// Head, face, ears.
    Head,
    /// Trunk and bottom.
    Trunk,
    /// An arm with its hand.
    Arm(BabySide),
    /// A leg with its foot.
    Leg(BabySide),
}

impl Region {
    /// All regions, in drawing order.
    pub const ALL: [Region; 6] = [
        Region::Head,
        Region::Trunk,
        Region::Arm(BabySide::Left),
        Region::Arm(BabySide::Right),
        Region::Leg(BabySide::Left),
        Region::Leg(BabySide::Right),
    ];
    /// A short name for groups; sides are the baby's.
    pub const fn name(self) -> &'static str {
        match self {
            Region::Head => "head",
            Region::Trunk => "trunk",
            Region::Arm(BabySide::Left) => "left-arm",
            Region::Arm(BabySide::Right) => "right-arm",
            Region::Leg(BabySide::Left) => "left-leg",
            Region::Leg(BabySide::Right) => "right-leg",
        }
    }
}
