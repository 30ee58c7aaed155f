//! The finished drawing on her belly. In: a pose, the strokes of its babies, the colours of skin and pen. Out: `Scene`: her body in
//! clothes with the belly bare, the drawing on it, hearts, her sides, and at the edges ticks of centimetres and hand-breadths.

use super::artist;
use super::her_body;
use super::mother::{MotherLook, MotherPalette, MotherStyle, SkinMarks};
use super::mother_ink::{ellipse, stroke};
use super::options::Palette;
use super::panel::path;
use super::scene::{Align, Colour, FillRule, Frame, Item, Role, Scene, Step as Draw, Text};
use super::strokes::Stroke;
use crate::body::pose::{Mark, Pose};
use crate::fonts::{Face, FontError, Fonts};
use crate::units::FigurePoint;

/// The breadth of a hand laid flat, four fingers of 2 cm, cm (house).
pub const HAND_CM: f64 = 8.0;
/// Widths of the pen on her, cm.
const LINE: f32 = 0.34;
const FINE: f32 = 0.22;
/// Dash and gap of what was not found, and of what lies in the pelvis, cm.
const DASH: (f32, f32) = (0.55, 0.6);
const DOTS: (f32, f32) = (0.05, 0.6);
const TOLERANCE: f32 = 0.03;
/// Height of a heart, cm.
pub const HEART: f32 = 2.4;

/// A pen whose lines show on her skin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pen {
    /// Its lines.
    pub line: Colour,
    /// The heart.
    pub heart: Colour,
    /// The message that names its colour.
    pub name: &'static str,
}

impl Pen {
    /// The pen for a skin: dark on light skin, light on deep.
    pub fn on(palette: Palette) -> Pen {
        match palette {
            Palette::Neutral | Palette::Skin(..=3) => {
                Pen { line: Colour::hex(0x23305F), heart: Colour::hex(0x9C1C2E), name: "skin-pen-dark" }
            }
            Palette::Skin(_) => {
                Pen { line: Colour::hex(0xFFFFFF), heart: Colour::hex(0xFFD76A), name: "skin-pen-light" }
            }
        }
    }
}

/// What is wanted of the picture.
pub struct OnSkin<'a> {
    /// Size on paper of a cm of the body, mm.
    pub mm_per_cm: f32,
    /// Type of words and numbers, points.
    pub type_pt: f32,
    /// Her right and her left, in words.
    pub sides: [&'a str; 2],
    /// Centimetres, as the ticks name them.
    pub cm: &'a str,
    /// Whether the navel was measured; else it is not drawn.
    pub navel: bool,
    /// The skin.
    pub palette: Palette,
    /// Language tag.
    pub lang: &'a str,
    /// Title.
    pub title: String,
    /// The picture in words.
    pub description: String,
}

/// A stroke, whether it was found, and whether it belongs to the baby of this page.
pub type Drawn<'a> = (&'a Stroke, bool, bool);

/// What lies inside the picture, cm: above, as far as the top of her belly asks.
pub fn frame(pose: &Pose) -> Frame {
    let top = (pose.mother.fundus_y as f32 + 3.4).max(33.5);
    // Her arms, and the ticks beside them.
    let half = (pose.mother.half_width(14.0) as f32 + 12.5).max(29.5);
    Frame { left: -half, bottom: -11.5, right: half, top }
}

/// The picture.
pub fn on_skin(
    pose: &Pose,
    strokes: &[Drawn<'_>],
    asked: &OnSkin<'_>,
    fonts: &Fonts,
) -> Result<Scene, FontError> {
    let look = MotherLook { style: MotherStyle::Soft, palette: MotherPalette::of(asked.palette) };
    let pen = Pen::on(asked.palette);
    let frame = frame(pose);
    let [linea_nigra, striae, rash] = pose.skin;
    let skin = SkinMarks { linea_nigra, striae, rash };
    let near = |p: FigurePoint| {
        let close = |q: &FigurePoint| libm::hypotf(p.x - q.x, p.y - q.y) < 0.5;
        strokes.iter().filter(|(s, ..)| !s.deep).any(|(s, ..)| s.line.iter().any(close))
    };
    let mut items =
        vec![Item::Fill { path: frame.outline(), colour: look.palette.paper, rule: FillRule::NonZero }];
    items.extend(her_body::bare(&pose.mother, &near, &skin, &look));
    if asked.navel {
        let at = FigurePoint::new(0.0, pose.mother.navel_y as f32);
        items.push(stroke(ellipse(at, 0.6, 0.5), 0.12, look.palette.soft_ink));
    }
    for (line, felt, own) in strokes {
        let colour = if *own { pen.line } else { pen.line.mix(look.palette.skin, 0.55) };
        let dash = match (line.deep, felt) {
            (true, _) => Some(DOTS),
            (false, false) => Some(DASH),
            (false, true) => None,
        };
        let width = if line.fine { FINE } else { LINE };
        items.push(Item::Stroke { path: path(&line.line, line.closed, TOLERANCE), colour, width, dash });
    }
    for mark in &pose.marks {
        if let Mark::Heart(_, at) = mark {
            items.push(artist::heart(FigurePoint::new(at.0.x, at.0.y), HEART, pen.heart));
        }
    }
    let words = Words { asked, frame: &frame, ink: look.palette.ink, fonts };
    items.extend(words.ticks(pose)?);
    items.extend(words.sides()?);
    Ok(Scene {
        frame,
        title: asked.title.clone(),
        description: asked.description.clone(),
        lang: asked.lang.to_owned(),
        items,
    })
}

/// Words and numbers of the picture.
struct Words<'a> {
    asked: &'a OnSkin<'a>,
    frame: &'a Frame,
    ink: Colour,
    fonts: &'a Fonts,
}

