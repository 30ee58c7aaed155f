//! What the reader makes of a row of the lexicon. In: the row that stands at the token. Out: findings, kept words, questions.

use super::ask::Way;
use super::lexicon::{Hit, known};
use super::said::Value;
use super::scan::{Choice, Last, Scan, State};
use super::tokens::Kind;
use crate::exam::keys::{Key, Scope};
use crate::report::{Problem, quoted};

impl Scan<'_> {
    /// Do what the row of `hit` says.
    pub(super) fn act(&mut self, hit: &Hit) {
        let row = self.row(hit);
        let (verb, rest) = (row.verb(), row.rest());
        let (at, end) = (self.at, hit.end);
        match verb {
            "skip" => self.skip(end),
            "is" => {
                self.whole(rest, end, &hit.numbers);
                if rest.starts_with("operations=") {
                    self.history_of_operation();
                }
            }
            "bare" => {
                let (key, value) = rest.split_once(' ').unwrap_or((rest, ""));
                self.whole(&format!("{key}={value}"), end, &[]);
            }
            "soft" => {
                self.put_text("womb", "soft".to_owned(), at, end);
                self.mark(at, end, State::Kept);
                self.at = end;
            }
            "lead" => self.lead(rest, end),
            "sign" => {
                let (word, other) = rest.split_once("; or ").unwrap_or((rest, ""));
                let other = other.split_once('=').map(|(key, value)| (known(key).name, value));
                self.sign(end, word, other);
            }
            "doubtful" => self.doubtful(end, rest),
            "pain" => self.pain(end),
            "no" => self.no(end),
            "not" => self.not(end),
            "denies" => {
                self.mark(at, end, State::Used);
                self.at = end;
                self.denies_list();
            }
            "has" => self.complains(end),
            "but" => {
                self.mark(at, end, State::Skipped);
                (self.denies, self.has) = (false, true);
                self.last = Last::Nothing;
                self.at = end;
            }
            "complaints" => self.keep(end),
            "time" | "amount" => self.time(end),
            "when" => self.when(end),
            "now" => {
                self.mark(at, end, State::Skipped);
                self.at = end;
                self.plans = false;
                self.last = Last::Nothing;
            }
            "change" => self.change(end),
            "arrow" => self.arrow(end),
            "weeks" | "term" | "lmp" | "dated" | "size" => self.of_weeks(verb, rest, hit),
            "head" | "breech" | "pp" | "place" | "above" | "engaged" | "abdominal" => self.of_baby(verb, hit),
            "by-vagina" => self.whole(&format!("found-by-vagina={rest}"), end, &[]),
            "legs" | "legs-of-breech" => self.legs(rest, end),
            "fh" => self.fh(end),
            "pulse" => self.lead("pulse", end),
            "efw" => self.efw(end),
            "parity" => {
                self.whole("births-before=#1", end, &hit.numbers);
                self.mark(at, end, State::Kept);
            }
            "parity-in-four" => self.parity_in_four(end),
            "planned-section" => self.planned_section(end),
            "vbac" => self.vbac(end),
            "few" => self.few(end),
            "twins" => {
                self.babies = 2;
                self.mark(at, end, State::Used);
                self.at = end;
            }
            "letter" | "baby" => self.baby_named(rest, hit),
            "both" => {
                self.both = true;
                self.mark(at, end, State::Used);
                self.at = end;
            }
            "both-hearts" => {
                (self.both, self.babies, self.numbered) = (true, 2, false);
                self.whole("heart=heard", end, &[]);
                self.both = false;
            }
            "vaginal" | "of" => self.vaginal_words(end),
            "keepvalue" => self.keep_value(end),
            "measure" => self.measure(rest, end),
            "inten" => self.in_ten(end, &hit.numbers),
            "waters" => self.hours_broken(end, &hit.numbers),
            "labour" => self.labour(rest, end),
            "keepclause" | "family" | "advice" => self.aside(verb, end),
            "plan" => self.plan(end),
            "history" | "was" => self.history(end),
            "scan" => self.by_scan(end),
            "who" => self.who(end),
            "note" => self.rest_is_note(end),
            "ask" => self.ask_row(rest, hit),
            "keepquiet" => {
                self.mark(at, end, State::Kept);
                self.at = end;
            }
            "keep" => self.keep_row(rest, end),
            _ => {
                self.keep(end);
                self.last = Last::Words;
            }
        }
    }

    /// `keep`, and what is read beside it: `keep; is tape-unfit=...`.
    fn keep_row(&mut self, rest: &str, end: usize) {
        let at = self.at;
        self.keep(end);
        if let Some((_, also)) = rest.split_once("is ") {
            self.at = at;
            self.whole(also, end, &[]);
            self.mark(at, end, State::Kept);
        }
        self.kept_marks();
        self.last = Last::Words;
    }

    /// Plus signs and question marks that touch kept words are kept with them.
    pub(super) fn kept_marks(&mut self) {
        while matches!(self.low(self.at), "++" | "?" | "!" | "↑" | "↓")
            || self.low(self.at) == "+" && !self.gap(self.at)
        {
            let lone = self.low(self.at) == "?" && self.gap(self.at) && !self.gap(self.at + 1);
            if lone || matches!(self.low(self.at), "↑" | "↓") && self.gap(self.at) {
                return;
            }
            self.mark(self.at, self.at + 1, State::Kept);
            self.at += 1;
        }
    }

    fn skip(&mut self, end: usize) {
        if self.turn_of_back(end) {
            return;
        }
        if self.low(self.at) == "," || self.low(self.at) == "/" {
            self.heart &= self.low(self.at) != "/";
        }
        self.mark(self.at, end, State::Skipped);
        self.at = end;
    }

    /// An `a` that stands behind the side of a back may be its turn: it is asked, never passed over.
    fn turn_of_back(&mut self, end: usize) -> bool {
        let at = self.at;
        if self.low(at) != "a" || !(self.ends(end) || self.choose(end).is_some()) {
            return false;
        }
        let Some(back) = self.said.last().filter(|said| said.key.name == "back") else { return false };
        let (from, here) = (back.at(), self.span(at, end));
        let between = self.line.get(from.end..here.start);
        if !between.is_some_and(|text| text.chars().all(|c| matches!(c, ' ' | ',' | '-' | '/'))) {
            return false;
        }
        let side = back.values[0].text.trim_end_matches('?').to_owned();
        let message = format!(
            "{} behind the back's side: is it turned to her front (anterior)",
            quoted(&self.line[here.clone()])
        );
        let ways = [
            Way::new("to her front", format!("back {side} front")),
            Way::new("only the side is known", format!("back {side}")),
        ];
        self.mark(at, end, State::Used);
        self.questions.push(super::ask::question(self.line, from.start..here.end, message, &ways));
        self.at = end;
        true
    }

    /// A row that says whole findings: `heart=heard; heart-rhythm=regular`, with `#1` for its first number.
    pub(super) fn whole(&mut self, means: &str, end: usize, numbers: &[u16]) {
        let at = self.at;
        if means.starts_with("heart=heard") && self.two_rates(at, end) {
            return;
        }
        let mut to = end;
        let mut tail = String::new();
        let close = !self.gap(end) || self.ends(end + 1) || self.low(end + 1) == "?";
        if self.low(end) == "?" && close {
            tail.push('?');
            to = end + 1;
        }
        for one in means.split("; ") {
            let Some((name, value)) = one.split_once('=') else { continue };
            let mut value = value.to_owned();
            for (n, number) in (1..).zip(numbers) {
                value = value.replace(&format!("#{n}"), &number.to_string());
            }
            if tail == "?" && value.ends_with('?') {
                tail.clear();
            }
            let mut key = known(name);
            // What leads in a face or brow is told by how the head is bent.
            if self.vaginal && name == "presentation" && matches!(value.as_str(), "face" | "brow") {
                key = known("attitude");
            }
            let name = key.name;
            if self.vaginal && matches!(name, "attitude" | "position") && self.kind(to) != Some(Kind::Bracket)
            {
                value = format!("{} (vaginal examination)", value.trim_end_matches('?'));
            }
            // What is said about it in brackets belongs to it, and a doubt after them.
            if self.kind(to) == Some(Kind::Bracket) {
                let doubt = self.low(to + 1) == "?" && self.own_doubt(to + 1);
                let text = format!("{value} {}{}", self.text(to), if doubt { "?" } else { "" });
                if crate::exam::read::accepts(key, &text) {
                    to += if doubt { 2 } else { 1 };
                    self.put_text(name, text, at, to);
                    continue;
                }
            }
            self.put_text(name, format!("{value}{tail}"), at, to);
        }
        self.heart |= means.starts_with("heart");
        self.at = to;
    }

    /// A value that needs no lead.
    pub(super) fn take_bare(&mut self, key: &'static Key, end: usize, values: Vec<Value>) {
        let at = self.at;
        if matches!(key.name, "reports" | "denies") && values.len() == 1 && key.name == "reports" {
            let words = self.words(at, end).to_owned();
            if !words.starts_with("reports") {
                return self.sign(end, &words, None);
            }
        }
        self.heart |= key.name.starts_with("heart");
        let mut values = values;
        self.by_hand_or_vagina(key, &mut values, end);
        self.put(key, values, at, end);
        self.at = end;
    }

    /// A lead and its value; without one the lead is kept with the word after it, or asked.
    fn lead(&mut self, names: &str, end: usize) {
        let at = self.at;
        let keys: Vec<&'static Key> = names.split(' ').map(known).collect();
        if names == "weeks" && self.verb_at(self.between(end), &["weeks"]).is_some() {
            self.mark(at, end, State::Used);
            self.at = end;
            return;
        }
        if names.starts_with("heart-rate") && self.two_rates(at, end) {
            return;
        }
        // `ut ?tender`: the doubt is the value's.
        let doubted = self.low(end) == "?" && !self.gap(end + 1) && self.doubt.is_none();
        let from = if doubted { end + 1 } else { end };
        let found = keys.iter().filter_map(|key| Some((*key, self.values_after(key, from)?)));
        let found = found.reduce(|best, next| if next.1.0 > best.1.0 { next } else { best });
        if let Some((key, (to, values))) = found {
            if key.name == "fundal-height" && self.tape_is_unclear(at, to) {
                return;
            }
            self.heart |= key.name.starts_with("heart");
            if doubted {
                self.doubt = Some(self.tokens[end].at.clone());
            }
            self.put(key, values, at, to);
            // `s & nt`: not tender has no key.
            let start = self.between(from);
            if key.name == "womb" && self.verb_at(start, &["soft"]).is_some_and(|hit| hit.end == to) {
                self.mark(start, to, State::Kept);
            }
            self.at = to;
            return self.after_lead(key);
        }
        self.lead_alone(&keys, end);
    }

    /// What may follow a value of its own accord.
    fn after_lead(&mut self, key: &Key) {
        match key.name {
            "fundal-height" => self.after_tape(),
            "placenta" | "water" | "womb" => self.kept_marks(),
            _ => {}
        }
    }

    /// Nothing it takes comes after a lead.
    fn lead_alone(&mut self, keys: &[&'static Key], end: usize) {
        let at = self.at;
        let Some(key) = keys.first().copied() else { return };
        let heart = key.name.starts_with("heart-rate");
        if key.name == "head-above-brim" {
            return self.keep(end);
        }
        if let Some((to, super::day::Day::Unclear)) = self.day(self.between(end))
            && key.scope == Scope::Top
        {
            return self.unclear_day(to);
        }
        if heart && self.heart_alone(end) {
            return;
        }
        if matches!(self.low(end), "-" | "±") && (self.gap(end + 1) || self.ends(end + 1)) {
            let to = end + 1;
            let of = if heart { "heard or not" } else { "there, in doubt, or not noted" };
            let message = format!("{} does not say: {of}", quoted(self.words(at, to)));
            self.notes.push(self.words(at, to).to_owned());
            let ways = match key.name {
                "movements" => vec![
                    Way::new("movements felt", "FM felt"),
                    Way::new("fewer than usual", "FM fewer"),
                    Way::new("none", "FM none"),
                ],
                _ if heart => vec![Way::new("heard", "FHH"), Way::new("not heard", "FH not heard")],
                _ => vec![],
            };
            return self.ask(to, message, &ways);
        }
        // Its value is kept with it: the words to the next finding, or what no value can be is asked.
        let comma = self.comma(end);
        let number = self.kind(end) == Some(Kind::Number);
        if number && matches!(key.name, "fundal-height" | "heart-rate" | "pulse" | "births-before") {
            return self.number_that_cannot_be(key, end);
        }
        let mut to = end;
        while to < comma && to < end + 4 && (to == end && !self.starts_elsewhere(to) || !self.begins(to)) {
            to += 1;
        }
        self.keep(to);
        self.kept_marks();
        self.last = Last::Words;
    }

    /// Whether the word after a lead certainly begins another finding.
    fn starts_elsewhere(&self, at: usize) -> bool {
        match self.choose(at) {
            Some(Choice::Row(hit)) => !matches!(self.row(&hit).verb(), "skip" | "keep" | "bare" | "of"),
            Some(Choice::Bare(..)) => true,
            None => false,
        }
    }

    /// Words, in doubt whether they are a symptom.
    fn doubtful(&mut self, end: usize, word: &str) {
        let at = self.at;
        if self.denies {
            return self.denied(at, end, end, word);
        }
        let comma = self.comma(end);
        let mut to = end;
        while to < comma && !self.begins(to) {
            to += 1;
        }
        if word == "bleeding" {
            // The same words say that it is over.
            let message = format!("{} may be old blood", quoted(self.words(at, to)));
            let whole = self.words(at, to).to_owned();
            self.notes.push(whole.clone());
            let ways = [
                Way::new(
                    "she is bleeding, or was",
                    format!("reports bleeding; note {}", super::ask::quotation(&whole)),
                ),
                Way::new("no blood", "note"),
            ];
            return self.ask(to, message, &ways);
        }
        // The words to the comma, with their own doubts, are kept.
        let to = comma;
        let span = self.span(at, to);
        self.signs.push(super::signs::Sign { word: word.to_owned(), has: true, unsure: true, at: span });
        self.keep(to);
        self.last = Last::Complaint;
    }

    /// `not`: kept with what it is said of.
    fn not(&mut self, end: usize) {
        let at = self.at;
        if self.verb_at(end, &["sign"]).is_some() {
            return self.no(end);
        }
        self.keep_denied(at, end);
        self.last = Last::Words;
    }

    /// `denies`, `no c/o`: the list after it is not so; without one she complains of nothing.
    fn denies_list(&mut self) {
        let at = self.at;
        let next = self.verb_at(at, &["sign", "doubtful", "pain"]).is_some();
        if next || self.choose(at).is_none() && !self.ends(at) {
            self.denies = true;
        } else if let Some(Choice::Row(hit)) = self.choose(at)
            && self.row(&hit).rest() == "movements=fewer"
        {
            self.put_text("movements", "usual".to_owned(), at, hit.end);
            self.at = hit.end;
            self.denies = true;
        } else {
            let before = at - 1;
            self.put_text("reports", "none".to_owned(), before, at);
        }
    }

    /// `c/o`: what follows is so.
    fn complains(&mut self, end: usize) {
        let at = self.at;
        let next = if self.low(end) == ":" { end + 1 } else { end };
        self.mark(at, next, State::Skipped);
        self.denies = false;
        if matches!(self.low(next), "nil" | "none" | "nothing")
            && (self.ends(next + 1) || self.begins(next + 1))
        {
            let sign_next = self.verb_at(next + 1, &["sign", "pain", "doubtful"]).is_some();
            if !sign_next {
                self.put_text("reports", "none".to_owned(), at, next + 1);
                self.at = next + 1;
                return;
            }
        }
        if let Some((to, values)) = self.values(known("reports"), next)
            && self.ends(to)
            && self.kind(to) != Some(Kind::Word)
            && values.len() == 1
            && super::values::is_state(&values[0].text)
        {
            self.put(known("reports"), values, at, to);
            self.at = to;
            return;
        }
        self.has = true;
        self.last = Last::Nothing;
        self.at = next;
    }

    /// How long and how much: kept beside what it belongs to.
    fn time(&mut self, end: usize) {
        self.keep(end);
        self.kept_marks();
    }

    /// A count of movements, few or not told how long.
    fn few(&mut self, end: usize) {
        let at = self.at;
        let comma = self.comma(end);
        let mut to = end;
        while to < comma
            && (!self.begins(to)
                || self.kind(to) == Some(Kind::Number) && self.verb_at(to, &["weeks"]).is_none())
        {
            to += 1;
        }
        self.put_text("movements", "fewer".to_owned(), at, to);
        self.mark(at, to, State::Kept);
        self.at = to;
    }

    /// Four figures after P: term, preterm, lost, living.
    fn parity_in_four(&mut self, end: usize) {
        let words = quoted(self.words(self.at, end));
        let message =
            format!("{words} is term, preterm, lost and living: how many births were there before this one");
        let ways: Vec<Way> =
            (0..=4_u8).map(|n| Way::new(format!("{n} births before"), format!("P{n}"))).collect();
        self.ask(end, message, &ways);
    }

    /// `VBAC`: there was a caesarean; its cut is not told.
    fn vbac(&mut self, end: usize) {
        let at = self.at;
        self.mark(at, end, State::Kept);
        let cut_told = self.lexicon_says("womb-cut");
        if !cut_told {
            let message = format!(
                "{} tells of an earlier caesarean, not of how the womb was cut",
                quoted(self.words(at, end))
            );
            self.ask(end, message, &cuts());
            self.mark(at, end, State::Kept);
        }
        self.at = end;
        self.last = Last::Aside;
    }

    /// Whether any row of the line names `key`.
    fn lexicon_says(&self, key: &str) -> bool {
        (0..self.tokens.len()).any(|at| {
            self.lexicon.at(&self.tokens, at).iter().any(|hit| {
                let row = self.row(hit);
                row.verb() == "is" && row.rest().contains(&format!("{key}="))
                    || row.verb() == "lead" && row.rest() == key
            })
        })
    }

    /// A planned caesarean; `repeat` tells of an earlier one.
    fn planned_section(&mut self, end: usize) {
        let at = self.at;
        let repeat = self.low(at).starts_with('r') || self.low(at).starts_with("rpt");
        let year = self.text(end).parse::<u16>().is_ok_and(|year| (1980..2100).contains(&year));
        if year {
            let lower =
                ["ll", "ls", "lus"].iter().any(|part| self.joined(at, end).to_lowercase().contains(part));
            let means =
                if lower { "operations=caesarean; womb-cut=low transverse" } else { "operations=caesarean" };
            self.whole(means, end, &[]);
            return;
        }
        if repeat && !self.lexicon_says("womb-cut") {
            let message = format!(
                "{}: a repeat section is planned; how was the womb cut before",
                quoted(self.words(at, end))
            );
            self.ask(end, message, &cuts());
            self.at = at;
        }
        self.plan(end);
    }

    /// A row that asks.
    fn ask_row(&mut self, rest: &str, hit: &Hit) {
        let filled = |text: &str| {
            let mut text = text.to_owned();
            for (n, number) in (1..).zip(&hit.numbers) {
                text = text.replace(&format!("#{n}"), &number.to_string());
            }
            text
        };
        let mut parts = rest.split('|');
        let why = filled(parts.next().unwrap_or_default());
        let ways: Vec<Way> = parts
            .filter_map(|way| way.split_once(" => "))
            .map(|(says, becomes)| Way::new(filled(says), filled(becomes)))
            .collect();
        let message = format!("{} {why}", quoted(self.words(self.at, hit.end)));
        let danger = why.contains("death") || why.contains("bleeding") || why.contains("tried");
        if danger {
            self.notes.push(self.words(self.at, hit.end).to_owned());
        }
        self.ask(hit.end, message, &ways);
    }

    /// Who she is: not recorded here.
    fn who(&mut self, end: usize) {
        let to = self.comma(end);
        let span = self.span(self.at, to);
        let message = format!("{} is not recorded here", quoted(self.words(self.at, to)));
        self.problems.push(Problem::at("identity", self.name, span, message).expecting(
            "a line without names, dates of birth or numbers of people: take it out, and write them on the page by hand",
        ));
        self.mark(self.at, to, State::Used);
        self.at = to;
    }
}

fn cuts() -> Vec<Way> {
    vec![
        Way::new("low transverse", "operations caesarean; womb cut low transverse"),
        Way::new("vertical", "operations caesarean; womb cut vertical"),
        Way::new("not known", "operations caesarean; womb cut not known"),
    ]
}

/// Values that were found by the vagina.
pub(super) fn by_vagina(values: &mut [Value]) {
    for value in values {
        let (text, doubt) = match value.text.strip_suffix('?') {
            Some(text) => (text.trim(), "?"),
            None => (value.text.as_str(), ""),
        };
        if !text.ends_with(')') {
            value.text = format!("{text} (vaginal examination){doubt}");
        }
    }
}
