//! The keys of the language. In: nothing. Out: every key, what it means, what may stand there, and how absence is said.

use super::model::*;
use super::words::{Row, StateWord, Vocabulary};

/// Where a key stands in the file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Scope {
    /// Above the first table.
    Top,
    /// Under `[mother]`.
    Mother,
    /// Under `[baby]` or `[[baby]]`.
    Baby,
}

impl Scope {
    /// All of them, in the order of a file.
    pub const ALL: [Scope; 3] = [Scope::Top, Scope::Mother, Scope::Baby];

    /// Where to write it, in words.
    pub fn place(self) -> &'static str {
        match self {
            Scope::Top => "at the top of the file, above [mother]",
            Scope::Mother => "under [mother]",
            Scope::Baby => "under [baby]",
        }
    }
}

/// One key of the language.
pub struct Key {
    /// Where it stands.
    pub scope: Scope,
    /// The key.
    pub name: &'static str,
    /// What it records.
    pub meaning: &'static str,
    /// Its words, if it takes words.
    pub words: fn() -> Vec<Row>,
    /// A form that is not in the word list, such as a quantity; empty when there is none.
    pub form: &'static str,
    /// May hold several values.
    pub list: bool,
    /// May be a bare number.
    pub number: bool,
    /// How "looked for and absent" is said.
    pub absent: Option<StateWord>,
    /// How "not tried" is said.
    pub not_tried: Option<StateWord>,
}

impl Key {
    /// What may stand there, in one line.
    pub fn expected(&self) -> String {
        let mut parts: Vec<String> = (self.words)().iter().map(|row| format!("`{}`", row.word)).collect();
        if !self.form.is_empty() {
            parts.push(self.form.to_owned());
        }
        match parts.split_last() {
            None => String::new(),
            Some((last, [])) => last.clone(),
            Some((last, rest)) => format!("{} or {last}", rest.join(", ")),
        }
    }
    /// Whether it holds several places: a place has commas of its own, and none parts two of them.
    pub fn has_places(&self) -> bool {
        matches!(self.name, "limbs" | "lumps" | "heart-also" | "kicks" | "tender-at")
    }
    /// The state words it allows.
    pub fn states(&self) -> Vec<StateWord> {
        if self.scope == Scope::Top {
            return vec![];
        }
        let mut states: Vec<StateWord> = self.absent.into_iter().chain(self.not_tried).collect();
        states.push(StateWord::CouldNotTell);
        states
    }
}

fn no_words() -> Vec<Row> {
    vec![]
}

fn place_words() -> Vec<Row> {
    let mut rows = Across::rows();
    rows.extend(Height::rows());
    rows
}

fn back_words() -> Vec<Row> {
    let mut rows: Vec<Row> =
        Across::rows().into_iter().filter(|row| ["left", "right"].contains(&row.word)).collect();
    rows.extend(BackTurn::rows());
    rows
}

fn heart_words() -> Vec<Row> {
    let mut rows = vec![Row { word: "heard", also: HEARD_ALSO }];
    rows.extend(place_words());
    rows
}

/// Synonyms of `heart = "heard"`.
pub const HEARD_ALSO: &[&str] = &["heard, place not noted", "FHH", "heart heard"];

const NOT_FELT: Option<StateWord> = Some(StateWord::NotFelt);
const NOT_HEARD: Option<StateWord> = Some(StateWord::NotHeard);
const NONE: Option<StateWord> = Some(StateWord::None);
const NOT_ASKED: Option<StateWord> = Some(StateWord::NotAsked);
const NOT_LISTENED: Option<StateWord> = Some(StateWord::NotListened);

const fn key(
    scope: Scope,
    name: &'static str,
    meaning: &'static str,
    words: fn() -> Vec<Row>,
    form: &'static str,
) -> Key {
    Key { scope, name, meaning, words, form, list: false, number: false, absent: None, not_tried: None }
}

impl Key {
    const fn listed(mut self) -> Self {
        self.list = true;
        self
    }
    const fn numbered(mut self) -> Self {
        self.number = true;
        self
    }
    const fn absent(mut self, word: Option<StateWord>) -> Self {
        self.absent = word;
        self
    }
    const fn not_tried(mut self, word: Option<StateWord>) -> Self {
        self.not_tried = word;
        self
    }
}

use Scope::{Baby as B, Mother as M, Top as T};

