//! Words for the womb at work. In: nothing. Out: rows of the word table.

use super::{Vocabulary, Word};
use crate::exam::model::*;

impl Vocabulary for Strength {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Strength::Mild, word: "mild", also: &["weak"] },
        Word { value: Strength::Moderate, word: "moderate", also: &["mod"] },
        Word { value: Strength::Strong, word: "strong", also: &[] },
    ];
}

impl Vocabulary for Tone {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Tone::Soft,
            word: "soft",
            also: &[
                "softens",
                "relaxed",
                "relaxes",
                "soft between contractions",
                "relaxes between contractions",
            ],
        },
        Word {
            value: Tone::NotSoft,
            word: "does not soften",
            also: &[
                "not softening",
                "does not relax",
                "not relaxing",
                "no relaxation",
                "raised",
                "never soft",
            ],
        },
    ];
}

impl Vocabulary for WaterColour {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: WaterColour::Clear, word: "clear", also: &["straw-coloured", "straw"] },
        Word { value: WaterColour::Pink, word: "pink", also: &["pinkish"] },
        Word {
            value: WaterColour::Bloody,
            word: "bloody",
            also: &["blood-stained", "bloodstained", "red", "heavily blood-stained"],
        },
        Word {
            value: WaterColour::Green,
            word: "green",
            also: &["meconium", "mec", "meconium-stained", "MSL", "thick meconium", "thin meconium", "brown"],
        },
        Word {
            value: WaterColour::Foul,
            word: "foul",
            also: &["foul-smelling", "offensive", "smelly", "smells"],
        },
    ];
}

impl Vocabulary for Labour {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Labour::Not, word: "not in labour", also: &["not in labor", "no"] },
        Word {
            value: Labour::Early,
            word: "early labour",
            also: &["early labor", "latent phase", "latent", "latent labour"],
        },
        Word {
            value: Labour::In,
            word: "in labour",
            also: &[
                "in labor",
                "yes",
                "established",
                "established labour",
                "established labor",
                "active labour",
                "active labor",
                "active phase",
                "second stage",
            ],
        },
    ];
}

impl Vocabulary for Placentas {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Placentas::One,
            word: "one",
            also: &["1", "MCDA", "MCMA", "monochorionic", "MC", "shared"],
        },
        Word { value: Placentas::Two, word: "two", also: &["2", "DCDA", "dichorionic", "DC", "separate"] },
    ];
}

impl Vocabulary for HeightForDates {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: HeightForDates::Equal,
            word: "equal to dates",
            also: &["equals dates", "corresponds to dates", "agrees with dates", "as dates"],
        },
        Word {
            value: HeightForDates::Below,
            word: "below dates",
            also: &["small for dates", "less than dates"],
        },
        Word {
            value: HeightForDates::Above,
            word: "above dates",
            also: &["large for dates", "more than dates"],
        },
    ];
}
