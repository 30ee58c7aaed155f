//! What a case teaches: one lesson each, from the mistakes that students make. In: a lesson and chance. Out: a baby, a visit written of
//! it, and what the lesson says of both.

use super::dice::Dice;
use super::truth::{Tape, Truth};
use super::visit::{Visit, list, quoted};
use crate::body::touch::Feel;
use crate::exam::say::Canonical;
use crate::exam::{Back, BackTurn, Denominator, Octant, Place, Position};
use crate::units::{Gestation, MotherSide};

/// How hard a case is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// Every finding, in sentences; one position fits.
    Easy,
    /// Every finding, as a chart has it; one position fits.
    Fair,
    /// Findings are missing, or one does not go with the others.
    Hard,
}

impl Level {
    /// Its name on the command line and in message ids.
    pub fn name(self) -> &'static str {
        match self {
            Level::Easy => "easy",
            Level::Fair => "fair",
            Level::Hard => "hard",
        }
    }

    /// Its lessons.
    pub fn lessons(self) -> &'static [Lesson] {
        use Lesson::*;
        match self {
            Level::Easy => &[HerSides, HeadOrBottom, Fifths, LieOrPosition, ShortCount],
            Level::Fair => &[
                DeepHead,
                LowTape,
                BottomDown,
                FullBladder,
                HeadStraight,
                FaceLeads,
                Fibroid,
                EarlyWeeks,
                TapeEdge,
                WhoseHeart,
                BrowLeads,
                FewerMovements,
            ],
            Level::Hard => &[
                OneGrip,
                HeartTooLow,
                LimbsBothSides,
                LimbsAgainst,
                HeartAgainst,
                HeartTooHigh,
                DipAgainst,
                EngagedAcross,
                CannotTell,
            ],
        }
    }
}

/// What a case teaches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Lesson {
    /// The examiner's left is her right.
    HerSides,
    /// A bottom is taken for a head.
    HeadOrBottom,
    /// Fifths are what is felt above, not what has gone down.
    Fifths,
    /// A transverse lie and a transverse position.
    LieOrPosition,
    /// A count of six seconds.
    ShortCount,
    /// Limbs on both sides: the back lies behind.
    LimbsBothSides,
    /// A deep head is called a breech.
    DeepHead,
    /// A low tape is excused by a low head.
    LowTape,
    /// A full bladder lifts the tape.
    FullBladder,
    /// A fibroid makes the tape unfit.
    Fibroid,
    /// A head that stands out on both sides alike is not bent forward.
    HeadStraight,
    /// The tape began at the wrong edge.
    TapeEdge,
    /// The mother's pulse was counted.
    WhoseHeart,
    /// Fewer movements, soothed by a Doppler.
    FewerMovements,
    /// Bottom down near term.
    BottomDown,
    /// Bottom down or across while there is room to turn.
    EarlyWeeks,
    /// A head bent right back.
    FaceLeads,
    /// A head bent back half way.
    BrowLeads,
    /// A heart below the navel of a baby that is bottom down.
    HeartTooLow,
    /// A position from one grip.
    OneGrip,
    /// Limbs on the side of the back.
    LimbsAgainst,
    /// A heart far from the back.
    HeartAgainst,
    /// A heart above the navel of a baby that is head down.
    HeartTooHigh,
    /// A dip at the navel over a back that lies in front.
    DipAgainst,
    /// Fifths of a head that is not over the brim.
    EngagedAcross,
    /// Hands cannot tell: a scan does.
    CannotTell,
}

/// What a lesson adds to the findings.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Told {
    /// Values for its sentences.
    pub values: Vec<(&'static str, String)>,
    /// Findings that the story tells in other words: not shown, but in the visit file.
    pub hidden: Vec<&'static str>,
    /// The finding that does not go with the others.
    pub planted: Option<&'static str>,
}

