//! Which positions agree with what was found. In: an exam and its conclusions. Out: `fits`, and look-again remarks.
//!
//! A position fits when nothing that was felt forbids it once it is supposed, and limbs and heart lie as they do with it.
//! Only positions with a code are tried: a slanting lie, and a crosswise back to ribs or feet, have none.

use super::Remark;
use super::ledger::rule;
use crate::exam::{
    Attitude, Baby, Conclusion, Denominator, Exam, Finding, Found, HeartHeard, Height, KnownBy, ListenedWith,
    Octant, Place, Position, Presentation, Prominence, conclude,
};
use crate::units::MotherSide;

/// What agrees for one baby.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Agreement {
    /// The positions that agree with everything found, in the order of `Position::all`; empty when none does, or when
    /// nothing was found that could tell them apart.
    pub fits: Vec<Position>,
}

/// The agreement of each baby, and the remarks, in the order of the file.
pub fn agreement(exam: &Exam, conclusions: &[Conclusion]) -> (Vec<Agreement>, Vec<Remark>) {
    let (mut all, mut remarks) = (vec![], vec![]);
    for (index, (baby, conclusion)) in exam.babies.iter().zip(conclusions).enumerate() {
        all.push(Agreement { fits: fits(exam, index, baby, conclusion) });
        // Findings that cannot all be right are reported as such, and only once.
        if conclusion.conflicts.is_empty() {
            remarks.extend(look_again(exam, index, baby, conclusion));
        }
    }
    (all, remarks)
}

fn fits(exam: &Exam, index: usize, baby: &Baby, conclusion: &Conclusion) -> Vec<Position> {
    let told = conclusion.lie.is_some() || conclusion.head_up.is_some() || conclusion.back.is_some();
    if !told || !conclusion.conflicts.is_empty() {
        return vec![];
    }
    let bent_back = matches!(conclusion.presentation, Some(Presentation::Face | Presentation::Brow));
    let mut supposed = exam.clone();
    Position::all()
        .filter(|position| {
            // Brow and face are tried only when something found names them.
            if let Position::Lengthwise { denominator: Denominator::Mentum | Denominator::Frontum, .. } =
                position
                && !bent_back
            {
                return false;
            }
            if baby.position.value().is_some_and(|given| given != position) {
                return false;
            }
            if let Some(tried) = supposed.babies.get_mut(index) {
                tried.position =
                    Finding::Found(Found { value: *position, sure: true, known_by: KnownBy::Hands });
            }
            let back = position.back_octant();
            conclude(&supposed, index).conflicts.is_empty()
                && (baby.limbs.is_unsure() || !limbs_beside_back(baby, back))
        })
        .collect()
}

/// The side of a back that lies to a side or to the front of it. Further behind, limbs and heart may be at either side.
fn clear_side(back: Option<Octant>) -> Option<MotherSide> {
    back.filter(|octant| matches!(octant.get(), 1 | 2 | 6 | 7)).and_then(Octant::side)
}

/// Whether limbs were felt, between the ends of the womb, on the side of the back and nowhere else.
fn limbs_beside_back(baby: &Baby, back: Option<Octant>) -> bool {
    let (Some(side), Some(limbs)) = (clear_side(back), baby.limbs.value()) else { return false };
    let between = |place: &Place| {
        !matches!(place.height, Some(Height::Fundus | Height::AbovePubicBone | Height::IliacFossa))
    };
    !limbs.is_empty() && limbs.iter().all(|place| between(place) && place.side() == Some(side))
}

fn look_again(exam: &Exam, index: usize, baby: &Baby, conclusion: &Conclusion) -> Vec<Remark> {
    let mut remarks = vec![];
    // `back = "left"` alone is felt at the side.
    let lengthwise = conclusion.head_up.is_some() && conclusion.lie == Some(crate::exam::Lie::Longitudinal);
    let back = conclusion.back.filter(|_| lengthwise);
    let octant = back.and_then(|back| match (back.side, back.turn) {
        (Some(MotherSide::Left), None) => Some(Octant::new(2)),
        (Some(MotherSide::Right), None) => Some(Octant::new(6)),
        _ => Octant::of_back(back),
    });
    let told = back.is_some_and(|back| back.turn.is_some());
    let name = if baby.back.value().is_some() { "back" } else { "position" };
    if limbs_beside_back(baby, octant) {
        let rule = const { rule("limbs-on-the-side-of-the-back") };
        remarks.push(Remark::new(rule).of_baby(exam, index, &[name, "limbs"]));
    }
    let face = conclusion.presentation == Some(Presentation::Face);
    let doppler = baby.heart_with.value() == Some(&ListenedWith::Doppler);
    if let Some(HeartHeard::At(place)) = baby.heart.value()
        && !doppler
        && !face
    {
        if told
            && let (Some(side), Some(heard)) = (clear_side(octant), place.side())
            && side != heard
        {
            let rule = const { rule("heart-far-from-the-back") };
            remarks.push(Remark::new(rule).of_baby(exam, index, &["heart", name]));
        }
        let high = match place.height {
            Some(Height::AboveNavel | Height::Fundus) => Some(true),
            Some(Height::BelowNavel | Height::IliacFossa | Height::AbovePubicBone) => Some(false),
            _ => None,
        };
        if lengthwise && high.is_some() && high != conclusion.head_up {
            let end = [
                ("head", baby.head.value().is_some()),
                ("breech", baby.breech.value().is_some()),
                ("head-above-brim", baby.head_above_brim.value().is_some()),
                ("presentation", baby.presentation.value().is_some()),
                ("position", baby.position.value().is_some()),
            ];
            let mut names = vec!["heart"];
            names.extend(end.iter().filter(|(_, known)| *known).map(|(name, _)| *name));
            let rule = const { rule("heart-height-against-the-end-that-is-down") };
            remarks.push(Remark::new(rule).of_baby(exam, index, &names));
        }
    }
    let bent = matches!(baby.attitude.value(), Some(Attitude::Brow | Attitude::Face | Attitude::Deflexed));
    if baby.prominence.value() == Some(&Prominence::BackSide)
        && conclusion.presentation == Some(Presentation::Cephalic)
        && !bent
    {
        let rule = const { rule("prominence-on-the-side-of-the-back") };
        remarks.push(Remark::new(rule).of_baby(exam, index, &["prominence"]));
    }
    remarks
}
