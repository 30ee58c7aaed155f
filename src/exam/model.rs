//! What was found, resolved: no units to convert, no words to look up.
//!
//! In: nothing; these are the types. Out: `Exam`, read by body, reckon, sheet and chart.
//! Every side is the mother's. What was not examined is `Finding::NotExamined`, never a guess.

mod felt;
mod labour;
mod signs;

pub use felt::{BesidePulse, ByVagina, Listener, PoleFeel, Quality, Size, Slows, Station, Turning};
pub use labour::{HeightForDates, Hours, Labour, Lasting, Placentas, Strength, Tally, Tone, WaterColour};
pub use signs::{
    Bladder, BloodPressure, Build, Comfort, Consent, GroupBStrep, Hernia, MuscleGap, RhesusD, ScarFeel,
    Temperature, UrineProtein,
};

use crate::units::{Centimetres, Gestation, Grams, MotherSide};
use jiff::civil::Date;

/// One finding with its state.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Finding<T> {
    /// Left out of the exam: not examined.
    #[default]
    NotExamined,
    /// Looked for and absent: `not felt`, `not heard`.
    Absent,
    /// Not tried: `not listened`, `not asked`.
    NotTried,
    /// Tried, could not tell; with the reason given in brackets.
    CouldNotTell {
        /// The words in the brackets.
        reason: Option<String>,
    },
    /// Found.
    Found(Found<T>),
}

/// A value with how sure it is and how it is known.
#[derive(Clone, Debug, PartialEq)]
pub struct Found<T> {
    /// The value.
    pub value: T,
    /// False when it was written with a trailing `?`.
    pub sure: bool,
    /// By hand unless said otherwise.
    pub known_by: KnownBy,
}

/// How a finding is known.
#[derive(Clone, Debug, PartialEq)]
pub enum KnownBy {
    /// By palpation, listening, tape or asking.
    Hands,
    /// By a scan; with the words after `scan`, such as `20+3`.
    Scan(Option<String>),
    /// By a vaginal examination.
    VaginalExamination,
}

impl<T> Finding<T> {
    /// The value, if there is one.
    pub fn value(&self) -> Option<&T> {
        match self {
            Finding::Found(found) => Some(&found.value),
            Finding::NotExamined | Finding::Absent | Finding::NotTried | Finding::CouldNotTell { .. } => None,
        }
    }
    /// True when there is a value written with `?`.
    pub fn is_unsure(&self) -> bool {
        matches!(self, Finding::Found(f) if !f.sure)
    }
}

/// Left-right part of a place on the abdomen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Across {
    /// Her side, between midline and flank.
    Side(MotherSide),
    /// The midline.
    Middle,
    /// Her flank, far out at the side.
    Flank(MotherSide),
    /// Measured from the midline towards a side.
    Measured(MotherSide, Centimetres),
}

/// Up-down part of a place on the abdomen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Height {
    /// At the top of the womb.
    Fundus,
    /// Above the navel.
    AboveNavel,
    /// At the navel.
    AtNavel,
    /// Below the navel.
    BelowNavel,
    /// Low at the side, in the iliac fossa.
    IliacFossa,
    /// Just above the pubic bone.
    AbovePubicBone,
    /// Measured along the skin, above the navel (negative: below it), in cm.
    FromNavel(f64),
    /// Measured along the skin, above the upper border of the pubic bone.
    FromPubicBone(Centimetres),
}

/// A place on the abdomen; a part that was not said is `None`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// Left-right.
    pub across: Option<Across>,
    /// Up-down.
    pub height: Option<Height>,
}

impl Place {
    /// Her side on which it lies; `None` in the middle or not said.
    pub fn side(&self) -> Option<MotherSide> {
        match self.across? {
            Across::Side(side) | Across::Flank(side) | Across::Measured(side, _) => Some(side),
            Across::Middle => None,
        }
    }
}

