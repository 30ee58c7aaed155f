//! Where a point of the drawing lies on her skin, in words. In: a point of the figure, her shape. Out: cm and
//! finger-breadths along the skin from the navel or the pubic bone, and from the midline.

use crate::body::mother::MotherShape;
use crate::units::{FigurePoint, MotherSide};
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
        let (cm, fingers) = measured(self.lengths(p).0);
        let side = match self.side(p) {
            None => words.say("skin-midline", &[])?,
            Some(MotherSide::Left) => words.say("skin-her-left", &[("cm", &cm), ("fingers", &fingers)])?,
            Some(MotherSide::Right) => words.say("skin-her-right", &[("cm", &cm), ("fingers", &fingers)])?,
        };
        words.say("skin-place", &[("level", &self.level(p, words)?), ("side", &side)])
    }

    /// Two points in words, from one to the other: where both lie on one side of her, that side once.
    pub fn say_both(&self, from: FigurePoint, to: FigurePoint, words: &Words) -> Result<String, WordsError> {
        let id = match (self.side(from), self.side(to)) {
            (Some(MotherSide::Left), Some(MotherSide::Left) | None) | (None, Some(MotherSide::Left)) => {
                "skin-on-her-left"
            }
            (Some(MotherSide::Right), Some(MotherSide::Right) | None) | (None, Some(MotherSide::Right)) => {
                "skin-on-her-right"
            }
            _ => {
                let (from, to) = (self.say(from, words)?, self.say(to, words)?);
                return words.say("skin-from-to", &[("from", &from), ("to", &to)]);
            }
        };
        let (from, to) = (self.outwards(from, words)?, self.outwards(to, words)?);
        words.say(id, &[("from", &from), ("to", &to)])
    }

    /// The side of her on which a point lies; none in the midline.
    fn side(&self, p: FigurePoint) -> Option<MotherSide> {
        match self.lengths(p).0 {
            across if across.abs() < 0.5 => None,
            across if across > 0.0 => Some(MotherSide::Left),
            _ => Some(MotherSide::Right),
        }
    }

    /// How high, and how far out to a side that was said.
    fn outwards(&self, p: FigurePoint, words: &Words) -> Result<String, WordsError> {
        let (cm, fingers) = measured(self.lengths(p).0);
        let out = match self.side(p) {
            None => words.say("skin-midline", &[])?,
            Some(_) => words.say("skin-out", &[("cm", &cm), ("fingers", &fingers)])?,
        };
        words.say("skin-place", &[("level", &self.level(p, words)?), ("side", &out)])
    }

    /// How high, from the nearer landmark.
    fn level(&self, p: FigurePoint, words: &Words) -> Result<String, WordsError> {
        let (_, along) = self.lengths(p);
        let from_navel = along - self.mother.navel_along;
        if self.navel_measured && from_navel.abs() < along {
            let (cm, fingers) = measured(from_navel);
            match from_navel {
                d if d.abs() < 0.5 => words.say("skin-at-navel", &[]),
                d if d > 0.0 => words.say("skin-above-navel", &[("cm", &cm), ("fingers", &fingers)]),
                _ => words.say("skin-below-navel", &[("cm", &cm), ("fingers", &fingers)]),
            }
        } else if along < 0.5 {
            words.say("skin-at-pubic-bone", &[])
        } else {
            let (cm, fingers) = measured(along);
            words.say("skin-up", &[("cm", &cm), ("fingers", &fingers)])
        }
    }
}

/// A length in whole cm, and in finger-breadths.
fn measured(cm: f64) -> (String, String) {
    let whole = libm::round(cm.abs());
    (format!("{whole:.0}"), fingers(whole))
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
