//! A cut in the midline, seen from her left. In: `Pose`, what it looks like in the cut, how the figure is wanted. Out:
//! `Scene`, in cm: x towards her back, y up. The same body as in front, the same kinds of marks.

use super::labels::{self, Asked, Plan, Planner};
use super::mother::MotherLook;
use super::mother_ink::{fill, group, stroke};
use super::scene::{Item, Scene, Step};
use super::side_mother::{self, BRIM_FRONT, axis_line, by_brim};
use super::terrain::{Round, Terrain};
use super::wanted::Wanted;
use super::{FRAME, FigureError, FigureOptions, Labels, Style, View, baby, colours, paper};
use crate::body::baby::PosedBaby;
use crate::body::cast::Cast;
use crate::body::head::HEIGHT;
use crate::body::lateral::{Lateral, SPINE, WALL, flat, skin_front};
use crate::body::pelvis;
use crate::body::pose::Pose;
use crate::fonts::Fonts;
use crate::units::{FigurePoint, Vec3};
use crate::words::Words;

/// Where words and numbers of a cut stand, without drawing it.
pub fn plan(
    pose: &Pose,
    cut: &Lateral,
    cast: Option<&Cast>,
    options: &FigureOptions,
    words: &Words,
    fonts: &Fonts,
) -> Result<Plan, FigureError> {
    let wanted = wanted(pose, cut, options.labels, words)?;
    let scale = scale(pose).filter(|_| shows_lines(options.labels));
    let covered =
        scale.iter().flat_map(|scale| scale.middles()).map(|at| Round { at, radius: 0.75, mark: 0 });
    let babies: Vec<&PosedBaby> = cut.babies.iter().map(|(_, baby)| baby).collect();
    let terrain = Terrain::of_cut(&babies, cast, covered.collect(), |y, sign| {
        side_mother::reach(&pose.mother, y, sign)
    });
    let asked = Asked::only(terrain, wanted, ("her-back", "her-front"));
    Planner { options, frame: FRAME, words, fonts }.plan(asked)
}

/// Draws a cut. The view of `options` is not asked: a cut has one.
pub fn figure(
    pose: &Pose,
    cut: &Lateral,
    cast: Option<&Cast>,
    options: &FigureOptions,
    words: &Words,
    fonts: &Fonts,
) -> Result<Scene, FigureError> {
    let options = &FigureOptions { view: View::Facing, ..options.clone() };
    let (look, baby_colours, mark_colours) = colours(pose, options);
    let plan = plan(pose, cut, cast, options, words, fonts)?;
    let mut items = vec![paper(plan.frame, look.palette.paper)];
    items.extend(side_mother::behind(&pose.mother, &cut.womb, &look));
    if let Some(cast) = cast {
        let babies: Vec<_> = cut.babies.iter().map(|(_, baby)| baby).collect();
        let marks = baby::draw(&babies, cast, &baby_colours, options.style == Style::Soft);
        items.push(group("baby", "", marks));
    }
    items.extend(side_mother::in_front(&pose.mother, &cut.womb, true, &look));
    if shows_lines(options.labels)
        && let Some(scale) = scale(pose)
    {
        items.push(scale.draw(&look));
    }
    items.extend(labels::paint(&plan, &mark_colours, words.lang(), fonts)?);
    Ok(Scene {
        frame: plan.frame,
        title: options.title.clone(),
        description: options.description.clone(),
        lang: words.lang().to_owned(),
        items,
    })
}

fn shows_lines(labels: Labels) -> bool {
    matches!(labels, Labels::Few | Labels::All | Labels::Numbered)
}

/// The scale of a head that was felt in fifths, when it is drawn.
fn scale(pose: &Pose) -> Option<Scale> {
    let (_, baby) = pose.posed().next()?;
    let step = HEIGHT * baby.posture.measures.head / 5.0;
    (baby.posture.up.y < -0.9).then_some(Scale { step, fifths: pose.fifths? })
}

/// Five steps of the head's height along the axis of the pelvis, at the end of the line of the brim.
struct Scale {
    step: f32,
    fifths: u8,
}

