//! Values of a line. In: a key and the token where its value would begin. Out: the value and where it ends; what needs no lead;
//! and how much of the line a row of the lexicon takes.

use super::day::Day;
use super::lexicon::{Hit, Row, known};
use super::said::{Said, Value};
use super::scan::{Choice, Last, Scan};
use super::tokens::Kind;
use crate::exam::keys::{KEYS, Key, Scope};
use crate::exam::read::accepts;
use crate::exam::words::{StateWord, Vocabulary, fold};

/// Tokens of one value, at most; a list has more.
const MOST_TOKENS: usize = 16;
/// Marks and words that may stand between a lead and its value.
const BETWEEN: [&str; 9] = [":", "=", "-", "is", "~", "of", "at", "@", "approx"];
/// Keys whose words stand bare; where two take as much, the first.
const BARE: [&str; 9] =
    ["position", "presentation", "lie", "descent", "attitude", "legs", "heart-with", "operations", "skin"];
/// Words of those keys that say too much else to stand bare.
const NOT_BARE: [&str; 21] = [
    "long",
    "across",
    "vertical",
    "up and down",
    "complete",
    "folded",
    "flexed",
    "straight",
    "extended",
    "deep",
    "head",
    "bottom",
    "section",
    "horn",
    "stethoscope",
    "slanting",
    "lengthwise",
    "pelvic",
    "high",
    "fixed",
    "sh",
];

