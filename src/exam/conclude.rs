//! What follows from the direct findings of one baby. In: an exam and which baby. Out: lie, presentation, position,
//! engagement, and the findings that cannot all be right.
//!
//! Only head, bottom and back are used, with the attitude for face and brow, and what the examiner concluded. What does
//! not follow stays `None`: a back known only as `left` names no position, a head only known to lie on a side no lie.

use super::model::*;
use crate::units::MotherSide;

/// How high a pole of the baby lies, from the brim upwards.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Level {
    Brim,
    Fossa,
    Low,
    Navel,
    High,
    Fundus,
}

/// Head or bottom, as far as its place is known.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Pole {
    level: Option<Level>,
    side: Option<MotherSide>,
    flank: bool,
}

/// A navel at this height above the pubic bone when it was not measured, in cm along the skin; it only sorts
/// measured places into above, at and below. Source: 15 cm in non-pregnant women (pelvis-abdomen table, UMBIL), and more
/// as the abdomen stretches: common practice.
const USUAL_NAVEL_CM: f64 = 18.0;
/// Within this distance of the navel a place is at the navel, cm.
const AT_NAVEL_CM: f64 = 2.0;
/// Up to this height above the pubic bone a measured pole is at the brim, cm.
const AT_BRIM_CM: f64 = 6.0;
/// Up to this distance from the midline a measured pole is in the middle, cm.
const MIDDLE_CM: f64 = 2.0;

fn pole(place: &Place, navel_cm: f64) -> Pole {
    let (side, flank) = match place.across {
        None | Some(Across::Middle) => (None, false),
        Some(Across::Side(side)) => (Some(side), false),
        Some(Across::Flank(side)) => (Some(side), true),
        Some(Across::Measured(side, cm)) => ((cm.get() > MIDDLE_CM).then_some(side), false),
    };
    let from_navel = |cm: f64| {
        if cm.abs() <= AT_NAVEL_CM {
            Level::Navel
        } else if cm > 0.0 {
            Level::High
        } else if navel_cm + cm <= AT_BRIM_CM {
            Level::Brim
        } else {
            Level::Low
        }
    };
    let level = place.height.map(|height| match height {
        Height::Fundus => Level::Fundus,
        Height::AboveNavel => Level::High,
        Height::AtNavel => Level::Navel,
        Height::BelowNavel => Level::Low,
        Height::IliacFossa => Level::Fossa,
        Height::AbovePubicBone => Level::Brim,
        Height::FromNavel(cm) => from_navel(cm),
        Height::FromPubicBone(cm) if cm.get() <= AT_BRIM_CM => Level::Brim,
        Height::FromPubicBone(cm) => from_navel(cm.get() - navel_cm),
    });
    Pole { level, side, flank }
}

/// What the poles say of the lie.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct FromPoles {
    lie: Option<Lie>,
    head_up: Option<bool>,
    one_place: bool,
}

fn lengthwise(head_up: bool) -> FromPoles {
    FromPoles { lie: Some(Lie::Longitudinal), head_up: Some(head_up), one_place: false }
}

fn oblique(head_up: bool) -> FromPoles {
    FromPoles { lie: Some(Lie::Oblique), head_up: Some(head_up), one_place: false }
}

fn crosswise() -> FromPoles {
    FromPoles { lie: Some(Lie::Transverse), head_up: None, one_place: false }
}

fn of_poles(head: Option<Pole>, breech: Option<Pole>) -> FromPoles {
    match (head, breech) {
        (None, None) => FromPoles::default(),
        (Some(head), None) => of_one_pole(head),
        (None, Some(breech)) => {
            let turned = of_one_pole(breech);
            FromPoles { head_up: turned.head_up.map(|up| !up), ..turned }
        }
        (Some(head), Some(breech)) => of_two_poles(head, breech),
    }
}

/// What one pole alone says; `head_up` is of that pole.
fn of_one_pole(pole: Pole) -> FromPoles {
    let unknown = |head_up| FromPoles { lie: None, head_up, one_place: false };
    match (pole.level, pole.side) {
        (Some(Level::Brim), _) => lengthwise(false),
        (Some(Level::Fundus), _) => lengthwise(true),
        (Some(Level::Fossa), _) => oblique(false),
        (Some(Level::Low), None) => lengthwise(false),
        (Some(Level::High), None) => lengthwise(true),
        (Some(Level::Low), Some(_)) => unknown(Some(false)),
        (Some(Level::High), Some(_)) => unknown(Some(true)),
        (Some(Level::Navel), Some(_)) => crosswise(),
        (None, Some(_)) if pole.flank => crosswise(),
        (Some(Level::Navel), None) | (None, _) => unknown(None),
    }
}

