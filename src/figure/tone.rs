//! Light and shade. In: a cast and the head's frame. Out: fields of darkness, hair and blush on the cast's grid.

use super::grid::{Coarse, Window, smooth_step};
use crate::body::cast::{Cast, is_met};
use crate::body::frame::Frame;
use crate::body::head::WHORL;
use crate::body::part::Part;
use crate::units::Vec3;

/// Direction of the light: from above, left of the viewer.
pub const LIGHT: Vec3 = Vec3::new(-0.40, 0.36, 0.84);

/// Fields on the cast's grid.
pub struct Tones {
    /// 0 in full light, about 1 in deep shade; `OFF` where nothing was met.
    pub shade: Vec<f32>,
    /// The heads; hair and blush are 0 elsewhere.
    pub heads: Option<Window>,
    /// 1 in the hair, falling to 0 at its edge.
    pub hair: Vec<f32>,
    /// 1 in the middle of a cheek.
    pub blush: Vec<f32>,
}

/// Stands for the shade of what is not the baby: less than any shade.
pub const OFF: f32 = -1e6;

/// The tones of a cast. `heads`: the frame and scale of each head, and the code its parts begin at.
pub fn tones(cast: &Cast, heads: &[(Frame, f32)]) -> Tones {
    let n = cast.width * cast.height;
    let inside = |first: usize, row: &mut [f32]| {
        row.iter_mut()
            .zip(&cast.depth[first..])
            .for_each(|(cell, z)| *cell = if is_met(*z) { 1.0 } else { 0.0 });
    };
    let depths = |first: usize, row: &mut [f32]| {
        row.iter_mut()
            .zip(&cast.depth[first..])
            .for_each(|(cell, z)| *cell = if is_met(*z) { *z } else { 0.0 });
    };
    // Depth all round, for hollows; so smooth that a grid four times as coarse holds it.
    const WIDE: usize = 4;
    let mut depth = Coarse::of(cast, WIDE, depths);
    let mut weight = Coarse::of(cast, WIDE, inside);
    let reach = (0.75 / cast.cell / WIDE as f32 + 0.5) as usize;
    depth.blur(reach, 3);
    weight.blur(reach, 3);
    // Each value gives way to the shade there.
    let mut shade = depth.over(&weight).spread(vec![]);
    let light = LIGHT.normalized();
    for ((shade, z), normal) in shade.iter_mut().zip(&cast.depth).zip(&cast.normal) {
        let lit = normal.dot(light).max(0.0);
        let hollow = ((*shade - z) / 3.0).clamp(-0.35, 1.0);
        *shade = if is_met(*z) { (1.0 - lit) * 0.8 + hollow * 0.55 } else { 0.0 };
    }
    let head = Window::round(cast, &cast.part, |part| part.is_head());
    let (mut hair, mut blush) = (vec![0.0; n], vec![0.0; n]);
    for (x, y, i) in head.iter().flat_map(|head| head.rows()).flat_map(|j| cast.hits_of_row(j)) {
        let part = cast.part[i];
        if !part.is_head() {
            continue;
        }
        let p = Vec3::new(x, y, cast.depth[i]);
        let Some((head, k)) =
            heads.iter().min_by(|a, b| (p - a.0.origin).length().total_cmp(&(p - b.0.origin).length()))
        else {
            continue;
        };
        let local = head.local(p) * (1.0 / k);
        if part == Part::HEAD {
            let u = local.normalized();
            let away = libm::acosf(u.dot(WHORL).clamp(-1.0, 1.0)) + 0.05 * libm::sinf(u.x.abs() * 9.0);
            hair[i] = 1.0 - smooth_step(0.75, 1.5, away);
        }
        let cheek = Vec3::new(2.1 * local.x.signum(), -3.1, 4.4);
        blush[i] = (1.0 - (local - cheek).length() / 2.2).max(0.0);
    }
    // A light blur inside the baby only, so that bands are smooth and do not leak over its edge. Hair and blush are
    // smooth by their making.
    const FINE: usize = 2;
    let mut sum = Coarse::of(cast, FINE, |first, row| row.copy_from_slice(&shade[first..first + row.len()]));
    let mut share = Coarse::of(cast, FINE, inside);
    sum.blur(1, 2);
    share.blur(1, 2);
    let mut shade = sum.over(&share).spread(shade);
    for (shade, z) in shade.iter_mut().zip(&cast.depth) {
        *shade = if is_met(*z) { *shade } else { OFF };
    }
    Tones { shade, heads: head, hair, blush }
}
