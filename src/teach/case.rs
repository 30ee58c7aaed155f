//! One case. In: a seed, its number, its level. Out: the baby's true position, the exam as it was written, what a student is shown.

use super::dice::Dice;
use super::lesson::{Lesson, Level};
use super::truth::{Truth, exam_of};
use super::visit::Visit;
use crate::exam::{Exam, Position};

/// What an ear finds.
const HEARD: [&str; 3] = ["heart", "heart-with", "heart-counts"];

/// An invented visit to work on.
pub struct Case {
    /// The seed it is of.
    pub seed: u64,
    /// Its number, from 1.
    pub number: u64,
    /// How hard it is.
    pub level: Level,
    /// What it teaches.
    pub lesson: Lesson,
    /// What was found, as an exam.
    pub exam: Exam,
    /// What was found, without what the story tells in other words.
    pub shown: Exam,
    /// The same without what was heard: a student says where to listen before it is told.
    pub hands: Exam,
    /// What was heard; `None` when nobody listened.
    pub ear: Option<Exam>,
    /// The finding that does not go with the others.
    pub planted: Option<&'static str>,
    pub(super) truth: Truth,
    pub(super) visit: Visit,
    pub(super) values: Vec<(&'static str, String)>,
}

impl Case {
    /// Case `number` of a seed and a level: the same whenever it is made.
    pub fn make(seed: u64, number: u64, level: Level) -> Result<Self, String> {
        let kind = level as u64;
        let mut dice = Dice::new(seed, kind, number);
        // Lessons follow one another from a first one that the seed chooses, so that a sheet of cases has no two alike too soon.
        let lessons = level.lessons();
        let first = Dice::new(seed, kind, 0).from(0, lessons.len() as u64 - 1);
        let lesson = lessons[((first + number) % lessons.len() as u64) as usize];
        let (truth, visit, told) = lesson.make(&mut dice)?;
        let exam = exam_of(&visit.text(""))?;
        let mut seen = visit.clone();
        seen.without(&told.hidden);
        let shown = exam_of(&seen.text(""))?;
        let mut ear = seen.clone();
        ear.only_heart();
        seen.without(&HEARD);
        let hands = exam_of(&seen.text(""))?;
        let ear = ear.of_baby().next().is_some().then(|| exam_of(&ear.text(""))).transpose()?;
        Ok(Case {
            seed,
            number,
            level,
            lesson,
            exam,
            shown,
            hands,
            ear,
            planted: told.planted,
            truth,
            visit,
            values: told.values,
        })
    }

    /// Its name among all cases, for files and learning systems: `easy-12-01`.
    pub fn name(&self) -> String {
        format!("{}-{}-{:02}", self.level.name(), self.seed, self.number)
    }

    /// The position in which the baby of the case lies.
    pub fn position(&self) -> Position {
        self.truth.position
    }

    /// The visit file, under a comment.
    pub fn file(&self, comment: &str) -> String {
        self.visit.text(comment)
    }

    /// The exam without one finding of the baby.
    pub fn without(&self, key: &str) -> Result<Exam, String> {
        let mut visit = self.visit.clone();
        visit.without(&[key]);
        exam_of(&visit.text(""))
    }

    /// A drawing of her alone: weeks and tape, as far as they are shown.
    pub fn blank(&self) -> Result<Exam, String> {
        let mut visit = self.visit.clone();
        let keys: Vec<&str> = visit.of_baby().collect();
        visit.without(&keys);
        exam_of(&visit.text(""))
    }
}
