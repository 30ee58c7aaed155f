//! A body in space as glTF and STL: headers, counts, closed surfaces, sides, size; and what is refused.

use super::shared::{run_in, said};
use std::collections::BTreeMap;

/// The file that `draw` writes of a line.
fn drawn(line: &str, name: &str) -> Vec<u8> {
    let here = tempfile::tempdir().expect("a directory");
    let output = run_in(here.path(), &["draw", "--say", line, "-o", name], b"");
    assert!(said(&output).contains(&format!("wrote {name}: the baby in space")), "{}", said(&output));
    std::fs::read(here.path().join(name)).expect("the file")
}

fn number(bytes: &[u8], at: usize) -> u32 {
    u32::from_le_bytes(bytes[at..at + 4].try_into().expect("four bytes"))
}

fn float(bytes: &[u8], at: usize) -> f32 {
    f32::from_le_bytes(bytes[at..at + 4].try_into().expect("four bytes"))
}

/// The triangles of an STL.
fn triangles(stl: &[u8]) -> Vec<[[f32; 3]; 3]> {
    let count = number(stl, 80) as usize;
    assert_eq!(stl.len(), 84 + 50 * count);
    (0..count)
        .map(|i| [0, 1, 2].map(|v| [0, 1, 2].map(|k| float(stl, 84 + 50 * i + 12 + 12 * v + 4 * k))))
        .collect()
}

/// Every side of every triangle is met once in each direction: the surface is closed, and its inside is in.
#[test]
fn an_stl_is_closed_and_of_a_newborns_size() {
    let stl = drawn("38+0 LOA 3/5 palp", "lie.stl");
    assert!(!stl.starts_with(b"solid"));
    let all = triangles(&stl);
    let mut sides: BTreeMap<[[u32; 3]; 2], i32> = BTreeMap::new();
    let mut volume = 0.0f64;
    for triangle in &all {
        let corners = triangle.map(|p| p.map(f32::to_bits));
        let [p, q, r] = corners;
        for (a, b) in [(p, q), (q, r), (r, p)] {
            let (side, way) = if a < b { ([a, b], 1) } else { ([b, a], -1) };
            *sides.entry(side).or_default() += way;
        }
        let [a, b, c] = triangle.map(|p| p.map(f64::from));
        volume += (a[0] * (b[1] * c[2] - b[2] * c[1])
            + a[1] * (b[2] * c[0] - b[0] * c[2])
            + a[2] * (b[0] * c[1] - b[1] * c[0]))
            / 6.0;
    }
    assert!(sides.values().all(|sum| *sum == 0), "an edge that is met in one direction only");
    // About 3 kg of about the density of water, in cubic mm.
    assert!((1.8e6..4.5e6).contains(&volume), "{volume}");
}

/// Her left is +x: a back to her left has its baby's other side to her right; mirrored exams give mirrored corners.
#[test]
fn sides_are_hers_in_both_files() {
    let middle = |line: &str| {
        let all = triangles(&drawn(line, "lie.stl"));
        let sum: f64 = all.iter().flatten().map(|p| f64::from(p[0])).sum();
        sum / (3 * all.len()) as f64
    };
    // Lying across, turned over: its middle moves to the other side by as much.
    let across = middle("32+0 head right flank breech left flank back front");
    let other = middle("32+0 head left flank breech right flank back front");
    assert!((across + other).abs() < 0.5, "{across} {other}");
    let loa = triangles(&drawn("38+0 LOA 1/5 palp", "lie.stl"));
    let roa = triangles(&drawn("38+0 ROA 1/5 palp", "lie.stl"));
    let spread = |all: &[[[f32; 3]; 3]], sign: f32| {
        let mut xs: Vec<i64> = all.iter().flatten().map(|p| (p[0] * sign * 100.0).round() as i64).collect();
        xs.sort_unstable();
        xs
    };
    assert_eq!(spread(&loa, 1.0), spread(&roa, -1.0));
    // A deep head stands below the upper border of her pubic bone.
    let feet = |all: &[[[f32; 3]; 3]]| all.iter().flatten().map(|p| p[2]).fold(f32::MAX, f32::min);
    assert!(feet(&loa) < 0.0, "the head stands in the pelvis, below its brim");
}

