//! What local guidance settles. In: nothing. Out: rows of the ledger.

use super::{BETTER, CORD, CUT, PRAEVIA, Rule, SIGNS, Trust, house, of, practice};
use crate::reckon::Grade;

const GUIDE: Grade = Grade::FollowGuidance;

pub(super) const RULES: &[Rule] = &[
    of(
        "tape-below-p10",
        GUIDE,
        "the tape is below P10 of the curve",
        "24+0 to 42+6",
        "RCOG 31 (2014)",
        Trust::Seen,
    ),
    of("tape-above-p90", GUIDE, "the tape is above P90 of the curve", "24+0 to 42+6", BETTER, Trust::Seen),
    of(
        "tape-four-weeks-behind",
        GUIDE,
        "the tape reaches the mean of 4 weeks before or less",
        "from 24+0",
        BETTER,
        Trust::Seen,
    ),
    house(
        "tape-through-centiles",
        GUIDE,
        "three tapes, each lower against the curve than the last",
        "each 14 days or more after the last; 1.0 in z in all",
        "RCOG 31 (2014), no number given",
    ),
    of(
        "tape-static",
        GUIDE,
        "three equal tapes one after another",
        "from 18+0; each 14 days or more after the last",
        BETTER,
        Trust::Seen,
    ),
    of(
        "tape-falling",
        GUIDE,
        "the tape is lower than two visits before",
        "from 18+0; each 14 days or more after the last",
        BETTER,
        Trust::Seen,
    ),
    of(
        "tape-not-read",
        GUIDE,
        "a tape that is not fit to be read",
        "large build, fibroids, much water, several babies, lying across or slantwise",
        "RCOG 31 (2014); INTERGROWTH-21st (2016)",
        Trust::Seen,
    ),
    practice("heart-irregular", GUIDE, "an irregular rhythm", ""),
    of(
        "not-head-down",
        GUIDE,
        "the baby is not head down",
        "from 36+0",
        "RCOG breech information (2017)",
        Trust::Seen,
    ),
    of("crosswise-at-term", GUIDE, "a crosswise or slanting lie", "from 37+0", CORD, Trust::Seen),
    of(
        "womb-operated-on",
        GUIDE,
        "a womb cut up and down, in a T or a J, torn before, or operated on and the cut not known",
        "not once a low cut across is recorded",
        CUT,
        Trust::Seen,
    ),
    practice(
        "head-free-at-term",
        GUIDE,
        "a head that is free",
        "from 37+0, 5/5 or free; not when she has borne before and is not in labour",
    ),
    of(
        "placenta-low",
        GUIDE,
        "a low placenta",
        "before 36+0; the repeat scan at 32+0",
        PRAEVIA,
        Trust::SeenSecondHand,
    ),
    of("signs-to-weigh", GUIDE, "headache, vomiting or swelling early", "before 20+0", SIGNS, Trust::Seen),
    house(
        "twin-first-not-head-down",
        GUIDE,
        "the first of two babies is not head down",
        "from 32+0",
        "NICE NG137",
    ),
    practice("after-41-weeks", GUIDE, "41 weeks have passed", "41+0 to 41+6"),
    practice("itching", GUIDE, "she reports itching", ""),
    of(
        "lie-changing",
        GUIDE,
        "the lie, or the end that is down, is another than at the visit before",
        "one baby; the later visit at 37+0 or after",
        CORD,
        Trust::Seen,
    ),
];
