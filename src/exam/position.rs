//! Named positions. In: a code or words. Out: the position; and back to its code and its words.
//!
//! Angles run from her front towards her left. In face and brow the chin or brow is opposite the back.

use super::model::*;
use super::words::{Row, Vocabulary, Word};
use crate::units::MotherSide;

const fn at(denominator: Denominator, octant: u8) -> Position {
    Position::Lengthwise { denominator, octant: Octant::new(octant) }
}

const fn across(head: MotherSide, back_in_front: bool) -> Position {
    Position::Crosswise { head, back_in_front }
}

/// Codes as charts write them; left mento-posterior is spelled out, because LMP also means last period.
impl Vocabulary for Position {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: at(Denominator::Occiput, 0),
            word: "OA",
            also: &["direct occipito-anterior", "DOA", "occipito-anterior"],
        },
        Word {
            value: at(Denominator::Occiput, 1),
            word: "LOA",
            also: &["left occipito-anterior", "left occiput anterior"],
        },
        Word {
            value: at(Denominator::Occiput, 2),
            word: "LOT",
            also: &["left occipito-transverse", "left occiput transverse", "LOL", "left occipito-lateral"],
        },
        Word {
            value: at(Denominator::Occiput, 3),
            word: "LOP",
            also: &["left occipito-posterior", "left occiput posterior"],
        },
        Word {
            value: at(Denominator::Occiput, 4),
            word: "OP",
            also: &["direct occipito-posterior", "DOP", "occipito-posterior"],
        },
        Word {
            value: at(Denominator::Occiput, 5),
            word: "ROP",
            also: &["right occipito-posterior", "right occiput posterior"],
        },
        Word {
            value: at(Denominator::Occiput, 6),
            word: "ROT",
            also: &["right occipito-transverse", "right occiput transverse", "ROL", "right occipito-lateral"],
        },
        Word {
            value: at(Denominator::Occiput, 7),
            word: "ROA",
            also: &["right occipito-anterior", "right occiput anterior"],
        },
        Word {
            value: at(Denominator::Sacrum, 0),
            word: "SA",
            also: &["direct sacro-anterior", "DSA", "sacro-anterior"],
        },
        Word {
            value: at(Denominator::Sacrum, 1),
            word: "LSA",
            also: &["left sacro-anterior", "left sacrum anterior"],
        },
        Word {
            value: at(Denominator::Sacrum, 2),
            word: "LST",
            also: &["left sacro-transverse", "left sacrum transverse", "LSL", "left sacro-lateral"],
        },
        Word {
            value: at(Denominator::Sacrum, 3),
            word: "LSP",
            also: &["left sacro-posterior", "left sacrum posterior"],
        },
        Word {
            value: at(Denominator::Sacrum, 4),
            word: "SP",
            also: &["direct sacro-posterior", "DSP", "sacro-posterior"],
        },
        Word {
            value: at(Denominator::Sacrum, 5),
            word: "RSP",
            also: &["right sacro-posterior", "right sacrum posterior"],
        },
        Word {
            value: at(Denominator::Sacrum, 6),
            word: "RST",
            also: &["right sacro-transverse", "right sacrum transverse", "RSL", "right sacro-lateral"],
        },
        Word {
            value: at(Denominator::Sacrum, 7),
            word: "RSA",
            also: &["right sacro-anterior", "right sacrum anterior"],
        },
        Word {
            value: at(Denominator::Mentum, 0),
            word: "MA",
            also: &["direct mento-anterior", "DMA", "mento-anterior"],
        },
        Word { value: at(Denominator::Mentum, 1), word: "LMA", also: &["left mento-anterior"] },
        Word {
            value: at(Denominator::Mentum, 2),
            word: "LMT",
            also: &["left mento-transverse", "LML", "left mento-lateral"],
        },
        Word { value: at(Denominator::Mentum, 3), word: "left mento-posterior", also: &["LMP"] },
        Word {
            value: at(Denominator::Mentum, 4),
            word: "MP",
            also: &["direct mento-posterior", "DMP", "mento-posterior"],
        },
        Word { value: at(Denominator::Mentum, 5), word: "RMP", also: &["right mento-posterior"] },
        Word {
            value: at(Denominator::Mentum, 6),
            word: "RMT",
            also: &["right mento-transverse", "RML", "right mento-lateral"],
        },
        Word { value: at(Denominator::Mentum, 7), word: "RMA", also: &["right mento-anterior"] },
        Word {
            value: at(Denominator::Frontum, 0),
            word: "FA",
            also: &["direct fronto-anterior", "DFA", "fronto-anterior"],
        },
        Word { value: at(Denominator::Frontum, 1), word: "LFA", also: &["left fronto-anterior"] },
        Word {
            value: at(Denominator::Frontum, 2),
            word: "LFT",
            also: &["left fronto-transverse", "LFL", "left fronto-lateral"],
        },
        Word { value: at(Denominator::Frontum, 3), word: "LFP", also: &["left fronto-posterior"] },
        Word {
            value: at(Denominator::Frontum, 4),
            word: "FP",
            also: &["direct fronto-posterior", "DFP", "fronto-posterior"],
        },
        Word { value: at(Denominator::Frontum, 5), word: "RFP", also: &["right fronto-posterior"] },
        Word {
            value: at(Denominator::Frontum, 6),
            word: "RFT",
            also: &["right fronto-transverse", "RFL", "right fronto-lateral"],
        },
        Word { value: at(Denominator::Frontum, 7), word: "RFA", also: &["right fronto-anterior"] },
        Word {
            value: across(MotherSide::Right, true),
            word: "RADA",
            also: &["right acromion dorso-anterior", "right acromio-dorso-anterior"],
        },
        Word {
            value: across(MotherSide::Right, false),
            word: "RADP",
            also: &["right acromion dorso-posterior", "right acromio-dorso-posterior"],
        },
        Word {
            value: across(MotherSide::Left, true),
            word: "LADA",
            also: &["left acromion dorso-anterior", "left acromio-dorso-anterior"],
        },
        Word {
            value: across(MotherSide::Left, false),
            word: "LADP",
            also: &["left acromion dorso-posterior", "left acromio-dorso-posterior"],
        },
    ];
}

