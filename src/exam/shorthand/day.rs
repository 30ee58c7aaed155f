//! Dates as people write them. In: the text from the first digit. Out: how much of it is a date, and the date as a file
//! would say it; a date that can be read in two ways is told from one that cannot.

/// What a text that looks like a date says.
#[derive(Debug, PartialEq, Eq)]
pub enum Day {
    /// Year, month, day as `2026-03-14`; whether the calendar has it is asked later.
    One(String),
    /// Numbers that are a date in more than one way.
    Unclear,
}

const LONG: [&str; 12] = [
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
];
const ORDINALS: [&str; 20] = [
    "first",
    "second",
    "third",
    "fourth",
    "fifth",
    "sixth",
    "seventh",
    "eighth",
    "ninth",
    "tenth",
    "eleventh",
    "twelfth",
    "thirteenth",
    "fourteenth",
    "fifteenth",
    "sixteenth",
    "seventeenth",
    "eighteenth",
    "nineteenth",
    "twentieth",
];

/// The date at the start of `text`, and its length in bytes.
pub fn at_start(text: &str) -> Option<(usize, Day)> {
    numbers(text).or_else(|| named(text))
}

/// `2026-03-14`, `14/3/2026`, `14.3.26`.
fn numbers(text: &str) -> Option<(usize, Day)> {
    let length = text.find(|c: char| !c.is_ascii_digit() && !"/-.".contains(c)).unwrap_or(text.len());
    let text = text[..length].trim_end_matches(['.', '-', '/']);
    let parts: Vec<&str> = text.split(['/', '-', '.']).collect();
    let [a, b, c] = parts[..] else { return None };
    let (first, second) = (a.parse::<u16>().ok()?, b.parse::<u16>().ok()?);
    let day = match (a.len(), b.len(), c.len()) {
        (4, 1..=2, 1..=2) => Day::One(written(a, second, c.parse().ok()?)),
        (1..=2, 1..=2, 4) if first > 12 && (1..=12).contains(&second) => Day::One(written(c, second, first)),
        (1..=2, 1..=2, 4) if second > 12 && (1..=12).contains(&first) => Day::One(written(c, first, second)),
        (1..=2, 1..=2, 4) if first == second => Day::One(written(c, first, second)),
        (1..=2, 1..=2, 2 | 4) => Day::Unclear,
        _ => return None,
    };
    Some((text.len(), day))
}

/// `14 March 2026`, `14th of Mar 26`, `Mar 14, 2026`, `third of june 26`; without its year it is not clear.
fn named(text: &str) -> Option<(usize, Day)> {
    let mut rest = text;
    let month_first = month_of(&mut rest);
    let day = match take(&mut rest, |c| c.is_ascii_digit()) {
        Some(day) => day.parse().ok()?,
        None if month_first.is_none() => ordinal(&mut rest)?,
        None => return None,
    };
    for ending in ["st", "nd", "rd", "th"] {
        rest = rest.strip_prefix(ending).unwrap_or(rest);
    }
    let month = match month_first {
        Some(month) => month,
        None => {
            rest = rest.strip_prefix(" of").unwrap_or(rest);
            month_of(&mut rest)?
        }
    };
    if !(1..=31).contains(&day) {
        return None;
    }
    let mut after = rest.strip_prefix(',').unwrap_or(rest);
    let year = take(&mut after, |c| c.is_ascii_digit()).filter(|_| !after.starts_with(['/', '+', 'w', ':']));
    match year.map(|year| (year, year.len())) {
        Some((year, 4)) => Some((text.len() - after.len(), Day::One(written(year, month, day)))),
        Some((year, 2)) => {
            Some((text.len() - after.len(), Day::One(written(&format!("20{year}"), month, day))))
        }
        _ => Some((text.len() - rest.len(), Day::Unclear)),
    }
}

