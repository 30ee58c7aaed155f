//! The one form behind the door: placed, measured, mirrored.

use crate::gauge;
use crate::shared::rows;
use handspan::body::baby::Posture;
use handspan::body::head;
use handspan::body::measures::Measures;
use handspan::body::place::Placed;
use handspan::body::place::place;
use handspan::body::plan::{Depth, Lying};
use handspan::body::shape::{self, Piece};
use handspan::body::twins;
use handspan::exam::{Attitude, Legs, Lie};
use handspan::units::{BabySide, MotherSide, Vec3};

/// A baby of the one form with its head down and its back this far from her front towards her left, degrees.
fn head_down(weeks: f64, degrees: f32, fifths: u8, attitude: Attitude) -> Placed {
    let (sin, cos) = libm::sincosf(degrees.to_radians());
    put(
        Vec3::new(0.0, -1.0, 0.0),
        Vec3::new(sin, 0.0, cos),
        weeks,
        Depth::Fifths(fifths),
        attitude,
        Legs::Complete,
    )
}

fn put(up: Vec3, back: Vec3, weeks: f64, depth: Depth, attitude: Attitude, legs: Legs) -> Placed {
    put_under(32.0, up, back, weeks, depth, attitude, legs)
}

fn put_under(
    fundus: f32,
    up: Vec3,
    back: Vec3,
    weeks: f64,
    depth: Depth,
    attitude: Attitude,
    legs: Legs,
) -> Placed {
    let lie = if up.x.abs() > 0.9 { Lie::Transverse } else { Lie::Longitudinal };
    let lying = Lying {
        up,
        lie,
        attitude,
        legs,
        foot_untold: false,
        depth,
        level: None,
        unsure: false,
        legs_known: true,
    };
    let posture = Posture {
        up,
        back,
        attitude,
        legs,
        curl: 1.0,
        measures: Measures::at(weeks),
        favour: MotherSide::Left,
    };
    place(&lying, posture, fundus, &[])
}

/// Head and trunk under tape and callipers, as `measured.rs` holds them for the body that is drawn.
#[test]
fn the_placed_mesh_measures_what_the_tables_say() {
    let one = |name: &str, weeks: u32| -> f32 {
        let row = rows("biometry.csv").into_iter().find(|row| row[0] == name && row[1] == weeks.to_string());
        row.expect("a row")[3].parse::<f32>().expect("a median in mm") / 10.0
    };
    const SKIN: f32 = 0.35;
    for weeks in [28, 32, 36, 40] {
        let placed = head_down(f64::from(weeks), 45.0, 4, Attitude::Flexed);
        let size = gauge::head_size(&placed.baby);
        for (what, surface, wanted) in [
            ("girth", size.girth, one("HC", weeks) + SKIN * std::f32::consts::PI),
            ("breadth", size.breadth, one("BPD", weeks) + SKIN),
            ("length", size.length, one("OFD", weeks) + SKIN),
        ] {
            assert!((surface / wanted - 1.0).abs() < 0.03, "{weeks} {what}: {surface}, not {wanted}");
        }
    }
}

/// Between brim and fundus: a baby is curled, tilted, and only then smaller; what is asked for holds on its skin.
#[test]
fn the_top_of_the_womb_is_where_it_was_asked_for() {
    for (weeks, fundus) in [(38.0, 32.0), (38.0, 27.0), (38.0, 24.5), (40.0, 24.0), (34.0, 23.0)] {
        for degrees in [0.0, 45.0, 90.0, 135.0, 180.0] {
            let (sin, cos) = libm::sincosf(f32::to_radians(degrees));
            let (up, back) = (Vec3::new(0.0, -1.0, 0.0), Vec3::new(sin, 0.0, cos));
            let depth = Depth::Lowest(-1.4);
            let placed = put_under(fundus, up, back, weeks, depth, Attitude::Flexed, Legs::Complete);
            let baby = &placed.baby;
            let top = baby.shape.reach(Vec3::new(0.0, 1.0, 0.0));
            let lowest = baby.shape.piece(Piece::Head).extreme(Vec3::new(0.0, -1.0, 0.0)).y;
            assert!((lowest + 1.4).abs() < 0.01, "{weeks} {fundus} {degrees}: {lowest}");
            assert!(placed.misfit < 0.01, "{weeks} {fundus} {degrees}: {} too high", placed.misfit);
            assert!(top < fundus - 1.0, "{weeks} {fundus} {degrees}: {top}");
            let share = baby.posture.measures.length / Measures::at(weeks).length;
            assert!((0.849..=1.0).contains(&share) && placed.smaller == (share < 0.999), "{share}");
        }
    }
}

/// Left and right are the baby's own, and its back is where it was said, from both ends.
#[test]
fn sides_of_the_mesh_are_the_babys_own() {
    for degrees in [0.0f32, 45.0, 90.0, 135.0, 180.0, -45.0, -90.0, -135.0] {
        for up in [-1.0, 1.0] {
            let (sin, cos) = libm::sincosf(degrees.to_radians());
            let back = Vec3::new(sin, 0.0, cos);
            let depth = Depth::Lowest(1.0);
            let up = Vec3::new(0.0, up, 0.0);
            let baby = put(up, back, 37.0, depth, Attitude::Flexed, Legs::Complete).baby;
            let spine = baby.spine.chest.origin;
            for side in BabySide::BOTH {
                let i = side.index();
                assert!(baby.legs[i].hip.x * side.sign() > 1.0, "{degrees}: hip");
                assert!((baby.arms[i].shoulder.x - spine.x) * side.sign() > 1.0, "{degrees}: shoulder");
                let hand = baby.body.local(baby.shape.piece(Piece::Hand(side)).spread()[0]);
                assert!((hand - baby.arms[i].wrist).length() < 7.0, "{degrees}: {side:?} hand");
                let foot = baby.body.local(baby.shape.piece(Piece::Foot(side)).spread()[0]);
                assert!((foot - baby.legs[i].ankle).length() < 7.0, "{degrees}: {side:?} foot");
            }
            // The skin of the back is met first from where the back was said to be.
            let chest = baby.body.point(spine);
            let from =
                baby.shape.piece(Piece::Trunk).ray(chest + back * 30.0, -back, 30.0).expect("its back");
            assert!(baby.spine.chest.within(&baby.body).local(from).z < 0.0, "{degrees}");
        }
    }
}

