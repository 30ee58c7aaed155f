//! The sheet that a student works on. In: a case and the words. Out: what is told, and what is asked, as the blocks of a layout.

use super::case::Case;
use super::lesson::{Lesson, Level};
use crate::chart::said::{self, Stands};
use crate::exam::{Exam, shorthand};
use crate::reckon::curves;
use crate::sheet::{Block, Content, Kind};
use crate::words::{Words, WordsError};

/// The questions that every case asks on its second side, after that of its lesson; message ids are `case-ask-NAME`.
const QUESTIONS: [&str; 5] = ["engaged", "tape", "sure", "tell", "next"];
/// Those asked of the hands alone, on the first side of a sheet: what was heard is told on the second.
const FIRST: [&str; 2] = ["lie", "listen"];

/// Lines to write the answer on.
fn lines(question: &str) -> usize {
    match question {
        "engaged" | "listen" | "sure" => 2,
        "next" => 6,
        _ => 4,
    }
}

/// Marks for the answer to a question.
pub(super) fn marks(question: &str) -> u8 {
    match question {
        "lesson" | "lie" | "next" => 3,
        _ => 2,
    }
}

/// The questions of a case: names, and the questions in words. What its lesson asks in other words is not asked again.
pub(super) fn questions(case: &Case, words: &Words) -> Result<Vec<(&'static str, String)>, WordsError> {
    let mut all = vec![];
    for name in FIRST {
        all.push((name, words.say(&format!("case-ask-{name}"), &[])?));
    }
    all.push(("lesson", of_lesson(case, "ask", words)?));
    for name in QUESTIONS {
        let asked = matches!((case.lesson, name), (Lesson::Fifths, "engaged") | (Lesson::Fibroid, "tape"));
        if !asked && (name != "tape" || case.exam.mother.fundal_height.value().is_some()) {
            all.push((name, words.say(&format!("case-ask-{name}"), &[])?));
        }
    }
    Ok(all)
}

/// A question with its number and its marks.
pub(super) fn numbered(
    number: usize,
    name: &str,
    question: &str,
    words: &Words,
) -> Result<String, WordsError> {
    let marks = marks(name).to_string();
    words.say("case-question", &[("number", &number.to_string()), ("question", question), ("marks", &marks)])
}

/// A sentence of the case's lesson, filled with its values.
pub(super) fn of_lesson(case: &Case, what: &str, words: &Words) -> Result<String, WordsError> {
    let values: Vec<(&str, &str)> = case.values.iter().map(|(name, value)| (*name, value.as_str())).collect();
    words.say(&format!("case-{}-{what}", case.lesson.name()), &values)
}

/// What a case is called on its sheets: its number, its level and its seed.
pub(super) fn title(id: &str, case: &Case, words: &Words) -> Result<String, WordsError> {
    let level = words.say(&format!("case-level-{}", case.level.name()), &[])?;
    let (number, seed) = (case.number.to_string(), case.seed.to_string());
    words.say(id, &[("number", &number), ("level", &level), ("seed", &seed)])
}

/// The words of the sheet.
pub fn case_content(case: &Case, words: &Words) -> Result<Content, WordsError> {
    let whole = title("case-title", case, words)?;
    let mut content = Content {
        description: title("case-description", case, words)?,
        title: whole.clone(),
        ..Content::default()
    };
    let mut put = |name: &str, blocks: Vec<Block>| content.blocks.insert(name.to_owned(), blocks);
    let short = words.say("case-number", &[("number", &case.number.to_string())])?;
    let which = title("case-which", case, words)?;
    put("case-title", vec![Block::new(Kind::Title, short), Block::new(Kind::Emphasis, which)]);
    put("case-title-again", vec![Block::new(Kind::Heading, whole)]);
    put(
        "case-about",
        vec![
            Block::new(Kind::Text, words.say("case-about", &[])?),
            Block::new(Kind::Blank, words.say("case-name", &[])?),
        ],
    );
    put("case-found", found(case, &case.hands, words)?);
    put("case-draw", vec![Block::new(Kind::Text, words.say("case-draw", &[])?)]);
    let mut asked =
        vec![vec![Block::new(Kind::Heading, words.say("case-questions", &[])?)], heard(case, words)?];
    for (number, (name, question)) in questions(case, words)?.into_iter().enumerate() {
        let side = &mut asked[usize::from(!FIRST.contains(&name))];
        side.push(Block::new(Kind::Text, numbered(number + 1, name, &question, words)?));
        side.extend((0..lines(name)).map(|_| Block::new(Kind::Blank, "")));
    }
    for (name, blocks) in ["case-questions", "case-questions-more"].into_iter().zip(asked) {
        put(name, blocks);
    }
    put("case-foot", vec![Block::new(Kind::Text, foot(words)?)]);
    Ok(content)
}

