//! Weeks and days of a line. In: a row of weeks, dates, sizes. Out: the weeks at the visit when one pair can be meant, else a
//! question; weeks that belong to history, plans or an earlier measure are kept with them.

use super::ask::Way;
use super::day::{self, Day};
use super::lexicon::{Hit, known};
use super::said::Value;
use super::scan::{Last, Scan, State};
use super::tokens::Kind;
use crate::report::quoted;
use std::ops::Range;

/// Weeks that stand in the line.
#[derive(Clone, Debug)]
pub struct Seen {
    /// Days.
    pub days: u16,
    /// Its tokens.
    pub tokens: Range<usize>,
    /// Whose they are.
    pub of: Whose,
}

/// What the weeks belong to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Whose {
    /// Said to be now.
    Now,
    /// Standing alone.
    Alone,
    /// Standing after words that may own them.
    Beside,
    /// Of an earlier time, or a plan.
    Other,
}

impl Scan<'_> {
    /// Rows of weeks, term, sizes and dating.
    pub(super) fn of_weeks(&mut self, verb: &str, rest: &str, hit: &Hit) {
        let (at, end) = (self.at, hit.end);
        match verb {
            "weeks" => {
                let Some(days) = days_of(rest, &hit.numbers) else { return self.keep(end) };
                let now = at.checked_sub(1).is_some_and(|before| self.verb_at(before, &["now"]).is_some());
                let of = match self.last {
                    _ if now => Whose::Now,
                    _ if self.plans => Whose::Beside,
                    Last::Aside => Whose::Beside,
                    _ => Whose::Alone,
                };
                self.seen(days, at, end, of);
            }
            "term" => {
                if self.low(end) == "size" || self.last == Last::Aside {
                    return self.keep(end);
                }
                let message = format!("{} is any day from 37+0 to 42+0", quoted(self.words(at, end)));
                self.ask(end, message, &[Way::new("the day she is due", "40+0")]);
            }
            "size" => {
                self.sizes.push(self.span(at, end));
                self.keep(end);
                self.last = Last::Words;
                if let Some((to, values)) = self.values(known("womb"), end) {
                    self.put(known("womb"), values, end, to);
                    self.at = to;
                }
            }
            "dated" => self.dated(end),
            _ => self.lmp(end),
        }
    }

    pub(super) fn seen(&mut self, days: u16, at: usize, end: usize, of: Whose) {
        self.mark(at, end, State::Used);
        self.weeks.push(Seen { days, tokens: at..end, of });
        self.at = end;
        if of != Whose::Beside {
            (self.denies, self.has) = (false, false);
            self.last = Last::Finding;
        }
    }

    /// `by LMP`, `by 9wk US`: which dating; a second one near by that differs is asked.
    fn dated(&mut self, end: usize) {
        let at = self.at;
        self.mark(at, end, State::Kept);
        self.at = end;
    }

    /// `LMP` before a date is the last period; bare, or before a date in figures, it is asked.
    fn lmp(&mut self, end: usize) {
        let next = self.between(end);
        match self.day(next) {
            Some((to, Day::One(_))) => self.put_day("last-period", next, to),
            found => {
                let to = found.map_or(end, |(to, _)| to);
                let message = format!(
                    "{} is the last period, or left mento-posterior",
                    quoted(self.words(self.at, to))
                );
                self.ask(to, message, &[Way::new("the position", "left mento-posterior")]);
            }
        }
    }

    fn put_day(&mut self, name: &str, from: usize, to: usize) {
        let at = self.at;
        if let Some((_, Day::One(text))) = self.day(from) {
            self.put(known(name), vec![Value { at: self.span(from, to), text }], at, to);
        }
        self.at = to;
    }

    /// A date at `at`: the token after it, and what it says.
    pub(super) fn day(&self, at: usize) -> Option<(usize, Day)> {
        let start =
            self.tokens.get(at).filter(|token| matches!(token.kind, Kind::Number | Kind::Word))?.at.start;
        let (length, day) = day::at_start(&self.line[start..])?;
        let end = self
            .tokens
            .iter()
            .position(|token| token.at.start >= start + length)
            .unwrap_or(self.tokens.len());
        Some((end, day))
    }

    /// A date that can be read in two ways, from `self.at`.
    pub(super) fn unclear_day(&mut self, end: usize) {
        let (at, from) =
            (self.at, (self.at..end).find(|at| self.kind(*at) == Some(Kind::Number)).unwrap_or(self.at));
        let text = self.words(from, end).to_owned();
        let lead = self.words(at, from).trim_end_matches([':', '=', ' ']).to_owned();
        let ways: Vec<Way> = day::both(&text)
            .into_iter()
            .map(|(says, written)| Way::new(says, format!("{lead} {written}")))
            .collect();
        let message = if ways.is_empty() {
            format!("{} does not say the year", quoted(&text))
        } else {
            format!("{} can be read in more than one way", quoted(&text))
        };
        self.ask(end, message, &ways);
    }

    /// The weeks at the visit, when all is read.
    pub(super) fn settle_weeks(&mut self) {
        let mut own: Vec<Seen> = self.weeks.iter().filter(|seen| seen.of == Whose::Now).cloned().collect();
        if own.is_empty() {
            own = self.weeks.iter().filter(|seen| seen.of == Whose::Alone).cloned().collect();
        }
        if own.is_empty() {
            own = self.weeks.iter().filter(|seen| seen.of == Whose::Beside).cloned().collect();
        }
        own.dedup_by_key(|seen| seen.days);
        let rest: Vec<Seen> = self
            .weeks
            .iter()
            .filter(|seen| own.iter().all(|own| own.days != seen.days || seen.of == Whose::Other))
            .cloned()
            .collect();
        for seen in rest {
            self.mark(seen.tokens.start, seen.tokens.end, State::Kept);
        }
        match &own[..] {
            [] => self.sizes_without_weeks(),
            [one] => {
                let written = format!("{}+{}", one.days / 7, one.days % 7);
                let at = self.span(one.tokens.start, one.tokens.end);
                let tokens = one.tokens.clone();
                self.put_quietly("weeks", written, at);
                self.mark(tokens.start, tokens.end, State::Used);
            }
            [first, .., last] => {
                let span = self.span(first.tokens.start, first.tokens.end);
                let written = |seen: &Seen| format!("{}+{}", seen.days / 7, seen.days % 7);
                let message = format!(
                    "{} and {} both stand as her weeks: which count",
                    quoted(self.words(first.tokens.start, first.tokens.end)),
                    quoted(self.words(last.tokens.start, last.tokens.end))
                );
                let ways: Vec<Way> = own
                    .iter()
                    .map(|seen| Way::new(written(seen), format!("now {}", written(seen))))
                    .collect();
                self.questions.push(super::ask::question(self.line, span, message, &ways));
                for seen in own.clone() {
                    self.mark(seen.tokens.start, seen.tokens.end, State::Kept);
                }
            }
        }
    }

    /// The womb's size in weeks is a finding, not her weeks: without them they are asked.
    fn sizes_without_weeks(&mut self) {
        let dated = self.said.iter().any(|said| matches!(said.key.name, "due" | "last-period" | "scan"));
        let Some(size) = self.sizes.first().cloned().filter(|_| !dated && self.questions.is_empty()) else {
            return;
        };
        let message =
            format!("{} is the size felt: how many weeks is she by dates", quoted(&self.line[size.clone()]));
        self.questions.push(super::ask::question(self.line, size, message, &[]));
    }
}

/// What a row of weeks comes to: `#1w+#2d`, `280d-#1d`.
pub fn days_of(expression: &str, numbers: &[u16]) -> Option<u16> {
    let mut total: i32 = 0;
    let mut sign = 1;
    let mut rest = expression;
    while !rest.is_empty() {
        let length = rest.find(['+', '-']).unwrap_or(rest.len());
        let (one, after) = rest.split_at(length);
        let (number, unit) = one.split_at(one.len().checked_sub(1)?);
        let number: i32 = match number.strip_prefix('#') {
            Some(which) => i32::from(*numbers.get(which.parse::<usize>().ok()?.checked_sub(1)?)?),
            None => number.parse().ok()?,
        };
        total += sign * number * if unit == "w" { 7 } else { 1 };
        sign = if after.starts_with('-') { -1 } else { 1 };
        rest = after.get(1..).unwrap_or_default();
    }
    u16::try_from(total).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_of_weeks() {
        assert_eq!(days_of("#1w+#2d", &[37, 3]), Some(262));
        assert_eq!(days_of("280d+#1d", &[5]), Some(285));
        assert_eq!(days_of("280d-#1d", &[4]), Some(276));
        assert_eq!(days_of("#1w", &[36]), Some(252));
    }
}
