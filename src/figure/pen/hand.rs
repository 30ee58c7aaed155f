//! A hand as a pen draws it: one stroke round thumb and four fingers. In: an arm in the picture plane. Out: the stroke, from the
//! wrist round to the wrist, with the corners between its fingers.

use super::masses::{Mass, Masses};
use super::plane::{add, away, dot, finely, left_of, sub, through, unit};
use super::{Detail, Kind};
use crate::body::baby::PosedBaby;
use crate::body::part;
use crate::units::{BabySide, Vec3};

/// A hand is drawn when as much of it is seen, of the whole.
const SHOWN: f32 = 0.34;

/// The hand of a side, when it is seen.
pub fn hand(baby: &PosedBaby, masses: &Masses, side: BabySide) -> Option<Detail> {
    let (area, share) = masses.shown(Mass::Hand(side));
    if area < 1.0 || share < SHOWN {
        return None;
    }
    let sign = masses.sign;
    let flat = |v: Vec3| (v.x * sign, v.y);
    let joints = &baby.arms[side.index()];
    let (wrist3, elbow) = (baby.body.point(joints.wrist), flat(baby.body.point(joints.elbow)));
    let wrist = flat(wrist3);
    let tip = |i: u8| baby.shape.middle(part::Part::finger(side, i));
    let fingers: Vec<Vec3> = (0..4).filter_map(tip).collect();
    let thumb = flat(tip(4)?);
    let palm = flat(baby.shape.middle(part::Part::palm(side))?);
    let last = fingers
        .iter()
        .map(|p| flat(*p))
        .fold(palm, |far, p| if away(p, wrist) > away(far, wrist) { p } else { far });
    let k = baby.posture.measures.length;
    let reach = away(last, wrist);
    let mut along = unit(sub(last, wrist));
    if reach < 1.2 * k {
        // Seen end on: half as the fingers, half as the forearm points.
        let arm = unit(sub(wrist, elbow));
        along = unit(add(along, arm, 1.0));
    }
    let long = (reach + 1.2 * k).clamp(2.7 * k, 3.9 * k);
    let mut across = left_of(along);
    // The thumb's side first.
    if dot(sub(thumb, wrist), across) > 0.0 {
        across = (-across.0, -across.1);
    }
    let half = 1.28 * k;
    let p = |a: f32, b: f32| add(add(wrist, along, a), across, b);
    let u = k;
    let mut line = through(
        &[
            p(-0.35 * u, -0.8 * u),
            p(0.3 * u, -0.92 * u),
            p(0.75 * u, -1.2 * u),
            p(1.2 * u, -1.75 * u),
            p(1.72 * u, -1.9 * u),
            p(1.95 * u, -1.55 * u),
            p(1.7 * u, -1.1 * u),
        ],
        false,
    );
    let mut corners = vec![line[line.len() - 1]];
    let tops = [0.62, 0.88, 0.82, 0.5];
    let base = long - 1.15 * u;
    for (i, top) in tops.iter().enumerate() {
        let (x0, x1) = (half * (i as f32 / 2.0 - 1.0), half * ((i + 1) as f32 / 2.0 - 1.0));
        let r = 0.5 * (x1 - x0);
        let high = long - 0.95 * u + top * u;
        let (b0, b1) =
            (if i == 0 { base - 0.1 } else { base + 0.3 * u }, if i == 3 { base } else { base + 0.3 * u });
        let finger = finely(&[
            p(b0, x0 + 0.02),
            p(high - 0.75 * r, x0 + 0.04),
            p(high, 0.5 * (x0 + x1)),
            p(high - 0.75 * r, x1 - 0.04),
            p(b1, x1 - 0.02),
        ]);
        corners.push(finger[0]);
        corners.push(finger[finger.len() - 1]);
        line.extend(finger);
    }
    line.extend(through(
        &[p(base - 0.1, half * 0.99), p(0.7 * u, half * 0.84), p(-0.35 * u, 0.8 * u)],
        false,
    ));
    Some(Detail {
        kind: Kind::Hand,
        side: Some(side),
        line,
        corners,
        depth: wrist3.z,
        of: Some(Mass::Hand(side)),
    })
}
