//! Fine lines of the head on the posed form: on its skin, on both sides, none of hair on the face.

use handspan::body::curves::Curve;
use handspan::body::form::body::{Body, Sizes, Skin};
use handspan::body::form::bone::HEAD;
use handspan::body::form::features::{Features, hair};
use handspan::body::form::landmark::Landmark;
use handspan::body::form::raster::{Layer, raster};
use handspan::body::form::rest::{Rest, rest};
use handspan::body::form::subdivide::Subdivision;
use handspan::body::form::table::{FOLDED, FRANK};
use handspan::body::frame::Frame;
use handspan::body::pose::CELL;
use handspan::units::{BabySide, Vec3};

/// The head's axes on a posed skin, from between the eyes.
fn face_of(skin: &Skin, rest: &Rest) -> Frame {
    let turn = skin.bones[HEAD].turn;
    let [a, b] = BabySide::BOTH.map(|side| skin.landmark(rest, Landmark::Eye, side));
    let axis = |x, y, z| turn.of(Vec3::new(x, y, z));
    Frame { x: axis(1.0, 0.0, 0.0), y: axis(0.0, 1.0, 0.0), z: axis(0.0, 0.0, 1.0), origin: a.lerp(b, 0.5) }
}

#[test]
fn every_line_lies_on_the_skin_in_every_posture() {
    let rest = rest();
    let lines = Features::of(&rest);
    let finer = Subdivision::of(rest.points.len(), &rest.quads).expect("a closed skin");
    let part = finer.parts(&rest.part);
    for lean in [0.0, 1.0] {
        let body = Body::new(&rest, &Sizes { lean, ..Sizes::TERM });
        for (turn, posture) in FOLDED.iter().chain(&FRANK) {
            let skin = body.skin(posture);
            let face = face_of(&skin, &rest);
            let curves = lines.on(&rest, &skin.points, &face, false);
            // Seen from before the face: what is not hidden there lies on what is seen.
            let turned: Vec<[f32; 3]> = finer
                .points(&skin.points)
                .iter()
                .map(|[x, y, z]| face.local(Vec3::new(*x, *y, *z)))
                .map(|p| [p.x, p.y, p.z])
                .collect();
            let cast =
                raster(&[Layer { points: &turned, quads: &finer.quads, part: &part, mirrored: false }], CELL);
            let mut near = 0;
            for curve in curves.iter().filter(|curve| !["crease", "back", "ear"].contains(&curve.name)) {
                for p in &curve.points {
                    let p = face.local(*p);
                    // Skin seen edge on tells nothing of depth.
                    let square = |at: &usize| cast.hit(*at) && cast.normal[*at].z > 0.5;
                    let at = cast.index_at(p.x, p.y).filter(square);
                    let before = at.map_or(f32::MIN, |at| p.z - cast.depth[at]);
                    assert!(before < 0.25, "{turn}, lean {lean}: {} floats {before} cm at {p:?}", curve.name);
                    near += usize::from(before > -0.25);
                }
            }
            assert!(near > 300, "{turn}, lean {lean}: {near} points are seen");
            // Ears are seen edge on from there: they lie near points of the skin.
            let around: Vec<Vec3> =
                turned.iter().map(|[x, y, z]| Vec3::new(*x, *y, *z)).filter(|p| p.x.abs() > 3.0).collect();
            for p in
                curves.iter().filter(|curve| curve.name == "ear").flat_map(|curve| &curve.points).step_by(5)
            {
                let p = face.local(*p);
                let off = around.iter().fold(f32::MAX, |m, q| m.min((*q - p).length()));
                assert!(off < 0.3, "{turn}, lean {lean}: an ear's line {off} cm off");
            }
        }
    }
}

#[test]
fn lines_of_the_face_are_alike_on_both_sides() {
    let rest = rest();
    let skin = Body::new(&rest, &Sizes::TERM).skin(&FOLDED[8].1);
    let face = face_of(&skin, &rest);
    let curves = Features::of(&rest).on(&rest, &skin.points, &face, false);
    let middle = |curve: &Curve| {
        let sum = curve.points.iter().fold(Vec3::default(), |sum, p| sum + face.local(*p));
        sum * (1.0 / curve.points.len() as f32)
    };
    // Reflected, every line is reflected: the whorl of the hair too.
    let points: Vec<[f32; 3]> = skin.points.iter().map(|[x, y, z]| [-x, *y, *z]).collect();
    let flip = |v: Vec3| Vec3::new(-v.x, v.y, v.z);
    let axes = Frame { x: -flip(face.x), y: flip(face.y), z: flip(face.z), origin: flip(face.origin) };
    let reflected = Features::of(&rest).on(&rest, &points, &axes, true);
    for (a, b) in curves.iter().zip(&reflected) {
        assert!(a.points.iter().zip(&b.points).all(|(p, q)| (*p - flip(*q)).length() < 1e-4), "{}", a.name);
    }
    for name in ["face", "brow", "ear"] {
        let middles: Vec<Vec3> = curves.iter().filter(|curve| curve.name == name).map(middle).collect();
        assert!(middles.len() >= 6, "{name}");
        for p in &middles {
            let twin = Vec3::new(-p.x, p.y, p.z);
            assert!(middles.iter().any(|q| (*q - twin).length() < 0.05), "{name}: nothing opposite {p:?}");
        }
    }
}

#[test]
fn hair_grows_on_the_scalp_and_thins_out_towards_the_face() {
    let rest = rest();
    let skin = Body::new(&rest, &Sizes::TERM).skin(&FOLDED[2].1);
    let face = face_of(&skin, &rest);
    let curves = Features::of(&rest).on(&rest, &skin.points, &face, false);
    let hairs: Vec<&Curve> = curves.iter().filter(|curve| curve.name == "hair").collect();
    assert!((250..900).contains(&hairs.len()), "{} hairs", hairs.len());
    let (mut long, mut short) = (vec![], vec![]);
    for curve in hairs {
        let root = face.local(curve.points[0]);
        assert!(hair(root) > 0.0 && root.y > -2.5, "{root:?}");
        assert!(root.z < 0.0 || root.y > 2.0, "hair on the face: {root:?}");
        let length: f32 = curve.points.windows(2).map(|w| (w[1] - w[0]).length()).sum();
        if hair(root) > 0.9 {
            long.push(length)
        } else if hair(root) < 0.5 {
            short.push(length)
        }
    }
    let mean = |all: &[f32]| all.iter().sum::<f32>() / all.len() as f32;
    assert!(long.len() > 60 && short.len() > 10, "{} and {}", long.len(), short.len());
    assert!(mean(&short) < 0.8 * mean(&long), "{} and {}", mean(&short), mean(&long));
}