impl Words<'_> {
    fn size(&self) -> f32 {
        self.asked.type_pt * 25.4 / 72.0 / self.asked.mm_per_cm
    }

    fn text(
        &self,
        text: &str,
        at: FigurePoint,
        align: Align,
        (face, role): (Face, Role),
    ) -> Result<Item<FigurePoint>, FontError> {
        self.fonts.measure(face, text, 1.0)?;
        Ok(Item::Text(Text {
            text: text.to_owned(),
            at,
            align,
            size: self.size(),
            face,
            colour: self.ink,
            lang: self.asked.lang.to_owned(),
            role,
        }))
    }

    /// Her sides at the foot.
    fn sides(&self) -> Result<Vec<Item<FigurePoint>>, FontError> {
        let y = self.frame.bottom + 0.45 * self.size();
        [(0, -1.0, Align::Start), (1, 1.0, Align::End)]
            .into_iter()
            .map(|(i, sign, align)| {
                let at = FigurePoint::new(sign * (self.frame.right - 0.3), y);
                self.text(self.asked.sides[i], at, align, (Face::SemiBold, Role::Side))
            })
            .collect()
    }

    /// Along her skin from the upper edge of the pubic bone: centimetres on her right, hand-breadths on her left.
    fn ticks(&self, pose: &Pose) -> Result<Vec<Item<FigurePoint>>, FontError> {
        let mother = &pose.mother;
        let y = |along: f64| mother.on_skin(0.0, along).0.y;
        let line = |a: (f32, f32), b: (f32, f32), width: f32| Item::Stroke {
            path: vec![Draw::Move(FigurePoint::new(a.0, a.1)), Draw::Line(FigurePoint::new(b.0, b.1))],
            colour: self.ink,
            width,
            dash: None,
        };
        let size = self.size();
        let top = mother.fundus_along;
        let mut items = vec![];
        let label = (Face::Regular, Role::Label);
        let (left, right) = (self.frame.left + 2.6 * size, self.frame.right - 2.6 * size);
        items.push(line((left, y(0.0)), (left, y(top)), 0.06));
        items.push(line((right, y(0.0)), (right, y(top)), 0.06));
        for cm in 0..=libm::floor(top) as u32 {
            let long = if cm % 5 == 0 { 0.9 } else { 0.4 };
            let at = y(f64::from(cm));
            items.push(line((left, at), (left + long, at), 0.06));
            if cm % 10 == 0 {
                let at = FigurePoint::new(left - 0.25 * size, at - 0.33 * size);
                items.push(self.text(&cm.to_string(), at, Align::End, label)?);
            }
        }
        let over = y(top) + 0.5 * size;
        let at = FigurePoint::new(left - 0.25 * size, over);
        items.push(self.text(self.asked.cm, at, Align::End, label)?);
        for hand in 0..=libm::floor(top / HAND_CM) as u32 {
            let at = y(f64::from(hand) * HAND_CM);
            items.push(line((right, at), (right - 0.9, at), 0.06));
            if hand > 0 {
                let at = FigurePoint::new(right + 0.25 * size, at - 0.33 * size);
                items.push(self.text(&hand.to_string(), at, Align::Start, label)?);
            }
        }
        items.push(self.hand(FigurePoint::new(right + 0.75 * size, over + 0.3 * size)));
        Ok(items)
    }

    /// A hand laid flat, its four fingers across: what the ticks beside it count.
    fn hand(&self, at: FigurePoint) -> Item<FigurePoint> {
        let size = self.size();
        let p = |x: f32, y: f32| FigurePoint::new(at.x + x * size, at.y + y * size);
        let mut path = vec![];
        for finger in 0..4u8 {
            let y = 0.26 * (f32::from(finger) - 1.5);
            let long = [0.62, 0.78, 0.74, 0.58][usize::from(finger)];
            path.push(Draw::Move(p(-0.25, y - 0.12)));
            path.push(Draw::Line(p(-long, y - 0.12)));
            path.push(Draw::Curve(p(-long - 0.14, y - 0.12), p(-long - 0.14, y + 0.12), p(-long, y + 0.12)));
            path.push(Draw::Line(p(-0.25, y + 0.12)));
        }
        path.push(Draw::Move(p(-0.25, -0.5)));
        path.push(Draw::Curve(p(0.1, -0.55), p(0.35, -0.45), p(0.4, -0.3)));
        path.push(Draw::Line(p(0.4, 0.35)));
        path.push(Draw::Curve(p(0.3, 0.5), p(0.0, 0.6), p(-0.25, 0.52)));
        stroke(path, 0.05, self.ink)
    }
}
