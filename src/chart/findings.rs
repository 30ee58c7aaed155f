//! Findings as values that can be coded. In: an exam with its conclusions. Out: a row for each finding with its state; what was
//! not examined has none.

use super::codes::{self, Code};
use crate::exam::keys::{self, Scope};
use crate::exam::say::{self, Canonical};
use crate::exam::{Baby, Conclusion, Exam, Finding, Found, HeartHeard, KnownBy, Mother, Place, Presentation};
use crate::reckon::heart_rate;

/// A unit: as people read it, and in UCUM.
pub type Unit = (&'static str, &'static str);
const CM: Unit = ("cm", "cm");
const GRAMS: Unit = ("g", "g");
const BEATS: Unit = ("beats/minute", "/min");
const FIFTHS: Unit = ("fifths palpable above the brim", "{fifths}");
const DAYS: Unit = ("d", "d");
const CELSIUS: Unit = ("degrees C", "Cel");
const BREATHS: Unit = ("breaths/minute", "/min");
const HOURS: Unit = ("h", "h");

/// A value.
pub enum Value {
    /// A number of a unit.
    Quantity(f64, Unit),
    /// From one number to another.
    Range(f64, f64, Unit),
    /// A code with its words.
    Coded(Code, String),
    /// Words of the exam language.
    Words(String),
}

/// The state of a finding that was examined or tried.
pub enum State {
    /// A value.
    Found(Value),
    /// Looked for, and absent; in words.
    Absent(String),
    /// Not tried; in words.
    NotTried(String),
    /// Tried, could not tell; in words.
    CouldNotTell(String),
}

/// How it was found by someone's own hands, ear, tape or asking.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum By {
    /// By hand.
    Palpation,
    /// By listening.
    Listening,
    /// With a tape.
    Tape,
    /// By looking.
    Looking,
    /// By asking, or from her notes.
    Asking,
    /// By a vaginal examination.
    VaginalExamination,
}

/// One finding.
pub struct Row {
    /// The key's name, such as `back`; it names the message of the finding, and is its local code.
    pub name: &'static str,
    /// Which baby, from 0.
    pub baby: Option<usize>,
    /// Its code, where one can be sent.
    pub code: Option<Code>,
    /// Its state and value.
    pub state: State,
    /// False when it was written with `?`.
    pub sure: bool,
    /// How it was found, when not as in `known_by`.
    pub by: By,
    /// How it is known, each way once; empty: as in `by`.
    pub known_by: Vec<KnownBy>,
    /// The code of the site on her body.
    pub site: Option<Place>,
    /// More about it, in canonical words.
    pub more: Option<String>,
}

fn row<T>(
    scope: Scope,
    name: &'static str,
    by: By,
    finding: &Finding<T>,
    value: impl Fn(&T) -> Value,
) -> Option<Row>
where
    T: Canonical,
{
    let said = || keys::find(scope, name).and_then(|key| say::finding(key, finding)).unwrap_or_default();
    let (state, sure, known_by) = match finding {
        Finding::NotExamined => return None,
        Finding::Absent => (State::Absent(said()), true, vec![]),
        Finding::NotTried => (State::NotTried(said()), true, vec![]),
        Finding::CouldNotTell { .. } => (State::CouldNotTell(said()), true, vec![]),
        Finding::Found(Found { value: found, sure, known_by }) => {
            (State::Found(value(found)), *sure, vec![known_by.clone()])
        }
    };
    Some(Row { name, baby: None, code: None, state, sure, by, known_by, site: None, more: None })
}

fn words<T: Canonical>(value: &T) -> Value {
    Value::Words(value.canonical())
}

fn coded(mut row: Row, code: Code) -> Row {
    row.code = Some(code);
    row
}

