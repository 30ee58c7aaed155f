//! What hands feel. In: a `Pose`, with or without fine lines and womb. Out: what hands feel under each named place
//! of her abdomen and how deep, and where each baby's heart would best be heard.
//!
//! Rays run under the named places only, straight towards her back, as the picture's cast does: what is drawn there is
//! what is felt there. The turn of a trunk is read from the skin that is met, in the baby's own frame.

use super::baby::PosedBaby;
use super::form::landmark::Landmark;
use super::heard::Source;
use super::mother::MotherShape;
use super::part::{Part, Region};
use super::pose::{Drawn, Pose, Rounds};
use super::shape::{Met, Rays};
use crate::exam::{Across, Height, Place};
use crate::units::{BabySide, Centimetres, MotherPoint, MotherSide, Vec3};

pub use super::heard::Through;

/// What a hand can tell apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Feel {
    /// Hard and round.
    Head,
    /// Broad and firm: the trunk from behind.
    Back,
    /// The flank of the trunk, between back and front.
    Side,
    /// Chest and belly.
    Front,
    /// Softer than a head, and wide.
    Bottom,
    /// Small parts: arms, legs, hands, feet.
    Limbs,
    /// A trunk of which it is not known how it is turned.
    Trunk,
}

/// What is felt under one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Felt {
    /// Number of the baby, from 1.
    pub baby: usize,
    /// What lies there.
    pub what: Feel,
    /// Its part; `None` for a baby of which only head and bottom are known.
    pub part: Option<Part>,
    /// How deep under her skin it lies, straight towards her back, cm; 0 when it touches the skin.
    pub depth_cm: f32,
}

/// One place of the map.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Touch {
    /// The place, as an exam would name it.
    pub place: Place,
    /// Where that is on her skin.
    pub at: MotherPoint,
    /// Where hands met what is felt: at the fundus they close in on it.
    pub met_at: MotherPoint,
    /// What is felt there; `None`: no part of a baby.
    pub felt: Option<Felt>,
}

/// Where a baby's heart would best be heard. A place supports a position and never proves one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Listening {
    /// Number of the baby, from 1.
    pub baby: usize,
    /// The place on her skin.
    pub at: MotherPoint,
    /// Through what it is heard.
    pub through: Through,
    /// True when that side of the baby is turned to her spine: fainter, and harder to find.
    pub faint: bool,
}

/// What hands and ear would find.
#[derive(Clone, Debug, PartialEq)]
pub struct Palpation {
    /// Every place of `places`, in its order.
    pub touches: Vec<Touch>,
    /// A place for each baby whose back is known.
    pub hearts: Vec<Listening>,
}

impl Palpation {
    /// What is felt at a place of the map; `None` when the place is not on the map or nothing is felt there.
    pub fn felt(&self, across: Across, height: Height) -> Option<Felt> {
        let place = Place { across: Some(across), height: Some(height) };
        self.touches.iter().find(|touch| touch.place == place)?.felt
    }

    /// The place of the map that lies nearest to a point of her skin, as for a place that was measured.
    pub fn nearest(&self, at: MotherPoint) -> Option<&Touch> {
        let far = |touch: &Touch| (touch.at.0 - at.0).length();
        self.touches.iter().min_by(|a, b| far(a).total_cmp(&far(b)))
    }
}

/// The columns of the abdomen that an exam can name, from her right to her left.
pub const COLUMNS: [Across; 5] = [
    Across::Flank(MotherSide::Right),
    Across::Side(MotherSide::Right),
    Across::Middle,
    Across::Side(MotherSide::Left),
    Across::Flank(MotherSide::Left),
];
/// The levels that an exam can name for every column, from above.
pub const LEVELS: [Height; 5] =
    [Height::Fundus, Height::AboveNavel, Height::AtNavel, Height::BelowNavel, Height::AbovePubicBone];

/// The places of the map, and where hands lie for them: every column at every level, the iliac fossae, the columns
/// without a level; and between them a few measured ones: halfway between the levels, and halfway from the midline to
/// the sides.
pub fn places(mother: &MotherShape) -> Vec<(Place, MotherPoint)> {
    let place = |across, height| Place { across: Some(across), height };
    let mut named: Vec<Place> =
        LEVELS.iter().flat_map(|level| COLUMNS.map(|column| place(column, Some(*level)))).collect();
    for column in COLUMNS {
        if column != Across::Middle {
            named.push(place(column, Some(Height::IliacFossa)));
        }
        named.push(place(column, None));
    }
    let along = LEVELS.map(|level| mother.skin_lengths(spot(mother, &place(Across::Middle, Some(level)))).1);
    for pair in along.windows(2) {
        let between = Height::FromNavel(0.5 * (pair[0] + pair[1]) - mother.navel_along);
        named.extend(COLUMNS[1..4].iter().map(|column| place(*column, Some(between))));
    }
    let mut out: Vec<_> = named.into_iter().map(|place| (place, spot(mother, &place))).collect();
    // A place is known by its length on the skin; to lay that length out again would take long.
    for level in LEVELS {
        for side in [MotherSide::Right, MotherSide::Left] {
            let beside = mother.place(&place(Across::Side(side), Some(level))).0;
            let (x, y) = (f64::from(beside.x) * 0.5, f64::from(beside.y));
            if let Some(cm) = Centimetres::new(mother.section(y).across(x).abs()) {
                out.push((place(Across::Measured(side, cm), Some(level)), cupped(mother, level, x, y)));
            }
        }
    }
    out
}

