//! From weeks and centimetres to the paper. In: what is drawn, the field's edges. Out: places.

use super::Growth;
use crate::units::FigurePoint;

/// The field: weeks to the right, centimetres up. The same for every pregnancy, unless something lies outside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Axes {
    /// Edges on paper, cm.
    pub left: f32,
    /// Right edge.
    pub right: f32,
    /// Lower edge.
    pub bottom: f32,
    /// Upper edge.
    pub top: f32,
    /// Weeks at the left edge.
    pub first_week: u16,
    /// Weeks at the right edge.
    pub last_week: u16,
    /// Centimetres at the lower edge.
    pub lowest: u16,
    /// Centimetres at the upper edge.
    pub highest: u16,
}

impl Axes {
    /// Weeks and centimetres that are always shown: the curves and a little more.
    const WEEKS: (u16, u16) = (16, 43);
    const TAPE: (u16, u16) = (10, 46);

    /// A field between these edges, `high` cm of paper, that reaches as far as what is drawn.
    pub fn of(what: &Growth<'_>, (left, right): (f32, f32), high: f32) -> Self {
        let weeks = what.tapes.iter().map(|tape| tape.weeks).chain(what.lies.iter().map(|lay| lay.weeks));
        let days: Vec<u16> = weeks.map(|weeks| weeks.days()).collect();
        let tapes = || what.tapes.iter().map(|tape| tape.cm);
        let least = tapes().fold(f64::from(Self::TAPE.0), f64::min);
        let most = tapes().fold(f64::from(Self::TAPE.1), f64::max);
        Axes {
            left,
            right,
            bottom: 0.0,
            top: high,
            first_week: days.iter().map(|days| days / 7).fold(Self::WEEKS.0, u16::min),
            last_week: days.iter().map(|days| days.div_ceil(7)).fold(Self::WEEKS.1, u16::max),
            lowest: libm::floor(least) as u16,
            highest: libm::ceil(most) as u16,
        }
    }

    /// Where so many weeks stand.
    pub fn x(&self, weeks: f64) -> f32 {
        let (first, last) = (f64::from(self.first_week), f64::from(self.last_week));
        self.left + (self.right - self.left) * ((weeks - first) / (last - first)) as f32
    }

    /// Where so many centimetres stand.
    pub fn y(&self, cm: f64) -> f32 {
        let (lowest, highest) = (f64::from(self.lowest), f64::from(self.highest));
        self.bottom + (self.top - self.bottom) * ((cm - lowest) / (highest - lowest)) as f32
    }

    /// Where both meet.
    pub fn at(&self, weeks: f64, cm: f64) -> FigurePoint {
        FigurePoint::new(self.x(weeks), self.y(cm))
    }
}
