//! The bundled faces: widths, glyphs, outlines, subsets, and characters they do not have.

use handspan::fonts::{Face, FontError, Fonts, OutlineStep, pdf_subset, web_subset};
use std::collections::BTreeSet;

fn fonts() -> Fonts {
    Fonts::load().expect("the bundled faces are read")
}

#[test]
fn widths_are_those_of_the_font_file() {
    // Source Sans 3 Regular, `hmtx`: H 652, o 542 of 1000 units.
    let f = fonts();
    assert!((f.measure(Face::Regular, "H", 1000.0).unwrap() - 652.0).abs() < 0.01);
    assert!((f.measure(Face::Regular, "o", 10.0).unwrap() - 5.42).abs() < 1e-4);
    assert_eq!(f.measure(Face::Regular, "", 10.0).unwrap(), 0.0);
}

#[test]
fn pairs_are_kerned() {
    let f = fonts();
    let apart = f.measure(Face::Regular, "T", 1.0).unwrap() + f.measure(Face::Regular, "o", 1.0).unwrap();
    assert!(f.measure(Face::Regular, "To", 1.0).unwrap() < apart - 0.02);
}

#[test]
fn every_character_keeps_its_own_glyph() {
    let f = fonts();
    for text in
        ["office fifths fluid", "37 weeks \u{2013} it\u{2019}s", "38\u{a0}\u{b0}C", "ch\u{e9}rie Vi\u{1ec7}t"]
    {
        for face in Face::ALL {
            let glyphs = f.shape(face, text).unwrap();
            assert_eq!(glyphs.iter().map(|g| g.text.as_str()).collect::<String>(), text);
            assert!(glyphs.iter().all(|g| g.text.chars().count() == 1), "a ligature in `{text}`");
        }
    }
}

#[test]
fn a_missing_glyph_is_named() {
    let error = fonts().measure(Face::SemiBold, "call \u{4eca}", 12.0).unwrap_err();
    assert_eq!(
        error,
        FontError::MissingGlyph { character: '\u{4eca}', text: "call \u{4eca}".into(), face: Face::SemiBold }
    );
    assert_eq!(
        error.to_string(),
        "the face SourceSans3-SemiBold has no glyph for `\u{4eca}` (U+4ECA), in `call \u{4eca}`"
    );
}

#[test]
fn outlines_stand_on_the_baseline_and_follow_the_size() {
    let f = fonts();
    let steps = f.outline(Face::Regular, "H H", 10.0).unwrap();
    let points: Vec<[f32; 2]> = steps
        .iter()
        .flat_map(|s| match *s {
            OutlineStep::Move(p) | OutlineStep::Line(p) => vec![p],
            OutlineStep::Curve(a, b, c) => vec![a, b, c],
            OutlineStep::Close => vec![],
        })
        .collect();
    let low = points.iter().map(|p| p[1]).fold(f32::MAX, f32::min);
    let high = points.iter().map(|p| p[1]).fold(f32::MIN, f32::max);
    let right = points.iter().map(|p| p[0]).fold(f32::MIN, f32::max);
    assert!(low.abs() < 1e-4, "H stands on the baseline, not at {low}");
    assert!((high - f.heights(Face::Regular).capital * 10.0).abs() < 0.06);
    assert!(right < f.measure(Face::Regular, "H H", 10.0).unwrap() && right > 12.0);
    assert_eq!(steps.iter().filter(|s| matches!(s, OutlineStep::Move(_))).count(), 2);
}

#[test]
fn subsets_are_small_and_still_fonts() {
    let f = fonts();
    let used: BTreeSet<u16> =
        f.shape(Face::Regular, "Your baby is lying head down.").unwrap().iter().map(|g| g.id).collect();
    let pdf = pdf_subset(Face::Regular, &used).unwrap();
    assert!(pdf.bytes.len() < 12_000, "{} bytes", pdf.bytes.len());
    assert_eq!(pdf.ids.keys().copied().collect::<BTreeSet<_>>(), used);
    let web = web_subset(Face::Regular, &used).unwrap();
    assert!(web.len() < 12_000, "{} bytes", web.len());
    // A browser maps characters itself: the same letters must come out with the same widths.
    use skrifa::MetadataProvider;
    let font = skrifa::FontRef::new(&web).unwrap();
    let widths =
        font.glyph_metrics(skrifa::instance::Size::new(1.0), skrifa::instance::LocationRef::default());
    for c in "Yourbabyislyinheadown. ".chars() {
        let id = font.charmap().map(c).unwrap_or_else(|| panic!("`{c}` is not in the subset"));
        let width = widths.advance_width(id).unwrap();
        assert!((width - f.measure(Face::Regular, &c.to_string(), 1.0).unwrap()).abs() < 1e-4, "`{c}`");
    }
    assert_eq!(web, web_subset(Face::Regular, &used).unwrap());
}
