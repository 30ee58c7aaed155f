//! The sets of teaching figures. In: the name of a set. Out: its figures, each an exam as text and what stands under it.
//!
//! A figure is made from an exam like any other picture; what it shows is what the program concludes from that.

use crate::exam::Position;
use crate::figure::Palette;

/// Weeks of the babies that are not drawn for their weeks.
const WEEKS: &str = "weeks = \"38+0\"\n";

/// A set of figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Set {
    /// Every named position of a baby that lies lengthwise.
    Positions,
    /// One position from 16 to 41 weeks.
    Weeks,
    /// How the head is held.
    Attitudes,
    /// How the legs of a breech lie.
    Breeches,
    /// Crosswise and slantwise.
    Crosswise,
    /// Two babies.
    Twins,
    /// From 5/5 to 0/5 of the head above the brim.
    Fifths,
    /// One picture in every palette.
    Palettes,
}

/// What stands under a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
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
}

/// One figure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Figure {
    /// The exam it is made from.
    pub exam: String,
    /// What stands under it.
    pub caption: Caption,
    /// The colours of skin.
    pub palette: Palette,
}

impl Set {
    /// Every set.
    pub const ALL: [Set; 8] = [
        Set::Positions,
        Set::Weeks,
        Set::Attitudes,
        Set::Breeches,
        Set::Crosswise,
        Set::Twins,
        Set::Fifths,
        Set::Palettes,
    ];

    /// Its name, and what it shows.
    pub fn named(self) -> (&'static str, &'static str) {
        match self {
            Set::Positions => ("positions", "the 32 named positions of a baby that lies lengthwise"),
            Set::Weeks => ("weeks", "left occipito-anterior from 16 to 41 weeks"),
            Set::Attitudes => ("attitudes", "how the head is held: flexed, deflexed, brow, face"),
            Set::Breeches => ("breeches", "how the legs of a breech lie: frank, complete, footling"),
            Set::Crosswise => ("crosswise", "lying across and slantwise"),
            Set::Twins => ("twins", "two babies, head down, bottom down and across"),
            Set::Fifths => ("fifths", "the head from 5/5 to 0/5 above the brim"),
            Set::Palettes => ("palettes", "one picture in every palette"),
        }
    }

    /// The figures, in the order they are looked at.
    pub fn figures(self) -> Vec<Figure> {
        match self {
            Set::Positions => Position::all()
                .filter(|position| matches!(position, Position::Lengthwise { .. }))
                .map(|position| {
                    one(
                        Caption::Position,
                        &format!("position = \"{}\"\nlegs = \"complete\"\n", position.words()),
                    )
                })
                .collect(),
            Set::Weeks => (16..=41)
                .map(|weeks| Figure {
                    exam: format!("weeks = \"{weeks}+0\"\n[baby]\nposition = \"LOA\"\nlegs = \"complete\"\n"),
                    caption: Caption::Weeks(weeks),
                    palette: Palette::Neutral,
                })
                .collect(),
            Set::Attitudes => [
                ("plate-flexed", "position = \"LOT\"\nattitude = \"flexed\"\n"),
                ("plate-deflexed", "position = \"LOT\"\nattitude = \"deflexed\"\n"),
                ("plate-brow", "position = \"RFT\"\n"),
                ("plate-face", "position = \"RMT\"\n"),
            ]
            .map(|(caption, baby)| one(Caption::Message(caption), baby))
            .into(),
            Set::Breeches => [
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
            Set::Crosswise => crosswise(),
            Set::Twins => twins(),
            Set::Fifths => (0..=5u8)
                .rev()
                .map(|fifths| {
                    one(
                        Caption::Fifths(fifths),
                        &format!("position = \"LOA\"\nhead-above-brim = \"{fifths}/5\"\n"),
                    )
                })
                .collect(),
            Set::Palettes => Palette::all()
                .map(|palette| Figure {
                    palette,
                    ..one(Caption::Palette, "position = \"LSP\"\nlegs = \"complete\"\n")
                })
                .collect(),
        }
    }
}

/// A figure of one baby.
fn one(caption: Caption, baby: &str) -> Figure {
    Figure { exam: format!("{WEEKS}[baby]\n{baby}"), caption, palette: Palette::Neutral }
}

fn crosswise() -> Vec<Figure> {
    let across = |head: &str, breech: &str, back: &str| {
        let baby = format!(
            "head = \"{head}, at navel\"\nbreech = \"{breech}, at navel\"\nback = \"{back}\"\nlegs = \"complete\"\n"
        );
        one(Caption::Lie, &baby)
    };
    let mut out = vec![];
    for (head, breech) in [("left", "right"), ("right", "left")] {
        out.extend(
            ["front", "towards her spine", "towards her ribs", "towards her feet"]
                .map(|back| across(head, breech, back)),
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
                "weeks = \"34+0\"\n{}{}",
                baby("right", first, "front"),
                baby("left", second, "lateral")
            ),
            caption: Caption::Message(caption),
            palette: Palette::Neutral,
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
            caption: Caption::Message(caption),
            palette: Palette::Neutral,
        });
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::exam::{Lie, read};
    use crate::reckon;

    #[test]
    fn every_figure_is_an_exam_that_agrees() {
        for set in Set::ALL {
            let figures = set.figures();
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
    fn the_positions_are_all_that_lie_lengthwise() {
        let shown: Vec<String> = Set::Positions
            .figures()
            .iter()
            .map(|figure| {
                let exam = read("figure", figure.exam.as_bytes()).exam.expect("an exam");
                reckon::conclusions(&exam)[0].position.expect("a position").code()
            })
            .collect();
        let all: Vec<String> = Position::all()
            .filter(|position| matches!(position, Position::Lengthwise { .. }))
            .map(Position::code)
            .collect();
        assert_eq!((shown.len(), shown), (32, all));
    }

    /// All four named crosswise positions, and both poles low on both sides.
    #[test]
    fn crosswise_has_every_side() {
        let (mut named, mut slanting) = (vec![], vec![]);
        for figure in Set::Crosswise.figures() {
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
