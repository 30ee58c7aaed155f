//! All words on a picture. In: a pose, its cast, how the figure is wanted. Out: a plan: every word, number and pointer in its
//! place, for the painter and for the tests; then marks that are painted. Nothing is left out: words that find no free
//! place become numbers with a key under the picture.

use super::FigureError;
use super::marks::{self, MarkColours};
use super::mother_ink::ellipse;
use super::numbers::{self, Number};
use super::options::{FigureOptions, Labels, Style};
use super::scene::{Align, FillRule, Frame, Item, Path, Role, Step, Text};
use super::solve::{Ask, Columns, Spot, solve};
use super::terrain::{Round, Segment, Terrain};
use super::wanted::{Source, Wanted};
use crate::fonts::{Face, FontError, Fonts, OutlineStep};
use crate::units::FigurePoint;
use crate::words::Words;

/// Words in their place.
#[derive(Clone, Debug, PartialEq)]
pub struct Placed {
    /// A name, unique on the picture.
    pub name: String,
    /// What they are for.
    pub role: Role,
    /// The lines from above, each with the start of its baseline.
    pub lines: Vec<(String, FigurePoint)>,
    /// What they cover.
    pub area: Frame,
    /// To what they name.
    pub pointer: Option<Segment>,
    /// Whether a pale rim keeps lines of the body off the letters.
    pub rim: bool,
    face: Face,
}

/// Every word of a picture in its place, and what it keeps off.
#[derive(Clone, Debug)]
pub struct Plan {
    /// The picture, with the band of paper at its foot if there is one.
    pub frame: Frame,
    /// Words with pointers, sides, captions, the key.
    pub placed: Vec<Placed>,
    /// Numbers in circles.
    pub numbers: Vec<Number>,
    /// Whether numbers stand for words that found no free place.
    pub fell_back: bool,
    /// What marks cover.
    pub marks: Vec<Round>,
    /// Faces that are seen.
    pub faces: Vec<Round>,
    /// The band of paper at the foot.
    pub band: Option<Frame>,
    size: f32,
    /// Width of a pointer, cm.
    pointer: f32,
}

/// Space between the edge of the picture and words, cm.
const EDGE: f32 = 0.7;

/// Width of a pointer in cm of the body; for a family the least of it as a share of the type: as dark as its words.
const POINTER: f32 = 0.055;
const POINTER_OF_TYPE: f32 = 0.045;

/// Type size in cm of the body.
fn type_cm(options: &FigureOptions) -> f32 {
    options.type_pt * 25.4 / 72.0 / options.mm_per_cm
}

/// How words are planned.
pub(super) struct Planner<'a> {
    pub options: &'a FigureOptions,
    /// The frame before a band is added, turned with the picture.
    pub frame: Frame,
    pub words: &'a Words,
    pub fonts: &'a Fonts,
}

/// What words are planned for.
pub(super) struct Asked<'a> {
    /// What they keep off.
    pub terrain: Terrain<'a>,
    /// What is pointed at, as someone in front of her sees it.
    pub wanted: Vec<Wanted>,
    /// What is pointed at besides, where there is room for it.
    pub spare: Vec<Wanted>,
    /// Whether words stand far apart where there is room for it: not between two babies, where each stands beside its own.
    pub apart: bool,
    /// What is told at the foot instead: a stamp has no room for pointers.
    pub told: Vec<String>,
    /// The messages that name what lies at the right and at the left of an unturned picture.
    pub sides: (&'static str, &'static str),
    /// -1 for a picture turned by half a turn, else 1.
    pub turn: f32,
}

impl<'a> Asked<'a> {
    /// For a picture seen from the front.
    pub fn of(source: &Source<'a>, options: &FigureOptions) -> Result<Self, FigureError> {
        let turn = marks::turn(options.view);
        let sketch = options.style == Style::Sketch;
        let family = options.labels == Labels::Family;
        Ok(Asked {
            terrain: Terrain::new(source.pose, source.cast, turn, marks::rounds(source.marks)),
            wanted: if sketch { vec![] } else { source.collect(options.labels)? },
            spare: if family && !sketch { source.legs()? } else { vec![] },
            apart: family && source.pose.baby_count < 2,
            told: if sketch { source.told(options.labels)? } else { vec![] },
            sides: if family { ("your-left", "your-right") } else { ("her-left", "her-right") },
            turn,
        })
    }

