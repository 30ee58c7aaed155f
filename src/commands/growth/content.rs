//! The words of the sheet. In: read visits and what is reckoned of them together. Out: `Content` for the layout `growth.toml`, the
//! figure in words, and what is told beside the file.

use super::super::check::weeks_rule;
use super::LEDGER;
use super::load::Loaded;
use super::marks::{centimetres, reasons};
use crate::chart::paragraph::{Column, paragraph};
use crate::chart::said;
use crate::exam::dates::written;
use crate::exam::{Baby, Exam, Finding, spoken};
use crate::reckon::{Course, Grade, LaidTape, Remark, beside, heart_rate};
use crate::sheet::{Block, Cell, Content, Kind};
use crate::words::{Words, WordsError};

type Said = Result<String, WordsError>;

/// Everything the sheet speaks of.
#[derive(Clone)]
pub struct Told<'a> {
    /// The visits as they were given; all of them were read.
    pub loaded: &'a [Loaded<'a>],
    /// What they are together.
    pub course: &'a Course,
    /// Ids of lesser remarks that stood and are left out.
    pub quieted: Vec<&'static str>,
    /// The words.
    pub words: &'a Words,
}

/// A visit with its exam.
struct At<'a> {
    loaded: &'a Loaded<'a>,
    exam: &'a Exam,
    weeks: String,
}

/// Edges of the table's columns, in thousandths of its width: weeks, tape, against weeks, curve, lie, brim, heart.
const EDGES: [u16; 8] = [0, 120, 190, 325, 470, 790, 905, 1000];