/// Two babies are parted by their largest overlap and what lies between: neither passes into the other.
#[test]
fn two_meshes_part() {
    let depth = Depth::Lowest(1.0);
    let baby = |up: Vec3, back: Vec3| put(up, back, 34.0, depth, Attitude::Flexed, Legs::Complete).baby;
    let (down, rise) = (Vec3::new(0.0, -1.0, 0.0), Vec3::new(0.0, 1.0, 0.0));
    let across = Vec3::new(1.0, 0.06, 0.0);
    let front = Vec3::new(0.0, 0.0, 1.0);
    for (one, two, lies) in [
        (baby(down, front), baby(rise, front), [Lie::Longitudinal; 2]),
        (baby(down, Vec3::new(1.0, 0.0, 0.0)), baby(down, Vec3::new(-1.0, 0.0, 0.0)), [Lie::Longitudinal; 2]),
        (baby(down, front), baby(across, front), [Lie::Longitudinal, Lie::Transverse]),
        (baby(across, front), baby(rise, front), [Lie::Transverse, Lie::Longitudinal]),
    ] {
        let [a, b] = twins::apart([&one, &two], lies, 1.0, 6.0);
        let (one, two) = (one.moved(a), two.moved(b));
        for p in one.shape.spread().into_iter().step_by(9) {
            assert!(two.shape.nearest(p).0 > 0.0, "{lies:?}: {p:?}");
        }
    }
}

/// A ray from the viewer meets what the picture shows.
#[test]
fn hands_meet_what_is_drawn() {
    let depth = Depth::Lowest(-1.4);
    let (up, back) = (Vec3::new(0.0, -1.0, 0.0), Vec3::new(0.7, 0.0, 0.7));
    let baby = put(up, back, 38.0, depth, Attitude::Flexed, Legs::Complete).baby;
    let cast = shape::cast([&baby.shape].into_iter(), 0.1, false).expect("a cast");
    let (mut met, mut unlike) = (0, 0);
    for (x, y, i) in cast.hits().step_by(37) {
        let Some(under) = baby.shape.under(x, y) else {
            unlike += 1;
            continue;
        };
        met += 1;
        unlike += usize::from((under.at.z - cast.depth[i]).abs() > 0.25 || under.part != cast.part[i]);
    }
    assert!(met > 300 && unlike * 20 < met, "{unlike} of {met}");
}

#[test]
fn fifths_hold_on_the_mesh() {
    for weeks in [28.0, 34.0, 40.0] {
        for fifths in 0..=5 {
            for degrees in [0.0, 45.0, 90.0, 135.0, 180.0, -45.0] {
                let placed = head_down(weeks, degrees, fifths, Attitude::Flexed);
                let height = head::HEIGHT * placed.baby.posture.measures.head;
                let above =
                    placed.baby.shape.piece(Piece::Head).extreme(Vec3::new(0.0, -1.0, 0.0)).y + height;
                assert!(
                    (above - f32::from(fifths) / 5.0 * height).abs() < 0.01,
                    "{weeks} {fifths} {degrees}"
                );
            }
        }
    }
}

#[test]
fn mirrored_babies_are_mirrored_bit_for_bit() {
    for (up, back) in [
        (Vec3::new(0.0, -1.0, 0.0), Vec3::new(0.6, 0.0, 0.8)),
        (Vec3::new(0.0, 1.0, 0.0), Vec3::new(1.0, 0.0, 0.0)),
        (Vec3::new(1.0, 0.06, 0.0), Vec3::new(0.0, 0.0, 1.0)),
    ] {
        let depth = Depth::Lowest(1.0);
        let turned = |v: Vec3| Vec3::new(-v.x, v.y, v.z);
        let one = put(up, back, 36.0, depth, Attitude::Flexed, Legs::Complete).baby;
        let other = put(turned(up), turned(back), 36.0, depth, Attitude::Flexed, Legs::Complete).baby;
        let a = shape::cast([&one.shape].into_iter(), 0.1, false).expect("a cast");
        let b = shape::cast([&other.shape].into_iter(), 0.1, false).expect("a cast");
        assert_eq!((a.width, a.height), (b.width, b.height));
        let mut met = 0;
        for j in 0..a.height {
            for i in 0..a.width {
                let (p, q) = (j * a.width + i, j * a.width + a.width - 1 - i);
                assert_eq!(a.depth[p].to_bits(), b.depth[q].to_bits());
                assert_eq!(a.part[p].mirrored(), b.part[q]);
                met += usize::from(a.hit(p));
            }
        }
        assert!(met > 5000, "{met}");
        assert!((turned(one.body.y) - other.body.y).length() < 1e-6);
        assert!((turned(one.head.origin) - other.head.origin).length() < 1e-4);
        let hands = [&one, &other].map(|baby| baby.arms.map(|arm| baby.body.point(arm.wrist)));
        assert!((turned(hands[0][0]) - hands[1][1]).length() < 1e-3);
    }
}
