//! What may leave with a shared entry. In: an exam. Out: the same findings without any date and without anything typed freely.

use super::private;
use crate::exam::say;
use crate::exam::{Baby, Dates, Exam, Finding, KnownBy, Mother};

/// The exam without dates, without its note, without what is for whoever examined alone, without reasons in brackets and without the words after `scan`. The weeks and every
/// finding stay.
pub fn scrubbed(exam: &Exam) -> Exam {
    let exam = &private::without(exam).unwrap_or_else(|| exam.clone());
    let mut clean = Exam { dates: Dates::default(), note: None, ..exam.clone() };
    mother(&mut clean.mother);
    clean.babies.iter_mut().for_each(baby);
    clean.read = say::findings(&clean);
    clean
}

fn scrub<T>(finding: &mut Finding<T>) {
    match finding {
        Finding::CouldNotTell { reason } => *reason = None,
        Finding::Found(found) => {
            if let KnownBy::Scan(words) = &mut found.known_by {
                *words = None;
            }
        }
        Finding::NotExamined | Finding::Absent | Finding::NotTried => {}
    }
}

/// Takes a struct apart by name, so that a new field does not compile until it is scrubbed.
macro_rules! scrub_all {
    ($kind:ident, $value:expr, $($field:ident),* $(,)?) => {{
        let $kind { $($field),* } = $value;
        $(scrub($field);)*
    }};
}

fn mother(mother: &mut Mother) {
    scrub_all!(
        Mother,
        mother,
        fundal_height,
        girth,
        navel,
        fundus,
        shape,
        womb,
        water,
        lumps,
        tape_unfit,
        scars,
        operations,
        womb_cut,
        skin,
        movements,
        reports,
        denies,
        pulse,
        placenta,
        births_before,
        posture,
        earlier_tapes,
        gravida,
        rupture_before,
        placentas,
        rhesus_d,
        group_b_strep,
        labour,
        hours_since_broken,
        water_colour,
        consent,
        comfort,
        build,
        scar_feel,
        muscle_gap,
        hernia,
        bladder,
        temperature,
        blood_pressure,
        breathing,
        urine_protein,
        contractions_in_ten,
        contraction_length,
        contraction_strength,
        tone_at_rest,
        tender_at,
        height_for_dates,
    );
}

fn baby(baby: &mut Baby) {
    scrub_all!(
        Baby,
        baby,
        head,
        breech,
        back,
        limbs,
        head_above_brim,
        descent,
        prominence,
        attitude,
        legs,
        dip_at_navel,
        heart,
        heart_with,
        heart_counts,
        heart_rate,
        heart_rise,
        heart_rhythm,
        weight_by_hand,
        weight_by_scan,
        moved_under_hands,
        fundus_feels,
        brim_feels,
        ballottable,
        overlaps_pubic_bone,
        by_vagina,
        station,
        size,
        kicks,
        hiccups,
        unstable_lie,
        turning,
        heart_also,
        heart_quality,
        heart_slows,
        heart_by,
        heart_and_pulse,
        lie,
        presentation,
        position,
    );
}
