//! Numbered figures on slides: the key stands beside the figure, in words as large as a slide asks for. In: the figures of
//! one group, a title. Out: one slide.

use super::Ready;
use super::pages::{Asked, content};
use crate::commands::picture::Maker;
use crate::figure;
use crate::figure::scene::{Item, Scene};
use crate::sheet::{Block, Kind, Layout, Sheet, compose};
use crate::units::FigurePoint;

/// One slide.
pub fn slide(asked: &Asked<'_>, figures: &[Ready], maker: &Maker<'_>) -> Result<Sheet, String> {
    let told = |e: &dyn std::fmt::Display| e.to_string();
    let figures: Vec<&Ready> = figures.iter().collect();
    let mut content = content(asked.title, asked.part, &figures, maker).map_err(|e| told(&e))?;
    let layout = Layout::read("slide", &layout(asked, figures.len())).map_err(|e| told(&e))?;
    let mut keys: Vec<Vec<String>> = vec![vec![]; figures.len()];
    // A longer key may leave the figure less room, and a smaller figure have another key.
    for _ in 0..4 {
        for (number, key) in keys.iter().enumerate() {
            let lines = key.iter().map(|line| Block::new(Kind::Answer, line.as_str()));
            content.blocks.insert(format!("key-{number}"), lines.collect());
        }
        let mm_per_cm =
            layout.mm_per_cm(&figure::FRAME, &content, maker.words, maker.fonts).map_err(|e| told(&e))?;
        let mut scenes = vec![];
        for ready in &figures {
            scenes.push(ready.scene(asked.options, mm_per_cm, vec![], maker)?);
        }
        let found: Vec<Vec<String>> = scenes.iter_mut().map(take_key).collect();
        if found == keys {
            return compose(&layout, &scenes, &content, maker.words, maker.fonts).map_err(|e| told(&e));
        }
        keys = found;
    }
    Err("the keys of these figures do not fit on a slide; write each to a file of its own, with -o DIRECTORY/"
        .to_owned())
}

/// Takes the key out of a figure: its lines, each after its number.
fn take_key(scene: &mut Scene) -> Vec<String> {
    let mut key = vec![];
    take(&mut scene.items, &mut key);
    scene.frame.bottom = figure::FRAME.bottom;
    key
}

fn take(items: &mut Vec<Item<FigurePoint>>, key: &mut Vec<String>) {
    items.retain_mut(|item| {
        let Item::Group { name, items, .. } = item else { return true };
        let Some(of_key) = name.strip_prefix("key-") else {
            take(items, key);
            return true;
        };
        if !of_key.starts_with("number-") {
            key.push(format!("{of_key}\u{a0}\u{a0}{}", words(items).trim_end()));
        }
        false
    });
}

/// The words of a group, line after line.
fn words(items: &[Item<FigurePoint>]) -> String {
    let said = |item: &Item<FigurePoint>| match item {
        Item::Text(text) => format!("{} ", text.text.trim_end()),
        Item::Group { items, .. } | Item::Clip { items, .. } => words(items),
        Item::Fill { .. } | Item::Stroke { .. } => String::new(),
    };
    items.iter().map(said).collect()
}

/// Figures beside one another, each under its caption with its key at its right.
fn layout(asked: &Asked<'_>, count: usize) -> String {
    let ((wide, high), type_pt) = (asked.options.size.paper(), asked.options.size.type_pt());
    // Two thirds for the figure.
    let columns = 3 * count;
    let mut text = format!(
        "[page]\npaper = \"{wide} x {high} mm\"\nmargin = \"8 mm\"\nsmallest-type = \"10 pt\"\ncolumns = {columns}\ncolumn-gap = \"3 mm\"\nrow-gap = \"1 mm\"\n"
    );
    let mut lay = |name: &str, holds: &str, row: usize, columns: &str, size: f32| {
        text.push_str(&format!(
            "[[box]]\nname = \"{name}\"\nholds = \"{holds}\"\nrow = \"{row}\"\ncolumns = \"{columns}\"\ntype = \"{size} pt\"\nmay-shrink = \"{size} pt\"\n"
        ));
    };
    let across = format!("1-{columns}");
    lay("title", "words:title", 1, &across, 13.0);
    for number in 0..count {
        let (first, last) = (3 * number + 1, 3 * number + 3);
        let of_figure = format!("{first}-{}", last - 1);
        lay(&format!("caption-{number}"), &format!("words:caption-{number}"), 2, &of_figure, type_pt);
        lay(&format!("picture-{number}"), "picture", 3, &of_figure, type_pt);
        lay(&format!("key-{number}"), &format!("words:key-{number}"), 3, &last.to_string(), type_pt);
    }
    lay("foot", "words:foot", 4, &across, type_pt);
    text
}