impl Told {
    fn with(mut self, name: &'static str, value: impl ToString) -> Self {
        self.values.push((name, value.to_string()));
        self
    }
    fn hiding(mut self, keys: &[&'static str]) -> Self {
        self.hidden.extend(keys);
        self
    }
    fn planting(mut self, key: &'static str) -> Self {
        self.planted = Some(key);
        self
    }
}

/// A baby and its visit.
pub(super) type Made = (Truth, Visit, Told);

const HEAD_DOWN: [u8; 4] = [1, 2, 6, 7];
/// The same, and with the back to a side behind.
const HEAD_DOWN_ALL: [u8; 6] = [1, 2, 3, 5, 6, 7];
const TO_A_SIDE: [u8; 2] = [2, 6];

impl Lesson {
    /// Its name in message ids.
    pub fn name(self) -> &'static str {
        match self {
            Lesson::HerSides => "her-sides",
            Lesson::HeadOrBottom => "head-or-bottom",
            Lesson::Fifths => "fifths",
            Lesson::LieOrPosition => "lie-or-position",
            Lesson::ShortCount => "short-count",
            Lesson::LimbsBothSides => "limbs-both-sides",
            Lesson::DeepHead => "deep-head",
            Lesson::LowTape => "low-tape",
            Lesson::FullBladder => "full-bladder",
            Lesson::Fibroid => "fibroid",
            Lesson::HeadStraight => "head-straight",
            Lesson::TapeEdge => "tape-edge",
            Lesson::WhoseHeart => "whose-heart",
            Lesson::FewerMovements => "fewer-movements",
            Lesson::BottomDown => "bottom-down",
            Lesson::EarlyWeeks => "early-weeks",
            Lesson::FaceLeads => "face-leads",
            Lesson::BrowLeads => "brow-leads",
            Lesson::HeartTooLow => "heart-too-low",
            Lesson::OneGrip => "one-grip",
            Lesson::LimbsAgainst => "limbs-against",
            Lesson::HeartAgainst => "heart-against",
            Lesson::HeartTooHigh => "heart-too-high",
            Lesson::DipAgainst => "dip-against",
            Lesson::EngagedAcross => "engaged-across",
            Lesson::CannotTell => "cannot-tell",
        }
    }

    /// A baby and a visit for it.
    pub(super) fn make(self, dice: &mut Dice) -> Result<Made, String> {
        match self {
            Lesson::HerSides => her_sides(dice),
            Lesson::HeadOrBottom => head_or_bottom(dice),
            Lesson::Fifths => fifths(dice),
            Lesson::LieOrPosition => lie_or_position(dice),
            Lesson::ShortCount => short_count(dice),
            Lesson::LimbsBothSides => limbs_both_sides(dice),
            Lesson::DeepHead => deep_head(dice),
            Lesson::LowTape => low_tape(dice),
            Lesson::FullBladder => full_bladder(dice),
            Lesson::Fibroid => fibroid(dice),
            Lesson::HeadStraight => head_straight(dice),
            Lesson::TapeEdge => tape_edge(dice),
            Lesson::WhoseHeart => whose_heart(dice),
            Lesson::FewerMovements => fewer_movements(dice),
            Lesson::BottomDown => bottom_down(dice),
            Lesson::EarlyWeeks => early_weeks(dice),
            Lesson::FaceLeads => bent_back(Denominator::Mentum, dice),
            Lesson::BrowLeads => bent_back(Denominator::Frontum, dice),
            Lesson::OneGrip => one_grip(dice),
            Lesson::LimbsAgainst
            | Lesson::HeartAgainst
            | Lesson::HeartTooHigh
            | Lesson::HeartTooLow
            | Lesson::DipAgainst => against(self, dice),
            Lesson::EngagedAcross => engaged_across(dice),
            Lesson::CannotTell => cannot_tell(dice),
        }
    }
}

fn lengthwise(denominator: Denominator, eighths: u8) -> Position {
    Position::Lengthwise { denominator, octant: Octant::new(eighths) }
}

fn weeks(low: u64, high: u64, dice: &mut Dice) -> Gestation {
    Gestation::from_days((dice.from(low, high) * 7 + dice.from(0, 6)) as u16)
}

/// Fifths as they are mostly felt at these weeks, before labour.
fn usual_fifths(weeks: Gestation, dice: &mut Dice) -> u8 {
    if weeks < Gestation::from_days(36 * 7) { dice.pick(&[4, 5]) } else { dice.pick(&[2, 3, 4]) }
}

/// Whether a back at this eighth lies towards her spine.
fn is_behind(eighth: u8) -> bool {
    (3..=5).contains(&eighth)
}

/// A baby that lies head down, with a back at one of these eighths.
fn head_down(backs: &[u8], dice: &mut Dice) -> Result<Truth, String> {
    let weeks = weeks(34, 39, dice);
    let back = dice.pick(backs);
    // A head back to back with her goes down late, and reads low: a case of its own.
    let fifths = if is_behind(back) { dice.pick(&[3, 4]) } else { usual_fifths(weeks, dice) };
    Truth::new(lengthwise(Denominator::Occiput, back), weeks, Some(fifths), Tape::Usual, dice)
}

