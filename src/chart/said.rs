//! What was understood, in sentences. In: an exam and its conclusions. Out: lines in the order of the hands, and the
//! sentence that concludes.

use super::paragraph::{Column, paragraph};
use crate::exam::spoken;
use crate::exam::{
    Baby, Back, BackTurn, Conclusion, Descent, Exam, Finding, HeartHeard, Height, KnownBy, Lie, Place,
    Position, Presentation,
};
use crate::reckon::{Remark, heart_rate};
use crate::units::{Gestation, MotherSide};
use crate::words::{Words, WordsError};

/// Headings, and the keys that stand beside them, in the order of the hands.
const BEFORE_THE_HANDS: [(&str, &[&str]); 5] = [
    ("group-dates", &["weeks", "visit", "due", "last-period", "cycle", "scan"]),
    (
        "group-says",
        &[
            "mother.movements",
            "mother.reports",
            "mother.denies",
            "mother.births-before",
            "mother.operations",
            "mother.womb-cut",
            "mother.placenta",
            "mother.gravida",
            "mother.rupture-before",
            "mother.placentas",
            "mother.rhesus-d",
            "mother.group-b-strep",
            "mother.labour",
            "mother.hours-since-broken",
            "mother.water-colour",
        ],
    ),
    (
        "group-looked",
        &[
            "mother.posture",
            "mother.shape",
            "mother.scars",
            "mother.skin",
            "mother.pulse",
            "mother.consent",
            "mother.comfort",
            "mother.build",
            "mother.scar-feel",
            "mother.muscle-gap",
            "mother.hernia",
            "mother.bladder",
            "mother.temperature",
            "mother.blood-pressure",
            "mother.breathing",
            "mother.urine-protein",
        ],
    ),
    (
        "group-womb",
        &[
            "mother.womb",
            "mother.water",
            "mother.lumps",
            "mother.fundus",
            "mother.contractions-in-ten",
            "mother.contraction-length",
            "mother.contraction-strength",
            "mother.tone-at-rest",
            "mother.tender-at",
            "mother.height-for-dates",
        ],
    ),
    (
        "group-tape",
        &[
            "mother.fundal-height",
            "mother.earlier-tapes",
            "mother.girth",
            "mother.navel",
            "mother.tape-unfit",
        ],
    ),
];
const THE_HANDS: [(&str, &[&str]); 9] = [
    ("group-grip-1", &["breech", "fundus-feels"]),
    ("group-grip-2", &["back", "limbs", "dip-at-navel"]),
    ("group-grip-3", &["head", "brim-feels", "ballottable"]),
    ("group-grip-4", &["head-above-brim", "descent", "prominence", "overlaps-pubic-bone"]),
    ("group-vaginal", &["found-by-vagina", "station"]),
    (
        "group-baby",
        &[
            "attitude",
            "legs",
            "moved-under-hands",
            "size",
            "kicks",
            "hiccups",
            "unstable-lie",
            "turning-tried",
        ],
    ),
    (
        "group-heart",
        &[
            "heart",
            "heart-with",
            "heart-counts",
            "heart-rate",
            "heart-rise",
            "heart-rhythm",
            "heart-also",
            "heart-quality",
            "heart-slows",
            "heart-by",
            "heart-and-pulse",
        ],
    ),
    ("group-weight", &["weight-by-hand", "weight-by-scan"]),
    ("group-concluded", &["lie", "presentation", "position"]),
];

