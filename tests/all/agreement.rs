//! Which positions fit, and what is to be felt again: against the map of what hands feel, mirrored, and with planted findings.

use crate::shared::{Dice, baby, read};
use handspan::body::pose;
use handspan::body::touch::{COLUMNS, Feel, LEVELS, Palpation, Touch, palpation};
use handspan::clinic::Thresholds;
use handspan::exam::say::Canonical;
use handspan::exam::words::Vocabulary;
use handspan::exam::{Exam, Height, Place, Position};
use handspan::reckon::{Grade, Reckoning, conclusions, reckon};

fn reckoned(exam: &Exam) -> Reckoning {
    reckon(exam, &Thresholds::default())
}

fn fits(exam: &Exam) -> Vec<String> {
    reckoned(exam).agreement[0].fits.iter().map(|position| position.code()).collect()
}

fn look_again(exam: &Exam) -> Vec<(&'static str, Vec<String>)> {
    let all = reckoned(exam).remarks.into_iter().filter(|remark| remark.grade == Grade::LookAgain);
    all.map(|remark| (remark.id, remark.findings)).collect()
}

fn mirrored(text: &str) -> String {
    text.replace("left", "<").replace("right", "left").replace('<', "right")
}

#[test]
fn only_what_was_found_narrows_the_positions() {
    assert_eq!(fits(&baby("moved-under-hands = \"yes\"")), Vec::<String>::new());
    assert_eq!(fits(&baby("back = \"left, front\"\nhead = \"above pubic bone\"")), ["LOA"]);
    assert_eq!(fits(&baby("back = \"left\"\nhead = \"above pubic bone\"")), ["LOA", "LOT", "LOP"]);
    assert_eq!(fits(&baby("back = \"left\"\nhead = \"fundus\"")), ["LSA", "LST", "LSP"]);
    assert_eq!(fits(&baby("head = \"above pubic bone\"")).len(), 8);
}

#[test]
fn a_mirrored_exam_has_mirrored_fits_and_the_same_remarks() {
    for text in [
        "back = \"left, front\"\nhead = \"above pubic bone\"",
        "back = \"left\"\nhead = \"fundus\"\nlimbs = [\"left\"]",
        "back = \"left, front\"\nhead = \"above pubic bone\"\nlimbs = [\"left\"]",
        "lie = \"transverse\"\nhead = \"left flank\"",
        "back = \"left, front\"\nhead = \"above pubic bone\"\nheart = \"right, below navel\"",
    ] {
        let (one, other) = (baby(text), baby(&mirrored(text)));
        let swap = |code: &String| match code.split_at(1) {
            ("L", rest) => format!("R{rest}"),
            ("R", rest) => format!("L{rest}"),
            _ => code.clone(),
        };
        let mut expected: Vec<String> = fits(&one).iter().map(swap).collect();
        let mut found = fits(&other);
        expected.sort();
        found.sort();
        assert_eq!(found, expected, "{text}");
        assert_eq!(look_again(&one), look_again(&other), "{text}");
        assert_eq!(reckoned(&one), reckoned(&one), "{text}");
    }
}

/// A position, and what hands and ear find of it in a mother at these weeks.
struct Model {
    position: Position,
    weeks: u16,
    map: Palpation,
}

/// The models: every position with a code, at three sizes.
fn models() -> Vec<Model> {
    let mut all = vec![];
    for weeks in [29, 34, 39] {
        for position in Position::all() {
            let word = position.word().expect("a word");
            let exam = read(&format!("weeks = \"{weeks}+0\"\n[baby]\nposition = \"{word}\"\n"));
            let map = palpation(&pose::for_hands(&exam, &conclusions(&exam)));
            all.push(Model { position, weeks, map });
        }
    }
    assert_eq!(all.len(), 3 * 36);
    all
}

