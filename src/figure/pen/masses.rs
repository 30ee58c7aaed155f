//! The masses that a pen goes round: head, trunk, and the pieces of each limb. In: a posed baby and the picture of all that
//! lies before it. Out: the outline of each mass, and which stretches of it are seen.
//!
//! Each mass is cast alone, so that its outline goes on smoothly behind what hides it.

use super::plane::{self, P, STEP, add, area, left_of, length, spaced, tangent};
use crate::body::baby::PosedBaby;
use crate::body::cast::{Cast, is_met};
use crate::body::part::{Part, Region};
use crate::body::shape::{self, Piece};
use crate::figure::grid::{Line, Tracer, Window};
use crate::units::BabySide;

/// Side of a cell, cm: finer than any pen.
pub const CELL: f32 = 0.1;

/// The sides of a baby in an order that turns over with `sign`.
pub fn sides(sign: f32) -> [BabySide; 2] {
    if sign < 0.0 { [BabySide::Right, BabySide::Left] } else { BabySide::BOTH }
}

/// A mass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Mass {
    /// The head, without its ears.
    Head,
    /// Trunk, neck and bottom.
    Trunk,
    /// A thigh.
    Thigh(BabySide),
    /// A lower leg.
    Shin(BabySide),
    /// A foot with its toes.
    Foot(BabySide),
    /// An upper arm.
    UpperArm(BabySide),
    /// A forearm.
    Forearm(BabySide),
    /// A hand with its fingers.
    Hand(BabySide),
}

impl Mass {
    /// All of them; limbs on her left side first, so that a mirrored baby's come in the same order.
    pub fn all(sign: f32) -> impl Iterator<Item = Mass> {
        let limb = |side| {
            [
                Mass::Thigh(side),
                Mass::Shin(side),
                Mass::Foot(side),
                Mass::UpperArm(side),
                Mass::Forearm(side),
                Mass::Hand(side),
            ]
        };
        [Mass::Head, Mass::Trunk].into_iter().chain(sides(sign).into_iter().flat_map(limb))
    }

    /// The mass of a part.
    pub fn of(part: Part) -> Mass {
        match part.region() {
            Region::Head => Mass::Head,
            Region::Trunk => Mass::Trunk,
            Region::Arm(side) if part == Part::upper_arm(side) => Mass::UpperArm(side),
            Region::Arm(side) if part == Part::forearm(side) => Mass::Forearm(side),
            Region::Arm(side) => Mass::Hand(side),
            Region::Leg(side) if part == Part::thigh(side) => Mass::Thigh(side),
            Region::Leg(side) if part == Part::shin(side) => Mass::Shin(side),
            Region::Leg(side) => Mass::Foot(side),
        }
    }

    fn piece(self) -> Piece {
        match self {
            Mass::Head => Piece::Skull,
            Mass::Trunk => Piece::Trunk,
            Mass::Thigh(side) => Piece::Only(Part::thigh(side)),
            Mass::Shin(side) => Piece::Only(Part::shin(side)),
            Mass::Foot(side) => Piece::Foot(side),
            Mass::UpperArm(side) => Piece::Only(Part::upper_arm(side)),
            Mass::Forearm(side) => Piece::Only(Part::forearm(side)),
            Mass::Hand(side) => Piece::Hand(side),
        }
    }

    /// The side of the baby, of a limb.
    pub fn side(self) -> Option<BabySide> {
        match self {
            Mass::Head | Mass::Trunk => None,
            Mass::Thigh(side) | Mass::Shin(side) | Mass::Foot(side) => Some(side),
            Mass::UpperArm(side) | Mass::Forearm(side) | Mass::Hand(side) => Some(side),
        }
    }

    /// Whether it is of an arm.
    pub fn is_arm(self) -> bool {
        matches!(self, Mass::UpperArm(_) | Mass::Forearm(_) | Mass::Hand(_))
    }

    /// Whether it is of a leg.
    pub fn is_leg(self) -> bool {
        matches!(self, Mass::Thigh(_) | Mass::Shin(_) | Mass::Foot(_))
    }

