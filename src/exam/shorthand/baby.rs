//! The baby under the hands: head, breech, fifths, legs, weight, tape. In: a row about them. Out: findings, or what is asked:
//! fifths that do not say whether they are felt above the brim, a tape that cannot be one.

use super::act::by_vagina;
use super::ask::Way;
use super::lexicon::{Hit, known};
use super::said::Value;
use super::scan::{Last, Scan, State};
use super::tokens::Kind;
use crate::exam::keys::Key;
use crate::exam::read::accepts;
use crate::report::quoted;

/// Less than this is a slip in a tape, cm.
const LEAST_TAPE: f64 = 8.0;

impl Scan<'_> {
    pub(super) fn of_baby(&mut self, verb: &str, hit: &Hit) {
        let end = hit.end;
        match verb {
            "head" => self.head(end),
            "breech" => self.breech(end),
            "pp" => self.presenting_part(end),
            "place" => self.place_first(hit),
            "engaged" => self.engaged(end),
            // Per abdomen, and nothing more.
            _ => {
                self.mark(self.at, end, State::Kept);
                self.at = end;
            }
        }
    }

    /// `head`: a place, how far down, how it is bent; with fifths that say themselves what they are.
    fn head(&mut self, end: usize) {
        let at = self.at;
        for name in ["head", "attitude"] {
            if let Some((to, values)) = self.values_after(known(name), end)
                && self.verb_at(self.between(end), &["bare"]).is_none_or(|hit| hit.end < to)
            {
                self.put(known(name), values, at, to);
                self.at = to;
                return;
            }
        }
        let next = self.between(end);
        let descent = self.descent_at(next);
        if let Some(hit) = descent {
            self.put_text("presentation", "cephalic".to_owned(), at, end);
            self.at = next;
            self.mark(end, next, State::Used);
            return self.act(&hit);
        }
        if self.low(next) == "not" && self.low(next + 1) == "felt" {
            self.put_text("head", "not felt".to_owned(), at, next + 2);
            self.at = next + 2;
            return;
        }
        self.mark(at, end, State::Skipped);
        self.at = end;
        if self.fraction(next).is_some() {
            self.at = next;
            return self.fifths();
        }
        if self.ends(end) {
            self.mark(at, end, State::Kept);
        }
    }

    /// A row of descent at `at`.
    fn descent_at(&self, at: usize) -> Option<Hit> {
        let hits = self.lexicon.at(&self.tokens, at).into_iter();
        hits.filter(|hit| self.row(hit).rest().starts_with("descent ")).max_by_key(|hit| hit.end)
    }

    /// `breech`: a place, or what leads.
    fn breech(&mut self, end: usize) {
        let at = self.at;
        if let Some((to, values)) = self.values_after(known("breech"), end) {
            self.put(known("breech"), values, at, to);
            self.at = to;
            return;
        }
        if self.low(end) == "felt" && self.low(end + 1) == "at" {
            self.mark(at, end, State::Used);
        }
        let bracketed = self.kind(end) == Some(Kind::Bracket)
            && accepts(known("presentation"), &format!("breech {}", self.text(end)));
        let mut value = "breech".to_owned();
        let mut to = end;
        if bracketed {
            value = format!("breech {}", self.text(end));
            to += 1;
        } else if self.vaginal && !self.palpated_follows(end) {
            value.push_str(" (vaginal examination)");
        }
        if self.low(to) == "?" && (!self.gap(to) || self.ends(to + 1)) {
            value.push('?');
            to += 1;
        }
        self.put_text("presentation", value, at, to);
        self.at = to;
    }

    /// Whether fifths that were palpated come next, so that what stands here was felt by hand.
    fn palpated_follows(&self, at: usize) -> bool {
        self.fraction(at).is_some()
    }

    /// `PP`: the presenting part when a part or fifths follow, else perhaps the placenta.
    fn presenting_part(&mut self, end: usize) {
        let next = self.between(end);
        let part = self.values_after(known("presentation"), end);
        if let Some((to, values)) = part {
            let at = self.at;
            self.put(known("presentation"), values, at, to);
            self.at = to;
            return;
        }
        let breech = self.verb_at(next, &["breech", "head"]).is_some();
        if breech
            || self.fraction(next).is_some()
            || self.range_of_fifths(next).is_some()
            || self.descent_at(next).is_some()
        {
            self.mark(self.at, next, State::Used);
            self.at = next;
            return;
        }
        let message =
            format!("{} is the presenting part, or placenta praevia", quoted(self.words(self.at, end)));
        let doubt = if self.doubt.is_some() { "?" } else { "" };
        self.notes.push(format!("{doubt}{}", self.words(self.at, end)));
        let ways = [
            Way::new("a low placenta", format!("placenta low{doubt}")),
            Way::new("the presenting part", "note"),
        ];
        self.ask(end, message, &ways);
    }

    /// `lower pole head`: a place before the part that lies there.
    fn place_first(&mut self, hit: &Hit) {
        let at = self.at;
        let place = self.row(hit).rest();
        let Some(part) = self.verb_at(hit.end, &["head", "breech"]) else { return self.keep(hit.end) };
        let name = self.row(&part).verb();
        self.put_text(if name == "head" { "head" } else { "breech" }, place.to_owned(), at, part.end);
        self.at = part.end;
    }

    /// A capital `E`: engaged; with a bare fraction after it, asked.
    fn engaged(&mut self, end: usize) {
        if self.fraction(end).is_some() {
            return self.fifths_after_engaged(end);
        }
        self.whole("descent=engaged", end, &[]);
    }

    /// Legs of a breech: with what says how that is known.
    pub(super) fn legs(&mut self, word: &str, end: usize) {
        let at = self.at;
        let breech = (at..end).any(|at| matches!(self.low(at), "br" | "breech" | "bel" | "footling"));
        if breech || self.tokens.iter().any(|token| matches!(token.low.as_str(), "br" | "breech")) {
            self.put_text("presentation", "breech".to_owned(), at, end);
        }
        // `BEL on scan 34/40`: the scan tells of the legs.
        let (text, to) = match self.scan_after(end) {
            Some((scan, to)) => (format!("{word} ({scan})"), to),
            None => (word.to_owned(), end),
        };
        self.put_text("legs", text, at, to);
        self.at = to;
    }

    /// `EFW`: by hand, unless a scan is told after it.
    pub(super) fn efw(&mut self, end: usize) {
        let at = self.at;
        let next = self.between(end);
        let mut to = next;
        let mut text = String::new();
        while to < next + 8
            && !self.ends(to)
            && matches!(self.kind(to), Some(Kind::Number | Kind::Word | Kind::Mark))
        {
            let low = self.low(to);
            let unit = matches!(
                low,
                "kg" | "kgs" | "g" | "gm" | "gms" | "lb" | "lbs" | "oz" | "#" | "to" | "-" | "kilo"
            );
            if self.kind(to) != Some(Kind::Number) && !unit {
                break;
            }
            let written = match low {
                "#" => "lb",
                "gm" | "gms" => "g",
                low => low,
            };
            text.push_str(&format!("{}{written}", if text.is_empty() { "" } else { " " }));
            to += 1;
        }
        // A number without its unit is not the weight's.
        while to > next + 1 && self.kind(to - 1) == Some(Kind::Number) && text.contains(' ') {
            to -= 1;
            text = text.rsplit_once(' ').map_or(text.clone(), |(before, _)| before.to_owned());
        }
        let scan = self.scan_after(to);
        let name = if scan.is_some() { "weight-by-scan" } else { "weight-by-hand" };
        let mut value = text.clone();
        let mut after = to;
        if let Some((scan, end)) = scan.clone() {
            if let Some(weeks) = scan.strip_prefix("scan ") {
                value = format!("{text} ({weeks})");
            }
            after = end;
        }
        if self.verb_at(after, &["skip"]).is_some_and(|hit| matches!(self.row(&hit).says[0], "by hand")) {
            after = self.verb_at(after, &["skip"]).map_or(after, |hit| hit.end);
        }
        if self.low(after) == "?" && !self.gap(after) {
            value.push('?');
            after += 1;
        }
        let by_hand = scan.is_none();
        let longer = self.values_after(known(name), end).filter(|(longer, _)| by_hand && *longer >= after);
        if let Some((longer, values)) = longer {
            self.put(known(name), values, at, longer);
            self.at = longer;
            return;
        }
        if !text.is_empty() && accepts(known(name), &value) {
            self.put_text(name, value, at, after);
            self.at = after;
        } else if self.kind(next) == Some(Kind::Number) {
            self.number_that_cannot_be(known("weight-by-hand"), next);
        } else {
            self.keep(self.comma(end));
        }
    }

    /// Fifths at `at`, such as `2/5`: the token after them.
    pub(super) fn fraction(&self, at: usize) -> Option<usize> {
        let fits = self.kind(at) == Some(Kind::Number) && self.low(at + 1) == "/" && self.low(at + 2) == "5";
        let date = self.low(at + 3) == "/" && self.kind(at + 4) == Some(Kind::Number);
        (fits && !date && self.low(at).len() == 1).then_some(at + 3)
    }

    /// `2-3/5`: the token after it.
    fn range_of_fifths(&self, at: usize) -> Option<usize> {
        if let Some(end) = self.fraction(at).filter(|end| matches!(self.low(*end), "-" | "to" | "or")) {
            return self.fraction(end + 1);
        }
        let between = matches!(self.low(at + 1), "-" | "to" | "/" | "or");
        (self.kind(at) == Some(Kind::Number) && between).then(|| self.fraction(at + 2)).flatten()
    }

    /// Past what only says that a fraction is fifths.
    fn past_ths(&self, at: usize) -> usize {
        let mut end = at;
        while matches!(self.low(end), "ths" | "th" | "s" | "of" | "head" | "ceph" | "is" | "hd") {
            end += 1;
        }
        end
    }

    /// Fifths from `self.at`: those above the brim only when it is said, or when a neighbour settles it.
    pub(super) fn fifths(&mut self) {
        let at = self.at;
        if let Some(end) = self.range_of_fifths(at) {
            let mut to = self.past_ths(end);
            while let Some(hit) = self.verb_at(to, &["above"]) {
                to = hit.end;
            }
            let (low, high) = (self.text(at).to_owned(), self.text(end - 3).to_owned());
            let message = format!("{}: which of the two is it", quoted(self.words(at, to)));
            let ways = [&low, &high].map(|k| Way::new(format!("{k}/5 palpable"), format!("{k}/5 palp")));
            return self.ask(to, message, &ways);
        }
        let Some(end) = self.fraction(at) else { return self.keep(at + 1) };
        let after = self.past_ths(end);
        let key = known("head-above-brim");
        let k = self.text(at).to_owned();
        // What stands before them can say it too.
        let before = at.checked_sub(1).filter(|before| self.verb_at(*before, &["above"]).is_some());
        let above = self.verb_at(after, &["above"]).map(|hit| self.more_above(hit.end));
        let settled = k == "5"
            && (self.descent_at(after).is_some_and(|hit| self.row(&hit).rest() == "descent free")
                || self.doubt.is_none() && self.has_read("descent"));
        let to = match (above, before, settled) {
            (Some(to), ..) => to,
            (None, Some(_), _) => after,
            (None, None, true) => after,
            (None, None, false) => {
                let eng = self.descent_at(after).filter(|hit| self.row(hit).rest() == "descent engaged");
                let to = eng.as_ref().map_or(end, |hit| hit.end);
                return self.ask_fifths(&k, to);
            }
        };
        let mut text = format!("{k}/5");
        let mut to = to;
        if self.kind(to) == Some(Kind::Bracket) && accepts(key, &format!("{text} {}", self.text(to))) {
            text = format!("{text} {}", self.text(to));
            to += 1;
        }
        if self.low(to) == "?" && (!self.gap(to) || self.ends(to + 1)) {
            text.push('?');
            to += 1;
        }
        if !accepts(key, &text) {
            return self.number_that_cannot_be(key, at);
        }
        self.put_text("head-above-brim", text, at, to);
        self.at = to;
        // Engaged, and more than two fifths above the brim: one of them is wrong.
        let engaged = self.said.iter().any(|said| {
            said.key.name == "descent"
                && said.baby == self.baby
                && said.values.iter().any(|v| v.text == "engaged")
        });
        if engaged && matches!(k.as_str(), "3" | "4" | "5") {
            let message = format!("engaged, but {} is not engaged: which is it", quoted(self.words(at, to)));
            let span = self.span(at, to);
            self.questions.push(super::ask::question(self.line, span, message, &[]));
        }
    }

    fn more_above(&self, at: usize) -> usize {
        let mut end = at;
        while let Some(hit) = self.verb_at(end, &["above"]).filter(|_| !matches!(self.low(end), "a" | "felt"))
        {
            end = hit.end;
        }
        end
    }

    fn ask_fifths(&mut self, k: &str, end: usize) {
        let n: u16 = k.parse().unwrap_or(5);
        let message = format!(
            "{} does not say whether that much is felt above the brim or has gone below it",
            quoted(self.words(self.at, end))
        );
        let gone = 5 - n.min(5);
        let ways = [
            Way::new(format!("{k}/5 felt above the brim"), format!("{k}/5 palp")),
            Way::new(format!("{k}/5 gone in, so {gone}/5 felt above the brim"), format!("{gone}/5 palp")),
        ];
        self.ask(end, message, &ways);
    }

    /// `E 2/5`, `eng 2/5`: two meanings, unless `palp` follows.
    pub(super) fn fifths_after_engaged(&mut self, at: usize) {
        let Some(end) = self.fraction(at) else { return };
        let after = self.past_ths(end);
        if self.verb_at(after, &["above"]).is_some() {
            return self.whole("descent=engaged", at, &[]);
        }
        let k = self.text(at).to_owned();
        self.ask_fifths(&k, end);
    }

    /// A tape with a slip or a second figure: asked.
    pub(super) fn tape_is_unclear(&mut self, at: usize, to: usize) -> bool {
        let number_at = (at..to).find(|at| self.kind(*at) == Some(Kind::Number)).unwrap_or(at);
        let Ok(number) = self.text(number_at).parse::<f64>() else { return false };
        let words = |to: usize| quoted(self.words(at, to));
        if self.low(to) == "-" && !self.gap(to + 1) && self.kind(to + 1) == Some(Kind::Number) {
            let other = self.text(to + 1).to_owned();
            let ways =
                [self.text(number_at), &other].map(|n| Way::new(format!("{n} cm"), format!("SFH {n}")));
            let mut end = to + 2;
            if matches!(self.low(end), "cm" | "cms") {
                end += 1;
            }
            let message = format!("{}: the tape takes one length", words(end));
            self.ask(end, message, &ways);
            return true;
        }
        if matches!(self.low(number_at + 1), "in" | "inch" | "inches" | "\"") && number >= 20.0 {
            let mut end = to;
            while self.low(end) == "?" {
                end += 1;
            }
            let n = self.text(number_at).to_owned();
            let message = format!("{}: inches, or centimetres", words(end));
            let ways = [Way::new(format!("{n} cm"), format!("SFH {n} cm"))];
            self.ask(end, message, &ways);
            return true;
        }
        let unit = to > number_at + 1;
        if number < LEAST_TAPE && !unit {
            let message = format!("{}: which figure is missing", words(to));
            self.ask(to, message, &[]);
            return true;
        }
        false
    }

    /// After today's tape: earlier ones, and where they are told from one another by an arrow, the last is today's.
    pub(super) fn after_tape(&mut self) {
        let at = self.at;
        if self.low(at) == "," && self.kind(at + 1) == Some(Kind::Number) && !self.gap(at + 1) {
            // `32,32,32`: a row of tapes without their weeks.
            let mut end = at;
            while self.low(end) == "," && self.kind(end + 1) == Some(Kind::Number) && !self.gap(end + 1) {
                end += 2;
            }
            let start = at - 1;
            self.at = start;
            let message =
                format!("{}: at which weeks were the earlier tapes", quoted(self.words(start, end)));
            let kept = self.words(start, end).to_owned();
            self.notes.push(kept);
            let today = self.text(end - 1).to_owned();
            self.drop_last("fundal-height");
            self.ask(end, message, &[]);
            self.at = start;
            self.put_text("fundal-height", format!("{today} cm"), start, end);
            self.at = end;
            return;
        }
        if self.kind(at) == Some(Kind::Bracket)
            || matches!(self.low(at), "was" | "prev" | "previously" | "last")
        {
            return;
        }
        if self.low(at) == "→" && self.kind(at + 1) == Some(Kind::Number) {
            let mut to = at + 2;
            if matches!(self.low(to), "cm" | "cms") {
                to += 1;
            }
            let start = at - 1;
            let today = self.text(at + 1).to_owned();
            self.drop_last("fundal-height");
            self.at = start;
            self.put_text("fundal-height", format!("{today} cm"), start, to);
            while matches!(self.low(to), "over" | "in" | "since") || self.verb_at(to, &["time"]).is_some() {
                to = self.verb_at(to, &["time"]).map_or(to + 1, |hit| hit.end);
            }
            self.mark(start, to, State::Kept);
            self.at = to;
        }
    }

    /// Earlier tapes: `(31 at 32+0, 30 at 30+0)`, `was 34 at K34 and 33 at K33`. The token after them, and the values.
    pub(super) fn earlier_tapes(&self, from: usize) -> Option<(usize, Vec<Value>)> {
        let mut at = from;
        let mut values = vec![];
        while matches!(self.low(at), "last" | "prev" | "previous" | "previously" | "was" | "earlier" | "sfh")
        {
            at += 1;
        }
        loop {
            while matches!(self.low(at), "," | "and" | "&" | "then" | ";" | "/") {
                at += 1;
            }
            let number = self.text(at).parse::<f64>().ok().filter(|n| (8.0..50.0).contains(n));
            if self.kind(at) != Some(Kind::Number) || number.is_none() {
                break;
            }
            let mut next = at + 1;
            if matches!(self.low(next), "cm" | "cms") {
                next += 1;
            }
            if !matches!(self.low(next), "at" | "@") {
                break;
            }
            let Some(hit) = self.verb_at(next + 1, &["weeks"]) else { break };
            let days = super::weeks::days_of(self.row(&hit).rest(), &hit.numbers)?;
            let text = format!("{}+{} {} cm", days / 7, days % 7, self.text(at));
            values.push(Value { at: self.span(at, hit.end), text });
            at = hit.end;
        }
        (!values.is_empty()).then_some((at, values))
    }

    /// A number that its key cannot be: the reader says why, and it is asked.
    pub(super) fn number_that_cannot_be(&mut self, key: &'static Key, number: usize) {
        let at = self.at.min(number);
        let mut end = number + 1;
        if !self.gap(end) && self.kind(end) == Some(Kind::Word) || self.low(end) == "/" {
            end += 1;
        }
        if self.kind(end) == Some(Kind::Number) && self.low(end - 1) == "/" {
            end += 1;
        }
        let unit = if key.name == "fundal-height" { " cm" } else { "" };
        let text = format!("{}{unit}", self.text(number));
        let figure = self.text(number).to_owned();
        // A letter O for a nought.
        let slip = self.low(number + 1) == "o" && !self.gap(number + 1);
        let mended = format!("{figure}0");
        let mut ways = vec![];
        if slip && accepts(key, &mended) {
            ways.push(Way::new(mended.clone(), format!("{} {mended}", key.name.replace('-', " "))));
        }
        let why = if slip {
            format!("{} has the letter O in it: is it {mended}", quoted(self.words(at, end)))
        } else {
            match crate::exam::read::fault_of(key, &text) {
                Some(problem) => problem.message,
                None => format!("{} cannot be read", quoted(self.words(at, end))),
            }
        };
        if key.name.starts_with("weight") {
            for unit in ["kg", "g", "lb"] {
                let text = format!("{figure} {unit}");
                if accepts(key, &text) {
                    ways.push(Way::new(text.clone(), format!("{} {text}", key.name.replace('-', " "))));
                }
            }
        }
        self.at = at;
        self.ask(end, why, &ways);
        self.last = Last::Nothing;
    }

    /// What was found by the vagina, of a value that needs no lead.
    pub(super) fn by_hand_or_vagina(&self, key: &Key, values: &mut [Value], end: usize) {
        let _ = end;
        let shoulder = || values.iter().any(|value| value.text.starts_with("shoulder"));
        let told = matches!(key.name, "position" | "attitude") || key.name == "presentation" && shoulder();
        if self.vaginal && told {
            by_vagina(values);
        }
    }
}
