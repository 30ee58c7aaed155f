//! Measured signs: temperature, pressure, breathing, contractions, hours, station, fingers. In: a piece of text. Out: the value,
//! or what is wrong with it.

use super::model::*;
use super::piece::{Fault, Piece};
use super::quantity::{length, length_unit, whole_number};
use super::words::Vocabulary;
use crate::report::quoted;
use std::ops::RangeInclusive;

/// Temperatures, tenths of a degree Celsius.
const TENTHS: RangeInclusive<u16> = 300..=440;
/// The upper and the lower number of a blood pressure, mmHg.
const SYSTOLIC: RangeInclusive<u16> = 40..=300;
const DIASTOLIC: RangeInclusive<u16> = 20..=200;
/// Breaths a minute.
const BREATHS: RangeInclusive<u16> = 4..=80;
/// Contractions in ten minutes.
const CONTRACTIONS: RangeInclusive<u16> = 0..=15;
/// How long a contraction lasts, seconds.
const LASTING: RangeInclusive<u16> = 5..=1200;
/// Hours since waters broke.
const HOURS: RangeInclusive<u16> = 0..=2500;
/// Above (negative) and below the spines, cm.
const STATION: RangeInclusive<i8> = -5..=5;
/// Finger-breadths between the muscles.
const FINGERS: RangeInclusive<u16> = 1..=10;
/// Between the muscles, cm.
const GAP: RangeInclusive<f64> = 0.5..=20.0;
/// Pregnancies.
const PREGNANCIES: RangeInclusive<u16> = 1..=30;

fn out_of_range(piece: Piece<'_>, range: String) -> Fault {
    Fault::at("out-of-range", piece, format!("{} is out of range", quoted(piece.text))).expecting(range)
}

fn not_a(id: &'static str, piece: Piece<'_>, what: &str, expected: &str) -> Fault {
    Fault::at(id, piece, format!("{} is not {what}", quoted(piece.text))).expecting(expected)
}

/// `piece` without one of these units at its end, and the unit that stood there.
fn without_unit<'a>(piece: Piece<'a>, units: &[&'static str]) -> (Piece<'a>, Option<&'static str>) {
    let lower = piece.text.to_lowercase();
    let longest = units.iter().filter(|unit| lower.ends_with(**unit)).max_by_key(|unit| unit.len());
    match longest {
        Some(unit) if lower.len() == piece.text.len() => {
            (piece.part(0..piece.text.len() - unit.len()).trim(), Some(unit))
        }
        _ => (piece, None),
    }
}

/// The two ends of `a-b` or `a to b`; one number is both.
fn ends(piece: Piece<'_>) -> (Piece<'_>, Piece<'_>) {
    for between in [" to ", "–", "-"] {
        if let Some(at) = piece.text.find(between) {
            let high = piece.part(at + between.len()..piece.text.len()).trim();
            return (piece.part(0..at).trim(), high);
        }
    }
    (piece, piece)
}

fn whole_in(piece: Piece<'_>, range: &RangeInclusive<u16>, expected: &str) -> Result<u16, Fault> {
    let number = whole_number(piece, expected)?;
    if range.contains(&number) {
        return Ok(number);
    }
    Err(out_of_range(piece, format!("{} to {}", range.start(), range.end())))
}

/// `38.2`, `38.2 C`, `100.4 F`: nobody's temperature is a number of the other scale.
pub fn temperature(piece: Piece<'_>) -> Result<Temperature, Fault> {
    const EXPECTED: &str = "a temperature such as `37.2 C` or `99.0 F`";
    const UNITS: [&str; 10] =
        ["°c", "° c", "c", "celsius", "degrees c", "°f", "° f", "f", "fahrenheit", "degrees f"];
    let (number, unit) = without_unit(piece.trim(), &UNITS);
    let (number, _) = without_unit(number, &["degrees", "°"]);
    let plain = number.text.bytes().all(|b| b.is_ascii_digit() || b == b'.');
    let value = number.text.parse::<f64>().ok().filter(|_| plain);
    let Some(value) = value else { return Err(not_a("not-a-quantity", piece, "a temperature", EXPECTED)) };
    let fahrenheit = match unit {
        Some(unit) => unit.contains('f'),
        None => value >= 80.0,
    };
    let celsius = if fahrenheit { (value - 32.0) / 1.8 } else { value };
    let tenths = (celsius * 10.0).round();
    if !(f64::from(*TENTHS.start())..=f64::from(*TENTHS.end())).contains(&tenths) {
        return Err(out_of_range(piece, "30 C to 44 C".to_owned()));
    }
    Ok(Temperature::from_tenths(tenths as u16))
}

