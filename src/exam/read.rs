//! Reads an exam file. In: its name and bytes. Out: the exam if the file can be used, and every problem in it.
//!
//! Reading never stops at the first fault: the text is taken apart by TOML's recoverable table, each value is read by
//! itself, and problems come out sorted by place.

use super::dates;
use super::keys::{self, KEYS, KEYS_MEANT, Key, Scope, VAGINAL_KEYS};
use super::model::*;
use super::piece::{Fault, Piece, take_apart, trailing_bracket};
use super::place::{back, fundus_level, heart, place};
use super::quantity as q;
use super::say;
use super::syntax::{self, Mended};
use super::words::{Row, StateWord, Vocabulary, fold, nearest};
use crate::report::{Lines, Problem, any_error, clip, placed, quoted};
use crate::units::Gestation;
use jiff::civil::Date;
use std::collections::BTreeMap;
use std::ops::Range;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Largest file read, in bytes.
pub const MOST_BYTES: usize = 1 << 20;
/// More problems than this help nobody.
const MOST_PROBLEMS: usize = 50;
/// Longest value of one finding, in bytes; a note may be longer.
const MOST_VALUE_BYTES: usize = 1000;
/// Babies in one exam.
const MOST_BABIES: usize = 2;
/// Days in a cycle.
const CYCLE_DAYS: std::ops::RangeInclusive<u16> = 18..=60;
/// Births before this one.
const BIRTHS: std::ops::RangeInclusive<u16> = 0..=20;

/// What came of reading a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// The exam; `None` when any problem is an error.
    pub exam: Option<Exam>,
    /// Every problem, sorted by place.
    pub problems: Vec<Problem>,
    /// Bytes of each finding's value, by key: `mother.fundal-height`, `baby.1.back`.
    pub spans: BTreeMap<String, Range<usize>>,
}

impl Reading {
    fn failed(problem: Problem) -> Self {
        Self { exam: None, problems: vec![problem], spans: BTreeMap::new() }
    }
}

/// Read the exam file `name` (as the user named it, for messages).
pub fn read(name: &str, bytes: &[u8]) -> Reading {
    if bytes.len() > MOST_BYTES {
        return Reading::failed(
            Problem::of_file("file-too-big", name, "the file is larger than 1 MiB")
                .expecting("an exam of a few dozen lines"),
        );
    }
    let source = match std::str::from_utf8(bytes) {
        Ok(source) => source.strip_prefix('\u{feff}').unwrap_or(source),
        Err(fault) => {
            let line = bytes[..fault.valid_up_to()].iter().filter(|b| **b == b'\n').count() + 1;
            return Reading::failed(
                Problem::of_file("not-text", name, format!("line {line} is not UTF-8 text"))
                    .expecting("a plain text file saved as UTF-8"),
            );
        }
    };
    let Mended { text, problems: mut syntax, stop } = syntax::mend(name, source);
    let (table, _) = DeTable::parse_recoverable(&text);
    let mut reader = Reader {
        file: name,
        source,
        problems: vec![],
        spans: BTreeMap::new(),
        dates: vec![],
        broken: !syntax.is_empty(),
    };
    let exam = reader.exam(table.get_ref());
    let Reader { mut problems, spans, .. } = reader;
    if stop {
        problems.clear();
    }
    if !syntax.is_empty() {
        // What stands on a broken line was not understood: only its syntax is reported.
        let lines = Lines::of(source);
        let line = |p: &Problem| p.span.as_ref().map(|span| lines.line(span.start));
        let broken: Vec<Option<usize>> = syntax.iter().map(line).collect();
        problems.retain(|p| !broken.contains(&line(p)));
    }
    problems.append(&mut syntax);
    let errors = any_error(&problems);
    let problems = placed(problems, source, MOST_PROBLEMS);
    let exam = (!errors).then_some(exam);
    Reading { exam, problems, spans }
}

struct Reader<'a> {
    file: &'a str,
    source: &'a str,
    problems: Vec<Problem>,
    spans: BTreeMap<String, Range<usize>>,
    /// Dates as they are read: key and canonical words.
    dates: Vec<(String, String)>,
    /// True when some lines could not be read: what is missing may stand there.
    broken: bool,
}

type Entry<'t> = (&'t Spanned<std::borrow::Cow<'t, str>>, &'t Spanned<DeValue<'t>>);

fn entry<'t>(table: &'t DeTable<'t>, name: &str) -> Option<&'t Spanned<DeValue<'t>>> {
    table.iter().find(|(key, _)| key.get_ref() == name).map(|(_, value)| value)
}