    /// For a picture that is not turned, of what is wanted alone: a cut, or one from below.
    pub fn only(terrain: Terrain<'a>, wanted: Vec<Wanted>, sides: (&'static str, &'static str)) -> Self {
        Asked { terrain, wanted, spare: vec![], apart: false, told: vec![], sides, turn: 1.0 }
    }
}

impl Planner<'_> {
    /// Type size in cm of the body.
    fn size(&self) -> f32 {
        type_cm(self.options)
    }

    /// The plan.
    pub fn plan(&self, asked: Asked<'_>) -> Result<Plan, FigureError> {
        let Asked { mut terrain, wanted, spare, apart, told, sides, turn } = asked;
        let mut plan = Plan {
            frame: self.frame,
            placed: vec![],
            numbers: vec![],
            fell_back: false,
            marks: terrain.marks.clone(),
            faces: terrain.faces.clone(),
            band: None,
            size: self.size(),
            pointer: match self.options.labels {
                Labels::Family => POINTER.max(POINTER_OF_TYPE * self.size()),
                Labels::None | Labels::Few | Labels::All | Labels::Numbered => POINTER,
            },
        };
        let mut band = Band::below(self.frame, self.size());
        let sketch = self.options.style == Style::Sketch;
        self.sides(sides, turn, sketch.then_some(&mut band), &terrain, &mut plan)?;
        terrain.fixed.extend(plan.placed.iter().map(|p| p.area.grown(0.1)));
        for text in told {
            self.sentence(&text, "told", &mut band, &mut plan)?;
        }
        if wanted.is_empty() {
            // Nothing is named.
        } else if self.options.labels == Labels::Numbered {
            self.numbered(&wanted, turn, &terrain, &mut band, &mut plan)?;
        } else if !self.best_pointed(&wanted, spare, apart, turn, &terrain, &mut plan)? {
            plan.fell_back = true;
            self.numbered(&wanted, turn, &terrain, &mut band, &mut plan)?;
        }
        for caption in &self.options.captions {
            self.sentence(caption, "caption", &mut band, &mut plan)?;
        }
        if band.used() {
            plan.frame.bottom = band.foot();
            plan.band = Some(Frame { top: self.frame.bottom, ..plan.frame });
        }
        Ok(plan)
    }

    /// The names of the sides, on every picture, at its foot.
    fn sides(
        &self,
        (left, right): (&str, &str),
        turn: f32,
        band: Option<&mut Band>,
        terrain: &Terrain<'_>,
        plan: &mut Plan,
    ) -> Result<(), FigureError> {
        let size = self.size();
        let on_body = band.is_none();
        let y = match band {
            Some(band) => band.line(),
            None => self.frame.bottom + EDGE + 0.22 * size,
        };
        for (id, sign, name) in [(left, turn, "side-left"), (right, -turn, "side-right")] {
            let text = self.words.say(id, &[])?;
            let width = self.fonts.measure(Face::SemiBold, &text, size)?;
            let x = if sign > 0.0 { self.frame.right - EDGE - width } else { self.frame.left + EDGE };
            let area = Frame { left: x, bottom: y - 0.25 * size, right: x + width, top: y + 0.75 * size };
            plan.placed.push(Placed {
                name: name.to_owned(),
                role: Role::Side,
                area,
                lines: vec![(text, FigurePoint::new(x, y))],
                pointer: None,
                rim: on_body && terrain.on_outline(area),
                face: Face::SemiBold,
            });
        }
        Ok(())
    }

    /// A question for the solvers, in the space of the finished picture, and the lines of its words with their widths.
    fn ask(&self, w: &Wanted, turn: f32) -> Result<(Ask, Vec<(String, f32)>), FontError> {
        let size = self.size();
        // About as wide as the strip beside the body.
        let lines = self.broken(&w.text, face_of(w), 5.8f32.max(4.8 * size))?;
        let width = lines.iter().map(|(_, width)| *width).fold(0.0, f32::max);
        let mut targets = w.targets.map(|t| t.map(|p| FigurePoint::new(p.x * turn, p.y * turn)));
        if turn < 0.0 {
            targets.reverse();
        }
        let height = LINE * size * (lines.len() - 1) as f32 + TALL * size;
        let ask = Ask { size: (width, height), targets, side: w.side * turn, gap: w.gap, owner: w.owner };
        Ok((ask, lines))
    }

    /// Words at the edges with pointers, those that are spare where there is room; far apart where it is asked for and there is room.
    fn best_pointed(
        &self,
        wanted: &[Wanted],
        spare: Vec<Wanted>,
        roomy: bool,
        turn: f32,
        terrain: &Terrain<'_>,
        plan: &mut Plan,
    ) -> Result<bool, FigureError> {
        let all: Vec<Wanted> = if spare.is_empty() { vec![] } else { [wanted, &spare[..]].concat() };
        for words in [&all[..], wanted].into_iter().filter(|words| !words.is_empty()) {
            for apart in [APART_FAMILY, APART].into_iter().filter(|apart| roomy || *apart == APART) {
                if self.pointed(words, apart, turn, terrain, plan)? {
                    return Ok(true);
                }
            }
        }
        Ok(false)
    }

    /// The same so far apart, in type sizes; false when there is no room for all of them.
    fn pointed(
        &self,
        wanted: &[Wanted],
        apart: f32,
        turn: f32,
        terrain: &Terrain<'_>,
        plan: &mut Plan,
    ) -> Result<bool, FigureError> {
        let size = self.size();
        let (mut asks, mut texts) = (vec![], vec![]);
        for w in wanted {
            let (ask, lines) = self.ask(w, turn)?;
            asks.push(ask);
            texts.push(lines);
        }
        let columns = Columns {
            edge: self.frame.right - EDGE,
            span: (self.frame.bottom + EDGE + 1.3 * size, self.frame.top - EDGE),
            apart: apart * size,
            stand_off: 0.3,
        };
        let Some(spots) = solve(&asks, &columns, terrain) else { return Ok(false) };
        for (i, (spot, w)) in spots.iter().zip(wanted).enumerate() {
            let Spot { side, .. } = *spot;
            let area = columns.area(&asks[i], *spot);
            let mut lines = vec![];
            for (k, (text, width)) in texts[i].iter().enumerate() {
                let x = if side > 0.0 { area.right - width } else { area.left };
                let y = area.top - ASCENT * size - LINE * size * k as f32;
                lines.push((text.clone(), FigurePoint::new(x, y)));
            }
            plan.placed.push(Placed {
                name: format!("label-{}", i + 1),
                role: Role::Label,
                rim: terrain.on_outline(area),
                lines,
                area,
                pointer: columns.pointer(&asks[i], *spot),
                face: face_of(w),
            });
        }
        Ok(true)
    }

    /// Numbers at the places and a key in the band.
    fn numbered(
        &self,
        wanted: &[Wanted],
        turn: f32,
        terrain: &Terrain<'_>,
        band: &mut Band,
        plan: &mut Plan,
    ) -> Result<(), FigureError> {
        let mut asks = vec![];
        for w in wanted {
            asks.push(self.ask(w, turn)?.0);
        }
        let words: Vec<String> = wanted.iter().map(|w| w.text.clone()).collect();
        let f = self.frame;
        let within = Frame { left: f.left, bottom: f.bottom, right: f.right, top: f.top };
        let circles = numbers::place(&asks, 0.66 * self.size(), within, terrain)
            .map_err(|i| FigureError::NoRoom(words[i].clone()))?;
        let (numbers, key) = numbers::count(circles, &words);
        plan.numbers = numbers;
        self.key(&key, band, plan)
    }

    /// The key: as many columns as hold its longest words, read down one after the other.
    fn key(&self, key: &[String], band: &mut Band, plan: &mut Plan) -> Result<(), FigureError> {
        let size = self.size();
        let indent = 1.5 * size;
        let room = self.frame.right - self.frame.left - 2.0 * EDGE;
        let mut widest = 0.0f32;
        for text in key {
            widest = widest.max(indent + self.fonts.measure(Face::Regular, text, size)?);
        }
        let columns = ((room / (widest + size)) as usize).clamp(1, 4).min(key.len().max(1));
        let wide = room / columns as f32;
        let rows = key.len().div_ceil(columns);
        let mut entries = vec![];
        for (i, text) in key.iter().enumerate() {
            entries.push((i, self.broken(text, Face::Regular, wide - indent - 0.5 * size)?));
        }
        // Each row is as tall as its tallest entry.
        for row in 0..rows {
            let tall = (row..key.len()).step_by(rows).map(|i| entries[i].1.len()).max().unwrap_or(1);
            let baselines: Vec<f32> = (0..tall).map(|_| band.line()).collect();
            for (i, lines) in entries.iter().filter(|(i, _)| i % rows == row) {
                let x = self.frame.left + EDGE + wide * (i / rows) as f32;
                let number = (i + 1).to_string();
                let width = self.fonts.measure(Face::SemiBold, &number, size)?;
                let words: Vec<(String, FigurePoint)> = lines
                    .iter()
                    .zip(&baselines)
                    .map(|((text, _), y)| (text.clone(), FigurePoint::new(x + indent, *y)))
                    .collect();
                let area = |left: f32, right: f32, last: f32| Frame {
                    left,
                    bottom: last - 0.25 * size,
                    right,
                    top: baselines[0] + 0.75 * size,
                };
                let longest = lines.iter().map(|(_, w)| *w).fold(0.0, f32::max);
                let number_x = x + 0.9 * size - width;
                plan.placed.push(Placed {
                    name: format!("key-number-{number}"),
                    role: Role::Label,
                    area: area(number_x, number_x + width, baselines[0]),
                    lines: vec![(number.clone(), FigurePoint::new(number_x, baselines[0]))],
                    pointer: None,
                    rim: false,
                    face: Face::SemiBold,
                });
                plan.placed.push(Placed {
                    name: format!("key-{number}"),
                    role: Role::Label,
                    area: area(x + indent, x + indent + longest, baselines[lines.len() - 1]),
                    lines: words,
                    pointer: None,
                    rim: false,
                    face: Face::Regular,
                });
            }
        }
        Ok(())
    }

    /// A sentence in the band at the foot.
    fn sentence(&self, text: &str, name: &str, band: &mut Band, plan: &mut Plan) -> Result<(), FigureError> {
        let size = self.size();
        let face = if self.options.style == Style::Sketch { Face::Regular } else { Face::Italic };
        let lines = self.broken(text, face, self.frame.right - self.frame.left - 2.0 * EDGE)?;
        let widest = lines.iter().map(|(_, w)| *w).fold(0.0, f32::max);
        let mut set = vec![];
        for (line, width) in &lines {
            let x = (self.frame.left + self.frame.right) * 0.5 - width * 0.5;
            set.push((line.clone(), FigurePoint::new(x, band.line())));
        }
        let (first, last) = (set[0].1.y, set[set.len() - 1].1.y);
        let middle = (self.frame.left + self.frame.right) * 0.5;
        plan.placed.push(Placed {
            name: format!("{name}-{}", plan.placed.len() + 1),
            role: Role::Caption,
            area: Frame {
                left: middle - widest * 0.5,
                bottom: last - 0.25 * size,
                right: middle + widest * 0.5,
                top: first + 0.75 * size,
            },
            lines: set,
            pointer: None,
            rim: false,
            face,
        });
        Ok(())
    }

    /// A text in as many lines as it needs to be at most `most` cm wide, each with its width.
    fn broken(&self, text: &str, face: Face, most: f32) -> Result<Vec<(String, f32)>, FontError> {
        let size = self.size();
        let mut lines: Vec<(String, f32)> = vec![];
        for word in text.split(' ') {
            if let Some((line, width)) = lines.last_mut() {
                let longer = format!("{line} {word}");
                let w = self.fonts.measure(face, &longer, size)?;
                if w <= most {
                    (*line, *width) = (longer, w);
                    continue;
                }
            }
            lines.push((word.to_owned(), self.fonts.measure(face, word, size)?));
        }
        Ok(lines)
    }
}

