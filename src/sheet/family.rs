//! The words of the family page. In: the exam, what follows from it, the clinic. Out: `Content` for the layout
//! `family-page.toml`, in plain words: no codes, no numbers about the baby, no verdict.

use super::content::{Block, Content, Kind};
use crate::exam::{
    Baby, Back, BackTurn, Conclusion, Descent, Exam, Fifths, Finding, HeartHeard, KnownBy, Lie, Presentation,
};
use crate::units::{Gestation, MotherSide};
use crate::words::{Words, WordsError};

/// Under this the womb and its level alone are drawn.
const BABY_DRAWN_FROM: Option<Gestation> = Gestation::new(26, 0);
/// From this on, movements not felt yet are a reason to call (source: NTH NHS, in family-safety.csv).
const MOVEMENTS_FELT_BY: Option<Gestation> = Gestation::new(24, 0);
/// From this on the page says that movements stay the same to the end (source: NHS-MOVE; RCOG-57).
const LATE_FROM: Option<Gestation> = Gestation::new(28, 0);

/// The clinic as the page names it; what is missing becomes a line to write on.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ClinicLines {
    /// Its name.
    pub name: Option<String>,
    /// Its telephone numbers, each as it is to be printed.
    pub phones: Vec<String>,
}

/// The words of the family page. `conclusions` has one entry for each baby of `exam`, in the same order.
///
/// The caller has made sure that nothing stands that must stop the page (an act-now, findings that cannot
/// both be right).
pub fn content(
    exam: &Exam,
    conclusions: &[Conclusion],
    clinic: &ClinicLines,
    words: &Words,
) -> Result<Content, WordsError> {
    let say = |id: &str| words.say(id, &[]);
    let several = exam.babies.len() > 1;
    let early = exam.weeks < BABY_DRAWN_FROM && exam.weeks.is_some();
    let mut out = Content::default();
    let mut put = |name: &str, blocks: Vec<Block>| {
        out.blocks.insert(name.to_owned(), blocks);
    };

    let title = say(if several { "family-title-more" } else { "family-title-one" })?;
    put("family-title", vec![Block::new(Kind::Title, title.clone())]);
    put("family-name", vec![Block::new(Kind::Blank, say("family-name")?)]);
    put("family-felt-on", vec![Block::new(Kind::Blank, felt_on(exam.weeks, words)?)]);

    let found = found(exam, conclusions, early, words)?;
    let description = found.iter().map(|b| b.text.as_str()).collect::<Vec<_>>().join(" ");
    put("family-found", found);
    put("family-about", about(exam, early, words)?);

    put("family-call-title", vec![Block::new(Kind::Part, say("family-call-title")?)]);
    put("family-worried", vec![Block::new(Kind::Text, say("family-worried")?)]);
    put("family-phone", phone(clinic, words)?);
    put("family-moves", moves(exam.weeks, several, words)?);
    let waters = !early && exam.babies.iter().zip(conclusions).any(|(b, c)| cord_may_fall(b, c));
    put("family-go", go(waters, words)?);
    put("family-call", call(waters, words)?);
    let version = [("version", env!("CARGO_PKG_VERSION"))];
    put("family-use", vec![Block::new(Kind::Text, words.say("family-use", &version)?)]);

    out.title = title;
    out.description = description;
    Ok(out)
}

fn felt_on(weeks: Option<Gestation>, words: &Words) -> Result<String, WordsError> {
    let Some(age) = weeks else { return words.say("family-felt-on", &[]) };
    let (weeks, days) = ((age.days() / 7).to_string(), (age.days() % 7).to_string());
    let id = match age.days() % 7 {
        0 => "family-weeks",
        1 => "family-weeks-day",
        _ => "family-weeks-days",
    };
    let age = words.say(id, &[("weeks", &weeks), ("days", &days)])?;
    words.say("family-felt-on-at", &[("age", &age)])
}

/// How each baby lies: one strong sentence, then where head and back are.
fn found(
    exam: &Exam,
    conclusions: &[Conclusion],
    early: bool,
    words: &Words,
) -> Result<Vec<Block>, WordsError> {
    let several = exam.babies.len() > 1;
    let mut out = vec![];
    for (number, (baby, conclusion)) in exam.babies.iter().zip(conclusions).enumerate() {
        if early && which_way(conclusion).is_none() {
            continue;
        }
        let number = (number + 1).to_string();
        let name = if several {
            words.say("family-baby-number", &[("number", &number)])?
        } else {
            words.say("family-baby-one", &[])?
        };
        let probably = Probably::of(baby, conclusion);
        let lie = lie_message(conclusion, probably.lie, several);
        out.push(Block::new(Kind::Lead, words.say(&lie, &[("baby", &name), ("number", &number)])?));
        let mut rest = vec![];
        if let Some(id) = head_message(conclusion) {
            rest.push(words.say(id, &[])?);
        }
        // A lie that could not be told says nothing of the back unless the back was felt.
        if which_way(conclusion).is_some() || conclusion.back.is_some() {
            rest.push(back_sentence(baby, conclusion, probably.back, words)?);
        }
        if !rest.is_empty() {
            out.push(Block::new(Kind::Text, rest.join(" ")));
        }
    }
    if out.is_empty() {
        out.push(Block::new(Kind::Lead, words.say("family-lie-early", &[])?));
        out.push(Block::new(Kind::Text, words.say("family-early-picture", &[])?));
    }
    Ok(out)
}

