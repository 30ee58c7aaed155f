//! What each step of the drawing rests on. In: one baby's findings, its pose. Out: for each step whether it was found,
//! written as a conclusion, only follows, or is not known; and which strokes are drawn broken.

use crate::body::baby::PosedBaby;
use crate::body::felt::limb_at;
use crate::body::pose::{Mark, Pose};
use crate::exam::{Baby, Finding, HeartHeard};
use crate::figure::strokes::{Step, Stroke};

/// What a step rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ground {
    /// A finding.
    Found,
    /// A finding that was marked as unsure.
    Unsure,
    /// The conclusion that the examiner wrote.
    Written,
    /// It follows from how the rest lies; it was not found itself.
    Follows,
    /// Nothing.
    NotKnown,
}

impl Ground {
    /// Whether its strokes are drawn whole.
    pub fn is_firm(self) -> bool {
        matches!(self, Ground::Found | Ground::Written)
    }
}

/// What the steps of one baby rest on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Grounds {
    /// Each step, in the order of `Step::ALL`.
    steps: [Ground; 6],
    /// Which limbs were felt: arms, then legs, left first.
    limbs: [bool; 4],
    /// Where the heart was heard.
    pub heart: Ground,
}

impl Grounds {
    /// Of the baby with this number, from 1.
    pub fn of(baby: &Baby, pose: &Pose, number: usize) -> Self {
        let posed = pose.posed().find(|(n, _)| *n == number).map(|(_, posed)| posed);
        let written = baby.position.value().is_some() || baby.presentation.value().is_some();
        let pole = |finding: Ground| match finding {
            Ground::NotKnown if written => Ground::Written,
            Ground::NotKnown => Ground::Follows,
            other => other,
        };
        let limbs = limbs(baby, pose, posed, number);
        let all_limbs = |range: std::ops::Range<usize>| {
            if limbs[range].iter().any(|felt| *felt) { ground(&baby.limbs) } else { Ground::NotKnown }
        };
        let back = match (posed, ground(&baby.back)) {
            (None, _) => Ground::NotKnown,
            (Some(_), Ground::NotKnown) => Ground::Written,
            (Some(_), found) => found,
        };
        let head = [ground(&baby.head), ground(&baby.head_above_brim)];
        let legs = match ground(&baby.legs) {
            Ground::NotKnown => all_limbs(2..4),
            known => known,
        };
        let heart = match &baby.heart {
            Finding::Found(found) if matches!(found.value, HeartHeard::At(_)) => ground(&baby.heart),
            _ => Ground::NotKnown,
        };
        Self {
            steps: [
                pole(if head[0] == Ground::NotKnown { head[1] } else { head[0] }),
                back,
                pole(ground(&baby.breech)),
                if posed.is_some() { legs } else { Ground::NotKnown },
                if posed.is_some() { all_limbs(0..2) } else { Ground::NotKnown },
                back,
            ],
            limbs,
            heart,
        }
    }

    /// What a step rests on.
    pub fn step(&self, step: Step) -> Ground {
        self.steps[step as usize]
    }

    /// Whether a stroke of this baby is drawn whole: what it shows was found.
    pub fn is_firm(&self, stroke: &Stroke) -> bool {
        let of_limb = |first: usize| match stroke.side {
            Some(side) => self.limbs[first + side.index()],
            None => false,
        };
        match stroke.step {
            Step::Arms => self.step(Step::Arms).is_firm() && of_limb(0),
            Step::Legs => self.step(Step::Legs).is_firm() && of_limb(2),
            step => self.step(step).is_firm(),
        }
    }
}

fn ground<T>(finding: &Finding<T>) -> Ground {
    match finding {
        Finding::Found(found) if found.sure => Ground::Found,
        Finding::Found(_) => Ground::Unsure,
        Finding::NotExamined | Finding::Absent | Finding::NotTried | Finding::CouldNotTell { .. } => {
            Ground::NotKnown
        }
    }
}

/// The limbs that lie where limbs were felt; both legs when it is known how they lie.
fn limbs(baby: &Baby, pose: &Pose, posed: Option<&PosedBaby>, number: usize) -> [bool; 4] {
    let mut out = [false; 4];
    let Some(posed) = posed else { return out };
    for mark in &pose.marks {
        if let Mark::Limb(n, at) = mark
            && *n == number
            && let Some(limb) = limb_at(posed, *at)
        {
            out[limb] = true;
        }
    }
    if baby.legs.value().is_some() {
        out[2] = true;
        out[3] = true;
    }
    out
}
