//! The sets of teaching figures. In: the name of a set. Out: its figures, each an exam as text, what stands under it, and
//! what it is to show beside the baby.
//!
//! A figure is made from an exam like any other picture; what it shows is what the program concludes from that.

use crate::body::skull::Leads;
use crate::exam::suggest::{SIDE_NEVER_GUESSED, Suggestion, suggest};
use crate::exam::words::Vocabulary;
use crate::exam::{Denominator, Position};
use crate::figure::Palette;

/// Weeks of the babies that are not drawn for their weeks.
const WEEKS: &str = "weeks = \"38+0\"\n";

/// A set of figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Set {
    /// The eight positions of a head bent forward.
    Occiput,
    /// The eight positions of a bottom.
    Sacrum,
    /// The eight positions of a face.
    Chin,
    /// The eight positions of a brow.
    Brow,
    /// How the legs of a breech lie.
    Breeches,
    /// Crosswise and slantwise.
    Crosswise,
    /// How the head is held, and the diameter with which it presents.
    Attitudes,
    /// From 5/5 to 0/5 of the head above the brim, each with a cut in the midline.
    Fifths,
    /// The top of the womb from 12 to 40 weeks.
    Levels,
    /// What each of the four grips feels.
    Grips,
    /// Where to listen.
    Listening,
    /// One position on its way to another.
    Turning,
    /// The examination in order, for a wall.
    Wall,
    /// Two babies.
    Twins,
    /// What leads, from below.
    Below,
    /// One picture in every palette.
    Palettes,
}

/// What stands under a figure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Caption {
    /// The name of its position, spelled out.
    Position,
    /// The name of its position; without one, how it lies and where its back is.
    Lie,
    /// A message of the words.
    Message(&'static str),
    /// The message for completed weeks.
    Weeks(u16),
    /// The message for fifths above the brim.
    Fifths(u8),
    /// The message for the figure's own palette.
    Palette,
    /// A number, and the position at both ends of a series.
    Frame(u8),
}

/// What a figure shows for its lesson.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Lesson {
    /// Nothing but the baby.
    None,
    /// The diameter with which the head presents.
    Diameter,
    /// What a grip feels, 1 to 4.
    Grip(u8),
    /// Where the heart is best heard.
    Listening,
    /// The tape, from the pubic bone to the top of the womb.
    Tape,
    /// Which baby is the first, and which the second.
    Babies,
    /// Hundredths of the way to the position of another exam.
    Way(u8, String),
    /// What leads, from below: what it is, and where what names it lies, in eighths from her front by way of her left.
    Below(Leads, u8),
}

/// One figure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Figure {
    /// The exam it is made from.
    pub exam: String,
    /// What stands under it.
    pub caption: Caption,
    /// The colours of skin, when the lesson is about them.
    pub palette: Option<Palette>,
    /// Whether it is a cut in the midline instead of a picture from the front.
    pub cut: bool,
    /// What it shows.
    pub lesson: Lesson,
}

/// One position on its way to another.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Way {
    /// Codes or words of the positions at both ends.
    pub ends: [String; 2],
    /// Pictures, both ends among them.
    pub frames: u8,
}

impl Default for Way {
    fn default() -> Self {
        Way { ends: ["left occipito-transverse", "direct occipito-anterior"].map(str::to_owned), frames: 6 }
    }
}

impl Way {
    /// From one position to another in so many pictures; a sentence when one of them is not known.
    pub fn between(from: &str, to: &str, frames: u8) -> Result<Self, String> {
        let known = |name: &str| {
            let found = Position::find(name).map(Position::words);
            found.ok_or_else(|| {
                let near = match suggest(name, crate::exam::position::rows()) {
                    Suggestion::Word(near) => format!("; did you mean {near}?"),
                    Suggestion::Side => format!("; {SIDE_NEVER_GUESSED};"),
                    Suggestion::Nothing => ";".to_owned(),
                };
                format!("`{name}` is not the name of a position{near} `handspan words` lists them")
            })
        };
        let ends = [known(from)?, known(to)?];
        if ends[0] == ends[1] {
            return Err(format!("the series begins and ends at {}; name two positions", ends[0]));
        }
        Ok(Way { ends, frames })
    }
}

impl Set {
    /// Every set.
    pub const ALL: [Set; 16] = [
        Set::Occiput,
        Set::Sacrum,
        Set::Chin,
        Set::Brow,
        Set::Breeches,
        Set::Crosswise,
        Set::Attitudes,
        Set::Fifths,
        Set::Levels,
        Set::Grips,
        Set::Listening,
        Set::Turning,
        Set::Wall,
        Set::Twins,
        Set::Below,
        Set::Palettes,
    ];

