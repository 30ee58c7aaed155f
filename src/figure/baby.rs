//! The baby, drawn. In: posed babies and their cast. Out: marks: skin and tones, then ink, grouped by part.

use super::fit;
use super::grid::{self, Line, Ranges, Tracer, Window};
use super::joins::{self, Smooth};
use super::lines::{self, Chain, Kind};
use super::palette::BabyColours;
use super::ribbon::{distance, ribbon};
use super::scene::{Colour, FillRule, Item, Path, Step};
use super::tone::{self, LIGHT};
use crate::body::baby::PosedBaby;
use crate::body::cast::{Cast, is_met};
use crate::body::curves::{Curve, Ink};
use crate::body::part::Region;
use crate::body::pose::CELL;
use crate::units::{FigurePoint, Vec3};
use std::collections::BTreeMap;

/// How far a fitted tone may lie from its contour, cm.
const TONE_TOLERANCE: f32 = 0.045;

type Marks = Vec<Item<FigurePoint>>;

/// Marks of the babies in `cast`. `tonal`: with skin and shade; otherwise a plain fill under the ink.
pub fn draw(babies: &[&PosedBaby], cast: &Cast, colours: &BabyColours, tonal: bool) -> Marks {
    drawn(babies, cast, colours, tonal, Hand { firm: firmer(cast), even: 1.0 })
}

/// Marks of a limb that is no baby's.
pub fn limb(cast: &Cast, colours: &BabyColours, tonal: bool, hand: Hand) -> Marks {
    drawn(&[], cast, colours, tonal, hand)
}

/// The lines alone of a limb that is no baby's.
pub fn limb_lines(cast: &Cast, colours: &BabyColours, hand: Hand) -> Marks {
    ink(cast, &[], colours, hand)
}

/// How lines are drawn beside the baby's: how many times as wide, and over how many times the length they are smoothed.
#[derive(Clone, Copy)]
pub struct Hand {
    /// Times as wide.
    pub firm: f32,
    /// Times as smooth.
    pub even: f32,
}

fn drawn(babies: &[&PosedBaby], cast: &Cast, colours: &BabyColours, tonal: bool, hand: Hand) -> Marks {
    let mut out = vec![];
    let Some(whole) = Window::round(cast, &cast.depth, |z| is_met(*z)) else { return out };
    let inside = |i: usize| if cast.hit(i) { 0.5 } else { -0.5 };
    let mut tracer = Tracer::default();
    let contours = tracer.contours(cast, whole, inside);
    let mut skin = vec![fill(outline(cast, &contours, 0.1, hand.even), colours.skin)];
    if tonal {
        let faces: Vec<_> = babies.iter().map(|b| (b.face(), b.posture.measures.head)).collect();
        skin.extend(tonal_marks(&mut tracer, cast, whole, &tone::tones(cast, &faces), colours, hand.even));
    }
    out.push(group("skin", "skin and shade", skin));
    out.extend(ink(cast, babies, colours, hand));
    out
}

fn group(name: &str, about: &str, items: Marks) -> Item<FigurePoint> {
    Item::Group { name: name.to_owned(), about: about.to_owned(), items }
}

fn fill(path: Path<FigurePoint>, colour: Colour) -> Item<FigurePoint> {
    Item::Fill { path, colour, rule: FillRule::EvenOdd }
}

/// The fitted lines through `contours`; pieces under `least` cm2 are left out.
fn outline(cast: &Cast, contours: &[Line], least: f32, even: f32) -> Path<FigurePoint> {
    let mut path = vec![];
    for line in contours {
        let smooth = grid::smooth(line, true, 0.2 * even / cast.cell);
        if grid::area(&smooth).abs() >= least {
            fit::closed(&spaced(&smooth, 0.17), TONE_TOLERANCE, &mut path);
        }
    }
    path
}

