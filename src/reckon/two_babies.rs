//! Two babies. In: an exam and its conclusions. Out: remarks on their hearts, on the first of them, on when they are to be born.

use super::Remark;
use super::heart::heart_rate;
use super::ledger::rule;
use super::told::{across, head_down, weeks};
use crate::exam::{Baby, Conclusion, Exam, Listener, Placentas};
use crate::units::Gestation;

/// Two rates nearer than this may be one heart heard twice, beats a minute. House.
const APART: f64 = 10.0;
/// From here on how the first lies belongs to the plan of her birth. House.
const FIRST_LIES: Gestation = weeks(32, 0);
/// From here on two babies with two placentas, or with one, are to have their birth planned. Source: Safer Care Victoria, citing
/// NICE NG137, seen.
const TWO_PLACENTAS: Gestation = weeks(37, 0);
const ONE_PLACENTA: Gestation = weeks(36, 0);

/// The remarks on two babies; of one there are none.
pub fn two_babies(exam: &Exam, conclusions: &[Conclusion]) -> Vec<Remark> {
    let mut remarks = vec![];
    let ([one, two], [first, _]) = (&exam.babies[..], conclusions) else { return remarks };
    remarks.extend(near(one, two));
    let Some(now) = exam.weeks else { return remarks };
    let known = first.lie.is_some() || first.presentation.is_some();
    if now >= FIRST_LIES && known && (!head_down(first) || across(first)) {
        let on: Vec<&str> = [
            ("head", one.head.value().is_some()),
            ("breech", one.breech.value().is_some()),
            ("lie", one.lie.value().is_some()),
            ("presentation", one.presentation.value().is_some()),
            ("position", one.position.value().is_some()),
        ]
        .into_iter()
        .filter_map(|(name, known)| known.then_some(name))
        .collect();
        remarks.push(Remark::new(const { rule("twin-first-not-head-down") }).of_baby(exam, 0, &on));
    }
    match exam.mother.placentas.value() {
        Some(Placentas::Two) if now >= TWO_PLACENTAS => remarks.push(birth("two")),
        Some(Placentas::One) if now >= ONE_PLACENTA => remarks.push(birth("one")),
        None if now >= FIRST_LIES => remarks.push(Remark::new(const { rule("twins-placentas-not-known") })),
        Some(Placentas::One | Placentas::Two) | None => {}
    }
    remarks
}

fn birth(placentas: &str) -> Remark {
    Remark::new(const { rule("twins-still-pregnant") }).on(&["mother.placentas"]).with("placentas", placentas)
}

/// Two rates so near that they may be of one heart.
fn near(one: &Baby, two: &Baby) -> Option<Remark> {
    let (first, second) = (heart_rate(one)?.mean, heart_rate(two)?.mean);
    let together = [one, two]
        .into_iter()
        .any(|baby| baby.heart_by.value().is_some_and(|by| by.contains(&Listener::TwoPeople)));
    if together || (first - second).abs() >= APART {
        return None;
    }
    let key = |baby: &Baby, number| {
        let name = if baby.heart_counts.value().is_some() { "heart-counts" } else { "heart-rate" };
        format!("baby.{number}.{name}")
    };
    let mut remark = Remark::new(const { rule("twin-hearts-near") })
        .with("first", format!("{first:.0}"))
        .with("second", format!("{second:.0}"));
    remark.findings = vec![key(one, 1), key(two, 2)];
    Some(remark)
}
