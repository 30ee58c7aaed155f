//! Canonical words. In: values of the model. Out: the words that read back to the same value.

use super::keys::{self, Key, Scope};
use super::model::*;
use super::words::{KnownWord, StateWord, Vocabulary};
use crate::units::{Centimetres, Gestation, MotherSide};

/// A value that has canonical words.
pub trait Canonical {
    /// The words, without state, doubt or brackets.
    fn canonical(&self) -> String;
}

macro_rules! by_word {
    ($($kind:ty),*) => { $(
        impl Canonical for $kind {
            fn canonical(&self) -> String {
                self.word().unwrap_or_default().to_owned()
            }
        }
    )* };
}

by_word!(
    Movements,
    Report,
    Operation,
    WombCut,
    Placenta,
    Posture,
    Shape,
    Scar,
    SkinMark,
    WombFeel,
    Water,
    TapeUnfit,
    Descent,
    Prominence,
    Attitude,
    Legs,
    bool,
    ListenedWith,
    Rhythm,
    Lie,
    Presentation,
    Position,
    Placentas,
    RhesusD,
    GroupBStrep,
    Labour,
    WaterColour,
    Consent,
    Comfort,
    Build,
    ScarFeel,
    Hernia,
    Bladder,
    UrineProtein,
    Strength,
    Tone,
    HeightForDates,
    PoleFeel,
    ByVagina,
    Size,
    Turning,
    Quality,
    Slows,
    Listener,
    BesidePulse
);

macro_rules! by_display {
    ($($kind:ty),*) => { $(
        impl Canonical for $kind {
            fn canonical(&self) -> String {
                self.to_string()
            }
        }
    )* };
}

by_display!(u8, u16, Gestation);

impl Canonical for Centimetres {
    fn canonical(&self) -> String {
        format!("{} cm", self.get())
    }
}

impl Canonical for Temperature {
    fn canonical(&self) -> String {
        format!("{} C", self.celsius())
    }
}

impl Canonical for BloodPressure {
    fn canonical(&self) -> String {
        format!("{}/{}", self.systolic, self.diastolic)
    }
}

impl Canonical for Tally {
    fn canonical(&self) -> String {
        if self.low == self.high { self.low.to_string() } else { format!("{}-{}", self.low, self.high) }
    }
}

impl Canonical for Lasting {
    fn canonical(&self) -> String {
        if self.low == self.high {
            format!("{} s", self.low)
        } else {
            format!("{} to {} s", self.low, self.high)
        }
    }
}

impl Canonical for Hours {
    fn canonical(&self) -> String {
        format!("{} h", self.0)
    }
}

impl Canonical for Station {
    fn canonical(&self) -> String {
        if self.0 == 0 { "0".to_owned() } else { format!("{:+}", self.0) }
    }
}

impl Canonical for MuscleGap {
    fn canonical(&self) -> String {
        match self {
            MuscleGap::Felt => self.word().unwrap_or_default().to_owned(),
            MuscleGap::Fingers(1) => "1 finger".to_owned(),
            MuscleGap::Fingers(n) => format!("{n} fingers"),
            MuscleGap::Wide(length) => length.canonical(),
        }
    }
}

impl Canonical for Fifths {
    fn canonical(&self) -> String {
        format!("{}/5", self.get())
    }
}

impl Canonical for Rate {
    fn canonical(&self) -> String {
        if self.low == self.high { self.low.to_string() } else { format!("{}-{}", self.low, self.high) }
    }
}

impl Canonical for HeartCount {
    fn canonical(&self) -> String {
        format!("{} in {} s", self.beats, self.seconds)
    }
}

fn kilograms(grams: crate::units::Grams) -> String {
    format!("{} kg", grams.get().round() / 1000.0)
}

impl Canonical for WeightRange {
    fn canonical(&self) -> String {
        if self.low == self.high {
            kilograms(self.low)
        } else {
            format!("{} to {}", kilograms(self.low), kilograms(self.high))
        }
    }
}