/// Points about `step` cm apart.
fn spaced(line: &[(f32, f32)], step: f32) -> Line {
    let mut out = vec![line[0]];
    let mut gone = 0.0;
    for w in line.windows(2) {
        gone += distance(w[0], w[1]);
        if gone >= step {
            out.push(w[1]);
            gone = 0.0;
        }
    }
    out
}

fn tonal_marks(
    tracer: &mut Tracer,
    cast: &Cast,
    whole: Window,
    tones: &tone::Tones,
    c: &BabyColours,
    even: f32,
) -> Marks {
    let mut bands = Bands { tracer, cast, even, marks: vec![] };
    let mut steps = c.tones();
    if cast.cell > 1.2 * CELL {
        // In a small picture bands are narrow: every third tone is enough, with the skin's own.
        let skin = steps.iter().position(|(_, colour)| *colour == c.skin).unwrap_or(0);
        let mut k = 0;
        steps.retain(|_| {
            k += 1;
            (k - 1) % 3 == skin % 3 || k == 1
        });
    }
    let light = Ranges::of(cast, whole, &tones.light);
    // The skin is filled with its own tone already: lighter ones are laid on it from there up, darker ones down.
    let skin = steps.iter().position(|(_, colour)| *colour == c.skin).unwrap_or(0);
    for k in (0..skin).rev() {
        let level = steps[k + 1].0;
        let is_light = |stretch: usize| match light.of_stretch(stretch) {
            (_, high) if high == tone::OFF => None,
            (low, _) if low > level => Some(true),
            (_, high) if high <= level => Some(false),
            _ => None,
        };
        let lit = |i: usize| if tones.light[i] == tone::OFF { -1.0 } else { tones.light[i] - level };
        bands.lay_knowing(whole, is_light, lit, 0.25, steps[k].1);
    }
    for (level, colour) in &steps[skin + 1..] {
        let is_dark = |stretch: usize| match light.of_stretch(stretch) {
            (low, _) if low >= *level => Some(false),
            (_, high) if high < *level => Some(true),
            _ => None,
        };
        bands.lay_knowing(whole, is_dark, |i| level - tones.light[i], 0.12, *colour);
    }
    // Warm cheeks and lips keep the light that falls on them.
    for (field, first, edges) in [
        (&tones.blush, 0.12, &[(0.12, 0.12), (0.36, 0.24), (0.60, 0.35)][..]),
        (&tones.lips, 0.15, &[(0.15, 0.16), (0.40, 0.30)][..]),
    ] {
        let Some(window) = tones.faces.and_then(|w| w.round_within(cast, |i| field[i] > first)) else {
            continue;
        };
        for (edge, share) in edges {
            let (mut low, mut high) = (f32::MAX, f32::MIN);
            for i in window.cells(cast).filter(|&i| field[i] > *edge && cast.hit(i)) {
                (low, high) = (low.min(tones.light[i]), high.max(tones.light[i]));
            }
            // From the tone of the lightest place down to that of the darkest.
            let start = steps.iter().rposition(|(level, _)| high < *level).unwrap_or(0);
            for (k, (level, colour)) in steps.iter().enumerate().skip(start) {
                if k > start && low >= *level {
                    break;
                }
                let inside = |i: usize| {
                    // Each a hair's breadth over the lighter one, whose edge would shine through at its own.
                    let within = field[i] - edge + 0.012 * (k - start) as f32;
                    if k == start { within } else { within.min(level - tones.light[i]) }
                };
                bands.lay(window, inside, 0.06, colour.mix(c.blush, *share));
            }
        }
    }
    bands.marks
}

/// Bands of tone, one over another.
struct Bands<'a> {
    tracer: &'a mut Tracer,
    cast: &'a Cast,
    even: f32,
    marks: Marks,
}

