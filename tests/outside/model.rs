//! A body in space, judged by others: trimesh for both files, the validator of Khronos for the glTF.

use crate::shared::{path, run_in, said};
use std::path::Path;
use std::process::Command;

#[test]
fn trimesh_and_the_validator_take_both_files() {
    let here = tempfile::tempdir().expect("a directory");
    let tools = Path::new(env!("CARGO_TARGET_TMPDIR")).with_file_name("outside").join("model");
    for line in
        ["38+0 LOA 3/5 palp", "36+0 RSP legs frank", "32+0 head left flank breech right flank back front"]
    {
        for name in ["lie.glb", "lie.stl"] {
            let made = run_in(here.path(), &["draw", "--say", line, "-o", name, "--force"], b"");
            assert!(here.path().join(name).exists(), "{}", said(&made));
        }
        let judged = Command::new(tools.join("venv/bin/python"))
            .arg(path("tests/outside/read_model.py"))
            .args(["lie.glb", "lie.stl"].map(|name| here.path().join(name)))
            .output()
            .expect("python runs; tests/run installs it");
        assert_eq!(said(&judged), "6 parts, watertight, one volume, no fault\n", "{line}");
        let judged = Command::new("node")
            .arg(path("tests/outside/validate_model.cjs"))
            .args([tools.join("node_modules/gltf-validator"), here.path().join("lie.glb")])
            .output()
            .expect("node runs");
        assert_eq!(said(&judged), "0 errors, 0 warnings\n", "{line}");
    }
}
