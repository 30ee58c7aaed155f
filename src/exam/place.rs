//! Places on the abdomen and the turn of the back. In: a piece of text. Out: `Place` or `Back`; or what is wrong with it.

use super::keys::HEARD_ALSO;
use super::model::*;
use super::piece::{Fault, Piece};
use super::quantity::{LENGTH_CM, length_of, length_unit};
use super::suggest::{SIDE_NEVER_GUESSED, may_be_a_side};
use super::words::{Landmark, PLACE_ABBREVIATIONS, Row, Vocabulary, fold};
use crate::report::quoted;
use crate::units::MotherSide;

/// Words that may stand between the parts of a place.
pub(super) const BETWEEN: [&str; 10] = [",", "on", "at", "in", "to", "of", "the", "her", "side", "and"];
/// The longest phrase in the tables, in tokens, small words included.
const LONGEST_PHRASE: usize = 7;

/// The longest run of tokens from `at` that is a word of `T`, and how many tokens it takes.
fn phrase<T: Vocabulary>(tokens: &[Piece<'_>], at: usize) -> Option<(T, usize)> {
    let most = LONGEST_PHRASE.min(tokens.len() - at);
    // An article begins a phrase and never ends one: the A of `left A` is a turn that is not read, and no word to pass over.
    let ends = |count: &usize| {
        *count == 1 || !["a", "an"].contains(&tokens[at + count - 1].text.to_lowercase().as_str())
    };
    (1..=most).rev().filter(ends).find_map(|count| {
        let words: Vec<&str> = tokens[at..at + count].iter().map(|token| token.text).collect();
        T::find(&words.join(" ")).map(|value| (value, count))
    })
}

fn is_number(token: &Piece<'_>) -> bool {
    token.text.starts_with(|c: char| c.is_ascii_digit())
}

/// From the token to the next comma: what an unknown word is compared by.
fn unknown(tokens: &[Piece<'_>], at: usize, rows: Vec<Row>, whole: Piece<'_>) -> Fault {
    // In small letters it may be a slip of a side: `lft`.
    let as_code = !whole.text.contains(char::is_lowercase) || whole.text.len() > 4;
    if as_code && Position::find(whole.text).is_some() {
        return Fault::at(
            "position-not-place",
            whole,
            format!("{} is a position, not a place", quoted(whole.text)),
        )
        .suggesting(format!("`position = \"{}\"`", whole.text));
    }
    // A word beside it may have been meant for a side: then nothing is exchanged here.
    if tokens[at..].iter().any(|token| may_be_a_side(&fold(token.text))) {
        let message = format!("{} is not a word for this; {SIDE_NEVER_GUESSED}", quoted(tokens[at].text));
        return Fault::at("unknown-word", tokens[at], message);
    }
    let end = tokens[at..].iter().position(|token| token.text == ",").map_or(tokens.len(), |n| at + n);
    let segment = whole.part(tokens[at].at - whole.at..tokens[end - 1].range().end - whole.at);
    let by_segment = Fault::unknown_word(segment, rows.clone());
    if by_segment.suggestion.is_some() { by_segment } else { Fault::unknown_word(tokens[at], rows) }
}

/// The words of a place: sides, then levels.
pub fn place_rows() -> Vec<Row> {
    let mut rows = Across::rows();
    rows.extend(Height::rows());
    rows
}

/// A place: a side, a level, or both; in words or measured.
pub fn place(piece: Piece<'_>) -> Result<Place, Fault> {
    let tokens = piece.tokens();
    let mut across: Option<Across> = None;
    let mut height: Option<Height> = None;
    let mut at = 0;
    while at < tokens.len() {
        let token = tokens[at];
        let lower = token.text.to_lowercase();
        if let Some((_, side, level)) = PLACE_ABBREVIATIONS.iter().find(|(short, _, _)| *short == lower) {
            put(&mut across, Across::Side(*side), token, "a side")?;
            put(&mut height, *level, token, "a level")?;
            at += 1;
        } else if is_number(&token) {
            at += measured(&tokens, at, &mut across, &mut height)?;
        } else if let Some((found, count)) = phrase::<Height>(&tokens, at) {
            put(&mut height, found, token, "a level")?;
            at += count;
        } else if let Some((found, count)) = phrase::<Across>(&tokens, at) {
            put(&mut across, found, token, "a side")?;
            at += count;
        } else if ["low", "high"].contains(&lower.as_str()) {
            let levels = if lower == "low" {
                "`below navel`, `iliac fossa` or `above pubic bone`"
            } else {
                "`above navel` or `fundus`"
            };
            return Err(
                Fault::at("unclear-word", token, format!("`{lower}` does not say where")).expecting(levels)
            );
        } else if BETWEEN.contains(&lower.as_str()) {
            at += 1;
        } else {
            return Err(unknown(&tokens, at, place_rows(), piece));
        }
    }
    if across.is_none() && height.is_none() {
        return Err(Fault::at("not-a-place", piece, format!("{} is not a place", quoted(piece.text))));
    }
    if height == Some(Height::IliacFossa)
        && !matches!(across, Some(Across::Side(_) | Across::Flank(_) | Across::Measured(..)))
    {
        return Err(Fault::at(
            "side-missing",
            piece,
            format!("{} does not say on which side", quoted(piece.text)),
        )
        .expecting("`left iliac fossa` or `right iliac fossa`"));
    }
    Ok(Place { across, height })
}

fn put<T: PartialEq>(slot: &mut Option<T>, value: T, token: Piece<'_>, what: &str) -> Result<(), Fault> {
    if slot.as_ref().is_some_and(|before| *before != value) {
        return Err(Fault::at("said-twice", token, format!("{what} is said twice, and differently"))
            .expecting("one side and one level"));
    }
    *slot = Some(value);
    Ok(())
}

/// `6 cm` after or before a side, or `4 cm below navel`; how many tokens it took.
fn measured(
    tokens: &[Piece<'_>],
    at: usize,
    across: &mut Option<Across>,
    height: &mut Option<Height>,
) -> Result<usize, Fault> {
    let token = tokens[at];
    let Some(unit) = tokens.get(at + 1).filter(|next| next.text != ",") else {
        return Err(Fault::at("unit-missing", token, format!("{} has no unit", quoted(token.text)))
            .expecting("a length with its unit: cm, mm or in")
            .suggesting(format!("`{} cm`", token.text)));
    };
    if length_unit(unit.text).is_none()
        && !is_number(unit)
        && (phrase::<Across>(tokens, at + 1).is_some() || ["above", "below"].contains(&unit.text))
    {
        return Err(Fault::at("unit-missing", token, format!("{} has no unit", quoted(token.text)))
            .expecting("a length with its unit: cm, mm or in")
            .suggesting(format!("`{} cm`", token.text)));
    }
    let length = length_of(token, *unit, LENGTH_CM)?;
    let next = tokens.get(at + 2).map(|t| t.text.to_lowercase());
    if let Some(way @ ("above" | "below" | "under")) = next.as_deref() {
        let landmark = (at + 3 < tokens.len()).then(|| phrase::<Landmark>(tokens, at + 3)).flatten();
        let (level, count) = match (landmark, way) {
            (Some((Landmark::Navel, count)), "above") => (Height::FromNavel(length.get()), count),
            (Some((Landmark::Navel, count)), _) => (Height::FromNavel(-length.get()), count),
            (Some((Landmark::PubicBone, count)), "above") => (Height::FromPubicBone(length), count),
            _ => {
                return Err(Fault::at("not-a-place", tokens[at + 2], format!("`{way}` what is not said"))
                    .expecting("`above navel`, `below navel` or `above pubic bone` after a length"));
            }
        };
        put(height, level, token, "a level")?;
        return Ok(3 + count);
    }
    // A side that was just said takes the length; otherwise the side follows it.
    if let Some(Across::Side(side)) = *across {
        *across = Some(Across::Measured(side, length));
        return Ok(2);
    }
    let mut after = at + 2;
    while tokens
        .get(after)
        .is_some_and(|t| ["to", "on", "from", "of", "the", "her"].contains(&t.text.to_lowercase().as_str()))
    {
        after += 1;
    }
    match (after < tokens.len()).then(|| phrase::<Across>(tokens, after)).flatten() {
        Some((Across::Side(side), count)) => {
            put(across, Across::Measured(side, length), token, "a side")?;
            Ok(after + count - at)
        }
        _ => {
            Err(Fault::at("not-a-place", token, format!("{} {} of what is not said", token.text, unit.text))
                .expecting("a side (`left 6 cm`) or a level (`4 cm below navel`)"))
        }
    }
}

/// Where the heart was heard; a rate typed here is pointed to its own key.
pub fn heart(piece: Piece<'_>) -> Result<HeartHeard, Fault> {
    let folded = fold(piece.text);
    if folded == "heard" || HEARD_ALSO.iter().any(|also| fold(also) == folded) {
        return Ok(HeartHeard::Somewhere);
    }
    let tokens = piece.tokens();
    let looks_like_rate = |n: usize| {
        is_number(&tokens[n])
            && tokens.get(n + 1).is_none_or(|next| {
                next.text == ","
                    || next.text == "/"
                    || is_number(next)
                    || next.text.to_lowercase().starts_with('b')
            })
    };
    if let Some(rate) = (0..tokens.len()).find(|n| looks_like_rate(*n)) {
        return Err(Fault::at("rate-in-heart", tokens[rate], format!("{} looks like a rate; `heart` is the place", quoted(tokens[rate].text)))
            .expecting("where it was heard, such as `left, below navel`; a rate stands in heart-rate, a count in heart-counts")
            .suggesting(format!("`heart-rate = {}`", tokens[rate].text)));
    }
    place(piece).map(HeartHeard::At)
}

/// Where the back is and how it is turned.
pub fn back(piece: Piece<'_>) -> Result<Back, Fault> {
    let tokens = piece.tokens();
    let mut side: Option<MotherSide> = None;
    let mut turn: Option<BackTurn> = None;
    let mut at = 0;
    while at < tokens.len() {
        let token = tokens[at];
        if let Some((found, count)) = phrase::<BackTurn>(&tokens, at) {
            put(&mut turn, found, token, "which way it is turned")?;
            at += count;
        } else if let Some((found, count)) = phrase::<Across>(&tokens, at) {
            match found {
                Across::Side(found) => put(&mut side, found, token, "a side")?,
                Across::Middle => {}
                Across::Flank(flank) => {
                    let side = if flank == MotherSide::Left { "left" } else { "right" };
                    return Err(Fault::at(
                        "unclear-word",
                        token,
                        "a back in the flank may be square to the side or turned to her spine",
                    )
                    .expecting(format!("`{side} lateral` or `{side}, towards her spine`")));
                }
                Across::Measured(..) => {}
            }
            at += count;
        } else if BETWEEN.contains(&token.text.to_lowercase().as_str()) {
            at += 1;
        } else {
            return Err(unknown(&tokens, at, back_rows(), piece));
        }
    }
    match (side, turn) {
        (None, None) => Err(Fault::at(
            "not-a-back",
            piece,
            format!("{} does not say where the back is", quoted(piece.text)),
        )),
        (None, Some(BackTurn::Lateral)) => Err(Fault::at(
            "side-missing",
            piece,
            format!("{} does not say to which side", quoted(piece.text)),
        )
        .expecting("`left lateral` or `right lateral`")),
        (Some(_), Some(BackTurn::Ribs | BackTurn::Feet)) => Err(Fault::at(
            "side-of-crosswise-back",
            piece,
            "a back towards her ribs or feet lies across, from side to side",
        )
        .expecting(
            "`towards her ribs` or `towards her feet` alone; the sides are those of `head` and `breech`",
        )),
        _ => Ok(Back { side, turn }),
    }
}

/// The words of a back: sides, then turns.
pub fn back_rows() -> Vec<Row> {
    let mut rows: Vec<Row> =
        Across::rows().into_iter().filter(|row| ["left", "right"].contains(&row.word)).collect();
    rows.extend(BackTurn::rows());
    rows
}

/// The level of the top of the womb: a word, or finger-breadths from navel or xiphoid.
pub fn fundus_level(piece: Piece<'_>) -> Result<FundusLevel, Fault> {
    if let Some(level) = FundusLevel::find(piece.text) {
        return Ok(level);
    }
    let tokens = piece.tokens();
    let [count, unit, rest @ ..] = &tokens[..] else {
        return Err(Fault::unknown_word(piece, FundusLevel::rows()));
    };
    let unit = unit.text.to_lowercase();
    if !is_number(count) || !(unit.starts_with("finger") || unit == "fb") {
        return Err(Fault::unknown_word(piece, FundusLevel::rows()));
    }
    let fingers =
        count.text.parse::<u8>().ok().filter(|n| (1..=MOST_FINGERS).contains(n)).ok_or_else(|| {
            Fault::at("out-of-range", *count, format!("{} finger-breadths is out of range", count.text))
                .expecting(format!("1 to {MOST_FINGERS}"))
        })?;
    let words: Vec<String> = rest
        .iter()
        .map(|t| t.text.to_lowercase())
        .filter(|t| !["breadth", "breadths"].contains(&t.as_str()))
        .collect();
    let landmark = words.get(1..).and_then(|rest| Landmark::find(&rest.join(" ")));
    match (words.first().map(String::as_str), landmark) {
        (Some("below"), Some(Landmark::Navel)) => Ok(FundusLevel::FingersBelowNavel(fingers)),
        (Some("above"), Some(Landmark::Navel)) => Ok(FundusLevel::FingersAboveNavel(fingers)),
        (Some("below"), Some(Landmark::Xiphoid)) => Ok(FundusLevel::FingersBelowXiphoid(fingers)),
        _ => Err(Fault::at("not-a-level", piece, format!("{} is not a level", quoted(piece.text)))
            .expecting("finger-breadths `above navel`, `below navel` or `below xiphoid`")),
    }
}

/// More finger-breadths than this are not counted by hand.
const MOST_FINGERS: u8 = 8;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Centimetres;
    use MotherSide::{Left, Right};

    fn cm(n: f64) -> Centimetres {
        Centimetres::new(n).unwrap()
    }

    #[test]
    fn places_in_words_and_measured() {
        let cases = [
            ("above pubic bone", None, Some(Height::AbovePubicBone)),
            ("fundus", None, Some(Height::Fundus)),
            ("right, above navel", Some(Across::Side(Right)), Some(Height::AboveNavel)),
            ("right above the umbilicus", Some(Across::Side(Right)), Some(Height::AboveNavel)),
            ("above navel on her left", Some(Across::Side(Left)), Some(Height::AboveNavel)),
            ("left flank", Some(Across::Flank(Left)), None),
            ("right flank, below navel", Some(Across::Flank(Right)), Some(Height::BelowNavel)),
            ("left iliac fossa", Some(Across::Side(Left)), Some(Height::IliacFossa)),
            ("LLQ", Some(Across::Side(Left)), Some(Height::BelowNavel)),
            ("right upper quadrant", Some(Across::Side(Right)), Some(Height::AboveNavel)),
            ("midline, at navel", Some(Across::Middle), Some(Height::AtNavel)),
            (
                "left 6 cm, 4 cm below navel",
                Some(Across::Measured(Left, cm(6.0))),
                Some(Height::FromNavel(-4.0)),
            ),
            ("left, 4 cm below navel", Some(Across::Side(Left)), Some(Height::FromNavel(-4.0))),
            ("left 4 cm below the navel", Some(Across::Side(Left)), Some(Height::FromNavel(-4.0))),
            (
                "6 cm to her right, 3 cm above umbilicus",
                Some(Across::Measured(Right, cm(6.0))),
                Some(Height::FromNavel(3.0)),
            ),
            (
                "right 60 mm, 8 cm above pubic bone",
                Some(Across::Measured(Right, cm(6.0))),
                Some(Height::FromPubicBone(cm(8.0))),
            ),
        ];
        for (text, across, height) in cases {
            assert_eq!(place(Piece::new(text)), Ok(Place { across, height }), "{text}");
        }
    }

    #[test]
    fn faults_of_places() {
        for (text, id, suggestion) in [
            ("left, abve navel", "unknown-word", Some("`above navel`")),
            ("left right", "said-twice", None),
            ("low on the right", "unclear-word", None),
            ("left 6", "unit-missing", Some("`6 cm`")),
            ("4 below navel", "unit-missing", Some("`4 cm`")),
            ("4 cm", "not-a-place", None),
            ("4 cm below xiphoid", "not-a-place", None),
            ("the", "not-a-place", None),
        ] {
            let fault = place(Piece::new(text)).unwrap_err();
            assert_eq!((fault.id, fault.suggestion.as_deref()), (id, suggestion), "{text}");
        }
        for text in ["142", "142 bpm", "140-146", "left 142"] {
            assert_eq!(heart(Piece::new(text)).unwrap_err().id, "rate-in-heart", "{text}");
        }
    }

    #[test]
    fn an_iliac_fossa_has_a_side() {
        for text in ["iliac fossa", "groin", "middle, iliac fossa"] {
            assert_eq!(place(Piece::new(text)).unwrap_err().id, "side-missing", "{text}");
        }
    }

    #[test]
    fn backs() {
        let cases = [
            ("left front", Some(Left), Some(BackTurn::Front)),
            ("left", Some(Left), None),
            ("her left side", Some(Left), None),
            ("left lateral", Some(Left), Some(BackTurn::Lateral)),
            ("left, towards her spine", Some(Left), Some(BackTurn::Spine)),
            ("left posterior", Some(Left), Some(BackTurn::Spine)),
            ("right anterior", Some(Right), Some(BackTurn::Front)),
            ("back to back on the right", Some(Right), Some(BackTurn::Spine)),
            ("towards her spine", None, Some(BackTurn::Spine)),
            ("front", None, Some(BackTurn::Front)),
            ("towards her ribs", None, Some(BackTurn::Ribs)),
            ("towards her feet", None, Some(BackTurn::Feet)),
        ];
        for (text, side, turn) in cases {
            assert_eq!(back(Piece::new(text)), Ok(Back { side, turn }), "{text}");
        }
        for (text, id) in [
            ("lateral", "side-missing"),
            ("left, towards her feet", "side-of-crosswise-back"),
            ("left flank", "unclear-word"),
            ("lefft front", "unknown-word"),
            ("left right", "said-twice"),
            ("front rear", "said-twice"),
            ("middle", "not-a-back"),
        ] {
            assert_eq!(back(Piece::new(text)).unwrap_err().id, id, "{text}");
        }
    }

    #[test]
    fn levels_of_the_fundus() {
        for (text, level) in [
            ("just above the pubic bone", FundusLevel::JustAbovePubicBone),
            ("2 fingers above navel", FundusLevel::FingersAboveNavel(2)),
            ("1 finger-breadth below the umbilicus", FundusLevel::FingersBelowNavel(1)),
            ("2 fingers below the xiphisternum", FundusLevel::FingersBelowXiphoid(2)),
        ] {
            assert_eq!(fundus_level(Piece::new(text)), Ok(level), "{text}");
        }
        assert_eq!(fundus_level(Piece::new("9 fingers above navel")).unwrap_err().id, "out-of-range");
        assert_eq!(fundus_level(Piece::new("2 fingers above pubic bone")).unwrap_err().id, "not-a-level");
        assert_eq!(
            fundus_level(Piece::new("at navle")).unwrap_err().suggestion.as_deref(),
            Some("`at navel`")
        );
    }
}
