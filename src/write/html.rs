//! A page for a telephone. In: sides of panels with their words, a picture, the grid of the paper page. Out: one file of HTML that
//! is read without a zoom, in light and in dark, and printed like the paper page.
//!
//! It has no script and asks for nothing: its policy allows its own style, by its hash, and no more. Words stand in it as words,
//! in the order of the paper page; a telephone number is a link that dials it. Nothing can be written on a screen: lines to write
//! on are there when it is printed. It is well-formed XML as well.

use super::{WriteError, svg};
use crate::fonts::Fonts;
use crate::sheet::{Block, Edge, Grid, Kind, Panel, Sheet, Shown};
use crate::words::{Words, WordsError};
use base64::Engine;
use sha2::{Digest, Sha256};
use std::fmt::Write;

/// How it looks on a screen, and what of it does not depend on the layout on paper.
const STYLE: &str = include_str!("phone.css");
/// The same on paper.
const PRINT: &str = include_str!("phone-print.css");
/// Where a line to write on stands in its words.
const BLANK: &str = "____";
/// Signs are drawn in a square of this side, in mm.
const SIGN_MM: f32 = 8.0;

/// A page in one language.
pub struct Page<'a> {
    /// Its words.
    pub words: &'a Words,
    /// Its title.
    pub title: &'a str,
    /// The mark of a draft.
    pub draft: Option<String>,
    /// Its sides, in the order of reading.
    pub sides: &'a [Vec<Panel>],
    /// The picture.
    pub picture: &'a Sheet,
}

/// The pages, one language after the other, as one file.
pub fn html(pages: &[Page<'_>], grid: &Grid, fonts: &Fonts) -> Result<String, WriteError> {
    let first = pages.first().ok_or_else(|| refused("it has no words"))?;
    let (mut print, mut body) = (String::new(), String::new());
    let prefixes: Vec<String> = (1..=pages.len()).map(|number| format!("p{number}-")).collect();
    let mut drawn = svg::Drawn::new();
    for (number, (page, prefix)) in pages.iter().zip(&prefixes).enumerate() {
        let picture = svg::inline(page.picture, prefix, fonts, &mut drawn)?;
        Writer { page, picture: &picture, number, fonts, panels: 0, body: &mut body, print: &mut print }
            .article()?;
    }
    let style = format!("{}{}", STYLE, printed(grid, &print));
    let hash = base64::engine::general_purpose::STANDARD.encode(Sha256::digest(style.as_bytes()));
    let (lang, title) = (escaped(first.words.lang()), escaped(first.title));
    Ok(format!(
        "<!DOCTYPE html>\n<html lang=\"{lang}\">\n<head>\n<meta charset=\"utf-8\"/>\n\
         <meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'sha256-{hash}'; \
         base-uri 'none'; form-action 'none'\"/>\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n\
         <meta name=\"referrer\" content=\"no-referrer\"/>\n<meta name=\"format-detection\" content=\"telephone=no\"/>\n\
         <title>{title}</title>\n<style>{style}</style>\n</head>\n<body>\n<main>\n{body}</main>\n</body>\n</html>\n"
    ))
}

/// The style for paper: the grid of the layout, the picture as high as the words leave room for, a side a sheet.
fn printed(grid: &Grid, panels: &str) -> String {
    let (wide, high, margin) = (grid.width_mm, grid.height_mm, grid.margin_mm);
    let (gap, rows) = (grid.column_gap_mm, grid.row_gap_mm);
    // A little less than the paper has, so that rounding makes no further side.
    let inner = high - 2.0 * margin - 1.0;
    format!(
        "@page{{size:{wide}mm {high}mm;margin:{margin}mm}}\n@media print{{\n{PRINT}\
         .side{{grid-template-columns:repeat({},minmax(0,1fr));column-gap:{gap}mm;row-gap:{rows}mm}}\n\
         .frame{{column-gap:{gap}mm}}\n.with-picture{{height:{inner}mm}}\n{panels}}}\n",
        grid.columns,
    )
}

struct Writer<'a> {
    page: &'a Page<'a>,
    /// Its picture as SVG.
    picture: &'a str,
    /// Which of the pages it is, from 0.
    number: usize,
    fonts: &'a Fonts,
    /// How many panels are begun.
    panels: usize,
    body: &'a mut String,
    print: &'a mut String,
}

