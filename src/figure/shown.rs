//! What a lesson shows on a figure beside what was found. In: places and lengths with their words. Out: marks, what they
//! cover, and what is to be named.

use super::edge::flat;
use super::marks::MarkColours;
use super::mother_ink::{ellipse, group, stroke};
use super::scene::{Item, Step};
use super::terrain::Round;
use super::wanted::Wanted;
use crate::units::{FigurePoint, MotherPoint, Vec3};

/// Something shown for a lesson, in mother space.
#[derive(Clone, Debug, PartialEq)]
pub enum Shown {
    /// A place under a hand or an ear.
    Place {
        /// Where.
        at: MotherPoint,
        /// What is there, in words.
        text: String,
    },
    /// A length on the body, from end to end.
    Length {
        /// Its ends.
        ends: [Vec3; 2],
        /// Its name and measure.
        text: String,
    },
}

/// Radius of the ring of a place, cm.
const RING: f32 = 1.0;
/// Half the length of the bars at the ends of a length, cm.
const BAR: f32 = 0.7;

impl Shown {
    /// Where its words point.
    fn at(&self) -> FigurePoint {
        match self {
            Shown::Place { at, .. } => flat(at.0),
            Shown::Length { ends: [a, b], .. } => flat(a.lerp(*b, 0.5)),
        }
    }

    /// Its words.
    pub fn text(&self) -> &str {
        match self {
            Shown::Place { text, .. } | Shown::Length { text, .. } => text,
        }
    }

    /// What is named: words that point at it. `owner`: the number of its mark.
    pub(super) fn wanted(&self, owner: usize) -> Wanted {
        let at = self.at();
        let (targets, gap) = match self {
            Shown::Place { .. } => ([Some(at); 2], RING),
            // From the side on which each end lies.
            Shown::Length { ends, .. } => {
                let mut ends = ends.map(flat);
                ends.sort_by(|a, b| a.x.total_cmp(&b.x));
                (ends.map(Some), 0.0)
            }
        };
        let side = if at.x < 0.0 { -1.0 } else { 1.0 };
        Wanted { text: self.text().to_owned(), targets, side, strong: true, gap, owner: Some(owner) }
    }

    /// What it covers.
    pub(super) fn covers(&self, mark: usize) -> Vec<Round> {
        match self {
            Shown::Place { at, .. } => vec![Round { at: flat(at.0), radius: RING + 0.1, mark }],
            Shown::Length { ends: [a, b], .. } => {
                (0..=8).map(|i| Round { at: flat(a.lerp(*b, i as f32 / 8.0)), radius: 0.5, mark }).collect()
            }
        }
    }

    /// Its marks: dark on a pale rim.
    pub(super) fn draw(&self, number: usize, c: &MarkColours) -> Item<FigurePoint> {
        let items = match self {
            Shown::Place { at, .. } => {
                let at = flat(at.0);
                let ring = ellipse(at, RING, RING);
                let dot = ellipse(at, 0.16, 0.16);
                vec![
                    stroke(ring.clone(), 0.34, c.paper),
                    stroke(ring, 0.14, c.ink),
                    stroke(dot.clone(), 0.3, c.paper),
                    stroke(dot, 0.12, c.ink),
                ]
            }
            Shown::Length { ends, .. } => {
                let [a, b] = ends.map(flat);
                let (dx, dy) = (b.x - a.x, b.y - a.y);
                let long = (dx * dx + dy * dy).sqrt().max(1e-6);
                let (nx, ny) = (-dy / long * BAR, dx / long * BAR);
                let mut path = vec![Step::Move(a), Step::Line(b)];
                for p in [a, b] {
                    path.push(Step::Move(FigurePoint::new(p.x - nx, p.y - ny)));
                    path.push(Step::Line(FigurePoint::new(p.x + nx, p.y + ny)));
                }
                vec![stroke(path.clone(), 0.4, c.paper), stroke(path, 0.16, c.ink)]
            }
        };
        group(&format!("shown-{number}"), self.text(), items)
    }
}