fn of_two_poles(head: Pole, breech: Pole) -> FromPoles {
    let opposite = matches!((head.side, breech.side), (Some(h), Some(b)) if h != b);
    let (Some(h), Some(b)) = (head.level, breech.level) else {
        if opposite && head.level.is_none() && breech.level.is_none() {
            return crosswise();
        }
        // One level is missing: the other pole says what it can, as long as it is at an end of the womb.
        return match (head.level, breech.level) {
            (Some(_), None) => of_poles(Some(head), None),
            (None, Some(_)) => of_poles(None, Some(breech)),
            _ => FromPoles::default(),
        };
    };
    let head_up = h > b;
    if h == b {
        let same_side = matches!((head.side, breech.side), (Some(h), Some(b)) if h == b);
        return match h {
            _ if opposite => crosswise(),
            Level::Navel if !same_side => crosswise(),
            _ => FromPoles { lie: None, head_up: None, one_place: true },
        };
    }
    let (lower, upper) = if head_up { (b, h) } else { (h, b) };
    match lower {
        Level::Brim => lengthwise(head_up),
        Level::Fossa => oblique(head_up),
        Level::Low if opposite && upper == Level::Navel => crosswise(),
        Level::Navel if opposite && upper == Level::High => crosswise(),
        Level::Low | Level::Navel | Level::High if opposite => oblique(head_up),
        Level::Low => lengthwise(head_up),
        Level::Navel | Level::High | Level::Fundus => {
            FromPoles { lie: None, head_up: Some(head_up), one_place: false }
        }
    }
}

/// Collects conflicts with the keys of one baby; each id stands once, with every finding that was named under it.
struct Conflicts<'a> {
    prefix: &'a str,
    found: Vec<Conflict>,
}

impl Conflicts<'_> {
    fn add(&mut self, id: &'static str, names: &[&str]) {
        let at = match self.found.iter().position(|conflict| conflict.id == id) {
            Some(at) => at,
            None => {
                self.found.push(Conflict { id, findings: vec![] });
                self.found.len() - 1
            }
        };
        let findings = &mut self.found[at].findings;
        for name in names {
            let finding = format!("{}.{name}", self.prefix);
            if !findings.contains(&finding) {
                findings.push(finding);
            }
        }
    }
}

/// What a given presentation says of the lie and the head.
fn of_presentation(presentation: Presentation) -> (Lie, Option<bool>) {
    match presentation {
        Presentation::Cephalic | Presentation::Face | Presentation::Brow => (Lie::Longitudinal, Some(false)),
        Presentation::Breech => (Lie::Longitudinal, Some(true)),
        Presentation::Shoulder => (Lie::Transverse, None),
    }
}

