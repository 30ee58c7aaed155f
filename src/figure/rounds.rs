//! What stands for a baby whose back was not felt. In: rounds. Out: pale rounds with broken edges.

use super::mother_ink::ellipse;
use super::palette::BabyColours;
use super::scene::{FillRule, Item, Path, Step};
use crate::body::pose::Rounds;
use crate::units::FigurePoint;

/// The marks of one such baby.
pub fn draw(number: usize, rounds: &Rounds, c: &BabyColours, tonal: bool) -> Item<FigurePoint> {
    let pale = if tonal { c.light } else { c.skin };
    let flat = |p: crate::units::MotherPoint| FigurePoint::new(p.0.x, p.0.y);
    let (head, bottom) = (flat(rounds.head.0), flat(rounds.bottom.0));
    let part = |name: &str, path: Path<FigurePoint>| Item::Group {
        name: format!("{name}-{number}"),
        about: String::new(),
        items: vec![
            Item::Fill { path: path.clone(), colour: pale, rule: FillRule::NonZero },
            Item::Stroke { path, colour: c.skin.mix(c.ink, 0.7), width: 0.08, dash: Some((0.45, 0.3)) },
        ],
    };
    Item::Group {
        name: format!("baby-{number}-rounds"),
        about: String::new(),
        items: vec![
            part("trunk", capsule(head, bottom, rounds.trunk)),
            part("bottom", ellipse(bottom, rounds.bottom.1, rounds.bottom.1)),
            part("head", ellipse(head, rounds.head.1, rounds.head.1)),
        ],
    }
}

/// Whether a point lies on the rounds or the trunk.
pub fn covers(rounds: &Rounds, p: FigurePoint) -> bool {
    let [a, b] = [rounds.head, rounds.bottom].map(|(at, _)| FigurePoint::new(at.0.x, at.0.y));
    let t = p.along(a, b);
    let (ox, oy) = (p.x - a.x - (b.x - a.x) * t, p.y - a.y - (b.y - a.y) * t);
    let reach = rounds.trunk.max(if t < 0.5 { rounds.head.1 } else { rounds.bottom.1 });
    ox * ox + oy * oy < reach * reach
}

/// A bar with bellied sides between two points.
pub(super) fn capsule(a: FigurePoint, b: FigurePoint, half: f32) -> Path<FigurePoint> {
    let (dx, dy) = (b.x - a.x, b.y - a.y);
    let length = (dx * dx + dy * dy).sqrt().max(1e-6);
    let (nx, ny) = (-dy / length, dx / length);
    let at =
        |along: f32, out: f32| FigurePoint::new(a.x + dx * along + nx * out, a.y + dy * along + ny * out);
    let (side, belly) = (half * 0.72, half * 1.2);
    vec![
        Step::Move(at(0.0, side)),
        Step::Curve(at(0.33, belly), at(0.67, belly), at(1.0, side)),
        Step::Line(at(1.0, -side)),
        Step::Curve(at(0.67, -belly), at(0.33, -belly), at(0.0, -side)),
        Step::Close,
    ]
}
