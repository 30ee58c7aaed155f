//! From masses to strokes. In: a pose. Out: the strokes of every baby in the order of drawing.

use super::head::Head;
use super::join::{closing, is_head, joined, single};
use super::masses::{CELL, Mass, Masses, Run, depth, sides};
use super::name::Sides;
use super::plane::{self, P, add, away, holds, length, nearest, stretches};
use super::round::rounds;
use super::{Detail, Kind, Stroke, foot, hand};
use crate::body::baby::PosedBaby;
use crate::body::pose::Pose;
use crate::body::shape;
use crate::figure::grid::Line;
use crate::figure::wanted::lean;
use crate::units::{BabySide, FigurePoint};

/// No stroke is shorter, cm.
pub const SHORTEST: f32 = 1.6;
/// Of lines of the trunk and of limbs, none that is no part of the outline is shorter, cm.
const SHORTEST_INNER: f32 = 3.0;

/// The strokes of all babies, by baby, in the order of drawing.
pub fn pen(pose: &Pose) -> Vec<Stroke> {
    // Always drawn as if it leaned to her left, so that a mirrored exam gives mirrored strokes.
    let sign = lean(pose);
    let mut out: Vec<Stroke> = pose.rounds().flat_map(|(number, round)| rounds(number, round)).collect();
    let all: Vec<Mass> = Mass::all(sign).collect();
    for_each_baby(pose, sign, &all, |number, baby, masses| {
        out.extend(Drawing { baby, masses, number }.strokes());
    });
    let mut out: Vec<Stroke> = out.into_iter().flat_map(cut_at_the_bone).collect();
    out.sort_by_key(|stroke| stroke.baby);
    out
}

/// The outline of each posed baby, by its number, closed without its first point repeated.
pub fn outlines(pose: &Pose) -> Vec<(usize, Vec<FigurePoint>)> {
    let sign = lean(pose);
    let mut out = vec![];
    for_each_baby(pose, sign, &[], |number, _, masses| {
        let ring = masses.outer().map(|ring| plane::rounded_ring(&ring, 0.35)).unwrap_or_default();
        let few = ring.iter().step_by(4).map(|p| FigurePoint::new(p.0 * sign, p.1));
        out.push((number, few.collect()));
    });
    out
}

/// Hands on each posed baby with these of its masses.
pub fn for_each_baby<'a>(
    pose: &'a Pose,
    sign: f32,
    masses: &[Mass],
    mut to: impl FnMut(usize, &'a PosedBaby, Masses<'_>),
) {
    let cast = |number: Option<usize>| {
        let wanted = pose.posed().filter(|(n, _)| number.is_none_or(|number| *n == number));
        shape::cast(wanted.map(|(_, baby)| &baby.shape), CELL, sign < 0.0)
    };
    let Some(all) = cast(None) else { return };
    let one = pose.posed().count() == 1;
    for (number, baby) in pose.posed() {
        let own = if one { None } else { cast(Some(number)) };
        let own = own.as_ref().unwrap_or(&all);
        to(number, baby, Masses::of(baby, (&all, own), sign, masses));
    }
}

/// What a line draws, of which side, the line, its corners.
type Line4 = (Kind, Option<BabySide>, Line, Line);
/// With the heart and what the bone cuts in two, no baby has more than 18 strokes.
const MOST: usize = 15;

/// Something before which lines end.
struct Before {
    ring: Line,
    depth: f32,
    of: Mass,
}

struct Drawing<'a> {
    baby: &'a PosedBaby,
    masses: Masses<'a>,
    number: usize,
}

