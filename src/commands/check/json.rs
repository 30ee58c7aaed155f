//! The check as JSON, `handspan-check/1`. In: a loaded exam. Out: one line; what is not known leaves its key out.

use super::super::load::Loaded;
use super::{Check, VERSION, numbers};
use crate::body::pose::{self, Pose};
use crate::chart::said;
use crate::exam::dates::written;
use crate::exam::say::Canonical;
use crate::exam::shorthand::ask::Question;
use crate::exam::{Conclusion, Exam, Position, spoken};
use crate::reckon::ledger::LEDGER_VERSION;
use crate::reckon::{
    self, Beside, Dating, Remark, Tape, WeightCurves, heart_rate, unfit_word, weight_curves,
};
use crate::report::Problem;
use crate::words::{Words, WordsError};
use serde::{Serialize, Serializer};

#[derive(Serialize)]
struct Line<'a> {
    format: &'a str,
    exam: &'a str,
    /// The language of the sentences, where it is not English; with the words that mark a draft.
    #[serde(skip_serializing_if = "Option::is_none")]
    lang: Option<&'a str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    draft: Option<String>,
    /// The program's version, and its ledger's.
    version: &'static str,
    ledger: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    gestation: Option<Gestation>,
    #[serde(skip_serializing_if = "Option::is_none")]
    read: Option<InOrder<'a>>,
    /// The same in the language of the sentences, where that is not one that exams are written in.
    #[serde(skip_serializing_if = "Option::is_none")]
    said: Option<Spoken>,
    #[serde(skip_serializing_if = "Option::is_none")]
    babies: Option<Vec<Baby>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    fundal_height: Option<FundalHeight>,
    #[serde(skip_serializing_if = "Option::is_none")]
    dates: Option<Dates>,
    /// Reference weights by scan, when they were asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    weight_curves: Option<Curves>,
    remarks: Vec<Said>,
    /// True when thresholds of the clinic's own were used; else left out.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    local: bool,
    /// Lesser remarks that stood and were silenced for this run; left out when there are none.
    #[serde(skip_serializing_if = "<[_]>::is_empty")]
    quieted: &'a [&'static str],
    problems: &'a [Problem],
    /// Of a line: what was understood, in one line that can be heard.
    #[serde(skip_serializing_if = "Option::is_none")]
    said_back: Option<String>,
    /// What a line is asked, each with its readings; left out when nothing is.
    #[serde(skip_serializing_if = "<[_]>::is_empty")]
    questions: &'a [Question],
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
    /// The conclusion in sentences, and what fits where it names no position.
    said: Vec<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    lie: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    presentation: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    position: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    engaged: Option<bool>,
    /// Codes of the positions that agree with everything found.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    fits: Vec<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    heart_rate: Option<Rate>,
    #[serde(skip_serializing_if = "Option::is_none")]
    weight: Option<Weight>,
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

/// Weights, g: by hand as recorded; by formulas to the nearest 50. `johnson_n` are the n of `johnson_g`.
#[derive(Serialize)]
struct Weight {
    #[serde(skip_serializing_if = "Option::is_none")]
    hand_g: Option<[u32; 2]>,
    #[serde(skip_serializing_if = "Option::is_none")]
    johnson_g: Option<[u32; 2]>,
    #[serde(skip_serializing_if = "Option::is_none")]
    johnson_n: Option<[u8; 2]>,
    #[serde(skip_serializing_if = "Option::is_none")]
    dare_g: Option<u32>,
    #[serde(skip_serializing_if = "Option::is_none")]
    buchmann_g: Option<u32>,
}

/// A tape. One that is unfit has the reasons and neither answer.
#[derive(Serialize)]
struct FundalHeight {
    measured_cm: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    expected_cm: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    sd_cm: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    z: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    centile: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    weeks_rule: Option<String>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    unfit: Vec<&'static str>,
}

/// Due dates; `days_later` than the settled one, negative: earlier.
#[derive(Serialize)]
struct Dates {
    due: String,
    settled_by: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    by_last_period: Option<Other>,
    #[serde(skip_serializing_if = "Option::is_none")]
    by_calendar_rule: Option<Other>,
}

