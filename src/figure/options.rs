//! How a figure is wanted. In: choices. Out: the same, as types.

use crate::body::hands::Palpation;

/// How it is painted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Style {
    /// Tones under fine lines.
    Soft,
    /// Ink on white.
    Line,
    /// The baby as a pen draws it, on her in ink on white: to colour in.
    Pen,
    /// A stamp for the chart: few firm lines, black on white, 4 cm wide.
    Sketch,
}

/// From where it is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum View {
    /// By someone in front of her: her left is at the viewer's right.
    Facing,
    /// By herself, looking down: the same picture turned by half a turn, never mirrored.
    Hers,
}

/// What is named in words on the picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Labels {
    /// Nothing but the sides.
    None,
    /// Sides, top of the womb, heart, fifths.
    Few,
    /// Also head, back, bottom, limbs, navel, pubic bone, brim, scars, lumps.
    All,
    /// The same as all, as small numbers at the places, with a key beside the body.
    Numbered,
    /// For the family: sides, head, back, bottom and heart, in plain words, without numbers.
    Family,
}

/// How much of the mother is drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum MotherAs {
    /// Her torso as an outline, with her bones: for those who examine and teach.
    #[default]
    Outline,
    /// With arms and clothes, both hands under her belly, and no bone: for those who take the picture home.
    Body,
    /// The same, up to her lips.
    Lips(Hair),
    /// The same with her head, bent to her belly.
    Whole(Hair),
}

impl MotherAs {
    /// Whether she has arms and clothes.
    pub const fn is_dressed(self) -> bool {
        !matches!(self, MotherAs::Outline)
    }

    /// What is seen of her hair, if her head is in the picture.
    pub const fn hair(self) -> Option<Hair> {
        match self {
            MotherAs::Lips(hair) | MotherAs::Whole(hair) => Some(hair),
            MotherAs::Outline | MotherAs::Body => None,
        }
    }
}

/// What is seen of her hair.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Hair {
    /// All of it, parted.
    #[default]
    Loose,
    /// Nothing: she wears a scarf.
    Scarf,
}

/// The colours of skin, of mother and baby alike.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Palette {
    /// A wash of brown ink: nobody's skin and everybody's.
    #[default]
    Neutral,
    /// From 1, the lightest, to [`Palette::DEEPEST`]; see [`Palette::skin`].
    Skin(u8),
}

impl Palette {
    /// The number of the deepest skin.
    pub const DEEPEST: u8 = 6;

    /// Every palette, the neutral one first.
    pub fn all() -> impl Iterator<Item = Palette> {
        std::iter::once(Palette::Neutral).chain((1..=Palette::DEEPEST).map(Palette::Skin))
    }

    /// By the number of a skin.
    pub fn skin(number: u8) -> Option<Palette> {
        (1..=Palette::DEEPEST).contains(&number).then_some(Palette::Skin(number))
    }
}

/// Everything that decides how a pose is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct FigureOptions {
    /// How it is painted.
    pub style: Style,
    /// The colours of skin in the style `soft`; the others are black on white.
    pub palette: Palette,
    /// How much of the mother is drawn in the styles `soft` and `line`.
    pub mother: MotherAs,
    /// The hands of whoever palpates, in the styles `soft` and `line`.
    pub hands: Option<Palpation>,
    /// From where it is seen.
    pub view: View,
    /// What is named.
    pub labels: Labels,
    /// Size on paper of a cm of the body, mm.
    pub mm_per_cm: f32,
    /// Type size on paper, points.
    pub type_pt: f32,
    /// Title of the picture.
    pub title: String,
    /// The picture in words.
    pub description: String,
    /// What is to be said of the drawing itself, at its foot; a sentence each.
    pub captions: Vec<String>,
}
