//! Short ways to make the marks of the mother's drawing. In: points. Out: items of the scene.

use crate::figure::scene::{Colour, FillRule, Item, Path, Step};
use crate::figure::smooth;
use crate::units::{FigurePoint, MotherPoint};

/// Mother space seen from the front.
pub fn flat(points: &[MotherPoint]) -> Vec<FigurePoint> {
    points.iter().map(|p| FigurePoint::new(p.0.x, p.0.y)).collect()
}

/// Figure points from pairs (x, y).
pub fn points(pairs: &[(f32, f32)]) -> Vec<FigurePoint> {
    pairs.iter().map(|&(x, y)| FigurePoint::new(x, y)).collect()
}

/// A filled path.
pub fn fill(path: Path<FigurePoint>, colour: Colour) -> Item<FigurePoint> {
    Item::Fill { path, colour, rule: FillRule::NonZero }
}

/// A filled path with holes, by even-odd.
pub fn fill_with_holes(path: Path<FigurePoint>, colour: Colour) -> Item<FigurePoint> {
    Item::Fill { path, colour, rule: FillRule::EvenOdd }
}

/// A brush line, thin at its ends.
pub fn brush(line: &[FigurePoint], width: f32, colour: Colour) -> Item<FigurePoint> {
    Item::Fill { path: smooth::brush(line, width, 0.3), colour, rule: FillRule::NonZero }
}

/// Several brush lines as one mark.
pub fn brushes(lines: &[Vec<FigurePoint>], width: f32, colour: Colour) -> Item<FigurePoint> {
    let path = lines.iter().flat_map(|line| smooth::brush(line, width, 0.2)).collect();
    Item::Fill { path, colour, rule: FillRule::NonZero }
}

/// A line of even width.
pub fn stroke(path: Path<FigurePoint>, width: f32, colour: Colour) -> Item<FigurePoint> {
    Item::Stroke { path, colour, width, dash: None }
}

/// Fine lines of even width, smooth through their points, as one path.
pub fn fine_lines(lines: &[Vec<FigurePoint>], width: f32, colour: Colour) -> Item<FigurePoint> {
    stroke(lines.iter().flat_map(|line| smooth::open(line)).collect(), width, colour)
}

/// A named group.
pub fn group(name: &str, about: &str, items: Vec<Item<FigurePoint>>) -> Item<FigurePoint> {
    Item::Group { name: name.to_owned(), about: about.to_owned(), items }
}

/// A closed ellipse of four curves.
pub fn ellipse(centre: FigurePoint, rx: f32, ry: f32) -> Path<FigurePoint> {
    // How far the control points of a quarter circle stand from its ends.
    const K: f32 = 0.552_284_8;
    let at = |x: f32, y: f32| FigurePoint::new(centre.x + x * rx, centre.y + y * ry);
    let quarter =
        |x: f32, y: f32| Step::Curve(at(x - K * y, y + K * x), at(-y + K * x, x + K * y), at(-y, x));
    vec![
        Step::Move(at(1.0, 0.0)),
        quarter(1.0, 0.0),
        quarter(0.0, 1.0),
        quarter(-1.0, 0.0),
        quarter(0.0, -1.0),
        Step::Close,
    ]
}

/// The outline moved inwards: by `near` cm where it faces the light at the upper left, by `far` cm on the other
/// side. For outlines without sharp corners, anticlockwise.
pub fn inset(line: &[FigurePoint], near: f32, far: f32) -> Vec<FigurePoint> {
    let n = line.len();
    (0..n)
        .map(|i| {
            let (a, b) = (line[(i + n - 1) % n], line[(i + 1) % n]);
            let d = smooth::distance(a, b).max(1e-6);
            let out = FigurePoint::new((b.y - a.y) / d, -(b.x - a.x) / d);
            let share = 0.5 + 0.5 * 0.707 * (out.x - out.y);
            let by = near + (far - near) * share;
            FigurePoint::new(line[i].x - out.x * by, line[i].y - out.y * by)
        })
        .collect()
}
