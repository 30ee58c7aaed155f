//! Figures on sheets. In: figures that are ready, the size of the sheets, a title. Out: as many sheets as it takes for the
//! words to have their size.

use super::{Plate, Ready, beside, lesson};
use crate::commands::picture::Maker;
use crate::figure::scene::Frame;
use crate::figure::{self, Labels};
use crate::sheet::{Block, Content, Kind, Layout, Sheet, compose};

/// The size of a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Size {
    /// 420 x 297 mm.
    A3,
    /// 297 x 210 mm.
    A4,
    /// 11 x 8.5 inches.
    Letter,
    /// A slide of 16:9, 13.33 x 7.5 inches.
    Slide,
}

impl Size {
    /// Type of the smallest words, points: for a hand's or an arm's length, and for the back of a room.
    pub fn type_pt(self) -> f32 {
        match self {
            Size::A3 => 12.0,
            Size::A4 | Size::Letter => 10.0,
            Size::Slide => 18.0,
        }
    }

    /// Width and height, mm.
    pub(super) fn paper(self) -> (f32, f32) {
        match self {
            Size::A3 => (420.0, 297.0),
            Size::A4 => (297.0, 210.0),
            Size::Letter => (279.4, 215.9),
            Size::Slide => (338.7, 190.5),
        }
    }

    /// The least widths of a figure beside others, mm: as it should be, and as it may be when that leaves no room for keys.
    fn least_figure(self) -> [f32; 2] {
        match self {
            Size::A3 => [80.0, 80.0],
            Size::A4 | Size::Letter => [56.0, 56.0],
            Size::Slide => [95.0, 72.0],
        }
    }
}

/// The most figures on a sheet.
const MOST: usize = 8;

/// The least share of a sheet's height that figures and their keys take: fewer and larger ones are better than a sheet that
/// is half empty.
const FULL: f32 = 0.52;

/// The sheets: as few as hold all figures with words of their size and are well filled; when none are, the best filled.
pub fn sheets(
    options: &Plate,
    title: &str,
    groups: &[Vec<Ready>],
    maker: &Maker<'_>,
) -> Result<Vec<Sheet>, String> {
    if options.size == Size::Slide && options.labels == Some(Labels::Numbered) {
        let slide = |(number, group): (usize, &Vec<Ready>)| {
            let part = (groups.len() > 1).then_some((number + 1, groups.len()));
            let asked = Asked { options, title, part, last_try: true, least: 0.0, as_first: None };
            beside::slide(&asked, group, maker)
        };
        return groups.iter().enumerate().map(slide).collect();
    }
    let tall = groups.iter().map(Vec::len).max().unwrap_or(1).max(1);
    let most = (MOST / tall).clamp(1, groups.len().max(1));
    let mut refused = String::new();
    let mut fullest: Option<(f32, Vec<Sheet>)> = None;
    let tries =
        options.size.least_figure().map(|least| (1..=most).rev().map(move |a_sheet| (a_sheet, least)));
    for (a_sheet, least) in tries.into_iter().flatten() {
        if fullest.is_some() && least < options.size.least_figure()[0] {
            break;
        }
        let count = groups.len().div_ceil(a_sheet);
        // The same number on each, as far as may be.
        let even = groups.len().div_ceil(count);
        if even != a_sheet {
            continue;
        }
        match attempt(options, title, groups, (a_sheet, least), maker) {
            Ok((filled, sheets)) if filled >= FULL => return Ok(sheets),
            Ok((filled, sheets)) => {
                if fullest.as_ref().is_none_or(|(most, _)| filled > *most) {
                    fullest = Some((filled, sheets));
                }
            }
            Err(why) => refused = why,
        }
    }
    fullest.map(|(_, sheets)| sheets).ok_or(refused)
}