/// Every heading with the names of its keys, in the order of the hands.
pub fn groups() -> Vec<(&'static str, Vec<&'static str>)> {
    let name = |key: &'static str| key.rsplit('.').next().unwrap_or(key);
    let own = |(heading, keys): &(&'static str, &'static [&'static str])| {
        (*heading, keys.iter().map(|key| name(key)).collect())
    };
    let mut groups: Vec<_> = BEFORE_THE_HANDS.iter().chain(&THE_HANDS).map(own).collect();
    groups.push(("group-note", vec!["note"]));
    groups
}

/// What a full examination has; of each line one key is enough. The first names it when none was examined.
const EXPECTED_OF_MOTHER: [&[&str]; 2] =
    [&["mother.movements"], &["mother.fundal-height", "mother.fundus", "mother.tape-unfit"]];
/// (What a finding implies is not missed: fifths are felt on a head, a rate is heard, a position says where the back is.)
const EXPECTED_OF_BABY: [&[&str]; 7] = [
    &["breech", "presentation", "position"],
    &["back", "position"],
    &["limbs"],
    &["head", "head-above-brim", "descent", "prominence", "attitude", "presentation", "position"],
    &["descent", "head-above-brim"],
    &["heart", "heart-rate", "heart-counts", "heart-rise", "heart-rhythm"],
    &["heart-rate", "heart-counts"],
];
/// Before these weeks the parts of a baby are not felt for: 24+0.
const PARTS_FELT: Gestation = Gestation::from_days(24 * 7);

/// Where the sentence of a finding stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stands {
    /// Under its heading, which says what it is about.
    UnderHeading,
    /// In running text: it says so itself.
    Alone,
}

/// What was read under one heading.
pub struct Told {
    /// The message of the heading, such as `group-grip-1`.
    pub heading: &'static str,
    /// Which baby, from 0; `None` for what is of the mother or the visit.
    pub baby: Option<usize>,
    /// The findings: key, and the sentence.
    pub sentences: Vec<(String, String)>,
}

/// Everything that was read, in the order of the hands; a heading without findings is left out.
pub fn told(exam: &Exam, place: Stands, words: &Words) -> Result<Vec<Told>, WordsError> {
    let mut told = vec![];
    let mut add = |heading, baby, keys: Vec<String>| -> Result<(), WordsError> {
        let mut sentences = vec![];
        for key in &keys {
            if let Some(value) = words_of(exam, key) {
                sentences.push((key.clone(), finding(exam, key, value, place, words)?));
            }
        }
        if !sentences.is_empty() {
            told.push(Told { heading, baby, sentences });
        }
        Ok(())
    };
    for (heading, keys) in BEFORE_THE_HANDS {
        // The weeks alone stand in the title already.
        if heading == "group-dates"
            && keys.iter().filter(|key| words_of(exam, key).is_some()).count() == 1
            && words_of(exam, "weeks").is_some()
        {
            continue;
        }
        add(heading, None, keys.iter().map(|key| (*key).to_owned()).collect())?;
    }
    for (index, baby) in exam.babies.iter().enumerate() {
        let felt_at =
            [("breech", &baby.breech), ("head", &baby.head)].map(|(key, pole)| (key, grip_of(pole)));
        for (heading, keys) in THE_HANDS {
            let elsewhere =
                |key: &&&str| felt_at.iter().any(|(k, at)| k == *key && at.is_some_and(|at| at != heading));
            let here = felt_at
                .iter()
                .filter(|(key, at)| *at == Some(heading) && !keys.contains(key))
                .map(|(key, _)| key);
            let keys = here.chain(keys.iter().filter(|key| !elsewhere(key)));
            let keys = keys.map(|key| format!("baby.{}.{key}", index + 1)).collect();
            add(heading, Some(index), keys)?;
        }
    }
    add("group-note", None, vec!["note".to_owned()])?;
    Ok(told)
}

/// The palpation that finds a head or a breech where this one was found; `None` when no height was told.
fn grip_of(pole: &Finding<Place>) -> Option<&'static str> {
    match pole.value()?.height? {
        Height::Fundus | Height::AboveNavel => Some("group-grip-1"),
        Height::AtNavel => Some("group-grip-2"),
        Height::BelowNavel | Height::IliacFossa | Height::AbovePubicBone => Some("group-grip-3"),
        Height::FromNavel(_) | Height::FromPubicBone(_) => None,
    }
}

