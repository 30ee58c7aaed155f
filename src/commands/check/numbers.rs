//! What was reckoned, in sentences. In: an exam and its reckoning. Out: lines beside their headings: dates, tape, heart, weight,
//! and weights by the tape and reference weights when they are asked for; the sentence of the weeks rule for JSON.

use super::super::load;
use super::Check;
use crate::chart::paragraph::{Column, paragraph};
use crate::exam::{Baby, Exam, dates, spoken};
use crate::reckon::{
    Beside, ByTape, Dating, Line, Reckoning, SettledBy, Tape, WeeksRule, Weights, beside, count_step,
    heart_rate, landmarks, unfit_word, weight_curves,
};
use crate::units::{Gestation, Grams};
use crate::words::{Words, WordsError};

type Said = Result<String, WordsError>;

/// The lines, under a heading of their own; empty when nothing was reckoned. `check` says which weights are asked for.
pub fn lines(exam: &Exam, reckoning: &Reckoning, check: &Check, words: &Words) -> Said {
    let mut text = String::new();
    for (heading, said) in sentences(exam, reckoning, check, words)? {
        text.push_str(&paragraph(&said, Column::Beside(&heading)));
    }
    if text.is_empty() {
        return Ok(text);
    }
    Ok(format!("{}\n{text}", words.say("check-reckoned", &[])?))
}

/// Headings, and what was reckoned under each, in sentences.
pub fn sentences(
    exam: &Exam,
    reckoning: &Reckoning,
    check: &Check,
    words: &Words,
) -> Result<Vec<(String, String)>, WordsError> {
    let mut all = vec![];
    let mut line = |heading: &str, sentences: Vec<String>| -> Result<(), WordsError> {
        if !sentences.is_empty() {
            all.push((words.say(heading, &[])?, sentences.join(" ")));
        }
        Ok(())
    };
    let dates = reckoning.dates.as_ref().map(|dating| of_dates(exam, dating, words)).transpose()?;
    line("group-dates", dates.unwrap_or_default())?;
    let heading = if reckoning.tape.is_some() { "group-tape" } else { "group-womb" };
    line(heading, of_tape(exam, reckoning.tape.as_ref(), words)?)?;
    let babies = exam.babies.len();
    for (index, baby) in exam.babies.iter().enumerate() {
        let heart = of_heart(baby, words)?;
        line("group-heart", of_one(heart, index, babies, words)?)?;
    }
    for (index, weights) in reckoning.weights.iter().enumerate() {
        let weights = of_weights(weights, check.weights, words)?;
        line("group-weight", of_one(weights, index, babies, words)?)?;
    }
    if check.weight_curves {
        line("numbers-curves", of_curves(exam.weeks, words)?)?;
    }
    Ok(all)
}

/// Sentences about one baby, with its number when there are several.
fn of_one(
    sentences: Vec<String>,
    index: usize,
    babies: usize,
    words: &Words,
) -> Result<Vec<String>, WordsError> {
    if sentences.is_empty() {
        return Ok(sentences);
    }
    Ok(vec![load::of_baby(sentences.join(" "), index, babies, words)?])
}

fn of_dates(exam: &Exam, dating: &Dating, words: &Words) -> Result<Vec<String>, WordsError> {
    let cycle = exam.dates.cycle.filter(|cycle| i32::from(*cycle) != dates::USUAL_CYCLE);
    let cycle = cycle.map_or_else(|| "none".to_owned(), |cycle| cycle.to_string());
    let by_period = dating.by == SettledBy::LastPeriod;
    let settled = [
        ("due", dates::written(dating.due)),
        ("by", dating.by.name().to_owned()),
        ("cycle", if by_period { cycle.clone() } else { "none".to_owned() }),
    ];
    let mut said = vec![say(words, "numbers-due", &settled)?];
    let mut beside = |id: &str, other: Beside, cycle: &str| -> Result<(), WordsError> {
        let values = [
            ("due", dates::written(other.due)),
            ("apart", apart(other.days_later, words)?),
            ("cycle", cycle.to_owned()),
        ];
        said.push(say(words, id, &values)?);
        Ok(())
    };
    if let Some(period) = dating.by_last_period.filter(|_| !by_period) {
        beside("numbers-due-period", period, &cycle)?;
    }
    if let Some(calendar) = dating.by_calendar_rule {
        beside("numbers-due-calendar", calendar, "none")?;
    }
    Ok(said)
}

fn apart(days: i32, words: &Words) -> Said {
    let id = match days {
        0 => "numbers-apart-same",
        1.. => "numbers-apart-later",
        _ => "numbers-apart-earlier",
    };
    say(words, id, &[("days", days.abs().to_string())])
}

