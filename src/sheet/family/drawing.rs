//! What a family's picture does not show as it is. In: the content of the page, notes of the drawing. Out: the content with a
//! sentence of each beside the picture. The picture says nothing of the baby's size, and why it was drawn so is for whoever examined.

use crate::body::pose::DrawingNote;
use crate::sheet::content::{Block, Content, Kind};
use crate::words::{Words, WordsError};

/// Where such sentences stand.
const BESIDE: &str = "family-picture";

/// Says of a page with so many babies what these notes tell of their drawing.
pub fn say_of_drawing(
    content: &mut Content,
    notes: &[DrawingNote],
    babies: usize,
    words: &Words,
) -> Result<(), WordsError> {
    let mut said = vec![];
    let mut rounds = 0;
    for note in notes {
        let (id, number) = match note {
            DrawingNote::Smaller(number) => ("family-drawn-smaller", number),
            DrawingNote::DoesNotFit(number) => {
                rounds += 1;
                ("family-drawn-rounds", number)
            }
            DrawingNote::WeeksNotGiven
            | DrawingNote::WombOnly
            | DrawingNote::BabyNotTold(_)
            | DrawingNote::BackNotFelt(_)
            | DrawingNote::LegsNotFelt(_)
            | DrawingNote::FootNotTold(_)
            | DrawingNote::Unsure(_)
            | DrawingNote::Disagree(_)
            | DrawingNote::HeartNotHeard(_)
            | DrawingNote::BackSideOnly(_)
            | DrawingNote::FaceLeads(_)
            | DrawingNote::BrowLeads(_)
            | DrawingNote::SecondIsLower => continue,
        };
        let id = if babies > 1 { format!("{id}-number") } else { id.to_owned() };
        said.push(Block::new(Kind::Text, words.say(&id, &[("number", &number.to_string())])?));
    }
    let beside = content.blocks.entry(BESIDE.to_owned()).or_default();
    if rounds == babies {
        // Of rounds no artist made up a face or limbs.
        beside.clear();
    }
    beside.extend(said);
    Ok(())
}
