//! Setting words into lines. In: blocks, a width and a type size. Out: lines with their places, from the top
//! left corner of the box, in mm.

use super::content::{Block, Cell, Kind};
use super::layout::MM_PER_PT;
use super::signs::Sign;
use crate::fonts::{Face, FontError, Fonts};
use std::cell::RefCell;
use std::collections::BTreeMap;
use unicode_linebreak::{BreakOpportunity, linebreaks};

/// Where a line to write on is drawn within the words of a [`Kind::Blank`].
const BLANK: &str = "____";
/// Height of a line to write on by hand, in mm.
const WRITING_MM: f32 = 8.5;
/// The shortest line to write on, in mm.
const SHORTEST_BLANK_MM: f32 = 15.0;
/// The last line of words is at least this share of the width, where that costs no line.
const SHORTEST_LAST_LINE: f32 = 0.2;
/// The same for headings and leads.
const SHORTEST_LAST_LINE_LARGE: f32 = 0.3;
/// Between the edge of a cell and its words, and between its words and the next cell, as a share of the type size.
const CELL_SPACE: f32 = 0.45;
/// Side of a small picture, the space between it and its words, and under it, as shares of the type size of the box.
const SIGN: f32 = 2.0;
const SIGN_GAP: f32 = 0.7;
const SIGN_BELOW: f32 = 0.2;
/// Between words and a line to write on, in mm.
const BLANK_GAP_MM: f32 = 1.6;

/// One line of words.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Line {
    /// The words; the space at which the line was broken stays at its end.
    pub text: String,
    pub face: Face,
    pub size_mm: f32,
    /// Start of the baseline.
    pub x: f32,
    pub baseline: f32,
}

/// A block in its lines.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct SetBlock {
    pub kind: Kind,
    pub lines: Vec<Line>,
    /// A line to write on: from, to, height.
    pub rule: Option<(f32, f32, f32)>,
    /// The dot of a list's point: centre and radius.
    pub dot: Option<(f32, f32, f32)>,
    /// A small picture: which, its top left corner, its side.
    pub sign: Option<(Sign, f32, f32, f32)>,
}

/// The words of a box, set.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Setting {
    pub blocks: Vec<SetBlock>,
    pub height_mm: f32,
}

/// Why words cannot be set.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum SetError {
    Font(FontError),
    /// A word, or a line to write on, is wider than the box.
    TooWide(String),
}

impl From<FontError> for SetError {
    fn from(e: FontError) -> Self {
        SetError::Font(e)
    }
}

/// How a kind of block is set; lengths are shares of the box's type size.
#[derive(Clone, Copy)]
struct Manner {
    face: Face,
    size: f32,
    line: f32,
    before: f32,
    indent: f32,
}

fn manner(kind: Kind) -> Manner {
    let m = |face, size, line, before, indent| Manner { face, size, line, before, indent };
    match kind {
        Kind::Title => m(Face::SemiBold, 2.2, 2.35, 0.0, 0.0),
        Kind::Part => m(Face::SemiBold, 1.5, 1.7, 0.8, 0.0),
        Kind::Heading => m(Face::SemiBold, 1.25, 1.55, 0.8, 0.0),
        Kind::Lead => m(Face::SemiBold, 1.4, 1.7, 0.35, 0.0),
        Kind::Text => m(Face::Regular, 1.0, 1.25, 0.4, 0.0),
        Kind::Caption => m(Face::Regular, 1.0, 1.25, 0.4, 0.0),
        Kind::Emphasis => m(Face::SemiBold, 1.0, 1.25, 0.4, 0.0),
        Kind::Strong => m(Face::SemiBold, 1.0, 1.25, 0.1, 0.0),
        Kind::Number => m(Face::SemiBold, 1.6, 1.8, 0.05, 0.0),
        Kind::Item => m(Face::Regular, 1.0, 1.25, 0.13, 0.95),
        Kind::Question => m(Face::SemiBold, 1.0, 1.25, 0.55, 0.0),
        Kind::Answer => m(Face::Regular, 1.0, 1.25, 0.05, 0.0),
        Kind::Blank => m(Face::Regular, 1.0, 1.27, 0.0, 0.0),
        Kind::Cell(Cell { head: true, .. }) => m(Face::SemiBold, 1.0, 1.2, 0.0, 0.0),
        Kind::Cell(Cell { head: false, .. }) => m(Face::Regular, 1.0, 1.2, 0.0, 0.0),
    }
}

/// Sets words; widths already measured are kept, since a box is tried in several sizes.
pub(super) struct Setter<'a> {
    fonts: &'a Fonts,
    widths: RefCell<BTreeMap<(Face, String), f32>>,
}

