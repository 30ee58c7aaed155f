//! The whole picture in three dimensions. In: `Exam` and the conclusion of each baby. Out: `Pose`: the mother's
//! shape, the babies in their places, the womb round them, and what was found where.

use super::baby::{PosedBaby, Posture};
use super::cast::Cast;
use super::felt::Felt;
use super::measures::Measures;
use super::mother::{FundusKnown, HandbookLevels, MotherShape, handbook_levels};
use super::place::{ABOVE_BABY, hull, lowest, place, top};
use super::plan::{Lying, Plan, plan};
use super::{heard, shape, turning, twins, womb};
use crate::exam::aside;
use crate::exam::{
    Attitude, Back, Conclusion, Exam, Finding, HeartHeard, Height, Legs, Lie, Place, SkinMark, Unsure,
};
use crate::units::{FigurePoint, Gestation, MotherPoint, MotherSide, Vec3};

/// Side of a cell of the cast, cm. At 0.08 the toes melt into a sock; time goes with the inverse square.
pub const CELL: f32 = 0.064;
/// The finest a cell need be on paper, mm.
const FINEST_MM: f32 = 0.11;
/// Weeks of the body that is drawn when they are not given.
const WEEKS_NOT_GIVEN: f64 = 38.0;
/// How much wider the abdomen is drawn with two babies when its girth was not measured: a drawing width.
const TWINS_BREADTH: f64 = 1.1;
/// And at most, where the womb of two needs it; and how far its wall stays from the flank, cm: drawing values.
const TWINS_BROADEST: f64 = 1.45;
const FROM_FLANK: f64 = 1.0;
/// How much higher than by the weeks a womb is drawn at most in which one of two lies across above the other, cm: a drawing
/// height. Two measure more than one by several cm (common practice).
const TWINS_HIGHER: f32 = 6.0;
/// How high a crosswise womb stands against a lengthwise one: a drawing height, common practice.
const CROSSWISE_FUNDUS: f64 = 0.72;
/// A baby that stands this far above the top of its womb does not fit, cm.
const TOO_HIGH: f32 = 0.3;
/// How far the top of a crosswise womb stands above limbs that were felt: a drawing height, cm.
const OVER_LIMBS: f64 = 2.0;
/// Before this only the womb and its level are drawn.
const BODY_FROM: Gestation = Gestation::from_days(26 * 7);

/// Something to say about the drawing itself.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DrawingNote {
    /// The weeks are not given: drawn as at 38 weeks.
    WeeksNotGiven,
    /// Under 26 weeks: the womb and its level only.
    WombOnly,
    /// Neither head nor bottom is known of this baby (number from 1).
    BabyNotTold(usize),
    /// The back of this baby was not felt.
    BackNotFelt(usize),
    /// The legs of this baby were not felt: drawn folded.
    LegsNotFelt(usize),
    /// A foot of this baby leads, and which one was not told: drawn folded.
    FootNotTold(usize),
    /// The findings of this baby are unsure.
    Unsure(usize),
    /// The findings of this baby disagree.
    Disagree(usize),
    /// The heart of this baby was looked for and not heard, or could not be told.
    HeartNotHeard(usize),
    /// Of this baby's back only the side is known: drawn square to it.
    BackSideOnly(usize),
    /// The head of this baby is bent back, and its face leads.
    FaceLeads(usize),
    /// The head of this baby is half bent back, and its brow leads.
    BrowLeads(usize),
    /// This baby is drawn with the sizes of fewer weeks, to fit under the top of the womb.
    Smaller(usize),
    /// Even so this baby does not fit: drawn as rounds.
    DoesNotFit(usize),
    /// Baby 2 lies nearer the outlet than baby 1.
    SecondIsLower,
}

/// One baby of the picture.
#[derive(Clone, Debug)]
pub enum Drawn {
    /// A baby with a face, limbs and a back.
    Baby(Box<PosedBaby>),
    /// Rounds where head and bottom lie, and a pale trunk: the back was not felt.
    Rounds(Rounds),
}

/// What stands for a baby whose back was not felt: a round for the head, one for the bottom, a trunk between them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rounds {
    /// Middle and radius of the head.
    pub head: (MotherPoint, f32),
    /// Middle and radius of the bottom.
    pub bottom: (MotherPoint, f32),
    /// Half the breadth of the trunk.
    pub trunk: f32,
    /// Whether head and bottom were felt; else they are drawn where they must lie.
    pub felt: [bool; 2],
}

