//! Lays forms into a list. In: centres, ends and radii in some frame's coordinates. Out: forms in mother space.

use super::frame::Frame;
use super::part::Part;
use super::surface::{Form, Shape};
use crate::units::Vec3;

/// A list of forms being built, with the frame and the group that the next ones belong to.
pub struct Modeller {
    /// What has been laid down.
    pub forms: Vec<Form>,
    /// Group of the next form.
    pub group: u8,
    /// Frame in which the next form is given.
    pub frame: Frame,
    /// What the next blends are multiplied by: a small body blends over shorter lengths.
    pub scale: f32,
}

impl Modeller {
    /// An empty list in `frame`.
    pub fn new(frame: Frame) -> Self {
        Modeller { forms: vec![], group: 0, frame, scale: 1.0 }
    }

    /// A capsule from `a` (radius `ra`) to `b` (radius `rb`).
    pub fn capsule(&mut self, (a, ra): (Vec3, f32), (b, rb): (Vec3, f32), blend: f32, part: Part) {
        let (a, b) = (self.frame.point(a), self.frame.point(b));
        let axis = b - a;
        self.forms.push(Form {
            shape: Shape::Capsule { a, axis, inv_len2: 1.0 / axis.dot(axis).max(1e-6), r0: ra, dr: rb - ra },
            blend: blend * self.scale,
            carve: false,
            part,
            group: self.group,
            ball: a.lerp(b, 0.5),
            reach: axis.length() * 0.5 + ra.max(rb),
            influence: 0.0,
        });
    }

    /// A ball.
    pub fn ball(&mut self, centre: Vec3, radius: f32, blend: f32, part: Part) {
        self.ellipsoid(centre, Vec3::new(radius, radius, radius), blend, part);
    }

    /// An ellipsoid along the frame's own axes.
    pub fn ellipsoid(&mut self, centre: Vec3, half_axes: Vec3, blend: f32, part: Part) {
        self.turned(centre, (Vec3::new(0.0, 1.0, 0.0), Vec3::new(0.0, 0.0, 1.0)), half_axes, blend, part);
    }

    /// An ellipsoid whose second axis lies along `up` and third as near as can be to `front`.
    pub fn turned(
        &mut self,
        centre: Vec3,
        (up, front): (Vec3, Vec3),
        half_axes: Vec3,
        blend: f32,
        part: Part,
    ) {
        let own = Frame::from_up_front(
            self.frame.direction(up),
            self.frame.direction(front),
            self.frame.point(centre),
        );
        self.forms.push(Form {
            shape: Shape::Ellipsoid {
                c: own.origin,
                x: own.x,
                y: own.y,
                z: own.z,
                inv: Vec3::new(1.0 / half_axes.x, 1.0 / half_axes.y, 1.0 / half_axes.z),
            },
            blend: blend * self.scale,
            carve: false,
            part,
            group: self.group,
            ball: own.origin,
            reach: half_axes.x.max(half_axes.y).max(half_axes.z),
            influence: 0.0,
        });
    }

    /// Carves out an ellipsoid along the frame's own axes.
    pub fn carve(&mut self, centre: Vec3, half_axes: Vec3, blend: f32, part: Part) {
        self.ellipsoid(centre, half_axes, blend, part);
        if let Some(last) = self.forms.last_mut() {
            last.carve = true;
        }
    }
}
