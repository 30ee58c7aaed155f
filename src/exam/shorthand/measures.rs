//! Signs that are measured or counted. In: the lead of one, such as `BP`, or contractions in ten minutes. Out: the finding when
//! its value can be read; else the words, kept with their value. What an abbreviation was read as is told once for the line.

use super::lexicon::known;
use super::said::Value;
use super::scan::{Last, Scan, State};
use super::tokens::Kind;
use crate::exam::keys::Key;
use crate::exam::read::{accepts, canonical};
use crate::exam::words::fold;
use crate::report::{Problem, quoted};

/// Findings that a line tells back in full words when they were written short.
const TOLD: [&str; 26] = [
    "gravida",
    "placentas",
    "rhesus-d",
    "group-b-strep",
    "labour",
    "hours-since-broken",
    "water-colour",
    "water",
    "consent",
    "build",
    "scar-feel",
    "muscle-gap",
    "hernia",
    "bladder",
    "temperature",
    "blood-pressure",
    "breathing",
    "urine-protein",
    "contractions-in-ten",
    "contraction-length",
    "contraction-strength",
    "height-for-dates",
    "size",
    "hiccups",
    "turning-tried",
    "heart-quality",
];

impl Scan<'_> {
    /// A lead and its measure; what cannot be read, or goes on to a second measure, is kept as it stands.
    pub(super) fn measure(&mut self, name: &str, end: usize) {
        let at = self.at;
        let key = known(name);
        let from = if self.kind(end - 1) == Some(Kind::Number) { end - 1 } else { end };
        // `T 38 weeks` is no temperature.
        if key.name == "temperature" && self.verb_at(self.between(from), &["weeks"]).is_some() {
            return self.keep(from);
        }
        let goes_on = |to: usize| {
            matches!(self.low(to), "→" | "↑" | "↓" | "-" | "/" | "to" | "then" | "repeat" | "rpt" | "?")
        };
        let found = self.amount_of_protein(key, from).or_else(|| self.values_after(key, from));
        match found.or_else(|| self.with_degrees(key, from)).filter(|(to, _)| !goes_on(*to)) {
            Some((to, values)) => {
                self.put(key, values, at, to);
                self.at = to;
                while matches!(self.low(self.at), "mmhg" | "mm" | "°" | "degrees") {
                    self.mark(self.at, self.at + 1, State::Skipped);
                    self.at += 1;
                }
            }
            None => self.keep_value(end),
        }
    }

    /// `37.2` is in degrees Celsius, `99` to `104` in Fahrenheit: no living woman has the other.
    fn with_degrees(&self, key: &Key, from: usize) -> Option<(usize, Vec<Value>)> {
        let at = self.between(from);
        if key.name != "temperature" || self.kind(at) != Some(Kind::Number) {
            return None;
        }
        let unit = match self.text(at).parse::<f64>().ok()? {
            degrees if (34.0..43.0).contains(&degrees) => "C",
            degrees if (94.0..109.0).contains(&degrees) => "F",
            _ => return None,
        };
        let text = format!("{} {unit}", self.text(at));
        accepts(key, &text).then(|| (at + 1, vec![Value { at: self.span(at, at + 1), text }]))
    }

    /// `prot ++`, `prot +`, `prot nil`.
    fn amount_of_protein(&self, key: &Key, from: usize) -> Option<(usize, Vec<Value>)> {
        if key.name != "urine-protein" {
            return None;
        }
        let at = self.between(from);
        let (text, to) = match self.low(at) {
            "nil" | "neg" | "none" | "negative" => ("none".to_owned(), at + 1),
            _ => {
                let mut to = at;
                while matches!(self.low(to), "+" | "++") && (to == at || !self.gap(to)) {
                    to += 1;
                }
                let pluses: usize = (at..to).map(|at| self.low(at).len()).sum();
                if pluses == 0 || pluses == 1 && self.kind(to) != Some(Kind::Break) && !self.gap(to) {
                    return None;
                }
                (format!("{pluses}+"), to)
            }
        };
        accepts(key, &text).then(|| (to, vec![Value { at: self.span(at, to), text }]))
    }

    /// `3:10` after tightenings: how many in ten minutes, then how long and how strong; else an amount like another.
    pub(super) fn in_ten(&mut self, end: usize, numbers: &[u16]) {
        let at = self.at;
        let start = self.tokens[at].at.start;
        let tightenings = self.signs.iter().any(|sign| {
            sign.has
                && sign.word.contains("tightenings")
                && self.line.get(sign.at.end..start).is_some_and(|between| !between.contains([';', '\n']))
        }) || self.said.last().is_some_and(|said| {
            said.key.name == "womb" && said.values.iter().any(|value| value.text == "tightening")
        });
        let ranged = self.low(at + 1) == "-" && numbers.len() >= 2;
        let text = match numbers {
            [few, many, ..] if ranged => format!("{few}-{many}"),
            [number, ..] => number.to_string(),
            [] => String::new(),
        };
        let key = known("contractions-in-ten");
        if !tightenings || self.low(at) == "q" || self.low(at) == "every" || !accepts(key, &text) {
            self.keep(end);
            return self.kept_marks();
        }
        let last = self.last;
        self.put_text(key.name, text, at, end);
        self.at = end;
        self.long_and_strong();
        self.last = last;
    }

    /// `lasting 45 s`, `strong`, after contractions.
    pub(super) fn long_and_strong(&mut self) {
        loop {
            let at = self.at;
            let next = if self.low(at) == "," { at + 1 } else { at };
            let lead =
                usize::from(matches!(self.low(next), "lasting" | "lasts" | "last" | "x" | "for" | "@"));
            let number = next + lead;
            let minutes = matches!(self.low(number + 1), "min" | "mins" | "minute" | "minutes");
            let unit = minutes || matches!(self.low(number + 1), "s" | "sec" | "secs" | "seconds");
            let text = format!("{} {}", self.text(number), if minutes { "min" } else { "s" });
            if self.kind(number) == Some(Kind::Number)
                && unit
                && accepts(known("contraction-length"), &text)
                && !self.has_read("contraction-length")
            {
                self.put_text("contraction-length", text, next, number + 2);
                self.at = number + 2;
            } else if matches!(self.low(next), "mild" | "moderate" | "mod" | "strong")
                && !self.has_read("contraction-strength")
                && (self.ends(next + 1) || self.low(next + 1) == "," || self.choose(next + 1).is_some())
            {
                self.put_text("contraction-strength", self.low(next).to_owned(), next, next + 1);
                self.at = next + 1;
            } else {
                return;
            }
        }
    }

    /// Waters broken some hours ago.
    pub(super) fn hours_broken(&mut self, end: usize, numbers: &[u16]) {
        let at = self.at;
        let denied = self.denies;
        self.sign(end, "waters broken", None);
        if let Some(hours) = numbers.first().filter(|_| !denied) {
            let after = self.at;
            let last = self.last;
            self.put_text("hours-since-broken", format!("{hours} h"), at, end);
            (self.at, self.last) = (after, last);
        }
    }

    /// What short words were read as, when they were short.
    pub(super) fn tell(&mut self, key: &Key, values: &[Value], at: usize, end: usize) {
        if !TOLD.contains(&key.name) {
            return;
        }
        let name = key.name.replace('-', " ");
        let said: Vec<String> = values.iter().filter_map(|value| canonical(key, &value.text)).collect();
        let full = format!("{name} {}", said.join(" + "));
        let words = self.words(at, end);
        let in_full = |text: &str| fold(text).replace('-', " ");
        if !said.is_empty() && (words.contains('+') || !in_full(words).starts_with(&in_full(&name))) {
            self.told.push((self.span(at, end), format!("{} {full}", quoted(words))));
        }
    }

    /// The notice that tells them.
    pub(super) fn tell_all(&mut self) {
        let mut told = std::mem::take(&mut self.told);
        told.sort_by_key(|(at, _)| at.start);
        if let Some((first, _)) = told.first() {
            let all: Vec<&str> = told.iter().map(|(_, words)| words.as_str()).collect();
            let message = format!("read as: {}", all.join("; "));
            self.problems.push(Problem::at("read-as", self.name, first.clone(), message).as_warning());
        }
    }

    /// The words go on as they are after a finding of the mother: nothing in them is hers to deny.
    pub(super) fn labour(&mut self, value: &str, end: usize) {
        let at = self.at;
        self.put_text("labour", value.to_owned(), at, end);
        self.at = end;
        self.last = Last::Finding;
    }
}
