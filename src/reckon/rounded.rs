//! Numbers for sentences. In: a value, and limits it is spoken of beside. Out: decimals that never round it across a limit.

use std::cmp::Ordering;

/// Most decimals that are ever printed.
const MOST: usize = 6;

/// `value` with as few decimals as keep it on its side of every limit, `least` at least; a whole number has none.
pub fn beside(value: f64, limits: &[f64], least: usize) -> String {
    let keeps = |text: &str| {
        let rounded: f64 = text.parse().unwrap_or(value);
        limits.iter().all(|limit| side(rounded, *limit) == side(value, *limit))
    };
    let text = (least..MOST)
        .map(|decimals| format!("{value:.decimals$}"))
        .find(|text| keeps(text))
        .unwrap_or_else(|| format!("{value:.MOST$}"));
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// On which side of a limit; nearer than a millionth is on it.
fn side(value: f64, limit: f64) -> Ordering {
    if (value - limit).abs() < 1e-6 { Ordering::Equal } else { value.total_cmp(&limit) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_never_rounds_across_its_limit() {
        for (value, limits, least, text) in [
            (9.7, &[10.0, 90.0][..], 0, "9.7"),
            (9.996, &[10.0], 0, "9.996"),
            (36.2, &[10.0, 90.0], 0, "36"),
            (10.0, &[10.0], 0, "10"),
            (2.04, &[2.0], 1, "2.04"),
            (2.0, &[2.0], 1, "2"),
            (0.57, &[2.0], 1, "0.6"),
            (109.6, &[100.0, 110.0], 0, "109.6"),
            (-0.01, &[], 1, "0"),
            (100.0, &[], 0, "100"),
        ] {
            assert_eq!(beside(value, limits, least), text);
        }
    }
}
