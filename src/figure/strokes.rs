//! The baby as lines of a pen, in the order in which a hand draws them. In: a pose and its cast. Out: strokes: each with
//! the step it belongs to, from where it starts to where it ends, as someone in front of her sees them.
//!
//! They are the lines of the picture, cut where they pass from one step to the next. Which line of the trunk is back and
//! which is belly follows from the direction of the back.

use super::grid::{self, Window};
use super::joins;
use super::lines::{self, Chain, Kind};
use super::ribbon::distance;
use super::wanted::lean;
use crate::body::baby::PosedBaby;
use crate::body::cast::{self, Cast};
use crate::body::curves::Ink;
use crate::body::part::{Part, Region};
use crate::body::pose::{Pose, Rounds};
use crate::body::shape::{self, Piece};
use crate::units::{BabySide, FigurePoint, Vec3};

/// A step of the drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Step {
    /// Round the head, with what is seen of ear and face.
    Head,
    /// The line of the back.
    Back,
    /// Round the bottom.
    Bottom,
    /// Thigh, leg, foot.
    Legs,
    /// Arm, hand, fingers.
    Arms,
    /// Neck, chest and belly.
    Belly,
}

impl Step {
    /// Every step, in order.
    pub const ALL: [Step; 6] = [Step::Head, Step::Back, Step::Bottom, Step::Legs, Step::Arms, Step::Belly];
}

/// One line of the pen.
#[derive(Clone, Debug, PartialEq)]
pub struct Stroke {
    /// Number of the baby, from 1.
    pub baby: usize,
    /// The step it belongs to.
    pub step: Step,
    /// The side of the baby that an arm or a leg is of.
    pub side: Option<BabySide>,
    /// A small line within the shape.
    pub fine: bool,
    /// It lies in the pelvis, below the upper edge of the pubic bone: never drawn on skin.
    pub deep: bool,
    /// Whether its end joins its start.
    pub closed: bool,
    /// Points from its start to its end, cm.
    pub line: Vec<FigurePoint>,
}

impl Stroke {
    /// Its length in the picture plane, cm.
    pub fn length(&self) -> f32 {
        self.line.windows(2).map(|w| distance((w[0].x, w[0].y), (w[1].x, w[1].y))).sum()
    }
}

/// A line fainter than this is not drawn on skin.
const FAINT: f32 = 0.3;
/// Lines shorter than this are left out: between large parts, and within hand, foot and face, cm.
const SHORTEST: f32 = 1.2;
const SHORTEST_FINE: f32 = 0.7;
/// A piece of a line that belongs to another step for less than this is not cut off, cm.
const LEAST_PIECE: f32 = 1.0;
/// Distance between the points of a stroke, cm.
const SPACING: f32 = 0.15;

/// The strokes of all babies, by baby and step; within a step the longest first, fine ones last.
pub fn strokes(pose: &Pose, cast: Option<&Cast>) -> Vec<Stroke> {
    let mut out = vec![];
    for (number, rounds) in pose.rounds() {
        out.extend(round_strokes(number, rounds));
    }
    let babies: Vec<(usize, &PosedBaby)> = pose.posed().collect();
    if let (Some(cast), false) = (cast, babies.is_empty()) {
        // Always traced as if it leaned to her left, so that a mirrored exam gives mirrored strokes.
        let sign = lean(pose);
        let mirrored = (sign < 0.0).then(|| pose.cast_mirrored()).flatten();
        let tracer = Tracer { cast: mirrored.as_ref().unwrap_or(cast), sign, babies: &babies };
        tracer.heads(&mut out);
        tracer.traced(&mut out);
        tracer.curves(&mut out);
    }
    let mut out: Vec<Stroke> = out.into_iter().flat_map(cut_at_the_bone).collect();
    out.sort_by(|a, b| {
        (a.baby, a.step, a.fine)
            .cmp(&(b.baby, b.step, b.fine))
            .then(b.length().total_cmp(&a.length()))
            .then(a.line[0].y.total_cmp(&b.line[0].y))
    });
    out
}

