//! Reads a visit file. In: its name and bytes. Out: the exam if the file can be used, and every problem in it.
//!
//! Reading never stops at the first fault: the text is taken apart by TOML's recoverable table, each value is read by
//! itself, and problems come out sorted by place.

mod stray;
mod value;
mod weeks;

use super::keys::{self, Key, Scope};
use super::model::*;
use super::piece::Fault;
use super::place::{back, fundus_level, heart, place};
use super::quantity as q;
use super::say;
use super::shorthand::ask::Question;
use super::signs;
use super::syntax::{self, Mended};
use crate::report::{Lines, Problem, any_error, placed};
use std::collections::BTreeMap;
use std::ops::Range;
use toml::Spanned;
use toml::de::{DeTable, DeValue};
pub(super) use value::printable;
use value::{births, position, word};

/// Largest file read, in bytes.
pub const MOST_BYTES: usize = 1 << 20;
/// More problems than this help nobody.
const MOST_PROBLEMS: usize = 50;
/// Babies in one exam.
const MOST_BABIES: usize = 2;

/// What came of reading a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// The exam; `None` when any problem is an error.
    pub exam: Option<Exam>,
    /// Every problem, sorted by place.
    pub problems: Vec<Problem>,
    /// Of a line: what is asked; each is among the problems too. The exam holds what is clear.
    pub questions: Vec<Question>,
    /// Bytes of each finding's value, by key: `mother.fundal-height`, `baby.1.back`.
    pub spans: BTreeMap<String, Range<usize>>,
}

impl Reading {
    fn failed(problem: Problem) -> Self {
        Self { exam: None, problems: vec![problem], questions: vec![], spans: BTreeMap::new() }
    }
}

/// What a file is that is no plain text, by how it begins, and what to do.
fn other_kind(bytes: &[u8]) -> Option<(&'static str, &'static str)> {
    const TEXT: &str = "a visit file, which is plain text; or the findings themselves: --say \"37+0 LOA\"";
    const AGAIN: &str = "the same text saved once more with the encoding UTF-8";
    const KINDS: [(&[u8], &str, &str); 10] = [
        (b"\x89PNG", "this is a picture, not a visit file", TEXT),
        (b"\xff\xd8\xff", "this is a picture, not a visit file", TEXT),
        (b"GIF8", "this is a picture, not a visit file", TEXT),
        (b"<svg", "this is a picture, not a visit file", TEXT),
        (b"%PDF", "this is a PDF, not a visit file", TEXT),
        (b"PK\x03\x04", "this is a word processor's document or a packed file, not a visit file", TEXT),
        (b"\xd0\xcf\x11\xe0", "this is a word processor's document, not a visit file", TEXT),
        (b"{\\rtf", "this is a word processor's document, not a visit file", TEXT),
        (b"\xff\xfe", "this file is saved as UTF-16", AGAIN),
        (b"\xfe\xff", "this file is saved as UTF-16", AGAIN),
    ];
    KINDS.iter().find(|(begins, _, _)| bytes.starts_with(begins)).map(|(_, what, next)| (*what, *next))
}

