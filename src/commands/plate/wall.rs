//! The wall sheet: the examination of the abdomen in order, one page of A3. In: figures that are ready, words. Out: the
//! sheet: looking, four grips, listening, measuring; what cannot wait; sources.

use super::{Plate, Ready, lesson};
use crate::commands::picture::Maker;
use crate::figure;
use crate::sheet::{Block, Content, Kind, Layout, Sheet, SheetError, compose};
use crate::words::WordsError;

/// The steps in their order, one for each figure: messages of the heading and of its points.
const STEPS: [(&str, &[&str]); 7] = [
    ("wall-look", &["wall-look-shape", "wall-look-scars", "wall-look-moves"]),
    ("wall-grip-1", &["wall-grip-1-how", "wall-grip-1-head", "wall-grip-1-bottom"]),
    ("wall-grip-2", &["wall-grip-2-how", "wall-grip-2-what", "wall-grip-2-both"]),
    ("wall-grip-3", &["wall-grip-3-how", "wall-grip-3-what", "wall-grip-3-again"]),
    ("wall-grip-4", &["wall-grip-4-how", "wall-grip-4-fifths", "wall-grip-4-out"]),
    ("wall-listen", &["wall-listen-where", "wall-listen-pulse", "wall-listen-count", "wall-listen-outside"]),
    ("wall-measure", &["wall-measure-top", "wall-measure-tape", "wall-measure-weeks"]),
];
/// What cannot wait.
const NOW: [&str; 8] = [
    "wall-now-movements",
    "wall-now-not-heard",
    "wall-now-rate",
    "wall-now-pulse",
    "wall-now-bleeding",
    "wall-now-pain",
    "wall-now-waters",
    "wall-now-help",
];
/// Steps beside one another.
const COLUMNS: usize = 4;

/// The sheet.
pub fn sheet(options: &Plate, title: &str, figures: &[&Ready], maker: &Maker<'_>) -> Result<Sheet, String> {
    let told = |e: &dyn std::fmt::Display| e.to_string();
    let content = content(title, maker).map_err(|e| told(&e))?;
    let set = |now: &str| {
        let layout = Layout::read("wall", &layout(now)).map_err(SheetError::Layout)?;
        let scale = layout.mm_per_cm(&figure::FRAME, &content, maker.words, maker.fonts)?;
        Ok((layout, scale))
    };
    // What cannot wait is large, or in a language with longer words as large as the rest.
    let set = set("16").or_else(|fault| match fault {
        SheetError::DoesNotFit { .. } => set("13"),
        other => Err(other),
    });
    let (layout, mm_per_cm) = set.map_err(|e| told(&e))?;
    let mut scenes = vec![];
    for ready in figures {
        scenes.push(ready.scene(options, mm_per_cm, vec![], maker)?);
    }
    compose(&layout, &scenes, &content, maker.words, maker.fonts).map_err(|e| told(&e))
}

fn content(title: &str, maker: &Maker<'_>) -> Result<Content, WordsError> {
    let words = maker.words;
    let mut content = Content { title: title.to_owned(), ..Content::default() };
    let mut put = |name: String, blocks: Vec<Block>| content.blocks.insert(name, blocks);
    let mut about = vec![];
    put("title".to_owned(), vec![Block::new(Kind::Title, title)]);
    put("before".to_owned(), vec![Block::new(Kind::Text, words.say("wall-before", &[])?)]);
    for (number, (heading, points)) in STEPS.iter().enumerate() {
        let heading = words.say(heading, &[])?;
        about.push(heading.clone());
        put(format!("heading-{number}"), vec![Block::new(Kind::Heading, heading)]);
        let mut blocks = vec![];
        for point in *points {
            blocks.push(Block::new(Kind::Item, words.say(point, &[])?));
        }
        put(format!("points-{number}"), blocks);
    }
    put("now-heading".to_owned(), vec![Block::new(Kind::Heading, words.say("wall-now", &[])?)]);
    let mut now = vec![];
    for point in NOW {
        now.push(Block::new(Kind::Item, words.say(point, &[])?));
    }
    put("now".to_owned(), now);
    let foot = format!("{} {}", words.say("wall-sources", &[])?, lesson::foot(maker)?);
    put("foot".to_owned(), vec![Block::new(Kind::Text, foot)]);
    content.description = format!("{title}: {}.", about.join("; "));
    Ok(content)
}

/// Two rows of steps, each a heading over a picture over its points; what cannot wait in the last place, in type of `now` points.
fn layout(now: &str) -> String {
    let mut text = "[page]\npaper = \"420 x 297 mm\"\nmargin = \"10 mm\"\nsmallest-type = \"10 pt\"\ncolumns = 4\ncolumn-gap = \"6 mm\"\nrow-gap = \"1.5 mm\"\n".to_owned();
    let mut lay = |name: &str, holds: &str, row: &str, columns: &str, more: &str| {
        text.push_str(&format!(
            "[[box]]\nname = \"{name}\"\nholds = \"{holds}\"\nrow = \"{row}\"\ncolumns = \"{columns}\"\n{more}\n"
        ));
    };
    let set = |most: &str, least: &str| format!("type = \"{most} pt\"\nmay-shrink = \"{least} pt\"");
    let across = format!("1-{COLUMNS}");
    lay("title", "words:title", "1", &across, &set("13", "13"));
    lay("before", "words:before", "2", &across, &set("13", "12"));
    for number in 0..STEPS.len() {
        let (row, column) = (3 + 3 * (number / COLUMNS), (number % COLUMNS + 1).to_string());
        lay(
            &format!("heading-{number}"),
            &format!("words:heading-{number}"),
            &row.to_string(),
            &column,
            &set("13", "12"),
        );
        lay(&format!("picture-{number}"), "picture", &(row + 1).to_string(), &column, "");
        lay(
            &format!("points-{number}"),
            &format!("words:points-{number}"),
            &(row + 2).to_string(),
            &column,
            &set("13", "12"),
        );
    }
    let last = COLUMNS.to_string();
    lay("now-heading", "words:now-heading", "6", &last, &set("13", "12"));
    lay(
        "now",
        "words:now",
        "7-8",
        &last,
        &format!("{}\nedge = \"line\"\npadding = \"4 mm\"", set(now, if now == "16" { now } else { "12" })),
    );
    lay("foot", "words:foot", "9", &across, &set("10", "10"));
    text
}
