//! `skin-guide`. In: an exam and options. Out: a page of strokes in order for each baby and a tracing sheet at true size;
//! or the reason why there is none.
//!
//! As for the family page, nothing is made while anything stands that cannot wait or cannot be right; what cannot wait may
//! be named with `--despite`.

use super::against::{self, Asked};
use super::languages::{self, Draft, Tongues};
use super::load;
use super::picture::Maker;
use super::{Format, Outcome, Paper, Source, exit};
use crate::body::pose::{self, DrawingNote, Pose};
use crate::chart::said;
use crate::exam::{Conclusion, Exam};
use crate::figure::panel::{self, Line, PanelOptions, Shown};
use crate::figure::scene::{Frame, Scene};
use crate::figure::strokes::{Step, Stroke, strokes};
use crate::fonts::{Face, Fonts};
use crate::report::Look;
use crate::sheet::skin::{self, Grounds, Landmarks, STEPS};
use crate::sheet::{Block, Content, Kind, Layout, SKIN_GUIDE, SKIN_GUIDE_BROAD, Sheet, SheetError, compose};
use crate::words::{Part, Words, WordsError};
use crate::write::TextAs;

/// The guide to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SkinGuide {
    /// The exam.
    pub exam: Source,
    /// The kind of file.
    pub format: Format,
    /// Language tag; two with a comma between stand side by side.
    pub lang: String,
    /// What becomes of a language that nobody has signed.
    pub draft: Draft,
    /// Paper.
    pub paper: Paper,
    /// The clinic's file, for its thresholds.
    pub clinic: Option<Source>,
    /// Ids of act-now remarks despite which the guide is made.
    pub despite: Vec<String>,
}

/// Make the guide, unless something stands against it.
pub fn run(options: &SkinGuide, look: Look) -> Outcome {
    let parts = [Part::Family, Part::Picture, Part::Guide];
    let tongues = match Tongues::chosen(&options.lang, options.draft, &parts) {
        Ok(tongues) => tongues,
        Err(fault) => return load::wordless(&fault),
    };
    let (clinic, clinic_problems, clinic_failed) = load::clinic(options.clinic.as_ref(), look);
    let loaded = load::exam(&options.exam, clinic.as_ref());
    let exam = match loaded.exam(look) {
        Ok(exam) => exam,
        Err(outcome) => return *outcome,
    };
    let asked = Asked { document: "skin guide", despite: &options.despite };
    let mut notes = match against::look(&loaded, &asked, look, tongues.english()) {
        Ok(notes) => notes,
        Err(outcome) => return *outcome,
    };
    notes.push_str(&clinic_problems);
    if clinic_failed {
        let why = "the clinic's file has a fault".to_owned();
        return Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() };
    }
    match files(exam, &loaded.reckoning.conclusions, options, &tongues) {
        Ok((pages, left_out)) => {
            if let Some(why) = left_out {
                notes.push_str(&format!("{}: {why}\n", loaded.name));
            }
            Outcome { notes, pages, made: "the skin guide", code: loaded.code(), ..Outcome::default() }
        }
        Err(why) => {
            notes.push_str(&format!("{}: no skin guide is made: {why}\n", loaded.name));
            Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() }
        }
    }
}

/// The finished files: one PDF, or a file a page. Pages of two languages stand side by side; tracing sheets are of true size and
/// follow one another. Beside them why there is no tracing sheet, where there is none.
fn files(
    exam: &Exam,
    conclusions: &[Conclusion],
    options: &SkinGuide,
    tongues: &Tongues,
) -> Result<(Vec<Vec<u8>>, Option<String>), String> {
    let fonts = Fonts::load().map_err(|e| e.to_string())?;
    let languages = tongues.pages();
    let words = languages.first().ok_or("no language is named")?;
    let drawn = Drawn::of(exam, conclusions, words)?;
    let mut sheets = languages::sheets(languages, &fonts, |words, draft| {
        Guide { draft, ..drawn.guide(options.paper, words, &fonts) }.pages()
    })?;
    for words in languages {
        let mut tracing = drawn.guide(options.paper, words, &fonts).tracing()?;
        languages::mark(&mut tracing, words, &fonts)?;
        sheets.extend(tracing);
    }
    let left_out = not_traced(&drawn.pose, tongues.english()).map_err(|e| e.to_string())?;
    let files = Maker::new(words, &fonts).files(&sheets, options.format, TextAs::Text, None)?;
    Ok((files, left_out))
}

