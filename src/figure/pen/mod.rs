//! The pen baby: a baby as a hand draws it with one pen, in few smooth strokes. In: a pose. Out: strokes in the order of
//! drawing, in cm, as someone in front of her sees them.
//!
//! Place, size and side are those of the findings: strokes go round the masses of the posed form, smoothed, and through its
//! landmarks. Face, hands and feet are designed for a pen and laid where the form has them. What lies in the pelvis is marked, so
//! that it may be dotted; what is hidden is left out.

mod draw;
mod foot;
mod hand;
mod head;
mod join;
mod masses;
mod name;
mod plane;
mod round;
mod short;

pub use draw::{outlines, pen};
pub use short::short;

use super::fit;
use super::grid::Line;
use super::scene::{Path, Step};
use crate::units::{BabySide, FigurePoint};
use masses::Mass;

/// What a stroke draws, in the order of drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// Round the head.
    Head,
    /// Down the back.
    Back,
    /// Round the bottom.
    Bottom,
    /// Thigh and leg.
    Leg,
    /// A foot with its toes.
    Foot,
    /// An arm.
    Arm,
    /// A hand with its fingers.
    Hand,
    /// Neck, chest and belly.
    Belly,
    /// A shoulder blade.
    Blade,
    /// An ear.
    Ear,
    /// A closed eye.
    Eye,
    /// The nose.
    Nose,
    /// The mouth.
    Mouth,
    /// A curl of hair.
    Curl,
}

impl Kind {
    /// Whether it is a small line within the shape.
    pub fn is_fine(self) -> bool {
        matches!(self, Kind::Blade | Kind::Ear | Kind::Eye | Kind::Nose | Kind::Mouth | Kind::Curl)
    }
}

/// One stroke of the pen.
#[derive(Clone, Debug, PartialEq)]
pub struct Stroke {
    /// Number of the baby, from 1.
    pub baby: usize,
    /// What it draws.
    pub kind: Kind,
    /// The side of the baby that a limb is of.
    pub side: Option<BabySide>,
    /// It lies in the pelvis, below the upper edge of the pubic bone.
    pub deep: bool,
    /// Whether its end joins its start.
    pub closed: bool,
    /// Points from its start to its end, cm.
    pub line: Vec<FigurePoint>,
    /// Where it turns sharply on purpose: between fingers and toes.
    pub corners: Vec<FigurePoint>,
}

impl Stroke {
    /// Its length, cm.
    pub fn length(&self) -> f32 {
        self.line.windows(2).map(|w| libm::hypotf(w[1].x - w[0].x, w[1].y - w[0].y)).sum()
    }

    /// The same for a small picture: a hand or a foot without its digits; a sole that is seen whole would be no foot without its
    /// toes.
    pub fn simple(&self) -> Stroke {
        if !matches!(self.kind, Kind::Hand | Kind::Foot) {
            return self.clone();
        }
        let line: Line = self.line.iter().map(|p| (p.x, p.y)).collect();
        let line = plane::rounded(&line, if self.closed { 0.12 } else { 0.4 })
            .into_iter()
            .map(|p| FigurePoint::new(p.0, p.1))
            .collect();
        Stroke { line, corners: vec![], ..self.clone() }
    }

    /// Few curves within `tolerance` cm of it.
    pub fn path(&self, tolerance: f32) -> Path<FigurePoint> {
        let mut path = vec![Step::Move(self.line[0])];
        let is_corner =
            |p: &FigurePoint| self.corners.iter().any(|c| libm::hypotf(c.x - p.x, c.y - p.y) < 0.02);
        let mut from = 0;
        for i in 1..self.line.len() {
            if i + 1 == self.line.len() || is_corner(&self.line[i]) {
                let piece: Line = self.line[from..=i].iter().map(|p| (p.x, p.y)).collect();
                fit::open(&piece, tolerance, &mut path);
                from = i;
            }
        }
        path
    }
}

/// Something designed for a pen, before it is cut by what hides it.
#[derive(Clone, Debug)]
struct Detail {
    kind: Kind,
    side: Option<BabySide>,
    line: Line,
    corners: Line,
    depth: f32,
    /// The mass for which it stands.
    of: Option<Mass>,
}

impl Detail {
    fn fine(kind: Kind, line: Line) -> Self {
        Detail { kind, side: None, line, corners: vec![], depth: 0.0, of: None }
    }
}