/// Hands at the fundus cup the pole that lies there: they feel what is this far below its top, seen from the front, cm;
/// where nothing lies there, what they meet next as they close in on it.
const CUPPED: f64 = 4.0;
const CLOSE_IN: f32 = 4.0;

/// Where hands lie for a place.
fn spot(mother: &MotherShape, place: &Place) -> MotherPoint {
    let at = mother.place(place);
    match place.height {
        Some(level) => cupped(mother, level, at.0.x.into(), at.0.y.into()),
        None => at,
    }
}

/// The point of the skin over (x, y); at the fundus, under its top.
fn cupped(mother: &MotherShape, level: Height, x: f64, y: f64) -> MotherPoint {
    let under = mother.fundus_y - CUPPED.min(0.5 * mother.fundus_y.max(0.0));
    mother.skin(x, if level == Height::Fundus { under } else { y })
}

/// What hands and ear would find on this pose.
pub fn palpation(pose: &Pose) -> Palpation {
    let hands = Hands::on(pose);
    let touches = places(&pose.mother).into_iter().map(|(place, at)| hands.touch(place, at)).collect();
    let hearts = pose.posed().map(|(number, baby)| listening(&pose.mother, number, baby)).collect();
    Palpation { touches, hearts }
}

/// Hands on a pose.
struct Hands<'a> {
    mother: &'a MotherShape,
    babies: Vec<(usize, Lying<'a>)>,
}

/// What lies under them.
enum Lying<'a> {
    Baby(&'a PosedBaby, Rays<'a>),
    Rounds(&'a Rounds),
}

impl<'a> Hands<'a> {
    fn on(pose: &'a Pose) -> Self {
        let lying = |drawn: &'a Drawn| match drawn {
            Drawn::Baby(baby) => Lying::Baby(baby, baby.shape.for_rays()),
            Drawn::Rounds(rounds) => Lying::Rounds(rounds),
        };
        Hands {
            mother: &pose.mother,
            babies: pose.babies.iter().map(|(number, drawn)| (*number, lying(drawn))).collect(),
        }
    }

    /// What is felt at a place; at the fundus, what hands meet as they close in on a pole that lies lengthwise, by half a
    /// centimetre at a time.
    fn touch(&self, place: Place, at: MotherPoint) -> Touch {
        if let Some(felt) = self.felt(at) {
            return Touch { place, at, met_at: at, felt: Some(felt) };
        }
        let lengthwise = |felt: &Felt| {
            self.babies.iter().any(|(number, lying)| {
                matches!(lying, Lying::Baby(baby, _) if *number == felt.baby && baby.posture.up.y.abs() > 0.9)
            })
        };
        let steps = if place.height == Some(Height::Fundus) { (2.0 * CLOSE_IN) as u8 } else { 0 };
        let met = (1..=steps).find_map(|step| {
            let lower = self.mother.skin(at.0.x.into(), f64::from(at.0.y) - 0.5 * f64::from(step));
            self.felt(lower).filter(lengthwise).map(|felt| (lower, felt))
        });
        match met {
            Some((met_at, felt)) => Touch { place, at, met_at, felt: Some(felt) },
            None => Touch { place, at, met_at: at, felt: None },
        }
    }

    /// What a ray from the viewer through `at` towards her back meets first.
    fn felt(&self, at: MotherPoint) -> Option<Felt> {
        let mut first: Option<(f32, Felt)> = None;
        for (number, lying) in &self.babies {
            let met = match lying {
                Lying::Baby(baby, rays) => {
                    rays.under(at.0.x, at.0.y).map(|met| (met.at.z, feel(baby, &met), Some(met.part)))
                }
                Lying::Rounds(rounds) => meet_rounds(rounds, at.0).map(|(z, what)| (z, what, None)),
            };
            if let Some((z, what, part)) = met
                && first.is_none_or(|(nearer, _)| z > nearer)
            {
                let depth_cm = (at.0.z - z).max(0.0);
                first = Some((z, Felt { baby: *number, what, part, depth_cm }));
            }
        }
        first.map(|(_, felt)| felt)
    }
}

/// Where a ray meets the rounds that stand for a baby, and what they stand for.
fn meet_rounds(rounds: &Rounds, at: Vec3) -> Option<(f32, Feel)> {
    let ball = |(middle, radius): (MotherPoint, f32)| {
        let (x, y) = (at.x - middle.0.x, at.y - middle.0.y);
        let room = radius * radius - x * x - y * y;
        (room > 0.0).then(|| middle.0.z + room.sqrt())
    };
    let axis = rounds.bottom.0.0 - rounds.head.0.0;
    let from = at - rounds.head.0.0;
    let share = (from.x * axis.x + from.y * axis.y) / (axis.x * axis.x + axis.y * axis.y).max(1e-6);
    let trunk = ball((MotherPoint(rounds.head.0.0 + axis * share.clamp(0.0, 1.0)), rounds.trunk));
    [(ball(rounds.head), Feel::Head), (ball(rounds.bottom), Feel::Bottom), (trunk, Feel::Trunk)]
        .into_iter()
        .find_map(|(z, what)| Some((z?, what)))
}

