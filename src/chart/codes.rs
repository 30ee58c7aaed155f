//! Codes that may be sent to anyone. In: values of the model. Out: a code of LOINC, of the SNOMED CT Global Patient Set, or one
//! of our own.
//!
//! Source of each: the codes table (tests/published/codes.csv has the rows that are used). What has no code there that is free
//! to send has a local one, and always its text.

use crate::exam::{Across, Denominator, Footling, Height, Legs, Lie, Place, Position, Presentation};
use crate::units::MotherSide;

/// LOINC.
pub const LOINC: &str = "http://loinc.org";
/// SNOMED CT; only concepts of the Global Patient Set are sent.
pub const SNOMED: &str = "http://snomed.info/sct";
/// Units.
pub const UCUM: &str = "http://unitsofmeasure.org";
/// Codes of our own. Frozen: it never changes, and a code once given keeps its meaning.
pub const LOCAL: &str = "urn:oid:2.25.275486125009298249527666222286125920191";

/// A code and its system.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Code {
    /// The system's address.
    pub system: &'static str,
    /// The code.
    pub code: &'static str,
}

const fn loinc(code: &'static str) -> Code {
    Code { system: LOINC, code }
}
const fn snomed(code: &'static str) -> Code {
    Code { system: SNOMED, code }
}
const fn local(code: &'static str) -> Code {
    Code { system: LOCAL, code }
}

/// Weeks at the visit.
pub const WEEKS: Code = loinc("11884-4");
/// The tape.
pub const FUNDAL_HEIGHT: Code = loinc("11881-0");
/// The heart's rate, listened to.
pub const HEART_RATE: Code = loinc("57068-9");
/// What leads, as felt.
pub const PRESENTATION: Code = loinc("11876-0");
/// The position.
pub const POSITION: Code = loinc("72155-5");
/// Weight judged by hand.
pub const WEIGHT_BY_HAND: Code = loinc("57067-1");
/// Findings of the abdomen, in words: the scars.
pub const ABDOMEN: Code = loinc("8694-2");
/// The whole visit.
pub const PANEL: Code = loinc("57061-4");
/// The lie.
pub const LIE: Code = local("fetal-lie");
/// Fifths of the head.
pub const FIFTHS: Code = local("fifths-palpable-above-brim");
/// The picture.
pub const PICTURE: Code = local("position-picture");
/// By hand.
pub const PALPATION: Code = snomed("113011001");
/// Looked for, and absent.
pub const NOT_FOUND: Code = local("looked-for-and-absent");

/// The code of a lie.
pub fn lie(lie: Lie) -> Code {
    match lie {
        Lie::Longitudinal => local("lie-longitudinal"),
        Lie::Oblique => snomed("63750008"),
        Lie::Transverse => snomed("73161006"),
    }
}

/// The code of a presentation. Standards use the vertex code for a head that is down.
pub fn presentation(presentation: Presentation) -> Code {
    match presentation {
        Presentation::Cephalic => snomed("70028003"),
        Presentation::Face => snomed("21882006"),
        Presentation::Brow => snomed("8014007"),
        Presentation::Breech => snomed("6096002"),
        Presentation::Shoulder => snomed("23954006"),
    }
}

/// The code of how the legs of a breech lie.
pub fn legs(legs: Legs) -> Code {
    match legs {
        Legs::Frank => snomed("18559007"),
        Legs::Complete => snomed("49168004"),
        Legs::Footling(Footling::Left | Footling::Right | Footling::Both | Footling::Untold) => {
            snomed("249097002")
        }
    }
}

/// Vertex and breech by eighths of a turn from her front towards her left; left sacro-posterior is not in the set.
const OCCIPUT: [&str; 8] =
    ["90381008", "11409005", "18905000", "31477000", "37235006", "36547009", "37040008", "39889007"];
const SACRUM: [Option<&str>; 8] = [
    Some("79888005"),
    Some("64433002"),
    Some("54486001"),
    None,
    Some("58261003"),
    Some("112073004"),
    Some("89550007"),
    Some("79643007"),
];
/// Face and brow positions have local codes, spelled out: LMP would also mean last period.
const MENTUM: [&str; 8] = [
    "mento-anterior",
    "left-mento-anterior",
    "left-mento-transverse",
    "left-mento-posterior",
    "mento-posterior",
    "right-mento-posterior",
    "right-mento-transverse",
    "right-mento-anterior",
];
const FRONTUM: [&str; 8] = [
    "fronto-anterior",
    "left-fronto-anterior",
    "left-fronto-transverse",
    "left-fronto-posterior",
    "fronto-posterior",
    "right-fronto-posterior",
    "right-fronto-transverse",
    "right-fronto-anterior",
];

/// The code of a position.
pub fn position(position: Position) -> Code {
    match position {
        Position::Lengthwise { denominator, octant } => {
            let at = usize::from(octant.get());
            match denominator {
                Denominator::Occiput => snomed(OCCIPUT[at]),
                Denominator::Sacrum => SACRUM[at].map_or(local("left-sacro-posterior"), snomed),
                Denominator::Mentum => local(MENTUM[at]),
                Denominator::Frontum => local(FRONTUM[at]),
            }
        }
        Position::Crosswise { head: MotherSide::Left, back_in_front: true } => {
            local("left-acromion-dorso-anterior")
        }
        Position::Crosswise { head: MotherSide::Left, back_in_front: false } => {
            local("left-acromion-dorso-posterior")
        }
        Position::Crosswise { head: MotherSide::Right, back_in_front: true } => {
            local("right-acromion-dorso-anterior")
        }
        Position::Crosswise { head: MotherSide::Right, back_in_front: false } => {
            local("right-acromion-dorso-posterior")
        }
    }
}

/// Up to this distance from the midline a measured place has no side, cm: as in the conclusions.
const MIDDLE_CM: f64 = 2.0;

/// The code of the site where a heart was heard; `None` where none says just that.
pub fn site(place: &Place) -> Option<Code> {
    let side = match place.across? {
        Across::Middle => None,
        Across::Measured(_, cm) if cm.get() <= MIDDLE_CM => return None,
        Across::Side(side) | Across::Flank(side) | Across::Measured(side, _) => Some(side),
    };
    let above = match place.height? {
        Height::AboveNavel => true,
        Height::BelowNavel | Height::IliacFossa => false,
        Height::FromNavel(cm) if cm > 0.0 => true,
        Height::FromNavel(cm) if cm < 0.0 => false,
        Height::AtNavel | Height::FromNavel(_) => return side.is_none().then_some(snomed("90290004")),
        Height::AbovePubicBone => return side.is_none().then_some(snomed("11708003")),
        Height::Fundus | Height::FromPubicBone(_) => return None,
    };
    match (side, above) {
        (Some(MotherSide::Left), true) => Some(snomed("86367003")),
        (Some(MotherSide::Left), false) => Some(snomed("68505006")),
        (Some(MotherSide::Right), true) => Some(snomed("50519007")),
        (Some(MotherSide::Right), false) => Some(snomed("48544008")),
        (None, _) => None,
    }
}
