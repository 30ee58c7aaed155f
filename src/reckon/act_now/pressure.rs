//! Blood pressure, and the signs that go with it: headache, pain under the ribs, vomiting, swelling, sight. In: an exam. Out:
//! remarks on them, each sign once.

use super::remark;
use crate::exam::words::Vocabulary;
use crate::exam::{BloodPressure, Exam, Report, UrineProtein};
use crate::reckon::Remark;
use crate::reckon::ledger::rule;
use crate::reckon::told::{from, has, weeks};
use crate::units::Gestation;

/// From here on these signs belong to pregnancy's own high pressure. Source: NICE CG107 (2010), seen.
const HALFWAY: Gestation = weeks(20, 0);
/// Either number at or over these, mmHg, cannot wait. Source: NICE CG107 (2010), its definition of severe, seen.
const SEVERE: BloodPressure = BloodPressure { systolic: 160, diastolic: 110 };
/// Either number at or over these, mmHg, is raised. Source: NICE CG107 (2010), its definition of mild, seen.
const RAISED: BloodPressure = BloodPressure { systolic: 140, diastolic: 90 };

/// Signs that are looked at again alone; two of them cannot wait.
const MILD: [Report; 3] = [Report::Headache, Report::Vomiting, Report::Swelling];
/// Signs that cannot wait alone.
const GRAVE: [Report; 2] = [Report::SevereHeadache, Report::PainUnderRibs];

fn reaches(pressure: &BloodPressure, limit: BloodPressure) -> bool {
    pressure.systolic >= limit.systolic || pressure.diastolic >= limit.diastolic
}

pub fn remarks(exam: &Exam, remarks: &mut Vec<Remark>) {
    let mother = &exam.mother;
    let said = |all: &[Report]| -> Vec<&'static str> {
        all.iter().filter(|report| has(exam, **report)).filter_map(|report| report.word()).collect()
    };
    let (mild, grave) = (said(&MILD), said(&GRAVE));
    let late = from(exam, HALFWAY);
    let on = ["mother.reports"];

    if let Some(pressure) = mother.blood_pressure.value() {
        let shown = format!("{}/{}", pressure.systolic, pressure.diastolic);
        let made = |rule, signs: &[&str]| {
            Remark::new(rule)
                .on(&["mother.blood-pressure"])
                .with("pressure", shown.clone())
                .with("signs", signs.join(", "))
        };
        let protein = mother.urine_protein.value().is_some_and(|protein| *protein >= UrineProtein::One);
        let mut signs: Vec<&str> = grave.clone();
        signs.extend(said(&[Report::SightChanges]));
        signs.extend(&mild);
        signs.extend(protein.then_some("protein in the urine"));
        if reaches(pressure, SEVERE) {
            remarks.push(made(const { rule("pressure-severe") }, &[]));
        } else if reaches(pressure, RAISED) && late && !signs.is_empty() {
            let keys: &[&str] = if protein { &["mother.urine-protein"] } else { &[] };
            let more: &[&str] = if signs.len() > usize::from(protein) { &on } else { &[] };
            remarks.push(made(const { rule("pressure-with-signs") }, &signs).on(keys).on(more));
            return;
        } else if reaches(pressure, RAISED) {
            remarks.push(made(const { rule("pressure-raised") }, &[]));
        }
    }
    if late && !grave.is_empty() {
        let all = [&grave[..], &mild[..]].concat();
        remarks
            .push(remark(const { rule("severe-headache-or-rib-pain") }, &on).with("signs", all.join(", ")));
    } else if late && mild.len() >= 2 {
        remarks.push(remark(const { rule("two-signs-of-pressure") }, &on).with("signs", mild.join(", ")));
    } else if late && !mild.is_empty() {
        remarks.push(remark(const { rule("one-sign-of-pressure") }, &on).with("signs", mild.join(", ")));
    } else {
        // Before, they are weighed for themselves.
        let all = [&grave[..], &mild[..]].concat();
        if !all.is_empty() {
            remarks.push(remark(const { rule("signs-to-weigh") }, &on).with("signs", all.join(", ")));
        }
    }
}