/// The list of positions without values.
pub fn rows() -> Vec<Row> {
    Position::rows()
}

impl Octant {
    /// Her side at this octant; `None` in front and behind.
    pub fn side(self) -> Option<MotherSide> {
        match self.get() {
            1..=3 => Some(MotherSide::Left),
            5..=7 => Some(MotherSide::Right),
            _ => None,
        }
    }
    /// The octant across.
    pub fn opposite(self) -> Self {
        Self::new(self.get() + 4)
    }
    /// The octant of a back that is turned this way; `None` when only the side is known, and for a crosswise back.
    pub fn of_back(back: Back) -> Option<Self> {
        use BackTurn::{Feet, Front, Lateral, Ribs, Spine};
        let eighths = match (back.side, back.turn?) {
            (None, Front) => 0,
            (Some(MotherSide::Left), Front) => 1,
            (Some(MotherSide::Left), Lateral) => 2,
            (Some(MotherSide::Left), Spine) => 3,
            (None, Spine) => 4,
            (Some(MotherSide::Right), Spine) => 5,
            (Some(MotherSide::Right), Lateral) => 6,
            (Some(MotherSide::Right), Front) => 7,
            (None, Lateral) | (_, Ribs | Feet) => return None,
        };
        Some(Self::new(eighths))
    }
    /// The back that points to this octant.
    pub fn back(self) -> Back {
        let turn = match self.get() {
            0 | 1 | 7 => BackTurn::Front,
            2 | 6 => BackTurn::Lateral,
            _ => BackTurn::Spine,
        };
        Back { side: self.side(), turn: Some(turn) }
    }
}