    /// Its name, and what it shows.
    pub fn named(self) -> (&'static str, &'static str) {
        match self {
            Set::Occiput => ("occiput", "the eight positions of a head bent forward"),
            Set::Sacrum => ("sacrum", "the eight positions of a breech"),
            Set::Chin => ("chin", "the eight positions of a face"),
            Set::Brow => ("brow", "the eight positions of a brow"),
            Set::Breeches => ("breech", "how the legs of a breech lie: frank, complete, footling"),
            Set::Crosswise => ("transverse", "transverse and oblique lie"),
            Set::Attitudes => {
                ("attitudes", "how the head is held, with the diameter that presents, measured")
            }
            Set::Fifths => ("fifths", "the head from 5/5 to 0/5 above the brim, a cut beside each"),
            Set::Levels => ("levels", "the top of the womb from 12 to 40 weeks"),
            Set::Grips => ("grips", "what each of the four grips feels"),
            Set::Listening => ("listening", "where to listen"),
            Set::Turning => ("turning", "one position on its way to another, step by step"),
            Set::Wall => ("wall", "the examination in order, one page of A3 for a wall"),
            Set::Twins => ("twins", "two babies, cephalic, breech and transverse"),
            Set::Below => ("below", "head, brow, face and bottom from below, in eight positions each"),
            Set::Palettes => ("palettes", "one picture in every palette"),
        }
    }

    /// The figures, in the order they are looked at; those of one group stand under one another. `way`: the series of
    /// `turning`.
    pub fn groups(self, way: &Way) -> Vec<Vec<Figure>> {
        let single = |figures: Vec<Figure>| figures.into_iter().map(|figure| vec![figure]).collect();
        match self {
            Set::Occiput => single(eight(Denominator::Occiput)),
            Set::Sacrum => single(eight(Denominator::Sacrum)),
            Set::Chin => single(eight(Denominator::Mentum)),
            Set::Brow => single(eight(Denominator::Frontum)),
            Set::Breeches => single(
                [
                    ("plate-frank", "frank"),
                    ("plate-complete", "complete"),
                    ("plate-footling-left", "footling left"),
                    ("plate-footling-right", "footling right"),
                    ("plate-footling-both", "footling both"),
                ]
                .map(|(caption, legs)| {
                    one(Caption::Message(caption), &format!("position = \"LST\"\nlegs = \"{legs}\"\n"))
                })
                .into(),
            ),
            Set::Crosswise => single(crosswise()),
            Set::Attitudes => single(
                [
                    ("plate-flexed", "position = \"LOT\"\nattitude = \"flexed\"\n"),
                    ("plate-deflexed", "position = \"LOT\"\nattitude = \"deflexed\"\n"),
                    ("plate-brow", "position = \"RFT\"\n"),
                    ("plate-face", "position = \"RMT\"\n"),
                ]
                .map(|(caption, baby)| Figure {
                    lesson: Lesson::Diameter,
                    ..one(Caption::Message(caption), baby)
                })
                .into(),
            ),
            Set::Fifths => (0..=5u8)
                .rev()
                .map(|fifths| {
                    let exam = format!("position = \"LOA\"\nhead-above-brim = \"{fifths}/5\"\n");
                    let front = one(Caption::Fifths(fifths), &exam);
                    vec![front.clone(), Figure { cut: true, ..front }]
                })
                .collect(),
            Set::Levels => single(
                [12, 16, 20, 24, 28, 32, 36, 40]
                    .map(|weeks| {
                        let baby = "[baby]\nposition = \"LOA\"\nlegs = \"complete\"\n";
                        Figure {
                            exam: format!("weeks = \"{weeks}+0\"\n{baby}"),
                            ..one(Caption::Weeks(weeks), "")
                        }
                    })
                    .into(),
            ),
            Set::Grips => single(
                [(1, "plate-grip-1"), (2, "plate-grip-2"), (3, "plate-grip-3"), (4, "plate-grip-4")]
                    .map(|(grip, caption)| Figure {
                        lesson: Lesson::Grip(grip),
                        ..one(Caption::Message(caption), GRIPPED)
                    })
                    .into(),
            ),
            Set::Listening => single(
                ["LOA", "ROA", "LOP", "ROP", "LSA", "RSA"]
                    .map(|code| format!("position = \"{code}\"\nlegs = \"complete\"\n"))
                    .into_iter()
                    .chain(["position = \"RMA\"\n".to_owned(), across("left", "right", "front")])
                    .map(|baby| Figure { lesson: Lesson::Listening, ..one(Caption::Lie, &baby) })
                    .collect(),
            ),
            Set::Turning => single(turning(way)),
            Set::Wall => single(wall()),
            Set::Twins => single(twins()),
            Set::Below => single(Leads::ALL.into_iter().flat_map(from_below).collect()),
            Set::Palettes => single(
                Palette::all()
                    .map(|palette| Figure {
                        palette: Some(palette),
                        ..one(Caption::Palette, "position = \"LSP\"\nlegs = \"complete\"\n")
                    })
                    .collect(),
            ),
        }
    }