/// The pieces of a stroke above and below the upper edge of the pubic bone, y = 0.
fn cut_at_the_bone(stroke: Stroke) -> Vec<Stroke> {
    let deep = |p: &FigurePoint| p.y < 0.0;
    if stroke.line.iter().all(|p| deep(p) == deep(&stroke.line[0])) {
        return vec![Stroke { deep: deep(&stroke.line[0]), ..stroke }];
    }
    let mut line = stroke.line.clone();
    if stroke.closed {
        // From where it comes up out of the pelvis.
        line.pop();
        let n = line.len();
        let from = (0..n).find(|&i| deep(&line[(i + n - 1) % n]) && !deep(&line[i])).unwrap_or(0);
        line.rotate_left(from);
        line.push(line[0]);
    }
    let mut pieces: Vec<(bool, Vec<FigurePoint>)> = vec![(deep(&line[0]), vec![line[0]])];
    for w in line.windows(2) {
        let Some((is_deep, piece)) = pieces.last_mut() else { break };
        if deep(&w[1]) == *is_deep {
            piece.push(w[1]);
            continue;
        }
        let t = w[0].y / (w[0].y - w[1].y);
        let at = FigurePoint::new(w[0].x + (w[1].x - w[0].x) * t, 0.0);
        piece.push(at);
        pieces.push((deep(&w[1]), vec![at, w[1]]));
    }
    pieces
        .into_iter()
        .filter(|(_, line)| line.len() > 1)
        .map(|(deep, line)| Stroke { deep, line, closed: false, ..stroke.clone() })
        .filter(|piece| piece.length() >= SHORTEST_FINE)
        .collect()
}

/// Rounds of head and bottom.
fn round_strokes(number: usize, rounds: &Rounds) -> Vec<Stroke> {
    [(Step::Head, rounds.head), (Step::Bottom, rounds.bottom)]
        .map(|(step, (middle, radius))| {
            let line = (0..=72).map(|i| {
                // From the top, so that both sides are alike.
                let (sin, cos) = libm::sincosf(i as f32 / 72.0 * std::f32::consts::TAU);
                FigurePoint::new(middle.0.x + radius * sin, middle.0.y + radius * cos)
            });
            Stroke {
                baby: number,
                step,
                side: None,
                fine: false,
                deep: false,
                closed: true,
                line: line.collect(),
            }
        })
        .into()
}

/// Which step, which baby and which side a point of a line belongs to.
type Class = (usize, Step, Option<BabySide>, bool);

struct Tracer<'a> {
    /// What is traced: the cast or its mirror image.
    cast: &'a Cast,
    /// -1 when it is the mirror image.
    sign: f32,
    babies: &'a [(usize, &'a PosedBaby)],
}