impl Denominator {
    /// The letter in a code.
    pub fn letter(self) -> char {
        match self {
            Denominator::Occiput => 'O',
            Denominator::Sacrum => 'S',
            Denominator::Mentum => 'M',
            Denominator::Frontum => 'F',
        }
    }
    /// The stem in words.
    pub fn stem(self) -> &'static str {
        match self {
            Denominator::Occiput => "occipito",
            Denominator::Sacrum => "sacro",
            Denominator::Mentum => "mento",
            Denominator::Frontum => "fronto",
        }
    }
    /// The presentation that is named by it.
    pub fn presentation(self) -> Presentation {
        match self {
            Denominator::Occiput => Presentation::Cephalic,
            Denominator::Sacrum => Presentation::Breech,
            Denominator::Mentum => Presentation::Face,
            Denominator::Frontum => Presentation::Brow,
        }
    }
    /// True when it lies opposite the back: chin and brow.
    pub fn opposite_back(self) -> bool {
        matches!(self, Denominator::Mentum | Denominator::Frontum)
    }
}

impl Position {
    /// All 36, by denominator and then from her front towards her left; crosswise last.
    pub fn all() -> impl Iterator<Item = Position> {
        Self::WORDS.iter().map(|entry| entry.value)
    }
    /// The code charts write, such as `LOA`. `LMP` here is left mento-posterior: print its words instead.
    pub fn code(self) -> String {
        match self {
            Position::Lengthwise { denominator, octant } => {
                let side = match octant.side() {
                    Some(MotherSide::Left) => "L",
                    Some(MotherSide::Right) => "R",
                    None => "",
                };
                let turn = match octant.get() {
                    0 | 1 | 7 => 'A',
                    2 | 6 => 'T',
                    _ => 'P',
                };
                format!("{side}{}{turn}", denominator.letter())
            }
            Position::Crosswise { head, back_in_front } => {
                let side = if head == MotherSide::Left { 'L' } else { 'R' };
                format!("{side}AD{}", if back_in_front { 'A' } else { 'P' })
            }
        }
    }
    /// The position with this code.
    pub fn from_code(code: &str) -> Option<Self> {
        Self::all().find(|position| position.code() == code)
    }
    /// The position spelled out: `left occipito-anterior`.
    pub fn words(self) -> String {
        match self {
            Position::Lengthwise { denominator, octant } => {
                let side = match octant.side() {
                    Some(MotherSide::Left) => "left",
                    Some(MotherSide::Right) => "right",
                    None => "direct",
                };
                let turn = match octant.get() {
                    0 | 1 | 7 => "anterior",
                    2 | 6 => "transverse",
                    _ => "posterior",
                };
                format!("{side} {}-{turn}", denominator.stem())
            }
            Position::Crosswise { head, back_in_front } => format!(
                "{} acromion dorso-{}",
                if head == MotherSide::Left { "left" } else { "right" },
                if back_in_front { "anterior" } else { "posterior" }
            ),
        }
    }
    /// Where the back points, for a baby that lies lengthwise.
    pub fn back_octant(self) -> Option<Octant> {
        match self {
            Position::Lengthwise { denominator, octant } => {
                Some(if denominator.opposite_back() { octant.opposite() } else { octant })
            }
            Position::Crosswise { .. } => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_and_words_lead_back() {
        assert_eq!(Position::all().count(), 36);
        for position in Position::all() {
            assert_eq!(Position::from_code(&position.code()), Some(position));
            assert_eq!(Position::find(&position.words()), Some(position));
            assert_eq!(Position::find(&position.code()), Some(position));
        }
        assert_eq!(Position::from_code("XYZ"), None);
    }

    #[test]
    fn left_mento_posterior_is_spelled_out() {
        let position = Position::from_code("LMP").unwrap();
        assert_eq!(position.word(), Some("left mento-posterior"));
    }

    #[test]
    fn backs_and_octants_lead_back() {
        for eighths in 0..8 {
            let octant = Octant::new(eighths);
            assert_eq!(Octant::of_back(octant.back()), Some(octant));
        }
    }
}