    /// How far `other` must lie behind it for a line between them, cm: masses that grow together need more.
    fn depth_of_line(self, other: Mass) -> f32 {
        let pair = |a: Mass, b: Mass| (a, b) == (self, other) || (b, a) == (self, other);
        let one_limb =
            self.side().is_some() && self.side() == other.side() && self.is_arm() == other.is_arm();
        let with_trunk = |m: Mass| pair(Mass::Trunk, m);
        if one_limb {
            0.9
        } else if with_trunk(Mass::Head) {
            0.3
        } else if BabySide::BOTH.into_iter().any(|s| with_trunk(Mass::Thigh(s))) {
            0.28
        } else if BabySide::BOTH.into_iter().any(|s| with_trunk(Mass::UpperArm(s))) {
            0.4
        } else {
            0.45
        }
    }
}

/// One baby's masses, and what is seen of all babies.
pub struct Masses<'a> {
    /// What is seen.
    pub all: &'a Cast,
    /// What would be seen of this baby alone.
    pub own: &'a Cast,
    /// -1 when all is turned over, left for right.
    pub sign: f32,
    /// Each mass alone.
    pub alone: Vec<(Mass, Cast)>,
}

impl<'a> Masses<'a> {
    /// Casts these masses of a baby.
    pub fn of(baby: &PosedBaby, (all, own): (&'a Cast, &'a Cast), sign: f32, masses: &[Mass]) -> Self {
        let pieces = masses.iter().map(|mass| mass.piece());
        let casts = shape::cast_pieces(&baby.shape, pieces, CELL, sign < 0.0);
        let alone = masses.iter().zip(casts).filter_map(|(mass, cast)| Some((*mass, cast?))).collect();
        Masses { all, own, sign, alone }
    }

    /// The outline of this baby, as if it lay alone.
    pub fn outer(&self) -> Option<Line> {
        outline(self.own)
    }

    /// The mass nearest to a place of that outline.
    pub fn mass_near(&self, p: P) -> Mass {
        let inside = |r: f32| {
            (0..8).find_map(|k| {
                let (sin, cos) = libm::sincosf(k as f32 / 8.0 * std::f32::consts::TAU);
                let i = self.own.index_at(p.0 + r * cos, p.1 + r * sin).filter(|i| self.own.hit(*i))?;
                Some(Mass::of(self.own.part[i]))
            })
        };
        [0.1, 0.3, 0.6].into_iter().find_map(inside).unwrap_or(Mass::Trunk)
    }

    /// A mass alone.
    pub fn cast(&self, mass: Mass) -> Option<&Cast> {
        self.alone.iter().find(|(own, _)| *own == mass).map(|(_, cast)| cast)
    }

    /// How much of a mass is seen: area in cm2, and share of the whole.
    pub fn shown(&self, mass: Mass) -> (f32, f32) {
        let Some(cast) = self.cast(mass) else { return (0.0, 0.0) };
        let (mut whole, mut seen) = (0u32, 0u32);
        for (x, y, i) in cast.hits() {
            whole += 1;
            seen += u32::from(depth(self.all, (x, y)).is_none_or(|z| z < cast.depth[i] + 0.25));
        }
        (seen as f32 * CELL * CELL, seen as f32 / whole.max(1) as f32)
    }

    /// What is seen at a place: its mass and depth.
    pub fn seen(&self, p: P) -> Option<(Mass, f32)> {
        let i = self.all.index_at(p.0, p.1)?;
        self.all.hit(i).then(|| (Mass::of(self.all.part[i]), self.all.depth[i]))
    }

    /// The outline of a mass, anticlockwise, its largest piece.
    pub fn outline(&self, mass: Mass) -> Option<Line> {
        let cast = self.cast(mass)?;
        outline(cast)
    }

    /// The stretches of a mass's outline that a pen draws, as they are seen.
    pub fn seen_outline(&self, mass: Mass) -> Vec<Line> {
        let (Some(cast), Some(ring)) = (self.cast(mass), self.outline(mass)) else { return vec![] };
        let keep: Vec<bool> = (0..ring.len()).map(|i| self.is_line(mass, cast, &ring, i)).collect();
        // Smoothed whole, so that what is seen runs on behind what hides it.
        let sigma = match mass {
            Mass::Trunk | Mass::Thigh(_) => 0.6,
            Mass::Foot(_) | Mass::Hand(_) => 0.25,
            _ => 0.4,
        };
        let smooth = plane::rounded_ring(&ring, sigma);
        plane::stretches(&smooth, &keep, true, 0.7, 0.7)
    }