/// What the skin that was met feels like. A trunk's turn is the angle of its skin round the baby's long axis: its back within
/// 60 degrees of straight backwards, its front within 60 of straight forwards, its side between them.
fn feel(baby: &PosedBaby, met: &Met) -> Feel {
    match met.part.region() {
        Region::Head => Feel::Head,
        Region::Arm(_) | Region::Leg(_) => Feel::Limbs,
        Region::Trunk => {
            let own = baby.body.local(met.at);
            let crest = |side| baby.body.local(baby.shape.landmark(Landmark::IliacCrest, side)).y;
            if met.part.is_buttock() || own.y < 0.5 * (crest(BabySide::Left) + crest(BabySide::Right)) {
                return Feel::Bottom;
            }
            let forward = met.outward.dot(baby.body.z);
            let sideways = met.outward.dot(baby.body.x);
            let turn = forward / (forward * forward + sideways * sideways).sqrt().max(1e-9);
            if turn < -0.5 {
                Feel::Back
            } else if turn > 0.5 {
                Feel::Front
            } else {
                Feel::Side
            }
        }
    }
}

/// A side of the baby turned this far from her front (cosine) is heard faintly.
const FAINT: f32 = -0.4;
/// How far above or below the place where it leaves the baby a heart is looked for, cm.
const ABOUT: f64 = 1.0;
/// The lowest place to listen, cm above the symphysis.
const LOWEST: f64 = 3.0;
/// How far beside the baby it is looked for, cm: over the womb, not beside it.
const BESIDE: f64 = 2.0;
/// And at least this far out in the flank, as a share of the half width: there a back is heard that lies behind.
const FLANK: f64 = 0.62;
/// A back that is not turned to her spine by at least this (cosine) is heard before the flank, within this share of the half
/// width: half way between the places drawn for a side and for a flank; a back that lies in front nearer to the midline than
/// one that lies square to the side, by this share at most. Common practice, after the rows of heart-location.csv.
const BEHIND: f32 = -0.35;
const BEFORE_FLANK: f64 = 0.54;
const NEARER_IN_FRONT: f64 = 0.17;

/// How far this baby reaches to her right and to her left of the midline, cm.
fn beside(baby: &PosedBaby) -> [f64; 2] {
    [-1.0, 1.0].map(|x| baby.shape.reach(Vec3::new(x, 0.0, 0.0)).max(0.0).into())
}

/// Where this baby's heart would best be heard: the skin that is nearest to where the sound leaves the baby, ways
/// round the baby counted longer.
fn listening(mother: &MotherShape, number: usize, baby: &PosedBaby) -> Listening {
    let source = Source::of(baby);
    let cost = |p: MotherPoint| source.way_to(p);
    // Over the womb, about the height of the baby's chest.
    let low = (source.height() - ABOUT).clamp(LOWEST, mother.fundus_y.max(LOWEST));
    let high = (source.height() + ABOUT).clamp(low, mother.fundus_y.max(low));
    let breadth = beside(baby);
    // A coarse net over the skin, then ever smaller steps from its best place.
    let point = |across: f64, y: f64| mother.skin(across * mother.half_width(y), y);
    let mut best = (f32::MAX, 0.0, 0.0);
    let look = |across: f64, y: f64, best: &mut (f32, f64, f64)| {
        let y = y.clamp(low, high);
        let out = |far: f64| {
            let far = (far + BESIDE) / mother.half_width(y);
            let in_front = f64::from(source.outward.z.max(0.0));
            if source.outward.z > BEHIND {
                far.min(BEFORE_FLANK - NEARER_IN_FRONT * in_front)
            } else {
                far.clamp(FLANK, 0.95)
            }
        };
        let across = across.clamp(-out(breadth[0]), out(breadth[1]));
        let cost = cost(point(across, y));
        if cost < best.0 {
            *best = (cost, across, y);
        }
    };
    for i in -5..=5 {
        for j in 0..=3 {
            look(f64::from(i) * 0.19, low + f64::from(j) * ABOUT * 2.0 / 3.0, &mut best);
        }
    }
    let mut step = (0.1, 1.0);
    while step.1 > 0.05 {
        let (_, across, y) = best;
        for (i, j) in [(-1.0, 0.0), (1.0, 0.0), (0.0, -1.0), (0.0, 1.0)] {
            look(across + i * step.0, y + j * step.1, &mut best);
        }
        if best.1 == across && best.2 == y {
            step = (step.0 * 0.5, step.1 * 0.5);
        }
    }
    Listening {
        baby: number,
        at: point(best.1, best.2),
        through: source.through,
        faint: source.outward.z < FAINT,
    }
}