/// Everything that was read, a line a heading.
pub fn lines(exam: &Exam, conclusions: &[Conclusion], words: &Words) -> Result<String, WordsError> {
    let told = told(exam, Stands::UnderHeading, words)?;
    let of = |baby: Option<usize>, note: bool| -> Result<String, WordsError> {
        let mut text = String::new();
        for part in told.iter().filter(|t| t.baby == baby && (t.heading == "group-note") == note) {
            let heading = words.say(part.heading, &[])?;
            let said: Vec<&str> = part.sentences.iter().map(|(_, said)| said.as_str()).collect();
            text.push_str(&paragraph(&said.join(" "), Column::Beside(&heading)));
        }
        Ok(text)
    };
    let mut text = of(None, false)?;
    for index in 0..exam.babies.len() {
        if exam.babies.len() > 1 {
            let number = (index + 1).to_string();
            text.push_str(&paragraph(&words.say("check-baby", &[("baby", &number)])?, Column::Indented));
        }
        text.push_str(&of(Some(index), false)?);
    }
    text.push_str(&of(None, true)?);
    text.push_str(&paragraph(&not_examined(exam, conclusions, words)?, Column::Indented));
    Ok(text)
}

pub(super) fn words_of<'a>(exam: &'a Exam, key: &str) -> Option<&'a str> {
    if key == "note" {
        return exam.note.as_deref();
    }
    exam.read.iter().find(|(read, _)| read == key).map(|(_, words)| words.as_str())
}

/// One finding as a sentence: its state, doubt and source in words.
fn finding(exam: &Exam, key: &str, value: &str, place: Stands, words: &Words) -> Result<String, WordsError> {
    let name = key.rsplit('.').next().unwrap_or(key);
    let plain = if key == "note" { value.to_owned() } else { charted(key, value, words)? };
    let id = spoken::message(name, spoken::is_state(name, value), words);
    let mean = match (name, baby_of(key)) {
        ("heart-counts", Some(index)) => {
            exam.babies.get(index).and_then(heart_rate).map(|rate| format!("{:.0}", rate.mean))
        }
        _ => None,
    };
    let alone = id.replacen("found-", "chart-", 1);
    let id = if place == Stands::Alone && words.has(&alone) { alone } else { id };
    words.say(&id, &[("value", &plain), ("mean", mean.as_deref().unwrap_or_default())])
}

/// A value in the words of a chart, where those differ from the words of a visit file.
pub(super) fn charted(key: &str, value: &str, words: &Words) -> Result<String, WordsError> {
    let name = match key.rsplit('.').next().unwrap_or(key) {
        "denies" => "reports",
        name => name,
    };
    let mut said = spoken::finding(value, words)?;
    if value.starts_with("could not tell (") {
        return Ok(said);
    }
    for one in value.split("; ") {
        let base = one.split(" (").next().unwrap_or(one).trim_end_matches('?');
        if let Some(own) = spoken::charted(name, base, words)? {
            said = said.replacen(&spoken::value(base, words)?, &own, 1);
        }
    }
    Ok(said)
}

fn baby_of(key: &str) -> Option<usize> {
    key.strip_prefix("baby.")?.split('.').next()?.parse::<usize>().ok()?.checked_sub(1)
}

/// What a full examination has and this one left out, in a sentence.
pub fn not_examined(exam: &Exam, conclusions: &[Conclusion], words: &Words) -> Result<String, WordsError> {
    let mut names = vec![];
    for keys in EXPECTED_OF_MOTHER {
        if keys.iter().all(|key| words_of(exam, key).is_none()) {
            names.push(name(keys[0], words)?);
        }
    }
    for index in 0..exam.babies.len() {
        for keys in EXPECTED_OF_BABY {
            let too_early =
                exam.weeks.is_some_and(|weeks| weeks < PARTS_FELT) && !keys[0].starts_with("heart");
            let lie = conclusions.get(index).and_then(|conclusion| conclusion.lie);
            let no_head_there = keys[0] == "descent" && matches!(lie, Some(Lie::Transverse | Lie::Oblique));
            let no_heart_heard =
                keys[0] == "heart-rate" && !matches!(baby_heart(exam, index), Finding::Found(_));
            if too_early || no_head_there || no_heart_heard {
                continue;
            }
            if keys.iter().all(|key| words_of(exam, &format!("baby.{}.{key}", index + 1)).is_none()) {
                let mut said = name(keys[0], words)?;
                if exam.babies.len() > 1 {
                    said = format!(
                        "{said} ({})",
                        words.say("check-baby", &[("baby", &(index + 1).to_string())])?.to_lowercase()
                    );
                }
                names.push(said);
            }
        }
    }
    if names.is_empty() {
        return words.say("check-nothing-left", &[]);
    }
    words.say("check-not-examined", &[("names", &names.join(", "))])
}

