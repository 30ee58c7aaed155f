//! What a figure is made of: a closed list of marks, in the order they are painted.
//!
//! In: points of one space (`FigurePoint` for a figure, `PagePoint` for a sheet).
//! Out: the marks every writer must draw. There is no gradient, no filter and no
//! transparency: colours are mixed before they get here. Writers match without a wildcard.

use crate::fonts::Face;
use crate::units::FigurePoint;

/// An opaque colour, 8 bits a channel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Colour {
    /// Red.
    pub r: u8,
    /// Green.
    pub g: u8,
    /// Blue.
    pub b: u8,
}

impl Colour {
    /// From 0xRRGGBB.
    pub const fn hex(rgb: u32) -> Self {
        Self { r: (rgb >> 16) as u8, g: (rgb >> 8) as u8, b: rgb as u8 }
    }
    /// `share` of `over` (0 to 1) laid on this colour.
    pub fn mix(self, over: Self, share: f32) -> Self {
        let m = |a: u8, b: u8| (f32::from(a) + (f32::from(b) - f32::from(a)) * share + 0.5) as u8;
        Self { r: m(self.r, over.r), g: m(self.g, over.g), b: m(self.b, over.b) }
    }
}

/// One step of a path.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Step<P> {
    /// Start a new part here.
    Move(P),
    /// Straight to here.
    Line(P),
    /// A cubic Bezier curve: two control points, then the end.
    Curve(P, P, P),
    /// Back to the start of this part.
    Close,
}

/// A path: steps, the first of each part a `Move`.
pub type Path<P> = Vec<Step<P>>;

/// Which side of a path that crosses itself is inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FillRule {
    /// Non-zero winding.
    NonZero,
    /// Even-odd.
    EvenOdd,
}

/// Which point of a text stands at its place, on the baseline.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Align {
    /// Its start.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// What a text is for, so that an editor or a screen reader can tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Role {
    /// Names a part or a mark.
    Label,
    /// Names a side of the mother.
    Side,
    /// A note on the drawing itself.
    Caption,
    /// Running text of a page.
    Body,
}

/// A finished string at its place.
#[derive(Clone, Debug, PartialEq)]
pub struct Text<P> {
    /// The final words.
    pub text: String,
    /// Where, on the baseline.
    pub at: P,
    /// Which point of the text stands there.
    pub align: Align,
    /// Type size in the units of the space (cm in a figure, mm on a sheet).
    pub size: f32,
    /// The face.
    pub face: Face,
    /// The ink.
    pub colour: Colour,
    /// Language tag, such as `en`.
    pub lang: String,
    /// What the text is for.
    pub role: Role,
}

/// One mark, or a named group of marks.
#[derive(Clone, Debug, PartialEq)]
pub enum Item<P> {
    /// Marks that belong together.
    Group {
        /// A short name, unique in its figure, such as `baby-1-head`.
        name: String,
        /// A description in words; may be empty.
        about: String,
        /// The marks, in painting order.
        items: Vec<Item<P>>,
    },
    /// A filled path.
    Fill {
        /// The outline.
        path: Path<P>,
        /// The colour.
        colour: Colour,
        /// Which side is inside.
        rule: FillRule,
    },
    /// A line of even width with round ends and joins.
    Stroke {
        /// The line.
        path: Path<P>,
        /// The colour.
        colour: Colour,
        /// Width in the units of the space.
        width: f32,
        /// Lengths of dash and gap; `None` for an unbroken line.
        dash: Option<(f32, f32)>,
    },
    /// Marks shown only inside a path.
    Clip {
        /// The window.
        path: Path<P>,
        /// The marks.
        items: Vec<Item<P>>,
    },
    /// A string.
    Text(Text<P>),
}

/// A rectangle of figure space, in cm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame {
    /// Smallest x.
    pub left: f32,
    /// Smallest y.
    pub bottom: f32,
    /// Largest x.
    pub right: f32,
    /// Largest y.
    pub top: f32,
}

impl Frame {
    /// Its outline, closed.
    pub fn outline(&self) -> Path<FigurePoint> {
        vec![
            Step::Move(FigurePoint::new(self.left, self.bottom)),
            Step::Line(FigurePoint::new(self.right, self.bottom)),
            Step::Line(FigurePoint::new(self.right, self.top)),
            Step::Line(FigurePoint::new(self.left, self.top)),
            Step::Close,
        ]
    }
}

/// The marks of all groups, without the groups.
pub fn flat<P>(items: Vec<Item<P>>) -> Vec<Item<P>> {
    let mut out = vec![];
    for item in items {
        match item {
            Item::Group { items, .. } => out.extend(flat(items)),
            mark => out.push(mark),
        }
    }
    out
}

/// A finished figure in cm, y up.
#[derive(Clone, Debug, PartialEq)]
pub struct Scene {
    /// What lies inside the picture.
    pub frame: Frame,
    /// A short title.
    pub title: String,
    /// The picture in words, for someone who cannot see it.
    pub description: String,
    /// Language tag of title and description.
    pub lang: String,
    /// The marks, in painting order.
    pub items: Vec<Item<FigurePoint>>,
}

impl<P: Copy> Item<P> {
    /// The same mark in another space: every point goes through `point`, every length is multiplied by `scale`.
    pub fn map<Q>(&self, point: &impl Fn(P) -> Q, scale: f32) -> Item<Q> {
        let path = |p: &Path<P>| -> Path<Q> {
            p.iter()
                .map(|s| match *s {
                    Step::Move(a) => Step::Move(point(a)),
                    Step::Line(a) => Step::Line(point(a)),
                    Step::Curve(a, b, c) => Step::Curve(point(a), point(b), point(c)),
                    Step::Close => Step::Close,
                })
                .collect()
        };
        let all = |items: &[Item<P>]| items.iter().map(|i| i.map(point, scale)).collect();
        match self {
            Item::Group { name, about, items } => {
                Item::Group { name: name.clone(), about: about.clone(), items: all(items) }
            }
            Item::Fill { path: p, colour, rule } => {
                Item::Fill { path: path(p), colour: *colour, rule: *rule }
            }
            Item::Stroke { path: p, colour, width, dash } => Item::Stroke {
                path: path(p),
                colour: *colour,
                width: width * scale,
                dash: dash.map(|(a, b)| (a * scale, b * scale)),
            },
            Item::Clip { path: p, items } => Item::Clip { path: path(p), items: all(items) },
            Item::Text(t) => Item::Text(Text {
                text: t.text.clone(),
                at: point(t.at),
                align: t.align,
                size: t.size * scale,
                face: t.face,
                colour: t.colour,
                lang: t.lang.clone(),
                role: t.role,
            }),
        }
    }
}
