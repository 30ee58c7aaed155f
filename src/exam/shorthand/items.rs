//! The findings of a line. In: the line. Out: each finding as a key and its text, words for the note, and problems.
//!
//! A finding is what is introduced (`SFH 34`), or stands bare (`LOA`), and takes as much of the line as its key can read.
//! Nothing is passed over: what is not understood is a problem, so that a "not" is never lost.

mod asked;
mod numbers;

use super::day::Day;
use super::leads::{AFTER_BARE, AFTER_HEART, ASKS, BARE, FILLERS, LEADS, Of, SYMPTOM, WHOLE};
use super::lexicon;
use super::said::{Said, Value};
use super::tokens::{self, Kind, Token};
use crate::exam::keys::{self, KEYS, Key, Scope};
use crate::exam::read::{accepts, canonical};
use crate::exam::words::{StateWord, Vocabulary, fold};
use crate::report::{Problem, quoted};
use std::ops::Range;

/// Tokens of one value, at most; a list has more.
const MOST_TOKENS: usize = 16;
/// Problems after which reading stops.
const MOST_PROBLEMS: usize = 50;
/// Babies in one exam.
const MOST_BABIES: usize = 2;

/// What a line holds.
pub struct Items {
    /// The findings, in the order of the line.
    pub said: Vec<Said>,
    /// How many babies it speaks of.
    pub babies: usize,
    /// Words for the note.
    pub notes: Vec<String>,
    /// What was not understood, and what is not recorded here.
    pub problems: Vec<Problem>,
}

/// The findings of `line`; `name` stands for the file in messages.
pub fn of(name: &str, line: &str) -> Items {
    let items = Items { said: vec![], babies: 1, notes: vec![], problems: vec![] };
    let mut scan = Scan {
        name,
        line,
        tokens: tokens::of(line),
        at: 0,
        baby: 0,
        heart: false,
        doubt: None,
        known: lexicon::of_keys(),
        items,
    };
    while scan.at < scan.tokens.len() && scan.items.problems.len() < MOST_PROBLEMS {
        let before = scan.at;
        scan.step();
        // Whatever a step makes of a token, it goes on.
        scan.at = scan.at.max(before + 1);
    }
    scan.lone_doubt();
    scan.items
}

struct Scan<'a> {
    name: &'a str,
    line: &'a str,
    tokens: Vec<Token>,
    at: usize,
    /// The baby spoken of.
    baby: usize,
    /// The heart was spoken of in this part of the line.
    heart: bool,
    /// A `?` that stands before what it is about.
    doubt: Option<Range<usize>>,
    /// The words that can stand in a value, by key.
    known: lexicon::Lexicon,
    items: Items,
}

/// A finding that could be read: where it ends, and what it is.
struct Match {
    end: usize,
    said: Vec<(&'static Key, Vec<Value>)>,
}

impl Scan<'_> {
    fn step(&mut self) {
        let at = self.at;
        match self.tokens[at].kind {
            Kind::Break => {
                self.heart = false;
                self.lone_doubt();
            }
            Kind::Quote => self.quoted_note(),
            Kind::Number => self.number(),
            Kind::Mark if self.text(at) == "," => {}
            Kind::Mark if self.text(at) == "/" => {
                self.heart = false;
            }
            Kind::Mark if self.text(at) == "?" && self.doubt.is_none() => {
                self.doubt = Some(self.tokens[at].at.clone());
            }
            Kind::Mark | Kind::Bracket => self.unknown(),
            Kind::Word => self.word(),
        }
    }