impl Writer<'_> {
    fn article(&mut self) -> Result<(), WriteError> {
        let _ = writeln!(self.body, "<article lang=\"{}\">", escaped(self.page.words.lang()));
        self.bar();
        let mut picture = Some(self.picture);
        for (at, side) in self.page.sides.iter().enumerate() {
            let has_picture = picture.is_some() && side.iter().any(|panel| panel.is_picture);
            let class = if has_picture { "side with-picture" } else { "side" };
            let name = self.side(at);
            let _ = writeln!(self.body, "<div class=\"{class}\" id=\"{name}\">");
            if has_picture {
                self.rows(&name, side);
            }
            if let Some(mark) = &self.page.draft {
                let _ = writeln!(self.body, "<p class=\"draft\">{}</p>", escaped(mark));
            }
            let mut rest: &[Panel] = side;
            while let Some((panel, after)) = rest.split_first() {
                rest = after;
                if panel.is_picture {
                    if let Some(picture) = picture.take() {
                        self.open(panel, None, "picture");
                        self.body.push_str(picture);
                        self.body.push_str("\n</section>\n");
                    }
                } else if panel.blocks.is_empty() {
                    let inside = after.iter().take_while(|other| panel.holds(other)).count();
                    if inside == 0 {
                        continue;
                    }
                    self.open(panel, None, "frame");
                    for one in &after[..inside] {
                        self.words_of(one, Some(panel), at)?;
                    }
                    self.body.push_str("</section>\n");
                    rest = &after[inside..];
                } else {
                    self.words_of(panel, None, at)?;
                }
            }
            self.body.push_str("</div>\n");
        }
        self.body.push_str("</article>\n");
        Ok(())
    }

    fn side(&self, at: usize) -> String {
        format!("l{}s{}", self.number + 1, at + 1)
    }

    /// The number to call, always in sight: the first of the page, and the words before it, which name the clinic; beside it, in its
    /// own place, the emergency number, where the words after it give one.
    fn bar(&mut self) {
        let blocks = || self.page.sides.iter().flatten().flat_map(|panel| &panel.blocks);
        let Some(at) = blocks().position(|block| block.kind == Kind::Number) else { return };
        let label = at.checked_sub(1).and_then(|before| blocks().nth(before));
        let label = label.filter(|block| block.kind == Kind::Text).map(|block| escaped(&block.text));
        let number = blocks().nth(at).map(linked).unwrap_or_default();
        let emergency = blocks().skip(at + 1).take_while(|block| block.kind == Kind::Emphasis);
        let emergency: String = emergency
            .filter(|block| !block.numbers.is_empty())
            .map(|block| format!("<p>{}</p>", linked(block)))
            .collect();
        let label = label.unwrap_or_default();
        let _ = writeln!(self.body, "<div class=\"bar\"><p>{label} {number}</p>{emergency}</div>");
    }

    /// Rows on paper: as high as their words, the picture's takes the rest.
    fn rows(&mut self, name: &str, side: &[Panel]) {
        let last = side.iter().map(|panel| panel.rows.1).max().unwrap_or(1);
        let picture = side.iter().find(|panel| panel.is_picture).map(|panel| panel.rows);
        let in_picture = |row: u16| picture.is_some_and(|(first, last)| (first..=last).contains(&row));
        let rows: Vec<&str> =
            (1..=last).map(|row| if in_picture(row) { "minmax(0,1fr)" } else { "auto" }).collect();
        let _ = writeln!(self.print, "#{name}{{grid-template-rows:{}}}", rows.join(" "));
    }

    /// Begins a panel; what stands in a frame has its place in the frame's own columns.
    fn open(&mut self, panel: &Panel, frame: Option<&Panel>, class: &str) {
        let edge = match panel.edge {
            Edge::None => "",
            Edge::Line => "line",
            Edge::Bold => "bold",
        };
        let classes: Vec<&str> = [class, edge].into_iter().filter(|class| !class.is_empty()).collect();
        let class =
            if classes.is_empty() { String::new() } else { format!(" class=\"{}\"", classes.join(" ")) };
        self.panels += 1;
        let id = format!("l{}b{}", self.number + 1, self.panels);
        let from = frame.map_or((1, 1), |frame| (frame.rows.0, frame.columns.0));
        let _ = writeln!(self.body, "<section{class} id=\"{id}\">");
        let _ = writeln!(
            self.print,
            "#{id}{{grid-area:{}/{}/{}/{};font-size:{}pt}}",
            panel.rows.0 + 1 - from.0,
            panel.columns.0 + 1 - from.1,
            panel.rows.1 + 2 - from.0,
            panel.columns.1 + 2 - from.1,
            panel.type_pt,
        );
    }

    fn words_of(&mut self, panel: &Panel, frame: Option<&Panel>, at: usize) -> Result<(), WriteError> {
        let on_paper = panel.blocks.iter().all(is_for_paper);
        self.open(panel, frame, if on_paper { "paper" } else { "" });
        let mut in_list = false;
        for block in &panel.blocks {
            if (block.kind == Kind::Item) != in_list {
                in_list = !in_list;
                self.body.push_str(if in_list { "<ul>\n" } else { "</ul>\n" });
            }
            self.block(block, panel.with_signs, at)?;
        }
        if in_list {
            self.body.push_str("</ul>\n");
        }
        self.body.push_str("</section>\n");
        Ok(())
    }

    fn block(&mut self, block: &Block, with_signs: bool, at: usize) -> Result<(), WriteError> {
        let (element, class) = match block.kind {
            Kind::Title => ("h1", ""),
            Kind::Part | Kind::Heading => ("h2", ""),
            Kind::Lead => ("p", "lead"),
            Kind::Text | Kind::Caption | Kind::Answer | Kind::Cell(_) => ("p", ""),
            Kind::Emphasis | Kind::Strong | Kind::Question => ("p", "strong"),
            Kind::Number => ("p", "number"),
            Kind::Item => ("li", ""),
            Kind::Blank => ("p", "blank"),
        };
        let mut classes: Vec<&str> = vec![class];
        let mut words = linked(block);
        if block.kind == Kind::Blank {
            let (label, tail) = block.text.split_once(BLANK).unwrap_or((&block.text, ""));
            let spans = [label, tail].map(|part| escaped(part.trim()));
            words =
                format!("<span>{}</span> <span class=\"rule\"></span> <span>{}</span>", spans[0], spans[1]);
        }
        match block.shown {
            Shown::OnScreen => classes.push("screen"),
            Shown::Everywhere | Shown::OnPaper if is_for_paper(block) => classes.push("paper"),
            Shown::Everywhere | Shown::OnPaper => {}
        }
        if block.leads_on && at + 1 < self.page.sides.len() {
            classes.push("onward");
            words = format!("<a href=\"#{}\">{words}</a>", self.side(at + 1));
        }
        if let (true, Some(sign)) = (with_signs, block.sign) {
            let alt =
                self.page.words.say(sign.message(), &[]).map_err(|e: WordsError| refused(&e.to_string()))?;
            classes.push("with-sign");
            words = format!(
                "{} <span>{words}</span>",
                svg::sign(&sign.alone(SIGN_MM), SIGN_MM, &alt, self.fonts)?.trim()
            );
        }
        classes.retain(|class| !class.is_empty());
        let class =
            if classes.is_empty() { String::new() } else { format!(" class=\"{}\"", classes.join(" ")) };
        let _ = writeln!(self.body, "<{element}{class}>{words}</{element}>");
        Ok(())
    }
}

