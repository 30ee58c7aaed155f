//! What the findings call for. In: `Exam` and its conclusions. Out: remarks: an id, a grade, values and the findings.
//!
//! A remark is never a diagnosis and never reassurance; its sentence is the message `remark-<id>` of the language file.

mod act_now;
mod after_dates;
mod agreement;
mod cannot_both;
pub mod curves;
mod dates;
mod guidance;
mod heart;
pub mod landmarks;
pub mod ledger;
mod rounded;
mod tape;
mod told;
mod twins;
mod two_babies;
mod visits;
mod weight;

pub use act_now::{act_now, heart_too_early};
pub use after_dates::after_dates;
pub use agreement::{Agreement, agreement};
pub use cannot_both::cannot_both;
pub use dates::{Beside, Dating, SettledBy, dating};
pub use guidance::guidance;
pub use heart::{HeartRate, against_usual, count_rate, count_step, heart, heart_rate};
pub use ledger::Rule;
pub use rounded::beside;
pub use tape::{Series, Standard, Tape, WeeksRule, series, standard, tape, unfit, word as unfit_word};
pub use two_babies::two_babies;
pub use visits::{Course, LaidTape, NotOne, Visit, course};
pub use weight::{
    ByTape, Johnson, Line, WeightCurves, Weights, buchmann, dare, johnson, johnson_n, weight_curves, weights,
};

use crate::clinic::Thresholds;
use crate::exam::{Conclusion, Exam, conclude, spoken};
use crate::words::{Words, WordsError};

/// How pressing a remark is; the first is the most pressing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Cannot wait; stops the family page.
    ActNow,
    /// Findings that cannot all be right together.
    CannotBoth,
    /// Worth another look.
    LookAgain,
    /// Local guidance says what follows.
    FollowGuidance,
}

impl Grade {
    /// The name in JSON and in message ids.
    pub fn name(self) -> &'static str {
        match self {
            Grade::ActNow => "act-now",
            Grade::CannotBoth => "cannot-both",
            Grade::LookAgain => "look-again",
            Grade::FollowGuidance => "follow-guidance",
        }
    }
    /// Whether its remarks may be silenced for a run.
    pub fn is_lesser(self) -> bool {
        match self {
            Grade::ActNow | Grade::CannotBoth => false,
            Grade::LookAgain | Grade::FollowGuidance => true,
        }
    }
}

/// One remark.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Remark {
    /// Stable id, such as `bleeding`.
    pub id: &'static str,
    /// How pressing it is.
    pub grade: Grade,
    /// Which baby, from 0, when it is about one of them.
    pub baby: Option<usize>,
    /// Values for its sentence, by name.
    pub values: Vec<(&'static str, String)>,
    /// Keys of the findings it rests on, such as `mother.movements`.
    pub findings: Vec<String>,
    /// Where the rule comes from; empty for plain logic.
    pub source: &'static str,
    /// As its rule has it: no page that a family keeps is made while it stands.
    pub no_page: bool,
}

impl Remark {
    /// The remark of a rule, without a baby, values and findings. A rule without a grade makes none: it counts as worth
    /// another look.
    pub fn new(rule: &Rule) -> Self {
        Remark {
            id: rule.id,
            grade: rule.grade.unwrap_or(Grade::LookAgain),
            baby: None,
            values: vec![],
            findings: vec![],
            source: if rule.trust == ledger::Trust::Logic { "" } else { rule.ground() },
            no_page: rule.no_page,
        }
    }
    /// Whether it tells of a heart that was not heard, or only in words of the note, or not told from her pulse. Then no
    /// page that a family keeps may be made, whatever else is in hand.
    pub fn heart_unheard(&self) -> bool {
        self.no_page || self.values.contains(&("heart", "yes".to_owned()))
    }
    /// With the keys of the findings it rests on.
    pub fn on(mut self, findings: &[&str]) -> Self {
        self.findings.extend(findings.iter().map(|key| (*key).to_owned()));
        self
    }
    /// With a value for its sentence.
    pub fn with(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.values.push((name, value.into()));
        self
    }
    /// About one baby (index from 0); findings without a dot are that baby's. `{ $baby }` is its number when there are
    /// several, else empty.
    pub fn of_baby(mut self, exam: &Exam, index: usize, findings: &[&str]) -> Self {
        self.baby = Some(index);
        let number = if exam.babies.len() > 1 { (index + 1).to_string() } else { String::new() };
        self.values.push(("baby", number));
        self.findings.extend(findings.iter().map(|name| {
            if name.contains('.') { (*name).to_owned() } else { format!("baby.{}.{name}", index + 1) }
        }));
        self
    }
    /// Its sentence.
    pub fn text(&self, words: &Words) -> Result<String, WordsError> {
        let values = self.values.iter().map(|(name, value)| Ok((*name, spoken(name, value, words)?)));
        let values = values.collect::<Result<Vec<(&str, String)>, WordsError>>()?;
        let values: Vec<(&str, &str)> = values.iter().map(|(name, value)| (*name, value.as_str())).collect();
        words.say(&format!("remark-{}", self.id), &values)
    }
}

