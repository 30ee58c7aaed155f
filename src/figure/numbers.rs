//! Numbers at the places, for a key. In: what is to be pointed at, what is kept off. Out: where each number stands, with a
//! pointer when it does not stand at its place; numbered in reading order, the same words by the same number.

use super::scene::Frame;
use super::solve::Ask;
use super::terrain::{Round, Segment, Terrain, cross};
use crate::units::FigurePoint;

/// A number on the picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Number {
    /// From 1.
    pub number: usize,
    /// The circle it stands in; its mark is the index of the words.
    pub circle: Round,
    /// To its place.
    pub pointer: Option<Segment>,
}

/// Distances from the place at which a number is tried, cm.
const RINGS: [f32; 14] = [0.0, 0.4, 0.9, 1.5, 2.2, 3.0, 4.0, 5.0, 6.5, 8.0, 10.0, 12.0, 15.0, 18.0];
/// Directions that are tried, as steps of an eighth of a half-turn from straight outwards.
const FAN: [i8; 16] = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6, -6, 7, -7, 8];

/// Places the circles of numbers; `Err` with the index of the words for which there is no room.
pub(super) fn place(
    asks: &[Ask],
    radius: f32,
    within: Frame,
    terrain: &Terrain<'_>,
) -> Result<Vec<(Round, Option<Segment>)>, usize> {
    let mut order: Vec<usize> = (0..asks.len()).collect();
    let mut made = place_in(&order, false, asks, radius, within, terrain);
    // A circle may lie on what another number names: then none does, and what found no room goes first.
    for _ in 0..=asks.len() {
        let Err(refused) = made else { break };
        made = place_in(&order, true, asks, radius, within, terrain);
        order.retain(|i| *i != refused);
        order.insert(0, refused);
    }
    made
}

/// The same in an order; whether each circle is to leave free what the others name.
fn place_in(
    order: &[usize],
    clear: bool,
    asks: &[Ask],
    radius: f32,
    within: Frame,
    terrain: &Terrain<'_>,
) -> Result<Vec<(Round, Option<Segment>)>, usize> {
    let mut placed: Vec<(Round, Option<Segment>)> = vec![];
    for &i in order {
        let ask = &asks[i];
        let covers = |circle: &Round, other: &Ask| {
            let about = Round { radius: circle.radius + 0.2, ..*circle };
            other.targets.iter().flatten().all(|target| about.holds(*target))
        };
        let leaves_free = |circle: &Round| {
            !clear || !asks.iter().enumerate().any(|(j, other)| j != i && covers(circle, other))
        };
        let found = [Kept::All, Kept::Pointers, Kept::Circles].into_iter().find_map(|kept| {
            candidates(ask, i, radius)
                .find(|c| leaves_free(&c.0) && fits(c, ask, within, terrain, &placed, kept))
        });
        placed.push(found.ok_or(i)?);
    }
    Ok(placed)
}

/// What a pointer keeps off: less of it where places stand close together.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kept {
    /// Marks, other pointers, circles of numbers.
    All,
    /// Other pointers and circles of numbers.
    Pointers,
    /// Circles of numbers.
    Circles,
}

/// The places that are tried, the nearest first.
fn candidates(ask: &Ask, mark: usize, radius: f32) -> impl Iterator<Item = (Round, Option<Segment>)> + '_ {
    let first = usize::from(ask.side > 0.0);
    let targets = [(ask.targets[first], ask.side), (ask.targets[1 - first], -ask.side)];
    RINGS.into_iter().flat_map(move |ring| {
        targets.into_iter().filter_map(|(t, s)| Some((t?, s))).flat_map(move |(target, side)| {
            // A mark is not covered: its number stands outside.
            let away = if ask.gap > 0.0 { ask.gap + radius + 0.1 + ring } else { ring };
            let directions = if away == 0.0 { 1 } else { FAN.len() };
            FAN[..directions].iter().map(move |step| {
                let (sin, cos) = libm::sincosf(f32::from(*step) * std::f32::consts::PI / 8.0);
                let (dx, dy) = (cos * side, sin);
                let at = FigurePoint::new(target.x + dx * away, target.y + dy * away);
                let from = FigurePoint::new(at.x - dx * radius, at.y - dy * radius);
                let to = FigurePoint::new(target.x + dx * ask.gap, target.y + dy * ask.gap);
                let pointer = (away > radius + ask.gap + 0.2).then_some(Segment { from, to });
                (Round { at, radius, mark }, pointer)
            })
        })
    })
}

fn fits(
    (circle, pointer): &(Round, Option<Segment>),
    ask: &Ask,
    within: Frame,
    terrain: &Terrain<'_>,
    placed: &[(Round, Option<Segment>)],
    kept: Kept,
) -> bool {
    let (p, r) = (circle.at, circle.radius);
    let inside = p.x - r > within.left + 0.2
        && p.x + r < within.right - 0.2
        && p.y - r > within.bottom + 0.2
        && p.y + r < within.top - 0.2;
    let near = |o: &Round, gap: f32| {
        let (dx, dy) = (p.x - o.at.x, p.y - o.at.y);
        let reach = r + o.radius + gap;
        dx * dx + dy * dy < reach * reach
    };
    let struck = |s: &Segment, o: &Round| o.distance(*s) < o.radius + 0.05;
    let lies_free = inside
        && !terrain.fixed.iter().any(|f| f.touches(*circle))
        && !terrain.faces.iter().chain(&terrain.marks).any(|o| near(o, 0.0))
        && !placed.iter().any(|(other, line)| near(other, 0.15) || line.is_some_and(|l| struck(&l, circle)));
    let Some(s) = pointer else { return lies_free };
    let over_mark = |m: &Round| Some(m.mark) != ask.owner && struck(s, m);
    lies_free
        && !terrain.faces.iter().any(|f| struck(s, f) && !f.holds(s.to))
        && !placed.iter().any(|(other, line)| {
            struck(s, other) || (kept != Kept::Circles && line.is_some_and(|l| cross(*s, l)))
        })
        && (kept != Kept::All || !terrain.marks.iter().any(over_mark))
}

/// Numbers the circles row by row, a row as tall as a circle; words that are the same share a number. Returns the
/// numbers and, by number, the words.
pub(super) fn count(placed: Vec<(Round, Option<Segment>)>, words: &[String]) -> (Vec<Number>, Vec<String>) {
    let mut order = placed;
    order.sort_by(|a, b| b.0.at.y.total_cmp(&a.0.at.y));
    let mut rows: Vec<Vec<(Round, Option<Segment>)>> = vec![];
    for one in order {
        match rows.last_mut() {
            Some(row) if row[0].0.at.y - one.0.at.y < one.0.radius * 2.0 => row.push(one),
            _ => rows.push(vec![one]),
        }
    }
    let (mut numbers, mut key): (Vec<Number>, Vec<String>) = (vec![], vec![]);
    for mut row in rows {
        row.sort_by(|a, b| a.0.at.x.total_cmp(&b.0.at.x));
        for (circle, pointer) in row {
            let word = &words[circle.mark];
            let number = match key.iter().position(|k| k == word) {
                Some(at) => at + 1,
                None => {
                    key.push(word.clone());
                    key.len()
                }
            };
            numbers.push(Number { number, circle, pointer });
        }
    }
    (numbers, key)
}
