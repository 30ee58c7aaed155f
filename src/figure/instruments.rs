//! What hands lay on her: the tape, a horn, the probe of a Doppler. In: her shape or the place where the heart is listened for,
//! the look. Out: items, as drawn curves, under the hands.
//!
//! The tape lies blank side up, its end at the upper border of the pubic bone, so that nobody is led by its numbers; it is its
//! edges alone, for a face may lie behind it. Horn and probe stand on the place itself, tilted so that their forms are seen; the
//! mark of the heart is painted over them.

use super::hands::{INK, RIM};
use super::mother::{MotherLook, MotherStyle};
use super::mother_ink::{ellipse, fill, fine_lines, group, stroke};
use super::scene::{Colour, Item, Path};
use super::smooth;
use crate::body::hands::Palpation;
use crate::body::mother::MotherShape;
use crate::units::{FigurePoint, MotherPoint};

/// Half the width of the tape, and how far it goes on beyond the top of the womb, cm.
const TAPE: (f32, f32) = (0.65, 3.6);
/// How a horn narrows and widens: cm from the skin, radius. A wooden horn is about 14 to 18 cm long.
const HORN: [(f32, f32); 11] = [
    (0.25, 2.7),
    (0.8, 2.45),
    (1.6, 1.85),
    (3.0, 1.3),
    (5.0, 1.02),
    (8.0, 0.92),
    (11.0, 0.98),
    (12.2, 1.1),
    (12.8, 1.5),
    (13.1, 2.3),
    (13.2, 2.8),
];
/// The plate for the ear: from, to, radius; the hole in it.
const PLATE: (f32, f32, f32, f32) = (13.2, 14.1, 2.9, 0.6);
/// Outlines of a probe on one side: cm from the heart towards the hand, half its width.
const PROBE: [(f32, f32); 8] =
    [(-1.55, 0.75), (-1.1, 1.45), (0.2, 1.6), (1.3, 1.5), (2.4, 1.0), (3.6, 0.86), (9.0, 0.8), (9.7, 0.5)];
/// The way from the heart to the hand that holds the probe.
const HELD: (f32, f32) = (-0.777, -0.629);

/// The colours of things: lit, in shade, lines.
struct Things {
    lit: Colour,
    shade: Colour,
    ink: Colour,
    paper: Colour,
}

impl Things {
    fn of(look: &MotherLook, lit: u32, shade: u32) -> Self {
        let (paper, ink) = (look.palette.paper, ink(look));
        match look.style {
            MotherStyle::Soft => Things { lit: Colour::hex(lit), shade: Colour::hex(shade), ink, paper },
            MotherStyle::Line => Things { lit: paper, shade: paper, ink, paper },
        }
    }

    /// A filled outline in its pale rim.
    fn solid(&self, path: Path<FigurePoint>, colour: Colour) -> Vec<Item<FigurePoint>> {
        vec![
            stroke(path.clone(), 2.0 * RIM, self.paper),
            fill(path.clone(), colour),
            stroke(path, 0.12, self.ink),
        ]
    }
}

/// The ink of things and hands.
fn ink(look: &MotherLook) -> Colour {
    match look.style {
        MotherStyle::Soft => INK,
        MotherStyle::Line => look.palette.ink,
    }
}

/// What lies under the hands in this palpation, if anything does.
pub fn draw(
    palpation: Palpation,
    shape: &MotherShape,
    heart: Option<MotherPoint>,
    look: &MotherLook,
) -> Option<Item<FigurePoint>> {
    let at = heart.map(|at| FigurePoint::new(at.0.x, at.0.y));
    match palpation {
        Palpation::Tape => Some(group("tape", "", tape(shape, look))),
        Palpation::Horn => Some(group("horn", "", horn(at?, &Things::of(look, 0xEBD5AC, 0xD2B280)))),
        Palpation::Doppler => Some(group("doppler", "", doppler(at?, &Things::of(look, 0xEEF1F5, 0xC9D1DC)))),
        Palpation::Fundal | Palpation::Lateral | Palpation::PelvicOne | Palpation::PelvicTwo => None,
    }
}

fn tape(shape: &MotherShape, look: &MotherLook) -> Vec<Item<FigurePoint>> {
    let top = shape.fundus_y as f32 + TAPE.1;
    let edge = |x: f32| -> Vec<FigurePoint> {
        (0..=6u8).map(|k| FigurePoint::new(x, top * f32::from(k) / 6.0)).collect()
    };
    let mut right = edge(-TAPE.0);
    right.reverse();
    let band = smooth::cornered(&[edge(TAPE.0), right]);
    // The metal end, where the numbers begin on the other side.
    let end = [(-TAPE.0, 0.0), (TAPE.0, 0.0), (TAPE.0, 0.75), (-TAPE.0, 0.75)];
    let end = smooth::cornered(&end.map(|(x, y)| vec![FigurePoint::new(x, y)]));
    let ink = ink(look);
    vec![stroke(band.clone(), 2.0 * RIM, look.palette.paper), stroke(band, 0.12, ink), fill(end, ink)]
}

