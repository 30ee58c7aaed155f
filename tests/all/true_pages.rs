//! No label of a picture and no sentence of the family page names a finding that the visit lacks, or denies one that it has:
//! over visits of every kind, of one baby.

use super::labels::options;
use super::shared::Dice;
use super::true_words::{has, visit};
use super::words::write;
use handspan::body::pose;
use handspan::clinic::Clinic;
use handspan::exam::{Exam, Finding, KnownBy};
use handspan::figure::{self, Labels, View};
use handspan::fonts::Fonts;
use handspan::reckon::{Grade, Reckoning, reckon};
use handspan::sheet::family::{self, Asked};
use handspan::words::Words;

/// What a sentence says, and what the visit must have for it.
type Rests = fn(&Exam) -> bool;

fn lies(exam: &Exam) -> bool {
    // A back towards her ribs or feet lies across.
    has(exam, 0, &["head", "breech", "lie", "presentation", "position", "head-above-brim", "back"])
}

/// Whether hands felt for the baby, or tried; fingers in the vagina are hands.
fn by_hand(exam: &Exam) -> bool {
    fn tried<T>(finding: &Finding<T>) -> bool {
        match finding {
            Finding::Found(found) => matches!(found.known_by, KnownBy::Hands | KnownBy::VaginalExamination),
            Finding::Absent | Finding::CouldNotTell { .. } => true,
            Finding::NotExamined | Finding::NotTried => false,
        }
    }
    fn by_fingers<T>(finding: &Finding<T>) -> bool {
        matches!(finding, Finding::Found(found) if found.known_by == KnownBy::VaginalExamination)
    }
    let baby = &exam.babies[0];
    tried(&baby.head)
        || tried(&baby.breech)
        || tried(&baby.back)
        || tried(&baby.limbs)
        || tried(&baby.head_above_brim)
        || tried(&baby.descent)
        || tried(&baby.prominence)
        || by_fingers(&baby.attitude)
        || by_fingers(&baby.legs)
        || by_fingers(&baby.lie)
        || by_fingers(&baby.presentation)
        || by_fingers(&baby.position)
}

/// One baby, and nothing that cannot both be right: then no page is made, and the picture follows the findings.
fn whole(exam: &Exam, reckoning: &Reckoning) -> bool {
    exam.babies.len() == 1 && reckoning.remarks.iter().all(|remark| remark.grade != Grade::CannotBoth)
}

fn of_scan(exam: &Exam) -> bool {
    exam.read.iter().any(|(key, value)| key.contains("scan") || value.contains("scan"))
}

const FAMILY: [(&str, Rests); 23] = [
    ("is lying", lies),
    ("is probably lying", lies),
    ("Hands could not tell how your baby lies", by_hand),
    ("How your baby lies was not felt for", |exam| !by_hand(exam)),
    ("The back was not felt for", |exam| exam.babies[0].back.value().is_none()),
    ("Hands could not tell where the back is", |exam| has(exam, 0, &["back"])),
    ("The back is to", |exam| has(exam, 0, &["back", "position"])),
    ("The back is towards", |exam| has(exam, 0, &["back", "position"])),
    ("The head is on your", |exam| has(exam, 0, &["head", "breech", "position"])),
    ("The head is low", |exam| has(exam, 0, &["head", "breech", "position"])),
    ("The head is high", |exam| has(exam, 0, &["head", "breech", "position"])),
    ("your pelvis", |exam| has(exam, 0, &["head-above-brim", "descent"])),
    ("midwife felt", by_hand),
    ("Hands and a scan found", |exam| by_hand(exam) && of_scan(exam)),
    ("A scan showed", of_scan),
    ("heard the heartbeat", |exam| exam.babies[0].heart.value().is_some()),
    ("The heartbeat was heard", |exam| exam.babies[0].heart.value().is_some()),
    ("Heard: heartbeat", |exam| exam.babies[0].heart.value().is_some()),
    ("Felt by hand: head", |exam| has(exam, 0, &["head", "head-above-brim"])),
    ("You may notice the bottom", |exam| has(exam, 0, &["breech"])),
    ("You may notice the legs", |exam| has(exam, 0, &["limbs"])),
    ("Heartbeats in one minute", |exam| has(exam, 0, &["heart-rate", "heart-counts"])),
    ("to the top of your womb:", |exam| has(exam, 0, &["mother.fundal-height"])),
];