/// A baby that lies across, at weeks when that is nothing rare.
fn across(dice: &mut Dice) -> Result<(Truth, MotherSide), String> {
    let head = dice.pick(&[MotherSide::Left, MotherSide::Right]);
    let position = Position::Crosswise { head, back_in_front: dice.from(0, 1) == 1 };
    let weeks = weeks(31, 35, dice);
    Ok((Truth::new(position, weeks, None, Tape::Usual, dice)?, head))
}

fn side(side: MotherSide) -> &'static str {
    match side {
        MotherSide::Left => "left",
        MotherSide::Right => "right",
    }
}

fn back_of(position: Position) -> Option<Back> {
    match position {
        Position::Lengthwise { .. } => position.back_octant().map(Octant::back),
        Position::Crosswise { back_in_front, .. } => Some(Back {
            side: None,
            turn: Some(if back_in_front { BackTurn::Front } else { BackTurn::Spine }),
        }),
    }
}

/// Everything that hands, ear and tape find of a baby.
fn visit(truth: &Truth, dice: &mut Dice) -> Visit {
    let mut visit = Visit::new(truth.weeks.to_string());
    visit.mother("movements", quoted("usual"));
    visit.mother("fundal-height", quoted(&format!("{} cm", truth.tape)));
    let place = |place: Place| quoted(&place.canonical());
    let (top, low) = if truth.is_head_down() { ("breech", "head") } else { ("head", "breech") };
    let pole = |key: &str, end: &str| match truth.position {
        Position::Crosswise { head, .. } => {
            let her = if key == "head" { head } else { head.opposite() };
            quoted(&format!("{} flank", side(her)))
        }
        Position::Lengthwise { .. } => {
            let what = if key == "head" { Feel::Head } else { Feel::Bottom };
            truth.pole(what).map_or_else(|| quoted(end), place)
        }
    };
    visit.baby(top, pole(top, "fundus"));
    if let Some(back) = back_of(truth.position) {
        visit.baby("back", quoted(&back.canonical()));
    }
    let limbs: Vec<String> = truth.limbs().iter().map(Canonical::canonical).collect();
    if !limbs.is_empty() {
        visit.baby("limbs", list(&limbs));
    }
    visit.baby(low, pole(low, "above pubic bone"));
    if let Some(fifths) = truth.fifths {
        visit.baby("head-above-brim", quoted(&format!("{fifths}/5")));
        let behind = truth.position.back_octant().is_some_and(|octant| is_behind(octant.get()));
        if (2..=4).contains(&fifths) && !behind {
            visit.baby("prominence", quoted("limb side"));
        }
    } else if matches!(truth.position, Position::Lengthwise { .. }) {
        visit.baby("descent", quoted(dice.pick(&["free", "at the brim"])));
    }
    if let Some(heart) = truth.heart() {
        visit.baby("heart", place(heart));
    }
    visit.baby("heart-with", quoted("Pinard horn"));
    counts(&mut visit, truth, &[15, 15], dice);
    visit
}

fn counts(visit: &mut Visit, truth: &Truth, seconds: &[u16], dice: &mut Dice) {
    let counted: Vec<String> =
        seconds.iter().map(|seconds| format!("{} in {seconds} s", truth.count(*seconds, dice))).collect();
    visit.baby("heart-counts", list(&counted));
}

/// Facing her, the examiner's right hand lies on her left.
fn hand_on(her: MotherSide) -> &'static str {
    side(her.opposite())
}

fn her_sides(dice: &mut Dice) -> Result<Made, String> {
    let truth = head_down(&HEAD_DOWN, dice)?;
    let mut visit = visit(&truth, dice);
    // Sides that would give the answer were not examined.
    visit.without(&["limbs", "heart", "prominence"]);
    let back = back_of(truth.position).ok_or("no back")?;
    let her = back.side.ok_or("a back without a side")?;
    let told = Told::default()
        .with("hand", hand_on(her))
        .with("side", side(her))
        .with("turn", if back.turn == Some(BackTurn::Front) { "front" } else { "lateral" })
        .with("position", truth.position.words())
        .hiding(&["back"]);
    Ok((truth, visit, told))
}