/// A thing that stands on her skin, tilted away from the viewer's line of sight.
struct Tilted {
    at: FigurePoint,
    /// Which way it leans, as seen.
    lean: (f32, f32),
    /// How long a cm of it looks, and how open a ring.
    sin: f32,
    cos: f32,
}

impl Tilted {
    fn point(&self, along: f32, across: f32) -> FigurePoint {
        let (x, y) = self.lean;
        let by = along * self.sin;
        FigurePoint::new(self.at.x + x * by - y * across, self.at.y + y * by + x * across)
    }

    /// Half a ring about it, towards its foot or its head.
    fn half(&self, along: f32, r: f32, towards: f32) -> Vec<FigurePoint> {
        (0..=8u8)
            .map(|k| {
                let (sin, cos) = libm::sincosf(std::f32::consts::PI * f32::from(k) / 8.0);
                self.point(along + towards * r * sin * self.cos / self.sin, r * cos)
            })
            .collect()
    }

    fn ring(&self, along: f32, r: f32) -> Path<FigurePoint> {
        let (mut foot, head) = (self.half(along, r, -1.0), self.half(along, r, 1.0));
        foot.reverse();
        foot.pop();
        foot.extend(head);
        foot.pop();
        smooth::closed(&foot)
    }
}

fn horn(at: FigurePoint, c: &Things) -> Vec<Item<FigurePoint>> {
    let away = if at.x < 0.0 { -1.0 } else { 1.0 };
    let horn = Tilted { at, lean: (0.94 * away, 0.342), sin: 0.64, cos: 0.77 };
    let side =
        |sign: f32| -> Vec<FigurePoint> { HORN.iter().map(|(t, r)| horn.point(*t, sign * r)).collect() };
    // Round the foot from one side to the other, up that side, down the first.
    let foot = horn.half(HORN[0].0, HORN[0].1, -1.0);
    let mut back = side(1.0);
    back.reverse();
    let whole = smooth::cornered(&[foot, side(-1.0), back]);
    let mut shaded = side(-1.0);
    shaded.extend(HORN.iter().rev().map(|(t, r)| horn.point(*t, -0.45 * r)));
    let mut items = c.solid(whole.clone(), c.lit);
    items.push(fill(smooth::closed(&shaded), c.shade));
    items.push(fine_lines(&[horn.half(HORN[1].0, HORN[1].1, -1.0)], 0.07, c.ink));
    items.push(stroke(whole, 0.12, c.ink));
    items.extend(c.solid(horn.ring(PLATE.0, PLATE.2), c.shade));
    items.extend(c.solid(horn.ring(PLATE.1, PLATE.2), c.lit));
    items.push(fill(horn.ring(PLATE.1, PLATE.3), c.ink));
    items
}

fn doppler(at: FigurePoint, c: &Things) -> Vec<Item<FigurePoint>> {
    let point = |along: f32, across: f32| {
        FigurePoint::new(at.x + HELD.0 * along - HELD.1 * across, at.y + HELD.1 * along + HELD.0 * across)
    };
    let mut outline: Vec<FigurePoint> = PROBE.iter().map(|(t, r)| point(*t, *r)).collect();
    outline.extend(PROBE.iter().rev().map(|(t, r)| point(*t, -r)));
    let outline = smooth::closed(&outline);
    // Its cable, coiled on the way to the box that speaks, which stands beside her.
    let end = point(9.7, 0.0);
    let way = [(0.0, 0.0), (-2.2, -1.4), (-5.0, -1.7), (-8.0, -0.6)];
    let lead: Vec<FigurePoint> = way.iter().map(|(x, y)| FigurePoint::new(end.x + x, end.y + y)).collect();
    let start = lead[lead.len() - 1];
    let mut cable = lead;
    const TURNS: u16 = 9;
    const STEPS: u16 = 8;
    for k in 1..=TURNS * STEPS {
        let turned = f32::from(k) / f32::from(STEPS);
        let (sin, cos) = libm::sincosf(std::f32::consts::TAU * turned);
        cable.push(FigurePoint::new(
            start.x - 0.72 * turned - 0.6 * sin,
            start.y + 0.12 * turned + 0.6 * (1.0 - cos),
        ));
    }
    let last = cable[cable.len() - 1];
    for (x, y) in [(-2.0, 0.4), (-6.0, 0.2), (-30.0, -4.0)] {
        cable.push(FigurePoint::new(last.x + x, last.y + y));
    }
    let cable = smooth::open(&cable);
    let mut items = vec![stroke(cable.clone(), 0.2 + 2.0 * RIM, c.paper), stroke(cable, 0.2, c.ink)];
    items.extend(c.solid(outline, c.lit));
    let band: Vec<FigurePoint> = [-1.05f32, -0.5, 0.5, 1.05].iter().map(|r| point(2.4, *r * 0.95)).collect();
    items.push(fine_lines(&[band], 0.08, c.ink));
    items.push(fill(ellipse(point(4.9, 0.0), 0.28, 0.28), c.ink));
    items
}
