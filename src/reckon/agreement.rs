//! Which positions agree with what was found. In: an exam and its conclusions. Out: `fits`, and look-again remarks.
//!
//! Every position with a code is supposed in turn, and a slanting lie and a crosswise back to ribs or feet beside them; each
//! finding says by itself with which of them it agrees. What agrees with all findings fits. Where nothing does, the smallest
//! sets of findings that agree with no position are named. All of it is exact: sets of positions, cut with one another.

use super::Remark;
use super::ledger::{Rule, rule};
use crate::exam::{
    Attitude, Baby, Back, BackTurn, Conclusion, Denominator, Descent, Exam, Finding, Found, HeartHeard,
    Height, KnownBy, Legs, Lie, ListenedWith, Octant, Place, Position, Presentation, Prominence, conclude,
};
use crate::units::{Gestation, MotherSide};

/// From here on the heart of a baby that is bottom down is heard at the navel or above, 32+0. Source: fetal-heart-location
/// table (HESP-MID), seen; that it holds from here on is derived from the map of what hands feel.
const NAVEL_DIVIDES: Gestation = Gestation::from_days(32 * 7);

/// What agrees for one baby.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Agreement {
    /// The positions that agree with everything found, in the order of `Position::all`; when none does, those that agree
    /// with what is sure. Empty when none does even so, or when nothing was found that could tell them apart.
    pub fits: Vec<Position>,
}

/// The agreement of each baby, and the remarks, in the order of the file.
pub fn agreement(exam: &Exam, conclusions: &[Conclusion]) -> (Vec<Agreement>, Vec<Remark>) {
    let (mut all, mut remarks) = (vec![], vec![]);
    for (index, (baby, conclusion)) in exam.babies.iter().zip(conclusions).enumerate() {
        // Findings that cannot all be right are reported as such, and only once.
        if !conclusion.conflicts.is_empty() {
            all.push(Agreement::default());
            continue;
        }
        let supposed = supposed(conclusion);
        let findings = findings(exam, index, baby, &supposed);
        all.push(Agreement { fits: fits(conclusion, &supposed, &findings) });
        remarks.extend(conflicts(exam, index, &findings, &supposed));
        remarks.extend(prominence(exam, index, baby, conclusion));
        remarks.extend(fifths(exam, index, baby, conclusion));
    }
    (all, remarks)
}

/// A way to lie that is supposed.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Supposed {
    Coded(Position),
    Slanting,
    /// Crosswise, the back to her ribs or feet.
    Across(BackTurn),
}

/// Sets of supposed positions, a bit for each.
type Set = u64;

/// All that are supposed. Brow and face only when something found names them.
fn supposed(conclusion: &Conclusion) -> Vec<Supposed> {
    let bent_back = matches!(conclusion.presentation, Some(Presentation::Face | Presentation::Brow));
    let tried = |position: &Position| match position {
        Position::Lengthwise { denominator, .. } => {
            bent_back || !matches!(denominator, Denominator::Mentum | Denominator::Frontum)
        }
        Position::Crosswise { .. } => true,
    };
    Position::all()
        .filter(tried)
        .map(Supposed::Coded)
        .chain([Supposed::Slanting, Supposed::Across(BackTurn::Ribs), Supposed::Across(BackTurn::Feet)])
        .collect()
}

impl Supposed {
    fn back(self) -> Option<Octant> {
        match self {
            Supposed::Coded(position) => position.back_octant(),
            Supposed::Slanting | Supposed::Across(_) => None,
        }
    }
    /// Whether its head is up; `None` where it is neither up nor down.
    fn head_up(self) -> Option<bool> {
        match self {
            Supposed::Coded(Position::Lengthwise { denominator, .. }) => {
                Some(denominator.presentation() == Presentation::Breech)
            }
            Supposed::Coded(Position::Crosswise { .. }) | Supposed::Slanting | Supposed::Across(_) => None,
        }
    }
    fn is_face(self) -> bool {
        matches!(self, Supposed::Coded(Position::Lengthwise { denominator: Denominator::Mentum, .. }))
    }
}

