//! The sheet that a student works on. In: a case and the words. Out: what is told, and what is asked, as the blocks of a layout.

use super::case::Case;
use super::lesson::{Lesson, Level};
use crate::chart::said::{self, Stands};
use crate::exam::shorthand;
use crate::reckon::curves;
use crate::sheet::{Block, Content, Kind};
use crate::words::{Words, WordsError};

/// The questions that every case asks, after that of its lesson; message ids are `case-ask-NAME`.
pub(super) const QUESTIONS: [&str; 7] = ["lie", "engaged", "listen", "tape", "sure", "tell", "next"];

/// Lines to write the answer on.
fn lines(question: &str) -> usize {
    match question {
        "engaged" | "listen" => 2,
        "sure" => 3,
        "next" => 6,
        _ => 4,
    }
}

/// Questions on the first side of a sheet; the others stand on the second.
const ON_FIRST_SIDE: usize = 2;

/// The questions of a case, its lesson's first: names, and the questions in words. What its lesson asks in other words is not asked
/// again.
pub(super) fn questions(case: &Case, words: &Words) -> Result<Vec<(&'static str, String)>, WordsError> {
    let mut all = vec![("lesson", of_lesson(case, "ask", words)?)];
    for name in QUESTIONS {
        let asked = matches!((case.lesson, name), (Lesson::Fifths, "engaged") | (Lesson::Fibroid, "tape"));
        if !asked && (name != "tape" || case.exam.mother.fundal_height.value().is_some()) {
            all.push((name, words.say(&format!("case-ask-{name}"), &[])?));
        }
    }
    Ok(all)
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
    put("case-found", found(case, words)?);
    put("case-draw", vec![Block::new(Kind::Text, words.say("case-draw", &[])?)]);
    let mut asked = vec![vec![Block::new(Kind::Heading, words.say("case-questions", &[])?)], vec![]];
    for (number, (name, question)) in questions(case, words)?.into_iter().enumerate() {
        let side = &mut asked[usize::from(number >= ON_FIRST_SIDE)];
        side.push(Block::new(Kind::Text, format!("{}. {question}", number + 1)));
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
pub(super) fn found(case: &Case, words: &Words) -> Result<Vec<Block>, WordsError> {
    let weeks = case.exam.weeks.map(|weeks| weeks.to_string()).unwrap_or_default();
    let mut blocks = vec![Block::new(Kind::Heading, words.say("case-found", &[("weeks", &weeks)])?)];
    let story = format!("case-{}-story", case.lesson.name());
    if words.has(&story) {
        blocks.push(Block::new(Kind::Text, of_lesson(case, "story", words)?));
    }
    if case.level != Level::Easy {
        blocks.push(Block::new(Kind::Text, words.say("case-charted", &[])?));
        blocks.push(Block::new(Kind::Strong, shorthand::line(&case.shown)));
        blocks.extend(curve(case, words)?);
        return Ok(blocks);
    }
    for told in said::told(&case.shown, Stands::UnderHeading, words)? {
        let heading = words.say(told.heading, &[])?;
        let mut said = vec![];
        for (key, sentence) in &told.sentences {
            // What the counts make of the rate is for the student to work out.
            let counts =
                case.shown.read.iter().find(|(read, _)| read == key && key.ends_with(".heart-counts"));
            said.push(match counts {
                Some((_, counts)) => words.say("case-counted", &[("value", counts)])?,
                None => sentence.clone(),
            });
        }
        blocks.push(Block::new(Kind::Item, format!("{heading}. {}", said.join(" "))));
    }
    blocks.extend(curve(case, words)?);
    Ok(blocks)
}
