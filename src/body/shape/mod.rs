//! The door to a posed body. In: what it was made of. Out: what is asked of its surface, in mother space: its extremes,
//! what a ray meets, how far a point is from it, its pieces, its outline, its picture of depths.
//!
//! Nothing outside of `body` knows what a surface is made of: rounded forms blended into one another, or a posed mesh.

pub mod forms;
pub mod skin;

use super::cast::Cast;
use super::part::Part;
use super::surface::Form;
use crate::units::{BabySide, FigurePoint, Vec3};
use forms::Forms;
use skin::Mesh;
use std::ops::Range;

/// A surface.
#[derive(Clone, Debug)]
pub enum Shape {
    /// Rounded forms.
    Forms(Forms),
    /// A mesh.
    Mesh(Mesh),
}

/// A piece of a body.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Piece {
    /// The head, with face and ears.
    Head,
    /// The head without its ears.
    Skull,
    /// Everything but the head.
    Body,
    /// The trunk, without head and limbs.
    Trunk,
    /// Trunk and head, without limbs.
    Core,
    /// Arms and legs.
    Limbs,
    /// An arm without its hand.
    Arm(BabySide),
    /// A hand.
    Hand(BabySide),
    /// A foot.
    Foot(BabySide),
}

impl Piece {
    /// Whether a part belongs to it.
    pub fn holds(self, part: Part) -> bool {
        let digit = |of: fn(BabySide, u8) -> Part, side| (0..5).any(|i| part == of(side, i));
        let limb = !part.is_head() && part != Part::TRUNK && !part.is_buttock();
        match self {
            Piece::Head => part.is_head(),
            Piece::Skull => part == Part::HEAD || part == Part::FACE,
            Piece::Body => !part.is_head(),
            Piece::Trunk => part == Part::TRUNK || part.is_buttock(),
            Piece::Core => !limb,
            Piece::Limbs => limb,
            Piece::Arm(side) => part == Part::upper_arm(side) || part == Part::forearm(side),
            Piece::Hand(side) => part == Part::palm(side) || digit(Part::finger, side),
            Piece::Foot(side) => part == Part::foot(side) || digit(Part::toe, side),
        }
    }
}

/// Where a ray met a surface.
#[derive(Clone, Copy, Debug)]
pub struct Met {
    /// The point.
    pub at: Vec3,
    /// The part it belongs to.
    pub part: Part,
    /// The way straight out of the surface there, of no particular length.
    pub outward: Vec3,
}

/// How the pieces of a body are carried to other places.
pub trait Carrier {
    /// Where a point of the head goes: the head stays one rigid piece.
    fn with_head(&self, p: Vec3) -> Vec3;
    /// Where a point of a rigid piece that hangs at `hold` goes.
    fn hung(&self, hold: Vec3, p: Vec3) -> Vec3;
    /// Where a point goes by itself.
    fn laid(&self, p: Vec3) -> Vec3;
    /// From there into the space of the picture.
    fn turned(&self, p: Vec3) -> Vec3;
    /// How far something with this outline (in the space of the picture) must be moved.
    fn moved(&self, outline: &mut dyn Iterator<Item = Vec3>) -> Vec3;
}

/// Asks the inside.
macro_rules! ask {
    ($self:ident, $inside:ident => $e:expr) => {
        match $self {
            Shape::Forms($inside) => $e,
            Shape::Mesh($inside) => $e,
        }
    };
}

impl Shape {
    /// A body of these forms; the head's stand at `head`.
    pub fn of_forms(forms: Vec<Form>, head: Range<usize>) -> Self {
        Shape::Forms(Forms::new(forms, head))
    }

    /// The forms it is made of, if it is.
    pub fn forms(&self) -> &[Form] {
        match self {
            Shape::Forms(inside) => inside.forms(),
            Shape::Mesh(_) => &[],
        }
    }

    /// The forms of the head.
    pub fn head_forms(&self) -> &[Form] {
        match self {
            Shape::Forms(inside) => inside.head_forms(),
            Shape::Mesh(_) => &[],
        }
    }

    /// Makes it ready to be met by rays.
    pub fn finish(&mut self) {
        if let Shape::Forms(inside) = self {
            inside.finish();
        }
    }