/// How a baby lies, in the four ways a family is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Way {
    HeadDown,
    BottomDown,
    Across,
    Slanting,
}

fn which_way(c: &Conclusion) -> Option<Way> {
    match (c.lie, c.presentation) {
        (Some(Lie::Transverse), _) | (None, Some(Presentation::Shoulder)) => Some(Way::Across),
        (Some(Lie::Oblique), _) => Some(Way::Slanting),
        (_, Some(Presentation::Cephalic | Presentation::Face | Presentation::Brow)) => Some(Way::HeadDown),
        (_, Some(Presentation::Breech)) => Some(Way::BottomDown),
        (Some(Lie::Longitudinal), _) => match c.head_up {
            Some(true) => Some(Way::BottomDown),
            Some(false) => Some(Way::HeadDown),
            None => None,
        },
        (None, None) => None,
    }
}

fn lie_message(c: &Conclusion, probably: bool, several: bool) -> String {
    let id = match which_way(c) {
        Some(Way::HeadDown) => "family-lie-head-down",
        Some(Way::BottomDown) => "family-lie-bottom-down",
        Some(Way::Across) => "family-lie-across",
        Some(Way::Slanting) => "family-lie-slanting",
        None if several => return "family-lie-not-told-number".to_owned(),
        None => return "family-lie-not-told".to_owned(),
    };
    with_doubt(id, probably)
}

fn with_doubt(id: &str, probably: bool) -> String {
    if probably { format!("{id}-probably") } else { id.to_owned() }
}

/// Where the head is, said of a baby that lies across or on a slant.
fn head_message(c: &Conclusion) -> Option<&'static str> {
    use MotherSide::{Left, Right};
    match (which_way(c)?, c.head_side, c.head_up) {
        (Way::Across, Some(Left), _) | (Way::Slanting, Some(Left), None) => Some("family-head-left"),
        (Way::Across, Some(Right), _) | (Way::Slanting, Some(Right), None) => Some("family-head-right"),
        (Way::Slanting, Some(Left), Some(false)) => Some("family-head-low-left"),
        (Way::Slanting, Some(Right), Some(false)) => Some("family-head-low-right"),
        (Way::Slanting, Some(Left), Some(true)) => Some("family-head-high-left"),
        (Way::Slanting, Some(Right), Some(true)) => Some("family-head-high-right"),
        (Way::Slanting, None, Some(false)) => Some("family-head-low"),
        (Way::Slanting, None, Some(true)) => Some("family-head-high"),
        (Way::HeadDown | Way::BottomDown, _, _) | (Way::Across | Way::Slanting, None, _) => None,
    }
}

fn back_sentence(
    baby: &Baby,
    conclusion: &Conclusion,
    probably: bool,
    words: &Words,
) -> Result<String, WordsError> {
    let Some(Back { side, turn }) = conclusion.back else {
        return words.say(
            match baby.back {
                Finding::CouldNotTell { .. } | Finding::Absent | Finding::Found(_) => "family-back-not-told",
                Finding::NotExamined | Finding::NotTried => "family-back-not-felt",
            },
            &[],
        );
    };
    let id = match (side.is_some(), turn) {
        (_, Some(BackTurn::Ribs)) => "family-back-ribs",
        (_, Some(BackTurn::Feet)) => "family-back-feet",
        (true, Some(BackTurn::Front)) => "family-back-side-front",
        (true, Some(BackTurn::Spine)) => "family-back-side-spine",
        (true, Some(BackTurn::Lateral)) => "family-back-side-square",
        (true, None) => "family-back-side",
        (false, Some(BackTurn::Front)) => "family-back-front",
        (false, Some(BackTurn::Spine)) => "family-back-spine",
        (false, Some(BackTurn::Lateral) | None) => return words.say("family-back-not-told", &[]),
    };
    let side = match side {
        Some(MotherSide::Left) => words.say("family-side-left", &[])?,
        Some(MotherSide::Right) => words.say("family-side-right", &[])?,
        None => String::new(),
    };
    words.say(&with_doubt(id, probably), &[("side", &side)])
}

/// Which sentences say "probably".
struct Probably {
    lie: bool,
    back: bool,
}

