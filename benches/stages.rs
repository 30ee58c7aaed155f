//! How long each stage takes, alone and all together. In: nothing; the exam is `examples/head-down-left.toml`.
//! Out: a table on standard output: the shortest, the middle and the longest of many runs, in milliseconds.
//!
//! `cargo bench --bench stages` builds with optimisation and runs it; `benches/whole-process` measures the program from
//! outside. On a machine that does other work, read the shortest time.

#![allow(clippy::print_stdout)]

use handspan::body::{pose, touch};
use handspan::commands::{
    self, Command, Draw, Format, Handout, Labels, MotherAs, Palette, Request, Source, Style, View,
};
use handspan::exam;
use handspan::figure::preview::Preview;
use handspan::figure::{self, FigureOptions};
use handspan::fonts::Fonts;
use handspan::reckon;
use handspan::report::Look;
use handspan::sheet::{Content, PICTURE, compose};
use handspan::words::Words;
use handspan::write::{self, TextAs};
use std::hint::black_box;
use std::time::{Duration, Instant};

const NAME: &str = "examples/head-down-left.toml";
const EXAM: &[u8] = include_bytes!("../examples/head-down-left.toml");
const CLINIC: (&str, &[u8]) = ("examples/clinic.toml", include_bytes!("../examples/clinic.toml"));
/// Width of the PNG, pixels: what `draw` writes when no width is asked for.
const PNG_WIDTH: u32 = 1200;
/// Type of the labels in points, as `draw` sets it.
const TYPE_PT: f32 = 10.0;

/// Times `work` for `runs` runs after three that do not count, and prints its row.
fn row<T>(name: &str, runs: usize, mut work: impl FnMut() -> T) {
    for _ in 0..3 {
        black_box(work());
    }
    let mut times: Vec<Duration> = (0..runs)
        .map(|_| {
            let start = Instant::now();
            black_box(work());
            start.elapsed()
        })
        .collect();
    times.sort();
    let ms = |time: Duration| time.as_secs_f64() * 1000.0;
    let (shortest, middle, longest) = (ms(times[0]), ms(times[runs / 2]), ms(times[runs - 1]));
    println!("{name:<34} {shortest:>9.3} {middle:>9.3} {longest:>9.3}   {runs}");
}

fn request(command: Command) -> Request {
    Request { command, look: Look::Plain }
}

fn main() {
    // `cargo test --benches` runs this too, and wants no table.
    if !std::env::args().any(|argument| argument == "--bench") {
        return;
    }
    let words = Words::load("en").expect("the English words");
    let fonts = Fonts::load().expect("the bundled faces");
    let exam = exam::read(NAME, EXAM).exam.expect("an exam without errors");
    let conclusions = reckon::conclusions(&exam);
    let layout = PICTURE.read().expect("the layout of the picture");
    let content = Content { title: "How the baby lies".to_owned(), ..Content::default() };
    let mm_per_cm =
        layout.mm_per_cm(&figure::FRAME, &content, &words, &fonts).expect("the scale of the picture");
    let options = FigureOptions {
        style: Style::Soft,
        palette: Palette::Neutral,
        mother: MotherAs::Outline,
        hands: None,
        view: View::Facing,
        labels: Labels::Few,
        mm_per_cm,
        type_pt: TYPE_PT,
        title: content.title.clone(),
        description: String::new(),
        captions: vec![],
    };
    let posed = pose::from_exam(&exam, &conclusions);
    let cast = posed.cast();
    let drawn = || figure::figure(&posed, cast.as_ref(), &options, &words, &fonts).expect("a figure");
    let scene = drawn();
    let sheet = compose(&layout, std::slice::from_ref(&scene), &content, &words, &fonts).expect("a sheet");

    println!("{:<34} {:>9} {:>9} {:>9}   runs", "milliseconds", "shortest", "middle", "longest");
    row("read (text to Exam)", 200, || exam::read(NAME, EXAM));
    row("conclude and reckon", 200, || reckon::reckon(&exam, &Default::default()).remarks);
    row("agreement alone", 200, || reckon::agreement(&exam, &conclusions));
    row("load words", 50, || Words::load("en"));
    row("load fonts", 50, Fonts::load);
    row("pose (Exam to Pose)", 40, || pose::from_exam(&exam, &conclusions));
    let named: Vec<_> = ["O", "S", "M", "F"]
        .iter()
        .flat_map(|d| {
            ["A", "LA", "LT", "LP", "P", "RP", "RT", "RA"].map(|turn| (d, turn.split_at(turn.len() - 1)))
        })
        .map(|(d, (side, turn))| format!("weeks = \"37+0\"\n[baby]\nposition = \"{side}{d}{turn}\"\n"))
        .map(|text| exam::read("position.toml", text.as_bytes()).exam.expect("a position"))
        .map(|exam| (reckon::conclusions(&exam), exam))
        .collect();
    let hands = || -> Vec<_> { named.iter().map(|(c, exam)| pose::for_hands(exam, c)).collect() };
    let poses = hands();
    row("pose 32 positions for hands", 20, hands);
    row("feel 32 positions (Pose to map)", 20, || poses.iter().map(touch::palpation).collect::<Vec<_>>());
    row("cast (Pose to depths)", 40, || posed.cast());
    let preview = Preview::of(&posed).expect("a baby to look at");
    row("preview, 420 pixels wide", 40, || preview.seen(30.0, 420, Palette::Neutral));
    row("marks (Pose and cast to Scene)", 40, drawn);
    row("one figure: pose, cast and marks", 40, || {
        let posed = pose::from_exam(&exam, &conclusions);
        let cast = posed.cast();
        figure::figure(&posed, cast.as_ref(), &options, &words, &fonts).expect("a figure")
    });
    row("compose (Scene to Sheet)", 40, || {
        compose(&layout, std::slice::from_ref(&scene), &content, &words, &fonts).expect("a sheet")
    });
    row("svg, text with its fonts", 40, || write::svg(&sheet, TextAs::Text, &fonts).expect("an SVG"));
    row("svg, outlines", 40, || write::svg(&sheet, TextAs::Outlines, &fonts).expect("an SVG"));
    row("png, 1200 pixels wide", 20, || write::png(&sheet, PNG_WIDTH, &fonts).expect("a PNG"));
    row("pdf of the picture", 40, || write::pdf(&sheet, &fonts).expect("a PDF"));

    let draw = request(Command::Draw(Draw {
        exam: Source::new(NAME, EXAM),
        format: Format::Svg,
        style: Style::Soft,
        palette: Palette::Neutral,
        mother: MotherAs::Outline,
        hands: None,
        view: View::Facing,
        labels: Labels::Few,
        lang: "en".to_owned(),
        draft: handspan::commands::Draft::Refused,
        width: None,
        text_as: TextAs::Text,
    }));
    let page = request(Command::Handout(Handout {
        exam: Source::new(NAME, EXAM),
        format: Format::Pdf,
        lang: "en".to_owned(),
        draft: handspan::commands::Draft::Refused,
        paper: None,
        palette: Some(Palette::Neutral),
        mother: Some(MotherAs::Body),
        clinic: Some(Source::new(CLINIC.0, CLINIC.1)),
        layout: None,
        despite: vec![],
        emergency: None,
        invite_listening: false,
        numbers: false,
    }));
    for (name, request) in [("draw to SVG, whole", &draw), ("handout to PDF, whole", &page)] {
        let outcome = commands::run(request);
        assert!(outcome.code == 0 && outcome.pages.len() == 1, "{name}: {}", outcome.notes);
        row(name, 30, || commands::run(request));
    }
}
