//! Numbers, judged by others: the normal distribution by scipy, the printed newborn sizes by pygrowthstandards. `tests/run`
//! installs both.

use super::{file, run};
use crate::shared::{path, rows};
use handspan::reckon::curves::centile;
use std::path::Path;

#[test]
fn scipy_and_pygrowthstandards_agree() {
    let python = Path::new(env!("CARGO_TARGET_TMPDIR")).with_file_name("outside").join("numbers/bin/python");
    let lines: Vec<String> =
        (-600..=600).map(|z| f64::from(z) / 100.0).map(|z| format!("{z} {:?}\n", centile(z))).collect();
    let ours = file("centiles.txt", lines.concat().as_bytes());
    let (script, newborn) = (path("tests/outside/compare_numbers.py"), path("tests/published/newborn.csv"));
    let arguments = [&script, &ours, &newborn].map(|path| path.to_str().expect("a name"));
    let said = run(python.to_str().expect("a name"), &arguments);
    let cells = rows("newborn.csv").len() * 18;
    assert!(said.ends_with(&format!("{} centiles and {cells} cells compared\n", lines.len())), "{said}");
    // 028: the row of 40+0, as the worked rows print it.
    let worked = rows("worked.csv").into_iter().find(|row| row[0] == "028").expect("a row");
    assert!(worked[3].contains("3.38/3.26 kg") && worked[3].contains("49.9/49.2 cm"), "{worked:?}");
    let row = rows("newborn.csv").into_iter().find(|row| row[0] == "40+0").expect("a row");
    assert_eq!(
        [2, 5, 8, 11, 14, 17].map(|at| row[at].as_str()),
        ["3.38", "3.26", "49.9", "49.2", "34.3", "33.8"]
    );
}