#[derive(Serialize)]
struct Other {
    due: String,
    days_later: i32,
}

#[derive(Serialize)]
struct Curves {
    #[serde(skip_serializing_if = "Option::is_none")]
    intergrowth: Option<CurveLine>,
    #[serde(skip_serializing_if = "Option::is_none")]
    hadlock: Option<CurveLine>,
}

#[derive(Serialize)]
struct CurveLine {
    p10_g: u32,
    p50_g: u32,
    p90_g: u32,
}

#[derive(Serialize)]
struct Said {
    id: &'static str,
    grade: &'static str,
    values: Values,
    text: String,
    /// The sentence in English, beside a draft.
    #[serde(skip_serializing_if = "Option::is_none")]
    english: Option<String>,
    #[serde(skip_serializing_if = "str::is_empty")]
    source: &'static str,
    findings: Vec<String>,
    /// True where no page that goes home is made, whatever is in hand; else left out.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    no_page: bool,
}

struct Values(Vec<(&'static str, String)>);

impl Serialize for Values {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(
            self.0.iter().filter(|(_, value)| !value.is_empty()).map(|(name, value)| (name, value)),
        )
    }
}

/// The line, with its line break, in the first of the languages. `check` says which weights are asked for.
pub fn line(loaded: &Loaded<'_>, check: &Check, languages: &[Words]) -> Result<String, WordsError> {
    let Some(words) = languages.first() else { return Ok(String::new()) };
    let exam = loaded.reading.exam.as_ref();
    let babies = exam.map(|exam| -> Result<Vec<Baby>, WordsError> {
        let pose = pose::from_exam(exam, &loaded.reckoning.conclusions);
        loaded
            .reckoning
            .conclusions
            .iter()
            .enumerate()
            .map(|(index, conclusion)| {
                let weights = loaded.reckoning.weights.get(index).and_then(|of| weight(of, check.weights));
                let fits = loaded.reckoning.agreement.get(index).map_or(&[][..], |a| &a.fits[..]);
                let mut said = vec![said::conclusion(exam, index, conclusion, words)?];
                said.extend(super::fits(loaded, index, words)?);
                Ok(Baby { said, weight: weights, ..baby(exam, index, conclusion, fits, &pose) })
            })
            .collect()
    });
    let remarks: Result<Vec<Said>, WordsError> =
        loaded.reckoning.remarks.iter().map(|remark| told(remark, words, languages)).collect();
    let line = Line {
        format: "handspan-check/1",
        exam: loaded.name,
        lang: (words.lang() != "en").then(|| words.lang()),
        draft: (!words.is_signed()).then(|| words.say("draft-note", &[])).transpose()?,
        version: VERSION,
        ledger: LEDGER_VERSION,
        gestation: exam
            .and_then(|exam| exam.weeks)
            .map(|weeks| Gestation { days: weeks.days(), text: weeks.to_string() }),
        read: exam.map(|exam| InOrder(&exam.read)),
        said: exam.filter(|_| !words.is_of_exams()).map(|exam| spoken_findings(exam, words)).transpose()?,
        babies: babies.transpose()?,
        fundal_height: loaded.reckoning.tape.as_ref().map(|tape| fundal_height(tape, words)).transpose()?,
        dates: loaded.reckoning.dates.as_ref().map(dates),
        weight_curves: exam
            .and_then(|exam| exam.weeks)
            .filter(|_| check.weight_curves)
            .map(|w| reference(weight_curves(w))),
        remarks: remarks?,
        local: loaded.reckoning.local,
        quieted: &loaded.reckoning.quieted,
        problems: &loaded.reading.problems,
        said_back: loaded.said_back(),
        questions: &loaded.reading.questions,
    };
    let json = serde_json::to_string(&line).map_err(|fault| WordsError(fault.to_string()))?;
    Ok(format!("{json}\n"))
}

fn baby(exam: &Exam, index: usize, conclusion: &Conclusion, fits: &[Position], pose: &Pose) -> Baby {
    let tenth = |value: f64| (value * 10.0).round() / 10.0;
    let misfit =
        pose.misfits.iter().find(|(number, _)| *number == index + 1).map(|(_, cm)| tenth(f64::from(*cm)));
    Baby {
        said: vec![],
        lie: conclusion.lie.map(|lie| lie.canonical()),
        presentation: conclusion.presentation.map(|presentation| presentation.canonical()),
        position: conclusion.position.map(|position| position.code()),
        engaged: conclusion.engaged,
        fits: fits.iter().map(|position| position.code()).collect(),
        heart_rate: exam.babies.get(index).and_then(heart_rate).map(|rate| Rate {
            mean: tenth(rate.mean),
            low: tenth(rate.low),
            high: tenth(rate.high),
        }),
        weight: None,
        drawn_off_by_cm: misfit.filter(|cm| *cm != 0.0),
    }
}

/// By hand as recorded; by the tape where that is asked for.
fn weight(weights: &reckon::Weights, by_tape: bool) -> Option<Weight> {
    let grams = |grams: crate::units::Grams| grams.get().round() as u32;
    let by_tape = weights.by_tape.filter(|_| by_tape);
    let johnson = by_tape.and_then(|by_tape| by_tape.johnson);
    (weights.hand.is_some() || by_tape.is_some()).then(|| Weight {
        hand_g: weights.hand.map(|hand| [grams(hand.low), grams(hand.high)]),
        johnson_g: johnson.map(|johnson| johnson.grams),
        johnson_n: johnson.map(|johnson| johnson.n),
        dare_g: by_tape.and_then(|by_tape| by_tape.dare),
        buchmann_g: by_tape.map(|by_tape| by_tape.buchmann),
    })
}

fn fundal_height(tape: &Tape, words: &Words) -> Result<FundalHeight, WordsError> {
    let round = |value: f64, steps: f64| (value * steps).round() / steps + 0.0;
    let standard = tape.standard;
    Ok(FundalHeight {
        measured_cm: tape.measured,
        expected_cm: standard.map(|standard| round(standard.mean, 100.0)),
        sd_cm: standard.map(|standard| round(standard.sd, 100.0)),
        z: standard.map(|standard| round(standard.z, 100.0)),
        centile: standard.map(|standard| round(standard.centile, 10.0)),
        weeks_rule: tape.weeks_rule.map(|rule| numbers::weeks_rule(rule, words)).transpose()?,
        unfit: tape.unfit.iter().map(|why| unfit_word(*why)).collect(),
    })
}

fn dates(dating: &Dating) -> Dates {
    let other = |other: Beside| Other { due: written(other.due), days_later: other.days_later };
    Dates {
        due: written(dating.due),
        settled_by: dating.by.name(),
        by_last_period: dating.by_last_period.map(other),
        by_calendar_rule: dating.by_calendar_rule.map(other),
    }
}

fn reference(curves: WeightCurves) -> Curves {
    let line = |line: reckon::Line| {
        let [p10_g, p50_g, p90_g] = line.map(|(_, grams)| grams.round() as u32);
        CurveLine { p10_g, p50_g, p90_g }
    };
    Curves { intergrowth: curves.intergrowth.map(line), hadlock: curves.hadlock.map(line) }
}

/// Findings by their keys, in a language.
type Spoken = std::collections::BTreeMap<String, String>;

fn spoken_findings(exam: &Exam, words: &Words) -> Result<Spoken, WordsError> {
    let said = |key: &str, value: &str| match key {
        "note" => Ok(value.to_owned()),
        _ => spoken::finding(value, words),
    };
    exam.read.iter().map(|(key, value)| Ok((key.clone(), said(key, value)?))).collect()
}

fn told(remark: &Remark, words: &Words, languages: &[Words]) -> Result<Said, WordsError> {
    let beside = languages.iter().skip(1).find(|_| !words.is_signed());
    Ok(Said {
        id: remark.id,
        grade: remark.grade.name(),
        values: Values(remark.values.clone()),
        text: remark.text(words)?,
        english: beside.map(|english| remark.text(english)).transpose()?,
        source: remark.source,
        findings: remark.findings.clone(),
        no_page: remark.heart_unheard(),
    })
}
