//! Sheets of teaching figures: every figure is there with its name and the sides, words have their size and lie apart, and
//! the files stay small.

use super::shared::{run, run_in, said};
use handspan::commands::{
    self, Command, Draft, Format, Labels, Outcome, Palette, Plate, Request, Set, Size, Source, Style, Way,
    What,
};
use handspan::exam::Position;
use handspan::report::Look;
use handspan::write::TextAs;

const SIZES: [Size; 3] = [Size::A4, Size::Letter, Size::Slide];

/// `Labels::None` leaves the labels out: each set then has those that its lesson needs.
fn asked(what: What, style: Style, labels: Labels, size: Size) -> Plate {
    Plate {
        what,
        format: Format::Svg,
        style,
        palette: Palette::Neutral,
        labels: (labels != Labels::None).then_some(labels),
        open_cm: 8,
        size,
        singly: false,
        lang: "en".to_owned(),
        draft: Draft::Refused,
        width: None,
        text_as: TextAs::Text,
    }
}

fn made(plate: Plate) -> Outcome {
    commands::run(&Request { command: Command::Plate(plate), look: Look::Plain })
}

fn sheets(set: Set, style: Style, labels: Labels, size: Size) -> Vec<String> {
    let outcome = made(asked(What::Set(set, Way::default()), style, labels, size));
    assert!(!outcome.pages.is_empty(), "{}: {}", set.named().0, outcome.notes);
    outcome.pages.iter().map(|page| String::from_utf8(page.clone()).expect("text")).collect()
}

/// A line of words on a sheet: its words, its box in mm and its size in points.
#[derive(Debug)]
struct Line {
    text: String,
    left: f32,
    right: f32,
    top: f32,
    bottom: f32,
    pt: f32,
}

/// Units of an SVG in a mm.
const UNITS: f32 = 32.0;

fn lines(svg: &str) -> Vec<Line> {
    let number = |tag: &str, name: &str| -> f32 {
        let rest = tag.split_once(&format!(" {name}=\"")).map(|(_, rest)| rest);
        let digits = rest.and_then(|rest| rest.split('"').next()).unwrap_or_else(|| panic!("{name}: {tag}"));
        digits.parse().expect("a number")
    };
    svg.split("<text ")
        .skip(1)
        .map(|text| {
            let (tag, rest) = text.split_once('>').expect("a text");
            let tag = format!(" {tag}");
            let (x, y) = (number(&tag, "x") / UNITS, number(&tag, "y") / UNITS);
            let (size, wide) = (number(&tag, "font-size") / UNITS, number(&tag, "textLength") / UNITS);
            let left = if tag.contains("text-anchor=\"middle\"") { x - 0.5 * wide } else { x };
            Line {
                text: rest.split("</text>").next().unwrap_or_default().to_owned(),
                left,
                right: left + wide,
                // Capitals and what hangs under the line.
                top: y - 0.68 * size,
                bottom: y + 0.2 * size,
                pt: size * 72.0 / 25.4,
            }
        })
        .collect()
}

/// The words on a sheet, in reading order, one space between them.
fn words(svg: &str) -> String {
    lines(svg).iter().map(|line| line.text.as_str()).collect::<Vec<_>>().join(" ").replace("- ", "-")
}

/// Words lie on the sheet, apart from one another, in type that can be read from where the sheet is looked at. Numbers in
/// circles are the one smaller thing: they stand for words that are not.
fn assert_legible(what: &str, svg: &str, size: Size) {
    let all = lines(svg);
    let (wide, high) = match size {
        Size::A3 => (420.0, 297.0),
        Size::A4 => (297.0, 210.0),
        Size::Letter => (279.4, 215.9),
        Size::Slide => (338.7, 190.5),
    };
    for (i, line) in all.iter().enumerate() {
        let is_number = line.text.chars().all(|c| c.is_ascii_digit());
        // The foot of a wall sheet is for whoever steps near.
        let least = if is_number { 0.79 * size.type_pt() } else { size.type_pt().min(18.0) };
        let least = if size == Size::A3 { least.min(10.0) } else { least };
        assert!(line.pt > least - 0.06, "{what}: {} pt: {line:?}", line.pt);
        let inside = line.left > 1.0 && line.right < wide - 1.0 && line.top > 1.0 && line.bottom < high - 1.0;
        assert!(inside, "{what}: off the sheet: {line:?}");
        for other in &all[..i] {
            let apart = line.left >= other.right
                || other.left >= line.right
                || line.top >= other.bottom
                || other.top >= line.bottom;
            assert!(apart, "{what}: {line:?} lies on {other:?}");
        }
    }
}

