//! What is no finding of this visit: history, plans, advice, family, a scan, the vagina. In: the row that opens it. Out: its words
//! kept, as far as they reach and no farther.

use super::lexicon::{Hit, known};
use super::scan::{Choice, Last, Scan, State};
use super::tokens::{Kind, Token};

impl Scan<'_> {
    /// Family and advice go to the comma; what follows a comma only while it is of the same kind.
    pub(super) fn aside(&mut self, verb: &str, end: usize) {
        let mut to = self.aside_end(end);
        if verb == "advice" {
            while self.low(to) == "," && self.verb_at(to + 1, &["sign"]).is_some() {
                let next = self.verb_at(to + 1, &["sign"]).map_or(to + 1, |hit| hit.end);
                if matches!(self.low(next), "+" | "++") {
                    break;
                }
                to = self.aside_end(next);
            }
        }
        if verb == "keepclause" {
            // To the next finding that is surely one.
            to = (end..to).find(|at| self.surely_begins(*at)).unwrap_or(to);
        }
        self.keep(to.max(end));
        self.last = Last::Aside;
    }

    /// The comma, `now`, or break that ends an aside.
    fn aside_end(&self, at: usize) -> usize {
        let comma = self.comma(at);
        (at..comma).find(|at| self.verb_at(*at, &["now", "but", "has"]).is_some()).unwrap_or(comma)
    }

    /// A finding of now: the heart, a tape, fifths, a position, weeks.
    fn surely_begins(&self, at: usize) -> bool {
        match self.choose(at) {
            Some(Choice::Bare(key, ..)) => matches!(key.name, "position" | "presentation"),
            Some(Choice::Row(hit)) => match self.row(&hit).verb() {
                "lead" => {
                    matches!(self.row(&hit).rest(), "fundal-height" | "movements")
                        || self.row(&hit).rest().starts_with("heart")
                }
                "is" | "fh" | "weeks" | "no" | "denies" => true,
                _ => false,
            },
            None => self.fraction(at).is_some(),
        }
    }

    /// A plan: its words, procedures and times; a finding that is surely one ends it.
    pub(super) fn plan(&mut self, end: usize) {
        let at = self.at;
        self.plans = true;
        let stop = self.aside_end(end);
        let mut to = end;
        while to < stop {
            let weeks = self.verb_at(to, &["weeks"]);
            if let Some(hit) = weeks {
                // Weeks of a plan; a second pair may be hers.
                let days = super::weeks::days_of(self.row(&hit).rest(), &hit.numbers).unwrap_or(0);
                let of = super::weeks::Whose::Beside;
                self.at = to;
                self.seen(days, to, hit.end, of);
                self.mark(to, hit.end, State::Kept);
                to = hit.end;
                continue;
            }
            let goes_on = match self.choose(to) {
                None => true,
                Some(Choice::Row(hit)) => match self.row(&hit).verb() {
                    "skip" | "keep" | "keepvalue" | "measure" | "inten" | "time" | "amount" | "plan"
                    | "when" | "planned-section" | "vbac" | "scan" | "advice" | "history" | "vaginal"
                    | "keepclause" | "size" => true,
                    "is" => {
                        self.row(&hit).rest().starts_with("operations")
                            || self.row(&hit).rest().starts_with("water")
                    }
                    "lead" => self.row(&hit).rest() == "movements",
                    "sign" => self.line[..self.span(at, end).end].ends_with("if"),
                    _ => false,
                },
                Some(Choice::Bare(key, ..)) => key.name == "operations",
            };
            if !goes_on {
                break;
            }
            let length = match self.choose(to) {
                Some(Choice::Row(hit)) => hit.end - to,
                Some(Choice::Bare(_, end, _)) => end - to,
                None => 1,
            };
            to += length.max(1);
        }
        let to = to.min(stop).max(end);
        for at in at..to {
            self.states[at] = State::Kept;
        }
        self.at = to;
        self.drop_doubt();
        self.last = Last::Aside;
    }

    /// History: an operation of the womb is read; anything else is kept with its year and brackets.
    pub(super) fn history(&mut self, end: usize) {
        let at = self.at;
        if let Some((to, values)) = self.earlier_tapes(end) {
            self.put(known("earlier-tapes"), values, at, to);
            self.at = to;
            return;
        }
        let mut next = end;
        while self.kind(next) == Some(Kind::Number) && self.text(next).len() == 1
            || matches!(self.low(next), "x" | ":" | "of")
        {
            next += 1;
        }
        let operation = match self.choose(next) {
            Some(Choice::Row(hit)) => {
                self.row(&hit).rest().contains("operations=") || self.row(&hit).verb() == "planned-section"
            }
            Some(Choice::Bare(key, ..)) => key.name == "operations",
            None => false,
        };
        if operation {
            self.mark(at, end, State::Skipped);
            // How many is kept.
            self.mark(end, next, State::Kept);
            self.at = next;
            let before = next;
            if let Some(Choice::Row(hit)) = self.choose(next)
                && self.row(&hit).verb() == "planned-section"
            {
                self.whole("operations=caesarean", hit.end, &[]);
            } else {
                match self.choose(next) {
                    Some(Choice::Row(hit)) => self.act(&hit),
                    Some(Choice::Bare(key, end, values)) => self.take_bare(key, end, values),
                    None => {}
                }
            }
            if next > end {
                self.mark(before, self.at, State::Kept);
            }
            return self.history_of_operation();
        }
        // One phrase, then what tells when.
        let stop = self.aside_end(end);
        let mut to = match self.choose(end).filter(|_| end < stop) {
            Some(Choice::Row(hit)) => hit.end,
            Some(Choice::Bare(_, end, _)) => end,
            None => end,
        };
        while to < stop && !self.surely_begins(to) {
            to += 1;
        }
        if self.kind(to) == Some(Kind::Bracket) && to < stop {
            to += 1;
        }
        self.keep(to.max(end));
        self.last = Last::Aside;
    }

    /// After an operation: its year, for what it was, another one joined to it.
    pub(super) fn history_of_operation(&mut self) {
        loop {
            let at = self.at;
            let year = self.text(at).parse::<u16>().is_ok_and(|year| (1980..2100).contains(&year));
            if year || matches!(self.kind(at), Some(Kind::Bracket)) || self.verb_at(at, &["amount"]).is_some()
            {
                let end = self.verb_at(at, &["amount"]).map_or(at + 1, |hit| hit.end);
                self.mark(at, end, State::Kept);
                self.at = end;
                self.last = Last::Aside;
            } else if self.low(at) == "for" && self.last == Last::Aside {
                // What it was for.
                let end = self.aside_end(at);
                self.keep(end);
                self.last = Last::Aside;
            } else {
                return;
            }
        }
    }

    /// `at 34/40`, `since 2200`, `until K30`: a time of what stands before it.
    pub(super) fn when(&mut self, end: usize) {
        let at = self.at;
        let of_words = matches!(self.last, Last::Words | Last::Aside | Last::Complaint | Last::Denial);
        if let Some(hit) = self.verb_at(end, &["weeks"]) {
            let days = super::weeks::days_of(self.row(&hit).rest(), &hit.numbers).unwrap_or(0);
            let alone = matches!(self.low(at), "at" | "@") && !of_words && at == 0;
            let scan = self.verb_at(hit.end, &["scan"]);
            // `SFH 34 at 36/40`: today's.
            let tape = at > 0
                && matches!(self.low(at), "at" | "@")
                && self.said.last().is_some_and(|said| {
                    said.key.name == "fundal-height"
                        && self.line[said.at().end..self.span(at, at).start].trim().is_empty()
                });
            let of = if alone || tape {
                super::weeks::Whose::Alone
            } else if scan.is_some() || self.low(at) == "by" {
                super::weeks::Whose::Other
            } else {
                super::weeks::Whose::Beside
            };
            let to = scan.map_or(hit.end, |scan| scan.end);
            self.at = end;
            self.seen(days, end, hit.end, of);
            self.mark(at, to, State::Kept);
            self.at = to;
            if self.last == Last::Denial || self.last == Last::Complaint {
                self.signs_then(at);
            }
            return;
        }
        if self.kind(end) == Some(Kind::Number) {
            let mut to = end + 1;
            while !self.ends(to) && self.kind(to) == Some(Kind::Word) && !self.begins(to) {
                to += 1;
            }
            self.keep(to);
            return;
        }
        if self.low(at) == "when" || self.low(at) == "since" {
            // A clause of its own: to the next finding that is surely one.
            let stop = self.aside_end(end);
            let to = (end..stop).find(|at| self.surely_begins(*at)).unwrap_or(stop);
            return self.keep(to);
        }
        self.mark(at, end, State::Skipped);
        self.at = end;
    }

    /// Symptoms of an earlier time are kept as words.
    fn signs_then(&mut self, at: usize) {
        let start = self.span(at, at + 1).start;
        let Some(sign) = self.signs.last().filter(|sign| sign.at.end <= start).cloned() else { return };
        let between = self.line[sign.at.end..start].trim();
        if between.is_empty() {
            self.past_sign = Some(sign.word.clone());
            self.signs.pop();
            let (from, to) = (sign.at.start, self.span(at, at + 1).end);
            for (token, state) in self.tokens.iter().zip(&mut self.states) {
                if token.at.start >= from && token.at.end <= to {
                    *state = State::Kept;
                }
            }
            self.last = Last::Aside;
        }
    }

    /// A word of change: what was read of lie and place before it in this part of the line is past.
    pub(super) fn change(&mut self, end: usize) {
        let at = self.at;
        let from = (0..at).rev().find(|at| self.kind(*at) == Some(Kind::Break)).map_or(0, |at| at + 1);
        let names = ["lie", "presentation", "position", "head", "breech", "back"];
        let start = self.drop_since(from, &names);
        let comma = self.comma(end);
        let to = (end..comma).find(|at| self.begins(*at)).unwrap_or(comma);
        match start {
            Some(start) => {
                self.mark(start, to, State::Kept);
                self.at = to;
            }
            None => self.keep(to),
        }
    }

    /// An arrow from one finding to another: with a time the last is now, without one it is asked.
    pub(super) fn arrow(&mut self, end: usize) {
        let at = self.at;
        let names = ["lie", "presentation", "position", "descent", "head-above-brim"];
        let to = match self.choose(end) {
            Some(Choice::Row(hit)) => hit.end,
            Some(Choice::Bare(_, end, _)) => end,
            None => return self.keep(end),
        };
        let time =
            self.verb_at(to, &["time", "now", "when"]).is_some() || matches!(self.low(to), "over" | "on");
        let before = at.checked_sub(1).unwrap_or(at);
        let start = self.drop_since(before, &names).unwrap_or(at);
        if time {
            self.mark(start, at, State::Kept);
            self.mark(at, end, State::Kept);
            self.at = end;
            match self.choose(end) {
                Some(Choice::Row(hit)) => self.act(&hit),
                Some(Choice::Bare(key, end, values)) => self.take_bare(key, end, values),
                None => {}
            }
            self.mark(start, self.at, State::Kept);
            self.last = Last::Words;
            return;
        }
        let (one, other) = (self.words(start, at).to_owned(), self.words(end, to).to_owned());
        let message = format!("{}: which is it now", crate::report::quoted(self.words(start, to)));
        let ways = [&one, &other].map(|word| {
            let lead = if self.lie_word(word) { "lie " } else { "" };
            super::ask::Way::new(word.clone(), format!("{lead}{word}"))
        });
        self.at = start;
        self.ask(to, message, &ways);
    }

    fn lie_word(&self, word: &str) -> bool {
        crate::exam::read::accepts(known("lie"), word)
    }

    /// Findings by the vagina: their words to the next finding that hands, ear or tape make.
    pub(super) fn vaginal_words(&mut self, end: usize) {
        if self.found_on_it(end) {
            return;
        }
        self.vaginal = true;
        let mut to = end;
        loop {
            if self.part_by_vagina(to) {
                break;
            }
            if matches!(self.low(to), "/" | ":" | "-" | "+" | "?" | "&" | "%" | "=") && !self.minus_next(to) {
                to += 1;
            } else if let Some(hit) = self.verb_at(to, &["of"]) {
                to = hit.end;
            } else if self.kind(to) == Some(Kind::Number)
                && self.verb_at(to, &["weeks"]).is_none()
                && self.fraction(to).is_none()
            {
                to += 1;
                if matches!(self.low(to), "cm" | "cms" | "mm" | "fingers" | "f" | "%" | "finger") {
                    to += 1;
                }
            } else if self.low(to) == ","
                && self.verb_at(to + 1, &["of"]).is_some_and(|hit| !self.bare_elsewhere(to + 1, hit.end))
            {
                to += 1;
            } else if let Some(hit) = self.verb_at(to, &["keep", "vaginal", "unread"]) {
                to = hit.end;
            } else if self.kind(to) == Some(Kind::Word) && self.choose(to).is_none() {
                to += 1;
            } else {
                break;
            }
        }
        // A mark at the end belongs to what follows.
        while to > end && matches!(self.low(to - 1), "?" | "+" | "-" | "&") && !self.ends(to) {
            to -= 1;
        }
        let from = self.at;
        self.keep(to);
        self.stations(from, to);
        self.last = Last::Words;
    }

    /// A station among the kept words of a vaginal examination is a finding; the words stay whole in the note.
    fn stations(&mut self, from: usize, to: usize) {
        let after = self.at;
        let mut at = from;
        while at < to {
            let found = self.verb_at(at, &["is"]).filter(|hit| hit.end <= to);
            let Some(hit) = found.filter(|hit| self.row(hit).rest().starts_with("station=")) else {
                at += 1;
                continue;
            };
            self.at = at;
            self.whole(self.row(&hit).rest(), hit.end, &hit.numbers);
            self.mark(at, hit.end, State::Kept);
            at = hit.end;
        }
        self.at = after;
    }

    /// Whether a part or the cord that was found by the vagina stands at `at`.
    fn part_by_vagina(&self, at: usize) -> bool {
        let found = |hit: &Hit| self.row(hit).rest().starts_with("found-by-vagina");
        self.verb_at(at, &["by-vagina"]).is_some() || self.verb_at(at, &["is"]).is_some_and(|hit| found(&hit))
    }

    /// `face on VE`: what stands just before was found by it. (`LOA VE 4 cm` begins an examination of its own.)
    fn found_on_it(&mut self, end: usize) -> bool {
        let at = self.at;
        if !matches!(self.low(at), "on" | "at" | "by") || !self.ends(end) {
            return false;
        }
        let start = self.span(at, end).start;
        let last = self.said.iter().rposition(|said| {
            matches!(said.key.name, "presentation" | "position" | "attitude" | "station")
                && said.at().end <= start
                && self.line[said.at().end..start].trim().is_empty()
        });
        let Some(which) = last else { return false };
        let said = &mut self.said[which];
        // A station is of the vagina by itself.
        if said.key.name != "station" {
            for value in &mut said.values {
                let (words, doubt) = match value.text.strip_suffix('?') {
                    Some(words) => (words, "?"),
                    None => (value.text.as_str(), ""),
                };
                value.text = format!("{words} (vaginal examination){doubt}");
            }
        }
        self.mark(at, end, State::Used);
        self.at = end;
        true
    }

    fn minus_next(&self, at: usize) -> bool {
        self.low(at) == "-" && self.kind(at + 1) != Some(Kind::Number)
    }

    /// Whether what stands at `at` takes more than `end` as something else.
    fn bare_elsewhere(&self, at: usize, end: usize) -> bool {
        match self.choose(at) {
            Some(Choice::Bare(_, longer, _)) => longer > end,
            Some(Choice::Row(hit)) => hit.end > end,
            None => false,
        }
    }

    /// `by US` after a finding: it is known by a scan. Alone, its words are kept.
    pub(super) fn by_scan(&mut self, end: usize) {
        let at = self.at;
        let last = self.said.iter().rposition(|said| {
            matches!(said.key.name, "presentation" | "position" | "lie" | "placenta" | "legs" | "attitude")
                && said.at().end <= self.span(at, end).start
                && self.line[said.at().end..self.span(at, end).start].trim().is_empty()
        });
        let Some(which) = last else {
            let stop = self.aside_end(end);
            let to = (end..stop).find(|at| self.surely_begins(*at) || self.begins(*at)).unwrap_or(stop);
            self.keep(to);
            self.last = Last::Aside;
            return;
        };
        let (text, to) = self.scan_after(at).unwrap_or(("scan".to_owned(), end));
        for value in &mut self.said[which].values {
            let (words, doubt) = match value.text.strip_suffix('?') {
                Some(words) => (words, "?"),
                None => (value.text.as_str(), ""),
            };
            value.text = format!("{words} ({text}){doubt}");
        }
        self.mark(at, to, State::Used);
        self.at = to;
    }

    /// `(scan 34/40)`, `on scan 34/40`, `by US`: `scan 34+0`, and the token after it.
    pub(super) fn scan_after(&self, at: usize) -> Option<(String, usize)> {
        let weeks = |rest: &[Token]| {
            (0..rest.len()).find_map(|at| {
                let hit = self
                    .lexicon
                    .at(rest, at)
                    .into_iter()
                    .filter(|hit| self.row(hit).verb() == "weeks")
                    .max_by_key(|hit| hit.end)?;
                let days = super::weeks::days_of(self.row(&hit).rest(), &hit.numbers)?;
                Some((format!("scan {}+{}", days / 7, days % 7), hit.end))
            })
        };
        if self.kind(at) == Some(Kind::Bracket) {
            let inside = super::tokens::of(self.text(at).trim_start_matches('(').trim_end_matches(')'));
            let scan = inside
                .iter()
                .any(|token| matches!(token.low.as_str(), "scan" | "uss" | "us" | "usg" | "ultrasound"));
            return scan.then(|| (weeks(&inside).map_or("scan".to_owned(), |(text, _)| text), at + 1));
        }
        let hit = self.verb_at(at, &["scan", "dated"])?;
        let mut next = hit.end;
        if matches!(self.low(next), "at" | "@" | "on") {
            next += 1;
        }
        match self.verb_at(next, &["weeks"]) {
            Some(_) => weeks(&self.tokens[next..]).map(|(text, length)| (text, next + length)),
            None => Some(("scan".to_owned(), hit.end)),
        }
    }

    /// A test or measure with its value: kept to the next finding.
    pub(super) fn keep_value(&mut self, end: usize) {
        let mut to = self.between(end);
        let mut values = 0;
        loop {
            let number = self.kind(to) == Some(Kind::Number);
            if self.ends(to) || values >= 3 {
                break;
            }
            if number && self.low(to + 1) == "/" && self.kind(to + 2) == Some(Kind::Number) && values == 0 {
                to += 3;
                values += 1;
            } else if number && values == 0 && self.verb_at(to, &["weeks"]).is_none() {
                to += 1;
                values += 1;
            } else if matches!(self.low(to), "+" | "++" | "°" | "%" | "↑" | "↓" | "?" | "/" | ">" | "<" | "-")
            {
                to += 1;
            } else if self.verb_at(to, &["keep", "keepvalue", "unread"]).is_some() && values == 0 {
                to = self.verb_at(to, &["keep", "keepvalue", "unread"]).map_or(to + 1, |hit| hit.end);
                values += 1;
            } else if matches!(
                self.low(to),
                "nad"
                    | "neg"
                    | "nil"
                    | "n"
                    | "c"
                    | "f"
                    | "trace"
                    | "pos"
                    | "normal"
                    | "clear"
                    | "raised"
                    | "high"
                    | "low"
                    | "ve"
                    | "ok"
                    | "none"
                    | "dipstick"
                    | "dip"
            ) || self.kind(to) == Some(Kind::Word) && self.choose(to).is_none() && values == 0
            {
                to += 1;
                values += 1;
            } else {
                break;
            }
        }
        self.keep(to);
        self.last = Last::Words;
    }

    /// Brackets that no value took: earlier tapes, a scan of the finding before them; else what stands in them is kept, or read
    /// when it follows no aside.
    pub(super) fn bracket(&mut self) {
        let at = self.at;
        let inside =
            self.line[self.tokens[at].at.clone()].trim_start_matches('(').trim_end_matches(')').to_owned();
        let start = self.tokens[at].at.start + 1;
        if self.last == Last::Aside || inside.trim().is_empty() || self.scan_after(at).is_some() {
            if self.scan_after(at).is_some() && self.last != Last::Aside {
                return self.by_scan(at + 1);
            }
            return self.keep(at + 1);
        }
        // The tokens of the bracket, in its place.
        let mut tokens = super::dictated::numbers(super::tokens::of(&inside), &inside);
        super::rewrite::rewrite(&mut tokens, self.lexicon);
        for token in &mut tokens {
            token.at = token.at.start + start..token.at.end + start;
        }
        let count = tokens.len();
        self.tokens.splice(at..=at, tokens);
        self.states.splice(at..=at, vec![State::Free; count]);
        for seen in &mut self.weeks {
            if seen.tokens.start > at {
                seen.tokens = seen.tokens.start + count - 1..seen.tokens.end + count - 1;
            }
        }
        if let Some((to, values)) = self.earlier_tapes(at) {
            self.put(known("earlier-tapes"), values, at, to);
            self.at = to;
            return;
        }
        // It is read on from its first token.
        self.at = at;
        if count > 0 && matches!(self.tokens[at].kind, Kind::Word | Kind::Number | Kind::Mark) {
            self.step_again();
        }
    }
}