/// The conclusion for baby `index` (from 0) of `exam`; an index beyond the babies gives an empty conclusion.
pub fn conclude(exam: &Exam, index: usize) -> Conclusion {
    let mut end = Conclusion {
        lie: None,
        presentation: None,
        position: None,
        head_side: None,
        head_up: None,
        back: None,
        engaged: None,
        unsure: false,
        conflicts: vec![],
    };
    let Some(baby) = exam.babies.get(index) else { return end };
    let prefix = format!("baby.{}", index + 1);
    let mut conflicts = Conflicts { prefix: &prefix, found: vec![] };
    let navel_cm = exam.mother.navel.value().map_or(USUAL_NAVEL_CM, |cm| cm.get());

    let head_felt = baby.head.value().map(|place| pole(place, navel_cm));
    let breech = baby.breech.value().map(|place| pole(place, navel_cm));
    // Fifths above the brim are felt on the head: without a place of its own it is over the brim, unless the bottom is.
    let bottom_down = of_poles(None, breech).head_up == Some(true);
    let by_fifths = baby.head_above_brim.value().filter(|_| head_felt.is_none() && !bottom_down);
    let head = head_felt.or(by_fifths.map(|_| Pole { level: Some(Level::Brim), side: None, flank: false }));
    let back = baby.back.value().copied();
    let position = baby.position.value().copied();
    let given = baby.presentation.value().copied();

    let mut poles = of_poles(head, breech);
    if poles.one_place {
        conflicts.add("head-and-bottom-in-one-place", &["head", "breech"]);
    }
    let pole_names: Vec<&str> = [
        ("head", head.is_some() && by_fifths.is_none()),
        ("head-above-brim", by_fifths.is_some()),
        ("breech", breech.is_some()),
    ]
    .into_iter()
    .filter_map(|(name, known)| known.then_some(name))
    .collect();

    let given_lie = baby.lie.value().copied();
    // A slanting baby may have its back anywhere.
    let slanting =
        poles.lie == Some(Lie::Oblique) || (poles.lie.is_none() && given_lie == Some(Lie::Oblique));
    // The back: at a side it lies lengthwise, towards ribs or feet crosswise.
    let back_lie = back.filter(|_| !slanting).and_then(|back| match (back.side, back.turn) {
        (_, Some(BackTurn::Ribs | BackTurn::Feet)) => Some(Lie::Transverse),
        (Some(_), _) => Some(Lie::Longitudinal),
        (None, _) => None,
    });
    match (poles.lie, back_lie) {
        (None, Some(lie)) if !poles.one_place => {
            poles.lie = Some(lie);
            if lie == Lie::Transverse {
                poles.head_up = None;
            }
        }
        (Some(Lie::Longitudinal), Some(Lie::Transverse))
        | (Some(Lie::Transverse), Some(Lie::Longitudinal)) => {
            let mut names = pole_names.clone();
            names.push("back");
            conflicts.add("back-against-lie", &names);
        }
        _ => {}
    }
    let direct = poles.lie;
    let direct_names: Vec<&str> = pole_names.iter().copied().chain(back_lie.map(|_| "back")).collect();

    // What the examiner concluded: used where the findings are silent, held against them where they speak.
    let against = |name: &'static str| -> Vec<&str> {
        std::iter::once(name).chain(direct_names.iter().copied()).collect()
    };
    if let (Some(given), Some(direct)) = (given_lie, direct)
        && given != direct
    {
        conflicts.add("lie-against-findings", &against("lie"));
    }
    let concluded: Vec<(&'static str, Presentation)> = given
        .map(|p| ("presentation", p))
        .into_iter()
        .chain(position.map(|p| {
            let presentation = match p {
                Position::Lengthwise { denominator, .. } => denominator.presentation(),
                Position::Crosswise { .. } => Presentation::Shoulder,
            };
            ("position", presentation)
        }))
        .collect();
    let mut lie = direct.or(given_lie);
    let mut head_up = poles.head_up;
    for (name, presentation) in &concluded {
        let (said_lie, said_up) = of_presentation(*presentation);
        let lie_differs = direct.is_some_and(|direct| direct != said_lie);
        let head_differs = said_up.is_some() && poles.head_up.is_some() && said_up != poles.head_up;
        if lie_differs || head_differs || (poles.one_place && direct.is_none()) {
            if !poles.one_place {
                let id = if *name == "position" {
                    "position-against-findings"
                } else {
                    "presentation-against-findings"
                };
                conflicts.add(id, &against(name));
            }
            continue;
        }
        if given_lie.is_some_and(|given| given != said_lie) && direct.is_none() {
            conflicts.add("conclusions-against-one-another", &["lie", name]);
            continue;
        }
        lie = lie.or(Some(said_lie));
        head_up = head_up.or(said_up);
    }
    if let [(_, one), (_, other)] = concluded[..]
        && !presentations_agree(one, other)
    {
        conflicts.add("conclusions-against-one-another", &["presentation", "position"]);
    }

    // Presentation, refined by the attitude.
    let mut presentation = match (lie, head_up) {
        (Some(Lie::Longitudinal), Some(false)) => Some(Presentation::Cephalic),
        (Some(Lie::Longitudinal), Some(true)) => Some(Presentation::Breech),
        (Some(Lie::Transverse), _) if concluded.iter().any(|(_, p)| *p == Presentation::Shoulder) => {
            Some(Presentation::Shoulder)
        }
        _ => None,
    };
    let attitude = baby.attitude.value().copied();
    if presentation == Some(Presentation::Cephalic) {
        let by_attitude = match attitude {
            Some(Attitude::Face) => Some(Presentation::Face),
            Some(Attitude::Brow) => Some(Presentation::Brow),
            Some(Attitude::Flexed | Attitude::Deflexed) => Some(Presentation::Cephalic),
            None => None,
        };
        let mut said: Vec<(&str, Presentation)> = by_attitude.map(|p| ("attitude", p)).into_iter().collect();
        said.extend(
            concluded
                .iter()
                .copied()
                .filter(|(_, p)| of_presentation(*p) == (Lie::Longitudinal, Some(false))),
        );
        // "cephalic" names no attitude, so anything agrees with it unless it came from a code or a felt attitude.
        let named: Vec<(&str, Presentation)> = said
            .iter()
            .copied()
            .filter(|(name, p)| !(*name == "presentation" && *p == Presentation::Cephalic))
            .collect();
        if let [(first, one), .., (last, other)] = named[..]
            && one != other
        {
            conflicts.add("attitude-against-presentation", &[first, last]);
        }
        presentation = named.first().map(|(_, p)| *p).or(presentation);
    }

    // The back, and the position it names.
    let code_back = position.and_then(|position| match position {
        Position::Lengthwise { .. } => position.back_octant().map(Octant::back),
        Position::Crosswise { back_in_front, .. } => Some(Back {
            side: None,
            turn: Some(if back_in_front { BackTurn::Front } else { BackTurn::Spine }),
        }),
    });
    let code_holds = position.is_some()
        && !conflicts.found.iter().any(|c| c.findings.iter().any(|f| f.ends_with(".position")));
    end.back = match (back, code_back) {
        (Some(felt), Some(coded)) if code_holds => {
            if back_allows(felt, coded) {
                Some(coded)
            } else {
                conflicts.add("position-against-findings", &["position", "back"]);
                Some(felt)
            }
        }
        (Some(felt), _) => Some(felt),
        (None, Some(coded)) if code_holds => Some(coded),
        (None, _) => None,
    };
    end.head_side = match lie {
        Some(Lie::Longitudinal) => None,
        _ => head
            .and_then(|pole| pole.side)
            .or_else(|| breech.and_then(|pole| pole.side).map(MotherSide::opposite)),
    };
    if let Some(Position::Crosswise { head: coded, .. }) = position
        && code_holds
        && lie == Some(Lie::Transverse)
    {
        match end.head_side {
            Some(felt) if felt != coded => conflicts.add("position-against-findings", &against("position")),
            _ => end.head_side = Some(coded),
        }
    }
    end.position = name_position(presentation, lie, end.back, end.head_side);

    descent(baby, lie, presentation, attitude, head_felt, &mut conflicts, &mut end.engaged);
    heart(baby, &mut conflicts);
    end.lie = lie;
    end.presentation = presentation;
    end.head_up = head_up;
    end.unsure = unsure(baby, direct.is_some());
    end.conflicts = conflicts.found;
    end
}

