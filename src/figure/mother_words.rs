//! What the mother's drawing has to be told in words beside the usual labels: the level of the navel when the baby
//! lies over it, and of an early womb the womb itself and the band of the handbooks. In: a pose, anchors. Out: words with the
//! places they may point at.

use super::mother::MotherAnchor;
use crate::body::pose::{DrawingNote, Pose};
use crate::units::FigurePoint;
use crate::words::{Words, WordsError};

/// A word, and where its pointer may end: reached from her right, and from her left.
#[derive(Clone, Debug, PartialEq)]
pub struct Said {
    /// The final words.
    pub text: String,
    /// The end of the pointer for words at her right and at her left.
    pub targets: [FigurePoint; 2],
}

/// The words for a picture with levels on it; `all`: also those that only a full set of labels has.
pub fn said(
    pose: &Pose,
    anchors: &[(MotherAnchor, FigurePoint)],
    words: &Words,
    all: bool,
) -> Result<Vec<Said>, WordsError> {
    let find = |which| anchor(anchors, which);
    let both = |right, left| Some([find(right)?, find(left)?]);
    let mut out = vec![];
    let early = pose.notes.contains(&DrawingNote::WombOnly);
    if let (Some(given), Some(targets)) =
        (pose.handbooks, both(MotherAnchor::HandbooksRight, MotherAnchor::HandbooksLeft))
    {
        let text = words.say("label-handbooks", &[("weeks", &given.weeks.to_string())])?;
        out.push(Said { text, targets });
    }
    if let Some(at) = find(MotherAnchor::Womb).filter(|_| early) {
        out.push(Said { text: words.say("label-womb", &[])?, targets: [at; 2] });
    }
    if early && !all {
        // Labels of landmarks that a full set has anyway.
        if let Some(at) = find(MotherAnchor::Navel) {
            out.push(Said { text: words.say("label-navel", &[])?, targets: [at; 2] });
        }
        if find(MotherAnchor::PubicBone).is_some() {
            let targets = [-3.2, 3.2].map(|x| FigurePoint::new(x, -1.2));
            out.push(Said { text: words.say("label-pubic-bone", &[])?, targets });
        }
    }
    out.extend(navel_level(anchors, words)?);
    Ok(out)
}

/// The word for the level of a navel over which the baby lies.
pub fn navel_level(
    anchors: &[(MotherAnchor, FigurePoint)],
    words: &Words,
) -> Result<Option<Said>, WordsError> {
    let ends = [MotherAnchor::NavelLevelRight, MotherAnchor::NavelLevelLeft];
    let [Some(right), Some(left)] = ends.map(|which| anchor(anchors, which)) else { return Ok(None) };
    Ok(Some(Said { text: words.say("label-navel-level", &[])?, targets: [right, left] }))
}

fn anchor(anchors: &[(MotherAnchor, FigurePoint)], which: MotherAnchor) -> Option<FigurePoint> {
    anchors.iter().find(|(name, _)| *name == which).map(|(_, at)| *at)
}
