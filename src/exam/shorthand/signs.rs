//! Symptoms: whether she has them. In: a symptom at a token, and what stands before and after it. Out: reported, not so, in
//! doubt, kept with its "no", or asked. How far a "no" reaches: the next word; a slash, `or`, `nor` carry it on; a comma, `&`, a
//! full stop or mere space does not. `denies` and `no c/o` reach over the whole list.

use super::ask::Way;
use super::scan::{Choice, Last, Scan, State};
use super::tokens::Kind;
use crate::report::quoted;
use std::ops::Range;

/// A symptom that was read.
#[derive(Clone, Debug)]
pub struct Sign {
    /// Its canonical word, as `reports` takes it.
    pub word: String,
    /// She has it, or it is not so.
    pub has: bool,
    /// It was written with `?`.
    pub unsure: bool,
    /// Its bytes.
    pub at: Range<usize>,
}

/// What stands after a symptom.
enum After {
    Nothing,
    /// A plus, a time, an amount: she has it.
    Present,
    /// `nil`, `-ve`: it is not so.
    Absent,
    /// A dash, or plus and minus.
    Unclear,
}

impl Scan<'_> {
    /// A symptom from `self.at` to `end`; `word` is that of its key, or empty. `other`: what it says when nobody says whether
    /// she reports it (a womb that contracts under the hand).
    pub(super) fn sign(&mut self, end: usize, word: &str, other: Option<(&'static str, &str)>) {
        let at = self.at;
        let (after, next) = self.after_sign(end);
        let unsure = self.doubt.is_some() || self.low(end) == "?" && !self.gap(end);
        let next = if self.low(end) == "?" && !self.gap(end) { end + 1 } else { next };
        if self.denies && !matches!(after, After::Present) {
            return self.denied(at, end, next, word);
        }
        match after {
            After::Absent => return self.denied(at, end, next, word),
            After::Unclear => {
                let message = format!("{} does not say whether she has it", quoted(self.words(at, next)));
                return self.ask_sign(next, word, message);
            }
            After::Present | After::Nothing => {}
        }
        let complaint = self.has || matches!(after, After::Present);
        if self.last == Last::Denial && !complaint && !unsure {
            let message = format!(
                "{} stands after what is not so: is it not so either, or has she it",
                quoted(self.words(at, end))
            );
            self.ask_sign(end, word, message);
            self.last = Last::Denial;
            return;
        }
        match other {
            Some((name, value)) if !self.has && !unsure => {
                self.put_text(name, value.to_owned(), at, end);
                self.at = end;
                self.last = Last::Complaint;
            }
            _ => self.reported(at, end, word, unsure),
        }
        if unsure {
            self.mark(end, next, State::Used);
            self.at = next;
        } else {
            if word.contains("tightenings") && matches!(self.low(self.at), "lasting" | "lasts" | "last") {
                self.long_and_strong();
            }
            self.belongings();
        }
    }

    /// She has it: its key, or the words when there is none.
    fn reported(&mut self, at: usize, end: usize, word: &str, unsure: bool) {
        if word.is_empty() {
            self.mark(at, end, State::Kept);
            self.drop_doubt();
            if unsure {
                self.mark(end, end + 1, State::Kept);
            }
        } else {
            self.mark(at, end, State::Used);
            self.doubt = None;
            let at = self.span(at, end);
            self.signs.push(Sign { word: word.to_owned(), has: true, unsure, at });
        }
        self.at = end;
        self.last = Last::Complaint;
    }

    /// It is not so. Without a key it is kept together with its "no".
    pub(super) fn denied(&mut self, at: usize, end: usize, next: usize, word: &str) {
        if word.is_empty() {
            let before = at.checked_sub(1).filter(|before| self.verb_at(*before, &["no"]).is_some());
            match before {
                Some(before) => self.mark(before, next, State::Kept),
                None => {
                    self.mark(at, next, State::Used);
                    self.notes.push(format!("no {}", self.words(at, end)));
                }
            }
        } else {
            self.mark(at, next, State::Used);
            let at = self.span(at, end);
            self.signs.push(Sign { word: word.to_owned(), has: false, unsure: false, at });
        }
        self.doubt = None;
        self.at = next;
        self.last = Last::Denial;
    }

    pub(super) fn ask_sign(&mut self, end: usize, word: &str, message: String) {
        let said = if word.is_empty() { self.words(self.at, end).to_owned() } else { word.to_owned() };
        let ways = if word.is_empty() {
            vec![
                Way::new(format!("she has {said}"), "note"),
                Way::new(format!("no {said}"), format!("note \"no {said}\"")),
            ]
        } else {
            vec![
                Way::new(format!("she reports {said}"), format!("reports {said}")),
                Way::new(format!("no {said}"), format!("denies {said}")),
            ]
        };
        // Until it is answered the words stand in the note, where an alarm in them is found.
        self.notes.push(self.words(self.at, end).to_owned());
        self.ask(end, message, &ways);
    }

    /// What stands after a symptom, and the token after that.
    fn after_sign(&self, end: usize) -> (After, usize) {
        let next = self.low(end);
        let close = |at: usize| self.ends(at) || matches!(self.low(at), ")" | "now" | "&" | "+");
        match next {
            "+" | "++" => {
                // A plus between two symptoms joins them; one that touches the first, or ends the list, says that it is there.
                let joins = next == "+" && self.gap(end) && self.gap(end + 1) && !self.ends(end + 1);
                (After::Present, if joins { end } else { end + 1 })
            }
            "nil" | "none" | "neg" | "negative" | "absent" => match self.nil_between(end) {
                Some(true) => (After::Absent, end + 1),
                Some(false) => (After::Unclear, end + 1),
                None => (After::Nothing, end),
            },
            "no" if close(end + 1) => (After::Absent, end + 1),
            "-" | ":" if matches!(self.low(end + 1), "ve" | "nil" | "no" | "none" | "neg") => {
                (After::Absent, end + 2)
            }
            "-" if self.gap(end + 1) || self.ends(end + 1) => (After::Unclear, end + 1),
            "±" => (After::Unclear, end + 1),
            "(-)" => (After::Absent, end + 1),
            "(+)" | "(++)" => (After::Present, end + 1),
            "=" if matches!(self.low(end + 1), "nil" | "no" | "none" | "0") => (After::Absent, end + 2),
            "x" if self.kind(end + 1) == Some(Kind::Number) => (After::Present, end),
            "present" | "yes" | "✓" => (After::Present, end + 1),
            _ if self.verb_at(end, &["time", "amount", "inten"]).is_some() => (After::Present, end),
            _ => (After::Nothing, end),
        }
    }

    /// A `nil` after a symptom: of the symptom before it (`PVB nil LOF nil`), or it cannot be told from one of the next
    /// (`PVB nil LOF`); `None` when one stands before the symptom already (`nil PVB nil LOF`).
    fn nil_between(&self, at: usize) -> Option<bool> {
        let nil = |at: usize| matches!(self.low(at), "nil" | "none" | "neg" | "negative" | "absent");
        let sign = |at: usize| self.verb_at(at, &["sign", "doubtful", "pain"]);
        let mut next = at + 1;
        loop {
            let Some(hit) = sign(next) else { return Some(true) };
            if !nil(hit.end) {
                return Some(false);
            }
            next = hit.end + 1;
        }
    }

    /// What belongs to a symptom that she has: plus signs, side, time and amount are kept beside it.
    pub(super) fn belongings(&mut self) {
        loop {
            let at = self.at;
            if self.low(at) == "++" || self.low(at) == "+" && (!self.gap(at) || self.ends(at + 1)) {
                // One plus says only that it is there.
                let state = if self.low(at) == "++" { State::Kept } else { State::Used };
                self.mark(at, at + 1, state);
                self.at = at + 1;
            } else if matches!(
                self.low(at),
                "l" | "r" | "lt" | "rt" | "left" | "right" | "side" | "sided" | "bilat"
            ) && self.gap(at)
                && !matches!(self.low(at + 1), "lateral" | "ant" | "post")
            {
                self.mark(at, at + 1, State::Kept);
                self.at = at + 1;
            } else if matches!(self.low(at), "+" | "&" | "and" | "of" | "in" | "on" | "/" | "over")
                && let Some(hit) = self.verb_at(at + 1, &["where"])
            {
                self.mark(at, hit.end, State::Kept);
                self.at = hit.end;
            } else if let Some(hit) = self.verb_at(at, &["time", "amount", "where"]) {
                self.mark(at, hit.end, State::Kept);
                self.at = hit.end;
            } else {
                return;
            }
        }
    }

    /// `no` and its like: the next word is not so, and what a slash, `or`, `nor` carries on.
    pub(super) fn no(&mut self, end: usize) {
        let start = self.at;
        // `nil now` after a symptom of an earlier time.
        if let Some(word) = self.past_sign.clone()
            && (self.verb_at(end, &["now"]).is_some() || matches!(self.low(end), "since"))
        {
            let to = self.verb_at(end, &["now"]).map_or(end + 1, |hit| hit.end);
            return self.denied(start, to, to, &word);
        }
        let mut at = end;
        let mut first = true;
        loop {
            self.at = at;
            let read = match self.choose(at) {
                Some(Choice::Row(hit)) => self.not_so(start, at, &hit),
                Some(Choice::Bare(key, end, _)) if key.name == "reports" => {
                    let word = self.words(at, end).to_owned();
                    self.denied(at, end, end, &word);
                    true
                }
                Some(Choice::Bare(..)) | None => false,
            };
            if !read {
                if first {
                    self.keep_denied(start, end);
                } else if !self.ends(at) && self.choose(at).is_none() {
                    // A word that is not known is denied with the rest.
                    self.mark(at, at + 1, State::Used);
                    self.notes.push(format!("no {}", self.words(at, at + 1)));
                    self.at = at + 1;
                } else {
                    self.at = at;
                }
                if first {
                    return;
                }
            }
            if first && self.states[start] == State::Free {
                self.mark(start, end, State::Used);
            }
            first = false;
            let carries = matches!(self.low(self.at), "/" | "or" | "nor");
            if !carries || self.ends(self.at + 1) {
                return;
            }
            self.mark(self.at, self.at + 1, State::Used);
            at = self.at + 1;
        }
    }

    /// The row after a `no`: whether it could be denied.
    fn not_so(&mut self, start: usize, at: usize, hit: &super::lexicon::Hit) -> bool {
        let row = self.row(hit);
        let (verb, rest) = (row.verb(), row.rest());
        let end = hit.end;
        match verb {
            "sign" => self.denied(at, end, end, rest.split(';').next().unwrap_or_default().trim()),
            "doubtful" => self.denied(at, end, end, rest),
            "pain" => self.denied(at, end, end, "constant pain"),
            "complaints" => {
                self.mark(start, end, State::Used);
                self.put_text("reports", "none".to_owned(), at, end);
                self.at = end;
            }
            "is" if rest == "movements=fewer" || rest == "movements=changed" => {
                self.put_text("movements", "usual".to_owned(), at, end);
                self.at = end;
            }
            "is" if rest.starts_with("movements=") => {
                self.put_text("movements", "none".to_owned(), at, end);
                self.at = end;
            }
            "lead" if rest.starts_with("movements") => {
                self.put_text("movements", "none".to_owned(), at, end);
                self.at = end;
            }
            "lead" if rest.starts_with("heart-rate") => {
                self.put_text("heart", "not heard".to_owned(), at, end);
                self.at = end;
            }
            "lead" if matches!(rest, "scars" | "lumps") => {
                self.put_text(if rest == "scars" { "scars" } else { "lumps" }, "none".to_owned(), at, end);
                self.at = end;
            }
            _ => return false,
        }
        true
    }

    /// `no` of what has no key: the words are kept with it, to the comma or the next finding.
    pub(super) fn keep_denied(&mut self, start: usize, end: usize) {
        let comma = self.comma(end);
        let mut to = end;
        // What it is said of: one row or bare word, or the words that are not known.
        if let Some(choice) = self.choose(to).filter(|_| to < comma) {
            to = match choice {
                Choice::Row(hit) => hit.end,
                Choice::Bare(_, end, _) => end,
            };
            let last = self.lexicon.at(&self.tokens, end);
            let goes_on = last.iter().any(|hit| matches!(self.row(hit).verb(), "history" | "skip" | "plan"));
            if goes_on && to < comma {
                to = match self.choose(to) {
                    Some(Choice::Row(hit)) => hit.end,
                    Some(Choice::Bare(_, end, _)) => end,
                    None => to,
                };
            }
        }
        while to < comma && !self.begins(to) {
            to += 1;
        }
        self.mark(start, to.max(end), State::Kept);
        self.at = to.max(end);
        self.drop_doubt();
        self.last = Last::Denial;
    }

    /// Pain: what kind is told by words beside it, or asked.
    pub(super) fn pain(&mut self, end: usize) {
        let at = self.at;
        let before = at.checked_sub(1);
        let stop = self.comma(end);
        let near =
            |verb: &str| (end..stop.min(end + 4)).find_map(|at| self.verb_at(at, &[verb])).map(|hit| hit.end);
        let before_is = |verb: &str| before.is_some_and(|before| self.verb_at(before, &[verb]).is_some());
        let (constant, comes) = (near("constant"), near("comes"));
        if self.denies {
            return self.denied(at, end, end, "constant pain");
        }
        if let Some(to) = comes.filter(|_| constant.is_none()) {
            self.keep(to);
            self.last = Last::Complaint;
        } else if constant.is_some() || before_is("constant") {
            let to = constant.unwrap_or(end);
            self.sign(to, "constant pain", None);
        } else if before_is("comes") {
            self.mark(at - 1, end, State::Kept);
            self.at = end;
            self.last = Last::Complaint;
        } else if matches!(self.after_sign(end).0, After::Absent) {
            self.sign(end, "constant pain", None);
        } else {
            let mut to = end;
            while matches!(self.low(to), "+" | "++") {
                to += 1;
            }
            let words = quoted(self.words(at, to));
            self.notes.push(self.words(at, to).to_owned());
            if matches!(self.low(at), "pain" | "pains") {
                let ways = [
                    Way::new("in the belly, and it stays", "reports constant pain"),
                    Way::new("in the belly, and it comes and goes", "reports tightenings"),
                    Way::new("under the ribs", "reports pain under ribs"),
                    Way::new("at a scar", "reports scar pain"),
                    Way::new("in the loin", "reports loin pain"),
                    Way::new("in the chest", "reports chest pain"),
                ];
                self.ask(to, format!("{words} does not say where it is, or whether it stays"), &ways);
            } else {
                let ways = [
                    Way::new("it stays", "reports constant pain"),
                    Way::new("it comes and goes", "reports tightenings"),
                ];
                self.ask(to, format!("{words} does not say whether it stays or comes and goes"), &ways);
            }
            self.last = Last::Complaint;
        }
    }

    /// A minus or plus that touches a word: `-LOF`, `+ctx`.
    pub(super) fn minus_or_plus(&mut self) -> bool {
        let at = self.at;
        let touches = self.gap(at) && !self.gap(at + 1) && self.kind(at + 1) == Some(Kind::Word);
        let sign = touches.then(|| self.verb_at(at + 1, &["sign", "doubtful", "pain"])).flatten();
        match (self.low(at), sign) {
            ("-", Some(_)) => {
                self.no(at + 1);
                true
            }
            ("+" | "++", Some(hit)) => {
                self.mark(at, at + 1, State::Used);
                self.at = at + 1;
                (self.denies, self.has) = (false, true);
                self.act(&hit);
                self.has = false;
                true
            }
            _ => false,
        }
    }
}