/// Which way the back is turned, apart from the side.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BackTurn {
    /// Towards her front.
    Front,
    /// Square to the side.
    Lateral,
    /// Towards her spine.
    Spine,
    /// Crosswise lie: towards her ribs.
    Ribs,
    /// Crosswise lie: towards her feet.
    Feet,
}

/// Where the baby's back was felt. `side` alone: only the side is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Back {
    /// Her side on which the back lies; `None` in the middle or not said.
    pub side: Option<MotherSide>,
    /// Which way it is turned; `None` when only the side is known.
    pub turn: Option<BackTurn>,
}

/// Fifths of the head palpable above the brim, 0 to 5.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Fifths(u8);

impl Fifths {
    /// `None` above 5.
    pub const fn new(k: u8) -> Option<Self> {
        if k <= 5 { Some(Self(k)) } else { None }
    }
    /// The number of fifths.
    pub const fn get(self) -> u8 {
        self.0
    }
}

/// Descent in words, for a breech or a head not felt in fifths.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Descent {
    /// Free above the brim.
    Free,
    /// At the brim.
    AtBrim,
    /// Dipping into the brim.
    Dipping,
    /// Fixed in the brim.
    Fixed,
    /// Deep in the pelvis.
    Deep,
    /// Said to be engaged, without fifths; heads only.
    Engaged,
}

/// The side on which the head stands out in the fourth grip.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Prominence {
    /// On the side of the limbs: a flexed head.
    LimbSide,
    /// On the side of the back: an extended head.
    BackSide,
    /// On neither.
    Level,
}

/// How far the head is bent.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Attitude {
    /// Chin on chest.
    Flexed,
    /// Straight.
    Deflexed,
    /// Half extended: the brow leads.
    Brow,
    /// Fully extended: the face leads.
    Face,
}

/// How the legs lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Legs {
    /// Hips bent, knees straight.
    Frank,
    /// Hips and knees bent.
    Complete,
    /// One foot or both below the bottom. Sides here are the baby's.
    Footling(Footling),
}

/// Which of the baby's feet lead.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Footling {
    /// The baby's left foot.
    Left,
    /// The baby's right foot.
    Right,
    /// Both.
    Both,
    /// One or both: which is not told.
    Untold,
}

/// Where the heart was heard.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum HeartHeard {
    /// Heard; the place was not noted.
    Somewhere,
    /// Heard best here.
    At(Place),
}

/// What the heart was listened to with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ListenedWith {
    /// A Pinard horn.
    PinardHorn,
    /// A fetoscope.
    Fetoscope,
    /// A Doppler.
    Doppler,
}

/// One count of heartbeats.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct HeartCount {
    /// Beats counted.
    pub beats: u16,
    /// In this many seconds.
    pub seconds: u16,
}

/// A rate in beats a minute, `low` = `high` for a single number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rate {
    /// Lowest.
    pub low: u16,
    /// Highest.
    pub high: u16,
}

/// The heart's rhythm as heard.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rhythm {
    /// Regular.
    Regular,
    /// Irregular.
    Irregular,
}

/// A weight or a range of weights, `low` = `high` for a single number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeightRange {
    /// Lowest.
    pub low: Grams,
    /// Highest.
    pub high: Grams,
}

/// A weight read from a scan, with the weeks at which it was made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScanWeight {
    /// The estimate.
    pub weight: Grams,
    /// Weeks at the scan, if noted.
    pub at: Option<Gestation>,
}

/// The lie: how the baby's long axis runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lie {
    /// Up and down.
    Longitudinal,
    /// Slanting.
    Oblique,
    /// Crosswise.
    Transverse,
}

/// What lies lowest.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Presentation {
    /// Head, attitude not named or flexed.
    Cephalic,
    /// Head, face leading.
    Face,
    /// Head, brow leading.
    Brow,
    /// Bottom or feet.
    Breech,
    /// Shoulder of a crosswise baby.
    Shoulder,
}

/// The part by which a position is named.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Denominator {
    /// Back of the head (vertex).
    Occiput,
    /// Sacrum (breech).
    Sacrum,
    /// Chin (face).
    Mentum,
    /// Brow.
    Frontum,
}