/// Why nothing is traced: a baby whose size was made to fit is not as large on her as it is drawn. `None` where it is traced.
fn not_traced(pose: &Pose, words: &Words) -> Result<Option<String>, WordsError> {
    let fitted = pose.notes.iter().find_map(|note| match note {
        DrawingNote::Smaller(number) => Some((*number, "drawing-smaller")),
        DrawingNote::DoesNotFit(number) => Some((*number, "drawing-does-not-fit")),
        _ => None,
    });
    let Some((number, why)) = fitted else { return Ok(None) };
    let why = load::of_baby(words.say(why, &[])?, number - 1, pose.baby_count, words)?;
    Ok(Some(format!("{why} {}", words.say("trace-none", &[])?)))
}

/// The sheets: a page for each baby, then the tracing sheet where there is one; or why there are none.
pub fn skin_sheets(
    exam: &Exam,
    conclusions: &[Conclusion],
    paper: Paper,
    words: &Words,
    fonts: &Fonts,
) -> Result<Vec<Sheet>, String> {
    let drawn = Drawn::of(exam, conclusions, words)?;
    let guide = drawn.guide(paper, words, fonts);
    let mut sheets = guide.pages()?;
    sheets.extend(guide.tracing()?);
    Ok(sheets)
}

/// What is drawn, in every language.
struct Drawn<'a> {
    exam: &'a Exam,
    conclusions: &'a [Conclusion],
    pose: Pose,
    strokes: Vec<Stroke>,
}

impl<'a> Drawn<'a> {
    /// The strokes of an exam; or why there are none, in `words`.
    fn of(exam: &'a Exam, conclusions: &'a [Conclusion], words: &Words) -> Result<Self, String> {
        let pose = pose::from_exam(exam, conclusions);
        if pose.babies.is_empty() {
            return Err(words.say(nothing(&pose), &[]).map_err(|e| e.to_string())?);
        }
        let strokes = strokes(&pose);
        Ok(Drawn { exam, conclusions, pose, strokes })
    }

    fn guide<'b>(&'b self, paper: Paper, words: &'b Words, fonts: &'b Fonts) -> Guide<'b> {
        let Drawn { exam, conclusions, pose, strokes } = self;
        Guide { exam, conclusions, paper, pose, strokes, words, fonts, draft: None }
    }
}

/// Why there is no baby to draw.
fn nothing(pose: &Pose) -> &'static str {
    if pose.notes.contains(&DrawingNote::WombOnly) { "drawing-womb-only" } else { "drawing-baby-not-told" }
}

struct Guide<'a> {
    exam: &'a Exam,
    conclusions: &'a [Conclusion],
    paper: Paper,
    pose: &'a Pose,
    strokes: &'a [Stroke],
    words: &'a Words,
    fonts: &'a Fonts,
    /// What the pages say of a draft.
    draft: Option<String>,
}

/// The smallest type of a page in a language with longer words, points: it is read at a hand's length.
const SMALLEST_PT: f32 = 10.0;
/// The room for both sides on one line of a small picture, mm.
const SIDES_MM: f32 = 36.0;
/// Type of the sides in the small pictures, points.
const TYPE_PT: f32 = 12.0;