/// A value of a remark in the words of a language.
fn spoken(name: &str, value: &str, words: &Words) -> Result<String, WordsError> {
    match name {
        // Nothing beside it: its sentence does not ask for it.
        _ if value.is_empty() => Ok(String::new()),
        "said" => spoken::findings(value, words),
        // In the words of a chart, where those differ from the words of a visit file.
        "why" => charted(&["tape-unfit"], value, words),
        "signs" => charted(&["reports", "labour"], value, words),
        // A range, or words of the exam language.
        "earlier" | "fits" | "rate" => spoken::value(value, words),
        _ => Ok(value.to_owned()),
    }
}

/// Words of one of these findings, parted by commas, as a chart has them.
fn charted(findings: &[&str], value: &str, words: &Words) -> Result<String, WordsError> {
    let one = |one: &str| {
        for finding in findings {
            if let Some(own) = spoken::charted(finding, one, words)? {
                return Ok(own);
            }
        }
        spoken::value(one, words)
    };
    Ok(value.split(", ").map(one).collect::<Result<Vec<_>, _>>()?.join(", "))
}

/// The conclusions for all babies.
pub fn conclusions(exam: &Exam) -> Vec<Conclusion> {
    (0..exam.babies.len()).map(|index| conclude(exam, index)).collect()
}

/// Everything that is reckoned of an exam.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Reckoning {
    /// The conclusion for each baby, in the order of the file.
    pub conclusions: Vec<Conclusion>,
    /// The due date and what stands beside it.
    pub dates: Option<Dating>,
    /// The tape, when one was laid.
    pub tape: Option<Tape>,
    /// The weights of each baby, in the order of the file.
    pub weights: Vec<Weights>,
    /// What agrees for each baby, in the order of the file.
    pub agreement: Vec<Agreement>,
    /// Remarks, the most pressing first.
    pub remarks: Vec<Remark>,
    /// True when a threshold of the clinic's own was used.
    pub local: bool,
    /// Ids of lesser remarks that stood and were silenced for this run.
    pub quieted: Vec<&'static str>,
    /// True when what is for whoever examined alone was kept out of it.
    pub withheld: bool,
}

impl Reckoning {
    /// Silence lesser remarks by their ids, and keep which of them stood. What cannot wait and what cannot all be right
    /// stays, whatever is asked.
    pub fn quiet(&mut self, ids: &[String]) {
        let silent = |remark: &Remark| remark.grade.is_lesser() && ids.iter().any(|id| id == remark.id);
        let mut stood: Vec<&'static str> =
            self.remarks.iter().filter(|remark| silent(remark)).map(|remark| remark.id).collect();
        stood.dedup();
        self.quieted.extend(stood);
        self.remarks.retain(|remark| !silent(remark));
    }
}

/// Reckon an exam by these thresholds.
pub fn reckon(exam: &Exam, thresholds: &Thresholds) -> Reckoning {
    let conclusions = conclusions(exam);
    let mut remarks = act_now(exam, &conclusions, thresholds);
    remarks.extend(cannot_both(exam, &conclusions));
    let (agreement, look_again) = agreement(exam, &conclusions);
    remarks.extend(look_again);
    remarks.extend(twins::twins(exam));
    let dates = dating(exam);
    remarks.extend(dates::apart(exam, dates.as_ref()));
    let tape = tape(exam, &conclusions, thresholds);
    remarks.extend(tape::remarks(exam, &conclusions, tape.as_ref(), dates.as_ref()));
    remarks.extend(heart(exam, thresholds));
    let weights =
        (0..exam.babies.len()).map(|index| weights(exam, index, &conclusions, tape.as_ref())).collect();
    remarks.extend(guidance(exam, &conclusions));
    remarks.extend(two_babies(exam, &conclusions));
    remarks.extend(after_dates(exam));
    remarks.sort_by_key(|remark| remark.grade);
    let local = *thresholds != Thresholds::default();
    Reckoning {
        conclusions,
        dates,
        tape,
        weights,
        agreement,
        remarks,
        local,
        quieted: vec![],
        withheld: false,
    }
}
