//! The one word table. In: nothing. Out: every word an exam may use, its synonyms and its value.
//!
//! The reader, the suggestions, canonical printing and `handspan words` all use these lists and no other.
//! To add a synonym, add it to `also`; to add a word, add an entry (and its value to the model).

mod felt;
mod labour;
mod signs;

use super::model::*;
use crate::units::MotherSide;

/// One entry: the canonical word, other ways to say it, and what it means.
pub struct Word<T: 'static> {
    /// The value.
    pub value: T,
    /// The canonical word, as it is printed.
    pub word: &'static str,
    /// Other words people use.
    pub also: &'static [&'static str],
}

/// A closed list of words.
pub trait Vocabulary: Copy + PartialEq + 'static {
    /// Every word, in the order it is listed to people.
    const WORDS: &'static [Word<Self>];

    /// The canonical word, if this value has one of its own.
    fn word(self) -> Option<&'static str> {
        Self::WORDS.iter().find(|entry| entry.value == self).map(|entry| entry.word)
    }
    /// The value whose word or synonym is `text`, whatever its case, hyphens and small words.
    fn find(text: &str) -> Option<Self> {
        let folded = fold(text);
        Self::WORDS
            .iter()
            .find(|entry| std::iter::once(&entry.word).chain(entry.also).any(|word| says(&folded, word)))
            .map(|entry| entry.value)
    }
    /// The list without its values.
    fn rows() -> Vec<Row> {
        Self::WORDS.iter().map(|entry| Row { word: entry.word, also: entry.also }).collect()
    }
}

/// A word and its synonyms, without the value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Row {
    /// The canonical word.
    pub word: &'static str,
    /// Other words people use.
    pub also: &'static [&'static str],
}

/// Words that carry no meaning here and may be left out or put in.
pub(super) const SMALL_WORDS: [&str; 6] = ["the", "her", "a", "an", "mother's", "side"];

/// Names of makers that people say for the thing: read, and never listed.
pub const UNLISTED: [&str; 2] = ["sonicaid", "sonic aid"];

/// Whether a spelling may stand in a list of words.
pub fn is_listed(spelling: &str) -> bool {
    !UNLISTED.iter().any(|maker| spelling.to_lowercase().contains(maker))
}

/// Text for comparing: lower case, hyphens as spaces, single spaces, small words left out.
pub fn fold(text: &str) -> String {
    let lower = text.to_lowercase().replace(['-', '_', '\u{2010}', '\u{2011}'], " ").replace('\u{2019}', "'");
    let kept: Vec<&str> = lower.split_whitespace().filter(|word| !SMALL_WORDS.contains(word)).collect();
    kept.join(" ")
}

/// Whether `folded` (as made by [`fold`]) says the same as `word`; no text is copied, because this is asked most.
pub fn says(folded: &str, word: &str) -> bool {
    let small = |part: &&str| SMALL_WORDS.iter().any(|small| small.eq_ignore_ascii_case(part));
    let parts = word.split([' ', '-']).filter(|part| !part.is_empty() && !small(part));
    let mut said = folded.split(' ').filter(|part| !part.is_empty());
    for part in parts {
        if !said.next().is_some_and(|said| said.eq_ignore_ascii_case(part)) {
            return false;
        }
    }
    said.next().is_none()
}

/// How like two folded texts are, 0 to 1: by single slips of the finger, or one beginning with the other.
pub fn likeness(a: &str, b: &str) -> f64 {
    let slips = strsim::normalized_damerau_levenshtein(a, b);
    let (short, long) = if a.len() <= b.len() { (a, b) } else { (b, a) };
    let begins = if short.chars().count() >= 3 && long.starts_with(short) { 0.8 } else { 0.0 };
    slips.max(begins)
}

/// Words for a finding that is not a value. Which of them a key allows stands in `keys`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StateWord {
    /// Looked for and absent, by the hands.
    NotFelt,
    /// Listened for and absent.
    NotHeard,
    /// Looked or asked for, and there is none.
    None,
    /// Not tried, by the ear.
    NotListened,
    /// Not tried, by asking.
    NotAsked,
    /// Tried, could not tell.
    CouldNotTell,
    /// Not examined; said by leaving the line out.
    NotExamined,
}

