//! The raster and the finer mesh: known shapes without a pinhole, at their depth, with their normals; mirrored shapes in
//! mirrored cells, bit for bit.

use handspan::body::cast::Cast;
use handspan::body::form::raster::{Layer, raster};
use handspan::body::form::subdivide::Subdivision;
use handspan::body::part::Part;
use handspan::body::pose::CELL;
use handspan::units::BabySide;

/// A closed mesh.
struct Mesh {
    points: Vec<[f32; 3]>,
    quads: Vec<[u16; 4]>,
    part: Vec<Part>,
}

impl Mesh {
    fn layer(&self) -> Layer<'_> {
        Layer { points: &self.points, quads: &self.quads, part: &self.part, mirrored: false }
    }

    /// A cube round the origin, each side cut into `n` x `n` quads, its points moved by `place`.
    fn cube(n: u16, place: impl Fn([f32; 3]) -> [f32; 3]) -> Mesh {
        let (mut points, mut quads) = (vec![], vec![]);
        let mut known = std::collections::BTreeMap::new();
        for axis in 0..3 {
            for far in [false, true] {
                for (i, j) in (0..n).flat_map(|i| (0..n).map(move |j| (i, j))) {
                    let mut corner = |i: u16, j: u16| {
                        let mut at = [0; 3];
                        at[axis] = if far { n } else { 0 };
                        at[(axis + 1) % 3] = i;
                        at[(axis + 2) % 3] = j;
                        *known.entry(at).or_insert_with(|| {
                            points.push(place(at.map(|k| 2.0 * f32::from(k) / f32::from(n) - 1.0)));
                            points.len() as u16 - 1
                        })
                    };
                    let mut quad = [corner(i, j), corner(i + 1, j), corner(i + 1, j + 1), corner(i, j + 1)];
                    if !far {
                        quad.reverse();
                    }
                    quads.push(quad);
                }
            }
        }
        let part = (0..quads.len()).map(|i| Part::thigh(BabySide::BOTH[i % 2])).collect();
        Mesh { points, quads, part }
    }

    fn sphere(n: u16, radius: f32, middle: [f32; 3]) -> Mesh {
        Mesh::cube(n, |p| {
            let by = radius / (p[0] * p[0] + p[1] * p[1] + p[2] * p[2]).sqrt();
            [0, 1, 2].map(|k| middle[k] + p[k] * by)
        })
    }

    fn finer(&self) -> Mesh {
        let finer = Subdivision::of(self.points.len(), &self.quads).expect("closed");
        Mesh { points: finer.points(&self.points), part: finer.parts(&self.part), quads: finer.quads }
    }
}

/// Empty cells with met ones on all four sides.
fn pinholes(cast: &Cast) -> usize {
    let w = cast.width;
    let inner = (1..cast.height - 1).flat_map(|j| (1..w - 1).map(move |i| j * w + i));
    inner.filter(|&at| !cast.hit(at) && [at - 1, at + 1, at - w, at + w].iter().all(|&k| cast.hit(k))).count()
}

#[test]
fn a_sphere_is_met_where_it_lies() {
    let (middle, radius) = ([1.37f32, 4.2, -2.0], 5.3f32);
    let mesh = Mesh::sphere(24, radius, middle);
    let cast = raster(&[mesh.layer()], CELL);
    assert_eq!(pinholes(&cast), 0);
    let (mut met, mut unlike) = (0, 0);
    for j in 0..cast.height {
        for i in 0..cast.width {
            let ((x, y), at) = (cast.centre(i, j), j * cast.width + i);
            let (dx, dy) = (x - middle[0], y - middle[1]);
            let inside = radius * radius - dx * dx - dy * dy;
            // A flat face lies within the round.
            assert!(!(cast.hit(at) && inside < -0.01), "{x} {y}");
            if cast.hit(at) && inside > 1.0 {
                let z = inside.sqrt();
                assert!((cast.depth[at] - middle[2] - z).abs() < 0.05, "{x} {y}");
                let n = cast.normal[at];
                assert!((n.x * dx + n.y * dy + n.z * z) / radius > 0.998, "{x} {y}: {n:?}");
            }
            met += usize::from(cast.hit(at));
            unlike += usize::from(cast.hit(at) != (inside > 0.0));
        }
    }
    let area = met as f32 * CELL * CELL;
    assert!((area / (std::f32::consts::PI * radius * radius) - 1.0).abs() < 0.01, "{area}");
    assert!(unlike * 100 < met, "{unlike} of {met}");
}

#[test]
fn a_tilted_plate_is_covered_whole_and_its_depth_is_exact() {
    // Its edges run through middles of cells; two quads meet in the middle.
    let side = 64.0 * CELL;
    let mesh = Mesh::cube(2, |[x, y, z]| {
        [x * side + 0.5 * CELL, y * side + 0.5 * CELL, x * 3.0 + y * 2.0 + z * 0.1]
    });
    let cast = raster(&[mesh.layer()], CELL);
    assert_eq!(cast.hits().count(), 129 * 129, "with both edges");
    for (x, y, at) in cast.hits() {
        let z = (x - 0.5 * CELL) / side * 3.0 + (y - 0.5 * CELL) / side * 2.0 + 0.1;
        assert!((cast.depth[at] - z).abs() < 1e-4, "{x} {y}: {} {z}", cast.depth[at]);
    }
}

