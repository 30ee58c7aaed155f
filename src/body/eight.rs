//! Eight points asked at once. In: forms, eight points. Out: signed distances to the blended surface, the nearest
//! parts, and the forms that matter there.
//!
//! The same arithmetic in the same order as `surface::distance`, so the same bits. It is compiled for narrow and for
//! wide registers, and run as the processor allows: nothing is fused or reordered, so that all give the same.

use super::pack::{Pack, Round};
use super::surface::{self, Form, Shape};
use crate::units::Vec3;
use fearless_simd::prelude::*;
use fearless_simd::{Level, dispatch, f32x8};

/// How many points are asked at once.
pub const LANES: usize = 8;
/// A number for each of them.
pub type Lanes = [f32; LANES];

macro_rules! lanes {
    ($i:ident => $e:expr) => {{
        let mut o = [0f32; LANES];
        for $i in 0..LANES {
            o[$i] = $e;
        }
        o
    }};
}
pub(super) use lanes;

/// Eight points.
#[derive(Clone, Copy, Default)]
pub struct Points {
    /// First coordinates.
    pub x: Lanes,
    /// Second coordinates.
    pub y: Lanes,
    /// Third coordinates.
    pub z: Lanes,
}

impl Points {
    /// Up to eight points; the last one stands for those that are missing, and all are zero when there is none.
    pub fn of(points: &[Vec3]) -> Self {
        let at = |i: usize| points.get(i).or(points.last()).copied().unwrap_or_default();
        Points { x: lanes!(i => at(i).x), y: lanes!(i => at(i).y), z: lanes!(i => at(i).z) }
    }

    /// All of them moved.
    #[inline(always)]
    pub fn moved(&self, by: Vec3) -> Self {
        Points {
            x: lanes!(i => self.x[i] + by.x),
            y: lanes!(i => self.y[i] + by.y),
            z: lanes!(i => self.z[i] + by.z),
        }
    }
}

/// The forms that matter near some points: with them alone, the distances there are the same.
#[derive(Default)]
pub struct Near {
    /// Those forms.
    pub pack: Pack,
    forms: Vec<Form>,
    /// The distances of each group.
    groups: Vec<(u8, Lanes)>,
}

/// `surface::distance` for eight points, without the parts.
#[inline(never)]
pub fn distance(pack: &Pack, at: &Points) -> Lanes {
    dispatch!(Level::new(), simd => blended::<_, false, false>(simd, pack, at, &mut Near::default(), 0.0).0)
}

/// The same with the codes of the nearest parts.
#[inline(never)]
pub fn distance_and_part(pack: &Pack, at: &Points) -> (Lanes, [u8; LANES]) {
    dispatch!(Level::new(), simd => blended::<_, true, false>(simd, pack, at, &mut Near::default(), 0.0))
}

/// The same; leaves in `near` the forms that can change a distance within about a third of `slack` cm of the points.
#[inline(never)]
pub fn distance_and_near(pack: &Pack, at: &Points, near: &mut Near, slack: f32) -> (Lanes, [u8; LANES]) {
    near.forms.clear();
    near.groups.clear();
    let out = dispatch!(Level::new(), simd => blended::<_, true, true>(simd, pack, at, near, slack));
    // A group that stays behind another everywhere hides nothing.
    let Near { pack, forms, groups } = near;
    groups.retain(|(_, d)| (0..LANES).all(|i| d[i] > out.0[i] + slack));
    pack.fill(forms.iter().filter(|form| groups.iter().all(|(group, _)| *group != form.group)));
    out
}

/// `surface::walk_in` for many starts and directions.
pub fn walk_in(pack: &Pack, ways: &[(Vec3, Vec3)], limit: f32) -> Vec<Option<Vec3>> {
    let mut out = vec![None; ways.len()];
    for (ways, out) in ways.chunks(LANES).zip(out.chunks_mut(LANES)) {
        let (mut at, mut gone, mut walking) = ([Vec3::default(); LANES], [0f32; LANES], [true; LANES]);
        for _ in 0..surface::STEPS {
            for (at, ((start, direction), gone)) in at.iter_mut().zip(ways.iter().zip(gone)) {
                *at = *start + *direction * gone;
            }
            let d = distance(pack, &Points::of(&at[..ways.len()]));
            let mut any = false;
            for i in 0..ways.len() {
                if walking[i] && d[i] < surface::MET {
                    (out[i], walking[i]) = (Some(at[i]), false);
                } else if walking[i] {
                    gone[i] += d[i] * 0.9;
                    walking[i] = gone[i] <= limit;
                }
                any |= walking[i];
            }
            if !any {
                break;
            }
        }
    }
    out
}

/// Eight numbers in registers.
type Wide<S> = f32x8<S>;

