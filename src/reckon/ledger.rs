//! The ledger. In: nothing. Out: every rule of the reckoning, a row a rule: what it means, where it comes from, how far
//! that can be trusted.
//!
//! A remark takes its grade and its source from its row; `handspan rules` prints the rows; a test holds docs/rules.md
//! and the messages to them.

mod act_now;
mod cannot_both;
mod guidance;
mod look_again;
mod numbers;

use super::Grade;

/// The day of the ledger's last change; printed on every output beside the program's version.
pub const LEDGER_VERSION: &str = "2026-11-30";

/// How far a rule's source can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trust {
    /// Follows from the findings alone.
    Logic,
    /// Printed in a document that was read.
    Seen,
    /// Read in a document that quotes the source, or in one of low authority.
    SeenSecondHand,
    /// Our own arithmetic on what was seen.
    Derived,
    /// A convention without a source.
    CommonPractice,
    /// A limit or a combination of our own; what it is made of is named where it was seen.
    House,
}

impl Trust {
    /// The word that is printed.
    pub fn name(self) -> &'static str {
        match self {
            Trust::Logic => "logic",
            Trust::Seen => "seen",
            Trust::SeenSecondHand => "seen second-hand",
            Trust::Derived => "derived",
            Trust::CommonPractice => "common practice",
            Trust::House => "house",
        }
    }
}

/// Who reads what a rule says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Audience {
    /// The examiner and the chart.
    Examiner,
    /// The family too.
    Family,
}

impl Audience {
    /// The word that is printed.
    pub fn name(self) -> &'static str {
        match self {
            Audience::Examiner => "examiner",
            Audience::Family => "family",
        }
    }
}

/// One rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rule {
    /// Stable id: of a remark, its message is `remark-ID`.
    pub id: &'static str,
    /// How pressing its remark is; `None` for a number that makes no remark.
    pub grade: Option<Grade>,
    /// What it means, in a few words.
    pub meaning: &'static str,
    /// Its formula or threshold, with units; empty when the meaning says it all.
    pub formula: &'static str,
    /// Where it comes from, with its edition; empty for logic and common practice.
    pub source: &'static str,
    /// The day on which it was last held against its source.
    pub checked: &'static str,
    /// How far the source can be trusted.
    pub trust: Trust,
    /// Who reads what it says.
    pub audience: Audience,
    /// Whether no page that a family keeps is made while its remark stands, whatever else is in hand: no heart was heard,
    /// or it was not told from her pulse.
    pub no_page: bool,
}

impl Rule {
    /// The source, or what stands in its place.
    pub fn ground(&self) -> &'static str {
        if self.source.is_empty() { self.trust.name() } else { self.source }
    }
}

/// The rule of an id that is known when this is compiled: `const { rule("bleeding") }` does not compile without its row.
pub const fn rule(id: &str) -> &'static Rule {
    let mut at = 0;
    while at < RULES.len() {
        if same(RULES[at].id, id) {
            return &RULES[at];
        }
        at += 1;
    }
    panic!("there is no such rule")
}

const fn same(a: &str, b: &str) -> bool {
    let (a, b) = (a.as_bytes(), b.as_bytes());
    if a.len() != b.len() {
        return false;
    }
    let mut at = 0;
    while at < a.len() {
        if a[at] != b[at] {
            return false;
        }
        at += 1;
    }
    true
}

/// The rule of an id, if there is one.
pub fn find(id: &str) -> Option<&'static Rule> {
    RULES.iter().find(|rule| rule.id == id)
}