/// The places that an exam names with a column and a level, where this is felt.
fn places(map: &Palpation, what: Feel) -> Vec<Place> {
    let named = |touch: &&Touch| {
        touch.place.across.is_some_and(|across| COLUMNS.contains(&across))
            && touch.place.height.is_some_and(|height| LEVELS.contains(&height))
    };
    let felt = |touch: &&Touch| touch.felt.is_some_and(|felt| felt.what == what);
    map.touches.iter().filter(named).filter(felt).map(|touch| touch.place).collect()
}

/// Where the grip for this pole meets it: of a baby that lies lengthwise at its end of the womb, else anywhere.
fn pole(map: &Palpation, what: Feel, lengthwise: Option<Height>, dice: &mut Dice) -> Option<Place> {
    let mut found = places(map, what);
    if let Some(height) = lengthwise {
        found.retain(|place| place.height == Some(height));
    }
    (!found.is_empty()).then(|| *dice.pick(&found))
}

/// The lines of an exam that a model gives: head, bottom, back, limbs and heart as they would be written, some left out.
fn lines(model: &Model, dice: &mut Dice) -> Vec<String> {
    let mut lines = vec![];
    let up = matches!(model.position.code().as_bytes(), [.., b'S', _]);
    let across = model.position.back_octant().is_none();
    let (head_end, breech_end) =
        if up { (Height::Fundus, Height::AbovePubicBone) } else { (Height::AbovePubicBone, Height::Fundus) };
    let ends = |end| (!across).then_some(end);
    if let Some(place) = pole(&model.map, Feel::Head, ends(head_end), dice) {
        lines.push(format!("head = \"{}\"", place.canonical()));
    }
    if let Some(place) = pole(&model.map, Feel::Bottom, ends(breech_end), dice)
        && !dice.once_in(3)
    {
        lines.push(format!("breech = \"{}\"", place.canonical()));
    }
    if let Some(octant) = model.position.back_octant()
        && !dice.once_in(4)
    {
        let mut back = octant.back();
        if dice.once_in(3) && back.side.is_some() {
            back.turn = None;
        }
        lines.push(format!("back = \"{}\"", back.canonical()));
    }
    let limbs: Vec<Place> =
        places(&model.map, Feel::Limbs).into_iter().filter(|p| p.side().is_some()).collect();
    if !limbs.is_empty() && !dice.once_in(4) {
        lines.push(format!("limbs = \"{}\"", dice.pick(&limbs).canonical()));
    }
    if let Some(heart) = model.map.hearts.first()
        && !dice.once_in(4)
    {
        let place = model.map.nearest(heart.at).expect("a place").place;
        let named = place.across.is_some_and(|across| COLUMNS.contains(&across));
        if named && place.height.is_some_and(|height| LEVELS.contains(&height)) {
            lines.push(format!("heart = \"{}\"\nheart-with = \"Pinard horn\"", place.canonical()));
        }
    }
    // A scan that shows the face shows that the head is down, also where hands meet the trunk before it.
    let bent_back = matches!(model.position.code().as_bytes(), [.., b'M' | b'F', _]);
    if bent_back && !lines.iter().any(|line| line.starts_with("head")) {
        lines.push("head = \"above pubic bone (scan)\"".to_owned());
    }
    if matches!(model.position.code().as_bytes(), [.., b'M', _]) {
        lines.push("attitude = \"face (scan)\"".to_owned());
    }
    if matches!(model.position.code().as_bytes(), [.., b'F', _]) {
        lines.push("attitude = \"brow (scan)\"".to_owned());
    }
    lines
}

const OF_AGREEMENT: [&str; 5] = [
    "limbs-on-the-side-of-the-back",
    "heart-far-from-the-back",
    "heart-height-against-the-end-that-is-down",
    "dip-with-a-back-in-front",
    "findings-fit-no-position",
];

