//! Light and shade. In: a cast and the faces in it. Out: fields of light, of blush and of lips on the cast's grid.

use super::grid::{Coarse, Window};
use crate::body::cast::{Cast, is_met};
use crate::body::form::features::hair;
use crate::body::frame::Frame;
use crate::units::Vec3;

/// Direction of the light: from above, left of the viewer.
pub const LIGHT: Vec3 = Vec3::new(-0.434, 0.597, 0.675);
/// Direction of the light that comes back from the womb's wall.
const BACK_LIGHT: Vec3 = Vec3::new(0.356, -0.815, 0.458);

/// Fields on the cast's grid.
pub struct Tones {
    /// 1 in full light, about 0 in the deepest fold; `OFF` where nothing was met.
    pub light: Vec<f32>,
    /// The faces; blush and lips are 0 elsewhere.
    pub faces: Option<Window>,
    /// 1 in the middle of a cheek.
    pub blush: Vec<f32>,
    /// 1 in the middle of the lips.
    pub lips: Vec<f32>,
}

/// Stands for the light of what is not the baby: more than any light.
pub const OFF: f32 = 1e6;

/// The middle of a cheek and of the mouth, from between the eyes: cm at term, x to the
/// baby's left, y towards the vertex, z towards the viewer of the face.
pub const CHEEK: Vec3 = Vec3::new(2.7, -1.9, 0.0);
pub const MOUTH: Vec3 = Vec3::new(0.0, -2.98, 0.85);
/// The tones of a cast. `faces`: a frame with its origin between the eyes, and a scale, of each head.
pub fn tones(cast: &Cast, faces: &[(Frame, f32)]) -> Tones {
    let n = cast.width * cast.height;
    let mut light = shadows(cast);
    let folds = folds(cast);
    for (at, light) in light.iter_mut().enumerate() {
        let z = cast.depth[at];
        if !is_met(z) {
            *light = OFF;
            continue;
        }
        let normal = cast.normal[at];
        let turned = (normal.dot(LIGHT) + 1.0) * 0.5;
        let back = normal.dot(BACK_LIGHT).max(0.0);
        *light =
            0.225 + 0.72 * turned * (0.8 + 0.2 * turned) + 0.10 * back - 0.30 * *light - 0.22 * folds[at];
    }
    let window = Window::round(cast, &cast.part, |part| part.is_head());
    let (mut blush, mut lips) = (vec![0.0; n], vec![0.0; n]);
    for (x, y, at) in window.iter().flat_map(|head| head.rows()).flat_map(|j| cast.hits_of_row(j)) {
        if !cast.part[at].is_head() {
            continue;
        }
        let p = Vec3::new(x, y, cast.depth[at]);
        let away = |face: &(Frame, f32)| (p - face.0.origin).length();
        let Some((face, k)) = faces.iter().min_by(|a, b| away(a).total_cmp(&away(b))) else { continue };
        let local = face.local(p) * (1.0 / k);
        light[at] -= 0.09 * hair(local);
        let off = Vec3::new(local.x.abs(), local.y, local.z) - CHEEK;
        blush[at] = (1.0 - off.length() / 2.1).max(0.0);
        let off = local - MOUTH;
        let (across, up) = (off.x / 1.4, off.y / 0.62);
        lips[at] = if off.z > -1.0 { (1.0 - (across * across + up * up).sqrt()).max(0.0) } else { 0.0 };
    }
    Tones { light, faces: window, blush, lips }
}

/// How much of the light all round is kept off each cell by what stands before it near by: 0 to 1.
fn shadows(cast: &Cast) -> Vec<f32> {
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
    let mut out = vec![0.0; cast.width * cast.height];
    let mut mean = vec![];
    // How far round, cm; how much it counts; and so smooth that a grid as much coarser holds it.
    for (reach, share, k) in [(0.25, 0.35, 2), (0.7, 0.5, 4), (1.8, 0.6, 4)] {
        let mut depth = Coarse::of(cast, k, depths);
        let mut weight = Coarse::of(cast, k, inside);
        let cells = ((reach / cast.cell / k as f32) as usize).max(1);
        depth.blur(cells, 2);
        weight.blur(cells, 2);
        mean = depth.over(&weight).spread(mean);
        for ((sum, mean), z) in out.iter_mut().zip(&mean).zip(&cast.depth) {
            if is_met(*z) {
                *sum += share * ((mean - z) / (reach * 1.1) - 0.06).clamp(0.0, 1.0);
            }
        }
    }
    out.iter_mut().for_each(|sum| *sum = sum.min(1.0));
    out
}

/// How deep a fold each cell lies in: 0 to 1.
fn folds(cast: &Cast) -> Vec<f32> {
    let (w, h) = (cast.width, cast.height);
    let mut out = vec![0.0; w * h];
    let per_cm = 0.25 / cast.cell;
    const REACH: usize = 2;
    for j in REACH..h.saturating_sub(REACH) {
        let row = j * w + REACH..(j + 1) * w - REACH;
        for (at, fold) in row.clone().zip(&mut out[row]) {
            let z = cast.depth[at];
            if !is_met(z) {
                continue;
            }
            let ends = [at - REACH, at + REACH, at - REACH * w, at + REACH * w];
            if ends.iter().all(|&end| (cast.depth[end] - z).abs() < 0.35) {
                let [left, right, above, below] = ends.map(|end| cast.normal[end]);
                let bend = (right.x - left.x + above.y - below.y) * per_cm;
                *fold = ((-bend - 1.0) / 6.0).clamp(0.0, 1.0);
            }
        }
    }
    out
}