/// Where the denominator points: eighths of a turn from her front towards her left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Octant(u8);

impl Octant {
    /// 0 = front (A), 1 = left front (LA), 2 = left (LT), 3 = left behind (LP), 4 = behind (P), 5 = right behind (RP),
    /// 6 = right (RT), 7 = right front (RA). Taken modulo 8.
    pub const fn new(eighths: u8) -> Self {
        Self(eighths % 8)
    }
    /// Eighths of a turn from her front towards her left.
    pub const fn get(self) -> u8 {
        self.0
    }
    /// Degrees from her front towards her left.
    pub fn degrees(self) -> f32 {
        f32::from(self.0) * 45.0
    }
}

/// A named position.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Position {
    /// Head or bottom down, such as LOA, RSP, LMA, FA.
    Lengthwise {
        /// By which part it is named.
        denominator: Denominator,
        /// Where that part points.
        octant: Octant,
    },
    /// Crosswise: the acromion, so the head, on her `head` side; the back to her front or behind.
    Crosswise {
        /// Her side on which the head lies.
        head: MotherSide,
        /// True: back to her front (dorso-anterior).
        back_in_front: bool,
    },
}

/// What the mother says of the movements.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Movements {
    /// As usual.
    Usual,
    /// Fewer than usual.
    Fewer,
    /// Different from usual.
    Changed,
    /// None.
    None,
    /// Felt; the pattern was not asked.
    Felt,
    /// Not felt yet, before 24 weeks.
    NotFeltYet,
}

/// The shape of the abdomen as looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// Long.
    Long,
    /// Wide.
    Wide,
    /// Slanting.
    Slanting,
}

/// How the womb feels.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WombFeel {
    /// Soft.
    Soft,
    /// Tightening now and then.
    Tightening,
    /// Hard.
    Hard,
    /// Tender.
    Tender,
    /// Tense.
    Tense,
    /// Hard as a board, or woody.
    BoardLike,
}

/// The amount of water as felt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Water {
    /// Normal.
    Normal,
    /// Much.
    Much,
    /// Little.
    Little,
}

/// Why a tape cannot be read against a chart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TapeUnfit {
    /// Body mass index of 35 or more.
    LargeBuild,
    /// Fibroids.
    Fibroids,
    /// Much water.
    MuchWater,
    /// More than one baby.
    Twins,
    /// A crosswise or oblique lie.
    Crosswise,
}

/// A scar on the skin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scar {
    /// Low and across.
    LowTransverse,
    /// Up and down in the midline.
    Midline,
    /// Right lower, of an appendix operation.
    RightLower,
    /// Small scars of keyhole surgery.
    Keyhole,
}

/// An operation on the womb.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Operation {
    /// Caesarean.
    Caesarean,
    /// Removal of fibroids.
    Myomectomy,
}

/// How the womb was cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WombCut {
    /// Low transverse.
    LowTransverse,
    /// Vertical.
    Vertical,
    /// In the shape of a T, upright or turned over.
    TShaped,
    /// In the shape of a J.
    JShaped,
    /// Not known.
    NotKnown,
}

/// A mark of the skin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SkinMark {
    /// Linea nigra.
    LineaNigra,
    /// Striae.
    Striae,
    /// A rash.
    Rash,
}

