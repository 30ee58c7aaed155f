//! Words for signs of the mother. In: nothing. Out: rows of the word table.

use super::{Vocabulary, Word};
use crate::exam::model::*;

impl Vocabulary for UrineProtein {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: UrineProtein::Trace, word: "trace", also: &["tr", "a trace"] },
        Word { value: UrineProtein::One, word: "1+", also: &["one plus", "1 plus"] },
        Word { value: UrineProtein::Two, word: "2+", also: &["two plus", "2 plus"] },
        Word { value: UrineProtein::Three, word: "3+", also: &["three plus", "3 plus"] },
        Word { value: UrineProtein::Four, word: "4+", also: &["four plus", "4 plus"] },
    ];
}

impl Vocabulary for RhesusD {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: RhesusD::Negative,
            word: "negative",
            also: &["neg", "D negative", "Rh negative", "Rh neg"],
        },
        Word {
            value: RhesusD::Positive,
            word: "positive",
            also: &["pos", "D positive", "Rh positive", "Rh pos"],
        },
    ];
}

impl Vocabulary for GroupBStrep {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: GroupBStrep::Found, word: "found", also: &["positive", "pos", "yes"] },
        Word { value: GroupBStrep::NotFound, word: "not found", also: &["negative", "neg", "no"] },
    ];
}

impl Vocabulary for Build {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Build::Slight, word: "slight", also: &["thin", "slim"] },
        Word { value: Build::Average, word: "average", also: &["medium"] },
        Word { value: Build::Large, word: "large", also: &["obese", "heavy", "raised BMI", "high BMI"] },
    ];
}

impl Vocabulary for Comfort {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Comfort::Comfortable, word: "comfortable", also: &["comfy", "at ease"] },
        Word { value: Comfort::Uncomfortable, word: "uncomfortable", also: &["in discomfort", "discomfort"] },
        Word { value: Comfort::InPain, word: "in pain", also: &["distressed by it"] },
    ];
}

impl Vocabulary for Consent {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Consent::Given,
            word: "given",
            also: &["yes", "obtained", "gained", "verbal", "verbal consent"],
        },
        Word { value: Consent::Declined, word: "declined", also: &["refused", "not given", "withdrawn"] },
    ];
}

impl Vocabulary for Bladder {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Bladder::Empty, word: "empty", also: &["emptied", "voided"] },
        Word { value: Bladder::Full, word: "full", also: &["palpable", "distended"] },
    ];
}

impl Vocabulary for ScarFeel {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: ScarFeel::Tender, word: "tender", also: &["painful", "painful to touch"] },
        Word { value: ScarFeel::Keloid, word: "keloid", also: &["raised scar"] },
        Word { value: ScarFeel::Healed, word: "healed", also: &["well healed", "non-tender", "not tender"] },
    ];
}

/// A gap whose width was not noted; finger-breadths are counted beside it.
impl Vocabulary for MuscleGap {
    const WORDS: &'static [Word<Self>] =
        &[Word { value: MuscleGap::Felt, word: "felt", also: &["yes", "present", "gap felt"] }];
}

impl Vocabulary for Hernia {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Hernia::Navel, word: "navel", also: &["umbilical", "at navel", "paraumbilical"] },
        Word { value: Hernia::Groin, word: "groin", also: &["inguinal", "femoral"] },
        Word { value: Hernia::Scar, word: "scar", also: &["incisional", "in scar"] },
        Word { value: Hernia::Midline, word: "midline", also: &["epigastric", "in midline"] },
    ];
}