impl Vocabulary for StateWord {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Self::NotFelt, word: "not felt", also: &["not palpable", "not palpated", "absent"] },
        Word {
            value: Self::NotHeard,
            word: "not heard",
            also: &["no heartbeat heard", "could not hear", "absent"],
        },
        Word { value: Self::None, word: "none", also: &["no", "nil", "not seen", "not felt"] },
        Word {
            value: Self::NotListened,
            word: "not listened",
            also: &["not listened for", "not auscultated"],
        },
        Word { value: Self::NotAsked, word: "not asked", also: &["not asked for", "not asked about"] },
        Word {
            value: Self::CouldNotTell,
            word: "could not tell",
            also: &[
                "cannot tell",
                "can't tell",
                "could not be told",
                "couldn't tell",
                "unsure",
                "unclear",
                "uncertain",
            ],
        },
        Word {
            value: Self::NotExamined,
            word: "not examined",
            also: &["not done", "not measured", "not checked", "not taken", "unknown", "not recorded"],
        },
    ];
}

/// How a finding is known, said in brackets after it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KnownWord {
    /// By hand.
    Hand,
    /// By a scan.
    Scan,
    /// By a vaginal examination.
    VaginalExamination,
}

impl Vocabulary for KnownWord {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Self::Scan, word: "scan", also: &["ultrasound", "USS", "by scan"] },
        Word {
            value: Self::VaginalExamination,
            word: "vaginal examination",
            also: &["VE", "vaginal exam", "by vaginal examination"],
        },
        Word { value: Self::Hand, word: "by hand", also: &["hand", "hands", "palpation", "by palpation"] },
    ];
}

impl Vocabulary for bool {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: true, word: "yes", also: &["y", "present"] },
        Word { value: false, word: "no", also: &["n", "none"] },
    ];
}

/// Left-right words of a place.
impl Vocabulary for Across {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Across::Flank(MotherSide::Left),
            word: "left flank",
            also: &["L flank", "Lt flank", "flank left", "far left", "left loin"],
        },
        Word {
            value: Across::Flank(MotherSide::Right),
            word: "right flank",
            also: &["R flank", "Rt flank", "flank right", "far right", "right loin"],
        },
        Word {
            value: Across::Side(MotherSide::Left),
            word: "left",
            also: &["L", "Lt", "to left", "on left"],
        },
        Word {
            value: Across::Side(MotherSide::Right),
            word: "right",
            also: &["R", "Rt", "to right", "on right"],
        },
        Word {
            value: Across::Middle,
            word: "middle",
            also: &["midline", "in middle", "in midline", "centre", "center", "central"],
        },
    ];
}

/// Up-down words of a place.
impl Vocabulary for Height {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Height::Fundus,
            word: "fundus",
            also: &["at fundus", "in fundus", "top", "at top", "top of womb", "top of uterus"],
        },
        Word {
            value: Height::AboveNavel,
            word: "above navel",
            also: &[
                "above umbi",
                "above umb",
                "above umbilicus",
                "above belly button",
                "upper quadrant",
                "upper",
            ],
        },
        Word {
            value: Height::AtNavel,
            word: "at navel",
            also: &[
                "umbi",
                "at umbi",
                "navel",
                "at umbilicus",
                "umbilicus",
                "beside navel",
                "level with navel",
                "at level of navel",
                "umbilical",
            ],
        },
        Word {
            value: Height::BelowNavel,
            word: "below navel",
            also: &[
                "below umbi",
                "below umb",
                "below umbilicus",
                "below belly button",
                "under navel",
                "lower quadrant",
                "lower",
            ],
        },
        Word { value: Height::IliacFossa, word: "iliac fossa", also: &["groin", "in iliac fossa"] },
        Word {
            value: Height::AbovePubicBone,
            word: "above pubic bone",
            also: &[
                "just above pubic bone",
                "above pubis",
                "above symphysis",
                "above brim",
                "at brim",
                "in brim",
                "brim",
                "pelvic brim",
                "suprapubic",
                "lower pole",
            ],
        },
    ];
}

