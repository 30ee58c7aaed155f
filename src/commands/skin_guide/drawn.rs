//! The sheets of a guide. In: an exam, its conclusions, how it is drawn, words. Out: two sides for each baby and the tracing sheet; or
//! why there is nothing to draw.

use super::GuideLook;
use crate::body::pose::{self, DrawingNote, Pose};
use crate::chart::said;
use crate::commands::load;
use crate::exam::{Conclusion, Exam};
use crate::figure::artist::hands_on;
use crate::figure::on_skin::{self, OnSkin, Pen, on_skin};
use crate::figure::panel::{self, Line, PanelOptions, Shown};
use crate::figure::scene::{Frame, Scene};
use crate::figure::strokes::{Step, Stroke, short_strokes, strokes};
use crate::fonts::{Face, Fonts};
use crate::sheet::skin::{self, Grounds, Landmarks, Length, main_stroke};
use crate::sheet::{
    Block, Content, Kind, Layout, SKIN_GUIDE, SKIN_GUIDE_BACK, SKIN_GUIDE_MINUTE, Sheet, SheetError, compose,
};
use crate::words::{Words, WordsError};

/// Why nothing is traced: a baby whose size was made to fit is not as large on her as it is drawn. `None` where it is traced.
pub fn not_traced(pose: &Pose, words: &Words) -> Result<Option<String>, WordsError> {
    let fitted = pose.notes.iter().find_map(|note| match note {
        DrawingNote::Smaller(number) => Some((*number, "drawing-smaller")),
        DrawingNote::DoesNotFit(number) => Some((*number, "drawing-does-not-fit")),
        _ => None,
    });
    let Some((number, why)) = fitted else { return Ok(None) };
    let why = load::of_baby(words.say(why, &[])?, number - 1, pose.baby_count, words)?;
    Ok(Some(format!("{why} {}", words.say("trace-none", &[])?)))
}

/// What is drawn, in every language.
pub struct Drawn<'a> {
    exam: &'a Exam,
    conclusions: &'a [Conclusion],
    look: GuideLook,
    pose: Pose,
    strokes: Vec<Stroke>,
    /// What the strokes of each baby rest on.
    grounds: Vec<(usize, Grounds)>,
}

impl<'a> Drawn<'a> {
    /// The strokes of an exam; or why there are none, in `words`.
    pub fn of(
        exam: &'a Exam,
        conclusions: &'a [Conclusion],
        look: GuideLook,
        words: &Words,
    ) -> Result<Self, String> {
        let pose = pose::from_exam(exam, conclusions);
        if pose.babies.is_empty() {
            return Err(words.say(nothing(&pose), &[]).map_err(|e| e.to_string())?);
        }
        let numbers = pose.babies.iter().map(|(number, _)| *number);
        let grounds: Vec<(usize, Grounds)> =
            numbers.map(|number| (number, Grounds::of(&exam.babies[number - 1], &pose, number))).collect();
        let strokes = match look.length {
            Length::Whole => strokes(&pose),
            Length::Minute => short_strokes(&pose),
        };
        Ok(Drawn { exam, conclusions, look, pose, strokes, grounds })
    }

    /// The pose.
    pub fn pose(&self) -> &Pose {
        &self.pose
    }

    /// Its sheets in a language, which say this of a draft.
    pub fn guide<'b>(&'b self, words: &'b Words, fonts: &'b Fonts, draft: Option<String>) -> Guide<'b> {
        Guide { drawn: self, words, fonts, draft }
    }
}

/// Why there is no baby to draw.
fn nothing(pose: &Pose) -> &'static str {
    if pose.notes.contains(&DrawingNote::WombOnly) { "drawing-womb-only" } else { "drawing-baby-not-told" }
}

/// A guide in one language.
pub struct Guide<'a> {
    drawn: &'a Drawn<'a>,
    words: &'a Words,
    fonts: &'a Fonts,
    /// What the pages say of a draft.
    draft: Option<String>,
}

