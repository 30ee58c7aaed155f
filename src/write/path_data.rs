//! Data of paths in SVG. In: a path on the page, how finely and in which curves it is told. Out: its commands, relative, in whole units.

use crate::figure::scene::{Path, Step};
use crate::units::PagePoint;
use std::fmt::Write;

/// How finely places are told.
#[derive(Clone, Copy, Debug)]
pub(super) struct Grain {
    /// Whole units in a mm.
    per_mm: f32,
}

impl Grain {
    /// A unit is 0.01 cm of the body as `draw` prints it.
    pub(super) const FINE: Grain = Grain { per_mm: 32.0 };
    /// For a page of HTML, whose every byte goes to a telephone: a unit is less than a dot of its screen, and of a printer with 400 to
    /// the inch.
    pub(super) const SMALL: Grain = Grain { per_mm: 16.0 };

    /// A place or a length in whole units.
    pub(super) fn units(self, mm: f32) -> i32 {
        libm::roundf(mm * self.per_mm) as i32
    }

    /// A length in units with one decimal.
    pub(super) fn length(self, mm: f32) -> String {
        decimals(mm * self.per_mm, 1)
    }
}

/// How curves are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Curves {
    /// As they are.
    Cubic,
    /// For who paints them: those that are halved as four arcs of a parabola each. To stroke a cubic curve or to cut it off, arc
    /// cosines are taken of it, which are not the same bits on every machine.
    Quadratic,
    /// In few bytes: as a line or as one parabola, where neither leaves the curve by more than rounding does.
    Short,
}

/// How far a shorter form may leave a curve, in units: as far as rounding may.
const OFF: f32 = 0.5;

/// One point in whole units.
type Point = (i32, i32);

/// A number with at most so many decimals, without zeros at its end.
pub(super) fn decimals(value: f32, places: usize) -> String {
    let text = format!("{value:.places$}");
    match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.').to_owned(),
        false => text,
    }
}

/// Path data: relative commands between points rounded to whole units, so that no error adds up. `halved` are curves that are to be
/// parabolas where curves are [`Curves::Quadratic`].
pub(super) fn path_data(
    path: &Path<PagePoint>,
    grain: Grain,
    curves: Curves,
    halved: impl Fn(&[Point; 4]) -> bool,
) -> String {
    let mut out = String::with_capacity(path.len() * 20);
    let (mut here, mut start) = ((0, 0), (0, 0));
    let mut last = ' ';
    let round = |p: PagePoint| (grain.units(p.x), grain.units(p.y));
    for step in path {
        match *step {
            Step::Move(p) => {
                let p = round(p);
                command(&mut out, &mut last, 'm', here, &[p]);
                (here, start) = (p, p);
                // Numbers after a move are lines.
                last = 'l';
            }
            Step::Line(p) => {
                let p = round(p);
                command(&mut out, &mut last, 'l', here, &[p]);
                here = p;
            }
            Step::Curve(a, b, p) => {
                let p = round(p);
                let curve = [here, round(a), round(b), p];
                let parabola = if curves == Curves::Short { parabola(curve) } else { None };
                if curves == Curves::Quadratic && halved(&curve) {
                    parabolas(&mut out, curve);
                    last = 'Q';
                } else if curves == Curves::Short && is_straight(curve) {
                    command(&mut out, &mut last, 'l', here, &[p]);
                } else if let Some(control) = parabola {
                    command(&mut out, &mut last, 'q', here, &[control, p]);
                } else {
                    command(&mut out, &mut last, 'c', here, &curve[1..]);
                }
                here = p;
            }
            Step::Close => {
                out.push('z');
                last = 'z';
                here = start;
            }
        }
    }
    out
}

/// Whether the line between its ends does for a curve: it lies as near, and turns back nowhere.
fn is_straight([from, a, b, to]: [Point; 4]) -> bool {
    let between = |p: Point, q: Point| ((q.0 - p.0) as f32, (q.1 - p.1) as f32);
    let (x, y) = between(from, to);
    let length = libm::sqrtf(x * x + y * y);
    [a, b].into_iter().all(|control| {
        let (cx, cy) = between(from, control);
        if length == 0.0 {
            return (cx, cy) == (0.0, 0.0);
        }
        let (along, off) = ((cx * x + cy * y) / length, (cx * y - cy * x) / length);
        // A curve goes three quarters of the way to its controls.
        (0.0..=length).contains(&along) && libm::fabsf(off) * 0.75 <= OFF
    })
}

/// The control of the parabola that does for a curve; `None` where it would leave it (source: T. W. Sederberg, "Computer Aided
/// Geometric Design", on lowering the degree: the two differ by at most √3/36 of the third difference).
fn parabola([from, a, b, to]: [Point; 4]) -> Option<Point> {
    let third = |p: i32, a: i32, b: i32, q: i32| (q - 3 * b + 3 * a - p) as f32;
    let (x, y) = (third(from.0, a.0, b.0, to.0), third(from.1, a.1, b.1, to.1));
    let off = libm::sqrtf(3.0 * (x * x + y * y)) / 36.0;
    let control = |p: i32, a: i32, b: i32, q: i32| libm::roundf((3 * (a + b) - p - q) as f32 / 4.0) as i32;
    (off <= OFF).then(|| (control(from.0, a.0, b.0, to.0), control(from.1, a.1, b.1, to.1)))
}

