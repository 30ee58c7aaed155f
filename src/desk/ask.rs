//! From JSON to a request, and back. In: `{"command": "draw", "exam": {"text": "..."}, "format": "svg"}`. Out: four bytes that
//! say how long the head is, the head as JSON (`code`, `text`, `notes`, `why`, `made`, and the length of each page), the pages.
//!
//! Commands and options are named as on the command line; an unknown one is refused.

use crate::commands::{
    self, Check, Chosen, Command, Draft, Draw, Edit, Form, Format, Growth, GuideLook, Handed, Handout,
    Labels, Length, MotherAs, Note, Outcome, Palette, Palpation, Paper, Request, SkinGuide, Source, Style,
    View, exit,
};
use crate::report::Look;
use crate::write::TextAs;
use serde::Deserialize;
use serde_json::json;

/// What the page may ask.
#[derive(Deserialize)]
#[serde(tag = "command", rename_all = "kebab-case", deny_unknown_fields)]
enum Ask {
    Check {
        exam: Given,
        clinic: Option<String>,
        #[serde(default)]
        quiet: Vec<String>,
        #[serde(default)]
        text: bool,
        lang: Option<String>,
        #[serde(default)]
        draft: bool,
    },
    Draw {
        exam: Given,
        format: String,
        style: Option<String>,
        palette: Option<u8>,
        view: Option<String>,
        labels: Option<String>,
        lang: Option<String>,
        #[serde(default)]
        draft: bool,
        /// A draft stands alone: the page around it says that it is one.
        #[serde(default)]
        screen: bool,
        width: Option<u32>,
        /// The hands of whoever palpates.
        hands: Option<String>,
    },
    Handout {
        exam: Given,
        format: String,
        paper: Option<String>,
        lang: Option<String>,
        clinic: Option<String>,
        #[serde(default)]
        draft: bool,
        /// The name of a layout that is shipped.
        layout: Option<String>,
        #[serde(default)]
        despite: Vec<String>,
    },
    SkinGuide {
        exam: Given,
        format: String,
        paper: Option<String>,
        /// How many minutes to draw for.
        minutes: Option<String>,
        #[serde(default)]
        left_handed: bool,
        palette: Option<u8>,
        lang: Option<String>,
        #[serde(default)]
        draft: bool,
        clinic: Option<String>,
        #[serde(default)]
        despite: Vec<String>,
    },
    Growth {
        visits: Vec<Given>,
        format: String,
        paper: Option<String>,
        lang: Option<String>,
        #[serde(default)]
        draft: bool,
        clinic: Option<String>,
    },
    Note {
        exam: Given,
        form: String,
        #[serde(default)]
        share: bool,
        lang: Option<String>,
        #[serde(default)]
        draft: bool,
        clinic: Option<String>,
        /// 32 hexadecimal digits, random.
        seed: Option<String>,
    },
    Edit {
        exam: Given,
        edits: Vec<Change>,
    },
    Line {
        exam: Given,
    },
    File {
        exam: Given,
    },
    Outline {
        exam: Given,
        lang: Option<String>,
    },
    Places {
        exam: Given,
        lang: Option<String>,
    },
    ReadBack {
        exam: Given,
        lang: Option<String>,
    },
    Vocabulary {
        lang: Option<String>,
    },
    Letters {},
}