#[test]
fn the_family_page_says_only_what_the_visit_holds() {
    let words = Words::load("en").expect("English");
    let mut dice = Dice::new(84_626);
    let mut held = [0; FAMILY.len()];
    for round in 0..14_000 {
        let exam = visit(&mut dice);
        let reckoning = reckon(&exam, &Default::default());
        if !whole(&exam, &reckoning) {
            continue;
        }
        let asked = Asked { invite_listening: false, numbers: true };
        let content = family::content(&exam, &reckoning, &Clinic::default(), asked, &words).expect("words");
        let found = ["family-found", "family-heart", "family-numbers", "family-sure"];
        let blocks = found.iter().filter_map(|name| content.blocks.get(*name)).flatten();
        let text = blocks.map(|block| block.text.as_str()).collect::<Vec<_>>().join(" ");
        for (at, (claim, rests)) in FAMILY.iter().enumerate() {
            if text.contains(claim) {
                held[at] += 1;
                assert!(rests(&exam), "round {round}: `{claim}`\n{text}\n{}", write(&exam));
            }
        }
    }
    assert!(held.iter().all(|held| *held > 5), "{held:?}");
}

const LABELS: [(&str, Rests); 15] = [
    ("heart heard here", |exam| exam.babies[0].heart.value().is_some()),
    ("palpable above the brim", |exam| exam.babies[0].head_above_brim.value().is_some()),
    ("limbs felt", |exam| exam.babies[0].limbs.value().is_some()),
    ("lump (fibroid)", |exam| has(exam, 0, &["mother.lumps"])),
    ("scar", |exam| has(exam, 0, &["mother.scars"])),
    ("small scars", |exam| has(exam, 0, &["mother.scars"])),
    ("back", |exam| has(exam, 0, &["back", "position"])),
    ("probably back", |exam| has(exam, 0, &["back", "position"])),
    ("back, behind", |exam| has(exam, 0, &["back", "position"])),
    ("back not known", |exam| exam.babies[0].position.value().is_none()),
    ("head, place not known", |exam| exam.babies[0].head.value().is_none()),
    ("bottom, place not known", |exam| exam.babies[0].breech.value().is_none()),
    ("top of the womb", |exam| has(exam, 0, &["mother.fundus"])),
    ("top of the womb, expected", |exam| {
        exam.mother.fundal_height.value().is_none() && exam.mother.fundus.value().is_none()
    }),
    ("handbooks put its top here", |exam| exam.weeks.is_some()),
];

/// Figures take long: a few dozen visits, most without the labels of the body itself.
#[test]
fn labels_name_only_what_the_visit_holds() {
    let (words, fonts) = (Words::load("en").expect("English"), Fonts::load().expect("fonts"));
    let mut dice = Dice::new(43_383);
    let mut held = [0; LABELS.len()];
    let mut named = 0;
    for round in 0..70 {
        let exam = visit(&mut dice);
        let reckoning = reckon(&exam, &Default::default());
        if !whole(&exam, &reckoning) {
            continue;
        }
        let pose = pose::from_exam(&exam, &reckoning.conclusions);
        let cast = (round % 35 == 0).then(|| pose.cast()).flatten();
        let options = options(View::Facing, Labels::All, 3.5, 10.0);
        let plan = figure::plan(&pose, cast.as_ref(), &options, &words, &fonts).expect("a plan");
        // Where rounds stand for a baby, each says whether its pole was felt.
        let of_rounds = pose.rounds().next().is_some();
        for placed in &plan.placed {
            let lines: Vec<&str> = placed.lines.iter().map(|(line, _)| line.as_str()).collect();
            let text = lines.join(" ");
            let bare = text.trim_end_matches(", unsure");
            let probable = bare.trim_start_matches("probably ");
            if of_rounds && probable == "head" {
                named += 1;
                assert!(
                    has(&exam, 0, &["head", "head-above-brim"]),
                    "round {round}: `{text}`\n{}",
                    write(&exam)
                );
            }
            if of_rounds && probable == "bottom" {
                named += 1;
                assert!(has(&exam, 0, &["breech"]), "round {round}: `{text}`\n{}", write(&exam));
            }
            for (at, (label, rests)) in LABELS.iter().enumerate() {
                let same = if label.contains("above") || label.contains("handbooks") {
                    bare.contains(label)
                } else {
                    bare == *label
                };
                if same {
                    held[at] += 1;
                    assert!(rests(&exam), "round {round}: label `{text}`\n{}", write(&exam));
                }
            }
        }
    }
    assert!(held.iter().filter(|held| **held > 0).count() >= 8, "{held:?}");
    assert!(named > 5, "{named} poles that were felt");
}