/// A cubic curve as four arcs of a parabola, to a hundredth of a unit.
fn parabolas(out: &mut String, curve: [(i32, i32); 4]) {
    let mut rest = curve.map(|(x, y)| (x as f32, y as f32));
    for left in [4.0, 3.0, 2.0, 1.0_f32] {
        let between =
            |(ax, ay): (f32, f32), (bx, by): (f32, f32)| (ax + (bx - ax) / left, ay + (by - ay) / left);
        let [p, a, b, q] = rest;
        let (pa, ab, bq) = (between(p, a), between(a, b), between(b, q));
        let (pab, abq) = (between(pa, ab), between(ab, bq));
        let end = if left == 1.0 { q } else { between(pab, abq) };
        let middle = |p: f32, a: f32, b: f32, q: f32| (3.0 * (a + b) - p - q) / 4.0;
        let control = (middle(p.0, pa.0, pab.0, end.0), middle(p.1, pa.1, pab.1, end.1));
        let of = |value: f32| decimals(value, 2);
        let _ = write!(out, "Q{} {} {} {}", of(control.0), of(control.1), of(end.0), of(end.1));
        rest = [end, abq, bq, q];
    }
}

/// One command; its letter is left out when it repeats the last one.
fn command(out: &mut String, last: &mut char, letter: char, from: (i32, i32), points: &[(i32, i32)]) {
    let mut bare = *last == letter && letter != 'm';
    if !bare {
        out.push(letter);
        *last = letter;
    }
    for (x, y) in points {
        for number in [x - from.0, y - from.1] {
            if bare && number >= 0 {
                out.push(' ');
            }
            bare = true;
            let _ = write!(out, "{number}");
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parabolas_follow_the_curve() {
        let curve = [(0, 0), (40, 160), (-120, 80), (200, 10)];
        let mut data = String::new();
        parabolas(&mut data, curve);
        let arcs: Vec<Vec<f32>> = data
            .split('Q')
            .skip(1)
            .map(|arc| arc.split(' ').map(|number| number.parse().expect("a number")).collect())
            .collect();
        assert_eq!(arcs.len(), 4);
        assert_eq!(arcs[3][2..], [200.0, 10.0], "the end is exact");
        let mut from = (0.0, 0.0);
        for (piece, arc) in arcs.iter().enumerate() {
            for step in 0..=8 {
                let s = step as f32 / 8.0;
                let t = (piece as f32 + s) / 4.0;
                let on_arc =
                    |p: f32, a: f32, q: f32| p * (1.0 - s) * (1.0 - s) + 2.0 * a * s * (1.0 - s) + q * s * s;
                let on_curve = |of: fn(&(i32, i32)) -> i32| {
                    let [p, a, b, q] = [0, 1, 2, 3].map(|at: usize| of(&curve[at]) as f32);
                    let u = 1.0 - t;
                    p * u * u * u + 3.0 * a * u * u * t + 3.0 * b * u * t * t + q * t * t * t
                };
                let (x, y) = (on_arc(from.0, arc[0], arc[2]), on_arc(from.1, arc[1], arc[3]));
                assert!((x - on_curve(|p| p.0)).abs() < 0.6, "{piece} {step}: {x}");
                assert!((y - on_curve(|p| p.1)).abs() < 0.6, "{piece} {step}: {y}");
            }
            from = (arc[2], arc[3]);
        }
    }

    fn at(curve: [Point; 4], t: f32) -> (f32, f32) {
        let of = |p: i32, a: i32, b: i32, q: i32| {
            let u = 1.0 - t;
            let [p, a, b, q] = [p, a, b, q].map(|v| v as f32);
            p * u * u * u + 3.0 * a * u * u * t + 3.0 * b * u * t * t + q * t * t * t
        };
        let [p, a, b, q] = curve;
        (of(p.0, a.0, b.0, q.0), of(p.1, a.1, b.1, q.1))
    }

    #[test]
    fn shorter_forms_leave_a_curve_by_no_more_than_rounding() {
        let (mut lines, mut arcs, mut kept) = (0, 0, 0);
        let mut state = 1_u32;
        let mut within = |most: i32| {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (state >> 16) as i32 % (2 * most + 1) - most
        };
        for n in 0..4000 {
            // Every other one is flat.
            let high = if n % 2 == 0 { 12 } else { 1 };
            let mut point = || (within(12), within(high));
            let curve = [(0, 0), point(), point(), point()];
            let [p, _, _, q] = curve;
            let places = (0..=20).map(|step| (step as f32 / 20.0, at(curve, step as f32 / 20.0)));
            if is_straight(curve) {
                lines += 1;
                for (_, (x, y)) in places {
                    let length = libm::hypotf(q.0 as f32, q.1 as f32);
                    let off = if length == 0.0 {
                        libm::hypotf(x, y)
                    } else {
                        libm::fabsf(x * q.1 as f32 - y * q.0 as f32) / length
                    };
                    assert!(off <= OFF + 1e-3, "{curve:?}: {off}");
                }
            } else if let Some(control) = parabola(curve) {
                arcs += 1;
                for (t, (x, y)) in places {
                    let of = |p: i32, c: i32, q: i32| {
                        let u = 1.0 - t;
                        p as f32 * u * u + 2.0 * c as f32 * u * t + q as f32 * t * t
                    };
                    let (ax, ay) = (of(p.0, control.0, q.0), of(p.1, control.1, q.1));
                    // Its control is rounded by half a unit each way, of which the curve sees half.
                    assert!(libm::hypotf(ax - x, ay - y) <= OFF + 0.36, "{curve:?} at {t}");
                }
            } else {
                kept += 1;
            }
        }
        assert!(lines > 10 && arcs > 100 && kept > 1000, "{lines} {arcs} {kept}");
    }
}