#[test]
fn every_set_is_made_in_every_size_and_can_be_read() {
    for set in Set::ALL.into_iter().filter(|set| *set != Set::Wall) {
        for size in SIZES {
            let what = format!("{} {size:?}", set.named().0);
            let all = sheets(set, Style::Line, Labels::None, size);
            let pictures: usize = all.iter().map(|svg| svg.matches("role=\"img\"").count()).sum();
            assert!(pictures >= 4, "{what}: {pictures} pictures");
            let mut named = 0;
            for svg in &all {
                assert_legible(&what, svg, size);
                let said = words(svg);
                let count = |word: &str| said.matches(word).count();
                let sides = ["Her left", "Her right", "Her front", "Her back"].map(count);
                assert!(sides[0] == sides[1] && sides[2] == sides[3], "{what}: {sides:?}");
                named += sides[0] + sides[2];
                assert!(said.contains("no real person"), "{said}");
                if sides[2] > 0 {
                    assert!(said.contains("her left side faces you"), "{what}: {said}");
                }
            }
            assert_eq!(named, pictures, "{what}: a picture without its sides");
        }
    }
}

/// On a screen a draft stands alone; on paper the same sheets stand beside the English.
#[test]
fn every_set_can_be_read_in_every_language() {
    for (lang, side) in [("es", "Izquierda de ella"), ("fr", "Gauche (mère)")] {
        for set in Set::ALL {
            let size = if set == Set::Wall { Size::A3 } else { Size::A4 };
            let what = format!("{} in {lang}", set.named().0);
            let plate = asked(What::Set(set, Way::default()), Style::Line, Labels::None, size);
            let outcome = made(Plate { lang: lang.to_owned(), draft: Draft::OnScreen, ..plate });
            assert!(!outcome.pages.is_empty(), "{what}: {}", outcome.notes);
            for page in outcome.pages {
                let svg = String::from_utf8(page).expect("text");
                assert_legible(&what, &svg, size);
                assert!(words(&svg).contains(side) || svg.contains("-cut"), "{what}: {}", words(&svg));
                for english in ["the", "her", "of", "palpable above"] {
                    let said = format!(" {} ", words(&svg));
                    let source = set == Set::Wall;
                    assert!(source || !said.contains(&format!(" {english} ")), "{what}: {said}");
                }
            }
        }
    }
}

#[test]
fn labelled_and_numbered_figures_can_be_read() {
    for labels in [Labels::Few, Labels::All, Labels::Numbered] {
        for (set, size) in [
            (Set::Attitudes, Size::A4),
            (Set::Fifths, Size::A4),
            (Set::Breeches, Size::Letter),
            (Set::Occiput, Size::Slide),
            (Set::Twins, Size::Slide),
            (Set::Fifths, Size::Slide),
        ] {
            for svg in sheets(set, Style::Line, labels, size) {
                assert_legible(&format!("{} {labels:?} {size:?}", set.named().0), &svg, size);
            }
        }
    }
}

/// What belongs to a figure alone: its group, without the words of the sheet after it.
fn own_of(figure: &str) -> &str {
    let mut depth = 1_usize;
    for (at, _) in figure.match_indices('<') {
        let tag = &figure[at..];
        if tag.starts_with("<g ") || tag.starts_with("<g>") {
            depth += 1;
        } else if tag.starts_with("</g>") {
            depth -= 1;
        }
        if depth == 0 {
            return &figure[..at];
        }
    }
    panic!("a figure without an end")
}

/// `--labels none` leaves the sides of the mother alone on every figure, whatever the lesson of its set.
#[test]
fn a_bare_plate_is_bare() {
    for set in Set::ALL.into_iter().filter(|set| *set != Set::Palettes) {
        let size = if set == Set::Wall { Size::A3 } else { Size::A4 };
        let plate = asked(What::Set(set, Way::default()), Style::Line, Labels::None, size);
        let pages = made(Plate { labels: Some(Labels::None), ..plate }).pages;
        let mut figures = 0;
        for page in pages {
            let svg = String::from_utf8(page).expect("text");
            for figure in svg.split("role=\"img\"").skip(1) {
                let own = own_of(figure);
                let told: Vec<String> = lines(own).into_iter().map(|line| line.text).collect();
                let sides = ["Her left", "Her right", "Her front", "Her back"];
                assert_eq!(told.len(), 2, "{}: {told:?}", set.named().0);
                assert!(told.iter().all(|text| sides.contains(&text.as_str())), "{told:?}");
                figures += 1;
            }
        }
        assert!(figures >= 4, "{}: {figures}", set.named().0);
    }
}