    /// Whether its lesson is lost without the few labels.
    pub fn needs_labels(self) -> bool {
        matches!(self, Set::Fifths | Set::Levels)
    }
}

/// The steps of the examination: looking, four grips, listening, measuring.
fn wall() -> Vec<Figure> {
    let step =
        |lesson, exam: &str| Figure { exam: format!("{WEEKS}{exam}"), lesson, ..one(Caption::Lie, "") };
    let gripped = format!("[baby]\n{GRIPPED}");
    let mut out = vec![step(
        Lesson::None,
        "[mother]\nskin = [\"linea nigra\"]\nscars = [\"low transverse\"]\noperations = [\"caesarean\"]\nwomb-cut = \"low transverse\"\n",
    )];
    out.extend((1..=4).map(|grip| step(Lesson::Grip(grip), &gripped)));
    out.push(step(Lesson::Listening, &gripped));
    out.push(step(Lesson::Tape, &format!("[mother]\nfundal-height = \"36 cm\"\n{gripped}")));
    out
}

/// The baby that is felt by the four grips.
pub const GRIPPED: &str = "position = \"LOA\"\nlegs = \"complete\"\nhead-above-brim = \"4/5\"\n";

/// The eight positions of a part.
fn eight(part: Denominator) -> Vec<Figure> {
    Position::all()
        .filter(|p| matches!(p, Position::Lengthwise { denominator, .. } if *denominator == part))
        .map(|p| one(Caption::Position, &format!("position = \"{}\"\nlegs = \"complete\"\n", p.words())))
        .collect()
}

/// The eight positions of what leads, from below.
fn from_below(leads: Leads) -> Vec<Figure> {
    let (part, more) = match leads {
        Leads::BentHead => (Denominator::Occiput, "attitude = \"flexed\"\n"),
        Leads::StraightHead => (Denominator::Occiput, "attitude = \"deflexed\"\n"),
        Leads::Brow => (Denominator::Frontum, ""),
        Leads::Face => (Denominator::Mentum, ""),
        Leads::Bottom => (Denominator::Sacrum, "legs = \"frank\"\n"),
    };
    let turned = |position: Position| match position {
        Position::Lengthwise { denominator, octant } if denominator == part => Some((position, octant.get())),
        Position::Lengthwise { .. } | Position::Crosswise { .. } => None,
    };
    Position::all()
        .filter_map(turned)
        .map(|(position, eighths)| Figure {
            lesson: Lesson::Below(leads, eighths),
            ..one(Caption::Position, &format!("position = \"{}\"\n{more}", position.words()))
        })
        .collect()
}

/// A figure of one baby.
pub fn one(caption: Caption, baby: &str) -> Figure {
    Figure {
        exam: format!("{WEEKS}[baby]\n{baby}"),
        caption,
        palette: None,
        cut: false,
        lesson: Lesson::None,
    }
}

/// The pictures from one position to another.
fn turning(way: &Way) -> Vec<Figure> {
    let [from, to] = way.ends.each_ref().map(|end| {
        let exam = format!("{WEEKS}[baby]\nposition = \"{end}\"\nlegs = \"complete\"\n");
        exam
    });
    let last = way.frames.max(2) - 1;
    (0..=last)
        .map(|i| {
            let figure = one(Caption::Frame(i + 1), "");
            let hundredths = (u16::from(i) * 100 / u16::from(last)) as u8;
            match i {
                0 => Figure { exam: from.clone(), ..figure },
                i if i == last => Figure { exam: to.clone(), ..figure },
                _ => Figure { exam: from.clone(), lesson: Lesson::Way(hundredths, to.clone()), ..figure },
            }
        })
        .collect()
}

/// A baby that lies across.
fn across(head: &str, breech: &str, back: &str) -> String {
    format!(
        "head = \"{head}, at navel\"\nbreech = \"{breech}, at navel\"\nback = \"{back}\"\nlegs = \"complete\"\n"
    )
}

fn crosswise() -> Vec<Figure> {
    let mut out = vec![];
    for (head, breech) in [("left", "right"), ("right", "left")] {
        out.extend(
            ["front", "towards her spine", "towards her ribs", "towards her feet"]
                .map(|back| one(Caption::Lie, &across(head, breech, back))),
        );
    }
    for (low, high) in [("left", "right"), ("right", "left")] {
        for (below, above) in [("head", "breech"), ("breech", "head")] {
            let baby = format!(
                "{below} = \"{low} iliac fossa\"\n{above} = \"{high}, fundus\"\nback = \"{high} front\"\nlegs = \"complete\"\n"
            );
            out.push(one(Caption::Lie, &baby));
        }
    }
    out
}