fn of_tape(exam: &Exam, tape: Option<&Tape>, words: &Words) -> Result<Vec<String>, WordsError> {
    let mut said = vec![];
    if let Some(tape) = tape {
        if !tape.unfit.is_empty() {
            let why: Vec<&str> = tape.unfit.iter().map(|why| unfit_word(*why)).collect();
            said.push(words.say("numbers-tape-unfit", &[("why", &spoken::value(&why.join(", "), words)?)])?);
        } else if exam.weeks.is_none() {
            said.push(words.say("numbers-tape-no-weeks", &[])?);
        } else {
            said.push(match tape.weeks_rule {
                Some(rule) => words.say("numbers-tape-weeks", &[("rule", &weeks_rule(rule, words)?)])?,
                None => words.say("numbers-tape-weeks-none", &[])?,
            });
            said.push(match tape.standard {
                None => words.say("numbers-tape-standard-none", &[])?,
                Some(standard) => {
                    let values = [
                        ("mean", format!("{:.1}", standard.mean)),
                        ("sd", format!("{:.1}", standard.sd)),
                        ("z", format!("{:.2}", standard.z)),
                        ("centile", standard.shown_centile()),
                    ];
                    say(words, "numbers-tape-standard", &values)?
                }
            });
        }
    }
    let top_known = tape.is_some() || exam.mother.fundus.value().is_some();
    if let Some((low, high)) = exam.weeks.filter(|_| top_known).and_then(landmarks::expected) {
        let same = if low == high { "yes" } else { "no" };
        let (low, high) = (spoken::value(&low, words)?, spoken::value(&high, words)?);
        said.push(words.say("numbers-landmark", &[("same", same), ("low", &low), ("high", &high)])?);
    }
    Ok(said)
}

/// The weeks rule in a few words: `2 cm below weeks, within 2`.
pub fn weeks_rule(rule: WeeksRule, words: &Words) -> Said {
    let values = [
        ("difference", rule.apart()),
        ("direction", rule.direction().to_owned()),
        ("within", if rule.within() { "yes" } else { "no" }.to_owned()),
        ("limit", rule.limit.to_string()),
    ];
    say(words, "numbers-weeks-rule", &values)
}

fn of_heart(baby: &Baby, words: &Words) -> Result<Vec<String>, WordsError> {
    let mut said = vec![];
    let counts = baby.heart_counts.value().map_or(&[][..], Vec::as_slice);
    if let Some(rate) = heart_rate(baby).filter(|_| !counts.is_empty()) {
        let mut steps: Vec<String> = vec![];
        for step in counts.iter().map(|count| beside(count_step(*count), &[], 1)) {
            if !steps.contains(&step) {
                steps.push(step);
            }
        }
        let values = [
            ("mean", beside(rate.mean, &[110.0, 160.0], 0)),
            ("low", beside(rate.low, &[110.0, 160.0], 0)),
            ("high", beside(rate.high, &[110.0, 160.0], 0)),
            ("steps", steps.join(", ")),
        ];
        said.push(say(words, "numbers-heart", &values)?);
    }
    if let Some(rise) = baby.heart_rise.value() {
        said.push(words.say("numbers-heart-rise", &[("rise", &rise.to_string())])?);
    }
    Ok(said)
}

fn of_weights(weights: &Weights, by_tape: bool, words: &Words) -> Result<Vec<String>, WordsError> {
    let mut said = vec![];
    if let Some(hand) = weights.hand {
        let (low, high) = (grams(hand.low, words)?, grams(hand.high, words)?);
        said.push(if hand.low == hand.high {
            words.say("numbers-hand", &[("weight", &low)])?
        } else {
            words.say("numbers-hand-range", &[("low", &low), ("high", &high)])?
        });
    }
    if let Some(ByTape { johnson, dare, buchmann, buchmann_large }) = weights.by_tape.filter(|_| by_tape) {
        if let Some(johnson) = johnson {
            let values = [
                ("low", johnson.grams[0].to_string()),
                ("high", johnson.grams[1].to_string()),
                ("first", johnson.n[0].to_string()),
                ("last", johnson.n[1].to_string()),
            ];
            said.push(say(words, "numbers-johnson", &values)?);
        }
        if let Some(dare) = dare {
            said.push(words.say("numbers-dare", &[("grams", &dare.to_string())])?);
        }
        let large = if buchmann_large { "yes" } else { "no" };
        said.push(words.say("numbers-buchmann", &[("grams", &buchmann.to_string()), ("large", large)])?);
        if let Some(apart) = weights.far_apart() {
            said.push(words.say("numbers-weights-apart", &[("grams", &apart.to_string())])?);
        }
        said.push(words.say("numbers-rough", &[])?);
    }
    Ok(said)
}

fn grams(weight: Grams, words: &Words) -> Said {
    let (pounds, ounces) = weight.pounds_and_ounces();
    let values = [
        ("grams", format!("{:.0}", weight.get())),
        ("pounds", pounds.to_string()),
        ("ounces", ounces.to_string()),
    ];
    say(words, "numbers-grams", &values)
}

fn of_curves(weeks: Option<Gestation>, words: &Words) -> Result<Vec<String>, WordsError> {
    let Some(weeks) = weeks else { return Ok(vec![words.say("numbers-curves-no-weeks", &[])?]) };
    let curves = weight_curves(weeks);
    let line = |line: Option<Line>, id: &str, none: &str| match line {
        None => words.say(none, &[]),
        Some(line) => {
            let [low, middle, high] = line.map(|(_, grams)| format!("{grams:.0}"));
            say(words, id, &[("low", low), ("middle", middle), ("high", high)])
        }
    };
    Ok(vec![
        words.say("numbers-curves-of", &[("weeks", &weeks.to_string())])?,
        line(curves.intergrowth, "numbers-curves-intergrowth", "numbers-curves-intergrowth-none")?,
        line(curves.hadlock, "numbers-curves-hadlock", "numbers-curves-hadlock-none")?,
    ])
}

fn say(words: &Words, id: &str, values: &[(&str, String)]) -> Said {
    let values: Vec<(&str, &str)> = values.iter().map(|(name, value)| (*name, value.as_str())).collect();
    words.say(id, &values)
}