/// Lists in which a comma may stand between values; a place has commas of its own.
fn comma_separates(key: &Key) -> bool {
    !matches!(key.name, "limbs" | "lumps" | "earlier-tapes")
}

impl Reader<'_> {
    fn exam(&mut self, top: &DeTable<'_>) -> Exam {
        let mut extra_notes = vec![];
        self.known_keys(top, Scope::Top, &mut extra_notes);
        let mother_table = entry(top, "mother").and_then(|value| self.table(value, "mother"));
        let empty = DeTable::new();
        let mother_keys = mother_table.unwrap_or(&empty);
        if mother_table.is_some() {
            self.known_keys(mother_keys, Scope::Mother, &mut extra_notes);
        }
        let mother = self.mother(mother_keys);
        let mut babies = vec![];
        for table in self.baby_tables(top) {
            self.known_keys(table, Scope::Baby, &mut extra_notes);
            let prefix = format!("baby.{}", babies.len() + 1);
            babies.push(self.baby(table, &prefix));
        }
        if babies.is_empty() {
            babies.push(self.baby(&empty, "baby.1"));
        }
        let weeks = self.weeks(top);
        let note = self.note(top, extra_notes);
        let mut exam = Exam { weeks, mother, babies, note, read: vec![] };
        self.earlier_tapes_are_earlier(&exam);
        exam.read = self.read_in_order(&exam);
        if exam.read.is_empty() && self.problems.is_empty() && exam.note.is_none() && !self.broken {
            self.problems.push(
                Problem::of_file("nothing-in-it", self.file, "the file records nothing")
                    .expecting("at least one finding, such as `head = \"above pubic bone\"` under [baby]"),
            );
        }
        exam
    }

    fn read_in_order(&self, exam: &Exam) -> Vec<(String, String)> {
        let mut read = say::findings(exam);
        read.retain(|(key, _)| self.spans.contains_key(key) && key != "note");
        read.extend(self.dates.iter().cloned());
        if let Some(note) = &exam.note
            && self.spans.contains_key("note")
        {
            read.push(("note".to_owned(), note.clone()));
        }
        read.sort_by_key(|(key, _)| self.spans.get(key).map(|span| span.start));
        read
    }

    fn mother(&mut self, t: &DeTable<'_>) -> Mother {
        let (s, m) = (Scope::Mother, "mother");
        Mother {
            fundal_height: self.one(t, s, m, "fundal-height", |p| q::length(p, q::LENGTH_CM)),
            girth: self.one(t, s, m, "girth", |p| q::length(p, q::GIRTH_CM)),
            navel: self.one(t, s, m, "navel", |p| q::length(p, q::LENGTH_CM)),
            fundus: self.one(t, s, m, "fundus", fundus_level),
            shape: self.many(t, s, m, "shape", word),
            womb: self.many(t, s, m, "womb", word),
            water: self.one(t, s, m, "water", word),
            lumps: self.many(t, s, m, "lumps", place),
            tape_unfit: self.many(t, s, m, "tape-unfit", word),
            scars: self.many(t, s, m, "scars", word),
            operations: self.many(t, s, m, "operations", word),
            womb_cut: self.one(t, s, m, "womb-cut", word),
            skin: self.many(t, s, m, "skin", word),
            movements: self.one(t, s, m, "movements", word),
            reports: self.many(t, s, m, "reports", word),
            denies: self.many(t, s, m, "denies", word),
            pulse: self.one(t, s, m, "pulse", q::beats),
            placenta: self.one(t, s, m, "placenta", word),
            births_before: self.one(t, s, m, "births-before", births),
            posture: self.one(t, s, m, "posture", word),
            earlier_tapes: match self.many(t, s, m, "earlier-tapes", q::earlier_tape) {
                Finding::Found(mut found) => {
                    found.value.sort_by_key(|tape| tape.at);
                    Finding::Found(found)
                }
                other => other,
            },
        }
    }

    fn baby(&mut self, t: &DeTable<'_>, b: &str) -> Baby {
        let s = Scope::Baby;
        Baby {
            head: self.one(t, s, b, "head", place),
            breech: self.one(t, s, b, "breech", place),
            back: self.one(t, s, b, "back", back),
            limbs: self.many(t, s, b, "limbs", place),
            head_above_brim: self.one(t, s, b, "head-above-brim", q::fifths),
            descent: self.one(t, s, b, "descent", word),
            prominence: self.one(t, s, b, "prominence", word),
            attitude: self.one(t, s, b, "attitude", word),
            legs: self.one(t, s, b, "legs", word),
            dip_at_navel: self.one(t, s, b, "dip-at-navel", word),
            heart: self.one(t, s, b, "heart", heart),
            heart_with: self.one(t, s, b, "heart-with", word),
            heart_counts: self.many(t, s, b, "heart-counts", q::count),
            heart_rate: self.one(t, s, b, "heart-rate", q::rate),
            heart_rise: self.one(t, s, b, "heart-rise", q::beats),
            heart_rhythm: self.one(t, s, b, "heart-rhythm", word),
            weight_by_hand: self.one(t, s, b, "weight-by-hand", q::weight_range),
            weight_by_scan: self.one(t, s, b, "weight-by-scan", q::scan_weight),
            moved_under_hands: self.one(t, s, b, "moved-under-hands", word),
            lie: self.one(t, s, b, "lie", word),
            presentation: self.one(t, s, b, "presentation", word),
            position: self.one(t, s, b, "position", position),
        }
    }

    /// A finding that holds one value.
    fn one<T>(
        &mut self,
        table: &DeTable<'_>,
        scope: Scope,
        prefix: &str,
        name: &str,
        parse: impl Fn(Piece<'_>) -> Result<T, Fault>,
    ) -> Finding<T> {
        let found = self.many_or_one(table, scope, prefix, name, &parse);
        match found {
            Finding::Found(found) => {
                let Found { value, sure, known_by } = found;
                match value.into_iter().next() {
                    Some(value) => Finding::Found(Found { value, sure, known_by }),
                    None => Finding::NotExamined,
                }
            }
            Finding::NotExamined => Finding::NotExamined,
            Finding::Absent => Finding::Absent,
            Finding::NotTried => Finding::NotTried,
            Finding::CouldNotTell { reason } => Finding::CouldNotTell { reason },
        }
    }

    /// A finding that holds a list; a single value may stand for it.
    fn many<T>(
        &mut self,
        table: &DeTable<'_>,
        scope: Scope,
        prefix: &str,
        name: &str,
        parse: impl Fn(Piece<'_>) -> Result<T, Fault>,
    ) -> Finding<Vec<T>> {
        self.many_or_one(table, scope, prefix, name, &parse)
    }

    fn many_or_one<T>(
        &mut self,
        table: &DeTable<'_>,
        scope: Scope,
        prefix: &str,
        name: &str,
        parse: &impl Fn(Piece<'_>) -> Result<T, Fault>,
    ) -> Finding<Vec<T>> {
        let (Some(key), Some(value)) = (keys::find(scope, name), entry(table, name)) else {
            return Finding::NotExamined;
        };
        self.spans.insert(format!("{prefix}.{name}"), value.span());
        let DeValue::Array(items) = value.get_ref() else {
            return self.texts(key, value, parse).unwrap_or(Finding::NotExamined);
        };
        if !key.list {
            self.fault(key, value.span(), Fault::whole("one-value", "a list cannot stand here"));
            return Finding::NotExamined;
        }
        let mut all: Option<Found<Vec<T>>> = None;
        for item in items {
            if self.problems.len() > MOST_PROBLEMS {
                break;
            }
            let found = match self.texts(key, item, parse) {
                None => continue,
                Some(Finding::Found(found)) => found,
                Some(state) if items.len() == 1 => return state,
                Some(_) => {
                    let fault = Fault::whole(
                        "state-in-list",
                        "this speaks for the whole finding, not for one part of a list",
                    );
                    self.fault(key, item.span(), fault.expecting("it alone, without other values"));
                    continue;
                }
            };
            match &mut all {
                None => all = Some(found),
                Some(all) => {
                    all.value.extend(found.value);
                    all.sure &= found.sure;
                    if found.known_by != KnownBy::Hands {
                        all.known_by = found.known_by;
                    }
                }
            }
        }
        if items.is_empty() {
            self.fault(key, value.span(), Fault::whole("empty-value", "an empty list says nothing"));
        }
        all.map_or(Finding::NotExamined, Finding::Found)
    }

    /// A value that is not a list: a text (which may hold several values), a number, a date or yes/no.
    fn texts<T>(
        &mut self,
        key: &Key,
        value: &Spanned<DeValue<'_>>,
        parse: &impl Fn(Piece<'_>) -> Result<T, Fault>,
    ) -> Option<Finding<Vec<T>>> {
        let span = value.span();
        let text = match self.text_of(value) {
            Ok(text) => text,
            Err(fault) => {
                self.fault(key, span, fault);
                return None;
            }
        };
        match read_text(key, Piece::new(&text), parse) {
            Ok(finding) => Some(finding),
            Err(fault) => {
                self.fault(key, span, fault);
                None
            }
        }
    }

    /// The text of a value: of a string what it says; of a number what was typed; `true` is yes.
    fn text_of(&self, value: &Spanned<DeValue<'_>>) -> Result<String, Fault> {
        match value.get_ref() {
            DeValue::String(text) => Ok(text.clone().into_owned()),
            DeValue::Integer(_) | DeValue::Float(_) => {
                Ok(self.source.get(value.span()).unwrap_or_default().to_owned())
            }
            DeValue::Boolean(yes) => Ok(yes.word().unwrap_or_default().to_owned()),
            DeValue::Datetime(_) => Err(Fault::whole("wrong-kind", "a date cannot stand here")),
            DeValue::Array(_) => Err(Fault::whole("wrong-kind", "a list inside a list cannot stand here")),
            DeValue::Table(_) => Err(Fault::whole("wrong-kind", "a table cannot stand here")),
        }
    }

    /// Report `fault` of the value at `span`, underlining the part it is about when that part can be found.
    fn fault(&mut self, key: &Key, span: Range<usize>, fault: Fault) {
        let raw = self.source.get(span.clone()).unwrap_or_default();
        let inner = match raw.as_bytes() {
            [b'"' | b'\'', .., _]
                if !raw.contains('\\') && !raw.starts_with("\"\"\"") && !raw.starts_with("'''") =>
            {
                span.start + 1
            }
            [b'"' | b'\'', ..] => usize::MAX,
            _ => span.start,
        };
        let at = match fault.at {
            Some(at) if inner != usize::MAX && !at.is_empty() && inner + at.end <= span.end => {
                inner + at.start..inner + at.end
            }
            _ => span,
        };
        let expected = fault.expected.unwrap_or_else(|| key.expected());
        self.problems.push(
            Problem::at(fault.id, self.file, at, format!("{}: {}", key.name, fault.message))
                .expecting(expected)
                .suggesting(fault.suggestion),
        );
    }

    /// A table, or a problem that says one is wanted.
    fn table<'t>(&mut self, value: &'t Spanned<DeValue<'t>>, name: &str) -> Option<&'t DeTable<'t>> {
        if let DeValue::Table(table) = value.get_ref() {
            return Some(table);
        }
        self.problems.push(
            Problem::at(
                "wrong-kind",
                self.file,
                value.span(),
                format!("`{name}` is a heading, not a finding"),
            )
            .expecting(format!("[{name}] on a line of its own, findings below it")),
        );
        None
    }

    fn baby_tables<'t>(&mut self, top: &'t DeTable<'t>) -> Vec<&'t DeTable<'t>> {
        let Some(value) = entry(top, "baby") else { return vec![] };
        let DeValue::Array(items) = value.get_ref() else {
            return self.table(value, "baby").into_iter().collect();
        };
        let mut tables = vec![];
        for item in items {
            if tables.len() == MOST_BABIES {
                self.problems.push(
                    Problem::at(
                        "too-many-babies",
                        self.file,
                        item.span(),
                        "a third baby cannot be recorded here",
                    )
                    .expecting("one [baby], or [[baby]] twice for twins"),
                );
                break;
            }
            tables.extend(self.table(item, "baby"));
        }
        tables
    }

    /// Report the keys that do not belong to `scope`.
    fn known_keys(&mut self, table: &DeTable<'_>, scope: Scope, extra_notes: &mut Vec<String>) {
        let mut entries: Vec<Entry<'_>> = table.iter().collect();
        entries.sort_by_key(|(key, _)| key.span().start);
        for (key, value) in entries {
            if self.problems.len() > MOST_PROBLEMS {
                return;
            }
            let name: &str = key.get_ref();
            let heading = scope == Scope::Top && ["mother", "baby"].contains(&name);
            if heading || keys::find(scope, name).is_some() {
                continue;
            }
            if VAGINAL_KEYS.contains(&name) {
                self.vaginal((key, value), extra_notes);
            } else {
                self.unknown_key((key, value), scope);
            }
        }
    }

    /// Station, cervix and the like are kept as words for the chart; they never become fifths.
    fn vaginal(&mut self, (key, value): Entry<'_>, extra_notes: &mut Vec<String>) {
        let name: &str = key.get_ref();
        let raw = match value.get_ref() {
            DeValue::String(text) => text.clone().into_owned(),
            DeValue::Integer(_)
            | DeValue::Float(_)
            | DeValue::Boolean(_)
            | DeValue::Datetime(_)
            | DeValue::Array(_)
            | DeValue::Table(_) => self.source.get(value.span()).unwrap_or_default().to_owned(),
        };
        extra_notes.push(format!("{name}: {raw}"));
        let message = format!(
            "{name}: findings of a vaginal examination are not recorded here; the words are kept in the note"
        );
        self.problems.push(
            Problem::at("vaginal-finding", self.file, key.span(), message)
                .expecting("findings of the abdomen; fifths above the brim are felt, never worked out from a station")
                .as_warning(),
        );
    }

    fn unknown_key(&mut self, (key, value): Entry<'_>, scope: Scope) {
        let name: &str = key.get_ref();
        let at = |message: String| Problem::at("unknown-key", self.file, key.span(), message);
        let tidy = name.to_lowercase().replace(['_', ' '], "-");
        let meant = KEYS_MEANT.iter().find(|(tried, _)| *tried == tidy).map(|(_, meant)| *meant);
        let elsewhere =
            KEYS.iter().find(|k| k.name == name || Some(k.name) == meant).filter(|k| k.scope != scope);
        let is_table = matches!(value.get_ref(), DeValue::Table(_)) && scope == Scope::Top;
        let problem = if let Some(elsewhere) = elsewhere.filter(|k| k.name == name) {
            let mut problem = at(format!("`{name}` does not belong here"));
            problem.id = "misplaced-key";
            problem.expecting(format!("`{name}` {}", elsewhere.scope.place()))
        } else if is_table {
            let rows = [
                Row { word: "mother", also: &["mum", "woman"] },
                Row { word: "baby", also: &["fetus", "foetus", "babies", "twin"] },
            ];
            at(format!("[{}] is not a heading used here", clip(name)))
                .expecting("[mother], [baby], or [[baby]] twice for twins")
                .suggesting(nearest(name, rows).map(|word| format!("[{word}]")))
        } else {
            let here = KEYS.iter().filter(|k| k.scope == scope).map(|k| Row { word: k.name, also: &[] });
            let anywhere = KEYS.iter().map(|k| Row { word: k.name, also: &[] });
            let near = meant.or_else(|| nearest(&tidy, here)).or_else(|| nearest(&tidy, anywhere));
            let place = near
                .and_then(|near| KEYS.iter().find(|k| k.name == near))
                .filter(|k| k.scope != scope)
                .map(|k| format!(" {}", k.scope.place()))
                .unwrap_or_default();
            let names: Vec<&str> = KEYS.iter().filter(|k| k.scope == scope).map(|k| k.name).collect();
            at(format!("{} is not a key used here", quoted(name)))
                .expecting(names.join(", "))
                .suggesting(near.map(|near| format!("`{near}`{place}")))
        };
        self.problems.push(problem);
    }

    fn note(&mut self, top: &DeTable<'_>, extra: Vec<String>) -> Option<String> {
        let mut lines = vec![];
        if let Some(value) = entry(top, "note") {
            self.spans.insert("note".to_owned(), value.span());
            match value.get_ref() {
                DeValue::String(text) => {
                    lines.extend(Some(text.trim().to_owned()).filter(|text| !text.is_empty()))
                }
                _ => {
                    if let Some(key) = keys::find(Scope::Top, "note") {
                        self.fault(
                            key,
                            value.span(),
                            Fault::whole("wrong-kind", "a note is words between quotes"),
                        );
                    }
                }
            }
        }
        lines.extend(extra);
        (!lines.is_empty()).then(|| lines.join("\n"))
    }

    /// Weeks as given, or from the dates; both, when they agree.
    fn weeks(&mut self, top: &DeTable<'_>) -> Option<Gestation> {
        let given = self.top(top, "weeks", |reader, value| {
            let text = reader.text_of(value)?;
            let piece = Piece::new(&text);
            q::weeks(piece)
        });
        let visit = self.date(top, "visit");
        let due = self.date(top, "due");
        let last_period = self.date(top, "last-period");
        let cycle = self.top(top, "cycle", |reader, value| {
            let text = reader.text_of(value)?;
            cycle(Piece::new(&text))
        });
        let scan = self.top(top, "scan", |reader, value| {
            let text = reader.text_of(value)?;
            scan(Piece::new(&text))
        });
        self.dates_in_words(visit, due, last_period, cycle, scan);
        if let (Some(_), None, false) = (cycle, entry(top, "last-period"), self.broken) {
            self.top_fault(
                "cycle",
                Fault::whole("date-missing", "a cycle says nothing without the last period")
                    .expecting("`last-period` beside it"),
            );
        }
        let from_scan = scan.and_then(|(at, date)| dates::due_from_scan(at, date));
        let from_period = last_period
            .and_then(|date| dates::due_from_last_period(date, cycle.map_or(dates::USUAL_CYCLE, i32::from)));
        let settled = from_scan
            .map(|d| ("scan", d))
            .or(due.map(|d| ("due", d)))
            .or(from_period.map(|d| ("last-period", d)));
        self.dates_agree(due, from_scan, from_period, last_period);
        let (by, due) = match (settled, given) {
            (Some(settled), _) => settled,
            (None, given) => return given,
        };
        let Some(visit) = visit else {
            if !self.broken
                && given.is_none()
                && entry(top, "weeks").is_none()
                && entry(top, "visit").is_none()
            {
                self.top_fault(
                    by,
                    Fault::whole(
                        "date-missing",
                        format!("the weeks cannot be worked out from `{by}` without the date of the visit"),
                    )
                    .expecting("`visit = 2026-03-14` beside it"),
                );
            }
            return given;
        };
        let worked_out = dates::at_visit(due, visit).filter(|age| q::WEEKS_DAYS.contains(&age.days()));
        let Some(worked_out) = worked_out else {
            let days = dates::TERM_DAYS - dates::days_between(visit, due);
            let says = if days < 0 {
                "lies before the pregnancy began".to_owned()
            } else {
                format!("would be at {}+{}", days / 7, days % 7)
            };
            self.top_fault(
                "visit",
                Fault::whole("out-of-range", format!("by `{by}` this visit {says}"))
                    .expecting("a visit from 4+0 to 45+0 weeks"),
            );
            return given;
        };
        match given {
            Some(given) if given != worked_out => {
                let message =
                    format!("{given} does not agree with `{by}`: due {due}, so {worked_out} on {visit}");
                self.top_fault(
                    "weeks",
                    Fault::whole("weeks-and-dates-disagree", message)
                        .expecting("one of them mended, or one of them left out"),
                );
                Some(given)
            }
            _ => Some(worked_out),
        }
    }

    fn dates_in_words(
        &mut self,
        visit: Option<Date>,
        due: Option<Date>,
        last_period: Option<Date>,
        cycle: Option<u16>,
        scan: Option<(Gestation, Date)>,
    ) {
        for (name, date) in [("visit", visit), ("due", due), ("last-period", last_period)] {
            self.dates.extend(date.map(|date| (name.to_owned(), dates::written(date))));
        }
        self.dates.extend(cycle.map(|days| ("cycle".to_owned(), days.to_string())));
        self.dates
            .extend(scan.map(|(at, date)| ("scan".to_owned(), format!("{at} on {}", dates::written(date)))));
    }

    /// A scan and a due date must say the same; a due date is used as given when it differs from the last period.
    fn dates_agree(
        &mut self,
        due: Option<Date>,
        from_scan: Option<Date>,
        from_period: Option<Date>,
        last_period: Option<Date>,
    ) {
        if let (Some(due), Some(from_scan)) = (due, from_scan)
            && due != from_scan
        {
            let message =
                format!("{due} does not agree with the scan, by which the baby is due on {from_scan}");
            self.top_fault(
                "due",
                Fault::whole("weeks-and-dates-disagree", message)
                    .expecting("one of them mended, or one of them left out"),
            );
        }
        if let (Some(due), None, Some(from_period), Some(last_period)) =
            (due, from_scan, from_period, last_period)
            && due != from_period
        {
            let calendar = if dates::due_by_calendar_rule(last_period) == Some(due) {
                " (it is the calendar rule's date)"
            } else {
                ""
            };
            let message = format!("due: {due} is used{calendar}; last period + 280 days gives {from_period}");
            if let Some(span) = self.spans.get("due").cloned() {
                self.problems.push(
                    Problem::at("due-and-last-period-differ", self.file, span, message)
                        .expecting("the date that was settled, alone")
                        .as_warning(),
                );
            }
        }
    }

    fn earlier_tapes_are_earlier(&mut self, exam: &Exam) {
        let (Some(weeks), Some(tapes)) = (exam.weeks, exam.mother.earlier_tapes.value()) else { return };
        if let Some(tape) = tapes.iter().find(|tape| tape.at >= weeks) {
            let fault =
                Fault::whole("not-earlier", format!("{} is not before this visit at {weeks}", tape.at));
            if let (Some(key), Some(span)) =
                (keys::find(Scope::Mother, "earlier-tapes"), self.spans.get("mother.earlier-tapes").cloned())
            {
                self.fault(key, span, fault.expecting("tapes of earlier visits; today's is `fundal-height`"));
            }
        }
    }

    /// A key above the first heading.
    fn top<T>(
        &mut self,
        table: &DeTable<'_>,
        name: &str,
        parse: impl Fn(&Self, &Spanned<DeValue<'_>>) -> Result<T, Fault>,
    ) -> Option<T> {
        let value = entry(table, name)?;
        self.spans.insert(name.to_owned(), value.span());
        match parse(self, value) {
            Ok(value) => Some(value),
            Err(fault) => {
                self.top_fault(name, fault);
                None
            }
        }
    }

    fn top_fault(&mut self, name: &str, fault: Fault) {
        if let (Some(key), Some(span)) = (keys::find(Scope::Top, name), self.spans.get(name).cloned()) {
            self.fault(key, span, fault);
        }
    }

    fn date(&mut self, table: &DeTable<'_>, name: &str) -> Option<Date> {
        self.top(table, name, |reader, value| match value.get_ref() {
            DeValue::Datetime(date) => {
                let day = date.date.filter(|_| date.time.is_none() && date.offset.is_none());
                let day = day
                    .ok_or_else(|| Fault::whole("not-a-date", "only a day can stand here, without a time"))?;
                civil(day.year, day.month, day.day).ok_or_else(|| {
                    let raw = reader.source.get(value.span()).unwrap_or_default();
                    Fault::whole("not-a-date", format!("{} is not a day of the calendar", quoted(raw)))
                })
            }
            _ => {
                let text = reader.text_of(value)?;
                day(Piece::new(&text))
            }
        })
    }
}

fn civil(year: u16, month: u8, day: u8) -> Option<Date> {
    Date::new(i16::try_from(year).ok()?, i8::try_from(month).ok()?, i8::try_from(day).ok()?).ok()
}

/// A day written as text, `2025-09-20`.
fn day(piece: Piece<'_>) -> Result<Date, Fault> {
    let parts: Vec<&str> = piece.text.trim().split('-').collect();
    let date = match parts[..] {
        [y, m, d] if (y.len(), m.len(), d.len()) == (4, 2, 2) => match (y.parse(), m.parse(), d.parse()) {
            (Ok(y), Ok(m), Ok(d)) => civil(y, m, d),
            _ => None,
        },
        _ => None,
    };
    date.ok_or_else(|| {
        Fault::at(
            "not-a-date",
            piece,
            format!("{} is not a date that can be read in one way only", quoted(piece.text)),
        )
        .expecting("year-month-day, such as 2026-03-14")
    })
}

/// `12+3 on 2025-09-20`.
fn scan(piece: Piece<'_>) -> Result<(Gestation, Date), Fault> {
    const EXPECTED: &str = "weeks and a date such as `12+3 on 2025-09-20`";
    let Some(at) = piece.text.find(" on ") else {
        return Err(Fault::at(
            "not-a-scan",
            piece,
            format!("{} does not say the weeks and the date", quoted(piece.text)),
        )
        .expecting(EXPECTED));
    };
    let weeks = q::weeks(piece.part(0..at).trim())?;
    let date = day(piece.part(at + 4..piece.text.len()).trim())?;
    Ok((weeks, date))
}

fn cycle(piece: Piece<'_>) -> Result<u16, Fault> {
    let text = piece.text.trim_end_matches("days").trim_end_matches("day").len();
    let days = q::whole_number(piece.part(0..text).trim(), "a number of days such as 28")?;
    if CYCLE_DAYS.contains(&days) {
        return Ok(days);
    }
    Err(Fault::at("out-of-range", piece, format!("a cycle of {days} days is out of range"))
        .expecting(format!("{} to {} days", CYCLE_DAYS.start(), CYCLE_DAYS.end())))
}

fn births(piece: Piece<'_>) -> Result<u8, Fault> {
    if fold(piece.text) == "none" {
        return Ok(0);
    }
    let births = q::whole_number(piece, "a number such as 1")?;
    u8::try_from(births).ok().filter(|_| BIRTHS.contains(&births)).ok_or_else(|| {
        Fault::at("out-of-range", piece, format!("{births} births are out of range")).expecting(format!(
            "{} to {}",
            BIRTHS.start(),
            BIRTHS.end()
        ))
    })
}

/// A value that is one word of its list.
fn word<T: Vocabulary>(piece: Piece<'_>) -> Result<T, Fault> {
    T::find(piece.text).ok_or_else(|| Fault::unknown_word(piece, T::rows()))
}

/// A position; a code without a side is asked, not assumed.
fn position(piece: Piece<'_>) -> Result<Position, Fault> {
    let bare = fold(piece.text);
    if ["ot", "ol", "st", "sl", "mt", "ft", "t"].contains(&bare.as_str()) {
        let letter = bare.chars().next().filter(|c| *c != 't').unwrap_or('o').to_ascii_uppercase();
        return Err(Fault::at(
            "side-missing",
            piece,
            format!("{} does not say to which side", quoted(piece.text)),
        )
        .expecting(format!("`L{letter}T` or `R{letter}T`")));
    }
    word(piece)
}

/// A text with its state, doubt and brackets; lists may have several values in one text.
fn read_text<T>(
    key: &Key,
    piece: Piece<'_>,
    parse: &impl Fn(Piece<'_>) -> Result<T, Fault>,
) -> Result<Finding<Vec<T>>, Fault> {
    let piece = piece.trim();
    if piece.text.is_empty() {
        return Err(Fault::whole("empty-value", "nothing stands between the quotes"));
    }
    if piece.text.len() > MOST_VALUE_BYTES {
        return Err(Fault::whole("too-long", "this is too long for one finding")
            .expecting("a few words; free words stand in the note"));
    }
    if let Some(state) = state(key, piece) {
        return Ok(state);
    }
    let said = take_apart(piece);
    if !said.sure && state::<T>(key, said.value).is_some() {
        return Err(Fault::at("doubtful-state", piece, format!("{} is not clear", quoted(piece.text)))
            .expecting("`could not tell (reason)`, or the words without `?`"));
    }
    let separators: &[char] = if comma_separates(key) { &[';', ','] } else { &[';'] };
    let parts = if key.list { said.value.split(separators) } else { vec![said.value] };
    let mut all = Found { value: vec![], sure: said.sure, known_by: said.known_by };
    for part in parts {
        let part = take_apart(part);
        all.sure &= part.sure;
        if part.known_by != KnownBy::Hands {
            all.known_by = part.known_by;
        }
        all.value.push(parse(part.value).map_err(|fault| state_not_here(key, part.value).unwrap_or(fault))?);
    }
    Ok(Finding::Found(all))
}

/// The state `piece` says, if `key` allows it.
fn state<T>(key: &Key, piece: Piece<'_>) -> Option<Finding<T>> {
    let (words, reason) = match trailing_bracket(piece) {
        Some((before, inside)) => (before.text, Some(inside.text.to_owned()).filter(|text| !text.is_empty())),
        None => (piece.text, None),
    };
    let folded = fold(words);
    let said = |state: StateWord| {
        StateWord::WORDS.iter().any(|entry| {
            entry.value == state
                && std::iter::once(&entry.word).chain(entry.also).any(|word| fold(word) == folded)
        })
    };
    if said(StateWord::CouldNotTell) {
        return Some(Finding::CouldNotTell { reason });
    }
    if reason.is_some() {
        return None;
    }
    if key.absent.is_some_and(said) {
        return Some(Finding::Absent);
    }
    key.not_tried.is_some_and(said).then_some(Finding::NotTried)
}

/// What to say of a state that this key does not know.
fn state_not_here(key: &Key, piece: Piece<'_>) -> Option<Fault> {
    let state = StateWord::find(piece.text)?;
    if state == StateWord::NotExamined {
        return Some(
            Fault::at("not-examined", piece, "what was not examined is left out")
                .expecting(format!("no line for {}", key.name)),
        );
    }
    let allowed: Vec<String> =
        key.states().into_iter().filter_map(StateWord::word).map(|word| format!("`{word}`")).collect();
    Some(
        Fault::at("state-not-here", piece, format!("{} cannot be said of this", quoted(piece.text)))
            .expecting(format!("{}; without a value: {}", key.expected(), allowed.join(", "))),
    )
}