/// Something found on the abdomen.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    /// The heart was heard here; number of the baby, from 1.
    Heart(usize, MotherPoint),
    /// A limb was felt here.
    Limb(usize, MotherPoint),
}

/// A finding that is drawn and was written with `?`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doubt {
    /// Which way a baby lies, and so where head and bottom are; its number, from 1.
    Lie(usize),
    /// Where the back of a baby is.
    Back(usize),
    /// The place of a heart.
    Heart(usize),
    /// The places of limbs.
    Limbs(usize),
    /// Fifths of the head above the brim.
    Fifths,
    /// The top of the womb.
    Fundus,
    /// Scars.
    Scars,
    /// Lumps.
    Lumps,
}

/// Everything a figure needs.
#[derive(Clone, Debug)]
pub struct Pose {
    /// The mother.
    pub mother: MotherShape,
    /// Tape in cm, if measured.
    pub tape: Option<f64>,
    /// What is drawn of each baby, with its number from 1.
    pub babies: Vec<(usize, Drawn)>,
    /// Number of babies in the exam.
    pub baby_count: usize,
    /// Outline of the womb.
    pub womb: Vec<FigurePoint>,
    /// Hearts and limbs.
    pub marks: Vec<Mark>,
    /// The levels that handbooks give for the top of an early womb.
    pub handbooks: Option<HandbookLevels>,
    /// Fifths above the brim, when felt in fifths and one baby leads with the head.
    pub fifths: Option<u8>,
    /// Scars on the skin.
    pub scars: Vec<Vec<MotherPoint>>,
    /// Lumps.
    pub lumps: Vec<MotherPoint>,
    /// Linea nigra, striae, rash.
    pub skin: [bool; 3],
    /// What of it is unsure.
    pub doubts: Vec<Doubt>,
    /// What is to be said about the drawing.
    pub notes: Vec<DrawingNote>,
    /// How far each lengthwise baby, by its number, is drawn above (+) or below (-) the height its womb would give it,
    /// cm. For programs to read: it says something of the drawing, nothing of the baby.
    pub misfits: Vec<(usize, f32)>,
}

/// The pose for an exam; `conclusions`, one for each baby.
pub fn from_exam(exam: &Exam, conclusions: &[Conclusion]) -> Pose {
    assemble(exam, conclusions, true, None)
}

/// The pose of an exam of one baby, `share` of the way (0 to 1) to the position of another exam's baby; the same as
/// `from_exam` when either position is not known.
pub fn on_the_way(
    exam: &Exam,
    conclusions: &[Conclusion],
    (to, concluded): (&Exam, &[Conclusion]),
    share: f32,
) -> Pose {
    let goal = match (&to.babies[..], concluded) {
        ([baby], [conclusion]) => Some((plan(baby, conclusion), share)),
        _ => None,
    };
    assemble(exam, conclusions, true, goal.as_ref())
}

/// The same for the hands alone: without the fine lines of the babies and the outline of the womb.
pub fn for_hands(exam: &Exam, conclusions: &[Conclusion]) -> Pose {
    assemble(exam, conclusions, false, None)
}