/// `128/82`, `128 over 82`, with `mmHg` or not.
pub fn blood_pressure(piece: Piece<'_>) -> Result<BloodPressure, Fault> {
    const EXPECTED: &str = "two numbers such as `128/82`";
    let (numbers, _) = without_unit(piece.trim(), &["mmhg", "mm hg"]);
    let bad = || not_a("not-a-pressure", piece, "a blood pressure", EXPECTED);
    let at = [("/", 1), (" over ", 6)];
    let Some((from, length)) = at.iter().find_map(|(mark, n)| Some((numbers.text.find(mark)?, *n))) else {
        return Err(bad());
    };
    let upper = numbers.part(0..from).trim();
    let lower = numbers.part(from + length..numbers.text.len()).trim();
    let pressure = BloodPressure {
        systolic: whole_in(upper, &SYSTOLIC, EXPECTED)?,
        diastolic: whole_in(lower, &DIASTOLIC, EXPECTED)?,
    };
    if pressure.systolic <= pressure.diastolic {
        return Err(bad().expecting("the upper number first, such as `128/82`"));
    }
    Ok(pressure)
}

/// Breaths a minute.
pub fn breaths(piece: Piece<'_>) -> Result<u16, Fault> {
    let units = ["breaths a minute", "breaths per minute", "a minute", "per minute", "/min", "breaths"];
    let (number, _) = without_unit(piece.trim(), &units);
    whole_in(number, &BREATHS, "breaths a minute such as 16")
}

/// Contractions in ten minutes: `3`, `3-4`, `3 in 10`, `3:10`.
pub fn tally(piece: Piece<'_>) -> Result<Tally, Fault> {
    const EXPECTED: &str = "contractions in ten minutes such as 3 or `3-4`";
    let (rest, _) = without_unit(piece.trim(), &["minutes", "min", "mins"]);
    let (rest, _) = without_unit(rest, &["in 10", ":10", "/10", "in ten", ": 10", "/ 10"]);
    let (low, high) = ends(rest);
    let (low, high) = (whole_in(low, &CONTRACTIONS, EXPECTED)?, whole_in(high, &CONTRACTIONS, EXPECTED)?);
    if low > high {
        return Err(not_a("range-backwards", piece, "from low to high", "the lower first"));
    }
    Ok(Tally { low: low as u8, high: high as u8 })
}

/// How long contractions last: `45 s`, `40-60 s`, `1 min`, `2 minutes`.
pub fn lasting(piece: Piece<'_>) -> Result<Lasting, Fault> {
    const EXPECTED: &str = "a time such as `45 s`, `40 to 60 s` or `2 min`";
    const UNITS: [&str; 10] =
        ["s", "sec", "secs", "seconds", "second", "min", "mins", "minutes", "minute", "m"];
    let (rest, unit) = without_unit(piece.trim(), &UNITS);
    let Some(unit) = unit else {
        return Err(Fault::at("unit-missing", piece, format!("{} has no unit", quoted(piece.text)))
            .expecting(EXPECTED)
            .suggesting(format!("`{} s`", piece.text)));
    };
    let times = if unit.starts_with('m') { 60 } else { 1 };
    let (low, high) = ends(rest);
    let seconds = |piece: Piece<'_>| -> Result<u16, Fault> {
        let seconds = whole_number(piece, EXPECTED)?.saturating_mul(times);
        if LASTING.contains(&seconds) {
            return Ok(seconds);
        }
        Err(out_of_range(piece, format!("{} to {} s", LASTING.start(), LASTING.end())))
    };
    let (low, high) = (seconds(low)?, seconds(high)?);
    if low > high {
        return Err(not_a("range-backwards", piece, "from low to high", "the lower first"));
    }
    Ok(Lasting { low, high })
}

/// Hours since the waters broke: `6 h`, `2 days`.
pub fn hours(piece: Piece<'_>) -> Result<Hours, Fault> {
    const EXPECTED: &str = "hours such as `6 h`";
    const UNITS: [&str; 9] = ["h", "hr", "hrs", "hour", "hours", "d", "day", "days", "weeks"];
    let (rest, unit) = without_unit(piece.trim(), &UNITS);
    let times = match unit {
        Some("weeks") => 168,
        Some("d" | "day" | "days") => 24,
        _ => 1,
    };
    let hours = whole_number(rest, EXPECTED)?.saturating_mul(times);
    if HOURS.contains(&hours) {
        return Ok(Hours(hours));
    }
    Err(out_of_range(piece, format!("{} to {} h", HOURS.start(), HOURS.end())))
}

/// `-2`, `+1`, `0`, `minus 2`, `2 above spines`, `at spines`.
pub fn station(piece: Piece<'_>) -> Result<Station, Fault> {
    const EXPECTED: &str = "cm above or below the spines such as `-2`, `0` or `+1`";
    let lower = piece.text.trim().to_lowercase().replace(['−', '–'], "-");
    let folded =
        lower.split_whitespace().filter(|word| !["cm", "the"].contains(word)).collect::<Vec<_>>().join(" ");
    let (sign, number) = match folded.as_str() {
        "at spines" | "spines" => (1, "0"),
        text => {
            if let Some(rest) = text.strip_suffix(" above spines") {
                (-1, rest)
            } else if let Some(rest) = text.strip_suffix(" below spines") {
                (1, rest)
            } else if let Some(rest) = text.strip_prefix("minus ").or(text.strip_prefix('-')) {
                (-1, rest)
            } else if let Some(rest) = text.strip_prefix("plus ").or(text.strip_prefix('+')) {
                (1, rest)
            } else if text == "0" {
                (1, "0")
            } else {
                let fault = not_a("not-a-station", piece, "a station with its sign", EXPECTED);
                return Err(fault);
            }
        }
    };
    let value =
        number.trim().parse::<i8>().ok().filter(|_| number.trim().bytes().all(|b| b.is_ascii_digit()));
    let Some(value) = value else { return Err(not_a("not-a-station", piece, "a station", EXPECTED)) };
    let value = sign * value;
    if STATION.contains(&value) {
        return Ok(Station(value));
    }
    Err(out_of_range(piece, format!("{} to +{}", STATION.start(), STATION.end())))
}

