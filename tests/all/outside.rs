//! What we write, judged by other programs: `rsvg-convert`, `qpdf`, `pdftotext`, `pdffonts` (see tests/outside).

use crate::stand_in;
use handspan::exam::{Back, BackTurn, HeartHeard, Lie, Place, Presentation};
use handspan::figure::scene::Scene;
use handspan::fonts::Fonts;
use handspan::sheet::{Content, FAMILY_PAGE, Layout, PICTURE, Sheet, compose, family};
use handspan::units::MotherSide;
use handspan::words::Words;
use handspan::write;

#[test]
fn look() {
    let fonts = Fonts::load().unwrap();
    let words = Words::load("en").unwrap();
    let mut exam = stand_in::exam(Some((36, 5)));
    exam.babies[0].heart = stand_in::found(HeartHeard::At(Place { across: None, height: None }));
    let mut c = stand_in::conclusion();
    c.lie = Some(Lie::Longitudinal);
    c.presentation = Some(Presentation::Breech);
    c.back = Some(Back { side: Some(MotherSide::Left), turn: Some(BackTurn::Front) });
    let clinic = family::ClinicLines {
        name: Some("Willow Lane Midwives".into()),
        phones: vec!["01632 960 417".into()],
    };
    let content = family::content(&exam, &[c], &clinic, &words).unwrap();
    for paper in ["a4", "letter"] {
        let layout = Layout::read(FAMILY_PAGE.0, FAMILY_PAGE.1).unwrap().on_paper(paper).unwrap();
        let scene = stand_in::scene();
        println!("{} mm per cm", layout.mm_per_cm(&scene.frame, &content, &words, &fonts).unwrap());
        let t = std::time::Instant::now();
        let sheet = compose(&layout, &[scene], &content, &words, &fonts).unwrap();
        let t1 = t.elapsed();
        let pdf = write::pdf(&sheet, &fonts).unwrap();
        let t2 = t.elapsed();
        let svg = write::svg(&sheet, write::TextAs::Text, &fonts).unwrap();
        let t3 = t.elapsed();
        println!("compose {t1:?} pdf {:?} svg {:?}; {} {} bytes", t2 - t1, t3 - t2, pdf.len(), svg.len());
        let dir = env!("CARGO_TARGET_TMPDIR");
        std::fs::write(format!("{dir}/{paper}.pdf"), pdf).unwrap();
        std::fs::write(format!("{dir}/{paper}.svg"), svg).unwrap();
        std::fs::write(
            format!("{dir}/{paper}-outlined.svg"),
            write::svg(&sheet, write::TextAs::Outlines, &fonts).unwrap(),
        )
        .unwrap();
        std::fs::write(format!("{dir}/{paper}.png"), write::png(&sheet, 1240, &fonts).unwrap()).unwrap();
    }
}