    fn word(&mut self) {
        let at = self.at;
        if self.baby_number() || self.rest_is_note() || self.not_here() || self.asked() || self.fetal_heart()
        {
            return;
        }
        let leads = self.leads(at);
        if let Some(found) = self.best(at, &leads) {
            return self.take(found);
        }
        if let Some((end, keys)) = leads.first() {
            return self.without_value(*end, keys);
        }
        if let Some(end) = self.longest(of_key(SYMPTOM), at) {
            let text = self.run(at, end);
            if StateWord::find(text.split(['(', '?']).next().unwrap_or_default()).is_some() {
                let message = format!("{} does not say of what", quoted(text));
                return self.ask(end, message, "what it is said of before it, such as `head not felt`");
            }
            let message = format!("{} alone does not say whether she has it", quoted(text));
            let instead = format!("`reports {text}`, or `denies {text}`");
            return self.ask(end, message, &instead);
        }
        if let Some(length) = FILLERS.iter().filter_map(|said| self.phrase(at, said)).max() {
            self.at = at + length;
            return;
        }
        if let Some(end) = self.longest(of_key((Scope::Baby, "head")), at) {
            let message = format!("{} does not say what was felt or heard there", quoted(self.run(at, end)));
            return self.ask(end, message, "`head`, `breech`, `back`, `limbs` or `FHH` before a place");
        }
        if let Some(end) = self.longest(of_key((Scope::Baby, "back")), at) {
            let message = format!("{} does not say what is turned so", quoted(self.run(at, end)));
            return self.ask(end, message, "`back` before it");
        }
        self.unknown();
    }

