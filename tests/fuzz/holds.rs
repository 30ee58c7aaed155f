//! What must hold of every answer. In: an outcome. Out: nothing, or a panic that says what does not hold.

use handspan::commands::Outcome;
use handspan::report::Problem;

/// A document or text, or else a message that says why there is none.
pub fn of_outcome(outcome: &Outcome) {
    assert!(outcome.code <= 3, "exit code {}", outcome.code);
    if outcome.pages.is_empty() && outcome.text.is_empty() {
        assert_ne!(outcome.code, 0, "nothing came of it, and nothing is wrong");
        assert!(!outcome.notes.trim().is_empty(), "nothing came of it, and nothing is said");
    }
    for page in &outcome.pages {
        of_page(page);
    }
}

/// Opened by a reader that did not write it.
fn of_page(page: &[u8]) {
    if page.starts_with(b"%PDF-") {
        let pdf = lopdf::Document::load_mem(page).expect("a PDF that opens");
        assert!(pdf.page_iter().count() > 0, "a PDF without a page");
    } else if page.starts_with(b"\x89PNG") {
        let mut png = png::Decoder::new(std::io::Cursor::new(page)).read_info().expect("a PNG that opens");
        let mut pixels = vec![0; png.output_buffer_size().expect("a size")];
        png.next_frame(&mut pixels).expect("the pixels of a PNG");
    } else if page.starts_with(b"<svg") {
        let text = std::str::from_utf8(page).expect("an SVG in UTF-8");
        let svg = roxmltree::Document::parse(text).expect("an SVG that opens");
        assert!(svg.root_element().has_children(), "an SVG with nothing in it");
    } else if page.starts_with(b"{") {
        serde_json::from_slice::<serde_json::Value>(page).expect("JSON that opens");
    } else {
        assert!(std::str::from_utf8(page).is_ok_and(|text| !text.trim().is_empty()), "an empty text, or none");
    }
}

/// Problems lie in the text they are about, and are drawn.
pub fn of_problems(problems: &[Problem], text: &str) {
    for problem in problems {
        assert!(!problem.message.trim().is_empty(), "a problem without words");
        if let Some(span) = &problem.span {
            let held = text.get(span.clone());
            assert!(held.is_some(), "{} lies at {span:?} of {} bytes", problem.id, text.len());
        }
    }
    if !problems.is_empty() {
        let drawn = handspan::report::draw(problems, text, handspan::report::Look::Plain);
        assert!(drawn.contains(&problems[0].file), "the file is not named: {drawn}");
    }
}
