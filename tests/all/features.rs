//! Fine lines of the head on the posed form: on its skin, on both sides, none of hair on the face.

use handspan::body::curves::Curve;
use handspan::body::form::body::{Body, Sizes};
use handspan::body::form::features::{self, Features, hair};
use handspan::body::form::raster::{Layer, raster};
use handspan::body::form::rest::rest;
use handspan::body::form::subdivide::Subdivision;
use handspan::body::form::table::{FRANK, HEAD_DOWN};
use handspan::body::pose::CELL;
use handspan::units::Vec3;

#[test]
fn every_line_lies_on_the_skin_in_every_posture() {
    let rest = rest();
    let lines = Features::of(&rest);
    let finer = Subdivision::of(rest.points.len(), &rest.quads).expect("a closed skin");
    let part = finer.parts(&rest.part);
    for lean in [0.0, 1.0] {
        let body = Body::new(&rest, &Sizes { lean, ..Sizes::TERM });
        for (turn, posture) in HEAD_DOWN.iter().chain(&FRANK) {
            let skin = body.skin(posture);
            let face = features::face(&skin.points, &skin.bones, &rest);
            let curves = lines.on(&skin.points, &face, 1.0);
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
            for curve in curves.iter().filter(|curve| curve.name != "cleft") {
                for p in &curve.points {
                    let p = face.local(*p);
                    let at = cast.index_at(p.x, p.y).filter(|at| cast.hit(*at));
                    let before = at.map_or(f32::MIN, |at| p.z - cast.depth[at]);
                    assert!(before < 0.25, "{turn}, lean {lean}: {} floats {before} cm at {p:?}", curve.name);
                    near += usize::from(before > -0.25);
                }
            }
            assert!(near > 700, "{turn}, lean {lean}: {near} points are seen");
        }
    }
}

#[test]
fn lines_of_the_face_are_alike_on_both_sides() {
    let rest = rest();
    let skin = Body::new(&rest, &Sizes::TERM).skin(&HEAD_DOWN[8].1);
    let face = features::face(&skin.points, &skin.bones, &rest);
    let curves = Features::of(&rest).on(&skin.points, &face, 1.0);
    let middle = |curve: &Curve| {
        let sum = curve.points.iter().fold(Vec3::default(), |sum, p| sum + face.local(*p));
        sum * (1.0 / curve.points.len() as f32)
    };
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
    let skin = Body::new(&rest, &Sizes::TERM).skin(&HEAD_DOWN[2].1);
    let face = features::face(&skin.points, &skin.bones, &rest);
    let curves = Features::of(&rest).on(&skin.points, &face, 1.0);
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