impl Tracer<'_> {
    /// The outline of each head by itself, where nothing lies before it: hands go round the whole head.
    fn heads(&self, out: &mut Vec<Stroke>) {
        for (number, baby) in self.babies {
            let head = baby.shape.piece(Piece::Head);
            let alone = shape::cast([&head].into_iter(), self.cast.cell, self.sign < 0.0);
            let Some(alone) = alone else { continue };
            let Some(window) = Window::round(&alone, &alone.depth, |z| cast::is_met(*z)) else { continue };
            let inside = |i: usize| if alone.hit(i) { 0.5 } else { -0.5 };
            let contours = grid::Tracer::default().contours(&alone, window, inside);
            let Some(outline) = contours.iter().max_by(|a, b| length(a).total_cmp(&length(b))) else {
                continue;
            };
            let outline = grid::smooth(outline, true, 0.3 / alone.cell);
            let head = (baby.head.origin.x * self.sign, baby.head.origin.y);
            let free: Vec<bool> = outline.iter().map(|p| self.is_free(&alone, *p, head)).collect();
            for (from, to) in free_stretches(&free, &outline) {
                let n = outline.len();
                let points: Vec<(f32, f32)> = (from..to).map(|i| outline[i % n]).collect();
                out.push(self.stroke((*number, Step::Head, None, false), &points, to - from >= n));
            }
        }
    }

    /// Whether nothing lies before the edge of a head at this point of its outline.
    fn is_free(&self, alone: &Cast, p: (f32, f32), middle: (f32, f32)) -> bool {
        let d = distance(p, middle).max(1e-6);
        let inside = |by: f32| (p.0 + (middle.0 - p.0) / d * by, p.1 + (middle.1 - p.1) / d * by);
        [0.25, 0.5].into_iter().any(|by| {
            let (x, y) = inside(by);
            let (Some(own), Some(all)) = (alone.index_at(x, y), self.cast.index_at(x, y)) else {
                return false;
            };
            alone.hit(own) && self.cast.hit(all) && self.cast.depth[all] - alone.depth[own] < HIDDEN
        })
    }

    /// The lines of the picture.
    fn traced(&self, out: &mut Vec<Stroke>) {
        let chains = lines::trace(self.cast);
        let smooth = joins::joined(&chains, self.cast.cell);
        let mut pieces = vec![];
        for (chain, line) in chains.iter().zip(&smooth) {
            let classes: Vec<Option<Class>> = (0..line.points.len())
                .map(|i| {
                    let seen = line.weights[i] > FAINT || chain.kind == Kind::Outline;
                    // The head has an outline of its own.
                    if seen { self.class(chain, i).filter(|class| class.1 != Step::Head) } else { None }
                })
                .collect();
            let whole = chain.closed && classes.iter().all(|c| *c == classes[0]);
            for (class, from, to) in runs(&classes, &line.points, chain.closed) {
                let n = line.points.len();
                let points: Vec<(f32, f32)> = (from..to).map(|i| line.points[i % n]).collect();
                let fine = class.3 || chain.kind == Kind::Crease;
                if length(&points) >= if fine { SHORTEST_FINE } else { SHORTEST } {
                    pieces.push(((class.0, class.1, class.2, fine), points, whole));
                }
            }
        }
        let doubles = joins::doubles(&pieces.iter().map(|(_, points, _)| &points[..]).collect::<Vec<_>>());
        for ((class, points, closed), double) in pieces.into_iter().zip(doubles) {
            if !double {
                out.push(self.stroke(class, &points, closed));
            }
        }
    }

    /// What is laid on the surface: face and ear.
    fn curves(&self, out: &mut Vec<Stroke>) {
        for (number, baby) in self.babies {
            for curve in &baby.curves {
                if !matches!((curve.name, curve.ink), ("face" | "ear", Ink::Firm)) {
                    continue;
                }
                let face_on = |p: &Vec3| {
                    self.cast.index_at(p.x, p.y).is_some_and(|i| self.cast.normal[i].z > 0.1)
                        && self.cast.sees(*p, 0.25)
                };
                let turned = curve.points.iter().map(|p| Vec3::new(p.x * self.sign, p.y, p.z));
                let seen: Vec<(f32, f32)> = turned.filter(|p| face_on(p)).map(|p| (p.x, p.y)).collect();
                if seen.len() * 10 >= curve.points.len() * 8 && length(&seen) > SHORTEST_FINE {
                    out.push(self.stroke((*number, Step::Head, None, true), &seen, false));
                }
            }
        }
    }

    fn stroke(&self, (baby, step, side, fine): Class, points: &[(f32, f32)], closed: bool) -> Stroke {
        let mut line = spaced(points);
        line.iter_mut().for_each(|p| p.x *= self.sign);
        if closed {
            line.push(line[0]);
        } else if let Some((_, posed)) = self.babies.iter().find(|(number, _)| *number == baby) {
            let start = start_near(posed, step, side);
            let away = |p: &FigurePoint| distance((p.x, p.y), (start.x, start.y));
            if away(&line[line.len() - 1]) < away(&line[0]) {
                line.reverse();
            }
        }
        Stroke { baby, step, side, fine, deep: false, closed, line }
    }

    /// What a point of a chain is a line of.
    fn class(&self, chain: &Chain, i: usize) -> Option<Class> {
        let part = chain.parts[i];
        let (x, y) = chain.points[i];
        let cell = self.owner(x, y, part)?;
        let at = Vec3::new(x * self.sign, y, self.cast.depth[cell]);
        let (number, baby) = *self.babies.iter().min_by(|a, b| {
            let off = |baby: &PosedBaby| baby.shape.off(at).unwrap_or(f32::MAX);
            if self.babies.len() == 1 { std::cmp::Ordering::Equal } else { off(a.1).total_cmp(&off(b.1)) }
        })?;
        let (step, side) = match part.region() {
            Region::Head => (Step::Head, None),
            Region::Arm(side) => (Step::Arms, Some(side)),
            Region::Leg(side) => (Step::Legs, Some(side)),
            Region::Trunk if part.is_buttock() || self.is_low(baby, at) => (Step::Bottom, None),
            Region::Trunk if chain.kind == Kind::Crease => (Step::Belly, None),
            Region::Trunk => {
                // The outward direction in the picture against that of the back; square on, the whole trunk is one or
                // the other.
                let (n, back) = (self.cast.normal[cell], baby.posture.back);
                let toward = n.x * self.sign * back.x + n.y * back.y + 0.5 * back.z;
                (if toward > 0.0 { Step::Back } else { Step::Belly }, None)
            }
        };
        Some((number, step, side, part.is_digit()))
    }

    /// Whether a point of the trunk lies about the bottom.
    fn is_low(&self, baby: &PosedBaby, at: Vec3) -> bool {
        let local = baby.body.local(at) - baby.spine.pelvis.origin;
        local.y < -1.2 * baby.posture.measures.length
    }

    /// The cell beside a point of a line that the line bounds: the nearest to the viewer of this part.
    fn owner(&self, x: f32, y: f32, part: Part) -> Option<usize> {
        let reach = 0.75 * self.cast.cell;
        let near = [(-1.0, -1.0), (1.0, -1.0), (-1.0, 1.0), (1.0, 1.0)];
        let hits = near
            .iter()
            .filter_map(|(dx, dy)| self.cast.index_at(x + dx * reach, y + dy * reach))
            .filter(|&i| self.cast.hit(i));
        // Of the same part first, then the nearest.
        hits.max_by(|&a, &b| {
            let key = |i: usize| self.cast.part[i] == part;
            key(a).cmp(&key(b)).then(self.cast.depth[a].total_cmp(&self.cast.depth[b]))
        })
    }
}