    /// One piece of it.
    pub fn piece(&self, piece: Piece) -> Shape {
        match self {
            Shape::Forms(inside) => Shape::Forms(inside.piece(piece)),
            Shape::Mesh(inside) => Shape::Mesh(inside.piece(piece)),
        }
    }

    /// The middle of a small part; `None` when the body has none.
    pub fn middle(&self, part: Part) -> Option<Vec3> {
        ask!(self, inside => inside.middle(part))
    }

    /// The same, elsewhere.
    pub fn shift(&mut self, by: Vec3) {
        ask!(self, inside => inside.shift(by));
    }

    /// Signed distance of a point, cm (negative inside), and the part that is nearest to it.
    pub fn nearest(&self, p: Vec3) -> (f32, Part) {
        ask!(self, inside => inside.nearest(p))
    }

    /// The point of the surface next to `p`, which lies near it.
    pub fn settled(&self, p: Vec3) -> Vec3 {
        ask!(self, inside => inside.settled(p))
    }

    /// Where a ray from outside along a unit direction meets the surface; `None` if it does not within `limit` cm.
    pub fn ray(&self, start: Vec3, direction: Vec3, limit: f32) -> Option<Vec3> {
        ask!(self, inside => inside.ray(start, direction, limit))
    }

    /// What a ray from the viewer towards her back meets first at (x, y).
    pub fn under(&self, x: f32, y: f32) -> Option<Met> {
        ask!(self, inside => inside.under(x, y))
    }

    /// The extreme point in a direction, on the surface itself, to 0.02 cm along the direction.
    pub fn extreme(&self, direction: Vec3) -> Vec3 {
        ask!(self, inside => inside.extreme(direction))
    }

    /// From its extreme against a direction to its extreme along it, cm.
    pub fn span(&self, direction: Vec3) -> f32 {
        (self.extreme(direction) - self.extreme(-direction)).dot(direction)
    }

    /// The points of its pieces, each by itself, that lie farthest along a unit direction.
    pub fn tips(&self, direction: Vec3) -> Vec<Vec3> {
        ask!(self, inside => inside.tips(direction))
    }

    /// How far it reaches along a unit direction, quickly, to 0.2 cm.
    pub fn reach(&self, direction: Vec3) -> f32 {
        ask!(self, inside => inside.reach(direction))
    }

    /// Points on the outline of its hull in the plane of `across` (a unit direction at right angles to y) and y, all
    /// round and never inside; x along `across`.
    pub fn hull_across(&self, across: Vec3) -> Vec<FigurePoint> {
        ask!(self, inside => inside.hull_across(across))
    }

    /// How far, as seen along z, each limb is from (x, y), cm: arms, then legs, left first.
    pub fn limbs_seen(&self, x: f32, y: f32) -> [f32; 4] {
        ask!(self, inside => inside.limbs_seen(x, y))
    }

    /// Points spread over its larger parts, on its surface.
    pub fn spread(&self) -> Vec<Vec3> {
        ask!(self, inside => inside.spread())
    }

    /// Points all over it, close to one another.
    pub fn all_points(&self) -> Vec<Vec3> {
        match self {
            Shape::Forms(inside) => inside.spread(),
            Shape::Mesh(inside) => inside.vertices(),
        }
    }

    /// The same body with its pieces carried elsewhere.
    pub fn carried(&self, by: &dyn Carrier) -> Shape {
        match self {
            Shape::Forms(inside) => Shape::Forms(inside.carried(by)),
            // Its bones are carried, not its skin: see `along_axis`.
            Shape::Mesh(_) => self.clone(),
        }
    }
}

/// The picture of depths of bodies, with cells of `cell` cm; `mirrored`: of their mirror image. What is asked of a picture
/// turned over is asked of a mirrored body, so that a mirrored exam meets the very same cells. `None`: no body.
pub fn cast<'a>(bodies: impl Iterator<Item = &'a Shape>, cell: f32, mirrored: bool) -> Option<Cast> {
    let (mut forms, mut meshes) = (vec![], vec![]);
    for body in bodies {
        match body {
            Shape::Forms(inside) => forms.push(inside),
            Shape::Mesh(inside) => meshes.push(inside),
        }
    }
    if meshes.is_empty() {
        forms::cast(forms.into_iter(), cell, mirrored)
    } else {
        Some(skin::cast(&meshes, cell, mirrored))
    }
}