    /// The reading that takes most of the line; where two take as much, what is introduced goes before what stands bare.
    fn best(&self, at: usize, leads: &[(usize, Vec<&'static Key>)]) -> Option<Match> {
        let mut found: Vec<Match> = vec![];
        found.extend(self.whole(at));
        for (after, keys) in leads {
            found.extend(keys.iter().filter_map(|key| self.led(at, *after, key)));
        }
        if self.heart {
            found.extend(AFTER_HEART.iter().filter_map(|of| self.values(of_key(*of), at)));
        }
        found.extend(BARE.iter().filter_map(|of| self.bare(*of, at)));
        // The first of those that end last.
        found.into_iter().reduce(|best, next| if next.end > best.end { next } else { best })
    }

    /// A value of `key` after a lead. What is said of the descent of the head, or of the breech, says also which it is.
    fn led(&self, at: usize, after: usize, key: &'static Key) -> Option<Match> {
        let mut found = self.values(key, after)?;
        let lead = fold(self.run(at, after));
        let part = ["head", "breech", "bottom", "br"].contains(&lead.as_str());
        if part && key.name == "descent" && StateWord::find(self.run(after, found.end)).is_none() {
            let value = Value { at: self.span(at, after), text: self.run(at, after).to_owned() };
            found.said.push((of_key((Scope::Baby, "presentation")), vec![value]));
        }
        Some(found)
    }

    /// A word that stands bare, such as `LOA`, `Tr lie`.
    fn bare(&self, of: Of, at: usize) -> Option<Match> {
        let mut found = self.values(of_key(of), at)?;
        // A state says nothing without what it is of; `head` alone may be the beginning of anything.
        let text = self.run(at, found.end);
        let words = text.split(['(', '?']).next().unwrap_or_default();
        if StateWord::find(words).is_some() || fold(words) == "head" {
            return None;
        }
        let after = AFTER_BARE.iter().filter(|(before, _)| *before == of).flat_map(|(_, words)| words.iter());
        if after.into_iter().any(|word| self.phrase(found.end, word).is_some()) {
            found.end += 1;
        }
        Some(found)
    }

    /// Words that say a whole finding, with what is said about it after them.
    fn whole(&self, at: usize) -> Option<Match> {
        let fits = |said: &&super::leads::Whole| self.phrase(at, said.said);
        let (length, whole) = WHOLE.iter().filter_map(|w| Some((fits(&w)?, w))).max_by_key(|(n, _)| *n)?;
        let mut end = at + length;
        let mut said = vec![];
        for (of, text) in whole.means {
            let key = of_key(*of);
            let text = if text.is_empty() {
                // Doubt and brackets after it belong to it.
                end = self.longest(key, at).unwrap_or(end).max(end);
                self.run(at, end).to_owned()
            } else {
                (*text).to_owned()
            };
            said.push((key, vec![Value { at: self.span(at, end), text }]));
        }
        Some(Match { end, said })
    }

    /// The values of `key` from `at`: one, or several of a list.
    fn values(&self, key: &'static Key, at: usize) -> Option<Match> {
        let mut end = self.value(key, at)?;
        let mut values = vec![end.1.clone()];
        loop {
            if !key.list {
                break;
            }
            let Some(at) = self.list_goes_on(key, end.0) else { break };
            // After a comma or an `and` another finding may begin; `+` and `&` hold a list together.
            if !matches!(self.text(at - 1), "+" | "&") && (self.is_lead(at) || self.whole(at).is_some()) {
                break;
            }
            let Some(next) = self.value(key, at) else { break };
            values.push(next.1.clone());
            end = next;
        }
        Some(Match { end: end.0, said: vec![(key, values)] })
    }

    /// One value of `key` from `at`, and where it ends.
    fn value(&self, key: &'static Key, at: usize) -> Option<(usize, Value)> {
        if key.scope == Scope::Top
            && key.name != "scan"
            && let Some((end, Day::One(text))) = self.day(at)
        {
            return accepts(key, &text).then(|| (end, Value { at: self.span(at, end), text }));
        }
        // A minus parts things elsewhere in a line; before a station it is its sign.
        let minus =
            |at: usize| self.line[..self.tokens[at].at.start].ends_with(['-', '\u{2212}', '\u{2013}']);
        if key.name == "station" && self.kind(at) == Some(Kind::Number) && minus(at) {
            let signed = |end: usize| format!("-{}", self.run(at, end));
            let mut end = at + 1;
            while matches!(self.kind(end), Some(Kind::Bracket | Kind::Mark)) && accepts(key, &signed(end + 1))
            {
                end += 1;
            }
            let text = signed(end);
            return accepts(key, &text).then(|| (end, Value { at: self.span(at, end), text }));
        }
        if let Some(end) = self.longest(key, at) {
            return Some((end, Value { at: self.span(at, end), text: self.run(at, end).to_owned() }));
        }
        // A tape is read in cm: nobody writes the unit.
        if key.name == "fundal-height" && self.kind(at) == Some(Kind::Number) {
            let mut end = at + 1;
            let with_unit = |end: usize| {
                let after = self.run(at, end).strip_prefix(self.text(at)).unwrap_or_default().to_owned();
                format!("{} cm{after}", self.text(at))
            };
            while matches!(self.kind(end), Some(Kind::Bracket | Kind::Mark))
                && accepts(key, &with_unit(end + 1))
            {
                end += 1;
            }
            let text = with_unit(end);
            return accepts(key, &text).then(|| (end, Value { at: self.span(at, end), text }));
        }
        None
    }

    /// Where the next value of a list begins, if the list goes on.
    fn list_goes_on(&self, key: &Key, at: usize) -> Option<usize> {
        let places = key.has_places();
        let parted = match self.tokens.get(at)?.kind {
            Kind::Mark if self.text(at) == "+" => {
                let around = self.tokens[at].at.clone();
                let space = |at: Option<usize>| {
                    at.and_then(|at| self.line.as_bytes().get(at)).is_some_and(u8::is_ascii_whitespace)
                };
                space(around.start.checked_sub(1)) && space(Some(around.end))
            }
            Kind::Mark => self.text(at) == "&" || (self.text(at) == "," && comma_parts(key)),
            Kind::Word => !places && ["and", "or", "nor"].contains(&self.text(at).to_lowercase().as_str()),
            Kind::Number | Kind::Bracket | Kind::Quote | Kind::Break => false,
        };
        parted.then_some(at + 1)
    }

    /// The end of the longest run of tokens from `at` that is a value of `key`.
    fn longest(&self, key: &Key, at: usize) -> Option<usize> {
        let stop = self.stop(at).min(at + MOST_TOKENS);
        let parted = |end: usize| {
            key.list && !key.has_places() && key.name != "earlier-tapes" && self.text(end - 1) == ","
        };
        let stop = (at + 1..=stop).find(|end| parted(*end)).map_or(stop, |end| end - 1);
        // A word that none of its values has ends it before anything is read.
        let strange = |at: &usize| self.kind(*at) == Some(Kind::Word) && !self.known.has(key, self.text(*at));
        let stop = (at..stop).find(strange).unwrap_or(stop);
        (at + 1..=stop).rev().find(|end| {
            let last = self.text(end - 1);
            let ends = !matches!(last, "," | "&" | "/") && (last != "+" || key.name == "urine-protein");
            ends && accepts(key, self.run(at, *end))
        })
    }

    /// What introduces a finding at `at`: where it ends, and the keys; the longest words first.
    fn leads(&self, at: usize) -> Vec<(usize, Vec<&'static Key>)> {
        let mut found: Vec<(usize, Vec<&'static Key>)> = vec![];
        for lead in LEADS {
            let length = lead.said.iter().filter_map(|said| self.phrase(at, said)).max();
            found
                .extend(length.map(|length| (at + length, lead.keys.iter().map(|of| of_key(*of)).collect())));
        }
        for key in KEYS.iter().filter(|key| key.name != "note") {
            found.extend(self.phrase(at, key.name).map(|length| (at + length, vec![key])));
        }
        found.sort_by_key(|(end, _)| std::cmp::Reverse(*end));
        found
    }

    fn is_lead(&self, at: usize) -> bool {
        !self.leads(at).is_empty()
    }

    /// A lead that nothing it takes comes after.
    fn without_value(&mut self, after: usize, keys: &[&'static Key]) {
        let Some(key) = keys.first().copied() else { return };
        let fifths =
            self.fraction(after).is_some() && key.scope == Scope::Baby && key.name != "head-above-brim";
        if fifths {
            // `head 2/5 palp`: the fifths speak for themselves.
            self.at = after;
            return;
        }
        if let Some((end, Day::Unclear)) = self.day(after)
            && key.scope == Scope::Top
        {
            return self.unclear_day(after, end);
        }
        let mut end = after;
        let stop = self.stop(after).min(after + MOST_TOKENS);
        let another = self.is_lead(after) || self.whole(after).is_some();
        while !another && end < stop && self.text(end) != "," && !(end > after && self.begins(end)) {
            end += 1;
        }
        let only_marks = (after..end).all(|at| self.kind(at) == Some(Kind::Mark));
        if only_marks {
            let words = self.run(self.at, after).to_owned();
            let at = self.span(self.at, after);
            self.items.problems.push(
                Problem::at(
                    "nothing-after",
                    self.name,
                    at,
                    format!("{} is followed by nothing it takes", quoted(&words)),
                )
                .expecting(key.expected()),
            );
            self.at = after;
            return;
        }
        // The reader says what is wrong with it.
        let unit = if key.name == "fundal-height" && end == after + 1 { " cm" } else { "" };
        let value = Value { at: self.span(after, end), text: format!("{}{unit}", self.run(after, end)) };
        self.at = end;
        self.items.said.push(Said { key, baby: self.baby, values: vec![value] });
    }

    /// Whether a finding begins at `at`.
    fn begins(&self, at: usize) -> bool {
        match self.kind(at) {
            Some(Kind::Word) => {
                self.is_lead(at)
                    || self.whole(at).is_some()
                    || BARE.iter().any(|of| self.longest(of_key(*of), at).is_some())
                    || ASKS.iter().any(|ask| self.phrase(at, ask.said).is_some())
            }
            Some(Kind::Number) => self.weeks(at).is_some() || self.fraction(at).is_some(),
            Some(Kind::Break | Kind::Quote) => true,
            Some(Kind::Mark | Kind::Bracket) | None => false,
        }
    }

    fn take(&mut self, found: Match) {
        for (key, values) in found.said {
            self.heart |= key.name.starts_with("heart") && key.scope == Scope::Baby;
            self.put(key, values);
        }
        self.at = found.end;
    }

    /// One finding more; the same key twice must say the same, unless it is a list.
    fn put(&mut self, key: &'static Key, mut values: Vec<Value>) {
        if let Some(doubt) = self.doubt.take() {
            for value in &mut values {
                value.text.push('?');
                value.at.start = value.at.start.min(doubt.start);
            }
        }
        if !self.same_side_of_heart(key) {
            self.heart = false;
        }
        let baby = if key.scope == Scope::Baby { self.baby } else { 0 };
        let before = self.items.said.iter_mut().find(|said| said.key.name == key.name && said.baby == baby);
        let Some(before) = before else {
            self.items.said.push(Said { key, baby, values });
            return;
        };
        let texts =
            |values: &[Value]| -> Vec<String> { values.iter().map(|value| fold(&value.text)).collect() };
        let only_heard = |values: &[Value]| matches!(&texts(values)[..], [text] if ["fhh", "heard", "heart heard"].contains(&text.as_str()));
        if texts(&before.values) == texts(&values) {
            return;
        }
        if key.name == "heart"
            && only_heard(&before.values)
            && accepts(of_key((Scope::Baby, "head")), &values[0].text)
        {
            before.values = values;
        } else if key.name == "heart"
            && only_heard(&values)
            && accepts(of_key((Scope::Baby, "head")), &before.values[0].text)
        {
            // The place is already there.
        } else if key.list {
            // The same said twice in two places is one.
            let said = |value: &Value| canonical(key, &value.text);
            values.retain(|value| !before.values.iter().any(|before| said(before) == said(value)));
            before.values.extend(values);
        } else {
            let at = values[0].at.clone();
            let message = format!("{} is said twice, and differently", key.name.replace('-', " "));
            self.items.problems.push(
                Problem::at("said-twice", self.name, at, message)
                    .expecting("one of the two; of twins, `/ baby 2:` before the findings of the second"),
            );
        }
    }

    fn same_side_of_heart(&self, key: &Key) -> bool {
        key.scope == Scope::Baby && key.name.starts_with("heart")
    }

    /// How many tokens from `at` say `phrase`.
    fn phrase(&self, at: usize, phrase: &str) -> Option<usize> {
        let mut length = 0;
        for word in phrase.split([' ', '-']) {
            let token = self.tokens.get(at + length)?;
            if !self.line[token.at.clone()].eq_ignore_ascii_case(word) {
                return None;
            }
            length += 1;
        }
        Some(length)
    }

    /// The next token that no finding goes beyond.
    fn stop(&self, at: usize) -> usize {
        let ends = |token: &Token| matches!(token.kind, Kind::Break | Kind::Quote);
        self.tokens[at.min(self.tokens.len())..].iter().position(ends).map_or(self.tokens.len(), |n| at + n)
    }

    fn kind(&self, at: usize) -> Option<Kind> {
        self.tokens.get(at).map(|token| token.kind)
    }

    fn text(&self, at: usize) -> &str {
        self.tokens.get(at).map_or("", |token| &self.line[token.at.clone()])
    }

    /// The bytes of the tokens from `from` to before `to`.
    fn span(&self, from: usize, to: usize) -> Range<usize> {
        let start = self.tokens.get(from).map_or(self.line.len(), |token| token.at.start);
        let end = self.tokens.get(to.saturating_sub(1)).map_or(start, |token| token.at.end);
        start..end.max(start)
    }

    fn run(&self, from: usize, to: usize) -> &str {
        &self.line[self.span(from, to)]
    }
}

/// Lists whose values may have commas between them.
fn comma_parts(key: &Key) -> bool {
    matches!(key.name, "reports" | "denies" | "heart-counts" | "earlier-tapes" | "skin" | "scars")
}

/// The key of a table row; every row names one, which a test checks.
fn of_key((scope, name): Of) -> &'static Key {
    keys::find(scope, name).unwrap_or(&KEYS[0])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_names_a_key() {
        let mut rows: Vec<Of> = LEADS.iter().flat_map(|lead| lead.keys).copied().collect();
        rows.extend(WHOLE.iter().flat_map(|whole| whole.means).map(|(of, _)| *of));
        rows.extend(AFTER_HEART.iter().chain(BARE).chain([&SYMPTOM]));
        for (scope, name) in rows {
            assert!(keys::find(scope, name).is_some(), "{name}");
        }
    }
}