/// "cephalic" agrees with face and brow; otherwise the same is meant.
fn presentations_agree(given: Presentation, of_code: Presentation) -> bool {
    given == of_code
        || (given == Presentation::Cephalic && matches!(of_code, Presentation::Face | Presentation::Brow))
}

/// Whether a back as felt may be the back a code says: a side alone allows its three octants, front or spine without a
/// side the neighbours too.
fn back_allows(felt: Back, coded: Back) -> bool {
    match (felt.side, felt.turn) {
        (Some(side), None) => coded.side == Some(side),
        (None, turn) => coded.turn == turn,
        (Some(_), Some(_)) => felt == coded,
    }
}

/// The position that presentation and back name; `None` when the back is not known well enough.
fn name_position(
    presentation: Option<Presentation>,
    lie: Option<Lie>,
    back: Option<Back>,
    head_side: Option<MotherSide>,
) -> Option<Position> {
    if lie == Some(Lie::Transverse) {
        let back_in_front = match back?.turn? {
            BackTurn::Front => true,
            BackTurn::Spine => false,
            BackTurn::Lateral | BackTurn::Ribs | BackTurn::Feet => return None,
        };
        return Some(Position::Crosswise { head: head_side?, back_in_front });
    }
    let back = Octant::of_back(back?)?;
    let denominator = match presentation? {
        Presentation::Cephalic => Denominator::Occiput,
        Presentation::Breech => Denominator::Sacrum,
        Presentation::Face => Denominator::Mentum,
        Presentation::Brow => Denominator::Frontum,
        Presentation::Shoulder => return None,
    };
    let octant = if denominator.opposite_back() { back.opposite() } else { back };
    Some(Position::Lengthwise { denominator, octant })
}