impl Guide<'_> {
    /// A page for each baby.
    fn pages(&self) -> Result<Vec<Sheet>, String> {
        self.pose.babies.iter().map(|(number, _)| self.page(*number)).collect()
    }

    /// The page of one baby.
    fn page(&self, number: usize) -> Result<Sheet, String> {
        let told = |e: &dyn std::fmt::Display| e.to_string();
        let grounds = Grounds::of(&self.exam.babies[number - 1], self.pose, number);
        let content = self.content(number, &grounds).map_err(|e| told(&e))?;
        let (layout, frame, mm_per_cm) = self.best_layout(&content)?;
        let mut scenes = vec![];
        for index in (0..STEPS.len()).filter(|&index| STEPS[index].1.is_some()) {
            scenes.push(self.panel(number, index, &grounds, (frame, mm_per_cm))?);
        }
        compose(&layout, &scenes, &content, self.words, self.fonts).map_err(|e| told(&e))
    }

    /// The layout on which the pictures are largest, and their frame and scale. Type gives way where the words fit none else.
    fn best_layout(&self, content: &Content) -> Result<(Layout, Frame, f32), String> {
        let told = |e: &dyn std::fmt::Display| e.to_string();
        let mut why = String::new();
        for smallest in [None, Some(SMALLEST_PT)] {
            let mut best: Option<(Layout, Frame, f32)> = None;
            for shipped in [SKIN_GUIDE, SKIN_GUIDE_BROAD] {
                let layout = shipped.read().and_then(|layout| layout.on_paper(self.paper.name()));
                let mut layout = layout.map_err(|e| told(&e))?;
                if let Some(smallest) = smallest {
                    layout = layout.shrinking_to(smallest);
                }
                match self.frame(&layout, content) {
                    Ok((frame, scale)) if best.as_ref().is_none_or(|(_, _, other)| scale > *other) => {
                        best = Some((layout, frame, scale));
                    }
                    Ok(_) => {}
                    Err(fault) => why = told(&fault),
                }
            }
            if let Some(best) = best {
                return Ok(best);
            }
        }
        Err(why)
    }

    /// Her right and her left, on two lines where one has no room for both beside one another.
    fn sides(&self) -> Result<[String; 2], SheetError> {
        let mut sides = [self.words.say("her-right", &[])?, self.words.say("her-left", &[])?];
        let mut wide = 0.0;
        for side in &sides {
            wide += self.fonts.measure(Face::SemiBold, side, TYPE_PT * 25.4 / 72.0)?;
        }
        if wide > SIDES_MM {
            for side in &mut sides {
                *side = side.replacen(' ', "\n", 1);
            }
        }
        Ok(sides)
    }

    /// What all small pictures show, and their one scale in mm for a cm. The type of the sides keeps its size on paper, so
    /// that frame and scale depend on each other.
    fn frame(&self, layout: &Layout, content: &Content) -> Result<(Frame, f32), SheetError> {
        let pictures = layout.pictures().len();
        let scales = |frame: &Frame| layout.scales(&vec![*frame; pictures], content, self.words, self.fonts);
        let least = |scales: &[f32]| scales.iter().copied().fold(f32::MAX, f32::min);
        let high_mm = self.sides()?[0].split('\n').count() as f32 * TYPE_PT * 25.4 / 72.0;
        let framed = |mm_per_cm: f32, half| panel::frame(self.pose, self.strokes, high_mm / mm_per_cm, half);
        let mut mm_per_cm = 1.2;
        for _ in 0..6 {
            mm_per_cm = least(&scales(&framed(mm_per_cm, 0.0))?);
        }
        // In the higher boxes the picture would be larger: so broad that its breadth decides, it is alike in all.
        let narrow = framed(mm_per_cm, 0.0);
        let high = 0.01;
        let flat = Frame { bottom: 0.0, top: high, ..narrow };
        let box_mm = least(&scales(&flat)?) * (narrow.right - narrow.left);
        let half = 0.5 * box_mm / mm_per_cm;
        let frame = framed(mm_per_cm, half);
        Ok((frame, least(&scales(&frame)?)))
    }

    /// The tracing sheet of all babies; none where a baby's size was made to fit.
    fn tracing(&self) -> Result<Vec<Sheet>, String> {
        if not_traced(self.pose, self.words).map_err(|e| e.to_string())?.is_some() {
            return Ok(vec![]);
        }
        let numbers = self.pose.babies.iter().map(|(number, _)| *number);
        let grounds: Vec<(usize, Grounds)> = numbers
            .map(|number| (number, Grounds::of(&self.exam.babies[number - 1], self.pose, number)))
            .collect();
        let lie: Result<Vec<String>, WordsError> = grounds
            .iter()
            .map(|(number, _)| {
                let lie = said::lie_and_back(&self.conclusions[number - 1], self.words)?;
                load::of_baby(lie, number - 1, self.pose.baby_count, self.words)
            })
            .collect();
        let lie = lie.map_err(|e| e.to_string())?.join(" ");
        let pattern = skin::Pattern {
            pose: self.pose,
            strokes: self.strokes,
            grounds: &grounds,
            landmarks: self.landmarks(),
            lie: &lie,
        };
        skin::tracing(&pattern, self.paper.size_mm(), self.words, self.fonts).map_err(|e| e.to_string())
    }

    fn content(&self, number: usize, grounds: &Grounds) -> Result<Content, WordsError> {
        let conclusion = &self.conclusions[number - 1];
        let lie = said::lie_and_back(conclusion, self.words)?;
        let notes = self.notes(number)?;
        let page =
            skin::Page { pose: self.pose, number, strokes: self.strokes, grounds, lie: &lie, notes: &notes };
        let mut content = skin::guide(&page, &self.landmarks(), self.words)?;
        if let Some(draft) = &self.draft {
            content
                .blocks
                .entry("skin-foot".to_owned())
                .or_default()
                .insert(0, Block::new(Kind::Emphasis, draft));
        }
        Ok(content)
    }

    /// What of the drawing has to be said of this baby.
    fn notes(&self, number: usize) -> Result<Vec<String>, WordsError> {
        let mut out = vec![];
        for note in &self.pose.notes {
            let id = match note {
                DrawingNote::WeeksNotGiven => "drawing-weeks-not-given",
                DrawingNote::BackNotFelt(n) if *n == number => "drawing-back-not-felt",
                DrawingNote::Unsure(n) if *n == number => "drawing-unsure",
                DrawingNote::BackSideOnly(n) if *n == number => "drawing-back-side-only",
                DrawingNote::Smaller(n) if *n == number => "drawing-smaller",
                DrawingNote::DoesNotFit(n) if *n == number => "drawing-does-not-fit",
                _ => continue,
            };
            out.push(self.words.say(id, &[])?);
        }
        if not_traced(self.pose, self.words)?.is_some() {
            out.push(self.words.say("trace-none", &[])?);
        }
        Ok(out)
    }

    fn landmarks(&self) -> Landmarks<'_> {
        Landmarks { mother: &self.pose.mother, navel_measured: self.exam.mother.navel.value().is_some() }
    }

    /// The small picture of one step.
    fn panel(
        &self,
        number: usize,
        index: usize,
        grounds: &Grounds,
        (frame, mm_per_cm): (Frame, f32),
    ) -> Result<Scene, String> {
        let told = |e: &dyn std::fmt::Display| e.to_string();
        let (_, step) = STEPS[index];
        let said = |id: &str, values: &[(&str, &str)]| self.words.say(id, values).map_err(|e| told(&e));
        let of_step = |step: Step| STEPS.iter().position(|(_, s)| *s == Some(step)).unwrap_or(STEPS.len());
        let main = step.and_then(|step| skin::main_stroke(self.strokes, grounds, number, step));
        let lines: Vec<Line<'_>> = self
            .strokes
            .iter()
            .filter(|stroke| stroke.baby == number && of_step(stroke.step) <= index)
            // Of what was not found the large lines are enough.
            .filter(|stroke| !stroke.fine || grounds.is_firm(stroke))
            .map(|stroke| Line {
                stroke,
                shown: if Some(stroke.step) == step { Shown::New } else { Shown::Earlier },
                felt: grounds.is_firm(stroke),
                marked: main.is_some_and(|main| std::ptr::eq(main, stroke)),
            })
            .collect();
        let sides = self.sides().map_err(|e| told(&e))?;
        let named = |(index, (name, _)): (usize, &(&str, Option<Step>))| {
            said(&format!("skin-{name}"), &[("number", &(index + 1).to_string())])
        };
        // The heart has no lines: it stands on the picture of the step before it.
        let heart = STEPS.get(index + 1).is_some_and(|(_, step)| step.is_none());
        let shown = STEPS.iter().enumerate().skip(index).take(if heart { 2 } else { 1 });
        let title = shown.map(named).collect::<Result<Vec<_>, _>>()?.join(", ");
        let options = PanelOptions {
            mm_per_cm,
            frame,
            type_pt: TYPE_PT,
            sides: [&sides[0], &sides[1]],
            navel: self.exam.mother.navel.value().is_some(),
            heart: heart.then_some(number),
            lang: self.words.lang(),
            description: title.clone(),
            title,
        };
        panel::panel(self.pose, &lines, &options, self.fonts).map_err(|e| told(&e))
    }
}
