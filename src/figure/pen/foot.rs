//! A foot as a pen draws it: one stroke from the ankle over the instep, round five toes and back under the heel. In: a leg in the
//! picture plane. Out: the stroke, with the corners between its toes.

use super::masses::{Mass, Masses};
use super::plane::{P, add, away, dot, finely, left_of, middle, rounded, sub, through, unit};
use super::{Detail, Kind};
use crate::body::baby::PosedBaby;
use crate::body::form::landmark::Landmark;
use crate::body::part;
use crate::units::{BabySide, Vec3};

/// A foot is drawn when as much of it is seen, of the whole.
const SHOWN: f32 = 0.34;

/// The foot of a side, when it is seen.
pub fn foot(baby: &PosedBaby, masses: &Masses, side: BabySide) -> Option<Detail> {
    let (area, share) = masses.shown(Mass::Foot(side));
    if area < 1.2 || share < SHOWN {
        return None;
    }
    let sign = masses.sign;
    let flat = |v: Vec3| (v.x * sign, v.y);
    let joints = &baby.legs[side.index()];
    let ankle3 = baby.body.point(joints.ankle);
    let (ankle, knee) = (flat(ankle3), flat(baby.body.point(joints.knee)));
    let heel = flat(baby.shape.landmark(Landmark::Heel, side));
    let toes: Vec<Vec3> = (0..5).filter_map(|i| baby.shape.middle(part::Part::toe(side, i))).collect();
    if toes.len() < 5 {
        return None;
    }
    let depth = toes.iter().map(|t| t.z).sum::<f32>() / 5.0;
    let toes: Vec<P> = toes.into_iter().map(flat).collect();
    let k = baby.posture.measures.length;
    let front = middle(&toes);
    let seen_long = away(front, heel);
    let toward = unit(sub(front, heel));
    let leg_way = unit(sub(ankle, knee));
    let along = if seen_long > 1.5 * k { toward } else { unit(add(toward, leg_way, 0.6)) };
    let mut across = left_of(along);
    // The great toe first.
    if dot(sub(toes[4], toes[0]), across) < 0.0 {
        across = (-across.0, -across.1);
    }
    let row = dot(sub(toes[4], toes[0]), across);
    // Seen edge on, the row is drawn a little turned, so that five toes can be counted.
    let wide = (row * 1.1 + 0.8 * k).clamp(2.9 * k, 3.6 * k);
    let long = seen_long.clamp(2.6 * k, 6.4 * k);
    let half = 0.5 * wide;
    // From the heel: `a` along the foot, `b` across it.
    let base = add(front, along, -long);
    let at = |a: f32, b: f32| add(add(base, along, a), across, b);
    let slope = (dot(sub(toes[4], toes[0]), along) / 4.0).clamp(-0.3 * k, 0.1 * k);
    let radii = [0.56f32, 0.45, 0.42, 0.38, 0.34];
    let scale = wide / (2.0 * radii.iter().sum::<f32>());
    // Each toe: its height along the foot, and its edges across it. The front of a foot is a bow.
    let mut edge = -half;
    let toe = |i: usize| {
        let r = radii[i] * scale;
        let bow = [0.0f32, 0.16, 0.18, 0.08, -0.12][i] * k;
        (long + slope * (i as f32 - 2.0) + bow - 0.1 * k, r)
    };
    let mut arcs: Vec<Vec<P>> = vec![];
    let mut meeting = at(toe(0).0 - 0.1 * k, edge);
    for i in 0..5 {
        let (a, r) = toe(i);
        let high = 1.25 * r.max(0.4 * k);
        let next = if i < 4 { 0.5 * (a + toe(i + 1).0) + 0.12 * k } else { a - 0.1 * k };
        let end = at(next, edge + 2.0 * r);
        let side = |s: f32| at(a + 0.62 * high, edge + r + s * 0.84 * r);
        arcs.push(finely(&[meeting, side(-1.0), at(a + high, edge + r), side(1.0), end]));
        meeting = end;
        edge += 2.0 * r;
    }
    let corners: Vec<P> = arcs.iter().map(|arc| arc[0]).chain([meeting]).collect();
    let (first, last) = (arcs[0][0], meeting);
    // Where the leg comes in, at both sides of the ankle.
    let leg = (-leg_way.0, -leg_way.1);
    let thick = 1.1 * k;
    let side_of_leg = left_of(leg);
    let mut ends = [1.0, -1.0].map(|s| add(add(ankle, side_of_leg, s * thick), leg, 0.5 * k));
    if away(ends[0], first) + away(ends[1], last) > away(ends[1], first) + away(ends[0], last) {
        ends.swap(0, 1);
    }
    let square = seen_long > 1.5 * k && dot(leg_way, along).abs() < 0.75;
    // On the side of the heel the line goes round it.
    let heel_first = away(ends[0], base) < away(ends[1], base);
    // Behind a toe at the edge, a little farther out.
    let beside = |toe: P, sign: f32| add(add(toe, along, -0.8 * k), across, sign * 0.06 * k);
    let flank = |end: P, sign: f32, toe: P, heel: bool| -> Vec<P> {
        let ball = beside(toe, sign);
        let knots = if square && heel {
            vec![
                end,
                at(-0.75 * k, -sign * 0.2 * k),
                at(-0.1 * k, sign * 0.85 * k),
                at(0.5 * long, sign * 0.8 * half),
                ball,
                toe,
            ]
        } else if square {
            if long < 3.6 * k {
                vec![end, ball, toe]
            } else {
                vec![end, at(0.62 * long, sign * 0.62 * half), ball, toe]
            }
        } else {
            vec![end, at(0.35 * long, sign * 0.8 * half), ball, toe]
        };
        let line = rounded(&through(&knots, false), 0.5);
        // An ankle that is seen before the foot leaves no room for heel and ball: the line would fold.
        let folds = line.windows(3).any(|w| dot(unit(sub(w[1], w[0])), unit(sub(w[2], w[1]))) < 0.8);
        if folds { through(&[end, toe], false) } else { line }
    };
    // A leg that points at the viewer is not seen: the sole is drawn whole, with a round heel.
    let (area, share) = masses.shown(Mass::Shin(side));
    let foreshortened = away(ankle, knee) < 0.5 * (ankle3 - baby.body.point(joints.knee)).length();
    if area < 3.0 || share < 0.2 || foreshortened || ankle3.z > baby.body.point(joints.knee).z + 2.5 * k {
        let heel = through(
            &[
                last,
                beside(last, 1.0),
                at(0.45 * long, 0.78 * half),
                at(0.3 * k, 0.6 * half),
                at(-0.1 * k, 0.0),
                at(0.3 * k, -0.6 * half),
                at(0.45 * long, -0.78 * half),
                beside(first, -1.0),
                first,
            ],
            false,
        );
        let mut line: Vec<P> = arcs.into_iter().flatten().collect();
        line.extend(rounded(&heel, 0.25));
        return Some(Detail {
            kind: Kind::Foot,
            side: Some(side),
            line,
            corners,
            depth,
            of: Some(Mass::Foot(side)),
        });
    }
    let mut line = flank(ends[0], -1.0, first, heel_first);
    arcs.iter().for_each(|arc| line.extend(arc));
    let mut back = flank(ends[1], 1.0, last, !heel_first);
    back.reverse();
    line.extend(back);
    Some(Detail { kind: Kind::Foot, side: Some(side), line, corners, depth, of: Some(Mass::Foot(side)) })
}
