//! What is named on a picture. In: a pose, its cast, where marks and landmarks stand, the set of labels. Out: words,
//! each with the places it may point at, the most needed first; as someone in front of her sees it.

use super::edge::{self, flat};
use super::marks::{MarkKind, MarkPlace};
use super::mother::MotherAnchor;
use super::mother_words;
use super::options::Labels;
use crate::body::baby::PosedBaby;
use crate::body::cast::Cast;
use crate::body::mother::FundusKnown;
use crate::body::part::Region;
use crate::body::pose::{Doubt, DrawingNote, Mark, Pose};
use crate::units::{FigurePoint, Vec3};
use crate::words::{Words, WordsError};

/// A word and what it points at.
#[derive(Clone, Debug)]
pub(super) struct Wanted {
    pub text: String,
    /// Where the pointer ends when the word stands at her right and at her left; `None`: not to be reached.
    pub targets: [Option<FigurePoint>; 2],
    /// The side of her on which the word would best stand: -1 right, +1 left.
    pub side: f32,
    pub strong: bool,
    /// How far before its target the pointer ends, cm.
    pub gap: f32,
    /// The mark it names.
    pub owner: Option<usize>,
}

/// Skin of the trunk that looks towards the baby's back by at least this (cosine) may be named its back.
const ON_BACK: f32 = 0.0;

/// What the words are taken from.
pub(super) struct Source<'a> {
    pub pose: &'a Pose,
    pub cast: Option<&'a Cast>,
    pub marks: &'a [MarkPlace],
    pub anchors: &'a [(MotherAnchor, FigurePoint)],
    pub words: &'a Words,
}

/// The side of her on which a point lies.
fn outward(x: f32) -> f32 {
    if x < 0.0 { -1.0 } else { 1.0 }
}

/// The side that breaks ties, so that a mirrored exam is labelled mirrored: where a heart was heard, where the back
/// lies, where the head lies; else her left.
pub(super) fn lean(pose: &Pose) -> f32 {
    let hearts = pose.marks.iter().filter_map(|m| match m {
        Mark::Heart(_, at) => Some(at.0.x),
        Mark::Limb(..) => None,
    });
    let backs = pose.posed().map(|(_, b)| -b.body.z.x);
    let heads = pose.posed().map(|(_, b)| b.head.origin.x).chain(pose.rounds().map(|(_, r)| r.head.0.0.x));
    hearts.chain(backs).chain(heads).find(|x| x.abs() > 0.2).map_or(1.0, outward)
}

