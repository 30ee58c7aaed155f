//! The findings of a line. In: the line. Out: each finding as a key and its text, what is asked, and the words for the note.
//!
//! The line is read once from left to right. At each token the row of the lexicon, or the words of the exam language, that
//! take most of the line say what it is (`choose`); what no row takes is kept, word for word. Nothing is passed over.

use super::ask::{Question, Way, question};
use super::dictated;
use super::known::{self, Known};
use super::lexicon::{self, Hit, Lexicon, Row};
use super::said::{Said, Value};
use super::signs::Sign;
use super::tokens::{self, Kind, Token};
use super::weeks::Seen;
use crate::exam::keys::{Key, Scope};
use crate::report::Problem;
use std::cell::RefCell;
use std::collections::BTreeMap;
use std::ops::Range;

/// What came of a token.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// Not looked at yet, or a break.
    Free,
    /// Part of a finding or a question.
    Used,
    /// Says nothing by itself; it goes with kept words beside it.
    Skipped,
    /// Kept in the note.
    Kept,
}

/// What was read last, for what depends on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Last {
    /// Nothing yet, or what does not matter.
    Nothing,
    /// A finding.
    Finding,
    /// A symptom that is not so, or one that is asked after such a one.
    Denial,
    /// A symptom that is so.
    Complaint,
    /// Words that are kept.
    Words,
    /// History, plans, advice: words after them are theirs.
    Aside,
}

/// What a line holds.
pub struct Items {
    /// The findings.
    pub said: Vec<Said>,
    /// How many babies it speaks of.
    pub babies: usize,
    /// Words for the note.
    pub notes: Vec<String>,
    /// What is asked.
    pub questions: Vec<Question>,
    /// Notices.
    pub problems: Vec<Problem>,
}