impl Probably {
    fn of(baby: &Baby, conclusion: &Conclusion) -> Self {
        let position = baby.position.is_unsure();
        let lie = position
            || baby.head.is_unsure()
            || baby.breech.is_unsure()
            || baby.lie.is_unsure()
            || baby.presentation.is_unsure();
        let back = baby.back.is_unsure() || (baby.back.value().is_none() && position);
        // Doubt that cannot be traced to one finding is said of both.
        let all = conclusion.unsure && !lie && !back;
        Self { lie: lie || all, back: back || all }
    }
}

/// What the page is and is not.
fn about(exam: &Exam, early: bool, words: &Words) -> Result<Vec<Block>, WordsError> {
    let scan = exam.babies.iter().any(seen_on_scan);
    let mut ids = vec![if scan { "family-hands-scan" } else { "family-hands" }];
    ids.push("family-turn");
    ids.push("family-hold");
    let heard = |b: &Baby| matches!(b.heart.value(), Some(HeartHeard::At(_)));
    if exam.babies.iter().any(heard) {
        ids.push("family-heart");
    }
    if !early {
        ids.push("family-artist");
    }
    let mut out = vec![Block::new(Kind::Heading, words.say("family-about-title", &[])?)];
    for id in ids {
        out.push(Block::new(Kind::Text, words.say(id, &[])?));
    }
    Ok(out)
}

fn seen_on_scan(baby: &Baby) -> bool {
    fn by_scan<T>(finding: &Finding<T>) -> bool {
        matches!(finding, Finding::Found(f) if matches!(f.known_by, KnownBy::Scan(_)))
    }
    by_scan(&baby.head)
        || by_scan(&baby.breech)
        || by_scan(&baby.back)
        || by_scan(&baby.limbs)
        || by_scan(&baby.attitude)
        || by_scan(&baby.legs)
        || by_scan(&baby.lie)
        || by_scan(&baby.presentation)
        || by_scan(&baby.position)
}

fn phone(clinic: &ClinicLines, words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![match &clinic.name {
        Some(name) => Block::new(Kind::Strong, name.clone()),
        None => Block::new(Kind::Blank, words.say("family-clinic-blank", &[])?),
    }];
    out.extend(clinic.phones.iter().map(|phone| Block::new(Kind::Number, phone.clone())));
    if clinic.phones.is_empty() {
        out.push(Block::new(Kind::Blank, words.say("family-number-blank", &[])?));
    }
    Ok(out)
}

fn moves(weeks: Option<Gestation>, several: bool, words: &Words) -> Result<Vec<Block>, WordsError> {
    let title = if several { "family-moves-title-more" } else { "family-moves-title-one" };
    let mut strong = vec!["family-moves-fewer", "family-moves-call"];
    if weeks.is_some() && weeks < MOVEMENTS_FELT_BY {
        strong.insert(0, "family-moves-early");
    }
    let mut text = vec!["family-moves-wait"];
    if weeks.is_none() || weeks >= LATE_FROM {
        text.push("family-moves-late");
    }
    text.push("family-moves-monitor");
    let said = |ids: Vec<&str>| ids.into_iter().map(|id| words.say(id, &[])).collect::<Result<Vec<_>, _>>();
    let mut out = vec![Block::new(Kind::Heading, words.say(title, &[])?)];
    out.extend(said(strong)?.into_iter().map(|s| Block::new(Kind::Strong, s)));
    out.push(Block::new(Kind::Text, said(text)?.join(" ")));
    Ok(out)
}

/// `waters`: broken waters are a reason to come in, not only to call.
fn go(waters: bool, words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut ids = vec![];
    if waters {
        ids.push("family-go-waters");
    }
    ids.extend([
        "family-go-bleeding",
        "family-go-pain",
        "family-go-breath",
        "family-go-head",
        "family-go-fits",
    ]);
    list("family-go-title", &ids, words)
}

/// Not known to be head down, or a head still high above the brim: waters that break are urgent (RCOG-50).
fn cord_may_fall(baby: &Baby, conclusion: &Conclusion) -> bool {
    // 4/5: "can be lifted out" (BETTER, in engagement-fifths.csv).
    let high = baby.head_above_brim.value().is_some_and(|f| Some(*f) >= Fifths::new(4))
        || baby.descent.value() == Some(&Descent::Free);
    high || which_way(conclusion) != Some(Way::HeadDown)
}

fn call(waters: bool, words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut ids = vec![];
    if !waters {
        ids.push("family-call-fluid");
    }
    ids.extend([
        "family-call-head",
        "family-call-sight",
        "family-call-fever",
        "family-call-swelling",
        "family-call-vomit",
        "family-call-faint",
        "family-call-leg",
        "family-call-tired",
        "family-call-harm",
    ]);
    list("family-call-list-title", &ids, words)
}

fn list(title: &str, ids: &[&str], words: &Words) -> Result<Vec<Block>, WordsError> {
    let mut out = vec![Block::new(Kind::Heading, words.say(title, &[])?)];
    for id in ids {
        out.push(Block::new(Kind::Item, words.say(id, &[])?));
    }
    Ok(out)
}
