//! A solid as binary STL, for printing. In: babies as solids. Out: bytes, in mm: x to her left, y to her back, z up, so that a printer
//! has it upright.

use crate::body::solid::Solid;
use crate::units::Vec3;

/// Mm in a cm.
const MM: f32 = 10.0;
/// What stands at the head of the file; 80 bytes, and it may not begin with `solid`.
const HEAD: &[u8] = b"handspan, mm. x: her left, y: her back, z: up. From hands, not a scan.";

fn upright(p: Vec3) -> Vec3 {
    Vec3::new(p.x, -p.z, p.y) * MM
}

/// The file.
pub fn stl(babies: &[Solid]) -> Vec<u8> {
    let count: usize = babies.iter().map(|solid| solid.triangles.len()).sum();
    let mut head = HEAD.to_vec();
    head.resize(80, b' ');
    let mut out = head;
    out.extend((count as u32).to_le_bytes());
    for solid in babies {
        for (triangle, _) in &solid.triangles {
            let corners = triangle.map(|v| upright(solid.corners[v as usize]));
            let [a, b, c] = corners;
            let way = (b - a).cross(c - a);
            let way = if way.length() > 0.0 { way * (1.0 / way.length()) } else { Vec3::default() };
            for v in [way, a, b, c] {
                for number in [v.x, v.y, v.z] {
                    out.extend(number.to_le_bytes());
                }
            }
            out.extend([0, 0]);
        }
    }
    out
}