/// Stretches of a closed outline that are free: from and to, which may run past its end. Gaps shorter than `BRIDGED` are
/// bridged, stretches shorter than `SHORTEST` left out.
fn free_stretches(free: &[bool], outline: &[(f32, f32)]) -> Vec<(usize, usize)> {
    let n = free.len();
    let Some(first) = (0..n).find(|&i| free[i] && !free[(i + n - 1) % n]) else {
        return if free.first() == Some(&true) { vec![(0, n)] } else { vec![] };
    };
    let long = |from: usize, to: usize| {
        (from + 1..to).map(|i| distance(outline[(i - 1) % n], outline[i % n])).sum::<f32>()
    };
    let mut out: Vec<(usize, usize)> = vec![];
    for i in (first..first + n).filter(|i| free[i % n]) {
        match out.last_mut() {
            Some(last) if long(last.1 - 1, i + 1) < BRIDGED => last.1 = i + 1,
            _ => out.push((i, i + 1)),
        }
    }
    // Over the end, to the first.
    let (from, to) = (out[0].0, out[out.len() - 1].1);
    if long(to - 1, from + n + 1) < BRIDGED {
        if out.len() == 1 {
            return vec![(0, n)];
        }
        out[0].0 = out[out.len() - 1].0;
        out[0].1 += n;
        out.pop();
    }
    out.retain(|(from, to)| long(*from, *to) >= SHORTEST);
    out
}

