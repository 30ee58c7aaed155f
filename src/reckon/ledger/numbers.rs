//! Dates, tape, weight and heart: numbers that make no remark. In: nothing. Out: rows of the ledger.

use super::{EFW, HADLOCK, Rule, SFH, Trust, number};

pub(super) const RULES: &[Rule] = &[
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
];