/// Numbers find their places on every set, on paper and on slides.
#[test]
fn every_set_can_be_numbered() {
    for set in Set::ALL.into_iter().filter(|set| ![Set::Palettes, Set::Wall].contains(set)) {
        for size in [Size::A4, Size::Slide] {
            for svg in sheets(set, Style::Line, Labels::Numbered, size) {
                assert_legible(&format!("{} numbered {size:?}", set.named().0), &svg, size);
            }
        }
    }
}

#[test]
fn every_position_is_spelled_out_and_its_figure_is_small() {
    for (set, letter) in [(Set::Occiput, 'O'), (Set::Sacrum, 'S'), (Set::Chin, 'M'), (Set::Brow, 'F')] {
        let all = sheets(set, Style::Soft, Labels::None, Size::A4);
        let [svg] = &all[..] else { panic!("{} sheets", all.len()) };
        let said = words(svg);
        for position in Position::all().filter(|p| p.code().contains(letter) && !p.code().contains("AD")) {
            let name = position.words();
            // In words, and as charts write it; LMP also means last period, and is spelled out alone.
            let coded = if position.code() == "LMP" {
                name
            } else {
                format!("{name} ({})", position.code().to_lowercase())
            };
            assert!(said.to_lowercase().contains(&coded), "{coded}: {said}");
        }
        assert!(!said.contains("LMP"));
        for (number, figure) in svg.split("role=\"img\"").skip(1).enumerate() {
            assert!(figure.len() < 64 << 10, "figure {number} has {} bytes", figure.len());
        }
    }
}

/// Each picture says in words what it shows, for someone who cannot see it.
#[test]
fn every_figure_has_its_description() {
    let all = sheets(Set::Fifths, Style::Line, Labels::None, Size::A4).concat();
    for fifths in 0..=5 {
        let front = format!(
            "aria-label=\"{fifths}/5 palpable above the brim. Cephalic presentation, back to her left, anterior"
        );
        assert!(all.contains(&front), "{front}");
        let cut = format!("aria-label=\"{fifths}/5 palpable above the brim, sagittal section.");
        assert!(all.contains(&cut), "{cut}");
    }
    let listening = sheets(Set::Listening, Style::Line, Labels::None, Size::A4).concat();
    assert!(listening.contains("listen here."), "what is shown is told");
}

/// What each grip feels is what the map of what hands feel says of a baby with its back to her left front.
#[test]
fn the_grips_feel_what_lies_under_the_hands() {
    let all = sheets(Set::Grips, Style::Line, Labels::None, Size::A4).concat();
    let figures: Vec<&str> = all.split("role=\"img\"").skip(1).collect();
    let told: Vec<String> = figures.iter().map(|figure| words(figure)).collect();
    for (grip, word) in
        [(0, "the breech"), (1, "the back"), (1, "the limbs"), (2, "the head"), (3, "the brim")]
    {
        assert!(told[grip].contains(word), "grip {}: {}", grip + 1, told[grip]);
    }
    // Her left is at the right of the picture, and there the back is felt.
    let second = lines(figures[1]);
    let at = |word: &str| {
        let found: Vec<&Line> = second.iter().filter(|line| line.text.contains(word)).collect();
        assert!(!found.is_empty(), "{word}: {second:?}");
        found.iter().map(|line| line.left).sum::<f32>() / found.len() as f32
    };
    assert!(at("back") > at("limbs"), "{second:?}");
}

/// Both ends of a series are the positions asked for, and the frames between lie between.
#[test]
fn a_series_goes_from_one_position_to_another() {
    let way = Way::between("LSA", "ROA", 5).expect("two positions");
    let outcome = made(asked(What::Set(Set::Turning, way), Style::Line, Labels::None, Size::A4));
    let svg = String::from_utf8(outcome.pages.concat()).expect("text");
    let said = words(&svg);
    assert!(said.contains("1: left sacro-anterior") && said.contains("5: right occipito-anterior"), "{said}");
    assert_eq!(svg.matches("role=\"img\"").count(), 5);
    let wrong = run(&["plate", "turning", "--from", "LOX", "-o", "x.svg"]);
    let wrong = String::from_utf8_lossy(&wrong.stderr);
    assert!(wrong.contains("`LOX` is not the name of a position"), "{wrong}");
}