/// Engagement, and fifths or descent that cannot be.
fn descent(
    baby: &Baby,
    lie: Option<Lie>,
    presentation: Option<Presentation>,
    attitude: Option<Attitude>,
    head: Option<Pole>,
    conflicts: &mut Conflicts<'_>,
    engaged: &mut Option<bool>,
) {
    let fifths = baby.head_above_brim.value().map(|fifths| fifths.get());
    let words = baby.descent.value().copied();
    let low = fifths.is_some_and(|k| k <= 2) || matches!(words, Some(Descent::Engaged | Descent::Deep));
    let name = if fifths.is_some() { "head-above-brim" } else { "descent" };
    match lie {
        Some(Lie::Transverse | Lie::Oblique) if low => {
            let places: Vec<&str> = [
                ("head", baby.head.value().is_some()),
                ("breech", baby.breech.value().is_some()),
                ("back", baby.back.value().is_some()),
                ("lie", baby.lie.value().is_some()),
            ]
            .into_iter()
            .filter_map(|(name, known)| known.then_some(name))
            .collect();
            conflicts.add("engaged-and-crosswise", &[&[name], &places[..]].concat());
        }
        Some(Lie::Longitudinal) if presentation == Some(Presentation::Breech) => {
            if fifths.is_some() && head.is_some() {
                conflicts.add("head-in-two-places", &["head", "head-above-brim"]);
            } else if fifths.is_some() {
                conflicts.add("fifths-on-a-breech", &["head-above-brim", "breech"]);
            }
            if words == Some(Descent::Engaged) {
                conflicts.add("engaged-on-a-breech", &["descent"]);
            }
        }
        _ => {
            let up = head.and_then(|pole| pole.level).is_some_and(|level| level >= Level::High);
            if up && fifths.is_some() {
                conflicts.add("head-in-two-places", &["head", "head-above-brim"]);
            }
        }
    }
    if let (Some(k), Some(words)) = (fifths, words)
        && ((words == Descent::Free && k <= 2) || (words == Descent::Engaged && k >= 3))
    {
        conflicts.add("fifths-against-descent", &["head-above-brim", "descent"]);
    }
    let flexed = presentation == Some(Presentation::Cephalic) && attitude != Some(Attitude::Deflexed);
    *engaged = match (fifths, words) {
        _ if !flexed => None,
        // Two findings that do not agree: neither is called so.
        (Some(k), Some(Descent::Free)) if k <= 2 => None,
        (Some(k), Some(Descent::Engaged)) if k >= 3 => None,
        // Two fifths or less palpable. Source: engagement-fifths table (Crichton; Bettercare 8A), seen.
        (Some(k), _) => Some(k <= 2),
        (None, Some(Descent::Engaged)) => Some(true),
        (None, Some(Descent::Free)) => Some(false),
        (None, _) => None,
    };
}

/// A heart that was not heard has no rate.
fn heart(baby: &Baby, conflicts: &mut Conflicts<'_>) {
    if matches!(baby.heart, Finding::Absent | Finding::NotTried) {
        for (name, found) in [
            ("heart-counts", baby.heart_counts.value().is_some()),
            ("heart-rate", baby.heart_rate.value().is_some()),
            ("heart-rise", baby.heart_rise.value().is_some()),
        ] {
            if found {
                conflicts.add("heart-not-heard-but-counted", &["heart", name]);
            }
        }
    }
}

/// Whether anything the conclusion rests on was written with `?`.
fn unsure(baby: &Baby, from_findings: bool) -> bool {
    let felt = baby.head.is_unsure()
        || baby.breech.is_unsure()
        || baby.back.is_unsure()
        || baby.head_above_brim.is_unsure();
    let attitude = baby.attitude.is_unsure();
    let given = baby.lie.is_unsure() || baby.presentation.is_unsure() || baby.position.is_unsure();
    felt || attitude || (given && !from_findings)
}

/// What of how a baby lies is unsure.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Unsure {
    /// Which way it lies, and so where head and bottom are.
    pub lie: bool,
    /// Where its back is.
    pub back: bool,
}

impl Unsure {
    /// Of this baby and what is concluded of it.
    pub fn of(baby: &Baby, conclusion: &Conclusion) -> Self {
        let position = baby.position.is_unsure();
        let fifths = baby.head_above_brim.is_unsure();
        let lie = position
            || baby.head.is_unsure()
            || baby.breech.is_unsure()
            || baby.lie.is_unsure()
            || baby.presentation.is_unsure()
            || (fifths && baby.head.value().is_none());
        let back = baby.back.is_unsure() || (baby.back.value().is_none() && position);
        // Doubt that cannot be traced to one finding is said of both.
        let traced = lie || back || fifths || baby.attitude.is_unsure();
        let all = conclusion.unsure && !traced;
        Self { lie: lie || all, back: back || all }
    }
}
