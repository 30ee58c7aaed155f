//! The baby of a case, before anybody examines. In: a position, weeks and chance. Out: how it lies, what hands and ear would find of
//! it, and the numbers that tape and watch would give.

use super::dice::Dice;
use crate::body::pose;
use crate::body::touch::{COLUMNS, Feel, LEVELS, Listening, Palpation, Touch, palpation};
use crate::exam::words::Vocabulary;
use crate::exam::{Exam, Height, Place, Position, Presentation, read};
use crate::reckon::{conclusions, curves};
use crate::units::Gestation;

/// What a tape is to say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Tape {
    /// As tapes spread, but within 2 cm of the weeks and in the middle of the curve: the case is about something else.
    Usual,
    /// This far from the mean, in standard deviations.
    At(f64),
}

impl Tape {
    /// Whole centimetres.
    fn centimetres(self, weeks: Gestation, dice: &mut Dice) -> u16 {
        const WITHIN: f64 = 2.0;
        // Clear of the tenth and the ninetieth centile.
        const MIDDLE: f64 = 1.2;
        let exact = weeks.exact_weeks();
        let cm = match self {
            Tape::Usual => {
                let low = curves::sfh_at(weeks, -MIDDLE).max(exact - WITHIN);
                let high = curves::sfh_at(weeks, MIDDLE).min(exact + WITHIN);
                libm::round(curves::sfh_at(weeks, dice.spread())).clamp(libm::ceil(low), libm::floor(high))
            }
            Tape::At(z) => libm::round(curves::sfh_at(weeks, z)),
        };
        cm as u16
    }
}

/// How a baby lies, and what can be found of it.
pub(super) struct Truth {
    /// Its position.
    pub position: Position,
    /// Weeks.
    pub weeks: Gestation,
    /// Fifths of the head above the brim; `None` when the head is not down.
    pub fifths: Option<u8>,
    /// Height of the fundus, whole cm.
    pub tape: u16,
    /// The heart's steady rate, beats a minute.
    pub rate: f64,
    /// The mother's pulse.
    pub pulse: u64,
    map: Palpation,
}

impl Truth {
    /// A baby in this position.
    pub fn new(
        position: Position,
        weeks: Gestation,
        fifths: Option<u8>,
        tape: Tape,
        dice: &mut Dice,
    ) -> Result<Self, String> {
        let tape = tape.centimetres(weeks, dice);
        let word = position.word().ok_or("a position without a word")?;
        let fifths_line = fifths.map(|k| format!("head-above-brim = \"{k}/5\"\n")).unwrap_or_default();
        let exam = exam_of(&format!(
            "weeks = \"{weeks}\"\n[mother]\nfundal-height = \"{tape} cm\"\n[baby]\nposition = \"{word}\"\n{fifths_line}"
        ))?;
        let map = palpation(&pose::for_hands(&exam, &conclusions(&exam)));
        let rate = dice.from(124, 150) as f64 + dice.share();
        Ok(Truth { position, weeks, fifths, tape, rate, pulse: dice.from(68, 92), map })
    }

    /// True when its head is down.
    pub fn is_head_down(&self) -> bool {
        matches!(self.position, Position::Lengthwise { denominator, .. }
            if denominator.presentation() != Presentation::Breech)
    }

    /// Where the grip for this pole meets it: of a baby that lies lengthwise at its end of the womb.
    pub fn pole(&self, what: Feel) -> Option<Place> {
        let height = match (self.position, self.is_head_down() == (what == Feel::Head)) {
            (Position::Crosswise { .. }, _) => None,
            (Position::Lengthwise { .. }, true) => Some(Height::AbovePubicBone),
            (Position::Lengthwise { .. }, false) => Some(Height::Fundus),
        };
        let mut found = self.places(what);
        found.retain(|place| height.is_none() || place.height == height);
        // In the middle of where it is felt.
        found.get(found.len() / 2).copied()
    }

    /// Places with a side, between the ends of the womb, where small parts are felt: the first on each side.
    pub fn limbs(&self) -> Vec<Place> {
        let mut sides = vec![];
        let mut found = self.places(Feel::Limbs);
        found.retain(|place| !matches!(place.height, Some(Height::Fundus | Height::AbovePubicBone)));
        found.retain(|place| {
            let new = place.side().is_some() && !sides.contains(&place.side());
            sides.extend(new.then_some(place.side()));
            new
        });
        found
    }

    /// Where its heart would best be heard.
    pub fn listening(&self) -> Option<&Listening> {
        self.map.hearts.first()
    }

    /// The named place nearest to where its heart would best be heard. Of a heart one says above, at or below the navel; the
    /// other levels are for what is felt.
    pub fn heart(&self) -> Option<Place> {
        let at = self.listening()?.at;
        let far = |touch: &&Touch| (touch.at.0 - at.0).length();
        self.map
            .touches
            .iter()
            .filter(named)
            .filter(|touch| !matches!(touch.place.height, Some(Height::Fundus | Height::AbovePubicBone)))
            .min_by(|a, b| far(a).total_cmp(&far(b)))
            .map(|touch| touch.place)
    }

    /// What a count over so many seconds gives: whole beats, from a moment by chance.
    pub fn count(&self, seconds: u16, dice: &mut Dice) -> u64 {
        libm::floor(self.rate * f64::from(seconds) / 60.0 + dice.share()) as u64
    }

    fn places(&self, what: Feel) -> Vec<Place> {
        let felt = |touch: &&Touch| touch.felt.is_some_and(|felt| felt.what == what);
        self.map.touches.iter().filter(named).filter(felt).map(|touch| touch.place).collect()
    }
}

/// Places that an exam names by a column and a level.
fn named(touch: &&Touch) -> bool {
    touch.place.across.is_some_and(|across| COLUMNS.contains(&across))
        && touch.place.height.is_some_and(|height| LEVELS.contains(&height))
}

/// The exam in `text`, which this program wrote itself.
pub(super) fn exam_of(text: &str) -> Result<Exam, String> {
    let reading = read("case", text.as_bytes());
    let fault = reading.problems.first().map(|problem| problem.message.clone());
    reading.exam.ok_or_else(|| fault.unwrap_or_default())
}
