//! The colours of the mother's drawing. In: a choice. Out: opaque colours, each with its use.

use crate::figure::options::Palette;
use crate::figure::palette::Skin;
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
            womb: Colour::hex(0xEBD9CD),
            womb_shade: [Colour::hex(0xE2CBBD), Colour::hex(0xD8BAAA), Colour::hex(0xCAA796)],
            womb_line: Colour::hex(0x846553),
            bone: Colour::hex(0xFBF7EE),
            bone_shade: Colour::hex(0xEFE8DB),
            bone_line: Colour::hex(0x8F7960),
            ink: Colour::hex(0x5B4838),
            soft_ink: Colour::hex(0x8E7966),
            faint: Colour::hex(0xC3B39F),
            mark: Colour::hex(0x5A3F31),
        }
    }

    /// The colours of a palette: her skin is the baby's, a little nearer to the paper, so that it stays behind.
    pub fn of(palette: Palette) -> Self {
        let wash = Self::ink_wash();
        let Some(s) = Skin::of(palette) else { return wash };
        let skin = s.skin.mix(wash.paper, 0.24);
        // A pale room, a little of her skin in it: the baby stands out from it in every palette.
        let womb = Colour::hex(0xF3E3D9).mix(s.skin, 0.13);
        let deep = Colour::hex(0x9A5F50).mix(s.shadow, 0.5);
        Self {
            skin,
            light: skin.mix(s.light.mix(wash.paper, 0.4), 0.6),
            shade: [0.09, 0.18, 0.30].map(|share| skin.mix(s.shadow, share)),
            womb,
            womb_shade: [0.08, 0.18, 0.30].map(|share| womb.mix(deep, share)),
            womb_line: s.ink.mix(Colour::hex(0x846553), 0.45),
            bone_shade: wash.bone_shade,
            bone_line: wash.bone.mix(s.ink, 0.55),
            ink: s.ink,
            soft_ink: skin.mix(s.ink, 0.62),
            faint: skin.mix(s.ink, 0.3),
            mark: s.ink,
            ..wash
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
