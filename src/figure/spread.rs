//! Things in a row that would like to stand at certain places. In: the places, in order, and the room each needs. Out: places
//! near them that keep the order and the distance.

/// Places at least `gap` apart between `low` and `high`, as near to `wanted` (in order) as the sum of squares can be. When the
/// row is too long for the room, it stands around its middle.
pub fn spread(wanted: &[f32], gap: f32, low: f32, high: f32) -> Vec<f32> {
    // Without the gaps the places need only be in order: neighbours out of order share their mean.
    let mut runs: Vec<(f32, usize)> = vec![];
    for (i, want) in wanted.iter().enumerate() {
        runs.push((want - gap * i as f32, 1));
        while let [.., (before, n), (after, m)] = runs[..] {
            if before <= after {
                break;
            }
            let both = n + m;
            runs.truncate(runs.len() - 2);
            runs.push(((before * n as f32 + after * m as f32) / both as f32, both));
        }
    }
    let room = high - low - gap * wanted.len().saturating_sub(1) as f32;
    let (first, last) = if room < 0.0 { (low + room * 0.5, low + room * 0.5) } else { (low, low + room) };
    let places = runs.into_iter().flat_map(|(at, n)| std::iter::repeat_n(at, n));
    places.enumerate().map(|(i, at)| at.clamp(first, last) + gap * i as f32).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_has_room_stays_and_what_has_none_makes_way() {
        assert_eq!(spread(&[1.0, 5.0, 9.0], 2.0, 0.0, 10.0), [1.0, 5.0, 9.0]);
        assert_eq!(spread(&[4.0, 4.0], 2.0, 0.0, 10.0), [3.0, 5.0]);
        assert_eq!(spread(&[0.0, 0.0, 9.0], 2.0, 0.0, 10.0), [0.0, 2.0, 9.0]);
        assert_eq!(spread(&[9.0, 10.0], 4.0, 0.0, 10.0), [6.0, 10.0]);
        assert_eq!(spread(&[1.0, 1.0, 1.0], 4.0, 0.0, 4.0), [-2.0, 2.0, 6.0]);
        assert_eq!(spread(&[], 4.0, 0.0, 4.0), [0.0; 0]);
    }
}