fn head_or_bottom(dice: &mut Dice) -> Result<Made, String> {
    let down = dice.from(0, 2) == 0;
    let truth = if down {
        head_down(&HEAD_DOWN, dice)?
    } else {
        // Before, a womb reaches so little above the navel that a heart is heard below it all the same.
        let (weeks, back) = (weeks(35, 38, dice), dice.pick(&HEAD_DOWN));
        Truth::new(lengthwise(Denominator::Sacrum, back), weeks, None, Tape::Usual, dice)?
    };
    let mut visit = visit(&truth, dice);
    // What would give the answer was not examined.
    visit.without(&["head-above-brim", "descent", "prominence", "heart"]);
    let told = Told::default().with("down", if down { "head" } else { "bottom" }).hiding(&["head", "breech"]);
    Ok((truth, visit, told))
}

fn fifths(dice: &mut Dice) -> Result<Made, String> {
    let right = dice.from(0, 2) == 0;
    let truth = head_down(&HEAD_DOWN_ALL, dice)?;
    let visit = visit(&truth, dice);
    let above = truth.fifths.unwrap_or_default();
    let told = Told::default()
        .with("right", if right { "yes" } else { "no" })
        .with("above", above)
        .with("below", 5_u8.saturating_sub(above))
        .with("engaged", if above <= 2 { "yes" } else { "no" });
    Ok((truth, visit, told))
}

fn lie_or_position(dice: &mut Dice) -> Result<Made, String> {
    if dice.from(0, 1) == 0 {
        let truth = head_down(&TO_A_SIDE, dice)?;
        let visit = visit(&truth, dice);
        return Ok((truth, visit, Told::default().with("lie", "lengthwise")));
    }
    let (truth, _) = across(dice)?;
    let visit = visit(&truth, dice);
    Ok((truth, visit, Told::default().with("lie", "across")))
}

fn short_count(dice: &mut Dice) -> Result<Made, String> {
    const SECONDS: u16 = 6;
    let truth = head_down(&HEAD_DOWN_ALL, dice)?;
    let mut visit = visit(&truth, dice);
    let beats = truth.count(SECONDS, dice);
    visit.baby("heart-counts", list(&[format!("{beats} in {SECONDS} s")]));
    let told = Told::default()
        .with("beats", beats)
        .with("rate", beats * 10)
        .with("low", beats * 10 - 10)
        .with("high", beats * 10 + 10);
    Ok((truth, visit, told))
}

fn limbs_both_sides(dice: &mut Dice) -> Result<Made, String> {
    let weeks = weeks(36, 39, dice);
    let fifths = dice.pick(&[3, 4]);
    let position = lengthwise(Denominator::Occiput, 4);
    let truth = Truth::new(position, weeks, Some(fifths), Tape::Usual, dice)?;
    let mut visit = visit(&truth, dice);
    visit.without(&["prominence"]);
    // That no back is found is a finding; that it lies behind is for the student to say.
    visit.baby("back", quoted("not felt"));
    let level = dice.pick(&["at navel", "below navel"]);
    visit.baby("limbs", list(&["right", "left"].map(|side| format!("{side}, {level}"))));
    visit.baby("dip-at-navel", quoted("yes"));
    Ok((truth, visit, Told::default()))
}

fn deep_head(dice: &mut Dice) -> Result<Made, String> {
    let (weeks, back) = (weeks(38, 40, dice), dice.pick(&HEAD_DOWN));
    let position = lengthwise(Denominator::Occiput, back);
    let truth = Truth::new(position, weeks, Some(1), Tape::Usual, dice)?;
    let mut visit = visit(&truth, dice);
    visit.without(&["head"]);
    Ok((truth, visit, Told::default()))
}

fn low_tape(dice: &mut Dice) -> Result<Made, String> {
    let (weeks, back, fifths) = (weeks(36, 39, dice), dice.pick(&HEAD_DOWN), dice.pick(&[1, 2]));
    let position = lengthwise(Denominator::Occiput, back);
    let truth = Truth::new(position, weeks, Some(fifths), Tape::At(-1.65 - 0.4 * dice.share()), dice)?;
    let visit = visit(&truth, dice);
    let told = Told::default().with("cm", truth.tape).with("fifths", fifths);
    Ok((truth, visit, told))
}