/// The wall sheet has every step with its figure, what cannot wait, and its sources.
#[test]
fn the_wall_sheet_shows_the_examination_in_order() {
    let all = sheets(Set::Wall, Style::Line, Labels::None, Size::A3);
    let [svg] = &all[..] else { panic!("{} sheets", all.len()) };
    assert_legible("wall", svg, Size::A3);
    assert_eq!(svg.matches("role=\"img\"").count(), 7);
    let said = words(svg);
    let mut from = 0;
    for step in [
        "1 Look",
        "2 Fundal",
        "3 Lateral",
        "4 Pelvic palpation, one",
        "5 Pelvic palpation, two",
        "6 Listen",
        "7 Measure",
    ] {
        let at = said[from..].find(step).unwrap_or_else(|| panic!("{step} is not in its place: {said}"));
        from += at;
    }
    for word in ["Act now", "Bleeding", "Sources:", "local guidance", "36 cm, laid over the curve"] {
        assert!(said.contains(word), "{word}: {said}");
    }
    let small = run(&["plate", "wall", "--paper", "a4", "-o", "x.svg"]);
    assert!(String::from_utf8_lossy(&small.stderr).contains("A3"), "{small:?}");
}

#[test]
fn exams_of_ones_own_stand_side_by_side() {
    let sources =
        vec![Source::line("--say 1", "37+0 LOA 2/5 palp"), Source::line("--say 2", "37+0 ROP 4/5 palp")];
    let svg = made(asked(What::Exams(sources), Style::Line, Labels::None, Size::A4)).pages.concat();
    let svg = String::from_utf8(svg).expect("text");
    let said = words(&svg);
    assert_eq!(svg.matches("role=\"img\"").count(), 2);
    assert!(
        said.contains("back to her left, anterior") && said.contains("back to her right, posterior"),
        "{said}"
    );
    // What cannot wait is told beside any picture.
    let urgent = Source::line("--say", "37+0 LOA movements none");
    let outcome = made(asked(What::Exams(vec![urgent]), Style::Line, Labels::None, Size::A4));
    assert_eq!(outcome.code, commands::exit::ACT_NOW, "{}", outcome.notes);
}

#[test]
fn one_exam_alone_is_titled_with_its_position_and_weeks() {
    for (exam, title) in [
        ("weeks = \"38+0\"\n[baby]\nposition = \"ROP\"\n", "Right occipito-posterior (ROP), 38+0 weeks"),
        ("[baby]\nposition = \"LSA\"\n", "Left sacro-anterior (LSA)"),
        ("weeks = \"36+4\"\n[baby]\nback = \"left\"\n", "36+4 weeks"),
        ("[baby]\nback = \"left\"\n", "How the baby lies"),
    ] {
        let one = What::Exams(vec![Source::new("one.toml", exam)]);
        let made = made(asked(one, Style::Line, Labels::None, Size::Slide));
        let svg = String::from_utf8(made.pages[0].clone()).expect("text");
        assert!(words(&svg).starts_with(title), "{title}: {}", words(&svg));
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
        let output = run_in(here.path(), &["plate", "breeches", "-o", name, "--style", "line"], b"");
        assert_eq!(said(&output), format!("wrote {name}: the plate\n"));
        assert!(std::fs::read(here.path().join(name)).expect("the plate").starts_with(start));
    }
    let named_wrongly = said(&run(&["plate", "fifth", "-o", "x.svg"]));
    assert!(named_wrongly.contains("fifths"), "{named_wrongly}");
}

#[test]
fn each_figure_as_a_file_of_its_own_with_a_clear_name() {
    let here = tempfile::tempdir().expect("a directory");
    let arguments = ["plate", "breeches", "-o", "out/", "--style", "line"];
    let output = said(&run_in(here.path(), &arguments, b""));
    let mut names: Vec<String> = std::fs::read_dir(here.path().join("out"))
        .expect("the directory")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    let wanted = ["breech-01-frank.svg", "breech-02-complete.svg", "breech-03-footling.svg"];
    assert_eq!(names[..3], wanted, "{output}");
    assert_eq!(names.len(), 5);
    let again = said(&run_in(here.path(), &arguments, b""));
    assert!(again.contains("--force"), "{again}");
    let first = std::fs::read_to_string(here.path().join("out/breech-01-frank.svg")).expect("a picture");
    assert!(words(&first).contains("Frank: both legs up along the body."), "{}", words(&first));
}