/// Every finding of the visit, the mother and the babies, in the order of the hands.
pub fn rows(exam: &Exam, conclusions: &[Conclusion]) -> Vec<Row> {
    let mut rows = vec![];
    if let Some(weeks) = exam.weeks {
        rows.push(Row {
            name: "weeks",
            baby: None,
            code: Some(codes::WEEKS),
            state: State::Found(Value::Quantity(f64::from(weeks.days()), DAYS)),
            sure: true,
            by: By::Asking,
            known_by: vec![],
            site: None,
            more: Some(weeks.to_string()),
        });
    }
    of_mother(&exam.mother, &mut rows);
    for (index, baby) in exam.babies.iter().enumerate() {
        let start = rows.len();
        of_baby(baby, &mut rows);
        if let Some(conclusion) = conclusions.get(index) {
            of_conclusion(baby, conclusion, &mut rows);
        }
        rows[start..].iter_mut().for_each(|row| row.baby = Some(index));
    }
    rows
}

fn of_mother(mother: &Mother, rows: &mut Vec<Row>) {
    // Taken apart by name, so that a new field does not compile until it is sent.
    let Mother {
        fundal_height,
        girth,
        navel,
        fundus,
        shape,
        womb,
        water,
        lumps,
        tape_unfit,
        scars,
        operations,
        womb_cut,
        skin,
        movements,
        reports,
        denies,
        pulse,
        placenta,
        births_before,
        posture,
        earlier_tapes,
        gravida,
        rupture_before,
        placentas,
        rhesus_d,
        group_b_strep,
        labour,
        hours_since_broken,
        water_colour,
        consent,
        comfort,
        build,
        scar_feel,
        muscle_gap,
        hernia,
        bladder,
        temperature,
        blood_pressure,
        breathing,
        urine_protein,
        contractions_in_ten,
        contraction_length,
        contraction_strength,
        tone_at_rest,
        tender_at,
        height_for_dates,
    } = mother;
    let s = Scope::Mother;
    let cm = |length: &crate::units::Centimetres| Value::Quantity(length.get(), CM);
    rows.extend(row(s, "movements", By::Asking, movements, words));
    rows.extend(row(s, "reports", By::Asking, reports, words));
    rows.extend(row(s, "denies", By::Asking, denies, words));
    rows.extend(row(s, "births-before", By::Asking, births_before, words));
    rows.extend(row(s, "operations", By::Asking, operations, words));
    rows.extend(row(s, "womb-cut", By::Asking, womb_cut, words));
    rows.extend(row(s, "placenta", By::Asking, placenta, words));
    rows.extend(row(s, "posture", By::Looking, posture, words));
    rows.extend(row(s, "shape", By::Looking, shape, words));
    rows.extend(row(s, "scars", By::Looking, scars, words).map(|row| coded(row, codes::ABDOMEN)));
    rows.extend(row(s, "skin", By::Looking, skin, words));
    rows.extend(row(s, "pulse", By::Palpation, pulse, |beats| Value::Quantity(f64::from(*beats), BEATS)));
    rows.extend(row(s, "womb", By::Palpation, womb, words));
    rows.extend(row(s, "water", By::Palpation, water, words));
    rows.extend(row(s, "lumps", By::Palpation, lumps, words));
    rows.extend(row(s, "fundus", By::Palpation, fundus, words));
    let tape = row(s, "fundal-height", By::Tape, fundal_height, cm);
    rows.extend(tape.map(|row| coded(row, codes::FUNDAL_HEIGHT)));
    rows.extend(row(s, "earlier-tapes", By::Tape, earlier_tapes, words));
    rows.extend(row(s, "girth", By::Tape, girth, cm));
    rows.extend(row(s, "navel", By::Tape, navel, cm));
    rows.extend(row(s, "tape-unfit", By::Looking, tape_unfit, words));
    rows.extend(row(s, "gravida", By::Asking, gravida, words));
    rows.extend(row(s, "rupture-before", By::Asking, rupture_before, words));
    rows.extend(row(s, "placentas", By::Asking, placentas, words));
    rows.extend(row(s, "rhesus-d", By::Asking, rhesus_d, words));
    rows.extend(row(s, "group-b-strep", By::Asking, group_b_strep, words));
    rows.extend(row(s, "labour", By::Asking, labour, words));
    rows.extend(row(s, "hours-since-broken", By::Asking, hours_since_broken, |h| {
        Value::Quantity(f64::from(h.0), HOURS)
    }));
    rows.extend(row(s, "water-colour", By::Looking, water_colour, words));
    rows.extend(row(s, "consent", By::Asking, consent, words));
    rows.extend(row(s, "comfort", By::Asking, comfort, words));
    rows.extend(row(s, "build", By::Looking, build, words));
    rows.extend(row(s, "scar-feel", By::Palpation, scar_feel, words));
    rows.extend(row(s, "muscle-gap", By::Palpation, muscle_gap, words));
    rows.extend(row(s, "hernia", By::Palpation, hernia, words));
    rows.extend(row(s, "bladder", By::Palpation, bladder, words));
    rows.extend(row(s, "temperature", By::Looking, temperature, |t| Value::Quantity(t.celsius(), CELSIUS)));
    rows.extend(row(s, "blood-pressure", By::Looking, blood_pressure, words));
    rows.extend(row(s, "breathing", By::Looking, breathing, |n| Value::Quantity(f64::from(*n), BREATHS)));
    rows.extend(row(s, "urine-protein", By::Looking, urine_protein, words));
    rows.extend(row(s, "contractions-in-ten", By::Palpation, contractions_in_ten, words));
    rows.extend(row(s, "contraction-length", By::Palpation, contraction_length, words));
    rows.extend(row(s, "contraction-strength", By::Palpation, contraction_strength, words));
    rows.extend(row(s, "tone-at-rest", By::Palpation, tone_at_rest, words));
    rows.extend(row(s, "tender-at", By::Palpation, tender_at, words));
    rows.extend(row(s, "height-for-dates", By::Palpation, height_for_dates, words));
}

