//! A solid as glTF 2.0 in one binary file. In: babies as solids, what is to be said of them. Out: bytes: one scene, a node for each
//! baby and under it one for head, trunk, arms and legs, in metres, y up, her front towards +z, her left +x; no textures.
//!
//! Source: glTF 2.0 specification, Khronos Group (ISO/IEC 12113:2022).

use crate::body::part::Region;
use crate::body::solid::Solid;
use crate::units::{BabySide, Vec3};
use serde_json::{Value, json};

/// Metres in a cm.
const METRES: f32 = 0.01;
/// A dull wash that is nobody's skin: red, green, blue, opaque.
const COLOUR: [f32; 4] = [0.83, 0.67, 0.55, 1.0];
/// Numbers of the standard: 32-bit floats, 32-bit counts; corners, and which of them make triangles.
const FLOAT: u32 = 5126;
const COUNT: u32 = 5125;
const CORNERS: u32 = 34962;
const TRIANGLES: u32 = 34963;

/// The parts of a baby, named by its own sides.
fn regions() -> [(Region, &'static str); 6] {
    let [left, right] = BabySide::BOTH;
    [
        (Region::Head, "head"),
        (Region::Trunk, "trunk"),
        (Region::Arm(left), "left arm"),
        (Region::Arm(right), "right arm"),
        (Region::Leg(left), "left leg"),
        (Region::Leg(right), "right leg"),
    ]
}

/// Buffers and what lies where in them.
#[derive(Default)]
struct Packed {
    bytes: Vec<u8>,
    views: Vec<Value>,
    accessors: Vec<Value>,
}

impl Packed {
    /// Puts bytes away; the number of what tells where they lie.
    fn put(&mut self, bytes: &[u8], target: u32, mut about: Value) -> usize {
        self.views.push(json!({
            "buffer": 0, "byteOffset": self.bytes.len(), "byteLength": bytes.len(), "target": target
        }));
        self.bytes.extend_from_slice(bytes);
        about["bufferView"] = json!(self.views.len() - 1);
        self.accessors.push(about);
        self.accessors.len() - 1
    }

    fn vectors(&mut self, all: &[Vec3], bounds: bool) -> usize {
        let bytes: Vec<u8> = all.iter().flat_map(|v| [v.x, v.y, v.z]).flat_map(f32::to_le_bytes).collect();
        let mut about = json!({ "componentType": FLOAT, "count": all.len(), "type": "VEC3" });
        if bounds {
            let least = |a: f32, b: f32| a.min(b);
            let most = |a: f32, b: f32| a.max(b);
            let fold = |by: &dyn Fn(f32, f32) -> f32| {
                let first = all.first().copied().unwrap_or_default();
                let end = all.iter().fold(first, |m, v| Vec3::new(by(m.x, v.x), by(m.y, v.y), by(m.z, v.z)));
                [end.x, end.y, end.z].map(f64::from)
            };
            about["min"] = json!(fold(&least));
            about["max"] = json!(fold(&most));
        }
        self.put(&bytes, CORNERS, about)
    }
}

/// The file. `babies`: each with its number; `about`: what is said of it all.
pub fn glb(babies: &[(usize, Solid)], about: &str) -> Vec<u8> {
    let mut packed = Packed::default();
    let (mut nodes, mut meshes, mut roots): (Vec<Value>, Vec<Value>, Vec<usize>) = (vec![], vec![], vec![]);
    for (number, solid) in babies {
        let outward = solid.outward();
        let mut children = vec![];
        for (region, name) in regions() {
            let mut own: Vec<Option<u32>> = vec![None; solid.corners.len()];
            let (mut corners, mut ways, mut indices) = (vec![], vec![], vec![]);
            for v in solid.of_region(region).flatten() {
                let at = v as usize;
                let index = *own[at].get_or_insert_with(|| {
                    corners.push(solid.corners[at] * METRES);
                    ways.push(outward[at]);
                    corners.len() as u32 - 1
                });
                indices.extend(index.to_le_bytes());
            }
            if corners.is_empty() {
                continue;
            }
            let position = packed.vectors(&corners, true);
            let normal = packed.vectors(&ways, false);
            let count = json!({ "componentType": COUNT, "count": indices.len() / 4, "type": "SCALAR" });
            let triangles = packed.put(&indices, TRIANGLES, count);
            let full = format!("baby {number}: {name}");
            meshes.push(json!({
                "name": full,
                "primitives": [{
                    "attributes": { "POSITION": position, "NORMAL": normal }, "indices": triangles, "material": 0
                }]
            }));
            nodes.push(json!({ "name": full, "mesh": meshes.len() - 1 }));
            children.push(nodes.len() - 1);
        }
        nodes.push(json!({ "name": format!("baby {number}"), "children": children }));
        roots.push(nodes.len() - 1);
    }
    let file = json!({
        "asset": {
            "version": "2.0",
            "generator": concat!("handspan ", env!("CARGO_PKG_VERSION")),
            "extras": { "about": about }
        },
        "scene": 0,
        "scenes": [{ "nodes": roots }],
        "nodes": nodes,
        "meshes": meshes,
        "materials": [{
            "name": "neutral",
            "pbrMetallicRoughness": {
                "baseColorFactor": COLOUR.map(f64::from), "metallicFactor": 0.0, "roughnessFactor": 0.9
            }
        }],
        "accessors": packed.accessors,
        "bufferViews": packed.views,
        "buffers": [{ "byteLength": packed.bytes.len() }]
    });
    let mut text = file.to_string().into_bytes();
    text.resize(text.len().next_multiple_of(4), b' ');
    packed.bytes.resize(packed.bytes.len().next_multiple_of(4), 0);
    let length = 12 + 8 + text.len() + 8 + packed.bytes.len();
    let mut out = Vec::with_capacity(length);
    out.extend(b"glTF");
    out.extend(2_u32.to_le_bytes());
    out.extend((length as u32).to_le_bytes());
    for (kind, chunk) in [(b"JSON", &text), (b"BIN\0", &packed.bytes)] {
        out.extend((chunk.len() as u32).to_le_bytes());
        out.extend(kind);
        out.extend(chunk);
    }
    out
}