/// `drawn`: with all that only a drawing needs. `goal`: what the baby is on its way to, and how far.
fn assemble(exam: &Exam, conclusions: &[Conclusion], drawn: bool, goal: Option<&(Plan, f32)>) -> Pose {
    let m = &exam.mother;
    let mut notes = vec![];
    if exam.weeks.is_none() {
        notes.push(DrawingNote::WeeksNotGiven);
    }
    let weeks = exam.weeks.map_or(WEEKS_NOT_GIVEN, Gestation::exact_weeks);
    let cm = |f: &crate::exam::Finding<crate::units::Centimetres>| f.value().map(|c| c.get());
    let mut mother = MotherShape::new(weeks, cm(&m.fundal_height), cm(&m.navel), cm(&m.girth));
    // Of two babies a girth that was not measured is drawn as broad as they need it.
    let is_free = exam.babies.len() > 1 && cm(&m.girth).is_none();
    if is_free {
        mother.breadth = TWINS_BREADTH;
    }
    if let Some(level) = m.fundus.value() {
        mother = mother.with_level(*level);
    }
    let fifths = match &exam.babies[..] {
        [one] => one.head_above_brim.value().map(|f| f.get()),
        _ => None,
    };
    if let Some(fifths) = fifths {
        mother = mother.fallen_with_head(fifths);
    }
    let early = exam.weeks.is_some_and(|w| w < BODY_FROM);
    let (mut babies, mut misfits) = (vec![], vec![]);
    if early {
        notes.push(DrawingNote::WombOnly);
    } else {
        let measures = Measures::at(weeks.max(26.0));
        for (i, (baby, conclusion)) in exam.babies.iter().zip(conclusions).enumerate() {
            let number = i + 1;
            if !conclusion.conflicts.is_empty() {
                notes.push(DrawingNote::Disagree(number));
            }
            if matches!(baby.heart, Finding::Absent | Finding::CouldNotTell { .. }) {
                notes.push(DrawingNote::HeartNotHeard(number));
            }
            let side_only = |back: &Back| back.side.is_some() && back.turn.is_none();
            if conclusion.lie == Some(Lie::Longitudinal) && conclusion.back.as_ref().is_some_and(side_only) {
                notes.push(DrawingNote::BackSideOnly(number));
            }
            let mut plan = plan(baby, conclusion);
            if let Some((goal, share)) = goal {
                plan = turning::between(&plan, goal, *share).unwrap_or(plan);
            }
            if let Plan::Rounds(lying) | Plan::Baby(lying, _) = &mut plan {
                lying.level = level(baby, lying.lie, &mother);
            }
            let limbs: Vec<Felt> =
                baby.limbs.value().into_iter().flatten().map(|p| Felt::of(&mother, p)).collect();
            match &plan {
                Plan::Nothing => notes.push(DrawingNote::BabyNotTold(number)),
                Plan::Rounds(_) => notes.push(DrawingNote::BackNotFelt(number)),
                Plan::Baby(..) => {}
            }
            if let Plan::Rounds(lying) | Plan::Baby(lying, _) = &plan {
                if lying.unsure {
                    notes.push(DrawingNote::Unsure(number));
                }
                if matches!(plan, Plan::Baby(..)) && !lying.legs_known && lying.up.y > 0.0 {
                    notes.push(DrawingNote::LegsNotFelt(number));
                }
                if matches!(plan, Plan::Baby(..)) && lying.foot_untold {
                    notes.push(DrawingNote::FootNotTold(number));
                }
                if lying.lie == Lie::Longitudinal && lying.up.y < 0.0 {
                    match lying.attitude {
                        Attitude::Face => notes.push(DrawingNote::FaceLeads(number)),
                        Attitude::Brow => notes.push(DrawingNote::BrowLeads(number)),
                        Attitude::Flexed | Attitude::Deflexed => {}
                    }
                }
            }
            if let Some((mut posed, misfit, smaller)) =
                draw(&plan, measures, mother.fundus_y as f32, &limbs, favour(baby, conclusion))
            {
                if let Drawn::Rounds(rounds) = &mut posed {
                    rounds.felt = [&baby.head, &baby.breech].map(|pole| pole.value().is_some());
                    // Fifths are felt on the head.
                    rounds.felt[0] |= baby.head_above_brim.value().is_some();
                }
                if misfit > TOO_HIGH && matches!(plan, Plan::Baby(..)) {
                    notes.push(DrawingNote::DoesNotFit(number));
                } else if smaller {
                    notes.push(DrawingNote::Smaller(number));
                }
                misfits.push((number, misfit));
                babies.push((number, posed));
            }
        }
        set_apart(exam, conclusions, &mother, &mut babies);
        if let [(1, Drawn::Baby(a)), (2, Drawn::Baby(b))] = &babies[..]
            && lowest(b) < lowest(a) - 1.0
        {
            notes.push(DrawingNote::SecondIsLower);
        }
        if drawn {
            babies = babies.into_iter().map(|(number, posed)| (number, with_curves(posed))).collect();
        }
    }
    let points = hull_points(&babies);
    // A crosswise womb is lower than the weeks, but no lower than the baby and the limbs that were felt.
    let turned_over = |(_, drawn): &(usize, Drawn)| match drawn {
        Drawn::Baby(baby) => goal.is_some() && baby.posture.up.y.abs() < 0.93,
        Drawn::Rounds(_) => false,
    };
    let crosswise =
        conclusions.iter().any(|c| matches!(c.lie, Some(Lie::Transverse))) || babies.iter().any(turned_over);
    if crosswise && cm(&m.fundal_height).is_none() && !points.is_empty() {
        let top = points.iter().fold(0.0f32, |t, p| t.max(p.y)) + ABOVE_BABY;
        let low = mother.fundus_y * CROSSWISE_FUNDUS;
        let felt = limbs_felt(exam, &mother).map_or(low, |y| y + OVER_LIMBS);
        let most = if babies.len() > 1 { mother.fundus_y.max(top.into()) } else { mother.fundus_y };
        mother = mother.with_fundus_at(f64::from(top).max(low).max(felt).min(most));
    }
    let mut womb =
        if drawn || is_free { womb::outline(&points, mother.fundus_y as f32, weeks) } else { vec![] };
    if is_free {
        mother.breadth = mother.breadth.max(around(&mother, &womb)).min(TWINS_BROADEST);
    }
    if !drawn {
        womb.clear();
    }
    let marks = marks(exam, &mother, &babies, &womb);
    let handbooks = exam.weeks.map(Gestation::exact_weeks).and_then(handbook_levels);
    let places = |f: &crate::exam::Finding<Vec<Place>>| -> Vec<MotherPoint> {
        f.value().map_or(vec![], |all| all.iter().map(|p| mother.place(p)).collect())
    };
    let has = |mark: SkinMark| m.skin.value().is_some_and(|all| all.contains(&mark));
    Pose {
        tape: cm(&m.fundal_height),
        baby_count: exam.babies.len(),
        marks,
        handbooks,
        fifths,
        scars: m.scars.value().map_or(vec![], |s| s.iter().flat_map(|s| mother.scar(*s)).collect()),
        lumps: places(&m.lumps).into_iter().map(|p| womb::lump_in_wall(p, &womb)).collect(),
        womb,
        skin: [has(SkinMark::LineaNigra), has(SkinMark::Striae), has(SkinMark::Rash)],
        mother,
        babies,
        doubts: doubts(exam, conclusions),
        notes,
        misfits,
    }
}