/// The head is hidden by what stands this far before it, cm: neck and cheek are not.
const HIDDEN: f32 = 0.9;
/// A finger's breadth that hides the outline of the head for less than this does not part it, cm.
const BRIDGED: f32 = 2.0;

/// Where a stroke of this step begins: at the nape, then each where the shape so far leaves off.
fn start_near(baby: &PosedBaby, step: Step, side: Option<BabySide>) -> Vec3 {
    let k = &baby.posture.measures;
    let at = |p: Vec3| baby.body.point(p);
    match (step, side) {
        (Step::Head, _) => baby.head.point(Vec3::new(0.0, -3.5, -4.0) * k.head),
        (Step::Back | Step::Belly, _) => baby.head.origin,
        (Step::Bottom, _) => at(baby.spine.pelvis.origin + Vec3::new(0.0, 3.0, -4.0)),
        (Step::Legs, Some(side)) => at(baby.legs[side.index()].hip),
        (Step::Arms, Some(side)) => at(baby.arms[side.index()].shoulder),
        (Step::Legs | Step::Arms, None) => baby.body.origin,
    }
}

fn length(points: &[(f32, f32)]) -> f32 {
    points.windows(2).map(|w| distance(w[0], w[1])).sum()
}

/// Points about `SPACING` apart, the first and the last among them.
fn spaced(points: &[(f32, f32)]) -> Vec<FigurePoint> {
    let mut out = vec![FigurePoint::new(points[0].0, points[0].1)];
    let mut gone = 0.0;
    for (i, w) in points.windows(2).enumerate() {
        gone += distance(w[0], w[1]);
        if gone >= SPACING || i + 2 == points.len() {
            out.push(FigurePoint::new(w[1].0, w[1].1));
            gone = 0.0;
        }
    }
    out
}

/// Stretches of one class: the class, and the range of points, which may run on past the end of a closed line. Stretches
/// shorter than `LEAST_PIECE` go to a neighbour.
fn runs(classes: &[Option<Class>], points: &[(f32, f32)], closed: bool) -> Vec<(Class, usize, usize)> {
    let n = classes.len();
    let first =
        if closed { (0..n).find(|&i| classes[i] != classes[(i + n - 1) % n]).unwrap_or(0) } else { 0 };
    let mut out: Vec<(Option<Class>, usize, usize)> = vec![];
    for i in first..first + n {
        match out.last_mut() {
            Some(last) if last.0 == classes[i % n] => last.2 = i + 1,
            _ => out.push((classes[i % n], i, i + 1)),
        }
    }
    let long = |from: usize, to: usize| {
        (from + 1..to).map(|i| distance(points[(i - 1) % n], points[i % n])).sum::<f32>()
    };
    // What is too short goes to the stretch before it, the first to the one after.
    let mut merged: Vec<(Option<Class>, usize, usize)> = vec![];
    for run in out {
        match merged.last_mut() {
            Some(last) if last.0 == run.0 => last.2 = run.2,
            Some(last) if long(run.1, run.2) < LEAST_PIECE => last.2 = run.2,
            Some(last) if long(last.1, last.2) < LEAST_PIECE => *last = (run.0, last.1, run.2),
            _ => merged.push(run),
        }
    }
    // Each reaches to the first point of the next, so that no gap shows.
    let ends = merged.len();
    let last = first + n;
    merged
        .into_iter()
        .enumerate()
        .filter_map(|(k, (class, from, to))| {
            let reach = if to < last || (closed && ends > 1 && k + 1 == ends) { to + 1 } else { to };
            class.map(|class| (class, from, reach))
        })
        .collect()
}