impl<'a> Setter<'a> {
    pub fn new(fonts: &'a Fonts) -> Self {
        Self { fonts, widths: RefCell::default() }
    }

    /// `blocks` in lines of at most `width_mm`, in type of `type_pt`.
    pub fn set(&self, blocks: &[Block], width_mm: f32, type_pt: f32) -> Result<Setting, SetError> {
        self.set_with(blocks, width_mm, type_pt, false)
    }

    /// The same, with their small pictures where `signs` says so.
    pub fn set_with(
        &self,
        blocks: &[Block],
        width_mm: f32,
        type_pt: f32,
        signs: bool,
    ) -> Result<Setting, SetError> {
        let em = type_pt * MM_PER_PT;
        let mut out = Setting::default();
        // The row of a table that is open: its number, its top, its lowest line so far.
        let mut open: Option<(u16, f32, f32)> = None;
        for block in blocks {
            let m = manner(block.kind);
            if let Kind::Cell(cell) = block.kind {
                let (row, top, lowest) = open.get_or_insert((cell.row, out.height_mm, out.height_mm));
                if *row != cell.row {
                    (*row, *top) = (cell.row, *lowest);
                }
                let mut bottom = *top;
                out.blocks.push(self.cell(cell, &block.text, width_mm, m, em, &mut bottom)?);
                *lowest = lowest.max(bottom);
                out.height_mm = *lowest;
                continue;
            }
            open = None;
            if !out.blocks.is_empty() {
                out.height_mm += m.before * em;
            }
            let set = match block.kind {
                Kind::Blank => self.blank(&block.text, width_mm, m, em, &mut out.height_mm)?,
                kind => {
                    let plain = |y: &mut f32| self.running(kind, &block.text, width_mm, m, em, y);
                    match block.sign.filter(|_| signs) {
                        None => plain(&mut out.height_mm)?,
                        // A long number needs the whole width: it stands alone.
                        Some(sign) => match self.beside(sign, block, width_mm, m, em, &mut out.height_mm) {
                            Err(SetError::TooWide(_)) => plain(&mut out.height_mm)?,
                            set => set?,
                        },
                    }
                }
            };
            out.blocks.push(set);
        }
        Ok(out)
    }

    fn running(
        &self,
        kind: Kind,
        text: &str,
        width_mm: f32,
        m: Manner,
        em: f32,
        y: &mut f32,
    ) -> Result<SetBlock, SetError> {
        let (size_mm, x) = (m.size * em, m.indent * em);
        let mut lines = vec![];
        for words in self.balanced(kind, text, m.face, (width_mm - x) / size_mm)? {
            let baseline = *y + baseline_in(m.line * em, size_mm);
            let x = match kind {
                Kind::Caption => 0.5 * (width_mm - self.width(m.face, words.trim_end())? * size_mm),
                _ => x,
            };
            lines.push(Line { text: words.to_owned(), face: m.face, size_mm, x, baseline });
            *y += m.line * em;
        }
        let dot = match (kind, lines.first()) {
            (Kind::Item, Some(first)) => Some((
                0.32 * em,
                first.baseline - self.fonts.heights(m.face).small * 0.5 * size_mm,
                0.13 * em,
            )),
            _ => None,
        };
        Ok(SetBlock { kind, lines, rule: None, dot, sign: None })
    }

    /// Words with a small picture at their left, the lower of the two in the middle of the other.
    fn beside(
        &self,
        sign: Sign,
        block: &Block,
        width_mm: f32,
        m: Manner,
        em: f32,
        y: &mut f32,
    ) -> Result<SetBlock, SetError> {
        let (side, indent) = (SIGN * em, (SIGN + SIGN_GAP) * em);
        let (top, m) = (*y, Manner { indent: 0.0, ..m });
        let mut set = self.running(block.kind, &block.text, width_mm - indent, m, em, y)?;
        let (words, whole) = (*y - top, (*y - top).max(side));
        for line in &mut set.lines {
            line.x += indent;
            line.baseline += 0.5 * (whole - words);
        }
        *y = top + whole + SIGN_BELOW * em;
        Ok(SetBlock { dot: None, sign: Some((sign, 0.0, top + 0.5 * (whole - side), side)), ..set })
    }

