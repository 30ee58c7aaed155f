//! Colours of the baby, and the skins that mother and baby share. In: a palette. Out: opaque colours, each step of
//! shade already mixed.
//!
//! Skins go from 1, the lightest, to 6, the deepest, by number alone. They were chosen by eye, side by side, so that on
//! each the ink keeps a contrast of 3 to 1 against lit skin: the test `palettes` holds that.

use super::difference::difference;
use super::options::Palette;
use super::scene::Colour;

/// How far apart neighbouring tones look at most where bands are broad, and where they are narrow.
const FINE_STEP: f64 = 1.4;
const COARSE_STEP: f64 = 3.8;
/// Tones of a baby at most.
pub const MOST_TONES: usize = 24;

/// In how many even steps one colour goes over into another, none longer than `longest` when it is rounded to 8 bits.
fn steps(from: Colour, to: Colour, longest: f64) -> usize {
    let mut steps = libm::ceil(difference(from, to) / longest).max(1.0) as usize;
    let at = |step: usize, steps: usize| from.mix(to, step as f32 / steps as f32);
    let is_long = |steps| (0..steps).any(|k| difference(at(k, steps), at(k + 1, steps)) > longest);
    while is_long(steps) && steps < MOST_TONES {
        steps += 1;
    }
    steps
}

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

/// What a skin is mixed from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Skin {
    /// Where the light falls straight on.
    pub light: Colour,
    /// Lit skin.
    pub skin: Colour,
    /// What the shade tends to.
    pub shadow: Colour,
    /// A newborn's hair.
    pub hair: Colour,
    /// The lines on it.
    pub ink: Colour,
}

const fn skin(light: u32, skin: u32, shadow: u32, hair: u32, ink: u32) -> Skin {
    let c = Colour::hex;
    Skin { light: c(light), skin: c(skin), shadow: c(shadow), hair: c(hair), ink: c(ink) }
}

/// The skins, the lightest first.
const SKINS: [Skin; Palette::DEEPEST as usize] = [
    skin(0xFCEFE6, 0xF6DFD1, 0x9C6250, 0x8C6B50, 0x573429),
    skin(0xF7E0CC, 0xEDCBB0, 0x8C5540, 0x6E5140, 0x4C2D22),
    skin(0xEBC7A6, 0xDBAE89, 0x7A4731, 0x4E392D, 0x3F251B),
    skin(0xD5A983, 0xBF8C66, 0x643A28, 0x3C2C24, 0x301B13),
    skin(0xBC8E6C, 0xA3724F, 0x50301F, 0x2E221D, 0x21110B),
    skin(0xA3765B, 0x875941, 0x3E2418, 0x261B17, 0x0E0604),
];

impl Skin {
    /// The skin of a palette; `None` for the neutral wash.
    pub fn of(palette: Palette) -> Option<Skin> {
        match palette {
            Palette::Neutral => None,
            Palette::Skin(number) => SKINS.get(usize::from(number).checked_sub(1)?).copied(),
        }
    }
}

impl BabyColours {
    /// A warm ink wash that is nobody's skin and everybody's.
    pub const NEUTRAL: BabyColours = BabyColours {
        skin: Colour::hex(0xEFDCCB),
        light: Colour::hex(0xF5E6D8),
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

    /// Its tones, the lightest first: each with the light below which it is laid; see `tone.rs`.
    ///
    /// Between the colours that are given they are mixed in even steps, so small that no step shows where skin turns
    /// slowly and a band is broad; in the deep folds, where bands are narrow, they are longer.
    pub fn tones(&self) -> Vec<(f32, Colour)> {
        let [a, b, c] = self.shade;
        // Light at each colour, and the longest step on the way to it.
        let stops = [
            (0.97, self.light, 0.0),
            (0.84, self.skin, FINE_STEP),
            (0.69, a, FINE_STEP),
            (0.53, b, FINE_STEP),
            (0.37, c, 0.5 * (FINE_STEP + COARSE_STEP)),
            (0.12, c.mix(self.ink, 0.5), COARSE_STEP),
        ];
        // A palette with more contrast has longer steps, never more tones.
        for slack in [1.0, 1.08, 1.16, 1.25, 1.4, 1.6, 2.0] {
            let mut out = vec![(f32::MAX, self.light)];
            for pair in stops.windows(2) {
                let ((from, lighter, _), (to, darker, longest)) = (pair[0], pair[1]);
                let steps = steps(lighter, darker, longest * slack);
                for step in 1..=steps {
                    let share = (step as f32 - 0.5) / steps as f32;
                    out.push((from + (to - from) * share, lighter.mix(darker, step as f32 / steps as f32)));
                }
            }
            if out.len() <= MOST_TONES || slack == 2.0 {
                return out;
            }
        }
        vec![]
    }

    /// Paler, on `paper`: of what is drawn more than was felt.
    pub fn paler(self, paper: Colour) -> Self {
        // Lines less than skin: they stay lines.
        const SHARES: (f32, f32) = (0.42, 0.25);
        let pale = |colour: Colour| colour.mix(paper, SHARES.0);
        Self {
            skin: pale(self.skin),
            light: pale(self.light),
            shade: self.shade.map(pale),
            hair: pale(self.hair),
            blush: pale(self.blush),
            ink: self.ink.mix(paper, SHARES.1),
        }
    }

    /// The colours of a palette.
    pub fn of(palette: Palette) -> Self {
        let Some(s) = Skin::of(palette) else { return Self::NEUTRAL };
        Self {
            skin: s.skin,
            light: s.light,
            shade: [0.17, 0.36, 0.58].map(|share| s.skin.mix(s.shadow, share)),
            hair: s.hair,
            blush: s.skin.mix(Colour::hex(0xC0483A), 0.42),
            ink: s.ink,
        }
    }
}