impl Drawing<'_> {
    fn strokes(&self) -> Vec<Stroke> {
        let head = Head::of(self.baby, &self.masses).map(Head::whole_over_the_bone);
        let mut details: Vec<Detail> = vec![];
        for side in sides(self.masses.sign) {
            details.extend(hand::hand(self.baby, &self.masses, side));
            details.extend(foot::foot(self.baby, &self.masses, side));
        }
        // A piece of a hand is no hand.
        let whole = |d: &Detail| {
            let hidden = d.line.iter().filter(|p| self.hides_detail(**p, d, &[])).count();
            hidden * 10 < d.line.len() * 4
        };
        details.retain(whole);
        let mut before: Vec<Before> = details
            .iter()
            .filter_map(|d| Some(Before { ring: d.line.clone(), depth: d.depth + 0.25, of: d.of? }))
            .collect();
        if let Some(head) = head.as_ref().filter(|head| head.egg) {
            before.push(Before { ring: head.ring.clone(), depth: self.head_depth(head), of: Mass::Head });
        }
        let mut body = self.body(&details, &before);
        let mut lines: Vec<Line4> = vec![];
        if let Some(head) = &head {
            lines.extend(
                self.head_lines(head, &before).into_iter().map(|line| (Kind::Head, None, line, vec![])),
            );
            for d in head.features() {
                let on_trunk = |p: &P| self.masses.seen(*p).is_some_and(|(mass, _)| mass == Mass::Trunk);
                let keep: Vec<bool> = d
                    .line
                    .iter()
                    .map(|p| {
                        if d.kind == Kind::Blade { on_trunk(p) } else { !self.hides_head(*p, head, &before) }
                    })
                    .collect();
                let whole = length(&d.line);
                for line in
                    stretches(&d.line, &keep, false, SHORTEST.max(0.72 * whole).min(whole - 0.01), 0.2)
                {
                    lines.push((d.kind, None, line, vec![]));
                }
            }
        }
        for d in details {
            let keep: Vec<bool> = d.line.iter().map(|p| !self.hides_detail(*p, &d, &before)).collect();
            let open = stretches(&d.line, &keep, false, SHORTEST, 0.5);
            for line in open {
                meet(&mut body, &line, d.kind);
                lines.push((d.kind, d.side, line, d.corners.clone()));
            }
        }
        let named = Sides::of(self.baby, self.masses.sign);
        for run in body.into_iter().filter(|run| length(&run.line) >= SHORTEST) {
            for (kind, side, piece) in named.pieces(run) {
                lines.push((kind, side, piece.line, vec![]));
            }
        }
        self.thin_out(&mut lines);
        let order =
            |side: Option<BabySide>| side.map(|side| sides(self.masses.sign).iter().position(|s| *s == side));
        lines.sort_by(|a, b| {
            a.0.cmp(&b.0).then(order(a.1).cmp(&order(b.1))).then(length(&b.2).total_cmp(&length(&a.2)))
        });
        lines
            .into_iter()
            .map(|(kind, side, line, corners)| self.stroke(kind, side, &line, &corners))
            .collect()
    }

    /// Leaves out what says least, until a hand can draw it: the shortest lines within the body, then the curl.
    fn thin_out(&self, lines: &mut Vec<Line4>) {
        let outer = self.masses.outer().unwrap_or_default();
        let inner = |line: &Line4| {
            let body = matches!(line.0, Kind::Leg | Kind::Arm | Kind::Back | Kind::Belly | Kind::Bottom);
            let near = line.2.iter().filter(|p| nearest(&outer, **p).1 < 0.7).count();
            body && near * 4 < line.2.len()
        };
        while lines.len() > MOST {
            let shortest = (0..lines.len())
                .filter(|i| inner(&lines[*i]))
                .min_by(|a, b| length(&lines[*a].2).total_cmp(&length(&lines[*b].2)));
            let one = |kind| lines.iter().position(|line| line.0 == kind);
            let fine = || [Kind::Curl, Kind::Blade, Kind::Ear, Kind::Nose].into_iter().find_map(one);
            let Some(out) = shortest.or_else(fine) else {
                break;
            };
            lines.remove(out);
        }
    }

    fn stroke(&self, kind: Kind, side: Option<BabySide>, line: &[P], corners: &[P]) -> Stroke {
        let closed = line.len() > 8 && away(line[0], line[line.len() - 1]) < 0.05;
        let turned = |p: &P| FigurePoint::new(p.0 * self.masses.sign, p.1);
        Stroke {
            baby: self.number,
            kind,
            side,
            deep: false,
            closed,
            line: line.iter().map(turned).collect(),
            corners: corners.iter().map(turned).collect(),
        }
    }

    /// How deep the head lies, for what may hide it.
    fn head_depth(&self, head: &Head) -> f32 {
        let deep: Vec<f32> = self
            .masses
            .cast(Mass::Head)
            .map(|cast| cast.hits().map(|(_, _, i)| cast.depth[i]).collect())
            .unwrap_or_default();
        let mut deep = deep;
        deep.sort_by(f32::total_cmp);
        let front = deep.get(deep.len() * 6 / 10).copied().unwrap_or(0.0);
        if head.over_bone || head.seen == super::head::Seen::Behind { front.max(50.0) } else { front }
    }

    /// Runs of trunk and limbs.
    fn body(&self, details: &[Detail], before: &[Before]) -> Vec<Run> {
        let runs: Vec<Run> = Mass::all(self.masses.sign)
            .filter(|mass| !matches!(mass, Mass::Head | Mass::Hand(_) | Mass::Foot(_)))
            .flat_map(|mass| self.masses.seen_outline(mass).into_iter().map(move |line| Run::new(line, mass)))
            .collect();
        let runs = joined(runs, 0.9, 0.47);
        let cut: Vec<Run> = runs
            .into_iter()
            .filter(|run| length(&run.line) > 1.2)
            .flat_map(|run| {
                let run = run.rounded(0.3);
                let keep: Vec<bool> =
                    (0..run.line.len()).map(|i| !self.hides_body(run.line[i], run.of[i], before)).collect();
                run.kept(&keep, 0.8, 0.3)
            })
            .collect();
        let Some(outer) = self.masses.outer().map(|ring| plane::rounded_ring(&ring, 0.35)) else {
            return cut;
        };
        let kept = joined(single(cut, &outer), 1.5, 0.34);
        let kept: Vec<Run> = kept.into_iter().map(|run| run.rounded(0.3)).collect();
        // Lines of the head and of hands and feet close the figure too.
        let mut lines: Vec<&[P]> = kept.iter().map(|run| &run.line[..]).collect();
        lines.extend(details.iter().map(|d| &d.line[..]));
        let covered = |p: P| before.iter().any(|b| holds(&b.ring, p));
        let of = |p: P| self.masses.mass_near(p);
        let drawn = |mass: Mass| details.iter().any(|d| d.of == Some(mass));
        let apart = |mass: Mass| mass == Mass::Head || drawn(mass);
        let heads: Line = outer.iter().copied().filter(|p| apart(of(*p)) || covered(*p)).collect();
        lines.push(&heads);
        let mut closes = closing(&outer, of, &lines);
        // The tip of a hand or foot that only peeps out is no part of the figure.
        closes.retain(|run| {
            let peeps = run.share(|m| matches!(m, Mass::Hand(_) | Mass::Foot(_))) > 0.4;
            !peeps || length(&run.line) < 1.6 * away(run.end(false), run.end(true))
        });
        let mut all = kept;
        all.extend(closes);
        let all = joined(all, 1.3, 0.26);
        let on_outline =
            |run: &Run| run.line.iter().filter(|p| nearest(&outer, **p).1 < 0.6).count() * 2 > run.line.len();
        all.into_iter()
            .map(|run| run.rounded(0.3))
            .filter(|run| !is_head(run))
            .filter(|run| length(&run.line) > if on_outline(run) { SHORTEST } else { SHORTEST_INNER })
            .collect()
    }

    /// The lines round the head.
    fn head_lines(&self, head: &Head, before: &[Before]) -> Vec<Line> {
        if head.egg {
            let keep: Vec<bool> = head.ring.iter().map(|p| !self.hides_head(*p, head, before)).collect();
            return stretches(&head.ring, &keep, true, SHORTEST, 0.9);
        }
        let (Some(cast), Some(contour)) = (self.masses.cast(Mass::Head), self.masses.outline(Mass::Head))
        else {
            return vec![];
        };
        let lines: Vec<bool> =
            (0..contour.len()).map(|i| self.masses.is_line(Mass::Head, cast, &contour, i)).collect();
        let keep: Vec<bool> =
            head.ring.iter().map(|p| lines[nearest(&contour, *p).0] && !self.in_hand(*p, before)).collect();
        stretches(&head.ring, &keep, true, SHORTEST, 1.2)
    }

    fn in_hand(&self, p: P, before: &[Before]) -> bool {
        before
            .iter()
            .any(|b| b.of != Mass::Head && holds(&b.ring, p) && b.depth > self.own_depth(p, Mass::Head) - 1.0)
    }

    /// Whether something lies before the head at a place.
    fn hides_head(&self, p: P, head: &Head, before: &[Before]) -> bool {
        if head.over_bone {
            return false;
        }
        let own = self.own_depth(p, Mass::Head);
        let limb = self.masses.seen(p).is_some_and(|(mass, z)| {
            mass != Mass::Head && !(head.egg && mass == Mass::Trunk) && z > own + 0.2
        });
        limb || self.in_hand(p, before)
    }

    fn hides_detail(&self, p: P, detail: &Detail, before: &[Before]) -> bool {
        let kin = |mass: Mass| {
            mass.side() == detail.side && detail.of.is_some_and(|own| own.is_arm() == mass.is_arm())
        };
        let seen = self.masses.seen(p).is_some_and(|(mass, z)| !kin(mass) && z > detail.depth + 0.9);
        seen || before
            .iter()
            .any(|b| Some(b.of) != detail.of && holds(&b.ring, p) && b.depth > detail.depth + 0.3)
    }

    fn hides_body(&self, p: P, mass: Mass, before: &[Before]) -> bool {
        let own = self.own_depth(p, mass);
        let kin =
            |of: Mass| mass.side() == of.side() && mass.is_arm() == of.is_arm() && mass.side().is_some();
        before.iter().any(|b| holds(&b.ring, p) && (b.depth + 0.3 > own || kin(b.of)))
    }

    /// How deep a mass lies at a place, or near it.
    fn own_depth(&self, p: P, mass: Mass) -> f32 {
        let Some(cast) = self.masses.cast(mass) else { return -99.0 };
        let at = |r: f32| {
            (0..8)
                .filter_map(|k| {
                    let (sin, cos) = libm::sincosf(k as f32 / 8.0 * std::f32::consts::TAU);
                    depth(cast, (p.0 + r * cos, p.1 + r * sin))
                })
                .reduce(f32::max)
        };
        depth(cast, p).or_else(|| at(0.3)).or_else(|| at(0.7)).unwrap_or(-99.0)
    }
}