fn full_bladder(dice: &mut Dice) -> Result<Made, String> {
    let truth = head_down(&HEAD_DOWN_ALL, dice)?;
    let mut visit = visit(&truth, dice);
    let cm = truth.tape + dice.from(3, 4) as u16;
    // A tape over a full bladder is told, and not recorded.
    visit.without(&["fundal-height"]);
    Ok((truth, visit, Told::default().with("cm", cm).with("hours", dice.from(3, 5))))
}

fn fibroid(dice: &mut Dice) -> Result<Made, String> {
    let truth = head_down(&HEAD_DOWN_ALL, dice)?;
    let mut visit = visit(&truth, dice);
    let her = dice.pick(&[MotherSide::Left, MotherSide::Right]);
    visit.mother("lumps", list(&[format!("{}, above navel", side(her))]));
    visit.mother("fundal-height", quoted(&format!("{} cm", truth.tape + 2)));
    Ok((truth, visit, Told::default().with("side", side(her))))
}

fn head_straight(dice: &mut Dice) -> Result<Made, String> {
    let weeks = weeks(36, 39, dice);
    let (back, fifths) = (dice.pick(&[2, 3, 5, 6]), dice.pick(&[3, 4]));
    let position = lengthwise(Denominator::Occiput, back);
    let truth = Truth::new(position, weeks, Some(fifths), Tape::Usual, dice)?;
    let mut visit = visit(&truth, dice);
    visit.baby("prominence", quoted("level"));
    Ok((truth, visit, Told::default().hiding(&["prominence"])))
}

fn tape_edge(dice: &mut Dice) -> Result<Made, String> {
    // From the lower border the bone itself is measured too.
    const BONE: u16 = 4;
    let truth = head_down(&HEAD_DOWN_ALL, dice)?;
    let mut visit = visit(&truth, dice);
    let cm = truth.tape + BONE;
    // A tape from the wrong edge is told, and not recorded.
    visit.without(&["fundal-height"]);
    Ok((truth, visit, Told::default().with("cm", cm)))
}

fn whose_heart(dice: &mut Dice) -> Result<Made, String> {
    let mut truth = head_down(&HEAD_DOWN_ALL, dice)?;
    truth.pulse = dice.from(112, 119);
    truth.rate = truth.pulse as f64;
    let mut visit = visit(&truth, dice);
    visit.mother("pulse", truth.pulse.to_string());
    visit.baby("heart-with", quoted("Doppler"));
    let told = Told::default().with("pulse", truth.pulse).hiding(&["pulse"]);
    Ok((truth, visit, told))
}

fn fewer_movements(dice: &mut Dice) -> Result<Made, String> {
    let truth = head_down(&HEAD_DOWN_ALL, dice)?;
    let mut visit = visit(&truth, dice);
    visit.mother("movements", quoted("fewer"));
    visit.baby("heart-with", quoted("Doppler"));
    Ok((truth, visit, Told::default().hiding(&["movements"])))
}

/// A baby that lies bottom down between these weeks.
fn breech(low: u64, high: u64, dice: &mut Dice) -> Result<Truth, String> {
    let (weeks, back) = (weeks(low, high, dice), dice.pick(&HEAD_DOWN));
    Truth::new(lengthwise(Denominator::Sacrum, back), weeks, None, Tape::Usual, dice)
}

fn bottom_down(dice: &mut Dice) -> Result<Made, String> {
    let truth = breech(36, 38, dice)?;
    let visit = visit(&truth, dice);
    let told = Told::default().with("weeks", truth.weeks);
    Ok((truth, visit, told))
}

fn early_weeks(dice: &mut Dice) -> Result<Made, String> {
    let truth = if dice.from(0, 2) == 0 {
        let head = dice.pick(&[MotherSide::Left, MotherSide::Right]);
        let position = Position::Crosswise { head, back_in_front: dice.from(0, 1) == 1 };
        Truth::new(position, weeks(28, 30, dice), None, Tape::Usual, dice)?
    } else {
        breech(28, 31, dice)?
    };
    let visit = visit(&truth, dice);
    let lie = if matches!(truth.position, Position::Crosswise { .. }) { "across" } else { "bottom-down" };
    let told = Told::default().with("weeks", truth.weeks).with("lie", lie);
    Ok((truth, visit, told))
}

