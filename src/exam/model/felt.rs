//! What is felt and heard of a baby beside where its parts lie. In: nothing. Out: the types.

/// How an end of the baby feels to the hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PoleFeel {
    /// Hard.
    Hard,
    /// Round.
    Round,
    /// Ballottable.
    Ballottable,
    /// Soft.
    Soft,
    /// Broad.
    Broad,
    /// Irregular.
    Irregular,
    /// Nothing lies there.
    Empty,
}

/// How the heart sounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quality {
    /// Clear.
    Clear,
    /// Distant.
    Distant,
    /// Muffled.
    Muffled,
}

/// When the heart was heard to slow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slows {
    /// After contractions.
    AfterContractions,
    /// With contractions.
    WithContractions,
    /// At other times.
    AtOtherTimes,
}

/// Who listened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Listener {
    /// A midwife.
    Midwife,
    /// A doctor.
    Doctor,
    /// A student.
    Student,
    /// Two people at one time.
    TwoPeople,
}

/// The heart and her pulse, felt and heard together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BesidePulse {
    /// Two different beats.
    Different,
    /// One and the same.
    Same,
}

/// What was found in the vagina, or seen at it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ByVagina {
    /// The cord.
    Cord,
    /// The brow.
    Brow,
    /// The face.
    Face,
    /// A shoulder.
    Shoulder,
    /// A hand or an arm.
    Hand,
    /// A foot or a leg.
    Foot,
    /// The bottom.
    Breech,
    /// The top of the head.
    Vertex,
}

/// How far the lowest part stands above (negative) or below the spines, cm; found by the vagina, and never turned into fifths.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Station(pub i8);

/// The baby's size as judged by hand against the dates.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Size {
    /// Small.
    Small,
    /// Average.
    Average,
    /// Large.
    Large,
}

/// What came of turning the baby by hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Turning {
    /// It turned.
    Turned,
    /// It did not turn.
    DidNotTurn,
    /// She declined it.
    Declined,
}