impl Canonical for ScanWeight {
    fn canonical(&self) -> String {
        match self.at {
            Some(at) => format!("{} ({at})", kilograms(self.weight)),
            None => kilograms(self.weight),
        }
    }
}

impl Canonical for EarlierTape {
    fn canonical(&self) -> String {
        format!("{} {}", self.at, self.height.canonical())
    }
}

fn side(side: MotherSide) -> &'static str {
    match side {
        MotherSide::Left => "left",
        MotherSide::Right => "right",
    }
}

impl Canonical for Across {
    fn canonical(&self) -> String {
        match self {
            Across::Measured(to, length) => format!("{} {}", side(*to), length.canonical()),
            Across::Side(_) | Across::Middle | Across::Flank(_) => self.word().unwrap_or_default().to_owned(),
        }
    }
}

impl Canonical for Height {
    fn canonical(&self) -> String {
        match self {
            Height::FromNavel(cm) if *cm < 0.0 => format!("{} cm below navel", -cm),
            Height::FromNavel(cm) => format!("{cm} cm above navel"),
            Height::FromPubicBone(length) => format!("{} above pubic bone", length.canonical()),
            Height::Fundus
            | Height::AboveNavel
            | Height::AtNavel
            | Height::BelowNavel
            | Height::IliacFossa
            | Height::AbovePubicBone => self.word().unwrap_or_default().to_owned(),
        }
    }
}

impl Canonical for Place {
    fn canonical(&self) -> String {
        // "left iliac fossa" is one name; elsewhere a comma stands between side and level.
        let between = match (self.across, self.height) {
            (Some(Across::Side(_)), Some(Height::IliacFossa)) => " ",
            _ => ", ",
        };
        let parts: Vec<String> = self
            .across
            .map(|a| a.canonical())
            .into_iter()
            .chain(self.height.map(|h| h.canonical()))
            .collect();
        parts.join(between)
    }
}

impl Canonical for HeartHeard {
    fn canonical(&self) -> String {
        match self {
            HeartHeard::Somewhere => "heard".to_owned(),
            HeartHeard::At(place) => place.canonical(),
        }
    }
}

impl Canonical for Back {
    fn canonical(&self) -> String {
        match (self.side, self.turn) {
            (Some(to), None) => side(to).to_owned(),
            (Some(to), Some(BackTurn::Spine)) => format!("{}, towards her spine", side(to)),
            (Some(to), Some(turn)) => format!("{} {}", side(to), turn.word().unwrap_or_default()),
            (None, turn) => turn.and_then(BackTurn::word).unwrap_or_default().to_owned(),
        }
    }
}

impl Canonical for FundusLevel {
    fn canonical(&self) -> String {
        let fingers = |n: u8, rest: &str| format!("{n} finger{} {rest}", if n == 1 { "" } else { "s" });
        match self {
            FundusLevel::FingersBelowNavel(n) => fingers(*n, "below navel"),
            FundusLevel::FingersAboveNavel(n) => fingers(*n, "above navel"),
            FundusLevel::FingersBelowXiphoid(n) => fingers(*n, "below xiphoid"),
            FundusLevel::NotAbovePubicBone
            | FundusLevel::JustAbovePubicBone
            | FundusLevel::HalfwayToNavel
            | FundusLevel::AtNavel
            | FundusLevel::HalfwayToXiphoid
            | FundusLevel::AtXiphoid => self.word().unwrap_or_default().to_owned(),
        }
    }
}

/// Several values, with semicolons between them: a place has commas of its own.
impl<T: Canonical> Canonical for Vec<T> {
    fn canonical(&self) -> String {
        let words: Vec<String> = self.iter().map(Canonical::canonical).collect();
        words.join("; ")
    }
}