/// Every key, in the order of a file and of the hands.
pub static KEYS: &[Key] = &[
    key(T, "weeks", "weeks and days at the visit", no_words, "weeks and days such as `37+0`"),
    key(T, "visit", "date of the visit", no_words, "a date such as 2026-03-14"),
    key(T, "due", "date the baby is due (40+0)", no_words, "a date such as 2026-03-14"),
    key(T, "last-period", "first day of the last period", no_words, "a date such as 2025-06-07"),
    key(T, "cycle", "usual days from one period to the next", no_words, "a number of days such as 28")
        .numbered(),
    key(
        T,
        "scan",
        "early scan that dated the pregnancy",
        no_words,
        "weeks and a date such as `12+3 on 2025-09-20`",
    ),
    key(T, "note", "free words for the chart only", no_words, "free words"),
    key(M, "movements", "what she says of the movements", Movements::rows, "").not_tried(NOT_ASKED),
    key(M, "reports", "what she reports", Report::rows, "").listed().absent(NONE).not_tried(NOT_ASKED),
    key(M, "denies", "asked, and not so", Report::rows, "").listed(),
    key(M, "labour", "whether she is in labour", Labour::rows, ""),
    key(M, "hours-since-broken", "hours since the waters broke", no_words, "hours such as `6 h`")
        .not_tried(NOT_ASKED),
    key(M, "water-colour", "colour and smell of water that has come", WaterColour::rows, "").listed(),
    key(M, "gravida", "pregnancies, this one included", no_words, "a number such as 2")
        .numbered()
        .not_tried(NOT_ASKED),
    key(M, "births-before", "births before this one", no_words, "a number such as 1")
        .numbered()
        .not_tried(NOT_ASKED),
    key(M, "operations", "operations on the womb", Operation::rows, "")
        .listed()
        .absent(NONE)
        .not_tried(NOT_ASKED),
    key(M, "womb-cut", "how the womb was cut", WombCut::rows, "").not_tried(NOT_ASKED),
    key(M, "rupture-before", "whether the womb tore in an earlier pregnancy or labour", bool::rows, "")
        .not_tried(NOT_ASKED),
    key(M, "placenta", "where the placenta lies", Placenta::rows, ""),
    key(M, "placentas", "how many placentas two babies have", Placentas::rows, "").not_tried(NOT_ASKED),
    key(M, "rhesus-d", "the D antigen of her blood", RhesusD::rows, "").not_tried(NOT_ASKED),
    key(M, "group-b-strep", "whether group B strep was found in this pregnancy", GroupBStrep::rows, "")
        .not_tried(NOT_ASKED),
    key(M, "consent", "her consent to the examination", Consent::rows, "").not_tried(NOT_ASKED),
    key(M, "posture", "how she lay", Posture::rows, ""),
    key(M, "comfort", "how the examination was for her", Comfort::rows, "").not_tried(NOT_ASKED),
    key(M, "build", "her build as looked at", Build::rows, ""),
    key(M, "shape", "shape of the abdomen", Shape::rows, "").listed(),
    key(M, "scars", "scars on the skin", Scar::rows, "").listed().absent(NONE),
    key(M, "scar-feel", "how a scar of the skin looks and feels", ScarFeel::rows, "").listed(),
    key(M, "skin", "marks of the skin", SkinMark::rows, "").listed().absent(NONE),
    key(
        M,
        "muscle-gap",
        "a gap between the straight muscles",
        MuscleGap::rows,
        "finger-breadths such as `2 fingers`, or `3 cm`",
    )
    .absent(NONE),
    key(M, "hernia", "where a hernia was found", Hernia::rows, "").listed().absent(NONE),
    key(M, "bladder", "her bladder", Bladder::rows, ""),
    key(M, "temperature", "her temperature", no_words, "a temperature such as `37.2 C` or `99.0 F`")
        .numbered(),
    key(M, "blood-pressure", "her blood pressure", no_words, "two numbers such as `128/82`"),
    key(M, "pulse", "her pulse, beats a minute", no_words, "beats a minute such as 78").numbered(),
    key(M, "breathing", "her breaths a minute", no_words, "breaths a minute such as 16").numbered(),
    key(M, "urine-protein", "protein in the urine by a strip", UrineProtein::rows, "").absent(NONE),
    key(M, "womb", "how the womb feels", WombFeel::rows, "").listed(),
    key(M, "tone-at-rest", "the womb between contractions", Tone::rows, ""),
    key(
        M,
        "tender-at",
        "where the womb is tender",
        place_words,
        "a measured place such as `left 6 cm, 4 cm above navel`",
    )
    .listed()
    .absent(NONE),
    key(M, "contractions-in-ten", "contractions in ten minutes", no_words, "a number such as 3 or `3-4`")
        .numbered()
        .absent(NONE),
    key(
        M,
        "contraction-length",
        "how long contractions last",
        no_words,
        "a time such as `45 s`, `40 to 60 s` or `2 min`",
    ),
    key(M, "contraction-strength", "how strong contractions feel to the hand", Strength::rows, ""),
    key(M, "water", "amount of water as felt", Water::rows, ""),
    key(M, "lumps", "places of fibroids", place_words, "").listed().absent(NONE),
    key(
        M,
        "fundus",
        "level of the top of the womb",
        FundusLevel::rows,
        "finger-breadths such as `2 fingers above navel`",
    )
    .absent(NOT_FELT),
    key(
        M,
        "height-for-dates",
        "the height of the womb against the dates, in words",
        HeightForDates::rows,
        "",
    ),
    key(
        M,
        "fundal-height",
        "tape from the pubic bone to the top of the womb",
        no_words,
        "a length such as `35 cm`",
    ),
    key(M, "earlier-tapes", "earlier tapes", no_words, "weeks and a length such as `34+0 32 cm`")
        .listed()
        .absent(NONE),
    key(M, "girth", "girth at the navel", no_words, "a length such as `98 cm`"),
    key(M, "navel", "height of the navel above the pubic bone", no_words, "a length such as `18 cm`"),
    key(M, "tape-unfit", "why the tape cannot be read against a chart", TapeUnfit::rows, "")
        .listed()
        .absent(NONE),
    key(
        B,
        "breech",
        "where the baby's bottom was felt",
        place_words,
        "a measured place such as `left 6 cm, 4 cm above navel`",
    )
    .absent(NOT_FELT),
    key(B, "fundus-feels", "how what lies in the fundus feels", PoleFeel::rows, "").listed(),
    key(B, "back", "where the back was felt", back_words, "").absent(NOT_FELT),
    key(
        B,
        "limbs",
        "where limbs were felt",
        place_words,
        "a measured place such as `right 6 cm, 4 cm above navel`",
    )
    .listed()
    .absent(NOT_FELT),
    key(
        B,
        "head",
        "where the head was felt",
        place_words,
        "a measured place such as `left 6 cm, 4 cm below navel`",
    )
    .absent(NOT_FELT),
    key(B, "brim-feels", "how what lies above the brim feels", PoleFeel::rows, "").listed(),
    key(B, "ballottable", "whether the head can be ballotted", bool::rows, ""),
    key(
        B,
        "head-above-brim",
        "fifths of the head palpable above the brim",
        no_words,
        "fifths from `5/5` to `0/5`",
    ),
    key(B, "descent", "descent of a breech, or of a head not felt in fifths", Descent::rows, ""),
    key(B, "prominence", "side on which the head stands out in the fourth grip", Prominence::rows, "")
        .absent(NOT_FELT),
    key(B, "overlaps-pubic-bone", "whether the head overlaps the pubic bone", bool::rows, ""),
    key(B, "found-by-vagina", "what was found in the vagina, or seen at it", ByVagina::rows, "").listed(),
    key(
        B,
        "station",
        "cm above or below the spines, by the vagina; never fifths",
        no_words,
        "a station such as `-2`, `0` or `+1`",
    ),
    key(B, "attitude", "how far the head is bent", Attitude::rows, ""),
    key(B, "legs", "how the legs lie", Legs::rows, "").absent(NOT_FELT),
    key(B, "dip-at-navel", "a dip at the navel", bool::rows, ""),
    key(B, "size", "size for dates as judged by hand", Size::rows, ""),
    key(
        B,
        "kicks",
        "where kicks are felt",
        place_words,
        "a measured place such as `right 6 cm, 4 cm above navel`",
    )
    .listed()
    .absent(NOT_FELT),
    key(B, "hiccups", "hiccups", bool::rows, ""),
    key(B, "unstable-lie", "whether the lie keeps changing", bool::rows, ""),
    key(B, "turning-tried", "what came of turning the baby by hand", Turning::rows, ""),
    key(B, "moved-under-hands", "whether the baby moved under the hands", bool::rows, ""),
    key(
        B,
        "heart",
        "where the heart was heard",
        heart_words,
        "a measured place such as `left 6 cm, 4 cm below navel`",
    )
    .absent(NOT_HEARD)
    .not_tried(NOT_LISTENED),
    key(
        B,
        "heart-also",
        "other places where the heart was heard",
        place_words,
        "a measured place such as `left 6 cm, 4 cm below navel`",
    )
    .listed(),
    key(B, "heart-with", "what it was listened to with", ListenedWith::rows, ""),
    key(B, "heart-counts", "counts of heartbeats", no_words, "a count such as `36 in 15 s`").listed(),
    key(B, "heart-rate", "heart rate, beats a minute", no_words, "beats a minute such as 142, or `140-146`")
        .numbered(),
    key(B, "heart-rise", "highest rate on movement", no_words, "beats a minute such as 155")
        .numbered()
        .absent(NONE),
    key(B, "heart-rhythm", "rhythm of the heart", Rhythm::rows, ""),
    key(B, "heart-quality", "how the heart sounds", Quality::rows, ""),
    key(B, "heart-slows", "when the heart was heard to slow", Slows::rows, "").listed().absent(NONE),
    key(B, "heart-by", "who listened", Listener::rows, "").listed(),
    key(B, "heart-and-pulse", "the heart and her pulse, felt and heard together", BesidePulse::rows, ""),
    key(
        B,
        "weight-by-hand",
        "weight judged by hand",
        no_words,
        "a weight such as `3.2 kg` or `6 lb 8 oz to 7 lb`",
    ),
    key(
        B,
        "weight-by-scan",
        "weight by an earlier scan",
        no_words,
        "a weight and weeks such as `2.9 kg (34+0)`",
    ),
    key(B, "lie", "lie, as concluded", Lie::rows, ""),
    key(B, "presentation", "presentation, as concluded", Presentation::rows, ""),
    key(B, "position", "position, as concluded", super::position::rows, ""),
];