/// How much broader than usual her abdomen must be to hold a womb: most at the navel, and nowhere near chest and hips.
fn around(mother: &MotherShape, womb: &[FigurePoint]) -> f64 {
    let at = |breadth: f64, y: f64| MotherShape { breadth, ..*mother }.half_width(y);
    womb.iter().fold(1.0f64, |most, p| {
        let (y, needed) = (f64::from(p.y), f64::from(p.x.abs()) + FROM_FLANK);
        let (usual, a_tenth_more) = (at(1.0, y), at(1.1, y));
        let gained = (a_tenth_more - usual) * 10.0;
        if gained > 0.3 * usual { most.max(1.0 + (needed - usual) / gained) } else { most }
    })
}

/// The height of the highest place where limbs were felt, cm; a place at the top of the womb goes with the womb.
fn limbs_felt(exam: &Exam, mother: &MotherShape) -> Option<f64> {
    let places = exam.babies.iter().filter_map(|baby| baby.limbs.value()).flatten();
    let heights = places.filter(|place| place.height.is_some_and(|height| height != Height::Fundus));
    heights.map(|place| f64::from(mother.place(place).0.y)).reduce(f64::max)
}

/// The drawn findings that were written with `?`.
fn doubts(exam: &Exam, conclusions: &[Conclusion]) -> Vec<Doubt> {
    let m = &exam.mother;
    let top = m.fundal_height.is_unsure() || (m.fundal_height.value().is_none() && m.fundus.is_unsure());
    let mut all =
        vec![(top, Doubt::Fundus), (m.scars.is_unsure(), Doubt::Scars), (m.lumps.is_unsure(), Doubt::Lumps)];
    for (i, baby) in exam.babies.iter().enumerate() {
        all.push((baby.heart.is_unsure(), Doubt::Heart(i + 1)));
        all.push((baby.limbs.is_unsure(), Doubt::Limbs(i + 1)));
        all.push((baby.head_above_brim.is_unsure(), Doubt::Fifths));
        if let Some(conclusion) = conclusions.get(i) {
            let unsure = Unsure::of(baby, conclusion);
            all.extend([(unsure.lie, Doubt::Lie(i + 1)), (unsure.back, Doubt::Back(i + 1))]);
        }
    }
    all.into_iter().filter_map(|(unsure, doubt)| unsure.then_some(doubt)).collect()
}

fn with_curves(drawn: Drawn) -> Drawn {
    match drawn {
        Drawn::Baby(baby) => Drawn::Baby(Box::new(baby.with_curves())),
        Drawn::Rounds(rounds) => Drawn::Rounds(rounds),
    }
}

