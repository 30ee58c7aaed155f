//! A surface of rounded forms blended into one another. In: the forms. Out: what the door is asked.

use super::{Carrier, Met, Piece};
use crate::body::cast::{self, Cast};
use crate::body::eight::walk_in;
use crate::body::pack::Pack;
use crate::body::part::Part;
use crate::body::surface::{self, Form, Shape as Made, TAP};
use crate::units::{FigurePoint, Vec3};
use std::ops::Range;

/// A surface of forms.
#[derive(Clone, Debug, Default)]
pub struct Forms {
    forms: Vec<Form>,
    /// Where the head stands among them.
    head: Range<usize>,
}

/// Seen along z, towards her back.
const INWARDS: Vec3 = Vec3::new(0.0, 0.0, -1.0);

impl Forms {
    /// A body of these forms; the head's stand at `head`.
    pub fn new(forms: Vec<Form>, head: Range<usize>) -> Self {
        Forms { forms, head }
    }

    /// The forms it is made of.
    pub fn forms(&self) -> &[Form] {
        &self.forms
    }

    /// The forms of the head.
    pub fn head_forms(&self) -> &[Form] {
        &self.forms[self.head.clone()]
    }

    /// Makes it ready to be met by rays.
    pub fn finish(&mut self) {
        surface::set_influence(&mut self.forms);
    }

    /// One piece of it.
    pub fn piece(&self, piece: Piece) -> Forms {
        let (start, end) = (self.head.start, self.head.end);
        let with = |held: &dyn Fn(&Form) -> bool| {
            let forms = self.forms.iter().filter(|form| held(form)).copied().collect();
            Forms { forms, head: 0..0 }
        };
        match piece {
            Piece::Head => Forms { forms: self.head_forms().to_vec(), head: 0..end - start },
            Piece::Skull => Forms { forms: self.head_forms().to_vec(), head: 0..end - start }
                .with_parts(&|part| part == Part::HEAD),
            Piece::Body => {
                let mut forms = self.forms[..start].to_vec();
                forms.extend_from_slice(&self.forms[end..]);
                Forms { forms, head: 0..0 }
            }
            Piece::Trunk => Forms { forms: self.forms[..start].to_vec(), head: 0..0 },
            Piece::Core => Forms { forms: self.forms[..end].to_vec(), head: start..end },
            Piece::Limbs => with(&|form| form.group > 0),
            Piece::Arm(side) => with(&|form| {
                form.group > 0 && (form.part == Part::upper_arm(side) || form.part == Part::forearm(side))
            }),
            Piece::Hand(side) => self.with_parts(&|part| {
                part == Part::palm(side) || (0..5).any(|i| part == Part::finger(side, i))
            }),
            Piece::Foot(side) => self
                .with_parts(&|part| part == Part::foot(side) || (0..5).any(|i| part == Part::toe(side, i))),
        }
    }

    fn with_parts(&self, held: &dyn Fn(Part) -> bool) -> Forms {
        let forms = self.forms.iter().filter(|form| held(form.part)).copied().collect();
        Forms { forms, head: 0..0 }
    }

    /// The middle of a small part; `None` when the body has none.
    pub fn middle(&self, part: Part) -> Option<Vec3> {
        let balls: Vec<Vec3> = self.forms.iter().filter(|f| f.part == part).map(|f| f.ball).collect();
        (!balls.is_empty())
            .then(|| balls.iter().fold(Vec3::default(), |sum, p| sum + *p) * (1.0 / balls.len() as f32))
    }

    /// The same, elsewhere.
    pub fn shift(&mut self, by: Vec3) {
        self.forms.iter_mut().for_each(|form| *form = form.moved(by));
    }

    /// Signed distance of a point, cm (negative inside), and the part that is nearest to it.
    pub fn nearest(&self, p: Vec3) -> (f32, Part) {
        surface::distance(&self.forms, p)
    }