/// 1,000 exams whose findings are read from the map of a position that the exam does not name: that position is among what
/// fits, nothing contradicts itself, and nothing is to be felt again.
#[test]
fn what_the_model_feels_fits_the_model() {
    let models = models();
    let mut dice = Dice::new(0x5eed);
    let mut wrong = std::collections::BTreeMap::new();
    let (mut told, mut alone) = (0, 0);
    for _ in 0..1000 {
        let model = dice.pick(&models);
        let lines = lines(model, &mut dice);
        let text = format!("weeks = \"{}+0\"\n[baby]\n{}\n", model.weeks, lines.join("\n"));
        if lines.is_empty() {
            continue;
        }
        let found = reckoned(&read(&text));
        let fits = &found.agreement[0].fits;
        told += usize::from(!fits.is_empty());
        alone += usize::from(fits.len() == 1);
        let remarks: Vec<&str> = found
            .remarks
            .iter()
            .filter(|r| r.grade == Grade::CannotBoth || OF_AGREEMENT.contains(&r.id))
            .map(|r| r.id)
            .collect();
        // Of a lie that does not follow from what was felt no position can be told.
        let right = fits.contains(&model.position) || (fits.is_empty() && found.conclusions[0].lie.is_none());
        if !right || !remarks.is_empty() {
            wrong.insert(format!("{}: {text}", model.position.code()), (fits.len(), remarks));
        }
    }
    assert!(wrong.is_empty(), "{} wrong: {wrong:#?}", wrong.len());
    assert!(told > 900 && alone > 150, "{told} exams told of positions, {alone} of one alone");
}

/// 1,000 exams with one finding planted against the others: it is found, and stands among the findings of the remark.
#[test]
fn planted_findings_are_found() {
    let mut dice = Dice::new(77);
    let mut kinds = std::collections::BTreeMap::new();
    for _ in 0..1000 {
        let (side, other) = if dice.once_in(2) { ("left", "right") } else { ("right", "left") };
        let level = *dice.pick(&["above navel", "at navel", "below navel"]);
        let turn = *dice.pick(&["front", "lateral"]);
        let back = format!("back = \"{side} {turn}\"");
        let down = "head = \"above pubic bone\"".to_owned();
        let up = "head = \"fundus\"".to_owned();
        let fifths = format!("head-above-brim = \"{}/5\"", dice.from(0, 2));
        let code = format!("position = \"{}O{}\"", &other[..1].to_uppercase(), dice.pick(&["A", "T", "P"]));
        let (grade, key, mut lines) = match dice.below(6) {
            0 => (Grade::CannotBoth, "head-above-brim", vec![up, fifths]),
            1 => (
                Grade::CannotBoth,
                "head-above-brim",
                vec![format!("head = \"{side} flank\""), format!("breech = \"{other} flank\""), fifths],
            ),
            2 => (Grade::CannotBoth, "position", vec![down, back, code]),
            3 => (Grade::LookAgain, "limbs", vec![down, back, format!("limbs = \"{side}, {level}\"")]),
            4 => (Grade::LookAgain, "heart", vec![down, back, format!("heart = \"{other}, below navel\"")]),
            _ => (Grade::LookAgain, "heart", vec![down, format!("heart = \"{side}, above navel\"")]),
        };
        // What does not matter stands beside it.
        if dice.once_in(2) {
            lines.push("heart-rate = 140".to_owned());
        }
        if dice.once_in(2) {
            lines.insert(0, "moved-under-hands = \"yes\"".to_owned());
        }
        let text = lines.join("\n");
        let found = reckoned(&baby(&text));
        let key = format!("baby.1.{key}");
        let hit = found.remarks.iter().find(|r| r.grade == grade && r.findings.contains(&key));
        assert!(hit.is_some(), "{text}: {:?}", found.remarks);
        *kinds.entry(hit.map(|remark| remark.id)).or_insert(0) += 1;
    }
    assert!(kinds.len() >= 5 && kinds.values().all(|times| *times > 50), "{kinds:?}");
}

