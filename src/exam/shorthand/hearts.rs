//! The heart in a line. In: `FH`, or a word of the heart. Out: the tape or the heart, by what follows; what stands after the heart
//! without a word of its own.

use super::ask::Way;
use super::lexicon::known;
use super::scan::{Last, Scan, State};
use super::tokens::Kind;
use crate::report::quoted;

/// `FH` and this many is a tape in cm.
const TAPE: std::ops::RangeInclusive<f64> = 10.0..=45.0;
/// `FH` and this many is a heart rate.
const HEART: std::ops::RangeInclusive<f64> = 90.0..=220.0;
/// What follows after any word of the heart, without a lead of its own.
const AFTER: [&str; 5] = ["heart", "heart-rate", "heart-counts", "heart-rhythm", "heart-with"];

impl Scan<'_> {
    /// What follows after the heart: a rate, a rhythm, a place, with what.
    pub(super) fn after_heart(&mut self) -> bool {
        let at = self.at;
        if self.verb_at(at, &["weeks", "time", "twins", "baby", "letter"]).is_some()
            || self.fraction(at).is_some()
        {
            return false;
        }
        if self.low(at) == "," {
            // After a comma only what is certainly of the heart.
            let rest = AFTER.iter().any(|name| {
                self.values(known(name), at + 1).is_some_and(|(end, _)| self.ends(end))
                    && !self.begins_elsewhere(at + 1)
            });
            self.heart = rest;
            self.mark(at, at + 1, State::Skipped);
            self.at = at + 1;
            return true;
        }
        if self.two_rates(at, at) {
            return true;
        }
        let from = self.between(at);
        let found = AFTER
            .iter()
            .filter(|name| **name != "heart-rate" || !self.has_read("heart-rate"))
            .filter_map(|name| {
                let (end, values) = self.values(known(name), from)?;
                let state = super::values::is_state(&values[0].text);
                (!state || *name == "heart").then_some((known(name), end, values))
            })
            .reduce(|best, next| if next.1 > best.1 { next } else { best });
        let Some((key, end, values)) = found else { return false };
        // A side that belongs to what follows it is not the heart's.
        let of_next = self.verb_at(end, &["head", "breech"]).is_some()
            || matches!(self.low(end), "back" | "limbs" | "smalls" | "plac" | "placenta" | "iliac");
        if key.name == "heart" && of_next && !self.ends(end) {
            return false;
        }
        if self.begins_elsewhere(from) && key.name != "heart-with" {
            return false;
        }
        if key.name == "heart-rate" && !self.rate_alone(from, end) {
            return false;
        }
        self.put(key, values, at, end);
        self.at = end;
        true
    }

    /// A longer row than what the heart would take begins here: a lead, a symptom.
    fn begins_elsewhere(&self, at: usize) -> bool {
        let value_end = AFTER
            .iter()
            .filter_map(|name| self.values(known(name), at))
            .map(|(end, _)| end)
            .max()
            .unwrap_or(at);
        self.lexicon.at(&self.tokens, at).iter().any(|hit| {
            let row = self.row(hit);
            let reach = self.reach(row, hit, at).map_or(0, |(reach, _)| reach);
            reach > value_end
                && !row.rest().starts_with("heart")
                && !matches!(row.verb(), "skip" | "keep" | "fh")
        })
    }

    /// A number after the heart is a rate when it can be one.
    fn rate_alone(&self, from: usize, end: usize) -> bool {
        let number = self.text(from).parse::<u16>().unwrap_or(0);
        let unit = matches!(self.low(end), "cm" | "cms" | "weeks" | "wks" | "w" | "days" | "/" | "+" | "kg");
        (50..=250).contains(&number) && !unit
    }

    /// `FH` is the tape or the heart: what follows settles it, or it is asked.
    pub(super) fn fh(&mut self, end: usize) {
        let at = self.at;
        let next = self.between(end);
        let tape = known("fundal-height");
        let number = self.text(next).parse::<f64>().ok().filter(|_| self.kind(next) == Some(Kind::Number));
        let weeks = self.verb_at(next, &["weeks"]).is_some();
        let or_hers =
            (next..self.comma(next)).any(|at| matches!(self.low(at), "maternal" | "mat" | "mum's" | "hers"));
        if self.low(end) == ":"
            && number.is_none()
            && AFTER.iter().all(|name| self.values(known(name), next).is_none())
        {
            return self.aside("family", end);
        }
        if matches!(self.low(end), "-" | "±")
            && (self.gap(end + 1) || self.ends(end + 1))
            && (weeks || number.is_none())
        {
            let message = format!("{} does not say whether it was heard", quoted(self.words(at, end + 1)));
            self.notes.push(self.words(at, end + 1).to_owned());
            let ways = [
                Way::new("not heard", "FH not heard"),
                Way::new("heard", "FHH"),
                Way::new("not listened", "FH not listened"),
            ];
            return self.ask(end + 1, message, &ways);
        }
        if or_hers && let Some((to, _)) = self.values(known("heart-rate"), next) {
            let stop = self.comma(to);
            let rate = self.words(next, to).to_owned();
            let message = format!("{} is the baby's heart, or hers", quoted(self.words(at, stop)));
            self.notes.push(self.words(at, stop).to_owned());
            let ways = [Way::new("the baby's", format!("FHR {rate}")), Way::new("hers", "FH could not tell")];
            self.doubt = None;
            return self.ask(stop, message, &ways);
        }
        let by_heart = AFTER.iter().filter_map(|name| {
            let (end, values) = self.values(known(name), next)?;
            Some((known(name), end, values))
        });
        let by_heart = by_heart.reduce(|best, next| if next.1 > best.1 { next } else { best });
        let by_tape = number.filter(|n| TAPE.contains(n) && !weeks).and_then(|_| self.values(tape, next));
        let level = self.values(known("fundus"), next).map(|(end, _)| end);
        let rate_follows = |end: usize| self.text(end).parse::<u16>().is_ok_and(|n| (90..=220).contains(&n));
        match (number, by_tape, by_heart) {
            (Some(_), Some((to, values)), heart) if heart.as_ref().is_none_or(|(_, end, _)| *end <= to) => {
                if self.tape_is_unclear(at, to) {
                    return;
                }
                self.put(tape, values, at, to);
                self.at = to;
                self.after_tape();
            }
            (Some(n), _, Some((key, to, values))) if !weeks && (HEART.contains(&n) || to > next + 1) => {
                self.heart = true;
                self.put(key, values, at, to);
                self.at = to;
            }
            (None, _, Some((key, to, values)))
                if level.is_none_or(|level| level < to) || rate_follows(to) =>
            {
                self.heart = true;
                self.put(key, values, at, to);
                self.at = to;
            }
            _ if level.is_none()
                && number.is_none()
                && self.kind(end) == Some(Kind::Word)
                && !self.begins(end) =>
            {
                // Words that no heart or womb has: kept together.
                let to = self.comma(end).min(end + 3);
                self.keep(to);
                self.last = Last::Words;
            }
            _ => {
                let to = level.unwrap_or(next).max(if number.is_some() && !weeks { next + 1 } else { end });
                let message =
                    format!("{} is the fundal height, or the fetal heart", quoted(self.words(at, to)));
                let rest = self.words(end, to.max(end)).trim().to_owned();
                let place = if to > end { rest } else { String::new() };
                let mut ways = vec![];
                if level.is_some() {
                    ways.push(Way::new(format!("the womb, {place}"), format!("fundus {place}")));
                    ways.push(Way::new(format!("the heart, {place}"), format!("FHH {place}")));
                }
                self.ask(to, message, &ways);
            }
        }
    }

    /// A word of the heart with nothing it takes: `FHS -` is asked, `FHR ?` kept.
    pub(super) fn heart_alone(&mut self, end: usize) -> bool {
        let at = self.at;
        let next = self.between(end);
        if self.low(end) == "?" && (self.ends(end + 1) || self.gap(end + 1)) {
            let message = format!("{} does not say whether it was heard", quoted(self.words(at, end + 1)));
            self.notes.push(self.words(at, end + 1).to_owned());
            let ways = [Way::new("heard", "FHH"), Way::new("not heard", "FH not heard")];
            self.ask(end + 1, message, &ways);
            return true;
        }
        if self.kind(next) == Some(Kind::Number)
            && self.verb_at(next, &["weeks"]).is_none()
            && self.fraction(next).is_none()
        {
            self.number_that_cannot_be(known("heart-rate"), next);
            return true;
        }
        let both = self.low(end) == "both";
        if both {
            self.both = true;
            self.mark(end, end + 1, State::Used);
            let found = self.values(known("heart-rate"), end + 1);
            if found.is_none() {
                let to = if matches!(self.low(end + 1), "+" | "heard" | "++") { end + 2 } else { end + 1 };
                self.whole("heart=heard", to, &[]);
                self.both = false;
                return true;
            }
        }
        // A finding or nothing follows: the heart is only spoken of.
        let goes_on = self.ends(end)
            || self.verb_at(next, &["weeks", "is", "bare", "head", "breech", "lead"]).is_some();
        let twin = self.verb_at(next, &["baby", "letter"]).is_some() && self.babies == 2;
        if goes_on || both || twin {
            self.heart = true;
            self.heart_shared = twin;
            self.mark(at, end, State::Skipped);
            self.at = end;
            return true;
        }
        false
    }

    /// Two rates of twins, `138 L 146 R`, `136 and 136`, `140 + ?`: which is whose is asked. `lead`: the token of the heart's
    /// own word; the rates begin at `from`.
    pub(super) fn two_rates(&mut self, lead: usize, from: usize) -> bool {
        if self.babies < 2 {
            return false;
        }
        let at = self.between(from);
        let rate = |at: usize| self.text(at).parse::<u16>().ok().filter(|n| (60..=220).contains(n));
        let side = |at: usize| matches!(self.low(at), "l" | "r" | "lt" | "rt" | "left" | "right");
        let Some(first) = rate(at) else { return false };
        let mut next = at + 1;
        let first_side = side(next).then(|| self.text(next).to_owned());
        next += usize::from(first_side.is_some());
        while matches!(self.low(next), "and" | "&" | "/" | "," | "+") {
            next += 1;
        }
        if self.low(next) == "?" && next > at + 1 && matches!(self.low(next - 1), "and" | "&" | "/" | "+") {
            let words = self.words(lead, next + 1).to_owned();
            self.notes.push(words.clone());
            self.at = lead;
            let message = format!("{}: was the second heart heard", quoted(&words));
            let ways = [Way::new("not heard", "baby 2: FH not heard"), Way::new("heard", "baby 2: FHH")];
            self.ask(next + 1, message, &ways);
            return true;
        }
        let Some(second) = rate(next).filter(|_| !self.numbered) else { return false };
        let mut end = next + 1;
        let second_side = side(end).then(|| self.text(end).to_owned());
        end += usize::from(second_side.is_some());
        let words = quoted(self.words(at, end));
        let message = match (&first_side, first == second) {
            (_, true) => format!("{words}: two hearts counted at the same time, or one heard twice"),
            (Some(_), _) => format!("{words}: which twin is the heart on her left, which on her right"),
            _ => format!("{words}: which rate is the first twin's"),
        };
        let place = |side: &Option<String>| side.as_ref().map(|side| format!(" {side}")).unwrap_or_default();
        let way = |one: u16, s1: &Option<String>, two: u16, s2: &Option<String>| {
            format!("baby 1: FHR {one}{}; baby 2: FHR {two}{}", place(s1), place(s2))
        };
        let mut ways = vec![Way::new(
            format!("the first twin {first}, the second {second}"),
            way(first, &first_side, second, &second_side),
        )];
        if first != second {
            ways.push(Way::new(
                format!("the first twin {second}, the second {first}"),
                way(second, &second_side, first, &first_side),
            ));
        }
        self.notes.push(self.words(at, end).to_owned());
        self.at = lead;
        self.ask(end, message, &ways);
        if first != second {
            // Both were heard, whichever is whose.
            self.both = true;
            self.put_text("heart", "heard".to_owned(), lead, end);
            self.both = false;
        }
        self.heart = false;
        true
    }
}