/// Short forms of a whole place.
pub const PLACE_ABBREVIATIONS: [(&str, MotherSide, Height); 6] = [
    ("luq", MotherSide::Left, Height::AboveNavel),
    ("ruq", MotherSide::Right, Height::AboveNavel),
    ("llq", MotherSide::Left, Height::BelowNavel),
    ("rlq", MotherSide::Right, Height::BelowNavel),
    ("lif", MotherSide::Left, Height::IliacFossa),
    ("rif", MotherSide::Right, Height::IliacFossa),
];

/// Words for the landmarks a height is measured from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Landmark {
    /// The navel.
    Navel,
    /// The upper border of the pubic bone.
    PubicBone,
    /// The tip of the breastbone.
    Xiphoid,
}

impl Vocabulary for Landmark {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Self::Navel, word: "navel", also: &["umbi", "umb", "umbilicus", "belly button"] },
        Word { value: Self::PubicBone, word: "pubic bone", also: &["symphysis", "pubis", "symphysis pubis"] },
        Word { value: Self::Xiphoid, word: "xiphoid", also: &["xiphisternum", "breastbone", "ribs"] },
    ];
}

/// Which way the back is turned.
impl Vocabulary for BackTurn {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: BackTurn::Front,
            word: "front",
            also: &["ant", "anterior", "towards front", "to front", "in front", "forwards", "anteriorly"],
        },
        Word {
            value: BackTurn::Lateral,
            word: "lateral",
            also: &["lat", "square to", "transverse", "laterally"],
        },
        Word {
            value: BackTurn::Spine,
            word: "towards her spine",
            also: &[
                "post",
                "posterior",
                "rear",
                "back to back",
                "behind",
                "towards back",
                "to spine",
                "toward spine",
                "posteriorly",
            ],
        },
        Word {
            value: BackTurn::Ribs,
            word: "towards her ribs",
            also: &["up", "upwards", "to ribs", "toward ribs", "superior", "towards head"],
        },
        Word {
            value: BackTurn::Feet,
            word: "towards her feet",
            also: &["down", "downwards", "to feet", "toward feet", "inferior", "towards pelvis"],
        },
    ];
}

impl Vocabulary for Descent {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Descent::Free,
            word: "free",
            also: &["high and mobile", "floating", "mobile", "high", "ballotable"],
        },
        Word { value: Descent::AtBrim, word: "at the brim", also: &["at brim", "in brim", "brim"] },
        Word { value: Descent::Dipping, word: "dipping", also: &["dipping into brim", "entering brim"] },
        Word { value: Descent::Fixed, word: "fixed", also: &["fixed in brim"] },
        Word {
            value: Descent::Deep,
            word: "deep",
            also: &["deep in pelvis", "deep in the pelvis", "low in pelvis"],
        },
        Word { value: Descent::Engaged, word: "engaged", also: &["eng"] },
    ];
}

impl Vocabulary for Prominence {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Prominence::LimbSide,
            word: "limb side",
            also: &["limbs", "on limb side", "side of limbs", "limbs' side"],
        },
        Word {
            value: Prominence::BackSide,
            word: "back side",
            also: &["back", "on back side", "side of back", "back's side"],
        },
        Word { value: Prominence::Level, word: "level", also: &["neither", "both", "equal"] },
    ];
}

impl Vocabulary for Attitude {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Attitude::Flexed, word: "flexed", also: &["well flexed", "chin on chest"] },
        Word { value: Attitude::Deflexed, word: "deflexed", also: &["military", "straight"] },
        Word { value: Attitude::Brow, word: "brow", also: &["half extended"] },
        Word { value: Attitude::Face, word: "face", also: &["extended", "fully extended"] },
    ];
}