/// What is said where no remark stands: of a note only that it is not weighed.
pub fn no_remarks(exam: &Exam, words: &Words) -> Result<String, WordsError> {
    let unread = exam.note.as_deref().is_some_and(|note| !note.trim().is_empty());
    words.say(if unread { "check-remarks-none-note" } else { "check-remarks-none" }, &[])
}

fn baby_heart(exam: &Exam, index: usize) -> &Finding<HeartHeard> {
    exam.babies.get(index).map_or(&Finding::NotExamined, |baby| &baby.heart)
}

fn name(key: &str, words: &Words) -> Result<String, WordsError> {
    words.say(&format!("name-{}", key.rsplit('.').next().unwrap_or(key)), &[])
}

/// The conclusion for one baby in a few sentences.
pub fn conclusion(
    exam: &Exam,
    index: usize,
    conclusion: &Conclusion,
    words: &Words,
) -> Result<String, WordsError> {
    let mut sentences = vec![lie_and_back(conclusion, words)?];
    if conclusion.position.is_none()
        && conclusion.lie == Some(Lie::Longitudinal)
        && conclusion.back.is_some_and(|back| back.turn.is_none())
    {
        sentences.push(words.say("conclude-no-turn", &[])?);
    }
    let baby = &exam.babies[index];
    let fifths = baby.head_above_brim.value().map(|fifths| format!("{}/5", fifths.get()));
    match (conclusion.engaged, fifths) {
        (Some(true), Some(fifths)) => sentences.push(words.say("conclude-engaged", &[("fifths", &fifths)])?),
        (Some(false), Some(fifths)) => {
            sentences.push(words.say("conclude-not-engaged", &[("fifths", &fifths)])?)
        }
        (Some(true), None) => sentences.push(words.say("conclude-engaged-said", &[])?),
        (Some(false), None) if baby.descent.value() == Some(&Descent::Free) => {
            sentences.push(words.say("conclude-head-free", &[])?);
        }
        (Some(false), None) | (None, _) => {}
    }
    if conclusion.unsure {
        sentences.push(words.say("conclude-unsure", &[])?);
    }
    if conclusion.lie.is_some() || conclusion.presentation.is_some() || conclusion.back.is_some() {
        let ways = ways(baby).into_iter().map(|way| words.say(way, &[])).collect::<Result<Vec<_>, _>>()?;
        if !ways.is_empty() {
            sentences.push(words.say("conclude-from", &[("ways", &ways.join(", "))])?);
        }
    }
    Ok(sentences.join(" "))
}

/// How what a conclusion rests on is known, each way once.
fn ways(baby: &Baby) -> Vec<&'static str> {
    fn way<T>(finding: &Finding<T>) -> Option<&'static str> {
        match finding {
            Finding::Found(found) => Some(match found.known_by {
                KnownBy::Hands => "way-felt",
                KnownBy::Scan(_) => "way-scan",
                KnownBy::VaginalExamination => "way-vaginal",
            }),
            Finding::NotExamined | Finding::Absent | Finding::NotTried | Finding::CouldNotTell { .. } => None,
        }
    }
    let poles = [way(&baby.head), way(&baby.breech), way(&baby.head_above_brim)];
    let back = way(&baby.back);
    let written = [way(&baby.lie), way(&baby.presentation), way(&baby.position)];
    let rests_on_written = back.is_none() || poles.iter().all(Option::is_none);
    let written = written.iter().any(Option::is_some) && rests_on_written;
    let mut ways = vec![];
    let found = poles.into_iter().chain([back]).flatten();
    for way in found.chain(written.then_some("way-written")) {
        if !ways.contains(&way) {
            ways.push(way);
        }
    }
    ways
}

