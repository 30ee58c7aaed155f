//! Quantities with their units. In: a piece of text. Out: centimetres, grams, beats, weeks; or what is wrong with it.

use super::model::*;
use super::piece::{Fault, Piece, trailing_bracket};
use crate::report::quoted;
use crate::units::{Centimetres, Gestation, Grams};

/// Weeks an exam may have, in days: 4+0 to 45+0.
pub const WEEKS_DAYS: std::ops::RangeInclusive<u16> = 28..=315;
/// Lengths on the abdomen, cm.
pub const LENGTH_CM: std::ops::RangeInclusive<f64> = 1.0..=60.0;
/// Girth, cm.
pub const GIRTH_CM: std::ops::RangeInclusive<f64> = 1.0..=200.0;
/// Beats a minute.
pub const BEATS: std::ops::RangeInclusive<u16> = 30..=300;
/// Seconds a count may last.
pub const COUNT_SECONDS: std::ops::RangeInclusive<u16> = 5..=120;
/// Weights, grams.
pub const WEIGHT_G: std::ops::RangeInclusive<f64> = 100.0..=7000.0;

const LENGTH_UNITS: &str = "a length with its unit: cm, mm or in";
const WEIGHT_UNITS: &str = "a weight with its unit: kg, g, or lb and oz";

/// A number with what stands after it.
#[derive(Clone, Copy)]
struct Amount<'a> {
    number: f64,
    unit: Option<Piece<'a>>,
    whole: Piece<'a>,
}

/// Numbers and the words after each of them.
fn amounts<'a>(piece: Piece<'a>, expected: &str) -> Result<Vec<Amount<'a>>, Fault> {
    let mut found: Vec<Amount<'a>> = vec![];
    for token in piece.tokens() {
        let is_number = token.text.starts_with(|c: char| c.is_ascii_digit() || c == '.');
        match found.last_mut() {
            _ if is_number => found.push(Amount { number: number(token)?, unit: None, whole: token }),
            Some(last) if last.unit.is_none() && token.text != "," => last.unit = Some(token),
            Some(last) if token.text == "," && last.unit.is_some() => {}
            _ if token.text == "," => {
                return Err(Fault::at("not-a-number", token, format!("{} has a comma", quoted(piece.text)))
                    .expecting(format!("{expected}, with a point for decimals"))
                    .suggesting(format!("`{}`", piece.text.replace(',', "."))));
            }
            _ => {
                return Err(Fault::at(
                    "not-a-quantity",
                    token,
                    format!("{} is not part of a quantity", quoted(token.text)),
                )
                .expecting(expected));
            }
        }
    }
    if found.is_empty() {
        return Err(Fault::at("not-a-quantity", piece, format!("{} is not a quantity", quoted(piece.text)))
            .expecting(expected));
    }
    Ok(found)
}

fn number(token: Piece<'_>) -> Result<f64, Fault> {
    token.text.parse::<f64>().ok().filter(|n| n.is_finite() && *n < 1e6).ok_or_else(|| {
        Fault::at(
            "not-a-number",
            token,
            format!("{} is not a number that can stand here", quoted(token.text)),
        )
    })
}

/// A length in cm, rounded to 0.01 cm; `inches` and `mm` are converted.
pub fn length(piece: Piece<'_>, limits: std::ops::RangeInclusive<f64>) -> Result<Centimetres, Fault> {
    let found = amounts(piece, LENGTH_UNITS)?;
    let [amount] = found[..] else {
        return Err(Fault::at(
            "not-a-quantity",
            piece,
            format!("{} is more than one length", quoted(piece.text)),
        )
        .expecting(LENGTH_UNITS));
    };
    let length = with_unit(amount)?;
    if !limits.contains(&length.get()) {
        return Err(Fault::at("out-of-range", piece, format!("{} is out of range", quoted(piece.text)))
            .expecting(format!("{} cm to {} cm", limits.start(), limits.end())));
    }
    Ok(length)
}