/// Whether it is shown on paper alone: a line to write on always is.
fn is_for_paper(block: &Block) -> bool {
    block.kind == Kind::Blank || block.shown == Shown::OnPaper
}

/// The words, with a link that dials on each telephone number.
fn linked(block: &Block) -> String {
    let mut out = String::new();
    let mut rest = block.text.as_str();
    loop {
        let found = block.numbers.iter().filter_map(|number| Some((rest.find(number.as_str())?, number)));
        let Some((at, number)) = found.min_by_key(|(at, number)| (*at, usize::MAX - number.len())) else {
            out.push_str(&escaped(rest));
            return out;
        };
        out.push_str(&escaped(&rest[..at]));
        match dial(number) {
            Some(digits) => {
                let _ = write!(out, "<a href=\"tel:{digits}\">{}</a>", escaped(number));
            }
            None => out.push_str(&escaped(number)),
        }
        rest = &rest[at + number.len()..];
    }
}

/// What a telephone dials for a number as it is printed: its digits, after a `+` where it begins with one. `None` where that is not
/// sure: a stroke may stand before another number.
pub fn dial(number: &str) -> Option<String> {
    if number.contains('/') {
        return None;
    }
    let abroad = number.trim_start().starts_with('+');
    // The nought in brackets is dialled at home alone.
    let number = if abroad { number.replace("(0)", "") } else { number.to_owned() };
    if number.trim_start().chars().skip(usize::from(abroad)).any(|c| c == '+') {
        return None;
    }
    let digits: String = number.chars().filter(char::is_ascii_digit).collect();
    (!digits.is_empty()).then(|| format!("{}{digits}", if abroad { "+" } else { "" }))
}

/// Words as they stand in HTML.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

fn refused(reason: &str) -> WriteError {
    WriteError::Refused { what: "page for a telephone", reason: reason.to_owned() }
}
