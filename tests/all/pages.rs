//! Family pages of every kind, for tests: lies, backs, doubts, twins, early weeks, with and without a clinic.

use crate::stand_in::{baby, conclusion, exam, found, scene, unsure};
use handspan::clinic::Clinic;
use handspan::exam::{
    Across, Back, BackTurn, Conclusion, Descent, Exam, Fifths, Finding, Found, HeartHeard, Height, KnownBy,
    Lie, Place, Presentation,
};
use handspan::figure::scene::{Item, Text};
use handspan::fonts::Fonts;
use handspan::reckon::Reckoning;
use handspan::sheet::family::{self, Asked};
use handspan::sheet::{Content, FAMILY_PAGE, Sheet, compose_all};
use handspan::units::{MotherSide, PagePoint};
use handspan::words::Words;

/// One page to be made.
pub struct Case {
    /// What it shows.
    pub name: String,
    /// The exam.
    pub exam: Exam,
    /// One conclusion a baby.
    pub conclusions: Vec<Conclusion>,
    /// The clinic.
    pub clinic: Clinic,
}

impl Case {
    /// Its content in English.
    pub fn content(&self) -> Content {
        content(&self.exam, &self.conclusions, &self.clinic)
    }

    /// The side to keep, on a paper, with the stand-in figure.
    pub fn page(&self, paper: &str, fonts: &Fonts) -> Sheet {
        self.sides(paper, fonts).remove(0)
    }

    /// The side for when to call.
    pub fn back(&self, paper: &str, fonts: &Fonts) -> Sheet {
        self.sides(paper, fonts).remove(1)
    }

    /// Both.
    pub fn sides(&self, paper: &str, fonts: &Fonts) -> Vec<Sheet> {
        let layout = FAMILY_PAGE.read().unwrap().on_paper(paper).unwrap();
        compose_all(&layout, &[scene()], &self.content(), &words(), fonts)
            .unwrap_or_else(|e| panic!("{} on {paper}: {e}", self.name))
    }
}

/// The English words.
pub fn words() -> Words {
    Words::load("en").expect("the English words are read")
}

/// An invented clinic.
pub fn clinic() -> Clinic {
    Clinic {
        name: Some("Willow Lane Midwives".into()),
        labour_ward: Some("01632 960 417".into()),
        emergency: Some("999".into()),
        ..Clinic::default()
    }
}

/// The words of the family page in English, without what has to be asked for.
pub fn content(exam: &Exam, conclusions: &[Conclusion], clinic: &Clinic) -> Content {
    content_with(exam, conclusions, clinic, Asked::default())
}

/// The same with what was asked for. Nothing is reckoned but the conclusions given.
pub fn content_with(exam: &Exam, conclusions: &[Conclusion], clinic: &Clinic, asked: Asked) -> Content {
    content_in(exam, conclusions, clinic, asked, &words())
}

/// The same in these words.
pub fn content_in(
    exam: &Exam,
    conclusions: &[Conclusion],
    clinic: &Clinic,
    asked: Asked,
    words: &Words,
) -> Content {
    let reckoning = Reckoning { conclusions: conclusions.to_vec(), ..Reckoning::default() };
    family::content(exam, &reckoning, clinic, asked, words).expect("the page has its words")
}

/// A conclusion with this lie and what lies lowest.
pub fn lying(lie: Lie, presentation: Option<Presentation>) -> Conclusion {
    Conclusion { lie: Some(lie), presentation, ..conclusion() }
}

/// A back on a side, turned a way.
pub fn back(side: Option<MotherSide>, turn: Option<BackTurn>) -> Back {
    Back { side, turn }
}

/// Every place a back can have in a baby that lies up and down.
pub fn backs() -> Vec<Back> {
    use MotherSide::{Left, Right};
    let mut out = vec![];
    for side in [Left, Right] {
        for turn in [None, Some(BackTurn::Front), Some(BackTurn::Lateral), Some(BackTurn::Spine)] {
            out.push(back(Some(side), turn));
        }
    }
    out.push(back(None, Some(BackTurn::Front)));
    out.push(back(None, Some(BackTurn::Spine)));
    out
}

