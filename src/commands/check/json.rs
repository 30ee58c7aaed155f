//! The check as JSON, `handspan-check/1`. In: a loaded exam. Out: one line; what is not known leaves its key out.

use super::super::load::Loaded;
use crate::body::pose::{self, Pose};
use crate::exam::say::Canonical;
use crate::exam::{Conclusion, Exam};
use crate::reckon::{Remark, heart_rate};
use crate::report::Problem;
use crate::words::{Words, WordsError};
use serde::{Serialize, Serializer};

#[derive(Serialize)]
struct Line<'a> {
    format: &'a str,
    exam: &'a str,
    #[serde(skip_serializing_if = "Option::is_none")]
    gestation: Option<Gestation>,
    #[serde(skip_serializing_if = "Option::is_none")]
    read: Option<InOrder<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    babies: Option<Vec<Baby>>,
    remarks: Vec<Said>,
    /// True when thresholds of the clinic's own were used; else left out.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    local: bool,
    /// Lesser remarks that stood and were silenced for this run; left out when there are none.
    #[serde(skip_serializing_if = "<[_]>::is_empty")]
    quieted: &'a [&'static str],
    problems: &'a [Problem],
}

#[derive(Serialize)]
struct Gestation {
    days: u16,
    text: String,
}

/// Keys in the order of the file.
struct InOrder<'a>(&'a [(String, String)]);

impl Serialize for InOrder<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.iter().map(|(key, words)| (key, words)))
    }
}

#[derive(Serialize)]
struct Baby {
    #[serde(skip_serializing_if = "Option::is_none")]
    lie: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    presentation: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    position: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    engaged: Option<bool>,
    #[serde(skip_serializing_if = "Option::is_none")]
    heart_rate: Option<Rate>,
    /// How far the drawn baby misses the height that the womb gives it, cm; a note on the drawing, not a remark.
    #[serde(skip_serializing_if = "Option::is_none")]
    drawn_off_by_cm: Option<f64>,
}

#[derive(Serialize)]
struct Rate {
    mean: f64,
    low: f64,
    high: f64,
}

#[derive(Serialize)]
struct Said {
    id: &'static str,
    grade: &'static str,
    values: Values,
    text: String,
    #[serde(skip_serializing_if = "str::is_empty")]
    source: &'static str,
    findings: Vec<String>,
}

struct Values(Vec<(&'static str, String)>);

impl Serialize for Values {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(
            self.0.iter().filter(|(_, value)| !value.is_empty()).map(|(name, value)| (name, value)),
        )
    }
}

/// The line, with its line break.
pub fn line(loaded: &Loaded<'_>, words: &Words) -> Result<String, WordsError> {
    let exam = loaded.reading.exam.as_ref();
    let babies = exam.map(|exam| {
        let pose = pose::from_exam(exam, &loaded.reckoning.conclusions);
        loaded
            .reckoning
            .conclusions
            .iter()
            .enumerate()
            .map(|(index, conclusion)| baby(exam, index, conclusion, &pose))
            .collect()
    });
    let remarks: Result<Vec<Said>, WordsError> =
        loaded.reckoning.remarks.iter().map(|remark| said(remark, words)).collect();
    let line = Line {
        format: "handspan-check/1",
        exam: loaded.name,
        gestation: exam
            .and_then(|exam| exam.weeks)
            .map(|weeks| Gestation { days: weeks.days(), text: weeks.to_string() }),
        read: exam.map(|exam| InOrder(&exam.read)),
        babies,
        remarks: remarks?,
        local: loaded.reckoning.local,
        quieted: &loaded.reckoning.quieted,
        problems: &loaded.reading.problems,
    };
    let json = serde_json::to_string(&line).map_err(|fault| WordsError(fault.to_string()))?;
    Ok(format!("{json}\n"))
}

fn baby(exam: &Exam, index: usize, conclusion: &Conclusion, pose: &Pose) -> Baby {
    let tenth = |value: f64| (value * 10.0).round() / 10.0;
    let misfit =
        pose.misfits.iter().find(|(number, _)| *number == index + 1).map(|(_, cm)| tenth(f64::from(*cm)));
    Baby {
        lie: conclusion.lie.map(|lie| lie.canonical()),
        presentation: conclusion.presentation.map(|presentation| presentation.canonical()),
        position: conclusion.position.map(|position| position.code()),
        engaged: conclusion.engaged,
        heart_rate: exam.babies.get(index).and_then(heart_rate).map(|rate| Rate {
            mean: tenth(rate.mean),
            low: tenth(rate.low),
            high: tenth(rate.high),
        }),
        drawn_off_by_cm: misfit.filter(|cm| *cm != 0.0),
    }
}

fn said(remark: &Remark, words: &Words) -> Result<Said, WordsError> {
    Ok(Said {
        id: remark.id,
        grade: remark.grade.name(),
        values: Values(remark.values.clone()),
        text: remark.text(words)?,
        source: remark.source,
        findings: remark.findings.clone(),
    })
}