fn of_baby(baby: &Baby, rows: &mut Vec<Row>) {
    let Baby {
        head,
        breech,
        back,
        limbs,
        head_above_brim,
        descent,
        prominence,
        attitude,
        legs,
        dip_at_navel,
        heart,
        heart_with,
        heart_counts,
        heart_rate: rate,
        heart_rise,
        heart_rhythm,
        weight_by_hand,
        weight_by_scan,
        moved_under_hands,
        fundus_feels,
        brim_feels,
        ballottable,
        overlaps_pubic_bone,
        by_vagina,
        station,
        size,
        kicks,
        hiccups,
        unstable_lie,
        turning,
        heart_also,
        heart_quality,
        heart_slows,
        heart_by,
        heart_and_pulse,
        // Sent with what follows from the findings.
        lie: _,
        presentation: _,
        position: _,
    } = baby;
    let s = Scope::Baby;
    rows.extend(row(s, "breech", By::Palpation, breech, words));
    rows.extend(row(s, "back", By::Palpation, back, words));
    rows.extend(row(s, "limbs", By::Palpation, limbs, words));
    rows.extend(row(s, "dip-at-navel", By::Palpation, dip_at_navel, words));
    rows.extend(row(s, "head", By::Palpation, head, words));
    let fifths = row(s, "head-above-brim", By::Palpation, head_above_brim, |k| {
        Value::Quantity(f64::from(k.get()), FIFTHS)
    });
    rows.extend(fifths.map(|mut row| {
        row.more = head_above_brim.value().map(|k| format!("{} palpable above the brim", k.canonical()));
        coded(row, codes::FIFTHS)
    }));
    rows.extend(row(s, "descent", By::Palpation, descent, words));
    rows.extend(row(s, "prominence", By::Palpation, prominence, words));
    rows.extend(row(s, "attitude", By::Palpation, attitude, words));
    rows.extend(row(s, "legs", By::Palpation, legs, |legs| {
        Value::Coded(codes::legs(*legs), legs.canonical())
    }));
    rows.extend(row(s, "moved-under-hands", By::Palpation, moved_under_hands, words));

    let place = match heart.value() {
        Some(HeartHeard::At(place)) => Some(*place),
        Some(HeartHeard::Somewhere) | None => None,
    };
    let at = |mut row: Row| {
        row.site = place;
        row
    };
    rows.extend(row(s, "heart", By::Listening, heart, words).map(at));
    rows.extend(row(s, "heart-with", By::Listening, heart_with, words));
    // Counts give a rate; a rate as given beside them is sent too, under its own name.
    let counted = heart_rate(baby).map(|rate| (rate.mean, rate.low, rate.high));
    let counts = row(s, "heart-counts", By::Listening, heart_counts, |counts| match counted {
        Some((mean, _, _)) => Value::Quantity((mean * 10.0).round() / 10.0, BEATS),
        None => words(counts),
    });
    rows.extend(counts.map(|mut row| {
        row.more = heart_counts.value().map(Canonical::canonical);
        at(coded(row, codes::HEART_RATE))
    }));
    let rate = row(s, "heart-rate", By::Listening, rate, |rate| {
        let (low, high) = (f64::from(rate.low), f64::from(rate.high));
        if low == high { Value::Quantity(low, BEATS) } else { Value::Range(low, high, BEATS) }
    });
    rows.extend(rate.map(|row| at(coded(row, codes::HEART_RATE))));
    rows.extend(row(s, "heart-rise", By::Listening, heart_rise, |beats| {
        Value::Quantity(f64::from(*beats), BEATS)
    }));
    rows.extend(row(s, "heart-rhythm", By::Listening, heart_rhythm, words));
    rows.extend(row(s, "fundus-feels", By::Palpation, fundus_feels, words));
    rows.extend(row(s, "brim-feels", By::Palpation, brim_feels, words));
    rows.extend(row(s, "ballottable", By::Palpation, ballottable, words));
    rows.extend(row(s, "overlaps-pubic-bone", By::Palpation, overlaps_pubic_bone, words));
    rows.extend(row(s, "found-by-vagina", By::VaginalExamination, by_vagina, words));
    rows.extend(row(s, "station", By::VaginalExamination, station, words));
    rows.extend(row(s, "size", By::Palpation, size, words));
    rows.extend(row(s, "kicks", By::Asking, kicks, words));
    rows.extend(row(s, "hiccups", By::Asking, hiccups, words));
    rows.extend(row(s, "unstable-lie", By::Palpation, unstable_lie, words));
    rows.extend(row(s, "turning-tried", By::Palpation, turning, words));
    rows.extend(row(s, "heart-also", By::Listening, heart_also, words));
    rows.extend(row(s, "heart-quality", By::Listening, heart_quality, words));
    rows.extend(row(s, "heart-slows", By::Listening, heart_slows, words));
    rows.extend(row(s, "heart-by", By::Listening, heart_by, words));
    rows.extend(row(s, "heart-and-pulse", By::Listening, heart_and_pulse, words));

    let weight = row(s, "weight-by-hand", By::Palpation, weight_by_hand, |weight| {
        let (low, high) = (weight.low.get().round(), weight.high.get().round());
        if low == high { Value::Quantity(low, GRAMS) } else { Value::Range(low, high, GRAMS) }
    });
    rows.extend(weight.map(|row| coded(row, codes::WEIGHT_BY_HAND)));
    let scan = row(s, "weight-by-scan", By::Asking, weight_by_scan, |scan| {
        Value::Quantity(scan.weight.get().round(), GRAMS)
    });
    rows.extend(scan.map(|mut row| {
        row.more = weight_by_scan.value().and_then(|scan| scan.at).map(|at| at.to_string());
        if row.known_by == [KnownBy::Hands] {
            row.known_by = vec![KnownBy::Scan(None)];
        }
        row
    }));
}