#[test]
fn a_glb_has_its_header_named_parts_and_metres() {
    let glb = drawn("38+0 LOA 3/5 palp", "lie.glb");
    assert_eq!(&glb[..4], b"glTF");
    assert_eq!((number(&glb, 4), number(&glb, 8) as usize), (2, glb.len()));
    let text = number(&glb, 12) as usize;
    assert_eq!(&glb[16..20], b"JSON");
    let file: serde_json::Value = serde_json::from_slice(&glb[20..20 + text]).expect("JSON");
    let bytes = 20 + text;
    assert_eq!(&glb[bytes + 4..bytes + 8], b"BIN\0");
    assert_eq!(number(&glb, bytes) as usize, glb.len() - bytes - 8);
    assert_eq!(file["asset"]["version"], "2.0");
    let about = file["asset"]["extras"]["about"].as_str().expect("words");
    assert!(about.contains("back to her left, anterior") && about.contains("not a scan"), "{about}");
    let names: Vec<&str> =
        file["nodes"].as_array().expect("nodes").iter().filter_map(|n| n["name"].as_str()).collect();
    for part in ["head", "trunk", "left arm", "right arm", "left leg", "right leg"] {
        assert!(names.contains(&format!("baby 1: {part}").as_str()), "{part}: {names:?}");
    }
    assert!(file.get("textures").is_none() && file.get("images").is_none());
    let accessors = file["accessors"].as_array().expect("accessors");
    let mut triangles = 0;
    let (mut low, mut high) = ([f64::MAX; 3], [f64::MIN; 3]);
    for accessor in accessors {
        let (count, view) = (accessor["count"].as_u64().expect("a count"), &accessor["bufferView"]);
        let view = &file["bufferViews"][view.as_u64().expect("a view") as usize];
        let (from, long) =
            (view["byteOffset"].as_u64().expect("an offset"), view["byteLength"].as_u64().expect("a length"));
        assert!(from % 4 == 0 && (from + long) as usize <= glb.len() - bytes - 8);
        match accessor["type"].as_str() {
            Some("VEC3") => assert_eq!(long, 12 * count),
            _ => {
                assert_eq!(long, 4 * count);
                triangles += count / 3;
            }
        }
        if let Some(least) = accessor.get("min") {
            for (k, (low, high)) in low.iter_mut().zip(&mut high).enumerate() {
                *low = low.min(least[k].as_f64().expect("a number"));
                *high = high.max(accessor["max"][k].as_f64().expect("a number"));
            }
        }
    }
    let stl = drawn("38+0 LOA 3/5 palp", "lie.stl");
    assert_eq!(triangles, u64::from(number(&stl, 80)), "the same triangles in both files");
    // Curled up along a womb that leans, a baby at term reaches 18 to 45 cm upwards; and it stands in the pelvis.
    let tall = high[1] - low[1];
    assert!((0.18..0.45).contains(&tall) && low[1] < 0.0, "{tall} m from {}", low[1]);
}

#[test]
fn what_is_not_known_is_no_body() {
    let here = tempfile::tempdir().expect("a directory");
    for (line, name, why) in
        [("38+0 head above pubic bone", "lie.glb", "needs to know"), ("38+0", "lie.stl", "needs to know")]
    {
        let output = run_in(here.path(), &["draw", "--say", line, "-o", name], b"");
        assert!(
            !output.status.success() && String::from_utf8_lossy(&output.stderr).contains(why),
            "{output:?}"
        );
        assert!(!here.path().join(name).exists());
    }
    let output = run_in(here.path(), &["draw", "--say", "38+0 LOA", "-o", "lie.glb", "--width", "900"], b"");
    assert!(String::from_utf8_lossy(&output.stderr).contains("leave them out"), "{output:?}");
}