/// What she reports.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Report {
    /// Bleeding.
    Bleeding,
    /// Waters broken.
    WatersBroken,
    /// Itching.
    Itching,
    /// Constant pain.
    ConstantPain,
    /// Tightenings.
    Tightenings,
    /// Pain at the scar.
    ScarPain,
    /// Headache.
    Headache,
    /// Changes in sight.
    SightChanges,
    /// Fever.
    Fever,
    /// Swelling of face or hands.
    Swelling,
    /// Fits.
    Fits,
    /// Chest pain.
    ChestPain,
    /// Trouble breathing.
    TroubleBreathing,
    /// Tightenings that are regular or painful.
    RegularTightenings,
    /// Practice tightenings alone.
    PracticeTightenings,
    /// A headache that is severe or lasts.
    SevereHeadache,
    /// Pain under the ribs.
    PainUnderRibs,
    /// Vomiting.
    Vomiting,
    /// Burning when she passes urine.
    BurningUrine,
    /// Pain in the loin.
    LoinPain,
    /// A show.
    Show,
    /// A collapse.
    Collapse,
    /// Cold and clammy.
    ColdClammy,
    /// Faint.
    Faint,
    /// Faint only when she lies flat.
    FaintLyingFlat,
    /// A blow, a fall or a crash.
    BlowOrFall,
    /// A swollen or painful calf.
    SwollenCalf,
    /// Violence; for the examiner alone.
    Violence,
    /// Thoughts of harming herself; for the examiner alone.
    SelfHarm,
}

/// Where the placenta lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Placenta {
    /// On the front wall.
    Front,
    /// On the back wall.
    Rear,
    /// High.
    High,
    /// Low.
    Low,
}

/// How she lay.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Posture {
    /// Flat on her back.
    Flat,
    /// Tilted to a side.
    Tilt(MotherSide),
    /// Half sitting.
    HalfSitting,
    /// Sitting.
    Sitting,
}

/// Level of the top of the womb in words.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FundusLevel {
    /// Not above the pubic bone.
    NotAbovePubicBone,
    /// Just above the pubic bone.
    JustAbovePubicBone,
    /// Halfway from pubic bone to navel.
    HalfwayToNavel,
    /// Finger-breadths below the navel.
    FingersBelowNavel(u8),
    /// At the navel.
    AtNavel,
    /// Finger-breadths above the navel.
    FingersAboveNavel(u8),
    /// Halfway from navel to xiphoid.
    HalfwayToXiphoid,
    /// Finger-breadths below the xiphoid.
    FingersBelowXiphoid(u8),
    /// At the xiphoid.
    AtXiphoid,
}

/// An earlier tape.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EarlierTape {
    /// Weeks when it was laid.
    pub at: Gestation,
    /// What it said.
    pub height: Centimetres,
}