/// Leads the nearest ends of limb lines to both ends of a hand or foot.
fn meet(body: &mut [Run], line: &[P], kind: Kind) {
    let reach = if kind == Kind::Foot { 1.9 } else { 1.3 };
    let of_kind = |m: Mass| if kind == Kind::Foot { m.is_leg() } else { m.is_arm() };
    for end in [line[0], line[line.len() - 1]] {
        let near = body
            .iter()
            .enumerate()
            .flat_map(|(i, run)| [(i, false), (i, true)].map(|(i, e)| (away(run.end(e), end), i, e)))
            .filter(|(gap, i, e)| {
                let run = &body[*i];
                *gap < reach && of_kind(run.of[if *e { run.of.len() - 1 } else { 0 }])
            })
            .min_by(|a, b| a.0.total_cmp(&b.0));
        if let Some((_, i, at_end)) = near {
            let run = &mut body[i];
            move_end(&mut run.line, at_end, end);
        }
    }
}

/// Moves an end of a line to a place, and what is near the end with it.
fn move_end(line: &mut Line, at_end: bool, to: P) {
    let n = line.len();
    let by = plane::sub(to, if at_end { line[n - 1] } else { line[0] });
    let reach = (2.5 / plane::STEP).min(n as f32 - 1.0).max(1.0);
    for k in 0..n {
        let share = 1.0 - (k as f32 / reach).min(1.0);
        let i = if at_end { n - 1 - k } else { k };
        line[i] = add(line[i], by, share * share * (3.0 - 2.0 * share));
    }
}

/// The pieces of a stroke above and below the upper edge of the pubic bone, y = 0; a small line that dips below it is of those
/// below.
pub fn cut_at_the_bone(stroke: Stroke) -> Vec<Stroke> {
    let deep = |p: &FigurePoint| p.y < 0.0;
    if stroke.kind.is_fine() || stroke.line.iter().all(|p| deep(p) == deep(&stroke.line[0])) {
        let low = stroke.line.iter().any(deep);
        return vec![Stroke { deep: low, ..stroke }];
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
    let whole = stroke.length();
    pieces
        .into_iter()
        .filter(|(_, line)| line.len() > 1)
        .map(|(deep, line)| Stroke { deep, line, closed: false, ..stroke.clone() })
        .filter(|piece| piece.length() >= SHORTEST.min(whole))
        .collect()
}