/// Read the visit file `name` (as the user named it, for messages).
pub fn read(name: &str, bytes: &[u8]) -> Reading {
    if bytes.len() > MOST_BYTES {
        return Reading::failed(
            Problem::of_file("file-too-big", name, "the file is larger than 1 MiB")
                .expecting("a visit file of a few dozen lines"),
        );
    }
    if let Some((what, next)) = other_kind(bytes) {
        return Reading::failed(Problem::of_file("not-an-exam", name, what).expecting(next));
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
    let exam = reader.exam(table.get_ref(), vec![]);
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
    Reading { exam, problems, questions: vec![], spans }
}

/// Read a table that was made of `source` in another way than by TOML: its spans are bytes of `source`. With words for the
/// note, and the problems that were found while the table was made. What is clear is an exam, whatever else is asked.
pub(super) fn of_line(
    file: &str,
    source: &str,
    table: &DeTable<'_>,
    notes: Vec<String>,
    mut problems: Vec<Problem>,
) -> Reading {
    let broken = any_error(&problems);
    let mut reader = Reader { file, source, problems: vec![], spans: BTreeMap::new(), dates: vec![], broken };
    let mut exam = reader.exam(table, notes);
    let Reader { problems: mut more, spans, .. } = reader;
    problems.append(&mut more);
    if let Some(note) = exam.note.clone().filter(|_| !exam.read.iter().any(|(key, _)| key == "note")) {
        exam.read.push(("note".to_owned(), note));
    }
    let nothing = problems.iter().any(|problem| problem.id == "nothing-in-it");
    let empty = exam.read.is_empty() && exam.babies.len() < 2;
    let exam = (!nothing && !empty).then_some(exam);
    Reading { exam, problems: placed(problems, source, MOST_PROBLEMS), questions: vec![], spans }
}

/// Whether `text` is a whole value of `key`.
pub(super) fn accepts(key: &Key, text: &str) -> bool {
    fault_of(key, text).is_none()
}

/// What is wrong with `text` as a value of `key`.
pub(super) fn fault_of(key: &Key, text: &str) -> Option<Problem> {
    let name = Spanned::new(0..0, key.name.into());
    let table =
        DeTable::from_iter([(name, Spanned::new(0..text.len(), DeValue::String(text.to_owned().into())))]);
    let mut reader = Reader {
        file: "",
        source: text,
        problems: vec![],
        spans: BTreeMap::new(),
        dates: vec![],
        broken: true,
    };
    match key.scope {
        Scope::Top => drop(reader.weeks(&table)),
        Scope::Mother => drop(reader.mother(&table)),
        Scope::Baby => drop(reader.baby(&table, "")),
    }
    reader.problems.into_iter().next()
}

/// The canonical words of `text`, a value of `key`; `None` when it is none.
pub(super) fn canonical(key: &Key, text: &str) -> Option<String> {
    let value = Spanned::new(0..text.len(), DeValue::String(text.to_owned().into()));
    let one = DeTable::from_iter([(Spanned::new(0..0, key.name.into()), value)]);
    let within = |heading: &'static str, one| {
        DeTable::from_iter([(Spanned::new(0..0, heading.into()), Spanned::new(0..0, DeValue::Table(one)))])
    };
    let table = match key.scope {
        Scope::Top => one,
        Scope::Mother => within("mother", one),
        Scope::Baby => within("baby", one),
    };
    let reading = of_line("", text, &table, vec![], vec![]);
    let exam = reading.exam.filter(|_| !any_error(&reading.problems))?;
    exam.read.into_iter().next().map(|(_, words)| words)
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

impl Reader<'_> {
    fn exam(&mut self, top: &DeTable<'_>, mut extra_notes: Vec<String>) -> Exam {
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
        let (weeks, dates) = self.weeks(top);
        let note = self.note(top, extra_notes);
        let mut exam = Exam { weeks, dates, mother, babies, note, read: vec![] };
        self.earlier_tapes_are_earlier(&exam);
        exam.read = self.read_in_order(&exam);
        let nothing = exam.read.is_empty() && exam.note.is_none() && exam.babies.len() < 2;
        if nothing && self.problems.is_empty() && !self.broken {
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
            gravida: self.one(t, s, m, "gravida", signs::pregnancies),
            rupture_before: self.one(t, s, m, "rupture-before", word),
            placentas: self.one(t, s, m, "placentas", word),
            rhesus_d: self.one(t, s, m, "rhesus-d", word),
            group_b_strep: self.one(t, s, m, "group-b-strep", word),
            labour: self.one(t, s, m, "labour", word),
            hours_since_broken: self.one(t, s, m, "hours-since-broken", signs::hours),
            water_colour: self.many(t, s, m, "water-colour", word),
            consent: self.one(t, s, m, "consent", word),
            comfort: self.one(t, s, m, "comfort", word),
            build: self.one(t, s, m, "build", word),
            scar_feel: self.many(t, s, m, "scar-feel", word),
            muscle_gap: self.one(t, s, m, "muscle-gap", signs::muscle_gap),
            hernia: self.many(t, s, m, "hernia", word),
            bladder: self.one(t, s, m, "bladder", word),
            temperature: self.one(t, s, m, "temperature", signs::temperature),
            blood_pressure: self.one(t, s, m, "blood-pressure", signs::blood_pressure),
            breathing: self.one(t, s, m, "breathing", signs::breaths),
            urine_protein: self.one(t, s, m, "urine-protein", word),
            contractions_in_ten: self.one(t, s, m, "contractions-in-ten", signs::tally),
            contraction_length: self.one(t, s, m, "contraction-length", signs::lasting),
            contraction_strength: self.one(t, s, m, "contraction-strength", word),
            tone_at_rest: self.one(t, s, m, "tone-at-rest", word),
            tender_at: self.many(t, s, m, "tender-at", place),
            height_for_dates: self.one(t, s, m, "height-for-dates", word),
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
            fundus_feels: self.many(t, s, b, "fundus-feels", word),
            brim_feels: self.many(t, s, b, "brim-feels", word),
            ballottable: self.one(t, s, b, "ballottable", word),
            overlaps_pubic_bone: self.one(t, s, b, "overlaps-pubic-bone", word),
            by_vagina: self.many(t, s, b, "found-by-vagina", word),
            station: self.one(t, s, b, "station", signs::station),
            size: self.one(t, s, b, "size", word),
            kicks: self.many(t, s, b, "kicks", place),
            hiccups: self.one(t, s, b, "hiccups", word),
            unstable_lie: self.one(t, s, b, "unstable-lie", word),
            turning: self.one(t, s, b, "turning-tried", word),
            heart_also: self.many(t, s, b, "heart-also", place),
            heart_quality: self.one(t, s, b, "heart-quality", word),
            heart_slows: self.many(t, s, b, "heart-slows", word),
            heart_by: self.many(t, s, b, "heart-by", word),
            heart_and_pulse: self.one(t, s, b, "heart-and-pulse", word),
            lie: self.one(t, s, b, "lie", word),
            presentation: self.one(t, s, b, "presentation", word),
            position: self.one(t, s, b, "position", position),
        }
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

    fn note(&mut self, top: &DeTable<'_>, extra: Vec<String>) -> Option<String> {
        let mut lines = vec![];
        if let Some(value) = entry(top, "note") {
            self.spans.insert("note".to_owned(), value.span());
            match value.get_ref() {
                DeValue::String(text) => lines.push(printed(text)),
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
        lines.extend(extra.iter().map(|words| printed(words)));
        lines.retain(|words| !words.is_empty());
        (!lines.is_empty()).then(|| lines.join("\n"))
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
}

/// Words of a note line by line, with spaces for what cannot be printed; empty when nothing can.
fn printed(words: &str) -> String {
    let lines: Vec<String> = words.lines().map(|line| printable(line).trim_end().to_owned()).collect();
    lines.join("\n").trim().to_owned()
}