impl Bands<'_> {
    /// Lays a colour where `field` is above 0 on the baby; pieces under `least` cm2 are left out.
    fn lay(&mut self, window: Window, field: impl Fn(usize) -> f32, least: f32, colour: Colour) {
        self.lay_knowing(window, |_| None, field, least, colour);
    }

    /// The same; `even` says of a stretch whether the field is above 0 and all on the baby, or nowhere so, if it knows.
    fn lay_knowing(
        &mut self,
        window: Window,
        even: impl Fn(usize) -> Option<bool>,
        field: impl Fn(usize) -> f32,
        least: f32,
        colour: Colour,
    ) {
        let cast = self.cast;
        let within = |i: usize| if cast.hit(i) { field(i) } else { -1.0 };
        let contours = self.tracer.contours_knowing(cast, window, even, within);
        let path = outline(cast, &contours, least, self.even);
        if !path.is_empty() {
            self.marks.push(fill(path, colour));
        }
    }
}

/// How many times wider lines are drawn: a cast of coarse cells is for a small picture, whose lines must not vanish.
fn firmer(cast: &Cast) -> f32 {
    (cast.cell / CELL).max(1.0).sqrt()
}

/// Width of a full-weight line, cm.
fn full_width(kind: Kind) -> f32 {
    match kind {
        Kind::Outline => 0.105,
        Kind::Overlap => 0.085,
        Kind::Crease => 0.062,
    }
}

/// All ink: the traced lines grouped by region, and the fine curves grouped by what they show.
fn ink(cast: &Cast, babies: &[&PosedBaby], c: &BabyColours, hand: Hand) -> Marks {
    let mut by_region: BTreeMap<Region, Path<FigurePoint>> = BTreeMap::new();
    let chains = lines::trace(cast);
    let smooth = joins::joined(&chains, cast.cell, hand.even);
    let runs: Vec<Run> = (0..chains.len()).flat_map(|k| runs(cast, &chains, &smooth, k, hand.firm)).collect();
    let doubles = joins::doubles(&runs.iter().map(|run| run.points).collect::<Vec<_>>());
    for (run, double) in runs.iter().zip(doubles) {
        if !double {
            let pieces = pieces(run.regions, (0.8 / cast.cell) as usize);
            run.draw(&pieces, &mut by_region);
        }
    }
    let mut fine: BTreeMap<(&'static str, u8), Path<FigurePoint>> = BTreeMap::new();
    for (baby, curve) in babies.iter().flat_map(|b| b.curves.iter().map(move |curve| (b, curve))) {
        let shade = match curve.ink {
            Ink::Hair => {
                draw_hair(cast, curve, fine.entry((curve.name, 0)).or_default());
                continue;
            }
            Ink::Faint => 1,
            Ink::Soft => 2,
            Ink::Firm => 3,
        };
        let path = fine.entry((curve.name, shade)).or_default();
        if curve.name == "crease" {
            // Only on skin that faces the viewer, from behind, and well within the outline.
            if baby.posture.back.z > 0.45 && baby.posture.up.z.abs() < 0.5 {
                draw_where(cast, curve, path, |p| is_within(cast, p, 1.5) && facing(cast, p) > 0.3);
            }
        } else if curve.name == "back" {
            // The furrow shows on a back that is turned to the viewer.
            if baby.posture.back.z > 0.45 {
                draw_where(cast, curve, path, |p| is_within(cast, p, 0.8) && facing(cast, p) > 0.3);
            }
        } else {
            draw_curve(cast, curve, path);
        }
    }
    let tint = |shade: u8| match shade {
        0 => c.skin.mix(c.hair, 0.72),
        1 => c.skin.mix(c.ink, 0.32),
        2 => c.skin.mix(c.ink, 0.55),
        _ => c.skin.mix(c.ink, 0.9),
    };
    let mut groups: BTreeMap<&'static str, Marks> = BTreeMap::new();
    for ((name, shade), path) in fine {
        if !path.is_empty() {
            groups.entry(name).or_default().push(Item::Fill {
                path,
                colour: tint(shade),
                rule: FillRule::NonZero,
            });
        }
    }
    let mut out: Marks = groups.into_iter().map(|(name, items)| group(name, name, items)).collect();
    for region in Region::ALL {
        if let Some(path) = by_region.remove(&region).filter(|p| !p.is_empty()) {
            let mark = Item::Fill { path, colour: c.ink, rule: FillRule::NonZero };
            out.push(group(region.name(), region.name(), vec![mark]));
        }
    }
    out
}

/// A line fainter than this is not drawn.
const FADED: f32 = 0.14;

/// Width of a chain where its weight is full, `firm` times that of its kind, cm; `None` for a chain that is not drawn.
fn base_width(chain: &Chain, line: &Smooth, firm: f32) -> Option<f32> {
    let around: f32 = line.points.windows(2).map(|w| distance(w[0], w[1])).sum();
    if chain.points.len() < 5 || (chain.closed && around < 2.0) {
        return None;
    }
    let small = if chain.closed { (0.35 + around / 8.0).min(1.0) } else { 1.0 };
    Some(full_width(chain.kind) * firm * small)
}

/// Width of a line at one of its points, cm, when its full width is `base`.
fn width_at(cast: &Cast, line: &Smooth, closed: bool, base: f32, i: usize) -> f32 {
    base * (0.45 + 0.55 * line.weights[i].min(1.0)) * lit(cast, &line.points, i, closed)
}

/// The drawn parts of one line: it is cut where it fades out.
fn runs<'a>(
    cast: &Cast,
    chains: &'a [Chain],
    smooth: &'a [Smooth],
    number: usize,
    firm: f32,
) -> Vec<Run<'a>> {
    let (chain, line) = (&chains[number], &smooth[number]);
    let mut out = vec![];
    let Some(base) = base_width(chain, line, firm) else { return out };
    // The width of the line that is met at an end, if it is drawn there.
    let met = line.meets.map(|met| {
        let (k, at) = met?;
        let base = base_width(&chains[k], &smooth[k], firm).filter(|_| smooth[k].weights[at] > FADED)?;
        Some(width_at(cast, &smooth[k], chains[k].closed, base, at))
    });
    let n = line.points.len();
    let whole = line.weights.iter().all(|w| *w > FADED);
    let mut start = 0;
    while start < n {
        if line.weights[start] <= FADED {
            start += 1;
            continue;
        }
        let end = (start..n).find(|&i| line.weights[i] <= FADED).unwrap_or(n);
        let mut run = Run {
            points: &line.points[start..end],
            regions: &chain.regions[start..end],
            widths: vec![],
            closed: chain.closed && whole,
            met: [met[0].filter(|_| start == 0), met[1].filter(|_| end == n)],
        };
        let full = |i: usize| width_at(cast, line, chain.closed, base, start + i);
        if let Some(widths) = run.tapered(full) {
            run.widths = widths;
            out.push(run);
        }
        start = end;
    }
    out
}

