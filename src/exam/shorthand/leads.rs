//! The words of shorthand that are not words of the exam language. In: nothing. Out: what introduces a finding, what says one
//! by itself, what stands bare, and what is asked about because it can be read in two ways.

use crate::exam::keys::Scope;

use Scope::{Baby as B, Mother as M, Top as T};

/// A key: its scope and name.
pub type Of = (Scope, &'static str);

/// What introduces a finding, and the keys whose values may follow. The names of the keys introduce them too.
pub struct Lead {
    /// The words, in lower case; the first is the one that is listed.
    pub said: &'static [&'static str],
    /// The keys; where two take as much of what follows, the first.
    pub keys: &'static [Of],
}

const fn lead(said: &'static [&'static str], keys: &'static [Of]) -> Lead {
    Lead { said, keys }
}

/// Every lead. (Abbreviations: as in maternity notes and hospital lists of abbreviations; common practice.)
pub static LEADS: &[Lead] = &[
    lead(&["ga", "gest", "gestation"], &[(T, "weeks")]),
    lead(&["seen", "date"], &[(T, "visit")]),
    lead(&["edd", "edc"], &[(T, "due")]),
    lead(&["dating scan"], &[(T, "scan")]),
    lead(&["sfh", "tape"], &[(M, "fundal-height")]),
    lead(&["earlier tape", "earlier sfh", "prev sfh", "previous sfh", "last sfh"], &[(M, "earlier-tapes")]),
    lead(&["uterus", "ut"], &[(M, "womb")]),
    lead(&["liquor", "liq", "waters"], &[(M, "water")]),
    lead(&["fibroid", "fibroids"], &[(M, "lumps")]),
    lead(&["scar"], &[(M, "scars")]),
    lead(&["op", "ops"], &[(M, "operations")]),
    lead(&["uterine cut", "womb cut by"], &[(M, "womb-cut")]),
    lead(&["fm", "fms"], &[(M, "movements")]),
    lead(&["c / o", "complains of"], &[(M, "reports")]),
    lead(&["no", "nil", "denied"], &[(M, "denies")]),
    lead(&["mhr", "maternal pulse", "mat pulse", "mother's pulse"], &[(M, "pulse")]),
    lead(&["plac"], &[(M, "placenta")]),
    lead(&["p", "para", "parity"], &[(M, "births-before")]),
    lead(&["lying"], &[(M, "posture")]),
    lead(&["abdomen", "abdo"], &[(M, "shape")]),
    lead(&["tape unfit"], &[(M, "tape-unfit")]),
    lead(&["head"], &[(B, "head"), (B, "descent"), (B, "attitude"), (B, "presentation")]),
    lead(&["breech", "bottom", "br"], &[(B, "breech"), (B, "descent")]),
    lead(&["palp", "palpable", "fifths"], &[(B, "head-above-brim")]),
    lead(&["limb"], &[(B, "limbs")]),
    lead(&["sinciput"], &[(B, "prominence")]),
    lead(
        &["heart", "fetal heart"],
        &[(B, "heart"), (B, "heart-rate"), (B, "heart-counts"), (B, "heart-rhythm"), (B, "heart-with")],
    ),
    lead(
        &["fhr", "fhs"],
        &[(B, "heart-rate"), (B, "heart-counts"), (B, "heart"), (B, "heart-rhythm"), (B, "heart-with")],
    ),
    lead(&["accel to", "accels to", "rise to"], &[(B, "heart-rise")]),
    lead(&["efw by hand", "efw", "clinical weight"], &[(B, "weight-by-hand")]),
    lead(&["efw by scan", "scan efw"], &[(B, "weight-by-scan")]),
    lead(&["pos", "posn"], &[(B, "position")]),
    lead(&["pres", "pp"], &[(B, "presentation")]),
];

/// What follows after any word of the heart in the same part of the line, without a lead of its own.
pub static AFTER_HEART: &[Of] =
    &[(B, "heart"), (B, "heart-rate"), (B, "heart-counts"), (B, "heart-rhythm"), (B, "heart-with")];

/// Keys whose words stand bare; where two take as much, the first.
pub static BARE: &[Of] = &[
    (B, "position"),
    (B, "presentation"),
    (B, "lie"),
    (B, "descent"),
    (B, "attitude"),
    (B, "legs"),
    (B, "heart-with"),
    (M, "operations"),
    (M, "skin"),
];

/// Words that may come after one that stands bare, and say only what it is.
pub static AFTER_BARE: &[(Of, &[&str])] = &[
    ((B, "lie"), &["lie"]),
    ((B, "presentation"), &["presentation", "presenting", "pres"]),
    ((B, "position"), &["position"]),
];

/// What says a whole finding, or two, by itself.
pub struct Whole {
    /// The words, in lower case.
    pub said: &'static str,
    /// The findings: key and value. An empty value: the words themselves.
    pub means: &'static [(Of, &'static str)],
}