impl Told<'_> {
    fn say(&self, id: &str, values: &[(&str, String)]) -> Said {
        let values: Vec<(&str, &str)> = values.iter().map(|(name, value)| (*name, value.as_str())).collect();
        self.words.say(id, &values)
    }

    /// The visits, oldest first.
    fn visits(&self) -> impl Iterator<Item = At<'_>> {
        self.course.order.iter().filter_map(|&index| {
            let loaded = &self.loaded[index];
            let exam = loaded.reading.exam.as_ref()?;
            Some(At { loaded, exam, weeks: exam.weeks?.to_string() })
        })
    }

    /// Whether the curves speak of this pregnancy.
    pub fn curves(&self) -> bool {
        self.visits().all(|visit| visit.exam.babies.len() == 1)
    }

    /// What the visits call for together, for whoever runs the program.
    pub fn together(&self) -> Said {
        let mut told = String::new();
        for remark in &self.course.remarks {
            let grade = self.words.say(&format!("grade-{}", remark.grade.name()), &[])?;
            told.push_str(&format!("{grade} [{}]\n", remark.id));
            told.push_str(&paragraph(&remark.text(self.words)?, Column::Indented));
        }
        Ok(told)
    }

    /// The words of the sheet.
    pub fn content(&self) -> Result<Content, WordsError> {
        let mut out = Content { title: self.say("growth-title", &[])?, ..Content::default() };
        let mut put = |name: &str, blocks: Vec<Block>| {
            out.blocks.insert(name.to_owned(), blocks);
        };
        put("growth-act-now", self.pressing()?);
        put("growth-title", vec![Block::new(Kind::Title, self.say("growth-title", &[])?)]);
        put("growth-span", vec![Block::new(Kind::Text, self.span()?)]);
        put("growth-table", self.table()?);
        put("growth-earlier", self.earlier()?.map(|text| Block::new(Kind::Text, text)).into_iter().collect());
        put("growth-remarks", self.remarks()?);
        put("growth-foot", vec![Block::new(Kind::Text, self.foot()?)]);
        out.description = format!("{} {}", self.span()?, self.about()?);
        Ok(out)
    }

    /// How many visits, from when to when, and when she is due.
    fn span(&self) -> Said {
        let weeks: Vec<String> = self.visits().map(|visit| visit.weeks).collect();
        let (first, last) =
            (weeks.first().cloned().unwrap_or_default(), weeks.last().cloned().unwrap_or_default());
        let due = self.course.due.map_or_else(|| "none".to_owned(), written);
        let values = [("visits", weeks.len().to_string()), ("first", first), ("last", last), ("due", due)];
        let span = self.say("growth-span", &values)?;
        if self.curves() { Ok(span) } else { Ok(format!("{span} {}", self.say("growth-no-curves", &[])?)) }
    }

    /// What cannot wait and what cannot all be right, of every visit; what is the same at several is said once.
    fn pressing(&self) -> Result<Vec<Block>, WordsError> {
        let mut lines: Vec<(Grade, String, Vec<String>)> = vec![];
        for visit in self.visits() {
            for remark in visit.loaded.reckoning.remarks.iter().filter(|remark| !remark.grade.is_lesser()) {
                let text = said::sentence(remark, visit.exam.babies.len(), self.words)?;
                let text = self.line(remark, text)?;
                match lines.iter_mut().find(|(_, line, _)| *line == text) {
                    Some((_, _, weeks)) => weeks.push(visit.weeks.clone()),
                    None => lines.push((remark.grade, text, vec![visit.weeks.clone()])),
                }
            }
        }
        lines.sort_by_key(|(grade, ..)| *grade);
        let said = |(_, text, weeks): (Grade, String, Vec<String>)| {
            let text = self.say("growth-at", &[("weeks", weeks.join(", ")), ("text", text)])?;
            Ok(Block::new(Kind::Strong, text))
        };
        lines.into_iter().map(said).collect()
    }

    /// `Look again [id]: sentence`; what cannot wait begins in capitals.
    fn line(&self, remark: &Remark, text: String) -> Said {
        let grade = self.words.say(&format!("grade-{}", remark.grade.name()), &[])?;
        let grade = if remark.grade == Grade::ActNow { grade.to_uppercase() } else { grade };
        Ok(format!("{grade} [{}]: {text}", remark.id))
    }

    /// What the visits call for together; then what the last of them calls for of tape and lie.
    fn remarks(&self) -> Result<Vec<Block>, WordsError> {
        let mut blocks = vec![];
        for remark in &self.course.remarks {
            blocks.push(Block::new(Kind::Text, self.line(remark, remark.text(self.words)?)?));
        }
        let Some(last) = self.visits().last() else { return Ok(blocks) };
        // Over the visits these are said above.
        let serial = ["tape-static", "tape-falling"];
        let of_growth = |remark: &&Remark| {
            let of_lie =
                ["not-head-down", "crosswise-at-term", "presentation-not-known"].contains(&remark.id);
            (remark.id.starts_with("tape-") && !serial.contains(&remark.id)) || of_lie
        };
        let lesser = last.loaded.reckoning.remarks.iter().filter(|remark| remark.grade.is_lesser());
        for remark in lesser.filter(of_growth) {
            let text = self.line(remark, said::sentence(remark, last.exam.babies.len(), self.words)?)?;
            let text = self.say("growth-at", &[("weeks", last.weeks.clone()), ("text", text)])?;
            blocks.push(Block::new(Kind::Text, text));
        }
        if blocks.is_empty() && self.pressing()?.is_empty() {
            blocks.push(Block::new(Kind::Text, self.say("check-remarks-none", &[])?));
        }
        Ok(blocks)
    }

    fn table(&self) -> Result<Vec<Block>, WordsError> {
        let heads = ["weeks", "tape", "rule", "curve", "lie", "brim", "heart"];
        let heads = heads.map(|name| self.say(&format!("growth-head-{name}"), &[]));
        let mut rows: Vec<Vec<String>> = vec![heads.into_iter().collect::<Result<_, _>>()?];
        for visit in self.visits() {
            rows.push(self.row(&visit)?);
        }
        let mut blocks = vec![];
        for (row, cells) in rows.into_iter().enumerate() {
            for (column, (text, edges)) in cells.into_iter().zip(EDGES.windows(2)).enumerate() {
                let (row, head) = (row as u16, row == 0 || column == 0);
                blocks.push(Block::new(Kind::Cell(Cell { row, across: (edges[0], edges[1]), head }), text));
            }
        }
        Ok(blocks)
    }

    fn row(&self, visit: &At<'_>) -> Result<Vec<String>, WordsError> {
        let (exam, reckoning) = (visit.exam, &visit.loaded.reckoning);
        let dash = self.say("growth-dash", &[])?;
        let weeks = match exam.dates.visit {
            None => visit.weeks.clone(),
            Some(day) => {
                self.say("growth-dated", &[("weeks", visit.weeks.clone()), ("date", written(day))])?
            }
        };
        let tape = self.tape_of(visit);
        let rule = reckoning.tape.as_ref().and_then(|tape| tape.weeks_rule);
        let rule = match (tape, rule) {
            (Some(tape), Some(rule)) if tape.unfit.is_empty() => {
                self.say("growth-rule", &[("rule", weeks_rule(rule, self.words)?)])?
            }
            _ => dash.clone(),
        };
        let curve = tape.map_or_else(|| Ok(dash.clone()), |tape| self.answer(tape))?;
        let lies = self.of_babies(visit, |index, _| {
            let conclusion = &reckoning.conclusions[index];
            let lie = said::lie_and_back(conclusion, self.words)?;
            let lie = lie.trim_end_matches('.').to_owned();
            if conclusion.unsure { self.say("value-unsure", &[("value", lie)]) } else { Ok(lie) }
        })?;
        let brim = self.of_babies(visit, |index, baby| {
            let read = |key: &str| self.read_of(exam, &format!("baby.{}.{key}", index + 1));
            match (read("head-above-brim")?, read("descent")?) {
                (Some(fifths), _) if baby.head_above_brim.value().is_some() => {
                    self.say("growth-palpable", &[("fifths", fifths)])
                }
                (Some(words), None) | (_, Some(words)) => Ok(words),
                (None, None) => Ok(dash.clone()),
            }
        })?;
        let heart = self.of_babies(visit, |index, baby| match (heart_rate(baby), &baby.heart) {
            (Some(rate), _) => Ok(beside(rate.mean, &[110.0, 160.0], 0)),
            (None, Finding::NotExamined) => Ok(dash.clone()),
            (None, Finding::Found(_)) => self.say("growth-heard", &[]),
            (None, _) => {
                let heart = self.read_of(exam, &format!("baby.{}.heart", index + 1))?;
                Ok(heart.unwrap_or_else(|| dash.clone()))
            }
        })?;
        let laid = self.read_of(exam, "mother.fundal-height")?.unwrap_or(dash);
        Ok(vec![weeks, laid, rule, curve, lies, brim, heart])
    }

    /// Something of each baby, with its number when there are several.
    fn of_babies(&self, visit: &At<'_>, of: impl Fn(usize, &Baby) -> Said) -> Said {
        let babies = &visit.exam.babies;
        let mut all = vec![];
        for (index, baby) in babies.iter().enumerate() {
            let text = of(index, baby)?;
            all.push(if babies.len() > 1 {
                self.say("growth-numbered", &[("baby", (index + 1).to_string()), ("text", text)])?
            } else {
                text
            });
        }
        Ok(all.join("; "))
    }

    /// The tape of a visit; of two visits on one day the first holds it.
    fn tape_of(&self, visit: &At<'_>) -> Option<&LaidTape> {
        let laid = visit.loaded.reckoning.tape.as_ref()?;
        let same = |tape: &&LaidTape| {
            let of = self.loaded.get(tape.visit).and_then(|loaded| loaded.reading.exam.as_ref());
            let day = of.is_some_and(|exam| {
                Some(tape.at) == visit.exam.weeks
                    || (exam.dates.visit.is_some() && exam.dates.visit == visit.exam.dates.visit)
            });
            !tape.earlier && day && (tape.cm - laid.measured).abs() < 1e-9
        };
        self.course.tapes.iter().find(same)
    }

    /// z and centile, or why there is none.
    fn answer(&self, tape: &LaidTape) -> Said {
        match tape.standard {
            _ if !tape.unfit.is_empty() => self.say("growth-why-not", &[("why", reasons(tape, self.words)?)]),
            None => self.say("growth-outside", &[]),
            Some(standard) => {
                let values = [("z", format!("{:.2}", standard.z)), ("centile", standard.shown_centile())];
                self.say("growth-standard", &values)
            }
        }
    }

    /// Tapes that were only noted as earlier ones.
    fn earlier(&self) -> Result<Option<String>, WordsError> {
        let mut told = vec![];
        for tape in self.course.tapes.iter().filter(|tape| tape.earlier) {
            let values =
                [("cm", centimetres(tape)), ("weeks", tape.at.to_string()), ("answer", self.answer(tape)?)];
            told.push(self.say("growth-earlier-one", &values)?);
        }
        if told.is_empty() {
            return Ok(None);
        }
        self.say("growth-earlier", &[("tapes", told.join("; "))]).map(Some)
    }

    /// The figure in words.
    pub fn about(&self) -> Said {
        let mut visits = vec![];
        for visit in self.visits() {
            let cells = self.row(&visit)?;
            let values = [
                ("weeks", visit.weeks.clone()),
                ("tape", cells[1].clone()),
                ("answer", cells[3].clone()),
                ("lie", cells[4].clone()),
            ];
            visits.push(self.say("growth-about-visit", &values)?);
        }
        visits.extend(self.earlier()?);
        let id = if self.curves() { "growth-about" } else { "growth-about-no-curves" };
        self.say(id, &[("visits", visits.join(" "))])
    }

    /// What is to be known of the dates, what was left out, cautions and versions.
    fn foot(&self) -> Said {
        let mut told = vec![];
        if self.course.due_apart > 0 {
            told.push(self.say("growth-due-apart", &[("days", self.course.due_apart.to_string())])?);
        }
        let without = &self.course.without_due;
        if !without.is_empty() {
            let weeks = |index: &usize| Some(self.loaded[*index].reading.exam.as_ref()?.weeks?.to_string());
            let weeks: Vec<String> = without.iter().filter_map(weeks).collect();
            let which = if without.len() == self.loaded.len() { "all" } else { "some" };
            let values = [("which", which.to_owned()), ("weeks", weeks.join(", "))];
            told.push(self.say("growth-without-due", &values)?);
        }
        if !self.quieted.is_empty() {
            told.push(self.say("check-quieted", &[("ids", self.quieted.join(", "))])?);
        }
        told.push(self.say("growth-dash-means", &[])?);
        told.push(self.say("growth-caution", &[])?);
        told.push(self.say("chart-cautions", &[])?);
        let versions = [("version", env!("CARGO_PKG_VERSION").to_owned()), ("ledger", LEDGER.to_owned())];
        told.push(self.say("chart-versions", &versions)?);
        if self.loaded.iter().any(|loaded| loaded.reckoning.local) {
            told.push(self.say("check-local", &[])?);
        }
        Ok(told.join(" "))
    }

    /// A finding in words, without what stands in brackets: a cell is narrow.
    fn read_of(&self, exam: &Exam, key: &str) -> Result<Option<String>, WordsError> {
        let Some((_, words)) = exam.read.iter().find(|(read, _)| read == key) else { return Ok(None) };
        let bare = match words.split_once(" (") {
            Some((before, _)) => before,
            None => words.trim_end_matches('?'),
        };
        let doubt = if words.ends_with('?') { "?" } else { "" };
        Ok(Some(format!("{}{doubt}", spoken::value(bare, self.words)?)))
    }
}