/// Where a line passes from region to region: the region and the range of its points. Pieces shorter than `least` points
/// are given to the longer neighbour, the shortest first: alike from both ends of a line.
fn pieces(regions: &[Region], least: usize) -> Vec<(Region, usize, usize)> {
    let mut out: Vec<(Region, usize, usize)> = vec![];
    for (i, &region) in regions.iter().enumerate() {
        match out.last_mut() {
            Some(last) if last.0 == region => last.2 = i + 1,
            _ => out.push((region, i, i + 1)),
        }
    }
    let long = |piece: &(Region, usize, usize)| piece.2 - piece.1;
    while out.len() > 1 {
        let short = (0..out.len()).min_by_key(|&k| (long(&out[k]), out[k].0)).unwrap_or(0);
        if long(&out[short]) >= least {
            break;
        }
        let beside = [short.checked_sub(1), Some(short + 1)];
        let near = beside.into_iter().flatten().filter_map(|k| out.get(k));
        let Some(heir) = near.max_by_key(|piece| (long(piece), piece.0)).map(|piece| piece.0) else { break };
        out[short].0 = heir;
        out.dedup_by(|next, last| {
            let same = next.0 == last.0;
            if same {
                last.2 = next.2;
            }
            same
        });
    }
    out
}

/// A part of a line that does not fade out.
struct Run<'a> {
    points: &'a [(f32, f32)],
    /// The region that each point bounds.
    regions: &'a [Region],
    /// Width at each point, cm.
    widths: Vec<f32>,
    closed: bool,
    /// The width of the line that each end meets, cm.
    met: [Option<f32>; 2],
}