    /// The point of the surface next to `p`, which lies near it.
    pub fn settled(&self, p: Vec3) -> Vec3 {
        let mut at = p;
        for _ in 0..3 {
            let d = self.nearest(at).0;
            at = at - slope(&self.forms, at).normalized() * d;
        }
        at
    }

    /// Where a ray from outside along a unit direction meets the surface; `None` if it does not within `limit` cm.
    pub fn ray(&self, start: Vec3, direction: Vec3, limit: f32) -> Option<Vec3> {
        surface::walk_in(&self.forms, start, direction, limit)
    }

    /// The same for many rays: each a start and a direction.
    pub fn rays(&self, ways: &[(Vec3, Vec3)], limit: f32) -> Vec<Option<Vec3>> {
        walk_in(&Pack::of(&self.forms), ways, limit)
    }

    /// What a ray from the viewer towards her back meets first at (x, y).
    pub fn under(&self, x: f32, y: f32) -> Option<Met> {
        let seen = |f: &&Form| f.distance_seen(x, y, 0.0) < f.influence + 0.05;
        let near: Vec<Form> = self.forms.iter().filter(seen).copied().collect();
        let solid = near.iter().filter(|f| !f.carve);
        let (front, behind) = solid.fold((f32::MIN, f32::MAX), |(front, behind), f| {
            let reach = f.reach + f.influence + 0.05;
            (front.max(f.ball.z + reach), behind.min(f.ball.z - reach))
        });
        if front < behind {
            return None;
        }
        let at = surface::walk_in(&near, Vec3::new(x, y, front), INWARDS, front - behind)?;
        Some(Met { at, part: surface::distance(&near, at).1, outward: slope(&near, at) })
    }

    /// The extreme point in a direction, on the surface itself.
    ///
    /// Searched from the tips of the forms that reach farthest by themselves: rays on a small grid round each tip, refined
    /// three times.
    /// - Units: cm, mother space.
    /// - Error: below 0.02 cm along `direction` for round forms.
    pub fn extreme(&self, direction: Vec3) -> Vec3 {
        let direction = direction.normalized();
        let mut tips = self.tips(direction);
        tips.sort_by(|p, q| q.dot(direction).total_cmp(&p.dot(direction)));
        let Some(farthest) = tips.first().map(|p| p.dot(direction)) else { return Vec3::default() };
        // A blend lifts the surface by at most a quarter of its radius: no tip much behind can be the extreme.
        const BEHIND: f32 = 0.7;
        const MOST: usize = 6;
        let helper =
            if direction.y.abs() < 0.9 { Vec3::new(0.0, 1.0, 0.0) } else { Vec3::new(0.0, 0.0, 1.0) };
        let a = direction.cross(helper).normalized();
        let b = direction.cross(a);
        let pack = Pack::of(&self.forms);
        let mut best = tips[0] - direction * 100.0;
        for tip in tips.iter().take(MOST).filter(|p| p.dot(direction) > farthest - BEHIND) {
            let start = *tip + direction * (farthest - tip.dot(direction) + 2.0);
            let (mut own, mut centre, mut step) = (best, (0.0, 0.0), 0.4);
            for _ in 0..4 {
                let mut at = centre;
                for i in -3..=3 {
                    let row = [-3.0, -2.0, -1.0, 0.0, 1.0, 2.0, 3.0]
                        .map(|j| (centre.0 + i as f32 * step, centre.1 + j * step));
                    let walks = row.map(|(u, v)| (start + a * u + b * v, -direction));
                    // What lies behind the best so far is of no use.
                    let limit = (start - own).dot(direction).min(8.0);
                    for (place, hit) in row.into_iter().zip(walk_in(&pack, &walks, limit)) {
                        if let Some(p) = hit.filter(|p| p.dot(direction) > own.dot(direction)) {
                            (own, at) = (p, place);
                        }
                    }
                }
                centre = at;
                step /= 3.0;
            }
            best = own;
        }
        best
    }

    /// From its extreme against a direction to its extreme along it, cm.
    pub fn span(&self, direction: Vec3) -> f32 {
        (self.extreme(direction) - self.extreme(-direction)).dot(direction)
    }