/// The words of a finding of `key`; `None` when it was not examined.
pub fn finding<T: Canonical>(key: &Key, finding: &Finding<T>) -> Option<String> {
    let state = |word: Option<StateWord>| word.and_then(StateWord::word).map(str::to_owned);
    match finding {
        Finding::NotExamined => None,
        Finding::Absent => state(key.absent),
        Finding::NotTried => state(key.not_tried),
        Finding::CouldNotTell { reason } => {
            let words = state(Some(StateWord::CouldNotTell)).unwrap_or_default();
            Some(match reason {
                Some(reason) => format!("{words} ({reason})"),
                None => words,
            })
        }
        Finding::Found(found) => {
            let mut words = found.value.canonical();
            match &found.known_by {
                KnownBy::Hands => {}
                KnownBy::Scan(None) => words.push_str(" (scan)"),
                KnownBy::Scan(Some(when)) => words.push_str(&format!(" (scan {when})")),
                KnownBy::VaginalExamination => {
                    words.push_str(&format!(
                        " ({})",
                        KnownWord::VaginalExamination.word().unwrap_or_default()
                    ));
                }
            }
            if !found.sure {
                words.push('?');
            }
            Some(words)
        }
    }
}

/// Every finding of an exam in canonical words, in the order of the keys: `mother.fundal-height`, `baby.1.back`.
/// Dates are not part of the model and are not in it; `weeks` and `note` are.
pub fn findings(exam: &Exam) -> Vec<(String, String)> {
    let mut said = vec![];
    if let Some(weeks) = exam.weeks {
        said.push(("weeks".to_owned(), weeks.canonical()));
    }
    if let Some(note) = &exam.note {
        said.push(("note".to_owned(), note.clone()));
    }
    of_mother(&exam.mother, &mut said);
    for (index, baby) in exam.babies.iter().enumerate() {
        of_baby(baby, index, &mut said);
    }
    let order = |key: &str| {
        let name = key.rsplit('.').next().unwrap_or(key);
        keys::KEYS.iter().position(|k| k.name == name)
    };
    let baby_of =
        |key: &str| key.strip_prefix("baby.").and_then(|rest| rest.split('.').next()?.parse::<usize>().ok());
    said.sort_by_key(|(key, _)| (baby_of(key), order(key)));
    said
}

fn push<T: Canonical>(
    said: &mut Vec<(String, String)>,
    scope: Scope,
    prefix: &str,
    name: &str,
    value: &Finding<T>,
) {
    if let Some(words) = keys::find(scope, name).and_then(|key| finding(key, value)) {
        said.push((format!("{prefix}.{name}"), words));
    }
}

fn of_mother(mother: &Mother, said: &mut Vec<(String, String)>) {
    // Taken apart by name, so that a new field does not compile until it is said here.
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
    let (scope, prefix) = (Scope::Mother, "mother");
    push(said, scope, prefix, "fundal-height", fundal_height);
    push(said, scope, prefix, "girth", girth);
    push(said, scope, prefix, "navel", navel);
    push(said, scope, prefix, "fundus", fundus);
    push(said, scope, prefix, "shape", shape);
    push(said, scope, prefix, "womb", womb);
    push(said, scope, prefix, "water", water);
    push(said, scope, prefix, "lumps", lumps);
    push(said, scope, prefix, "tape-unfit", tape_unfit);
    push(said, scope, prefix, "scars", scars);
    push(said, scope, prefix, "operations", operations);
    push(said, scope, prefix, "womb-cut", womb_cut);
    push(said, scope, prefix, "skin", skin);
    push(said, scope, prefix, "movements", movements);
    push(said, scope, prefix, "reports", reports);
    push(said, scope, prefix, "denies", denies);
    push(said, scope, prefix, "pulse", pulse);
    push(said, scope, prefix, "placenta", placenta);
    push(said, scope, prefix, "births-before", births_before);
    push(said, scope, prefix, "posture", posture);
    push(said, scope, prefix, "earlier-tapes", earlier_tapes);
    push(said, scope, prefix, "gravida", gravida);
    push(said, scope, prefix, "rupture-before", rupture_before);
    push(said, scope, prefix, "placentas", placentas);
    push(said, scope, prefix, "rhesus-d", rhesus_d);
    push(said, scope, prefix, "group-b-strep", group_b_strep);
    push(said, scope, prefix, "labour", labour);
    push(said, scope, prefix, "hours-since-broken", hours_since_broken);
    push(said, scope, prefix, "water-colour", water_colour);
    push(said, scope, prefix, "consent", consent);
    push(said, scope, prefix, "comfort", comfort);
    push(said, scope, prefix, "build", build);
    push(said, scope, prefix, "scar-feel", scar_feel);
    push(said, scope, prefix, "muscle-gap", muscle_gap);
    push(said, scope, prefix, "hernia", hernia);
    push(said, scope, prefix, "bladder", bladder);
    push(said, scope, prefix, "temperature", temperature);
    push(said, scope, prefix, "blood-pressure", blood_pressure);
    push(said, scope, prefix, "breathing", breathing);
    push(said, scope, prefix, "urine-protein", urine_protein);
    push(said, scope, prefix, "contractions-in-ten", contractions_in_ten);
    push(said, scope, prefix, "contraction-length", contraction_length);
    push(said, scope, prefix, "contraction-strength", contraction_strength);
    push(said, scope, prefix, "tone-at-rest", tone_at_rest);
    push(said, scope, prefix, "tender-at", tender_at);
    push(said, scope, prefix, "height-for-dates", height_for_dates);
}

