//! The key. In: a case, what is reckoned of its exam, the sums in sentences. Out: the answers, the reasoning finding by finding, and
//! the lesson, as the blocks of a layout.
//!
//! Nothing is answered that the reckoning of the visit file does not give.

use super::ask::{foot, marks, numbered, of_lesson, questions, title};
use super::case::Case;
use super::truth::exam_of;
use crate::body::touch::Through;
use crate::chart::said::{self, Stands};
use crate::clinic::Thresholds;
use crate::exam::say::Canonical;
use crate::exam::{Conclusion, Lie, Position, Presentation};
use crate::reckon::{Reckoning, reckon};
use crate::sheet::{Block, Content, Kind};
use crate::units::MotherSide;
use crate::words::{Words, WordsError};

type Said = Result<String, WordsError>;

/// The words of the key. `sums`: what was reckoned, a sentence or a few for each heading; the first is that of the tape.
pub fn key_content(
    case: &Case,
    reckoning: &Reckoning,
    sums: &[(String, String)],
    words: &Words,
) -> Result<Content, WordsError> {
    let whole = title("case-key-title", case, words)?;
    let mut description = vec![whole.clone()];
    for conclusion in &reckoning.conclusions {
        description.push(said::lie_and_back(conclusion, words)?);
    }
    let mut content = Content { description: description.join(". "), title: whole, ..Content::default() };
    let mut put = |name: &str, blocks: Vec<Block>| content.blocks.insert(name.to_owned(), blocks);
    let short = words.say("case-key-number", &[("number", &case.number.to_string())])?;
    let which = title("case-which", case, words)?;
    put("case-key-title", vec![Block::new(Kind::Title, short), Block::new(Kind::Emphasis, which)]);
    put("case-about", vec![Block::new(Kind::Text, words.say("case-key-about", &[])?)]);
    put(
        "case-lesson",
        vec![
            Block::new(Kind::Heading, words.say("case-lesson", &[])?),
            Block::new(Kind::Text, of_lesson(case, "lesson", words)?),
        ],
    );
    let mut answers = vec![Block::new(Kind::Heading, words.say("case-answers", &[])?)];
    let (mut all_marks, mut scheme) = (0, vec![]);
    for (number, (name, question)) in questions(case, words)?.into_iter().enumerate() {
        answers.push(Block::new(Kind::Question, numbered(number + 1, name, &question, words)?));
        for said in answer(name, case, reckoning, sums, words)? {
            answers.push(Block::new(Kind::Answer, said));
        }
        let earned = [("number", (number + 1).to_string()), ("marks", marks(name).to_string())];
        let earned: Vec<(&str, &str)> = earned.iter().map(|(name, value)| (*name, value.as_str())).collect();
        scheme.push(words.say(&format!("case-marks-{name}"), &earned)?);
        all_marks += u16::from(marks(name));
    }
    scheme.insert(0, words.say("case-marks", &[("marks", &all_marks.to_string())])?);
    put("case-answers", answers);
    let mut steps = vec![Block::new(Kind::Heading, words.say("case-reasoning", &[])?)];
    steps.extend(reasoning(case, words)?.into_iter().map(|step| Block::new(Kind::Item, step)));
    put("case-reasoning", steps);
    let mut summed = vec![Block::new(Kind::Heading, words.say("case-sums", &[])?)];
    summed.extend(sums.iter().map(|(heading, said)| Block::new(Kind::Item, format!("{heading}. {said}"))));
    summed.push(Block::new(Kind::Text, words.say("case-sources", &[])?));
    summed.push(Block::new(Kind::Text, scheme.join(" ")));
    put("case-sums", summed);
    put("case-foot", vec![Block::new(Kind::Text, foot(words)?)]);
    Ok(content)
}