    /// Whether an outline is a line at this point: seen, and before something that lies deeper.
    pub fn is_line(&self, mass: Mass, cast: &Cast, ring: &[P], i: usize) -> bool {
        let n = ring.len();
        let run = plane::unit(plane::sub(ring[(i + 2) % n], ring[(i + n - 2) % n]));
        let outward = left_of((-run.0, -run.1));
        let inside = add(ring[i], outward, -0.3);
        let own = depth(cast, inside).or_else(|| depth(cast, add(ring[i], outward, -0.15)));
        let Some(own) = own else { return false };
        match self.seen(inside) {
            Some((seen, z)) if seen != mass && z > own + 0.25 => return false,
            _ => {}
        }
        match self.seen(add(ring[i], outward, 0.25)) {
            None => true,
            Some((other, _)) if other == mass => false,
            Some((other, z)) => z < own - mass.depth_of_line(other),
        }
    }
}

/// The outline of what was met, anticlockwise: its largest piece, closed, without its first point repeated.
pub fn outline(cast: &Cast) -> Option<Line> {
    let window = Window::round(cast, &cast.depth, |z| is_met(*z))?;
    let inside = |i: usize| if cast.hit(i) { 0.5 } else { -0.5 };
    let rings = Tracer::default().contours(cast, window, inside);
    let ring = rings.into_iter().max_by(|a, b| area(a).abs().total_cmp(&area(b).abs()))?;
    let mut ring = plane::rounded_ring(&spaced(&ring, true, STEP), 0.2);
    if area(&ring) < 0.0 {
        ring.reverse();
    }
    (length(&ring) > 2.0).then_some(ring)
}

/// The depth of what was met at a place.
pub fn depth(cast: &Cast, p: P) -> Option<f32> {
    cast.index_at(p.0, p.1).filter(|i| cast.hit(*i)).map(|i| cast.depth[i])
}

/// A line, and the mass it goes round at each point.
#[derive(Clone, Debug)]
pub struct Run {
    /// Its points.
    pub line: Line,
    /// The mass at each.
    pub of: Vec<Mass>,
}

impl Run {
    /// A line round one mass.
    pub fn new(line: Line, mass: Mass) -> Self {
        let of = vec![mass; line.len()];
        Run { line, of }
    }
    /// The same, end for end.
    pub fn turned(mut self) -> Self {
        self.line.reverse();
        self.of.reverse();
        self
    }
    /// The share of it that goes round masses of a kind.
    pub fn share(&self, kind: impl Fn(Mass) -> bool) -> f32 {
        self.of.iter().filter(|m| kind(**m)).count() as f32 / self.of.len().max(1) as f32
    }
    /// The direction in which it leaves at an end.
    pub fn leaving(&self, at_end: bool) -> P {
        let n = self.line.len();
        if at_end {
            tangent(&self.line, n - 1, 8.min(n - 1))
        } else {
            let t = tangent(&self.line, 0, 8.min(n - 1));
            (-t.0, -t.1)
        }
    }
    /// The point at an end.
    pub fn end(&self, at_end: bool) -> P {
        if at_end { self.line[self.line.len() - 1] } else { self.line[0] }
    }
    /// Rounded by `sigma`; the masses go along.
    pub fn rounded(self, sigma: f32) -> Self {
        let line = plane::rounded(&self.line, sigma);
        let (n, m) = (line.len().max(2), self.of.len());
        let of = (0..line.len()).map(|i| self.of[(i * (m - 1) + (n - 1) / 2) / (n - 1)]).collect();
        Run { line, of }
    }
    /// The stretches for which `keep` holds.
    pub fn kept(&self, keep: &[bool], least: f32, bridged: f32) -> Vec<Run> {
        let mut runs: Vec<(usize, usize)> = vec![];
        for i in (0..self.line.len()).filter(|i| keep[*i]) {
            match runs.last_mut() {
                Some(last) if (i - last.1) as f32 * STEP < bridged + STEP => last.1 = i,
                _ => runs.push((i, i)),
            }
        }
        let cut =
            |(a, b): (usize, usize)| Run { line: self.line[a..=b].to_vec(), of: self.of[a..=b].to_vec() };
        runs.into_iter().map(cut).filter(|run| length(&run.line) > least).collect()
    }
}
