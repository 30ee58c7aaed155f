//! The words of the family page. In: the exam, what is reckoned of it, the clinic, what is asked for. Out: `Content` for
//! the layouts of the family, in plain words: no codes, no verdict, and no numbers about the baby unless asked for.

mod call;
mod depth;
mod drawing;
mod heart;
mod heart_place;
mod kind;
mod known;
mod lie;
mod next;
mod notice;
mod numbers;
mod signs;
mod sure;

pub use drawing::say_of_drawing;
pub use heart::Invitation;

use super::content::{Block, Content, Kind};
use crate::clinic::Clinic;
use crate::exam::{Conclusion, Exam};
use crate::reckon::Reckoning;
use crate::units::Gestation;
use crate::words::{Words, WordsError};
use known::Known;

/// Under this the womb and its level alone are drawn.
const BABY_DRAWN_FROM: Option<Gestation> = Gestation::new(26, 0);

/// What may stand on the page or not; as a rule it does not.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Asked {
    /// The invitation to lay an ear where the heart was heard.
    pub invite_listening: bool,
    /// The tape and the heart's rate.
    pub numbers: bool,
}

/// What the parts of the page are made from.
struct Told<'a> {
    exam: &'a Exam,
    /// One for each baby of the exam, in the same order.
    conclusions: &'a [Conclusion],
    words: &'a Words,
    known: Known,
    several: bool,
    /// Too early for a baby to be drawn.
    early: bool,
}

impl Told<'_> {
    fn say(&self, id: &str) -> Result<String, WordsError> {
        self.words.say(id, &[])
    }
    fn block(&self, kind: Kind, id: &str) -> Result<Block, WordsError> {
        Ok(Block::new(kind, self.say(id)?).with(signs::of(id)))
    }
    /// The points of a list.
    fn points(&self, ids: &[&str]) -> Result<Vec<Block>, WordsError> {
        ids.iter().map(|id| self.block(Kind::Item, id)).collect()
    }
    fn babies(&self) -> impl Iterator<Item = (&crate::exam::Baby, &Conclusion)> {
        self.exam.babies.iter().zip(self.conclusions)
    }
}

/// The words of the family page. `reckoning` has one conclusion for each baby of `exam`, in the same order.
///
/// The caller has made sure that nothing stands that must stop the page (an act-now, findings that cannot
/// both be right).
pub fn content(
    exam: &Exam,
    reckoning: &Reckoning,
    clinic: &Clinic,
    asked: Asked,
    words: &Words,
) -> Result<Content, WordsError> {
    let told = &Told {
        exam,
        conclusions: &reckoning.conclusions,
        words,
        known: Known::of(exam),
        several: exam.babies.len() > 1,
        early: exam.weeks < BABY_DRAWN_FROM && exam.weeks.is_some(),
    };
    let mut out = Content::default();
    let mut put = |name: &str, blocks: Vec<Block>| {
        out.blocks.insert(name.to_owned(), blocks);
    };

    let title = told.say(if told.several { "family-title-more" } else { "family-title-one" })?;
    put("family-title", vec![Block::new(Kind::Title, title.clone())]);
    put("family-name", vec![told.block(Kind::Blank, "family-name")?]);
    put("family-midwife", vec![told.block(Kind::Blank, "family-midwife")?]);
    put("family-words", vec![told.block(Kind::Blank, "family-words")?, Block::new(Kind::Blank, "")]);
    put("family-felt-on", vec![known::day(told)?]);
    put("phone-felt-at", known::weeks(told)?);

    let found = lie::found(told)?;
    let description = found.iter().map(|b| b.text.as_str()).collect::<Vec<_>>().join(" ");
    put("family-found", found);
    let (kind, next) = (kind::kind(told)?, next::next(told)?);
    let heading = if kind.is_empty() && next.is_empty() {
        vec![]
    } else {
        vec![told.block(Kind::Heading, "family-title-next")?]
    };
    put("family-title-next", heading);
    put("family-kind", kind);
    put("family-next", next);
    put("family-sure", sure::sure(told)?);
    put(
        "family-trust",
        known::far(told.known).map(|id| told.block(Kind::Text, id)).into_iter().collect::<Result<_, _>>()?,
    );
    put("family-about", about(told)?);
    put("family-picture", picture(told)?);
    put("family-hold", vec![told.block(Kind::Text, "family-hold")?]);
    put("family-heart", heart::heart(told, reckoning, asked)?);
    put("family-numbers", if asked.numbers { numbers::numbers(told)? } else { vec![] });

    put("family-moves-title", call::moves_title(told)?);
    put("family-moves", call::moves(told, clinic)?);
    put("family-front", call::front(told, clinic)?);
    put("family-phone", call::phone(clinic, words)?);
    put("family-other", call::other(clinic, words)?);
    put("family-emergency", call::emergency(clinic, words)?);
    put("family-heavy", call::heavy(told, clinic)?);
    put("family-go", call::go(told, clinic)?);
    put("family-come", call::come(told, clinic)?);
    put("family-call", call::call(told, clinic)?);
    put("family-worried", call::worried(told)?);
    put("colouring-title", vec![told.block(Kind::Title, "colouring-title")?]);
    put("colouring-by", vec![told.block(Kind::Blank, "colouring-by")?]);
    put("family-use", vec![told.block(Kind::Text, "family-use")?]);

    out.title = title;
    out.description = description;
    Ok(out)
}

/// Whether the invitation to listen would stand on the page, were it asked for; if not, why.
pub fn may_invite(exam: &Exam, reckoning: &Reckoning) -> Invitation {
    heart::may_invite(exam, reckoning)
}

/// How far to trust a picture that goes home alone, for how long, and how to hold it.
fn about(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let ids = known::trust(told.known).chain(["family-hold"]);
    ids.map(|id| told.block(Kind::Text, id)).collect()
}

/// What of the picture is known: a whole baby, rounds for head and bottom, or nothing.
fn picture(told: &Told<'_>) -> Result<Vec<Block>, WordsError> {
    let id = if told.early {
        return Ok(vec![]);
    } else if told.conclusions.iter().any(|c| c.lie.is_some() && c.back.is_some()) {
        let felt = told.exam.babies.iter().all(|baby| baby.limbs.value().is_some());
        if felt { "family-artist-limbs-felt" } else { "family-artist" }
    } else if told.conclusions.iter().all(|c| c.lie.is_none()) {
        "family-none-drawn"
    } else {
        return Ok(vec![]);
    };
    Ok(vec![told.block(Kind::Text, id)?])
}