/// What one finding says of the supposed positions.
#[derive(Clone, Debug)]
struct Says {
    /// Its key, without the baby.
    key: &'static str,
    /// What is spoken of when it does not agree.
    about: About,
    /// With which it agrees.
    agrees: Set,
    /// False for what was written with `?`.
    sure: bool,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum About {
    /// Head, bottom, back, or a conclusion that was written.
    Lie,
    Limbs,
    HeartSide,
    HeartHeight,
    Dip,
}

fn findings(exam: &Exam, index: usize, baby: &Baby, supposed: &[Supposed]) -> Vec<Says> {
    let mut all = vec![];
    let mut push = |key, about, sure, agrees: &dyn Fn(Supposed) -> bool| {
        let set = supposed
            .iter()
            .enumerate()
            .filter(|(_, supposed)| agrees(**supposed))
            .fold(0, |set: Set, (bit, _)| set | 1 << bit);
        all.push(Says { key, about, agrees: set, sure });
    };
    let alone = Alone::new(exam, index);
    macro_rules! direct {
        ($($key:literal $field:ident),*) => {$(
            if baby.$field.value().is_some() {
                let agrees = |supposed| alone.agrees(|lone| lone.$field = baby.$field.clone(), supposed);
                push($key, About::Lie, !baby.$field.is_unsure(), &agrees);
            }
        )*};
    }
    direct!(
        "head" head, "breech" breech, "back" back, "head-above-brim" head_above_brim, "descent" descent,
        "lie" lie, "presentation" presentation, "position" position
    );
    // How the head is held, where it decides what leads.
    if matches!(baby.attitude.value(), Some(Attitude::Brow | Attitude::Face)) {
        direct!("attitude" attitude);
    }
    if let Some(limbs) = baby.limbs.value() {
        push("limbs", About::Limbs, !baby.limbs.is_unsure(), &|supposed| {
            !beside_back(limbs, supposed.back())
        });
    }
    if baby.dip_at_navel.value() == Some(&true) {
        // A back that lies to the front leaves no dip.
        let in_front =
            |supposed: Supposed| supposed.back().is_some_and(|back| matches!(back.get(), 0 | 1 | 7));
        push("dip-at-navel", About::Dip, !baby.dip_at_navel.is_unsure(), &|supposed| !in_front(supposed));
    }
    // A Doppler can be heard far from the place where a horn hears best.
    let doppler = baby.heart_with.value() == Some(&ListenedWith::Doppler);
    if let Some(HeartHeard::At(place)) = baby.heart.value()
        && !doppler
    {
        let sure = !baby.heart.is_unsure();
        let aside = |supposed: Supposed| {
            !supposed.is_face()
                && matches!((clear_side(supposed.back()), place.side()), (Some(back), Some(heard)) if back != heard)
        };
        push("heart", About::HeartSide, sure, &|supposed| !aside(supposed));
        let high = match place.height {
            Some(Height::AboveNavel | Height::Fundus) => Some(true),
            Some(Height::BelowNavel | Height::IliacFossa | Height::AbovePubicBone) => Some(false),
            _ => None,
        };
        // Before, a womb reaches so little above the navel that the heart of a bottom that is down lies below it too.
        let divides = exam.weeks.is_none_or(|weeks| weeks >= NAVEL_DIVIDES);
        // A bottom deep in the pelvis, its legs stretched beside it, brings the heart down with it.
        let deep_with_straight_legs =
            baby.descent.value() == Some(&Descent::Deep) && matches!(baby.legs.value(), Some(Legs::Frank));
        let far = |supposed: Supposed| match (supposed.head_up(), high) {
            _ if supposed.is_face() => false,
            (Some(true), Some(false)) => divides && !deep_with_straight_legs,
            (Some(false), Some(true)) => true,
            _ => false,
        };
        push("heart", About::HeartHeight, sure, &|supposed| !far(supposed));
    }
    all
}

/// One finding, held against a supposed position with nothing else beside it.
struct Alone {
    exam: Exam,
    blank: Baby,
    index: usize,
}

impl Alone {
    fn new(exam: &Exam, index: usize) -> Self {
        let mut exam = exam.clone();
        let blank = Baby::default();
        if let Some(baby) = exam.babies.get_mut(index) {
            *baby = blank.clone();
        }
        Self { exam, blank, index }
    }
    fn agrees(&self, put: impl Fn(&mut Baby), supposed: Supposed) -> bool {
        let mut lone = self.blank.clone();
        put(&mut lone);
        if let Supposed::Coded(position) = supposed {
            if lone.position.value().is_some_and(|given| *given != position) {
                return false;
            }
            lone.position = found(position);
        } else {
            if lone.position.value().is_some() {
                return false;
            }
            let (lie, back) = match supposed {
                Supposed::Across(turn) => (Lie::Transverse, Some(Back { side: None, turn: Some(turn) })),
                Supposed::Slanting | Supposed::Coded(_) => (Lie::Oblique, None),
            };
            if lone.lie.value().is_some_and(|given| *given != lie) {
                return false;
            }
            if let (Some(felt), Some(back)) = (lone.back.value(), back)
                && *felt != back
            {
                return false;
            }
            lone.lie = found(lie);
        }
        let mut exam = self.exam.clone();
        if let Some(baby) = exam.babies.get_mut(self.index) {
            *baby = lone;
        }
        conclude(&exam, self.index).conflicts.is_empty()
    }
}

fn found<T>(value: T) -> Finding<T> {
    Finding::Found(Found { value, sure: true, known_by: KnownBy::Hands })
}

/// The side of a back that lies to a side or to the front of it. Further behind, limbs and heart may be at either side.
fn clear_side(back: Option<Octant>) -> Option<MotherSide> {
    back.filter(|octant| matches!(octant.get(), 1 | 2 | 6 | 7)).and_then(Octant::side)
}

/// Whether limbs were felt, between the ends of the womb, on the side of the back and nowhere else.
fn beside_back(limbs: &[Place], back: Option<Octant>) -> bool {
    let Some(side) = clear_side(back) else { return false };
    let between = |place: &&Place| {
        !matches!(place.height, Some(Height::Fundus | Height::AbovePubicBone | Height::IliacFossa))
    };
    let mut told = limbs.iter().filter(between).peekable();
    told.peek().is_some() && told.all(|place| place.side() == Some(side))
}

fn cut(findings: &[Says], taken: impl Fn(&Says) -> bool) -> Set {
    findings.iter().filter(|says| taken(says)).fold(Set::MAX, |set, says| set & says.agrees)
}

/// The coded positions that agree with everything, or else with what is sure.
fn fits(conclusion: &Conclusion, supposed: &[Supposed], findings: &[Says]) -> Vec<Position> {
    let told = conclusion.lie.is_some() || conclusion.head_up.is_some() || conclusion.back.is_some();
    if !told {
        return vec![];
    }
    let every: Set = (1 << supposed.len()) - 1;
    let sets = [cut(findings, |_| true), cut(findings, |says| says.sure)];
    let set = sets.into_iter().map(|set| set & every).find(|set| *set != 0).unwrap_or(0);
    let coded =
        supposed.iter().enumerate().filter(|(bit, _)| set & 1 << bit != 0).map(|(_, supposed)| *supposed);
    coded
        .filter_map(|supposed| match supposed {
            Supposed::Coded(position) => Some(position),
            Supposed::Slanting | Supposed::Across(_) => None,
        })
        .collect()
}

/// The remarks of the smallest sets of findings that agree with no supposed position, in the order of the findings; sets
/// of which the same is said make one remark.
fn conflicts(exam: &Exam, index: usize, findings: &[Says], supposed: &[Supposed]) -> Vec<Remark> {
    let every: Set = (1 << supposed.len()) - 1;
    let chosen = |number: u32| {
        let taken = move |at: usize| number & 1 << at != 0;
        findings.iter().enumerate().filter(move |(at, _)| taken(*at)).map(|(_, says)| says)
    };
    let none = |number: &u32| chosen(*number).fold(every, |set, says| set & says.agrees) == 0;
    let numbers = 1..1_u32 << findings.len();
    let Some(smallest) = numbers.clone().filter(none).map(u32::count_ones).min() else { return vec![] };
    let mut keys_of: Vec<(&Rule, Vec<&str>)> = vec![];
    for number in numbers.filter(|number| number.count_ones() == smallest).filter(none) {
        let rule = rule_of(chosen(number));
        let keys = chosen(number).map(|says| says.key);
        match keys_of.iter_mut().find(|(known, _)| known.id == rule.id) {
            Some((_, known)) => known.extend(keys),
            None => keys_of.push((rule, keys.collect())),
        }
    }
    keys_of.into_iter().map(|(rule, keys)| said(exam, index, rule, keys)).collect()
}

/// What is said of a set.
fn rule_of<'f>(set: impl Iterator<Item = &'f Says>) -> &'static Rule {
    let about: Vec<About> = set.map(|says| says.about).filter(|about| *about != About::Lie).collect();
    match about[..] {
        [About::Limbs] => const { rule("limbs-on-the-side-of-the-back") },
        [About::HeartSide] => const { rule("heart-far-from-the-back") },
        [About::HeartHeight] => const { rule("heart-height-against-the-end-that-is-down") },
        [About::Dip] => const { rule("dip-with-a-back-in-front") },
        _ => const { rule("findings-fit-no-position") },
    }
}

