//! The lexicon of the line. In: `lexicon.csv`, one row an abbreviation. Out: its rows, and which of them stand at a token.
//!
//! A row says how the words are spelled, where they are written so, what they mean, and what the reader makes of them.

use super::tokens::{self, Kind, Token};
use crate::exam::keys::{self, KEYS, Key, Scope};
use std::collections::BTreeMap;

/// The table.
const TABLE: &str = include_str!("lexicon.csv");

/// A row of the table.
pub struct Row {
    /// Spellings, as the table has them.
    pub says: Vec<&'static str>,
    /// Where it is written so.
    pub region: &'static str,
    /// What it means, in plain words.
    pub means: &'static str,
    /// What the reader makes of it: a verb, and what it is done with.
    pub does: &'static str,
}

impl Row {
    /// The verb of `does`.
    pub fn verb(&self) -> &'static str {
        self.does.split_once(' ').map_or(self.does, |(verb, _)| verb).trim_end_matches(';')
    }
    /// What stands after the verb.
    pub fn rest(&self) -> &'static str {
        self.does.split_once(' ').map_or("", |(_, rest)| rest)
    }
}

/// Every row, in the order of the table.
pub fn rows() -> Vec<Row> {
    let lines = TABLE.lines().skip(1).filter(|line| !line.starts_with('#') && !line.is_empty());
    lines
        .filter_map(|line| {
            let mut cells = line.splitn(4, ',');
            let (says, region, means, does) = (cells.next()?, cells.next()?, cells.next()?, cells.next()?);
            Some(Row { says: says.split('|').collect(), region, means, does })
        })
        .collect()
}

/// One thing of a spelling.
#[derive(Clone, Debug, PartialEq)]
enum Piece {
    /// A word or mark, in lower case.
    Any(String),
    /// A word in these letters only.
    Exact(String),
    /// A whole number in a range.
    Number(u16, u16),
    /// A number in a range, with or without a point.
    Decimal(f64, f64),
}

/// A row that stands at a token: where it ends, and the numbers in it.
#[derive(Clone, Debug)]
pub struct Hit {
    /// Which row.
    pub row: usize,
    /// The token after it.
    pub end: usize,
    /// The numbers that stand in it.
    pub numbers: Vec<u16>,
}

/// The rows, and their spellings by what they begin with.
pub struct Lexicon {
    /// Every row.
    pub rows: Vec<Row>,
    by_first: BTreeMap<String, Vec<(usize, Vec<Piece>)>>,
    numbers: Vec<(usize, Vec<Piece>)>,
}

/// The lexicon.
pub fn lexicon() -> Lexicon {
    let rows = rows();
    let mut by_first: BTreeMap<String, Vec<(usize, Vec<Piece>)>> = BTreeMap::new();
    let mut numbers = vec![];
    for (at, row) in rows.iter().enumerate() {
        for says in &row.says {
            let pieces = pieces(says);
            match pieces.first() {
                Some(Piece::Any(word)) => by_first.entry(word.clone()).or_default().push((at, pieces)),
                Some(Piece::Exact(word)) => {
                    by_first.entry(word.to_lowercase()).or_default().push((at, pieces))
                }
                Some(Piece::Number(..) | Piece::Decimal(..)) => numbers.push((at, pieces)),
                None => {}
            }
        }
    }
    Lexicon { rows, by_first, numbers }
}

/// A spelling cut as a line is.
fn pieces(says: &str) -> Vec<Piece> {
    let mut out = vec![];
    for part in says.split(' ') {
        if let Some((low, high)) = part
            .strip_prefix('<')
            .and_then(|part| part.strip_suffix('>'))
            .and_then(|part| part.split_once('-'))
            && let (Ok(lowest), Ok(highest)) = (low.parse::<f64>(), high.parse::<f64>())
        {
            out.push(match (low.parse(), high.parse()) {
                (Ok(low), Ok(high)) => Piece::Number(low, high),
                _ => Piece::Decimal(lowest, highest),
            });
        } else if part == "<comma>" {
            out.push(Piece::Any(",".to_owned()));
        } else if let Some(exact) = part.strip_prefix('^') {
            out.extend(tokens::of(exact).into_iter().map(|token| Piece::Exact(token.text)));
        } else {
            out.extend(tokens::of(part).into_iter().map(|token| Piece::Any(token.low)));
        }
    }
    out
}

impl Lexicon {
    /// Every row that stands at `at`, each with its longest spelling there.
    pub fn at(&self, tokens: &[Token], at: usize) -> Vec<Hit> {
        let Some(token) = tokens.get(at) else { return vec![] };
        let none = vec![];
        let spelled = match token.kind {
            Kind::Number => &self.numbers,
            _ => self.by_first.get(&token.low).unwrap_or(&none),
        };
        let mut hits: Vec<Hit> = vec![];
        for (row, pieces) in spelled {
            let Some((end, numbers)) = stands(pieces, tokens, at) else { continue };
            match hits.iter_mut().find(|hit| hit.row == *row) {
                Some(hit) if hit.end >= end => {}
                Some(hit) => *hit = Hit { row: *row, end, numbers },
                None => hits.push(Hit { row: *row, end, numbers }),
            }
        }
        hits
    }
}

fn stands(pieces: &[Piece], tokens: &[Token], at: usize) -> Option<(usize, Vec<u16>)> {
    let mut numbers = vec![];
    for (n, piece) in pieces.iter().enumerate() {
        let token = tokens.get(at + n)?;
        let fits = match piece {
            Piece::Any(word) => token.kind != Kind::Quote && token.low == *word,
            Piece::Exact(word) => token.text == *word,
            Piece::Decimal(low, high) => {
                token.kind == Kind::Number
                    && token.text.parse::<f64>().is_ok_and(|n| (*low..=*high).contains(&n))
            }
            Piece::Number(low, high) => {
                let number = token.text.parse::<u16>().ok().filter(|n| (*low..=*high).contains(n));
                numbers.extend(number);
                token.kind == Kind::Number && number.is_some() && !token.text.contains('.')
            }
        };
        if !fits {
            return None;
        }
    }
    Some((at + pieces.len(), numbers))
}

/// A key by its name alone; names are in one scope only.
pub fn key(name: &str) -> Option<&'static Key> {
    KEYS.iter().find(|key| key.name == name)
}

/// The key of a name that is known to be one.
pub fn known(name: &str) -> &'static Key {
    key(name).or_else(|| keys::find(Scope::Top, "note")).unwrap_or(&KEYS[0])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_is_whole_and_names_keys() {
        let lexicon = lexicon();
        assert!(lexicon.rows.len() > 250, "{}", lexicon.rows.len());
        for row in &lexicon.rows {
            assert!(
                !row.region.is_empty() && !row.means.is_empty() && !row.does.is_empty(),
                "{:?}",
                row.says
            );
            // A comma in a spelling would push what comes after it into the next cell.
            let regions = ["all", "UK", "IE", "US", "AU", "IN", "ZA"];
            assert!(row.region.split(' ').all(|region| regions.contains(&region)), "{:?}", row.says);
            let names: Vec<&str> = match row.verb() {
                "lead" | "unread" => row.rest().split(' ').collect(),
                "is" | "value" => row.rest().split("; ").filter_map(|one| one.split('=').next()).collect(),
                _ => vec![],
            };
            assert!(row.verb().chars().all(|c| c.is_ascii_lowercase() || c == '-'), "{}", row.does);
            for name in names {
                let name = name.trim_start_matches("value ").trim_start_matches("is ");
                assert!(name == "water" || key(name).is_some(), "{:?}: {name}", row.says);
            }
        }
    }
}
