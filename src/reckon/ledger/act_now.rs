//! What cannot wait. In: nothing. Out: rows of the ledger.

use super::{
    CORD, CORD_FELT, CUT, LABOUR, MOVE, PRAEVIA, PRESSURE, PRESSURE_AND_SIGNS, PROM, PULSES, RATES, Rule,
    SEPSIS, SIGNS, Trust, act_now, house, of, practice,
};
use crate::reckon::Grade;

const ACT: Grade = Grade::ActNow;

pub(super) const RULES: &[Rule] = &[
    // The words of the note, and what was found by the vagina.
    house(
        "note-mentions",
        ACT,
        "words of the note that could be an alarm, neither recorded nor said not to be so",
        "not under a denial, of an earlier time or of advice; an earlier cut or rupture of the womb always",
        "",
    ),
    of(
        "cord-felt",
        ACT,
        "the cord is felt in the vagina, or seen at it",
        "always",
        CORD_FELT,
        Trust::SeenSecondHand,
    ),
    practice(
        "part-by-vagina-in-labour",
        ACT,
        "brow, face, shoulder, hand or foot found by the vagina",
        "in labour, with regular tightenings, or waters broken",
    ),
    practice(
        "head-overlaps-in-labour",
        ACT,
        "the head overlaps the pubic bone, and she is in labour",
        "in labour, or with regular tightenings",
    ),
    // What she says.
    act_now(
        "movements-fewer",
        "she says the baby moves less",
        "from 24+0 or weeks not known; at any rate heard",
        MOVE,
    ),
    act_now(
        "movements-changed",
        "she says the movements have changed",
        "from 24+0 or weeks not known; at any rate heard",
        MOVE,
    ),
    act_now("movements-none", "she says the baby does not move", "at any week, at any rate heard", MOVE),
    act_now("movements-not-felt-yet", "movements not felt yet", "at 24+0 or later, or weeks not known", MOVE),
    act_now("bleeding", "she reports bleeding", "no vaginal examination until the placenta is known", SIGNS),
    of(
        "placenta-low-with-signs",
        ACT,
        "a low placenta with tightenings, waters broken or bleeding",
        "not for practice tightenings",
        PRAEVIA,
        Trust::SeenSecondHand,
    ),
    act_now("constant-pain", "she reports pain that stays", "", SIGNS),
    act_now(
        "urgent-signs",
        "fits, chest pain, trouble breathing, changes in sight, a swollen calf, a collapse, cold and clammy",
        "",
        SIGNS,
    ),
    of(
        "pressure-severe",
        ACT,
        "blood pressure, either number",
        "160 or 110 and more, at any week",
        PRESSURE,
        Trust::Seen,
    ),
    of(
        "pressure-with-signs",
        ACT,
        "blood pressure, either number, with protein of 1+ or a sign",
        "140 to 159 or 90 to 109; from 20+0 or weeks not known",
        PRESSURE_AND_SIGNS,
        Trust::House,
    ),
    of(
        "severe-headache-or-rib-pain",
        ACT,
        "a headache that is severe or lasts, or pain under the ribs",
        "from 20+0 or weeks not known",
        SIGNS,
        Trust::Seen,
    ),
    house(
        "two-signs-of-pressure",
        ACT,
        "two of headache, vomiting, swelling of face or hands",
        "from 20+0 or weeks not known",
        "",
    ),
    house(
        "fever-with-signs",
        ACT,
        "fever with waters broken, foul water, a tender womb, pain in the loin, a fast pulse, fast breathing or a fast heart",
        "38.0 degrees C or reported; pulse 100, breathing 21 and more; heart over 160",
        SEPSIS,
    ),
    house("pulse-very-fast", ACT, "her pulse alone", "over 130 a minute", PULSES),
    of("breathing-very-fast", ACT, "her breathing alone", "25 a minute and more", SEPSIS, Trust::Seen),
    act_now("thoughts-of-self-harm", "thoughts of harming herself", "for whoever examined alone", SIGNS),
    // The womb.
    practice(
        "womb-board-like",
        ACT,
        "the womb is hard as a board, or does not soften between contractions",
        "",
    ),
    practice("hard-tender-womb", ACT, "the womb is both hard or tense and tender", ""),
    of(
        "contraction-too-long",
        ACT,
        "how long a contraction lasts",
        "over 2 min",
        "ACOG definition of hypertonus, as quoted",
        Trust::SeenSecondHand,
    ),
    of(
        "contractions-too-many",
        ACT,
        "contractions in ten minutes",
        "more than 5",
        "NICHD (2008) definition of tachysystole, as quoted",
        Trust::SeenSecondHand,
    ),
    of(
        "womb-cut-in-labour",
        ACT,
        "a womb cut vertically, in a T or a J, or ruptured before: with tightenings, pain or labour",
        "not for practice tightenings",
        CUT,
        Trust::Seen,
    ),
    practice(
        "womb-cut-not-known-in-labour",
        ACT,
        "a womb operated on, the cut not known: with tightenings or labour",
        "not for practice tightenings",
    ),
    practice("scar-pain", ACT, "scar pain or a tender scar, and the womb was operated on or cut", ""),
    practice(
        "scar-pain-operations-not-known",
        ACT,
        "scar pain or a tender scar, and it is not recorded whether the womb was operated on",
        "",
    ),
    practice(
        "regular-tightenings-before-term",
        ACT,
        "tightenings that are regular or painful, or labour",
        "before 37+0 or weeks not known; two or more in ten minutes are regular",
    ),
    // The waters.
    act_now("crosswise-in-labour", "a transverse or oblique lie, and she is in labour", "at any week", CORD),
    act_now(
        "unstable-lie-in-labour",
        "a lie that keeps changing, and she is in labour or her waters have broken",
        "at any week; transverse or oblique today, the rules of that",
        CORD,
    ),
    act_now("waters-broken-not-head-down", "waters broken, and the baby is not head down", "", CORD),
    act_now("waters-broken-lie-not-known", "waters broken, and the lie is not known", "", CORD),
    act_now(
        "waters-broken-head-free",
        "waters broken, head down but free",
        "free, or 4/5 or more above the brim",
        CORD,
    ),
    act_now("waters-broken-before-term", "waters broken", "before 37+0 or weeks not known", SIGNS),
    of(
        "water-not-clear",
        ACT,
        "water that has come is green, bloody, pink or foul",
        "at any week",
        PROM,
        Trust::Seen,
    ),
    // The heart.
    house(
        "heart-not-heard",
        ACT,
        "looked for and not heard, or not made out",
        "by Doppler, or it is not known by what, from 20+0; by horn or fetoscope from 24+0; weeks not known; movements \
         fewer, changed or gone at any week; before 16+0 nothing is made of it, because no instrument is sure to find it",
        "",
    )
    .no_page(),
    practice("twin-heart-not-heard", ACT, "one heart of two was heard, the other not", "at any week").no_page(),
    practice(
        "heart-heard-before",
        ACT,
        "a heart that was heard at an earlier visit was not heard now",
        "at any week",
    )
    .no_page(),
    practice("heart-is-her-pulse", ACT, "the heart heard and her pulse run together", "").no_page(),
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
    house(
        "heart-outside-usual-with-signs",
        ACT,
        "the rate is outside the usual range, with another sign",
        "under 110 or over 160 from 24+0 or weeks not known; fever, bleeding, waters broken, fewer movements, labour",
        LABOUR,
    ),
    house(
        "heart-outside-usual-still",
        ACT,
        "the rate is outside the usual range over a full minute, her pulse felt",
        "under 110 or over 160 from 24+0 or weeks not known; a count of 60 s",
        LABOUR,
    ),
    of(
        "heart-slows-after-contractions",
        ACT,
        "the heart slows after contractions",
        "at any week",
        "NICE intermittent auscultation; WHO (2018)",
        Trust::SeenSecondHand,
    ),
    practice(
        "pulse-near-heart",
        ACT,
        "her pulse is near the rate heard, and they were not told apart",
        "within 15 a minute of the mean, 15 included",
    ),
];
