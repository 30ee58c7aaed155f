//! The cut in the midline: one measure of descent with the picture from the front, a baby between spine and skin, sides.

use crate::shared::read;
use handspan::body::baby::PosedBaby;
use handspan::body::lateral::{self, Lateral, SPINE, WALL, above_brim, lateral, skin_front, spine_front};
use handspan::body::pelvis;
use handspan::body::pose::{self, Pose};
use handspan::body::shape::Piece;
use handspan::body::{diameter, head};
use handspan::reckon;
use handspan::units::{FigurePoint, Vec3};

fn posed(text: &str) -> Pose {
    let exam = read(text);
    pose::from_exam(&exam, &reckon::conclusions(&exam))
}

fn cut(text: &str) -> (Pose, Lateral) {
    let pose = posed(text);
    let cut = lateral(&pose);
    (pose, cut)
}

fn only(cut: &Lateral) -> &PosedBaby {
    &cut.babies[0].1
}

/// Down along the axis of the pelvis, in the space of the cut.
fn down() -> Vec3 {
    lateral::turned(pelvis::axis())
}

/// k/5 of the head stands above the plane of the brim in the cut as it does above y = 0 from the front, to 1 mm, on the
/// posed surface.
#[test]
fn front_and_side_share_one_measure_of_descent() {
    for weeks in [34, 38, 41] {
        for k in 0..=5u8 {
            for code in ["OA", "LOA", "ROT", "OP"] {
                let (pose, cut) = cut(&format!(
                    "weeks = \"{weeks}+0\"\n[baby]\nposition = \"{code}\"\nhead-above-brim = \"{k}/5\"\n"
                ));
                let height = head::HEIGHT * only(&cut).posture.measures.head;
                let above = above_brim(only(&cut).shape.piece(Piece::Head).extreme(down())) + height;
                let (_, front) = pose.posed().next().expect("a baby");
                let in_front = front.shape.piece(Piece::Head).extreme(Vec3::new(0.0, -1.0, 0.0)).y + height;
                assert!(
                    (above - in_front).abs() < 0.05,
                    "{weeks} {k}/5 {code}: {above}, from the front {in_front}"
                );
                assert!((above - f32::from(k) / 5.0 * height).abs() < 0.1, "{weeks} {k}/5 {code}: {above}");
            }
        }
    }
}

/// The head's middle lies in the middle of the brim's conjugate, and never deeper than the spines, to which the axis is
/// straight.
#[test]
fn the_head_lies_on_the_axis_of_the_pelvis() {
    for k in 0..=5u8 {
        let (_, cut) =
            cut(&format!("weeks = \"38+0\"\n[baby]\nposition = \"OA\"\nhead-above-brim = \"{k}/5\"\n"));
        let head = only(&cut).shape.piece(Piece::Head);
        let back = lateral::turned(pelvis::brim_back());
        let (rear, fore) = (head.extreme(back).dot(back), head.extreme(-back).dot(back));
        let middle = 0.5 * (rear + fore);
        assert!((middle - 0.5 * pelvis::CONJUGATE).abs() < 1.0, "{k}/5: {middle} cm behind the symphysis");
        assert!(above_brim(only(&cut).head.origin) > -pelvis::SPINES_BELOW_BRIM - 0.6, "{k}/5");
    }
}

