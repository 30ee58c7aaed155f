//! Small pictures beside words, for people who read little. In: a sign, a place and a size in mm. Out: its marks.
//!
//! They are this program's own: lines of one breadth that are told apart in grey and at 8 mm. No cross and no crescent of
//! those that are protected, no colour, no letters but the z of sleep. What each shows is a message, `sign-NAME`.

use crate::figure::scene::{Colour, FillRule, Item, Path, Step};
use crate::units::PagePoint;

/// A small picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sign {
    /// A telephone.
    Phone,
    /// Sun and moon.
    DayNight,
    /// A baby that moves.
    Moves,
    /// A dark drop.
    Blood,
    /// A clear drop over water.
    Waters,
    /// A drop with spots in it.
    StainedWaters,
    /// A pregnant belly with a flash.
    BellyPain,
    /// A chest with a flash.
    Chest,
    /// Someone who has fallen.
    Faint,
    /// Someone on the ground who shakes.
    Fits,
    /// A sad face under a dark cloud.
    DarkThoughts,
    /// A rope between two legs.
    Cord,
    /// A hand that itches.
    Itch,
    /// A sad face with a flash over it.
    Headache,
    /// A thermometer.
    Fever,
    /// A swollen face.
    Swelling,
    /// Someone over a bowl.
    Vomit,
    /// Someone asleep in bed.
    Tired,
    /// A leg with a flash.
    Leg,
    /// A pregnant belly that tightens.
    Tightening,
    /// An arrow through a door.
    GoIn,
    /// Dark drops over a pool.
    HeavyBlood,
    /// A heart that beats fast.
    HeartRacing,
    /// An ambulance.
    Ambulance,
    /// A telephone and the sun.
    PhoneToday,
    /// Someone who kneels, chest down and hips up.
    Kneel,
    /// Someone who lies on her left side, hips on a pillow. She looks out at whoever sees it: her head is at the right.
    LeftSide,
    /// A hand on a pregnant belly.
    HandOnBelly,
    /// A clock.
    Clock,
}

/// The side of the square that a sign is drawn in, in units of its lines.
const SIDE: f32 = 24.0;
/// Breadth of its lines, in the same.
const BREADTH: f32 = 1.5;
const INK: Colour = Colour::hex(0x221C19);

impl Sign {
    /// Every sign.
    pub const ALL: [Sign; 29] = [
        Sign::Phone,
        Sign::DayNight,
        Sign::Moves,
        Sign::Blood,
        Sign::Waters,
        Sign::StainedWaters,
        Sign::BellyPain,
        Sign::Chest,
        Sign::Faint,
        Sign::Fits,
        Sign::DarkThoughts,
        Sign::Cord,
        Sign::Itch,
        Sign::Headache,
        Sign::Fever,
        Sign::Swelling,
        Sign::Vomit,
        Sign::Tired,
        Sign::Leg,
        Sign::Tightening,
        Sign::GoIn,
        Sign::HeavyBlood,
        Sign::HeartRacing,
        Sign::Ambulance,
        Sign::PhoneToday,
        Sign::Kneel,
        Sign::LeftSide,
        Sign::HandOnBelly,
        Sign::Clock,
    ];

