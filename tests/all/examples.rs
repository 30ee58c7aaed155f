//! Every example passes the check and is what its comment says.

use super::shared::{path, run, said};
use std::collections::BTreeMap;
use std::fs;

/// What each visit must conclude, and with which exit code.
const VISITS: [(&str, i32, &str); 16] = [
    ("back-to-back", 0, "right occipito-posterior (ROP). Not engaged: 4/5"),
    ("bleeding", 3, "[hard-tender-womb]"),
    ("crosswise", 0, "Transverse lie, head to her right, back towards her feet."),
    ("dated-by-scan", 0, "at 37+3 weeks"),
    ("does-not-agree", 1, "[position-against-findings]"),
    ("earlier-caesarean", 0, "Uterine incision: not known."),
    ("fibroid", 0, "Fibroids: left, at navel."),
    ("head-down-left", 0, "left occipito-anterior (LOA). Engaged: 2/5 palpable above the brim."),
    ("head-extended", 0, "Cephalic prominence: on the side of the back."),
    ("heart-not-heard", 3, "[heart-not-heard]"),
    ("large-build", 0, "Head: could not tell (thick wall)."),
    ("position-only", 0, "Face presentation, back to her left, anterior: right mento-posterior (RMP)."),
    ("probably-breech", 0, "Breech presentation, back to her left. No position is named"),
    ("slanting", 0, "Oblique lie, head low on her left, back anterior."),
    ("twelve-weeks", 0, "Fundus: just above pubic bone."),
    ("twins", 0, "Baby 2: Breech presentation, back to her left, lateral: left sacro-transverse (LST)."),
];

#[test]
fn every_example_is_read_and_says_what_it_shows() {
    let mut expected: BTreeMap<&str, (i32, &str)> =
        VISITS.iter().map(|(name, code, words)| (*name, (*code, *words))).collect();
    for entry in fs::read_dir(path("examples")).expect("examples") {
        let file = entry.expect("an entry").path();
        if file.is_dir() {
            continue; // pictures, not visits
        }
        let name = file.file_stem().and_then(|stem| stem.to_str()).expect("a name").to_owned();
        let text = fs::read_to_string(&file).expect("an example");
        assert!(text.starts_with("# "), "{name} has no comment");
        assert!(text.lines().all(|line| line.chars().count() <= 130), "{name} has a long line");
        if name == "clinic" {
            continue;
        }
        assert!(text.contains("\n# For a"), "{name} does not say who would use it");
        let (code, words) =
            expected.remove(name.as_str()).unwrap_or_else(|| panic!("{name} is not in the list of visits"));
        let output = run(&["check", &format!("examples/{name}.toml")]);
        let said = said(&output);
        assert_eq!(output.status.code(), Some(code), "{said}");
        let one_line = said.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(one_line.contains(words), "{name}: {said}");
        assert!(!said.contains("Wanted: ") && !said.contains("Did you mean"), "{said}");
    }
    assert!(expected.is_empty(), "no file for {expected:?}");
}

#[test]
fn the_clinic_example_is_read_whole() {
    let bytes = fs::read(path("examples/clinic.toml")).expect("the clinic");
    let reading = handspan::clinic::read("clinic.toml", &bytes);
    assert_eq!(reading.problems, []);
    let clinic = reading.clinic.expect("a clinic");
    // One number for any hour, the emergency number, and others that say what they are for: no more to choose from.
    let numbers = [&clinic.name, &clinic.come_in, &clinic.labour_ward, &clinic.emergency];
    assert!(numbers.iter().all(|number| number.is_some()) && !clinic.other.is_empty());
    assert!(clinic.day.is_none() && clinic.night.is_none());
}

#[test]
fn clinic_problems() {
    let ids = |text: &str| -> Vec<(&'static str, Option<String>)> {
        handspan::clinic::read("clinic.toml", text.as_bytes())
            .problems
            .into_iter()
            .map(|p| (p.id, p.suggestion))
            .collect()
    };
    assert_eq!(ids("nmae = \"x\""), [("unknown-key", Some("`name`".to_owned()))]);
    assert_eq!(
        ids("[telephone]\nlabor-ward = \"01632 960123\""),
        [("unknown-key", Some("`labour-ward`".to_owned()))]
    );
    assert_eq!(ids("[telephone]\nday = 999"), [("clinic-value", None)]);
    assert_eq!(ids("[telephone]\nday = \"ask\""), [("clinic-value", None)]);
    assert_eq!(ids("name = \"\""), [("clinic-value", None)]);
    assert_eq!(ids("[telephone"), [("clinic-value", None)]);
    assert_eq!(ids(""), []);
}
