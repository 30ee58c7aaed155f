//! The words of the family page. In: the exam, what follows from it, the clinic. Out: `Content` for the layout
//! `family-page.toml`, in plain words: no codes, no numbers about the baby, no verdict.

mod call;
mod lie;

use super::content::{Block, Content, Kind};
use crate::exam::{Baby, Conclusion, Exam, Finding, HeartHeard, KnownBy};
use crate::units::Gestation;
use crate::words::{Words, WordsError};

/// Under this the womb and its level alone are drawn.
const BABY_DRAWN_FROM: Option<Gestation> = Gestation::new(26, 0);

/// The clinic as the page names it; what is missing becomes a line to write on.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ClinicLines {
    /// Its name.
    pub name: Option<String>,
    /// Its telephone numbers, each as it is to be printed.
    pub phones: Vec<String>,
}

/// The words of the family page. `conclusions` has one entry for each baby of `exam`, in the same order.
///
/// The caller has made sure that nothing stands that must stop the page (an act-now, findings that cannot
/// both be right).
pub fn content(
    exam: &Exam,
    conclusions: &[Conclusion],
    clinic: &ClinicLines,
    words: &Words,
) -> Result<Content, WordsError> {
    let say = |id: &str| words.say(id, &[]);
    let several = exam.babies.len() > 1;
    let early = exam.weeks < BABY_DRAWN_FROM && exam.weeks.is_some();
    let mut out = Content::default();
    let mut put = |name: &str, blocks: Vec<Block>| {
        out.blocks.insert(name.to_owned(), blocks);
    };

    let title = say(if several { "family-title-more" } else { "family-title-one" })?;
    put("family-title", vec![Block::new(Kind::Title, title.clone())]);
    put("family-name", vec![Block::new(Kind::Blank, say("family-name")?)]);
    put("family-felt-on", vec![Block::new(Kind::Blank, felt_on(exam.weeks, words)?)]);

    let found = lie::found(exam, conclusions, early, words)?;
    let description = found.iter().map(|b| b.text.as_str()).collect::<Vec<_>>().join(" ");
    put("family-found", found);
    put("family-about", about(exam, conclusions, early, words)?);

    put("family-call-title", vec![Block::new(Kind::Part, say("family-call-title")?)]);
    put("family-worried", vec![Block::new(Kind::Text, say("family-worried")?)]);
    put("family-phone", call::phone(clinic, words)?);
    put("family-moves", call::moves(exam.weeks, several, words)?);
    let waters = !early && exam.babies.iter().zip(conclusions).any(|(b, c)| call::waters_are_urgent(b, c));
    put("family-go", call::go(waters, words)?);
    put("family-call", call::call(waters, words)?);
    let version = [("version", env!("CARGO_PKG_VERSION"))];
    put("family-use", vec![Block::new(Kind::Text, words.say("family-use", &version)?)]);

    out.title = title;
    out.description = description;
    Ok(out)
}

fn felt_on(weeks: Option<Gestation>, words: &Words) -> Result<String, WordsError> {
    let Some(age) = weeks else { return words.say("family-felt-on", &[]) };
    let (weeks, days) = ((age.days() / 7).to_string(), (age.days() % 7).to_string());
    let id = match age.days() % 7 {
        0 => "family-weeks",
        1 => "family-weeks-day",
        _ => "family-weeks-days",
    };
    let age = words.say(id, &[("weeks", &weeks), ("days", &days)])?;
    words.say("family-felt-on-at", &[("age", &age)])
}

/// What the page is and is not.
fn about(
    exam: &Exam,
    conclusions: &[Conclusion],
    early: bool,
    words: &Words,
) -> Result<Vec<Block>, WordsError> {
    let scan = exam.babies.iter().any(seen_on_scan);
    let mut ids = vec![if scan { "family-hands-scan" } else { "family-hands" }];
    ids.push("family-turn");
    ids.push("family-hold");
    let heard = |b: &Baby| matches!(b.heart.value(), Some(HeartHeard::At(_)));
    if exam.babies.iter().any(heard) {
        ids.push("family-heart");
    }
    if !early {
        // What the picture shows: a whole baby, rounds for head and bottom, or nothing.
        if conclusions.iter().any(|c| c.lie.is_some() && c.back.is_some()) {
            ids.push("family-artist");
        } else if conclusions.iter().all(|c| c.lie.is_none()) {
            ids.push("family-none-drawn");
        }
    }
    let mut out = vec![Block::new(Kind::Heading, words.say("family-about-title", &[])?)];
    for id in ids {
        out.push(Block::new(Kind::Text, words.say(id, &[])?));
    }
    Ok(out)
}

fn seen_on_scan(baby: &Baby) -> bool {
    fn by_scan<T>(finding: &Finding<T>) -> bool {
        matches!(finding, Finding::Found(f) if matches!(f.known_by, KnownBy::Scan(_)))
    }
    by_scan(&baby.head)
        || by_scan(&baby.breech)
        || by_scan(&baby.back)
        || by_scan(&baby.limbs)
        || by_scan(&baby.attitude)
        || by_scan(&baby.legs)
        || by_scan(&baby.lie)
        || by_scan(&baby.presentation)
        || by_scan(&baby.position)
}
