//! The PNG: its size, its paper, its sides.

use crate::pages::words;
use crate::stand_in::scene;
use handspan::fonts::Fonts;
use handspan::sheet::{Content, PICTURE, Sheet, compose};
use handspan::write::{WriteError, png};
use resvg::tiny_skia::Pixmap;

fn sheet() -> Sheet {
    let layout = PICTURE.read().unwrap();
    compose(&layout, &[scene()], &Content::default(), &words(), &Fonts::load().unwrap()).unwrap()
}

#[test]
fn it_has_the_width_asked_for_and_white_paper() {
    let bytes = png(&sheet(), 450, &Fonts::load().unwrap()).unwrap();
    let pixels = Pixmap::decode_png(&bytes).unwrap();
    assert_eq!((pixels.width(), pixels.height()), (450, 530));
    let corner = pixels.pixel(0, 0).unwrap();
    assert_eq!((corner.red(), corner.green(), corner.blue(), corner.alpha()), (255, 255, 255, 255));
}

#[test]
fn her_left_is_at_the_right() {
    // 10 pixels a cm; the stand-in's heart is round (5.0, 10.4) cm, the frame starts at (-22.5, 45.0).
    let bytes = png(&sheet(), 450, &Fonts::load().unwrap()).unwrap();
    let pixels = Pixmap::decode_png(&bytes).unwrap();
    let red_at = |x_cm: f32, y_cm: f32| {
        pixels.pixel(((x_cm + 22.5) * 10.0) as u32, ((45.0 - y_cm) * 10.0) as u32).unwrap().red()
    };
    assert!(red_at(5.0, 10.4) < 0x40, "the heart is drawn on her left");
    assert!(red_at(-5.0, 10.4) > 0x80, "and not on her right");
}

#[test]
fn sizes_that_cannot_be_made_are_refused() {
    let f = Fonts::load().unwrap();
    assert_eq!(png(&sheet(), 0, &f), Err(WriteError::PngSize { width: 0, height: 0 }));
    let error = png(&sheet(), 15_000, &f).unwrap_err();
    assert_eq!(
        error.to_string(),
        "a PNG of 15000 x 17667 pixels cannot be made; each side may have 1 to 16000 pixels"
    );
}

#[test]
fn the_same_sheet_gives_the_same_bytes() {
    let f = Fonts::load().unwrap();
    assert_eq!(png(&sheet(), 200, &f), png(&sheet(), 200, &f));
}
