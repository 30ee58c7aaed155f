//! Her abdomen to tap on. In: an exam, of which only the weeks and her measures are used. Out: her outline as an SVG without a
//! baby, and as JSON where each named place lies on it.
//!
//! A text that cannot be read yet, such as an empty one, is drawn as one without weeks.

use super::load::{self, Loaded};
use super::picture::{self, Maker, Wanted};
use super::{Format, Labels, MotherAs, Outcome, Palette, Source, Style, View, exit};
use crate::body::touch;
use crate::exam::say::Canonical;
use crate::exam::{Across, Baby, Exam, Height, Mother, Reading, spoken};
use crate::figure;
use crate::fonts::Fonts;
use crate::sheet::{Content, PICTURE};
use crate::words::{Part, Words};
use crate::write::TextAs;
use serde::Serialize;

/// Type of the words on it, points.
const TYPE_PT: f32 = 12.0;

#[derive(Serialize)]
struct Outline {
    /// The picture in words.
    description: String,
    places: Vec<Spot>,
}

/// A place; `x` from the left edge and `y` from the upper edge of the picture, as shares of its width and height.
#[derive(Serialize)]
struct Spot {
    words: String,
    /// The same in the language asked for.
    said: String,
    x: f64,
    y: f64,
}

/// The outline and its places.
pub fn run(source: &Source, lang: &str) -> Outcome {
    let words = match Words::load_for(lang, &[Part::Family, Part::Desk]) {
        Ok(words) => words,
        Err(fault) => return load::wordless(&fault),
    };
    match outline(source, &words) {
        Ok((text, picture)) => {
            Outcome { text, pages: vec![picture], made: "the outline", ..Outcome::default() }
        }
        Err(why) => {
            Outcome { notes: format!("handspan: {why}\n"), why, code: exit::FAILED, ..Outcome::default() }
        }
    }
}

fn outline(source: &Source, words: &Words) -> Result<(String, Vec<u8>), String> {
    let told = |e: &dyn std::fmt::Display| e.to_string();
    let bare = bare(load::exam(source, None).reading.exam);
    let loaded = Loaded {
        name: &source.name,
        source: "",
        reading: Reading { exam: None, problems: vec![], questions: vec![], spans: Default::default() },
        reckoning: Default::default(),
        is_line: false,
    };
    let pose = picture::pose(&bare, &loaded);
    let fonts = Fonts::load().map_err(|e| told(&e))?;
    let maker = Maker::new(words, &fonts);
    let layout = PICTURE.read().map_err(|e| told(&e))?;
    let content = Content {
        title: words.say("outline-title", &[]).map_err(|e| told(&e))?,
        description: words.say("outline-description", &[]).map_err(|e| told(&e))?,
        ..Content::default()
    };
    let wanted = Wanted {
        style: Style::Soft,
        palette: Palette::Neutral,
        mother: MotherAs::Outline,
        hands: None,
        view: View::Facing,
        labels: Labels::None,
        type_pt: TYPE_PT,
        captions: vec![],
    };
    let sheets = maker.sheets(&pose, &wanted, &layout, &content)?;
    let sheet = sheets.first().ok_or("the layout has no sheet")?;
    let scale = f64::from(sheet.width_mm) / f64::from(figure::FRAME.right - figure::FRAME.left);
    let height = f64::from(sheet.height_mm) / scale;
    let share = |value: f64| (value * 10_000.0).round() / 10_000.0;
    let places = touch::places(&pose.mother)
        .into_iter()
        .filter(|(place, _)| named(place.across, place.height))
        // Where the picture marks it; hands at the fundus reach lower.
        .map(|(place, _)| (place, pose.mother.place(&place)))
        .map(|(place, at)| {
            let said = spoken::value(&place.canonical(), words).map_err(|e| told(&e))?;
            Ok((place.canonical(), said, at))
        })
        .collect::<Result<Vec<_>, String>>()?
        .into_iter()
        .map(|(words, said, at)| Spot {
            words,
            said,
            x: share(
                f64::from(at.0.x - figure::FRAME.left) / f64::from(figure::FRAME.right - figure::FRAME.left),
            ),
            y: share(f64::from(figure::FRAME.top - at.0.y) / height),
        })
        .collect();
    let text = serde_json::to_string(&Outline { description: content.description.clone(), places })
        .map_err(|e| told(&e))?;
    let picture = maker.files(&sheets, Format::Svg, TextAs::Text, None)?.into_iter().next();
    Ok((text, picture.unwrap_or_default()))
}

/// What of an exam shapes her abdomen.
pub(super) fn bare(exam: Option<Exam>) -> Exam {
    let Some(exam) = exam else {
        return Exam {
            weeks: None,
            dates: Default::default(),
            mother: Mother::default(),
            babies: vec![Baby::default()],
            note: None,
            read: vec![],
        };
    };
    let Mother { fundal_height, girth, navel, fundus, .. } = exam.mother;
    Exam {
        mother: Mother { fundal_height, girth, navel, fundus, ..Mother::default() },
        babies: vec![Baby::default()],
        ..exam
    }
}

/// Places with a side and a level, each in words; a fossa once a side.
pub(super) fn named(across: Option<Across>, height: Option<Height>) -> bool {
    match (across, height) {
        (Some(Across::Flank(_)), Some(Height::IliacFossa)) => false,
        (Some(Across::Side(_) | Across::Middle | Across::Flank(_)), Some(height)) => {
            !matches!(height, Height::FromNavel(_) | Height::FromPubicBone(_))
        }
        _ => false,
    }
}
