//! The womb at work: contractions, tone, waters and what stands around them. In: nothing. Out: the types.

/// How many contractions in ten minutes, `low` = `high` for a single number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tally {
    /// Fewest.
    pub low: u8,
    /// Most.
    pub high: u8,
}

/// How long a contraction lasts, seconds, `low` = `high` for a single number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Lasting {
    /// Shortest.
    pub low: u16,
    /// Longest.
    pub high: u16,
}

/// Hours.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Hours(pub u16);

/// How strong contractions feel to the hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Strength {
    /// Mild.
    Mild,
    /// Moderate.
    Moderate,
    /// Strong.
    Strong,
}

/// The womb between contractions.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tone {
    /// Soft.
    Soft,
    /// It does not soften.
    NotSoft,
}

/// The colour and smell of water that has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WaterColour {
    /// Clear.
    Clear,
    /// Pink.
    Pink,
    /// Bloody.
    Bloody,
    /// Green: meconium.
    Green,
    /// Foul.
    Foul,
}

/// Whether she is in labour.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Labour {
    /// Not in labour.
    Not,
    /// Early labour.
    Early,
    /// In labour.
    In,
}

/// How many placentas two babies have.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Placentas {
    /// One.
    One,
    /// Two.
    Two,
}

/// The height of the womb as judged against the dates, in words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeightForDates {
    /// Equal to dates.
    Equal,
    /// Below dates.
    Below,
    /// Above dates.
    Above,
}
