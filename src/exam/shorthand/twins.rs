//! Two babies. In: tokens. Out: whether the line speaks of two; whose findings come now; `ceph/ceph`, one for each.

use super::lexicon::{Hit, Lexicon};
use super::scan::{Choice, Scan, State};
use super::tokens::{Kind, Token};

/// Whether a line speaks of two babies: a row of twins, or a second baby by number.
pub fn speaks_of_two(tokens: &[Token], lexicon: &Lexicon) -> bool {
    let mut at = 0;
    let mut two = false;
    while at < tokens.len() {
        let hits = lexicon.at(tokens, at);
        let longest = hits.iter().map(|hit| hit.end).max().unwrap_or(at + 1);
        let verbs = || hits.iter().filter(|hit| hit.end == longest).map(|hit| lexicon.rows[hit.row].does);
        // A reason why a tape is unfit says nothing of this line's babies.
        let unfit = tokens[..at]
            .iter()
            .rev()
            .take_while(|token| token.kind != Kind::Break)
            .any(|token| token.low == "unfit");
        two |= !unfit
            && verbs().any(|does| matches!(does, "twins" | "both-hearts" | "baby 2" | "both twins"))
            || hits.iter().any(|hit| {
                hit.end == longest
                    && lexicon.rows[hit.row].does == "baby #1"
                    && hit.numbers.last() == Some(&2)
            });
        // What is told of the family, or of the past, is not of now.
        if verbs().any(|does| matches!(does, "family" | "keepclause")) {
            at = (longest..tokens.len())
                .find(|at| tokens[*at].low == "," || tokens[*at].kind == Kind::Break)
                .unwrap_or(tokens.len());
        } else {
            at = longest.max(at + 1);
        }
    }
    two
}

impl Scan<'_> {
    /// `twin 2`, `T1:`, `B:`: whose findings come now.
    pub(super) fn baby_named(&mut self, rest: &str, hit: &Hit) {
        let number =
            rest.parse::<usize>().ok().or_else(|| hit.numbers.last().map(|n| usize::from(*n))).unwrap_or(1);
        // `first` and the like are of one baby in a line that speaks of one.
        if self.babies < 2 && self.row(hit).rest() != "#1" {
            return self.keep(hit.end);
        }
        self.baby = number - 1;
        self.babies = self.babies.max(number);
        self.numbered = true;
        self.both = false;
        // `FHR A 140 B 152`: the heart goes on to the other.
        let heart = self.heart && self.heart_shared;
        (self.heart, self.vaginal) = (heart, false);
        let end = if self.low(hit.end) == ":" { hit.end + 1 } else { hit.end };
        self.mark(self.at, end, State::Used);
        self.at = end;
        if self.low(end) == "?" && (self.gap(end) && self.gap(end + 1)) {
            self.put_text("presentation", "could not tell".to_owned(), end, end + 1);
            self.at = end + 1;
        }
    }

    /// `ceph/ceph`, `ceph/br` of twins: one for each.
    pub(super) fn pairs_of_twins(&mut self) -> bool {
        let at = self.at;
        if self.babies < 2 || self.numbered || self.kind(at) != Some(Kind::Word) {
            return false;
        }
        let one = |at: usize| self.part_at(at);
        let Some((first, end)) = one(at) else { return false };
        if !matches!(self.low(end), "/" | "&" | "+" | "-") {
            return false;
        }
        let Some((second, last)) = one(end + 1) else { return false };
        for (baby, (name, value), from, to) in [(0, first, at, end), (1, second, end + 1, last)] {
            self.baby = baby;
            self.numbered = true;
            self.put_text(name, value, from, to);
        }
        self.mark(end, end + 1, State::Used);
        (self.baby, self.numbered) = (0, false);
        self.at = last;
        true
    }

    /// A presentation, lie or position at `at`: its key, its words, and where it ends.
    fn part_at(&self, at: usize) -> Option<((&'static str, String), usize)> {
        match self.choose(at)? {
            Choice::Bare(key, end, values) if matches!(key.name, "presentation" | "lie" | "position") => {
                Some(((key.name, values[0].text.clone()), end))
            }
            Choice::Row(hit) if self.row(&hit).verb() == "breech" => {
                Some((("presentation", "breech".to_owned()), hit.end))
            }
            Choice::Row(hit)
                if self.row(&hit).does.starts_with("is lie=")
                    || self.row(&hit).does.starts_with("bare lie") =>
            {
                let value = self.row(&hit).does.trim_start_matches("is lie=").trim_start_matches("bare lie ");
                Some((("lie", value.to_owned()), hit.end))
            }
            _ => None,
        }
    }
}