/// What was found of the mother; by default nothing was examined.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Mother {
    /// Tape: upper border of the pubic bone to the top of the womb, along the curve.
    pub fundal_height: Finding<Centimetres>,
    /// Girth at the navel.
    pub girth: Finding<Centimetres>,
    /// Height of the navel above the pubic bone, along the skin.
    pub navel: Finding<Centimetres>,
    /// Level of the top of the womb in words.
    pub fundus: Finding<FundusLevel>,
    /// Shape of the abdomen.
    pub shape: Finding<Vec<Shape>>,
    /// How the womb feels.
    pub womb: Finding<Vec<WombFeel>>,
    /// Amount of water.
    pub water: Finding<Water>,
    /// Places of fibroids.
    pub lumps: Finding<Vec<Place>>,
    /// Why the tape cannot be read against a chart.
    pub tape_unfit: Finding<Vec<TapeUnfit>>,
    /// Scars on the skin.
    pub scars: Finding<Vec<Scar>>,
    /// Operations on the womb.
    pub operations: Finding<Vec<Operation>>,
    /// How the womb was cut; never inferred from the skin.
    pub womb_cut: Finding<WombCut>,
    /// Marks of the skin.
    pub skin: Finding<Vec<SkinMark>>,
    /// What she says of the movements.
    pub movements: Finding<Movements>,
    /// What she reports.
    pub reports: Finding<Vec<Report>>,
    /// Asked, and not so.
    pub denies: Finding<Vec<Report>>,
    /// Her pulse, beats a minute.
    pub pulse: Finding<u16>,
    /// Where the placenta lies.
    pub placenta: Finding<Placenta>,
    /// Births before this one.
    pub births_before: Finding<u8>,
    /// How she lay.
    pub posture: Finding<Posture>,
    /// Earlier tapes, oldest first.
    pub earlier_tapes: Finding<Vec<EarlierTape>>,
    /// Pregnancies, this one included.
    pub gravida: Finding<u8>,
    /// Whether the womb tore before.
    pub rupture_before: Finding<bool>,
    /// How many placentas two babies have.
    pub placentas: Finding<Placentas>,
    /// The D antigen of her blood.
    pub rhesus_d: Finding<RhesusD>,
    /// Whether group B strep was found in this pregnancy.
    pub group_b_strep: Finding<GroupBStrep>,
    /// Whether she is in labour.
    pub labour: Finding<Labour>,
    /// Hours since the waters broke.
    pub hours_since_broken: Finding<Hours>,
    /// Colour and smell of water that has come.
    pub water_colour: Finding<Vec<WaterColour>>,
    /// Her consent to the examination.
    pub consent: Finding<Consent>,
    /// How the examination was for her.
    pub comfort: Finding<Comfort>,
    /// Her build as looked at.
    pub build: Finding<Build>,
    /// How a scar of the skin looks and feels.
    pub scar_feel: Finding<Vec<ScarFeel>>,
    /// A gap between the straight muscles.
    pub muscle_gap: Finding<MuscleGap>,
    /// Where a hernia was found.
    pub hernia: Finding<Vec<Hernia>>,
    /// Her bladder.
    pub bladder: Finding<Bladder>,
    /// Her temperature.
    pub temperature: Finding<Temperature>,
    /// Her blood pressure.
    pub blood_pressure: Finding<BloodPressure>,
    /// Her breaths a minute.
    pub breathing: Finding<u16>,
    /// Protein in the urine by a strip.
    pub urine_protein: Finding<UrineProtein>,
    /// Contractions in ten minutes.
    pub contractions_in_ten: Finding<Tally>,
    /// How long contractions last.
    pub contraction_length: Finding<Lasting>,
    /// How strong contractions feel.
    pub contraction_strength: Finding<Strength>,
    /// The womb between contractions.
    pub tone_at_rest: Finding<Tone>,
    /// Where the womb is tender.
    pub tender_at: Finding<Vec<Place>>,
    /// The height of the womb against the dates, in words.
    pub height_for_dates: Finding<HeightForDates>,
}

/// What was found of one baby; by default nothing was examined.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Baby {
    /// Where the head was felt.
    pub head: Finding<Place>,
    /// Where the bottom was felt.
    pub breech: Finding<Place>,
    /// Where the back was felt.
    pub back: Finding<Back>,
    /// Where limbs were felt.
    pub limbs: Finding<Vec<Place>>,
    /// Fifths of the head palpable above the brim.
    pub head_above_brim: Finding<Fifths>,
    /// Descent in words.
    pub descent: Finding<Descent>,
    /// Side on which the head stands out in the fourth grip.
    pub prominence: Finding<Prominence>,
    /// How far the head is bent.
    pub attitude: Finding<Attitude>,
    /// How the legs lie.
    pub legs: Finding<Legs>,
    /// A dip at the navel (a back towards her spine).
    pub dip_at_navel: Finding<bool>,
    /// Where the heart was heard.
    pub heart: Finding<HeartHeard>,
    /// What it was listened to with.
    pub heart_with: Finding<ListenedWith>,
    /// Counts of heartbeats.
    pub heart_counts: Finding<Vec<HeartCount>>,
    /// Rate in beats a minute.
    pub heart_rate: Finding<Rate>,
    /// Highest rate on movement.
    pub heart_rise: Finding<u16>,
    /// Rhythm.
    pub heart_rhythm: Finding<Rhythm>,
    /// Weight judged by hand.
    pub weight_by_hand: Finding<WeightRange>,
    /// Weight by an earlier scan.
    pub weight_by_scan: Finding<ScanWeight>,
    /// Whether the baby moved under the hands.
    pub moved_under_hands: Finding<bool>,
    /// How what lies in the fundus feels.
    pub fundus_feels: Finding<Vec<PoleFeel>>,
    /// How what lies above the brim feels.
    pub brim_feels: Finding<Vec<PoleFeel>>,
    /// Whether the head can be ballotted.
    pub ballottable: Finding<bool>,
    /// Whether the head overlaps the pubic bone.
    pub overlaps_pubic_bone: Finding<bool>,
    /// What was found in the vagina, or seen at it.
    pub by_vagina: Finding<Vec<ByVagina>>,
    /// Station of the lowest part, by the vagina; never fifths.
    pub station: Finding<Station>,
    /// Size as judged by hand.
    pub size: Finding<Size>,
    /// Where kicks are felt.
    pub kicks: Finding<Vec<Place>>,
    /// Hiccups.
    pub hiccups: Finding<bool>,
    /// Whether the lie keeps changing.
    pub unstable_lie: Finding<bool>,
    /// What came of turning the baby by hand.
    pub turning: Finding<Turning>,
    /// Other places where the heart was heard.
    pub heart_also: Finding<Vec<Place>>,
    /// How the heart sounds.
    pub heart_quality: Finding<Quality>,
    /// When the heart was heard to slow.
    pub heart_slows: Finding<Vec<Slows>>,
    /// Who listened.
    pub heart_by: Finding<Vec<Listener>>,
    /// The heart and her pulse, felt and heard together.
    pub heart_and_pulse: Finding<BesidePulse>,
    /// Lie as the examiner concluded.
    pub lie: Finding<Lie>,
    /// Presentation as the examiner concluded.
    pub presentation: Finding<Presentation>,
    /// Position as the examiner concluded.
    pub position: Finding<Position>,
}