fn answer(
    question: &str,
    case: &Case,
    reckoning: &Reckoning,
    sums: &[(String, String)],
    words: &Words,
) -> Result<Vec<String>, WordsError> {
    let Some(conclusion) = reckoning.conclusions.first() else { return Ok(vec![]) };
    Ok(match question {
        "lesson" => vec![of_lesson(case, "answer", words)?],
        "lie" => vec![lie(case, &settled(conclusion, reckoning), words)?],
        "engaged" => vec![engaged(case, conclusion, words)?],
        "listen" => vec![listen(case, conclusion, reckoning, words)?],
        "tape" => {
            let tape = words.say("group-tape", &[])?;
            sums.iter().filter(|(heading, _)| *heading == tape).map(|(_, said)| said.clone()).collect()
        }
        "sure" => vec![sure(reckoning, words)?],
        "tell" => vec![tell(conclusion, case.planted.is_some(), words)?],
        _ => next(reckoning, words)?,
    })
}

/// What the findings settle: of several positions that fit, none.
fn settled(conclusion: &Conclusion, reckoning: &Reckoning) -> Conclusion {
    let several = reckoning.agreement.first().is_some_and(|agreement| agreement.fits.len() > 1);
    Conclusion { position: conclusion.position.filter(|_| !several), ..conclusion.clone() }
}

/// Lie, what leads, position; held back while a finding speaks against the others.
fn lie(case: &Case, conclusion: &Conclusion, words: &Words) -> Said {
    let lie = match conclusion.lie {
        Some(Lie::Longitudinal) => "longitudinal",
        Some(Lie::Transverse) => "transverse",
        Some(Lie::Oblique) => "oblique",
        None => "none",
    };
    let held = if case.planted.is_some() { "yes" } else { "no" };
    let told = said::lie_and_back(conclusion, words)?;
    let said = words.say("case-answer-lie", &[("lie", lie), ("told", &told), ("held", held)])?;
    Ok(said.trim().to_owned())
}

fn engaged(case: &Case, conclusion: &Conclusion, words: &Words) -> Said {
    let fifths = case.exam.babies[0].head_above_brim.value().map(|fifths| fifths.canonical());
    match (conclusion.engaged, fifths) {
        _ if !conclusion.conflicts.is_empty() => words.say("case-answer-engaged-conflict", &[]),
        (Some(true), Some(fifths)) => words.say("conclude-engaged", &[("fifths", &fifths)]),
        (Some(false), Some(fifths)) => words.say("conclude-not-engaged", &[("fifths", &fifths)]),
        _ if conclusion.presentation == Some(Presentation::Breech)
            || matches!(conclusion.lie, Some(Lie::Transverse | Lie::Oblique)) =>
        {
            words.say("case-answer-engaged-heads-only", &[])
        }
        _ => words.say("case-answer-engaged-unknown", &[]),
    }
}

/// Where the heart of the case's baby is best heard, as far as its findings say how it lies.
fn listen(case: &Case, conclusion: &Conclusion, reckoning: &Reckoning, words: &Words) -> Said {
    let back = conclusion.back.filter(|_| conclusion.lie.is_some());
    let several = reckoning.agreement.first().is_some_and(|agreement| agreement.fits.len() > 1);
    match (case.truth.listening(), case.truth.heart(), back) {
        // Which end is down is known, and that the back was met on neither side.
        (_, _, None) if several && conclusion.presentation == Some(Presentation::Cephalic) => {
            words.say("case-answer-listen-side", &[("side", "none")])
        }
        (_, _, Some(back)) if several => words.say("case-answer-listen-side", &[("side", side(back.side))]),
        (Some(listening), Some(place), Some(_)) => {
            let through = match (listening.through, listening.faint) {
                (_, true) => "faint",
                (Through::Back, false) => "back",
                (Through::Chest, false) => "chest",
            };
            words.say("case-answer-listen", &[("place", &place.canonical()), ("through", through)])
        }
        _ => words.say("case-answer-listen-unknown", &[]),
    }
}

/// Which sentence says how sure one can be.
pub(super) fn sure_id(reckoning: &Reckoning) -> &'static str {
    let fits = reckoning.agreement.first().map_or(0, |agreement| agreement.fits.len());
    let conflict = reckoning.conclusions.iter().any(|conclusion| !conclusion.conflicts.is_empty());
    let told = reckoning.conclusions.iter().any(|conclusion| conclusion.lie.is_some());
    match fits {
        0 if told || conflict => "case-answer-sure-none",
        0 => "case-answer-sure-cannot-tell",
        1 => "case-answer-sure-one",
        _ => "case-answer-sure-several",
    }
}