    /// The points of its pieces, each by itself, that lie farthest along a unit direction.
    pub fn tips(&self, direction: Vec3) -> Vec<Vec3> {
        self.forms.iter().filter(|f| !f.carve).map(|f| tip(f, direction)).collect()
    }

    /// How far it reaches along a unit direction, quickly: blends bulge a little farther (at most 0.2 cm at round ends).
    pub fn reach(&self, direction: Vec3) -> f32 {
        self.forms.iter().filter(|f| !f.carve).map(|f| tip(f, direction).dot(direction)).fold(-1e9, f32::max)
    }

    /// Points on the outline of its hull in the plane of `across` (a unit direction at right angles to y) and y, all
    /// round, 0.15 cm out for the bulge of the blends; x along `across`.
    pub fn hull_across(&self, across: Vec3) -> Vec<FigurePoint> {
        const AROUND: usize = 48;
        (0..AROUND)
            .filter_map(|i| {
                // Half a step off the axes: a mirrored baby has the mirrored hull.
                let (sin, cos) = libm::sincosf((i as f32 + 0.5) / AROUND as f32 * std::f32::consts::TAU);
                let outward = across * cos + Vec3::new(0.0, 1.0, 0.0) * sin;
                let tips = self.forms.iter().filter(|f| !f.carve).map(|f| tip(f, outward));
                let p = tips.max_by(|p, q| p.dot(outward).total_cmp(&q.dot(outward)))? + outward * 0.15;
                Some(FigurePoint::new(p.dot(across), p.y))
            })
            .collect()
    }

    /// How far, as seen along z, each limb is from (x, y), cm: arms, then legs, left first.
    pub fn limbs_seen(&self, x: f32, y: f32) -> [f32; 4] {
        let mut out = [f32::MAX; 4];
        for form in self.forms.iter().filter(|form| form.group > 0) {
            // Groups alternate between arm and leg, left first.
            let order = (usize::from(form.group) - 1) % 4;
            let own = &mut out[2 * (order % 2) + order / 2];
            *own = own.min(form.distance_seen(x, y, 0.0));
        }
        out
    }

    /// Points spread over its larger parts, on its surface.
    pub fn spread(&self) -> Vec<Vec3> {
        let directions: Vec<Vec3> = (-1..=1)
            .flat_map(|x| (-1..=1).flat_map(move |y| (-1..=1).map(move |z| (x as f32, y as f32, z as f32))))
            .filter(|d| *d != (0.0, 0.0, 0.0))
            .map(|(x, y, z)| Vec3::new(x, y, z).normalized())
            .collect();
        let on = |f: &Form| -> Vec<Vec3> {
            match f.shape {
                Made::Capsule { a, axis, r0, dr, .. } => [0.0, 0.5, 1.0]
                    .iter()
                    .flat_map(|t| directions.iter().map(move |d| a + axis * *t + *d * (r0 + dr * t)))
                    .collect(),
                Made::Ellipsoid { c, x, y, z, inv } => directions
                    .iter()
                    .map(|d| c + x * (d.x / inv.x) + y * (d.y / inv.y) + z * (d.z / inv.z))
                    .collect(),
            }
        };
        let forms = self.forms.iter().filter(|f| !f.carve && f.reach > 1.2);
        let all: Vec<Vec3> = forms.flat_map(on).collect();
        // What lies inside the body says nothing.
        all.into_iter().filter(|p| self.nearest(*p).0 > -0.15).collect()
    }

    /// The same body with its pieces carried elsewhere.
    pub fn carried(&self, by: &dyn Carrier) -> Forms {
        let forms = self.forms.iter().enumerate().map(|(i, form)| {
            if self.head.contains(&i) {
                return carried(form, &|p| by.turned(by.with_head(p)));
            }
            match form.shape {
                Made::Ellipsoid { c, .. } => {
                    let there = carried(form, &|p| by.turned(by.hung(c, p)));
                    let aside = by.moved(&mut all_round().map(|outward| tip(&there, outward)));
                    carried(form, &|p| by.turned(by.hung(c, p) + aside))
                }
                // Each end by itself: parts stay joined.
                Made::Capsule { r0, dr, .. } => carried(form, &|p| {
                    let (there, radius) = (by.laid(p), r0.max(r0 + dr));
                    let aside = by.moved(&mut all_round().map(|outward| by.turned(there) + outward * radius));
                    by.turned(there + aside)
                }),
            }
        });
        Forms { forms: forms.collect(), head: self.head.clone() }
    }
}