    /// The message that says what it shows.
    pub fn message(self) -> &'static str {
        match self {
            Sign::Phone => "sign-phone",
            Sign::DayNight => "sign-day-night",
            Sign::Moves => "sign-moves",
            Sign::Blood => "sign-blood",
            Sign::Waters => "sign-waters",
            Sign::StainedWaters => "sign-stained-waters",
            Sign::BellyPain => "sign-belly-pain",
            Sign::Chest => "sign-chest",
            Sign::Faint => "sign-faint",
            Sign::Fits => "sign-fits",
            Sign::DarkThoughts => "sign-dark-thoughts",
            Sign::Cord => "sign-cord",
            Sign::Itch => "sign-itch",
            Sign::Headache => "sign-headache",
            Sign::Fever => "sign-fever",
            Sign::Swelling => "sign-swelling",
            Sign::Vomit => "sign-vomit",
            Sign::Tired => "sign-tired",
            Sign::Leg => "sign-leg",
            Sign::Tightening => "sign-tightening",
            Sign::GoIn => "sign-go-in",
            Sign::HeavyBlood => "sign-heavy-blood",
            Sign::HeartRacing => "sign-heart-racing",
            Sign::Ambulance => "sign-ambulance",
            Sign::PhoneToday => "sign-phone-today",
            Sign::Kneel => "sign-kneel",
            Sign::LeftSide => "sign-left-side",
            Sign::HandOnBelly => "sign-hand-on-belly",
            Sign::Clock => "sign-clock",
        }
    }

    /// Its lines, from the top left corner, y down: `s` drawn, `f` filled; M to, L line, C curve, Z closed, O a round by its
    /// middle and radius.
    fn lines(self) -> &'static [&'static str] {
        match self {
            Sign::Phone => &[
                "s M3.5 10 C3.5 3.5 20.5 3.5 20.5 10 L20.5 12.5 L15.8 12.5 L15.8 9.8 C15.8 8.6 8.2 8.6 8.2 9.8 L8.2 12.5 L3.5 12.5 Z",
                "s M8 12.5 L4.5 20.5 L19.5 20.5 L16 12.5",
                "s O12 16 2",
            ],
            Sign::DayNight => &[
                "s O7.5 7.5 3",
                "s M7.5 1.3 L7.5 2.7",
                "s M7.5 12.3 L7.5 13.7",
                "s M1.3 7.5 L2.7 7.5",
                "s M12.3 7.5 L13.7 7.5",
                "s M3.1 3.1 L4.1 4.1",
                "s M10.9 10.9 L11.9 11.9",
                "s M3.1 11.9 L4.1 10.9",
                "s M10.9 4.1 L11.9 3.1",
                "f M18.5 11.5 C14.5 12.3 12.5 15.5 13.3 18.6 C14.1 21.8 17.6 23.4 21.3 21.6 C18.6 21.4 16.7 19.7 16.2 17.3 C15.7 15 16.5 12.9 18.5 11.5 Z",
            ],
            Sign::Moves => &[
                "s O8.8 6.4 3.8",
                "s M12.2 8 C17.6 8.2 20 12.4 18.8 16.6 C17.8 20.2 13.8 21.2 11 20",
                "s M14.4 17.4 L8 14.4 L7.6 19.8 L4.9 20.4",
                "s M3.2 13.4 C2.2 15.2 2 17 2.4 18.8",
                "s M5.6 11.4 C5 12.2 4.7 12.8 4.5 13.6",
            ],
            Sign::Blood => &[
                "f M12 2.5 C10.8 6.2 5.2 11.6 5.2 15.8 C5.2 19.4 8.2 22 12 22 C15.8 22 18.8 19.4 18.8 15.8 C18.8 11.6 13.2 6.2 12 2.5 Z",
            ],
            Sign::Waters => &[
                "s M12 2.5 C11 5.8 7 9.6 7 13 C7 15.8 9.2 17.6 12 17.6 C14.8 17.6 17 15.8 17 13 C17 9.6 13 5.8 12 2.5 Z",
                "s M2.5 21 C5 19.4 7 22.4 9.5 21 C12 19.4 13.5 22.4 16 21 C18 19.6 19.5 22 21.5 21",
            ],
            Sign::StainedWaters => &[
                "s M12 2.5 C10.8 6.2 5.2 11.6 5.2 15.8 C5.2 19.4 8.2 22 12 22 C15.8 22 18.8 19.4 18.8 15.8 C18.8 11.6 13.2 6.2 12 2.5 Z",
                "f O9.3 14.2 1.3",
                "f O14 12.6 1.1",
                "f O13.2 17.6 1.6",
                "f O9.2 18.4 0.9",
            ],
            Sign::BellyPain => &[
                "s M7 2 L7 8.6 C12.5 9.4 16.5 11.4 16.5 15 C16.5 18.6 12.5 20 8.5 20 L8.5 22.6",
                "s M3 2 C2.4 9 3.4 15 3.2 22.6",
                "f M22.8 7.4 L17.6 12.2 L20 12.9 L17.4 17.6 L23 12.2 L20.6 11.5 Z",
            ],
            Sign::Chest => &[
                "s O12 5.2 3.2",
                "s M3.6 22 L3.6 15.8 C3.6 12 7 10.8 12 10.8 C17 10.8 20.4 12 20.4 15.8 L20.4 22",
                "f M13.6 12.6 L8.8 17.3 L11.6 17.7 L9.4 22 L15 16.8 L12.2 16.4 Z",
            ],
            Sign::Faint => &[
                "s O4.6 16.6 2.8",
                "s M7.6 17.6 L15.6 18.2 L21.8 17.6",
                "s M9 17.6 L11.4 14 L14 14.6",
                "s M1.5 21.6 L22.5 21.6",
                "s M6 10.6 C4.2 10.6 4.2 8 6.2 8 C9 8 8.8 12 5.6 12 C1.6 12 1.8 5.6 6.2 5.6",
            ],
            Sign::Fits => &[
                "s O4.6 16.6 2.8",
                "s M7.6 17.4 L10.4 14.4 L12.8 18 L15.4 14.4 L17.8 18 L21 14.4",
                "s M1.5 21.6 L22.5 21.6",
                "s M4 10.8 L5.6 8.4 L7.2 10.8 L8.8 8.4",
                "s M12 9.6 L13.6 7.2 L15.2 9.6 L16.8 7.2",
            ],
            Sign::DarkThoughts => &[
                "s O8 15.6 6.2",
                "f O15.6 9.9 1.1",
                "f M15.8 7.4 C14 7.2 13.6 4.8 15.4 4.2 C15.4 2 18.4 1.2 19.6 2.8 C21.6 2.2 23.2 4.2 22 5.8 C22.4 7.2 21 8 19.8 7.4 C18.8 8.4 16.8 8.4 15.8 7.4 Z",
                "s M5.6 18.8 C6.8 17.2 9.2 17.2 10.4 18.8",
                "f O5.9 14.2 0.8",
                "f O10.1 14.2 0.8",
            ],
            Sign::Cord => &[
                "s M7.6 1.8 C7.8 8 4.4 13 2.6 22.4",
                "s M16.4 1.8 C16.2 8 19.6 13 21.4 22.4",
                "s M12 3 C8.6 5.4 15.4 7.2 12 9.8 C8.6 12.4 15.4 14.2 12 16.8 C10.2 18.4 10.6 20.6 12.8 20.8",
            ],
            Sign::Itch => &[
                "s M6.4 22 C6.2 19.6 4.6 17.6 3.2 15.2 C2.4 13.8 4.2 12.8 5.2 13.8 L7 15.6 L7 6.6 C7 5 9.2 5 9.2 6.6 L9.2 11.6 L9.6 4.2 C9.7 2.6 11.8 2.6 11.8 4.2 L11.8 11.6 L12.6 4.8 C12.8 3.2 14.8 3.4 14.7 5 L14.3 12 L15.6 7.4 C16 5.8 18 6.4 17.6 8 L16 16.4 C15.6 18.6 15 20 14.8 22",
                "s M19.4 11.6 C20.6 12.4 18.8 13.6 20 14.4 C21.2 15.2 19.4 16.4 20.6 17.2",
                "s M22 9.6 C23 10.3 21.6 11.3 22.6 12",
            ],
            Sign::Headache => &[
                "s O10.4 14.4 7.2",
                "s M6.4 13.4 L8.6 13.4",
                "s M12.2 13.4 L14.4 13.4",
                "s M7.8 18.4 C9.4 17 11.4 17 13 18.4",
                "f M21.4 1.4 L15.8 6 L18.4 6.8 L15.8 11 L22.2 6.2 L19.4 5.4 Z",
            ],
            Sign::Fever => &[
                "s M9.6 13.6 L9.6 4.4 C9.6 1.2 14.4 1.2 14.4 4.4 L14.4 13.6 C17.8 15.6 17 21.8 12 21.8 C7 21.8 6.2 15.6 9.6 13.6 Z",
                "f O12 17.6 2.4",
                "s M12 16 L12 7",
                "s M16.6 5 L19 5",
                "s M16.6 8 L19 8",
                "s M16.6 11 L19 11",
            ],
            Sign::Swelling => &[
                "s M12 3 C16.4 3 17.6 6.6 17.8 10 C21.4 11.6 20.8 18.6 16.4 19 C15 21 13.6 21.4 12 21.4 C10.4 21.4 9 21 7.6 19 C3.2 18.6 2.6 11.6 6.2 10 C6.4 6.6 7.6 3 12 3 Z",
                "f O9.4 10.4 0.9",
                "f O14.6 10.4 0.9",
                "s M10.4 17 L13.6 17",
                "s M6.4 14.4 C7.2 13.4 8.4 13.4 9 14.2",
                "s M15 14.2 C15.6 13.4 16.8 13.4 17.6 14.4",
            ],
            Sign::Vomit => &[
                "s O8 6.4 4",
                "s M11.4 8.8 C13 10 13.8 11.8 13.8 13.8",
                "s M10.2 10.8 C11.2 11.8 11.6 12.8 11.6 13.8",
                "s M5 15.6 L20.4 15.6 C20 19.6 17.2 21.8 12.7 21.8 C8.2 21.8 5.4 19.6 5 15.6 Z",
            ],
            Sign::Tired => &[
                "s M2.4 9.6 L2.4 21.4",
                "s M2.4 18 L21.6 18 L21.6 21.4",
                "s O6.4 14.2 2.2",
                "s M9.6 18 C9.6 13.6 13 13 16 13 C19.6 13 21.4 14.6 21.6 18",
                "s M12 7.8 L14.8 7.8 L12 11 L14.8 11",
                "s M17 2.8 L20.8 2.8 L17 7 L20.8 7",
            ],
            Sign::Leg => &[
                "s M6.6 2 C6 7 7.4 9 6.8 13 C6.6 16 7.4 17.4 7 19.4 L4.6 21.8 L15 21.8 C14.6 19.8 13 18.8 12.4 17.4 C15.4 13.4 14.8 7 14.4 2",
                "f M22.4 6.4 L17.4 11 L19.8 11.7 L17.4 16 L22.8 11 L20.4 10.3 Z",
            ],
            Sign::Tightening => &[
                "s M7 2 L7 8.6 C12.5 9.4 16.5 11.4 16.5 15 C16.5 18.6 12.5 20 8.5 20 L8.5 22.6",
                "s M3 2 C2.4 9 3.4 15 3.2 22.6",
                "s M14.4 6.6 C17.6 8.2 19.6 10.6 20 13.4",
                "s M20.4 16.6 C19.9 19 18.2 21 15.8 22.2",
                "s M17 3.6 C20.4 5.6 22.6 8.6 23 12",
            ],
            Sign::GoIn => &[
                "s M10 2.4 L21.6 2.4 L21.6 21.6 L10 21.6",
                "s M10 2.4 L10 7",
                "s M10 17 L10 21.6",
                "s M1.6 12 L14.6 12",
                "s M10.8 7.8 L15 12 L10.8 16.2",
            ],
            Sign::HeavyBlood => &[
                "f M9 1.6 C8.2 4.2 4.6 7.6 4.6 10.6 C4.6 13.2 6.6 14.8 9 14.8 C11.4 14.8 13.4 13.2 13.4 10.6 C13.4 7.6 9.8 4.2 9 1.6 Z",
                "f M18 5.2 C17.4 7 15 9.4 15 11.6 C15 13.5 16.3 14.6 18 14.6 C19.7 14.6 21 13.5 21 11.6 C21 9.4 18.6 7 18 5.2 Z",
                "f M2 20 C3.4 17 20.6 17 22 20 C22.4 22.8 1.6 22.8 2 20 Z",
            ],
            Sign::HeartRacing => &[
                "s M13.4 21 C8.2 17 5.6 14 5.6 10.2 C5.6 7.2 7.8 5.2 10.2 5.2 C11.6 5.2 12.8 6 13.4 7.2 C14 6 15.2 5.2 16.6 5.2 C19 5.2 21.2 7.2 21.2 10.2 C21.2 14 18.6 17 13.4 21 Z",
                "s M8.6 12.6 L11.2 12.6 L12.6 9.4 L14.4 15.2 L15.8 12.6 L18.2 12.6",
                "s M1.2 8 L3.4 8",
                "s M1 12 L3.6 12",
                "s M1.8 16 L4.8 16",
            ],
            Sign::Ambulance => &[
                "s M4.2 18.4 L1.6 18.4 L1.6 7.6 L14.6 7.6 L14.6 18.4 L9 18.4",
                "s M14.6 10.6 L18.8 10.6 L22.4 14.4 L22.4 18.4 L20.2 18.4",
                "s M14.6 18.4 L15.4 18.4",
                "s O6.6 18.8 2.3",
                "s O17.8 18.8 2.3",
                "f M5.8 7.4 L6.6 4.4 L9.8 4.4 L10.6 7.4 Z",
                "s M8.2 1.2 L8.2 2.6",
                "s M3.6 2.4 L4.6 3.4",
                "s M12.8 2.4 L11.8 3.4",
            ],
            Sign::PhoneToday => &[
                "s M1.8 14.2 C1.8 9.6 14.4 9.6 14.4 14.2 L14.4 16 L11.2 16 L11.2 14.2 C11.2 13.4 5 13.4 5 14.2 L5 16 L1.8 16 Z",
                "s M4.8 16 L2.4 22 L13.8 22 L11.4 16",
                "s O18.4 6.2 2.7",
                "s M18.4 0.9 L18.4 2",
                "s M18.4 10.4 L18.4 11.5",
                "s M13.1 6.2 L14.2 6.2",
                "s M22.6 6.2 L23.6 6.2",
                "s M14.7 2.5 L15.5 3.3",
                "s M21.3 9.1 L22.1 9.9",
                "s M14.7 9.9 L15.5 9.1",
                "s M21.3 3.3 L22.1 2.5",
            ],
            Sign::Kneel => &[
                "s O4.6 17.2 2.8",
                "s M7.6 15.4 L15.4 7.8 L17 20.2 L22.6 20.2",
                "s M8.6 15 L11.4 20.2 L7.8 20.2",
                "s M1.2 22.8 L22.8 22.8",
            ],
            Sign::LeftSide => &[
                "s O19.6 15.6 2.9",
                "f O20.4 14.6 0.7",
                "f O20.4 16.8 0.7",
                "s M16.6 14 C13.6 11.4 9.8 9.8 6.6 10.8 L1.4 16 L2.8 17.6 L7.4 14.8 C10.6 14.6 13.4 18 16.6 18.4",
                "s M5.2 16.8 L10.2 16.8 C11.8 16.8 11.8 20.6 10.2 20.6 L5.2 20.6 C3.6 20.6 3.6 16.8 5.2 16.8 Z",
                "s M1.2 22.8 L22.8 22.8",
            ],
            Sign::HandOnBelly => &[
                "s M6 1.6 L6 7.8 C11.5 8.6 15.5 10.6 15.5 14.2 C15.5 17.8 11.5 19.2 7.5 19.2 L7.5 22.4",
                "s M2 1.6 C1.4 8.4 2.4 14.4 2.2 22.4",
                "s M23 7.6 L18.6 8 C16.4 8.2 14.8 6.8 13.4 5.6 C12.2 4.6 11 6.2 12 7.2 L16.6 11.8 L17.4 15.6 C17.8 17.2 19.6 16.8 19.4 15.2 L19 12.6 L23 12.2",
            ],
            Sign::Clock => &["s O12 12 9.4", "s M12 5.8 L12 12 L16.2 14.6"],
        }
    }

    /// Its marks in a square of this side with its top left corner here, mm.
    pub(super) fn marks(self, corner: PagePoint, side: f32) -> Vec<Item<PagePoint>> {
        let unit = side / SIDE;
        let at = |x: f32, y: f32| PagePoint::new(corner.x + x * unit, corner.y + y * unit);
        let lines = self.lines().iter();
        lines
            .map(|line| {
                let path = path(&line[1..], &at);
                if line.starts_with('f') {
                    Item::Fill { path, colour: INK, rule: FillRule::NonZero }
                } else {
                    Item::Stroke { path, colour: INK, width: BREADTH * unit, dash: None }
                }
            })
            .collect()
    }
}