fn with_unit(amount: Amount<'_>) -> Result<Centimetres, Fault> {
    let Some(unit) = amount.unit else {
        let shown = amount.whole.text;
        return Err(Fault::at("unit-missing", amount.whole, format!("{} has no unit", quoted(shown)))
            .expecting(LENGTH_UNITS)
            .suggesting(format!("`{shown} cm`")));
    };
    let length = match length_unit(unit.text) {
        Some(LengthUnit::Centimetre) => Centimetres::new(amount.number),
        Some(LengthUnit::Millimetre) => Centimetres::new(amount.number / 10.0),
        Some(LengthUnit::Inch) => Centimetres::from_inches(amount.number),
        None => {
            return Err(Fault::at(
                "wrong-unit",
                unit,
                format!("{} is not a unit of length used here", quoted(unit.text)),
            )
            .expecting(LENGTH_UNITS));
        }
    };
    length.and_then(|cm| Centimetres::new((cm.get() * 100.0).round() / 100.0)).ok_or_else(|| {
        Fault::at("not-a-number", amount.whole, format!("{} is not a length", quoted(amount.whole.text)))
    })
}

/// Units of length that are understood.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LengthUnit {
    /// cm
    Centimetre,
    /// mm
    Millimetre,
    /// in
    Inch,
}

/// The unit a word names.
pub fn length_unit(word: &str) -> Option<LengthUnit> {
    match word.to_lowercase().trim_end_matches('.') {
        "cm" | "cms" | "centimetre" | "centimetres" | "centimeter" | "centimeters" => {
            Some(LengthUnit::Centimetre)
        }
        "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" => Some(LengthUnit::Millimetre),
        "in" | "inch" | "inches" | "\"" | "″" => Some(LengthUnit::Inch),
        _ => None,
    }
}

/// A number token and the unit token after it, as a length within `limits`.
pub fn length_of(
    number_token: Piece<'_>,
    unit: Piece<'_>,
    limits: std::ops::RangeInclusive<f64>,
) -> Result<Centimetres, Fault> {
    let length = with_unit(Amount { number: number(number_token)?, unit: Some(unit), whole: number_token })?;
    if !limits.contains(&length.get()) {
        return Err(Fault::at(
            "out-of-range",
            number_token,
            format!("{} {} is out of range", number_token.text, unit.text),
        )
        .expecting(format!("{} cm to {} cm", limits.start(), limits.end())));
    }
    Ok(length)
}

/// A weight, or two with `to` or a dash between them; rounded to whole grams.
pub fn weight_range(piece: Piece<'_>) -> Result<WeightRange, Fault> {
    let (low, high) = range_ends(piece);
    let Some(high) = high else {
        let weight = weight(low)?;
        return Ok(WeightRange { low: weight, high: weight });
    };
    // "3.0 to 3.4 kg": the first number borrows the unit of the second.
    let unit_of_high = amounts(high, WEIGHT_UNITS)?.last().and_then(|amount| amount.unit);
    let (low, high) = (weight_or(low, unit_of_high)?, weight(high)?);
    in_order(piece, low, high)?;
    Ok(WeightRange { low, high })
}

fn weight_or(piece: Piece<'_>, unit: Option<Piece<'_>>) -> Result<Grams, Fault> {
    let mut found = amounts(piece, WEIGHT_UNITS)?;
    if let [only] = &mut found[..]
        && only.unit.is_none()
    {
        only.unit = unit;
    }
    weight_of(piece, &found)
}

/// One weight, rounded to whole grams.
pub fn weight(piece: Piece<'_>) -> Result<Grams, Fault> {
    weight_of(piece, &amounts(piece, WEIGHT_UNITS)?)
}

