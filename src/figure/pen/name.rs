//! What each line of the body draws. In: a joined run and the baby. Out: pieces of it: back, bottom, leg, arm or belly.

use super::Kind;
use super::masses::{Mass, Run};
use super::plane::{P, STEP, add, dot, sub};
use crate::body::baby::PosedBaby;
use crate::units::{BabySide, Vec3};

/// A piece shorter than this goes to its neighbour, cm.
const LEAST: f32 = 3.2;

/// Where back and belly, bottom and chest lie in the picture plane.
pub struct Sides {
    /// Of the back, and how far it is turned to the viewer.
    back: (P, f32),
    /// Pelvis, belly, chest, shoulders.
    spine: Vec<P>,
    /// From the pelvis towards the bottom.
    down: P,
    low: f32,
}

impl Sides {
    /// Those of a baby; `sign` is -1 when all is turned over.
    pub fn of(baby: &PosedBaby, sign: f32) -> Self {
        let flat = |v: Vec3| (v.x * sign, v.y);
        let at = |v: Vec3| flat(baby.body.point(v));
        let spine = &baby.spine;
        let k = baby.posture.measures.length;
        let down = baby.body.direction(-spine.pelvis.y);
        Sides {
            back: (flat(baby.posture.back), baby.posture.back.z),
            spine: [spine.pelvis.origin, spine.belly.origin, spine.chest.origin, spine.shoulders.origin]
                .map(at)
                .into(),
            down: flat(down),
            low: 0.6 * k,
        }
    }

    fn kind(&self, p: P, mass: Mass) -> Kind {
        if mass.is_leg() {
            return Kind::Leg;
        }
        if mass.is_arm() {
            return Kind::Arm;
        }
        if mass == Mass::Head {
            return Kind::Head;
        }
        if dot(sub(p, self.spine[0]), self.down) > self.low {
            return Kind::Bottom;
        }
        let (back, towards) = self.back;
        if dot(back, back) < 0.15 {
            return if towards > 0.0 { Kind::Back } else { Kind::Belly };
        }
        let near = self.spine.windows(2).map(|w| {
            let d = sub(w[1], w[0]);
            let t = (dot(sub(p, w[0]), d) / dot(d, d).max(1e-3)).clamp(0.0, 1.0);
            sub(p, add(w[0], d, t))
        });
        let off = near.min_by(|a, b| dot(*a, *a).total_cmp(&dot(*b, *b))).unwrap_or_default();
        if dot(off, back) > 0.0 { Kind::Back } else { Kind::Belly }
    }

    /// The pieces of a run.
    pub fn pieces(&self, run: Run) -> Vec<(Kind, Option<BabySide>, Run)> {
        let kinds: Vec<Kind> = run.line.iter().zip(&run.of).map(|(p, m)| self.kind(*p, *m)).collect();
        let mut spans: Vec<(Kind, usize, usize)> = vec![];
        for (i, kind) in kinds.iter().enumerate() {
            match spans.last_mut() {
                Some(last) if last.0 == *kind => last.2 = i,
                _ => spans.push((*kind, i, i)),
            }
        }
        // What is short goes to the longer neighbour, the shortest first.
        let long = |span: &(Kind, usize, usize)| (span.2 - span.1) as f32 * STEP;
        while spans.len() > 1 {
            let Some(k) = (0..spans.len()).min_by(|a, b| long(&spans[*a]).total_cmp(&long(&spans[*b])))
            else {
                break;
            };
            if long(&spans[k]) >= LEAST {
                break;
            }
            let before = k.checked_sub(1).map(|j| long(&spans[j]));
            let after = spans.get(k + 1).map(long);
            if before.unwrap_or(-1.0) >= after.unwrap_or(-1.0) {
                spans[k - 1].2 = spans[k].2;
            } else {
                spans[k + 1].1 = spans[k].1;
            }
            spans.remove(k);
            let mut merged: Vec<(Kind, usize, usize)> = vec![];
            for span in spans {
                match merged.last_mut() {
                    Some(last) if last.0 == span.0 => last.2 = span.2,
                    _ => merged.push(span),
                }
            }
            spans = merged;
        }
        spans
            .iter()
            .enumerate()
            .map(|(k, (kind, from, to))| {
                // Each reaches to the first point of the next.
                let to = if k + 1 < spans.len() { to + 1 } else { *to };
                let piece = Run { line: run.line[*from..=to].to_vec(), of: run.of[*from..=to].to_vec() };
                let limb = matches!(kind, Kind::Leg | Kind::Arm);
                let side = if limb { side(&piece) } else { None };
                (*kind, side, piece)
            })
            .collect()
    }
}

/// The side of the baby that most of a run is of.
fn side(run: &Run) -> Option<BabySide> {
    let count = |side| run.of.iter().filter(|m| m.side() == Some(side)).count();
    BabySide::BOTH.into_iter().max_by_key(|s| count(*s)).filter(|s| count(*s) > 0)
}