/// Poses one baby, or the rounds that stand for it.
fn draw(
    plan: &Plan,
    measures: Measures,
    fundus: f32,
    limbs: &[Felt],
    favour: MotherSide,
) -> Option<(Drawn, f32, bool)> {
    let posture = |lying: &Lying, back: Vec3| Posture {
        up: lying.up,
        back,
        attitude: lying.attitude,
        legs: lying.legs,
        curl: 1.0,
        measures,
        favour,
    };
    match plan {
        Plan::Nothing => None,
        Plan::Baby(lying, back) => {
            let placed = place(lying, posture(lying, *back), fundus, limbs);
            if placed.misfit > TOO_HIGH {
                return Some((rounds(&placed.baby), placed.misfit, true));
            }
            Some((Drawn::Baby(Box::new(placed.baby)), placed.misfit, placed.smaller))
        }
        Plan::Rounds(lying) => {
            // The rounds lie where head and bottom of a baby seen square on would lie.
            let lying = Lying { legs: Legs::Complete, ..*lying };
            let placed = place(&lying, posture(&lying, Vec3::new(0.0, 0.0, 1.0)), fundus, &[]);
            Some((rounds(&placed.baby), placed.misfit, placed.smaller))
        }
    }
}

/// The height at which head and bottom of a crosswise baby were felt, cm; `None` when no height was said.
fn level(baby: &crate::exam::Baby, lie: Lie, mother: &MotherShape) -> Option<f32> {
    let said = |place: &&Place| lie == Lie::Transverse && place.height.is_some();
    let felt = [baby.head.value(), baby.breech.value()].into_iter().flatten().filter(said);
    let heights: Vec<f32> = felt.map(|place| mother.place(place).0.y).collect();
    (!heights.is_empty()).then(|| heights.iter().sum::<f32>() / heights.len() as f32)
}

/// Which side of the mother breaks the tie when the baby is seen square on: where limbs were felt, where the heart was
/// heard, where the head lies; else her left. A mirrored exam favours the other side.
fn favour(baby: &crate::exam::Baby, conclusion: &Conclusion) -> MotherSide {
    let limbs: Vec<MotherSide> = baby.limbs.value().into_iter().flatten().filter_map(Place::side).collect();
    let one_sided = limbs.first().copied().filter(|first| limbs.iter().all(|s| s == first));
    let heart = match baby.heart.value() {
        Some(HeartHeard::At(place)) => place.side(),
        Some(HeartHeard::Somewhere) | None => None,
    };
    one_sided.or(heart).or(conclusion.head_side).unwrap_or(MotherSide::Left)
}

/// The rounds that stand for a baby.
fn rounds(baby: &PosedBaby) -> Drawn {
    let k = &baby.posture.measures;
    let at = |p: Vec3| MotherPoint(baby.body.point(p));
    let bottom = baby.spine.pelvis.origin + Vec3::new(0.0, -0.6 * k.length, 0.0);
    Drawn::Rounds(Rounds {
        head: (at(baby.spine.head.origin), 4.9 * k.head),
        bottom: (at(bottom), 4.2 * k.girth),
        trunk: 4.7 * k.girth,
        felt: [true; 2],
    })
}

/// Sets two babies apart: each to its own side, or one behind the other; the second, where it stands over no brim, no lower
/// than its heart was heard.
fn set_apart(exam: &Exam, conclusions: &[Conclusion], mother: &MotherShape, babies: &mut [(usize, Drawn)]) {
    let [(1, one), (2, two)] = babies else { return };
    let fundus = mother.fundus_y as f32;
    let first = aside::first(exam).map_or(-1.0, MotherSide::sign);
    let lies = [0, 1].map(|i| conclusions[i].lie.unwrap_or(Lie::Longitudinal));
    let moves = match (&*one, &*two) {
        (Drawn::Baby(a), Drawn::Baby(b)) => {
            let other = if lies[1] == Lie::Longitudinal { a } else { b };
            // Over a baby that lies lengthwise a womb whose top was not found is as high as it must be.
            let higher = if mother.fundus_known == FundusKnown::Expected { TWINS_HIGHER } else { 0.0 };
            let room = fundus + higher - ABOVE_BABY - top(other);
            let mut moves = twins::apart([a, b], lies, first, room);
            let second = &exam.babies[1];
            let free = second.descent.value().is_none() && second.head_above_brim.value().is_none();
            if lies == [Lie::Longitudinal; 2]
                && free
                && let Some(HeartHeard::At(place)) = second.heart.value()
            {
                let room = (fundus - ABOVE_BABY - top(b)).max(0.0);
                moves[1].y += heard::below(mother, place, b).clamp(0.0, room);
            }
            moves
        }
        _ => [first, -first].map(|sign| Vec3::new(sign * ROUNDS_ASIDE, 0.0, 0.0)),
    };
    for (drawn, by) in [one, two].into_iter().zip(moves) {
        match drawn {
            Drawn::Baby(baby) => **baby = baby.as_ref().clone().moved(by),
            Drawn::Rounds(rounds) => {
                rounds.head.0.0 = rounds.head.0.0 + by;
                rounds.bottom.0.0 = rounds.bottom.0.0 + by;
            }
        }
    }
}