/// The dates of an exam, as they were given; all may be left out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Dates {
    /// The day of the visit.
    pub visit: Option<Date>,
    /// The due date as given.
    pub due: Option<Date>,
    /// First day of the last period.
    pub last_period: Option<Date>,
    /// Days of the cycle.
    pub cycle: Option<u16>,
    /// Weeks that a scan measured, and its day.
    pub scan: Option<(Gestation, Date)>,
}

/// One visit's findings.
#[derive(Clone, Debug, PartialEq)]
pub struct Exam {
    /// Weeks at the visit, given or worked out from dates.
    pub weeks: Option<Gestation>,
    /// The dates they were worked out from, or that stand beside them.
    pub dates: Dates,
    /// What was found of the mother.
    pub mother: Mother,
    /// The babies, in the order of the file; at least one.
    pub babies: Vec<Baby>,
    /// Free words for the chart only.
    pub note: Option<String>,
    /// Every finding as it is read, in canonical words, in the order of the file: key (such as
    /// `mother.fundal-height`, `baby.1.back`), then the words.
    pub read: Vec<(String, String)>,
}

/// What follows from the direct findings of one baby: head, breech, back, or a given position.
#[derive(Clone, Debug, PartialEq)]
pub struct Conclusion {
    /// The lie.
    pub lie: Option<Lie>,
    /// The presentation.
    pub presentation: Option<Presentation>,
    /// The named position.
    pub position: Option<Position>,
    /// Her side on which the head lies, for a crosswise or oblique lie.
    pub head_side: Option<MotherSide>,
    /// True when the head is up: breech, or an oblique lie with the bottom lower.
    pub head_up: Option<bool>,
    /// Where the back is: as felt, or as the given position says.
    pub back: Option<Back>,
    /// Engaged: said of a flexed head only, 2/5 or less palpable.
    pub engaged: Option<bool>,
    /// True when any finding it rests on was written with `?`.
    pub unsure: bool,
    /// Pairs of findings that cannot both be right (keys), with a message id.
    pub conflicts: Vec<Conflict>,
}

/// Findings that cannot all be right together.
#[derive(Clone, Debug, PartialEq)]
pub struct Conflict {
    /// Stable id, such as `head-in-two-places`.
    pub id: &'static str,
    /// The findings' keys.
    pub findings: Vec<String>,
}
