//! Pages for the family, judged by others: their reading grade by textstat, their tags and outline as pdf.js reads them, their
//! faults by outloud, their words by pdftotext. `tests/run` installs the programs.

use super::{file, run};
use crate::family_page::plain;
use crate::layouts::{examples, sides};
use crate::pages::{clinic, texts, words};
use crate::shared::path;
use handspan::figure::scene::{Item, Text};
use handspan::fonts::Fonts;
use handspan::sheet::family::{self, Asked};
use handspan::sheet::{FAMILY_PAGE, LARGE_PRINT, PICTURE_FIRST, Sheet, Tag};
use handspan::units::PagePoint;
use handspan::write;
use serde_json::Value;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Where `tests/run` puts the programs.
fn tools() -> PathBuf {
    let tools = Path::new(env!("CARGO_TARGET_TMPDIR")).with_file_name("outside").join("pages");
    assert!(tools.is_dir(), "{} is not there; tests/run makes it", tools.display());
    tools
}

/// The pages that are judged: each example in one of the layouts in turn.
fn pages() -> Vec<(String, Vec<Sheet>)> {
    let fonts = Fonts::load().unwrap();
    let layouts = [FAMILY_PAGE, LARGE_PRINT, PICTURE_FIRST];
    let made = |(at, (name, exam, reckoning)): (usize, (String, _, _))| {
        let shipped = layouts[at % layouts.len()];
        let content = family::content(&exam, &reckoning, &clinic(), Asked::default(), &words()).unwrap();
        let sheets =
            sides(&shipped.read().unwrap(), (&exam, &reckoning), &content, &words(), &fonts).unwrap();
        (format!("{name}-{}", shipped.name), sheets)
    };
    examples().into_iter().enumerate().map(made).collect()
}

fn pdf(name: &str, sheets: &[Sheet]) -> PathBuf {
    file(&format!("{name}-family.pdf"), &write::pdf_pages(sheets, &Fonts::load().unwrap()).unwrap())
}

#[test]
fn textstat_finds_every_page_easy_to_read() {
    let mut files = vec![];
    for (name, exam, reckoning) in examples() {
        let asked = Asked { invite_listening: true, numbers: true };
        let content = family::content(&exam, &reckoning, &clinic(), asked, &words()).unwrap();
        files.push(file(&format!("{name}.txt"), plain(&content).as_bytes()));
    }
    let script = path("tests/outside/readability.py");
    let arguments: Vec<&str> =
        std::iter::once(&script).chain(&files).map(|path| path.to_str().unwrap()).collect();
    let said = run(tools().join("venv/bin/python").to_str().unwrap(), &arguments);
    assert_eq!(said.lines().count(), files.len());
    for line in said.lines() {
        let grade: f64 = line.split(' ').next().unwrap().parse().unwrap();
        assert!((-3.4..=6.0).contains(&grade), "{line}");
    }
}

fn bare(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace()).collect()
}

#[test]
fn pdf_js_reads_the_tags_in_their_order() {
    let pages = pages();
    let files: Vec<PathBuf> = pages.iter().map(|(name, sheets)| pdf(name, sheets)).collect();
    let output = Command::new("node")
        .arg(path("tests/outside/read_tags.mjs"))
        .args(&files)
        .current_dir(tools())
        .output()
        .expect("node is there; tests/run says so when it is not");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let said = String::from_utf8(output.stdout).unwrap();
    assert_eq!(said.lines().count(), pages.len());
    for ((name, sheets), line) in pages.iter().zip(said.lines()) {
        let told: Value = serde_json::from_str(line).unwrap();
        assert_eq!(told["title"], sheets[0].title.as_str(), "{name}");
        assert_eq!(told["lang"], "en", "{name}");
        assert!(told["script"].is_null(), "{name}");
        let (mut expected, mut headings) = (vec![], vec![]);
        for (at, sheet) in sheets.iter().enumerate() {
            for element in &sheet.elements {
                let lines: Vec<&Text<PagePoint>> = element
                    .items
                    .iter()
                    .filter_map(|item| if let Item::Text(text) = item { Some(text) } else { None })
                    .collect();
                let mut text: String = lines.iter().map(|line| line.text.as_str()).collect();
                let tag = match &element.tag {
                    Tag::H1 => "H1",
                    Tag::H2 => "H2",
                    Tag::P => "P",
                    Tag::Item { .. } => "LBody",
                    Tag::Figure { alt } | Tag::Sign { alt, .. } => {
                        text = alt.clone();
                        "Figure"
                    }
                    Tag::Cell { .. } | Tag::Artifact => continue,
                };
                if tag.starts_with('H') {
                    headings.push(bare(&text));
                }
                expected.push((tag.to_owned(), at as u64 + 1, bare(&text)));
            }
        }
        let read: Vec<(String, u64, String)> = told["read"]
            .as_array()
            .unwrap()
            .iter()
            .map(|one| {
                (
                    one["tag"].as_str().unwrap().to_owned(),
                    one["page"].as_u64().unwrap(),
                    bare(one["text"].as_str().unwrap()),
                )
            })
            .collect();
        assert_eq!(read, expected, "{name}");
        let outline: Vec<String> =
            told["outline"].as_array().unwrap().iter().map(|title| bare(title.as_str().unwrap())).collect();
        assert_eq!(outline, headings, "{name}");
    }
}

#[test]
fn outloud_finds_no_fault() {
    let outloud = tools().join("venv/bin/outloud");
    for (name, sheets) in pages().iter().step_by(5) {
        let page = pdf(&format!("{name}-outloud"), sheets);
        let said = run(outloud.to_str().unwrap(), &["--fail-on", "warning", page.to_str().unwrap()]);
        assert!(said.contains("0 error(s), 0 warning(s)"), "{name}: {said}");
    }
}

#[test]
fn pdftotext_and_qpdf_read_every_layout() {
    for (name, sheets) in pages() {
        let page = pdf(&format!("{name}-read"), &sheets);
        let read = run("pdftotext", &["-raw", "-enc", "UTF-8", page.to_str().unwrap(), "-"]);
        let written: String = sheets.iter().flat_map(texts).map(|t| format!("{} ", t.text)).collect();
        let split = |text: &str| {
            let mut words: Vec<String> = text.split_whitespace().map(str::to_owned).collect();
            // The labels of a picture are read in the reader's own order.
            words.sort();
            words
        };
        assert_eq!(split(&read), split(&written), "{name}");
        let said = run("qpdf", &["--check", page.to_str().unwrap()]);
        assert!(said.contains("No syntax or stream encoding errors"), "{name}: {said}");
    }
}
