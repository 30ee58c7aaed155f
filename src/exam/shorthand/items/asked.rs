//! What a line says that is no finding, or not clearly one. In: the tokens from a word. Out: whose findings come now, words for
//! the note, what is not recorded here, and what is asked.

use super::{MOST_BABIES, Scan, of_key};
use crate::exam::keys::{self, KEYS, KEYS_MEANT, Scope};
use crate::exam::read::printable;
use crate::exam::shorthand::leads::{AFTER_HEART, ASKS, Ask, BARE, ELSEWHERE, LEADS, VAGINAL, WHO, WHOLE};
use crate::exam::shorthand::said::{Said, Value};
use crate::exam::shorthand::tokens::Kind;
use crate::exam::suggest::{SIDE_NEVER_GUESSED, Suggestion, suggest};
use crate::exam::words::{Row, fold};
use crate::report::{Problem, quoted};
use std::ops::Range;

/// `FH` and this many is a tape in cm.
const TAPE: std::ops::RangeInclusive<f64> = 10.0..=45.0;
/// `FH` and this many is a heart rate.
const HEART: std::ops::RangeInclusive<f64> = 90.0..=220.0;

impl Scan<'_> {
    /// `baby 2`, `twin 1`: whose findings come now.
    pub(super) fn baby_number(&mut self) -> bool {
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
    pub(super) fn rest_is_note(&mut self) -> bool {
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

    pub(super) fn quoted_note(&mut self) {
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
    pub(super) fn note(&mut self, at: Range<usize>, text: String) {
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
    pub(super) fn not_here(&mut self) -> bool {
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
    pub(super) fn asked(&mut self) -> bool {
        let at = self.at;
        let capitals = |ask: &Ask| !ask.capitals || self.text(at).chars().all(char::is_uppercase);
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
    pub(super) fn fetal_heart(&mut self) -> bool {
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

    pub(super) fn ask(&mut self, end: usize, message: String, instead: &str) {
        let span = self.span(self.at, end);
        self.items.problems.push(Problem::at("ambiguous", self.name, span, message).expecting(instead));
        self.at = end;
    }

    pub(super) fn unknown(&mut self) {
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
        // Of several words, the first tells most, unless it is too short to.
        let first = self.text(at);
        let long = first.chars().count() >= 4 || end == at + 1;
        let meant = KEYS_MEANT.iter().find(|(tried, _)| fold(first) == *tried).map(|(_, meant)| *meant);
        let found = match (meant, long) {
            (Some(meant), _) => Suggestion::Word(meant),
            (None, true) => suggest(first, rows),
            (None, false) => Suggestion::Nothing,
        };
        let (near, side) = match found {
            Suggestion::Word(word) => (Some(word), String::new()),
            Suggestion::Side => (None, format!("; {SIDE_NEVER_GUESSED}")),
            Suggestion::Nothing => (None, String::new()),
        };
        let message = format!("{} is not understood{side}", quoted(self.run(at, end)));
        let span = self.span(at, end);
        // Only the first word is exchanged: a side after it stays.
        let rest = self.run(at, end)[first.len()..].trim_end();
        self.items.problems.push(
            Problem::at("unknown-shorthand", self.name, span, message)
                .expecting(
                    "a finding such as `LOA`, `2/5 palp`, `SFH 34`, `back left`; free words after `note`",
                )
                .suggesting(near.map(|word| format!("`{}{rest}`", spelled(word)))),
        );
        self.at = end;
    }

    /// A `?` before nothing.
    pub(super) fn lone_doubt(&mut self) {
        if let Some(doubt) = self.doubt.take() {
            self.items.problems.push(
                Problem::at("unknown-shorthand", self.name, doubt, "`?` does not say what is unsure")
                    .expecting("`?` at the end of a finding, such as `LOA?`"),
            );
        }
    }
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