/// The smallest type of a page in a language with longer words, points: it is read at a hand's length.
const SMALLEST_PT: f32 = 10.0;
/// Type of the sides in the pictures, points.
const TYPE_PT: f32 = 12.0;
const MM_PER_PT: f32 = 25.4 / 72.0;
/// Beside and between the sides of a small picture, mm.
const ROOM_MM: f32 = 6.0;
/// How high the finished drawing is at least where the page is full, mm.
const DONE_MM: [f32; 2] = [116.0, 96.0];

/// How large pictures are: the frame and scale of the finished drawing, and those of all steps.
struct Sizes {
    layout: Layout,
    done: f32,
    step: (Frame, f32),
}

fn told(e: &dyn std::fmt::Display) -> String {
    e.to_string()
}

impl Guide<'_> {
    /// Two sides for each baby.
    pub fn pages(&self) -> Result<Vec<Sheet>, String> {
        let mut out = vec![];
        for (number, grounds) in &self.drawn.grounds {
            out.push(self.front(*number, grounds)?);
            out.push(self.back(*number, grounds)?);
        }
        Ok(out)
    }

    /// The side that is propped beside the bed.
    fn front(&self, number: usize, grounds: &Grounds) -> Result<Sheet, String> {
        let mut content = self.front_words(number, grounds).map_err(|e| told(&e))?;
        if let Some(draft) = &self.draft {
            let blocks = content.blocks.entry("skin-lies".to_owned()).or_default();
            blocks.push(Block::new(Kind::Text, draft));
        }
        let sizes = self.sizes(&content)?;
        let mut scenes = vec![self.done(number, &sizes, &content)?];
        for index in 0..self.drawn.look.length.steps().len() {
            scenes.push(self.panel(number, index, grounds, sizes.step)?);
        }
        compose(&sizes.layout, &scenes, &content, self.words, self.fonts).map_err(|e| told(&e))
    }

    fn front_words(&self, number: usize, grounds: &Grounds) -> Result<Content, WordsError> {
        let conclusion = &self.drawn.conclusions[number - 1];
        let lie = said::lie_and_back(conclusion, self.words)?;
        skin::front(&self.page(number, grounds, &lie, &[], None), conclusion, self.words)
    }

    fn page<'b>(
        &'b self,
        number: usize,
        grounds: &'b Grounds,
        lie: &'b str,
        notes: &'b [String],
        not_traced: Option<&'b str>,
    ) -> skin::Page<'b> {
        let Drawn { pose, strokes, look, .. } = self.drawn;
        let pen = Pen::on(look.palette).name;
        skin::Page { pose, number, strokes, grounds, length: look.length, lie, notes, not_traced, pen }
    }

    /// The side with numbers, her leave, and what to say.
    fn back(&self, number: usize, grounds: &Grounds) -> Result<Sheet, String> {
        let mut content = self.back_words(number, grounds).map_err(|e| told(&e))?;
        if let Some(draft) = &self.draft {
            let blocks = content.blocks.entry("skin-foot".to_owned()).or_default();
            blocks.insert(0, Block::new(Kind::Emphasis, draft));
        }
        let mut why = String::new();
        for layout in self.layouts(SKIN_GUIDE_BACK)? {
            match compose(&layout, &[], &content, self.words, self.fonts) {
                Ok(sheet) => return Ok(sheet),
                Err(fault) => why = told(&fault),
            }
        }
        Err(why)
    }

    fn back_words(&self, number: usize, grounds: &Grounds) -> Result<Content, WordsError> {
        let lie = said::lie_and_back(&self.drawn.conclusions[number - 1], self.words)?;
        let notes = self.notes(number)?;
        let not_traced = not_traced(&self.drawn.pose, self.words)?;
        let page = self.page(number, grounds, &lie, &notes, not_traced.as_deref());
        skin::back(&page, &self.landmarks(), self.words)
    }

    /// A layout on this paper; then the same with smaller type, for a language with longer words.
    fn layouts(&self, shipped: crate::sheet::Shipped) -> Result<[Layout; 2], String> {
        let layout = shipped.read().and_then(|layout| layout.on_paper(self.drawn.look.paper.name()));
        let layout = layout.map_err(|e| told(&e))?;
        Ok([layout.clone(), layout.shrinking_to(SMALLEST_PT)])
    }

    fn sizes(&self, content: &Content) -> Result<Sizes, String> {
        let shipped = match self.drawn.look.length {
            Length::Whole => SKIN_GUIDE,
            Length::Minute => SKIN_GUIDE_MINUTE,
        };
        let mut why = String::new();
        for layout in self.layouts(shipped)? {
            // Where the words need more room, the finished drawing gives it before the steps do.
            let smaller = DONE_MM.map(|mm| layout.clone().with_picture_at_least("picture-done", mm));
            for layout in std::iter::once(layout).chain(smaller) {
                match self.frames(&layout, content) {
                    Ok((done, step)) => return Ok(Sizes { layout, done, step }),
                    Err(fault) => why = told(&fault),
                }
            }
        }
        Err(why)
    }

    /// The scale of the finished drawing; what all small pictures show, and their one scale in mm for a cm. The type of the sides
    /// keeps its size on paper, so that frame and scale depend on each other.
    fn frames(&self, layout: &Layout, content: &Content) -> Result<(f32, (Frame, f32)), SheetError> {
        let Drawn { pose, strokes, .. } = self.drawn;
        let small = layout.pictures().len() - 1;
        let done = on_skin::frame(pose);
        let scales = |frame: &Frame| -> Result<(f32, f32), SheetError> {
            let frames: Vec<Frame> =
                std::iter::once(done).chain(std::iter::repeat_n(*frame, small)).collect();
            let scales = layout.scales(&frames, content, self.words, self.fonts)?;
            let least = scales[1..].iter().copied().fold(f32::MAX, f32::min);
            Ok((scales[0], least))
        };
        let mut mm_per_cm = 1.2;
        let mut frame = panel::frame(pose, strokes, 1.0, 0.0);
        for _ in 0..4 {
            let wide = (frame.right - frame.left) * mm_per_cm;
            let high_mm = self.sides(wide)?[0].split('\n').count() as f32 * TYPE_PT * MM_PER_PT;
            frame = panel::frame(pose, strokes, high_mm / mm_per_cm, 0.0);
            mm_per_cm = scales(&frame)?.1;
        }
        let (done, step) = scales(&frame)?;
        let wide_mm = (frame.right - frame.left) * step;
        let mut needed = ROOM_MM;
        for side in self.sides(wide_mm)? {
            let lines =
                side.split('\n').map(|line| self.fonts.measure(Face::SemiBold, line, TYPE_PT * MM_PER_PT));
            needed += lines.collect::<Result<Vec<f32>, _>>()?.into_iter().fold(0.0, f32::max);
        }
        if needed > wide_mm {
            return Err(SheetError::DoesNotFit {
                layout: layout.file().to_owned(),
                name: "picture-head".to_owned(),
                detail: format!("its sides need {needed:.0} mm beside each other; it has {wide_mm:.0}"),
            });
        }
        Ok((done, (frame, step)))
    }

    /// Her right and her left, on two lines where a picture this wide has no room for both beside one another, mm.
    fn sides(&self, wide_mm: f32) -> Result<[String; 2], SheetError> {
        let mut sides = [self.words.say("her-right", &[])?, self.words.say("her-left", &[])?];
        let mut wide = ROOM_MM;
        for side in &sides {
            wide += self.fonts.measure(Face::SemiBold, side, TYPE_PT * MM_PER_PT)?;
        }
        if wide > wide_mm {
            for side in &mut sides {
                *side = side.replacen(' ', "\n", 1);
            }
        }
        Ok(sides)
    }

    /// The finished drawing on her belly; of two babies the other one paler.
    fn done(&self, number: usize, sizes: &Sizes, content: &Content) -> Result<Scene, String> {
        let Drawn { pose, strokes, grounds, look, exam, .. } = self.drawn;
        let firm = |s: &Stroke| grounds.iter().any(|(n, grounds)| *n == s.baby && grounds.is_firm(s));
        let mut lines: Vec<on_skin::Drawn<'_>> = strokes
            .iter()
            .map(|s| (s, firm(s), s.baby == number))
            // Of what was not found the large lines are enough.
            .filter(|(s, firm, _)| *firm || !s.fine)
            .collect();
        lines.sort_by_key(|(.., own)| *own);
        let sides = self.sides(f32::MAX).map_err(|e| told(&e))?;
        let cm = self.words.say("skin-cm", &[]).map_err(|e| told(&e))?;
        let asked = OnSkin {
            mm_per_cm: sizes.done,
            type_pt: TYPE_PT,
            sides: [&sides[0], &sides[1]],
            cm: &cm,
            navel: exam.mother.navel.value().is_some(),
            palette: look.palette,
            lang: self.words.lang(),
            title: content.title.clone(),
            description: content.description.clone(),
        };
        on_skin(pose, &lines, &asked, self.fonts).map_err(|e| told(&e))
    }

    /// The tracing sheet of all babies; none where a baby's size was made to fit.
    pub fn tracing(&self) -> Result<Vec<Sheet>, String> {
        let Drawn { pose, strokes, grounds, look, .. } = self.drawn;
        if not_traced(pose, self.words).map_err(|e| e.to_string())?.is_some() {
            return Ok(vec![]);
        }
        let lie: Result<Vec<String>, WordsError> = grounds
            .iter()
            .map(|(number, _)| {
                let lie = said::lie_and_back(&self.drawn.conclusions[number - 1], self.words)?;
                load::of_baby(lie, number - 1, pose.baby_count, self.words)
            })
            .collect();
        let lie = lie.map_err(|e| e.to_string())?.join(" ");
        let pattern = skin::Pattern {
            pose,
            strokes,
            length: look.length,
            grounds,
            landmarks: self.landmarks(),
            lie: &lie,
        };
        skin::tracing(&pattern, look.paper.size_mm(), self.words, self.fonts).map_err(|e| e.to_string())
    }

    /// What of the drawing has to be said of this baby.
    fn notes(&self, number: usize) -> Result<Vec<String>, WordsError> {
        let mut out = vec![];
        for note in &self.drawn.pose.notes {
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
        Ok(out)
    }

    fn landmarks(&self) -> Landmarks<'_> {
        Landmarks {
            mother: &self.drawn.pose.mother,
            navel_measured: self.drawn.exam.mother.navel.value().is_some(),
        }
    }

    /// The small picture of one step.
    fn panel(
        &self,
        number: usize,
        index: usize,
        grounds: &Grounds,
        (frame, mm_per_cm): (Frame, f32),
    ) -> Result<Scene, String> {
        let Drawn { pose, strokes, look, exam, .. } = self.drawn;
        let steps = look.length.steps();
        let (name, step) = steps[index];
        let place = |step: Step| steps.iter().position(|(_, s)| *s == Some(step)).unwrap_or(steps.len());
        let main = step.and_then(|step| main_stroke(strokes, grounds, number, step));
        let lines: Vec<Line<'_>> = strokes
            .iter()
            .filter(|stroke| stroke.baby == number && place(stroke.step) <= index)
            // Of what was not found the large lines are enough.
            .filter(|stroke| !stroke.fine || grounds.is_firm(stroke))
            .map(|stroke| Line {
                stroke,
                shown: if Some(stroke.step) == step { Shown::New } else { Shown::Earlier },
                felt: grounds.is_firm(stroke),
                marked: main.is_some_and(|main| std::ptr::eq(main, stroke)),
            })
            .collect();
        let sides = self.sides((frame.right - frame.left) * mm_per_cm).map_err(|e| told(&e))?;
        let title = self
            .words
            .say(&format!("skin-{name}"), &[("number", &(index + 1).to_string())])
            .map_err(|e| told(&e))?;
        let options = PanelOptions {
            mm_per_cm,
            frame,
            type_pt: TYPE_PT,
            sides: [&sides[0], &sides[1]],
            navel: exam.mother.navel.value().is_some(),
            heart: step.is_none().then_some(number),
            hands: match (step, main) {
                (Some(step), Some(_)) => hands_on(pose, number, step, look.handed),
                _ => vec![],
            },
            pen: Some(look.handed),
            lang: self.words.lang(),
            description: title.clone(),
            title,
        };
        panel::panel(pose, &lines, &options, self.fonts).map_err(|e| told(&e))
    }
}
