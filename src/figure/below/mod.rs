//! What leads, from below. In: what leads, how it is turned, how far the cervix is open, how the figure is wanted. Out: `Scene`:
//! the outlet of the pelvis with her front above and her left at the right, as it is seen from her feet when she lies on her back.
//!
//! Drawn larger than other figures: [`LARGER`] units of the figure for a cm. Only what lies in the open cervix is drawn in full;
//! what lies behind its wall is dashed. It is a picture for teaching, from published measures, and no woman's baby.

mod bottom;
mod face;
mod outlet;
mod skull;

use super::labels::{self, Asked, Planner};
use super::mother::MotherLook;
use super::mother_ink::{fill, group, stroke};
use super::palette::BabyColours;
use super::scene::{Colour, Item, Path, Scene};
use super::terrain::Terrain;
use super::wanted::Wanted;
use super::{FRAME, FigureError, FigureOptions, Labels, Style, View, engrave, marks, paper, smooth};
use crate::body::skull::Leads;
use crate::fonts::Fonts;
use crate::units::FigurePoint;
use crate::words::{Words, WordsError};

/// Units of the figure for a cm.
pub const LARGER: f32 = 1.9;
/// Where the middle of the canal stands in the figure.
const MIDDLE: f32 = 12.5;
/// Open as far as it goes, cm.
pub const FULLY_OPEN: u8 = 10;

/// What is seen from below.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Below {
    /// What leads.
    pub leads: Leads,
    /// Where what names the position lies: eighths of a turn from her front, by way of her left.
    pub eighths: u8,
    /// How far the cervix is open, cm.
    pub open_cm: u8,
}

/// Where things of what leads lie in the picture.
#[derive(Clone, Copy)]
struct Place {
    /// Towards what names the position, and towards the baby's left; length 1.
    along: (f32, f32),
    across: (f32, f32),
    /// Half the breadth and half the length of what leads, cm.
    half: (f32, f32),
}

/// A place of the canal, cm to her left and to her front, in the figure.
fn at(left: f32, front: f32) -> FigurePoint {
    FigurePoint::new(left * LARGER, front * LARGER + MIDDLE)
}

impl Place {
    fn of(below: Below) -> Self {
        let (sin, cos) = libm::sincosf(std::f32::consts::FRAC_PI_4 * f32::from(below.eighths % 8));
        // Seen from below, a head that looks away from the side of its occiput has its left to the right of that way; a
        // face, a brow and a bottom have it to the left.
        let sign = match below.leads {
            Leads::BentHead | Leads::StraightHead => 1.0,
            Leads::Brow | Leads::Face | Leads::Bottom => -1.0,
        };
        Place { along: (sin, cos), across: (sign * cos, -sign * sin), half: below.leads.half() }
    }

    /// A point of what leads: cm to the baby's left, and towards what names the position.
    fn point(&self, left: f32, ahead: f32) -> FigurePoint {
        at(left * self.across.0 + ahead * self.along.0, left * self.across.1 + ahead * self.along.1)
    }

    /// A direction of the picture's disc, laid on what leads as on an ellipse.
    fn lay(&self, x: f32, y: f32) -> FigurePoint {
        let left = x * self.across.0 + y * self.across.1;
        let ahead = x * self.along.0 + y * self.along.1;
        self.point(left * self.half.0, ahead * self.half.1)
    }

    fn line(&self, points: &[(f32, f32)]) -> Vec<FigurePoint> {
        points.iter().map(|(left, ahead)| self.point(*left, *ahead)).collect()
    }
}

/// Inks and fills of what leads.
struct Inks {
    baby: BabyColours,
    soft: bool,
}

impl Inks {
    /// The tones of something round, the darkest first.
    fn tones(&self) -> Vec<(f32, Colour)> {
        let [a, b, c] = self.baby.shade;
        if !self.soft {
            return vec![];
        }
        vec![
            (-0.35, c),
            (-0.1, c.mix(b, 0.5)),
            (0.1, b),
            (0.28, b.mix(a, 0.5)),
            (0.45, a),
            (0.62, a.mix(self.baby.skin, 0.5)),
            (0.76, self.baby.skin),
            (0.9, self.baby.light),
        ]
    }

    /// The darkest tone.
    fn deep(&self) -> Colour {
        if self.soft { self.baby.shade[2].mix(self.baby.ink, 0.25) } else { self.baby.skin }
    }

    /// Something round: its tones, its lines, its outline. `size`: its radius, cm.
    fn round(&self, outline: Path<FigurePoint>, size: f32, lay: engrave::Lay<'_>) -> Vec<Item<FigurePoint>> {
        let mut inside = vec![fill(outline.clone(), self.deep())];
        inside.extend(engrave::tones(&self.tones(), lay));
        let ink = if self.soft { self.baby.shade[2].mix(self.baby.ink, 0.55) } else { self.baby.ink };
        inside.push(engrave::lines(0.33 / size, if self.soft { 0.15 } else { 0.2 }, ink, lay));
        vec![Item::Clip { path: outline.clone(), items: inside }, stroke(outline, 0.16, self.baby.ink)]
    }
}