fn weight_of(piece: Piece<'_>, found: &[Amount<'_>]) -> Result<Grams, Fault> {
    let mut units = vec![];
    for amount in found {
        let Some(unit) = amount.unit else {
            return Err(Fault::at(
                "unit-missing",
                amount.whole,
                format!("{} has no unit", quoted(amount.whole.text)),
            )
            .expecting(WEIGHT_UNITS)
            .suggesting(if amount.number < 20.0 {
                format!("`{} kg`", amount.whole.text)
            } else {
                format!("`{} g`", amount.whole.text)
            }));
        };
        units.push(match unit.text.to_lowercase().trim_end_matches('.') {
            "kg" | "kgs" | "kilo" | "kilos" | "kilogram" | "kilograms" => "kg",
            "g" | "gr" | "gram" | "grams" => "g",
            "lb" | "lbs" | "pound" | "pounds" => "lb",
            "oz" | "ounce" | "ounces" => "oz",
            _ => {
                return Err(Fault::at(
                    "wrong-unit",
                    unit,
                    format!("{} is not a unit of weight used here", quoted(unit.text)),
                )
                .expecting(WEIGHT_UNITS));
            }
        });
    }
    let grams = match (found, &units[..]) {
        ([one], ["kg"]) => Grams::new(one.number * 1000.0),
        ([one], ["g"]) => Grams::new(one.number),
        ([one], ["lb"]) => Grams::from_pounds(one.number, 0.0),
        ([lb, oz], ["lb", "oz"]) if oz.number < 16.0 => Grams::from_pounds(lb.number, oz.number),
        _ => None,
    };
    let Some(grams) = grams.and_then(|g| Grams::new(g.get().round())) else {
        return Err(Fault::at("not-a-quantity", piece, format!("{} is not one weight", quoted(piece.text)))
            .expecting(WEIGHT_UNITS));
    };
    if !WEIGHT_G.contains(&grams.get()) {
        return Err(Fault::at("out-of-range", piece, format!("{} is out of range", quoted(piece.text)))
            .expecting("100 g to 7 kg"));
    }
    Ok(grams)
}

/// `2.9 kg (34+0)`; the weeks may be left out.
pub fn scan_weight(piece: Piece<'_>) -> Result<ScanWeight, Fault> {
    match trailing_bracket(piece) {
        Some((before, inside)) => Ok(ScanWeight { weight: weight(before)?, at: Some(weeks(inside)?) }),
        None => Ok(ScanWeight { weight: weight(piece)?, at: None }),
    }
}

/// The two ends of `a to b`, `a-b` or `a–b`.
fn range_ends(piece: Piece<'_>) -> (Piece<'_>, Option<Piece<'_>>) {
    for between in [" to ", "–", "-", "—"] {
        if let Some(at) = piece.text.find(between) {
            let high = piece.part(at + between.len()..piece.text.len()).trim();
            return (piece.part(0..at).trim(), Some(high));
        }
    }
    (piece, None)
}

fn in_order<T: PartialOrd>(piece: Piece<'_>, low: T, high: T) -> Result<(), Fault> {
    if low <= high {
        return Ok(());
    }
    Err(Fault::at("range-backwards", piece, format!("{} runs from high to low", quoted(piece.text)))
        .expecting("the lower first"))
}

/// Beats a minute, one number; `bpm` and the like may follow.
pub fn beats(piece: Piece<'_>) -> Result<u16, Fault> {
    let mut text = piece;
    for unit in ["beats per minute", "beats a minute", "beats/min", "bpm", "/min", "per minute", "a minute"] {
        if let Some(rest) = text.text.strip_suffix(unit) {
            text = text.part(0..rest.len()).trim();
            break;
        }
    }
    let beats: u16 = whole_number(text, "beats a minute, a whole number")?;
    if !BEATS.contains(&beats) {
        return Err(Fault::at(
            "out-of-range",
            piece,
            format!("{} beats a minute is out of range", quoted(text.text)),
        )
        .expecting(format!("{} to {}", BEATS.start(), BEATS.end())));
    }
    Ok(beats)
}

/// A rate or a range of rates.
pub fn rate(piece: Piece<'_>) -> Result<Rate, Fault> {
    let (low, high) = range_ends(piece);
    let Some(high) = high else {
        let rate = beats(low)?;
        return Ok(Rate { low: rate, high: rate });
    };
    let (low, high) = (beats(low)?, beats(high)?);
    in_order(piece, low, high)?;
    Ok(Rate { low, high })
}

/// A whole number.
pub fn whole_number(piece: Piece<'_>, expected: &str) -> Result<u16, Fault> {
    let piece = piece.trim();
    let digits = !piece.text.is_empty() && piece.text.bytes().all(|b| b.is_ascii_digit());
    piece.text.parse::<u16>().ok().filter(|_| digits).ok_or_else(|| {
        Fault::at(
            "not-a-number",
            piece,
            format!("{} is not a whole number that can stand here", quoted(piece.text)),
        )
        .expecting(expected)
    })
}

