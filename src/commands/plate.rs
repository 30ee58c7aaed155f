//! `plate`. In: the name of a set, or exams of one's own, and options. Out: sheets with a grid of figures, each with its
//! name; or each figure as a file of its own.
//!
//! Words are never set smaller than the size of the sheet's paper asks for: what does not fit goes to another sheet.

mod beside;
mod lesson;
mod pages;
mod sets;
mod wall;

pub use pages::Size;
pub use sets::{Set, Way};

use super::languages::{self, Draft, Tongues};
use super::load::{self, Loaded};
use super::picture::{self, Maker};
use super::{Format, Outcome, Source, exit};
use crate::body::lateral::lateral;
use crate::body::pose::{self, Pose, cell_for};
use crate::body::skull::Leads;
use crate::chart::said;
use crate::exam::{Conclusion, Exam, spoken};
use crate::figure::below::Below;
use crate::figure::scene::Scene;
use crate::figure::shown::Shown;
use crate::figure::{self, FigureOptions, Labels, MotherAs, Palette, Palpation, Style, View};
use crate::fonts::Fonts;
use crate::report::Look;
use crate::sheet::{Content, PICTURE, Sheet, compose};
use crate::words::{Part, Words, WordsError, capital};
use crate::write::TextAs;
use sets::{Caption, Figure, Lesson};

/// What is on the sheets.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What {
    /// A set of figures; the series is that of the set `turning`.
    Set(Set, Way),
    /// Exams of one's own, side by side.
    Exams(Vec<Source>),
}

/// The sheets to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plate {
    /// What is on them.
    pub what: What,
    /// The kind of file.
    pub format: Format,
    /// The style.
    pub style: Style,
    /// The colours of skin.
    pub palette: Palette,
    /// The labels on each figure; left out, those without which the lesson of a set is not seen.
    pub labels: Option<Labels>,
    /// The size of the sheets.
    pub size: Size,
    /// How far the cervix is open where it is seen, cm.
    pub open_cm: u8,
    /// Each figure as a file of its own, in a directory.
    pub singly: bool,
    /// Language tag; two with a comma between stand side by side.
    pub lang: String,
    /// What becomes of a language that nobody has signed.
    pub draft: Draft,
    /// Width of a PNG in pixels; `None` for the default.
    pub width: Option<u32>,
    /// Text of an SVG as text with its font, or as outlines.
    pub text_as: TextAs,
}

/// The names of the sets, a line each.
pub fn list() -> String {
    let line = |set: &Set| {
        let (name, shows) = set.named();
        format!("{name:<11}{shows}\n")
    };
    Set::ALL.iter().map(line).collect()
}

/// Make the sheets.
pub fn run(options: &Plate, look: Look) -> Outcome {
    let parts = [Part::Family, Part::Picture, Part::Plates];
    let tongues = match Tongues::chosen(&options.lang, options.draft, &parts) {
        Ok(tongues) => tongues,
        Err(fault) => return load::wordless(&fault),
    };
    let (groups, own) = match &options.what {
        What::Set(set, way) => (set.groups(way), vec![]),
        What::Exams(sources) => (vec![], sources.iter().map(|source| load::exam(source, None)).collect()),
    };
    let mut notes = String::new();
    let mut code = exit::DONE;
    for loaded in &own {
        match loaded.exam_and_told(tongues.english(), look) {
            Ok((_, told)) => notes.push_str(&told),
            Err(outcome) => return *outcome,
        }
        code = code.max(loaded.code());
    }
    match made(options, &groups, &own, tongues.pages(), tongues.english()) {
        Ok((pages, names)) => Outcome { pages, names, notes, made: "the plate", code, ..Outcome::default() },
        Err(why) => {
            notes.push_str(&format!("handspan: {why}\n"));
            Outcome { notes, why, code: code.max(exit::FAILED), ..Outcome::default() }
        }
    }
}

/// A PNG of a whole sheet needs more pixels than one picture.
const PNG_WIDTH: u32 = 2400;

