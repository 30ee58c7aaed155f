//! The ledger. In: nothing. Out: every rule of the reckoning, a row a rule: what it means, where it comes from, how far
//! that can be trusted.
//!
//! A remark takes its grade and its source from its row; `handspan rules` prints the rows; a test holds docs/rules.md
//! and the messages to them.

use super::Grade;

/// The day of the ledger's last change; printed on every output beside the program's version.
pub const LEDGER_VERSION: &str = "2026-11-28";

/// How far a rule's source can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trust {
    /// Follows from the findings alone.
    Logic,
    /// Printed in a document that was read.
    Seen,
    /// Read in a document that quotes the source, or in one of low authority.
    SeenSecondHand,
    /// Our own arithmetic on what was seen.
    Derived,
    /// A convention without a source.
    CommonPractice,
}

impl Trust {
    /// The word that is printed.
    pub fn name(self) -> &'static str {
        match self {
            Trust::Logic => "logic",
            Trust::Seen => "seen",
            Trust::SeenSecondHand => "seen second-hand",
            Trust::Derived => "derived",
            Trust::CommonPractice => "common practice",
        }
    }
}

/// Who reads what a rule says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Audience {
    /// The examiner and the chart.
    Examiner,
    /// The family too.
    Family,
}

impl Audience {
    /// The word that is printed.
    pub fn name(self) -> &'static str {
        match self {
            Audience::Examiner => "examiner",
            Audience::Family => "family",
        }
    }
}

/// One rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rule {
    /// Stable id: of a remark, its message is `remark-ID`.
    pub id: &'static str,
    /// How pressing its remark is; `None` for a number that makes no remark.
    pub grade: Option<Grade>,
    /// What it means, in a few words.
    pub meaning: &'static str,
    /// Its formula or threshold, with units; empty when the meaning says it all.
    pub formula: &'static str,
    /// Where it comes from, with its edition; empty for logic and common practice.
    pub source: &'static str,
    /// The day on which it was last held against its source.
    pub checked: &'static str,
    /// How far the source can be trusted.
    pub trust: Trust,
    /// Who reads what it says.
    pub audience: Audience,
}

impl Rule {
    /// The source, or what stands in its place.
    pub fn ground(&self) -> &'static str {
        if self.source.is_empty() { self.trust.name() } else { self.source }
    }
}

/// The rule of an id that is known when this is compiled: `const { rule("bleeding") }` does not compile without its row.
pub const fn rule(id: &str) -> &'static Rule {
    let mut at = 0;
    while at < RULES.len() {
        if same(RULES[at].id, id) {
            return &RULES[at];
        }
        at += 1;
    }
    panic!("there is no such rule")
}

const fn same(a: &str, b: &str) -> bool {
    let (a, b) = (a.as_bytes(), b.as_bytes());
    if a.len() != b.len() {
        return false;
    }
    let mut at = 0;
    while at < a.len() {
        if a[at] != b[at] {
            return false;
        }
        at += 1;
    }
    true
}

/// The rule of an id, if there is one.
pub fn find(id: &str) -> Option<&'static Rule> {
    RULES.iter().find(|rule| rule.id == id)
}

const CHECKED: &str = "2026-11-25";
const MOVE: &str = "NHS movement guidance; RCOG 57 (2011)";
const SIGNS: &str = "CDC HEAR HER; WHO danger signs";
const CORD: &str = "RCOG 50 (2014)";
const RATES: &str = "WHO MCPC (2000)";
const SFH: &str = "INTERGROWTH-21st (Papageorghiou, BMJ 2016)";
const EFW: &str = "INTERGROWTH-21st (Stirnemann, UOG 2017)";
const HADLOCK: &str = "Hadlock, Radiology 1991, as transcribed";
const BETTER: &str = "Bettercare, Maternal Care";

const fn of(
    id: &'static str,
    grade: Grade,
    meaning: &'static str,
    formula: &'static str,
    source: &'static str,
    trust: Trust,
) -> Rule {
    Rule {
        id,
        grade: Some(grade),
        meaning,
        formula,
        source,
        checked: CHECKED,
        trust,
        audience: Audience::Examiner,
    }
}

const fn act_now(
    id: &'static str,
    meaning: &'static str,
    formula: &'static str,
    source: &'static str,
) -> Rule {
    of(id, Grade::ActNow, meaning, formula, source, Trust::Seen)
}

const fn practice(id: &'static str, grade: Grade, meaning: &'static str, formula: &'static str) -> Rule {
    of(id, grade, meaning, formula, "", Trust::CommonPractice)
}

