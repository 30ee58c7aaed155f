//! The findings of a line. In: the line. Out: each finding as a key and its text, words for the note, and problems.
//!
//! A finding is what is introduced (`SFH 34`), or stands bare (`LOA`), and takes as much of the line as its key can read.
//! Nothing is passed over: what is not understood is a problem, so that a "not" is never lost.

use super::day::{self, Day};
use super::leads::{
    AFTER_BARE, AFTER_HEART, ASKS, BARE, ELSEWHERE, FILLERS, LEADS, Of, SYMPTOM, VAGINAL, WHO, WHOLE,
};
use super::lexicon;
use super::said::{Said, Value};
use super::tokens::{self, Kind, Token};
use crate::exam::keys::{self, KEYS, Key, Scope};
use crate::exam::read::{accepts, printable};
use crate::exam::words::{Row, fold, likeness, nearest};
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
            found.extend(keys.iter().filter_map(|key| self.values(key, *after)));
        }
        if self.heart {
            found.extend(AFTER_HEART.iter().filter_map(|of| self.values(of_key(*of), at)));
        }
        found.extend(BARE.iter().filter_map(|of| self.bare(*of, at)));
        // The first of those that end last.
        found.into_iter().reduce(|best, next| if next.end > best.end { next } else { best })
    }

    /// A word that stands bare, such as `LOA`, `Tr lie`.
    fn bare(&self, of: Of, at: usize) -> Option<Match> {
        let mut found = self.values(of_key(of), at)?;
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
        while key.list {
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
        let places = matches!(key.name, "limbs" | "lumps");
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
            key.list && !matches!(key.name, "limbs" | "lumps" | "earlier-tapes") && self.text(end - 1) == ","
        };
        let stop = (at + 1..=stop).find(|end| parted(*end)).map_or(stop, |end| end - 1);
        // A word that none of its values has ends it before anything is read.
        let strange = |at: &usize| self.kind(*at) == Some(Kind::Word) && !self.known.has(key, self.text(*at));
        let stop = (at..stop).find(strange).unwrap_or(stop);
        (at + 1..=stop).rev().find(|end| {
            let last = self.text(end - 1);
            !matches!(last, "," | "+" | "&" | "/") && accepts(key, self.run(at, *end))
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

    /// A number that begins a finding: weeks, fifths, a rate after the heart, or a date.
    fn number(&mut self) {
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

    fn take_as(&mut self, of: Of, end: usize, text: String) {
        let value = Value { at: self.span(self.at, end), text };
        self.put(of_key(of), vec![value]);
        self.at = end;
    }

    /// Weeks at `at`: `37+0`, `37w0d`, `37 weeks`, `37+2/40`, `37/40`.
    fn weeks(&self, at: usize) -> Option<(usize, String)> {
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
    fn fraction(&self, at: usize) -> Option<usize> {
        let fits =
            self.kind(at) == Some(Kind::Number) && self.text(at + 1) == "/" && self.text(at + 2) == "5";
        fits.then_some(at + 3)
    }

    /// Fifths are those above the brim only when it is said.
    fn fifths(&mut self, end: usize) {
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

    fn ask_fifths(&mut self, k: u16, end: usize) {
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
    fn day(&self, at: usize) -> Option<(usize, Day)> {
        let start = self.tokens.get(at).filter(|token| token.kind == Kind::Number)?.at.start;
        let (length, day) = day::at_start(&self.line[start..])?;
        let end = self
            .tokens
            .iter()
            .position(|token| token.at.start >= start + length)
            .unwrap_or(self.tokens.len());
        Some((end, day))
    }

    fn unclear_day(&mut self, at: usize, end: usize) {
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

    /// `baby 2`, `twin 1`: whose findings come now.
    fn baby_number(&mut self) -> bool {
        let at = self.at;
        let named = ["baby", "twin", "bb"].contains(&self.text(at).to_lowercase().as_str());
        if !named || self.kind(at + 1) != Some(Kind::Number) {
            return false;
        }
        let number = self.text(at + 1).parse::<usize>().unwrap_or(usize::MAX);
        if (1..=MOST_BABIES).contains(&number) {
            self.baby = number - 1;
            self.items.babies = self.items.babies.max(number);
        } else {
            let message = format!("{} cannot be recorded here", quoted(self.run(at, at + 2)));
            let span = self.span(at, at + 2);
            self.items.problems.push(
                Problem::at("too-many-babies", self.name, span, message)
                    .expecting("`baby 1:` and `baby 2:` for twins"),
            );
        }
        self.heart = false;
        self.at = at + 2;
        true
    }

    /// `note` and all that follows: free words.
    fn rest_is_note(&mut self) -> bool {
        if self.phrase(self.at, "note").is_none() {
            return false;
        }
        if self.kind(self.at + 1) != Some(Kind::Quote) {
            let start = self.tokens[self.at].at.end;
            let text = self.line[start..].trim_start_matches([':', ' ', '=']).trim();
            if !text.is_empty() {
                let text = text.to_owned();
                self.note(start..self.line.len(), text);
                self.at = self.tokens.len();
            }
        }
        true
    }

    fn quoted_note(&mut self) {
        let at = self.tokens[self.at].at.clone();
        let mut text = String::new();
        let mut chars = self.line[at.clone()].chars().skip(1);
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
        self.note(at, text);
    }

    /// Free words; several are one note, a line each.
    fn note(&mut self, at: Range<usize>, text: String) {
        let Some(key) = keys::find(Scope::Top, "note") else { return };
        match self.items.said.iter_mut().find(|said| said.key.name == "note") {
            Some(said) => {
                if let Some(value) = said.values.first_mut() {
                    value.text = format!("{}\n{text}", value.text);
                }
            }
            None => self.items.said.push(Said { key, baby: 0, values: vec![Value { at, text }] }),
        }
    }

    /// What is not recorded here: of a vaginal examination, charted elsewhere, or telling who she is.
    fn not_here(&mut self) -> bool {
        let at = self.at;
        let lead = self
            .leads(at)
            .first()
            .map_or(0, |(end, _)| end - at)
            .max(self.whole(at).map_or(0, |found| found.end - at));
        let to_comma = || {
            let stop = self.stop(at);
            (at..stop).find(|at| self.text(*at) == ",").unwrap_or(stop)
        };
        if VAGINAL.iter().any(|said| self.phrase(at, said).is_some()) {
            let end = to_comma();
            let text = self.run(at, end).to_owned();
            let message = format!(
                "{}: findings of a vaginal examination are not recorded here; the words are kept in the note",
                quoted(&text)
            );
            let span = self.span(at, end);
            self.items.problems.push(
                Problem::at("vaginal-finding", self.name, span, message)
                    .expecting("findings of the abdomen; fifths above the brim are felt, never worked out from a station")
                    .as_warning(),
            );
            self.items.notes.push(printable(&text));
            self.at = end;
            return true;
        }
        if self.phrase(at, "g").is_some() && self.kind(at + 1) == Some(Kind::Number) {
            let text = self.run(at, at + 2).to_owned();
            let message =
                format!("{}: only births are recorded here; the words are kept in the note", quoted(&text));
            let span = self.span(at, at + 2);
            self.items.problems.push(
                Problem::at("kept-in-note", self.name, span, message)
                    .expecting("`P` and a number")
                    .as_warning(),
            );
            self.items.notes.push(printable(&text));
            self.at = at + 2;
            return true;
        }
        let elsewhere = ELSEWHERE
            .iter()
            .filter_map(|(said, what)| Some((self.phrase(at, said)?, *what)))
            .find(|(n, _)| *n > lead);
        if let Some((length, what)) = elsewhere {
            let mut end = at + length;
            if self.kind(end) == Some(Kind::Number) {
                end +=
                    if self.text(end + 1) == "/" && self.kind(end + 2) == Some(Kind::Number) { 3 } else { 1 };
            }
            while self.kind(end) == Some(Kind::Word) && !self.begins(end) {
                end += 1;
            }
            let message = format!("{} is {what}, which is not recorded here", quoted(self.run(at, end)));
            let span = self.span(at, end);
            self.items.problems.push(
                Problem::at("not-recorded", self.name, span, message)
                    .expecting("what hands, ear and tape found; take it out, and chart it where it belongs"),
            );
            self.at = end;
            return true;
        }
        if WHO.iter().any(|said| self.phrase(at, said).is_some()) {
            let end = to_comma();
            let span = self.span(at, end);
            let message = format!("{} is not recorded here", quoted(self.run(at, end)));
            self.items.problems.push(Problem::at("identity", self.name, span, message).expecting(
                "a line without names, dates of birth or numbers of people: take it out, and write them on the page by hand",
            ));
            self.at = end;
            return true;
        }
        false
    }

    /// Words that can be read in two ways.
    fn asked(&mut self) -> bool {
        let at = self.at;
        let capitals =
            |ask: &super::leads::Ask| !ask.capitals || self.text(at).chars().all(char::is_uppercase);
        let found = ASKS
            .iter()
            .filter_map(|ask| Some((self.phrase(at, ask.said)?, ask)))
            .filter(|(_, ask)| capitals(ask))
            .max_by_key(|(length, _)| *length);
        if let Some((length, ask)) = found {
            let mut end = at + length;
            if self.best(at, &[]).is_some_and(|found| found.end > end) {
                return false;
            }
            if ask.said == "lmp" {
                end = self.day(end).map_or(end, |(end, _)| end);
            }
            if ask.said == "t" && matches!(self.text(end), "+") && self.kind(end + 1) == Some(Kind::Number) {
                end += 2;
            }
            let message = format!("{} {}", quoted(self.run(at, end)), ask.why);
            self.ask(end, message, ask.instead);
            return true;
        }
        // `eng 2/5`, unless `palp` says what the fifths are.
        if ["eng", "engaged", "e"].contains(&self.text(at).to_lowercase().as_str())
            && let Some(end) = self.fraction(at + 1)
            && !["palp", "palpable", "felt", "above"].contains(&self.text(end).to_lowercase().as_str())
        {
            let k: u16 = self.text(at + 1).parse().unwrap_or(5);
            self.ask_fifths(k, end);
            return true;
        }
        // A capital E alone is short for engaged.
        if self.text(at) == "E" {
            self.take_as((Scope::Baby, "descent"), at + 1, "engaged".to_owned());
            return true;
        }
        false
    }

    /// `FH` is the tape or the heart: what follows settles it, or it is asked.
    fn fetal_heart(&mut self) -> bool {
        let at = self.at;
        let Some(length) = self.phrase(at, "fh") else { return false };
        let after = at + length;
        let tape = of_key((Scope::Mother, "fundal-height"));
        let number = self.text(after).parse::<f64>().ok().filter(|_| self.kind(after) == Some(Kind::Number));
        let by_heart = AFTER_HEART
            .iter()
            .filter_map(|of| self.values(of_key(*of), after))
            .reduce(|best, next| if next.end > best.end { next } else { best });
        let by_tape = match number {
            Some(n) if TAPE.contains(&n) || self.longest(tape, after).is_some() => self.values(tape, after),
            _ => None,
        };
        let level = self.values(of_key((Scope::Mother, "fundus")), after);
        let found = match (number, by_tape, by_heart) {
            (Some(_), Some(tape), Some(heart)) if heart.end > tape.end => Some(heart),
            (Some(_), Some(tape), _) => Some(tape),
            (Some(n), None, Some(heart)) if HEART.contains(&n) || heart.end > after + 1 => Some(heart),
            (None, _, Some(heart)) if level.is_none() => Some(heart),
            _ => None,
        };
        if let Some(found) = found {
            self.take(found);
            return true;
        }
        let end =
            level.map_or(after, |level| level.end).max(if number.is_some() { after + 1 } else { after });
        let message = format!("{} is the fundal height, or the fetal heart", quoted(self.run(at, end)));
        self.ask(end, message, "`SFH 34` or `fundus at navel` for the womb; `FHH`, `FHR 142` for the heart");
        true
    }

    fn ask(&mut self, end: usize, message: String, instead: &str) {
        let span = self.span(self.at, end);
        self.items.problems.push(Problem::at("ambiguous", self.name, span, message).expecting(instead));
        self.at = end;
    }

    fn unknown(&mut self) {
        let at = self.at;
        let stop = self.stop(at).min(at + 6);
        let mut end = at + 1;
        while end < stop && self.text(end) != "," && !self.begins(end) {
            end += 1;
        }
        let leads = LEADS.iter().flat_map(|lead| lead.said.iter().map(|said| Row { word: said, also: &[] }));
        let whole = WHOLE.iter().map(|whole| Row { word: whole.said, also: &[] });
        let names = KEYS.iter().map(|key| Row { word: key.name, also: &[] });
        let bare = BARE.iter().flat_map(|of| (of_key(*of).words)());
        let rows: Vec<Row> = leads.chain(whole).chain(names).chain(bare).collect();
        let near = nearest(self.run(at, end), rows.clone()).or_else(|| nearest(self.text(at), rows));
        let message = format!("{} is not understood", quoted(self.run(at, end)));
        let span = self.span(at, end);
        self.items.problems.push(
            Problem::at("unknown-shorthand", self.name, span, message)
                .expecting(
                    "a finding such as `LOA`, `2/5 palp`, `SFH 34`, `back left`; free words after `note`",
                )
                .suggesting(near.map(|word| format!("`{}`", spelled(word)))),
        );
        self.at = end;
    }

    /// A `?` before nothing.
    fn lone_doubt(&mut self) {
        if let Some(doubt) = self.doubt.take() {
            self.items.problems.push(
                Problem::at("unknown-shorthand", self.name, doubt, "`?` does not say what is unsure")
                    .expecting("`?` at the end of a finding, such as `LOA?`"),
            );
        }
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

/// `FH` and this many is a tape in cm.
const TAPE: std::ops::RangeInclusive<f64> = 10.0..=45.0;
/// `FH` and this many is a heart rate.
const HEART: std::ops::RangeInclusive<f64> = 90.0..=220.0;

/// Lists whose values may have commas between them.
fn comma_parts(key: &Key) -> bool {
    matches!(key.name, "reports" | "denies" | "heart-counts" | "earlier-tapes" | "skin" | "scars")
}

/// An abbreviation as it is written: short ones in capitals.
fn spelled(word: &str) -> String {
    let lead =
        LEADS.iter().any(|lead| lead.said.contains(&word)) || WHOLE.iter().any(|whole| whole.said == word);
    if lead
        && word.len() <= 4
        && !["head", "limb", "pos", "palp", "scar", "seen", "date", "tape"].contains(&word)
    {
        word.to_uppercase()
    } else {
        word.to_owned()
    }
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