    /// A cell from its left to its right edge, under a thin rule.
    fn cell(
        &self,
        cell: Cell,
        text: &str,
        width_mm: f32,
        m: Manner,
        em: f32,
        y: &mut f32,
    ) -> Result<SetBlock, SetError> {
        let (left, right) = cell.across;
        let edge = |thousandths: u16| width_mm * f32::from(thousandths) / 1000.0;
        let (left, right, space) = (edge(left), edge(right), CELL_SPACE * em);
        let rule = (cell.row > 0).then_some((left, right, *y));
        *y += space * 0.6;
        let mut set = self.running(Kind::Cell(cell), text, right - left - space, m, em, y)?;
        *y += space * 0.6;
        set.lines.iter_mut().for_each(|line| line.x += left);
        set.rule = rule;
        Ok(set)
    }

    fn blank(
        &self,
        text: &str,
        width_mm: f32,
        m: Manner,
        em: f32,
        y: &mut f32,
    ) -> Result<SetBlock, SetError> {
        let (label, tail) = text.split_once(BLANK).unwrap_or((text, ""));
        let (label, tail) = (label.trim_end(), tail.trim_start());
        let size_mm = m.size * em;
        let label_mm = self.width(m.face, label)? * size_mm;
        let tail_mm = self.width(m.face, tail)? * size_mm;
        let from = if label.is_empty() { 0.0 } else { label_mm + BLANK_GAP_MM };
        let tail_x = width_mm - tail_mm;
        let to = if tail.is_empty() { width_mm } else { tail_x - BLANK_GAP_MM };
        if to - from < SHORTEST_BLANK_MM {
            return Err(SetError::TooWide(text.to_owned()));
        }
        *y += WRITING_MM;
        let baseline = *y - 1.0;
        let line = |text: &str, x| Line { text: text.to_owned(), face: m.face, size_mm, x, baseline };
        let mut lines = vec![];
        if !label.is_empty() {
            lines.push(line(&format!("{label} "), 0.0));
        }
        if !tail.is_empty() {
            lines.push(line(tail, tail_x));
        }
        Ok(SetBlock {
            kind: Kind::Blank,
            lines,
            rule: Some((from, to, baseline + 0.4)),
            dot: None,
            sign: None,
        })
    }

    /// As [`Self::broken`]; the last line is not left with one short word where that costs no line.
    fn balanced<'t>(
        &self,
        kind: Kind,
        text: &'t str,
        face: Face,
        width: f32,
    ) -> Result<Vec<&'t str>, SetError> {
        let shortest = match kind {
            Kind::Title | Kind::Part | Kind::Heading | Kind::Lead => SHORTEST_LAST_LINE_LARGE,
            Kind::Text
            | Kind::Caption
            | Kind::Emphasis
            | Kind::Strong
            | Kind::Number
            | Kind::Item
            | Kind::Question
            | Kind::Answer
            | Kind::Blank
            | Kind::Cell(_) => SHORTEST_LAST_LINE,
        };
        let mut best = self.broken(text, face, width)?;
        let mut narrower = width;
        while let [_, .., last] = best[..] {
            if self.width(face, last)? >= width * shortest {
                break;
            }
            narrower -= width * 0.02;
            match self.broken(text, face, narrower) {
                Ok(lines) if lines.len() == best.len() => best = lines,
                Ok(_) | Err(_) => break,
            }
        }
        Ok(best)
    }

    /// `text` in lines of at most `width`, a share of the type size.
    fn broken<'t>(&self, text: &'t str, face: Face, width: f32) -> Result<Vec<&'t str>, SetError> {
        let mut lines = vec![];
        let (mut start, mut end, mut used) = (0, 0, 0.0);
        for (at, chance) in linebreaks(text) {
            let piece = &text[end..at];
            let bare = self.width(face, piece.trim_end())?;
            if bare > width {
                return Err(SetError::TooWide(piece.trim_end().to_owned()));
            }
            if used + bare > width {
                lines.push(&text[start..end]);
                (start, used) = (end, 0.0);
            }
            used += self.width(face, piece)?;
            end = at;
            if chance == BreakOpportunity::Mandatory {
                lines.push(&text[start..end]);
                (start, used) = (end, 0.0);
            }
        }
        Ok(lines)
    }

    fn width(&self, face: Face, text: &str) -> Result<f32, FontError> {
        let key = (face, text.to_owned());
        if let Some(width) = self.widths.borrow().get(&key) {
            return Ok(*width);
        }
        let width = self.fonts.measure(face, text, 1.0)?;
        self.widths.borrow_mut().insert(key, width);
        Ok(width)
    }
}

/// Where the baseline runs in a line of this height: capitals stand in its middle.
fn baseline_in(line_mm: f32, size_mm: f32) -> f32 {
    line_mm * 0.5 + size_mm * 0.31
}
