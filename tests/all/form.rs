//! The one body: its skin is closed, both halves are alike, nothing is torn or swollen when it is posed.
//! `cargo test --test all form -- --nocapture` prints the sizes.

#![allow(clippy::print_stdout)]

use crate::gauge::{calliper, tape};
use crate::shared::rows;
use handspan::body::form::body::{Body, Sizes};
use handspan::body::form::bone;
use handspan::body::form::choose::{Head, LegHeld, Low, Wanted, choose};
use handspan::body::form::landmark::Landmark;
use handspan::body::form::mesh::normals;
use handspan::body::form::posture::Posture;
use handspan::body::form::reach::{Led, led, reach};
use handspan::body::form::rest::{Rest, rest};
use handspan::body::form::table::{FOLDED, FRANK};
use handspan::body::form::turn::Turn;
use handspan::body::measures::Measures;
use handspan::units::{BabySide, Vec3};
use std::collections::BTreeMap;

fn postures() -> Vec<Posture> {
    FOLDED.iter().chain(&FRANK).map(|(_, posture)| *posture).collect()
}

fn distance(a: [f32; 3], b: [f32; 3]) -> f32 {
    let d = [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
    (d[0] * d[0] + d[1] * d[1] + d[2] * d[2]).sqrt()
}

/// Every directed edge, with the vertex that follows it in its quad.
fn edges(rest: &Rest) -> Vec<(u16, u16)> {
    rest.quads.iter().flat_map(|q| (0..4).map(|k| (q[k], q[(k + 1) % 4]))).collect()
}

#[test]
fn the_skin_is_one_closed_surface_without_a_hole() {
    let rest = rest();
    let mut seen = BTreeMap::new();
    for edge in edges(&rest) {
        *seen.entry(edge).or_insert(0) += 1;
    }
    assert!(seen.values().all(|n| *n == 1), "an edge is run through once in each direction");
    assert!(seen.keys().all(|(a, b)| seen.contains_key(&(*b, *a))), "no edge is open");
    let (v, e, f) = (rest.points.len(), seen.len() / 2, rest.quads.len());
    assert_eq!(v + f, e + 2, "a ball: {v} vertices, {e} edges, {f} faces");
    // One piece, and one fan of faces round each vertex.
    let mut reached = vec![false; v];
    let mut todo = vec![0];
    while let Some(at) = todo.pop() {
        if !std::mem::replace(&mut reached[at], true) {
            todo.extend(rest.near.at(at).iter().map(|n| usize::from(*n)));
        }
    }
    assert!(reached.iter().all(|r| *r), "one piece");
    let mut next = BTreeMap::new();
    for q in &rest.quads {
        for k in 0..4 {
            next.insert((q[k], q[(k + 1) % 4]), q[(k + 3) % 4]);
        }
    }
    for (at, first) in (0..v).map(|at| (at as u16, rest.near.at(at)[0])) {
        let (mut round, mut now) = (0, first);
        loop {
            now = next[&(at, now)];
            round += 1;
            if now == first {
                break;
            }
        }
        assert_eq!(round, rest.near.at(at.into()).len(), "vertex {at} has one fan of faces");
    }
}

/// How far along `way` from `from` the triangle is met.
fn met(from: [f32; 3], way: [f32; 3], t: [[f32; 3]; 3]) -> Option<f32> {
    let minus = |a: [f32; 3], b: [f32; 3]| [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
    let dot = |a: [f32; 3], b: [f32; 3]| a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    let cross = |a: [f32; 3], b: [f32; 3]| {
        [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
    };
    let (u, v) = (minus(t[1], t[0]), minus(t[2], t[0]));
    let p = cross(way, v);
    let det = dot(u, p);
    if det.abs() < 1e-9 {
        return None;
    }
    let s = minus(from, t[0]);
    let a = dot(s, p) / det;
    let q = cross(s, u);
    let b = dot(way, q) / det;
    (a >= 0.0 && b >= 0.0 && a + b <= 1.0).then(|| dot(v, q) / det)
}

#[test]
fn the_head_has_no_inner_sheet() {
    // From the middle of the skull outwards the skin is met once, but for folds of lips, nose, ears and chin.
    let rest = rest();
    let head: Vec<&[u16; 4]> =
        rest.quads.iter().filter(|q| rest.weights[usize::from(q[0])].of(|b| b == bone::HEAD) > 0.9).collect();
    let middle = [0.0f32, 21.5, 0.5];
    let mut deepest = 0.0f32;
    for i in 0..900 {
        // Directions spread evenly, the lowest left out: there is the neck.
        let y = 1.0 - 1.7 * (i as f32 + 0.5) / 900.0;
        let (sin, cos) = libm::sincosf(i as f32 * 2.399_963);
        let way = [cos * (1.0 - y * y).sqrt(), y, sin * (1.0 - y * y).sqrt()];
        let mut hits: Vec<f32> = vec![];
        for q in &head {
            let [a, b, c, d] = q.map(|v| rest.points[usize::from(v)]);
            hits.extend(met(middle, way, [a, b, c]).filter(|t| *t > 0.0));
            hits.extend(met(middle, way, [a, c, d]).filter(|t| *t > 0.0));
        }
        if hits.is_empty() {
            assert!(y < 0.0 && way[2] < 0.3, "the head is open towards {way:?}");
            continue;
        }
        let (near, far) = hits.iter().fold((f32::MAX, 0.0f32), |(n, f), t| (n.min(*t), f.max(*t)));
        deepest = deepest.max(far - near);
    }
    assert!(deepest < 1.6, "skin lies {deepest} cm under skin");
}

#[test]
fn both_halves_are_mirror_images() {
    let rest = rest();
    let mirrored = |v: u16| rest.mirror[usize::from(v)];
    for (v, m) in rest.mirror.iter().enumerate() {
        let m = usize::from(*m);
        assert_eq!(usize::from(rest.mirror[m]), v);
        for field in [&rest.points, &rest.lean] {
            let (p, q) = (field[v], field[m]);
            assert_eq!([-p[0], p[1], p[2]].map(|k| k + 0.0), q.map(|k| k + 0.0), "vertex {v}");
        }
        for bone in 0..bone::BONES {
            let (here, there) =
                (rest.weights[v].of(|b| b == bone), rest.weights[m].of(|b| b == bone::mirrored(bone)));
            assert_eq!(here, there, "vertex {v}, bone {bone}");
        }
    }
    let known: BTreeMap<[u16; 4], usize> = rest.quads.iter().enumerate().map(|(i, q)| (*q, i)).collect();
    for (q, part) in rest.quads.iter().zip(&rest.part) {
        // The same corners first and third, so that both are cut along mirrored diagonals.
        let image = [q[0], q[3], q[2], q[1]].map(mirrored);
        let at = known.get(&image).unwrap_or_else(|| panic!("{q:?} has no image"));
        assert_eq!(rest.part[*at], part.mirrored());
    }
}

#[test]
fn weights_sum_to_one() {
    for (v, w) in rest().weights.iter().enumerate() {
        let steps: f32 = w.share.iter().map(|s| s * 255.0).sum();
        assert!((steps - 255.0).abs() < 1e-3, "vertex {v}: {w:?}");
    }
}

#[test]
fn the_head_is_carried_and_never_changed() {
    let rest = rest();
    let body = Body::new(&rest, &Sizes::TERM);
    let head: Vec<usize> =
        (0..rest.points.len()).filter(|v| rest.weights[*v].of(|b| b == bone::HEAD) == 1.0).collect();
    assert!(head.len() > 2_000);
    for posture in postures() {
        let skin = body.skin(&posture);
        for pair in head.windows(40).step_by(7) {
            let (a, b) = (pair[0], pair[39]);
            let before = distance(rest.points[a], rest.points[b]);
            let after = distance(skin.points[a], skin.points[b]);
            assert!((before - after).abs() < 1e-3, "{before} became {after}");
        }
    }
}

#[test]
fn every_posture_is_folded_to_a_newborns_length() {
    let rest = rest();
    let body = Body::new(&rest, &Sizes::TERM);
    for posture in postures() {
        let skin = body.skin(&posture);
        let (low, high) =
            skin.points.iter().fold((f32::MAX, f32::MIN), |(l, h), p| (l.min(p[1]), h.max(p[1])));
        // Published axes of a flexed baby at term are 25 to 28 cm (common practice); the head's hands may stand out.
        assert!((25.0..28.7).contains(&(high - low)), "{} cm", high - low);
        // Nothing is torn: no edge is much longer than at rest, but where the seat is laid anew.
        for (a, b) in edges(&rest) {
            let (a, b) = (usize::from(a), usize::from(b));
            let (before, after) =
                (distance(rest.points[a], rest.points[b]), distance(skin.points[a], skin.points[b]));
            assert!(after < before * 3.0 + 0.6, "an edge of {before} cm became {after}");
        }
    }
}

#[test]
fn the_mirrored_posture_gives_the_mirrored_skin() {
    let rest = rest();
    let body = Body::new(&rest, &Sizes::TERM);
    for posture in postures() {
        let (one, other) = (body.skin(&posture), body.skin(&posture.mirrored()));
        for (v, p) in one.points.iter().enumerate() {
            let q = other.points[usize::from(rest.mirror[v])];
            assert!(distance([-p[0], p[1], p[2]], q) < 2e-3, "{p:?} {q:?}");
        }
    }
}

/// The points where a plane meets the skin whose vertices `of` accepts, in the plane's own coordinates.
fn section(
    rest: &Rest,
    points: &[[f32; 3]],
    origin: Vec3,
    axes: [Vec3; 3],
    of: impl Fn(usize) -> bool,
) -> Vec<(f32, f32)> {
    let local = |v: u16| {
        let p = points[usize::from(v)];
        let d = Vec3::new(p[0], p[1], p[2]) - origin;
        [d.dot(axes[0]), d.dot(axes[1]), d.dot(axes[2])]
    };
    let mut out = vec![];
    for q in &rest.quads {
        if !q.iter().all(|v| of(usize::from(*v))) {
            continue;
        }
        for k in 0..4 {
            let (a, b) = (local(q[k]), local(q[(k + 1) % 4]));
            if (a[1] < 0.0) != (b[1] < 0.0) {
                let t = a[1] / (a[1] - b[1]);
                out.push((a[0] + (b[0] - a[0]) * t, a[2] + (b[2] - a[2]) * t));
            }
        }
    }
    out
}

#[test]
fn the_body_has_the_published_sizes() {
    let rest = rest();
    let skull = |v: usize| rest.weights[v].of(|b| b == bone::HEAD) > 0.95;
    let ears: Vec<bool> = {
        let mut is = vec![false; rest.points.len()];
        for (q, part) in rest.quads.iter().zip(&rest.part) {
            if matches!(part.code(), 4 | 5) {
                q.iter().for_each(|v| is[usize::from(*v)] = true);
            }
        }
        is
    };
    let mut wrong = vec![];
    for weeks in [24u32, 28, 32, 36, 40] {
        let body = Body::new(&rest, &Sizes::of(&Measures::at(f64::from(weeks))));
        let p = choose(&Wanted {
            turn: 45.0,
            near: BabySide::Right,
            head: Head::Flexed,
            legs: [LegHeld::Folded; 2],
            low: Low::Head,
            curl: 1.0,
        });
        let skin = body.skin(&p);
        let median = |table: &str, name: &str| -> f32 {
            let row =
                rows(table).into_iter().find(|r| r[0] == name && r[1] == weeks.to_string()).expect("a row");
            row[3].parse::<f32>().expect("a median in mm") / 10.0
        };
        let mut hold = |what: &str, got: f32, wanted: f32, limit: f32| {
            let off = (got / wanted - 1.0) * 100.0;
            let line = format!("{weeks} {what:<16} {got:>6.2} wanted {wanted:>6.2} {off:>+5.1} %");
            println!("{line}");
            if off.abs() > limit {
                wrong.push(line);
            }
        };
        // The level of the skull with the greatest girth.
        let head = skin.bones[bone::HEAD];
        let axes = [head.turn.x, head.turn.y, head.turn.z];
        let (girth, breadth, length) = (0..30)
            .map(|i| {
                let at = head.origin + head.turn.y * (0.2 * i as f32 * body.sizes.head);
                let s = section(&rest, &skin.points, at, axes, |v| skull(v) && !ears[v]);
                let (breadth, length) = calliper(&s);
                (tape(&s), breadth, length)
            })
            .max_by(|a, b| a.0.total_cmp(&b.0))
            .expect("a level");
        hold("head girth", girth, median("biometry.csv", "HC") + 0.35 * std::f32::consts::PI, 3.0);
        hold("head breadth", breadth, median("biometry.csv", "BPD") + 0.35, 3.0);
        hold("head length", length, median("biometry.csv", "OFD") + 0.35, 3.0);
        // The trunk across the spine, where it is widest between ribs and hips.
        let trunk = |v: usize| rest.weights[v].of(|b| b <= bone::CHEST) > 0.6;
        let girth = [(1, 0.0), (1, 0.5), (2, 0.0), (2, 0.5)]
            .into_iter()
            .map(|(b, share)| {
                let (at, next) = (skin.bones[bone::SPINE + b], skin.bones[bone::SPINE + b + 1]);
                let across = Turn::along(next.origin - at.origin, at.turn.x);
                let middle = at.origin + (next.origin - at.origin) * share;
                tape(&section(&rest, &skin.points, middle, [across.y, across.x, across.z], trunk))
            })
            .fold(0.0, f32::max);
        hold("abdomen girth", girth, median("biometry.csv", "AC"), 3.0);
        let joint = |l| skin.bones[bone::limb(BabySide::Left, l)].origin;
        let length = |a, b| (joint(b) - joint(a)).length();
        use bone::Limb::{Foot, Forearm, Shin, Thigh, UpperArm, Wrist};
        hold("shoulder to elbow", length(UpperArm, Forearm), median("limbs.csv", "humerus"), 5.0);
        hold("elbow to wrist", length(Forearm, Wrist), median("limbs.csv", "radius"), 5.0);
        // From the skin behind the bent elbow to the wrist, along the forearm.
        let (elbow, wrist) = (joint(Forearm), joint(Wrist));
        let back = (elbow - wrist).normalized();
        let start = elbow + back * 5.0;
        let of_arm = |v: u16| {
            rest.weights[usize::from(v)].of(|b| {
                (bone::limb(BabySide::Left, UpperArm)..bone::limb(BabySide::Left, Wrist)).contains(&b)
            }) > 0.5
        };
        let skin_at = rest
            .quads
            .iter()
            .filter(|q| q.iter().all(|v| of_arm(*v)))
            .flat_map(|q| {
                let [a, b, c, d] = q.map(|v| skin.points[usize::from(v)]);
                [[a, b, c], [a, c, d]]
            })
            .filter_map(|t| met([start.x, start.y, start.z], [-back.x, -back.y, -back.z], t))
            .filter(|t| *t > 0.0)
            .fold(f32::MAX, f32::min);
        let ulna = (start - back * skin_at - wrist).length();
        hold("skin to wrist", ulna, median("limbs.csv", "ulna") + 0.35, 5.0);
        hold("hip to knee", length(Thigh, Shin), median("biometry.csv", "FL"), 5.0);
        hold("knee to ankle", length(Shin, Foot), median("limbs.csv", "tibia"), 5.0);
        let [heel, toe] = [Landmark::Heel, Landmark::Toe].map(|l| skin.landmark(&rest, l, BabySide::Left));
        hold("foot", (toe - heel).length(), median("limbs.csv", "foot"), 5.0);
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn each_way_of_holding_the_head_presents_its_own_diameter() {
    let rest = rest();
    let body = Body::new(&rest, &Sizes::TERM);
    let mut wrong = vec![];
    for (head, name, term) in [
        (Head::Flexed, "suboccipitobregmatic", 9.5),
        (Head::Straight, "occipitofrontal", 11.5),
        (Head::Brow, "mentovertical", 13.5),
        (Head::Face, "submentobregmatic", 9.5),
    ] {
        for turn in 0..9 {
            let turn = turn as f32 * 22.5;
            let p = choose(&Wanted {
                turn,
                near: BabySide::Right,
                head,
                legs: [LegHeld::Folded; 2],
                low: Low::Head,
                curl: 1.0,
            });
            let skin = body.skin(&p);
            let at = |l| skin.landmark(&rest, l, BabySide::Left);
            let farthest = |from: Vec3| {
                let middle = (0..rest.points.len()).filter(|v| {
                    usize::from(rest.mirror[*v]) == *v && rest.weights[*v].of(|b| b == bone::HEAD) > 0.95
                });
                let points =
                    middle.map(|v| Vec3::new(skin.points[v][0], skin.points[v][1], skin.points[v][2]));
                points.max_by(|a, b| (*a - from).length().total_cmp(&(*b - from).length())).expect("a skull")
            };
            let (from, to) = match head {
                Head::Flexed => (at(Landmark::Suboccipital), at(Landmark::Bregma)),
                Head::Straight => (at(Landmark::Glabella), farthest(at(Landmark::Glabella))),
                Head::Brow => (at(Landmark::Chin), farthest(at(Landmark::Chin))),
                Head::Face => (at(Landmark::Submental), at(Landmark::Bregma)),
            };
            // Bone in the handbooks, skin here: the same allowance as for the breadth.
            let off = ((to - from).length() / (term + 0.35) - 1.0) * 100.0;
            let square = libm::asinf((to - from).normalized().y.abs()).to_degrees();
            let line = format!(
                "{name} {turn}: {:.2} cm, {off:+.1} %, {square:.0} degrees off square",
                (to - from).length()
            );
            println!("{line}");
            if off.abs() > 6.0 || square > 30.0 {
                wrong.push(line);
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn hands_and_feet_go_where_they_are_led() {
    let rest = rest();
    let body = Body::new(&rest, &Sizes::TERM);
    for (_, posture) in &FOLDED {
        for side in BabySide::BOTH {
            let out = if side == BabySide::Left { 1.0 } else { -1.0 };
            for (what, place) in [
                (Led::Hand(side), Vec3::new(out * 4.0, 11.0, 7.0)),
                (Led::Hand(side), Vec3::new(out * 8.0, 8.0, 5.0)),
                (Led::Foot(side), Vec3::new(out * 3.0, 8.0, 9.0)),
                (Led::Foot(side), Vec3::new(out * 6.0, 2.0, 11.0)),
            ] {
                let (root, far) = reach(&body, posture, what);
                assert!((place - root).length() < far, "{what:?} reaches {place:?}");
                let skin = body.skin(&led(&body, posture, what, place));
                let at = |l| skin.landmark(&rest, l, side);
                let end = match what {
                    Led::Hand(_) => (at(Landmark::Palm) + at(Landmark::HandBack)) * 0.5,
                    Led::Foot(_) => (at(Landmark::Heel) + at(Landmark::Toe)) * 0.5,
                };
                let off = (end - place).length();
                assert!(off < 2.2, "{what:?} is {off} cm from {place:?}");
            }
        }
    }
}

/// How deep the outline of pelvis and thighs dips in its middle, seen from the front turned by `turn` degrees about the
/// baby's long axis and tilted by `tilt`, below the line over both sides, cm.
fn dip(rest: &Rest, points: &[[f32; 3]], turn: f32, tilt: f32) -> f32 {
    let whole =
        Turn::about(Vec3::new(1.0, 0.0, 0.0), tilt).after(&Turn::about(Vec3::new(0.0, 1.0, 0.0), turn));
    let thighs = BabySide::BOTH.map(|side| bone::limb(side, bone::Limb::Thigh));
    let seat = |b: usize| b <= bone::SPINE + 1 || thighs.iter().any(|t| b == *t || b == t + 1);
    const BINS: usize = 49;
    let mut low = [f32::MAX; BINS];
    for q in &rest.quads {
        if !q.iter().all(|v| rest.weights[usize::from(*v)].of(seat) > 0.7) {
            continue;
        }
        let corner = |k: usize| points[usize::from(q[k])];
        let [a, b, c, d] = [0, 1, 2, 3].map(corner);
        for i in 0..=4 {
            for j in 0..=4 {
                let (s, t) = (i as f32 / 4.0, j as f32 / 4.0);
                let p: [f32; 3] = std::array::from_fn(|k| {
                    (a[k] * (1.0 - s) + b[k] * s) * (1.0 - t) + (d[k] * (1.0 - s) + c[k] * s) * t
                });
                let v = whole.of(Vec3::new(p[0], p[1], p[2]));
                let bin = libm::roundf(v.x / 0.1) + 24.0;
                if (0.0..BINS as f32).contains(&bin) {
                    low[bin as usize] = low[bin as usize].min(v.y);
                }
            }
        }
    }
    // The lowest line over it from side to side.
    let mut deepest = 0.0f32;
    for i in 1..BINS - 1 {
        for l in 0..i {
            for r in i + 1..BINS {
                let t = (i - l) as f32 / (r - l) as f32;
                deepest = deepest.max(low[i] - (low[l] + (low[r] - low[l]) * t));
            }
        }
    }
    deepest
}

#[test]
fn the_outline_of_the_seat_tells_nothing() {
    let rest = rest();
    for weeks in [40.0, 30.0] {
        let body = Body::new(&rest, &Sizes::of(&Measures::at(weeks)));
        for posture in postures() {
            let skin = body.skin(&posture);
            // As far as a drawn baby leans to the viewer or away; seen from the end the furrow of the back shows.
            for (turn, tilt) in [(0.0, 0.0), (0.0, 12.0), (0.0, -20.0), (180.0, 0.0), (180.0, 20.0)] {
                let deep = dip(&rest, &skin.points, turn, tilt);
                println!("{weeks} turned {turn} tilted {tilt}: {:.1} mm", deep * 10.0);
                assert!(deep < 0.2, "the seat dips by {deep} cm, turned {turn}, tilted {tilt}");
            }
        }
    }
}

#[test]
fn hands_lie_on_the_body_and_not_in_it() {
    let rest = rest();
    let body = Body::new(&rest, &Sizes::TERM);
    for (at, posture) in postures().into_iter().enumerate() {
        let skin = body.skin(&posture);
        let out = normals(&skin.points, &rest.quads);
        for side in BabySide::BOTH {
            let (arm, wrist) = (bone::limb(side, bone::Limb::Clavicle), bone::limb(side, bone::Limb::Wrist));
            let vertices = 0..rest.points.len();
            let hand =
                vertices.clone().filter(|v| rest.weights[*v].of(|b| (wrist..wrist + 20).contains(&b)) > 0.5);
            let others: Vec<usize> =
                vertices.filter(|v| rest.weights[*v].of(|b| (arm..arm + 26).contains(&b)) < 0.02).collect();
            // How far each vertex of the hand lies inside the skin that is nearest to it.
            let mut deep: Vec<f32> = hand
                .step_by(2)
                .map(|v| {
                    let p = skin.points[v];
                    let far = |o: &usize| distance(p, skin.points[*o]);
                    let near = *others.iter().min_by(|a, b| far(a).total_cmp(&far(b))).expect("a body");
                    let (q, n) = (skin.points[near], out[near]);
                    if distance(p, q) > 2.4 {
                        return 0.0;
                    }
                    -((p[0] - q[0]) * n[0] + (p[1] - q[1]) * n[1] + (p[2] - q[2]) * n[2])
                })
                .collect();
            deep.sort_by(f32::total_cmp);
            // Where fingers touch, a few vertices lie a little deeper: flesh gives.
            let most = deep[deep.len() * 97 / 100];
            assert!(most < 0.3, "posture {at}: the {side:?} hand lies {most} cm deep");
        }
    }
}
