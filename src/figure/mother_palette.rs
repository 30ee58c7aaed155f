//! The colours of the mother's drawing. In: a choice. Out: opaque colours, each with its use.

use crate::figure::scene::Colour;

/// How the mother is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MotherStyle {
    /// Tonal: bands of mixed colours under fine lines.
    Soft,
    /// Ink on white, nothing else.
    Line,
}

/// Colours of skin, womb, bones and lines.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MotherPalette {
    /// What the picture is printed on.
    pub paper: Colour,
    /// Skin in the light.
    pub skin: Colour,
    /// Skin where it is nearest to the viewer.
    pub light: Colour,
    /// Skin turning away, palest first.
    pub shade: [Colour; 3],
    /// The inside of the womb.
    pub womb: Colour,
    /// The inside of the womb towards its wall, palest first.
    pub womb_shade: [Colour; 3],
    /// The wall of the womb.
    pub womb_line: Colour,
    /// Bone.
    pub bone: Colour,
    /// Bone in shade.
    pub bone_shade: Colour,
    /// Outlines of the bones.
    pub bone_line: Colour,
    /// Outlines of the body.
    pub ink: Colour,
    /// Lines within the body.
    pub soft_ink: Colour,
    /// The faintest lines.
    pub faint: Colour,
    /// Marks: brim, fundus, navel, scars.
    pub mark: Colour,
}

impl MotherPalette {
    /// The default: a neutral wash of brown ink on warm paper, nobody's skin and everybody's.
    pub const fn ink_wash() -> Self {
        Self {
            paper: Colour::hex(0xFBF8F2),
            skin: Colour::hex(0xF4EDE3),
            light: Colour::hex(0xF9F4EC),
            shade: [Colour::hex(0xEFE6DA), Colour::hex(0xE8DCCD), Colour::hex(0xDED0BE)],
            womb: Colour::hex(0xEFE3D8),
            womb_shade: [Colour::hex(0xE8D9CC), Colour::hex(0xDFCCBD), Colour::hex(0xD3BCAB)],
            womb_line: Colour::hex(0x846553),
            bone: Colour::hex(0xFBF7EE),
            bone_shade: Colour::hex(0xEFE8DB),
            bone_line: Colour::hex(0xA59077),
            ink: Colour::hex(0x5B4838),
            soft_ink: Colour::hex(0x8E7966),
            faint: Colour::hex(0xC3B39F),
            mark: Colour::hex(0x5A3F31),
        }
    }

    /// Warm and light, as skin by daylight.
    pub const fn warm() -> Self {
        Self {
            paper: Colour::hex(0xFCF6EE),
            skin: Colour::hex(0xFBEBDD),
            light: Colour::hex(0xFEF4EA),
            shade: [Colour::hex(0xF7E3D3), Colour::hex(0xF2D7C4), Colour::hex(0xEAC8B1)],
            womb: Colour::hex(0xFAE0D7),
            womb_shade: [Colour::hex(0xF6D5CA), Colour::hex(0xF0C5B9), Colour::hex(0xE6B0A3)],
            womb_line: Colour::hex(0xA8604F),
            bone: Colour::hex(0xFFFBF2),
            bone_shade: Colour::hex(0xF5EBDA),
            bone_line: Colour::hex(0xB79A7C),
            ink: Colour::hex(0x8A5B46),
            soft_ink: Colour::hex(0xB5866C),
            faint: Colour::hex(0xDDB9A0),
            mark: Colour::hex(0x7C4F40),
        }
    }

    /// Black ink on white: for the style `line`.
    pub const fn line() -> Self {
        const WHITE: Colour = Colour::hex(0xFFFFFF);
        const INK: Colour = Colour::hex(0x231F1C);
        Self {
            paper: WHITE,
            skin: WHITE,
            light: WHITE,
            shade: [WHITE; 3],
            womb: WHITE,
            womb_shade: [WHITE; 3],
            womb_line: INK,
            bone: WHITE,
            bone_shade: WHITE,
            bone_line: INK,
            ink: INK,
            soft_ink: INK,
            faint: INK,
            mark: INK,
        }
    }
}