/// What is named: message, place, whether it names the position.
type Named = (&'static str, FigurePoint, bool);

/// What leads, drawn whole, the lines that show through the wall of the womb, and what is named of it.
struct Drawn {
    whole: Vec<Item<FigurePoint>>,
    faint: Vec<Vec<FigurePoint>>,
    named: Vec<Named>,
}

/// Draws it.
pub fn figure(
    below: Below,
    (look, baby): (&MotherLook, BabyColours),
    options: &FigureOptions,
    words: &Words,
    fonts: &Fonts,
) -> Result<Scene, FigureError> {
    let place = Place::of(below);
    let inks = Inks { baby, soft: options.style == Style::Soft };
    let drawn = match below.leads {
        Leads::BentHead | Leads::StraightHead | Leads::Brow => skull::draw(below.leads, &place, &inks),
        Leads::Face => face::draw(&place, &inks),
        Leads::Bottom => bottom::draw(&place, &inks),
    };
    let wanted = wanted(&drawn.named, below, options.labels, words)?;
    let terrain = Terrain::of_cut(&[], None, vec![], |_, _| outlet::HALF_BREADTH * LARGER);
    let options = &FigureOptions { view: View::Facing, ..options.clone() };
    let asked = Asked::only(terrain, wanted, ("her-left", "her-right"));
    let plan = Planner { options, frame: FRAME, words, fonts }.plan(asked)?;
    let mut items = vec![paper(plan.frame, look.palette.paper)];
    items.push(group("canal", "", outlet::behind(below.open_cm, &drawn.faint, look)));
    let seen = group("presenting-part", "", drawn.whole);
    items.push(Item::Clip { path: outlet::opening(below.open_cm), items: vec![seen] });
    items.push(group("cervix", "", outlet::lip(below.open_cm, look)));
    items.push(group("outlet", "", outlet::bones(look)));
    let ink = if inks.soft { BabyColours::NEUTRAL.ink } else { inks.baby.ink };
    let colours = marks::MarkColours { paper: look.palette.paper, heart: super::HEART, ink };
    items.extend(labels::paint(&plan, &colours, words.lang(), fonts)?);
    Ok(Scene {
        frame: plan.frame,
        title: options.title.clone(),
        description: options.description.clone(),
        lang: words.lang().to_owned(),
        items,
    })
}

/// What is named: of what leads, and of her.
fn wanted(named: &[Named], below: Below, labels: Labels, words: &Words) -> Result<Vec<Wanted>, WordsError> {
    let mut all: Vec<Named> = vec![];
    if labels != Labels::None {
        all.extend(named.iter().filter(|(_, _, names)| *names || labels != Labels::Few));
        all.push(("label-pubic-bone", at(0.0, 7.3), false));
        if labels != Labels::Few {
            all.push(("below-coccyx", at(0.0, -6.9), false));
            if below.open_cm < FULLY_OPEN {
                // On the side on which the position is not named.
                let side = if below.eighths % 8 < 4 { -0.8 } else { 0.8 };
                let far = 0.5 * f32::from(below.open_cm) + 0.25;
                all.push(("below-cervix", at(side * far, -0.6 * far), false));
            }
        }
    }
    all.into_iter()
        .map(|(id, at, strong)| {
            let side = if at.x < 0.0 { -1.0 } else { 1.0 };
            let text = words.say(id, &[])?;
            Ok(Wanted { text, targets: [Some(at); 2], side, strong, gap: 0.0, owner: None })
        })
        .collect()
}

/// Places on a line, close together, each moved to its sides in turn: a seam's toothed edge.
fn toothed(line: &[FigurePoint], off: f32, tooth: f32) -> Vec<FigurePoint> {
    const STEP: f32 = 0.34;
    let mut out = vec![];
    let mut k = 0;
    for pair in line.windows(2) {
        let (dx, dy) = (pair[1].x - pair[0].x, pair[1].y - pair[0].y);
        let long = libm::hypotf(dx, dy).max(1e-6);
        let steps = (long / STEP) as u16 + 1;
        for i in 0..steps {
            let t = f32::from(i) / f32::from(steps);
            let far = off + if k % 2 == 0 { tooth } else { -tooth };
            out.push(FigurePoint::new(
                pair[0].x + dx * t - dy / long * far,
                pair[0].y + dy * t + dx / long * far,
            ));
            k += 1;
        }
    }
    out
}

/// A smooth closed line.
fn closed(line: &[FigurePoint]) -> Path<FigurePoint> {
    smooth::closed(line)
}