/// How far two babies lie from the midline when one of them is drawn as rounds, cm.
const ROUNDS_ASIDE: f32 = 5.6;

/// Points round the babies in the picture plane.
fn hull_points(babies: &[(usize, Drawn)]) -> Vec<FigurePoint> {
    let mut out = vec![];
    for (_, drawn) in babies {
        match drawn {
            Drawn::Baby(baby) => {
                out.extend(hull(baby));
            }
            Drawn::Rounds(rounds) => {
                for (middle, radius) in [rounds.head, rounds.bottom] {
                    out.extend((0..16).map(|i| {
                        let (sin, cos) = libm::sincosf(i as f32 / 16.0 * std::f32::consts::TAU);
                        FigurePoint::new(middle.0.x + radius * cos, middle.0.y + radius * sin)
                    }));
                }
            }
        }
    }
    out
}

fn marks(exam: &Exam, mother: &MotherShape, drawn: &[(usize, Drawn)], womb: &[FigurePoint]) -> Vec<Mark> {
    let mut out = vec![];
    for (i, baby) in exam.babies.iter().enumerate() {
        let posed = match drawn.iter().find(|(number, _)| *number == i + 1) {
            Some((_, Drawn::Baby(posed))) => Some(posed),
            Some((_, Drawn::Rounds(_))) | None => None,
        };
        if let Some(HeartHeard::At(place)) = baby.heart.value() {
            let at = match posed {
                Some(posed) => heard::mark(mother, place, posed, womb),
                None => mother.place(place),
            };
            out.push(Mark::Heart(i + 1, at));
        }
        for place in baby.limbs.value().into_iter().flatten() {
            let felt = Felt::of(mother, place);
            let at = match posed {
                Some(baby) => felt.mark(mother, baby),
                None => felt.at,
            };
            out.push(Mark::Limb(i + 1, at));
        }
    }
    out
}

/// Side of a cell for a picture of this scale (mm on paper for a cm of the body): no finer than can be seen, cm.
pub fn cell_for(mm_per_cm: f32) -> f32 {
    (FINEST_MM / mm_per_cm).clamp(CELL, 3.0 * CELL)
}

impl Pose {
    /// The picture of depths of all posed babies; `None` when there is none.
    pub fn cast(&self) -> Option<Cast> {
        self.cast_with(CELL, false)
    }

    /// Of the mirror image: not a cast turned over, so that a mirrored exam meets the very same cells.
    pub fn cast_mirrored(&self) -> Option<Cast> {
        self.cast_with(CELL, true)
    }

    /// The same for a picture of this scale (mm on paper for a cm of the body): no finer than can be seen.
    pub fn cast_for(&self, mm_per_cm: f32) -> Option<Cast> {
        self.cast_with(cell_for(mm_per_cm), false)
    }

    fn cast_with(&self, cell: f32, mirrored: bool) -> Option<Cast> {
        shape::cast(self.posed().map(|(_, baby)| &baby.shape), cell, mirrored)
    }

    /// The posed babies with their numbers, without those drawn as rounds.
    pub fn posed(&self) -> impl Iterator<Item = (usize, &PosedBaby)> {
        self.babies.iter().filter_map(|(n, d)| match d {
            Drawn::Baby(baby) => Some((*n, baby.as_ref())),
            Drawn::Rounds(_) => None,
        })
    }

    /// The rounds with the numbers of their babies.
    pub fn rounds(&self) -> impl Iterator<Item = (usize, &Rounds)> {
        self.babies.iter().filter_map(|(n, d)| match d {
            Drawn::Baby(_) => None,
            Drawn::Rounds(rounds) => Some((*n, rounds)),
        })
    }
}