/// All sheets with so many groups on each, and how much of the height of the first is filled; or why that does not do.
fn attempt(
    options: &Plate,
    title: &str,
    groups: &[Vec<Ready>],
    (a_sheet, least): (usize, f32),
    maker: &Maker<'_>,
) -> Result<(f32, Vec<Sheet>), String> {
    let chunks: Vec<&[Vec<Ready>]> = groups.chunks(a_sheet).collect();
    let count = chunks.len();
    let (mut filled, mut as_first) = (0.0, None);
    let mut out = vec![];
    for (number, chunk) in chunks.iter().enumerate() {
        let part = (count > 1).then_some((number + 1, count));
        let asked = Asked { options, title, part, last_try: a_sheet == 1, least, as_first };
        let made = sheet(&asked, chunk, maker)?;
        if number == 0 {
            (filled, as_first) = (made.filled, Some(made.columns));
        }
        out.push(made.sheet);
    }
    Ok((filled, out))
}

/// What a sheet is to be.
pub(super) struct Asked<'a> {
    pub options: &'a Plate,
    pub title: &'a str,
    /// Its number of how many.
    pub part: Option<(usize, usize)>,
    /// Fewer figures would not help.
    last_try: bool,
    /// The least width of a figure beside others, mm.
    least: f32,
    /// Figures in a row on the first sheet: the others have as many, so that all are of one size.
    as_first: Option<usize>,
}

struct Made {
    sheet: Sheet,
    columns: usize,
    /// The share of its height that is taken.
    filled: f32,
}

/// One sheet.
fn sheet(asked: &Asked<'_>, groups: &[Vec<Ready>], maker: &Maker<'_>) -> Result<Made, String> {
    let Asked { options, title, part, last_try, least, as_first } = *asked;
    let told = |e: &dyn std::fmt::Display| e.to_string();
    let tall = groups.iter().map(Vec::len).max().unwrap_or(1);
    // Figures of a group stand under one another; a single group lies in a row.
    let (figures, rows): (Vec<&Ready>, Option<usize>) = match (tall, groups) {
        (1, _) => (groups.iter().flatten().collect(), None),
        (_, [one]) => (one.iter().collect(), Some(1)),
        _ => ((0..tall).flat_map(|row| groups.iter().filter_map(move |g| g.get(row))).collect(), Some(tall)),
    };
    let content = content(title, part, &figures, maker).map_err(|e| told(&e))?;
    let mut tallest: Frame = figure::FRAME;
    // Keys under figures make them taller, and smaller on the sheet; that in turn makes keys taller.
    for _ in 0..6 {
        let (layout, mm_per_cm, columns) = grid(
            options.size,
            figures.len(),
            as_first.or(rows.map(|rows| figures.len().div_ceil(rows))),
            &tallest,
            &content,
            maker,
        )?;
        let width = (tallest.right - tallest.left) * mm_per_cm;
        if figures.len() > 1 && !last_try && width < least {
            return Err(format!("{columns} figures in a row would be too small for words of their size"));
        }
        let mut scenes = vec![];
        for ready in &figures {
            scenes.push(ready.scene(options, mm_per_cm, vec![], maker)?);
        }
        if options.labels != Some(Labels::Numbered) && !last_try && scenes.iter().any(has_key) {
            return Err("there is no room for all words beside the figures".to_owned());
        }
        let bottom = scenes.iter().map(|s| s.frame.bottom).fold(figure::FRAME.bottom, f32::min);
        if bottom >= tallest.bottom - 0.01 {
            // All of one height, so that all have one scale.
            for scene in &mut scenes {
                scene.frame.bottom = tallest.bottom;
            }
            let rows = figures.len().div_ceil(columns) as f32;
            let filled = rows * (tallest.top - tallest.bottom) * mm_per_cm / options.size.paper().1;
            let sheet =
                compose(&layout, &scenes, &content, maker.words, maker.fonts).map_err(|e| told(&e))?;
            return Ok(Made { sheet, columns, filled });
        }
        tallest.bottom = bottom - 0.5;
    }
    Err("the keys of these figures do not fit on a sheet; write each to a file of its own, with -o DIRECTORY/".to_owned())
}

/// Whether numbers with a key stand for the words of a figure.
fn has_key(scene: &figure::scene::Scene) -> bool {
    scene.frame.bottom < figure::FRAME.bottom - 0.01
}

