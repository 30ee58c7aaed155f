//! Words for what is felt and heard of a baby beside where its parts lie. In: nothing. Out: rows of the word table.

use super::{Vocabulary, Word};
use crate::exam::model::*;

impl Vocabulary for PoleFeel {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: PoleFeel::Hard, word: "hard", also: &["firm"] },
        Word { value: PoleFeel::Round, word: "round", also: &["rounded", "smooth and round", "globular"] },
        Word {
            value: PoleFeel::Ballottable,
            word: "ballottable",
            also: &["ballotable", "ballots", "ballotting", "bounces"],
        },
        Word { value: PoleFeel::Soft, word: "soft", also: &[] },
        Word { value: PoleFeel::Broad, word: "broad", also: &["wide"] },
        Word { value: PoleFeel::Irregular, word: "irregular", also: &["uneven"] },
        Word { value: PoleFeel::Empty, word: "empty", also: &["nothing there"] },
    ];
}

impl Vocabulary for Quality {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Quality::Clear, word: "clear", also: &["loud", "distinct", "good"] },
        Word { value: Quality::Distant, word: "distant", also: &["faint", "far off"] },
        Word { value: Quality::Muffled, word: "muffled", also: &["dull", "indistinct"] },
    ];
}

impl Vocabulary for Slows {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Slows::AfterContractions,
            word: "after contractions",
            also: &["after a contraction", "after contraction", "after ctx", "late"],
        },
        Word {
            value: Slows::WithContractions,
            word: "with contractions",
            also: &["with a contraction", "during contractions", "with ctx", "early"],
        },
        Word {
            value: Slows::AtOtherTimes,
            word: "at other times",
            also: &["yes", "decelerations", "decels", "slows", "between contractions", "after movements"],
        },
    ];
}

impl Vocabulary for Listener {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Listener::Midwife, word: "midwife", also: &["MW", "RM", "nurse", "RN"] },
        Word { value: Listener::Doctor, word: "doctor", also: &["Dr", "obstetrician", "GP"] },
        Word { value: Listener::Student, word: "student", also: &["student midwife", "SM"] },
        Word {
            value: Listener::TwoPeople,
            word: "two people",
            also: &["two people at once", "two people together", "counted together", "2 people"],
        },
    ];
}

impl Vocabulary for BesidePulse {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: BesidePulse::Different, word: "different", also: &["differ", "not same", "two beats"] },
        Word { value: BesidePulse::Same, word: "same", also: &["together", "one beat", "run together"] },
    ];
}

impl Vocabulary for ByVagina {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: ByVagina::Cord,
            word: "cord",
            also: &[
                "umbilical cord",
                "loop of cord",
                "cord loop",
                "cord seen",
                "cord prolapse",
                "cord presentation",
            ],
        },
        Word { value: ByVagina::Brow, word: "brow", also: &["forehead"] },
        Word { value: ByVagina::Face, word: "face", also: &["chin", "mouth", "nose"] },
        Word { value: ByVagina::Shoulder, word: "shoulder", also: &["acromion"] },
        Word { value: ByVagina::Hand, word: "hand", also: &["arm", "elbow", "fingers"] },
        Word { value: ByVagina::Foot, word: "foot", also: &["feet", "leg", "knee", "heel", "toes"] },
        Word { value: ByVagina::Breech, word: "breech", also: &["bottom", "sacrum", "buttocks"] },
        Word { value: ByVagina::Vertex, word: "vertex", also: &["head", "vx", "cephalic"] },
    ];
}

impl Vocabulary for Size {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Size::Small, word: "small", also: &["small for dates", "SFD", "SGA", "small baby"] },
        Word {
            value: Size::Average,
            word: "average",
            also: &["average for dates", "average size", "medium"],
        },
        Word {
            value: Size::Large,
            word: "large",
            also: &["large for dates", "LFD", "LGA", "big", "big baby"],
        },
    ];
}

impl Vocabulary for Turning {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Turning::Turned, word: "turned", also: &["successful", "success"] },
        Word {
            value: Turning::DidNotTurn,
            word: "did not turn",
            also: &["not turned", "unsuccessful", "failed", "abandoned"],
        },
        Word {
            value: Turning::Declined,
            word: "she declined",
            also: &["declined", "offered and declined", "refused"],
        },
    ];
}