/// `36 in 15 s`.
pub fn count(piece: Piece<'_>) -> Result<HeartCount, Fault> {
    const EXPECTED: &str = "beats and seconds such as `36 in 15 s`";
    let words: Vec<Piece<'_>> = piece
        .tokens()
        .into_iter()
        .filter(|t| !["beats", "beat"].contains(&t.text.to_lowercase().as_str()))
        .collect();
    let (beats, seconds, unit) = match &words[..] {
        [beats, between, seconds, unit]
            if ["in", "/", "per", "over"].contains(&between.text.to_lowercase().as_str()) =>
        {
            (*beats, *seconds, *unit)
        }
        [beats, between, seconds] if ["in", "/"].contains(&between.text) => {
            return Err(Fault::at("unit-missing", *seconds, format!("{} has no unit", quoted(seconds.text)))
                .expecting(EXPECTED)
                .suggesting(format!("`{} in {} s`", beats.text, seconds.text)));
        }
        _ => {
            return Err(Fault::at("not-a-count", piece, format!("{} is not a count", quoted(piece.text)))
                .expecting(EXPECTED));
        }
    };
    let per_unit = match unit.text.to_lowercase().as_str() {
        "s" | "sec" | "secs" | "second" | "seconds" => 1,
        "min" | "minute" | "minutes" => 60,
        _ => {
            return Err(Fault::at(
                "wrong-unit",
                unit,
                format!("{} is not a unit of time used here", quoted(unit.text)),
            )
            .expecting("s or min"));
        }
    };
    let count = HeartCount {
        beats: whole_number(beats, EXPECTED)?,
        seconds: whole_number(seconds, EXPECTED)?.saturating_mul(per_unit),
    };
    if !COUNT_SECONDS.contains(&count.seconds) {
        return Err(Fault::at(
            "out-of-range",
            piece,
            format!("{} is too short or too long a count", quoted(piece.text)),
        )
        .expecting(format!("{} to {} s", COUNT_SECONDS.start(), COUNT_SECONDS.end())));
    }
    let rate = f64::from(count.beats) * 60.0 / f64::from(count.seconds);
    if !(f64::from(*BEATS.start())..=f64::from(*BEATS.end())).contains(&rate) {
        return Err(Fault::at(
            "out-of-range",
            piece,
            format!("{} is {rate:.0} beats a minute, out of range", quoted(piece.text)),
        )
        .expecting(format!("{} to {} beats a minute", BEATS.start(), BEATS.end())));
    }
    Ok(count)
}

/// Weeks and days: `37+0`, `37w0d`, `37 weeks`, `37 weeks 3 days`; 4+0 to 45+0.
pub fn weeks(piece: Piece<'_>) -> Result<Gestation, Fault> {
    const EXPECTED: &str = "weeks and days such as `37+0`, `37w0d` or `37 weeks`";
    let piece = piece.trim();
    let lower = piece.text.to_lowercase();
    let bad = || {
        Fault::at("not-weeks", piece, format!("{} is not weeks and days", quoted(piece.text)))
            .expecting(EXPECTED)
    };
    let compact: String = lower.split_whitespace().collect();
    if compact.starts_with(|c: char| c.is_ascii_digit()) && compact.parse::<f64>().is_ok() {
        let text = compact.as_str();
        let fault = match text.split_once('.') {
            Some(_) => Fault::at(
                "decimal-weeks",
                piece,
                format!("{} can be read as days or as tenths of a week", quoted(text)),
            ),
            None => Fault::at(
                "unit-missing",
                piece,
                format!("{} does not say whether it is weeks and how many days", quoted(text)),
            )
            .suggesting(format!("`{text}+0`")),
        };
        return Err(fault.expecting(EXPECTED));
    }
    let numbers: Vec<&str> =
        compact.split(|c: char| !c.is_ascii_digit()).filter(|part| !part.is_empty()).collect();
    let shape: String = compact.chars().filter(|c| !c.is_ascii_digit()).collect();
    let forms = [
        "+",
        "w",
        "wk",
        "wks",
        "week",
        "weeks",
        "wd",
        "wkd",
        "wksd",
        "weeksday",
        "weeksdays",
        "weeks+days",
        "weeksand days",
        "weeksanddays",
        "weeksandday",
        "weekdays",
    ];
    let starts_right = compact.starts_with(|c: char| c.is_ascii_digit());
    if !starts_right || !forms.contains(&shape.as_str()) || numbers.is_empty() || numbers.len() > 2 {
        return Err(bad());
    }
    let parse = |text: &str| text.parse::<u16>().map_err(|_| bad());
    let w = parse(numbers[0])?;
    let d = numbers.get(1).map_or(Ok(0), |text| parse(text))?;
    if shape == "+" && numbers.len() < 2 {
        return Err(bad());
    }
    if d > 6 {
        return Err(Fault::at(
            "out-of-range",
            piece,
            format!("{} has more than 6 days after the weeks", quoted(piece.text)),
        )
        .expecting("days from 0 to 6"));
    }
    Gestation::new(w, d).filter(|age| WEEKS_DAYS.contains(&age.days())).ok_or_else(|| {
        Fault::at("out-of-range", piece, format!("{} is out of range", quoted(piece.text)))
            .expecting("weeks from 4+0 to 45+0")
    })
}

