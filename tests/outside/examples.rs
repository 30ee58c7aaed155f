//! Every example, drawn and written for real, judged by other programs. The programs: librsvg's `rsvg-convert` for the
//! SVG against our PNG; `qpdf --check` and poppler's `pdffonts` and `pdftotext` for the PDF.

use super::{difference, file, run};
use crate::growth::example_sheet;
use crate::shared::family_page;
use handspan::commands::{
    self, Command, Draw, Format, Handout, Labels, Palette, Request, Source, Style, View,
};
use handspan::report::Look;
use handspan::write::TextAs;
use resvg::tiny_skia::Pixmap;

const WIDTH: u32 = 500;

/// Name and text of every example exam.
fn examples() -> Vec<(String, String)> {
    let mut out = vec![];
    for entry in std::fs::read_dir("examples").unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_stem().unwrap().to_string_lossy().into_owned();
        if path.extension().is_some_and(|e| e == "toml") && name != "clinic" {
            out.push((name, std::fs::read_to_string(&path).unwrap()));
        }
    }
    out.sort();
    assert!(out.len() >= 12, "at least twelve visits");
    out
}

fn draw(name: &str, text: &str, format: Format, style: Style, labels: Labels) -> Vec<u8> {
    let draw = Draw {
        exam: Source::new(name, text),
        format,
        style,
        palette: Palette::Neutral,
        mother: handspan::commands::MotherAs::Outline,
        hands: None,
        view: View::Facing,
        labels,
        lang: "en".to_owned(),
        draft: handspan::commands::Draft::Refused,
        width: Some(WIDTH),
        text_as: TextAs::Outlines,
    };
    let outcome = commands::run(&Request { command: Command::Draw(draw), look: Look::Plain });
    assert_eq!(outcome.pages.len(), 1, "{name}: {}", outcome.notes);
    outcome.pages[0].clone()
}

#[test]
fn rsvg_convert_draws_every_example_like_our_png() {
    for (name, text) in examples() {
        for (style, label) in [(Style::Soft, "soft"), (Style::Line, "line")] {
            let svg =
                file(&format!("{name}-{label}.svg"), &draw(&name, &text, Format::Svg, style, Labels::All));
            let ours = Pixmap::decode_png(&draw(&name, &text, Format::Png, style, Labels::All)).unwrap();
            let theirs = svg.with_extension("rsvg.png");
            let (width, height) = (ours.width().to_string(), ours.height().to_string());
            let (to, from) = (theirs.to_str().unwrap(), svg.to_str().unwrap());
            run("rsvg-convert", &["--width", &width, "--height", &height, "-o", to, from]);
            let theirs = Pixmap::load_png(&theirs).unwrap();
            let apart = difference(&ours, &theirs);
            assert!(apart < 2.0, "{name}, {label}: {apart} of 255 apart");
        }
    }
}

#[test]
fn every_example_is_a_sound_pdf_with_its_words() {
    for (name, text) in examples() {
        let picture =
            file(&format!("{name}.pdf"), &draw(&name, &text, Format::Pdf, Style::Soft, Labels::All));
        let page =
            Handout { format: Format::Pdf, ..family_page(Source::new(name.as_str(), text.as_str()), "en") };
        let outcome = commands::run(&Request { command: Command::Handout(page), look: Look::Plain });
        let mut files = vec![(picture, "Her left")];
        if let [page] = &outcome.pages[..] {
            files.push((file(&format!("{name}-page.pdf"), page), "Your left"));
        } else {
            assert!(outcome.code != 0, "{name}: no page and no reason");
        }
        for (path, side) in files {
            let path = path.to_str().unwrap();
            run("qpdf", &["--check", path]);
            let fonts = run("pdffonts", &[path]);
            for line in fonts.lines().skip(2) {
                assert!(line.contains("yes yes yes"), "{path}: not an embedded subset: {line}");
            }
            let words = run("pdftotext", &["-layout", path, "-"]);
            assert!(words.contains(side), "{path}: {side} is not read back");
        }
    }
}

#[test]
fn the_tape_over_the_visits_is_a_sound_sheet() {
    let svg = file("growth.svg", &example_sheet(Format::Svg, TextAs::Outlines));
    let ours = Pixmap::decode_png(&example_sheet(Format::Png, TextAs::Text)).unwrap();
    let theirs = svg.with_extension("rsvg.png");
    let (width, height) = (ours.width().to_string(), ours.height().to_string());
    let (to, from) = (theirs.to_str().unwrap(), svg.to_str().unwrap());
    run("rsvg-convert", &["--width", &width, "--height", &height, "-o", to, from]);
    let apart = difference(&ours, &Pixmap::load_png(&theirs).unwrap());
    assert!(apart < 2.0, "{apart} of 255 apart");
    let pdf = file("growth.pdf", &example_sheet(Format::Pdf, TextAs::Text));
    let path = pdf.to_str().unwrap();
    run("qpdf", &["--check", path]);
    let info = run("pdfinfo", &["-struct", path]);
    for kind in ["Table", "TR", "TH", "TD", "Figure", "H1"] {
        let named = |line: &str| line.trim().split([' ', ':']).next() == Some(kind);
        assert!(info.lines().any(named), "{kind}\n{info}");
    }
    let words = run("pdftotext", &["-layout", path, "-"]);
    assert!(words.contains("The tape over the visits") && words.contains("her left"), "{words}");
}

/// The same exam gives the same bytes, in each format.
#[test]
fn every_example_is_drawn_the_same_twice() {
    for (name, text) in examples().into_iter().take(4) {
        for format in [Format::Svg, Format::Png, Format::Pdf] {
            let once = draw(&name, &text, format, Style::Soft, Labels::Few);
            assert!(once == draw(&name, &text, format, Style::Soft, Labels::Few), "{name}");
        }
    }
}
