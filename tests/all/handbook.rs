//! Visits written from handbooks, not from the model, with the answer the handbook gives. Each names its source as the
//! tables in `tests/published/` do; no word is copied.

use crate::shared::read;
use handspan::clinic::Thresholds;
use handspan::exam::Lie;
use handspan::reckon::{Grade, Remark, heart_rate, reckon};

/// What a handbook concludes.
#[derive(Default)]
struct Answer {
    lie: Option<Lie>,
    /// A position code, when the handbook names one.
    position: Option<&'static str>,
    engaged: Option<bool>,
    /// Whether the tape is within the rule of weeks.
    within: Option<bool>,
    /// The steady rates that the counts leave open.
    rates: Option<(f64, f64)>,
    /// Remarks that must stand.
    remarks: &'static [&'static str],
}

const LENGTHWISE: Answer = Answer {
    lie: Some(Lie::Longitudinal),
    position: None,
    engaged: None,
    within: None,
    rates: None,
    remarks: &[],
};
const ACROSS: Answer = Answer { lie: Some(Lie::Transverse), ..LENGTHWISE };

/// Source, findings, answer.
fn visits() -> Vec<(&'static str, &'static str, Answer)> {
    let position = |code| Answer { position: Some(code), ..LENGTHWISE };
    let remark = |remarks| Answer { remarks, ..LENGTHWISE };
    vec![
        (
            "HESP-MID: hard round end low, soft end high, heart below the navel",
            "weeks=\"37+0\"\n[baby]\nhead=\"above pubic bone\"\nbreech=\"fundus\"\nheart=\"left, below navel\"\n",
            LENGTHWISE,
        ),
        (
            "HESP-MID: hard round end high, heart at the navel or above",
            "weeks=\"37+0\"\n[baby]\nhead=\"fundus\"\nbreech=\"above pubic bone\"\nheart=\"left, above navel\"\n",
            remark(&["not-head-down"]),
        ),
        (
            "HESP-MID: breech heard at the navel",
            "weeks=\"37+0\"\n[baby]\nhead=\"fundus\"\nheart=\"right, at navel\"\n",
            remark(&["not-head-down"]),
        ),
        (
            "HESP-MID: heart above the navel with the head said to be down: check again",
            "weeks=\"37+0\"\n[baby]\nhead=\"above pubic bone\"\nheart=\"left, above navel\"\n",
            remark(&["heart-height-against-the-end-that-is-down"]),
        ),
        (
            "HESP-WTND: bottom down, heart heard low: check again",
            "weeks=\"36+0\"\n[baby]\nhead=\"fundus\"\nheart=\"left, below navel\"\n",
            remark(&["heart-height-against-the-end-that-is-down"]),
        ),
        (
            "uc-chased: LOA heard in the left lower quarter",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"left front\"\nheart=\"left, below navel\"\n",
            position("LOA"),
        ),
        (
            "uc-chased: ROA heard in the right lower quarter",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"right front\"\nheart=\"right, below navel\"\n",
            position("ROA"),
        ),
        (
            "WHO-MCPC: back behind, heard in the flank",
            "weeks=\"39+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"left, towards her spine\"\nheart=\"left flank, below navel\"\n",
            position("LOP"),
        ),
        (
            "HESP-MID: back behind, heard at a side or in the middle",
            "weeks=\"39+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"towards her spine\"\nheart=\"middle, below navel\"\n",
            position("OP"),
        ),
        (
            "common practice: back behind, limbs felt in front, to both sides",
            "weeks=\"39+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"towards her spine\"\nlimbs=[\"left, at navel\",\"right, at navel\"]\ndip-at-navel=\"yes\"\n",
            position("OP"),
        ),
        (
            "positions table: LOT, back square to her left",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"left lateral\"\nlimbs=\"right, at navel\"\n",
            position("LOT"),
        ),
        (
            "positions table: ROT, back square to her right",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"right lateral\"\nlimbs=\"left, at navel\"\n",
            position("ROT"),
        ),
        (
            "common practice: back on one side, limbs on the other",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"right front\"\nlimbs=\"left, above navel\"\n",
            position("ROA"),
        ),
        (
            "BETTER: heart over the back; heard far from it, feel again",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"right front\"\nheart=\"left, below navel\"\n",
            remark(&["heart-far-from-the-back"]),
        ),
        (
            "NHSGGC: heard over the back of the baby",
            "weeks=\"36+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"left lateral\"\nheart=\"left, below navel\"\n",
            position("LOT"),
        ),
        (
            "BETTER 8A: 5/5, the whole head above the brim",
            "weeks=\"36+0\"\n[baby]\nhead=\"above pubic bone\"\nhead-above-brim=\"5/5\"\n",
            Answer { engaged: Some(false), ..LENGTHWISE },
        ),
        (
            "BETTER 8A: 4/5, can be lifted out",
            "weeks=\"36+0\"\n[baby]\nhead=\"above pubic bone\"\nhead-above-brim=\"4/5\"\n",
            Answer { engaged: Some(false), ..LENGTHWISE },
        ),
        (
            "BETTER 8A: 3/5, cannot be lifted out, not engaged",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nhead-above-brim=\"3/5\"\n",
            Answer { engaged: Some(false), ..LENGTHWISE },
        ),
        (
            "BETTER 8A; FPNB: 2/5, engaged",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nhead-above-brim=\"2/5\"\n",
            Answer { engaged: Some(true), ..LENGTHWISE },
        ),
        (
            "BETTER: 1/5, only the tip felt, engaged",
            "weeks=\"39+0\"\n[baby]\nhead=\"above pubic bone\"\nhead-above-brim=\"1/5\"\n",
            Answer { engaged: Some(true), ..LENGTHWISE },
        ),
        (
            "CRICHTON: engaged is judged from the abdomen",
            "weeks=\"40+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"left front\"\nhead-above-brim=\"2/5\"\n",
            Answer { engaged: Some(true), position: Some("LOA"), ..LENGTHWISE },
        ),
        (
            "GLOWM: a head in one flank, the bottom in the other, the brim empty",
            "weeks=\"38+0\"\n[baby]\nhead=\"left flank\"\nbreech=\"right flank\"\n",
            Answer { remarks: &["crosswise-at-term"], ..ACROSS },
        ),
        (
            "RCOG-50: crosswise from 37+0, follow guidance on the cord",
            "weeks=\"37+0\"\n[baby]\nhead=\"right flank\"\nbreech=\"left flank\"\n",
            Answer { remarks: &["crosswise-at-term"], ..ACROSS },
        ),
        (
            "RCOG-50: slanting from 37+0, the same",
            "weeks=\"37+0\"\n[baby]\nhead=\"right iliac fossa\"\n",
            Answer { lie: Some(Lie::Oblique), remarks: &["crosswise-at-term"], ..LENGTHWISE },
        ),
        (
            "wiki.voka: crosswise heard near the navel, off the midline",
            "weeks=\"36+0\"\n[baby]\nhead=\"left flank\"\nbreech=\"right flank\"\nback=\"front\"\nheart=\"left, at navel\"\n",
            ACROSS,
        ),
        (
            "RCOG-50: waters broken, crosswise: at once",
            "weeks=\"37+0\"\n[mother]\nreports=\"waters broken\"\n[baby]\nhead=\"right flank\"\nbreech=\"left flank\"\n",
            Answer { remarks: &["waters-broken-not-head-down"], ..ACROSS },
        ),
        (
            "nursingadda: face, heard through the chest, on the side of the limbs",
            "weeks=\"39+0\"\n[baby]\nhead=\"above pubic bone\"\nattitude=\"face (scan)\"\nback=\"right, towards her spine\"\nheart=\"left, below navel\"\n",
            position("LMA"),
        ),
        (
            "common practice: a head that stands out on the side of the back may be bent back; feel again",
            "weeks=\"39+0\"\n[baby]\nhead=\"above pubic bone\"\nback=\"left front\"\nprominence=\"back side\"\n",
            remark(&["prominence-on-the-side-of-the-back"]),
        ),
        (
            "RCOG-BREECH: bottom down from 36 weeks: what follows is talked over",
            "weeks=\"36+0\"\n[baby]\nhead=\"fundus\"\nbreech=\"above pubic bone\"\nback=\"left front\"\n",
            Answer { position: Some("LSA"), remarks: &["not-head-down"], ..LENGTHWISE },
        ),
        (
            "examzify: LSA heard in the left upper quarter",
            "weeks=\"36+0\"\n[baby]\nhead=\"fundus\"\nback=\"left front\"\nheart=\"left, above navel\"\n",
            position("LSA"),
        ),
        (
            "NASSAR: hands miss some; an end that is not settled is scanned",
            "weeks=\"36+0\"\n[baby]\nhead=\"could not tell (thick wall)\"\nback=\"left\"\n",
            remark(&["presentation-not-known"]),
        ),
        (
            // From 36 weeks the rule of weeks fails by itself; below P10 the curve still speaks.
            "BETTER: from 36 weeks the head may sink and the tape fall; a tape below P10 is not silenced by that",
            "weeks=\"39+0\"\n[mother]\nfundal-height=\"34.3 cm\"\n[baby]\nhead=\"above pubic bone\"\nhead-above-brim=\"1/5\"\n",
            remark(&["tape-below-p10"]),
        ),
        (
            "BETTER 2A-F: 31 weeks by dates, a tape of 25 cm: four weeks behind or more",
            "weeks=\"31+0\"\n[mother]\nfundal-height=\"25 cm\"\n[baby]\nhead=\"above pubic bone\"\n",
            remark(&["tape-four-weeks-behind"]),
        ),
        (
            "HESP-MID: 24 weeks, 26 cm: as it should be",
            "weeks=\"24+0\"\n[mother]\nfundal-height=\"26 cm\"\n[baby]\nhead=\"above pubic bone\"\n",
            Answer { within: Some(true), ..LENGTHWISE },
        ),
        (
            "HESP-MID: 24 weeks, 21 cm: outside",
            "weeks=\"24+0\"\n[mother]\nfundal-height=\"21 cm\"\n[baby]\nhead=\"above pubic bone\"\n",
            Answer { within: Some(false), remarks: &["tape-below-p10"], ..LENGTHWISE },
        ),
        (
            "HEAT: 28 weeks, 26 to 30 cm acceptable",
            "weeks=\"28+0\"\n[mother]\nfundal-height=\"30 cm\"\n[baby]\nhead=\"above pubic bone\"\n",
            Answer { within: Some(true), ..LENGTHWISE },
        ),
        (
            "BETTER: three equal tapes: growth may have stopped",
            "weeks=\"33+0\"\n[mother]\nfundal-height=\"29 cm\"\nearlier-tapes=[\"29+0 29 cm\",\"31+0 29 cm\"]\n[baby]\nhead=\"above pubic bone\"\n",
            Answer { within: Some(false), remarks: &["tape-static"], ..LENGTHWISE },
        ),
        (
            "RCOG-31: large fibroids: a scan in place of a tape",
            "weeks=\"32+0\"\n[mother]\nfundal-height=\"36 cm\"\nlumps=\"left, above navel\"\n[baby]\nhead=\"above pubic bone\"\n",
            remark(&["tape-not-read"]),
        ),
        (
            "NICHD08: a baseline of 160 is usual",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nheart=\"left, below navel\"\nheart-counts=\"160 in 60 s\"\n",
            Answer { rates: Some((159.0, 161.0)), ..LENGTHWISE },
        ),
        (
            "NICHD08: over 160",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nheart=\"left, below navel\"\nheart-counts=\"170 in 60 s\"\n",
            Answer { rates: Some((169.0, 171.0)), remarks: &["heart-outside-usual"], ..LENGTHWISE },
        ),
        (
            "WHO-MCPC: over 180: danger",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nheart=\"left, below navel\"\nheart-counts=\"185 in 60 s\"\n",
            Answer { rates: Some((184.0, 186.0)), remarks: &["heart-rate-high"], ..LENGTHWISE },
        ),
        (
            "HESP-MID: under 100: danger",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nheart=\"left, below navel\"\nheart-counts=\"92 in 60 s\"\n",
            Answer { rates: Some((91.0, 93.0)), remarks: &["heart-rate-low"], ..LENGTHWISE },
        ),
        (
            "BETTER; HESP-MID: feel her pulse at the same time: the two alike",
            "weeks=\"38+0\"\n[mother]\npulse=120\n[baby]\nhead=\"above pubic bone\"\nheart=\"left, below navel\"\nheart-counts=\"122 in 60 s\"\n",
            remark(&["pulse-near-heart"]),
        ),
        (
            "derived: 14 beats in 6 s leave 130 to 150 open",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nheart=\"left, below navel\"\nheart-counts=\"14 in 6 s\"\n",
            Answer { rates: Some((130.0, 150.0)), ..LENGTHWISE },
        ),
        (
            "derived: 36 beats in 15 s leave 140 to 148 open",
            "weeks=\"38+0\"\n[baby]\nhead=\"above pubic bone\"\nheart=\"left, below navel\"\nheart-counts=\"36 in 15 s\"\n",
            Answer { rates: Some((140.0, 148.0)), ..LENGTHWISE },
        ),
    ]
}

