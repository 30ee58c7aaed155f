//! What is kept, and what the line comes to. In: findings as they are read, and the tokens nothing took. Out: the findings of the
//! keys, the words for the note, the questions, and a notice for every piece that was kept.

use super::ask::Way;
use super::lexicon::known;
use super::said::{Said, Value};
use super::scan::{Items, Last, Scan, State};
use super::tokens::Kind;
use crate::exam::alarm;
use crate::exam::foreign::{ENGLISH, is_foreign};
use crate::exam::keys::{KEYS, Key, Scope};
use crate::exam::read::{accepts, canonical, printable};
use crate::exam::suggest::{Suggestion, suggest};
use crate::exam::words::{Row, Vocabulary, fold, likeness};
use crate::exam::{Lie, Position, Presentation, Report};
use crate::report::{Problem, quoted};
use std::ops::Range;

/// A word that is not known and this like a finding or a symptom is asked.
const ALIKE: f64 = 0.75;

impl Scan<'_> {
    /// A value with a text of its own for the tokens from `at` to before `end`.
    pub(super) fn put_text(&mut self, name: &str, text: String, at: usize, end: usize) {
        let values =
            text.split("; ").map(|one| Value { at: self.span(at, end), text: one.to_owned() }).collect();
        self.put(known(name), values, at, end);
    }

    pub(super) fn put_quietly(&mut self, name: &str, text: String, at: Range<usize>) {
        self.said.push(Said { key: known(name), baby: 0, values: vec![Value { at, text }] });
    }

    /// One finding more; the same key twice must say the same, unless it is a list.
    pub(super) fn put(&mut self, key: &'static Key, mut values: Vec<Value>, at: usize, end: usize) {
        self.mark(at, end, State::Used);
        self.tell(key, &values, at, end);
        if let Some(doubt) = self.doubt.take() {
            for value in &mut values {
                let text = format!("{}?", value.text);
                if !value.text.ends_with('?') && accepts(key, &text) {
                    value.text = text;
                }
                value.at.start = value.at.start.min(doubt.start);
            }
        }
        (self.denies, self.has) = (false, false);
        self.last = Last::Finding;
        if key.scope == Scope::Baby && self.babies == 2 && !self.numbered {
            if self.both {
                for baby in 0..2 {
                    self.put_of(key, values.clone(), baby, at, end);
                }
                return;
            }
            if key.name == "heart-with" || key.name == "moved-under-hands" {
                return self.put_of(key, values, 0, at, end);
            }
            let span = self.span(at, end);
            // Two findings of the same words are asked once.
            if self.questions.last().is_some_and(|asked| asked.at == span) {
                return;
            }
            let message = format!("{}: of which twin", quoted(&self.line[span.clone()]));
            let words = self.line[span.clone()].to_owned();
            let ways: Vec<Way> = (1..=2)
                .map(|baby| {
                    Way::new(
                        format!("the {} twin", ["first", "second"][baby - 1]),
                        format!("baby {baby}: {words}"),
                    )
                })
                .collect();
            self.notes.push(words);
            self.questions.push(super::ask::question(self.line, span, message, &ways));
            return;
        }
        let baby = if key.scope == Scope::Baby { self.baby } else { 0 };
        self.put_of(key, values, baby, at, end);
    }

    fn put_of(&mut self, key: &'static Key, mut values: Vec<Value>, baby: usize, at: usize, end: usize) {
        let before = self.said.iter_mut().find(|said| said.key.name == key.name && said.baby == baby);
        let Some(before) = before else {
            self.said.push(Said { key, baby, values });
            return;
        };
        let texts = |values: &[Value]| -> Vec<String> {
            values
                .iter()
                .map(|value| canonical(key, &value.text).unwrap_or_else(|| fold(&value.text)))
                .collect()
        };
        if texts(&before.values) == texts(&values) {
            return;
        }
        // Felt says nothing of the pattern: what does goes before it.
        if key.name == "movements" && texts(&before.values) == ["felt"] {
            before.values = values;
            return;
        }
        if key.name == "movements" && texts(&values) == ["felt"] {
            return;
        }
        // `heard LLQ and above umbilicus`: the second place.
        let start = values.first().map_or(0, |value| value.at.start);
        let gap = before.at().end..start;
        let between = self.line.get(gap.clone()).unwrap_or_default();
        let also = known("heart-also");
        if key.name == "heart"
            && matches!(between.trim(), "and" | "&" | "+")
            && before.values.iter().chain(&values).all(|value| accepts(also, &value.text))
        {
            for (token, state) in self.tokens.iter().zip(&mut self.states) {
                if gap.start <= token.at.start && token.at.end <= gap.end {
                    *state = State::Skipped;
                }
            }
            return self.put_of(also, values, baby, at, end);
        }
        let heard = |values: &[Value]| texts(values) == ["heard"];
        if key.name == "heart" && heard(&before.values) {
            before.values = values;
        } else if key.name == "heart" && heard(&values) {
            // The place is already there.
        } else if key.list && key.name != "reports" {
            let said = |value: &Value| canonical(key, &value.text);
            values.retain(|value| !before.values.iter().any(|before| said(before) == said(value)));
            before.values.extend(values);
        } else {
            let first = before.at();
            let (one, other) = (texts(&before.values).join(" + "), texts(&values).join(" + "));
            self.said.retain(|said| !(said.key.name == key.name && said.baby == baby));
            let whole = first.start.min(self.span(at, end).start)..first.end.max(self.span(at, end).end);
            let name = key.name.replace('-', " ");
            let message =
                format!("{name} is said twice, {} and {}: which is it", quoted(&one), quoted(&other));
            let near =
                self.line[first.end.min(whole.end)..self.span(at, end).start.max(first.end)].trim().len()
                    <= 3;
            let lead = if key.name == "position" { String::new() } else { format!("{name} ") };
            let ways: Vec<Way> =
                [&one, &other].map(|one| Way::new(one.clone(), format!("{lead}{one}"))).into();
            let (span, ways) = if near { (whole, ways) } else { (self.span(at, end), vec![]) };
            if let Some(word) = first_words(self.line, &first) {
                self.notes.push(word);
            }
            self.questions.push(super::ask::question(self.line, span, message, &ways));
        }
    }

    /// Take back what was last read of a key.
    pub(super) fn drop_last(&mut self, name: &str) {
        if let Some(at) = self.said.iter().rposition(|said| said.key.name == name) {
            self.said.remove(at);
        }
    }

    /// Take back what was read of these keys since a token; the first token of it.
    pub(super) fn drop_since(&mut self, from: usize, names: &[&str]) -> Option<usize> {
        let start = self.span(from, from + 1).start;
        let mut first: Option<usize> = None;
        let baby = self.baby;
        let tokens = &self.tokens;
        self.said.retain(|said| {
            let past = said.baby == baby && names.contains(&said.key.name) && said.at().start >= start;
            if past {
                let token = tokens.iter().position(|token| token.at.start >= said.at().start).unwrap_or(from);
                first = Some(first.map_or(token, |first| first.min(token)));
            }
            !past
        });
        first
    }

    /// What no row and no word of the exam language takes.
    pub(super) fn unknown(&mut self) {
        let at = self.at;
        match self.kind(at) {
            Some(Kind::Mark) => self.mark_alone(),
            Some(Kind::Number) => self.number_alone(),
            _ => self.word_alone(),
        }
    }

    fn mark_alone(&mut self) {
        let at = self.at;
        match self.low(at) {
            "," => {
                (self.both, self.plans) = (false, false);
                if self.last == Last::Aside {
                    self.last = Last::Nothing;
                }
                self.at = at + 1;
            }
            "?" if !self.gap(at + 1)
                || self.gap(at) && !self.ends(at + 1) && !matches!(self.kind(at + 1), Some(Kind::Mark)) =>
            {
                self.drop_doubt();
                self.doubt = Some(self.tokens[at].at.clone());
                self.mark(at, at + 1, State::Used);
                self.at = at + 1;
                self.two_guesses();
            }
            "?" => {
                self.trailing_doubt();
            }
            "/" | "-" => {
                self.mark(at, at + 1, State::Skipped);
                self.at = at + 1;
            }
            _ => self.keep(at + 1),
        }
    }

    /// `?back L ?R`: two guesses are none.
    fn two_guesses(&mut self) {
        let at = self.at;
        let Some((end, _)) = self
            .verb_at(at, &["lead"])
            .filter(|hit| self.row(hit).rest() == "back")
            .and_then(|hit| self.values_after(known("back"), hit.end))
        else {
            return;
        };
        if self.low(end) == "?" && self.values(known("back"), end + 1).is_some() {
            let to = self.values(known("back"), end + 1).map_or(end + 2, |(to, _)| to);
            self.doubt = None;
            let words = self.words(at - 1, to).to_owned();
            self.notes.push(words);
            self.put_text("back", "could not tell".to_owned(), at - 1, to);
            self.at = to;
        }
    }

    /// A `?` after a finding, with space before it: the finding's doubt.
    fn trailing_doubt(&mut self) {
        let at = self.at;
        let start = self.tokens[at].at.start;
        let last = self.said.iter_mut().max_by_key(|said| said.at().end);
        let near = last.filter(|said| self.line[said.at().end..start.max(said.at().end)].trim().is_empty());
        let mut done = false;
        if let Some(said) = near {
            for value in &mut said.values {
                let text = format!("{}?", value.text);
                if !value.text.ends_with('?') && accepts(said.key, &text) {
                    value.text = text;
                    done = true;
                }
            }
        }
        let state = if done { State::Used } else { State::Kept };
        self.mark(at, at + 1, state);
        self.at = at + 1;
    }

    /// A number that says nothing of what it is: her weeks, perhaps; a rate; else kept with the word after it.
    fn number_alone(&mut self) {
        let at = self.at;
        let after_tape = self.said.last().is_some_and(|said| said.key.name == "fundal-height");
        if let Some((to, values)) = self.earlier_tapes(at).filter(|_| after_tape) {
            self.put(known("earlier-tapes"), values, at, to);
            self.at = to;
            return;
        }
        if self.fraction(at).is_some()
            || self.kind(at + 2) == Some(Kind::Number)
                && self.fraction(at + 2).is_some()
                && matches!(self.low(at + 1), "-" | "to")
        {
            return self.fifths();
        }
        if let Some((end, day)) = self.day(at) {
            if day == super::day::Day::Unclear {
                return self.unclear_day(end);
            }
            let text = self.words(at, end).to_owned();
            let message = format!("{} does not say what happened on that day", quoted(&text));
            let ways = [
                Way::new("the day of the visit", format!("visit {text}")),
                Way::new("the day she is due", format!("EDD {text}")),
                Way::new("the first day of her last period", format!("last period {text}")),
            ];
            return self.ask(end, message, &ways);
        }
        let number = self.text(at).parse::<f64>().unwrap_or(0.0);
        // `140s` can only be a heart.
        if self.low(at + 1) == "s"
            && !self.gap(at + 1)
            && (100.0..=200.0).contains(&number)
            && let Some((end, values)) = self.values(known("heart-rate"), at)
        {
            self.put(known("heart-rate"), values, at, end);
            self.heart = true;
            self.at = end;
            return;
        }
        let alone = self.gap(at) && (self.gap(at + 1) || self.ends(at + 1));
        let unit_next = self.kind(at + 1) == Some(Kind::Word) && !self.begins(at + 1);
        let no_weeks = !self.weeks_elsewhere(at);
        let decimal = self.text(at).contains('.');
        // `38.5 weeks`.
        let of_weeks = decimal
            && matches!(self.low(at + 1), "weeks" | "week" | "wks" | "wk" | "w")
            && (4.0..46.0).contains(&number);
        let bare = alone && !unit_next && (20.0..=43.0).contains(&number) && self.last != Last::Words;
        if no_weeks && (bare || of_weeks) {
            let text = self.text(at).to_owned();
            let mut end = if of_weeks { at + 2 } else { at + 1 };
            if self.low(at + 1) == "-" && self.kind(at + 2) == Some(Kind::Number) {
                end = at + 3;
            }
            if decimal {
                let (weeks, part) = text.split_once('.').unwrap_or((&text, "0"));
                let days: u16 = part.parse().unwrap_or(0);
                let tenths = (number.fract() * 7.0).round();
                let mut ways = vec![];
                if days < 7 && part.len() == 1 {
                    ways.push(Way::new(format!("{weeks} weeks and {days} days"), format!("{weeks}+{days}")));
                }
                ways.push(Way::new(
                    format!("about {weeks}+{tenths} (tenths of a week)"),
                    format!("{weeks}+{tenths}"),
                ));
                let message =
                    format!("{} can be read as days or as tenths of a week", quoted(self.words(at, end)));
                return self.ask(end, message, &ways);
            }
            let message = format!("{} may be her weeks", quoted(self.words(at, end)));
            return self.ask(end, message, &[Way::new(format!("{text} weeks"), format!("{text}+0"))]);
        }
        let rate = (90.0..=200.0).contains(&number) && !decimal && self.last != Last::Words;
        let no_rate = self.low(at + 1) == "bpm" || !self.gap(at) || !unit_next;
        if rate && no_rate && self.gap(at) && !self.has_read("heart-rate") && self.low(at + 1) != "/" {
            let end = if self.low(at + 1) == "bpm" { at + 2 } else { at + 1 };
            let text = self.text(at).to_owned();
            let message = format!("{}: the baby's heart, or her pulse", quoted(self.words(at, end)));
            let ways = [
                Way::new("the baby's heart", format!("FHR {text}")),
                Way::new("her pulse", format!("pulse {text}")),
            ];
            return self.ask(end, message, &ways);
        }
        let mut end = at + 1;
        while matches!(self.low(end), "/" | ":" | "-" | "+" | "%" | "x")
            && !self.gap(end)
            && self.kind(end + 1) == Some(Kind::Number)
            && !self.gap(end + 1)
        {
            end += 2;
        }
        let when = self.verb_at(end, &["when", "now", "skip", "has", "but"]).is_some();
        if self.kind(end) == Some(Kind::Word) && !when && !self.begins(end) {
            end += 1;
        }
        // An operation's number is kept with it.
        self.keep(end);
        self.last = Last::Words;
    }

    /// Whether weeks, or a date that settles them, stand anywhere else in the line.
    fn weeks_elsewhere(&self, at: usize) -> bool {
        !self.weeks.is_empty()
            || self.said.iter().any(|said| matches!(said.key.name, "due" | "scan" | "last-period"))
            || (at + 1..self.tokens.len()).any(|at| self.verb_at(at, &["weeks"]).is_some())
    }

    /// A word that is not known: kept, and the `?` or plus that touches it; one that is much like a finding or a symptom is asked.
    fn word_alone(&mut self) {
        let at = self.at;
        let word = self.low(at).to_owned();
        if let Some(symptom) = like::<Report>(&word) {
            let message = format!("{} is not known: is it {}", quoted(self.text(at)), quoted(symptom));
            return self.ask_sign(at + 1, symptom, message);
        }
        if code_like(self.text(at)) {
            let message = format!(
                "{} is no position; a side is never guessed: write left or right",
                quoted(self.text(at))
            );
            return self.ask(at + 1, message, &[]);
        }
        let finding = like::<Presentation>(&word).or_else(|| like::<Lie>(&word));
        if let Some(finding) = finding {
            let message = format!("{} is not known: is it {}", quoted(self.text(at)), quoted(finding));
            return self.ask(at + 1, message, &[Way::new(finding, finding)]);
        }
        if self.denies {
            self.mark(at, at + 1, State::Used);
            let mut end = at + 1;
            while !self.ends(end) && self.choose(end).is_none() && self.kind(end) == Some(Kind::Word) {
                end += 1;
            }
            self.notes.push(format!("no {}", self.words(at, end)));
            self.mark(at, end, State::Used);
            self.at = end;
            return;
        }
        if let Some(meant) = self.lead_like(at) {
            self.slips.push((self.tokens[at].at.clone(), meant));
        }
        self.keep(at + 1);
        self.kept_marks();
        self.last = if self.last == Last::Aside { Last::Aside } else { Last::Words };
    }

    /// The key or the lead that a word with a slip in it was meant to be; a side is never guessed.
    fn lead_like(&self, at: usize) -> Option<&'static str> {
        let word = self.low(at);
        if word.chars().count() < 4 {
            return None;
        }
        let names = KEYS.iter().map(|key| Row { word: key.name, also: &[] });
        let leads = self.lexicon.rows.iter().filter(|row| matches!(row.verb(), "lead" | "head" | "breech"));
        let leads =
            leads.filter(|row| row.says[0].len() >= 4).map(|row| Row { word: row.says[0], also: &[] });
        match suggest(word, names.chain(leads).collect::<Vec<_>>()) {
            Suggestion::Word(meant) if meant != word => Some(meant),
            _ => None,
        }
    }

    /// `note` and all that follows: free words; a quotation ends by itself.
    pub(super) fn rest_is_note(&mut self, end: usize) {
        let at = self.at;
        self.mark(at, end, State::Used);
        self.at = end;
        if self.kind(end) == Some(Kind::Quote) {
            return;
        }
        let start = self.tokens[end - 1].at.end;
        let text = self.line[start..].trim_start_matches([':', ' ', '=']).trim().to_owned();
        if !text.is_empty() {
            self.mark(at, self.tokens.len(), State::Used);
            self.notes.push(text);
            self.at = self.tokens.len();
        }
    }

    pub(super) fn quoted_note(&mut self) {
        let at = self.tokens[self.at].at.clone();
        let mut text = String::new();
        let mut chars = self.line[at].chars().skip(1);
        while let Some(c) = chars.next() {
            match c {
                '"' => break,
                '\\' => match chars.next() {
                    Some('n') => text.push('\n'),
                    Some(escaped) => text.push(escaped),
                    None => text.push(c),
                },
                _ => text.push(c),
            }
        }
        self.mark(self.at, self.at + 1, State::Used);
        self.notes.push(text);
    }

    /// All of it: findings by key, the note, and notices for what is kept.
    pub(super) fn finish(mut self) -> Items {
        self.settle_weeks();
        self.settle_signs();
        self.settle_hearts();
        let mut pieces: Vec<Range<usize>> = vec![];
        let mut at = 0;
        while at < self.tokens.len() {
            let loose = |at: usize| {
                matches!(self.states.get(at), Some(State::Kept | State::Skipped))
                    || self.low(at) == "," && at < self.states.len()
            };
            if !loose(at) {
                at += 1;
                continue;
            }
            let mut end = at;
            while loose(end) {
                end += 1;
            }
            let comma = |at: usize| self.low(at) == ",";
            let (mut from, mut to) = (at, end);
            // Commas, and words that say nothing at a comma, are no part of what is kept.
            while from < to && (comma(from) || self.states[from] == State::Skipped && comma(from + 1)) {
                from += 1;
            }
            while from < to
                && (comma(to - 1)
                    || self.states[to - 1] == State::Skipped
                        && matches!(self.low(to - 1), "/" | "-" | ":" | "=" | "&"))
            {
                to -= 1;
            }
            if (from..to).any(|at| self.states[at] == State::Kept) {
                pieces.push(from..to);
            }
            at = end;
        }
        let mut notes = vec![];
        let mut told = false;
        for piece in pieces {
            let span = self.span(piece.start, piece.end);
            let text = printable(&self.line[span.clone()]);
            // Only the word with the slip is exchanged: a side after it stays.
            let slip = self.slips.iter().find(|(at, _)| at.start == span.start);
            let meant =
                slip.map(|(at, meant)| format!("`{meant}{}`", self.line[at.end..span.end].trim_end()));
            let kept =
                Problem::at("kept-in-note", self.name, span, format!("kept in the note: {}", quoted(&text)))
                    .suggesting(meant)
                    .as_warning();
            // Once a line.
            let foreign = !told && is_foreign(&text);
            told |= foreign;
            self.problems.push(if foreign { kept.expecting(ENGLISH) } else { kept });
            notes.push(text);
        }
        notes.append(&mut self.notes);
        self.whole_alarms(&mut notes);
        Items {
            said: self.said,
            babies: self.babies,
            notes,
            questions: self.questions,
            problems: self.problems,
        }
    }

    /// An alarm of the line that would be lost among kept words, because some of its words were read, or are asked, or stand far
    /// from those that make it one, stands in the note as one.
    fn whole_alarms(&self, notes: &mut Vec<String>) {
        for (start, mention) in alarm::placed(self.line) {
            let end = start + mention.words.len();
            let says = |text: &str| alarm::mentions(text).iter().any(|said| said.words == mention.words);
            let state = |state: State| {
                let inside =
                    |at: &usize| self.tokens[*at].at.start >= start && self.tokens[*at].at.end <= end;
                (0..self.tokens.len()).filter(inside).any(|at| self.states[at] == state)
            };
            // What she reports is read, whatever else is said beside it.
            let read = state(State::Used) && matches!(mention.about, alarm::About::Report(_));
            // Until a question is answered, an alarm in its words stands.
            let asked = self.questions.iter().any(|of| of.at.start < end && start < of.at.end);
            if !(asked || state(State::Kept) && !read) || says(&notes.join("\n")) {
                continue;
            }
            let part = |marks: &[char]| {
                let from = self.line[..start].rfind(marks).map_or(0, |at| at + 1);
                let to = self.line[end..].find(marks).map_or(self.line.len(), |at| end + at);
                self.line[from..to].trim().to_owned()
            };
            let texts = [mention.words.clone(), part(&[',', ';', '\n']), part(&[';', '\n'])];
            notes.extend(texts.iter().find(|text| says(text)).map(|text| printable(text)));
        }
    }

    /// A heart that is told as not heard, and with a rate: one of them is wrong.
    fn settle_hearts(&mut self) {
        for baby in 0..self.babies {
            let of = |name: &str| self.said.iter().find(|said| said.key.name == name && said.baby == baby);
            let silent = of("heart")
                .filter(|said| said.values.iter().any(|value| value.text.starts_with("not heard")));
            let (Some(silent), Some(rate)) = (silent, of("heart-rate")) else { continue };
            let (silent, rate) = (silent.at(), rate.at());
            // Parted by a break they are two findings, which the remarks hold against one another.
            let (from, to) = (silent.end.min(rate.end), silent.start.max(rate.start));
            if self.line.get(from..to).is_some_and(|between| between.contains([';', '\n', '|'])) {
                continue;
            }
            let message = format!(
                "{} and {}: was the heart heard",
                quoted(&self.line[silent.clone()]),
                quoted(&self.line[rate.clone()])
            );
            self.notes.push(self.line[silent.clone()].to_owned());
            let ways = [Way::new("heard", "FHH")];
            self.questions.push(super::ask::question(self.line, silent, message, &ways));
            self.said.retain(|said| !(said.baby == baby && said.key.name == "heart"));
        }
    }

    /// What she reports and what is not so; the same both ways is asked.
    fn settle_signs(&mut self) {
        let signs = std::mem::take(&mut self.signs);
        let words = |has: bool| {
            signs
                .iter()
                .filter(move |sign| sign.has == has)
                .map(|sign| canonical(known("reports"), &sign.word))
        };
        let (reported, denied): (Vec<_>, Vec<_>) = (words(true).collect(), words(false).collect());
        let mut denies: Vec<Value> = vec![];
        let mut reports: Vec<Value> = vec![];
        let mut unsure = false;
        for sign in &signs {
            let word = canonical(known("reports"), &sign.word);
            if !sign.has && reported.contains(&word) {
                let message = format!("{} is said to be so and not so", quoted(&sign.word));
                let ways = [
                    Way::new(format!("she reports {}", sign.word), "note"),
                    Way::new(format!("no {}", sign.word), format!("denies {}", sign.word)),
                ];
                self.questions.push(super::ask::question(self.line, sign.at.clone(), message, &ways[..1]));
                continue;
            }
            let _ = &denied;
            let value = Value { at: sign.at.clone(), text: sign.word.clone() };
            let list = if sign.has { &mut reports } else { &mut denies };
            unsure |= sign.has && sign.unsure;
            if !list.iter().any(|before| canonical(known("reports"), &before.text) == word) {
                list.push(value);
            }
        }
        if unsure && let Some(last) = reports.last_mut() {
            last.text.push('?');
        }
        for (name, values) in [("reports", reports), ("denies", denies)] {
            if values.is_empty() {
                continue;
            }
            let key = known(name);
            let none = |said: &Said| {
                said.key.name == name && said.values.iter().any(|value| value.text.starts_with("none"))
            };
            self.said.retain(|said| !none(said));
            match self.said.iter_mut().find(|said| said.key.name == name) {
                Some(said) => {
                    for value in values {
                        if !said
                            .values
                            .iter()
                            .any(|before| canonical(key, &before.text) == canonical(key, &value.text))
                        {
                            said.values.push(value);
                        }
                    }
                }
                None => self.said.push(Said { key, baby: 0, values }),
            }
        }
    }
}

fn first_words(line: &str, at: &Range<usize>) -> Option<String> {
    let text = line.get(at.clone())?.trim();
    (!text.is_empty()).then(|| text.to_owned())
}

/// The canonical word that `word` is much like, with a slip or two.
fn like<T: Vocabulary>(word: &str) -> Option<&'static str> {
    if word.chars().count() < 6 {
        return None;
    }
    let spelled = |entry: &&crate::exam::words::Word<T>| {
        std::iter::once(&entry.word)
            .chain(entry.also)
            .filter(|said| !said.contains(' ') && said.len() >= 6)
            .any(|said| likeness(&fold(word), &fold(said)) >= ALIKE && !said.starts_with(word))
    };
    T::WORDS.iter().find(spelled).map(|entry| entry.word)
}

/// Whether a word is a code of a position with one letter too many.
fn code_like(text: &str) -> bool {
    let code = text.len() == 4 && text == text.to_uppercase() && text.is_ascii();
    code && Position::WORDS.iter().any(|entry| entry.word.len() == 3 && text.starts_with(entry.word))
}
