//! Words that are other words for the same, wherever they stand. In: tokens. Out: the tokens with the rows `as` put in.

use super::lexicon::Lexicon;
use super::tokens::{self, Token};

/// Put in what the rows `as` of the lexicon say, `#1` and `#2` for the numbers in them; a longer row of another kind at the same place goes first.
pub fn rewrite(line: &mut Vec<Token>, lexicon: &Lexicon) {
    let mut out: Vec<Token> = vec![];
    let mut at = 0;
    while at < line.len() {
        let hits = lexicon.at(line, at);
        let longest = hits.iter().map(|hit| hit.end).max().unwrap_or(at);
        let found = hits.iter().find(|hit| lexicon.rows[hit.row].verb() == "as" && hit.end == longest);
        match found {
            Some(hit) => {
                let whole = line[at].at.start..line[hit.end - 1].at.end;
                let mut says = lexicon.rows[hit.row].rest().to_owned();
                for (n, number) in hit.numbers.iter().enumerate() {
                    says = says.replace(&format!("#{}", n + 1), &number.to_string());
                }
                for (n, token) in tokens::of(&says).into_iter().enumerate() {
                    let gap = if n == 0 { line[at].gap } else { token.gap };
                    out.push(Token::new(token.kind, whole.clone(), &token.text, gap));
                }
                at = hit.end;
            }
            None => {
                out.push(line[at].clone());
                at += 1;
            }
        }
    }
    *line = out;
}