/// `2 fingers`, `3 cm`, `felt`.
pub fn muscle_gap(piece: Piece<'_>) -> Result<MuscleGap, Fault> {
    if let Some(felt) = MuscleGap::find(piece.text) {
        return Ok(felt);
    }
    if piece.text.split(|c: char| !c.is_alphabetic()).any(|word| length_unit(word).is_some()) {
        return Ok(MuscleGap::Wide(length(piece, GAP)?));
    }
    let units = ["finger", "fingers", "finger-breadths", "finger breadths", "finger-breadth", "fb"];
    let (number, _) = without_unit(piece.trim(), &units);
    Ok(MuscleGap::Fingers(whole_in(
        number,
        &FINGERS,
        "`felt`, finger-breadths such as `2 fingers`, or `3 cm`",
    )? as u8))
}

/// Pregnancies, this one included.
pub fn pregnancies(piece: Piece<'_>) -> Result<u8, Fault> {
    Ok(whole_in(piece, &PREGNANCIES, "a number such as 2")? as u8)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn id<T>(result: Result<T, Fault>) -> &'static str {
        result.err().map_or("none", |fault| fault.id)
    }

    #[test]
    fn a_temperature_on_either_scale() {
        for (text, tenths) in [
            ("38", 380),
            ("38.0 C", 380),
            ("37.9°C", 379),
            ("100.4 F", 380),
            ("100.3 F", 379),
            ("100.4", 380),
            ("98.6 degrees F", 370),
            ("36.85", 369),
        ] {
            assert_eq!(temperature(Piece::new(text)).map(Temperature::tenths), Ok(tenths), "{text}");
        }
        assert_eq!(id(temperature(Piece::new("380"))), "out-of-range");
        assert_eq!(id(temperature(Piece::new("29.9 C"))), "out-of-range");
        assert_eq!(id(temperature(Piece::new("warm"))), "not-a-quantity");
    }

    #[test]
    fn two_numbers_of_a_pressure() {
        for text in ["140/90", "140 / 90 mmHg", "140 over 90"] {
            assert_eq!(blood_pressure(Piece::new(text)), Ok(BloodPressure { systolic: 140, diastolic: 90 }));
        }
        assert_eq!(id(blood_pressure(Piece::new("90/140"))), "not-a-pressure");
        assert_eq!(id(blood_pressure(Piece::new("140"))), "not-a-pressure");
        assert_eq!(id(blood_pressure(Piece::new("400/90"))), "out-of-range");
    }

    #[test]
    fn contractions_hours_and_station() {
        assert_eq!(tally(Piece::new("3 in 10")), Ok(Tally { low: 3, high: 3 }));
        assert_eq!(tally(Piece::new("3-4:10")), Ok(Tally { low: 3, high: 4 }));
        assert_eq!(id(tally(Piece::new("4-3"))), "range-backwards");
        assert_eq!(lasting(Piece::new("40-60 s")), Ok(Lasting { low: 40, high: 60 }));
        assert_eq!(lasting(Piece::new("2 min")), Ok(Lasting { low: 120, high: 120 }));
        assert_eq!(id(lasting(Piece::new("45"))), "unit-missing");
        assert_eq!(hours(Piece::new("2 days")), Ok(Hours(48)));
        assert_eq!(hours(Piece::new("18h")), Ok(Hours(18)));
        for (text, cm) in [("-2", -2), ("+1", 1), ("0", 0), ("minus 2", -2), ("2 cm above the spines", -2)] {
            assert_eq!(station(Piece::new(text)), Ok(Station(cm)), "{text}");
        }
        assert_eq!(id(station(Piece::new("2"))), "not-a-station");
        assert_eq!(id(station(Piece::new("+6"))), "out-of-range");
        assert_eq!(muscle_gap(Piece::new("2 fingers")), Ok(MuscleGap::Fingers(2)));
        assert_eq!(muscle_gap(Piece::new("felt")), Ok(MuscleGap::Felt));
        let wide = |text| {
            muscle_gap(Piece::new(text)).map(|gap| matches!(gap, MuscleGap::Wide(cm) if cm.get() == 2.5))
        };
        assert_eq!((wide("2.5 cm"), wide("25 mm")), (Ok(true), Ok(true)));
        assert_eq!(id(muscle_gap(Piece::new("40 cm"))), "out-of-range");
    }
}