#[test]
fn the_answers_are_the_handbooks() {
    let visits = visits();
    assert!(visits.len() >= 45);
    for (source, text, answer) in visits {
        let found = reckon(&read(text), &Thresholds::default());
        let conclusion = &found.conclusions[0];
        assert_eq!(conclusion.lie, answer.lie, "{source}");
        if let Some(position) = answer.position {
            assert_eq!(conclusion.position.map(|p| p.code()).as_deref(), Some(position), "{source}");
            assert!(found.agreement[0].fits.iter().any(|p| p.code() == position), "{source}");
        }
        if answer.engaged.is_some() {
            assert_eq!(conclusion.engaged, answer.engaged, "{source}");
        }
        if answer.within.is_some() {
            let rule = found.tape.as_ref().and_then(|tape| tape.weeks_rule);
            assert_eq!(rule.map(|rule| rule.within()), answer.within, "{source}");
        }
        if let Some((low, high)) = answer.rates {
            let rate = heart_rate(&read(text).babies[0]).expect("a rate");
            assert!((rate.low - low).abs() < 0.01 && (rate.high - high).abs() < 0.01, "{source}: {rate:?}");
        }
        // What cannot wait stands where the handbook says so, and nowhere else.
        let urgent = |r: &&Remark| r.grade == Grade::ActNow && !answer.remarks.contains(&r.id);
        assert!(found.remarks.iter().find(urgent).is_none(), "{source}");
        let ids: Vec<&str> = found.remarks.iter().map(|remark| remark.id).collect();
        for id in answer.remarks {
            assert!(ids.contains(id), "{source}: {ids:?}");
        }
        // Where the handbook sees nothing amiss in how the findings go together, neither do we.
        let amiss = ["limbs-", "heart-far", "heart-height", "dip-", "findings-fit", "prominence-"];
        for id in ids.iter().filter(|id| amiss.iter().any(|start| id.starts_with(start))) {
            assert!(answer.remarks.contains(id), "{source}: {id}");
        }
        assert!(found.remarks.iter().all(|r| r.grade != Grade::CannotBoth), "{source}");
    }
}