const fn number(
    id: &'static str,
    meaning: &'static str,
    formula: &'static str,
    source: &'static str,
    trust: Trust,
) -> Rule {
    Rule { grade: None, ..of(id, Grade::LookAgain, meaning, formula, source, trust) }
}

const fn logic(id: &'static str, meaning: &'static str) -> Rule {
    of(id, Grade::CannotBoth, meaning, "", "", Trust::Logic)
}

/// Every rule, the most pressing first; inside a grade in the order of an examination.
pub const RULES: &[Rule] = &[
    // What cannot wait.
    act_now("movements-fewer", "she says the baby moves less", "at any rate heard", MOVE),
    act_now("movements-changed", "she says the movements have changed", "at any rate heard", MOVE),
    act_now("movements-none", "she says the baby does not move", "at any rate heard", MOVE),
    act_now("movements-not-felt-yet", "movements not felt yet", "at 24+0 or later, or weeks not known", MOVE),
    act_now("bleeding", "she reports bleeding", "", SIGNS),
    act_now("constant-pain", "she reports pain that stays", "", SIGNS),
    act_now("urgent-signs", "fits, chest pain, trouble breathing or changes in sight", "", SIGNS),
    practice("hard-tender-womb", Grade::ActNow, "the womb is both hard and tender", ""),
    practice("scar-pain", Grade::ActNow, "scar pain, and the womb was operated on or cut", ""),
    practice(
        "scar-pain-operations-not-known",
        Grade::ActNow,
        "scar pain, and it is not recorded whether the womb was operated on",
        "",
    ),
    act_now("waters-broken-not-head-down", "waters broken, and the baby is not head down", "", CORD),
    act_now("waters-broken-lie-not-known", "waters broken, and the lie is not known", "", CORD),
    act_now(
        "waters-broken-head-free",
        "waters broken, head down but free",
        "free, or 4/5 or more above the brim",
        CORD,
    ),
    practice(
        "heart-not-heard",
        Grade::ActNow,
        "looked for and not heard, or not made out",
        "from 24+0, with weeks not known, or when movements are not usual",
    ),
    act_now(
        "heart-rate-low",
        "a rate, or the mean of the counts, is low",
        "under 100 a minute, or a local limit",
        RATES,
    ),
    act_now(
        "heart-rate-high",
        "a rate, or the mean of the counts, is high",
        "over 180 a minute, or a local limit; from 20+0 or weeks not known",
        RATES,
    ),
    practice(
        "pulse-near-heart",
        Grade::ActNow,
        "her pulse is near the rate heard",
        "within 15 a minute of the mean, 15 included",
    ),
    // What cannot all be right.
    logic("reported-and-denied", "the same sign in both lists"),
    logic("head-and-bottom-in-one-place", "both poles at one place"),
    logic("back-against-lie", "a back that cannot lie so with these poles"),
    logic("lie-against-findings", "the lie that was written is not what follows"),
    logic("presentation-against-findings", "the presentation that was written is not what follows"),
    logic("position-against-findings", "the position that was written is not what follows"),
    logic("conclusions-against-one-another", "two written conclusions exclude each other"),
    logic("attitude-against-presentation", "the head held in two ways"),
    logic("engaged-and-crosswise", "a head deep in the pelvis in a crosswise or slanting lie"),
    logic("head-in-two-places", "fifths of a head that is felt elsewhere"),
    logic("fifths-on-a-breech", "fifths with the bottom down"),
    logic("engaged-on-a-breech", "engaged said of a bottom"),
    logic("fifths-against-descent", "fifths and the word for descent disagree"),
    logic("heart-not-heard-but-counted", "a rate of a heart that was not heard"),
    // Dates, tape, weight and heart.
    number("due-280-days", "the due date", "last period + 280 days", "StayWell", Trust::Seen),
    number("due-cycle", "a cycle that is not of 28 days", "+ (cycle - 28) days", "", Trust::CommonPractice),
    number(
        "due-calendar-rule",
        "the calendar rule (Naegele), shown beside and never used",
        "last period - 3 months + 7 days + 1 year",
        "Hesperian, Where There Is No Doctor (2011)",
        Trust::Seen,
    ),
    number(
        "tape-weeks-rule",
        "centimetres less exact weeks",
        "from 24+0; 2 cm or a local limit, itself within",
        "WHO antenatal care (2016)",
        Trust::Seen,
    ),
    number(
        "sfh-mean",
        "mean height of the fundus, cm, w exact weeks",
        "5.133374 + 0.1058353119 w^2 - 0.0231295 w^2 ln w; 16+0 to 42+6",
        SFH,
        Trust::Seen,
    ),
    number("sfh-sd", "its standard deviation, cm", "0.9922667 + 0.0258087 w", SFH, Trust::Seen),
    number("sfh-centile", "z and centile of a tape", "z = (cm - mean) / SD; 100 Phi(z)", SFH, Trust::Seen),
    number(
        "sfh-reaches",
        "the weeks whose mean a tape reaches",
        "last day with a mean not above it",
        SFH,
        Trust::Derived,
    ),
    number(
        "fundus-landmarks",
        "levels that handbooks print, before 20+0",
        "a band, give or take 2 weeks",
        "Bettercare; HEAT; Hesperian, A Book for Midwives (2011)",
        Trust::Seen,
    ),
    number(
        "weight-johnson",
        "weight by Johnson, g: a head that leads, 37+0 on",
        "155 (tape - n); n 13 and 12 not engaged, 12 and 11 engaged, 13 and 11 not known",
        "Jimma University (2016); calculator pages for n",
        Trust::SeenSecondHand,
    ),
    number(
        "weight-dare",
        "weight by Dare, g: 37+0 on",
        "tape x girth",
        "Dare, IJGO 1990, as quoted",
        Trust::SeenSecondHand,
    ),
    number(
        "weight-buchmann",
        "weight by Buchmann and Tlale, g: made for labour at term",
        "301 + 78 tape; in labour 40 cm or more: over 4000 g is possible",
        "Buchmann, SAMJ 2009",
        Trust::Seen,
    ),
    number(
        "weight-curve-intergrowth",
        "weights by scan, g, for reference only",
        "exp(M (1 + z S L)^(1/L)); 22+0 to 40+0",
        EFW,
        Trust::Seen,
    ),
    number(
        "weight-curve-hadlock",
        "median weight by scan, g, for reference only",
        "exp(0.578 + 0.332 w - 0.00354 w^2); 10+0 to 40+0",
        HADLOCK,
        Trust::SeenSecondHand,
    ),
    number(
        "weight-curve-hadlock-outer",
        "its outer centiles, as printed",
        "P10 and P90: the median x 0.83 and 1.17",
        HADLOCK,
        Trust::Derived,
    ),
    number(
        "heart-count-step",
        "what one count leaves open, beats a minute",
        "a step of 60 / seconds to either side",
        "arithmetic",
        Trust::Derived,
    ),
    practice(
        "dates-apart",
        Grade::LookAgain,
        "the last period and the settled date lie far apart",
        "more than 14 days",
    ),
    of(
        "size-against-dates",
        Grade::LookAgain,
        "the height of the womb against dates that no early scan settles",
        "more than 3 weeks apart below the navel, more than 4 at or above it; weeks without dates: before 24+0",
        BETTER,
        Trust::Seen,
    ),
    of(
        "tape-outside-weeks",
        Grade::LookAgain,
        "the tape is outside the weeks rule and between P10 and P90",
        "from 24+0; more than 2 cm or a local limit",
        "WHO antenatal care (2016)",
        Trust::Seen,
    ),
    of(
        "heart-recount",
        Grade::LookAgain,
        "a mean in the usual range, and counts that leave it open",
        "from 20+0 or weeks not known; bounds across 110 or 160",
        "NICHD (2008); WHO intermittent auscultation (2018)",
        Trust::Seen,
    ),
    of(
        "tape-below-p10",
        Grade::FollowGuidance,
        "the tape is below P10 of the curve",
        "16+0 to 42+6",
        "RCOG 31 (2014)",
        Trust::Seen,
    ),
    of(
        "tape-above-p90",
        Grade::FollowGuidance,
        "the tape is above P90 of the curve",
        "16+0 to 42+6",
        BETTER,
        Trust::Seen,
    ),
    of(
        "tape-four-weeks-behind",
        Grade::FollowGuidance,
        "the tape reaches the mean of 4 weeks before or less",
        "from 20+0",
        BETTER,
        Trust::Seen,
    ),
    of(
        "tape-static",
        Grade::FollowGuidance,
        "three equal tapes one after another",
        "from 18+0",
        BETTER,
        Trust::Seen,
    ),
    of(
        "tape-falling",
        Grade::FollowGuidance,
        "the tape is lower than two visits before",
        "from 18+0",
        BETTER,
        Trust::Seen,
    ),
    of(
        "tape-not-read",
        Grade::FollowGuidance,
        "a tape that is not fit to be read",
        "large build, fibroids, much water, several babies, lying across or slantwise",
        "RCOG 31 (2014); INTERGROWTH-21st (2016)",
        Trust::Seen,
    ),
    of(
        "heart-outside-usual",
        Grade::FollowGuidance,
        "the rate is outside the usual range, and could wait",
        "from 20+0 or weeks not known; under 110 or over 160 a minute",
        "NICHD (2008); WHO intermittent auscultation (2018)",
        Trust::Seen,
    ),
    practice("heart-irregular", Grade::FollowGuidance, "an irregular rhythm", ""),
    // Agreement.
    of(
        "limbs-on-the-side-of-the-back",
        Grade::LookAgain,
        "limbs felt only on the side of the back",
        "back at a side or to the front of it; limbs between the ends of the womb",
        "",
        Trust::CommonPractice,
    ),
    of(
        "heart-far-from-the-back",
        Grade::LookAgain,
        "the heart is heard on the other side than the back",
        "back at a side or to the front of it, its turn felt; not a face, not by Doppler",
        "BETTER; NHSGGC (Martis 2010)",
        Trust::Seen,
    ),
    of(
        "heart-height-against-the-end-that-is-down",
        Grade::LookAgain,
        "the heart is heard too high for the head down, or too low for the bottom down",
        "head down: above the navel; bottom down: below it; not a face, not by Doppler",
        "HESP-MID; HESP-WTND",
        Trust::Seen,
    ),
    of(
        "prominence-on-the-side-of-the-back",
        Grade::LookAgain,
        "the head stands out on the side of the back, and is not said to be bent back",
        "",
        "",
        Trust::CommonPractice,
    ),
    practice(
        "twins-on-one-side",
        Grade::LookAgain,
        "what was found of both babies lies on one side of her",
        "head or bottom at a side; else the back; else the heart",
    ),
    practice(
        "heart-over-the-other-baby",
        Grade::LookAgain,
        "of two babies, the heart of one is heard on the side of the other",
        "against the side of its head or bottom; else of its back",
    ),
    practice(
        "dip-with-a-back-in-front",
        Grade::LookAgain,
        "a dip at the navel, and a back that lies to the front",
        "",
    ),
    of(
        "findings-fit-no-position",
        Grade::LookAgain,
        "the smallest set of findings that agrees with no position",
        "every position with a code, slanting, and crosswise to ribs or feet",
        "the palpation map of this program",
        Trust::Derived,
    ),
    practice(
        "fifths-may-read-low",
        Grade::LookAgain,
        "few fifths of a face, a brow, or a head whose back lies behind",
        "2/5 or less",
    ),
    practice(
        "too-early-for-hands",
        Grade::LookAgain,
        "a lie, a position or fifths felt by hand",
        "before 24+0",
    ),
    // What another look or local guidance settles.
    of(
        "presentation-early",
        Grade::LookAgain,
        "how the baby lies, felt by hand early, holds for the day only",
        "before 36+0",
        "prevalence of breech by weeks (obgynkey; Nassar 2006)",
        Trust::Seen,
    ),
    of(
        "presentation-not-known",
        Grade::LookAgain,
        "which end lies down is not known, or unsure",
        "from 36+0",
        "Nassar 2006",
        Trust::Seen,
    ),
    practice("womb-hard-or-tender", Grade::LookAgain, "the womb is hard or tender, not both", ""),
    practice(
        "scar-of-unknown-operation",
        Grade::LookAgain,
        "a scar on the skin, and it is not recorded whether the womb was operated on",
        "",
    ),
    of(
        "not-head-down",
        Grade::FollowGuidance,
        "the baby is not head down",
        "from 36+0",
        "RCOG breech information (2017)",
        Trust::Seen,
    ),
    of(
        "crosswise-at-term",
        Grade::FollowGuidance,
        "a crosswise or slanting lie",
        "from 37+0",
        CORD,
        Trust::Seen,
    ),
    practice("womb-operated-on", Grade::FollowGuidance, "caesarean, myomectomy or a cut of the womb", ""),
    practice("head-free-at-term", Grade::FollowGuidance, "a head that is free", "from 37+0, 5/5 or free"),
    practice("placenta-low", Grade::FollowGuidance, "a low placenta", ""),
    of(
        "signs-to-weigh",
        Grade::FollowGuidance,
        "headache, fever or swelling: urgent when severe",
        "fever: 38.0 degrees C or more",
        SIGNS,
        Trust::Seen,
    ),
    practice("waters-broken", Grade::FollowGuidance, "waters broken, head down and not free", ""),
    practice("tightenings-before-term", Grade::FollowGuidance, "she reports tightenings", "before 37+0"),
    practice("itching", Grade::FollowGuidance, "she reports itching", ""),
    // Growth over visits.
    of(
        "lie-changing",
        Grade::FollowGuidance,
        "the lie, or the end that is down, is another than at the visit before",
        "one baby; the later visit at 37+0 or after",
        CORD,
        Trust::Seen,
    ),
    practice(
        "visits-differ-in-babies",
        Grade::LookAgain,
        "visits that tell of different numbers of babies; their tapes are not read",
        "",
    ),
];