impl Scan<'_> {
    /// How much of the line a row takes at `at`, and its rank among those that take as much; `None` where it says nothing.
    pub(super) fn reach(&self, row: &Row, hit: &Hit, at: usize) -> Option<(usize, u8)> {
        let end = hit.end;
        let keys = |keys: &[&str]| {
            let ends = keys.iter().filter_map(|key| self.values_after(known(key), end));
            ends.map(|(end, _)| end).max()
        };
        Some(match row.verb() {
            "value" | "unread" | "comes" | "constant" | "above" | "where" => return None,
            "legs-of-breech" if !self.after_breech(end) => return None,
            "legs-of-breech" => (end, 4),
            "by-vagina" if !self.vaginal => return None,
            "letter" if self.babies < 2 => return None,
            "letter" => (end + MOST_TOKENS, 4),
            "as" => return None,
            "lead" => {
                let names: Vec<&str> = row.rest().split(' ').collect();
                if names == ["weeks"] && self.verb_at(self.between(end), &["weeks"]).is_some() {
                    (end + 1, 3)
                } else {
                    keys(&names).map_or((end, 1), |reach| (reach, 3))
                }
            }
            "head" => match keys(&["head", "attitude"]) {
                Some(reach) => (reach, 3),
                None => (end, 2),
            },
            "breech" => (keys(&["breech"]).unwrap_or(end), 3),
            "fh" => (end + 1, 2),
            "pulse" => (keys(&["pulse"])?, 3),
            "place" => match self.verb_at(end, &["head", "breech"]) {
                Some(next) if at == 0 || self.kind(at).is_some() => (next.end, 3),
                _ => return None,
            },
            "of" if row.rest() == "cervix" && !self.vaginal => return None,
            "of" => (end, if self.vaginal { 3 } else { 1 }),
            "weeks" => (end, 4),
            "skip" => (end, 0),
            "is" | "bare" | "sign" | "doubtful" | "pain" | "time" | "amount" | "legs" | "by-vagina" => {
                (end, 3)
            }
            _ => (end, 2),
        })
    }

    /// Whether a breech was told before, and no blood or water comes after: `br deep frank`, not `frank PVB`.
    fn after_breech(&self, end: usize) -> bool {
        let says = |said: &Said, name: &str, codes: &[&str]| {
            let text = said.values[0].text.to_lowercase();
            said.key.name == name && codes.iter().any(|code| text.starts_with(code))
        };
        let breech = |said: &Said| {
            said.baby == self.baby
                && (says(said, "presentation", &["breech"])
                    || says(said, "position", &["ls", "rs", "sa", "sp", "left sac", "right sac"]))
        };
        let of_baby = |said: &Said| said.key.scope == Scope::Baby;
        self.said.last().is_some_and(of_baby)
            && self.said.iter().any(breech)
            && self.verb_at(end, &["sign", "doubtful", "pain"]).is_none()
    }

    /// After a lead: past the marks between it and its value.
    pub(super) fn between(&self, at: usize) -> usize {
        let mut end = at;
        while end < at + 2 && BETWEEN.contains(&self.low(end)) {
            end += 1;
        }
        end
    }

    /// Values of `key` after a lead.
    pub(super) fn values_after(&self, key: &'static Key, after: usize) -> Option<(usize, Vec<Value>)> {
        self.values(key, after).or_else(|| {
            let next = self.between(after);
            (next > after).then(|| self.values(key, next)).flatten()
        })
    }

    /// The name of a key with a value after it.
    pub(super) fn named(&self, at: usize) -> Option<(&'static Key, usize, Vec<Value>)> {
        if self.kind(at) != Some(Kind::Word) {
            return None;
        }
        let found = KEYS.iter().filter(|key| !matches!(key.name, "note" | "weeks")).filter_map(|key| {
            let after = self.name(at, key.name)?;
            let (end, values) = self.values_after(key, after)?;
            // A list of symptoms is read here only when it is written as the program writes it.
            let whole = !matches!(key.name, "reports" | "denies") || end == self.stop(at);
            whole.then_some((key, end, values))
        });
        found.reduce(|best, next| if next.1 > best.1 { next } else { best })
    }

    /// A finding as the program writes it, alone between two breaks: the name of its key and the words of a file.
    pub(super) fn written(&mut self) -> bool {
        let at = self.at;
        if at.checked_sub(1).is_some_and(|before| self.kind(before) != Some(Kind::Break)) {
            return false;
        }
        let stop = self.stop(at);
        let found = KEYS.iter().filter(|key| !matches!(key.name, "note" | "weeks")).find_map(|key| {
            let after = self.name(at, key.name).filter(|after| *after < stop)?;
            let text = self.words(after, stop);
            // What is denied ends at a plus.
            let text =
                if key.list && key.name != "denies" { text.replace(" + ", "; ") } else { text.to_owned() };
            // `back L A` is left and to the front: no article.
            let article = key.name == "back" && text.split_whitespace().any(|word| word == "A");
            (!article && !text.starts_with(['-', ':', '=']) && accepts(key, &text))
                .then_some((key, after, text))
        });
        let Some((key, after, text)) = found else { return false };
        let value = Value { at: self.span(after, stop), text };
        self.put(key, vec![value], at, stop);
        match key.name {
            "denies" => self.last = Last::Denial,
            "reports" => self.last = Last::Complaint,
            _ => {}
        }
        self.at = stop;
        true
    }

    fn name(&self, at: usize, name: &str) -> Option<usize> {
        let mut end = at;
        for (n, word) in name.split('-').enumerate() {
            if n > 0 && self.low(end) == "-" {
                end += 1;
            }
            if self.low(end) != word {
                return None;
            }
            end += 1;
        }
        Some(end)
    }

    /// A value that stands without a lead, such as `LOA`.
    pub(super) fn bare(&self, at: usize) -> Option<(&'static Key, usize, Vec<Value>)> {
        // An article is no part of a value: behind a back's side it may be its turn.
        if self.kind(at) != Some(Kind::Word) || self.low(at) == "a" {
            return None;
        }
        let found = BARE.iter().filter_map(|name| {
            let key = known(name);
            let (end, value) = self.longest(key, at, false)?;
            let words = value.text.split(['(', '?']).next().unwrap_or_default();
            let folded = fold(words);
            // `long ceph`, `obl→long`: the lie; a long cervix is told by the vagina.
            let lie = *name == "lie" && folded == "long" && !self.vaginal && self.long_lie(at, end);
            if StateWord::find(words).is_some() || !lie && NOT_BARE.contains(&folded.as_str()) {
                return None;
            }
            // Codes of one or two letters are written in capitals.
            let code = *name == "position" && folded.len() <= 3;
            if code && self.text(at) != self.text(at).to_uppercase() && folded.len() < 3 {
                return None;
            }
            let after: &[&str] = match *name {
                "lie" => &["lie"],
                "presentation" => &["presentation", "presenting", "pres"],
                "position" => &["position"],
                _ => &[],
            };
            let end = if after.contains(&self.low(end)) { end + 1 } else { end };
            Some((key, end, vec![value]))
        });
        found.reduce(|best, next| if next.1 > best.1 { next } else { best })
    }

    /// Whether `long` at `at` is said of the lie: an arrow stands before it, or what leads after it.
    fn long_lie(&self, at: usize, end: usize) -> bool {
        let arrow = at.checked_sub(1).is_some_and(|before| self.low(before) == "→");
        let next = if matches!(self.low(end), "," | "/" | "&" | "and") { end + 1 } else { end };
        let leads =
            ["presentation", "position"].iter().any(|name| self.longest(known(name), next, false).is_some());
        arrow || leads || self.verb_at(next, &["breech", "head"]).is_some()
    }

    /// The values of `key` from `at`: one, or several of a list.
    pub(super) fn values(&self, key: &'static Key, at: usize) -> Option<(usize, Vec<Value>)> {
        let (mut end, first) = self.value(key, at)?;
        let mut values = vec![first];
        if !key.list {
            return Some((end, values));
        }
        while let Some(next) = self.list_goes_on(key, end) {
            if next <= end && self.value(key, next).is_none() {
                break;
            }
            if !matches!(self.low(next - 1), "+" | "&") && self.begins_other(key, next) {
                break;
            }
            let Some((after, value)) = self.value(key, next) else { break };
            values.push(value);
            end = after;
        }
        Some((end, values))
    }

    /// Whether another finding begins at `at`: a lead, or a row that says a whole finding of another key.
    fn begins_other(&self, key: &Key, at: usize) -> bool {
        self.lexicon.at(&self.tokens, at).iter().any(|hit| {
            let row = self.row(hit);
            match row.verb() {
                "lead" => !row.rest().split(' ').any(|name| name == key.name),
                "is" => !row.rest().contains(key.name),
                "head" | "breech" | "weeks" | "fh" => true,
                _ => false,
            }
        })
    }

    fn value(&self, key: &'static Key, at: usize) -> Option<(usize, Value)> {
        if key.scope == Scope::Top
            && key.name != "scan"
            && let Some((end, Day::One(text))) = self.day(at)
        {
            return accepts(key, &text).then(|| (end, Value { at: self.span(at, end), text }));
        }
        if key.name == "fundal-height" && self.verb_at(at, &["weeks"]).is_some() {
            return None;
        }
        if key.name == "heart-rate"
            && self.kind(at) == Some(Kind::Number)
            && self.low(at + 1) == "s"
            && !self.gap(at + 1)
            && let Ok(low) = self.low(at).parse::<u16>()
            && low.is_multiple_of(10)
        {
            let text = format!("{low}-{}", low.saturating_add(9));
            return accepts(key, &text).then(|| (at + 2, Value { at: self.span(at, at + 2), text }));
        }
        // With what the lexicon puts in, or as it stands: what takes more.
        let (with_rows, plain) = (self.longest(key, at, true), self.longest(key, at, false));
        let found = match (with_rows, plain) {
            (Some(rows), Some(plain)) => Some(if plain.0 > rows.0 { plain } else { rows }),
            (rows, plain) => rows.or(plain),
        };
        if found.is_some() {
            return found;
        }
        // A tape is read in cm: nobody writes the unit.
        if key.name == "fundal-height" && self.kind(at) == Some(Kind::Number) && self.low(at + 1) != "/" {
            let mut end = at + 1;
            let with_unit = |end: usize| format!("{} cm{}", self.text(at), self.joined(at + 1, end));
            while (self.kind(end) == Some(Kind::Bracket) || self.low(end) == "?" && self.own_doubt(end))
                && accepts(key, &with_unit(end + 1))
            {
                end += 1;
            }
            let text = with_unit(end);
            return accepts(key, &text).then(|| (end, Value { at: self.span(at, end), text }));
        }
        None
    }

    /// Tokens as they are read, with the spaces of the line.
    pub(super) fn joined(&self, from: usize, to: usize) -> String {
        let mut text = String::new();
        for (n, token) in self.tokens.get(from..to).unwrap_or_default().iter().enumerate() {
            if n > 0 && token.gap {
                text.push(' ');
            }
            text.push_str(&token.text);
        }
        text
    }

    /// Whether a `?` is of what stands before it: it touches that, or stands at the end.
    pub(super) fn own_doubt(&self, at: usize) -> bool {
        !self.gap(at) || self.gap(at + 1)
    }

    /// Whether a text is a value of a key; the same is asked many times of one line.
    fn fits(&self, key: &Key, text: &str) -> bool {
        let asked = (key.name, text.to_owned());
        if let Some(known) = self.asked.borrow().get(&asked) {
            return *known;
        }
        let fits = accepts(key, text);
        self.asked.borrow_mut().insert(asked, fits);
        fits
    }

    /// Where the next value of a list begins, if the list goes on.
    fn list_goes_on(&self, key: &Key, at: usize) -> Option<usize> {
        let places = key.has_places();
        let parted = match self.low(at) {
            // What is denied ends at a plus.
            "+" => key.name != "denies" && self.gap(at) && self.gap(at + 1),
            "&" => true,
            "," => comma_parts(key),
            "and" | "or" | "nor" => !places,
            // How a womb feels is said in words side by side.
            "++" if key.name == "womb" => true,
            _ if key.name == "womb" && self.kind(at) == Some(Kind::Word) => return Some(at),
            _ => false,
        };
        parted.then_some(at + 1)
    }

    /// The longest run of tokens from `at` that is a value of `key`; `rows`: with what the lexicon says for it put in.
    pub(super) fn longest(&self, key: &Key, at: usize, rows: bool) -> Option<(usize, Value)> {
        // `breech, left footling`: the side is that of the foot.
        let of_foot = |at| key.name != "legs" && self.verb_at(at, &["legs"]).is_some();
        if of_foot(at) {
            return None;
        }
        let stop = self.stop(at).min(at + MOST_TOKENS);
        let mut ends: Vec<(usize, String, bool)> = vec![];
        let mut text = String::new();
        let mut next = at;
        while next < stop {
            if key.list && !key.has_places() && key.name != "earlier-tapes" && self.low(next) == "," {
                break;
            }
            if of_foot(next) {
                break;
            }
            let (end, piece, of_row) = match rows.then(|| self.put_in(key, next)).flatten() {
                Some((end, piece)) => (end, piece, true),
                None if self.kind(next) == Some(Kind::Word) && !self.known.has(key, self.text(next)) => break,
                None => (next + 1, self.text(next).to_owned(), false),
            };
            if next > at && (self.gap(next) || end > next + 1) {
                text.push(' ');
            }
            text.push_str(&piece);
            ends.push((end, text.clone(), of_row));
            next = end;
        }
        ends.into_iter().rev().find_map(|(end, text, of_row)| {
            let last = self.low(end - 1);
            let plus = last == "+" && matches!(key.name, "tape-unfit" | "urine-protein");
            let whole = (of_row || plus || !matches!(last, "," | "+" | "&" | "/" | "++" | "-"))
                && (last != "?" || self.own_doubt(end - 1))
                && self.fits(key, &text);
            whole.then(|| (end, Value { at: self.span(at, end), text }))
        })
    }

    /// What the lexicon says for the words at `at` as a value of `key`: the longest of its rows.
    fn put_in(&self, key: &Key, at: usize) -> Option<(usize, String)> {
        let place = matches!(key.name, "head" | "breech" | "limbs" | "lumps" | "heart");
        let hits = self.lexicon.at(&self.tokens, at).into_iter().filter_map(|hit| {
            let row = self.row(&hit);
            let said = match row.verb() {
                "value" => {
                    let of_key = |one: &&str| one.split('=').next() == Some(key.name);
                    let values: Vec<&str> = row
                        .rest()
                        .split("; ")
                        .filter(of_key)
                        .filter_map(|one| one.split_once('=').map(|(_, value)| value))
                        .collect();
                    (!values.is_empty()).then(|| values.join("; "))?
                }
                "soft" if key.name == "womb" => "soft".to_owned(),
                "place" if place || key.name == "back" && ["left", "right"].contains(&row.rest()) => {
                    row.rest().to_owned()
                }
                _ => return None,
            };
            Some((hit.end, said))
        });
        hits.reduce(|best, next| if next.0 > best.0 { next } else { best })
    }

    /// A row or a bare value begins a finding at `at`: kept words end there.
    pub(super) fn begins(&self, at: usize) -> bool {
        match self.choose(at) {
            Some(Choice::Bare(..)) => true,
            Some(Choice::Row(hit)) => !matches!(
                self.row(&hit).verb(),
                "skip" | "keep" | "time" | "amount" | "when" | "of" | "arrow"
            ),
            None => false,
        }
    }
}

/// Lists whose values may have commas between them.
fn comma_parts(key: &Key) -> bool {
    matches!(key.name, "reports" | "denies" | "heart-counts" | "earlier-tapes" | "skin" | "scars")
}

/// Whether a text is a state, such as `not felt`, and no value.
pub(super) fn is_state(text: &str) -> bool {
    StateWord::find(text.split(['(', '?']).next().unwrap_or_default().trim()).is_some()
}
