//! How a figure is wanted. In: choices. Out: the same, as types.

/// How it is painted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Style {
    /// Tones under fine lines.
    Soft,
    /// Ink on white.
    Line,
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
    /// For the family: sides, head, back, bottom and heart, in plain words, without numbers.
    Family,
}

/// Everything that decides how a pose is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct FigureOptions {
    /// How it is painted.
    pub style: Style,
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
