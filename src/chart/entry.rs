//! What every entry for the chart is made of. In: an exam, its reckoning, the words. Out: its parts in sentences.

use super::said::{self, Stands};
use crate::exam::Exam;
use crate::reckon::ledger::LEDGER_VERSION;
use crate::reckon::{Grade, Reckoning};
use crate::words::{Words, WordsError};

/// An exam that is to be charted.
pub struct Entry<'a> {
    /// The exam.
    pub exam: &'a Exam,
    /// What is reckoned of it.
    pub reckoning: &'a Reckoning,
    /// The words of one language.
    pub words: &'a Words,
}

/// A remark as it is charted.
pub struct Line {
    /// Its id.
    pub id: &'static str,
    /// How pressing it is.
    pub grade: Grade,
    /// `Look again [id]: sentence`; what cannot wait begins in capitals.
    pub text: String,
}

impl Entry<'_> {
    /// The remarks, what cannot wait first.
    pub fn remarks(&self) -> Result<Vec<Line>, WordsError> {
        let babies = self.exam.babies.len();
        let mut lines = vec![];
        for remark in &self.reckoning.remarks {
            let grade = self.words.say(&format!("grade-{}", remark.grade.name()), &[])?;
            let grade = if remark.grade == Grade::ActNow { grade.to_uppercase() } else { grade };
            let text = said::sentence(remark, babies, self.words)?;
            let text = format!("{grade} [{}]: {text}", remark.id);
            lines.push(Line { id: remark.id, grade: remark.grade, text });
        }
        lines.sort_by_key(|line| line.grade);
        Ok(lines)
    }

    /// The remarks that cannot wait, and the others.
    pub fn act_now_and_others(&self) -> Result<(Vec<Line>, Vec<Line>), WordsError> {
        Ok(self.remarks()?.into_iter().partition(|line| line.grade == Grade::ActNow))
    }

    /// What this is, and the weeks.
    pub fn opening(&self) -> Result<String, WordsError> {
        match self.exam.weeks {
            Some(weeks) => self.words.say("chart-opening", &[("weeks", &weeks.to_string())]),
            None => self.words.say("chart-opening-no-weeks", &[]),
        }
    }

    /// What was found under the keys that `wanted` takes, in the order of the hands; two babies are told apart.
    pub fn findings(&self, wanted: impl Fn(&str) -> bool) -> Result<String, WordsError> {
        let mut sentences = vec![];
        let mut baby = None;
        for told in said::told(self.exam, Stands::Alone, self.words)? {
            let said: Vec<String> =
                told.sentences.iter().filter(|(key, _)| wanted(key)).map(|(_, said)| stopped(said)).collect();
            if said.is_empty() {
                continue;
            }
            if let Some(index) = told.baby.filter(|_| told.baby != baby && self.exam.babies.len() > 1) {
                let number = (index + 1).to_string();
                sentences.push(format!("{}:", self.words.say("check-baby", &[("baby", &number)])?));
            }
            baby = told.baby;
            sentences.push(said.join(" "));
        }
        Ok(sentences.join(" "))
    }

    /// The boxes that every chart has.
    pub fn boxes(&self) -> Result<String, WordsError> {
        super::boxes::sentences(self.exam, &self.reckoning.conclusions, self.words)
    }

    /// What is said when no remark stands; where something was kept out, nothing that denies it.
    pub fn no_remarks(&self) -> Result<String, WordsError> {
        if self.reckoning.withheld {
            return self.words.say("chart-more", &[]);
        }
        said::no_remarks(self.exam, self.words)
    }

    /// What was left out.
    pub fn not_examined(&self) -> Result<String, WordsError> {
        said::not_examined(self.exam, &self.reckoning.conclusions, self.words)
    }

    /// What follows from the findings, a sentence or a few for each baby.
    pub fn conclusions(&self) -> Result<Vec<String>, WordsError> {
        let mut told = vec![];
        for (index, conclusion) in self.reckoning.conclusions.iter().enumerate() {
            let text = said::conclusion(self.exam, index, conclusion, self.words)?;
            told.push(said::of_baby(text, index, self.exam.babies.len(), self.words)?);
        }
        Ok(told)
    }

    /// What an entry is and is not, and which remarks were left out of it.
    pub fn cautions(&self) -> Result<String, WordsError> {
        let cautions = self.words.say("chart-cautions", &[])?;
        if self.reckoning.quieted.is_empty() {
            return Ok(cautions);
        }
        let ids = self.reckoning.quieted.join(", ");
        Ok(format!("{} {cautions}", self.words.say("check-quieted", &[("ids", &ids)])?))
    }

    /// Versions of the program and its rules; local thresholds are named.
    pub fn versions(&self) -> Result<String, WordsError> {
        // With points: nothing in a shared entry has the shape of a date.
        let ledger = LEDGER_VERSION.replace('-', ".");
        let values = [("version", env!("CARGO_PKG_VERSION")), ("ledger", ledger.as_str())];
        let versions = self.words.say("chart-versions", &values)?;
        if self.reckoning.local {
            return Ok(format!("{versions} {}", self.words.say("check-local", &[])?));
        }
        Ok(versions)
    }
}

/// Free words end in a full stop, as the other sentences do.
fn stopped(text: &str) -> String {
    let text = text.trim();
    if text.ends_with(['.', '!', '?', ':']) { text.to_owned() } else { format!("{text}.") }
}
