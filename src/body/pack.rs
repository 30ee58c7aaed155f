//! Forms in runs, each with a ball round it. In: forms. Out: the same forms, and which of them can be passed over
//! together where they change nothing.

use super::surface::{Form, Shape};
use crate::units::Vec3;

/// Forms, their runs and their groups.
#[derive(Clone, Default)]
pub struct Pack {
    /// The forms, in their order.
    pub forms: Vec<Form>,
    /// Runs of forms of one group that lie near one another.
    pub runs: Vec<Round>,
    /// The groups.
    pub groups: Vec<Round>,
}

/// Forms that follow one another, or runs, and what is known of all of them.
#[derive(Clone, Copy, Debug)]
pub struct Round {
    /// Where they end: a run in the list of forms, a group in the list of runs.
    pub end: usize,
    /// Centre of a ball round them.
    pub ball: Vec3,
    /// Its radius.
    pub reach: f32,
    /// Each distance is at least that from the ball, divided by this.
    pub flat: f32,
    /// Of a run, the largest blend radius, cm. Of a group, how far all its blends together may lift its surface.
    pub blend: f32,
}

/// Forms of a run at most.
const LONGEST: usize = 6;
/// How large the ball round a run may become, cm, and against the largest ball in it.
const WIDEST: (f32, f32) = (3.0, 1.3);

impl Pack {
    /// These forms.
    pub fn of(forms: &[Form]) -> Self {
        let mut pack = Pack::default();
        pack.fill(forms.iter());
        pack
    }

    /// These forms in the place of those before.
    pub fn fill<'a>(&mut self, forms: impl Iterator<Item = &'a Form>) {
        self.clear();
        let mut in_run = 0;
        for form in forms {
            let own = Round::of(form, self.forms.len() + 1);
            let same = self.forms.last().is_some_and(|last| last.group == form.group);
            self.forms.push(*form);
            if !same {
                self.groups.push(Round { end: 0, blend: 0.0, ..own });
            }
            let group = self.groups.len() - 1;
            let joined = self.runs.last().filter(|_| same && in_run < LONGEST).map(|run| run.with(&own));
            let widest = |run: &Round| WIDEST.0.max(WIDEST.1 * own.reach.max(run.reach));
            match (joined, self.runs.last_mut()) {
                (Some(joined), Some(run)) if joined.reach <= widest(run) => {
                    (*run, in_run) = (joined, in_run + 1);
                }
                _ => {
                    self.runs.push(own);
                    in_run = 1;
                }
            }
            let lifted = self.groups[group].blend + 0.25 * form.blend;
            let whole = self.groups[group].with(&own);
            self.groups[group] = Round { end: self.runs.len(), blend: lifted, ..whole };
        }
    }

    /// Leaves nothing.
    pub fn clear(&mut self) {
        self.forms.clear();
        self.runs.clear();
        self.groups.clear();
    }
}

impl Round {
    fn of(form: &Form, end: usize) -> Self {
        let flat = match form.shape {
            Shape::Capsule { .. } => 1.0,
            // The distance from an ellipsoid is reckoned too small by no more than this.
            Shape::Ellipsoid { inv, .. } => inv.x.max(inv.y).max(inv.z) / inv.x.min(inv.y).min(inv.z),
        };
        Round { end, ball: form.ball, reach: form.reach, flat, blend: form.blend }
    }

    /// The ball round both.
    fn with(&self, next: &Round) -> Self {
        let apart = (next.ball - self.ball).length();
        let (ball, reach) = if apart + next.reach <= self.reach {
            (self.ball, self.reach)
        } else if apart + self.reach <= next.reach {
            (next.ball, next.reach)
        } else {
            let reach = 0.5 * (apart + self.reach + next.reach);
            (self.ball.lerp(next.ball, (reach - self.reach) / apart.max(1e-6)), reach + 1e-4)
        };
        Round {
            end: next.end,
            ball,
            reach,
            flat: self.flat.max(next.flat),
            blend: self.blend.max(next.blend),
        }
    }
}
