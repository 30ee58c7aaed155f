//! What was heard and felt, and what the parts are called. In: a pose, anchors, the labels wanted. Out: marks and texts.

use super::mother::{BRIM_LINE, FUNDUS_LINE};
use super::mother_words::Said;
use super::options::{FigureOptions, Labels, View};
use super::scene::{Align, Colour, FillRule, Frame, Item, Path, Role, Step, Text};
use crate::body::cast::Cast;
use crate::body::mother::FundusKnown;
use crate::body::pose::{Mark, Pose};
use crate::fonts::{Face, FontError, Fonts};
use crate::units::{FigurePoint, Vec3};
use crate::words::{Words, WordsError};

type Marks = Vec<Item<FigurePoint>>;

/// Colours of marks and labels.
#[derive(Clone, Copy, Debug)]
pub struct MarkColours {
    /// Paper, under words and marks.
    pub paper: Colour,
    /// The heart.
    pub heart: Colour,
    /// Words and pointers.
    pub ink: Colour,
}

/// A word and what it points at.
struct Wanted {
    text: String,
    /// Where the pointer ends.
    target: FigurePoint,
    /// The side of the picture on which the word would best stand: -1 or +1.
    side: f32,
    strong: bool,
    /// How far before its target the pointer ends, cm.
    gap: f32,
}

/// The heart, where it was heard. Symmetric, so that a mirrored finding gives a mirrored mark.
pub fn hearts(pose: &Pose, view: View, c: &MarkColours) -> Marks {
    let turn = turn(view);
    pose.marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Heart(baby, at) => Some(Item::Group {
                name: format!("heart-{baby}"),
                about: String::new(),
                items: heart(FigurePoint::new(at.0.x * turn, at.0.y * turn), c),
            }),
            Mark::Limb(..) => None,
        })
        .collect()
}

/// -1 for a picture turned by half a turn, else 1.
fn turn(view: View) -> f32 {
    match view {
        View::Facing => 1.0,
        View::Hers => -1.0,
    }
}

fn heart(at: FigurePoint, c: &MarkColours) -> Marks {
    let shape = |k: f32| -> Path<FigurePoint> {
        let p = |x: f32, y: f32| FigurePoint::new(at.x + x * k, at.y + y * k);
        vec![
            Step::Move(p(0.0, -1.0)),
            Step::Curve(p(-0.45, -0.55), p(-1.05, -0.15), p(-1.05, 0.36)),
            Step::Curve(p(-1.05, 0.98), p(-0.28, 1.12), p(0.0, 0.48)),
            Step::Curve(p(0.28, 1.12), p(1.05, 0.98), p(1.05, 0.36)),
            Step::Curve(p(1.05, -0.15), p(0.45, -0.55), p(0.0, -1.0)),
            Step::Close,
        ]
    };
    let fill = |path, colour| Item::Fill { path, colour, rule: FillRule::NonZero };
    vec![fill(shape(1.12), c.paper), fill(shape(0.86), c.heart)]
}

/// Rings where limbs were felt.
pub fn limbs(pose: &Pose, c: &MarkColours) -> Marks {
    let mut out = vec![];
    for mark in &pose.marks {
        if let Mark::Limb(baby, at) = mark {
            let ring = super::mother_ink::ellipse(FigurePoint::new(at.0.x, at.0.y), 0.8, 0.8);
            out.push(Item::Group {
                name: format!("limbs-felt-{baby}-{}", out.len() + 1),
                about: String::new(),
                items: vec![Item::Stroke { path: ring, colour: c.ink, width: 0.08, dash: Some((0.22, 0.2)) }],
            });
        }
    }
    out
}

/// Where words may stand, and how they are set.
struct Shelf<'a> {
    fonts: &'a Fonts,
    size: f32,
    frame: Frame,
    /// Boxes already taken: left, bottom, right, top.
    taken: Vec<[f32; 4]>,
    colours: MarkColours,
    lang: String,
    /// -1 when the picture is turned by half a turn, else 1.
    turn: f32,
}