impl Vocabulary for Legs {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Legs::Frank, word: "frank", also: &["extended", "frank breech", "extended legs"] },
        Word { value: Legs::Complete, word: "complete", also: &["flexed", "complete breech", "folded"] },
        Word { value: Legs::Footling(Footling::Left), word: "footling left", also: &["left footling"] },
        Word { value: Legs::Footling(Footling::Right), word: "footling right", also: &["right footling"] },
        Word {
            value: Legs::Footling(Footling::Both),
            word: "footling both",
            also: &["both footling", "double footling"],
        },
        Word {
            value: Legs::Footling(Footling::Untold),
            word: "footling",
            also: &["footling breech", "incomplete breech"],
        },
    ];
}

impl Vocabulary for ListenedWith {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: ListenedWith::PinardHorn,
            word: "Pinard horn",
            also: &["Pinard", "horn", "Pinard stethoscope"],
        },
        Word { value: ListenedWith::Fetoscope, word: "fetoscope", also: &["foetoscope", "stethoscope"] },
        Word { value: ListenedWith::Doppler, word: "Doppler", also: &["hand-held Doppler", "sonicaid"] },
    ];
}

impl Vocabulary for Rhythm {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Rhythm::Regular, word: "regular", also: &["heard and regular"] },
        Word { value: Rhythm::Irregular, word: "irregular", also: &["uneven"] },
    ];
}

impl Vocabulary for Lie {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Lie::Longitudinal,
            word: "longitudinal",
            also: &["lengthwise", "vertical", "up and down", "long"],
        },
        Word { value: Lie::Oblique, word: "oblique", also: &["Obl", "slanting"] },
        Word { value: Lie::Transverse, word: "transverse", also: &["Tr", "trans", "crosswise", "across"] },
    ];
}

impl Vocabulary for Presentation {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Presentation::Cephalic,
            word: "cephalic",
            also: &["Vx", "head down", "head", "vertex", "ceph", "head first"],
        },
        Word { value: Presentation::Face, word: "face", also: &[] },
        Word { value: Presentation::Brow, word: "brow", also: &[] },
        Word {
            value: Presentation::Breech,
            word: "breech",
            also: &["Br", "bottom", "bottom down", "bottom first", "pelvic"],
        },
        Word { value: Presentation::Shoulder, word: "shoulder", also: &["Sh", "acromion"] },
    ];
}

impl Vocabulary for Movements {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Movements::Usual,
            word: "usual",
            also: &["as usual", "her usual", "usual pattern", "normal", "as normal"],
        },
        Word {
            value: Movements::Fewer,
            word: "fewer",
            also: &["less", "reduced", "fewer than usual", "less than usual", "decreased"],
        },
        Word { value: Movements::Changed, word: "changed", also: &["different", "altered", "weaker"] },
        Word { value: Movements::None, word: "none", also: &["no movements", "stopped", "absent"] },
        Word { value: Movements::Felt, word: "felt", also: &["feels movements", "present", "FMF"] },
        Word { value: Movements::NotFeltYet, word: "not felt yet", also: &["not yet", "not yet felt"] },
    ];
}

impl Vocabulary for Shape {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Shape::Long, word: "long", also: &["oval", "ovoid", "upright"] },
        Word { value: Shape::Wide, word: "wide", also: &["broad"] },
        Word { value: Shape::Slanting, word: "slanting", also: &["oblique", "slanted"] },
    ];
}

impl Vocabulary for WombFeel {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: WombFeel::Soft, word: "soft", also: &["relaxed"] },
        Word {
            value: WombFeel::Tightening,
            word: "tightening",
            also: &["contracting", "tightens", "irritable"],
        },
        Word { value: WombFeel::Hard, word: "hard", also: &[] },
        Word { value: WombFeel::Tender, word: "tender", also: &["painful", "sore", "painful to touch"] },
        Word { value: WombFeel::Tense, word: "tense", also: &["taut"] },
        Word {
            value: WombFeel::BoardLike,
            word: "board-like",
            also: &["board", "hard as a board", "rigid", "woody", "woody hard", "wooden"],
        },
    ];
}

impl Vocabulary for Water {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Water::Normal, word: "adequate", also: &["normal", "average", "normal amount"] },
        Word { value: Water::Much, word: "much", also: &["much water", "increased", "a lot"] },
        Word { value: Water::Little, word: "little", also: &["little water", "reduced"] },
    ];
}