/// Least free height between two words, in type sizes: so that neighbours are not read as one; and for a family, where there is room.
const APART: f32 = 0.35;
const APART_FAMILY: f32 = 0.8;

/// From baseline to baseline, in type sizes.
const LINE: f32 = 1.18;
/// Height of one line of letters, in type sizes, and how much of it stands above the baseline.
const TALL: f32 = 1.0;
const ASCENT: f32 = 0.75;

fn face_of(w: &Wanted) -> Face {
    if w.strong { Face::SemiBold } else { Face::Regular }
}

/// A band of paper that grows downwards from the foot of the picture, line by line.
struct Band {
    top: f32,
    size: f32,
    lines: usize,
}

impl Band {
    fn below(frame: Frame, size: f32) -> Self {
        Band { top: frame.bottom, size, lines: 0 }
    }
    fn used(&self) -> bool {
        self.lines > 0
    }
    /// The baseline of the next line.
    fn line(&mut self) -> f32 {
        self.lines += 1;
        self.top - 0.4 * self.size - ASCENT * self.size - LINE * self.size * (self.lines - 1) as f32
    }
    fn foot(&self) -> f32 {
        self.top - (0.9 + LINE * self.lines as f32) * self.size
    }
}

/// The plan as marks.
pub(super) fn paint(
    plan: &Plan,
    c: &MarkColours,
    lang: &str,
    fonts: &Fonts,
) -> Result<Vec<Item<FigurePoint>>, FontError> {
    let group = |name: String, items| Item::Group { name, about: String::new(), items };
    let mut out = vec![];
    if let Some(b) = plan.band {
        let frame = Frame { left: b.left, bottom: b.bottom, right: b.right, top: b.top };
        let fill = Item::Fill { path: frame.outline(), colour: c.paper, rule: FillRule::NonZero };
        out.push(group("band".to_owned(), vec![fill]));
    }
    let line = |s: &Segment| {
        let path = vec![Step::Move(s.from), Step::Line(s.to)];
        let stroke = |colour, width| Item::Stroke { path: path.clone(), colour, width, dash: None };
        [stroke(c.paper, 0.125 + plan.pointer), stroke(c.ink, plan.pointer)]
    };
    let text = |words: &str, at, align, size, face, role| {
        Item::Text(Text {
            text: words.to_owned(),
            at,
            align,
            size,
            face,
            colour: c.ink,
            lang: lang.to_owned(),
            role,
        })
    };
    for placed in &plan.placed {
        let mut items = vec![];
        items.extend(placed.pointer.iter().flat_map(line));
        if placed.rim {
            let mut path = vec![];
            for (words, at) in &placed.lines {
                letters(fonts, placed.face, words, *at, plan.size, &mut path)?;
            }
            items.push(Item::Stroke { path, colour: c.paper, width: 0.34 * plan.size, dash: None });
        }
        for (words, at) in &placed.lines {
            items.push(text(words, *at, Align::Start, plan.size, placed.face, placed.role));
        }
        out.push(group(placed.name.clone(), items));
    }
    for (i, number) in plan.numbers.iter().enumerate() {
        let Round { at, radius, .. } = number.circle;
        let disc = ellipse(at, radius, radius);
        let size = 0.8 * plan.size;
        let mut items: Vec<Item<FigurePoint>> = number.pointer.iter().flat_map(line).collect();
        items.push(Item::Stroke { path: disc.clone(), colour: c.paper, width: 0.22, dash: None });
        items.push(Item::Fill { path: disc.clone(), colour: c.paper, rule: FillRule::NonZero });
        items.push(Item::Stroke { path: disc, colour: c.ink, width: 0.07, dash: None });
        let foot = FigurePoint::new(at.x, at.y - 0.33 * size);
        items.push(text(&number.number.to_string(), foot, Align::Middle, size, Face::SemiBold, Role::Label));
        out.push(group(format!("number-{}-{}", number.number, i + 1), items));
    }
    Ok(out)
}

/// The outlines of words, appended to `path`.
fn letters(
    fonts: &Fonts,
    face: Face,
    words: &str,
    at: FigurePoint,
    size: f32,
    path: &mut Path<FigurePoint>,
) -> Result<(), FontError> {
    let p = |[x, y]: [f32; 2]| FigurePoint::new(at.x + x, at.y + y);
    path.extend(fonts.outline(face, words, size)?.into_iter().map(|step| match step {
        OutlineStep::Move(a) => Step::Move(p(a)),
        OutlineStep::Line(a) => Step::Line(p(a)),
        OutlineStep::Curve(a, b, c) => Step::Curve(p(a), p(b), p(c)),
        OutlineStep::Close => Step::Close,
    }));
    Ok(())
}