/// All words on the picture.
#[allow(clippy::too_many_arguments)]
pub fn labels(
    pose: &Pose,
    cast: Option<&Cast>,
    options: &FigureOptions,
    said: &[Said],
    frame: Frame,
    colours: MarkColours,
    words: &Words,
    fonts: &Fonts,
) -> Result<Marks, super::FigureError> {
    let family = options.labels == Labels::Family;
    let mut shelf = Shelf {
        fonts,
        size: options.type_pt * 25.4 / 72.0 / options.mm_per_cm,
        frame,
        taken: vec![],
        colours,
        lang: words.lang().to_owned(),
        turn: turn(options.view),
    };
    let turn = shelf.turn;
    let mut out = vec![];
    // Sides first: they are on every picture, at its foot.
    let (left, right) = if family { ("your-left", "your-right") } else { ("her-left", "her-right") };
    for (id, sign) in [(left, turn), (right, -turn)] {
        out.push(shelf.side_word(&words.say(id, &[])?, sign)?);
    }
    out.extend(shelf.captions(&options.captions)?);
    let wanted = match options.labels {
        Labels::None => vec![],
        set => collect(pose, set, words)?,
    };
    let more = said.iter().map(|s| {
        let [right, left] = s.targets;
        let (target, side) = if right == left { (left, 1.0) } else { (right, -1.0) };
        Wanted { text: s.text.clone(), target, side, strong: false, gap: 0.0 }
    });
    for mut w in wanted.into_iter().chain(more) {
        w.target = FigurePoint::new(w.target.x * turn, w.target.y * turn);
        w.side *= turn;
        out.extend(shelf.pointed(&w, cast)?);
    }
    Ok(out)
}

impl Wanted {
    fn new(text: String, at: Vec3, side: f32) -> Self {
        Wanted { text, target: FigurePoint::new(at.x, at.y), side, strong: false, gap: 0.0 }
    }
    fn strong(self) -> Self {
        Wanted { strong: true, ..self }
    }
}

/// The side of the picture that a point lies nearer to.
fn outward(x: f32) -> f32 {
    if x < 0.0 { -1.0 } else { 1.0 }
}

/// The words of a label set, the most needed first.
fn collect(pose: &Pose, set: Labels, words: &Words) -> Result<Vec<Wanted>, WordsError> {
    let part = |id: &str, baby: usize| -> Result<String, WordsError> {
        let part = words.say(id, &[])?;
        if pose.baby_count < 2 {
            return Ok(part);
        }
        words.say("label-of-baby", &[("part", &part), ("number", &baby.to_string())])
    };
    let mut out = vec![];
    let heart = if set == Labels::Family { "label-heart-family" } else { "label-heart" };
    for mark in &pose.marks {
        match mark {
            Mark::Heart(n, at) => {
                let word = Wanted::new(part(heart, *n)?, at.0, outward(at.0.x)).strong();
                // The heart's own mark is not crossed out.
                out.push(Wanted { gap: 1.15, ..word });
            }
            Mark::Limb(n, at) if set == Labels::All => {
                let word = Wanted::new(part("label-limbs-felt", *n)?, at.0, outward(at.0.x));
                out.push(Wanted { gap: 0.8, ..word });
            }
            Mark::Limb(..) => {}
        }
    }
    for (n, rounds) in pose.rounds() {
        let (head, bottom) = (rounds.head.0.0, rounds.bottom.0.0);
        out.push(Wanted::new(part("label-head", n)?, head, -1.0));
        out.push(Wanted::new(part("label-bottom", n)?, bottom, 1.0));
        out.push(Wanted::new(part("label-back-not-felt", n)?, head.lerp(bottom, 0.5), 1.0));
    }
    if matches!(set, Labels::All | Labels::Family) {
        for (n, baby) in pose.posed() {
            let k = &baby.posture.measures;
            // Seen square on, the back is named on her left.
            let side = if baby.body.z.x.abs() < 0.2 { 1.0 } else { -outward(baby.body.z.x) };
            let back = baby.body.point(baby.spine.belly.point(Vec3::new(0.0, 1.5, -4.6) * k.girth));
            let bottom = baby.spine.pelvis.origin + Vec3::new(0.0, -2.8, -1.2) * k.girth;
            out.push(Wanted::new(part("label-head", n)?, baby.head.origin, -side));
            out.push(Wanted::new(part("label-back", n)?, back, side));
            out.push(Wanted::new(part("label-bottom", n)?, baby.body.point(bottom), side));
        }
    }
    if set != Labels::Family {
        heights(pose, set, words, &mut out)?;
    }
    if set == Labels::All {
        skin(pose, words, &mut out)?;
    }
    Ok(out)
}

/// Top of the womb and brim.
fn heights(pose: &Pose, set: Labels, words: &Words, out: &mut Vec<Wanted>) -> Result<(), WordsError> {
    let fundus = match (pose.tape, pose.mother.fundus_known) {
        (Some(cm), _) => words.say("label-fundus-cm", &[("cm", &plain_number(cm))])?,
        (None, FundusKnown::Expected) => words.say("label-fundus-expected", &[])?,
        (None, FundusKnown::Measured | FundusKnown::Level) => words.say("label-fundus-level", &[])?,
    };
    let at = Vec3::new(-FUNDUS_LINE, pose.mother.fundus_y as f32, 0.0);
    out.push(Wanted::new(fundus, at, -1.0).strong());
    let brim = Vec3::new(-BRIM_LINE, 0.0, 0.0);
    if let Some(k) = pose.fifths {
        let text = words.say("label-fifths", &[("fifths", &format!("{k}/5"))])?;
        out.push(Wanted::new(text, brim, -1.0).strong());
    } else if set == Labels::All {
        out.push(Wanted::new(words.say("label-brim", &[])?, brim, -1.0));
    }
    Ok(())
}