/// Every such word.
pub static WHOLE: &[Whole] = &[
    Whole { said: "fhh", means: &[((B, "heart"), "")] },
    Whole { said: "heart heard", means: &[((B, "heart"), "")] },
    Whole { said: "fhhr", means: &[((B, "heart"), "heard"), ((B, "heart-rhythm"), "regular")] },
    Whole { said: "fhnh", means: &[((B, "heart"), "not heard")] },
    Whole { said: "fmf", means: &[((M, "movements"), "")] },
    Whole { said: "no fmf", means: &[((M, "movements"), "none")] },
    Whole { said: "no fm", means: &[((M, "movements"), "none")] },
    Whole { said: "no fms", means: &[((M, "movements"), "none")] },
    Whole { said: "no movements", means: &[((M, "movements"), "none")] },
    Whole { said: "no scar", means: &[((M, "scars"), "none")] },
    Whole { said: "no scars", means: &[((M, "scars"), "none")] },
    Whole { said: "lscs", means: &[((M, "operations"), "caesarean"), ((M, "womb-cut"), "low transverse")] },
    Whole { said: "back to back", means: &[((B, "back"), "")] },
    Whole { said: "bmi 35 or more", means: &[((M, "tape-unfit"), "")] },
];

/// A word that can be read in two ways: what it might be, and how to say which.
pub struct Ask {
    /// The words, in lower case.
    pub said: &'static str,
    /// True when only capitals are meant.
    pub capitals: bool,
    /// What it might be.
    pub why: &'static str,
    /// How to say which.
    pub instead: &'static str,
}

const fn ask(said: &'static str, capitals: bool, why: &'static str, instead: &'static str) -> Ask {
    Ask { said, capitals, why, instead }
}

/// Every such word. Fifths without `palp`, dates in numbers, decimal weeks and `FH` are asked where they are read.
pub static ASKS: &[Ask] = &[
    ask(
        "lmp",
        false,
        "is the last period, or left mento-posterior",
        "`last period 2025-06-07`, or `left mento-posterior`",
    ),
    ask(
        "mp",
        false,
        "may be direct mento-posterior, or short for something else",
        "`direct mento-posterior`",
    ),
    ask(
        "pa",
        false,
        "is per abdomen, or a place or presentation at the back",
        "`palp` after fifths; `back left post`; or nothing",
    ),
    ask("t", true, "is term, or transverse", "weeks such as `40+5`; or `lie transverse`, `LOT`, `ROT`"),
    ask(
        "ne",
        true,
        "does not say how far down the head is",
        "`free`, `at brim`, or fifths such as `4/5 palp`",
    ),
    ask(
        "neng",
        false,
        "does not say how far down the head is",
        "`free`, `at brim`, or fifths such as `4/5 palp`",
    ),
    ask(
        "not eng",
        false,
        "does not say how far down the head is",
        "`free`, `at brim`, or fifths such as `4/5 palp`",
    ),
    ask(
        "not engaged",
        false,
        "does not say how far down the head is",
        "`free`, `at brim`, or fifths such as `4/5 palp`",
    ),
    ask(
        "breech engaged",
        false,
        "does not say how deep it is: engaged is said of a head",
        "`breech free`, `breech at brim`, or `breech deep`",
    ),
    ask(
        "extended",
        false,
        "is a head that is bent back, or legs that are stretched",
        "`attitude face`, or `legs frank`",
    ),
];

/// Findings of a vaginal examination: said not to be recorded here, and kept in the note.
pub static VAGINAL: &[&str] = &[
    "ve",
    "vaginally",
    "cx",
    "cervix",
    "os",
    "spines",
    "dilated",
    "dilatation",
    "dilation",
    "effaced",
    "effacement",
    "bishop",
    "membranes",
    "caput",
    "moulding",
];

/// What is charted elsewhere: the word and what it is.
pub static ELSEWHERE: &[(&str, &str)] = &[
    ("bp", "blood pressure"),
    ("urine", "a urine test"),
    ("urinalysis", "a urine test"),
    ("hb", "a blood test"),
    ("temp", "a temperature"),
    ("weight", "the mother's weight"),
    ("wt", "the mother's weight"),
    ("bmi", "the body mass index"),
    ("ctg", "a tracing of the heart"),
];

/// Words that would tell who she is.
pub static WHO: &[&str] = &["name", "nhs", "mrn", "dob", "hospital no", "address"];

/// Words that may stand between findings and say nothing.
pub static FILLERS: &[&str] = &[
    "o / e",
    "on examination",
    "on palpation",
    "on palp",
    "prev",
    "previous",
    "and",
    "with",
    "by",
    "at",
    "in",
    "on",
    "is",
    "the",
];

/// Words that say nothing by themselves about whether she has it: what she reports is asked.
pub const SYMPTOM: Of = (M, "reports");