/// A head that is not bent forward, told by an examination from below.
fn bent_back(part: Denominator, dice: &mut Dice) -> Result<Made, String> {
    // Named by the chin or the brow, which lies opposite to the back.
    let (weeks, leads, fifths) = (weeks(38, 39, dice), dice.pick(&[2, 3, 5, 6]), dice.pick(&[3, 4]));
    let position = lengthwise(part, leads);
    let truth = Truth::new(position, weeks, Some(fifths), Tape::Usual, dice)?;
    let mut visit = visit(&truth, dice);
    let attitude = if part == Denominator::Mentum { "face" } else { "brow" };
    visit.baby("attitude", quoted(&format!("{attitude} (vaginal examination)")));
    visit.baby("prominence", quoted("back side"));
    let her = back_of(position).and_then(|back| back.side).ok_or("a back without a side")?;
    let told = Told::default()
        .with("side", side(her))
        .with("position", position.words())
        // The story tells what was met.
        .hiding(&["attitude"]);
    Ok((truth, visit, told))
}

fn one_grip(dice: &mut Dice) -> Result<Made, String> {
    let down = dice.from(0, 3) > 0;
    let truth = if down { head_down(&[1, 2, 3, 5, 6, 7], dice)? } else { breech(29, 38, dice)? };
    let mut visit = visit(&truth, dice);
    let taken = if down { "breech" } else { "head" };
    visit.without(&[taken, "limbs", "prominence", "heart", "heart-with", "heart-counts"]);
    let her = back_of(truth.position).and_then(|back| back.side).ok_or("a back without a side")?;
    visit.baby("back", quoted(side(her)));
    let part = if down { "O" } else { "S" };
    let code = format!("{}{part}A", if her == MotherSide::Left { "L" } else { "R" });
    Ok((truth, visit, Told::default().with("code", code).with("side", side(her))))
}

/// One finding that does not go with the others.
fn against(lesson: Lesson, dice: &mut Dice) -> Result<Made, String> {
    // Only over a back that lies well in front is a dip out of place.
    let backs: &[u8] = if lesson == Lesson::DipAgainst { &[1, 7] } else { &HEAD_DOWN };
    let bottom_down = match lesson {
        Lesson::HeartTooLow => true,
        Lesson::LimbsAgainst | Lesson::HeartAgainst => dice.from(0, 2) == 0,
        _ => false,
    };
    // Before, a womb reaches so little above the navel that every heart is heard below it.
    let truth = if bottom_down { breech(34, 38, dice)? } else { head_down(backs, dice)? };
    let mut visit = visit(&truth, dice);
    let her = back_of(truth.position).and_then(|back| back.side).ok_or("a back without a side")?;
    let other = side(her.opposite());
    let (key, value) = match lesson {
        Lesson::LimbsAgainst => {
            let level = dice.pick(&["above navel", "at navel", "below navel"]);
            if bottom_down {
                // Only one finding is out of place.
                visit.baby("heart", quoted(&format!("{}, at navel", side(her))));
            }
            ("limbs", list(&[format!("{}, {level}", side(her))]))
        }
        Lesson::HeartTooHigh => ("heart", quoted(&format!("{}, above navel", side(her)))),
        Lesson::HeartTooLow => ("heart", quoted(&format!("{}, below navel", side(her)))),
        Lesson::DipAgainst => ("dip-at-navel", quoted("yes")),
        _ if bottom_down => ("heart", quoted(&format!("{other}, above navel"))),
        _ => ("heart", quoted(&format!("{other}, below navel"))),
    };
    visit.baby(key, value);
    Ok((truth, visit, Told::default().with("side", side(her)).planting(key)))
}

fn engaged_across(dice: &mut Dice) -> Result<Made, String> {
    let (truth, head) = across(dice)?;
    let mut visit = visit(&truth, dice);
    visit.baby("head-above-brim", quoted("2/5"));
    Ok((truth, visit, Told::default().with("side", side(head)).planting("head-above-brim")))
}

fn cannot_tell(dice: &mut Dice) -> Result<Made, String> {
    let truth = head_down(&HEAD_DOWN_ALL, dice)?;
    let mut visit = visit(&truth, dice);
    visit.without(&["limbs", "head-above-brim", "prominence"]);
    visit.mother("tape-unfit", list(&["BMI 35 or more".to_owned()]));
    for key in ["breech", "back", "head"] {
        visit.baby(key, quoted("could not tell (thick wall)"));
    }
    visit.baby("heart-with", quoted("Doppler"));
    Ok((truth, visit, Told::default()))
}