impl Vocabulary for TapeUnfit {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: TapeUnfit::LargeBuild,
            word: "BMI 35 or more",
            also: &["BMI 35+", "BMI over 35", "large build"],
        },
        Word { value: TapeUnfit::Fibroids, word: "fibroids", also: &["fibroid", "myomas"] },
        Word { value: TapeUnfit::MuchWater, word: "much water", also: &["polyhydramnios", "hydramnios"] },
        Word { value: TapeUnfit::Twins, word: "twins", also: &["multiple", "more than one baby"] },
        Word {
            value: TapeUnfit::Crosswise,
            word: "not longitudinal",
            also: &["crosswise", "transverse", "oblique", "transverse lie", "oblique lie"],
        },
    ];
}

impl Vocabulary for Scar {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Scar::LowTransverse,
            word: "low transverse",
            also: &["Pfannenstiel", "bikini line", "low across", "low horizontal"],
        },
        Word { value: Scar::Midline, word: "midline", also: &["middle", "vertical", "up and down"] },
        Word {
            value: Scar::RightLower,
            word: "right lower",
            also: &["appendix", "appendicectomy", "right iliac fossa"],
        },
        Word { value: Scar::Keyhole, word: "keyhole", also: &["laparoscopy", "laparoscopic"] },
    ];
}

impl Vocabulary for Operation {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Operation::Caesarean,
            word: "caesarean",
            also: &["cesarean", "caesarean section", "cesarean section", "C-section", "section", "CS"],
        },
        Word {
            value: Operation::Myomectomy,
            word: "myomectomy",
            also: &["fibroids removed", "removal of fibroids"],
        },
    ];
}

impl Vocabulary for WombCut {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: WombCut::LowTransverse,
            word: "low transverse",
            also: &["lower segment", "LSCS", "low across", "lower uterine segment"],
        },
        Word { value: WombCut::Vertical, word: "vertical", also: &["classical", "midline", "up and down"] },
        Word {
            value: WombCut::TShaped,
            word: "T-shaped",
            also: &["T", "inverted T", "T cut", "inverted T cut"],
        },
        Word { value: WombCut::JShaped, word: "J-shaped", also: &["J", "J cut"] },
        Word { value: WombCut::NotKnown, word: "not known", also: &["unknown", "notes not seen"] },
    ];
}

impl Vocabulary for SkinMark {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: SkinMark::LineaNigra, word: "linea nigra", also: &["dark line"] },
        Word { value: SkinMark::Striae, word: "striae", also: &["stretch marks"] },
        Word { value: SkinMark::Rash, word: "rash", also: &[] },
    ];
}

