//! Words of the note that could be an alarm. In: an exam. Out: a remark that stands until each is recorded, or said not to be so.

use super::remark;
use crate::exam::Report::{
    self, ChestPain, ConstantPain, Headache, LoinPain, PainUnderRibs, RegularTightenings, ScarPain,
    SevereHeadache,
};
use crate::exam::alarm::{self, About, Mention};
use crate::exam::{Exam, Finding, Placenta, WombCut};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{heard, known_cut, labouring, not_heard, operated, weeks};
use crate::units::Gestation;

/// From here on labour is in time.
const TERM: Gestation = weeks(37, 0);

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    let Some(note) = &exam.note else { return };
    let mut open: Vec<String> = vec![];
    let (mut heart, mut cord) = (false, false);
    let mut mentions = alarm::mentions(note);
    // Any pain could be of a cut that gives way.
    if could_give_way(exam) {
        let said =
            |pain: &Mention, mentions: &[Mention]| mentions.iter().any(|one| one.words.contains(&pain.words));
        let pains = alarm::pains(note).into_iter().filter(|pain| !said(pain, &mentions)).collect::<Vec<_>>();
        mentions.extend(pains);
    }
    for mention in mentions {
        if !answered(exam, mention.about) && !open.contains(&mention.words) {
            heart |= matches!(mention.about, About::Heart | About::HeartBefore);
            cord |= mention.about == About::ByVagina && is_cord(&mention.words);
            open.push(mention.words);
        }
    }
    if open.is_empty() {
        return;
    }
    let said: Vec<String> = open.iter().map(|words| format!("\u{2018}{words}\u{2019}")).collect();
    let device = open.iter().any(|words| words == "IUD");
    let said = remark(const { rule("note-mentions") }, &["note"]).with("quoted", said.join(", "));
    let yes = |so: bool| if so { "yes" } else { "no" };
    remarks.push(said.with("iud", yes(device)).with("heart", yes(heart)).with("cord", yes(cord)));
}

/// Whether the words name the cord.
fn is_cord(words: &str) -> bool {
    let words = words.to_lowercase();
    ["cord", "kord", "chord", "proc\u{fa}bito", "procidence", "pulsating", "p\u{119}powin", "pepowin"]
        .iter()
        .any(|word| words.contains(word))
}

/// Whether the womb was cut other than low and across, or no one knows how, or it tore.
fn could_give_way(exam: &Exam) -> bool {
    let low = matches!(known_cut(exam), Some(WombCut::LowTransverse));
    exam.mother.rupture_before.value() == Some(&true) || (operated(exam) || known_cut(exam).is_some()) && !low
}

/// Whether what the words are about is recorded, or said not to be so.
fn answered(exam: &Exam, about: About) -> bool {
    let mother = &exam.mother;
    match about {
        About::Report(report) => {
            let lists = [mother.reports.value(), mother.denies.value()];
            // A headache that is recorded has been asked about, whichever kind it is; so has a pain whose place is.
            let same = |said: &Report| match report {
                SevereHeadache => matches!(said, SevereHeadache | Headache),
                ConstantPain => matches!(
                    said,
                    ConstantPain | RegularTightenings | ScarPain | PainUnderRibs | LoinPain | ChestPain
                ),
                report => *said == report,
            };
            lists.into_iter().flatten().any(|all| all.iter().any(same))
        }
        About::Movements => mother.movements.value().is_some(),
        About::Heart => exam.babies.iter().any(|baby| heard(baby) || not_heard(baby)),
        About::HeartBefore => exam.babies.iter().any(heard),
        // From 37+0 it is what is waited for, but not of a womb that could give way, or with a low placenta.
        About::Labour => {
            let low = mother.placenta.value() == Some(&Placenta::Low);
            mother.labour.value().is_some()
                || labouring(exam)
                || exam.weeks.is_some_and(|weeks| weeks >= TERM) && !could_give_way(exam) && !low
        }
        About::HeartSlows => exam.babies.iter().any(|baby| baby.heart_slows != Finding::NotExamined),
        About::ByVagina => exam.babies.iter().any(|baby| baby.by_vagina.value().is_some()),
        About::Pressure => mother.blood_pressure.value().is_some(),
        About::Temperature => mother.temperature.value().is_some(),
        About::WaterColour => mother.water_colour.value().is_some(),
        About::Placenta => mother.placenta.value().is_some(),
        About::WombCut => mother.womb_cut.value().is_some() || mother.rupture_before.value().is_some(),
        About::Womb => mother.womb.value().is_some() || mother.tone_at_rest.value().is_some(),
        About::Lie => exam.babies.iter().any(|baby| baby.unstable_lie.value().is_some()),
        About::Legs => {
            exam.babies.iter().any(|baby| baby.legs.value().is_some() || baby.attitude.value().is_some())
        }
        About::Overlap => exam.babies.iter().any(|baby| baby.overlaps_pubic_bone.value().is_some()),
        // Nothing else records it: it is written out, or taken out.
        About::Nothing => false,
    }
}
