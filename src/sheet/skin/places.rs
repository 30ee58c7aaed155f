//! Where a point of the drawing lies on her skin, in words. In: a point of the figure, her shape. Out: cm and
//! finger-breadths along the skin from the navel or the pubic bone, and from the midline.

use crate::body::mother::MotherShape;
use crate::units::FigurePoint;
use crate::words::{Words, WordsError};

/// A finger's breadth, cm ("two finger-widths, about 4 cm": HESP-MID, HEAT).
const FINGER: f64 = 2.0;

/// What is measured from.
#[derive(Clone, Copy, Debug)]
pub struct Landmarks<'a> {
    /// Her shape.
    pub mother: &'a MotherShape,
    /// Whether the height of her navel was measured; else only the pubic bone serves.
    pub navel_measured: bool,
}

impl Landmarks<'_> {
    /// Lengths on the skin to a point that is seen at `p`: across from the midline (negative: her right) and along from
    /// the pubic bone, cm.
    pub fn lengths(&self, p: FigurePoint) -> (f64, f64) {
        let skin = self.mother.skin(f64::from(p.x), f64::from(p.y));
        self.mother.skin_lengths(skin)
    }

    /// The point in words: how high, and how far to which side, hers and that of someone who faces her.
    pub fn say(&self, p: FigurePoint, words: &Words) -> Result<String, WordsError> {
        let (across, along) = self.lengths(p);
        let measure = |cm: f64| {
            let whole = libm::round(cm.abs());
            (format!("{whole:.0}"), fingers(whole))
        };
        let from_navel = along - self.mother.navel_along;
        // From the nearer landmark.
        let level = if self.navel_measured && from_navel.abs() < along {
            let (cm, fingers) = measure(from_navel);
            match from_navel {
                d if d.abs() < 0.5 => words.say("skin-at-navel", &[])?,
                d if d > 0.0 => words.say("skin-above-navel", &[("cm", &cm), ("fingers", &fingers)])?,
                _ => words.say("skin-below-navel", &[("cm", &cm), ("fingers", &fingers)])?,
            }
        } else if along < 0.5 {
            words.say("skin-at-pubic-bone", &[])?
        } else {
            let (cm, fingers) = measure(along);
            words.say("skin-up", &[("cm", &cm), ("fingers", &fingers)])?
        };
        let (cm, fingers) = measure(across);
        let side = match across {
            a if a.abs() < 0.5 => words.say("skin-midline", &[])?,
            a if a > 0.0 => words.say("skin-her-left", &[("cm", &cm), ("fingers", &fingers)])?,
            _ => words.say("skin-her-right", &[("cm", &cm), ("fingers", &fingers)])?,
        };
        words.say("skin-place", &[("level", &level), ("side", &side)])
    }
}

/// Whole and half finger-breadths.
fn fingers(cm: f64) -> String {
    let halves = libm::round(cm / FINGER * 2.0) as u32;
    match (halves / 2, halves % 2) {
        (0, 1) => "½".to_owned(),
        (whole, 0) => whole.to_string(),
        (whole, _) => format!("{whole}½"),
    }
}