fn twins() -> Vec<Figure> {
    let place = |side: &str, end: &str| match end {
        "head" => format!("head = \"{side}, below navel\"\nbreech = \"{side}, above navel\"\n"),
        _ => format!("head = \"{side}, above navel\"\nbreech = \"{side}, below navel\"\n"),
    };
    let baby = |side: &str, end: &str, back: &str| {
        format!("[[baby]]\n{}back = \"{side} {back}\"\nlegs = \"complete\"\n", place(side, end))
    };
    let lengthwise = [
        ("plate-twins-head-head", "head", "head"),
        ("plate-twins-head-bottom", "head", "bottom"),
        ("plate-twins-bottom-head", "bottom", "head"),
        ("plate-twins-bottom-bottom", "bottom", "bottom"),
    ];
    let mut out: Vec<Figure> = lengthwise
        .iter()
        .map(|(caption, first, second)| Figure {
            exam: format!(
                "weeks = \"34+0\"\n{}{}{}",
                baby("right", first, "front"),
                baby("left", second, "lateral"),
                // The first lies lowest.
                if (*first, *second) == ("bottom", "head") { "descent = \"free\"\n" } else { "" },
            ),
            lesson: Lesson::Babies,
            ..one(Caption::Message(caption), "")
        })
        .collect();
    for (caption, end) in [("plate-twins-head-across", "head"), ("plate-twins-bottom-across", "bottom")] {
        let first = match end {
            "head" => "head = \"above pubic bone\"\n",
            _ => "breech = \"above pubic bone\"\n",
        };
        let second = "head = \"left, at navel\"\nbreech = \"right, at navel\"\nback = \"front\"\nlegs = \"complete\"\n";
        out.push(Figure {
            exam: format!("weeks = \"34+0\"\n[[baby]]\n{first}back = \"right front\"\nlegs = \"complete\"\n[[baby]]\n{second}"),
            lesson: Lesson::Babies,
            ..one(Caption::Message(caption), "")
        });
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::exam::{Lie, read};
    use crate::reckon;

    fn figures(set: Set) -> Vec<Figure> {
        set.groups(&Way::default()).concat()
    }

    #[test]
    fn every_figure_is_an_exam_that_agrees() {
        for set in Set::ALL.into_iter().filter(|set| *set != Set::Wall) {
            let figures = figures(set);
            assert!(figures.len() >= 4, "{}", set.named().0);
            for figure in figures {
                let reading = read("figure", figure.exam.as_bytes());
                assert!(reading.problems.is_empty(), "{}: {}", figure.exam, reading.problems[0].message);
                let exam = reading.exam.expect("an exam");
                let remarks = reckon::reckon(&exam, &Default::default()).remarks;
                assert!(remarks.iter().all(|remark| remark.grade.is_lesser()), "{}", figure.exam);
                for conclusion in reckon::conclusions(&exam) {
                    assert!(conclusion.lie.is_some() && conclusion.back.is_some(), "{}", figure.exam);
                    assert!(!conclusion.unsure && conclusion.conflicts.is_empty(), "{}", figure.exam);
                }
            }
        }
    }

    #[test]
    fn four_sets_show_all_positions_that_lie_lengthwise() {
        let mut shown: Vec<String> = [Set::Occiput, Set::Sacrum, Set::Chin, Set::Brow]
            .into_iter()
            .flat_map(figures)
            .map(|figure| {
                let exam = read("figure", figure.exam.as_bytes()).exam.expect("an exam");
                reckon::conclusions(&exam)[0].position.expect("a position").code()
            })
            .collect();
        let mut all: Vec<String> = Position::all()
            .filter(|position| matches!(position, Position::Lengthwise { .. }))
            .map(Position::code)
            .collect();
        shown.sort();
        all.sort();
        assert_eq!((shown.len(), shown), (32, all));
    }

    /// All four named crosswise positions, and both poles low on both sides.
    #[test]
    fn crosswise_has_every_side() {
        let (mut named, mut slanting) = (vec![], vec![]);
        for figure in figures(Set::Crosswise) {
            let exam = read("figure", figure.exam.as_bytes()).exam.expect("an exam");
            let conclusion = reckon::conclusions(&exam).remove(0);
            named.extend(conclusion.position.map(Position::code));
            if conclusion.lie == Some(Lie::Oblique) {
                slanting.push((conclusion.head_side, conclusion.head_up));
            }
        }
        named.sort();
        assert_eq!(named, ["LADA", "LADP", "RADA", "RADP"]);
        slanting.sort_by_key(|(side, up)| (side.map(|s| s.sign() > 0.0), *up));
        slanting.dedup();
        assert_eq!(slanting.len(), 4);
    }
}
