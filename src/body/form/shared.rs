//! The form as all of the program shares it. In: nothing. Out: the body at rest, and how its finer mesh hangs together.
//!
//! It is constant data: decoded when a picture is first asked for, once, and never changed, so that threads share it and a
//! check that draws nothing does not pay for it.

use super::features::Features;
use super::rest::{Rest, rest};
use super::subdivide::Subdivision;
use crate::body::part::{Part, Region};
use std::sync::LazyLock;

/// The form.
pub struct Form {
    /// The body at rest.
    pub rest: Rest,
    /// One step of subdivision.
    pub finer: Subdivision,
    /// Fine lines of the head.
    pub features: Features,
    /// The region of each vertex of the body at rest.
    pub regions: Vec<Region>,
    mirrored: Vec<Part>,
}

impl Form {
    /// The part of each quad; `mirrored`: of a reflected body, whose sides are changed over.
    pub fn parts(&self, mirrored: bool) -> &[Part] {
        if mirrored { &self.mirrored } else { &self.rest.part }
    }
}

static FORM: LazyLock<Form> = LazyLock::new(|| {
    let rest = rest();
    let finer = Subdivision::of(rest.points.len(), &rest.quads).expect("the form is one closed skin");
    let mirrored = rest.part.iter().map(|part| part.mirrored()).collect();
    let mut regions = vec![Region::Trunk; rest.points.len()];
    for (quad, part) in rest.quads.iter().zip(&rest.part) {
        quad.iter().for_each(|v| regions[usize::from(*v)] = part.region());
    }
    let features = Features::of(&rest);
    Form { rest, finer, features, regions, mirrored }
});

/// The one form.
pub fn shared() -> &'static Form {
    &FORM
}