#[test]
fn what_is_nearer_is_seen_and_of_two_alike_the_first() {
    let low = Mesh { part: vec![Part::HEAD; 6 * 64], ..Mesh::sphere(8, 3.0, [0.0, 0.0, 0.0]) };
    let high = Mesh { part: vec![Part::TRUNK; 6 * 64], ..Mesh::sphere(8, 1.0, [0.0, 0.0, 5.0]) };
    let both = raster(&[low.layer(), high.layer()], CELL);
    let part = |cast: &Cast, x: f32, y: f32| cast.part[cast.index_at(x, y).expect("within")];
    assert_eq!(part(&both, 0.0, 0.0), Part::TRUNK);
    assert_eq!(part(&both, 2.0, 0.0), Part::HEAD);
    let twice = Mesh { part: vec![Part::FACE; 6 * 64], ..Mesh::sphere(8, 3.0, [0.0, 0.0, 0.0]) };
    let alike = raster(&[low.layer(), twice.layer()], CELL);
    assert!(alike.hits().all(|(_, _, at)| alike.part[at] == Part::HEAD));
}

#[test]
fn nothing_gives_an_empty_picture() {
    let cast = raster(&[], CELL);
    assert_eq!((cast.width, cast.height, cast.hits().count()), (0, 0, 0));
}

#[test]
fn a_mirrored_mesh_is_met_in_mirrored_cells_bit_for_bit() {
    // Lopsided, aslant, and with a second mesh through it.
    let bent = |[x, y, z]: [f32; 3]| [2.0 + x * 4.1 + y * y, y * 5.3 + 0.7 * x * z, z * 3.0 + 0.4 * x * y];
    let meshes = [Mesh::cube(7, bent).finer(), Mesh::sphere(6, 3.3, [0.4, 1.1, 0.9]).finer()];
    let turned: Vec<Mesh> = meshes
        .iter()
        .map(|mesh| Mesh {
            points: mesh.points.iter().map(|[x, y, z]| [-x, *y, *z]).collect(),
            quads: mesh.quads.clone(),
            part: mesh.part.clone(),
        })
        .collect();
    let a = raster(&meshes.each_ref().map(Mesh::layer), CELL);
    let mirrored: Vec<Layer> = turned.iter().map(|m| Layer { mirrored: true, ..m.layer() }).collect();
    let b = raster(&mirrored, CELL);
    assert_eq!((a.width, a.height, a.top.to_bits()), (b.width, b.height, b.top.to_bits()));
    assert_eq!(a.left.to_bits(), (-(b.left + b.width as f32 * b.cell)).to_bits());
    assert!(a.hits().count() > 10_000);
    for j in 0..a.height {
        for i in 0..a.width {
            let (p, q) = (j * a.width + i, j * a.width + (a.width - 1 - i));
            assert_eq!(a.depth[p].to_bits(), b.depth[q].to_bits(), "{i} {j}");
            assert_eq!(a.part[p], b.part[q], "{i} {j}");
            let (m, n) = (a.normal[p], b.normal[q]);
            assert_eq!((m.x, m.y, m.z), (-n.x, n.y, n.z), "{i} {j}");
        }
    }
}

#[test]
fn a_finer_mesh_is_closed_round_and_symmetric() {
    let cube = Mesh::cube(1, |p| p);
    let finer = cube.finer();
    assert_eq!((finer.points.len(), finer.quads.len()), (26, 24));
    // Known values: a corner of the cube goes to 5/9, the middle of an edge to 3/4, of a side it stays.
    for (i, p) in finer.points.iter().enumerate() {
        let mut want = match i {
            0..8 => [5.0 / 9.0; 3],
            8..20 => [0.0, 0.75, 0.75],
            _ => [0.0, 0.0, 1.0],
        };
        let mut got = p.map(f32::abs);
        got.sort_by(f32::total_cmp);
        want.sort_by(f32::total_cmp);
        assert!((0..3).all(|k| (got[k] - want[k]).abs() < 1e-6), "{i}: {p:?}");
    }
    // Twice the quads of a quad meet at each of its edges' middles, and all is closed again.
    assert!(Subdivision::of(finer.points.len(), &finer.quads).is_some());
    let sphere = Mesh::sphere(5, 4.0, [0.0; 3]).finer();
    for p in &sphere.points {
        let r = (p[0] * p[0] + p[1] * p[1] + p[2] * p[2]).sqrt();
        assert!((3.7..4.01).contains(&r), "{p:?}");
    }
    let flipped: Vec<[f32; 3]> = cube.points.iter().map(|[x, y, z]| [-x + 0.3, *y, *z * 1.7]).collect();
    let plain: Vec<[f32; 3]> = cube.points.iter().map(|[x, y, z]| [x - 0.3, *y, *z * 1.7]).collect();
    let how = Subdivision::of(8, &cube.quads).expect("closed");
    for (p, q) in how.points(&plain).iter().zip(how.points(&flipped)) {
        assert_eq!((p[0], p[1], p[2]), (-q[0], q[1], q[2]));
    }
}

#[test]
fn an_open_mesh_is_refused() {
    let cube = Mesh::cube(2, |p| p);
    assert!(Subdivision::of(cube.points.len(), &cube.quads[1..]).is_none());
    assert!(Subdivision::of(3, &cube.quads).is_none(), "corners that are not there");
    let tripled: Vec<[u16; 4]> = cube.quads.iter().chain(&cube.quads).copied().collect();
    assert!(Subdivision::of(cube.points.len(), &tripled).is_none(), "four quads at an edge");
}
