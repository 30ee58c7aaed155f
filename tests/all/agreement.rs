//! Which positions fit, and what is to be felt again: against the palpation map, mirrored, and with planted findings.

use crate::shared::{Dice, baby, read};
use handspan::body::pose;
use handspan::body::touch::{Feel, Palpation, palpation};
use handspan::clinic::Thresholds;
use handspan::exam::{Exam, Height, Place, Position, words::Vocabulary};
use handspan::reckon::{Grade, Reckoning, conclusions, reckon};
use handspan::units::MotherSide;

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

/// The maps of every position with a code that lies lengthwise, from the model of a mother at 38 weeks.
fn maps() -> Vec<(Position, Palpation)> {
    let lengthwise = |position: &Position| matches!(position, Position::Lengthwise { .. });
    let map = |position: Position| {
        let word = position.word().expect("a word");
        let exam = read(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{word}\"\n"));
        (position, palpation(&pose::for_hands(&exam, &conclusions(&exam))))
    };
    Position::all().filter(lengthwise).map(map).collect()
}

fn side(place: &Place) -> Option<&'static str> {
    place.side().map(|side| if side == MotherSide::Left { "left" } else { "right" })
}

/// 1,000 exams of which limbs and heart come from the map: the true position fits, and nothing is to be felt again.
#[test]
fn what_the_model_feels_fits_the_model() {
    let maps = maps();
    assert_eq!(maps.len(), 32);
    let mut dice = Dice::new(0x5eed);
    let mut wrong = std::collections::BTreeMap::new();
    for _ in 0..1000 {
        let (position, map) = dice.pick(&maps);
        let levels = [
            (Height::AboveNavel, "above navel"),
            (Height::AtNavel, "at navel"),
            (Height::BelowNavel, "below navel"),
        ];
        let mut limbs = vec![];
        for touch in map.touches.iter().filter(|t| t.felt.is_some_and(|f| f.what == Feel::Limbs)) {
            let level = levels.iter().find(|(height, _)| touch.place.height == Some(*height));
            if let (Some((_, level)), Some(side)) = (level, side(&touch.place)) {
                limbs.push(format!("\"{side}, {level}\""));
            }
        }
        let mut text =
            format!("weeks = \"38+0\"\n[baby]\nposition = \"{}\"\n", position.word().expect("a word"));
        if !limbs.is_empty() {
            text.push_str(&format!("limbs = [{}]\n", dice.pick(&limbs)));
        }
        let heard = map.nearest(map.hearts[0].at).expect("a place").place;
        let level = levels.iter().find(|(height, _)| heard.height == Some(*height));
        if let (Some((_, level)), Some(side)) = (level, side(&heard)) {
            text.push_str(&format!("heart = \"{side}, {level}\"\n"));
        }
        let exam = read(&text);
        let found = reckoned(&exam);
        assert!(found.remarks.iter().all(|remark| remark.grade != Grade::CannotBoth), "{text}");
        if !found.agreement[0].fits.contains(position) || !look_again(&exam).is_empty() {
            wrong.insert(text, look_again(&exam));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// A finding planted against the others is found, and stands among the findings of the remark.
#[test]
fn planted_findings_are_found() {
    for (findings, id, key) in [
        ("back = \"left, front\"\nlimbs = [\"left\"]", "limbs-on-the-side-of-the-back", "limbs"),
        ("back = \"left, front\"\nheart = \"right, below navel\"", "heart-far-from-the-back", "heart"),
        ("heart = \"left, above navel\"", "heart-height-against-the-end-that-is-down", "heart"),
        ("prominence = \"back side\"", "prominence-on-the-side-of-the-back", "prominence"),
    ] {
        for text in [findings.to_owned(), mirrored(findings)] {
            let exam = baby(&format!("head = \"above pubic bone\"\n{text}"));
            let remarks = look_again(&exam);
            assert_eq!(remarks.len(), 1, "{text}: {remarks:?}");
            assert_eq!(remarks[0].0, id, "{text}");
            assert!(remarks[0].1.contains(&format!("baby.1.{key}")), "{text}: {remarks:?}");
        }
    }
    let by_doppler = baby(
        "head = \"above pubic bone\"\nback = \"left, front\"\nheart = \"right, below navel\"\nheart-with = \"Doppler\"",
    );
    assert_eq!(look_again(&by_doppler), []);
}