/// Three coordinates of eight points.
struct Three<S: Simd>(Wide<S>, Wide<S>, Wide<S>);

impl<S: Simd> Three<S> {
    #[inline(always)]
    fn less(&self, by: Vec3) -> Self {
        Three(self.0 - by.x, self.1 - by.y, self.2 - by.z)
    }
    #[inline(always)]
    fn dot(&self, by: Vec3) -> Wide<S> {
        self.0 * by.x + self.1 * by.y + self.2 * by.z
    }
    #[inline(always)]
    fn length(&self) -> Wide<S> {
        (self.0 * self.0 + self.1 * self.1 + self.2 * self.2).sqrt()
    }
}

/// `Form::distance` for eight points.
#[inline(always)]
fn own<S: Simd>(form: &Form, at: &Three<S>) -> Wide<S> {
    match form.shape {
        Shape::Capsule { a, axis, inv_len2, r0, dr } => {
            let p = at.less(a);
            let t = (p.dot(axis) * inv_len2).max(0.0).min(1.0);
            let q = Three(p.0 - t * axis.x, p.1 - t * axis.y, p.2 - t * axis.z);
            q.length() - (t * dr + r0)
        }
        Shape::Ellipsoid { c, x, y, z, inv } => {
            let p = at.less(c);
            let l = Three(p.dot(x) * inv.x, p.dot(y) * inv.y, p.dot(z) * inv.z);
            let k0 = l.length();
            let k1 = Three(l.0 * inv.x, l.1 * inv.y, l.2 * inv.z).length() + 1e-6;
            k0 * (k0 - 1.0) / k1
        }
    }
}

impl Round {
    /// Whether everything in it is farther than `d` and its blends from all eight points, by at least `more` cm.
    #[inline(always)]
    fn is_beyond<S: Simd>(&self, at: &Three<S>, d: Wide<S>, more: f32) -> bool {
        // A little for rounding.
        let far = (d + (self.blend + more + 1e-3)).max(0.0) * self.flat + self.reach;
        let p = at.less(self.ball);
        !(p.0 * p.0 + p.1 * p.1 + p.2 * p.2).simd_lt(far * far).any_true()
    }
}

/// Distances, and what else is asked for: `PARTS`, the parts; `NEAR`, the forms of each group that matter.
#[inline(always)]
fn blended<S: Simd, const PARTS: bool, const NEAR: bool>(
    simd: S,
    pack: &Pack,
    at: &Points,
    near: &mut Near,
    slack: f32,
) -> (Lanes, [u8; LANES]) {
    let at = Three(Wide::load_array(simd, at.x), Wide::load_array(simd, at.y), Wide::load_array(simd, at.z));
    let (far, zero) = (Wide::splat(simd, 1e9), Wide::splat(simd, 0.0));
    let (mut best, mut best_part) = (far, zero);
    let (mut run_at, mut form_at) = (0, 0);
    for group in &pack.groups {
        let runs = &pack.runs[run_at..group.end];
        let first = form_at;
        run_at = group.end;
        if let Some(last) = runs.last() {
            form_at = last.end;
        }
        // A group hides what lies behind it; one that is farther away changes nothing.
        if group.is_beyond(&at, best, slack) {
            continue;
        }
        let (mut d, mut part, mut from) = (far, zero, first);
        for run in runs {
            let forms = &pack.forms[from..run.end];
            from = run.end;
            if run.is_beyond(&at, d.abs(), slack) {
                continue;
            }
            for form in forms {
                let own = own(form, &at);
                let (k, quarter) = (form.blend, 0.25 / form.blend);
                if NEAR {
                    let beyond = if form.carve { own + d } else { own - d };
                    if beyond.simd_lt(k + slack).any_true() {
                        near.forms.push(*form);
                    }
                }
                if form.carve {
                    let a = -d;
                    let h = (Wide::splat(simd, k) - (a - own).abs()).max(0.0);
                    d = -(a.min(own) - h * h * quarter);
                } else {
                    if PARTS {
                        part = own.simd_lt(d).select(Wide::splat(simd, f32::from(form.part.code())), part);
                    }
                    let h = (Wide::splat(simd, k) - (d - own).abs()).max(0.0);
                    d = d.min(own) - h * h * quarter;
                }
            }
        }
        if PARTS {
            best_part = d.simd_lt(best).select(part, best_part);
        }
        best = d.min(best);
        if NEAR {
            near.groups.push((pack.forms[first].group, stored(d)));
        }
    }
    (stored(best), stored(best_part).map(|code| code as u8))
}

#[inline(always)]
fn stored<S: Simd>(wide: Wide<S>) -> Lanes {
    let mut out = [0.0; LANES];
    wide.store_slice(&mut out);
    out
}
