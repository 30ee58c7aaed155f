//! A stand-in figure and empty exams, for tests of everything after the figure.

use handspan::exam::{Baby, Conclusion, Dates, Exam, Finding, Found, KnownBy, Mother};
use handspan::figure::scene::{Align, Colour, FillRule, Frame, Item, Path, Role, Scene, Step, Text};
use handspan::fonts::Face;
use handspan::units::{FigurePoint, Gestation};

fn at(x: f32, y: f32) -> FigurePoint {
    FigurePoint::new(x, y)
}

/// An ellipse, counter-clockwise.
fn oval(x: f32, y: f32, a: f32, b: f32) -> Path<FigurePoint> {
    let k = 0.552_285;
    vec![
        Step::Move(at(x + a, y)),
        Step::Curve(at(x + a, y + k * b), at(x + k * a, y + b), at(x, y + b)),
        Step::Curve(at(x - k * a, y + b), at(x - a, y + k * b), at(x - a, y)),
        Step::Curve(at(x - a, y - k * b), at(x - k * a, y - b), at(x, y - b)),
        Step::Curve(at(x + k * a, y - b), at(x + a, y - k * b), at(x + a, y)),
        Step::Close,
    ]
}

fn fill(path: Path<FigurePoint>, rgb: u32) -> Item<FigurePoint> {
    Item::Fill { path, colour: Colour::hex(rgb), rule: FillRule::NonZero }
}

fn ink(path: Path<FigurePoint>, width: f32, dash: Option<(f32, f32)>) -> Item<FigurePoint> {
    Item::Stroke { path, colour: Colour::hex(0x4A3B33), width, dash }
}

fn text(words: &str, x: f32, y: f32, align: Align, face: Face, role: Role) -> Item<FigurePoint> {
    Item::Text(Text {
        text: words.to_owned(),
        at: at(x, y),
        align,
        size: 1.9,
        face,
        colour: Colour::hex(0x221C19),
        lang: "en".to_owned(),
        role,
    })
}

/// A group with its marks.
pub fn group(name: &str, about: &str, items: Vec<Item<FigurePoint>>) -> Item<FigurePoint> {
    Item::Group { name: name.to_owned(), about: about.to_owned(), items }
}

/// Simple shapes in a portrait frame of 45 x 53 cm: a body, a womb, a baby with its head down and its back to
/// her left (x > 0), a heart on her left, labels of both sides.
pub fn scene() -> Scene {
    let body = vec![
        Step::Move(at(-17.0, 48.0)),
        Step::Curve(at(-18.0, 32.0), at(-22.0, 25.0), at(-21.5, 10.0)),
        Step::Curve(at(-21.0, 2.0), at(-23.0, -3.0), at(-23.0, -9.0)),
        Step::Line(at(23.0, -9.0)),
        Step::Curve(at(23.0, -3.0), at(21.0, 2.0), at(21.5, 10.0)),
        Step::Curve(at(22.0, 25.0), at(18.0, 32.0), at(17.0, 48.0)),
        Step::Close,
    ];
    let heart = vec![
        Step::Move(at(5.0, 9.0)),
        Step::Curve(at(2.6, 10.8), at(3.6, 12.4), at(5.0, 11.2)),
        Step::Curve(at(6.4, 12.4), at(7.4, 10.8), at(5.0, 9.0)),
        Step::Close,
    ];
    Scene {
        frame: Frame { left: -22.5, bottom: -8.0, right: 22.5, top: 45.0 },
        title: "Stand-in".to_owned(),
        description: "A baby lies head down, its back to its mother's left.".to_owned(),
        lang: "en".to_owned(),
        items: vec![
            group("mother", "The mother's body", vec![fill(body.clone(), 0xF4EBE4), ink(body, 0.12, None)]),
            group(
                "womb",
                "",
                vec![
                    fill(oval(0.0, 16.0, 13.0, 18.0), 0xE7D6CD),
                    ink(oval(0.0, 16.0, 13.0, 18.0), 0.1, None),
                ],
            ),
            group(
                "baby-1",
                "The baby",
                vec![
                    group(
                        "baby-1-trunk",
                        "",
                        vec![
                            fill(oval(1.5, 20.0, 6.5, 10.0), 0xC9AD9D),
                            ink(oval(1.5, 20.0, 6.5, 10.0), 0.09, None),
                        ],
                    ),
                    group(
                        "baby-1-head",
                        "",
                        vec![
                            fill(oval(0.0, 5.5, 4.8, 5.6), 0xD8C0B2),
                            ink(oval(0.0, 5.5, 4.8, 5.6), 0.09, None),
                        ],
                    ),
                ],
            ),
            group(
                "brim",
                "",
                vec![ink(vec![Step::Move(at(-12.0, 4.0)), Step::Line(at(12.0, 4.0))], 0.1, Some((0.5, 0.4)))],
            ),
            group("heart", "Where the heart was heard", vec![fill(heart, 0x2E2622)]),
            group(
                "labels",
                "",
                vec![
                    text("Your right", -21.5, 41.5, Align::Start, Face::SemiBold, Role::Side),
                    text("Your left", 21.5, 41.5, Align::End, Face::SemiBold, Role::Side),
                    text("Top of the womb, 34 cm", 0.0, 35.6, Align::Middle, Face::Italic, Role::Label),
                ],
            ),
        ],
    }
}

