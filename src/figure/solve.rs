//! Where words stand. In: sizes of words, what each points at, what they keep off. Out: for each the side of the
//! picture and its height, so that no two words overlap and no two pointers cross; or nothing, when there is no room.
//!
//! Words stand in two columns at the edges. Within a column they are ordered by height, moved apart as little as can
//! be, and neighbours whose pointers cross change places. Then sides and heights are tried one by one and kept when
//! the whole becomes better. Nothing depends on the sign of x: a mirrored question has the mirrored answer.

use super::scene::Frame;
use super::terrain::{Segment, Terrain, cross};
use crate::units::FigurePoint;

/// Words to be placed, in the space of the finished picture.
#[derive(Clone, Debug)]
pub(super) struct Ask {
    /// Width and height of the words, cm.
    pub size: (f32, f32),
    /// What they point at, from the left and from the right edge; `None`: not to be reached from there.
    pub targets: [Option<FigurePoint>; 2],
    /// The edge at which they would best stand, -1 or +1.
    pub side: f32,
    /// How far before its target the pointer ends, cm.
    pub gap: f32,
    /// The mark they belong to: a pointer may run up to that one.
    pub owner: Option<usize>,
}

/// Where words stand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Spot {
    /// -1 at the left edge, +1 at the right.
    pub side: f32,
    /// Middle of the words.
    pub y: f32,
}

/// The columns at the edges.
#[derive(Clone, Copy, Debug)]
pub(super) struct Columns {
    /// Distance of the words' outer edge from the midline, cm.
    pub edge: f32,
    /// Lowest and highest y of words.
    pub span: (f32, f32),
    /// Least free height between two words, cm.
    pub apart: f32,
    /// From the words to the start of the pointer, cm.
    pub stand_off: f32,
}

impl Columns {
    /// The box of words at a spot.
    pub fn area(&self, ask: &Ask, spot: Spot) -> Frame {
        let (near, far) = (self.edge - ask.size.0, self.edge);
        let (left, right) = if spot.side > 0.0 { (near, far) } else { (-far, -near) };
        Frame { left, bottom: spot.y - ask.size.1 * 0.5, right, top: spot.y + ask.size.1 * 0.5 }
    }

    /// The pointer of words at a spot; `None` when the target cannot be reached from that side.
    pub fn pointer(&self, ask: &Ask, spot: Spot) -> Option<Segment> {
        let target = ask.targets[usize::from(spot.side > 0.0)]?;
        let from = FigurePoint::new((self.edge - ask.size.0 - self.stand_off) * spot.side, spot.y);
        Some(Segment { from, to: short_of(from, target, ask.gap) })
    }
}

/// The point `gap` cm before `end` on the way from `start`.
fn short_of(start: FigurePoint, end: FigurePoint, gap: f32) -> FigurePoint {
    let (dx, dy) = (end.x - start.x, end.y - start.y);
    let length = (dx * dx + dy * dy).sqrt().max(1e-6);
    let t = ((length - gap) / length).max(0.0);
    FigurePoint::new(start.x + dx * t, start.y + dy * t)
}

/// What may not be: a word over a word or a mark, pointers that cross, a pointer over a face or through a word.
const HARD: f32 = 1000.0;
/// What should not be: words on one side of her for what lies more than `BESIDE` cm on the other.
const ACROSS: f32 = 60.0;
const BESIDE: f32 = 3.0;
/// How far words are tried above and below the height of their target, cm.
const SHIFTS: [f32; 7] = [0.0, 2.5, -2.5, 5.0, -5.0, 9.0, -9.0];
/// Rounds over all words; the last one changes nothing as a rule.
const ROUNDS: usize = 6;

/// Places all words, or tells that there is no room.
pub(super) fn solve(asks: &[Ask], columns: &Columns, terrain: &Terrain<'_>) -> Option<Vec<Spot>> {
    let mut try_out = Trial {
        asks,
        columns,
        terrain,
        sides: asks.iter().map(|a| a.side).collect(),
        shifts: vec![0.0; asks.len()],
    };
    let (mut best, mut spots) = try_out.outcome();
    for _ in 0..ROUNDS {
        let before = best;
        for i in 0..asks.len() {
            let (side, shift) = (try_out.sides[i], try_out.shifts[i]);
            let mut kept = (side, shift);
            for side in [side, -side] {
                for shift in SHIFTS {
                    (try_out.sides[i], try_out.shifts[i]) = (side, shift);
                    let (cost, found) = try_out.outcome();
                    if cost < best - 1e-3 {
                        (best, spots, kept) = (cost, found, (side, shift));
                    }
                }
            }
            (try_out.sides[i], try_out.shifts[i]) = kept;
        }
        if best > before - 1e-3 && (best < HARD || !try_out.both(&mut best, &mut spots)) {
            break;
        }
    }
    (best < HARD).then_some(spots)
}

struct Trial<'a> {
    asks: &'a [Ask],
    columns: &'a Columns,
    terrain: &'a Terrain<'a>,
    sides: Vec<f32>,
    shifts: Vec<f32>,
}