/// The lie, the back and the position in one sentence.
pub fn lie_and_back(conclusion: &Conclusion, words: &Words) -> Result<String, WordsError> {
    let lie = words.say(&lie_message(conclusion), &[])?;
    let Some(back) = conclusion.back else {
        if conclusion.lie.is_none() {
            return words.say("conclude-nothing-at-all", &[("lie", &lie)]);
        }
        return words.say("conclude-no-back", &[("lie", &lie)]);
    };
    let back = words.say(back_message(back), &[])?;
    match conclusion.position {
        None => words.say("conclude-back", &[("lie", &lie), ("back", &back)]),
        Some(position) => {
            let spelled = spoken::position(position, words)?;
            let code = position.code();
            // LMP also means last period: left mento-posterior is spelled out only. Other languages build their codes otherwise.
            let id = if Position::from_code("LMP") == Some(position) || !words.is_of_exams() {
                "conclude-position-words"
            } else {
                "conclude-position"
            };
            words.say(id, &[("lie", &lie), ("back", &back), ("position", &spelled), ("code", &code)])
        }
    }
}

fn lie_message(conclusion: &Conclusion) -> String {
    let side = match conclusion.head_side {
        Some(MotherSide::Left) => "left",
        Some(MotherSide::Right) => "right",
        None => "",
    };
    let with_side = |stem: &str| {
        if side.is_empty() { format!("conclude-{stem}") } else { format!("conclude-{stem}-head-{side}") }
    };
    match (conclusion.lie, conclusion.presentation, conclusion.head_up) {
        (_, Some(Presentation::Cephalic), _) => "conclude-cephalic".to_owned(),
        (_, Some(Presentation::Face), _) => "conclude-face".to_owned(),
        (_, Some(Presentation::Brow), _) => "conclude-brow".to_owned(),
        (_, Some(Presentation::Breech), _) => "conclude-breech".to_owned(),
        (_, Some(Presentation::Shoulder), _) => with_side("shoulder"),
        (Some(Lie::Longitudinal), None, _) => "conclude-longitudinal".to_owned(),
        (Some(Lie::Transverse), None, _) => with_side("transverse"),
        (Some(Lie::Oblique), None, Some(up)) if !side.is_empty() => {
            format!("conclude-oblique-head-{}-{side}", if up { "up" } else { "low" })
        }
        (Some(Lie::Oblique), None, _) => "conclude-oblique".to_owned(),
        (None, None, Some(true)) => "conclude-nothing-head-up".to_owned(),
        (None, None, Some(false)) => "conclude-nothing-head-low".to_owned(),
        (None, None, None) => "conclude-nothing".to_owned(),
    }
}

/// The message for where a back is.
fn back_message(back: Back) -> &'static str {
    use BackTurn::{Feet, Front, Lateral, Ribs, Spine};
    use MotherSide::{Left, Right};
    match (back.side, back.turn) {
        (Some(Left), Some(Front)) => "back-left-front",
        (Some(Left), Some(Lateral)) => "back-left-lateral",
        (Some(Left), Some(Spine)) => "back-left-spine",
        (Some(Left), None) => "back-left",
        (Some(Right), Some(Front)) => "back-right-front",
        (Some(Right), Some(Lateral)) => "back-right-lateral",
        (Some(Right), Some(Spine)) => "back-right-spine",
        (Some(Right), None) => "back-right",
        (_, Some(Ribs)) => "back-ribs",
        (_, Some(Feet)) => "back-feet",
        (None, Some(Front) | None) => "back-front",
        (None, Some(Spine | Lateral)) => "back-spine",
    }
}

/// A remark as a sentence, with its baby when there are several.
pub fn sentence(remark: &Remark, babies: usize, words: &Words) -> Result<String, WordsError> {
    let text = remark.text(words)?;
    match remark.baby {
        Some(index) => of_baby(text, index, babies, words),
        None => Ok(text),
    }
}

/// A sentence about one baby (index from 0), with its number when there are several.
pub fn of_baby(text: String, index: usize, babies: usize, words: &Words) -> Result<String, WordsError> {
    if babies < 2 {
        return Ok(text);
    }
    words.say("for-baby", &[("baby", &(index + 1).to_string()), ("text", &text)])
}
