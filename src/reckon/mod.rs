//! What the findings call for. In: `Exam` and its conclusions. Out: remarks: an id, a grade, values and the findings.
//!
//! A remark is never a diagnosis and never reassurance; its sentence is the message `remark-<id>` of the language file.

mod act_now;
mod cannot_both;
mod heart;

pub use act_now::act_now;
pub use cannot_both::cannot_both;
pub use heart::{HeartRate, count_rate, count_step, heart_rate};

use crate::exam::{Conclusion, Exam, conclude};
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
}

impl Remark {
    /// Its sentence.
    pub fn text(&self, words: &Words) -> Result<String, WordsError> {
        let values: Vec<(&str, &str)> =
            self.values.iter().map(|(name, value)| (*name, value.as_str())).collect();
        words.say(&format!("remark-{}", self.id), &values)
    }
}

/// The conclusions for all babies.
pub fn conclusions(exam: &Exam) -> Vec<Conclusion> {
    (0..exam.babies.len()).map(|index| conclude(exam, index)).collect()
}

/// All remarks that are reckoned so far, the most pressing first.
pub fn remarks(exam: &Exam) -> Vec<Remark> {
    let mut all = act_now(exam);
    all.extend(cannot_both(exam, &conclusions(exam)));
    all
}