impl Run<'_> {
    /// Width at each point from the `full` one of each; `None` for a line too short to be drawn.
    fn tapered(&self, full: impl Fn(usize) -> f32) -> Option<Vec<f32>> {
        let mut gone = vec![0.0];
        for w in self.points.windows(2) {
            gone.push(gone[gone.len() - 1] + distance(w[0], w[1]));
        }
        let length = gone[gone.len() - 1];
        if self.points.len() < 6 || length < 0.55 {
            return None;
        }
        let fade = (length * 0.4).min(1.0);
        // A free end runs out thin; an end that meets another line is a little thinner than that.
        let taper = |met: Option<f32>, full: f32, from_end: f32| {
            if self.closed {
                return 1.0;
            }
            let least = met.map_or(0.2, |width| (0.9 * width / full).clamp(0.2, 0.75));
            least + (1.0 - least) * grid::smooth_step(0.0, fade, from_end)
        };
        let width = |i: usize| {
            let full = full(i);
            let (from_start, from_end) = (gone[i], length - gone[i]);
            full * taper(self.met[0], full, from_start).min(taper(self.met[1], full, from_end))
        };
        Some((0..self.points.len()).map(width).collect())
    }

    /// Draws the pieces into the paths of their regions. Each piece reaches a little into the next, so that no gap
    /// shows where they meet.
    fn draw(&self, pieces: &[(Region, usize, usize)], by_region: &mut BTreeMap<Region, Path<FigurePoint>>) {
        const OVERLAP: usize = 3;
        let n = self.points.len();
        if let [(region, ..)] = pieces {
            ribbon(self.points, &self.widths, self.closed, by_region.entry(*region).or_default());
            return;
        }
        for &(region, start, end) in pieces {
            let path = by_region.entry(region).or_default();
            if end < n || !self.closed {
                let end = (end + OVERLAP).min(n);
                ribbon(&self.points[start..end], &self.widths[start..end], false, path);
            } else {
                // The last piece of a closed line reaches back to its start.
                let around = || (start..n + OVERLAP).map(|i| i % n);
                let points: Line = around().map(|i| self.points[i]).collect();
                let widths: Vec<f32> = around().map(|i| self.widths[i]).collect();
                ribbon(&points, &widths, false, path);
            }
        }
    }
}

/// Lines turned to the light are thinner, lines turned away thicker.
fn lit(cast: &Cast, points: &[(f32, f32)], i: usize, closed: bool) -> f32 {
    let n = points.len();
    let (a, b) = if closed {
        (points[(i + n - 3) % n], points[(i + 3) % n])
    } else {
        (points[i.saturating_sub(3)], points[(i + 3).min(n - 1)])
    };
    let length = distance(a, b).max(1e-6);
    let side = (-(b.1 - a.1) / length, (b.0 - a.0) / length);
    let p = points[i];
    let depth = |s: f32| {
        cast.index_at(p.0 + side.0 * 0.15 * s, p.1 + side.1 * 0.15 * s).map_or(-1e6, |k| cast.depth[k])
    };
    // Outward is from the nearer surface to the farther one.
    let outward = if depth(1.0) > depth(-1.0) { -1.0 } else { 1.0 };
    let facing = (side.0 * LIGHT.x + side.1 * LIGHT.y) * outward / 0.74;
    1.0 - 0.22 * facing
}

/// How far the skin at a point of the picture is turned to the viewer: 1 for squarely.
fn facing(cast: &Cast, p: Vec3) -> f32 {
    cast.index_at(p.x, p.y).map_or(0.0, |i| cast.normal[i].z)
}