/// A month's name, of three letters or more, at the start of `rest`.
fn month_of(rest: &mut &str) -> Option<u16> {
    let mut after = *rest;
    let name = take(&mut after, |c| c.is_ascii_alphabetic())?.to_lowercase();
    let month =
        LONG.iter().position(|long| name.len() >= 3 && (long.starts_with(&name) || name == "sept"))?;
    *rest = after;
    let month = if name == "sept" { 8 } else { month };
    u16::try_from(month).ok().map(|month| month + 1)
}

/// `third`, `twenty first`.
fn ordinal(rest: &mut &str) -> Option<u16> {
    let mut after = *rest;
    let first = take(&mut after, |c| c.is_ascii_alphabetic())?.to_lowercase();
    let tens = match first.as_str() {
        "twenty" => 20,
        "thirty" => 30,
        _ => 0,
    };
    let mut last = first.clone();
    if tens > 0 {
        last = take(&mut after, |c| c.is_ascii_alphabetic())?.to_lowercase();
    }
    let unit = ORDINALS.iter().position(|ordinal| *ordinal == last)?;
    // A month has to follow.
    let mut month = after.strip_prefix(" of").unwrap_or(after);
    month_of(&mut month)?;
    *rest = after;
    u16::try_from(unit).ok().map(|unit| tens + unit + 1)
}

/// The two readings of a date in figures, each as it is said and as a file has it.
pub fn both(text: &str) -> Vec<(String, String)> {
    let parts: Vec<&str> = text.split(['/', '-', '.']).collect();
    let [a, b, c] = parts[..] else { return vec![] };
    let (Ok(a), Ok(b)) = (a.parse::<u16>(), b.parse::<u16>()) else { return vec![] };
    let year = if c.len() == 2 { format!("20{c}") } else { c.to_owned() };
    let mut out = vec![];
    for (day, month) in [(a, b), (b, a)] {
        if let (1..=31, Some(name)) = (day, LONG.get(usize::from(month).wrapping_sub(1))) {
            let said = (
                format!("{day} {}{} {year}", name[..1].to_uppercase(), &name[1..]),
                written(&year, month, day),
            );
            if !out.contains(&said) {
                out.push(said);
            }
        }
    }
    out
}

fn take<'a>(rest: &mut &'a str, wanted: impl Fn(char) -> bool) -> Option<&'a str> {
    let text = rest.trim_start_matches([' ', '-', '/']);
    let length = text.find(|c| !wanted(c)).unwrap_or(text.len());
    let (taken, after) = text.split_at(length);
    *rest = after;
    (!taken.is_empty()).then_some(taken)
}

fn written(year: &str, month: u16, day: u16) -> String {
    format!("{year}-{month:02}-{day:02}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_that_can_be_read_in_one_way() {
        let one = |text: &str| Day::One(text.to_owned());
        assert_eq!(at_start("2026-03-14, LOA"), Some((10, one("2026-03-14"))));
        assert_eq!(at_start("14/3/2026."), Some((9, one("2026-03-14"))));
        assert_eq!(at_start("3/14/2026"), Some((9, one("2026-03-14"))));
        assert_eq!(at_start("3.3.2026"), Some((8, one("2026-03-03"))));
        assert_eq!(at_start("14 Mar 2026 LOA"), Some((11, one("2026-03-14"))));
        assert_eq!(at_start("1st of March"), Some((12, Day::Unclear)));
        assert_eq!(at_start("14th Feb 2027, seen"), Some((13, one("2027-02-14"))));
        assert_eq!(at_start("third of june 26"), Some((16, one("2026-06-03"))));
        assert_eq!(at_start("Mar 3 by 9wk US"), Some((5, Day::Unclear)));
        assert_eq!(at_start("mar right"), None);
        assert_eq!(both("3/4/26").len(), 2);
        assert_eq!(at_start("3/4/2026"), Some((8, Day::Unclear)));
        assert_eq!(at_start("14/3/26"), Some((7, Day::Unclear)));
        assert_eq!(at_start("2/5 palp"), None);
    }
}