/// How many positions fit, and which when they are few.
fn sure(reckoning: &Reckoning, words: &Words) -> Said {
    let fits = reckoning.agreement.first().map_or(&[][..], |agreement| &agreement.fits[..]);
    words.say(sure_id(reckoning), &[("positions", &named(fits)), ("count", &fits.len().to_string())])
}

fn named(fits: &[Position]) -> String {
    fits.iter().map(|position| position.words()).collect::<Vec<_>>().join("; ")
}

fn side(side: Option<MotherSide>) -> &'static str {
    match side {
        Some(MotherSide::Left) => "left",
        Some(MotherSide::Right) => "right",
        None => "none",
    }
}

fn tell(conclusion: &Conclusion, held: bool, words: &Words) -> Said {
    let lie = match (conclusion.lie, conclusion.presentation) {
        _ if held || !conclusion.conflicts.is_empty() => "not-told",
        (Some(Lie::Longitudinal), Some(Presentation::Breech)) => "bottom-down",
        (Some(Lie::Longitudinal), Some(_)) => "head-down",
        (Some(Lie::Transverse), _) => "across",
        _ => "not-told",
    };
    let back = conclusion.back.and_then(|back| back.side);
    words.say("case-answer-tell", &[("lie", lie), ("back", side(back)), ("head", side(conclusion.head_side))])
}

/// What the remarks say; what cannot wait first.
fn next(reckoning: &Reckoning, words: &Words) -> Result<Vec<String>, WordsError> {
    let mut all = vec![];
    for remark in &reckoning.remarks {
        let grade = words.say(&format!("grade-{}", remark.grade.name()), &[])?;
        all.push(format!("{grade}: {}", said::sentence(remark, 1, words)?));
    }
    if all.is_empty() {
        all.push(words.say("case-answer-next-none", &[])?);
    }
    Ok(all)
}

/// Findings that no position is told by.
const BESIDE: [&str; 3] = ["heart-with", "heart-counts", "descent"];
/// More positions than this are counted, not named.
const NAMED: usize = 3;

/// Each finding in the order of the hands, and what it leaves of the positions, together with those before it.
fn reasoning(case: &Case, words: &Words) -> Result<Vec<String>, WordsError> {
    let sentences: Vec<(String, String)> =
        said::told(&case.exam, Stands::Alone, words)?.into_iter().flat_map(|told| told.sentences).collect();
    let mut steps = vec![];
    let mut before: Option<Vec<Position>> = None;
    for (taken, key) in case.visit.of_baby().enumerate() {
        let name = format!("baby.1.{key}");
        let Some((_, said)) = sentences.iter().find(|(key, _)| *key == name) else { continue };
        if BESIDE.contains(&key) {
            continue;
        }
        let Ok(exam) = exam_of(&case.visit.first(taken + 1).text("")) else { continue };
        let reckoning = reckon(&exam, &Thresholds::default());
        let fits = reckoning.agreement.first().map(|agreement| agreement.fits.clone()).unwrap_or_default();
        let conflict = reckoning.conclusions.iter().any(|conclusion| !conclusion.conflicts.is_empty());
        let told = reckoning.conclusions.iter().any(|c| c.lie.is_some() || c.back.is_some());
        let leaves = match (&before, fits.len()) {
            (Some(last), 0) if last.is_empty() => words.say("case-leaves-still-none", &[])?,
            (Some(last), _) if *last == fits && !conflict => words.say("case-leaves-same", &[])?,
            (Some(_), 0) if told => words.say("case-leaves-none", &[])?,
            (_, 0) => words.say("case-leaves-untold", &[])?,
            (_, count) if count <= NAMED => words.say("case-leaves", &[("positions", &named(&fits))])?,
            (_, count) => words.say("case-leaves-many", &[("count", &count.to_string())])?,
        };
        before = (!fits.is_empty() || conflict || before.is_some()).then_some(fits);
        steps.push(format!("{said} {leaves}"));
    }
    Ok(steps)
}