/// An exam: the text of a file, or a line of shorthand.
#[derive(Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
enum Given {
    Text(String),
    Say(String),
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Change {
    key: String,
    values: Vec<String>,
}

/// The names by which messages call what the page sends.
const EXAM: &str = "exam";
const LINE: &str = "line";
const CLINIC: &str = "clinic";

/// Ask the one door.
pub fn answer(question: &[u8]) -> Vec<u8> {
    let request = serde_json::from_slice(question).map_err(|fault| fault.to_string()).and_then(request);
    framed(&match request {
        Ok(request) => commands::run(&request),
        Err(why) => refused(why),
    })
}

fn refused(why: String) -> Outcome {
    Outcome { notes: format!("handspan: {why}\n"), why, code: exit::FAILED, ..Outcome::default() }
}

fn framed(outcome: &Outcome) -> Vec<u8> {
    // Files of a directory are not asked for here, so their names are left out.
    let Outcome { text, notes, pages, made, why, code, names: _, each: _ } = outcome;
    let pages_long: Vec<usize> = pages.iter().map(Vec::len).collect();
    let head = json!({
        "code": code, "text": text, "notes": notes, "why": why, "made": made, "pages": pages_long,
    });
    let head = head.to_string().into_bytes();
    let Ok(length) = u32::try_from(head.len()) else {
        return framed(&refused("the answer is larger than 4 GiB".to_owned()));
    };
    let mut bytes = length.to_le_bytes().to_vec();
    bytes.extend(head);
    bytes.extend(pages.iter().flatten());
    bytes
}

fn request(ask: Ask) -> Result<Request, String> {
    let lang = |lang: Option<String>| lang.unwrap_or_else(|| "en".to_owned());
    let clinic = |text: Option<String>| text.map(|text| Source::new(CLINIC, text));
    let command = match ask {
        Ask::Check { exam, clinic: of, quiet, text, lang: tag, draft } => Command::Check(Check {
            exams: vec![source(exam)],
            json: !text,
            clinic: clinic(of),
            quiet,
            weights: false,
            weight_curves: false,
            lang: lang(tag),
            draft: Draft::asked(draft),
        }),
        Ask::Draw { exam, format, style, palette, view, labels, lang: tag, draft, screen, width, hands } => {
            Command::Draw(Draw {
                exam: source(exam),
                format: one_of(&format, &FORMATS)?,
                style: optional(style, &STYLES, Style::Soft)?,
                palette: skin(palette)?,
                mother: MotherAs::Outline,
                hands: hands.map(|hands| one_of(&hands, &PALPATIONS)).transpose()?,
                view: optional(view, &VIEWS, View::Facing)?,
                labels: optional(labels, &LABELS, Labels::Few)?,
                lang: lang(tag),
                draft: if draft && screen { Draft::OnScreen } else { Draft::asked(draft) },
                width,
                text_as: TextAs::Text,
            })
        }
        Ask::Handout { exam, format, paper, lang: tag, clinic: of, draft, layout, despite } => {
            Command::Handout(Handout {
                exam: source(exam),
                format: one_of(&format, &FORMATS)?,
                lang: lang(tag),
                draft: Draft::asked(draft),
                paper: paper.map(|paper| one_of(&paper, &PAPERS)).transpose()?,
                palette: None,
                mother: None,
                clinic: clinic(of),
                layout: layout.map(Chosen::Named),
                despite,
                emergency: None,
                invite_listening: false,
                numbers: false,
            })
        }
        Ask::SkinGuide {
            exam,
            format,
            paper,
            minutes,
            left_handed,
            palette,
            lang: tag,
            draft,
            clinic: of,
            despite,
        } => Command::SkinGuide(SkinGuide {
            exam: source(exam),
            format: one_of(&format, &FORMATS)?,
            lang: lang(tag),
            draft: Draft::asked(draft),
            look: GuideLook {
                paper: optional(paper, &SKIN_PAPERS, Paper::A4)?,
                length: optional(minutes, &MINUTES, Length::Whole)?,
                palette: skin(palette)?,
                handed: if left_handed { Handed::Left } else { Handed::Right },
            },
            clinic: clinic(of),
            despite,
        }),
        Ask::Growth { visits, format, paper, lang: tag, draft, clinic: of } => Command::Growth(Growth {
            visits: (1..).zip(visits).map(|(number, visit)| named(source(visit), number)).collect(),
            format: one_of(&format, &FORMATS)?,
            paper: optional(paper, &PAPERS, Paper::A4)?,
            lang: lang(tag),
            draft: Draft::asked(draft),
            clinic: clinic(of),
            quiet: vec![],
            width: None,
            text_as: TextAs::Text,
        }),
        Ask::Note { exam, form, share, lang: tag, draft, clinic: of, seed: digits } => Command::Note(Note {
            exam: source(exam),
            form: one_of(&form, &FORMS)?,
            share,
            lang: lang(tag),
            draft: Draft::asked(draft),
            clinic: clinic(of),
            quiet: vec![],
            layout: None,
            seed: digits.map_or(Ok([0; 16]), |digits| seed(&digits))?,
            to_file: true,
        }),
        Ask::Edit { exam, edits } => Command::Edit {
            exam: source(exam),
            edits: edits.into_iter().map(|Change { key, values }| Edit { key, values }).collect(),
        },
        Ask::Line { exam } => Command::Line { exam: source(exam) },
        Ask::File { exam } => Command::File { exam: source(exam) },
        Ask::Outline { exam, lang: tag } => Command::Outline { exam: source(exam), lang: lang(tag) },
        Ask::Places { exam, lang: tag } => Command::Places { exam: source(exam), lang: lang(tag) },
        Ask::ReadBack { exam, lang: tag } => Command::ReadBack { exam: source(exam), lang: lang(tag) },
        Ask::Letters {} => Command::Letters,
        Ask::Vocabulary { lang: tag } => Command::Vocabulary { lang: lang(tag) },
    };
    Ok(Request { command, look: Look::Plain })
}

/// One visit of several.
fn named(visit: Source, number: usize) -> Source {
    Source { name: format!("visit {number}"), ..visit }
}

fn source(given: Given) -> Source {
    match given {
        Given::Text(text) => Source::new(EXAM, text),
        Given::Say(line) => Source::line(LINE, line),
    }
}

const FORMATS: [(&str, Format); 4] =
    [("svg", Format::Svg), ("png", Format::Png), ("pdf", Format::Pdf), ("html", Format::Html)];
const STYLES: [(&str, Style); 3] = [("soft", Style::Soft), ("line", Style::Line), ("sketch", Style::Sketch)];
const VIEWS: [(&str, View); 2] = [("facing", View::Facing), ("hers", View::Hers)];
const LABELS: [(&str, Labels); 4] =
    [("none", Labels::None), ("few", Labels::Few), ("all", Labels::All), ("numbered", Labels::Numbered)];
const MINUTES: [(&str, Length); 2] = [("1", Length::Minute), ("10", Length::Whole)];
const PALPATIONS: [(&str, Palpation); 7] = [
    ("fundal", Palpation::Fundal),
    ("lateral", Palpation::Lateral),
    ("pelvic-one", Palpation::PelvicOne),
    ("pelvic-two", Palpation::PelvicTwo),
    ("tape", Palpation::Tape),
    ("horn", Palpation::Horn),
    ("doppler", Palpation::Doppler),
];
const SKIN_PAPERS: [(&str, Paper); 3] = [("a4", Paper::A4), ("letter", Paper::Letter), ("a3", Paper::A3)];
const PAPERS: [(&str, Paper); 2] = [("a4", Paper::A4), ("letter", Paper::Letter)];
const FORMS: [(&str, Form); 4] = [
    ("text", Form::Text),
    ("handover", Form::Handover),
    ("fhir", Form::Fhir),
    ("slip", Form::Slip(Format::Pdf)),
];

/// The value of a name.
fn one_of<T: Copy>(name: &str, known: &[(&str, T)]) -> Result<T, String> {
    known.iter().find(|(known, _)| *known == name).map(|(_, value)| *value).ok_or_else(|| {
        let names: Vec<&str> = known.iter().map(|(name, _)| *name).collect();
        format!("`{name}` is not one of {}", names.join(", "))
    })
}

/// The palette of a skin's number.
fn skin(number: Option<u8>) -> Result<Palette, String> {
    number.map_or(Ok(Palette::Neutral), |number| {
        Palette::skin(number).ok_or_else(|| format!("there is no palette {number}"))
    })
}

fn optional<T: Copy>(name: Option<String>, known: &[(&str, T)], usual: T) -> Result<T, String> {
    name.map_or(Ok(usual), |name| one_of(&name, known))
}

fn seed(digits: &str) -> Result<[u8; 16], String> {
    let mut seed = [0; 16];
    let wrong = || "a seed is 32 hexadecimal digits".to_owned();
    if digits.len() != 32 || !digits.is_ascii() {
        return Err(wrong());
    }
    for (byte, at) in seed.iter_mut().zip((0..).step_by(2)) {
        *byte = u8::from_str_radix(&digits[at..at + 2], 16).map_err(|_| wrong())?;
    }
    Ok(seed)
}
