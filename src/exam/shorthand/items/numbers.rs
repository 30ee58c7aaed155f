//! Numbers of a line. In: the tokens from a number. Out: weeks, dates, fifths, or a rate after the heart; or what is asked.

use super::{MOST_TOKENS, Scan, of_key};
use crate::exam::keys::Scope;
use crate::exam::read::accepts;
use crate::exam::shorthand::day::{self, Day};
use crate::exam::shorthand::leads::Of;
use crate::exam::shorthand::said::Value;
use crate::exam::shorthand::tokens::Kind;
use crate::exam::words::{fold, likeness};
use crate::report::{Problem, quoted};

impl Scan<'_> {
    /// A number that begins a finding: weeks, fifths, a rate after the heart, or a date.
    pub(super) fn number(&mut self) {
        let at = self.at;
        if let Some((end, text)) = self.weeks(at) {
            return self.take_as((Scope::Top, "weeks"), end, text);
        }
        if let Some((end, day)) = self.day(at) {
            if day == Day::Unclear {
                return self.unclear_day(at, end);
            }
            let text = self.run(at, end).to_owned();
            let message = format!("{} does not say what happened on that day", quoted(&text));
            return self.ask(end, message, "`visit`, `EDD`, `last period` or `scan 12+3 on` before a date");
        }
        if let Some(fraction) = self.fraction(at) {
            return self.fifths(fraction);
        }
        if self.heart
            && let Some(found) = self.best(at, &[])
        {
            return self.take(found);
        }
        // `37.2` is left to the reader of weeks, which asks.
        let text = self.text(at);
        if text.parse::<f64>().is_ok_and(|n| text.contains('.') && (4.0..45.0).contains(&n))
            && (self.kind(at + 1) != Some(Kind::Word) || self.begins(at + 1))
        {
            let text = text.to_owned();
            return self.take_as((Scope::Top, "weeks"), at + 1, text);
        }
        let mut end = at + 1;
        if self.kind(end) == Some(Kind::Word) && !self.begins(end) {
            end += 1;
        }
        let message = format!("{} does not say what was measured or counted", quoted(self.run(at, end)));
        self.ask(
            end,
            message,
            "weeks such as `37+0`; or what it is of, such as `SFH 34`, `FHR 142`, `pulse 78`",
        );
    }

    pub(super) fn take_as(&mut self, of: Of, end: usize, text: String) {
        let value = Value { at: self.span(self.at, end), text };
        self.put(of_key(of), vec![value]);
        self.at = end;
    }

    /// Weeks at `at`: `37+0`, `37w0d`, `37 weeks`, `37+2/40`, `37/40`.
    pub(super) fn weeks(&self, at: usize) -> Option<(usize, String)> {
        let key = of_key((Scope::Top, "weeks"));
        let shape = |kinds: &[Kind]| (0..kinds.len()).all(|n| self.kind(at + n) == Some(kinds[n]));
        let of_forty = |at: usize| self.text(at) == "/" && self.text(at + 1) == "40";
        use Kind::{Mark, Number, Word};
        if shape(&[Number, Mark, Number]) && self.text(at + 1) == "+" {
            let text = self.run(at, at + 3).to_owned();
            let mut end = if of_forty(at + 3) { at + 5 } else { at + 3 };
            if ["weeks", "wks", "wk", "w"].contains(&self.text(end).to_lowercase().as_str()) {
                end += 1;
            }
            return Some((end, text));
        }
        if shape(&[Number]) && of_forty(at + 1) {
            return Some((at + 3, format!("{} weeks", self.text(at))));
        }
        for kinds in [&[Number, Word, Number, Word][..], &[Number, Word]] {
            let end = at + kinds.len();
            let last = self.text(end.saturating_sub(1)).to_lowercase();
            if shape(kinds)
                && ["w", "wk", "wks", "week", "weeks", "d", "day", "days"].contains(&last.as_str())
                && accepts(key, self.run(at, end))
            {
                return Some((end, self.run(at, end).to_owned()));
            }
        }
        None
    }

    /// Fifths at `at`, such as `2/5`, with nothing after them: their end.
    pub(super) fn fraction(&self, at: usize) -> Option<usize> {
        let fits =
            self.kind(at) == Some(Kind::Number) && self.text(at + 1) == "/" && self.text(at + 2) == "5";
        fits.then_some(at + 3)
    }

    /// Fifths are those above the brim only when it is said.
    pub(super) fn fifths(&mut self, end: usize) {
        let at = self.at;
        let key = of_key((Scope::Baby, "head-above-brim"));
        if let Some(longest) = self.longest(key, at)
            && longest > end
            && self.kind(end) == Some(Kind::Word)
        {
            let text = self.run(at, longest).to_owned();
            return self.take_as((Scope::Baby, key.name), longest, text);
        }
        let mut after = end;
        while ["ths", "th", "of", "head", "ceph", "is"].contains(&self.text(after).to_lowercase().as_str()) {
            after += 1;
        }
        let said = ["palp", "palpable", "felt", "above"].contains(&self.text(after).to_lowercase().as_str());
        if said {
            let stop = self.stop(after).min(after + MOST_TOKENS);
            let read = |stop: usize| format!("{} {}", self.run(at, end), self.run(after, stop));
            let found = (after + 1..=stop).rev().find(|stop| accepts(key, &read(*stop)));
            if let Some(found) = found {
                let text = read(found);
                return self.take_as((Scope::Baby, key.name), found, text);
            }
        }
        let k: u16 = self.text(at).parse().unwrap_or(u16::MAX);
        if k > 5 {
            let text = self.run(at, end).to_owned();
            let end = if said { after + 1 } else { end };
            return self.take_as((Scope::Baby, key.name), end, text);
        }
        // A slip in `palp` is likelier than fifths without it.
        if self.kind(after) == Some(Kind::Word)
            && !self.begins(after)
            && ["palp", "palpable"].iter().any(|word| likeness(&fold(self.text(after)), word) > 0.6)
        {
            let span = self.span(after, after + 1);
            let message = format!("{} is not understood", quoted(self.text(after)));
            self.items.problems.push(
                Problem::at("unknown-shorthand", self.name, span, message)
                    .expecting("`palp` after fifths that are felt above the brim")
                    .suggesting(Some("`palp`".to_owned())),
            );
            self.at = after + 1;
            return;
        }
        let mut whole = end;
        if ["eng", "engaged", "e"].contains(&self.text(end).to_lowercase().as_str()) {
            whole += 1;
        }
        self.ask_fifths(k, whole);
    }

    pub(super) fn ask_fifths(&mut self, k: u16, end: usize) {
        let text = self.run(self.at, end).to_owned();
        let message = format!(
            "{} does not say whether that much is felt above the brim or has gone below it",
            quoted(&text)
        );
        let instead = format!(
            "`{k}/5 palp` for {k} fifths felt above the brim; `{}/5 palp` when {k} fifths have gone below it",
            5 - k.min(5)
        );
        self.ask(end, message, &instead);
    }

    /// A date at `at`: the token after it, and what it says.
    pub(super) fn day(&self, at: usize) -> Option<(usize, Day)> {
        let start = self.tokens.get(at).filter(|token| token.kind == Kind::Number)?.at.start;
        let (length, day) = day::at_start(&self.line[start..])?;
        let end = self
            .tokens
            .iter()
            .position(|token| token.at.start >= start + length)
            .unwrap_or(self.tokens.len());
        Some((end, day))
    }

    pub(super) fn unclear_day(&mut self, at: usize, end: usize) {
        let text = self.run(at, end).to_owned();
        let span = self.span(at, end);
        self.items.problems.push(
            Problem::at(
                "two-way-date",
                self.name,
                span,
                format!("{} can be read in more than one way", quoted(&text)),
            )
            .expecting("year-month-day, such as 2026-03-14, or the month as a word, such as 14 Mar 2026"),
        );
        self.at = end;
    }
}