impl Scale {
    /// Half the breadth of a step, cm.
    const HALF: f32 = 0.42;

    /// Height of the foot of step `i` from below, cm above the brim.
    fn foot(&self, i: u8) -> f32 {
        self.step * (f32::from(i) - f32::from(5 - self.fifths))
    }

    fn middles(&self) -> Vec<FigurePoint> {
        (0..5).map(|i| by_brim(-BRIM_FRONT - Self::HALF, self.foot(i) + 0.5 * self.step)).collect()
    }

    fn draw(&self, look: &MotherLook) -> Item<FigurePoint> {
        let p = &look.palette;
        let cell = |i: u8| {
            let at = |aside: f32, up: f32| by_brim(-BRIM_FRONT - Self::HALF + aside, self.foot(i) + up);
            let h = Self::HALF;
            vec![
                Step::Move(at(-h, 0.0)),
                Step::Line(at(-h, self.step)),
                Step::Line(at(h, self.step)),
                Step::Line(at(h, 0.0)),
                Step::Close,
            ]
        };
        let mut items: Vec<_> = (0..5).map(|i| stroke(cell(i), 0.34, p.paper)).collect();
        items.extend((0..5).map(|i| fill(cell(i), if i >= 5 - self.fifths { p.mark } else { p.paper })));
        items.extend((0..5).map(|i| stroke(cell(i), 0.07, p.mark)));
        for i in 6 - self.fifths..5 {
            // Between two filled steps.
            let at = |aside: f32| by_brim(-BRIM_FRONT - Self::HALF + aside, self.foot(i));
            let path = vec![Step::Move(at(0.06 - Self::HALF)), Step::Line(at(Self::HALF - 0.06))];
            items.push(stroke(path, 0.1, p.paper));
        }
        group("fifths", "", items)
    }
}

/// What is named on a cut.
fn wanted(pose: &Pose, cut: &Lateral, labels: Labels, words: &Words) -> Result<Vec<Wanted>, FigureError> {
    let mut out = vec![];
    if !shows_lines(labels) {
        return Ok(out);
    }
    let mut name = |id: &str, at: FigurePoint, strong: bool| -> Result<(), FigureError> {
        let side = if at.x < 0.0 { -1.0 } else { 1.0 };
        let text = words.say(id, &[])?;
        out.push(Wanted { text, targets: [Some(at); 2], side, strong, gap: 0.0, owner: None });
        Ok(())
    };
    name("label-brim", by_brim(-0.45 * BRIM_FRONT, 0.0), false)?;
    let axis = axis_line();
    name("label-axis", axis[axis.len() - 2], false)?;
    if labels != Labels::Few {
        let (y, z, _) = SPINE[4];
        name("label-spine", flat(y + 1.6, z - 1.6), false)?;
        name("label-sacrum", flat(7.6, -11.6), false)?;
        let [top, foot] = pelvis::symphysis().map(|p| p.0);
        name("label-pubic-bone", flat(0.5 * (top.y + foot.y) - 0.9, 0.5 * (top.z + foot.z) + 0.7), false)?;
        let wall = pose.mother.navel_y as f32 + 4.5;
        name("label-wall", flat(wall, skin_front(&pose.mother, wall) - 0.5 * WALL), false)?;
        if let Some(top) = cut.womb.iter().copied().max_by(|a, b| a.y.total_cmp(&b.y)) {
            name("label-womb", top, false)?;
        }
        for (_, baby) in &cut.babies {
            let k = &baby.posture.measures;
            let head = baby.head.point(Vec3::new(0.0, 1.0, -1.5) * k.head);
            name("label-head", FigurePoint::new(head.x, head.y), false)?;
        }
    }
    if let Some(scale) = scale(pose) {
        let text = words.say("label-fifths", &[("fifths", &format!("{}/5", scale.fifths))])?;
        let at = by_brim(-BRIM_FRONT - Scale::HALF, 0.5 * scale.step * f32::from(scale.fifths));
        out.push(Wanted {
            text,
            targets: [Some(at), None],
            side: -1.0,
            strong: true,
            gap: Scale::HALF + 0.15,
            owner: Some(0),
        });
    }
    Ok(out)
}