/// What stands at the foot of every sheet: that it is invented, the cautions, the versions.
pub(super) fn foot(words: &Words) -> Result<String, WordsError> {
    words.say(
        "case-foot",
        &[("version", env!("CARGO_PKG_VERSION")), ("ledger", crate::reckon::ledger::LEDGER_VERSION)],
    )
}

/// The curve of the tape at the weeks of a case, in numbers: a paper has no calculator.
fn curve(case: &Case, words: &Words) -> Result<Option<Block>, WordsError> {
    let Some(weeks) = case.exam.weeks.filter(|weeks| curves::SFH_DAYS.contains(&weeks.days())) else {
        return Ok(None);
    };
    let cm = |z: f64| format!("{:.1}", curves::sfh_at(weeks, z));
    let values = [
        ("weeks", weeks.to_string()),
        ("mean", cm(0.0)),
        ("sd", format!("{:.1}", curves::sfh_sd(weeks))),
        ("low", cm(-TENTH)),
        ("high", cm(TENTH)),
    ];
    let values: Vec<(&str, &str)> = values.iter().map(|(name, value)| (*name, value.as_str())).collect();
    Ok(Some(Block::new(Kind::Text, words.say("case-curve", &values)?)))
}

/// z of the 90th centile.
const TENTH: f64 = 1.281_552;

/// What is told: the story, the findings in sentences or as a chart has them, and the curve of the tape.
pub(super) fn found(case: &Case, shown: &Exam, words: &Words) -> Result<Vec<Block>, WordsError> {
    let weeks = case.exam.weeks.map(|weeks| weeks.to_string()).unwrap_or_default();
    let mut blocks = vec![Block::new(Kind::Heading, words.say("case-found", &[("weeks", &weeks)])?)];
    let story = format!("case-{}-story", case.lesson.name());
    if words.has(&story) {
        blocks.push(Block::new(Kind::Text, of_lesson(case, "story", words)?));
    }
    if case.level != Level::Easy {
        blocks.push(Block::new(Kind::Text, words.say("case-charted", &[])?));
    }
    blocks.extend(findings(case, shown, words)?);
    blocks.extend(curve(case, words)?);
    Ok(blocks)
}

/// What was heard, on the second side: after the question where to listen.
fn heard(case: &Case, words: &Words) -> Result<Vec<Block>, WordsError> {
    let Some(ear) = &case.ear else { return Ok(vec![]) };
    let mut blocks = vec![Block::new(Kind::Heading, words.say("case-heard", &[])?)];
    blocks.extend(findings(case, ear, words)?);
    Ok(blocks)
}

/// Findings in sentences, or as a chart has them.
fn findings(case: &Case, shown: &Exam, words: &Words) -> Result<Vec<Block>, WordsError> {
    if case.level != Level::Easy {
        let line = shorthand::line(shown);
        // What was heard is told below the weeks.
        let of_ear = case.ear.as_ref() == Some(shown);
        let line = line.split_once("; ").filter(|_| of_ear).map_or(line.as_str(), |(_, rest)| rest);
        return Ok(vec![Block::new(Kind::Strong, line)]);
    }
    let mut blocks = vec![];
    for told in said::told(shown, Stands::UnderHeading, words)? {
        let heading = words.say(told.heading, &[])?;
        let mut said = vec![];
        for (key, sentence) in &told.sentences {
            // What the counts make of the rate is for the student to work out.
            let counts = shown.read.iter().find(|(read, _)| read == key && key.ends_with(".heart-counts"));
            said.push(match counts {
                Some((_, counts)) => words.say("case-counted", &[("value", counts)])?,
                None => sentence.clone(),
            });
        }
        blocks.push(Block::new(Kind::Item, format!("{heading}. {}", said.join(" "))));
    }
    Ok(blocks)
}