/// Lie, presentation and position as they follow from the findings; as they were written, where they do not follow.
fn of_conclusion(baby: &Baby, conclusion: &Conclusion, rows: &mut Vec<Row>) {
    let known_by = ways(baby, conclusion);
    let more: Vec<&str> = conclusion.conflicts.iter().map(|conflict| conflict.id).collect();
    let more = (!more.is_empty()).then(|| more.join(", "));
    let concluded = |name, code, value| Row {
        name,
        baby: None,
        code: Some(code),
        state: State::Found(value),
        sure: !conclusion.unsure,
        by: By::Palpation,
        known_by: known_by.clone(),
        site: None,
        more: more.clone(),
    };
    let s = Scope::Baby;
    match conclusion.lie {
        Some(lie) => {
            rows.push(concluded("lie", codes::LIE, Value::Coded(codes::lie(lie), lie.canonical())));
        }
        None => rows.extend(row(s, "lie", By::Palpation, &baby.lie, words).map(|r| coded(r, codes::LIE))),
    }
    match conclusion.presentation {
        Some(p) => rows.push(concluded(
            "presentation",
            codes::PRESENTATION,
            Value::Coded(codes::presentation(p), p.canonical()),
        )),
        None => rows.extend(
            row(s, "presentation", By::Palpation, &baby.presentation, words)
                .map(|r| coded(r, codes::PRESENTATION)),
        ),
    }
    match conclusion.position {
        // Spelled out beside its letters, and left mento-posterior only spelled out.
        Some(p) => {
            let (code, spelled) = (p.canonical(), p.words());
            let text = if code == spelled { code } else { format!("{code}: {spelled}") };
            rows.push(concluded("position", codes::POSITION, Value::Coded(codes::position(p), text)));
        }
        None => rows.extend(
            row(s, "position", By::Palpation, &baby.position, words).map(|r| coded(r, codes::POSITION)),
        ),
    }
    // What was written beside findings that give something else.
    let written = [
        (conclusion.lie.is_some() && baby.lie.value().is_some_and(|v| Some(*v) != conclusion.lie))
            .then(|| row(s, "lie", By::Palpation, &baby.lie, words).map(|r| as_written(r, "lie-as-written"))),
        (conclusion.presentation.is_some()
            && baby.presentation.value().is_some_and(|v| Some(*v) != conclusion.presentation))
        .then(|| {
            row(s, "presentation", By::Palpation, &baby.presentation, words)
                .map(|r| as_written(r, "presentation-as-written"))
        }),
        (conclusion.position.is_some()
            && baby.position.value().is_some_and(|v| Some(*v) != conclusion.position))
        .then(|| {
            row(s, "position", By::Palpation, &baby.position, words)
                .map(|r| as_written(r, "position-as-written"))
        }),
    ];
    rows.extend(written.into_iter().flatten().flatten());
}

fn as_written(mut row: Row, name: &'static str) -> Row {
    row.name = name;
    row
}

/// How the findings are known that a conclusion may rest on, each way once.
fn ways(baby: &Baby, conclusion: &Conclusion) -> Vec<KnownBy> {
    fn way<T>(finding: &Finding<T>) -> Option<KnownBy> {
        match finding {
            Finding::Found(found) => Some(found.known_by.clone()),
            Finding::NotExamined | Finding::Absent | Finding::NotTried | Finding::CouldNotTell { .. } => None,
        }
    }
    let mut ways: Vec<KnownBy> = vec![];
    let all = [
        way(&baby.head),
        way(&baby.breech),
        way(&baby.back),
        way(&baby.lie),
        way(&baby.presentation),
        way(&baby.position),
        // The attitude decides face and brow alone.
        way(&baby.attitude)
            .filter(|_| matches!(conclusion.presentation, Some(Presentation::Face | Presentation::Brow))),
    ];
    for found in all.into_iter().flatten() {
        if !ways.contains(&found) {
            ways.push(found);
        }
    }
    ways
}
