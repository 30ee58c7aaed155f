//! Sheets of teaching figures: every figure is there with its name and the sides, and the files stay small.

use super::shared::{run, run_in, said};
use handspan::commands::{self, Command, Format, Labels, Paper, Plate, Request, Set, Style};
use handspan::exam::Position;
use handspan::report::Look;
use handspan::write::TextAs;

fn plate(set: Set, style: Style, paper: Paper) -> String {
    let plate = Plate {
        set,
        format: Format::Svg,
        style,
        labels: Labels::None,
        paper,
        lang: "en".to_owned(),
        width: None,
        text_as: TextAs::Text,
    };
    let outcome = commands::run(&Request { command: Command::Plate(plate), look: Look::Plain });
    let [page] = &outcome.pages[..] else { panic!("{}", outcome.notes) };
    String::from_utf8(page.clone()).expect("text")
}

/// The words on a sheet, in reading order, one space between them.
fn words(svg: &str) -> String {
    let tree = svg.split("<text ").skip(1);
    let texts =
        tree.map(|text| text.split_once('>').expect("a text").1.split("</text>").next().unwrap_or_default());
    texts.collect::<Vec<_>>().join(" ").replace("- ", "-")
}

#[test]
fn every_set_is_made_on_both_papers() {
    for set in Set::ALL {
        for paper in [Paper::A4, Paper::Letter] {
            let svg = plate(set, Style::Line, paper);
            let pictures = svg.matches("role=\"img\"").count();
            assert!(pictures >= 4, "{}: {pictures} pictures", set.named().0);
            let said = words(&svg);
            for side in ["Her left", "Her right"] {
                assert_eq!(said.matches(side).count(), pictures, "{}: {side}", set.named().0);
            }
            assert!(said.contains("no real person"), "{said}");
        }
    }
}

#[test]
fn every_position_is_spelled_out_and_its_figure_is_small() {
    for style in [Style::Soft, Style::Line] {
        let svg = plate(Set::Positions, style, Paper::A4);
        let said = words(&svg);
        for position in Position::all().filter(|p| matches!(p, Position::Lengthwise { .. })) {
            let name = position.words();
            assert!(said.contains(&name), "{name}: {said}");
        }
        assert!(!said.contains("LMP"));
        for (number, figure) in svg.split("role=\"img\"").skip(1).enumerate() {
            assert!(figure.len() < 44 << 10, "figure {number} has {} bytes", figure.len());
        }
    }
}

/// Each picture says in words what it shows, for someone who cannot see it.
#[test]
fn every_figure_has_its_description() {
    let svg = plate(Set::Fifths, Style::Line, Paper::A4);
    for fifths in 0..=5 {
        let about =
            format!("aria-label=\"{fifths}/5 palpable above the brim. Head down, back to her left front");
        assert!(svg.contains(&about), "{about}");
    }
}

#[test]
fn the_program_lists_the_sets_and_writes_each_kind() {
    let listed = said(&run(&["plate", "--list"]));
    assert_eq!(listed.lines().count(), Set::ALL.len());
    for set in Set::ALL {
        assert!(listed.contains(set.named().0), "{listed}");
    }
    let here = tempfile::tempdir().expect("a directory");
    for (name, start) in [("p.pdf", &b"%PDF-"[..]), ("p.png", b"\x89PNG")] {
        let output = run_in(here.path(), &["plate", "attitudes", "-o", name, "--style", "line"], b"");
        assert_eq!(said(&output), format!("wrote {name}: the plate\n"));
        assert!(std::fs::read(here.path().join(name)).expect("the plate").starts_with(start));
    }
    let named_wrongly = said(&run(&["plate", "fifth", "-o", "x.svg"]));
    assert!(named_wrongly.contains("fifths"), "{named_wrongly}");
}