#[test]
fn what_is_unsure_weighs_less_and_a_doppler_least() {
    let base = "head = \"above pubic bone\"\nback = \"left front\"\n";
    assert_eq!(fits(&baby(&format!("{base}limbs = \"left, above navel\""))), Vec::<String>::new());
    assert_eq!(fits(&baby(&format!("{base}limbs = \"left, above navel?\""))), ["LOA"]);
    let heart = "heart = \"right, below navel\"";
    assert_eq!(look_again(&baby(&format!("{base}{heart}")))[0].0, "heart-far-from-the-back");
    let by_doppler = baby(&format!("{base}{heart}\nheart-with = \"Doppler\""));
    assert_eq!((look_again(&by_doppler), fits(&by_doppler)), (vec![], vec!["LOA".to_owned()]));
}

/// The sets are the smallest: of four findings of which three clash, the fourth is not named.
#[test]
fn the_smallest_sets_are_named() {
    let exam = baby(
        "head = \"above pubic bone\"\nback = \"left front\"\nlimbs = \"left, above navel\"\nheart = \"left, below navel\"",
    );
    let [(id, findings)] = &look_again(&exam)[..] else { panic!("one remark") };
    assert_eq!(*id, "limbs-on-the-side-of-the-back");
    // An oblique lie has every possible back by now, so that the head above the pubic bone is part of what clashes.
    assert_eq!(findings[..], ["baby.1.head", "baby.1.back", "baby.1.limbs"]);
    // Limbs on both her sides go with a back behind, and with a back in front of which one side was felt.
    assert_eq!(look_again(&baby("head = \"above pubic bone\"\nback = \"left\"\nlimbs = \"left\"")), []);
    assert_eq!(fits(&baby("head = \"above pubic bone\"\nback = \"left\"\nlimbs = \"left\"")), ["LOP"]);
    // Three that clash only together.
    let three =
        baby("head = \"above pubic bone\"\nback = \"left\"\nlimbs = \"left\"\nprominence = \"limb side\"");
    assert_eq!(fits(&three), ["LOP"]);
    let dip = baby("head = \"above pubic bone\"\nback = \"left front\"\ndip-at-navel = \"yes\"");
    assert_eq!(look_again(&dip)[0].0, "dip-with-a-back-in-front");
}

#[test]
fn heads_that_read_low_and_hands_that_are_early() {
    let ids = |text: &str| -> Vec<&str> {
        let remarks = reckoned(&read(text)).remarks;
        let wanted = ["fifths-may-read-low", "too-early-for-hands", "presentation-early"];
        remarks.iter().map(|remark| remark.id).filter(|id| wanted.contains(id)).collect()
    };
    let low = ["fifths-may-read-low"];
    assert_eq!(ids("[baby]\nposition = \"OP\"\nhead-above-brim = \"2/5\"\n"), low);
    assert_eq!(ids("[baby]\nposition = \"LMA\"\nhead-above-brim = \"1/5\"\n"), low);
    assert_eq!(ids("[baby]\nposition = \"LOA\"\nhead-above-brim = \"2/5\"\n"), Vec::<&str>::new());
    assert_eq!(ids("[baby]\nposition = \"OP\"\nhead-above-brim = \"3/5\"\n"), Vec::<&str>::new());
    assert_eq!(ids("weeks = \"20+0\"\n[baby]\nposition = \"LOA\"\n"), ["too-early-for-hands"]);
    assert_eq!(ids("weeks = \"12+0\"\n[baby]\nhead-above-brim = \"3/5\"\n"), ["too-early-for-hands"]);
    // A head that is down early is no remark; what is not head down holds for the day only.
    assert_eq!(ids("weeks = \"24+0\"\n[baby]\nposition = \"LOA\"\n"), Vec::<&str>::new());
    assert_eq!(ids("weeks = \"24+0\"\n[baby]\nposition = \"LSA\"\n"), ["presentation-early"]);
}