fn of_baby(baby: &Baby, index: usize, said: &mut Vec<(String, String)>) {
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
        heart_rate,
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
        lie,
        presentation,
        position,
    } = baby;
    let (scope, prefix) = (Scope::Baby, format!("baby.{}", index + 1));
    push(said, scope, &prefix, "head", head);
    push(said, scope, &prefix, "breech", breech);
    push(said, scope, &prefix, "back", back);
    push(said, scope, &prefix, "limbs", limbs);
    push(said, scope, &prefix, "head-above-brim", head_above_brim);
    push(said, scope, &prefix, "descent", descent);
    push(said, scope, &prefix, "prominence", prominence);
    push(said, scope, &prefix, "attitude", attitude);
    push(said, scope, &prefix, "legs", legs);
    push(said, scope, &prefix, "dip-at-navel", dip_at_navel);
    push(said, scope, &prefix, "heart", heart);
    push(said, scope, &prefix, "heart-with", heart_with);
    push(said, scope, &prefix, "heart-counts", heart_counts);
    push(said, scope, &prefix, "heart-rate", heart_rate);
    push(said, scope, &prefix, "heart-rise", heart_rise);
    push(said, scope, &prefix, "heart-rhythm", heart_rhythm);
    push(said, scope, &prefix, "weight-by-hand", weight_by_hand);
    push(said, scope, &prefix, "weight-by-scan", weight_by_scan);
    push(said, scope, &prefix, "moved-under-hands", moved_under_hands);
    push(said, scope, &prefix, "fundus-feels", fundus_feels);
    push(said, scope, &prefix, "brim-feels", brim_feels);
    push(said, scope, &prefix, "ballottable", ballottable);
    push(said, scope, &prefix, "overlaps-pubic-bone", overlaps_pubic_bone);
    push(said, scope, &prefix, "found-by-vagina", by_vagina);
    push(said, scope, &prefix, "station", station);
    push(said, scope, &prefix, "size", size);
    push(said, scope, &prefix, "kicks", kicks);
    push(said, scope, &prefix, "hiccups", hiccups);
    push(said, scope, &prefix, "unstable-lie", unstable_lie);
    push(said, scope, &prefix, "turning-tried", turning);
    push(said, scope, &prefix, "heart-also", heart_also);
    push(said, scope, &prefix, "heart-quality", heart_quality);
    push(said, scope, &prefix, "heart-slows", heart_slows);
    push(said, scope, &prefix, "heart-by", heart_by);
    push(said, scope, &prefix, "heart-and-pulse", heart_and_pulse);
    push(said, scope, &prefix, "lie", lie);
    push(said, scope, &prefix, "presentation", presentation);
    push(said, scope, &prefix, "position", position);
}