/// The picture of depths of bodies, with cells of `cell` cm; `mirrored`: of their mirror image. What is asked of a picture
/// turned over is asked of a mirrored body, so that a mirrored exam meets the very same cells. `None`: no body.
pub fn cast<'a>(bodies: impl Iterator<Item = &'a Forms>, cell: f32, mirrored: bool) -> Option<Cast> {
    let mut forms = vec![];
    for (i, body) in bodies.enumerate() {
        // Groups of different babies must not blend.
        let group = |f: &Form| f.group + 8 * i as u8;
        let seen = |f: &Form| if mirrored { f.mirrored() } else { *f };
        forms.extend(body.forms.iter().map(|f| Form { group: group(f), ..seen(f) }));
    }
    (!forms.is_empty()).then(|| cast::cast(&forms, cell))
}

/// The point of one form by itself that lies farthest along a unit direction.
fn tip(form: &Form, direction: Vec3) -> Vec3 {
    match form.shape {
        Made::Capsule { a, axis, r0, dr, .. } => {
            let (start, end) = (a + direction * r0, a + axis + direction * (r0 + dr));
            if start.dot(direction) > end.dot(direction) { start } else { end }
        }
        Made::Ellipsoid { c, x, y, z, inv } => {
            let (u, v, w) = (x.dot(direction) / inv.x, y.dot(direction) / inv.y, z.dot(direction) / inv.z);
            let length = (u * u + v * v + w * w).sqrt();
            c + (x * (u / inv.x) + y * (v / inv.y) + z * (w / inv.z)) * (1.0 / length)
        }
    }
}

/// How the distance grows there, each way; even to both sides, so that a mirrored baby has the mirrored slope.
fn slope(forms: &[Form], p: Vec3) -> Vec3 {
    let along = |d: Vec3| surface::distance(forms, p + d).0 - surface::distance(forms, p - d).0;
    Vec3::new(
        along(Vec3::new(TAP, 0.0, 0.0)),
        along(Vec3::new(0.0, TAP, 0.0)),
        along(Vec3::new(0.0, 0.0, TAP)),
    )
}

/// Directions in the plane of the picture, all round.
fn all_round() -> impl Iterator<Item = Vec3> {
    const AROUND: usize = 24;
    (0..AROUND).map(|i| {
        let (sin, cos) = libm::sincosf(i as f32 / AROUND as f32 * std::f32::consts::TAU);
        Vec3::new(cos, sin, 0.0)
    })
}

/// A form whose points all go through `to`.
fn carried(form: &Form, to: &dyn Fn(Vec3) -> Vec3) -> Form {
    let mut out = *form;
    match &mut out.shape {
        Made::Capsule { a, axis, inv_len2, .. } => {
            let (start, end) = (to(*a), to(*a + *axis));
            (*a, *axis) = (start, end - start);
            *inv_len2 = 1.0 / axis.dot(*axis).max(1e-9);
        }
        Made::Ellipsoid { c, x, y, z, .. } => {
            let middle = to(*c);
            let direction = |v: Vec3| (to(*c + v) - middle).normalized();
            (*x, *y, *z) = (direction(*x), direction(*y), direction(*z));
            *c = middle;
        }
    }
    match out.shape {
        Made::Capsule { a, axis, r0, dr, .. } => {
            out.ball = a + axis * 0.5;
            out.reach = 0.5 * axis.length() + r0.max(r0 + dr);
        }
        Made::Ellipsoid { c, .. } => out.ball = c,
    }
    out
}