impl Source<'_> {
    /// The words of a set.
    pub fn collect(&self, set: Labels) -> Result<Vec<Wanted>, WordsError> {
        let all = matches!(set, Labels::All | Labels::Numbered);
        let mut out = vec![];
        if set == Labels::None {
            return Ok(out);
        }
        self.marks(set, &mut out)?;
        if set != Labels::Family {
            self.heights(all, &mut out)?;
        }
        for (n, rounds) in self.pose.rounds() {
            let (head, bottom) = (rounds.head.0.0, rounds.bottom.0.0);
            let lean = lean(self.pose);
            let pole = |id: &str, felt: bool| -> Result<String, WordsError> {
                let part = self.part(id, n, Doubt::Lie(n))?;
                if felt { Ok(part) } else { self.words.say("label-not-felt", &[("part", &part)]) }
            };
            out.push(self.at(pole("label-head", rounds.felt[0])?, flat(head), -lean));
            out.push(self.at(pole("label-bottom", rounds.felt[1])?, flat(bottom), lean));
            // Of a baby that does not fit the back is known; it is not drawn.
            if !self.pose.notes.contains(&DrawingNote::DoesNotFit(n)) {
                out.push(self.at(self.said("label-back-not-felt", n)?, flat(head.lerp(bottom, 0.5)), lean));
            }
        }
        if all || set == Labels::Family {
            for (n, baby) in self.pose.posed() {
                self.baby(n, baby, &mut out)?;
            }
        } else if self.pose.baby_count > 1 {
            for (n, baby) in self.pose.posed() {
                out.extend(self.number(n, baby)?);
            }
        }
        if all {
            let text = self.words.say("label-pubic-bone", &[])?;
            out.push(self.pubic_bone(text));
        }
        let said = if set == Labels::Family {
            // On the page for two babies there is no room for it.
            let name = mother_words::navel_level(self.anchors, self.words)?;
            name.filter(|_| self.pose.baby_count < 2).into_iter().collect()
        } else {
            mother_words::said(self.pose, self.anchors, self.words, all)?
        };
        let lean = lean(self.pose);
        for said in said {
            out.push(Wanted { targets: said.targets.map(Some), ..self.at(said.text, said.targets[0], lean) });
        }
        Ok(out)
    }

    fn at(&self, text: String, at: FigurePoint, side: f32) -> Wanted {
        Wanted { text, targets: [Some(at); 2], side, strong: false, gap: 0.0, owner: None }
    }

    fn anchor(&self, which: MotherAnchor) -> Option<FigurePoint> {
        self.anchors.iter().find(|(a, _)| *a == which).map(|(_, at)| *at)
    }

    /// A message about one baby, with its number when there are several.
    fn said(&self, id: &str, baby: usize) -> Result<String, WordsError> {
        let part = self.words.say(id, &[])?;
        if self.pose.baby_count < 2 {
            return Ok(part);
        }
        self.words.say("label-of-baby", &[("part", &part), ("number", &baby.to_string())])
    }

    /// The name of a part of one baby: `probably` when what was found of it is unsure.
    fn part(&self, id: &str, baby: usize, doubt: Doubt) -> Result<String, WordsError> {
        let mut part = self.words.say(id, &[])?;
        if self.pose.doubts.contains(&doubt) {
            part = self.words.say("label-unsure", &[("part", &part)])?;
        }
        if self.pose.baby_count < 2 {
            return Ok(part);
        }
        self.words.say("label-of-baby", &[("part", &part), ("number", &baby.to_string())])
    }

    /// A label, with a word of doubt when its finding was written with `?`.
    fn or_unsure(&self, text: String, doubt: Doubt) -> Result<String, WordsError> {
        if self.pose.doubts.contains(&doubt) {
            return self.words.say("label-doubt", &[("part", &text)]);
        }
        Ok(text)
    }

    /// Hearts, limbs, lumps, scars, navel, fifths.
    fn marks(&self, set: Labels, out: &mut Vec<Wanted>) -> Result<(), WordsError> {
        let all = matches!(set, Labels::All | Labels::Numbered);
        let family = set == Labels::Family;
        // Keyholes lie scattered: one name for all.
        let mut small = self.marks.iter().filter(|mark| is_small_scar(mark));
        let (first_small, several) = (small.next().map(|mark| mark.at), small.next().is_some());
        for (number, mark) in self.marks.iter().enumerate() {
            let (text, strong) = match mark.kind {
                MarkKind::Heart(n) => {
                    (self.said(if family { "label-heart-family" } else { "label-heart" }, n)?, true)
                }
                MarkKind::Scale(k) => {
                    (self.words.say("label-fifths", &[("fifths", &format!("{k}/5"))])?, true)
                }
                MarkKind::Limb(n) if all => (self.said("label-limbs-felt", n)?, false),
                MarkKind::Lump if all || family => (self.words.say("label-lump", &[])?, false),
                MarkKind::Scar if several && is_small_scar(mark) && first_small != Some(mark.at) => continue,
                MarkKind::Scar if all && several && is_small_scar(mark) => {
                    (self.words.say("label-small-scars", &[])?, false)
                }
                MarkKind::Scar if all => (self.words.say("label-scar", &[])?, false),
                MarkKind::Navel if all || family && self.pose.baby_count < 2 => {
                    (self.words.say("label-navel", &[])?, false)
                }
                MarkKind::Limb(_) | MarkKind::Lump | MarkKind::Scar | MarkKind::Navel => continue,
            };
            let text = match mark.kind {
                MarkKind::Heart(n) => self.or_unsure(text, Doubt::Heart(n))?,
                MarkKind::Limb(n) => self.or_unsure(text, Doubt::Limbs(n))?,
                MarkKind::Scale(_) => self.or_unsure(text, Doubt::Fifths)?,
                MarkKind::Scar => self.or_unsure(text, Doubt::Scars)?,
                MarkKind::Lump => self.or_unsure(text, Doubt::Lumps)?,
                MarkKind::Navel => text,
            };
            let side = if mark.at.x.abs() < 0.2 { -lean(self.pose) } else { outward(mark.at.x) };
            out.push(Wanted { strong, gap: mark.reach, owner: Some(number), ..self.at(text, mark.at, side) });
        }
        Ok(())
    }

    /// The top of the womb, and how it is known.
    fn fundus(&self) -> Result<String, WordsError> {
        let (pose, words) = (self.pose, self.words);
        let text = match (pose.tape, pose.mother.fundus_known) {
            (Some(cm), _) => words.say("label-fundus-cm", &[("cm", &plain_number(cm))]),
            (None, FundusKnown::Expected) => words.say("label-fundus-expected", &[]),
            (None, FundusKnown::Measured | FundusKnown::Level) => words.say("label-fundus-level", &[]),
        }?;
        self.or_unsure(text, Doubt::Fundus)
    }

    /// What a stamp tells at its foot.
    pub fn told(&self, set: Labels) -> Result<Vec<String>, WordsError> {
        if set == Labels::None {
            return Ok(vec![]);
        }
        let mut out = vec![self.fundus()?];
        if !self.pose.lumps.is_empty() {
            out.push(self.words.say("told-lump", &[])?);
        }
        if self.pose.marks.iter().any(|mark| matches!(mark, Mark::Limb(..))) {
            out.push(self.words.say("told-limbs", &[])?);
        }
        out.push(self.words.say("told-brim", &[])?);
        if let Some(k) = self.pose.fifths {
            let text = self.words.say("label-fifths", &[("fifths", &format!("{k}/5"))])?;
            out.push(self.or_unsure(text, Doubt::Fifths)?);
        }
        Ok(out)
    }

    /// Top of the womb and brim: the lines end on both sides.
    fn heights(&self, all: bool, out: &mut Vec<Wanted>) -> Result<(), WordsError> {
        let text = self.fundus()?;
        let (pose, words) = (self.pose, self.words);
        let ends = |right, left| [self.anchor(right), self.anchor(left)];
        // From the end before which no baby lies.
        let free = |p: Option<FigurePoint>| p.is_some_and(|p| !self.cast.is_some_and(|c| c.covers(p.x, p.y)));
        let side = |[right, left]: [Option<FigurePoint>; 2]| match (free(right), free(left)) {
            (true, false) => -1.0,
            (false, true) => 1.0,
            _ => -lean(pose),
        };
        let top = ends(MotherAnchor::FundusRight, MotherAnchor::FundusLeft);
        // Before the womb is above the brim there is no line to name.
        if top.iter().any(Option::is_some) {
            out.push(Wanted { text, targets: top, side: side(top), strong: true, gap: 0.0, owner: None });
        }
        if all {
            let brim = ends(MotherAnchor::BrimRight, MotherAnchor::BrimLeft);
            out.push(Wanted {
                text: words.say("label-brim", &[])?,
                targets: brim,
                side: side(brim),
                strong: false,
                gap: 0.0,
                owner: None,
            });
        }
        Ok(())
    }

    /// Which of several babies one is, at its head, on its own side of the womb.
    fn number(&self, n: usize, baby: &PosedBaby) -> Result<Option<Wanted>, WordsError> {
        let Some(cast) = self.cast else { return Ok(None) };
        let text = self.words.say("label-baby", &[("number", &n.to_string())])?;
        let side = outward(baby.body.point(baby.spine.belly.origin).x);
        let targets = [-1.0, 1.0].map(|sign| edge::skull(cast, baby, sign));
        Ok(Some(Wanted { targets, strong: true, ..self.at(text, FigurePoint::new(0.0, 0.0), side) }))
    }

    /// Head, back and bottom of a baby.
    fn baby(&self, n: usize, baby: &PosedBaby, out: &mut Vec<Wanted>) -> Result<(), WordsError> {
        let Some(cast) = self.cast else { return Ok(()) };
        let k = &baby.posture.measures;
        // The back is named on its side; seen square on, on the side that leans.
        let side = if baby.body.z.x.abs() < 0.2 { lean(self.pose) } else { -outward(baby.body.z.x) };
        // Of two, each is named from its own side of the womb.
        let own = outward(baby.body.point(baby.spine.belly.origin).x);
        let (side, other) = if self.pose.baby_count > 1 { (own, own) } else { (side, -side) };
        let both = |at: &dyn Fn(f32) -> Option<FigurePoint>| [at(-1.0), at(1.0)];
        let spread =
            |text, targets, side| Wanted { targets, ..self.at(text, FigurePoint::new(0.0, 0.0), side) };
        let skull = |sign: f32| edge::skull(cast, baby, sign);
        out.push(spread(self.part("label-head", n, Doubt::Lie(n))?, both(&skull), other));

        let belly = baby.body.point(baby.spine.belly.origin);
        let back = baby.body.point(baby.spine.belly.point(Vec3::new(0.0, 1.5, -4.6) * k.girth));
        let towards = -baby.body.z;
        // Not on an arm or on the other baby that lies before it.
        let seen_where = |targets: [Option<FigurePoint>; 2], will_do: &dyn Fn(usize) -> bool| {
            targets.map(|t| edge::own_trunk(cast, baby, t?, will_do))
        };
        let seen = |targets| seen_where(targets, &|_| true);
        // Its edges on both sides, when the baby lies lengthwise.
        let behind = || {
            let rim = |sign: f32| {
                let crosswise = baby.body.y.x.abs() > 0.5;
                Some(if crosswise { flat(belly) } else { edge::rim(cast, flat(belly), sign, 0.0, 8.0) })
            };
            ("label-back-behind", seen(both(&rim)))
        };
        let (id, targets) = if towards.z > 0.3 {
            ("label-back", seen([Some(flat(back)); 2]))
        } else if towards.z < -0.92 {
            // Quite behind: nothing of it is seen.
            behind()
        } else {
            let flat_length = (towards.x * towards.x + towards.y * towards.y).sqrt().max(1e-3);
            let (x, y) = (towards.x / flat_length, towards.y / flat_length);
            let edge = Some(edge::rim(cast, flat(belly), x, y, 8.0));
            let targets = seen_where([edge; 2], &|i| cast.normal[i].dot(towards) > ON_BACK);
            if targets.iter().any(Option::is_some) { ("label-back", targets) } else { behind() }
        };
        if targets.iter().any(Option::is_some) {
            out.push(spread(self.part(id, n, Doubt::Back(n))?, targets, side));
        }

        let bottom = baby.spine.pelvis.origin + Vec3::new(0.0, -2.8, -1.2) * k.girth;
        let bottom = flat(baby.body.point(bottom));
        let cheek = |sign: f32| Some(edge::rim(cast, bottom, sign, 0.0, 3.0));
        let targets = seen(both(&cheek));
        if targets.iter().any(Option::is_some) {
            out.push(spread(self.part("label-bottom", n, Doubt::Lie(n))?, targets, side));
        }
        Ok(())
    }

    /// The legs of a baby that lies head down, where hands felt limbs on the side on which its legs are drawn: she is told that she may
    /// notice them.
    pub fn legs(&self) -> Result<Vec<Wanted>, WordsError> {
        let Some(cast) = self.cast else { return Ok(vec![]) };
        let mut out = vec![];
        for (n, baby) in self.pose.posed() {
            let felt = || {
                self.pose.marks.iter().filter_map(move |mark| match mark {
                    Mark::Limb(number, at) if *number == n => Some(at.0.x),
                    Mark::Limb(..) | Mark::Heart(..) => None,
                })
            };
            let head_down = baby.head.origin.y < baby.body.origin.y;
            let ends = baby.legs.iter().flat_map(|leg| [leg.ankle, leg.ankle.lerp(leg.knee, 0.5), leg.knee]);
            let seen = |p: &Vec3| {
                let at = cast.index_at(p.x, p.y).filter(|i| cast.hit(*i));
                at.is_some_and(|i| matches!(cast.part[i].region(), Region::Leg(_)))
            };
            let same_side = |p: &Vec3| felt().all(|x| x * p.x > 0.0);
            // The highest that is seen: a foot as a rule.
            let points = ends.map(|p| baby.body.point(p)).filter(seen).filter(same_side);
            let highest = points.max_by(|a, b| a.y.total_cmp(&b.y));
            if let Some(at) = highest.filter(|_| head_down && felt().next().is_some()) {
                out.push(self.at(self.said("label-legs", n)?, flat(at), outward(at.x)));
            }
        }
        Ok(out)
    }

    /// The pubic bone where no baby lies before it.
    fn pubic_bone(&self, text: String) -> Wanted {
        let middle = self.anchor(MotherAnchor::PubicBone).unwrap_or(FigurePoint::new(0.0, 0.0));
        let free = |p: FigurePoint| {
            !self.cast.is_some_and(|c| c.covers(p.x, p.y))
                && !self.pose.rounds().any(|(_, r)| super::rounds::covers(r, p))
        };
        // Below its upper border in the midline, or farther out along its upper branch.
        let reach = |sign: f32| {
            let places = [
                (1.1, -1.5),
                (1.5, -4.2),
                (2.3, -5.4),
                (3.2, -6.6),
                (3.6, -1.2),
                (5.0, -0.8),
                (6.2, -0.6),
                (7.0, -0.4),
            ]
            .map(|(x, y)| FigurePoint::new(middle.x + x * sign, middle.y + y));
            // With some air before the baby, where there is any.
            let airy =
                |p: &&FigurePoint| [-0.7, 0.0, 0.7].iter().all(|dx| free(FigurePoint::new(p.x + dx, p.y)));
            places.iter().find(airy).or(places.iter().find(|p| free(**p))).copied()
        };
        let side = lean(self.pose);
        Wanted { targets: [reach(-1.0), reach(1.0)], ..self.at(text, middle, side) }
    }
}

/// A scar this short is small, cm: a keyhole's.
const SMALL_SCAR: f32 = 2.5;

fn is_small_scar(mark: &MarkPlace) -> bool {
    let (line, _) = &mark.covers;
    let (Some(a), Some(b)) = (line.first(), line.last()) else { return false };
    let (dx, dy) = (b.x - a.x, b.y - a.y);
    mark.kind == MarkKind::Scar && dx * dx + dy * dy < SMALL_SCAR * SMALL_SCAR
}

/// A number of cm as people write it: without a useless `.0`.
fn plain_number(cm: f64) -> String {
    let tenths = (cm * 10.0).round() / 10.0;
    if tenths.fract() == 0.0 { format!("{tenths:.0}") } else { format!("{tenths:.1}") }
}