/// `2/5`, `2/5 palpable`: fifths of the head above the brim.
pub fn fifths(piece: Piece<'_>) -> Result<Fifths, Fault> {
    const EXPECTED: &str = "fifths of the head palpable above the brim, from `5/5` to `0/5`";
    let tokens = piece.tokens();
    let rest: Vec<String> = tokens.iter().skip(3).map(|t| t.text.to_lowercase()).collect();
    let rest_known =
        ["", "palpable", "palp", "palp.", "above the brim", "above brim", "palpable above the brim", "felt"]
            .contains(&rest.join(" ").as_str());
    match &tokens[..] {
        [k, slash, five, ..] if slash.text == "/" && five.text == "5" && rest_known => {
            let k = whole_number(*k, EXPECTED)?;
            u8::try_from(k).ok().and_then(Fifths::new).ok_or_else(|| {
                Fault::at(
                    "out-of-range",
                    piece,
                    format!("{} is more than the whole head", quoted(piece.text)),
                )
                .expecting(EXPECTED)
            })
        }
        _ => Err(Fault::at("not-fifths", piece, format!("{} is not fifths of the head", quoted(piece.text)))
            .expecting(EXPECTED)),
    }
}

/// `34+0 32 cm`, also `32 cm at 34+0`.
pub fn earlier_tape(piece: Piece<'_>) -> Result<EarlierTape, Fault> {
    let words: Vec<Piece<'_>> =
        piece.split(&[' ', ',', ':']).into_iter().filter(|p| !p.text.is_empty()).collect();
    let Some(which) = words.iter().position(|word| word.text.contains('+')) else {
        return Err(Fault::at(
            "not-an-earlier-tape",
            piece,
            format!("{} does not say at which weeks", quoted(piece.text)),
        )
        .expecting("weeks and a length such as `34+0 32 cm`"));
    };
    let at = weeks(words[which])?;
    let rest: Vec<Piece<'_>> = words
        .iter()
        .enumerate()
        .filter(|(n, word)| *n != which && !["at", "on"].contains(&word.text))
        .map(|(_, word)| *word)
        .collect();
    let (Some(first), Some(last)) = (rest.first(), rest.last()) else {
        return Err(Fault::at("not-an-earlier-tape", piece, format!("{} has no length", quoted(piece.text)))
            .expecting("weeks and a length such as `34+0 32 cm`"));
    };
    let from = first.at - piece.at;
    let height = length(piece.part(from..last.range().end - piece.at), LENGTH_CM)?;
    Ok(EarlierTape { at, height })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn id<T>(result: Result<T, Fault>) -> &'static str {
        result.err().map_or("none", |fault| fault.id)
    }

    #[test]
    fn lengths_in_three_units() {
        for (text, cm) in
            [("35 cm", 35.0), ("35.5cm", 35.5), ("350 mm", 35.0), ("14 in", 35.56), ("13.5 inches", 34.29)]
        {
            assert_eq!(length(Piece::new(text), LENGTH_CM).map(Centimetres::get), Ok(cm), "{text}");
        }
        assert_eq!(id(length(Piece::new("35"), LENGTH_CM)), "unit-missing");
        assert_eq!(id(length(Piece::new("35 kg"), LENGTH_CM)), "wrong-unit");
        assert_eq!(id(length(Piece::new("61 cm"), LENGTH_CM)), "out-of-range");
        assert_eq!(id(length(Piece::new("NaN cm"), LENGTH_CM)), "not-a-quantity");
        assert_eq!(id(length(Piece::new("35,5 cm"), LENGTH_CM)), "not-a-number");
    }

    #[test]
    fn weights_and_ranges() {
        for (text, low, high) in [
            ("3.2 kg", 3200.0, 3200.0),
            ("3200 g", 3200.0, 3200.0),
            ("7 lb 8 oz", 3402.0, 3402.0),
            ("6 lb 8 oz to 7 lb", 2948.0, 3175.0),
            ("3.0 to 3.4 kg", 3000.0, 3400.0),
            ("3.0-3.4 kg", 3000.0, 3400.0),
        ] {
            let range = weight_range(Piece::new(text)).unwrap();
            assert_eq!((range.low.get(), range.high.get()), (low, high), "{text}");
        }
        assert_eq!(id(weight_range(Piece::new("3.4 to 3.0 kg"))), "range-backwards");
        assert_eq!(id(weight_range(Piece::new("3.2"))), "unit-missing");
        assert_eq!(id(weight_range(Piece::new("7 lb 17 oz"))), "not-a-quantity");
    }

    #[test]
    fn weeks_in_their_forms() {
        for text in ["37+0", "37w0d", "37 weeks", "37 Weeks 0 days", "37wk", "37 + 0"] {
            assert_eq!(weeks(Piece::new(text)).map(|w| w.days()), Ok(259), "{text}");
        }
        assert_eq!(id(weeks(Piece::new("37.2"))), "decimal-weeks");
        assert_eq!(id(weeks(Piece::new("37"))), "unit-missing");
        assert_eq!(id(weeks(Piece::new("37+7"))), "out-of-range");
        assert_eq!(id(weeks(Piece::new("45+1"))), "out-of-range");
        assert_eq!(id(weeks(Piece::new("3+6"))), "out-of-range");
        assert_eq!(id(weeks(Piece::new("+37"))), "not-weeks");
        assert_eq!(id(weeks(Piece::new("term"))), "not-weeks");
    }

    #[test]
    fn counts_rates_and_fifths() {
        assert_eq!(count(Piece::new("36 in 15 s")), Ok(HeartCount { beats: 36, seconds: 15 }));
        assert_eq!(count(Piece::new("140 in 1 min")), Ok(HeartCount { beats: 140, seconds: 60 }));
        assert_eq!(id(count(Piece::new("36 in 15"))), "unit-missing");
        assert_eq!(id(count(Piece::new("3 in 60 s"))), "out-of-range");
        assert_eq!(rate(Piece::new("140-146")), Ok(Rate { low: 140, high: 146 }));
        assert_eq!(rate(Piece::new("142 bpm")), Ok(Rate { low: 142, high: 142 }));
        assert_eq!(id(rate(Piece::new("29"))), "out-of-range");
        assert_eq!(id(rate(Piece::new("301"))), "out-of-range");
        assert_eq!(fifths(Piece::new("2/5 palpable")).map(Fifths::get), Ok(2));
        assert_eq!(id(fifths(Piece::new("2"))), "not-fifths");
        assert_eq!(id(fifths(Piece::new("6/5"))), "out-of-range");
    }

    #[test]
    fn earlier_tapes() {
        for text in ["34+0 32 cm", "34+0: 32cm", "32 cm at 34+0"] {
            let tape = earlier_tape(Piece::new(text)).unwrap();
            assert_eq!((tape.at.days(), tape.height.get()), (238, 32.0), "{text}");
        }
        assert_eq!(id(earlier_tape(Piece::new("32 cm"))), "not-an-earlier-tape");
    }
}
