//! What we write, judged by other programs: librsvg's `rsvg-convert`, `qpdf`, poppler's `pdftotext` and `pdffonts`.
//! `tests/run` installs them.

mod examples;
mod fhir;
mod form;
mod model;
mod numbers;
mod package;
mod pages;
mod schema;

use crate::pages::{cases, clinic, content, texts, words};
use crate::stand_in::{conclusion, exam, scene};
use handspan::clinic::Clinic;
use handspan::fonts::Fonts;
use handspan::sheet::{Content, PICTURE, Sheet, compose, compose_all};
use handspan::write::{TextAs, pdf, png, svg};
use resvg::tiny_skia::Pixmap;
use std::path::{Path, PathBuf};
use std::process::Command;

fn fonts() -> Fonts {
    Fonts::load().unwrap()
}

/// The sheets that are judged: the picture alone, and a page of every kind on both papers.
fn sheets() -> Vec<(String, Sheet)> {
    let f = fonts();
    let layout = PICTURE.read().unwrap();
    let content = Content::of_figure(&scene());
    let mut out = vec![("picture".to_owned(), compose(&layout, &[scene()], &content, &words(), &f).unwrap())];
    for (number, case) in cases().iter().enumerate() {
        let paper = if number % 2 == 0 { "a4" } else { "letter" };
        let name = format!("{number:02}-{}-{paper}", case.name.replace(' ', "-"));
        for (side, sheet) in ["front", "back"].into_iter().zip(case.sides(paper, &f)) {
            out.push((format!("{name}-{side}"), sheet));
        }
    }
    out
}

fn file(name: &str, bytes: &[u8]) -> PathBuf {
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(&path, bytes).unwrap();
    path
}

/// What the program prints; a failure names the program and what it said.
fn run(program: &str, arguments: &[&str]) -> String {
    let output = Command::new(program).args(arguments).output().unwrap_or_else(|e| {
        panic!("`{program}` cannot be run ({e}); tests/run installs it, or: apt-get install librsvg2-bin qpdf poppler-utils")
    });
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(
        output.status.success(),
        "`{program} {}` failed: {said}{}",
        arguments.join(" "),
        String::from_utf8_lossy(&output.stderr)
    );
    said
}

/// Mean difference of two pictures, in steps of 255.
fn difference(a: &Pixmap, b: &Pixmap) -> f64 {
    assert_eq!((a.width(), a.height()), (b.width(), b.height()));
    let sum: u64 = a.data().iter().zip(b.data()).map(|(x, y)| u64::from(x.abs_diff(*y))).sum();
    sum as f64 / a.data().len() as f64
}

#[test]
fn rsvg_convert_draws_the_outlined_svg_like_our_png() {
    let f = fonts();
    for (name, sheet) in sheets().into_iter().step_by(9) {
        let outlined = file(&format!("{name}.svg"), svg(&sheet, TextAs::Outlines, &f).unwrap().as_bytes());
        let theirs = outlined.with_extension("rsvg.png");
        let (from, to) = (outlined.to_str().unwrap(), theirs.to_str().unwrap());
        run("rsvg-convert", &["--width", "900", "--background-color", "white", "--output", to, from]);
        let theirs = Pixmap::decode_png(&std::fs::read(&theirs).unwrap()).unwrap();
        let ours = png(&sheet, 900, &f).unwrap();
        file(&format!("{name}.png"), &ours);
        let ours = Pixmap::decode_png(&ours).unwrap();
        let mean = difference(&ours, &theirs);
        assert!(mean < 2.0, "{name}: mean difference {mean:.3} of 255");
    }
}

#[test]
fn usvg_parses_every_svg() {
    let f = fonts();
    for (name, sheet) in sheets() {
        for text_as in [TextAs::Text, TextAs::Outlines] {
            let document = svg(&sheet, text_as, &f).unwrap();
            let tree = usvg::Tree::from_str(&document, &usvg::Options::default())
                .unwrap_or_else(|e| panic!("{name}: {e}"));
            assert!(tree.root().has_children(), "{name}");
        }
    }
}

#[test]
fn qpdf_finds_no_fault() {
    let f = fonts();
    for (name, sheet) in sheets() {
        let path = file(&format!("{name}-qpdf.pdf"), &pdf(&sheet, &f).unwrap());
        let said = run("qpdf", &["--check", path.to_str().unwrap()]);
        assert!(
            said.contains("PDF Version: 1.7") && said.contains("No syntax or stream encoding errors"),
            "{said}"
        );
    }
}

#[test]
fn pdftotext_reads_every_word_back() {
    let f = fonts();
    let mut all = sheets();
    // Characters that share a glyph, and accents.
    let odd = Clinic {
        name: Some("Ch\u{e9}rie\u{a0}Vi\u{1ec7}t \u{2010} - \u{2011}".into()),
        labour_ward: Some("+44\u{a0}1632\u{a0}960\u{a0}417".into()),
        ..clinic()
    };
    let content = content(&exam(None), &[conclusion()], &odd);
    let layout = handspan::sheet::FAMILY_PAGE.read().unwrap();
    let sides = compose_all(&layout, &[scene()], &content, &words(), &f).unwrap();
    all.extend(sides.into_iter().enumerate().map(|(at, side)| (format!("odd-{at}"), side)));
    for (name, sheet) in all {
        let path = file(&format!("{name}-text.pdf"), &pdf(&sheet, &f).unwrap());
        let read = run("pdftotext", &["-raw", "-enc", "UTF-8", path.to_str().unwrap(), "-"]);
        let written: String = texts(&sheet).iter().map(|t| format!("{} ", t.text)).collect();
        let split = |text: &str| text.split_whitespace().map(str::to_owned).collect::<Vec<_>>();
        let (mut read, mut written) = (split(&read), split(&written));
        if name == "picture" {
            // Labels far apart are read in the reader's own order.
            read.sort();
            written.sort();
        }
        assert_eq!(read, written, "{name}");
    }
}

#[test]
fn pdffonts_sees_embedded_subsets_with_their_characters() {
    let f = fonts();
    for (name, sheet) in sheets() {
        let path = file(&format!("{name}-fonts.pdf"), &pdf(&sheet, &f).unwrap());
        let said = run("pdffonts", &[path.to_str().unwrap()]);
        let rows: Vec<&str> = said.lines().skip(2).collect();
        assert!(!rows.is_empty(), "{name}: no fonts");
        for row in rows {
            assert!(row.contains("+SourceSans3-"), "{name}: {row}");
            assert!(row.contains("yes yes yes"), "{name}: not embedded, subset and readable: {row}");
        }
    }
}