/// How far a point lies outside a closed line, cm; 0 inside.
fn outside(line: &[FigurePoint], p: Vec3) -> f32 {
    let (mut inside, mut nearest) = (false, f32::MAX);
    for (a, b) in line.iter().zip(line.iter().cycle().skip(1)) {
        if (a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x) {
            inside = !inside;
        }
        let (dx, dy) = (b.x - a.x, b.y - a.y);
        let t = (((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)).clamp(0.0, 1.0);
        nearest = nearest.min(libm::hypotf(p.x - a.x - t * dx, p.y - a.y - t * dy));
    }
    if inside { 0.0 } else { nearest }
}

/// Every part of a baby lies before the spine, behind the abdominal wall, and in the womb.
#[test]
fn the_baby_lies_between_spine_and_wall() {
    let mut wrong = vec![];
    for weeks in [37, 38, 40] {
        for rest in [
            "position = \"LOA\"\nhead-above-brim = \"5/5\"",
            "position = \"LOA\"\nhead-above-brim = \"3/5\"",
            "position = \"LOA\"\nhead-above-brim = \"0/5\"",
            "position = \"OA\"",
            "position = \"OP\"",
            "position = \"ROT\"",
            "position = \"LSA\"\nlegs = \"complete\"",
            "position = \"ROP\"",
            "position = \"RSP\"\nlegs = \"footling left\"",
            "position = \"LMT\"",
            "position = \"SP\"\nlegs = \"frank\"",
        ] {
            let (pose, cut) = cut(&format!("weeks = \"{weeks}+0\"\n[baby]\n{rest}\n"));
            let tips = |x: f32, y: f32| only(&cut).shape.tips(Vec3::new(x, y, 0.0));
            for front in tips(-1.0, 0.0) {
                // Above the pubic bone and below the ribs.
                if (3.0..30.0).contains(&front.y) {
                    let room = skin_front(&pose.mother, front.y) + front.x;
                    if room < WALL {
                        wrong.push(format!("{weeks} {rest}: {room:.1} cm under the skin at {:.1}", front.y));
                    }
                }
            }
            for back in tips(1.0, 0.0) {
                let room = -back.x - spine_front(back.y);
                if back.y > SPINE[0].0 && room < 0.3 {
                    wrong.push(format!("{weeks} {rest}: {room:.1} cm before the spine at {:.1}", back.y));
                }
            }
            for i in 0..24 {
                let (sin, cos) = libm::sincosf((15.0 * i as f32).to_radians());
                for p in tips(cos, sin) {
                    let out = outside(&cut.womb, p);
                    if out > 0.1 {
                        wrong.push(format!("{weeks} {rest}: {out:.1} cm out of the womb at {:.1}", p.y));
                    }
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{} places:\n{}", wrong.len(), wrong.join("\n"));
}

/// Seen from her left: a baby whose back lies to her left turns its back to the viewer, one with its back to her right
/// its front. Both ends.
#[test]
fn her_left_faces_the_viewer() {
    for (code, toward) in [("LOT", 1.0), ("ROT", -1.0), ("LST", 1.0), ("RST", -1.0)] {
        let (_, cut) =
            cut(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{code}\"\nlegs = \"complete\"\n"));
        let back = -only(&cut).body.z;
        assert!(back.z * toward > 0.9, "{code}: its back points to {back:?}");
    }
    for (code, toward) in [("OA", -1.0), ("OP", 1.0), ("SA", -1.0), ("SP", 1.0)] {
        let (_, cut) =
            cut(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{code}\"\nlegs = \"complete\"\n"));
        let back = -only(&cut).body.z;
        assert!(back.x * toward > 0.5, "{code}: x runs to her back, and its back points to {back:?}");
    }
}

/// The head in the cut is the head of the front: not a cm of it differs.
#[test]
fn the_head_is_the_same_head() {
    let (pose, cut) = cut("weeks = \"38+0\"\n[baby]\nposition = \"ROA\"\nhead-above-brim = \"3/5\"\n");
    let (_, front) = pose.posed().next().expect("a baby");
    for direction in [Vec3::new(0.0, 1.0, 0.0), Vec3::new(0.0, 0.0, 1.0), Vec3::new(1.0, 0.3, 0.2)] {
        let span = |baby: &PosedBaby| {
            let way = baby.head.direction(direction.normalized());
            baby.shape.piece(Piece::Head).span(way)
        };
        assert!((span(front) - span(only(&cut))).abs() < 0.03, "{} and {}", span(front), span(only(&cut)));
    }
}

/// The ends of the diameter that a plate draws lie on the posed surface, to 1 mm, in front and however the face is turned.
#[test]
fn presenting_diameters_end_on_the_surface() {
    for weeks in [34, 38, 40] {
        for rest in [
            "position = \"LOT\"\nattitude = \"flexed\"",
            "position = \"OA\"\nattitude = \"flexed\"",
            "position = \"LOT\"\nattitude = \"deflexed\"",
            "position = \"RFT\"",
            "position = \"RMT\"",
            "position = \"LMA\"",
        ] {
            let pose = posed(&format!("weeks = \"{weeks}+0\"\n[baby]\n{rest}\n"));
            let (_, baby) = pose.posed().next().expect("a baby");
            let found = diameter::presenting(baby);
            let skin = baby.shape.piece(Piece::Core);
            for end in found.ends {
                let off = skin.nearest(end).0.abs();
                assert!(off < 0.1, "{weeks} {rest}: {off} cm off the surface");
            }
        }
    }
}