fn said(exam: &Exam, index: usize, rule: &Rule, keys: Vec<&str>) -> Remark {
    let mut once: Vec<&str> = vec![];
    for key in keys {
        if !once.contains(&key) {
            once.push(key);
        }
    }
    let words = |key: &&str| {
        let name = format!("baby.{}.{key}", index + 1);
        exam.read.iter().find(|(read, _)| *read == name).map(|(_, words)| format!("{key} = {words}"))
    };
    let said: Vec<String> = once.iter().filter_map(words).collect();
    Remark::new(rule).of_baby(exam, index, &once).with("said", said.join("; "))
}

/// A head that stands out on the side of the back, and is not said to be bent back.
fn prominence(exam: &Exam, index: usize, baby: &Baby, conclusion: &Conclusion) -> Option<Remark> {
    let bent = matches!(baby.attitude.value(), Some(Attitude::Brow | Attitude::Face | Attitude::Deflexed));
    (baby.prominence.value() == Some(&Prominence::BackSide)
        && conclusion.presentation == Some(Presentation::Cephalic)
        && !bent)
        .then(|| {
            let rule = const { rule("prominence-on-the-side-of-the-back") };
            Remark::new(rule).of_baby(exam, index, &["prominence"])
        })
}

/// Fifths of a face, a brow, or a head back to back read low: less of it is felt than stands above the brim.
fn fifths(exam: &Exam, index: usize, baby: &Baby, conclusion: &Conclusion) -> Option<Remark> {
    let low = baby.head_above_brim.value().is_some_and(|fifths| fifths.get() <= 2);
    let bent_back = matches!(conclusion.presentation, Some(Presentation::Face | Presentation::Brow));
    let behind =
        conclusion.back.and_then(Octant::of_back).is_some_and(|octant| matches!(octant.get(), 3..=5));
    let head = conclusion.presentation == Some(Presentation::Cephalic);
    (low && (bent_back || (head && behind))).then(|| {
        let rule = const { rule("fifths-may-read-low") };
        Remark::new(rule).of_baby(exam, index, &["head-above-brim"])
    })
}
