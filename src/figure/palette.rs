//! Colours of the baby. In: a palette's name. Out: opaque colours, each step of shade already mixed.

use super::scene::Colour;

/// The colours a baby is painted with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BabyColours {
    /// Lit skin.
    pub skin: Colour,
    /// Where the light falls straight on.
    pub light: Colour,
    /// Three steps into the shade.
    pub shade: [Colour; 3],
    /// Hair.
    pub hair: Colour,
    /// Cheeks.
    pub blush: Colour,
    /// Outlines.
    pub ink: Colour,
}

impl BabyColours {
    /// A warm ink wash that is nobody's skin and everybody's.
    pub const NEUTRAL: BabyColours = BabyColours {
        skin: Colour::hex(0xEFDCCB),
        light: Colour::hex(0xF8ECDF),
        shade: [Colour::hex(0xE2C5B0), Colour::hex(0xCFA78F), Colour::hex(0xB08670)],
        hair: Colour::hex(0x7A5F50),
        blush: Colour::hex(0xE6A68F),
        ink: Colour::hex(0x54352B),
    };
    /// Black ink on white.
    pub const INK: BabyColours = BabyColours {
        skin: Colour::hex(0xFFFFFF),
        light: Colour::hex(0xFFFFFF),
        shade: [Colour::hex(0xFFFFFF); 3],
        hair: Colour::hex(0x4A4A4A),
        blush: Colour::hex(0xFFFFFF),
        ink: Colour::hex(0x1E1E1E),
    };
}