/// The key `name` of `scope`.
pub fn find(scope: Scope, name: &str) -> Option<&'static Key> {
    KEYS.iter().find(|key| key.scope == scope && key.name == name)
}

/// Keys people try, and the key that is meant.
pub const KEYS_MEANT: [(&str, &str); 44] = [
    ("sfh", "fundal-height"),
    ("fh", "fundal-height"),
    ("tape", "fundal-height"),
    ("symphysis-fundal-height", "fundal-height"),
    ("height", "fundal-height"),
    ("gestation", "weeks"),
    ("ga", "weeks"),
    ("age", "weeks"),
    ("lmp", "last-period"),
    ("edd", "due"),
    ("date", "visit"),
    ("bottom", "breech"),
    ("fhr", "heart-rate"),
    ("rate", "heart-rate"),
    ("counts", "heart-counts"),
    ("engagement", "head-above-brim"),
    ("engaged", "head-above-brim"),
    ("fifths", "head-above-brim"),
    ("weight", "weight-by-hand"),
    ("efw", "weight-by-hand"),
    ("para", "births-before"),
    ("umbilicus", "navel"),
    ("fibroids", "lumps"),
    ("liquor", "water"),
    ("scar", "scars"),
    ("notes", "note"),
    ("temp", "temperature"),
    ("bp", "blood-pressure"),
    ("pressure", "blood-pressure"),
    ("protein", "urine-protein"),
    ("urine", "urine-protein"),
    ("rr", "breathing"),
    ("respirations", "breathing"),
    ("gbs", "group-b-strep"),
    ("rhesus", "rhesus-d"),
    ("contractions", "contractions-in-ten"),
    ("tone", "tone-at-rest"),
    ("tender", "tender-at"),
    ("labor", "labour"),
    ("water-color", "water-colour"),
    ("liquor-colour", "water-colour"),
    ("ecv", "turning-tried"),
    ("cord", "found-by-vagina"),
    ("decelerations", "heart-slows"),
];

/// Findings of a vaginal examination: not recorded here, kept as words in the note.
pub const VAGINAL_KEYS: [&str; 9] = [
    "cervix",
    "dilatation",
    "dilation",
    "effacement",
    "bishop",
    "bishop-score",
    "vaginal-examination",
    "membranes",
    "caput",
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_key_says_what_may_stand_there() {
        for key in KEYS {
            assert!(!key.expected().is_empty(), "{}", key.name);
            assert!(!key.meaning.is_empty(), "{}", key.name);
            assert_eq!(
                KEYS.iter().filter(|k| k.name == key.name).count(),
                1,
                "{} stands in two places",
                key.name
            );
        }
    }

    #[test]
    fn keys_people_try_lead_to_real_ones() {
        for (_, meant) in KEYS_MEANT {
            assert!(KEYS.iter().any(|key| key.name == meant), "{meant}");
        }
    }
}