/// A path as `Sign::lines` writes it.
fn path(line: &str, at: &impl Fn(f32, f32) -> PagePoint) -> Path<PagePoint> {
    let mut out = vec![];
    let mut command = ' ';
    let mut n: Vec<f32> = vec![];
    for word in line.split_whitespace() {
        let number = word.trim_start_matches(|c: char| c.is_ascii_uppercase());
        if let (true, Some(letter)) = (number.len() < word.len(), word.chars().next()) {
            command = letter;
            n.clear();
        }
        n.extend(number.parse::<f32>());
        match (command, n.as_slice()) {
            ('M', &[x, y]) => out.push(Step::Move(at(x, y))),
            ('L', &[x, y]) => out.push(Step::Line(at(x, y))),
            ('C', &[a, b, c, d, x, y]) => out.push(Step::Curve(at(a, b), at(c, d), at(x, y))),
            ('O', &[x, y, r]) => out.extend(round(x, y, r, at)),
            ('Z', &[]) => out.push(Step::Close),
            _ => continue,
        }
        n.clear();
    }
    out
}

fn round(x: f32, y: f32, r: f32, at: &impl Fn(f32, f32) -> PagePoint) -> Path<PagePoint> {
    let k = super::compose::QUARTER * r;
    vec![
        Step::Move(at(x - r, y)),
        Step::Curve(at(x - r, y - k), at(x - k, y - r), at(x, y - r)),
        Step::Curve(at(x + k, y - r), at(x + r, y - k), at(x + r, y)),
        Step::Curve(at(x + r, y + k), at(x + k, y + r), at(x, y + r)),
        Step::Curve(at(x - k, y + r), at(x - r, y + k), at(x - r, y)),
        Step::Close,
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_sign_lies_in_its_square_and_no_two_are_alike() {
        for (i, sign) in Sign::ALL.iter().enumerate() {
            let marks = sign.marks(PagePoint::new(0.0, 0.0), SIDE);
            assert_eq!(marks.len(), sign.lines().len());
            for (line, mark) in sign.lines().iter().zip(&marks) {
                let (Item::Fill { path, .. } | Item::Stroke { path, .. }) = mark else {
                    panic!("{sign:?}: {line}")
                };
                // Every number of the line was used.
                let said = line.split_whitespace().filter(|w| w.chars().any(|c| c.is_ascii_digit())).count();
                let points: Vec<PagePoint> = path
                    .iter()
                    .flat_map(|step| match *step {
                        Step::Move(p) | Step::Line(p) => vec![p],
                        Step::Curve(a, b, c) => vec![a, b, c],
                        Step::Close => vec![],
                    })
                    .collect();
                assert!(line.contains('O') || 2 * points.len() == said, "{sign:?}: {line}");
                assert!(points.len() > 1, "{sign:?}: {line}");
                for p in points {
                    assert!(p.x > 0.0 && p.x < SIDE && p.y > 0.0 && p.y < SIDE, "{sign:?}: {line}: {p:?}");
                }
            }
            for other in &Sign::ALL[i + 1..] {
                assert_ne!(sign.lines(), other.lines());
                assert_ne!(sign.message(), other.message());
            }
        }
    }
}
