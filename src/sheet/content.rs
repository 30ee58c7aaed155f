//! The words of a page before they are set. In: finished sentences. Out: blocks under the names a layout uses.

use super::signs::Sign;
use crate::figure::scene::Scene;
use std::collections::BTreeMap;

/// How a block of words is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// The page's title.
    Title,
    /// The heading of a part that has headings of its own.
    Part,
    /// The heading of a few paragraphs or a list.
    Heading,
    /// The sentence that matters most.
    Lead,
    /// Running text.
    Text,
    /// Words that belong to the picture under them, in the middle over it.
    Caption,
    /// A paragraph in strong type.
    Emphasis,
    /// Lines in strong type that belong together.
    Strong,
    /// A telephone number, large.
    Number,
    /// A point of a list.
    Item,
    /// A question that is answered below it.
    Question,
    /// The answer to a question.
    Answer,
    /// A label with a line to write on beside it.
    Blank,
    /// A cell of a table; cells of one row follow one another.
    Cell(Cell),
}

/// Where a cell stands in its table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cell {
    /// Its row, from 0.
    pub row: u16,
    /// Its left and right edge, in thousandths of the table's width.
    pub across: (u16, u16),
    /// Whether it names its column or its row.
    pub head: bool,
}

/// A paragraph, a heading, a point of a list or a line to write on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Block {
    /// How it is set.
    pub kind: Kind,
    /// The finished words.
    pub text: String,
    /// The small picture that may stand beside them, where a layout asks for it.
    pub sign: Option<Sign>,
    /// The telephone numbers that stand in the words, as they stand there.
    pub numbers: Vec<String>,
    /// Whether, on a screen, they lead on to the next side.
    pub leads_on: bool,
    /// Where they are shown on a page for a telephone.
    pub shown: Shown,
}

/// Where the words of a page for a telephone are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Shown {
    /// On the screen and on paper.
    #[default]
    Everywhere,
    /// When it is printed.
    OnPaper,
    /// On the screen alone.
    OnScreen,
}

impl Block {
    /// A block of this kind.
    pub fn new(kind: Kind, text: impl Into<String>) -> Self {
        Self {
            kind,
            text: text.into(),
            sign: None,
            numbers: vec![],
            leads_on: false,
            shown: Shown::Everywhere,
        }
    }

    /// The same with a small picture.
    pub fn with(self, sign: Option<Sign>) -> Self {
        Self { sign, ..self }
    }

    /// The same, with this telephone number in its words.
    pub fn calling(mut self, number: impl Into<String>) -> Self {
        self.numbers.push(number.into());
        self
    }

    /// The same, shown there alone.
    pub fn shown(self, shown: Shown) -> Self {
        Self { shown, ..self }
    }

    /// The same, leading on to the next side.
    pub fn leading_on(self) -> Self {
        Self { leads_on: true, ..self }
    }
}

/// Everything a layout may name.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Content {
    /// The sheet's title.
    pub title: String,
    /// The sheet in words, for someone who cannot see it.
    pub description: String,
    /// Blocks by the name that a layout's `words:NAME` uses.
    pub blocks: BTreeMap<String, Vec<Block>>,
}

impl Content {
    /// The words under a name.
    pub fn texts(&self, name: &str) -> Vec<String> {
        self.blocks.get(name).into_iter().flatten().map(|block| block.text.clone()).collect()
    }

    /// Of a sheet that holds this figure alone: its title and its description, no words.
    pub fn of_figure(scene: &Scene) -> Self {
        Self { title: scene.title.clone(), description: scene.description.clone(), blocks: BTreeMap::new() }
    }
}
