//! Numbers as they are dictated. In: tokens. Out: the same with number words as figures: `thirty-seven plus two`, `one forty-two`,
//! `thirty-five and a half`, `point five`, `three over five`, `two fifths`.

use super::tokens::{Kind, Token};

const UNITS: [&str; 20] = [
    "nought",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
];
const TENS: [&str; 8] = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

fn unit(word: &str) -> Option<u32> {
    match word {
        "zero" | "oh" => Some(0),
        "fourty" => None,
        word => (0..20).zip(UNITS).find(|(_, unit)| *unit == word).map(|(n, _)| n),
    }
}

fn ten(word: &str) -> Option<u32> {
    let word = if word == "fourty" { "forty" } else { word };
    (2..10).zip(TENS).find(|(_, ten)| *ten == word).map(|(n, _)| n * 10)
}

/// A number below a hundred at `at`, and the token after it.
fn below_hundred(tokens: &[Token], at: usize) -> Option<(u32, usize)> {
    let low = |at: usize| tokens.get(at).map_or("", |token| token.low.as_str());
    if let Some(tens) = ten(low(at)) {
        let next = if low(at + 1) == "-" { at + 2 } else { at + 1 };
        return match unit(low(next)).filter(|unit| (1..10).contains(unit)) {
            Some(unit) => Some((tens + unit, next + 1)),
            None => Some((tens, at + 1)),
        };
    }
    unit(low(at)).map(|unit| (unit, at + 1))
}

/// A number in words at `at`: `one hundred and forty two`, `one forty-two`, `thirty-seven`.
fn number(tokens: &[Token], at: usize) -> Option<(u32, usize)> {
    let low = |at: usize| tokens.get(at).map_or("", |token| token.low.as_str());
    let (first, end) = match low(at) {
        "a" if low(at + 1) == "hundred" => (1, at + 1),
        _ => below_hundred(tokens, at)?,
    };
    if low(end) == "hundred" && first < 10 {
        let next = if low(end + 1) == "and" { end + 2 } else { end + 1 };
        return match below_hundred(tokens, next) {
            Some((rest, end)) => Some((first * 100 + rest, end)),
            None => Some((first * 100, end + 1)),
        };
    }
    // A rate is said as `one forty-two` or `one thirty`; `one oh five` too.
    if first == 1 && end == at + 1 {
        if low(end) == "oh"
            && let Some(last) = unit(low(end + 1))
        {
            return Some((100 + last, end + 2));
        }
        if let Some((rest, end)) = below_hundred(tokens, end).filter(|(rest, _)| *rest >= 10) {
            return Some((100 + rest, end));
        }
    }
    Some((first, end))
}

/// Words that make a lone unit a name and no number.
fn is_name(before: &str) -> bool {
    matches!(before, "twin" | "baby" | "no" | "any" | "this" | "that" | "same" | "which")
}

/// The tokens with number words as figures; `line` is what they were cut from.
pub fn numbers(tokens: Vec<Token>, line: &str) -> Vec<Token> {
    let mut out: Vec<Token> = vec![];
    let mut at = 0;
    let low = |at: usize| tokens.get(at).map_or("", |token| token.low.as_str());
    while let Some(token) = tokens.get(at) {
        let after_number = out.last().is_some_and(|token| token.kind == Kind::Number);
        let number_next = |at: usize| {
            tokens.get(at).is_some_and(|token| token.kind == Kind::Number) || number(&tokens, at).is_some()
        };
        let mut mark = |text: &str| out.push(Token::new(Kind::Mark, token.at.clone(), text, false));
        match token.low.as_str() {
            "plus" if after_number && number_next(at + 1) => {
                mark("+");
                at += 1;
                continue;
            }
            "over" if after_number && number_next(at + 1) => {
                mark("/");
                at += 1;
                continue;
            }
            _ => {}
        }
        if after_number && low(at) == "and" && low(at + 1) == "a" && low(at + 2) == "half" {
            add(&mut out, ".5", tokens[at + 2].at.end);
            at += 3;
            continue;
        }
        if after_number
            && low(at) == "point"
            && let Some((n, end)) = tokens
                .get(at + 1)
                .and_then(|token| Some((token.text.parse::<u32>().ok()?, at + 2)))
                .or_else(|| below_hundred(&tokens, at + 1))
        {
            add(&mut out, &format!(".{n}"), tokens[end - 1].at.end);
            at = end;
            continue;
        }
        if matches!(low(at), "fifths" | "fifth" | "5ths") && after_number {
            for (kind, text) in [(Kind::Mark, "/"), (Kind::Number, "5")] {
                out.push(Token::new(kind, token.at.clone(), text, false));
            }
            at += 1;
            continue;
        }
        let before = at.checked_sub(1).map_or("", low);
        // The name of a key: `contractions in ten 3`.
        let mut back = (0..at).rev().map(low).filter(|word| *word != "-");
        let of_key = back.next() == Some("in") && back.next() == Some("contractions");
        match number(&tokens, at).filter(|_| token.kind == Kind::Word && !is_name(before) && !of_key) {
            Some((n, end)) => {
                let whole = token.at.start..tokens[end - 1].at.end;
                debug_assert!(whole.end <= line.len());
                // After `plus` or `over` the figures stand close.
                let close =
                    out.last().is_some_and(|last| last.kind == Kind::Mark && !last.gap && last.at.len() > 2);
                out.push(Token::new(Kind::Number, whole, &n.to_string(), token.gap && !close));
                at = end;
            }
            None => {
                out.push(token.clone());
                at += 1;
            }
        }
    }
    out
}

/// Put digits behind the last number.
fn add(out: &mut [Token], digits: &str, end: usize) {
    if let Some(last) = out.last_mut().filter(|last| !last.text.contains('.')) {
        *last = Token::new(Kind::Number, last.at.start..end, &format!("{}{digits}", last.text), last.gap);
    }
}