impl Vocabulary for Report {
    const WORDS: &'static [Word<Self>] = &[
        // Waters and bleeding.
        Word {
            value: Report::Bleeding,
            word: "bleeding",
            also: &["PVB", "PV bleeding", "blood", "blood loss", "vaginal bleeding", "bleeding from vagina"],
        },
        Word {
            value: Report::WatersBroken,
            word: "waters broken",
            also: &[
                "SROM",
                "SRM",
                "waters gone",
                "fluid leaking",
                "leaking",
                "ruptured membranes",
                "waters leaking",
            ],
        },
        Word { value: Report::Show, word: "show", also: &["mucus plug", "mucous plug", "plug"] },
        // Pain.
        Word {
            value: Report::ConstantPain,
            word: "constant pain",
            also: &["pain that stays", "severe pain", "continuous pain"],
        },
        Word {
            value: Report::PainUnderRibs,
            word: "pain under ribs",
            also: &[
                "epigastric pain",
                "epigastric",
                "RUQ pain",
                "upper abdominal pain",
                "right upper quadrant pain",
            ],
        },
        Word {
            value: Report::ScarPain,
            word: "scar pain",
            also: &["pain at scar", "scar tenderness", "tender scar"],
        },
        Word { value: Report::LoinPain, word: "loin pain", also: &["flank pain", "renal angle pain"] },
        Word { value: Report::Tightenings, word: "tightenings", also: &["contractions", "tightening"] },
        Word {
            value: Report::RegularTightenings,
            word: "regular tightenings",
            also: &[
                "painful tightenings",
                "regular contractions",
                "painful contractions",
                "regular painful contractions",
            ],
        },
        Word {
            value: Report::PracticeTightenings,
            word: "practice tightenings",
            also: &["Braxton Hicks", "Braxton-Hicks contractions", "practice contractions", "BH", "BHs"],
        },
        // Head and sight.
        Word { value: Report::Headache, word: "headache", also: &["mild headache"] },
        Word {
            value: Report::SevereHeadache,
            word: "severe headache",
            also: &[
                "lasting headache",
                "severe or lasting headache",
                "worst headache",
                "bad headache",
                "persistent headache",
            ],
        },
        Word {
            value: Report::SightChanges,
            word: "changes in sight",
            also: &["blurred sight", "blurred vision", "visual changes", "flashing lights"],
        },
        Word { value: Report::Fits, word: "fits", also: &["fit", "seizure", "convulsions"] },
        // Infection.
        Word { value: Report::Fever, word: "fever", also: &["temperature"] },
        Word {
            value: Report::BurningUrine,
            word: "burning urine",
            also: &["dysuria", "burning on passing urine", "stinging urine", "pain on passing urine"],
        },
        // Mind, and what is done to her.
        Word {
            value: Report::SelfHarm,
            word: "thoughts of self-harm",
            also: &["self-harm", "suicidal thoughts", "thoughts of suicide"],
        },
        Word {
            value: Report::Violence,
            word: "violence",
            also: &["violence disclosed", "abuse", "domestic violence", "domestic abuse"],
        },
        // Other.
        Word { value: Report::Itching, word: "itching", also: &["itch", "itchy"] },
        Word { value: Report::Vomiting, word: "vomiting", also: &["new vomiting", "being sick"] },
        Word {
            value: Report::Swelling,
            word: "swelling",
            also: &["swelling of face or hands", "oedema", "edema"],
        },
        Word {
            value: Report::SwollenCalf,
            word: "swollen calf",
            also: &["painful calf", "calf pain", "swollen or painful calf", "swollen leg", "leg pain"],
        },
        Word { value: Report::ChestPain, word: "chest pain", also: &["pain in chest"] },
        Word {
            value: Report::TroubleBreathing,
            word: "trouble breathing",
            also: &["breathless", "short of breath", "breathlessness"],
        },
        Word { value: Report::Collapse, word: "collapse", also: &["collapsed", "shock", "unresponsive"] },
        Word { value: Report::ColdClammy, word: "cold and clammy", also: &["clammy", "cold clammy"] },
        Word { value: Report::Faint, word: "faint", also: &["fainting", "fainted"] },
        Word {
            value: Report::FaintLyingFlat,
            word: "faint lying flat",
            also: &["faint when lying flat", "faint flat", "faint on back"],
        },
        Word {
            value: Report::BlowOrFall,
            word: "blow or fall",
            also: &["fall", "fell", "blow", "crash", "car crash", "blow to abdomen", "trauma"],
        },
    ];
}

impl Vocabulary for Placenta {
    const WORDS: &'static [Word<Self>] = &[
        Word { value: Placenta::Front, word: "front", also: &["ant", "anterior", "front wall"] },
        Word { value: Placenta::Rear, word: "rear", also: &["post", "posterior", "back wall", "behind"] },
        Word { value: Placenta::High, word: "high", also: &["fundal", "fundus", "upper"] },
        Word { value: Placenta::Low, word: "low", also: &["low-lying", "low lying"] },
    ];
}

impl Vocabulary for Posture {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: Posture::Flat,
            word: "flat",
            also: &["flat on back", "on back", "lying", "supine", "lying flat"],
        },
        Word {
            value: Posture::Tilt(MotherSide::Left),
            word: "left tilt",
            also: &["tilted left", "tilted to left"],
        },
        Word {
            value: Posture::Tilt(MotherSide::Right),
            word: "right tilt",
            also: &["tilted right", "tilted to right"],
        },
        Word {
            value: Posture::HalfSitting,
            word: "half sitting",
            also: &["reclining", "semi-reclined", "propped up"],
        },
        Word { value: Posture::Sitting, word: "sitting", also: &["upright"] },
    ];
}