/// A line being read.
pub struct Scan<'a> {
    pub(super) name: &'a str,
    pub(super) line: &'a str,
    pub(super) tokens: Vec<Token>,
    pub(super) states: Vec<State>,
    pub(super) lexicon: &'a Lexicon,
    pub(super) known: Known,
    pub(super) at: usize,
    /// The baby spoken of, whether it was named, and whether both are spoken of.
    pub(super) baby: usize,
    pub(super) babies: usize,
    pub(super) numbered: bool,
    pub(super) both: bool,
    /// The heart was spoken of in this part of the line.
    pub(super) heart: bool,
    /// A word of the heart that is said of each twin in turn.
    pub(super) heart_shared: bool,
    /// Findings of the vagina are told.
    pub(super) vaginal: bool,
    /// A list that is denied, or complained of.
    pub(super) denies: bool,
    pub(super) has: bool,
    pub(super) last: Last,
    /// A plan is told, to the comma: weeks in it are the plan's.
    pub(super) plans: bool,
    /// A symptom of an earlier time, for `nil now`.
    pub(super) past_sign: Option<String>,
    /// A `?` that stands before what it is about.
    pub(super) doubt: Option<Range<usize>>,
    pub(super) signs: Vec<Sign>,
    pub(super) weeks: Vec<Seen>,
    pub(super) sizes: Vec<Range<usize>>,
    pub(super) said: Vec<Said>,
    pub(super) questions: Vec<Question>,
    pub(super) problems: Vec<Problem>,
    /// What was asked of the reader of values before, and its answer.
    pub(super) asked: RefCell<BTreeMap<(&'static str, String), bool>>,
    /// Words with a slip in them, and what was meant.
    pub(super) slips: Vec<(Range<usize>, &'static str)>,
    /// Words for the note that do not stand so in the line.
    pub(super) notes: Vec<String>,
    /// What short words were read as, to be told.
    pub(super) told: Vec<(Range<usize>, String)>,
}

/// The findings of `line`; `name` stands for the file in messages.
pub fn of(name: &str, line: &str) -> Items {
    let lexicon = lexicon::lexicon();
    let mut tokens = dictated::numbers(tokens::of(line), line);
    super::rewrite::rewrite(&mut tokens, &lexicon);
    let two = super::twins::speaks_of_two(&tokens, &lexicon);
    let mut scan = Scan {
        name,
        line,
        states: vec![State::Free; tokens.len()],
        tokens,
        lexicon: &lexicon,
        known: known::of_keys(),
        at: 0,
        baby: 0,
        babies: if two { 2 } else { 1 },
        numbered: false,
        both: false,
        heart: false,
        heart_shared: false,
        vaginal: false,
        denies: false,
        has: false,
        last: Last::Nothing,
        plans: false,
        past_sign: None,
        doubt: None,
        signs: vec![],
        weeks: vec![],
        sizes: vec![],
        said: vec![],
        questions: vec![],
        problems: vec![],
        asked: RefCell::default(),
        slips: vec![],
        notes: vec![],
        told: vec![],
    };
    while scan.at < scan.tokens.len() {
        let before = scan.at;
        scan.step();
        // Whatever a step makes of a token, it goes on.
        scan.at = scan.at.max(before + 1);
    }
    scan.lone_doubt();
    scan.tell_all();
    scan.finish()
}

/// What stands at a token: a row of the lexicon, or a value that needs no lead.
pub(super) enum Choice {
    Row(Hit),
    Bare(&'static Key, usize, Vec<Value>),
}

impl Scan<'_> {
    fn step(&mut self) {
        let at = self.at;
        match self.tokens[at].kind {
            Kind::Break => {
                (self.heart, self.vaginal, self.denies, self.has) = (false, false, false, false);
                (self.both, self.plans) = (false, false);
                self.lone_doubt();
                if self.last == Last::Aside {
                    self.last = Last::Nothing;
                }
            }
            Kind::Quote => self.quoted_note(),
            Kind::Bracket => self.bracket(),
            Kind::Word | Kind::Number | Kind::Mark => self.thing(),
        }
    }

    /// Read what stands at `self.at` once more, in the place of a bracket.
    pub(super) fn step_again(&mut self) {
        let before = self.at;
        self.thing();
        self.at = self.at.max(before + 1);
    }

    /// A word, number or mark: what takes most of the line.
    fn thing(&mut self) {
        let at = self.at;
        if self.written() {
            return;
        }
        if self.heart && self.after_heart() {
            return;
        }
        if self.pairs_of_twins() || self.minus_or_plus() {
            return;
        }
        match self.choose(at) {
            Some(Choice::Row(hit)) => self.act(&hit),
            Some(Choice::Bare(key, end, value)) => self.take_bare(key, end, value),
            None => self.unknown(),
        }
    }

    /// What takes most of the line from `at`; of two that take as much, the row.
    pub(super) fn choose(&self, at: usize) -> Option<Choice> {
        let hits = self.lexicon.at(&self.tokens, at);
        let mut best: Option<(usize, u8, Hit)> = None;
        for hit in hits {
            let row = &self.lexicon.rows[hit.row];
            let Some((reach, rank)) = self.reach(row, &hit, at) else { continue };
            if best.as_ref().is_none_or(|(most, first, _)| (reach, rank) > (*most, *first)) {
                best = Some((reach, rank, hit));
            }
        }
        let by_name = self.named(at);
        let bare = self.bare(at);
        let bare = match (bare, by_name) {
            (Some(bare), Some(named)) => Some(if named.1 > bare.1 { named } else { bare }),
            (bare, named) => bare.or(named),
        };
        match (best, bare) {
            (Some((reach, rank, hit)), Some((key, end, value))) => {
                let row_first = reach > end || reach == end && rank >= 2;
                Some(if row_first { Choice::Row(hit) } else { Choice::Bare(key, end, value) })
            }
            (Some((_, _, hit)), None) => Some(Choice::Row(hit)),
            (None, Some((key, end, value))) => Some(Choice::Bare(key, end, value)),
            (None, None) => None,
        }
    }

    /// The row of a hit.
    pub(super) fn row(&self, hit: &Hit) -> &Row {
        &self.lexicon.rows[hit.row]
    }

    /// Whether a row with one of these verbs stands at `at`, and where it ends.
    pub(super) fn verb_at(&self, at: usize, verbs: &[&str]) -> Option<Hit> {
        self.lexicon
            .at(&self.tokens, at)
            .into_iter()
            .filter(|hit| verbs.contains(&self.row(hit).verb()))
            .max_by_key(|hit| hit.end)
    }

    /// Tokens from `at` to before `end` are `state`.
    pub(super) fn mark(&mut self, at: usize, end: usize, state: State) {
        let end = end.min(self.states.len());
        for old in self.states.get_mut(at..end).into_iter().flatten() {
            *old = state;
        }
    }

    /// Keep the tokens to `end`, and go on after them.
    pub(super) fn keep(&mut self, end: usize) {
        self.mark(self.at, end, State::Kept);
        self.at = end;
        self.drop_doubt();
    }

    /// A `?` before kept words is theirs.
    pub(super) fn drop_doubt(&mut self) {
        if let Some(doubt) = self.doubt.take() {
            for (token, state) in self.tokens.iter().zip(&mut self.states) {
                if token.at.start >= doubt.start && token.at.end <= doubt.end {
                    *state = State::Kept;
                }
            }
        }
    }

    /// Ask about the tokens from `at` to before `end`.
    pub(super) fn ask(&mut self, end: usize, message: String, ways: &[Way]) {
        let mut span = self.span(self.at, end);
        if let Some(doubt) = self.doubt.take() {
            span.start = span.start.min(doubt.start);
        }
        self.mark(self.at, end, State::Used);
        self.questions.push(question(self.line, span, message, ways));
        self.at = end;
    }

    /// A `?` before nothing is kept.
    fn lone_doubt(&mut self) {
        self.drop_doubt();
    }

    /// The next token that no finding goes beyond.
    pub(super) fn stop(&self, at: usize) -> usize {
        let ends = |token: &Token| matches!(token.kind, Kind::Break | Kind::Quote);
        self.tokens[at.min(self.tokens.len())..].iter().position(ends).map_or(self.tokens.len(), |n| at + n)
    }

    /// The next comma or break.
    pub(super) fn comma(&self, at: usize) -> usize {
        let stop = self.stop(at);
        (at..stop).find(|at| self.low(*at) == ",").unwrap_or(stop)
    }

    pub(super) fn kind(&self, at: usize) -> Option<Kind> {
        self.tokens.get(at).map(|token| token.kind)
    }

    /// The text of a token in lower case; nothing beyond the end.
    pub(super) fn low(&self, at: usize) -> &str {
        self.tokens.get(at).map_or("", |token| &token.low)
    }

    pub(super) fn text(&self, at: usize) -> &str {
        self.tokens.get(at).map_or("", |token| &token.text)
    }

    /// Whether white space stands before a token; it does at the end.
    pub(super) fn gap(&self, at: usize) -> bool {
        self.tokens.get(at).is_none_or(|token| token.gap)
    }

    /// Whether no finding can go on at `at`.
    pub(super) fn ends(&self, at: usize) -> bool {
        matches!(self.kind(at), None | Some(Kind::Break | Kind::Quote)) || self.low(at) == ","
    }

    /// The bytes of the tokens from `from` to before `to`.
    pub(super) fn span(&self, from: usize, to: usize) -> Range<usize> {
        let start = self.tokens.get(from).map_or(self.line.len(), |token| token.at.start);
        let end = self.tokens.get(to.saturating_sub(1)).map_or(start, |token| token.at.end);
        start..end.max(start)
    }

    /// The words of the line from a token to before another.
    pub(super) fn words(&self, from: usize, to: usize) -> &str {
        &self.line[self.span(from, to)]
    }

    /// Whether a finding of `name` was read of the mother, or of the baby spoken of.
    pub(super) fn has_read(&self, name: &str) -> bool {
        self.said
            .iter()
            .any(|said| said.key.name == name && (said.key.scope != Scope::Baby || said.baby == self.baby))
    }
}