/// Pubic bone, navel, scars, lumps.
fn skin(pose: &Pose, words: &Words, out: &mut Vec<Wanted>) -> Result<(), WordsError> {
    let pubic = Vec3::new(1.2, -1.6, 0.0);
    out.push(Wanted::new(words.say("label-pubic-bone", &[])?, pubic, 1.0));
    for scar in &pose.scars {
        if let Some(p) = scar.get(scar.len() / 2) {
            out.push(Wanted::new(words.say("label-scar", &[])?, p.0, outward(p.0.x)));
        }
    }
    for lump in &pose.lumps {
        let word = Wanted::new(words.say("label-lump", &[])?, lump.0, outward(lump.0.x));
        out.push(Wanted { gap: 1.0, ..word });
    }
    Ok(())
}

/// A number of cm as people write it: without a useless `.0`.
fn plain_number(cm: f64) -> String {
    let tenths = (cm * 10.0).round() / 10.0;
    if tenths.fract() == 0.0 { format!("{tenths:.0}") } else { format!("{tenths:.1}") }
}

impl Shelf<'_> {
    fn width(&self, text: &str, face: Face) -> Result<f32, FontError> {
        self.fonts.measure(face, text, self.size)
    }

    fn text(&self, text: &str, at: FigurePoint, align: Align, face: Face, role: Role) -> Item<FigurePoint> {
        Item::Text(Text {
            text: text.to_owned(),
            at,
            align,
            size: self.size,
            face,
            colour: self.colours.ink,
            lang: self.lang.clone(),
            role,
        })
    }

    /// A strip of paper under words, or lines of the body would run through them.
    fn strip(&self, [left, bottom, right, top]: [f32; 4]) -> Item<FigurePoint> {
        let path = Frame { left, bottom, right, top }.outline();
        Item::Fill { path, colour: self.colours.paper, rule: FillRule::NonZero }
    }

    /// Sentences at the foot of the picture, between the names of the sides.
    fn captions(&mut self, captions: &[String]) -> Result<Option<Item<FigurePoint>>, FontError> {
        let mut lines = vec![];
        for caption in captions {
            lines.extend(self.broken(caption, Face::Italic, 0.58 * (self.frame.right - self.frame.left))?);
        }
        let widest = lines.iter().map(|(_, width)| *width).fold(0.0, f32::max);
        let (step, foot) = (self.size * 1.18, self.frame.bottom + 1.0);
        let n = lines.len();
        let line = |(i, (text, _)): (usize, &(String, f32))| {
            let at = FigurePoint::new(0.0, foot + (n - 1 - i) as f32 * step);
            self.text(text, at, Align::Middle, Face::Italic, Role::Caption)
        };
        let words: Marks = lines.iter().enumerate().map(line).collect();
        if words.is_empty() {
            return Ok(None);
        }
        let strip =
            [-widest * 0.5 - 0.4, foot - 0.42 * self.size, widest * 0.5 + 0.4, foot + n as f32 * step - 0.2];
        self.taken.push(strip);
        let mut items = vec![self.strip(strip)];
        items.extend(words);
        Ok(Some(Item::Group { name: "captions".to_owned(), about: String::new(), items }))
    }

    /// Left and right of words of this width at the edge of the picture on one side.
    fn column(&self, sign: f32, width: f32) -> (f32, f32) {
        if sign > 0.0 {
            let edge = self.frame.right - 0.7;
            (edge - width, edge)
        } else {
            let edge = self.frame.left + 0.7;
            (edge, edge + width)
        }
    }

    fn free(&self, b: [f32; 4]) -> bool {
        let f = &self.frame;
        b[0] > f.left + 0.3
            && b[1] > f.bottom + 0.3
            && b[2] < f.right - 0.3
            && b[3] < f.top - 0.3
            && self.taken.iter().all(|t| b[2] < t[0] || b[0] > t[2] || b[3] < t[1] || b[1] > t[3])
    }

    /// The name of a side at the edge of the picture, low down.
    fn side_word(&mut self, word: &str, sign: f32) -> Result<Item<FigurePoint>, FontError> {
        let width = self.width(word, Face::SemiBold)?;
        let y = self.frame.bottom + 1.0;
        let (left, right) = self.column(sign, width);
        let (edge, align) = if sign > 0.0 { (right, Align::End) } else { (left, Align::Start) };
        let place = [left - 0.3, y - 0.4 * self.size, right + 0.3, y + 0.95 * self.size];
        self.taken.push(place);
        let text = self.text(word, FigurePoint::new(edge, y), align, Face::SemiBold, Role::Side);
        let name = if sign * self.turn > 0.0 { "side-left" } else { "side-right" };
        Ok(Item::Group { name: name.to_owned(), about: String::new(), items: vec![self.strip(place), text] })
    }

    /// A word at the edge of the picture with a fine pointer to its target. Both edges and many heights are tried;
    /// the shortest free way off the face wins. Words are broken over two lines when they are long.
    fn pointed(&mut self, w: &Wanted, cast: Option<&Cast>) -> Result<Option<Item<FigurePoint>>, FontError> {
        let face = if w.strong { Face::SemiBold } else { Face::Regular };
        // About as wide as the strip beside the body.
        let lines = self.broken(&w.text, face, 5.6 * (self.size / 0.9).max(1.0))?;
        let width = lines.iter().map(|(_, width)| *width).fold(0.0, f32::max);
        let line_height = self.size * 1.18;
        let height = line_height * lines.len() as f32;
        let around = |left: f32, right: f32, middle: f32| {
            [left - 0.2, middle - height * 0.5 - 0.15, right + 0.2, middle + height * 0.5 + 0.15]
        };
        let mut best: Option<(f32, f32, f32)> = None;
        for sign in [w.side, -w.side] {
            let (left, right) = self.column(sign, width);
            for step in -40..=40 {
                let middle = w.target.y + step as f32 * 0.6;
                if !self.free(around(left, right, middle)) {
                    continue;
                }
                let start = if sign > 0.0 { left - 0.35 } else { right + 0.35 };
                let (dx, dy) = (w.target.x - start, w.target.y - middle);
                let mut cost = (dx * dx + 4.0 * dy * dy).sqrt() + if sign == w.side { 0.0 } else { 6.0 };
                // A pointer that runs over the baby's head or another word costs more.
                for i in 1..20 {
                    let t = i as f32 / 20.0;
                    let (x, y) = (start + dx * t, middle + dy * t);
                    if cast.is_some_and(|c| {
                        c.index_at(x * self.turn, y * self.turn)
                            .is_some_and(|k| c.hit(k) && c.part[k].is_head())
                    }) {
                        cost += 0.5;
                    }
                    if self.taken.iter().any(|b| x > b[0] && x < b[2] && y > b[1] && y < b[3]) {
                        cost += 8.0;
                    }
                }
                if best.is_none_or(|(c, ..)| cost < c) {
                    best = Some((cost, sign, middle));
                }
            }
        }
        let Some((_, sign, middle)) = best else { return Ok(None) };
        let (left, right) = self.column(sign, width);
        let (edge, align) = if sign > 0.0 { (right, Align::End) } else { (left, Align::Start) };
        let place = around(left, right, middle);
        self.taken.push(place);
        let first = middle + height * 0.5 - line_height * 0.80;
        let mut items: Marks = vec![self.strip(place)];
        let start = FigurePoint::new(if sign > 0.0 { left - 0.35 } else { right + 0.35 }, middle);
        let end = short_of(start, w.target, w.gap);
        for (colour, width) in [(self.colours.paper, 0.16), (self.colours.ink, 0.055)] {
            let path = vec![Step::Move(start), Step::Line(end)];
            items.push(Item::Stroke { path, colour, width, dash: None });
        }
        for (i, (line, _)) in lines.iter().enumerate() {
            let at = FigurePoint::new(edge, first - i as f32 * line_height);
            items.push(self.text(line, at, align, face, Role::Label));
        }
        let name = format!("label-{}", self.taken.len() - 2);
        Ok(Some(Item::Group { name, about: String::new(), items }))
    }

    /// A text in as many lines as it needs to be at most `most` cm wide, each with its width.
    fn broken(&self, text: &str, face: Face, most: f32) -> Result<Vec<(String, f32)>, FontError> {
        let mut lines: Vec<(String, f32)> = vec![];
        for word in text.split(' ') {
            if let Some((line, width)) = lines.last_mut() {
                let longer = format!("{line} {word}");
                let w = self.fonts.measure(face, &longer, self.size)?;
                if w <= most {
                    (*line, *width) = (longer, w);
                    continue;
                }
            }
            lines.push((word.to_owned(), self.width(word, face)?));
        }
        Ok(lines)
    }
}

/// The point `gap` cm before `end` on the way from `start`.
fn short_of(start: FigurePoint, end: FigurePoint, gap: f32) -> FigurePoint {
    let (dx, dy) = (end.x - start.x, end.y - start.y);
    let length = (dx * dx + dy * dy).sqrt().max(1e-6);
    let t = ((length - gap) / length).max(0.0);
    FigurePoint::new(start.x + dx * t, start.y + dy * t)
}