/// Pages of every kind.
pub fn cases() -> Vec<Case> {
    use MotherSide::{Left, Right};
    let mut out = vec![];
    let mut add = |name: &str, exam: Exam, conclusions: Vec<Conclusion>, clinic: Clinic| {
        out.push(Case { name: name.to_owned(), exam, conclusions, clinic });
    };
    for presentation in [Presentation::Cephalic, Presentation::Breech] {
        for back in backs() {
            let mut e = exam(Some((37, 0)));
            e.babies[0].back = found(back);
            let place = Place { across: Some(Across::Side(Left)), height: Some(Height::BelowNavel) };
            e.babies[0].heart = found(HeartHeard::At(place));
            let c = Conclusion { back: Some(back), ..lying(Lie::Longitudinal, Some(presentation)) };
            add("lengthwise", e, vec![c], clinic());
        }
    }
    for side in [Left, Right] {
        for turn in [BackTurn::Ribs, BackTurn::Feet, BackTurn::Front, BackTurn::Spine] {
            let back = back(None, Some(turn));
            let mut e = exam(Some((38, 1)));
            e.babies[0].back = unsure(back);
            let c = Conclusion {
                back: Some(back),
                head_side: Some(side),
                unsure: true,
                ..lying(Lie::Transverse, Some(Presentation::Shoulder))
            };
            add("crosswise", e, vec![c], Clinic::default());
        }
        for head_up in [None, Some(true), Some(false)] {
            let c = Conclusion { head_side: Some(side), head_up, ..lying(Lie::Oblique, None) };
            add("slanting", exam(None), vec![c], Clinic::default());
        }
    }
    let mut tried = exam(Some((36, 0)));
    tried.babies[0].head = Finding::CouldNotTell { reason: Some("thick wall".into()) };
    tried.babies[0].back = Finding::CouldNotTell { reason: None };
    add("could not be told", tried, vec![conclusion()], clinic());

    let mut high = exam(Some((40, 3)));
    high.babies[0].head_above_brim = found(Fifths::new(5).unwrap());
    high.babies[0].descent = found(Descent::Free);
    add("high head", high, vec![lying(Lie::Longitudinal, Some(Presentation::Cephalic))], clinic());

    let mut scan = exam(Some((36, 2)));
    scan.babies[0].breech = Finding::Found(Found {
        value: Place { across: None, height: None },
        sure: true,
        known_by: KnownBy::Scan(None),
    });
    scan.babies[0].heart = found(HeartHeard::Somewhere);
    add("seen on a scan", scan, vec![lying(Lie::Longitudinal, Some(Presentation::Breech))], clinic());

    let mut twins = exam(Some((34, 0)));
    twins.babies.push(baby());
    twins.babies[1].back = found(back(Some(Right), Some(BackTurn::Spine)));
    twins.babies[1].heart = found(HeartHeard::At(Place { across: None, height: None }));
    twins.babies[0].head = unsure(Place { across: None, height: None });
    let one = Conclusion { unsure: true, ..lying(Lie::Longitudinal, Some(Presentation::Cephalic)) };
    let two = Conclusion {
        head_side: Some(Left),
        back: Some(back(Some(Right), Some(BackTurn::Spine))),
        ..lying(Lie::Oblique, None)
    };
    let mut many = clinic();
    many.night = Some("01632 960 500".into());
    add("twins", twins, vec![one, two], many);

    let mut crowded = exam(Some((36, 5)));
    crowded.babies[0].heart = found(HeartHeard::At(Place { across: None, height: None }));
    crowded.babies[0].back = Finding::Found(Found {
        value: back(Some(Right), Some(BackTurn::Spine)),
        sure: false,
        known_by: KnownBy::Scan(Some("36+0".into())),
    });
    let c = Conclusion {
        back: Some(back(Some(Right), Some(BackTurn::Spine))),
        unsure: true,
        ..lying(Lie::Longitudinal, Some(Presentation::Breech))
    };
    let long = Clinic {
        name: Some("The Community Midwives of Willow Lane and Upper Harrow Hill".into()),
        labour_ward: Some("01632 960 417".into()),
        day: Some("01632 960 500".into()),
        night: Some("01632 960 501".into()),
        emergency: Some("999".into()),
        ..Clinic::default()
    };
    let digits = Clinic { labour_ward: Some("00 44 1632 960 417 960 500 960".into()), ..Clinic::default() };
    add("long number", exam(None), vec![conclusion()], digits);
    add("crowded", crowded, vec![c], long);

    add("early", exam(Some((12, 4))), vec![conclusion()], clinic());
    add("before movements", exam(Some((23, 6))), vec![conclusion()], Clinic::default());
    out
}

/// Every text of a sheet, in the order it is written.
pub fn texts(sheet: &Sheet) -> Vec<Text<PagePoint>> {
    fn collect(items: &[Item<PagePoint>], out: &mut Vec<Text<PagePoint>>) {
        for item in items {
            match item {
                Item::Group { items, .. } | Item::Clip { items, .. } => collect(items, out),
                Item::Text(text) => out.push(text.clone()),
                Item::Fill { .. } | Item::Stroke { .. } => {}
            }
        }
    }
    let mut out = vec![];
    sheet.elements.iter().for_each(|e| collect(&e.items, &mut out));
    out
}