/// A finding by hand, sure.
pub fn found<T>(value: T) -> Finding<T> {
    Finding::Found(Found { value, sure: true, known_by: KnownBy::Hands })
}

/// A finding by hand, written with `?`.
pub fn unsure<T>(value: T) -> Finding<T> {
    Finding::Found(Found { value, sure: false, known_by: KnownBy::Hands })
}

/// A baby of which nothing was examined.
pub fn baby() -> Baby {
    Baby {
        head: Finding::NotExamined,
        breech: Finding::NotExamined,
        back: Finding::NotExamined,
        limbs: Finding::NotExamined,
        head_above_brim: Finding::NotExamined,
        descent: Finding::NotExamined,
        prominence: Finding::NotExamined,
        attitude: Finding::NotExamined,
        legs: Finding::NotExamined,
        dip_at_navel: Finding::NotExamined,
        heart: Finding::NotExamined,
        heart_with: Finding::NotExamined,
        heart_counts: Finding::NotExamined,
        heart_rate: Finding::NotExamined,
        heart_rise: Finding::NotExamined,
        heart_rhythm: Finding::NotExamined,
        weight_by_hand: Finding::NotExamined,
        weight_by_scan: Finding::NotExamined,
        moved_under_hands: Finding::NotExamined,
        fundus_feels: Finding::NotExamined,
        brim_feels: Finding::NotExamined,
        ballottable: Finding::NotExamined,
        overlaps_pubic_bone: Finding::NotExamined,
        by_vagina: Finding::NotExamined,
        station: Finding::NotExamined,
        size: Finding::NotExamined,
        kicks: Finding::NotExamined,
        hiccups: Finding::NotExamined,
        unstable_lie: Finding::NotExamined,
        turning: Finding::NotExamined,
        heart_also: Finding::NotExamined,
        heart_quality: Finding::NotExamined,
        heart_slows: Finding::NotExamined,
        heart_by: Finding::NotExamined,
        heart_and_pulse: Finding::NotExamined,
        lie: Finding::NotExamined,
        presentation: Finding::NotExamined,
        position: Finding::NotExamined,
    }
}

/// A conclusion in which nothing is known.
pub fn conclusion() -> Conclusion {
    Conclusion {
        lie: None,
        presentation: None,
        position: None,
        head_side: None,
        head_up: None,
        back: None,
        engaged: None,
        unsure: false,
        conflicts: vec![],
    }
}

/// An exam of one baby at these weeks in which nothing else was examined.
pub fn exam(weeks: Option<(u16, u16)>) -> Exam {
    let mother = Mother {
        fundal_height: Finding::NotExamined,
        girth: Finding::NotExamined,
        navel: Finding::NotExamined,
        fundus: Finding::NotExamined,
        shape: Finding::NotExamined,
        womb: Finding::NotExamined,
        water: Finding::NotExamined,
        lumps: Finding::NotExamined,
        tape_unfit: Finding::NotExamined,
        scars: Finding::NotExamined,
        operations: Finding::NotExamined,
        womb_cut: Finding::NotExamined,
        skin: Finding::NotExamined,
        movements: Finding::NotExamined,
        reports: Finding::NotExamined,
        denies: Finding::NotExamined,
        pulse: Finding::NotExamined,
        placenta: Finding::NotExamined,
        births_before: Finding::NotExamined,
        posture: Finding::NotExamined,
        earlier_tapes: Finding::NotExamined,
        gravida: Finding::NotExamined,
        rupture_before: Finding::NotExamined,
        placentas: Finding::NotExamined,
        rhesus_d: Finding::NotExamined,
        group_b_strep: Finding::NotExamined,
        labour: Finding::NotExamined,
        hours_since_broken: Finding::NotExamined,
        water_colour: Finding::NotExamined,
        consent: Finding::NotExamined,
        comfort: Finding::NotExamined,
        build: Finding::NotExamined,
        scar_feel: Finding::NotExamined,
        muscle_gap: Finding::NotExamined,
        hernia: Finding::NotExamined,
        bladder: Finding::NotExamined,
        temperature: Finding::NotExamined,
        blood_pressure: Finding::NotExamined,
        breathing: Finding::NotExamined,
        urine_protein: Finding::NotExamined,
        contractions_in_ten: Finding::NotExamined,
        contraction_length: Finding::NotExamined,
        contraction_strength: Finding::NotExamined,
        tone_at_rest: Finding::NotExamined,
        tender_at: Finding::NotExamined,
        height_for_dates: Finding::NotExamined,
    };
    Exam {
        dates: Dates::default(),
        weeks: weeks.and_then(|(w, d)| Gestation::new(w, d)),
        mother,
        babies: vec![baby()],
        note: None,
        read: vec![],
    }
}
