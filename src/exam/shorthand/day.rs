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

const MONTHS: [&str; 12] =
    ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

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

/// `14 March 2026`, `14 Mar 2026`.
fn named(text: &str) -> Option<(usize, Day)> {
    let mut rest = text;
    let day = take(&mut rest, |c| c.is_ascii_digit())?;
    for ending in ["st", "nd", "rd", "th"] {
        rest = rest.strip_prefix(ending).unwrap_or(rest);
    }
    let month = take(&mut rest, |c| c.is_ascii_alphabetic())?.to_lowercase();
    let month = MONTHS.iter().position(|known| month.starts_with(known))?;
    let year = take(&mut rest, |c| c.is_ascii_digit())?;
    if year.len() != 4 || day.len() > 2 {
        return None;
    }
    let written = written(year, u16::try_from(month).ok()? + 1, day.parse().ok()?);
    Some((text.len() - rest.len(), Day::One(written)))
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
        assert_eq!(at_start("1st of March"), None);
        assert_eq!(at_start("3/4/2026"), Some((8, Day::Unclear)));
        assert_eq!(at_start("14/3/26"), Some((7, Day::Unclear)));
        assert_eq!(at_start("2/5 palp"), None);
    }
}
