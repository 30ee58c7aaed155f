//! The sheet that a student works on. In: a case and the words. Out: what is told, and what is asked, as the blocks of a layout.

use super::case::Case;
use super::lesson::{Lesson, Level};
use crate::chart::said::{self, Stands};
use crate::exam::shorthand;
use crate::sheet::{Block, Content, Kind};
use crate::words::{Words, WordsError};

/// The questions that every case asks, after that of its lesson; message ids are `case-ask-NAME`.
pub(super) const QUESTIONS: [&str; 7] = ["lie", "engaged", "listen", "tape", "sure", "tell", "next"];

/// The questions of a case, its lesson's first: names, and the questions in words. What its lesson asks in other words is not asked
/// again.
pub(super) fn questions(case: &Case, words: &Words) -> Result<Vec<(&'static str, String)>, WordsError> {
    let mut all = vec![("lesson", of_lesson(case, "ask", words)?)];
    for name in QUESTIONS {
        let asked = matches!(
            (case.lesson, name),
            (Lesson::Fifths, "engaged") | (Lesson::FullBladder | Lesson::TapeEdge | Lesson::Fibroid, "tape")
        );
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

/// The words of the sheet.
pub fn case_content(case: &Case, words: &Words) -> Result<Content, WordsError> {
    let number = case.number.to_string();
    let title = words.say("case-title", &[("number", &number)])?;
    let level = words.say(&format!("case-level-{}", case.level.name()), &[])?;
    let mut content = Content {
        description: words.say("case-description", &[("number", &number)])?,
        title: title.clone(),
        ..Content::default()
    };
    let mut put = |name: &str, blocks: Vec<Block>| content.blocks.insert(name.to_owned(), blocks);
    put("case-title", vec![Block::new(Kind::Title, title)]);
    put(
        "case-about",
        vec![
            Block::new(Kind::Text, words.say("case-about", &[("level", &level)])?),
            Block::new(Kind::Blank, words.say("case-name", &[])?),
        ],
    );
    put("case-found", found(case, words)?);
    put("case-draw", vec![Block::new(Kind::Text, words.say("case-draw", &[])?)]);
    let mut asked = vec![Block::new(Kind::Heading, words.say("case-questions", &[])?)];
    for (number, (_, question)) in questions(case, words)?.into_iter().enumerate() {
        asked.push(Block::new(Kind::Text, format!("{}. {question}", number + 1)));
        asked.push(Block::new(Kind::Blank, ""));
    }
    put("case-questions", asked);
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

/// What is told: the story, and the findings in sentences or as a chart has them.
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
    Ok(blocks)
}
