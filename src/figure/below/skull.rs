//! A head from below: the skull with its seams and fontanelles. In: what leads, its place, inks. Out: its marks.

use super::{Drawn, Inks, Place, closed, toothed};
use crate::body::skull::{Leads, Line, Seam};
use crate::figure::engrave::polygon;
use crate::figure::mother_ink::{brush, brushes, fill, group, stroke};
use crate::figure::scene::Item;
use crate::figure::smooth;
use crate::units::FigurePoint;

/// Half the breadth of a seam and of its teeth, units of the figure.
const SEAM: f32 = 0.17;
const TOOTH: f32 = 0.07;

fn name(seam: Seam) -> &'static str {
    match seam {
        Seam::Sagittal => "sagittal-suture",
        Seam::Frontal => "frontal-suture",
        Seam::Coronal => "coronal-suture",
        Seam::Lambdoid => "lambdoid-suture",
        Seam::LargeFontanelle => "large-fontanelle",
        Seam::SmallFontanelle => "small-fontanelle",
        Seam::BrowRidge => "brow-ridge",
    }
}

fn laid(line: &Line, place: &Place) -> Vec<FigurePoint> {
    line.points.iter().map(|p| place.point(p.x, p.y)).collect()
}

pub(super) fn draw(leads: Leads, place: &Place, inks: &Inks) -> Drawn {
    let outline: Vec<FigurePoint> = (0..28)
        .map(|i| {
            let (sin, cos) = libm::sincosf(std::f32::consts::TAU * i as f32 / 28.0);
            place.lay(cos, sin)
        })
        .collect();
    let mut whole = inks.round(closed(&outline), 4.9, &|x, y| place.lay(x, y));
    let lines = leads.lines();
    let membrane = if inks.soft { inks.baby.shade[1].mix(inks.baby.blush, 0.35) } else { inks.baby.skin };
    let fontanelle = |line: &&Line| matches!(line.seam, Seam::LargeFontanelle | Seam::SmallFontanelle);
    for line in lines.iter().filter(|line| !fontanelle(line)) {
        let points = laid(line, place);
        let items = if line.seam == Seam::BrowRidge {
            // Fine hairs across it.
            let hairs: Vec<Vec<FigurePoint>> = points
                .windows(2)
                .flat_map(|pair| [0.0, 0.33, 0.66].map(|t| (pair, t)))
                .map(|(pair, t)| {
                    let (dx, dy) = (pair[1].x - pair[0].x, pair[1].y - pair[0].y);
                    let at = FigurePoint::new(pair[0].x + dx * t, pair[0].y + dy * t);
                    let off = |far: f32, on: f32| {
                        FigurePoint::new(at.x - dy * far + dx * on, at.y + dx * far + dy * on)
                    };
                    vec![off(-0.25, -0.2), at, off(0.25, 0.5)]
                })
                .collect();
            vec![brushes(&hairs, 0.1, inks.baby.ink.mix(inks.baby.skin, 0.3))]
        } else {
            let edges = [SEAM, -SEAM].map(|off| toothed(&points, off, TOOTH));
            vec![
                stroke(smooth::open(&points), 2.0 * SEAM + 0.08, membrane),
                brushes(&edges, 0.1, inks.baby.ink),
            ]
        };
        whole.push(group(name(line.seam), "", items));
    }
    for line in lines.iter().filter(fontanelle) {
        let points = laid(line, place);
        let mut ring = points.clone();
        ring.extend(points.first().copied());
        let mut items = vec![fill(polygon(&points), membrane)];
        items.push(hatched(&points, inks));
        items.push(brush(&ring, 0.2, inks.baby.ink));
        whole.push(group(name(line.seam), "", items));
    }
    let mut faint = vec![];
    for line in &lines {
        let mut points = laid(line, place);
        if fontanelle(&line) {
            points.extend(points.first().copied());
        }
        faint.push(points);
    }
    let mut rim = outline.clone();
    rim.extend(outline.first().copied());
    faint.push(rim);
    Drawn { whole, faint, named: named(leads, &lines, place) }
}

/// Fine lines over a soft place.
fn hatched(ring: &[FigurePoint], inks: &Inks) -> Item<FigurePoint> {
    let (mut low, mut high) = (ring[0], ring[0]);
    for p in ring {
        low = FigurePoint::new(low.x.min(p.x), low.y.min(p.y));
        high = FigurePoint::new(high.x.max(p.x), high.y.max(p.y));
    }
    let (wide, tall) = (high.x - low.x, high.y - low.y);
    let lines: Vec<Vec<FigurePoint>> = (1..(((wide + tall) / 0.34) as u16))
        .map(|i| {
            let x = low.x + 0.34 * f32::from(i);
            vec![FigurePoint::new(x - tall, low.y), FigurePoint::new(x, high.y)]
        })
        .collect();
    let ink = inks.baby.ink.mix(inks.baby.skin, if inks.soft { 0.45 } else { 0.25 });
    let path = lines.iter().flat_map(|line| smooth::open(line)).collect();
    Item::Clip { path: polygon(ring), items: vec![stroke(path, 0.06, ink)] }
}

fn named(leads: Leads, lines: &[Line], place: &Place) -> Vec<super::Named> {
    let middle = |seam: Seam| {
        let line = lines.iter().find(|line| line.seam == seam)?;
        let n = line.points.len();
        if matches!(seam, Seam::LargeFontanelle | Seam::SmallFontanelle) {
            let (x, y) = line.points.iter().fold((0.0, 0.0), |(x, y), p| (x + p.x, y + p.y));
            return Some(place.point(x / n as f32, y / n as f32));
        }
        line.points.get(n / 2).map(|p| place.point(p.x, p.y))
    };
    let mut out = vec![];
    let mut put = |id: &'static str, at: Option<FigurePoint>, names| out.extend(at.map(|at| (id, at, names)));
    put("below-small-fontanelle", middle(Seam::SmallFontanelle), true);
    put("below-large-fontanelle", middle(Seam::LargeFontanelle), true);
    match leads {
        Leads::Brow => {
            put("below-frontal-suture", middle(Seam::Frontal), true);
            put("below-brow-ridges", middle(Seam::BrowRidge), false);
        }
        _ => {
            put("below-sagittal-suture", middle(Seam::Sagittal), true);
            put("below-occiput", Some(place.point(0.0, 0.8 * place.half.1)), false);
        }
    }
    out
}