/// The finished files, and their names when each figure is a file of its own: names are English in every language.
fn made(
    options: &Plate,
    groups: &[Vec<Figure>],
    own: &[Loaded<'_>],
    languages: &[Words],
    english: &Words,
) -> Result<(Vec<Vec<u8>>, Vec<String>), String> {
    let fonts = Fonts::load().map_err(|e| e.to_string())?;
    let sheets = languages::sheets(languages, &fonts, |words, draft| {
        let maker = Maker { draft, ..Maker::new(words, &fonts) };
        sheets(options, &ready(options, groups, own, words)?, &maker)
    })?;
    let words = languages.first().ok_or("no language is named")?;
    let maker = Maker::new(words, &fonts);
    if !options.singly {
        let width = options.width.unwrap_or(PNG_WIDTH);
        return Ok((maker.files(&sheets, options.format, options.text_as, Some(width))?, vec![]));
    }
    let mut pages = vec![];
    for sheet in sheets {
        pages.extend(maker.files(&[sheet], options.format, options.text_as, options.width)?);
    }
    Ok((pages, names(options, &ready(options, groups, own, english)?)))
}

/// The figures with the words of one language.
fn ready(
    options: &Plate,
    groups: &[Vec<Figure>],
    own: &[Loaded<'_>],
    words: &Words,
) -> Result<Vec<Vec<Ready>>, String> {
    let mut ready: Vec<Vec<Ready>> = vec![];
    for group in groups {
        ready.push(group.iter().map(|figure| Ready::of(figure, options, words)).collect::<Result<_, _>>()?);
    }
    for loaded in own {
        ready.push(vec![Ready::own(loaded, options, words)?]);
    }
    Ok(ready)
}

/// The sheets in one language.
fn sheets(options: &Plate, ready: &[Vec<Ready>], maker: &Maker<'_>) -> Result<Vec<Sheet>, String> {
    if options.singly {
        return singly(options, ready, maker);
    }
    let title = match &options.what {
        What::Set(set, way) => lesson::title(*set, way, maker.words),
        What::Exams(_) => match ready.iter().flatten().collect::<Vec<_>>()[..] {
            [one] => Ok(one.title.clone()),
            _ => maker.words.say("plate-own", &[]),
        },
    };
    let title = title.map_err(|e| e.to_string())?;
    match &options.what {
        What::Set(Set::Wall, _) => {
            let figures: Vec<&Ready> = ready.iter().flatten().collect();
            Ok(vec![wall::sheet(options, &title, &figures, maker)?])
        }
        What::Set(..) | What::Exams(_) => pages::sheets(options, &title, ready, maker),
    }
}

/// Each figure as a picture with its name under it.
fn singly(options: &Plate, ready: &[Vec<Ready>], maker: &Maker<'_>) -> Result<Vec<Sheet>, String> {
    let told = |e: &dyn std::fmt::Display| e.to_string();
    let layout = PICTURE.read().map_err(|e| told(&e))?;
    let foot = lesson::foot(maker).map_err(|e| told(&e))?;
    let mut sheets = vec![];
    for one in ready.iter().flatten() {
        let content = Content {
            title: one.caption.clone(),
            description: format!("{} {foot}", one.about),
            ..Content::default()
        };
        let mm_per_cm =
            layout.mm_per_cm(&figure::FRAME, &content, maker.words, maker.fonts).map_err(|e| told(&e))?;
        let mut captions = vec![format!("{}.", one.caption)];
        captions.extend(one.notes.iter().cloned());
        captions.push(foot.clone());
        let scene = one.scene(options, mm_per_cm, captions, maker)?;
        sheets.push(compose(&layout, &[scene], &content, maker.words, maker.fonts).map_err(|e| told(&e))?);
    }
    Ok(sheets)
}

/// The names of the files of figures, in their order.
fn names(options: &Plate, ready: &[Vec<Ready>]) -> Vec<String> {
    let set = match &options.what {
        What::Set(set, _) => set.named().0,
        What::Exams(_) => "exam",
    };
    let mut names = vec![];
    for (number, group) in ready.iter().enumerate() {
        for one in group {
            let name = format!("{set}-{:02}-{}", number + 1, in_a_file_name(&one.caption));
            names.push(format!("{name}.{}", options.format.ending()));
        }
    }
    names
}

/// Words as a part of a file's name: small letters, digits, hyphens.
fn in_a_file_name(words: &str) -> String {
    let mut out = String::new();
    for c in words.split([':', '(']).next().unwrap_or_default().chars() {
        match c.to_ascii_lowercase() {
            c if c.is_ascii_alphanumeric() => out.push(c),
            _ if out.is_empty() || out.ends_with('-') => {}
            _ => out.push('-'),
        }
    }
    out.trim_end_matches('-').to_owned()
}

/// A figure whose body is posed, with its words.
struct Ready {
    pose: Pose,
    /// Over a sheet that shows it alone.
    title: String,
    caption: String,
    /// The figure in words.
    about: String,
    /// What is to be said of the drawing itself.
    notes: Vec<String>,
    shown: Vec<Shown>,
    below: Option<Below>,
    cut: bool,
    palette: Palette,
    needs_labels: bool,
    hands: Option<Palpation>,
}

impl Ready {
    /// A figure of a set.
    fn of(figure: &Figure, options: &Plate, words: &Words) -> Result<Self, String> {
        let told = |e: &dyn std::fmt::Display| e.to_string();
        let source = Source::new("figure", figure.exam.as_str());
        let loaded = load::exam(&source, None);
        let exam = loaded.exam(Look::Plain).map_err(|outcome| outcome.why)?;
        let conclusions = &loaded.reckoning.conclusions;
        let pose = match &figure.lesson {
            Lesson::Way(hundredths, to) => {
                let source = Source::new("figure", to.as_str());
                let goal = load::exam(&source, None);
                let exam_to = goal.exam(Look::Plain).map_err(|outcome| outcome.why)?;
                let share = f32::from(*hundredths) / 100.0;
                pose::on_the_way(exam, conclusions, (exam_to, &goal.reckoning.conclusions), share)
            }
            Lesson::None
            | Lesson::Diameter
            | Lesson::Grip(_)
            | Lesson::Listening
            | Lesson::Tape
            | Lesson::Babies => picture::pose(exam, &loaded),
            // No baby is posed: a skull has seams, the form has none.
            Lesson::Below(..) => {
                let alone = Exam { babies: vec![], ..exam.clone() };
                pose::from_exam(&alone, &[])
            }
        };
        let below = match figure.lesson {
            Lesson::Below(leads, eighths) => Some(Below { leads, eighths, open_cm: options.open_cm }),
            _ => None,
        };
        let mut caption = capital(&caption(figure, &loaded, words).map_err(|e| told(&e))?);
        if figure.lesson == Lesson::Diameter {
            caption = format!("{caption}. {}", lesson::diameter_told(&pose, words).map_err(|e| told(&e))?);
        }
        if let Some(Below { leads: Leads::StraightHead, .. }) = below {
            caption = words.say("below-straight", &[("position", &caption)]).map_err(|e| told(&e))?;
        }
        let shown = lesson::shown(&figure.lesson, &pose, words).map_err(|e| told(&e))?;
        let mut about = vec![format!("{caption}.")];
        if !matches!(figure.lesson, Lesson::Way(..)) {
            for conclusion in conclusions {
                about.push(said::lie_and_back(conclusion, words).map_err(|e| told(&e))?);
            }
        }
        if below.is_some() {
            about.push(words.say("below-how", &[]).map_err(|e| told(&e))?);
        }
        if figure.cut {
            about.push(words.say("plate-cut", &[]).map_err(|e| told(&e))?);
        }
        about.extend(shown.iter().map(|shown| format!("{}.", shown.text())));
        let set = match &options.what {
            What::Set(set, _) => Some(*set),
            What::Exams(_) => None,
        };
        Ok(Ready {
            notes: match below {
                Some(_) => vec![words.say("below-how", &[]).map_err(|e| told(&e))?],
                None => picture::notes(&pose, words).map_err(|e| told(&e))?,
            },
            pose,
            title: caption.clone(),
            below,
            caption,
            about: about.join(" "),
            shown,
            cut: figure.cut,
            palette: figure.palette.unwrap_or(options.palette),
            needs_labels: set.is_some_and(Set::needs_labels),
            hands: match figure.lesson {
                Lesson::Grip(number) => Palpation::ALL.get(usize::from(number).wrapping_sub(1)).copied(),
                Lesson::Listening => Some(Palpation::Horn),
                Lesson::Tape => Some(Palpation::Tape),
                _ => None,
            },
        })
    }

    /// An exam of one's own.
    fn own(loaded: &Loaded<'_>, options: &Plate, words: &Words) -> Result<Self, String> {
        let told = |e: WordsError| e.to_string();
        let exam = loaded.exam(Look::Plain).map_err(|outcome| outcome.why)?;
        let pose = picture::pose(exam, loaded);
        let mut about = vec![];
        for (index, conclusion) in loaded.reckoning.conclusions.iter().enumerate() {
            let sentence = said::lie_and_back(conclusion, words).map_err(told)?;
            about.push(load::of_baby(sentence, index, exam.babies.len(), words).map_err(told)?);
        }
        let about = about.join(" ");
        Ok(Ready {
            notes: picture::notes(&pose, words).map_err(told)?,
            pose,
            title: title_of_own(exam, &loaded.reckoning.conclusions, words).map_err(told)?,
            caption: about.trim_end_matches('.').to_owned(),
            about,
            shown: vec![],
            below: None,
            cut: false,
            palette: options.palette,
            needs_labels: false,
            hands: None,
        })
    }

    /// The figure, cast no finer than its size asks for.
    fn scene(
        &self,
        options: &Plate,
        mm_per_cm: f32,
        captions: Vec<String>,
        maker: &Maker<'_>,
    ) -> Result<Scene, String> {
        let wanted = FigureOptions {
            style: options.style,
            palette: self.palette,
            mother: MotherAs::Outline,
            hands: self.hands,
            view: View::Facing,
            labels: options.labels.unwrap_or(if self.needs_labels { Labels::Few } else { Labels::None }),
            mm_per_cm,
            type_pt: options.size.type_pt(),
            title: self.caption.clone(),
            description: self.about.clone(),
            captions,
        };
        let (pose, words, fonts) = (&self.pose, maker.words, maker.fonts);
        // Bare when it is asked for: for the learner to say what is shown.
        let shown = if options.labels == Some(Labels::None) { &[] } else { &self.shown[..] };
        let mut scene = if let Some(below) = self.below {
            let colours = figure::colours_from_below(pose, &wanted);
            figure::below::figure(below, (&colours.0, colours.1), &wanted, words, fonts)
        } else if self.cut {
            let cut = lateral(pose);
            let cast = cut.cast(cell_for(mm_per_cm));
            figure::side::figure(pose, &cut, cast.as_ref(), &wanted, words, fonts)
        } else {
            let cast = pose.cast_for(mm_per_cm);
            figure::figure_showing(pose, cast.as_ref(), &wanted, shown, words, fonts)
        }
        .map_err(|e| e.to_string())?;
        figure::coarse::coarsen(&mut scene, COARSE_MM / mm_per_cm);
        Ok(scene)
    }
}

/// How far a line of a figure may move on paper, mm: a printer's dot.
const COARSE_MM: f32 = 0.07;

/// Over an exam of one's own that is shown alone: its position and its weeks, as far as they are known.
fn title_of_own(exam: &Exam, conclusions: &[Conclusion], words: &Words) -> Result<String, WordsError> {
    let mut parts = vec![];
    if let [Conclusion { position: Some(position), .. }] = conclusions {
        parts.push(capital(&spoken::position_and_code(*position, words)?));
    }
    if let Some(weeks) = exam.weeks {
        parts.push(words.say("plate-week", &[("weeks", &weeks.to_string())])?);
    }
    if parts.is_empty() { words.say("picture-title", &[]) } else { Ok(parts.join(", ")) }
}

/// What stands over a figure.
fn caption(figure: &Figure, loaded: &Loaded<'_>, words: &Words) -> Result<String, WordsError> {
    let conclusion = loaded.reckoning.conclusions.first();
    match &figure.caption {
        Caption::Position => {
            let position = conclusion
                .and_then(|c| c.position)
                .map(|position| spoken::position_and_code(position, words));
            Ok(position.transpose()?.unwrap_or_default())
        }
        Caption::Lie => match conclusion {
            Some(Conclusion { position: Some(position), .. }) => spoken::position_and_code(*position, words),
            Some(conclusion) => Ok(said::lie_and_back(conclusion, words)?.trim_end_matches('.').to_owned()),
            None => Ok(String::new()),
        },
        Caption::Message(id) => words.say(id, &[]),
        Caption::Weeks(weeks) => words.say("plate-week", &[("weeks", &weeks.to_string())]),
        Caption::Palette => match figure.palette.unwrap_or_default() {
            Palette::Neutral => words.say("plate-palette-neutral", &[]),
            Palette::Skin(number) => words.say("plate-palette", &[("number", &number.to_string())]),
        },
        Caption::Fifths(fifths) if figure.cut => {
            words.say("plate-fifths-cut", &[("fifths", &format!("{fifths}/5"))])
        }
        Caption::Fifths(fifths) => words.say("label-fifths", &[("fifths", &format!("{fifths}/5"))]),
        Caption::Frame(number) => {
            let ends = conclusion
                .and_then(|c| c.position)
                .map(|position| spoken::position_and_code(position, words));
            let ends = ends.transpose()?;
            let number = number.to_string();
            match (&figure.lesson, ends) {
                (Lesson::None, Some(position)) => {
                    words.say("plate-frame-end", &[("number", &number), ("position", &position)])
                }
                _ => words.say("plate-frame", &[("number", &number)]),
            }
        }
    }
}