impl Trial<'_> {
    /// Moves two words at once, where moving one never helped; whether it became better. For a few words only.
    fn both(&mut self, best: &mut f32, spots: &mut Vec<Spot>) -> bool {
        const FEW: usize = 8;
        let n = self.asks.len();
        if n > FEW {
            return false;
        }
        let mut kept = None;
        for (i, j) in (0..n).flat_map(|i| (0..i).map(move |j| (i, j))) {
            let was = [(self.sides[i], self.shifts[i]), (self.sides[j], self.shifts[j])];
            let moves =
                |(side, _): (f32, f32)| [side, -side].into_iter().flat_map(|s| SHIFTS.map(|d| (s, d)));
            for a in moves(was[0]) {
                for b in moves(was[1]) {
                    ((self.sides[i], self.shifts[i]), (self.sides[j], self.shifts[j])) = (a, b);
                    let (cost, found) = self.outcome();
                    if cost < *best - 1e-3 {
                        (*best, *spots, kept) = (cost, found, Some((i, a, j, b)));
                    }
                }
            }
            [(self.sides[i], self.shifts[i]), (self.sides[j], self.shifts[j])] = was;
        }
        if let Some((i, a, j, b)) = kept {
            ((self.sides[i], self.shifts[i]), (self.sides[j], self.shifts[j])) = (a, b);
        }
        kept.is_some()
    }

    /// Cost and places for these sides and shifts.
    fn outcome(&self) -> (f32, Vec<Spot>) {
        let mut spots: Vec<Spot> = self.sides.iter().map(|side| Spot { side: *side, y: 0.0 }).collect();
        let mut cost = 0.0;
        for side in [-1.0, 1.0] {
            cost += self.column(side, &mut spots);
        }
        (cost + self.judge(&spots), spots)
    }

    /// Sets the heights of one column; the cost of what does not fit into it.
    fn column(&self, side: f32, spots: &mut [Spot]) -> f32 {
        let mut order: Vec<usize> = (0..self.asks.len()).filter(|i| spots[*i].side == side).collect();
        let wish = |i: usize| {
            let target = self.asks[i].targets[usize::from(side > 0.0)];
            target.map_or(0.0, |t| t.y) + self.shifts[i]
        };
        order.sort_by(|a, b| wish(*b).total_cmp(&wish(*a)).then(a.cmp(b)));
        let over = self.stack(&order, &wish, spots);
        for _ in 0..2 * order.len() {
            let crossing = (1..order.len()).find(|k| {
                let pointer = |i: usize| self.columns.pointer(&self.asks[i], spots[i]);
                match (pointer(order[k - 1]), pointer(order[*k])) {
                    (Some(a), Some(b)) => cross(a, b),
                    _ => false,
                }
            });
            let Some(k) = crossing else { break };
            order.swap(k - 1, k);
            self.stack(&order, &wish, spots);
        }
        over * HARD
    }

    /// Heights as near to the wished ones as the order and the sizes allow: neighbours that would overlap are joined
    /// into blocks that stand at the mean of their wishes. Returns by how many cm the column is too short.
    fn stack(&self, order: &[usize], wish: &dyn Fn(usize) -> f32, spots: &mut [Spot]) -> f32 {
        let (low, high) = self.columns.span;
        let tall = |i: usize| self.asks[i].size.1 + self.columns.apart;
        // A block: its members, its height, the sum of the tops its members would give it.
        let mut blocks: Vec<(Vec<usize>, f32, f32)> = vec![];
        for &i in order {
            let mut block = (vec![i], tall(i), wish(i) + tall(i) * 0.5);
            while let Some(above) = blocks.pop() {
                let (top, above_top) = (block.2 / block.0.len() as f32, above.2 / above.0.len() as f32);
                if top <= above_top - above.1 {
                    blocks.push(above);
                    break;
                }
                // Below the block above: the tops that the lower members wish for it lie higher by its height.
                let sum = above.2 + block.2 + above.1 * block.0.len() as f32;
                block = ([above.0, block.0].concat(), above.1 + block.1, sum);
            }
            blocks.push(block);
        }
        let total: f32 = order.iter().map(|i| tall(*i)).sum();
        // From above, then from below, each block is pushed back into the column.
        let mut tops: Vec<f32> = blocks.iter().map(|b| b.2 / b.0.len() as f32).collect();
        let mut ceiling = high + self.columns.apart * 0.5;
        for (top, block) in tops.iter_mut().zip(&blocks) {
            *top = top.min(ceiling);
            ceiling = *top - block.1;
        }
        let mut floor = low - self.columns.apart * 0.5;
        for (top, block) in tops.iter_mut().zip(&blocks).rev() {
            *top = top.max(floor + block.1);
            floor = *top;
        }
        for (top, block) in tops.iter().zip(&blocks) {
            let mut y = *top;
            for &i in &block.0 {
                spots[i].y = y - tall(i) * 0.5;
                y -= tall(i);
            }
        }
        (total - (high - low + self.columns.apart)).max(0.0)
    }

    /// The cost of these places.
    fn judge(&self, spots: &[Spot]) -> f32 {
        let n = self.asks.len();
        let areas: Vec<Frame> = (0..n).map(|i| self.columns.area(&self.asks[i], spots[i])).collect();
        let pointers: Vec<Option<Segment>> =
            (0..n).map(|i| self.columns.pointer(&self.asks[i], spots[i])).collect();
        let mut cost = 0.0;
        for i in 0..n {
            let ask = &self.asks[i];
            if spots[i].side != ask.side {
                cost += 5.0;
            }
            cost += self.terrain.words_cost(areas[i], HARD);
            let Some(pointer) = pointers[i] else {
                cost += HARD;
                continue;
            };
            if pointer.to.x * spots[i].side < -BESIDE {
                cost += ACROSS;
            }
            let (dx, dy) = (pointer.to.x - pointer.from.x, pointer.to.y - pointer.from.y);
            cost += 0.5 * (dx * dx + dy * dy).sqrt() + dy.abs();
            cost += self.terrain.pointer_cost(pointer, ask.owner, HARD);
            for j in 0..n {
                if j != i && areas[j].grown(0.1).meets(pointer) {
                    cost += HARD;
                }
                if j < i && pointers[j].is_some_and(|other| cross(pointer, other)) {
                    cost += HARD;
                }
                if j < i && areas[i].overlaps(areas[j]) {
                    cost += HARD;
                }
            }
        }
        cost
    }
}