/// Whether a point lies this far within what is seen, and within what stands before it.
fn is_within(cast: &Cast, p: Vec3, by: f32) -> bool {
    const AROUND: [(f32, f32); 8] = [
        (1.0, 0.0),
        (0.7, 0.7),
        (0.0, 1.0),
        (-0.7, 0.7),
        (-1.0, 0.0),
        (-0.7, -0.7),
        (0.0, -1.0),
        (0.7, -0.7),
    ];
    AROUND.iter().all(|(dx, dy)| cast.covers(p.x + dx * by, p.y + dy * by))
}

fn draw_curve(cast: &Cast, curve: &Curve, path: &mut Path<FigurePoint>) {
    // A line on skin seen edge on would only thicken the outline; lids and lips meet in a fold, where skin is always so.
    let least = if curve.name == "face" && curve.ink == Ink::Firm { -1.0 } else { 0.1 };
    draw_where(cast, curve, path, |p| facing(cast, p) > least);
}

/// Draws the stretches of a curve that are seen and for which `also` holds.
fn draw_where(cast: &Cast, curve: &Curve, path: &mut Path<FigurePoint>, also: impl Fn(Vec3) -> bool) {
    let visible: Vec<bool> = curve.points.iter().map(|p| cast.sees(*p, 0.25) && also(*p)).collect();
    let n = visible.len();
    let mut start = 0;
    while start < n {
        if !visible[start] {
            start += 1;
            continue;
        }
        let end = (start..n).find(|&i| !visible[i]).unwrap_or(n);
        if end - start >= 3 {
            let points: Vec<(f32, f32)> = curve.points[start..end].iter().map(|p| (p.x, p.y)).collect();
            let last = (points.len() - 1) as f32;
            let widths: Vec<f32> = (0..points.len())
                .map(|k| {
                    let u = k as f32 / last;
                    let ends = 0.35 + 0.65 * (u * 4.0).min(1.0).min((1.0 - u) * 4.0);
                    (curve.width.0 + (curve.width.1 - curve.width.0) * u) * ends * 1.1 * firmer(cast)
                })
                .collect();
            ribbon(&points, &widths, false, path);
        }
        start = end;
    }
}

/// How far within the outline hair ends, cm.
const BARE: f32 = 0.4;

/// A hair: a thin leaf of two curves, as far as it is seen.
fn draw_hair(cast: &Cast, curve: &Curve, path: &mut Path<FigurePoint>) {
    let free = |p: &&Vec3| cast.sees(**p, 0.25) && facing(cast, **p) > 0.15 && is_within(cast, **p, BARE);
    let points: Vec<(f32, f32)> = curve.points.iter().take_while(free).map(|p| (p.x, p.y)).collect();
    let n = points.len();
    if n < 3 {
        return;
    }
    let (a, d) = (points[0], points[n - 1]);
    let (dx, dy) = (d.0 - a.0, d.1 - a.1);
    let long = (dx * dx + dy * dy).sqrt();
    if long < 0.2 {
        return;
    }
    let third = (n - 1) as f32 / 3.0;
    let (p, q) = (points[1], points[n - 2]);
    let b = (a.0 + (p.0 - a.0) * third, a.1 + (p.1 - a.1) * third);
    let c = (d.0 + (q.0 - d.0) * third, d.1 + (q.1 - d.1) * third);
    // A leaf is as wide as half the shift of its controls, and a bit.
    let wide = curve.width.0 * firmer(cast) * 0.66;
    let (wx, wy) = (-dy / long * wide, dx / long * wide);
    let at = |p: (f32, f32), s: f32| FigurePoint::new(p.0 + wx * s, p.1 + wy * s);
    path.push(Step::Move(at(a, 0.0)));
    path.push(Step::Curve(at(b, 1.0), at(c, 0.4), at(d, 0.0)));
    path.push(Step::Curve(at(c, -0.4), at(b, -1.0), at(a, 0.0)));
    path.push(Step::Close);
}