/// The levels that are words of their own; finger-breadths are counted beside them.
impl Vocabulary for FundusLevel {
    const WORDS: &'static [Word<Self>] = &[
        Word {
            value: FundusLevel::NotAbovePubicBone,
            word: "not above pubic bone",
            also: &["not above symphysis", "in pelvis", "not palpable above pubic bone"],
        },
        Word {
            value: FundusLevel::JustAbovePubicBone,
            word: "just above pubic bone",
            also: &["above pubic bone", "just above symphysis", "above symphysis", "just palpable"],
        },
        Word {
            value: FundusLevel::HalfwayToNavel,
            word: "halfway to navel",
            also: &[
                "halfway to umbilicus",
                "halfway between pubic bone and navel",
                "halfway from pubic bone to navel",
            ],
        },
        Word { value: FundusLevel::AtNavel, word: "at navel", also: &["navel", "at umbilicus", "umbilicus"] },
        Word {
            value: FundusLevel::HalfwayToXiphoid,
            word: "halfway to xiphoid",
            also: &[
                "halfway to xiphisternum",
                "halfway between navel and xiphoid",
                "halfway from navel to xiphoid",
            ],
        },
        Word {
            value: FundusLevel::AtXiphoid,
            word: "xiphoid",
            also: &["at xiphoid", "xiphisternum", "at xiphisternum", "at ribs"],
        },
    ];
}

#[cfg(test)]
mod tests {
    use super::*;

    /// No list may say one thing with two meanings.
    fn one_meaning<T: Vocabulary>() {
        let mut seen = std::collections::BTreeMap::new();
        for entry in T::WORDS {
            for said in std::iter::once(&entry.word).chain(entry.also) {
                let before = seen.insert(fold(said), entry.word);
                assert!(before.is_none_or(|word| word == entry.word), "`{said}` has two meanings");
                assert!(!fold(said).is_empty(), "`{said}` is only small words");
            }
        }
    }

    #[test]
    fn every_word_has_one_meaning() {
        one_meaning::<KnownWord>();
        one_meaning::<bool>();
        one_meaning::<Across>();
        one_meaning::<Height>();
        one_meaning::<Landmark>();
        one_meaning::<BackTurn>();
        one_meaning::<Descent>();
        one_meaning::<Prominence>();
        one_meaning::<Attitude>();
        one_meaning::<Legs>();
        one_meaning::<ListenedWith>();
        one_meaning::<Rhythm>();
        one_meaning::<Lie>();
        one_meaning::<Presentation>();
        one_meaning::<Movements>();
        one_meaning::<Shape>();
        one_meaning::<WombFeel>();
        one_meaning::<Water>();
        one_meaning::<TapeUnfit>();
        one_meaning::<Scar>();
        one_meaning::<Operation>();
        one_meaning::<WombCut>();
        one_meaning::<SkinMark>();
        one_meaning::<Report>();
        one_meaning::<Placenta>();
        one_meaning::<Posture>();
        one_meaning::<FundusLevel>();
        one_meaning::<Placentas>();
        one_meaning::<RhesusD>();
        one_meaning::<GroupBStrep>();
        one_meaning::<Labour>();
        one_meaning::<WaterColour>();
        one_meaning::<Consent>();
        one_meaning::<Comfort>();
        one_meaning::<Build>();
        one_meaning::<ScarFeel>();
        one_meaning::<Hernia>();
        one_meaning::<Bladder>();
        one_meaning::<UrineProtein>();
        one_meaning::<Strength>();
        one_meaning::<Tone>();
        one_meaning::<HeightForDates>();
        one_meaning::<PoleFeel>();
        one_meaning::<ByVagina>();
        one_meaning::<Size>();
        one_meaning::<Turning>();
        one_meaning::<Quality>();
        one_meaning::<Slows>();
        one_meaning::<Listener>();
        one_meaning::<BesidePulse>();
        one_meaning::<MuscleGap>();
    }
}