const CHECKED: &str = "2026-11-25";
const CHECKED_LATER: &str = "2026-11-30";
const MOVE: &str = "NHS movement guidance; RCOG 57 (2011)";
const SIGNS: &str = "CDC, urgent maternal warning signs; WHO, danger signs in pregnancy";
const CORD: &str = "RCOG 50 (2014)";
const RATES: &str = "WHO MCPC (2000)";
const SFH: &str = "INTERGROWTH-21st (Papageorghiou, BMJ 2016)";
const EFW: &str = "INTERGROWTH-21st (Stirnemann, UOG 2017)";
const HADLOCK: &str = "Hadlock, Radiology 1991, as transcribed";
const SEPSIS: &str = "NICE NG255 (2025)";
const PULSES: &str = "NICE NG51 (2016), its rows for pregnancy as tabled";
const CORD_FELT: &str = "RCOG 50 (2014), as quoted; the positions: common practice";
const OVERDUE: &str = "University Hospitals Sussex, declining induction; NICE NG207 (2021) 1.2.7, as quoted";
const PRESSURE_AND_SIGNS: &str = "NICE CG107 (2010), the limits; NICE NG133 pathway (2019), the signs";
const LABOUR: &str = "WHO intermittent auscultation (2018)";
const PRESSURE: &str = "NICE CG107 (2010)";
const PRAEVIA: &str = "RCOG 27a (2018), as quoted";
const ANTI_D: &str = "BCSH anti-D (2014), as quoted";
const CUT: &str = "RCOG 45 (2015); NHSGGC";
const TWINS: &str = "Safer Care Victoria, timing of birth in twins, citing NICE NG137";
const PROM: &str = "NHSGGC, waters broken at term";
const BETTER: &str = "Bettercare, Maternal Care";

/// Whether a rule is of those that were held against their sources later.
const fn is_new(source: &str, trust: Trust) -> bool {
    const LATER: [&str; 10] =
        [SEPSIS, LABOUR, PRESSURE, PRAEVIA, ANTI_D, CUT, TWINS, PROM, CORD_FELT, OVERDUE];
    let mut at = 0;
    while at < LATER.len() {
        if same(LATER[at], source) {
            return true;
        }
        at += 1;
    }
    matches!(trust, Trust::House)
}

const fn of(
    id: &'static str,
    grade: Grade,
    meaning: &'static str,
    formula: &'static str,
    source: &'static str,
    trust: Trust,
) -> Rule {
    Rule {
        id,
        grade: Some(grade),
        meaning,
        formula,
        source,
        checked: if is_new(source, trust) { CHECKED_LATER } else { CHECKED },
        trust,
        audience: Audience::Examiner,
        no_page: false,
    }
}

impl Rule {
    /// The same, and no page that a family keeps is made while its remark stands.
    const fn no_page(self) -> Rule {
        Rule { no_page: true, ..self }
    }
}

const fn act_now(
    id: &'static str,
    meaning: &'static str,
    formula: &'static str,
    source: &'static str,
) -> Rule {
    of(id, Grade::ActNow, meaning, formula, source, Trust::Seen)
}

const fn practice(id: &'static str, grade: Grade, meaning: &'static str, formula: &'static str) -> Rule {
    of(id, grade, meaning, formula, "", Trust::CommonPractice)
}

const fn number(
    id: &'static str,
    meaning: &'static str,
    formula: &'static str,
    source: &'static str,
    trust: Trust,
) -> Rule {
    Rule { grade: None, ..of(id, Grade::LookAgain, meaning, formula, source, trust) }
}

const fn house(
    id: &'static str,
    grade: Grade,
    meaning: &'static str,
    formula: &'static str,
    source: &'static str,
) -> Rule {
    of(id, grade, meaning, formula, source, Trust::House)
}

const fn logic(id: &'static str, meaning: &'static str) -> Rule {
    of(id, Grade::CannotBoth, meaning, "", "", Trust::Logic)
}

const PARTS: [&[Rule]; 5] =
    [act_now::RULES, cannot_both::RULES, look_again::RULES, guidance::RULES, numbers::RULES];

const fn count() -> usize {
    let (mut part, mut count) = (0, 0);
    while part < PARTS.len() {
        count += PARTS[part].len();
        part += 1;
    }
    count
}

const fn joined() -> [Rule; count()] {
    let mut all = [PARTS[0][0]; count()];
    let (mut part, mut next) = (0, 0);
    while part < PARTS.len() {
        let mut row = 0;
        while row < PARTS[part].len() {
            all[next] = PARTS[part][row];
            next += 1;
            row += 1;
        }
        part += 1;
    }
    all
}

/// Every rule, the most pressing first; inside a grade in the order of an examination; then the numbers.
pub const RULES: &[Rule] = &joined();