/// The words of a sheet: its title, what stands under each figure, and what is to be said of all.
pub(super) fn content(
    title: &str,
    part: Option<(usize, usize)>,
    figures: &[&Ready],
    maker: &Maker<'_>,
) -> Result<Content, crate::words::WordsError> {
    let title = match part {
        None => title.to_owned(),
        Some((number, count)) => maker.words.say(
            "plate-part",
            &[("title", title), ("number", &number.to_string()), ("count", &count.to_string())],
        )?,
    };
    let mut foot = vec![lesson::foot(maker)?];
    if figures.iter().any(|ready| ready.cut) {
        foot.push(maker.words.say("plate-cut", &[])?);
    }
    for note in figures.iter().flat_map(|ready| &ready.notes) {
        if !foot.contains(note) {
            foot.push(note.clone());
        }
    }
    let captions: Vec<&str> = figures.iter().map(|ready| ready.caption.as_str()).collect();
    let mut content = Content {
        description: format!("{title}: {}.", captions.join("; ")),
        title: title.clone(),
        ..Content::default()
    };
    content.blocks.insert("title".to_owned(), vec![Block::new(Kind::Title, title)]);
    content.blocks.insert("foot".to_owned(), vec![Block::new(Kind::Text, foot.join(" "))]);
    for (number, caption) in captions.iter().enumerate() {
        content.blocks.insert(format!("caption-{number}"), vec![Block::new(Kind::Caption, *caption)]);
    }
    Ok(content)
}

/// The grid in which the figures are largest, their mm for a cm, and its columns, unless they are given.
fn grid(
    size: Size,
    count: usize,
    given: Option<usize>,
    frame: &Frame,
    content: &Content,
    maker: &Maker<'_>,
) -> Result<(Layout, f32, usize), String> {
    let mut best: Option<(Layout, f32, usize)> = None;
    let mut refused = String::new();
    let columns = given.map_or(1..=count, |columns| columns..=columns);
    for columns in columns {
        let text = layout(size, columns, count);
        let layout = Layout::read("plate", &text).map_err(|e| e.to_string())?;
        match layout.mm_per_cm(frame, content, maker.words, maker.fonts) {
            Ok(scale) if best.as_ref().is_none_or(|(_, largest, _)| scale > *largest) => {
                best = Some((layout, scale, columns))
            }
            Ok(_) => {}
            Err(why) => refused = why.to_string(),
        }
    }
    best.ok_or(refused)
}

/// A layout with so many figures a row, each under its caption.
fn layout(size: Size, columns: usize, count: usize) -> String {
    let ((wide, high), smallest) = (size.paper(), size.type_pt());
    // Captions may be larger than the words on the figures, not smaller; a title is set 2.2 times as large as its box says.
    let (title, words) = match size {
        Size::A3 => (14.0, 16.0),
        Size::A4 | Size::Letter => (10.5, 12.0),
        Size::Slide => (13.0, 18.0),
    };
    let mut text = format!(
        "[page]\npaper = \"{wide} x {high} mm\"\nmargin = \"8 mm\"\nsmallest-type = \"10 pt\"\ncolumns = {columns}\ncolumn-gap = \"3 mm\"\nrow-gap = \"1 mm\"\n"
    );
    let mut lay = |name: &str, holds: &str, row: usize, columns: &str, size: f32| {
        let least = smallest.min(size);
        text.push_str(&format!(
            "[[box]]\nname = \"{name}\"\nholds = \"{holds}\"\nrow = \"{row}\"\ncolumns = \"{columns}\"\ntype = \"{size} pt\"\nmay-shrink = \"{least} pt\"\n"
        ));
    };
    let across = format!("1-{columns}");
    lay("title", "words:title", 1, &across, title);
    for number in 0..count {
        let (row, column) = (2 + 2 * (number / columns), (number % columns + 1).to_string());
        lay(&format!("caption-{number}"), &format!("words:caption-{number}"), row, &column, words);
        lay(&format!("picture-{number}"), "picture", row + 1, &column, words);
    }
    lay("foot", "words:foot", 2 + 2 * count.div_ceil(columns), &across, smallest);
    text
}
