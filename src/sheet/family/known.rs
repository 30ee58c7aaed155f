//! How it is known how the baby lies. In: the exam. Out: the words for the day, and the sentence that says how far to
//! trust the page: it says "felt by hand" only where hands felt for the baby.

use super::Told;
use crate::exam::{Baby, Exam, Finding, KnownBy};
use crate::sheet::content::{Block, Kind};
use crate::words::WordsError;

/// Where the date stands in the words of the day.
const BLANK: &str = "____";

/// How the lie and the back of the babies are known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Known {
    /// Felt by hand, or hands tried.
    Hands,
    /// Some by hand, some on a scan.
    HandsAndScan,
    /// On a scan alone.
    Scan,
    /// A position or a lie was written down; how it was found is not said.
    Written,
    /// Nothing of it was recorded.
    Nothing,
}

impl Known {
    pub fn of(exam: &Exam) -> Self {
        let mut seen = Seen::default();
        exam.babies.iter().for_each(|baby| seen.add(baby));
        match (seen.hands, seen.scan, seen.written) {
            (true, false, _) => Known::Hands,
            (true, true, _) => Known::HandsAndScan,
            (false, true, false) => Known::Scan,
            (false, _, true) => Known::Written,
            (false, false, false) => Known::Nothing,
        }
    }
}

#[derive(Default)]
struct Seen {
    hands: bool,
    scan: bool,
    written: bool,
}

impl Seen {
    fn add(&mut self, baby: &Baby) {
        self.direct(&baby.head);
        self.direct(&baby.breech);
        self.direct(&baby.back);
        self.direct(&baby.limbs);
        self.direct(&baby.head_above_brim);
        self.direct(&baby.descent);
        self.direct(&baby.prominence);
        self.concluded(&baby.attitude);
        self.concluded(&baby.legs);
        self.concluded(&baby.lie);
        self.concluded(&baby.presentation);
        self.concluded(&baby.position);
    }
    /// A finding of the grips: hands, unless it says otherwise.
    fn direct<T>(&mut self, finding: &Finding<T>) {
        match finding {
            Finding::Found(found) => match found.known_by {
                KnownBy::Hands | KnownBy::VaginalExamination => self.hands = true,
                KnownBy::Scan(_) => self.scan = true,
            },
            Finding::Absent | Finding::CouldNotTell { .. } => self.hands = true,
            Finding::NotExamined | Finding::NotTried => {}
        }
    }
    /// What was written without saying how it was found.
    fn concluded<T>(&mut self, finding: &Finding<T>) {
        match finding {
            Finding::Found(found) => match found.known_by {
                KnownBy::Hands => self.written = true,
                KnownBy::VaginalExamination => self.hands = true,
                KnownBy::Scan(_) => self.scan = true,
            },
            Finding::Absent | Finding::CouldNotTell { .. } | Finding::NotExamined | Finding::NotTried => {}
        }
    }
}

/// The day, as it is recorded or as a line to write on, with the weeks where they are known.
pub(super) fn day(told: &Told<'_>) -> Result<Block, WordsError> {
    let line = line(told)?;
    let Some(visit) = told.exam.dates.visit else { return Ok(Block::new(Kind::Blank, line)) };
    let month = told.say(&format!("family-month-{}", visit.month()))?;
    let (day, year) = (visit.day().to_string(), visit.year().to_string());
    let date = told.words.say("family-date", &[("day", &day), ("month", &month), ("year", &year)])?;
    Ok(Block::new(Kind::Emphasis, line.replace(BLANK, &date)))
}

/// The weeks alone, where there is no line to write the day on; nothing where the day is recorded.
pub(super) fn weeks(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let id = if told.known == Known::Hands { "family-felt-at" } else { "family-noted-at" };
    let age = if told.exam.dates.visit.is_none() { age(told)? } else { None };
    age.map(|age| Ok(Block::new(Kind::Text, told.words.say(id, &[("age", &age)])?))).into_iter().collect()
}

fn line(told: &Told<'_>) -> Result<String, WordsError> {
    let words = told.words;
    let hands = told.known == Known::Hands;
    let Some(age) = age(told)? else {
        return words.say(if hands { "family-felt-on" } else { "family-noted-on" }, &[]);
    };
    words.say(if hands { "family-felt-on-at" } else { "family-noted-on-at" }, &[("age", &age)])
}

/// The weeks in words, where they are known.
fn age(told: &Told<'_>) -> Result<Option<String>, WordsError> {
    let Some(age) = told.exam.weeks else { return Ok(None) };
    let (weeks, days) = ((age.days() / 7).to_string(), (age.days() % 7).to_string());
    let id = match age.days() % 7 {
        0 => "family-weeks",
        1 => "family-weeks-day",
        _ => "family-weeks-days",
    };
    told.words.say(id, &[("weeks", &weeks), ("days", &days)]).map(Some)
}

/// The sentences on how far to trust the page, none where nothing was recorded, and for how long.
pub(super) fn trust(known: Known) -> impl Iterator<Item = &'static str> {
    far(known).into_iter().chain(["family-turn"])
}

/// How far to trust it.
pub(super) fn far(known: Known) -> Option<&'static str> {
    match known {
        Known::Hands => Some("family-hands"),
        Known::HandsAndScan => Some("family-hands-scan"),
        Known::Scan => Some("family-scan"),
        Known::Written => Some("family-written"),
        Known::Nothing => None,
    }
}

/// How it is known how a baby lies, in the same breath as the lie.
pub(super) fn how(known: Known) -> &'static str {
    match known {
        Known::Hands => "family-how-hands",
        Known::HandsAndScan => "family-how-hands-scan",
        Known::Scan => "family-how-scan",
        Known::Written | Known::Nothing => "family-how-written",
    }
}
